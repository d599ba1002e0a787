// Photos: read from a file when a person picks one, shown from the archive afterwards.
#pragma once

#include "archive/archive.hpp"

#include <QQuickImageProvider>
#include <QUrl>

namespace ambit::view {

/// A file's bytes as they are, with their hash: JPEG or PNG that a picture reader knows by its header, at
/// most 40 MB. `url` may be a plain path.
[[nodiscard]] Result<archive::PhotoBytes> readPhoto(const QUrl& url);

/// Serves "image://photo/<sha256>" from the archive. On the archive's own thread only: an Image must not be
/// `asynchronous`.
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
