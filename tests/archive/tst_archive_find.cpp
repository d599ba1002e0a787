// Searches and histories against a reference that reads everything: Archive::told, cut into words here by the
// rules that find.hpp states, without SQLite's full-text search.
#include "archive/aircraft_file.hpp"
#include "archive/find.hpp"
#include "fleets.hpp"

#include <QString>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <map>
#include <random>
#include <set>

using namespace ambit;
using archive::Archive;
using archive::Wanted;

namespace {

/// Words of a text: letters and digits of any script without their accents, small (SQLite's documentation of
/// unicode61 with remove_diacritics 2), by Qt's tables.
QStringList wordsIn(const std::string& text) {
    QStringList words;
    QString word;
    for (const QChar c : QString::fromStdString(text).normalized(QString::NormalizationForm_D)) {
        if (c.category() == QChar::Mark_NonSpacing) continue;
        if (c.isLetterOrNumber()) {
            word += c.toLower();
        } else if (!word.isEmpty()) {
            words << word;
            word.clear();
        }
    }
    if (!word.isEmpty()) words << word;
    return words;
}

/// Do these words stand in the text one after another, the last one perhaps only begun?
bool stands(const QStringList& row, bool begun, const QStringList& text) {
    for (qsizetype at = 0; at + row.size() <= text.size(); ++at) {
        bool same = true;
        for (qsizetype i = 0; i < row.size(); ++i) {
            const bool last = i + 1 == row.size();
            same = same && (begun && last ? text[at + i].startsWith(row[i]) : text[at + i] == row[i]);
        }
        if (same) return true;
    }
    return false;
}

struct Known {
    file::Told told;
    std::vector<QStringList> text, part, person, jasc; ///< each column's words, each thing written by itself
    std::set<std::string> states;                      ///< of discrepancies that it brought
};

/// What a record is found by, as find.hpp says of each of Wanted's fields.
Known known(const file::Told& told) {
    Known one{told, {}, {}, {}, {}, {}};
    const auto add = [](std::vector<QStringList>& to, const std::string& text) {
        to.push_back(wordsIn(text));
    };
    add(one.person, told.signer.name);
    if (const file::RoundTold* round = told.round()) {
        add(one.text, round->reasons);
        for (const file::Seen& seen : round->seen) {
            if (seen.outcome == round::Outcome::sound) continue;
            add(one.text, seen.words);
            add(one.text, seen.basis);
            add(one.text, round->point(seen.point)->name);
            if (seen.outcome == round::Outcome::finding) add(one.jasc, round->point(seen.point)->jasc);
        }
        return one;
    }
    const record::Entry& entry = *told.entry();
    if (const auto* it = std::get_if<record::Assessment>(&entry)) {
        add(one.text, it->words);
        if (it->deferral) {
            const record::Deferral& deferral = *it->deferral;
            for (const auto& text : {deferral.basis, deferral.reference, deferral.placard, deferral.limits})
                add(one.text, text);
            add(one.person, deferral.determinedBy.name);
        }
    } else if (const auto* work = std::get_if<record::Rectification>(&entry)) {
        add(one.text, work->description);
        for (const std::string& inspection : work->inspections)
            add(one.text, inspection);
        add(one.person, work->performedBy);
    } else if (const auto* change = std::get_if<record::PartChange>(&entry)) {
        add(one.text, change->description);
        add(one.part, change->position);
        for (const auto& part : {change->off, change->on})
            if (part)
                for (const auto& text : {part->name, part->number, part->serial})
                    add(one.part, text);
    } else if (const auto* handed = std::get_if<record::HandOver>(&entry)) {
        add(one.person, handed->to);
        add(one.text, handed->words);
    } else if (const auto* trust = std::get_if<record::Trust>(&entry)) {
        add(one.person, trust->name);
    } else if (const auto* revoked = std::get_if<record::Revocation>(&entry)) {
        add(one.text, revoked->why);
    } else if (const auto* removal = std::get_if<record::Removal>(&entry)) {
        add(one.text, removal->basis);
    } else if (const auto* renewal = std::get_if<record::Renewal>(&entry)) {
        add(one.text, renewal->words);
    }
    return one;
}

bool anyStands(const QString& typed, const std::vector<std::vector<QStringList>>& columns) {
    // Terms: words, or what stands between quotes; only a last one outside quotes may be begun.
    const QStringList pieces = typed.split('"');
    for (qsizetype i = 0; i < pieces.size(); ++i) {
        const bool quoted = i % 2 == 1;
        const QStringList terms = quoted ? QStringList{pieces[i]} : pieces[i].split(' ', Qt::SkipEmptyParts);
        for (qsizetype t = 0; t < terms.size(); ++t) {
            const bool last = i + 1 == pieces.size() && t + 1 == terms.size() && !pieces[i].endsWith(' ');
            const QStringList row = wordsIn(terms[t].toStdString());
            if (row.isEmpty()) continue;
            bool found = false;
            for (const auto& column : columns)
                for (const QStringList& text : column)
                    found = found || stands(row, !quoted && last, text);
            if (!found) return false;
        }
    }
    return true;
}

bool fits(const Known& one, const Wanted& wanted) {
    const auto typed = [](const std::string& text) { return QString::fromStdString(text); };
    return (wanted.registration.empty() || one.told.registration == wanted.registration) &&
           (wanted.kind.empty() || one.told.kind() == wanted.kind) &&
           (!wanted.from || one.told.at >= *wanted.from) &&
           (!wanted.before || one.told.at < *wanted.before) &&
           anyStands(typed(wanted.words), {one.text, one.part}) &&
           anyStands(typed(wanted.part), {one.part}) && anyStands(typed(wanted.person), {one.person}) &&
           anyStands(typed(wanted.jasc), {one.jasc}) &&
           (!wanted.state || one.states.contains(file::toText(*wanted.state)));
}

std::string described(const Wanted& wanted) {
    return "words “" + wanted.words + "” part “" + wanted.part + "” person “" + wanted.person + "” jasc “" +
           wanted.jasc + "” kind “" + wanted.kind + "” of “" + wanted.registration + "” " +
           (wanted.state ? file::toText(*wanted.state) : "");
}

} // namespace

