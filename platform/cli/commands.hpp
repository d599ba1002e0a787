// The commands of the program ambit. Each gives its exit code; what it prints is its interface (README.md).
#pragma once

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
    bool json = false;
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

[[nodiscard]] int check(const CheckOptions& options);
[[nodiscard]] int plan(const PlanOptions& options);
[[nodiscard]] int solve(const SolveOptions& options);
[[nodiscard]] int keyNew(const KeyOptions& options);
[[nodiscard]] int keyShow(const KeyOptions& options);
[[nodiscard]] int round(const RoundOptions& options);
[[nodiscard]] int sign(const SignOptions& options);
[[nodiscard]] int verify(const VerifyOptions& options);

} // namespace ambit::cli
