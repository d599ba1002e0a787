// JPEG decoded and encoded by libjpeg-turbo itself: Qt's reader takes a picture that breaks off for a whole
// one, and tells of it only on the terminal.
#pragma once

#include "photo/jpeg.hpp"

#include <QImage>

namespace ambit::view {

/// What to do where the coded data don't come out: a file taken in must be whole, of one that was signed
/// with its record as much is shown as there is.
enum class Doubt { refused, shown };

/// As stored, not turned upright: RGB32, or Grayscale8 if it has no colours. `eighths`: 1 to 8, each side of
/// so many eighths (rounded up). Errors invalid: damaged; storage: no memory.
[[nodiscard]] Result<QImage> decodedJpeg(const photo::Jpeg& jpeg, int eighths, Doubt doubt);

[[nodiscard]] tl::unexpected<Error> noMemory();

/// With a JFIF header and nothing else besides the picture. `image`: RGB32 or Grayscale8. `quality`: 1 to
/// 100. "" only if there is no memory.
[[nodiscard]] std::string encodedJpeg(const QImage& image, int quality);

} // namespace ambit::view
