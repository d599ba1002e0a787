#include "airframe/pocket.hpp"
#include "airframe/read.hpp"
#include "airframe/shape.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"
#include "base/parse.hpp"

#include <QtTest>
#include <nlohmann/json.hpp>

using namespace ambit;
using airframe::Airframe;
using Ids = std::vector<std::string>;

namespace {

const std::string goodPath = AMBIT_ROOT "/tests/airframe/good.json";

std::string errorsOf(const Results<Airframe>& read) {
    std::string text;
    if (!read) {
        for (const Error& error : read.error())
            text += toText(error) + '\n';
    }
    return text;
}

const Airframe& good() {
    static const auto read = airframe::readFrom(goodPath);
    if (!read) qFatal("%s", errorsOf(read).c_str());
    return *read;
}

} // namespace

class AirframeTest : public QObject {
    Q_OBJECT

private slots:
    void readsEveryPart();
    void repeats();
    void walksKeepTheListedOrder();
    void before();
    void settings();
    void whatComesDue();
    void words();
    void missingFile();
    void outlines_data();
    void outlines();
    void inside();
    void pockets();
    void demoAircraft_data();
    void demoAircraft();
};

void AirframeTest::readsEveryPart() {
    const Airframe& a = good();
    QCOMPARE(a.id, std::string("test-machine"));
    QCOMPARE(a.category, airframe::Category::helicopter);
    QCOMPARE(a.cautions, Ids{"Switches off."});
    QCOMPARE(a.counter("hours")->unit, std::string("h"));
    QCOMPARE(a.costs.climbSeconds, 14.0);
    QCOMPARE(a.parts.size(), std::size_t{3});
    QVERIFY(a.parts[0].solid && !a.parts[2].solid);
    QCOMPARE(a.parts[2].when, (airframe::Settings{{"rotor", "a-aft"}}));
    QCOMPARE(a.keepOut[0].outline.size(), std::size_t{4});
    QCOMPARE(a.zone("nose")->name, std::string("Nose"));
    const airframe::Stand* mast = a.stand("mast");
    QVERIFY(mast && mast->raised() && !a.stand("left")->raised());
    QCOMPARE(mast->hands, 0);
    QCOMPARE(mast->at, (airframe::Place{-1.3, 0.2}));
    QCOMPARE(mast->onlyFrom, Ids{"tread"});
    QVERIFY(a.opening("tie-down")->met && !a.opening("cowl-left")->met);
    const airframe::Point* oil = a.point("oil");
    QVERIFY(oil && oil->limit);
    QCOMPARE(oil->limit->min->text(), std::string("4"));
    QCOMPARE(oil->limit->max->text(), std::string("6.0"));
    QCOMPARE(oil->how, (std::vector{airframe::How::look, airframe::How::measure}));
    QCOMPARE(oil->finding, airframe::Severity::grounds);
    QVERIFY(!a.zone("none") && !a.stand("") && !a.point("blade") && !a.walk("x") && !a.setting("x"));
    QCOMPARE(a.sha256, sha256Hex(*readFile(goodPath)));
}

void AirframeTest::repeats() {
    const airframe::Point* blade = good().point("blade.b");
    QVERIFY(blade);
    QCOMPARE(blade->base, std::string("blade"));
    QCOMPARE(blade->member, std::string("b"));
    QCOMPARE(blade->name, std::string("Blade tip, blade B"));
    QCOMPARE(blade->after, Ids{"pitch-link.b"});
    QCOMPARE(blade->when, (airframe::Settings{{"rotor", "b-aft"}}));
    const airframe::Point* engine = good().point("engine.right");
    QVERIFY(engine);
    QCOMPARE(engine->zone, std::string("side-right"));
    QCOMPARE(engine->stands, Ids{"right"});
    QCOMPARE(engine->through, Ids{"cowl-right"});
    QCOMPARE(engine->cautions, Ids{"Hot on the right."});
    QVERIFY(engine->when.empty());
    QCOMPARE(good().point("last-look")->after, (Ids{"blade.a", "blade.b", "cowl-close.left"}));
}

