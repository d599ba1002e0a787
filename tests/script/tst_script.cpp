// Scripts: read, refused by line, played, and played again over what is there already.
#include "../archive/archives.hpp"
#include "record/asked.hpp"
#include "script/player.hpp"

#include <QFile>
#include <QTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace ambit::script;
using test::House;

namespace {

const std::string open =
    R"({"do":"open","aircraft":{"registration":"OX-ABC","serial":"0042"},"walk":"daily",)"
    R"("who":{"name":"Robin Example","role":"pilot","certificate":""},"counters":{"hours":"12.5"},"at":"2026-06-20T07:30:00+02:00"})"
    "\n";

const std::string wholeDay = open + R"(
{"do":"follow","until":"oil"}
{"do":"sound","point":"oil","value":"4.5","after":20}
{"do":"pause"}
{"do":"note","words":"A visitor."}
{"do":"resume","after":300}
{"do":"zone","zone":"nose"}
{"do":"follow","until":"last-look"}
{"do":"reopen","point":"oil","why":"The visitor leant on it."}
{"do":"go","stand":"left"}
{"do":"made","opening":"cowl-left"}
{"do":"finding","point":"oil","words":"Low.","class":"grounds","value":"3.9"}
{"do":"closed","opening":"cowl-left"}
{"do":"follow"}
{"do":"conclude","result":"not fit","reasons":"Oil."}
{"do":"sign"}
)";

std::vector<std::string> logOf(const archive::Archive& archive) {
    std::vector<std::string> lines;
    const auto rounds = archive.rounds();
    if (!rounds || rounds->empty()) return lines;
    const auto events = archive.events(rounds->front().id).value();
    for (const auto& event : events)
        lines.push_back(canonicalJson(toJson(event)));
    return lines;
}

std::string name(const House& house, const char* point) {
    return "“" + house.machine.point(point)->name + "”";
}

/// Plays the text in the house's archive; gives the log, or the error as text.
Result<std::vector<std::string>> play(const House& house, const std::string& text) {
    const auto script = readScript(text, {});
    if (!script) return tl::unexpected(script.error());
    auto archive = house.open();
    auto round = walkScript(archive, house.machine, test::machineText(), *script, {});
    if (!round) return tl::unexpected(round.error());
    return logOf(archive);
}

} // namespace

