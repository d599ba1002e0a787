// Water on the glass: what it touches settles nothing, what a hand touches does; and what the hand feels of
// it.
#include "model/touch_guard.hpp"
#include "one_window.hpp"

#include <QPointingDevice>
#include <QRandomGenerator>
#include <QSettings>
#include <QSignalSpy>
#include <QStyleHints>

using namespace ambit;
using test::OneWindow;
using view::Haptic;
using view::TouchGuard;
using view::TouchJudge;
using Verdict = view::TouchJudge::Verdict;

namespace {

constexpr QSize phone{390, 844};
constexpr QSize tablet{1180, 820};

/// Fingers and drops on the walk screen, with a clock of their own: real events through the window system.
class Glass {
public:
    explicit Glass(QSize size) : device(size) {
        if (!device.app->begin(QStringLiteral("OX-DEMO"), QStringLiteral("daily"),
                               QStringLiteral("Robin Example"), QStringLiteral("pilot"), {}, {}))
            qFatal("%s", qPrintable(device.app->problem()));
        device.walkToAPoint();
        guard = device.window->findChild<TouchGuard*>();
        if (guard == nullptr) qFatal("The window has no guard.");
        guard->setClock([this] { return time; });
        wait(10'000);
        if (!QTest::qWaitForWindowExposed(device.window)) qFatal("The window isn't shown.");
        QTest::qWait(30);
        device.felt.clear();
    }

    void wait(qint64 milliseconds) { time += milliseconds; }
    void press(int finger, QPoint at) const {
        QTest::touchEvent(device.window, screen()).press(finger, at, device.window);
    }
    void move(int finger, QPoint at) const {
        QTest::touchEvent(device.window, screen()).move(finger, at, device.window);
    }
    void lift(int finger, QPoint at) const {
        QTest::touchEvent(device.window, screen()).release(finger, at, device.window);
    }
    void tap(QPoint at, qint64 rests) {
        press(0, at);
        wait(rests);
        lift(0, at);
        OneWindow::rest();
    }
    [[nodiscard]] QPoint middleOf(const char* name) const {
        const QQuickItem* item = device.seen(QLatin1String(name));
        if (item == nullptr) qFatal("There is no %s.", name);
        return item->mapToScene(QPointF(item->width() / 2, item->height() / 2)).toPoint();
    }
    [[nodiscard]] QString said() const {
        const QQuickItem* line = device.seen(QStringLiteral("quietText"));
        return line == nullptr ? QString() : line->property("text").toString();
    }
    [[nodiscard]] int settled() const { return device.app->round()->settledCount(); }

    static QPointingDevice* screen() {
        static QPointingDevice* const one = QTest::createTouchDevice();
        return one;
    }

    OneWindow device;
    TouchGuard* guard = nullptr;
    qint64 time = 1'000;
};

void mouse(QQuickWindow& window, QEvent::Type type, QPoint at, Qt::MouseEventSource source) {
    const bool up = type == QEvent::MouseButtonRelease;
    QMouseEvent event(type, at, at, window.mapToGlobal(at), Qt::LeftButton,
                      up ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier, source);
    QCoreApplication::sendEvent(&window, &event);
    OneWindow::rest();
}

} // namespace

class TestWetGlass : public QObject {
    Q_OBJECT

private slots:
    // --- the judge alone ----------------------------------------------------------------------------------
    void judge() {
        TouchJudge judge;
        judge.down(0, {}, 1000);
        QVERIFY(judge.touching());
        QCOMPARE(judge.up(0, 1000 + TouchJudge::leastRest), Verdict::hand);
        QVERIFY(!judge.touching());
    }
    void tooShort() {
        TouchJudge judge;
        judge.down(0, {}, 1000);
        QCOMPARE(judge.up(0, 1000 + TouchJudge::leastRest - 1), Verdict::brief);
        // It takes the glass a while to count again, and then it does.
        judge.down(0, {}, 1000 + TouchJudge::leastRest - 1 + TouchJudge::quietAfterGhost - 1);
        QCOMPARE(judge.up(0, 2000), Verdict::hurried);
        judge.down(0, {}, 2000 + TouchJudge::quietAfterGhost);
        QCOMPARE(judge.up(0, 3000), Verdict::hand);
    }
    void tooSoon() {
        TouchJudge judge;
        judge.down(0, {}, 1000);
        QCOMPARE(judge.up(0, 1100), Verdict::hand);
        judge.down(0, {}, 1100 + TouchJudge::betweenTouches - 1);
        QCOMPARE(judge.up(0, 2000), Verdict::hurried);
    }
    void anyOrderOfTwo() {
        for (const int first : {0, 1}) {
            TouchJudge judge;
            judge.down(0, {}, 1000);
            judge.down(1, {}, 1500);
            QCOMPARE(judge.up(first, 2000), Verdict::together);
            QCOMPARE(judge.up(1 - first, 3000), Verdict::together);
        }
    }
    void aClockThatRunsBackBlocksNobody() {
        TouchJudge judge;
        judge.down(0, {}, 1'000'000);
        QCOMPARE(judge.up(0, 1'000'001), Verdict::brief);
        judge.down(0, {}, 500);
        QCOMPARE(judge.up(0, 600), Verdict::hand);
    }

