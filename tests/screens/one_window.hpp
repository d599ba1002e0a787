// A device for a test in C++: a fresh archive with the demo aircraft, the app and its window, and a clock
// that is moved.
#pragma once

#include "../view/well_within.hpp"
#include "desktop/demo.hpp"
#include "desktop/fonts.hpp"
#include "model/photos.hpp"
#include "model/screens.hpp"
#include "paper/pages.hpp"

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTest>

namespace ambit::test {

class OneWindow {
public:
    explicit OneWindow(QSize size) : clock(*parseLocalInstant("2026-06-20T07:30:00+02:00")) {
        const std::string file = folder.filePath(QStringLiteral("archive.sqlite")).toStdString();
        archive = std::make_unique<archive::Archive>(std::move(archive::Archive::open(file).value()));
        if (auto added = desktop::addDemoAircraft(*archive, AMBIT_ROOT "/demo-aircraft"); !added)
            qFatal("%s", toText(added.error()).c_str());
        view::Services services{*archive,
                                file,
                                [this] { return clock; },
                                [] { return std::optional<round::Position>(); },
                                view::readPhoto,
                                folder.filePath(QStringLiteral("keys")).toStdString(),
                                paper::drawRecord};
        services.feel = [this](view::Haptic what) { felt.push_back(what); };
        app = std::make_unique<view::App>(std::move(services));
        engine = std::make_unique<QQmlApplicationEngine>();
        view::prepareEngine(*engine, *archive);
        if (!view::showMain(*engine, *app)) qFatal("The screens don't load.");
        window = qobject_cast<QQuickWindow*>(engine->rootObjects().constFirst());
        window->resize(size);
        window->requestActivate();
    }
    ~OneWindow() {
        engine.reset(); // screens before what they show
        app.reset();
    }
    OneWindow(const OneWindow&) = delete;
    OneWindow& operator=(const OneWindow&) = delete;

    /// In sight, by its object name; nullptr if it isn't.
    [[nodiscard]] QQuickItem* seen(const QString& name) const { return findIn(window->contentItem(), name); }
    [[nodiscard]] std::size_t events() const {
        return app->round() == nullptr ? 0 : app->round()->openRound().events().size();
    }
    /// Lets the window work off what is due.
    static void rest() {
        for (int i = 0; i < 3; ++i) {
            QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
            QCoreApplication::processEvents();
        }
    }
    /// Does what the card says, settling sound, until a point without a limit is on the card.
    void walkToAPoint() {
        auto& round = *app->round();
        while (round.cardKind() != QStringLiteral("settle") || round.measured()) {
            clock.at.ms += 8'000;
            const QString kind = round.cardKind();
            const auto* point = round.openRound().airframe().point(round.pointId().toStdString());
            const auto* limit = point != nullptr && point->limit ? &*point->limit : nullptr;
            const bool done =
                kind == QStringLiteral("go") ? round.atStand()
                : kind == QStringLiteral("set")
                    ? round.changeSetting()
                    : round.settleSound(limit == nullptr ? QString()
                                                         : QString::fromStdString(test::wellWithin(*limit)));
            if (!done) qFatal("%s", qPrintable(app->problem()));
        }
        rest();
    }

    QTemporaryDir folder;
    LocalInstant clock;
    std::unique_ptr<archive::Archive> archive;
    std::vector<view::Haptic> felt;
    std::unique_ptr<view::App> app;
    std::unique_ptr<QQmlApplicationEngine> engine;
    QQuickWindow* window = nullptr;

private:
    static QQuickItem* findIn(QQuickItem* parent, const QString& name) {
        if (!parent->isVisible()) return nullptr;
        if (parent->objectName() == name) return parent;
        const auto children = parent->childItems();
        for (QQuickItem* child : children)
            if (QQuickItem* found = findIn(child, name)) return found;
        return nullptr;
    }
};

} // namespace ambit::test
