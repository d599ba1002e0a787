// 10,000 random views of a card: OpenCV's findHomography and perspectiveTransform against ours. Theirs takes
// corners as float32, so both are given such corners; the card's own sizes in float32 are 2e-6 mm off.
// Lengths agree to 1e-4 mm.
#include "measure/homography.hpp"

#include "../measure/views.hpp"

#include <QTest>
#include <algorithm>
#include <opencv2/calib3d.hpp>

using namespace ambit::measure;

class TestHomographyOpenCv : public QObject {
    Q_OBJECT

private slots:
    void lengths() {
        views::Random random(46);
        double worst = 0;
        std::vector<double> all;
        for (int i = 0; i < 10'000; ++i) {
            const views::View view = views::anyView(random, 50, views::uniform(random, 0.12, 0.35));
            Quad quad = view.card();
            for (Pixel& p : quad) // what float32 can hold, so that both are asked the same
                p = {static_cast<float>(p.x), static_cast<float>(p.y)};
            const double x = card::length;
            const double y = card::width;
            const std::vector<cv::Point2f> seen{{float(quad[0].x), float(quad[0].y)},
                                                {float(quad[1].x), float(quad[1].y)},
                                                {float(quad[2].x), float(quad[2].y)},
                                                {float(quad[3].x), float(quad[3].y)}};
            const std::vector<cv::Point2f> flat{{0, 0}, {float(x), 0}, {float(x), float(y)}, {0, float(y)}};
            const cv::Mat theirs = cv::findHomography(seen, flat);
            QVERIFY(!theirs.empty());
            const auto spot = [&] {
                return Spot{views::uniform(random, -100, 100), views::uniform(random, -100, 100)};
            };
            const Pixel a = view.see(spot());
            const Pixel b = view.see(spot());
            std::vector<cv::Point2d> measured;
            cv::perspectiveTransform(std::vector<cv::Point2d>{{a.x, a.y}, {b.x, b.y}}, measured, theirs);
            const double length = std::hypot(measured[0].x - measured[1].x, measured[0].y - measured[1].y);
            const Homography map = Homography::of(quad, x, y);
            const auto ours = std::array{map.toPlane(a), map.toPlane(b)};
            QVERIFY(ours[0] && ours[1]);
            const double off =
                std::abs(std::hypot(ours[0]->x - ours[1]->x, ours[0]->y - ours[1]->y) - length);
            worst = std::max(worst, off);
            all.push_back(off);
        }
        std::sort(all.begin(), all.end());
        qInfo("mm apart: median %.2g, 99 %% %.2g, worst %.2g", all[5000], all[9900], worst);
        QVERIFY(all[9900] < 1e-5);
        QVERIFY(worst < 1e-4);
    }
};

QTEST_APPLESS_MAIN(TestHomographyOpenCv)
#include "tst_homography_opencv.moc"
