// One discrepancy's whole life: found, seen again, deferred or grounding, put right, seen sound.
#pragma once

#include "model/aircraft_reading.hpp"

#include <QObject>
#include <QVariant>
#include <QtQml/qqmlregistration.h>

namespace ambit::view {

/// What a screen knows a discrepancy by.
[[nodiscard]] QString keyOf(const record::DiscrepancyId& id);
/// Back again; empty fields: no such key.
[[nodiscard]] record::DiscrepancyId idOf(const QString& key);

class DiscrepancyView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("AircraftFileView makes it")
    Q_PROPERTY(QString key READ key CONSTANT)
    Q_PROPERTY(QString pointId MEMBER pointId CONSTANT)
    Q_PROPERTY(QString name MEMBER name CONSTANT)
    Q_PROPERTY(QString where MEMBER where CONSTANT)
    Q_PROPERTY(QString words MEMBER words CONSTANT)
    Q_PROPERTY(QString state MEMBER state CONSTANT)
    Q_PROPERTY(QString stateText MEMBER stateText CONSTANT)
    Q_PROPERTY(QString sinceText MEMBER sinceText CONSTANT)
    /// Nobody has put it right.
    Q_PROPERTY(bool isOpen MEMBER isOpen CONSTANT)
    /// {what ("Found"), look, whenText, agoText, by, words, details: [{name, text}], recordId}: the earliest
    /// first.
    Q_PROPERTY(QVariantList life MEMBER life CONSTANT)
public:
    /// One of this reading.
    DiscrepancyView(const file::Discrepancy& discrepancy, const AircraftReading& reading, LocalInstant now,
                    QObject* parent);

    [[nodiscard]] QString key() const { return itsKey; }

private:
    QString itsKey, pointId, name, where, words, state, stateText, sinceText;
    bool isOpen = false;
    QVariantList life;
};

} // namespace ambit::view
