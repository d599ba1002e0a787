#include "model/retention_view.hpp"

#include "model/file_words.hpp"
#include "model/words.hpp"

#include <algorithm>

namespace ambit::view {

RetentionView::RetentionView(const Services& handedIn, Background& beside, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), background(&beside), report(std::move(whereTo)) {}

void RetentionView::look(const QString& registration) {
    mayGo.clear();
    mustStay.clear();
    const auto today = Date::of(services->now());
    const int mine = ++question;
    awaited = !registration.isEmpty() && today.has_value();
    if (awaited)
        background->run<Looked>(
            this,
            [aircraft = registration.toStdString(),
             day = *today](const archive::Archive& archive) -> Result<Looked> {
                const auto told = archive.told(aircraft);
                if (!told) return tl::unexpected(told.error());
                file::AircraftFile file = file::fold(*told);
                auto keeping = file::retention(*told, file, day);
                return Looked{std::move(keeping), std::move(file)};
            },
            [this, mine](Result<Looked> looked) {
                if (mine == question) take(std::move(looked));
            });
    emit changed();
}

void RetentionView::take(Result<Looked> looked) {
    awaited = false;
    if (!looked) report(looked.error());
    const auto& pages = looked ? looked->file.pages : std::vector<file::Page>();
    // Both are in the file's order.
    for (std::size_t i = 0, at = 0; looked && i < looked->keeping.size(); ++i) {
        const file::Keeping& one = looked->keeping[i];
        while (pages[at].sha256 != one.record)
            ++at;
        const file::Page& page = pages[at];
        const auto& heads = looked->file.heads;
        const bool isHead = std::find(heads.begin(), heads.end(), one.record) != heads.end();
        QVariantMap row{
            {QStringLiteral("recordId"), text(one.record)},
            {QStringLiteral("name"),
             tr("%1 of %2").arg(kindText(page.kind), dayText(page.at, services->now().offsetMinutes))},
            {QStringLiteral("who"), text(page.signer.name)},
            {QStringLiteral("why"), text(one.why)}};
        if (!one.mayGo) row.insert(QStringLiteral("never"), isHead || page.kind == "removal");
        (one.mayGo ? mayGo : mustStay) << row;
    }
    emit changed();
}

QString RetentionView::basisOf(const QStringList& records) const {
    QStringList reasons;
    for (const QVariant& one : mayGo) {
        const QVariantMap row = one.toMap();
        const QString why = row.value(QStringLiteral("why")).toString();
        if (records.contains(row.value(QStringLiteral("recordId")).toString()) && !reasons.contains(why))
            reasons << why;
    }
    return reasons.join(QLatin1Char(' '));
}

} // namespace ambit::view
