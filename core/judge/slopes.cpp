#include "judge/slopes.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <random>

namespace ambit::judge {

namespace {

__extension__ using Wide = __int128;
using Index = std::uint32_t;
using Order = std::vector<Index>;

/// A place among the slopes: just before or just after all that equal it.
struct Cut {
    Slope slope;
    bool after = false;
};

struct Pair {
    Index left;
    Index right;
};

Slope between(const GridPoint& a, const GridPoint& b) {
    const std::int64_t run = b.x - a.x;
    return run > 0 ? Slope{b.y - a.y, run} : Slope{a.y - b.y, -run};
}

/// The order before every slope: that of the points.
Order before(const std::vector<GridPoint>& points) {
    Order order(points.size());
    std::iota(order.begin(), order.end(), Index{0});
    return order;
}

/// The order beyond every slope: x falls, but y rises at one x.
Order beyond(const std::vector<GridPoint>& points) {
    Order order;
    order.reserve(points.size());
    for (std::size_t to = points.size(); to > 0;) {
        std::size_t from = to;
        while (from > 0 && points[from - 1].x == points[to - 1].x)
            --from;
        for (std::size_t i = from; i < to; ++i)
            order.push_back(static_cast<Index>(i));
        to = from;
    }
    return order;
}

template<class Key> struct Keyed {
    Key key;
    Index index;
};

void sort(std::vector<Keyed<Wide>>& row) {
    std::stable_sort(row.begin(), row.end(), [](const auto& a, const auto& b) { return a.key < b.key; });
}

/// Digit by digit, which takes a fraction of what comparing does.
void sort(std::vector<Keyed<std::int64_t>>& row) {
    constexpr unsigned digit = 11;
    const auto [least, most] = std::minmax_element(
        row.begin(), row.end(), [](const auto& a, const auto& b) { return a.key < b.key; });
    const std::int64_t base = least->key;
    const auto range = static_cast<std::uint64_t>(most->key - base);
    std::vector<Keyed<std::int64_t>> dealt(row.size());
    for (unsigned shift = 0; shift < 64 && range >> shift != 0; shift += digit) {
        const auto digitOf = [&](std::int64_t key) {
            return (static_cast<std::uint64_t>(key - base) >> shift) & ((1U << digit) - 1);
        };
        std::array<Index, (1U << digit) + 1> place{};
        for (const auto& one : row)
            ++place[digitOf(one.key) + 1];
        std::partial_sum(place.begin(), place.end(), place.begin());
        for (const auto& one : row)
            dealt[place[digitOf(one.key)]++] = one;
        row.swap(dealt);
    }
}

/// The points from the lowest up, as seen along lines of the cut's slope. Turning from one slope to a steeper
/// one, two points change places exactly at the slope between them; points at one x never do.
template<class Key> Order sorted(const std::vector<GridPoint>& points, const Cut& cut) {
    // Both sorts are stable: of equal keys the right one is lower once the slope is passed.
    const Order start = cut.after ? beyond(points) : before(points);
    std::vector<Keyed<Key>> row(points.size());
    std::transform(start.begin(), start.end(), row.begin(), [&](Index i) {
        return Keyed<Key>{static_cast<Key>(cut.slope.run) * points[i].y -
                              static_cast<Key>(cut.slope.rise) * points[i].x,
                          i};
    });
    sort(row);
    Order order(points.size());
    std::transform(row.begin(), row.end(), order.begin(), [](const auto& one) { return one.index; });
    return order;
}

Order orderAt(const std::vector<GridPoint>& points, const Cut& cut) {
    Wide most = 0;
    for (const GridPoint& point : {points.front(), points.back()})
        most = std::max(most, Wide{std::abs(point.x)} * std::abs(cut.slope.rise));
    for (const GridPoint& point : points)
        most = std::max(most, Wide{std::abs(point.y)} * cut.slope.run);
    constexpr Wide narrow = std::int64_t{1} << 61;
    return most < narrow ? sorted<std::int64_t>(points, cut) : sorted<Wide>(points, cut);
}

/// Of each point of `from`, its rank in `to`.
Order ranks(const Order& from, const Order& to) {
    Order rank(to.size());
    for (std::size_t i = 0; i < to.size(); ++i)
        rank[to[i]] = static_cast<Index>(i);
    Order row(from.size());
    std::transform(from.begin(), from.end(), row.begin(), [&](Index point) { return rank[point]; });
    return row;
}

/// Sorts `row`; says of each element moved left how many it passes: `passed(first, last, element)`.
template<class Passed> void mergeSort(Order& row, const Passed& passed) {
    Order merged(row.size());
    for (std::size_t width = 1; width < row.size(); width *= 2) {
        for (std::size_t begin = 0; begin < row.size(); begin += 2 * width) {
            const std::size_t middle = std::min(begin + width, row.size());
            const std::size_t end = std::min(middle + width, row.size());
            std::size_t left = begin;
            std::size_t right = middle;
            std::size_t out = begin;
            const bool sorted = right == end || row[middle - 1] < row[middle];
            while (!sorted && left < middle && right < end) {
                const bool moves = row[right] < row[left];
                if (moves) passed(&row[left], row.data() + middle, row[right]);
                merged[out++] = moves ? row[right] : row[left];
                left += moves ? 0 : 1;
                right += moves ? 1 : 0;
            }
            const auto at = [](Order& in, std::size_t i) {
                return in.begin() + static_cast<std::ptrdiff_t>(i);
            };
            const auto rest = std::copy(at(row, left), at(row, middle), at(merged, out));
            std::copy(at(row, right), at(row, end), rest);
        }
        row.swap(merged);
    }
}

std::uint64_t inversions(const Order& from, const Order& to) {
    Order row = ranks(from, to);
    std::uint64_t count = 0;
    mergeSort(row, [&](const Index* first, const Index* last, Index) {
        count += static_cast<std::uint64_t>(last - first);
    });
    return count;
}

/// The inversions of the given numbers, in the order in which sorting meets them; `numbers` ascend.
std::vector<Pair> chosen(const Order& from, const Order& to, const std::vector<std::uint64_t>& numbers) {
    Order row = ranks(from, to);
    std::vector<Pair> pairs;
    pairs.reserve(numbers.size());
    std::uint64_t met = 0;
    mergeSort(row, [&](const Index* first, const Index* last, Index right) {
        const std::uint64_t before = met;
        met += static_cast<std::uint64_t>(last - first);
        while (pairs.size() < numbers.size() && numbers[pairs.size()] < met)
            pairs.push_back({to[first[numbers[pairs.size()] - before]], to[right]});
    });
    return pairs;
}

/// What is left of the slopes: those between two cuts.
struct Left {
    Order low, high;
    std::uint64_t below = 0; ///< slopes below the low cut
    std::uint64_t count = 0;
};

} // namespace

bool operator<(const Slope& a, const Slope& b) {
    return Wide{a.rise} * b.run < Wide{b.rise} * a.run;
}

Slopes::Slopes(std::vector<GridPoint> given) : points(std::move(given)) {
    std::sort(points.begin(), points.end(),
              [](const GridPoint& a, const GridPoint& b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    std::uint64_t left = 0; // points further left
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (points[i].x != points[i - 1].x) left = i;
        all += left;
    }
}

Slope Slopes::ranked(std::uint64_t rank) const {
    const std::size_t n = points.size();
    const std::size_t few = 8 * n + 64; ///< as many as are listed
    const std::size_t sampled = std::max<std::size_t>(n, 64);
    std::mt19937_64 chance(n); // any seed gives the same slope
    Left left;
    left.low = before(points);
    left.high = beyond(points);
    left.count = all;
    const auto slopesOf = [&](const std::vector<std::uint64_t>& numbers) {
        std::vector<Slope> slopes;
        slopes.reserve(numbers.size());
        for (const Pair& pair : chosen(left.low, left.high, numbers))
            slopes.push_back(between(points[pair.left], points[pair.right]));
        return slopes;
    };
    // Keeps the side of the cut on which the rank is.
    const auto narrow = [&](const Cut& cut) {
        Order order = orderAt(points, cut);
        const std::uint64_t lower = inversions(left.low, order);
        if (rank < left.below + lower) {
            left.high = std::move(order);
            left.count = lower;
            return false;
        }
        left.low = std::move(order);
        left.below += lower;
        left.count -= lower;
        return true;
    };
    while (left.count > few) {
        std::vector<std::uint64_t> numbers(sampled);
        const std::uint64_t stratum = left.count / sampled; // one from each: they ascend
        for (std::size_t i = 0; i < sampled; ++i)
            numbers[i] = i * stratum + chance() % stratum;
        std::vector<Slope> sample = slopesOf(numbers);
        const double share = static_cast<double>(rank - left.below) / static_cast<double>(left.count);
        const auto middle =
            std::min(static_cast<std::size_t>(share * static_cast<double>(sampled)), sampled - 1);
        const auto aside = static_cast<std::size_t>(std::sqrt(static_cast<double>(sampled))); // 2 deviations
        const std::uint64_t had = left.count;
        const auto at = [&](std::size_t i) { return sample.begin() + static_cast<std::ptrdiff_t>(i); };
        const auto lower = at(middle - std::min(middle, aside));
        const auto upper = at(std::min(middle + aside, sampled - 1));
        std::nth_element(sample.begin(), lower, sample.end());
        std::nth_element(lower, upper, sample.end());
        std::nth_element(lower, at(middle), upper);
        const Slope low = *lower;
        const Slope high = *upper;
        if (!narrow({low, false}) || narrow({high, true})) continue;
        if (!(low < high)) return low;
        if (left.count > had / 2) { // many equal slopes: those of one are decided
            const Slope pivot = sample[middle];
            if (narrow({pivot, false}) && !narrow({pivot, true})) return pivot;
        }
    }
    std::vector<std::uint64_t> numbers(left.count);
    std::iota(numbers.begin(), numbers.end(), std::uint64_t{0});
    std::vector<Slope> slopes = slopesOf(numbers);
    const auto found = slopes.begin() + static_cast<std::ptrdiff_t>(rank - left.below);
    std::nth_element(slopes.begin(), found, slopes.end());
    return *found;
}

Slope Slopes::next(std::uint64_t rank, const Slope& slope) const {
    const Order order = orderAt(points, {slope, true});
    if (inversions(before(points), order) > rank + 1) return slope;
    // Of the pairs that have yet to change places, the first are neighbours.
    std::vector<Slope> ahead;
    for (std::size_t i = 1; i < order.size(); ++i)
        if (points[order[i - 1]].x < points[order[i]].x)
            ahead.push_back(between(points[order[i - 1]], points[order[i]]));
    return *std::min_element(ahead.begin(), ahead.end());
}

} // namespace ambit::judge
