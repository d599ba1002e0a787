// A student's device and an instructor's, each with its own archive, key and window, joined by the real link
// over this machine's network: paired, watched, asked, answered and countersigned by touches on both.
#include "../view/well_within.hpp"
#include "airframe/read.hpp"
#include "desktop/demo.hpp"
#include "desktop/fonts.hpp"
#include "desktop/hand.hpp"
#include "desktop/links.hpp"
#include "link/walker_link.hpp"
#include "model/photos.hpp"
#include "model/screens.hpp"
#include "paper/pages.hpp"
#include "record/record.hpp"

#include <QDir>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTest>

using namespace ambit;
using desktop::Hand;

namespace {

const QString passphrase = QStringLiteral("a good passphrase");
constexpr QSize phone{390, 844};
constexpr QSize tablet{1180, 820};

/// Says what went wrong where a touch fails.
#define TOUCHED(call)                                                                                        \
    do {                                                                                                     \
        const auto done = (call);                                                                            \
        QVERIFY2(done, done ? "" : toText(done.error()).c_str());                                            \
    } while (false)

class Device {
public:
    explicit Device(QSize size) : clock(*parseLocalInstant("2026-06-20T07:30:00+02:00")) {
        const std::string file = folder.filePath(QStringLiteral("archive.sqlite")).toStdString();
        archive = std::make_unique<archive::Archive>(std::move(archive::Archive::open(file).value()));
        view::Services services{*archive,
                                file,
                                [this] { return clock; },
                                [] { return std::optional<round::Position>(); },
                                view::readPhoto,
                                folder.filePath(QStringLiteral("keys")).toStdString(),
                                paper::drawRecord};
        desktop::addLinks(services, folder.path().toStdString(), 0, {*watch::Address::v4From("127.0.0.1")});
        app = std::make_unique<view::App>(std::move(services));
        app->habits()->touchOnly();
        engine = std::make_unique<QQmlApplicationEngine>();
        view::prepareEngine(*engine, *archive);
        if (!view::showMain(*engine, *app)) qFatal("The screens don't load.");
        window = qobject_cast<QQuickWindow*>(engine->rootObjects().constFirst());
        window->resize(size);
        hand = std::make_unique<Hand>(*window);
    }
    ~Device() {
        engine.reset(); // screens before what they show
        app.reset();
    }

    [[nodiscard]] Result<void> touch(const char* name) const {
        window->requestActivate(); // only one of the two has the keyboard
        return hand->touch(QLatin1String(name));
    }
    [[nodiscard]] Result<void> type(const char* name, const QString& words) const {
        window->requestActivate();
        return hand->type(QLatin1String(name), words);
    }
    [[nodiscard]] Result<void> see(const char* name) const { return hand->see(QLatin1String(name)); }
    [[nodiscard]] bool sees(const char* name) const { return hand->sees(QLatin1String(name)); }
    void makeKey(const QString& name) const {
        TOUCHED(type("newKeyName", name));
        TOUCHED(type("newKeyPassphrase", passphrase));
        TOUCHED(type("newKeyPassphraseAgain", passphrase));
    }
    void shoot(const char* name) const {
        const QString into = qEnvironmentVariable("AMBIT_SHOTS");
        if (into.isEmpty()) return;
        hand->rest(150);
        window->grabWindow().save(into + QLatin1Char('/') + QLatin1String(name) + QStringLiteral(".png"));
    }
    void shootDayAndNight(const char* name) const {
        shoot(name);
        app->setNight(true);
        shoot((std::string(name) + "-night").c_str());
        app->setNight(false);
    }

