// A large picture brought down to the size at which its details are worth looking at.
#pragma once

#include "measure/find.hpp"

#include <vector>

namespace ambit::measure {

/// Each pixel is the mean of what it covers of the full picture.
class Scaled {
public:
    /// At most `longest` pixels on the longer side; a smaller picture stays as it is, and is only referred
    /// to.
    Scaled(const Picture& full, int longest);

    [[nodiscard]] Picture picture() const;
    /// Of a place in it, that in the full picture.
    [[nodiscard]] Pixel up(Pixel at) const;
    /// Pixels of the full picture in one of these, at least 1.
    [[nodiscard]] double factor() const { return along; }

private:
    Picture its;
    std::vector<std::uint8_t> pixels; // empty: those of the full picture
    double along = 1;
    double down = 1;
};

} // namespace ambit::measure
