// A photo's picture out of its bytes, whoever they are from: bounded in pixels, memory and time, upright, in
// sRGB. No function here needs a certain thread; none takes less than 50 ms of a phone's photo.
#pragma once

#include "base/result.hpp"
#include "model/turbo.hpp"
#include "photo/exif.hpp"

#include <QImage>
#include <string>

namespace ambit::view {

/// The whole picture: RGB32, or Grayscale8 if it has no colours. 50 megapixels are 200 MB.
/// Errors invalid: damaged; unsupported: neither JPEG nor PNG, nor HEIF where the platform reads it; too
/// large (photo/bounds.hpp).
[[nodiscard]] Result<QImage> decodedPhoto(const std::string& bytes);

/// Made to fit, with its own proportions, never larger than it is; decoded no larger than that needs.
[[nodiscard]] Result<QImage> decodedPhoto(const std::string& bytes, const QSize& within, Doubt doubt);

/// How large the upright picture is, by the file's header; empty where that isn't known.
[[nodiscard]] QSize photoSize(const std::string& bytes);

/// For measuring: Format_Grayscale8, by the eye's weights (ITU-R BT.601, as Qt has them).
[[nodiscard]] QImage greyOf(const QImage& image);

/// Steps of taking in a photo (photos.hpp).
[[nodiscard]] QImage upright(const QImage& stored, int orientation);
[[nodiscard]] bool hasOwnColours(const photo::Jpeg& jpeg); ///< other ones than sRGB's
[[nodiscard]] Result<QImage> pictureOf(const photo::Jpeg& jpeg, int eighths, Doubt doubt);
/// PNG or HEIF, by Qt's readers. `format`: as Qt calls it.
[[nodiscard]] Result<QImage> readByQt(const std::string& bytes, const QByteArray& format);

} // namespace ambit::view