    QTemporaryDir folder;
    LocalInstant clock;
    std::unique_ptr<archive::Archive> archive;
    std::unique_ptr<view::App> app;
    std::unique_ptr<QQmlApplicationEngine> engine;
    QQuickWindow* window = nullptr;
    std::unique_ptr<Hand> hand;
};

/// Walks without screens, and serves it.
class Walker {
public:
    explicit Walker(const std::string& name, const std::string& registration) {
        const std::filesystem::path file = folder.filePath(QStringLiteral("archive.sqlite")).toStdString();
        archive = std::make_unique<archive::Archive>(std::move(archive::Archive::open(file).value()));
        if (auto added = desktop::addDemoAircraft(*archive, AMBIT_ROOT "/demo-aircraft"); !added)
            qFatal("%s", toText(added.error()).c_str());
        const auto all = archive->aircraft();
        for (const auto& one : *all)
            if (one.registration == registration) aircraft = one;
        described = std::make_unique<airframe::Airframe>(
            *airframe::read(*archive->airframeText(aircraft.airframeSha256)));
        const auto key = record::newKeyFile(name, "a good passphrase", clock);
        const auto me = record::unlock(*key, "a good passphrase");
        link::WalkerSettings settings;
        settings.archive = file;
        settings.watchers = folder.filePath(QStringLiteral("watchers.json")).toStdString();
        settings.port = 0;
        settings.shown = {*watch::Address::v4From("127.0.0.1")};
        link = std::move(link::WalkerLink::open(settings, *me, clock).value());
        round::Opened opened;
        opened.registration = aircraft.registration;
        opened.serial = aircraft.serial;
        opened.airframe = described->id;
        opened.airframeSha256 = described->sha256;
        opened.walk = described->walks.front().id;
        opened.who = {name, "pilot", ""};
        auto begun = archive::OpenRound::begin(*archive, *described, std::move(opened), clock);
        if (!begun) qFatal("%s", toText(begun.error()).c_str());
        round.emplace(std::move(*begun));
        tell();
    }
    [[nodiscard]] QString code() const { return QString::fromStdString(*watch::typedCode(*link->invite())); }
    void act(round::What what, int seconds, const std::vector<archive::PhotoBytes>& photos = {}) {
        clock.ms += std::int64_t{1000} * seconds;
        const auto done = round->act(std::move(what), clock, photos);
        if (!done) qFatal("%s", toText(done.error()).c_str());
        tell();
    }
    /// So many steps of the plan, each taking so long.
    void walk(int steps, int seconds) {
        for (int i = 0; i < steps; ++i) {
            const auto next = round::nextStep(round->state(), *described);
            if (!next) return;
            if (const auto* go = std::get_if<walk::Go>(&*next)) act(round::StandReached{go->stand}, 20);
            if (const auto* set = std::get_if<walk::Set>(&*next))
                act(round::SettingChanged{set->setting, set->to}, 30);
            if (const auto* settle = std::get_if<walk::Settle>(&*next)) act(sound(settle->point), seconds);
        }
    }
    [[nodiscard]] round::Settled sound(const std::string& id) const {
        round::Settled what;
        what.point = id;
        if (const auto& limit = described->point(id)->limit)
            what.value = (limit->min ? *limit->min : *limit->max).text();
        return what;
    }
    [[nodiscard]] std::string inHand() {
        for (;;) {
            const auto next = round::nextStep(round->state(), *described);
            if (const auto* settle = std::get_if<walk::Settle>(&*next)) return settle->point;
            walk(1, 8);
        }
    }

    Instant clock = parseLocalInstant("2026-06-20T07:30:00+02:00")->at;

private:
    void tell() {
        for (; told < round->events().size(); ++told)
            link->committed(round->events()[told]);
    }

    QTemporaryDir folder;
    std::unique_ptr<archive::Archive> archive;
    archive::Aircraft aircraft;
    std::unique_ptr<const airframe::Airframe> described;
    std::unique_ptr<link::WalkerLink> link;
    std::optional<archive::OpenRound> round;
    std::size_t told = 0;
};

} // namespace

