// Draws a record's pages with Qt Gui. Needs a QGuiApplication (the offscreen platform will do).
#pragma once

#include "airframe/airframe.hpp"
#include "record/pdf.hpp"

#include <map>
#include <string>

namespace ambit::paper {

using record::Drawn;

/// A round: conclusion first; findings with photos; the figure with states; every point with outcome and
/// time; timeline; signers; cautions. Any other kind: what it says, line by line, signer, cautions. “Page x
/// of y”. `airframe`: the description it goes by; nullptr if unknown, then only kinds other than rounds.
/// `photos`: JPEG or PNG bytes by hash; a PNG is given back in `jpeg` re-encoded. Deterministic: same input,
/// same bytes. A record::DrawPages.
[[nodiscard]] Result<Drawn> drawRecord(const Json& content, const airframe::Airframe* airframe,
                                       const std::map<std::string, std::string>& photos,
                                       const record::Certificate& signer);

} // namespace ambit::paper
