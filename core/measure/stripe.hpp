// A slippage mark: a stroke of paint across a bolt head and the part it holds. If the bolt has turned, the
// halves are at an angle.
#pragma once

#include "measure/plane.hpp"

namespace ambit::measure {

/// Both halves are marked in the same sense along the stripe: the bolt's from its far end to the joint, the
/// part's from the joint to its far end.
struct Stripe {
    Mark boltFar;
    Mark boltJoint;
    Mark partJoint;
    Mark partFar;
};

struct Slip {
    Estimate angle;  ///< degrees, -180 to 180: by how much the part's half is turned clockwise, as seen, from
                     ///< the bolt's
    Estimate offset; ///< mm at the joint, across the stripe; above zero where the part's half lies to the
                     ///< right of the bolt's, looking along it towards the part
};

/// In the plane of a card. Refused as any other measure in the plane.
[[nodiscard]] Result<Slip> slip(const Plane& plane, const Stripe& stripe);

/// Without a card the camera's tilt over the bolt isn't known; it is only said to be at most so many degrees.
/// A tilt of t shrinks one direction by cos t: the interval holds every angle that could look like this one,
/// from any side, and what the marks leave open; the uncertainty counts these as all alike likely. Refused
/// above 30 degrees, and where the marks of a half are in one place.
[[nodiscard]] Result<Estimate> slipAngle(const Stripe& stripe, double atMostTilted);

inline constexpr double mostUnknownTilt = 30; ///< degrees; an angle of 10 then is one of 8.7 to 11.5

} // namespace ambit::measure
