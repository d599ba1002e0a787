#include "cli/file_options.hpp"

#include "cli/commands.hpp"
#include "record/entry.hpp"

#include <memory>

namespace ambit::cli {

namespace {

/// Options live as long as the command that they belong to may be called.
template<class Options>
void choose(CLI::App* command, Chosen& chosen, std::shared_ptr<Options> options,
            int (*does)(const Options&)) {
    command->callback([options = std::move(options), does, &chosen] {
        chosen = [options, does] { return does(*options); };
    });
}

using Archived = std::shared_ptr<ArchiveOptions>;
using Said = std::shared_ptr<EntryOptions>;

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
    command->add_option("--role", options.role, "pilot, instructor, owner or mechanic")
        ->required()
        ->check(isRole());
    command->add_option("--certificate", options.certificate, "the signer's certificate or licence number");
    command->add_option(
        "--out", options.out,
        "leave the signed record in this file, too, which must not exist: its PDF if the name ends in .pdf, "
        "else its JSON");
    command->add_flag("--json", options.json, "for programs: {\"record\", \"kind\", \"aircraft\"}");
    return command;
}

void addWork(CLI::App& command, EntryOptions& options) {
    command.add_option("--description", options.words, "what was done")->required();
    command.add_option("--completed", options.completedOn, "date, yyyy-mm-dd")->required();
    command.add_option("--certificate-kind", options.certificateKind, "kind of the signer's certificate")
        ->required();
    command.add_option("--counter", options.counters, "what a counter of the aircraft said then, id=value");
}

void addDeferral(CLI::App& defer, EntryOptions& options) {
    defer.add_option("--discrepancy", options.discrepancies, "RECORD:POINT")->required()->expected(1);
    defer.add_option("--words", options.words, "why")->required();
    defer.add_flag("--grounding", options.grounding, "it grounds the aircraft until it is put right");
    defer.add_option("--basis", options.basis, "“14 CFR 91.213(d)”, “minimum equipment list” or “other”")
        ->check(CLI::IsMember(record::deferralBases()));
    defer.add_option("--reference", options.reference, "which list, which item");
    defer
        .add_option("--answers", options.answers,
                    "to the questions of 91.213(d), in their order: no,no,no,no,yes,yes")
        ->delimiter(',');
    defer.add_flag("--removed", options.removed, "it was removed (else: deactivated)");
    defer.add_option("--placard", options.placard, "what the placard says and where it is");
    defer.add_option("--limits", options.limits, "what the aircraft is not used for meanwhile");
    defer.add_option("--until", options.until, "date, yyyy-mm-dd");
    defer.add_option("--until-counter", options.untilCounters, "id=value");
    defer.add_option("--determined-by", options.determinedBy, "who found that it is no hazard");
    defer.add_option("--determined-role", options.determinedRole, "pilot or mechanic")->check(isRole());
    defer.add_option("--determined-certificate", options.determinedCertificate, "their certificate's number");
}

void addParts(CLI::App& part, EntryOptions& options) {
    part.add_option("--position", options.position,
                    "where on the aircraft; a life limit's id of its airframe, for the part it is about")
        ->required();
    for (const auto& [name, to, what] :
         {std::tuple{"--off", &options.off, "the part taken off: name,number,serial"},
          std::tuple{"--on", &options.on, "the part put on: name,number,serial"}})
        part.add_option(name, *to, what)->delimiter(',')->expected(3);
    part.add_option("--off-counter", options.offCounters, "what the part taken off has run, id=value");
    part.add_option("--on-counter", options.onCounters, "what the part put on had run before, id=value");
}

} // namespace

CLI::Validator isRole() {
    return CLI::IsMember({"pilot", "instructor", "owner", "mechanic"});
}

void addArchiveCommands(CLI::App& app, Chosen& chosen) {
    auto* command = app.add_subcommand("archive", "Records of many aircraft, and what they say together");
    command->require_subcommand(1);
    const auto add = [&](const char* name, const char* does, int (*how)(const ArchiveOptions&)) {
        auto* one = command->add_subcommand(name, does);
        const auto options = std::make_shared<ArchiveOptions>();
        one->add_option("archive", options->archive, "the archive's file")->required();
        one->add_flag("--json", options->json, "for programs");
        choose(one, chosen, options, how);
        return std::pair(one, options.get());
    };
    const auto addAircraft = [](CLI::App* one, ArchiveOptions* options) {
        one->add_option("aircraft", options->aircraft, "its registration")->required();
    };
    {
        const auto [one, options] =
            add("import", "Verify records and take them in; bad ones are set aside with the reason",
                archiveImport);
        one->add_option("files", options->files,
                        "records, JSON or PDF, photos, folders of them, exports (zip)")
            ->required();
    }
    {
        const auto [one, options] =
            add("export", "One aircraft's whole file as one zip that opens without Ambit", archiveExport);
        addAircraft(one, options);
        one->add_option("--out", options->to, "the zip to write; never overwrites")->required();
    }
    {
        const auto [one, options] =
            add("find", "Find records; everything given must hold, the newest first", archiveFind);
        one->add_option("words", options->words, "words in what people wrote; “in quotes” as they stand");
        one->add_option("--aircraft", options->aircraft, "registration");
        one->add_option("--part", options->part, "a part's name, number, serial or position");
        one->add_option("--jasc", options->jasc, "code of a finding's point, or its beginning");
        one->add_option("--person", options->person, "who signed, did the work, is trusted");
        one->add_option("--kind", options->kind, "round, assessment, rectification, reading, part change, …");
        one->add_option("--from", options->from, "first day, yyyy-mm-dd, UTC");
        one->add_option("--before", options->before, "the day after the last, yyyy-mm-dd, UTC");
        one->add_option("--state", options->state,
                        "of a discrepancy that it brought: open, deferred, grounding, rectified, closed");
        one->add_option("--most", options->most, "how many at most (50 if not given)")
            ->check(CLI::Range(1, 10000));
        one->add_option("--after", options->after, "go on after this record");
    }
    {
        const auto [one, options] =
            add("history", "What records say of one point, the newest first", archiveHistory);
        addAircraft(one, options);
        one->add_option("point", options->point, "the point's id")->required();
        one->add_option("--most", options->most, "how many at most (50 if not given)")
            ->check(CLI::Range(1, 100000));
        one->add_option("--after", options->after, "go on after this record");
    }
    {
        const auto [one, options] =
            add("state", "What stands against fit, open discrepancies, what is due, what contradicts",
                archiveState);
        addAircraft(one, options);
        one->add_option("--today", options->today, "date to judge by, yyyy-mm-dd (today if not given)");
    }
    {
        const auto [one, options] = add(
            "verify", "Check every record again; name those that don't hold or are missing", archiveVerify);
        one->add_option("aircraft", options->aircraft, "its registration (all aircraft if not given)");
        one->add_flag("--contents", options->contents, "judge again what each says, too: slower");
    }
    {
        const auto [one, options] =
            add("merge", "Take in all that other archives have and this one hasn't", archiveMerge);
        one->add_option("from", options->files, "other archives; they stay as they are")->required();
    }
    {
        const auto [one, options] =
            add("backup", "Copy the archive as it is now, while others may use it", archiveBackup);
        one->add_option("to", options->to, "the copy; never overwrites")->required();
    }
    {
        const auto [one, options] = add(
            "retention", "Which records may be let go and which stay (14 CFR 91.417(b))", archiveRetention);
        addAircraft(one, options);
        one->add_option("--today", options->today, "date to judge by, yyyy-mm-dd (today if not given)");
    }
}

