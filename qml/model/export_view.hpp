// An aircraft's whole file as one zip that opens without Ambit, written beside the screen.
#pragma once

#include "model/background.hpp"
#include "model/services.hpp"

#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace ambit::view {

class ExportView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    Q_PROPERTY(bool running MEMBER running NOTIFY changed)
    /// The zip just written; "": none, or it failed (App.problem).
    Q_PROPERTY(QString written MEMBER written NOTIFY changed)
    /// What is in it: "434 records, 214 PDFs, 12 photos".
    Q_PROPERTY(QString words MEMBER words NOTIFY changed)
public:
    ExportView(const Services& services, Background& background, Report report, QObject* parent);

    /// Into the folder, as REGISTRATION DATE.zip; never over another file.
    Q_INVOKABLE void write(const QString& registration, const QUrl& folder);

signals:
    void changed();

private:
    const Services* services;
    Background* background;
    Report report;
    bool running = false;
    QString written, words;
};

} // namespace ambit::view
