// Trends: lines, when the limit comes, renewed parts, values out of line.
#include "judge/renewed.hpp"
#include "judge/slopes.hpp"
#include "judge/trend.hpp"

#include <QTest>
#include <algorithm>
#include <cmath>
#include <random>

using namespace ambit;
using judge::Direction;
using judge::Measured;
using judge::Standing;

namespace {

Decimal number(const std::string& text) {
    return Decimal::parse(text).value();
}

Decimal number(double value, int decimals) {
    std::string text = QByteArray::number(value, 'f', decimals).toStdString();
    if (text.find_first_of("123456789") == std::string::npos && text[0] == '-') text.erase(0, 1);
    return number(text);
}

std::vector<Measured> series(const std::vector<std::pair<const char*, const char*>>& pairs) {
    std::vector<Measured> values;
    values.reserve(pairs.size());
    for (const auto& [x, y] : pairs)
        values.push_back({number(std::string(x)), number(std::string(y)), {}, false});
    return values;
}

judge::TrendQuestion asked(const char* min, const char* max, const char* ahead = "") {
    judge::TrendQuestion question;
    question.limit = {"Lining", "mm", {}, {}, ""};
    if (*min != 0) question.limit.min = number(std::string(min));
    if (*max != 0) question.limit.max = number(std::string(max));
    if (*ahead != 0) question.ahead = number(std::string(ahead));
    return question;
}

std::string allOf(const judge::Trend& trend, const judge::TrendQuestion& question) {
    std::string all;
    for (const Sentence& text : judge::toTexts(trend, question))
        all += (all.empty() ? "" : "; ") + text;
    return all;
}

/// Wears by 0.02 an hour from `start`, noise of that standard deviation.
std::vector<Measured> worn(std::mt19937_64& chance, int count, double start, double noise) {
    std::normal_distribution<double> off(0, noise);
    std::vector<Measured> values;
    values.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i)
        values.push_back({number(i * 2.0, 1), number(start - 0.04 * i + off(chance), 5), {}, false});
    return values;
}

} // namespace

class TestTrend : public QObject {
    Q_OBJECT

private slots:
    void theOneFarOff() {
        std::vector<judge::Sample> samples;
        for (const auto& [x, y] : {std::pair(0, 1), {1, 3}, {2, 5}, {3, 7}, {4, 9}, {5, 40}})
            samples.push_back({Decimal::whole(x), Decimal::whole(y)});
        const auto robust = judge::theilSen(samples).value();
        QCOMPARE(robust.line.slope, 2.0);
        QCOMPARE(robust.line.intercept, 1.0);
        QVERIFY(judge::leastSquares(samples).value().line.slope > 5);
    }

    /// Every rank against sorting all slopes, on grids so coarse that most are equal.
    void ranksAgainstSorting() {
        std::mt19937_64 chance(11);
        int many = 0;
        for (int round = 0; round < 3000; ++round) {
            const int n = round % 50 == 0 ? 200 : 2 + static_cast<int>(chance() % 20);
            const auto wide = static_cast<std::int64_t>(1 + chance() % (round % 3 == 0 ? 4 : 1000));
            const std::int64_t large = round % 7 == 0 ? 900'000'000'000 : 1;
            std::vector<judge::GridPoint> points;
            for (int i = 0; i < n; ++i) {
                const auto draw = [&] {
                    return static_cast<std::int64_t>(chance() % static_cast<std::uint64_t>(2 * wide)) - wide;
                };
                const std::int64_t x = draw();
                points.push_back(
                    {x * (large > 1 ? large / wide : 1), draw() * (large > 1 ? large / wide : 1)});
            }
            std::vector<judge::Slope> all;
            for (const auto& a : points)
                for (const auto& b : points)
                    if (a.x < b.x) all.push_back({b.y - a.y, b.x - a.x});
            std::sort(all.begin(), all.end());
            const judge::Slopes slopes(points);
            QCOMPARE(slopes.count(), std::uint64_t{all.size()});
            const auto same = [](const judge::Slope& a, const judge::Slope& b) {
                return !(a < b) && !(b < a);
            };
            for (int tries = 0; tries < 5 && !all.empty(); ++tries) {
                const std::size_t rank = tries == 0 ? (all.size() - 1) / 2 : chance() % all.size();
                const judge::Slope found = slopes.ranked(rank);
                QVERIFY(same(found, all[rank]));
                if (rank + 1 < all.size()) QVERIFY(same(slopes.next(rank, found), all[rank + 1]));
                if (all.size() > 8 * points.size() + 64) ++many; // those that aren't just listed
            }
        }
        QVERIFY(many >= 300);
    }

