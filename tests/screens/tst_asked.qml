// What somebody who follows asks: shown on the walk, answered, declined, settled again; by touches.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "Asked"

    function begun(width, height) {
        open(width, height);
        beginRound("OX-DEMO", "daily");
        frame();
        touch("keyHere");
        return Stage.app.round;
    }
    function count(kind) {
        return Stage.events.filter(one => one === kind).length;
    }

    function test_nothingAskedNothingShown() {
        begun(390, 844);
        compare(seen("askedStrip"), null);
        compare(seen("askedText"), null);
    }

    /// By a hand in a pocket: once when somebody asks, once when the answer is kept, once when it is refused.
    function test_whatIsFelt() {
        const round = begun(390, 844);
        const before = Stage.felt.length;
        compare(Stage.ask("question", "", "Which fuel is in it?"), "");
        compare(Stage.felt.slice(before), ["lookUp"]);
        verify(!round.answer(1, ""));
        compare(Stage.felt.slice(before), ["lookUp", "refused"]);
        verify(round.answer(1, "100LL."));
        compare(Stage.felt.slice(before), ["lookUp", "refused", "taken"]);
    }

    function test_question_data() {
        return sizes;
    }
    function test_question(data) {
        const round = begun(data.width, data.height);
        const title = round.cardTitle;
        compare(Stage.ask("question", "", "Which fuel is in it?"), "");
        const strip = see("askedStrip");
        verify(strip.text.includes("Ines Example"), strip.text);
        compare(round.cardTitle, title);
        check();
        touch("askedStrip");
        see("sheetAsked");
        check();
        touch("askAnswer.1");
        see("sheetAnswer");
        check();
        verify(!see("answerDone").enabled);
        type("answerWords", "100LL, drained clear.");
        touch("answerDone");
        tryVerify(() => seen("sheetAnswer") === null);
        compare(Stage.app.problem, "");
        compare(count("answered"), 1);
        tryVerify(() => seen("askedStrip") === null);
        compare(round.asks, []);
    }

    function test_lookAgain_data() {
        return sizes;
    }
    function test_lookAgain(data) {
        const round = begun(data.width, data.height);
        const first = round.pointId, name = round.cardTitle;
        touch("keySound");
        tryVerify(() => round.pointId !== first);
        const inHand = round.pointId, settled = round.settledCount;
        compare(Stage.ask("lookAgain", first, "From below, too."), "");
        // The point in hand stays there; the other is to be settled again.
        tryCompare(round, "settledCount", settled - 1);
        compare(round.pointId, inHand);
        tryVerify(() => seen("askedStrip") !== null);
        verify(see("askedStrip").text.includes(name), see("askedStrip").text);
        check();
        touch("keySound");
        tryVerify(() => round.pointId === first);
        verify(see("askedText").visible);
        verify(round.askedText.includes("Ines Example asks to look again: From below, too."), round.askedText);
        check();
        touch("keySound");
        tryVerify(() => seen("askedStrip") === null);
        tryVerify(() => seen("askedText") === null);
        compare(Stage.app.problem, "");
    }

    function test_declined() {
        const round = begun(390, 844);
        const first = round.pointId;
        touch("keySound");
        tryVerify(() => round.pointId !== first);
        const settled = round.settledCount;
        compare(Stage.ask("lookAgain", first, ""), "");
        tryCompare(round, "settledCount", settled - 1);
        touch("askedStrip");
        compare(seen("askAnswer.1"), null);
        touch("askDecline.1");
        see("sheetDecline");
        check();
        type("declineWhy", "Seen from below already.");
        touch("declineDone");
        tryVerify(() => seen("sheetDecline") === null);
        tryCompare(round, "settledCount", settled);
        compare(count("declined"), 1);
        compare(Stage.app.problem, "");
    }

    function test_remarkIsShownUntilRead() {
        const round = begun(390, 844);
        compare(Stage.ask("remark", "", "Take your time."), "");
        tryVerify(() => seen("askedStrip") !== null);
        touch("keySound");
        verify(see("askedStrip").text.includes("A remark"));
        touch("askedStrip");
        touch("askRead.1");
        tryVerify(() => seen("sheetAsked") === null);
        tryVerify(() => seen("askedStrip") === null);
        compare(count("asked"), 1);
    }

    function test_severalAreListed() {
        const round = begun(390, 844);
        compare(Stage.ask("remark", "", "One."), "");
        compare(Stage.ask("question", round.pointId, "Two?", "Sam Sample"), "");
        compare(Stage.ask("lookAgain", round.pointId, "Three."), "");
        tryVerify(() => seen("askedStrip") !== null && see("askedStrip").text.includes("and 2 more"));
        verify(see("askedText").visible);
        touch("askedStrip");
        see("askRead.1");
        see("askAnswer.2");
        see("askDecline.3");
        check();
        touch("askRead.1");
        tryVerify(() => seen("askRead.1") === null);
        touch("askedClose");
        compare(round.asks.length, 2);
    }

    /// While one is paused, too; and no conclusion before it is answered.
    function test_inAPauseAndBeforeTheEnd() {
        const round = begun(390, 844);
        touch("pauseKey");
        compare(Stage.ask("question", "", "What holds you up?"), "");
        touch("askedStrip");
        touch("askAnswer.1");
        type("answerWords", "A call.");
        touch("answerDone");
        tryVerify(() => seen("sheetAnswer") === null);
        touch("resumeKey");
        verify(Stage.walkTo(""));
        compare(round.against(false).length, 0);
        compare(Stage.ask("question", "", "Sure?"), "");
        verify(round.against(false)[0].includes("Ines Example asks “Sure?”"), round.against(false)[0]);
        verify(!round.conclude(true, ""));
        touch("problemClose");
    }

    function test_atNightAndLargeText() {
        for (const size of [test.sizes[0], test.sizes[2]]) {
            const round = begun(size.width, size.height);
            Stage.app.night = true;
            Theme.scale = 2;
            compare(Stage.ask("question", "", "A question of many words, so many that they can't all stand in the strip between the figure and the card?"), "");
            compare(Stage.ask("lookAgain", round.pointId, "And these too are many words to be read where one stands."), "");
            tryVerify(() => seen("askedStrip") !== null);
            check();
            touch("askedStrip");
            check();
            touch("askedClose");
            Stage.app.night = false;
            Theme.scale = 1;
            main.destroy();
            main = null;
            wait(0);
        }
    }
}
