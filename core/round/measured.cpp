#include "round/measured.hpp"

#include "base/decimal.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <nlohmann/json.hpp>

namespace ambit::round {

namespace {

using What = Measurement::What;

constexpr std::int64_t mostPixels = 100000; ///< of a photo's side
constexpr std::size_t mostDecimals = 2;
constexpr std::array<std::string_view, 6> whats{"distance", "margin", "area", "width", "slip", "offset"};

double number(const std::string& written) {
    const auto value = Decimal::parse(written);
    return value ? value->approximate() : 0;
}

Json toJson(const std::vector<PhotoPlace>& places) {
    Json list = Json::array();
    for (const PhotoPlace& place : places)
        list.push_back({{"x", place.x}, {"y", place.y}});
    return list;
}

std::string pixelsFrom(Fields& fields, const char* name) {
    std::string written = fields.decimal(name);
    const std::size_t dot = written.find('.');
    const auto value = Decimal::parse(written);
    if (value && (*value < *Decimal::parse("-100000") || *value > *Decimal::parse("100000") ||
                  (dot != std::string::npos && written.size() - dot - 1 > mostDecimals)))
        fields.fail(say("Pixels from -100000 to 100000 with at most 2 decimals are expected here."), name);
    return written;
}

std::vector<PhotoPlace> placesFrom(Fields& fields, const char* name, std::size_t fewest, std::size_t most) {
    std::vector<PhotoPlace> places;
    for (Fields place : fields.list(name, most)) {
        std::string x = pixelsFrom(place, "x");
        std::string y = pixelsFrom(place, "y");
        places.push_back({std::move(x), std::move(y)});
        place.end();
    }
    if (places.size() < fewest)
        fields.fail(say("At least %1 marks are expected here.", std::to_string(fewest)), name);
    return places;
}

CardSeen cardFrom(Fields&& fields) {
    CardSeen card;
    card.corners = placesFrom(fields, "corners", 4, 4);
    card.deviation = zeroOrMore(fields, "deviation");
    card.byHand = fields.word("by", {"finder", "hand"}) == 1;
    if (fields.has("edgeWidth")) card.edgeWidth = zeroOrMore(fields, "edgeWidth");
    if (fields.has("firstSide"))
        card.lies = fields.word("firstSide", {"long", "short"}) == 0 ? measure::Lies::longSideFirst
                                                                     : measure::Lies::shortSideFirst;
    fields.end();
    return card;
}

KnownLength knownFrom(Fields&& fields) {
    KnownLength known;
    known.length = zeroOrMore(fields, "length");
    known.deviation = zeroOrMore(fields, "deviation");
    known.marks = placesFrom(fields, "marks", 2, 2);
    fields.end();
    return known;
}

measure::Mark markAt(const PhotoPlace& place, double deviation) {
    return {pixelOf(place), deviation};
}

Result<measure::Estimate> inPlane(What what, const measure::Plane& plane,
                                  const std::vector<measure::Mark>& marks) {
    switch (what) {
    case What::distance:
        return plane.distance(marks[0], marks[1]);
    case What::margin:
        return plane.margin(marks[0], marks[1], marks[2]);
    case What::area:
        return plane.area(marks);
    case What::width:
        return plane.largestWidth(marks);
    case What::slip:
    case What::offset:
        break;
    }
    const auto slip = measure::slip(plane, {marks[0], marks[1], marks[2], marks[3]});
    if (!slip) return tl::unexpected(slip.error());
    return what == What::slip ? slip->angle : slip->offset;
}

} // namespace

std::string zeroOrMore(Fields& fields, const char* name) {
    std::string written = fields.decimal(name);
    if (const auto value = Decimal::parse(written); value && *value < Decimal())
        fields.fail(say("Zero or more is expected here."), name);
    return written;
}

std::pair<std::size_t, std::size_t> marksOf(What what) {
    switch (what) {
    case What::distance:
        return {2, 2};
    case What::margin:
        return {3, 3};
    case What::area:
    case What::width:
        return {3, mostOutlineMarks};
    case What::slip:
    case What::offset:
        break;
    }
    return {4, 4};
}

const char* toText(What what) {
    return whats.at(static_cast<std::size_t>(what)).data();
}

const char* unitOf(What what) {
    return what == What::area ? "mm²" : what == What::slip ? "°" : "mm";
}

measure::Pixel pixelOf(const PhotoPlace& place) {
    return {number(place.x), number(place.y)};
}

Result<measure::Plane> planeOf(const Measurement& its) {
    if (!its.card || its.card->corners.size() != 4)
        return fail(ErrorCode::invalid, say("Without a card only an angle can be measured."), {},
                    say("Lay a card beside it, and take the picture again."));
    measure::Corners corners;
    for (std::size_t i = 0; i < corners.size(); ++i)
        corners[i] = {pixelOf(its.card->corners[i]), number(its.card->deviation)};
    return measure::Plane::of(corners, {static_cast<int>(its.width), static_cast<int>(its.height)},
                              number(its.card->edgeWidth), its.card->lies);
}

Result<measure::Estimate> computed(const Measurement& its) {
    std::vector<measure::Mark> marks;
    for (const PhotoPlace& place : its.marks)
        marks.push_back(markAt(place, number(its.deviation)));
    const auto [fewest, most] = marksOf(its.what);
    if (marks.size() < fewest || marks.size() > most)
        return fail(ErrorCode::invalid, say("At least %1 marks are expected here.", std::to_string(fewest)));
    if (!its.card && its.what == What::slip)
        return measure::slipAngle({marks[0], marks[1], marks[2], marks[3]}, number(its.tilt));
    const auto plane = planeOf(its);
    if (!plane) return tl::unexpected(plane.error());
    if (its.known) {
        const auto agrees = plane->agreesWith({number(its.known->length), number(its.known->deviation)},
                                              markAt(its.known->marks.at(0), number(its.deviation)),
                                              markAt(its.known->marks.at(1), number(its.deviation)));
        if (!agrees) return tl::unexpected(agrees.error());
    }
    return inPlane(its.what, *plane, marks);
}

void write(Measurement& measurement, const measure::Estimate& estimate) {
    // Two digits of the uncertainty (JCGM 100:2008, 7.2.6); no more than a record's decimals can hold.
    const int decimals =
        estimate.uncertainty > 0
            ? std::clamp(1 - static_cast<int>(std::floor(std::log10(estimate.uncertainty))), 0, 4)
            : 2;
    measurement.value = fixed(estimate.value, decimals);
    measurement.uncertainty = fixed(estimate.uncertainty, decimals);
    measurement.unit = unitOf(measurement.what);
}

std::string pixels(double value) {
    return fixed(std::clamp(value, -100000.0, 100000.0), static_cast<int>(mostDecimals));
}

Json toJson(const Measurement& its) {
    Json json{{"what", toText(its.what)},       {"value", its.value},         {"unit", its.unit},
              {"uncertainty", its.uncertainty}, {"photo", its.photo},         {"width", its.width},
              {"height", its.height},           {"marks", toJson(its.marks)}, {"deviation", its.deviation}};
    if (its.card) {
        Json& card = json["card"] = {{"corners", toJson(its.card->corners)},
                                     {"deviation", its.card->deviation},
                                     {"by", its.card->byHand ? "hand" : "finder"}};
        if (!its.card->edgeWidth.empty()) card["edgeWidth"] = its.card->edgeWidth;
        if (its.card->lies)
            card["firstSide"] = *its.card->lies == measure::Lies::longSideFirst ? "long" : "short";
    } else {
        json["tilt"] = its.tilt;
    }
    if (its.known) {
        json["known"] = {{"length", its.known->length},
                         {"deviation", its.known->deviation},
                         {"marks", toJson(its.known->marks)}};
    }
    return json;
}

Measurement measurementFrom(Fields&& fields) {
    Measurement its;
    its.what =
        static_cast<What>(fields.word("what", {whats[0], whats[1], whats[2], whats[3], whats[4], whats[5]}));
    its.value = fields.decimal("value");
    (void)fields.word("unit", {unitOf(its.what)});
    its.unit = unitOf(its.what);
    its.uncertainty = zeroOrMore(fields, "uncertainty");
    its.photo = fields.hash("photo");
    its.width = fields.integer("width", 1, mostPixels);
    its.height = fields.integer("height", 1, mostPixels);
    if (its.what != What::slip || fields.has("card"))
        its.card = cardFrom(fields.inner("card"));
    else
        its.tilt = zeroOrMore(fields, "tilt");
    const auto [fewest, most] = marksOf(its.what);
    its.marks = placesFrom(fields, "marks", fewest, most);
    its.deviation = zeroOrMore(fields, "deviation");
    if (its.card && fields.has("known")) its.known = knownFrom(fields.inner("known"));
    fields.end();
    return its;
}

std::string wordOfFrom(Fields& fields, const char* name) {
    (void)fields.word(name, {"photo", "gauge", "ruler", "dipstick", "meter", "count", "eye"});
    return std::string(fields.view(name));
}

void write(Json& json, const Trended& its) {
    json["point"] = its.point;
    json["over"] = its.over;
    if (!its.ahead.empty()) json["ahead"] = its.ahead;
    Json& values = json["values"] = Json::array();
    for (const TrendValue& value : its.values) {
        Json& one = values.emplace_back(Json{{"x", value.x}, {"value", value.value}});
        if (!value.uncertainty.empty()) one["uncertainty"] = value.uncertainty;
        if (value.renewed) one["renewed"] = true;
        if (!value.from.empty()) one["from"] = value.from;
    }
    json["is"] = judge::toText(its.is);
    if (its.is != judge::Standing::within) json["then"] = its.stands ? "against" : "warns";
    Json& words = json["words"] = Json::array();
    for (const std::string& text : its.words)
        words.push_back({{"text", text}});
    if (!its.line.empty()) {
        Json& line = json["line"] = Json::array();
        for (const TrendValue& end : its.line)
            line.push_back({{"x", end.x}, {"value", end.value}});
    }
    if (!its.band.empty()) {
        Json& band = json["band"] = Json::array();
        for (const Trended::Band& one : its.band)
            band.push_back({{"x", one.x}, {"low", one.low}, {"high", one.high}});
    }
    for (const auto& [name, text] : {std::pair("earliest", &its.earliest), std::pair("best", &its.best),
                                     std::pair("latest", &its.latest)})
        if (!text->empty()) json[name] = *text;
}

Trended trendedFrom(Fields& fields) {
    Trended its;
    its.point = fields.text("point");
    its.over = fields.text("over");
    if (fields.has("ahead")) its.ahead = zeroOrMore(fields, "ahead");
    for (Fields one : fields.list("values", mostTrendValues)) {
        TrendValue& value = its.values.emplace_back();
        value.x = one.decimal("x");
        value.value = one.decimal("value");
        if (one.has("uncertainty")) value.uncertainty = zeroOrMore(one, "uncertainty");
        if (one.has("renewed")) {
            value.renewed = one.any("renewed").isFlag() && one.any("renewed").flag();
            if (!value.renewed) one.fail(say("true is expected here, or nothing."), "renewed");
        }
        if (one.has("from")) value.from = wordOfFrom(one, "from");
        one.end();
    }
    if (its.values.empty()) fields.fail(say("A list that isn't empty is expected here."), "values");
    its.is = static_cast<judge::Standing>(fields.word("is", {"within", "near", "passed"}));
    if (its.is != judge::Standing::within) its.stands = fields.word("then", {"against", "warns"}) == 0;
    for (Fields one : fields.list("words", 20)) {
        its.words.push_back(one.text("text"));
        one.end();
    }
    if (fields.has("line")) {
        for (Fields one : fields.list("line", 2)) {
            its.line.push_back({one.decimal("x"), one.decimal("value"), {}, false});
            one.end();
        }
        if (its.line.size() != 2) fields.fail(say("A line has two ends."), "line");
    }
    if (fields.has("band")) {
        for (Fields one : fields.list("band", mostBand)) {
            its.band.push_back({one.decimal("x"), one.decimal("low"), one.decimal("high")});
            one.end();
        }
        if (its.band.empty()) fields.fail(say("A list that isn't empty is expected here."), "band");
    }
    for (const auto& [name, text] : {std::pair("earliest", &its.earliest), std::pair("best", &its.best),
                                     std::pair("latest", &its.latest)})
        if (fields.has(name)) *text = fields.decimal(name);
    return its;
}

} // namespace ambit::round
