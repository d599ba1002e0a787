#include "base/date.hpp"
#include "base/decimal.hpp"
#include "base/time.hpp"

#include <QtTest>
#include <limits>
#include <random>

using namespace ambit;
using namespace std::string_literals;

namespace {

QByteArray bytes(const std::string& text) {
    return QByteArray::fromStdString(text);
}

std::string whereOf(const auto& result) {
    return result ? "read" : result.error().where;
}

} // namespace

class NumbersTest : public QObject {
    Q_OBJECT

private slots:
    void decimals_data();
    void decimals();
    void decimalsCompare_data();
    void decimalsCompare();
    void decimalsAdd_data();
    void decimalsAdd();
    void decimalsTooLarge();
    void quotients();
    void datesOfFourHundredYears();
    void daysThatAreNone();
    void datesEnd();
    void instants_data();
    void instants();
    void instantsRefused_data();
    void instantsRefused();
    void localInstants_data();
    void localInstants();
    void localInstantsRefused_data();
    void localInstantsRefused();
    void everyDayComesBack();
};

// Decimal.

void NumbersTest::decimals_data() {
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<bool>("good");
    for (const char* good : {"0", "1", "-1", "24.5", "24.50", "0.5", "0.0", "-0.5", "100", "123456789012345",
                             "12345678901234.5", "0.00000000000001", "-999999999999999"}) {
        QTest::newRow(good) << QByteArray(good) << true;
    }
    for (const char* bad : {"",
                            "-",
                            ".",
                            "-0",
                            "-0.0",
                            "-0.00",
                            "+1",
                            "01",
                            "00",
                            "-01",
                            ".5",
                            "5.",
                            "1e3",
                            "1E3",
                            "1,5",
                            " 1",
                            "1 ",
                            "1.2.3",
                            "0x1",
                            "1234567890123456",
                            "0.000000000000001",
                            "--1",
                            "1-",
                            "NaN",
                            "٣"}) {
        QTest::newRow(bad) << QByteArray(bad) << false;
    }
    QTest::newRow("with a NUL") << QByteArray("1\0", 2) << false;
}

void NumbersTest::decimals() {
    QFETCH(QByteArray, text);
    QFETCH(bool, good);
    const auto decimal = Decimal::parse(text.toStdString());
    QCOMPARE(decimal.has_value(), good);
    if (!good) return;
    QCOMPARE(bytes(decimal->text()), text);
    QCOMPARE(decimal->approximate(), text.toDouble());
}

void NumbersTest::decimalsCompare_data() {
    QTest::addColumn<QByteArray>("small");
    QTest::addColumn<QByteArray>("large");
    const auto row = [](const char* small, const char* large) {
        QTest::newRow((QByteArray(small) + " < " + large).constData())
            << QByteArray(small) << QByteArray(large);
    };
    row("24.49", "24.5");
    row("-24.5", "-24.49");
    row("-0.1", "0");
    row("0", "0.00000000000001");
    row("-1", "1");
    row("9.9", "10");
    row("-1.5", "-1.25");
    row("-0.5", "0.25");
    row("99999999999998.9", "99999999999999");
    row("0.99999999999999", "1");
    row("-999999999999999", "-0.00000000000001");
}

void NumbersTest::decimalsCompare() {
    QFETCH(QByteArray, small);
    QFETCH(QByteArray, large);
    const auto a = Decimal::parse(small.toStdString());
    const auto b = Decimal::parse(large.toStdString());
    QVERIFY(a && b);
    QVERIFY(*a<*b&& * b> * a && *a != *b);
    QVERIFY(*Decimal::parse("24.50") == *Decimal::parse("24.5"));
    QVERIFY(*Decimal::parse("0.00") == Decimal());
}

void NumbersTest::decimalsAdd_data() {
    QTest::addColumn<QByteArray>("a");
    QTest::addColumn<QByteArray>("b");
    QTest::addColumn<QByteArray>("sum");
    const auto row = [](const char* a, const char* b, const char* sum) {
        QTest::newRow((QByteArray(a) + " + " + b).constData())
            << QByteArray(a) << QByteArray(b) << QByteArray(sum);
    };
    row("0.1", "0.2", "0.3"); // where binary floats would err
    row("1000.0", "100", "1100.0");
    row("1", "-1", "0");
    row("1.00", "-1", "0.00");
    row("-0.05", "0.1", "0.05");
    row("-0.5", "-0.75", "-1.25");
    row("0.00000000000001", "9", "9.00000000000001");
    row("999999999999998", "1", "999999999999999");
    row("-999999999999999", "999999999999999", "0");
}

