// What a countersignature adds at the end of a signed PDF (ISO 32000-1, 7.5.6, incremental update): made here
// for writing, and made again for checking, which compares byte for byte. Inside core/record only.
#pragma once

#include "record/pdf.hpp"
#include "record/pdf_marks.hpp"

namespace ambit::record::pdf {

/// Before the countersignature's JWS in its signature dictionary. (XX: names of private use, ISO 32000-1,
/// annex E.)
inline constexpr std::string_view entryKey = "/XXAmbitSignature (";

struct Update {
    std::string bytes; ///< follow the file; /Contents is zeros yet
    Gap gap;           ///< of its /Contents, counted from the file's start
};

/// The update that adds `entry`, a countersignature of the record and the record's last, to the PDF `file`
/// that bears all those before it; `by` is its report, `number` its place among them (2: the first
/// countersignature). Refused where the file isn't laid out as Ambit does.
[[nodiscard]] Result<Update> updateFor(std::string_view file, const Json& entry, const SignatureReport& by,
                                       std::size_t number);

/// The JWS in what follows a PDF, as it is there. Empty: none.
[[nodiscard]] std::string_view entryIn(std::string_view update);

/// The file, with the signature over all but the gap put into it.
[[nodiscard]] Result<std::string> signGap(std::string file, Gap gap, const Signer& signer);

} // namespace ambit::record::pdf
