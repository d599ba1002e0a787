// The sun's place and its day. What it must say comes from geometry and from TRADE's vectors here; published
// tables and another implementation judge it in tests/reference.
#include "sky/clock.hpp"
#include "sky/sun_day.hpp"

#include <QTest>
#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <utility>

using namespace ambit;
using sky::Change;
using sky::Course;
using sky::Light;

namespace {

sky::Place place(double latitude, double longitude) {
    return sky::Place::of(latitude, longitude).value();
}

Date date(const char* text) {
    return Date::parse(text).value();
}

Instant instant(const char* text) {
    return parseInstant(text).value();
}

/// Seconds between an event and what it should be.
double secondsFrom(const char* text, std::optional<Instant> event) {
    if (!event) return std::numeric_limits<double>::infinity();
    return std::abs(static_cast<double>(event->ms - instant(text).ms)) / 1000;
}

int count(const sky::SunDay& day, Change what) {
    return static_cast<int>(std::count_if(day.events.begin(), day.events.end(),
                                          [&](const auto& event) { return event.what == what; }));
}

} // namespace

class TestSky : public QObject {
    Q_OBJECT

private slots:
    void noSuchPlace_data() {
        QTest::addColumn<double>("latitude");
        QTest::addColumn<double>("longitude");
        constexpr double nan = std::numeric_limits<double>::quiet_NaN();
        constexpr double infinity = std::numeric_limits<double>::infinity();
        QTest::newRow("north of the pole") << 90.0000001 << 0.0;
        QTest::newRow("south of the pole") << -91.0 << 0.0;
        QTest::newRow("beyond the antimeridian") << 0.0 << 180.0000001;
        QTest::newRow("beyond it westwards") << 0.0 << -181.0;
        QTest::newRow("latitude is no number") << nan << 0.0;
        QTest::newRow("longitude is no number") << 0.0 << nan;
        QTest::newRow("infinite") << 0.0 << infinity;
    }
    void noSuchPlace() {
        QFETCH(double, latitude);
        QFETCH(double, longitude);
        const auto refused = sky::Place::of(latitude, longitude);
        QVERIFY(!refused);
        QCOMPARE(refused.error().code, ErrorCode::invalid);
        QVERIFY(!refused.error().remedy.empty());
    }
    void theEdgesArePlaces() {
        for (const double latitude : {-90.0, 0.0, 90.0})
            for (const double longitude : {-180.0, 0.0, 180.0})
                QVERIFY(sky::Place::of(latitude, longitude));
        QCOMPARE(place(-90, 180).latitude(), -90.0);
        QCOMPARE(place(-90, 180).longitude(), 180.0);
    }

    /// Meeus, example 25.a: 1992-10-13, 0 h: declination -7.78507 degrees. At the pole the elevation is the
    /// declination; where he means the planets' time, we put the earth's.
    void meeusExample() {
        const Instant at = instant("1992-10-13T00:00:00.000Z");
        const double there = sky::at(place(90, 0), at).elevation;
        QVERIFY2(std::abs(there + 7.78507) < 0.00001, qPrintable(QString::number(there, 'f', 6)));
        QCOMPARE(sky::at(place(-90, 0), at).elevation, -sky::at(place(90, 0), at).elevation);
    }

    /// The US naval observatory's geometric altitudes (its celestial navigation service, read second-hand),
    /// to its 0.01 degrees of Meeus' and then some.
    void elevation_data() {
        QTest::addColumn<double>("latitude");
        QTest::addColumn<double>("longitude");
        QTest::addColumn<QByteArray>("at");
        QTest::addColumn<double>("elevation");
        QTest::newRow("summer, mid-morning")
            << 59.9139 << 10.7522 << QByteArray("2025-06-21T10:00:00.000Z") << 51.00185;
        QTest::newRow("winter, low") << 59.9139 << 10.7522 << QByteArray("2025-12-21T11:00:00.000Z")
                                     << 6.58999;
        QTest::newRow("near the zenith")
            << -0.1807 << -78.4678 << QByteArray("2025-03-20T17:00:00.000Z") << 84.69836;
        QTest::newRow("the equator's winter")
            << -0.1807 << -78.4678 << QByteArray("2025-06-21T17:00:00.000Z") << 66.07338;
        QTest::newRow("southern summer")
            << -33.8688 << 151.2093 << QByteArray("2025-12-21T02:00:00.000Z") << 79.46084;
        QTest::newRow("southern winter")
            << -33.8688 << 151.2093 << QByteArray("2025-06-21T01:00:00.000Z") << 31.11522;
        QTest::newRow("equinox") << 64.1466 << -21.9426 << QByteArray("2025-09-22T13:00:00.000Z") << 25.82978;
        QTest::newRow("northern summer")
            << 64.1466 << -21.9426 << QByteArray("2025-06-21T13:00:00.000Z") << 48.99850;
    }
    void elevation() {
        QFETCH(double, latitude);
        QFETCH(double, longitude);
        QFETCH(QByteArray, at);
        QFETCH(double, elevation);
        const double ours = sky::at(place(latitude, longitude), instant(at.constData())).elevation;
        QVERIFY2(std::abs(ours - elevation) < 0.0125, qPrintable(QString::number(ours, 'f', 5)));
    }

