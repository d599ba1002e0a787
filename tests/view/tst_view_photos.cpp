// Photos as they are taken in and shown: what is left of a file, what is refused.
#include "../photo/made.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"
#include "house.hpp"
#include "model/photos.hpp"
#include "model/pictures.hpp"

#include <QBuffer>
#include <QColorSpace>
#include <QImageReader>
#include <QImageWriter>
#include <QtTest>
#include <random>

namespace ambit::test {

namespace {

using namespace std::string_literals;
using view::Doubt;
using view::PhotoData;

std::string demo() {
    return *readFile(AMBIT_ROOT "/demo-aircraft/helicopter/photos/fairing-left-1.jpg");
}

/// Smooth, so that coding changes it little; each corner of another colour.
QImage scene(const QSize& size) {
    QImage image(size, QImage::Format_RGB32);
    for (int y = 0; y < size.height(); ++y)
        for (int x = 0; x < size.width(); ++x)
            image.setPixel(x, y, qRgb(255 * x / size.width(), 255 * y / size.height(), 128));
    return image;
}

/// Nothing can be told of its pixels by others': the worst there is to code.
QImage noise(const QSize& size) {
    QImage image(size, QImage::Format_RGB32);
    std::mt19937 random(1);
    for (int y = 0; y < size.height(); ++y)
        for (int x = 0; x < size.width(); ++x)
            image.setPixel(x, y, static_cast<QRgb>(random()));
    return image;
}

std::string written(const QImage& image, const char* format, int quality = 90) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QImageWriter writer(&buffer, format);
    writer.setQuality(quality);
    if (!writer.write(image)) qFatal("can't write");
    return bytes.toStdString();
}

QImage decoded(const std::string& bytes) {
    return QImage::fromData(QByteArray::fromStdString(bytes)); // Qt's own reader
}

/// The largest difference of any channel of any pixel of theirs, sampled.
int difference(const QImage& one, const QImage& other) {
    if (one.size() != other.size()) return 256;
    int most = 0;
    for (int y = 0; y < one.height(); y += 3)
        for (int x = 0; x < one.width(); x += 3) {
            const QRgb a = one.pixel(x, y);
            const QRgb b = other.pixel(x, y);
            for (const int channel : {qRed(a) - qRed(b), qGreen(a) - qGreen(b), qBlue(a) - qBlue(b)})
                most = std::max(most, std::abs(channel));
        }
    return most;
}

/// Stored so that an orientation tag of this value turns it upright. Exif 2.31, 4.6.4: which side of the seen
/// picture the first row and the first column are.
QImage storedAs(const QImage& seen, int orientation) {
    struct Sides {
        char row, column;
    };
    static const Sides sides[] = {{'t', 'l'}, {'t', 'r'}, {'b', 'r'}, {'b', 'l'},
                                  {'l', 't'}, {'r', 't'}, {'r', 'b'}, {'l', 'b'}};
    const auto [row, column] = sides[orientation - 1];
    const bool isTurned = row == 'l' || row == 'r';
    QImage stored(isTurned ? seen.size().transposed() : seen.size(), seen.format());
    const auto from = [&](char side, int i) {
        if (side == 't' || side == 'l') return i;
        return (side == 'b' ? seen.height() : seen.width()) - 1 - i;
    };
    for (int r = 0; r < stored.height(); ++r)
        for (int c = 0; c < stored.width(); ++c)
            stored.setPixel(c, r,
                            isTurned ? seen.pixel(from(row, r), from(column, c))
                                     : seen.pixel(from(column, c), from(row, r)));
    return stored;
}

std::string keptOf(const std::string& bytes, PhotoData keep = PhotoData::time) {
    const auto photo = view::takenIn(bytes, keep);
    return photo ? photo->bytes : std::string();
}

/// Refused, or a picture that its own bytes hold and that is within bounds. Says what isn't so.
QString faultOf(const std::string& bytes) {
    const auto photo = view::takenIn(bytes, PhotoData::time);
    if (!photo) return photo.error().what.empty() ? QStringLiteral("without a word") : QString();
    if (sha256Hex(photo->bytes) != photo->photo.sha256) return QStringLiteral("another hash");
    if (photo->bytes.size() > view::storedBytes) return QStringLiteral("too many bytes");
    if (keptOf(photo->bytes) != photo->bytes) return QStringLiteral("another one when taken in again");
    return {};
}

} // namespace

