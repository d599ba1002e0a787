#include "archive/offers.hpp"

#include "base/files.hpp"

#include <algorithm>
#include <archive.h>
#include <archive_entry.h>
#include <cctype>
#include <clocale>
#include <fstream>

namespace ambit::archive {

namespace {

constexpr std::size_t largest = std::size_t{512} << 20; ///< one file; a PDF with many photos

std::string endingOf(const std::filesystem::path& path) {
    std::string ending = path.extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return ending;
}
bool isPhoto(const std::filesystem::path& path) {
    const std::string ending = endingOf(path);
    return ending == ".jpg" || ending == ".jpeg" || ending == ".png";
}
bool isOurs(const std::filesystem::path& path) {
    const std::string ending = endingOf(path);
    return isPhoto(path) || ending == ".json" || ending == ".pdf";
}

/// Told by the first bytes: zip, or tar as POSIX has it (pax, ustar).
bool isPacked(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::string head(262, '\0');
    file.read(head.data(), static_cast<std::streamsize>(head.size()));
    return head.starts_with("PK\x03\x04") || head.substr(257, 5) == "ustar";
}

/// Sorted. What stopped it before its end is in `failed`.
std::vector<std::filesystem::path> filesIn(const std::filesystem::path& folder, std::error_code& failed) {
    std::vector<std::filesystem::path> files;
    for (std::filesystem::recursive_directory_iterator at(folder, failed), end; !failed && at != end;
         at.increment(failed)) {
        std::error_code unknown; // of a link that leads to itself: no file
        if (at->is_regular_file(unknown) && (isOurs(at->path()) || endingOf(at->path()) == ".zip"))
            files.push_back(at->path());
    }
    std::sort(files.begin(), files.end());
    return files;
}

struct Closing {
    void operator()(struct archive* it) const { archive_read_free(it); }
};

/// libarchive has names in the letters of the thread's locale: of a program that chose none, ASCII alone.
class AnyLetters {
public:
    AnyLetters() : utf8(::newlocale(LC_CTYPE_MASK, "C.UTF-8", nullptr)) {
        if (utf8 != nullptr) before = ::uselocale(utf8);
    }
    AnyLetters(const AnyLetters&) = delete;
    AnyLetters& operator=(const AnyLetters&) = delete;
    ~AnyLetters() {
        if (utf8 == nullptr) return;
        ::uselocale(before);
        ::freelocale(utf8);
    }

private:
    locale_t utf8;
    locale_t before = nullptr;
};

} // namespace

class Offers::Packed {
public:
    Packed(std::filesystem::path path, bool photosOnly)
        : from(std::move(path)), photos(photosOnly), reader(archive_read_new()) {
        archive_read_support_format_zip(reader.get());
        archive_read_support_format_tar(reader.get());
        good = archive_read_open_filename(reader.get(), from.c_str(), 1 << 16) == ARCHIVE_OK;
    }

    /// nullopt: no more. After an error there is no more.
    std::optional<Result<Offered>> next() {
        const AnyLetters names;
        while (good) {
            archive_entry* entry = nullptr;
            const int code = archive_read_next_header(reader.get(), &entry);
            if (code == ARCHIVE_EOF) return std::nullopt;
            const char* named = code == ARCHIVE_OK ? archive_entry_pathname_utf8(entry) : nullptr;
            if (named == nullptr) break;
            const std::string name = named;
            if (archive_entry_filetype(entry) != AE_IFREG || !isOurs(name) || isPhoto(name) != photos)
                continue;
            const std::string where = from.string() + ": " + name;
            auto bytes = read();
            if (bytes) return Offered{where, std::move(*bytes)};
            good = false;
            return fail(ErrorCode::syntax, bytes.error().what, where, bytes.error().remedy);
        }
        if (ended) return std::nullopt;
        ended = true;
        return fail(ErrorCode::syntax,
                    say("The file breaks off or is damaged: what follows in it can't be read."),
                    from.string(), say("Ask for it again. What came before it is taken in."));
    }

private:
    Result<std::string> read() {
        std::string bytes;
        std::string part(1 << 16, '\0');
        for (;;) {
            const la_ssize_t got = archive_read_data(reader.get(), part.data(), part.size());
            if (got == 0) return bytes;
            if (got < 0) {
                ended = true;
                return fail(ErrorCode::syntax, say("The file breaks off or is damaged."), "",
                            say("Ask for it again. What came before it is taken in."));
            }
            if (bytes.size() + static_cast<std::size_t>(got) > largest) {
                ended = true;
                return fail(ErrorCode::invalid, say("This is larger than 512 MiB."), "",
                            say("It is no record or photo."));
            }
            bytes.append(part.data(), static_cast<std::size_t>(got));
        }
    }

    std::filesystem::path from;
    bool photos;
    std::unique_ptr<struct archive, Closing> reader;
    bool good = false;
    bool ended = false;
};

Offers::Offers(const std::vector<std::filesystem::path>& paths) {
    std::deque<Source> photos;
    const auto add = [&](const std::filesystem::path& path) {
        if (isPacked(path)) {
            sources.push_back({path, true, false});
            photos.push_back({path, true, true});
        } else {
            (isPhoto(path) ? photos : sources).push_back({path});
        }
    };
    for (const std::filesystem::path& path : paths) {
        std::error_code none;
        if (!std::filesystem::is_directory(path, none)) {
            add(path);
            continue;
        }
        std::error_code failed;
        for (const std::filesystem::path& file : filesIn(path, failed))
            add(file);
        if (failed)
            unread.push_back({ErrorCode::storage,
                              say("The folder could not be read to its end: %1.", failed.message()),
                              path.string(), say("Look whether you may read all of it.")});
    }
    sources.insert(sources.end(), photos.begin(), photos.end());
}

Offers::~Offers() = default;

std::optional<Result<Offered>> Offers::next() {
    for (;;) {
        if (open) {
            if (auto one = open->next()) return one;
            open.reset();
        }
        if (sources.empty() && !unread.empty()) {
            Error error = std::move(unread.front());
            unread.pop_front();
            return tl::unexpected(std::move(error));
        }
        if (sources.empty()) return std::nullopt;
        const Source source = std::move(sources.front());
        sources.pop_front();
        if (source.packed) {
            open = std::make_unique<Packed>(source.path, source.photos);
            continue;
        }
        auto bytes = readFile(source.path, largest);
        if (!bytes) return tl::unexpected(bytes.error());
        return Offered{source.path.string(), std::move(*bytes)};
    }
}

} // namespace ambit::archive
