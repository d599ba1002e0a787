// The device's place into the round's opening event, and the satellites' time beside the device's: from
// recorded NMEA files and from a receiver that sends as it likes.
#include "desktop/position.hpp"
#include "house.hpp"

#include <QTcpServer>
#include <QTcpSocket>
#include <QtTest>

namespace ambit::test {

namespace {

using desktop::Positioning;
using Recording = Positioning::Recording;

const QString recorded =
    QStringLiteral(AMBIT_ROOT "/tests/view/place.nmea"); ///< from 2026-06-20T05:30:00Z on

Instant instant(const char* text) {
    return parseInstant(text).value();
}

/// A device whose clock stands.
Positioning::Clock standing(const char* text) {
    return [at = instant(text)] { return at; };
}

/// "$words*hh\r\n", with the checksum it must have (NMEA 0183: exclusive or of what is between $ and *).
QByteArray sentence(const QByteArray& words) {
    unsigned sum = 0;
    for (const char c : words)
        sum ^= static_cast<unsigned char>(c);
    return '$' + words + '*' + QByteArray::number(sum, 16).rightJustified(2, '0').toUpper() + "\r\n";
}

QByteArray rmc(const char* time, char status = 'A') {
    return sentence(QByteArray("GPRMC,") + time + ',' + status +
                    ",4807.038,N,01131.000,E,022.4,084.4,200626,003.1,W");
}

/// Sends what it is told to, and what Positioning makes of it.
struct Receiver {
    explicit Receiver(const char* deviceTime) : device(instant(deviceTime)) {
        server.listen(QHostAddress::LocalHost);
        positioning = Positioning::fromReceiver(
            QStringLiteral("socket://127.0.0.1:%1").arg(server.serverPort()), [this] { return device; });
        if (server.waitForNewConnection(5000)) line = server.nextPendingConnection();
    }
    void send(const QByteArray& bytes) const {
        line->write(bytes);
        line->flush();
    }

    Instant device; ///< what its clock shows
    QTcpServer server;
    std::unique_ptr<Positioning> positioning;
    QTcpSocket* line = nullptr;
};

} // namespace

class TestViewPlace : public QObject {
    Q_OBJECT

private slots:
    /// Qt Positioning hides its plugins from whatever says that it is a test.
    void initTestCase() { qunsetenv("QT_QTESTLIB_RUNNING"); }
    void init() { QTest::failOnWarning(QRegularExpression(QStringLiteral("."))); }

