// record.json with further signatures: each binds those before it; none can be taken away, moved or
// exchanged.
#include "base/canonical.hpp"
#include "base/encoding.hpp"
#include "base/hash.hpp"
#include "fixture.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace std::string_literals;

namespace {

const std::string& signedRecord() {
    static const std::string text = *record::signRecord(test::contentOf(), test::signer());
    return text;
}

const std::string& countersigned() {
    static const std::string text = *record::countersignRecord(signedRecord(), test::mechanicsKey(),
                                                               test::mechanic(), test::countersignedAt);
    return text;
}

/// By a third person too.
const std::string& threeTimes() {
    static const std::string text = *record::countersignRecord(countersigned(), test::newSigner("Toni Third"),
                                                               {"Toni Third", "owner", ""}, Instant{0});
    return text;
}

std::string edited(const std::string& text, const std::function<void(Json&)>& change) {
    Json record = *parseJson(text);
    change(record["signatures"]);
    return canonicalJson(record);
}

std::string whereOf(std::string_view bytes) {
    const auto report = record::verifyRecord(bytes);
    return report ? "accepted" : report.error().where;
}

Json headerOf(const std::string& text, std::size_t signature) {
    return *parseJson(
        *fromBase64Url((*parseJson(text))["signatures"][signature]["protected"].get<std::string>()));
}

/// The signed record with a second signature made by hand, over any header.
std::string withHeader(const std::string& header, const record::Signer& by = test::mechanicsKey(),
                       const std::function<std::string(std::string)>& finish = {}) {
    return edited(signedRecord(), [&](Json& signatures) {
        const std::string text = toBase64Url(header);
        const Digest digest = sha256(text + '.' + toBase64Url(canonicalJson(test::contentOf())));
        std::string signature = *by.signDigest({reinterpret_cast<const char*>(digest.data()), digest.size()});
        if (finish) signature = finish(signature);
        signatures.push_back({{"protected", text}, {"signature", toBase64Url(signature)}});
    });
}

std::string withHeader(const std::function<void(Json&)>& change,
                       const record::Signer& by = test::mechanicsKey()) {
    Json header = headerOf(countersigned(), 1);
    change(header);
    return withHeader(canonicalJson(header), by);
}

} // namespace

class RecordCountersignedTest : public QObject {
    Q_OBJECT
private slots:
    void verifies() {
        const auto report = record::verifyRecord(countersigned());
        QVERIFY2(report, report ? "" : toText(report.error()).c_str());
        QCOMPARE(report->sha256, record::identityOf(test::contentOf()));
        QCOMPARE(report->signatures.size(), std::size_t{2});
        const auto& [first, second] = std::tie(report->signatures[0], report->signatures[1]);
        QCOMPARE(first.certificate.der, test::signer().certificate().der);
        QCOMPARE(first.who, (round::Person{test::signerName, "pilot", ""}));
        QVERIFY(!first.at);
        QCOMPARE(second.certificate.der, test::mechanicsKey().certificate().der);
        QCOMPARE(second.who, test::mechanic());
        QCOMPARE(second.at->ms, test::countersignedAt.ms);
        QVERIFY(second.lowS);
        const auto three = record::verifyRecord(threeTimes());
        QVERIFY2(three, three ? "" : toText(three.error()).c_str());
        QCOMPARE(three->signatures.back().who.role, "owner"s);
    }

    void theFirstSignatureStaysAsItWas() {
        QCOMPARE(edited(countersigned(), [](Json& s) { s.erase(1); }), signedRecord());
        QCOMPARE(whereOf(edited(threeTimes(), [](Json& s) { s.erase(2); })), "accepted"s);
    }

    /// The name is what anybody can compute from the file: RECORD.md.
    void namesTheSignatureBefore() {
        const Json first = (*parseJson(signedRecord()))["signatures"][0];
        const Json header = headerOf(countersigned(), 1);
        QCOMPARE(header["after"].get<std::string>(), sha256Hex(first.dump()));
        QCOMPARE(header["at"].get<std::string>(), "2026-06-20T07:30:30.500Z"s);
        QCOMPARE(
            header["signer"],
            (Json{{"name", test::mechanic().name}, {"role", "mechanic"}, {"certificate", "X.66/12 (B1)"}}));
        QCOMPARE(header.size(), std::size_t{6});
    }

