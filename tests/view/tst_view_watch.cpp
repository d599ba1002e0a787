// The watcher's view models over a link that only plays one: what comes is shown, what is said goes out
// signed, what was walked is scrolled back.
#include "house.hpp"
#include "played_link.hpp"

#include "archive/sealing.hpp"
#include "base/canonical.hpp"
#include "model/photos.hpp"
#include "model/qr.hpp"
#include "model/words.hpp"
#include "record/asked.hpp"
#include "record/record.hpp"

#include <QPainter>
#include <QSignalSpy>
#include <QTest>

using namespace ambit;
using namespace ambit::view;
using ambit::test::PlayedLink;

namespace {

const QString passphrase = QStringLiteral("a good passphrase");

const watch::Walker robin{
    {std::string(64, 'a'), "Robin Example"}, {*watch::Address::v4From("192.168.1.7")}, 52810};

/// A device that watches, and what the link of the other one tells it.
class Device {
public:
    explicit Device(const std::vector<watch::Walker>& known = {})
        : folder(), clock(*parseLocalInstant("2026-06-20T07:30:00+02:00")) {
        const std::string file = folder.filePath(QStringLiteral("archive.sqlite")).toStdString();
        archive = std::make_unique<archive::Archive>(std::move(archive::Archive::open(file).value()));
        watched =
            std::make_unique<archive::Archive>(std::move(archive::Archive::open(watchedFile()).value()));
        Services services{*archive,
                          file,
                          [this] { return clock; },
                          [] { return std::optional<round::Position>(); },
                          view::readPhoto,
                          folder.filePath(QStringLiteral("keys")).toStdString(),
                          {}};
        services.watchedFile = watchedFile();
        services.linkToWalkers = [this,
                                  known](const record::Signer&) -> Result<std::unique_ptr<LinkToWalkers>> {
            auto made = std::make_unique<PlayedLink>();
            made->atFirst = known;
            link = made.get();
            return made;
        };
        app = std::make_unique<App>(services);
    }

    [[nodiscard]] bool start() {
        if (!app->signing()->keyExists() &&
            !app->signing()->newKey(QStringLiteral("Ines Example"), passphrase))
            return false;
        return app->watch()->start(
            {{QStringLiteral("role"), QStringLiteral("instructor")},
             {QStringLiteral("certificate"), QStringLiteral("FI 7")},
             {QStringLiteral("passphrase"), passphrase},
             {QStringLiteral("key"), app->signing()->keyOf(QStringLiteral("Ines Example"))}});
    }
    /// The first one's record.
    [[nodiscard]] bool countersign() const {
        return app->signing()->countersign(first()->recordId(),
                                           {{QStringLiteral("role"), QStringLiteral("instructor")},
                                            {QStringLiteral("certificate"), QStringLiteral("FI 7")},
                                            {QStringLiteral("passphrase"), passphrase}});
    }
    [[nodiscard]] WatchView& view() const { return *app->watch(); }
    [[nodiscard]] Student* first() const { return view().student(1); }

    /// What the walker's log has from there on, told as the link does: on disk first.
    void tell(const test::House& house, std::size_t from = 0, std::uint64_t number = 1) {
        const auto& events = house.app->round()->openRound().events();
        const std::string& id = house.app->round()->openRound().state().id;
        if (from == 0) {
            const auto& opened = std::get<round::Opened>(events.front().what);
            const auto text = *house.archive->airframeText(opened.airframeSha256);
            QVERIFY(watched->addAircraft({opened.registration, opened.serial, opened.airframeSha256, "It"},
                                         text));
            emit link->roundChanged(number, id, static_cast<std::int64_t>(events.size()));
        }
        const std::vector<round::Event> more(events.begin() + static_cast<std::ptrdiff_t>(from),
                                             events.end());
        const auto stored = watched->appendLog(id, more, archive::Photos::mayFollow);
        QVERIFY2(stored, stored ? "" : toText(stored.error()).c_str());
        emit link->logged(number, id, more);
    }

