#include "fleet/pen.hpp"

#include "base/hash.hpp"
#include "record/content.hpp"
#include "record/record.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::fleet {

Result<std::string> Pen::round(const airframe::Airframe& airframe, const std::vector<round::Event>& events,
                               const Somebody& by, int device, const std::optional<Second>& second) {
    const auto which = static_cast<std::size_t>(device);
    const auto content = record::roundContent(airframe, events, heads.at(which));
    if (!content) return tl::unexpected(content.error());
    return give(*content, by, device, second);
}

Result<Json> Pen::contentOf(LocalInstant at, const Signing& by, const record::Entry& entry) const {
    return record::entryContent({machine->registration, machine->serial, at, heads[0], by.who->as(by.role)},
                                entry);
}

Result<std::string> Pen::entry(LocalInstant at, const Signing& by, const record::Entry& entry) {
    join();
    const auto content = contentOf(at, by, entry);
    if (!content) return tl::unexpected(content.error());
    return give(*content, *by.who, 0, std::nullopt);
}

Result<void> Pen::entryToLetGo(LocalInstant at, const Signing& by, const record::Entry& entry) {
    join();
    const auto content = contentOf(at, by, entry);
    if (!content) return tl::unexpected(content.error());
    std::string identity = record::identityOf(*content);
    gone.push_back({identity, heads[0], record::kindOf(entry), at.at});
    now(0, std::move(identity));
    return {};
}

Result<std::string> Pen::give(const Json& content, const Somebody& by, int device,
                              const std::optional<Second>& second) {
    auto json = record::signRecord(content, by.key);
    if (json && second)
        json = record::countersignRecord(*json, second->who->key, second->who->as(second->role), second->at);
    if (!json) return json;
    // Its content stands in the record in canonical form, between these two.
    constexpr std::string_view before = R"({"content":)";
    constexpr std::string_view after = R"(,"signatures":[)";
    const std::string_view whole = *json;
    std::string identity = sha256Hex(whole.substr(before.size(), whole.rfind(after) - before.size()));
    if (auto taken = (*take)(*machine, std::move(*json)); !taken) return tl::unexpected(taken.error());
    ++count;
    now(device, identity);
    return identity;
}

void Pen::now(int device, std::string identity) {
    const auto which = static_cast<std::size_t>(device);
    if (apart) {
        wrote.at(which) = true;
        heads.at(which) = {std::move(identity)};
    } else {
        heads[0] = heads[1] = {std::move(identity)};
    }
}

void Pen::part() {
    apart = true;
    wrote = {};
}

void Pen::join() {
    if (!apart) return;
    apart = false;
    if (wrote[0] && wrote[1]) ++joined;
    std::vector<std::string> all = wrote[0] ? heads[0] : std::vector<std::string>();
    if (wrote[1]) all.insert(all.end(), heads[1].begin(), heads[1].end());
    if (all.empty()) all = heads[0];
    std::sort(all.begin(), all.end());
    heads[0] = heads[1] = all;
}

} // namespace ambit::fleet
