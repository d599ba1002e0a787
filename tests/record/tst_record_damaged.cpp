// Contents, certificates and signatures that somebody has damaged, or made of sound ones. Their signature is
// no help: whoever has a key signs what they like. What is refused, is refused in words; of what is taken,
// all that reads it afterwards gets its answer.
#include "../archive/fleets.hpp"
#include "../base/damage.hpp"
#include "base/canonical.hpp"
#include "base/hash.hpp"
#include "file/file.hpp"
#include "fixture.hpp"
#include "record/cms.hpp"
#include "record/link.hpp"
#include "record/parts.hpp"
#include "record/record.hpp"

#include <QtTest>

using namespace ambit;
using test::damaged;
using test::damagedTree;
using test::viewOf;

namespace {

const std::string key(64, 'a');

/// Of every kind: rounds, and what is said between them.
std::vector<Json> contents() {
    std::vector<Json> all{test::contentOf(true), test::contentOf(false)};
    fleet::Plan plan;
    plan.aircraft = 1;
    plan.years = 1;
    plan.records = 120;
    std::map<std::string, int> kinds;
    for (const std::string& text : test::fleetRecords(plan)) {
        Json content = std::move(parseJson(text).value()["content"]);
        if (++kinds[content["kind"].get<std::string>()] <= 12) all.push_back(std::move(content));
    }
    return all;
}

} // namespace

class RecordDamagedTest : public QObject {
    Q_OBJECT

private slots:
    void contentsOthersSign() {
        const auto all = contents();
        std::mt19937 random(1);
        std::size_t taken = 0;
        std::vector<file::Told> file;
        for (int i = 0; i < 3'000; ++i) {
            const Json content = damagedTree(all[random() % all.size()], random);
            if (auto good = record::checkContent(content); !good) {
                QVERIFY(!toText(good.error()).empty());
                continue;
            }
            ++taken;
            file::Told told = file::toldBy(sha256Hex(canonicalJson(content)), content, key);
            (void)file::gloss(told);
            const std::string kept = file::packed(told);
            file::Told again = told;
            const auto* round = told.round();
            QVERIFY(file::unpack(again, kept, told.kind(), round == nullptr ? nullptr : round->walked));
            QCOMPARE(file::packed(again), kept);
            // Its bytes, as a damaged archive would give them.
            const auto bytes = damaged(kept, kept.size(), random);
            (void)file::unpack(again, viewOf(bytes), told.kind(), round == nullptr ? nullptr : round->walked);
            file.push_back(std::move(told));
            if (file.size() < 12) continue;
            const auto folded = file::fold(file);
            (void)file::standsAgainst(folded, "2026-06-20");
            QVERIFY(folded.pages.size() <= file.size());
            file.clear();
        }
        QVERIFY2(taken > 300, qPrintable(QString::number(taken)));
    }

    void recordsByBytes() {
        const std::string sound = record::signRecord(test::contentOf(), test::signer()).value();
        std::mt19937 random(2);
        for (int i = 0; i < 3'000; ++i) {
            const auto bytes = damaged(sound, sound.size(), random);
            if (viewOf(bytes) == sound) continue;
            QVERIFY(!record::verifyRecord(viewOf(bytes)));
            if (const auto parts = record::partsOf(viewOf(bytes)))
                QCOMPARE(record::assembled(parts->content, parts->signatures), std::string(viewOf(bytes)));
        }
    }

    void certificatesAndSignatures() {
        const std::string person = test::signer().certificate().der;
        const auto link = record::newLinkKey(test::signer(), {1'781'940'630'500}).value();
        const std::string digest(32, '\7');
        const std::string cms = record::signCms(digest, test::signer()).value();
        const std::string& keyFile = test::keyFile();
        const std::size_t certificate = keyFile.find("-----BEGIN CERT");
        std::mt19937 random(3);
        for (int i = 0; i < 3'000; ++i) {
            const auto der = damaged(person, person.size(), random);
            if (const auto read = record::Certificate::fromDer(viewOf(der))) {
                QVERIFY(!read->name.empty());
                QVERIFY(read->notBefore.ms <= read->notAfter.ms);
            }
            const auto connection = damaged(link.certificateDer, link.certificateDer.size(), random);
            if (viewOf(connection) != link.certificateDer)
                QVERIFY(!record::vouchedFor(viewOf(connection), person));
            (void)record::vouchedFor(link.certificateDer, viewOf(der));
            const auto signature = damaged(cms, cms.size(), random);
            if (viewOf(signature) != cms) QVERIFY(!record::verifyCms(viewOf(signature), digest));
            const auto pem =
                damaged(std::string_view(keyFile).substr(certificate), keyFile.size() - certificate, random);
            (void)record::certificateOf(viewOf(pem));
        }
    }
};

QTEST_APPLESS_MAIN(RecordDamagedTest)
#include "tst_record_damaged.moc"
