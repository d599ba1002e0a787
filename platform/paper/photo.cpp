#include "paper/photo.hpp"

#include "base/hash.hpp"
#include "photo/bounds.hpp"
#include "photo/png.hpp"

#include <QBuffer>
#include <QColorSpace>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>

#include <optional>

namespace ambit::paper {

namespace {

constexpr qint64 mostPixels = 120'000'000; // a phone's largest photo, not a bomb

struct JpegHead {
    int channels = 0;
    int bits = 0;
    int kind = 0; ///< n of SOFn
};

int byteAt(const std::string& bytes, std::size_t i) {
    return static_cast<unsigned char>(bytes[i]);
}

/// The frame header: PDF takes less than JPEG allows, and image libraries don't tell.
std::optional<JpegHead> headOf(const std::string& bytes) {
    std::size_t i = 2;
    while (i + 9 < bytes.size() && byteAt(bytes, i) == 0xFF) {
        const int marker = byteAt(bytes, i + 1);
        if (marker == 0xFF) { // filling
            ++i;
            continue;
        }
        if (marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC)
            return JpegHead{byteAt(bytes, i + 9), byteAt(bytes, i + 4), marker - 0xC0};
        if (marker == 0xDA || marker == 0xD9) return std::nullopt;
        i += 2 + static_cast<std::size_t>(byteAt(bytes, i + 2) * 256 + byteAt(bytes, i + 3));
    }
    return std::nullopt;
}

QString faultOf(const std::string& jpeg) {
    const auto head = headOf(jpeg);
    if (!head) return QStringLiteral("its bytes are damaged");
    if (head->channels != 1 && head->channels != 3)
        return QStringLiteral("its colours are for print, not for screens");
    if (head->kind > 2 || head->bits != 8) return QStringLiteral("it is a rare kind of JPEG");
    if (jpeg.rfind("\xFF\xD9") == std::string::npos) return QStringLiteral("its bytes break off");
    return {};
}

QByteArray viewed(const std::string& bytes) {
    return QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
}

/// Reads it small: enough to know that it can be read.
bool decodes(const std::string& jpeg, const QSize& size) {
    QBuffer buffer;
    buffer.setData(viewed(jpeg));
    QImageReader reader(&buffer, "jpeg");
    reader.setScaledSize((size / 8).expandedTo(QSize(1, 1)));
    return !reader.read().isNull();
}

std::string asJpeg(QImage image) {
    if (image.colorSpace().isValid()) image.convertToColorSpace(QColorSpace::SRgb);
    const bool grey = image.isGrayscale();
    QImage onWhite(image.size(), QImage::Format_RGB32);
    onWhite.fill(Qt::white);
    QPainter(&onWhite).drawImage(QPoint(0, 0), image);
    if (grey) onWhite = onWhite.convertToFormat(QImage::Format_Grayscale8);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QImageWriter writer(&buffer, "jpeg");
    writer.setQuality(90);
    return writer.write(onWhite) ? bytes.toStdString() : std::string();
}

struct Prepared {
    Picture picture;
    std::string jpeg;
};

Prepared cannot(const QString& why) {
    return {Picture{why, 0, 0, 3, {}}, {}};
}

Prepared prepare(const std::string& bytes) {
    // Of a PNG without its texts, which may unfold to gigabytes before a reader knows its size.
    const auto png = photo::readPng(bytes);
    if (!png && photo::kindOf(bytes) == photo::Kind::png)
        return cannot(png.error().code == ErrorCode::unsupported ? QStringLiteral("it is too large a PNG")
                                                                 : QStringLiteral("its bytes are damaged"));
    QBuffer buffer;
    buffer.setData(viewed(png ? png->bare : bytes));
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    const QByteArray format = reader.format();
    if (format != "jpeg" && format != "png") return cannot(QStringLiteral("it is neither JPEG nor PNG"));
    const QSize size = reader.size();
    if (!size.isValid() || size.isEmpty()) return cannot(QStringLiteral("its bytes are damaged"));
    if (qint64{size.width()} * size.height() > mostPixels)
        return cannot(
            QStringLiteral("it has too many pixels (%1 × %2)").arg(size.width()).arg(size.height()));

    Picture picture{{}, size.width(), size.height(), 3, reader.transformation()};
    if (format == "jpeg") {
        if (const QString fault = faultOf(bytes); !fault.isEmpty()) return cannot(fault);
        if (!decodes(bytes, size)) return cannot(QStringLiteral("its bytes are damaged"));
        picture.channels = headOf(bytes)->channels;
        return {picture, bytes};
    }
    const QImage image = reader.read();
    if (image.isNull()) return cannot(QStringLiteral("its bytes are damaged"));
    std::string jpeg = asJpeg(image);
    const auto head = headOf(jpeg);
    if (!head) return cannot(QStringLiteral("it can't be made a JPEG"));
    picture.channels = head->channels;
    return {picture, std::move(jpeg)};
}

/// From the unit square of the stored image to that of the seen one.
QTransform turned(QImageIOHandler::Transformations turn) {
    QTransform out;
    if (turn.testFlag(QImageIOHandler::TransformationMirror)) out *= QTransform(-1, 0, 0, 1, 1, 0);
    if (turn.testFlag(QImageIOHandler::TransformationFlip)) out *= QTransform(1, 0, 0, -1, 0, 1);
    if (turn.testFlag(QImageIOHandler::TransformationRotate90)) out *= QTransform(0, 1, -1, 0, 1, 0);
    return out;
}

} // namespace

double Picture::aspect() const {
    const double stored = static_cast<double>(width) / std::max(1, height);
    return upright() ? stored : 1 / stored;
}

const Picture& Pictures::of(const round::Photo& photo) {
    const auto known = seen.find(photo.sha256);
    if (known != seen.end()) return known->second;
    const auto bytes = photos.find(photo.sha256);
    Prepared ready;
    if (bytes == photos.end())
        ready = cannot(QStringLiteral("it is not at hand"));
    else if (sha256Hex(bytes->second) != photo.sha256)
        ready = cannot(QStringLiteral("its bytes are not those of the record"));
    else
        ready = prepare(bytes->second);
    if (ready.picture.fault.isEmpty()) out.jpeg[photo.sha256] = std::move(ready.jpeg);
    return seen.emplace(photo.sha256, std::move(ready.picture)).first->second;
}

void Pictures::draw(QPainter& painter, const QRectF& box, const round::Photo& photo) {
    const Picture& picture = of(photo);
    const int number = static_cast<int>(out.pages.placeholders.size());
    QImage placeholder(16 + number, 16, QImage::Format_RGB32);
    placeholder.fill(QColor(0xd3, 0xd7, 0xdb));
    painter.save();
    painter.translate(box.topLeft());
    painter.scale(box.width(), box.height());
    painter.setTransform(turned(picture.turn), true);
    painter.drawImage(QRectF(0, 0, 1, 1), placeholder);
    painter.restore();
    out.pages.placeholders.push_back({placeholder.width(), placeholder.height(), photo.sha256, picture.width,
                                      picture.height, picture.channels});
}

record::Drawn Pictures::drawn(std::string pdf) && {
    out.pages.pdf = std::move(pdf);
    return std::move(out);
}

} // namespace ambit::paper
