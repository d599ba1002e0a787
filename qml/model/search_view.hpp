// Searching an aircraft's records, beside the screen, fifty at a time.
#pragma once

#include "archive/find.hpp"
#include "model/background.hpp"
#include "model/rows_model.hpp"
#include "model/services.hpp"

#include <QVariant>

namespace ambit::view {

class HitsModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("SearchView makes it")
public:
    /// recordId, title, conclusion, conclusionText, whenText, signer, findings: as RecordsModel has them;
    /// gloss (what the record says of what was searched)
    enum Role {
        RecordIdRole = Qt::UserRole,
        TitleRole,
        ConclusionRole,
        ConclusionTextRole,
        WhenTextRole,
        SignerRole,
        FindingsRole,
        GlossRole
    };
    using RowsModel::RowsModel;

    void update(const std::vector<archive::Hit>& hits);

    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& at, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

private:
    struct Row {
        QString recordId, title, conclusion, whenText, signer, gloss;
        int findings = 0;
        [[nodiscard]] const QString& key() const { return recordId; }
        friend bool operator==(const Row&, const Row&) = default;
    };
    std::vector<Row> rows;
};

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
    Q_PROPERTY(ambit::view::HitsModel* hits READ hits CONSTANT)
    /// {id, name}: kinds of records, and states of discrepancies.
    Q_PROPERTY(QVariantList kinds READ kinds CONSTANT)
    Q_PROPERTY(QVariantList states READ states CONSTANT)
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
    [[nodiscard]] HitsModel* hits() { return &rows; }
    [[nodiscard]] QVariantList kinds() const;
    [[nodiscard]] QVariantList states() const;

signals:
    void changed();

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
    HitsModel rows;
};

} // namespace ambit::view
