// Whose key counts, parts, what is let go, and a second signature: what the views keep, what they refuse, and
// that what they write holds by core's own check.
#include "house.hpp"

#include "record/pdf.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>

namespace ambit::test {

class TestViewPeople : public QObject {
    Q_OBJECT

    static QString word() { return QStringLiteral("a good passphrase"); }
    static QVariantMap signature(const QString& key = {}) {
        return {{QStringLiteral("role"), QStringLiteral("mechanic")},
                {QStringLiteral("certificate"), QStringLiteral("DEMO-0001")},
                {QStringLiteral("passphrase"), word()},
                {QStringLiteral("key"), key}};
    }
    static view::AircraftFileView& fileOf(House& house) {
        house.app->file()->setRegistration(house.registration);
        auto& file = *house.app->aircraftFile();
        file.refresh();
        house.passMinutes(1); // what is signed next is the newest
        if (!QTest::qWaitFor([&] { return !file.reading(); })) qFatal("the file is never read");
        return file;
    }
    /// Robin's round, signed; a day later.
    static bool signedRound(House& house) {
        if (!house.wholeRound()) return false;
        house.app->leaveRound();
        house.passMinutes(24 * 60);
        fileOf(house);
        return true;
    }
    static std::string newest(const House& house) {
        return house.archive->records(house.registration.toStdString())->front().sha256;
    }
    static record::Entry entryOf(const House& house, const std::string& sha256) {
        return *house.archive->toldBy(sha256)->entry();
    }
    static QVariantMap part(const char* serial) {
        return {{QStringLiteral("name"), QStringLiteral("Blade set")},
                {QStringLiteral("number"), QStringLiteral("B-7")},
                {QStringLiteral("serial"), QString::fromLatin1(serial)},
                {QStringLiteral("counters"),
                 QVariantMap{{QStringLiteral("airframe-hours"), QStringLiteral("12.5")}}}};
    }
    static QVariantMap change() {
        return {{QStringLiteral("position"), QStringLiteral("main-rotor-blades")},
                {QStringLiteral("off"), QVariantMap()},
                {QStringLiteral("on"), part("S-1")},
                {QStringLiteral("description"), QStringLiteral("Blades fitted.")},
                {QStringLiteral("completedOn"), QStringLiteral("2026-06-21")},
                {QStringLiteral("certificateKind"), QStringLiteral("mechanic")},
                {QStringLiteral("counters"),
                 QVariantMap{{QStringLiteral("airframe-hours"), QStringLiteral("1284.9")}}}};
    }
    static QVariantMap with(QVariantMap said, const char* field, const QVariant& instead) {
        said.insert(QLatin1String(field), instead);
        return said;
    }
    static QStringList idsOf(const QVariantList& rows) {
        QStringList ids;
        for (const QVariant& one : rows)
            ids << one.toMap().value(QStringLiteral("recordId")).toString();
        return ids;
    }

private slots:
    void aPartChangesHands() {
        House house;
        QVERIFY2(signedRound(house), qPrintable(house.app->problem()));
        auto& entries = *house.app->entries();
        QVERIFY2(entries.changePart(change(), signature()), qPrintable(house.app->problem()));
        const auto& file = fileOf(house);
        const auto kept = std::get<record::PartChange>(entryOf(house, newest(house)));
        QCOMPARE(kept.position, std::string("main-rotor-blades"));
        QVERIFY(!kept.off);
        QCOMPARE(kept.on->serial, std::string("S-1"));
        QCOMPARE(kept.on->counters.at(0).value, std::string("12.5"));
        QCOMPARE(kept.counters.at(0).value, std::string("1284.9"));
        QCOMPARE(kept.completedOn, std::string("2026-06-21"));
        QCOMPARE(kept.certificateKind, std::string("mechanic"));
        const QVariantList places = file.property("places").toList();
        QCOMPARE(places.size(), 2); // the airframe's two parts with a life
        QCOMPARE(places[0].toMap().value(QStringLiteral("fittedText")).toString(),
                 QStringLiteral("Blade set, serial S-1, fitted 2026-06-21"));
        QVERIFY(places[1].toMap().value(QStringLiteral("fittedText")).toString().isEmpty());
    }

