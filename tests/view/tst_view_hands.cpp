// Where hands are few: what a key answers, portions, what is read aloud; and interruptions, quick runs, the
// night.
#include "house.hpp"
#include "model/clicker.hpp"

#include <QSettings>
#include <QSignalSpy>
#include <QTest>

using namespace ambit;
using test::House;
using view::Clicker;

namespace {

QString lastKind(const House& house) {
    return QString::fromLatin1(round::kindOf(house.app->round()->openRound().events().back().what));
}

const round::State& stateOf(const House& house) {
    return house.app->round()->openRound().state();
}

} // namespace

class TestViewHands : public QObject {
    Q_OBJECT

private slots:
    // --- one key

    void aPressIsOneAnswer() {
        Clicker clicker;
        QSignalSpy once(&clicker, &Clicker::once), twice(&clicker, &Clicker::twice),
            longOne(&clicker, &Clicker::longOne);
        clicker.press();
        QVERIFY(clicker.held());
        clicker.release();
        QVERIFY(!clicker.held());
        QCOMPARE(once.size(), 0); // another press may follow
        QTRY_COMPARE(once.size(), 1);
        QTest::qWait(Clicker::longMs);
        QCOMPARE(once.size() + twice.size() + longOne.size(), 1);
    }
    void twoPressesAreAnother() {
        Clicker clicker;
        QSignalSpy once(&clicker, &Clicker::once), twice(&clicker, &Clicker::twice),
            longOne(&clicker, &Clicker::longOne);
        for (int i = 0; i < 2; ++i) {
            clicker.press();
            clicker.release();
        }
        QCOMPARE(twice.size(), 1);
        QTest::qWait(Clicker::longMs + Clicker::againMs);
        QCOMPARE(once.size() + longOne.size(), 0);
    }
    void aLongOneIsToldWhileItIsHeld() {
        Clicker clicker;
        QSignalSpy once(&clicker, &Clicker::once), longOne(&clicker, &Clicker::longOne);
        clicker.press();
        clicker.press(); // a key that repeats itself
        QTRY_COMPARE(longOne.size(), 1);
        QVERIFY(clicker.held());
        clicker.release();
        QTest::qWait(2 * Clicker::againMs);
        QCOMPARE(once.size(), 0);
        QCOMPARE(longOne.size(), 1);
    }
    void whatWasBegunElsewhereIsNone() {
        Clicker clicker;
        QSignalSpy once(&clicker, &Clicker::once), longOne(&clicker, &Clicker::longOne);
        clicker.press();
        clicker.forget();
        clicker.release();
        clicker.press();
        clicker.release();
        clicker.forget();
        clicker.release(); // of a key pressed before
        QTest::qWait(Clicker::longMs + Clicker::againMs);
        QCOMPARE(once.size() + longOne.size(), 0);
    }
    void lettersAndMovesDontAnswer() {
        for (const int key : {Qt::Key_VolumeUp, Qt::Key_VolumeDown, Qt::Key_Space, Qt::Key_Return,
                              Qt::Key_PageDown, Qt::Key_MediaTogglePlayPause, Qt::Key_ToggleCallHangup})
            QVERIFY(Clicker::answers(key));
        for (const int key : {Qt::Key_S, Qt::Key_1, Qt::Key_Tab, Qt::Key_Up, Qt::Key_Escape, Qt::Key_Back})
            QVERIFY(!Clicker::answers(key));
    }

    // --- where one hand is free

