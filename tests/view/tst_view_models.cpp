// Every list model under Qt's own model tester, through whole rounds with everything that can happen in one;
// and what must survive a restart.
#include "airframe/shape.hpp"
#include "house.hpp"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QtTest>

namespace ambit::test {

class TestViewModels : public QObject {
    Q_OBJECT

    using Tester = QAbstractItemModelTester;
    /// By a millimetre and more: a way may run along an edge.
    static bool isDeepIn(airframe::Place place, const airframe::Outline& outline) {
        constexpr double hair = 0.001;
        for (const double x : {-hair, hair})
            for (const double y : {-hair, hair})
                if (!airframe::isInside({place.x + x, place.y + y}, outline)) return false;
        return true;
    }
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

    void whatDiffersIsShownAndTakenBack() {
        House house;
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        const Tester stands(round.figure()->stands(), strict);
        const QSignalSpy marked(round.figure(), &view::FigureModel::markedChanged);
        QVERIFY(house.touchCard());
        while (round.cardKind() != QStringLiteral("go"))
            QVERIFY(house.touchCard());
        const QString ahead = round.targetStandId();
        const QString name = round.targetStandName();
        QVERIFY(round.orderText().isEmpty());
        QVERIFY2(round.blockStand(ahead, QStringLiteral(" Iced ")), qPrintable(house.app->problem()));
        QVERIFY(round.targetStandId() != ahead);
        QVERIFY2(round.orderText().startsWith(QStringLiteral("“%1” can't be used").arg(name)),
                 qPrintable(round.orderText()));
        QCOMPARE(round.blockedStands().size(), 1);
        QCOMPARE(round.blockedStands().first().toMap().value(QStringLiteral("why")).toString(),
                 QStringLiteral("Iced"));
        bool crossed = false;
        for (int row = 0; row < round.figure()->stands()->count(); ++row) {
            const auto stand = round.figure()->stands()->get(row);
            if (stand.value(QStringLiteral("standId")) == ahead)
                crossed = stand.value(QStringLiteral("blocked")) == QStringLiteral("Iced");
        }
        QVERIFY(crossed);
        QVERIFY(!round.blockStand(ahead, QStringLiteral("Twice")));
        QVERIFY(!round.goTo(ahead));
        QVERIFY(house.app->problem().contains(QStringLiteral("can't be used: Iced.")));

        // Far away: it is told, and nothing moves.
        const QVariantList box{QPointF(60, 60), QPointF(62, 60), QPointF(62, 61), QPointF(60, 61)};
        QVERIFY2(round.markArea(box, QStringLiteral("Wall")), qPrintable(house.app->problem()));
        QVERIFY2(round.orderText().endsWith(QStringLiteral("The order stays as it is.")),
                 qPrintable(round.orderText()));
        QCOMPARE(marked.count(), 1);
        QCOMPARE(round.figure()->marked().size(), 1);
        QCOMPARE(round.markedAreas().first().toMap().value(QStringLiteral("area")).toInt(), 1);
        QVERIFY(round.tellLight(true));
        QVERIFY(round.lightLow());
        QVERIFY(!round.tellLight(true));
        QVERIFY(round.clearArea(1));
        QVERIFY(!round.clearArea(1));
        QVERIFY(round.figure()->marked().isEmpty());
        QVERIFY(round.freeStand(ahead));
        QVERIFY(round.tellLight(false));
        QVERIFY(round.blockedStands().isEmpty());
        QVERIFY(!round.orderText().isEmpty());
        // What was told goes once the pilot has gone on.
        QVERIFY(house.touchCard());
        QVERIFY(round.orderText().isEmpty());
        QVERIFY2(house.walkTo({}), qPrintable(house.app->problem()));
        QVERIFY(round.conclude(true, {}));
    }

    void whatCanNotBeReachedIsSaid() {
        House house;
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        const auto& airframe = round.openRound().airframe();
        for (const auto& stand : airframe.stands)
            if (stand.raised())
                QVERIFY(round.blockStand(QString::fromStdString(stand.id), QStringLiteral("Iced")));
        QVERIFY2(house.walkTo({}), qPrintable(house.app->problem()));
        QVERIFY(round.settledCount() < round.pointCount());
        QVERIFY2(round.cardTitle().endsWith(QStringLiteral("can't be settled now")),
                 qPrintable(round.cardTitle()));
        QVERIFY(round.restNotInspected(QStringLiteral("Ice on the steps."), {}));
        while (round.owed()->count() > 0)
            QVERIFY(round.closed(round.owed()->get(0).value(QStringLiteral("openingId")).toString()));
        QVERIFY2(round.conclude(false, QStringLiteral("Ice.")), qPrintable(house.app->problem()));
    }

