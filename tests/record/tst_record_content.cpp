// What a record says, and that it can't say anything else than its own events.
#include "base/canonical.hpp"
#include "fixture.hpp"
#include "record/photo.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>

using namespace ambit;

namespace {

std::string whereOf(const Json& content) {
    const auto checked = record::checkContent(content);
    return checked ? "accepted" : checked.error().where;
}

Json& at(Json& content, const char* pointer) {
    return content.at(Json::json_pointer(pointer));
}

/// Applied to a sound content; it must then be refused there.
struct Change {
    const char* name;
    const char* where;
    std::function<void(Json&)> make;
};

std::vector<Change> changes() {
    const auto set = [](const char* pointer, const Json& value) {
        return [pointer, value](Json& content) { content[Json::json_pointer(pointer)] = value; };
    };
    const auto drop = [](const char* parent, const char* name) {
        return [parent, name](Json& content) { at(content, parent).erase(name); };
    };
    return {
        {"registration", "/aircraft/registration", set("/aircraft/registration", "OX-ELSE")},
        {"airframe", "/aircraft/airframe/sha256", set("/aircraft/airframe/sha256", std::string(64, 'a'))},
        {"counter", "/aircraft/counters/0/value", set("/aircraft/counters/0/value", "1284.7")},
        {"round id", "/round", set("/round", std::string(32, '0'))},
        {"opened", "/openedAt", set("/openedAt", "2026-06-20T05:30:00.000Z")},
        {"concluded", "/concludedAt", set("/concludedAt", "2026-06-20T05:30:00.000Z")},
        {"offset", "/offsetMinutes", set("/offsetMinutes", 60)},
        {"position", "/position/latitude", set("/position/latitude", "51")},
        {"no position", "/position", drop("", "position")},
        {"conclusion", "/conclusion/fit", set("/conclusion/fit", true)},
        {"reasons", "/conclusion/reasons", set("/conclusion/reasons", "None.")},
        {"signer", "/signer/name", set("/signer/name", "Somebody Else")},
        {"role", "/signer/role", set("/signer/role", "owner")},
        {"unknown role", "/signer/role", set("/signer/role", "king")},
        {"outcome", "/points/0/outcome", set("/points/0/outcome", "finding")},
        {"when settled", "/points/0/at", set("/points/0/at", "2026-06-20T05:30:00.000Z")},
        {"value", "/points/1/measured/value", set("/points/1/measured/value", "5.9")},
        {"earlier value", "/points/1/earlier/0/measured/value",
         set("/points/1/earlier/0/measured/value", "5.9")},
        {"earlier dropped", "/points/1/earlier", drop("/points/1", "earlier")},
        {"why re-opened", "/points/1/earlier/0/reopened/why",
         set("/points/1/earlier/0/reopened/why", "Nothing.")},
        {"words", "/points/3/finding/words", set("/points/3/finding/words", "A scratch.")},
        {"class", "/points/3/finding/class", set("/points/3/finding/class", "assess")},
        {"photo of a point", "/points/3/finding/photos", set("/points/3/finding/photos", Json::array())},
        {"photo", "/photos/0/bytes", set("/photos/0/bytes", 6)},
        {"basis", "/points/5/notInspected/basis", set("/points/5/notInspected/basis", "None.")},
        {"added finding", "/points/0/finding",
         set("/points/0/finding", {{"words", "x"}, {"class", "assess"}, {"photos", Json::array()}})},
        {"point dropped", "/points", [](Json& content) { at(content, "/points").erase(5); }},
        {"points swapped", "/points/0/at",
         [](Json& content) { std::swap(at(content, "/points/0"), at(content, "/points/2")); }},
        {"event dropped", "/events event 5", [](Json& content) { at(content, "/events").erase(3); }},
        {"conclusion dropped", "/events",
         [](Json& content) { at(content, "/events").erase(at(content, "/events").size() - 1); }},
        {"event's word", "/events/2/kind", set("/events/2/kind", "guessed")},
        {"event's field", "/events/2/more", set("/events/2/more", 1)},
        {"unknown field", "/more", set("/more", 1)},
        {"unknown field of a point", "/points/0/more", set("/points/0/more", 1)},
        {"missing field", "/statement", drop("", "statement")},
        {"missing deep field", "/points/0/zone", drop("/points/0", "zone")},
        {"binary float", "/offsetMinutes", set("/offsetMinutes", 120.5)},
        {"whole float", "/photos/0/bytes", set("/photos/0/bytes", 5.0)},
        {"huge integer", "/photos/0/bytes", set("/photos/0/bytes", UINT64_MAX)},
        {"control character", "/walk/name", set("/walk/name", "Da\x1Bily")},
        {"previous unsorted", "/previous", set("/previous", {std::string(64, 'b'), std::string(64, 'a')})},
        {"previous twice", "/previous", set("/previous", {std::string(64, 'a'), std::string(64, 'a')})},
        {"hash in capitals", "/previous/0", set("/previous", {std::string(64, 'A')})},
        {"another format", "/format", set("/format", "ambit-airframe")},
        {"later version", "/version", set("/version", 3)},
        {"version 2 without its kinds", "/version", set("/version", 2)},
        {"a difference that isn't in the log", "/differences",
         set("/differences", {{{"what", "light low"}, {"at", "2026-06-20T05:30:00.000Z"}}})},
        {"another kind", "/version", set("/kind", "deferral")},
        {"nothing", "/format", [](Json& content) { content = nullptr; }},
        {"list", "/format", [](Json& content) { content = Json::array(); }},
    };
}

} // namespace

