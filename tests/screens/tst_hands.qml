// Where hands are few: keys only, portions, interruptions; by simulated keys and touches.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "Hands"

    readonly property var values: ({
            "oil-level": "5.2",
            "belt-play": "9",
            "skid-shoe.left": "5.6",
            "skid-shoe.right": "5.1",
            "tail-play": "2.4"
        })

    function begin(width, height) {
        open(width, height);
        Stage.app.habits.keys = true;
        Stage.app.habits.portions = true;
        beginRound("OX-DEMO", "daily");
        waitForRendering(main.contentItem); // nobody touches before the first picture
    }
    function click(key) {
        keyPress(key);
        keyRelease(key);
    }
    /// One press, and the time in which another might follow.
    function once(key) {
        const events = Stage.events.length;
        click(key);
        tryVerify(() => Stage.events.length > events, 2000, "answered");
    }
    function hold(key) {
        const events = Stage.events.length;
        keyPress(key);
        tryVerify(() => Stage.events.length > events, 2000, "answered");
        keyRelease(key);
    }
    /// Does what the card says with keys alone.
    function goOn() {
        const round = Stage.app.round, hands = Stage.app.hands;
        Stage.advance(20);
        wait(0); // what follows the last event is shown
        if (hands.mode === "key" || hands.mode === "read") {
            once(Qt.Key_VolumeUp);
        } else if (hands.mode === "up") {
            hold(Qt.Key_VolumeUp);
        } else if (round.cardKind === "go") {
            keyClick("i");
        } else if (round.cardKind === "set") {
            keyClick("d");
        } else {
            if (round.measured) {
                keyClick("v");
                for (const digit of values[round.pointId])
                    keyClick(digit);
                keyClick(Qt.Key_Return);
            }
            keyClick("s");
        }
        compare(Stage.app.problem, "");
    }

    /// The whole machine, and nothing is touched, least of all where one holds on.
    function test_keysOnly() {
        begin(390, 844);
        const round = Stage.app.round;
        const modes = {};
        for (let steps = 0; round.cardKind !== "done" && steps < 400; ++steps) {
            const mode = Stage.app.hands.mode;
            if (round.cardKind === "settle" && round.standRaised && mode === "touch")
                verify(Stage.app.hands.asking > 0); // down again
            modes[mode] = (modes[mode] ?? 0) + 1;
            goOn();
        }
        compare(round.cardKind, "done");
        compare(round.settledCount, round.pointCount);
        verify(modes["key"] > 10 && modes["read"] >= 2 && modes["up"] >= 2, JSON.stringify(modes));
        compare(Stage.events.filter(kind => kind === "portion begun").length, modes["read"]);
        verify(Stage.app.conditions.quickText === "");
        compare(round.against(true).length, 0);
    }
    function test_oneHand_data() {
        return sizes;
    }
    function test_oneHand(size) {
        begin(size.width, size.height);
        verify(Stage.walkTo("fuel-cap-open"));
        see("handsCard");
        check();
        compare(see("handsTitle").text, Stage.app.round.cardTitle);
        verify(seen("keySound") === null); // nothing is settled by touch
        verify(seen("keyFinding") === null);
        const point = Stage.app.round.pointId;
        const said = Stage.spoken.length;
        click(Qt.Key_Space);
        click(Qt.Key_Space);
        tryVerify(() => Stage.spoken.length > said);
        compare(Stage.app.round.pointId, point);
        hold(Qt.Key_PageDown);
        compare(Stage.app.round.findingCount, 1);
        // Off by one touch.
        touch("touchInstead");
        tryVerify(() => seen("handsCard") === null);
        follow({});
        // Down again the finding gets its words.
        while (Stage.app.round.cardKind !== "go")
            follow({});
        touch("inWords." + point);
        type("inWordsText", "Seal cracked.");
        touch("inWordsDone");
        tryVerify(() => seen("sheetInWords") === null);
        compare(Stage.app.hands.unworded.length, 0);
        compare(Stage.app.round.findingCount, 1);
    }
    function test_portion_data() {
        return sizes;
    }
    function test_portion(size) {
        begin(size.width, size.height);
        verify(Stage.walkTo("hinge-bolt.a"));
        see("keyClimb");
        check();
        touch("keyClimb");
        see("keyDown");
        check();
        const events = Stage.events.length;
        // Up there letters and touches on the rest of the screen do nothing.
        for (const letter of ["s", "f", "n", "i", "d", "p"])
            keyClick(letter);
        for (let x = 20; x < main.width; x += 90)
            mouseClick(main.contentItem, x, main.height * 0.4);
        compare(Stage.events.length, events);
        touch("keyDown");
        see("askingText");
        check();
        const left = Stage.app.hands.asking;
        verify(left > 1);
        touch("keySound");
        compare(Stage.app.hands.asking, left - 1);
    }
    function test_interrupted_data() {
        return sizes;
    }
    function test_interrupted(size) {
        begin(size.width, size.height);
        verify(Stage.walkTo("fuel-cap-open"));
        touch("touchInstead");
        touch("pauseKey");
        Stage.advance(400);
        touch("resumeKey");
        see("sheetInterrupted");
        check();
        const point = Stage.app.round.pointId;
        keyClick("s"); // nothing beneath answers
        compare(Stage.app.round.pointId, point);
        touch("interruptedDone");
        tryVerify(() => seen("sheetInterrupted") === null);
        Stage.advance(300);
        Stage.app.conditions.tick();
        see("sheetInterrupted");
        touch("interruptedDone"); // I am here
        tryVerify(() => Stage.app.conditions.interruptedText !== "");
        touch("interruptedDone");
        tryVerify(() => seen("sheetInterrupted") === null);
        compare(Stage.events.filter(kind => kind === "interrupted").length, 2);
    }
    /// What somebody was writing when they were called away belongs to what they were looking at.
    function test_aFindingStaysAtItsPoint() {
        begin(390, 844);
        Stage.app.habits.keys = false;
        verify(Stage.walkTo("fairing.left"));
        const round = Stage.app.round;
        touch("keyFinding");
        type("findingWords", "Black powder.");
        Stage.app.conditions.leave("call");
        Stage.advance(60);
        Stage.app.conditions.comeBack();
        touch("interruptedDone");
        tryVerify(() => seen("sheetInterrupted") === null);
        waitForRendering(main.contentItem);
        touch("classAssess");
        touch("findingDone");
        tryVerify(() => seen("sheetFinding") === null);
        const found = Array.from(round.settledPoints).filter(one => one.outcome === "finding");
        compare(found.length, 1);
        compare(found[0].id, "fairing.left");
        // Then what the rule asks for; given up, too.
        tryVerify(() => round.pointId !== "fairing.left");
        const next = round.pointId, kind = round.cardKind;
        if (kind === "settle") {
            touch("keyFinding");
            touch("findingCancel");
            tryVerify(() => seen("sheetFinding") === null);
            compare(round.pointId, next);
        }
    }
    function test_quick_data() {
        return sizes;
    }
    function test_quick(size) {
        begin(size.width, size.height);
        Stage.advance(60);
        touch("keyHere");
        for (let i = 0; i < 3; ++i)
            touch("keySound");
        see("quickStrip");
        check();
        touch("quickAgain");
        tryVerify(() => seen("quickStrip") === null);
        compare(Stage.app.round.settledCount, 0);
    }
    function test_habits_data() {
        return sizes;
    }
    function test_habits(size) {
        begin(size.width, size.height);
        touch("moreKey");
        touch("habitsKey");
        see("sheetHabits");
        check();
        touch("habitKeys");
        verify(!Stage.app.habits.keys);
        touch("portionFewer");
        compare(Stage.app.habits.portionSize, 4);
        verify(!Stage.app.habits.photosAsTaken);
        touch("habitPhotos");
        verify(Stage.app.habits.photosAsTaken);
        touch("habitPhotos");
        touch("habitBack.stand");
        compare(Stage.app.habits.backText, "the stand again");
        touch("habitsClose");
        tryVerify(() => seen("sheetHabits") === null);
        touch("moreKey");
        touch("nightFlightKey");
        verify(Stage.app.conditions.night);
    }
}
