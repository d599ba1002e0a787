// Frames as text: there and back, byte for byte, and everything else refused.
#include "logs.hpp"
#include "watch/frames.hpp"

#include <QTest>
#include <nlohmann/json.hpp>
#include <set>

using namespace ambit;
using namespace ambit::watch;

namespace {

const std::string hash(64, 'a');
const std::string id(32, 'b');
const std::string round32(32, 'c');
const std::string statement = "{\"words\":\"Look again, \\\"please\\\".\\n\"}";
const std::string jws = "{\"signature\":\"x\"}";

struct Sample {
    Side from;
    Frame frame;
};

const std::vector<std::string>& log() {
    static const std::vector<std::string> lines = test::logOf(test::wholeRound());
    return lines;
}

std::vector<Sample> samples() {
    const File json{FileKind::json, hash, 15000};
    const File pdf{FileKind::pdf, std::string(64, 'd'), largestPdf};
    return {{Side::watcher, Hello{"Ida Example", {}}},
            {Side::watcher, Hello{"Ida Example", "0123WXYZ"}},
            {Side::walker, Welcome{"Robin “Bob” Example"}},
            {Side::walker, Round{round32, 12}},
            {Side::watcher, Have{round32, 0, 1, {}}},
            {Side::watcher, Have{round32, mostEvents, mostRoom, hash}},
            {Side::walker, Logged{round32, log()[0], {}}},
            {Side::walker, Logged{round32, log()[3], {}}},
            {Side::walker, Watching{{}}},
            {Side::walker, Watching{{"Ida Example", "Ünal \\ Example"}}},
            {Side::watcher, Say{id, statement, jws}},
            {Side::walker, Heard{id, {}}},
            {Side::walker, Heard{id, "The round is concluded."}},
            {Side::walker, Sealed{round32, hash, {json}}},
            {Side::walker, Sealed{round32, hash, {json, pdf}}},
            {Side::watcher, Offer{id, hash, {json, pdf}}},
            {Side::walker, Want{hash, 0}},
            {Side::watcher, Want{hash, largestPdf}},
            {Side::walker, Piece{hash, 7, 9, std::string("\0\xff", 2)}},
            {Side::watcher, Piece{hash, 0, largestPdf, std::string(largestPiece, 'x')}},
            {Side::walker, Gone{hash}},
            {Side::watcher, Bye{"That's all.", {}}},
            {Side::walker, Bye{"No.", ErrorCode::notFound}}};
}

Json jsonOf(const Frame& frame) {
    return Json::parse(toText(frame));
}

/// With ' for ": moc loses its way in raw strings.
std::string doubleQuoted(std::string text) {
    std::replace(text.begin(), text.end(), '\'', '"');
    return text;
}

Side other(Side side) {
    return side == Side::walker ? Side::watcher : Side::walker;
}

Frame sample(const char* kind) {
    for (const Sample& one : samples())
        if (kindOf(one.frame) == std::string(kind)) return one.frame;
    qFatal("no such sample");
}

} // namespace

class TestWatchFrames : public QObject {
    Q_OBJECT

private slots:
    void thereAndBack() {
        std::set<std::string> kinds;
        JsonTape tape;
        for (const Sample& one : samples()) {
            const std::string text = toText(one.frame);
            QVERIFY(text.size() <= largestFrame);
            QCOMPARE(canonicalJson(Json::parse(text)), text);
            const auto read = frameFrom(text, one.from, tape);
            QVERIFY2(read, read ? "" : (text.substr(0, 200) + toText(read.error())).c_str());
            QCOMPARE(read->index(), one.frame.index());
            QCOMPARE(toText(*read), text);
            kinds.insert(kindOf(one.frame));
        }
        QCOMPARE(kinds.size(), std::variant_size_v<Frame>);
    }

    // Two devices of different age speak it: a change here is another version.
    void writtenForm() {
        QCOMPARE(toText(sample("hello")), doubleQuoted("{'kind':'hello','name':'Ida Example','version':1}"));
        QCOMPARE(toText(Have{round32, 7, 64, hash}),
                 doubleQuoted("{'kind':'have','last':'" + hash + "','room':64,'round':'" + round32 +
                              "','upTo':7}"));
        QCOMPARE(toText(Logged{round32, log()[3], {}}),
                 doubleQuoted("{'event':") + log()[3] +
                     doubleQuoted(",'kind':'event','round':'" + round32 + "'}"));
        QCOMPARE(toText(Piece{hash, 7, 9, std::string("\0\xff", 2)}),
                 doubleQuoted("{'bytes':'AP8','from':7,'kind':'piece','sha256':'" + hash + "','size':9}"));
        QCOMPARE(toText(Sealed{round32, hash, {{FileKind::json, hash, 3}, {FileKind::pdf, hash, 4}}}),
                 doubleQuoted("{'files':[{'kind':'json','sha256':'" + hash +
                              "','size':3},{'kind':'pdf','sha256':'" + hash +
                              "','size':4}],'kind':'sealed','recordSha256':'" + hash + "','round':'" +
                              round32 + "'}"));
        QCOMPARE(toText(Bye{"No.", ErrorCode::notFound}),
                 doubleQuoted("{'code':'not found','kind':'bye','why':'No.'}"));
    }

