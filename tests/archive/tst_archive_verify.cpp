// Removing, reordering or altering any of 10,000 records, by whoever can write the file but has no key, is
// found by `verify`, and it names the record. What is expected comes from the database as it was, read
// without the archive's code.
#include "archive/packing.hpp"
#include "archive/verify.hpp"
#include "base/encoding.hpp"
#include "fleets.hpp"
#include "raw.hpp"

#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <filesystem>
#include <map>
#include <random>
#include <set>

using namespace ambit;
using archive::Archive;
using test::Raw;

namespace {

constexpr std::size_t howMany = 10000;
constexpr std::size_t targetsInCase = 40;

std::string hexOf(const std::string& digest) {
    return toHex({reinterpret_cast<const std::uint8_t*>(digest.data()), digest.size()});
}

/// A record as it stands in the database.
struct Row {
    std::string key, sha256, file, dictionary, content, previous;
    std::vector<std::string> namedBy; ///< identities, binary
    [[nodiscard]] std::string is(const char* column = "record") const {
        return ' ' + std::string(column) + " = " + key + ' ';
    }
};

/// What one tampers with and whom `verify` must name for it.
struct Tampering {
    Raw& raw;
    const std::vector<Row>& all;
    const std::set<std::string>& latest; ///< binary
    std::mt19937_64& random;
    std::set<std::string> mustBeNamed; ///< hex
    void named(const Row& row) { mustBeNamed.insert(hexOf(row.sha256)); }
};

std::string flipped(std::string bytes, std::mt19937_64& random) {
    char& byte = bytes[random() % bytes.size()];
    byte = static_cast<char>(static_cast<unsigned char>(byte) ^ (1U << (random() % 8)));
    return bytes;
}

using Tamper = void (*)(Tampering&, const std::vector<const Row*>&);

} // namespace

Q_DECLARE_METATYPE(Tamper)

