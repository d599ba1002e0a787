#include "rounds.hpp"

#include "airframe/read.hpp"
#include "base/hash.hpp"
#include "record/asked.hpp"
#include "walk/plan.hpp"

#include <QBuffer>
#include <QImage>
#include <nlohmann/json.hpp>

#include <cstdio>
#include <cstdlib>

namespace ambit::test {

namespace {

using round::Event;
using round::Outcome;

[[noreturn]] void die(const Error& error) {
    std::fprintf(stderr, "%s\n", toText(error).c_str());
    std::abort();
}

class Walker {
public:
    Walker(TestRound& target, const RoundWishes& wanted) : out(target), wishes(wanted) {}

    void open(const std::string& walk) {
        const auto plan = walk::makePlan(out.airframe, walk, walk::startOf(out.airframe));
        if (!plan) die(plan.error());
        round::Opened opened{"OX-DEMO",
                             "DEMO-001",
                             out.airframe.id,
                             out.airframe.sha256,
                             walk,
                             {wishes.name, "pilot", "DEMO-PPL-0001"},
                             {},
                             120,
                             round::Position{"50.0000", "10.0000"},
                             plan->steps};
        for (const airframe::Counter& counter : out.airframe.counters)
            opened.counters.push_back({counter.id, "1284.6"});
        out.events.push_back({1, {at}, opened});
        auto begun = round::begin(out.airframe, out.events.front());
        if (!begun) die(begun.error());
        state = std::move(*begun);
        steps = plan->steps;
    }

    void follow() {
        std::size_t count = 0;
        const std::size_t points = out.airframe.walk(state.opened.walk)->points.size();
        for (const walk::Step& step : steps) {
            if (const auto* go = std::get_if<walk::Go>(&step)) act(round::StandReached{go->stand}, 9000);
            if (const auto* set = std::get_if<walk::Set>(&step))
                act(round::SettingChanged{set->setting, set->to}, 20000);
            if (const auto* settle = std::get_if<walk::Settle>(&step)) {
                act(settled(*out.airframe.point(settle->point)), 11000);
                if (++count == points / 2 && wishes.interrupted) interrupt(settle->point);
                if (count == points / 3 && wishes.differs) differ();
                if (count == points / 4 && wishes.asked) ask(settle->point);
            }
        }
    }

    void conclude() {
        const char* reasons = "Told to a mechanic; looked at again before each flight.";
        act(round::Concluded{wishes.fit, wishes.findings > 0 || !wishes.fit ? reasons : ""}, 40000);
    }

private:
    void act(const round::What& what, std::int64_t after) {
        at += after;
        const Event event{state.lastSeq + 1, {at}, what};
        if (auto done = round::apply(state, out.airframe, event); !done) die(done.error());
        out.events.push_back(event);
    }

    /// Told and, as far as the plan needs it, taken back.
    void differ() {
        const std::string here = *state.stand;
        act(round::StandBlocked{here, "Oil on the step: " + wishes.words}, 3000);
        act(round::StandFree{here}, 60000);
        act(round::AreaMarked{1, {{"30", "0"}, {"35", "0"}, {"35", "2.5"}, {"30", "2.5"}}, "Another machine"},
            5000);
        act(round::Light{true}, 1000);
    }

    /// Four times, by somebody with a key of their own.
    void ask(const std::string& point) {
        using Kind = round::Statement::Kind;
        const round::Person ines{"Ines Example", "instructor", "DEMO-FI-0007"};
        const auto file = record::newKeyFile(ines.name, "for this test", {at});
        const auto key = record::unlock(*file, "for this test");
        const auto say = [&](Kind kind, const std::string& where, const std::string& words) {
            const auto number = static_cast<std::int64_t>(state.asks.size()) + 1;
            const std::string id = sha256Hex(std::to_string(number)).substr(0, 32);
            const round::Statement statement{state.id, id, kind, where, words, {at}, ines};
            act(round::Asked{number, statement, record::signStatement(statement, *key).value()}, 2000);
        };
        say(Kind::lookAgain, point, "From below too, please.");
        act(settled(*out.airframe.point(point)), 9000);
        say(Kind::lookAgain, point, "");
        act(round::Declined{2, "Seen twice by now: " + wishes.words}, 4000);
        say(Kind::question, point, "What does the handbook say of it?");
        act(round::Answered{3, "To look at both sides."}, 6000);
        say(Kind::remark, "", "Take your time.");
    }