class TestArchiveFind : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        QVERIFY(folder.isValid());
        auto opened = Archive::open(folder.filePath("fleet.sqlite").toStdString());
        QVERIFY(opened);
        archive.emplace(std::move(*opened));
        fleet::Plan plan;
        plan.seed = 7;
        plan.aircraft = 4;
        plan.years = 2;
        plan.records = 500;
        test::keepAll(*archive, test::fleetRecords(plan));
        registrations = archive->files().value();
        for (const std::string& registration : registrations) {
            const auto told = archive->told(registration).value();
            const file::AircraftFile file = file::fold(told);
            for (const file::Told& one : told) {
                all.push_back(known(one));
                for (const file::Discrepancy& found : file.discrepancies)
                    if (found.id.record == one.sha256) all.back().states.insert(file::toText(found.state));
                for (const auto* column : {&all.back().text, &all.back().part})
                    for (const QStringList& words : *column)
                        for (const QString& word : words)
                            vocabulary.insert(word);
            }
        }
        QCOMPARE(all.size(), 500U);
        QVERIFY(vocabulary.size() > 200);
    }

    void wordsAreThoseOfTheReference_data() {
        QTest::addColumn<QString>("words");
        for (const char* words : {"replaced",
                                  "oil lev",
                                  "\"oil level\"",
                                  "level oil",
                                  "\"level oil\"",
                                  "OIL",
                                  "öil",
                                  "a",
                                  "-",
                                  "\"",
                                  "oil\"",
                                  "AND",
                                  "NOT oil",
                                  "oil*",
                                  "text:oil",
                                  "(oil",
                                  "nosuchword",
                                  "  ",
                                  "NEAR",
                                  "91.213(d)",
                                  "^oil"})
            QTest::newRow(words) << QString::fromUtf8(words);
    }
    void wordsAreThoseOfTheReference() {
        QFETCH(QString, words);
        Wanted wanted;
        wanted.words = words.toStdString();
        wanted.most = 10000;
        compare(wanted);
    }

    // Quotes as phones type them.
    void curlyQuotesAreQuotes() {
        Wanted straight, curly;
        straight.words = "\"oil level\"";
        curly.words = "“oil level”";
        QCOMPARE(found(curly), found(straight));
    }

    void anythingTogetherIsThatOfTheReference() {
        std::mt19937_64 random(20260620);
        int notEmpty = 0;
        for (int run = 0; run < 400; ++run) {
            const Wanted wanted = anything(random);
            compare(wanted);
            notEmpty += found(wanted).empty() ? 0 : 1;
        }
        QVERIFY2(notEmpty > 100, std::to_string(notEmpty).c_str());
    }

    void pagesGiveEachOnceInOrder() {
        std::mt19937_64 random(5);
        for (int run = 0; run < 30; ++run) {
            Wanted wanted = anything(random);
            wanted.most = 10000;
            const auto whole = found(wanted);
            wanted.most = 1 + random() % 7;
            std::vector<std::string> paged;
            for (;;) {
                const auto page = found(wanted);
                if (page.empty()) break;
                QVERIFY(page.size() <= wanted.most);
                paged.insert(paged.end(), page.begin(), page.end());
                wanted.after = page.back();
            }
            QVERIFY2(paged == whole, described(wanted).c_str());
        }
    }

    void goingOnAfterNothingIsRefused() {
        Wanted wanted;
        wanted.after = std::string(64, 'a');
        QCOMPARE(archive::find(*archive, wanted).error().code, ErrorCode::notFound);
    }

    void hitsSayWhatTheirRecordsTell() {
        Wanted wanted;
        wanted.most = 10000;
        const auto hits = archive::find(*archive, wanted).value();
        QCOMPARE(hits.size(), all.size());
        for (const archive::Hit& hit : hits) {
            const auto told = archive->toldBy(hit.info.sha256).value();
            QCOMPARE(hit.info.registration, told.registration);
            QCOMPARE(hit.info.kind, std::string(told.kind()));
            QCOMPARE(hit.info.signer, told.signer.name);
            QCOMPARE(hit.info.findings, told.findings());
            QCOMPARE(hit.gloss, file::gloss(told));
        }
    }

    /// Every point of every aircraft: what each round and each word on it says, the newest first.
    void historiesAreThoseOfTheReference() {
        int sightings = 0;
        for (const std::string& registration : registrations) {
            std::set<std::string> points{"no-such-point"};
            for (const Known& one : all)
                if (one.told.round() != nullptr && one.told.registration == registration)
                    for (const file::PointName& point : one.told.round()->walked->points)
                        points.insert(point.id);
            for (const std::string& point : points) {
                const auto expected = reference(registration, point);
                const auto history = archive::history(*archive, registration, point, 10000);
                QVERIFY(history);
                std::vector<std::string> got;
                for (const archive::Sighting& one : *history)
                    got.push_back(one.record + ' ' + one.what + ' ' + one.value);
                QVERIFY2(got == expected, point.c_str());
                sightings += static_cast<int>(got.size());
            }
            // In pages.
            const auto whole = archive::history(*archive, registration, *points.begin(), 10000).value();
            std::vector<std::string> paged;
            std::string after;
            for (;;) {
                const auto page = archive::history(*archive, registration, *points.begin(), 3, after).value();
                if (page.empty()) break;
                for (const archive::Sighting& one : page)
                    paged.push_back(one.record);
                after = page.back().record;
            }
            QCOMPARE(paged.size(), whole.size());
            for (std::size_t i = 0; i < paged.size(); ++i)
                QCOMPARE(paged[i], whole[i].record);
        }
        QVERIFY(sightings > 1000);
    }

