// Runs the program ambit as a person or a script would.
#pragma once

#include <QProcess>
#include <QString>
#include <QStringList>

struct Ran {
    int code = -1;
    QByteArray out;
    QByteArray err;
};

inline QString demo(const char* file) {
    return QStringLiteral(AMBIT_ROOT "/demo-aircraft/") + QLatin1String(file);
}

inline Ran runAmbit(const QStringList& arguments,
                    const QString& passphrase = QStringLiteral("a test passphrase")) {
    QProcess process;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("AMBIT_PASSPHRASE"), passphrase);
    process.setProcessEnvironment(environment);
    process.start(QStringLiteral(AMBIT_PROGRAM), arguments);
    process.waitForFinished(120'000);
    return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1,
            process.readAllStandardOutput(), process.readAllStandardError()};
}
