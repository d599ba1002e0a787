#include "archive/export.hpp"

#include "airframe/read.hpp"
#include "archive/export_pages.hpp"
#include "base/files.hpp"

#include <algorithm>
#include <archive.h>
#include <archive_entry.h>
#include <set>
#include <unistd.h>

namespace ambit::archive {

namespace {

/// A zip while it is written; gone unless `keep` was called. Same things in, same bytes out.
class Zip {
public:
    explicit Zip(std::filesystem::path its)
        : path(std::move(its)),
          part(path.parent_path() / (".ambit-export-" + std::to_string(::getpid()) + ".part")),
          writer(archive_write_new()) {}
    Zip(const Zip&) = delete;
    Zip& operator=(const Zip&) = delete;
    ~Zip() {
        writer.reset();
        std::error_code none;
        std::filesystem::remove(part, none);
    }

    Result<void> open() {
        archive_write_set_format_zip(writer.get());
        archive_write_set_options(writer.get(), "zip:hdrcharset=UTF-8");
        if (archive_write_open_filename(writer.get(), part.c_str()) != ARCHIVE_OK) return failed();
        return {};
    }
    Result<void> add(const std::string& name, std::string_view bytes, Instant at) {
        const std::unique_ptr<archive_entry, Freeing> entry(archive_entry_new());
        archive_entry_set_pathname_utf8(entry.get(), name.c_str());
        archive_entry_set_size(entry.get(), static_cast<la_int64_t>(bytes.size()));
        archive_entry_set_filetype(entry.get(), AE_IFREG);
        archive_entry_set_perm(entry.get(), 0644);
        archive_entry_set_mtime(entry.get(), static_cast<time_t>(at.ms / 1000), 0);
        if (archive_write_header(writer.get(), entry.get()) != ARCHIVE_OK) return failed();
        if (archive_write_data(writer.get(), bytes.data(), bytes.size()) !=
            static_cast<la_ssize_t>(bytes.size()))
            return failed();
        return {};
    }
    Result<void> keep() {
        if (archive_write_close(writer.get()) != ARCHIVE_OK) return failed();
        return finishFile(part, path);
    }

private:
    struct Freeing {
        void operator()(struct archive* it) const { archive_write_free(it); }
        void operator()(archive_entry* it) const { archive_entry_free(it); }
    };
    [[nodiscard]] tl::unexpected<Error> failed() const {
        const char* said = archive_error_string(writer.get());
        return fail(ErrorCode::storage,
                    say("The export could not be written: %1.", (said == nullptr ? "" : said)), path.string(),
                    say("Nothing is left of it. Make room, or choose another folder."));
    }

    std::filesystem::path path, part;
    std::unique_ptr<struct archive, Freeing> writer;
};

struct Writing {
    const Archive& archive;
    Zip& zip;
    std::string top; ///< the folder in the zip
    Exported exported;
    std::map<std::string, std::string> photos; ///< paths by hash

    Result<void> copies(const file::Told& told, const std::string& stem, Exhibit& exhibit) {
        const auto copies = archive.signedCopies(told.sha256);
        if (!copies) return tl::unexpected(copies.error());
        const auto pdfs = archive.recordPdfs(told.sha256);
        if (!pdfs) return tl::unexpected(pdfs.error());
        const auto addAll = [&](const std::vector<std::string>& all, const char* ending) -> Result<void> {
            for (std::size_t i = 0; i < all.size(); ++i) {
                const std::string name = stem + (i == 0 ? "" : '-' + std::to_string(i + 1)) + ending;
                if (auto added = zip.add(top + name, all[i], told.at); !added) return added;
                exhibit.files.push_back(name);
            }
            return {};
        };
        if (auto added = addAll(*copies, ".json"); !added) return added;
        exported.pdfs += pdfs->size();
        return addAll(*pdfs, ".pdf");
    }

