#include "model/trend_view.hpp"

#include "model/shown_airframe.hpp"
#include "model/trend_chart.hpp"
#include "model/words.hpp"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

namespace ambit::view {

namespace {

constexpr const char* days = "days";
constexpr std::size_t spokenValues = 5;

} // namespace

TrendView::TrendView(const Services& handedIn, Background& beside, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), background(&beside), report(std::move(whereTo)) {}

void TrendView::show(const QString& aircraft, const QString& point) {
    registration = aircraft;
    pointId = point.toStdString();
    past.clear();
    overWhat.clear();
    course.reset();
    ++question;
    emit changed();
    if (point.isEmpty()) return;
    background->run<std::vector<round::Past>>(
        this,
        [registration = aircraft.toStdString(),
         id = pointId](const archive::Archive& archive) -> Result<std::vector<round::Past>> {
            auto all = archive::series(archive, registration, {id});
            if (!all) return tl::unexpected(all.error());
            return std::move((*all)[id]);
        },
        [this, mine = question](Result<std::vector<round::Past>> values) {
            if (mine != question) return;
            if (!values) return report(values.error());
            past = std::move(*values);
            sayAnew();
        });
}

void TrendView::sayAnew() {
    airframe.reset();
    if (past.size() >= 2) {
        const auto all = services->archive.aircraft();
        if (!all) return report(all.error());
        const auto its = std::find_if(all->begin(), all->end(), [&](const auto& one) {
            return text(one.registration) == registration;
        });
        if (its != all->end())
            if (auto shown = airframeShown(services->archive, its->airframeSha256))
                airframe = std::make_shared<const airframe::Airframe>(std::move(*shown));
    }
    compute();
}

void TrendView::follow(const QString& over) {
    overWhat = over.toStdString();
    compute();
}

void TrendView::compute() {
    course.reset();
    const airframe::Point* point = airframe ? airframe->point(pointId) : nullptr;
    // The airframe is another today, and doesn't measure there: nothing to say.
    if (point != nullptr && point->limit)
        if (auto its = round::courseOf(*airframe, *point, past, overWhat); its && its->values.size() >= 2)
            course = std::move(*its);
    emit changed();
}

QStringList TrendView::texts() const {
    QStringList words;
    if (course)
        for (const Sentence& one : judge::toTexts(course->trend, course->question))
            words << text(one);
    return words;
}

QVariantList TrendView::ways() const {
    QVariantList list;
    if (!course) return list;
    for (const airframe::Counter& counter : airframe->counters)
        list << QVariantMap{{QStringLiteral("id"), text(counter.id)},
                            {QStringLiteral("name"), text(counter.name)}};
    list << QVariantMap{{QStringLiteral("id"), QLatin1String(days)}, {QStringLiteral("name"), tr("Days")}};
    return list;
}

QString TrendView::over() const {
    return course ? text(course->told.over) : QString();
}

QString TrendView::across() const {
    if (!course) return {};
    const airframe::Counter* counter = airframe->counter(course->told.over);
    if (counter == nullptr) return tr("Days since the first value");
    return withUnit(text(counter->name), unitText(counter->unit));
}

QString TrendView::up() const {
    const airframe::Limit& limit = course->question.limit;
    return withUnit(text(limit.quantity), text(limit.unit));
}

QString TrendView::spoken() const {
    if (!course) return {};
    QStringList words;
    const auto& values = course->told.values;
    for (std::size_t i = values.size() - std::min(values.size(), spokenValues); i < values.size(); ++i)
        words << spokenText(values[i]);
    return words.join(QStringLiteral("; "));
}

QString TrendView::spokenText(const round::TrendValue& one) const {
    const QString its = estimateText(one.value, course->question.limit.unit, one.uncertainty);
    const QString value =
        course->unit == "days"
            ? tr("%1 after %2 days").arg(its, figureText(one.x))
            : tr("%1 at %2").arg(its, figureText(one.x) + QLatin1Char(' ') + unitText(course->unit));
    return one.from.empty() ? value : value + QStringLiteral(", ") + text(round::fromText(one.from));
}

// --- the chart --------------------------------------------------------------------------------------------

TrendChart::TrendChart(QQuickItem* parent) : QQuickPaintedItem(parent) {
    connect(this, &TrendChart::lookChanged, this, [this] { update(); });
}

void TrendChart::setView(TrendView* view) {
    if (shown == view) return;
    if (shown != nullptr) shown->disconnect(this);
    shown = view;
    if (shown != nullptr) connect(shown, &TrendView::changed, this, [this] { update(); });
    emit viewChanged();
    update();
}

void TrendChart::paint(QPainter* painter) {
    if (shown == nullptr || !shown->there()) return;
    painter->setRenderHint(QPainter::Antialiasing);
    ChartLook look;
    look.ground = ground;
    look.ink = ink;
    look.quiet = quiet;
    look.band = band;
    look.limit = limit;
    look.font.setFamily(family);
    look.font.setPixelSize(textSize);
    look.stroke = textSize / 14.0;
    look.dot = textSize / 5.0;
    look.across = shown->across();
    look.up = shown->up();
    // Large text gives way: what the values are is said whole, as far as it can be read.
    const double least = std::min(textSize, 12);
    const double wide = std::max(QFontMetricsF(look.font).horizontalAdvance(look.up),
                                 QFontMetricsF(look.font).horizontalAdvance(look.across) * 1.2);
    if (wide > width())
        look.font.setPixelSize(static_cast<int>(std::max(least, std::floor(textSize * width() / wide))));
    look.limitWords = TrendView::tr("limit");
    look.renewed = TrendView::tr("renewed");
    look.crossing = TrendView::tr("limit, 95 %");
    look.point = figureText("0.5").mid(1, 1);
    drawTrend(*painter, QRectF(0, 0, width(), height()), shown->drawn().told, shown->drawn().question.limit,
              look);
}

} // namespace ambit::view