    void aKeyAnswersThere() {
        House house;
        house.app->habits()->setKeys(true);
        view::HandsView& hands = *house.app->hands();
        QVERIFY(house.begin());
        QCOMPARE(hands.mode(), QStringLiteral("touch"));
        QVERIFY(!hands.answerOnce()); // nobody's hands are full here
        QVERIFY(house.walkTo("fuel-cap-open"));
        QCOMPARE(hands.mode(), QStringLiteral("key"));
        house.spoken.clear();
        hands.sayAgain();
        QVERIFY(house.spoken.last().contains(house.app->round()->cardTitle()));
        QVERIFY(house.spoken.last().contains(house.app->round()->sound()));
        QVERIFY(hands.answerOnce());
        QVERIFY(stateOf(house).points.at("fuel-cap-open").last()->what.by == round::By::key);
        const QString second = house.app->round()->pointId();
        QVERIFY(hands.answerLong());
        const auto found = *stateOf(house).points.at(second.toStdString()).last();
        QVERIFY(found.what.outcome == round::Outcome::finding && found.what.by == round::By::key);
        QVERIFY(!found.what.words.empty());
        // In words as long as one stands there.
        QCOMPARE(hands.unworded().size(), 1);
        QVERIFY(!hands.putIntoWords(second, "  ")); // words are needed
        QCOMPARE(hands.unworded().size(), 1);
        QVERIFY(hands.putIntoWords(second, "A crack in the rim."));
        QVERIFY(hands.unworded().isEmpty());
        const auto said = *stateOf(house).points.at(second.toStdString()).last();
        QCOMPARE(said.what.words, std::string("A crack in the rim."));
        QVERIFY(said.what.by == round::By::touch);
        QCOMPARE(said.stand, found.stand);
        // One touch, and the screen is touched at this stand.
        hands.touchInstead();
        QCOMPARE(hands.mode(), QStringLiteral("touch"));
    }
    void inWordsAfterwardsTheyAreNoted() {
        House house;
        house.app->habits()->setKeys(true);
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        QVERIFY(house.app->hands()->answerLong());
        const QString there = house.app->round()->standId();
        while (house.app->round()->standId() == there)
            QVERIFY(house.touchCard());
        QVERIFY(house.app->hands()->putIntoWords("fuel-cap-open", "Seal split."));
        QCOMPARE(lastKind(house), QStringLiteral("note"));
    }

    // --- where none is

