#include "model/story.hpp"

#include "model/words.hpp"
#include "round/order.hpp"

#include <QCoreApplication>
#include <nlohmann/json.hpp>

namespace ambit::view {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Story)
};

/// One overload a kind of event: a new kind does not compile before it has its words.
class Teller {
public:
    explicit Teller(const airframe::Airframe& description) : airframe(description) {}

    QString operator()(const round::Opened& what) const {
        const auto* walk = airframe.walk(what.walk);
        return Words::tr("%1 began: %2")
            .arg(text(what.who.name), text(walk == nullptr ? what.walk : walk->name));
    }
    QString operator()(const round::Planned& what) const {
        return Words::tr("Ordered anew: %1").arg(text(round::whySaid(what.why)));
    }
    QString operator()(const round::StandReached& what) const {
        return Words::tr("At %1").arg(standName(what.stand));
    }
    QString operator()(const round::SettingChanged& what) const {
        const auto* setting = airframe.setting(what.setting);
        const auto* state = setting == nullptr ? nullptr : setting->state(what.to);
        const bool known = state != nullptr;
        return Words::tr("%1: %2").arg(text(known ? setting->name : what.setting),
                                       text(known ? state->name : what.to));
    }
    QString operator()(const round::Settled& what) const {
        QString words = Words::tr("%1: %2").arg(pointName(what.point), outcomeText(what.outcome));
        if (what.value) words += QStringLiteral(", ") + figureText(*what.value) + unitOf(what.point);
        if (what.outcome == round::Outcome::finding) words += QStringLiteral(". ") + text(what.words);
        if (what.outcome == round::Outcome::notInspected) words += QStringLiteral(". ") + text(what.why);
        return words;
    }
    QString operator()(const round::Reopened& what) const {
        return Words::tr("%1 re-opened: %2").arg(pointName(what.point), text(what.why));
    }
    QString operator()(const round::OpeningMade& what) const {
        return Words::tr("%1: opened").arg(openingName(what.opening));
    }
    QString operator()(const round::OpeningClosed& what) const {
        return Words::tr("%1: put right").arg(openingName(what.opening));
    }
    QString operator()(const round::Paused&) const { return Words::tr("Paused"); }
    QString operator()(const round::Resumed&) const { return Words::tr("Resumed"); }
    QString operator()(const round::Note& what) const { return Words::tr("Note: %1").arg(text(what.words)); }
    QString operator()(const round::StandBlocked& what) const {
        return Words::tr("%1 can't be used: %2").arg(standName(what.stand), text(what.why));
    }
    QString operator()(const round::StandFree& what) const {
        return Words::tr("%1 can be used again").arg(standName(what.stand));
    }
    QString operator()(const round::AreaMarked& what) const {
        return Words::tr("In the way, area %1: %2").arg(what.area).arg(text(what.why));
    }
    QString operator()(const round::AreaCleared& what) const {
        return Words::tr("Area %1 isn't in the way any more").arg(what.area);
    }
    QString operator()(const round::Light& what) const {
        return what.low ? Words::tr("The light is low") : Words::tr("The light is good again");
    }
    QString operator()(const round::Alone&) const {
        return Words::tr("Walked on one's own: what others found that day was not shown");
    }
    QString operator()(const round::Asked& what) const {
        const auto& said = what.statement;
        QString words;
        switch (said.kind) {
        case round::Statement::Kind::lookAgain:
            words = Words::tr("%1 asked to look again at %2 (%3)")
                        .arg(text(said.who.name), pointName(said.point))
                        .arg(what.ask);
            break;
        case round::Statement::Kind::question:
            words = Words::tr("%1 asked (%2)").arg(text(said.who.name)).arg(what.ask);
            break;
        case round::Statement::Kind::remark:
            words = Words::tr("%1 remarked (%2)").arg(text(said.who.name)).arg(what.ask);
            break;
        }
        return saidOf(words, text(said.words));
    }
    QString operator()(const round::Answered& what) const {
        return Words::tr("Answer to %1: %2").arg(what.ask).arg(text(what.words));
    }
    QString operator()(const round::Declined& what) const {
        return Words::tr("Declined %1: %2").arg(what.ask).arg(text(what.why));
    }
    QString operator()(const round::PortionBegun& what) const {
        QStringList names;
        for (const std::string& id : what.points)
            names << pointName(id);
        return Words::tr("Looked at in one go: %1").arg(names.join(QStringLiteral(", ")));
    }
    QString operator()(const round::PortionEnded& what) const {
        return what.looked ? Words::tr("Down again, and asked for each")
                           : Words::tr("Down again: to be looked at once more");
    }
    QString operator()(const round::Interrupted& what) const { return interruptedText(what); }
    QString operator()(const round::QuickRun& what) const {
        const QString words = quickText(static_cast<int>(what.points), what.ms);
        return what.again.empty() ? Words::tr("%1: it was meant so").arg(words)
                                  : Words::tr("%1: looked at again").arg(words);
    }
    QString operator()(const round::Clock& what) const {
        return Words::tr("Satellite time was %1").arg(text(ambit::toText(what.satellite)));
    }
    QString operator()(const round::Night& what) const {
        if (!what.expected) return Words::tr("The flight doesn't go into the dark");
        return what.bySun ? Words::tr("It is dark: what is asked for at night is added")
                          : Words::tr("The flight goes into the dark: what is asked for at night is added");
    }
    QString operator()(const round::Trended& what) const {
        return Words::tr("Where %1 is going was told").arg(pointName(what.point));
    }
    QString operator()(const round::Concluded& what) const { return conclusionText(what.fit); }
    QString operator()(const round::Withdrawn& what) const {
        return Words::tr("Conclusion withdrawn: %1").arg(text(what.why));
    }
    QString operator()(const round::Signed& what) const {
        return Words::tr("Signed by %1").arg(text(what.name));
    }

private:
    [[nodiscard]] QString standName(const std::string& id) const {
        const auto* stand = airframe.stand(id);
        return quoted(text(stand == nullptr ? id : stand->name));
    }
    [[nodiscard]] QString pointName(const std::string& id) const {
        const auto* point = airframe.point(id);
        return text(point == nullptr ? id : point->name);
    }
    [[nodiscard]] QString openingName(const std::string& id) const {
        const auto* opening = airframe.opening(id);
        return text(opening == nullptr ? id : opening->name);
    }
    [[nodiscard]] QString unitOf(const std::string& id) const {
        const auto* point = airframe.point(id);
        return point == nullptr || !point->limit ? QString() : QStringLiteral(" ") + text(point->limit->unit);
    }

    const airframe::Airframe& airframe;
};

} // namespace

Result<std::vector<round::Event>> eventsOf(std::string_view recordJson) {
    const auto json = parseJson(recordJson);
    if (!json) return tl::unexpected(json.error());
    const Json::json_pointer at("/content/events");
    if (!json->contains(at) || !json->at(at).is_array())
        return fail(ErrorCode::invalid, say("This record holds no round."), "/content/events");
    std::vector<round::Event> events;
    for (const Json& one : json->at(at)) {
        auto event = round::eventFrom(one);
        if (!event) return tl::unexpected(event.error());
        events.push_back(std::move(*event));
    }
    return events;
}

QString sentence(const round::What& what, const airframe::Airframe& airframe) {
    return std::visit(Teller(airframe), what);
}

} // namespace ambit::view
