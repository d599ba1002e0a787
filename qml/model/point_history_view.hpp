// What the records say of one point, the newest first, fifty at a time.
#pragma once

#include "archive/find.hpp"
#include "model/background.hpp"
#include "model/rows_model.hpp"
#include "model/services.hpp"

namespace ambit::view {

class SightingsModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("PointHistoryView makes it")
public:
    /// recordId, look (as a point looks; "next" for what was said or done about it), outcomeText, grounds
    /// (bool), words, valueText ("5.2 qt, within"; "" if not measured), whenText, agoText, by
    enum Role {
        RecordIdRole = Qt::UserRole,
        LookRole,
        OutcomeTextRole,
        GroundsRole,
        WordsRole,
        ValueTextRole,
        WhenTextRole,
        AgoTextRole,
        ByRole
    };
    using RowsModel::RowsModel;

    void update(const std::vector<archive::Sighting>& sightings, LocalInstant now);

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Row {
        QString recordId, look, outcomeText, words, valueText, whenText, agoText, by;
        bool grounds = false;
        [[nodiscard]] const QString& key() const { return recordId; }
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> rows;
};

class PointHistoryView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    Q_PROPERTY(QString pointId MEMBER pointId NOTIFY changed)
    Q_PROPERTY(bool reading READ reading NOTIFY changed)
    Q_PROPERTY(bool canMore MEMBER canMore NOTIFY changed)
    Q_PROPERTY(ambit::view::SightingsModel* sightings READ sightings CONSTANT)
    /// Those of them that were measured, the latest few until more are asked for: {recordId, text, whenText,
    /// by, renewed (bool)}.
    Q_PROPERTY(QVariantList values READ values NOTIFY changed)
    Q_PROPERTY(bool canMoreValues READ canMoreValues NOTIFY changed)
public:
    PointHistoryView(const Services& services, Background& background, Report report, QObject* parent);

    /// "": none.
    Q_INVOKABLE void show(const QString& registration, const QString& pointId);
    Q_INVOKABLE void more();
    /// A few more values, from as many records as that takes.
    Q_INVOKABLE void moreValues();

    [[nodiscard]] bool reading() const { return awaited; }
    [[nodiscard]] SightingsModel* sightings() { return &rows; }
    [[nodiscard]] QVariantList values() const;
    [[nodiscard]] bool canMoreValues() const { return canMore || measured() > valuesWanted; }

signals:
    void changed();
    void shown(const QString& registration, const QString& pointId);

private:
    void ask(const std::string& after);
    [[nodiscard]] std::size_t measured() const;
    void fillValues();

    const Services* services;
    Background* background;
    Report report;
    QString registration, pointId;
    std::vector<archive::Sighting> found;
    static constexpr std::size_t valuesAtOnce = 6;
    std::size_t valuesWanted = valuesAtOnce;
    bool awaited = false, canMore = false;
    int question = 0;
    SightingsModel rows;
};

} // namespace ambit::view
