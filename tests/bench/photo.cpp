// How long taking in a camera's photo takes, and how much memory: 12 megapixels as they are, turned upright,
// 50 megapixels made smaller, and the dearest file that isn't refused.
#include "../photo/made.hpp"
#include "bench.hpp"
#include "model/photos.hpp"
#include "model/pictures.hpp"

#include <QBuffer>
#include <QFile>
#include <QImageWriter>
#include <random>

namespace ambit::bench {

namespace {

/// A demo photo made large, with the grain that a camera's pictures have.
QImage grainy(const QSize& size) {
    QImage image = QImage(demoFolder() + QStringLiteral("/helicopter/photos/fairing-left-1.jpg"))
                       .scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation)
                       .convertToFormat(QImage::Format_RGB32);
    std::minstd_rand random(1);
    for (int y = 0; y < size.height(); ++y)
        for (int x = 0; x < size.width(); ++x) {
            const QRgb its = image.pixel(x, y);
            const int more = static_cast<int>(random() % 17) - 8;
            const auto with = [&](int value) { return std::clamp(value + more, 0, 255); };
            image.setPixel(x, y, qRgb(with(qRed(its)), with(qGreen(its)), with(qBlue(its))));
        }
    return image;
}

std::string progressive(const QImage& image) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QImageWriter writer(&buffer, "jpeg");
    writer.setQuality(90);
    writer.setProgressiveScanWrite(true);
    writer.write(image);
    return bytes.toStdString();
}

double peakMegabytes() {
    QFile status(QStringLiteral("/proc/self/status"));
    if (!status.open(QIODevice::ReadOnly)) return 0;
    for (const QByteArray& line : status.readAll().split('\n'))
        if (line.startsWith("VmHWM:")) return line.mid(6).simplified().split(' ')[0].toDouble() / 1024;
    return 0;
}

void tell(const char* what, const std::string& bytes) {
    std::vector<double> times;
    std::size_t kept = 0;
    for (int i = 0; i < 7; ++i) {
        QElapsedTimer timer;
        timer.start();
        const auto photo = view::takenIn(bytes, view::PhotoData::time);
        times.push_back(milliseconds(timer));
        kept = photo ? photo->bytes.size() : 0;
    }
    std::printf("%-42s %6.0f ms  %5.2f MB in, %5.2f MB kept, peak %4.0f MB\n", what, median(times),
                static_cast<double>(bytes.size()) / 1e6, static_cast<double>(kept) / 1e6, peakMegabytes());
    std::fflush(stdout);
}

} // namespace

void photo() {
    {
        const std::string phone = view::encodedJpeg(grainy({4032, 3024}), 90);
        tell("12 megapixels, as coded", test::asCamera(phone, {1}));
        tell("12 megapixels, turned upright", test::asCamera(phone, {6}));
        std::vector<double> times;
        for (int i = 0; i < 7; ++i) {
            QElapsedTimer timer;
            timer.start();
            if (!view::decodedPhoto(phone)) return;
            times.push_back(milliseconds(timer));
        }
        std::printf("%-42s %6.0f ms\n", "12 megapixels, decoded for measuring", median(times));
    }
    {
        const QImage large = grainy({8160, 6120});
        const std::string baseline = view::encodedJpeg(large, 90);
        const std::string dear = progressive(large);
        std::printf("%-42s peak %4.0f MB so far, of making them\n", "", peakMegabytes());
        tell("50 megapixels, made smaller", baseline);
        tell("50 megapixels, progressive, made smaller", dear);
    }
}

} // namespace ambit::bench
