// The pages of a record: same bytes, embedded typefaces, placeholders as promised, nothing beyond the
// margins, nothing that a hostile photo breaks.
#include "../photo/made.hpp"
#include "base/hash.hpp"
#include "file/deferral.hpp"
#include "paper/fonts.hpp"
#include "paper/pages.hpp"
#include "paper/photo.hpp"
#include "record/entry.hpp"
#include "rounds.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>

#include <QGuiApplication>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

using namespace ambit;

namespace {

record::Certificate signer() {
    record::Certificate certificate;
    certificate.name = "Robin Example";
    certificate.sha256 = std::string(64, 'a');
    return certificate;
}

Result<paper::Drawn> draw(const test::TestRound& round) {
    return paper::drawRecord(round.content, &round.airframe, round.photos, signer());
}

/// What a tool of poppler-utils says of the PDF; empty where there is none.
QString told(const QString& tool, const QStringList& before, const std::string& pdf,
             const QStringList& after = {}) {
    QTemporaryDir folder;
    QFile file(folder.filePath("record.pdf"));
    if (!file.open(QIODevice::WriteOnly)) return {};
    file.write(pdf.data(), qsizetype(pdf.size()));
    file.close();
    QProcess process;
    process.start(tool, before + QStringList{file.fileName()} + after);
    return process.waitForFinished() ? QString::fromUtf8(process.readAllStandardOutput()) : QString();
}

QString textOf(const std::string& pdf) {
    return told("pdftotext", {"-layout"}, pdf, {"-"});
}

/// A JPEG whose camera was held so (Exif orientation 1 to 8).
std::string held(std::string jpeg, char orientation) {
    std::string exif("Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0", 25);
    exif += orientation;
    exif += std::string(7, '\0');
    const std::size_t length = exif.size() + 2;
    const std::string segment = std::string("\xFF\xE1") + char(length / 256) + char(length % 256) + exif;
    return jpeg.insert(2, segment);
}

round::Photo photoOf(const std::string& bytes, std::map<std::string, std::string>& photos) {
    const std::string hash = sha256Hex(bytes);
    photos[hash] = bytes;
    return {hash, "image/jpeg", std::int64_t(bytes.size())};
}

} // namespace

