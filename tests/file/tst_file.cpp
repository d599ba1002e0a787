// What an aircraft's records together say: the life of a discrepancy, what contradicts, what is missing,
// whose word counts; and that the order in which records came in doesn't matter.
#include "file/comes_due.hpp"
#include "record/record.hpp"

#include <QTest>
#include <algorithm>
#include <nlohmann/json.hpp>
#include <random>

using namespace ambit;
using namespace ambit::file;
using State = Discrepancy::State;

namespace {

const std::string ownerKey(64, '0');
const std::string mechanicKey(64, '1');
const std::string pilotKey(64, '2');

/// Makes records one after another on a device that knows those given to it.
class Device {
public:
    std::vector<Told> known;

    std::string round(const std::string& at, const std::vector<Json>& points,
                      const std::string& hours = "100.0") {
        Json content{{"kind", "round"},
                     {"concludedAt", at + "T08:00:00.000Z"},
                     {"aircraft", {{"counters", Json::array({Json{{"id", "hours"}, {"value", hours}}})}}},
                     {"signer", {{"name", "Robin"}, {"role", "pilot"}, {"certificate", ""}}},
                     {"points", points}};
        return add(std::move(content), pilotKey);
    }

    std::string entry(const std::string& at, const record::Entry& what, const std::string& key = mechanicKey,
                      const std::string& role = "mechanic") {
        auto content = record::entryContent({"OX-TEST",
                                             "1",
                                             {*parseInstant(at + "T12:00:00.000Z"), 0},
                                             fold(known).heads,
                                             {"Kim", role, "C-1"}},
                                            what);
        if (!content) qFatal("%s %s", content.error().what.c_str(), content.error().where.c_str());
        return add(std::move(*content), key);
    }

private:
    std::string add(Json content, const std::string& key) {
        content["previous"] = fold(known).heads;
        std::string sha256 = record::identityOf(content);
        known.push_back(toldBy(sha256, content, key));
        return sha256;
    }
};

Json found(const char* id, const char* words, const char* severity = "assess") {
    return {{"id", id},
            {"name", id},
            {"zone", "Nose"},
            {"outcome", "finding"},
            {"finding", {{"words", words}, {"class", severity}}}};
}
Json sound(const char* id) {
    return {{"id", id}, {"name", id}, {"zone", "Nose"}, {"outcome", "sound"}};
}

record::Rectification work(const std::string& in, const std::string& point) {
    return {{{in, point}}, {}, "Replaced.", "2026-03-03", "", "mechanic, airframe", {}};
}
record::Assessment deferred(const std::string& in, const std::string& point, const std::string& until) {
    record::Deferral how;
    how.basis = "other";
    how.reference = "R-1";
    how.placard = "“Inoperative”";
    how.until = until;
    how.determinedBy = {"Kim", "mechanic", "C-1"};
    return {{in, point}, "Can wait.", how};
}

/// Everything that a file says, as text to compare.
std::string said(const AircraftFile& file) {
    std::string all;
    for (const Page& page : file.pages)
        all += page.sha256 + toText(page.standing) + '\n';
    for (const Discrepancy& one : file.discrepancies)
        all += one.id.record + one.id.point + toText(one.state) + std::to_string(one.again.size()) +
               std::to_string(one.seenSound.size()) + '\n';
    for (const auto& [id, count] : file.counters)
        all += id + count.value + count.record + '\n';
    for (const Conflict& one : file.conflicts) {
        all += one.what;
        for (const std::string& sha256 : one.records)
            all += sha256;
        all += '\n';
    }
    for (const Hole& hole : file.holes)
        all += hole.sha256 + '\n';
    for (const std::string& head : file.heads)
        all += head + '\n';
    return all;
}

bool says(const AircraftFile& file, const char* words) {
    return std::any_of(file.conflicts.begin(), file.conflicts.end(),
                       [&](const Conflict& one) { return one.what.find(words) != std::string::npos; });
}

} // namespace

