#include "model/watch_view.hpp"

#include "archive/import.hpp"
#include "model/photos.hpp"
#include "model/pictures.hpp"
#include "model/qr.hpp"
#include "model/said.hpp"
#include "model/shown_airframe.hpp"
#include "model/story.hpp"
#include "model/words.hpp"

#include <QImage>
#include <QQmlEngine>
#include <algorithm>
#include <utility>

namespace ambit::view {

namespace {

constexpr int judgeMs = 1000; ///< how often it is asked whether somebody is stuck

Result<std::unique_ptr<FollowedRound>> followedFrom(const archive::Archive& archive,
                                                    std::vector<round::Event> events) {
    const auto* opened = events.empty() ? nullptr : std::get_if<round::Opened>(&events.front().what);
    if (opened == nullptr) return fail(ErrorCode::notFound, ambit::say("Nothing of this round is here yet."));
    auto airframe = airframeShown(archive, opened->airframeSha256);
    if (!airframe) return tl::unexpected(airframe.error());
    return FollowedRound::make(std::make_unique<const airframe::Airframe>(std::move(*airframe)),
                               std::move(events));
}

} // namespace

// --- the list ---------------------------------------------------------------------------------------------

void StudentsModel::update(const std::vector<Student*>& next) {
    std::vector<Row> wanted;
    wanted.reserve(next.size());
    for (Student* one : next)
        wanted.push_back({one});
    sync(rows, std::move(wanted), {});
}

int StudentsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant StudentsModel::data(const QModelIndex& at, int role) const {
    if (!at.isValid() || at.row() >= rowCount({}) || role != StudentRole) return {};
    return QVariant::fromValue(rows[static_cast<std::size_t>(at.row())].student);
}

QHash<int, QByteArray> StudentsModel::roleNames() const {
    return {{StudentRole, "student"}};
}

// --- open and closed --------------------------------------------------------------------------------------

WatchView::WatchView(const Services& handedIn, SigningView& signingView, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), signing(&signingView), report(std::move(whereTo)) {
    connect(&ticker, &QTimer::timeout, this, [this] {
        for (const auto& one : followed)
            one->judge();
    });
}

WatchView::~WatchView() {
    link.reset(); // before those it tells of
    rows.update({});
}

QString WatchView::me() const {
    return link ? text(person.name) + QStringLiteral(", ") + roleText(person.role) : QString();
}

Result<void> WatchView::tryStart(const QVariantMap& signature) {
    auto unlocked = signing->unlock(signature.value(QStringLiteral("passphrase")).toString(),
                                    signature.value(QStringLiteral("key")).toString());
    if (!unlocked) return tl::unexpected(unlocked.error());
    auto opened = services->linkToWalkers(*unlocked);
    if (!opened) return tl::unexpected(opened.error());
    auto archive = archive::Archive::open(services->watchedFile);
    if (!archive) return tl::unexpected(archive.error());
    person = {unlocked->certificate().name, wordsIn(signature, "role"), wordsIn(signature, "certificate")};
    signer.emplace(std::move(*unlocked));
    watched.emplace(std::move(*archive));
    link = std::move(*opened);
    return {};
}

bool WatchView::start(const QVariantMap& signature) {
    if (link) return true;
    if (auto done = tryStart(signature); !done) {
        report(done.error());
        return false;
    }
    walkers = link->knownAtFirst();
    listen();
    for (const watch::Walker& one : walkers) {
        follow(link->join(one));
        followed.back()->setPeer(one.who);
    }
    ticker.start(judgeMs);
    emit openChanged();
    emit knownChanged();
    return true;
}

void WatchView::stop() {
    link.reset();
    signer.reset();
    ticker.stop();
    rows.update({});
    for (auto& one : std::exchange(followed, {})) {
        one->disconnect(this);
        Student::letGo(std::move(one));
    }
    watched.reset();
    emit openChanged();
    emit knownChanged();
}

/// The link's thread speaks; this one listens.
void WatchView::listen() {
    connect(link.get(), &LinkToWalkers::stateChanged, this,
            [this](std::uint64_t number, watch::LinkState state, const Error& why) {
                if (Student* its = find(number)) its->setLink(state, why);
            });
    connect(link.get(), &LinkToWalkers::known, this, [this](std::uint64_t number, const watch::Peer& who) {
        Student* its = find(number);
        if (its == nullptr) return;
        its->setPeer(who);
        // Invited anew, and followed already: the connection made last is the one that holds.
        for (const auto& one : followed)
            if (one.get() != its && one->who().certificateSha256 == who.certificateSha256)
                return leave(one->number());
        emit knownChanged();
    });
    connect(link.get(), &LinkToWalkers::roundChanged, this,
            [this](std::uint64_t number, const std::string& roundId, std::int64_t) {
                if (Student* its = find(number)) readRound(*its, roundId);
            });
    connect(
        link.get(), &LinkToWalkers::logged, this,
        [this](std::uint64_t number, const std::string& roundId, const std::vector<round::Event>& events) {
            if (Student* its = find(number)) take(*its, roundId, events);
        });
    connect(link.get(), &LinkToWalkers::watching, this,
            [this](std::uint64_t number, const std::vector<std::string>& names) {
                QStringList others;
                for (const std::string& one : names)
                    if (one != person.name) others << text(one);
                if (Student* its = find(number)) its->setOthers(others.join(QStringLiteral(", ")));
            });
    // It was named by an event that is shown already.
    connect(link.get(), &LinkToWalkers::photoHere, this, [this](std::uint64_t number, const std::string&) {
        const Student* its = find(number);
        if (its != nullptr && its->round() != nullptr) emit its->round()->momentChanged();
    });
    connect(link.get(), &LinkToWalkers::recordHere, this,
            [this](std::uint64_t number, const watch::RecordHere& record) {
                Student* its = find(number);
                if (its == nullptr) return;
                if (auto kept = keep(*its, record); !kept) report(kept.error());
            });
    connect(link.get(), &LinkToWalkers::heard, this,
            [this](std::uint64_t number, const std::string& id, const std::string& why) {
                if (Student* its = find(number)) its->heard(id, why);
            });
    connect(link.get(), &LinkToWalkers::walkersChanged, this,
            [this](const std::vector<watch::Walker>& known) {
                walkers = known;
                emit knownChanged();
            });
}

// --- who is followed --------------------------------------------------------------------------------------

void WatchView::follow(std::uint64_t number) {
    auto student = std::make_unique<Student>(
        number, [this] { return services->now().at; }, nullptr);
    // A screen that asks for it by its number doesn't own it.
    QQmlEngine::setObjectOwnership(student.get(), QQmlEngine::CppOwnership);
    connect(student.get(), &Student::needChanged, this, &WatchView::sort);
    connect(student.get(), &Student::linkChanged, this, &WatchView::sort);
    followed.push_back(std::move(student));
    sort();
}

Student* WatchView::find(std::uint64_t number) const {
    const auto found = std::find_if(followed.begin(), followed.end(), [&](const auto& one) {
        return static_cast<std::uint64_t>(one->number()) == number;
    });
    return found == followed.end() ? nullptr : found->get();
}

Student* WatchView::student(int number) const {
    return find(static_cast<std::uint64_t>(number));
}

/// Those who can't be reached come last, whatever they needed.
void WatchView::sort() {
    std::vector<Student*> order;
    order.reserve(followed.size());
    for (const auto& one : followed)
        order.push_back(one.get());
    const auto rank = [](const Student* one) {
        const bool isNowhere = one->round() == nullptr && one->linkState() != watch::LinkState::in;
        return std::pair(isNowhere, one->needed());
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](const Student* a, const Student* b) { return rank(a) < rank(b); });
    rows.update(order);
}