    QTemporaryDir folder;
    LocalInstant clock;
    std::unique_ptr<archive::Archive> archive, watched;
    PlayedLink* link = nullptr;
    std::unique_ptr<App> app;

private:
    [[nodiscard]] std::string watchedFile() const {
        return folder.filePath(QStringLiteral("watched.sqlite")).toStdString();
    }
};

/// As the walker's device has it.
watch::RecordHere recordOf(const test::House& house) {
    const std::string sha256 = house.app->signing()->recordId().toStdString();
    return {sha256, *house.archive->recordJson(sha256), *house.archive->recordPdf(sha256)};
}

} // namespace

class TestViewWatch : public QObject {
    Q_OBJECT

private slots:
    void withoutANetworkThereIsNothing() {
        test::House house;
        QVERIFY(!house.app->watch()->possible());
    }

    void aWrongPassphraseOpensNothing() {
        Device device;
        QVERIFY(device.app->signing()->newKey(QStringLiteral("Ines Example"), passphrase));
        QVERIFY(!device.view().start({{QStringLiteral("passphrase"), QStringLiteral("another one")}}));
        QVERIFY(!device.view().open());
        QVERIFY(!device.app->problem().isEmpty());
        QCOMPARE(device.link, nullptr);
    }

    void whoIsKnownIsFollowedAtOnce() {
        Device device({robin});
        QVERIFY(device.start());
        QCOMPARE(device.link->joined.size(), 1U);
        QCOMPARE(device.view().students()->count(), 1);
        QCOMPARE(device.first()->name(), QStringLiteral("Robin Example"));
        QVERIFY(device.view().known().front().toMap().value(QStringLiteral("followed")).toBool());
        device.view().leave(1);
        QCOMPARE(device.link->left, std::vector<std::uint64_t>{1});
        QCOMPARE(device.view().students()->count(), 0);
        QVERIFY(!device.view().known().front().toMap().value(QStringLiteral("followed")).toBool());
        QVERIFY(device.view().joinKnown(QString(64, QLatin1Char('a'))));
        QCOMPARE(device.link->joined.size(), 2U);
        device.view().forget(QString(64, QLatin1Char('a')));
        QCOMPARE(device.link->forgotten, std::vector<std::string>{std::string(64, 'a')});
        QCOMPARE(device.view().students()->count(), 0);
    }

    void whatIsNoCodeIsRefusedInWords() {
        Device device;
        QVERIFY(device.start());
        QVERIFY(!device.view().join(QStringLiteral("ABCD EFGH")));
        QVERIFY(!device.app->problem().isEmpty());
        QCOMPARE(device.view().students()->count(), 0);
        const watch::Invitation invitation{robin.addresses, robin.port, std::string(64, 'a'), "ABCDEFGH"};
        QVERIFY(device.view().join(QString::fromStdString(*watch::typedCode(invitation))));
        QCOMPARE(device.link->joined.back().word, std::string("ABCDEFGH"));
        QCOMPARE(device.view().students()->count(), 1);
    }

    void aPictureOfTheCode() {
        Device device;
        QVERIFY(device.start());
        const watch::Invitation invitation{robin.addresses, robin.port, std::string(64, 'a'), "ABCDEFGH"};
        const QString code = QString::fromStdString(*watch::qrText(invitation));
        const QImage modules = qrPicture(code);
        QImage photo(modules.size() * 6, QImage::Format_RGB32);
        photo.fill(QColor(0xec, 0xe8, 0xdc));
        QPainter(&photo).drawImage(photo.rect(), modules);
        const QString file = device.folder.filePath(QStringLiteral("code.png"));
        QVERIFY(photo.save(file));
        QCOMPARE(device.view().codeIn(QUrl::fromLocalFile(file)), code);
        QCOMPARE(device.view().codeIn(QVariant::fromValue(photo)), code); // a camera's
        QVERIFY(device.view().join(code));
        QCOMPARE(device.link->joined.back(), invitation);
        photo.fill(Qt::white);
        QCOMPARE(device.view().codeIn(QVariant::fromValue(photo)), QString());
        QCOMPARE(device.app->problem(), QString());
        QCOMPARE(
            device.view().codeIn(QUrl::fromLocalFile(device.folder.filePath(QStringLiteral("none.png")))),
            QString());
        QVERIFY(!device.app->problem().isEmpty());
    }

