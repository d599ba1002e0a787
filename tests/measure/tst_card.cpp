// The finder on a few invented photos, seeded: how often it is right is measured by `ambit-bench --card`,
// here only that it doesn't get worse; and what it must refuse.
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
        for (std::uint64_t seed = 200; seed < 224; ++seed) {
            const auto photo = views::photo(seed, 1600);
            if (photo.contrast <= 40) continue;
            ++clear;
            const auto found = findCard(photo.picture());
            const bool hit = found && views::isRight(found->corners, photo);
            right += hit ? 1 : 0;
            wrong += found && !hit ? 1 : 0;
        }
        qInfo("%d right, %d wrong of %d", right, wrong, clear);
        QVERIFY(clear >= 10);
        QVERIFY(right * 10 >= clear * 6);
        QVERIFY(wrong * 10 <= clear);
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
