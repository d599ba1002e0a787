#include "model/measure_view.hpp"

#include "judge/units.hpp"
#include "model/pictures.hpp"
#include "model/words.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::view {

namespace {

using What = round::Measurement::What;

constexpr double markDeviation = 1;     ///< pixels of the photo: placed under crosshairs at twice its size
constexpr double handDeviation = 1.5;   ///< of a card's corner that a person set: it is round, and not there
constexpr double knownDeviation = 0.25; ///< mm: read from a rule with millimetres

Result<measure::Found> cardIn(const QImage& image) {
    const QImage grey = greyOf(image);
    return measure::findCard(
        {grey.constBits(), grey.width(), grey.height(), static_cast<int>(grey.bytesPerLine())});
}

/// A card in the middle, to be drawn into place.
std::vector<QPointF> anyCorners(const QImage& image) {
    const double half = 0.15 * std::min(image.width(), image.height());
    const double other = half * measure::card::width / measure::card::length;
    const QPointF middle(image.width() / 2.0, image.height() / 2.0);
    return {middle + QPointF(-half, -other), middle + QPointF(half, -other), middle + QPointF(half, other),
            middle + QPointF(-half, other)};
}

round::PhotoPlace placeOf(const QPointF& at) {
    return {round::pixels(at.x()), round::pixels(at.y())};
}

std::vector<round::PhotoPlace> placesOf(const std::vector<QPointF>& at) {
    std::vector<round::PhotoPlace> places;
    std::transform(at.begin(), at.end(), std::back_inserter(places), placeOf);
    return places;
}

/// Lying this way.
Result<measure::Plane> planeIf(round::Measurement its, std::optional<measure::Lies> lies) {
    its.card->lies = lies;
    return round::planeOf(its);
}

What whatFrom(const QString& word) {
    for (const What what : {What::distance, What::margin, What::area, What::width, What::slip, What::offset})
        if (word == QLatin1String(round::toText(what))) return what;
    return What::distance;
}

} // namespace

MeasureView::MeasureView(const Services& handedIn, const Habits& its, Background& beside, Report whereTo,
                         QObject* parent)
    : QObject(parent), services(&handedIn), habits(&its), background(&beside), report(std::move(whereTo)) {}

void MeasureView::setRound(RoundView* its) {
    round = its;
    leave();
    pointId.clear();
    last.reset();
    lastImage = {};
    emit lastChanged();
}

const airframe::Limit* MeasureView::limit() const {
    if (round == nullptr) return nullptr;
    const airframe::Point* point = round->openRound().airframe().point(round->pointId().toStdString());
    return point == nullptr || !point->limit ? nullptr : &*point->limit;
}

void MeasureView::begin() {
    leave();
    if (round == nullptr) return;
    const auto* its = limit();
    const auto* unit = its == nullptr ? nullptr : judge::unitOf(its->unit);
    whatNow = unit != nullptr && unit->quantity == judge::Quantity::angle ? What::slip
              : its != nullptr && its->unit == "mm²"                      ? What::area
                                                                          : What::distance;
    pointId = round->pointId().toStdString();
    last.reset();
    lastImage = {};
    emit lastChanged();
    struct Last {
        std::optional<archive::PhotoSeen> seen;
        QImage image;
    };
    background->run<Last>(
        this,
        [aircraft = round->registration().toStdString(), point = pointId,
         unshown = Unshown::of(round->openRound().state())](const archive::Archive& archive) -> Result<Last> {
            const auto photos = archive::photosOf(archive, aircraft, point);
            if (!photos) return tl::unexpected(photos.error());
            for (const archive::PhotoSeen& seen : *photos) {
                if (unshown && unshown->hides(seen.by, seen.at)) continue;
                const auto bytes = archive.photo(seen.photo.sha256);
                if (!bytes) continue;
                auto picture = decodedPhoto(*bytes);
                if (picture) return Last{seen, std::move(*picture)};
            }
            return Last{};
        },
        [this, point = pointId](Result<Last> seen) {
            if (point != pointId) return;
            if (!seen) return report(seen.error());
            last = std::move(seen->seen);
            lastImage = std::move(seen->image);
            emit lastChanged();
            emit changed();
        });
}

void MeasureView::leave() {
    ++question;
    photo = {};
    image = {};
    found.reset();
    cornersAt.clear();
    marksAt.clear();
    knownEnds.clear();
    knownLength.clear();
    hasCard = true;
    byHand = sideIsOpen = false;
    lies.reset();
    result.reset();
    letGo();
    becomes(Phase::none);
}

void MeasureView::becomes(Phase phase) {
    phaseNow = phase;
    emit changed();
}

void MeasureView::read(const QUrl& file) {
    leave();
    becomes(Phase::reading);
    background->run<Taken>(
        this,
        [file, take = services->readPhoto,
         keep = habits->photoData()](const archive::Archive&) -> Result<Taken> {
            auto read = take(file, keep);
            if (!read) return tl::unexpected(read.error());
            auto picture = decodedPhoto(read->bytes);
            if (!picture) return tl::unexpected(picture.error());
            auto card = cardIn(*picture);
            return Taken{std::move(*read), std::move(*picture), std::move(card)};
        },
        [this, mine = question](Result<Taken> taken) {
            if (mine == question) took(std::move(taken));
        });
}

void MeasureView::took(Result<Taken> taken) {
    if (!taken) {
        report(taken.error());
        return becomes(Phase::none);
    }
    photo = std::move(taken->photo);
    image = std::move(taken->image);
    found = std::move(taken->found);
    cornersAt.clear();
    if (*found)
        for (const measure::Mark& corner : (*found)->corners)
            cornersAt.emplace_back(corner.at.x, corner.at.y);
    else
        cornersAt = anyCorners(image);
    becomes(Phase::photo);
}

