// The invented fleet: every record holds, what they say together contradicts only where that was meant, and
// the same seed makes the same fleet.
#include "airframe/read.hpp"
#include "base/files.hpp"
#include "file/deferral.hpp"
#include "file/file.hpp"
#include "fleet/fleet.hpp"
#include "fleet/keys.hpp"
#include "fleet/trouble.hpp"
#include "record/record.hpp"

#include <QTest>
#include <algorithm>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

using namespace ambit;
using namespace ambit::fleet;

namespace {

std::vector<Description> demoAircraft() {
    std::vector<Description> both;
    for (const char* name : {"aeroplane", "helicopter"}) {
        const auto text = readFile(std::string(AMBIT_ROOT "/demo-aircraft/") + name + "/airframe.json");
        if (!text) qFatal("%s", text.error().what.c_str());
        auto airframe = airframe::read(*text);
        if (!airframe) qFatal("%s", airframe.error().front().what.c_str());
        both.push_back({std::move(*airframe), *text});
    }
    return both;
}

/// Seed 7 happens to make two slips.
Plan small(std::uint64_t seed = 7) {
    Plan plan;
    plan.seed = seed;
    plan.aircraft = 3;
    plan.years = 1;
    plan.records = 300;
    return plan;
}

/// Everything made, by aircraft, in order.
struct All {
    std::map<std::string, std::vector<std::string>> records;
    std::vector<Made> made;
};

All makeIt(const Plan& plan, const std::vector<Description>& descriptions, int threads = 1) {
    const auto fleet = Fleet::of(plan, descriptions);
    if (!fleet) qFatal("%s", toText(fleet.error()).c_str());
    All all;
    auto made = makeAll(*fleet, threads, [&](const Machine& machine, std::string&& json) -> Result<void> {
        all.records[machine.registration].push_back(std::move(json));
        return {};
    });
    if (!made) qFatal("%s", toText(made.error()).c_str());
    all.made = std::move(*made);
    return all;
}

std::size_t count(const All& all) {
    std::size_t sum = 0;
    for (const auto& one : all.records)
        sum += one.second.size();
    return sum;
}

} // namespace

