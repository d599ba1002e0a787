#include "file/keys.hpp"

#include <algorithm>
#include <tuple>

namespace ambit::file {

namespace {

bool isRevoked(const KnownKey& one, Instant at) {
    return one.revoked && at >= *one.revoked;
}
bool isGoodFor(const KnownKey& one, const std::string& role, Instant at) {
    const auto its = one.roles.find(role);
    return its != one.roles.end() && at >= its->second;
}

} // namespace

void Keys::sign(const std::string& key, const record::Person& who) {
    KnownKey& one = known[key];
    one.name = who.name;
    one.signedAs.insert(who.role);
    ++one.records;
}

bool Keys::trust(const record::Trust& said, const std::string& by, Instant at) {
    if (owner.empty()) owner = by;
    if (!isOwner(by, at)) return false;
    KnownKey& one = known[said.key];
    if (one.records == 0) one.name = said.name;
    for (const std::string& role : said.roles) {
        const auto [since, isNew] = one.roles.try_emplace(role, said.from);
        if (!isNew) since->second = std::min(since->second, said.from);
    }
    return true;
}

bool Keys::revoke(const record::Revocation& said, const std::string& by, Instant at) {
    if (by != said.key && !isOwner(by, at)) return false;
    std::optional<Instant>& since = known[said.key].revoked;
    since = since ? std::min(*since, said.from) : said.from;
    return true;
}

Standing Keys::of(const std::string& key, const std::string& role, Instant at) const {
    const auto found = known.find(key);
    const bool isKnown = found != known.end();
    if (isKnown && isRevoked(found->second, at)) return Standing::revoked;
    if (isOwner(key, at) && role == "owner") return Standing::trusted;
    if (!isKnown || found->second.roles.empty()) return key == owner ? Standing::other : Standing::unsaid;
    return isGoodFor(found->second, role, at) ? Standing::trusted : Standing::other;
}

bool Keys::isOwner(const std::string& key, Instant at) const {
    const auto found = known.find(key);
    if (found != known.end() && isRevoked(found->second, at)) return false;
    return key == owner || (found != known.end() && isGoodFor(found->second, "owner", at));
}

std::vector<KnownKey> Keys::all() const {
    std::vector<KnownKey> list;
    list.reserve(known.size());
    for (const auto& [key, one] : known) {
        list.push_back(one);
        list.back().key = key;
        list.back().owner = key == owner;
    }
    std::sort(list.begin(), list.end(), [](const KnownKey& a, const KnownKey& b) {
        return std::tie(a.name, a.key) < std::tie(b.name, b.key);
    });
    return list;
}

const char* toText(Standing standing) {
    switch (standing) {
    case Standing::unsaid:
        return "unsaid";
    case Standing::trusted:
        return "trusted";
    case Standing::other:
        return "not for this";
    case Standing::revoked:
        return "revoked";
    }
    return "";
}

} // namespace ambit::file