class TestFile : public QObject {
    Q_OBJECT

private slots:
    void lifeOfADiscrepancy() {
        Device device;
        const std::string first = device.round("2026-03-01", {found("light", "dark"), sound("belt")});
        AircraftFile file = fold(device.known);
        QCOMPARE(file.discrepancies.size(), std::size_t{1});
        const record::DiscrepancyId id{first, "light"};
        QVERIFY(file.discrepancy(id)->state == State::open);
        QCOMPARE(standsAgainst(file, "2026-03-01").size(), std::size_t{1}); // nobody has assessed it

        device.entry("2026-03-01", deferred(first, "light", "2026-03-10"));
        file = fold(device.known);
        QVERIFY(file.discrepancy(id)->state == State::deferred);
        QVERIFY(standsAgainst(file, "2026-03-10").empty());
        QCOMPARE(standsAgainst(file, "2026-03-11").size(), std::size_t{1}); // run out

        device.round("2026-03-02", {found("light", "still dark")});
        file = fold(device.known);
        QCOMPARE(file.discrepancies.size(), std::size_t{1});
        QCOMPARE(file.discrepancies[0].again.size(), std::size_t{1});
        QVERIFY(file.discrepancies[0].state == State::deferred);

        device.entry("2026-03-03", work(first, "light"));
        file = fold(device.known);
        QVERIFY(file.discrepancies[0].state == State::rectified);
        QVERIFY(standsAgainst(file, "2027-01-01").empty());

        device.round("2026-03-04", {sound("light")});
        QVERIFY(fold(device.known).discrepancies[0].state == State::closed);

        const std::string later = device.round("2026-03-05", {found("light", "dark again", "grounds")});
        file = fold(device.known);
        QCOMPARE(file.discrepancies.size(), std::size_t{2});
        QVERIFY(file.discrepancy({later, "light"})->state == State::grounding);
        QCOMPARE(standsAgainst(file, "2026-03-05").size(), std::size_t{1});
        QVERIFY(file.conflicts.empty());
        QVERIFY(file.holes.empty());
        QCOMPARE(file.heads, std::vector<std::string>{later});
    }

    // What was deferred and has grown grounds: nobody has said that it may wait like that.
    void grownItGrounds() {
        Device device;
        const std::string first = device.round("2026-03-01", {found("light", "dark")});
        device.entry("2026-03-01", deferred(first, "light", "2026-04-01"));
        QVERIFY(standsAgainst(fold(device.known), "2026-03-02").empty());
        device.round("2026-03-02", {found("light", "smells burnt", "grounds")});
        const AircraftFile file = fold(device.known);
        QVERIFY(file.discrepancies[0].state == State::grounding);
        QCOMPARE(standsAgainst(file, "2026-03-02").size(), std::size_t{1});
        // Assessed anew, it may wait again.
        device.entry("2026-03-02", deferred(first, "light", "2026-04-01"));
        QVERIFY(standsAgainst(fold(device.known), "2026-03-02").empty());
    }

    void soundIsNotRectified() {
        Device device;
        device.round("2026-03-01", {found("light", "dark")});
        device.round("2026-03-02", {sound("light")});
        const AircraftFile file = fold(device.known);
        QVERIFY(file.discrepancies[0].state == State::open);
        QCOMPARE(file.discrepancies[0].seenSound.size(), std::size_t{1});
    }

    void aDeferralEndsByHours() {
        Device device;
        const std::string first = device.round("2026-03-01", {found("light", "dark")}, "100.0");
        auto how = deferred(first, "light", "");
        how.deferral->untilCounters = {{"hours", "105.0"}};
        device.entry("2026-03-01", how);
        device.entry("2026-03-02", record::Reading{{{"hours", "105.00"}}});
        QVERIFY(standsAgainst(fold(device.known), "2026-03-02").empty());
        device.entry("2026-03-03", record::Reading{{{"hours", "105.1"}}});
        QCOMPARE(standsAgainst(fold(device.known), "2026-03-03").size(), std::size_t{1});
    }

    // Two archives merged, each with another machine under the registration: it used to pass in silence.
    void aRegistrationOfTwoMachinesIsAConflict() {
        Device device;
        device.entry("2026-03-01", record::Reading{{{"hours", "100.0"}}});
        device.entry("2026-03-02", record::Reading{{{"hours", "101.0"}}});
        QVERIFY(fold(device.known).conflicts.empty());
        const std::string of2 = device.entry("2026-03-03", record::Reading{{{"hours", "102.0"}}});
        device.known.back().serial = "2";
        device.entry("2026-03-04", record::Reading{{{"hours", "103.0"}}});
        const AircraftFile file = fold(device.known);
        QCOMPARE(file.conflicts.size(),
                 std::size_t{1}); // said once, not at every change from one to the other
        QVERIFY(says(file, "two serial numbers: 1 and 2"));
        const auto& records = file.conflicts.front().records;
        QVERIFY(std::find(records.begin(), records.end(), of2) != records.end());
    }

