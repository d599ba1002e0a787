// An airframe's own texts in the language of the screens, and the log as written.
#include "house.hpp"

#include "airframe/read.hpp"
#include "base/files.hpp"
#include "base/parse.hpp"
#include "model/watch_view.hpp"
#include "record/record.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>

namespace ambit::test {

namespace {

const char* const file = AMBIT_ROOT "/demo-aircraft/helicopter/airframe.json";

/// German as the file has it: never written down here a second time.
QString german(const std::string& written) {
    static const Json all = Json::parse(readFile(file).value());
    return QString::fromStdString(all.at("translations").at("de").at(written).get<std::string>());
}

const airframe::Airframe& written() {
    static const airframe::Airframe airframe = airframe::readFrom(file).value();
    return airframe;
}

/// What the machine and the walk say by themselves, without the words for what Ambit does.
struct Seen {
    std::set<QString> sound, unsound, why, cautions, names, stands, owed, how;

    void look(view::RoundView& round) {
        names.insert(round.cardTitle());
        if (round.cardKind() == QStringLiteral("settle")) {
            sound.insert(round.sound());
            unsound.insert(round.unsound());
            why.insert(round.why());
        }
        if (round.cardKind() == QStringLiteral("set")) how.insert(round.cardHow());
        for (const QString& caution : round.cautions())
            cautions.insert(caution);
        stands.insert({round.standName(), round.targetStandName()});
        for (int i = 0; i < round.owed()->count(); ++i)
            owed.insert(round.owed()->get(i).value(QStringLiteral("owedText")).toString());
        for (int i = 0; i < round.here()->count(); ++i)
            names.insert(round.here()->get(i).value(QStringLiteral("name")).toString());
    }
};

std::string logOf(const House& house) {
    std::string log;
    for (const auto& event : house.app->round()->openRound().events())
        log += round::toJson(event).dump() + '\n';
    return log;
}

} // namespace

class TestViewAirframeWords : public QObject {
    Q_OBJECT

private slots:
    /// What core says, the machine's names in it, and figures with a comma; typed with one, too.
    void whatIsRefusedIsSaidInGerman() {
        House house;
        house.app->setLanguage(QStringLiteral("de"));
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("oil-level")));
        view::RoundView& round = *house.app->round();
        const auto events = round.openRound().events().size();
        QVERIFY(!round.settleSound(QStringLiteral("2,5")));
        QCOMPARE(house.app->problem(),
                 QStringLiteral(
                     "2,5 qt liegt außerhalb des Grenzwerts (4,0 bis 6,0 qt): Das ist nicht in Ordnung. Noch "
                     "einmal messen oder als Befund erledigen."));
        QVERIFY(!round.settleSound(QStringLiteral("2.5.1")));
        QVERIFY2(house.app->problem().startsWith(QStringLiteral("Das ist keine Dezimalzahl. (2.5.1)")),
                 qPrintable(house.app->problem()));
        QVERIFY(!round.conclude(true, {}));
        QVERIFY2(house.app->problem().startsWith(
                     QStringLiteral("Der Rundgang lässt sich nicht als flugbereit abschließen: ")),
                 qPrintable(house.app->problem()));
        bool named = false;
        for (const QString& one : round.against(false))
            named = named || one == QStringLiteral("„%1“ ist nicht erledigt.")
                                        .arg(german(written().point("oil-level")->name));
        QVERIFY(named);
        QCOMPARE(round.openRound().events().size(), events);
        QVERIFY(round.settleSound(QStringLiteral("4,5")));
        const auto& last = std::get<round::Settled>(round.openRound().events().back().what);
        QCOMPARE(last.value, std::optional<std::string>("4.5")); // the record's form
        house.app->setLanguage(QStringLiteral("en"));
        const QStringList english = round.against(false);
        QVERIFY(std::all_of(english.begin(), english.end(), [](const QString& one) {
            return one.startsWith(QStringLiteral("“")) || one.startsWith(QStringLiteral("Something "));
        }));
    }
    /// Why the order is another one: English in the log, German on the screen.
    void whyTheOrderChangedIsSaidInGerman() {
        House house;
        house.app->setLanguage(QStringLiteral("de"));
        QVERIFY(house.begin());
        view::RoundView& round = *house.app->round();
        QVERIFY(round.blockStand(round.targetStandId(), QStringLiteral("Nass.")));
        const auto* planned = std::get_if<round::Planned>(&round.openRound().events().back().what);
        QVERIFY(planned != nullptr && planned->why.find("can't be used") != std::string::npos);
        QVERIFY2(round.orderText().contains(QStringLiteral("ist nicht nutzbar")),
                 qPrintable(round.orderText()));
    }
    void theCardIsGerman() {
        House house;
        house.app->setLanguage(QStringLiteral("de"));
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("oil-level")));
        const view::RoundView& round = *house.app->round();
        const airframe::Point& oil = *written().point("oil-level");
        QCOMPARE(round.sound(), german(oil.sound));
        QCOMPARE(round.unsound(), german(oil.unsound));
        QCOMPARE(round.why(), german(oil.why));
        QCOMPARE(round.quantity(), german(oil.limit->quantity));
        QCOMPARE(round.unit(), QStringLiteral("qt"));
        QCOMPARE(round.standName(), german(written().stand(round.standId().toStdString())->name));
        QVERIFY(round.cardTitle().contains(german(oil.name)));
        QVERIFY(round.cautions().contains(german(oil.cautions.front())));
        QCOMPARE(round.walkName(), german("Before the first flight"));
        QCOMPARE(round.notice(), german(written().notice));
        QCOMPARE(round.generalCautions().front(), german(written().cautions.front()));
    }

    /// Every card of the walk: nothing that the file translates is shown as written.
    void nothingOfTheWalkStaysEnglish() {
        House house;
        house.app->setLanguage(QStringLiteral("de"));
        QVERIFY(house.begin());
        view::RoundView& round = *house.app->round();
        Seen seen;
        while (round.cardKind() != QStringLiteral("done")) {
            seen.look(round);
            QVERIFY(house.touchCard());
        }
        QVERIFY2(seen.sound.size() > 60 && seen.stands.size() > 10 && seen.owed.size() >= 8 &&
                     !seen.how.empty(),
                 qPrintable(QStringLiteral("%1 %2 %3 %4")
                                .arg(seen.sound.size())
                                .arg(seen.stands.size())
                                .arg(seen.owed.size())
                                .arg(seen.how.size())));
        const Json all = Json::parse(readFile(file).value()).at("translations").at("de");
        for (const auto* texts : {&seen.sound, &seen.unsound, &seen.why, &seen.cautions, &seen.names,
                                  &seen.stands, &seen.owed, &seen.how})
            for (const QString& text : *texts)
                QVERIFY2(!all.contains(text.toStdString()) ||
                             all.at(text.toStdString()) == text.toStdString(),
                         qPrintable(text));
    }

    void whatIsSaidIsGerman() {
        House house;
        house.app->setLanguage(QStringLiteral("de"));
        house.app->habits()->setAloud(true);
        QVERIFY(house.begin());
        house.spoken.clear();
        QVERIFY(house.walkTo(QStringLiteral("oil-level")));
        QTRY_VERIFY(!house.spoken.isEmpty());
        QVERIFY2(house.spoken.last().contains(german(written().point("oil-level")->sound)),
                 qPrintable(house.spoken.last()));
        house.app->habits()->setAloud(false);
    }

    /// The same walk in two languages: the same log, byte for byte, and a record that says the same.
    void theLogIsAsWritten() {
        const auto walk = [](const QString& language, std::string& log, std::string& content) {
            House house;
            house.app->setLanguage(language);
            QVERIFY(house.begin());
            QVERIFY(house.walkTo(QStringLiteral("oil-level")));
            QVERIFY(house.app->round()->settleFinding(QStringLiteral("Oil too low"), true, {},
                                                      QStringLiteral("3")));
            QVERIFY(house.app->round()->blockStand(QStringLiteral("right-upper"), QStringLiteral("wet")));
            QVERIFY(house.app->round()->freeStand(QStringLiteral("right-upper")));
            QVERIFY(house.walkTo({}));
            QVERIFY(house.app->round()->conclude(false, QStringLiteral("Oil")));
            log = logOf(house);
            QVERIFY(house.app->signing()->newKey(QStringLiteral("Robin Example"),
                                                 QStringLiteral("a good passphrase")));
            QVERIFY(house.app->signing()->sign(QStringLiteral("a good passphrase")));
            const auto records = house.archive->records("OX-DEMO").value();
            Json json = Json::parse(house.archive->recordJson(records.front().sha256).value()).at("content");
            content = json.at("points").dump();
            QVERIFY(content.find("Engine oil") != std::string::npos);
        };
        std::string english, german, englishRecord, germanRecord;
        walk(QStringLiteral("en"), english, englishRecord);
        walk(QStringLiteral("de"), german, germanRecord);
        static const std::regex id("[0-9a-f]{32}");
        QVERIFY(english.size() > 5000);
        QCOMPARE(std::regex_replace(german, id, "-"), std::regex_replace(english, id, "-"));
        QCOMPARE(germanRecord, englishRecord);
    }

    void aWordlessFindingGetsANoteAsWritten() {
        House house;
        house.app->setLanguage(QStringLiteral("de"));
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("boom.left")));
        view::RoundView& round = *house.app->round();
        QVERIFY(round.settleByKey(round::Outcome::finding));
        QVERIFY(house.walkTo(QStringLiteral("last-look"))); // from here it can't be settled any more
        QCOMPARE(house.app->hands()->unworded().front().toMap().value("name").toString(),
                 QStringLiteral("Heckausleger, links"));
        QVERIFY(house.app->hands()->putIntoWords(QStringLiteral("boom.left"), QStringLiteral("Delle")));
        const auto& last = round.openRound().events().back();
        const auto* note = std::get_if<round::Note>(&last.what);
        QVERIFY(note != nullptr);
        QCOMPARE(note->words, written().point("boom.left")->name + ": Delle");
    }

    /// In hand, on the figure, in the lists: all of it changes, and nothing of the round.
    void anotherLanguageInTheMiddle() {
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("oil-level")));
        view::RoundView& round = *house.app->round();
        const std::string log = logOf(house);
        const QString english = round.sound();
        QSignalSpy here(round.here(), &QAbstractItemModel::dataChanged);
        QSignalSpy zones(round.figure()->zones(), &QAbstractItemModel::dataChanged);
        QSignalSpy words(&round, &view::RoundView::wordsChanged);
        house.app->setLanguage(QStringLiteral("de"));
        QVERIFY(here.count() > 0 && zones.count() > 0 && words.count() > 0);
        QCOMPARE(round.sound(), german(english.toStdString()));
        QCOMPARE(round.figure()->zones()->get(0).value("name").toString(),
                 german(written().zones.front().name));
        QCOMPARE(house.app->aircraft()->get(0).value("airframeName").toString(), german(written().name));
        QCOMPARE(house.app->walks(house.registration).front().toMap().value("name").toString(),
                 german("Before the first flight"));
        QCOMPARE(house.app->counters(house.registration).front().toMap().value("name").toString(),
                 german("Airframe hours"));
        house.app->setLanguage(QStringLiteral("en"));
        QCOMPARE(round.sound(), english);
        QCOMPARE(round.figure()->zones()->get(0).value("name").toString().toStdString(),
                 written().zones.front().name);
        QCOMPARE(logOf(house), log);
    }

    /// A round walked again, and two laid side by side, are told in the language spoken now.
    void whatIsOpenChangesToo() {
        House house;
        QVERIFY(house.wholeRound());
        house.app->leaveRound();
        house.passMinutes(60);
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("boom.left")));
        QVERIFY(house.app->round()->settleFinding(QStringLiteral("Dent"), true, {}, {}));
        QVERIFY(house.walkTo({}));
        QVERIFY(house.app->round()->conclude(false, QStringLiteral("Dent")));
        QVERIFY(house.app->signing()->sign(QStringLiteral("a good passphrase")));
        const auto records = house.archive->records("OX-DEMO").value();
        QCOMPARE(records.size(), std::size_t{2});
        const QString newer = QString::fromStdString(records.front().sha256);
        const QString older = QString::fromStdString(records.back().sha256);
        QVERIFY(house.app->beside()->lay(older, newer));
        const auto differing = [&] {
            const QVariantList all = house.app->beside()->property("differing").toList();
            return all.size() == 1 ? all.front().toMap().value("name").toString() : QString();
        };
        QCOMPARE(differing(), QStringLiteral("Tail boom, left"));
        QVERIFY(house.app->watch()->showReplay(newer));
        view::FollowedRound& again = *house.app->watch()->replay();
        QCOMPARE(again.walkName(), QStringLiteral("Before the first flight"));
        const auto names = [&] {
            QStringList all;
            for (const QVariant& point : again.points())
                all << point.toMap().value("name").toString();
            return all;
        };
        QVERIFY(names().contains(QStringLiteral("Tail boom, left")));
        QSignalSpy told(&again, &view::FollowedRound::wordsChanged);
        house.app->setLanguage(QStringLiteral("de"));
        QCOMPARE(told.count(), 1);
        QCOMPARE(differing(), QStringLiteral("Heckausleger, links"));
        QCOMPARE(again.walkName(), german("Before the first flight"));
        QVERIFY(names().contains(QStringLiteral("Heckausleger, links")));
        QVERIFY(!names().contains(QStringLiteral("Tail boom, left")));
        house.app->setLanguage(QStringLiteral("en"));
        QVERIFY(names().contains(QStringLiteral("Tail boom, left")));
    }

    /// Names that a record has as written, in the file and in the record's own view.
    void theFileIsGerman() {
        House house;
        house.app->setLanguage(QStringLiteral("de"));
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("boom.left")));
        QVERIFY(house.app->round()->settleFinding(QStringLiteral("Delle"), true, {}, {}));
        QVERIFY(house.walkTo({}));
        QVERIFY(house.app->round()->conclude(false, QStringLiteral("Delle")));
        QVERIFY(house.app->signing()->newKey(QStringLiteral("Robin Example"),
                                             QStringLiteral("a good passphrase")));
        QVERIFY(house.app->signing()->sign(QStringLiteral("a good passphrase")));
        const auto open = [&] { return house.app->aircraftFile()->property("open").toList(); };
        QTRY_COMPARE(open().size(), 1);
        QCOMPARE(open().front().toMap().value("name").toString(), QStringLiteral("Heckausleger, links"));
        QVERIFY(open().front().toMap().value("where").toString().startsWith(german("Tail boom, front")));
        const auto nameOfDue = [&] {
            for (const QVariant& one : house.app->aircraftFile()->property("due").toList())
                if (one.toMap().value("id") == QStringLiteral("annual"))
                    return one.toMap().value("name").toString();
            return QString();
        };
        QCOMPARE(nameOfDue(), german("Annual inspection"));
        const auto against = [&] { return house.app->aircraftFile()->property("against").toStringList(); };
        QVERIFY2(!against().isEmpty() &&
                     against().front().startsWith(QStringLiteral("„Heckausleger, links“, gefunden am ")),
                 qPrintable(against().join(QLatin1Char('|'))));
        const auto records = house.archive->records("OX-DEMO").value();
        QVERIFY(house.app->file()->open(QString::fromStdString(records.front().sha256)));
        const auto found = [&] {
            const QVariantList all = house.app->file()->record()->property("findings").toList();
            return all.isEmpty() ? QString() : all.front().toMap().value("name").toString();
        };
        QCOMPARE(found(), QStringLiteral("Heckausleger, links"));
        house.app->setLanguage(QStringLiteral("en"));
        QCOMPARE(found(), QStringLiteral("Tail boom, left"));
        QTRY_COMPARE(open().front().toMap().value("name").toString(), QStringLiteral("Tail boom, left"));
        QCOMPARE(nameOfDue(), QStringLiteral("Annual inspection"));
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewAirframeWords)
#include "tst_view_airframe_words.moc"
