#include "archive/import.hpp"
#include "archive/sealing.hpp"
#include "base/canonical.hpp"
#include "base/encoding.hpp"
#include "base/files.hpp"
#include "cli/commands.hpp"
#include "cli/talk.hpp"
#include "link/watcher_link.hpp"
#include "record/asked.hpp"

#include <QCoreApplication>
#include <QSocketNotifier>
#include <algorithm>
#include <array>
#include <iostream>
#include <nlohmann/json.hpp>
#include <openssl/rand.h>
#include <unistd.h>

namespace ambit::cli {

namespace {

std::string newId() {
    std::array<std::uint8_t, 16> random{};
    if (RAND_bytes(random.data(), static_cast<int>(random.size())) != 1) std::abort();
    return toHex(random);
}

/// Follows one walker and prints what comes.
class Watch : public QObject {
public:
    Watch(const WatchOptions& its, const record::Signer& key, link::WatcherLink& watcherLink,
          std::optional<archive::Archive>& records)
        : options(its), me(key), link(watcherLink), archive(records) {
        connect(&link, &link::WatcherLink::logged, this,
                [this](std::uint64_t, const std::string& roundId, const std::vector<round::Event>& events) {
                    print(roundId, events);
                });
        connect(&link, &link::WatcherLink::roundChanged, this,
                [this](std::uint64_t, const std::string& roundId, std::int64_t) { printStored(roundId); });
        connect(&link, &link::WatcherLink::stateChanged, this,
                [this](std::uint64_t, watch::LinkState state, const Error& why) { tell(state, why); });
        connect(&link, &link::WatcherLink::known, this, [](std::uint64_t, const watch::Peer& who) {
            std::cerr << "Following " << who.name << ", key " << who.certificateSha256 << std::endl;
        });
        connect(&link, &link::WatcherLink::recordHere, this,
                [this](std::uint64_t walker, const watch::RecordHere& record) { keep(walker, record); });
        connect(&link, &link::WatcherLink::heard, this,
                [](std::uint64_t, const std::string&, const std::string& why) {
                    std::cerr << (why.empty() ? "It is kept on the walker's device."
                                              : "Not taken by the walker's device: " + why)
                              << std::endl;
                });
    }
    [[nodiscard]] int code() const { return exit; }

    /// A line of stdin.
    void say(const std::string& line) {
        if (auto done = trySay(line); !done) complain(done.error());
    }

private:
    void print(const std::string& roundId, const std::vector<round::Event>& events) {
        for (const round::Event& event : events) {
            if (roundId == printed.first && event.seq <= printed.second) continue;
            printed = {roundId, event.seq};
            std::cout << canonicalJson(toJson(event)) << '\n';
        }
        std::cout << std::flush;
    }
    /// What an earlier run has kept of it.
    void printStored(const std::string& roundId) {
        auto watched = archive::Archive::open(std::filesystem::path(options.data) / "watched.sqlite");
        if (!watched) return;
        if (const auto events = watched->events(roundId)) print(roundId, *events);
    }
    void tell(watch::LinkState state, const Error& why) {
        if (state == watch::LinkState::in) std::cerr << "Watching." << std::endl;
        if (state == watch::LinkState::lost)
            std::cerr << "The connection is lost; trying again." << std::endl;
        if (state == watch::LinkState::connecting && !why.what.empty())
            std::cerr << "Not there yet: " << toText(why) << std::endl;
        if (state != watch::LinkState::over) return;
        const bool stopped = why.code == ErrorCode::refused && wasIn(); // the walker's device has ended it
        exit = stopped ? Exit::done : exitCodeOf(why);
        if (!why.what.empty()) std::cerr << (stopped ? "" : "ambit: ") << toText(why) << std::endl;
        QCoreApplication::quit();
    }
    [[nodiscard]] bool wasIn() const { return printed.second > 0; }

