// A plan drawn: valid XML, every visit numbered, the way round what is solid, no text that does harm.
#include "airframe/read.hpp"
#include "airframe/shape.hpp"
#include "cli/plan_svg.hpp"
#include "cli/svg.hpp"

#include <QTest>
#include <QXmlStreamReader>
#include <clocale>
#include <set>

using namespace ambit;

namespace {

struct Drawing {
    QString error; ///< of the XML
    QStringList texts;
    QStringList elements;
    QList<QList<airframe::Place>> lines; ///< polylines, y forward
    QString width, viewBox;
};

QList<airframe::Place> placesOf(const QString& points) {
    QList<airframe::Place> places;
    for (const QString& pair : points.split(' '))
        places.append({pair.section(',', 0, 0).toDouble(), -pair.section(',', 1, 1).toDouble()});
    return places;
}

Drawing read(const std::string& svg) {
    Drawing drawing;
    QXmlStreamReader xml(QByteArray::fromStdString(svg));
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        const QString name = xml.name().toString();
        const auto attributes = xml.attributes();
        drawing.elements.append(name);
        if (name == "svg") {
            drawing.width = attributes.value("width").toString();
            drawing.viewBox = attributes.value("viewBox").toString();
        }
        if (name == "polyline") drawing.lines.append(placesOf(attributes.value("points").toString()));
        if (name == "text" || name == "title") drawing.texts.append(xml.readElementText());
    }
    if (xml.hasError()) drawing.error = xml.errorString();
    return drawing;
}

airframe::Airframe demo(const char* file) {
    auto read = airframe::readFrom(std::string(AMBIT_ROOT "/demo-aircraft/") + file + "/airframe.json");
    return read ? *read : airframe::Airframe();
}

struct Drawn {
    walk::Plan plan;
    std::string svg;
};
Drawn draw(const airframe::Airframe& airframe, const walk::Situation& now) {
    const std::string& walkId = airframe.walks.front().id;
    auto plan = walk::makePlan(airframe, walkId, now);
    if (!plan) return {};
    return {*plan, cli::planSvg(airframe, walkId, now, *plan)};
}

} // namespace

class TestPlanSvg : public QObject {
    Q_OBJECT

private slots:
    void bothMachines_data() {
        QTest::addColumn<QByteArray>("file");
        QTest::newRow("helicopter") << QByteArray("helicopter");
        QTest::newRow("aeroplane") << QByteArray("aeroplane");
    }
    void bothMachines() {
        QFETCH(QByteArray, file);
        const auto airframe = demo(file.constData());
        const auto [plan, svg] = draw(airframe, walk::startOf(airframe));
        const Drawing drawing = read(svg);
        QVERIFY2(drawing.error.isEmpty(), qPrintable(drawing.error));
        QCOMPARE(drawing.width, QString("190.0mm"));
        QCOMPARE(drawing.viewBox.split(' ').size(), 4);

        std::set<int> numbers;
        for (const QString& text : drawing.texts) {
            for (const QString& number : text.split(", "))
                if (number.toInt() > 0) numbers.insert(number.toInt());
        }
        int visits = 0;
        int changes = 0;
        for (const auto& step : plan.steps) {
            visits += std::holds_alternative<walk::Go>(step);
            changes += std::holds_alternative<walk::Set>(step);
        }
        for (int visit = 1; visit <= visits; ++visit)
            QVERIFY2(numbers.contains(visit), qPrintable(QString::number(visit)));
        QCOMPARE(drawing.texts.filter(QRegularExpression("^[a-z]$")).size(), changes);
        const QString cost = QString("%1 m on foot, %2 climbs, %3 turn")
                                 .arg(plan.cost.metres, 0, 'f', 0)
                                 .arg(plan.cost.climbs)
                                 .arg(plan.cost.turns);
        QVERIFY2(!drawing.texts.filter(cost).isEmpty(), qPrintable(cost));
    }

    void theWayGoesRound() {
        const auto airframe = demo("helicopter");
        auto now = walk::startOf(airframe);
        now.marked = {{{-30, -30}, {-20, -30}, {-20, 30}, {-30, 30}}};
        const Drawing drawing = read(draw(airframe, now).svg);
        QVERIFY(drawing.error.isEmpty());
        QVERIFY(!drawing.texts.filter("marked as in the way").isEmpty());
        QVERIFY(drawing.lines.size() > 10);
        for (const auto& line : drawing.lines) {
            if (line.size() < 3) continue; // steps across, and lines from tags to their places
            for (qsizetype i = 1; i < line.size(); ++i) {
                for (int k = 0; k <= 50; ++k) {
                    const double share = k / 50.0;
                    const airframe::Place at{line[i - 1].x + (line[i].x - line[i - 1].x) * share,
                                             line[i - 1].y + (line[i].y - line[i - 1].y) * share};
                    for (const auto& part : airframe.parts)
                        QVERIFY(!part.solid || !airframe::isInside(at, part.outline));
                }
            }
        }
    }

    void halfWayThereIsHere() {
        const auto airframe = demo("helicopter");
        auto now = walk::startOf(airframe);
        now.stand = airframe.stands.back().id;
        const Drawing drawing = read(draw(airframe, now).svg);
        QVERIFY(drawing.texts.contains("here"));
        QVERIFY(drawing.texts.contains("end"));
    }

    void aHostileNameIsOnlyText() {
        auto airframe = demo("aeroplane");
        const std::string name = "</text><script>\"&'\x01\xEF\xBF\xBF";
        airframe.name = name;
        for (auto& stand : airframe.stands)
            stand.name = name;
        const Drawing drawing = read(draw(airframe, walk::startOf(airframe)).svg);
        QVERIFY2(drawing.error.isEmpty(), qPrintable(drawing.error));
        QVERIFY(!drawing.elements.contains("script"));
        QVERIFY(!drawing.texts.filter("</text><script>\"&'\uFFFD\uFFFD").isEmpty());
    }

    void sameBytesInAnyLocale() {
        const auto airframe = demo("helicopter");
        const std::string svg = draw(airframe, walk::startOf(airframe)).svg;
        for (const char* locale : {"de_DE.UTF-8", "fr_FR.UTF-8"})
            if (std::setlocale(LC_ALL, locale) != nullptr)
                QCOMPARE(draw(airframe, walk::startOf(airframe)).svg, svg);
        std::setlocale(LC_ALL, "C");
    }

    void numbersAndLines() {
        QCOMPARE(cli::svg::number(1.25, 1), std::string("1.2"));
        QCOMPARE(cli::svg::number(-0.00001), std::string("0.0000"));
        QCOMPARE(cli::svg::number(-12.5, 2), std::string("-12.50"));
        QCOMPARE(cli::svg::number(1e300, 0).size(), 301U);
        using Lines = std::vector<std::string>;
        QVERIFY((cli::svg::wrapped("one two three", 7) == Lines{"one two", "three"}));
        QVERIFY((cli::svg::wrapped("one two three", 8) == Lines{"one two", "three"}));
        QVERIFY((cli::svg::wrapped("onetwothree", 4) == Lines{"onet", "woth", "ree"}));
        QVERIFY((cli::svg::wrapped("äöüäöü", 4) == Lines{"äöüä", "öü"}));
        QVERIFY((cli::svg::wrapped("", 4) == Lines{""}));
    }
};

QTEST_APPLESS_MAIN(TestPlanSvg)
#include "tst_plan_svg.moc"
