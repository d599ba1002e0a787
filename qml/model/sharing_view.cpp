#include "model/sharing_view.hpp"

#include "archive/import.hpp"
#include "model/qr.hpp"
#include "model/words.hpp"

#include <QBuffer>
#include <QSettings>
#include <algorithm>

namespace ambit::view {

namespace {

const QString aloudKey = QStringLiteral("readAloud");

QString dataUrl(const QImage& picture) {
    QByteArray png;
    QBuffer buffer(&png);
    buffer.open(QIODevice::WriteOnly);
    if (!picture.save(&buffer, "PNG")) return {};
    return QStringLiteral("data:image/png;base64,") + QString::fromLatin1(png.toBase64());
}

} // namespace

SharingView::SharingView(const Services& handedIn, const SigningView& itsSigning, Report whereTo,
                         QObject* parent)
    : QObject(parent), services(&handedIn), signing(&itsSigning), report(std::move(whereTo)) {
    if (services->settings != nullptr) isAloud = services->settings->value(aloudKey, true).toBool();
    second.setInterval(1000);
    second.setTimerType(Qt::PreciseTimer);
    connect(&second, &QTimer::timeout, this, [this] {
        if (codeSeconds() == 0) return putCodeAway();
        emit codeSecondsChanged();
    });
}

SharingView::~SharingView() = default;

bool SharingView::possible() const {
    return static_cast<bool>(services->linkToWatchers);
}

// --- the link ---------------------------------------------------------------------------------------------

bool SharingView::start(const QString& passphrase, const QString& key) {
    if (link) return true;
    const auto opened = [&]() -> Result<std::unique_ptr<LinkToWatchers>> {
        if (!possible())
            return fail(ErrorCode::unsupported, say("This device has no network to share the walk by."));
        const auto signer = signing->unlock(passphrase, key);
        if (!signer) return tl::unexpected(signer.error());
        return services->linkToWatchers(*signer);
    };
    auto made = opened();
    if (!made) {
        report(made.error());
        return false;
    }
    link = std::move(*made);
    peers = link->knownAtFirst();
    listen();
    handOver();
    forgetRefusal();
    emit openChanged();
    emit knownChanged();
    return true;
}

void SharingView::listen() {
    ears = std::make_unique<QObject>();
    const auto on = [this](auto signal, auto slot) {
        connect(link.get(), signal, ears.get(), slot, Qt::QueuedConnection);
    };
    on(&LinkToWatchers::watchingChanged, [this](const std::vector<watch::Watcher>& now) { take(now); });
    on(&LinkToWatchers::knownChanged, [this](const std::vector<watch::Peer>& now) {
        peers = now;
        emit knownChanged();
    });
    on(&LinkToWatchers::said, [this](std::uint64_t connection, const watch::Say& what,
                                     const record::Certificate& by) { hear(connection, what, by); });
    on(&LinkToWatchers::offered,
       [this](std::uint64_t connection, const std::string& id, const std::string& recordSha256,
              const std::vector<std::string>& files) { keep(connection, id, recordSha256, files); });
    on(&LinkToWatchers::refused, [this](const QString& who, const Error& why) { refuse(who, why); });
    on(&LinkToWatchers::invitationEnded, [this] { forgetCode(); });
}

void SharingView::stop() {
    if (!link) return;
    link.reset();
    ears.reset();
    posted = 0;
    roundRecord.clear();
    forgetCode();
    take({});
    peers.clear();
    emit openChanged();
    emit knownChanged();
}

void SharingView::takeBack(const QString& id) {
    if (link) link->takeBack(id.toStdString());
}

// --- the round --------------------------------------------------------------------------------------------

void SharingView::setRound(RoundView* view) {
    if (round != nullptr) disconnect(round, &RoundView::logged, this, &SharingView::post);
    round = view;
    if (round == nullptr) return; // whoever follows still has it in hand
    connect(round, &RoundView::logged, this, &SharingView::post);
    handOver();
}

/// What is on disk already the link reads there itself, whether the round has just begun or is taken up
/// again.
void SharingView::handOver() {
    if (!link || round == nullptr) return;
    posted = round->openRound().events().size();
    const auto& signature = round->openRound().state().signature;
    roundRecord = signature ? signature->recordSha256 : std::string();
    link->goOn(round->roundId().toStdString());
    emit watchingChanged(); // how far each is behind
}

void SharingView::post() {
    if (!link || round == nullptr) return;
    const auto& events = round->openRound().events();
    for (; posted < events.size(); ++posted) {
        // Of the last one, `signed`, the link tells the record, too.
        if (const auto* its = std::get_if<round::Signed>(&events[posted].what))
            roundRecord = its->recordSha256;
        link->committed(events[posted]);
    }
    if (!watchers.empty()) emit watchingChanged();
}

void SharingView::tellSigned(const QString& recordId) {
    if (link && !roundRecord.empty() && recordId.toStdString() == roundRecord) link->sealed(roundRecord);
}

// --- who follows ------------------------------------------------------------------------------------------

/// After a cut the old connection of a device may still stand beside its new one.
void SharingView::take(std::vector<watch::Watcher> now) {
    std::vector<watch::Watcher> latest;
    for (watch::Watcher& one : now) {
        const auto same = std::find_if(latest.begin(), latest.end(), [&](const auto& other) {
            return other.certificateSha256 == one.certificateSha256;
        });
        if (same == latest.end())
            latest.push_back(std::move(one));
        else if (same->connection < one.connection)
            *same = std::move(one);
    }
    watchers = std::move(latest);
    QString words;
    if (watchers.size() == 1) words = tr("%1 follows").arg(text(watchers[0].name));
    if (watchers.size() == 2)
        words = tr("%1 and %2 follow").arg(text(watchers[0].name), text(watchers[1].name));
    if (watchers.size() > 2) words = tr("%1 follow").arg(watchers.size());
    emit watchingChanged();
    emit knownChanged(); // who of them is here
    if (words == watchingWords) return;
    watchingWords = words;
    emit watchingTextChanged();
}

QVariantList SharingView::watching() const {
    QVariantList list;
    for (const watch::Watcher& one : watchers)
        list << QVariantMap{
            {QStringLiteral("id"), text(one.certificateSha256)},
            {QStringLiteral("name"), text(one.name)},
            {QStringLiteral("fingerprint"), fingerprintText(one.certificateSha256)},
            {QStringLiteral("connection"), QString::number(one.connection)},
            {QStringLiteral("behind"),
             static_cast<int>(std::max<std::int64_t>(0, static_cast<std::int64_t>(posted) - one.kept))}};
    return list;
}

QVariantList SharingView::known() const {
    QVariantList list;
    for (const watch::Peer& one : peers) {
        const bool here = std::any_of(watchers.begin(), watchers.end(), [&](const auto& other) {
            return other.certificateSha256 == one.certificateSha256;
        });
        list << QVariantMap{{QStringLiteral("id"), text(one.certificateSha256)},
                            {QStringLiteral("name"), text(one.name)},
                            {QStringLiteral("fingerprint"), fingerprintText(one.certificateSha256)},
                            {QStringLiteral("here"), here}};
    }
    return list;
}

// --- what they say ----------------------------------------------------------------------------------------

void SharingView::hear(std::uint64_t connection, const watch::Say& what, const record::Certificate& by) {
    Result<void> heard = fail(ErrorCode::refused, say("The round is not in hand on the walker's device now."),
                              "", say("Say it again when it goes on."));
    const auto asks = [this] { return round->openRound().state().asks.size(); };
    if (round != nullptr) {
        const std::size_t before = asks();
        heard = round->hear(what.statement, what.jws, by);
        if (asks() > before) speak(round->openRound().state().asks.back().what);
    }
    link->heard(connection, what.id, heard ? std::string() : toText(heard.error()));
}

void SharingView::speak(const round::Statement& said) const {
    if (!isAloud || !services->speak) return;
    const auto* point = round->shown().point(said.point);
    QString words =
        tr("From %1. %2.")
            .arg(text(said.who.name), askTitle(said.kind, point == nullptr ? QString() : text(point->name)));
    if (!said.words.empty()) words += QStringLiteral(" ") + text(said.words);
    (void)services->speak(words);
}

void SharingView::setReadAloud(bool aloud) {
    if (isAloud == aloud) return;
    isAloud = aloud;
    if (!aloud && services->speak) (void)services->speak({});
    if (services->settings != nullptr) services->settings->setValue(aloudKey, aloud);
    emit readAloudChanged();
}

void SharingView::keep(std::uint64_t connection, const std::string& id, const std::string& recordSha256,
                       const std::vector<std::string>& files) {
    const auto taken = archive::takeRecord(services->archive, recordSha256, files);
    link->heard(connection, id, taken ? std::string() : toText(taken.error()));
    if (!taken) return;
    link->sealed(recordSha256);
    emit countersigned(text(recordSha256));
}

void SharingView::refuse(const QString& whose, const Error& why) {
    const LocalInstant now = services->now();
    refusal = clockText(now.at, now.offsetMinutes) + QStringLiteral("\u00a0· ");
    refusal += whose.isEmpty() ? text(why.what) : saidOf(whose, text(why.what));
    emit lastRefusalChanged();
}

void SharingView::forgetRefusal() {
    refusal.clear();
    emit lastRefusalChanged();
}

// --- the invitation ---------------------------------------------------------------------------------------

bool SharingView::invite() {
    if (!link) return false;
    if (const auto shown = showCode(); !shown) {
        putCodeAway(); // a word that nobody can read lets nobody in
        report(shown.error());
        return false;
    }
    forgetRefusal();
    return true;
}

Result<void> SharingView::showCode() {
    const auto invitation = link->invite();
    if (!invitation) return tl::unexpected(invitation.error());
    const auto code = watch::qrText(*invitation);
    if (!code) return tl::unexpected(code.error());
    picture = dataUrl(qrPicture(text(*code)));
    typed = text(watch::typedCode(*invitation).value_or(std::string()));
    codeShown.start();
    second.start();
    emit codeChanged();
    emit codeSecondsChanged();
    return {};
}

void SharingView::putCodeAway() {
    if (link) link->closeInvitation();
    forgetCode();
}

void SharingView::forgetCode() {
    second.stop();
    codeShown.invalidate();
    picture.clear();
    typed.clear();
    emit codeChanged();
    emit codeSecondsChanged();
}

int SharingView::codeSeconds() const {
    if (!codeShown.isValid()) return 0;
    const std::int64_t left = watch::Door::wordLivesMs - codeShown.elapsed();
    return static_cast<int>(std::max<std::int64_t>(0, (left + 999) / 1000));
}

} // namespace ambit::view