class TestTwoDevices : public QObject {
    Q_OBJECT

private slots:
    void pairWatchAskAnswerCountersign_data() {
        QTest::addColumn<QSize>("students");
        QTest::addColumn<QSize>("instructors");
        QTest::newRow("phone and tablet") << phone << tablet;
        QTest::newRow("tablet and phone") << tablet << phone;
    }
    void pairWatchAskAnswerCountersign() {
        QFETCH(QSize, students);
        QFETCH(QSize, instructors);
        const bool onTablet = instructors == tablet;
        const auto shot = [&](const char* name) {
            return std::string(name) + (onTablet ? "-tablet" : "-phone");
        };
        Device student(students);
        Device instructor(instructors);
        QVERIFY(desktop::addDemoAircraft(*student.archive, AMBIT_ROOT "/demo-aircraft"));
        student.app->aircraft()->refresh();

        // The round begins.
        TOUCHED(student.touch("aircraft.OX-DEMO"));
        TOUCHED(student.touch("walk.daily"));
        TOUCHED(student.type("beginName", QStringLiteral("Robin Example")));
        TOUCHED(student.touch("beginKey"));
        TOUCHED(student.touch("keyHere"));

        // Pair.
        TOUCHED(student.touch("moreKey"));
        TOUCHED(student.touch("followKey"));
        student.makeKey(QStringLiteral("Robin Example"));
        TOUCHED(student.touch("newKeyDone"));
        TOUCHED(student.type("signPassphrase", passphrase));
        TOUCHED(student.touch("followStart"));
        TOUCHED(student.touch("followInvite"));
        QTRY_VERIFY(!student.app->sharing()->codeText().isEmpty());
        TOUCHED(instructor.touch("placeWatch"));
        instructor.shoot(shot("watch-start").c_str());
        instructor.makeKey(QStringLiteral("Ines Example"));
        TOUCHED(instructor.touch("watchStart"));
        TOUCHED(instructor.type("signPassphrase", passphrase));
        TOUCHED(instructor.touch("watchStart"));
        TOUCHED(instructor.see("watchNobody"));
        TOUCHED(instructor.touch("watchJoin"));
        TOUCHED(instructor.type("joinCode", student.app->sharing()->codeText().toLower()));
        instructor.shoot(shot("join").c_str());
        TOUCHED(instructor.touch("joinDone"));
        TOUCHED(instructor.see("student.Robin Example"));
        // The student sees who watches, and the code is gone: it lets one device in, once.
        QTRY_COMPARE(student.app->sharing()->watchingText(), QStringLiteral("Ines Example follows"));
        QTRY_VERIFY(student.app->sharing()->codeText().isEmpty());
        TOUCHED(student.touch("followersClose"));

        // Watch.
        auto& round = *student.app->round();
        const auto oneStep = [&] {
            student.clock.at.ms += 9'000;
            instructor.clock.at.ms += 9'000;
            const QString kind = round.cardKind();
            const bool done = kind == QStringLiteral("go")    ? round.atStand()
                              : kind == QStringLiteral("set") ? round.changeSetting()
                                                              : round.settleSound(valueFor(round));
            QVERIFY2(done, qPrintable(student.app->problem()));
        };
        const auto walkOn = [&](int points) {
            for (const int until = round.settledCount() + points; round.settledCount() < until;)
                oneStep();
        };
        walkOn(12);
        TOUCHED(instructor.touch("student.Robin Example"));
        TOUCHED(instructor.see("screenFollow"));
        view::Student* followed = instructor.app->watch()->student(1);
        QTRY_COMPARE(followed->round()->settledCount(), round.settledCount());
        QCOMPARE(followed->round()->cardTitle(), round.cardTitle());
        instructor.shootDayAndNight(shot("follow").c_str());

        // A second look.
        const QString again =
            followed->round()->points().front().toMap().value(QStringLiteral("id")).toString();
        TOUCHED(instructor.touch("sayKey"));
        TOUCHED(instructor.touch("sayWhere"));
        TOUCHED(instructor.touch(("sayPoint." + again.toStdString()).c_str()));
        TOUCHED(instructor.type("sayWords", QStringLiteral("From below, too.")));
        instructor.shootDayAndNight(shot("say").c_str());
        TOUCHED(instructor.touch("sayAgain"));
        TOUCHED(student.see("askedStrip"));
        student.shoot(shot("asked-other").c_str());
        QVERIFY(!round.openRound().state().points.at(again.toStdString()).settled);
        QVERIFY(!round.against(true).isEmpty());
        // The walk leads there, over whatever is left to do on the way.
        while (round.pointId() != again)
            oneStep();
        QTRY_VERIFY(student.sees("keySound"));
        TOUCHED(student.touch("keySound"));
        QTRY_COMPARE(followed->round()->asks().front().toMap().value(QStringLiteral("became")).toString(),
                     QStringLiteral("settled"));

        // A question, and its answer.
        TOUCHED(instructor.touch("sayKey"));
        TOUCHED(instructor.type("sayWords", QStringLiteral("Which fuel is in it?")));
        TOUCHED(instructor.touch("sayQuestion"));
        TOUCHED(student.touch("askedStrip"));
        TOUCHED(student.touch("askAnswer.2"));
        TOUCHED(student.type("answerWords", QStringLiteral("100LL, drained clear.")));
        TOUCHED(student.touch("answerDone"));
        QTRY_VERIFY(followed->round()
                        ->asks()
                        .back()
                        .toMap()
                        .value(QStringLiteral("becameText"))
                        .toString()
                        .contains(QStringLiteral("drained clear")));

        // Scrolled back, and to the end again.
        const int before = followed->round()->settledCount();
        TOUCHED(instructor.touch("timeLine"));
        QVERIFY(followed->round()->settledCount() < before);
        instructor.shoot(shot("scrolled").c_str());
        TOUCHED(instructor.touch("nowKey"));
        QCOMPARE(followed->round()->settledCount(), before);

        // To the end.
        while (round.cardKind() != QStringLiteral("done"))
            walkOn(1);
        TOUCHED(student.touch("keyReview"));
        TOUCHED(student.touch("reviewConclude"));
        TOUCHED(student.touch("concludeFit"));
        TOUCHED(student.touch("concludeDone"));
        TOUCHED(student.type("signPassphrase", passphrase));
        TOUCHED(student.touch("signKey"));
        QTRY_COMPARE(round.phase(), QStringLiteral("sealed"));

        // Countersign on the instructor's own device.
        QTRY_VERIFY2(!followed->recordId().isEmpty(), qPrintable(instructor.app->problem()));
        instructor.shoot(shot("to-sign").c_str());
        TOUCHED(instructor.touch("followRecord"));
        TOUCHED(instructor.touch("recordCountersign"));
        TOUCHED(instructor.type("signCertificate", QStringLiteral("FI 7")));
        TOUCHED(instructor.type("signPassphrase", passphrase));
        TOUCHED(instructor.touch("entrySign"));
        QTRY_VERIFY(followed->signedThere());
        const std::string id = followed->recordId().toStdString();
        QCOMPARE(*student.archive->recordJson(id), *instructor.archive->recordJson(id));
        QCOMPARE(*student.archive->recordPdf(id), *instructor.archive->recordPdf(id));
        QCOMPARE(record::verifyRecord(*student.archive->recordJson(id))->signatures.size(), 2U);
        TOUCHED(instructor.touch("placeWatch"));
        TOUCHED(instructor.touch("student.Robin Example"));
        TOUCHED(instructor.see("followSigned"));
        instructor.shoot(shot("signed").c_str());

        // Taken back: no code, no way in.
        student.app->sharing()->takeBack(
            student.app->sharing()->known().front().toMap().value(QStringLiteral("id")).toString());
        QTRY_COMPARE(followed->link(), QStringLiteral("over"));
        QVERIFY(!followed->linkText().isEmpty());
        QCOMPARE(instructor.app->problem(), QString());
    }

