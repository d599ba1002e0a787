// Version 5: measured in a photo, typed in another unit, photos of what is sound, where a value is going.
// Refused where the summary says anything else than the events.
#include "base/canonical.hpp"
#include "base/hash.hpp"
#include "fixture.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace ambit::round;

namespace {

const Photo lining{sha256Hex("lining"), "image/jpeg", 6};
const Photo tip{sha256Hex("tip"), "image/jpeg", 3};

/// The test machine, its oil in millimetres, with a trend that may stand against fit.
airframe::Airframe machine(bool against) {
    airframe::Airframe machine = test::recordedMachine();
    for (airframe::Point& point : machine.points)
        if (point.id == "oil") {
            point.limit->unit = "mm";
            point.limit->trend = airframe::Trend{"hours", *Decimal::parse("3"), against};
        }
    return machine;
}

/// Seen from straight above, 10 pixels a millimetre: 5 mm.
Measurement fiveMillimetres() {
    Measurement its;
    its.what = Measurement::What::distance;
    its.photo = lining.sha256;
    its.width = 1600;
    its.height = 1200;
    its.card = CardSeen{{{"100", "100"}, {"956", "100"}, {"956", "639.80"}, {"100", "639.80"}},
                        "0.50",
                        false,
                        {},
                        measure::Lies::longSideFirst};
    its.marks = {{"300", "800"}, {"350", "800"}};
    its.deviation = "1.00";
    write(its, computed(its).value());
    return its;
}

Settled inPhoto() {
    Settled oil;
    oil.point = "oil";
    oil.outcome = Outcome::sound;
    oil.measurements = {fiveMillimetres()};
    oil.value = oil.measurements.front().value;
    oil.byPhoto = true;
    oil.renewed = true;
    oil.photos = {lining};
    return oil;
}

Settled typed() {
    Settled oil;
    oil.point = "oil";
    oil.outcome = Outcome::sound;
    oil.value = "0.2"; // 5.08 mm
    oil.unit = "in";
    return oil;
}

Trended going(judge::Standing is, bool stands) {
    Trended trended;
    trended.point = "oil";
    trended.over = "hours";
    trended.ahead = "3";
    trended.values = {{"1270.0", "4.2", "", true}, {"1284.6", "5.08", "0.05", false}};
    trended.is = is;
    trended.stands = stands;
    trended.words = {"the limit may be passed within the next 3 h", "rises by 0.06 mm per h"};
    return trended;
}

/// The fixture's round, its oil measured first in a photo and then typed, or the other way about, and what is
/// told of it.
std::vector<Event> walked(bool fit, const Settled& first, const Settled& second,
                          std::optional<Trended> trended) {
    std::vector<Event> events;
    const auto add = [&](Instant at, What what) {
        events.push_back({static_cast<std::int64_t>(events.size()) + 1, at, std::move(what)});
    };
    int oils = 0;
    for (Event event : test::roundOf(true)) {
        if (auto* settled = std::get_if<Settled>(&event.what)) {
            if (settled->point == "oil") *settled = oils++ == 0 ? first : second;
            if (settled->point == "blade.a") settled->photos = {tip};
        }
        if (auto* concluded = std::get_if<Concluded>(&event.what); concluded != nullptr && !fit)
            *concluded = {false, "Where the oil is going."};
        add(event.at, event.what);
        if (trended && oils == 2) {
            add(event.at, *trended);
            trended.reset();
        }
    }
    return events;
}

Result<Json> contentOf(bool against, const std::vector<Event>& events) {
    return record::roundContent(machine(against), events, {});
}

Json sure(const Result<Json>& content) {
    if (!content) qFatal("%s", toText(content.error()).c_str());
    return *content;
}

const Json& point(const Json& content, const std::string& id) {
    for (const Json& one : content["points"])
        if (one["id"] == id) return one;
    qFatal("no such point");
}

std::string whereOf(const Json& content) {
    const auto checked = record::checkContent(content);
    return checked ? "accepted" : checked.error().where;
}

} // namespace

