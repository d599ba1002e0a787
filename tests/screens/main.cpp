// Runs the tst_*.qml beside it on the real screens.
#include "stage.hpp"

#include "desktop/fonts.hpp"
#include "model/photos.hpp"
#include "model/screens.hpp"

#include <QQmlEngine>
#include <QtQuickTest>

namespace ambit::test {

/// Photos from whichever archive the stage has now: its own, or that of those who are followed.
class StagePhotos : public QQuickImageProvider {
public:
    using Store = const archive::Archive& (Stage::*)() const;
    StagePhotos(const Stage& of, Store from)
        : QQuickImageProvider(QQuickImageProvider::Image), stage(of), store(from) {}
    QImage requestImage(const QString& id, QSize* size, const QSize& requested) override {
        return view::PhotoProvider((stage.*store)()).requestImage(id, size, requested);
    }

private:
    const Stage& stage;
    Store store;
};

class Setup : public QObject {
    Q_OBJECT
public slots:
    void applicationAvailable() { view::prepareApplication(); }

    /// Each file of tests has an engine of its own; the stage is one for all.
    void qmlEngineAvailable(QQmlEngine* engine) {
        if (!stage) {
            stage = std::make_unique<Stage>();
            QQmlEngine::setObjectOwnership(stage.get(), QQmlEngine::CppOwnership);
        }
        // As view::showMain does for the program's engine.
        const auto follow = [this, engine] {
            connect(stage->app(), &view::App::languageChanged, engine, &QQmlEngine::retranslate);
        };
        connect(stage.get(), &Stage::appChanged, engine, follow);
        follow();
        qmlRegisterSingletonInstance("AmbitTest", 1, 0, "Stage", stage.get());
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        engine->addImageProvider(QStringLiteral("photo"), new StagePhotos(*stage, &Stage::store));
        engine->addImageProvider(QStringLiteral("watched"), new StagePhotos(*stage, &Stage::watchedStore));
    }

    void cleanupTestCase() { stage.reset(); }

private:
    std::unique_ptr<Stage> stage;
};

} // namespace ambit::test

// QUICK_TEST_MAIN_WITH_SETUP in full: the fonts come before the application object that it makes.
int main(int argc, char** argv) {
    const ambit::desktop::OwnFonts fonts(true);
    QTEST_SET_MAIN_SOURCE_PATH
    ambit::test::Setup setup;
    return quick_test_main_with_setup(argc, argv, "screens", nullptr, &setup);
}
#include "main.moc"
