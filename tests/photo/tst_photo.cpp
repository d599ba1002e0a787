// What a photo's file is taken for, before anybody decodes it.
#include "../base/damage.hpp"
#include "base/files.hpp"
#include "made.hpp"
#include "photo/bounds.hpp"
#include "photo/jpeg.hpp"
#include "photo/png.hpp"

#include <QtTest>
#include <random>

namespace ambit::test {

namespace {

using namespace std::string_literals;

std::string demo() {
    return *readFile(AMBIT_ROOT "/demo-aircraft/helicopter/photos/fairing-left-1.jpg");
}

std::string png(const std::string& header, const std::string& more = {}) {
    return "\x89PNG\r\n\x1A\n"s + chunk("IHDR", header) + more + chunk("IDAT", "x") + chunk("IEND", "");
}

const std::string smallHeader("\0\0\0\x08\0\0\0\x08\x08\2\0\0\0", 13);

std::size_t frameOf(const std::string& jpeg) {
    return jpeg.find("\xFF\xC0");
}

} // namespace

class TestPhoto : public QObject {
    Q_OBJECT
private slots:
    void kinds() {
        QVERIFY(photo::kindOf(demo()) == photo::Kind::jpeg);
        QVERIFY(photo::kindOf(png(smallHeader)) == photo::Kind::png);
        for (const char* brand : {"heic", "heix", "mif1"})
            QVERIFY(photo::kindOf("\0\0\0\x18"s + "ftyp" + brand + "\0\0\0\0"s) == photo::Kind::heif);
        // Others that Qt may be able to read, and a sequence of HEIF pictures.
        for (const std::string& other :
             {""s, "\xFF\xD8"s, "GIF89a......"s, "BM.........."s, "\0\0\1\0........"s, "%PDF-1.7...."s,
              "<svg xmlns=\"http"s, "<?xml version"s, "RIFF....WEBPVP8 "s, "II*\0........"s,
              "\0\0\0\x18"s + "ftyphevc\0\0\0\0"s, "\0\0\0\x18"s + "ftypavif\0\0\0\0"s,
              "\0\0\0\x18"s + "ftypmp42"s})
            QVERIFY2(!photo::kindOf(other), other.c_str());
    }

    void sizes() {
        QVERIFY(photo::checkSize(1, 1));
        QVERIFY(photo::checkSize(8160, 6120));
        QVERIFY(photo::checkSize(10000, 5000));
        QVERIFY(!photo::checkSize(10001, 5000));
        QVERIFY(!photo::checkSize(0, 5));
        QVERIFY(!photo::checkSize(5, -1));
        QVERIFY(photo::checkSize(20, 1));
        QVERIFY(!photo::checkSize(1, 21));
        QVERIFY(!photo::checkSize(1, 50'000'000));
        QVERIFY(!photo::checkSize(0xFFFFFFFF, 0xFFFFFFFF));
    }

    void exifIsReadInBothByteOrders() {
        for (const bool isBig : {true, false}) {
            const auto exif = photo::readExif(cameraExif({6, "2026:06:20 07:30:00", "-03:30", isBig}));
            QCOMPARE(exif.orientation, 6);
            QCOMPARE(exif.takenAt, "2026:06:20 07:30:00"s);
            QCOMPARE(exif.offset, "-03:30"s);
        }
    }

    void exifIsWrittenAsItIsRead() {
        for (const photo::Exif& exif :
             {photo::Exif{1, "2026:06:20 07:30:00", "+02:00"}, photo::Exif{1, "1999:12:31 23:59:60", ""}})
            QVERIFY(photo::readExif(photo::writeExif(exif)) == exif);
        QVERIFY(photo::writeExif({6, "", "+02:00"}).empty());
    }

