#include "base/canonical.hpp"
#include "base/date.hpp"
#include "base/decimal.hpp"
#include "base/encoding.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"
#include "base/parse.hpp"
#include "base/pointer.hpp"
#include "base/time.hpp"

#include <QtTest>
#include <bit>
#include <cmath>
#include <filesystem>
#include <limits>
#include <nlohmann/json.hpp>
#include <random>
#include <sys/stat.h>

using namespace ambit;
using namespace std::string_literals;

namespace {

QByteArray bytes(const std::string& text) {
    return QByteArray::fromStdString(text);
}

/// The canonical form of a text, or its error.
std::string canonical(const std::string& text) {
    const auto json = parseJson(text);
    return json ? canonicalJson(*json) : toText(json.error());
}

std::string whereOf(const auto& result) {
    return result ? "read" : result.error().where;
}

} // namespace

class BaseTest : public QObject {
    Q_OBJECT

private slots:
    void errorsOnOneLine();
    void errorCodes();
    void parseRefuses_data();
    void parseRefuses();
    void parseTakes();
    void parseLimits();
    void utf8();
    void plainText();
    void pointers();
    void canonicalNumbers_data();
    void canonicalNumbers();
    void canonicalNumbersComeBack();
    void canonicalSample();
    void canonicalNames();
    void canonicalStrings();
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
    void hashes();
    void base64_data();
    void base64();
    void base64OfAnyLength();
    void base64Refused_data();
    void base64Refused();
    void base64UrlHasOneTextForAValue();
    void filesRoundTrip();
    void filesRefused();
    void failedWriteKeepsTheOldFile();
};

// --- result
// ------------------------------------------------------------------------------------------------------

void BaseTest::errorsOnOneLine() {
    QCOMPARE(toText(Error{ErrorCode::invalid, "It is bent.", "/a", "Mend it."}),
             "It is bent (/a). Mend it."s);
    QCOMPARE(toText(Error{ErrorCode::invalid, "It is bent", "", "Mend it."}), "It is bent. Mend it."s);
    QCOMPARE(toText(Error{ErrorCode::invalid, "It is bent.", "", ""}), "It is bent."s);
    QCOMPARE(toText(Error{ErrorCode::invalid,
                          "A\nB\x1B[2J\xC2\x9B"
                          "31m é.",
                          "", ""}),
             "A B [2J  31m é."s);
}

void BaseTest::errorCodes() {
    QCOMPARE(toText(ErrorCode::syntax), "syntax");
    QCOMPARE(toText(ErrorCode::notFound), "not found");
    QCOMPARE(toText(ErrorCode::unsupported), "unsupported");
}

// --- parse
// -------------------------------------------------------------------------------------------------------

void BaseTest::parseRefuses_data() {
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<QByteArray>("where");
    const auto row = [](const char* name, const std::string& text, const char* where) {
        QTest::newRow(name) << bytes(text) << QByteArray(where);
    };
    row("empty", "", "byte 0");
    row("byte-order mark", "\xEF\xBB\xBF{}", "byte 0");
    row("not UTF-8", "{\"a\":\"\xFF\"}", "byte 6");
    row("overlong", "\"\xC0\x80\"", "byte 1");
    row("UTF-8 surrogate", "\"\xED\xA0\x80\"", "byte 1");
    row("cut UTF-8", "\"\xE2\x82", "byte 1");
    row("name twice", R"({"a":1,"a":2})", "/a");
    row("name twice by an escape", R"({"a":1,"\u0061":2})", "/a");
    row("name twice deep down", R"([0,{"b":[{"c":1},{"d":1,"d":1}]}])", "/1/b/1/d");
    row("name with a slash twice", R"({"x/y":{"~":1,"~":1}})", "/x~1y/~0");
    row("empty name twice", R"({"":1,"":2})", "/");
    row("overflow", "1e400", "");
    row("overflow in a list", "[[1],[1,-1e400]]", "/1/1");
    row("overflow of an integer", "[" + std::string(400, '9') + "]", "/0");
    row("lone high surrogate", R"(["\uD800"])", "byte 8");
    row("lone low surrogate", R"(["\uDC00"])", "byte 7");
    row("control character", "[\"a\nb\"]", "byte 3");
    row("NUL between", "[1,\0 2]"s, "byte 3");
    row("NUL after", "[1]\0"s, "byte 3");
    row("more after", "[1] 2", "byte 4");
    row("cut", "{\"a\":", "byte 5");
    row("comment", "/**/1", "byte 0");
    row("trailing comma", "[1,]", "byte 3");
    row("hexadecimal", "0x10", "byte 1");
    row("plus", "+1", "byte 0");
    row("NaN", "NaN", "byte 0");
    row("point without digits", "1.", "byte 2");
    row("single quotes", "'a'", "byte 0");
}