    void whoIsInvitedTwiceIsFollowedOnce() {
        Device device({robin});
        QVERIFY(device.start());
        const watch::Invitation invitation{robin.addresses, robin.port, std::string(64, 'a'), "ABCDEFGH"};
        QVERIFY(device.view().join(QString::fromStdString(*watch::qrText(invitation))));
        emit device.link->known(2, robin.who);
        QCOMPARE(device.link->left, std::vector<std::uint64_t>{1});
        QCOMPARE(device.view().students()->count(), 1);
    }

    void whatComesIsShown() {
        test::House house;
        QVERIFY(house.begin());
        Device device({robin});
        QVERIFY(device.start());
        emit device.link->stateChanged(1, watch::LinkState::in, {});
        device.tell(house);
        FollowedRound* followed = device.first()->round();
        QVERIFY(followed != nullptr);
        QCOMPARE(followed->registration(), house.registration);
        QCOMPARE(followed->cardTitle(), house.app->round()->cardTitle());
        std::size_t told = house.events();
        for (int i = 0; i < 12; ++i) {
            QVERIFY(house.touchCard());
            device.tell(house, told);
            told = house.events();
            QCOMPARE(followed->settledCount(), house.app->round()->settledCount());
            QCOMPARE(followed->cardTitle(), house.app->round()->cardTitle());
            QCOMPARE(followed->standName(), house.app->round()->standName());
        }
        QCOMPARE(followed->told()->get(0).value(QStringLiteral("seq")).toInt(), static_cast<int>(told));
    }

    void aLateOneReadsWhatIsKept() {
        test::House house;
        QVERIFY(house.begin());
        for (int i = 0; i < 5; ++i)
            QVERIFY(house.touchCard());
        Device device({robin});
        QVERIFY(device.start());
        device.tell(house);
        device.view().stop();
        QVERIFY(device.first() == nullptr);
        QVERIFY(device.start()); // the next day: the log is here, and nothing of it is told again
        const auto& round = house.app->round()->openRound();
        emit device.link->roundChanged(1, round.state().id, round.state().lastSeq);
        QVERIFY(device.first()->round() != nullptr);
        QCOMPARE(device.first()->round()->settledCount(), house.app->round()->settledCount());
    }

    void scrolledBackItStaysWhileTheWalkGoesOn() {
        test::House house;
        QVERIFY(house.begin());
        for (int i = 0; i < 6; ++i)
            QVERIFY(house.touchCard());
        Device device({robin});
        QVERIFY(device.start());
        device.tell(house);
        FollowedRound& followed = *device.first()->round();
        QVERIFY(followed.atEnd());
        followed.showAt(0);
        QVERIFY(!followed.atEnd());
        QCOMPARE(followed.settledCount(), 0);
        const std::size_t told = house.events();
        QVERIFY(house.touchCard());
        device.tell(house, told);
        QCOMPARE(followed.settledCount(), 0);
        QCOMPARE(followed.length(), 70.0);
        // Each moment is what the walker's device had then.
        const auto& events = followed.events();
        for (std::size_t i = 1; i <= events.size(); ++i) {
            followed.showEvent(static_cast<int>(i));
            const auto then = round::fold(followed.described(),
                                          {events.begin(), events.begin() + static_cast<std::ptrdiff_t>(i)});
            QVERIFY(then);
            QCOMPARE(followed.settledCount(), then->settledCount());
            QCOMPARE(followed.standId(), QString::fromStdString(then->stand.value_or("")));
        }
        QVERIFY(followed.atEnd());
    }

    void aReplayRunsAtItsSpeed() {
        test::House house;
        QVERIFY(house.wholeRound());
        const QString record = house.app->signing()->recordId();
        QVERIFY(house.app->watch()->showReplay(record));
        FollowedRound& replay = *house.app->watch()->replay();
        QCOMPARE(replay.settledCount(), 0);
        replay.setSpeed(64);
        replay.play();
        QVERIFY(replay.playing());
        QTRY_VERIFY(replay.settledCount() > 0);
        QVERIFY(!replay.atEnd());
        replay.stop();
        const int settled = replay.settledCount();
        QTest::qWait(150);
        QCOMPARE(replay.settledCount(), settled);
        replay.showEnd();
        QCOMPARE(replay.settledCount(), replay.pointCount());
        QCOMPARE(replay.conclusionText(), conclusionText(true));
    }