bool WatchView::join(const QString& code) {
    if (!link) return false;
    const auto invitation = watch::readInvitation(code.trimmed().toStdString());
    if (!invitation) {
        report(invitation.error());
        return false;
    }
    follow(link->join(*invitation));
    return true;
}

QString WatchView::codeIn(const QVariant& picture) const {
    if (picture.canConvert<QImage>() && !picture.value<QImage>().isNull())
        return readQr(picture.value<QImage>());
    const auto image =
        services->readPhoto(picture.toUrl(), PhotoData::asTaken).and_then([](const auto& photo) {
            return decodedPhoto(photo.bytes, {storedSide, storedSide}, Doubt::refused);
        });
    if (!image) {
        report(image.error());
        return {};
    }
    return readQr(*image);
}

bool WatchView::joinKnown(const QString& id) {
    const std::string certificate = id.toStdString();
    for (const watch::Walker& one : walkers) {
        if (!link || one.who.certificateSha256 != certificate) continue;
        follow(link->join(one));
        followed.back()->setPeer(one.who);
        emit knownChanged();
        return true;
    }
    return false;
}

void WatchView::leave(int number) {
    const auto found = std::find_if(followed.begin(), followed.end(),
                                    [&](const auto& one) { return one->number() == number; });
    if (found == followed.end()) return;
    if (link) link->leave(static_cast<std::uint64_t>(number));
    std::unique_ptr<Student> its = std::move(*found);
    followed.erase(found);
    its->disconnect(this);
    sort();
    Student::letGo(std::move(its));
    emit knownChanged();
}

