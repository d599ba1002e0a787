#include "archive/find.hpp"

#include "archive/aircraft_file.hpp"
#include "archive/connection.hpp"
#include "base/encoding.hpp"

#include <algorithm>
#include <cctype>
#include <limits>

namespace ambit::archive {

namespace {

// --- what a person types, as an expression of SQLite's full-text search

struct Term {
    std::string text;
    bool begun = false; ///< the last word, and no space after it: it may go on
};

/// Is there anything in it that a word can be made of?
bool hasLetters(std::string_view text) {
    return std::any_of(text.begin(), text.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte >= 0x80 || (std::isalnum(byte) != 0);
    });
}

/// Words, and what stands between quotes as one.
std::vector<Term> termsOf(std::string text) {
    for (const char* quote : {"“", "”", "„"})
        for (std::size_t at = text.find(quote); at != std::string::npos; at = text.find(quote))
            text.replace(at, std::string_view(quote).size(), "\"");
    std::vector<Term> terms;
    std::string word;
    bool quoted = false;
    const auto end = [&](bool begun) {
        if (hasLetters(word)) terms.push_back({word, begun});
        word.clear();
    };
    for (const char c : text) {
        const bool isSpace = c == ' ' || c == '\n' || c == '\t';
        if (c == '"') {
            end(false);
            quoted = !quoted;
        } else if (isSpace && !quoted) {
            end(false);
        } else {
            word += c;
        }
    }
    end(!quoted);
    return terms;
}

/// All terms, in these columns; "" if there are none.
std::string expression(const char* columns, const std::vector<Term>& terms) {
    std::string all;
    for (const Term& term : terms)
        all += (all.empty() ? "\"" : " AND \"") + term.text + (term.begun ? "\"*" : "\"");
    return all.empty() ? all : '{' + std::string(columns) + "} : (" + all + ')';
}

std::string matchOf(const Wanted& wanted) {
    std::string match;
    const auto add = [&](const std::string& one) {
        if (one.empty()) return;
        if (!match.empty()) match += " AND ";
        match += one;
    };
    const auto whole = [](std::string text) { // of a name that isn't typed but chosen
        std::erase(text, '"');
        return std::vector<Term>{{std::move(text), false}};
    };
    add(expression("text part", termsOf(wanted.words)));
    add(expression("person", termsOf(wanted.person)));
    add(expression("part", termsOf(wanted.part)));
    add(expression("jasc", termsOf(wanted.jasc)));
    if (!wanted.kind.empty()) add(expression("kind", whole(wanted.kind)));
    if (!match.empty() && !wanted.registration.empty())
        add(expression("aircraft", whole(wanted.registration)));
    return match;
}

// --- which records

struct Bounds {
    std::int64_t from = 0;
    std::int64_t to = std::numeric_limits<std::int64_t>::max(); ///< itself too
};

Result<Bounds> boundsOf(Connection& connection, const Wanted& wanted) {
    Bounds bounds;
    if (wanted.from) bounds.from = firstKeyAt(*wanted.from);
    if (wanted.before) bounds.to = firstKeyAt(*wanted.before) - 1;
    if (wanted.after.empty()) return bounds;
    const auto key = connection.recordKey(wanted.after);
    if (!key) return tl::unexpected(key.error());
    if (*key == 0)
        return fail(ErrorCode::notFound, say("The archive has no such record to go on after."), wanted.after,
                    say("Search anew."));
    bounds.to = std::min(bounds.to, *key - 1);
    return bounds;
}

/// Keys, the newest first. What is rarest leads: few discrepancies aren't closed, words are rarer than
/// records.
Result<std::vector<std::int64_t>> keysOf(Connection& connection, const Wanted& wanted) {
    const auto bounds = boundsOf(connection, wanted);
    if (!bounds) return tl::unexpected(bounds.error());
    const std::string match = matchOf(wanted);
    const std::string state = wanted.state ? file::toText(*wanted.state) : "";
    const bool leadsState = wanted.state && *wanted.state != file::Discrepancy::State::closed;
    // ?1 file's registration, ?2 and ?3 bounds, ?4 how many, ?5 words, ?6 state
    const char* sql = nullptr;
    if (match.empty() && state.empty())
        sql =
            wanted.registration.empty()
                ? "SELECT key FROM record WHERE ?1 = '' AND key BETWEEN ?2 AND ?3 ORDER BY key DESC LIMIT ?4"
                : "SELECT page.record FROM page WHERE page.file = (SELECT id FROM file WHERE registration = "
                  "?1)"
                  " AND page.record BETWEEN ?2 AND ?3 ORDER BY page.record DESC LIMIT ?4";
    else if (match.empty())
        sql = "SELECT DISTINCT discrepancy.record FROM discrepancy JOIN file ON file.id = discrepancy.file"
              " WHERE state = ?6 AND record BETWEEN ?2 AND ?3 AND (?1 = '' OR registration = ?1)"
              " ORDER BY discrepancy.record DESC LIMIT ?4";
    else if (leadsState)
        sql = "SELECT DISTINCT discrepancy.record FROM discrepancy CROSS JOIN words CROSS JOIN file"
              " WHERE state = ?6 AND discrepancy.record BETWEEN ?2 AND ?3"
              " AND words.rowid = discrepancy.record AND words MATCH ?5"
              " AND file.id = discrepancy.file AND (?1 = '' OR registration = ?1)"
              " ORDER BY discrepancy.record DESC LIMIT ?4";
    else
        sql = "SELECT words.rowid FROM words CROSS JOIN record CROSS JOIN file"
              " WHERE words MATCH ?5 AND words.rowid BETWEEN ?2 AND ?3"
              " AND record.key = words.rowid AND file.id = record.file AND (?1 = '' OR registration = ?1)"
              " AND (?6 = '' OR EXISTS(SELECT 1 FROM discrepancy WHERE state = ?6 AND"
              " discrepancy.record = words.rowid)) ORDER BY words.rowid DESC LIMIT ?4";
    Statement select = connection.prepare(sql);
    select.text(wanted.registration).integer(bounds->from).integer(bounds->to);
    select.integer(static_cast<std::int64_t>(wanted.most)).text(match).text(state);
    std::vector<std::int64_t> keys;
    int code = 0;
    while ((code = select.step()) == SQLITE_ROW)
        keys.push_back(select.integerAt(0));
    if (code != SQLITE_DONE) return connection.failed(say("search"));
    return keys;
}

RecordInfo infoOf(const file::Told& told) {
    const file::RoundTold* round = told.round();
    return {told.sha256,    told.registration,
            told.kind(),    round == nullptr ? "" : round->fit ? "fit" : "not fit",
            told.at,        told.signer.name,
            told.findings()};
}

// --- one point

Sighting seenIn(const file::Told& told, const file::Seen* seen, const file::Renewals& renewals) {
    Sighting sighting{
        told.sha256, told.at, told.signer.name, round::toText(round::Outcome::sound), {}, false, {}, {}, {}};
    if (seen == nullptr) return sighting;
    sighting.what = round::toText(seen->outcome);
    sighting.words = seen->words;
    sighting.grounds = seen->grounds;
    sighting.value = seen->value;
    sighting.unit = seen->unit;
    sighting.verdict = seen->verdict;
    sighting.uncertainty = seen->uncertainty;
    sighting.from = seen->fromWord();
    sighting.renewed = file::isRenewed(renewals, told.sha256, *seen);
    return sighting;
}

/// What the record says of the point, if it says anything.
std::optional<Sighting> sightingIn(const file::Told& told, const std::string& point,
                                   const file::Renewals& renewals) {
    if (const file::RoundTold* round = told.round()) {
        if (round->point(point) == nullptr) return std::nullopt;
        return seenIn(told, round->seenAt(point), renewals);
    }
    const record::Entry& entry = *told.entry();
    bool about = false;
    if (const auto* assessment = std::get_if<record::Assessment>(&entry))
        about = assessment->of.point == point;
    if (const auto* work = std::get_if<record::Rectification>(&entry))
        about =
            std::any_of(work->of.begin(), work->of.end(), [&](const auto& of) { return of.point == point; });
    if (const auto* renewal = std::get_if<record::Renewal>(&entry)) about = renewal->of.point == point;
    if (!about) return std::nullopt;
    return Sighting{told.sha256, told.at, told.signer.name, told.kind(), file::gloss(told), false, {},
                    {},          {}};
}

} // namespace

