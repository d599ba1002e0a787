#include "archive/series.hpp"

#include "archive/aircraft_file.hpp"
#include "archive/connection.hpp"
#include "base/parse.hpp"
#include "file/told.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::archive {

namespace {

/// Goes through an aircraft's rounds that came to one of the points, the newest first, until `take` has
/// enough.
template<class Take>
Result<void> eachRound(const Archive& archive, const std::string& registration,
                       const std::vector<std::string>& points, Take take) {
    Connection& connection = archive.inside();
    static const std::string sql =
        pagesWhere("page.file = (SELECT id FROM file WHERE registration = ?1) AND page.kind = 'round'"
                   " ORDER BY page.record DESC");
    Statement select = connection.prepare(sql.c_str());
    select.text(registration);
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW) {
        const auto walked = connection.walked(select.integerAt(8));
        if (!walked) return tl::unexpected(walked.error());
        const auto& known = (*walked)->points;
        const bool came = std::any_of(points.begin(), points.end(), [&](const std::string& id) {
            return std::binary_search(known.begin(), known.end(), file::PointName{id, {}, {}, {}},
                                      [](const auto& a, const auto& b) { return a.id < b.id; });
        });
        if (!came) continue;
        const auto told = connection.toldIn(select);
        if (!told) return tl::unexpected(told.error());
        const auto more = take(*told, *told->round());
        if (!more) return tl::unexpected(more.error());
        if (!*more) return {};
    }
    if (code != SQLITE_DONE) return connection.failed("read the point's history");
    return {};
}

/// What the record's own events say of the point last.
Result<std::optional<round::Settled>> settledIn(const std::string& record, const std::string& point) {
    const auto json = parseJson(record);
    if (!json) return tl::unexpected(json.error());
    std::optional<round::Settled> last;
    for (const Json& one : (*json)["content"]["events"]) {
        if (one.value("kind", "") != "settled" || one.value("point", "") != point) continue;
        auto event = round::eventFrom(one);
        if (!event) return tl::unexpected(event.error());
        last = std::get<round::Settled>(std::move(event->what));
    }
    return last;
}

} // namespace

Result<Series> series(const Archive& archive, const std::string& registration,
                      const std::vector<std::string>& points, std::size_t most) {
    Series all;
    const auto said = renewals(archive, registration);
    if (!said) return tl::unexpected(said.error());
    std::size_t full = 0;
    auto read =
        eachRound(archive, registration, points,
                  [&](const file::Told& told, const file::RoundTold& round) -> Result<bool> {
                      for (const std::string& point : points) {
                          const file::Seen* seen = round.seenAt(point);
                          if (seen == nullptr || seen->value.empty()) continue;
                          auto& values = all[point];
                          if (values.size() == most) continue;
                          values.push_back({told.at, round.counters, seen->value, seen->unit,
                                            seen->uncertainty, file::isRenewed(*said, told.sha256, *seen),
                                            told.signer.name, seen->fromWord()});
                          if (values.size() == most) ++full;
                      }
                      return full < points.size();
                  });
    if (!read) return tl::unexpected(read.error());
    for (auto& [point, values] : all)
        std::reverse(values.begin(), values.end());
    return all;
}

Result<std::vector<PhotoSeen>> photosOf(const Archive& archive, const std::string& registration,
                                        const std::string& point, std::size_t most) {
    std::vector<PhotoSeen> photos;
    auto read =
        eachRound(archive, registration, {point},
                  [&](const file::Told& told, const file::RoundTold& round) -> Result<bool> {
                      if (round.photos.empty()) return true;
                      const auto text = archive.recordJson(told.sha256);
                      if (!text) return tl::unexpected(text.error());
                      const auto settled = settledIn(*text, point);
                      if (!settled) return tl::unexpected(settled.error());
                      if (!*settled || (*settled)->photos.empty()) return true;
                      PhotoSeen seen{(*settled)->photos.back(), told.sha256, told.signer.name, told.at, {}};
                      for (const round::Measurement& one : (*settled)->measurements)
                          if (one.photo == seen.photo.sha256) seen.measurements.push_back(one);
                      photos.push_back(std::move(seen));
                      return photos.size() < most;
                  });
    if (!read) return tl::unexpected(read.error());
    return photos;
}

} // namespace ambit::archive
