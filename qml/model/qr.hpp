// QR codes (ISO/IEC 18004), made and read.
#pragma once

#include <QImage>
#include <QString>

namespace ambit::view {

/// One pixel a module, with the quiet zone of four: modules black, the rest transparent. At least a seventh
/// of it may be damaged (level M). A null image: more text than a code holds.
[[nodiscard]] QImage qrPicture(const QString& text);

/// What the one QR code in a picture says, however it lies there; "": there is none, or it can't be read.
/// What is transparent counts as white.
[[nodiscard]] QString readQr(const QImage& picture);

} // namespace ambit::view
