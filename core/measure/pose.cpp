#include "measure/pose.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <limits>

namespace ambit::measure {
namespace {

using Column = std::array<double, 3>;

double dot(const Column& a, const Column& b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/// The homography's first two columns and its shift, with the lens's middle as the origin.
struct Columns {
    Column first;
    Column second;
    Column shift;
};

Columns columnsOf(const Quad& quad, Lies lies, const Frame& frame) {
    const double longer = std::max(frame.width, frame.height);
    Quad q = quad;
    for (Pixel& p : q)
        p = {(p.x - (frame.width - 1) / 2.0) / longer, (p.y - (frame.height - 1) / 2.0) / longer};
    const bool longFirst = lies == Lies::longSideFirst;
    const auto m = Homography::of(q, longFirst ? card::length / card::width : 1,
                                  longFirst ? 1 : card::length / card::width)
                       .matrix();
    return {{m[0], m[3], m[6]}, {m[1], m[4], m[7]}, {m[2], m[5], m[8]}};
}

Column seenWith(double focal, const Column& c) {
    return {c[0] / focal, c[1] / focal, c[2]};
}

struct Conditions {
    double square = 0; // the cosine of the angle between the sides
    double ratio = 0;  // the logarithm of how much too long the first side is for the last
};

Conditions conditionsAt(double focal, const Columns& columns) {
    const Column a = seenWith(focal, columns.first);
    const Column b = seenWith(focal, columns.second);
    const double aa = dot(a, a);
    const double bb = dot(b, b);
    return {dot(a, b) / std::sqrt(aa * bb), std::log(aa / bb) / 2};
}

/// Chi² of the two conditions at a focal length, by what the moved corners do to them.
double misfitAt(double focal, const Columns& columns, const std::array<Columns, 8>& moved) {
    const Conditions at = conditionsAt(focal, columns);
    double ss = 1e-12;
    double rr = 1e-12;
    double sr = 0;
    for (const Columns& m : moved) {
        const Conditions beside = conditionsAt(focal, m);
        const double s = beside.square - at.square;
        const double r = beside.ratio - at.ratio;
        ss += s * s;
        rr += r * r;
        sr += s * r;
    }
    return (at.square * at.square * rr - 2 * at.square * at.ratio * sr + at.ratio * at.ratio * ss) /
           (ss * rr - sr * sr);
}

double tiltAt(double focal, const Columns& columns, Pixel middle) {
    const Column a = seenWith(focal, columns.first);
    const Column b = seenWith(focal, columns.second);
    const Column normal{a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    const Column sight{middle.x / focal, middle.y / focal, 1};
    const double cosine = std::abs(dot(normal, sight)) / std::sqrt(dot(normal, normal) * dot(sight, sight));
    return std::acos(std::min(1.0, cosine)) * 57.29577951308232;
}

/// What is asked at every focal length.
struct Looked {
    Columns columns;
    std::array<Columns, 8> moved; // each corner a deviation to the right, and down
    Pixel middle;

    /// With what speaks against a very flat look.
    [[nodiscard]] Pose at(double focal) const {
        const double tilt = tiltAt(focal, columns, middle);
        const double tooFlat = std::max(0.0, tilt - likelyTilt) / 3;
        return {misfitAt(focal, columns, moved) + tooFlat * tooFlat, focal, tilt};
    }
};

Looked lookedAt(const Quad& quad, Lies lies, const Frame& frame, double deviation) {
    Looked looked;
    looked.columns = columnsOf(quad, lies, frame);
    const double step = std::max(deviation, 1e-3);
    for (std::size_t i = 0; i < 8; ++i) {
        Quad q = quad;
        (i % 2 == 0 ? q[i / 2].x : q[i / 2].y) += step;
        looked.moved[i] = columnsOf(q, lies, frame);
    }
    const double longer = std::max(frame.width, frame.height);
    for (const Pixel& p : quad) {
        looked.middle.x += (p.x - (frame.width - 1) / 2.0) / longer / 4;
        looked.middle.y += (p.y - (frame.height - 1) / 2.0) / longer / 4;
    }
    return looked;
}

constexpr int focalSteps = 24;
const double focalRatio = std::pow(mostFocal / leastFocal, 1.0 / focalSteps);

} // namespace

Pose poseOf(const Quad& quad, Lies lies, const Frame& frame, double deviation) {
    const Looked looked = lookedAt(quad, lies, frame, deviation);
    Pose best;
    best.misfit = std::numeric_limits<double>::infinity();
    const auto tried = [&](double focal) {
        const Pose pose = looked.at(focal);
        if (pose.misfit < best.misfit) best = pose;
    };
    for (int i = 0; i <= focalSteps; ++i)
        tried(leastFocal * std::pow(focalRatio, i));
    if (!std::isfinite(best.misfit)) return best;
    // Ever closer about the best one: a near card, strongly in perspective, tells its focal length to 0.1 %.
    double finer = focalRatio;
    for (int i = 0; i < 10; ++i) {
        finer = std::sqrt(finer);
        const double focal = best.focal;
        tried(std::min(mostFocal, focal * finer));
        tried(std::max(leastFocal, focal / finer));
    }
    return best;
}

bool mayBeCard(const Quad& quad, const Frame& frame, double deviation, double most) {
    for (const Lies lies : {Lies::longSideFirst, Lies::shortSideFirst}) {
        const Looked looked = lookedAt(quad, lies, frame, deviation);
        for (int i = 0; i <= focalSteps; i += 2)
            if (looked.at(leastFocal * std::pow(focalRatio, i)).misfit < most) return true;
    }
    return false;
}

} // namespace ambit::measure
