#include "model/look_up.hpp"

#include "archive/import.hpp"
#include "record/entry.hpp"

#include <QString>
#include <algorithm>
#include <set>

namespace ambit::view {

namespace {

Result<Json> contentOf(const archive::Archive& archive, const std::string& record) {
    const auto text = archive.recordJson(record);
    if (!text) return tl::unexpected(text.error());
    auto json = parseJson(*text);
    if (!json) return tl::unexpected(json.error());
    if (!json->is_object() || !json->contains("content") || !(*json)["content"].is_object())
        return fail(ErrorCode::invalid, "This record has no content.", record);
    return (*json)["content"];
}

bool holds(const std::string& text, const std::string& words) {
    return QString::fromStdString(text).contains(QString::fromStdString(words), Qt::CaseInsensitive);
}

std::string textOf(const Json& json, const char* name) {
    return json.contains(name) && json[name].is_string() ? json[name].get<std::string>() : std::string();
}

/// What one record says of parts and points, in lines; those that fit part and JASC.
std::vector<std::string> linesOf(const Json& content, const Wanted& wanted) {
    std::vector<std::string> lines;
    const auto add = [&](const std::string& what, const std::string& jasc, const std::string& words) {
        if (!wanted.part.empty() && !holds(what, wanted.part)) return;
        if (!wanted.jasc.empty() && !jasc.starts_with(wanted.jasc)) return;
        const std::string line = what.empty() ? words : what + ": " + words;
        if (wanted.words.empty() || holds(line, wanted.words)) lines.push_back(line);
    };
    if (content.contains("points"))
        for (const Json& point : content["points"]) {
            const std::string outcome = textOf(point, "outcome");
            if (outcome == "finding")
                add(textOf(point, "name"), textOf(point, "jasc"), textOf(point["finding"], "words"));
            if (outcome == "not inspected")
                add(textOf(point, "name"), textOf(point, "jasc"),
                    "not inspected, " + textOf(point["notInspected"], "why"));
        }
    if (content.contains("conclusion")) add({}, {}, textOf(content["conclusion"], "reasons"));
    for (const char* name : {"words", "description", "to", "why", "basis"})
        if (!textOf(content, name).empty()) add(textOf(content, "position"), {}, textOf(content, name));
    if (content.contains("deferral"))
        add({}, {}, textOf(content["deferral"], "basis") + ", " + textOf(content["deferral"], "placard"));
    std::erase(lines, std::string());
    return lines;
}

bool saysMore(const Wanted& wanted) {
    return !wanted.words.empty() || !wanted.part.empty() || !wanted.jasc.empty();
}

bool fits(const archive::RecordInfo& info, const Wanted& wanted) {
    return (wanted.kind.empty() || info.kind == wanted.kind) &&
           (wanted.person.empty() || holds(info.signer, wanted.person)) &&
           (!wanted.from || info.concludedAt >= *wanted.from) &&
           (!wanted.before || info.concludedAt < *wanted.before);
}

/// Those that found what is in the state now.
Result<std::set<std::string>> foundIn(const archive::Archive& archive, const Wanted& wanted) {
    std::set<std::string> records;
    const auto its = archive::fileOf(archive, wanted.registration);
    if (!its) return tl::unexpected(its.error());
    for (const file::Discrepancy& one : its->discrepancies) {
        if (one.state != *wanted.state) continue;
        records.insert(one.found.record);
        for (const file::Word& again : one.again)
            records.insert(again.record);
    }
    return records;
}

bool concerns(const Json& discrepancy, const std::string& point) {
    return textOf(discrepancy, "point") == point;
}

std::optional<Sighting> sightingIn(const Json& content, const std::string& wanted) {
    Sighting one;
    if (content.contains("points"))
        for (const Json& point : content["points"]) {
            if (textOf(point, "id") != wanted) continue;
            one.what = textOf(point, "outcome");
            if (point.contains("finding")) {
                one.words = textOf(point["finding"], "words");
                one.grounds = textOf(point["finding"], "class") == "grounds";
            }
            if (point.contains("notInspected")) one.words = textOf(point["notInspected"], "why");
            if (point.contains("measured")) {
                one.value = textOf(point["measured"], "value");
                one.unit = textOf(point["measured"], "unit");
                one.verdict = textOf(point["measured"], "verdict");
            }
            return one;
        }
    if (content.contains("discrepancy") && concerns(content["discrepancy"], wanted)) {
        one.what = textOf(content, "kind");
        one.words = textOf(content, "words");
        return one;
    }
    if (content.contains("discrepancies"))
        for (const Json& discrepancy : content["discrepancies"])
            if (concerns(discrepancy, wanted)) {
                one.what = textOf(content, "kind");
                one.words = textOf(content, "description");
                return one;
            }
    return std::nullopt;
}

/// From the record after this one on; "": from the newest.
using At = std::vector<archive::RecordInfo>::const_iterator;
At goOnAfter(const std::vector<archive::RecordInfo>& records, const std::string& after) {
    if (after.empty()) return records.begin();
    const auto at =
        std::find_if(records.begin(), records.end(), [&](const auto& info) { return info.sha256 == after; });
    return at == records.end() ? at : at + 1;
}

} // namespace

Result<std::vector<Hit>> find(const archive::Archive& archive, const Wanted& wanted) {
    const auto records = archive.records(wanted.registration);
    if (!records) return tl::unexpected(records.error());
    std::optional<std::set<std::string>> inState;
    if (wanted.state) {
        auto found = foundIn(archive, wanted);
        if (!found) return tl::unexpected(found.error());
        inState = std::move(*found);
    }
    std::vector<Hit> hits;
    for (auto at = goOnAfter(*records, wanted.after); at != records->end() && hits.size() < wanted.most;
         ++at) {
        if (!fits(*at, wanted) || (inState && !inState->contains(at->sha256))) continue;
        const auto content = contentOf(archive, at->sha256);
        if (!content) continue; // a record that can't be read says nothing; Verify names it
        const auto lines = linesOf(*content, wanted);
        if (lines.empty() && saysMore(wanted)) continue;
        hits.push_back({*at, lines.empty() ? std::string() : lines.front()});
    }
    return hits;
}

Result<std::vector<Sighting>> history(const archive::Archive& archive, const std::string& registration,
                                      const std::string& point, std::size_t most, const std::string& after) {
    const auto records = archive.records(registration);
    if (!records) return tl::unexpected(records.error());
    std::vector<Sighting> sightings;
    for (auto at = goOnAfter(*records, after); at != records->end() && sightings.size() < most; ++at) {
        const auto content = contentOf(archive, at->sha256);
        if (!content) continue;
        auto one = sightingIn(*content, point);
        if (!one) continue;
        one->record = at->sha256;
        one->at = at->concludedAt;
        one->by = at->signer;
        sightings.push_back(std::move(*one));
    }
    return sightings;
}

} // namespace ambit::view
