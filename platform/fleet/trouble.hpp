// What goes wrong with light aircraft, in the words of those who find it and put it right. Invented, and by
// the kind of thing a point is about (JASC code and the point's name): any airframe finds its own here.
#pragma once

#include "airframe/airframe.hpp"
#include "fleet/chance.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ambit::fleet {

/// One kind of trouble. In its texts {n}, {mm} and {cm} stand for numbers, {no} for an invented part number.
struct Trouble {
    std::vector<std::string_view> jasc; ///< beginnings of codes
    std::vector<std::string_view> name; ///< parts of the point's name, lower case; none: any
    double often = 1;                   ///< among all kinds; 0: only put right at once
    bool equipment = false;             ///< something that may be inoperative: 14 CFR 91.213(d) fits it
    std::vector<std::string_view> found;
    std::vector<std::string_view> repaired;
    std::string_view placard; ///< what is put up while it waits
    std::string_view limits;  ///< what the aircraft is not used for meanwhile; may be empty
};

/// The kind that fits the point best; one for anything at all if none fits better.
[[nodiscard]] const Trouble& troubleAt(const airframe::Point& point);

/// Something seen and put right at once, before it counts: the key left in, frost, a cover.
struct OnTheSpot {
    std::string found;
    std::string done; ///< why the point is looked at again
};
/// nullopt: nothing at this point is put right by who walks round.
[[nodiscard]] std::optional<OnTheSpot> onTheSpot(const airframe::Point& point, int month, Chance& chance);

/// A text with its {…} filled in.
[[nodiscard]] std::string filled(std::string_view text, Chance& chance);

/// What somebody writes who finds this; of a measured point without its value.
[[nodiscard]] std::string foundAt(const airframe::Point& point, Chance& chance);
/// The same seen again in a later round, `days` after.
[[nodiscard]] std::string foundAgain(const std::string& first, int days, Chance& chance);
[[nodiscard]] std::string repairedAt(const airframe::Point& point, Chance& chance);

} // namespace ambit::fleet