// --- the card ---------------------------------------------------------------------------------------------

void MeasureView::lookAtCorners() {
    if (image.isNull()) return;
    hasCard = true;
    inHand = 0;
    becomes(Phase::corners);
    emit heldChanged();
}

void MeasureView::confirmCard() {
    letGo();
    lies.reset();
    sideIsOpen = false;
    becomes(Phase::marks);
    const auto its = measurement();
    sideIsOpen = !planeIf(its, {}) && planeIf(its, measure::Lies::longSideFirst) &&
                 planeIf(its, measure::Lies::shortSideFirst);
    compute();
}

void MeasureView::goWithoutCard() {
    letGo();
    hasCard = false;
    whatNow = What::slip;
    marksAt.clear();
    knownEnds.clear();
    becomes(Phase::marks);
    compute();
}

void MeasureView::longSideFirst(bool is) {
    lies = is ? measure::Lies::longSideFirst : measure::Lies::shortSideFirst;
    sideIsOpen = false;
    compute();
}

QString MeasureView::cardText() const {
    if (!found) return {};
    if (phaseNow == Phase::corners) {
        if (inHand < 0) return tr("Each corner has been looked at. Touch one to move it once more.");
        if (byHand || !*found)
            return tr(
                "Bring each corner of the card under the cross: where its sides, carried on, would meet.");
        return tr(
            "Is the cross where the card's sides, carried on, would meet? If not, draw the photo there.");
    }
    if (*found) return tr("A card was found. Look at its corners before you measure.");
    return text(found->error().what) + QLatin1Char(' ') + tr("Its corners can be marked by hand.");
}

// --- marks ------------------------------------------------------------------------------------------------

void MeasureView::choose(const QString& word) {
    whatNow = whatFrom(word);
    marksAt.clear();
    letGo();
    compute();
}

void MeasureView::tellKnown(const QString& length) {
    const auto given = Decimal::parse(typedDecimal(length));
    knownLength = given && *given > Decimal() ? given->text() : "";
    if (knownLength.empty()) knownEnds.clear();
    compute();
}

std::vector<QPointF>& MeasureView::heldList() {
    if (phaseNow == Phase::corners) return cornersAt;
    return inHand < static_cast<int>(marksAt.size()) ? marksAt : knownEnds;
}

QPointF MeasureView::heldAt() const {
    if (inHand < 0) return {};
    const auto at = static_cast<std::size_t>(inHand);
    if (phaseNow == Phase::corners) return at < cornersAt.size() ? cornersAt[at] : QPointF();
    if (at < marksAt.size()) return marksAt[at];
    return at - marksAt.size() < knownEnds.size() ? knownEnds[at - marksAt.size()] : QPointF();
}

void MeasureView::touch(qreal x, qreal y, qreal reach) {
    if (phaseNow != Phase::corners && phaseNow != Phase::marks) return;
    const QPointF at(std::clamp(x, 0.0, image.width() - 1.0), std::clamp(y, 0.0, image.height() - 1.0));
    std::vector<QPointF> all = phaseNow == Phase::corners ? cornersAt : marksAt;
    if (phaseNow == Phase::marks) all.insert(all.end(), knownEnds.begin(), knownEnds.end());
    // While marks are wanted, the next may be meant close to one that is there.
    const bool wanted = phaseNow == Phase::marks && marksAt.size() < round::marksOf(whatNow).first;
    int nearest = -1;
    double least = wanted ? reach / 3 : reach;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (const double off = std::hypot(all[i].x() - at.x(), all[i].y() - at.y()); off <= least) {
            least = off;
            nearest = static_cast<int>(i);
        }
    if (nearest < 0 && phaseNow == Phase::marks) {
        const auto most = round::marksOf(whatNow).second;
        if (marksAt.size() < most && knownEnds.empty()) {
            marksAt.push_back(at);
            nearest = static_cast<int>(marksAt.size()) - 1;
        } else if (!knownLength.empty() && knownEnds.size() < 2) {
            knownEnds.push_back(at);
            nearest = static_cast<int>(marksAt.size() + knownEnds.size()) - 1;
        }
    }
    if (nearest < 0) return;
    inHand = nearest;
    compute();
    emit heldChanged();
}

void MeasureView::nudge(qreal dx, qreal dy) {
    if (inHand < 0) return;
    auto& list = heldList();
    const std::size_t at = static_cast<std::size_t>(inHand) - (&list == &knownEnds ? marksAt.size() : 0);
    if (at >= list.size()) return;
    QPointF& it = list[at];
    it = {std::clamp(it.x() + dx, 0.0, image.width() - 1.0),
          std::clamp(it.y() + dy, 0.0, image.height() - 1.0)};
    if (phaseNow == Phase::corners) byHand = true;
    compute();
    emit heldChanged();
}

void MeasureView::next() {
    if (phaseNow == Phase::corners && inHand >= 0 && inHand < 3) {
        ++inHand;
        emit changed();
        return emit heldChanged();
    }
    letGo();
    emit changed();
}

void MeasureView::letGo() {
    if (inHand < 0) return;
    inHand = -1;
    emit heldChanged();
}

void MeasureView::takeBack() {
    letGo();
    if (!knownEnds.empty())
        knownEnds.pop_back();
    else if (!marksAt.empty())
        marksAt.pop_back();
    compute();
}

// --- what comes of it -------------------------------------------------------------------------------------

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
    return words.join(QStringLiteral(" · "));
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
