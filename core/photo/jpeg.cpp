#include "photo/jpeg.hpp"

#include "photo/bounds.hpp"

#include <algorithm>
#include <array>
#include <bitset>
#include <map>

namespace ambit::photo {

namespace {

enum Marker : int {
    baseline = 0xC0,
    extended = 0xC1,
    progressive = 0xC2,
    huffman = 0xC4,
    firstRestart = 0xD0,
    lastRestart = 0xD7,
    start = 0xD8,
    end = 0xD9,
    beginScan = 0xDA,
    quantization = 0xDB,
    countLines = 0xDC,
    restartInterval = 0xDD,
    app0 = 0xE0,
    app1 = 0xE1,
    app2 = 0xE2,
    app14 = 0xEE,
};

constexpr std::size_t mostSegments = 4000;
/// A progressive picture has some 10; each goes through the whole picture again: a largest one has 12 at
/// most.
constexpr int mostScans = 32;
constexpr std::int64_t mostScannedPixels = 12 * mostPixels;
/// Pictures of several scans are held as coefficients of 2 bytes until the last one.
constexpr std::int64_t mostCoefficients = 100'000'000;
constexpr std::size_t mostProfile = std::size_t{1} << 20;
constexpr std::string_view exifSignature("Exif\0\0", 6);
constexpr std::string_view profileSignature("ICC_PROFILE\0", 12);
constexpr std::string_view jfifSignature("JFIF\0", 5);
constexpr std::string_view plainJfif("JFIF\0\1\1\0\0\1\0\1\0\0", 14); ///< square pixels, no thumbnail

int byteAt(std::string_view bytes, std::size_t at) {
    return static_cast<unsigned char>(bytes[at]);
}

int pairAt(std::string_view bytes, std::size_t at) {
    return byteAt(bytes, at) << 8 | byteAt(bytes, at + 1);
}

bool isFrame(int marker) {
    return marker >= 0xC0 && marker <= 0xCF && marker != huffman && marker != 0xC8 && marker != 0xCC;
}

tl::unexpected<Error> rare() {
    return fail(ErrorCode::unsupported, say("This kind of JPEG can't be read."), "",
                say("Save it anew as an ordinary JPEG."));
}

Result<void> readFrame(Jpeg& jpeg, int marker, std::string_view inside) {
    if (jpeg.channels != 0 || inside.size() < 6) return damaged();
    if (marker > progressive || byteAt(inside, 0) != 8) return rare();
    jpeg.height = pairAt(inside, 1);
    jpeg.width = pairAt(inside, 3);
    jpeg.channels = byteAt(inside, 5);
    if (jpeg.channels != 1 && jpeg.channels != 3) return rare(); // for print, or none
    if (inside.size() != 6 + 3 * static_cast<std::size_t>(jpeg.channels)) return damaged();
    return checkSize(jpeg.width, jpeg.height);
}

/// Parts may come in any order, numbered from 1.
std::string profileOf(const Jpeg& jpeg) {
    std::map<int, std::string_view> parts;
    std::size_t bytes = 0;
    int count = 0;
    for (const Jpeg::Segment& one : jpeg.segments) {
        const std::size_t head = profileSignature.size() + 2;
        if (one.marker != app2 || !one.inside.starts_with(profileSignature) || one.inside.size() < head)
            continue;
        parts[byteAt(one.inside, head - 2)] = one.inside.substr(head);
        count = byteAt(one.inside, head - 1);
        bytes += one.inside.size();
    }
    std::string whole;
    if (bytes > mostProfile || static_cast<int>(parts.size()) != count) return whole;
    for (int number = 1; number <= count; ++number) {
        const auto part = parts.find(number);
        if (part == parts.end()) return {};
        whole += part->second;
    }
    return whole;
}

/// Where the next marker that ends a scan's coded data stands; npos: nowhere.
std::size_t afterScan(std::string_view bytes, std::size_t from) {
    for (std::size_t at = bytes.find('\xFF', from); at != std::string_view::npos && at + 1 < bytes.size();
         at = bytes.find('\xFF', at + 1)) {
        const int next = byteAt(bytes, at + 1);
        if (next != 0 && next != 0xFF && (next < firstRestart || next > lastRestart)) return at;
    }
    return std::string_view::npos;
}

/// Restarts are numbered in turn (T.81, E.1.4): else what is between the scan's header and the end could be
/// other things, too. The header holds no more than it must.
bool isPlainScan(std::string_view scan, int channels) {
    const std::size_t head = 6 + 2 * static_cast<std::size_t>(channels);
    if (static_cast<std::size_t>(pairAt(scan, 2)) != head || byteAt(scan, 4) != channels) return false;
    int turn = firstRestart;
    for (std::size_t at = scan.find('\xFF', 2 + head); at + 2 < scan.size(); at = scan.find('\xFF', at + 1)) {
        const int next = byteAt(scan, at + 1);
        if (next < firstRestart || next > lastRestart) continue;
        if (next != turn) return false;
        turn = turn == lastRestart ? firstRestart : turn + 1;
    }
    return true;
}

/// How many coefficients the whole picture has: each channel's share by its sampling.
std::int64_t coefficientsOf(const Jpeg& jpeg) {
    const auto frame = std::find_if(jpeg.segments.begin(), jpeg.segments.end(),
                                    [](const auto& one) { return isFrame(one.marker); });
    int most = 1;
    int sum = 0;
    for (int i = 0; i < jpeg.channels; ++i) {
        const int factors = byteAt(frame->inside, 7 + 3 * static_cast<std::size_t>(i));
        const int share = (factors >> 4) * (factors & 15);
        most = std::max(most, share);
        sum += share;
    }
    return std::int64_t{jpeg.width} * jpeg.height * sum / most;
}

/// T.81, B.2.4.1: tables of 8 bits a value, each defined once.
bool areQuantizations(std::string_view inside, std::bitset<4>& known) {
    for (; !inside.empty(); inside.remove_prefix(65)) {
        const int id = byteAt(inside, 0);
        if (inside.size() < 65 || id > 3 || known[static_cast<std::size_t>(id)]) return false;
        known.set(static_cast<std::size_t>(id));
    }
    return true;
}

/// T.81, B.2.4.2: baseline has two of each class.
bool areHuffmans(std::string_view inside, std::bitset<4>& known) {
    while (!inside.empty()) {
        const int kind = byteAt(inside, 0);
        if (inside.size() < 17 || (kind & 0xEE) != 0) return false;
        const auto number = static_cast<std::size_t>(kind >> 4) * 2 + static_cast<std::size_t>(kind & 1);
        if (known[number]) return false;
        known.set(number);
        std::size_t values = 0;
        for (std::size_t i = 1; i <= 16; ++i)
            values += static_cast<std::size_t>(byteAt(inside, i));
        if (values > 256 || inside.size() < 17 + values) return false;
        inside.remove_prefix(17 + values);
    }
    return true;
}

void putSegment(std::string& out, int marker, std::string_view inside) {
    const std::size_t length = inside.size() + 2;
    out += '\xFF';
    out += static_cast<char>(marker);
    out += static_cast<char>(length >> 8);
    out += static_cast<char>(length & 0xFF);
    out += inside;
}

void putTime(std::string& out, const Exif& exif) {
    if (const std::string block = writeExif(exif); !block.empty())
        putSegment(out, app1, std::string(exifSignature) + block);
}

/// Which of a file's JFIF headers goes on: its own, if it says no more than how dense the pixels are.
std::string_view jfifOf(const Jpeg& jpeg) {
    if (jpeg.segments.empty()) return plainJfif;
    const auto& [marker, inside] = jpeg.segments.front();
    const bool isPlain = marker == app0 && inside.size() == plainJfif.size() &&
                         inside.starts_with(jfifSignature) && byteAt(inside, 5) == 1 &&
                         byteAt(inside, 6) <= 2 && byteAt(inside, 7) <= 2 &&
                         inside.substr(12) == plainJfif.substr(12);
    return isPlain ? inside : plainJfif;
}

/// What follows the first scan's header, to the end of the picture.
Result<void> readScans(Jpeg& jpeg, std::string_view bytes, std::size_t at) {
    const std::size_t first = at;
    bool alone = false;
    for (;;) {
        while (at + 1 < bytes.size() && byteAt(bytes, at) == 0xFF && byteAt(bytes, at + 1) == 0xFF)
            ++at;
        if (at + 2 > bytes.size() || byteAt(bytes, at) != 0xFF) return damaged();
        const int marker = byteAt(bytes, at + 1);
        if (marker == end) break;
        if (marker != beginScan && marker != huffman && marker != quantization && marker != restartInterval &&
            marker < app0)
            return damaged();
        if (at + 4 > bytes.size()) return damaged();
        at += 2 + static_cast<std::size_t>(pairAt(bytes, at + 2));
        if (at > bytes.size()) return damaged();
        if (marker != beginScan) continue;
        ++jpeg.scans;
        if (jpeg.scans > mostScans || std::int64_t{jpeg.width} * jpeg.height * jpeg.scans > mostScannedPixels)
            return rare();
        at = afterScan(bytes, at);
        if (at == std::string_view::npos) return damaged();
        alone = jpeg.scans == 1 && byteAt(bytes, at + 1) == end;
    }
    jpeg.picture = bytes.substr(0, at + 2);
    jpeg.scan = jpeg.picture.substr(first);
    jpeg.isScanAlone = alone;
    if (jpeg.scans > 1 && coefficientsOf(jpeg) > mostCoefficients) return rare();
    return {};
}

} // namespace

Result<Jpeg> readJpeg(std::string_view bytes) {
    if (kindOf(bytes) != Kind::jpeg) return damaged();
    Jpeg jpeg;
    std::size_t at = 2;
    for (;;) {
        if (at + 4 > bytes.size() || byteAt(bytes, at) != 0xFF || jpeg.segments.size() > mostSegments)
            return damaged();
        const int marker = byteAt(bytes, at + 1);
        if (marker == 0xFF) { // filling
            ++at;
            continue;
        }
        const auto length = static_cast<std::size_t>(pairAt(bytes, at + 2));
        if (marker <= 0x01 || (marker >= firstRestart && marker <= end) || marker == countLines ||
            length < 2 || length > bytes.size() - at - 2)
            return damaged();
        if (marker == beginScan) break;
        const std::string_view inside = bytes.substr(at + 4, length - 2);
        if (isFrame(marker))
            if (auto read = readFrame(jpeg, marker, inside); !read) return tl::unexpected(read.error());
        jpeg.segments.push_back({marker, inside});
        at += 2 + length;
    }
    if (jpeg.channels == 0) return damaged();
    if (auto read = readScans(jpeg, bytes, at); !read) return tl::unexpected(read.error());
    const auto exif = std::find_if(jpeg.segments.begin(), jpeg.segments.end(), [](const auto& one) {
        return one.marker == app1 && one.inside.starts_with(exifSignature);
    });
    if (exif != jpeg.segments.end()) jpeg.exif = readExif(exif->inside.substr(exifSignature.size()));
    jpeg.profile = profileOf(jpeg);
    return jpeg;
}

std::string Jpeg::stripped(bool hasOwnColours) const {
    if (exif.orientation != 1 || hasOwnColours || !isScanAlone || !isPlainScan(scan, channels)) return {};
    std::string out{"\xFF\xD8"};
    putSegment(out, app0, jfifOf(*this));
    putTime(out, exif);
    std::bitset<4> quantizations;
    std::bitset<4> huffmans;
    for (const auto& [marker, inside] : segments) {
        if (marker == baseline) {
            // Other names than these tell some decoders of other colours than a JFIF header does.
            for (std::size_t i = 0; i < static_cast<std::size_t>(channels); ++i)
                if (byteAt(inside, 6 + 3 * i) != static_cast<int>(i) + 1) return {};
        } else if (isFrame(marker) || marker == app14) { // Adobe's may mean other colours, too
            return {};
        } else if (marker == quantization) {
            if (!areQuantizations(inside, quantizations)) return {};
        } else if (marker == huffman) {
            if (!areHuffmans(inside, huffmans)) return {};
        } else if (marker == restartInterval) {
            if (inside.size() != 2) return {};
        } else {
            continue; // whatever else a file says
        }
        putSegment(out, marker, inside);
    }
    out += scan;
    return out;
}

std::string withTime(const std::string& jpeg, const Exif& exif) {
    constexpr std::size_t head = 2 + 4 + 14; // start, JFIF
    std::string out = jpeg.substr(0, head);
    putTime(out, exif);
    return out + jpeg.substr(head);
}

} // namespace ambit::photo
