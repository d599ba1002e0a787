#include "stage.hpp"

#include "base/canonical.hpp"

#include "../view/well_within.hpp"
#include "desktop/demo.hpp"
#include "model/photos.hpp"
#include "model/qr.hpp"
#include "paper/pages.hpp"

#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ambit::test {

Stage::Stage() {
    fresh();
}

Stage::~Stage() = default;

void Stage::fresh() {
    clock = parseLocalInstant("2026-06-20T07:30:00+02:00").value();
    const auto oldFolder = std::move(folder);
    folder = std::make_unique<QTemporaryDir>();
    const std::string file = folder->filePath(QStringLiteral("archive.sqlite")).toStdString();
    auto opened = archive::Archive::open(file);
    if (!opened) qFatal("%s", toText(opened.error()).c_str());
    auto oldApp = std::move(current);
    auto oldArchive = std::move(archive);
    archive = std::make_unique<archive::Archive>(std::move(*opened));
    if (auto added = desktop::addDemoAircraft(*archive, AMBIT_ROOT "/demo-aircraft"); !added)
        qFatal("%s", toText(added.error()).c_str());
    network = Network{};
    view::Services services{*archive,
                            file,
                            [this] { return clock; },
                            [] {
                                return round::Position{"50.0000", "10.0000"};
                            },
                            view::readPhoto,
                            folder->filePath(QStringLiteral("keys")).toStdString(),
                            paper::drawRecord};
    services.linkToWatchers = network.opener();
    services.watchedFile = folder->filePath(QStringLiteral("watched.sqlite")).toStdString();
    auto oldWatched = std::move(watched);
    watched =
        std::make_unique<archive::Archive>(std::move(archive::Archive::open(services.watchedFile).value()));
    heardOf.clear();
    services.linkToWalkers = [this](const record::Signer&) -> Result<std::unique_ptr<view::LinkToWalkers>> {
        auto link = std::make_unique<PlayedLink>();
        toWalkers = link.get();
        return link;
    };
    spoken.clear();
    services.speak = [this](const QString& words) {
        if (!words.isEmpty()) spoken << words;
        return hasVoice;
    };
    feelings.clear();
    services.feel = [this](view::Haptic what) {
        feelings << (what == view::Haptic::taken     ? QStringLiteral("taken")
                     : what == view::Haptic::refused ? QStringLiteral("refused")
                                                     : QStringLiteral("lookUp"));
    };
    current = std::make_unique<view::App>(std::move(services));
    current->habits()->touchOnly();
    emit appChanged(); // before the old one goes: bindings let go of it here
}

bool Stage::walkOn() {
    view::RoundView* round = current->round();
    if (round == nullptr) return false;
    advance(10);
    bool done = false;
    if (round->cardKind() == QStringLiteral("go")) done = round->atStand();
    if (round->cardKind() == QStringLiteral("set") && !done) done = round->changeSetting();
    if (round->cardKind() == QStringLiteral("settle") && !done) {
        const auto& limit = round->openRound().airframe().point(round->pointId().toStdString())->limit;
        done = round->settleSound(limit ? QString::fromStdString(test::wellWithin(*limit)) : QString());
    }
    return done;
}

bool Stage::walkTo(const QString& pointId) {
    view::RoundView* round = current->round();
    while (round != nullptr && round->cardKind() != QStringLiteral("done")) {
        if (!pointId.isEmpty() && round->pointId() == pointId) return true;
        if (!walkOn()) return false;
    }
    return pointId.isEmpty();
}

QString Stage::ask(const QString& kind, const QString& point, const QString& words, const QString& who) {
    using Kind = round::Statement::Kind;
    view::RoundView* round = current->round();
    if (round == nullptr) return QStringLiteral("no round");
    script::Ask ask;
    ask.kind = kind == QStringLiteral("lookAgain")  ? Kind::lookAgain
               : kind == QStringLiteral("question") ? Kind::question
                                                    : Kind::remark;
    ask.point = point.toStdString();
    ask.words = words.toStdString();
    ask.who = {who.toStdString(), "instructor", ""};
    auto asked = asker.say(ask, round->openRound().state(), clock.at);
    if (!asked) return QString::fromStdString(toText(asked.error()));
    const auto heard = round->hear(std::move(*asked));
    return heard ? QString() : QString::fromStdString(toText(heard.error()));
}

QString Stage::invitation() const {
    const auto code = watch::qrText(network.invitation);
    return code ? QString::fromStdString(*code) : QString();
}

bool Stage::follow(const QString& name) {
    if (network.link == nullptr) return false;
    network.link->comes(name.toStdString());
    return true;
}

void Stage::leave(const QString& name) {
    if (network.link != nullptr) network.link->leaves(name.toStdString());
}

void Stage::refuse(const QString& who, const QString& why) {
    if (network.link != nullptr)
        emit network.link->refused(who, {ErrorCode::refused, why.toStdString(), {}, {}});
}

QString Stage::codeToFollow() {
    const watch::Invitation code{
        {watch::Address::v4({192, 168, 43, 18})}, watch::usualPort, std::string(64, 'b'), "ABCDEFGH"};
    return QString::fromStdString(*watch::typedCode(code));
}

