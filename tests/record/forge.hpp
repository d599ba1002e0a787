// What others could make of a signed PDF, with a key of their own or without. For the tests of core/record.
#pragma once

#include "fixture.hpp"
#include "record/pdf_marks.hpp"
#include "record/qpdf.hpp"

#include <functional>

namespace ambit::test {

[[nodiscard]] std::string recordOf(const Json& content, const record::Signer& by = signer());
[[nodiscard]] const std::string& plainPdf(); ///< signed, of one page
[[nodiscard]] std::string photoPdf();        ///< the same with a photo

/// Where the signature stands.
[[nodiscard]] record::pdf::Gap gapOf(const std::string& pdf);

/// Signs what stands in the file now, in place of the signature that stands in it.
[[nodiscard]] std::string signedAgain(std::string pdf, const record::Signer& by);

/// plainPdf's objects after a change to them, signed anew.
[[nodiscard]] std::string rebuilt(const std::function<void(QPDF&)>& change,
                                  qpdf_object_stream_e streams = qpdf_o_disable,
                                  const record::Signer& by = signer());

/// An unsigned update at the end that gives page 1 another content.
[[nodiscard]] std::string shadowEdit(const std::string& sound);

/// Is it refused, with these words? Else warns what happened.
[[nodiscard]] bool refusedFor(std::string_view words, std::string_view pdf);

} // namespace ambit::test
