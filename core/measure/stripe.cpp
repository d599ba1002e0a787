#include "measure/stripe.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

constexpr double degrees = 57.29577951308232;

/// From one direction to the other, clockwise with y down.
double angleBetween(Spot a, Spot b) {
    return std::atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y) * degrees;
}

Spot from(Spot a, Spot b) {
    return {b.x - a.x, b.y - a.y};
}

/// Of the four marks in the stripe's order.
double angleOf(const std::vector<Spot>& s) {
    return angleBetween(from(s[0], s[1]), from(s[2], s[3]));
}

double offsetOf(const std::vector<Spot>& s) {
    const Spot a = from(s[0], s[1]);
    const Spot b = from(s[2], s[3]);
    const double la = std::hypot(a.x, a.y);
    const double lb = std::hypot(b.x, b.y);
    const Spot along{a.x / la + b.x / lb, a.y / la + b.y / lb};
    const Spot gap = from(s[1], s[2]);
    return (along.x * gap.y - along.y * gap.x) / std::hypot(along.x, along.y);
}

/// An angle near 180 degrees jumps to -180 while it is propagated: all are taken from the middle one.
auto about(double middle) {
    return [middle](const std::vector<Spot>& s) { return middle + std::remainder(angleOf(s) - middle, 360); };
}

bool oneSpot(const Mark& a, const Mark& b) {
    return !(std::hypot(a.at.x - b.at.x, a.at.y - b.at.y) > 0);
}

tl::unexpected<Error> noStroke() {
    return fail(ErrorCode::refused, say("Two marks are in the same place."), {},
                say("Move one of them to where it belongs."));
}

} // namespace

Result<Slip> slip(const Plane& plane, const Stripe& stripe) {
    if (oneSpot(stripe.boltFar, stripe.boltJoint) || oneSpot(stripe.partJoint, stripe.partFar))
        return noStroke();
    const std::vector<Mark> marks{stripe.boltFar, stripe.boltJoint, stripe.partJoint, stripe.partFar};
    const auto rough = plane.estimate(marks, angleOf);
    if (!rough) return tl::unexpected(rough.error());
    const auto angle = plane.estimate(marks, about(rough->value));
    const auto offset = plane.estimate(marks, offsetOf);
    if (!angle) return tl::unexpected(angle.error());
    if (!offset) return tl::unexpected(offset.error());
    return Slip{*angle, *offset};
}

Result<Estimate> slipAngle(const Stripe& stripe, double atMostTilted) {
    if (!(atMostTilted >= 0 && atMostTilted <= mostUnknownTilt))
        return fail(ErrorCode::refused,
                    say("How far the camera is tilted over the bolt isn't known well enough."), {},
                    say("Hold it straight above the bolt, or lay a card beside it."));
    if (oneSpot(stripe.boltFar, stripe.boltJoint) || oneSpot(stripe.partJoint, stripe.partFar))
        return noStroke();
    std::vector<Input> inputs;
    inputs.reserve(8);
    for (const Mark& mark : {stripe.boltFar, stripe.boltJoint, stripe.partJoint, stripe.partFar}) {
        inputs.push_back({mark.at.x, mark.deviation});
        inputs.push_back({mark.at.y, mark.deviation});
    }
    const auto spotsOf = [](const std::vector<double>& v) {
        return std::vector<Spot>{{v[0], v[1]}, {v[2], v[3]}, {v[4], v[5]}, {v[6], v[7]}};
    };
    std::vector<double> middle;
    middle.reserve(inputs.size());
    for (const Input& input : inputs)
        middle.push_back(input.value);
    const std::vector<Spot> seen = spotsOf(middle);
    const double value = angleOf(seen);
    const auto touched =
        propagated(inputs, [&](const std::vector<double>& v) { return about(value)(spotsOf(v)); });

    double low = value;
    double high = value;
    // The widest is at the greatest tilt, about one axis or another.
    for (int axis = 0; axis < 180; ++axis) {
        const double c = std::cos(axis / degrees);
        const double s = std::sin(axis / degrees);
        const double stretch = 1 / std::cos(atMostTilted / degrees);
        std::vector<Spot> flat;
        flat.reserve(seen.size());
        for (const Spot& spot : seen)
            flat.push_back({c * spot.x + s * spot.y, stretch * (c * spot.y - s * spot.x)});
        const double angle = about(value)(flat);
        low = std::min(low, angle);
        high = std::max(high, angle);
    }
    const double tilted = (high - low) / 3.4641016151377544; // all alike likely: root 12
    const double margin = cover95 * touched.uncertainty;
    return Estimate{value, std::hypot(touched.uncertainty, tilted), low - margin, high + margin};
}

} // namespace ambit::measure