private:
    [[nodiscard]] std::vector<std::string> found(const Wanted& wanted) const {
        std::vector<std::string> identities;
        const auto hits = archive::find(*archive, wanted);
        if (!hits) qFatal("%s", toText(hits.error()).c_str());
        for (const archive::Hit& hit : *hits)
            identities.push_back(hit.info.sha256);
        return identities;
    }

    void compare(Wanted wanted) const {
        wanted.most = 10000;
        std::set<std::string> expected;
        for (const Known& one : all)
            if (fits(one, wanted)) expected.insert(one.told.sha256);
        const auto got = found(wanted);
        QVERIFY2(std::set<std::string>(got.begin(), got.end()) == expected,
                 (described(wanted) + ": " + std::to_string(got.size()) + ", not " +
                  std::to_string(expected.size()))
                     .c_str());
        QCOMPARE(got.size(), expected.size());
        for (std::size_t i = 1; i < got.size(); ++i)
            QVERIFY(archive->toldBy(got[i - 1])->at >= archive->toldBy(got[i])->at); // the newest first
    }

    /// Something a person may ask for.
    [[nodiscard]] Wanted anything(std::mt19937_64& random) const {
        const auto below = [&](std::size_t count) { return random() % count; };
        const file::Told& some = all[below(all.size())].told;
        const auto word = [&] {
            return std::next(vocabulary.begin(), static_cast<std::ptrdiff_t>(below(vocabulary.size())))
                ->toStdString();
        };
        Wanted wanted;
        if (below(3) == 0) wanted.registration = registrations[below(registrations.size())];
        if (below(2) == 0) wanted.words = word();
        if (below(2) == 0)
            wanted.words =
                QString::fromStdString(wanted.words).left(static_cast<int>(1 + below(4))).toStdString();
        if (below(6) == 0) wanted.words += ' ' + word();
        if (below(6) == 0) wanted.part = below(2) == 0 ? "INVENTED" : "be";
        if (below(5) == 0) wanted.person = some.signer.name.substr(0, 1 + below(some.signer.name.size()));
        if (below(6) == 0) wanted.jasc = std::to_string(20 + below(60));
        if (below(4) == 0) wanted.kind = some.kind();
        if (below(4) == 0) wanted.from = some.at;
        if (below(4) == 0) wanted.before = all[below(all.size())].told.at;
        if (below(4) == 0) wanted.state = static_cast<file::Discrepancy::State>(below(5));
        return wanted;
    }

    [[nodiscard]] std::vector<std::string> reference(const std::string& registration,
                                                     const std::string& point) const {
        std::vector<std::string> list; // told gives the oldest first
        for (const Known& one : all) {
            if (one.told.registration != registration) continue;
            const std::string& sha256 = one.told.sha256;
            if (const file::RoundTold* round = one.told.round()) {
                if (round->point(point) == nullptr) continue;
                const file::Seen* seen = round->seenAt(point);
                list.push_back(sha256 + ' ' +
                               round::toText(seen == nullptr ? round::Outcome::sound : seen->outcome) + ' ' +
                               (seen == nullptr ? "" : seen->value));
                continue;
            }
            bool about = false;
            if (const auto* assessment = std::get_if<record::Assessment>(one.told.entry()))
                about = assessment->of.point == point;
            if (const auto* work = std::get_if<record::Rectification>(one.told.entry()))
                for (const record::DiscrepancyId& of : work->of)
                    about = about || of.point == point;
            if (about) list.push_back(sha256 + ' ' + one.told.kind() + ' ');
        }
        std::reverse(list.begin(), list.end());
        return list;
    }

    QTemporaryDir folder;
    std::optional<Archive> archive;
    std::vector<std::string> registrations;
    std::vector<Known> all;
    std::set<QString> vocabulary;
};

QTEST_APPLESS_MAIN(TestArchiveFind)
#include "tst_archive_find.moc"
