// Contents made small: zstd (RFC 8878), with an earlier content of the same kind as its dictionary, since
// rounds of one walk are mostly alike. Inside core/archive only.
#pragma once

#include "base/result.hpp"

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>

namespace ambit::archive {

class Packing {
public:
    Packing();
    ~Packing();

    /// Contents that are packed with a dictionary need it again to be unpacked; 0 is none. The bytes are
    /// asked for once, by `fetch(id)`, and kept.
    template<class Fetch>
    [[nodiscard]] Result<std::string> pack(std::string_view bytes, std::int64_t dictionary, Fetch fetch) {
        if (auto ready = prepare(dictionary, fetch); !ready) return tl::unexpected(ready.error());
        return packed(bytes, dictionary);
    }
    /// Into `out`, which keeps its room. Error storage: the bytes are damaged.
    template<class Fetch>
    [[nodiscard]] Result<void> unpack(std::string_view bytes, std::int64_t dictionary, std::string& out,
                                      Fetch fetch) {
        if (auto ready = prepare(dictionary, fetch); !ready) return tl::unexpected(ready.error());
        return unpacked(bytes, dictionary, out);
    }
    /// What was undone in the database is not known any more.
    void forget();

private:
    struct Zstd;
    struct Dictionary;

    template<class Fetch> Result<void> prepare(std::int64_t id, Fetch fetch) {
        if (id == 0 || known(id)) return {};
        auto bytes = fetch(id);
        if (!bytes) return tl::unexpected(bytes.error());
        learn(id, std::move(*bytes));
        return {};
    }
    [[nodiscard]] bool known(std::int64_t id) const;
    void learn(std::int64_t id, std::string bytes);
    Result<std::string> packed(std::string_view bytes, std::int64_t dictionary);
    Result<void> unpacked(std::string_view bytes, std::int64_t dictionary, std::string& out);

    std::unique_ptr<Zstd> zstd;
    std::unordered_map<std::int64_t, std::unique_ptr<Dictionary>> dictionaries;
};

} // namespace ambit::archive
