// The countersigned PDF: an update that leaves the first signature valid, and nothing else after it.
#include "base/canonical.hpp"
#include "base/encoding.hpp"
#include "base/hash.hpp"
#include "forge.hpp"
#include "record/cms.hpp"
#include "record/pdf_update.hpp"

#include <QElapsedTimer>
#include <QtTest>
#include <array>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace std::string_literals;
using test::plainPdf;
using test::refusedFor;

namespace {

const std::string& countersignedRecord() {
    static const std::string json = *record::countersignRecord(
        test::recordOf(test::contentOf()), test::mechanicsKey(), test::mechanic(), test::countersignedAt);
    return json;
}

const std::string& countersigned() {
    static const std::string pdf =
        *record::countersignPdf(plainPdf(), countersignedRecord(), test::mechanicsKey());
    return pdf;
}

record::pdf::Gap lastGapOf(const std::string& pdf) {
    const std::size_t begin = pdf.rfind(record::pdf::contentsKey) + record::pdf::contentsKey.size() - 1;
    return {begin, pdf.find('>', begin) + 1};
}

/// Signs what stands in the file now, in place of its last signature: what its countersigner could do.
std::string signedLast(std::string pdf, const record::Signer& by = test::mechanicsKey()) {
    const auto gap = lastGapOf(pdf);
    const std::size_t key = pdf.rfind(record::pdf::byteRangeKey) + record::pdf::byteRangeKey.size();
    const std::string range = record::pdf::byteRange(pdf.size(), gap);
    pdf.replace(key, range.size(), range);
    pdf.replace(gap.begin + 1, gap.end - gap.begin - 2, std::string(gap.end - gap.begin - 2, '0'));
    return *record::pdf::signGap(pdf, gap, by);
}

std::string replaced(std::string text, std::string_view what, std::string_view with) {
    const std::size_t at = text.rfind(what);
    if (at == std::string::npos) qFatal("nothing to replace");
    return text.replace(at, what.size(), with);
}

} // namespace

class RecordUpdatesTest : public QObject {
    Q_OBJECT
private slots:
    void verifies() {
        const auto report = record::verifyPdf(countersigned());
        QVERIFY2(report, report ? "" : toText(report.error()).c_str());
        QCOMPARE(report->recordJson, countersignedRecord());
        QCOMPARE(report->record.signatures.size(), std::size_t{2});
        QCOMPARE(report->record.signatures[1].who, test::mechanic());
        QCOMPARE(report->signer.der, test::signer().certificate().der);
        const auto withPhoto =
            *record::countersignRecord(test::recordOf(test::contentWith(test::photoBytes())),
                                       test::mechanicsKey(), test::mechanic(), {});
        QVERIFY(
            record::verifyPdf(*record::countersignPdf(test::photoPdf(), withPhoto, test::mechanicsKey())));
    }

    void manySign() {
        std::string json = countersignedRecord();
        std::string pdf = countersigned();
        for (const char* name : {"Third (3) Person", "Four\\th"}) {
            const auto key = test::newSigner(name);
            json = *record::countersignRecord(json, key, {name, "owner", ""}, test::countersignedAt);
            const auto more = record::countersignPdf(pdf, json, key);
            QVERIFY2(more, more ? "" : toText(more.error()).c_str());
            pdf = *more;
        }
        const auto report = record::verifyPdf(pdf);
        QVERIFY2(report, report ? "" : toText(report.error()).c_str());
        QCOMPARE(report->recordJson, json);
        QCOMPARE(report->record.signatures.size(), std::size_t{4});
    }

    /// The pages may hold their lists of annotations as objects of their own: the drawn ones do.
    void annotationsMayStandApart() {
        const std::string apart = test::rebuilt([](QPDF& pdf) {
            auto page = pdf.getAllPages().at(0);
            page.replaceKey("/Annots", pdf.makeIndirectObject(page.getKey("/Annots")));
        });
        const auto both = record::countersignPdf(apart, countersignedRecord(), test::mechanicsKey());
        QVERIFY2(both, both ? "" : toText(both.error()).c_str());
        QVERIFY(record::verifyPdf(*both));
        QPDF pdf;
        pdf.processMemoryFile("test", both->data(), both->size());
        auto page = pdf.getAllPages().at(0);
        QCOMPARE(page.getKey("/Annots").getArrayNItems(), 2);
    }