class TestViewPhotos : public QObject {
    Q_OBJECT
private slots:
    void onlyTheTimeIsKept_data() {
        QTest::addColumn<int>("orientation");
        QTest::newRow("as it was coded") << 1;
        QTest::newRow("turned, and so coded anew") << 6;
    }
    void onlyTheTimeIsKept() {
        QFETCH(int, orientation);
        const std::string camera = asCamera(demo(), {orientation});
        const auto photo = view::takenIn(camera, PhotoData::time);
        QVERIFY(photo);
        QCOMPARE(photo->photo.type, "image/jpeg"s);
        QCOMPARE(photo->photo.bytes, static_cast<std::int64_t>(photo->bytes.size()));
        QCOMPARE(photo->photo.sha256, sha256Hex(photo->bytes));
        for (const std::string& secret : secrets)
            QVERIFY2(photo->bytes.find(secret) == std::string::npos, secret.c_str());
        const auto its = photo::readJpeg(photo->bytes);
        QVERIFY(its);
        QCOMPARE(its->exif, (photo::Exif{1, "2026:06:20 07:30:00", "+02:00"}));
        QCOMPARE(its->picture.size(), photo->bytes.size());
        QCOMPARE(decoded(photo->bytes).size(), orientation == 1 ? QSize(800, 600) : QSize(600, 800));
        QCOMPARE(keptOf(photo->bytes), photo->bytes); // and so once more
        QCOMPARE(keptOf(camera), photo->bytes);       // the same each time
    }

    void nothingIsLostWhereNothingNeedsTo() {
        QCOMPARE(keptOf(demo()), demo());
        QCOMPARE(difference(decoded(keptOf(asCamera(demo(), {}))), decoded(demo())), 0);
    }

    void ofAPngTheTimeIsKept() {
        std::string png = written(scene({60, 40}), "png");
        const std::string more = chunk("eXIf", cameraExif({6})) + chunk("tEXt", "COMMENT");
        png.insert(png.find("IDAT") - 4, more);
        const std::string kept = keptOf(png + "BEHIND");
        QCOMPARE(decoded(kept).size(), QSize(40, 60));
        QCOMPARE(photo::readJpeg(kept)->exif.takenAt, "2026:06:20 07:30:00"s);
        for (const std::string& secret : secrets)
            QVERIFY(kept.find(secret) == std::string::npos);
    }

    void everyOrientationComesOutUpright() {
        const QImage seen = scene({96, 64});
        for (int orientation = 1; orientation <= 8; ++orientation) {
            const std::string jpeg = view::encodedJpeg(storedAs(seen, orientation), 95);
            const std::string camera = asCamera(jpeg, {orientation});
            QVERIFY2(difference(decoded(keptOf(camera)), seen) < 24,
                     qPrintable(QString::number(orientation)));
            QVERIFY(difference(*view::decodedPhoto(camera), seen) < 24);
            QCOMPARE(view::photoSize(camera), seen.size());
            // Smaller, and within the box that is seen.
            const auto small = view::decodedPhoto(camera, {48, 1000}, Doubt::refused);
            QCOMPARE(small->size(), QSize(48, 32));
            QVERIFY(difference(*small, seen.scaled(48, 32, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)) <
                    30);
        }
    }

    void coloursOfTheirOwnBecomeTheScreens() {
        QImage wide = scene({64, 64});
        wide.setColorSpace(QColorSpace::DisplayP3);
        const QImage seen = wide.convertedToColorSpace(QColorSpace::SRgb);
        QVERIFY(difference(wide, seen) > 20); // else this shows nothing
        for (const char* format : {"jpeg", "png"}) {
            const std::string kept = keptOf(written(wide, format, 98));
            QVERIFY(difference(decoded(kept), seen) < 24);
            QVERIFY(kept.find("ICC_PROFILE") == std::string::npos);
        }
        wide.setColorSpace(QColorSpace::SRgb);
        const std::string usual = written(wide, "jpeg", 90);
        const auto stripped = photo::readJpeg(usual)->stripped(false);
        QVERIFY(!stripped.empty() && usual.size() > stripped.size());
        QCOMPARE(keptOf(usual), stripped); // said in words, but the same
    }

    void greyStaysGreyAndClearIsWhite() {
        const std::string grey =
            keptOf(written(scene({64, 64}).convertToFormat(QImage::Format_Grayscale8), "png"));
        QCOMPARE(photo::readJpeg(grey)->channels, 1);
        QImage clear(16, 16, QImage::Format_ARGB32);
        clear.fill(Qt::transparent);
        QVERIFY(qRed(decoded(keptOf(written(clear, "png"))).pixel(8, 8)) > 250);
        QCOMPARE(view::greyOf(scene({8, 8})).format(), QImage::Format_Grayscale8);
    }

