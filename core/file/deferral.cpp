#include "file/deferral.hpp"

namespace ambit::file {

const std::vector<Question>& questions() {
    static const std::vector<Question> all{
        {"certification",
         "Does the type certificate ask for this item in flight by day under visual flight rules?", false,
         "What the aircraft's certification asks for can't be deferred."},
        {"equipment-list",
         "Does the aircraft's equipment list, or its list of kinds of operations, ask for it?", false,
         "What the aircraft's own lists ask for can't be deferred."},
        {"operating-rule", "Does a rule for the flights in view ask for it (14 CFR 91.205 or another)?",
         false, "A rule asks for it on such flights: it can't be deferred for them."},
        {"directive", "Does an airworthiness directive ask for it to work?", false,
         "A directive asks for it: it can't be deferred."},
        {"made-safe",
         "Has it been removed, or deactivated, and a placard put up (“Inoperative” where it was "
         "deactivated)?",
         true, "It must be removed or deactivated, and placarded, first."},
        {"no-hazard",
         "Has a pilot or mechanic with the certificate and rating for it found that it is no hazard as it "
         "is?",
         true, "Somebody who may must find first that it is no hazard."}};
    return all;
}

Result<std::vector<record::Answer>> answered(const std::vector<bool>& yes) {
    const auto& all = questions();
    if (yes.size() != all.size())
        return fail(ErrorCode::invalid,
                    "There are " + std::to_string(all.size()) + " questions, and " +
                        std::to_string(yes.size()) + " answers.",
                    {}, "Answer each of them, in their order.");
    std::vector<record::Answer> answers;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (yes[i] != all[i].mayDefer)
            return fail(ErrorCode::refused, all[i].otherwise, all[i].text,
                        "Have it put right, or do what the question asks for.");
        answers.push_back({all[i].text, yes[i]});
    }
    return answers;
}

} // namespace ambit::file
