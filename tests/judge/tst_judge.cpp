// A measured value against its limit, in exact decimals.
#include "judge/limit.hpp"

#include <QTest>

using namespace ambit;
using judge::Verdict;

namespace {

airframe::Limit limit(const char* min, const char* max) {
    airframe::Limit limit{"Oil", "qt", {}, {}, ""};
    if (*min != 0) limit.min = Decimal::parse(min).value();
    if (*max != 0) limit.max = Decimal::parse(max).value();
    return limit;
}

} // namespace

class TestJudge : public QObject {
    Q_OBJECT

private slots:
    void verdict_data() {
        QTest::addColumn<QByteArray>("min");
        QTest::addColumn<QByteArray>("max");
        QTest::addColumn<QByteArray>("value");
        QTest::addColumn<int>("verdict");
        const auto row = [](const char* name, const char* min, const char* max, const char* value,
                            Verdict verdict) {
            QTest::newRow(name) << QByteArray(min) << QByteArray(max) << QByteArray(value)
                                << static_cast<int>(verdict);
        };
        row("the lower limit itself", "4", "6", "4.00", Verdict::within);
        row("the upper limit itself", "4", "6", "6.0", Verdict::within);
        row("a hair below", "4", "6", "3.9999999999999", Verdict::below);
        row("a hair above", "4", "6", "6.0000000000001", Verdict::above);
        row("no lower limit", "", "0.3", "-5", Verdict::within);
        row("no upper limit", "0.3", "", "99999", Verdict::within);
        row("where binary floats would err", "", "0.3", "0.30000000000000", Verdict::within);
    }
    void verdict() {
        QFETCH(QByteArray, min);
        QFETCH(QByteArray, max);
        QFETCH(QByteArray, value);
        QFETCH(int, verdict);
        const auto measured = Decimal::parse(value.toStdString()).value();
        QCOMPARE(static_cast<int>(judge::against(limit(min, max), measured)), verdict);
    }

    void words() {
        QCOMPARE(judge::toText(limit("4", "6.0")), std::string("4 to 6.0 qt"));
        QCOMPARE(judge::toText(limit("4", "")), std::string("at least 4 qt"));
        QCOMPARE(judge::toText(limit("", "2.0")), std::string("at most 2.0 qt"));
    }
};

QTEST_APPLESS_MAIN(TestJudge)
#include "tst_judge.moc"
