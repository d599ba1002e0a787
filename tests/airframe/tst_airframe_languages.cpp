// An airframe's texts in other languages.
#include "airframe/read.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"
#include "base/parse.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>
#include <set>

using namespace ambit;
using airframe::Airframe;
using Texts = std::vector<std::string>;

namespace {

std::string withTranslations(const Json& translations) {
    Json json = Json::parse(readFile(AMBIT_ROOT "/tests/airframe/good.json").value_or(std::string()));
    json["translations"] = translations;
    return json.dump();
}

/// Some of its texts, one of every kind.
const std::string& translated() {
    static const std::string text =
        withTranslations({{"de",
                           {{"Test machine", "Prüfmaschine"},
                            {"Switches off.", "Alle Schalter aus."},
                            {"Hours", "Stunden"},
                            {"The tail rotor's arc.", "Der Kreis des Heckrotors."},
                            {"Left side", "Linke Seite"},
                            {"blade B", "Blatt B"},
                            {"left", "links"},
                            {"Left cowl", "Linke Haube"},
                            {"Close the left cowl.", "Linke Haube schließen."},
                            {"Blade tip, {blade}", "Spitze von {blade}"},
                            {"Cowl open, {side}", "Haube {side} offen, {side}"},
                            {"Hot on the {side}.", "Heiß ({side})."},
                            {"Bent or loose.", "Verbogen oder lose."},
                            {"Oil", "Öl"},
                            {"Turn it half a turn.", "Eine halbe Umdrehung weiterdrehen."},
                            {"On the way to it.", "Auf dem Weg dorthin."},
                            {"Oil change", "Ölwechsel"},
                            {"Skids", "Kufen"}}},
                          {"fr", {{"Test machine", "Machine d’essai"}}}});
    return text;
}

Airframe in(const std::string& language) {
    auto read = airframe::readIn(translated(), language);
    if (!read) qFatal("%s", toText(read.error().front()).c_str());
    return std::move(*read);
}

} // namespace

class AirframeLanguagesTest : public QObject {
    Q_OBJECT

private slots:
    /// Every kind of text, and the members' names where they are put in.
    void everyKindOfText() {
        const Airframe de = in("de");
        QCOMPARE(de.name, std::string("Prüfmaschine"));
        QCOMPARE(de.cautions, Texts{"Alle Schalter aus."});
        QCOMPARE(de.counter("hours")->name, std::string("Stunden"));
        QCOMPARE(de.keepOut[0].why, std::string("Der Kreis des Heckrotors."));
        QCOMPARE(de.zone("side-left")->name, std::string("Linke Seite"));
        QCOMPARE(de.stand("left")->name, std::string("Linke Seite"));
        QCOMPARE(de.opening("cowl-left")->name, std::string("Linke Haube"));
        QCOMPARE(de.opening("cowl-left")->owed, std::string("Linke Haube schließen."));
        QCOMPARE(de.point("blade.b")->name, std::string("Spitze von Blatt B"));
        QCOMPARE(de.point("cowl-open.left")->name, std::string("Haube links offen, links"));
        QCOMPARE(de.point("engine.left")->cautions, Texts{"Heiß (links)."});
        QCOMPARE(de.point("oil")->unsound, std::string("Verbogen oder lose."));
        QCOMPARE(de.point("oil")->limit->quantity, std::string("Öl"));
        QCOMPARE(de.setting("rotor")->changes.back().how, std::string("Eine halbe Umdrehung weiterdrehen."));
        QCOMPARE(de.inspection("oil")->name, std::string("Ölwechsel"));
        QCOMPARE(de.lifeLimit("skids")->name, std::string("Kufen"));
        bool found = false;
        for (const auto& inspection : de.inspections)
            for (const auto& span : inspection.every)
                if (const auto* units = std::get_if<airframe::Units>(&span); units && units->allowance)
                    found = units->allowance->only == "Auf dem Weg dorthin.";
        QVERIFY(found);
    }

