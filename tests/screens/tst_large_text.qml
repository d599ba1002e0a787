// Text at 200 %, on the smallest phone: nothing is cut or broken within a word of common length, nothing lies over something else or
// outside the window, in every screen that can be opened.
import QtQuick
import QtTest
import Ambit
import AmbitTest

TourCase {
    id: test

    name: "LargeText"

    property int looked: 0
    /// Letters of a word that has to stay whole: a longer one may not fit between the edges of such a screen.
    readonly property int kept: 8
    readonly property TextMetrics metrics: TextMetrics {}

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
        return item.contentY !== undefined && item.contentHeight !== undefined;
    }
    function whole(item, what) {
        const say = why => wrong(what, why + ": “" + item.text + "” " + path(item));
        if (item.truncated === true)
            say("cut off");
        if (item.wrapMode === Text.Wrap && item.lineCount > 1) {
            metrics.font = item.font;
            for (const word of item.text.split(/[\s\u00ad\-\/]+/)) {
                metrics.text = word;
                if (word.length <= kept && metrics.advanceWidth > item.width - item.leftPadding - item.rightPadding + 0.5)
                    say("“" + word + "” broken");
            }
        }
        const box = item.mapToItem(main.contentItem, letters(item));
        if (box.x < -0.5 || box.x + box.width > main.width + 0.5)
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
    function test_whole_data() {
        return [
            {
                tag: "smallest phone",
                width: 360,
                height: 740
            },
            {
                tag: "smallest phone, German",
                width: 360,
                height: 740,
                language: "de"
            },
            {
                tag: "smallest phone, French",
                width: 360,
                height: 740,
                language: "fr"
            },
            {
                tag: "phone on its side",
                width: 844,
                height: 390
            },
            {
                tag: "phone on its side, German",
                width: 844,
                height: 390,
                language: "de"
            },
            {
                tag: "phone on its side, French",
                width: 844,
                height: 390,
                language: "fr"
            },
            {
                tag: "tablet",
                width: 1180,
                height: 820
            }
        ];
    }
    function test_whole(data) {
        open(data.width, data.height, data.language);
        test.looked = 0;
        Theme.scale = 2;
        test.look = what => {
            const texts = all(main.contentItem, isWritten, []);
            for (const item of texts)
                whole(item, what);
            // What moves in front of everything for a while, and goes by a touch, covers what it covers.
            apart(texts.filter(item => item.objectName !== "problemText" && !item.text.match(/^(Close|Schließen|Fermer)$/)), what);
            ++test.looked;
        };
        wholeTour();
        verify(test.looked > 50, "screens looked at: " + test.looked);
        Theme.scale = 1;
    }
}
