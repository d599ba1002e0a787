// A test that looks at each state it comes to: what must hold everywhere, whatever the text's size and language.
import QtQuick
import QtTest
import Ambit
import AmbitTest

FileCase {
    id: looking

    /// (what: string) → called when it is shown and at rest, at the top and, where there is more, at the bottom.
    property var look: null
    /// Before each look: the window as the test wants it.
    property var dress: () => {}

    /// Letters of a word that has to stay whole: a longer one may not fit between the edges of such a screen.
    readonly property int kept: 8
    /// A choice's letters give way, and a heading's.
    readonly property int keptInChoices: 18
    readonly property int keptInHeadings: 16
    readonly property TextMetrics metrics: TextMetrics {}

    /// What is wrong, each once: a tour goes on, and says all of it at its end.
    property var wrongs: ({})
    function wrong(what, why) {
        if (!wrongs[why])
            wrongs[why] = what;
    }
    function noneWrong() {
        const all = Object.keys(wrongs).map(why => wrongs[why] + ": " + why);
        wrongs = {};
        if (all.length > 0)
            fail(all.length + " wrong\n" + all.join("\n"));
    }
    function at(what) {
        frame();
        looking.dress();
        shoot(what);
        looking.look(what);
        let scrolled = false;
        for (const one of all(main.contentItem, item => item.contentY !== undefined && item.contentHeight > item.height + 1 && item.enabled, [])) {
            one.contentY = one.contentHeight - one.height + one.originY;
            scrolled = true;
        }
        if (!scrolled)
            return;
        frame();
        shoot(what + ", scrolled");
        looking.look(what + ", scrolled");
    }
    /// A picture by day and by night, where AMBIT_SHOTS names a folder for them.
    function shoot(what) {
        if (Stage.shotsFolder === "")
            return;
        const night = Stage.app.night;
        for (const dark of [false, true]) {
            Stage.app.night = dark;
            frame();
            Stage.shoot(main, [what.replace(/\W+/g, "-"), main.width + "x" + main.height, Theme.scale * 100, Stage.app.language || "en", dark ? "night" : "day"].join("."));
        }
        Stage.app.night = night;
    }

    // --- words ----------------------------------------------------------------------------------------------------------
    function within(box, clip) {
        const x = Math.max(box.x, clip.x), y = Math.max(box.y, clip.y);
        return Qt.rect(x, y, Math.min(box.x + box.width, clip.x + clip.width) - x, Math.min(box.y + box.height, clip.y + clip.height) - y);
    }
    function isWritten(item) {
        return item.font !== undefined && item.paintedHeight !== undefined && item.text !== undefined && item.text.trim() !== "" && item.enabled;
    }
    /// Where its letters are, in its own measure.
    function letters(item) {
        const x = item.horizontalAlignment === Text.AlignHCenter ? (item.width - item.contentWidth) / 2 : item.horizontalAlignment === Text.AlignRight ? item.width - item.contentWidth : item.leftPadding;
        const y = item.verticalAlignment === Text.AlignVCenter ? (item.height - item.contentHeight) / 2 : item.topPadding;
        return Qt.rect(x, y, item.contentWidth, item.contentHeight);
    }
    function clipOf(item) {
        let clip = Qt.rect(0, 0, main.width, main.height);
        for (let up = item.parent; up; up = up.parent)
            if (up.clip)
                clip = within(up.mapToItem(main.contentItem, Qt.rect(0, 0, up.width, up.height)), clip);
        return clip;
    }
    function isScroll(item) {
        return item.contentY !== undefined && item.contentHeight !== undefined && item.interactive !== false;
    }
    function whole(item, what) {
        const say = why => wrong(what, why + ": “" + item.text + "” " + path(item));
        if (item.truncated === true)
            say("cut off");
        if (item.lineCount > 1 && item.text.includes(" ·"))
            say("a line may begin with “·”");
        if (item.wrapMode === Text.Wrap && item.lineCount > 1) {
            metrics.font = item.font;
            const kept = inChoice(item) ? looking.keptInChoices : item.Accessible.role === Accessible.Heading ? looking.keptInHeadings : looking.kept;
            for (const word of item.text.split(/[\s\u00ad\-\/]+/)) {
                metrics.text = word;
                if (word.length <= kept && metrics.advanceWidth > item.width - item.leftPadding - item.rightPadding + 0.5)
                    say("“" + word + "” broken");
            }
        }
        const box = item.mapToItem(main.contentItem, letters(item));
        if (!inCloserFigure(item) && (box.x < -0.5 || box.x + box.width > main.width + 0.5))
            say("outside the window, from " + box.x.toFixed(1) + " to " + (box.x + box.width).toFixed(1));
        // Inside what holds it: a key, a field, a frame; and what clips it, up to where it can be scrolled.
        let scrolls = false;
        for (let up = item.parent; up; up = up.parent) {
            scrolls = scrolls || isScroll(up);
            const holds = touchable(up) || field(up) || (up.clip && !isScroll(up) && !inCloserFigure(item));
            if (!holds || (up.clip && scrolls))
                continue;
            const own = item.mapToItem(up, letters(item));
            if (own.x < -1 || own.y < -2 || own.x + own.width > up.width + 1 || own.y + own.height > up.height + 2)
                say("outside " + up + ": " + own + " in " + up.width + " × " + up.height);
        }
    }
    function inChoice(item) {
        for (let up = item.parent; up; up = up.parent)
            if (up.chosen !== undefined && touchable(up))
                return item.font.bold;
        return false;
    }
    /// Keeps its place while the words move beneath it.
    function inCaution(item) {
        for (let up = item.parent; up; up = up.parent)
            if (up.warns !== undefined && up.texts !== undefined)
                return true;
        return false;
    }
    /// The figure, drawn closer, goes on behind the words over it.
    function inCloserFigure(item) {
        for (let up = item.parent; up; up = up.parent)
            if (up.zoom !== undefined && up.zoom > 1)
                return true;
        return false;
    }
    /// The figures' pad stands over the figure and its head while one types.
    function inPad(item) {
        for (let up = item.parent; up; up = up.parent)
            if (up.objectName.startsWith("pad."))
                return true;
        return false;
    }
    function apart(texts, what) {
        const boxes = texts.map(item => within(item.mapToItem(main.contentItem, letters(item)), clipOf(item)));
        for (let i = 0; i < texts.length; ++i)
            for (let j = 0; j < i; ++j) {
                if (inCaution(texts[i]) !== inCaution(texts[j]) || inCloserFigure(texts[i]) !== inCloserFigure(texts[j]) || inPad(texts[i]) !== inPad(texts[j]))
                    continue;
                const both = within(boxes[i], boxes[j]);
                // Lines may touch by what letters hang down.
                if (both.width > 3 && both.height > 5)
                    wrong(what, "“" + texts[i].text + "” over “" + texts[j].text + "” by " + both.width.toFixed(0) + " × " + both.height.toFixed(0) + " " + path(texts[i]));
            }
    }
    /// No word is cut, lies over another or outside the window.
    function allWhole(what) {
        const texts = all(main.contentItem, isWritten, []);
        for (const item of texts)
            whole(item, what);
        // What moves in front of everything for a while, and goes by a touch, covers what it covers.
        apart(texts.filter(item => item.objectName !== "problemText" && !item.text.match(/^(Close|Schließen|Fermer)$/)), what);
    }

    // --- keys -----------------------------------------------------------------------------------------------------------
    /// In the figure one touches a place, not a control: a zone is as large as its part of the aircraft. What it does has other ways:
    /// Closer, the arrow keys, the list of points, the review.
    function isPlace(item) {
        return /^(zone|stand|foundZone)\./.test(item.objectName);
    }
    function scrollOf(item) {
        let up = item.parent;
        while (up && !isScroll(up))
            up = up.parent;
        return up;
    }
    /// Each key is large enough for gloves, and in sight; or what holds it can be scrolled there, and shows it.
    function allReachable(what) {
        for (const item of all(main.contentItem, one => (touchable(one) || field(one)) && one.enabled && one.width > 0 && !isPlace(one), [])) {
            const least = item.broad === true ? Theme.key : Theme.target;
            if (item.height < least - 0.5 || item.width < Theme.target - 0.5)
                wrong(what, "too small, " + item.width.toFixed(0) + " × " + item.height.toFixed(0) + ": " + path(item));
            const scroll = scrollOf(item);
            const own = scroll ? item.mapToItem(scroll.contentItem, Qt.rect(0, 0, item.width, item.height)) : null;
            if (scroll && (own.x < -0.5 || own.y < -0.5 || own.x + own.width > scroll.width + 0.5 || own.y + own.height > Math.max(scroll.height, scroll.contentHeight) + 0.5))
                wrong(what, "can't be scrolled to, " + own + " of " + scroll.contentHeight.toFixed(0) + ": " + path(item));
            if (scroll && scroll.contentHeight > scroll.height + 1 && !all(scroll, one => one.objectName === "scrollBar", []).length)
                wrong(what, "nothing shows that there is more: " + path(item));
            let held = item;
            for (let up = scroll; up; up = scrollOf(up))
                held = up;
            if (scroll && scroll.height < Math.min(Theme.target, item.height))
                wrong(what, "scrolls in " + scroll.height.toFixed(0) + " only: " + path(item));
            const box = held.mapToItem(main.contentItem, Qt.rect(0, 0, held.width, held.height)), clip = clipOf(held);
            const inside = within(box, clip);
            if (inside.width < box.width - 1 || inside.height < box.height - 1)
                wrong(what, "not whole in sight, " + box + ": " + path(item));
        }
    }
}
