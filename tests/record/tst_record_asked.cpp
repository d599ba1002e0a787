// What somebody who follows says: signed by them, kept in the record, and reported where it was forged.
#include "base/canonical.hpp"
#include "base/encoding.hpp"
#include "base/hash.hpp"
#include "fixture.hpp"
#include "forge.hpp"
#include "record/asked.hpp"
#include "record/jws.hpp"
#include "record/recheck.hpp"
#include "record/record.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using round::Statement;
using Kind = round::Statement::Kind;

namespace {

const round::Person instructor{"Ines Example", "instructor", "FI 7"};

const record::Signer& instructorsKey() {
    static const record::Signer one = test::newSigner(instructor.name);
    return one;
}

Statement statement(int number, Kind kind, const std::string& point, const std::string& words) {
    std::string id(32, 'c');
    id.replace(0, std::to_string(number).size(), std::to_string(number));
    return {roundId(test::roundOf(true).front()), id, kind, point, words, {1'781'933'500'000}, instructor};
}

round::Asked asked(int number, Kind kind, const std::string& point, const std::string& words) {
    Statement said = statement(number, kind, point, words);
    auto jws = record::signStatement(said, instructorsKey());
    if (!jws) qFatal("not signed");
    return {number, std::move(said), std::move(*jws)};
}

round::Settled oil(const std::string& value) {
    round::Settled settled;
    settled.point = "oil";
    settled.outcome = round::Outcome::sound;
    settled.value = value;
    return settled;
}

/// roundOf(true) with these after the first four events: at the oil, which is settled.
std::vector<round::Event> with(const std::vector<round::What>& what) {
    auto events = test::roundOf(true);
    for (std::size_t i = 0; i < what.size(); ++i)
        events.insert(events.begin() + static_cast<std::ptrdiff_t>(4 + i), {0, events[3].at, what[i]});
    for (std::size_t i = 0; i < events.size(); ++i)
        events[i].seq = static_cast<std::int64_t>(i) + 1;
    return events;
}

std::vector<round::Event> everything() {
    return with({asked(1, Kind::lookAgain, "oil", "Wipe the stick first."), oil("5.1"),
                 asked(2, Kind::question, "oil", "Which grade?"), round::Answered{2, "W100."},
                 asked(3, Kind::lookAgain, "cowl-open.left", ""), round::Declined{3, "It is open, look."},
                 asked(4, Kind::remark, "", "Take your time."),
                 asked(5, Kind::lookAgain, "blade.a", "Feel it, too.")});
}

Json contentOf(const std::vector<round::Event>& events) {
    auto content = record::roundContent(test::recordedMachine(), events, {});
    if (!content) qFatal("%s", toText(content.error()).c_str());
    return *content;
}

std::string whereOf(const Json& content) {
    const auto checked = record::checkContent(content);
    return checked ? "accepted" : checked.error().where;
}

struct Both {
    JsonTape statementTape, jwsTape;
    JsonView statement, jws;
    explicit Both(const round::Asked& asked) {
        statement = statementTape.write(toJson(asked.statement)).value();
        jws = jwsTape.write({{"protected", asked.jws.header}, {"signature", asked.jws.signature}}).value();
    }
};

} // namespace

