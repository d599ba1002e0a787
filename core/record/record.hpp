// A signed record: content and its signatures, as one canonical JSON text.
#pragma once

#include "record/content.hpp"
#include "record/key.hpp"

namespace ambit::record {

/// The content's identity: SHA-256 of its canonical form, hex.
[[nodiscard]] std::string identityOf(const Json& content);

/// {"content": …, "signatures": [{"protected": …, "signature": …}]} in canonical form: the exact bytes of
/// record.json.
[[nodiscard]] Result<std::string> signRecord(const Json& content, const Signer& signer);

struct SignatureReport {
    Certificate certificate;
    bool lowS = false; ///< declared and kept
};

struct RecordReport {
    std::string sha256; ///< identity
    Json content;
    std::vector<SignatureReport> signatures;
};

/// Everything must hold: the bytes are exactly the canonical form; every signature verifies over the
/// canonical content with its own certificate; the first certificate's name is the content's signer; the
/// content is a known kind and version. `where` names the signature or pointer that failed.
[[nodiscard]] Result<RecordReport> verifyRecord(std::string_view bytes);

} // namespace ambit::record