    void tooLittle_data() {
        QTest::addColumn<int>("count");
        QTest::addColumn<bool>("spread");
        QTest::newRow("one") << 1 << true;
        QTest::newRow("three") << 3 << true;
        QTest::newRow("five at two places") << 5 << false;
    }
    void tooLittle() {
        QFETCH(int, count);
        QFETCH(bool, spread);
        std::vector<Measured> values;
        values.reserve(static_cast<std::size_t>(count));
        for (int i = 0; i < count; ++i)
            values.push_back({Decimal::whole(spread ? i : i / 3), Decimal::whole(9 - i), {}, false});
        const auto question = asked("1", "");
        const auto trend = judge::trendOf(values, question).value();
        QVERIFY(!trend.robust && !trend.crossing);
        QCOMPARE(trend.direction, Direction::unknown);
        QCOMPARE(allOf(trend, question),
                 std::string("too few values for a trend: at least 4, at three different times"));
    }
    void tooLittleButPassed() {
        const auto question = asked("1", "");
        const auto trend = judge::trendOf(series({{"0", "0.9"}}), question).value();
        QCOMPARE(trend.standing, Standing::passed);
        QVERIFY(allOf(trend, question).starts_with("the last value is beyond the limit; "));
    }

    /// Without a line the last value's own interval tells, 1.96 standard uncertainties either way, wherever
    /// the uncertainty is from.
    void tooLittleButItsIntervalReachesThere_data() {
        QTest::addColumn<QByteArray>("value");
        QTest::addColumn<QByteArray>("uncertainty");
        QTest::addColumn<bool>("near");
        QTest::newRow("not stated") << QByteArray("1.01") << QByteArray() << false;
        QTest::newRow("counted") << QByteArray("1.00") << QByteArray("0") << false;
        QTest::newRow("just to the limit") << QByteArray("1.98") << QByteArray("0.5") << false;
        QTest::newRow("just beyond") << QByteArray("1.97") << QByteArray("0.5") << true;
        QTest::newRow("far from it") << QByteArray("4") << QByteArray("0.5") << false;
        QTest::newRow("beyond the upper one") << QByteArray("8.5") << QByteArray("0.3") << true;
    }
    void tooLittleButItsIntervalReachesThere() {
        QFETCH(QByteArray, value);
        QFETCH(QByteArray, uncertainty);
        QFETCH(bool, near);
        for (const char* ahead : {"", "2.0"}) {
            const auto question = asked("1", "9", ahead);
            auto values = series({{"0", "5"}, {"1", value.constData()}});
            if (!uncertainty.isEmpty()) values.back().uncertainty = number(uncertainty.toStdString());
            const auto trend = judge::trendOf(values, question).value();
            QCOMPARE(trend.standing, near ? Standing::near : Standing::within);
            QCOMPARE(allOf(trend, question).starts_with("the limit may be reached already; too few"), near);
        }
    }
    /// Of a line the values themselves tell what one alone doesn't.
    void withALineItsBandTells() {
        auto values = series({{"0", "5"}, {"1", "5.1"}, {"2", "4.9"}, {"3", "5"}, {"4", "5"}, {"5", "5.1"}});
        values.back().uncertainty = number(std::string("3"));
        const auto question = asked("1", "", "1");
        QCOMPARE(judge::trendOf(values, question).value().standing, Standing::within);
    }

