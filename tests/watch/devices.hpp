// A walker's and a watcher's device in memory, as platform would build them round a Sender and a Receiver.
#pragma once

#include "logs.hpp"
#include "watch/receiver.hpp"
#include "watch/sender.hpp"

#include <map>

namespace ambit::test {

using Files = std::map<std::string, std::string>; ///< by the hash of their bytes

inline watch::ReadBytes readFrom(const Files& files, int& reads) {
    return
        [&](const std::string& sha256, std::int64_t from, std::size_t most) -> std::optional<watch::Chunk> {
            ++reads;
            const auto found = files.find(sha256);
            if (found == files.end() || from >= std::int64_t(found->second.size())) return std::nullopt;
            return watch::Chunk{std::int64_t(found->second.size()),
                                found->second.substr(std::size_t(from), most)};
        };
}

/// Walks rounds; its log is committed before anybody is told.
class Walker {
public:
    Walker() = default;
    Walker(const Walker&) = delete;
    Walker& operator=(const Walker&) = delete;

    void append(const round::Event& event) {
        if (std::holds_alternative<round::Opened>(event.what)) now = round::roundId(event);
        logs[now].push_back(bytesOf(event));
        const int before = reads;
        hand.append(event);
        readsWhileWalking += reads - before;
    }
    void append(round::What what) {
        append(round::Event{std::int64_t(log().size()) + 1, {1750000000000 + ++clock}, std::move(what)});
    }
    /// The first event of another round.
    void begin() {
        round::Opened opened = opening(theMachine());
        opened.airframeSha256 = keep("a description of " + std::to_string(clock));
        append(round::Event{1, {1750000000000 + (clock += 1000)}, std::move(opened)});
    }
    /// The end of it: signed, with a record of these files.
    void seal(const std::vector<std::string>& bytes) {
        append(round::Signed{std::string(64, 'e'), std::string(64, 'f'), "Robin Example"});
        reseal(now, bytes);
    }
    void reseal(const std::string& round, const std::vector<std::string>& bytes) {
        std::vector<watch::File> record;
        record.reserve(bytes.size());
        for (const std::string& one : bytes)
            record.push_back({record.empty() ? watch::FileKind::json : watch::FileKind::pdf, keep(one),
                              std::int64_t(one.size())});
        hand.seal({round, std::string(64, 'e'), record});
    }
    std::string keep(const std::string& bytes) {
        std::string hash = sha256Hex(bytes);
        files[hash] = bytes;
        return hash;
    }

    [[nodiscard]] const std::vector<std::string>& log() const { return logs.at(now); }
    /// Nothing can be put into a log now.
    [[nodiscard]] bool isClosed() const {
        return now.empty() || log().back().find("\"signed\"") != std::string::npos;
    }
    [[nodiscard]] int timesInLogs(const std::string& words) const {
        int times = 0;
        for (const auto& [round, its] : logs)
            for (const std::string& line : its)
                times += line.find(words) != std::string::npos ? 1 : 0;
        return times;
    }
    watch::Sender::Reads how() {
        return {[this](const std::string& round, std::int64_t seq) -> std::optional<std::string> {
                    ++reads;
                    const auto found = logs.find(round);
                    if (isBroken || found == logs.end() || seq > std::int64_t(found->second.size()))
                        return std::nullopt;
                    return found->second[std::size_t(seq) - 1];
                },
                readFrom(files, reads)};
    }
    std::unique_ptr<watch::Sender> sender() {
        return std::make_unique<watch::Sender>("Robin Example", hand, how());
    }

    std::map<std::string, std::vector<std::string>> logs;
    std::string now;
    watch::InHand hand;
    Files files;
    int reads = 0;
    int readsWhileWalking = 0;
    bool isBroken = false;
    std::int64_t clock = 0;
};

class Watcher {
public:
    explicit Watcher(std::string its = "Ida Example") : name(std::move(its)) {}
    Watcher(const Watcher&) = delete;
    Watcher& operator=(const Watcher&) = delete;

    void store(const watch::Logged& logged) { logs[logged.round].push_back(logged.json); }
    watch::Receiver::Reads how() {
        return {[this](const std::string& round) {
                    watch::Held held;
                    for (const std::string& line : logs[round]) {
                        held.bytes += std::int64_t(line.size());
                        held.last = sha256Hex(line);
                        ++held.upTo;
                        if (line.find(R"("kind":"signed")") != std::string::npos)
                            held.recordSha256 = std::string(64, 'e');
                    }
                    return held;
                },
                readFrom(files, reads)};
    }
    std::unique_ptr<watch::Receiver> receiver(int window = 256) {
        return std::make_unique<watch::Receiver>(watch::Hello{name, {}}, how(), window);
    }

    std::string name;
    std::map<std::string, std::vector<std::string>> logs;
    Files files;
    int reads = 0;
};

} // namespace ambit::test
