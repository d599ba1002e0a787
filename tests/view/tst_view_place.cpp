// The device's place, from a recorded NMEA file, into the round's opening event.
#include "desktop/position.hpp"
#include "house.hpp"

#include <QtTest>

namespace ambit::test {

class TestViewPlace : public QObject {
    Q_OBJECT

private slots:
    void aRecordedFileStandsIn() {
        const auto positioning =
            desktop::Positioning::fromNmea(QStringLiteral(AMBIT_ROOT "/tests/view/place.nmea"));
        QTRY_VERIFY(positioning->last());
        QCOMPARE(positioning->last()->latitude, std::string("50.000000"));
        QCOMPARE(positioning->last()->longitude, std::string("10.000000"));
    }

    void noFileNoPlace() {
        QTest::ignoreMessage(QtWarningMsg, QRegularExpression(QStringLiteral("^No position: ")));
        const auto positioning = desktop::Positioning::fromNmea(QStringLiteral("/nowhere.nmea"));
        QVERIFY(!positioning->last());
    }

    void itIsPartOfTheOpening() {
        House house;
        QVERIFY(house.begin());
        QCOMPARE(house.app->round()->openRound().state().opened.position,
                 (round::Position{"50.0000", "10.0000"}));
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewPlace)
#include "tst_view_place.moc"
