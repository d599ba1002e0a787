// Files that are asked for in pieces, kept for the next piece. Bounded, whatever is asked for.
#pragma once

#include "watch/bytes.hpp"

#include <functional>
#include <list>
#include <string>

namespace ambit::link {

class FilesServed {
public:
    static constexpr std::size_t mostBytes = std::size_t{160} << 20; ///< more than the largest file

    using Load = std::function<Result<std::string>(const std::string& sha256)>;
    explicit FilesServed(Load its) : load(std::move(its)) {}

    [[nodiscard]] std::optional<watch::Chunk> read(const std::string& sha256, std::int64_t from,
                                                   std::size_t most);

private:
    struct Kept {
        std::string sha256, bytes;
    };
    const std::string* find(const std::string& sha256);

    Load load;
    std::list<Kept> kept; ///< the last used first
};

} // namespace ambit::link