    /// What has no translation stays as written, and so does all that is no text for people.
    void theRestStaysAsWritten() {
        const Airframe de = in("de");
        const Airframe written = *airframe::read(translated());
        QCOMPARE(de.notice, written.notice);
        QCOMPARE(de.point("blade.a")->name, std::string("Spitze von blade A"));
        QCOMPARE(de.point("oil")->limit->unit, std::string("qt"));
        QCOMPARE(de.point("oil")->limit->source, written.point("oil")->limit->source);
        QCOMPARE(de.id, written.id);
        QCOMPARE(de.points.size(), written.points.size());
        for (std::size_t i = 0; i < de.points.size(); ++i) {
            QCOMPARE(de.points[i].id, written.points[i].id);
            QCOMPARE(de.points[i].after, written.points[i].after);
            QCOMPARE(de.points[i].when, written.points[i].when);
            QCOMPARE(de.points[i].stands, written.points[i].stands);
        }
        for (std::size_t i = 0; i < de.walks.size(); ++i)
            QCOMPARE(de.walks[i].points, written.walks[i].points);
    }

    /// One file, one identity: what is recorded doesn't depend on who read it in which language.
    void theIdentityIsTheFiles() {
        QCOMPARE(in("de").sha256, sha256Hex(translated()));
        QCOMPARE(in("xx").sha256, sha256Hex(translated()));
        QCOMPARE(airframe::read(translated())->sha256, sha256Hex(translated()));
        QCOMPARE(airframe::read(translated())->name, std::string("Test machine"));
    }

    void severalLanguages() {
        QCOMPARE(in("fr").name, std::string("Machine d’essai"));
        QCOMPARE(in("fr").zone("side-left")->name, std::string("Left side"));
        QCOMPARE(in("xx").name, std::string("Test machine"));
        QCOMPARE(in("").name, std::string("Test machine"));
    }

    void whatIsNotTranslated() {
        const auto all = airframe::untranslated(translated(), "it");
        QVERIFY(all);
        Texts languages;
        for (const auto& [language, texts] : *all)
            languages.push_back(language);
        QCOMPARE(languages, (Texts{"de", "fr", "it"}));
        const Texts& it = all->at("it");
        const std::set<std::string> distinct(it.begin(), it.end());
        QCOMPARE(distinct.size(), it.size());
        QCOMPARE(it.front(), std::string("Test machine"));
        QVERIFY(distinct.contains("Cowl open, {side}") && distinct.contains("blade A"));
        QVERIFY(!distinct.contains("qt") && !distinct.contains("Cowl open, left"));
        QCOMPARE(all->at("fr").size(), it.size() - 1);
        QCOMPARE(all->at("de").size(), it.size() - 18);
        QVERIFY(!airframe::untranslated("{", "de"));
    }

    /// Whatever holds on to a part of the airframe, still holds on to it.
    void rewordedInPlace() {
        Airframe shown = in("en");
        const auto* point = shown.point("blade.b");
        const auto* change = &shown.setting("rotor")->changes.back();
        airframe::reword(shown, in("de"));
        QCOMPARE(shown.point("blade.b"), point);
        QCOMPARE(point->name, std::string("Spitze von Blatt B"));
        QCOMPARE(change->how, std::string("Eine halbe Umdrehung weiterdrehen."));
        airframe::reword(shown, in("fr"));
        QCOMPARE(shown.name, std::string("Machine d’essai"));
        QCOMPARE(point->name, std::string("Blade tip, blade B"));
        airframe::reword(shown, *airframe::readFrom(AMBIT_ROOT "/tests/airframe/good.json"));
        QCOMPARE(shown.name, std::string("Machine d’essai")); // another airframe's are none of its texts
    }

