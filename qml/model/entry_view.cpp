#include "model/entry_view.hpp"

#include "archive/import.hpp"
#include "base/decimal.hpp"
#include "file/deferral.hpp"
#include "model/words.hpp"
#include "record/record.hpp"

#include <algorithm>

namespace ambit::view {

namespace {

using record::Entry;

std::string wordsIn(const QVariantMap& said, const char* name) {
    return said.value(QLatin1String(name)).toString().trimmed().toStdString();
}

Result<std::string> needed(const QVariantMap& said, const char* name, const char* missing,
                           const char* remedy) {
    std::string words = wordsIn(said, name);
    if (words.empty()) return fail(ErrorCode::refused, missing, "", remedy);
    return words;
}

Result<std::vector<round::CounterReading>> countersIn(const QVariantMap& said, const char* name) {
    std::vector<round::CounterReading> counters;
    const QVariantMap given = said.value(QLatin1String(name)).toMap();
    for (auto one = given.cbegin(); one != given.cend(); ++one) {
        const std::string value = one.value().toString().trimmed().toStdString();
        if (value.empty()) continue;
        if (!Decimal::parse(value))
            return fail(ErrorCode::refused, "“" + value + "” is no reading of a counter.", "",
                        "Write it in digits, with a point before decimals: 1284.6");
        counters.push_back({one.key().toStdString(), value});
    }
    return counters;
}

/// `required`: it can't be left empty.
Result<std::string> dateIn(const QVariantMap& said, const char* name, bool required) {
    std::string words = wordsIn(said, name);
    if (words.empty() && !required) return words;
    if (!Date::parse(words))
        return fail(ErrorCode::refused, "“" + words + "” is no date.", "",
                    "Write year, month and day: 2026-06-20");
    return words;
}

Result<record::DiscrepancyId> discrepancyIn(const QString& key) {
    const record::DiscrepancyId id = idOf(key);
    if (id.record.empty()) return fail(ErrorCode::refused, "No discrepancy is chosen.");
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
        return fail(ErrorCode::refused, "This basis needs a reference.", "",
                    "Say which list and which item, or which permission.");
    }
    deferral.removed = said.value(QStringLiteral("removed")).toBool();
    auto placard =
        needed(said, "placard", "Nothing says what the placard says.", "Write its words, and where it is.");
    if (!placard) return tl::unexpected(placard.error());
    deferral.placard = std::move(*placard);
    deferral.limits = wordsIn(said, "limits");
    auto until = dateIn(said, "until", false);
    if (!until) return tl::unexpected(until.error());
    deferral.until = std::move(*until);
    auto counters = countersIn(said, "untilCounters");
    if (!counters) return tl::unexpected(counters.error());
    deferral.untilCounters = std::move(*counters);
    auto by = needed(said, "determinedBy", "Nobody is named who found that it is no hazard.",
                     "Name the pilot or mechanic who may.");
    if (!by) return tl::unexpected(by.error());
    deferral.determinedBy = {*by, wordsIn(said, "determinedRole"), wordsIn(said, "determinedCertificate")};
    return deferral;
}

Result<Entry> assessmentIn(const QVariantMap& said, bool grounds) {
    const auto id = discrepancyIn(said.value(QStringLiteral("key")).toString());
    if (!id) return tl::unexpected(id.error());
    auto words =
        needed(said, "words", "Nothing says why.", "Say in a few words what was found on looking closer.");
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
    for (const QVariant& key : said.value(QStringLiteral("keys")).toList()) {
        const auto id = discrepancyIn(key.toString());
        if (!id) return tl::unexpected(id.error());
        work.of.push_back(*id);
    }
    for (const QVariant& inspection : said.value(QStringLiteral("inspections")).toList())
        work.inspections.push_back(inspection.toString().toStdString());
    auto description =
        needed(said, "description", "Nothing says what was done.", "Describe the work in a few words.");
    if (!description) return tl::unexpected(description.error());
    work.description = std::move(*description);
    auto date = dateIn(said, "completedOn", true);
    if (!date) return tl::unexpected(date.error());
    work.completedOn = std::move(*date);
    work.performedBy = wordsIn(said, "performedBy");
    auto kind = needed(said, "certificateKind", "Nothing says which kind of certificate you approve under.",
                       "For example: mechanic, airframe and powerplant.");
    if (!kind) return tl::unexpected(kind.error());
    work.certificateKind = std::move(*kind);
    auto counters = countersIn(said, "counters");
    if (!counters) return tl::unexpected(counters.error());
    work.counters = std::move(*counters);
    return work;
}

Result<Entry> readingIn(const QVariantMap& said) {
    auto counters = countersIn(said, "counters");
    if (!counters) return tl::unexpected(counters.error());
    if (counters->empty())
        return fail(ErrorCode::refused, "No counter was read.", "", "Write what at least one of them says.");
    return record::Reading{std::move(*counters)};
}

Result<Entry> handOverIn(const QVariantMap& said) {
    auto to = needed(said, "to", "Nobody is named who gets the aircraft.", "Name the new owner.");
    if (!to) return tl::unexpected(to.error());
    return record::HandOver{std::move(*to), wordsIn(said, "words")};
}

} // namespace