class TestScript : public QObject {
    Q_OBJECT

private slots:
    void refusedByLine_data() {
        QTest::addColumn<QByteArray>("line");
        const auto row = [](const char* line) { QTest::newRow(line) << QByteArray(line); };
        row(R"({"do":"fly"})");
        row(R"({"go":"left"})");
        row(R"({"do":"go"})");
        row(R"({"do":"go","stand":1})");
        row(R"({"do":"go","stand":"left","soon":true})");
        row(R"({"do":"go","stand":"left","after":-1})");
        row(R"({"do":"go","stand":"left","after":1.5})");
        row(R"({"do":"go","stand":"left","after":"4"})");
        row(R"({"do":"go","stand":"left"} {})");
        row(R"({"do":"go","do":"go","stand":"left"})");
        row(R"(go left)");
        row(R"(["go"])");
        row(R"({"do":"sound","point":"oil","value":4.5})");
        row(R"({"do":"sound","point":"oil","words":"fine"})");
        row(R"({"do":"finding","point":"oil","words":"Low."})");
        row(R"({"do":"finding","point":"oil","words":"Low.","class":"bad"})");
        row(R"({"do":"finding","point":"oil","words":"Low.","class":"grounds","photos":["../secret.jpg"]})");
        row(R"({"do":"finding","point":"oil","words":"Low.","class":"grounds","photos":["/etc/passwd"]})");
        row(R"({"do":"finding","point":"oil","words":"Low.","class":"grounds","photos":"a.jpg"})");
        row(R"({"do":"sound","point":"oil","value":"4.5","renewed":false})");
        row(R"({"do":"sound","point":"oil","value":"4.5","unit":""})");
        row(R"({"do":"sound","point":"oil","value":"4.5","valueFrom":"guess"})");
        row(R"({"do":"sound","point":"oil","value":"4.5","measurements":[{"what":"distance"}]})");
        row(R"({"do":"sound","point":"oil","photos":["../secret.jpg"]})");
        row(R"({"do":"not-inspected","point":"oil","why":"Dark.","unit":"L"})");
        row(R"({"do":"not-inspected","point":"oil"})");
        row(R"({"do":"conclude","result":"airworthy"})");
        row(R"({"do":"blocked","stand":"left"})");
        row(R"({"do":"free","stand":"left","why":"x"})");
        row(R"({"do":"marked","why":"Wall"})");
        row(R"({"do":"marked","why":"Wall","outline":[["0","0"],["1","0"],[1,1]]})");
        row(R"({"do":"marked","why":"Wall","outline":[["0","0"],["1","0"],["1"]]})");
        row(R"({"do":"cleared","area":"1"})");
        row(R"({"do":"light","is":"dim"})");
        row(R"({"do":"asked","kind":"order","who":{"name":"A","role":"pilot","certificate":""}})");
        row(R"({"do":"asked","kind":"remark","words":"Well."})");
        row(R"({"do":"asked","kind":"remark","words":"Well.","who":{"name":"A","role":"pilot","certificate":""},"key":"a.pem"})");
        row(R"({"do":"asked","kind":"remark","words":"Well.","who":{"name":"A","role":"pilot","certificate":""},"passphrase":"a.txt"})");
        row(R"({"do":"asked","kind":"remark","words":"Well.","who":{"name":"A","role":"pilot","certificate":""},"key":"../a.pem","passphrase":"a.txt"})");
        row(R"({"do":"asked","kind":"look again","who":{"name":"A","role":"pilot","certificate":""}})");
        row(R"({"do":"answer","words":"Yes."})");
        row(R"({"do":"decline","ask":1})");
        row(R"({"do":"follow","values":{"oil":4}})");
        row(open.c_str());
    }
    void refusedByLine() {
        QFETCH(QByteArray, line);
        const auto script = readScript(open + "\n" + line.toStdString() + "\n{\"do\":\"pause\"}\n", {});
        QVERIFY(!script);
        QVERIFY2(script.error().where.starts_with("line 3"), script.error().where.c_str());
    }

    void openedFirstSignedLast() {
        QVERIFY(!readScript("", {}));
        QCOMPARE(readScript("{\"do\":\"pause\"}\n" + open, {}).error().where, std::string("line 1"));
        QCOMPARE(readScript(open + "{\"do\":\"sign\"}\n{\"do\":\"pause\"}", {}).error().where,
                 std::string("line 3"));
        QVERIFY(readScript(open + "{\"do\":\"sign\"}", {}));
        std::string late = open;
        late.insert(late.size() - 2, ",\"after\":4");
        QCOMPARE(readScript(late, {}).error().where, std::string("line 1"));
    }

    void againstTheRoundsRules_data() {
        QTest::addColumn<QByteArray>("line");
        const auto row = [](const char* line) { QTest::newRow(line) << QByteArray(line); };
        row(R"({"do":"go","stand":"roof"})");
        row(R"({"do":"answer","ask":1,"words":"Nothing was asked."})");
        row(R"({"do":"decline","ask":1,"why":"Nothing was asked."})");
        row(R"({"do":"zone","zone":"roof"})");
        row(R"({"do":"set","setting":"rotor","to":"b-aft"})");
        row(R"({"do":"sound","point":"oil","value":"5"})");
        row(R"({"do":"follow","until":"propeller"})");
        row(R"({"do":"follow","values":{"propeller":"4"}})");
        row(R"({"do":"follow"})"); // the oil is measured and no value given
        row(R"({"do":"conclude","result":"fit"})");
        row(R"({"do":"blocked","stand":"roof","why":"x"})");
        row(R"({"do":"free","stand":"left"})");
        row(R"({"do":"marked","why":"Wall","outline":[["0","0"],["1","0"]]})");
        row(R"({"do":"marked","why":"Wall","outline":[["-9","-9"],["9","-9"],["9","9"],["-9","9"]]})");
        row(R"({"do":"cleared","area":1})");
        row(R"({"do":"light","is":"good"})");
        row(R"({"do":"finding","point":"oil","words":"Low.","class":"grounds","photos":["none.jpg"]})");
    }
    void againstTheRoundsRules() {
        QFETCH(QByteArray, line);
        const House house;
        const auto played = play(house, open + "{\"do\":\"note\",\"words\":\"x\"}\n" + line.toStdString());
        QVERIFY(!played);
        QVERIFY2(played.error().where.starts_with("line 3"), played.error().where.c_str());
    }

