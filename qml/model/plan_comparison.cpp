#include "model/plan_comparison.hpp"

#include "model/length.hpp"
#include "model/words.hpp"

#include <cmath>

namespace ambit::view {

namespace {

QVariantMap row(const QString& what, const QString& planned, const QString& listed) {
    return {{QStringLiteral("what"), what},
            {QStringLiteral("planned"), planned},
            {QStringLiteral("listed"), listed}};
}

QString whole(double value) {
    return QString::number(std::lround(value));
}

} // namespace

PlanComparison::~PlanComparison() {
    // What is being worked out comes back to nobody, but it must not outlive what it works with.
    pool.clear();
    pool.waitForDone();
}

void PlanComparison::show(const std::shared_ptr<const airframe::Airframe>& description,
                          const std::string& walkId) {
    airframe = description;
    shown = description ? Key{description->sha256, walkId} : Key{};
    const bool isWalk = description && description->walk(walkId) != nullptr;
    if (isWalk && known.try_emplace(shown).second) {
        awaited.insert(shown);
        pool.start([this, description, key = shown] {
            const walk::Situation start = walk::startOf(*description);
            auto planned = walk::makePlan(*description, key.second, start);
            auto listed = walk::listedPlan(*description, key.second, start);
            std::shared_ptr<const Plans> plans;
            if (planned && listed)
                plans = std::make_shared<const Plans>(Plans{std::move(*planned), std::move(*listed)});
            QMetaObject::invokeMethod(
                this, [this, key, plans] { take(key, plans); }, Qt::QueuedConnection);
        });
    }
    emit changed();
}

void PlanComparison::sayIn(const std::shared_ptr<const airframe::Airframe>& other) {
    if (!airframe || !other || other->sha256 != airframe->sha256) return;
    airframe = other;
    emit changed();
}

void PlanComparison::take(const Key& key, std::shared_ptr<const Plans> plans) {
    known[key] = std::move(plans);
    awaited.erase(key);
    if (key == shown) emit changed();
}

const PlanComparison::Plans* PlanComparison::find() const {
    const auto found = known.find(shown);
    return found == known.end() ? nullptr : found->second.get();
}

std::vector<walk::Step> PlanComparison::steps(const std::string& airframeSha256,
                                              const std::string& walkId) const {
    const auto found = known.find({airframeSha256, walkId});
    return found == known.end() || !found->second ? std::vector<walk::Step>() : found->second->planned.steps;
}

QVariantList PlanComparison::rows() const {
    const Plans* plans = find();
    if (plans == nullptr && !pending()) return {};
    // Until they are there the figures have their places already.
    const auto figures = [&](const QString& what, auto figureOf) {
        const QString none = QStringLiteral("…");
        return plans == nullptr ? row(what, none, none)
                                : row(what, figureOf(plans->planned.cost), figureOf(plans->listed.cost));
    };
    QVariantList list{figures(tr("Way walked"),
                              [](const walk::Cost& cost) { return lengthText(cost.metres, Grain::whole); }),
                      figures(tr("Climbs"), [](const walk::Cost& cost) { return whole(cost.climbs); })};
    if (!airframe->settings.empty()) {
        const QString what = airframe->settings.size() == 1
                                 ? tr("Changes of %1").arg(quoted(text(airframe->settings.front().name)))
                                 : tr("Changes of settings");
        list << figures(what, [](const walk::Cost& cost) { return whole(cost.turns); });
    }
    list << figures(tr("Minutes"), [](const walk::Cost& cost) { return whole(cost.seconds / 60); });
    return list;
}

QString PlanComparison::proof() const {
    const Plans* plans = find();
    if (plans == nullptr || !plans->planned.unreachable.empty()) return {};
    const walk::Plan& plan = plans->planned;
    if (plan.proven) return tr("No shorter walk exists, climbs and changes weighed in.");
    if (plan.bound <= 0) return {};
    // Rounded up: what is promised holds.
    const int percent = static_cast<int>(std::ceil((plan.cost.weighs / plan.bound - 1) * 100));
    return tr("At most %1 % longer than the shortest possible, climbs and changes weighed in.")
        .arg(std::max(1, percent));
}

QString PlanComparison::spoken() const {
    QStringList sentences;
    for (const QVariant& one : rows()) {
        const QVariantMap values = one.toMap();
        sentences << tr("%1: %2 this way round, %3 as listed.")
                         .arg(values.value(QStringLiteral("what")).toString(),
                              values.value(QStringLiteral("planned")).toString(),
                              values.value(QStringLiteral("listed")).toString());
    }
    if (!proof().isEmpty()) sentences << proof();
    return sentences.join(QStringLiteral(" "));
}

} // namespace ambit::view