class TestArchiveVerify : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        fleet::Plan plan;
        plan.seed = 4;
        plan.aircraft = 8;
        plan.years = 2;
        plan.records = howMany;
        {
            auto archive = Archive::open(whole());
            QVERIFY(archive);
            test::keepAll(*archive, test::fleetRecords(plan));
        }
        Raw raw(whole());
        raw.run("PRAGMA wal_checkpoint(TRUNCATE)");
        std::map<std::string, std::vector<std::string>> namedBy;
        for (auto& cells :
             raw.rows("SELECT key, sha256, record.file, dictionary, content, previous FROM record"
                      " JOIN page USING(sha256) ORDER BY key")) {
            Row row{cells[0], cells[1], cells[2], cells[3], cells[4], cells[5], {}};
            for (std::size_t at = 0; at < row.previous.size(); at += 32)
                namedBy[row.previous.substr(at, 32)].push_back(row.sha256);
            all.push_back(std::move(row));
        }
        QCOMPARE(all.size(), howMany);
        for (Row& row : all)
            row.namedBy = namedBy[row.sha256];
        for (const auto& cells : raw.rows("SELECT sha256 FROM head"))
            latest.insert(cells[0]);
        QVERIFY(latest.size() >= 8);
    }

    void nothingIsNamedOfAnUntouchedOne() {
        const auto archive = Archive::open(whole());
        QVERIFY(archive);
        const auto checked = archive::verify(*archive);
        QVERIFY(checked);
        QCOMPARE(checked->records, howMany);
        QVERIFY(checked->broken.empty());
        QVERIFY(checked->holes.empty());
        QVERIFY(checked->missingPhotos.empty());
    }

    void whatIsDoneToARecordIsNamed_data() {
        QTest::addColumn<Tamper>("tamper");
        QTest::newRow("row deleted") << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
            for (const Row* row : targets) {
                its.raw.run("DELETE FROM record WHERE" + row->is("key"));
                its.named(*row);
            }
        });
        QTest::newRow("deleted with everything kept for it")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (const Row* row : targets) {
                       its.raw.run("DELETE FROM record WHERE" + row->is("key"));
                       its.raw.run("DELETE FROM page WHERE" + row->is());
                       its.raw.run("DELETE FROM signature WHERE" + row->is());
                       its.named(*row);
                   }
               });
        QTest::newRow("the latest deleted") << Tamper([](Tampering& its, const std::vector<const Row*>&) {
            for (const Row& row : its.all)
                if (its.latest.contains(row.sha256)) {
                    its.raw.run("DELETE FROM record WHERE" + row.is("key"));
                    its.raw.run("DELETE FROM page WHERE" + row.is());
                    its.named(row);
                }
        });
        QTest::newRow("deleted, and only one that was let go named it")
            << Tamper([](Tampering& its, const std::vector<const Row*>&) {
                   for (const Row& row : its.all)
                       if (row.namedBy.empty() && !its.latest.contains(row.sha256)) {
                           its.raw.run("DELETE FROM record WHERE" + row.is("key"));
                           its.named(row);
                       }
               });
        QTest::newRow("deleted, and written down as let go")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (const Row* row : targets) {
                       its.raw.run("DELETE FROM record WHERE" + row->is("key"));
                       its.raw.run("DELETE FROM page WHERE" + row->is());
                       its.raw.run("INSERT INTO gone VALUES(" + row->file + ", ?1)", {row->sha256});
                       its.named(*row);
                   }
               });
        QTest::newRow("contents exchanged")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (std::size_t i = 0; i + 1 < targets.size(); i += 2) {
                       const Row &a = *targets[i], &b = *targets[i + 1];
                       its.raw.run("UPDATE record SET dictionary = " + b.dictionary + ", content = ?1 WHERE" +
                                       a.is("key"),
                                   {b.content});
                       its.raw.run("UPDATE record SET dictionary = " + a.dictionary + ", content = ?1 WHERE" +
                                       b.is("key"),
                                   {a.content});
                       its.named(a);
                       its.named(b);
                   }
               });
        QTest::newRow("identities exchanged with the contents")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (std::size_t i = 0; i + 1 < targets.size(); i += 2) {
                       const Row &a = *targets[i], &b = *targets[i + 1];
                       its.raw.run("UPDATE record SET sha256 = x'00' WHERE" + a.is("key"));
                       const std::string set = "UPDATE record SET sha256 = ?1, content = ?2, dictionary = ";
                       its.raw.run(set + a.dictionary + " WHERE" + b.is("key"), {a.sha256, a.content});
                       its.raw.run(set + b.dictionary + " WHERE" + a.is("key"), {b.sha256, b.content});
                       its.named(a);
                       its.named(b);
                   }
               });
        QTest::newRow("times exchanged") << Tamper([](Tampering& its,
                                                      const std::vector<const Row*>& targets) {
            for (std::size_t i = 0; i + 1 < targets.size(); i += 2) {
                const Row &a = *targets[i], &b = *targets[i + 1];
                for (const auto& [table, column] : {std::pair{"record", "key"}, std::pair{"page", "record"},
                                                    std::pair{"signature", "record"}}) {
                    const std::string set = "UPDATE " + std::string(table) + " SET " + column + " = ";
                    its.raw.run(set + "-1 WHERE" + a.is(column));
                    its.raw.run(set + a.key + " WHERE" + b.is(column));
                    its.raw.run(set + b.key + " WHERE " + column + " = -1");
                }
                its.named(a);
                its.named(b);
            }
        });
        QTest::newRow("moved to another file")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (const Row* row : targets) {
                       const std::string other = row->file == "1" ? "2" : "1";
                       its.raw.run("UPDATE record SET file = " + other + " WHERE" + row->is("key"));
                       its.raw.run("UPDATE page SET file = " + other + " WHERE" + row->is());
                       its.named(*row);
                   }
               });
        QTest::newRow("a file's name taken away")
            << Tamper([](Tampering& its, const std::vector<const Row*>&) {
                   its.raw.run("DELETE FROM file WHERE id = 3");
                   for (const Row& row : its.all)
                       if (row.file == "3") its.named(row);
               });
        QTest::newRow("what it says, a letter of it") << Tamper([](Tampering& its,
                                                                   const std::vector<const Row*>& targets) {
            archive::Packing packing;
            const auto fetch = [&](std::int64_t id) -> Result<std::string> {
                return its.raw.rows("SELECT bytes FROM dictionary WHERE id = " + std::to_string(id))[0][0];
            };
            for (const Row* row : targets) {
                std::string content;
                if (!packing.unpack(row->content, std::stoll(row->dictionary), content, fetch))
                    qFatal("unpack");
                const auto packed = packing.pack(flipped(content, its.random), 0, fetch);
                its.raw.run("UPDATE record SET dictionary = 0, content = ?1 WHERE" + row->is("key"),
                            {*packed});
                its.named(*row);
            }
        });
        QTest::newRow("what it says, a byte on the disk")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   archive::Packing packing;
                   const auto fetch = [&](std::int64_t id) -> Result<std::string> {
                       return its.raw.rows("SELECT bytes FROM dictionary WHERE id = " +
                                           std::to_string(id))[0][0];
                   };
                   for (const Row* row : targets) {
                       const std::string packed = flipped(row->content, its.random);
                       its.raw.run("UPDATE record SET content = ?1 WHERE" + row->is("key"), {packed});
                       // A bit that the packing doesn't use changes nothing of the record.
                       const auto id = std::stoll(row->dictionary);
                       std::string before, after;
                       if (!packing.unpack(row->content, id, before, fetch)) qFatal("unpack");
                       if (packing.unpack(packed, id, after, fetch) && after == before) continue;
                       its.named(*row);
                   }
               });
        QTest::newRow("what is remembered of what comes before it")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (const Row* row : targets) {
                       const std::string other =
                           row->previous.empty() ? std::string(32, 'x') : flipped(row->previous, its.random);
                       its.raw.run("UPDATE page SET previous = ?1 WHERE" + row->is(), {other});
                       its.named(*row);
                   }
               });
        QTest::newRow("what comes before it, in another order")
            << Tamper([](Tampering& its, const std::vector<const Row*>&) {
                   for (const Row& row : its.all) {
                       if (row.previous.size() != 64) continue;
                       its.raw.run("UPDATE page SET previous = ?1 WHERE" + row.is(),
                                   {row.previous.substr(32) + row.previous.substr(0, 32)});
                       its.named(row);
                   }
               });
        QTest::newRow("nothing remembered of it")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (const Row* row : targets) {
                       its.raw.run("DELETE FROM page WHERE" + row->is());
                       its.named(*row);
                   }
               });
        QTest::newRow("not remembered as the latest")
            << Tamper([](Tampering& its, const std::vector<const Row*>&) {
                   its.raw.run("DELETE FROM head");
                   for (const Row& row : its.all)
                       if (its.latest.contains(row.sha256)) its.named(row);
               });
        QTest::newRow("a signature's byte")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (const Row* row : targets) {
                       const auto rows = its.raw.rows("SELECT n, value FROM signature WHERE" + row->is());
                       const auto& one = rows[its.random() % rows.size()];
                       its.raw.run("UPDATE signature SET value = ?1 WHERE n = " + one[0] + " AND" + row->is(),
                                   {flipped(one[1], its.random)});
                       its.named(*row);
                   }
               });
        QTest::newRow("its signature exchanged with another's") << Tamper(
            [](Tampering& its, const std::vector<const Row*>& targets) {
                for (const Row* row : targets) {
                    const Row* other = targets.back();
                    if (row == other) continue;
                    its.raw.run("UPDATE signature SET (header, value) = (SELECT header, value FROM signature"
                                " WHERE n = 0 AND" +
                                other->is() + ") WHERE n = 0 AND" + row->is());
                    its.named(*row);
                }
            });
        QTest::newRow("its first signature gone")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (const Row* row : targets) {
                       its.raw.run("DELETE FROM signature WHERE n = 0 AND" + row->is());
                       its.named(*row);
                   }
               });
        QTest::newRow("all its signatures gone")
            << Tamper([](Tampering& its, const std::vector<const Row*>& targets) {
                   for (const Row* row : targets) {
                       its.raw.run("DELETE FROM signature WHERE" + row->is());
                       its.named(*row);
                   }
               });
        QTest::newRow("a signature's header") << Tamper(
            [](Tampering& its, const std::vector<const Row*>& targets) {
                for (std::size_t i = 0; i < 3; ++i) {
                    const auto of = its.raw.rows(
                        "SELECT id, text FROM header JOIN signature ON header.id = header WHERE n = 0 AND" +
                        targets[i]->is())[0];
                    std::string text = of[1];
                    char& letter = text[its.random() % text.size()];
                    letter = letter == 'A' ? 'B' : 'A';
                    its.raw.run("UPDATE header SET text = CAST(?1 AS TEXT) WHERE id = " + of[0], {text});
                    for (const auto& row :
                         its.raw.rows("SELECT DISTINCT sha256 FROM record JOIN signature ON record = key"
                                      " WHERE header = " +
                                      of[0]))
                        its.mustBeNamed.insert(hexOf(row[0]));
                }
            });
        QTest::newRow("a dictionary gone") << Tamper([](Tampering& its, const std::vector<const Row*>&) {
            its.raw.run("DELETE FROM dictionary WHERE id = 1");
            for (const Row& row : its.all)
                if (row.dictionary == "1") its.named(row);
        });
    }
    void whatIsDoneToARecordIsNamed() {
        QFETCH(Tamper, tamper);
        std::mt19937_64 random(20260620);
        const std::string file = folder.filePath("tampered.sqlite").toStdString();
        std::filesystem::copy_file(whole(), file, std::filesystem::copy_options::overwrite_existing);
        std::set<std::string> mustBeNamed;
        {
            Raw raw(file);
            raw.run("BEGIN");
            Tampering its{raw, all, latest, random, {}};
            tamper(its, targets(random));
            raw.run("COMMIT");
            raw.run("PRAGMA wal_checkpoint(TRUNCATE)");
            mustBeNamed = std::move(its.mustBeNamed);
        }
        QVERIFY(!mustBeNamed.empty());
        const auto archive = Archive::open(file);
        QVERIFY2(archive, archive ? "" : toText(archive.error()).c_str());
        const auto checked = archive::verify(*archive);
        QVERIFY2(checked, checked ? "" : toText(checked.error()).c_str());
        std::set<std::string> named;
        for (const archive::Broken& one : checked->broken) {
            named.insert(one.sha256);
            QVERIFY(!one.error.what.empty());
        }
        for (const file::Hole& one : checked->holes)
            named.insert(one.sha256);
        std::vector<std::string> unnoticed;
        std::set_difference(mustBeNamed.begin(), mustBeNamed.end(), named.begin(), named.end(),
                            std::back_inserter(unnoticed));
        QVERIFY2(unnoticed.empty(),
                 (std::to_string(unnoticed.size()) + " of " + std::to_string(mustBeNamed.size()) +
                  " not named: " + (unnoticed.empty() ? "" : unnoticed.front()))
                     .c_str());
        // Nobody else is blamed than those that stand next to them.
        QVERIFY2(named.size() <= 3 * mustBeNamed.size(), std::to_string(named.size()).c_str());
    }

    /// What lists and searches show is kept beside the records; only `contents` compares all of it.
    void whatIsKeptBesideIsCompared_data() {
        QTest::addColumn<QString>("set");
        QTest::newRow("conclusion")
            << "conclusion = CASE conclusion WHEN 'fit' THEN 'not fit' ELSE 'fit' END";
        QTest::newRow("kind") << "kind = CASE kind WHEN 'reading' THEN 'trust' ELSE 'reading' END";
        QTest::newRow("findings") << "findings = findings + 1";
        QTest::newRow("signer") << "signer = CASE signer WHEN 1 THEN 2 ELSE 1 END";
        QTest::newRow("what it tells")
            << "told = CAST(replace(CAST(told AS TEXT), 'INVENTED', 'PRETENDS') AS BLOB)";
    }
    void whatIsKeptBesideIsCompared() {
        QFETCH(QString, set);
        const std::string file = folder.filePath("beside.sqlite").toStdString();
        if (!std::filesystem::exists(file)) {
            fleet::Plan plan;
            plan.aircraft = 1;
            plan.years = 1;
            plan.records = 60;
            auto archive = Archive::open(file);
            QVERIFY(archive);
            test::keepAll(*archive, test::fleetRecords(plan));
        }
        const std::string changed = folder.filePath("changed.sqlite").toStdString();
        std::filesystem::copy_file(file, changed, std::filesystem::copy_options::overwrite_existing);
        const auto checked = [&] {
            const auto archive = Archive::open(changed);
            return archive ? archive::verify(*archive, {"", true, {}}).value() : archive::Verification();
        };
        QCOMPARE(checked().records, 60U);
        QVERIFY(checked().broken.empty());
        std::string sha256;
        {
            Raw raw(changed);
            const auto rows = raw.rows("SELECT key, sha256 FROM record ORDER BY key LIMIT 1 OFFSET 20");
            raw.run("UPDATE page SET " + set.toStdString() + " WHERE record = " + rows[0][0]);
            sha256 = hexOf(rows[0][1]);
        }
        const auto found = checked();
        QVERIFY(std::any_of(found.broken.begin(), found.broken.end(),
                            [&](const archive::Broken& one) { return one.sha256 == sha256; }));
    }

private:
    [[nodiscard]] std::string whole() const { return folder.filePath("whole.sqlite").toStdString(); }

    /// Some at random, of different times, none of which names another.
    [[nodiscard]] std::vector<const Row*> targets(std::mt19937_64& random) const {
        std::vector<const Row*> list;
        std::set<std::string> taken;
        while (list.size() < targetsInCase) {
            const Row& row = all[random() % all.size()];
            bool isFree = !taken.contains(row.sha256);
            for (const std::string& next : row.namedBy)
                isFree = isFree && !taken.contains(next);
            for (std::size_t at = 0; at < row.previous.size(); at += 32)
                isFree = isFree && !taken.contains(row.previous.substr(at, 32));
            if (!isFree) continue;
            taken.insert(row.sha256);
            list.push_back(&row);
        }
        return list;
    }

    QTemporaryDir folder;
    std::vector<Row> all;
    std::set<std::string> latest;
};

QTEST_APPLESS_MAIN(TestArchiveVerify)
#include "tst_archive_verify.moc"
