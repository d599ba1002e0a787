// A round being walked, as a screen shows it. No rules here: touches go to core, what core says is shown.
#pragma once

#include "archive/open_round.hpp"
#include "model/card.hpp"
#include "model/figure_model.hpp"
#include "model/last_time.hpp"
#include "model/round_models.hpp"
#include "model/services.hpp"

#include <QTimer>

namespace ambit::view {

class RoundView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")

    Q_PROPERTY(QString roundId READ roundId CONSTANT)
    Q_PROPERTY(QString registration READ registration CONSTANT)
    Q_PROPERTY(QString walkName READ walkName CONSTANT)
    Q_PROPERTY(QString notice READ notice CONSTANT)              ///< the airframe's: what has the last word
    Q_PROPERTY(QStringList generalCautions READ generalCautions CONSTANT) ///< the airframe's, for the whole walk
    Q_PROPERTY(QString person READ person CONSTANT)              ///< who walks
    Q_PROPERTY(int pointCount READ pointCount CONSTANT)

    Q_PROPERTY(int settledCount READ settledCount NOTIFY progressChanged)
    Q_PROPERTY(int findingCount READ findingCount NOTIFY progressChanged)
    Q_PROPERTY(int owedCount READ owedCount NOTIFY progressChanged)
    Q_PROPERTY(QString planText READ planText NOTIFY planChanged) ///< "112 m · 3 climbs · about 31 min" of what is left
    Q_PROPERTY(int minutes READ minutes NOTIFY minutesChanged)    ///< since the start, pauses left out

    Q_PROPERTY(QString phase READ phase NOTIFY phaseChanged)           ///< "walking" "paused" "concluded" "sealed"
    Q_PROPERTY(QString pausedText READ pausedText NOTIFY phaseChanged) ///< "Paused since 07:42"; "" if not paused
    Q_PROPERTY(bool concludedFit READ concludedFit NOTIFY phaseChanged)
    Q_PROPERTY(QString conclusionText READ conclusionText NOTIFY phaseChanged) ///< "fit" / "not fit" in words; "" before
    Q_PROPERTY(QString reasons READ reasons NOTIFY phaseChanged)

    // The card in hand. cardKind "go": walk to targetStand*, then atStand(). "set": change the setting (cardTitle, cardHow), then
    // changeSetting(). "settle": the point, one of the settle…() calls. "done": all settled, on to the review.
    Q_PROPERTY(QString cardKind READ cardKind NOTIFY cardChanged)
    Q_PROPERTY(QString cardTitle READ cardTitle NOTIFY cardChanged)     ///< "Pitch link, blade A"; "Go to “Left mast tread”"; "Main rotor: Blade B aft"
    Q_PROPERTY(QString cardHow READ cardHow NOTIFY cardChanged)         ///< settle: "Look · Feel"; set: how it is changed; go: the way, "4 m, then up"
    Q_PROPERTY(QString cardSetting READ cardSetting NOTIFY cardChanged) ///< settle: settings the point needs, "Blade A aft"; "" if any
    Q_PROPERTY(QString pointId READ pointId NOTIFY cardChanged)         ///< settle only
    Q_PROPERTY(QString sound READ sound NOTIFY cardChanged)             ///< what sound looks like
    Q_PROPERTY(QString unsound READ unsound NOTIFY cardChanged)         ///< what isn't
    Q_PROPERTY(QString why READ why NOTIFY cardChanged)                 ///< why it matters
    Q_PROPERTY(bool measured READ measured NOTIFY cardChanged)          ///< settleSound and settleFinding need a value
    Q_PROPERTY(QString quantity READ quantity NOTIFY cardChanged)       ///< "oil level"
    Q_PROPERTY(QString unit READ unit NOTIFY cardChanged)
    Q_PROPERTY(QString limitText READ limitText NOTIFY cardChanged)     ///< "4 to 6 qt"
    Q_PROPERTY(QString limitSource READ limitSource NOTIFY cardChanged)
    Q_PROPERTY(bool findingGrounds READ findingGrounds NOTIFY cardChanged) ///< a finding here always grounds: no choice of class
    Q_PROPERTY(QString lastTime READ lastTime NOTIFY cardChanged)       ///< "sound · 3 days, 4.2 h ago"; "" if there is nothing earlier
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY cardChanged)   ///< of the stand, the point, the change
    Q_PROPERTY(QString positionText READ positionText NOTIFY cardChanged) ///< "4 of 11 here", "4 of 11 up here"; "" unless settle
    Q_PROPERTY(QString cardOutcome READ cardOutcome NOTIFY cardChanged) ///< a chosen point that is settled already: "sound" "finding" "notInspected"; else "".
                                                                        ///< Then show outcomeText and "Settle again" (reopen) in place of the two keys.
    Q_PROPERTY(QString outcomeText READ outcomeText NOTIFY cardChanged)

    // Where the person is ("" and 0 before the first stand) and, for a card "go", where to.
    Q_PROPERTY(QString standId READ standId NOTIFY standChanged)
    Q_PROPERTY(QString standName READ standName NOTIFY standChanged)
    Q_PROPERTY(int standNumber READ standNumber NOTIFY standChanged)
    Q_PROPERTY(QString standText READ standText NOTIFY standChanged) ///< "Raised · one hand free"
    Q_PROPERTY(int standHands READ standHands NOTIFY standChanged)   ///< left free: 2, 1, 0
    Q_PROPERTY(bool standRaised READ standRaised NOTIFY standChanged)
    Q_PROPERTY(QString targetStandId READ targetStandId NOTIFY cardChanged)
    Q_PROPERTY(QString targetStandName READ targetStandName NOTIFY cardChanged)
    Q_PROPERTY(int targetStandNumber READ targetStandNumber NOTIFY cardChanged)
    Q_PROPERTY(QString targetStandText READ targetStandText NOTIFY cardChanged)

    Q_PROPERTY(ambit::view::StandPointsModel* here READ here CONSTANT)
    Q_PROPERTY(ambit::view::FigureModel* figure READ figure CONSTANT)
    Q_PROPERTY(ambit::view::OwedModel* owed READ owed CONSTANT)
    Q_PROPERTY(ambit::view::ReviewModel* review READ review CONSTANT)
    /// {id, name}: what could be opened outside its point, made(id).
    Q_PROPERTY(QVariantList openable READ openable NOTIFY progressChanged)
    /// {id, name, outcome, outcomeText}: every settled point, in listed order: what can be re-opened.
    Q_PROPERTY(QVariantList settledPoints READ settledPoints NOTIFY progressChanged)

