// Records of other kinds than a round: what they must say, and that nothing else passes.
#include "fixture.hpp"

#include "base/canonical.hpp"
#include "record/entry.hpp"

#include <QTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace ambit::record;

namespace {

const std::string someHash(64, 'a');
const std::string otherHash(64, 'b');

Heading heading() {
    return {"OX-TEST",
            "TEST-1",
            {*parseInstant("2026-06-20T05:30:00.000Z"), 120},
            {someHash, otherHash},
            {test::signerName, "mechanic", "CERT-1"}};
}

Deferral deferral() {
    return {"14 CFR 91.213(d)",
            "",
            {{"Is it required by an airworthiness directive?", false}},
            false,
            "“Inoperative”, beside the switch",
            "Not at night",
            "2026-07-20",
            {{"hours", "1300.0"}},
            {"Kim Example", "mechanic", "CERT-2"}};
}

std::vector<Entry> all() {
    const Instant from = *parseInstant("2026-01-01T00:00:00.000Z");
    return {Assessment{{someHash, "landing-light"}, "Dark; the other one shines.", deferral()},
            Assessment{{someHash, "skid"}, "Cracked through.", {}},
            Rectification{{{someHash, "skid"}, {otherHash, "belt"}},
                          {"annual"},
                          "Skid replaced, belt tensioned.",
                          "2026-06-19",
                          "Robin Example",
                          "mechanic, airframe",
                          {{"hours", "1284.6"}}},
            Reading{{{"hours", "1284.6"}, {"landings", "4107"}}},
            PartChange{"main rotor blade A",
                       Part{"Blade", "B-1", "001", {{"hours", "2200.0"}}},
                       Part{"Blade", "B-1", "002", {{"hours", "0"}}},
                       "Changed at its life's end.",
                       "2026-06-18",
                       "mechanic, airframe",
                       {{"hours", "1284.6"}}},
            HandOver{"Kim Example", "Sold with all its papers."},
            Trust{"Robin Example", someHash, {"pilot", "mechanic"}, from},
            Revocation{someHash, from, "The tablet was stolen."},
            Removal{{{otherHash, {someHash}, "rectification", from}}, "14 CFR 91.417(b)(1)"},
            Renewal{{someHash, "skid"}, true, "Shoes changed on the Tuesday."},
            Renewal{{someHash, "skid"}, false, ""}};
}

} // namespace

class TestRecordEntry : public QObject {
    Q_OBJECT

private slots:
    void everyKind_data() {
        QTest::addColumn<std::size_t>("which");
        const auto entries = all();
        for (std::size_t i = 0; i < entries.size(); ++i)
            QTest::addRow("%zu %s", i, kindOf(entries[i])) << i;
    }

    void everyKind() {
        QFETCH(std::size_t, which);
        const Entry entry = all()[which];
        const auto content = entryContent(heading(), entry);
        QVERIFY2(content, content ? "" : content.error().what.c_str());
        QVERIFY(checkContent(*content));
        // Read and written again it is the same.
        const ReadEntry read = entryFrom(*content);
        const auto again = entryContent(read.heading, read.entry);
        QVERIFY(again);
        QCOMPARE(canonicalJson(*again), canonicalJson(*content));
        // Signed and verified it is the same.
        const auto bytes = signRecord(*content, test::signer());
        QVERIFY2(bytes, bytes ? "" : bytes.error().what.c_str());
        const auto report = verifyRecord(*bytes);
        QVERIFY2(report, report ? "" : report.error().what.c_str());
        QCOMPARE(report->sha256, identityOf(*content));
    }

    // Every member is either needed or may be left out: nothing else may be there, and nothing of another
    // kind.
    void nothingElsePasses_data() { everyKind_data(); }
    void nothingElsePasses() {
        QFETCH(std::size_t, which);
        const Json content = *entryContent(heading(), all()[which]);
        const std::set<std::string> mayBeMissing{"deferral", "performedBy", "off", "on", "words"};
        for (const auto& [name, value] : content.items()) {
            Json without = content;
            without.erase(name);
            const bool may = mayBeMissing.contains(name) && !(name == "words" && which <= 1);
            QVERIFY2(checkContent(without).has_value() == may, name.c_str());
            Json empty = content;
            empty[name] = Json::object();
            QVERIFY2(!checkContent(empty), name.c_str());
        }
        Json more = content;
        more["airworthy"] = true;
        QVERIFY(!checkContent(more));
        Json unsorted = content;
        unsorted["previous"] = {otherHash, someHash};
        QVERIFY(!checkContent(unsorted));
        Json newer = content;
        newer["version"] = 4;
        QCOMPARE(checkContent(newer).error().code, ErrorCode::unsupported);
        newer["version"] = 8;
        QCOMPARE(checkContent(newer).error().code, ErrorCode::unsupported);
    }

