// What must be answered before something is left as it is: 14 CFR 91.213(d), for aircraft without a minimum
// equipment list. Read in secondary sources that quote it; the numbers of its sub-paragraphs from memory.
// Local rules and the operator's approvals have the last word.
#pragma once

#include "record/entry.hpp"

namespace ambit::file {

struct Question {
    const char* id;
    Sentence text;
    bool mayDefer;      ///< the answer that lets the item be deferred: true for yes
    Sentence otherwise; ///< what the other answer means
};

/// To be asked one by one, in this order.
[[nodiscard]] const std::vector<Question>& questions();

/// The answers to all of them. refused: an answer that rules a deferral out (`where`: the question); invalid:
/// not as many answers as questions.
[[nodiscard]] Result<std::vector<record::Answer>> answered(const std::vector<bool>& yes);

} // namespace ambit::file
