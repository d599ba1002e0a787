// Bad airframes: bad.json holds changes to good.json (RFC 6902), each with the pointers of all errors it must
// give, and what the first of them says where it matters.
#include "airframe/read.hpp"
#include "base/files.hpp"
#include "base/parse.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>
#include <random>
#include <set>

using namespace ambit;
using namespace std::string_literals;

namespace {

std::string fileText(const std::string& name) {
    return readFile(AMBIT_ROOT "/tests/airframe/" + name).value_or(std::string());
}

/// The errors' places, joined; "read" if there are none.
std::string placesOf(const Results<airframe::Airframe>& read) {
    if (read) return "read";
    std::set<std::string> places;
    for (const Error& error : read.error())
        places.insert(error.where.empty() ? "(whole text)" : error.where);
    std::string text;
    for (const std::string& place : places)
        text += (text.empty() ? "" : " ") + place;
    return text;
}

std::string replaced(std::string text, const std::string& what, const std::string& by) {
    const std::size_t at = text.find(what);
    return at == std::string::npos ? std::string() : text.replace(at, what.size(), by);
}

/// Does the pointer name a value, or a member that an object of the text lacks?
bool resolves(const Json& json, const std::string& where) {
    const Json::json_pointer pointer(where);
    if (json.contains(pointer)) return true;
    return !pointer.empty() && json.contains(pointer.parent_pointer()) &&
           json[pointer.parent_pointer()].is_object();
}

} // namespace

class BadAirframeTest : public QObject {
    Q_OBJECT

private slots:
    void changes_data();
    void changes();
    void texts_data();
    void texts();
    void truncatedAnywhere();
    void errorsInFileOrder();
    void atMost200Errors();
    void cycleIsNamed();
    void hostileTextsEndSoon();
    void mutations();
};

void BadAirframeTest::changes_data() {
    QTest::addColumn<int>("number");
    const Json cases = Json::parse(fileText("bad.json"));
    QVERIFY(cases.size() >= 100);
    for (std::size_t i = 0; i < cases.size(); ++i) {
        QTest::newRow(cases[i]["name"].get<std::string>().c_str()) << static_cast<int>(i);
    }
}

void BadAirframeTest::changes() {
    QFETCH(int, number);
    static const Json cases = Json::parse(fileText("bad.json"));
    static const Json good = Json::parse(fileText("good.json"));
    const Json& one = cases[static_cast<std::size_t>(number)];
    const auto read = airframe::read(good.patch(one["patch"]).dump());
    std::set<std::string> expected;
    for (const Json& where : one["expect"])
        expected.insert(where.get<std::string>());
    std::string wanted;
    for (const std::string& where : expected)
        wanted += (wanted.empty() ? "" : " ") + (where.empty() ? "(whole text)" : where);
    QCOMPARE(QByteArray::fromStdString(placesOf(read)), QByteArray::fromStdString(wanted));
    const std::string code = one.value("code", "invalid");
    if (one.contains("says"))
        QCOMPARE(read.error().front().what.c_str(), one["says"].get<std::string>().c_str());
    for (const Error& error : read.error()) {
        QCOMPARE(toText(error.code), code.c_str());
        QVERIFY(error.what.ends_with('.') && error.remedy.ends_with('.'));
    }
}

