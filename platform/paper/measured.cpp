// What was measured otherwise than by typing a bare value in its limit's unit, where values are going, and
// photos of what is sound.
#include "judge/units.hpp"
#include "model/trend_chart.hpp"
#include "model/words.hpp"
#include "paper/item.hpp"
#include "paper/measured_marks.hpp"

#include <QStringList>

namespace ambit::paper {

namespace {

using round::Measurement;
using round::Outcome;

constexpr double chartHeight = 190;

struct Item {
    const PointView& point;
    const Entry& entry;
    bool counts;
    const round::Trended* trend; ///< of the one that counts
};

bool isMeasured(const Item& item) {
    const round::Settled& settled = *item.entry.settled;
    return !settled.measurements.empty() || !settled.unit.empty() || settled.renewed || settled.from ||
           item.trend != nullptr;
}

bool isPhotographed(const Item& item) {
    const round::Settled& settled = *item.entry.settled;
    return settled.outcome == Outcome::sound && !settled.photos.empty();
}

/// Those that count first, each in the order of the list of points.
std::vector<Item> itemsOf(const RecordView& view) {
    std::vector<Item> items;
    for (const bool counts : {true, false})
        for (const PointView& point : view.points) {
            const auto& trend = view.state.points.at(point.point->id).trend;
            for (const Entry& entry : point.entries)
                if (entry.settled && (&entry == &point.counting()) == counts)
                    items.push_back({point, entry, counts, counts && trend ? &*trend : nullptr});
        }
    return items;
}

/// “5.08 mm, 95 %: 4.81 to 5.35 mm”: 1.96 standard uncertainties either way.
QString estimateWords(const std::string& value, const std::string& unit, const std::string& uncertainty) {
    QString words = shown(value) + u' ' + shown(unit);
    const auto middle = Decimal::parse(value);
    const auto standard = Decimal::parse(uncertainty);
    if (!middle || !standard) return words;
    const auto decimalsOf = [](const std::string& number) {
        const std::size_t dot = number.find('.');
        return dot == std::string::npos ? 0 : static_cast<int>(number.size() - dot) - 1;
    };
    const int decimals = std::max(decimalsOf(value), decimalsOf(uncertainty));
    const double reach = 1.96 * standard->approximate();
    const auto end = [&](double side) {
        return shown(fixed(middle->approximate() + side * reach, decimals)).replace(u'-', QChar(0x2212));
    };
    return words + QStringLiteral(", 95 %: ") + end(-1) + QStringLiteral(" to ") + end(1) + u' ' +
           shown(unit);
}

QString whatWords(Measurement::What what) {
    switch (what) {
    case Measurement::What::distance:
        return QStringLiteral("Distance");
    case Measurement::What::margin:
        return QStringLiteral("Distance to a line");
    case Measurement::What::area:
        return QStringLiteral("Area");
    case Measurement::What::width:
        return QStringLiteral("Largest width");
    case Measurement::What::slip:
        return QStringLiteral("Angle of the mark");
    case Measurement::What::offset:
        return QStringLiteral("Offset of the mark");
    }
    return {};
}

QString howMeasured(const Measurement& measurement) {
    QString words = QStringLiteral("in photo ") + shortHash(measurement.photo) + QStringLiteral(" …, ");
    if (!measurement.card)
        return words + QStringLiteral("without a card, seen within ") + shown(measurement.tilt) +
               QStringLiteral("° of straight down");
    words += measurement.card->byHand ? QStringLiteral("against a card whose corners were set by hand")
                                      : QStringLiteral("against a card that was found and confirmed");
    if (measurement.known)
        words += QStringLiteral("; a known length of ") + shown(measurement.known->length) +
                 QStringLiteral(" mm agrees");
    return words;
}

QString verdictWords(const Item& item) {
    const airframe::Limit& limit = *item.point.point->limit;
    const round::Settled& settled = *item.entry.settled;
    const auto value = Decimal::parse(*settled.value);
    const auto verdict = value
                             ? judge::against(limit, *value, settled.unit.empty() ? limit.unit : settled.unit)
                             : tl::unexpected(value.error());
    if (!verdict) return {};
    switch (*verdict) {
    case judge::Verdict::below:
        return QStringLiteral(": the value is below it");
    case judge::Verdict::above:
        return QStringLiteral(": the value is above it");
    case judge::Verdict::within:
        break;
    }
    return QStringLiteral(": the value is within it");
}

void addValue(Sheet& sheet, const Item& item) {
    const round::Settled& settled = *item.entry.settled;
    const airframe::Point& point = *item.point.point;
    if (!settled.value || !point.limit) return;
    QString value = shown(point.limit->quantity) + u' ' +
                    estimateWords(*settled.value,
                                  settled.unit.empty() && !settled.byPhoto ? point.limit->unit
                                  : settled.byPhoto                        ? settled.measurements.front().unit
                                                                           : settled.unit,
                                  round::uncertaintyOf(settled));
    const std::string from = round::fromOf(settled);
    value += QStringLiteral("; ") + (from.empty() ? QStringLiteral("typed") : shown(round::fromText(from)));
    addLabelled(sheet, QStringLiteral("Value"), value);
    addLabelled(sheet, QStringLiteral("Limit"),
                shown(judge::toText(*point.limit)) + QStringLiteral(" (") + shown(point.limit->source) +
                    u')' + verdictWords(item));
    if (settled.renewed)
        addLabelled(sheet, QStringLiteral("Renewed"),
                    QStringLiteral("The part was renewed or repainted before this value."));
}

view::ChartLook chartLook(const Item& item, const airframe::Airframe& airframe) {
    view::ChartLook look;
    look.ground = ink::paper;
    look.ink = ink::black;
    look.quiet = ink::grey;
    look.band = ink::fill;
    look.limit = ink::black;
    look.font = fontOf(Face::regular, 7.5);
    look.fontScale = 1.0 / stepsPerPoint;
    look.stroke = 0.6;
    look.dot = 1.7;
    const airframe::Counter* counter = airframe.counter(item.trend->over);
    look.across = counter == nullptr ? QStringLiteral("days since the first value")
                                     : view::withUnit(shown(counter->name), shown(counter->unit));
    const airframe::Limit& limit = *item.point.point->limit;
    look.up = view::withUnit(shown(limit.quantity), shown(limit.unit));
    return look;
}

/// “3 measured in a photo, 2 taken with a ruler or caliper, 4 not said”; nothing if none is said, as before
/// version 7.
QString readFromWords(const round::Trended& trend) {
    std::vector<std::pair<std::string, int>> counts; // in the order met
    for (const round::TrendValue& value : trend.values) {
        const auto met = std::find_if(counts.begin(), counts.end(),
                                      [&](const auto& one) { return one.first == value.from; });
        if (met == counts.end())
            counts.emplace_back(value.from, 1);
        else
            ++met->second;
    }
    if (counts.size() == 1 && counts.front().first.empty()) return {};
    QStringList words;
    for (const auto& [from, count] : counts)
        words << QString::number(count) + u' ' +
                     (from.empty() ? QStringLiteral("not said") : shown(round::fromText(from)));
    return words.join(QStringLiteral(", ")) + u'.';
}

void addTrend(const Context& context, const Item& item) {
    Sheet& sheet = context.sheet;
    sheet.gap(6);
    sheet.need(chartHeight + 40);
    const view::ChartLook look = chartLook(item, *context.view.airframe);
    sheet.put([=, box = QRectF(area::left + indent, sheet.y, wide, chartHeight), trend = *item.trend,
               limit = *item.point.point->limit](QPainter& painter) {
        view::drawTrend(painter, box, trend, limit, look);
    });
    sheet.y += chartHeight + 6;
    QStringList words;
    for (const std::string& one : item.trend->words)
        words << shown(one);
    if (words.isEmpty()) return;
    words.front().front() = words.front().front().toUpper();
    if (item.trend->stands) words << QStringLiteral("this stands against fit");
    addLabelled(sheet, QStringLiteral("As told"), words.join(QStringLiteral("; ")) + u'.');
    if (const QString from = readFromWords(*item.trend); !from.isEmpty())
        addLabelled(sheet, QStringLiteral("Its values"), from);
    if (item.trend->band.size() > 1)
        sheet.text(
            Text(QStringLiteral("Grey: where 95 % of values lie. A bar at a value: 95 % of its own "
                                "uncertainty. Hollow: this round’s. Drawn from the figures told then."),
                 style::quiet, wide),
            area::left + indent);
}

QString whenWords(const Context& context, const Item& item) {
    QString words = outcomeWord(item.entry.settled->outcome) + QStringLiteral(" · from: ") +
                    standName(context.view, item.entry.stand) + QStringLiteral(" · at ") +
                    context.clock.time(item.entry.at) + QStringLiteral(" local time");
    if (!item.counts) words += QStringLiteral(" · taken back, and settled again");
    return words;
}

void addItem(const Context& context, const Item& item) {
    Sheet& sheet = context.sheet;
    const round::Settled& settled = *item.entry.settled;
    const Text name = textOf(item.point.point->name, style::subheading, wide);
    const Text when(whenWords(context, item), style::quiet, wide);
    sheet.gap(12);
    // Head, values and the first picture stay together.
    const double pictures = isPhotographed(item)    ? photoRowHeight(context, settled.photos)
                            : item.trend != nullptr ? chartHeight + 50
                                                    : 0;
    sheet.need(name.height() + when.height() + 70 + pictures);
    if (item.trend != nullptr) sheet.mark(trendMark(item.point.point->id));
    addItemHead(sheet, item.counts ? markOf(settled) : Mark::hollow, item.point.number, name);
    sheet.text(when, area::left + indent);
    sheet.y += 5;
    if (isMeasured(item)) addValue(sheet, item);
    for (const Measurement& one : settled.measurements)
        addLabelled(sheet, whatWords(one.what),
                    estimateWords(one.value, one.unit, one.uncertainty) + QStringLiteral("; ") +
                        howMeasured(one));
    // Those of a finding stand with it, its marks drawn in.
    if (isPhotographed(item)) addPhotos(context, settled.photos, item.point.number, measuredOver(settled));
    if (item.trend != nullptr) addTrend(context, item);
}

} // namespace

std::string trendMark(const std::string& point) {
    return "trend " + point;
}

void addMeasured(const Context& context) {
    const std::vector<Item> items = itemsOf(context.view);
    const bool any = std::any_of(items.begin(), items.end(), isMeasured);
    const bool photos = std::any_of(items.begin(), items.end(), [](const Item& item) {
        return !isMeasured(item) && isPhotographed(item);
    });
    if (!any && !photos) return;
    context.sheet.newPage();
    if (any)
        addHeading(context.sheet, QStringLiteral("What was measured"),
                   QStringLiteral(
                       "How each value was taken, its uncertainty if that is stated, and where values are "
                       "going. In a photo, dashes show the card and crosses what was marked."));
    for (const Item& item : items)
        if (isMeasured(item)) addItem(context, item);
    if (!photos) return;
    context.sheet.gap(24);
    addHeading(context.sheet, QStringLiteral("Photos of what is sound"),
               QStringLiteral("Taken to be compared with later ones."));
    for (const Item& item : items)
        if (!isMeasured(item) && isPhotographed(item)) addItem(context, item);
}

} // namespace ambit::paper
