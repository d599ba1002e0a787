// The lists beside a round: points at this stand, what is owed, what the review shows.
#pragma once

#include "model/carried.hpp"
#include "model/rows_model.hpp"
#include "model/scene.hpp"

namespace ambit::view {

/// The points that can be settled where the person stands, in the plan's order.
class StandPointsModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("RoundView makes it")
public:
    /// pointId, name, look ("todo" "next" "sound" "finding" "notInspected"), current (bool: it is on the
    /// card), carried ("deferred", "open", …: what the aircraft's file says is open there; "" if nothing)
    enum Role { PointIdRole = Qt::UserRole, NameRole, LookRole, CurrentRole, CarriedRole };
    using RowsModel::RowsModel;

    void update(const Scene& scene, const Carried& carried);
    /// Row of a point, -1 if it isn't here.
    [[nodiscard]] int rowOf(const airframe::Point* point) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Row {
        const airframe::Point* point = nullptr;
        Look look{};
        bool current = false;
        QString carried;
        [[nodiscard]] const airframe::Point* key() const { return point; }
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> rows;
};

/// What is open or fitted and must be put right before a conclusion.
class OwedModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("RoundView makes it")
public:
    /// openingId, name ("Left cowl door"), owedText ("Close the left cowl door"), sinceText ("since 07:42",
    /// or "from the start")
    enum Role { OpeningIdRole = Qt::UserRole, NameRole, OwedTextRole, SinceTextRole };
    using RowsModel::RowsModel;

    void update(const Scene& scene);

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Row {
        const airframe::Opening* opening = nullptr;
        Instant since;
        bool fromStart = false;
        int offsetMinutes = 0;
        [[nodiscard]] const airframe::Opening* key() const { return opening; }
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> rows;
};

/// Everything not sound, everything owed, everything unsettled: in this order, findings that ground first.
class ReviewModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("RoundView makes it")
public:
    /// kind ("finding" "notInspected" "owed" "unsettled"), itemId (of the point or opening), title (its
    /// name), detail (the words said; what is owed), basis (what allows flight without it; not inspected
    /// only), severity ("grounds" "assess" ""), value ("5.2 qt" or ""), photos (list of image sources)
    enum Role {
        KindRole = Qt::UserRole,
        ItemIdRole,
        TitleRole,
        DetailRole,
        BasisRole,
        SeverityRole,
        ValueRole,
        PhotosRole
    };
    using RowsModel::RowsModel;

    void update(const Scene& scene);

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    enum class Kind { grounds, assess, notInspected, owed, unsettled };
    struct Row {
        Kind kind{};
        const airframe::Point* point = nullptr;
        const airframe::Opening* opening = nullptr;
        std::size_t settlings = 0; ///< how often the point was settled: another one may have other words
        const round::Settled* settled = nullptr; ///< borrowed from the round's state
        [[nodiscard]] std::pair<const void*, Kind> key() const {
            return {point != nullptr ? static_cast<const void*>(point) : static_cast<const void*>(opening),
                    kind};
        }
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> rows;
};

} // namespace ambit::view