    void anEventIsTheLogsBytes() {
        for (const std::string& line : log()) {
            const auto read = frameFrom(toText(Logged{round32, line, {}}), Side::walker);
            QVERIFY(read);
            QCOMPARE(std::get<Logged>(*read).json, line);
            QCOMPARE(canonicalJson(round::toJson(std::get<Logged>(*read).event)), line);
        }
    }

    void everyFieldIsNeededAndNoOther() {
        const std::set<std::string> optional{"word", "last", "why", "code"};
        for (const Sample& one : samples()) {
            const Json json = jsonOf(one.frame);
            for (const auto& [name, value] : json.items()) {
                const bool mayLack =
                    optional.contains(name) && !(name == "why" && kindOf(one.frame) == std::string("bye"));
                Json without = json;
                without.erase(name);
                const auto read = frameFrom(canonicalJson(without), one.from);
                QVERIFY2(mayLack == read.has_value(),
                         (std::string(kindOf(one.frame)) + " without " + name).c_str());
                if (!read) QCOMPARE(read.error().where, '/' + name);
            }
            Json more = json;
            more["extra"] = 1;
            const auto read = frameFrom(canonicalJson(more), one.from);
            QVERIFY2(!read, kindOf(one.frame));
            QCOMPARE(read.error().where, std::string("/extra"));
        }
    }

    void everyFieldHasItsType() {
        for (const Sample& one : samples()) {
            const Json json = jsonOf(one.frame);
            for (const auto& [name, value] : json.items()) {
                for (const Json& bad :
                     {Json(nullptr), Json(true), Json(1.5), Json(-1), Json(Json::array({1})), Json::object(),
                      Json("\x01"), Json("\xC2\x85"), Json(""), Json(std::string(200000, 'x'))}) {
                    Json changed = json;
                    changed[name] = bad;
                    const auto read = frameFrom(canonicalJson(changed), one.from);
                    QVERIFY2(!read,
                             (std::string(kindOf(one.frame)) + ' ' + name + " as " + bad.dump().substr(0, 40))
                                 .c_str());
                }
            }
        }
    }

    void onlyItsSideMaySendIt() {
        const std::set<std::string> both{"want", "piece", "gone", "bye"};
        for (const Sample& one : samples()) {
            const auto read = frameFrom(toText(one.frame), other(one.from));
            const std::string kind = kindOf(one.frame);
            QVERIFY2(read.has_value() == both.contains(kind), kind.c_str());
            if (!read) QCOMPARE(read.error().code, ErrorCode::refused);
        }
    }

