// PDFs that somebody with a key, or with none, made out of a signed one: nothing another reader could see
// differently is accepted.
#include "forge.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>
#include <random>

using namespace ambit;
using namespace std::string_literals;
using test::gapOf;
using test::plainPdf;
using test::rebuilt;
using test::recordOf;
using test::refusedFor;
using test::signedAgain;

namespace {

QPDFObjectHandle fileSpec(QPDF& pdf) {
    return pdf.getRoot().getKey("/AF").getArrayItem(0);
}

void attachInstead(QPDF& pdf, const std::string& text) {
    auto stream = QPDFEFStreamObjectHelper::createEFStream(pdf, text).getObjectHandle();
    fileSpec(pdf).getKey("/EF").replaceKey("/F", stream);
    fileSpec(pdf).getKey("/EF").replaceKey("/UF", stream);
}

} // namespace

class RecordForgedTest : public QObject {
    Q_OBJECT
private slots:
    void nothingComesAfterTheEnd() {
        for (const std::string& more : {" "s, "\n"s, "%%EOF\n"s, plainPdf(), std::string(1, '\0')})
            QVERIFY(!record::verifyPdf(plainPdf() + more));
        const std::string edited = test::shadowEdit(plainPdf());
        QPDF pdf; // the edit itself is sound: a reader shows an empty page
        pdf.setSuppressWarnings(true);
        pdf.processMemoryFile("test", edited.data(), edited.size());
        QVERIFY(!pdf.anyWarnings());
        auto page = pdf.getAllPages().at(0);
        QCOMPARE(page.getKey("/Contents").getStreamData()->getSize(), std::size_t{0});
        QVERIFY(refusedFor("added or cut off", edited));
        // Even where the edit is given a range over all of the file.
        QVERIFY(!record::verifyPdf(signedAgain(edited, test::stranger())));
    }

    void rebuiltVerifies() {
        const std::string pdf = rebuilt([](QPDF&) {});
        QVERIFY(record::verifyPdf(pdf));
        const std::string bumped =
            rebuilt([](QPDF& file) { file.getRoot().replaceKey("/Harmless", QPDFObjectHandle::newNull()); });
        QVERIFY(record::verifyPdf(bumped));
    }

    void attachmentsAreTheRecord() {
        // Whole and sound, but another record than was attached: the digest tells.
        const std::string other = recordOf(test::contentOf(true));
        const std::string swapped = rebuilt([&](QPDF& pdf) { attachInstead(pdf, other); });
        QVERIFY(record::verifyPdf(swapped)); // signed by the signer of both: it is their record
        QVERIFY(refusedFor("two keys", rebuilt([&](QPDF& pdf) { attachInstead(pdf, other); }, qpdf_o_disable,
                                               test::stranger())));
        std::string false1 = other;
        false1.replace(false1.find("OX-TEST"), 7, "OX-FALS");
        QVERIFY(refusedFor("doesn't hold", rebuilt([&](QPDF& pdf) { attachInstead(pdf, false1); })));
        QVERIFY(refusedFor("canonical", rebuilt([&](QPDF& pdf) { attachInstead(pdf, other + "\n"); })));
        QVERIFY(refusedFor("not JSON", rebuilt([&](QPDF& pdf) { attachInstead(pdf, ""); })));
        QVERIFY(refusedFor("can't be unpacked",
                           rebuilt([&](QPDF& pdf) { attachInstead(pdf, std::string(17 << 20, '[')); })));
    }

    void oneAttachmentForEveryReader() {
        const auto second = [](QPDF& pdf) {
            return QPDFEFStreamObjectHelper::createEFStream(pdf, "x"s).getObjectHandle();
        };
        QVERIFY(refusedFor("one and the same", rebuilt([&](QPDF& pdf) {
                               fileSpec(pdf).getKey("/EF").replaceKey("/UF", second(pdf));
                           })));
        QVERIFY(refusedFor("one and the same",
                           rebuilt([&](QPDF& pdf) { fileSpec(pdf).getKey("/EF").removeKey("/UF"); })));
        QVERIFY(
            refusedFor("exactly one attachment", rebuilt([](QPDF& pdf) { pdf.getRoot().removeKey("/AF"); })));
        QVERIFY(refusedFor("exactly one attachment",
                           rebuilt([](QPDF& pdf) { pdf.getRoot().removeKey("/Names"); })));
        QVERIFY(refusedFor("exactly one attachment", rebuilt([](QPDF& pdf) {
                               pdf.getRoot()
                                   .getKey("/Names")
                                   .getKey("/EmbeddedFiles")
                                   .getKey("/Names")
                                   .setArrayItem(0, QPDFObjectHandle::newString("other.json"));
                           })));
        QVERIFY(refusedFor("exactly one attachment", rebuilt([](QPDF& pdf) {
                               auto names =
                                   pdf.getRoot().getKey("/Names").getKey("/EmbeddedFiles").getKey("/Names");
                               names.appendItem(QPDFObjectHandle::newString("second.json"));
                               names.appendItem(fileSpec(pdf));
                           })));
    }

