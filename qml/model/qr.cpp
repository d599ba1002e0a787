#include "model/qr.hpp"

#include <qrcodegen.hpp>

#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>

#include <QPainter>
#include <exception>

namespace ambit::view {

namespace {

constexpr int quietZone = 4; // modules; ISO/IEC 18004, 5.3.8

QImage onWhite(const QImage& picture) {
    if (!picture.hasAlphaChannel()) return picture.convertToFormat(QImage::Format_Grayscale8);
    QImage ground(picture.size(), QImage::Format_RGB32);
    ground.fill(Qt::white);
    QPainter(&ground).drawImage(0, 0, picture);
    return ground.convertToFormat(QImage::Format_Grayscale8);
}

} // namespace

QImage qrPicture(const QString& text) {
    try {
        const auto code =
            qrcodegen::QrCode::encodeText(text.toUtf8().constData(), qrcodegen::QrCode::Ecc::MEDIUM);
        const int size = code.getSize() + 2 * quietZone;
        QImage picture(size, size, QImage::Format_ARGB32);
        picture.fill(Qt::transparent);
        for (int y = 0; y < code.getSize(); ++y)
            for (int x = 0; x < code.getSize(); ++x)
                if (code.getModule(x, y)) picture.setPixelColor(x + quietZone, y + quietZone, Qt::black);
        return picture;
    } catch (const std::exception&) { // too long
        return {};
    }
}

QString readQr(const QImage& picture) {
    if (picture.isNull()) return {};
    const QImage grey = onWhite(picture);
    try {
        const auto hints = ZXing::DecodeHints()
                               .setFormats(ZXing::BarcodeFormat::QRCode)
                               .setTryHarder(true)
                               .setTryRotate(true);
        const auto result =
            ZXing::ReadBarcode({grey.constBits(), grey.width(), grey.height(), ZXing::ImageFormat::Lum,
                                static_cast<int>(grey.bytesPerLine())},
                               hints);
        return result.isValid() ? QString::fromStdString(result.text()) : QString();
    } catch (const std::exception&) {
        return {};
    }
}

} // namespace ambit::view
