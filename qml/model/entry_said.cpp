#include "model/entry_said.hpp"

#include "file/deferral.hpp"
#include "model/discrepancy_view.hpp"
#include "model/said.hpp"

namespace ambit::view {

namespace {

using record::Entry;

Result<record::DiscrepancyId> discrepancyIn(const QString& key) {
    const record::DiscrepancyId id = idOf(key);
    if (id.record.empty()) return fail(ErrorCode::refused, say("No discrepancy is chosen."));
    return id;
}

Result<void> answer(const QVariantMap& said, record::Deferral& deferral) {
    std::vector<bool> yes;
    for (const QVariant& one : said.value(QStringLiteral("answers")).toList())
        yes.push_back(one.toBool());
    auto answers = file::answered(yes);
    if (!answers) return tl::unexpected(answers.error());
    deferral.answers = std::move(*answers);
    return {};
}

Result<record::Deferral> deferralIn(const QVariantMap& said) {
    record::Deferral deferral;
    deferral.basis = wordsIn(said, "basis");
    deferral.reference = wordsIn(said, "reference");
    if (deferral.basis == record::deferralBases().front()) {
        if (auto answered = answer(said, deferral); !answered) return tl::unexpected(answered.error());
    } else if (deferral.reference.empty()) {
        return fail(ErrorCode::refused, say("This basis needs a reference."), "",
                    say("Say which list and which item, or which permission."));
    }
    deferral.removed = said.value(QStringLiteral("removed")).toBool();
    auto placard = needed(said, "placard", say("Nothing says what the placard says."),
                          say("Write its words, and where it is."));
    if (!placard) return tl::unexpected(placard.error());
    deferral.placard = std::move(*placard);
    deferral.limits = wordsIn(said, "limits");
    auto until = dateIn(said, "until", false);
    if (!until) return tl::unexpected(until.error());
    deferral.until = std::move(*until);
    auto counters = countersIn(said, "untilCounters");
    if (!counters) return tl::unexpected(counters.error());
    deferral.untilCounters = std::move(*counters);
    auto by = needed(said, "determinedBy", say("Nobody is named who found that it is no hazard."),
                     say("Name the pilot or mechanic who may."));
    if (!by) return tl::unexpected(by.error());
    deferral.determinedBy = {*by, wordsIn(said, "determinedRole"), wordsIn(said, "determinedCertificate")};
    return deferral;
}

/// What every record of work says (14 CFR 43.9(a)).
Result<void> takeWork(const QVariantMap& said, auto& work) {
    auto description = needed(said, "description", say("Nothing says what was done."),
                              say("Describe the work in a few words."));
    if (!description) return tl::unexpected(description.error());
    work.description = std::move(*description);
    auto date = dateIn(said, "completedOn", true);
    if (!date) return tl::unexpected(date.error());
    work.completedOn = std::move(*date);
    auto kind =
        needed(said, "certificateKind", say("Nothing says which kind of certificate you approve under."),
               say("For example: mechanic, airframe and powerplant."));
    if (!kind) return tl::unexpected(kind.error());
    work.certificateKind = std::move(*kind);
    auto counters = countersIn(said, "counters");
    if (!counters) return tl::unexpected(counters.error());
    work.counters = std::move(*counters);
    return {};
}

/// None where nothing was written of it.
Result<std::optional<record::Part>> partIn(const QVariantMap& said, const char* name) {
    const QVariantMap its = said.value(QLatin1String(name)).toMap();
    record::Part part{wordsIn(its, "name"), wordsIn(its, "number"), wordsIn(its, "serial"), {}};
    auto counters = countersIn(its, "counters");
    if (!counters) return tl::unexpected(counters.error());
    part.counters = std::move(*counters);
    if (part.name.empty() && part.number.empty() && part.serial.empty() && part.counters.empty())
        return std::optional<record::Part>();
    if (part.name.empty() || part.number.empty() || part.serial.empty())
        return fail(ErrorCode::refused, say("A part has a name, a number and a serial number."), "",
                    say("Write all three as they stand on it; “none” where it bears none."));
    return std::optional(std::move(part));
}

Result<Instant> since(const QVariantMap& said, LocalInstant now) {
    const auto from = midnight(said, "from", 0, now.offsetMinutes);
    if (!from) return tl::unexpected(from.error());
    return from->value_or(now.at);
}

} // namespace

Result<Entry> assessmentIn(const QVariantMap& said, bool grounds) {
    const auto id = discrepancyIn(said.value(QStringLiteral("key")).toString());
    if (!id) return tl::unexpected(id.error());
    auto words = needed(said, "words", say("Nothing says why."),
                        say("Say in a few words what was found on looking closer."));
    if (!words) return tl::unexpected(words.error());
    record::Assessment assessment{*id, std::move(*words), {}};
    if (grounds) return assessment;
    auto deferral = deferralIn(said);
    if (!deferral) return tl::unexpected(deferral.error());
    assessment.deferral = std::move(*deferral);
    return assessment;
}

Result<Entry> rectificationIn(const QVariantMap& said) {
    record::Rectification work;
    for (const std::string& key : listIn(said, "keys")) {
        const auto id = discrepancyIn(QString::fromStdString(key));
        if (!id) return tl::unexpected(id.error());
        work.of.push_back(*id);
    }
    work.inspections = listIn(said, "inspections");
    work.performedBy = wordsIn(said, "performedBy");
    if (auto taken = takeWork(said, work); !taken) return tl::unexpected(taken.error());
    return work;
}

Result<Entry> partChangeIn(const QVariantMap& said) {
    record::PartChange change;
    auto position = needed(said, "position", say("Nothing says where on the aircraft the part is."),
                           say("Choose a place, or write one: one part at a time is in it."));
    if (!position) return tl::unexpected(position.error());
    change.position = std::move(*position);
    for (const auto& [name, part] : {std::pair("off", &change.off), std::pair("on", &change.on)}) {
        auto its = partIn(said, name);
        if (!its) return tl::unexpected(its.error());
        *part = std::move(*its);
    }
    if (!change.off && !change.on)
        return fail(ErrorCode::refused, say("No part is named."), "",
                    say("Say which came off, which was fitted, or both."));
    if (auto taken = takeWork(said, change); !taken) return tl::unexpected(taken.error());
    return change;
}

Result<Entry> readingIn(const QVariantMap& said) {
    auto counters = countersIn(said, "counters");
    if (!counters) return tl::unexpected(counters.error());
    if (counters->empty())
        return fail(ErrorCode::refused, say("No counter was read."), "",
                    say("Write what at least one of them says."));
    return record::Reading{std::move(*counters)};
}

Result<Entry> handOverIn(const QVariantMap& said) {
    auto to = needed(said, "to", say("Nobody is named who gets the aircraft."), say("Name the new owner."));
    if (!to) return tl::unexpected(to.error());
    return record::HandOver{std::move(*to), wordsIn(said, "words")};
}

Result<Entry> renewalIn(const QVariantMap& said) {
    auto record = needed(said, "record", say("No value is chosen."),
                         say("Choose the first one after the part was renewed."));
    if (!record) return tl::unexpected(record.error());
    return record::Renewal{{std::move(*record), wordsIn(said, "point")},
                           said.value(QStringLiteral("renewed")).toBool(),
                           wordsIn(said, "words")};
}

Result<Entry> trustIn(const QVariantMap& said, LocalInstant now) {
    auto key = fingerprintIn(said, "key");
    if (!key) return tl::unexpected(key.error());
    auto name = needed(said, "name", say("Nobody's name is given."), say("Say whose key it is."));
    if (!name) return tl::unexpected(name.error());
    auto roles = listIn(said, "roles");
    if (roles.empty())
        return fail(ErrorCode::refused, say("Nothing says what the key is good for."), "",
                    say("Choose one role or more."));
    const auto from = since(said, now);
    if (!from) return tl::unexpected(from.error());
    return record::Trust{std::move(*name), std::move(*key), std::move(roles), *from};
}

Result<Entry> revocationIn(const QVariantMap& said, LocalInstant now) {
    auto key = fingerprintIn(said, "key");
    if (!key) return tl::unexpected(key.error());
    const auto from = since(said, now);
    if (!from) return tl::unexpected(from.error());
    auto why = needed(said, "why", say("Nothing says why."), say("Lost, stolen, a person who left: say it."));
    if (!why) return tl::unexpected(why.error());
    return record::Revocation{std::move(*key), *from, std::move(*why)};
}

} // namespace ambit::view
