// A round that somebody else walks or has walked, at any moment of it: live, scrolled back, or replayed.
#pragma once

#include "model/card.hpp"
#include "model/figure_model.hpp"
#include "model/round_models.hpp"
#include "round/pace.hpp"

#include <QElapsedTimer>
#include <QTimer>
#include <memory>

namespace ambit::view {

/// What has been said of it, newest first: a list that grows at its head.
class ToldModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("FollowedRound makes it")
public:
    /// seq, atText ("07:42:10"), told ("Pitch link, blade A: sound"), look (of its mark; "" none)
    enum Role { SeqRole = Qt::UserRole, AtTextRole, ToldRole, LookRole };
    using RowsModel::RowsModel;

    struct Row {
        std::int64_t seq = 0;
        QString at, told, look;
        [[nodiscard]] std::int64_t key() const { return seq; }
        friend bool operator==(const Row&, const Row&) = default;
    };
    void update(std::vector<Row> next) { sync(rows, std::move(next), {}); }

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<Row> rows;
};

class FollowedRound : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("WatchView makes it")
    Q_PROPERTY(QString roundId READ roundId CONSTANT)
    Q_PROPERTY(QString registration READ registration CONSTANT)
    Q_PROPERTY(QString walkName READ walkName NOTIFY wordsChanged)
    Q_PROPERTY(QString person READ person CONSTANT)
    Q_PROPERTY(int pointCount READ pointCount CONSTANT)
    Q_PROPERTY(ambit::view::FigureModel* figure READ figure CONSTANT)
    Q_PROPERTY(ambit::view::StandPointsModel* here READ here CONSTANT)
    Q_PROPERTY(ambit::view::ToldModel* told READ told CONSTANT)

    // Where in it one is. Time is what was walked: pauses are left out.
    /// The end is shown, and goes on being.
    Q_PROPERTY(bool atEnd READ atEnd NOTIFY momentChanged)
    /// Seconds walked at what is shown, and in all.
    Q_PROPERTY(double seconds READ seconds NOTIFY ticked)
    Q_PROPERTY(double length READ length NOTIFY grown)
    /// "07:42:10"
    Q_PROPERTY(QString clockText READ clockText NOTIFY ticked)
    Q_PROPERTY(bool playing READ playing NOTIFY playingChanged)
    /// Times as fast as it was walked.
    Q_PROPERTY(int speed READ speed WRITE setSpeed NOTIFY playingChanged)
    /// {seconds, look}: what stands out along it: findings, not inspected, quick ones ("quick"), asks
    /// ("asked").
    Q_PROPERTY(QVariantList marks READ marks NOTIFY grown)

    // At the moment shown.
    Q_PROPERTY(int settledCount READ settledCount NOTIFY momentChanged)
    Q_PROPERTY(int findingCount READ findingCount NOTIFY momentChanged)
    Q_PROPERTY(int owedCount READ owedCount NOTIFY momentChanged)
    /// "walking" "paused" "concluded" "sealed"
    Q_PROPERTY(QString phase READ phase NOTIFY momentChanged)
    Q_PROPERTY(bool concludedFit READ concludedFit NOTIFY momentChanged)
    Q_PROPERTY(QString conclusionText READ conclusionText NOTIFY momentChanged)
    Q_PROPERTY(QString reasons READ reasons NOTIFY momentChanged)
    /// What the order has in hand: "settle" "set" "go" "done", its title, how.
    Q_PROPERTY(QString cardKind READ cardKind NOTIFY momentChanged)
    Q_PROPERTY(QString cardTitle READ cardTitle NOTIFY momentChanged)
    Q_PROPERTY(QString cardHow READ cardHow NOTIFY momentChanged)
    Q_PROPERTY(QString pointId READ pointId NOTIFY momentChanged)
    Q_PROPERTY(QString standId READ standId NOTIFY momentChanged)
    Q_PROPERTY(QString standName READ standName NOTIFY momentChanged)
    Q_PROPERTY(int standNumber READ standNumber NOTIFY momentChanged)
    Q_PROPERTY(QString standText READ standText NOTIFY momentChanged)
    Q_PROPERTY(QString targetStandId READ targetStandId NOTIFY momentChanged)
    /// "In hand for 12 s; takes about 8 s": by the device's clock at the end, by the log's before it. "":
    /// nothing is in hand.
    Q_PROPERTY(QString inHandText READ inHandText NOTIFY ticked)
    /// {stand, name, number, spentText, expectedText, share (spent of expected, at most 2), settled,
    /// quickText
    /// ("4 points in 3 s"; "" none), here (bool)}: the stands so far, as first reached.
    Q_PROPERTY(QVariantList stands READ stands NOTIFY momentChanged)
    /// {seq, seconds, text ("4 points in 3 s"), standName}
    Q_PROPERTY(QVariantList quick READ quick NOTIFY momentChanged)
    /// {ask, kind, title, words, who, became ("open" "settled" "answered" "declined" "told"), becameText}
    Q_PROPERTY(QVariantList asks READ asks NOTIFY momentChanged)
    /// {id, name, words, severity ("grounds" "assess"), photos: [source]}: what counts as found.
    Q_PROPERTY(QVariantList findings READ findings NOTIFY momentChanged)
