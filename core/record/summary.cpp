#include "record/summary.hpp"

#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <set>

namespace ambit::record {

namespace {

using round::Event;
using round::Outcome;
using round::Settled;

tl::unexpected<Error> refuse(const Event& event, std::string what) {
    return fail(ErrorCode::invalid, std::move(what), "event " + std::to_string(event.seq));
}

/// A point's settlings in order; all but the last taken back.
struct Point {
    Json current; ///< of the settling that counts
    Json earlier = Json::array();
    bool settled = false;
};

Json toJson(const Settled& settled, Instant at) {
    Json json{{"outcome", round::toText(settled.outcome)}, {"at", toText(at)}};
    if (settled.value) json["measured"] = {{"value", *settled.value}};
    if (settled.outcome == Outcome::finding) {
        Json photos = Json::array();
        for (const round::Photo& photo : settled.photos)
            photos.push_back(photo.sha256);
        json["finding"] = {{"words", settled.words},
                           {"class", airframe::toText(settled.severity)},
                           {"photos", std::move(photos)}};
    }
    if (settled.outcome == Outcome::notInspected) {
        Json& reason = json["notInspected"] = {{"why", settled.why}};
        if (!settled.basis.empty()) reason["basis"] = settled.basis;
    }
    return json;
}

/// Goes through the events once and keeps what the summary needs.
class Reader {
public:
    Result<void> take(const Event& event) {
        if (event.seq != ++lastSeq) return refuse(event, "The events' numbers don't follow each other.");
        if (opened == nullptr && !std::holds_alternative<round::Opened>(event.what))
            return refuse(event, "A round begins with the event “opened”.");
        if (concluded != nullptr && !std::holds_alternative<round::Withdrawn>(event.what))
            return refuse(event, "A concluded round takes nothing more.");
        return std::visit([&](const auto& what) { return see(event, what); }, event.what);
    }

    Result<Json> summary() const {
        if (concluded == nullptr || opened == nullptr)
            return fail(ErrorCode::refused, "The round is not concluded.", {}, "Conclude it first.");
        Json json = aboutTheRound();
        json["photos"] = photos;
        if (!differences.empty()) json["differences"] = differences;
        Json& list = json["points"] = Json::array();
        for (const std::string& id : order) {
            const Point& point = points.at(id);
            if (!point.settled)
                return fail(ErrorCode::refused, "A re-opened point was not settled again.", id);
            Json& one = list.emplace_back(point.current);
            one["id"] = id;
            if (!point.earlier.empty()) one["earlier"] = point.earlier;
        }
        return json;
    }

private:
    Result<void> see(const Event& event, const round::Opened& what) {
        if (opened != nullptr) return refuse(event, "A round is opened once.");
        opened = &what;
        first = &event;
        return {};
    }

    Result<void> see(const Event& event, const Settled& what) {
        auto [at, isNew] = points.try_emplace(what.point);
        Point& point = at->second;
        if (point.settled)
            return refuse(event, "A settled point must be re-opened before it is settled again.");
        if (isNew) order.push_back(what.point);
        point.current = toJson(what, event.at);
        point.settled = true;
        for (const round::Photo& photo : what.photos)
            if (seen.insert(photo.sha256).second)
                photos.push_back({{"sha256", photo.sha256}, {"type", photo.type}, {"bytes", photo.bytes}});
        return {};
    }

    Result<void> see(const Event& event, const round::Reopened& what) {
        const auto found = points.find(what.point);
        if (found == points.end() || !found->second.settled)
            return refuse(event, "Only a settled point can be re-opened.");
        Json& back = found->second.earlier.emplace_back(std::move(found->second.current));
        back["reopened"] = {{"at", toText(event.at)}, {"why", what.why}};
        found->second.settled = false;
        return {};
    }

    Result<void> see(const Event& event, const round::Concluded& what) {
        concluded = &what;
        concludedAt = event.at;
        return {};
    }

    Result<void> see(const Event& event, const round::Withdrawn& /*what*/) {
        if (concluded == nullptr) return refuse(event, "There is no conclusion to take back.");
        concluded = nullptr;
        return {};
    }