    void refused_data() {
        QTest::addColumn<QByteArray>("kind");
        QTest::addColumn<QByteArray>("pointer");
        QTest::addColumn<QByteArray>("value");
        const auto row = [](const char* kind, const char* pointer, const QByteArray& value) {
            QTest::addRow("%s %s %.30s", kind, pointer, value.constData())
                << QByteArray(kind) << QByteArray(pointer) << value;
        };
        const auto text = [](std::size_t length, char c = 'x') {
            return QByteArray::fromStdString('"' + std::string(length, c) + '"');
        };
        row("hello", "/name", text(201));
        row("hello", "/word", text(8, 'O'));
        row("hello", "/word", text(8, 'a'));
        row("hello", "/word", text(7, 'A'));
        row("hello", "/word", text(9, 'A'));
        row("hello", "/version", "\"1\"");
        row("round", "/events", "0");
        row("round", "/events", "200001");
        row("round", "/round", text(31, 'a'));
        row("round", "/round", text(33, 'a'));
        row("round", "/round", text(32, 'A'));
        row("have", "/upTo", "200001");
        row("have", "/room", "0");
        row("have", "/room", "1025");
        row("have", "/last", text(64, 'a')); // upTo is 0
        row("event", "/event/seq", "0");
        row("event", "/event/kind", "\"flown\"");
        row("event", "/event/plan/0", "{\"go\":\"a\",\"settle\":\"b\"}");
        row("watching", "/names", "[\"\"]");
        row("watching", "/names", "[1]");
        row("say", "/id", text(64, 'a'));
        row("say", "/statement", "\"no object\"");
        row("say", "/statement", "\"{\\\"a\\\": 1}\"");
        row("say", "/statement", "\"{\\\"b\\\":1,\\\"a\\\":1}\"");
        row("say", "/statement", "\"{\\\"a\\\":1}{}\"");
        row("say", "/statement", "\"[[[[[[[[[]]]]]]]]]\"");
        row("say", "/statement", text(32769));
        row("say", "/jws", text(16385));
        row("heard", "/why", text(1001));
        row("sealed", "/files", "[]");
        row("sealed", "/files/0/kind", "\"pdf\"");
        row("sealed", "/files/0/kind", "\"exe\"");
        row("sealed", "/files/0/size", "0");
        row("sealed", "/files/0/size", "16777217");
        row("sealed", "/files/0/more", "1");
        row("offer", "/files/1/kind", "\"json\"");
        row("offer", "/files/1/size", "134217729");
        row("offer", "/files/2", "{\"kind\":\"pdf\",\"sha256\":\"a\",\"size\":1}");
        row("want", "/from", "134217729");
        row("want", "/sha256", text(64, 'A'));
        row("piece", "/bytes", "\"AP8=\"");
        row("piece", "/bytes", "\"AP9\"");
        row("piece", "/bytes", "\"A P8\"");
        row("piece", "/bytes", "\"AAAA\""); // beyond the end
        row("piece", "/size", "134217729");
        row("piece", "/bytes", text(131076, 'A'));
        row("bye", "/code", "\"fine\"");
        row("bye", "/why", text(1001));
    }
    void refused() {
        QFETCH(QByteArray, kind);
        QFETCH(QByteArray, pointer);
        QFETCH(QByteArray, value);
        for (const Sample& one : samples()) {
            if (kindOf(one.frame) != kind.toStdString()) continue;
            Json json = jsonOf(one.frame);
            json[Json::json_pointer(pointer.toStdString())] = Json::parse(value.toStdString());
            const auto read = frameFrom(canonicalJson(json), one.from);
            QVERIFY(!read);
            const std::string field = pointer.toStdString().substr(0, std::size_t(pointer.indexOf('/', 1)));
            QVERIFY2(read.error().where.starts_with(field), toText(read.error()).c_str());
            return;
        }
        QFAIL("no such kind");
    }

    void wrongText_data() {
        QTest::addColumn<QByteArray>("text");
        const QByteArray good = R"({"kind":"hello","name":"Ida Example","version":1})";
        QTest::addRow("nothing") << QByteArray();
        QTest::addRow("space") << good + " ";
        QTest::addRow("two") << good + good;
        QTest::addRow("order") << QByteArray(R"({"name":"Ida Example","kind":"hello","version":1})");
        QTest::addRow("twice") << QByteArray(R"({"kind":"hello","kind":"hello","name":"I","version":1})");
        QTest::addRow("list") << "[" + good + "]";
        QTest::addRow("text") << QByteArray("\"hello\"");
        QTest::addRow("escape") << QByteArray(R"({"kind":"h\u0065llo","name":"Ida","version":1})");
        QTest::addRow("number") << QByteArray(R"({"kind":"hello","name":"Ida","version":1.0})");
        QTest::addRow("not UTF-8") << QByteArray("{\"kind\":\"hello\",\"name\":\"\xff\",\"version\":1}");
        QTest::addRow("kind") << QByteArray(R"({"kind":"stop"})");
        QTest::addRow("no kind") << QByteArray(R"({"version":1})");
        QTest::addRow("kind's type") << QByteArray(R"({"kind":1})");
        QTest::addRow("deep") << QByteArray(R"({"kind":"bye","why":)") + QByteArray(100000, '[') +
                                     QByteArray(100000, ']') + "}";
        QTest::addRow("nine deep") << QByteArray(R"({"kind":"bye","why":[[[[[[[[]]]]]]]]})");
        QTest::addRow("large") << QByteArray(R"({"kind":"bye","why":")") + QByteArray(262144, 'x') + "\"}";
    }
    void wrongText() {
        QFETCH(QByteArray, text);
        for (const Side side : {Side::walker, Side::watcher})
            QVERIFY(!frameFrom(std::string_view(text.constData(), std::size_t(text.size())), side));
    }

    void everyHalfFrameIsRefused() {
        for (const Sample& one : samples()) {
            const std::string text = toText(one.frame);
            const std::size_t step = text.size() > 5000 ? 997 : 1;
            for (std::size_t length = 0; length < text.size(); length += step)
                QVERIFY(!frameFrom(std::string_view(text).substr(0, length), one.from));
        }
    }

    void largestAndOneMore() {
        // An event of exactly the largest frame, and one byte more: a plan of many steps.
        round::Planned planned{"why", {}};
        for (int i = 0; i < 32; ++i)
            planned.plan.emplace_back(walk::Go{std::string(8000, 'x')});
        planned.plan.emplace_back(walk::Go{"x"});
        const auto frame = [&] {
            return toText(Logged{round32, canonicalJson(round::toJson(round::Event{2, {}, planned})), {}});
        };
        planned.plan.back() = walk::Go{std::string(1 + largestFrame - frame().size(), 'x')};
        QCOMPARE(frame().size(), largestFrame);
        QVERIFY(frameFrom(frame(), Side::walker));
        planned.why = "more";
        QCOMPARE(frame().size(), largestFrame + 1);
        QVERIFY(!frameFrom(frame(), Side::walker));
    }

