// Which records of an aircraft may be let go, which must stay, and why (14 CFR 91.417(b)). Only said here:
// nothing goes before a person has chosen it, signed for it and been asked again (EntryView::letGo).
#pragma once

#include "file/retention.hpp"
#include "model/background.hpp"
#include "model/services.hpp"

#include <QVariant>
#include <QtQml/qqmlregistration.h>

namespace ambit::view {

class RetentionView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    Q_PROPERTY(bool reading READ reading NOTIFY changed)
    /// {recordId, name ("Round of 20 Jun 2026, 05:58 UTC"), who, why}: the oldest first.
    Q_PROPERTY(QVariantList mayGo MEMBER mayGo NOTIFY changed)
    /// The same, with never (bool: no rule allows it; the chain would break): must stay by that rule.
    Q_PROPERTY(QVariantList mustStay MEMBER mustStay NOTIFY changed)
public:
    RetentionView(const Services& services, Background& background, Report report, QObject* parent);

    /// Looks at this aircraft's records, beside the screen; "": none.
    Q_INVOKABLE void look(const QString& registration);
    /// What these records' rules say, each once: the basis to begin with.
    Q_INVOKABLE [[nodiscard]] QString basisOf(const QStringList& records) const;

    [[nodiscard]] bool reading() const { return awaited; }

signals:
    void changed();

private:
    struct Looked {
        std::vector<file::Keeping> keeping;
        file::AircraftFile file;
    };
    void take(Result<Looked> looked);

    const Services* services;
    Background* background;
    Report report;
    bool awaited = false;
    int question = 0; ///< answers to an earlier one are let go
    QVariantList mayGo, mustStay;
};

} // namespace ambit::view
