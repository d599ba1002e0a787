// A recorded round walked in the real screens, by touches on what a person would touch. Nothing here calls
// core to change a round: it only reads the state, to know what the screen must have done.
#pragma once

#include "desktop/shots.hpp"
#include "script/asker.hpp"
#include "script/player.hpp"

namespace ambit::desktop {

/// The time the screens are told; the walk moves it as its script says, so that the record is the same each
/// time.
struct ScriptClock {
    LocalInstant now;
};

class DemoWalk {
public:
    DemoWalk(view::App& ofApp, QQuickWindow& onWindow, ScriptClock& byClock, script::Script script,
             std::filesystem::path outFolder);

    /// From the choice of the aircraft to record.json and record.pdf in the folder, pictures of every screen
    /// in its screens/. The error says what was not found or refused, and at which line of the script.
    [[nodiscard]] Result<void> run();

private:
    [[nodiscard]] Result<void> play(const script::Action& action);
    [[nodiscard]] Result<void> follow(const script::Action& action, const script::Follow& follow);
    [[nodiscard]] Result<void> single(const script::Action& action);

    // One overload an action: a new one doesn't compile before somebody has said how it is done on the
    // screen.
    [[nodiscard]] Result<void> act(const script::Open& what);
    [[nodiscard]] Result<void> act(const script::Go& what);
    [[nodiscard]] Result<void> act(const script::TapZone& what);
    [[nodiscard]] Result<void> act(const script::Change& what);
    [[nodiscard]] Result<void> act(const script::Settle& what);
    [[nodiscard]] Result<void> act(const script::Reopen& what);
    [[nodiscard]] Result<void> act(const script::Made& what);
    [[nodiscard]] Result<void> act(const script::Closed& what);
    [[nodiscard]] Result<void> act(const script::Pause& what);
    [[nodiscard]] Result<void> act(const script::Resume& what);
    [[nodiscard]] Result<void> act(const script::Note& what);
    [[nodiscard]] Result<void> act(const script::Block& what);
    [[nodiscard]] Result<void> act(const script::Free& what);
    [[nodiscard]] Result<void> act(const script::Mark& what);
    [[nodiscard]] Result<void> act(const script::Clear& what);
    [[nodiscard]] Result<void> act(const script::Lighting& what);
    [[nodiscard]] Result<void> act(const script::Alone& what);
    [[nodiscard]] Result<void> act(const script::Ask& what);
    [[nodiscard]] Result<void> act(const script::Answer& what);
    [[nodiscard]] Result<void> act(const script::Decline& what);
    [[nodiscard]] Result<void> act(const script::Portion& what);
    [[nodiscard]] Result<void> act(const script::Down& what);
    [[nodiscard]] Result<void> act(const script::Interrupt& what);
    [[nodiscard]] Result<void> act(const script::Quick& what);
    [[nodiscard]] Result<void> act(const script::Satellites& what);
    [[nodiscard]] Result<void> act(const script::Dark& what);
    [[nodiscard]] Result<void> act(const script::Follow& what);
    [[nodiscard]] Result<void> act(const script::Conclude& what);
    [[nodiscard]] Result<void> act(const script::Sign& what);

    [[nodiscard]] Result<void> settleFinding(const script::Settle& what);
    [[nodiscard]] Result<void> settleNotInspected(const script::Settle& what);
    [[nodiscard]] Result<void> toReview();
    [[nodiscard]] Result<void> keepRecord();
    [[nodiscard]] Result<void> lookThroughFile();
    [[nodiscard]] Result<void> shootPlaces();

    /// Touches one after the other, stops at the first that fails.
    [[nodiscard]] Result<void> touch(std::initializer_list<QString> names);
    /// Behind the "more" key, or in sight.
    [[nodiscard]] Result<void> touchMore(const QString& name);
    [[nodiscard]] view::RoundView& round() const { return *app->round(); }
    [[nodiscard]] std::size_t events() const;

    view::App* app;
    QQuickWindow* window;
    ScriptClock* clock;
    script::Script script;
    script::Asker asker;
    std::filesystem::path out;
    Hand hand;
    Shots shots;
};

} // namespace ambit::desktop
