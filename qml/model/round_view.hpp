// A round being walked, as a screen shows it. No rules here: touches go to core, what core says is shown.
#pragma once

#include "archive/open_round.hpp"
#include "archive/series.hpp"
#include "model/card.hpp"
#include "model/carried.hpp"
#include "model/figure_model.hpp"
#include "model/habits.hpp"
#include "model/last_time.hpp"
#include "model/photos_ahead.hpp"
#include "model/round_models.hpp"
#include "model/services.hpp"
#include "record/key.hpp"

#include <QTimer>
#include <set>

namespace ambit::view {

class RoundView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")

    Q_PROPERTY(QString roundId READ roundId CONSTANT)
    Q_PROPERTY(QString registration READ registration CONSTANT)
    Q_PROPERTY(QString walkName READ walkName NOTIFY wordsChanged)
    /// The airframe's: what has the last word.
    Q_PROPERTY(QString notice READ notice NOTIFY wordsChanged)
    /// The airframe's, for the whole walk.
    Q_PROPERTY(QStringList generalCautions READ generalCautions NOTIFY wordsChanged)
    /// Who walks.
    Q_PROPERTY(QString person READ person CONSTANT)
    Q_PROPERTY(int pointCount READ pointCount NOTIFY progressChanged)
    /// Walked on one's own: what others found that day is not shown.
    Q_PROPERTY(bool alone READ alone CONSTANT)

    Q_PROPERTY(int settledCount READ settledCount NOTIFY progressChanged)
    Q_PROPERTY(int findingCount READ findingCount NOTIFY progressChanged)
    Q_PROPERTY(int owedCount READ owedCount NOTIFY progressChanged)
    /// "112 m · 3 climbs · about 31 min", "367 ft · …": what was left when the plan was made.
    Q_PROPERTY(QString planText READ planText NOTIFY planChanged)
    /// What moved in the order last, and why; "" once the pilot has gone on from there.
    Q_PROPERTY(QString orderText READ orderText NOTIFY orderChanged)
    /// Since the start, pauses left out.
    Q_PROPERTY(int minutes READ minutes NOTIFY minutesChanged)

    /// "walking" "paused" "concluded" "sealed"
    Q_PROPERTY(QString phase READ phase NOTIFY phaseChanged)
    /// "Paused since 07:42"; "" if not paused.
    Q_PROPERTY(QString pausedText READ pausedText NOTIFY phaseChanged)
    Q_PROPERTY(bool concludedFit READ concludedFit NOTIFY phaseChanged)
    /// In words; "" before.
    Q_PROPERTY(QString conclusionText READ conclusionText NOTIFY phaseChanged)
    Q_PROPERTY(QString reasons READ reasons NOTIFY phaseChanged)