void BaseTest::parseRefuses() {
    QFETCH(QByteArray, text);
    QFETCH(QByteArray, where);
    const auto json = parseJson(text.toStdString());
    QVERIFY(!json);
    QCOMPARE(json.error().code, ErrorCode::syntax);
    QVERIFY(json.error().what.ends_with('.'));
    QCOMPARE(bytes(json.error().where), where);
}

void BaseTest::parseTakes() {
    QCOMPARE(canonical(" [1, {\"b\" : null, \"a\": true}]\r\n\t"), R"([1,{"a":true,"b":null}])"s);
    QCOMPARE(canonical(R"("\uD834\uDD1E\u0000")"), "\"\xF0\x9D\x84\x9E\\u0000\""s);
    QCOMPARE(canonical(R"([{"a":1},{"a":2}])"), R"([{"a":1},{"a":2}])"s);
    QCOMPARE(canonical(R"({"a":{"a":{"a":1}}})"), R"({"a":{"a":{"a":1}}})"s);
    QCOMPARE(canonical("-0"), "0"s);
    QCOMPARE(canonical("1e-400"), "0"s);
}

void BaseTest::parseLimits() {
    const auto nested = [](int depth) {
        return std::string(static_cast<std::size_t>(depth), '[') +
               std::string(static_cast<std::size_t>(depth), ']');
    };
    QVERIFY(parseJson(nested(24)));
    QCOMPARE(whereOf(parseJson(nested(3), {100, 2})), "/0/0"s);
    QCOMPARE(whereOf(parseJson(R"({"a":[1,{"b":{}}]})", {100, 3})), "/a/1/b"s);
    QVERIFY(parseJson(R"({"a":[1,{"b":{}}]})", {100, 4}));
    QVERIFY(!parseJson("[]", {100, 0}));
    QVERIFY(parseJson("1", {100, 0}));
    QVERIFY(parseJson("[1]", {3, 2}));
    QVERIFY(!parseJson("[1] ", {3, 2}));
    QVERIFY(!parseJson(std::string(2'000'000, '[')));
}

