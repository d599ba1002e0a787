#include "model/beside_view.hpp"

#include "base/decimal.hpp"
#include "model/sentence.hpp"
#include "model/shown_airframe.hpp"
#include "model/story.hpp"
#include "model/words.hpp"

#include <algorithm>
#include <cstdlib>

namespace ambit::view {

namespace {

constexpr std::size_t mostOthers = 12; ///< each is read for it

QString figure(double value, int decimals) {
    return figureText(fixed(value, decimals));
}

QVariantMap described(const round::Walked& walked) {
    const round::Person& who = walked.opened.who;
    return {{QStringLiteral("who"), text(who.name) + QStringLiteral(", ") + roleText(who.role)},
            {QStringLiteral("whenText"), dayText(walked.at, walked.opened.offsetMinutes)},
            {QStringLiteral("conclusionText"),
             walked.conclusion ? conclusionText(walked.conclusion->fit) : QString()},
            {QStringLiteral("alone"), walked.alone}};
}

QString lookOf(const std::optional<round::Settled>& settled) {
    if (!settled) return QStringLiteral("todo");
    switch (settled->outcome) {
    case round::Outcome::sound:
        return QStringLiteral("sound");
    case round::Outcome::finding:
        return QStringLiteral("finding");
    case round::Outcome::notInspected:
        break;
    }
    return QStringLiteral("notInspected");
}

QString wordsOf(const std::optional<round::Settled>& settled, const airframe::Point* point) {
    if (!settled) return BesideView::tr("not settled");
    QString words = outcomeText(settled->outcome);
    if (settled->value) {
        words += QStringLiteral(", ") + figureText(*settled->value);
        if (point != nullptr && point->limit) words += QStringLiteral(" ") + text(point->limit->unit);
    }
    if (settled->outcome == round::Outcome::finding) {
        const bool grounds = settled->severity == round::Severity::grounds;
        words += (grounds ? BesideView::tr(", grounds: %1") : BesideView::tr(", to be assessed: %1"))
                     .arg(text(settled->words));
    }
    if (settled->outcome == round::Outcome::notInspected) words = saidOf(words, text(settled->why));
    return words;
}

} // namespace

BesideView::BesideView(const Services& handedIn, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), report(std::move(whereTo)) {}

Result<round::Walked> BesideView::walkedIn(const std::string& record) const {
    const auto json = services->archive.recordJson(record);
    if (!json) return tl::unexpected(json.error());
    const auto events = eventsOf(*json);
    if (!events) return tl::unexpected(events.error());
    return round::walkedOf(*events);
}

QVariantList BesideView::others(const QString& recordId) const {
    const std::string id = recordId.toStdString();
    const auto own = walkedIn(id);
    if (!own) return {};
    auto records = services->archive.records(own->opened.registration);
    if (!records) return {};
    std::erase_if(*records, [&](const auto& one) { return one.kind != "round" || one.sha256 == id; });
    std::stable_sort(records->begin(), records->end(), [&](const auto& a, const auto& b) {
        return std::llabs(a.concludedAt.ms - own->at.ms) < std::llabs(b.concludedAt.ms - own->at.ms);
    });
    if (records->size() > mostOthers) records->resize(mostOthers);
    QVariantList list;
    for (const auto& record : *records) {
        const auto other = walkedIn(record.sha256);
        if (!other || !round::beside(*own, *other)) continue;
        QVariantMap row = described(*other);
        row.insert(QStringLiteral("recordId"), text(record.sha256));
        list << row;
    }
    return list;
}

bool BesideView::lay(const QString& firstRecord, const QString& secondRecord) {
    const auto done = [&]() -> Result<void> {
        auto one = walkedIn(firstRecord.toStdString());
        if (!one) return tl::unexpected(one.error());
        auto other = walkedIn(secondRecord.toStdString());
        if (!other) return tl::unexpected(other.error());
        const auto both = round::beside(std::move(*one), std::move(*other));
        if (!both) return tl::unexpected(both.error());
        return tell(*both);
    }();
    if (!done) report(done.error());
    laid = done.has_value();
    laidRecords = {firstRecord, secondRecord};
    emit changed();
    return laid;
}

void BesideView::sayAnew() {
    if (laid) (void)lay(QString(laidRecords.first), QString(laidRecords.second));
}

void BesideView::clear() {
    laid = false;
    emit changed();
}

Result<void> BesideView::tell(const round::Beside& both) {
    const auto airframe = airframeShown(services->archive, both.first.opened.airframeSha256);
    if (!airframe) return tl::unexpected(airframe.error());
    first = described(both.first);
    second = described(both.second);
    differing.clear();
    single.clear();
    for (const round::PointBeside& one : both.points) {
        if (one.byBoth() && !one.differs()) continue;
        const auto* point = airframe->point(one.point);
        const QVariantMap row{{QStringLiteral("id"), text(one.point)},
                              {QStringLiteral("name"), text(point == nullptr ? one.point : point->name)},
                              {QStringLiteral("firstLook"), lookOf(one.first)},
                              {QStringLiteral("firstText"), wordsOf(one.first, point)},
                              {QStringLiteral("secondLook"), lookOf(one.second)},
                              {QStringLiteral("secondText"), wordsOf(one.second, point)}};
        (one.byBoth() ? differing : single) << row;
    }
    table.clear();
    for (std::size_t i = 0; i < both.table.size(); ++i) {
        QVariantList counts;
        for (const std::int64_t count : both.table[i])
            counts << static_cast<int>(count);
        table << QVariantMap{{QStringLiteral("name"), outcomeText(round::outcomes[i])},
                             {QStringLiteral("counts"), counts}};
    }
    const int count = static_cast<int>(both.points.size()) - both.countOnlyByOne();
    sameText =
        tr("Seen differently: %1 of %2 points that both settled").arg(both.countDiffering()).arg(count);
    if (!both.agreement) {
        kappaText = text(both.agreement.error().what);
        return {};
    }
    const round::Agreement& its = *both.agreement;
    sameText = tr("The same outcome at %1 of %2 points (%3 %)")
                   .arg(its.same)
                   .arg(its.count)
                   .arg(figure(its.observed * 100, 1));
    kappaText = tr("Cohen's kappa %1, 95 % interval %2 to %3")
                    .arg(figure(its.kappa, 2), figure(its.low, 2), figure(its.high, 2));
    return {};
}

} // namespace ambit::view
