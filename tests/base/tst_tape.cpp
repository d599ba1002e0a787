// The tape against the parser and the writer: it takes exactly what parseJson reads and canonicalJson writes
// back the same, and says the same of it.
#include "airframe/read.hpp"
#include "base/canonical.hpp"
#include "base/files.hpp"
#include "base/tape.hpp"
#include "fleet/fleet.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>
#include <random>

using namespace ambit;

namespace {

bool sameValue(JsonView view, const Json& json) {
    if (!view || view.source() != canonicalJson(json)) return false;
    switch (json.type()) {
    case Json::value_t::object: {
        if (!view.isObject() || view.size() != json.size()) return false;
        std::size_t count = 0;
        for (const JsonView::Member member : view.members()) {
            const std::string name(member.name);
            if (!json.contains(name) || !sameValue(member.value, json[name])) return false;
            if (view[name].source() != member.value.source()) return false;
            ++count;
        }
        return count == json.size() && !view["\x01 no such name"];
    }
    case Json::value_t::array: {
        if (!view.isList() || view.size() != json.size()) return false;
        std::size_t count = 0;
        for (const JsonView one : view.elements())
            if (!sameValue(one, json[count++])) return false;
        return count == json.size() && !view.at(count);
    }
    case Json::value_t::string: {
        const auto& text = json.get_ref<const std::string&>();
        return view.isText() && view.text() == text && view.isPlain() == isPlainText(text);
    }
    case Json::value_t::boolean:
        return view.isFlag() && view.flag() == json.get<bool>();
    case Json::value_t::number_integer:
    case Json::value_t::number_unsigned: {
        const bool fits = !json.is_number_unsigned() || json.get<std::uint64_t>() <= std::uint64_t{INT64_MAX};
        return view.kind() == JsonView::Kind::number &&
               (fits ? view.integer() == json.get<std::int64_t>() : !view.integer());
    }
    case Json::value_t::number_float:
        return view.kind() == JsonView::Kind::number && !view.integer();
    default:
        return view.kind() == JsonView::Kind::null;
    }
}

/// 1: both take it, 0: both refuse it, -1: they differ.
int agreed(std::string_view text, const ParseLimits& limits = {}) {
    static JsonTape tape; // its room is used again and again
    const auto parsed = parseJson(text, limits);
    const bool takes = parsed && canonicalJson(*parsed) == text;
    const JsonView view = tape.read(text, limits);
    if (static_cast<bool>(view) != takes) return -1;
    if (takes && !sameValue(view, *parsed)) return -1;
    return takes ? 1 : 0;
}

const std::vector<std::string>& records() {
    static const std::vector<std::string> all = [] {
        std::vector<std::string> made;
        std::vector<fleet::Description> descriptions;
        for (const char* name :
             {"/demo-aircraft/helicopter/airframe.json", "/demo-aircraft/aeroplane/airframe.json"}) {
            const std::string path = std::string(AMBIT_ROOT) + name;
            descriptions.push_back({airframe::readFrom(path).value(), readFile(path).value()});
        }
        fleet::Plan plan;
        plan.aircraft = 2;
        plan.years = 1;
        plan.records = 200;
        const auto fleet = fleet::Fleet::of(plan, descriptions).value();
        (void)fleet::makeAll(fleet, 1, [&](const fleet::Machine&, std::string&& json) -> Result<void> {
            made.push_back(std::move(json));
            return {};
        });
        return made;
    }();
    return all;
}

using Random = std::mt19937;

std::size_t below(Random& random, std::size_t most) {
    return random() % most;
}

/// One thing done to a text, such as damage or another program might.
std::string changed(std::string text, Random& random) {
    static const char* const pieces[] = {"\"",
                                         "\\",
                                         "\\u0041",
                                         "\\u001f",
                                         "\\u001F",
                                         "\\n",
                                         "\\u000a",
                                         "\\/",
                                         "\\\"",
                                         "\\ud800",
                                         "\x7f",
                                         "\xc2\x85",
                                         "\xc3\xa9",
                                         "\xed\xa0\x80",
                                         "\xf0\x9f\x98\x80",
                                         "\xff",
                                         "1",
                                         "-0",
                                         "0",
                                         "1.0",
                                         "1e3",
                                         "1e+21",
                                         "9007199254740993",
                                         "9007199254740992",
                                         "0.1",
                                         "-",
                                         "00",
                                         "18446744073709551616",
                                         "{",
                                         "}",
                                         "[",
                                         "]",
                                         "{\"a\":1}",
                                         "[]",
                                         ",",
                                         ":",
                                         " ",
                                         "\n",
                                         "\t",
                                         "true",
                                         "null",
                                         "nul",
                                         "false",
                                         "\xef\xbb\xbf",
                                         "\"a\":1,",
                                         "\\u0000",
                                         "\\ud83d\\ude00",
                                         "\xef\xbf\xbf"};
    const std::size_t at = below(random, text.size());
    switch (below(random, 8)) {
    case 0: // a bit
        text[at] = static_cast<char>(text[at] ^ (1 << below(random, 8)));
        break;
    case 1: // cut off
        text.resize(at);
        break;
    case 2: // something taken out
        text.erase(at, 1 + below(random, 4));
        break;
    case 3: { // something put where a value, a name or a digit begins
        const std::size_t mark = text.find_first_of(":,[{\"0", at);
        text.insert(mark == std::string::npos ? at : mark + 1, pieces[below(random, std::size(pieces))]);
        break;
    }
    case 4: // something put anywhere
        text.insert(at, pieces[below(random, std::size(pieces))]);
        break;
    case 5: { // a number or a text in another's place
        const std::size_t from = text.find(':', at);
        const std::size_t to = text.find_first_of(",}", from);
        if (to != std::string::npos)
            text.replace(from + 1, to - from - 1, pieces[below(random, std::size(pieces))]);
        break;
    }
    case 6: { // two members change places, or one stands twice
        const std::size_t first = text.find(",\"", at);
        const std::size_t second = text.find(",\"", first + 1);
        const std::size_t third = text.find(",\"", second + 1);
        if (first == std::string::npos || second == std::string::npos || third == std::string::npos) break;
        const std::string a = text.substr(first, second - first);
        const std::string b = text.substr(second, third - second);
        text.replace(first, third - first, below(random, 2) == 0 ? b + a : a + a + b);
        break;
    }
    default: { // nested deeper, to either side of the limit
        const std::size_t mark = text.find(':', at);
        const std::size_t end = text.find_first_of(",}", mark);
        if (end == std::string::npos) break;
        const std::size_t deep = 14 + below(random, 14);
        text.replace(mark + 1, end - mark - 1, std::string(deep, '[') + std::string(deep, ']'));
    }
    }
    return text;
}

} // namespace