    // --- on the walk --------------------------------------------------------------------------------------
    void aHandSettles_data() { sizes(); }
    void aHandSettles() {
        QFETCH(QSize, size);
        Glass glass(size);
        const int before = glass.settled();
        const QPoint sound = glass.middleOf("keySound");
        glass.tap(sound, 90);
        QCOMPARE(glass.settled(), before + 1);
        QCOMPARE(glass.said(), QString());
        QCOMPARE(glass.device.felt, std::vector{Haptic::taken});
    }
    void aGloveThatRestsLongSettles() {
        Glass glass(phone);
        const int before = glass.settled();
        glass.tap(glass.middleOf("keySound"), 2500);
        QCOMPARE(glass.settled(), before + 1);
    }
    void twoAtOnceSettleNothing_data() { sizes(); }
    void twoAtOnceSettleNothing() {
        QFETCH(QSize, size);
        Glass glass(size);
        const auto before = glass.device.events();
        const QPoint sound = glass.middleOf("keySound");
        const QPoint other = sound + QPoint(-8, 12); // on the same key
        QTest::touchEvent(glass.device.window, Glass::screen()).press(0, sound).press(1, other);
        glass.wait(120);
        QTest::touchEvent(glass.device.window, Glass::screen()).release(0, sound).stationary(1);
        OneWindow::rest();
        QCOMPARE(glass.device.events(), before);
        QTest::touchEvent(glass.device.window, Glass::screen()).release(1, other);
        OneWindow::rest();
        QCOMPARE(glass.device.events(), before);
        QCOMPARE(glass.said(), QStringLiteral("Two places were touched at once: nothing was taken."));
        QVERIFY(glass.device.felt.empty());
        QCOMPARE(glass.device.app->problem(), QString()); // no error
        QVERIFY(!glass.device.seen(QStringLiteral("keySound"))->property("pressed").toBool());
        // Then a clean press counts.
        glass.wait(TouchJudge::quietAfterGhost);
        glass.tap(sound, 90);
        QCOMPARE(glass.device.events(), before + 1);
    }
    void palmAndFinger() {
        Glass glass(phone);
        const auto before = glass.device.events();
        const QPoint palm(30, 400), sound = glass.middleOf("keySound");
        glass.press(0, palm);
        glass.wait(800);
        QTest::touchEvent(glass.device.window, Glass::screen()).stationary(0).press(1, sound);
        glass.wait(120);
        QTest::touchEvent(glass.device.window, Glass::screen()).stationary(0).release(1, sound);
        glass.wait(500);
        // A second try with the palm still down: not either.
        QTest::touchEvent(glass.device.window, Glass::screen()).stationary(0).press(1, sound);
        glass.wait(120);
        QTest::touchEvent(glass.device.window, Glass::screen()).stationary(0).release(1, sound);
        OneWindow::rest();
        QCOMPARE(glass.device.events(), before);
        glass.lift(0, palm);
        OneWindow::rest();
        QCOMPARE(glass.device.events(), before);
        glass.wait(TouchJudge::quietAfterGhost);
        glass.tap(sound, 90);
        QCOMPARE(glass.device.events(), before + 1);
    }
    void aTouchTooShort() {
        Glass glass(phone);
        const auto before = glass.device.events();
        glass.tap(glass.middleOf("keySound"), 20);
        QCOMPARE(glass.device.events(), before);
        QCOMPARE(glass.said(), QStringLiteral("That touch was too short: nothing was taken."));
    }
    /// Eight in 300 ms: none rests long enough.
    void aBurst() {
        Glass glass(phone);
        const auto before = glass.device.events();
        const QPoint sound = glass.middleOf("keySound");
        for (int i = 0; i < 8; ++i) {
            glass.tap(sound, 22);
            glass.wait(15);
        }
        QCOMPARE(glass.device.events(), before);
    }
    /// Eight that each rest as long as a finger: the first was alone on a quiet glass and counts, no other
    /// does.
    void aSlowBurst() {
        Glass glass(phone);
        const auto before = glass.device.events();
        const QPoint sound = glass.middleOf("keySound");
        for (int i = 0; i < 8; ++i) {
            glass.tap(sound, 60);
            glass.wait(60);
        }
        QCOMPARE(glass.device.events(), before + 1);
        QCOMPARE(glass.said(), QStringLiteral("That touch came too soon after the last: nothing was taken."));
    }
    void aDropWhileAnotherFingerIsTheReason() {
        // One finger lifts in the very report in which the next comes down.
        Glass glass(phone);
        const auto before = glass.device.events();
        const QPoint sound = glass.middleOf("keySound"), away(40, 300);
        glass.press(0, sound);
        glass.wait(120);
        QTest::touchEvent(glass.device.window, Glass::screen()).release(0, sound).press(1, away);
        glass.wait(120);
        glass.lift(1, away);
        OneWindow::rest();
        QCOMPARE(glass.device.events(), before);
    }
    void theLineGoesByItself() {
        Glass glass(phone);
        glass.tap(glass.middleOf("keySound"), 10);
        QVERIFY(!glass.said().isEmpty());
        QTRY_VERIFY_WITH_TIMEOUT(glass.said().isEmpty(), TouchGuard::saidFor + 2000);
    }