    void aPortionIsToldLookedAtAndAskedFor() {
        House house;
        house.app->habits()->setPortions(true);
        house.app->habits()->setPortionSize(3);
        view::HandsView& hands = *house.app->hands();
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("hinge-bolt.a"));
        QCOMPARE(hands.mode(), QStringLiteral("read"));
        QCOMPARE(hands.portion().size(), 3);
        QVERIFY(hands.pointsAfter() > 0);
        QTRY_VERIFY(!house.spoken.isEmpty());
        for (const QVariant& one : hands.portion())
            QVERIFY(house.spoken.last().contains(one.toMap().value("name").toString()));
        QVERIFY(house.spoken.last().contains(QStringLiteral("Three points of contact"))); // where it matters
        QVERIFY(!hands.down());
        QVERIFY(hands.answerOnce()); // up I go
        QCOMPARE(hands.mode(), QStringLiteral("up"));
        const std::size_t events = house.events();
        QVERIFY(!house.app->round()->settleSound());
        QVERIFY(!house.app->round()->settleNotInspected("No.", ""));
        QVERIFY(!house.app->round()->goTo("front"));
        QVERIFY(hands.answerOnce()); // told again
        QCOMPARE(house.events(), events);
        QVERIFY(hands.answerLong()); // down again
        QCOMPARE(hands.mode(), QStringLiteral("touch"));
        QCOMPARE(hands.asking(), 3);
        for (int left = 3; left > 0; --left) {
            QCOMPARE(hands.asking(), left);
            QVERIFY(house.app->round()->settleSound());
        }
        QCOMPARE(hands.mode(), QStringLiteral("read")); // the next portion
        QVERIFY(stateOf(house).points.at("hinge-bolt.a").last()->fromPortion);
        // Not all of them: told once more, and nothing was settled by it.
        const int settled = house.app->round()->settledCount();
        QVERIFY(hands.climb());
        QVERIFY(hands.giveUp());
        QCOMPARE(hands.mode(), QStringLiteral("read"));
        QCOMPARE(house.app->round()->settledCount(), settled);
        hands.touchInstead();
        QVERIFY(house.app->round()->settleSound());
    }
    void aKillUpThereLosesNothing() {
        House house;
        house.app->habits()->setPortions(true);
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("hinge-bolt.a"));
        QVERIFY(house.app->hands()->climb());
        const QString id = house.app->round()->roundId();
        house.passMinutes(9);
        house.restart();
        QVERIFY(house.app->resume(id));
        QCOMPARE(house.app->hands()->mode(), QStringLiteral("up"));    // whatever the habits are now
        QVERIFY(house.app->conditions()->interruptedText().isEmpty()); // nothing is told up there for long
        QVERIFY(house.app->hands()->down());
        QVERIFY(house.app->hands()->asking() > 0);
    }
    void withoutAVoiceItSaysSo() {
        House house;
        QVERIFY(house.app->hands()->voiceText().isEmpty());
        house.hasVoice = false;
        house.app->habits()->setKeys(true);
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        QTRY_VERIFY(!house.app->hands()->voiceText().isEmpty());
    }
    void onlyWhatIsWantedIsReadAloud() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        QCoreApplication::processEvents();
        house.app->leaveRound();
        QCOMPARE(house.calls, 0); // to be told to stop, an engine would be started
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        QVERIFY2(house.spoken.isEmpty(), qPrintable(house.spoken.join('\n')));
        house.app->habits()->setAloud(true);
        QTRY_COMPARE(house.spoken.size(), 1);
        QVERIFY(house.touchCard());
        QTRY_COMPARE(house.spoken.size(), 2); // follows the plan
        QVERIFY(house.spoken.last().contains(house.app->round()->cardTitle()));
    }

    // --- interruptions

    void aPauseAsksForSomeAgain() {
        House house;
        view::ConditionsView& conditions = *house.app->conditions();
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        const int settled = house.app->round()->settledCount();
        QVERIFY(house.app->round()->pause());
        house.passMinutes(7);
        QVERIFY(house.app->round()->resume());
        QVERIFY(conditions.interruptedText().startsWith(QStringLiteral("Paused for 7 min: back 3 points")));
        QVERIFY(conditions.again().size() >= 3);
        QCOMPARE(house.app->round()->settledCount(), settled - conditions.again().size());
        conditions.read();
        QVERIFY(conditions.interruptedText().isEmpty());
        const round::Interruption& kept = stateOf(house).interruptions.back();
        QCOMPARE(kept.what.seconds, 420);
        QVERIFY(kept.what.cause == round::Interrupted::Cause::paused);
        QVERIFY(house.walkTo({}));
    }
    void aShortOneIsNone() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        QVERIFY(house.app->round()->pause());
        house.clock.at.ms += 9000;
        QVERIFY(house.app->round()->resume());
        house.app->conditions()->leave("away");
        house.clock.at.ms += 9000;
        house.app->conditions()->comeBack();
        house.app->conditions()->leave("away");
        house.clock.at.ms -= 3'600'000; // set back meanwhile
        house.app->conditions()->comeBack();
        QVERIFY(stateOf(house).interruptions.empty());
    }
    void whoeverWasAwayIsAskedAgain_data() {
        QTest::addColumn<QString>("cause");
        QTest::addColumn<QString>("from");
        for (const char* cause : {"away", "locked", "call"})
            for (const char* from : {"points", "stand", "start"})
                QTest::addRow("%s, %s", cause, from) << QString(cause) << QString(from);
    }
    void whoeverWasAwayIsAskedAgain() {
        QFETCH(QString, cause);
        QFETCH(QString, from);
        House house;
        house.app->habits()->setBackFrom(from);
        house.app->habits()->setBackPoints(1);
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        house.app->conditions()->leave(cause);
        house.passMinutes(1);
        house.app->conditions()->leave("away"); // and then something else: what began first counts
        house.passMinutes(1);
        house.app->conditions()->comeBack();
        const round::Interrupted& what = stateOf(house).interruptions.back().what;
        QCOMPARE(QString(round::toText(what.cause)), cause);
        QCOMPARE(QString(round::toText(what.rule.from)), from);
        QCOMPARE(what.seconds, 120);
        QCOMPARE(house.app->conditions()->again().size(), static_cast<int>(what.again.size()));
        if (from == "start") QCOMPARE(house.app->round()->settledCount(), 0);
        house.app->conditions()->comeBack(); // nobody was away
        QCOMPARE(stateOf(house).interruptions.size(), 1U);
    }
    void aProgramBehindOthersIsAway() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        auto& program = *qobject_cast<QGuiApplication*>(QCoreApplication::instance());
        emit program.applicationStateChanged(Qt::ApplicationSuspended);
        house.passMinutes(2);
        emit program.applicationStateChanged(Qt::ApplicationActive);
        QCOMPARE(stateOf(house).interruptions.size(), 1U);
        QVERIFY(stateOf(house).interruptions.back().what.cause == round::Interrupted::Cause::away);
    }
    void silenceIsAskedAbout() {
        House house;
        view::ConditionsView& conditions = *house.app->conditions();
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        house.clock.at.ms += 299'000;
        conditions.tick();
        QVERIFY(conditions.silentText().isEmpty());
        house.clock.at.ms += 1000;
        conditions.tick();
        QCOMPARE(conditions.silentText(), QStringLiteral("Nothing was told for 5 min"));
        QVERIFY(stateOf(house).interruptions.empty()); // not before somebody is there
        house.passMinutes(1);
        conditions.comeBack();
        QVERIFY(conditions.silentText().isEmpty());
        QVERIFY(stateOf(house).interruptions.back().what.cause == round::Interrupted::Cause::silent);
        QCOMPARE(stateOf(house).interruptions.back().what.seconds, 360);
    }
    void aClosedProgramWasAnInterruption() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo("fuel-cap-open"));
        const QString id = house.app->round()->roundId();
        const std::size_t events = house.events();
        house.restart();
        QVERIFY(house.app->resume(id));
        QCOMPARE(house.events(), events); // at once: exactly where it was
        house.passMinutes(3);
        house.restart();
        QVERIFY(house.app->resume(id));
        QVERIFY(stateOf(house).interruptions.back().what.cause == round::Interrupted::Cause::stopped);
        QVERIFY(house.app->conditions()->interruptedText().startsWith("The program was closed for 3 min"));
    }

    // --- a quick run

    void aQuickRunIsAskedAboutOnce() {
        House house;
        view::ConditionsView& conditions = *house.app->conditions();
        QVERIFY(house.begin());
        QVERIFY(house.touchCard()); // go
        house.passMinutes(1);
        QVERIFY(house.app->round()->settleSound());
        QVERIFY(conditions.quickText().isEmpty());
        for (int i = 0; i < 3; ++i) {
            house.clock.at.ms += 1000;
            QVERIFY(house.app->round()->settleSound());
        }
        QVERIFY2(conditions.quickText().startsWith(QStringLiteral("3 points in 3 s")),
                 qPrintable(conditions.quickText()));
        const int settled = house.app->round()->settledCount();
        QVERIFY(conditions.answerQuick(true));
        QCOMPARE(house.app->round()->settledCount(), settled - 3);
        QVERIFY(conditions.quickText().isEmpty());
        for (int i = 0; i < 3; ++i)
            QVERIFY(house.touchCard());
        QVERIFY(conditions.quickText().isEmpty()); // once
        QCOMPARE(stateOf(house).quickRun->points, 3);
    }

    // --- the last look

    void theLastLookComesLastAndAgain() {
        House house;
        QVERIFY(house.begin());
        view::RoundView& round = *house.app->round();
        QVERIFY(house.walkTo("last-look"));
        QVERIFY(round.lastLook());
        QVERIFY(round.openedText().contains("Fuel cap"));
        QCOMPARE(round.settledCount(), round.pointCount() - 1);
        QVERIFY(house.touchCard());
        QCOMPARE(round.cardKind(), QStringLiteral("done"));
        QVERIFY(round.made("fuel-cap"));
        QVERIFY(round.closed("fuel-cap"));
        QVERIFY(round.lastLook()); // something was done after it
        QVERIFY(!round.against(false).isEmpty());
        QVERIFY(house.walkTo({}));
        QVERIFY(round.against(false).isEmpty());
    }

    // --- the night

    void theNightBringsItsPoints() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.app->conditions()->nightPossible());
        const int byDay = house.app->round()->pointCount();
        QVERIFY(house.app->conditions()->tellNight(true));
        QVERIFY(house.app->conditions()->night());
        QVERIFY(house.app->round()->pointCount() > byDay);
        QVERIFY(house.walkTo("torch"));
        QVERIFY(house.app->conditions()->tellNight(false));
        QCOMPARE(house.app->round()->pointCount(), byDay);
    }

    // --- habits

    void habitsAreKept() {
        QTemporaryDir folder;
        const QString file = folder.filePath("settings.ini");
        {
            QSettings settings(file, QSettings::IniFormat);
            view::Habits habits(&settings);
            QVERIFY(habits.keys() && habits.portions() && !habits.aloud() && !habits.photosAsTaken());
            QCOMPARE(habits.portionSize(), 5);
            QCOMPARE(habits.backText(), QStringLiteral("back 3 points"));
            habits.setKeys(false);
            habits.setAloud(true);
            habits.setPhotosAsTaken(true);
            habits.setPortionSize(99);
            habits.setBackFrom("stand");
            habits.setBackFrom("nowhere");
            habits.setBackPoints(0);
            habits.touchOnly(); // not kept
        }
        QSettings settings(file, QSettings::IniFormat);
        const view::Habits habits(&settings);
        QVERIFY(!habits.keys() && habits.portions() && habits.aloud() && habits.photosAsTaken());
        QCOMPARE(habits.portionSize(), 9);
        QCOMPARE(habits.backFrom(), QStringLiteral("stand"));
        QCOMPARE(habits.backPoints(), 1);
        QSettings spoiled(folder.filePath("spoiled.ini"), QSettings::IniFormat);
        spoiled.setValue("habits/portionSize", "many");
        spoiled.setValue("habits/backPoints", -4);
        spoiled.setValue("habits/backFrom", "there");
        const view::Habits others(&spoiled);
        QCOMPARE(others.portionSize(), 5);
        QCOMPARE(others.backText(), QStringLiteral("back 3 points"));
    }
};

QTEST_MAIN(TestViewHands)
#include "tst_view_hands.moc"
