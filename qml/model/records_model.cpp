#include "model/records_model.hpp"

#include "model/file_words.hpp"
#include "model/words.hpp"

namespace ambit::view {

RecordsModel::Row RecordsModel::rowOf(const archive::RecordInfo& info, const std::string& gloss,
                                      int offsetMinutes) {
    return {text(info.sha256),
            kindText(info.kind),
            text(info.conclusion),
            dayText(info.concludedAt, offsetMinutes),
            text(info.signer),
            text(gloss),
            info.kind == "round" ? info.findings : -1};
}

void RecordsModel::update(const std::vector<archive::RecordInfo>& records, std::size_t most,
                          int offsetMinutes) {
    std::vector<Row> next;
    next.reserve(std::min(most, records.size()));
    for (std::size_t i = 0; i < records.size() && i < most; ++i)
        next.push_back(rowOf(records[i], {}, offsetMinutes));
    show(std::move(next));
}

void RecordsModel::update(const std::vector<archive::Hit>& hits, int offsetMinutes) {
    std::vector<Row> next;
    next.reserve(hits.size());
    for (const archive::Hit& hit : hits)
        next.push_back(rowOf(hit.info, hit.gloss, offsetMinutes));
    show(std::move(next));
}

void RecordsModel::show(std::vector<Row> next) {
    sync(rows, std::move(next),
         {ConclusionRole, ConclusionTextRole, WhenTextRole, SignerRole, FindingsRole, GlossRole});
}

int RecordsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant RecordsModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    switch (role) {
    case RecordIdRole:
        return row.recordId;
    case TitleRole:
        return row.title;
    case ConclusionRole:
        return row.conclusion;
    case ConclusionTextRole:
        return row.conclusion.isEmpty() ? row.title : conclusionText(row.conclusion == QStringLiteral("fit"));
    case WhenTextRole:
        return row.whenText;
    case SignerRole:
        return row.signer;
    case FindingsRole:
        return row.findings;
    case GlossRole:
        return row.gloss;
    default:
        return {};
    }
}

QHash<int, QByteArray> RecordsModel::roleNames() const {
    return {{RecordIdRole, "recordId"},     {TitleRole, "title"},
            {ConclusionRole, "conclusion"}, {ConclusionTextRole, "conclusionText"},
            {WhenTextRole, "whenText"},     {SignerRole, "signer"},
            {FindingsRole, "findings"},     {GlossRole, "gloss"}};
}

} // namespace ambit::view
