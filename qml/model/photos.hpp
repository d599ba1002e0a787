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
    QImage requestImage(const QString& id, QSize* size, const QSize& requested) override;

private:
    const archive::Archive& archive;
};

} // namespace ambit::view
