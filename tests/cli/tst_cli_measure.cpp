// ambit measure: what a record says was measured, looked at and computed again.
#include "../paper/measured_round.hpp"
#include "program.hpp"

#include <QFile>
#include <QGuiApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>

using namespace ambit;

class TestCliMeasure : public QObject {
    Q_OBJECT

    QTemporaryDir folder;
    test::TestRound round;
    QString json, pdf;

    QString kept(const char* name, const std::string& bytes) {
        QFile file(folder.filePath(QString::fromLatin1(name)));
        if (!file.open(QIODevice::WriteOnly) ||
            file.write(bytes.data(), static_cast<qsizetype>(bytes.size())) < 0)
            return {};
        return file.fileName();
    }

    static QJsonObject said(const Ran& ran) { return QJsonDocument::fromJson(ran.out).object(); }

private slots:
    void initTestCase() {
        round = test::measuredRound();
        const test::Files files = test::signedFiles(round);
        json = kept("record.json", files.json);
        pdf = kept("record.pdf", files.pdf);
    }

    /// The PDF has the photos in it.
    void fromThePdf() {
        const Ran ran = runAmbit({"measure", pdf});
        QVERIFY2(ran.code == 0, ran.err.constData());
        const auto its = test::fiveMillimetres({});
        const QByteArray measured = QByteArray::fromStdString("distance " + its.value + " ± " +
                                                              its.uncertainty + " mm (standard uncertainty)");
        QCOMPARE(ran.out.count(measured), 2);
        QCOMPARE(ran.out.count("computed again: the same\n"), 2);
        QCOMPARE(ran.out.count("its bytes and size are those recorded\n"), 2);
        QCOMPARE(ran.out.count("card: the finder's corners are within "), 2);
        QVERIFY(ran.out.contains("0.225 in, typed; limit at least 3.0 mm: within\n"));
        QVERIFY(
            ran.out.contains(", measured in a photo, renewed before it; limit at least 3.0 mm: within\n"));
    }

    void forPrograms() {
        const Ran ran = runAmbit({"measure", pdf, "--json"});
        QVERIFY2(ran.code == 0, ran.err.constData());
        const QJsonObject all = said(ran);
        QVERIFY(all["ok"].toBool());
        QCOMPARE(all["values"].toArray().size(), 5);
        const QJsonArray measurements = all["measurements"].toArray();
        QCOMPARE(measurements.size(), 2);
        for (const QJsonValue value : measurements) {
            const QJsonObject one = value.toObject();
            QVERIFY(one["ok"].toBool() && one["photoSeen"].toBool());
            QCOMPARE(one["computed"]["value"], one["value"]);
            QCOMPARE(one["computed"]["uncertainty"], one["uncertainty"]);
            QVERIFY(one["card"]["apart"].toString().toDouble() < 1);
            QVERIFY(!one["card"]["apart"].toString().isEmpty());
        }
    }

    /// The record's JSON has none: figures are computed all the same, and photos taken from files.
    void fromTheJson() {
        const Ran without = runAmbit({"measure", json, "--json"});
        QCOMPARE(without.code, 0);
        const QJsonArray unseen = said(without)["measurements"].toArray();
        QCOMPARE(unseen.size(), 2);
        QStringList arguments{"measure", json, "--json"};
        for (const QJsonValue one : unseen) {
            QVERIFY(one["ok"].toBool() && !one["photoSeen"].toBool());
            const std::string hash = one["photo"].toString().toStdString();
            arguments << "--photo" << kept(hash.c_str(), round.photos.at(hash));
        }
        QVERIFY(runAmbit({"measure", json}).out.contains("not at hand"));
        const Ran with = runAmbit(arguments);
        QCOMPARE(with.code, 0);
        const QJsonArray seen = said(with)["measurements"].toArray();
        for (const QJsonValue one : seen)
            QVERIFY(one["photoSeen"].toBool());
    }

    /// What a typed value was read from is said as it was told; there is nothing to compute again.
    void aTypedValueSaysHow() {
        test::TestRound read = test::measuredRound();
        for (round::Event& event : read.events)
            if (auto* settled = std::get_if<round::Settled>(&event.what);
                settled != nullptr && settled->point == "oil-level") {
                settled->value = "5.2";
                settled->from = airframe::Means::dipstick;
                settled->uncertainty = "0.15";
            }
        read.content = record::roundContent(read.airframe, read.events, {}).value();
        const QString file = kept("read.json", test::signedFiles(read).json);
        const Ran ran = runAmbit({"measure", file});
        QCOMPARE(ran.code, 0);
        QVERIFY2(ran.out.contains("Engine oil: 5.2 ± 0.15 qt (standard uncertainty), read on the dipstick, "
                                  "typed; limit 4.0 to 6.0 qt: within\n"),
                 ran.out.constData());
        bool found = false;
        for (const QJsonValue one : said(runAmbit({"measure", file, "--json"}))["values"].toArray())
            if (one["point"].toString() == "oil-level") {
                found = true;
                QCOMPARE(one["from"].toString(), QStringLiteral("dipstick"));
                QCOMPARE(one["uncertainty"].toString(), QStringLiteral("0.15"));
            }
        QVERIFY(found);
    }

    /// Well signed, but its marks say something else than its value.
    void aValueThatItsMarksDontGive() {
        const std::string wrong = test::signedFiles(test::measuredRound(true)).pdf;
        const QString file = kept("wrong.pdf", wrong);
        const Ran ran = runAmbit({"measure", file});
        QCOMPARE(ran.code, 1);
        QVERIFY(ran.out.contains("computed again: 5.00 ± "));
        QVERIFY(ran.out.contains("NOT what the record says"));
        QVERIFY(!ran.err.isEmpty());
        const QJsonObject all = said(runAmbit({"measure", file, "--json"}));
        QVERIFY(!all["ok"].toBool());
        int bad = 0;
        for (const QJsonValue one : all["measurements"].toArray())
            bad += one["ok"].toBool() ? 0 : 1;
        QCOMPARE(bad, 1);
    }

    void wrong_data() {
        QTest::addColumn<QStringList>("arguments");
        QTest::addColumn<int>("code");
        QTest::newRow("nothing") << QStringList{} << 2;
        QTest::newRow("no file") << QStringList{folder.filePath("none.json")} << 3;
        QTest::newRow("no photo") << QStringList{json, "--photo", folder.filePath("none.jpg")} << 3;
        QTest::newRow("another photo")
            << QStringList{json, "--photo", kept("a.jpg", test::image(9, 9, 1))} << 1;
        QTest::newRow("no record") << QStringList{kept("a.json", "{}")} << 1;
        QFile whole(json);
        QVERIFY(whole.open(QIODevice::ReadOnly));
        QByteArray changed = whole.readAll();
        changed.replace("0.225", "0.224");
        QTest::newRow("changed") << QStringList{kept("changed.json", changed.toStdString())} << 1;
    }
    void wrong() {
        QFETCH(QStringList, arguments);
        QFETCH(int, code);
        const Ran ran = runAmbit(QStringList{"measure"} + arguments);
        QCOMPARE(ran.code, code);
        QVERIFY(!ran.err.isEmpty());
    }
};

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QGuiApplication application(argc, argv);
    TestCliMeasure tests;
    return QTest::qExec(&tests, argc, argv);
}
#include "tst_cli_measure.moc"
