#include "model/verification_view.hpp"

#include "model/file_words.hpp"
#include "model/words.hpp"

namespace ambit::view {

namespace {

/// As a person knows a record; by its identity where the archive doesn't know it.
QString nameOf(const std::string& sha256, const std::vector<archive::RecordInfo>& list) {
    const auto info =
        std::find_if(list.begin(), list.end(), [&](const auto& one) { return one.sha256 == sha256; });
    if (info == list.end()) return VerificationView::tr("Record %1").arg(text(sha256.substr(0, 12)));
    return VerificationView::tr("%1 of %2 UTC, %3")
        .arg(kindText(info->kind), dayText(info->concludedAt, 0), text(info->signer));
}

QVariantMap row(const std::string& sha256, const QString& name, const QString& words) {
    return {{QStringLiteral("recordId"), text(sha256)},
            {QStringLiteral("name"), name},
            {QStringLiteral("words"), words}};
}

} // namespace

VerificationView::VerificationView(Background& beside, Report whereTo, QObject* parent)
    : QObject(parent), background(&beside), report(std::move(whereTo)) {}

void VerificationView::run(const QString& registration) {
    awaited = true;
    done = false;
    background->run<Verdict>(
        this,
        [aircraft = registration.toStdString()](const archive::Archive& archive) -> Result<Verdict> {
            auto list = archive.records(aircraft);
            if (!list) return tl::unexpected(list.error());
            auto found = archive::verify(archive, aircraft);
            if (!found) return tl::unexpected(found.error());
            return Verdict{std::move(*found), std::move(*list)};
        },
        [this, mine = ++question](Result<Verdict> verdict) {
            if (mine == question) take(std::move(verdict));
        });
    emit changed();
}

void VerificationView::take(Result<Verdict> verdict) {
    awaited = false;
    broken.clear();
    holes.clear();
    if (verdict) {
        done = true;
        const auto& [found, list] = *verdict;
        records = static_cast<int>(found.records);
        good = found.broken.empty() && found.holes.empty();
        for (const archive::Broken& one : found.broken)
            broken << row(one.sha256, nameOf(one.sha256, list), text(toText(one.error)));
        for (const file::Hole& hole : found.holes)
            holes << row(hole.sha256, nameOf(hole.sha256, list),
                         tr("named as an earlier one by: %1").arg(nameOf(hole.namedBy.front(), list)));
    } else {
        report(verdict.error());
    }
    emit changed();
}

} // namespace ambit::view