void BaseTest::utf8() {
    for (const char* good :
         {"", "a", "é", "€", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF", "\xEF\xBF\xBF", "\xED\x9F\xBF"}) {
        QVERIFY2(isUtf8(good), good);
    }
    for (const char* bad : {"\x80", "\xC0\x80", "\xC1\xBF", "\xC2", "\xE0\x80\x80", "\xE0\x9F\xBF",
                            "\xED\xA0\x80", "\xED\xBF\xBF", "\xF0\x80\x80\x80", "\xF0\x8F\xBF\xBF",
                            "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "a\xE2\x82", "\xE2\x82\x61"}) {
        QVERIFY(!isUtf8(bad));
    }
}

void BaseTest::plainText() {
    for (const char* good : {"", "a\nb", "é € 𝄞", "\xC2\xA0", "\xEF\xBF\xBD"})
        QVERIFY2(isPlainText(good), good);
    for (const char* bad :
         {"\t", "\r", "\x1B", "\x7F", "\xC2\x80", "\xC2\x85", "\xC2\x9F", "\xEF\xB7\x90", "\xEF\xB7\xAF",
          "\xEF\xBF\xBE", "\xEF\xBF\xBF", "\xF0\x9F\xBF\xBE", "\xF4\x8F\xBF\xBF", "\xFF"}) {
        QVERIFY(!isPlainText(bad));
    }
    QVERIFY(!isPlainText(std::string_view("\0", 1)));
}

void BaseTest::pointers() {
    QCOMPARE(pointerTo("", "a/b~c"), "/a~1b~0c"s);
    QCOMPARE(pointerTo("/x", std::size_t{10}), "/x/10"s);
    QCOMPARE(pointerTo("/x", ""), "/x/"s);
}

// --- canonical
// ---------------------------------------------------------------------------------------------------

/// RFC 8785, appendix B (from memory), by the bits of the double.
void BaseTest::canonicalNumbers_data() {
    QTest::addColumn<quint64>("bits");
    QTest::addColumn<QByteArray>("text");
    const auto row = [](quint64 bits, const char* text) { QTest::newRow(text) << bits << QByteArray(text); };
    QTest::newRow("minus nothing") << quint64{0x8000000000000000} << QByteArray("0");
    row(0x0000000000000000, "0");
    row(0x0000000000000001, "5e-324");
    row(0x8000000000000001, "-5e-324");
    row(0x7fefffffffffffff, "1.7976931348623157e+308");
    row(0xffefffffffffffff, "-1.7976931348623157e+308");
    row(0x4340000000000000, "9007199254740992");
    row(0xc340000000000000, "-9007199254740992");
    row(0x4430000000000000, "295147905179352830000");
    row(0x44b52d02c7e14af5, "9.999999999999997e+22");
    row(0x44b52d02c7e14af6, "1e+23");
    row(0x44b52d02c7e14af7, "1.0000000000000001e+23");
    row(0x444b1ae4d6e2ef4e, "999999999999999700000");
    row(0x444b1ae4d6e2ef4f, "999999999999999900000");
    row(0x444b1ae4d6e2ef50, "1e+21");
    row(0x3eb0c6f7a0b5ed8c, "9.999999999999997e-7");
    row(0x3eb0c6f7a0b5ed8d, "0.000001");
    row(0x41b3de4355555553, "333333333.3333332");
    row(0x41b3de4355555554, "333333333.33333325");
    row(0x41b3de4355555555, "333333333.3333333");
    row(0x41b3de4355555556, "333333333.3333334");
    row(0x41b3de4355555557, "333333333.33333343");
    row(0xbecbf647612f3696, "-0.0000033333333333333333");
    row(0x43143ff3c1cb0959, "1424953923781206.2");
}

void BaseTest::canonicalNumbers() {
    QFETCH(quint64, bits);
    QFETCH(QByteArray, text);
    QCOMPARE(bytes(canonicalNumber(std::bit_cast<double>(bits))), text);
}

void BaseTest::canonicalNumbersComeBack() {
    std::mt19937_64 random(8785); // NOLINT: the same numbers every time
    for (int i = 0; i < 200'000; ++i) {
        const double value = std::bit_cast<double>(random());
        if (!std::isfinite(value)) continue;
        const std::string text = canonicalNumber(value);
        QVERIFY2(std::strtod(text.c_str(), nullptr) == value, text.c_str());
    }
}

/// The example of RFC 8785, 3.2.2 (from memory but for the numbers).
void BaseTest::canonicalSample() {
    const std::string text = R"({
  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
  "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
  "literals": [null, true, false]
})";
    QCOMPARE(canonical(text), R"({"literals":[null,true,false],)"
                              R"("numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],)"
                              R"("string":"€$\u000f\nA'B\"\\\\\"/"})"s);
    QCOMPARE(canonical("[333333333.33333329,1E30,4.50,2e-3,1e-27]"),
             "[333333333.3333333,1e+30,4.5,0.002,1e-27]"s);
}

