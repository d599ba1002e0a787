// The aircraft in the archive: what a person chooses from.
#pragma once

#include "model/rows_model.hpp"
#include "model/services.hpp"

#include <map>

namespace ambit::view {

class AircraftModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
public:
    /// registration, serial, airframeName, category ("helicopter", "aeroplane"),
    /// openRoundId ("" if no started round waits), openRoundText ("Before the first flight, started 2 hours
    /// ago"), lastConclusion ("fit", "not fit", ""), lastText ("Fit for flight · 3 days ago · Robin Example",
    /// or that there is no record)
    enum Role {
        RegistrationRole = Qt::UserRole,
        SerialRole,
        AirframeNameRole,
        CategoryRole,
        OpenRoundIdRole,
        OpenRoundTextRole,
        LastConclusionRole,
        LastTextRole
    };

    AircraftModel(const Services& services, Report report, QObject* parent);

    /// Reads the archive again.
    void refresh();

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Row {
        QString registration, serial, airframeName, category, openRoundId, openRoundText, lastConclusion,
            lastText;
        [[nodiscard]] const QString& key() const { return registration; }
        friend bool operator==(const Row&, const Row&) = default;
    };
    struct Kind { ///< in the language of the screens
        QString name, category;
        std::map<std::string, QString> walks; ///< id → name
    };
    [[nodiscard]] Result<Kind> kindOf(const std::string& airframeSha256);
    [[nodiscard]] Result<Row> rowOf(const archive::Aircraft& aircraft);

    const Services* services;
    Report report;
    std::map<std::pair<std::string, QString>, Kind> kinds; ///< by the airframe's hash and the language
    std::vector<Row> rows;
};

} // namespace ambit::view
