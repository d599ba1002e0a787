// Takes the moment and the chance out of a PDF that Qt wrote.
#pragma once

#include "base/time.hpp"

#include <string>

namespace ambit::paper {

/// Dates become `at`, the file's ID is taken from `identity` (hex, 32 digits at least). Lengths stay, so
/// offsets hold.
void pinPdf(std::string& pdf, Instant at, const std::string& identity);

} // namespace ambit::paper