    void anotherVersionIsNamed() {
        const auto read = frameFrom(R"({"kind":"hello","voice":{},"version":2})", Side::watcher);
        QVERIFY(!read); // not canonical
        const auto later = frameFrom(R"({"kind":"hello","version":2,"voice":{}})", Side::watcher);
        QVERIFY(!later);
        QCOMPARE(later.error().code, ErrorCode::unsupported);
        QCOMPARE(later.error().where, std::string("/version"));
        QVERIFY(later.error().what.find("version 2") != std::string::npos);
        QCOMPARE(frameFrom(R"({"kind":"welcome","version":0})", Side::walker).error().code,
                 ErrorCode::unsupported);
    }

    /// Events have no version of their own on the way: a later one's are known by what isn't known here.
    void anEventOfANewerWalkerIsSaidToBeOne() {
        const auto refused = [](const char* kind, bool more) {
            Json event{{"at", "2026-06-20T05:30:00.000Z"}, {"kind", kind}, {"seq", 2}};
            if (more) event["zeal"] = true;
            const Json frame{{"event", event}, {"kind", "event"}, {"round", std::string(32, 'a')}};
            const auto read = frameFrom(frame.dump(), Side::walker);
            return read ? Error() : read.error();
        };
        QVERIFY(refused("resumed", false).what.empty());
        for (const auto& [error, what] :
             {std::pair(refused("smelt", false), "This kind of event is not known: smelt."),
              std::pair(refused("resumed", true), "This field is not known.")}) {
            QCOMPARE(error.what.c_str(),
                     ("This Ambit can't read the walker's next event. " + std::string(what)).c_str());
            QCOMPARE(error.remedy.c_str(), "The walker's device may be newer: bring both up to date.");
        }
    }

    void aReasonIsFitForPeople() {
        const auto why = [](const std::string& text) {
            const auto read = frameFrom(toText(Bye{text, {}}), Side::walker);
            return read ? std::get<Bye>(*read).why : "refused: " + toText(read.error());
        };
        QCOMPARE(why("Plain — “so”."), std::string("Plain — “so”."));
        QCOMPARE(why("a\x01\x1b[31mb\x7f\xff\xc3"), std::string("a[31mb"));
        QCOMPARE(why(""), std::string("No reason given."));
        QCOMPARE(why("\x02"), std::string("No reason given."));
        std::string longOne;
        for (int i = 0; i < 999; ++i)
            longOne += "é";
        QCOMPARE(why(longOne).size(), std::size_t(1000));
        QCOMPARE(why('x' + longOne).size(), std::size_t(999)); // no half letter
    }

    void everyCodeHasAWord() {
        for (const ErrorCode code : {ErrorCode::syntax, ErrorCode::invalid, ErrorCode::refused,
                                     ErrorCode::notFound, ErrorCode::conflict, ErrorCode::signature,
                                     ErrorCode::passphrase, ErrorCode::storage, ErrorCode::unsupported}) {
            const auto read = frameFrom(toText(Bye{"why", code}), Side::watcher);
            QVERIFY(read);
            QVERIFY(std::get<Bye>(*read).code == code);
        }
    }

    // What damage makes of a frame is refused, or says the same as its text; nothing crashes.
    void randomDamage() {
        std::mt19937 random(20261126);
        int taken = 0;
        for (int i = 0; i < 20000; ++i) {
            const auto all = samples();
            const Sample& one = all[random() % all.size()];
            std::string text = toText(one.frame);
            if (text.size() > 5000) continue;
            for (auto n = 1 + random() % 3; n > 0; --n) {
                const std::size_t at = random() % text.size();
                switch (random() % 4) {
                case 0:
                    text[at] = static_cast<char>(random());
                    break;
                case 1:
                    text.erase(at, 1 + random() % 8);
                    break;
                case 2:
                    text.insert(at, text.substr(random() % text.size(), random() % 12));
                    break;
                default:
                    text[at] = "0123456789abcdef\"{}[]:,"[random() % 23];
                }
                if (text.empty()) text = "x";
            }
            const auto read = frameFrom(text, one.from);
            if (!read) continue;
            ++taken;
            QCOMPARE(toText(*read), text);
        }
        QVERIFY(taken > 100); // the damage isn't always fatal: the comparison has been made
    }
};

QTEST_APPLESS_MAIN(TestWatchFrames)
#include "tst_watch_frames.moc"
