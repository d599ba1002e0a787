// Where the system writes a decimal comma, numbers for people and programs are made the same as anywhere:
// what std::to_string or printf would make of them is never shown or kept.
#include "cli/commands.hpp"
#include "model/trend_chart.hpp"
#include "round/trended.hpp"

#include <QGuiApplication>
#include <QImage>
#include <QLocale>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

#include <array>
#include <clocale>
#include <cstdio>
#include <iostream>
#include <sstream>

using namespace ambit;

namespace {

airframe::Limit atLeast(const char* min) {
    airframe::Limit limit;
    limit.quantity = "Lining";
    limit.unit = "mm";
    limit.min = Decimal::parse(min).value();
    return limit;
}

/// A lining that wears, its trend as it is put into the log.
round::Course worn() {
    airframe::Airframe machine;
    machine.counters = {{"hours", "Hours", "h"}};
    airframe::Point point;
    point.id = "lining";
    point.limit = atLeast("1.25");
    point.limit->trend = airframe::Trend{"hours", Decimal::parse("2.5").value(), false};
    std::vector<round::Past> past;
    for (int i = 0; i < 8; ++i) {
        round::Past one;
        one.counters = {{"hours", fixed(100.5 + 2.5 * i, 1)}};
        one.value = fixed(3.5 - 0.21 * i + (i % 2) * 0.04, 2);
        one.unit = "mm";
        one.uncertainty = "0.05";
        past.push_back(one);
    }
    return round::courseOf(machine, point, past).value();
}

std::string trendTexts() {
    const round::Course course = worn();
    std::string all;
    for (const Sentence& one : judge::toTexts(course.trend, course.question))
        all += std::string(one) + '\n';
    for (const std::string* one : {&course.told.earliest, &course.told.best, &course.told.latest})
        all += *one + '\n';
    for (const auto& one : course.told.band)
        all += one.x + ' ' + one.low + ' ' + one.high + '\n';
    return all;
}

/// Seen from straight above, 10 pixels a millimetre: a value, and what is said of a known length that
/// disagrees.
std::string planeTexts() {
    round::Measurement its;
    its.what = round::Measurement::What::distance;
    its.width = 1600;
    its.height = 1200;
    its.card = round::CardSeen{{{"100", "100"}, {"956", "100"}, {"956", "639.80"}, {"100", "639.80"}},
                               "0.50",
                               false,
                               {},
                               measure::Lies::longSideFirst};
    its.marks = {{"300", "800"}, {"352.50", "800"}};
    its.deviation = "1.00";
    round::write(its, round::computed(its).value());
    its.known = round::KnownLength{"7.5", "0.1", its.marks};
    const auto refused = round::computed(its);
    return its.value + '\n' + its.uncertainty + '\n' + round::pixels(12.345) + '\n' +
           (refused ? std::string() : std::string(refused.error().what));
}

std::string skyTexts() {
    cli::SkyOptions options;
    options.latitude = "47.5";
    options.longitude = "8.25";
    options.at = "2026-06-20T05:30:00+02:00";
    std::ostringstream caught;
    std::streambuf* const before = std::cout.rdbuf(caught.rdbuf());
    int code = cli::sky(options);
    options.json = true;
    code += cli::sky(options);
    std::cout.rdbuf(before);
    return code == 0 ? caught.str() : std::string();
}

/// Of a picture, its bytes.
std::string chart() {
    QImage picture(500, 260, QImage::Format_RGB32);
    picture.fill(Qt::white);
    QPainter painter(&picture);
    view::drawTrend(painter, {0, 0, 500, 260}, worn().told, atLeast("1.25"), {});
    painter.end();
    return {reinterpret_cast<const char*>(picture.constBits()),
            static_cast<std::size_t>(picture.sizeInBytes())};
}

/// A locale of which only the comma is of its own, as small as localedef takes it: no machine needs to have
/// one.
bool madeCommaLocale(const QString& folder) {
    const auto write = [&](const QString& name, const QByteArray& text) {
        QFile file(folder + QLatin1Char('/') + name);
        return file.open(QIODevice::WriteOnly) && file.write(text) == text.size();
    };
    QByteArray ascii(
        "<code_set_name> ASCII\n<comment_char> %\n<escape_char> /\n<mb_cur_min> 1\n<mb_cur_max> 1\n"
        "CHARMAP\n");
    for (int c = 0; c < 128; ++c)
        ascii += QByteArray("<U00") + QByteArray::number(c, 16).rightJustified(2, '0').toUpper() + "> /x" +
                 QByteArray::number(c, 16).rightJustified(2, '0') + '\n';
    ascii += "END CHARMAP\n";
    if (!write(QStringLiteral("comma"), "comment_char %\nescape_char /\nLC_NUMERIC\ndecimal_point \",\"\n"
                                        "thousands_sep \".\"\ngrouping 3;3\nEND LC_NUMERIC\n") ||
        !write(QStringLiteral("ascii"), ascii))
        return false;
    QProcess localedef;
    // The other categories are missing: -c makes it all the same, and says so by its exit code.
    localedef.start(QStringLiteral("localedef"),
                    {QStringLiteral("-c"), QStringLiteral("--no-archive"), QStringLiteral("-i"),
                     folder + QStringLiteral("/comma"), QStringLiteral("-f"),
                     folder + QStringLiteral("/ascii"), folder + QStringLiteral("/xx")});
    return localedef.waitForFinished() && QFile::exists(folder + QStringLiteral("/xx/LC_NUMERIC"));
}

using Making = std::string (*)();

} // namespace

