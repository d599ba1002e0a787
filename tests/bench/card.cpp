// How often the card is found in invented photos, and how long it takes at 12 megapixels.
#include "bench.hpp"

#include "../measure/pictures.hpp"

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

} // namespace

bool card(std::size_t photos, std::size_t from) {
    using namespace measure;
    const char* print = std::getenv("AMBIT_BENCH_EACH"); // one line a photo
    Tally all;
    Tally nominal;
    Tally least;
    int invented = 0;
    for (std::size_t i = from; i < from + photos; ++i) {
        const auto photo = views::photo(i, 2000);
        const auto found = findCard(photo.picture());
        const bool hit = found && views::isRight(found->corners, photo);
        all.add(hit, found.has_value());
        if (photo.contrast > 40) nominal.add(hit, found.has_value());
        if (photo.leastContrast > 40) least.add(hit, found.has_value());
        if (print != nullptr)
            std::printf("%zu contrast %.0f, %.0f%s%s%s: %s %.2f\n", i, photo.contrast, photo.leastContrast,
                        photo.finger ? " finger" : "", photo.printed ? " printed" : "",
                        photo.shadow ? " shadow" : "",
                        hit     ? "right"
                        : found ? "WRONG"
                                : found.error().what.c_str(),
                        found ? found->confidence : 0);
        if (i % 4 == 0 && findCard(views::photo(i, 2000, false).picture())) ++invented;
    }
    std::printf("%zu photos: %.1f %% right, %.1f %% wrong, %.1f %% unsure\n", photos, all.share(all.right),
                all.share(all.wrong), all.share(all.asked - all.right - all.wrong));
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
    holds = report("the same, lesser contrast > 40: not found right", least.share(least.asked - least.right),
                   "%", 5, "") &&
            holds;
    holds = report("the same: found wrong", least.share(least.wrong), "%", 0.5, "") && holds;
    holds = report("card, 12 megapixels, median", median(times), "ms", 150, "") && holds;
    std::printf("the slowest of %zu: %.0f ms\n", times.size(), quantile(times, 1));
    return holds;
}

} // namespace ambit::bench