    /// The card in hand. "go": walk to targetStand*, then atStand(). "set": change the setting (cardTitle,
    /// cardHow), then changeSetting(). "settle": the point, one of the settle…() calls. "done": all settled,
    /// on to the review.
    Q_PROPERTY(QString cardKind READ cardKind NOTIFY cardChanged)
    /// "Pitch link, blade A"; "Go to “Left mast tread”"; "Main rotor: Blade B aft".
    Q_PROPERTY(QString cardTitle READ cardTitle NOTIFY cardChanged)
    /// settle: "Look · Feel"; set: how it is changed; go: how one stands there, "Raised · one hand free".
    Q_PROPERTY(QString cardHow READ cardHow NOTIFY cardChanged)
    /// settle: settings the point needs, "Blade A aft"; "" if any.
    Q_PROPERTY(QString cardSetting READ cardSetting NOTIFY cardChanged)
    /// settle only.
    Q_PROPERTY(QString pointId READ pointId NOTIFY cardChanged)
    /// What sound looks like, what isn't, why it matters.
    Q_PROPERTY(QString sound READ sound NOTIFY cardChanged)
    Q_PROPERTY(QString unsound READ unsound NOTIFY cardChanged)
    Q_PROPERTY(QString why READ why NOTIFY cardChanged)
    /// settleSound and settleFinding need a value.
    Q_PROPERTY(bool measured READ measured NOTIFY cardChanged)
    /// "oil level", "qt", "4 to 6 qt", and where the limit comes from.
    Q_PROPERTY(QString quantity READ quantity NOTIFY cardChanged)
    Q_PROPERTY(QString unit READ unit NOTIFY cardChanged)
    Q_PROPERTY(QString limitText READ limitText NOTIFY cardChanged)
    Q_PROPERTY(QString limitSource READ limitSource NOTIFY cardChanged)
    /// Names of units in which the value may be entered, the limit's own first.
    Q_PROPERTY(QStringList units READ units NOTIFY cardChanged)
    /// What was measured in a photo, for the card's point: "2.1", in units[0] or one of its quantity; "".
    Q_PROPERTY(QString keptValue READ keptValue NOTIFY cardChanged)
    Q_PROPERTY(QString keptUnit READ keptUnit NOTIFY cardChanged)
    /// "Photo · 2.1 mm"; one for each photo kept for the card's point, dropKept(row).
    Q_PROPERTY(QStringList keptTexts READ keptTexts NOTIFY cardChanged)
    /// What a typed value is read from, "gauge" and so on (EVENT.md); "": not said. As the airframe says,
    /// until tellReading.
    Q_PROPERTY(QString valueFrom READ valueFrom NOTIFY readingChanged)
    /// {id, name "Read on a gauge"}: all that there are.
    Q_PROPERTY(QVariantList sources READ sources NOTIFY wordsChanged)
    /// Where the point's values are going, by what records say: one sentence each; empty: too little is
    /// known.
    Q_PROPERTY(QStringList trendTexts READ trendTexts NOTIFY cardChanged)
    /// A finding here always grounds: no choice of class.
    Q_PROPERTY(bool findingGrounds READ findingGrounds NOTIFY cardChanged)
    /// What the aircraft carries at this point: "Found 3 days ago: …", below it "Deferred 2 days ago on …:
    /// has it grown?"; "" if nothing is known to be open there.
    Q_PROPERTY(QString carriedText READ carriedText NOTIFY cardChanged)
    /// "sound · 3 days ago, 4.2 flight hours"; "" if there is nothing earlier.
    Q_PROPERTY(QString lastTime READ lastTime NOTIFY cardChanged)
    /// Of the stand, the point, the change.
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY cardChanged)
    /// settle: it belongs to the last look, once round with empty hands.
    Q_PROPERTY(bool lastLook READ lastLook NOTIFY cardChanged)
    /// What was open or fitted in this round, to be looked for: "Fuel cap, Left cowl door"; "" if nothing.
    Q_PROPERTY(QString openedText READ openedText NOTIFY progressChanged)
    /// "4 of 11 here", "4 of 11 up here"; "" unless settle.
    Q_PROPERTY(QString positionText READ positionText NOTIFY cardChanged)
    /// Of a chosen point that is settled already: "sound" "finding" "notInspected"; else "". Then show
    /// outcomeText and "Settle again" (reopen) in place of the two keys.
    Q_PROPERTY(QString cardOutcome READ cardOutcome NOTIFY cardChanged)
    Q_PROPERTY(QString outcomeText READ outcomeText NOTIFY cardChanged)

    /// Where the person is: "" and 0 before the first stand. standText: "Raised · one hand free";
    /// standHands: left free, 2, 1 or 0.
    Q_PROPERTY(QString standId READ standId NOTIFY standChanged)
    Q_PROPERTY(QString standName READ standName NOTIFY standChanged)
    Q_PROPERTY(int standNumber READ standNumber NOTIFY standChanged)
    Q_PROPERTY(QString standText READ standText NOTIFY standChanged)
    Q_PROPERTY(int standHands READ standHands NOTIFY standChanged)
    Q_PROPERTY(bool standRaised READ standRaised NOTIFY standChanged)
    /// For a card "go": where to.
    Q_PROPERTY(QString targetStandId READ targetStandId NOTIFY cardChanged)
    Q_PROPERTY(QString targetStandName READ targetStandName NOTIFY cardChanged)
    Q_PROPERTY(int targetStandNumber READ targetStandNumber NOTIFY cardChanged)
    Q_PROPERTY(QString targetStandText READ targetStandText NOTIFY cardChanged)

    // Where reality differs from the airframe's description.
    /// {id, name, why, sinceText}: stands that can't be used, freeStand(id).
    Q_PROPERTY(QVariantList blockedStands READ blockedStands NOTIFY differsChanged)
    /// {area, why, sinceText}: what is marked as in the way, clearArea(area).
    Q_PROPERTY(QVariantList markedAreas READ markedAreas NOTIFY differsChanged)
    Q_PROPERTY(bool lightLow READ lightLow NOTIFY differsChanged)

    // What somebody who follows asks.
    /// {ask, kind "lookAgain" "question" "remark", title, words, who, sinceText}: what is open, and remarks
    /// not read yet; in the order it came. answer(ask, …), decline(ask, …), readRemark(ask).
    Q_PROPERTY(QVariantList asks READ asks NOTIFY asksChanged)
    /// Who asks to look again at the card's point, and their words; "" if nobody.
    Q_PROPERTY(QString askedText READ askedText NOTIFY cardChanged)

    Q_PROPERTY(ambit::view::StandPointsModel* here READ here CONSTANT)
    Q_PROPERTY(ambit::view::FigureModel* figure READ figure CONSTANT)
    Q_PROPERTY(ambit::view::OwedModel* owed READ owed CONSTANT)
    Q_PROPERTY(ambit::view::ReviewModel* review READ review CONSTANT)
    /// {id, name}: what could be opened outside its point, made(id).
    Q_PROPERTY(QVariantList openable READ openable NOTIFY progressChanged)
    /// {id, name, outcome, outcomeText}: every settled point, in listed order: what can be re-opened.
    Q_PROPERTY(QVariantList settledPoints READ settledPoints NOTIFY progressChanged)
