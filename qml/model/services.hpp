// What the view models need from outside, built in main.cpp (or a test) and handed in; nothing here is looked
// up elsewhere.
#pragma once

#include "archive/archive.hpp"
#include "base/time.hpp"
#include "model/links.hpp"
#include "record/pdf.hpp"
#include "sky/clock.hpp"

#include <QLocale>
#include <QStringList>
#include <QUrl>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

class QSettings;

namespace ambit::view {

/// What a hand is told without looking.
enum class Haptic {
    taken,   ///< an event is on disk
    refused, ///< nothing has changed; the screen says why
    lookUp,  ///< something came that wants reading: somebody who follows asks
};

/// What a photo that is taken in keeps besides its picture.
enum class PhotoData {
    time,    ///< when it was taken, as far as the camera knew
    asTaken, ///< all that the camera wrote: place, device, thumbnail
};

/// The archive and the settings must outlive whatever holds these.
struct Services {
    archive::Archive& archive;
    std::filesystem::path archiveFile; ///< the same: what takes long has a connection of its own
    std::function<LocalInstant()> now;
    std::function<std::optional<round::Position>()>
        position; ///< the last known place; empty function: no positioning
    /// Takes 50 to 500 ms of a large photo; called on any thread.
    std::function<Result<archive::PhotoBytes>(const QUrl&, PhotoData)> readPhoto;
    std::filesystem::path keys; ///< folder of the signing keys
    record::DrawPages draw;
    /// Opens the walker's end of a live watch, certified by this person's key. Empty function: no network.
    std::function<Result<std::unique_ptr<LinkToWatchers>>(const record::Signer&)> linkToWatchers = {};
    /// The same at the watcher's end; what comes is kept in `watchedFile`.
    std::function<Result<std::unique_ptr<LinkToWalkers>>(const record::Signer&)> linkToWalkers = {};
    std::filesystem::path watchedFile = {}; ///< an archive of its own: only copies, no records
    /// Says it aloud, now, in place of what is being said; "" only stops. False: there is no voice here.
    std::function<bool(const QString&)> speak = {};
    /// What the device's clock is worth, by the satellites' time; nothing: they told none. Empty function: no
    /// positioning.
    std::function<std::optional<sky::ClockOff>()> clockOff = {};
    /// The languages of the device, the dearest first: "de_AT". Empty: English.
    QStringList locales = {};
    QLocale::MeasurementSystem lengths = QLocale::MetricSystem; ///< how lengths are read where the device is
    QSettings* settings = nullptr; ///< night, the last person's name; nullptr: nothing is remembered
    /// Makes the device be felt, and returns at once. Empty function: it can't, as no desktop can.
    std::function<void(Haptic)> feel = {};
};

/// Takes what went wrong to wherever it is shown.
using Report = std::function<void(const Error&)>;

} // namespace ambit::view
