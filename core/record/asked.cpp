#include "record/asked.hpp"

#include "base/canonical.hpp"
#include "record/jws.hpp"
#include "round/rules.hpp"

#include <nlohmann/json.hpp>

namespace ambit::record {

namespace {

tl::unexpected<Error> refuse(Sentence what, std::string where, Sentence remedy = {}) {
    return fail(ErrorCode::signature, std::move(what), std::move(where), std::move(remedy));
}

std::string payloadOf(const round::Statement& statement) {
    return canonicalJson(toJson(statement));
}

template<class T> Result<T> at(const char* where, Result<T> read) {
    if (!read) read.error().where = where + read.error().where;
    return read;
}

} // namespace

Result<round::Jws> signStatement(const round::Statement& statement, const Signer& signer) {
    const Certificate& certificate = signer.certificate();
    if (statement.who.name != certificate.name)
        return refuse(
            say("This is said by %1, the key's holder is %2.", statement.who.name, certificate.name),
            certificate.sha256, say("Sign with the key of the person who says it."));
    const auto entry = signJws(payloadOf(statement), signer, Json::object());
    if (!entry) return tl::unexpected(entry.error());
    return round::Jws{(*entry)["protected"].get<std::string>(), (*entry)["signature"].get<std::string>()};
}

Result<Said> said(const round::Statement& statement, const Signer& signer) {
    const auto jws = signStatement(statement, signer);
    if (!jws) return tl::unexpected(jws.error());
    return Said{payloadOf(statement),
                canonicalJson({{"protected", jws->header}, {"signature", jws->signature}})};
}

Result<Certificate> checkAsked(const round::Asked& asked) {
    JsonTape tape;
    const auto entry = tape.write({{"protected", asked.jws.header}, {"signature", asked.jws.signature}});
    if (!entry) return tl::unexpected(entry.error());
    auto report = verifyJws(*entry, payloadOf(asked.statement), {}, "/jws");
    if (!report) return tl::unexpected(report.error());
    if (!report->lowS)
        return refuse(say("The signature of what was asked must declare low S."), "/jws/protected");
    const std::string& name = asked.statement.who.name;
    if (name == report->certificate.name) return std::move(report->certificate);
    return refuse(
        say("What was asked is said to be by %1, but the key is %2's.", name, report->certificate.name),
        "/statement/who/name");
}

Result<round::Asked> askedBy(const Certificate& peer, JsonView statement, JsonView jws,
                             const round::State& state, const airframe::Airframe& airframe) {
    auto said = at("/statement", round::statementFrom(statement));
    if (!said) return tl::unexpected(said.error());
    auto by = at("/jws", round::jwsFrom(jws));
    if (!by) return tl::unexpected(by.error());
    round::Asked asked{static_cast<std::int64_t>(state.asks.size()) + 1, std::move(*said), std::move(*by)};
    const auto certificate = checkAsked(asked);
    if (!certificate) return tl::unexpected(certificate.error());
    if (certificate->der != peer.der)
        return refuse(
            say("This was signed by another key than that of %1, from whose device it came.", peer.name),
            "/jws/protected", say("Each says it on their own device."));
    if (auto may = round::allowed(state, airframe, asked); !may) return tl::unexpected(may.error());
    return asked;
}

} // namespace ambit::record