public:
    /// Holds the round and its airframe; the services and habits must outlive it.
    RoundView(const Services& services, const Habits& habits, Report report,
              std::unique_ptr<const airframe::Airframe> airframe, archive::OpenRound round, QObject* parent);

    // Touches. Each is committed when it returns true; on false nothing has changed and App.problem says why.
    /// Card "go": I am there.
    Q_INVOKABLE bool atStand();
    /// Card "set": it is done.
    Q_INVOKABLE bool changeSetting();
    /// `unit`: one of `units`; "": the limit's. `renewed`: the part was, since its last value. What was kept
    /// of photos for the point goes with it.
    Q_INVOKABLE bool settleSound(const QString& value = {}, const QString& unit = {}, bool renewed = false);
    /// Begins to read the photos that a finding has so far, beside what the screen does.
    Q_INVOKABLE void expectPhotos(const QVariantList& photos);
    /// `photos`: file URLs, as a script's array or a list.
    Q_INVOKABLE bool settleFinding(const QString& words, bool grounds, const QVariantList& photos,
                                   const QString& value = {}, const QString& unit = {}, bool renewed = false);
    /// How a value about to be typed for the card's point is read, and how well (standard uncertainty in
    /// `unit`; either may be ""). Holds until the point is settled or another comes onto the card.
    Q_INVOKABLE void tellReading(const QString& from, const QString& uncertainty, const QString& unit);
    /// That uncertainty in a unit: "0.3"; "": not stated.
    Q_INVOKABLE [[nodiscard]] QString uncertaintyIn(const QString& unit) const;
    /// "29.4 to 30.6 psi in 95 of 100 cases"; "" without an uncertainty, or if it is no number yet.
    Q_INVOKABLE [[nodiscard]] QString intervalIn(const QString& value, const QString& unit) const;
    /// A photo kept for the card's point is left out again.
    Q_INVOKABLE void dropKept(int row);
    Q_INVOKABLE bool settleNotInspected(const QString& why, const QString& basis);
    /// Puts a point on the card; "" gives it back to the plan.
    Q_INVOKABLE bool choosePoint(const QString& pointId);
    Q_INVOKABLE bool reopen(const QString& pointId, const QString& reason);
    /// The walk goes there next.
    Q_INVOKABLE bool tapZone(const QString& zoneId);
    /// I am at this stand, out of turn.
    Q_INVOKABLE bool goTo(const QString& standId);
    Q_INVOKABLE bool blockStand(const QString& standId, const QString& reason);
    Q_INVOKABLE bool freeStand(const QString& standId);
    /// `corners`: list of points as the figure has them, metres with y down.
    Q_INVOKABLE bool markArea(const QVariantList& corners, const QString& reason);
    Q_INVOKABLE bool clearArea(int area);
    Q_INVOKABLE bool tellLight(bool low);
    Q_INVOKABLE bool answer(int ask, const QString& words);
    Q_INVOKABLE bool decline(int ask, const QString& reason);
    /// Not shown any more, as long as the program runs: the log knows only that it was told.
    Q_INVOKABLE void readRemark(int ask);
    Q_INVOKABLE bool made(const QString& openingId);
    Q_INVOKABLE bool closed(const QString& openingId);
    Q_INVOKABLE bool pause();
    Q_INVOKABLE bool resume();
    Q_INVOKABLE bool note(const QString& words);
    /// Every unsettled point at once.
    Q_INVOKABLE bool restNotInspected(const QString& why, const QString& basis);
    Q_INVOKABLE bool conclude(bool fit, const QString& reasons);
    Q_INVOKABLE bool withdraw(const QString& reason);
    /// What stands against concluding so, in words; empty: nothing. Ask again after progressChanged.
    Q_INVOKABLE [[nodiscard]] QStringList against(bool fit) const;
    /// Is this value within the card's limit? "" if so or if it is no number yet; else in words, "7.0 qt is
    /// above 4 to 6 qt".
    Q_INVOKABLE [[nodiscard]] QString outOfLimit(const QString& value, const QString& unit = {}) const;
    /// What doesn't stand against the conclusion but should be known beside it: values near their limit.
    Q_INVOKABLE [[nodiscard]] QStringList warnings() const;

    [[nodiscard]] QString roundId() const;
    [[nodiscard]] QString registration() const;
    [[nodiscard]] QString walkName() const;
    [[nodiscard]] QString notice() const;
    [[nodiscard]] QStringList generalCautions() const;
    [[nodiscard]] QString person() const;
    [[nodiscard]] int pointCount() const;
    [[nodiscard]] bool alone() const { return state().alone; }
    [[nodiscard]] int settledCount() const { return settled; }
    [[nodiscard]] int findingCount() const { return findings; }
    [[nodiscard]] int owedCount() const { return owedRows.count(); }
    [[nodiscard]] QString planText() const { return planWords; }
    [[nodiscard]] QString orderText() const { return orderWords; }
    [[nodiscard]] QVariantList blockedStands() const;
    [[nodiscard]] QVariantList markedAreas() const;
    [[nodiscard]] bool lightLow() const { return state().lightLow; }
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
    [[nodiscard]] QStringList units() const;
    [[nodiscard]] QString keptValue() const;
    [[nodiscard]] QString keptUnit() const;
    [[nodiscard]] QStringList keptTexts() const;
    [[nodiscard]] QString valueFrom() const;
    [[nodiscard]] QVariantList sources() const;
    [[nodiscard]] QStringList trendTexts() const { return trendWords; }
    [[nodiscard]] bool findingGrounds() const;
    [[nodiscard]] QString carriedText() const;
    [[nodiscard]] QString lastTime() const;
    [[nodiscard]] QStringList cautions() const { return card.cautions; }
    [[nodiscard]] bool lastLook() const { return card.point != nullptr && card.point->lastLook; }
    [[nodiscard]] QString openedText() const;
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
    [[nodiscard]] QVariantList asks() const;
    [[nodiscard]] QString askedText() const;

    /// What came from another device, by a connection with this certificate: committed and shown, or refused
    /// in words for whoever sent it; the one who walks sees nothing of a refusal.
    [[nodiscard]] Result<void> hear(std::string_view statement, std::string_view jws,
                                    const record::Certificate& peer);
    [[nodiscard]] Result<void> hear(round::Asked asked); ///< signed already

    /// From the aircraft's file, once that has been read.
    void setCarried(Carried carried);
    /// What records say was measured, once they have been read. Where a value of this round is going is told
    /// in its log.
    void setSeries(archive::Series series);
    /// The points that are measured, for reading that.
    [[nodiscard]] std::vector<std::string> measuredPoints() const;
    /// From MeasureView: goes with the card's point when it is settled; lost if another point is.
    void keepPhoto(archive::PhotoBytes photo, std::optional<round::Measurement> measurement);
    /// The language is another one: puts into words again what it keeps.
    void sayAnew();

    /// For those who see to how it is walked: as a touch that says this.
    [[nodiscard]] bool commit(round::What what);
    /// As settleSound and settleFinding, told by a key; the finding's words are still to come.
    [[nodiscard]] bool settleByKey(round::Outcome outcome);
    [[nodiscard]] const std::vector<walk::Step>& whatIsLeft() const { return left; }

    // For SigningView.
    [[nodiscard]] archive::OpenRound& openRound() { return round; }
    [[nodiscard]] const archive::OpenRound& openRound() const { return round; }
    /// Its airframe in the language of the screens: for what is shown and said. As recorded:
    /// openRound().airframe().
    [[nodiscard]] const airframe::Airframe& shown() const { return *airframe; }
    /// Something else (the seal) has changed the round.
    void refresh();

