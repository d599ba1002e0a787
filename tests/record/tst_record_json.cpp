// record.json: signed, checked, and refused after any change.
#include "base/canonical.hpp"
#include "base/encoding.hpp"
#include "base/hash.hpp"
#include "fixture.hpp"

#include <QElapsedTimer>
#include <QtTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace std::string_literals;

namespace {

const std::string& signedRecord() {
    static const std::string text = *record::signRecord(test::contentOf(), test::signer());
    return text;
}

std::string whereOf(std::string_view bytes) {
    const auto report = record::verifyRecord(bytes);
    return report ? "accepted" : report.error().where;
}

/// A record signed by hand, as a program other than Ambit could: any header, low S or high.
std::string foreign(const Json& header, const std::function<std::string(std::string)>& finish = {},
                    const record::Signer& signer = test::signer(), const Json& content = test::contentOf()) {
    const std::string text = toBase64Url(header.dump());
    const Digest digest = sha256(text + '.' + toBase64Url(canonicalJson(content)));
    std::string signature = *signer.signDigest({reinterpret_cast<const char*>(digest.data()), digest.size()});
    if (finish) signature = finish(signature);
    const Json entry{{"protected", text}, {"signature", toBase64Url(signature)}};
    return canonicalJson(Json{{"content", content}, {"signatures", Json::array({entry})}});
}

Json header(const std::vector<std::string>& chain = {test::signer().certificate().der}) {
    Json x5c = Json::array();
    for (const std::string& der : chain)
        x5c.push_back(toBase64(der));
    return Json{{"alg", "ES256"}, {"x5c", x5c}};
}

Json with(Json json, const char* name, Json value) {
    json[name] = std::move(value);
    return json;
}

std::string edited(const std::function<void(Json&)>& change) {
    Json record = *parseJson(signedRecord());
    change(record);
    return canonicalJson(record);
}

} // namespace

class RecordJsonTest : public QObject {
    Q_OBJECT
private slots:
    void verifies() {
        const auto report = record::verifyRecord(signedRecord());
        QVERIFY2(report, report ? "" : toText(report.error()).c_str());
        QCOMPARE(report->content, test::contentOf());
        QCOMPARE(report->sha256, record::identityOf(test::contentOf()));
        QCOMPARE(report->signatures.size(), std::size_t{1});
        QVERIFY(report->signatures[0].lowS);
        QCOMPARE(report->signatures[0].certificate.der, test::signer().certificate().der);
    }

    void sameInputSameBytesButForTheSignature() {
        // The fixture's signer remembers: the same digest, the same signature.
        QCOMPARE(*record::signRecord(test::contentOf(), test::signer()), signedRecord());
        const auto fresh = record::unlock(test::keyFile(), test::passphrase);
        Json mine = *parseJson(*record::signRecord(test::contentOf(), *fresh));
        Json first = *parseJson(signedRecord());
        mine["signatures"][0].erase("signature");
        first["signatures"][0].erase("signature");
        QCOMPARE(mine, first);
    }

    void signsOnlyWithTheSignersKey() {
        const auto text = record::signRecord(test::contentOf(), test::newSigner("Somebody Else"));
        QVERIFY(!text);
        QCOMPARE(text.error().code, ErrorCode::signature);
        QVERIFY(record::signRecord(test::contentOf(),
                                   test::stranger())); // the same name is all that can be asked
        Json odd = test::contentOf();
        odd["more"] = 1;
        QVERIFY(!record::signRecord(odd, test::signer()));
    }

    /// Each byte, each of several changes: none is accepted.
    void everyChangedByteIsRefused() {
        const std::string& sound = signedRecord();
        QElapsedTimer timer;
        timer.start();
        std::size_t tried = 0;
        for (std::size_t i = 0; i < sound.size(); ++i) {
            for (const int mask : {0x01, 0x20, 0x80}) {
                std::string changed = sound;
                changed[i] = static_cast<char>(changed[i] ^ mask);
                QVERIFY2(!record::verifyRecord(changed),
                         qPrintable(QStringLiteral("byte %1, xor %2").arg(i).arg(mask)));
            }
            std::string shorter = sound;
            shorter.erase(i, 1);
            QVERIFY2(!record::verifyRecord(shorter), qPrintable(QStringLiteral("byte %1 deleted").arg(i)));
            std::string longer = sound;
            longer.insert(i, 1, sound[i]);
            QVERIFY2(!record::verifyRecord(longer), qPrintable(QStringLiteral("byte %1 doubled").arg(i)));
            tried += 5;
        }
        qInfo("%zu changes refused in %lld ms", tried, timer.elapsed());
    }

