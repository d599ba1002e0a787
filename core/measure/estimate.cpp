#include "measure/estimate.hpp"

#include <cmath>

namespace ambit::measure {

Estimate propagated(const std::vector<Input>& inputs,
                    const std::function<double(const std::vector<double>&)>& of) {
    std::vector<double> values;
    values.reserve(inputs.size());
    for (const Input& input : inputs)
        values.push_back(input.value);
    const double value = of(values);
    double variance = 0;
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        const double step = inputs[i].deviation / 4;
        if (!(step > 0)) continue;
        values[i] = inputs[i].value + step;
        const double above = of(values);
        values[i] = inputs[i].value - step;
        const double below = of(values);
        values[i] = inputs[i].value;
        const double moved = (above - below) / (2 * step) * inputs[i].deviation;
        variance += moved * moved;
    }
    const double deviation = std::sqrt(variance);
    return {value, deviation, value - cover95 * deviation, value + cover95 * deviation};
}

} // namespace ambit::measure
