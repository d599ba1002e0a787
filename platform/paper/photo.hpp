// The photos of a record: what can be shown and how, and the placeholders that stand for them on the pages.
#pragma once

#include "record/pdf.hpp"
#include "round/event.hpp"

#include <QImageIOHandler>
#include <QRectF>
#include <QString>

#include <map>

class QPainter;

namespace ambit::paper {

struct Picture {
    QString fault; ///< why it can't be shown; empty: it can
    int width = 0; ///< pixels, as stored
    int height = 0;
    int channels = 3;
    QImageIOHandler::Transformations turn; ///< how the camera says to hold it

    [[nodiscard]] bool upright() const { return !turn.testFlag(QImageIOHandler::TransformationRotate90); }
    [[nodiscard]] double aspect() const; ///< width / height, as seen
};

class Pictures {
public:
    /// Bytes by hash; must outlive this.
    explicit Pictures(const std::map<std::string, std::string>& bytes) : photos(bytes) {}

    /// JPEG goes in as it is, a PNG as JPEG (quality 90, on white). Hostile, damaged or foreign bytes give a
    /// fault.
    const Picture& of(const round::Photo& photo);

    /// Draws a placeholder of its own pixel size. Precondition: `of` gave no fault.
    void draw(QPainter& painter, const QRectF& box, const round::Photo& photo);

    [[nodiscard]] record::Drawn drawn(std::string pdf) &&;

private:
    const std::map<std::string, std::string>& photos;
    std::map<std::string, Picture> seen;
    record::Drawn out;
};

} // namespace ambit::paper
