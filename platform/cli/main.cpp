// The program ambit: every screen's job, without a screen.
#include "cli/commands.hpp"

#include <CLI/CLI.hpp>

using namespace ambit::cli;

namespace {

void addCheck(CLI::App& app, CheckOptions& options) {
    auto* command =
        app.add_subcommand("check", "Read an airframe; name every error by its JSON pointer; plan each walk");
    command->add_option("airframe", options.airframe, "airframe.json")->required();
    command->add_flag("--json", options.json, "for programs: {\"ok\", \"errors\", …}");
}

void addPlan(CLI::App& app, PlanOptions& options) {
    auto* command = app.add_subcommand("plan", "Print the order of a walk and what it costs");
    command->add_option("airframe", options.airframe, "airframe.json")->required();
    command->add_option("--walk", options.walk, "the walk's id (the first if not given)");
    command->add_option("--svg", options.svg, "also draw the way round into this file, to scale");
    command->add_flag("--explain", options.explain,
                      "also name the three rules of the airframe that cost most");
    command->add_flag("--json", options.json,
                      "for programs: {\"walk\", \"cost\", \"bound\", \"proven\", \"listed\", \"steps\", …}");
}

void addSolve(CLI::App& app, SolveOptions& options) {
    auto* command = app.add_subcommand(
        "solve", "Solve a sequential ordering problem (TSPLIB, type SOP) with the planner's own solver");
    command->add_option("file", options.file, "an instance, NAME.sop")->required();
    command->add_option("--seconds", options.seconds, "time it may take (10 if not given)")
        ->check(CLI::Range(0.001, 86400.0));
    command->add_flag("--json", options.json,
                      "for programs: {\"cost\", \"bound\", \"proven\", \"order\", \"seconds\", \"states\"}");
}

void addKey(CLI::App& app, KeyOptions& options) {
    auto* command = app.add_subcommand("key", "Make or show a signing key (EC P-256, encrypted)");
    command->require_subcommand(1);
    auto* make = command->add_subcommand("new", "Make a key and its certificate; never overwrites");
    make->add_option("file", options.file, "the key file to write")->required();
    make->add_option("--name", options.name, "the signer's full name, as on the certificate")->required();
    make->add_option("--passphrase-file", options.passphraseFile, "passphrase in its first line");
    make->add_flag("--json", options.json, "for programs");
    auto* show =
        command->add_subcommand("show", "Show whose key it is and its fingerprint; needs no passphrase");
    show->add_option("file", options.file, "the key file")->required();
    show->add_flag("--json", options.json, "for programs");
}

void addRound(CLI::App& app, RoundOptions& options) {
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
    command->footer("Run again after an interruption, it goes on where the log ends.");
}

void addSign(CLI::App& app, SignOptions& options) {
    auto* command = app.add_subcommand(
        "sign", "Countersign a record that somebody signed: check it, then leave it with a signature more");
    command->add_option("record", options.record, "record.json")->required();
    command->add_option("pdf", options.pdf, "its record.pdf, to be countersigned too");
    command->add_option("--key", options.key, "the countersigner's key file")->required();
    command->add_option("--passphrase-file", options.passphraseFile,
                        "passphrase in its first line (else AMBIT_PASSPHRASE, else asked)");
    command->add_option("--role", options.role, "pilot, instructor, owner or mechanic")
        ->required()
        ->check(CLI::IsMember({"pilot", "instructor", "owner", "mechanic"}));
    command->add_option("--certificate", options.certificate,
                        "the countersigner's certificate or licence number, if they have one");
    command->add_option("--out", options.out, "folder for the countersigned files; never overwrites")
        ->required();
    command->add_flag("--json", options.json, "for programs: one object a file");
    command->footer("The signatures that stand in the record stay as they are; the new one covers them.");
}

void addVerify(CLI::App& app, VerifyOptions& options) {
    auto* command = app.add_subcommand(
        "verify", "Check records, JSON or PDF; exit 0 only if everything holds in all of them");
    command->add_option("files", options.files, "record.json, record.pdf, …")->required();
    command->add_flag("--json", options.json, "for programs: one object a file");
}

void addArchive(CLI::App& app, ArchiveOptions& options) {
    auto* command = app.add_subcommand("archive", "Records of many aircraft, and what they say together");
    command->require_subcommand(1);
    const auto add = [&](const char* name, const char* does) {
        auto* one = command->add_subcommand(name, does);
        one->add_option("archive", options.archive, "the archive's file")->required();
        one->add_flag("--json", options.json, "for programs");
        return one;
    };
    auto* import = add("import", "Verify records and take them in; bad ones are set aside with the reason");
    import->add_option("files", options.files, "record.json, …; of any kind")->required();
    auto* state = add("state", "What stands against fit, open discrepancies, counters, what contradicts");
    state->add_option("aircraft", options.aircraft, "its registration")->required();
    state->add_option("--today", options.today, "date to judge by, yyyy-mm-dd (today if not given)");
    auto* verify = add("verify", "Verify every record again; name those that don't hold or are missing");
    verify->add_option("aircraft", options.aircraft, "its registration (all aircraft if not given)");
}

/// What every new record of an aircraft's file needs.
CLI::App* addEntry(CLI::App& app, const char* name, const char* does, EntryOptions& options) {
    auto* command = app.add_subcommand(name, does);
    command->add_option("--archive", options.archive, "the archive that keeps the aircraft's file")
        ->required();
    command->add_option("--aircraft", options.aircraft, "its registration")->required();
    command->add_option("--serial", options.serial, "its serial number, if the archive doesn't know it");
    command->add_option("--key", options.key, "the signer's key file")->required();
    command->add_option("--passphrase-file", options.passphraseFile,
                        "passphrase in its first line (else AMBIT_PASSPHRASE, else asked)");
    command->add_option("--role", options.role, "pilot, instructor, owner or mechanic")->required();
    command->add_option("--certificate", options.certificate, "the signer's certificate or licence number");
    command->add_option("--out", options.out, "leave the signed record in this file, too");
    command->add_flag("--json", options.json, "for programs: {\"record\", \"kind\", \"aircraft\"}");
    return command;
}

void addEntries(CLI::App& app, EntryOptions& options, bool& questions) {
    auto* reading = addEntry(app, "reading", "Sign what the counters say", options);
    reading->add_option("--counter", options.counters, "id=value; as often as there are counters")
        ->required();
    auto* rectify = addEntry(app, "rectify", "Sign work done (14 CFR 43.9(a))", options);
    rectify->add_option("--discrepancy", options.discrepancies, "what it puts right, RECORD:POINT");
    rectify->add_option("--inspection", options.inspections, "an inspection's id that was done with it");
    rectify->add_option("--description", options.words, "what was done")->required();
    rectify->add_option("--completed", options.completedOn, "date, yyyy-mm-dd")->required();
    rectify->add_option("--performed-by", options.performedBy, "who did it, if not the signer");
    rectify->add_option("--certificate-kind", options.certificateKind, "kind of the signer's certificate")
        ->required();
    rectify->add_option("--counter", options.counters, "what a counter said then, id=value");
    auto* defer =
        addEntry(app, "defer", "Defer a discrepancy on a stated basis, or say that it grounds", options);
    defer->add_option("--discrepancy", options.discrepancies, "RECORD:POINT")->required()->expected(1);
    defer->add_option("--words", options.words, "why")->required();
    defer->add_flag("--grounding", options.grounding, "it grounds the aircraft until it is put right");
    defer->add_option("--basis", options.basis, "“14 CFR 91.213(d)”, “minimum equipment list” or “other”");
    defer->add_option("--reference", options.reference, "which list, which item");
    defer
        ->add_option("--answers", options.answers,
                     "to the questions of 91.213(d), in their order: no,no,no,no,yes,yes")
        ->delimiter(',');
    defer->add_flag("--removed", options.removed, "it was removed (else: deactivated)");
    defer->add_option("--placard", options.placard, "what the placard says and where it is");
    defer->add_option("--limits", options.limits, "what the aircraft is not used for meanwhile");
    defer->add_option("--until", options.until, "date, yyyy-mm-dd");
    defer->add_option("--until-counter", options.untilCounters, "id=value");
    defer->add_option("--determined-by", options.determinedBy, "who found that it is no hazard");
    defer->add_option("--determined-role", options.determinedRole, "pilot or mechanic");
    defer->add_option("--determined-certificate", options.determinedCertificate,
                      "their certificate's number");
    auto* ask = app.add_subcommand("questions", "The questions to answer before something is deferred");
    ask->add_flag("--json", questions, "for programs");
}

void addFleet(CLI::App& app, FleetOptions& options) {
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
    CheckOptions checkOptions;
    PlanOptions planOptions;
    SolveOptions solveOptions;
    KeyOptions keyOptions;
    RoundOptions roundOptions;
    SignOptions signOptions;
    VerifyOptions verifyOptions;
    addCheck(app, checkOptions);
    addPlan(app, planOptions);
    addSolve(app, solveOptions);
    addKey(app, keyOptions);
    addRound(app, roundOptions);
    addSign(app, signOptions);
    addVerify(app, verifyOptions);
    ArchiveOptions archiveOptions;
    EntryOptions entryOptions;
    bool questionsAsJson = false;
    addArchive(app, archiveOptions);
    addEntries(app, entryOptions, questionsAsJson);
    FleetOptions fleetOptions;
    addFleet(app, fleetOptions);
    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        return app.exit(error) == 0 ? Exit::done : Exit::usage;
    }
    if (app.got_subcommand("check")) return check(checkOptions);
    if (app.got_subcommand("plan")) return plan(planOptions);
    if (app.got_subcommand("solve")) return solve(solveOptions);
    if (app.got_subcommand("key"))
        return app.get_subcommand("key")->got_subcommand("new") ? keyNew(keyOptions) : keyShow(keyOptions);
    if (app.got_subcommand("round")) return round(roundOptions);
    if (app.got_subcommand("sign")) return sign(signOptions);
    if (app.got_subcommand("archive")) {
        const auto* command = app.get_subcommand("archive");
        if (command->got_subcommand("import")) return archiveImport(archiveOptions);
        return command->got_subcommand("state") ? archiveState(archiveOptions)
                                                : archiveVerify(archiveOptions);
    }
    if (app.got_subcommand("reading")) return reading(entryOptions);
    if (app.got_subcommand("rectify")) return rectify(entryOptions);
    if (app.got_subcommand("defer")) return defer(entryOptions);
    if (app.got_subcommand("questions")) return deferQuestions(questionsAsJson);
    if (app.got_subcommand("fleet")) return fleet(fleetOptions);
    return verify(verifyOptions);
}
