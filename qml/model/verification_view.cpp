#include "model/verification_view.hpp"

#include "model/file_words.hpp"
#include "model/words.hpp"

namespace ambit::view {

namespace {

using Records = std::vector<archive::RecordInfo>;

Records::const_iterator findIn(const Records& list, const std::string& sha256) {
    return std::find_if(list.begin(), list.end(), [&](const auto& one) { return one.sha256 == sha256; });
}

/// As a person knows a record; by its identity where the archive doesn't know it.
QString nameOf(const std::string& sha256, const Records& list) {
    const auto info = findIn(list, sha256);
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
    lookedAt = all = 0;
    const int mine = ++question;
    const auto progress = [this, mine](std::size_t so, std::size_t far) {
        QMetaObject::invokeMethod(
            this,
            [this, mine, so, far] {
                if (mine != question) return;
                lookedAt = static_cast<int>(so);
                all = static_cast<int>(far);
                emit changed();
            },
            Qt::QueuedConnection);
        return !background->isFinishing();
    };
    background->run<Verdict>(
        this,
        [progress,
         aircraft = registration.toStdString()](const archive::Archive& archive) -> Result<Verdict> {
            auto list = archive.records(aircraft);
            if (!list) return tl::unexpected(list.error());
            auto found = archive::verify(archive, {aircraft, false, progress});
            if (!found) return tl::unexpected(found.error());
            return Verdict{std::move(*found), std::move(*list)};
        },
        [this, mine](Result<Verdict> verdict) {
            if (mine == question) take(std::move(verdict));
        });
    emit changed();
}

void VerificationView::take(Result<Verdict> verdict) {
    awaited = false;
    broken.clear();
    missing.clear();
    if (!verdict) {
        report(verdict.error());
        emit changed();
        return;
    }
    done = true;
    const auto& [found, list] = *verdict;
    records = static_cast<int>(found.records);
    for (const archive::Broken& one : found.broken) {
        const bool isRecord = findIn(list, one.sha256) != list.end();
        broken << row(isRecord ? one.sha256 : std::string(),
                      isRecord ? nameOf(one.sha256, list)
                               : tr("Kept as %1").arg(text(one.sha256.substr(0, 12))),
                      errorText(one.error));
    }
    for (const file::Hole& hole : found.holes)
        missing << row(hole.sha256, nameOf(hole.sha256, list),
                       hole.namedBy.empty()
                           ? tr("It was here as a latest one.")
                           : tr("Named as an earlier one by: %1").arg(nameOf(hole.namedBy.front(), list)));
    for (const std::string& photo : found.missingPhotos)
        missing << row(photo, tr("Photo %1").arg(text(photo.substr(0, 12))), tr("A record names it."));
    good = broken.isEmpty() && missing.isEmpty();
    emit changed();
}

} // namespace ambit::view
