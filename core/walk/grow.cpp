// Growing and uniting is Clipper's work: it computes in whole numbers, here micrometres. A finer grid would
// gain nothing a tape measure could see, and lose exact products in 64 bits.
#include "walk/taken.hpp"

#include <polyclipping/clipper.hpp>

namespace ambit::walk {

namespace {

namespace clip = ClipperLib;

constexpr double spotsPerMetre = 1e6;

clip::Path pathOf(const airframe::Outline& outline) {
    clip::Path path;
    for (const airframe::Place& place : outline) {
        const Spot spot = spotOf(place);
        path.emplace_back(spot.x, spot.y);
    }
    if (!clip::Orientation(path))
        clip::ReversePath(path); // so that what is taken counts as wound once, not as a hole
    return path;
}

void addRings(std::vector<Ring>& rings, const clip::PolyNode& node, bool outermost) {
    for (const clip::PolyNode* child : node.Childs) {
        Ring ring{{}, outermost};
        for (const clip::IntPoint& point : child->Contour)
            ring.spots.push_back({point.X, point.Y});
        rings.push_back(std::move(ring));
        addRings(rings, *child, false);
    }
}

} // namespace

std::vector<Ring> grownAndUnited(const std::vector<airframe::Outline>& outlines, double metres,
                                 double toleranceMetres) {
    clip::Clipper clipper; // spotOf keeps coordinates in its range: nothing here throws
    for (const airframe::Outline& outline : outlines)
        clipper.AddPath(pathOf(outline), clip::ptSubject, true);
    clip::PolyTree united;
    if (metres <= 0) {
        clipper.Execute(clip::ctUnion, united, clip::pftNonZero);
    } else {
        clip::Paths paths;
        clipper.Execute(clip::ctUnion, paths, clip::pftNonZero);
        // A step of an arc can be half as long again as asked for, and then cuts 1.5² as deep.
        clip::ClipperOffset offset(2, toleranceMetres * spotsPerMetre / 2.3);
        offset.AddPaths(paths, clip::jtRound, clip::etClosedPolygon);
        offset.Execute(united, metres * spotsPerMetre);
    }
    std::vector<Ring> rings;
    addRings(rings, united, true);
    return rings;
}

} // namespace ambit::walk