    void timeIsTheScriptsOwn() {
        const House house;
        const auto log = play(house, open + R"({"do":"go","stand":"left"}
{"do":"sound","point":"arc-clear"}
{"do":"set","setting":"rotor","to":"b-aft"}
{"do":"note","words":"x","after":7})");
        QVERIFY(log);
        const char* times[] = {"05:30:00", "05:30:04", "05:30:14", "05:30:44", "05:30:51"};
        QCOMPARE(log->size(), std::size(times));
        for (std::size_t i = 0; i < log->size(); ++i)
            QVERIFY2((*log)[i].find(times[i]) != std::string::npos, (*log)[i].c_str());
    }

    void theSameScriptGivesTheSameLog() {
        const House house;
        const House other;
        const auto log = play(house, wholeDay);
        QVERIFY2(log, log ? "" : toText(log.error()).c_str());
        QVERIFY(log->size() > 30);
        QVERIFY(log->back().find("\"not fit\"") != std::string::npos);
        QVERIFY(*log == *play(other, wholeDay));
    }

    void overAnyPartOfItsOwnLogItGoesOn() {
        const House whole;
        const auto log = play(whole, wholeDay);
        QVERIFY(log);
        for (std::size_t count = 1; count <= log->size(); count += 5) {
            const House house;
            {
                auto archive = house.open();
                QVERIFY(house.addAircraft(archive));
                const std::string id = whole.open().rounds()->front().id;
                for (std::size_t i = 0; i < count; ++i)
                    QVERIFY(archive.append(id, round::eventFrom(parseJson((*log)[i]).value()).value()));
            }
            const auto again = play(house, wholeDay);
            QVERIFY2(again, again ? "" : toText(again.error()).c_str());
            QVERIFY(*again == *log);
        }
    }

    void whatDiffersOrdersTheRestAnew() {
        const House house;
        const auto log = play(house, open + R"(
{"do":"go","stand":"front"}
{"do":"blocked","stand":"right","why":"A trolley."}
{"do":"marked","outline":[["-3","6"],["3","6"],["3","8"],["-3","8"]],"why":"Wall"}
{"do":"light","is":"low"}
{"do":"follow","values":{"oil":"5"}}
{"do":"free","stand":"right"}
{"do":"cleared","area":1}
{"do":"light","is":"good"}
{"do":"follow"}
{"do":"conclude","result":"fit"})");
        QVERIFY2(log, log ? "" : toText(log.error()).c_str());
        int planned = 0;
        for (std::size_t i = 0; i < log->size(); ++i) {
            if ((*log)[i].find("\"kind\":\"planned\"") == std::string::npos) continue;
            ++planned;
            QVERIFY(i > 0);
        }
        QVERIFY(planned >= 2);
        const auto has = [&](const char* part) {
            return std::any_of(log->begin(), log->end(),
                               [&](const std::string& line) { return line.find(part) != std::string::npos; });
        };
        QVERIFY(has("“Right side” can't be used: "));
        QVERIFY(has("“Right side” can be used again: "));
        QVERIFY(has("\"kind\":\"area cleared\""));
        QVERIFY(has("\"is\":\"low\""));
    }