signals:
    void touched(); ///< a touch was committed
    void logged();  ///< the log has grown, and what it says is in the values already; told at once
    void progressChanged();
    void planChanged();
    void orderChanged();
    void differsChanged();
    void asksChanged();
    void minutesChanged();
    void phaseChanged();
    void cardChanged();
    void readingChanged(); ///< of valueFrom, uncertaintyIn and intervalIn
    void standChanged();
    void wordsChanged(); ///< another language is spoken

private:
    [[nodiscard]] Result<void> heard(const std::function<Result<void>()>& take);
    [[nodiscard]] Result<void> act(round::What what, const std::vector<archive::PhotoBytes>& photos = {});
    [[nodiscard]] bool committed(const Result<void>& result); ///< shows the new state, or reports the error
    [[nodiscard]] bool settle(round::Settled what, const std::vector<archive::PhotoBytes>& photos = {});
    void takeMeasured(round::Settled& what, const QString& value, const QString& unit, bool renewed,
                      std::vector<archive::PhotoBytes>& pictures) const;
    [[nodiscard]] std::optional<round::Past> measuredNow(const std::string& point) const;
    [[nodiscard]] std::vector<round::Past> pastOf(const std::string& point) const;
    void tellTrends();
    void wordTrend();
    [[nodiscard]] Result<void> reach(const std::string& stand);
    [[nodiscard]] bool differ(round::What what);
    [[nodiscard]] bool isShown(std::int64_t number, const round::Ask& ask) const;
    void tellOrder();
    void announce();
    void tell();
    [[nodiscard]] std::int64_t planSeq() const;
    [[nodiscard]] QString costOfTheRest() const;
    [[nodiscard]] Instant now() const { return services->now().at; }
    [[nodiscard]] const round::State& state() const { return round.state(); }
    [[nodiscard]] const airframe::Stand* stand() const;
    [[nodiscard]] const airframe::Limit* limit() const;

    const Services* services;
    const Habits* habits;
    PhotosAhead photosAhead;
    Report report;
    std::unique_ptr<const airframe::Airframe> written; ///< what is recorded; the round's
    archive::OpenRound round;
    /// The same in the language of the screens, for all that is shown and said; never put into an event.
    std::unique_ptr<airframe::Airframe> airframe;
    LastTime earlier;
    archive::Series series;
    /// Photos for the point on the card, with what was measured in them.
    struct Kept {
        archive::PhotoBytes photo;
        std::vector<round::Measurement> measurements;
    };
    std::string keptFor;
    std::vector<Kept> kept;
    struct Reading {
        std::string point = {};
        std::optional<airframe::Means> from = {};
        std::string uncertainty = {};
        std::string unit = {};
    };
    [[nodiscard]] Reading reading() const;
    [[nodiscard]] std::string uncertaintyNow(const std::string& unit) const;
    Reading readTold;         ///< as told, of the point on the card
    bool seriesKnown = false; ///< what records say has been read
    QStringList trendWords;   ///< of the point on the card
    std::string trendFor;
    Carried carried;
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
        QString order;
        std::int64_t differsSeq = 0;
        QVariantList asks;
    } told;
    bool announcing = false;
    std::int64_t loggedSeq = 0; ///< of the last event that was told
    std::int64_t plannedAt = 0; ///< number of the event that made the plan
    QString planWords;
    QString orderWords;
    std::int64_t keptAt = 0;     ///< number of the event that might have changed the order and didn't
    Sentence keptBecause;        ///< of it
    std::int64_t differsSeq = 0; ///< of the last event by which reality differs
    std::set<std::int64_t> remarksRead;
    FigureModel* figureModel;
    StandPointsModel hereRows;
    OwedModel owedRows;
    ReviewModel reviewRows;
    QTimer minuteTimer;
};

} // namespace ambit::view
