#include "watch/door.hpp"

#include "base/hash.hpp"
#include "watch/frames.hpp"
#include "watch/letters.hpp"

#include <algorithm>
#include <openssl/crypto.h>

namespace ambit::watch {

namespace {

bool isSha256(std::string_view text) {
    return text.size() == 64 && text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

} // namespace

Result<std::string> Door::invite(std::span<const std::uint8_t> random, Tick now) {
    if (random.size() < wordBytes)
        return fail(ErrorCode::invalid,
                    say("A one-time word needs %1 random bytes.", figure(std::to_string(wordBytes))));
    if (peers.size() >= mostPeers)
        return fail(ErrorCode::refused,
                    say("%1 devices may watch already, which is as many as there is room for.",
                        std::to_string(mostPeers)),
                    {}, say("Take one back first."));
    LetterWriter letters;
    letters.add(random.first(wordBytes));
    word = letters.end();
    since = now;
    ended = Ending::none;
    wrong = 0;
    return word;
}

void Door::closeInvitation() {
    if (!word.empty()) kill(Ending::closed);
}

void Door::kill(Ending how) {
    OPENSSL_cleanse(word.data(), word.size());
    word.clear();
    ended = how;
}

/// A clock that went back doesn't make a word live longer.
void Door::expire(Tick now) {
    if (!word.empty() && (now < since || now.ms - since.ms >= wordLivesMs)) kill(Ending::old);
}

std::int64_t Door::openForMs(Tick now) const {
    if (word.empty() || now < since) return 0;
    return std::max<std::int64_t>(0, wordLivesMs - (now.ms - since.ms));
}

bool Door::knows(std::string_view certificateSha256) const {
    return std::any_of(peers.begin(), peers.end(),
                       [&](const Peer& peer) { return peer.certificateSha256 == certificateSha256; });
}

bool Door::takeBack(std::string_view certificateSha256) {
    return std::erase_if(peers,
                         [&](const Peer& peer) { return peer.certificateSha256 == certificateSha256; }) > 0;
}

/// Takes as long whatever was given: the hashes are compared, all of their bytes.
bool Door::isTheWord(std::string_view given) const {
    const Digest ours = sha256(word);
    const Digest theirs = sha256(given);
    return !word.empty() && CRYPTO_memcmp(ours.data(), theirs.data(), ours.size()) == 0;
}

Refused Door::refused(Sentence what, Tick notBefore) const {
    return {{ErrorCode::refused, std::move(what), {}, say("Ask the walker for a new invitation.")},
            notBefore};
}

Answer Door::knock(const Knock& knock, Tick now) {
    expire(now);
    if (!isSha256(knock.who.certificateSha256))
        return refused(say("This device has shown no certificate."), now);
    if (knows(knock.who.certificateSha256)) {
        // It needs no word; one that it shows all the same has been used.
        if (isTheWord(knock.word)) kill(Ending::used);
        return Admitted{false};
    }
    if (!word.empty())
        return knock.word.empty()
                   ? refused(say("This device isn't known here, and shows no invitation."), now)
                   : takeWord(knock, now);
    switch (ended) {
    case Ending::used:
        return refused(say("The last invitation has been used; it serves once."), now);
    case Ending::old:
        return refused(say("The last invitation is older than five minutes."), now);
    case Ending::guessed:
        return refused(say("The last invitation is void: too many wrong words were tried."), now);
    case Ending::closed:
    case Ending::none:
        break;
    }
    return refused(say("This device isn't known here, and nobody is invited now."), now);
}

Answer Door::takeWord(const Knock& knock, Tick now) {
    if (!isTheWord(knock.word)) return wrongWord(now);
    kill(Ending::used);
    peers.push_back(knock.who);
    return Admitted{true};
}

/// Each answer waits twice as long as the last, and begins to wait when that one has gone out.
Refused Door::wrongWord(Tick now) {
    const std::int64_t wait = std::min(longestWaitMs, firstWaitMs << wrong);
    ++wrong;
    free = Tick{std::max(free.ms, now.ms) + wait};
    if (wrong >= mostWrong) kill(Ending::guessed);
    return refused(say("This isn't the invitation's word (wrong word %1 of %2).", std::to_string(wrong),
                       std::to_string(mostWrong)),
                   free);
}

} // namespace ambit::watch
