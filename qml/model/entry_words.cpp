#include "model/entry_words.hpp"

#include "model/file_words.hpp"
#include "model/words.hpp"

#include <QCoreApplication>
#include <QStringList>

namespace ambit::view {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(EntryWords)
};

/// Lines, without those that say nothing.
class Lines {
public:
    void add(const QString& name, const QString& words) {
        if (!words.isEmpty())
            list << QVariantMap{{QStringLiteral("name"), name}, {QStringLiteral("text"), words}};
    }
    void add(const QString& name, const std::string& words) { add(name, text(words)); }
    QVariantList list;
};

struct Title {
    QString operator()(const record::Assessment& one) const {
        return one.deferral ? Words::tr("Deferred") : Words::tr("Grounds the aircraft");
    }
    QString operator()(const record::Rectification& one) const {
        return one.of.empty() && !one.inspections.empty() ? Words::tr("Inspection done")
               : one.of.empty()                           ? Words::tr("Work done")
                                                          : Words::tr("Put right");
    }
    QString operator()(const record::Reading& /*one*/) const { return Words::tr("Counters read"); }
    QString operator()(const record::PartChange& one) const {
        return !one.on    ? Words::tr("Part taken off")
               : !one.off ? Words::tr("Part fitted")
                          : Words::tr("Part changed");
    }
    QString operator()(const record::HandOver& one) const {
        return Words::tr("Handed over to %1").arg(text(one.to));
    }
    QString operator()(const record::Trust& one) const {
        return Words::tr("Key of %1 trusted").arg(text(one.name));
    }
    QString operator()(const record::Revocation& /*one*/) const { return Words::tr("Key revoked"); }
    QString operator()(const record::Removal& /*one*/) const { return Words::tr("Records let go"); }
    QString operator()(const record::Renewal& one) const {
        return one.renewed ? Words::tr("Renewed before a value") : Words::tr("Not renewed before a value");
    }
};

/// One overload a kind: a new kind does not compile before it has its words.
struct Teller {
    const airframe::Airframe* airframe = nullptr;
    Lines lines = {};

    void operator()(const record::Assessment& one) {
        lines.add(Words::tr("Discrepancy"), discrepancies({one.of}));
        lines.add(Words::tr("Assessment"), one.words);
        if (one.deferral) lines.list += deferralWords(*one.deferral, airframe);
    }
    void operator()(const record::Rectification& one) {
        lines.add(Words::tr("What was done"), one.description);
        lines.add(Words::tr("Puts right"), discrepancies(one.of));
        lines.add(Words::tr("Inspections done"), inspections(one.inspections));
        work(one.completedOn, one.performedBy, one.certificateKind, one.counters);
    }
    void operator()(const record::Reading& one) {
        lines.add(Words::tr("Counters"), countersText(one.counters, airframe));
    }
    void operator()(const record::PartChange& one) {
        lines.add(Words::tr("Where"), one.position);
        if (one.off) lines.add(Words::tr("Taken off"), partText(*one.off));
        if (one.on) lines.add(Words::tr("Fitted"), partText(*one.on));
        lines.add(Words::tr("What was done"), one.description);
        work(one.completedOn, {}, one.certificateKind, one.counters);
    }
    void operator()(const record::HandOver& one) {
        lines.add(Words::tr("To"), one.to);
        lines.add(Words::tr("Words"), one.words);
    }
    void operator()(const record::Trust& one) {
        lines.add(Words::tr("Whose key"), one.name);
        lines.add(Words::tr("Good for"), rolesText(one.roles));
        lines.add(Words::tr("From"), zonedText(one.from, 0));
        lines.add(Words::tr("Fingerprint"), fingerprintText(one.key));
    }
    void operator()(const record::Revocation& one) {
        lines.add(Words::tr("Why"), one.why);
        lines.add(Words::tr("From"), zonedText(one.from, 0));
        lines.add(Words::tr("Fingerprint"), fingerprintText(one.key));
    }
    void operator()(const record::Removal& one) {
        lines.add(Words::tr("Basis"), one.basis);
        for (const auto& gone : one.records)
            lines.add(
                kindText(gone.kind),
                Words::tr("of %1 UTC, record %2").arg(dayText(gone.at, 0), text(gone.record.substr(0, 12))));
    }

    void operator()(const record::Renewal& one) {
        const auto* point = airframe == nullptr ? nullptr : airframe->point(one.of.point);
        lines.add(Words::tr("What was measured"), text(point == nullptr ? one.of.point : point->name));
        lines.add(Words::tr("Value of the record"), text(one.of.record.substr(0, 12)));
        lines.add(Words::tr("Words"), one.words);
    }

private:
    [[nodiscard]] QString discrepancies(const std::vector<record::DiscrepancyId>& of) const {
        QStringList all;
        for (const auto& id : of) {
            const auto* point = airframe == nullptr ? nullptr : airframe->point(id.point);
            all << Words::tr("%1 (found in record %2)")
                       .arg(text(point == nullptr ? id.point : point->name), text(id.record.substr(0, 12)));
        }
        return all.join(QLatin1Char('\n'));
    }
    [[nodiscard]] QString inspections(const std::vector<std::string>& ids) const {
        QStringList all;
        for (const std::string& id : ids) {
            const auto* one = airframe == nullptr ? nullptr : airframe->inspection(id);
            all << text(one == nullptr ? id : one->name);
        }
        return all.join(QStringLiteral(", "));
    }
    [[nodiscard]] QString partText(const record::Part& part) const {
        QString words = text(part.name);
        if (!part.number.empty()) words += Words::tr(", number %1").arg(text(part.number));
        if (!part.serial.empty()) words += Words::tr(", serial %1").arg(text(part.serial));
        if (!part.counters.empty()) words += QStringLiteral(", ") + countersText(part.counters, airframe);
        return words;
    }
    void work(const std::string& completedOn, const std::string& by, const std::string& certificateKind,
              const std::vector<round::CounterReading>& counters) {
        lines.add(Words::tr("Completed on"), completedOn);
        lines.add(Words::tr("Done by"), by);
        lines.add(Words::tr("Approved under"), certificateKind);
        lines.add(Words::tr("Counters then"), countersText(counters, airframe));
    }
};

} // namespace

QVariantList deferralWords(const record::Deferral& deferral, const airframe::Airframe* airframe) {
    Lines lines;
    lines.add(Words::tr("Basis"), basisText(deferral.basis));
    lines.add(Words::tr("Where it says so"), deferral.reference);
    for (const record::Answer& answer : deferral.answers)
        lines.add(qtTrId(answer.question.c_str()), answer.yes ? Words::tr("Yes") : Words::tr("No"));
    lines.add(Words::tr("The item is"), deferral.removed ? Words::tr("removed") : Words::tr("deactivated"));
    lines.add(Words::tr("Placard"), deferral.placard);
    lines.add(Words::tr("Limits"), deferral.limits);
    lines.add(Words::tr("Until"), deferral.until.empty() ? QString() : dayInWords(deferral.until));
    lines.add(Words::tr("Until the counters say"), countersText(deferral.untilCounters, airframe));
    lines.add(Words::tr("No hazard, found by"), personText(deferral.determinedBy));
    return lines.list;
}

QString titleOf(const record::Entry& entry) {
    return std::visit(Title(), entry);
}

QVariantList linesOf(const record::Entry& entry, const airframe::Airframe* airframe) {
    Teller teller{airframe};
    std::visit(teller, entry);
    return teller.lines.list;
}

} // namespace ambit::view