    void aPartChangeThatSaysTooLittle() {
        House house;
        QVERIFY2(signedRound(house), qPrintable(house.app->problem()));
        auto& entries = *house.app->entries();
        const auto refuses = [&](const QVariantMap& said, const char* because) {
            return !entries.changePart(said, signature()) &&
                   house.app->problem().contains(QLatin1String(because));
        };
        QVERIFY(refuses(with(change(), "position", QString()), "where on the aircraft"));
        QVERIFY(refuses(with(change(), "on", QVariantMap()), "No part is named"));
        QVERIFY(refuses(with(change(), "on", part(" ")), "a serial number"));
        QVERIFY(refuses(with(change(), "off", part("")), "a serial number"));
        QVERIFY(refuses(with(change(), "description", QString()), "what was done"));
        QVERIFY(refuses(with(change(), "completedOn", QStringLiteral("yesterday")), "is no date"));
        QVERIFY(refuses(with(change(), "certificateKind", QString()), "kind of certificate"));
        QVERIFY(!entries.changePart(change(), with(signature(), "certificate", QString())));
        QVERIFY(house.app->problem().contains(QStringLiteral("number of your certificate")));
        QCOMPARE(house.app->file()->recordCount(), 1);
    }

    void theOwnersWord() {
        House house;
        QVERIFY2(signedRound(house), qPrintable(house.app->problem()));
        auto& entries = *house.app->entries();
        const auto key = fileOf(house).property("keys").toList().value(0).toMap();
        QCOMPARE(key.value(QStringLiteral("words")).toString(), QStringLiteral("Signed 1 record as pilot"));
        QCOMPARE(key.value(QStringLiteral("look")).toString(), QStringLiteral("todo"));
        const QVariantMap word{
            {QStringLiteral("name"), QStringLiteral("Robin Example")},
            {QStringLiteral("key"), key.value(QStringLiteral("fingerprint"))}, // with its spaces
            {QStringLiteral("roles"), QStringList{QStringLiteral("pilot"), QStringLiteral("mechanic")}},
            {QStringLiteral("from"), QStringLiteral("2026-06-01")}};
        QVERIFY(!entries.trust(with(word, "roles", QStringList()), signature()));
        QVERIFY(!entries.trust(with(word, "name", QString()), signature()));
        QVERIFY(!entries.trust(with(word, "key", QStringLiteral("zz")), signature()));
        QVERIFY(house.app->problem().contains(QStringLiteral("64 digits")));
        QVERIFY2(entries.trust(word, signature()), qPrintable(house.app->problem()));
        fileOf(house);
        const auto kept = std::get<record::Trust>(entryOf(house, newest(house)));
        QCOMPARE(kept.key, key.value(QStringLiteral("key")).toString().toStdString());
        QCOMPARE(toText(kept.from), std::string("2026-05-31T22:00:00.000Z")); // midnight where the device is
        QCOMPARE(kept.roles.size(), std::size_t{2});

        const QVariantMap end{{QStringLiteral("key"), key.value(QStringLiteral("key"))},
                              {QStringLiteral("why"), QStringLiteral("Stolen.")}};
        QVERIFY(!entries.revoke(with(end, "why", QString()), signature()));
        QVERIFY(!entries.revoke(with(end, "key", QString()), signature()));
        QVERIFY2(entries.revoke(end, signature()), qPrintable(house.app->problem()));
        QVERIFY(std::get<record::Revocation>(entryOf(house, newest(house))).from == house.clock.at);
        const auto now = fileOf(house).property("keys").toList().value(0).toMap();
        QVERIFY(now.value(QStringLiteral("revoked")).toBool());
        QCOMPARE(now.value(QStringLiteral("look")).toString(), QStringLiteral("finding"));
    }

    void nothingGoesUnasked() {
        House house;
        for (int i = 0; i < 3; ++i)
            QVERIFY2(signedRound(house), qPrintable(house.app->problem()));
        auto& retention = *house.app->retention();
        retention.look(house.registration);
        QTRY_VERIFY(!retention.reading());
        const QStringList mayGo = idsOf(retention.property("mayGo").toList());
        const QVariantList stay = retention.property("mustStay").toList();
        QCOMPARE(mayGo.size(), 2);
        QCOMPARE(stay.size(), 1);
        QVERIFY(stay[0].toMap().value(QStringLiteral("never")).toBool()); // the latest: the next names it
        QVERIFY(retention.basisOf(mayGo).startsWith(QStringLiteral("14 CFR 91.417")));
        QVERIFY(retention.basisOf(idsOf(stay)).isEmpty());

        auto& entries = *house.app->entries();
        const QVariantMap said{{QStringLiteral("records"), QStringList{mayGo[0]}},
                               {QStringLiteral("basis"), QStringLiteral("14 CFR 91.417(b)")},
                               {QStringLiteral("although"), false}};
        QVERIFY(!entries.letGo(with(said, "records", QStringList()), signature()));
        QVERIFY(!entries.letGo(with(said, "basis", QString()), signature()));
        QVERIFY(!entries.letGo(with(said, "records", idsOf(stay)), signature()));
        QVERIFY(house.app->problem().contains(QStringLiteral("must stay")));
        QVERIFY(!entries.letGo(with(with(said, "records", idsOf(stay)), "although", true), signature()));
        QVERIFY(!entries.letGo(said, with(signature(), "passphrase", QStringLiteral("another one"))));
        QCOMPARE(house.app->file()->recordCount(), 3);
        QVERIFY2(entries.letGo(said, signature()), qPrintable(house.app->problem()));
        fileOf(house);
        QCOMPARE(house.app->file()->recordCount(), 3); // one less, and the stub
        const auto stub = std::get<record::Removal>(entryOf(house, newest(house)));
        QCOMPARE(stub.records.size(), std::size_t{1});
        QCOMPARE(stub.records[0].record, mayGo[0].toStdString());
        QCOMPARE(stub.basis, std::string("14 CFR 91.417(b)"));
        QVERIFY(!house.archive->recordJson(mayGo[0].toStdString()));
        QVERIFY(house.archive->recordJson(mayGo[1].toStdString()));
        QCOMPARE(house.app->aircraftFile()->property("holes").toInt(), 0);
    }

