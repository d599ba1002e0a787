#include "round/moved_words.hpp"

#include "round/order.hpp"

namespace ambit::round {

namespace {

std::optional<Sentence> names(std::string_view text) {
    static const std::vector<Phrase> ways{{moved::two, {readQuoted, readQuoted}},
                                          {moved::twoAndMore, {readQuoted, readQuoted, readCount}}};
    if (auto one = readQuoted(text)) return one;
    return readBack(text, ways);
}

std::optional<Sentence> cause(std::string_view text) {
    static const std::vector<Phrase> causes{{moved::goesOnAt, {readQuoted}},
                                            {moved::outOfTurn, {readQuoted}},
                                            {moved::wantedNext, {readQuoted}},
                                            {moved::settledAgain, {readQuoted}},
                                            {moved::askedBy, {readName, readQuoted}},
                                            {moved::lookDeclined, {readQuoted}},
                                            {moved::isSound, {readQuoted}},
                                            {moved::isFinding, {readQuoted}},
                                            {moved::isNotInspected, {readQuoted}},
                                            {moved::cannotBeUsed, {readQuoted}},
                                            {moved::canBeUsed, {readQuoted}},
                                            {moved::inTheWay, {readQuoted}},
                                            {moved::notInTheWay, {readQuoted}},
                                            {moved::lightLow, {}},
                                            {moved::lightGood, {}},
                                            {moved::interrupted, {}},
                                            {moved::quickAgain, {}},
                                            {moved::intoDark, {}},
                                            {moved::notIntoDark, {}}};
    return readBack(text, causes);
}

std::optional<Sentence> whatMovedIn(std::string_view text) {
    static const std::vector<Phrase> moves{{moved::cannotBeSettled, {names}},
                                           {moved::isAdded, {names}},
                                           {moved::areAdded, {names}},
                                           {moved::canBeSettled, {names}},
                                           {moved::isSettledHere, {names}},
                                           {moved::areSettledHere, {names}},
                                           {moved::isSettledFrom, {names, readQuoted}},
                                           {moved::areSettledFrom, {names, readQuoted}},
                                           {moved::isLeftOut, {names}},
                                           {moved::areLeftOut, {names}},
                                           {moved::comesFirst, {names}},
                                           {moved::comeFirst, {names}},
                                           {moved::comesAfter, {names, readQuoted}},
                                           {moved::comeAfter, {names, readQuoted}},
                                           {moved::isAddedFirst, {names}},
                                           {moved::areAddedFirst, {names}},
                                           {moved::isAddedAfter, {names, readQuoted}},
                                           {moved::areAddedAfter, {names, readQuoted}}};
    return readBack(text, moves);
}

std::optional<Sentence> one(std::string_view text) {
    static const std::vector<Phrase> ways{{moved::causeAndFirst, {cause, whatMovedIn}}};
    return readBack(text, ways);
}

std::optional<Sentence> oneOrTwo(std::string_view text) {
    static const std::vector<Phrase> ways{{moved::andThen, {one, whatMovedIn}}};
    if (auto both = readBack(text, ways)) return both;
    return one(text);
}

/// What `ended` has put a full stop to.
std::optional<Sentence> sentence(std::string_view text) {
    if (!text.ends_with('.')) return std::nullopt;
    text.remove_suffix(1);
    auto words = oneOrTwo(text);
    if (!words) words = cause(text);
    return words ? std::optional(ended(*words)) : std::nullopt;
}

} // namespace

Sentence whySaid(const Sentence& why) {
    static const std::vector<Phrase> more{{moved::andMore, {oneOrTwo, readCount}}};
    if (why.made() != nullptr || why.size() > mostRead) return why;
    auto said = sentence(why);
    if (!said) said = readBack(why, more);
    return said.value_or(why);
}

} // namespace ambit::round
