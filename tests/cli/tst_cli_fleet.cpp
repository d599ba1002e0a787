// ambit fleet: an invented fleet in an archive of its own, which the other commands take as any other.
#include "program.hpp"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>

class TestCliFleet : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        const Ran ran = runAmbit(command(archive(), "100") << "--from"
                                                           << "2019-03-01"
                                                           << "--json");
        QVERIFY2(ran.code == 0, ran.err.constData());
        const QJsonObject out = QJsonDocument::fromJson(ran.out).object();
        QVERIFY(out["invented"].toBool());
        QCOMPARE(out["aircraft"].toInt(), 2);
        QCOMPARE(out["records"].toInt(), 100);
    }

    void everyRecordHolds() {
        const Ran ran = runAmbit({"archive", "verify", archive(), "--json"});
        QCOMPARE(ran.code, 0);
        const QJsonObject out = QJsonDocument::fromJson(ran.out).object();
        QVERIFY(out["ok"].toBool());
        QCOMPARE(out["records"].toInt(), 100);
    }

    void itsFileIsThere() {
        const Ran ran = runAmbit({"archive", "state", archive(), "OX-F0002", "--today", "2019-06-01"});
        QCOMPARE(ran.code, 0);
        QVERIFY2(ran.out.contains("Annual inspection"), ran.out.constData()); // its airframe is, too
        QVERIFY2(ran.out.contains("(2019-") || ran.out.contains("(2020-"), ran.out.constData());
    }

    void saysThatItIsInvented() {
        const Ran ran = runAmbit(command(folder.filePath("said.archive"), "80"));
        QCOMPARE(ran.code, 0);
        QVERIFY2(ran.out.contains("invented"), ran.out.constData());
    }

    void leavesAnExistingFileAlone() {
        const QString path = folder.filePath("mine");
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("mine");
        file.close();
        const Ran ran = runAmbit(command(path, "80"));
        QCOMPARE(ran.code, 3);
        QVERIFY2(ran.err.contains("another name"), ran.err.constData());
        QVERIFY(file.open(QIODevice::ReadOnly));
        QCOMPARE(file.readAll(), QByteArray("mine"));
    }

    void refusesInWords_data() {
        QTest::addColumn<QString>("records");
        QTest::addColumn<QStringList>("more");
        QTest::addColumn<int>("code");
        QTest::newRow("too few records") << "79" << QStringList{} << 1;
        QTest::newRow("no such day") << "80" << QStringList{"--from", "2019-02-29"} << 1;
        QTest::newRow("before there was a clock") << "80" << QStringList{"--from", "1900-01-01"} << 1;
        QTest::newRow("no threads") << "80" << QStringList{"--threads", "0"} << 2;
    }
    void refusesInWords() {
        QFETCH(QString, records);
        QFETCH(QStringList, more);
        QFETCH(int, code);
        const QString path = folder.filePath("refused.archive");
        const Ran ran = runAmbit(command(path, records) << more);
        QCOMPARE(ran.code, code);
        QVERIFY(!QFile::exists(path));
    }

private:
    QTemporaryDir folder;

    [[nodiscard]] QString archive() const { return folder.filePath("fleet.archive"); }
    [[nodiscard]] static QStringList command(const QString& path, const QString& records) {
        return {"fleet",
                path,
                "--airframe",
                demo("aeroplane/airframe.json"),
                demo("helicopter/airframe.json"),
                "--aircraft",
                "2",
                "--years",
                "1",
                "--records",
                records};
    }
};

QTEST_APPLESS_MAIN(TestCliFleet)
#include "tst_cli_fleet.moc"