/// The order of RFC 8785, 3.2.3: by UTF-16 units, so that what needs surrogates comes before U+FB33.
void BaseTest::canonicalNames() {
    const std::string text =
        R"({"\u20ac":"Euro Sign","\r":"Carriage Return","\ufb33":"Hebrew Letter Dalet With Dagesh",)"
        R"("1":"One","\ud83d\ude00":"Emoji: Grinning Face","\u0080":"Control",)"
        R"("\u00f6":"Latin Small Letter O With Diaeresis"})";
    QCOMPARE(canonical(text),
             "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\xC2\x80\":\"Control\","
             "\"ö\":\"Latin Small Letter O With Diaeresis\",\"€\":\"Euro Sign\","
             "\"😀\":\"Emoji: Grinning Face\",\"\xEF\xAC\xB3\":\"Hebrew Letter Dalet With Dagesh\"}"s);
    QCOMPARE(canonical(R"({"ab":1,"a":2,"":3,"b":4})"), R"({"":3,"a":2,"ab":1,"b":4})"s);
}

void BaseTest::canonicalStrings() {
    QCOMPARE(canonical(R"("\b\t\n\f\r\u0000\u001f\u007f\u2028/")"),
             "\"\\b\\t\\n\\f\\r\\u0000\\u001f\x7F\xE2\x80\xA8/\""s);
    QCOMPARE(canonical("[]"), "[]"s);
    QCOMPARE(canonical("{}"), "{}"s);
}

// --- decimal
// -----------------------------------------------------------------------------------------------------

