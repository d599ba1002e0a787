// Units: exact comparison, and rounded values for showing.
#include "judge/units.hpp"

#include <QTest>
#include <random>

using namespace ambit;
using judge::Verdict;

namespace {

Decimal number(const char* text) {
    return Decimal::parse(text).value();
}

airframe::Limit limit(const char* min, const char* max, const char* unit) {
    airframe::Limit limit{"Pressure", unit, {}, {}, ""};
    if (*min != 0) limit.min = number(min);
    if (*max != 0) limit.max = number(max);
    return limit;
}

} // namespace

class TestUnits : public QObject {
    Q_OBJECT

private slots:
    /// A deviation is moved by no offset: 1.8 °F are 1 °C, though 1.8 °F is -16.8 °C.
    void differences() {
        const auto inUnits = [](const char* value, const char* unit, const char* wanted) {
            return judge::differenceIn(number(value), unit, wanted).value().value.text();
        };
        QCOMPARE(inUnits("1.8", "°F", "°C"), std::string("1"));
        QCOMPARE(inUnits("0.5", "°C", "°F"), std::string("0.9"));
        QCOMPARE(inUnits("0.3", "psi", "kPa"), std::string("2.07"));
        QCOMPARE(inUnits("0.3", "psi", "psi"), std::string("0.3"));
        QCOMPARE(judge::differenceIn(number("0.3"), "psi", "kPa", 2).value().value.text(),
                 std::string("2.1"));
        QVERIFY(!judge::differenceIn(number("1"), "psi", "mm"));
    }

    void shown_data() {
        QTest::addColumn<QByteArray>("value");
        QTest::addColumn<QByteArray>("unit");
        QTest::addColumn<QByteArray>("wanted");
        QTest::addColumn<QByteArray>("words");
        const auto row = [](const char* value, const char* unit, const char* wanted, const char* words) {
            QTest::addRow("%s %s in %s", value, unit, wanted)
                << QByteArray(value) << QByteArray(unit) << QByteArray(wanted) << QByteArray(words);
        };
        row("26", "psi", "kPa", "179 kPa, rounded");
        row("26.0000", "psi", "kPa", "179.264 kPa, rounded");
        row("26.000", "psi", "bar", "1.7926 bar, rounded");
        row("30.0000", "psi", "kPa", "206.843 kPa, rounded");
        row("42.0000", "psi", "kPa", "289.580 kPa, rounded");
        row("1", "in", "mm", "25.4 mm");
        row("1", "ft", "in", "12 in");
        row("26", "m", "mm", "26000 mm");
        row("1", "gal", "qt", "4 qt");
        row("1", "qt", "mL", "946 mL, rounded");
        row("0.005", "mm", "in", "0.000197 in, rounded");
        row("-40", "°C", "°F", "-40 °F");
        row("0", "°C", "°F", "32 °F");
        row("100", "°F", "°C", "37.8 °C, rounded");
        row("32", "°F", "°C", "0 °C");
        row("90", "min", "h", "1.5 h");
        row("0", "psi", "bar", "0 bar");
        row("-999.5", "mm", "cm", "-99.95 cm");
        row("999999999999999", "kg", "kg", "999999999999999 kg");
    }
    void shown() {
        QFETCH(QByteArray, value);
        QFETCH(QByteArray, unit);
        QFETCH(QByteArray, wanted);
        QFETCH(QByteArray, words);
        const auto shown =
            judge::shownIn(number(value.constData()), unit.toStdString(), wanted.toStdString());
        QVERIFY(shown);
        QCOMPARE(QByteArray::fromStdString(judge::toText(*shown, wanted.toStdString())), words);
    }
    void tooLargeToShow() {
        const auto shown = judge::shownIn(number("999999999999999"), "gal", "mL");
        QVERIFY(!shown);
        QCOMPARE(shown.error().code, ErrorCode::invalid);
    }

