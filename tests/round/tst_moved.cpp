// What moved, in words: by visits to stands, two things at most and the rest counted.
#include "round/moved.hpp"
#include "rounds.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::round;

namespace {

/// "left tread mast": goes to each; a name after a slash is settled there: "left/oil".
std::vector<walk::Step> steps(const char* text) {
    std::vector<walk::Step> list;
    for (const QString& word : QString::fromUtf8(text).split(' ', Qt::SkipEmptyParts)) {
        const QStringList parts = word.split('/');
        if (!parts[0].isEmpty()) list.emplace_back(walk::Go{parts[0].toStdString()});
        for (int i = 1; i < parts.size(); ++i)
            list.emplace_back(walk::Settle{parts[i].toStdString()});
    }
    return list;
}

} // namespace

class TestMoved : public QObject {
    Q_OBJECT

private slots:
    void words_data() {
        QTest::addColumn<QByteArray>("known");
        QTest::addColumn<QByteArray>("anew");
        QTest::addColumn<QByteArray>("words");
        const auto row = [](const char* name, const char* known, const char* anew, const char* words) {
            QTest::addRow("%s", name) << QByteArray(known) << QByteArray(anew) << QByteArray(words);
        };
        row("nothing", "front left right", "front left right", "It rains.");
        row("other points, same way", "front/arc-clear/tie-down-off", "front/tie-down-off/arc-clear",
            "It rains.");
        row("one moved", "front right left tread mast", "front left tread mast right",
            "It rains: “Right side” now comes after “At the mast”.");
        row("to the front", "front left right", "right front left",
            "It rains: “Right side” now comes first.");
        row("two that moved together", "front tread mast left right", "front left right tread mast",
            "It rains: “Left tread” and “At the mast” now come after “Right side”.");
        row("one more visit", "front left right", "front left right left",
            "It rains: “Left side” is added after “Right side”.");
        row("one visit less", "front left right left", "front left right",
            "It rains: “Left side” is left out.");
        row("a point is lost", "front/arc-clear left/oil right", "front/arc-clear right",
            "It rains: “Oil level” can't be settled now. “Left side” is left out.");
        row("a point is there again", "front right", "front left/oil right",
            "It rains: “Oil level” can be settled again. “Left side” is added after “In front”.");
        row("the rest is counted", "front/tie-down-off left/oil right", "tread mast front right",
            "It rains: “Tie-down off” and “Oil level” can't be settled now. “Left tread” and “At the mast” "
            "are added "
            "first, and 1 more.");
    }
    void words() {
        QFETCH(QByteArray, known);
        QFETCH(QByteArray, anew);
        QFETCH(QByteArray, words);
        const test::Round round(machine);
        QCOMPARE(
            QByteArray::fromStdString(whatMoved("It rains", steps(known), steps(anew), round.state, machine)),
            words);
    }

    void whatTheCauseNamesIsNotToldAgain() {
        const test::Round round(machine);
        QCOMPARE(whatMoved("“Right side” was reached out of turn", steps("front left right"),
                           steps("right front left"), round.state, machine),
                 std::string("“Right side” was reached out of turn."));
    }

    void aBlockedStandsPointsAreToldWithTheirNewStand() {
        test::Round round(machine);
        QVERIFY(round.act(StandBlocked{"front", "Ice."}));
        QCOMPARE(whatMoved("“In front” can't be used", steps("front/arc-clear left/oil right"),
                           steps("left/arc-clear/oil right"), round.state, machine),
                 std::string("“In front” can't be used: “Rotor arc clear” is now settled from “Left side”."));
    }

    void initTestCase() { machine = test::machine(); }

private:
    airframe::Airframe machine;
};

QTEST_APPLESS_MAIN(TestMoved)
#include "tst_moved.moc"
