// ambit sky: the sun's day on the command line.
#include "program.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>

namespace {

const QStringList arctic{"sky", "69.6492", "18.9553"};

QJsonObject jsonOf(const Ran& ran) {
    return QJsonDocument::fromJson(ran.out).object();
}

} // namespace

class TestCliSky : public QObject {
    Q_OBJECT

private slots:
    void aDay() {
        // USNO: 2025-06-21 UTC: twilight 02:55, rise 03:43, set 20:22, twilight 21:09.
        const Ran ran = runAmbit({"sky", "51.5074", "-0.1278", "--date", "2025-06-21"});
        QCOMPARE(ran.code, 0);
        QCOMPARE(ran.out, QByteArray("2025-06-21, UTC+00:00\n"
                                     "  02:55  twilight begins\n"
                                     "  03:43  rise\n"
                                     "  20:22  set\n"
                                     "  21:09  twilight ends\n"));
    }
    void southAndWestAreBelowZero() {
        const Ran ran = runAmbit({"sky", "-33.8688", "151.2093", "--date", "2025-09-22", "--json"});
        QVERIFY2(ran.code == 0, ran.err.constData());
        QStringList order;
        for (const QJsonValue event : jsonOf(ran)["events"].toArray())
            order << event["what"].toString();
        // The day of Greenwich begins there in the morning.
        QCOMPARE(order, (QStringList{"set", "twilight ends", "twilight begins", "rise"}));
    }
    void polarDays() {
        const Ran summer = runAmbit(arctic + QStringList{"--date", "2026-06-21", "--offset", "+02:00"});
        QCOMPARE(summer.code, 0);
        QCOMPARE(summer.out, QByteArray("2026-06-21, UTC+02:00\nThe sun doesn't set.\n"));
        const Ran winter =
            runAmbit(arctic + QStringList{"--date", "2026-12-21", "--offset", "+01:00", "--json"});
        const QJsonObject said = jsonOf(winter);
        QCOMPARE(said["sun"].toString(), QStringLiteral("never rises"));
        QCOMPARE(said["twilight"].toString(), QStringLiteral("begins or ends"));
        QCOMPARE(said["events"].toArray().size(), 2);
        QVERIFY(!said.contains("at"));
        const Ran night = runAmbit({"sky", "85", "0", "--date", "2026-12-21"});
        QVERIFY(night.out.contains("The sun doesn't rise.\nNight all day.\n"));
        const Ran white = runAmbit({"sky", "61", "10", "--date", "2026-06-21", "--offset", "+02:00"});
        QVERIFY(white.out.contains("No night: twilight is the darkest.\n"));
    }
    void aMoment_data() {
        QTest::addColumn<QString>("at");
        QTest::addColumn<QString>("sky");
        QTest::newRow("day") << "2025-06-21T13:02:00+01:00"
                             << "day";
        QTest::newRow("twilight") << "2025-06-21T21:45:00+01:00"
                                  << "twilight";
        QTest::newRow("night") << "2025-06-21T23:30:00+01:00"
                               << "night";
    }
    void aMoment() {
        QFETCH(QString, at);
        QFETCH(QString, sky);
        const Ran ran = runAmbit({"sky", "51.5074", "-0.1278", "--at", at, "--json"});
        QCOMPARE(ran.code, 0);
        const QJsonObject said = jsonOf(ran);
        QCOMPARE(said["at"]["sky"].toString(), sky);
        QCOMPARE(said["date"].toString(), QStringLiteral("2025-06-21"));
        QCOMPARE(said["offsetMinutes"].toInt(), 60); // as the moment has it
        const Ran words = runAmbit({"sky", "51.5074", "-0.1278", "--at", at});
        QVERIFY2(words.out.contains(("it is " + sky + ": the sun's centre ").toUtf8()),
                 words.out.constData());
    }
    /// The moment is the same, the clock and so the day another.
    void anOffsetOfItsOwn() {
        const Ran ran = runAmbit(
            {"sky", "51.5074", "-0.1278", "--at", "2025-06-21T23:30:00Z", "--offset", "+10:00", "--json"});
        const QJsonObject said = jsonOf(ran);
        QCOMPARE(said["date"].toString(), QStringLiteral("2025-06-22"));
        QCOMPARE(said["at"]["instant"].toString(), QStringLiteral("2025-06-22T09:30:00.000+10:00"));
    }
    void nowIfNothingIsSaid() {
        const Ran ran = runAmbit({"sky", "0", "0", "--json"});
        QCOMPARE(ran.code, 0);
        const QJsonObject said = jsonOf(ran);
        QVERIFY(said["at"]["elevation"].isDouble());
    }

    void wrongCommandLine_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::newRow("no place") << QStringList{"sky"};
        QTest::newRow("half a place") << QStringList{"sky", "10"};
        QTest::newRow("no number") << QStringList{"sky", "north", "10"};
        QTest::newRow("not a number") << QStringList{"sky", "nan", "10"};
        QTest::newRow("beyond the pole") << QStringList{"sky", "90.5", "10"};
        QTest::newRow("no such day") << QStringList{"sky", "10", "10", "--date", "2026-02-30"};
        QTest::newRow("before the equations") << QStringList{"sky", "10", "10", "--date", "1949-12-31"};
        QTest::newRow("beyond them") << QStringList{"sky", "10", "10", "--date", "2101-01-01"};
        QTest::newRow("offset in words") << QStringList{"sky", "10", "10", "--offset", "two"};
        QTest::newRow("offset of 15 hours") << QStringList{"sky", "10", "10", "--offset", "+15:00"};
        QTest::newRow("no such moment") << QStringList{"sky", "10", "10", "--at", "noon"};
    }
    void wrongCommandLine() {
        QFETCH(QStringList, arguments);
        const Ran ran = runAmbit(arguments);
        QCOMPARE(ran.code, 2);
        QVERIFY(ran.out.isEmpty());
        QVERIFY(!ran.err.isEmpty());
    }
};

QTEST_APPLESS_MAIN(TestCliSky)
#include "tst_cli_sky.moc"
