// The two sides together, and each of them with a test in the other's place.
#pragma once

#include "devices.hpp"

namespace ambit::test {

using namespace ambit::watch;

inline const std::string id(32, 'b');

inline std::string textOf(const Frame& frame) {
    return watch::toText(frame);
}

/// A text field of what was said; "": none.
inline std::string field(const std::optional<std::string>& said, const char* name) {
    return said ? Json::parse(*said).value(name, std::string()) : std::string();
}

/// The last word of a side that was wronged; "": it hasn't ended.
template<class Ended> std::string last(Ended& side) {
    const auto said = side.next();
    if (!said || side.next() || !side.isOver()) return "";
    return field(said, "kind") == "bye" && !field(said, "code").empty() ? field(said, "why") : "";
}

inline bool tells(const std::string& why, const char* part) {
    return why.find(part) != std::string::npos;
}

template<class Kind> std::vector<Kind> only(const auto& list) {
    std::vector<Kind> found;
    for (const auto& one : list)
        if (const auto* its = std::get_if<Kind>(&one)) found.push_back(*its);
    return found;
}

/// A walker at the end of its round, and a watcher who has nothing of it.
struct Scene {
    Scene() {
        for (const round::Event& event : wholeRound())
            walker.append(event);
        walker.keep(photoBytes);
    }
    Walker walker;
    Watcher watcher;
};

/// Both sides on one connection that loses nothing.
struct Together {
    Together(Walker& walker, Watcher& theirs, int window = 256)
        : watcher(theirs), sender(walker.sender()), receiver(theirs.receiver(window)) {}

    /// Until neither has anything to say. False: one of them said that the other broke a rule.
    bool run() {
        bool good = true;
        for (bool more = true; more;) {
            more = false;
            while (auto text = receiver->next()) {
                more = true;
                good = atWalker(*text) && good;
            }
            while (auto text = sender->next()) {
                more = true;
                good = atWatcher(*text) && good;
            }
        }
        return good;
    }
    bool atWalker(const std::string& text) {
        auto news = sender->take(text);
        if (!news) return false;
        if (std::holds_alternative<Hello>(*news)) sender->admit();
        fromWatcher.push_back(std::move(*news));
        return true;
    }
    bool atWatcher(const std::string& text) {
        auto news = receiver->take(text);
        if (!news) return false;
        if (const auto* logged = std::get_if<Logged>(&*news)) watcher.store(*logged);
        fromWalker.push_back(std::move(*news));
        return true;
    }

    Watcher& watcher;
    std::unique_ptr<Sender> sender;
    std::unique_ptr<Receiver> receiver;
    std::vector<FromWatcher> fromWatcher;
    std::vector<FromWalker> fromWalker;
};

/// A sender that has let a watcher in and told of its round; what the watcher says is left to the test.
struct Wronged {
    Wronged() : sender(scene.walker.sender()) {
        (void)sender->take(textOf(Hello{"Mallory Example", {}}));
        sender->admit();
        (void)sender->next(); // welcome
        (void)sender->next(); // round
    }
    /// What the sender says to this, as its last word; "": it goes on.
    std::string sends(const std::string& what) {
        const auto logs = scene.walker.logs;
        if (sender->take(what)) return "";
        const std::string why = last(*sender);
        if (scene.walker.logs != logs) return "it wrote";
        if (sender->take(textOf(Want{std::string(64, 'a'), 0})).value().index() != 0)
            return "it listens still";
        return sender->next() ? "it speaks still" : why;
    }
    [[nodiscard]] const std::string& round() const { return scene.walker.now; }
    [[nodiscard]] Have have(std::int64_t upTo, int room) const {
        return {round(), upTo, room,
                upTo > 0 ? sha256Hex(scene.walker.log()[std::size_t(upTo) - 1]) : std::string()};
    }
    Scene scene;
    std::unique_ptr<Sender> sender;
};

/// A receiver that was let in, told of a round, and has asked for it; what the walker says is left to the
/// test.
struct Misled {
    explicit Misled(int window = 8) : receiver(scene.watcher.receiver(window)) {
        (void)receiver->next(); // hello
        (void)receiver->take(textOf(Welcome{"Mallory Example"}));
        (void)receiver->take(textOf(watch::Round{round(), 9}));
        (void)receiver->next(); // have
    }
    [[nodiscard]] Logged event(std::size_t seq) const { return {round(), scene.walker.log()[seq - 1], {}}; }
    void gets(std::size_t seq) {
        const auto news = receiver->take(textOf(event(seq)));
        if (!news) qFatal("%s", toText(news.error()).c_str());
        scene.watcher.store(std::get<Logged>(*news));
    }
    /// What the receiver says to this, as its last word; "": it goes on.
    std::string sends(const std::string& what) {
        const std::int64_t before = receiver->upTo();
        if (receiver->take(what)) return "";
        if (receiver->upTo() != before) return "it took it in";
        const std::string why = last(*receiver);
        if (receiver->take(textOf(event(1))).value().index() != 0) return "it listens still";
        return receiver->next() ? "it speaks still" : why;
    }
    [[nodiscard]] const std::string& round() const { return scene.walker.now; }
    Scene scene;
    std::unique_ptr<Receiver> receiver;
};

} // namespace ambit::test