    void whatIsNoTimeIsNotKept() {
        for (const char* other :
             {"2026:06:20 07:30:0x", "2026-06-20 07:30:00", "    :  :     :  :  ", "2026:13:20 07:30:00",
              "2026:06:00 07:30:00", "2026:06:20 24:30:00", "PLACE 50.00 10.0000"})
            QCOMPARE(photo::readExif(cameraExif({1, other, "+02:00"})), photo::Exif());
        for (const char* other : {"PLACE1", "+2:000", "+15:00", "+02:60", " 02:00"})
            QCOMPARE(photo::readExif(cameraExif({1, "2026:06:20 07:30:00", other})).offset, ""s);
        QCOMPARE(photo::readExif(cameraExif({9, "", ""})).orientation, 1);
    }

    void brokenExifIsReadWithinItsBytes() {
        const std::string whole = cameraExif({});
        for (std::size_t length = 0; length < whole.size(); length += 7)
            (void)photo::readExif(std::string(whole, 0, length)); // a copy: asan sees what is beyond
        std::mt19937 random(8);
        for (int i = 0; i < 20'000; ++i) {
            std::string changed = whole;
            for (int n = 0; n < 3; ++n)
                changed[random() % 1100] = static_cast<char>(random());
            const auto exif = photo::readExif(changed);
            QVERIFY(exif.orientation >= 1 && exif.orientation <= 8);
            QVERIFY(exif.takenAt.empty() || exif.takenAt.size() == 19);
        }
    }

    void timeOfHeif() {
        const std::string its = "\0\0\0\x18"
                                "ftypheic Exif\0\0no, and then Exif\0\0"s +
                                cameraExif({});
        QCOMPARE(photo::readExif(photo::exifInHeif(its)).takenAt, "2026:06:20 07:30:00"s);
        QVERIFY(photo::exifInHeif("ftypheic").empty());
    }

    void jpegsOutline() {
        const std::string its = demo();
        const auto jpeg = photo::readJpeg(its);
        QVERIFY(jpeg);
        QCOMPARE(jpeg->width, 800);
        QCOMPARE(jpeg->height, 600);
        QCOMPARE(jpeg->channels, 3);
        QCOMPARE(jpeg->scans, 1);
        QCOMPARE(jpeg->picture.size(), its.size());
        QCOMPARE(jpeg->stripped(false), its); // it says nothing else
        QVERIFY(jpeg->stripped(true).empty());
    }

    void onlyPictureAndTimeAreLeft() {
        const std::string camera = asCamera(demo(), {});
        const auto jpeg = photo::readJpeg(camera);
        QVERIFY(jpeg);
        const std::string left = jpeg->stripped(false);
        for (const std::string& secret : secrets) {
            QVERIFY2(camera.find(secret) != std::string::npos, secret.c_str());
            QVERIFY2(left.find(secret) == std::string::npos, secret.c_str());
        }
        const auto again = photo::readJpeg(left);
        QVERIFY(again);
        QCOMPARE(again->exif, (photo::Exif{1, "2026:06:20 07:30:00", "+02:00"}));
        QCOMPARE(std::string(again->scan), std::string(jpeg->scan));
        QCOMPARE(again->stripped(false), left);
        QVERIFY(left.size() < demo().size() + 120);
        QVERIFY(photo::readJpeg(asCamera(demo(), {6, "", ""}))->stripped(false).empty());
    }

    /// Places in a JPEG that a picture doesn't need, and that could carry anything.
    void whatTablesCarryIsNotPassedOn_data() {
        QTest::addColumn<QByteArray>("jpeg");
        const std::string its = demo();
        const std::size_t frame = frameOf(its);
        const auto with = [&](std::size_t at, const std::string& more) {
            return QByteArray::fromStdString(its.substr(0, at) + more + its.substr(at));
        };
        QTest::newRow("a table twice") << with(frame, segment(0xDB, "\1"s + std::string(64, 'X')));
        QTest::newRow("a table and more") << with(frame, segment(0xDB, "\2"s + std::string(99, 'X')));
        QTest::newRow("a long restart interval") << with(frame, segment(0xDD, "\0\0BEHIND"s));
        QTest::newRow("a Huffman table and more")
            << with(frame, segment(0xC4, "\1\1"s + std::string(15, '\0') + "xBEHIND"));
        QTest::newRow("behind the scan") << with(its.size() - 2, segment(0xFE, "BEHIND"));
        QTest::newRow("restarts out of turn") << with(its.size() - 2, "\xFF\xD3\xFF\xD1");
        const std::size_t scan = its.find("\xFF\xDA");
        std::string header = its;
        header.replace(scan, 4, "\xFF\xDA\0\x0E"s);
        header.insert(scan + 14, "XX");
        QTest::newRow("a long scan header") << QByteArray::fromStdString(header);
    }
    void whatTablesCarryIsNotPassedOn() {
        QFETCH(QByteArray, jpeg);
        const std::string bytes = jpeg.toStdString();
        const auto its = photo::readJpeg(bytes);
        QVERIFY(its);
        QVERIFY(its->stripped(false).empty()); // coded anew, or refused
    }

