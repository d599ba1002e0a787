// What a person reads when a touch is refused; and that a refused touch changes nothing.
#include "house.hpp"

#include <QFile>
#include <QtTest>

namespace ambit::test {

class TestViewRefused : public QObject {
    Q_OBJECT

    /// The problem's text of a touch that must fail.
    template<class Touch> static QString refusal(House& house, Touch touch) {
        const auto before = house.app->round() == nullptr ? 0 : house.events();
        house.app->clearProblem();
        if (touch()) return QStringLiteral("(not refused)");
        if (house.app->round() != nullptr && house.events() != before)
            return QStringLiteral("(refused, yet something changed)");
        return house.app->problem();
    }

private slots:
    void beginning() {
        House house;
        const QString daily = QStringLiteral("daily");
        const QString pilot = QStringLiteral("pilot");
        QCOMPARE(refusal(house,
                         [&] {
                             return house.app->begin(house.registration, daily, QStringLiteral(" "), pilot,
                                                     {}, {});
                         }),
                 QStringLiteral("Nobody's name is given. Say who walks round."));
        QCOMPARE(refusal(house,
                         [&] {
                             return house.app->begin(house.registration, daily, QStringLiteral("Robin"),
                                                     pilot, {},
                                                     {{QStringLiteral("landings"), QStringLiteral("many")}});
                         }),
                 QStringLiteral("“many” is no reading of “Landings”. (landings) Write it in digits, with a "
                                "point before decimals: 1284.6"));
        QCOMPARE(refusal(house,
                         [&] {
                             return house.app->begin(QStringLiteral("OX-NONE"), daily,
                                                     QStringLiteral("Robin"), pilot, {}, {});
                         }),
                 QStringLiteral("There is no such aircraft here. (OX-NONE)"));
        QVERIFY(house.app->round() == nullptr);
    }

    void settling() {
        House house;
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        QCOMPARE(round.cardKind(), QStringLiteral("go"));
        QCOMPARE(refusal(house, [&] { return round.settleSound(); }),
                 QStringLiteral("There is no point on the card. Go to where the next one is."));
        // To a point that is measured and can be too much.
        while (!round.measured() || round.outOfLimit(QStringLiteral("999")).isEmpty())
            QVERIFY(house.touchCard());
        QVERIFY(refusal(house, [&] {
                    return round.settleSound();
                }).contains(QStringLiteral("is measured and has no value.")));
        QVERIFY(refusal(house, [&] {
                    return round.settleSound(QStringLiteral("999"));
                }).contains(QStringLiteral("Measure again, or settle it as a finding.")));
        QVERIFY(!round.outOfLimit(QStringLiteral("999")).isEmpty());
        QVERIFY(refusal(house, [&] {
                    return round.settleFinding(QStringLiteral("  "), true, {}, QStringLiteral("999"));
                }).contains(QStringLiteral("A finding needs words.")));
        QVERIFY(refusal(house, [&] {
                    return round.settleNotInspected({}, {});
                }).contains(QStringLiteral("Not inspected needs a reason.")));
    }

    void aTouchThatWorksClearsTheProblem() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(!house.app->round()->settleSound());
        QVERIFY(!house.app->problem().isEmpty());
        QVERIFY(house.touchCard());
        QVERIFY(house.app->problem().isEmpty());
    }

    void concluding() {
        House house;
        QVERIFY(house.begin());
        auto& round = *house.app->round();
        QVERIFY(refusal(house, [&] {
                    return round.conclude(true, {});
                }).startsWith(QStringLiteral("The round can't be concluded as fit:")));
        QVERIFY(round.against(false).size() >= round.pointCount());
        QVERIFY(round.restNotInspected(QStringLiteral("Rain."), {}));
        QVERIFY(round.against(true).size() > round.against(false).size());
    }

    void photos() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("fairing.left")));
        auto& round = *house.app->round();
        const QString file = house.folder.filePath(QStringLiteral("words.jpg"));
        QFile words(file);
        QVERIFY(words.open(QIODevice::WriteOnly) && words.write("not a picture") > 0);
        words.close();
        QVERIFY(refusal(house, [&] {
                    return round.settleFinding(QStringLiteral("x"), false, {QUrl::fromLocalFile(file)});
                }).startsWith(QStringLiteral("This is neither a JPEG nor a PNG picture.")));
        const QUrl missing = QUrl::fromLocalFile(house.folder.filePath(QStringLiteral("none.jpg")));
        QVERIFY(refusal(house, [&] {
                    return round.settleFinding(QStringLiteral("x"), false, {missing});
                }).contains(QStringLiteral("none.jpg")));
    }

    void signing() {
        House house;
        auto& signing = *house.app->signing();
        QVERIFY(!refusal(house, [&] {
                     return signing.newKey(QStringLiteral("Robin Example"), QStringLiteral("short"));
                 }).isEmpty());
        QVERIFY(!signing.keyExists());
        QVERIFY(signing.newKey(QStringLiteral("Kim Example"), QStringLiteral("a good passphrase")));
        QVERIFY(refusal(house, [&] {
                    return signing.newKey(QStringLiteral("Kim Example"), QStringLiteral("a good passphrase"));
                }).startsWith(QStringLiteral("Kim Example has a key on this device already.")));
        QVERIFY(house.begin());
        QVERIFY(house.walkTo({}));
        QVERIFY(!refusal(house, [&] { return signing.sign(QStringLiteral("a good passphrase")); }).isEmpty());
        QVERIFY(house.app->round()->conclude(true, {}));
        QVERIFY(
            !refusal(house, [&] { return signing.sign(QStringLiteral("another passphrase")); }).isEmpty());
        // Somebody else's key.
        QVERIFY(refusal(house, [&] {
                    return signing.sign(QStringLiteral("a good passphrase"));
                }).contains(QStringLiteral("Kim Example")));
        QCOMPARE(house.app->round()->phase(), QStringLiteral("concluded"));
    }

    void exporting() {
        House house;
        QVERIFY2(house.wholeRound(), qPrintable(house.app->problem()));
        auto& file = *house.app->file();
        const QString record = house.app->signing()->recordId();
        QVERIFY(!refusal(house, [&] { return !file.exportRecord(record, {}).isEmpty(); }).isEmpty());
        QVERIFY(!refusal(house, [&] {
                     return !file.exportRecord(record, QUrl::fromLocalFile(QStringLiteral("/proc/nowhere")))
                                 .isEmpty();
                 }).isEmpty());
        const QString good = house.folder.filePath(QStringLiteral("out"));
        QVERIFY2(!file.exportRecord(record, QUrl::fromLocalFile(good)).isEmpty(),
                 qPrintable(house.app->problem()));
        QVERIFY(QFile::exists(good + QStringLiteral("/record.json")) &&
                QFile::exists(good + QStringLiteral("/record.pdf")));
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewRefused)
#include "tst_view_refused.moc"