class TestComma : public QObject {
    Q_OBJECT

    QTemporaryDir folder;
    QString noLocale;

private slots:
    void initTestCase() {
        if (!madeCommaLocale(folder.path()))
            noLocale = QStringLiteral("localedef makes no locale with a comma here");
        else if (qputenv("LOCPATH", folder.path().toUtf8()); std::setlocale(LC_NUMERIC, "xx") == nullptr)
            noLocale = QStringLiteral("this C library takes no locale of one's own");
        std::setlocale(LC_NUMERIC, "C");
    }
    void cleanup() {
        std::setlocale(LC_NUMERIC, "C");
        QLocale::setDefault(QLocale::c());
    }

    void sameWithAComma_data() {
        QTest::addColumn<Making>("made");
        QTest::addColumn<bool>("drawn");
        QTest::newRow("what a trend says and keeps") << &trendTexts << false;
        QTest::newRow("what is measured on a plane") << &planeTexts << false;
        QTest::newRow("ambit sky") << &skyTexts << false;
        QTest::newRow("the chart of a trend") << &chart << true;
    }
    void sameWithAComma() {
        QFETCH(Making, made);
        QFETCH(bool, drawn);
        const std::string usual = made();
        QVERIFY(!usual.empty());
        if (!drawn) {
            static const QRegularExpression number(QStringLiteral("[0-9]\\.[0-9]"));
            QVERIFY2(QString::fromStdString(usual).contains(number), usual.c_str());
        }
        QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany));
        if (!noLocale.isEmpty()) {
            QVERIFY(made() == usual);
            QSKIP(qPrintable(noLocale + QStringLiteral(": only Qt's was tried")));
        }
        QVERIFY(std::setlocale(LC_NUMERIC, "xx") != nullptr);
        std::array<char, 8> comma{};
        std::snprintf(comma.data(), comma.size(), "%.1f", 1.5);
        QCOMPARE(comma.data(), "1,5"); // or nothing was tried
        const std::string withComma = made();
        std::setlocale(LC_NUMERIC, "C");
        if (!drawn) QCOMPARE(withComma, usual);
        QVERIFY(withComma == usual);
    }
};

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    TestComma test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_comma.moc"