    /// By the full equations; a widely copied pair, 04:34:56 and 15:46:57, is from a short form.
    void theFullEquations() {
        const auto day = sky::sunDay(place(50.5, 30.5), date("2013-03-05"), 0);
        QVERIFY(secondsFrom("2013-03-05T04:33:30.000Z", day.first(Change::rise)) < 10);
        QVERIFY(secondsFrom("2013-03-05T15:46:18.000Z", day.first(Change::set)) < 10);
    }

    void polarSummer() {
        const auto day = sky::sunDay(place(69.6492, 18.9553), date("2026-06-21"), 120);
        QVERIFY(day.events.empty());
        QCOMPARE(day.overHorizon, Course::staysAbove);
        QCOMPARE(day.overTwilight, Course::staysAbove);
    }
    /// Twilight 09:31 to 13:53 at UTC+1, to the minute.
    void polarWinter() {
        const auto day = sky::sunDay(place(69.6492, 18.9553), date("2026-12-21"), 60);
        QCOMPARE(day.overHorizon, Course::staysBelow);
        QCOMPARE(day.overTwilight, Course::crosses);
        QCOMPARE(day.events.size(), std::size_t{2});
        QVERIFY(secondsFrom("2026-12-21T08:31:00.000Z", day.first(Change::twilightBegins)) <= 60);
        QVERIFY(secondsFrom("2026-12-21T12:53:00.000Z", day.first(Change::twilightEnds)) <= 60);
        QVERIFY(!day.first(Change::rise));
    }
    void twilightAllNight() {
        const auto day = sky::sunDay(place(61, 10), date("2026-06-21"), 120);
        QCOMPARE(day.overHorizon, Course::crosses);
        QCOMPARE(day.overTwilight, Course::staysAbove);
        QCOMPARE(day.events.size(), std::size_t{2});
    }
    void notEvenTwilight() {
        const auto day = sky::sunDay(place(80, 10), date("2026-12-21"), 60);
        QVERIFY(day.events.empty());
        QCOMPARE(day.overHorizon, Course::staysBelow);
        QCOMPARE(day.overTwilight, Course::staysBelow);
    }

    /// One day and one night a year at either pole: each event once in 2026, in its season, whatever the
    /// longitude.
    void thePoles_data() {
        QTest::addColumn<double>("latitude");
        QTest::addColumn<double>("longitude");
        QTest::newRow("north") << 90.0 << 0.0;
        QTest::newRow("north, antimeridian") << 90.0 << 180.0;
        QTest::newRow("south") << -90.0 << 0.0;
        QTest::newRow("south, antimeridian") << -90.0 << -180.0;
    }
    void thePoles() {
        QFETCH(double, latitude);
        QFETCH(double, longitude);
        std::vector<sky::SunEvent> events;
        for (Date day = date("2026-01-01"); day.year() == 2026; day = day.plusDays(1).value())
            for (const auto& event : sky::sunDay(place(latitude, longitude), day, 0).events)
                events.push_back(event);
        const auto months = [&] {
            std::vector<std::pair<Change, int>> said;
            said.reserve(events.size());
            for (const auto& event : events)
                said.emplace_back(event.what, Date::of(LocalInstant{event.at, 0}).value().month());
            return said;
        }();
        const std::vector<std::pair<Change, int>> north{
            {Change::twilightBegins, 3}, {Change::rise, 3}, {Change::set, 9}, {Change::twilightEnds, 10}};
        const std::vector<std::pair<Change, int>> south{
            {Change::set, 3}, {Change::twilightEnds, 4}, {Change::twilightBegins, 9}, {Change::rise, 9}};
        QVERIFY(months == (latitude > 0 ? north : south));
    }
    void bothSidesOfTheAntimeridianAreOnePlace() {
        const auto east = sky::sunDay(place(-17, 180), date("2026-11-26"), 720);
        const auto west = sky::sunDay(place(-17, -180), date("2026-11-26"), 720);
        QCOMPARE(east.events.size(), std::size_t{4});
        QVERIFY(east.events == west.events);
    }

