// How often the card is found in invented photos, and how long it takes at 12 megapixels.
#include "bench.hpp"

#include "../measure/pictures.hpp"

#include <cstdlib>

namespace ambit::bench {

bool card(std::size_t photos) {
    using namespace measure;
    const char* print = std::getenv("AMBIT_BENCH_EACH"); // one line a photo
    int right = 0;
    int wrong = 0;
    int clear = 0;
    int clearRight = 0;
    int clearWrong = 0;
    int invented = 0;
    std::vector<double> off;
    for (std::size_t i = 0; i < photos; ++i) {
        const auto photo = views::photo(i, 2000);
        const auto found = findCard(photo.picture());
        const bool hit = found && views::isRight(found->corners, photo);
        right += hit ? 1 : 0;
        wrong += found && !hit ? 1 : 0;
        if (photo.contrast > 40) {
            ++clear;
            clearRight += hit ? 1 : 0;
            clearWrong += found && !hit ? 1 : 0;
        }
        if (print != nullptr)
            std::printf("%zu contrast %.0f%s%s%s: %s %.2f\n", i, photo.contrast,
                        photo.finger ? " finger" : "", photo.printed ? " printed" : "",
                        photo.shadow ? " shadow" : "",
                        hit     ? "right"
                        : found ? "WRONG"
                                : found.error().what.c_str(),
                        found ? found->confidence : 0);
        if (i % 4 == 0 && findCard(views::photo(i, 2000, false).picture())) ++invented;
    }
    const double all = static_cast<double>(photos);
    std::printf("%zu photos: %.1f %% right, %.1f %% wrong, %.1f %% unsure\n", photos, 100 * right / all,
                100 * wrong / all, 100 * (all - right - wrong) / all);
    std::printf("%d found where no card is, of %zu\n", invented, (photos + 3) / 4);
    std::vector<double> times;
    for (std::size_t i = 0; i < std::min<std::size_t>(20, photos); ++i) {
        const auto photo = views::photo(i, 4000);
        QElapsedTimer timer;
        timer.start();
        const auto found = findCard(photo.picture());
        times.push_back(milliseconds(timer));
    }
    bool holds = report("card not found right, contrast > 40",
                        100.0 * (clear - clearRight) / std::max(1, clear), "%", 5, "");
    holds =
        report("card found wrong, contrast > 40", 100.0 * clearWrong / std::max(1, clear), "%", 0.5, "") &&
        holds;
    holds = report("card, 12 megapixels, median", median(times), "ms", 150, "") && holds;
    std::printf("the slowest of %zu: %.0f ms\n", times.size(), quantile(times, 1));
    return holds;
}

} // namespace ambit::bench