    Result<void> see(const Event& event, const round::StandBlocked& what) {
        if (!begin("stand " + what.stand)) return refuse(event, "A blocked stand is blocked once.");
        differences.push_back(
            {{"what", "stand blocked"}, {"at", toText(event.at)}, {"stand", what.stand}, {"why", what.why}});
        return {};
    }

    Result<void> see(const Event& event, const round::StandFree& what) {
        if (!end(event, "stand " + what.stand)) return refuse(event, "Only a blocked stand is freed.");
        return {};
    }

    Result<void> see(const Event& event, const round::AreaMarked& what) {
        if (!begin("area " + std::to_string(what.area)))
            return refuse(event, "A marked area is marked once.");
        differences.push_back(
            {{"what", "area marked"}, {"at", toText(event.at)}, {"area", what.area}, {"why", what.why}});
        return {};
    }

    Result<void> see(const Event& event, const round::AreaCleared& what) {
        if (!end(event, "area " + std::to_string(what.area)))
            return refuse(event, "Only a marked area is cleared.");
        return {};
    }

    Result<void> see(const Event& event, const round::Light& what) {
        if (!(what.low ? begin("light") : end(event, "light")))
            return refuse(event, "The light is said to be what it was not.");
        if (what.low) differences.push_back({{"what", "light low"}, {"at", toText(event.at)}});
        return {};
    }

    static Result<void> see(const Event& event, const round::Signed& /*what*/) {
        return refuse(event, "A round's own signature can't be part of what it signs.");
    }

    template<class Other> static Result<void> see(const Event& /*event*/, const Other& /*what*/) {
        return {};
    }

    /// What differs lasts until it is said that it doesn't any more. False: it did already.
    bool begin(const std::string& what) { return lasting.emplace(what, differences.size()).second; }
    /// False: it didn't.
    bool end(const Event& event, const std::string& what) {
        const auto found = lasting.find(what);
        if (found == lasting.end()) return false;
        differences[found->second]["until"] = toText(event.at);
        lasting.erase(found);
        return true;
    }

    [[nodiscard]] Json aboutTheRound() const {
        Json counters = Json::array();
        for (const round::CounterReading& reading : opened->counters)
            counters.push_back({{"id", reading.id}, {"value", reading.value}});
        Json json{{"aircraft",
                   {{"registration", opened->registration},
                    {"serial", opened->serial},
                    {"airframe", {{"id", opened->airframe}, {"sha256", opened->airframeSha256}}},
                    {"counters", std::move(counters)}}},
                  {"walk", {{"id", opened->walk}}},
                  {"round", round::roundId(*first)},
                  {"openedAt", toText(first->at)},
                  {"concludedAt", toText(concludedAt)},
                  {"offsetMinutes", opened->offsetMinutes},
                  {"conclusion", {{"fit", concluded->fit}}},
                  {"signer",
                   {{"name", opened->who.name},
                    {"role", opened->who.role},
                    {"certificate", opened->who.certificate}}}};
        if (!concluded->reasons.empty()) json["conclusion"]["reasons"] = concluded->reasons;
        if (opened->position)
            json["position"] = {{"latitude", opened->position->latitude},
                                {"longitude", opened->position->longitude}};
        return json;
    }

    const Event* first = nullptr;
    const round::Opened* opened = nullptr;
    const round::Concluded* concluded = nullptr;
    Instant concludedAt;
    std::int64_t lastSeq = 0;
    std::map<std::string, Point> points;
    std::vector<std::string> order; ///< of first settling
    std::set<std::string> seen;
    Json photos = Json::array();
    Json differences = Json::array();
    std::map<std::string, std::size_t> lasting; ///< what differs still: its place among them
};

} // namespace

int versionOf(const std::vector<Event>& events) {
    int version = 1;
    for (const Event& event : events)
        version = std::max(version, round::versionOf(event.what));
    return version;
}

Result<Json> summaryOf(const std::vector<Event>& events) {
    Reader reader;
    for (const Event& event : events)
        if (auto taken = reader.take(event); !taken) return tl::unexpected(taken.error());
    return reader.summary();
}

} // namespace ambit::record
