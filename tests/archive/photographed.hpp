// True records of a round with a photo, from tests/record's fixture, which can't be included beside
// tests/round's.
#pragma once

#include "record/key.hpp"

#include <string>
#include <vector>

namespace ambit::test {

/// A JPEG that no other number gives; 0 is a whole picture, which a PDF can hold.
[[nodiscard]] std::string picture(int number);

/// The record's JSON, naming picture(number) and these predecessors.
[[nodiscard]] std::string photographed(int number, const std::vector<std::string>& previous);
/// The PDF of photographed(0, …): picture and record are in it.
[[nodiscard]] std::string photographedPdf(const std::string& recordJson);
/// The aircraft that it is a record of.
[[nodiscard]] std::string photographedAircraft();

} // namespace ambit::test