    void everyChangedByteIsRefused() {
        const std::string& sound = countersigned();
        // From where the first signature ends; what stands before it, tst_record_json changes.
        for (std::size_t i = signedRecord().size() - 2; i < sound.size(); ++i) {
            for (const int mask : {0x01, 0x20, 0x80}) {
                std::string changed = sound;
                changed[i] = static_cast<char>(changed[i] ^ mask);
                QVERIFY2(!record::verifyRecord(changed),
                         qPrintable(QStringLiteral("byte %1, xor %2").arg(i).arg(mask)));
            }
            std::string shorter = sound;
            QVERIFY(!record::verifyRecord(shorter.erase(i, 1)));
            std::string longer = sound;
            QVERIFY(!record::verifyRecord(longer.insert(i, 1, sound[i])));
            QVERIFY(!record::verifyRecord(std::string_view(sound).substr(0, i)));
        }
    }

    void takenAwayMovedOrDoubledIsRefused() {
        QCOMPARE(whereOf(edited(countersigned(), [](Json& s) { s.erase(0); })), "/signatures/0/protected"s);
        QCOMPARE(whereOf(edited(countersigned(), [](Json& s) { std::swap(s[0], s[1]); })),
                 "/signatures/0/protected"s);
        QCOMPARE(whereOf(edited(countersigned(), [](Json& s) { s.push_back(s[1]); })),
                 "/signatures/2/protected/after"s);
        QCOMPARE(whereOf(edited(threeTimes(), [](Json& s) { s.erase(1); })),
                 "/signatures/1/protected/after"s);
        QCOMPARE(whereOf(edited(threeTimes(), [](Json& s) { std::swap(s[1], s[2]); })),
                 "/signatures/1/protected/after"s);
    }

    /// The same person signs the same content anew: what stands after the old signature doesn't hold after
    /// it.
    void anExchangedFirstSignatureIsRefused() {
        const auto fresh = record::unlock(test::keyFile(), test::passphrase);
        const Json again = (*parseJson(*record::signRecord(test::contentOf(), *fresh)))["signatures"][0];
        QVERIFY(again != (*parseJson(signedRecord()))["signatures"][0]);
        QCOMPARE(whereOf(edited(countersigned(), [&](Json& s) { s[0] = again; })),
                 "/signatures/1/protected/after"s);
    }

    void anotherRecordsCountersignatureIsRefused() {
        const std::string other = *record::signRecord(test::contentOf(true), test::signer());
        const std::string both =
            *record::countersignRecord(other, test::mechanicsKey(), test::mechanic(), test::countersignedAt);
        const Json second = (*parseJson(both))["signatures"][1];
        QCOMPARE(whereOf(edited(signedRecord(), [&](Json& s) { s.push_back(second); })),
                 "/signatures/1/protected/after"s);
        // Nor where it names this record's signature: it is over the other's content.
        Json header = headerOf(countersigned(), 1);
        const std::string text = toBase64Url(canonicalJson(header));
        const Digest digest = sha256(text + '.' + toBase64Url(canonicalJson(test::contentOf(true))));
        const std::string signature =
            *test::mechanicsKey().signDigest({reinterpret_cast<const char*>(digest.data()), digest.size()});
        QCOMPARE(whereOf(edited(signedRecord(),
                                [&](Json& s) {
                                    s.push_back({{"protected", text}, {"signature", toBase64Url(signature)}});
                                })),
                 "/signatures/1/signature"s);
    }

    void nobodySignsTwice() {
        const auto again = record::countersignRecord(signedRecord(), test::signer(),
                                                     {test::signerName, "pilot", ""}, Instant{0});
        QVERIFY(!again);
        QVERIFY(again.error().what.find("already") != std::string::npos);
        QVERIFY(!record::countersignRecord(countersigned(), test::mechanicsKey(), test::mechanic(), {}));
        QCOMPARE(whereOf(withHeader(
                     [](Json& header) {
                         header["x5c"][0] = toBase64(test::signer().certificate().der);
                         header["signer"]["name"] = test::signerName;
                     },
                     test::signer())),
                 "/signatures/1/protected"s);
        // Another person of the same name may: the keys differ.
        QVERIFY(record::countersignRecord(signedRecord(), test::stranger(),
                                          {test::signerName, "instructor", ""}, Instant{0}));
    }

