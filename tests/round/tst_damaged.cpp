// Events and logs that somebody has damaged, or made of sound ones: a log comes from other devices, too. What
// is refused leaves everything as it was; whatever is taken, all that asks the state gets its answer.
#include "../base/damage.hpp"
#include "rounds.hpp"

#include "base/files.hpp"
#include "round/back.hpp"
#include "round/beside.hpp"
#include "round/pace.hpp"
#include "round/portion.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::round;
using test::damaged;
using test::damagedTree;

namespace {

using Random = std::mt19937;

/// The test machine with a point for the night at a stand where others are.
airframe::Airframe machine() {
    Json json = Json::parse(*readFile(AMBIT_ROOT "/tests/airframe/good.json"));
    for (const Json& point : json["points"])
        if (point["id"] == "arc-clear") {
            Json torch = point;
            torch["id"] = "torch";
            torch["night"] = true;
            json["points"].push_back(std::move(torch));
            break;
        }
    auto read = airframe::read(json.dump());
    if (!read) qFatal("%s", toText(read.error().front()).c_str());
    return std::move(*read);
}

Settled inPhoto() {
    Settled settled = test::finding("oil");
    settled.unit = "mm";
    settled.from = airframe::Means::ruler;
    settled.uncertainty = "0.5";
    settled.renewed = true;
    settled.photos = {{std::string(64, 'a'), "image/jpeg", 1234}};
    return settled;
}

/// Whatever can be said, some of it twice, in an order that mostly can't be.
std::vector<What> allThatIsSaid(const test::Round& round) {
    std::vector<What> all{Paused{},
                          Resumed{},
                          Note{"Wet."},
                          StandBlocked{"front", "Ice."},
                          StandFree{"front"},
                          test::area(1, 3, 3, 4, 4),
                          test::area(2, 5, 3, 6, 4),
                          AreaCleared{1},
                          Light{true},
                          Light{false},
                          OpeningMade{"cowl-right"},
                          OpeningClosed{"cowl-right"},
                          OpeningMade{"cowl-left"},
                          OpeningClosed{"cowl-left"},
                          Reopened{"oil", "Was disturbed."},
                          Alone{},
                          Night{true, true},
                          Night{false, false},
                          Clock{{1750000000000}},
                          PortionBegun{{"torch", "oil"}},
                          PortionEnded{true},
                          PortionEnded{false},
                          inPhoto(),
                          test::notInspected("torch"),
                          Concluded{true, ""},
                          Concluded{false, "Ice."},
                          Withdrawn{"It melts."},
                          Signed{std::string(64, 'a'), std::string(64, 'b'), "Robin Example"},
                          QuickRun{2, 9, 3, 2500, {"oil"}},
                          Interrupted{Interrupted::Cause::call, 95, {BackRule::From::start, 3}, {}},
                          Planned{"So", round.state.plan}};
    for (std::int64_t number = 1; number <= 6; ++number) {
        const auto kind = static_cast<Statement::Kind>(number % 3);
        all.emplace_back(test::ask(number, round.state.id, kind, number < 4 ? "oil" : "torch", "Again?"));
        all.emplace_back(Answered{number, "Yes."});
        all.emplace_back(Declined{number, "No."});
    }
    for (const airframe::Stand& stand : round.airframe->stands)
        all.emplace_back(StandReached{stand.id});
    for (const airframe::Point& point : round.airframe->points) {
        all.emplace_back(test::sound(point.id));
        all.emplace_back(test::finding(point.id));
    }
    for (const airframe::Setting& setting : round.airframe->settings)
        for (const airframe::SettingState& state : setting.states)
            all.emplace_back(SettingChanged{setting.id, state.id});
    return all;
}

/// An event as it comes from elsewhere, damaged now and then; nullopt: refused by the reader.
std::optional<What> asItCame(const What& what, Random& random) {
    Json json = toJson(Event{7, {1750000000123}, what});
    if (random() % 3 == 0) json = damagedTree(std::move(json), random);
    auto event = eventFrom(json);
    if (!event) return std::nullopt;
    return std::move(event->what);
}

/// Everything that asks a state: the card, the lists, the plan, the reader of portions.
void askAll(const State& state, const airframe::Airframe& airframe) {
    (void)nextStep(state, airframe);
    (void)nextPortion(state, airframe, 5);
    for (const std::string& id : leftOfPortion(state))
        QVERIFY(!state.points.at(id).settled);
    for (const bool fit : {true, false})
        for (const Obstacle& one : against(state, airframe, fit))
            QVERIFY(!toText(one, airframe).empty());
    for (const auto from : {BackRule::From::points, BackRule::From::stand, BackRule::From::start})
        (void)askedBack(state, airframe, {from, 3});
    (void)holdsStill(state, airframe);
    QVERIFY(state.settledCount() + state.findingCount() + state.openAskCount() >= 0);
}

} // namespace

