// The order of a file's records: each after those it names; what came of what. Inside core/file only.
#pragma once

#include "base/time.hpp"

#include <map>
#include <string>
#include <vector>

namespace ambit::file {

struct Link {
    std::string sha256;
    Instant at;
    std::vector<std::string> previous;
};

class Order {
public:
    /// A record that is there more than once counts once.
    explicit Order(const std::vector<Link>& links);

    /// Places in `links`: each after those it names, as far as they are there; else the earlier first, and of
    /// equal times the smaller hash.
    [[nodiscard]] const std::vector<std::size_t>& sequence() const { return order; }
    /// Did whoever made `later` know of `earlier`, directly or through others?
    [[nodiscard]] bool knew(const std::string& later, const std::string& earlier) const;

private:
    std::map<std::string, std::size_t> place;       ///< in `order`, by hash
    std::vector<std::vector<std::size_t>> previous; ///< by place, places
    std::vector<std::size_t> order;
};

} // namespace ambit::file
