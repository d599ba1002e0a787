// The catalogue says everything that the screens say, and the screens change to it and back.
#include "house.hpp"

#include "airframe/read.hpp"
#include "archive/import.hpp"
#include "base/files.hpp"
#include "model/file_words.hpp"
#include "model/language.hpp"
#include "model/length.hpp"
#include "model/sentence.hpp"
#include "model/story.hpp"
#include "model/words.hpp"

#include <QProcess>
#include <QRegularExpression>
#include <QSettings>
#include <QXmlStreamReader>
#include <QtTest>
#include <nlohmann/json.hpp>

namespace ambit::test {

namespace {

const QDir catalogues(QStringLiteral(AMBIT_ROOT "/qml/languages"));

/// Of every catalogue: "de", "fr".
QStringList codes() {
    QStringList found;
    for (const QString& file : catalogues.entryList({QStringLiteral("ambit_*.ts")}, QDir::Files, QDir::Name))
        found << file.section(QRegularExpression(QStringLiteral("[_.]")), 1, 1);
    return found;
}

void eachCatalogue() {
    QTest::addColumn<QString>("code");
    for (const QString& code : codes())
        QTest::newRow(qPrintable(code)) << code;
}

/// The screens' and core's of each language.
void eachFile() {
    QTest::addColumn<QString>("name");
    for (const QString& code : codes())
        for (const QString& of : {QStringLiteral("ambit_"), QStringLiteral("core_")})
            QTest::newRow(qPrintable(of + code)) << of + code;
}

QString fileOf(const QString& name) {
    return catalogues.filePath(name + QStringLiteral(".ts"));
}

bool isOfCore(const QString& name) {
    return name.startsWith(QStringLiteral("core"));
}

struct Message {
    QString source;
    QStringList translations; ///< two of a counted one
    QString type;             ///< "" is finished
    bool counted = false;
};

std::vector<Message> messages(const QString& name) {
    QFile file(fileOf(name));
    if (!file.open(QIODevice::ReadOnly)) qFatal("%s can't be read", qPrintable(file.fileName()));
    std::vector<Message> all;
    QXmlStreamReader xml(&file);
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == QStringLiteral("message"))
            all.push_back({xml.attributes().value(QStringLiteral("id")).toString(),
                           {},
                           {},
                           xml.attributes().hasAttribute(QStringLiteral("numerus"))});
        else if (xml.name() == QStringLiteral("source"))
            all.back().source += xml.readElementText(); // empty where the id is the text
        else if (xml.name() == QStringLiteral("numerusform"))
            all.back().translations << xml.readElementText();
        else if (xml.name() == QStringLiteral("translation")) {
            all.back().type = xml.attributes().value(QStringLiteral("type")).toString();
            if (!all.back().counted) all.back().translations << xml.readElementText();
        }
    }
    return all;
}

QStringList placeholders(const QString& words) {
    static const QRegularExpression one(QStringLiteral("%L?(\\d|n)"));
    QStringList found;
    for (auto all = one.globalMatch(words); all.hasNext();)
        found << all.next().captured();
    found.sort();
    return found;
}

/// What is said with the same words; else a text equal to its source is one left in English.
const QHash<QString, QStringList> same{
    {QStringLiteral("de"),
     {QStringLiteral("Ambit"), QStringLiteral("Pause"), QStringLiteral("Pilot"), QStringLiteral("Person"),
      QStringLiteral("Text %1 %"), QStringLiteral("Passphrase")}},
    {QStringLiteral("fr"),
     {QStringLiteral("Ambit"), QStringLiteral("Conclusion"), QStringLiteral("Minutes"),
      QStringLiteral("Pause"), QStringLiteral("Distance"), QStringLiteral("Photo"),
      QStringLiteral("Photo %1"), QStringLiteral("Photos"), QStringLiteral("Second"), QStringLiteral("point"),
      QStringLiteral("cycles"), QStringLiteral("%1 points"), QStringLiteral("%n points")}},
};

} // namespace

class TestViewLanguage : public QObject {
    Q_OBJECT

