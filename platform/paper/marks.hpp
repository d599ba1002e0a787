// The states of points and zones, told by shape and pattern first: filled = sound, cut corner = finding,
// hatched = not inspected, hollow = not in this walk. Amber: for assessment; red: grounds the aircraft.
#pragma once

#include "paper/record_view.hpp"
#include "paper/text.hpp"

#include <QPainterPath>

namespace ambit::paper {

enum class Mark { hollow, sound, notInspected, assess, grounds }; ///< the worse, the later

[[nodiscard]] Mark markOf(const round::Settled& settled);
[[nodiscard]] QString markWords(Mark mark); ///< for legends

/// A small square, its upper left corner at `at`.
void drawMark(QPainter& painter, const QPointF& at, double side, Mark mark);

/// Fills an area of the figure.
void fillArea(QPainter& painter, const QPainterPath& area, Mark mark);

/// A box whose upper left corner is cut, for what is a caution or a warning.
void drawCutBox(QPainter& painter, const QRectF& box, const QColor& color);

[[nodiscard]] inline QColor colorOf(airframe::Severity severity) {
    return severity == airframe::Severity::grounds ? ink::red : ink::amber;
}

} // namespace ambit::paper
