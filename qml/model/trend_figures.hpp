// What an event tells of where a value is going, as the numbers that a chart of it is drawn from.
#pragma once

#include "round/measured.hpp"

#include <QPointF>

#include <optional>
#include <vector>

namespace ambit::view {

/// What an axis shows.
struct AxisRange {
    double from = 0;
    double to = 0;
    void take(double value);
    [[nodiscard]] double span() const { return to - from; }
    /// Wider by these parts of its span, of its value where it has none.
    void pad(double below, double above);
};

/// What isn't a number is left out; all but `values` may be empty.
struct TrendFigures {
    struct Value {
        double x = 0;
        double y = 0;
        double reach = 0; ///< of its uncertainty, 95 %, either way
        bool renewed = false;
    };
    struct Band {
        double x = 0, low = 0, high = 0;
    };
    std::vector<Value> values;
    std::vector<QPointF> line;
    std::vector<Band> band;
    std::optional<double> min, max;               ///< the limit's
    std::optional<double> earliest, best, latest; ///< on the axis

    TrendFigures(const round::Trended& trended, const airframe::Limit& limit);

    // Only where there are values.
    [[nodiscard]] AxisRange across() const;
    /// Values and limits whole; of the band what lies over the values, since it opens without end.
    [[nodiscard]] AxisRange up() const;
};

} // namespace ambit::view
