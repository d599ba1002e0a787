#include "model/file_words.hpp"

#include "model/words.hpp"

#include <QCoreApplication>
#include <QStringList>

namespace ambit::view {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(FileWords)
};

} // namespace

QString kindText(const std::string& kind) {
    if (kind == "round") return Words::tr("Round");
    if (kind == "assessment") return Words::tr("Assessment");
    if (kind == "rectification") return Words::tr("Rectification");
    if (kind == "reading") return Words::tr("Counter reading");
    if (kind == "part change") return Words::tr("Part change");
    if (kind == "hand-over") return Words::tr("Hand-over");
    if (kind == "trust") return Words::tr("Key trusted");
    if (kind == "revocation") return Words::tr("Key revoked");
    if (kind == "removal") return Words::tr("Records let go");
    if (kind == "renewal") return Words::tr("Renewal told afterwards");
    return text(kind);
}

QString stateWord(file::Discrepancy::State state) {
    using State = file::Discrepancy::State;
    switch (state) {
    case State::open:
        return Words::tr("Not assessed");
    case State::deferred:
        return Words::tr("Deferred");
    case State::grounding:
        return Words::tr("Grounding");
    case State::rectified:
        return Words::tr("Put right");
    case State::closed:
        return Words::tr("Closed");
    }
    return {};
}

QString basisText(const std::string& basis) {
    // The two that a record has as words (record::deferralBases); the rule is called by its number
    // everywhere.
    if (basis == "minimum equipment list") return Words::tr("minimum equipment list");
    if (basis == "other") return Words::tr("other", "basis of a deferral");
    return text(basis);
}

QString stateText(const file::Discrepancy& one, const airframe::Airframe* airframe) {
    using State = file::Discrepancy::State;
    switch (one.state) {
    case State::open:
        return Words::tr("Not assessed yet");
    case State::grounding:
        return Words::tr("Grounds the aircraft");
    case State::deferred: {
        QString words = Words::tr("Deferred on %1").arg(basisText(one.deferral->basis));
        if (!one.deferral->until.empty())
            words += Words::tr(" until %1").arg(dayInWords(one.deferral->until));
        if (!one.deferral->untilCounters.empty())
            words += Words::tr(" until %1").arg(countersText(one.deferral->untilCounters, airframe));
        return words;
    }
    case State::rectified:
        return Words::tr("Put right by %1; no round has seen it yet").arg(text(one.rectified->by));
    case State::closed:
        return Words::tr("Put right, and seen sound after");
    }
    return {};
}

QString sinceText(const file::Discrepancy& one, Instant now) {
    QString words = Words::tr("Found %1 by %2").arg(agoText(one.found.at, now), text(one.found.by));
    const auto again = static_cast<int>(one.again.size());
    if (again == 1) words += Words::tr(", seen again once");
    if (again > 1) words += Words::tr(", seen again %1 times").arg(again);
    return words;
}

QString verdictText(judge::DueVerdict verdict) {
    switch (verdict) {
    case judge::DueVerdict::fine:
        return Words::tr("Not due yet");
    case judge::DueVerdict::soon:
        return Words::tr("Due soon");
    case judge::DueVerdict::withinAllowance:
        return Words::tr("Beyond, within its allowance");
    case judge::DueVerdict::unknown:
        return Words::tr("Not known");
    case judge::DueVerdict::passed:
        return Words::tr("Passed");
    }
    return {};
}

QString countersText(const std::vector<round::CounterReading>& counters, const airframe::Airframe* airframe) {
    QStringList all;
    for (const auto& one : counters) {
        const auto* counter = airframe == nullptr ? nullptr : airframe->counter(one.id);
        if (counter == nullptr)
            all << text(one.id) + QLatin1Char(' ') + figureText(one.value);
        else
            all << text(counter->name) + QLatin1Char(' ') + counterText(*counter, one.value);
    }
    return all.join(QStringLiteral(", "));
}

QString personText(const round::Person& person) {
    QStringList who{text(person.name), roleText(person.role)};
    if (!person.certificate.empty()) who << text(person.certificate);
    return who.join(QStringLiteral("\u00a0· "));
}

QString rolesText(const std::vector<std::string>& roles) {
    QStringList all;
    for (const std::string& role : roles)
        all << roleText(role);
    return all.join(QStringLiteral(", "));
}

namespace {

/// Written small, or not, as the language does within a sentence.
QString roleWithin(const std::string& role) {
    if (role == "pilot") return Words::tr("pilot", "within a sentence");
    if (role == "instructor") return Words::tr("instructor", "within a sentence");
    if (role == "owner") return Words::tr("owner", "within a sentence");
    if (role == "mechanic") return Words::tr("mechanic", "within a sentence");
    return text(role);
}

} // namespace

QString signedText(const file::KnownKey& key) {
    if (key.records == 0) return Words::tr("Has signed nothing in this file");
    QStringList all;
    for (const std::string& role : key.signedAs)
        all << roleWithin(role);
    const QString roles = all.join(QStringLiteral(", "));
    return key.records == 1 ? Words::tr("Signed 1 record as %1").arg(roles)
                            : Words::tr("Signed %1 records as %2").arg(key.records).arg(roles);
}

QString standingText(const file::KnownKey& key, int offsetMinutes) {
    if (key.revoked) return Words::tr("Good for nothing since %1").arg(dayText(*key.revoked, offsetMinutes));
    QStringList all;
    if (key.owner) all << Words::tr("The owner's: the first to say whose key counts");
    for (const auto& [role, from] : key.roles)
        all << Words::tr("Good for %1 since %2").arg(roleWithin(role), dayText(from, offsetMinutes));
    return all.isEmpty() ? Words::tr("The owner has said nothing of this key") : all.join(QLatin1Char('\n'));
}

} // namespace ambit::view