    void conflictsAreShown() {
        Device one;
        const std::string first = one.round("2026-03-01", {found("light", "dark")});
        Device other = one; // a second tablet, apart from now on
        one.entry("2026-03-02", deferred(first, "light", "2026-04-01"));
        other.entry("2026-03-02", deferred(first, "light", "2026-05-01"));
        other.entry("2026-03-03", record::Reading{{{"hours", "99.9"}}});
        other.entry("2026-03-03", work(first, "belt"));
        std::vector<Told> both = one.known;
        both.insert(both.end(), other.known.begin(), other.known.end());
        const AircraftFile file = fold(both);
        QVERIFY(says(file, "assessed twice"));
        QVERIFY(says(file, "runs backwards"));
        QVERIFY(says(file, "nobody found"));
        QCOMPARE(file.conflicts.size(), std::size_t{3});
        QCOMPARE(file.heads.size(), std::size_t{2});
        // Who knows of the first may assess anew.
        Device again = one;
        again.entry("2026-03-04", deferred(first, "light", "2026-06-01"));
        QVERIFY(fold(again.known).conflicts.empty());
    }

    // 14 CFR 91.409(b), READ: the excess is included in computing the next 100 hours. A life counts what the
    // part had when fitted and what the aircraft counted since (common practice, no source).
    void whatComesDue() {
        airframe::Airframe airframe;
        airframe.counters = {{"hours", "Hours", "h"}};
        airframe.inspections = {{"100h",
                                 "100 hours",
                                 {airframe::Units{"hours", "h", *Decimal::parse("100"), {}, {}}},
                                 "14 CFR 91.409(b)"}};
        airframe.lifeLimits = {{"blade-a",
                                "Blade A",
                                {airframe::Units{"hours", "h", *Decimal::parse("2200"), {}, {}}},
                                "Invented"}};
        Device device;
        const Date today = *Date::parse("2026-06-01");
        const auto verdictOf = [&](const char* id) {
            const auto items = comesDue(fold(device.known), airframe, today);
            return std::find_if(items.begin(), items.end(), [&](const Item& item) { return item.id == id; })
                ->due.verdict;
        };
        using judge::DueVerdict;
        QVERIFY(verdictOf("100h") == DueVerdict::unknown);
        const auto inspected = [](const char* on, const char* hours) {
            return record::Rectification{{}, {"100h"}, "Inspected.", on, "", "mechanic", {{"hours", hours}}};
        };
        device.entry("2026-01-01", inspected("2026-01-01", "100.0"));
        device.entry("2026-03-01", inspected("2026-03-01", "206.0")); // 6 late
        device.entry("2026-05-01", record::Reading{{{"hours", "300.0"}}});
        QVERIFY(verdictOf("100h") != DueVerdict::passed);
        device.entry("2026-05-02", record::Reading{{{"hours", "300.1"}}});
        QVERIFY(verdictOf("100h") == DueVerdict::passed);
        QCOMPARE(standsAgainst(comesDue(fold(device.known), airframe, today)).size(), std::size_t{1});

        device.entry("2026-05-03", record::PartChange{"blade-a",
                                                      {},
                                                      record::Part{"Blade", "B", "7", {{"hours", "2199.0"}}},
                                                      "Fitted.",
                                                      "2026-05-03",
                                                      "mechanic",
                                                      {{"hours", "300.1"}}});
        QVERIFY(verdictOf("blade-a") != DueVerdict::passed);
        device.entry("2026-05-04", record::Reading{{{"hours", "301.2"}}});
        QVERIFY(verdictOf("blade-a") == DueVerdict::passed);
    }

    void partsComeAndGo() {
        Device device;
        const auto change = [](const std::optional<record::Part>& off,
                               const std::optional<record::Part>& on) {
            return record::PartChange{"blade A", off, on, "Changed.", "2026-03-01", "mechanic", {}};
        };
        const record::Part first{"Blade", "B", "001", {}};
        const record::Part second{"Blade", "B", "002", {}};
        device.entry("2026-03-01", change({}, first));
        device.entry("2026-03-02", change(first, second));
        AircraftFile file = fold(device.known);
        QCOMPARE(file.parts.at("blade A").part.serial, std::string("002"));
        QVERIFY(file.conflicts.empty());
        device.entry("2026-03-03", change(first, {})); // that one had gone
        file = fold(device.known);
        QVERIFY(says(file, "taken off"));
        QVERIFY(!file.parts.contains("blade A"));
    }