    void profilesPartsArePutTogether() {
        const auto with = [](const std::string& more) { return "\xFF\xD8" + more + demo().substr(2); };
        const std::string second = segment(0xE2, "ICC_PROFILE\0\2\2cd"s);
        const std::string first = segment(0xE2, "ICC_PROFILE\0\1\2ab"s);
        QCOMPARE(photo::readJpeg(with(second + first))->profile, "abcd"s);
        QCOMPARE(photo::readJpeg(with(second))->profile, ""s);
        QCOMPARE(photo::readJpeg(with(first + first))->profile, ""s);
    }

    void hostileJpegs() {
        const std::string its = demo();
        const std::size_t frame = frameOf(its);
        const auto changed = [&](std::size_t at, const std::string& to) {
            std::string out = its;
            return out.replace(at, to.size(), to);
        };
        const auto code = [](const std::string& bytes) {
            const auto jpeg = photo::readJpeg(bytes);
            return jpeg ? ErrorCode{-1} : jpeg.error().code;
        };
        QVERIFY(code(changed(frame + 5, "\xFD\xE8\xFD\xE8")) == ErrorCode::unsupported); // 65,000 x 65,000
        QVERIFY(code(changed(frame + 5, "\0\1"s)) == ErrorCode::unsupported);
        QVERIFY(code(changed(frame + 5, "\0\0"s)) == ErrorCode::invalid);
        QVERIFY(code(changed(frame + 9, "\4")) == ErrorCode::unsupported); // for print
        QVERIFY(code(changed(frame + 4, "\x0C")) == ErrorCode::unsupported);
        QVERIFY(code(changed(frame + 1, "\xC9")) == ErrorCode::unsupported);
        QVERIFY(code(changed(frame + 2, "\xFF\xFF")) == ErrorCode::invalid);
        QVERIFY(code(its + std::string(1000, 'x')) == ErrorCode{-1}); // behind it, and not ours
        const std::size_t scan = its.find("\xFF\xDA");
        const std::string once = its.substr(scan, its.size() - 2 - scan);
        std::string often = its.substr(0, its.size() - 2);
        for (int i = 0; i < 40; ++i)
            often += once;
        QVERIFY(code(often + "\xFF\xD9") == ErrorCode::unsupported);
        std::string large = often.substr(0, scan + 15 * once.size()) + "\xFF\xD9"; // 15 scans, 49 megapixels
        large.replace(frame + 5, 4, "\x1B\x58\x1B\x58");
        large[frame + 11] = 0x42; // channels shared out so that memory isn't what forbids it
        QVERIFY(code(large) == ErrorCode::unsupported);
        large = often.substr(0, scan + 12 * once.size()) + "\xFF\xD9";
        large.replace(frame + 5, 4, "\x1B\x58\x1B\x58");
        large[frame + 11] = 0x42;
        QVERIFY(code(large) == ErrorCode{-1});
        // The outline alone sees that it breaks off, wherever it does.
        for (std::size_t length = 0; length < its.size(); length += 97)
            QVERIFY(code(std::string(its, 0, length)) == ErrorCode::invalid);
        // Coefficients of 45 megapixels in two scans, each channel in full: 270 MB.
        std::string twice =
            changed(frame + 5, "\x1A\x90\x1A\x90").substr(0, its.size() - 2) + once + "\xFF\xD9";
        twice[frame + 11] = 0x11;
        QVERIFY(code(twice) == ErrorCode::unsupported);
    }

