#include "measure/plane.hpp"

#include "base/decimal.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

Quad quadOf(const Corners& corners) {
    return {corners[0].at, corners[1].at, corners[2].at, corners[3].at};
}

double between(Pixel a, Pixel b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

double between(Spot a, Spot b) {
    return std::hypot(a.x - b.x, a.y - b.y);
}

Homography mapOf(const Quad& quad, Lies lies, double length, double width) {
    return lies == Lies::longSideFirst ? Homography::of(quad, length, width)
                                       : Homography::of(quad, width, length);
}

Sentence oneDecimal(double value) {
    return figure(fixed(value, 1));
}

bool isNumber(const Mark& mark) {
    return std::isfinite(mark.at.x) && std::isfinite(mark.at.y) && std::isfinite(mark.deviation) &&
           mark.deviation >= 0;
}

tl::unexpected<Error> oneSpot() {
    return fail(ErrorCode::refused, say("Two marks are in the same place."), {},
                say("Move one of them to where it belongs."));
}

double turn(Spot a, Spot b, Spot c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(Spot a, Spot b, Spot c, Spot d) {
    return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

double areaOf(const std::vector<Spot>& spots) {
    double twice = 0;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        const Spot& a = spots[i];
        const Spot& b = spots[(i + 1) % spots.size()];
        twice += a.x * b.y - a.y * b.x;
    }
    return std::abs(twice) / 2;
}

Result<Estimate> noLessThanNothing(Result<Estimate> estimate) {
    if (estimate) estimate->low = std::max(0.0, estimate->low);
    return estimate;
}

} // namespace

Result<Plane> Plane::of(const Corners& corners, const Frame& frame, double edgeWidth,
                        std::optional<Lies> lies) {
    const Quad quad = quadOf(corners);
    if (!std::all_of(corners.begin(), corners.end(), isNumber) || frame.width < 1 || frame.height < 1)
        return fail(ErrorCode::invalid, say("A corner's place or the picture's size is no number."));
    if (!goesRound(quad))
        return fail(ErrorCode::refused, say("These four corners don't go round the card."), {},
                    say("Mark the card's corners clockwise, one after the other."));
    double shortest = between(quad[3], quad[0]);
    double variance = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        shortest = std::min(shortest, between(quad[i], quad[(i + 1) % 4]));
        variance += corners[i].deviation * corners[i].deviation / 4;
    }
    if (shortest < leastSide)
        return fail(ErrorCode::refused, say("The card is too small in the picture."), {},
                    say("Go closer, until the card fills a quarter of the picture's width."));
    if (edgeWidth > std::max(4.0, mostEdgeWidth * shortest))
        return fail(ErrorCode::refused, say("The picture is blurred."), {},
                    say("Hold the camera still, let it focus on the card, and take it again."));

    const double deviation = std::max(0.3, std::sqrt(variance));
    const Pose longFirst = poseOf(quad, Lies::longSideFirst, frame, deviation);
    const Pose shortFirst = poseOf(quad, Lies::shortSideFirst, frame, deviation);
    if (!lies) {
        if (std::min(longFirst.misfit, shortFirst.misfit) <= mostMisfit &&
            std::abs(longFirst.misfit - shortFirst.misfit) < clearlyBetter)
            return fail(
                ErrorCode::refused, say("It can't be told which way round the card lies."), {},
                say("Look more straight down on the card, or say which of its sides is the long one."));
        lies = longFirst.misfit < shortFirst.misfit ? Lies::longSideFirst : Lies::shortSideFirst;
    }
    Plane plane;
    plane.corners = corners;
    plane.its = *lies;
    plane.pose = *lies == Lies::longSideFirst ? longFirst : shortFirst;
    if (!(plane.pose.misfit <= mostMisfit))
        return fail(ErrorCode::refused, say("These four corners are not those of a card of this size."), {},
                    say("Mark the corners where the card's straight sides would meet."));
    if (plane.pose.tilt > mostTilt)
        return fail(ErrorCode::refused, say("The camera looks at the card too flat."), {},
                    say("Hold it more straight above the card."));
    plane.homography = mapOf(quad, *lies, card::length, card::width);
    return plane;
}

