// What is said of an aircraft between its rounds, signed on the screen: a deferral, a grounding, work done, a
// part changed, what the counters say, whose key counts, a hand-over, a renewal told afterwards, what is let
// go. Core says what such a record needs; each is signed, checked and kept.
#pragma once

#include "model/aircraft_file_view.hpp"
#include "model/signing_view.hpp"

namespace ambit::view {

class EntryView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// {id, text}: what a deferral under 14 CFR 91.213(d) answers, one by one.
    Q_PROPERTY(QVariantList questions READ questions NOTIFY wordsChanged)
    /// {id, name}: what a deferral can stand on; the first is the rule with the questions.
    Q_PROPERTY(QVariantList bases READ bases NOTIFY wordsChanged)
public:
    EntryView(const Services& services, AircraftFileView& file, SigningView& signing, Report report,
              QObject* parent);

    /// Why this answer rules a deferral out; "": it doesn't.
    Q_INVOKABLE [[nodiscard]] QString ruledOut(int question, bool yes) const;
    /// The date so many days after today; "" if there is none.
    Q_INVOKABLE [[nodiscard]] QString dayAfter(int days) const;

    // Each signs, keeps, and returns true; on false nothing was kept and App.problem says why. `signature`:
    // {role, certificate, passphrase, key (its id; "": the first)}. Counters: id → decimal string; empty ones
    // are left out.
    /// {key, words, basis, reference, answers: [bool], removed, placard, limits, until, untilCounters,
    /// determinedBy, determinedRole, determinedCertificate}
    Q_INVOKABLE bool defer(const QVariantMap& said, const QVariantMap& signature);
    /// {key, words}
    Q_INVOKABLE bool ground(const QVariantMap& said, const QVariantMap& signature);
    /// {keys: [key], inspections: [id], description, completedOn, performedBy, certificateKind, counters}
    Q_INVOKABLE bool rectify(const QVariantMap& said, const QVariantMap& signature);
    /// {position, off and on: {name, number, serial, counters} (one of both may be empty), description,
    /// completedOn, certificateKind, counters}
    Q_INVOKABLE bool changePart(const QVariantMap& said, const QVariantMap& signature);
    /// {counters}
    Q_INVOKABLE bool readCounters(const QVariantMap& said, const QVariantMap& signature);
    /// {to, words}
    Q_INVOKABLE bool handOver(const QVariantMap& said, const QVariantMap& signature);
    /// {record, point: of the value; renewed (bool; false takes back that it was), words}
    Q_INVOKABLE bool tellRenewed(const QVariantMap& said, const QVariantMap& signature);
    /// {name, key (fingerprint), roles: [id], from (date; "": now)}
    Q_INVOKABLE bool trust(const QVariantMap& said, const QVariantMap& signature);
    /// {key (fingerprint), from (date; "": now), why}
    Q_INVOKABLE bool revoke(const QVariantMap& said, const QVariantMap& signature);
    /// {records: [id], basis, although (bool: also what 14 CFR 91.417(b) says must stay)}. They are gone
    /// then, and can't be brought back.
    Q_INVOKABLE bool letGo(const QVariantMap& said, const QVariantMap& signature);

    [[nodiscard]] QVariantList questions() const;
    [[nodiscard]] QVariantList bases() const;

signals:
    void kept();         ///< something new is in the archive
    void letWent();      ///< records are in it no more
    void wordsChanged(); ///< told by App: another language

private:
    [[nodiscard]] bool say(const Result<record::Entry>& entry, const QVariantMap& signature);
    [[nodiscard]] Result<void> keep(const record::Entry& entry, const QVariantMap& signature);
    [[nodiscard]] Result<void> remove(const QVariantMap& said, const QVariantMap& signature);
    /// Refused while the file is being read: what is signed goes after its latest records.
    [[nodiscard]] Result<std::shared_ptr<const AircraftReading>> lastReading() const;
    [[nodiscard]] bool tell(const Result<void>& done);
    [[nodiscard]] Result<std::string> serialOf(const std::string& registration) const;

    const Services* services;
    AircraftFileView* file;
    SigningView* signing;
    Report report;
};

} // namespace ambit::view
