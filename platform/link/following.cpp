#include "link/following.hpp"

#include "airframe/read.hpp"
#include "archive/import.hpp"
#include "archive/unflushed.hpp"
#include "base/canonical.hpp"
#include "link/beacon.hpp"

#include <QSslSocket>
#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::link {

namespace {

constexpr int connectMs = 15000;  ///< TCP, TLS and the upgrade, on a bad network
constexpr int fairMs = 4000;      ///< of which nobody's announcement takes any
constexpr int firstAgainMs = 300; ///< then twice as long each time
constexpr int longestAgainMs = 5000;
constexpr int quietMs = 1000; ///< nothing more came: the walker is told what is stored here
constexpr std::size_t mostUnsaved = std::size_t{8} << 20; ///< bytes, while the airframe's description comes

Result<void> addAircraft(archive::Archive& archive, const round::Opened& opened, const std::string& text) {
    const auto airframe = airframe::read(text);
    if (!airframe)
        return fail(ErrorCode::invalid,
                    "The machine can't be shown: its description isn't one. " + airframe.error().front().what,
                    airframe.error().front().where,
                    ambit::say("The walker's device may be newer: bring both up to date."));
    return archive.addAircraft({opened.registration, opened.serial, airframe->sha256, airframe->name}, text);
}

} // namespace

Following::Following(Shared& all, std::uint64_t itsNumber, watch::Invitation its, QObject* parent)
    : QObject(parent), shared(all), number(itsNumber), where(std::move(its)), again(this), patience(this),
      quiet(this) {
    again.setSingleShot(true);
    patience.setSingleShot(true);
    quiet.setSingleShot(true);
    connect(&quiet, &QTimer::timeout, this, [this] {
        if (!receiver || !channel) return;
        receiver->confirm();
        channel->pump();
    });
    connect(&quiet, &QTimer::timeout, this, [this] { archive::settle(shared.archive); });
    connect(&again, &QTimer::timeout, this, [this] { tryNext(); });
    connect(&patience, &QTimer::timeout, this, [this] { lost(QStringLiteral("No answer.")); });
}

Following::~Following() {
    if (channel) channel->disconnect(this);
}

// --- connecting
// ------------------------------------------------------------------------------------------------------

void Following::tryNext() {
    if (state == watch::LinkState::over || where.addresses.empty()) return;
    dropChannel();
    const watch::Address& address = where.addresses[nextAddress++ % where.addresses.size()];
    auto socket = std::make_unique<QWebSocket>();
    QSslConfiguration tls = shared.tls;
    socket->setSslConfiguration(tls);
    QWebSocket& its = *socket;
    channel = std::make_unique<Channel>(std::move(socket));
    connect(&its, &QWebSocket::connected, this, [this] { connected(); });
    connect(channel.get(), &Channel::message, this, [this](const std::string& text) { take(text); });
    connect(channel.get(), &Channel::gone, this, [this](const QString& why) { lost(why); });
    QUrl url;
    url.setScheme(QStringLiteral("wss"));
    url.setHost(hostOf(address).toString());
    url.setPort(where.port);
    url.setPath(QStringLiteral("/"));
    patience.start(connectMs);
    its.open(url);
}

Result<record::Certificate> Following::checkPeer() {
    const auto* tls = channel->webSocket().findChild<QSslSocket*>();
    if (tls == nullptr || tls->sessionProtocol() != QSsl::TlsV1_3)
        return fail(ErrorCode::unsupported, ambit::say("The connection isn't TLS 1.3."));
    auto certificate = peerOf(tls->peerCertificateChain());
    if (certificate && !watch::isAnnounced(where, certificate->sha256))
        return fail(
            ErrorCode::signature,
            "Another device answers there than the one whose code this is: " + certificate->name + "'s.",
            toText(where.addresses[(nextAddress - 1) % where.addresses.size()]),
            ambit::say(
                "Join the same network as the walker's device and use a new code. If it happens again, "
                "somebody may be in between."));
    return certificate;
}

void Following::connected() {
    const auto certificate = checkPeer();
    if (!certificate) {
        // Who is known may have moved, and another device have its address.
        if (where.word.empty() && certificate.error().code == ErrorCode::signature)
            return lost(QString::fromStdString(certificate.error().what));
        return over(certificate.error());
    }
    if (where.fingerprint != certificate->sha256 || tries == 0)
        emit shared.link.known(number, {certificate->sha256, certificate->name});
    where.fingerprint = certificate->sha256;
    // The address that answered first, next time.
    std::rotate(where.addresses.begin(),
                where.addresses.begin() +
                    static_cast<std::ptrdiff_t>((nextAddress - 1) % where.addresses.size()),
                where.addresses.end());
    nextAddress = 0;
    receiver.emplace(
        watch::Hello{shared.name, where.word},
        watch::Receiver::Reads{[this](const std::string& roundId) { return heldOf(roundId); },
                               [this](const std::string& sha256, std::int64_t from, std::size_t most) {
                                   return offeredBytes(sha256, from, most);
                               }});
    channel->feed(
        [this]() -> std::optional<std::string> {
            // What was taken is stored before more is asked for.
            if (!unsaved.empty() && !awaitsAirframe) return std::nullopt;
            return receiver->next();
        },
        [this] { return receiver->isOver(); });
    channel->begin();
    channel->pump();
}

