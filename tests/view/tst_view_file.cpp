// The views of an aircraft's file: what they show at telling moments (golden/file-*.json), what is refused,
// and what they say of a file that doesn't hold.
#include "describe.hpp"
#include "house.hpp"

#include "archive/import.hpp"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QtTest>
#include <sqlite3.h>

namespace ambit::test {

class TestViewFile : public QObject {
    Q_OBJECT

    using Tester = QAbstractItemModelTester;
    static constexpr auto strict = Tester::FailureReportingMode::QtTest;
    static QString word() { return QStringLiteral("a good passphrase"); }

    static void same(const QString& name, const QJsonValue& now) {
        const QString difference = differsFromGolden(name, now);
        QVERIFY2(difference.isEmpty(), qPrintable(difference));
    }
    /// No two times the same, as a key's signature is in them.
    static QStringList aside() {
        return {QStringLiteral("key"), QStringLiteral("fingerprint"), QStringLiteral("recordId"),
                QStringLiteral("points")};
    }
    static QVariantMap signature() {
        return {{QStringLiteral("role"), QStringLiteral("mechanic")},
                {QStringLiteral("certificate"), QStringLiteral("DEMO-0001")},
                {QStringLiteral("passphrase"), word()}};
    }
    /// A round that found black powder at the fairing, signed; then three days go by.
    static bool foundSomething(House& house) {
        if (!house.begin() || !house.walkTo(QStringLiteral("fairing.left"))) return false;
        auto& round = *house.app->round();
        if (!round.settleFinding(QStringLiteral("Black powder at two rivets."), false, {})) return false;
        if (!house.walkTo({}) || !round.conclude(true, QStringLiteral("Told the owner."))) return false;
        auto& signing = *house.app->signing();
        if (!signing.keyExists() && !signing.newKey(QStringLiteral("Robin Example"), word())) return false;
        if (!signing.sign(word())) return false;
        house.app->leaveRound();
        house.passMinutes(3 * 24 * 60);
        return true;
    }
    static view::AircraftFileView& fileOf(House& house) {
        house.app->file()->setRegistration(house.registration);
        auto& file = *house.app->aircraftFile();
        file.refresh();
        if (!QTest::qWaitFor([&] { return !file.reading(); })) qFatal("the file is never read");
        return file;
    }
    static QString firstOpen(const view::AircraftFileView& file) {
        return file.property("open").toList().value(0).toMap().value(QStringLiteral("key")).toString();
    }
    static QVariantMap deferral(const view::EntryView& entries, const QString& key) {
        return {{QStringLiteral("key"), key},
                {QStringLiteral("words"), QStringLiteral("Rivets are firm.")},
                {QStringLiteral("basis"), entries.bases().first().toMap().value(QStringLiteral("id"))},
                {QStringLiteral("answers"), QVariantList{false, false, false, false, true, true}},
                {QStringLiteral("placard"), QStringLiteral("Look at the fairing")},
                {QStringLiteral("limits"), QStringLiteral("No passengers.")},
                {QStringLiteral("until"), QStringLiteral("2026-07-23")},
                {QStringLiteral("untilCounters"),
                 QVariantMap{{QStringLiteral("airframe-hours"), QStringLiteral("1300.0")},
                             {QStringLiteral("landings"), QString()}}},
                {QStringLiteral("determinedBy"), QStringLiteral("Kim Example")},
                {QStringLiteral("determinedRole"), QStringLiteral("mechanic")},
                {QStringLiteral("determinedCertificate"), QStringLiteral("DEMO-0002")}};
    }
    /// What a bad disk does, or somebody past every program: a byte of what was said is another one.
    static void damage(const House& house, const QString& record) {
        sqlite3* db = nullptr;
        const std::string file = house.folder.filePath(QStringLiteral("archive.sqlite")).toStdString();
        QCOMPARE(sqlite3_open(file.c_str(), &db), SQLITE_OK);
        const std::string sql =
            "UPDATE record SET content = CAST(substr(content, 1, length(content) / 2) || X'58' "
            "|| substr(content, length(content) / 2 + 2) AS BLOB) WHERE hex(sha256) = upper('" +
            record.toStdString() + "')";
        QCOMPARE(sqlite3_exec(db, sql.c_str(), nullptr, nullptr, nullptr), SQLITE_OK);
        QCOMPARE(sqlite3_changes(db), 1);
        sqlite3_close(db);
    }

private slots:
    void noRecordYet() {
        House house;
        const auto& file = fileOf(house);
        QVERIFY(file.known());
        QVERIFY(file.property("against").toStringList().isEmpty());
        QCOMPARE(file.property("due").toList().size(), 6);
    }

    void fromFoundToPutRight() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        auto& file = fileOf(house);
        same(QStringLiteral("file-found"), describe(file, aside()));

