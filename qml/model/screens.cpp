#include "model/screens.hpp"

#include "model/photos.hpp"

#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickStyle>

namespace ambit::view {

void prepareApplication() {
    QQuickStyle::setStyle(QStringLiteral("Basic"));
    for (const char* file : {"B612-Regular.otf", "B612-Bold.otf", "B612Mono-Regular.otf"})
        QFontDatabase::addApplicationFont(QStringLiteral(":/qt/qml/Ambit/fonts/") +
                                          QString::fromLatin1(file));
    QGuiApplication::setFont(QFont(QStringLiteral("B612")));
}

void prepareEngine(QQmlEngine& engine, const archive::Archive& archive) {
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    engine.addImageProvider(QStringLiteral("photo"), new PhotoProvider(archive));
}

bool showMain(QQmlApplicationEngine& engine, App& app) {
    engine.addImageProvider(QStringLiteral("watched"), new PhotoProvider(app.watchedFile()));
    engine.setInitialProperties({{QStringLiteral("app"), QVariant::fromValue(&app)}});
    QObject::connect(&app, &App::languageChanged, &engine, &QQmlEngine::retranslate);
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Ambit/Main.qml")));
    return !engine.rootObjects().isEmpty();
}

} // namespace ambit::view
