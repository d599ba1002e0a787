// What is measured in a round: units, photos kept for the point on the card, and where its values are going.
#include "model/round_view.hpp"

#include "judge/units.hpp"
#include "model/unshown.hpp"
#include "model/words.hpp"

namespace ambit::view {

// --- what goes with the point -----------------------------------------------------------------------------

QStringList RoundView::units() const {
    const auto* its = limit();
    if (its == nullptr) return {};
    QStringList names{text(its->unit)};
    const judge::Unit* own = judge::unitOf(its->unit);
    if (own == nullptr) return names;
    for (const judge::Unit& unit : judge::units())
        if (unit.quantity == own->quantity && own != &unit) names << QString::fromUtf8(unit.name);
    return names;
}

void RoundView::keepPhoto(archive::PhotoBytes photo, std::optional<round::Measurement> measurement) {
    if (card.point == nullptr) return;
    if (keptFor != card.point->id) kept.clear();
    keptFor = card.point->id;
    auto its = std::find_if(kept.begin(), kept.end(),
                            [&](const Kept& one) { return one.photo.photo.sha256 == photo.photo.sha256; });
    if (its == kept.end()) its = kept.insert(kept.end(), {std::move(photo), {}});
    if (measurement) its->measurements.push_back(std::move(*measurement));
    announce();
}

void RoundView::dropKept(int row) {
    if (row < 0 || static_cast<std::size_t>(row) >= kept.size()) return;
    kept.erase(kept.begin() + row);
    announce();
}

/// The first measurement that the limit can be compared with.
static const round::Measurement* valueIn(const std::vector<round::Measurement>& measurements,
                                         const airframe::Limit& limit) {
    for (const round::Measurement& one : measurements)
        if (judge::compare(Decimal(), one.unit, Decimal(), limit.unit)) return &one;
    return nullptr;
}

QString RoundView::keptValue() const {
    if (limit() == nullptr || card.point->id != keptFor) return {};
    for (const Kept& one : kept)
        if (const auto* its = valueIn(one.measurements, *limit())) return figureText(its->value);
    return {};
}

QString RoundView::keptUnit() const {
    if (limit() == nullptr || card.point->id != keptFor) return {};
    for (const Kept& one : kept)
        if (const auto* its = valueIn(one.measurements, *limit())) return text(its->unit);
    return {};
}

QStringList RoundView::keptTexts() const {
    QStringList texts;
    if (card.point == nullptr || card.point->id != keptFor) return texts;
    for (const Kept& one : kept) {
        QStringList words{tr("Photo")};
        for (const round::Measurement& its : one.measurements)
            words << measureText(its.value, its.unit);
        texts << words.join(QStringLiteral("\u00a0· "));
    }
    return texts;
}

void RoundView::takeMeasured(round::Settled& what, const QString& value, const QString& unit, bool renewed,
                             std::vector<archive::PhotoBytes>& pictures) const {
    if (std::string typed = typedDecimal(value); !typed.empty()) what.value = std::move(typed);
    if (card.point != nullptr && keptFor == card.point->id)
        for (const Kept& one : kept) {
            what.photos.push_back(one.photo.photo);
            pictures.push_back(one.photo);
            what.measurements.insert(what.measurements.end(), one.measurements.begin(),
                                     one.measurements.end());
        }
    if (!what.value || limit() == nullptr) return;
    const std::string entered = unit.isEmpty() ? limit()->unit : unit.toStdString();
    if (entered != limit()->unit) what.unit = entered;
    what.renewed = renewed;
    what.from = reading().from;
    if (what.from) what.uncertainty = uncertaintyNow(entered);
    // The value is one that was measured: it leads.
    for (auto its = what.measurements.begin(); its != what.measurements.end(); ++its)
        if (its->value == *what.value && its->unit == entered) {
            std::rotate(what.measurements.begin(), its, its + 1);
            what.byPhoto = true;
            what.from.reset();
            what.uncertainty.clear();
            break;
        }
}

// --- what a typed value is read from ----------------------------------------------------------------------

/// As told for the point on the card; else as its airframe says.
RoundView::Reading RoundView::reading() const {
    if (limit() == nullptr) return {};
    if (readTold.point == card.point->id) return readTold;
    return {card.point->id, limit()->from, limit()->uncertainty ? limit()->uncertainty->text() : "",
            limit()->unit};
}

std::string RoundView::uncertaintyNow(const std::string& unit) const {
    const Reading its = reading();
    const auto standard = Decimal::parse(its.uncertainty);
    if (!standard || its.unit == unit) return its.uncertainty;
    // Of another unit's scale: to two digits, as an uncertainty is told (JCGM 100:2008, 7.2.6).
    const auto shown = judge::differenceIn(*standard, its.unit, unit, 2);
    return shown ? shown->value.text() : std::string();
}

QString RoundView::valueFrom() const {
    const auto from = reading().from;
    return from ? QString::fromLatin1(airframe::toText(*from)) : QString();
}

QVariantList RoundView::sources() const {
    using airframe::Means;
    QVariantList list;
    for (const Means means :
         {Means::gauge, Means::ruler, Means::dipstick, Means::meter, Means::count, Means::eye}) {
        QString name = text(judge::toText(means));
        name.front() = name.front().toUpper();
        list << QVariantMap{{QStringLiteral("id"), QString::fromLatin1(airframe::toText(means))},
                            {QStringLiteral("name"), name}};
    }
    return list;
}

QString RoundView::uncertaintyIn(const QString& unit) const {
    if (limit() == nullptr || !reading().from) return {};
    const std::string its = uncertaintyNow(unit.isEmpty() ? limit()->unit : unit.toStdString());
    return its.empty() ? QString() : figureText(its);
}

void RoundView::tellReading(const QString& from, const QString& uncertainty, const QString& unit) {
    if (limit() == nullptr) return;
    readTold = {card.point->id, airframe::meansFrom(from.toStdString()), typedDecimal(uncertainty),
                unit.isEmpty() ? limit()->unit : unit.toStdString()};
    if (!readTold.from) readTold.uncertainty.clear();
    emit readingChanged();
}

QString RoundView::intervalIn(const QString& value, const QString& unit) const {
    const auto middle = Decimal::parse(typedDecimal(value));
    if (limit() == nullptr || !middle || !reading().from) return {};
    const std::string entered = unit.isEmpty() ? limit()->unit : unit.toStdString();
    const std::string its = uncertaintyNow(entered);
    const auto standard = Decimal::parse(its);
    if (!standard || *standard == Decimal()) return {};
    // As finely as the finer of the two is told.
    const auto decimalsOf = [](const std::string& number) {
        const std::size_t dot = number.find('.');
        return dot == std::string::npos ? 0 : static_cast<int>(number.size() - dot) - 1;
    };
    const int decimals = std::max(decimalsOf(middle->text()), decimalsOf(its));
    const double reach = 1.96 * standard->approximate();
    QString words = intervalText(fixed(middle->approximate() - reach, decimals),
                                 fixed(middle->approximate() + reach, decimals), entered);
    if (const QString beyond = reachesBeyondText(*limit(), *middle, entered, its); !beyond.isEmpty())
        words += QLatin1Char('\n') + beyond;
    return words;
}

// --- where it is going ------------------------------------------------------------------------------------

std::vector<std::string> RoundView::measuredPoints() const {
    std::vector<std::string> points;
    for (const airframe::Point& point : written->points)
        if (point.limit && state().points.contains(point.id)) points.push_back(point.id);
    return points;
}

void RoundView::setSeries(archive::Series known) {
    series = std::move(known);
    seriesKnown = true;
    trendFor.clear();
    tellTrends();
    refresh();
}

std::vector<round::Past> RoundView::pastOf(const std::string& point) const {
    const auto found = series.find(point);
    if (found == series.end()) return {};
    const auto unshown = Unshown::of(state());
    std::vector<round::Past> past;
    for (const round::Past& one : found->second)
        if (one.at < state().openedAt && !(unshown && unshown->hides(one.by, one.at))) past.push_back(one);
    return past;
}

std::optional<round::Past> RoundView::measuredNow(const std::string& id) const {
    const auto found = state().points.find(id);
    if (found == state().points.end() || !found->second.settled) return std::nullopt;
    const auto& last = *found->second.last();
    const airframe::Point* point = written->point(id);
    if (!last.what.value || point == nullptr || !point->limit) return std::nullopt;
    round::Past now{last.at,
                    state().opened.counters,
                    *last.what.value,
                    last.what.unit.empty() ? point->limit->unit : last.what.unit,
                    round::uncertaintyOf(last.what),
                    last.what.renewed,
                    state().opened.who.name,
                    round::fromOf(last.what)};
    return now;
}

/// Each settled value once: where there is an earlier one, where it is going goes into the log.
void RoundView::tellTrends() {
    if (state().phase != round::Phase::walking || !seriesKnown) return;
    for (const std::string& id : measuredPoints()) {
        const auto now = measuredNow(id);
        if (!now || state().points.at(id).trend) continue;
        auto values = pastOf(id);
        values.push_back(*now);
        const auto course = round::courseOf(*written, *written->point(id), values);
        // Two values at least, unless the one may lie beyond already; a reading that contradicts is the
        // file's to show.
        if (!course || (course->values.size() < 2 && course->told.is != judge::Standing::near)) continue;
        if (auto done = act(course->told); !done) report(done.error());
    }
}

void RoundView::wordTrend() {
    const std::string id = card.point == nullptr ? std::string() : card.point->id;
    const std::string key = id + (card.outcome.isEmpty() ? "" : "+");
    if (key == trendFor) return;
    trendFor = key;
    trendWords.clear();
    if (limit() == nullptr) return;
    auto values = pastOf(id);
    if (const auto now = measuredNow(id)) values.push_back(*now);
    if (values.size() < 2) return;
    const auto course = round::courseOf(*written, *written->point(id), values);
    if (!course) return;
    for (const Sentence& one : judge::toTexts(course->trend, course->question))
        trendWords << text(one);
}

QStringList RoundView::warnings() const {
    QStringList words;
    for (const airframe::Point& point : airframe->points) {
        const auto found = state().points.find(point.id);
        if (found == state().points.end() || !found->second.trend) continue;
        const round::Trended& trend = *found->second.trend;
        const airframe::Point* original = written->point(point.id);
        if (trend.is == judge::Standing::within || trend.stands || !original->limit->trend) continue;
        words << (trend.is == judge::Standing::near
                      ? tr("%1 may come to its limit before the next flight ends").arg(text(point.name))
                      : tr("%1 is beyond its limit").arg(text(point.name)));
    }
    return words;
}

} // namespace ambit::view
