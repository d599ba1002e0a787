// The weights of core/measure/likeness, made from invented photos: which of a picture's answers is the card,
// or whether none is, as a multinomial logit (D. McFadden, "Conditional logit analysis of qualitative choice
// behavior", 1974), by Newton's method. Answers are chosen by the weights there are: run it again until they
// stay.
#include "bench.hpp"

#include "../measure/pictures.hpp"
#include "measure/answers.hpp"
#include "measure/likeness.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::bench {
namespace {

using measure::signs;
using Signs = std::array<double, signs>;
using Square = std::array<Signs, signs>;

/// Pulls the weights, each times its sign's standard deviation, towards 0: chosen on seeds 0 to 6499, each
/// fifth asked of the others.
constexpr double ridge = 0.5;

struct Choice {
    Signs each{};
    double within = 0;
    bool right = false;
};

using Choices = std::vector<Choice>; // of one photo

double sumOf(const Signs& weights, const Signs& each) {
    double sum = 0;
    for (std::size_t k = 0; k < signs; ++k)
        sum += weights[k] * each[k];
    return sum;
}

/// Of each choice; what is left to 1 is that of none.
std::vector<double> chancesOf(const Signs& weights, const Choices& choices) {
    std::vector<double> chances;
    double most = 0;
    for (const Choice& c : choices) {
        chances.push_back(sumOf(weights, c.each));
        most = std::max(most, chances.back());
    }
    double all = std::exp(-most);
    for (double& c : chances) {
        c = std::exp(c - most);
        all += c;
    }
    for (double& c : chances)
        c /= all;
    return chances;
}

/// Gauss's elimination; `a` is positive definite, so that no row need be swapped.
Signs solved(Square a, Signs b) {
    for (std::size_t i = 0; i < signs; ++i)
        for (std::size_t j = i + 1; j < signs; ++j) {
            const double f = a[j][i] / a[i][i];
            for (std::size_t k = i; k < signs; ++k)
                a[j][k] -= f * a[i][k];
            b[j] -= f * b[i];
        }
    for (std::size_t i = signs; i-- > 0;) {
        for (std::size_t k = i + 1; k < signs; ++k)
            b[i] -= a[i][k] * b[k];
        b[i] /= a[i][i];
    }
    return b;
}

/// The first sign is 1 throughout; the others have been brought to mean 0 and deviation 1.
Signs learnt(const std::vector<Choices>& photos) {
    Signs weights{};
    for (int round = 0; round < 100; ++round) {
        Signs slope{};
        Square bend{};
        for (std::size_t k = 0; k < signs; ++k) {
            const double pull = k == 0 ? 1e-3 : ridge;
            slope[k] = -pull * weights[k];
            bend[k][k] = pull;
        }
        for (const Choices& choices : photos) {
            const auto chances = chancesOf(weights, choices);
            double right = 0;
            for (std::size_t i = 0; i < choices.size(); ++i)
                right += choices[i].right ? chances[i] : 0;
            Signs mean{};
            for (std::size_t i = 0; i < choices.size(); ++i) {
                const Signs& x = choices[i].each;
                const double share = choices[i].right ? chances[i] / right : 0;
                for (std::size_t k = 0; k < signs; ++k) {
                    slope[k] += (share - chances[i]) * x[k];
                    mean[k] += chances[i] * x[k];
                    for (std::size_t j = 0; j < signs; ++j)
                        bend[k][j] += chances[i] * x[k] * x[j];
                }
            }
            for (std::size_t k = 0; k < signs; ++k)
                for (std::size_t j = 0; j < signs; ++j)
                    bend[k][j] -= mean[k] * mean[j];
        }
        const Signs step = solved(bend, slope);
        double longest = 0;
        for (const double s : step)
            longest = std::max(longest, std::abs(s));
        for (std::size_t k = 0; k < signs; ++k)
            weights[k] += step[k] / std::max(1.0, longest);
        if (longest < 1e-6) break;
    }
    return weights;
}

/// Means and standard deviations; the first sign is left alone.
void brought(std::vector<Choices>& photos, Signs& mean, Signs& deviation) {
    double count = 0;
    Signs squares{};
    for (const Choices& choices : photos)
        for (const Choice& c : choices) {
            ++count;
            for (std::size_t k = 1; k < signs; ++k) {
                mean[k] += c.each[k];
                squares[k] += c.each[k] * c.each[k];
            }
        }
    deviation.fill(1);
    for (std::size_t k = 1; k < signs; ++k) {
        mean[k] /= count;
        deviation[k] = std::max(1e-6, std::sqrt(squares[k] / count - mean[k] * mean[k]));
    }
    for (Choices& choices : photos)
        for (Choice& c : choices)
            for (std::size_t k = 1; k < signs; ++k)
                c.each[k] = (c.each[k] - mean[k]) / deviation[k];
}

Choices choicesOf(const measure::views::Photo& photo, bool withCard) {
    Choices choices;
    for (const auto& answer : measure::answersOf(photo.picture()))
        choices.push_back({measure::signsOf(answer.sides), measure::within(answer.corners),
                           withCard && measure::views::isRight(answer.corners, photo)});
    return choices;
}

} // namespace

void cardWeights(std::size_t count) {
    std::vector<Choices> photos;
    for (std::size_t seed = 0; seed < count; ++seed) {
        const auto photo = measure::views::photo(seed, 2000);
        if (photo.contrast > 40) photos.push_back(choicesOf(photo, true));
        if (seed % 5 == 0) photos.push_back(choicesOf(measure::views::photo(seed, 2000, false), false));
    }
    Signs mean{};
    Signs deviation{};
    brought(photos, mean, deviation);
    Signs weights = learnt(photos);
    for (const double least : {0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9}) {
        int right = 0;
        int wrong = 0;
        for (const Choices& choices : photos) {
            const auto chances = chancesOf(weights, choices);
            const auto best = std::max_element(chances.begin(), chances.end());
            if (best == chances.end()) continue;
            const Choice& choice = choices[static_cast<std::size_t>(best - chances.begin())];
            if (*best * choice.within < least) continue;
            const bool hit = choice.right;
            right += hit ? 1 : 0;
            wrong += hit ? 0 : 1;
        }
        std::printf("of these %zu photos, from %.2f on: %d right, %d wrong\n", photos.size(), least, right,
                    wrong);
    }
    for (std::size_t k = 1; k < signs; ++k) {
        weights[k] /= deviation[k];
        weights[0] -= weights[k] * mean[k];
    }
    for (const double w : weights)
        std::printf("%.3f, ", w);
    std::printf("\n");
}

} // namespace ambit::bench