    void largeOnesAreMadeSmaller() {
        // A camera of 24 megapixels, and the largest panorama there may be.
        for (const QSize size : {QSize(6000, 4000), QSize(31620, 1581)}) {
            QImage image(size, QImage::Format_RGB32);
            image.fill(Qt::gray);
            const QImage kept = decoded(keptOf(view::encodedJpeg(image, 90)));
            const int side = std::max(kept.width(), kept.height());
            QVERIFY(side <= view::storedSide && side > view::storedSide / 2);
            const double stretched = 1.0 * kept.width() / kept.height() * size.height() / size.width();
            QVERIFY(std::abs(stretched - 1) < 0.005);
        }
        QCOMPARE(decoded(keptOf(written(scene({5000, 500}), "png"))).size(), QSize(4096, 409));
    }

    void theWorstToCodeIsWithinItsBytes() {
        const std::string kept = keptOf(view::encodedJpeg(noise({4096, 4096}), 95));
        QVERIFY(!kept.empty());
        QVERIFY2(kept.size() <= view::storedBytes, qPrintable(QString::number(kept.size())));
    }

    // --- hostile files

    void fiftyMegapixelsByTheHeader() {
        std::string jpeg = demo();
        jpeg.replace(jpeg.find("\xFF\xC0") + 5, 4, "\xFD\xE8\xFD\xE8"); // 65,000 x 65,000
        const auto refused = view::takenIn(jpeg, PhotoData::asTaken);
        QVERIFY(!refused);
        QCOMPARE(refused.error().what, "This photo has more than 50 megapixels."s);
        QVERIFY(!view::decodedPhoto(jpeg, {10, 10}, Doubt::shown));
        std::string png = written(scene({8, 8}), "png");
        png.replace(16, 8, "\0\0\xFD\xE8\0\0\xFD\xE8"s);
        QCOMPARE(view::takenIn(png, PhotoData::time).error().what, refused.error().what);
    }

    void otherKindsAreRefused() {
        for (const std::string& other :
             {""s, "not a picture"s, "GIF89a\1\0\1\0\x80\0\0\0\0\0\xFF\xFF\xFF,\0\0\0\0\1\0\1\0\0\2\2D\1\0;"s,
              "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>"s, "%PDF-1.7\n"s,
              written(scene({8, 8}), "bmp"), written(scene({8, 8}), "ico"), written(scene({8, 8}), "ppm")}) {
            for (const auto keep : {PhotoData::time, PhotoData::asTaken}) {
                const auto photo = view::takenIn(other, keep);
                QVERIFY(!photo);
                QVERIFY(photo.error().code == ErrorCode::unsupported);
            }
            QVERIFY(!view::decodedPhoto(other, {}, Doubt::shown));
        }
    }

    void heifIsRefusedWithAWayOut() {
        if (QImageReader::supportedImageFormats().contains("heic")) QSKIP("This platform reads it.");
        const auto photo = view::takenIn("\0\0\0\x18"
                                         "ftypheic\0\0\0\0mif1heic"s,
                                         PhotoData::time);
        QVERIFY(!photo);
        QVERIFY(photo.error().remedy.find("JPEG") != std::string::npos);
    }

    void whatBreaksOffIsRefused() {
        const std::string stripped = asCamera(demo(), {1});
        const std::string anew = asCamera(demo(), {8});
        const std::string png = written(scene({300, 200}), "png");
        for (const std::string& whole :
             {stripped.substr(0, stripped.size() - 26), anew.substr(0, anew.size() - 26), png})
            for (std::size_t percent = 0; percent < 100; ++percent) {
                const std::string part = whole.substr(0, whole.size() * percent / 100);
                for (const auto keep : {PhotoData::time, PhotoData::asTaken}) {
                    QVERIFY(!view::takenIn(part, keep));
                    QVERIFY(!view::takenIn(part + "\xFF\xD9", keep)); // as if it were the end
                }
            }
    }

