#include "pictures.hpp"

#include <algorithm>

namespace ambit::measure::views {
namespace {

/// 1 inside, 0 outside, a slope of a pixel between.
double covered(double outside) {
    return std::clamp(0.5 - outside, 0.0, 1.0);
}

/// How far outside a rounded rectangle about the origin; below zero inside.
double outsideOf(double x, double y, double halfWidth, double halfHeight, double radius) {
    const double dx = std::abs(x) - halfWidth + radius;
    const double dy = std::abs(y) - halfHeight + radius;
    return std::hypot(std::max(dx, 0.0), std::max(dy, 0.0)) + std::min(std::max(dx, dy), 0.0) - radius;
}

double outsideOfStroke(Pixel p, Pixel a, Pixel b, double radius) {
    const double x = b.x - a.x;
    const double y = b.y - a.y;
    const double t = std::clamp(((p.x - a.x) * x + (p.y - a.y) * y) / (x * x + y * y), 0.0, 1.0);
    return std::hypot(p.x - a.x - t * x, p.y - a.y - t * y) - radius;
}

/// Smooth between random values on a grid.
struct Texture {
    double size;
    double strength;
    std::uint64_t seed;

    [[nodiscard]] double value(std::int64_t x, std::int64_t y) const {
        std::uint64_t h = seed ^ (static_cast<std::uint64_t>(x) * 0x9E3779B97F4A7C15U) ^
                          (static_cast<std::uint64_t>(y) * 0xC2B2AE3D27D4EB4FU);
        h = (h ^ (h >> 31)) * 0xBF58476D1CE4E5B9U;
        h = (h ^ (h >> 27)) * 0x94D049BB133111EBU;
        return static_cast<double>((h ^ (h >> 31)) >> 11) * 0x1.0p-52 - 1;
    }
    [[nodiscard]] double at(double px, double py) {
        const double x = px / size;
        const double y = py / size;
        const auto ix = static_cast<std::int64_t>(x);
        const auto iy = static_cast<std::int64_t>(y);
        const double fx = x - static_cast<double>(ix);
        const double fy = y - static_cast<double>(iy);
        if (ix != cellX || iy != cellY) {
            cellX = ix;
            cellY = iy;
            cell = {value(ix, iy), value(ix + 1, iy), value(ix, iy + 1), value(ix + 1, iy + 1)};
        }
        return strength *
               ((cell[0] * (1 - fx) + cell[1] * fx) * (1 - fy) + (cell[2] * (1 - fx) + cell[3] * fx) * fy);
    }

    std::int64_t cellX = -1; // whose corners' values are in `cell`
    std::int64_t cellY = -1;
    std::array<double, 4> cell{};
};

struct Shape {
    enum class Kind { panel, stroke } kind = Kind::panel;
    Pixel a; // a panel's middle, or a stroke's ends
    Pixel b; // a panel's half sides
    double cosine = 1;
    double sine = 0;
    double radius = 0;
    double grey = 0;
    double opaque = 1;

