// What is measured in a photo or typed in another unit, as events, and where the values are going.
#include "rounds.hpp"

#include "../measure/views.hpp"
#include "round/trended.hpp"

#include <QTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using namespace ambit::round;
namespace views = measure::views;

namespace {

const std::string hash(64, 'a');

PhotoPlace placeOf(measure::Pixel pixel) {
    return {pixels(pixel.x), pixels(pixel.y)};
}

/// Two spots on the plane, mm from the card's middle, measured in a view from a slant.
Measurement distanceIn(const views::View& view, measure::Spot a, measure::Spot b) {
    Measurement its;
    its.what = Measurement::What::distance;
    its.photo = hash;
    its.width = view.frame.width;
    its.height = view.frame.height;
    its.card.emplace();
    for (const measure::Pixel corner : view.card())
        its.card->corners.push_back(placeOf(corner));
    its.card->deviation = "0.50";
    its.card->lies = measure::Lies::longSideFirst;
    its.marks = {placeOf(view.see(a)), placeOf(view.see(b))};
    its.deviation = "1.00";
    write(its, computed(its).value());
    return its;
}

views::View anyView() {
    views::Random random(7);
    return views::anyView(random, 30, 0.25);
}

Past past(const std::string& hours, const std::string& value, const std::string& unit = "qt") {
    return {{1750000000000}, {{"hours", hours}}, value, unit, {}, false, {}};
}

} // namespace

class TestMeasured : public QObject {
    Q_OBJECT

private slots:
    void computedAgainFromWhatIsKept() {
        const auto view = anyView();
        const Measurement its = distanceIn(view, {50, 10}, {50, 32});
        QCOMPARE(its.unit, std::string("mm"));
        const double value = std::stod(its.value);
        const double uncertainty = std::stod(its.uncertainty);
        QVERIFY2(std::abs(value - 22) < 3 * uncertainty + 0.02, its.value.c_str());
        QVERIFY2(uncertainty > 0.01 && uncertainty < 2, its.uncertainty.c_str());
        const auto again = computed(measurementFromJson(toJson(its)));
        QVERIFY(again);
        Measurement written = its;
        write(written, *again);
        QVERIFY(written == its);
    }

    void aKnownLengthThatDisagreesRefuses() {
        const auto view = anyView();
        Measurement its = distanceIn(view, {50, 10}, {50, 32});
        its.known = KnownLength{"22.0", "0.1", its.marks};
        QVERIFY(computed(its));
        its.known->length = "30.0";
        QVERIFY(!computed(its));
    }

    void refusedWhole() {
        const Json good = toJson(distanceIn(anyView(), {50, 10}, {50, 32}));
        const auto refuses = [&](const char* pointer, const Json& value) {
            Json bad = good;
            bad[Json::json_pointer(pointer)] = value;
            Settled settled = test::finding("oil", Severity::grounds);
            settled.photos = {{hash, "image/jpeg", 10}};
            Json event = toJson(Event{2, {1750000000000}, settled});
            event["measurements"] = Json::array({good});
            if (!eventFrom(event)) return false; // the good one must pass
            event["measurements"] = Json::array({bad});
            return !eventFrom(event);
        };
        QVERIFY(refuses("/what", "guess"));
        QVERIFY(refuses("/unit", "°"));
        QVERIFY(refuses("/uncertainty", "-1"));
        QVERIFY(refuses("/marks/0/x", "1.234"));
        QVERIFY(refuses("/marks/0/x", "200000"));
        QVERIFY(refuses("/marks", Json::array()));
        QVERIFY(refuses("/card/corners", Json::array({good["card"]["corners"][0]})));
        QVERIFY(refuses("/card/by", "magic"));
        QVERIFY(refuses("/photo", "abc"));
        QVERIFY(refuses("/width", 0));
        QVERIFY(refuses("/more", "x"));
    }