    static QString reviewText() { return QCoreApplication::translate("MoreSheet", "Review"); }
    static view::Services servicesOf(House& house) {
        return {*house.archive,
                house.folder.filePath(QStringLiteral("archive.sqlite")).toStdString(),
                [&house] { return house.clock; },
                {},
                {},
                house.folder.filePath(QStringLiteral("keys")).toStdString(),
                {}};
    }

private slots:
    void everyTextIsTranslated_data() { eachFile(); }
    void everyTextIsTranslated() {
        QFETCH(const QString, name);
        const QString code = name.section(QLatin1Char('_'), 1);
        const auto all = messages(name);
        QVERIFY2(all.size() > (isOfCore(name) ? 350U : 900U), qPrintable(QString::number(all.size())));
        static const QRegularExpression word(QStringLiteral("[A-Za-z]{5}"));
        for (const Message& one : all) {
            QVERIFY2(one.type.isEmpty(), qPrintable(one.type + ": " + one.source));
            QCOMPARE(one.translations.size(), one.counted ? 2 : 1);
            for (const QString& words : one.translations) {
                QVERIFY2(!words.trimmed().isEmpty(), qPrintable(one.source));
                QVERIFY2(words != one.source || same.value(code).contains(words) || !words.contains(word),
                         qPrintable(words));
                if (placeholders(words) != placeholders(one.source))
                    QFAIL(qPrintable("other placeholders: " + one.source + " | " + words));
                // What is put together from parts begins and ends as it does in English.
                QCOMPARE(words.front().isSpace(), one.source.front().isSpace());
                QCOMPARE(words.back().isSpace(), one.source.back().isSpace());
            }
        }
    }
    /// A mark of two parts never begins a line, and stands a little apart: French typography.
    void frenchMarksStandApart() {
        static const QRegularExpression close(QStringLiteral("[^\\x{202f}][:;!?»](?!\\S)|«[^\\x{202f}]"));
        qsizetype marks = 0;
        for (const QString& name : {QStringLiteral("ambit_fr"), QStringLiteral("core_fr")})
            for (const Message& one : messages(name))
                for (const QString& words : one.translations) {
                    QVERIFY2(!words.contains(close), qPrintable(words));
                    marks += words.count(QChar(0x202f));
                }
        QVERIFY2(marks > 100, qPrintable(QString::number(marks)));
    }
    /// If this fails, build the target `languages` and translate what is unfinished.
    void theCatalogueHasWhatTheSourcesSay_data() { eachFile(); }
    void theCatalogueHasWhatTheSourcesSay() {
        QFETCH(const QString, name);
        QTemporaryDir scratch;
        const QString copy = scratch.filePath(QFileInfo(fileOf(name)).fileName());
        QVERIFY(QFile::copy(fileOf(name), copy));
        QProcess lupdate;
        lupdate.setWorkingDirectory(QStringLiteral(AMBIT_ROOT "/qml"));
        lupdate.start(QStringLiteral(AMBIT_LUPDATE),
                      (isOfCore(name) ? QStringLiteral(AMBIT_OF_CORE) : QStringLiteral(AMBIT_OF_SCREENS))
                              .split(QLatin1Char(' '))
                          << QStringLiteral("-ts") << copy);
        QVERIFY(lupdate.waitForFinished(60'000));
        QVERIFY2(lupdate.exitCode() == 0, lupdate.readAllStandardError().constData());
        QFile before(fileOf(name)), after(copy);
        QVERIFY(before.open(QIODevice::ReadOnly) && after.open(QIODevice::ReadOnly));
        const auto was = before.readAll().split('\n'), is = after.readAll().split('\n');
        for (qsizetype i = 0; i < std::min(was.size(), is.size()); ++i)
            QVERIFY2(was.at(i) == is.at(i), is.at(i).constData());
        QCOMPARE(is.size(), was.size());
    }
    /// A catalogue that isn't listed in qml/CMakeLists.txt could not be chosen.
    void everyCatalogueCanBeChosen() {
        using view::Language;
        QCOMPARE(Language::all(), QStringList{QStringLiteral("en")} + codes());
        QCOMPARE(Language::nameOf(QStringLiteral("en")), QStringLiteral("English"));
        QCOMPARE(Language::nameOf(QStringLiteral("de")), QStringLiteral("Deutsch"));
        QCOMPARE(Language::nameOf(QStringLiteral("fr")), QStringLiteral("Français"));
    }
    void itIsThatOfTheDeviceUnlessChosen() {
        using view::Language;
        QCOMPARE(Language::firstOf({}), QStringLiteral("en"));
        QCOMPARE(Language::firstOf({QStringLiteral("de_AT")}), QStringLiteral("de"));
        QCOMPARE(
            Language::firstOf({QStringLiteral("tlh-001"), QStringLiteral("fr-CH"), QStringLiteral("de")}),
            QStringLiteral("fr"));
        QCOMPARE(Language::firstOf({QStringLiteral("tlh")}), QStringLiteral("en"));
        QCOMPARE(Language::firstOf({QStringLiteral("den")}), QStringLiteral("en")); // a language of its own

        House house;
        view::Services services = servicesOf(house);
        services.locales = QStringList{QStringLiteral("de-AT"), QStringLiteral("de")};
        QSettings kept(house.folder.filePath(QStringLiteral("settings.ini")), QSettings::IniFormat);
        services.settings = &kept;
        {
            view::App app(services);
            QCOMPARE(app.languageName(), QStringLiteral("Deutsch"));
            QCOMPARE(reviewText(), QStringLiteral("Durchsicht"));
            app.nextLanguage();
            QCOMPARE(app.language(), QStringLiteral("en"));
            QCOMPARE(reviewText(), QStringLiteral("Review"));
        }
        {
            view::App app(services);
            QCOMPARE(app.language(), QStringLiteral("en"));
            QStringList passed;
            for (app.nextLanguage(); !app.language().isEmpty(); app.nextLanguage()) {
                passed << app.language();
                QVERIFY2(reviewText() != QStringLiteral("Review"), qPrintable(app.language()));
            }
            QCOMPARE(passed, codes());
            QCOMPARE(reviewText(), QStringLiteral("Durchsicht"));
            app.setLanguage(QStringLiteral("tlh"));
            QCOMPARE(app.language(), QString());
        }
        kept.setValue(QStringLiteral("language"), QStringLiteral("tlh"));
        QCOMPARE(view::App(services).language(), QString());
        QCOMPARE(reviewText(), QStringLiteral("Review")); // nobody speaks
    }
    void aRoundInHandChangesAndNothingOfItIsLost_data() {
        QTest::addColumn<QString>("code");
        QTest::addColumn<QString>("onALadder");
        QTest::newRow("de") << QStringLiteral("de") << QStringLiteral("Auf einer Leiter");
        QTest::newRow("fr") << QStringLiteral("fr") << QStringLiteral("Sur une échelle");
    }
    void aRoundInHandChangesAndNothingOfItIsLost() {
        QFETCH(const QString, code);
        QFETCH(const QString, onALadder);
        House house;
        QVERIFY(house.begin());
        QVERIFY(house.walkTo(QStringLiteral("oil-level")));
        const view::RoundView& round = *house.app->round();
        const auto events = house.events();
        const QString point = round.pointId(), english = round.cardHow();
        QSignalSpy told(&round, &view::RoundView::cardChanged);
        house.app->setLanguage(code);
        QVERIFY(told.count() > 0);
        QCOMPARE(QCoreApplication::translate("Words", "On a ladder"), onALadder);
        QVERIFY2(round.cardHow() != english, qPrintable(english));
        house.app->setLanguage(QStringLiteral("en"));
        QCOMPARE(round.cardHow(), english);
        QCOMPARE(round.pointId(), point);
        QCOMPARE(house.events(), events);
    }
    /// The log has it in English: after a restart, and at whoever follows, nobody remembers how it was made.
    void whyTheOrderChangedIsSaidAfterARestart() {
        House house;
        QVERIFY(house.begin());
        house.app->setLanguage(QStringLiteral("de"));
        const QString stand = house.app->round()->targetStandId();
        QVERIFY(house.app->round()->blockStand(stand, QStringLiteral("Eis")));
        const QString said = house.app->round()->orderText();
        const round::Event planned = house.app->round()->openRound().events().back();
        QVERIFY(std::holds_alternative<round::Planned>(planned.what));
        const QString english = QString::fromStdString(std::get<round::Planned>(planned.what).why);
        QVERIFY2(english.contains(QStringLiteral("can't be used")), qPrintable(english));
        QVERIFY2(said.contains(QStringLiteral("ist nicht nutzbar")) && said != english, qPrintable(said));
        const QString round = house.app->round()->roundId();

        house.restart();
        house.app->setLanguage(QStringLiteral("de"));
        QVERIFY(house.app->resume(round));
        QCOMPARE(house.app->round()->orderText(), said);
        const auto sent = round::eventFrom(toJson(planned)); // as it comes to another device
        QVERIFY(sent);
        const auto& airframe = house.app->round()->openRound().airframe();
        QVERIFY2(view::sentence(sent->what, airframe).endsWith(said),
                 qPrintable(view::sentence(sent->what, airframe)));
        house.app->setLanguage(QStringLiteral("en"));
        QCOMPARE(house.app->round()->orderText(), english);
    }
    /// That the order stays is said anew, too.
    void thatTheOrderStaysChangesItsLanguage() {
        House house;
        QVERIFY(house.begin());
        house.app->setLanguage(QStringLiteral("de"));
        QVERIFY(house.app->round()->markArea(
            {QPointF(30, 30), QPointF(31, 30), QPointF(31, 31), QPointF(30, 31)}, QStringLiteral("Wall")));
        const QString german = house.app->round()->orderText();
        QVERIFY2(!german.isEmpty() && !german.contains(QStringLiteral("in the way")), qPrintable(german));
        house.app->setLanguage(QStringLiteral("en"));
        QCOMPARE(house.app->round()->orderText(),
                 QStringLiteral("“Wall” is in the way. The order stays as it is."));
    }
    /// German writes a noun large wherever it stands.
    void aRoleStandsInASentence() {
        file::KnownKey key;
        key.records = 1;
        key.signedAs = {"pilot"};
        QCOMPARE(view::signedText(key), QStringLiteral("Signed 1 record as pilot"));
        const view::Language german(QStringLiteral("de"));
        QCOMPARE(view::signedText(key), QStringLiteral("Hat 1 Protokoll als Pilot unterschrieben"));
    }
    /// The zone is the offset from UTC, with its minutes where it has some; a minus is one, not a hyphen.
    void aTimeSaysItsZone_data() {
        QTest::addColumn<int>("offset");
        QTest::addColumn<QString>("english");
        QTest::addColumn<QString>("german");
        QTest::addColumn<QString>("french");
        const auto row = [](int offset, const char* english, const char* german, const char* french) {
            QTest::addRow("%d", offset) << offset << QString::fromUtf8(english) << QString::fromUtf8(german)
                                        << QString::fromUtf8(french);
        };
        row(0, "20 Jun 2026, 05:42 UTC", "20. Juni 2026, 05:42 UTC", "20 juin 2026, 05:42 UTC");
        row(120, "20 Jun 2026, 07:42 UTC+2", "20. Juni 2026, 07:42 UTC+2", "20 juin 2026, 07:42 UTC+2");
        row(-210, "20 Jun 2026, 02:12 UTC−3:30", "20. Juni 2026, 02:12 UTC−3:30",
            "20 juin 2026, 02:12 UTC−3:30");
        row(345, "20 Jun 2026, 11:27 UTC+5:45", "20. Juni 2026, 11:27 UTC+5:45",
            "20 juin 2026, 11:27 UTC+5:45");
        row(-30, "20 Jun 2026, 05:12 UTC−0:30", "20. Juni 2026, 05:12 UTC−0:30",
            "20 juin 2026, 05:12 UTC−0:30");
        row(-600, "19 Jun 2026, 19:42 UTC−10", "19. Juni 2026, 19:42 UTC−10", "19 juin 2026, 19:42 UTC−10");
    }
    void aTimeSaysItsZone() {
        QFETCH(const int, offset);
        const Instant at = *parseInstant("2026-06-20T05:42:00.000Z");
        QTEST(view::zonedText(at, offset), "english");
        {
            const view::Language german(QStringLiteral("de"));
            QTEST(view::zonedText(at, offset), "german");
        }
        const view::Language french(QStringLiteral("fr"));
        QTEST(view::zonedText(at, offset), "french");
    }
    /// French sets a narrow space before a colon; where nothing is said, there is none.
    void whatIsSaidOfSomethingHasTheLanguagesColon() {
        const auto said = [] { return view::saidOf(QStringLiteral("finding"), QStringLiteral("oil: %1")); };
        const auto nothing = [] { return view::saidOf(QStringLiteral("finding"), {}); };
        QCOMPARE(said(), QStringLiteral("finding: oil: %1"));
        QCOMPARE(nothing(), QStringLiteral("finding"));
        {
            const view::Language german(QStringLiteral("de"));
            QCOMPARE(said(), QStringLiteral("finding: oil: %1"));
            QCOMPARE(nothing(), QStringLiteral("finding"));
        }
        const view::Language french(QStringLiteral("fr"));
        QCOMPARE(said(), QStringLiteral("finding\u202F: oil: %1"));
        QCOMPARE(nothing(), QStringLiteral("finding"));
    }
    /// A counter that is named by what it counts has no unit beside it, in whatever language.
    void aCountersNameMaySayItsUnit() {
        const auto landings = [](const char* name) {
            return view::withUnit(QString::fromUtf8(name), view::unitText("landings"));
        };
        QCOMPARE(landings("Landings"), QStringLiteral("Landings"));
        QCOMPARE(view::withUnit(QStringLiteral("Hobbs"), QStringLiteral("h")), QStringLiteral("Hobbs, h"));
        QCOMPARE(view::withUnit(QStringLiteral("Turns"), {}), QStringLiteral("Turns"));
        const view::Language german(QStringLiteral("de"));
        QCOMPARE(landings("Landungen"), QStringLiteral("Landungen"));
        QCOMPARE(landings("Zähler 2"), QStringLiteral("Zähler 2, Landungen"));
    }
    /// Nor is it said twice where the counter is read: "Landings: 4107 landings".
    void aReadingSaysItsUnitOnce() {
        const auto landings = [](const char* name) {
            return view::counterText({"landings", name, "landings"}, "4107");
        };
        QCOMPARE(landings("Landings"), QStringLiteral("4107"));
        QCOMPARE(view::counterText({"hours", "Hobbs", "h"}, "1284.6"), QStringLiteral("1284.6 h"));
        const view::Language german(QStringLiteral("de"));
        QCOMPARE(landings("Landungen"), QStringLiteral("4107"));
        QCOMPARE(landings("Zähler 2"), QStringLiteral("4107 Landungen"));
    }
    /// What a view has put into words changes with the language, so that a screen must be told of it.
    void noTextIsTakenForConstant() {
        House house;
        house.app->setLanguage(QStringLiteral("en"));
        QObjectList views = house.app->findChildren<QObject*>();
        views.prepend(house.app.get());
        const auto constants = [&views] {
            QMap<QString, QVariant> all;
            for (QObject* one : views) {
                const QMetaObject& its = *one->metaObject();
                for (int i = 0; i < its.propertyCount(); ++i)
                    if (its.property(i).isConstant() && !its.property(i).hasNotifySignal())
                        all.insert(QLatin1String(its.className()) + QStringLiteral("::") +
                                       QLatin1String(its.property(i).name()),
                                   its.property(i).read(one));
            }
            return all;
        };
        const auto english = constants();
        QVERIFY(english.size() > 10);
        house.app->setLanguage(QStringLiteral("de"));
        const auto german = constants();
        QStringList changed;
        for (auto one = english.begin(); one != english.end(); ++one)
            if (german.value(one.key()) != one.value()) changed << one.key();
        QVERIFY2(changed.isEmpty(), qPrintable(changed.join(QStringLiteral(", "))));
    }
    /// What an airframe's check says of a number has the comma of who reads it.
    void aCheckSaysFiguresAsTheyAreRead() {
        const auto saysOf = [](const char* from, const char* to) {
            std::string airframe = *readFile(AMBIT_ROOT "/tests/airframe/good.json");
            const std::size_t at = airframe.find(from);
            if (at == std::string::npos) return QStringLiteral("not in the airframe");
            airframe.replace(at, std::string_view(from).size(), to);
            const auto read = airframe::read(airframe);
            return read ? QStringLiteral("let pass") : view::text(read.error().front().what);
        };
        const view::Language german(QStringLiteral("de"));
        const QString count = saysOf(R"("count": "100")", R"("count": "-100.5")");
        QVERIFY2(count.contains(QStringLiteral("-100,5")), qPrintable(count));
        const QString ahead = saysOf(R"("count": "100")", R"("count": "2.5")");
        QVERIFY2(ahead.contains(QStringLiteral("2,5")), qPrintable(ahead));
    }
    void lengthsAreAsTheDevicesCountryReadsThem() {
        using view::Grain;
        using view::lengthText;
        const auto metric = qScopeGuard([] { view::readLengthsBy(QLocale::MetricSystem); });
        QCOMPARE(lengthText(112.4, Grain::whole), QStringLiteral("112 m"));
        QCOMPARE(lengthText(2, Grain::fine), QStringLiteral("2.0 m"));
        {
            const view::Language german(QStringLiteral("de"));
            QCOMPARE(lengthText(2.54, Grain::fine), QStringLiteral("2,5 m"));
        }
        for (const auto imperial : {QLocale::ImperialUSSystem, QLocale::ImperialUKSystem}) {
            view::readLengthsBy(imperial);
            QCOMPARE(lengthText(30.48, Grain::whole), QStringLiteral("100 ft"));
            QCOMPARE(lengthText(112, Grain::whole), QStringLiteral("367 ft")); // 367.45
            QCOMPARE(lengthText(2.4384, Grain::fine), QStringLiteral("8 ft"));
            QCOMPARE(lengthText(0.5, Grain::fine), QStringLiteral("1.5 ft")); // 1.64
        }
    }
    /// An American reads English and walks feet; the log is the same as anybody's.
    void aRoundIsSaidInFeetAndKeptInMetres() {
        const auto begun = [](House& house) {
            return house.begin() && house.app->round()->markArea(
                                        {QPointF(7, 7), QPointF(9.5, 7), QPointF(9.5, 8), QPointF(7, 8)},
                                        QStringLiteral("Wall"));
        };
        QString metric;
        std::vector<round::Event> log;
        {
            House house;
            QVERIFY(begun(house));
            metric = house.app->round()->property("planText").toString();
            log = house.app->round()->openRound().events();
        }
        const double metres = metric.section(QLatin1Char(' '), 0, 0).toDouble();
        QVERIFY2(metric.section(QLatin1Char(' '), 1, 1) == QStringLiteral("m\u00a0·") && metres > 10,
                 qPrintable(metric));
        House house;
        house.lengths = QLocale::ImperialUSSystem;
        house.restart();
        const auto inMetres = qScopeGuard([] { view::readLengthsBy(QLocale::MetricSystem); });
        QVERIFY(begun(house));
        const QString imperial = house.app->round()->property("planText").toString();
        QCOMPARE(imperial.section(QLatin1Char(' '), 1, 1), QStringLiteral("ft\u00a0·"));
        const double feet = imperial.section(QLatin1Char(' '), 0, 0).toDouble();
        QVERIFY2(std::abs(feet * 0.3048 - metres) < 0.7, qPrintable(imperial)); // each rounded
        QCOMPARE(imperial.section(QStringLiteral("\u00a0· "), 1),
                 metric.section(QStringLiteral("\u00a0· "), 1));
        const auto& same = house.app->round()->openRound().events();
        QCOMPARE(same.size(), log.size());
        QVERIFY(log.size() > 1);
        for (std::size_t i = 1; i < log.size(); ++i) // the first names the round
            QCOMPARE(toJson(same[i]).dump(), toJson(log[i]).dump());
        QCOMPARE(view::FigureModel::lengthText(1.2192), QStringLiteral("4 ft"));

        auto& compared = *house.app->comparison();
        house.app->compareWalk(house.registration, QStringLiteral("daily"));
        QTRY_VERIFY_WITH_TIMEOUT(compared.property("ready").toBool(), 60'000);
        const auto way = compared.rows().constFirst().toMap();
        for (const auto& which : {QStringLiteral("planned"), QStringLiteral("listed")})
            QVERIFY2(way.value(which).toString().endsWith(QStringLiteral(" ft")),
                     qPrintable(way.value(which).toString()));
    }
    /// What is wrong with a file that was to be added is said in the reader's language: of everything that
    /// can be wrong with an airframe (tests/airframe/bad.json).
    void whatIsWrongWithAFileIsSaid_data() { eachCatalogue(); }
    void whatIsWrongWithAFileIsSaid() {
        QFETCH(const QString, code);
        const auto json = [](const char* name) {
            return Json::parse(readFile(std::string(AMBIT_ROOT "/tests/airframe/") + name).value());
        };
        const Json good = json("good.json");
        const view::Language spoken(code);
        std::size_t said = 0;
        for (const Json& bad : json("bad.json")) {
            const auto read = airframe::read(good.patch(bad["patch"]).dump());
            QVERIFY(!read);
            for (const Error& error : read.error())
                for (const Sentence& words : {error.what, error.remedy}) {
                    QVERIFY2(words.made() != nullptr && view::text(words) != QString::fromStdString(words),
                             words.c_str());
                    ++said;
                }
        }
        QVERIFY2(said > 200, qPrintable(QString::number(said)));
        for (const char* text : {"", "{", "[1", "{\"a\": 1, \"a\": 2}", "\xef\xbb\xbf{}", "\xff", "1e999"}) {
            const auto read = parseJson(text);
            QVERIFY(!read);
            QVERIFY2(view::text(read.error().what) != QString::fromStdString(read.error().what), text);
        }
    }
    /// The same of a record that was changed, and of an archive that can't be written.
    void whatIsWrongWithARecordIsSaid_data() { eachCatalogue(); }
    void whatIsWrongWithARecordIsSaid() {
        QFETCH(const QString, code);
        House house;
        QVERIFY(house.wholeRound());
        const auto all = house.archive->records(house.registration.toStdString());
        QVERIFY(all && !all->empty());
        const std::string record = *house.archive->recordJson(all->front().sha256);
        const view::Language spoken(code);
        std::string changed = record;
        changed.replace(changed.find("Robin"), 5, "Robyn");
        for (const std::string& bytes : {changed, record + " ", std::string("{}"), std::string("%PDF-1.7")}) {
            const auto broken = archive::importRecord(*house.archive, bytes);
            QVERIFY(!broken);
            QVERIFY2(view::text(broken.error().what) != QString::fromStdString(broken.error().what),
                     broken.error().what.c_str());
        }
    }
    /// A page half in one language and half in another would be signed so.
    void pagesAreDrawnInEnglish_data() { eachCatalogue(); }
    void pagesAreDrawnInEnglish() {
        QFETCH(const QString, code);
        QString drawn;
        const auto draw =
            view::inEnglish([&](const Json&, const auto*, const auto&, const auto&) -> Result<record::Drawn> {
                drawn = reviewText();
                return record::Drawn{};
            });
        const view::Language spoken(code);
        QVERIFY(draw({}, nullptr, {}, {}));
        QCOMPARE(drawn, QStringLiteral("Review"));
        QVERIFY(reviewText() != QStringLiteral("Review"));
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewLanguage)
#include "tst_view_language.moc"