    // Killed between the two events of a touch: the order is made up for when the round is taken up again.
    void anOrderThatWasNotMadeIsMadeUpFor() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.touchCard());
        auto& open = house.app->round()->openRound();
        std::string ahead;
        for (const auto& step : round::remaining(open.state(), open.airframe()))
            if (const auto* go = std::get_if<walk::Go>(&step); go != nullptr && ahead.empty())
                ahead = go->stand;
        const QString id = house.app->round()->roundId();
        QVERIFY(open.act(round::StandBlocked{ahead, "Ice."}, house.clock.at));
        house.restart();
        QVERIFY2(house.app->resume(id), qPrintable(house.app->problem()));
        auto& round = *house.app->round();
        QVERIFY(round.orderText().startsWith(QStringLiteral("The round goes on")));
        for (const auto& step : round::remaining(round.openRound().state(), round.openRound().airframe()))
            QVERIFY(step != walk::Step{walk::Go{ahead}});
    }

    // The way is drawn as one walks it: round what is solid and what is marked, at every step of a round.
    void theWayIsNeverDrawnThroughAnything() {
        House house;
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        const auto& airframe = round.openRound().airframe();
        std::vector<airframe::Outline> solid;
        for (const auto& part : airframe.parts)
            if (part.solid) solid.push_back(part.outline);
        for (const auto& area : airframe.keepOut)
            solid.push_back(area.outline);
        const auto clear = [&](const QVariantList& legs) {
            for (const QVariant& leg : legs) {
                const QVariantList places = leg.toList();
                for (qsizetype i = 0; i + 1 < places.size(); ++i) {
                    const QPointF from = places[i].toPointF();
                    const QPointF along = places[i + 1].toPointF() - from;
                    for (int k = 1; k < 100; ++k) {
                        const QPointF at = from + along * (k / 100.0);
                        for (const auto& outline : solid)
                            if (isDeepIn({at.x(), -at.y()}, outline)) return false;
                    }
                }
            }
            return true;
        };
        for (int step = 0; round.cardKind() != QStringLiteral("done"); ++step) {
            if (step == 20) {
                // A wall across the way home, at the walk's end.
                const airframe::Place end = airframe.walk("daily")->end;
                const QRectF box(end.x - 2, -end.y - 1.5, 4, 0.5);
                QVERIFY2(round.markArea({box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()},
                                        QStringLiteral("Wall")),
                         qPrintable(house.app->problem()));
                solid.push_back(round.openRound().state().marked.at(1).outline);
            }
            QVERIFY(clear(round.figure()->wayAhead()));
            QVERIFY(house.touchCard());
        }
    }

    void theTwoOrdersAreComparedBesideTheScreen() {
        House house;
        auto& comparison = *house.app->comparison();
        QVERIFY(!comparison.ready() && !comparison.pending());
        QSignalSpy changed(&comparison, &view::PlanComparison::changed);
        house.app->compareWalk(house.registration, QStringLiteral("daily"));
        QVERIFY(comparison.pending());
        const auto before = comparison.rows();
        QCOMPARE(before.first().toMap().value(QStringLiteral("planned")).toString(), QStringLiteral("…"));
        QTRY_VERIFY_WITH_TIMEOUT(comparison.ready(), 60'000);
        QCOMPARE(comparison.rows().size(), before.size()); // nothing moves under a finger
        for (const QVariant& row : comparison.rows()) {
            bool number = false;
            const QString planned = row.toMap().value(QStringLiteral("planned")).toString();
            QVERIFY(planned.section(QLatin1Char(' '), 0, 0).toInt(&number) >= 0 && number); // "112 m", "3"
        }
        QVERIFY(comparison.spoken().contains(QStringLiteral("this way round")));
        // Again at once, and the round begins with these very steps.
        house.app->compareWalk(house.registration, QString());
        QVERIFY(!comparison.ready() && !comparison.pending());
        house.app->compareWalk(house.registration, QStringLiteral("daily"));
        QVERIFY(comparison.ready());
        QVERIFY(house.begin());
        const auto& state = house.app->round()->openRound().state();
        QVERIFY(comparison.steps(state.opened.airframeSha256, "daily") == state.opened.plan);
        QVERIFY(comparison.steps(state.opened.airframeSha256, "weekly").empty());
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
