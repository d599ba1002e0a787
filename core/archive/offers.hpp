// What files, folders and exports bring: one thing after another, for importAll.
#pragma once

#include "archive/import.hpp"

#include <deque>
#include <filesystem>
#include <memory>

namespace ambit::archive {

/// Of a folder or an export (zip, or tar) the files ending in .json, .pdf, .jpg, .jpeg and .png, whatever
/// their folders; of files given by name each. Photos come last, whatever brings them.
class Offers {
public:
    explicit Offers(const std::vector<std::filesystem::path>& paths);
    Offers(const Offers&) = delete;
    Offers& operator=(const Offers&) = delete;
    ~Offers();

    /// As importAll asks for it. An error names the file that could not be read.
    std::optional<Result<Offered>> next();

private:
    class Packed; ///< a zip or tar being read
    struct Source {
        std::filesystem::path path;
        bool packed = false;
        bool photos = false; ///< of what is packed: only those, or only the others
    };

    std::deque<Source> sources;
    std::deque<Error> unread; ///< folders that could not be read to their ends
    std::unique_ptr<Packed> open;
};

} // namespace ambit::archive
