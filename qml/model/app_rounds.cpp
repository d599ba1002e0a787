// The round in hand: begun, taken up again, left.
#include "model/app.hpp"
#include "model/words.hpp"
#include "round/order.hpp"

#include <algorithm>

namespace ambit::view {

namespace {

/// Those given, in the airframe's order.
Result<std::vector<round::CounterReading>> readingsOf(const airframe::Airframe& airframe,
                                                      const QVariantMap& given) {
    std::vector<round::CounterReading> readings;
    for (const auto& counter : airframe.counters) {
        const std::string value = typedDecimal(given.value(text(counter.id)).toString());
        if (value.empty()) continue;
        if (!Decimal::parse(value))
            return fail(ErrorCode::invalid,
                        ambit::say("“%1” is no reading of %2.", value, ambit::quoted(counter.name)),
                        counter.id, ambit::say("Write it in digits, with a point before decimals: 1284.6"));
        readings.push_back({counter.id, value});
    }
    return readings;
}

} // namespace

bool App::begin(const QString& registration, const QString& walkId, const QString& name, const QString& role,
                const QString& certificate, const QVariantMap& counters, bool alone) {
    const round::Person person{name.trimmed().toStdString(), role.toStdString(),
                               certificate.trimmed().toStdString()};
    const auto begun = [&]() -> Result<void> {
        if (person.name.empty())
            return fail(ErrorCode::refused, ambit::say("Nobody's name is given."), "",
                        ambit::say("Say who walks round."));
        const auto aircraft = aircraftOf(registration);
        if (!aircraft) return tl::unexpected(aircraft.error());
        auto airframe = airframeOf(aircraft->airframeSha256);
        if (!airframe) return tl::unexpected(airframe.error());
        auto readings = readingsOf(**airframe, counters);
        if (!readings) return tl::unexpected(readings.error());
        const LocalInstant now = services.now();
        round::Opened opened{aircraft->registration,
                             aircraft->serial,
                             (*airframe)->id,
                             (*airframe)->sha256,
                             walkId.toStdString(),
                             person,
                             std::move(*readings),
                             now.offsetMinutes,
                             services.position ? services.position() : std::nullopt,
                             compared.steps((*airframe)->sha256, walkId.toStdString())};
        auto round = archive::OpenRound::begin(services.archive, **airframe, std::move(opened), now.at);
        if (!round) return tl::unexpected(round.error());
        if (alone)
            if (auto said = round->act(round::Alone{}, now.at); !said) return said;
        take(std::move(*airframe), std::move(*round));
        return {};
    }();
    if (!begun) {
        say(begun.error());
        return false;
    }
    remember(person);
    return true;
}

Result<void> App::goOn(const std::string& roundId) {
    const auto rounds = services.archive.rounds();
    if (!rounds) return tl::unexpected(rounds.error());
    const auto info =
        std::find_if(rounds->begin(), rounds->end(), [&](const auto& one) { return one.id == roundId; });
    if (info == rounds->end())
        return fail(ErrorCode::notFound, ambit::say("There is no such round here."), roundId);
    // The airframe it was begun with, which need not be the aircraft's today.
    const auto events = services.archive.events(roundId);
    if (!events) return tl::unexpected(events.error());
    const auto* opened = events->empty() ? nullptr : std::get_if<round::Opened>(&events->front().what);
    if (opened == nullptr)
        return fail(ErrorCode::invalid, ambit::say("This round was never opened."), roundId);
    auto airframe = airframeOf(opened->airframeSha256);
    if (!airframe) return tl::unexpected(airframe.error());
    auto round = archive::OpenRound::resume(services.archive, **airframe, roundId);
    if (!round) return tl::unexpected(round.error());
    // Killed between something that differs and the new order: it is made up for.
    const round::State& state = round->state();
    if (state.phase == round::Phase::walking && !round::holdsStill(state, **airframe))
        if (auto anew = round->replan("The round goes on", services.now().at); !anew) return anew;
    take(std::move(*airframe), std::move(*round));
    return {};
}

bool App::resume(const QString& roundId) {
    if (auto done = goOn(roundId.toStdString()); !done) {
        say(done.error());
        return false;
    }
    return true;
}

void App::take(std::unique_ptr<const airframe::Airframe> airframe, archive::OpenRound round) {
    clearProblem();
    leaveRound();
    current = std::make_unique<RoundView>(services, habitsHere, reporter(), std::move(airframe),
                                          std::move(round), nullptr);
    connect(current.get(), &RoundView::touched, this, &App::clearProblem);
    signingView.setRound(current.get());
    sharingView.setRound(current.get());
    handsView.setRound(current.get());
    measureView.setRound(current.get());
    conditionsView.setRound(current.get());
    fileView.setRegistration(current->registration());
    tellCarried();
    readSeries();
    emit roundChanged();
}

void App::readSeries() {
    if (services.archiveFile.empty()) return;
    background.run<archive::Series>(
        this,
        [aircraft = current->registration().toStdString(), points = current->measuredPoints()](
            const archive::Archive& archive) { return archive::series(archive, aircraft, points); },
        [this, id = current->roundId()](Result<archive::Series> series) {
            if (!series) return say(series.error());
            if (current && current->roundId() == id) current->setSeries(std::move(*series));
        });
}

void App::leaveRound() {
    if (!current) return;
    conditionsView.setRound(nullptr);
    measureView.setRound(nullptr);
    handsView.setRound(nullptr);
    sharingView.setRound(nullptr);
    signingView.setRound(nullptr);
    current.release()->deleteLater(); // a screen may be in the middle of a touch
    emit roundChanged();
    aircraftRows.refresh();
}

} // namespace ambit::view
