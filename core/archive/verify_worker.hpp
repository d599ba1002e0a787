// One of the hands that look at an archive's records again. Inside core/archive only.
#pragma once

#include "archive/connection.hpp"
#include "archive/verify.hpp"
#include "record/recheck.hpp"

#include <array>
#include <unordered_map>

namespace ambit::archive {

using Bytes = std::array<std::uint8_t, 32>; // unsigned: zeros come first

[[nodiscard]] std::string hexOf(const Bytes& digest);
[[nodiscard]] Bytes bytesOf(std::string_view digest);
[[nodiscard]] Error changed(Sentence what);

struct Named {
    Bytes what;
    std::int64_t
        by; ///< key of the record that names it: its hash would make a third more of all that is held
    friend auto operator<=>(const Named&, const Named&) = default;
};

/// What a worker found.
struct Found {
    std::vector<Bytes> here;
    std::vector<Named> named;
    std::vector<Bytes> gone; ///< let go, as signed stubs say
    std::vector<Broken> broken;
};

/// Looks at stretches of records with a connection and keys of its own.
class Worker {
public:
    Worker(std::unique_ptr<Connection> reading, const Verifying& which)
        : connection(std::move(reading)), what(which) {}

    /// Those with keys from `from` to `to`; adds to `found`. Error: the archive can't be read.
    [[nodiscard]] Result<void> look(std::int64_t from, std::int64_t to);

    /// What it reads with.
    [[nodiscard]] Connection& its() const { return *connection; }

    Found found;

private:
    struct Row;

    Result<void> readSignatures(std::int64_t from, std::int64_t to);
    Result<const std::string*> headerText(std::int64_t id); ///< until the next is asked for
    Result<void> lookAt(const Row& row);
    Result<void> readRemoval(const Row& row);
    Result<record::Top> lookAtAll(const Row& row);
    Result<void> judge(const Row& row, const record::SignatureText& first);
    static std::vector<std::string> beside(const file::Told& kept, const Row& row);

    std::unique_ptr<Connection> connection;
    const Verifying& what;
    record::Recheck recheck;
    std::string content;
    std::vector<std::int64_t> signedRecords;       ///< of the stretch in hand, in order
    std::vector<record::SignatureText> signatures; ///< beside them, and room for more
    std::size_t next = 0;
    std::unordered_map<std::int64_t, std::string> headers;
};

} // namespace ambit::archive
