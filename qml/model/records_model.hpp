// Records in a list: what each concludes, when, by whom; of those that were searched also what they say.
#pragma once

#include "archive/find.hpp"
#include "model/rows_model.hpp"

namespace ambit::view {

class RecordsModel : public ambit::view::RowsModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("FileView and SearchView make it")
public:
    /// recordId, title (the kind: "Round", "Rectification"), conclusion ("fit", "not fit"; "" of other
    /// kinds), conclusionText (in words; of other kinds the kind), whenText ("20 Jun 2026, 07:58", by this
    /// device's clock), signer, findings (int; -1 of other kinds), gloss (what the record says, where it was
    /// searched; else
    /// "")
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

    /// The first `most` of them; `offsetMinutes`: this device's, from UTC.
    void update(const std::vector<archive::RecordInfo>& records, std::size_t most, int offsetMinutes);
    void update(const std::vector<archive::Hit>& hits, int offsetMinutes);

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
    [[nodiscard]] static Row rowOf(const archive::RecordInfo& info, const std::string& gloss,
                                   int offsetMinutes);
    void show(std::vector<Row> next);

    std::vector<Row> rows;
};

} // namespace ambit::view
