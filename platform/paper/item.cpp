#include "paper/item.hpp"

namespace ambit::paper {

namespace {

constexpr double between = 12;
constexpr double photoWidth = (wide - between) / 2;
constexpr double mostPhotoHeight = 210;

QSizeF sizeOf(const Picture& picture) {
    if (!picture.fault.isEmpty()) return {photoWidth, 60};
    const double height = photoWidth / picture.aspect();
    if (height <= mostPhotoHeight) return {photoWidth, std::max(height, 4.0)};
    return {std::max(mostPhotoHeight * picture.aspect(), 4.0), mostPhotoHeight};
}

void addPhoto(const Context& context, const round::Photo& photo, int number, const QPointF& at,
              const Over& over) {
    const Picture picture = context.pictures.of(photo);
    const QRectF box(at, sizeOf(picture));
    const Text caption(QStringLiteral("To point %1 · photo ").arg(number) + shortHash(photo.sha256) +
                           QStringLiteral(" …"),
                       style::quiet, photoWidth);
    const QString why = QStringLiteral("This photo can’t be shown here: ") + picture.fault + u'.';
    const Text fault(why, style::small, photoWidth - 20);
    context.sheet.put([=, &pictures = context.pictures](QPainter& painter) {
        if (picture.fault.isEmpty()) {
            pictures.draw(painter, box, photo);
            if (over) over(painter, box);
        } else {
            painter.setPen(QPen(ink::grey, 0.7, Qt::DashLine));
            painter.drawRect(box);
            fault.draw(painter, box.topLeft() + QPointF(10, 8));
        }
        caption.draw(painter, box.bottomLeft() + QPointF(0, 2));
    });
}

double rowHeight(const Context& context, const std::vector<round::Photo>& photos, std::size_t from) {
    double height = 0;
    for (std::size_t i = from; i < std::min(from + 2, photos.size()); ++i)
        height = std::max(height, sizeOf(context.pictures.of(photos[i])).height());
    return height + 20;
}

} // namespace

void addItemHead(Sheet& sheet, Mark mark, int number, const Text& name) {
    if (!sheet.atTop()) {
        sheet.line(area::left, area::right, ink::black, 0.8);
        sheet.y += 8;
    }
    const Text figure(QString::number(number), {Face::bold, 11.5, 16, ink::black}, 26);
    sheet.put([=, at = QPointF(area::left, sheet.y)](QPainter& painter) {
        drawMark(painter, at + QPointF(0, 2.5), 11, mark);
        figure.draw(painter, at + QPointF(17, 0));
    });
    sheet.text(name, area::left + indent);
}

void addLabelled(Sheet& sheet, const QString& label, const QString& words) {
    constexpr double labelWidth = 82;
    const Text text(words, style::small, wide - labelWidth);
    sheet.need(2 * text.leading());
    sheet.textAt(Text(label, style::label, labelWidth), {area::left + indent, sheet.y});
    sheet.text(text, area::left + indent + labelWidth);
    sheet.y += 2;
}

void addPhotos(const Context& context, const std::vector<round::Photo>& photos, int number,
               const std::vector<Over>& over) {
    for (std::size_t row = 0; row < photos.size(); row += 2) {
        const double height = rowHeight(context, photos, row);
        context.sheet.gap(6);
        context.sheet.need(height);
        for (std::size_t i = row; i < std::min(row + 2, photos.size()); ++i)
            addPhoto(context, photos[i], number,
                     {area::left + indent + static_cast<double>(i - row) * (photoWidth + between),
                      context.sheet.y},
                     i < over.size() ? over[i] : Over());
        context.sheet.y += height;
    }
}

double photoRowHeight(const Context& context, const std::vector<round::Photo>& photos) {
    return rowHeight(context, photos, 0);
}

} // namespace ambit::paper
