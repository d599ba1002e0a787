// One record, as a screen shows it: conclusion first. Immutable.
#pragma once

#include "airframe/airframe.hpp"
#include "round/state.hpp"

#include <QObject>
#include <QVariant>
#include <QtQml/qqmlregistration.h>

namespace ambit::view {

class RecordView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("FileView makes it")
    Q_PROPERTY(QString recordId MEMBER recordId CONSTANT)
    Q_PROPERTY(QString registration MEMBER registration CONSTANT)
    /// "round", or one of the other kinds, which say what they have to in `said`; and in words.
    Q_PROPERTY(QString kind MEMBER kind CONSTANT)
    Q_PROPERTY(QString kindText MEMBER kindText CONSTANT)
    /// {name ("Basis"), text}: everything that a record of another kind says.
    Q_PROPERTY(QVariantList said MEMBER said CONSTANT)
    Q_PROPERTY(QString walkName MEMBER walkName CONSTANT)
    /// "fit" "not fit", and in words; of another kind: what was done ("Deferred").
    Q_PROPERTY(QString conclusion MEMBER conclusion CONSTANT)
    Q_PROPERTY(QString conclusionText MEMBER conclusionText CONSTANT)
    Q_PROPERTY(QString reasons MEMBER reasons CONSTANT)
    /// Of the conclusion, by the clock where it was drawn.
    Q_PROPERTY(QString whenText MEMBER whenText CONSTANT)
    /// "" if not known.
    Q_PROPERTY(QString placeText MEMBER placeText CONSTANT)
    /// Name, role, certificate number.
    Q_PROPERTY(QString signer MEMBER signer CONSTANT)
    /// {who (name, role, certificate number), whenText ("" of the first), key, fingerprint (the same in
    /// groups)}: all who signed, the first one first; none where the record doesn't hold.
    Q_PROPERTY(QVariantList signatures MEMBER signatures CONSTANT)
    Q_PROPERTY(bool verified MEMBER verified CONSTANT)
    /// That it holds, or what does not.
    Q_PROPERTY(QString verifiedText MEMBER verifiedText CONSTANT)
    /// {id, name, words, severity, value, atText, photos: [source]}: everything found.
    Q_PROPERTY(QVariantList findings MEMBER findings CONSTANT)
    /// {id, name, why, basis}: everything not inspected.
    Q_PROPERTY(QVariantList notInspected MEMBER notInspected CONSTANT)
    /// {id, name, outcome ("sound" "finding" "notInspected"), outcomeText, value, atText}: every point, in
    /// listed order.
    Q_PROPERTY(QVariantList points MEMBER points CONSTANT)
    /// {atText, text}: the whole round, in words.
    Q_PROPERTY(QVariantList timeline MEMBER timeline CONSTANT)
    /// {name, value}: "1284.6 h".
    Q_PROPERTY(QVariantList counters MEMBER counters CONSTANT)
public:
    explicit RecordView(QObject* parent) : QObject(parent) {}

    /// From a record's text. It is shown as far as it can be read, also where a signature does not hold; not
    /// at all where it can't be folded.
    [[nodiscard]] static Result<RecordView*> make(const std::string& recordId, std::string_view recordJson,
                                                  const airframe::Airframe& airframe, QObject* parent);
    /// Of another kind than a round. `airframe`: for its names; nullptr if it isn't known.
    [[nodiscard]] static Result<RecordView*> ofEntry(const std::string& recordId, std::string_view recordJson,
                                                     const airframe::Airframe* airframe, QObject* parent);

private:
    void tell(const airframe::Airframe& airframe, const std::vector<round::Event>& events,
              const round::State& state);
    void verify(const std::string& id, std::string_view recordJson);

    QString recordId, registration, kind, kindText, walkName, conclusion, conclusionText, reasons, whenText,
        placeText, signer, verifiedText;
    bool verified = false;
    QVariantList signatures, said, findings, notInspected, points, timeline, counters;
};

} // namespace ambit::view
