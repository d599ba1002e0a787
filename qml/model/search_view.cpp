#include "model/search_view.hpp"

#include "model/file_words.hpp"
#include "model/said.hpp"

namespace ambit::view {

namespace {

using State = file::Discrepancy::State;

constexpr State everyState[] = {State::open, State::deferred, State::grounding, State::rectified,
                                State::closed};

} // namespace

SearchView::SearchView(const Services& handedIn, Background& beside, Report whereTo, QObject* parent)
    : QObject(parent), services(&handedIn), background(&beside), report(std::move(whereTo)) {}

QVariantList SearchView::kinds() const {
    QVariantList list;
    for (const char* kind : {"round", "assessment", "rectification", "reading", "part change", "hand-over",
                             "trust", "revocation", "removal", "renewal"})
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
    rows.update(found, services->now().offsetMinutes);
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
                rows.update(found, services->now().offsetMinutes);
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
    rows.update(found, services->now().offsetMinutes);
    emit changed();
}

} // namespace ambit::view