void AirframeTest::walksKeepTheListedOrder() {
    const airframe::Walk* all = good().walk("daily");
    QVERIFY(all);
    QCOMPARE(all->points.size(), good().points.size());
    QCOMPARE(all->points.front(), std::string("arc-clear"));
    QCOMPARE(all->end, (airframe::Place{0, 6}));
    const airframe::Walk* few = good().walk("short");
    QVERIFY(few);
    QCOMPARE(few->points, (Ids{"cowl-open.left", "cowl-open.right", "oil", "cowl-close.left",
                               "cowl-close.right", "blade.a"}));
    QCOMPARE(few->end, few->start);
}

void AirframeTest::before() {
    const auto beforeOf = [](const char* id) { return good().before(*good().point(id)); };
    QCOMPARE(beforeOf("arc-clear"), Ids());
    QCOMPARE(beforeOf("tie-down-off"), Ids()); // met open
    QCOMPARE(beforeOf("oil"), Ids{"cowl-open.left"});
    QCOMPARE(beforeOf("engine.right"), Ids{"cowl-open.right"});
    QCOMPARE(beforeOf("cowl-close.left"), (Ids{"cowl-open.left", "oil", "engine.left"}));
    QCOMPARE(beforeOf("blade.a"), Ids{"pitch-link.a"});
    QCOMPARE(beforeOf("last-look"), (Ids{"cowl-close.left", "blade.a", "blade.b"}));
}

void AirframeTest::settings() {
    const Airframe& a = good();
    QCOMPARE(a.initialSettings(), (airframe::Settings{{"rotor", "a-aft"}}));
    const airframe::Setting* rotor = a.setting("rotor");
    QVERIFY(rotor && rotor->state("b-aft") && !rotor->state("c-aft"));
    QCOMPARE(rotor->change("a-aft", "b-aft")->needs, Ids{"arc-clear"});
    QVERIFY(!rotor->change("a-aft", "a-aft"));
    QVERIFY(airframe::holds({}, {}));
    QVERIFY(airframe::holds({{"rotor", "a-aft"}}, {{"rotor", "a-aft"}, {"cowl", "open"}}));
    QVERIFY(!airframe::holds({{"rotor", "b-aft"}}, a.initialSettings()));
    QVERIFY(!airframe::holds({{"flaps", "up"}}, a.initialSettings()));
}

void AirframeTest::whatComesDue() {
    const airframe::Inspection* hundred = good().inspection("hundred-hours");
    QVERIFY(hundred && good().inspections.size() == 2 && !good().inspection("skids"));
    QCOMPARE(hundred->name, std::string("100-hour inspection"));
    QCOMPARE(hundred->source, std::string("Invented."));
    QCOMPARE(hundred->every.size(), std::size_t{2});
    const auto& hours = std::get<airframe::Units>(hundred->every[0]);
    QCOMPARE(hours.counter, std::string("hours"));
    QCOMPARE(hours.count.text(), std::string("100"));
    QCOMPARE(hours.unit, std::string("h"));
    QCOMPARE(hours.ahead.text(), std::string("10"));
    QCOMPARE(hours.allowance->most.text(), std::string("10.0"));
    QCOMPARE(hours.allowance->only, std::string("On the way to it."));
    QCOMPARE(std::get<airframe::Months>(hundred->every[1]).count, 12);
    QCOMPARE(std::get<airframe::Months>(hundred->every[1]).aheadDays, 30);
    const auto& oil = std::get<airframe::Units>(good().inspection("oil")->every[0]);
    QVERIFY(oil.ahead == Decimal() && !oil.allowance);
    const airframe::LifeLimit* skids = good().lifeLimit("skids");
    QVERIFY(skids && !good().lifeLimit("oil"));
    QCOMPARE(std::get<airframe::Units>(skids->life[0]).count.text(), std::string("5000"));
    QCOMPARE(std::get<airframe::Months>(skids->life[1]).aheadDays, 0);
    // Both lists may be left out.
    auto without = parseJson(*readFile(goodPath)).value();
    without.erase("inspections");
    without.erase("lifeLimits");
    const auto read = airframe::read(without.dump());
    QVERIFY2(read && read->inspections.empty() && read->lifeLimits.empty(), errorsOf(read).c_str());
}