public:
    /// `events`: a round's log, from its first event. Errors: those of round::fold.
    [[nodiscard]] static Result<std::unique_ptr<FollowedRound>>
    make(std::unique_ptr<const airframe::Airframe> airframe, std::vector<round::Event> events);

    /// Is deleted after whatever draws it: a screen's items go when the screen has, in a later turn.
    static void letGo(std::unique_ptr<FollowedRound> round);

    /// The log's next events. What is shown follows if the end was shown. Error: one that doesn't fit; those
    /// before it are in.
    [[nodiscard]] Result<void> add(const std::vector<round::Event>& events);

    Q_INVOKABLE void showEnd();
    /// Shows what there was when so many seconds were walked.
    Q_INVOKABLE void showAt(double seconds);
    /// Just after this event.
    Q_INVOKABLE void showEvent(int seq);
    /// From what is shown (from the beginning, where that is the end) until the end, or until it is stopped.
    Q_INVOKABLE void play();
    Q_INVOKABLE void stop();
    /// {id, name}: all points of the walk, in listed order, those of a zone only if it is given.
    Q_INVOKABLE [[nodiscard]] QVariantList points(const QString& zoneId = {}) const;

    [[nodiscard]] QString roundId() const;
    [[nodiscard]] QString registration() const;
    [[nodiscard]] QString walkName() const;
    [[nodiscard]] QString person() const;
    [[nodiscard]] int pointCount() const { return static_cast<int>(last.points.size()); }
    [[nodiscard]] FigureModel* figure() { return figureModel; }
    [[nodiscard]] StandPointsModel* here() { return &hereRows; }
    [[nodiscard]] ToldModel* told() { return &toldRows; }
    [[nodiscard]] bool atEnd() const { return !cursor; }
    [[nodiscard]] double seconds() const;
    [[nodiscard]] double length() const;
    [[nodiscard]] QString clockText() const;
    [[nodiscard]] bool playing() const { return ticker.isActive() && isPlaying; }
    [[nodiscard]] int speed() const { return times; }
    void setSpeed(int speed);
    [[nodiscard]] QVariantList marks() const;
    [[nodiscard]] int settledCount() const { return state().settledCount(); }
    [[nodiscard]] int findingCount() const { return state().findingCount(); }
    [[nodiscard]] int owedCount() const { return static_cast<int>(state().owed().size()); }
    [[nodiscard]] QString phase() const;
    [[nodiscard]] bool concludedFit() const { return state().conclusion && state().conclusion->fit; }
    [[nodiscard]] QString conclusionText() const;
    [[nodiscard]] QString reasons() const;
    [[nodiscard]] QString cardKind() const { return card.kind; }
    [[nodiscard]] QString cardTitle() const { return card.title; }
    [[nodiscard]] QString cardHow() const { return card.how; }
    [[nodiscard]] QString pointId() const;
    [[nodiscard]] QString standId() const;
    [[nodiscard]] QString standName() const;
    [[nodiscard]] int standNumber() const;
    [[nodiscard]] QString standText() const;
    [[nodiscard]] QString targetStandId() const;
    [[nodiscard]] QString inHandText() const;
    [[nodiscard]] QVariantList stands() const;
    [[nodiscard]] QVariantList quick() const;
    [[nodiscard]] QVariantList asks() const;
    [[nodiscard]] QVariantList findings() const;

    // Of the end, for whoever looks after several.
    [[nodiscard]] const airframe::Airframe& described() const { return *airframe; }
    [[nodiscard]] const round::State& lastState() const { return last; }
    [[nodiscard]] const std::vector<round::Event>& events() const { return log; }
    [[nodiscard]] const round::Pace& lastPace() const { return pace; }
    /// What the walker's clock says now, as far as it can be known: events come later than they were.
    [[nodiscard]] Instant walkerNow() const;
    void setNow(std::function<Instant()> clock) { now = std::move(clock); }
    /// The same airframe in another language.
    void sayIn(airframe::Airframe other);
    /// What an Image takes for a photo's hash, where it isn't the archive of records that has it.
    void setPhotoSource(std::function<QString(const std::string&)> from) { photoFrom = std::move(from); }

signals:
    void momentChanged(); ///< other events are shown
    void grown();         ///< the log has
    void wordsChanged();  ///< another language is spoken
    void playingChanged();
    void ticked(); ///< time goes on: each second, and with each event

private:
    FollowedRound(std::unique_ptr<const airframe::Airframe> airframe, std::vector<round::Event> events,
                  round::State state);
    [[nodiscard]] const round::State& state() const { return shown ? *shown : last; }
    [[nodiscard]] std::size_t shownCount() const { return cursor ? *cursor : log.size(); }
    [[nodiscard]] round::Pace shownPace() const;
    [[nodiscard]] const airframe::Stand* stand() const;
    void measure();
    void showCount(std::optional<std::size_t> count);
    void update();
    void tick();
    void tellLog();

    std::unique_ptr<airframe::Airframe> airframe; ///< in the language of the screens
    std::vector<round::Event> log;
    std::vector<std::int64_t> walkedMs; ///< at each event
    round::State last;                  ///< after the whole log
    round::Pace pace;                   ///< of the whole log
    std::optional<std::size_t> cursor;  ///< events shown; none: all, and those to come
    std::optional<round::State> shown;  ///< after them
    double moment = 0;                  ///< seconds shown, where `cursor` is
    std::vector<walk::Step> left;
    Card card;
    FigureModel* figureModel;
    StandPointsModel hereRows;
    ToldModel toldRows;
    std::function<Instant()> now;
    std::function<QString(const std::string&)> photoFrom;
    std::int64_t behindMs = 0; ///< the least that an event came later than its time
    bool isBehindKnown = false;
    QTimer ticker;
    QElapsedTimer playedAt;
    bool isPlaying = false;
    int times = 8;
};

} // namespace ambit::view
