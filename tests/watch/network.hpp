// A network in memory between one walker and some watchers: frames wait, connections are cut with whatever is
// on its way, devices are killed and come back. Everything by one seed.
#pragma once

#include "devices.hpp"

#include <deque>
#include <random>
#include <set>

namespace ambit::test {

using namespace ambit::watch;

inline const std::string sealedRecord(64, 'e');

/// One watcher's device and its connection, if there is one.
class Line {
public:
    Line(Walker& its, std::mt19937& generator, const std::string& name, int itsWindow)
        : device(name), walker(its), random(generator), window(itsWindow) {}

    void connect() {
        sender = walker.sender();
        receiver = device.receiver(window);
        if (!openSay.empty()) must(receiver->say(sayOf(openSay)));
        if (offered && !isOfferHeard) must(receiver->offer(*offered));
    }
    /// Whatever is on its way is lost.
    void cut() {
        if (!sender) return;
        if (auto left = receiver->letGo()) fetching = std::move(left);
        if (auto left = sender->letGo()) toWalker = std::move(left);
        sender.reset();
        receiver.reset();
        down.clear();
        up.clear();
    }
    /// What is stored stays, what was only in memory is gone.
    void kill() {
        cut();
        fetching.reset();
    }
    [[nodiscard]] bool isConnected() const { return sender != nullptr; }
    [[nodiscard]] bool isIn() const { return receiver && receiver->isIn(); }

    /// One thing that can happen on the line; false: it couldn't.
    bool step(unsigned which) {
        if (!sender) return false;
        switch (which % 4) {
        case 0:
            return write(*sender, down);
        case 1:
            wish();
            return write(*receiver, up);
        case 2:
            return read(down, [this](const std::string& text) { atWatcher(text); });
        default:
            return read(up, [this](const std::string& text) { atWalker(text); });
        }
    }
    void say(const std::string& id) {
        if (!openSay.empty()) return;
        openSay = id;
        said.insert(id);
        if (receiver) must(receiver->say(sayOf(id)));
    }
    /// The record with one more signature, once it was told of.
    void countersign(const std::string& id) {
        if (!sealed || offered) return;
        const std::string json = "countersigned by " + device.name + std::string(random() % 200000, 's');
        device.files[sha256Hex(json)] = json;
        offered = Offer{id, sealedRecord, {{FileKind::json, sha256Hex(json), std::int64_t(json.size())}}};
        if (receiver) must(receiver->offer(*offered));
    }

    Watcher device;
    std::string openSay; ///< said, not answered
    std::set<std::string> said;
    std::optional<Sealed> sealed; ///< as last told
    std::optional<Offer> offered;
    bool isOfferHeard = false;
    std::set<std::string> refused; ///< ids of what was said, and not put into the log
    std::vector<std::string> watching;
    Files got; ///< whole
    int gone = 0;
    std::string trouble; ///< the first thing that should not have happened

private:
    static constexpr std::size_t mostOnTheWay = 6;

    void must(const Result<void>& done) {
        if (!done && trouble.empty()) trouble = toText(done.error());
    }
    static Say sayOf(const std::string& id) { return {id, "{\"id\":\"" + id + "\"}", "x"}; }

    template<class Side> bool write(Side& side, std::deque<std::string>& queue) {
        if (queue.size() >= mostOnTheWay) return false; // the connection has no room
        auto text = side.next();
        if (text) queue.push_back(std::move(*text));
        return text.has_value();
    }
    template<class Take> bool read(std::deque<std::string>& queue, const Take& take) {
        if (queue.empty()) return false;
        const std::string text = std::move(queue.front());
        queue.pop_front();
        take(text);
        return true;
    }

