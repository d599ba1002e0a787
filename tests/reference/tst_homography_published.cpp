// Lengths against homography/cases.csv: 100 invented views with the true length, and what OpenCV 4.6 made of
// them.
#include "base/files.hpp"
#include "measure/card.hpp"
#include "measure/homography.hpp"

#include <QTest>
#include <algorithm>
#include <cmath>
#include <sstream>

using namespace ambit;
using namespace ambit::measure;

class TestHomographyPublished : public QObject {
    Q_OBJECT

private slots:
    void lengths() {
        const auto text = readFile(AMBIT_ROOT "/tests/reference/homography/cases.csv", 1 << 20);
        QVERIFY(text);
        std::istringstream lines(*text);
        std::string line;
        std::getline(lines, line);
        int cases = 0;
        double worst = 0;
        double worstOfOthers = 0;
        while (std::getline(lines, line)) {
            std::replace(line.begin(), line.end(), ',', ' ');
            std::istringstream fields(line);
            std::array<double, 14> v{};
            for (double& field : v)
                QVERIFY(fields >> field);
            // The corners in the table's order are the card's, however they go round in the picture.
            const Homography map = Homography::of({{{v[0], v[1]}, {v[2], v[3]}, {v[4], v[5]}, {v[6], v[7]}}},
                                                  card::length, card::width);
            const auto a = map.toPlane({v[8], v[9]});
            const auto b = map.toPlane({v[10], v[11]});
            QVERIFY(a && b);
            const double length = std::hypot(a->x - b->x, a->y - b->y);
            worst = std::max(worst, std::abs(length - v[12]) / v[12]);
            worstOfOthers = std::max(worstOfOthers, std::abs(length - v[13]) / v[13]);
            ++cases;
        }
        QCOMPARE(cases, 100);
        // The table has 12 digits of a pixel, of which a small, far card leaves some 9 for a length.
        QVERIFY2(worst < 1e-7, std::to_string(worst * 1e9).c_str());
        // OpenCV keeps corners as float32: 7 digits.
        QVERIFY2(worstOfOthers < 1e-4, std::to_string(worstOfOthers * 1e6).c_str());
    }
};

QTEST_APPLESS_MAIN(TestHomographyPublished)
#include "tst_homography_published.moc"
