#include "archive/words.hpp"

namespace ambit::archive {

namespace {

void add(std::string& to, const std::string& text) {
    if (text.empty()) return;
    if (!to.empty()) to += '\n';
    to += text;
}

/// What each kind of entry has to be found by.
struct Entries {
    Words& words;

    void operator()(const record::Assessment& one) {
        add(words.text, one.words);
        if (!one.deferral) return;
        add(words.text, one.deferral->basis);
        add(words.text, one.deferral->reference);
        add(words.text, one.deferral->placard);
        add(words.text, one.deferral->limits);
        add(words.person, one.deferral->determinedBy.name);
    }
    void operator()(const record::Rectification& one) {
        add(words.text, one.description);
        for (const std::string& id : one.inspections)
            add(words.text, id);
        add(words.person, one.performedBy);
    }
    void operator()(const record::Reading& /*one*/) {}
    void operator()(const record::PartChange& one) {
        add(words.text, one.description);
        add(words.part, one.position);
        for (const auto& part : {one.off, one.on}) {
            if (!part) continue;
            add(words.part, part->name);
            add(words.part, part->number);
            add(words.part, part->serial);
        }
    }
    void operator()(const record::HandOver& one) {
        add(words.person, one.to);
        add(words.text, one.words);
    }
    void operator()(const record::Trust& one) { add(words.person, one.name); }
    void operator()(const record::Revocation& one) { add(words.text, one.why); }
    void operator()(const record::Removal& one) { add(words.text, one.basis); }
    void operator()(const record::Renewal& one) { add(words.text, one.words); }
};

} // namespace

Words wordsOf(const file::Told& told) {
    Words words;
    words.aircraft = told.registration;
    words.person = told.signer.name;
    words.kind = told.kind();
    if (const record::Entry* entry = told.entry()) {
        std::visit(Entries{words}, *entry);
        return words;
    }
    const file::RoundTold& round = *told.round();
    add(words.kind, round.fit ? "fit" : "unfit");
    add(words.text, round.reasons);
    for (const file::Seen& seen : round.seen) {
        if (seen.outcome == round::Outcome::sound) continue;
        add(words.text, seen.words);
        add(words.text, seen.basis);
        const file::PointName* point = round.point(seen.point);
        if (point == nullptr) continue;
        add(words.text, point->name);
        if (seen.outcome == round::Outcome::finding) add(words.jasc, point->jasc);
    }
    return words;
}

} // namespace ambit::archive