    void whatIsSaidIsSignedAndOfThatRound() {
        test::House house;
        QVERIFY(house.begin());
        QVERIFY(house.touchCard());
        Device device({robin});
        QVERIFY(device.start());
        QVERIFY(!device.view().say(1, QStringLiteral("question"), {}, QStringLiteral("Which fuel?")));
        QVERIFY(!device.app->problem().isEmpty()); // nothing is walked yet
        device.tell(house);
        const QString point =
            device.first()->round()->points().front().toMap().value(QStringLiteral("id")).toString();
        QVERIFY(device.view().say(1, QStringLiteral("lookAgain"), point, QStringLiteral(" From below. ")));
        QCOMPARE(device.link->said.size(), 1U);
        QCOMPARE(device.first()->underWay(), 1);
        // The walker's device takes it.
        const auto& say = device.link->said.front().second;
        const auto key = device.app->signing()->unlock(passphrase, {});
        const auto heard = house.app->round()->hear(say.statement, say.jws, key->certificate());
        QVERIFY2(heard, heard ? "" : toText(heard.error()).c_str());
        emit device.link->heard(1, say.id, {});
        QCOMPARE(device.first()->underWay(), 0);
        const auto& ask = house.app->round()->openRound().state().asks.front();
        QCOMPARE(ask.what.words, std::string("From below."));
        QCOMPARE(ask.what.who.role, std::string("instructor"));
        QVERIFY(!device.view().say(1, QStringLiteral("question"), {}, QStringLiteral("  ")));
    }

    void aRefusalIsTold() {
        test::House house;
        QVERIFY(house.begin());
        Device device({robin});
        QVERIFY(device.start());
        device.tell(house);
        QVERIFY(device.view().say(1, QStringLiteral("remark"), {}, QStringLiteral("Wind from the left.")));
        emit device.link->heard(1, device.link->said.front().second.id, "The round is concluded.");
        QVERIFY(device.first()->saidText().contains(QStringLiteral("The round is concluded.")));
        emit device.link->heard(1, std::string(32, '0'), {}); // nothing of ours
        QVERIFY(device.first()->saidText().contains(QStringLiteral("The round is concluded.")));
    }

    void theOneThatNeedsItComesFirst() {
        test::House house;
        QVERIFY(house.begin());
        watch::Walker kim = robin;
        kim.who = {std::string(64, 'b'), "Kim Example"};
        Device device({robin, kim});
        QVERIFY(device.start());
        emit device.link->stateChanged(2, watch::LinkState::in, {});
        const auto shown = [&](int row) {
            return device.view()
                .students()
                ->get(row)
                .value(QStringLiteral("student"))
                .value<Student*>()
                ->name();
        };
        QCOMPARE(shown(0), QStringLiteral("Kim Example")); // the other isn't here
        emit device.link->stateChanged(1, watch::LinkState::in, {});
        device.tell(house);
        QCOMPARE(shown(0), QStringLiteral("Robin Example"));
        test::House other;
        other.passMinutes(5); // else it would be the very same round
        QVERIFY(other.begin());
        while (other.app->round()->cardKind() != QStringLiteral("settle"))
            QVERIFY(other.touchCard());
        QVERIFY(other.app->round()->settleFinding(QStringLiteral("Cracked."), true, {}));
        device.tell(other, 0, 2);
        QCOMPARE(shown(0), QStringLiteral("Kim Example"));
        device.view().student(2)->look();
        QCOMPARE(shown(0), QStringLiteral("Robin Example"));
    }

    void aFindingCallsUntilItIsLookedAt() {
        test::House house;
        QVERIFY(house.begin());
        while (house.app->round()->cardKind() != QStringLiteral("settle"))
            QVERIFY(house.touchCard());
        Device device({robin});
        QVERIFY(device.start());
        emit device.link->stateChanged(1, watch::LinkState::in, {});
        device.tell(house);
        QCOMPARE(device.first()->need(), QStringLiteral("nothing"));
        const std::size_t told = house.events();
        QVERIFY(house.app->round()->settleFinding(QStringLiteral("Cracked."), true, {}));
        device.tell(house, told);
        QCOMPARE(device.first()->need(), QStringLiteral("grounds"));
        QCOMPARE(device.first()->round()->findings().size(), 1);
        device.first()->look();
        QCOMPARE(device.first()->need(), QStringLiteral("nothing"));
        emit device.link->stateChanged(1, watch::LinkState::lost, {});
        QCOMPARE(device.first()->need(), QStringLiteral("away"));
        QVERIFY(!device.first()->linkText().isEmpty());
    }