class RecordAskedTest : public QObject {
    Q_OBJECT

private slots:
    void theRecordSaysWhoAskedAndWhatCameOfIt() {
        const Json content = contentOf(everything());
        QCOMPARE(content["version"], Json(3));
        QCOMPARE(content["kind"], Json("round"));
        const Json& asks = content["asks"];
        QCOMPARE(asks.size(), std::size_t{5});
        QCOMPARE(asks[0]["kind"], Json("look again"));
        QCOMPARE(asks[0]["name"], Json("Oil level"));
        QCOMPARE(asks[0]["who"]["name"], Json("Ines Example"));
        QCOMPARE(asks[0]["became"], Json("settled"));
        QCOMPARE(asks[0]["until"], content["events"][5]["at"]);
        QCOMPARE(asks[1]["became"], Json("answered"));
        QCOMPARE(asks[1]["answer"], Json("W100."));
        QCOMPARE(asks[2]["became"], Json("declined"));
        QCOMPARE(asks[2]["why"], Json("It is open, look."));
        QVERIFY(!asks[2].contains("words"));
        QCOMPARE(asks[3]["became"], Json("told"));
        QVERIFY(!asks[3].contains("until"));
        QCOMPARE(asks[4]["became"], Json("settled"));
        // The oil: asked for again, then re-opened by the pilot; the declined look left the cowl as it was.
        const Json& points = content["points"];
        QCOMPARE(points[1]["earlier"].size(), std::size_t{2});
        QCOMPARE(points[1]["earlier"][0]["asked"]["ask"], Json(1));
        QVERIFY(points[1]["earlier"][1].contains("reopened"));
        QVERIFY(!points[0].contains("earlier"));
        QCOMPARE(whereOf(content), std::string("accepted"));
    }

    void withoutAnythingAskedItIsAsItWas() {
        const Json content = contentOf(test::roundOf(true));
        QCOMPARE(content["version"], Json(1));
        QVERIFY(!content.contains("asks"));
    }

    void itIsSignedVerifiedAndLookedAtAgain() {
        const Json content = contentOf(everything());
        const auto signedRecord = record::signRecord(content, test::signer());
        QVERIFY(signedRecord);
        const auto report = record::verifyRecord(*signedRecord);
        QVERIFY2(report, report ? "" : toText(report.error()).c_str());
        const auto parts = record::partsOf(*signedRecord);
        QVERIFY(parts);
        const Digest identity = sha256(parts->content);
        record::Recheck recheck;
        QVERIFY(recheck({reinterpret_cast<const char*>(identity.data()), identity.size()}, parts->content,
                        parts->signatures));
    }

    void whatTheEventsDontSay_data() {
        QTest::addColumn<QByteArray>("pointer");
        QTest::addColumn<QByteArray>("value");
        QTest::addColumn<QByteArray>("where");
        const auto row = [](const char* pointer, const char* value, const char* where) {
            QTest::newRow(pointer) << QByteArray(pointer) << QByteArray(value) << QByteArray(where);
        };
        row("/version", "2", "/version");
        row("/asks/0/words", "\"Never mind.\"", "/asks/0/words");
        row("/asks/0/who/name", "\"Ines Other\"", "/asks/0/who/name");
        row("/asks/1/answer", "\"W80.\"", "/asks/1/answer");
        row("/asks/1/became", "\"declined\"", "/asks/1/became");
        row("/asks/2/why", "\"Later.\"", "/asks/2/why");
        row("/asks/2/words", "\"Look.\"", "/asks/2/words");
        row("/asks/3/until", "\"2026-06-20T05:30:00.000Z\"", "/asks/3/until");
        row("/asks/4/point", "\"oil\"", "/asks/4/point");
        row("/asks/0/said", "\"2026-06-20T05:30:00.000Z\"", "/asks/0/said");
        row("/asks/0/colour", "\"red\"", "/asks/0/colour");
        row("/points/1/earlier/0/asked/ask", "2", "/points/1/earlier/0/asked/ask");
        row("/points/1/earlier/0/reopened", R"({"at":"2026-06-20T05:30:00.000Z","why":"x"})",
            "/points/1/earlier/0/reopened");
    }
    void whatTheEventsDontSay() {
        QFETCH(QByteArray, pointer);
        QFETCH(QByteArray, value);
        QFETCH(QByteArray, where);
        Json content = contentOf(everything());
        content[Json::json_pointer(pointer.toStdString())] = Json::parse(value.toStdString());
        QCOMPARE(whereOf(content), where.toStdString());
        content.erase("asks");
        QVERIFY(whereOf(content) != "accepted");
    }

