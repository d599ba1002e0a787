// Events as JSON: there and back, and everything else refused at its pointer.
#include "rounds.hpp"

#include <QTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace ambit::round;

namespace {

const std::string hash(64, 'a');

std::vector<What> oneOfEach() {
    Settled byKey = test::sound("oil");
    byKey.by = By::key;
    const auto machine = test::machine();
    Opened bare = test::opening(machine);
    bare.position.reset();
    bare.who.certificate.clear();
    bare.counters.clear();
    Settled pictured = test::finding("oil", Severity::assess);
    pictured.photos = {{hash, "image/jpeg", 1234}, {std::string(64, 'b'), "image/png", 1}};
    return {test::opening(machine),
            bare,
            Planned{"“Nose” is wanted next.",
                    {walk::Go{"front"}, walk::Set{"rotor", "b-aft"}, walk::Settle{"oil"}}},
            StandReached{"left"},
            SettingChanged{"rotor", "b-aft"},
            test::sound("cowl-open.left"),
            test::sound("oil"),
            test::finding("oil"),
            pictured,
            test::notInspected("oil"),
            test::notInspected("oil", "MEL 79-1"),
            Reopened{"oil", "Was disturbed."},
            OpeningMade{"cowl-left"},
            OpeningClosed{"cowl-left"},
            Paused{},
            Resumed{},
            Note{"Line one\nline two — “quoted” \\ \" é 🛩"},
            StandBlocked{"left", "Ice."},
            StandFree{"left"},
            AreaMarked{3, {{"1", "-2.25"}, {"4.5", "-2.25"}, {"4.5", "0.125"}}, "Wall"},
            AreaCleared{3},
            Light{true},
            Light{false},
            Concluded{true, ""},
            Concluded{false, "Crack at the hinge."},
            Withdrawn{"Forgot the oil."},
            Signed{hash, hash, "Robin Example"},
            test::ask(1, std::string(32, 'f'), Statement::Kind::lookAgain, "oil", ""),
            test::ask(2, std::string(32, 'f'), Statement::Kind::question, "oil", "Which stick?"),
            test::ask(3, std::string(32, 'f'), Statement::Kind::remark, "", "Well seen."),
            Alone{},
            Answered{2, "The yellow one."},
            Declined{1, "Seen from the other side."},
            byKey,
            PortionBegun{{"oil", "blade.a"}},
            PortionEnded{true},
            PortionEnded{false},
            Interrupted{Interrupted::Cause::call, 95, {BackRule::From::points, 3}, {"oil"}},
            Interrupted{Interrupted::Cause::stopped, 0, {BackRule::From::start, 3}, {}},
            Interrupted{Interrupted::Cause::silent, 300, {BackRule::From::stand, 3}, {"oil", "blade.a"}},
            QuickRun{4, 9, 3, 2500, {"oil"}},
            QuickRun{4, 9, 3, 2500, {}},
            Clock{{1750000000000}},
            Night{true, true},
            Night{false, false},
            Trended{"oil",
                    "hours",
                    "2.0",
                    {{"1234.5", "5", {}, false}},
                    judge::Standing::near,
                    true,
                    {"limit in 1 to 2 h, 95 %"},
                    {},
                    {},
                    "1",
                    {},
                    "2"},
            Trended{"oil",
                    "days",
                    {},
                    {{"0", "5.5", "0.1", false, "photo"},
                     {"2", "5", "0.5", true, "ruler"},
                     {"3", "4.9", {}, false, {}}},
                    judge::Standing::within,
                    false,
                    {},
                    {},
                    {},
                    {},
                    {},
                    {}}};
}

Json jsonOf(const What& what) {
    return toJson(Event{7, {1750000000123}, what});
}

/// The value at a pointer of two tokens at most is changed by `change`; gives what the reader says.
Result<Event> changed(Json json, const std::string& pointer, const Json& value) {
    json[Json::json_pointer(pointer)] = value;
    return eventFrom(json);
}

} // namespace