    void cutOffAnywhereIsRefused() {
        for (std::size_t size = 0; size < signedRecord().size(); ++size)
            QVERIFY(!record::verifyRecord(std::string_view(signedRecord()).substr(0, size)));
    }

    void otherFormsOfTheSameAreRefused() {
        const Json record = *parseJson(signedRecord());
        for (const std::string& text :
             {signedRecord() + "\n", " " + signedRecord(), record.dump(1), "\xEF\xBB\xBF" + signedRecord(),
              signedRecord() + '\0', record.dump(-1, ' ', true)})
            QVERIFY(!record::verifyRecord(text));
        std::string escaped = signedRecord();
        escaped.replace(escaped.find("OX-TEST"), 1, "\\u004f");
        QVERIFY(!record::verifyRecord(escaped));
        std::string twice = signedRecord();
        twice.insert(1, "\"content\":{},");
        QVERIFY(!record::verifyRecord(twice));
        std::string exponent = signedRecord();
        exponent.replace(exponent.find("\"version\":1,"), 12, "\"version\":1.0,");
        QVERIFY(!record::verifyRecord(exponent));
    }

    void frameIsExact() {
        QCOMPARE(whereOf("{}"), "/"s);
        QCOMPARE(whereOf("[]"), "/"s);
        QCOMPARE(whereOf(edited([](Json& r) { r["signatures"] = Json::array(); })), "/signatures"s);
        QVERIFY(!record::verifyRecord(edited([](Json& r) { r.erase("signatures"); })));
        QVERIFY(!record::verifyRecord(edited([](Json& r) { r["more"] = 1; })));
        QCOMPARE(whereOf(edited([](Json& r) { r["signatures"][0]["header"] = Json::object(); })),
                 "/signatures/0"s);
        QCOMPARE(whereOf(edited([](Json& r) { r["signatures"][0]["payload"] = ""; })), "/signatures/0"s);
        QCOMPARE(whereOf(edited([](Json& r) { r["signatures"][0]["signature"] = 1; })), "/signatures/0"s);
        const auto two =
            record::verifyRecord(edited([](Json& r) { r["signatures"].push_back(r["signatures"][0]); }));
        QCOMPARE(two.error().where, "/signatures/1/protected/after"s);
    }

    void signatureHasOneForm() {
        const auto change = [](const std::function<std::string(std::string)>& how) {
            return edited([&](Json& r) {
                Json& text = r["signatures"][0]["signature"];
                text = how(text.get<std::string>());
            });
        };
        const auto twin = [](const std::string& text) {
            return toBase64Url(test::twin(*fromBase64Url(text)));
        };
        QCOMPARE(whereOf(change(twin)), "/signatures/0/signature"s);
        QVERIFY(record::verifyRecord(change(twin)).error().what.find("high S") != std::string::npos);
        for (const char* more : {"=", "==", "A", "AA", "\n"})
            QVERIFY(!record::verifyRecord(change([&](const std::string& text) { return text + more; })));
        // The last letter holds four bits that mean nothing.
        QVERIFY(!record::verifyRecord(change([](std::string text) {
            text.back() = text.back() == 'B' ? 'C' : 'B';
            return text;
        })));
        QVERIFY(!record::verifyRecord(
            change([](const std::string& text) { return toBase64(*fromBase64Url(text)); })));
        QVERIFY(!record::verifyRecord(change([](const std::string&) { return ""s; })));
    }

    /// RFC 7518, 3.4, leaves high S allowed: where nothing else is declared it is accepted, and reported.
    void foreignSignaturesAreAccepted() {
        const auto low = record::verifyRecord(foreign(header()));
        QVERIFY2(low, low ? "" : toText(low.error()).c_str());
        QVERIFY(!low->signatures[0].lowS);
        QVERIFY(record::verifyRecord(foreign(header(), test::twin)));
        QVERIFY(record::verifyRecord(foreign(with(header(), "kid", "any"))));
        QVERIFY(record::verifyRecord(foreign(with(header(), "typ", "JOSE"))));
        QVERIFY(record::verifyRecord(
            foreign(header({test::signer().certificate().der, test::stranger().certificate().der}))));
    }