    // --- what must go on working --------------------------------------------------------------------------
    void pinch() {
        Glass glass(tablet);
        const auto before = glass.device.events();
        const QQuickItem* figure = glass.device.seen(QStringLiteral("figure"));
        const QPoint middle = glass.middleOf("figure");
        QCOMPARE(figure->property("zoom").toDouble(), 1.0);
        QTest::touchEvent(glass.device.window, Glass::screen())
            .press(0, middle - QPoint(40, 0))
            .press(1, middle + QPoint(40, 0));
        for (int i = 1; i <= 20; ++i) {
            glass.wait(16);
            const QPoint spread(40 + 8 * i, 0);
            QTest::touchEvent(glass.device.window, Glass::screen())
                .move(0, middle - spread)
                .move(1, middle + spread);
            OneWindow::rest();
        }
        QVERIFY2(figure->property("zoom").toDouble() > 1.5, "pinched");
        const double zoom = figure->property("zoom").toDouble();
        QTest::touchEvent(glass.device.window, Glass::screen())
            .release(0, middle - QPoint(200, 0))
            .release(1, middle + QPoint(200, 0));
        OneWindow::rest();
        QCOMPARE(figure->property("zoom").toDouble(), zoom);
        QCOMPARE(glass.device.events(), before);
        QCOMPARE(glass.said(), QString()); // nobody meant to press
    }
    void aKeyGoesDownAndIsHeld() {
        Glass glass(phone);
        const QPoint sound = glass.middleOf("keySound");
        QSignalSpy held(glass.device.seen(QStringLiteral("keySound")), SIGNAL(pressAndHold()));
        glass.press(0, sound);
        OneWindow::rest();
        QVERIFY(glass.device.seen(QStringLiteral("keySound"))->property("pressed").toBool());
        QTRY_COMPARE_WITH_TIMEOUT(held.count(), 1,
                                  QGuiApplication::styleHints()->mousePressAndHoldInterval() + 2000);
        glass.wait(1000);
        glass.lift(0, sound);
    }
    void aPageScrolls() {
        Glass glass(phone);
        glass.tap(glass.middleOf("moreKey"), 80);
        QTRY_VERIFY(glass.device.seen(QStringLiteral("sheetMore")) != nullptr);
        QTest::qWait(30);
        const QPoint from(195, 600);
        const double before = scrolled(*glass.device.window->contentItem());
        glass.wait(400);
        glass.press(0, from);
        for (int i = 1; i <= 20; ++i) {
            glass.wait(16);
            glass.move(0, from - QPoint(0, 12 * i));
            OneWindow::rest();
        }
        glass.lift(0, from - QPoint(0, 240));
        OneWindow::rest();
        QVERIFY(scrolled(*glass.device.window->contentItem()) > before + 40);
        QCOMPARE(glass.said(), QString());
    }
    void aRealMouseIsNotHeldUp() {
        Glass glass(phone);
        const int before = glass.settled();
        const QPoint sound = glass.middleOf("keySound");
        mouse(*glass.device.window, QEvent::MouseButtonPress, sound, Qt::MouseEventNotSynthesized);
        mouse(*glass.device.window, QEvent::MouseButtonRelease, sound, Qt::MouseEventNotSynthesized);
        QCOMPARE(glass.settled(), before + 1);
    }
    void aKeyboardIsNotHeldUp() {
        Glass glass(phone);
        const int before = glass.settled();
        QTest::keyClick(glass.device.window, Qt::Key_S);
        OneWindow::rest();
        QCOMPARE(glass.settled(), before + 1);
    }
    /// Where the system makes a mouse of the finger.
    void touchesInDisguise() {
        Glass glass(phone);
        const int before = glass.settled();
        const QPoint sound = glass.middleOf("keySound");
        const auto tap = [&](qint64 rests) {
            mouse(*glass.device.window, QEvent::MouseButtonPress, sound, Qt::MouseEventSynthesizedByQt);
            glass.wait(rests);
            mouse(*glass.device.window, QEvent::MouseButtonRelease, sound, Qt::MouseEventSynthesizedByQt);
        };
        tap(20);
        QCOMPARE(glass.settled(), before);
        QVERIFY(!glass.device.seen(QStringLiteral("keySound"))->property("pressed").toBool());
        QVERIFY(!glass.said().isEmpty());
        tap(90); // too soon
        QCOMPARE(glass.settled(), before);
        glass.wait(TouchJudge::quietAfterGhost);
        tap(90);
        QCOMPARE(glass.settled(), before + 1);
    }

