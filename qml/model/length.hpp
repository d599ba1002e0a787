// Lengths as whoever holds the device reads them: metres or feet. For screens only: logs and records are in
// metres.
#pragma once

#include <QLocale>
#include <QString>

namespace ambit::view {

/// Whether feet are read is the device's country's to say, not the language's. Metric until told. On any
/// thread.
void readLengthsBy(QLocale::MeasurementSystem system);

enum class Grain {
    whole, ///< metres, feet
    fine,  ///< tenths of a metre, halves of a foot
};
/// "112 m", "2.5 m"; where feet are read "367 ft", "8 ft". A foot is 0.3048 m (the international foot, NIST
/// SP 811, B.6).
[[nodiscard]] QString lengthText(double metres, Grain grain);

} // namespace ambit::view