    void headersThatWontDo() {
        QVERIFY(record::verifyRecord(foreign(with(header(), "s", "low"))));
        QVERIFY(!record::verifyRecord(foreign(with(header(), "s", "low"), test::twin)));
        QVERIFY(!record::verifyRecord(foreign(with(header(), "s", "high"))));
        // Whoever declares itself Ambit's says no more than Ambit does.
        QVERIFY(!record::verifyRecord(foreign(with(with(header(), "s", "low"), "kid", "any"))));
        for (const char* algorithm : {"none", "HS256", "ES384", "es256", ""})
            QVERIFY(!record::verifyRecord(foreign(with(header(), "alg", algorithm))));
        QVERIFY(!record::verifyRecord(foreign(with(header(), "crit", Json::array({"b64"})))));
        QVERIFY(
            !record::verifyRecord(foreign(with(with(header(), "b64", false), "crit", Json::array({"b64"})))));
        QVERIFY(!record::verifyRecord(foreign(with(header(), "crit", Json::array()))));
        QVERIFY(!record::verifyRecord(foreign(header({}))));
        QVERIFY(!record::verifyRecord(
            foreign(with(header(), "x5c", toBase64(test::signer().certificate().der)))));
        QVERIFY(!record::verifyRecord(
            foreign(with(header(), "x5c", {toBase64Url(test::signer().certificate().der)}))));
        QVERIFY(!record::verifyRecord(foreign(header({"nonsense"}))));
        QVERIFY(!record::verifyRecord(foreign(header({test::stranger().certificate().der}))));
        QVERIFY(!record::verifyRecord(foreign(Json::array())));
        Json noChain = header();
        noChain.erase("x5c");
        QVERIFY(!record::verifyRecord(foreign(noChain)));
    }

    void declaredHeadersHaveOneForm() {
        // The members as Ambit would never order them, declared as Ambit's.
        const std::string text = toBase64Url("{\"s\":\"low\",\"alg\":\"ES256\",\"x5c\":[\"" +
                                             toBase64(test::signer().certificate().der) + "\"]}");
        const Digest digest = sha256(text + '.' + toBase64Url(canonicalJson(test::contentOf())));
        const std::string signature =
            *test::signer().signDigest({reinterpret_cast<const char*>(digest.data()), digest.size()});
        QCOMPARE(whereOf(edited([&](Json& r) {
                     r["signatures"][0] = {{"protected", text}, {"signature", toBase64Url(signature)}};
                 })),
                 "/signatures/0/protected"s);
    }

    void anotherNameIsRefused() {
        const record::Signer other = test::newSigner("Somebody Else");
        QCOMPARE(whereOf(foreign(header({other.certificate().der}), {}, other)), "/signatures/0/protected"s);
    }

    void contentIsChecked() {
        Json content = test::contentOf();
        content["points"][0]["outcome"] = "finding";
        QCOMPARE(whereOf(foreign(header(), {}, test::signer(), content)), "/content/points/0/outcome"s);
        content = test::contentOf();
        content["version"] = 8;
        const auto later = record::verifyRecord(foreign(header(), {}, test::signer(), content));
        QCOMPARE(later.error().code, ErrorCode::unsupported);
        QCOMPARE(later.error().what.c_str(),
                 "This record was made by a newer Ambit: its version is 8, and this "
                 "one knows those up to 7.");
        QCOMPARE(later.error().remedy.c_str(), "Update this Ambit.");
        // Whatever else a later version has.
        content["weather"] = Json::object();
        content["events"].push_back({{"kind", "smelt"}});
        QCOMPARE(record::verifyRecord(foreign(header(), {}, test::signer(), content)).error().remedy.c_str(),
                 "Update this Ambit.");
    }

    void hostileTextsAreRefused() {
        QVERIFY(!record::verifyRecord(""));
        QVERIFY(!record::verifyRecord(std::string(100'000, '[')));
        QVERIFY(!record::verifyRecord(std::string(17 << 20, ' ')));
        QVERIFY(!record::verifyRecord(
            "{\"content\":{\"signer\":1},\"signatures\":[{\"protected\":\"e30\",\"signature\":\"\"}]}"));
        QVERIFY(!record::verifyRecord("{\"content\":{\"a\":1e400},\"signatures\":[]}"));
    }

    void speed() {
        QElapsedTimer timer;
        const Json content = test::contentOf();
        const auto fresh = record::unlock(test::keyFile(), test::passphrase);
        constexpr int runs = 200;
        timer.start();
        for (int i = 0; i < runs; ++i)
            QVERIFY(record::signRecord(content, *fresh));
        const double sign = static_cast<double>(timer.nsecsElapsed()) / runs / 1000;
        timer.start();
        for (int i = 0; i < runs; ++i)
            QVERIFY(record::verifyRecord(signedRecord()));
        const double verify = static_cast<double>(timer.nsecsElapsed()) / runs / 1000;
        qInfo("%zu bytes: sign %.0f µs, verify %.0f µs", signedRecord().size(), sign, verify);
    }
};

QTEST_APPLESS_MAIN(RecordJsonTest)
#include "tst_record_json.moc"
