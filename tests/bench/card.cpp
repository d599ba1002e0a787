// How often the card is found in invented photos, and how long it takes at 12 megapixels.
#include "bench.hpp"

#include "../measure/pictures.hpp"
#include "measure/card.hpp"

#include <cstdlib>

namespace ambit::bench {
namespace {

struct Tally {
    int asked = 0;
    int right = 0;
    int wrong = 0;

    void add(bool hit, bool found) {
        ++asked;
        right += hit ? 1 : 0;
        wrong += found && !hit ? 1 : 0;
    }
    [[nodiscard]] double share(int n) const { return 100.0 * n / std::max(1, asked); }
};

/// Lengths beside a card, by the corners found; the marks at their ends are where they belong.
struct Lengths {
    int within = 0;          // the interval stated for 95 in 100
    std::vector<double> off; // percent

    void add(const measure::views::Photo& photo, const measure::Found& found, std::uint64_t seed) {
        using namespace measure;
        const auto plane = Plane::of(found.corners, {photo.width, photo.height}, found.edgeWidth);
        if (!plane) return;
        const auto truly = Homography::of(photo.card, card::length, card::width);
        views::Random random(seed);
        for (int k = 0; k < 4; ++k) {
            const double length = views::uniform(random, 20, 100);
            const double turned = views::uniform(random, 0, 6.283);
            const Spot from{views::uniform(random, 0, card::length), views::uniform(random, -25, -5)};
            const Spot to{from.x + length * std::cos(turned), from.y + length * std::sin(turned)};
            const auto measured = plane->distance({truly.toPicture(from), 1e-3}, {truly.toPicture(to), 1e-3});
            if (!measured) continue;
            within += measured->low <= length && length <= measured->high ? 1 : 0;
            off.push_back(100 * std::abs(measured->value - length) / length);
        }
    }
};

} // namespace

bool card(std::size_t photos, std::size_t from, int width) {
    using namespace measure;
    const char* print = std::getenv("AMBIT_BENCH_EACH"); // one line a photo
    Tally all;
    Tally nominal;
    Tally least;
    int invented = 0;
    Lengths lengths;
    int inexact = 0; // of those right, contrast > 40
    for (std::size_t i = from; i < from + photos; ++i) {
        const auto photo = views::photo(i, width);
        const auto found = findCard(photo.picture());
        const bool hit = found && views::isRight(found->corners, photo);
        all.add(hit, found.has_value());
        if (photo.contrast > 40) nominal.add(hit, found.has_value());
        if (photo.contrast > 40 && hit && !views::isRight(found->corners, photo, 0.005)) ++inexact;
        if (photo.contrast > 40 && found) lengths.add(photo, *found, i);
        if (photo.leastContrast > 40) least.add(hit, found.has_value());
        if (print != nullptr)
            std::printf("%zu contrast %.0f, %.0f%s%s%s: %s %.2f\n", i, photo.contrast, photo.leastContrast,
                        photo.finger ? " finger" : "", photo.printed ? " printed" : "",
                        photo.shadow ? " shadow" : "",
                        hit     ? "right"
                        : found ? "WRONG"
                                : found.error().what.c_str(),
                        found ? found->confidence : 0);
        if (i % 4 == 0 && findCard(views::photo(i, width, false).picture())) ++invented;
    }
    std::printf("%zu photos of %d pixels' width: %.1f %% right, %.1f %% wrong, %.1f %% unsure\n", photos,
                width, all.share(all.right), all.share(all.wrong),
                all.share(all.asked - all.right - all.wrong));
    std::printf("%d found where no card is, of %zu\n", invented, (photos + 3) / 4);
    std::vector<double> times;
    for (std::size_t i = from; i < from + std::min<std::size_t>(20, photos); ++i) {
        const auto photo = views::photo(i, 4000);
        double best = 1e9; // of three: the machine may have other work
        for (int again = 0; again < 3; ++again) {
            QElapsedTimer timer;
            timer.start();
            const auto found = findCard(photo.picture());
            best = std::min(best, milliseconds(timer));
        }
        times.push_back(best);
    }
    std::printf("card against part: %d photos; in the card's shadow or out of it, the lesser: %d\n",
                nominal.asked, least.asked);
    bool holds = report("card not found right, contrast > 40", nominal.share(nominal.asked - nominal.right),
                        "%", 5, "");
    holds = report("card found wrong, contrast > 40", nominal.share(nominal.wrong), "%", 0.5, "") && holds;
    std::printf("of those right %.2f %% have a corner off by more than half a percent\n",
                100.0 * inexact / std::max(1, nominal.right));
    std::printf(
        "%zu lengths of 20 to 100 mm beside the cards found: off by %.2f %% (median), %.2f %% (95 in 100); "
        "%.1f %% within the interval stated for 95\n",
        lengths.off.size(), quantile(lengths.off, 0.5), quantile(lengths.off, 0.95),
        100.0 * lengths.within / static_cast<double>(std::max<std::size_t>(1, lengths.off.size())));
    holds = report("the same, lesser contrast > 40: not found right", least.share(least.asked - least.right),
                   "%", 5, "") &&
            holds;
    holds = report("the same: found wrong", least.share(least.wrong), "%", 0.5, "") && holds;
    holds = report("card, 12 megapixels, median", median(times), "ms", 150, "") && holds;
    std::printf("the slowest of %zu: %.0f ms\n", times.size(), quantile(times, 1));
    return holds;
}

} // namespace ambit::bench