    /// Whatever is changed in a file, it is read within its bytes, and what is kept of it says nothing that a
    /// second reading would leave out.
    void changedJpegs() {
        const std::string whole = asCamera(demo(), {});
        const std::size_t heads = whole.find("\xFF\xDA", frameOf(whole)) + 20;
        std::mt19937 random(9);
        int read = 0;
        int kept = 0;
        for (int i = 0; i < 4'000; ++i) {
            const auto jpeg = damaged(whole, heads, random);
            const auto its = photo::readJpeg(viewOf(jpeg));
            if (!its) continue;
            ++read;
            const std::string left = its->stripped(false);
            if (left.empty()) continue;
            ++kept;
            const auto again = photo::readJpeg(left);
            QVERIFY(again);
            QCOMPARE(again->stripped(false), left);
        }
        QVERIFY2(read > 400 && kept > 100, qPrintable(QStringLiteral("%1 %2").arg(read).arg(kept)));
    }

    void changedPngs() {
        std::mt19937 random(10);
        const std::string insides[] = {smallHeader, cameraExif({}), "PLACE", std::string(60, 'x')};
        const std::string types[] = {"IHDR", "eXIf", "tEXt", "IDAT"};
        int read = 0;
        for (int i = 0; i < 4'000; ++i) {
            std::string png("\x89PNG\r\n\x1A\n");
            for (std::size_t part = 0; part < std::size(types); ++part) { // checksums hold, mostly
                const bool isChanged = random() % 4 == 0;
                const auto& inside = insides[part];
                const auto changed = isChanged ? damaged(inside, inside.size(), random) : bytesOf(inside);
                png += chunk(types[part], std::string(viewOf(changed)));
            }
            png += chunk("IEND", "");
            const auto last = random() % 4 == 0 ? damaged(png, png.size(), random) : bytesOf(png);
            const auto its = photo::readPng(viewOf(last));
            if (!its) continue;
            ++read;
            QVERIFY(its->end <= last.size());
            QCOMPARE(photo::readPng(its->bare)->bare, its->bare);
        }
        QVERIFY2(read > 400, qPrintable(QString::number(read)));
    }

    void pngsOutline() {
        const std::string more = chunk("tEXt", "PLACE") + chunk("eXIf", cameraExif({3}));
        const auto its = photo::readPng(png(smallHeader, more) + "BEHIND");
        QVERIFY(its);
        QCOMPARE(its->width, 8);
        QCOMPARE(its->exif.orientation, 3);
        QCOMPARE(its->bare, png(smallHeader));
        QCOMPARE(its->end, png(smallHeader, more).size());
    }

    void hostilePngs() {
        const auto code = [](const std::string& bytes) {
            const auto its = photo::readPng(bytes);
            return its ? ErrorCode{-1} : its.error().code;
        };
        const std::string huge("\x7F\xFF\xFF\xFF\x7F\xFF\xFF\xFF\x08\2\0\0\0", 13);
        QVERIFY(code(png(huge)) == ErrorCode::unsupported);
        QVERIFY(code(png(smallHeader, chunk("acTL", "12345678"))) == ErrorCode::unsupported);
        QVERIFY(code(png(smallHeader, chunk("IHDR", smallHeader))) == ErrorCode::invalid);
        QVERIFY(code("\x89PNG\r\n\x1A\n"s + chunk("IDAT", "x") + chunk("IEND", "")) == ErrorCode::invalid);
        const std::string whole = png(smallHeader);
        for (std::size_t length = 0; length < whole.size(); ++length)
            QVERIFY(code(std::string(whole, 0, length)) == ErrorCode::invalid);
        QVERIFY(code("\x89PNG\r\n\x1A\n\xFF\xFF\xFF\xFFIHDR0123456789"s) == ErrorCode::invalid);
    }
};

} // namespace ambit::test

QTEST_GUILESS_MAIN(ambit::test::TestPhoto)
#include "tst_photo.moc"
