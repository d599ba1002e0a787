#include "fleet/trouble.hpp"

#include "fleet/troubles.hpp"

#include <algorithm>
#include <array>

namespace ambit::fleet {

namespace {

std::string lower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

bool hasOne(const std::string& text, const std::vector<std::string_view>& words) {
    return std::any_of(words.begin(), words.end(),
                       [&](std::string_view word) { return text.find(word) != std::string::npos; });
}

/// How well it fits: digits of the code, and the name counts as one more. 0: not at all.
std::size_t fits(const Trouble& trouble, const airframe::Point& point, const std::string& name) {
    if (!trouble.name.empty() && !hasOne(name, trouble.name)) return 0;
    std::size_t best = 0;
    for (const std::string_view code : trouble.jasc)
        if (point.jasc.starts_with(code)) best = std::max(best, code.size());
    return best == 0 ? 0 : 2 * best + (trouble.name.empty() ? 0 : 1);
}

/// For what no list foresees: the point's own words say what isn't sound.
const Trouble& anything() {
    static const Trouble any{{},
                             {},
                             2,
                             false,
                             {},
                             {"Put right, and looked at by a second person.",
                              "Part replaced, no. {no}; checked.", "Cleaned, set and checked."},
                             "“Look at it before each flight”, on the panel",
                             ""};
    return any;
}

/// One of the things that the airframe itself calls unsound here.
std::string ownWords(const airframe::Point& point, Chance& chance) {
    std::vector<std::string> things;
    std::string thing;
    for (const char c : point.unsound + ".") {
        if (c != ',' && c != ';' && c != '.') {
            if (!thing.empty() || c != ' ') thing += c;
            continue;
        }
        if (!thing.empty()) things.push_back(thing);
        thing.clear();
    }
    if (things.empty()) return "Not as it should be.";
    std::string words = chance.of(things);
    if (words.front() >= 'a' && words.front() <= 'z')
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
    static constexpr std::array<const char*, 4> ends{": seen on the walk.", ". Wasn’t so yesterday.",
                                                     ". Told to a mechanic.",
                                                     ", as far as can be seen from here."};
    return words + chance.of(ends);
}

struct Slip {
    std::vector<std::string_view> name; ///< parts of the point's name
    bool winter;
    const char* found;
    const char* done;
};
const std::vector<Slip>& slips() {
    static const std::vector<Slip> all{
        {{"frost", "clean of"}, true, "Hoar frost on wings and tail.", "Frost brushed off and wiped dry."},
        {{"frost", "clean of"},
         true,
         "Wet snow on the upper surfaces.",
         "Snow swept off, surfaces dry and smooth."},
        {{"ignition", "switched off", "switches off"}, false, "Key still in.", "Key taken out."},
        {{"ignition", "switched off", "switches off"}, false, "One switch found on.", "Switched off."},
        {{"windscreen", "windows"}, false, "Insects and dust in the line of sight.", "Cleaned and dried."},
        {{"papers"}, false, "Weighing sheet not aboard.", "Fetched from the office, all there."},
        {{"pedals"}, false, "Water bottle under the right pedal.", "Taken out."},
        {{"arc clear", "clear of people"}, false, "Somebody within reach.", "They stepped back."},
        {{"tow bar"}, false, "Tow bar still on.", "Taken off and stowed."},
        {{"ground wheels"}, false, "One wheel still in its bracket.", "Taken off."},
        {{"last look"}, false, "A rope lies below the wing.", "Picked up and stowed."},
        {{"last look"}, false, "Chock still at the wheel.", "Taken away."},
        {{"door"}, false, "Belt caught in the gap.", "Belt put in, door shut."},
        {{"static"}, false, "Drop of water in the hole.", "Wiped dry, free."},
        {{"leading edge"}, false, "Thick with insects.", "Washed and wiped."},
        {{"inlet"}, false, "Grass at the screen.", "Picked off."},
        {{"sump", "sample", "strainer"},
         false,
         "A few drops of water in the sample.",
         "Drained on; the next two are clear."},
    };
    return all;
}

} // namespace

const Trouble& troubleAt(const airframe::Point& point) {
    const std::string name = lower(point.base + ' ' + point.name);
    const Trouble* best = &anything();
    std::size_t most = 0;
    for (const auto* list : {&troublesOfBody(), &troublesOfPower()})
        for (const Trouble& one : *list) {
            const std::size_t its = fits(one, point, name);
            if (its <= most) continue;
            most = its;
            best = &one;
        }
    return *best;
}

std::optional<OnTheSpot> onTheSpot(const airframe::Point& point, int month, Chance& chance) {
    const std::string name = lower(point.name);
    const bool cold = month <= 3 || month >= 11;
    std::vector<const Slip*> fit;
    for (const Slip& slip : slips())
        if ((cold || !slip.winter) && hasOne(name, slip.name)) fit.push_back(&slip);
    if (fit.empty()) return std::nullopt;
    const Slip& slip = *chance.of(fit);
    return OnTheSpot{slip.found, slip.done};
}

std::string filled(std::string_view text, Chance& chance) {
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t open = text.find('{', at);
        out += text.substr(at, open == std::string_view::npos ? open : open - at);
        if (open == std::string_view::npos) break;
        const std::size_t close = text.find('}', open);
        const std::string_view slot = text.substr(open + 1, close - open - 1);
        if (slot == "n") out += std::to_string(chance.whole(2, 6));
        if (slot == "mm") out += std::to_string(chance.whole(5, 40));
        if (slot == "cm") out += std::to_string(chance.whole(3, 25));
        if (slot == "no") out += "DEMO-" + std::to_string(chance.whole(1000, 9999));
        at = close + 1;
    }
    return out;
}

std::string foundAt(const airframe::Point& point, Chance& chance) {
    const Trouble& trouble = troubleAt(point);
    // Now and then in the airframe's own words: people read them on the card.
    if (trouble.found.empty() || chance.happens(0.15)) return ownWords(point, chance);
    return filled(chance.of(trouble.found), chance);
}

std::string foundAgain(const std::string& first, int days, Chance& chance) {
    const std::string since = days < 1    ? "this morning"
                              : days == 1 ? "yesterday"
                                          : std::to_string(days) + " days ago";
    switch (chance.whole(0, 4)) {
    case 0:
        return "As found " + since + ", no change.";
    case 1:
        return "Known since " + since + ": " + first;
    case 2:
        return "Still so, not grown.";
    case 3:
        return "Same as in the file; looked at closely.";
    default:
        return first;
    }
}

std::string repairedAt(const airframe::Point& point, Chance& chance) {
    return point.name + ": " + filled(chance.of(troubleAt(point).repaired), chance);
}

} // namespace ambit::fleet
