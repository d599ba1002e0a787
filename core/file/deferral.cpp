#include "file/deferral.hpp"

namespace ambit::file {

const std::vector<Question>& questions() {
    static const std::vector<Question> all{
        {"certification",
         say("Does the type certificate ask for this item in flight by day under visual flight rules?"),
         false, say("What the aircraft's certification asks for can't be deferred.")},
        {"equipment-list",
         say("Does the aircraft's equipment list, or its list of kinds of operations, ask for it?"), false,
         say("What the aircraft's own lists ask for can't be deferred.")},
        {"operating-rule", say("Does a rule for the flights in view ask for it (14 CFR 91.205 or another)?"),
         false, say("A rule asks for it on such flights: it can't be deferred for them.")},
        {"directive", say("Does an airworthiness directive ask for it to work?"), false,
         say("A directive asks for it: it can't be deferred.")},
        {"made-safe",
         say("Has it been removed, or deactivated, and a placard put up (“Inoperative” where it was "
             "deactivated)?"),
         true, say("It must be removed or deactivated, and placarded, first.")},
        {"no-hazard",
         say("Has a pilot or mechanic with the certificate and rating for it found that it is no hazard as "
             "it is?"),
         true, say("Somebody who may must find first that it is no hazard.")}};
    return all;
}

Result<std::vector<record::Answer>> answered(const std::vector<bool>& yes) {
    const auto& all = questions();
    if (yes.size() != all.size())
        return fail(ErrorCode::invalid,
                    say("There are %1 questions, and %2 answers.", figure(all.size()), figure(yes.size())),
                    {}, say("Answer each of them, in their order."));
    std::vector<record::Answer> answers;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (yes[i] != all[i].mayDefer)
            return fail(ErrorCode::refused, all[i].otherwise, all[i].text,
                        say("Have it put right, or do what the question asks for."));
        answers.push_back({all[i].text, yes[i]});
    }
    return answers;
}

} // namespace ambit::file