class TapeTest : public QObject {
    Q_OBJECT

private slots:
    static void everyRecordOfAFleet() {
        QCOMPARE(records().size(), std::size_t{200});
        for (const std::string& record : records())
            QCOMPARE(agreed(record), 1);
    }

    static void whatIsDoneToThem() {
        Random random(20261126);
        std::size_t taken = 0;
        std::size_t refused = 0;
        for (int turn = 0; turn < 20000; ++turn) {
            // Short ones mostly: a change in them touches more.
            std::string text = records()[below(random, records().size())];
            const std::size_t size = 40 + below(random, 2000);
            if (turn % 10 != 0 && text.size() > size) {
                const std::size_t begin = text.find('{', below(random, text.size() - 1));
                const std::size_t end = text.find('}', begin);
                if (end != std::string::npos) text = text.substr(begin, end + 1 - begin);
            }
            const std::size_t changes = below(random, 3);
            for (std::size_t i = 0; i < changes; ++i)
                if (!text.empty()) text = changed(text, random);
            const int both = agreed(text);
            if (both < 0) qWarning("%s", text.c_str());
            QVERIFY(both >= 0);
            (both == 1 ? taken : refused) += 1;
        }
        QVERIFY(taken > 2000);
        QVERIFY(refused > 2000);
    }