    void aSecondSignature() {
        House house;
        QVERIFY2(signedRound(house), qPrintable(house.app->problem()));
        auto& signing = *house.app->signing();
        QVERIFY(signing.newKey(QStringLiteral("Kim Example"), word()));
        const QString kim = signing.keyOf(QStringLiteral("Kim Example"));
        const std::string id = newest(house);
        const std::string before = *house.archive->recordPdf(id);
        QVERIFY(house.app->file()->open(QString::fromStdString(id)));
        // Robin signed it already; a key that isn't here; no passphrase of Kim's.
        QVERIFY(!signing.countersign(QString::fromStdString(id), signature()));
        QVERIFY(house.app->problem().contains(QStringLiteral("already")));
        QVERIFY(!signing.countersign(QString::fromStdString(id), signature(QStringLiteral("nobody's"))));
        QVERIFY(!signing.countersign(QString::fromStdString(id),
                                     with(signature(kim), "passphrase", QStringLiteral("another one"))));
        QCOMPARE(*house.archive->recordPdf(id), before);
        QVERIFY2(signing.countersign(QString::fromStdString(id), signature(kim)),
                 qPrintable(house.app->problem()));

        // JSON and PDF bear both, by core's own check; the PDF only grew.
        const auto json = record::verifyRecord(*house.archive->recordJson(id));
        QVERIFY(json.has_value());
        QCOMPARE(json->sha256, id);
        QCOMPARE(json->signatures.size(), std::size_t{2});
        QCOMPARE(json->signatures[1].who.name, std::string("Kim Example"));
        QCOMPARE(json->signatures[1].who.role, std::string("mechanic"));
        QVERIFY(json->signatures[1].at == house.clock.at);
        const std::string after = *house.archive->recordPdf(id);
        QVERIFY(after.size() > before.size());
        QVERIFY(after.starts_with(before));
        const auto pdf = record::verifyPdf(after);
        QVERIFY(pdf.has_value());
        QCOMPARE(pdf->recordJson, *house.archive->recordJson(id));
        const auto shown = house.app->file()->record()->property("signatures").toList();
        QCOMPARE(shown.size(), 2); // the page is told anew
        QCOMPARE(shown[1].toMap().value(QStringLiteral("key")).toString(), kim);
        QVERIFY(!signing.countersign(QString::fromStdString(id), signature(kim)));
    }

    void eachPersonHasAKey() {
        House house;
        auto& signing = *house.app->signing();
        QVERIFY(signing.newKey(QStringLiteral("Robin Example"), word()));
        QVERIFY(signing.newKey(QStringLiteral("Kim Example"), QStringLiteral("another passphrase")));
        QVERIFY(!signing.newKey(QStringLiteral("Kim Example"), QStringLiteral("another passphrase")));
        house.restart(); // found again, the first one in front
        const auto& again = *house.app->signing();
        const QVariantList keys = again.property("keys").toList();
        QCOMPARE(keys.size(), 2);
        QCOMPARE(keys[0].toMap().value(QStringLiteral("name")).toString(), QStringLiteral("Robin Example"));
        const QString kim = again.keyOf(QStringLiteral("Kim Example"));
        QVERIFY(!kim.isEmpty());
        QVERIFY(again.keyOf(QStringLiteral("Mo Sample")).isEmpty());
        QVERIFY(!again.unlock(word(), kim));
        QCOMPARE(again.unlock(QStringLiteral("another passphrase"), kim)->certificate().name,
                 std::string("Kim Example"));
        QCOMPARE(again.unlock(word(), {})->certificate().name, std::string("Robin Example"));
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewPeople)
#include "tst_view_people.moc"
