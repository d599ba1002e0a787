#include "model/measure_view.hpp"

#include "judge/units.hpp"
#include "model/pictures.hpp"
#include "model/words.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::view {

namespace {

using What = round::Measurement::What;

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

} // namespace ambit::view
