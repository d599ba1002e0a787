// The watcher's end of a live watch without a network.
#pragma once

#include "model/links.hpp"

#include <utility>
#include <vector>

namespace ambit::test {

/// Records what it is asked to do; the test speaks for it.
class PlayedLink : public view::LinkToWalkers {
public:
    std::vector<watch::Walker> atFirst;
    std::vector<watch::Invitation> joined;
    std::vector<std::uint64_t> left;
    std::vector<std::string> forgotten;
    std::vector<std::pair<std::uint64_t, watch::Say>> said;
    std::vector<std::pair<std::string, watch::RecordHere>> offered;

    [[nodiscard]] std::vector<watch::Walker> knownAtFirst() const override { return atFirst; }
    std::uint64_t join(const watch::Invitation& invitation) override {
        joined.push_back(invitation);
        return ++last;
    }
    std::uint64_t join(const watch::Walker& walker) override {
        joined.push_back({walker.addresses, walker.port, walker.who.certificateSha256, {}});
        return ++last;
    }
    void leave(std::uint64_t walker) override { left.push_back(walker); }
    void forget(const std::string& certificate) override { forgotten.push_back(certificate); }
    void say(std::uint64_t walker, const watch::Say& what) override { said.emplace_back(walker, what); }
    void offer(std::uint64_t, const std::string& id, const watch::RecordHere& record) override {
        offered.emplace_back(id, record);
    }

private:
    std::uint64_t last = 0;
};

} // namespace ambit::test
