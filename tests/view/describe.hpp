// A view model in readable JSON: every property, every row of every list, as QML sees them.
#pragma once

#include <QJsonValue>
#include <QStringList>

class QObject;

namespace ambit::test {

/// `without`: names of properties left out at any depth (those that differ each time, or are told elsewhere).
[[nodiscard]] QJsonValue describe(const QObject& object, const QStringList& without = {});

/// Compares with golden/<name>.json beside the tests; writes it instead where AMBIT_GOLDEN is set. "" if they
/// are the same, else where they part.
[[nodiscard]] QString differsFromGolden(const QString& name, const QJsonValue& now);

} // namespace ambit::test
