#include "file/order.hpp"

#include <queue>
#include <set>

namespace ambit::file {

Order::Order(const std::vector<Link>& links) {
    std::map<std::string, std::size_t> number;
    for (std::size_t i = 0; i < links.size(); ++i)
        number.try_emplace(links[i].sha256, i);
    std::vector<std::size_t> waits(links.size(), 0);
    std::vector<std::vector<std::size_t>> next(links.size());
    const auto again = [&](std::size_t i) { return number.at(links[i].sha256) != i; };
    for (std::size_t i = 0; i < links.size(); ++i) {
        if (again(i)) continue;
        for (const std::string& earlier : links[i].previous) {
            const auto found = number.find(earlier);
            if (found == number.end()) continue;
            next[found->second].push_back(i);
            ++waits[i];
        }
    }
    using Key = std::tuple<Instant, std::string, std::size_t>;
    std::priority_queue<Key, std::vector<Key>, std::greater<>> ready;
    const auto offer = [&](std::size_t i) { ready.emplace(links[i].at, links[i].sha256, i); };
    for (std::size_t i = 0; i < links.size(); ++i)
        if (waits[i] == 0 && !again(i)) offer(i);
    while (!ready.empty()) { // a hash can't name what names it: nothing is left over
        const std::size_t i = std::get<2>(ready.top());
        ready.pop();
        place[links[i].sha256] = order.size();
        order.push_back(i);
        std::vector<std::size_t>& before = previous.emplace_back();
        for (const std::string& earlier : links[i].previous)
            if (const auto found = place.find(earlier); found != place.end()) before.push_back(found->second);
        for (const std::size_t later : next[i])
            if (--waits[later] == 0) offer(later);
    }
}

bool Order::knew(const std::string& later, const std::string& earlier) const {
    const auto from = place.find(later);
    const auto to = place.find(earlier);
    if (from == place.end() || to == place.end() || from->second <= to->second) return false;
    std::set<std::size_t, std::greater<>> open{from->second}; // the latest first: none is met twice
    while (!open.empty()) {
        const std::size_t at = *open.begin();
        open.erase(open.begin());
        if (at == to->second) return true;
        for (const std::size_t before : previous[at])
            if (before >= to->second) open.insert(before);
    }
    return false;
}

} // namespace ambit::file
