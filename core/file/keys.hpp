// Whose key is good for what in an aircraft's file, as its owner has said.
#pragma once

#include "record/entry.hpp"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ambit::file {

/// What the owner's word makes of a record's signature.
enum class Standing {
    unsaid,  ///< the owner has said nothing of this key
    trusted, ///< the key is good for the role it was used in
    other,   ///< it is trusted, but not for this role, or not yet
    revoked  ///< signed after the key was revoked
};
[[nodiscard]] const char* toText(Standing standing);

/// A key that signed records of the file, or that the owner spoke of.
struct KnownKey {
    std::string key;  ///< fingerprint of its certificate
    std::string name; ///< as its records, else the owner, say
    bool owner = false;
    std::map<std::string, Instant> roles; ///< what it is good for, and since when
    std::optional<Instant> revoked;       ///< since when it is good for nothing
    std::set<std::string> signedAs;       ///< roles
    int records = 0;                      ///< that it signed first
};

/// Up to where a fold is: told in the file's order.
class Keys {
public:
    void sign(const std::string& key, const record::Person& who);
    /// False: who says so isn't the owner. The first word makes the owner.
    [[nodiscard]] bool trust(const record::Trust& said, const std::string& by, Instant at);
    /// Anybody may revoke their own; false: it is another's, and who says so isn't the owner.
    [[nodiscard]] bool revoke(const record::Revocation& said, const std::string& by, Instant at);

    [[nodiscard]] Standing of(const std::string& key, const std::string& role, Instant at) const;
    /// By name.
    [[nodiscard]] std::vector<KnownKey> all() const;

private:
    [[nodiscard]] bool isOwner(const std::string& key, Instant at) const;

    std::string owner;
    std::map<std::string, KnownKey> known;
};

} // namespace ambit::file
