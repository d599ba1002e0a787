#include "measure/homography.hpp"

#include <cmath>
#include <cstddef>

namespace ambit::measure {
namespace {

double cross(Pixel a, Pixel b, Pixel c) {
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
}

std::array<double, 9> adjugate(const std::array<double, 9>& m) {
    return {m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
            m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
            m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]};
}

} // namespace

bool goesRound(const Quad& quad) {
    for (std::size_t i = 0; i < 4; ++i)
        if (!(cross(quad[i], quad[(i + 1) % 4], quad[(i + 2) % 4]) > 0)) return false;
    return true;
}

Homography Homography::of(const Quad& quad, double first, double last) {
    Homography h;
    for (const Pixel& p : quad) {
        h.middle.x += p.x / 4;
        h.middle.y += p.y / 4;
    }
    double far = 0;
    for (const Pixel& p : quad)
        far += std::hypot(p.x - h.middle.x, p.y - h.middle.y) / 4;
    h.scale = far > 0 ? far : 1;
    Quad q;
    for (std::size_t i = 0; i < 4; ++i)
        q[i] = {(quad[i].x - h.middle.x) / h.scale, (quad[i].y - h.middle.y) / h.scale};

    // The unit square to the quad, its columns then divided by the rectangle's sides.
    const double dx1 = q[1].x - q[2].x;
    const double dy1 = q[1].y - q[2].y;
    const double dx2 = q[3].x - q[2].x;
    const double dy2 = q[3].y - q[2].y;
    const double sx = q[0].x - q[1].x + q[2].x - q[3].x;
    const double sy = q[0].y - q[1].y + q[2].y - q[3].y;
    const double det = dx1 * dy2 - dx2 * dy1;
    const double g = (sx * dy2 - dx2 * sy) / det;
    const double k = (dx1 * sy - sx * dy1) / det;
    const std::array<double, 9> m{(q[1].x - q[0].x + g * q[1].x) / first,
                                  (q[3].x - q[0].x + k * q[3].x) / last,
                                  q[0].x,
                                  (q[1].y - q[0].y + g * q[1].y) / first,
                                  (q[3].y - q[0].y + k * q[3].y) / last,
                                  q[0].y,
                                  g / first,
                                  k / last,
                                  1};
    h.backward = adjugate(m);
    for (std::size_t c = 0; c < 3; ++c) {
        h.forward[c] = m[c] * h.scale + h.middle.x * m[6 + c];
        h.forward[3 + c] = m[3 + c] * h.scale + h.middle.y * m[6 + c];
        h.forward[6 + c] = m[6 + c];
    }
    return h;
}

Pixel Homography::toPicture(Spot s) const {
    const double w = forward[6] * s.x + forward[7] * s.y + forward[8];
    return {(forward[0] * s.x + forward[1] * s.y + forward[2]) / w,
            (forward[3] * s.x + forward[4] * s.y + forward[5]) / w};
}

std::optional<Spot> Homography::toPlane(Pixel p) const {
    const double x = (p.x - middle.x) / scale;
    const double y = (p.y - middle.y) / scale;
    // The horizon is where this is zero; on the card it has the sign that it has at the quad's middle.
    const double w = backward[6] * x + backward[7] * y + backward[8];
    if (!(w * backward[8] > 0)) return std::nullopt;
    return Spot{(backward[0] * x + backward[1] * y + backward[2]) / w,
                (backward[3] * x + backward[4] * y + backward[5]) / w};
}

} // namespace ambit::measure