    // --- rain ---------------------------------------------------------------------------------------------
    /// Some two and a half thousand reports as water makes them, over all of the walk screen: nothing is
    /// taken, no sheet comes up.
    void rain_data() { sizes(); }
    void rain() {
        QFETCH(QSize, size);
        Glass glass(size);
        const auto before = glass.device.events();
        const QString pointBefore = glass.device.app->round()->pointId();
        QRandomGenerator random(20261126);
        QMap<int, QPoint> down;
        int sent = 0;
        const auto anywhere = [&] {
            // Half of it where it would do harm.
            if (random.bounded(2) == 0)
                return glass.middleOf("keySound") + QPoint(random.bounded(40) - 20, random.bounded(40) - 20);
            return QPoint(random.bounded(size.width()), random.bounded(size.height()));
        };
        const auto report = [&](auto change) {
            QTest::QTouchEventSequence touches =
                QTest::touchEvent(glass.device.window, Glass::screen(), false);
            for (auto it = down.constBegin(); it != down.constEnd(); ++it)
                touches.stationary(it.key());
            change(touches);
            touches.commit();
            ++sent;
        };
        while (sent < 2500) {
            const int kind = random.bounded(3);
            if (kind == 0) {
                // A drop, for an instant.
                const QPoint at = anywhere();
                report([&](auto& touches) { touches.press(0, at); });
                glass.wait(random.bounded(static_cast<int>(TouchJudge::leastRest)));
                report([&](auto& touches) { touches.release(0, at); });
            } else {
                // Two to five, coming and going as they like, for as long as they like.
                const int many = 2 + random.bounded(4);
                for (int finger = 0; finger < many; ++finger) {
                    const QPoint at = anywhere();
                    report([&](auto& touches) { touches.press(finger, at); });
                    down[finger] = at;
                    if (finger > 0)
                        glass.wait(random.bounded(400)); // the second comes while the first is there
                }
                while (!down.isEmpty()) {
                    const int finger = down.keys().at(random.bounded(down.size()));
                    const QPoint at = down.take(finger);
                    report([&](auto& touches) {
                        if (random.bounded(2) == 0)
                            touches.release(finger, at);
                        else
                            touches.release(finger,
                                            at + QPoint(random.bounded(9) - 4, random.bounded(9) - 4));
                    });
                    glass.wait(random.bounded(400));
                }
            }
            glass.wait(random.bounded(600));
            if (sent % 16 == 0) OneWindow::rest();
        }
        OneWindow::rest();
        QCOMPARE(glass.device.events(), before);
        QCOMPARE(glass.device.app->round()->pointId(), pointBefore);
        QCOMPARE(glass.device.app->problem(), QString());
        QVERIFY(glass.device.felt.empty());
        // It has stopped raining.
        glass.wait(TouchJudge::quietAfterGhost);
        glass.tap(glass.middleOf("keySound"), 90);
        QCOMPARE(glass.device.events(), before + 1);
    }