    void aRecordIsWalkedAgain() {
        Device device(tablet);
        QVERIFY(desktop::addDemoAircraft(*device.archive, AMBIT_ROOT "/demo-aircraft"));
        QVERIFY(device.app->begin(QStringLiteral("OX-DEMO"), QStringLiteral("daily"),
                                  QStringLiteral("Robin Example"), QStringLiteral("pilot"), {}, {}));
        auto& round = *device.app->round();
        while (round.cardKind() != QStringLiteral("done")) {
            device.clock.at.ms += 7'000;
            const QString kind = round.cardKind();
            QVERIFY(kind == QStringLiteral("go")    ? round.atStand()
                    : kind == QStringLiteral("set") ? round.changeSetting()
                                                    : round.settleSound(valueFor(round)));
        }
        QVERIFY(round.conclude(true, {}));
        QVERIFY(device.app->signing()->newKey(QStringLiteral("Robin Example"), passphrase));
        QVERIFY(device.app->signing()->sign(passphrase));
        QVERIFY(device.app->file()->open(device.app->signing()->recordId()));
        TOUCHED(device.touch("recordReplay"));
        TOUCHED(device.see("screenFollow"));
        view::FollowedRound& replay = *device.app->watch()->replay();
        QCOMPARE(replay.settledCount(), 0);
        TOUCHED(device.touch("speedKey"));
        TOUCHED(device.touch("speedKey"));
        QCOMPARE(replay.speed(), 32);
        TOUCHED(device.touch("playKey"));
        QTRY_VERIFY(replay.settledCount() > 0);
        TOUCHED(device.touch("playKey"));
        QVERIFY(!replay.playing());
        device.shootDayAndNight("replay-tablet");
        TOUCHED(device.touch("nowKey"));
        QCOMPARE(replay.settledCount(), replay.pointCount());
        TOUCHED(device.touch("followBack"));
        TOUCHED(device.see("screenRecord"));
    }

