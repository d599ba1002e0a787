#include "script/asker.hpp"

#include "base/files.hpp"
#include "base/hash.hpp"
#include "record/asked.hpp"

namespace ambit::script {

namespace {

constexpr std::size_t idDigits = 32;
constexpr std::size_t largestKeyFile = 65536;
constexpr std::size_t largestPassphraseFile = 4096;

Result<record::Signer> opened(const std::filesystem::path& key, const std::filesystem::path& passphrase) {
    const auto text = readFile(key, largestKeyFile);
    if (!text) return tl::unexpected(text.error());
    const auto word = readFile(passphrase, largestPassphraseFile);
    if (!word) return tl::unexpected(word.error());
    return record::unlock(*text, word->substr(0, word->find_first_of("\r\n")));
}

/// Nobody keeps it: what it signs holds, and nobody can say whose it is.
Result<record::Signer> madeFor(const std::string& name, Instant at) {
    const std::string passphrase = "for this walk alone";
    const auto file = record::newKeyFile(name, passphrase, at);
    if (!file) return tl::unexpected(file.error());
    return record::unlock(*file, passphrase);
}

} // namespace

Result<const record::Signer*> Asker::keyOf(const Ask& ask, Instant at) {
    const std::string name = ask.key.empty() ? "/" + ask.who.name : ask.key;
    if (const auto known = keys.find(name); known != keys.end()) return &known->second;
    auto key =
        ask.key.empty() ? madeFor(ask.who.name, at) : opened(beside / ask.key, beside / ask.passphrase);
    if (!key) return tl::unexpected(key.error());
    return &keys.emplace(name, std::move(*key)).first->second;
}

Result<round::Asked> Asker::say(const Ask& ask, const round::State& state, Instant at) {
    const auto number = static_cast<std::int64_t>(state.asks.size()) + 1;
    const std::string id = sha256Hex(state.id + " " + std::to_string(number)).substr(0, idDigits);
    const round::Statement statement{state.id, id, ask.kind, ask.point, ask.words, at, ask.who};
    const auto key = keyOf(ask, at);
    if (!key) return tl::unexpected(key.error());
    auto jws = record::signStatement(statement, **key);
    if (!jws) return tl::unexpected(jws.error());
    return round::Asked{number, statement, std::move(*jws)};
}

} // namespace ambit::script