class TstPaper : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QVERIFY(paper::loadFonts()); }

    void twoProcessesDrawTheSameBytes() {
        QByteArray first;
        for (int i = 0; i < 2; ++i) {
            QTemporaryDir folder;
            const QString path = folder.filePath("record.pdf");
            QCOMPARE(QProcess::execute(QCoreApplication::applicationFilePath(), {"--draw", path}), 0);
            QFile file(path);
            QVERIFY(file.open(QIODevice::ReadOnly));
            const QByteArray bytes = file.readAll();
            QVERIFY(bytes.size() > 10000);
            if (i == 0) first = bytes;
            QVERIFY(bytes == first);
            QTest::qWait(1100); // the clock's second must have changed
        }
    }

    void typefacesAreEmbedded() {
        const auto drawn = draw(test::walked(helicopter));
        QVERIFY(drawn);
        const QStringList fonts = told("pdffonts", {}, drawn->pages.pdf).split(u'\n', Qt::SkipEmptyParts);
        if (fonts.isEmpty()) QSKIP("no pdffonts");
        QCOMPARE(fonts.size(), 5); // two lines of head
        for (int i = 2; i < fonts.size(); ++i) {
            QVERIFY2(fonts[i].startsWith("B612"), qPrintable(fonts[i]));
            QVERIFY2(fonts[i].contains(QRegularExpression("TrueType +Identity-H +yes +\\w+ +yes")),
                     qPrintable(fonts[i]));
        }
    }

    void placeholdersAreInThePdfWithTheirSizes() {
        const auto drawn = draw(test::walked(helicopter));
        QVERIFY(drawn);
        QCOMPARE(drawn->pages.placeholders.size(), std::size_t(4));
        const QString pdf = QString::fromLatin1(drawn->pages.pdf.data(), qsizetype(drawn->pages.pdf.size()));
        QCOMPARE(pdf.count("/Subtype /Image"), 4);
        std::set<std::pair<int, int>> sizes;
        for (const auto& placeholder : drawn->pages.placeholders) {
            QVERIFY(sizes.insert({placeholder.width, placeholder.height}).second);
            const QString words =
                QStringLiteral("/Width %1\n/Height %2\n").arg(placeholder.width).arg(placeholder.height);
            QCOMPARE(pdf.count(words), 1);
            QVERIFY(drawn->jpeg.contains(placeholder.photoSha256));
            QCOMPARE(placeholder.photoHeight, 240);
            QCOMPARE(placeholder.channels, 3);
        }
    }

    void jpegGoesInUntouchedAndPngAsJpeg() {
        std::map<std::string, std::string> photos;
        const std::string jpeg = test::image(40, 30, 1);
        const auto a = photoOf(jpeg, photos);
        const auto b = photoOf(test::image(40, 30, 2, "png"), photos);
        paper::Pictures pictures(photos);
        QVERIFY(pictures.of(a).fault.isEmpty());
        QVERIFY(pictures.of(b).fault.isEmpty());
        const record::Drawn drawn = std::move(pictures).drawn({});
        QVERIFY(drawn.jpeg.at(a.sha256) == jpeg);
        QVERIFY(drawn.jpeg.at(b.sha256).starts_with("\xFF\xD8\xFF"));
    }

    void photosStandAsTheCameraWasHeld() {
        std::map<std::string, std::string> photos;
        for (const char orientation : {char(1), char(3), char(6), char(8)}) {
            const auto photo = photoOf(held(test::image(40, 30, orientation), orientation), photos);
            paper::Pictures pictures(photos);
            const paper::Picture& picture = pictures.of(photo);
            QVERIFY(picture.fault.isEmpty());
            QCOMPARE(picture.width, 40); // as stored: the bytes stay
            QCOMPARE(picture.upright(), orientation < 5);
            QCOMPARE(picture.aspect() > 1, orientation < 5);
        }
    }

    void hostilePhotosGetABox_data() {
        QTest::addColumn<QByteArray>("bytes");
        const QByteArray whole = QByteArray::fromStdString(test::image(60, 40, 1));
        QTest::newRow("one byte") << QByteArray("x");
        QTest::newRow("not a picture") << QByteArray("MZ not a picture at all");
        QTest::newRow("only a start") << whole.left(4);
        QTest::newRow("half") << whole.left(whole.size() / 2);
        QTest::newRow("head only") << whole.left(200) + QByteArray("\xFF\xD9");
        QByteArray cmyk = whole;
        const qsizetype frame = cmyk.indexOf("\xFF\xC0");
        QVERIFY(frame > 0);
        cmyk[frame + 9] = 4;
        QTest::newRow("four colours") << cmyk;
        QByteArray huge = whole;
        for (int i = 5; i < 9; ++i)
            huge[frame + i] = char(0xFF);
        QTest::newRow("4 billion pixels") << huge;
        QByteArray png = QByteArray::fromStdString(test::image(60, 40, 1, "png"));
        QTest::newRow("half a PNG") << png.left(png.size() / 2);
        png.replace(16, 8, QByteArray::fromHex("7fffffff7fffffff"));
        QTest::newRow("endless PNG") << png;
    }
    void hostilePhotosGetABox() {
        QFETCH(QByteArray, bytes);
        test::RoundWishes wishes;
        wishes.photosEach = 1;
        wishes.photos = {bytes.toStdString()};
        auto round = test::walked(helicopter, wishes);
        const auto drawn = draw(round);
        QVERIFY(drawn);
        QVERIFY(drawn->pages.placeholders.empty());
        QVERIFY(drawn->jpeg.empty());
        const QString text = textOf(drawn->pages.pdf);
        if (text.isEmpty()) QSKIP("no pdftotext");
        QVERIFY(text.contains("This photo can"));
    }

    /// A PNG of 70 kB whose texts unfold to 70 MB took half a gigabyte.
    void textsInAPngAreNotUnfolded() {
        const auto peak = [] {
            QFile status(QStringLiteral("/proc/self/status"));
            if (!status.open(QIODevice::ReadOnly)) return 0;
            for (const QByteArray& line : status.readAll().split('\n'))
                if (line.startsWith("VmHWM:")) return line.mid(6).simplified().split(' ')[0].toInt();
            return 0;
        };
        using namespace std::string_literals;
        const std::string packed = qCompress(QByteArray(7'000'000, 'x'), 9).mid(4).toStdString();
        std::string png = test::image(40, 30, 2, "png");
        std::string texts;
        for (int i = 0; i < 10; ++i)
            texts += test::chunk("zTXt", std::to_string(i) + "\0\0"s + packed);
        png.insert(png.find("IDAT") - 4, texts);
        std::map<std::string, std::string> photos;
        const auto photo = photoOf(png, photos);
        paper::Pictures pictures(photos);
        const int before = peak();
        QVERIFY(pictures.of(photo).fault.isEmpty());
        QVERIFY2(peak() - before < 50'000, qPrintable(QString::number(peak() - before)));
    }

    void aPhotoWithOtherBytesIsNotShown() {
        auto round = test::walked(helicopter);
        for (auto& photo : round.photos)
            photo.second = test::image(33, 33, 77);
        const auto drawn = draw(round);
        QVERIFY(drawn);
        QVERIFY(drawn->pages.placeholders.empty());
    }

    void namesOfEuropeAreShownWhole() {
        for (const char* name : {"Łukasz Żółć", "Jiří Dvořák", "Győző Őry", "Şule Çağlar", "Þórunn Æsa",
                                 "Ștefan Țîrlea", "Ελένη", "Олена", "Nguyễn"})
            QVERIFY2(paper::isShownWhole(name), name);
        QCOMPARE(paper::shown("e\u0301"), QStringLiteral("é"));
    }

    void whatNoTypefaceHasIsABoxAndSaidSo() {
        QCOMPARE(paper::shown("漢a"), QStringLiteral("□a"));
        QCOMPARE(paper::shown("a\u202Eb"), QStringLiteral("a□b")); // it would turn the words round
        QVERIFY(!paper::isShownWhole("漢"));
        test::RoundWishes wishes;
        wishes.name = "Robin 漢 Łukasz";
        const auto drawn = draw(test::walked(helicopter, wishes));
        QVERIFY(drawn);
        const QString text = textOf(drawn->pages.pdf);
        if (text.isEmpty()) QSKIP("no pdftotext");
        QVERIFY(text.contains("by Robin □ Łukasz"));
        QVERIFY(text.contains("□ stands for a character"));
        const QString fonts = told("pdffonts", {}, drawn->pages.pdf);
        QVERIFY(!fonts.contains("DejaVuSans-")); // the machine's own
    }

    void nothingLeavesTheMargins_data() {
        QTest::addColumn<int>("findings");
        QTest::addColumn<QString>("word");
        QTest::newRow("none") << 0 << "a";
        QTest::newRow("two") << 2 << "Black powder at two rivets.\nNeither moves.";
        QTest::newRow("twenty, long") << 20 << QString(40, u'W') + " and a sentence that goes on ";
        QTest::newRow("twenty, one endless word") << 20 << QString(500, u'm');
    }
    void nothingLeavesTheMargins() {
        QFETCH(int, findings);
        QFETCH(QString, word);
        test::RoundWishes wishes;
        wishes.findings = findings;
        wishes.fit = false;
        wishes.grounds = true;
        wishes.words = word.toStdString();
        wishes.differs = true;
        wishes.longWords = findings > 2 ? 9 : 0;
        if (findings > 2) wishes.name = "Wolfgang-Maximilian " + std::string(90, 'W');
        const auto drawn = draw(test::walked(helicopter, wishes));
        QVERIFY(drawn);
        const QString words = told("pdftotext", {"-bbox"}, drawn->pages.pdf, {"-"});
        if (words.isEmpty()) QSKIP("no pdftotext");
        static const QRegularExpression box(
            "<word xMin=\"([\\d.-]+)\" yMin=\"([\\d.-]+)\" xMax=\"([\\d.-]+)\" yMax=\"([\\d.-]+)\">");
        int count = 0;
        for (auto found = box.globalMatch(words); found.hasNext(); ++count) {
            const auto match = found.next();
            QVERIFY2(match.captured(1).toDouble() > 56 && match.captured(3).toDouble() < 595.3 - 56 &&
                         match.captured(4).toDouble() < 842 - 30,
                     qPrintable(match.captured(0)));
        }
        QVERIFY(count > 500);
        const auto pages = words.count("<page ");
        QVERIFY(textOf(drawn->pages.pdf).contains(QStringLiteral("page %1 of %1").arg(pages)));
    }

    void theConclusionIsTheSameEverywhere_data() {
        QTest::addColumn<bool>("fit");
        QTest::newRow("fit") << true;
        QTest::newRow("not fit") << false;
    }
    void theConclusionIsTheSameEverywhere() {
        QFETCH(bool, fit);
        test::RoundWishes wishes;
        wishes.fit = fit;
        const auto drawn = draw(test::walked(helicopter, wishes));
        QVERIFY(drawn);
        const QString text = textOf(drawn->pages.pdf).simplified();
        if (text.isEmpty()) QSKIP("no pdftotext");
        // Once at the head, once in the timeline.
        QCOMPARE(text.count("not fit for flight"), fit ? 0 : 2);
        QCOMPARE(text.count(QRegularExpression("oncluded fit for flight")), fit ? 2 : 0);
    }

    void aCounterSaysItsUnitOnce() {
        const auto drawn = draw(test::walked(helicopter));
        QVERIFY(drawn);
        const QString text = textOf(drawn->pages.pdf).simplified();
        if (text.isEmpty()) QSKIP("no pdftotext");
        QVERIFY(
            text.contains(QStringLiteral("Airframe hours Engine hours Landings 1284.6 h 1284.6 h 1284.6 ")));
        QVERIFY(!text.contains(QStringLiteral("1284.6 landings")));
    }

    void whatDifferedIsTold() {
        test::RoundWishes wishes;
        wishes.differs = true;
        wishes.words = "wiped.";
        const auto round = test::walked(helicopter, wishes);
        QCOMPARE(round.content["version"], Json(2));
        const auto drawn = draw(round);
        QVERIFY(drawn);
        const QString text = textOf(drawn->pages.pdf).simplified();
        if (text.isEmpty()) QSKIP("no pdftotext");
        QVERIFY(text.contains("What could not be used, and what was in the way"));
        QCOMPARE(text.count("Oil on the step: wiped."), 2); // as it happened, and in the list
        QVERIFY(text.contains("Free again"));
        QVERIFY(text.contains("area 1: Another machine"));
        QVERIFY(text.contains("Low light"));
        QVERIFY(text.contains("to the end"));
        wishes.differs = false;
        const auto usual = draw(test::walked(helicopter, wishes));
        QVERIFY(usual && !textOf(usual->pages.pdf).contains("What could not be used"));
    }

    void whatWasAskedIsTold() {
        test::RoundWishes wishes;
        wishes.asked = true;
        wishes.words = "look.";
        const auto round = test::walked(helicopter, wishes);
        QCOMPARE(round.content["version"], Json(3));
        const auto drawn = draw(round);
        QVERIFY2(drawn, drawn ? "" : toText(drawn.error()).c_str());
        const QString text = textOf(drawn->pages.pdf).simplified();
        if (text.isEmpty()) QSKIP("no pdftotext");
        QVERIFY(text.contains("What was asked, and what came of it"));
        QVERIFY(text.contains("4 things asked by those who followed"));
        QCOMPARE(text.count("From below too, please."), 3); // at its point, as it happened, and in the list
        QVERIFY(text.contains("asked by Ines Example to be looked at again: From below too"));
        QVERIFY(text.contains("Settled after it, "));
        QCOMPARE(text.count("Seen twice by now: look."), 3);
        QCOMPARE(text.count("To look at both sides."), 2);
        QCOMPARE(text.count("Take your time."), 2);
        QVERIFY(text.contains("Ines Example, instructor, DEMO-FI-0007"));
        wishes.asked = false;
        const auto usual = draw(test::walked(helicopter, wishes));
        QVERIFY(usual && !textOf(usual->pages.pdf).contains("What was asked"));
        // Not with words that nobody signed.
        Json forged = round.content;
        for (Json& event : forged["events"])
            if (event["kind"] == "asked") event["statement"]["who"]["role"] = "owner";
        const auto refused = paper::drawRecord(forged, &round.airframe, round.photos, signer());
        QVERIFY(!refused && refused.error().code == ErrorCode::signature);
    }

    void badContentIsAnError() {
        const auto round = test::walked(helicopter);
        const auto refused = [&](const Json& content) {
            return !paper::drawRecord(content, &round.airframe, round.photos, signer());
        };
        QVERIFY(refused(Json()));
        QVERIFY(refused(Json::object()));
        QVERIFY(refused(Json::array()));
        for (const char* field : {"format", "version", "kind", "events", "previous"}) {
            Json content = round.content;
            content.erase(field);
            QVERIFY2(refused(content), field);
            content[field] = "other";
            QVERIFY2(refused(content), field);
        }
        for (std::size_t i = 0; i < round.content["events"].size(); ++i) {
            Json content = round.content;
            content["events"].erase(
                i); // a missing event breaks the numbers; without the last it isn't concluded
            QVERIFY(refused(content));
        }
        airframe::Airframe other = round.airframe;
        other.sha256 = std::string(64, '0');
        QVERIFY(!paper::drawRecord(round.content, &other, round.photos, signer()));
    }

    // --- records of other kinds

    void whatAnEntrySaysStandsOnItsPage_data() {
        QTest::addColumn<int>("kind");
        QTest::newRow("deferral") << 0;
        QTest::newRow("rectification") << 1;
        QTest::newRow("part change") << 2;
        QTest::newRow("removal") << 3;
    }
    void whatAnEntrySaysStandsOnItsPage() {
        QFETCH(int, kind);
        const record::DiscrepancyId of{std::string(64, 'c'), helicopter.points.front().id};
        record::Deferral deferral;
        deferral.basis = "14 CFR 91.213(d)";
        for (const auto& question : file::questions())
            deferral.answers.push_back({question.text, question.mayDefer});
        deferral.placard = "Placard words, at the filler";
        deferral.until = "2026-12-10";
        deferral.determinedBy = {"Sam Example", "mechanic", "M-77"};
        const std::vector<record::Entry> entries{
            record::Assessment{of, "It waits.", deferral},
            record::Rectification{{of}, {}, "Seal renewed.", "2026-11-25", "Sam Example", "mechanic", {}},
            record::PartChange{"tail rotor blade A",
                               record::Part{"Blade", "PN-1", "SN-1", {}},
                               record::Part{"Blade", "PN-1", "SN-2", {}},
                               "Changed for a nick.",
                               "2026-11-25",
                               "mechanic",
                               {}},
            record::Removal{{{std::string(64, 'd'), {}, "round", {1700000000000}}}, "14 CFR 91.417(b)(1)"}};
        const std::vector<QStringList> words{
            {"Deferred", "It waits.", "14 CFR 91.213(d)", "Placard words", "2026-12-10", "Sam Example",
             "M-77", QString::fromStdString(helicopter.points.front().name)},
            {"Put right", "Seal renewed.", "2026-11-25", "Sam Example", "43.9(a)(4)"},
            {"Part changed", "tail rotor blade A", "SN-1", "SN-2", "Changed for a nick.", "43.9(a)(4)"},
            {"Records let go", "14 CFR 91.417(b)(1)", "dddddddddddd"}};
        const auto content = record::entryContent({"OX-ABC",
                                                   "0042",
                                                   {{1764000000000}, 60},
                                                   {std::string(64, 'e')},
                                                   {"Robin Example", "mechanic", "M-1"}},
                                                  entries[std::size_t(kind)]);
        QVERIFY2(content, content ? "" : toText(content.error()).c_str());
        const auto drawn = paper::drawRecord(*content, &helicopter, {}, signer());
        QVERIFY2(drawn, drawn ? "" : toText(drawn.error()).c_str());
        QCOMPARE(paper::drawRecord(*content, &helicopter, {}, signer())->pages.pdf, drawn->pages.pdf);
        const QString text = textOf(drawn->pages.pdf).simplified();
        QVERIFY2(text.contains("page 1 of 1"), qPrintable(text));
        for (const QString& one :
             words[std::size_t(kind)] + QStringList{"OX-ABC", "0042", "Robin Example", "M-1"})
            QVERIFY2(text.contains(one), qPrintable(one + " is not in " + text));
        if (kind == 0)
            for (const auto& question : file::questions())
                QVERIFY2(text.contains(QString::fromStdString(question.text).left(30)),
                         question.text.c_str());
        const auto without = paper::drawRecord(*content, nullptr, {}, signer());
        QVERIFY(without);
        if (kind == 0) QVERIFY(textOf(without->pages.pdf).contains(of.point.c_str()));
    }

    void longWordsOfAnEntryGoOnOverPages() {
        std::string description;
        for (int i = 0; i < 900; ++i)
            description += "word" + std::to_string(i) + ' ';
        description += "end";
        const auto content = record::entryContent(
            {"OX-ABC", "0042", {{1764000000000}, 0}, {}, {"Robin Example", "mechanic", "M-1"}},
            record::Rectification{{}, {}, description, "2026-11-25", "", "mechanic", {}});
        QVERIFY2(content, content ? "" : toText(content.error()).c_str());
        const auto drawn = paper::drawRecord(*content, nullptr, {}, signer());
        QVERIFY(drawn);
        const QString text = textOf(drawn->pages.pdf);
        for (const char* word : {"word0 ", "word450", "word899", "end", "page 2 of"})
            QVERIFY2(text.contains(word), word);
    }

    void aRoundNeedsItsAirframe() {
        const auto round = test::walked(helicopter);
        QVERIFY(!paper::drawRecord(round.content, nullptr, round.photos, signer()));
    }

    void hashesAreSeededAtRandomAfterwards() {
        const std::size_t before = QHashSeed::globalSeed();
        QVERIFY(draw(test::walked(helicopter)));
        QCOMPARE(QHashSeed::globalSeed() == 0, before == 0);
    }

private:
    airframe::Airframe helicopter = test::demoHelicopter();
};

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 3 && arguments[1] == "--draw") {
        const auto drawn = draw(test::walked(test::demoHelicopter()));
        QFile file(arguments[2]);
        if (!drawn || !file.open(QIODevice::WriteOnly)) return 1;
        return file.write(drawn->pages.pdf.data(), qsizetype(drawn->pages.pdf.size())) > 0 ? 0 : 1;
    }
    TstPaper tests;
    return QTest::qExec(&tests, argc, argv);
}

#include "tst_paper.moc"
