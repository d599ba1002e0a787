#include "round/beside.hpp"

#include <algorithm>
#include <set>

namespace ambit::round {

namespace {

/// Goes through a log and keeps what counts of each point.
class Reader {
public:
    explicit Reader(Walked& its) : walked(its) {}

    void see(const Settled& what) {
        Point& point = points[what.point];
        if (point.last == nullptr) walked.order.push_back(what.point);
        point = {&what, false, {}};
    }
    void see(const Reopened& what) { points[what.point].reopened = true; }
    void see(const Asked& what) {
        if (what.statement.kind != Statement::Kind::lookAgain) return;
        points[what.statement.point].asked.insert(what.ask);
        where[what.ask] = what.statement.point;
    }
    void see(const Declined& what) {
        if (const auto point = where.find(what.ask); point != where.end())
            points[point->second].asked.erase(what.ask);
    }
    void see(const Alone& /*what*/) { walked.alone = true; }
    void see(const Concluded& what) { walked.conclusion = what; }
    void see(const Withdrawn& /*what*/) { walked.conclusion.reset(); }
    template<class Other> void see(const Other& /*what*/) {}

    void end() {
        for (const auto& [id, point] : points)
            if (point.last != nullptr && !point.reopened && point.asked.empty())
                walked.settled.emplace(id, *point.last);
    }

private:
    struct Point {
        const Settled* last = nullptr;
        bool reopened = false;
        std::set<std::int64_t> asked;
    };
    Walked& walked;
    std::map<std::string, Point> points;
    std::map<std::int64_t, std::string> where; ///< of an ask to look again: its point
};

tl::unexpected<Error> refuse(Sentence what, std::string where) {
    return fail(ErrorCode::refused, std::move(what), std::move(where),
                say("Lay two rounds of the same walk on the same aircraft side by side."));
}

Result<void> checkSame(const Walked& first, const Walked& second) {
    const Opened& one = first.opened;
    const Opened& other = second.opened;
    if (first.id == second.id) return refuse(say("This is one and the same round."), first.id);
    if (one.registration != other.registration || one.serial != other.serial)
        return refuse(say("These are rounds of two aircraft."), one.registration + ", " + other.registration);
    if (one.walk != other.walk)
        return refuse(say("These are two different walks."), one.walk + ", " + other.walk);
    if (one.airframeSha256 != other.airframeSha256)
        return refuse(say("The airframe's description was changed between these rounds."),
                      other.airframeSha256);
    return {};
}

std::optional<Settled> settledIn(const Walked& walked, const std::string& point) {
    const auto found = walked.settled.find(point);
    return found == walked.settled.end() ? std::nullopt : std::optional(found->second);
}

} // namespace

Result<Walked> walkedOf(const std::vector<Event>& events) {
    const auto* opened = events.empty() ? nullptr : std::get_if<Opened>(&events.front().what);
    if (opened == nullptr)
        return fail(ErrorCode::invalid, say("This is no round: it doesn't begin with the event “opened”."),
                    "event 1");
    Walked walked;
    walked.id = roundId(events.front());
    walked.opened = *opened;
    walked.at = events.front().at;
    Reader reader(walked);
    for (const Event& event : events)
        std::visit([&](const auto& what) { reader.see(what); }, event.what);
    reader.end();
    return walked;
}

bool PointBeside::differs() const {
    if (!byBoth()) return false;
    return first->outcome != second->outcome ||
           (first->outcome == Outcome::finding && first->severity != second->severity);
}

int Beside::countDiffering() const {
    return static_cast<int>(
        std::count_if(points.begin(), points.end(), [](const PointBeside& one) { return one.differs(); }));
}

int Beside::countOnlyByOne() const {
    return static_cast<int>(
        std::count_if(points.begin(), points.end(), [](const PointBeside& one) { return !one.byBoth(); }));
}

Result<Beside> beside(Walked first, Walked second) {
    if (auto same = checkSame(first, second); !same) return tl::unexpected(same.error());
    std::vector<std::string> order = first.order;
    for (const std::string& point : second.order)
        if (std::find(order.begin(), order.end(), point) == order.end()) order.push_back(point);
    std::vector<PointBeside> points;
    Contingency table(outcomes.size(), std::vector<std::int64_t>(outcomes.size(), 0));
    for (const std::string& point : order) {
        PointBeside one{point, settledIn(first, point), settledIn(second, point)};
        if (!one.first && !one.second) continue;
        if (one.byBoth())
            ++table[static_cast<std::size_t>(one.first->outcome)]
                   [static_cast<std::size_t>(one.second->outcome)];
        points.push_back(std::move(one));
    }
    auto agreement = agreementOf(table);
    return Beside{std::move(first), std::move(second), std::move(points), std::move(table),
                  std::move(agreement)};
}

} // namespace ambit::round