        auto& entries = *house.app->entries();
        QVERIFY2(entries.defer(deferral(entries, firstOpen(file)), signature()),
                 qPrintable(house.app->problem()));
        QVERIFY(file.reading()); // read anew, beside the screen
        house.passMinutes(24 * 60);
        fileOf(house);
        QVERIFY(file.openDiscrepancy(firstOpen(file)));
        same(QStringLiteral("file-deferred"), describe(file, aside()));

        const QString key = firstOpen(file);
        QVERIFY2(entries.rectify({{QStringLiteral("keys"), QStringList{key}},
                                  {QStringLiteral("description"), QStringLiteral("Rivets replaced.")},
                                  {QStringLiteral("completedOn"), QStringLiteral("2026-06-24")},
                                  {QStringLiteral("certificateKind"), QStringLiteral("mechanic")}},
                                 signature()),
                 qPrintable(house.app->problem()));
        fileOf(house);
        QVERIFY(file.property("open").toList().isEmpty());
        QCOMPARE(file.property("putRight").toList().size(), 1);
        QVERIFY(file.property("against").toStringList().isEmpty());
        QVERIFY(!file.discrepancy()->property("isOpen").toBool()); // the opened one is told anew

        // The next round sees it sound: closed, and gone from the page.
        QVERIFY2(house.wholeRound(), qPrintable(house.app->problem()));
        fileOf(house);
        QVERIFY(file.property("putRight").toList().isEmpty());
        QCOMPARE(file.discrepancy()->property("state").toString(), QStringLiteral("closed"));
    }