    void interrupt(const std::string& point) {
        act(round::Paused{}, 2000);
        act(round::Note{"Stopped for the fuel truck. Nobody touched the machine."}, 1000);
        act(round::Resumed{}, 265000);
        act(round::Reopened{point, "Somebody may have leant on it."}, 4000);
        round::Settled again = settled(*out.airframe.point(point));
        act(again, 9000);
    }

    round::Settled settled(const airframe::Point& point) {
        round::Settled what;
        what.point = point.id;
        what.outcome = Outcome::sound;
        what.value = value(point);
        // Only where nothing depends on its being sound.
        const bool free = point.opens.empty() && point.closes.empty() && !point.limit && !needed(point.id);
        if (!free) return what;
        const bool mild = point.finding == airframe::Severity::assess || !wishes.fit;
        if (findings < wishes.findings && mild) return found(point);
        if (unseen < wishes.notInspected && findings >= wishes.findings) {
            ++unseen;
            what.outcome = Outcome::notInspected;
            what.why = "Battery kept for the start; not tried.";
            if (wishes.fit) what.basis = "Day flight under visual rules; not required by day.";
            return what;
        }
        return what;
    }

    round::Settled found(const airframe::Point& point) {
        round::Settled what;
        what.point = point.id;
        what.outcome = Outcome::finding;
        what.words = wishes.words;
        what.severity = point.finding;
        for (int i = 0; i < wishes.longWords; ++i)
            what.words += ' ' + wishes.words;
        if (wishes.grounds && findings == 0 && !wishes.fit) what.severity = airframe::Severity::grounds;
        ++findings;
        for (int i = 0; i < wishes.photosEach; ++i)
            what.photos.push_back(photo());
        return what;
    }

    round::Photo photo() {
        const std::string bytes = wishes.photos.empty()
                                      ? image(320 + 10 * taken, 240, taken)
                                      : wishes.photos[static_cast<std::size_t>(taken) % wishes.photos.size()];
        ++taken;
        const std::string hash = sha256Hex(bytes);
        out.photos[hash] = bytes;
        const bool png = bytes.starts_with("\x89PNG");
        return {hash, png ? "image/png" : "image/jpeg", static_cast<std::int64_t>(bytes.size())};
    }

    [[nodiscard]] bool needed(const std::string& point) const {
        for (const airframe::Setting& setting : out.airframe.settings)
            for (const airframe::SettingChange& change : setting.changes)
                if (std::find(change.needs.begin(), change.needs.end(), point) != change.needs.end())
                    return true;
        return false;
    }

    [[nodiscard]] static std::optional<std::string> value(const airframe::Point& point) {
        if (!point.limit) return std::nullopt;
        return (point.limit->min ? point.limit->min : point.limit->max)->text();
    }

    TestRound& out;
    const RoundWishes& wishes;
    round::State state;
    std::vector<walk::Step> steps;
    std::int64_t at = 1781933400000; // 2026-06-20T05:30:00Z
    int findings = 0;
    int unseen = 0;
    int taken = 0;
};

} // namespace

airframe::Airframe demoHelicopter() {
    auto airframe = airframe::readFrom(AMBIT_ROOT "/demo-aircraft/helicopter/airframe.json");
    if (!airframe) die(airframe.error().front());
    return std::move(*airframe);
}

TestRound walked(const airframe::Airframe& airframe, const RoundWishes& wishes) {
    TestRound out{airframe, {}, {}, {}};
    Walker walker(out, wishes);
    walker.open(airframe.walks.front().id);
    walker.follow();
    walker.conclude();
    auto content = record::roundContent(out.airframe, out.events, {});
    if (!content) die(content.error());
    out.content = std::move(*content);
    return out;
}

std::string image(int width, int height, int seed, const char* format) {
    QImage picture(width, height, QImage::Format_RGB32);
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width; ++x)
            picture.setPixel(x, y, qRgb((x * 3 + seed * 40) % 256, (y * 2) % 256, (x + y) % 256));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    picture.save(&buffer, format, 90);
    return bytes.toStdString();
}

} // namespace ambit::test