public:
    /// Holds the round and its airframe; the services must outlive it.
    RoundView(const Services& services, Report report, std::unique_ptr<const airframe::Airframe> airframe,
              archive::OpenRound round, QObject* parent);

    // Touches. Each is committed when it returns true; on false nothing has changed and App.problem says why.
    Q_INVOKABLE bool atStand();       ///< card "go": I am there
    Q_INVOKABLE bool changeSetting(); ///< card "set": it is done
    Q_INVOKABLE bool settleSound(const QString& value = {});
    Q_INVOKABLE bool settleFinding(const QString& words, bool grounds, const QList<QUrl>& photos, const QString& value = {});
    Q_INVOKABLE bool settleNotInspected(const QString& why, const QString& basis);
    Q_INVOKABLE bool choosePoint(const QString& pointId); ///< puts a point on the card; "" gives it back to the plan
    Q_INVOKABLE bool reopen(const QString& pointId, const QString& reason);
    Q_INVOKABLE bool tapZone(const QString& zoneId); ///< the walk goes there next
    Q_INVOKABLE bool goTo(const QString& standId);   ///< I am at this stand, out of turn
    Q_INVOKABLE bool made(const QString& openingId);
    Q_INVOKABLE bool closed(const QString& openingId);
    Q_INVOKABLE bool pause();
    Q_INVOKABLE bool resume();
    Q_INVOKABLE bool note(const QString& words);
    Q_INVOKABLE bool restNotInspected(const QString& why, const QString& basis); ///< every unsettled point at once
    Q_INVOKABLE bool conclude(bool fit, const QString& reasons);
    Q_INVOKABLE bool withdraw(const QString& reason);
    /// What stands against concluding so, in words; empty: nothing. Ask again after progressChanged.
    Q_INVOKABLE [[nodiscard]] QStringList against(bool fit) const;
    /// Is this value within the card's limit? "" if so or if it is no number yet; else in words, "7.0 qt is above 4 to 6 qt".
    Q_INVOKABLE [[nodiscard]] QString outOfLimit(const QString& value) const;

    [[nodiscard]] QString roundId() const;
    [[nodiscard]] QString registration() const;
    [[nodiscard]] QString walkName() const;
    [[nodiscard]] QString notice() const;
    [[nodiscard]] QStringList generalCautions() const;
    [[nodiscard]] QString person() const;
    [[nodiscard]] int pointCount() const;
    [[nodiscard]] int settledCount() const { return settled; }
    [[nodiscard]] int findingCount() const { return findings; }
    [[nodiscard]] int owedCount() const { return owedRows.count(); }
    [[nodiscard]] QString planText() const;
    [[nodiscard]] int minutes() const;
    [[nodiscard]] QString phase() const;
    [[nodiscard]] QString pausedText() const;
    [[nodiscard]] bool concludedFit() const;
    [[nodiscard]] QString conclusionText() const;
    [[nodiscard]] QString reasons() const;
    [[nodiscard]] QString cardKind() const { return card.kind; }
    [[nodiscard]] QString cardTitle() const { return card.title; }
    [[nodiscard]] QString cardHow() const { return card.how; }
    [[nodiscard]] QString cardSetting() const { return card.setting; }
    [[nodiscard]] QString pointId() const;
    [[nodiscard]] QString sound() const;
    [[nodiscard]] QString unsound() const;
    [[nodiscard]] QString why() const;
    [[nodiscard]] bool measured() const;
    [[nodiscard]] QString quantity() const;
    [[nodiscard]] QString unit() const;
    [[nodiscard]] QString limitText() const;
    [[nodiscard]] QString limitSource() const;
    [[nodiscard]] bool findingGrounds() const;
    [[nodiscard]] QString lastTime() const;
    [[nodiscard]] QStringList cautions() const { return card.cautions; }
    [[nodiscard]] QString positionText() const;
    [[nodiscard]] QString cardOutcome() const { return card.outcome; }
    [[nodiscard]] QString outcomeText() const { return card.outcomeText; }
    [[nodiscard]] QString standId() const;
    [[nodiscard]] QString standName() const;
    [[nodiscard]] int standNumber() const;
    [[nodiscard]] QString standText() const;
    [[nodiscard]] int standHands() const;
    [[nodiscard]] bool standRaised() const;
    [[nodiscard]] QString targetStandId() const;
    [[nodiscard]] QString targetStandName() const;
    [[nodiscard]] int targetStandNumber() const;
    [[nodiscard]] QString targetStandText() const;
    [[nodiscard]] StandPointsModel* here() { return &hereRows; }
    [[nodiscard]] FigureModel* figure() { return figureModel; }
    [[nodiscard]] OwedModel* owed() { return &owedRows; }
    [[nodiscard]] ReviewModel* review() { return &reviewRows; }
    [[nodiscard]] QVariantList openable() const;
    [[nodiscard]] QVariantList settledPoints() const;

    // For SigningView.
    [[nodiscard]] archive::OpenRound& openRound() { return round; }
    /// Something else (the seal) has changed the round.
    void refresh();

