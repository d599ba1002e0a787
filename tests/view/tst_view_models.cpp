// Every list model under Qt's own model tester, through whole rounds with everything that can happen in one;
// and what must survive a restart.
#include "house.hpp"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QtTest>

namespace ambit::test {

class TestViewModels : public QObject {
    Q_OBJECT

    using Tester = QAbstractItemModelTester;
    static constexpr auto strict = Tester::FailureReportingMode::QtTest;

private slots:
    void ofARound() {
        House house;
        const Tester aircraft(house.app->aircraft(), strict);
        const Tester records(house.app->file()->records(), strict);
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        const Tester here(round.here(), strict);
        const Tester owed(round.owed(), strict);
        const Tester review(round.review(), strict);
        const Tester zones(round.figure()->zones(), strict);
        const Tester stands(round.figure()->stands(), strict);
        for (int i = 0; i < 6; ++i)
            QVERIFY(house.touchCard());
        QVERIFY2(round.tapZone(QStringLiteral("mast-left")), qPrintable(house.app->problem()));
        QVERIFY(house.touchCard());
        while (round.cardKind() != QStringLiteral("settle"))
            QVERIFY(house.touchCard());
        QVERIFY(round.choosePoint(QStringLiteral("last-look")));
        QVERIFY(round.settleNotInspected(QStringLiteral("Dark."), {}));
        QVERIFY(round.goTo(QStringLiteral("front")));
        QVERIFY(round.closed(QStringLiteral("pitot-cover")) || round.made(QStringLiteral("pitot-cover")));
        QVERIFY2(house.walkTo({}), qPrintable(house.app->problem()));
        QVERIFY(round.reopen(QStringLiteral("windscreen"), QStringLiteral("Insects.")));
        QVERIFY2(house.walkTo({}), qPrintable(house.app->problem()));
        QVERIFY(round.restNotInspected(QStringLiteral("Rain."), {}));
        while (round.owed()->count() > 0)
            QVERIFY(round.closed(round.owed()->get(0).value(QStringLiteral("openingId")).toString()));
        QVERIFY2(round.conclude(false, QStringLiteral("Rain.")), qPrintable(house.app->problem()));
        QVERIFY(house.app->signing()->newKey(QStringLiteral("Robin Example"),
                                             QStringLiteral("a good passphrase")));
        QVERIFY2(house.app->signing()->sign(QStringLiteral("a good passphrase")),
                 qPrintable(house.app->problem()));
        QCOMPARE(house.app->file()->records()->count(), 1);
        house.app->leaveRound();
    }

    void aTouchResetsNothing() {
        House house;
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        std::vector<std::unique_ptr<QSignalSpy>> resets;
        for (const QAbstractItemModel* model :
             std::initializer_list<QAbstractItemModel*>{round.here(), round.owed(), round.review(),
                                                        round.figure()->zones(), round.figure()->stands()})
            resets.push_back(std::make_unique<QSignalSpy>(model, &QAbstractItemModel::modelReset));
        QSignalSpy way(round.figure(), &view::FigureModel::wayChanged);
        QSignalSpy parts(round.figure(), &view::FigureModel::partsChanged);
        while (round.cardKind() != QStringLiteral("settle"))
            QVERIFY(house.touchCard());
        way.clear();
        QVERIFY(house.touchCard());
        QCOMPARE(way.count(), 0);
        QCOMPARE(parts.count(), 0);
        for (const auto& reset : resets)
            QCOMPARE(reset->count(), 0);
    }

    void aRoundGoesOnExactly() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("fairing.left")));
        const QString id = house.app->round()->roundId();
        const auto events = house.events();
        house.restart(); // as after a kill: nothing was asked to be saved
        QCOMPARE(house.app->aircraft()->get(0).value(QStringLiteral("openRoundId")).toString(), id);
        QVERIFY(house.app->resume(id));
        QCOMPARE(house.events(), events);
        QCOMPARE(house.app->round()->pointId(), QStringLiteral("fairing.left"));
    }

    void aChosenPointIsOnTheCard() {
        House house;
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        while (round.here()->count() < 2)
            QVERIFY(house.touchCard());
        const QString next = round.pointId();
        const QString other =
            round.here()->get(round.here()->count() - 1).value(QStringLiteral("pointId")).toString();
        QVERIFY(round.choosePoint(other));
        QCOMPARE(round.pointId(), other);
        QVERIFY(round.choosePoint({}));
        QCOMPARE(round.pointId(), next);
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewModels)
#include "tst_view_models.moc"