class TestEvent : public QObject {
    Q_OBJECT

private slots:
    void thereAndBack() {
        std::set<std::string> kinds;
        for (const What& what : oneOfEach()) {
            const Json json = jsonOf(what);
            const auto event = eventFrom(parseJson(canonicalJson(json)).value());
            QVERIFY2(event, event ? "" : toText(event.error()).c_str());
            QCOMPARE(event->seq, 7);
            QCOMPARE(event->at.ms, 1750000000123);
            QCOMPARE(event->what.index(), what.index());
            QCOMPARE(canonicalJson(toJson(*event)), canonicalJson(json));
            kinds.insert(kindOf(what));
        }
        QCOMPARE(kinds.size(), std::variant_size_v<What>);
    }

    // Stored in logs and records: a change here breaks them all.
    void storedForm() {
        QCOMPARE(
            canonicalJson(jsonOf(test::notInspected("oil", "MEL 79-1"))),
            std::string(
                R"({"at":"2025-06-15T15:06:40.123Z","basis":"MEL 79-1","kind":"settled","outcome":"not inspected",)"
                R"("point":"oil","seq":7,"why":"Ice on the tread."})"));
        QCOMPARE(
            canonicalJson(jsonOf(Planned{"why", {walk::Go{"a"}, walk::Set{"b", "c"}, walk::Settle{"d"}}})),
            std::string(R"({"at":"2025-06-15T15:06:40.123Z","kind":"planned",)"
                        R"("plan":[{"go":"a"},{"set":"b","to":"c"},{"settle":"d"}],"seq":7,"why":"why"})"));
        QCOMPARE(canonicalJson(jsonOf(StandBlocked{"left", "Ice."})),
                 std::string(R"({"at":"2025-06-15T15:06:40.123Z","kind":"stand blocked","seq":7,)"
                             R"("stand":"left","why":"Ice."})"));
        QCOMPARE(
            canonicalJson(jsonOf(StandFree{"left"})),
            std::string(R"({"at":"2025-06-15T15:06:40.123Z","kind":"stand free","seq":7,"stand":"left"})"));
        QCOMPARE(canonicalJson(jsonOf(AreaMarked{1, {{"0", "0"}, {"2.5", "0"}, {"0", "-1"}}, "Wall"})),
                 std::string(R"({"area":1,"at":"2025-06-15T15:06:40.123Z","kind":"area marked",)"
                             R"("outline":[["0","0"],["2.5","0"],["0","-1"]],"seq":7,"why":"Wall"})"));
        QCOMPARE(canonicalJson(jsonOf(AreaCleared{1})),
                 std::string(R"({"area":1,"at":"2025-06-15T15:06:40.123Z","kind":"area cleared","seq":7})"));
        QCOMPARE(canonicalJson(jsonOf(Light{true})),
                 std::string(R"({"at":"2025-06-15T15:06:40.123Z","is":"low","kind":"light","seq":7})"));
        QCOMPARE(
            canonicalJson(jsonOf(test::ask(1, std::string(32, 'f'), Statement::Kind::lookAgain, "oil", ""))),
            std::string(
                R"({"ask":1,"at":"2025-06-15T15:06:40.123Z","jws":{"protected":"header","signature":"signature"},)"
                R"("kind":"asked","seq":7,"statement":{"at":"2025-06-15T15:06:40.500Z",)"
                R"("id":"1aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa","kind":"look again","point":"oil",)"
                R"("round":"ffffffffffffffffffffffffffffffff",)"
                R"("who":{"certificate":"FI 7","name":"Ines Example","role":"instructor"}}})"));
        QCOMPARE(
            canonicalJson(jsonOf(Answered{2, "Yes."})),
            std::string(
                R"({"ask":2,"at":"2025-06-15T15:06:40.123Z","kind":"answered","seq":7,"words":"Yes."})"));
        QCOMPARE(canonicalJson(jsonOf(Declined{1, "No."})),
                 std::string(
                     R"({"ask":1,"at":"2025-06-15T15:06:40.123Z","kind":"declined","seq":7,"why":"No."})"));
    }

