#include "measured.hpp"

#include "../record/fixture.hpp"
#include "base/hash.hpp"
#include "photographed.hpp"
#include "record/content.hpp"
#include "record/entry.hpp"

#include <QtGlobal>
#include <nlohmann/json.hpp>

namespace ambit::test {

namespace {

using namespace round;

constexpr std::int64_t day = 86'400'000;

const airframe::Airframe& machine() {
    static const airframe::Airframe its = [] {
        airframe::Airframe machine = recordedMachine();
        for (airframe::Point& point : machine.points)
            if (point.id == "oil" || point.id == "blade.a") {
                point.limit = machine.point("oil")->limit;
                point.limit->unit = "mm";
            }
        return machine;
    }();
    return its;
}

Photo photoOf(int number) {
    const std::string bytes = picture(number);
    return {sha256Hex(bytes), "image/jpeg", static_cast<std::int64_t>(bytes.size())};
}

/// Seen from straight above, 10 pixels a millimetre: 5 mm.
Measurement fiveMillimetres(const Photo& photo) {
    Measurement its;
    its.what = Measurement::What::distance;
    its.photo = photo.sha256;
    its.width = 1600;
    its.height = 1200;
    its.card = CardSeen{{{"100", "100"}, {"956", "100"}, {"956", "639.80"}, {"100", "639.80"}},
                        "0.50",
                        false,
                        {},
                        measure::Lies::longSideFirst};
    its.marks = {{"300", "800"}, {"350", "800"}};
    its.deviation = "1.00";
    const auto estimate = computed(its);
    if (!estimate) qFatal("%s", toText(estimate.error()).c_str());
    write(its, *estimate);
    return its;
}

void measureOil(Settled& oil, const MeasuredRound& wanted) {
    oil.value = wanted.oil;
    oil.unit = wanted.oilUnit;
    oil.renewed = wanted.renewed;
    oil.from = wanted.oilFrom;
    if (oil.from) oil.uncertainty = "0.15";
    if (!wanted.inPhoto) return;
    oil.photos = {photoOf(100 + wanted.day)};
    oil.measurements = {fiveMillimetres(oil.photos.front())};
    oil.value = oil.measurements.front().value;
    oil.byPhoto = true;
}

void measureBlade(Settled& blade, const MeasuredRound& wanted) {
    if (wanted.blade.empty()) {
        blade.outcome = Outcome::notInspected;
        blade.why = "No gauge.";
        blade.basis = "Measured each hundred hours.";
        return;
    }
    blade.value = wanted.blade;
    for (const int number : wanted.photos)
        blade.photos.push_back(photoOf(number));
}

} // namespace

std::string measured(const MeasuredRound& wanted) {
    std::vector<Event> events = roundOf(true);
    for (Event& event : events) {
        event.at.ms += wanted.day * day;
        if (auto* opened = std::get_if<Opened>(&event.what)) {
            opened->registration = wanted.registration;
            opened->counters.front().value = wanted.hours;
        }
        if (auto* settled = std::get_if<Settled>(&event.what)) {
            if (settled->point == "oil") measureOil(*settled, wanted);
            if (settled->point == "blade.a") measureBlade(*settled, wanted);
        }
    }
    const auto content = record::roundContent(machine(), events, {});
    if (!content) qFatal("%s", toText(content.error()).c_str());
    const auto text = record::signRecord(*content, signer());
    if (!text) qFatal("%s", toText(text.error()).c_str());
    return *text;
}

std::string renewal(const std::string& record, bool renewed, int days, std::vector<std::string> previous) {
    const auto content = record::entryContent({"OX-TEST",
                                               "T-1",
                                               {{roundOf(true).back().at.ms + days * day + day / 2}, 0},
                                               std::move(previous),
                                               {signer().certificate().name, "owner", ""}},
                                              record::Renewal{{record, "oil"}, renewed, "Changed."});
    if (!content) qFatal("%s", toText(content.error()).c_str());
    const auto text = record::signRecord(*content, signer());
    if (!text) qFatal("%s", toText(text.error()).c_str());
    return *text;
}

std::string uncertaintyInPhoto() {
    return fiveMillimetres(photoOf(100)).uncertainty;
}

std::int64_t concludedAt(int days) {
    return roundOf(true).back().at.ms + days * day;
}

} // namespace ambit::test
