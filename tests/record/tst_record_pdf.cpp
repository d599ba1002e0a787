// The signed PDF: made, checked, and refused after any change.
#include "forge.hpp"

#include <QElapsedTimer>
#include <QtTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace std::string_literals;
using test::gapOf;
using test::photoPdf;
using test::plainPdf;
using test::recordOf;
using test::refusedFor;

class RecordPdfTest : public QObject {
    Q_OBJECT
private slots:
    void verifies() {
        const auto report = record::verifyPdf(plainPdf());
        QVERIFY2(report, report ? "" : toText(report.error()).c_str());
        QCOMPARE(report->record.content, test::contentOf());
        QCOMPARE(report->signer.der, test::signer().certificate().der);
        const auto withPhoto = record::verifyPdf(photoPdf());
        QVERIFY2(withPhoto, withPhoto ? "" : toText(withPhoto.error()).c_str());
    }

    void photosGoInAsTheyAre() { QVERIFY(photoPdf().find(test::photoBytes()) != std::string::npos); }

    void sameInputSameBytesButForTheSignature() {
        // The fixture's signer remembers: the same digest, the same signature.
        QCOMPARE(photoPdf(), photoPdf());
        const auto fresh = record::unlock(test::keyFile(), test::passphrase);
        const std::string json = recordOf(test::contentOf());
        std::string mine = *record::signPdf(test::pages(false), json, {}, *fresh);
        std::string first = plainPdf();
        QVERIFY(mine != first);
        const auto gap = gapOf(first);
        mine.erase(gap.begin, gap.end - gap.begin);
        first.erase(gap.begin, gap.end - gap.begin);
        QCOMPARE(mine, first);
    }

    /// Each byte, several changes; outside and inside the signature, its padding too.
    void everyChangedByteIsRefused() {
        const std::string& sound = plainPdf();
        QElapsedTimer timer;
        timer.start();
        std::string changed = sound;
        for (std::size_t i = 0; i < sound.size(); ++i) {
            for (const int mask : {0x01, 0x20, 0x80}) {
                changed[i] = static_cast<char>(sound[i] ^ mask);
                QVERIFY2(!record::verifyPdf(changed),
                         qPrintable(QStringLiteral("byte %1, xor %2").arg(i).arg(mask)));
            }
            changed[i] = sound[i];
        }
        qInfo("%zu changes refused in %lld ms", sound.size() * 3, timer.elapsed());
    }

    /// With a photo: every 97th byte of it, and all around the signature and at the end.
    void changedBytesBesidePhotosAreRefused() {
        const std::string sound = photoPdf();
        const auto gap = gapOf(sound);
        std::string changed = sound;
        for (std::size_t i = 0; i < sound.size(); ++i) {
            const bool near = (i + 400 > gap.begin && i < gap.end + 400) || i + 1200 > sound.size();
            if (!near && i % 97 != 0) continue;
            for (const int mask : {0x01, 0x20}) {
                changed[i] = static_cast<char>(sound[i] ^ mask);
                QVERIFY2(!record::verifyPdf(changed),
                         qPrintable(QStringLiteral("byte %1, xor %2").arg(i).arg(mask)));
            }
            changed[i] = sound[i];
        }
    }

    void everyCutAndDoubledByteIsRefused() {
        const std::string& sound = plainPdf();
        for (std::size_t i = 0; i < sound.size(); i += 7) {
            QVERIFY(!record::verifyPdf(std::string_view(sound).substr(0, i)));
            std::string shorter = sound;
            QVERIFY(!record::verifyPdf(shorter.erase(i, 1)));
            std::string longer = sound;
            QVERIFY(!record::verifyPdf(longer.insert(i, 1, sound[i])));
        }
    }

    void anotherRangeIsRefused() {
        const auto gap = gapOf(plainPdf());
        const std::size_t key = plainPdf().find(record::pdf::byteRangeKey) + record::pdf::byteRangeKey.size();
        const std::size_t size = plainPdf().size();
        for (const record::pdf::Gap other : {record::pdf::Gap{gap.begin - 1, gap.end},
                                             {gap.begin, gap.end + 1},
                                             {gap.begin + 1, gap.end},
                                             {gap.begin, gap.end - 1},
                                             {0, size},
                                             {gap.end, gap.begin},
                                             {1, 2}}) {
            std::string pdf = plainPdf();
            const std::string range = record::pdf::byteRange(size, other);
            QVERIFY(!record::verifyPdf(pdf.replace(key, range.size(), range)));
        }
        for (const std::string range :
             {"[ 0 99999999999999999999 1 1 ]", "[ 1 2 3 4 ]", "[ 0 -1 -1 -1 ]", "[", "[ 0 1", "[ 0 "}) {
            std::string pdf = plainPdf();
            QVERIFY(!record::verifyPdf(pdf.replace(key, 40, range + std::string(40 - range.size(), ' '))));
            QVERIFY(!record::verifyPdf(plainPdf().substr(0, key) + range));
        }
    }

    void hexHasOneForm() {
        const auto gap = gapOf(plainPdf());
        std::string upper = plainPdf();
        for (std::size_t i = gap.begin; i < gap.end; ++i)
            upper[i] = static_cast<char>(std::toupper(upper[i]));
        QVERIFY(refusedFor("lower-case", upper));
        std::string padding = plainPdf();
        padding[gap.end - 2] = '1';
        QVERIFY(!record::verifyPdf(padding));
    }

    /// Rebuilding by itself changes nothing that matters: what the next tests refuse, they refuse for their
    /// change.
    void signsOnlyWhatFits() {
        const std::string json = recordOf(test::contentWith(test::photoBytes()));
        const auto photos = test::photos();
        QVERIFY(record::signPdf(test::pages(true), json, photos, test::signer()));
        QVERIFY(!record::signPdf(test::pages(true), json, {}, test::signer()));
        QVERIFY(!record::signPdf(test::pages(true), json + " ", photos, test::signer()));
        auto pages = test::pages(true);
        pages.placeholders[0].photoWidth += 1;
        QVERIFY(!record::signPdf(pages, json, photos, test::signer()));
        pages = test::pages(true);
        pages.placeholders[0].width = 3;
        QVERIFY(!record::signPdf(pages, json, photos, test::signer()));
        pages = test::pages(true);
        pages.pdf = plainPdf();
        QVERIFY(!record::signPdf(pages, json, photos, test::signer()));
        for (const std::string& text : {""s, "%PDF-1.7\n"s, pages.pdf.substr(0, 200), std::string(1000, 'x')})
            QVERIFY(!record::signPdf({text, {}}, json, {}, test::signer()));
        const auto notOurs = photos.begin()->first;
        QVERIFY(!record::signPdf(test::pages(true), json, {{notOurs, "no JPEG"}}, test::signer()));
    }

    void speed() {
        QElapsedTimer timer;
        const std::string json = recordOf(test::contentWith(test::photoBytes()));
        const auto pages = test::pages(true);
        constexpr int runs = 20;
        std::string pdf;
        timer.start();
        for (int i = 0; i < runs; ++i)
            pdf = *record::signPdf(pages, json, test::photos(), test::signer());
        const double sign = static_cast<double>(timer.nsecsElapsed()) / runs / 1e6;
        timer.start();
        for (int i = 0; i < runs; ++i)
            QVERIFY(record::verifyPdf(pdf));
        qInfo("%zu bytes: sign %.1f ms, verify %.1f ms", pdf.size(), sign,
              static_cast<double>(timer.nsecsElapsed()) / runs / 1e6);
    }
};

QTEST_APPLESS_MAIN(RecordPdfTest)
#include "tst_record_pdf.moc"
