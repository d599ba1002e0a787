// A walk without touching the screen.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "Keyboard"

    function press(key) {
        Stage.advance(5);
        keyClick(key);
        compare(Stage.app.problem, "");
    }
    function test_walk() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        const round = Stage.app.round;
        for (let settled = 0; settled < 6;) {
            if (round.cardKind === "go") {
                const stand = round.targetStandId;
                press("i");
                compare(round.standId, stand);
            } else {
                verify(!round.measured);
                press("s");
                compare(round.settledCount, ++settled);
            }
        }
    }
    function test_spaceAndEnter() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        const round = Stage.app.round;
        press("i");
        see("keySound").forceActiveFocus();
        press(Qt.Key_Space);
        compare(round.settledCount, 1);
        see("keySound").forceActiveFocus();
        press(Qt.Key_Return);
        compare(round.settledCount, 2);
    }
    function test_sheets() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        press("i");
        press("w");
        see("sheetWhy");
        press(Qt.Key_Escape);
        tryVerify(() => seen("sheetWhy") === null);
        press("f");
        see("sheetFinding");
        // In a sheet a letter is a letter.
        press("s");
        compare(see("findingWords").text, "s");
        compare(Stage.app.round.settledCount, 0);
        press(Qt.Key_Escape);
        tryVerify(() => seen("sheetFinding") === null);
        press("n");
        see("sheetNotInspected");
        press(Qt.Key_Escape);
        tryVerify(() => seen("sheetNotInspected") === null);
        press("p");
        compare(Stage.app.round.phase, "paused");
        press("p");
        compare(Stage.app.round.phase, "walking");
    }
    function test_value() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        const round = Stage.app.round;
        verify(Stage.walkTo("oil-level"));
        frame();
        press("v");
        for (const letter of "9,9")
            press(letter);
        compare(see("valueField").text, "9.9");
        verify(see("valueField").refusal !== "");
        press(Qt.Key_Backspace);
        press(Qt.Key_Delete);
        for (const letter of "5.2")
            press(letter);
        compare(see("valueField").refusal, "");
        press(Qt.Key_Return);
        press("s");
        verify(round.pointId !== "oil-level");
    }
    function test_tabReachesEveryKey() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        press("i");
        const wanted = all(main.contentItem, item => touchable(item) && item.enabled, []);
        const reached = [];
        for (let i = 0; i < 60; ++i) {
            keyClick(Qt.Key_Tab);
            reached.push(main.activeFocusItem);
        }
        verify(Theme.keyboard);
        for (const item of wanted)
            verify(reached.includes(item), "reached by Tab: " + item.objectName);
    }
    function test_figure() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        const figure = see("figure");
        figure.forceActiveFocus();
        press(Qt.Key_Right);
        compare(figure.at, 0);
        press(Qt.Key_Left);
        verify(figure.at > 0);
        const events = Stage.events.length;
        press(Qt.Key_Return);
        verify(Stage.events.length > events);
    }
}
