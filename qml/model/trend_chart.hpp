// Where a measured value is going, drawn: for pages and screens alike, so without Qt Quick. Only what the
// event tells is drawn; nothing is computed anew.
#pragma once

#include "round/measured.hpp"

#include <QColor>
#include <QFont>
#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace ambit::view {

/// What differs from one page or screen to another. Nothing needs colour to be told from the rest, and no
/// colour may be see-through (PDF/A-1 has none of those). Lengths are the painter's units.
struct ChartLook {
    QColor ground = Qt::white;    ///< what lies behind the chart
    QColor ink = Qt::black;       ///< values, the line, text
    QColor quiet = Qt::darkGray;  ///< axes, figures on them, ends of the values' uncertainty
    QColor band = Qt::lightGray;  ///< where 95 % of values lie
    QColor limit = Qt::black;     ///< the limit's dashes, and the strokes on its far side
    QFont font;                   ///< its family and pixel size
    double fontScale = 1;         ///< painter's units in one of the font's pixels
    double stroke = 1;            ///< a thin line
    double dot = 2.5;             ///< radius of a value
    QString across;               ///< "Airframe time, h"
    QString up;                   ///< "Lining, mm"
    QString limitWords = "limit"; ///< before its figure
    QString renewed = "renewed";
    QString crossing = "limit, 95 %"; ///< of the interval on the axis: there it is reached
    QString point = ".";              ///< between a number's whole and its fraction
};

/// Values with 1.96 times their uncertainty, the last one hollow; line and band; the limits, dashed, with
/// strokes on the side that is beyond; a dotted line where the part was renewed; on the axis the interval in
/// which the limit is reached, open to the right where its end isn't told or lies outside. Above 400 values
/// those at one place are drawn once, and none has its uncertainty. Everything stays within `box`; below
/// about 12 × 8 times the text's height there is no room for a chart and nothing is drawn, nor without
/// values.
void drawTrend(QPainter& painter, const QRectF& box, const round::Trended& trended,
               const airframe::Limit& limit, const ChartLook& look);

/// Round figures of an axis: multiples of 1, 2 or 5 times a power of ten, at most `most` (1 or more) of them.
struct Ticks {
    double step = 1;
    int decimals = 0; ///< that they need
    std::vector<double> at;
};
[[nodiscard]] Ticks ticksOf(double from, double to, int most);

} // namespace ambit::view
