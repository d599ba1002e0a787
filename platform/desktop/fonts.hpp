// Keeps the system's fonts from standing in for the app's own.
#pragma once

#include <QTemporaryDir>

namespace ambit::desktop {

/// Before the application object, and for as long as it lives. Some systems have a B612 Mono that calls
/// itself the regular B612: the family is hidden from us there, and the app's own faces are the only ones of
/// that name. `only`: no other fonts at all, so that pictures are the same on every machine.
class OwnFonts {
public:
    explicit OwnFonts(bool only);

private:
    QTemporaryDir folder;
};

} // namespace ambit::desktop
