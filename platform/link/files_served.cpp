#include "link/files_served.hpp"

#include <algorithm>

namespace ambit::link {

std::optional<watch::Chunk> FilesServed::read(const std::string& sha256, std::int64_t from,
                                              std::size_t most) {
    const std::string* bytes = find(sha256);
    if (bytes == nullptr || from < 0 || static_cast<std::size_t>(from) >= bytes->size()) return std::nullopt;
    return watch::Chunk{static_cast<std::int64_t>(bytes->size()),
                        bytes->substr(static_cast<std::size_t>(from), most)};
}

const std::string* FilesServed::find(const std::string& sha256) {
    const auto known =
        std::find_if(kept.begin(), kept.end(), [&](const Kept& one) { return one.sha256 == sha256; });
    if (known != kept.end()) {
        kept.splice(kept.begin(), kept, known);
        return &kept.front().bytes;
    }
    auto bytes = load(sha256);
    if (!bytes || bytes->size() > mostBytes) return nullptr;
    kept.push_front({sha256, std::move(*bytes)});
    std::size_t sum = 0;
    for (auto one = kept.begin(); one != kept.end();) {
        sum += one->bytes.size();
        one = sum > mostBytes ? kept.erase(one) : std::next(one);
    }
    return &kept.front().bytes;
}

} // namespace ambit::link
