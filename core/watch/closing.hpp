// How a side of a connection ends: one `bye` with the reason, and nothing after it. Inside core/watch only.
#pragma once

#include "watch/frames.hpp"

#include <optional>
#include <string>

namespace ambit::watch {

class Closing {
public:
    /// The first reason is the one that is told.
    void because(const Bye& reason) {
        if (!begun) last = toText(reason);
        begun = true;
    }
    /// The other said `bye`: nothing is answered.
    void silently() {
        begun = true;
        last.reset();
    }
    [[nodiscard]] bool isBegun() const { return begun; } ///< nothing is taken in any more
    [[nodiscard]] bool isOver() const { return begun && !last; }
    [[nodiscard]] std::optional<std::string> next() { return std::exchange(last, std::nullopt); }

private:
    bool begun = false;
    std::optional<std::string> last;
};

} // namespace ambit::watch
