// Where reality differs: a stand that can't be used, something in the way, the light; by touches, and what the screen then says.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "Differs"

    readonly property var sizes: [
        {
            tag: "phone",
            width: 390,
            height: 844
        },
        {
            tag: "phone on its side",
            width: 844,
            height: 390
        },
        {
            tag: "tablet",
            width: 1180,
            height: 820
        }
    ]

    function path(item) {
        let text = "";
        for (let up = item; up && text.length < 200; up = up.parent)
            text += (up.objectName || up.text || "") + " < ";
        return text;
    }
    function check() {
        frame();
        for (const item of all(main.contentItem, touchable, [])) {
            verify(item.width >= Theme.target - 0.5 && item.height >= Theme.target - 0.5,
                   "large enough: " + path(item) + item.width + " × " + item.height);
            verify(item.Accessible.name !== "", "named: " + path(item));
            if (item.broad && item.look !== undefined)
                verify(item.height >= Theme.key - 0.5, "a key of 18 mm: " + path(item));
        }
    }
    /// To a card “go” behind the first stand.
    function goCard() {
        const round = Stage.app.round;
        for (let i = 0; i < 40 && (round.cardKind !== "go" || round.standId === ""); ++i)
            follow({});
        compare(round.cardKind, "go");
    }
    function more(key) {
        touch("moreKey");
        see("sheetMore");
        touch(key);
    }
    /// A corner of a box, in metres on the figure, y down.
    function corner(x, y) {
        const place = see("markFigure");
        place.aim = Qt.point(x, y);
        touch("markFigure");
    }

    function test_blocked_data() {
        return sizes;
    }
    function test_blocked(data) {
        open(data.width, data.height);
        beginRound("OX-DEMO", "daily");
        goCard();
        const round = Stage.app.round;
        const ahead = round.targetStandId, name = round.targetStandName;
        check();
        touch("linkBlocked");
        see("sheetBlocked");
        check();
        verify(!see("blockedDone").enabled);
        touch("blockedReason.1");
        tryVerify(() => seen("sheetBlocked") === null);
        compare(Stage.app.problem, "");
        verify(round.targetStandId !== ahead);
        compare(Stage.events.filter(kind => kind === "stand blocked").length, 1);
        verify(see("orderText").text.startsWith("“" + name + "” can't be used"), see("orderText").text);
        const mark = see("stand." + ahead);
        compare(mark.blocked, "Slippery or iced");
        verify(mark.Accessible.description.includes("can't be used"));
        // A touch on it says why not.
        touch("stand." + ahead);
        verify(see("problemText").text.includes("Slippery or iced"));
        touch("problemClose");
        touch("moreKey");
        see("sheetMore");
        check();
        touch("standFree." + ahead);
        tryCompare(round, "blockedStands", []);
        tryVerify(() => see("moreOrder").text.startsWith("“" + name + "” can be used again"));
        touch("moreClose");
        compare(Stage.app.problem, "");
    }
    function test_ownWords() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        goCard();
        touch("linkBlocked");
        type("blockedWhy", "Fuel hose across it");
        touch("blockedDone");
        tryVerify(() => seen("sheetBlocked") === null);
        compare(Stage.app.round.blockedStands[0].why, "Fuel hose across it");
    }
    /// Where one stands: found slippery when one is on it.
    function test_blockedHere() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        const round = Stage.app.round;
        touch("keyHere");
        compare(round.cardKind, "settle");
        const here = round.standId;
        more("standBlockedKey");
        touch("blockedReason.0");
        tryVerify(() => seen("sheetBlocked") === null);
        compare(round.blockedStands[0].id, here);
        verify(round.cardKind !== "settle" || round.standId !== here);
    }

    function test_marked_data() {
        return sizes;
    }
    function test_marked(data) {
        open(data.width, data.height);
        beginRound("OX-DEMO", "daily");
        goCard();
        const round = Stage.app.round, bounds = round.figure.bounds;
        touch("linkMark");
        see("sheetMark");
        check();
        verify(!see("markReason.0").enabled);
        verify(!see("markUndo").enabled);
        // Beside the machine, on the ground that is shown.
        corner(bounds.x - 3, bounds.y + 1);
        verify(!see("markReason.0").enabled);
        verify(see("markUndo").enabled);
        touch("markUndo");
        verify(!see("markUndo").enabled);
        corner(bounds.x - 3, bounds.y + 1);
        corner(bounds.x - 1.5, bounds.y + 3);
        check();
        verify(see("markReason.0").enabled);
        touch("markReason.1");
        tryVerify(() => seen("sheetMark") === null);
        compare(Stage.app.problem, "");
        compare(round.markedAreas.length, 1);
        compare(round.markedAreas[0].why, "Another machine");
        const outline = round.figure.marked[0].outline;
        fuzzyCompare(outline[0].x, bounds.x - 3, 0.2);
        fuzzyCompare(outline[2].y, bounds.y + 3, 0.2);
        verify(see("orderText").text.startsWith("“Another machine” is in the way"), see("orderText").text);
        touch("moreKey");
        touch("areaCleared.1");
        tryVerify(() => round.markedAreas.length === 0);
        touch("moreClose");
        compare(round.figure.marked.length, 0);
    }
    /// Drawn with a finger, then a corner drawn out, then all of it moved.
    function test_drawn() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        goCard();
        touch("linkMark");
        const place = see("markFigure");
        frame();
        const from = Qt.point(20, 60);
        mouseDrag(place, from.x, from.y, 60, 90, Qt.LeftButton, Qt.NoModifier, 20);
        verify(place.whole);
        const first = Qt.point(place.first.x, place.first.y), second = Qt.point(place.second.x, place.second.y);
        const at = place.seenAt(second);
        mouseDrag(place, at.x, at.y, 20, 30, Qt.LeftButton, Qt.NoModifier, 20);
        fuzzyCompare(place.first.x, first.x, 0.05);
        verify(place.second.x > second.x && place.second.y > second.y);
        const wide = place.second.x - place.first.x;
        // The corner opposite: the one that was dragged stays.
        const other = place.seenAt(place.first);
        mouseDrag(place, other.x, other.y, 10, 10, Qt.LeftButton, Qt.NoModifier, 20);
        verify(place.whole);
        verify(Math.abs(place.second.x - place.first.x) < wide);
        mouseDrag(place, other.x, other.y, -10, -10, Qt.LeftButton, Qt.NoModifier, 20);
        const left = Math.min(place.first.x, place.second.x);
        const across = Math.abs(place.second.x - place.first.x);
        mouseDrag(place, (from.x + at.x) / 2, (from.y + at.y) / 2 + 4, 25, 0, Qt.LeftButton, Qt.NoModifier, 20);
        verify(Math.min(place.first.x, place.second.x) > left + 0.3);
        fuzzyCompare(Math.abs(place.second.x - place.first.x), across, 0.05);
        type("markWords", "Fuel truck");
        touch("markDone");
        tryVerify(() => seen("sheetMark") === null);
        compare(Stage.app.round.markedAreas[0].why, "Fuel truck");
    }
    /// Over where one stands: refused in words, and what was drawn stays to be moved.
    function test_markedOverOneself() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        goCard();
        const stands = Stage.app.round.figure.stands;
        let here = null;
        for (let i = 0; i < stands.count; ++i)
            if (stands.get(i).look === "current") here = stands.get(i);
        touch("linkMark");
        corner(here.placeX - 1, here.placeY - 1);
        corner(here.placeX + 1, here.placeY + 1);
        touch("markReason.0");
        verify(see("problemText").text.includes("where you stand"));
        touch("problemClose");
        verify(see("markFigure").whole);
        touch("markCancel");
        tryVerify(() => seen("sheetMark") === null);
        compare(Stage.app.round.markedAreas.length, 0);
    }
    function test_byKeyboard() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        goCard();
        touch("linkMark");
        const place = see("markFigure");
        place.forceActiveFocus();
        keyClick(Qt.Key_Return);
        compare(place.corners, 1);
        for (let i = 0; i < 3; ++i) {
            keyClick(Qt.Key_Left);
            keyClick(Qt.Key_Up);
        }
        keyClick(Qt.Key_Return);
        verify(place.whole);
        keyClick(Qt.Key_Left);
        fuzzyCompare(Math.abs(place.second.x - place.first.x), 2, 0.05);
        keyClick(Qt.Key_Backspace);
        compare(place.corners, 1);
        keyClick(Qt.Key_Escape);
        tryVerify(() => seen("sheetMark") === null);
    }

    function test_light() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        const round = Stage.app.round;
        touch("keyHere");
        more("lightKey");
        tryVerify(() => seen("sheetMore") === null);
        verify(round.lightLow);
        verify(see("orderText").text.startsWith("The light is low"), see("orderText").text);
        more("lightKey");
        tryVerify(() => !round.lightLow);
    }
    function test_pausedNothingDiffers() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        touch("keyHere");
        touch("pauseKey");
        touch("moreKey");
        see("sheetMore");
        verify(!see("markAreaKey").enabled);
        verify(!see("lightKey").enabled);
        verify(!see("standBlockedKey").enabled);
        touch("moreClose");
    }

    function test_compared_data() {
        return [
            {
                tag: "helicopter",
                registration: "OX-DEMO",
                setting: "rotor"
            },
            {
                tag: "aeroplane",
                registration: "OX-WING",
                setting: ""
            }
        ];
    }
    function test_compared(data) {
        open(390, 844);
        touch("aircraft." + data.registration);
        see("screenBegin");
        touch("walk.daily");
        see("comparedWalk");
        frame();
        const height = see("comparedWalk").height;
        const comparison = Stage.app.comparison;
        tryVerify(() => comparison.ready, 60000);
        frame();
        compare(see("comparedWalk").height, height);
        const names = comparison.rows.map(row => row.what).join(" ");
        verify(names.includes("Way walked") && names.includes("Climbs") && names.includes("Minutes"));
        if (data.setting === "") verify(!names.toLowerCase().includes("rotor"), names);
        verify(see("comparedWalk").Accessible.name.includes("as listed"));
        check();
    }
}