    // Whatever stands in the walker's record, the asker didn't say it.
    void aForgedAskIsReported() {
        const auto forge = [](const std::function<void(round::Asked&)>& change) {
            auto events = everything();
            Json content = contentOf(events);
            auto& one = std::get<round::Asked>(events[4].what);
            change(one);
            // In the events and the summary alike, so that only the signature is left to object.
            content["events"][4] = toJson(events[4]);
            const Json statement = toJson(one.statement);
            content["asks"][0]["words"] = statement["words"];
            content["asks"][0]["said"] = statement["at"];
            content["asks"][0]["who"] = statement["who"];
            return whereOf(content);
        };
        QCOMPARE(forge([](round::Asked&) {}), std::string("accepted"));
        const std::string signature = "/events/4/jws/signature";
        QCOMPARE(forge([](round::Asked& one) { one.statement.words = "Well done."; }), signature);
        QCOMPARE(forge([](round::Asked& one) { one.statement.at.ms += 1; }), signature);
        QCOMPARE(forge([](round::Asked& one) { one.statement.who.role = "owner"; }), signature);
        QCOMPARE(forge([](round::Asked& one) { one.statement.id[31] = 'd'; }), signature);
        QCOMPARE(forge([](round::Asked& one) { one.statement.who.name = "Ines Other"; }), signature);
        QCOMPARE(forge([](round::Asked& one) { one.jws.signature[5] ^= 1; }), signature);
        // Signed by the walker in the asker's name.
        QCOMPARE(forge([](round::Asked& one) {
                     Statement named = one.statement;
                     named.who.name = test::signerName;
                     one.jws = record::signStatement(named, test::signer()).value();
                 }),
                 signature);
        QCOMPARE(forge([](round::Asked& one) {
                     const auto entry = record::signRecord(test::contentOf(true), test::signer());
                     const Json by = Json::parse(*entry)["signatures"][0];
                     one.jws = {by["protected"], by["signature"]};
                 }),
                 signature);
        // Another's key over the very statement: it holds, but isn't the key of whom it names.
        const auto other = [](round::Asked& one) {
            const Json by =
                record::signJws(canonicalJson(toJson(one.statement)), test::mechanicsKey(), Json::object())
                    .value();
            one.jws = {by["protected"], by["signature"]};
        };
        QCOMPARE(forge(other), std::string("/events/4/statement/who/name"));
    }

    void saidOfAnotherRound() {
        round::Asked elsewhere = asked(1, Kind::remark, "", "Words.");
        elsewhere.statement.round = std::string(32, '0');
        elsewhere.jws = record::signStatement(elsewhere.statement, instructorsKey()).value();
        QVERIFY(record::checkAsked(elsewhere)); // by itself it is sound
        Json content = contentOf(with({asked(1, Kind::remark, "", "Words.")}));
        const Json event = toJson(round::Event{5, {1'781'933'417'000}, elsewhere});
        content["events"][4]["statement"] = event["statement"];
        content["events"][4]["jws"] = event["jws"];
        QCOMPARE(whereOf(content), std::string("/events/4/statement/round"));
    }

    // The log of a record is held to its rules, as far as can be told without the airframe.
    void whatNoRoundAllows() {
        const auto without = [](std::size_t gone) {
            Json content = contentOf(everything());
            content["events"].erase(gone);
            for (std::size_t i = 0; i < content["events"].size(); ++i)
                content["events"][i]["seq"] = i + 1;
            return whereOf(content);
        };
        QVERIFY(without(4) != "accepted");                     // the first ask
        QCOMPARE(without(7), std::string("/events event 23")); // the answer: still open
        QCOMPARE(without(9), std::string("/events event 23")); // the declining
        Json twice = contentOf(everything());
        twice["events"][8]["statement"]["id"] = twice["events"][4]["statement"]["id"];
        QCOMPARE(whereOf(twice), std::string("/events event 9"));
        Json gap = contentOf(everything());
        gap["events"][8]["ask"] = 4;
        QCOMPARE(whereOf(gap), std::string("/events event 9"));
        Json other = contentOf(everything());
        other["events"][7]["ask"] = 1; // a look again that was settled
        QCOMPARE(whereOf(other), std::string("/events event 8"));
    }