    // A statement is read by itself too, when it comes from another device.
    void aStatementIsReadAsItIsSigned() {
        for (const What& what : oneOfEach()) {
            const auto* asked = std::get_if<Asked>(&what);
            if (asked == nullptr) continue;
            JsonTape tape;
            const auto json = tape.write(toJson(asked->statement));
            QVERIFY(json);
            const auto again = statementFrom(*json);
            QVERIFY(again);
            QCOMPARE(canonicalJson(toJson(*again)), std::string(json->source()));
        }
    }

    void everyFieldIsNeededAndNoOther() {
        for (const What& what : oneOfEach()) {
            const Json json = jsonOf(what);
            for (const auto& [name, value] : json.items()) {
                if (name == "value" || name == "position" || name == "basis" || name == "reasons") continue;
                if (name == "by" && std::holds_alternative<Settled>(what)) continue;
                if (name == "ahead" || name == "earliest" || name == "latest") continue;
                Json without = json;
                without.erase(name);
                const auto event = eventFrom(without);
                QVERIFY2(!event, (std::string(kindOf(what)) + " without " + name).c_str());
                QCOMPARE(event.error().where, '/' + name);
            }
            const auto event = changed(json, "/extra", 1);
            QVERIFY2(!event, kindOf(what));
            QCOMPARE(event.error().where, std::string("/extra"));
        }
    }

    void everyFieldHasItsType() {
        for (const What& what : oneOfEach()) {
            const Json json = jsonOf(what);
            for (const auto& [name, value] : json.items()) {
                for (const Json& other : {Json(nullptr), Json(true), Json(1.5), Json(Json::array({1})),
                                          Json(Json::object()), Json("\x01"), Json("")}) {
                    if (name == "certificate" && other == Json("")) continue;
                    const auto event = changed(json, '/' + name, other);
                    QVERIFY2(!event,
                             (std::string(kindOf(what)) + ' ' + name + " as " + other.dump()).c_str());
                    QVERIFY2(event.error().where.starts_with('/' + name), event.error().where.c_str());
                }
            }
        }
    }