    void atWalker(const std::string& text) {
        auto news = sender->take(text);
        if (!news) return must(tl::unexpected(news.error()));
        if (std::holds_alternative<Hello>(*news)) sender->admit();
        if (const auto* what = std::get_if<Say>(&*news)) {
            // Once, however often it is said.
            const bool isThere = walker.timesInLogs(what->id) > 0;
            const bool isClosed = walker.isClosed();
            if (!isThere && !isClosed) walker.append(round::Note{"Said: " + what->id});
            sender->heard(what->id, !isThere && isClosed ? "No round can hear it." : "");
        }
        if (const auto* what = std::get_if<Offer>(&*news)) {
            const File& file = what->files.front();
            if (walker.files.contains(file.sha256)) return sender->heard(what->id);
            offerId = what->id;
            offerRound = walker.now;
            if (!toWalker || toWalker->sha256() != file.sha256) {
                partial.clear();
                toWalker = Fetching::ofSize(file.sha256, file.size);
            }
            must(sender->fetch(std::move(*toWalker)));
            toWalker.reset();
        }
        if (auto* part = std::get_if<Part>(&*news)) {
            partial += part->bytes;
            if (!part->isWhole) return;
            walker.reseal(offerRound, {partial});
            sender->heard(offerId);
            partial.clear();
        }
        if (std::holds_alternative<Gone>(*news) || std::holds_alternative<Bye>(*news))
            must(fail(ErrorCode::invalid, "gone or bye from a watcher"));
    }

    void atWatcher(const std::string& text) {
        auto news = receiver->take(text);
        if (!news) return must(tl::unexpected(news.error()));
        if (const auto* logged = std::get_if<Logged>(&*news)) {
            if (random() % 50 == 0) return kill(); // before it was stored
            device.store(*logged);
            if (const auto* opened = std::get_if<round::Opened>(&logged->event.what))
                wishes[opened->airframeSha256] = 0;
            if (const auto* settled = std::get_if<round::Settled>(&logged->event.what))
                for (const round::Photo& photo : settled->photos)
                    wishes[photo.sha256] = photo.bytes;
        }
        if (const auto* heard = std::get_if<Heard>(&*news)) {
            if (heard->id == openSay) openSay.clear();
            if (offered && heard->id == offered->id) isOfferHeard = true;
            if (!heard->why.empty()) refused.insert(heard->id);
        }
        if (const auto* told = std::get_if<Sealed>(&*news)) {
            sealed = *told;
            for (const File& file : told->files)
                wishes[file.sha256] = file.size;
        }
        if (const auto* told = std::get_if<Watching>(&*news)) watching = told->names;
        if (const auto* missing = std::get_if<Gone>(&*news)) {
            wishes.erase(missing->sha256); // of a round before, or a record signed anew since
            ++gone;
        }
        if (auto* part = std::get_if<Part>(&*news)) {
            std::string& stored = parts[part->sha256];
            if (std::int64_t(stored.size()) != part->from)
                must(fail(ErrorCode::invalid, "a part out of its place"));
            stored += part->bytes;
            if (!part->isWhole) return;
            got[part->sha256] = stored;
            wishes.erase(part->sha256);
        }
        if (const auto* bye = std::get_if<Bye>(&*news)) must(fail(ErrorCode::invalid, bye->why));
    }

    /// Goes on with a file, or begins one.
    void wish() {
        if (!isIn() || receiver->isFetching()) return;
        if (!fetching) {
            if (wishes.empty()) return;
            const auto& [hash, size] = *std::next(wishes.begin(), std::ptrdiff_t(random() % wishes.size()));
            fetching = size == 0 ? Fetching::upTo(hash, largestAirframe) : Fetching::ofSize(hash, size);
            fetching->resume(parts[hash]);
        }
        must(receiver->fetch(std::move(*fetching)));
        fetching.reset();
    }

    Walker& walker;
    std::mt19937& random;
    int window;
    std::unique_ptr<Sender> sender;
    std::unique_ptr<Receiver> receiver;
    std::deque<std::string> down;
    std::deque<std::string> up;
    std::map<std::string, std::int64_t> wishes; ///< files to be fetched; 0: of unknown size
    Files parts;                                ///< what is stored of them
    std::optional<Fetching> fetching;
    std::optional<Fetching> toWalker;
    std::string partial;
    std::string offerId;
    std::string offerRound;
};

} // namespace ambit::test