class TestFleet : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        descriptions = demoAircraft();
        fleet = makeIt(small(), descriptions);
        for (const auto& [registration, records] : fleet.records)
            for (const std::string& json : records) {
                auto report = record::verifyRecord(json);
                QVERIFY2(report, report ? "" : toText(report.error()).c_str());
                told[registration].push_back(file::toldBy(*report));
                known[registration].push_back(std::move(report->content));
                signatures += report->signatures.size();
            }
    }

    void exactlyAsManyAsAskedFor() {
        QCOMPARE(fleet.records.size(), std::size_t{3});
        QCOMPARE(count(fleet), std::size_t{300});
        std::size_t all = 0;
        for (const Made& one : fleet.made)
            all += one.records;
        QCOMPARE(all, std::size_t{300});
        QVERIFY(signatures > 300); // instructors countersign
    }

    void itSaysThatItIsInvented() {
        for (const auto& [registration, records] : known)
            for (const Json& one : records) {
                const Json& aircraft = one["aircraft"];
                QVERIFY(registration.starts_with("OX-F"));
                QVERIFY(aircraft["serial"].get<std::string>().starts_with("INVENTED-"));
                if (one["kind"] != "round") continue;
                QVERIFY(aircraft["airframe"]["notice"].get<std::string>().find("nvented") !=
                        std::string::npos);
            }
    }

    void everyKindOccursInItsShare() {
        std::map<std::string, int> kinds;
        std::map<std::string, int> walks;
        for (const auto& one : known)
            for (const Json& content : one.second) {
                ++kinds[content["kind"]];
                if (content["kind"] == "round") ++walks[content["walk"]["id"]];
            }
        const std::map<std::string, std::pair<int, int>> bounds{
            {"round", {195, 258}}, {"rectification", {6, 45}}, {"reading", {3, 15}},
            {"trust", {20, 45}},   {"assessment", {1, 20}},    {"part change", {6, 9}},
            {"hand-over", {1, 1}}, {"revocation", {1, 1}},     {"removal", {1, 1}}};
        for (const auto& [kind, between] : bounds)
            QVERIFY2(kinds[kind] >= between.first && kinds[kind] <= between.second,
                     (kind + ": " + std::to_string(kinds[kind])).c_str());
        QCOMPARE(kinds.size(), bounds.size());
        QVERIFY(walks["turnaround"] > walks["daily"]);
        QVERIFY(walks["daily"] > 40);
    }

    /// No holes, one end; and every contradiction is a slip that was meant, every slip is one.
    void theFilesContradictOnlyWhereMeant() {
        std::set<std::string> slips;
        for (const Made& one : fleet.made)
            slips.insert(one.slips.begin(), one.slips.end());
        QVERIFY(slips.size() >= 2);
        std::set<std::string> seen;
        int closed = 0;
        int again = 0;
        int removed = 0;
        for (const auto& one : told) {
            const file::AircraftFile its = file::fold(one.second);
            QCOMPARE(its.holes.size(), std::size_t{0});
            QVERIFY(its.heads.size() <= 2);
            for (const file::Conflict& conflict : its.conflicts) {
                QVERIFY2(conflict.what.find("runs backwards") != std::string::npos, conflict.what.c_str());
                for (const std::string& sha256 : conflict.records)
                    if (slips.contains(sha256)) seen.insert(sha256);
                QVERIFY(std::any_of(conflict.records.begin(), conflict.records.end(),
                                    [&](const std::string& sha256) { return slips.contains(sha256); }));
            }
            for (const file::Discrepancy& found : its.discrepancies) {
                closed += found.state == file::Discrepancy::State::closed ? 1 : 0;
                again += static_cast<int>(found.again.size());
            }
            removed += static_cast<int>(its.removed.size());
            QVERIFY(!its.inspections.empty());
            QVERIFY(!its.parts.empty());
        }
        QVERIFY(seen == slips);
        QVERIFY(closed >= 5);
        QVERIFY(again >= 3);
        QVERIFY(removed >= 1);
    }

    /// What a value was read from and how well, as its airframe says: nobody in the fleet reads otherwise.
    void valuesSayWhatTheyWereReadFrom() {
        std::size_t measured = 0;
        for (const auto& one : known)
            for (const Json& content : one.second) {
                if (content["kind"] != "round") continue;
                const auto its = std::find_if(
                    descriptions.begin(), descriptions.end(), [&](const Description& description) {
                        return description.airframe.id == content["aircraft"]["airframe"]["id"];
                    });
                QVERIFY(its != descriptions.end());
                for (const Json& point : content["points"]) {
                    const airframe::Point* asDescribed = its->airframe.point(point["id"].get<std::string>());
                    QVERIFY(asDescribed != nullptr);
                    QCOMPARE(point.contains("measured"),
                             asDescribed->limit.has_value() && point["outcome"] != "not inspected");
                    if (!point.contains("measured")) continue;
                    ++measured;
                    const Json& value = point["measured"];
                    QCOMPARE(value.value("from", "-").c_str(), airframe::toText(*asDescribed->limit->from));
                    QCOMPARE(value.value("uncertainty", "-"), asDescribed->limit->uncertainty->text());
                }
            }
        QVERIFY(measured > 300);
    }

    /// In the order made: nothing names what comes later, and only what was let go is missing.
    void eachNamesThoseBeforeIt() {
        for (const auto& one : told) {
            const auto removed = file::fold(one.second).removed;
            std::set<std::string> before;
            for (const file::Told& record : one.second) {
                for (const std::string& earlier : record.previous)
                    QVERIFY(before.contains(earlier) || removed.contains(earlier));
                before.insert(record.sha256);
            }
        }
    }

    void theSameSeedMakesTheSameBytes() {
        const All again = makeIt(small(), descriptions, 3);
        QVERIFY(again.records == fleet.records);
        const All other = makeIt(small(2), descriptions);
        QVERIFY(other.records != fleet.records);
    }

    /// A busier one, for what is rarer.
    void theRarerThingsOccur() {
        Plan plan = small(5);
        plan.aircraft = 1;
        plan.records = 700;
        const All busy = makeIt(plan, descriptions);
        std::map<std::string, std::size_t> times;
        for (const std::string& json : busy.records.begin()->second) {
            const auto report = record::verifyRecord(json);
            QVERIFY(report);
            const Json& content = report->content;
            times["joining"] += content["previous"].size() == 2 ? 1 : 0;
            if (content["kind"] == "assessment" && content.contains("deferral")) {
                const bool rule = content["deferral"]["basis"] == "14 CFR 91.213(d)";
                ++times[rule ? "by the rule" : "on another basis"];
                QCOMPARE(content["deferral"]["answers"].size(), rule ? file::questions().size() : 0);
            }
            if (content["kind"] != "round") continue;
            times["not fit"] += content["conclusion"]["fit"].get<bool>() ? 0 : 1;
            times["differs"] += content.contains("differences") ? 1 : 0;
            for (const Json& point : content["points"]) {
                times["not inspected"] += point["outcome"] == "not inspected" ? 1 : 0;
                times["put right"] += point.contains("earlier") ? 1 : 0;
                times["out of a limit"] +=
                    point.contains("measured") && point["measured"]["verdict"] != "within" ? 1 : 0;
            }
        }
        for (const char* what : {"joining", "by the rule", "on another basis", "not fit", "differs",
                                 "not inspected", "put right", "out of a limit"})
            QVERIFY2(times[what] >= 1, what);
        QVERIFY(times["not fit"] < 40);
        // The last may be left open.
        QVERIFY(times["joining"] == busy.made.front().forks ||
                times["joining"] + 1 == busy.made.front().forks);
    }

    void whatTakesMayStopIt() {
        const auto its = Fleet::of(small(), descriptions);
        QVERIFY(its);
        std::size_t taken = 0;
        const auto made = makeAll(*its, 2, [&](const Machine&, std::string&&) -> Result<void> {
            if (++taken < 20) return {};
            return fail(ErrorCode::storage, "Full.", "here");
        });
        QVERIFY(!made);
        QCOMPARE(made.error().where, std::string("here"));
        QCOMPARE(taken, std::size_t{20});
    }

    void refusesWhatCantBe_data() {
        QTest::addColumn<int>("aircraft");
        QTest::addColumn<int>("years");
        QTest::addColumn<int>("records");
        QTest::addColumn<QString>("where");
        QTest::newRow("no aircraft") << 0 << 1 << 100 << "aircraft";
        QTest::newRow("no years") << 1 << 0 << 100 << "years";
        QTest::newRow("longer than a key lives") << 1 << 16 << 1000 << "years";
        QTest::newRow("too few records") << 3 << 1 << 119 << "records";
        QTest::newRow("too many records") << 1 << 1 << 2001 << "records";
    }
    void refusesWhatCantBe() {
        QFETCH(int, aircraft);
        QFETCH(int, years);
        QFETCH(int, records);
        QFETCH(QString, where);
        Plan plan;
        plan.aircraft = aircraft;
        plan.years = years;
        plan.records = static_cast<std::size_t>(records);
        const auto made = Fleet::of(plan, descriptions);
        QVERIFY(!made);
        QCOMPARE(QString::fromStdString(made.error().where), where);
    }

    void refusesARealAirframe() {
        std::vector<Description> real = descriptions;
        real.front().airframe.notice = "From the handbook.";
        QVERIFY(!Fleet::of(small(), real));
        QVERIFY(!Fleet::of(small(), {}));
    }

    /// RFC 6979 has other nonces; but the same rules hold: it verifies (above), is the same each time, and
    /// differs by seed and by whom.
    void keysComeFromTheSeed() {
        const Instant from{1451606400000};
        const std::string digest(32, 'd');
        const auto one = derivedKey(1, "a", "Kim Example", from);
        const auto same = derivedKey(1, "a", "Kim Example", from);
        const auto other = derivedKey(2, "a", "Kim Example", from);
        const auto another = derivedKey(1, "b", "Kim Example", from);
        QVERIFY(one && same && other && another);
        QCOMPARE(one->certificate().der, same->certificate().der);
        QCOMPARE(*one->signDigest(digest), *same->signDigest(digest));
        QVERIFY(one->certificate().point != other->certificate().point);
        QVERIFY(one->certificate().point != another->certificate().point);
        QCOMPARE(one->certificate().name, std::string("Kim Example"));
        QCOMPARE(toText(one->certificate().notBefore), toText(from));
        QVERIFY(!one->signDigest("short"));
    }

    /// Every point of the demo aircraft that something may be found at has words of its own kind.
    void wordsFitThePoints() {
        Chance chance{7};
        for (const Description& kind : descriptions)
            for (const airframe::Point& point : kind.airframe.points) {
                QVERIFY2(!troubleAt(point).found.empty(), point.id.c_str());
                for (int i = 0; i < 20; ++i)
                    for (const std::string& words : {foundAt(point, chance), repairedAt(point, chance)}) {
                        QVERIFY(words.size() > 3);
                        QVERIFY2(words.find_first_of("{}") == std::string::npos, words.c_str());
                    }
            }
    }

private:
    std::vector<Description> descriptions;
    All fleet;
    std::map<std::string, std::vector<Json>> known; ///< contents
    std::map<std::string, std::vector<file::Told>> told;
    std::size_t signatures = 0;
};

QTEST_APPLESS_MAIN(TestFleet)
#include "tst_fleet.moc"
