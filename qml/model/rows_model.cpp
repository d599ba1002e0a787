#include "model/rows_model.hpp"

namespace ambit::view {

QVariantMap RowsModel::get(int row) const {
    QVariantMap values;
    const QModelIndex at = index(row);
    if (!at.isValid()) return values;
    const auto names = roleNames();
    for (auto role = names.cbegin(); role != names.cend(); ++role)
        values.insert(QString::fromUtf8(role.value()), data(at, role.key()));
    return values;
}

void RowsModel::sayAnew() {
    if (const int rows = rowCount({}); rows > 0) emit dataChanged(index(0), index(rows - 1));
}

} // namespace ambit::view
