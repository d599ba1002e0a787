// What each view model shows at telling moments of a round, whole: golden/*.json. After a wanted change, run
// with AMBIT_GOLDEN=1 and read the diff.
#include "describe.hpp"
#include "house.hpp"

#include <QtTest>

namespace ambit::test {

class TestViewGolden : public QObject {
    Q_OBJECT

    static void same(const QString& name, const QJsonValue& now) {
        const QString difference = differsFromGolden(name, now);
        QVERIFY2(difference.isEmpty(), qPrintable(difference));
    }

    /// Told by other files, or no two times the same.
    static QStringList aside() {
        QStringList names;
        for (const char* name :
             {"figure", "review", "settledPoints", "fingerprint", "recordId", "roundId", "aircraftFile",
              "entries", "search", "pointHistory", "verification", "zoneFindings", "retention", "keys",
              "key"}) // what looks into the file: tst_view_file
            names << QString::fromLatin1(name);
        return names;
    }

private slots:
    void beforeAnyRound() {
        House house;
        const QString registration = house.registration;
        same(QStringLiteral("app"), describe(*house.app, aside()));
        same(QStringLiteral("begin"),
             QJsonArray{QJsonArray::fromVariantList(house.app->walks(registration)),
                        QJsonArray::fromVariantList(house.app->counters(registration)),
                        QJsonArray::fromStringList(house.app->cautions(registration)),
                        house.app->notice(registration)});
    }

    void atTheStart() {
        House house;
        QVERIFY(house.begin());
        same(QStringLiteral("round-start"), describe(*house.app->round(), aside()));
        same(QStringLiteral("figure-start"), describe(*house.app->round()->figure()));
    }

    void inTheMiddle() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("lamps")));
        auto& round = *house.app->round();
        QVERIFY(round.settleNotInspected(QStringLiteral("Battery kept for the start."),
                                         QStringLiteral("Day flight only.")));
        QVERIFY(house.walkTo(QStringLiteral("fairing.left")));
        same(QStringLiteral("round-raised"), describe(round, aside()));
        QVERIFY(round.settleFinding(QStringLiteral("Black powder at two rivets."), false,
                                    {House::photo(QStringLiteral("fairing-left-1.jpg"))}));
        QVERIFY(round.pause());
        house.passMinutes(5);
        same(QStringLiteral("round-paused"), describe(round, aside()));
        same(QStringLiteral("review"), describe(*round.review()));
        // Parts and outlines are those of the start: what differs is how they look.
        same(QStringLiteral("figure-middle"),
             describe(*round.figure(),
                      {QStringLiteral("parts"), QStringLiteral("outline"), QStringLiteral("wayDone")}));
    }

    void measured() {
        House house;
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        while (!round.measured())
            QVERIFY(house.touchCard());
        same(QStringLiteral("round-measured"), describe(round, aside()));
    }

    void setting() {
        House house;
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        while (round.cardKind() != QStringLiteral("set"))
            QVERIFY(house.touchCard());
        same(QStringLiteral("round-set"), describe(round, aside()));
    }

    void sealedAndFiled() {
        House house;
        QVERIFY2(house.wholeRound(), qPrintable(house.app->problem()));
        same(QStringLiteral("round-sealed"), describe(*house.app->round(), aside()));
        house.app->leaveRound();
        house.passMinutes(3 * 24 * 60);
        house.app->aircraft()->refresh();
        const QString record =
            house.app->file()->records()->get(0).value(QStringLiteral("recordId")).toString();
        QVERIFY2(house.app->file()->open(record), qPrintable(house.app->problem()));
        QVERIFY(house.app->file()->record()->property("verified").toBool());
        same(QStringLiteral("filed"), describe(*house.app, aside()));
    }

    void lastTime() {
        House house;
        QVERIFY2(house.wholeRound(), qPrintable(house.app->problem()));
        house.app->leaveRound();
        house.passMinutes(3 * 24 * 60);
        QVERIFY(house.app->begin(house.registration, QStringLiteral("daily"), QStringLiteral("Kim Example"),
                                 QStringLiteral("owner"), {},
                                 {{QStringLiteral("airframe-hours"), QStringLiteral("1288.8")}}));
        auto& round = *house.app->round();
        while (round.cardKind() != QStringLiteral("settle"))
            QVERIFY(house.touchCard());
        QVERIFY2(round.lastTime().startsWith(QStringLiteral("sound")), qPrintable(round.lastTime()));
        QVERIFY2(round.lastTime().endsWith(QStringLiteral("3 days ago, 4.2 flight hours")),
                 qPrintable(round.lastTime()));
        QVERIFY(house.walkTo(QStringLiteral("oil-level")));
        QVERIFY2(round.lastTime().contains(QStringLiteral(" qt\u00a0· ")), qPrintable(round.lastTime()));
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewGolden)
#include "tst_view_golden.moc"
