// Thousands of random runs over a network that delays, and cuts at any frame: at every moment what a watcher
// has stored is a beginning of the walker's log, byte for byte; in the end it is the log.
#include "network.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::test;

namespace {

class Run {
public:
    explicit Run(unsigned seed) : random(seed) {
        constexpr std::array windows{1, 2, 5, 32, 256, 1024};
        for (std::size_t count = 1 + below(3); count > 0; --count)
            lines.push_back(std::make_unique<Line>(walker, random, "Watcher " + std::to_string(count),
                                                   windows[below(windows.size())]));
        if (below(4) > 0) walker.begin(); // else there is no round yet
    }

    /// "": all went well.
    std::string go() {
        const std::size_t steps = 100 + below(500);
        for (std::size_t i = 0; i < steps; ++i) {
            happen();
            if (auto wrong = look(); !wrong.empty()) return wrong;
        }
        if (walker.now.empty()) walker.begin();
        const bool isSigned = below(4) > 0 && sign();
        for (std::size_t i = 0; i < steps; ++i) {
            happen();
            if (isSigned && below(20) == 0) lines[below(lines.size())]->countersign(newId());
            if (auto wrong = look(); !wrong.empty()) return wrong;
        }
        settle();
        if (auto wrong = look(); !wrong.empty()) return wrong;
        return end();
    }

    std::size_t cuts = 0;
    std::size_t events = 0;

private:
    std::size_t below(std::size_t most) { return random() % most; }

    std::string newId() {
        std::string id;
        while (id.size() < 32)
            id += "0123456789abcdef"[below(16)];
        return id;
    }

    std::string someWords() {
        static const std::array pieces{"sound ", "“quoted” ",           "\n", "\\", "\"", "é", "🛩",
                                       "/",      "a long row of words "};
        std::string words = ".";
        for (std::size_t n = below(20); n > 0; --n)
            words += pieces[below(pieces.size())];
        return words;
    }

    bool sign() {
        if (walker.isClosed()) return false;
        walker.seal({"record " + newId(), std::string(below(300000), 'p') + newId()});
        return true;
    }

    void walk() {
        if (walker.isClosed()) return;
        ++events;
        if (below(12) > 0) return walker.append(round::Note{someWords()});
        const std::size_t size = below(10) == 0 ? 250000 : 300;
        round::Settled settled = finding("oil");
        const std::string bytes = newId() + std::string(below(size), 'x');
        settled.photos = {{walker.keep(bytes), "image/png", std::int64_t(bytes.size())}};
        walker.append(settled);
    }

    void happen() {
        Line& line = *lines[below(lines.size())];
        const std::size_t what = below(400);
        if (what < 80) {
            walk();
        } else if (what < 82) {
            if (below(2) == 0) (void)sign();
            if (walker.logs.size() < 4) walker.begin();
        } else if (what < 88) {
            cuts += line.isConnected() ? 1 : 0;
            line.cut();
        } else if (what < 90) {
            cuts += line.isConnected() ? 1 : 0;
            line.kill();
        } else if (what < 110) {
            if (!line.isConnected()) line.connect();
        } else if (what < 114) {
            line.say(newId());
        } else {
            (void)line.step(static_cast<unsigned>(random()));
        }
        std::vector<std::string> names;
        for (const auto& one : lines)
            if (one->isIn()) names.push_back(one->device.name);
        if (names != walker.hand.watching()) walker.hand.watch(names);
    }

    /// What must hold at every moment.
    std::string look() {
        for (const auto& line : lines) {
            if (!line->trouble.empty()) return line->trouble;
            for (const auto& [round, stored] : line->device.logs) {
                const auto log = walker.logs.find(round);
                if (stored.empty()) continue;
                if (log == walker.logs.end() || stored.size() > log->second.size())
                    return "more than was walked";
                std::size_t& seen = looked[{line.get(), round}];
                for (; seen < stored.size(); ++seen)
                    if (stored[seen] != log->second[seen]) return "another event than was walked";
            }
        }
        return walker.readsWhileWalking == 0 ? "" : "the walk waited for a watcher";
    }

    /// The network is well again, until nobody has anything more to say.
    void settle() {
        for (int quiet = 0; quiet < 3;) {
            bool moved = false;
            for (const auto& line : lines) {
                if (!line->isConnected()) line->connect();
                for (unsigned which = 0; which < 4; ++which)
                    while (line->step(which))
                        moved = true;
            }
            std::vector<std::string> names;
            for (const auto& one : lines)
                names.push_back(one->device.name);
            if (names != walker.hand.watching()) walker.hand.watch(names);
            quiet = moved ? 0 : quiet + 1;
        }
    }

    std::string end() {
        for (const auto& line : lines) {
            if (line->device.logs[walker.now] != walker.log()) return "not all of the log";
            if (!line->openSay.empty()) return "what was said is not answered";
            for (const std::string& id : line->said)
                if (walker.timesInLogs(id) != (line->refused.contains(id) ? 0 : 1)) return "said not once";
            if (line->offered && !line->isOfferHeard) return "an offer is not answered";
            if (walker.hand.sealed() && line->sealed != walker.hand.sealed()) return "another record";
            if (walker.hand.sealed())
                for (const File& file : walker.hand.sealed()->files)
                    if (line->got[file.sha256] != walker.files[file.sha256])
                        return "a file of the record is missing";
            for (const std::string& text : walker.log())
                for (const auto& [hash, bytes] : walker.files)
                    if (text.find(hash) != std::string::npos && line->got[hash] != bytes)
                        return "a file is missing";
            if (line->watching != walker.hand.watching()) return "others watch than was told";
        }
        return "";
    }

    std::mt19937 random;
    Walker walker;
    std::vector<std::unique_ptr<Line>> lines;
    std::map<std::pair<const Line*, std::string>, std::size_t> looked;
};

} // namespace

class TestWatchNetwork : public QObject {
    Q_OBJECT

private slots:
    void randomRuns_data() {
        QTest::addColumn<unsigned>("first");
        for (unsigned portion = 0; portion < 12; ++portion)
            QTest::addRow("from seed %u", portion * 250) << portion * 250;
    }
    void randomRuns() {
        QFETCH(unsigned, first);
        std::size_t cuts = 0;
        std::size_t events = 0;
        for (unsigned seed = first; seed < first + 250; ++seed) {
            Run run(seed);
            const std::string wrong = run.go();
            QVERIFY2(wrong.empty(), ("seed " + std::to_string(seed) + ": " + wrong).c_str());
            cuts += run.cuts;
            events += run.events;
        }
        QVERIFY(cuts > 1000); // the network was as bad as it is meant to be
        QVERIFY(events > 10000);
    }
};

QTEST_APPLESS_MAIN(TestWatchNetwork)
#include "tst_watch_network.moc"