void Following::lost(const QString& why) {
    if (state == watch::LinkState::over) return;
    if (receiver && receiver->isOver()) return over({}); // it was said why
    if (receiver && isFetching && !isOfOldRound) resumed = receiver->letGo();
    isFetching = isOfOldRound = false;
    dropChannel();
    setState(state == watch::LinkState::in || state == watch::LinkState::lost ? watch::LinkState::lost
                                                                              : watch::LinkState::connecting,
             {ErrorCode::notFound, why.toStdString(), "", ""});
    again.start(std::min(longestAgainMs, firstAgainMs << std::min(tries, 10)));
    ++tries;
}

void Following::over(const Error& why) {
    if (state == watch::LinkState::over) return;
    again.stop();
    if (channel && receiver) {
        if (!receiver->isOver()) receiver->end(watch::byeFor(why));
        channel->pump();
    } else {
        dropChannel();
    }
    patience.stop();
    setState(watch::LinkState::over, why);
}

void Following::leave() {
    if (channel && receiver && !receiver->isOver()) {
        receiver->end({"The watcher has left.", std::nullopt});
        channel->pump();
        channel->webSocket().flush();
    }
    state = watch::LinkState::over;
}

void Following::dropChannel() {
    patience.stop();
    if (channel) {
        channel->disconnect(this);
        channel->webSocket().disconnect(this);
        channel->feed(nullptr, nullptr);
        channel->abort();
        channel.release()->deleteLater(); // NOLINT(bugprone-unused-return-value)
    }
    receiver.reset();
    // The next connection begins from what is on disk: the rest comes again.
    unsaved.clear();
    unsavedBytes = 0;
    awaitsAirframe = false;
}

void Following::maybeAt(const watch::Address& address, std::uint16_t port) {
    const bool isNew = where.port != port || where.addresses.empty() || !(where.addresses.front() == address);
    if (!isNew || state == watch::LinkState::in || state == watch::LinkState::over || receiver) return;
    // Where they were nothing may ever answer. What has begun to come about isn't cut off by whoever says
    // something: it has its time first.
    if (channel && patience.remainingTime() > connectMs - fairMs) return;
    std::erase(where.addresses, address);
    where.addresses.insert(where.addresses.begin(), address);
    if (where.addresses.size() > watch::mostAddresses) where.addresses.pop_back();
    where.port = port;
    nextAddress = 0;
    again.stop();
    tryNext();
}

void Following::setState(watch::LinkState its, const Error& why) {
    if (state == its && its != watch::LinkState::over) return;
    state = its;
    emit shared.link.stateChanged(number, state, why);
}

// --- what comes
// ------------------------------------------------------------------------------------------------------

void Following::take(const std::string& text) {
    if (!receiver) return;
    auto news = receiver->take(text);
    if (!news) {
        store();
        return over(news.error());
    }
    act(std::move(*news));
    if (channel) channel->pump();
}

