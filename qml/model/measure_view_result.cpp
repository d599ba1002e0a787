// What comes of card and marks: the measurement, in numbers and in words, and the last photo beside it.
#include "judge/units.hpp"
#include "model/measure_view.hpp"
#include "model/pictures.hpp"
#include "model/words.hpp"

#include <algorithm>

namespace ambit::view {

namespace {

using What = round::Measurement::What;

constexpr double markDeviation = 1;     ///< pixels of the photo: placed under crosshairs at twice its size
constexpr double handDeviation = 1.5;   ///< of a card's corner that a person set: it is round, and not there
constexpr double knownDeviation = 0.25; ///< mm: read from a rule with millimetres

round::PhotoPlace placeOf(const QPointF& at) {
    return {round::pixels(at.x()), round::pixels(at.y())};
}

std::vector<round::PhotoPlace> placesOf(const std::vector<QPointF>& at) {
    std::vector<round::PhotoPlace> places;
    std::transform(at.begin(), at.end(), std::back_inserter(places), placeOf);
    return places;
}

} // namespace

round::Measurement MeasureView::measurement() const {
    round::Measurement its;
    its.what = whatNow;
    its.photo = photo.photo.sha256;
    its.width = image.width();
    its.height = image.height();
    its.marks = placesOf(marksAt);
    its.deviation = round::pixels(markDeviation);
    if (!hasCard) {
        its.tilt = fixed(measure::mostUnknownTilt / 2, 0);
        return its;
    }
    its.card.emplace();
    its.card->corners = placesOf(cornersAt);
    its.card->byHand = byHand || !found || !*found;
    double deviation = its.card->byHand ? handDeviation : 0;
    if (found && *found) {
        for (const measure::Mark& corner : (*found)->corners)
            deviation = std::max(deviation, corner.deviation);
        its.card->edgeWidth = round::pixels((*found)->edgeWidth);
    }
    its.card->deviation = round::pixels(std::max(deviation, 0.1));
    its.card->lies = lies;
    if (!knownLength.empty() && knownEnds.size() == 2)
        its.known = round::KnownLength{knownLength, fixed(knownDeviation, 2), placesOf(knownEnds)};
    return its;
}

void MeasureView::compute() {
    result.reset();
    if (phaseNow == Phase::marks && marksAt.size() >= round::marksOf(whatNow).first)
        result = round::computed(measurement());
    emit changed();
}

QString MeasureView::phase() const {
    switch (phaseNow) {
    case Phase::none:
        return QStringLiteral("none");
    case Phase::reading:
        return QStringLiteral("reading");
    case Phase::photo:
        return QStringLiteral("photo");
    case Phase::corners:
        return QStringLiteral("corners");
    case Phase::marks:
        break;
    }
    return QStringLiteral("marks");
}

QString MeasureView::what() const {
    return QLatin1String(round::toText(whatNow));
}

QVariantList MeasureView::kinds() const {
    QVariantList list;
    const auto add = [&](What kind, const QString& name) {
        list << QVariantMap{{QStringLiteral("id"), QLatin1String(round::toText(kind))},
                            {QStringLiteral("name"), name}};
    };
    if (hasCard) {
        add(What::distance, tr("Distance"));
        add(What::margin, tr("Distance to a line"));
        add(What::area, tr("Area"));
        add(What::width, tr("Largest width"));
        add(What::offset, tr("Slippage mark: offset"));
    }
    add(What::slip, tr("Slippage mark: angle"));
    return list;
}

QString MeasureView::askText() const {
    if (phaseNow != Phase::marks) return {};
    const std::size_t at = marksAt.size();
    if (at < round::marksOf(whatNow).first) {
        switch (whatNow) {
        case What::distance:
            return at == 0 ? tr("Mark the first end.") : tr("Mark the other end.");
        case What::margin:
            return at == 0   ? tr("Mark the place whose distance to a line you want.")
                   : at == 1 ? tr("Mark the line: one place on it.")
                             : tr("Mark another place on the line, far from the first.");
        case What::area:
        case What::width:
            return tr("Mark the outline, one corner after another: %1 so far.").arg(at);
        case What::slip:
        case What::offset:
            return at == 0   ? tr("The stroke on the bolt: mark its far end.")
                   : at == 1 ? tr("The stroke on the bolt: mark its end at the joint.")
                   : at == 2 ? tr("The stroke on the part: mark its end at the joint.")
                             : tr("The stroke on the part: mark its far end.");
        }
    }
    if (!knownLength.empty() && knownEnds.size() < 2)
        return knownEnds.empty() ? tr("The length you know: mark its first end.")
                                 : tr("The length you know: mark its other end.");
    if (whatNow == What::area || whatNow == What::width)
        return tr("Mark more of the outline, or keep it: %1 so far.").arg(at);
    return {};
}

QString MeasureView::resultText() const {
    if (!result || !*result) return {};
    round::Measurement its;
    its.what = whatNow;
    round::write(its, **result);
    return measureText(its.value, its.unit);
}

QString MeasureView::intervalText() const {
    if (!result || !*result) return {};
    round::Measurement its;
    its.what = whatNow;
    round::write(its, **result);
    const int decimals = its.value.find('.') == std::string::npos
                             ? 0
                             : static_cast<int>(its.value.size() - its.value.find('.')) - 1;
    QString words =
        view::intervalText(fixed((*result)->low, decimals), fixed((*result)->high, decimals), its.unit);
    const auto* within = limit();
    const auto value = Decimal::parse(its.value);
    if (within == nullptr || !value) return words;
    const auto verdict = judge::against(*within, *value, its.unit);
    if (!verdict) return words;
    words += QLatin1Char('\n');
    words += *verdict == judge::Verdict::within  ? tr("Within the limit: %1").arg(limitText(*within))
             : *verdict == judge::Verdict::below ? tr("Below the limit: %1").arg(limitText(*within))
                                                 : tr("Above the limit: %1").arg(limitText(*within));
    if (const QString beyond = reachesBeyondText(*within, *value, its.unit, its.uncertainty);
        !beyond.isEmpty())
        words += QLatin1Char('\n') + beyond;
    return words;
}

QString MeasureView::refusalText() const {
    if (sideIsOpen) return tr("The photo leaves open which way the card lies: say which side is drawn bold.");
    if (!result || *result) return {};
    QStringList words{text(result->error().what)};
    if (!result->error().remedy.empty()) words << text(result->error().remedy);
    return words.join(QLatin1Char(' '));
}

bool MeasureView::keep() {
    if (round == nullptr || !canKeep()) return false;
    round::Measurement its = measurement();
    round::write(its, **result);
    round->keepPhoto(photo, std::move(its));
    leave();
    return true;
}

bool MeasureView::keepPhoto() {
    if (round == nullptr || image.isNull()) return false;
    round->keepPhoto(photo, std::nullopt);
    leave();
    return true;
}

// --- beside the last one ----------------------------------------------------------------------------------

QString MeasureView::lastText() const {
    if (!last) return {};
    QStringList words{agoText(last->at, services->now().at), text(last->by)};
    for (const round::Measurement& one : last->measurements)
        words << measureText(one.value, one.unit);
    return words.join(QStringLiteral("\u00a0· "));
}

QString MeasureView::lastSource() const {
    return last ? photoSource(last->photo.sha256) : QString();
}

std::optional<measure::Homography> MeasureView::plane() const {
    if (image.isNull() || !hasCard || !found || (!*found && !byHand)) return std::nullopt;
    const auto plane = round::planeOf(measurement());
    return plane ? std::optional(plane->map()) : std::nullopt;
}

std::optional<measure::Homography> MeasureView::lastPlane() const {
    if (!last) return std::nullopt;
    for (const round::Measurement& one : last->measurements)
        if (one.card)
            if (const auto plane = round::planeOf(one)) return plane->map();
    return std::nullopt;
}

std::vector<QPointF> MeasureView::lastMarks() const {
    std::vector<QPointF> marks;
    if (last && !last->measurements.empty())
        for (const round::PhotoPlace& place : last->measurements.front().marks)
            marks.emplace_back(round::pixelOf(place).x, round::pixelOf(place).y);
    return marks;
}

bool MeasureView::sameScale() const {
    return plane().has_value() && lastPlane().has_value();
}

} // namespace ambit::view
