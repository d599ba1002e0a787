// The program ambit: every screen's job, without a screen.
#include "cli/commands.hpp"
#include "cli/file_options.hpp"
#include "cli/talk.hpp"

#include <algorithm>
#include <iostream>

using namespace ambit::cli;

namespace {

CLI::Validator isLanguage() {
    return {[](const std::string& code) {
                const bool is = code.size() == 2 && std::all_of(code.begin(), code.end(),
                                                                [](char c) { return c >= 'a' && c <= 'z'; });
                return is ? std::string() : "'" + code + "' is not the two lower-case letters of a language";
            },
            "LANGUAGE"};
}

CLI::App* addCheck(CLI::App& app, CheckOptions& options) {
    auto* command =
        app.add_subcommand("check", "Read an airframe; name every error by its JSON pointer; plan each walk");
    command->add_option("airframe", options.airframe, "airframe.json")->required();
    auto* json = command->add_flag("--json", options.json, "for programs: {\"ok\", \"errors\", …}");
    command
        ->add_option("--untranslated", options.untranslated,
                     "only print the texts that this language (\"de\") lacks, as JSON to be filled in")
        ->check(isLanguage())
        ->excludes(json);
    return command;
}

CLI::App* addPlan(CLI::App& app, PlanOptions& options) {
    auto* command = app.add_subcommand("plan", "Print the order of a walk and what it costs");
    command->add_option("airframe", options.airframe, "airframe.json")->required();
    command->add_option("--walk", options.walk, "the walk's id (the first if not given)");
    command->add_option("--svg", options.svg, "also draw the way round into this file, to scale");
    command->add_flag("--explain", options.explain,
                      "also name the three rules of the airframe that cost most");
    command->add_flag("--json", options.json,
                      "for programs: {\"walk\", \"cost\", \"bound\", \"proven\", \"listed\", \"steps\", …}");
    return command;
}

CLI::App* addSolve(CLI::App& app, SolveOptions& options) {
    auto* command = app.add_subcommand(
        "solve", "Solve a sequential ordering problem (TSPLIB, type SOP) with the planner's own solver");
    command->add_option("file", options.file, "an instance, NAME.sop")->required();
    command->add_option("--seconds", options.seconds, "time it may take (10 if not given)")
        ->check(CLI::Range(0.001, 86400.0));
    command->add_flag("--json", options.json,
                      "for programs: {\"cost\", \"bound\", \"proven\", \"order\", \"seconds\", \"states\"}");
    return command;
}

void addKey(CLI::App& app, KeyOptions& options, Chosen& chosen) {
    auto* command = app.add_subcommand("key", "Make or show a signing key (EC P-256, encrypted)");
    command->require_subcommand(1);
    auto* make = command->add_subcommand("new", "Make a key and its certificate; never overwrites");
    make->add_option("file", options.file, "the key file to write")->required();
    make->add_option("--name", options.name, "the signer's full name, as on the certificate")->required();
    make->add_option("--passphrase-file", options.passphraseFile, "passphrase in its first line");
    make->add_flag("--json", options.json, "for programs");
    make->callback([&] { chosen = [&] { return keyNew(options); }; });
    auto* show =
        command->add_subcommand("show", "Show whose key it is and its fingerprint; needs no passphrase");
    show->add_option("file", options.file, "the key file")->required();
    show->add_flag("--json", options.json, "for programs");
    show->callback([&] { chosen = [&] { return keyShow(options); }; });
}

CLI::App* addRound(CLI::App& app, RoundOptions& options) {
    auto* command =
        app.add_subcommand("round", "Walk a round from a script, sign it, leave record.json and record.pdf");
    command->add_option("--airframe", options.airframe, "airframe.json")->required();
    command
        ->add_option("--script", options.script, "what the person does, JSON Lines (platform/cli/SCRIPT.md)")
        ->required();
    command->add_option("--key", options.key, "the signer's key file; needed if the script signs");
    command->add_option("--passphrase-file", options.passphraseFile,
                        "passphrase in its first line (else AMBIT_PASSPHRASE, else asked)");
    command->add_option("--out", options.out, "folder for the record, photos and the archive with the log")
        ->required();
    command->add_flag("--json", options.json, "print each event, one JSON object a line, once it is on disk");
    ServeOptions& serving = options.serving;
    auto* serve = command->add_flag("--serve", serving.serve,
                                    "let others follow it live; prints the code to join with (needs --key)");
    command->add_option("--listen", serving.address, "address to listen on (all if not given)")->needs(serve);
    command->add_option("--port", serving.port, "port to listen on (52810 if not given; 0: any)")
        ->needs(serve);
    command->add_option("--shown", serving.shown, "address in the code (this machine's own if not given)")
        ->needs(serve);
    command->add_option("--invitation", serving.invitation, "file to write the code into, too")->needs(serve);
    command->add_option("--known", serving.known, "file of those who may watch (DIR/watchers.json)")
        ->needs(serve);
    command->add_option("--await", serving.await, "begin when so many watch")->needs(serve);
    command
        ->add_option("--decline", serving.decline,
                     "decline whatever is asked with these words (else what is asked stays open)")
        ->needs(serve);
    command->add_option("--pace", serving.paceMs, "milliseconds after each event (0 if not given)")
        ->needs(serve);
    command
        ->add_option("--linger", serving.lingerSeconds,
                     "seconds to stay at the end until all have everything (10 if not given)")
        ->needs(serve);
    command->footer("Run again after an interruption, it goes on where the log ends.");
    return command;
}

CLI::App* addWatch(CLI::App& app, WatchOptions& options) {
    auto* command = app.add_subcommand(
        "watch",
        "Follow a round live: each event of its log, one JSON object a line, once it is on disk here");
    auto* code = command->add_option("code", options.code, "the code that the walker's device shows");
    command
        ->add_option("--known", options.known,
                     "instead of a code: name or fingerprint of a walker followed earlier")
        ->excludes(code);
    command->add_option("--key", options.key, "the watcher's key file")->required();
    command->add_option("--passphrase-file", options.passphraseFile,
                        "passphrase in its first line (else AMBIT_PASSPHRASE, else asked)");
    command->add_option("--data", options.data, "folder for what is watched, and who is known")->required();
    auto* archive = command->add_option("--archive", options.archive, "keep the round's record there, too");
    auto* role =
        command->add_option("--role", options.role, "the watcher's: pilot, instructor, owner or mechanic")
            ->check(isRole());
    command->add_flag("--sign", options.sign, "countersign the record when it comes (with --role)")
        ->needs(archive)
        ->needs(role);
    command->add_option("--certificate", options.certificate,
                        "the countersigner's certificate or licence number, if they have one");
    command->add_option("--out", options.out, "folder to leave the record in")->needs(archive);
    command->footer(
        "On stdin, one JSON object a line, things may be said that become events of the round, signed:\n"
        "{\"say\": \"look again\", \"point\": ID, \"words\"?}, {\"say\": \"question\" or \"remark\", "
        "\"point\"?, "
        "\"words\"}\n(with --role). Ends when the walker's device stops sharing.");
    return command;
}

CLI::App* addSign(CLI::App& app, SignOptions& options) {
    auto* command = app.add_subcommand(
        "sign", "Countersign a record that somebody signed: check it, then leave it with a signature more");
    command->add_option("record", options.record, "record.json")->required();
    command->add_option("pdf", options.pdf, "its record.pdf, to be countersigned too");
    command->add_option("--key", options.key, "the countersigner's key file")->required();
    command->add_option("--passphrase-file", options.passphraseFile,
                        "passphrase in its first line (else AMBIT_PASSPHRASE, else asked)");
    command->add_option("--role", options.role, "pilot, instructor, owner or mechanic")
        ->required()
        ->check(isRole());
    command->add_option("--certificate", options.certificate,
                        "the countersigner's certificate or licence number, if they have one");
    command->add_option("--out", options.out, "folder for the countersigned files; never overwrites")
        ->required();
    command->add_flag("--json", options.json, "for programs: one object a file");
    command->footer("The signatures that stand in the record stay as they are; the new one covers them.");
    return command;
}

CLI::App* addVerify(CLI::App& app, VerifyOptions& options) {
    auto* command = app.add_subcommand(
        "verify", "Check records, JSON or PDF; exit 0 only if everything holds in all of them");
    command->add_option("files", options.files, "record.json, record.pdf, …")->required();
    command->add_flag("--json", options.json, "for programs: one object a file");
    return command;
}

CLI::App* addBeside(CLI::App& app, BesideOptions& options) {
    auto* command = app.add_subcommand(
        "beside", "Lay two rounds of the same walk side by side: who saw what, and how far they agree");
    command->add_option("first", options.first, "record.json, or a log as round --json prints it")
        ->required();
    command->add_option("second", options.second, "the other's")->required();
    command->add_flag("--json", options.json, "for programs: every point, the table, kappa and its interval");
    command->footer("Cohen's kappa over the points that both settled; core/round/agreement.hpp has the "
                    "formulas. A record's signatures must hold; a log is taken as it is.");
    return command;
}

CLI::App* addPace(CLI::App& app, PaceOptions& options) {
    auto* command = app.add_subcommand(
        "pace", "A round's time at each stand, and points settled within the time that one takes");
    command->add_option("log", options.log, "record.json, or a log as round --json and watch print it")
        ->required();
    command->add_option("--airframe", options.airframe, "the airframe.json it was walked by")->required();
    command
        ->add_option("--replay", options.replay, "first print its events as they came, so many times as fast")
        ->check(CLI::Range(0.1, 100000.0));
    command->add_flag("--json", options.json, "for programs: seconds, and the numbers of the events");
    command->footer(
        "Numbers only: nobody is judged by them. Pauses are left out; core/round/pace.hpp has the rule.");
    return command;
}

CLI::App* addSky(CLI::App& app, SkyOptions& options) {
    auto* command = app.add_subcommand(
        "sky",
        "Sunrise, sunset and civil twilight at a place, and whether it is day, twilight or night there");
    command->add_option("latitude", options.latitude, "degrees, north above zero: 47.5")->required();
    command->add_option("longitude", options.longitude, "degrees, east above zero: -122.25")->required();
    command->add_option("--date", options.date, "yyyy-mm-dd (the day of --at if not given)");
    command->add_option("--offset", options.offset,
                        "the clock's offset from UTC, +hh:mm (that of --at if not given, else +00:00)");
    command->add_option("--at", options.at,
                        "the moment, like 2026-06-20T07:30:00+02:00 (the device's time if not given)");
    command->add_flag("--json", options.json, "for programs: {\"events\", \"sun\", \"twilight\", \"at\", …}");
    command->footer(
        "Over a level horizon at sea level, for the years 1950 to 2100; night is the time between "
        "evening\nand morning civil twilight. core/sky/sky.hpp has the rule and how right it is.");
    return command;
}

CLI::App* addTrend(CLI::App& app, TrendOptions& options) {
    auto* command =
        app.add_subcommand("trend", "Where measured values are going, and when they come to their limit");
    command
        ->add_option("--values", options.values,
                     "file with a line for each value, in order: x,y[,uncertainty][,renewed]")
        ->required();
    command->add_option("--limit", options.limit, "\"min 1.0 mm\", \"max 2 mm\", \"min 4 max 6 qt\"")
        ->required();
    command->add_option("--per", options.per, "unit of x, for words: h, landings, days")->default_val("h");
    command->add_option("--ahead", options.ahead,
                        "also say whether it may be passed within so many more of x");
    command->add_flag("--json", options.json,
                      "for programs: {\"standing\", \"direction\", \"limit\", \"slope\", \"texts\", …}");
    command->footer("It says what the values say; people decide. core/judge/trend.hpp has the rules.");
    return command;
}

CLI::App* addMeasure(CLI::App& app, MeasureOptions& options) {
    auto* command = app.add_subcommand(
        "measure", "What a record says was measured: looked at and computed again from its photos");
    command->add_option("record", options.record, "the record's JSON or PDF, which has the photos in it")
        ->required();
    command->add_option("--photo", options.photos, "photos as they were taken, matched by their SHA-256");
    command->add_flag("--json", options.json, "for programs: {\"ok\", \"values\", \"measurements\", …}");
    command->footer(
        "A figure that differs by one in its last digit is the same: machines round differently. "
        "What the\nfinder says of a card is told, and refuses nothing: a person confirmed its "
        "corners. A photo that isn't\nat hand is said to be missing; figures are computed from the "
        "marks in the record all the same.");
    return command;
}

CLI::App* addFleet(CLI::App& app, FleetOptions& options) {
    auto* command = app.add_subcommand(
        "fleet", "Fill a new archive with an invented fleet, for demonstrations and measurements");
    command->add_option("archive", options.archive, "file to make; must not exist yet")->required();
    command->add_option("--airframe", options.airframes, "airframe.json, one or more, each invented")
        ->required();
    command->add_option("--aircraft", options.aircraft, "how many (300 if not given)");
    command->add_option("--years", options.years, "how long they fly (10 if not given)");
    command->add_option("--records", options.records, "how many in all (100000 if not given)");
    command->add_option("--seed", options.seed, "the same seed makes the same records (1 if not given)");
    command->add_option("--from", options.from, "first day, yyyy-mm-dd (2016-01-01 if not given)");
    command->add_option("--threads", options.threads, "how many make them (2 if not given)")
        ->check(CLI::Range(1, 64));
    command->add_flag("--json", options.json, "for programs: {\"invented\", \"aircraft\", \"records\", …}");
    return command;
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app{"Ambit: guides a pilot round a light aircraft before flight and leaves a signed record.\n"
                 "It reminds, measures and records; the pilot in command decides, the manufacturer's "
                 "handbook and local rules rule."};
    app.require_subcommand(1);
    app.set_version_flag("--version", AMBIT_VERSION);
    app.footer("Exit codes: 0 done and everything holds; 1 looked at and refused; 2 wrong command line;\n"
               "3 a file or the archive could not be read or written, or a key not unlocked.");
    Chosen chosen;
    CheckOptions checkOptions;
    PlanOptions planOptions;
    SolveOptions solveOptions;
    KeyOptions keyOptions;
    RoundOptions roundOptions;
    WatchOptions watchOptions;
    SignOptions signOptions;
    VerifyOptions verifyOptions;
    FleetOptions fleetOptions;
    BesideOptions besideOptions;
    PaceOptions paceOptions;
    SkyOptions skyOptions;
    TrendOptions trendOptions;
    MeasureOptions measureOptions;
    addCheck(app, checkOptions)->callback([&] { chosen = [&] { return check(checkOptions); }; });
    addPlan(app, planOptions)->callback([&] { chosen = [&] { return plan(planOptions); }; });
    addSolve(app, solveOptions)->callback([&] { chosen = [&] { return solve(solveOptions); }; });
    addKey(app, keyOptions, chosen);
    addRound(app, roundOptions)->callback([&] { chosen = [&] { return round(roundOptions); }; });
    addWatch(app, watchOptions)->callback([&] { chosen = [&] { return watch(watchOptions); }; });
    addSign(app, signOptions)->callback([&] { chosen = [&] { return sign(signOptions); }; });
    addVerify(app, verifyOptions)->callback([&] { chosen = [&] { return verify(verifyOptions); }; });
    addPace(app, paceOptions)->callback([&] { chosen = [&] { return pace(paceOptions); }; });
    addBeside(app, besideOptions)->callback([&] { chosen = [&] { return beside(besideOptions); }; });
    addTrend(app, trendOptions)->callback([&] { chosen = [&] { return trend(trendOptions); }; });
    addMeasure(app, measureOptions)->callback([&] { chosen = [&] { return measure(measureOptions); }; });
    addSky(app, skyOptions)->callback([&] { chosen = [&] { return sky(skyOptions); }; });
    addArchiveCommands(app, chosen);
    addEntryCommands(app, chosen);
    addFleet(app, fleetOptions)->callback([&] { chosen = [&] { return fleet(fleetOptions); }; });
    try {
        app.parse(argc, argv);
    } catch (const CLI::RequiredError& error) {
        // A word that is no command would be told that one is required.
        const auto unknown = app.remaining(true);
        const bool wantsCommand = std::string_view(error.what()).find("subcommand") != std::string_view::npos;
        if (wantsCommand && !unknown.empty())
            std::cerr << "There is no such command: " << unknown.front()
                      << "\nRun with --help for more information.\n";
        else
            (void)app.exit(error);
        return Exit::usage;
    } catch (const CLI::ParseError& error) {
        return app.exit(error) == 0 ? Exit::done : Exit::usage;
    }
    const int code = chosen();
    if (std::cout.flush()) return code;
    // What was to be read by somebody is lost: a full disk, mostly.
    return std::max(
        code, complain(ambit::Error{ambit::ErrorCode::storage, "What there is to say could not be written.",
                                    "stdout", "Make room, or choose another place."}));
}
