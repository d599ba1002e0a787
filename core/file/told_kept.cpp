// What a record tells, as the archive keeps it beside the record, and back.
#include "base/canonical.hpp"
#include "file/told.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

namespace ambit::file {

namespace {

using round::Outcome;

/// How a point was seen, as one number in the archive, from its lowest bit: grounds (1 bit), outcome (2),
/// uncertain (1), renewed (1); above them what the value was read from, one more than its place among Means,
/// or 0. Numbers that archives hold already: places never change.
struct How {
    bool grounds = false;
    Outcome outcome{};
    bool uncertain = false; ///< an uncertainty follows
    bool renewed = false;
    std::optional<airframe::Means> from;
};

How howOf(const Seen& seen) {
    return {seen.grounds, seen.outcome, !seen.uncertainty.empty(), seen.renewed, seen.from};
}

std::size_t numberOf(const How& how) {
    const std::size_t from = how.from ? static_cast<std::size_t>(*how.from) + 1 : 0;
    return (how.grounds ? 1U : 0U) | static_cast<std::size_t>(how.outcome) << 1U |
           (how.uncertain ? 1U : 0U) << 3U | (how.renewed ? 1U : 0U) << 4U | from << 5U;
}

How howFrom(std::size_t number) {
    How how;
    how.grounds = (number & 1U) != 0;
    how.outcome = static_cast<Outcome>(std::min<std::size_t>(number >> 1U & 3U, 2));
    how.uncertain = (number >> 3U & 1U) != 0;
    how.renewed = (number >> 4U & 1U) != 0;
    if (const std::size_t from = number >> 5U; from > 0)
        how.from =
            static_cast<airframe::Means>(std::min(from - 1, static_cast<std::size_t>(airframe::Means::eye)));
    return how;
}

class Writer {
public:
    void number(std::size_t value) {
        while (value >= 0x80) {
            bytes += static_cast<char>(0x80U | (value & 0x7FU));
            value >>= 7U;
        }
        bytes += static_cast<char>(value);
    }
    void text(std::string_view text) {
        number(text.size());
        bytes += text;
    }
    std::string bytes;
};

class Reader {
public:
    explicit Reader(std::string_view kept) : rest(kept) {}

    std::size_t number() {
        std::size_t value = 0;
        for (unsigned shift = 0; shift < 63; shift += 7) {
            if (rest.empty()) break;
            const auto byte = static_cast<unsigned char>(rest.front());
            rest.remove_prefix(1);
            value |= std::size_t{byte & 0x7FU} << shift;
            if (byte < 0x80) return value;
        }
        good = false;
        return 0;
    }
    /// How many things follow; each takes a byte at least.
    std::size_t count() {
        const std::size_t value = number();
        if (value <= rest.size()) return value;
        good = false;
        return 0;
    }
    std::string text() {
        const std::string_view text = rest.substr(0, count());
        rest.remove_prefix(text.size());
        return std::string(text);
    }
    [[nodiscard]] bool isWhole() const { return good && rest.empty(); }

private:
    std::string_view rest;
    bool good = true;
};

void put(Writer& to, const RoundTold& round) {
    to.text(round.round);
    to.number(round.fit ? 1 : 0);
    to.text(round.reasons);
    to.number(round.counters.size());
    for (const auto& one : round.counters) {
        to.text(one.id);
        to.text(one.value);
    }
    to.number(round.seen.size());
    for (const Seen& one : round.seen) {
        to.text(one.point);
        const How how = howOf(one);
        to.number(numberOf(how));
        for (const std::string* text : {&one.words, &one.basis, &one.value, &one.unit, &one.verdict})
            to.text(*text);
        if (how.uncertain) to.text(one.uncertainty);
    }
    to.number(round.photos.size());
    for (const std::string& photo : round.photos)
        to.text(photo);
}

RoundTold roundFrom(Reader& from) {
    RoundTold round;
    round.round = from.text();
    round.fit = from.number() == 1;
    round.reasons = from.text();
    round.counters.resize(from.count());
    for (auto& one : round.counters) {
        one.id = from.text();
        one.value = from.text();
    }
    round.seen.resize(from.count());
    for (Seen& one : round.seen) {
        one.point = from.text();
        const How how = howFrom(from.number());
        one.outcome = how.outcome;
        one.grounds = how.grounds;
        one.renewed = how.renewed;
        one.from = how.from;
        for (std::string* text : {&one.words, &one.basis, &one.value, &one.unit, &one.verdict})
            *text = from.text();
        if (how.uncertain) one.uncertainty = from.text();
    }
    round.photos.resize(from.count());
    for (std::string& photo : round.photos)
        photo = from.text();
    return round;
}

tl::unexpected<Error> damaged(const std::string& where) {
    return fail(ErrorCode::storage, say("The archive is damaged: what is kept about a record can't be read."),
                where, say("Keep the file, copy it away, and go on with a backup."));
}

} // namespace

std::string packed(const Told& told) {
    Writer to;
    to.text(told.serial);
    if (const record::Entry* entry = told.entry())
        to.text(canonicalJson(record::toJson(*entry)));
    else
        put(to, *told.round());
    return std::move(to.bytes);
}

Result<void> unpack(Told& told, std::string_view kept, const std::string& kind,
                    std::shared_ptr<const Walked> walked) {
    Reader from(kept);
    told.serial = from.text();
    if (kind == "round") {
        RoundTold round = roundFrom(from);
        if (walked) round.walked = std::move(walked);
        told.what = std::move(round);
    } else {
        const std::string own = from.text();
        JsonTape tape;
        const JsonView json = tape.read(own);
        if (!record::checkOwn(kind, json)) return damaged(told.sha256);
        told.what = record::entryFrom(kind, json);
    }
    return from.isWhole() ? Result<void>() : damaged(told.sha256);
}

Json toJson(const Walked& walked) {
    Json json{{"airframe", walked.airframe}, {"walk", walked.walk}, {"points", Json::array()}};
    for (const PointName& point : walked.points)
        json["points"].push_back(Json::array({point.id, point.name, point.zone, point.jasc}));
    return json;
}

Result<Walked> walkedFrom(std::string_view kept) {
    try {
        const Json json = Json::parse(kept);
        Walked walked{json.at("airframe"), json.at("walk"), {}};
        for (const Json& one : json.at("points"))
            walked.points.push_back({one.at(0), one.at(1), one.at(2), one.at(3)});
        return walked;
    } catch (const std::exception&) {
        return damaged("a walk");
    }
}

} // namespace ambit::file
