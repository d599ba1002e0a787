#include "model/turbo.hpp"

#include "photo/bounds.hpp"

#include <memory>
#include <turbojpeg.h>

namespace ambit::view {

namespace {

struct Destroy {
    void operator()(void* handle) const { tjDestroy(handle); }
};
using Handle = std::unique_ptr<void, Destroy>;

struct Free {
    void operator()(unsigned char* bytes) const { tjFree(bytes); }
};

// RGB32 is a number of 32 bits: its bytes stand the other way round where the machine's do.
constexpr bool isLittle = Q_BYTE_ORDER == Q_LITTLE_ENDIAN;

int formatOf(const QImage& image, bool isOpaque) {
    if (image.format() == QImage::Format_Grayscale8) return TJPF_GRAY;
    if (isOpaque) return isLittle ? TJPF_BGRA : TJPF_ARGB; // its fourth byte is 255
    return isLittle ? TJPF_BGRX : TJPF_XRGB;
}

} // namespace

Result<QImage> decodedJpeg(const photo::Jpeg& jpeg, int eighths, Doubt doubt) {
    const tjscalingfactor factor{eighths, 8};
    QImage image(TJSCALED(jpeg.width, factor), TJSCALED(jpeg.height, factor),
                 jpeg.channels == 1 ? QImage::Format_Grayscale8 : QImage::Format_RGB32);
    const Handle handle(tjInitDecompress());
    if (!handle || image.isNull()) return noMemory();
    if (doubt == Doubt::shown) image.fill(Qt::white); // where nothing comes out
    const int flags = TJFLAG_ACCURATEDCT | (doubt == Doubt::refused ? TJFLAG_STOPONWARNING : 0);
    const int done =
        tjDecompress2(handle.get(), reinterpret_cast<const unsigned char*>(jpeg.picture.data()),
                      jpeg.picture.size(), image.bits(), image.width(),
                      static_cast<int>(image.bytesPerLine()), image.height(), formatOf(image, true), flags);
    const bool isWarning = done != 0 && tjGetErrorCode(handle.get()) == TJERR_WARNING;
    if (done != 0 && (doubt == Doubt::refused || !isWarning)) return photo::damaged();
    return image;
}

tl::unexpected<Error> noMemory() {
    return fail(ErrorCode::storage, say("There is not enough memory for this photo."), "",
                say("Close what else runs, or take it with fewer pixels."));
}

std::string encodedJpeg(const QImage& image, int quality) {
    const Handle handle(tjInitCompress());
    if (!handle) return {};
    unsigned char* bytes = nullptr;
    unsigned long size = 0;
    const bool isGrey = image.format() == QImage::Format_Grayscale8;
    const int done =
        tjCompress2(handle.get(), image.constBits(), image.width(), static_cast<int>(image.bytesPerLine()),
                    image.height(), formatOf(image, false), &bytes, &size, isGrey ? TJSAMP_GRAY : TJSAMP_420,
                    quality, TJFLAG_ACCURATEDCT);
    const std::unique_ptr<unsigned char, Free> owned(bytes);
    return done == 0 ? std::string(reinterpret_cast<const char*>(bytes), size) : std::string();
}

} // namespace ambit::view