    void whatIsAskedIsAnsweredDeclinedAndSettledAgain() {
        const House house;
        const std::string who = R"("who":{"name":"Ines Example","role":"instructor","certificate":"FI 7"})";
        const std::string text = open + R"(
{"do":"follow","until":"blade.b"}
{"do":"asked","kind":"look again","point":"blade.a","words":"Feel it.",)" +
                                 who + R"(}
{"do":"asked","kind":"question","words":"Which fuel?",)" +
                                 who + R"(}
{"do":"asked","kind":"remark","words":"Take your time.",)" +
                                 who + R"(}
{"do":"asked","kind":"look again","point":"oil",)" +
                                 who + R"(}
{"do":"answer","ask":2,"words":"100LL."}
{"do":"decline","ask":4,"why":"Measured twice."}
{"do":"pause"}
{"do":"asked","kind":"look again","point":"arc-clear",)" +
                                 who + R"(}
{"do":"resume"}
{"do":"follow","values":{"oil":"5"}}
{"do":"conclude","result":"fit"})";
        const std::string withOil = std::string(text).replace(text.find("\"until\":\"blade.b\""), 17,
                                                              R"("until":"blade.b","values":{"oil":"5"})");
        const auto log = play(house, withOil);
        QVERIFY2(log, log ? "" : toText(log.error()).c_str());
        const auto has = [&](const std::string& part) {
            return std::any_of(log->begin(), log->end(),
                               [&](const std::string& line) { return line.find(part) != std::string::npos; });
        };
        QVERIFY(has("\"kind\":\"answered\""));
        QVERIFY(has("\"kind\":\"declined\""));
        QVERIFY(has("\"why\":\"Asked by Ines Example: look again at " + name(house, "blade.a")));
        QVERIFY(has("\"why\":\"Asked by Ines Example: look again at " + name(house, "arc-clear")));
        // Played again it is the same round: signed otherwise, but said the same.
        const auto again = play(house, withOil);
        QVERIFY2(again, again ? "" : toText(again.error()).c_str());
        QVERIFY(*again == *log);
        // Other words are another round's.
        std::string other = withOil;
        other.replace(other.find("Feel it."), 8, "Look up.");
        QCOMPARE(play(house, other).error().code, ErrorCode::conflict);
    }

    // A round that was served holds what others asked: run again, the script used to be “changed since”.
    void overALogInWhichOthersAskedItGoesOn_data() {
        QTest::addColumn<int>("stopsAfter");
        for (const int count : {7, 12, 1000})
            QTest::newRow(QByteArray::number(count)) << count;
    }
    void overALogInWhichOthersAskedItGoesOn() {
        QFETCH(int, stopsAfter);
        const auto script = readScript(wholeDay, {});
        const House house;
        static Asker asker({}); // its key takes a while
        int walked = 0;
        const auto others = [&](archive::OpenRound& round) -> Result<void> {
            const Instant at = round.state().lastAt;
            const auto ask = [&](round::Statement::Kind kind, const char* point) -> Result<void> {
                Ask one;
                one.kind = kind;
                one.point = point;
                one.words = "Is it dry?";
                one.who = {"Ines Example", "instructor", ""};
                auto asked = asker.say(one, round.state(), at);
                return asked ? round.actAndReplan(std::move(*asked), at) : tl::unexpected(asked.error());
            };
            ++walked;
            if (walked == 3)
                if (auto done = ask(round::Statement::Kind::question, ""); !done) return done;
            if (walked == 7)
                if (auto done = ask(round::Statement::Kind::lookAgain, "blade.a"); !done) return done;
            if (walked == 10)
                for (const std::int64_t number : {1, 2})
                    if (auto done = round.actAndReplan(round::Declined{number, "Not now."}, at); !done)
                        return done;
            if (walked < stopsAfter) return {};
            return fail(ErrorCode::refused, "The device was switched off.");
        };
        {
            auto archive = house.open();
            const auto round = walkScript(archive, house.machine, test::machineText(), *script, {}, others);
            QCOMPARE(!round, stopsAfter < 100);
        }
        const auto before = logOf(house.open());
        stopsAfter = 1000; // they ask on where they were
        {
            auto archive = house.open();
            const auto round = walkScript(archive, house.machine, test::machineText(), *script, {}, others);
            QVERIFY2(round, round ? "" : toText(round.error()).c_str());
        }
        const auto again = logOf(house.open());
        QVERIFY(std::equal(before.begin(), before.end(), again.begin()));
        // And once more, when all is there.
        const auto whole = play(house, wholeDay);
        QVERIFY2(whole, whole ? "" : toText(whole.error()).c_str());
        QVERIFY(*whole == again);
        // All of the script's own is there, and what was asked.
        const House quiet;
        const auto alone = play(quiet, wholeDay).value();
        const auto count = [](const std::vector<std::string>& log, const char* kind) {
            return std::count_if(log.begin(), log.end(), [&](const std::string& line) {
                return line.find(kind) != std::string::npos;
            });
        };
        for (const char* kind : {R"("kind":"settled")", R"("kind":"stand")", R"("kind":"note")"})
            QCOMPARE(count(again, kind), count(alone, kind));
        QCOMPARE(count(again, R"("kind":"asked")"), 2);
        // Another script is still told to be another.
        std::string other = wholeDay;
        other.replace(other.find("A visitor."), 10, "Two of them");
        QCOMPARE(play(house, other).error().code, ErrorCode::conflict);
    }

    void whoAsksSignsWithTheirKey() {
        QTemporaryDir folder;
        const auto write = [&](const char* name, const std::string& words) {
            QFile file(folder.filePath(name));
            return file.open(QFile::WriteOnly) && file.write(words.c_str()) > 0;
        };
        const auto key = record::newKeyFile("Ines Example", "long enough", {1750000000000});
        QVERIFY(key && write("ines.pem", *key) && write("ines.txt", "long enough\n") &&
                write("other.txt", "quite another\n"));
        const auto asked = [&](const std::string& name, const std::string& passphrase) -> Result<bool> {
            const Json line{{"do", "asked"},
                            {"kind", "remark"},
                            {"words", "Well seen."},
                            {"who", {{"name", name}, {"role", "instructor"}, {"certificate", ""}}},
                            {"key", "ines.pem"},
                            {"passphrase", passphrase}};
            const auto script = readScript(open + line.dump(), folder.path().toStdString());
            if (!script) return tl::unexpected(script.error());
            const House fresh;
            auto archive = fresh.open();
            const auto round = walkScript(archive, fresh.machine, test::machineText(), *script, {});
            if (!round) return tl::unexpected(round.error());
            const auto& event = std::get<round::Asked>(round->events().back().what);
            const auto by = record::checkAsked(event);
            return by && by->sha256 == record::certificateOf(*key)->sha256;
        };
        QVERIFY(asked("Ines Example", "ines.txt").value());
        QCOMPARE(asked("Ines Example", "other.txt").error().code, ErrorCode::passphrase);
        QCOMPARE(asked("Ines Other", "ines.txt").error().code, ErrorCode::signature);
        QCOMPARE(asked("Ines Example", "nowhere.txt").error().code, ErrorCode::storage);
    }

    void anotherScriptOverTheSameRoundIsAConflict() {
        const House house;
        QVERIFY(play(house, open + R"({"do":"note","words":"one"})"));
        const auto other = play(house, open + R"({"do":"note","words":"two"})");
        QVERIFY(!other);
        QCOMPARE(other.error().code, ErrorCode::conflict);
        QCOMPARE(other.error().where, std::string("event 2"));
        QVERIFY(play(house, open + "{\"do\":\"note\",\"words\":\"one\"}\n{\"do\":\"pause\"}"));
    }

    void committedIsSaidAfterTheCommit() {
        const House house;
        const auto script = readScript(wholeDay, {});
        auto archive = house.open();
        const auto reader = house.open();
        std::size_t said = 0;
        auto round =
            walkScript(archive, house.machine, test::machineText(), *script, [&](const round::Event& event) {
                const auto log = logOf(reader);
                QCOMPARE(log.size(), ++said);
                QCOMPARE(log.back(), canonicalJson(toJson(event)));
            });
        QVERIFY(round);
        QVERIFY(said > 30);
    }

    void photosAreReadFromBesideTheScript() {
        const House house;
        QTemporaryDir folder;
        QFile picture(folder.filePath("oil.jpg"));
        QVERIFY(picture.open(QFile::WriteOnly) && picture.write("\xFF\xD8\xFF picture") > 0);
        picture.close();
        QFile text(folder.filePath("oil.txt"));
        QVERIFY(text.open(QFile::WriteOnly) && text.write("not a picture") > 0);
        text.close();
        const auto play = [&](const std::string& photo) {
            const Json line{{"do", "finding"},
                            {"point", "arc-clear"},
                            {"words", "A bird."},
                            {"class", "assess"},
                            {"photos", {photo}}};
            const auto script = readScript(open + "{\"do\":\"go\",\"stand\":\"left\"}\n" + line.dump(),
                                           folder.path().toStdString());
            const House fresh;
            auto archive = fresh.open();
            auto round = walkScript(archive, fresh.machine, test::machineText(), script.value(), {});
            if (!round) return round.error().where;
            return archive.photo(sha256Hex("\xFF\xD8\xFF picture")) ? std::string("kept")
                                                                    : std::string("lost");
        };
        QCOMPARE(play("oil.jpg"), std::string("kept"));
        QVERIFY(play("oil.txt").find("oil.txt") != std::string::npos);
        QVERIFY(play("none.jpg").find("none.jpg") != std::string::npos);
    }

    void whatWasMeasuredIsTakenAsItStands() {
        QTemporaryDir folder;
        const std::string bytes = "\xFF\xD8\xFF bolt";
        QFile picture(folder.filePath("bolt.jpg"));
        QVERIFY(picture.open(QFile::WriteOnly) && picture.write(bytes.c_str()) > 0);
        picture.close();
        round::Measurement slip;
        slip.what = round::Measurement::What::slip;
        slip.photo = sha256Hex(bytes);
        slip.width = slip.height = 1000;
        slip.tilt = "20";
        slip.marks = {{"0", "0"}, {"100", "0"}, {"110", "0"}, {"200", "5.25"}};
        slip.deviation = "1";
        round::write(slip, round::computed(slip).value());
        const auto play = [&](const std::string& hash) -> Result<std::vector<round::Event>> {
            slip.photo = hash;
            const Json oil{{"do", "sound"},
                           {"point", "oil"},
                           {"value", "4.5"},
                           {"unit", "L"},
                           {"renewed", true},
                           {"photos", {"bolt.jpg"}},
                           {"measurements", {round::toJson(slip)}}};
            const auto script = readScript(open + "{\"do\":\"follow\",\"until\":\"oil\"}\n" + oil.dump(),
                                           folder.path().toStdString());
            if (!script) return tl::unexpected(script.error());
            const House house;
            auto archive = house.open();
            auto round = walkScript(archive, house.machine, test::machineText(), *script, {});
            if (!round) return tl::unexpected(round.error());
            if (!archive.photo(sha256Hex(bytes))) qFatal("the photo is lost");
            return archive.events(archive.rounds().value().front().id).value();
        };
        const auto events = play(sha256Hex(bytes));
        QVERIFY2(events, events ? "" : toText(events.error()).c_str());
        const auto& settled = std::get<round::Settled>(events->back().what);
        QCOMPARE(settled.unit, std::string("L"));
        QVERIFY(settled.renewed && !settled.byPhoto);
        QCOMPARE(settled.photos.size(), std::size_t{1});
        QVERIFY(settled.measurements == std::vector{slip});
        // Of another photo than the settling's own: the round's rules refuse it.
        const auto other = play(std::string(64, 'd'));
        QVERIFY(!other);
        QVERIFY2(other.error().where.starts_with("line 3"), other.error().where.c_str());
    }

    // As the app's recorded demo does it: one touch after the other.
    void followIsTakenStepByStep() {
        const House house;
        auto archive = house.open();
        QVERIFY(house.addAircraft(archive));
        auto round = house.begin(archive);
        const Follow follow{"last-look", {{"oil", "4.5"}}};
        int steps = 0;
        Player player(*round, {}, round->state().openedAt);
        for (;; ++steps) {
            const auto next = followStep(follow, round->state(), house.machine);
            QVERIFY(next);
            if (!*next) break;
            QVERIFY(!std::holds_alternative<Follow>(**next));
            QVERIFY(player.play({**next, std::nullopt, 1}));
        }
        QVERIFY(steps > 20);
        QCOMPARE(round->state().points.at("oil").last()->what.value.value_or(""), std::string("4.5"));
        QVERIFY(!round->state().points.at("last-look").settled);
    }
};

QTEST_APPLESS_MAIN(TestScript)
#include "tst_script.moc"
