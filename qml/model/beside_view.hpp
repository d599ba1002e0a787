// Two rounds of the same walk laid side by side: who saw what, where they differed, how far they agree.
#pragma once

#include "model/services.hpp"
#include "round/beside.hpp"

#include <QObject>
#include <QVariant>
#include <QtQml/qqmlregistration.h>

namespace ambit::view {

class BesideView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// Two rounds are laid side by side.
    Q_PROPERTY(bool laid MEMBER laid NOTIFY changed)
    /// {who, whenText, conclusionText, alone}
    Q_PROPERTY(QVariantMap first MEMBER first NOTIFY changed)
    Q_PROPERTY(QVariantMap second MEMBER second NOTIFY changed)
    /// {id, name, firstLook, firstText, secondLook, secondText}: where both settled otherwise, and what only
    /// one settled.
    Q_PROPERTY(QVariantList differing MEMBER differing NOTIFY changed)
    Q_PROPERTY(QVariantList single MEMBER single NOTIFY changed)
    /// {name, counts (list of int)}: rows the first's outcome, counts by the second's, in the same order.
    Q_PROPERTY(QVariantList table MEMBER table NOTIFY changed)
    /// "The same outcome at 71 of 75 points (94.7 %)"
    Q_PROPERTY(QString sameText MEMBER sameText NOTIFY changed)
    /// "Cohen's kappa 0.62, 95 % interval 0.31 to 0.93", or why there is none.
    Q_PROPERTY(QString kappaText MEMBER kappaText NOTIFY changed)
public:
    BesideView(const Services& services, Report report, QObject* parent);

    /// {recordId, who, whenText, conclusionText}: records of the same walk that this one can be laid beside,
    /// a dozen at most, the nearest in time first.
    Q_INVOKABLE [[nodiscard]] QVariantList others(const QString& recordId) const;
    Q_INVOKABLE bool lay(const QString& firstRecord, const QString& secondRecord);
    Q_INVOKABLE void clear();
    void sayAnew(); ///< another language is spoken

signals:
    void changed();

private:
    [[nodiscard]] Result<round::Walked> walkedIn(const std::string& record) const;
    [[nodiscard]] Result<void> tell(const round::Beside& both);

    const Services* services;
    Report report;
    bool laid = false;
    std::pair<QString, QString> laidRecords;
    QVariantMap first, second;
    QVariantList differing, single, table;
    QString sameText, kappaText;
};

} // namespace ambit::view