Result<Estimate> Plane::estimate(const std::vector<Mark>& marks,
                                 const std::function<double(const std::vector<Spot>&)>& of) const {
    const Spot middle = its == Lies::longSideFirst ? Spot{card::length / 2, card::width / 2}
                                                   : Spot{card::width / 2, card::length / 2};
    for (const Mark& mark : marks) {
        if (!isNumber(mark)) return fail(ErrorCode::invalid, say("A mark's place is no number."));
        const auto spot = homography.toPlane(mark.at);
        if (!spot || between(*spot, middle) > mostDistance)
            return fail(ErrorCode::refused, say("A mark is too far from the card to be measured."), {},
                        say("Lay the card closer to what is measured: within two card lengths."));
    }
    std::vector<Input> inputs{{card::length, card::lengthDeviation}, {card::width, card::widthDeviation}};
    const auto add = [&](const Mark& mark) {
        inputs.push_back({mark.at.x, mark.deviation});
        inputs.push_back({mark.at.y, mark.deviation});
    };
    std::for_each(corners.begin(), corners.end(), add);
    std::for_each(marks.begin(), marks.end(), add);
    return propagated(inputs, [&](const std::vector<double>& v) {
        const Homography moved =
            mapOf({{{v[2], v[3]}, {v[4], v[5]}, {v[6], v[7]}, {v[8], v[9]}}}, its, v[0], v[1]);
        std::vector<Spot> spots;
        spots.reserve(marks.size());
        // Within the limits checked above the horizon is far: no small step reaches it.
        for (std::size_t i = 10; i < v.size(); i += 2)
            spots.push_back(moved.toPlane({v[i], v[i + 1]}).value_or(Spot{}));
        return of(spots);
    });
}

Result<Estimate> Plane::distance(const Mark& a, const Mark& b) const {
    if (between(a.at, b.at) == 0) return oneSpot();
    return noLessThanNothing(
        estimate({a, b}, [](const std::vector<Spot>& s) { return between(s[0], s[1]); }));
}

Result<Estimate> Plane::margin(const Mark& point, const Mark& a, const Mark& b) const {
    if (between(a.at, b.at) == 0) return oneSpot();
    // Signed while it is propagated: straight where the point lies on the line.
    auto found = estimate({point, a, b}, [](const std::vector<Spot>& s) {
        return turn(s[1], s[2], s[0]) / between(s[1], s[2]);
    });
    if (found && found->value < 0) *found = {-found->value, found->uncertainty, -found->high, -found->low};
    return noLessThanNothing(std::move(found));
}

Result<Estimate> Plane::area(const std::vector<Mark>& outline) const {
    if (outline.size() < 3)
        return fail(ErrorCode::refused, say("An outline needs three marks or more."), {},
                    say("Mark it all the way round."));
    std::vector<Spot> spots;
    spots.reserve(outline.size());
    for (const Mark& mark : outline)
        spots.push_back(homography.toPlane(mark.at).value_or(Spot{}));
    const std::size_t n = spots.size();
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = i + 2; j < n; ++j)
            if (cross(spots[i], spots[i + 1], spots[j], spots[(j + 1) % n]))
                return fail(ErrorCode::refused, say("The outline crosses itself."), {},
                            say("Mark it once round, without going back."));
    return noLessThanNothing(estimate(outline, areaOf));
}

Result<Estimate> Plane::largestWidth(const std::vector<Mark>& outline) const {
    if (outline.size() < 2)
        return fail(ErrorCode::refused, say("An outline needs three marks or more."), {},
                    say("Mark it all the way round."));
    std::size_t from = 0;
    std::size_t to = 1;
    double most = -1;
    for (std::size_t i = 0; i < outline.size(); ++i)
        for (std::size_t j = i + 1; j < outline.size(); ++j) {
            const auto a = homography.toPlane(outline[i].at);
            const auto b = homography.toPlane(outline[j].at);
            const double wide = a && b ? between(*a, *b) : 1e9; // then the distance is refused
            if (wide <= most) continue;
            most = wide;
            from = i;
            to = j;
        }
    return distance(outline[from], outline[to]);
}

Result<Estimate> Plane::agreesWith(const Input& known, const Mark& a, const Mark& b) const {
    auto measured = distance(a, b);
    if (!measured) return measured;
    constexpr double once100 = 2.5758293035489; // the normal distribution's 99.5 % quantile
    if (std::abs(measured->value - known.value) >
        once100 * std::hypot(measured->uncertainty, known.deviation))
        return fail(
            ErrorCode::refused,
            say("The second length measures %1 mm and should be %2 mm: the card isn't flat with the part.",
                oneDecimal(measured->value), oneDecimal(known.value)),
            {}, say("Lay the card flat on the part, in the same plane, and take the picture again."));
    return measured;
}

} // namespace ambit::measure
