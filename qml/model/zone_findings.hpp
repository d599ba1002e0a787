// Where on the aircraft findings were, over a chosen time: each zone with how many.
#pragma once

#include "model/aircraft_file_view.hpp"
#include "model/services.hpp"

#include <QRectF>

namespace ambit::view {

class ZoneFindings : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// {days, name}: the times to choose from; 0: all.
    Q_PROPERTY(QVariantList times READ times NOTIFY wordsChanged)
    Q_PROPERTY(int days READ days WRITE setDays NOTIFY changed)
    /// The figure, as FigureModel has it: metres, y down.
    Q_PROPERTY(QRectF bounds MEMBER bounds NOTIFY changed)
    Q_PROPERTY(QVariantList parts MEMBER parts NOTIFY changed)
    /// {zoneId, name, outline, count (findings in that time), level (0: none, 1, 2, 3: many), text ("Nose: 3
    /// findings")}
    Q_PROPERTY(QVariantList zones MEMBER zones NOTIFY changed)
    /// Findings in that time, everywhere.
    Q_PROPERTY(int total MEMBER total NOTIFY changed)
public:
    ZoneFindings(const Services& services, const AircraftFileView& file, QObject* parent);

    /// Discrepancies found there in that time, the newest first: {key, pointId, name, where, words,
    /// stateText, sinceText, state, grounds}.
    Q_INVOKABLE [[nodiscard]] QVariantList foundIn(const QString& zoneId) const;

    [[nodiscard]] QVariantList times() const;
    [[nodiscard]] int days() const { return chosenDays; }
    void setDays(int days);

signals:
    void changed();
    void wordsChanged(); ///< told by App: another language

private:
    void tell();
    [[nodiscard]] bool isIn(Instant at) const;
    [[nodiscard]] int findingsOf(const file::Discrepancy& one) const;

    const Services* services;
    const AircraftFileView* file;
    int chosenDays = 365;
    int total = 0;
    QRectF bounds;
    QVariantList parts, zones;
};

} // namespace ambit::view