    /// 5 mm, 0.02 mm an hour, limit 4: 50 h from the beginning, 26 from the last value.
    void aWearingPart() {
        const auto values =
            series({{"0", "5.00"}, {"6", "4.88"}, {"12", "4.76"}, {"18", "4.64"}, {"24", "4.52"}});
        auto question = asked("4", "", "5");
        auto trend = judge::trendOf(values, question).value();
        QCOMPARE(trend.direction, Direction::falling);
        QCOMPARE(trend.standing, Standing::within);
        QVERIFY(trend.crossing && trend.crossing->best);
        QVERIFY(std::abs(*trend.crossing->best - 26) < 1e-9);
        QVERIFY(*trend.crossing->earliest < 26 && *trend.crossing->latest > 26);
        const std::string words = allOf(trend, question);
        QVERIFY2(words.starts_with("the limit is not reached within the next 5 h; limit in 25 to 27"),
                 words.c_str());
        QVERIFY2(words.ends_with(" h, 95 %; falls by 0.02 mm per h"), words.c_str());
        question.ahead = number(std::string("25.9"));
        trend = judge::trendOf(values, question).value();
        QCOMPARE(trend.standing, Standing::near);
        QVERIFY(allOf(trend, question).starts_with("the limit may be passed within the next 25.9 h; "));
        // The gauge is good to 0.1 mm: the interval must be wider for it.
        auto unsure = values;
        for (auto& value : unsure)
            value.uncertainty = number(std::string("0.05"));
        const auto wider = judge::trendOf(unsure, question).value();
        QVERIFY(*wider.crossing->earliest < *trend.crossing->earliest - 3);
    }
    void aRisingValue() {
        const auto question = asked("", "2.0");
        const auto trend =
            judge::trendOf(series({{"0", "1.0"}, {"10", "1.2"}, {"20", "1.4"}, {"30", "1.6"}}), question)
                .value();
        QCOMPARE(trend.direction, Direction::rising);
        QVERIFY(trend.crossing->atMax);
        QVERIFY(std::abs(*trend.crossing->best - 20) < 1e-9);
    }
    void awayFromTheLimit() {
        const auto question = asked("", "9.0");
        const auto trend =
            judge::trendOf(series({{"0", "5.0"}, {"10", "4.5"}, {"20", "4.0"}, {"30", "3.5"}}), question)
                .value();
        QVERIFY(!trend.crossing);
        QCOMPARE(trend.standing, Standing::within);
        QVERIFY(allOf(trend, question).starts_with("limit not within the next 150 h, 95 %; falls"));
    }
    void noTrend() {
        const auto question = asked("1.0", "");
        const auto trend = judge::trendOf(series({{"0", "5.1"},
                                                  {"1", "4.9"},
                                                  {"2", "5.2"},
                                                  {"3", "4.8"},
                                                  {"4", "5.1"},
                                                  {"5", "4.9"},
                                                  {"6", "5.1"}}),
                                          question)
                               .value();
        QCOMPARE(trend.direction, Direction::none);
        QVERIFY(!trend.crossing || !trend.crossing->best);
        QVERIFY(allOf(trend, question).find("no trend") != std::string::npos);
    }
    void passedAlready() {
        const auto question = asked("4", "", "3");
        const auto trend =
            judge::trendOf(series({{"0", "5.0"}, {"1", "4.7"}, {"2", "4.3"}, {"3", "3.9"}}), question)
                .value();
        QCOMPARE(trend.standing, Standing::passed);
        QVERIFY(allOf(trend, question).starts_with("the last value is beyond the limit; falls"));
        QCOMPARE(*trend.crossing->best, 0.0);
    }