    void recordsOfOtherKindsSayWhatTheySay() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        auto& file = fileOf(house);
        auto& entries = *house.app->entries();
        QVERIFY(entries.defer(deferral(entries, firstOpen(file)), signature()));
        const auto records = house.app->file()->records();
        QCOMPARE(records->count(), 2);
        QCOMPARE(records->get(0).value(QStringLiteral("conclusionText")).toString(),
                 QStringLiteral("Assessment"));
        QVERIFY(house.app->file()->open(records->get(0).value(QStringLiteral("recordId")).toString()));
        const auto& record = *house.app->file()->record();
        QVERIFY(record.property("verified").toBool());
        QCOMPARE(record.property("conclusionText").toString(), QStringLiteral("Deferred"));
        same(QStringLiteral("file-record"), describe(record, aside() << QStringLiteral("said")));
        QString said;
        for (const QVariant& line : record.property("said").toList())
            said += line.toMap().value(QStringLiteral("text")).toString() + QLatin1Char('\n');
        for (const char* words : {"Rivets are firm.", "Look at the fairing", "No passengers.", "2026-07-23",
                                  "Airframe hours 1300.0 h", "Mast fairing, left",
                                  "Kim Example\u00a0· Mechanic\u00a0· DEMO-0002"})
            QVERIFY2(said.contains(QString::fromUtf8(words)), words);
    }

    void whatIsMissingIsRefused() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        auto& file = fileOf(house);
        auto& entries = *house.app->entries();
        const auto refuses = [&](const char* field, const QVariant& instead, const char* because) {
            QVariantMap said = deferral(entries, firstOpen(file));
            said.insert(QLatin1String(field), instead);
            const bool done = entries.defer(said, signature());
            return !done && house.app->problem().contains(QLatin1String(because));
        };
        QVERIFY(refuses("placard", QStringLiteral(" "), "placard"));
        QVERIFY(refuses("until", QStringLiteral("tomorrow"), "is no date"));
        QVERIFY(refuses("determinedBy", QString(), "no hazard"));
        QVERIFY(refuses("words", QString(), "Nothing says why"));
        QVERIFY(refuses("answers", QVariantList{true, false, false, false, true, true}, "can't be deferred"));
        QVERIFY(refuses("answers", QVariantList{false}, "answers"));
        QVERIFY(refuses("basis", QStringLiteral("other"), "reference"));
        QVERIFY(refuses("key", QString(), "No discrepancy"));
        QVERIFY(refuses("untilCounters", QVariantMap{{QStringLiteral("landings"), QStringLiteral("many")}},
                        "is no reading"));
        QVERIFY(!entries.readCounters({}, signature()));
        QVERIFY(!entries.handOver({}, signature()));
        QVariantMap wrong = signature();
        wrong.insert(QStringLiteral("passphrase"), QStringLiteral("another one"));
        QVERIFY(!entries.handOver({{QStringLiteral("to"), QStringLiteral("Kim Example")}}, wrong));
        QCOMPARE(house.app->file()->recordCount(), 1); // nothing was kept
        QVERIFY(entries.ruledOut(0, false).isEmpty());
        QVERIFY(!entries.ruledOut(0, true).isEmpty());
        QVERIFY(!entries.ruledOut(4, false).isEmpty());
        QCOMPARE(entries.dayAfter(30), QStringLiteral("2026-07-23"));
    }

    void whatIsSearchedIsFound() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        fileOf(house);
        auto& search = *house.app->search();
        const Tester hits(search.hits(), strict);
        const auto finds = [&](const QVariantMap& wanted) {
            if (!search.search(house.registration, wanted)) return -1;
            if (!QTest::qWaitFor([&] { return !search.searching(); })) return -2;
            return search.hits()->count();
        };
        const auto only = [](const char* name, const char* words) {
            return QVariantMap{{QLatin1String(name), QString::fromUtf8(words)}};
        };
        QCOMPARE(finds({}), 1);
        QCOMPARE(finds(only("words", "POWDER")), 1);
        QCOMPARE(finds(only("words", "nowhere")), 0);
        QCOMPARE(finds(only("words", "fairing black")), 1);
        QCOMPARE(finds(only("part", "blade")), 0);
        QCOMPARE(finds(only("jasc", "53")), 1);
        QCOMPARE(finds(only("jasc", "62")), 0);
        QCOMPARE(finds(only("person", "robin")), 1);
        QCOMPARE(finds(only("person", "kim")), 0);
        QCOMPARE(finds(only("kind", "round")), 1);
        QCOMPARE(finds(only("kind", "reading")), 0);
        QCOMPARE(finds(only("state", "open")), 1);
        QCOMPARE(finds(only("state", "closed")), 0);
        QCOMPARE(finds(only("until", "2026-06-20")), 1);
        QCOMPARE(finds(only("from", "2026-06-21")), 0);
        QCOMPARE(finds(only("from", "soon")), -1);
        QVERIFY(house.app->problem().contains(QStringLiteral("is no date")));
    }

    void aPointHasItsHistory() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        auto& file = fileOf(house);
        auto& entries = *house.app->entries();
        QVERIFY(entries.defer(deferral(entries, firstOpen(file)), signature()));
        auto& history = *house.app->pointHistory();
        const Tester sightings(history.sightings(), strict);
        history.show(house.registration, QStringLiteral("fairing.left"));
        QTRY_VERIFY(!history.reading());
        same(QStringLiteral("file-history"), describe(history, aside()));
        history.show(house.registration, QStringLiteral("oil-level"));
        QTRY_VERIFY(!history.reading());
        QCOMPARE(history.sightings()->count(), 1);
        QVERIFY(history.sightings()
                    ->get(0)
                    .value(QStringLiteral("valueText"))
                    .toString()
                    .endsWith(QStringLiteral(" qt ± 0.15, read on the dipstick, within")));
    }

    /// Forgotten in the round, said by the owner on the point's page, and taken back there.
    void aRenewalIsToldAfterwards() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        QVERIFY2(house.wholeRound(), qPrintable(house.app->problem()));
        house.app->leaveRound();
        house.passMinutes(24 * 60);
        auto& history = *house.app->pointHistory();
        const auto& trend = *house.app->trend();
        const QString point = QStringLiteral("oil-level");
        const auto newest = [&] {
            fileOf(house);
            history.show(house.registration, point);
            const bool read = QTest::qWaitFor([&] { return !history.reading() && trend.there(); });
            return read ? history.values().value(0).toMap() : QVariantMap();
        };
        QVariantMap its = newest();
        QCOMPARE(history.values().size(), 2);
        QCOMPARE(its.value(QStringLiteral("renewed")), QVariant(false));
        QVERIFY(!trend.drawn().told.values.back().renewed);

        auto& entries = *house.app->entries();
        QVariantMap owner = signature();
        owner.insert(QStringLiteral("role"), QStringLiteral("owner"));
        QVariantMap pilot = signature();
        pilot.insert(QStringLiteral("role"), QStringLiteral("pilot"));
        const auto say = [&](bool renewed, const QVariantMap& by) {
            return entries.tellRenewed({{QStringLiteral("record"), its.value(QStringLiteral("recordId"))},
                                        {QStringLiteral("point"), point},
                                        {QStringLiteral("renewed"), renewed},
                                        {QStringLiteral("words"), QStringLiteral("Engine changed.")}},
                                       by);
        };
        QVERIFY(!say(true, pilot));
        QVERIFY2(house.app->problem().contains(QStringLiteral("the owner or a mechanic")),
                 qPrintable(house.app->problem()));
        QVERIFY(!entries.tellRenewed({{QStringLiteral("point"), point}}, owner));
        QVERIFY(house.app->problem().contains(QStringLiteral("No value is chosen")));
        QCOMPARE(house.app->file()->recordCount(), 2); // nothing was kept

        QVERIFY2(say(true, owner), qPrintable(house.app->problem()));
        its = newest();
        QCOMPARE(its.value(QStringLiteral("renewed")), QVariant(true));
        QVERIFY(trend.drawn().told.values.back().renewed);
        QCOMPARE(trend.drawn().trend.from, std::size_t{1});
        const Tester strictly(history.sightings(), strict);
        QCOMPARE(history.sightings()->count(), 3);
        const QVariantMap told = history.sightings()->get(0);
        QCOMPARE(told.value(QStringLiteral("outcomeText")).toString(),
                 QStringLiteral("Renewal told afterwards"));
        QVERIFY(told.value(QStringLiteral("words")).toString().endsWith(QStringLiteral("Engine changed.")));
        const QString value = history.sightings()->get(1).value(QStringLiteral("valueText")).toString();
        QVERIFY2(value.endsWith(QStringLiteral(", within, renewed before it")), qPrintable(value));
        QVERIFY(house.app->file()->open(told.value(QStringLiteral("recordId")).toString()));
        const auto& record = *house.app->file()->record();
        QVERIFY(record.property("verified").toBool());
        QCOMPARE(record.property("conclusionText").toString(), QStringLiteral("Renewed before a value"));
        QString said;
        for (const QVariant& line : record.property("said").toList())
            said += line.toMap().value(QStringLiteral("text")).toString() + QLatin1Char('\n');
        QVERIFY2(said.contains(QStringLiteral("Engine changed.")) && said.contains(QStringLiteral("il")),
                 qPrintable(said));

        QVERIFY2(say(false, signature()), qPrintable(house.app->problem())); // a mechanic may, too
        its = newest();
        QCOMPARE(its.value(QStringLiteral("renewed")), QVariant(false));
        QVERIFY(!trend.drawn().told.values.back().renewed);
        QCOMPARE(history.sightings()->count(), 4);
    }

    void findingsAreCountedWhereTheyWere() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        fileOf(house);
        auto& findings = *house.app->zoneFindings();
        const auto countIn = [&](const char* zone) {
            for (const QVariant& one : findings.property("zones").toList())
                if (one.toMap().value(QStringLiteral("zoneId")) == QLatin1String(zone))
                    return one.toMap().value(QStringLiteral("count")).toInt();
            return -1;
        };
        QCOMPARE(findings.property("total").toInt(), 1);
        QCOMPARE(countIn("mast-left"), 1);
        QCOMPARE(countIn("nose"), 0);
        QCOMPARE(findings.foundIn(QStringLiteral("mast-left")).size(), 1);
        house.passMinutes(40 * 24 * 60);
        findings.setDays(30);
        QCOMPARE(countIn("mast-left"), 0);
        QVERIFY(findings.foundIn(QStringLiteral("mast-left")).isEmpty());
        findings.setDays(0);
        QCOMPARE(countIn("mast-left"), 1);
    }

    void aChangedRecordIsNamed() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        fileOf(house);
        auto& verification = *house.app->verification();
        verification.run(house.registration);
        QTRY_VERIFY(!verification.running());
        QVERIFY(verification.property("good").toBool());
        const QString record =
            house.app->file()->records()->get(0).value(QStringLiteral("recordId")).toString();
        damage(house, record);
        verification.run(house.registration);
        QTRY_VERIFY(!verification.running());
        QVERIFY(!verification.property("good").toBool());
        const auto broken = verification.property("broken").toList();
        QCOMPARE(broken.size(), 1);
        QVERIFY(broken.first()
                    .toMap()
                    .value(QStringLiteral("name"))
                    .toString()
                    .startsWith(QStringLiteral("Round of 20 Jun 2026")));
    }

    void aMissingRecordIsNamed() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        fileOf(house);
        QVERIFY2(house.wholeRound(), qPrintable(house.app->problem()));
        house.app->leaveRound();
        const auto heads = house.archive->heads(house.registration.toStdString());
        const std::string json = house.archive->recordJson(heads->front()).value();
        House other;
        QVERIFY(archive::importRecord(*other.archive, json));
        const auto& file = fileOf(other);
        QVERIFY(file.known());
        QCOMPARE(file.property("holes").toInt(), 1);
        auto& verification = *other.app->verification();
        verification.run(other.registration);
        QTRY_VERIFY(!verification.running());
        QVERIFY(!verification.property("good").toBool());
        QCOMPARE(verification.property("missing").toList().size(), 1);
    }

    void anAppThatEndsWaitsForNobody() {
        House house;
        QVERIFY2(foundSomething(house), qPrintable(house.app->problem()));
        house.app->file()->setRegistration(house.registration);
        house.app->verification()->run(house.registration);
        QVERIFY(house.app->aircraftFile()->reading());
        house.restart(); // while it is being read
        QVERIFY(fileOf(house).known());
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewFile)
#include "tst_view_file.moc"
