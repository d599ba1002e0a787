#include "desktop/demo_walk.hpp"

#include "round/back.hpp"

#include <QQuickWindow>

namespace ambit::desktop {

namespace {

/// The walk's own key lives as long as the walk; nobody else's is touched.
const QString demoPassphrase = QStringLiteral("walk round it twice");

QString named(const char* kind, const std::string& id) {
    return QLatin1String(kind) + QLatin1Char('.') + QString::fromStdString(id);
}

QString words(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

} // namespace

/// For calls in a row of which the first that fails ends the row.
#define AMBIT_TRY(call)                                                                                      \
    if (auto done = (call); !done) return done

DemoWalk::DemoWalk(view::App& ofApp, QQuickWindow& onWindow, ScriptClock& byClock, script::Script recorded,
                   std::filesystem::path outFolder)
    : app(&ofApp), window(&onWindow), clock(&byClock), script(std::move(recorded)), asker(script.folder),
      out(std::move(outFolder)), hand(onWindow), shots(ofApp, onWindow, out / "screens") {}

Result<void> DemoWalk::run() {
    // The script touches the screen wherever one stands, but for its portions.
    app->habits()->touchOnly();
    std::error_code failed;
    std::filesystem::create_directories(out / "screens", failed);
    if (failed)
        return fail(ErrorCode::storage, "The folder can't be made: " + failed.message() + ".",
                    (out / "screens").string());
    window->resize(Shots::phone);
    window->requestActivate();
    AMBIT_TRY(hand.see(QStringLiteral("screenAircraft")));
    AMBIT_TRY(shootPlaces());
    AMBIT_TRY(act(script.open));
    for (const script::Action& action : script.actions) {
        auto done = play(action);
        if (done) continue;
        Error error = done.error();
        error.where = "line " + std::to_string(action.line) + (error.where.empty() ? "" : ", " + error.where);
        if (const QString problem = app->problem(); !problem.isEmpty())
            error.what += " The screen says: " + problem.toStdString();
        return tl::unexpected(error);
    }
    if (app->round() == nullptr || round().phase() != QStringLiteral("sealed"))
        return fail(ErrorCode::refused, "The script is through, but the round isn't sealed.", "",
                    "A script ends with “sign”.");
    return keepRecord();
}

Result<void> DemoWalk::touch(std::initializer_list<QString> names) {
    for (const QString& name : names)
        AMBIT_TRY(hand.touch(name));
    return {};
}

Result<void> DemoWalk::touchMore(const QString& name) {
    if (!hand.sees(name) && hand.sees(QStringLiteral("moreKey")))
        AMBIT_TRY(hand.touch(QStringLiteral("moreKey")));
    return hand.touch(name);
}

std::size_t DemoWalk::events() const {
    return app->round() == nullptr ? 0 : app->round()->openRound().events().size();
}

Result<void> DemoWalk::shootPlaces() {
    AMBIT_TRY(shots.take(QStringLiteral("aircraft")));
    if (!hand.sees(QStringLiteral("placeWatch"))) return {};
    AMBIT_TRY(hand.touch(QStringLiteral("placeWatch")));
    AMBIT_TRY(shots.take(QStringLiteral("watch")));
    return hand.touch(QStringLiteral("placeWalk"));
}

// --- the script -------------------------------------------------------------------------------------------

Result<void> DemoWalk::play(const script::Action& action) {
    if (const auto* path = std::get_if<script::Follow>(&action.what)) return follow(action, *path);
    return single(action);
}

Result<void> DemoWalk::follow(const script::Action& action, const script::Follow& path) {
    while (true) {
        auto& open = round().openRound();
        const auto step = script::followStep(path, open.state(), open.airframe());
        if (!step) return tl::unexpected(step.error());
        if (!*step) return {};
        AMBIT_TRY(single({**step, action.after, action.line}));
    }
}

/// What was touched must have become an event: a screen that only looks as if is an error.
Result<void> DemoWalk::single(const script::Action& action) {
    auto& open = round().openRound();
    clock->now.at.ms += std::int64_t{1000} * script::secondsOf(action, open.airframe(), open.state());
    const std::size_t before = events();
    AMBIT_TRY(std::visit([&](const auto& what) { return act(what); }, action.what));
    const auto* cut = std::get_if<script::Interrupt>(&action.what);
    const bool cameBefore =
        cut != nullptr && cut->cause == round::Interrupted::Cause::paused; // with going on
    if (events() == before && !cameBefore) return fail(ErrorCode::refused, "The touch has changed nothing.");
    return {};
}

Result<void> DemoWalk::act(const script::Open& what) {
    clock->now = what.at;
    AMBIT_TRY(hand.touch(named("aircraft", what.registration)));
    AMBIT_TRY(hand.see(QStringLiteral("screenBegin")));
    AMBIT_TRY(hand.touch(named("walk", what.walk)));
    AMBIT_TRY(shots.take(QStringLiteral("begin-walk")));
    AMBIT_TRY(hand.type(QStringLiteral("beginName"), words(what.who.name)));
    AMBIT_TRY(hand.touch(named("role", what.who.role)));
    AMBIT_TRY(hand.type(QStringLiteral("beginCertificate"), words(what.who.certificate)));
    for (const auto& counter : what.counters)
        AMBIT_TRY(hand.type(named("counter", counter.id), words(counter.value)));
    AMBIT_TRY(shots.take(QStringLiteral("begin")));
    AMBIT_TRY(hand.touch(QStringLiteral("beginKey")));
    if (app->round() == nullptr)
        return fail(ErrorCode::refused, "The round has not begun. " + app->problem().toStdString());
    return hand.see(QStringLiteral("screenWalk"));
}

Result<void> DemoWalk::act(const script::Go& what) {
    const bool inTurn =
        round().cardKind() == QStringLiteral("go") && round().targetStandId().toStdString() == what.stand;
    if (!inTurn) return hand.touch(named("stand", what.stand));
    if (events() > 40) AMBIT_TRY(shots.take(QStringLiteral("walk-go")));
    return hand.touch(QStringLiteral("keyHere"));
}

Result<void> DemoWalk::act(const script::TapZone& what) {
    return hand.touch(named("zone", what.zone));
}

Result<void> DemoWalk::act(const script::Change&) {
    AMBIT_TRY(shots.take(QStringLiteral("walk-set")));
    return hand.touch(QStringLiteral("keySet"));
}

Result<void> DemoWalk::act(const script::Settle& what) {
    if (round().pointId().toStdString() != what.what.point)
        AMBIT_TRY(hand.touch(named("here", what.what.point)));
    if (round().settledCount() * 3 >= round().pointCount() * 2) AMBIT_TRY(shots.take(QStringLiteral("walk")));
    if (what.what.outcome == round::Outcome::notInspected) return settleNotInspected(what);
    if (what.what.value) {
        if (!hand.sees(QStringLiteral("valueField"))) AMBIT_TRY(hand.touch(QStringLiteral("linkMeasure")));
        AMBIT_TRY(hand.type(QStringLiteral("valueField"), words(*what.what.value)));
        AMBIT_TRY(shots.take(QStringLiteral("walk-measure")));
    }
    if (what.what.outcome == round::Outcome::finding) return settleFinding(what);
    return hand.touch(QStringLiteral("keySound"));
}

Result<void> DemoWalk::settleFinding(const script::Settle& what) {
    AMBIT_TRY(hand.touch(QStringLiteral("linkWhy")));
    AMBIT_TRY(shots.take(QStringLiteral("why")));
    AMBIT_TRY(touch({QStringLiteral("whyClose"), QStringLiteral("keyFinding")}));
    AMBIT_TRY(hand.type(QStringLiteral("findingWords"), words(what.what.words)));
    if (!round().findingGrounds())
        AMBIT_TRY(hand.touch(what.what.severity == round::Severity::grounds ? QStringLiteral("classGrounds")
                                                                            : QStringLiteral("classAssess")));
    for (const std::string& photo : what.photos) {
        AMBIT_TRY(hand.type(QStringLiteral("findingPhotoUrl"),
                            words(std::filesystem::absolute(script.folder / photo).string())));
        AMBIT_TRY(hand.touch(QStringLiteral("findingPhotoUrlAdd")));
    }
    AMBIT_TRY(shots.take(QStringLiteral("finding")));
    return hand.touch(QStringLiteral("findingDone"));
}

Result<void> DemoWalk::settleNotInspected(const script::Settle& what) {
    AMBIT_TRY(hand.touch(QStringLiteral("linkNotInspected")));
    AMBIT_TRY(hand.type(QStringLiteral("notInspectedWhy"), words(what.what.why)));
    AMBIT_TRY(hand.type(QStringLiteral("notInspectedBasis"), words(what.what.basis)));
    AMBIT_TRY(shots.take(QStringLiteral("not-inspected")));
    return hand.touch(QStringLiteral("notInspectedDone"));
}

Result<void> DemoWalk::toReview() {
    if (hand.sees(QStringLiteral("keyReview"))) return hand.touch(QStringLiteral("keyReview"));
    return touchMore(QStringLiteral("reviewKey"));
}

Result<void> DemoWalk::act(const script::Reopen& what) {
    AMBIT_TRY(toReview());
    AMBIT_TRY(hand.see(QStringLiteral("screenReview")));
    AMBIT_TRY(shots.take(QStringLiteral("review-early")));
    const QString row = named("reopen", what.point);
    if (!hand.sees(row)) AMBIT_TRY(hand.touch(QStringLiteral("reviewSettled")));
    AMBIT_TRY(hand.touch(row));
    AMBIT_TRY(hand.type(QStringLiteral("reopenWhy"), words(what.why)));
    AMBIT_TRY(shots.take(QStringLiteral("reopen")));
    return touch({QStringLiteral("reopenDone"), QStringLiteral("reviewBack")});
}

Result<void> DemoWalk::act(const script::Made& what) {
    AMBIT_TRY(toReview());
    return touch({named("made", what.opening), QStringLiteral("reviewBack")});
}

Result<void> DemoWalk::act(const script::Closed& what) {
    AMBIT_TRY(toReview());
    return touch({named("owedClosed", what.opening), QStringLiteral("reviewBack")});
}

Result<void> DemoWalk::act(const script::Pause&) {
    return hand.touch(QStringLiteral("pauseKey"));
}

Result<void> DemoWalk::act(const script::Resume&) {
    AMBIT_TRY(shots.take(QStringLiteral("paused")));
    return hand.touch(QStringLiteral("resumeKey"));
}

Result<void> DemoWalk::act(const script::Note& what) {
    AMBIT_TRY(touchMore(QStringLiteral("noteKey")));
    AMBIT_TRY(hand.type(QStringLiteral("noteWords"), words(what.words)));
    AMBIT_TRY(shots.take(QStringLiteral("note")));
    return hand.touch(QStringLiteral("noteDone"));
}

/// On the screen it is the stand ahead, or where one is.
Result<void> DemoWalk::act(const script::Block& what) {
    const QString ahead = round().targetStandId();
    const QString stand = ahead.isEmpty() ? round().standId() : ahead;
    if (stand.toStdString() != what.stand)
        return fail(ErrorCode::refused,
                    "Only the stand ahead, or the one where one is, can be blocked on the screen.",
                    what.stand);
    AMBIT_TRY(ahead.isEmpty() ? touchMore(QStringLiteral("standBlockedKey"))
                              : hand.touch(QStringLiteral("linkBlocked")));
    AMBIT_TRY(hand.type(QStringLiteral("blockedWhy"), words(what.why)));
    AMBIT_TRY(shots.take(QStringLiteral("blocked")));
    AMBIT_TRY(hand.touch(QStringLiteral("blockedDone")));
    return shots.take(QStringLiteral("walk-blocked"));
}

Result<void> DemoWalk::act(const script::Free& what) {
    AMBIT_TRY(touchMore(named("standFree", what.stand)));
    AMBIT_TRY(shots.take(QStringLiteral("more-differs")));
    return hand.touch(QStringLiteral("moreClose"));
}

/// On the screen an area is a box, to the decimetre.
Result<void> DemoWalk::act(const script::Mark& what) {
    const auto outline = round::outlineOf(what.outline);
    const bool box = outline.size() == 4 && outline[0].y == outline[1].y && outline[1].x == outline[2].x &&
                     outline[2].y == outline[3].y && outline[3].x == outline[0].x;
    if (!box)
        return fail(ErrorCode::refused, "Only a box, level with the figure, can be marked on the screen.",
                    what.why);
    AMBIT_TRY(touchMore(QStringLiteral("markAreaKey")));
    for (const airframe::Place corner : {outline[0], outline[2]}) {
        AMBIT_TRY(hand.aim(QStringLiteral("markFigure"), {corner.x, -corner.y}));
        AMBIT_TRY(hand.touch(QStringLiteral("markFigure")));
    }
    AMBIT_TRY(hand.type(QStringLiteral("markWords"), words(what.why)));
    AMBIT_TRY(shots.take(QStringLiteral("mark")));
    AMBIT_TRY(hand.touch(QStringLiteral("markDone")));
    return shots.take(QStringLiteral("walk-marked"));
}

Result<void> DemoWalk::act(const script::Clear& what) {
    AMBIT_TRY(touchMore(named("areaCleared", std::to_string(what.area))));
    return hand.touch(QStringLiteral("moreClose"));
}

Result<void> DemoWalk::act(const script::Lighting& what) {
    if (round().lightLow() == what.low)
        return fail(ErrorCode::refused, "The light is said to be so already.");
    return touchMore(QStringLiteral("lightKey"));
}

/// Chosen before the round begins, with what `open` says.
Result<void> DemoWalk::act(const script::Alone&) {
    return fail(ErrorCode::refused, "The recorded demo doesn't walk on one's own.");
}

/// Else the screen is touched in this walk wherever one stands.
Result<void> DemoWalk::act(const script::Portion& what) {
    app->habits()->setPortions(true);
    app->habits()->setPortionSize(what.most);
    AMBIT_TRY(shots.take(QStringLiteral("walk-portion")));
    AMBIT_TRY(hand.touch(QStringLiteral("keyClimb")));
    return shots.take(QStringLiteral("walk-up-there"));
}

Result<void> DemoWalk::act(const script::Down& what) {
    AMBIT_TRY(hand.touch(what.looked ? QStringLiteral("keyDown") : QStringLiteral("giveUpKey")));
    app->habits()->setPortions(false);
    return {};
}

/// No touch brings it about. That of a pause has come by itself.
Result<void> DemoWalk::act(const script::Interrupt& what) {
    const auto& known = round().openRound().state().interruptions;
    if (what.cause == round::Interrupted::Cause::paused) {
        if (known.empty() || known.back().what.seconds != what.seconds ||
            !(known.back().what.rule == what.rule))
            return fail(ErrorCode::conflict, "The pause brought about another interruption.");
        AMBIT_TRY(shots.take(QStringLiteral("walk-interrupted")));
        return hand.touch(QStringLiteral("interruptedDone"));
    }
    app->habits()->setBackFrom(QLatin1String(round::toText(what.rule.from)));
    app->habits()->setBackPoints(what.rule.points);
    const auto& state = round().openRound().state();
    if (!round().commit(
            round::Interrupted{what.cause, what.seconds, what.rule,
                               round::askedBack(state, round().openRound().airframe(), what.rule)}))
        return fail(ErrorCode::refused, app->problem().toStdString());
    return {};
}

Result<void> DemoWalk::act(const script::Quick& what) {
    AMBIT_TRY(shots.take(QStringLiteral("walk-quick")));
    return hand.touch(what.again ? QStringLiteral("quickAgain") : QStringLiteral("quickMeant"));
}

Result<void> DemoWalk::act(const script::Satellites& what) {
    if (!round().commit(round::Clock{{clock->now.at.ms + what.seconds * 1000}}))
        return fail(ErrorCode::refused, app->problem().toStdString());
    return {};
}

Result<void> DemoWalk::act(const script::Dark& what) {
    if (!what.bySun) return touchMore(QStringLiteral("nightFlightKey"));
    if (!round().commit(round::Night{what.expected, true}))
        return fail(ErrorCode::refused, app->problem().toStdString());
    return {};
}

/// It comes from another device: nothing is touched here for it.
Result<void> DemoWalk::act(const script::Ask& what) {
    auto asked = asker.say(what, round().openRound().state(), clock->now.at);
    if (!asked) return tl::unexpected(asked.error());
    AMBIT_TRY(round().hear(std::move(*asked)));
    return shots.take(QStringLiteral("walk-asked"));
}

Result<void> DemoWalk::act(const script::Answer& what) {
    AMBIT_TRY(hand.touch(QStringLiteral("askedStrip")));
    AMBIT_TRY(shots.take(QStringLiteral("asked")));
    AMBIT_TRY(hand.touch(named("askAnswer", std::to_string(what.ask))));
    AMBIT_TRY(hand.type(QStringLiteral("answerWords"), words(what.words)));
    return hand.touch(QStringLiteral("answerDone"));
}

Result<void> DemoWalk::act(const script::Decline& what) {
    AMBIT_TRY(touch({QStringLiteral("askedStrip"), named("askDecline", std::to_string(what.ask))}));
    AMBIT_TRY(hand.type(QStringLiteral("declineWhy"), words(what.why)));
    return hand.touch(QStringLiteral("declineDone"));
}

Result<void> DemoWalk::act(const script::Conclude& what) {
    AMBIT_TRY(shots.take(QStringLiteral("walk-done")));
    AMBIT_TRY(toReview());
    AMBIT_TRY(hand.see(QStringLiteral("screenReview")));
    AMBIT_TRY(shots.take(QStringLiteral("review")));
    AMBIT_TRY(touch({QStringLiteral("reviewConclude"),
                     what.fit ? QStringLiteral("concludeFit") : QStringLiteral("concludeNotFit")}));
    AMBIT_TRY(hand.type(QStringLiteral("concludeReasons"), words(what.reasons)));
    AMBIT_TRY(shots.take(QStringLiteral("conclude")));
    return hand.touch(QStringLiteral("concludeDone"));
}

Result<void> DemoWalk::act(const script::Sign&) {
    AMBIT_TRY(hand.see(QStringLiteral("screenSign")));
    if (!app->signing()->keyExists()) {
        AMBIT_TRY(hand.type(QStringLiteral("newKeyName"), words(script.open.who.name)));
        AMBIT_TRY(hand.type(QStringLiteral("newKeyPassphrase"), demoPassphrase));
        AMBIT_TRY(hand.type(QStringLiteral("newKeyPassphraseAgain"), demoPassphrase));
        AMBIT_TRY(shots.take(QStringLiteral("new-key")));
        AMBIT_TRY(hand.touch(QStringLiteral("newKeyDone")));
    }
    AMBIT_TRY(hand.type(QStringLiteral("signPassphrase"), demoPassphrase));
    AMBIT_TRY(shots.take(QStringLiteral("sign")));
    return hand.touch(QStringLiteral("signKey"));
}

Result<void> DemoWalk::act(const script::Follow&) {
    return fail(ErrorCode::invalid, "Follow is played step by step.");
}

Result<void> DemoWalk::keepRecord() {
    const QString record = app->signing()->recordId();
    AMBIT_TRY(hand.touch(QStringLiteral("placeFile")));
    AMBIT_TRY(hand.see(QStringLiteral("screenFile")));
    AMBIT_TRY(shots.take(QStringLiteral("file")));
    AMBIT_TRY(hand.touch(QStringLiteral("record.") + record));
    AMBIT_TRY(hand.see(QStringLiteral("screenRecord")));
    AMBIT_TRY(shots.take(QStringLiteral("record")));
    AMBIT_TRY(hand.type(QStringLiteral("exportFolder"), words(std::filesystem::absolute(out).string())));
    AMBIT_TRY(hand.touch(QStringLiteral("exportKey")));
    AMBIT_TRY(shots.take(QStringLiteral("export")));
    for (const char* file : {"record.json", "record.pdf"})
        if (!std::filesystem::exists(out / file))
            return fail(ErrorCode::storage, "The record was not exported. " + app->problem().toStdString(),
                        (out / file).string());
    return lookThroughFile();
}

/// Every page that the file leads to, as it is after one round.
Result<void> DemoWalk::lookThroughFile() {
    struct Way {
        const char* key;
        const char* screen;
        const char* back;
        const char* shot;
    };
    const auto lookAt = [this](const Way& way) -> Result<void> {
        AMBIT_TRY(hand.touch(QLatin1String(way.key)));
        AMBIT_TRY(hand.see(QLatin1String(way.screen)));
        AMBIT_TRY(shots.take(QLatin1String(way.shot)));
        return hand.touch(QLatin1String(way.back));
    };
    AMBIT_TRY(lookAt({"recordCountersign", "screenCountersign", "entryBack", "countersign"}));
    AMBIT_TRY(hand.touch(QStringLiteral("recordClose")));
    for (const Way& way :
         std::initializer_list<Way>{{"fileSearch", "screenSearch", "searchBack", "file-search"},
                                    {"fileHistory", "screenHistory", "historyBack", "file-history"},
                                    {"fileFindings", "screenFindings", "findingsBack", "file-findings"},
                                    {"fileVerify", "screenVerify", "verifyBack", "file-verify"},
                                    {"fileExport", "screenExport", "exportBack", "file-export"},
                                    {"fileReadCounters", "screenReading", "entryBack", "file-reading"},
                                    {"fileWork", "screenRectify", "entryBack", "file-work"},
                                    {"filePart", "screenPart", "entryBack", "file-part"},
                                    {"fileHandOver", "screenHandOver", "entryBack", "file-hand-over"},
                                    {"fileKeys", "screenKeys", "keysBack", "file-keys"},
                                    {"fileRetention", "screenRetention", "retentionBack", "file-retention"}})
        AMBIT_TRY(lookAt(way));
    return {};
}

#undef AMBIT_TRY

} // namespace ambit::desktop