class RecordContentTest : public QObject {
    Q_OBJECT
private slots:
    void saysWhatHappened() {
        const Json content = test::contentOf(false, {std::string(64, 'a')});
        QCOMPARE(content["conclusion"]["fit"], Json(false));
        QCOMPARE(content["points"].size(), std::size_t{6});
        const Json& oil = content["points"][1];
        QCOMPARE(oil["name"], Json("Oil level"));
        QCOMPARE(oil["zone"], Json("Left side"));
        QCOMPARE(oil["stand"], Json("Left side"));
        QCOMPARE(oil["measured"]["limit"], Json("4 to 6.0 qt"));
        QCOMPARE(oil["measured"]["verdict"], Json("above"));
        QCOMPARE(oil["earlier"].size(), std::size_t{1});
        QCOMPARE(oil["earlier"][0]["outcome"], Json("sound"));
        const Json& blade = content["points"][3];
        QCOMPARE(blade["settings"], (Json{{{"name", "Rotor"}, {"state", "Blade A aft"}}}));
        QCOMPARE(blade["finding"]["photos"][0], content["photos"][0]["sha256"]);
        QCOMPARE(content["points"][5]["notInspected"]["why"], Json("Hail."));
        QCOMPARE(content["openings"].size(), std::size_t{2});
        QCOMPARE(content["aircraft"]["counters"][1]["unit"], Json("1"));
        QCOMPARE(content["events"].size(), test::roundOf(false).size());
    }