    void refused_data() {
        QTest::addColumn<int>("kind");
        QTest::addColumn<QByteArray>("pointer");
        QTest::addColumn<QByteArray>("value");
        const auto row = [](int kind, const char* pointer, const char* value) {
            QTest::addRow("%s = %s", pointer, value) << kind << QByteArray(pointer) << QByteArray(value);
        };
        row(0, "/seq", "0");
        row(0, "/seq", "-1");
        row(0, "/seq", "1.0");
        row(0, "/seq", "18446744073709551615");
        row(0, "/at", "\"2025-06-15T15:06:40.123+00:00\"");
        row(0, "/at", "\"2025-06-15T15:06:40Z\"");
        row(0, "/kind", "\"flown\"");
        row(0, "/aircraft/colour", "\"red\"");
        row(0, "/airframe/sha256", "\"abc\"");
        row(0, "/who/role", "\"passenger\"");
        row(0, "/who/name", "\"\"");
        row(0, "/counters/0/value", "\"1e3\"");
        row(0, "/counters/0/value", "12");
        row(0, "/offsetMinutes", "841");
        row(0, "/position/latitude", "\"90.1\"");
        row(0, "/position/longitude", "\"-180.5\"");
        row(0, "/plan/0", "{\"go\":\"a\",\"settle\":\"b\"}");
        row(0, "/plan/0", "{}");
        row(8, "/class", "\"fatal\"");
        row(8, "/photos/0/type", "\"image/gif\"");
        row(8, "/photos/0/bytes", "0");
        row(8, "/photos/0/sha256", "\"AA\"");
        row(5, "/outcome", "\"fine\"");
        row(5, "/words", "\"a finding's field\"");
        row(10, "/basis", "\"\"");
        row(19, "/area", "0");
        row(19, "/area", "1001");
        row(19, "/area", "\"1\"");
        row(19, "/outline", "[[\"0\",\"0\"],[\"1\",\"0\"]]");
        row(19, "/outline", "[[\"0\",\"0\"],[\"1\",\"0\"],[\"1\"]]");
        row(19, "/outline", "[[\"0\",\"0\"],[\"1\",\"0\"],[\"1\",\"1\",\"1\"]]");
        row(19, "/outline", "[[\"0\",\"0\"],[\"1\",\"0\"],[1,1]]");
        row(19, "/outline", "[[\"0\",\"0\"],[\"1\",\"0\"],[\"1.0001\",\"1\"]]");
        row(19, "/outline", "[[\"0\",\"0\"],[\"1\",\"0\"],[\"1\",\"100.1\"]]");
        row(19, "/outline", "[[\"0\",\"0\"],[\"1\",\"0\"],[\"1\",\"1e1\"]]");
        row(21, "/is", "\"dark\"");
        row(21, "/is", "true");
        row(23, "/result", "\"airworthy\"");
        row(23, "/reasons", "\"\"");
        row(26, "/recordSha256", "\"x\"");
        row(27, "/ask", "0");
        row(27, "/ask", "1001");
        row(27, "/ask", "\"1\"");
        row(27, "/statement/round", "\"ffff\"");
        row(27, "/statement/id", "\"1AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA\"");
        row(27, "/statement/id", "\"\"");
        row(27, "/statement/kind", "\"order\"");
        row(27, "/statement/point", "\"\"");
        row(27, "/statement/words", "\"\"");
        row(27, "/statement/at", "\"yesterday\"");
        row(27, "/statement/who/role", "\"king\"");
        row(27, "/statement/ask", "1");
        row(27, "/jws/protected", "\"\"");
        row(27, "/jws/payload", "\"e30\"");
    }
    void refused() {
        QFETCH(int, kind);
        QFETCH(QByteArray, pointer);
        QFETCH(QByteArray, value);
        const Json json = jsonOf(oneOfEach()[static_cast<std::size_t>(kind)]);
        QVERIFY(eventFrom(json));
        const auto event = changed(json, pointer.toStdString(), Json::parse(value.toStdString()));
        QVERIFY(!event);
        QVERIFY2(event.error().where.starts_with(pointer.toStdString()), event.error().where.c_str());
    }

    void anOutlineHasTwentyCornersAtMost() {
        AreaMarked marked{1, {}, "Wall"};
        for (int i = 0; i < 20; ++i)
            marked.outline.push_back(cornerAt({double(i), i % 2 == 0 ? 0.0 : 1.0}));
        QVERIFY(eventFrom(jsonOf(marked)));
        marked.outline.push_back(cornerAt({10, 20}));
        QVERIFY(!eventFrom(jsonOf(marked)));
    }

    void aPlaceIsStoredToTheCentimetre() {
        QVERIFY((cornerAt({1.006, -2.5}) == Corner{"1.01", "-2.50"}));
        QVERIFY((cornerAt({-0.001, 0.05}) == Corner{"0.00", "0.05"}));
        QVERIFY((cornerAt({-0.07, -12}) == Corner{"-0.07", "-12.00"}));
        QVERIFY((outlineOf({{"1.01", "-2.50"}}) == airframe::Outline{{1.01, -2.5}}));
    }

    void theVersionIsThatOfTheKind() {
        QCOMPARE(versionOf(Note{"words"}), 1);
        QCOMPARE(versionOf(Concluded{true, ""}), 1);
        for (const What& what : {What(StandBlocked{}), What(StandFree{}), What(AreaMarked{}),
                                 What(AreaCleared{}), What(Light{})})
            QCOMPARE(versionOf(what), 2);
        for (const What& what : {What(Asked{}), What(Answered{}), What(Declined{}), What(Alone{})})
            QCOMPARE(versionOf(what), 3);
    }