void Following::act(watch::FromWalker&& news) {
    if (std::holds_alternative<watch::Welcome>(news)) {
        patience.stop();
        tries = 0;
        where.word.clear(); // used; from now on the certificate lets this device in
        shared.remember(
            {{where.fingerprint, std::get<watch::Welcome>(news).name}, where.addresses, where.port});
        setState(watch::LinkState::in);
        sendWaiting();
    } else if (const auto* its = std::get_if<watch::Round>(&news)) {
        if (its->round != round) {
            sealed.reset();
            wanted.clear();
            partly.clear();
            isOfOldRound = isFetching;
            resumed.reset();
            awaitsAirframe = false;
            unsaved.clear();
            // What an earlier run has stored may lack its photos.
            if (const auto kept = shared.archive.events(its->round)) wantPhotos(*kept);
        }
        round = its->round;
        emit shared.link.roundChanged(number, round, its->events);
        fetchNext();
    } else if (auto* logged = std::get_if<watch::Logged>(&news)) {
        unsavedBytes += logged->json.size();
        unsaved.push_back(std::move(logged->event));
        if (awaitsAirframe && unsavedBytes > mostUnsaved)
            return over({ErrorCode::refused, "The airframe's description didn't come.", round, ""});
        storeSoon();
    } else if (const auto* who = std::get_if<watch::Watching>(&news)) {
        emit shared.link.watching(number, who->names);
    } else if (const auto* heard = std::get_if<watch::Heard>(&news)) {
        if (!toSay.empty() && toSay.front().id == heard->id) toSay.pop_front();
        if (offering && offering->what.id == heard->id) offering.reset();
        emit shared.link.heard(number, heard->id, heard->why);
        sendWaiting();
    } else if (auto* record = std::get_if<watch::Sealed>(&news)) {
        sealed = std::move(*record);
        std::erase_if(wanted, [&](const Wanted& one) {
            return &one != &wanted.front() &&
                   (one.what == Wanted::What::json || one.what == Wanted::What::pdf);
        });
        for (const watch::File& file : sealed->files)
            want({file.kind == watch::FileKind::json ? Wanted::What::json : Wanted::What::pdf, file.sha256,
                  file.size});
        fetchNext();
    } else if (auto* part = std::get_if<watch::Part>(&news)) {
        takePart(std::move(*part));
    } else if (std::holds_alternative<watch::Gone>(news)) {
        isFetching = false;
        partly.clear();
        if (std::exchange(isOfOldRound, false)) return fetchNext();
        const bool needed = !wanted.empty() && wanted.front().what == Wanted::What::airframe;
        if (!wanted.empty()) wanted.pop_front();
        if (needed)
            return over(
                {ErrorCode::notFound, "The walker's device hasn't the airframe's description.", round, ""});
        fetchNext();
    } else if (const auto* bye = std::get_if<watch::Bye>(&news)) {
        store();
        over(bye->code ? Error{*bye->code, bye->why, "", ""} : Error{ErrorCode::refused, bye->why, "", ""});
    }
}

/// Once for all that came in one go: each store waits for the disk.
void Following::storeSoon() {
    if (isStoring) return;
    isStoring = true;
    QMetaObject::invokeMethod(
        this,
        [this] {
            isStoring = false;
            store();
            if (channel) channel->pump();
        },
        Qt::QueuedConnection);
}

void Following::store() {
    if (unsaved.empty() || awaitsAirframe) return;
    if (unsaved.front().seq == 1) {
        if (auto here = knowAircraft(unsaved.front()); !here) return over(here.error());
        if (awaitsAirframe) return;
    }
    // Shown first: what is killed in between comes again.
    const std::vector<round::Event> came = std::exchange(unsaved, {});
    unsavedBytes = 0;
    emit shared.link.logged(number, round, came);
    if (auto done = shared.archive.appendLog(round, came, archive::Photos::mayFollow); !done)
        return over(done.error());
    wantPhotos(came);
    quiet.start(quietMs);
    fetchNext();
}

void Following::wantPhotos(const std::vector<round::Event>& events) {
    for (const round::Event& event : events)
        if (const auto* settled = std::get_if<round::Settled>(&event.what))
            for (const round::Photo& photo : settled->photos)
                if (seen.insert(photo.sha256).second && !shared.archive.photo(photo.sha256))
                    want({Wanted::What::photo, photo.sha256, photo.bytes});
}

/// The archive must know the machine before it takes a round of it.
Result<void> Following::knowAircraft(const round::Event& event) {
    const auto& opened = std::get<round::Opened>(event.what);
    // Mostly it does: reading a description anew takes longer than all else between the two devices.
    const auto known = shared.archive.aircraft();
    if (!known) return tl::unexpected(known.error());
    if (std::any_of(known->begin(), known->end(), [&](const archive::Aircraft& one) {
            return one.registration == opened.registration && one.serial == opened.serial &&
                   one.airframeSha256 == opened.airframeSha256;
        }))
        return {};
    const auto text = airframe.first == opened.airframeSha256
                          ? Result<std::string>(airframe.second)
                          : shared.archive.airframeText(opened.airframeSha256);
    if (!text) {
        awaitsAirframe = true;
        want({Wanted::What::airframe, opened.airframeSha256, watch::largestAirframe});
        fetchNext();
        return {};
    }
    return addAircraft(shared.archive, opened, *text);
}

// --- files
// -----------------------------------------------------------------------------------------------------------

void Following::want(Wanted one) {
    const auto same = [&](const Wanted& other) { return other.sha256 == one.sha256; };
    if (std::any_of(wanted.begin(), wanted.end(), same)) return;
    // After the one that is being fetched: the airframe first, photos last.
    const bool isFirstBegun = (isFetching && !isOfOldRound) || resumed;
    const auto first = wanted.begin() + (wanted.empty() || !isFirstBegun ? 0 : 1);
    const auto at =
        std::find_if(first, wanted.end(), [&](const Wanted& other) { return one.what < other.what; });
    wanted.insert(at, std::move(one));
}