    // --- which hand ---------------------------------------------------------------------------------------
    void theHandIsRemembered() {
        OneWindow device(phone);
        QSettings settings(device.folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
        const auto started = [&] {
            view::Services services{
                *device.archive, {}, [&] { return device.clock; }, {}, view::readPhoto, {}, {}};
            services.settings = &settings;
            return std::make_unique<view::App>(std::move(services));
        };
        {
            const auto app = started();
            QVERIFY(!app->leftHanded());
            const QSignalSpy changed(app.get(), &view::App::leftHandedChanged);
            app->setLeftHanded(true);
            app->setLeftHanded(true);
            QCOMPARE(changed.count(), 1);
        }
        QVERIFY(started()->leftHanded());
    }

    // --- what is felt -------------------------------------------------------------------------------------
    void whatIsFelt() {
        Glass glass(phone);
        auto& round = *glass.device.app->round();
        auto& felt = glass.device.felt;
        QVERIFY(round.settleSound());
        QCOMPARE(felt, std::vector{Haptic::taken});
        felt.clear();
        QVERIFY(!round.settleFinding(QString(), false, {})); // no words
        QCOMPARE(felt, std::vector{Haptic::refused});
        felt.clear();
        QVERIFY(round.choosePoint(QString())); // nothing is logged by it
        QVERIFY(felt.empty());
        QVERIFY(round.pause());
        QCOMPARE(felt, std::vector{Haptic::taken});
        felt.clear();
        QVERIFY(round.resume());
        QCOMPARE(felt, std::vector{Haptic::taken});
    }

private:
    static void sizes() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("phone") << phone;
        QTest::newRow("tablet") << tablet;
    }
    /// How far anything is scrolled.
    static double scrolled(const QQuickItem& item) {
        double most = item.inherits("QQuickFlickable") ? item.property("contentY").toDouble() : 0;
        const auto within = item.childItems();
        for (const auto* one : within)
            if (one->isVisible()) most = std::max(most, scrolled(*one));
        return most;
    }
};

// QTEST_MAIN in full: the fonts come before the application object.
int main(int argc, char** argv) {
    const ambit::desktop::OwnFonts fonts(true);
    QGuiApplication application(argc, argv);
    ambit::view::prepareApplication();
    TestWetGlass tests;
    QTEST_SET_MAIN_SOURCE_PATH
    return QTest::qExec(&tests, argc, argv);
}
#include "tst_wet_glass.moc"
