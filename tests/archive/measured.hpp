// True records of rounds in which something was measured, from tests/record's fixture, which can't be
// included beside tests/round's.
#pragma once

#include "airframe/airframe.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace ambit::test {

/// A round of the fixture's machine, its oil and blade A measured (mm).
struct MeasuredRound {
    std::string registration = "OX-TEST";
    int day = 0; ///< after the first
    std::string hours = "1284.6";
    std::string oil = "5.0";
    std::string oilUnit = "";                    ///< empty: the limit's
    std::optional<airframe::Means> oilFrom = {}; ///< with an uncertainty of 0.15
    bool renewed = false;                        ///< the oil's
    bool inPhoto = false;                        ///< 5.00 mm, in picture(100 + day)
    std::string blade = "";                      ///< empty: not measured, but not inspected
    std::vector<int> photos = {};                ///< picture(…) of blade A, which is sound
};

/// The record's JSON, signed.
[[nodiscard]] std::string measured(const MeasuredRound& round);
/// Said afterwards of a value of the oil, signed by the owner at noon so many days after the first.
[[nodiscard]] std::string renewal(const std::string& record, bool renewed, int day,
                                  std::vector<std::string> previous);
/// The uncertainty that inPhoto gives.
[[nodiscard]] std::string uncertaintyInPhoto();
[[nodiscard]] std::int64_t concludedAt(int day); ///< ms

} // namespace ambit::test