    void anotherUnitIsJudgedInTheLimits() {
        const auto machine = test::machine();
        test::Round round(machine);
        round.until("oil");
        // 4 to 6.0 qt; 1 qt = 0.946352946 L exactly (the US quart, 57.75 cubic inches).
        Settled settled = test::sound("oil");
        settled.value = "3.785411784"; // 4 qt, to the last digit
        settled.unit = "L";
        QVERIFY(allowed(round.state, machine, settled));
        settled.value = "3.785411783";
        QVERIFY(!allowed(round.state, machine, settled));
        settled.value = "5";
        settled.unit = "psi";
        QVERIFY(!allowed(round.state, machine, settled));
        settled.unit = "qt"; // the limit's own
        QVERIFY(!allowed(round.state, machine, settled));
        settled.unit = "L";
        QVERIFY(round.act(settled));
        QCOMPARE(versionOf(round.events.back().what), 5);
    }

    /// Version 6: what a typed value was read from, and how well.
    void whatATypedValueIsReadFrom() {
        const auto machine = test::machine();
        test::Round round(machine);
        round.until("oil");
        Settled settled = test::sound("oil");
        settled.value = "5.0";
        settled.uncertainty = "0.15";
        QVERIFY2(!allowed(round.state, machine, settled), "an uncertainty of nobody knows what");
        settled.from = airframe::Means::dipstick;
        settled.uncertainty = "-0.15";
        QVERIFY(!allowed(round.state, machine, settled));
        settled.uncertainty = "0.15";
        QCOMPARE(uncertaintyOf(settled), std::string("0.15"));
        Settled bare = settled;
        bare.value.reset();
        QVERIFY(!allowed(round.state, machine, bare));
        Settled unsure = settled;
        unsure.uncertainty.clear();
        QVERIFY(allowed(round.state, machine, unsure));
        QVERIFY(round.act(settled));
        const Event& event = round.events.back();
        QCOMPARE(versionOf(event.what), 6);
        const Json written = toJson(event);
        QVERIFY(written["valueFrom"] == "dipstick");
        QVERIFY(written["uncertainty"] == "0.15");
        const auto back = eventFrom(written);
        QVERIFY(back);
        QVERIFY(toJson(*back) == written);
        QVERIFY(std::get<Settled>(back->what).from == airframe::Means::dipstick);
    }

    void readingsAreRefusedWhole() {
        Settled settled = test::sound("oil");
        settled.value = "5.0";
        settled.from = airframe::Means::gauge;
        settled.uncertainty = "0.15";
        const Json good = toJson(Event{2, {1750000000000}, settled});
        QVERIFY(eventFrom(good));
        const auto refuses = [&](const char* name, const Json& value, const char* without = nullptr) {
            Json bad = good;
            bad[name] = value;
            if (without != nullptr) bad.erase(without);
            return !eventFrom(bad);
        };
        QVERIFY(refuses("valueFrom", "guess"));
        QVERIFY(refuses("valueFrom", ""));
        QVERIFY(refuses("valueFrom", 1));
        QVERIFY(refuses("valueFrom", "photo")); // no measurement; an uncertainty of its own
        QVERIFY(refuses("uncertainty", "-0.1"));
        QVERIFY(refuses("uncertainty", "1e-1"));
        QVERIFY(refuses("uncertainty", 0.15));
        QVERIFY(refuses("uncertainty", "0.15", "valueFrom"));
        QVERIFY(refuses("valueFrom", "gauge", "value"));
        Json unlooked = toJson(Event{2, {1750000000000}, test::notInspected("oil")});
        QVERIFY(eventFrom(unlooked));
        unlooked["valueFrom"] = "gauge";
        QVERIFY(!eventFrom(unlooked));
        for (const char* word : {"gauge", "ruler", "dipstick", "meter", "count", "eye"})
            QVERIFY(!refuses("valueFrom", word));
    }

    /// A deviation in °F is one in °C, whatever the zero of the scales.
    void uncertaintiesAreBroughtIntoTheLimitsUnit() {
        auto machine = test::machine();
        for (airframe::Point& point : machine.points)
            if (point.id == "oil") point.limit->unit = "°C";
        Past one = past("10", "41", "°F");
        one.uncertainty = "1.8";
        const auto course = courseOf(machine, *machine.point("oil"), {one});
        QVERIFY2(course, course ? "" : toText(course.error()).c_str());
        QCOMPARE(course->told.values.front().value, std::string("5"));
        QCOMPARE(course->told.values.front().uncertainty, std::string("1"));
        QCOMPARE(course->told.is, judge::Standing::near); // 5 ± 1.96 passes 4 to 6
    }