void AirframeTest::words() {
    QCOMPARE(airframe::toText(airframe::Category::aeroplane), "aeroplane");
    QCOMPARE(airframe::toText(airframe::PartKind::tread), "tread");
    QCOMPARE(airframe::toText(airframe::Access::kneel), "kneel");
    QCOMPARE(airframe::toText(airframe::How::listen), "listen");
    QCOMPARE(airframe::severityFrom("grounds"), std::optional(airframe::Severity::grounds));
    QCOMPARE(airframe::severityFrom(airframe::toText(airframe::Severity::assess)),
             std::optional(airframe::Severity::assess));
    QVERIFY(!airframe::severityFrom("Grounds") && !airframe::severityFrom(""));
}

void AirframeTest::missingFile() {
    const auto read = airframe::readFrom("/nowhere/airframe.json");
    QVERIFY(!read);
    QCOMPARE(read.error().size(), std::size_t{1});
    QCOMPARE(read.error()[0].where, std::string("/nowhere/airframe.json"));
    QCOMPARE(read.error()[0].code, ErrorCode::storage);
    QVERIFY(!airframe::readFrom(AMBIT_ROOT));
}

void AirframeTest::outlines_data() {
    QTest::addColumn<QVector<QPointF>>("corners");
    QTest::addColumn<bool>("simple");
    const auto row = [](const char* name, const QVector<QPointF>& corners, bool simple) {
        QTest::newRow(name) << corners << simple;
    };
    row("triangle", {{0, 0}, {1, 0}, {0, 1}}, true);
    row("clockwise", {{0, 1}, {1, 0}, {0, 0}}, true);
    row("a corner on a straight edge", {{0, 0}, {1, 0}, {2, 0}, {0, 2}}, true);
    row("a straight corner at the start", {{1, 0}, {2, 0}, {0, 2}, {0, 0}}, true);
    row("concave", {{0, 0}, {4, 0}, {4, 4}, {2, 0.1}, {0, 4}}, true);
    row("as large as can be", {{-100, -100}, {100, -100}, {100, 100}, {-100, 100}}, true);
    row("a notch of a tenth of a millimetre", {{0, 0}, {0.1, 0.0001}, {0.2, 0}, {0.2, 0.3}, {0, 0.3}}, true);
    row("nothing", {}, false);
    row("line", {{0, 0}, {1, 0}}, false);
    row("flat triangle", {{0, 0}, {1, 0.1}, {2, 0.2}}, false);
    row("flat by decimals that aren't binary", {{0.1, 0.1}, {0.2, 0.2}, {0.3, 0.3}}, false);
    row("bow tie", {{0, 0}, {1, 1}, {1, 0}, {0, 1}}, false);
    row("spike", {{0, 0}, {1, 0}, {1, 2}, {1, 1}, {0, 1}}, false);
    row("spike at the start", {{1, 2}, {1, 1}, {0, 1}, {0, 0}, {1, 0}}, false);
    row("edge on an edge", {{0, 0}, {3, 0}, {3, 1}, {2, 1}, {2, 0}, {1, 0}, {1, 1}, {0, 1}}, false);
    row("corner on an edge", {{0, 0}, {2, 0}, {2, 2}, {1, 0}, {0, 2}}, false);
    row("same corner in a row", {{0, 0}, {1, 0}, {1, 0}, {0, 1}}, false);
    row("closed twice", {{0, 0}, {1, 0}, {0, 1}, {0, 0}}, false);
}

void AirframeTest::outlines() {
    QFETCH(QVector<QPointF>, corners);
    QFETCH(bool, simple);
    airframe::Outline outline;
    for (const QPointF& corner : corners)
        outline.push_back({corner.x(), corner.y()});
    const auto fault = airframe::faultOf(outline);
    QVERIFY2(!fault == simple, fault.value_or("no fault found").c_str());
}

