// One aircraft's file on one page: what stands against fit, what is open, what comes due, what the counters
// say. Read beside the screen and kept until something new is signed.
#pragma once

#include "model/aircraft_reading.hpp"
#include "model/background.hpp"
#include "model/discrepancy_view.hpp"
#include "model/services.hpp"

namespace ambit::view {

class AircraftFileView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    Q_PROPERTY(QString registration READ registration NOTIFY changed)
    /// It is being read, and what is shown is from before; `known`: there is something to show.
    Q_PROPERTY(bool reading READ reading NOTIFY changed)
    Q_PROPERTY(bool known READ known NOTIFY changed)
    /// Why nothing can be said of this aircraft; "" if it could be read.
    Q_PROPERTY(QString trouble MEMBER trouble NOTIFY changed)
    /// What stands against *fit*, in words; empty and `known`: nothing in the file.
    Q_PROPERTY(QStringList against MEMBER against NOTIFY changed)
    /// {key, pointId, name, where ("Left mast · JASC 6210"), words, stateText, sinceText, state ("open"
    /// "deferred" "grounding" "rectified"), grounds (bool)}: what is open, what grounds first; what was put
    /// right and no round has seen since.
    Q_PROPERTY(QVariantList open MEMBER open NOTIFY changed)
    Q_PROPERTY(QVariantList putRight MEMBER putRight NOTIFY changed)
    /// {id, name, verdict ("passed" "soon" "within allowance" "unknown" "fine"), verdictText, words, source,
    /// look}: what comes first in front.
    Q_PROPERTY(QVariantList due MEMBER due NOTIFY changed)
    /// {id, name, unit, value ("" if never read), whenText}: in the airframe's order.
    Q_PROPERTY(QVariantList counters MEMBER counters NOTIFY changed)
    /// {id, name}: the airframe's.
    Q_PROPERTY(QVariantList inspections MEMBER inspections NOTIFY changed)
    /// {id, name}: points of the airframe, by name.
    Q_PROPERTY(QVariantList points MEMBER points NOTIFY changed)
    /// {position, name ("Main rotor blades"), part, number, serial ("" if nothing is known to be fitted),
    /// fittedText}: the airframe's parts with a life, then other places where a part was fitted.
    Q_PROPERTY(QVariantList places MEMBER places NOTIFY changed)
    /// {key, name, fingerprint, words ("Signed 3 records as pilot"), standing (what the owner's word makes of
    /// it), look, owner, revoked (bool), roles: [id]}: by name.
    Q_PROPERTY(QVariantList keys MEMBER keys NOTIFY changed)
    /// What records say against each other.
    Q_PROPERTY(QStringList conflicts MEMBER conflicts NOTIFY changed)
    /// Records that others name and nobody has here.
    Q_PROPERTY(int holes MEMBER holes NOTIFY changed)
    /// Date here, yyyy-mm-dd.
    Q_PROPERTY(QString today READ today NOTIFY changed)
    /// The one opened; null if none.
    Q_PROPERTY(ambit::view::DiscrepancyView* discrepancy READ discrepancy NOTIFY discrepancyChanged)
public:
    AircraftFileView(const Services& services, Background& background, QObject* parent);

    /// Shows this aircraft; "": none. Returns at once.
    void show(const QString& registration);
    /// Reads again: something was signed.
    void refresh();
    /// By its `key`; false if there is no such discrepancy (any more).
    Q_INVOKABLE bool openDiscrepancy(const QString& key);
    Q_INVOKABLE void closeDiscrepancy();

    [[nodiscard]] QString registration() const { return shown; }
    [[nodiscard]] bool reading() const { return awaited; }
    [[nodiscard]] bool known() const { return last != nullptr; }
    [[nodiscard]] QString today() const;
    [[nodiscard]] DiscrepancyView* discrepancy() const { return opened; }
    /// A discrepancy as `open` has it.
    [[nodiscard]] QVariantMap row(const file::Discrepancy& one) const;
    /// nullptr: not read yet, or it can't be.
    [[nodiscard]] std::shared_ptr<const AircraftReading> lastReading() const { return last; }

signals:
    void changed();
    void discrepancyChanged();

private:
    void take(Result<AircraftReading> reading);
    void tell();

    const Services* services;
    Background* background;
    QString shown;
    bool awaited = false;
    int asked = 0; ///< answers to an earlier question are let go
    std::shared_ptr<const AircraftReading> last;
    QString trouble;
    QStringList against, conflicts;
    QVariantList open, putRight, due, counters, inspections, points, places, keys;
    int holes = 0;
    DiscrepancyView* opened = nullptr;
};

} // namespace ambit::view