class TestRecordMeasured : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        good = sure(contentOf(false, walked(true, inPhoto(), typed(), going(judge::Standing::near, false))));
    }

    void saysWhatWasMeasured() {
        QCOMPARE(good["version"], Json(5));
        const Json& oil = point(good, "oil");
        QCOMPARE(oil["measured"]["value"], Json("0.2"));
        QCOMPARE(oil["measured"]["unit"], Json("in"));
        QCOMPARE(oil["measured"]["limit"], Json("4 to 6.0 mm"));
        QCOMPARE(oil["measured"]["verdict"], Json("within"));
        QVERIFY(!oil["measured"].contains("renewed"));
        QCOMPARE(
            oil["trend"],
            (Json{{"is", "near"},
                  {"then", "warns"},
                  {"words", {"the limit may be passed within the next 3 h", "rises by 0.06 mm per h"}}}));
        const Json& before = oil["earlier"][0];
        const Measurement its = fiveMillimetres();
        QCOMPARE(before["measured"], (Json{{"value", its.value},
                                           {"renewed", true},
                                           {"from", "photo"},
                                           {"uncertainty", its.uncertainty}}));
        QCOMPARE(before["measurements"], (Json{{{"what", "distance"},
                                                {"value", its.value},
                                                {"unit", "mm"},
                                                {"uncertainty", its.uncertainty},
                                                {"photo", lining.sha256}}}));
        QCOMPARE(before["photos"], Json({lining.sha256}));
        QCOMPARE(point(good, "blade.a")["photos"], Json({tip.sha256}));
        QCOMPARE(good["photos"].size(), std::size_t{2});
    }

    /// Signed, written, read and verified.
    void verifies() {
        const auto text = record::signRecord(good, test::signer());
        QVERIFY2(text, text ? "" : toText(text.error()).c_str());
        const auto verified = record::verifyRecord(*text);
        QVERIFY2(verified, verified ? "" : toText(verified.error()).c_str());
        const auto again = parseJson(*text);
        QVERIFY(again);
        QCOMPARE(canonicalJson((*again)["content"]), canonicalJson(good));
        for (std::size_t i = 0; i < good["events"].size(); ++i) {
            const auto event = eventFrom(good["events"][i]);
            QVERIFY2(event, event ? "" : toText(event.error()).c_str());
            QCOMPARE(canonicalJson(toJson(*event)), canonicalJson(good["events"][i]));
        }
    }

    void valueInAPhotoLast() {
        const Json content =
            sure(contentOf(false, walked(true, typed(), inPhoto(), going(judge::Standing::within, false))));
        const Json& measured = point(content, "oil")["measured"];
        QCOMPARE(measured["unit"], Json("mm"));
        QCOMPARE(measured["from"], Json("photo"));
        QCOMPARE(measured["renewed"], Json(true));
        QCOMPARE(measured["verdict"], Json("within"));
        QCOMPARE(point(content, "oil")["earlier"][0]["measured"], (Json{{"value", "0.2"}, {"unit", "in"}}));
        QVERIFY(!point(content, "oil")["trend"].contains("then"));
        QCOMPARE(whereOf(content), std::string("accepted"));
        Json forged = content;
        forged["points"][1]["measured"]["unit"] = "cm";
        QCOMPARE(whereOf(forged), std::string("/points/1/measured/unit"));
    }

    /// Version 6: a typed value says what it was read from.
    void saysWhatATypedValueWasReadFrom() {
        Settled read = typed();
        read.from = airframe::Means::gauge;
        read.uncertainty = "0.002";
        Settled counted = typed();
        counted.from = airframe::Means::count;
        const Json content = sure(contentOf(false, walked(true, counted, read, std::nullopt)));
        QCOMPARE(content["version"], Json(6));
        QCOMPARE(whereOf(content), std::string("accepted"));
        const Json& oil = point(content, "oil");
        QCOMPARE(oil["measured"]["from"], Json("gauge"));
        QCOMPARE(oil["measured"]["uncertainty"], Json("0.002"));
        QCOMPARE(oil["earlier"][0]["measured"], (Json{{"value", "0.2"}, {"unit", "in"}, {"from", "count"}}));
        const auto text = record::signRecord(content, test::signer());
        QVERIFY(text && record::verifyRecord(*text));
        const auto forged = [&](const char* name, const Json& value) {
            Json other = content;
            for (Json& one : other["points"])
                if (one["id"] == "oil") {
                    one["measured"][name] = value;
                    if (value.is_null()) one["measured"].erase(name);
                }
            return whereOf(other);
        };
        QVERIFY(forged("from", "ruler").ends_with("/measured/from"));
        QVERIFY(forged("from", nullptr).find("/measured") != std::string::npos);
        QVERIFY(forged("uncertainty", "0.001").ends_with("/measured/uncertainty"));
        QVERIFY(forged("uncertainty", nullptr).find("/measured") != std::string::npos);
        Json older = content;
        older["version"] = 5;
        QCOMPARE(whereOf(older), std::string("/version"));
    }

    /// Version 7: what a trend tells of its values says what each was read from.
    void saysWhatATrendsValuesWereReadFrom() {
        Trended told = going(judge::Standing::near, false);
        told.values.front().from = "ruler";
        const Json content = sure(contentOf(false, walked(true, inPhoto(), typed(), told)));
        QCOMPARE(content["version"], Json(7));
        QCOMPARE(whereOf(content), std::string("accepted"));
        const auto text = record::signRecord(content, test::signer());
        const auto verified = text ? record::verifyRecord(*text) : tl::unexpected(text.error());
        QVERIFY2(verified, verified ? "" : toText(verified.error()).c_str());
        std::size_t at = 0;
        while (content["events"][at]["kind"] != "trend")
            ++at;
        QCOMPARE(content["events"][at]["values"][0]["from"], Json("ruler"));
        QVERIFY(!content["events"][at]["values"][1].contains("from"));
        Json other = content;
        other["events"][at]["values"][0]["from"] = "thumb";
        QCOMPARE(whereOf(other), "/events/" + std::to_string(at) + "/values/0/from");
        other = content;
        other["version"] = 5;
        QCOMPARE(whereOf(other), std::string("/version"));
        // Without it, a record of version 5 as before; one that says so is none.
        other = good;
        other["version"] = 7;
        QCOMPARE(whereOf(other), std::string("/version"));
    }

    void eachFieldIsWhatItsEventSays_data() {
        QTest::addColumn<QString>("pointer");
        QTest::addColumn<QString>("to"); ///< JSON; empty: taken out
        const auto row = [](const char* pointer, const char* to) {
            QTest::newRow((std::string(pointer) + " " + to).c_str())
                << QString::fromUtf8(pointer) << QString::fromUtf8(to);
        };
        const std::string other = '"' + std::string(64, 'd') + '"';
        row("/version", "4");
        row("/points/1/measured/value", R"("0.3")");
        row("/points/1/measured/renewed", "true");
        row("/points/1/measured/from", R"("photo")");
        row("/points/1/measured/uncertainty", R"("0.1")");
        row("/points/1/measured/unit", R"("mm")");
        row("/points/1/trend", "");
        row("/points/1/trend/is", R"("within")");
        row("/points/1/trend/is", R"("passed")");
        row("/points/1/trend/then", R"("against")");
        row("/points/1/trend/then", "");
        row("/points/1/trend/words", "");
        row("/points/1/trend/words/0", R"("the limit is not reached within the next 3 h")");
        row("/points/1/trend/words/1", "");
        row("/points/1/earlier/0/measured/value", R"("5.1")");
        row("/points/1/earlier/0/measured/unit", R"("in")");
        row("/points/1/earlier/0/measured/renewed", "");
        row("/points/1/earlier/0/measured/renewed", "false");
        row("/points/1/earlier/0/measured/from", "");
        row("/points/1/earlier/0/measured/uncertainty", "");
        row("/points/1/earlier/0/measured/uncertainty", R"("0.01")");
        row("/points/1/earlier/0/measurements", "");
        row("/points/1/earlier/0/measurements", "[]");
        row("/points/1/earlier/0/measurements/0/what", R"("margin")");
        row("/points/1/earlier/0/measurements/0/value", R"("5.1")");
        row("/points/1/earlier/0/measurements/0/unit", R"("°")");
        row("/points/1/earlier/0/measurements/0/uncertainty", R"("0.01")");
        row("/points/1/earlier/0/measurements/0/photo", other.c_str());
        row("/points/1/earlier/0/photos", "");
        row("/points/1/earlier/0/photos/0", other.c_str());
        row("/points/3/photos", "");
        row("/points/3/photos", "[]");
        row("/points/3/photos/0", other.c_str());
        row("/points/0/photos", ("[" + other + "]").c_str());
        row("/points/0/trend", R"({"is": "within", "words": []})");
        row("/photos/1", "");
        row("/photos/0/sha256", other.c_str());
    }
    void eachFieldIsWhatItsEventSays() {
        QFETCH(QString, pointer);
        QFETCH(QString, to);
        QCOMPARE(good["points"][1]["id"], Json("oil"));
        QCOMPARE(good["points"][3]["id"], Json("blade.a"));
        QCOMPARE(whereOf(good), std::string("accepted"));
        Json forged = good;
        const Json::json_pointer place(pointer.toStdString());
        if (!to.isEmpty()) {
            forged[place] = Json::parse(to.toStdString());
        } else if (forged[place.parent_pointer()].is_array()) {
            forged[place.parent_pointer()].erase(std::stoul(place.back()));
        } else {
            forged[place.parent_pointer()].erase(place.back());
        }
        QVERIFY(forged != good);
        QVERIFY2(whereOf(forged) != "accepted", canonicalJson(forged["points"]).c_str());
        // Nor is it signed.
        QVERIFY(!record::verifyRecord(canonicalJson(
            {{"content", forged},
             {"signatures",
              Json::parse(record::signRecord(good, test::signer()).value()).at("signatures")}})));
    }

    /// What is measured belongs to a photo and a value of the same settling, in the events too.
    void eventsThatDontHoldAreRefused() {
        const auto refuses = [&](const std::function<void(Json&)>& change) {
            Json forged = good;
            for (Json& event : forged["events"])
                change(event);
            return forged != good && whereOf(forged) != "accepted";
        };
        const auto inPhotos = [](Json& event) { return event.contains("measurements"); };
        QVERIFY(refuses([&](Json& event) {
            if (inPhotos(event)) event["measurements"][0]["unit"] = "°";
        }));
        QVERIFY(refuses([&](Json& event) {
            if (inPhotos(event)) event["measurements"][0]["marks"].erase(1);
        }));
        QVERIFY(refuses([&](Json& event) {
            if (inPhotos(event)) event["measurements"][0]["card"]["corners"].erase(3);
        }));
        // Without these there would be nothing to read the value's uncertainty from.
        QVERIFY(refuses([&](Json& event) {
            if (inPhotos(event)) event.erase("measurements");
        }));
        QVERIFY(refuses([&](Json& event) {
            if (inPhotos(event)) event["photos"][0]["sha256"] = std::string(64, 'd');
        }));
        QVERIFY(refuses([&](Json& event) {
            if (inPhotos(event)) event["value"] = "5.1";
        }));
        QVERIFY(refuses([&](Json& event) {
            if (inPhotos(event)) event.erase("value");
        }));
        QVERIFY(refuses([&](Json& event) {
            if (event["kind"] == "trend") event["values"][0]["x"] = "about";
        }));
        QVERIFY(refuses([&](Json& event) {
            if (event["kind"] == "trend") event["point"] = "elsewhere";
        }));
    }

    void fitBesideATrendAgainstItIsRefused() {
        const Trended against = going(judge::Standing::near, true);
        QVERIFY(!contentOf(true, walked(true, typed(), typed(), against)));
        const auto content = contentOf(true, walked(false, typed(), typed(), against));
        QVERIFY2(content, content ? "" : toText(content.error()).c_str());
        QCOMPARE(point(*content, "oil")["trend"]["then"], Json("against"));
        QCOMPARE(whereOf(*content), std::string("accepted"));
        // Summary and events of one mind, so that only the rule is left to object.
        Json forged = *content;
        forged["conclusion"] = {{"fit", true}};
        forged["events"].back()["result"] = "fit";
        forged["events"].back().erase("reasons");
        QCOMPARE(whereOf(forged), std::string("/points/1"));
        // Where the airframe doesn't say so, no trend stands against it.
        QVERIFY(!contentOf(false, walked(false, typed(), typed(), against)));
    }

    void settledAgainItIsToldAgain() {
        auto events = walked(true, inPhoto(), typed(), going(judge::Standing::within, false));
        std::size_t at = 0;
        while (!std::holds_alternative<Trended>(events[at].what))
            ++at;
        const Instant when = events[at].at;
        events.insert(events.begin() + static_cast<std::ptrdiff_t>(at) + 1,
                      {{0, when, Reopened{"oil", "Light."}}, {0, when, typed()}});
        for (std::size_t i = 0; i < events.size(); ++i)
            events[i].seq = static_cast<std::int64_t>(i) + 1;
        const Json content = sure(contentOf(false, events));
        QVERIFY(!point(content, "oil").contains("trend"));
        Json forged = content;
        for (Json& one : forged["points"])
            if (one["id"] == "oil") one["trend"] = {{"is", "within"}, {"words", Json::array()}};
        QVERIFY(whereOf(forged) != "accepted");
    }

    /// Without any of these a record is, byte for byte, what it was before version 5. What changes with
    /// Ambit's own version and the test machine's file is set aside.
    void earlierVersionsStay_data() {
        QTest::addColumn<bool>("fit");
        QTest::addColumn<std::string>("hash"); ///< as computed by the Ambit before version 5
        QTest::newRow("fit") << true
                             << std::string(
                                    "bec471d65c1b0c3356b2b96afa24b5d750b0a2dc58be89372f1aea8b28488bfe");
        QTest::newRow("not fit") << false
                                 << std::string(
                                        "4d6e38511cbc04a80ac7cfdf4353584e3c70969df0374e4edf0fc4e1dc31fc3a");
    }
    void earlierVersionsStay() {
        QFETCH(bool, fit);
        airframe::Airframe machine = test::recordedMachine();
        machine.sha256 = std::string(64, '0');
        auto events = test::roundOf(fit);
        std::get<Opened>(events.front().what).airframeSha256 = machine.sha256;
        Json content = sure(record::roundContent(machine, events, {}));
        QCOMPARE(content["version"], Json(1));
        content.erase("software");
        QTEST(sha256Hex(canonicalJson(content)), "hash");
    }

private:
    Json good;
};

QTEST_APPLESS_MAIN(TestRecordMeasured)
#include "tst_record_measured.moc"
