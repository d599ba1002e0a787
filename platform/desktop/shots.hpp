// Pictures of a screen: phone and tablet size, day and night.
#pragma once

#include "desktop/hand.hpp"
#include "model/app.hpp"

#include <QSize>
#include <QStringList>
#include <filesystem>

namespace ambit::desktop {

class Shots {
public:
    static constexpr QSize phone{390, 844};
    static constexpr QSize tablet{1180, 820};

    Shots(view::App& ofApp, QQuickWindow& ofWindow, std::filesystem::path into)
        : app(&ofApp), window(&ofWindow), folder(std::move(into)) {}

    /// Four PNGs named "<number>-<name>-<size>-<appearance>.png"; the first call for a name counts, later
    /// ones do nothing. Leaves the window as it was.
    [[nodiscard]] Result<void> take(const QString& name);

private:
    [[nodiscard]] Result<void> grab(const QString& file) const;

    view::App* app;
    QQuickWindow* window;
    std::filesystem::path folder;
    QStringList taken;
};

} // namespace ambit::desktop
