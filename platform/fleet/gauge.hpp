// Measured values over an aircraft's life: what is used up and filled again, and what wears until it is
// replaced.
#pragma once

#include "airframe/airframe.hpp"
#include "fleet/chance.hpp"

#include <string>

namespace ambit::fleet {

class Gauge {
public:
    Gauge(const airframe::Limit& limit, Chance& chance);

    /// It is used up and filled again; what is too low is filled by who measures it.
    [[nodiscard]] bool isFilled() const { return kind != Kind::wears; }
    /// After so many tenths of an hour.
    void wear(int tenths, Chance& chance);
    void renew(Chance& chance); ///< repaired
    void fill(Chance& chance);
    [[nodiscard]] bool isWithin() const;
    [[nodiscard]] std::string value() const; ///< with as many decimals as the limit

private:
    enum class Kind { fuel, oil, wears };

    Kind kind = Kind::wears;
    int decimals = 0;
    double low = 0;   ///< the limit's, in its unit; where it has none, what can't be less
    double high = 0;  ///< the limit's, or what can't be more
    double level = 0; ///< now
    double fresh = 0; ///< when new
    double worn = 0;  ///< the limit that it comes to
    double hours = 0; ///< from fresh to worn
};

} // namespace ambit::fleet
