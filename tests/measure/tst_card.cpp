// The finder on a few invented photos, seeded: how often it is right is measured by `ambit-bench --card`,
// here only that it doesn't get worse; and what it must refuse.
#include "measure/corners.hpp"
#include "pictures.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::measure;

class TestCard : public QObject {
    Q_OBJECT

private slots:
    void mostAreFound() {
        int clear = 0;
        int right = 0;
        int wrong = 0;
        for (std::uint64_t seed = 90000; seed < 90040; ++seed) {
            const auto photo = views::photo(seed, 1600);
            if (photo.contrast <= 40) continue;
            ++clear;
            const auto found = findCard(photo.picture());
            const bool hit = found && views::isRight(found->corners, photo);
            right += hit ? 1 : 0;
            wrong += found && !hit ? 1 : 0;
        }
        qInfo("%d right, %d wrong of %d", right, wrong, clear);
        QVERIFY(clear >= 28);
        QVERIFY(right * 100 >= clear * 82);
        QVERIFY(wrong <= 1);
    }

    /// The same clutter, and no card. A panel may have a card's shape and its corners' radius: one has.
    void noneWhereNoneIs() {
        int found = 0;
        for (std::uint64_t seed = 90000; seed < 90024; ++seed)
            found += findCard(views::photo(seed, 1600, false).picture()) ? 1 : 0;
        qInfo("%d of 24", found);
        QVERIFY(found <= 1);
    }

    /// Its own shadow lies beside the card and is as dark as the card, or nearly: what stands out is the
    /// shadow's rim, a millimetre off, and that isn't the answer.
    void ownShadowIsNoSide() {
        int right = 0;
        int wrong = 0;
        // All of 90000 to 90399 that are so.
        for (const std::uint64_t seed : std::array<std::uint64_t, 12>{
                 90006, 90019, 90022, 90142, 90199, 90220, 90234, 90240, 90255, 90281, 90292, 90307}) {
            const auto photo = views::photo(seed, 1600);
            QVERIFY(photo.contrast >= 60 && photo.leastContrast <= 35);
            const auto found = findCard(photo.picture());
            const bool hit = found && views::isRight(found->corners, photo);
            right += hit ? 1 : 0;
            wrong += found && !hit ? 1 : 0;
        }
        qInfo("%d right, %d wrong of 12", right, wrong);
        QVERIFY(right >= 8);
        QCOMPARE(wrong, 0);
    }

    /// Of four sides one is over a panel of the card's own grey, or in pieces, and no line in a small
    /// picture; of 5137 two opposite sides are 39 degrees off parallel.
    void threeSidesAreEnough() {
        for (const std::uint64_t seed : std::array<std::uint64_t, 4>{5137, 5657, 5658, 5981}) {
            const auto photo = views::photo(seed, 2000);
            const auto found = findCard(photo.picture());
            QVERIFY2(found && views::isRight(found->corners, photo), std::to_string(seed).c_str());
        }
    }

    /// Surely a card, but where its edges are in a shadow as dark as itself is open to a millimetre's
    /// better part: no corners are better than wrong ones.
    void hiddenEdgesAreRefused() {
        int wrong = 0;
        for (const std::uint64_t seed : std::array<std::uint64_t, 6>{331, 1924, 2346, 2918, 5198, 6229}) {
            const auto photo = views::photo(seed, 2000);
            QVERIFY(photo.leastContrast < 15);
            const auto found = findCard(photo.picture());
            wrong += found && !views::isRight(found->corners, photo) ? 1 : 0;
        }
        QCOMPARE(wrong, 0);
    }

    /// From the picture to millimetres, without anybody's touch.
    void cornersMakeAPlane() {
        for (std::uint64_t seed = 0; seed < 40; ++seed) {
            const auto photo = views::photo(seed, 1600);
            const auto found = findCard(photo.picture());
            if (!found || !views::isRight(found->corners, photo)) continue;
            const auto plane = Plane::of(found->corners, {photo.width, photo.height}, found->edgeWidth);
            if (!plane) continue; // too flat, or too small
            const auto diagonal = plane->distance({photo.card[0], 0.5}, {photo.card[2], 0.5});
            QVERIFY(diagonal);
            QVERIFY(std::abs(diagonal->value - std::hypot(card::length, card::width)) < 1.5);
            return;
        }
        QFAIL("No card became a plane");
    }

    /// An outline that isn't the card's, by what is beside its corners: a side that lies off the card, and
    /// one that runs on past it.
    void besideTheCorners() {
        constexpr int width = 640;
        constexpr int height = 480;
        constexpr int left = 100;
        constexpr int top = 100;
        constexpr int right = left + 428; // five pixels a millimetre
        constexpr int bottom = top + 270;
        std::vector<std::uint8_t> grey(static_cast<std::size_t>(width) * height, 100);
        const auto fill = [&](int x0, int y0, int x1, int y1, std::uint8_t value) {
            for (int y = y0; y < y1; ++y)
                for (int x = x0; x < x1; ++x)
                    grey[static_cast<std::size_t>(y) * width + static_cast<std::size_t>(x)] = value;
        };
        const Picture picture{grey.data(), width, height, width};
        const std::array<double, 4> steps{-100, -100, -100, -100};
        const auto outline = [](double rightmost) {
            return Quad{{{left - 0.5, top - 0.5},
                         {rightmost - 0.5, top - 0.5},
                         {rightmost - 0.5, bottom - 0.5},
                         {left - 0.5, bottom - 0.5}}};
        };
        fill(left, top, right, bottom, 200);
        const Beside card = besideOf(picture, outline(right), steps, 1);
        QVERIFY(card.unlike[3] < 0.05);
        QVERIFY(card.carriedOn[3] < 0.05);
        // 2 mm off the card on the right: two corners with the part's grey beside one side.
        const Beside off = besideOf(picture, outline(right + 10), steps, 1);
        QVERIFY(off.unlike[1] < 0.05);
        QVERIFY(off.unlike[2] > 1);
        // A panel's edge in line with the upper side, half as strong.
        fill(0, top, width, height, 150);
        fill(left, top, right, bottom, 200);
        const Beside panel = besideOf(picture, outline(right), steps, 1);
        QVERIFY(panel.carriedOn[2] < 0.05);
        QVERIFY(std::abs(panel.carriedOn[3] - 0.5) < 0.05);
    }

    void nothingToFind() {
        const std::vector<std::uint8_t> grey(1600UL * 1200, 128);
        const auto found = findCard({grey.data(), 1600, 1200, 1600});
        QVERIFY(!found);
        QCOMPARE(found.error().code, ErrorCode::refused);
        QCOMPARE(findCard({grey.data(), 100, 100, 100}).error().code, ErrorCode::invalid);
        QCOMPARE(findCard({grey.data(), 10'000, 5'001, 10'000}).error().code, ErrorCode::invalid);
        QCOMPARE(findCard({nullptr, 1600, 1200, 1600}).error().code, ErrorCode::invalid);
        QCOMPARE(findCard({grey.data(), 1600, 1200, 1599}).error().code, ErrorCode::invalid);
    }
};

QTEST_APPLESS_MAIN(TestCard)
#include "tst_card.moc"