    void whatWasMeasuredIsInItsPhotos() {
        const auto machine = test::machine();
        test::Round round(machine);
        round.until("oil");
        Settled settled = test::finding("oil", Severity::grounds);
        settled.measurements = {distanceIn(anyView(), {50, 10}, {50, 32})};
        QVERIFY(!allowed(round.state, machine, settled));
        settled.photos = {{hash, "image/jpeg", 10}};
        QVERIFY(allowed(round.state, machine, settled));
        settled.byPhoto = true; // but the value is 5 qt
        QVERIFY(!allowed(round.state, machine, settled));
    }

    void thereAndBack() {
        Settled settled = test::sound("oil");
        settled.unit = "L";
        settled.renewed = true;
        settled.byPhoto = true;
        settled.photos = {{hash, "image/jpeg", 10}};
        settled.measurements = {distanceIn(anyView(), {50, 10}, {50, 32})};
        settled.value = settled.measurements.front().value;
        Measurement slip;
        slip.what = Measurement::What::slip;
        slip.value = "4.2";
        slip.unit = "°";
        slip.uncertainty = "1.1";
        slip.photo = hash;
        slip.width = slip.height = 1000;
        slip.tilt = "20";
        slip.marks = {{"0", "0"}, {"100", "0"}, {"110", "0"}, {"200", "5.25"}};
        slip.deviation = "1";
        settled.measurements.push_back(slip);
        const Json json = toJson(Event{2, {1750000000000}, settled});
        const auto event = eventFrom(json);
        QVERIFY2(event, event ? "" : toText(event.error()).c_str());
        QVERIFY(std::get<Settled>(event->what).measurements == settled.measurements);
        QCOMPARE(canonicalJson(toJson(*event)), canonicalJson(json));
        QVERIFY(computed(slip));
    }

    void aCourseComesToItsLimit() {
        auto machine = test::machine();
        auto& oil = *const_cast<airframe::Point*>(machine.point("oil"));
        oil.limit->trend = airframe::Trend{"hours", Decimal::parse("5").value(), true};
        std::vector<Past> values;
        values.reserve(8);
        for (int i = 0; i < 8; ++i)
            values.push_back(past(std::to_string(100 + 2 * i), "5." + std::to_string(8 - i)));
        // 5.8, 5.7 … 5.1: a tenth every 2 h; 4 is reached 22 h after the last.
        const auto course = courseOf(machine, oil, values);
        QVERIFY2(course, course ? "" : toText(course.error()).c_str());
        QCOMPARE(course->told.over, std::string("hours"));
        QCOMPARE(course->unit, std::string("h"));
        QVERIFY(course->told.is == judge::Standing::within);
        QCOMPARE(course->told.best, std::string("22"));
        QCOMPARE(course->told.line.size(), std::size_t{2});
        QVERIFY(course->told.band.size() > 5);
        oil.limit->trend->ahead = Decimal::parse("30").value();
        const auto near = courseOf(machine, oil, values);
        QVERIFY(near->told.is == judge::Standing::near);
        QVERIFY(near->told.stands);
        // Told, and back.
        const Json json = toJson(Event{2, {1750000000000}, near->told});
        const auto event = eventFrom(json);
        QVERIFY2(event, event ? "" : toText(event.error()).c_str());
        QVERIFY(std::get<Trended>(event->what) == near->told);
        QCOMPARE(versionOf(event->what), 5);
    }