    void aRecordedFileStandsIn() {
        const auto positioning = Positioning::fromNmea(recorded, standing("2026-06-20T05:30:02.000Z"));
        QTRY_VERIFY(positioning->last());
        QCOMPARE(positioning->last()->latitude, std::string("50.000000"));
        QCOMPARE(positioning->last()->longitude, std::string("10.000000"));
        QCOMPARE(positioning->fix()->device, instant("2026-06-20T05:30:02.000Z"));
    }
    /// Replayed in another year, it says nothing of the clock, and nothing is said.
    void aRecordingIsNoClock() {
        const auto positioning = Positioning::fromNmea(recorded, standing("2031-01-01T00:00:00.000Z"));
        QTRY_VERIFY(positioning->fix());
        QVERIFY(!positioning->fix()->satellites);
        QVERIFY(!positioning->clockOff());
    }
    void aRecordingOfNowIs() {
        QTest::ignoreMessage(QtWarningMsg,
                             "This device's clock is 3 min 12 s ahead of the satellites' time.");
        const auto positioning =
            Positioning::fromNmea(recorded, standing("2026-06-20T05:33:12.000Z"), Recording::ofNow);
        QTRY_VERIFY(positioning->clockOff());
        QCOMPARE(positioning->fix()->satellites, instant("2026-06-20T05:30:00.000Z"));
        QCOMPARE(*positioning->clockOff(), (sky::ClockOff{192'000, true}));
    }

    void noFileNoPlace() {
        QTest::ignoreMessage(QtWarningMsg, QRegularExpression(QStringLiteral("^No position: ")));
        const auto positioning =
            Positioning::fromNmea(QStringLiteral("/nowhere.nmea"), standing("2026-06-20T05:30:00.000Z"));
        QVERIFY(!positioning->last());
        QVERIFY(!positioning->clockOff());
    }
    void noReceiverNoPlace() {
        QTest::ignoreMessage(QtWarningMsg,
                             QRegularExpression(QStringLiteral("^Connection failed!"))); // the plugin's
        QTest::ignoreMessage(QtWarningMsg, "No position: the source doesn't work");
        const auto positioning = Positioning::fromReceiver(QStringLiteral("socket://127.0.0.1:1"),
                                                           standing("2026-06-20T05:30:00.000Z"));
        QTest::qWait(100);
        QVERIFY(!positioning->fix());
    }

    void aRecordingIsNoReceiver() {
        QTest::ignoreMessage(QtWarningMsg, QRegularExpression(QStringLiteral("^No position: ")));
        const auto positioning = Positioning::fromReceiver(recorded, standing("2026-06-20T05:30:00.000Z"));
        QTest::qWait(100);
        QVERIFY(!positioning->fix());
    }

    /// 48 deg 07.038' N, 11 deg 31.000' E; a clock 40 s behind is not out.
    void aReceiverTellsPlaceAndTime() {
        const Receiver receiver("2026-06-20T12:34:39.000Z");
        QVERIFY(receiver.line);
        receiver.send(rmc("123519"));
        QTRY_VERIFY(receiver.positioning->fix());
        QCOMPARE(receiver.positioning->last()->latitude, std::string("48.117300"));
        QCOMPARE(receiver.positioning->last()->longitude, std::string("11.516667"));
        QCOMPARE(receiver.positioning->fix()->satellites, instant("2026-06-20T12:35:19.000Z"));
        QCOMPARE(*receiver.positioning->clockOff(), (sky::ClockOff{-40'000, false}));
    }
    /// The recorded sentence of 23 March 1994: RMC has two digits for the year, and Qt reads them as of this
    /// century.
    void aYearOfTwoDigits() {
        const Receiver receiver("2094-03-23T12:35:19.250Z");
        QVERIFY(receiver.line);
        receiver.send("$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A\r\n");
        QTRY_VERIFY(receiver.positioning->fix());
        QCOMPARE(receiver.positioning->fix()->satellites, instant("2094-03-23T12:35:19.000Z"));
        QCOMPARE(*receiver.positioning->clockOff(), (sky::ClockOff{250, false}));
    }
    /// Said once, however many fixes come, until it was right in between.
    void aClockThatIsOutIsSaid() {
        QTest::ignoreMessage(QtWarningMsg, "This device's clock is 2 h 5 min behind the satellites' time.");
        Receiver receiver("2026-06-20T10:30:00.000Z");
        QVERIFY(receiver.line);
        receiver.send(rmc("123500"));
        QTRY_VERIFY(receiver.positioning->clockOff());
        QCOMPARE(*receiver.positioning->clockOff(), (sky::ClockOff{-7'500'000, true}));
        receiver.send(rmc("123501"));
        QTRY_COMPARE(receiver.positioning->clockOff()->ms, std::int64_t{-7'501'000});
        receiver.device = instant("2026-06-20T12:35:00.000Z"); // put right
        receiver.send(rmc("123502"));
        QTRY_COMPARE(*receiver.positioning->clockOff(), (sky::ClockOff{-2'000, false}));
        QTest::ignoreMessage(QtWarningMsg,
                             "This device's clock is 1 min 30 s ahead of the satellites' time.");
        receiver.device = instant("2026-06-20T12:36:33.000Z");
        receiver.send(rmc("123503"));
        QTRY_COMPARE(*receiver.positioning->clockOff(), (sky::ClockOff{90'000, true}));
    }

    /// Nothing comes of these, though the good sentence after them is heard: the line was not lost.
    void nothingComesOf_data() {
        QTest::addColumn<QByteArray>("sent");
        QTest::newRow("a place without a date")
            << QByteArray("$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n");
        QTest::newRow("no fix") << rmc("123519", 'V');
        QByteArray wrong = rmc("123519");
        wrong.replace("4807", "4907"); // as a bit lost on the line would
        QTest::newRow("a wrong checksum") << wrong;
        QTest::newRow("half a line, and its end") << rmc("123519").left(30) + "\r\n";
        QTest::newRow("empty lines") << QByteArray("\r\n\n");
        QTest::newRow("no words") << QByteArray("$*00\r\n$\r\n*\r\n");
        QTest::newRow("a sentence without fields") << sentence("GPRMC,");
        QTest::newRow("noise") << QByteArray("\xff\x01\x80,$,*\r\n");
        QTest::newRow("a byte of nothing") << QByteArray("\0\r\n", 3);
    }
    void nothingComesOf() {
        QFETCH(QByteArray, sent);
        const Receiver receiver("2026-06-20T12:35:20.000Z");
        QVERIFY(receiver.line);
        receiver.send(sent);
        QTest::qWait(150);
        QVERIFY(!receiver.positioning->fix());
        receiver.send(rmc("123600"));
        QTRY_VERIFY(receiver.positioning->fix());
        QCOMPARE(receiver.positioning->last()->latitude, std::string("48.117300"));
        QCOMPARE(receiver.positioning->fix()->satellites, instant("2026-06-20T12:36:00.000Z"));
    }
    void aLineInPieces() {
        const Receiver receiver("2026-06-20T12:35:20.000Z");
        QVERIFY(receiver.line);
        const QByteArray whole = rmc("123519");
        receiver.send(whole.left(25));
        QTest::qWait(150);
        QVERIFY(!receiver.positioning->fix());
        receiver.send(whole.mid(25));
        QTRY_VERIFY(receiver.positioning->fix());
        QCOMPARE(receiver.positioning->fix()->satellites, instant("2026-06-20T12:35:19.000Z"));
    }
    /// The last place stays when the receiver sees no satellites any more, with the clocks of then.
    void aLostFixStays() {
        const Receiver receiver("2026-06-20T12:35:20.000Z");
        QVERIFY(receiver.line);
        receiver.send(rmc("123519"));
        QTRY_VERIFY(receiver.positioning->fix());
        receiver.send(rmc("123719", 'V'));
        QTest::qWait(150);
        QCOMPARE(receiver.positioning->fix()->satellites, instant("2026-06-20T12:35:19.000Z"));
    }

    void howFarInWords() {
        const auto words = [](std::int64_t ms) { return desktop::toWords({ms, true}); };
        QCOMPARE(words(59'400), QStringLiteral("59 s ahead of the satellites' time"));
        QCOMPARE(words(-60'001), QStringLiteral("1 min 0 s behind the satellites' time"));
        QCOMPARE(words(3'600'000), QStringLiteral("1 h 0 min ahead of the satellites' time"));
        QCOMPARE(words(-1024LL * 7 * 86'400'000), QStringLiteral("7168 days behind the satellites' time"));
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