void BadAirframeTest::texts_data() {
    QTest::addColumn<QByteArray>("text");
    QTest::addColumn<QByteArray>("where");
    const std::string good = fileText("good.json");
    const auto row = [&](const char* name, const std::string& text, const char* where) {
        QTest::newRow(name) << QByteArray::fromStdString(text) << QByteArray(where);
    };
    const char* whole = "(whole text)";
    row("empty", "", whole);
    row("blank", " \n", whole);
    row("byte-order mark", "\xEF\xBB\xBF" + good, whole);
    row("UTF-16", "\xFF\xFE{\0}\0"s, whole);
    row("not UTF-8", replaced(good, "Invented for tests.", "Invented f\xFCr tests."), whole);
    row("overlong UTF-8", replaced(good, "Invented", "\xC0\xAFInvented"), whole);
    row("surrogate in UTF-8", replaced(good, "Invented", "\xED\xA0\x80Invented"), whole);
    row("lone surrogate escape", replaced(good, "Invented", "\\ud800Invented"), whole);
    row("beyond Unicode", replaced(good, "Invented", "\xF4\x90\x80\x80Invented"), whole);
    row("something after it", good + "{}", whole);
    row("a NUL after it", good + "\0"s, whole);
    row("a NUL and more after it", good + "\0{"s, whole);
    row("comment", "// x\n" + good, whole);
    row("trailing comma", replaced(good, "[\"Switches off.\"]", "[\"Switches off.\",]"), whole);
    row("single quotes", replaced(good, "\"Switches off.\"", "'Switches off.'"), whole);
    row("line end in a text", replaced(good, "Switches off.", "Switches\noff."), whole);
    row("not a number", replaced(good, "\"climbSeconds\": 14", "\"climbSeconds\": NaN"), whole);
    row("leading zero", replaced(good, "\"climbSeconds\": 14", "\"climbSeconds\": 014"), whole);
    row("overflow", replaced(good, "\"climbSeconds\": 14", "\"climbSeconds\": 1e999"), "/costs/climbSeconds");
    row("overflow in a list", replaced(good, "\"at\": [0, 4]", "\"at\": [0, -1e999]"), "/stands/0/at/1");
    row("name twice", replaced(good, "\"version\": 1,", "\"version\": 1, \"version\": 1,"), "/version");
    row("name twice deep down", replaced(good, "\"unit\": \"qt\",", "\"unit\": \"qt\", \"unit\": \"l\","),
        "/points/3/limit/unit");
    row("name twice by an escape", replaced(good, "\"version\": 1,", "\"version\": 1, \"versi\\u006fn\": 2,"),
        "/version");
    row("too deep", replaced(good, "[\"Switches off.\"]", std::string(12, '[') + std::string(12, ']')),
        "/cautions/0/0/0/0/0/0/0/0/0/0/0");
    row("far too deep", std::string(1'000'000, '['), "/0/0/0/0/0/0/0/0/0/0/0/0");
    row("too large", good + std::string(2U << 20U, ' '), whole);
}

void BadAirframeTest::texts() {
    QFETCH(QByteArray, text);
    QFETCH(QByteArray, where);
    const auto read = airframe::read(text.toStdString());
    QCOMPARE(QByteArray::fromStdString(placesOf(read)), where);
    QCOMPARE(read.error().size(), std::size_t{1});
    QCOMPARE(toText(read.error()[0].code), "syntax");
}

void BadAirframeTest::truncatedAnywhere() {
    const std::string good = fileText("good.json");
    const std::size_t end = good.rfind('}');
    for (std::size_t length = 0; length <= end; ++length) {
        const auto read = airframe::read(std::string_view(good).substr(0, length));
        QVERIFY2(!read && read.error().size() == 1 && read.error()[0].code == ErrorCode::syntax,
                 std::to_string(length).c_str());
    }
}

void BadAirframeTest::errorsInFileOrder() {
    std::string text = fileText("good.json");
    text = replaced(text, "\"version\": 1,", "\"version\": \"1\", \"zzz\": 1, \"aaa\": 1,");
    text = replaced(text, "\"level\": 0,", "");
    text = replaced(text, "\"zone\": \"nose\"", "\"zone\": \"roof\"");
    text = replaced(text, "[2, 4]", "[0, 1]");
    const auto read = airframe::read(text);
    QVERIFY(!read);
    std::vector<std::string> places;
    for (const Error& error : read.error())
        places.push_back(error.where);
    QCOMPARE(places, (std::vector<std::string>{"/version", "/zzz", "/aaa", "/stands/0/level",
                                               "/points/0/zone", "/walks/1/start"}));
}

