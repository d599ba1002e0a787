// Rise, set and twilight against tables of the US naval observatory (usno/days.csv; README.md says where they
// were read): whole minutes, rounded, of days in UTC. Each of ours within a minute; and where a table says
// that there is none, we say so too.
#include "base/files.hpp"
#include "sky/sun_day.hpp"

#include <QTest>
#include <algorithm>
#include <array>
#include <cmath>
#include <sstream>

using namespace ambit;
using sky::Change;
using sky::Course;

namespace {

std::vector<std::string> fieldsOf(const std::string& line) {
    std::vector<std::string> fields(1);
    for (const char c : line)
        if (c == ',')
            fields.emplace_back();
        else
            fields.back() += c;
    return fields;
}

/// Seconds from the published minute to the nearest of our events of that kind.
double secondsOff(const sky::SunDay& day, Change what, Instant published) {
    double least = 86'400;
    for (const auto& event : day.events)
        if (event.what == what)
            least = std::min(least, std::abs(static_cast<double>(event.at.ms - published.ms)) / 1000);
    return least;
}

/// Degrees that our elevations may be off: 0.01 of the method, 0.0025 of the sun's way in TT - UT, and 0.0025
/// for the parallax, should the table count it (core/sky/sky.hpp). Slower than this a minute, an event's time
/// is ill conditioned.
constexpr double off = 0.015;

} // namespace

class TestSunPublished : public QObject {
    Q_OBJECT

    int times = 0;
    int sameMinute = 0;
    int grazing = 0;
    int words = 0;
    double most = 0;

private slots:
    void day_data() {
        QTest::addColumn<std::string>("line");
        const auto csv = readFile(AMBIT_ROOT "/tests/reference/usno/days.csv");
        QVERIFY(csv);
        std::istringstream lines(*csv);
        std::string line;
        std::getline(lines, line);
        QCOMPARE(line, std::string("date,latitude,longitude,twilight begins,rise,set,twilight ends"));
        while (std::getline(lines, line))
            QTest::addRow("%s", line.c_str()) << line;
    }
    void day() {
        QFETCH(std::string, line);
        const auto fields = fieldsOf(line);
        QCOMPARE(fields.size(), std::size_t{7});
        const auto place = sky::Place::of(std::stod(fields[1]), std::stod(fields[2]));
        const auto date = Date::parse(fields[0]);
        QVERIFY(place && date);
        const auto sun = sky::sunDay(*place, *date, 0);
        const std::array kinds{Change::twilightBegins, Change::rise, Change::set, Change::twilightEnds};
        for (std::size_t i = 0; i < kinds.size(); ++i) {
            const std::string& said = fields[3 + i];
            if (said.empty()) continue; // the table doesn't have it
            const bool horizon = kinds[i] == Change::rise || kinds[i] == Change::set;
            const Course course = horizon ? sun.overHorizon : sun.overTwilight;
            if (const auto at = parseInstant(fields[0] + 'T' + said + ":00.000Z")) {
                const auto elevation = [&](std::int64_t more) {
                    return sky::at(*place, Instant{at->ms + more}).elevation;
                };
                const double aMinute = std::abs(elevation(30'000) - elevation(-30'000));
                const double seconds = secondsOff(sun, kinds[i], *at);
                QVERIFY(seconds < 86'400); // there is one
                if (aMinute < off) {
                    // Rounded to the minute, the time is half a minute's way off.
                    const double there = elevation(0) - (horizon ? sky::horizon : sky::twilightLimit);
                    QVERIFY2(std::abs(there) <= off + aMinute / 2, qPrintable(QString::number(there)));
                    ++grazing;
                    continue;
                }
                QVERIFY2(seconds <= 60,
                         qPrintable(QStringLiteral("%1: %2 s").arg(sky::toText(kinds[i])).arg(seconds)));
                most = std::max(most, seconds);
                sameMinute += seconds <= 30 ? 1 : 0;
                ++times;
            } else if (said == "none") {
                QVERIFY(!sun.first(kinds[i]));
                ++words;
            } else {
                QVERIFY(said == "above" || said == "below");
                QCOMPARE(course, said == "above" ? Course::staysAbove : Course::staysBelow);
                ++words;
            }
        }
    }
    void cleanupTestCase() {
        qInfo("%d published times, the furthest %.1f s off, %d in the same minute; %d of a grazing sun",
              times, most, sameMinute, grazing);
        QCOMPARE(times + grazing, 660);
        QCOMPARE(words, 109);
    }
};

QTEST_APPLESS_MAIN(TestSunPublished)
#include "tst_sun_published.moc"
