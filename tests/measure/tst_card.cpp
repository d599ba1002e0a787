// The finder on a few invented photos, seeded, none of which it was made by: how often it is right is
// measured by `ambit-bench --card`, here only that it doesn't get worse; and what it must refuse.
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
        for (std::uint64_t seed = 5000; seed < 5040; ++seed) {
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
        for (std::uint64_t seed = 5000; seed < 5024; ++seed)
            found += findCard(views::photo(seed, 1600, false).picture()) ? 1 : 0;
        qInfo("%d of 24", found);
        QVERIFY(found <= 1);
    }

    /// Its own shadow lies beside the card and is as dark as the card, or nearly: what stands out is the
    /// shadow's rim, a millimetre off, and that isn't the answer.
    void ownShadowIsNoSide() {
        int right = 0;
        for (const std::uint64_t seed : std::array<std::uint64_t, 6>{5067, 5090, 5099, 5104, 5166, 5246}) {
            const auto photo = views::photo(seed, 1600);
            QVERIFY(photo.contrast >= 60 && photo.leastContrast <= 35);
            const auto found = findCard(photo.picture());
            right += found && views::isRight(found->corners, photo) ? 1 : 0;
        }
        qInfo("%d right of 6", right);
        QVERIFY(right >= 5);
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
