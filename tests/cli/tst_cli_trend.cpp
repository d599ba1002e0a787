// ambit trend: values of a file against their limit.
#include "program.hpp"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>

class TestCliTrend : public QObject {
    Q_OBJECT

    QTemporaryDir folder;

    QString file(const QByteArray& lines) {
        QFile values(folder.filePath("values.csv"));
        if (!values.open(QIODevice::WriteOnly) || values.write(lines) != lines.size()) return {};
        return values.fileName();
    }

private slots:
    void words() {
        const QString values = file("# hours, mm\n0,5.00\n6,4.88\r\n12, 4.76\n\n18,4.64\n24,4.52\n");
        const Ran ran = runAmbit({"trend", "--values", values, "--limit", "min 4 mm", "--ahead", "5"});
        QVERIFY2(ran.code == 0, ran.err.constData());
        QCOMPARE(ran.out, QByteArray("the limit is not reached within the next 5 h\n"
                                     "limit in 25 to 27 h, 95 %\n"
                                     "falls by 0.02 mm per h\n"));
    }
    void json() {
        const QString values = file("0,3,0.1\n9,9,0.1,renewed\n10,1.0\n20,1.2,0.01\n30,1.4\n40,1.6\n");
        const Ran ran = runAmbit({"trend", "--values", values, "--limit", "max 2.0 mm", "--json"});
        QVERIFY2(ran.code == 0, ran.err.constData());
        const QJsonObject said = QJsonDocument::fromJson(ran.out).object();
        QCOMPARE(said["from"].toInt(), 2);
        QCOMPARE(said["standing"].toString(), QStringLiteral("near"));
        QVERIFY(said["limit"]["earliest"].isString());
        QVERIFY(!said["texts"].toArray().isEmpty());
    }
    void wrong_data() {
        QTest::addColumn<QByteArray>("lines");
        QTest::addColumn<QString>("limit");
        QTest::addColumn<int>("code");
        QTest::newRow("no limit") << QByteArray("0,1\n") << "mm" << 2;
        QTest::newRow("limit in words") << QByteArray("0,1\n") << "min one mm" << 2;
        QTest::newRow("limit with two units") << QByteArray("0,1\n") << "min 1 mm cm" << 2;
        QTest::newRow("limit given twice") << QByteArray("0,1\n") << "min 1 min 2 mm" << 2;
        QTest::newRow("five fields") << QByteArray("0,1,0.1,renewed,0.2\n") << "min 1 mm" << 1;
        QTest::newRow("no number") << QByteArray("0,1\n1,x\n") << "min 1 mm" << 1;
        QTest::newRow("half a line") << QByteArray("0\n") << "min 1 mm" << 1;
        QTest::newRow("backwards") << QByteArray("1,1\n0,1\n") << "min 1 mm" << 1;
        QTest::newRow("nothing") << QByteArray() << "min 1 mm" << 1;
    }
    void wrong() {
        QFETCH(QByteArray, lines);
        QFETCH(QString, limit);
        QFETCH(int, code);
        const Ran ran = runAmbit({"trend", "--values", file(lines), "--limit", limit});
        QCOMPARE(ran.code, code);
        QVERIFY(ran.out.isEmpty() && !ran.err.isEmpty());
    }
    void noFile() {
        const Ran ran = runAmbit({"trend", "--values", folder.filePath("none"), "--limit", "min 1 mm"});
        QCOMPARE(ran.code, 3);
    }
};

QTEST_APPLESS_MAIN(TestCliTrend)
#include "tst_cli_trend.moc"
