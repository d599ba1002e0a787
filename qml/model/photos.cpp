#include "model/photos.hpp"

#include "base/files.hpp"
#include "base/hash.hpp"

#include <QBuffer>
#include <QCoreApplication>
#include <QImageReader>
#include <QThread>

namespace ambit::view {

namespace {

constexpr std::size_t mostBytes = std::size_t{40} << 20;

/// The reader borrows the bytes through the buffer: both must outlive it.
void lend(QBuffer& buffer, const std::string& bytes) {
    buffer.setData(QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())));
    buffer.open(QIODevice::ReadOnly);
}

} // namespace

Result<archive::PhotoBytes> readPhoto(const QUrl& url) {
    const QString path = url.isLocalFile() ? url.toLocalFile() : url.toString();
    auto bytes = readFile(std::filesystem::path(path.toStdString()), mostBytes);
    if (!bytes) return tl::unexpected(bytes.error());
    QBuffer buffer;
    lend(buffer, *bytes);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    const QByteArray format = reader.canRead() ? reader.format() : QByteArray();
    if ((format != "jpeg" && format != "png") || !reader.size().isValid())
        return fail(ErrorCode::unsupported, say("This is neither a JPEG nor a PNG picture."),
                    path.toStdString(), say("Choose another file, or save the photo as JPEG."));
    round::Photo photo{sha256Hex(*bytes), "image/" + format.toStdString(),
                       static_cast<std::int64_t>(bytes->size())};
    return archive::PhotoBytes{std::move(photo), std::move(*bytes)};
}

PhotoProvider::PhotoProvider(const archive::Archive& from)
    : QQuickImageProvider(QQuickImageProvider::Image), archive(&from) {}

PhotoProvider::PhotoProvider(std::filesystem::path from)
    : QQuickImageProvider(QQuickImageProvider::Image), file(std::move(from)) {}

const archive::Archive* PhotoProvider::opened() {
    if (archive != nullptr || file.empty()) return archive;
    auto its = archive::Archive::open(file);
    if (!its) return nullptr;
    own = std::make_unique<archive::Archive>(std::move(*its));
    archive = own.get();
    return archive;
}

QImage PhotoProvider::requestImage(const QString& id, QSize* size, const QSize& requested) {
    if (QThread::currentThread() != QCoreApplication::instance()->thread()) return {};
    const auto* from = opened();
    if (from == nullptr) return {};
    const auto bytes = from->photo(id.toStdString());
    if (!bytes) return {};
    QBuffer buffer;
    lend(buffer, *bytes);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize full = reader.size();
    if (size != nullptr) *size = full;
    // Decoded small: a phone's photo at full size is some 50 MB of memory.
    if (requested.width() > 0 || requested.height() > 0) {
        const QSize box(requested.width() > 0 ? requested.width() : full.width(),
                        requested.height() > 0 ? requested.height() : full.height());
        reader.setScaledSize(full.scaled(box, Qt::KeepAspectRatio));
    }
    return reader.read();
}

} // namespace ambit::view