    // A round in which something differed: version 2, and every difference with its end.
    void saysWhatDiffered() {
        auto events = test::roundOf(false);
        const auto insert = [&](std::size_t at, const std::vector<round::What>& what) {
            for (std::size_t i = 0; i < what.size(); ++i)
                events.insert(events.begin() + static_cast<std::ptrdiff_t>(at + i),
                              {0, events[at].at, what[i]});
            for (std::size_t i = 0; i < events.size(); ++i)
                events[i].seq = static_cast<std::int64_t>(i) + 1;
        };
        insert(3, {round::StandBlocked{"front", "Ice."}, round::Light{true},
                   round::AreaMarked{1, {{"3", "0"}, {"5", "0"}, {"5", "2.5"}}, "Wall"},
                   round::StandFree{"front"}});
        insert(9, {round::StandBlocked{"front", "Unsafe"}});
        const auto content = record::roundContent(test::recordedMachine(), events, {});
        QVERIFY2(content, content ? "" : toText(content.error()).c_str());
        QCOMPARE((*content)["version"], Json(2));
        const Json& differences = (*content)["differences"];
        QCOMPARE(differences.size(), std::size_t{4});
        QCOMPARE(differences[0]["what"], Json("stand blocked"));
        QCOMPARE(differences[0]["name"], Json("In front"));
        QCOMPARE(differences[0]["until"], (*content)["events"][6]["at"]);
        QCOMPARE(differences[1]["what"], Json("light low"));
        QVERIFY(!differences[1].contains("until"));
        QCOMPARE(differences[2]["area"], Json(1));
        QCOMPARE(differences[2]["why"], Json("Wall"));
        QCOMPARE(differences[3]["why"], Json("Unsafe"));
        QCOMPARE(whereOf(*content), std::string("accepted"));
        Json other = *content;
        other["version"] = 1;
        QCOMPARE(whereOf(other), std::string("/version"));
        other = *content;
        other["differences"][2]["why"] = "Hedge";
        QCOMPARE(whereOf(other), std::string("/differences/2/why"));
        other = *content;
        other["differences"].erase(3);
        QCOMPARE(whereOf(other), std::string("/differences"));
        other = *content;
        other["events"][3]["stand"] = "left";
        QVERIFY(whereOf(other) != "accepted");
    }

    void sameInputSameBytes() {
        QCOMPARE(canonicalJson(test::contentOf()), canonicalJson(test::contentOf()));
        const auto again = parseJson(canonicalJson(test::contentOf()));
        QVERIFY(again && record::checkContent(*again));
    }

    void refusesARoundThatGoesOn() {
        auto events = test::roundOf(true);
        QVERIFY(record::roundContent(test::recordedMachine(), events, {}));
        events.pop_back();
        const auto content = record::roundContent(test::recordedMachine(), events, {});
        QVERIFY(!content);
        QCOMPARE(content.error().code, ErrorCode::refused);
    }

    void refusesWhatItsEventsDontSay_data() {
        QTest::addColumn<int>("index");
        const auto all = changes();
        for (std::size_t i = 0; i < all.size(); ++i)
            QTest::newRow(all[i].name) << static_cast<int>(i);
    }
    void refusesWhatItsEventsDontSay() {
        QFETCH(int, index);
        const Change change = changes()[static_cast<std::size_t>(index)];
        Json content = test::contentOf();
        QCOMPARE(whereOf(content), std::string("accepted"));
        change.make(content);
        QCOMPARE(whereOf(content), std::string(change.where));
    }

    void refusesFitBesideWhatForbidsIt() {
        Json content = test::contentOf(true);
        QCOMPARE(whereOf(content), std::string("accepted"));
        // Taken out of both the summary and the events, so that only the rule is left to object.
        content["points"][5]["notInspected"].erase("basis");
        for (Json& event : content["events"])
            event.erase("basis");
        QCOMPARE(whereOf(content), std::string("/points/5"));
        content = test::contentOf(false);
        content["conclusion"]["fit"] = true;
        content["conclusion"].erase("reasons");
        content["events"].back()["result"] = "fit";
        content["events"].back().erase("reasons");
        QCOMPARE(whereOf(content), std::string("/points/1"));
    }

    /// Every field but those that a content can do without is missed.
    void missesEveryField() {
        const Json content = test::contentOf();
        for (const auto& [name, unused] : content.items()) {
            Json less = content;
            less.erase(name);
            QVERIFY2(!record::checkContent(less), name.c_str());
        }
    }

    void readsJpegFrames() {
        const auto frame = record::jpegFrame(test::photoBytes());
        QVERIFY(frame);
        QCOMPARE(frame->width, 800);
        QCOMPARE(frame->height, 600);
        QCOMPARE(frame->channels, 3);
        for (std::size_t size = 0; size < 400; ++size)
            (void)record::jpegFrame(
                std::string_view(test::photoBytes()).substr(0, size)); // must not read beyond
        QVERIFY(!record::jpegFrame("\x89PNG\r\n"));
        QVERIFY(!record::jpegFrame(""));
    }
};

QTEST_APPLESS_MAIN(RecordContentTest)
#include "tst_record_content.moc"