    void theVersionOfWhatIsSettledIsThatOfHowItWasTold() {
        for (const What& what : {What(PortionBegun{}), What(PortionEnded{}), What(Interrupted{}),
                                 What(QuickRun{}), What(Clock{}), What(Night{})})
            QCOMPARE(versionOf(what), 4);
        Settled settled = test::sound("oil");
        QCOMPARE(versionOf(settled), 1);
        settled.by = By::key;
        QCOMPARE(versionOf(settled), 4);
        settled.unit = "L";
        QCOMPARE(versionOf(settled), 5);
    }

    void whatComesBetweenIsReadStrictly() {
        const Json cut =
            jsonOf(Interrupted{Interrupted::Cause::call, 95, {BackRule::From::points, 3}, {"oil"}});
        QVERIFY(eventFrom(cut));
        QVERIFY(!changed(cut, "/cause", "lunch"));
        QVERIFY(!changed(cut, "/seconds", -1));
        QVERIFY(!changed(cut, "/back", 0));
        QVERIFY(!changed(cut, "/back", 21));
        QVERIFY(!changed(cut, "/rule", "stand")); // then there is no number
        QVERIFY(!changed(cut, "/again", Json::array({""})));
        QVERIFY(!changed(cut, "/again", Json::array({1})));
        QVERIFY(!changed(cut, "/again", "oil"));
        const Json portion = jsonOf(PortionBegun{{"oil"}});
        QVERIFY(!changed(portion, "/points", Json::array()));
        QVERIFY(!changed(portion, "/points", Json(std::vector<std::string>(21, "oil"))));
        QVERIFY(!changed(jsonOf(PortionEnded{}), "/is", "done"));
        QVERIFY(!changed(jsonOf(QuickRun{4, 9, 3, 2500, {}}), "/points", 1));
        QVERIFY(!changed(jsonOf(Clock{}), "/satellite", "noon"));
        QVERIFY(!changed(jsonOf(Night{}), "/by", "moon"));
        QVERIFY(!changed(jsonOf(test::sound("oil")), "/by", "touch")); // said by leaving it out
    }

    void whatAStatementNeeds() {
        const std::string round(32, 'f');
        for (const auto& [kind, field] :
             {std::pair{Statement::Kind::lookAgain, "point"}, std::pair{Statement::Kind::question, "words"},
              std::pair{Statement::Kind::remark, "words"}}) {
            Json json = jsonOf(test::ask(1, round, kind, "oil", "Words."));
            QVERIFY(eventFrom(json));
            json["statement"].erase(field);
            const auto event = eventFrom(json);
            QVERIFY2(!event, toText(kind));
            QCOMPARE(event.error().where, std::string("/statement/") + field);
        }
    }

    void notAnObject() {
        QVERIFY(!eventFrom(Json::array()));
        QVERIFY(!eventFrom(Json("opened")));
        QVERIFY(!eventFrom(Json()));
    }

    void longTextsAreRefused() {
        QVERIFY(eventFrom(jsonOf(Note{std::string(8192, 'x')})));
        QVERIFY(!eventFrom(jsonOf(Note{std::string(8193, 'x')})));
    }

    void theIdIsTheFirstEventsHash() {
        const auto machine = test::machine();
        const Event first{1, {1750000000000}, test::opening(machine)};
        const std::string id = roundId(first);
        QCOMPARE(id.size(), 32U);
        QCOMPARE(id, roundId(first));
        Event later = first;
        later.at.ms += 1;
        QVERIFY(id != roundId(later));
    }
};

QTEST_APPLESS_MAIN(TestEvent)
#include "tst_event.moc"