class TestDamaged : public QObject {
    Q_OBJECT

private slots:
    /// Told in any order, some of it damaged on its way.
    void logs() {
        const auto airframe = machine();
        Random random(1);
        std::size_t taken = 0;
        std::set<std::size_t> kinds;
        for (int log = 0; log < 40; ++log) {
            test::Round round(airframe);
            const auto all = allThatIsSaid(round);
            for (int i = 0; i < 60; ++i) {
                // Mostly what comes next, so that much has been settled before something odd is said.
                if (random() % 2 == 0 && round.state.phase == Phase::walking) {
                    const auto next = nextStep(round.state, airframe);
                    if (next && !(round.state.portion && round.state.portion->running)) {
                        if (const auto* go = std::get_if<walk::Go>(&*next))
                            (void)round.act(StandReached{go->stand});
                        if (const auto* set = std::get_if<walk::Set>(&*next))
                            (void)round.act(SettingChanged{set->setting, set->to});
                        if (const auto* settle = std::get_if<walk::Settle>(&*next))
                            (void)round.act(test::sound(settle->point));
                    }
                } else if (auto what = asItCame(all[random() % all.size()], random)) {
                    const State before = round.state;
                    const std::size_t kind = what->index();
                    if (round.act(std::move(*what)))
                        kinds.insert(kind), ++taken;
                    else
                        QCOMPARE(test::described(round.state), test::described(before));
                }
                askAll(round.state, airframe);
                if (QTest::currentTestFailed()) return;
            }
            (void)paceOf(airframe, round.events);
            QVERIFY(walkedOf(round.events));
            QCOMPARE(test::described(fold(airframe, round.events).value()), test::described(round.state));
        }
        QVERIFY2(taken > 150 && kinds.size() > 20,
                 qPrintable(QStringLiteral("%1 %2").arg(taken).arg(kinds.size())));
    }

    /// What the reader takes says the same as its text.
    void events() {
        const auto airframe = machine();
        const test::Round round(airframe);
        std::vector<std::string> texts;
        for (const What& what : allThatIsSaid(round))
            texts.push_back(canonicalJson(toJson(Event{7, {1750000000123}, what})));
        texts.push_back(canonicalJson(toJson(round.events.front())));
        Random random(2);
        JsonTape tape;
        std::size_t taken = 0;
        for (int i = 0; i < 8'000; ++i) {
            const std::string& text = texts[random() % texts.size()];
            const auto bytes = damaged(text, text.size(), random);
            const JsonView json = tape.read(test::viewOf(bytes));
            if (!json) continue;
            const auto event = eventFrom(json);
            if (!event) continue;
            ++taken;
            QCOMPARE(canonicalJson(toJson(*event)), std::string(test::viewOf(bytes)));
        }
        QVERIFY2(taken > 80, qPrintable(QString::number(taken)));
    }

    /// The first event names plan, counters and place: as somebody else's device tells it.
    void openings() {
        const auto airframe = machine();
        const test::Round round(airframe);
        const Json opened = toJson(round.events.front());
        Random random(3);
        std::size_t taken = 0;
        for (int i = 0; i < 1'000; ++i) {
            const auto event = eventFrom(damagedTree(opened, random));
            if (!event) continue;
            const auto state = begin(airframe, *event);
            if (!state) continue;
            ++taken;
            askAll(*state, airframe);
            if (QTest::currentTestFailed()) return;
        }
        QVERIFY2(taken > 30, qPrintable(QString::number(taken)));
    }
};

QTEST_APPLESS_MAIN(TestDamaged)
#include "tst_damaged.moc"