    void whatWasSignedFirstStays() {
        QVERIFY(countersigned().starts_with(plainPdf()));
        const auto first = record::verifyPdf(std::string_view(countersigned()).substr(0, plainPdf().size()));
        QVERIFY(first);
        QCOMPARE(first->record.signatures.size(), std::size_t{1});
    }

    void sameInputSameBytesButForTheSignature() {
        QCOMPARE(*record::countersignPdf(plainPdf(), countersignedRecord(), test::mechanicsKey()),
                 countersigned());
    }

    void everyChangedByteIsRefused() {
        const std::string& sound = countersigned();
        std::string changed = sound;
        for (std::size_t i = plainPdf().size(); i < sound.size(); ++i) {
            const int mask = std::array{0x01, 0x20, 0x80}[i % 3];
            changed[i] = static_cast<char>(sound[i] ^ mask);
            QVERIFY2(!record::verifyPdf(changed),
                     qPrintable(QStringLiteral("byte %1, xor %2").arg(i).arg(mask)));
            changed[i] = sound[i];
        }
        // What stands before it, tst_record_pdf changes; here the two must be refused together as well.
        for (std::size_t i = 0; i < plainPdf().size(); i += 29) {
            changed[i] = static_cast<char>(sound[i] ^ 0x01);
            QVERIFY2(!record::verifyPdf(changed), qPrintable(QStringLiteral("byte %1").arg(i)));
            changed[i] = sound[i];
        }
    }

    void everyCutAndDoubledByteIsRefused() {
        const std::string& sound = countersigned();
        for (std::size_t i = plainPdf().size(); i < sound.size(); i += 17) {
            if (i > plainPdf().size()) QVERIFY(!record::verifyPdf(std::string_view(sound).substr(0, i)));
            std::string shorter = sound;
            QVERIFY(!record::verifyPdf(shorter.erase(i, 1)));
            std::string longer = sound;
            QVERIFY(!record::verifyPdf(longer.insert(i, 1, sound[i])));
        }
    }

    void nothingComesAfterTheEnd() {
        const std::string update = countersigned().substr(plainPdf().size());
        for (const std::string& more : {" "s, "\n"s, "%%EOF\n"s, update, plainPdf(), std::string(1, '\0')})
            QVERIFY(!record::verifyPdf(countersigned() + more));
        const std::string edited = test::shadowEdit(countersigned());
        QPDF pdf; // sound for a reader, who sees an empty page
        pdf.setSuppressWarnings(true);
        pdf.processMemoryFile("test", edited.data(), edited.size());
        QVERIFY(!pdf.anyWarnings());
        auto page = pdf.getAllPages().at(0);
        QCOMPARE(page.getKey("/Contents").getStreamData()->getSize(), std::size_t{0});
        QVERIFY(refusedFor("added or cut off", edited));
    }

    /// A blank page slipped in between the two signatures, before or by the countersigner.
    void nothingComesBetween() {
        const std::string edited = test::shadowEdit(plainPdf());
        QVERIFY(!record::countersignPdf(edited, countersignedRecord(), test::mechanicsKey()));
        const auto report = record::verifyRecord(countersignedRecord());
        const Json entry = (*parseJson(countersignedRecord()))["signatures"][1];
        const auto update = record::pdf::updateFor(edited, entry, report->signatures[1], 2);
        QVERIFY(update);
        const std::string both =
            *record::pdf::signGap(edited + update->bytes, update->gap, test::mechanicsKey());
        QVERIFY(refusedFor("not exactly what a countersignature adds", both));
    }

    /// The countersigner signs more than their own field: each is well signed, and refused for what it
    /// changes.
    void nothingElseIsChanged_data() {
        QTest::addColumn<QByteArray>("what");
        QTest::addColumn<QByteArray>("with");
        const auto row = [](const char* name, const char* what, const char* with) {
            QTest::newRow(name) << QByteArray(what) << QByteArray(with);
        };
        row("the field is shown", "/Rect [ 0 0 0 0 ]", "/Rect [ 0 0 9 9 ]");
        row("a field of another name", "(Signature2)", "(Signature9)");
        row("other flags", "/F 132", "/F 130");
        row("an action when opened", "/Lang (en)", "/OpenAction << /S /Named >>");
        row("another page size", "/MediaBox [ 0 0 595 842 ]", "/MediaBox [ 0 0 595 999 ]");
        row("another time", "/M (D:20260620", "/M (D:20260621");
        row("another object", "xref\n", "99 0 obj\nnull\nendobj\nxref\n");
        row("another table before", "/Prev ", "/Prev 0");
        row("a comment", "trailer", "%\ntrailer");
        row("a missing line end", "%%EOF\n", "%%EOF");
    }
    void nothingElseIsChanged() {
        QFETCH(QByteArray, what);
        QFETCH(QByteArray, with);
        const std::string pdf = signedLast(replaced(countersigned(), what.toStdString(), with.toStdString()));
        QVERIFY(refusedFor("not exactly what a countersignature adds", pdf));
    }

