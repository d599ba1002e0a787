#include "fleet/crewing.hpp"

namespace ambit::fleet {

Crewing::Crewing(Hangar& its, const Crew& airfield, const Crew& others, std::uint64_t itsSeed)
    : mechanics(airfield.mechanics), hangar(its), crew(airfield), guests(others), seed(itsSeed),
      itsOwner(its.chance.of(airfield.owners)) {
    Chance& chance = hangar.chance;
    const int howMany = chance.whole(3, 5);
    firstPilot = static_cast<std::size_t>(chance.whole(0, static_cast<int>(crew.pilots.size()) - 1));
    for (int i = 0; i < howMany; ++i)
        pilots.push_back(crew.pilots[(firstPilot + pilots.size()) % crew.pilots.size()]);
    if (!chance.happens(0.5)) return;
    instructors = crew.instructors;
    students = {crew.students[0], crew.students[1]};
}

Result<void> Crewing::trust(const Somebody& who, std::vector<std::string> roles) {
    const LocalInstant at = hangar.at(5.5);
    const record::Trust said{who.name, who.key.certificate().sha256, std::move(roles), at.at};
    const auto done = hangar.say(5.5, owner(), said);
    if (!done) return tl::unexpected(done.error());
    return {};
}

Result<void> Crewing::begin() {
    if (auto done = trust(itsOwner, {"owner", "pilot"}); !done) return done;
    for (const Somebody& who : pilots)
        if (auto done = trust(who, {"pilot"}); !done) return done;
    for (const Somebody& who : instructors)
        if (auto done = trust(who, {"instructor", "pilot"}); !done) return done;
    for (const Somebody& who : students)
        if (auto done = trust(who, {"pilot"}); !done) return done;
    for (const Somebody& who : mechanics)
        if (auto done = trust(who, {"mechanic"}); !done) return done;
    return {};
}

Result<void> Crewing::newcomer() {
    if (pilots.size() == crew.pilots.size()) return {};
    pilots.push_back(crew.pilots[(firstPilot + pilots.size()) % crew.pilots.size()]);
    return trust(pilots.back(), {"pilot"});
}

Result<void> Crewing::loseAKey() {
    Somebody& who =
        pilots[static_cast<std::size_t>(hangar.chance.whole(0, static_cast<int>(pilots.size()) - 1))];
    const LocalInstant at = hangar.at(5.2);
    const record::Revocation gone{who.key.certificate().sha256, at.at,
                                  "Device with the key lost on the apron."};
    if (const auto done = hangar.say(5.2, owner(), gone); !done) return tl::unexpected(done.error());
    auto another = withNewKey(seed, who, at.at);
    if (!another) return tl::unexpected(another.error());
    who = std::move(*another);
    return trust(who, {"pilot"});
}

Result<void> Crewing::handOver() {
    const Somebody* to = &crew.owners[0];
    if (to->name == itsOwner.name) to = &crew.owners[1];
    const record::HandOver said{to->name, "Sold with its invented file, complete."};
    if (const auto done = hangar.say(5.0, owner(), said); !done) return tl::unexpected(done.error());
    if (auto done = trust(*to, {"owner", "pilot"}); !done) return done;
    itsOwner = *to;
    return {};
}

Crewing::Aboard Crewing::next() {
    Chance& chance = hangar.chance;
    if (chance.happens(0.003)) return {&chance.of(guests.pilots), "pilot", nullptr, nullptr};
    if (isForTraining() && chance.happens(0.55)) {
        Aboard lesson{nullptr, "pilot", &chance.of(students), &chance.of(instructors)};
        const bool studentSigns = chance.happens(0.5);
        lesson.signs = studentSigns ? lesson.student : lesson.instructor;
        if (!studentSigns) lesson.role = "instructor";
        return lesson;
    }
    if (chance.happens(0.1)) return {&itsOwner, "pilot", nullptr, nullptr};
    return {&chance.of(pilots), "pilot", nullptr, nullptr};
}

} // namespace ambit::fleet
