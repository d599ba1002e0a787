// Lines through values against certified and others' figures (README.md says where they are from).
#include "base/files.hpp"
#include "judge/fit.hpp"
#include "judge/student.hpp"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTest>
#include <cmath>

using namespace ambit;

namespace {

QJsonDocument read(const char* name) {
    const auto text = readFile(std::string(AMBIT_ROOT "/tests/reference/trend/") + name);
    return text ? QJsonDocument::fromJson(QByteArray::fromStdString(*text)) : QJsonDocument();
}

Decimal decimal(const QJsonValue& value) {
    const QString text = value.isString() ? value.toString() : QString::number(value.toDouble(), 'g', 15);
    return Decimal::parse(text.toStdString()).value();
}

bool agrees(double ours, double theirs, double relative) {
    const bool same = std::abs(ours - theirs) <= relative * std::max(std::abs(theirs), 1e-3);
    if (!same) qWarning("%.17g, not %.17g", ours, theirs);
    return same;
}

std::vector<judge::Sample> strd(const QJsonObject& set) {
    std::vector<judge::Sample> samples;
    const QJsonArray x = set["x"].toArray();
    const QJsonArray y = set["y"].toArray();
    for (qsizetype i = 0; i < x.size(); ++i)
        samples.push_back({decimal(x[i].toArray()[0]), decimal(y[i])});
    return samples;
}

} // namespace

class TestTrendPublished : public QObject {
    Q_OBJECT

private slots:
    /// NIST StRD, Norris, to 13 digits; the interval at 500 as worked out for this test from the formula.
    void norris() {
        const QJsonObject set = read("strd.json").object()["Norris"].toObject();
        const auto samples = strd(set);
        QCOMPARE(samples.size(), std::size_t{36});
        const auto fit = judge::leastSquares(samples).value();
        QVERIFY(agrees(fit.line.intercept, set["beta"][0].toString().toDouble(), 1e-13));
        QVERIFY(agrees(fit.line.slope, set["beta"][1].toString().toDouble(), 1e-13));
        QVERIFY(agrees(fit.residual, set["resid_sd"].toString().toDouble(), 1e-13));
        QVERIFY(agrees(fit.originError, set["se"][0].toString().toDouble(), 1e-13));
        QVERIFY(agrees(fit.slopeError, set["se"][1].toString().toDouble(), 1e-12));
        QVERIFY(agrees(fit.line.at(500), 500.796085936, 1e-11));
        const auto line = judge::confidenceAt(fit, 500, 0.95);
        const auto next = judge::predictionAt(fit, 500, 0.95);
        QVERIFY(agrees((line.high - line.low) / 2, 0.307889465, 1e-8));
        QVERIFY(agrees((next.high - next.low) / 2, 1.824291882, 1e-9));
        const auto robust = judge::theilSen(samples).value();
        QVERIFY(agrees(robust.line.slope, 1.00219683655536, 1e-13));
        QVERIFY(agrees(robust.line.intercept, -0.301098418277685, 1e-11));
        QVERIFY(agrees(robust.through, -0.0640158172232077, 1e-11));
    }
    void noIntercept() {
        const QJsonObject set = read("strd.json").object()["NoInt1"].toObject();
        const auto fit = judge::throughOrigin(strd(set)).value();
        QVERIFY(agrees(fit.slope, set["beta"][0].toString().toDouble(), 1e-13));
        QVERIFY(agrees(fit.slopeError, set["se"][0].toString().toDouble(), 1e-12));
        QVERIFY(agrees(fit.residual, set["resid_sd"].toString().toDouble(), 1e-13));
    }
    /// Quantiles of the usual tables (from memory), and the one of 34 degrees to 12 digits.
    void quantiles() {
        QVERIFY(agrees(judge::studentQuantile(0.95, 34), 2.03224450932, 1e-11));
        QVERIFY(agrees(judge::studentQuantile(0.95, 1), 12.7062, 1e-5));
        QVERIFY(agrees(judge::studentQuantile(0.95, 2), 4.30265, 1e-5));
        QVERIFY(agrees(judge::studentQuantile(0.99, 3), 5.84091, 1e-5));
        QVERIFY(agrees(judge::studentQuantile(0.90, 10), 1.81246, 1e-5));
        QVERIFY(agrees(judge::studentQuantile(0.95, 9998), 1.96020, 1e-5));
        QVERIFY(agrees(judge::normalQuantile(0.95), 1.959963984540054, 1e-14));
    }

    void invented_data() {
        QTest::addColumn<int>("number");
        const auto cases = read("cases.json").array();
        QCOMPARE(cases.size(), 20);
        for (int i = 0; i < cases.size(); ++i)
            QTest::addRow("%d", i) << i;
    }
    void invented() {
        QFETCH(int, number);
        const QJsonObject set = read("cases.json").array()[number].toObject();
        std::vector<judge::Sample> samples;
        const QJsonArray x = set["x"].toArray();
        for (qsizetype i = 0; i < x.size(); ++i)
            samples.push_back({decimal(x[i]), decimal(set["y"].toArray()[i])});
        const auto robust = judge::theilSen(samples).value();
        // Theirs are quotients of differences of binary floats: good to some 13 digits.
        QVERIFY(agrees(robust.line.slope, set["ts_slope"].toDouble(), 1e-11));
        QVERIFY(agrees(robust.through, set["ts_icpt"].toDouble(), 1e-11));
        QVERIFY(agrees(robust.slope.low, set["ts_lo"].toDouble(), 1e-11));
        QVERIFY(agrees(robust.slope.high, set["ts_hi"].toDouble(), 1e-11));
        const auto fit = judge::leastSquares(samples).value();
        const double at = set["x0"].toDouble();
        QVERIFY(agrees(fit.line.slope, set["ols_slope"].toDouble(), 1e-10));
        QVERIFY(agrees(fit.line.intercept, set["ols_icpt"].toDouble(), 1e-10));
        QVERIFY(agrees(fit.line.at(at), set["pred"].toDouble(), 1e-10));
        const auto next = judge::predictionAt(fit, at, 0.95);
        // Their t quantiles seem good to some 8 digits: ours agree with a third library's to 13.
        const double half = (set["pi_hi"].toDouble() - set["pi_lo"].toDouble()) / 2;
        QVERIFY(agrees((next.high - next.low) / 2, half, 1e-8));
    }
};

QTEST_APPLESS_MAIN(TestTrendPublished)
#include "tst_trend_published.moc"