    /// What each value was read from goes with it through what is left out, is stored, and read back.
    void aCourseTellsWhatItsValuesWereReadFrom() {
        const auto machine = test::machine();
        const auto read = [](Past one, const char* from) {
            one.from = from;
            return one;
        };
        const auto course = courseOf(machine, *machine.point("oil"),
                                     {read(past("100", "5.8"), "dipstick"), read(past("990", "5.7"), "eye"),
                                      past("104", "5.6"), read(past("106", "5.5"), "photo")});
        QVERIFY2(course, course ? "" : toText(course.error()).c_str());
        std::vector<std::string> from;
        for (const TrendValue& value : course->told.values)
            from.push_back(value.from);
        QVERIFY((from == std::vector<std::string>{"dipstick", "", "photo"}));
        QCOMPARE(versionOf(course->told), 7);
        Json json = toJson(Event{2, {1750000000000}, course->told});
        QVERIFY(json["values"][0]["from"] == "dipstick");
        QVERIFY(!json["values"][1].contains("from"));
        const auto event = eventFrom(json);
        QVERIFY2(event, event ? "" : toText(event.error()).c_str());
        QVERIFY(std::get<Trended>(event->what) == course->told);
        for (const Json& bad : {Json("guess"), Json(""), Json(nullptr), Json(true)}) {
            json["values"][2]["from"] = bad;
            const auto refused = eventFrom(json);
            QVERIFY2(!refused, bad.dump().c_str());
            QCOMPARE(refused.error().where, std::string("/values/2/from"));
        }
        // As before: none is said of any.
        for (Json& one : json["values"])
            one.erase("from");
        const auto older = eventFrom(json);
        QVERIFY2(older, older ? "" : toText(older.error()).c_str());
        QCOMPARE(versionOf(older->what), 5);
        QCOMPARE(canonicalJson(toJson(*older)), canonicalJson(json));
    }

    void readingsThatContradictAreLeftOut() {
        const auto machine = test::machine();
        const auto& oil = *machine.point("oil");
        const auto course = courseOf(machine, oil,
                                     {past("100", "5.8"), past("990", "5.7"), past("104", "5.6"),
                                      past("103", "5.5"), past("106", "4", "psi"), past("108", "4.9", "L")});
        QVERIFY(course);
        std::vector<std::string> hours;
        for (const TrendValue& value : course->told.values)
            hours.push_back(value.x);
        QVERIFY((hours == std::vector<std::string>{"100", "104", "108"}));
        QVERIFY2(course->told.values.back().value.starts_with("5.1777"), // 4.9 L / 0.946352946
                 course->told.values.back().value.c_str());
    }

    void whereItIsGoingStandsAgainstFitAsTheAirframeSays() {
        auto machine = test::machine();
        test::Round round(machine);
        round.toTheEnd();
        Trended told;
        told.point = "oil";
        told.over = "hours";
        told.values = {{"1234.5", "5", {}, false}};
        told.is = judge::Standing::near;
        told.stands = true;
        QVERIFY(!allowed(round.state, machine, told)); // the airframe says nothing of it
        auto& oil = *const_cast<airframe::Point*>(machine.point("oil"));
        oil.limit->trend = airframe::Trend{"hours", Decimal::parse("5").value(), true};
        QVERIFY(round.act(told));
        const auto obstacles = against(round.state, machine, true);
        QCOMPARE(obstacles.size(), std::size_t{1});
        QVERIFY(obstacles[0].kind == Obstacle::Kind::trend);
        QVERIFY(against(round.state, machine, false).empty());
        QVERIFY(!round.act(Concluded{true, ""}));
        // Settled again: what was told of the value before counts no more.
        QVERIFY(round.act(Reopened{"oil", "Topped up."}));
        QVERIFY(round.act(test::notInspected("oil", "MEL 79-1")));
        QVERIFY(against(round.state, machine, true).empty());
        QVERIFY(
            !allowed(round.state, machine,
                     Trended{"cowl-open.left", "hours", {}, told.values, {}, false, {}, {}, {}, {}, {}, {}}));
    }

    /// The records are read beside the screen: what they say may come while somebody is up there.
    void toldWhileAPortionIsLookedAt() {
        const auto machine = test::machine();
        test::Round round(machine);
        round.until("oil");
        QVERIFY(round.act(test::sound("oil")));
        Trended told;
        told.point = "oil";
        told.over = "hours";
        told.values = {{"1234.5", "5", {}, false}};
        round.state.portion = Portion{{"blade.a"}, true, {}};
        QVERIFY(allowed(round.state, machine, told));
    }

private:
    static Measurement measurementFromJson(const Json& json) {
        JsonTape tape;
        std::optional<Error> error;
        const Where where("");
        return measurementFrom(Fields(*tape.write(json), where, error));
    }
};

QTEST_APPLESS_MAIN(TestMeasured)
#include "tst_measured.moc"