    void renewed() {
        std::mt19937_64 chance(3);
        auto values = worn(chance, 8, 5.0, 0.01);
        const auto later = worn(chance, 6, 5.0, 0.01);
        for (const auto& value : later)
            values.push_back({number(16 + value.x.approximate(), 1), value.y, {}, false});
        const auto question = asked("4", "");
        const auto trend = judge::trendOf(values, question).value();
        QVERIFY(trend.looksRenewed);
        QCOMPARE(trend.from, std::size_t{8});
        QVERIFY(trend.robust && std::abs(trend.robust->line.slope + 0.02) < 0.005);
        QVERIFY(allOf(trend, question).find("looks renewed") != std::string::npos);
        // Somebody says so: no question is left.
        values[8].renewed = true;
        const auto said = judge::trendOf(values, question).value();
        QVERIFY(!said.looksRenewed);
        QCOMPARE(said.from, std::size_t{8});
        // The other way round it is wear, however sudden.
        const auto wear = judge::trendOf(values, asked("", "9")).value();
        QVERIFY(!wear.looksRenewed);
    }
    /// One value too high is a slip, not a new part.
    void aSlipIsNoRenewal() {
        std::mt19937_64 chance(4);
        auto values = worn(chance, 12, 5.0, 0.01);
        values[6].y = number(std::string("6.5"));
        const auto trend = judge::trendOf(values, asked("4", "")).value();
        QVERIFY(!trend.looksRenewed && !trend.outOfLine);
        QCOMPARE(trend.far, std::vector<std::size_t>{6});
        QVERIFY(std::abs(*trend.crossing->best - 28) < 3);
    }
    /// Noise alone looks renewed in fewer than 2 of 100 series.
    void noiseIsNoRenewal() {
        std::mt19937_64 chance(5);
        int alarms = 0;
        for (int round = 0; round < 1000; ++round)
            if (judge::renewedAt(worn(chance, 5 + round % 20, 5.0, 0.05), asked("1", "").limit) > 0) ++alarms;
        QVERIFY2(alarms < 20, std::to_string(alarms).c_str());
    }
    void outOfLine() {
        std::mt19937_64 chance(6);
        auto values = worn(chance, 10, 5.0, 0.01);
        QVERIFY(!judge::trendOf(values, asked("4", "")).value().outOfLine);
        values.back().y = number(std::string("4.4"));
        const auto question = asked("4", "");
        const auto trend = judge::trendOf(values, question).value();
        QVERIFY(trend.outOfLine);
        QVERIFY(allOf(trend, question).find("out of line") != std::string::npos);
    }

    /// The true crossing lies in the 95 % interval 95 times of 100: 2,000 series, three standard errors.
    void coverage() {
        std::mt19937_64 chance(8);
        int held = 0;
        constexpr int rounds = 2000;
        for (int round = 0; round < rounds; ++round) {
            const int count = 6 + round % 10;
            const auto trend = judge::trendOf(worn(chance, count, 5.0, 0.02), asked("4", "")).value();
            const double truth = 50 - 2.0 * (count - 1);
            if (trend.looksRenewed || !trend.crossing || !trend.crossing->earliest) continue;
            const auto& crossing = *trend.crossing;
            if (*crossing.earliest <= truth && (!crossing.latest || truth <= *crossing.latest)) ++held;
        }
        const double share = static_cast<double>(held) / rounds;
        qInfo("held in %.2f %%", 100 * share);
        QVERIFY2(share > 0.935 && share < 0.975, std::to_string(share).c_str());
    }

    void wrong() {
        const auto question = asked("4", "");
        QVERIFY(!judge::trendOf({}, question));
        const auto backwards = judge::trendOf(series({{"2", "5"}, {"1", "5"}}), question);
        QVERIFY(!backwards);
        QCOMPARE(backwards.error().where, std::string("value 2"));
        auto below = series({{"2", "5"}});
        below[0].uncertainty = Decimal::whole(-1);
        QVERIFY(!judge::trendOf(below, question));
        QVERIFY(!judge::trendOf(series({{"2", "5"}}), asked("4", "", "-1")));
        auto sure = question;
        sure.confidence = std::nan("");
        QVERIFY(!judge::trendOf(series({{"2", "5"}}), sure));
        QVERIFY(!judge::theilSen({{number(std::string("100000000000000")), number(std::string("1"))},
                                  {number(std::string("0.001")), number(std::string("2"))},
                                  {number(std::string("1")), number(std::string("2"))}}));
    }
    void roundedForPeople() {
        using judge::Rounding;
        QCOMPARE(judge::rounded(14.26, Rounding::down), std::string("14.2"));
        QCOMPARE(judge::rounded(14.21, Rounding::up), std::string("14.3"));
        QCOMPARE(judge::rounded(14.3, Rounding::down), std::string("14.3"));
        QCOMPARE(judge::rounded(1234.5, Rounding::up), std::string("1235"));
        QCOMPARE(judge::rounded(0.019996), std::string("0.02"));
        QCOMPARE(judge::rounded(0), std::string("0"));
        QCOMPARE(judge::rounded(-0.5), std::string("-0.5"));
    }
};

QTEST_APPLESS_MAIN(TestTrend)
#include "tst_trend.moc"
