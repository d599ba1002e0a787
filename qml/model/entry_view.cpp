#include "model/entry_view.hpp"

#include "archive/remove.hpp"
#include "archive/sealing.hpp"
#include "file/deferral.hpp"
#include "file/retention.hpp"
#include "model/entry_said.hpp"
#include "model/file_words.hpp"
#include "model/said.hpp"
#include "model/words.hpp"

#include <algorithm>

namespace ambit::view {

using record::Entry;

EntryView::EntryView(const Services& handedIn, AircraftFileView& of, SigningView& by, Report whereTo,
                     QObject* parent)
    : QObject(parent), services(&handedIn), file(&of), signing(&by), report(std::move(whereTo)) {}

QVariantList EntryView::questions() const {
    QVariantList list;
    for (const file::Question& question : file::questions())
        list << QVariantMap{{QStringLiteral("id"), QString::fromUtf8(question.id)},
                            {QStringLiteral("text"), text(question.text)}};
    return list;
}

QVariantList EntryView::bases() const {
    QVariantList list;
    for (const std::string_view basis : record::deferralBases()) {
        const std::string id(basis);
        list << QVariantMap{{QStringLiteral("id"), text(id)}, {QStringLiteral("name"), basisText(id)}};
    }
    return list;
}

QString EntryView::ruledOut(int question, bool yes) const {
    const auto& all = file::questions();
    if (question < 0 || question >= static_cast<int>(all.size())) return {};
    const file::Question& one = all[static_cast<std::size_t>(question)];
    return yes == one.mayDefer ? QString() : text(one.otherwise);
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

bool EntryView::tellRenewed(const QVariantMap& said, const QVariantMap& signature) {
    return say(renewalIn(said), signature);
}

bool EntryView::changePart(const QVariantMap& said, const QVariantMap& signature) {
    return say(partChangeIn(said), signature);
}

bool EntryView::trust(const QVariantMap& said, const QVariantMap& signature) {
    return say(trustIn(said, services->now()), signature);
}

bool EntryView::revoke(const QVariantMap& said, const QVariantMap& signature) {
    return say(revocationIn(said, services->now()), signature);
}

bool EntryView::letGo(const QVariantMap& said, const QVariantMap& signature) {
    const bool done = tell(remove(said, signature));
    if (done) emit letWent();
    return done;
}

bool EntryView::say(const Result<Entry>& entry, const QVariantMap& signature) {
    return tell(entry ? keep(*entry, signature) : Result<void>(tl::unexpected(entry.error())));
}

bool EntryView::tell(const Result<void>& done) {
    if (!done) {
        report(done.error());
        return false;
    }
    emit kept();
    return true;
}

Result<std::shared_ptr<const AircraftReading>> EntryView::lastReading() const {
    auto known = file->lastReading();
    if (!known || file->reading())
        return fail(ErrorCode::refused, ambit::say("The aircraft's file isn't read yet."), "",
                    ambit::say("Wait until it is: what you sign goes after its latest records."));
    return known;
}

Result<std::string> EntryView::serialOf(const std::string& registration) const {
    const auto all = services->archive.aircraft();
    if (!all) return tl::unexpected(all.error());
    for (const auto& one : *all)
        if (one.registration == registration) return one.serial;
    return fail(ErrorCode::notFound, ambit::say("There is no such aircraft here."), registration,
                ambit::say("Add it with its airframe and serial number first."));
}

Result<void> EntryView::keep(const Entry& entry, const QVariantMap& signature) {
    const auto known = lastReading();
    if (!known) return tl::unexpected(known.error());
    const std::string registration = file->registration().toStdString();
    const auto serial = serialOf(registration);
    if (!serial) return tl::unexpected(serial.error());
    const auto signer = signing->unlock(signature.value(QStringLiteral("passphrase")).toString(),
                                        signature.value(QStringLiteral("key")).toString());
    if (!signer) return tl::unexpected(signer.error());
    const std::string certificate = wordsIn(signature, "certificate");
    const bool isWork = std::holds_alternative<record::Rectification>(entry) ||
                        std::holds_alternative<record::PartChange>(entry);
    if (isWork && certificate.empty())
        return fail(ErrorCode::refused, ambit::say("The number of your certificate is missing."), "",
                    ambit::say("Work is approved with it (14 CFR 43.9(a)(4))."));
    const record::Heading heading{registration,
                                  *serial,
                                  services->now(),
                                  (*known)->file.heads,
                                  {signer->certificate().name, wordsIn(signature, "role"), certificate}};
    const auto kept = archive::sealEntry(services->archive, heading, entry, *signer, services->draw);
    if (!kept) return tl::unexpected(kept.error());
    return {};
}

Result<void> EntryView::remove(const QVariantMap& said, const QVariantMap& signature) {
    if (const auto known = lastReading(); !known) return tl::unexpected(known.error());
    const std::string registration = file->registration().toStdString();
    std::vector<std::string> records = listIn(said, "records");
    if (records.empty())
        return fail(ErrorCode::refused, ambit::say("No record is chosen."), "",
                    ambit::say("Choose those that are to go."));
    auto basis = needed(said, "basis", ambit::say("Nothing says what allows it."),
                        ambit::say("Name the rule, and who says it holds here."));
    if (!basis) return tl::unexpected(basis.error());
    const LocalInstant now = services->now();
    const auto told = services->archive.told(registration);
    if (!told) return tl::unexpected(told.error());
    const auto today = Date::of(now);
    if (!today) return tl::unexpected(today.error());
    for (const auto& one : file::retention(*told, file::fold(*told), *today))
        if (!one.mayGo && !said.value(QStringLiteral("although")).toBool() &&
            std::find(records.begin(), records.end(), one.record) != records.end())
            return fail(ErrorCode::refused, joined(ambit::say("A record that you chose must stay."), one.why),
                        "", ambit::say("Say that other rules allow it, if they do."));
    const auto signer = signing->unlock(signature.value(QStringLiteral("passphrase")).toString(),
                                        signature.value(QStringLiteral("key")).toString());
    if (!signer) return tl::unexpected(signer.error());
    const auto stub = archive::removeRecords(
        services->archive,
        {registration,
         std::move(records),
         std::move(*basis),
         now,
         {signer->certificate().name, wordsIn(signature, "role"), wordsIn(signature, "certificate")}},
        *signer, services->draw);
    if (!stub) return tl::unexpected(stub.error());
    return {};
}

} // namespace ambit::view