void addEntryCommands(CLI::App& app, Chosen& chosen) {
    const auto add = [&](const char* name, const char* does, int (*how)(const EntryOptions&)) {
        const auto options = std::make_shared<EntryOptions>();
        auto* one = addEntry(app, name, does, *options);
        choose(one, chosen, options, how);
        return std::pair(one, options.get());
    };
    {
        const auto [one, options] = add("reading", "Sign what the counters say", reading);
        one->add_option("--counter", options->counters, "id=value; as often as there are counters")
            ->required();
    }
    {
        const auto [one, options] = add("rectify", "Sign work done (14 CFR 43.9(a))", rectify);
        one->add_option("--discrepancy", options->discrepancies, "what it puts right, RECORD:POINT");
        one->add_option("--inspection", options->inspections, "an inspection's id that was done with it");
        one->add_option("--performed-by", options->performedBy, "who did it, if not the signer");
        addWork(*one, *options);
    }
    {
        const auto [one, options] =
            add("defer", "Defer a discrepancy on a stated basis, or say that it grounds", defer);
        addDeferral(*one, *options);
    }
    {
        const auto [one, options] = add("part", "Sign that a part was taken off, put on, or changed", part);
        addParts(*one, *options);
        addWork(*one, *options);
    }
    {
        const auto [one, options] =
            add("hand-over", "Sign that the aircraft and its file go to another owner", handOver);
        one->add_option("--to", options->to, "the new owner's name")->required();
        one->add_option("--words", options->words, "on what terms");
        one->add_option("--export", options->exportTo,
                        "also write the whole file, with this record, into this zip");
    }
    {
        const auto [one, options] = add(
            "renewed", "Sign afterwards that a part was renewed before a value: its values begin anew there",
            renewed);
        one->add_option("--record", options->records, "the round's record that has the value")
            ->required()
            ->expected(1);
        one->add_option("--point", options->point, "the point's id")->required();
        one->add_flag("--not", options->isNot, "it was not renewed: takes back what was said");
        one->add_option("--words", options->words, "what was done, if anything is to be said of it");
    }
    {
        const auto [one, options] = add("trust", "Sign whose key is good for what: the owner's word", trust);
        one->add_option("--name", options->to, "whose key it is")->required();
        one->add_option("--fingerprint", options->fingerprint, "their key's, as “ambit key show” gives it")
            ->required();
        one->add_option("--for", options->roles, "pilot, instructor, owner, mechanic; one or more")
            ->required()
            ->delimiter(',')
            ->check(isRole());
        one->add_option("--from", options->from, "since when, yyyy-mm-dd, UTC (now if not given)");
    }
    {
        const auto [one, options] =
            add("revoke", "Sign that a key is good for nothing from a day on", revoke);
        one->add_option("--fingerprint", options->fingerprint, "the key's")->required();
        one->add_option("--from", options->from, "since when, yyyy-mm-dd, UTC (now if not given)");
        one->add_option("--why", options->words, "why")->required();
    }
    {
        const auto [one, options] =
            add("remove", "Let records go; a signed stub stays, so that the chain holds", remove);
        one->add_option("--record", options->records, "identity; one or more")->required();
        one->add_option("--basis", options->words, "what allows it")->required();
        one->add_flag("--although-it-stays", options->anyway,
                      "also what 14 CFR 91.417(b) says must stay (“ambit archive retention”), where other "
                      "rules allow it");
    }
    auto* ask = app.add_subcommand("questions", "The questions to answer before something is deferred");
    const auto json = std::make_shared<bool>(false);
    ask->add_flag("--json", *json, "for programs");
    ask->callback([json, &chosen] { chosen = [json] { return deferQuestions(*json); }; });
}

} // namespace ambit::cli