void WatchView::forget(const QString& id) {
    const std::string certificate = id.toStdString();
    std::vector<int> theirs;
    for (const auto& one : followed)
        if (one->who().certificateSha256 == certificate) theirs.push_back(one->number());
    for (const int number : theirs)
        leave(number);
    if (link) link->forget(certificate);
}

QVariantList WatchView::known() const {
    QVariantList list;
    for (const watch::Walker& one : walkers) {
        const bool isFollowed = std::any_of(followed.begin(), followed.end(), [&](const auto& student) {
            return student->who().certificateSha256 == one.who.certificateSha256;
        });
        list << QVariantMap{{QStringLiteral("id"), text(one.who.certificateSha256)},
                            {QStringLiteral("name"), text(one.who.name)},
                            {QStringLiteral("fingerprint"), fingerprintText(one.who.certificateSha256)},
                            {QStringLiteral("followed"), isFollowed}};
    }
    return list;
}

// --- rounds -----------------------------------------------------------------------------------------------

Result<std::unique_ptr<FollowedRound>> WatchView::followedBy(std::vector<round::Event> events) const {
    auto followedRound = followedFrom(*watched, std::move(events));
    if (followedRound)
        (*followedRound)->setPhotoSource([](const std::string& sha256) {
            return QStringLiteral("image://watched/") + text(sha256);
        });
    return followedRound;
}

void WatchView::sayAnew() {
    const auto say = [](FollowedRound* round, const archive::Archive& archive) {
        if (round != nullptr) round->sayIn(airframeShown(archive, round->described()));
    };
    for (const auto& student : followed)
        say(student->round(), *watched);
    say(again.get(), services->archive);
}

void WatchView::readRound(Student& student, const std::string& roundId) {
    auto events = watched->events(roundId);
    // Nothing of it is here yet: its first event will be told.
    if (!events && events.error().code == ErrorCode::notFound) return student.setRound(roundId, nullptr);
    begin(student, roundId, std::move(events));
}

void WatchView::begin(Student& student, const std::string& roundId,
                      Result<std::vector<round::Event>> events) {
    auto round = events.and_then([this](auto& all) { return followedBy(std::move(all)); });
    if (!round) report(round.error());
    student.setRound(roundId, round ? std::move(*round) : nullptr);
}

/// What is told may not be stored yet.
void WatchView::take(Student& student, const std::string& roundId, const std::vector<round::Event>& events) {
    if (student.add(roundId, events)) return;
    if (events.front().seq == 1) return begin(student, roundId, events);
    readRound(student, roundId);
    (void)student.add(roundId, events);
}

bool WatchView::showReplay(const QString& recordId) {
    auto round = [&]() -> Result<std::unique_ptr<FollowedRound>> {
        const auto json = services->archive.recordJson(recordId.toStdString());
        if (!json) return tl::unexpected(json.error());
        auto events = eventsOf(*json);
        if (!events) return tl::unexpected(events.error());
        return followedFrom(services->archive, std::move(*events));
    }();
    if (!round) {
        report(round.error());
        return false;
    }
    endReplay();
    again = std::move(*round);
    again->showAt(0);
    emit replayChanged();
    return true;
}

void WatchView::endReplay() {
    if (!again) return;
    auto old = std::move(again);
    emit replayChanged();
    FollowedRound::letGo(std::move(old));
}

} // namespace ambit::view
