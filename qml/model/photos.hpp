// Photos: read from a file when a person picks one, shown from the archive afterwards.
#pragma once

#include "archive/archive.hpp"
#include "model/services.hpp"

#include <QQuickImageProvider>
#include <QUrl>

namespace ambit::view {

/// The longer side of a photo in the archive, pixels, and its bytes, unless all was to be kept: 12 megapixels
/// of a phone go in as they are.
inline constexpr int storedSide = 4096;
inline constexpr std::size_t storedBytes = std::size_t{4} << 20;

/// Reads a file and takes it in as `takenIn` does. `url` may be a plain path. Takes 50 to 500 ms of a large
/// photo, needs no certain thread. Errors besides: the file can't be read, is larger than 40 MB.
[[nodiscard]] Result<archive::PhotoBytes> readPhoto(const QUrl& url, PhotoData keep);

/// A file's photo as it is kept, by the same bytes always the same. Refused unless the whole of it decodes
/// without doubt (errors as decodedPhoto's).
/// `time`: a JPEG of its picture and the time it was taken, at most storedSide and storedBytes. Coded anew
/// only if it must be turned upright, made smaller or is none in sRGB; else the coded picture goes over as it
/// is: nothing of what was found is blurred, and a photo that came out of here comes out again the same.
/// `asTaken`: a JPEG or PNG as it is, up to where its picture ends; HEIF as with `time`, since a record can't
/// hold it.
[[nodiscard]] Result<archive::PhotoBytes> takenIn(std::string bytes, PhotoData keep);

/// Serves "image://photo/<sha256>" from the archive. On the archive's own thread only: an Image must not be
/// `asynchronous`. What came in with records from elsewhere is decoded within the same bounds; nothing is
/// shown of what is beyond them.
class PhotoProvider : public QQuickImageProvider {
public:
    explicit PhotoProvider(const archive::Archive& from);
    /// Of an archive that is opened once a photo of it is asked for.
    explicit PhotoProvider(std::filesystem::path file);
    QImage requestImage(const QString& id, QSize* size, const QSize& requested) override;

private:
    [[nodiscard]] const archive::Archive* opened();

    const archive::Archive* archive = nullptr;
    std::filesystem::path file;
    std::unique_ptr<archive::Archive> own;
};

} // namespace ambit::view
