// Searching an aircraft's records, beside the screen, fifty at a time.
#pragma once

#include "archive/find.hpp"
#include "model/background.hpp"
#include "model/records_model.hpp"
#include "model/services.hpp"

#include <QVariant>

namespace ambit::view {

class SearchView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// It is being looked for.
    Q_PROPERTY(bool searching READ searching NOTIFY changed)
    /// Something was asked for, and `hits` is what came of it.
    Q_PROPERTY(bool asked MEMBER hasAsked NOTIFY changed)
    /// There may be more: more().
    Q_PROPERTY(bool canMore MEMBER canMore NOTIFY changed)
    Q_PROPERTY(ambit::view::RecordsModel* hits READ hits CONSTANT)
    /// {id, name}: kinds of records, and states of discrepancies.
    Q_PROPERTY(QVariantList kinds READ kinds NOTIFY wordsChanged)
    Q_PROPERTY(QVariantList states READ states NOTIFY wordsChanged)
public:
    SearchView(const Services& services, Background& background, Report report, QObject* parent);

    /// {words, person, part, jasc, kind, state, from, until (dates, yyyy-mm-dd)}; what is empty or missing is
    /// not asked. False: a date that is none (App.problem).
    Q_INVOKABLE bool search(const QString& registration, const QVariantMap& wanted);
    Q_INVOKABLE void more();
    /// What of it was asked last: "words", "person", …; "" if nothing.
    Q_INVOKABLE [[nodiscard]] QString was(const QString& name) const { return given.value(name).toString(); }
    void clear();

    [[nodiscard]] bool searching() const { return awaited; }
    [[nodiscard]] RecordsModel* hits() { return &rows; }
    [[nodiscard]] QVariantList kinds() const;
    [[nodiscard]] QVariantList states() const;

signals:
    void changed();
    void wordsChanged(); ///< told by App: another language

private:
    void ask();

    const Services* services;
    Background* background;
    Report report;
    QVariantMap given;
    archive::Wanted wanted;
    std::vector<archive::Hit> found;
    bool awaited = false, hasAsked = false, canMore = false;
    int question = 0;
    RecordsModel rows;
};

} // namespace ambit::view