    void paint(double& value, Pixel p) const {
        double outside = 0;
        if (kind == Kind::panel) {
            const double x = cosine * (p.x - a.x) + sine * (p.y - a.y);
            const double y = cosine * (p.y - a.y) - sine * (p.x - a.x);
            outside = outsideOf(x, y, b.x, b.y, radius);
        } else {
            outside = outsideOfStroke(p, a, b, radius);
        }
        value += (grey - value) * covered(outside) * opaque;
    }
};

std::vector<Shape> clutter(Random& random, double w, double h, double base) {
    std::vector<Shape> shapes;
    const auto somewhere = [&] { return Pixel{uniform(random, 0, w), uniform(random, 0, h)}; };
    const auto other = [&] { return std::clamp(base + uniform(random, -90, 90), 5.0, 250.0); };
    for (int n = static_cast<int>(uniform(random, 0, 6)); n > 0; --n) {
        const double half = uniform(random, 0.03, 0.2) * w;
        const double turned = uniform(random, 0, 3.14159);
        const double ratio = uniform(random, 0, 1) < 0.3 ? 1.586 : uniform(random, 1, 3);
        shapes.push_back({Shape::Kind::panel,
                          somewhere(),
                          {half, half / ratio},
                          std::cos(turned),
                          std::sin(turned),
                          uniform(random, 0, 1) < 0.5 ? 0 : half * uniform(random, 0, 0.3),
                          other(),
                          1});
    }
    for (int n = static_cast<int>(uniform(random, 0, 4)); n > 0; --n)
        shapes.push_back({Shape::Kind::stroke, somewhere(), somewhere(), 1, 0,
                          uniform(random, 0.002, 0.012) * w, other(), 1});
    for (int n = static_cast<int>(uniform(random, 0, 3)); n > 0; --n) {
        const Pixel from = somewhere();
        const double turned = uniform(random, 0, 6.283);
        const double apart = uniform(random, 0.03, 0.06) * w;
        const double radius = uniform(random, 0.003, 0.008) * w;
        const double grey = std::clamp(base + uniform(random, -40, 40), 5.0, 250.0);
        for (int k = 0; k < 12; ++k)
            shapes.push_back({Shape::Kind::panel,
                              {from.x + k * apart * std::cos(turned), from.y + k * apart * std::sin(turned)},
                              {radius, radius},
                              1,
                              0,
                              radius,
                              grey,
                              1});
    }
    return shapes;
}

/// The card's print, in mm from its first corner.
std::vector<Shape> print(Random& random, double grey) {
    std::vector<Shape> shapes;
    const auto other = [&] { return std::clamp(grey + uniform(random, -100, 100), 5.0, 250.0); };
    const double band = uniform(random, 4, 9);
    const double top = uniform(random, 5, 40);
    shapes.push_back(
        {Shape::Kind::panel, {card::length / 2, top}, {card::length / 2, band}, 1, 0, 0, other(), 1});
    shapes.push_back({Shape::Kind::panel,
                      {uniform(random, 15, 70), uniform(random, 18, 36)},
                      {9, 12},
                      1,
                      0,
                      0.5,
                      other(),
                      1});
    for (int n = 0; n < 3; ++n) {
        const double y = 10 + 12 * n + uniform(random, 0, 5);
        const double x = uniform(random, 8, 30);
        shapes.push_back(
            {Shape::Kind::stroke, {x, y}, {x + uniform(random, 15, 45), y}, 1, 0, 0.8, other(), 1});
    }
    return shapes;
}

/// Three means over 2r + 1 pixels each way, nearly a bell of that deviation.
void blur(std::vector<float>& grey, int w, int h, double deviation) {
    const double wide = std::sqrt(4 * deviation * deviation + 1); // three boxes of this width
    const double reach = (wide - 1) / 2;
    const int whole = static_cast<int>(reach);
    const auto rest = static_cast<float>(reach - whole);
    const float over = 2 * static_cast<float>(whole) + 1 + 2 * rest;
    const auto width = static_cast<std::size_t>(w);
    std::vector<float> from(grey.size());
    // Both go along the rows, the second over many rows at once: down one column is slow.
    const auto pass = [&](int y, const auto& beside) {
        float* to = grey.data() + static_cast<std::size_t>(y) * width;
        const float* before = beside(-whole - 1);
        const float* after = beside(whole + 1);
        for (int x = 0; x < w; ++x)
            to[x] = rest * (before[x] + after[x]);
        for (int k = -whole; k <= whole; ++k) {
            const float* at = beside(k);
            for (int x = 0; x < w; ++x)
                to[x] += at[x];
        }
        for (int x = 0; x < w; ++x)
            to[x] /= over;
    };
    std::vector<float> line; // with the rim carried on beyond both ends
    for (int k = 0; k < 3; ++k) {
        for (int y = 0; y < h; ++y) {
            const float* at = grey.data() + static_cast<std::size_t>(y) * width;
            line.assign(static_cast<std::size_t>(whole) + 1, at[0]);
            line.insert(line.end(), at, at + w);
            line.insert(line.end(), static_cast<std::size_t>(whole) + 1, at[w - 1]);
            pass(y, [&](int by) { return line.data() + whole + 1 + by; });
        }
        from = grey;
        for (int y = 0; y < h; ++y)
            pass(y, [&](int by) {
                return from.data() + static_cast<std::size_t>(std::clamp(y + by, 0, h - 1)) * width;
            });
    }
}

} // namespace

Photo photo(std::uint64_t seed, int width, bool withCard) {
    Random random(seed * 7919 + 17);
    Photo made;
    made.width = width;
    made.height = width * 3 / 4;
    const double w = made.width;
    const double h = made.height;
    View view = anyView(random, 55, uniform(random, 0.12, 0.35));
    const double scale = w / view.frame.width;
    view.frame = {made.width, made.height};
    view.focal *= scale;
    made.card = view.card();
    for (const Pixel& p : made.card) // a card that isn't wholly in the picture is not asked for
        if (p.x < 4 || p.y < 4 || p.x > w - 5 || p.y > h - 5) return photo(seed + 1'000'003, width, withCard);

    const double base = uniform(random, 40, 200);
    made.contrast = uniform(random, 15, 120);
    const bool bright = base + made.contrast < 245 && (base - made.contrast < 8 || random() % 2 == 0);
    if (!bright && base - made.contrast < 8) made.contrast = base - 8;
    const double cardGrey = bright ? base + made.contrast : base - made.contrast;
    std::array<Texture, 3> textures{Texture{w / 12, uniform(random, 0, 14), random()},
                                    Texture{w / 60, uniform(random, 0, 8), random()},
                                    Texture{w / 400, uniform(random, 0, 6), random()}};
    const double rampX = uniform(random, -25, 25) / w;
    const double rampY = uniform(random, -25, 25) / h;
    const auto shapes = clutter(random, w, h, base);
    made.printed = random() % 2 == 0;
    const auto printing = made.printed ? print(random, cardGrey) : std::vector<Shape>{};
    const double radius = uniform(random, 2.88, 3.48);
    made.shadow = uniform(random, 0, 1) < 0.33;
    const double shadowTurn = uniform(random, 0, 6.283);
    const Pixel shadowAt{uniform(random, 0.3, 0.7) * w, uniform(random, 0.3, 0.7) * h};
    const double penumbra = uniform(random, 1, 12) * w / 2000;
    made.finger = uniform(random, 0, 1) < 0.2;
    const std::size_t corner = random() % 4;
    const double share = uniform(random, 0, 1);
    const Pixel& c0 = made.card[corner];
    const Pixel& c1 = made.card[(corner + 1) % 4];
    const Pixel middle = view.see({0, 0});
    const Pixel held{c0.x + share * (c1.x - c0.x), c0.y + share * (c1.y - c0.y)};
    const double fingerRadius =
        8 * std::hypot(made.card[1].x - made.card[0].x, made.card[1].y - made.card[0].y) / card::length;
    const Shape finger{Shape::Kind::stroke,
                       {held.x + 0.1 * (middle.x - held.x), held.y + 0.1 * (middle.y - held.y)},
                       {held.x + 4 * (held.x - middle.x), held.y + 4 * (held.y - middle.y)},
                       1,
                       0,
                       fingerRadius,
                       std::clamp(uniform(random, 60, 190), 5.0, 250.0),
                       1};
    const Homography map = Homography::of(made.card, card::length, card::width);
    const double ownShadow = uniform(random, 0, 0.35);
    made.leastContrast = std::min(made.contrast, std::abs(cardGrey - base * (1 - ownShadow)));

    std::vector<float> grey(static_cast<std::size_t>(made.width) * static_cast<std::size_t>(made.height));
    const auto at = [&](int x, int y) -> float& {
        return grey[static_cast<std::size_t>(y) * static_cast<std::size_t>(made.width) +
                    static_cast<std::size_t>(x)];
    };
    for (int y = 0; y < made.height; ++y)
        for (int x = 0; x < made.width; ++x) {
            double value = base + rampX * (x - w / 2) + rampY * (y - h / 2);
            for (Texture& t : textures)
                value += t.at(x, y);
            at(x, y) = static_cast<float>(value);
        }
    for (const Shape& s : shapes) {
        const bool panel = s.kind == Shape::Kind::panel;
        const double reach = panel ? std::hypot(s.b.x, s.b.y) + 2 : s.radius + 2;
        const Pixel b = panel ? s.a : s.b;
        const auto within = [](double v, int n) { return static_cast<int>(std::clamp(v, 0.0, n - 1.0)); };
        for (int y = within(std::min(s.a.y, b.y) - reach, made.height);
             y <= within(std::max(s.a.y, b.y) + reach, made.height); ++y)
            for (int x = within(std::min(s.a.x, b.x) - reach, made.width);
                 x <= within(std::max(s.a.x, b.x) + reach, made.width); ++x) {
                double value = at(x, y);
                s.paint(value, {static_cast<double>(x), static_cast<double>(y)});
                at(x, y) = static_cast<float>(value);
            }
    }
    for (int y = 0; y < made.height; ++y)
        for (int x = 0; x < made.width; ++x) {
            const Pixel p{static_cast<double>(x), static_cast<double>(y)};
            double value = at(x, y);
            const auto spot = withCard ? map.toPlane(p) : std::nullopt;
            if (spot && std::abs(spot->x - 43) < 60 && std::abs(spot->y - 27) < 45) {
                const auto beside = map.toPlane({p.x + 0.5, p.y + 0.5});
                const double mm =
                    std::max(0.02, std::hypot(beside->x - spot->x, beside->y - spot->y) / 0.7071);
                const double under = outsideOf(spot->x - card::length / 2 - 1, spot->y - card::width / 2 - 1,
                                               card::length / 2, card::width / 2, radius);
                value *= 1 - ownShadow * std::clamp(0.5 - under / 1.5, 0.0, 1.0);
                const double in = covered(outsideOf(spot->x - card::length / 2, spot->y - card::width / 2,
                                                    card::length / 2, card::width / 2, radius) /
                                          mm);
                if (in > 0) {
                    double face = cardGrey;
                    for (const Shape& s : printing)
                        s.paint(face, {spot->x, spot->y});
                    value += in * (face - value);
                }
            }
            if (made.shadow) {
                const double away =
                    std::cos(shadowTurn) * (x - shadowAt.x) + std::sin(shadowTurn) * (y - shadowAt.y);
                value *= 1 - 0.5 * std::clamp(0.5 - away / penumbra, 0.0, 1.0);
            }
            if (made.finger && withCard) finger.paint(value, p);
            at(x, y) = static_cast<float>(value);
        }
    blur(grey, made.width, made.height, uniform(random, 0.5, 2) * w / 2000);
    const double noise = uniform(random, 1, 6);
    made.pixels.resize(grey.size());
    for (std::size_t i = 0; i < grey.size(); ++i) {
        // The sum of eight uniform bytes, less its mean, over its deviation: nearly normal, and quick.
        const std::uint64_t bits = random();
        int sum = 0;
        for (int k = 0; k < 8; ++k)
            sum += static_cast<int>((bits >> (8 * k)) & 255U);
        const double off = (sum - 1020) / 209.0;
        made.pixels[i] = static_cast<std::uint8_t>(std::clamp(grey[i] + noise * off + 0.5, 0.0, 255.0));
    }
    return made;
}

bool isRight(const Corners& corners, const Photo& photo, double share) {
    double longest = 0;
    for (std::size_t i = 0; i < 4; ++i)
        longest = std::max(longest, std::hypot(photo.card[(i + 1) % 4].x - photo.card[i].x,
                                               photo.card[(i + 1) % 4].y - photo.card[i].y));
    const double within = std::max(2.0, share * longest);
    for (std::size_t shift = 0; shift < 4; ++shift) {
        double most = 0;
        for (std::size_t i = 0; i < 4; ++i)
            most = std::max(most, std::hypot(corners[i].at.x - photo.card[(i + shift) % 4].x,
                                             corners[i].at.y - photo.card[(i + shift) % 4].y));
        if (most <= within) return true;
    }
    return false;
}

} // namespace ambit::measure::views