    void keep(std::uint64_t walker, const watch::RecordHere& record) {
        if (!archive) return;
        std::vector<std::string> files{record.json};
        if (!record.pdf.empty()) files.push_back(record.pdf);
        auto done = archive::takeRecord(*archive, record.sha256, files);
        if (done && options.sign && !hasSigned) done = countersign(walker, record.sha256);
        if (done && !options.out.empty())
            done = archive::exportRecord(*archive, record.sha256, options.out).map([](const auto&) {});
        if (!done) complain(done.error());
    }
    Result<void> trySay(const std::string& line) {
        const auto json = parseJson(line, {.bytes = 65536, .depth = 2});
        if (!json) return tl::unexpected(json.error());
        if (printed.first.empty())
            return fail(ErrorCode::refused, "There is no round to say something to yet.", "",
                        "Wait for one.");
        if (options.role.empty())
            return fail(ErrorCode::invalid, "It is not known in which role you say it.", "",
                        "Start watching with --role.");
        // As the log would have it: the one reader of such statements says what is wrong.
        Json what{{"round", printed.first},
                  {"id", newId()},
                  {"at", toText(now().at)},
                  {"who",
                   {{"name", me.certificate().name},
                    {"role", options.role},
                    {"certificate", options.certificate}}}};
        for (const auto& [name, value] : json->items())
            what[name == "say" ? "kind" : name] = value;
        JsonTape tape;
        const auto view = tape.write(what);
        if (!view) return tl::unexpected(view.error());
        const auto statement = round::statementFrom(*view);
        if (!statement) return tl::unexpected(statement.error());
        const auto said = record::said(*statement, me);
        if (!said) return tl::unexpected(said.error());
        link.say(followed, {statement->id, said->statement, said->jws});
        return {};
    }
    Result<void> countersign(std::uint64_t walker, const std::string& sha256) {
        hasSigned = true;
        const record::Person who{me.certificate().name, options.role, options.certificate};
        if (auto done = archive::countersign(*archive, sha256, me, who, now().at); !done) return done;
        const auto json = archive->recordJson(sha256);
        if (!json) return tl::unexpected(json.error());
        const auto pdf = archive->recordPdf(sha256);
        link.offer(walker, newId(), {sha256, *json, pdf.value_or("")});
        return {};
    }

    const WatchOptions& options;
    const record::Signer& me;
    link::WatcherLink& link;
    std::optional<archive::Archive>& archive;
    std::uint64_t followed = 1;                   ///< the only one here
    std::pair<std::string, std::int64_t> printed; ///< the round and its last event that was
    bool hasSigned = false;
    int exit = Exit::done;
};

/// Stdin, line by line, as it comes.
class Lines {
public:
    explicit Lines(std::function<void(const std::string&)> take)
        : notifier(STDIN_FILENO, QSocketNotifier::Read) {
        QObject::connect(&notifier, &QSocketNotifier::activated, &notifier, [this, take = std::move(take)] {
            std::array<char, 4096> bytes{};
            const auto size = ::read(STDIN_FILENO, bytes.data(), bytes.size());
            if (size <= 0) return notifier.setEnabled(false);
            held.append(bytes.data(), static_cast<std::size_t>(size));
            for (auto end = held.find('\n'); end != std::string::npos; end = held.find('\n')) {
                if (end > 0) take(held.substr(0, end));
                held.erase(0, end + 1);
            }
            if (held.size() > 65536) held.clear(); // no line is so long
        });
    }

private:
    QSocketNotifier notifier;
    std::string held;
};

Result<watch::Walker> knownWalker(const std::string& name, const std::filesystem::path& file) {
    const auto walkers = link::readWalkers(file);
    if (!walkers) return tl::unexpected(walkers.error());
    for (const watch::Walker& one : *walkers)
        if (one.who.name == name || one.who.certificateSha256 == name) return one;
    return fail(ErrorCode::notFound, "No such walker is known here.", name,
                "Give the code that the walker's device shows.");
}

} // namespace

int watch(const WatchOptions& options) {
    if (options.code.empty() && options.known.empty()) {
        complain({ErrorCode::invalid, "Nobody is named who is to be followed.", "",
                  "Give the code that the walker's device shows, or --known."});
        return Exit::usage;
    }
    const auto invitation = options.known.empty() ? watch::readInvitation(options.code)
                                                  : Result<watch::Invitation>(watch::Invitation());
    if (!invitation) return complain(invitation.error());
    const auto me = signerOf(options.key, options.passphraseFile);
    if (!me) return complain(me.error());
    std::error_code failed;
    std::filesystem::create_directories(options.data, failed);
    if (failed)
        return complain({ErrorCode::storage, "The folder could not be made: " + failed.message() + ".",
                         options.data, ""});
    const std::filesystem::path data = options.data;
    std::optional<archive::Archive> records;
    if (!options.archive.empty()) {
        auto opened = archive::Archive::open(options.archive);
        if (!opened) return complain(opened.error());
        records = std::move(*opened);
    }
    int count = 0;
    QCoreApplication application(count, nullptr);
    const auto link =
        link::WatcherLink::open({data / "watched.sqlite", data / "walkers.json"}, *me, now().at);
    if (!link) return complain(link.error());
    Watch watching(options, *me, **link, records);
    const Lines lines([&](const std::string& line) { watching.say(line); });
    if (options.known.empty()) {
        (*link)->join(*invitation);
    } else {
        const auto walker = knownWalker(options.known, data / "walkers.json");
        if (!walker) return complain(walker.error());
        (*link)->join(*walker);
    }
    QCoreApplication::exec();
    return watching.code();
}

} // namespace ambit::cli
