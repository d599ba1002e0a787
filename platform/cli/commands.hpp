// The commands of the program ambit. Each gives its exit code; what it prints is its interface (README.md).
#pragma once

#include "cli/serving.hpp"

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace ambit::cli {

/// Exit codes, the same for every command.
enum Exit {
    done = 0,
    refused = 1, ///< the file, round or signature was looked at and does not hold
    usage = 2,   ///< the command line is wrong
    storage = 3, ///< a file or the archive could not be read or written, a key not unlocked
};

struct CheckOptions {
    std::string airframe;
    std::string untranslated; ///< print what this language lacks, and nothing else; empty: the whole check
    bool json = false;
};
struct PlanOptions {
    std::string airframe;
    std::string walk; ///< empty: the first
    std::string svg;  ///< file to draw the plan into; empty: none
    bool explain = false;
    bool json = false;
};
struct SolveOptions {
    std::string file;
    double seconds = 10; ///< at most about this long
    bool json = false;
};
struct KeyOptions {
    std::string file;
    std::string name;
    std::string passphraseFile;
    bool json = false;
};
struct RoundOptions {
    std::string airframe;
    std::string script;
    std::string key;
    std::string passphraseFile;
    std::string out;
    ServeOptions serving;
    bool json = false;
};
/// What a watcher does; what is said comes from stdin.
struct WatchOptions {
    std::string code;  ///< an invitation's; empty: one who is known
    std::string known; ///< name or fingerprint of a walker known from earlier
    std::string key;
    std::string passphraseFile;
    std::string data;    ///< folder for what is watched and who is known
    std::string archive; ///< where a record that comes is kept, too; empty: nowhere
    bool sign = false;   ///< countersign it
    std::string role;
    std::string certificate;
    std::string out; ///< folder to leave the record in; empty: none
};
struct SignOptions {
    std::string record; ///< record.json
    std::string pdf;    ///< that of the record; empty: none
    std::string key;
    std::string passphraseFile;
    std::string role;
    std::string certificate; ///< number; may be empty
    std::string out;
    bool json = false;
};
struct VerifyOptions {
    std::vector<std::string> files;
    bool json = false;
};
struct ArchiveOptions {
    std::string archive;
    std::vector<std::string> files; ///< to import; archives to merge
    std::string to;                 ///< of an export or a backup
    std::string aircraft;           ///< registration
    std::string today;              ///< yyyy-mm-dd; empty: the device's date, UTC
    bool contents = false;
    // find, history
    std::string words, part, jasc, person, kind, state, point;
    std::string from, before; ///< yyyy-mm-dd
    std::size_t most = 50;
    std::string after;
    bool json = false;
};
/// A record of another kind than a round, said by the key's holder.
struct EntryOptions {
    std::string archive;
    std::string aircraft; ///< registration
    std::string serial;   ///< empty: as the archive knows it
    std::string key;
    std::string passphraseFile;
    std::string role;
    std::string certificate;
    std::string out;                        ///< file to leave the record in, too; empty: none
    std::vector<std::string> discrepancies; ///< RECORD:POINT
    std::string words;
    std::vector<std::string> counters; ///< id=value
    // rectify
    std::vector<std::string> inspections;
    std::string completedOn;
    std::string performedBy;
    std::string certificateKind;
    // defer
    bool grounding = false;
    std::string basis;
    std::string reference;
    std::vector<std::string> answers; ///< "yes" or "no", in the order of the questions
    bool removed = false;
    std::string placard;
    std::string limits;
    std::string until;
    std::vector<std::string> untilCounters; ///< id=value
    std::string determinedBy;
    std::string determinedRole;
    std::string determinedCertificate;
    // part
    std::string position;
    std::vector<std::string> off, on;                 ///< name, number, serial; empty: none
    std::vector<std::string> offCounters, onCounters; ///< id=value
    // hand-over, trust, revoke, remove
    std::string to;       ///< a person's name
    std::string exportTo; ///< empty: no export
    std::string fingerprint;
    std::vector<std::string> roles;
    std::string from; ///< yyyy-mm-dd; empty: now
    std::vector<std::string> records;
    bool anyway = false;
    // renewed
    std::string point;
    bool isNot = false; ///< takes back that it was
    bool json = false;
};
struct BesideOptions {
    std::string first; ///< record.json, or a log in JSON Lines
    std::string second;
    bool json = false;
};
struct PaceOptions {
    std::string log; ///< record.json, or a log in JSON Lines
    std::string airframe;
    double replay = 0; ///< times as fast as it was walked; 0: not printed
    bool json = false;
};
struct SkyOptions {
    std::string latitude, longitude; ///< degrees, decimal
    std::string date;                ///< yyyy-mm-dd; empty: the day of `at`
    std::string offset;              ///< from UTC, ±hh:mm; empty: as `at` says, else +00:00
    std::string at;                  ///< RFC 3339; empty: the device's time
    bool json = false;
};
struct TrendOptions {
    std::string values; ///< file of lines x,y[,uncertainty][,renewed]
    std::string limit;  ///< "min 1.0 mm"
    std::string per;    ///< unit of x
    std::string ahead;  ///< until the next flight ends, in x; empty: not asked
    bool json = false;
};
struct MeasureOptions {
    std::string record;              ///< JSON or PDF
    std::vector<std::string> photos; ///< files, matched by their hashes
    bool json = false;
};
struct FleetOptions {
    std::string archive;
    std::vector<std::string> airframes;
    int aircraft = 300;
    int years = 10;
    std::size_t records = 100000;
    std::uint64_t seed = 1;
    std::string from; ///< first day, yyyy-mm-dd; empty: 2016-01-01
    int threads = 2;
    bool json = false;
};

[[nodiscard]] int check(const CheckOptions& options);
[[nodiscard]] int plan(const PlanOptions& options);
[[nodiscard]] int solve(const SolveOptions& options);
[[nodiscard]] int keyNew(const KeyOptions& options);
[[nodiscard]] int keyShow(const KeyOptions& options);
[[nodiscard]] int round(const RoundOptions& options);
[[nodiscard]] int watch(const WatchOptions& options);
[[nodiscard]] int beside(const BesideOptions& options);
[[nodiscard]] int pace(const PaceOptions& options);
[[nodiscard]] int sky(const SkyOptions& options);
[[nodiscard]] int trend(const TrendOptions& options);
[[nodiscard]] int measure(const MeasureOptions& options);
[[nodiscard]] int sign(const SignOptions& options);
[[nodiscard]] int verify(const VerifyOptions& options);
[[nodiscard]] int archiveImport(const ArchiveOptions& options);
[[nodiscard]] int archiveExport(const ArchiveOptions& options);
[[nodiscard]] int archiveFind(const ArchiveOptions& options);
[[nodiscard]] int archiveHistory(const ArchiveOptions& options);
[[nodiscard]] int archiveState(const ArchiveOptions& options);
[[nodiscard]] int archiveVerify(const ArchiveOptions& options);
[[nodiscard]] int archiveMerge(const ArchiveOptions& options);
[[nodiscard]] int archiveBackup(const ArchiveOptions& options);
[[nodiscard]] int archiveRetention(const ArchiveOptions& options);
[[nodiscard]] int reading(const EntryOptions& options);
[[nodiscard]] int rectify(const EntryOptions& options);
[[nodiscard]] int defer(const EntryOptions& options);
[[nodiscard]] int part(const EntryOptions& options);
[[nodiscard]] int handOver(const EntryOptions& options);
[[nodiscard]] int renewed(const EntryOptions& options);
[[nodiscard]] int trust(const EntryOptions& options);
[[nodiscard]] int revoke(const EntryOptions& options);
[[nodiscard]] int remove(const EntryOptions& options);
[[nodiscard]] int deferQuestions(bool json);
[[nodiscard]] int fleet(const FleetOptions& options);

} // namespace ambit::cli
