// The words by which a record is found. Inside core/archive only.
#pragma once

#include "file/told.hpp"

#include <string>

namespace ambit::archive {

/// A row of the table `words`.
struct Words {
    std::string aircraft; ///< registration
    std::string
        person;       ///< who signed, did the work, found that it is no hazard, is trusted, gets the aircraft
    std::string part; ///< names, numbers, serials, positions
    std::string jasc; ///< of findings
    std::string kind; ///< and conclusion
    std::string text; ///< what people wrote, and the names of points with findings
};

[[nodiscard]] Words wordsOf(const file::Told& told);

} // namespace ambit::archive
