// Files by pieces, the same both ways: what one side fetches and the other serves. Nothing is kept here but
// numbers and a hash that goes on.
#pragma once

#include "base/hash.hpp"
#include "watch/frames.hpp"

#include <functional>
#include <memory>
#include <optional>

namespace ambit::watch {

/// What came of a file; the caller puts it beside what came before. Only when the last one has come is any of
/// it known to be what was asked for.
struct Part {
    std::string sha256;
    std::int64_t from = 0;
    std::int64_t size = 0; ///< of the whole
    std::string bytes;
    bool isWhole = false; ///< the last one: the hash is right
};

/// One file on its way in. It outlives a connection: fetched on with another one from where it stands.
class Fetching {
public:
    /// A file of a known size.
    static Fetching ofSize(std::string sha256, std::int64_t size) { return {std::move(sha256), size, size}; }
    /// One of which only a bound is known: an airframe's description.
    static Fetching upTo(std::string sha256, std::int64_t most) { return {std::move(sha256), 0, most}; }

    /// What is here already of it: the first so many bytes. Only before the first piece.
    void resume(std::string_view bytes);

    [[nodiscard]] const std::string& sha256() const { return hash; }
    [[nodiscard]] std::int64_t from() const { return had; }
    /// Refused (invalid): another file's, not the next bytes, another size than was said; (signature): all
    /// there, and not what was asked for.
    [[nodiscard]] Result<Part> take(Piece&& piece);

private:
    Fetching(std::string sha256, std::int64_t itsSize, std::int64_t bound);

    std::string hash;
    std::int64_t size; ///< 0: not known yet
    std::int64_t most;
    std::int64_t had = 0;
    std::unique_ptr<Sha256> sum;
};

/// Bytes of a file from an offset on, at most so many; nothing: no such bytes here, or no such offset.
struct Chunk {
    std::int64_t size = 0; ///< of the whole file
    std::string bytes;
};
using ReadBytes =
    std::function<std::optional<Chunk>(const std::string& sha256, std::int64_t from, std::size_t most)>;

/// Both halves of one connection's side: at most one file each way.
class Exchange {
public:
    explicit Exchange(ReadBytes read) : readBytes(std::move(read)) {}

    /// Fetches this next. Refused while another one is on its way.
    [[nodiscard]] Result<void> fetch(Fetching fetching);
    [[nodiscard]] bool isFetching() const { return fetched.has_value(); }
    /// What is on its way, to be fetched on with another connection; a question in flight is forgotten.
    [[nodiscard]] std::optional<Fetching> letGo();

    /// The other asks. `isNamed`: this side has named that file to it. Refused: asked again before the
    /// answer.
    [[nodiscard]] Result<void> take(const Want& want, bool isNamed);
    [[nodiscard]] Result<Part> take(Piece&& piece);
    [[nodiscard]] Result<void> take(const Gone& gone);

    /// The next frame of all this, if there is one.
    [[nodiscard]] std::optional<Frame> next();

private:
    ReadBytes readBytes;
    std::optional<Fetching> fetched;
    bool isAsked = false; ///< of `fetched`: the question is out
    std::optional<Want> wanted;
    bool mayServe = false; ///< of `wanted`
};

} // namespace ambit::watch
