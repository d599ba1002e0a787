// What the parts of the file must say together: references, stands, settings, openings, walks, what comes
// due, and what waits for what.
#pragma once

#include "airframe/expand.hpp"

namespace ambit::airframe {

void checkFigure(const Draft& draft, Errors& errors);
void checkStands(const Draft& draft, Errors& errors);
void checkSettings(const Draft& draft, const Expansion& expansion, Errors& errors);
void checkPoints(const Draft& draft, const Expansion& expansion, Errors& errors);
void checkOpenings(const Draft& draft, const Expansion& expansion, Errors& errors);
void checkWalks(const Draft& draft, const Expansion& expansion, Errors& errors);
void checkDue(const Draft& draft, Errors& errors);

/// Nothing waits for itself, by `after`, openings, or settings that are reached only once something is
/// settled. `airframe` is what was made of the draft; pointers[i] is that of airframe.points[i].
void checkWaits(const Airframe& airframe, const std::vector<std::string>& pointers, Errors& errors);

} // namespace ambit::airframe
