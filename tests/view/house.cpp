#include "house.hpp"

#include "airframe/read.hpp"
#include "base/files.hpp"
#include "model/photos.hpp"
#include "paper/pages.hpp"
#include "well_within.hpp"

namespace ambit::test {

namespace {

const std::string helicopter = AMBIT_ROOT "/demo-aircraft/helicopter/";

} // namespace

House::House() : clock(*parseLocalInstant("2026-06-20T07:30:00+02:00")) {
    restart();
    const auto text = *readFile(helicopter + "airframe.json");
    const auto airframe = *airframe::read(text);
    if (auto added = archive->addAircraft({"OX-DEMO", "DEMO-001", airframe.sha256, airframe.name}, text);
        !added)
        qFatal("%s", toText(added.error()).c_str());
    app->aircraft()->refresh();
}

void House::restart() {
    app.reset();
    archive.reset();
    const std::string file = folder.filePath(QStringLiteral("archive.sqlite")).toStdString();
    archive = std::make_unique<archive::Archive>(std::move(archive::Archive::open(file).value()));
    view::Services services{*archive,
                            file,
                            [this] { return clock; },
                            [] {
                                return round::Position{"50.0000", "10.0000"};
                            },
                            view::readPhoto,
                            folder.filePath(QStringLiteral("keys")).toStdString(),
                            paper::drawRecord};
    services.linkToWatchers = linkToWatchers;
    services.lengths = lengths;
    services.speak = [this](const QString& words) {
        ++calls;
        if (!words.isEmpty() && hasVoice) spoken << words;
        return hasVoice;
    };
    app = std::make_unique<view::App>(std::move(services));
    app->habits()->touchOnly();
}

bool House::begin() {
    return app->begin(registration, QStringLiteral("daily"), QStringLiteral("Robin Example"),
                      QStringLiteral("pilot"), QStringLiteral("DEMO-PPL-0001"),
                      {{QStringLiteral("airframe-hours"), QStringLiteral("1284.6")},
                       {QStringLiteral("landings"), QStringLiteral("4107")}});
}

bool House::touchCard() {
    clock.at.ms += 10'000;
    view::RoundView& round = *app->round();
    const QString kind = round.cardKind();
    if (kind == QStringLiteral("go")) return round.atStand();
    if (kind == QStringLiteral("set")) return round.changeSetting();
    if (kind != QStringLiteral("settle")) return false;
    const auto& limit = round.openRound().airframe().point(round.pointId().toStdString())->limit;
    return round.settleSound(limit ? QString::fromStdString(test::wellWithin(*limit)) : QString());
}

bool House::walkTo(const QString& pointId) {
    const view::RoundView& round = *app->round();
    while (round.cardKind() != QStringLiteral("done")) {
        if (!pointId.isEmpty() && round.pointId() == pointId) return true;
        if (!touchCard()) return false;
    }
    return pointId.isEmpty();
}

bool House::wholeRound() {
    if (!begin() || !walkTo({}) || !app->round()->conclude(true, {})) return false;
    if (!app->signing()->keyExists() &&
        !app->signing()->newKey(QStringLiteral("Robin Example"), QStringLiteral("a good passphrase")))
        return false;
    return app->signing()->sign(QStringLiteral("a good passphrase"));
}

QUrl House::photo(const QString& name) {
    return QUrl::fromLocalFile(QString::fromStdString(helicopter) + QStringLiteral("photos/") + name);
}

} // namespace ambit::test
