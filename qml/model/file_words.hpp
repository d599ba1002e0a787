// What an aircraft's file says, in words for people: kinds of records, states of discrepancies, what is due.
#pragma once

#include "airframe/airframe.hpp"
#include "file/file.hpp"
#include "judge/due.hpp"

#include <QString>

namespace ambit::view {

[[nodiscard]] QString kindText(const std::string& kind);         ///< "Rectification"
[[nodiscard]] QString stateWord(file::Discrepancy::State state); ///< "Open", "Deferred"
/// What a deferral stands on: "14 CFR 91.213(d)", "minimum equipment list", "other".
[[nodiscard]] QString basisText(const std::string& basis);
/// "Not assessed yet", "Grounds the aircraft", "Deferred on 14 CFR 91.213(d) until 2026-07-01", …
/// `airframe`: for its names, nullptr if it isn't known; so everywhere here.
[[nodiscard]] QString stateText(const file::Discrepancy& discrepancy, const airframe::Airframe* airframe);
/// "Found 3 days ago by Robin Example, seen again 2 times"
[[nodiscard]] QString sinceText(const file::Discrepancy& discrepancy, Instant now);
[[nodiscard]] QString verdictText(judge::DueVerdict verdict); ///< "Passed", "Soon", …
/// "Airframe hours 1300.0 h, Landings 4200"
[[nodiscard]] QString countersText(const std::vector<round::CounterReading>& counters,
                                   const airframe::Airframe* airframe);
[[nodiscard]] QString personText(const round::Person& person); ///< "Kim Example · Mechanic · C-1"

/// "Signed 3 records as pilot, owner"
[[nodiscard]] QString signedText(const file::KnownKey& key);
/// "Good for mechanic since 20 Jun 2026", "Good for nothing since …", "The owner has said nothing of this
/// key"
[[nodiscard]] QString standingText(const file::KnownKey& key, int offsetMinutes);
[[nodiscard]] QString rolesText(const std::vector<std::string>& roles); ///< "Pilot, Owner"

} // namespace ambit::view
