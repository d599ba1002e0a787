#include "describe.hpp"

#include "model/rows_model.hpp"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMetaProperty>
#include <QPointF>
#include <QRectF>

namespace ambit::test {

namespace {

QString number(double value) {
    return QString::number(value, 'f', 2);
}

QString place(QPointF point) {
    return number(point.x()) + QLatin1Char(',') + number(point.y());
}

/// An outline is one line: "0.00,1.00 2.00,1.00 …".
QJsonValue valueOf(const QVariant& value, const QStringList& without) {
    if (value.typeId() == QMetaType::QPointF) return place(value.toPointF());
    if (value.typeId() == QMetaType::QRectF) {
        const QRectF box = value.toRectF();
        return place(box.topLeft()) + QLatin1Char(' ') + place(box.bottomRight());
    }
    if (value.typeId() == QMetaType::QVariantMap) {
        QJsonObject object;
        const QVariantMap map = value.toMap();
        for (auto one = map.cbegin(); one != map.cend(); ++one)
            if (!without.contains(one.key())) object.insert(one.key(), valueOf(one.value(), without));
        return object;
    }
    if (value.typeId() == QMetaType::QVariantList) {
        const QVariantList list = value.toList();
        if (!list.isEmpty() && list.first().typeId() == QMetaType::QPointF) {
            QStringList places;
            for (const QVariant& one : list)
                places << place(one.toPointF());
            return places.join(QLatin1Char(' '));
        }
        QJsonArray array;
        for (const QVariant& one : list)
            array << valueOf(one, without);
        return array;
    }
    if (value.metaType().flags().testFlag(QMetaType::PointerToQObject)) {
        const auto* object = value.value<QObject*>();
        return object == nullptr ? QJsonValue() : describe(*object, without);
    }
    return QJsonValue::fromVariant(value);
}

QString written(const QJsonValue& value) {
    const QJsonDocument document =
        value.isArray() ? QJsonDocument(value.toArray()) : QJsonDocument(value.toObject());
    return QString::fromUtf8(document.toJson(QJsonDocument::Indented));
}

} // namespace

QJsonValue describe(const QObject& object, const QStringList& without) {
    if (const auto* rows = qobject_cast<const view::RowsModel*>(&object)) {
        QJsonArray array;
        for (int row = 0; row < rows->count(); ++row)
            array << valueOf(rows->get(row), without);
        return array;
    }
    QJsonObject json;
    const QMetaObject& meta = *object.metaObject();
    for (int i = QObject::staticMetaObject.propertyCount(); i < meta.propertyCount(); ++i) {
        const QString name = QString::fromLatin1(meta.property(i).name());
        if (!without.contains(name)) json.insert(name, valueOf(meta.property(i).read(&object), without));
    }
    return json;
}

QString differsFromGolden(const QString& name, const QJsonValue& now) {
    QFile file(QStringLiteral(AMBIT_ROOT "/tests/view/golden/") + name + QStringLiteral(".json"));
    if (qEnvironmentVariableIsSet("AMBIT_GOLDEN")) {
        if (!file.open(QIODevice::WriteOnly)) return file.errorString();
        file.write(written(now).toUtf8());
        return {};
    }
    if (!file.open(QIODevice::ReadOnly)) return file.fileName() + QStringLiteral(": ") + file.errorString();
    const QStringList golden = QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'));
    const QStringList lines = written(now).split(QLatin1Char('\n'));
    for (qsizetype i = 0; i < std::max(golden.size(), lines.size()); ++i)
        if (golden.value(i) != lines.value(i))
            return QStringLiteral("%1.json line %2: was %3, is %4")
                .arg(name)
                .arg(i + 1)
                .arg(golden.value(i).trimmed(), lines.value(i).trimmed());
    return {};
}

} // namespace ambit::test
