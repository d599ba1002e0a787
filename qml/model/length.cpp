#include "model/length.hpp"

#include "model/sentence.hpp"

#include <QCoreApplication>
#include <atomic>
#include <cmath>

namespace ambit::view {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

constexpr double metresAFoot = 0.3048;
std::atomic<bool> inFeet = false;

QString figureOf(double value, int decimals) {
    return figureText(QString::number(value, 'f', decimals).toStdString());
}

} // namespace

void readLengthsBy(QLocale::MeasurementSystem system) {
    inFeet = system != QLocale::MetricSystem;
}

QString lengthText(double metres, Grain grain) {
    const bool fine = grain == Grain::fine;
    if (!inFeet) return Words::tr("%1 m", "metres").arg(figureOf(metres, fine ? 1 : 0));
    const double feet = fine ? std::round(metres / metresAFoot * 2) / 2 : std::round(metres / metresAFoot);
    return Words::tr("%1 ft", "feet").arg(figureOf(feet, feet == std::floor(feet) ? 0 : 1));
}

} // namespace ambit::view