    void whoseWordCounts() {
        Device device;
        const auto from = [](const char* day) { return *parseInstant(std::string(day) + "T00:00:00.000Z"); };
        const auto standingOf = [&](const std::string& sha256) {
            const AircraftFile file = fold(device.known);
            return std::find_if(file.pages.begin(), file.pages.end(),
                                [&](const Page& page) { return page.sha256 == sha256; })
                ->standing;
        };
        const std::string early = device.entry("2026-03-01", record::Reading{{{"hours", "1"}}});
        QVERIFY(standingOf(early) == Standing::unsaid);
        device.entry("2026-03-02", record::Trust{"Kim", mechanicKey, {"mechanic"}, from("2026-03-02")},
                     ownerKey, "owner");
        QVERIFY(standingOf(early) == Standing::other); // before it was trusted
        const std::string good = device.entry("2026-03-03", record::Reading{{{"hours", "2"}}});
        QVERIFY(standingOf(good) == Standing::trusted);
        const std::string asPilot =
            device.entry("2026-03-03", record::Reading{{{"hours", "2"}}}, mechanicKey, "pilot");
        QVERIFY(standingOf(asPilot) == Standing::other);
        device.entry("2026-03-04", record::Trust{"Mo", pilotKey, {"owner"}, from("2026-03-01")}, pilotKey,
                     "owner");
        QVERIFY(says(fold(device.known), "isn't the owner"));
        // Stolen on the 5th, said on the 9th: what was signed between is shown as such.
        const std::string before = device.entry("2026-03-04", record::Reading{{{"hours", "3"}}});
        const std::string between = device.entry("2026-03-06", record::Reading{{{"hours", "4"}}});
        device.entry("2026-03-09", record::Revocation{mechanicKey, from("2026-03-05"), "Stolen."}, ownerKey,
                     "owner");
        QVERIFY(standingOf(before) == Standing::trusted);
        QVERIFY(standingOf(between) == Standing::revoked);
        const AircraftFile file = fold(device.known);
        const auto keyOf = [&](const std::string& fingerprint) {
            return *std::find_if(file.keys.begin(), file.keys.end(),
                                 [&](const KnownKey& one) { return one.key == fingerprint; });
        };
        QCOMPARE(file.keys.size(), std::size_t{3});
        QVERIFY(keyOf(ownerKey).owner);
        const KnownKey mechanic = keyOf(mechanicKey);
        QVERIFY(!mechanic.owner);
        QCOMPARE(mechanic.records, 5);
        QCOMPARE(mechanic.signedAs.size(), std::size_t{2}); // mechanic, once as pilot
        QVERIFY(mechanic.roles.at("mechanic") == from("2026-03-02"));
        QVERIFY(mechanic.revoked == from("2026-03-05"));
        QVERIFY(keyOf(pilotKey).roles.empty()); // it said so itself, and isn't the owner's
    }

    /// Forgotten in the round, said afterwards; and taken back by saying so.
    void aRenewalIsSaidAfterwards() {
        const auto measured = [](const char* value, bool renewed) {
            Json point = sound("shoe");
            point["measured"] = {{"value", value}, {"unit", "mm"}, {"verdict", "within"}};
            if (renewed) point["measured"]["renewed"] = true;
            return point;
        };
        Device device;
        const std::string first = device.round("2026-03-01", {measured("4.0", false), sound("belt")});
        const std::string second = device.round("2026-03-02", {measured("6.0", true)});
        const auto renewed = [&](const std::string& in) {
            for (const Told& one : device.known)
                if (one.sha256 == in)
                    return isRenewed(fold(device.known).renewals, in, *one.round()->seenAt("shoe"));
            qFatal("no such record");
        };
        QVERIFY(!renewed(first) && renewed(second)); // as the rounds say
        device.entry("2026-03-03", record::Renewal{{first, "shoe"}, true, "Changed."}, ownerKey, "owner");
        QVERIFY(renewed(first) && renewed(second));
        QCOMPARE(fold(device.known).renewals.at({first, "shoe"}).word.words, std::string("Changed."));
        device.entry("2026-03-04", record::Renewal{{first, "shoe"}, false, ""});
        QVERIFY(!renewed(first));
        // What a round said by mistake is taken back the same way.
        device.entry("2026-03-04", record::Renewal{{second, "shoe"}, false, ""});
        QVERIFY(!renewed(second));
        device.entry("2026-03-05", record::Renewal{{first, "shoe"}, true, ""});
        QVERIFY(renewed(first));
        QVERIFY(fold(device.known).conflicts.empty());
        // The order in the file counts, not the clock: who said it knew of the word before.
        device.entry("2026-03-03", record::Renewal{{first, "shoe"}, false, ""});
        QVERIFY(!renewed(first));
        // Nothing was measured there, or nobody has the record.
        device.entry("2026-03-06", record::Renewal{{first, "belt"}, true, ""});
        QVERIFY(says(fold(device.known), "nobody measured"));
        Device other;
        other.round("2026-03-01", {measured("4.0", false)});
        other.entry("2026-03-06", record::Renewal{{std::string(64, 'a'), "shoe"}, true, ""});
        QVERIFY(says(fold(other.known), "nobody measured"));
        QVERIFY(fold(other.known).renewals.empty());
    }

