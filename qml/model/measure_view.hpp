// A photo in hand: the card in it, marks, and what comes of them. Nothing is kept until a person has looked
// at the card's corners and says so.
#pragma once

#include "archive/series.hpp"
#include "measure/find.hpp"
#include "model/background.hpp"
#include "model/habits.hpp"
#include "model/round_view.hpp"
#include "model/services.hpp"

#include <QImage>
#include <QPointF>

namespace ambit::view {

class MeasureView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// "none": no photo; "reading"; "photo": one is there; "corners": those of the card are looked at, one by
    /// one; "marks": the card is confirmed, or there is none.
    Q_PROPERTY(QString phase READ phase NOTIFY changed)
    /// What was seen of a card, or why none, and what to do.
    Q_PROPERTY(QString cardText READ cardText NOTIFY changed)
    /// "distance", "margin", "area", "width", "slip", "offset"
    Q_PROPERTY(QString what READ what NOTIFY changed)
    /// {id, name}
    Q_PROPERTY(QVariantList kinds READ kinds NOTIFY changed)
    Q_PROPERTY(bool withCard READ withCard NOTIFY changed)
    /// What is to be marked next: "Mark the first end."; "" when all is.
    Q_PROPERTY(QString askText READ askText NOTIFY changed)
    /// "2.1 mm"; "" before all is marked, and where it is refused.
    Q_PROPERTY(QString resultText READ resultText NOTIFY changed)
    /// "1.9 to 2.3 mm (95 %)", and how it stands to the limit.
    Q_PROPERTY(QString intervalText READ intervalText NOTIFY changed)
    Q_PROPERTY(QString refusalText READ refusalText NOTIFY changed)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY changed)
    /// Which way the card lies isn't told by the photo: a person says it, longSideFirst(bool).
    Q_PROPERTY(bool asksSide READ asksSide NOTIFY changed)
    /// The corner or mark in hand, looked at closely; -1: none, the whole photo is seen.
    Q_PROPERTY(int held READ held NOTIFY heldChanged)
    /// Ends of a length that is known, after the marks: 0 to 2 of them.
    Q_PROPERTY(int knownCount READ knownCount NOTIFY changed)
    /// The last photo of this point: "12 days ago · Robin Example"; "": none.
    Q_PROPERTY(QString lastText READ lastText NOTIFY lastChanged)
    Q_PROPERTY(QString lastSource READ lastSource NOTIFY lastChanged)
    /// Both photos have a card: compared at one scale.
    Q_PROPERTY(bool sameScale READ sameScale NOTIFY changed)
public:
    MeasureView(const Services& services, const Habits& habits, Background& background, Report report,
                QObject* parent);

    void setRound(RoundView* round);

    /// Begins for the point on the card: looks up its last photo. `what`: "" as the limit's unit suggests.
    Q_INVOKABLE void begin();
    /// Reads a photo and looks for a card in it, beside the screen.
    Q_INVOKABLE void read(const QUrl& file);
    Q_INVOKABLE void leave(); ///< the photo is put away
    Q_INVOKABLE void lookAtCorners();
    Q_INVOKABLE void confirmCard();
    /// No card lies there: only an angle can be measured.
    Q_INVOKABLE void goWithoutCard();
    Q_INVOKABLE void longSideFirst(bool is);
    Q_INVOKABLE void choose(const QString& what);
    /// Millimetres, as typed; "": none is known.
    Q_INVOKABLE void tellKnown(const QString& length);
    /// In the whole photo: takes the corner or mark that is there in hand, or makes the next mark there.
    /// Pixels.
    Q_INVOKABLE void touch(qreal x, qreal y, qreal reach);
    /// Moves what is held.
    Q_INVOKABLE void nudge(qreal dx, qreal dy);
    /// The next corner or mark in hand, after the last the whole photo again.
    Q_INVOKABLE void next();
    Q_INVOKABLE void letGo();
    Q_INVOKABLE void takeBack(); ///< the last mark, or known end
    /// What was measured goes to the round's card, with the photo.
    Q_INVOKABLE bool keep();
    /// The photo alone does, to be compared with next time.
    Q_INVOKABLE bool keepPhoto();

    [[nodiscard]] QString phase() const;
    [[nodiscard]] QString cardText() const;
    [[nodiscard]] QString what() const;
    [[nodiscard]] QVariantList kinds() const;
    [[nodiscard]] bool withCard() const { return hasCard; }
    [[nodiscard]] QString askText() const;
    [[nodiscard]] QString resultText() const;
    [[nodiscard]] QString intervalText() const;
    [[nodiscard]] QString refusalText() const;
    [[nodiscard]] bool canKeep() const { return phaseNow == Phase::marks && result && result->has_value(); }
    [[nodiscard]] bool asksSide() const { return sideIsOpen; }
    [[nodiscard]] int held() const { return inHand; }
    [[nodiscard]] int knownCount() const { return static_cast<int>(knownEnds.size()); }
    [[nodiscard]] QString lastText() const;
    [[nodiscard]] QString lastSource() const;
    [[nodiscard]] bool sameScale() const;

    // For what draws it.
    [[nodiscard]] const QImage& picture() const { return image; }
    [[nodiscard]] const std::vector<QPointF>& corners() const { return cornersAt; }
    [[nodiscard]] const std::vector<QPointF>& marks() const { return marksAt; }
    [[nodiscard]] const std::vector<QPointF>& known() const { return knownEnds; }
    [[nodiscard]] bool looksAtCorners() const { return phaseNow == Phase::corners; }
    [[nodiscard]] bool isMarking() const { return phaseNow == Phase::marks; }
    [[nodiscard]] QPointF heldAt() const;
    [[nodiscard]] round::Measurement::What kind() const { return whatNow; }
    /// Of a photo with a card: its pixels to the plane's millimetres. None without.
    [[nodiscard]] std::optional<measure::Homography> plane() const;
    [[nodiscard]] const QImage& lastPicture() const { return lastImage; }
    [[nodiscard]] std::optional<measure::Homography> lastPlane() const;
    [[nodiscard]] std::vector<QPointF> lastMarks() const;

signals:
    void changed();
    void heldChanged();
    void lastChanged();

private:
    enum class Phase { none, reading, photo, corners, marks };
    struct Taken {
        archive::PhotoBytes photo;
        QImage image;
        Result<measure::Found> found;
    };

    void took(Result<Taken> taken);
    void compute();
    void becomes(Phase phase);
    [[nodiscard]] std::vector<QPointF>& heldList();
    [[nodiscard]] round::Measurement measurement() const;
    [[nodiscard]] const airframe::Limit* limit() const;

    const Services* services;
    const Habits* habits;
    Background* background;
    Report report;
    RoundView* round = nullptr;

    Phase phaseNow = Phase::none;
    int question = 0;
    archive::PhotoBytes photo;
    QImage image;
    std::optional<Result<measure::Found>> found;
    bool hasCard = true;
    bool byHand = false;
    bool sideIsOpen = false; ///< which way the card lies
    std::optional<measure::Lies> lies;
    round::Measurement::What whatNow{};
    std::vector<QPointF> cornersAt;
    std::vector<QPointF> marksAt;
    std::vector<QPointF> knownEnds;
    std::string knownLength;
    int inHand = -1;
    std::optional<Result<measure::Estimate>> result;

    std::string pointId;
    std::optional<archive::PhotoSeen> last;
    QImage lastImage;
};

} // namespace ambit::view
