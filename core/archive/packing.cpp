#include "archive/packing.hpp"

#define ZSTD_STATIC_LINKING_ONLY // for one hint: nothing else of it is used
#include <zstd.h>

namespace ambit::archive {

namespace {

constexpr int level = 3;
constexpr std::size_t largest = std::size_t{64} << 20; ///< unpacked; a record is at most 16 MiB
constexpr std::size_t mostDictionaries = 256;          ///< in memory

tl::unexpected<Error> damaged() {
    return fail(ErrorCode::storage, say("The archive is damaged: a record can't be unpacked."), "",
                say("Keep the file, copy it away, and go on with a backup."));
}

template<auto freeIt> struct Freeing {
    template<class T> void operator()(T* it) const { freeIt(it); }
};

} // namespace

struct Packing::Zstd {
    std::unique_ptr<ZSTD_CCtx, Freeing<ZSTD_freeCCtx>> in{ZSTD_createCCtx()};
    std::unique_ptr<ZSTD_DCtx, Freeing<ZSTD_freeDCtx>> out{ZSTD_createDCtx()};
};

struct Packing::Dictionary {
    std::string bytes;
    std::unique_ptr<ZSTD_CDict, Freeing<ZSTD_freeCDict>> in; ///< made when first used
    std::unique_ptr<ZSTD_DDict, Freeing<ZSTD_freeDDict>> out;
};

Packing::Packing() : zstd(std::make_unique<Zstd>()) {}
Packing::~Packing() = default;

bool Packing::known(std::int64_t id) const {
    return dictionaries.contains(id);
}

void Packing::learn(std::int64_t id, std::string bytes) {
    if (dictionaries.size() >= mostDictionaries) dictionaries.clear();
    auto one = std::make_unique<Dictionary>();
    one->bytes = std::move(bytes);
    one->out.reset(ZSTD_createDDict(one->bytes.data(), one->bytes.size()));
    dictionaries.emplace(id, std::move(one));
}

void Packing::forget() {
    dictionaries.clear();
}

Result<std::string> Packing::packed(std::string_view bytes, std::int64_t dictionary) {
    std::string out(ZSTD_compressBound(bytes.size()), '\0');
    std::size_t size = 0;
    if (dictionary == 0) {
        size = ZSTD_compressCCtx(zstd->in.get(), out.data(), out.size(), bytes.data(), bytes.size(), level);
    } else {
        Dictionary& with = *dictionaries.at(dictionary);
        if (!with.in) with.in.reset(ZSTD_createCDict(with.bytes.data(), with.bytes.size(), level));
        // Looks into the dictionary's tables instead of copying them each time: the same size in less time.
        // Where a zstd doesn't know the hint any more, it copies.
        (void)ZSTD_CCtx_setParameter(zstd->in.get(), ZSTD_c_forceAttachDict, ZSTD_dictForceAttach);
        size = ZSTD_CCtx_refCDict(zstd->in.get(), with.in.get());
        if (ZSTD_isError(size) == 0)
            size = ZSTD_compress2(zstd->in.get(), out.data(), out.size(), bytes.data(), bytes.size());
    }
    if (ZSTD_isError(size) != 0)
        return fail(ErrorCode::storage, say("A record could not be packed: %1.", ZSTD_getErrorName(size)));
    out.resize(size);
    return out;
}

Result<void> Packing::unpacked(std::string_view bytes, std::int64_t dictionary, std::string& out) {
    const unsigned long long size = ZSTD_getFrameContentSize(bytes.data(), bytes.size());
    if (size > largest) return damaged(); // its two errors are larger still
    out.resize(size);
    const std::size_t got =
        dictionary == 0
            ? ZSTD_decompressDCtx(zstd->out.get(), out.data(), out.size(), bytes.data(), bytes.size())
            : ZSTD_decompress_usingDDict(zstd->out.get(), out.data(), out.size(), bytes.data(), bytes.size(),
                                         dictionaries.at(dictionary)->out.get());
    if (got != out.size()) return damaged();
    return {};
}

} // namespace ambit::archive