signals:
    void touched(); ///< a touch was committed
    void progressChanged();
    void planChanged();
    void minutesChanged();
    void phaseChanged();
    void cardChanged();
    void standChanged();

private:
    [[nodiscard]] Result<void> act(round::What what, const std::vector<archive::PhotoBytes>& photos = {});
    [[nodiscard]] bool committed(const Result<void>& result); ///< shows the new state, or reports the error
    [[nodiscard]] bool settle(round::Settled what, const std::vector<archive::PhotoBytes>& photos = {});
    [[nodiscard]] Result<void> reach(const std::string& stand);
    void announce();
    [[nodiscard]] std::int64_t planSeq() const;
    [[nodiscard]] Instant now() const { return services->now().at; }
    [[nodiscard]] const round::State& state() const { return round.state(); }
    [[nodiscard]] const airframe::Stand* stand() const;
    [[nodiscard]] const airframe::Limit* limit() const;

    const Services* services;
    Report report;
    std::unique_ptr<const airframe::Airframe> airframe;
    archive::OpenRound round;
    LastTime earlier;
    std::vector<walk::Step> left; ///< round::remaining, after the last event
    const airframe::Point* chosen = nullptr;
    Card card;
    int settled = 0;
    int findings = 0;
    /// What was told last, so that only what changed is told again.
    struct Told {
        round::Phase phase{};
        std::optional<std::string> stand;
        std::int64_t planSeq = 0;
    } told;
    mutable std::optional<QString> planWords; ///< none: to be worked out when asked for
    FigureModel* figureModel;
    StandPointsModel hereRows;
    OwedModel owedRows;
    ReviewModel reviewRows;
    QTimer minuteTimer;
};

} // namespace ambit::view
