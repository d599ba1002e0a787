#include "random_airframe.hpp"

#include <algorithm>

namespace ambit::test {

namespace {

using namespace airframe;

class Maker {
public:
    Maker(std::mt19937& generator, Size wanted) : random(generator), size(wanted) {}

    Airframe make() {
        made.id = "random";
        made.parts.push_back({"body", PartKind::body, {{-1, -3}, {1, -3}, {1, 3}, {-1, 3}}, true, {}});
        made.zones = {{"left", "Left", {}}, {"right", "Right", {}}, {"nowhere", "Nowhere", {}}};
        makeStands();
        makeSettings();
        makePoints();
        makeOpenings();
        Walk walk{"all", "All", "", {0, 6}, {0, -6}, {}};
        for (const Point& point : made.points)
            walk.points.push_back(point.id);
        made.walks.push_back(std::move(walk));
        return std::move(made);
    }

private:
    int number(int low, int high) { // std's distributions differ between libraries
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    }
    bool chance(int percent) { return number(1, 100) <= percent; }
    template<class List> const auto& any(const List& list) {
        return list[static_cast<std::size_t>(number(0, static_cast<int>(list.size()) - 1))];
    }

    void makeStands() {
        const int count = size == Size::small ? number(3, 5) : number(3, 9);
        for (int i = 0; i < count; ++i) {
            const double side = chance(50) ? -1 : 1;
            Stand stand{"s" + std::to_string(i),
                        "",
                        {side * (1.2 + number(0, 40) / 10.0), number(-50, 50) / 10.0},
                        0,
                        chance(25) ? Access::kneel : Access::ground,
                        2,
                        {},
                        {},
                        {}};
            if (i > 0 && chance(25)) {
                stand.access = Access::step;
                stand.level = 0.5;
                stand.hands = 1;
            }
            made.stands.push_back(stand);
        }
        // An upper step over a lower one.
        Stand* lower = nullptr;
        for (Stand& stand : made.stands) {
            if (!stand.raised()) continue;
            if (lower != nullptr && chance(60)) {
                lower->stepTo.push_back(stand.id);
                stand.stepTo.push_back(lower->id);
                if (chance(60)) stand.onlyFrom.push_back(lower->id);
            }
            lower = &stand;
        }
    }

    void makeSettings() {
        const int count = size == Size::small ? number(1, 2) : number(0, 2);
        for (int i = 0; i < count; ++i) {
            Setting setting{"set" + std::to_string(i), "Set", {}, "a", {}};
            const int states = size == Size::small ? 2 : number(2, 3);
            for (int s = 0; s < states; ++s)
                setting.states.push_back({std::string(1, static_cast<char>('a' + s)), ""});
            for (const SettingState& from : setting.states) {
                for (const SettingState& to : setting.states) {
                    if (from.id == to.id) continue;
                    SettingChange change{
                        from.id, to.id, {any(made.stands).id}, static_cast<double>(number(5, 60)), "",
                        {},      {}};
                    if (from.id == "a" && chance(50)) change.needs.push_back("p0");
                    setting.changes.push_back(change);
                }
            }
            made.settings.push_back(setting);
        }
    }

    void makePoints() {
        const int count = size == Size::small ? number(3, 7) : number(4, 28);
        for (int i = 0; i < count; ++i) {
            Point point;
            point.id = point.name = "p" + std::to_string(i);
            point.zone = chance(50) ? "left" : "right";
            point.seconds = number(1, 60);
            for (int s = number(1, 2); s > 0; --s)
                point.stands.push_back(any(made.stands).id);
            // p0 is what changes need: settled from the start's settings, after nothing.
            for (const Setting& setting : made.settings)
                if (i > 0 && chance(30)) point.when[setting.id] = any(setting.states).id;
            for (int a = 0; a < 2; ++a)
                if (i > 0 && chance(30)) point.after.push_back(any(made.points).id);
            made.points.push_back(point);
        }
    }

    void makeOpenings() {
        for (int i = 0; i < 2; ++i) {
            const std::size_t opens =
                static_cast<std::size_t>(number(1, static_cast<int>(made.points.size()) - 1));
            const std::size_t closes =
                static_cast<std::size_t>(number(1, static_cast<int>(made.points.size()) - 1));
            if (opens >= closes) continue;
            const std::string id = "o" + std::to_string(i);
            made.openings.push_back({id, id, "", chance(20)});
            made.points[opens].opens.push_back(id);
            made.points[closes].closes.push_back(id);
            for (std::size_t p = opens + 1; p < closes; ++p)
                if (chance(30)) made.points[p].through.push_back(id);
        }
    }

    std::mt19937& random;
    Size size;
    Airframe made;
};

} // namespace

Airframe randomAirframe(std::mt19937& random, Size size) {
    return Maker(random, size).make();
}

} // namespace ambit::test