void BadAirframeTest::atMost200Errors() {
    Json many = Json::parse(fileText("good.json"));
    for (int i = 0; i < 1000; ++i)
        many["x" + std::to_string(i)] = i;
    const auto read = airframe::read(many.dump());
    QVERIFY(!read);
    QCOMPARE(read.error().size(), std::size_t{200});
}

void BadAirframeTest::cycleIsNamed() {
    Json json = Json::parse(fileText("good.json"));
    json["points"][0]["after"] = {"tie-down-off"};
    json["points"][1]["after"] = {"oil"};
    json["points"][3]["after"] = {"arc-clear"};
    const auto read = airframe::read(json.dump());
    QVERIFY(!read);
    QCOMPARE(read.error().size(), std::size_t{1});
    const std::string& what = read.error()[0].what;
    QVERIFY2(what.find("arc-clear waits for tie-down-off waits for oil waits for arc-clear") !=
                 std::string::npos,
             what.c_str());
}

/// Files that would take for ever, or all memory, if work grew with more than their size.
void BadAirframeTest::hostileTextsEndSoon() {
    const Json good = Json::parse(fileText("good.json"));
    std::string placeholders;
    while (placeholders.size() < 1'000'000)
        placeholders += "{side}";
    Json filled = good;
    filled["points"][2]["why"] = placeholders;
    filled["points"][2]["zone"] = placeholders;
    filled["repeats"][1]["over"][0]["name"] = std::string(900'000, 'n');
    Json unknown = good;
    for (int i = 0; i < 100'000; ++i)
        unknown["x" + std::to_string(i)] = 0;
    Json circle = good;
    circle["points"] = Json::array();
    for (int i = 0; i < 500; ++i) {
        Json point = good["points"][0];
        point["id"] = "p" + std::to_string(i);
        for (int k = 0; k < 250; ++k)
            point["after"].push_back("p" + std::to_string((i + k) % 500));
        circle["points"].push_back(std::move(point));
    }
    const std::vector<std::string> texts{filled.dump(), unknown.dump(), circle.dump(),
                                         std::string(2'000'000, '{'),
                                         "[" + std::string(1'000'000, ' ') + "]"};
    for (const std::string& text : texts) {
        QElapsedTimer timer;
        timer.start();
        QVERIFY(!airframe::read(text));
        QVERIFY2(timer.elapsed() < 20'000,
                 std::to_string(timer.elapsed()).c_str()); // generous: sanitizers, busy machines
    }
}

/// Whatever is changed, the text is read or every error names a place in it.
void BadAirframeTest::mutations() {
    const std::string good = fileText("good.json");
    std::mt19937 random(20260620); // NOLINT: the same changes every time
    static constexpr std::string_view likely = "{}[]\",:0123456789.-ae\\ \n";
    const auto below = [&](std::size_t most) { return static_cast<std::size_t>(random() % most); };
    int parsed = 0;
    for (int round = 0; round < 20'000; ++round) {
        std::string text = good;
        for (std::size_t changes = 1 + below(3); changes > 0; --changes) {
            const std::size_t at = below(text.size());
            const char byte = random() % 2 == 0 ? static_cast<char>(random()) : likely[below(likely.size())];
            if (const auto kind = random() % 4; kind == 0)
                text.erase(at, 1 + below(8));
            else if (kind == 1)
                text.insert(at, 1, byte);
            else
                text[at] = byte;
        }
        const auto read = airframe::read(text);
        if (read) continue;
        QVERIFY(!read.error().empty());
        if (read.error()[0].code == ErrorCode::syntax) continue;
        ++parsed;
        const Json json = Json::parse(text);
        for (const Error& error : read.error())
            QVERIFY2(resolves(json, error.where), toText(error).c_str());
    }
    QVERIFY2(parsed > 1'000, "too few of the mutations are JSON to tell much");
}

QTEST_APPLESS_MAIN(BadAirframeTest)
#include "tst_airframe_bad.moc"