EntryView::EntryView(const Services& handedIn, AircraftFileView& of, SigningView& by, Report whereTo,
                     QObject* parent)
    : QObject(parent), services(&handedIn), file(&of), signing(&by), report(std::move(whereTo)) {}

QVariantList EntryView::questions() const {
    QVariantList list;
    for (const file::Question& question : file::questions())
        list << QVariantMap{{QStringLiteral("id"), QString::fromUtf8(question.id)},
                            {QStringLiteral("text"), QString::fromUtf8(question.text)}};
    return list;
}

QStringList EntryView::bases() const {
    QStringList list;
    for (const std::string_view basis : record::deferralBases())
        list << text(std::string(basis));
    return list;
}

QString EntryView::ruledOut(int question, bool yes) const {
    const auto& all = file::questions();
    if (question < 0 || question >= static_cast<int>(all.size())) return {};
    const file::Question& one = all[static_cast<std::size_t>(question)];
    return yes == one.mayDefer ? QString() : QString::fromUtf8(one.otherwise);
}

QString EntryView::dayAfter(int days) const {
    const auto today = Date::of(services->now());
    if (!today) return {};
    const auto day = today->plusDays(days);
    return day ? text(toText(*day)) : QString();
}

bool EntryView::defer(const QVariantMap& said, const QVariantMap& signature) {
    return say(assessmentIn(said, false), signature);
}

bool EntryView::ground(const QVariantMap& said, const QVariantMap& signature) {
    return say(assessmentIn(said, true), signature);
}

bool EntryView::rectify(const QVariantMap& said, const QVariantMap& signature) {
    return say(rectificationIn(said), signature);
}

bool EntryView::readCounters(const QVariantMap& said, const QVariantMap& signature) {
    return say(readingIn(said), signature);
}

bool EntryView::handOver(const QVariantMap& said, const QVariantMap& signature) {
    return say(handOverIn(said), signature);
}

bool EntryView::say(const Result<Entry>& entry, const QVariantMap& signature) {
    const auto done = entry ? keep(*entry, signature) : Result<void>(tl::unexpected(entry.error()));
    if (!done) {
        report(done.error());
        return false;
    }
    emit kept();
    return true;
}

Result<std::string> EntryView::serialOf(const std::string& registration) const {
    const auto all = services->archive.aircraft();
    if (!all) return tl::unexpected(all.error());
    for (const auto& one : *all)
        if (one.registration == registration) return one.serial;
    return fail(ErrorCode::notFound, "There is no such aircraft here.", registration,
                "Add it with its airframe and serial number first.");
}

Result<void> EntryView::keep(const Entry& entry, const QVariantMap& signature) {
    const auto known = file->lastReading();
    if (!known || file->reading())
        return fail(ErrorCode::refused, "The aircraft's file isn't read yet.", "",
                    "Wait until it is: what you sign goes after its latest records.");
    const std::string registration = file->registration().toStdString();
    const auto serial = serialOf(registration);
    if (!serial) return tl::unexpected(serial.error());
    const auto signer = signing->unlock(signature.value(QStringLiteral("passphrase")).toString());
    if (!signer) return tl::unexpected(signer.error());
    const std::string certificate = wordsIn(signature, "certificate");
    const bool isWork = std::holds_alternative<record::Rectification>(entry);
    if (isWork && certificate.empty())
        return fail(ErrorCode::refused, "The number of your certificate is missing.", "",
                    "Work is approved with it (14 CFR 43.9(a)(4)).");
    const auto content =
        record::entryContent({registration,
                              *serial,
                              services->now(),
                              known->file.heads,
                              {signer->certificate().name, wordsIn(signature, "role"), certificate}},
                             entry);
    if (!content) return tl::unexpected(content.error());
    const auto bytes = record::signRecord(*content, *signer);
    if (!bytes) return tl::unexpected(bytes.error());
    const auto imported = archive::importRecord(services->archive, *bytes);
    if (!imported) return tl::unexpected(imported.error());
    return {};
}

} // namespace ambit::view
