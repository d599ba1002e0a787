// Does every record of an aircraft hold, and is none missing? Looked at beside the screen.
#pragma once

#include "archive/verify.hpp"
#include "model/background.hpp"
#include "model/services.hpp"

#include <QVariant>
#include <QtQml/qqmlregistration.h>

namespace ambit::view {

class VerificationView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    Q_PROPERTY(bool running READ running NOTIFY changed)
    /// While it is running: how many records have been looked at, of how many.
    Q_PROPERTY(int lookedAt MEMBER lookedAt NOTIFY changed)
    Q_PROPERTY(int all MEMBER all NOTIFY changed)
    /// There is a verdict on the aircraft shown.
    Q_PROPERTY(bool done MEMBER done NOTIFY changed)
    /// Nothing is broken and nothing is missing.
    Q_PROPERTY(bool good MEMBER good NOTIFY changed)
    /// Looked at.
    Q_PROPERTY(int records MEMBER records NOTIFY changed)
    /// {recordId ("": no record but a photo, say), name ("Round of 20 Jun 2026, 05:58 UTC, Robin Example"),
    /// words (what doesn't hold)}
    Q_PROPERTY(QVariantList broken MEMBER broken NOTIFY changed)
    /// {recordId, name ("Record 0a1b2c3d4e5f"), words ("named as an earlier one by …")}: records and photos
    Q_PROPERTY(QVariantList missing MEMBER missing NOTIFY changed)
public:
    VerificationView(Background& background, Report report, QObject* parent);

    Q_INVOKABLE void run(const QString& registration);

    [[nodiscard]] bool running() const { return awaited; }

signals:
    void changed();

private:
    struct Verdict {
        archive::Verification found;
        std::vector<archive::RecordInfo> list; ///< to name them by
    };
    void take(Result<Verdict> verdict);

    Background* background;
    Report report;
    bool awaited = false, done = false, good = false;
    int question = 0, records = 0, lookedAt = 0, all = 0;
    QVariantList broken, missing;
};

} // namespace ambit::view
