// A fresh archive with the demo helicopter, a clock that the test sets, and the app over them.
#pragma once

#include "model/app.hpp"

#include <QTemporaryDir>
#include <memory>

namespace ambit::test {

class House {
public:
    House();

    /// The daily walk, begun by Robin Example at 07:30 local time on 20 June 2026.
    [[nodiscard]] bool begin();
    /// Does what the card says, settling sound with a value within limits, until this point is on the card;
    /// "" until all is settled.
    [[nodiscard]] bool walkTo(const QString& pointId);
    /// One touch of that kind.
    [[nodiscard]] bool touchCard();
    /// Begins, walks everything sound, concludes fit, makes a key and signs.
    [[nodiscard]] bool wholeRound();
    void passMinutes(int minutes) { clock.at.ms += std::int64_t{60'000} * minutes; }
    /// What the round's log says so far.
    [[nodiscard]] std::size_t events() const { return app->round()->openRound().events().size(); }
    [[nodiscard]] static QUrl photo(const QString& name); ///< of the helicopter's
    /// The app's own end and start again, on the same archive and, if there is one, network.
    void restart();

    QTemporaryDir folder;
    std::unique_ptr<archive::Archive> archive;
    LocalInstant clock;
    /// Used from the next restart on.
    std::function<Result<std::unique_ptr<view::LinkToWatchers>>(const record::Signer&)> linkToWatchers;
    QLocale::MeasurementSystem lengths = QLocale::MetricSystem; ///< the same
    QStringList spoken;                                         ///< aloud
    bool hasVoice = true;
    int calls = 0; ///< of the voice, to be still among them
    std::unique_ptr<view::App> app;
    const QString registration = QStringLiteral("OX-DEMO");
};

} // namespace ambit::test
