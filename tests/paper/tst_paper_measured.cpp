// What was measured stands in a record's pages, its marks over the photo and its trend drawn; older records'
// pages have nothing of it.
#include "measured_round.hpp"
#include "paper/fonts.hpp"
#include "paper/measured_marks.hpp"
#include "paper/pages.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>

#include <QBuffer>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>

using namespace ambit;
using round::Settled;

namespace {

record::Certificate signer() {
    record::Certificate certificate;
    certificate.name = "Robin Example";
    certificate.sha256 = std::string(64, 'a');
    return certificate;
}

std::string drawn(const test::TestRound& round) {
    const auto drawn = paper::drawRecord(round.content, &round.airframe, round.photos, signer());
    if (!drawn) qFatal("%s", toText(drawn.error()).c_str());
    return drawn->pages.pdf;
}

/// What a tool of poppler-utils makes of the PDF; empty where there is none.
QByteArray made(const QString& tool, const QStringList& options, const std::string& pdf) {
    QTemporaryDir folder;
    QFile file(folder.filePath("record.pdf"));
    if (!file.open(QIODevice::WriteOnly)) return {};
    file.write(pdf.data(), static_cast<qsizetype>(pdf.size()));
    file.close();
    QProcess process;
    process.start(tool, options + QStringList{file.fileName(), QStringLiteral("-")});
    return process.waitForFinished() ? process.readAllStandardOutput() : QByteArray();
}

QString textOf(const std::string& pdf) {
    return QString::fromUtf8(made("pdftotext", {"-layout"}, pdf)).simplified();
}

} // namespace