    /// Day follows day without a gap: whatever the offset, the days of a year tell the same events, and each
    /// is where the light changes.
    void noEventIsLostBetweenDays_data() {
        QTest::addColumn<double>("latitude");
        for (const double latitude : {0.0, 47.5, 60.5, 65.9, 66.6, 67.4, 71.0, -77.8, 84.0, 89.5, -89.99})
            QTest::addRow("%g", latitude) << latitude;
    }
    void noEventIsLostBetweenDays() {
        QFETCH(double, latitude);
        const auto here = place(latitude, 25.25);
        const auto year = [&](int offsetMinutes) {
            std::vector<sky::SunEvent> events;
            for (Date day = date("2026-01-01"); day.year() == 2026; day = day.plusDays(1).value())
                for (const auto& event : sky::sunDay(here, day, offsetMinutes).events)
                    events.push_back(event);
            return events;
        };
        const auto events = year(0);
        QVERIFY(events.size() >= 4);
        const auto light = [&](std::int64_t ms) { return sky::at(here, Instant{ms}).light; };
        for (const auto& event : events) {
            const bool sun = event.what == Change::rise || event.what == Change::set;
            const bool brighter = event.what == Change::rise || event.what == Change::twilightBegins;
            const Light above = sun ? Light::day : Light::twilight;
            const Light below = sun ? Light::twilight : Light::night;
            QCOMPARE(light(event.at.ms), brighter ? above : below);
            QCOMPARE(light(event.at.ms - 1), brighter ? below : above);
        }
        // The sun can't rise twice without setting.
        for (const bool sun : {true, false}) {
            std::optional<Change> last;
            for (const auto& event : events)
                if (sun == (event.what == Change::rise || event.what == Change::set)) {
                    QVERIFY(last != event.what);
                    last = event.what;
                }
        }
        // Seen by another clock the same; its year begins and ends at other moments.
        const std::int64_t hours = 3'600'000;
        const auto inside = [&](std::vector<sky::SunEvent> some) {
            std::erase_if(some, [&](const auto& event) {
                return event.at.ms < instant("2026-01-02T00:00:00.000Z").ms + 12 * hours ||
                       event.at.ms > instant("2026-12-30T00:00:00.000Z").ms;
            });
            return some;
        };
        const auto ours = inside(events);
        const auto there = inside(year(-570));
        QCOMPARE(there.size(), ours.size());
        for (std::size_t i = 0; i < there.size(); ++i) {
            QCOMPARE(there[i].what, ours[i].what);
            QVERIFY(std::abs(there[i].at.ms - ours[i].at.ms) <= 1);
        }
    }

    /// Sets earlier each day, about midnight by a clock ahead of the sun: one day of the year has two sets,
    /// none has more; in spring one has none, though the sun does set.
    void anEventTwiceADay() {
        int twice = 0;
        int never = 0;
        for (Date day = date("2026-01-01"); day.year() == 2026; day = day.plusDays(1).value()) {
            const auto sun = sky::sunDay(place(62, 0), day, 150);
            const int sets = count(sun, Change::set);
            QVERIFY(sets <= 2);
            QCOMPARE(sun.overHorizon, Course::crosses);
            twice += sets == 2 ? 1 : 0;
            never += sets == 0 ? 1 : 0;
            if (sets == 2) {
                QCOMPARE(sun.events.front().what, Change::set);
                QVERIFY(sun.first(Change::set) == sun.events.front().at);
            }
        }
        QCOMPARE(twice, 1);
        QCOMPARE(never, 1);
    }