void NumbersTest::decimalsAdd() {
    QFETCH(QByteArray, a);
    QFETCH(QByteArray, b);
    QFETCH(QByteArray, sum);
    const auto one = Decimal::parse(a.toStdString()).value();
    const auto other = Decimal::parse(b.toStdString()).value();
    QCOMPARE(bytes(plus(one, other)->text()), sum);
    QCOMPARE(bytes(plus(other, one)->text()), sum);
    const auto there = Decimal::parse(sum.toStdString());
    QVERIFY(there && *there == *plus(one, other)); // what is written is what is read
    QVERIFY(*minus(*there, other) == one && *minus(*there, one) == other);
    QCOMPARE(Decimal::whole(-24).text(), "-24"s);
}

void NumbersTest::decimalsTooLarge() {
    const auto most = Decimal::parse("999999999999999").value();
    QVERIFY(!plus(most, Decimal::whole(1)));
    QVERIFY(!minus(Decimal::whole(-1), most));
    QVERIFY(!plus(most, Decimal::parse("0.5").value())); // 16 digits
    const auto error = plus(most, Decimal::whole(1)).error();
    QVERIFY(error.what.ends_with('.') && error.remedy.ends_with('.'));
    QCOMPARE(error.where, "999999999999999 and 1"s);
}

void NumbersTest::quotients() {
    const auto compare = [](const char* a, const char* b, const char* c, const char* d) {
        const auto decimal = [](const char* text) { return Decimal::parse(text).value(); };
        const auto order = compareQuotients(decimal(a), decimal(b), decimal(c), decimal(d));
        return std::is_lt(order) ? -1 : std::is_gt(order) ? 1 : 0;
    };
    QCOMPARE(compare("1", "3", "0.33333333333333", "1"), 1);
    QCOMPARE(compare("1", "3", "2", "6.0"), 0);
    QCOMPARE(compare("-1", "3", "0", "7"), -1);
    QCOMPARE(compare("-1", "3", "-1", "2"), 1);
    QCOMPARE(compare("999999999999999", "0.00000000000001", "999999999999998", "0.00000000000001"), 1);
    QCOMPARE(compare("123456789012345", "999999999999998", "123456789012345", "999999999999999"), 1);
    std::mt19937 random(20260620); // NOLINT: the same numbers every time
    for (int i = 0; i < 20'000; ++i) {
        const auto number = [&](int least) { return least + static_cast<int>(random() % 60); };
        const int a = number(-30), b = number(1), c = number(-30), d = number(1);
        const auto order =
            compareQuotients(Decimal::whole(a), Decimal::whole(b), Decimal::whole(c), Decimal::whole(d));
        QVERIFY(order == (a * d <=> c * b));
    }
}

// Dates.

/// Every day of 400 years, a whole turn of the calendar, against Qt's own.
void NumbersTest::datesOfFourHundredYears() {
    Date date = Date::of(1799, 12, 31).value();
    QDate judge(1799, 12, 31);
    const Date first = date;
    for (int i = 0; i <= 146'097; ++i, judge = judge.addDays(1), date = date.plusDays(1).value()) {
        QCOMPARE(date.year(), judge.year());
        QCOMPARE(date.month(), judge.month());
        QCOMPARE(date.day(), judge.day());
        QCOMPARE(daysBetween(first, date), i);
        QCOMPARE(date.endOfMonth().day(), judge.daysInMonth());
        QVERIFY(Date::of(judge.year(), judge.month(), judge.day()).value() == date);
        QCOMPARE(bytes(toText(date)), judge.toString(Qt::ISODate).toLatin1());
        QVERIFY(Date::parse(toText(date)).value() == date);
        const int months = i % 1'201;
        const QDate later = QDate(judge.year(), judge.month(), 1).addMonths(months);
        const Date end = date.endOfMonthAfter(months).value();
        QCOMPARE(bytes(toText(end)),
                 QDate(later.year(), later.month(), later.daysInMonth()).toString(Qt::ISODate).toLatin1());
    }
}

