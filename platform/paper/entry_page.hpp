// The page of a record of another kind than a round: a deferral, work done, a part changed, a key trusted.
#pragma once

#include "airframe/airframe.hpp"
#include "base/parse.hpp"
#include "paper/sheet.hpp"
#include "record/key.hpp"

namespace ambit::paper {

struct EntryPage {
    Sheet sheet;
    QString title;
    Instant at;
    std::string identity;
};

/// `content`: one that record::checkEntry lets pass. `airframe`: for the names of points, counters and
/// inspections; nullptr: their ids are shown.
[[nodiscard]] EntryPage entryPage(const Json& content, const airframe::Airframe* airframe,
                                  const record::Certificate& signer, bool shownWhole);

} // namespace ambit::paper