    void signedAgainVerifies() { // so that the tests above refuse for their change, not for the signing
        QVERIFY(record::verifyPdf(signedLast(countersigned())));
    }

    void twoKeysAreRefused() {
        const std::string sameSize = signedLast(countersigned(), test::newSigner(test::mechanic().name));
        QVERIFY(!record::verifyPdf(sameSize));
        QVERIFY(!record::countersignPdf(plainPdf(), countersignedRecord(), test::stranger()));
    }

    void anotherRecordsCountersignatureIsRefused() {
        const std::string other = test::recordOf(test::contentOf(true));
        const std::string both =
            *record::countersignRecord(other, test::mechanicsKey(), test::mechanic(), {});
        const auto refused = record::countersignPdf(plainPdf(), both, test::mechanicsKey());
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::conflict);
        // The update that belongs to the other record's PDF.
        const std::string otherPdf = *record::signPdf(test::pages(false), other, {}, test::signer());
        const std::string otherBoth = *record::countersignPdf(otherPdf, both, test::mechanicsKey());
        QVERIFY(refusedFor("/signatures/1/protected/after", plainPdf() + otherBoth.substr(otherPdf.size())));
    }

    void updatesDontChangePlaces() {
        const auto key = test::newSigner("Third");
        const std::string json =
            *record::countersignRecord(countersignedRecord(), key, {"Third", "owner", ""}, {});
        const std::string three = *record::countersignPdf(countersigned(), json, key);
        const std::string second = countersigned().substr(plainPdf().size());
        const std::string third = three.substr(countersigned().size());
        QVERIFY(record::verifyPdf(plainPdf() + second + third));
        QVERIFY(!record::verifyPdf(plainPdf() + third));
        QVERIFY(!record::verifyPdf(plainPdf() + third + second));
        QVERIFY(!record::verifyPdf(plainPdf() + second + second));
        QVERIFY(!record::verifyPdf(second + third));
    }

    void countersignsOnlyWhatHolds() {
        const auto& key = test::mechanicsKey();
        QVERIFY(!record::countersignPdf("", countersignedRecord(), key));
        QVERIFY(!record::countersignPdf(plainPdf() + " ", countersignedRecord(), key));
        QVERIFY(!record::countersignPdf(plainPdf(), countersignedRecord() + " ", key));
        QVERIFY(!record::countersignPdf(countersigned(), countersignedRecord(), key));
        QVERIFY(!record::countersignPdf(plainPdf(), test::recordOf(test::contentOf()), test::signer()));
        // A PDF is made of the record as first signed.
        QVERIFY(!record::signPdf(test::pages(false), countersignedRecord(), {}, test::signer()));
        QVERIFY(refusedFor(
            "more signatures than the PDF", test::rebuilt([](QPDF& pdf) {
                auto stream =
                    QPDFEFStreamObjectHelper::createEFStream(pdf, countersignedRecord()).getObjectHandle();
                auto files = pdf.getRoot().getKey("/AF").getArrayItem(0).getKey("/EF");
                files.replaceKey("/F", stream);
                files.replaceKey("/UF", stream);
            })));
    }

    void speed() {
        QElapsedTimer timer;
        constexpr int runs = 20;
        timer.start();
        for (int i = 0; i < runs; ++i)
            QVERIFY(record::verifyPdf(countersigned()));
        qInfo("%zu bytes: verify %.1f ms", countersigned().size(),
              static_cast<double>(timer.nsecsElapsed()) / runs / 1e6);
    }
};

QTEST_APPLESS_MAIN(RecordUpdatesTest)
#include "tst_record_updates.moc"
