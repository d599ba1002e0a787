// The figure of the airframe with the state of each zone, drawn into a box.
#pragma once

#include "paper/marks.hpp"

#include <map>

namespace ambit::paper {

/// The worst of a zone's points; hollow where this walk has none.
[[nodiscard]] std::map<std::string, Mark> zoneMarks(const RecordView& view);

/// From the airframe's metres (y forward) to a box on the page, whole and undistorted.
class Scale {
public:
    Scale(const RecordView& view, const QRectF& box);
    [[nodiscard]] QPointF map(const airframe::Place& place) const;
    [[nodiscard]] QPainterPath map(const airframe::Outline& outline) const;

private:
    QPointF origin;
    double points = 1; ///< a metre
};

void drawFigure(QPainter& painter, const RecordView& view, const Scale& scale,
                const std::map<std::string, Mark>& marks);

} // namespace ambit::paper
