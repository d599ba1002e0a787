// Airframes that somebody has damaged, or made of a sound one: a description comes from other devices, too.
// What the reader takes can be planned and walked through, however odd it is.
#include "../base/damage.hpp"
#include "airframe/read.hpp"
#include "base/files.hpp"
#include "walk/plan.hpp"

#include <QTest>

using namespace ambit;
using nlohmann::json;

class TestWalkDamaged : public QObject {
    Q_OBJECT

private slots:
    void whateverIsTakenCanBePlanned() {
        const json good = json::parse(*readFile(AMBIT_ROOT "/tests/airframe/good.json"));
        std::mt19937 random(1);
        std::size_t taken = 0;
        for (int i = 0; i < 6'000; ++i) {
            const auto airframe = airframe::read(test::damagedTree(good, random).dump());
            if (!airframe) {
                QVERIFY(!airframe.error().empty());
                continue;
            }
            ++taken;
            for (const airframe::Walk& walk : airframe->walks) {
                auto now = walk::startOf(*airframe);
                now.night = random() % 2 == 0;
                now.lightGoes = random() % 4 == 0;
                const auto plan = walk::makePlan(*airframe, walk.id, now);
                if (!plan) continue;
                const auto cost = walk::walkThrough(*airframe, walk.id, now, plan->steps);
                QVERIFY2(cost, cost ? "" : toText(cost.error()).c_str());
                QVERIFY(std::abs(cost->weighs - plan->cost.weighs) <= 1e-9 * (1 + cost->weighs));
            }
        }
        QVERIFY2(taken > 200, qPrintable(QString::number(taken)));
    }
};

QTEST_APPLESS_MAIN(TestWalkDamaged)
#include "tst_walk_damaged.moc"
