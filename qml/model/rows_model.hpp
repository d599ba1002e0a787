// A list model that is told its whole new rows and changes only what differs, so that a list keeps its place
// and a touch costs no reset.
#pragma once

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>
#include <algorithm>
#include <vector>

namespace ambit::view {

/// Derived classes name it in full, ambit::view::RowsModel: QML finds the type by the name as written.
class RowsModel : public QAbstractListModel {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    using QAbstractListModel::QAbstractListModel;
    [[nodiscard]] int count() const { return rowCount({}); }
    /// All roles of a row by name; empty beyond the end. For tests and for scripts.
    Q_INVOKABLE [[nodiscard]] QVariantMap get(int row) const;
    /// As if all of it had changed, though no row has: what rows point to has other words now.
    void sayAnew();

signals:
    void countChanged();

protected:
    /// Makes `rows` equal `next`. Rows with the same `key()` are the same row; one that is not equal any more
    /// has changed: in `roles`, those of a row that can change (a delegate works out only these again).
    template<class Row> void sync(std::vector<Row>& rows, std::vector<Row> next, const QList<int>& roles) {
        const auto before = rows.size();
        for (std::size_t i = 0; i < next.size();) {
            const int at = static_cast<int>(i);
            if (i < rows.size() && rows[i].key() == next[i].key()) {
                if (!(rows[i] == next[i])) {
                    rows[i] = next[i];
                    emit dataChanged(index(at), index(at), roles);
                }
                ++i;
            } else if (i < rows.size() && !contains(next, i, rows[i])) {
                beginRemoveRows({}, at, at);
                rows.erase(rows.begin() + at);
                endRemoveRows();
            } else {
                beginInsertRows({}, at, at);
                rows.insert(rows.begin() + at, next[i]);
                endInsertRows();
                ++i;
            }
        }
        if (rows.size() > next.size()) {
            beginRemoveRows({}, static_cast<int>(next.size()), static_cast<int>(rows.size()) - 1);
            rows.resize(next.size());
            endRemoveRows();
        }
        if (rows.size() != before) emit countChanged();
    }

private:
    template<class Row> static bool contains(const std::vector<Row>& next, std::size_t from, const Row& row) {
        return std::any_of(next.begin() + static_cast<std::ptrdiff_t>(from), next.end(),
                           [&](const Row& other) { return other.key() == row.key(); });
    }
};

} // namespace ambit::view