void AirframeTest::inside() {
    const airframe::Outline concave{{0, 0}, {4, 0}, {4, 4}, {2, 1}, {0, 4}};
    QVERIFY(airframe::isInside({1, 1}, concave));
    QVERIFY(airframe::isInside({2, 0.9}, concave));
    QVERIFY(airframe::isInside({0.5, 1}, concave)); // level with a corner
    QVERIFY(!airframe::isInside({2, 2}, concave));
    QVERIFY(!airframe::isInside({-1, 0}, concave));
    QVERIFY(!airframe::isInside({-1, 4}, concave));
    QVERIFY(!airframe::isInside({5, 1}, concave));
    QVERIFY(!airframe::isInside({2, 0}, concave)); // on the edge
    QVERIFY(!airframe::isInside({2, 1}, concave)); // on a corner
    QVERIFY(!airframe::isInside({1, 1}, {}));
}

void AirframeTest::pockets() {
    const airframe::Outline u{{0, 0}, {3, 0}, {3, 3}, {2, 3}, {2, 1}, {1, 1}, {1, 3}, {0, 3}};
    const auto box = [](double left, double low, double right, double high) {
        return airframe::Outline{{left, low}, {right, low}, {right, high}, {left, high}};
    };
    const airframe::Place within{1.5, 2};
    const auto isWalledIn = [](const std::vector<airframe::Outline>& outlines, airframe::Place place) {
        return airframe::Pockets(outlines).isWalledIn(place);
    };
    QVERIFY(!isWalledIn({}, within));
    QVERIFY(!isWalledIn({u}, within));
    QVERIFY(!isWalledIn({u, box(0, 3.1, 3, 4)}, within)); // a gap
    QVERIFY(!isWalledIn({u, box(0, 3, 1.9, 4)}, within)); // open on one side
    QVERIFY(isWalledIn({u, box(0, 3, 3, 4)}, within));    // edges on edges
    QVERIFY(isWalledIn({u, box(1, 3, 2, 4)}, within));    // corners on corners
    QVERIFY(isWalledIn({u, box(-1, 2.5, 4, 4)}, within)); // overlapping
    QVERIFY(isWalledIn({u, {{-1, 2}, {4, 2.5}, {4, 9}, {-1, 9}}}, {1.5, 1.5}));
    QVERIFY(!isWalledIn({u, box(0, 3, 3, 4)}, {1.5, 5}));
    QVERIFY(!isWalledIn({u, box(0, 3, 3, 4)}, {-1, 2}));
    QVERIFY(!isWalledIn({u, box(0, 3, 3, 4)}, {-1, 3})); // level with corners
    const std::vector<airframe::Outline> ring{box(0, 0, 4, 1), box(3, 0, 4, 4), box(0, 3, 4, 4),
                                              box(0, 0, 1, 4)};
    for (const airframe::Place place : {airframe::Place{2, 2}, {1.1, 1.1}, {2.9, 2}, {2, 2.99}})
        QVERIFY(isWalledIn(ring, place));
    for (const airframe::Place place : {airframe::Place{-1, 2}, {5, 2}, {2, 5}, {2, -1}, {-1, 0}, {-1, 3}})
        QVERIFY(!isWalledIn(ring, place));
    QVERIFY(!isWalledIn({ring[0], ring[1], ring[2]}, {2, 2}));
}

void AirframeTest::demoAircraft_data() {
    QTest::addColumn<QString>("path");
    QTest::addColumn<int>("points");
    QTest::newRow("helicopter") << AMBIT_ROOT "/demo-aircraft/helicopter/airframe.json" << 75;
    QTest::newRow("aeroplane") << AMBIT_ROOT "/demo-aircraft/aeroplane/airframe.json" << 55;
}

void AirframeTest::demoAircraft() {
    QFETCH(QString, path);
    QFETCH(int, points);
    const auto read = airframe::readFrom(path.toStdString());
    QVERIFY2(read, errorsOf(read).c_str());
    QVERIFY(read->points.size() >= static_cast<std::size_t>(points));
    QVERIFY(read->walks.size() >= 2);
    QVERIFY(read->inspections.size() >= 4 && read->lifeLimits.size() >= 2);
    for (const airframe::Point& point : read->points)
        QVERIFY2(!point.limit || (point.limit->from && point.limit->uncertainty), point.id.c_str());
}

QTEST_APPLESS_MAIN(AirframeTest)
#include "tst_airframe.moc"
