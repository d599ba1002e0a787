// How a program or a test brings the screens up: the same for each, so that none has a screen of its own.
#pragma once

#include "model/app.hpp"

class QQmlApplicationEngine;
class QQmlEngine;

namespace ambit::view {

/// Style and fonts; before any QML is loaded, after the application object is there.
void prepareApplication();

/// Where the module is found and where photos come from. The archive must outlive the engine.
void prepareEngine(QQmlEngine& engine, const archive::Archive& archive);

/// Loads Main.qml with this app; false if it couldn't be (the engine has said why on stderr).
[[nodiscard]] bool showMain(QQmlApplicationEngine& engine, App& app);

} // namespace ambit::view