/// There is a day exactly where Qt has one.
void NumbersTest::daysThatAreNone() {
    for (int year = 1600; year < 2000; ++year) {
        for (int month = 0; month <= 13; ++month) {
            for (const int day : {0, 1, 28, 29, 30, 31, 32})
                QCOMPARE(Date::of(year, month, day).has_value(), QDate::isValid(year, month, day));
        }
    }
    QVERIFY(!Date::of(0, 1, 1) && !Date::of(10'000, 1, 1) && !Date::of(2026, 257, 1));
    for (const char* bad :
         {"", "2026-6-20", "2026-06-20 ", " 2026-06-20", "2026-02-29", "1900-02-29", "20260620", "2026/06/20",
          "2026-06-31", "+026-06-20", "2026-06-2x", "0000-01-01", "-001-01-01"})
        QVERIFY2(!Date::parse(bad), bad);
    QVERIFY(Date::parse("2000-02-29") && Date::parse("0001-01-01") && Date::parse("9999-12-31"));
}

void NumbersTest::datesEnd() {
    const Date last = Date::parse("9999-12-31").value();
    const Date first = Date::parse("0001-01-01").value();
    QVERIFY(!last.plusDays(1) && !first.plusDays(-1) && !last.plusDays(INT32_MAX) &&
            !first.plusDays(INT32_MIN));
    QVERIFY(!last.endOfMonthAfter(1) && last.endOfMonthAfter(0) && !first.endOfMonthAfter(-1));
    QVERIFY(!first.endOfMonthAfter(INT_MAX));
    QCOMPARE(daysBetween(last, first), -3'652'058);
    // The day where it was read, whatever day it was in Greenwich.
    QCOMPARE(toText(Date::of(*parseLocalInstant("2026-06-20T00:30:00+02:00")).value()), "2026-06-20"s);
    QCOMPARE(toText(Date::of(*parseLocalInstant("1970-01-01T10:00:00-10:00")).value()), "1970-01-01"s);
    QVERIFY(!Date::of(LocalInstant{*parseInstant("9999-12-31T23:59:59.999Z"), 60}));
}

// Time.

void NumbersTest::instants_data() {
    QTest::addColumn<qint64>("ms");
    QTest::addColumn<QByteArray>("text");
    const auto row = [](qint64 ms, const char* text) { QTest::newRow(text) << ms << QByteArray(text); };
    row(0, "1970-01-01T00:00:00.000Z");
    row(951'782'400'000, "2000-02-29T00:00:00.000Z");
    row(1'781'933'400'001, "2026-06-20T05:30:00.001Z");
    row(4'107'542'399'999, "2100-02-28T23:59:59.999Z");
    row(253'402'300'799'999, "9999-12-31T23:59:59.999Z");
}

void NumbersTest::instants() {
    QFETCH(qint64, ms);
    QFETCH(QByteArray, text);
    QCOMPARE(bytes(toText(Instant{ms})), text);
    const auto parsed = parseInstant(text.toStdString());
    QVERIFY(parsed);
    QCOMPARE(qint64{parsed->ms}, ms);
}

void NumbersTest::instantsRefused_data() {
    QTest::addColumn<QByteArray>("text");
    for (const char* bad : {"",
                            "2026-06-20T05:30:00Z",
                            "2026-06-20T05:30:00.00Z",
                            "2026-06-20T05:30:00.0000Z",
                            "2026-06-20T05:30:00.000",
                            "2026-06-20T05:30:00.000z",
                            "2026-06-20t05:30:00.000Z",
                            "2026-06-20 05:30:00.000Z",
                            "2026-06-20T05:30:00.000+00:00",
                            "2026-06-20T05:30:00,000Z",
                            "2026-02-29T00:00:00.000Z",
                            "2100-02-29T00:00:00.000Z",
                            "2026-00-10T00:00:00.000Z",
                            "2026-13-10T00:00:00.000Z",
                            "2026-04-31T00:00:00.000Z",
                            "2026-06-00T00:00:00.000Z",
                            "2026-06-20T24:00:00.000Z",
                            "2026-06-20T05:60:00.000Z",
                            "2016-12-31T23:59:60.000Z",
                            "1969-12-31T23:59:59.999Z",
                            "02026-06-20T05:30:00.000Z",
                            "-026-06-20T05:30:00.000Z",
                            "2026-6-20T05:30:00.000Z",
                            " 2026-06-20T05:30:00.000Z",
                            "2026-06-20T05:30:00.000Z "}) {
        QTest::newRow(bad) << QByteArray(bad);
    }
}

void NumbersTest::instantsRefused() {
    QVERIFY(!parseInstant(QTest::currentDataTag()));
}

void NumbersTest::localInstants_data() {
    QTest::addColumn<QByteArray>("utc");
    QTest::addColumn<int>("offset");
    QTest::addColumn<QByteArray>("again");
    const auto row = [](const char* text, const char* utc, int offset, const char* again) {
        QTest::newRow(text) << QByteArray(utc) << offset << QByteArray(again);
    };
    row("2026-06-20T07:30:00+02:00", "2026-06-20T05:30:00.000Z", 120, "2026-06-20T07:30:00.000+02:00");
    row("2026-06-20T07:30:00.5+02:00", "2026-06-20T05:30:00.500Z", 120, "2026-06-20T07:30:00.500+02:00");
    row("2026-06-20T07:30:00.12Z", "2026-06-20T07:30:00.120Z", 0, "2026-06-20T07:30:00.120+00:00");
    row("2026-06-20T07:30:00.123+00:00", "2026-06-20T07:30:00.123Z", 0, "2026-06-20T07:30:00.123+00:00");
    row("2026-01-01T00:15:00+05:45", "2025-12-31T18:30:00.000Z", 345, "2026-01-01T00:15:00.000+05:45");
    row("2024-02-29T20:00:00-09:30", "2024-03-01T05:30:00.000Z", -570, "2024-02-29T20:00:00.000-09:30");
    row("1970-01-01T14:00:00+14:00", "1970-01-01T00:00:00.000Z", 840, "1970-01-01T14:00:00.000+14:00");
    row("1969-12-31T23:00:00-01:00", "1970-01-01T00:00:00.000Z", -60, "1969-12-31T23:00:00.000-01:00");
}

void NumbersTest::localInstants() {
    QFETCH(QByteArray, utc);
    QFETCH(int, offset);
    QFETCH(QByteArray, again);
    const auto parsed = parseLocalInstant(QTest::currentDataTag());
    QVERIFY(parsed);
    QCOMPARE(bytes(toText(parsed->at)), utc);
    QCOMPARE(parsed->offsetMinutes, offset);
    QCOMPARE(bytes(toText(*parsed)), again);
    const auto back = parseLocalInstant(toText(*parsed));
    QVERIFY(back && *back == *parsed);
}

void NumbersTest::localInstantsRefused_data() {
    QTest::addColumn<QByteArray>("text");
    for (const char* bad :
         {"", "2026-06-20T07:30:00", "2026-06-20T07:30+02:00", "2026-06-20T07:30:00.+02:00",
          "2026-06-20T07:30:00.1234+02:00", "2026-06-20T07:30:00+14:01", "2026-06-20T07:30:00-15:00",
          "2026-06-20T07:30:00+02:60", "2026-06-20T07:30:00-00:00", "2026-06-20T07:30:00+0200",
          "2026-06-20T07:30:00+02", "2026-06-20T07:30:00z", "2026-06-20T07:30:00+02:00 ",
          "1970-01-01T00:00:00+00:01", "9999-12-31T23:59:59.999-00:01", "2026-06-31T00:00:00Z"}) {
        QTest::newRow(bad) << QByteArray(bad);
    }
}

void NumbersTest::localInstantsRefused() {
    QVERIFY(!parseLocalInstant(QTest::currentDataTag()));
}

void NumbersTest::everyDayComesBack() {
    constexpr std::int64_t day = 86'400'000;
    for (std::int64_t ms = 12'345'678; ms < 253'402'300'800'000; ms += 37 * day) {
        const auto parsed = parseInstant(toText(Instant{ms}));
        QVERIFY(parsed && parsed->ms == ms);
    }
}

QTEST_APPLESS_MAIN(NumbersTest)

#include "tst_numbers.moc"