class TestPaperMeasured : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(paper::loadFonts());
        round = test::measuredRound();
        QCOMPARE(round.content["version"], Json(7));
        pdf = drawn(round);
        text = textOf(pdf);
    }

    void whatWasMeasuredIsTold() {
        if (text.isEmpty()) QSKIP("no pdftotext");
        QCOMPARE(text.count("What was measured"), 1);
        const auto its = test::fiveMillimetres({});
        const double reach = 1.96 * std::stod(its.uncertainty);
        const QString interval =
            QString::fromStdString(its.value + " mm, 95 %: " + fixed(std::stod(its.value) - reach, 2) +
                                   " to " + fixed(std::stod(its.value) + reach, 2) + " mm");
        QVERIFY2(text.contains(QStringLiteral("Shoe thickness, thinnest ") + interval +
                               QStringLiteral("; measured in a photo")),
                 qPrintable(text));
        // The shoe's, and the finding's.
        QCOMPARE(text.count(interval + QStringLiteral("; in photo ")), 2);
        QVERIFY(text.contains("against a card that was found and confirmed"));
        QVERIFY(text.contains("The part was renewed or repainted before this value."));
        QVERIFY(text.contains("0.225 in; typed"));
        QVERIFY(text.contains("at least 3.0 mm (Invented for the demonstration): the value is within it"));
        QCOMPARE(text.count("Photos of what is sound"), 1);
    }

    void theTrendIsDrawnAndTold() {
        if (text.isEmpty()) QSKIP("no pdftotext");
        for (const char* words :
             {"Airframe hours, h", "Shoe thickness, thinnest, mm", "limit 3", "renewed", "limit, 95 %",
              "As told", "6 not said, 2 taken with a ruler or caliper, 4 measured in a photo.",
              "Grey: where 95 % of values lie."})
            QVERIFY2(text.contains(words), words);
        const Json* told = nullptr;
        for (const Json& point : round.content["points"])
            if (point.contains("trend")) told = &point["trend"];
        if (told == nullptr) QFAIL("no trend is told");
        for (const Json& words : (*told)["words"])
            QVERIFY(text.contains(QString::fromStdString(words.get<std::string>()).mid(1)));
    }

    /// The first page names the value that comes to its limit, with the figures that the log has.
    void theTrendStandsOut() {
        if (text.isEmpty()) QSKIP("no pdftotext");
        const auto firstPage = [](const test::TestRound& of) {
            return QString::fromUtf8(made("pdftotext", {"-l", "1"}, drawn(of))).simplified();
        };
        test::TestRound near = test::measuredRound();
        round::Trended* trend = nullptr;
        for (round::Event& event : near.events)
            if (auto* its = std::get_if<round::Trended>(&event.what)) trend = its;
        if (trend == nullptr) QFAIL("no trend is told");
        QVERIFY(trend->is == judge::Standing::within);
        QVERIFY(!firstPage(near).contains("95 %"));
        const auto told = [&] {
            near.content = record::roundContent(near.airframe, near.events, {}).value();
            return firstPage(near);
        };
        trend->is = judge::Standing::near;
        trend->earliest = "1.3";
        trend->latest = "7.8";
        const QString last =
            QString::fromStdString(trend->values.back().value + " ± " + trend->values.back().uncertainty) +
            QStringLiteral(" mm, limit at least 3.0 mm");
        QString page = told();
        QVERIFY2(page.contains("Limit in 1.3 to 7.8 h, 95 %; now " + last + "; warns page "),
                 qPrintable(page));
        trend->latest.clear();
        QVERIFY(told().contains("Limit in 1.3 h at the earliest, 95 %; now " + last));
        trend->earliest.clear();
        QVERIFY(told().contains("May be at its limit; now " + last));
        trend->is = judge::Standing::passed;
        QVERIFY(told().contains("Beyond its limit; now " + last));
    }

    /// What a typed value was read from, and within what bounds it lies.
    void aReadingIsTold() {
        if (text.isEmpty()) QSKIP("no pdftotext");
        test::TestRound read = test::walked(test::demoHelicopter());
        for (round::Event& event : read.events)
            if (auto* settled = std::get_if<Settled>(&event.what);
                settled != nullptr && settled->point == "oil-level") {
                settled->from = airframe::Means::dipstick;
                settled->value = "5.2";
                settled->uncertainty = "0.15";
            }
        read.content = record::roundContent(read.airframe, read.events, {}).value();
        QCOMPARE(read.content["version"], Json(6));
        const QString told = textOf(drawn(read));
        QVERIFY2(told.contains("Oil level 5.2 qt, 95 %: 4.91 to 5.49 qt; read on the dipstick"),
                 qPrintable(told));
    }

    /// Each photo once, and in the PDF: those of what is sound, too.
    void photosAreThereOnce() {
        const auto pages =
            paper::drawRecord(round.content, &round.airframe, round.photos, signer()).value().pages;
        std::multiset<std::string> shown;
        for (const auto& placeholder : pages.placeholders)
            shown.insert(placeholder.photoSha256);
        QCOMPARE(shown.size(), round.content["photos"].size());
        for (const Json& photo : round.content["photos"])
            QCOMPARE(shown.count(photo["sha256"]), std::size_t{1});
    }

    void marksStandWhereTheyWereMade() {
        Settled settled;
        settled.photos = {{std::string(64, 'a'), "image/jpeg", 1}, {std::string(64, 'b'), "image/jpeg", 1}};
        settled.measurements = {test::fiveMillimetres(settled.photos[1])};
        const auto over = paper::measuredOver(settled);
        QCOMPARE(over.size(), std::size_t{2});
        QVERIFY(!over[0]);
        QImage picture(420, 320, QImage::Format_RGB32);
        picture.fill(QColor(0xc0, 0xc0, 0xc0));
        QPainter painter(&picture);
        over[1](painter, QRectF(10, 10, 400, 300)); // a quarter of the photo's size
        painter.end();
        const auto isMarked = [&](double x, double y) { // in the photo's pixels
            const QPoint at(10 + static_cast<int>((x + 0.5) / 4), 10 + static_cast<int>((y + 0.5) / 4));
            for (const int dx : {-1, 0, 1})
                for (const int dy : {-1, 0, 1})
                    if (qGray(picture.pixel(at + QPoint(dx, dy))) < 0x80) return true;
            return false;
        };
        for (const auto& [x, y] : {std::pair{300, 800}, {350, 800}, {325, 800}, {104, 100}})
            QVERIFY2(isMarked(x, y), qPrintable(QStringLiteral("%1 %2").arg(x).arg(y)));
        QVERIFY(!isMarked(500, 400)); // the card's middle
        QVERIFY(!isMarked(1200, 1000));
        // Halved with white: seen on dark, too.
        int white = 0;
        for (int y = 0; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x)
                white += qGray(picture.pixel(x, y)) > 0xF0 ? 1 : 0;
        QVERIFY(white > 300);
    }

    void nothingLeavesTheMargins() {
        const QString words = QString::fromUtf8(made("pdftotext", {"-bbox"}, pdf));
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
    }

    void olderRecordsHaveNothingOfIt() {
        const QString usual = textOf(drawn(test::walked(test::demoHelicopter())));
        if (usual.isEmpty()) QSKIP("no pdftotext");
        QVERIFY(!usual.contains("What was measured"));
        QVERIFY(!usual.contains("Photos of what is sound"));
    }

private:
    test::TestRound round;
    std::string pdf;
    QString text;
};

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    if (argc == 3 && std::string(argv[1]) == "--draw") { // to be looked at
        if (!paper::loadFonts()) return 1;
        const std::string pdf = test::signedFiles(test::measuredRound()).pdf;
        QFile file(QString::fromLocal8Bit(argv[2]));
        if (!file.open(QIODevice::WriteOnly)) return 1;
        return file.write(pdf.data(), static_cast<qsizetype>(pdf.size())) > 0 ? 0 : 1;
    }
    TestPaperMeasured tests;
    return QTest::qExec(&tests, argc, argv);
}

#include "tst_paper_measured.moc"
