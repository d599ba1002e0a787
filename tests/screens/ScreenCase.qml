// A test of the real screens: a fresh archive, the window at a size, and a hand that touches what it finds by objectName.
import QtQuick
import QtTest
import Ambit
import AmbitTest

TestCase {
    id: screenCase

    property Window main: null
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
        },
        {
            tag: "tablet upright",
            width: 768,
            height: 1024
        }
    ]

    property Component mainComponent: Component {
        Main {}
    }

    function open(width: int, height: int, language = "") {
        Stage.fresh();
        Stage.app.language = language;
        Theme.scale = 1;
        Theme.keyboard = false;
        main = mainComponent.createObject(null, {
            app: Stage.app,
            width: width,
            height: height
        });
        verify(main !== null);
        main.requestActivate();
        tryVerify(() => main.active);
        frame();
    }
    /// Waits for the next frame. Where nothing changes none comes, and waiting for one as long as Qt does would be most of the test.
    function frame() {
        waitForRendering(main.contentItem, 250);
    }
    function init() {
        failOnWarning(/^(?!PulseAudioService)/);
    }
    function cleanup() {
        if (main) {
            main.destroy();
            main = null;
            wait(0);
        }
        Stage.fresh();
    }

    // --- finding --------------------------------------------------------------------------------------------------------
    function findIn(item, name) {
        if (!item.visible)
            return null;
        if (item.objectName === name)
            return item;
        for (const child of Array.from(item.children)) {
            const found = findIn(child, name);
            if (found)
                return found;
        }
        return null;
    }
    function seen(name) {
        return findIn(main.contentItem, name);
    }
    function see(name) {
        tryVerify(() => seen(name) !== null, 2000, "on the screen: " + name);
        return seen(name);
    }
    function all(item, wanted, found) {
        if (!item.visible || item.opacity === 0)
            return found;
        if (wanted(item))
            found.push(item);
        for (const child of Array.from(item.children))
            all(child, wanted, found);
        return found;
    }
    function touchable(item) {
        return typeof item.clicked === "function" && item.checkable !== undefined;
    }
    function field(item) {
        return item.cursorPosition !== undefined && item.label !== undefined;
    }

    // --- what every screen is -------------------------------------------------------------------------------------------
    function path(item) {
        let text = "";
        for (let up = item; up && text.length < 200; up = up.parent)
            text += (up.objectName || up.text || "") + " < ";
        return text;
    }
    /// Each control has a name and is large enough for gloves, nothing is written too small, the broad keys lie within the window.
    function check() {
        frame();
        for (const item of all(main.contentItem, touchable, [])) {
            verify(item.width >= Theme.target - 0.5 && item.height >= Theme.target - 0.5, "large enough: " + path(item) + item.width + " × " + item.height);
            verify(item.Accessible.name !== "", "named: " + path(item));
            verify(item.Accessible.role !== Accessible.NoRole, "has a role: " + path(item));
            if (item.broad && item.look !== undefined)
                verify(item.height >= Theme.key - 0.5, "a key of 18 mm: " + path(item));
        }
        for (const item of all(main.contentItem, field, [])) {
            verify(item.height >= Theme.target - 0.5, "large enough: " + path(item));
            verify(item.Accessible.name !== "", "named: " + path(item));
        }
        for (const item of all(main.contentItem, one => one.font !== undefined && one.paintedHeight !== undefined && one.text !== "", []))
            verify(item.font.pixelSize >= 14, "large enough to read: " + path(item));
        for (const item of all(main.contentItem, one => one.broad === true && one.cut !== undefined && one.look === "solid", [])) {
            const at = item.mapToItem(main.contentItem, 0, 0);
            verify(at.x >= 0 && at.y >= 0 && at.x + item.width <= main.width + 0.5 && at.y + item.height <= main.height + 0.5, "in sight: " + path(item));
        }
    }

    // --- touching -------------------------------------------------------------------------------------------------------
    function bringIntoView(item, at) {
        for (let up = item.parent; up; up = up.parent) {
            if (up.contentY === undefined || up.contentHeight === undefined)
                continue;
            const y = item.mapToItem(up, at.x, at.y).y;
            const reach = Math.min(item.height / 2 + 8, up.height / 2);
            if (y < reach)
                up.contentY = Math.max(up.originY, up.contentY + y - reach);
            else if (y > up.height - reach)
                up.contentY = Math.min(Math.max(0, up.originY + up.contentHeight - up.height), up.contentY + y - up.height + reach);
        }
    }
    function touch(name) {
        const item = see(name);
        tryVerify(() => item.enabled, 2000, "can be touched: " + name);
        const at = item.touchPoint !== undefined ? item.touchPoint : Qt.point(item.width / 2, item.height / 2);
        bringIntoView(item, at);
        let scene = Qt.point(-1, -1);
        // What has just come up is laid out with the next frame.
        tryVerify(() => {
            scene = item.mapToItem(main.contentItem, at.x, at.y);
            return item.width > 0 && scene.x >= 0 && scene.y >= 0 && scene.x < main.width && scene.y < main.height;
        }, 1000, "within the window: " + name);
        mouseClick(main.contentItem, scene.x, scene.y);
    }
    function type(name, words) {
        frame(); // a field above it may just have grown
        touch(name);
        keyClick(Qt.Key_A, Qt.ControlModifier);
        keyClick(Qt.Key_Delete);
        for (const letter of words)
            keyClick(letter);
        compare(see(name).text, words);
    }
    function beginRound(registration, walk) {
        touch("aircraft." + registration);
        see("screenBegin");
        touch("walk." + walk);
        type("beginName", "Robin Example");
        touch("beginKey");
        see("screenWalk");
    }
    /// Does what the card says, once; measured values by the point's id.
    function follow(values) {
        const round = Stage.app.round;
        Stage.advance(8);
        if (round.cardKind === "go") {
            touch("keyHere");
        } else if (round.cardKind === "set") {
            touch("keySet");
        } else {
            if (round.measured)
                type("valueField", values[round.pointId]);
            touch("keySound");
        }
        compare(Stage.app.problem, "");
    }
}
