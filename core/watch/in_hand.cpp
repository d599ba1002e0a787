#include "watch/in_hand.hpp"

#include <algorithm>

namespace ambit::watch {

void InHand::append(const round::Event& event) {
    if (const auto* opened = std::get_if<round::Opened>(&event.what)) {
        id = round::roundId(event);
        named = {opened->airframeSha256};
        record.reset();
    }
    if (const auto* settled = std::get_if<round::Settled>(&event.what))
        for (const round::Photo& photo : settled->photos)
            named.insert(photo.sha256);
    count = event.seq;
}

void InHand::seal(Sealed sealed) {
    if (sealed.round != id) return;
    record = std::move(sealed);
    ++sealings;
}

void InHand::watch(std::vector<std::string> names) {
    who = std::move(names);
    if (who.size() > mostWatching) who.resize(mostWatching);
    ++watchings;
}

bool InHand::names(const std::string& sha256) const {
    if (named.contains(sha256)) return true;
    return record && std::any_of(record->files.begin(), record->files.end(),
                                 [&](const File& file) { return file.sha256 == sha256; });
}

} // namespace ambit::watch