void Following::fetchNext() {
    if (isFetching || wanted.empty() || !receiver || !receiver->isIn() || receiver->round().empty()) return;
    const Wanted& one = wanted.front();
    auto next = resumed && resumed->sha256() == one.sha256
                    ? std::move(*resumed)
                    : (one.what == Wanted::What::airframe ? watch::Fetching::upTo(one.sha256, one.size)
                                                          : watch::Fetching::ofSize(one.sha256, one.size));
    if (next.from() == 0) partly.clear();
    resumed.reset();
    isFetching = receiver->fetch(std::move(next)).has_value();
    if (channel) channel->pump();
}

void Following::takePart(watch::Part&& part) {
    if (isOfOldRound) {
        if (!part.isWhole) return;
        isFetching = isOfOldRound = false;
        return fetchNext();
    }
    if (!isFetching || wanted.empty() || wanted.front().sha256 != part.sha256) return;
    partly += part.bytes;
    if (!part.isWhole) return;
    isFetching = false;
    const Wanted one = std::move(wanted.front());
    wanted.pop_front();
    if (auto done = takeFile(one, std::exchange(partly, {})); !done) return over(done.error());
    fetchNext();
}

Result<void> Following::takeFile(const Wanted& one, std::string&& bytes) {
    switch (one.what) {
    case Wanted::What::airframe:
        airframe = {one.sha256, std::move(bytes)};
        awaitsAirframe = false;
        store();
        return {};
    case Wanted::What::photo: {
        Result<void> kept;
        std::optional<Result<archive::Offered>> next = archive::Offered{one.sha256, std::move(bytes)};
        auto done = archive::importAll(
            shared.archive, [&] { return std::exchange(next, std::nullopt); },
            [&](const std::string&, const Result<archive::Imported>& outcome) {
                if (!outcome) kept = tl::unexpected(outcome.error());
            });
        if (!done || !kept) return done ? kept : done;
        emit shared.link.photoHere(number, one.sha256);
        return {};
    }
    case Wanted::What::json:
    case Wanted::What::pdf:
        break;
    }
    const bool isLast = sealed && !sealed->files.empty() && sealed->files.back().sha256 == one.sha256;
    std::string pdf;
    (one.what == Wanted::What::json ? sealedJson : pdf) = std::move(bytes);
    if (isLast) emit shared.link.recordHere(number, {sealed->recordSha256, sealedJson, std::move(pdf)});
    return {};
}

// --- what is said
// ----------------------------------------------------------------------------------------------------

void Following::say(const watch::Say& what) {
    toSay.push_back(what);
    sendWaiting();
}

void Following::offer(const std::string& id, const watch::RecordHere& record) {
    watch::Offer what{id, record.sha256, {}};
    what.files.push_back(
        {watch::FileKind::json, sha256Hex(record.json), static_cast<std::int64_t>(record.json.size())});
    if (!record.pdf.empty())
        what.files.push_back(
            {watch::FileKind::pdf, sha256Hex(record.pdf), static_cast<std::int64_t>(record.pdf.size())});
    offering = Offering{std::move(what), record};
    sendWaiting();
}

void Following::sendWaiting() {
    if (!receiver || !receiver->isIn()) return;
    // Refused where one is said already: it is sent when that was heard.
    if (!toSay.empty()) (void)receiver->say(toSay.front());
    if (offering) (void)receiver->offer(offering->what);
    if (channel) channel->pump();
}

std::optional<watch::Chunk> Following::offeredBytes(const std::string& sha256, std::int64_t from,
                                                    std::size_t most) const {
    if (!offering || from < 0) return std::nullopt;
    for (const watch::File& file : offering->what.files) {
        const std::string& bytes =
            file.kind == watch::FileKind::json ? offering->record.json : offering->record.pdf;
        if (file.sha256 == sha256 && static_cast<std::size_t>(from) < bytes.size())
            return watch::Chunk{file.size, bytes.substr(static_cast<std::size_t>(from), most)};
    }
    return std::nullopt;
}

watch::Held Following::heldOf(const std::string& roundId) const {
    watch::Held held;
    for (;;) {
        const auto text = shared.archive.eventText(roundId, held.upTo + 1);
        if (!text || text->empty()) break;
        ++held.upTo;
        held.bytes += static_cast<std::int64_t>(text->size());
        held.last = *text;
    }
    if (held.upTo == 0) return held;
    JsonTape tape;
    const auto event = round::eventFrom(tape.read(held.last));
    if (event)
        if (const auto* its = std::get_if<round::Signed>(&event->what)) held.recordSha256 = its->recordSha256;
    held.last = sha256Hex(held.last);
    return held;
}

} // namespace ambit::link