    /// On two tablets two people say different things, and neither knows of the other.
    void aRenewalSaidInTwoWays() {
        Json point = sound("shoe");
        point["measured"] = {{"value", "4.0"}, {"unit", "mm"}, {"verdict", "within"}};
        Device one;
        const std::string first = one.round("2026-03-01", {point});
        Device two = one;
        one.entry("2026-03-02", record::Renewal{{first, "shoe"}, true, ""}, ownerKey, "owner");
        two.entry("2026-03-03", record::Renewal{{first, "shoe"}, false, ""});
        one.known.push_back(two.known.back());
        QVERIFY(says(fold(one.known), "said in two ways"));
        QVERIFY(!fold(one.known).renewals.at({first, "shoe"}).renewed); // the later one
        // The same word twice contradicts nothing.
        Device three = two;
        three.known.pop_back();
        three.entry("2026-03-04", record::Renewal{{first, "shoe"}, false, ""});
        two.known.push_back(three.known.back());
        QVERIFY(fold(two.known).conflicts.empty());
    }

    void holesAndStubs() {
        Device device;
        const std::string first = device.entry("2026-03-01", record::Reading{{{"hours", "1"}}});
        const std::string second = device.entry("2026-03-02", record::Reading{{{"hours", "2"}}});
        device.entry("2026-03-03", record::Reading{{{"hours", "3"}}});
        std::vector<Told> torn{device.known[0], device.known[2]};
        AircraftFile file = fold(torn);
        QCOMPARE(file.holes.size(), std::size_t{1});
        QCOMPARE(file.holes[0].sha256, second);
        QCOMPARE(file.holes[0].namedBy, std::vector<std::string>{device.known[2].sha256});
        // Let go on purpose it is no hole, and the chain holds through it.
        device.entry(
            "2026-03-04",
            record::Removal{{{second, {first}, "reading", *parseInstant("2026-03-02T12:00:00.000Z")}},
                            "14 CFR 91.417(b)(1)"},
            ownerKey, "owner");
        torn.push_back(device.known[3]);
        file = fold(torn);
        QVERIFY(file.holes.empty());
        QCOMPARE(file.removed.at(second), device.known[3].sha256);
        QCOMPARE(file.heads, std::vector<std::string>{device.known[3].sha256});
    }

    // Five devices that now and then take over from each other: however their records are put together, in
    // any order and some twice, the file says the same.
    void orderDoesNotMatter() {
        std::mt19937 random(4);
        const auto below = [&](std::size_t end) { return random() % end; };
        for (int history = 0; history < 60; ++history) {
            std::vector<Device> devices(5);
            std::vector<std::string> findings;
            for (int step = 0; step < 25; ++step) {
                Device& device = devices[below(5)];
                const std::string day =
                    "2026-03-" + std::string(step < 9 ? "0" : "") + std::to_string(step + 1);
                const std::string hours = std::to_string(100 + step - static_cast<int>(below(3)));
                switch (below(6)) {
                case 0:
                    findings.push_back(device.round(day, {found("light", "dark")}, hours));
                    break;
                case 1:
                    device.round(day, {sound("light")}, hours);
                    break;
                case 2:
                    if (!findings.empty())
                        device.entry(day, deferred(findings[below(findings.size())], "light", ""));
                    break;
                case 3:
                    if (!findings.empty()) device.entry(day, work(findings[below(findings.size())], "light"));
                    break;
                case 4:
                    device.entry(day, record::Reading{{{"hours", hours}}});
                    break;
                default: {
                    const Device& from = devices[below(5)];
                    const std::vector<Told> taken = from.known;
                    device.known.insert(device.known.end(), taken.begin(), taken.end());
                }
                }
            }
            std::vector<Told> all;
            for (const Device& device : devices)
                all.insert(all.end(), device.known.begin(), device.known.end());
            const std::string expected = said(fold(all));
            for (int times = 0; times < 5; ++times) {
                std::shuffle(all.begin(), all.end(), random);
                QCOMPARE(said(fold(all)), expected);
            }
        }
    }
};

QTEST_APPLESS_MAIN(TestFile)
#include "tst_file.moc"