    /// An Ambit of before refuses it by its version, and says what to do.
    void aRenewalIsOfTheVersionThatBroughtIt() {
        const Json content = *entryContent(heading(), Renewal{{someHash, "skid"}, true, ""});
        QVERIFY(content["version"] == 7);
        QVERIFY(!content.contains("words"));
        Json older = content;
        older["version"] = 3;
        QCOMPARE(checkContent(older).error().code, ErrorCode::unsupported);
        const Json reading = *entryContent(heading(), Reading{{{"hours", "1"}}});
        QVERIFY(reading["version"] == 3);
    }

    /// In a round whoever walks says it; afterwards it is the owner's word, or a mechanic's.
    void aRenewalIsTheOwnersOrAMechanicsWord() {
        for (const auto& [role, may] : {std::pair("owner", true), std::pair("mechanic", true),
                                        std::pair("pilot", false), std::pair("instructor", false)}) {
            Heading by = heading();
            by.signer.role = role;
            const auto content = entryContent(by, Renewal{{someHash, "skid"}, true, ""});
            QVERIFY2(content.has_value() == may, role);
            if (!may) QCOMPARE(content.error().where.c_str(), "/signer/role");
        }
        const Json good = *entryContent(heading(), Renewal{{someHash, "skid"}, true, ""});
        for (const auto& [at, bad] :
             {std::pair("/value/record", Json("ab")), std::pair("/value/point", Json("")),
              std::pair("/value", Json::object()), std::pair("/renewed", Json("yes"))}) {
            Json other = good;
            other[Json::json_pointer(at)] = bad;
            QVERIFY2(!checkContent(other), at);
        }
    }

    // 14 CFR 43.9(a), READ: a description of the work, the date it was completed, the name of who did it, and
    // the signature, certificate number and kind of certificate of who approves the return to service.
    void workSaysWhatTheRuleAsks() {
        const Rectification good = std::get<Rectification>(all()[2]);
        const auto refused = [](const Rectification& work, const Heading& by, const char* where) {
            const auto content = entryContent(by, work);
            return !content && content.error().where == where;
        };
        Rectification work = good;
        work.description = "";
        QVERIFY(refused(work, heading(), "/description"));
        work = good;
        work.completedOn = "2026-02-30";
        QVERIFY(refused(work, heading(), "/completedOn"));
        work = good;
        work.certificateKind = "";
        QVERIFY(refused(work, heading(), "/certificateKind"));
        Heading without = heading();
        without.signer.certificate = "";
        QVERIFY(refused(good, without, "/signer/certificate"));
    }

    void deferralsHaveABasis() {
        Assessment one = std::get<Assessment>(all()[0]);
        one.deferral->answers.clear();
        QCOMPARE(entryContent(heading(), one).error().where, std::string("/deferral/answers"));
        one.deferral->basis = "minimum equipment list";
        QCOMPARE(entryContent(heading(), one).error().where, std::string("/deferral/reference"));
        one.deferral->reference = "Item 33-2";
        QVERIFY(entryContent(heading(), one));
        one.deferral->basis = "it can wait";
        QVERIFY(!entryContent(heading(), one));
        one = std::get<Assessment>(all()[0]);
        one.deferral->placard = "";
        QVERIFY(!entryContent(heading(), one));
    }

    void countersCountUp() {
        QVERIFY(!entryContent(heading(), Reading{}));
        QVERIFY(!entryContent(heading(), Reading{{{"hours", "-1"}}}));
        QVERIFY(!entryContent(heading(), Reading{{{"hours", "1.5e3"}}}));
        QVERIFY(!entryContent(heading(), Reading{{{"hours", "1"}, {"hours", "2"}}}));
        PartChange change = std::get<PartChange>(all()[4]);
        change.on->counters = {{"hours", "-1"}};
        QCOMPARE(entryContent(heading(), change).error().where, std::string("/on/counters/0"));
        Assessment until = std::get<Assessment>(all()[0]);
        until.deferral->untilCounters = {{"hours", "1"}, {"hours", "2"}};
        QCOMPARE(entryContent(heading(), until).error().where, std::string("/deferral/untilCounters/1"));
    }
};

QTEST_APPLESS_MAIN(TestRecordEntry)
#include "tst_record_entry.moc"
