// Whole rounds for the tests of the pages: the demo helicopter walked by its plan, with as many findings as
// wanted.
#pragma once

#include "airframe/airframe.hpp"
#include "record/content.hpp"

#include <map>
#include <nlohmann/json.hpp>
#include <string>

namespace ambit::test {

struct RoundWishes {
    int findings = 2;
    int notInspected = 1;
    int photosEach = 2;
    bool grounds = false; ///< the first finding grounds the aircraft
    bool fit = true;
    bool interrupted = true; ///< a pause, a note, a re-opened point
    bool differs = false;    ///< a stand blocked and freed, an area marked, low light
    bool asked = false;      ///< a look again settled and one declined, a question, a remark
    int longWords = 0;       ///< times a finding's words are repeated
    std::string name = "Robin Example";
    std::string words =
        "Black powder with a short trail at two rivets in the upper row, behind the second fastener.";
    std::vector<std::string> photos; ///< bytes, used by turns; none: generated ones
};

struct TestRound {
    airframe::Airframe airframe;
    std::vector<round::Event> events;
    std::map<std::string, std::string> photos;
    Json content;
};

/// The demo helicopter as the repository has it.
[[nodiscard]] airframe::Airframe demoHelicopter();

/// Dies with a message if the round's rules refuse what is wished.
[[nodiscard]] TestRound walked(const airframe::Airframe& airframe, const RoundWishes& wishes = {});

/// A JPEG or PNG of that size, different for each seed.
[[nodiscard]] std::string image(int width, int height, int seed, const char* format = "jpeg");

} // namespace ambit::test
