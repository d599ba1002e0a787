// Version 4: how points were told, interruptions, a quick run, the clock, the night. Reported where it was
// forged.
#include "fixture.hpp"
#include "record/content.hpp"
#include "round/back.hpp"
#include "round/pace.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace ambit::round;

namespace {

const airframe::Airframe& machine() {
    return test::recordedMachine();
}

Settled sound(const std::string& point) {
    Settled settled;
    settled.point = point;
    if (const auto& limit = machine().point(point)->limit)
        settled.value = (limit->min ? limit->min : limit->max)->text();
    return settled;
}

/// A whole round along the plan: a portion, a point by key, an interruption, a quick run looked at again, a
/// clock.
std::vector<Event> walked() {
    std::vector<Event> events{test::roundOf(true).front()};
    auto& opened = std::get<Opened>(events.front().what);
    opened.walk = machine().walks.front().id;
    auto state = begin(machine(), events.front());
    if (!state) qFatal("%s", toText(state.error()).c_str());
    const auto act = [&](What what) {
        Event event{state->lastSeq + 1, {state->lastAt.ms + 1000}, std::move(what)};
        if (const auto done = apply(*state, machine(), event); !done)
            qFatal("%s", toText(done.error()).c_str());
        events.push_back(std::move(event));
    };
    const auto plan = [&] {
        walk::Situation now = situation(*state, machine());
        auto made = walk::makePlan(machine(), state->opened.walk, now);
        if (!made) qFatal("no plan");
        act(Planned{"So.", std::move(made->steps)});
    };
    plan();
    act(Clock{{state->lastAt.ms - 120'000}});
    int settled = 0;
    for (auto next = nextStep(*state, machine()); next; next = nextStep(*state, machine())) {
        if (const auto* go = std::get_if<walk::Go>(&*next)) act(StandReached{go->stand});
        if (const auto* set = std::get_if<walk::Set>(&*next)) act(SettingChanged{set->setting, set->to});
        const auto* settle = std::get_if<walk::Settle>(&*next);
        if (settle == nullptr) continue;
        const std::string id = settle->point;
        ++settled;
        if (settled == 2) {
            act(PortionBegun{{id}});
            act(PortionEnded{true});
        }
        Settled what = sound(id);
        if (settled == 3) what.by = By::key;
        act(std::move(what));
        if (settled == 5) {
            const BackRule rule{BackRule::From::points, 2};
            act(Interrupted{Interrupted::Cause::call, 95, rule, askedBack(*state, machine(), rule)});
            plan();
        }
        const auto pace = paceOf(machine(), events);
        if (settled > 7 && !state->quickRun && !pace.quick.empty()) {
            act(asking(*state, pace.quick.back(), true));
            plan();
        }
    }
    act(Concluded{true, ""});
    return events;
}

Json content() {
    auto made = record::roundContent(machine(), walked(), {});
    if (!made) qFatal("%s", toText(made.error()).c_str());
    return std::move(*made);
}

} // namespace

class TestRecordConditions : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { good = content(); }

    void itSaysHowItWas() {
        QCOMPARE(good["version"], 4);
        QCOMPARE(good["interruptions"].size(), 1U);
        const Json& cut = good["interruptions"][0];
        QCOMPARE(cut["cause"], "call");
        QCOMPARE(cut["seconds"], 95);
        QCOMPARE(cut["back"], 2);
        QVERIFY(cut["again"] >= 2);
        QVERIFY(good["quickRun"]["again"] > 0);
        QVERIFY(good.contains("clock"));
        QVERIFY(!good.contains("night"));
        int keys = 0, portions = 0, back = 0;
        const auto count = [&](const Json& one) {
            keys += one.contains("by") ? 1 : 0;
            portions += one.contains("portion") ? 1 : 0;
            back += one.contains("back") ? 1 : 0;
        };
        for (const Json& point : good["points"]) {
            count(point);
            if (point.contains("earlier"))
                for (const Json& one : point["earlier"])
                    count(one);
        }
        QCOMPARE(keys, 1);
        QCOMPARE(portions, 1);
        QCOMPARE(back, cut["again"].get<int>() + good["quickRun"]["again"].get<int>());
        QVERIFY(record::checkContent(good));
    }

    void whatIsForgedIsReported() {
        const auto isReported = [&](const char* pointer, const std::function<void(Json&)>& change) {
            Json forged = good;
            change(forged);
            const auto checked = record::checkContent(forged);
            QVERIFY2(!checked, pointer);
        };
        for (const char* field : {"interruptions", "quickRun", "clock"})
            isReported(field, [&](Json& json) { json.erase(field); });
        for (const char* pointer : {"/interruptions/0/seconds", "/interruptions/0/back",
                                    "/interruptions/0/again", "/interruptions/0/event", "/quickRun/points",
                                    "/quickRun/ms", "/quickRun/again", "/quickRun/event", "/version"})
            isReported(pointer, [&](Json& json) {
                Json& its = json[Json::json_pointer(pointer)];
                its = its.get<int>() + 1;
            });
        isReported("/night", [](Json& json) { json["night"] = true; });
        isReported("/clock/satellite", [](Json& json) { json["clock"]["satellite"] = json["clock"]["at"]; });
        for (std::size_t i = 0; i < good["points"].size(); ++i)
            for (const char* name : {"by", "portion"})
                isReported(name, [&](Json& json) {
                    Json& point = json["points"][i];
                    if (point.contains(name))
                        point.erase(name);
                    else
                        point[name] = name == std::string("by") ? Json("key") : Json(true);
                });
        for (std::size_t i = 0; i < good["points"].size(); ++i)
            if (good["points"][i].contains("earlier"))
                isReported("back", [&](Json& json) { json["points"][i]["earlier"][0].erase("back"); });
    }

    void whatItWantsAgainWasSettled() {
        Json forged = good;
        for (Json& event : forged["events"])
            if (event["kind"] == "interrupted") event["again"].push_back("nothing");
        QVERIFY(!record::checkContent(forged));
    }

private:
    Json good;
};

QTEST_APPLESS_MAIN(TestRecordConditions)
#include "tst_record_conditions.moc"