    /// Ever closer to the latitude where the midwinter sun just doesn't rise any more, rise and set draw
    /// together, and both are told to the last: far closer than the steps of the search.
    void aRiseAndASetSecondsApart() {
        double rises = 66;
        double doesNot = 69;
        for (int i = 0; i < 45; ++i) {
            const double middle = (rises + doesNot) / 2;
            const auto sun = sky::sunDay(place(middle, 0), date("2026-12-21"), 0);
            QCOMPARE(count(sun, Change::rise), count(sun, Change::set));
            (sun.overHorizon == Course::crosses ? rises : doesNot) = middle;
        }
        const auto last = sky::sunDay(place(rises, 0), date("2026-12-21"), 0);
        QCOMPARE(count(last, Change::rise), 1);
        const auto apart = last.first(Change::set)->ms - last.first(Change::rise)->ms;
        QVERIFY2(apart > 0 && apart < 10'000, qPrintable(QString::number(apart)));
        QCOMPARE(sky::sunDay(place(doesNot, 0), date("2026-12-21"), 0).overHorizon, Course::staysBelow);
        // The latitude itself, from the elevation at noon: 90 - latitude - 23.44 = -0.833, to the sun's
        // declination.
        QVERIFY(std::abs(rises - (90 - 23.436 + 0.833)) < 0.01);
    }
    /// The same where the midsummer sun just doesn't set.
    void aSetAndARiseSecondsApart() {
        double sets = 64;
        double doesNot = 67;
        for (int i = 0; i < 45; ++i) {
            const double middle = (sets + doesNot) / 2;
            const auto sun = sky::sunDay(place(middle, 0), date("2026-06-21"), -720);
            QCOMPARE(count(sun, Change::rise), count(sun, Change::set));
            (sun.overHorizon == Course::crosses ? sets : doesNot) = middle;
        }
        const auto last = sky::sunDay(place(sets, 0), date("2026-06-21"), -720);
        const auto apart = last.first(Change::rise)->ms - last.first(Change::set)->ms;
        QVERIFY2(apart > 0 && apart < 10'000, qPrintable(QString::number(apart)));
        // They fall at 00:02 UTC: also where the day has only just begun, or is just about to end.
        for (const auto& [day, offsetMinutes] : {std::pair{"2026-06-22", 0}, std::pair{"2026-06-21", -4}}) {
            const auto same = sky::sunDay(place(sets, 0), date(day), offsetMinutes);
            QVERIFY(std::abs(same.first(Change::set).value_or(Instant{}).ms - last.first(Change::set)->ms) <
                    1000);
            QVERIFY(std::abs(same.first(Change::rise).value_or(Instant{}).ms - last.first(Change::rise)->ms) <
                    1000);
        }
    }

    void theEndsOfTheCalendar() {
        // Not right to a minute, but sound.
        for (const char* day : {"0001-01-01", "9999-12-31"})
            QCOMPARE(sky::sunDay(place(10, 10), date(day), 0).events.size(), std::size_t{4});
    }

    void words() {
        QCOMPARE(QByteArray(sky::toText(Light::day)), QByteArray("day"));
        QCOMPARE(QByteArray(sky::toText(Light::twilight)), QByteArray("twilight"));
        QCOMPARE(QByteArray(sky::toText(Light::night)), QByteArray("night"));
        QCOMPARE(QByteArray(sky::toText(Change::twilightEnds)), QByteArray("twilight ends"));
    }

    void aClockIsOutByMoreThanAMinute() {
        const Instant satellites = instant("2026-06-20T05:30:00.000Z");
        const auto off = [&](std::int64_t ms) {
            return sky::clockOff(Instant{satellites.ms + ms}, satellites);
        };
        QVERIFY(off(0) == (sky::ClockOff{0, false}));
        QVERIFY(off(60'000) == (sky::ClockOff{60'000, false}));
        QVERIFY(off(60'001) == (sky::ClockOff{60'001, true}));
        QVERIFY(off(-60'000) == (sky::ClockOff{-60'000, false}));
        QVERIFY(off(-60'001) == (sky::ClockOff{-60'001, true}));
        QCOMPARE(off(-7 * 86'400'000LL).ms, std::int64_t{-604'800'000});
    }
};

QTEST_APPLESS_MAIN(TestSky)
#include "tst_sky.moc"
