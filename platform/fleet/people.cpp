#include "fleet/people.hpp"

#include "fleet/digits.hpp"
#include "fleet/keys.hpp"

#include <array>

namespace ambit::fleet {

namespace {

constexpr std::array<const char*, 36> given{
    "Kim",     "Robin", "Alex",  "Sam",   "Jo",    "Charlie", "Chris", "Dana", "Eli",
    "Frankie", "Gerry", "Jamie", "Jesse", "Jules", "Kelly",   "Kit",   "Lee",  "Lou",
    "Max",     "Mika",  "Nico",  "Noa",   "Pat",   "Quinn",   "Ray",   "Rene", "Sascha",
    "Sidney",  "Terry", "Toni",  "Val",   "Vic",   "Wyn",     "Yael",  "Yuri", "Zoe"};
constexpr std::array<const char*, 14> family{"Example",   "Sample", "Specimen", "Madeup",      "Invented",
                                             "Fictive",   "Nobody", "Instance", "Placeholder", "Pretend",
                                             "Imaginary", "Trial",  "Mockup",   "Demo"};

/// Each number has a name of its own, however many there are.
std::string nameOf(std::size_t number) {
    const std::size_t pair = number % (given.size() * family.size());
    const std::size_t more = number / (given.size() * family.size());
    // Every pair once before any comes again; people at one airfield differ in both.
    std::string name = given.at(pair % given.size());
    if (more > 0) name += ' ' + std::to_string(more + 1) + '.';
    return name + ' ' + family.at((pair / given.size() + pair) % family.size());
}

class Making {
public:
    Making(std::uint64_t theirs, Instant start) : seed(theirs), from(start) {}

    Result<void> some(std::vector<Somebody>& to, int howMany, const char* certificate,
                      const char* kind = "") {
        for (int i = 0; i < howMany; ++i) {
            const std::string name = nameOf(made);
            auto key = derivedKey(seed, fourDigits(made), name, from);
            if (!key) return tl::unexpected(key.error());
            ++made;
            to.push_back(
                {name, std::string("DEMO-") + certificate + '-' + fourDigits(made), kind, std::move(*key)});
        }
        return {};
    }

private:
    std::uint64_t seed;
    Instant from;
    std::size_t made = 0;
};

/// Hundredths of a degree near where the equator meets the first meridian: open sea.
std::string nearZero(int hundredths) {
    return "0." + fourDigits(static_cast<std::size_t>(hundredths) * 100 + 50);
}

} // namespace

Result<std::vector<Crew>> makeCrews(std::uint64_t seed, int airfields, Instant from) {
    std::vector<Crew> crews(static_cast<std::size_t>(airfields));
    Making making(seed, from);
    for (std::size_t i = 0; i < crews.size(); ++i) {
        Crew& crew = crews[i];
        crew.airfield = "Invented Field " + std::to_string(i + 1);
        crew.position = {nearZero(static_cast<int>(i / 90 % 90) + 1), nearZero(static_cast<int>(i % 90) + 1)};
        for (const auto& done :
             {making.some(crew.owners, 3, "OWNER"), making.some(crew.pilots, 9, "PILOT"),
              making.some(crew.students, 4, "STUDENT"), making.some(crew.instructors, 2, "INSTRUCTOR"),
              making.some(crew.mechanics, 1, "MECHANIC", "mechanic, airframe and powerplant"),
              making.some(crew.mechanics, 1, "MECHANIC",
                          "mechanic, airframe and powerplant, with inspection authorization")})
            if (!done) return tl::unexpected(done.error());
    }
    return crews;
}

Result<Somebody> withNewKey(std::uint64_t seed, const Somebody& who, Instant from) {
    auto key = derivedKey(seed, who.certificate + ", second key", who.name, from);
    if (!key) return tl::unexpected(key.error());
    return Somebody{who.name, who.certificate, who.kind, std::move(*key)};
}

} // namespace ambit::fleet
