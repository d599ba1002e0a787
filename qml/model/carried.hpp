// What an aircraft carries from round to round, by point: discrepancies that are open, and those that were
// put right and that no round has seen since.
#pragma once

#include "file/file.hpp"
#include "model/unshown.hpp"

#include <QString>
#include <map>

namespace ambit::view {

class Carried {
public:
    Carried() = default;
    explicit Carried(const file::AircraftFile& file, const std::optional<Unshown>& unshown = {});

    /// "Found 3 days ago: …", below it "Deferred 2 days ago on 14 CFR 91.213(d), placard …: has it grown?";
    /// "" where nothing is.
    [[nodiscard]] QString at(const std::string& point, Instant now) const;
    /// "deferred", "grounds", "open", "put right"; "" where nothing is.
    [[nodiscard]] QString inAWord(const std::string& point) const;

    friend bool operator==(const Carried& a, const Carried& b) { return a.mark == b.mark; }

private:
    std::map<std::string, file::Discrepancy> points;
    std::string mark; ///< differs where anything told differs
};

} // namespace ambit::view
