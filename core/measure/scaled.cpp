#include "measure/scaled.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::measure {
namespace {

/// What one pixel covers of `full` pixels in a row, when `small` are made of them: the first, and the share
/// of each.
struct Cover {
    int first = 0;
    std::vector<float> shares; // their sum is 1
};

std::vector<Cover> coversOf(int full, int small) {
    const double each = static_cast<double>(full) / small;
    std::vector<Cover> covers(static_cast<std::size_t>(small));
    for (int i = 0; i < small; ++i) {
        const double from = i * each;
        const double to = (i + 1) * each;
        Cover& cover = covers[static_cast<std::size_t>(i)];
        cover.first = static_cast<int>(from);
        for (int k = cover.first; k < full && k < to; ++k) {
            const double share = std::min(to, k + 1.0) - std::max(from, static_cast<double>(k));
            cover.shares.push_back(static_cast<float>(share / each));
        }
    }
    return covers;
}

} // namespace

Scaled::Scaled(const Picture& full, int longest) : its(full) {
    const int longer = std::max(full.width, full.height);
    if (longer <= longest) return;
    const auto smaller = [&](int n) {
        return std::max(1, static_cast<int>(std::lround(static_cast<double>(n) * longest / longer)));
    };
    its.width = smaller(full.width);
    its.height = smaller(full.height);
    its.stride = its.width;
    along = static_cast<double>(full.width) / its.width;
    down = static_cast<double>(full.height) / its.height;
    pixels.reserve(static_cast<std::size_t>(its.width) * static_cast<std::size_t>(its.height));
    const auto across = coversOf(full.width, its.width);
    std::vector<float> sums(static_cast<std::size_t>(full.width)); // of the rows that one covers
    for (const Cover& rows : coversOf(full.height, its.height)) {
        std::fill(sums.begin(), sums.end(), 0.0F);
        for (std::size_t k = 0; k < rows.shares.size(); ++k) {
            const std::uint8_t* row =
                full.pixels + static_cast<std::ptrdiff_t>(rows.first + static_cast<int>(k)) * full.stride;
            const float share = rows.shares[k];
            for (std::size_t x = 0; x < sums.size(); ++x)
                sums[x] += share * static_cast<float>(row[x]);
        }
        for (const Cover& cover : across) {
            const float* sum = &sums[static_cast<std::size_t>(cover.first)];
            float mean = 0.5F;
            for (std::size_t k = 0; k < cover.shares.size(); ++k)
                mean += cover.shares[k] * sum[k];
            pixels.push_back(static_cast<std::uint8_t>(std::min(mean, 255.0F)));
        }
    }
}

Picture Scaled::picture() const {
    Picture picture = its;
    if (!pixels.empty()) picture.pixels = pixels.data();
    return picture;
}

Pixel Scaled::up(Pixel at) const {
    return {(at.x + 0.5) * along - 0.5, (at.y + 0.5) * down - 0.5};
}

} // namespace ambit::measure
