// The whole walk of the demo helicopter as a hand walks it on the smallest phone, in German, text at 200 %: at each state that differs
// from those before no word is cut or covered, and each key is in sight or can be scrolled to.
import QtQuick
import QtTest
import Ambit
import AmbitTest

LookCase {
    id: test

    name: "WalkGerman"

    readonly property var values: ({
            "oil-level": "5.2",
            "belt-play": "9",
            "skid-shoe.left": "5.6",
            "skid-shoe.right": "5.1",
            "tail-play": "2.4"
        })
    property int looked: 0
    /// What the states that were looked at had in common with those that weren't.
    property var known: ({})
    readonly property RoundView round: Stage.app.round

    function begin() {
        open(360, 740, "de");
        Theme.scale = 2;
        test.known = {};
        test.wrongs = {};
        test.looked = 0;
        test.look = what => {
            allWhole(what);
            allReachable(what);
            ++test.looked;
        };
        at("screenAircraft");
        touch("aircraft.OX-DEMO");
        see("screenBegin");
        touch("walk.daily");
        tryVerify(() => Stage.app.comparison.ready, 10000);
        at("screenBegin");
        type("beginName", "Robin Example");
        at("begin, named");
    }
    function cleanup() {
        Theme.scale = 1;
        if (main) {
            main.destroy();
            main = null;
            wait(0);
        }
        Stage.fresh();
    }
    /// Looks, if nothing like it was looked at before.
    function lookAtCard() {
        const hands = Stage.app.hands;
        const kind = [hands.mode, round.cardKind, round.measured, round.cautions.length, round.lastLook, round.openedText !== "", round.cardSetting !== "", round.carriedText !== "", round.lastTime !== "", hands.asking > 0, hands.unworded.length > 0, seen("quickStrip") !== null, seen("askedStrip") !== null, round.findingCount > 0, round.owedCount > 0].join();
        if (known[kind])
            return;
        known[kind] = true;
        at("card " + Object.keys(known).length + " " + round.cardKind + " " + round.pointId + " " + hands.mode);
    }
    function gone(name) {
        tryVerify(() => seen(name) === null, 2000, "gone: " + name);
    }
    /// Figures are touched on the pad.
    function measure() {
        frame(); // the card's words have their places
        touch("valueField");
        see("pad.5");
        for (const figure of values[round.pointId])
            touch("pad." + figure);
        if (!known.pad)
            at("figures typed");
        known.pad = true;
        compare(see("valueField").text, values[round.pointId].replace(".", ","));
        touch("pad.Done");
    }
    function step() {
        Stage.advance(12);
        wait(0); // what follows the last touch is shown
        lookAtCard();
        if (round.cardKind === "go") {
            touch("keyHere");
        } else if (round.cardKind === "set") {
            touch("keySet");
        } else {
            if (round.measured)
                measure();
            touch("keySound");
        }
        compare(Stage.app.problem, "");
    }
    function found() {
        lookAtCard();
        touch("keyFinding");
        see("sheetFinding");
        at("sheetFinding");
        type("findingWords", "Schwarzer Abrieb an zwei Nieten der Verkleidung.");
        touch("classAssess");
        at("finding in words");
        touch("findingDone");
        gone("sheetFinding");
    }
    function notInspected() {
        lookAtCard();
        touch("linkNotInspected");
        see("sheetNotInspected");
        touch("notInspectedReason.0");
        type("notInspectedBasis", "Nur Tagflug.");
        at("sheetNotInspected");
        touch("notInspectedDone");
        gone("sheetNotInspected");
    }
    function lookWhy() {
        touch("linkWhy");
        see("sheetWhy");
        at("sheetWhy");
        touch("whyClose");
        gone("sheetWhy");
    }
    function interrupted() {
        touch("pauseKey");
        compare(round.phase, "paused");
        at("paused");
        Stage.advance(600);
        touch("resumeKey");
        see("sheetInterrupted");
        at("sheetInterrupted");
        touch("interruptedDone");
        gone("sheetInterrupted");
        Stage.advance(300);
        Stage.app.conditions.tick();
        see("sheetInterrupted");
        at("sheetInterrupted, nobody there");
        touch("interruptedDone");
        tryVerify(() => Stage.app.conditions.interruptedText !== "");
        touch("interruptedDone");
        gone("sheetInterrupted");
    }
    function lessLight() {
        touch("moreKey");
        see("sheetMore");
        at("sheetMore");
        touch("lightKey");
        gone("sheetMore");
        verify(round.lightLow);
    }
    function blocked() {
        touch("linkBlocked");
        see("sheetBlocked");
        at("sheetBlocked");
        touch("blockedReason.1");
        gone("sheetBlocked");
        compare(round.blockedStands.length, 1);
    }
    function tooQuick() {
        while (round.cardKind !== "settle" || round.measured)
            step();
        for (let i = 0; i < 3 && round.cardKind === "settle"; ++i)
            {
            touch("keySound");
            wait(0);
        }
        see("quickStrip");
        at("settled quickly");
        touch("quickAgain");
        gone("quickStrip");
    }
    function asked() {
        compare(Stage.ask("question", "", "Welcher Kraftstoff ist drin, und wer hat getankt?"), "");
        compare(Stage.ask("lookAgain", "papers", "Auch von unten."), "");
        compare(Stage.ask("remark", "", "Langsam genug."), "");
        see("askedStrip");
        at("asked");
        touch("askedStrip");
        see("sheetAsked");
        at("sheetAsked");
        touch("askAnswer.1");
        see("sheetAnswer");
        type("answerWords", "Avgas, klar.");
        at("sheetAnswer");
        touch("answerDone");
        gone("sheetAnswer");
        touch("askedStrip");
        touch("askRead.3");
        touch("askedClose");
        gone("sheetAsked");
    }
    function review() {
        compare(round.cardKind, "done");
        lookAtCard();
        touch("keyReview");
        see("screenReview");
        at("screenReview");
        touch("reviewSettled");
        at("review, all settled");
        touch("reopen.fairing.left");
        see("sheetReopen");
        at("sheetReopen");
        touch("reopenCancel");
        gone("sheetReopen");
        if (seen("reviewRest")) {
            touch("reviewRest");
            see("sheetRest");
            touch("notInspectedReason.0");
            type("notInspectedBasis", "Nur Tagflug.");
            at("sheetRest");
            touch("notInspectedDone");
            gone("sheetRest");
            at("review, nothing left");
        }
        compare(round.settledCount, round.pointCount);
    }
    function conclude() {
        touch("reviewConclude");
        see("screenConclude");
        at("screenConclude");
        touch("concludeFit");
        type("concludeReasons", "Wart verst. Nieten sind fest.");
        at("concluded");
        touch("concludeDone");
        compare(Stage.app.problem, "");
        compare(round.phase, "concluded");
    }
    function sign() {
        see("screenSign");
        at("screenSign, no key");
        type("newKeyPassphrase", passphrase);
        type("newKeyPassphraseAgain", passphrase);
        at("screenSign, a key to be made");
        touch("newKeyDone");
        type("signPassphrase", passphrase);
        at("screenSign");
        touch("signKey");
        see("screenFile");
        isRead();
        at("screenFile");
        touch("record." + Stage.app.signing.recordId);
        see("screenRecord");
        verify(Stage.app.file.record.verified);
        at("screenRecord");
    }
    /// What comes at which point, or before going where; each once.
    function test_touches() {
        begin();
        touch("beginKey");
        see("screenWalk");
        const at = {
            "lamps": notInspected,
            "fairing.left": found
        };
        let went = 0;
        const before = {
            2: lessLight,
            3: tooQuick,
            4: blocked,
            5: asked,
            6: interrupted
        };
        for (let steps = 0; round.cardKind !== "done" && steps < 500; ++steps) {
            if (round.cardKind === "go" && before[++went]) {
                before[went]();
                continue;
            }
            const special = round.cardKind === "settle" && at[round.pointId];
            delete at[round.pointId];
            if (special)
                special();
            else
                step();
            if (steps === 3)
                lookWhy();
        }
        verify(Object.keys(at).length === 0, "left out: " + Object.keys(at));
        verify(went >= 6, "went " + went);
        verify(Stage.events.includes("settingChanged") || Stage.events.includes("setting"), Stage.events.join());
        review();
        conclude();
        sign();
        verify(test.looked > 60, "states looked at: " + test.looked);
        noneWrong();
    }
    /// As it is asked where hands are few: told in portions, read before the climb.
    function test_portions() {
        begin();
        Stage.app.habits.keys = true;
        Stage.app.habits.portions = true;
        touch("beginKey");
        see("screenWalk");
        const hands = Stage.app.hands, modes = {};
        for (let steps = 0; round.cardKind !== "done" && steps < 500; ++steps) {
            modes[hands.mode] = true;
            if (hands.mode === "touch") {
                step();
                continue;
            }
            see("handsCard");
            lookAtCard();
            Stage.advance(30);
            touch(hands.mode === "read" ? "keyClimb" : hands.mode === "up" ? "keyDown" : "touchInstead");
            compare(Stage.app.problem, "");
        }
        compare(round.settledCount, round.pointCount);
        compare(Object.keys(modes).sort().join(), "key,read,touch,up");
        noneWrong();
    }
}