    // --- on the walker's device

    void whatCameBecomesTheNextAsk() {
        const auto state = round::begin(test::recordedMachine(), test::roundOf(true).front());
        QVERIFY(state);
        const round::Asked said = asked(9, Kind::lookAgain, "oil", "");
        const Both both(said);
        const auto event = record::askedBy(instructorsKey().certificate(), both.statement, both.jws, *state,
                                           test::recordedMachine());
        QVERIFY2(event, event ? "" : toText(event.error()).c_str());
        QCOMPARE(event->ask, 1);
        QCOMPARE(event->statement.id, said.statement.id);
    }

    void whatCameIsRefusedInWords() {
        auto state = round::begin(test::recordedMachine(), test::roundOf(true).front());
        const auto refusal = [&](const round::Asked& said, const record::Signer& peer) {
            const Both both(said);
            const auto event = record::askedBy(peer.certificate(), both.statement, both.jws, *state,
                                               test::recordedMachine());
            return event ? std::string("accepted") : std::string(event.error().what);
        };
        const round::Asked sound = asked(1, Kind::lookAgain, "oil", "");
        QCOMPARE(refusal(sound, instructorsKey()), std::string("accepted"));
        QVERIFY(refusal(sound, test::mechanicsKey()).find("another key") != std::string::npos);
        // The same name, another key: as when somebody makes a certificate with the instructor's name.
        QVERIFY(refusal(sound, test::newSigner(instructor.name)).find("another key") != std::string::npos);
        round::Asked other = sound;
        other.statement.point = "blade.a";
        QVERIFY(refusal(other, instructorsKey()).find("doesn't hold") != std::string::npos);
        // Replayed: the same statement once more.
        QVERIFY(round::apply(*state, test::recordedMachine(), {2, {}, sound}));
        QCOMPARE(refusal(sound, instructorsKey()), std::string("This was said already."));
    }

    void whatIsNoStatementIsRefusedAtItsPlace() {
        const auto state = round::begin(test::recordedMachine(), test::roundOf(true).front());
        const round::Asked said = asked(1, Kind::remark, "", "Words.");
        const auto whereWrong = [&](const Json& statement, const Json& jws) {
            JsonTape one, two;
            const auto event = record::askedBy(instructorsKey().certificate(), one.write(statement).value(),
                                               two.write(jws).value(), *state, test::recordedMachine());
            return event ? std::string("accepted") : event.error().where;
        };
        const Json statement = toJson(said.statement);
        const Json jws{{"protected", said.jws.header}, {"signature", said.jws.signature}};
        QCOMPARE(whereWrong(statement, jws), std::string("accepted"));
        Json other = statement;
        other["more"] = 1;
        QCOMPARE(whereWrong(other, jws), std::string("/statement/more"));
        QCOMPARE(whereWrong(Json::array(), jws), std::string("/statement"));
        other = jws;
        other["protected"] = "e30";
        QCOMPARE(whereWrong(statement, other), std::string("/jws/protected"));
        other = jws;
        other.erase("signature");
        QCOMPARE(whereWrong(statement, other), std::string("/jws/signature"));
        // S of the other half of the group: nobody can turn one signature into another.
        other = jws;
        other["signature"] = toBase64Url(test::twin(fromBase64Url(said.jws.signature).value()));
        QCOMPARE(whereWrong(statement, other), std::string("/jws/signature"));
    }

    void onlyWhoSaysItSignsIt() {
        const auto jws = record::signStatement(statement(1, Kind::remark, "", "Words."), test::signer());
        QVERIFY(!jws);
        QVERIFY(jws.error().code == ErrorCode::signature);
    }
};

QTEST_APPLESS_MAIN(RecordAskedTest)
#include "tst_record_asked.moc"