    void oneSignatureForEveryReader() {
        const auto secondDictionary = [](QPDF& pdf) {
            pdf.getRoot().replaceKey(
                "/More", pdf.makeIndirectObject(QPDFObjectHandle::parse("<< /Type /Sig /Contents (x) >>")));
        };
        QVERIFY(refusedFor("more signatures than", rebuilt(secondDictionary)));
        QVERIFY(refusedFor("exactly one field", rebuilt([](QPDF& pdf) {
                               pdf.getRoot()
                                   .getKey("/AcroForm")
                                   .getKey("/Fields")
                                   .appendItem(pdf.makeIndirectObject(
                                       QPDFObjectHandle::parse("<< /FT /Tx /T (more) >>")));
                           })));
        QVERIFY(refusedFor(
            "not the signature", rebuilt([](QPDF& pdf) {
                auto field = pdf.getRoot().getKey("/AcroForm").getKey("/Fields").getArrayItem(0);
                auto value = field.getKey("/V");
                field.replaceKey("/V", pdf.makeIndirectObject(QPDFObjectHandle::parse("<< /Type /Sig >>")));
                pdf.getRoot().replaceKey("/Hidden", value);
            })));
        QVERIFY(refusedFor("not the signature", rebuilt([](QPDF& pdf) {
                               pdf.getRoot()
                                   .getKey("/AcroForm")
                                   .getKey("/Fields")
                                   .getArrayItem(0)
                                   .getKey("/V")
                                   .replaceKey("/SubFilter",
                                               QPDFObjectHandle::newName("/adbe.pkcs7.detached"));
                           })));
        QVERIFY(refusedFor("hides objects", rebuilt([](QPDF&) {}, qpdf_o_generate)));
    }

    void twoKeysAreRefused() {
        const std::string pdf = rebuilt([](QPDF&) {}, qpdf_o_disable, test::stranger());
        QVERIFY(refusedFor("two keys", pdf));
        QVERIFY(!record::signPdf(test::pages(false), recordOf(test::contentOf()), {}, test::stranger()));
    }

    void hostileFilesAreRefused() {
        for (const std::string& text : {""s, "%PDF-1.7"s, "%PDF-1.7\n/ByteRange [ 0 "s,
                                        "%PDF-1.7\n/ByteRange "s, std::string(1000, '<')})
            QVERIFY(!record::verifyPdf(text));
        // Well signed, but hardly a PDF.
        const auto gap = gapOf(plainPdf());
        const std::string middle =
            plainPdf().substr(plainPdf().rfind(record::pdf::byteRangeKey, gap.begin),
                              gap.end - plainPdf().rfind(record::pdf::byteRangeKey, gap.begin));
        QVERIFY(refusedFor("not a sound PDF", signedAgain("%PDF-1.7\n" + middle + "\n", test::signer())));
        QVERIFY(refusedFor("not a sound PDF",
                           signedAgain("%PDF-1.7\n" + middle + std::string(100'000, '['), test::signer())));
        std::string noTable = plainPdf();
        noTable[noTable.rfind("startxref\n") + 10] = '9';
        QVERIFY(refusedFor("not a sound PDF", signedAgain(noTable, test::signer())));
    }

    /// Noise that is well signed reaches every part of the check; it may be refused or not, but must never
    /// crash.
    void signedNoiseIsSurvived() {
        std::mt19937 random(20260620);
        const auto below = [&](std::size_t most) { return random() % most; };
        const auto gap = gapOf(plainPdf());
        int accepted = 0;
        for (int i = 0; i < 600; ++i) {
            std::string pdf = plainPdf();
            for (std::size_t changes = 1 + below(6); changes > 0; --changes) {
                const std::size_t at = below(pdf.size());
                if (at + 100 < gap.begin || at > gap.end) pdf[at] = static_cast<char>(below(256));
            }
            if (record::verifyPdf(signedAgain(pdf, test::signer()))) ++accepted;
        }
        qInfo("%d of 600 accepted", accepted);
    }
};

QTEST_APPLESS_MAIN(RecordForgedTest)
#include "tst_record_forged.moc"