    /// Six students on six machines: the one that needs attention is first.
    void sixStudents_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("tablet") << tablet;
        QTest::newRow("phone") << phone;
    }
    void sixStudents() {
        QFETCH(QSize, size);
        const std::string at = size == tablet ? "-tablet" : "-phone";
        Device instructor(size);
        QVERIFY(instructor.app->signing()->newKey(QStringLiteral("Ines Example"), passphrase));
        TOUCHED(instructor.touch("placeWatch"));
        TOUCHED(instructor.type("signPassphrase", passphrase));
        TOUCHED(instructor.touch("watchStart"));
        std::vector<std::unique_ptr<Walker>> walkers;
        int count = 0;
        for (const char* name : {"Robin Example", "Kim Example", "Alex Example", "Toni Example",
                                 "Sam Example", "Chris Example"}) {
            walkers.push_back(std::make_unique<Walker>(name, count++ % 2 == 0 ? "OX-DEMO" : "OX-WING"));
            QVERIFY(instructor.app->watch()->join(walkers.back()->code()));
        }
        QTRY_COMPARE(instructor.app->watch()->students()->count(), 6);
        for (int i = 0; i < 6; ++i) {
            walkers[static_cast<std::size_t>(i)]->walk(6 + 7 * i, 9);
            QTRY_VERIFY(instructor.app->watch()->student(i + 1)->round() != nullptr);
        }
        // One settles four points in two seconds, another one finds what grounds, a third pauses.
        const std::string quickFrom = walkers[1]->inHand();
        QVERIFY(!quickFrom.empty());
        walkers[1]->walk(4, 0);
        round::Settled found;
        found.point = walkers[4]->inHand();
        found.outcome = round::Outcome::finding;
        found.words = "A crack, 4 mm, at the rivet.";
        found.severity = round::Severity::grounds;
        const auto photo = view::readPhoto(
            QUrl::fromLocalFile(QStringLiteral(AMBIT_ROOT "/demo-aircraft/helicopter/photos/") + anyPhoto()),
            view::PhotoData::time);
        QVERIFY(photo);
        found.photos = {photo->photo};
        walkers[4]->act(found, 20, {*photo});
        walkers[2]->act(round::Paused{}, 5);
        const auto first = [&] {
            return instructor.app->watch()
                ->students()
                ->get(0)
                .value(QStringLiteral("student"))
                .value<view::Student*>();
        };
        QTRY_COMPARE(first()->name(), QStringLiteral("Sam Example"));
        QCOMPARE(first()->need(), QStringLiteral("grounds"));
        QTRY_COMPARE(instructor.app->watch()->student(3)->need(), QStringLiteral("paused"));
        instructor.shootDayAndNight(("six" + at).c_str());
        TOUCHED(instructor.touch("student.Sam Example"));
        TOUCHED(instructor.see("screenFollow"));
        QTRY_VERIFY(photoShown(*instructor.window->contentItem()));
        instructor.shoot(("follow-found" + at).c_str());
        TOUCHED(instructor.touch("followBack"));
        QTRY_COMPARE(instructor.app->watch()->student(5)->need(), QStringLiteral("nothing"));
        QVERIFY(first()->name() != QStringLiteral("Sam Example"));
        TOUCHED(instructor.touch("watchStop"));
        TOUCHED(instructor.see("watchStart"));
        QCOMPARE(instructor.app->problem(), QString());
    }

private:
    static QString anyPhoto() {
        const QDir folder(QStringLiteral(AMBIT_ROOT "/demo-aircraft/helicopter/photos"));
        return folder.entryList({QStringLiteral("*.jpg"), QStringLiteral("*.png")}).value(0);
    }
    /// From the watched archive, beside what was found.
    static bool photoShown(const QQuickItem& item) {
        const QString source = item.property("source").toUrl().toString();
        if (source.startsWith(QStringLiteral("image://watched/")))
            return item.isVisible() && item.property("status").toInt() == 1; // Image.Ready
        const auto within = item.childItems();
        return std::any_of(within.begin(), within.end(), [](const auto* one) { return photoShown(*one); });
    }
    static QString valueFor(view::RoundView& round) {
        const auto& limit = round.openRound().airframe().point(round.pointId().toStdString())->limit;
        return limit ? QString::fromStdString(test::wellWithin(*limit)) : QString();
    }
};

// QTEST_MAIN in full: the fonts come before the application object.
int main(int argc, char** argv) {
    const ambit::desktop::OwnFonts fonts(true);
    QGuiApplication application(argc, argv);
    ambit::view::prepareApplication();
    TestTwoDevices test;
    QTEST_SET_MAIN_SOURCE_PATH
    return QTest::qExec(&test, argc, argv);
}
#include "tst_two_devices.moc"