bool Stage::hear(int walker, const QString& who, int events) {
    if (toWalkers == nullptr || current->round() == nullptr) return false;
    const auto number = static_cast<std::uint64_t>(walker);
    const auto& round = current->round()->openRound();
    const auto& all = round.events();
    std::size_t& heard = heardOf[walker];
    const std::size_t until = std::clamp(static_cast<std::size_t>(std::max(events, 0)), heard, all.size());
    if (heard == 0) {
        emit toWalkers->known(number, {std::string(64, static_cast<char>('a' + walker)), who.toStdString()});
        emit toWalkers->stateChanged(number, watch::LinkState::in, {});
        const auto& opened = std::get<round::Opened>(all.front().what);
        const auto text = archive->airframeText(opened.airframeSha256);
        if (!text ||
            !watched->addAircraft({opened.registration, opened.serial, opened.airframeSha256, "It"}, *text))
            return false;
        emit toWalkers->roundChanged(number, round.state().id, static_cast<std::int64_t>(until));
    }
    const std::vector<round::Event> more(all.begin() + static_cast<std::ptrdiff_t>(heard),
                                         all.begin() + static_cast<std::ptrdiff_t>(until));
    heard = until;
    for (const round::Event& event : more) {
        std::vector<archive::PhotoBytes> photos;
        if (const auto* settled = std::get_if<round::Settled>(&event.what))
            for (const round::Photo& photo : settled->photos)
                photos.push_back({photo, archive->photo(photo.sha256).value()});
        if (!watched->append(round.state().id, event, photos)) return false;
    }
    emit toWalkers->logged(number, round.state().id, more);
    return true;
}

bool Stage::hearRecord(int walker) {
    const std::string sha256 = current->signing()->recordId().toStdString();
    const auto json = archive->recordJson(sha256);
    if (toWalkers == nullptr || !json) return false;
    emit toWalkers->recordHere(static_cast<std::uint64_t>(walker), {sha256, *json, {}});
    return true;
}

void Stage::lose(int walker) {
    if (toWalkers != nullptr)
        emit toWalkers->stateChanged(static_cast<std::uint64_t>(walker), watch::LinkState::connecting, {});
}

QString Stage::readQr(const QString& pictureFile) {
    return view::readQr(QImage(pictureFile));
}

QVariantMap Stage::light(QQuickWindow* window) {
    const QImage image = window->grabWindow().convertToFormat(QImage::Format_RGB32);
    const auto part = [](int value) {
        const double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
    };
    std::array<double, 256> linear{};
    for (int value = 0; value < 256; ++value)
        linear[static_cast<std::size_t>(value)] = part(value);
    const auto of = [&](int value) { return linear[static_cast<std::size_t>(value)]; };
    double most = 0, sum = 0;
    for (int y = 0; y < image.height(); ++y) {
        const auto* line = reinterpret_cast<const QRgb*>(image.constScanLine(y));
        for (int x = 0; x < image.width(); ++x) {
            const double light =
                0.2126 * of(qRed(line[x])) + 0.7152 * of(qGreen(line[x])) + 0.0722 * of(qBlue(line[x]));
            most = std::max(most, light);
            sum += light;
        }
    }
    return {{QStringLiteral("most"), most},
            {QStringLiteral("mean"), sum / std::max(1, image.width() * image.height())}};
}

void Stage::shoot(QQuickWindow* window, const QString& name) {
    window->grabWindow().save(shotsFolder() + u'/' + name + QStringLiteral(".png"));
}

QUrl Stage::photo(const QString& name) const {
    return QUrl::fromLocalFile(QStringLiteral(AMBIT_ROOT "/demo-aircraft/helicopter/photos/") + name);
}

QString Stage::cardPhoto() const {
    QImage image(2000, 1500, QImage::Format_RGB32);
    image.fill(QColor(118, 122, 120));
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    // Paint has a grain.
    for (int i = 0; i < 4000; ++i) {
        const int grey = 112 + (i * 37) % 18;
        painter.setPen(QColor(grey, grey, grey));
        painter.drawPoint((i * 7919) % 2000, (i * 104729) % 1500);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(228, 230, 226));
    painter.drawRoundedRect(QRectF(200, 480, 856, 539.8), 31.8, 31.8);
    painter.setBrush(QColor(20, 20, 20));
    for (const double x : {1300.0, 1500.0})
        painter.drawEllipse(QPointF(x + 0.5, 700.5), 6, 6);
    painter.end();
    QString file = folder->filePath(QStringLiteral("card.png"));
    image.save(file);
    return file;
}

QString Stage::lastSettled(const QString& point) const {
    QString last;
    for (const auto& event : current->round()->openRound().events())
        if (const auto* settled = std::get_if<round::Settled>(&event.what);
            settled != nullptr && settled->point == point.toStdString())
            last = QString::fromStdString(canonicalJson(round::toJson(event)));
    return last;
}

QString Stage::lastTrend(const QString& point) const {
    QString last;
    for (const auto& event : current->round()->openRound().events())
        if (const auto* trend = std::get_if<round::Trended>(&event.what);
            trend != nullptr && trend->point == point.toStdString())
            last = QString::fromStdString(canonicalJson(round::toJson(event)));
    return last;
}

QStringList Stage::events() const {
    QStringList kinds;
    if (current->round() != nullptr)
        for (const auto& event : current->round()->openRound().events())
            kinds << QString::fromLatin1(round::kindOf(event.what));
    return kinds;
}

} // namespace ambit::test
