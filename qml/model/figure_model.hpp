// The figure as a screen draws it: metres, x to the right, y DOWN (the nose is up), so that a screen only has
// to scale.
#pragma once

#include "model/rows_model.hpp"
#include "model/scene.hpp"
#include "walk/ways.hpp"

#include <QPointF>
#include <QRectF>
#include <QVariant>
#include <map>

namespace ambit::view {

/// Tappable areas.
class ZonesModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("FigureModel makes it")
public:
    /// zoneId, name, outline (list of points, metres), look ("none": nothing of this walk there; "todo"
    /// "sound" "finding" "notInspected"), current (bool: the card's point is there), openOwed (bool:
    /// something there is open), settled and total (int: points)
    enum Role {
        ZoneIdRole = Qt::UserRole,
        NameRole,
        OutlineRole,
        LookRole,
        CurrentRole,
        OpenOwedRole,
        SettledRole,
        TotalRole
    };
    using RowsModel::RowsModel;

    void update(const Scene& scene);

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Row {
        const airframe::Zone* zone = nullptr;
        Look look{};
        bool current = false;
        bool openOwed = false;
        int settled = 0;
        int total = 0;
        [[nodiscard]] const airframe::Zone* key() const { return zone; }
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> rows;
};

/// The places to stand that this walk uses, numbered in the order in which they are reached; and those that
/// can't be used, without a number where the walk doesn't come by.
class StandsModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("FigureModel makes it")
public:
    /// standId, name, number (1…), placeX, placeY (metres), raised (bool), look ("done" "current" "ahead"),
    /// blocked (why it can't be used; "": it can)
    enum Role {
        StandIdRole = Qt::UserRole,
        NameRole,
        NumberRole,
        PlaceXRole,
        PlaceYRole,
        RaisedRole,
        LookRole,
        BlockedRole
    };
    using RowsModel::RowsModel;

    void update(const Scene& scene);
    /// 0: this walk doesn't use it.
    [[nodiscard]] int numberOf(const std::string& stand) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    enum class Where { done, current, ahead };
    struct Row {
        const airframe::Stand* stand = nullptr;
        int number = 0;
        Where where{};
        std::string blocked;
        [[nodiscard]] const airframe::Stand* key() const { return stand; }
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> rows;
};

class FigureModel : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("RoundView makes it")
    /// Everything that is drawn, metres: parts, zones, stands, the walk's start.
    Q_PROPERTY(QRectF bounds READ bounds CONSTANT)
    /// What to draw from the bottom up in today's settings: list of {id, kind (body glass wing tail rotor
    /// propeller gear tread), outline: [point], solid}.
    Q_PROPERTY(QVariantList parts READ parts NOTIFY partsChanged)
    Q_PROPERTY(ambit::view::ZonesModel* zones READ zones CONSTANT)
    Q_PROPERTY(ambit::view::StandsModel* stands READ stands CONSTANT)
    /// Polylines in metres, a list of lists of points, one a leg: walked already; still to walk, the next leg
    /// first.
    Q_PROPERTY(QVariantList wayDone READ wayDone NOTIFY wayChanged)
    Q_PROPERTY(QVariantList wayAhead READ wayAhead NOTIFY wayChanged)
    /// What is marked as in the way: list of {area (its number), why, outline: [point]}.
    Q_PROPERTY(QVariantList marked READ marked NOTIFY markedChanged)
    /// From the person's place to the middle of the zone on the card: an arrow, if `reaching`.
    Q_PROPERTY(bool reaching READ reaching NOTIFY reachChanged)
    Q_PROPERTY(QPointF reachFrom READ reachFrom NOTIFY reachChanged)
    Q_PROPERTY(QPointF reachTo READ reachTo NOTIFY reachChanged)
public:
    FigureModel(const airframe::Airframe& airframe, const std::string& walkId, QObject* parent);

    void update(const Scene& scene);
    void sayAnew(); ///< the airframe has other words now

    /// "2.5 m", "8 ft": to what a finger can set.
    Q_INVOKABLE [[nodiscard]] static QString lengthText(double metres);

    [[nodiscard]] QRectF bounds() const { return box; }
    [[nodiscard]] QVariantList parts() const { return drawn; }
    [[nodiscard]] ZonesModel* zones() { return &zoneRows; }
    [[nodiscard]] StandsModel* stands() { return &standRows; }
    [[nodiscard]] QVariantList wayDone() const { return done; }
    [[nodiscard]] QVariantList wayAhead() const { return ahead; }
    [[nodiscard]] QVariantList marked() const { return marks; }
    [[nodiscard]] bool reaching() const { return reachZone != nullptr; }
    [[nodiscard]] QPointF reachFrom() const { return from; }
    [[nodiscard]] QPointF reachTo() const { return to; }

signals:
    void partsChanged();
    void wayChanged();
    void markedChanged();
    void reachChanged();

private:
    void updateParts(const Scene& scene);
    void updateMarked(const Scene& scene);
    void updateWay(const Scene& scene);
    void updateReach(const Scene& scene);
    [[nodiscard]] const QVariant& leg(const std::string& from, const std::string& to);
    [[nodiscard]] airframe::Place placeOf(const std::string& stand) const;

    const airframe::Airframe* airframe;
    const airframe::Walk* walk;
    walk::Ground ground; ///< with what is marked in it
    std::vector<std::int64_t> shownMarks;
    QVariantList marks;
    QRectF box;
    ZonesModel zoneRows;
    StandsModel standRows;
    airframe::Settings shownSettings;
    bool partsShown = false;
    QVariantList drawn;
    std::vector<std::string> doneStands, aheadStands; ///< what the polylines show
    bool wayShown = false;
    std::map<std::pair<std::string, std::string>, QVariant>
        legs; ///< every way on this ground asked for once; "" is start or end
    QVariantList done, ahead;
    const airframe::Zone* reachZone = nullptr;
    QPointF from, to;
};

} // namespace ambit::view