    void changedBytesAreRefusedOrDoNoHarm_data() {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<int>("within"); ///< changes fall in so many first bytes
        QTest::addColumn<int>("times");
        const std::string small = view::encodedJpeg(scene({120, 80}), 90);
        const auto row = [](const char* name, const std::string& bytes, int within, int times) {
            QTest::newRow(name) << QByteArray::fromStdString(bytes) << within << times;
        };
        row("JPEG", asCamera(small, {}), 1'000'000, 1000);
        row("turned JPEG", asCamera(small, {6}), 1'000'000, 1000);
        row("its head", small, 650, 2000);
        row("PNG", written(scene({120, 80}), "png"), 1'000'000, 1000);
        row("its head", written(scene({120, 80}), "png"), 60, 500);
        QImage wide = scene({40, 40});
        wide.setColorSpace(QColorSpace::DisplayP3);
        row("JPEG with a profile", written(wide, "jpeg"), 1000, 1000);
        QByteArray bytes;
        QBuffer buffer(&bytes);
        QImageWriter progressive(&buffer, "jpeg");
        progressive.setProgressiveScanWrite(true);
        QVERIFY(progressive.write(scene({120, 80})));
        row("progressive JPEG", bytes.toStdString(), 1'000'000, 1000);
    }
    void changedBytesAreRefusedOrDoNoHarm() {
        QFETCH(QByteArray, bytes);
        QFETCH(int, within);
        QFETCH(int, times);
        const std::string whole = bytes.toStdString();
        QCOMPARE(faultOf(whole), QString());
        QVERIFY(!keptOf(whole).empty());
        std::mt19937 random(static_cast<std::mt19937::result_type>(times + within));
        const auto most = std::min<std::size_t>(static_cast<std::size_t>(within), whole.size());
        for (int i = 0; i < times; ++i) {
            std::string changed = whole;
            changed[random() % most] = static_cast<char>(random());
            QCOMPARE(faultOf(changed), QString());
            (void)view::decodedPhoto(changed, {50, 50}, Doubt::shown);
        }
    }

    void changedWhereChecksumsHold() {
        QByteArray rows;
        for (int y = 0; y < 16; ++y)
            rows += '\1' + QByteArray(48, static_cast<char>(y)); // filter 1, RGB
        const std::string coded = qCompress(rows).mid(4).toStdString();
        const auto png = [](const std::string& header, const std::string& data) {
            return "\x89PNG\r\n\x1A\n"s + chunk("IHDR", header) + chunk("IDAT", data) + chunk("IEND", "");
        };
        const std::string header("\0\0\0\x10\0\0\0\x10\x08\2\0\0\0", 13);
        QVERIFY(!keptOf(png(header, coded)).empty());
        std::mt19937 random(5);
        for (int i = 0; i < 150; ++i) {
            std::string data = coded;
            data[random() % data.size()] = static_cast<char>(random());
            QCOMPARE(faultOf(png(header, data)), QString());
            std::string head = header;
            head[random() % head.size()] = static_cast<char>(random() % 20);
            QCOMPARE(faultOf(png(head, coded)), QString());
        }
    }

    void whatIsHiddenBehindTheLastBlockIsNotPassedOn() {
        std::string jpeg = demo();
        jpeg.insert(jpeg.size() - 2, std::string(400, 'x') + "BEHIND" + std::string(400, 'x'));
        QVERIFY(keptOf(jpeg).find("BEHIND") == std::string::npos);
        QVERIFY(keptOf(jpeg, PhotoData::asTaken).find("BEHIND") == std::string::npos);
    }

    void textsThatUnfoldAreNotUnfolded() {
        // 20 texts of 7 MB each, 7 kB compressed.
        const QByteArray packed = qCompress(QByteArray(7'000'000, 'x'), 9).mid(4);
        const std::string text = chunk("zTXt", "x\0\0"s + packed.toStdString());
        std::string png = written(scene({16, 16}), "png");
        std::string many;
        for (int i = 0; i < 20; ++i)
            many += text;
        png.insert(png.find("IDAT") - 4, many);
        QVERIFY(!keptOf(png).empty());
        QCOMPARE(view::decodedPhoto(png)->text(), QString());
    }

    void severalPicturesAreRefused() {
        std::string png = written(scene({16, 16}), "png");
        png.insert(png.find("IDAT") - 4, chunk("acTL", "\0\0\0\2\0\0\0\0"s));
        QVERIFY(!view::takenIn(png, PhotoData::time));
    }

    // --- all that the camera wrote

    void allIsKeptWhereItIsWanted() {
        const std::string camera = asCamera(demo(), {6});
        const std::string picture = camera.substr(0, camera.find("BEHIND"));
        QCOMPARE(keptOf(camera, PhotoData::asTaken), picture);
        QCOMPARE(keptOf(picture, PhotoData::asTaken), picture);
        const std::string png = written(scene({16, 16}), "png");
        const auto photo = view::takenIn(png + "BEHIND", PhotoData::asTaken);
        QCOMPARE(photo->bytes, png);
        QCOMPARE(photo->photo.type, "image/png"s);
    }

