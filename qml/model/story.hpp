// A round's log told in words, one sentence an event; and the log out of a record.
#pragma once

#include "round/event.hpp"

#include <QString>
#include <string_view>

namespace ambit::view {

/// The events in a record's text. Nothing is verified here.
[[nodiscard]] Result<std::vector<round::Event>> eventsOf(std::string_view recordJson);

/// "Pitch link, blade A: sound". Empty for what says nothing to a person.
[[nodiscard]] QString sentence(const round::What& what, const airframe::Airframe& airframe);

} // namespace ambit::view