    void theRecordIsSignedHereAndGoesBack() {
        test::House house;
        QVERIFY(house.wholeRound());
        Device device({robin});
        QVERIFY(device.start());
        emit device.link->stateChanged(1, watch::LinkState::in, {});
        device.tell(house);
        const watch::RecordHere record = recordOf(house);
        emit device.link->recordHere(1, record);
        QCOMPARE(device.app->problem(), QString());
        QCOMPARE(device.first()->recordId().toStdString(), record.sha256);
        device.first()->look();
        QCOMPARE(device.first()->need(), QStringLiteral("toSign"));
        // It can be read here, with no aircraft added by hand.
        device.app->file()->setRegistration(house.registration);
        QVERIFY2(device.app->file()->open(device.first()->recordId()), qPrintable(device.app->problem()));
        QVERIFY(device.countersign());
        QVERIFY(device.first()->signedHere());
        QVERIFY(!device.first()->signedThere());
        QCOMPARE(device.link->offered.size(), 1U);
        const auto& [id, offered] = device.link->offered.front();
        QCOMPARE(offered.sha256, record.sha256);
        QCOMPARE(record::verifyRecord(offered.json)->signatures.size(), 2U);
        emit device.link->heard(1, id, {});
        QVERIFY(device.first()->signedThere());
        QCOMPARE(device.first()->need(), QStringLiteral("nothing"));
        emit device.link->recordHere(1, offered); // as the walker's device has it now
        QVERIFY(device.first()->signedThere());
        QCOMPARE(device.link->offered.size(), 1U);
    }

    /// Signed, and the program ended before the signature was there.
    void aSignatureThatDidntGetThereGoesAgain() {
        test::House house;
        QVERIFY(house.wholeRound());
        Device device({robin});
        QVERIFY(device.start());
        device.tell(house);
        const watch::RecordHere record = recordOf(house);
        emit device.link->recordHere(1, record);
        QVERIFY(device.countersign());
        QCOMPARE(device.link->offered.size(), 1U);
        device.view().stop();
        QVERIFY(device.start());
        const auto& round = house.app->round()->openRound();
        emit device.link->roundChanged(1, round.state().id, round.state().lastSeq);
        emit device.link->recordHere(1, record); // still without it
        QCOMPARE(device.link->offered.size(), 1U);
        QCOMPARE(record::verifyRecord(device.link->offered.front().second.json)->signatures.size(), 2U);
        QVERIFY(device.first()->signedHere());
        emit device.link->recordHere(1, record); // it is on its way: not once more
        QCOMPARE(device.link->offered.size(), 1U);
    }

    void aRecordThatDoesntHoldIsNotKept() {
        test::House house;
        QVERIFY(house.wholeRound());
        Device device({robin});
        QVERIFY(device.start());
        device.tell(house);
        const std::string sha256 = house.app->signing()->recordId().toStdString();
        std::string json = *house.archive->recordJson(sha256);
        json.replace(json.find("Robin"), 5, "Rabin");
        emit device.link->recordHere(1, {sha256, json, {}});
        QVERIFY(!device.app->problem().isEmpty());
        QVERIFY(device.first()->recordId().isEmpty());
        QVERIFY(device.archive->records().value().empty());
    }

    void aLogThatBreaksTheRulesIsTold() {
        test::House house;
        QVERIFY(house.begin());
        Device device({robin});
        QVERIFY(device.start());
        device.tell(house);
        const auto& state = house.app->round()->openRound().state();
        const std::vector<round::Event> wrong{{state.lastSeq + 1, state.lastAt, round::Resumed{}}};
        QVERIFY(device.watched->appendLog(state.id, wrong, archive::Photos::mayFollow));
        emit device.link->logged(1, state.id, wrong);
        QVERIFY(!device.app->problem().isEmpty());
    }
};

QTEST_MAIN(TestViewWatch)
#include "tst_view_watch.moc"