    /// The very limit, entered in another unit, is within; a hair beyond is not.
    void atTheLimit() {
        QCOMPARE(judge::against(limit("", "25.4", "mm"), number("1"), "in").value(), Verdict::within);
        QCOMPARE(judge::against(limit("", "25.4", "mm"), number("1.00000000000001"), "in").value(),
                 Verdict::above);
        QCOMPARE(judge::against(limit("1", "", "lb"), number("0.45359237"), "kg").value(), Verdict::within);
        QCOMPARE(judge::against(limit("1", "", "lb"), number("0.45359236999999"), "kg").value(),
                 Verdict::below);
        QCOMPARE(judge::against(limit("231", "231", "qt"), number("57.75"), "gal").value(), Verdict::within);
        // 26 psi is 179.26368976… kPa.
        QCOMPARE(judge::against(limit("26", "", "psi"), number("179.263"), "kPa").value(), Verdict::below);
        QCOMPARE(judge::against(limit("26", "", "psi"), number("179.264"), "kPa").value(), Verdict::within);
        QCOMPARE(judge::against(limit("", "37.5", "°C"), number("99.5"), "°F").value(), Verdict::within);
        QCOMPARE(judge::against(limit("", "37.5", "°C"), number("99.50000000001"), "°F").value(),
                 Verdict::above);
        QCOMPARE(judge::against(limit("", "3", ""), number("3"), "").value(), Verdict::within);
        QCOMPARE(judge::against(limit("", "3", "threads"), number("4"), "threads").value(), Verdict::above);
    }

    void whatCannotBeCompared() {
        const auto other = judge::against(limit("26", "", "psi"), number("2"), "mm");
        QVERIFY(!other);
        QCOMPARE(other.error().what, std::string("“mm” and “psi” are units of different quantities."));
        const auto unknown = judge::against(limit("26", "", "psi"), number("2"), "furlong");
        QVERIFY(!unknown);
        QCOMPARE(unknown.error().code, ErrorCode::unsupported);
        QVERIFY(!unknown.error().remedy.empty());
        QVERIFY(!judge::shownIn(number("1"), "kg", "L"));
        QVERIFY(!judge::compare(number("1"), "kg", number("1"), ""));
    }

    /// Each pair of units: there and back with 15 digits is the same to 12; order is kept either way.
    void roundTripsAndOrder() {
        std::mt19937 chance(7);
        int tried = 0;
        for (const auto& from : judge::units())
            for (const auto& to : judge::units()) {
                if (from.quantity != to.quantity || &from == &to) continue;
                for (int i = 0; i < 200; ++i) {
                    const auto draw = [&] {
                        return Decimal::parse(std::to_string(1 + chance() % 999) + "." +
                                              std::to_string(100'000'000 + chance() % 900'000'000));
                    };
                    const Decimal a = draw().value();
                    const Decimal b = draw().value();
                    const auto there = judge::shownIn(a, from.name, to.name);
                    const auto thereB = judge::shownIn(b, from.name, to.name);
                    QVERIFY(there && thereB);
                    const auto back = judge::shownIn(there->value, to.name, from.name);
                    QVERIFY(back);
                    QVERIFY(std::abs(back->value.approximate() - a.approximate()) <
                            1e-6 * (500 + a.approximate()));
                    QVERIFY(a <= b ? there->value <= thereB->value : there->value >= thereB->value);
                    const auto exact = judge::compare(a, from.name, thereB->value, to.name);
                    const auto turned = judge::compare(thereB->value, to.name, a, from.name);
                    QVERIFY(exact && turned);
                    QCOMPARE(std::is_lt(*exact), std::is_gt(*turned));
                    if (!there->rounded)
                        QVERIFY(std::is_eq(judge::compare(a, from.name, there->value, to.name).value()));
                    ++tried;
                }
            }
        QVERIFY(tried > 5000);
    }
};

QTEST_APPLESS_MAIN(TestUnits)
#include "tst_units.moc"
