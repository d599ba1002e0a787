// What comes between while a round is walked: interruptions, and what the operator's rule asks for again;
// points settled quickly; the night.
#pragma once

#include "model/daylight.hpp"
#include "model/habits.hpp"
#include "model/round_view.hpp"
#include "round/pace.hpp"

namespace ambit::view {

class ConditionsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// The last interruption, its rule and what came of it, until it is read: "Paused for 7 min: back 3
    /// points; 3 points to settle again". "" if none.
    Q_PROPERTY(QString interruptedText READ interruptedText NOTIFY changed)
    /// Their names, in order.
    Q_PROPERTY(QStringList again READ again NOTIFY changed)
    /// Nothing was told for long: "Nothing was told for 5 min"; comeBack() once somebody is there. "" if not
    /// so.
    Q_PROPERTY(QString silentText READ silentText NOTIFY changed)
    /// Points settled within the time that one of them takes, until answered: "4 points in 3 s". "" if none.
    Q_PROPERTY(QString quickText READ quickText NOTIFY changed)
    /// The flight goes into the dark.
    Q_PROPERTY(bool night READ night NOTIFY changed)
    /// The airframe asks for something more then.
    Q_PROPERTY(bool nightPossible READ nightPossible NOTIFY changed)
    /// "The device's clock is 3 min ahead of satellite time"; "" if it is right, or nobody knows. The record
    /// has it, too.
    Q_PROPERTY(QString clockText READ clockText NOTIFY changed)
public:
    /// Shorter ones are none: a glance at another screen.
    static constexpr std::int64_t leastSeconds = 10;
    /// Without an event for so long, somebody was called away. Longer than what any point of the demo
    /// machines takes.
    static constexpr std::int64_t silentSeconds = 300;

    ConditionsView(const Services& services, Habits& habits, Daylight& daylight, QObject* parent);

    /// The round in hand, begun now or taken up again; nullptr: none.
    void setRound(RoundView* round);

    /// "call", "locked", "away": attention goes elsewhere. What began first counts until comeBack().
    Q_INVOKABLE void leave(const QString& cause);
    Q_INVOKABLE void comeBack();
    Q_INVOKABLE void read(); ///< what interruptedText says
    Q_INVOKABLE bool answerQuick(bool again);
    Q_INVOKABLE bool tellNight(bool expected);
    /// Looks at the clock; called by itself every few seconds.
    Q_INVOKABLE void tick();

    [[nodiscard]] QString interruptedText() const { return lastWords; }
    [[nodiscard]] QStringList again() const { return lastNames; }
    [[nodiscard]] QString silentText() const;
    [[nodiscard]] QString quickText() const;
    [[nodiscard]] bool night() const { return round != nullptr && state().night; }
    [[nodiscard]] bool nightPossible() const;
    [[nodiscard]] QString clockText() const;

signals:
    void changed();

private:
    struct Away {
        round::Interrupted::Cause cause;
        Instant since;
    };
    [[nodiscard]] const round::State& state() const { return round->openRound().state(); }
    [[nodiscard]] Instant now() const { return services->now().at; }
    [[nodiscard]] bool isWalked() const; ///< so that something could be interrupted
    void look();                         ///< the log has grown: within a touch, so nothing that takes time
    [[nodiscard]] const std::optional<round::Quick>& quickNow() const;
    void lookAround(); ///< at the light and the clock
    void goBack(round::Interrupted::Cause cause, Instant since);

    const Services* services;
    Habits* habits;
    Daylight* daylight;
    RoundView* round = nullptr;
    std::optional<Away> away;
    bool isSilent = false;
    bool nightSaid = false;    ///< by whoever walks: the sun is asked no more
    std::int64_t lookedAt = 0; ///< number of the last event that was looked at
    /// Read from the log when it is asked for.
    mutable std::optional<round::Quick> quick;
    mutable bool isQuickKnown = true;
    QString lastWords;
    QStringList lastNames;
    QTimer timer;
};

} // namespace ambit::view
