// Every pattern that says why an order has changed: moved.cpp and order.cpp say them, moved_words.cpp reads
// them back. One that isn't read there is shown in English after a restart. Inside core/round only.
#pragma once

#include "base/phrase.hpp"

namespace ambit::round::moved {

// Names of stands or points.
inline constexpr const char* two = pattern("%1 and %2");
inline constexpr const char* twoAndMore = pattern("%1, %2 and %3 more");

// What moved. “… is”: one thing, “… are”: more.
inline constexpr const char* cannotBeSettled = pattern("%1 can't be settled now");
inline constexpr const char* isAdded = pattern("%1 is added");
inline constexpr const char* areAdded = pattern("%1 are added");
inline constexpr const char* canBeSettled = pattern("%1 can be settled again");
inline constexpr const char* isSettledHere = pattern("%1 is now settled here");
inline constexpr const char* areSettledHere = pattern("%1 are now settled here");
inline constexpr const char* isSettledFrom = pattern("%1 is now settled from %2");
inline constexpr const char* areSettledFrom = pattern("%1 are now settled from %2");
inline constexpr const char* isLeftOut = pattern("%1 is left out");
inline constexpr const char* areLeftOut = pattern("%1 are left out");
inline constexpr const char* comesFirst = pattern("%1 now comes first");
inline constexpr const char* comeFirst = pattern("%1 now come first");
inline constexpr const char* comesAfter = pattern("%1 now comes after %2");
inline constexpr const char* comeAfter = pattern("%1 now come after %2");
inline constexpr const char* isAddedFirst = pattern("%1 is added first");
inline constexpr const char* areAddedFirst = pattern("%1 are added first");
inline constexpr const char* isAddedAfter = pattern("%1 is added after %2");
inline constexpr const char* areAddedAfter = pattern("%1 are added after %2");

// Because of what.
inline constexpr const char* goesOnAt = pattern("The round goes on at %1");
inline constexpr const char* outOfTurn = pattern("%1 was reached out of turn");
inline constexpr const char* wantedNext = pattern("%1 is wanted next");
inline constexpr const char* settledAgain = pattern("%1 is to be settled again");
inline constexpr const char* askedBy = pattern("Asked by %1: look again at %2");
inline constexpr const char* lookDeclined = pattern("The second look at %1 is declined");
inline constexpr const char* isSound = pattern("%1 is sound");
inline constexpr const char* isFinding = pattern("%1 is a finding");
inline constexpr const char* isNotInspected = pattern("%1 is not inspected");
inline constexpr const char* cannotBeUsed = pattern("%1 can't be used");
inline constexpr const char* canBeUsed = pattern("%1 can be used again");
inline constexpr const char* inTheWay = pattern("%1 is in the way");
inline constexpr const char* notInTheWay = pattern("%1 isn't in the way any more");
inline constexpr const char* lightLow = pattern("The light is low");
inline constexpr const char* lightGood = pattern("The light is good again");
inline constexpr const char* interrupted = pattern("After an interruption");
inline constexpr const char* quickAgain = pattern("What was settled quickly is looked at again");
inline constexpr const char* intoDark = pattern("The flight goes into the dark");
inline constexpr const char* notIntoDark = pattern("The flight doesn't go into the dark");

// All together: the cause, what moved first, what moved then, and how much more did.
inline constexpr const char* causeAndFirst = pattern("%1: %2");
inline constexpr const char* andThen = pattern("%1. %2");
inline constexpr const char* andMore = pattern("%1, and %2 more.");

} // namespace ambit::round::moved
