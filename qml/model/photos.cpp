#include "model/photos.hpp"

#include "base/files.hpp"
#include "base/hash.hpp"
#include "model/pictures.hpp"
#include "photo/bounds.hpp"
#include "photo/png.hpp"

#include <QCoreApplication>
#include <QThread>
#include <array>

namespace ambit::view {

namespace {

/// From what is hardly seen to what still shows a crack.
constexpr std::array<int, 5> qualities{90, 80, 70, 60, 50};

Result<archive::PhotoBytes> keptAs(const char* type, std::string bytes) {
    round::Photo photo{sha256Hex(bytes), type, static_cast<std::int64_t>(bytes.size())};
    return archive::PhotoBytes{std::move(photo), std::move(bytes)};
}

/// `image`: upright.
Result<archive::PhotoBytes> encoded(const QImage& image, const photo::Exif& exif) {
    for (const int quality : qualities) {
        const std::string jpeg = encodedJpeg(image, quality);
        if (jpeg.empty()) return noMemory();
        std::string bytes = photo::withTime(jpeg, exif);
        if (bytes.size() <= storedBytes) return keptAs("image/jpeg", std::move(bytes));
    }
    // No photo comes here, but noise does.
    return encoded(image.scaled(image.size() / 2, Qt::IgnoreAspectRatio, Qt::SmoothTransformation), exif);
}

Result<archive::PhotoBytes> takenJpeg(std::string bytes, PhotoData keep) {
    const auto jpeg = photo::readJpeg(bytes);
    if (!jpeg) return tl::unexpected(jpeg.error());
    // The smallest decoding reads all of the coded data, too.
    const auto isWhole = [](const photo::Jpeg& its) { return decodedJpeg(its, 1, Doubt::refused); };
    if (keep == PhotoData::asTaken) {
        if (auto whole = isWhole(*jpeg); !whole) return tl::unexpected(whole.error());
        const std::size_t end = jpeg->picture.size();
        bytes.resize(end);
        return keptAs("image/jpeg", std::move(bytes));
    }
    const int side = std::max(jpeg->width, jpeg->height);
    std::string stripped = side <= storedSide ? jpeg->stripped(hasOwnColours(*jpeg)) : std::string();
    if (!stripped.empty() && stripped.size() <= storedBytes) {
        const auto its = photo::readJpeg(stripped);
        if (!its) return tl::unexpected(its.error());
        if (auto whole = isWhole(*its); !whole) return tl::unexpected(whole.error());
        return keptAs("image/jpeg", std::move(stripped));
    }
    int eighths = 8;
    while (eighths > 1 && (side * eighths + 7) / 8 > storedSide)
        --eighths;
    const auto image = pictureOf(*jpeg, eighths, Doubt::refused);
    if (!image) return tl::unexpected(image.error());
    return encoded(*image, jpeg->exif);
}

Result<archive::PhotoBytes> takenPng(std::string bytes, PhotoData keep) {
    const auto png = photo::readPng(bytes);
    if (!png) return tl::unexpected(png.error());
    const auto image = decodedPhoto(bytes, {storedSide, storedSide}, Doubt::refused);
    if (!image) return tl::unexpected(image.error());
    if (keep == PhotoData::time) return encoded(*image, png->exif);
    bytes.resize(png->end);
    return keptAs("image/png", std::move(bytes));
}

Result<archive::PhotoBytes> takenOther(const std::string& bytes) {
    const auto image = decodedPhoto(bytes, {storedSide, storedSide}, Doubt::refused);
    if (!image) return tl::unexpected(image.error());
    return encoded(*image, photo::readExif(photo::exifInHeif(bytes)));
}

} // namespace

Result<archive::PhotoBytes> takenIn(std::string bytes, PhotoData keep) {
    const auto kind = photo::kindOf(bytes);
    if (kind == photo::Kind::jpeg) return takenJpeg(std::move(bytes), keep);
    if (kind == photo::Kind::png) return takenPng(std::move(bytes), keep);
    return takenOther(bytes);
}

Result<archive::PhotoBytes> readPhoto(const QUrl& url, PhotoData keep) {
    const QString path = url.isLocalFile() ? url.toLocalFile() : url.toString();
    auto bytes = readFile(std::filesystem::path(path.toStdString()), photo::mostFileBytes);
    if (!bytes) return tl::unexpected(bytes.error());
    return takenIn(std::move(*bytes), keep).map_error([&](Error error) {
        error.where = path.toStdString();
        return error;
    });
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
    if (size != nullptr) *size = photoSize(*bytes);
    // One side alone may be asked for. Decoded small: a phone's photo at full size is some 50 MB of memory.
    const QSize box(requested.width() > 0 ? requested.width() : storedSide,
                    requested.height() > 0 ? requested.height() : storedSide);
    return decodedPhoto(*bytes, box, Doubt::shown).value_or(QImage());
}

} // namespace ambit::view