    void theHabitDecides() {
        House house;
        QVERIFY(house.begin());
        const std::string file = house.folder.filePath(QStringLiteral("camera.jpg")).toStdString();
        const std::string behind = asCamera(demo(), {});
        const std::string camera = behind.substr(0, behind.find("BEHIND"));
        QVERIFY(writeFile(file, camera));
        const QVariantList photos{QUrl::fromLocalFile(QString::fromStdString(file))};
        view::RoundView& round = *house.app->round();
        const auto taken = [&](const QString& point, bool isLater) {
            if (!house.walkTo(point)) return std::string();
            round.expectPhotos(photos);
            house.app->habits()->setPhotosAsTaken(isLater); // while it is being read
            if (!round.settleFinding(QStringLiteral("x"), round.findingGrounds(), photos))
                return std::string();
            for (const round::Event& event : house.app->round()->openRound().events())
                if (const auto* its = std::get_if<round::Settled>(&event.what))
                    if (its->point == point.toStdString() && !its->photos.empty())
                        return *house.archive->photo(its->photos[0].sha256);
            return std::string();
        };
        QVERIFY(!house.app->habits()->photosAsTaken()); // unless somebody wants it
        const std::string clean = taken(QStringLiteral("lamps"), false);
        QVERIFY(!clean.empty());
        QVERIFY(clean.find("PLACE") == std::string::npos);
        QCOMPARE(taken(QStringLiteral("fairing.left"), true), camera);
    }

    void refusedWhileItIsReadAhead() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("fairing.left")));
        const QString file = house.folder.filePath(QStringLiteral("half.jpg"));
        QVERIFY(writeFile(file.toStdString(), demo().substr(0, 20'000)));
        const QVariantList photos{QUrl::fromLocalFile(file)};
        const std::size_t before = house.events();
        house.app->round()->expectPhotos(photos);
        QVERIFY(!house.app->round()->settleFinding(QStringLiteral("x"), false, photos));
        QVERIFY(house.app->problem().startsWith(QStringLiteral("This photo is damaged:")));
        QVERIFY(house.app->problem().contains(QStringLiteral("half.jpg")));
        QCOMPARE(house.events(), before);
    }

    // --- shown from the archive: what came in with a record from elsewhere

    void hostilePhotosOfRecordsAreNotShown() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("fairing.left")));
        std::string huge = demo();
        huge.replace(huge.find("\xFF\xC0") + 5, 4, "\xFD\xE8\xFD\xE8");
        std::string bomb = written(scene({8, 8}), "png");
        bomb.replace(16, 8, "\0\0\xFD\xE8\0\0\xFD\xE8"s);
        std::string often = demo().substr(0, demo().size() - 2);
        const std::string scan = often.substr(often.find("\xFF\xDA"));
        for (int i = 0; i < 40; ++i)
            often += scan;
        std::string spoiled = demo();
        spoiled.replace(30'000, 2000, std::string(2000, '\0'));
        std::vector<archive::PhotoBytes> photos;
        round::Settled what;
        what.point = "fairing.left";
        what.outcome = round::Outcome::finding;
        what.words = "x";
        what.severity = round::Severity::assess;
        for (const std::string& bytes : {huge, bomb, often + "\xFF\xD9", demo().substr(0, 30'000),
                                         "\xFF\xD8\xFF not looked into"s, spoiled, demo()}) {
            const bool isPng = bytes.starts_with("\x89");
            photos.push_back({{sha256Hex(bytes), isPng ? "image/png" : "image/jpeg",
                               static_cast<std::int64_t>(bytes.size())},
                              bytes});
            what.photos.push_back(photos.back().photo);
        }
        auto other = archive::OpenRound::resume(*house.archive, house.app->round()->openRound().airframe(),
                                                house.app->round()->roundId().toStdString());
        QVERIFY(other);
        QVERIFY(other->act(what, house.clock.at, photos)); // as an older program, or another one, would
        view::PhotoProvider provider(*house.archive);
        std::vector<QSize> shown;
        for (const archive::PhotoBytes& one : photos)
            for (const QSize& asked : {QSize(), QSize(160, 160)})
                shown.push_back(
                    provider.requestImage(QString::fromStdString(one.photo.sha256), nullptr, asked).size());
        const QSize none(0, 0);
        const QSize small(160, 120);
        const QSize whole(800, 600);
        QCOMPARE(shown, (std::vector<QSize>{none, none, none, none, none, none, none, none, none, none, whole,
                                            small, whole, small})); // of the spoiled one what there is
        QSize size;
        QVERIFY(!provider.requestImage(QString::fromStdString(photos.back().photo.sha256), &size, {100, 0})
                     .isNull());
        QCOMPARE(size, whole);
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewPhotos)
#include "tst_view_photos.moc"
