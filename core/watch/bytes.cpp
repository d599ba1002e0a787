#include "watch/bytes.hpp"

#include "base/encoding.hpp"

namespace ambit::watch {

Fetching::Fetching(std::string sha256, std::int64_t itsSize, std::int64_t bound)
    : hash(std::move(sha256)), size(itsSize), most(bound), sum(std::make_unique<Sha256>()) {}

void Fetching::resume(std::string_view bytes) {
    sum->add(bytes);
    had += static_cast<std::int64_t>(bytes.size());
}

Result<Part> Fetching::take(Piece&& piece) {
    if (piece.sha256 != hash)
        return fail(ErrorCode::invalid, say("This piece is of another file than was asked for."),
                    piece.sha256);
    if (piece.from != had)
        return fail(ErrorCode::invalid,
                    say("This piece begins at byte %1; byte %2 was asked for.",
                        figure(std::to_string(piece.from)), figure(std::to_string(had))),
                    hash);
    if (piece.size > most || (size != 0 && piece.size != size))
        return fail(ErrorCode::invalid,
                    size != 0 ? say("This file is said to have %1 bytes; %2 were expected.",
                                    figure(std::to_string(piece.size)), figure(std::to_string(size)))
                              : say("This file is said to have %1 bytes; %2 at most were expected.",
                                    figure(std::to_string(piece.size)), figure(std::to_string(most))),
                    hash);
    const auto length = static_cast<std::int64_t>(piece.bytes.size());
    if (length == 0 || length > piece.size - had)
        return fail(ErrorCode::invalid, say("This piece has no bytes, or more than its file."), hash);
    size = piece.size;
    had += length;
    sum->add(piece.bytes);
    Part part{hash, piece.from, size, std::move(piece.bytes), had == size};
    if (part.isWhole && toHex(sum->end()) != hash)
        return fail(ErrorCode::signature, say("The bytes that came are not the file that was asked for."),
                    hash);
    return part;
}

Result<void> Exchange::fetch(Fetching fetching) {
    if (fetched)
        return fail(ErrorCode::refused, say("Another file is on its way."), fetched->sha256(),
                    say("Ask again when it is here."));
    fetched = std::move(fetching);
    isAsked = false;
    return {};
}

std::optional<Fetching> Exchange::letGo() {
    isAsked = false;
    return std::exchange(fetched, std::nullopt);
}

Result<void> Exchange::take(const Want& want, bool isNamed) {
    if (wanted)
        return fail(ErrorCode::invalid, say("A file was asked for before the last question was answered."),
                    want.sha256);
    wanted = want;
    mayServe = isNamed;
    return {};
}

Result<Part> Exchange::take(Piece&& piece) {
    if (!fetched || !isAsked)
        return fail(ErrorCode::invalid, say("A piece of a file came that nobody had asked for."),
                    piece.sha256);
    isAsked = false;
    auto part = fetched->take(std::move(piece));
    if (!part || part->isWhole) fetched.reset();
    return part;
}

Result<void> Exchange::take(const Gone& gone) {
    if (!fetched || !isAsked || fetched->sha256() != gone.sha256)
        return fail(ErrorCode::invalid, say("An answer came that nobody had asked for."), gone.sha256);
    (void)letGo();
    return {};
}

std::optional<Frame> Exchange::next() {
    if (wanted) {
        const Want want = *std::exchange(wanted, std::nullopt);
        auto chunk = mayServe ? readBytes(want.sha256, want.from, largestPiece) : std::nullopt;
        // Whoever asks beyond the end gets no bytes either: it can't have the file it thinks it has.
        if (!chunk || chunk->bytes.empty() || chunk->bytes.size() > largestPiece) return Gone{want.sha256};
        return Piece{want.sha256, want.from, chunk->size, std::move(chunk->bytes)};
    }
    if (fetched && !isAsked) {
        isAsked = true;
        return Want{fetched->sha256(), fetched->from()};
    }
    return std::nullopt;
}

} // namespace ambit::watch
