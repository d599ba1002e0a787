// What a record of another kind than a round says, line by line.
#pragma once

#include "airframe/airframe.hpp"
#include "record/entry.hpp"

#include <QVariant>

namespace ambit::view {

/// [{name ("Basis"), text}]: basis, each question with its answer, placard, limits, until, who determined it.
[[nodiscard]] QVariantList deferralWords(const record::Deferral& deferral,
                                         const airframe::Airframe* airframe);

/// The record in a few words: "Deferred", "Put right", "Counters read".
[[nodiscard]] QString titleOf(const record::Entry& entry);

/// [{name, text}]: everything that it says. `airframe`: for its names; nullptr if it isn't known.
[[nodiscard]] QVariantList linesOf(const record::Entry& entry, const airframe::Airframe* airframe);

} // namespace ambit::view
