#include "model/pictures.hpp"

#include "photo/bounds.hpp"
#include "photo/png.hpp"

#include <QBuffer>
#include <QColorSpace>
#include <QImageReader>
#include <QPainter>
#include <QTransform>

namespace ambit::view {

namespace {

constexpr int mostMegabytes = 192; ///< 50 megapixels of 4 bytes; a picture of more bits has to be smaller

QImage inScreenColours(QImage image) {
    const QColorSpace its = image.colorSpace();
    if (its.isValid() && its != QColorSpace(QColorSpace::SRgb)) image.convertToColorSpace(QColorSpace::SRgb);
    image.setColorSpace({});
    return image;
}

/// On white, where it is transparent; without the words that a file's reader puts in.
QImage plain(const QImage& image) {
    if (!image.hasAlphaChannel())
        return image.convertToFormat(image.isGrayscale() ? QImage::Format_Grayscale8 : QImage::Format_RGB32);
    QImage onWhite(image.size(), QImage::Format_RGB32);
    onWhite.fill(Qt::white);
    QPainter(&onWhite).drawImage(0, 0, image);
    return onWhite;
}

QSize turned(const QSize& stored, int orientation) {
    return orientation >= 5 ? stored.transposed() : stored;
}

/// Empty, or larger than the picture: the picture's own size.
QSize fitting(const QSize& whole, const QSize& within) {
    if (within.isEmpty() || (whole.width() <= within.width() && whole.height() <= within.height()))
        return whole;
    return whole.scaled(within, Qt::KeepAspectRatio).expandedTo(QSize(1, 1));
}

QImage made(const QImage& image, const QSize& size) {
    return image.size() == size ? image : image.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
}

Result<QImage> decodedJpegIn(const std::string& bytes, const QSize& within, Doubt doubt) {
    const auto jpeg = photo::readJpeg(bytes);
    if (!jpeg) return tl::unexpected(jpeg.error());
    const int orientation = jpeg->exif.orientation;
    const QSize size = fitting(turned({jpeg->width, jpeg->height}, orientation), within);
    const QSize asStored = turned(size, orientation);
    int eighths = 1;
    while (eighths < 8 &&
           (jpeg->width * eighths < asStored.width() * 8 || jpeg->height * eighths < asStored.height() * 8))
        ++eighths;
    auto image = pictureOf(*jpeg, eighths, doubt);
    if (!image) return image;
    return made(*image, size);
}

Result<QImage> decodedPngIn(const std::string& bytes, const QSize& within) {
    const auto png = photo::readPng(bytes);
    if (!png) return tl::unexpected(png.error());
    auto image = readByQt(png->bare, "png");
    if (!image) return image;
    const QImage stands = upright(*image, png->exif.orientation);
    return made(stands, fitting(stands.size(), within));
}

} // namespace

Result<QImage> decodedPhoto(const std::string& bytes) {
    return decodedPhoto(bytes, {}, Doubt::refused);
}

Result<QImage> decodedPhoto(const std::string& bytes, const QSize& within, Doubt doubt) {
    const auto kind = photo::kindOf(bytes);
    if (kind == photo::Kind::jpeg) return decodedJpegIn(bytes, within, doubt);
    if (kind == photo::Kind::png) return decodedPngIn(bytes, within);
    if (kind == photo::Kind::heif) {
        auto image = readByQt(bytes, "heic");
        if (!image) return image;
        return made(*image, fitting(image->size(), within));
    }
    return fail(ErrorCode::unsupported, say("This is neither a JPEG nor a PNG picture."), "",
                say("Choose another file, or save the photo as JPEG."));
}

QSize photoSize(const std::string& bytes) {
    if (const auto jpeg = photo::readJpeg(bytes))
        return turned({jpeg->width, jpeg->height}, jpeg->exif.orientation);
    if (const auto png = photo::readPng(bytes))
        return turned({png->width, png->height}, png->exif.orientation);
    return {};
}

QImage greyOf(const QImage& image) {
    return image.convertToFormat(QImage::Format_Grayscale8);
}

QImage upright(const QImage& stored, int orientation) {
    // Exif 2.31, 4.6.4, tag Orientation: where the stored picture's first row and first column are seen.
    switch (orientation) {
    case 2:
        return stored.mirrored(true, false);
    case 3:
        return stored.mirrored(true, true);
    case 4:
        return stored.mirrored(false, true);
    case 5:
        return stored.mirrored(true, false).transformed(QTransform().rotate(270));
    case 6:
        return stored.transformed(QTransform().rotate(90));
    case 7:
        return stored.mirrored(true, false).transformed(QTransform().rotate(90));
    case 8:
        return stored.transformed(QTransform().rotate(270));
    default:
        return stored;
    }
}

bool hasOwnColours(const photo::Jpeg& jpeg) {
    if (jpeg.profile.empty()) return false;
    const auto its = QColorSpace::fromIccProfile(QByteArray::fromStdString(jpeg.profile));
    return its.isValid() && its != QColorSpace(QColorSpace::SRgb);
}

Result<QImage> pictureOf(const photo::Jpeg& jpeg, int eighths, Doubt doubt) {
    auto image = decodedJpeg(jpeg, eighths, doubt);
    if (!image) return image;
    if (jpeg.channels == 3 && hasOwnColours(jpeg)) {
        image->setColorSpace(QColorSpace::fromIccProfile(QByteArray::fromStdString(jpeg.profile)));
        *image = inScreenColours(std::move(*image));
    }
    return upright(*image, jpeg.exif.orientation);
}

Result<QImage> readByQt(const std::string& bytes, const QByteArray& format) {
    [[maybe_unused]] static const bool isBounded = [] { // for the whole process, once
        QImageReader::setAllocationLimit(mostMegabytes);
        return true;
    }();
    if (!QImageReader::supportedImageFormats().contains(format))
        return fail(ErrorCode::unsupported, say("HEIF photos can't be read on this device."), "",
                    say("Save the photo as JPEG, or have the camera make JPEGs."));
    QBuffer buffer; // borrows the bytes
    buffer.setData(QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())));
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer, format);
    reader.setAutoDetectImageFormat(false);
    reader.setAutoTransform(true);
    const QSize size = reader.size();
    if (auto fits = photo::checkSize(size.width(), size.height()); !fits) return tl::unexpected(fits.error());
    const QImage image = reader.read();
    if (image.isNull()) return photo::damaged();
    return plain(inScreenColours(image));
}

} // namespace ambit::view
