// Letting records go, so that the chain holds without them.
#pragma once

#include "archive/archive.hpp"
#include "record/pdf.hpp"

namespace ambit::archive {

struct Removing {
    std::string registration;
    std::vector<std::string> records; ///< identities
    std::string basis;                ///< what allows it, in words: goes into the stub
    LocalInstant at;
    record::Person who;
};

/// Signs a removal record (the stub that names what went, and what that named) and takes the records out, in
/// one transaction. `draw`: the stub's page; empty: none. Gives the stub's identity. Refused, with nothing
/// changed: a record that isn't this aircraft's, the latest ones, or a removal itself.
[[nodiscard]] Result<std::string> removeRecords(Archive& archive, const Removing& removing,
                                                const record::Signer& signer,
                                                const record::DrawPages& draw = {});

} // namespace ambit::archive
