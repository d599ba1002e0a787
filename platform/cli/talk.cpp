#include "cli/talk.hpp"

#include "base/files.hpp"
#include "cli/commands.hpp"

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <nlohmann/json.hpp>
#include <termios.h>
#include <unistd.h>

namespace ambit::cli {

int exitCodeOf(const Error& error) {
    const bool storage = error.code == ErrorCode::storage || error.code == ErrorCode::passphrase;
    return storage ? Exit::storage : Exit::refused;
}

int complain(const Error& error) {
    std::cerr << "ambit: " << toText(error) << '\n';
    return exitCodeOf(error);
}

int complain(const std::vector<Error>& errors) {
    int code = Exit::refused;
    for (const Error& error : errors)
        code = complain(error);
    return code;
}

Error inFile(Error error, const std::string& file) {
    if (error.where != file) error.where = file + (error.where.empty() ? "" : ": " + error.where);
    return error;
}

Json toJson(const Error& error) {
    return {
        {"code", toText(error.code)}, {"what", error.what}, {"where", error.where}, {"remedy", error.remedy}};
}

namespace {

termios asFound{}; ///< the terminal's settings, while it doesn't echo

/// Ctrl-C at the prompt: a terminal that shows nothing any more is not left behind.
void endWithEcho(int signal) {
    tcsetattr(STDIN_FILENO, TCSAFLUSH, &asFound);
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

Result<std::string> ask(const char* prompt) {
    if (tcgetattr(STDIN_FILENO, &asFound) != 0)
        return fail(ErrorCode::passphrase, "There is no passphrase and no terminal to ask for one.", "",
                    "Give --passphrase-file FILE or set AMBIT_PASSPHRASE.");
    const auto interrupt = std::signal(SIGINT, endWithEcho);
    const auto terminate = std::signal(SIGTERM, endWithEcho);
    termios silent = asFound;
    silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
    std::cerr << prompt << std::flush;
    tcsetattr(STDIN_FILENO, TCSAFLUSH, &silent);
    std::string line;
    std::getline(std::cin, line);
    tcsetattr(STDIN_FILENO, TCSAFLUSH, &asFound);
    std::signal(SIGINT, interrupt);
    std::signal(SIGTERM, terminate);
    std::cerr << '\n';
    return line;
}

} // namespace

LocalInstant now() {
    using namespace std::chrono;
    return {{duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count()}, 0};
}

std::string dayOf(Instant at) {
    return ambit::toText(at).substr(0, 10);
}

Result<archive::Archive> openExisting(const std::string& path) {
    if (!std::filesystem::exists(path))
        return fail(ErrorCode::storage, "There is no such archive.", path, "Look at its name.");
    // Opened, it would become a new archive, of which everything holds.
    std::error_code none;
    const bool isEmpty = std::filesystem::is_regular_file(path, none) &&
                         std::filesystem::file_size(path, none) == 0 &&
                         !std::filesystem::exists(path + "-wal", none);
    if (isEmpty)
        return fail(ErrorCode::storage, "The file is empty: there is no archive in it, or none any more.",
                    path, "Go on with a backup.");
    return archive::Archive::open(path);
}

Result<void> mustKnow(const archive::Archive& archive, const std::string& registration) {
    const auto files = archive.files();
    if (!files) return tl::unexpected(files.error());
    if (std::find(files->begin(), files->end(), registration) != files->end()) return {};
    const auto machines = archive.aircraft();
    if (!machines) return tl::unexpected(machines.error());
    if (std::any_of(machines->begin(), machines->end(),
                    [&](const archive::Aircraft& one) { return one.registration == registration; }))
        return {};
    std::string known;
    for (std::size_t i = 0; i < files->size() && i < 5; ++i)
        known += (i > 0 ? ", " : "") + (*files)[i];
    if (files->size() > 5) known += ", …";
    return fail(ErrorCode::notFound, "The archive has nothing of this aircraft.", registration,
                known.empty() ? "Look at its registration."
                              : "Look at its registration. The archive has " + known + '.');
}

Result<std::string> passphrase(const std::string& file, bool twice) {
    if (!file.empty()) {
        auto text = readFile(file, 4096);
        if (!text) return text;
        return text->substr(0, text->find_first_of("\r\n"));
    }
    if (const char* set = std::getenv("AMBIT_PASSPHRASE"); set != nullptr) return std::string(set);
    auto first = ask("Passphrase: ");
    if (!first || !twice) return first;
    auto second = ask("The same again: ");
    if (second && *second != *first)
        return fail(ErrorCode::passphrase, "The two passphrases differ.", "", "Try again.");
    return first;
}

Result<record::Signer> signerOf(const std::string& keyFile, const std::string& passphraseFile) {
    const auto text = readFile(keyFile, 65536);
    if (!text) return tl::unexpected(text.error());
    const auto word = passphrase(passphraseFile, false);
    if (!word) return tl::unexpected(word.error());
    return record::unlock(*text, *word).map_error([&](const Error& error) { return inFile(error, keyFile); });
}

} // namespace ambit::cli