    static void smallTexts_data() {
        QTest::addColumn<QByteArray>("text");
        QTest::addColumn<bool>("takes");
        const auto row = [](const QByteArray& text, bool takes) {
            QTest::addRow("%s", text.toPercentEncoding(" {}[]\":,\\").constData()) << text << takes;
        };
        for (const char* good : {"{}",
                                 "[]",
                                 "null",
                                 "true",
                                 "\"\"",
                                 "0",
                                 "-1",
                                 "4.5",
                                 "1e-7",
                                 "1e+21",
                                 "9007199254740992",
                                 "100000000000000000000",
                                 "[1,[2],{}]",
                                 "{\"a\":1,\"b\":2}",
                                 "{\"\":1}",
                                 "{\"a\":1,\"aa\":2}",
                                 "\"\\u0000\"",
                                 "\"\\b\\t\\n\\f\\r\\\"\\\\\"",
                                 "\"/\"",
                                 "\"\x7f\"",
                                 "\"\xc2\x80\"",
                                 "{\"\\n\":1,\"\\r\":2}",
                                 "{\"\xf0\x9f\x98\x80\":1,\"\xef\xac\xb3\":2}",
                                 "\"0123456\\\"89012345678\\n\""})
            row(good, true);
        for (const char* bad : {"",
                                " {}",
                                "{} ",
                                "{ }",
                                "[1, 2]",
                                "{\"a\":1,\"a\":2}",
                                "{\"b\":1,\"a\":2}",
                                "-0",
                                "01",
                                "1.0",
                                "+1",
                                "1e3",
                                "1E+21",
                                "0.10",
                                ".5",
                                "-",
                                "9007199254740993",
                                "1e999",
                                "\"\\/\"",
                                "\"\\u0041\"",
                                "\"\\u000A\"",
                                "\"\\u000a\"",
                                "\"\\u001F\"",
                                "\"\\ud800\"",
                                "\"\\u007f\"",
                                "\"\n\"",
                                "\"\xff\"",
                                "\"\xc0\x80\"",
                                "\"\xed\xa0\x80\"",
                                "\"",
                                "\"\\",
                                "\"\\u00",
                                "[1,]",
                                "[,1]",
                                "{\"a\"}",
                                "{\"a\":}",
                                "{1:2}",
                                "nulls",
                                "tru",
                                "\xef\xbb\xbf{}",
                                "{\"\xef\xac\xb3\":1,\"\xf0\x9f\x98\x80\":2}",
                                "{\"\\r\":1,\"\\n\":2}"})
            row(bad, false);
        row(QByteArray("\"a\0b\"", 5), false);
        row(QByteArray("{}\0", 3), false);
    }
    static void smallTexts() {
        QFETCH(QByteArray, text);
        QFETCH(bool, takes);
        QCOMPARE(agreed({text.constData(), static_cast<std::size_t>(text.size())}), takes ? 1 : 0);
    }

    static void limits() {
        for (const int depth : {1, 4, 23, 24, 25}) {
            const std::string nested = std::string(static_cast<std::size_t>(depth), '[') +
                                       std::string(static_cast<std::size_t>(depth), ']');
            QCOMPARE(agreed(nested), depth <= 24 ? 1 : 0);
            QCOMPARE(agreed(nested, {.bytes = 64, .depth = 4}), depth <= 4 ? 1 : 0);
        }
        QCOMPARE(agreed(R"("12345678")", {.bytes = 10, .depth = 4}), 1);
        QCOMPARE(agreed(R"("123456789")", {.bytes = 10, .depth = 4}), 0);
    }

    static void fromATree() {
        JsonTape tape;
        const auto good = tape.write({{"b", 1}, {"a", "text"}});
        QVERIFY(good);
        QCOMPARE(good->source(), std::string_view(R"({"a":"text","b":1})"));
        const auto bad = tape.write({{"a", {{"b", Json::array({1, 1.0})}}}});
        QVERIFY(!bad);
        QCOMPARE(bad.error().where, std::string("/a/b/1"));
    }

    static void nothingThere() {
        const JsonView none;
        QVERIFY(!none);
        QVERIFY(none.source().empty() && none.text().empty() && !none.integer() && !none.flag());
        QVERIFY(none["a"].size() == 0 && !none.at(0) && !none.isPlain());
        for (const JsonView one : none.elements())
            QVERIFY2(false, std::string(one.source()).c_str());
    }
};

QTEST_APPLESS_MAIN(TapeTest)
#include "tst_tape.moc"