void BaseTest::decimals_data() {
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

void BaseTest::decimals() {
    QFETCH(QByteArray, text);
    QFETCH(bool, good);
    const auto decimal = Decimal::parse(text.toStdString());
    QCOMPARE(decimal.has_value(), good);
    if (!good) return;
    QCOMPARE(bytes(decimal->text()), text);
    QCOMPARE(decimal->approximate(), text.toDouble());
}

void BaseTest::decimalsCompare_data() {
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

void BaseTest::decimalsCompare() {
    QFETCH(QByteArray, small);
    QFETCH(QByteArray, large);
    const auto a = Decimal::parse(small.toStdString());
    const auto b = Decimal::parse(large.toStdString());
    QVERIFY(a && b);
    QVERIFY(*a<*b&& * b> * a && *a != *b);
    QVERIFY(*Decimal::parse("24.50") == *Decimal::parse("24.5"));
    QVERIFY(*Decimal::parse("0.00") == Decimal());
}

void BaseTest::decimalsAdd_data() {
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

void BaseTest::decimalsAdd() {
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

void BaseTest::decimalsTooLarge() {
    const auto most = Decimal::parse("999999999999999").value();
    QVERIFY(!plus(most, Decimal::whole(1)));
    QVERIFY(!minus(Decimal::whole(-1), most));
    QVERIFY(!plus(most, Decimal::parse("0.5").value())); // 16 digits
    const auto error = plus(most, Decimal::whole(1)).error();
    QVERIFY(error.what.ends_with('.') && error.remedy.ends_with('.'));
    QCOMPARE(error.where, "999999999999999 and 1"s);
}

void BaseTest::quotients() {
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

// --- dates
// -------------------------------------------------------------------------------------------------------

/// Every day of 400 years, a whole turn of the calendar, against Qt's own.
void BaseTest::datesOfFourHundredYears() {
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
void BaseTest::daysThatAreNone() {
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

void BaseTest::datesEnd() {
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

// --- time
// --------------------------------------------------------------------------------------------------------

void BaseTest::instants_data() {
    QTest::addColumn<qint64>("ms");
    QTest::addColumn<QByteArray>("text");
    const auto row = [](qint64 ms, const char* text) { QTest::newRow(text) << ms << QByteArray(text); };
    row(0, "1970-01-01T00:00:00.000Z");
    row(951'782'400'000, "2000-02-29T00:00:00.000Z");
    row(1'781'933'400'001, "2026-06-20T05:30:00.001Z");
    row(4'107'542'399'999, "2100-02-28T23:59:59.999Z");
    row(253'402'300'799'999, "9999-12-31T23:59:59.999Z");
}

void BaseTest::instants() {
    QFETCH(qint64, ms);
    QFETCH(QByteArray, text);
    QCOMPARE(bytes(toText(Instant{ms})), text);
    const auto parsed = parseInstant(text.toStdString());
    QVERIFY(parsed);
    QCOMPARE(qint64{parsed->ms}, ms);
}

void BaseTest::instantsRefused_data() {
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

void BaseTest::instantsRefused() {
    QVERIFY(!parseInstant(QTest::currentDataTag()));
}

void BaseTest::localInstants_data() {
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

void BaseTest::localInstants() {
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

void BaseTest::localInstantsRefused_data() {
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

void BaseTest::localInstantsRefused() {
    QVERIFY(!parseLocalInstant(QTest::currentDataTag()));
}

void BaseTest::everyDayComesBack() {
    constexpr std::int64_t day = 86'400'000;
    for (std::int64_t ms = 12'345'678; ms < 253'402'300'800'000; ms += 37 * day) {
        const auto parsed = parseInstant(toText(Instant{ms}));
        QVERIFY(parsed && parsed->ms == ms);
    }
}

// --- hash, encoding
// ----------------------------------------------------------------------------------------------

/// FIPS 180-4 examples.
void BaseTest::hashes() {
    QCOMPARE(sha256Hex(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"s);
    QCOMPARE(sha256Hex("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"s);
    QCOMPARE(sha256Hex(std::string(1'000'000, 'a')),
             "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"s);
}

/// RFC 4648, section 10, and the letters that differ.
void BaseTest::base64_data() {
    QTest::addColumn<QByteArray>("value");
    QTest::addColumn<QByteArray>("plain");
    QTest::addColumn<QByteArray>("url");
    const auto row = [](const char* value, const char* plain, const char* url) {
        QTest::newRow(plain) << QByteArray(value) << QByteArray(plain) << QByteArray(url);
    };
    row("", "", "");
    row("f", "Zg==", "Zg");
    row("fo", "Zm8=", "Zm8");
    row("foo", "Zm9v", "Zm9v");
    row("foob", "Zm9vYg==", "Zm9vYg");
    row("fooba", "Zm9vYmE=", "Zm9vYmE");
    row("foobar", "Zm9vYmFy", "Zm9vYmFy");
    row("\xFB\xFF\xFE", "+//+", "-__-");
}

void BaseTest::base64() {
    QFETCH(QByteArray, value);
    QFETCH(QByteArray, plain);
    QFETCH(QByteArray, url);
    QCOMPARE(bytes(toBase64(value.toStdString())), plain);
    QCOMPARE(bytes(toBase64Url(value.toStdString())), url);
    QCOMPARE(fromBase64(plain.toStdString()).value_or("refused"), value.toStdString());
    QCOMPARE(fromBase64Url(url.toStdString()).value_or("refused"), value.toStdString());
}

/// Against Qt's own; long ones are written by a path of their own.
void BaseTest::base64OfAnyLength() {
    QRandomGenerator random(7);
    for (int size = 0; size < 200; ++size) {
        QByteArray value(size, Qt::Uninitialized);
        for (char& byte : value)
            byte = static_cast<char>(random.generate());
        QCOMPARE(bytes(toBase64(value.toStdString())), value.toBase64());
        QCOMPARE(bytes(toBase64Url(value.toStdString())),
                 value.toBase64(QByteArray::Base64UrlEncoding | QByteArray::OmitTrailingEquals));
    }
}

void BaseTest::base64Refused_data() {
    QTest::addColumn<bool>("url");
    QTest::addColumn<QByteArray>("text");
    for (const char* bad : {"Zg", "Zg=", "Zg===", "Zh==", "Zm9=", "Zm8", "Zm8==", "=", "====", "Z===",
                            "Zg==Zg==", "Zm9v\n", " Zm9v", "Zm 9v", "-__-", "Zm9vZ", "Z=g=", "Zm9\xC3"}) {
        QTest::newRow(bad) << false << QByteArray(bad);
    }
    for (const char* bad :
         {"Z", "Zh", "Zm9", "Zg==", "Zm8=", "+//+", "Zm9vZ", "Zm 9v", "Zm9v\n", "Zm9v.", "Zm9\xC3"})
        QTest::newRow(bad) << true << QByteArray(bad);
}

void BaseTest::base64Refused() {
    QFETCH(bool, url);
    QFETCH(QByteArray, text);
    QVERIFY(!(url ? fromBase64Url(text.toStdString()) : fromBase64(text.toStdString())));
}

void BaseTest::base64UrlHasOneTextForAValue() {
    static constexpr std::string_view letters =
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    int taken = 0;
    for (const char a : letters) {
        for (const char b : letters) {
            const std::string text{a, b};
            const auto value = fromBase64Url(text);
            if (!value) continue;
            ++taken;
            QCOMPARE(toBase64Url(*value), text);
        }
    }
    QCOMPARE(taken, 256);
    QVERIFY(!fromBase64Url(std::string("Zm\0v", 4)));
}

// --- files
// -------------------------------------------------------------------------------------------------------

void BaseTest::filesRoundTrip() {
    const QTemporaryDir folder;
    const std::filesystem::path path = folder.filePath("round é.json").toStdString();
    std::string all;
    for (int byte = 0; byte < 256; ++byte)
        all += static_cast<char>(byte);
    for (const std::string& content : {all, std::string(), std::string(3'000'000, 'x')}) {
        QVERIFY(writeFile(path, content));
        QCOMPARE(readFile(path).value_or("unreadable"), content);
    }
    struct stat status {};
    QVERIFY(writeFile(path, "key", true) && ::stat(path.c_str(), &status) == 0);
    QCOMPARE(status.st_mode & 0777U, 0600U);
    QCOMPARE(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size(), 1); // nothing left beside
    QVERIFY(writeFile(path, "123") && readFile(path, 3) && !readFile(path, 2));
}

void BaseTest::filesRefused() {
    const QTemporaryDir folder;
    const auto path = [&](const char* name) {
        return std::filesystem::path(folder.filePath(name).toStdString());
    };
    const auto missing = readFile(path("none"));
    QVERIFY(!missing && missing.error().code == ErrorCode::notFound &&
            missing.error().where == path("none").string());
    const auto isFolder = readFile(folder.path().toStdString());
    QVERIFY(!isFolder && isFolder.error().code == ErrorCode::storage);
    QVERIFY(::mkfifo(path("pipe").c_str(), 0600) == 0);
    QVERIFY(!readFile(path("pipe"))); // and doesn't wait for a writer
    QVERIFY(!readFile("/dev/zero"));
    const auto nowhere = writeFile(path("no/such/file"), "x");
    QVERIFY(!nowhere && nowhere.error().where == path("no/such/file").string());
}

void BaseTest::failedWriteKeepsTheOldFile() {
    const QTemporaryDir folder;
    const std::filesystem::path path = folder.filePath("taken").toStdString();
    std::filesystem::create_directories(path / "inside"); // can't be replaced by a file
    QVERIFY(!writeFile(path, "x"));
    QVERIFY(std::filesystem::is_directory(path / "inside"));
    QCOMPARE(QDir(folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot).size(), 1);
}

QTEST_APPLESS_MAIN(BaseTest)
#include "tst_base.moc"