    void bad_data() {
        QTest::addColumn<QByteArray>("translations");
        QTest::addColumn<QByteArray>("where");
        QTest::addColumn<QByteArray>("what");
        const auto row = [](const char* name, const Json& json, const char* where, const char* what) {
            QTest::newRow(name) << QByteArray::fromStdString(json.dump()) << QByteArray(where)
                                << QByteArray(what);
        };
        row("a text that the file has only as repeated", {{"de", {{"Cowl open, left", "Haube"}}}},
            "/translations/de/Cowl open, left", "No text");
        row("an id", {{"de", {{"cowl-left", "haube"}}}}, "/translations/de/cowl-left", "No text");
        row("a unit", {{"de", {{"qt", "l"}}}}, "/translations/de/qt", "No text");
        row("a slash in the text", {{"de", {{"a/b", "c"}}}}, "/translations/de/a~1b", "No text");
        row("placeholder lost", {{"de", {{"Cowl open, {side}", "Haube offen"}}}},
            "/translations/de/Cowl open, {side}", "lost");
        row("placeholder of another", {{"de", {{"Cowl open, {side}", "Haube offen, {blade}"}}}},
            "/translations/de/Cowl open, {side}", "placeholder");
        row("placeholder from nowhere", {{"de", {{"Left cowl", "Haube {side}"}}}},
            "/translations/de/Left cowl", "placeholder");
        row("too long by a member's name",
            {{"de", {{"Cowl open, {side}", std::string(50, 'x') + "{side}"}, {"right", "auf der rechten"}}}},
            "/translations/de/Cowl open, {side}", "put in");
    }

    void bad() {
        QFETCH(QByteArray, translations);
        QFETCH(QByteArray, where);
        QFETCH(QByteArray, what);
        const auto read = airframe::read(withTranslations(Json::parse(translations.toStdString())));
        QVERIFY(!read);
        QCOMPARE(read.error().front().where.c_str(), where.constData());
        QVERIFY2(read.error().front().what.find(what.toStdString()) != std::string::npos,
                 read.error().front().what.c_str());
    }

    void demosAreComplete_data() {
        QTest::addColumn<QString>("aircraft");
        QTest::addColumn<QString>("language");
        for (const char* aircraft : {"helicopter", "aeroplane"})
            for (const char* language : {"de", "fr"})
                QTest::addRow("%s, %s", aircraft, language) << aircraft << language;
    }

    void demosAreComplete() {
        QFETCH(QString, aircraft);
        QFETCH(QString, language);
        const QString path = QStringLiteral(AMBIT_ROOT "/demo-aircraft/%1/airframe.json").arg(aircraft);
        const auto text = readFile(path.toStdString());
        QVERIFY(text);
        const auto all = airframe::untranslated(*text, language.toStdString());
        QVERIFY(all);
        const Texts& missing = all->at(language.toStdString());
        QVERIFY2(missing.empty(), missing.empty() ? "" : missing.front().c_str());
        QVERIFY(airframe::readIn(*text, language.toStdString())->points.front().sound !=
                airframe::read(*text)->points.front().sound);
    }

    /// A mark of two parts never begins a line, and stands a little apart: French typography, as in the
    /// screens' catalogues.
    void frenchMarksStandApart_data() {
        QTest::addColumn<QString>("aircraft");
        for (const char* aircraft : {"helicopter", "aeroplane"})
            QTest::newRow(aircraft) << aircraft;
    }

    void frenchMarksStandApart() {
        QFETCH(QString, aircraft);
        const QString path = QStringLiteral(AMBIT_ROOT "/demo-aircraft/%1/airframe.json").arg(aircraft);
        const Json all = Json::parse(readFile(path.toStdString()).value_or(std::string()));
        static const QRegularExpression close(QStringLiteral("[^\\x{202f}][:;!?»](?!\\S)|«[^\\x{202f}]"));
        qsizetype marks = 0;
        for (const auto& [english, french] : all.at("translations").at("fr").items()) {
            const QString words = QString::fromStdString(french.get<std::string>());
            QVERIFY2(!words.contains(close), qPrintable(words));
            marks += words.count(QChar(0x202f));
        }
        QVERIFY2(marks > 50, qPrintable(QString::number(marks)));
    }
};

QTEST_APPLESS_MAIN(AirframeLanguagesTest)
#include "tst_airframe_languages.moc"