    void eightAtMost() {
        std::string text = signedRecord();
        for (int i = 2; i <= 8; ++i) {
            const std::string name = "Signer " + std::to_string(i);
            text = *record::countersignRecord(text, test::newSigner(name), {name, "owner", ""}, Instant{i});
        }
        QCOMPARE(record::verifyRecord(text)->signatures.size(), std::size_t{8});
        QVERIFY(!record::countersignRecord(text, test::mechanicsKey(), test::mechanic(), Instant{9}));
        QCOMPARE(whereOf(edited(text, [](Json& s) { s.push_back(s[7]); })), "/signatures/8"s);
    }

    void headersThatWontDo() {
        QCOMPARE(whereOf(withHeader([](Json&) {})), "accepted"s);
        const std::string at = "/signatures/1/protected";
        for (const char* member : {"after", "at", "s", "signer"})
            QCOMPARE(whereOf(withHeader([&](Json& header) { header.erase(member); })), at + '/' + member);
        for (const char* member : {"name", "role", "certificate"})
            QCOMPARE(whereOf(withHeader([&](Json& header) { header["signer"].erase(member); })),
                     at + "/signer/" + member);
        QCOMPARE(whereOf(withHeader([](Json& header) { header["kid"] = "any"; })), at + "/kid");
        QCOMPARE(whereOf(withHeader([](Json& header) { header["signer"]["rank"] = "any"; })),
                 at + "/signer/rank");
        QCOMPARE(whereOf(withHeader([](Json& header) { header["signer"]["role"] = "king"; })),
                 at + "/signer/role");
        QCOMPARE(whereOf(withHeader([](Json& header) { header["signer"]["name"] = "Somebody Else"; })),
                 at + "/signer/name");
        QCOMPARE(whereOf(withHeader([](Json& header) { header["at"] = "2026-06-20T07:30:30Z"; })),
                 at + "/at");
        QCOMPARE(whereOf(withHeader([](Json& header) { header["after"] = std::string(64, '0'); })),
                 at + "/after");
        QCOMPARE(whereOf(withHeader([](Json& header) { header["crit"] = {"after"}; })), at);
        QCOMPARE(whereOf(withHeader([](Json& header) { header["s"] = "high"; })), at + "/s");
        QCOMPARE(whereOf(withHeader([](Json& header) { header["x5c"] = Json::array(); })), at);
        const Json header = headerOf(countersigned(), 1);
        QCOMPARE(whereOf(withHeader(header.dump(1))), at);
        QCOMPARE(whereOf(withHeader(canonicalJson(header), test::mechanicsKey(), test::twin)),
                 "/signatures/1/signature"s);
        QCOMPARE(whereOf(withHeader(canonicalJson(header), test::stranger())), "/signatures/1/signature"s);
        // The header of a first signature doesn't do for a second.
        QCOMPARE(whereOf(withHeader(canonicalJson(headerOf(signedRecord(), 0)), test::signer())),
                 at + "/after");
    }

    void signsOnlyWhatHolds() {
        const auto& who = test::mechanic();
        const Instant at = test::countersignedAt;
        QVERIFY(!record::countersignRecord(signedRecord() + "\n", test::mechanicsKey(), who, at));
        QVERIFY(!record::countersignRecord("", test::mechanicsKey(), who, at));
        const auto named =
            record::countersignRecord(signedRecord(), test::mechanicsKey(), {"Else", "mechanic", ""}, at);
        QVERIFY(!named);
        QVERIFY(named.error().what.find(who.name) != std::string::npos);
        for (const round::Person& odd : {round::Person{who.name, "king", ""}, round::Person{who.name, "", ""},
                                         round::Person{who.name, "owner", "\x01"},
                                         round::Person{who.name, "owner", std::string(9000, 'x')}})
            QVERIFY(!record::countersignRecord(signedRecord(), test::mechanicsKey(), odd, at));
    }
};

QTEST_APPLESS_MAIN(RecordCountersignedTest)
#include "tst_record_countersigned.moc"
