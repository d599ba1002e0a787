#include "base/canonical.hpp"
#include "base/parse.hpp"
#include "base/pointer.hpp"

#include <QtTest>
#include <bit>
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>
#include <random>

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
};

// Result.

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

// Parse.

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

// Canonical.

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

QTEST_APPLESS_MAIN(BaseTest)

#include "tst_base.moc"
