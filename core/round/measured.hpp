// What was measured in a photo, and where measured values are going, as an event tells it: EVENT.md, from
// version 5 on. Everything is a decimal string, so that it can be computed again from the record and the
// photo.
#pragma once

#include "airframe/airframe.hpp"
#include "base/fields.hpp"
#include "judge/trend.hpp"
#include "measure/stripe.hpp"

namespace ambit::round {

/// A place in an upright photo: pixels from its first pixel's middle, x to the right, y down; decimal strings
/// from -100000 to 100000, at most 2 decimals.
struct PhotoPlace {
    std::string x;
    std::string y;
    friend bool operator==(const PhotoPlace&, const PhotoPlace&) = default;
};

/// The card as it lies in the photo.
struct CardSeen {
    std::vector<PhotoPlace> corners; ///< four, clockwise as seen: where its sides meet
    std::string deviation;           ///< standard deviation of a corner, pixels
    bool byHand = false; ///< "hand": a person set or moved a corner; else "finder", and a person confirmed it
    std::string edgeWidth;             ///< pixels in which a side goes from dark to light; empty: not known
    std::optional<measure::Lies> lies; ///< said by a person, where the photo leaves it open
    friend bool operator==(const CardSeen&, const CardSeen&) = default;
};

/// A length that is known otherwise, in the same plane: shows that the card lies flat with the part.
struct KnownLength {
    std::string length;            ///< mm
    std::string deviation;         ///< mm, standard uncertainty
    std::vector<PhotoPlace> marks; ///< its two ends
    friend bool operator==(const KnownLength&, const KnownLength&) = default;
};

struct Measurement {
    enum class What { distance, margin, area, width, slip, offset };
    ///< "distance" of two marks; "margin" of the first mark to the line through the others; "area" in a
    ///< closed outline; "width", its largest; "slip", the angle, and "offset" of a mark across a bolt's head:
    ///< measure/stripe.hpp
    What what{};
    std::string value;
    std::string unit;        ///< mm, mm² or °
    std::string uncertainty; ///< standard, in that unit
    std::string photo;       ///< SHA-256: one of the settling's
    std::int64_t width = 0;  ///< of the upright photo, pixels
    std::int64_t height = 0;
    std::optional<CardSeen> card;  ///< none: a slip seen within `tilt` of straight down
    std::string tilt;              ///< degrees; empty with a card
    std::vector<PhotoPlace> marks; ///< as many as `what` takes
    std::string deviation;         ///< standard deviation of a mark, pixels
    std::optional<KnownLength> known;
    friend bool operator==(const Measurement&, const Measurement&) = default;
};

inline constexpr std::size_t mostMeasurements = 8;   ///< of one settling
inline constexpr std::size_t mostOutlineMarks = 100; ///< of an area
/// Fewest and most marks of a kind.
[[nodiscard]] std::pair<std::size_t, std::size_t> marksOf(Measurement::What what);

[[nodiscard]] const char* toText(Measurement::What what);
/// The unit of such a value.
[[nodiscard]] const char* unitOf(Measurement::What what);

[[nodiscard]] measure::Pixel pixelOf(const PhotoPlace& place);
/// The plane of the part, by the card. Errors: there is none; as of measure::Plane.
[[nodiscard]] Result<measure::Plane> planeOf(const Measurement& measurement);
/// The value and its uncertainty from the marks; `value` and `uncertainty` are not looked at. Errors: as of
/// measure::Plane, and where a second known length disagrees.
[[nodiscard]] Result<measure::Estimate> computed(const Measurement& measurement);

/// As written in a record: the uncertainty with two significant digits, the value with as many decimals.
void write(Measurement& measurement, const measure::Estimate& estimate);
/// A length in pixels as an event has it, to the hundredth.
[[nodiscard]] std::string pixels(double value);

/// One value of a series, in the limit's unit.
struct TrendValue {
    std::string x; ///< of `over`
    std::string value;
    std::string uncertainty; ///< standard; empty: not stated
    bool renewed = false;    ///< the part was renewed or repainted before it
    std::string from = {};   ///< what it was read from: EVENT.md's word; empty: not said, as before version 7
    friend bool operator==(const TrendValue&, const TrendValue&) = default;
};

/// "trend": what earlier records and this round say of a measured point, as it was told to whoever walks.
/// Its figures are kept as they were told, so that a later Ambit draws and judges the same.
struct Trended {
    struct Band {
        std::string x;
        std::string low;
        std::string high;
        friend bool operator==(const Band&, const Band&) = default;
    };
    std::string point;
    std::string over;               ///< a counter's id, or "days" since the first of `values`
    std::string ahead;              ///< until the end of the next flight, of `over`; empty: not said
    std::vector<TrendValue> values; ///< oldest first; the last is this round's
    judge::Standing is{};           ///< at the last value, or until `ahead`
    bool stands = false;            ///< against "fit", as the airframe says: else it warns
    std::vector<std::string> words; ///< one sentence each, in English
    std::vector<TrendValue> line;   ///< Theil and Sen's, its two ends (x, value)
    std::vector<Band> band;         ///< where 95 % of values lie, by least squares
    std::string earliest;           ///< of `over` from the last value on to the limit, 95 %; empty: not told
    std::string best;
    std::string latest;
    friend bool operator==(const Trended&, const Trended&) = default;
};

inline constexpr std::size_t mostTrendValues = 200; ///< the newest
inline constexpr std::size_t mostBand = 50;

/// A standard deviation, a length, a tilt: a decimal string, zero or more.
[[nodiscard]] std::string zeroOrMore(Fields& fields, const char* name);
/// What a value was read from: "photo", or the word of one of airframe::Means.
[[nodiscard]] std::string wordOfFrom(Fields& fields, const char* name);

[[nodiscard]] Json toJson(const Measurement& measurement);
[[nodiscard]] Measurement measurementFrom(Fields&& fields);
void write(Json& json, const Trended& trended);
[[nodiscard]] Trended trendedFrom(Fields& fields);

} // namespace ambit::round
