#include "model/search_view.hpp"

#include "base/date.hpp"
#include "model/file_words.hpp"
#include "model/words.hpp"

namespace ambit::view {

void HitsModel::update(const std::vector<archive::Hit>& hits) {
    std::vector<Row> next;
    next.reserve(hits.size());
    for (const archive::Hit& hit : hits)
        next.push_back({text(hit.info.sha256), kindText(hit.info.kind), text(hit.info.conclusion),
                        tr("%1 UTC").arg(dayText(hit.info.concludedAt, 0)), text(hit.info.signer),
                        text(hit.gloss), hit.info.kind == "round" ? hit.info.findings : -1});
    sync(rows, std::move(next), {GlossRole});
}

int HitsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows.size());
}

QVariant HitsModel::data(const QModelIndex& at, int role) const {
    if (!checkIndex(at, CheckIndexOption::IndexIsValid | CheckIndexOption::ParentIsInvalid)) return {};
    const Row& row = rows[static_cast<std::size_t>(at.row())];
    switch (role) {
    case RecordIdRole:
        return row.recordId;
    case TitleRole:
        return row.title;
    case ConclusionRole:
        return row.conclusion;
    case ConclusionTextRole:
        return row.conclusion.isEmpty() ? row.title : conclusionText(row.conclusion == QStringLiteral("fit"));
    case WhenTextRole:
        return row.whenText;
    case SignerRole:
        return row.signer;
    case FindingsRole:
        return row.findings;
    case GlossRole:
        return row.gloss;
    default:
        return {};
    }
}

QHash<int, QByteArray> HitsModel::roleNames() const {
    return {{RecordIdRole, "recordId"},     {TitleRole, "title"},
            {ConclusionRole, "conclusion"}, {ConclusionTextRole, "conclusionText"},
            {WhenTextRole, "whenText"},     {SignerRole, "signer"},
            {FindingsRole, "findings"},     {GlossRole, "gloss"}};
}

namespace {

using State = file::Discrepancy::State;

constexpr State everyState[] = {State::open, State::deferred, State::grounding, State::rectified,
                                State::closed};

/// Midnight where the device is, so many days after the date; none if it is empty.
Result<std::optional<Instant>> midnight(const QVariantMap& given, const char* name, int days,
                                        int offsetMinutes) {
    const std::string words = given.value(QLatin1String(name)).toString().trimmed().toStdString();
    if (words.empty()) return std::nullopt;
    const auto date = Date::parse(words);
    const auto day = date ? date->plusDays(days) : date;
    const auto at = day ? parseInstant(toText(*day) + "T00:00:00.000Z") : tl::unexpected(day.error());
    if (!at)
        return fail(ErrorCode::refused, "“" + words + "” is no date.", "",
                    "Write year, month and day: 2026-06-20");
    return Instant{at->ms - std::int64_t{60'000} * offsetMinutes};
}

} // namespace

SearchView::SearchView(const Services& handedIn, Background& beside, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), background(&beside), report(std::move(whereTo)) {}

QVariantList SearchView::kinds() const {
    QVariantList list;
    for (const char* kind : {"round", "assessment", "rectification", "reading", "part change", "hand-over",
                             "trust", "revocation", "removal"})
        list << QVariantMap{{QStringLiteral("id"), QString::fromLatin1(kind)},
                            {QStringLiteral("name"), kindText(kind)}};
    return list;
}

QVariantList SearchView::states() const {
    QVariantList list;
    for (const State state : everyState)
        list << QVariantMap{{QStringLiteral("id"), QString::fromLatin1(file::toText(state))},
                            {QStringLiteral("name"), stateWord(state)}};
    return list;
}

bool SearchView::search(const QString& registration, const QVariantMap& asked) {
    const int offset = services->now().offsetMinutes;
    const auto from = midnight(asked, "from", 0, offset);
    const auto before = midnight(asked, "until", 1, offset);
    for (const auto* one : {&from, &before})
        if (!*one) {
            report(one->error());
            return false;
        }
    const auto words = [&](const char* name) {
        return asked.value(QLatin1String(name)).toString().trimmed().toStdString();
    };
    given = asked;
    wanted = {registration.toStdString(),
              words("words"),
              words("part"),
              words("jasc"),
              words("person"),
              words("kind"),
              *from,
              *before,
              {},
              50,
              {}};
    for (const State state : everyState)
        if (words("state") == file::toText(state)) wanted.state = state;
    found.clear();
    rows.update(found);
    hasAsked = true;
    ask();
    return true;
}

void SearchView::more() {
    if (awaited || found.empty()) return;
    wanted.after = found.back().info.sha256;
    ask();
}

void SearchView::ask() {
    awaited = true;
    canMore = false;
    background->run<std::vector<archive::Hit>>(
        this, [wanted = wanted](const archive::Archive& archive) { return archive::find(archive, wanted); },
        [this, mine = ++question](Result<std::vector<archive::Hit>> hits) {
            if (mine != question) return;
            awaited = false;
            if (hits) {
                canMore = hits->size() == wanted.most;
                found.insert(found.end(), std::make_move_iterator(hits->begin()),
                             std::make_move_iterator(hits->end()));
                rows.update(found);
            } else {
                report(hits.error());
            }
            emit changed();
        });
    emit changed();
}

void SearchView::clear() {
    ++question;
    awaited = hasAsked = canMore = false;
    given.clear();
    found.clear();
    rows.update(found);
    emit changed();
}

} // namespace ambit::view