    /// Each once; every record that names it links to it.
    Result<void> photo(const std::string& hash, Exhibit& exhibit) {
        std::string& path = photos[hash];
        if (path.empty()) {
            const auto bytes = archive.photo(hash);
            if (!bytes && bytes.error().code == ErrorCode::notFound) {
                auto& missing = exported.missingPhotos;
                if (std::find(missing.begin(), missing.end(), hash) == missing.end()) missing.push_back(hash);
                return {};
            }
            if (!bytes) return tl::unexpected(bytes.error());
            path = "photos/" + hash + (bytes->starts_with("\x89PNG") ? ".png" : ".jpg");
            ++exported.photos;
            if (auto added = zip.add(top + path, *bytes, exhibit.told.at); !added) return added;
        }
        exhibit.photos.push_back(path);
        return {};
    }
};

std::string stemOf(const file::Told& told) {
    std::string kind = told.kind();
    std::replace(kind.begin(), kind.end(), ' ', '-');
    return "records/" + toText(told.at).substr(0, 10) + '-' + kind + '-' + told.sha256.substr(0, 16);
}

/// A registration as a folder's name on any system.
std::string folderOf(const std::string& registration) {
    std::string name;
    for (const char c : registration)
        name += std::string_view("/\\:*?\"<>|. \n").find(c) == std::string_view::npos ? c : '_';
    return name + '/';
}

std::vector<Sentence> againstOf(const Archive& archive, const std::string& airframeSha256,
                                const file::AircraftFile& file, Instant at) {
    auto against = file::standsAgainst(file, toText(at).substr(0, 10));
    const auto text = archive.airframeText(airframeSha256);
    const auto day = Date::of(LocalInstant{at, 0});
    if (!text || !day) return against;
    const auto airframe = airframe::read(*text);
    if (!airframe) return against;
    for (Sentence& one : file::standsAgainst(file::comesDue(file, *airframe, *day)))
        against.push_back(std::move(one));
    return against;
}

} // namespace

Result<Exported> exportFile(const Archive& archive, const std::string& registration,
                            const std::filesystem::path& to, Instant at) {
    std::error_code none;
    if (std::filesystem::exists(to, none))
        return fail(ErrorCode::storage, say("There is a file already; an export never overwrites one."),
                    to.string(), say("Choose another name."));
    const auto records = archive.told(registration);
    if (!records) return tl::unexpected(records.error());
    if (records->empty())
        return fail(ErrorCode::notFound, say("The archive has no record of this aircraft."), registration,
                    say("Look at its registration."));
    const file::AircraftFile file = file::fold(*records);
    if (to.has_parent_path()) std::filesystem::create_directories(to.parent_path(), none);
    Zip zip(to);
    if (auto opened = zip.open(); !opened) return tl::unexpected(opened.error());
    Writing writing{archive, zip, folderOf(registration), {}, {}};
    std::vector<Exhibit> exhibits;
    std::set<std::string> airframes;
    std::string latestAirframe;
    for (const file::Told& told : *records) {
        Exhibit& exhibit = exhibits.emplace_back(Exhibit{told, {}, {}});
        if (auto done = writing.copies(told, stemOf(told), exhibit); !done)
            return tl::unexpected(done.error());
        if (told.round() == nullptr) continue;
        for (const std::string& hash : told.round()->photos)
            if (auto done = writing.photo(hash, exhibit); !done) return tl::unexpected(done.error());
        latestAirframe = told.round()->walked->airframe;
        if (!airframes.insert(latestAirframe).second) continue;
        if (const auto text = archive.airframeText(latestAirframe))
            if (auto done = zip.add(writing.top + "airframes/" + latestAirframe + ".json", *text, told.at);
                !done)
                return tl::unexpected(done.error());
    }
    writing.exported.records = records->size();
    const auto against = againstOf(archive, latestAirframe, file, at);
    std::vector<std::string> missing;
    for (const std::string& photo : writing.exported.missingPhotos)
        missing.push_back("Missing: photo " + photo + '.');
    if (!latestAirframe.empty() && !archive.airframeText(latestAirframe))
        missing.push_back("Missing: the airframe's description " + latestAirframe +
                          ", so that what comes due isn't known here.");
    if (auto done = zip.add(writing.top + "index.html",
                            indexPage(registration, file, exhibits, against, missing, at), at);
        !done)
        return tl::unexpected(done.error());
    if (auto done = zip.add(writing.top + "README.txt", readMe(registration, at), at); !done)
        return tl::unexpected(done.error());
    if (auto done = zip.keep(); !done) return tl::unexpected(done.error());
    return writing.exported;
}

} // namespace ambit::archive
