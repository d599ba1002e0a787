// Writes an aircraft's records one after another: each names those that its device knew, and is signed.
#pragma once

#include "fleet/fleet.hpp"
#include "fleet/people.hpp"
#include "record/entry.hpp"

#include <array>

namespace ambit::fleet {

/// Two devices carry the aircraft's file. Most of the time each knows what the other wrote.
class Pen {
public:
    Pen(const Machine& its, const Take& to) : machine(&its), take(&to) {}

    struct Signing {
        const Somebody* who = nullptr;
        const char* role = "";
    };
    /// Somebody who countersigns, and when.
    struct Second {
        const Somebody* who = nullptr;
        const char* role = "";
        Instant at;
    };

    /// Give the record's identity.
    [[nodiscard]] Result<std::string> round(const airframe::Airframe& airframe,
                                            const std::vector<round::Event>& events, const Somebody& by,
                                            int device, const std::optional<Second>& second);
    [[nodiscard]] Result<std::string> entry(LocalInstant at, const Signing& by, const record::Entry& entry);
    /// The same, but nobody gets the record: it will be let go. What is left of it is kept for `gone`.
    [[nodiscard]] Result<void> entryToLetGo(LocalInstant at, const Signing& by, const record::Entry& entry);

    /// From now on neither device knows what the other writes.
    void part();
    void join(); ///< they do again
    [[nodiscard]] bool isApart() const { return apart; }

    [[nodiscard]] std::size_t written() const { return count; }
    [[nodiscard]] std::size_t forks() const { return joined; } ///< times that both wrote while apart
    std::vector<record::Removal::Gone> gone;

private:
    [[nodiscard]] Result<std::string> give(const Json& content, const Somebody& by, int device,
                                           const std::optional<Second>& second);
    [[nodiscard]] Result<Json> contentOf(LocalInstant at, const Signing& by,
                                         const record::Entry& entry) const;
    void now(int device, std::string identity);

    const Machine* machine;
    const Take* take;
    std::array<std::vector<std::string>, 2> heads; ///< by device
    std::array<bool, 2> wrote{};                   ///< since they parted
    bool apart = false;
    std::size_t count = 0;
    std::size_t joined = 0;
};

} // namespace ambit::fleet