Result<std::vector<Hit>> find(const Archive& archive, const Wanted& wanted) {
    if (wanted.state)
        if (auto settled = settle(archive); !settled) return tl::unexpected(settled.error());
    Connection& connection = archive.inside();
    const auto keys = keysOf(connection, wanted);
    if (!keys) return tl::unexpected(keys.error());
    std::vector<Hit> hits;
    static const std::string sql =
        pagesWhere("page.file = (SELECT file FROM record WHERE key = ?1) AND page.record = ?1");
    for (const std::int64_t key : *keys) {
        Statement select = connection.prepare(sql.c_str());
        const int code = select.integer(key).step();
        if (code != SQLITE_ROW && code != SQLITE_DONE) return connection.failed(say("search"));
        if (code == SQLITE_DONE) continue; // `verify` says so
        const auto told = connection.toldIn(select);
        if (!told) return tl::unexpected(told.error());
        hits.push_back({infoOf(*told), file::gloss(*told)});
    }
    return hits;
}

Result<std::vector<Sighting>> history(const Archive& archive, const std::string& registration,
                                      const std::string& point, std::size_t most, const std::string& after) {
    Connection& connection = archive.inside();
    Wanted from;
    from.after = after;
    const auto bounds = boundsOf(connection, from);
    if (!bounds) return tl::unexpected(bounds.error());
    const auto said = renewals(archive, registration);
    if (!said) return tl::unexpected(said.error());
    static const std::string sql =
        pagesWhere("page.file = (SELECT id FROM file WHERE registration = ?1) AND page.record <= ?2"
                   " AND page.kind IN ('round', 'assessment', 'rectification', 'renewal')"
                   " ORDER BY page.record DESC");
    Statement select = connection.prepare(sql.c_str());
    select.text(registration).integer(bounds->to);
    std::vector<Sighting> sightings;
    int code = SQLITE_DONE;
    while (sightings.size() < most && (code = select.step()) == SQLITE_ROW) {
        // Most rounds of another walk and most work are about other points: not read any further.
        const auto walked = connection.walked(select.integerAt(8));
        if (!walked) return tl::unexpected(walked.error());
        const auto& points = (*walked)->points;
        const bool inRound =
            std::binary_search(points.begin(), points.end(), file::PointName{point, {}, {}, {}},
                               [](const auto& a, const auto& b) { return a.id < b.id; });
        if (!inRound && select.textAt(10).find(point) == std::string::npos) continue;
        const auto told = connection.toldIn(select);
        if (!told) return tl::unexpected(told.error());
        if (auto one = sightingIn(*told, point, *said)) sightings.push_back(std::move(*one));
    }
    if (code != SQLITE_DONE && code != SQLITE_ROW) return connection.failed(say("read the point's history"));
    return sightings;
}

} // namespace ambit::archive
