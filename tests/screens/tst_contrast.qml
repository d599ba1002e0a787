// Every colour that a text or a mark is drawn with, against what is really behind it, in every screen that can be opened, by day and by
// night. Contrast and relative luminance as WCAG 2.2 defines them (from memory). A colour that isn't the theme's fails.
import QtQuick
import QtTest
import Ambit
import AmbitTest

TourCase {
    id: test

    name: "Contrast"

    // What bears meaning, what is behind it, and what only parts the page: nothing is lost where that isn't seen.
    readonly property var marks: ["ink", "soft", "way", "solidInk", "caution", "warning", "drawn", "edge"]
    readonly property var grounds: ["ground", "panel", "wash", "pressed", "solid", "body", "glass", "blade", "shade"]
    readonly property var parting: ["line"]
    readonly property var fills: ["settled", "found"]
    /// Adaptation to the dark (common practice, no source): nothing brighter than about a third of white, the largest areas darker than
    /// 2 % of it, and on average a screen is below 4 %.
    readonly property real brightest: 0.35
    readonly property real brightestGround: 0.02
    readonly property real brightestScreen: 0.04

    property real least: 7
    property var painted: []
    property var worst: ({})
    property int looked: 0

    function nameOf(colour) {
        const text = String(colour);
        for (const name of marks.concat(grounds, parting, fills))
            if (String(Theme[name]) === text)
                return name;
        return "";
    }
    function known(colour, item, what) {
        const name = nameOf(colour);
        if (name === "")
            wrong(what, "the theme doesn't know " + colour + " of " + path(item));
        return name;
    }
    function clear(colour) {
        return Qt.rgba(colour.r, colour.g, colour.b, colour.a).a === 0;
    }
    function mixed(over, under, opacity) {
        const a = over.a * opacity;
        return Qt.rgba(over.r * a + under.r * (1 - a), over.g * a + under.g * (1 - a), over.b * a + under.b * (1 - a), 1);
    }
    /// What is painted at this place by now.
    function behind(x, y) {
        for (let i = painted.length - 1; i >= 0; --i) {
            const one = painted[i].box;
            if (x >= one.x && y >= one.y && x < one.x + one.width && y < one.y + one.height)
                return painted[i].colour;
        }
        return null;
    }
    function stands(colour, ground, item, what) {
        if (String(colour) === String(ground))
            return; // one mark of several pieces
        const ratio = Theme.contrast(colour, ground);
        const pair = nameOf(colour) + " on " + (nameOf(ground) || ground);
        if (worst[pair] === undefined || ratio < worst[pair])
            worst[pair] = ratio;
        if (ratio < least - 0.005)
            wrong(what, pair + " " + ratio.toFixed(2) + " of " + path(item));
    }
    function isRectangle(item) {
        return item.radius !== undefined && item.border !== undefined && item.color !== undefined;
    }
    function isDrawnText(item) {
        return item.font !== undefined && item.color !== undefined && item.text !== undefined && item.text !== "" && (item.paintedHeight !== undefined || item.cursorPosition !== undefined);
    }
    function draw(item, what, opacity, clip) {
        const box = within(item.mapToItem(main.contentItem, Qt.rect(0, 0, item.width, item.height)), clip);
        if (box.width <= 0.5 || box.height <= 0.5)
            return;
        const x = box.x + box.width / 2, y = box.y + box.height / 2;
        if (isRectangle(item)) {
            const under = behind(x, y);
            // One that was never given is black, and isn't drawn.
            if (item.border.width > 0 && !clear(item.border.color) && String(item.border.color) !== "#000000") {
                const name = known(item.border.color, item, what);
                if (item.enabled && under && marks.includes(name) && String(item.border.color) !== String(item.color))
                    stands(item.border.color, clear(item.color) ? under : item.color, item, what);
                if (item.enabled && under && marks.includes(name))
                    stands(item.border.color, under, item, what);
            }
            if (clear(item.color))
                return;
            known(item.color, item, what);
            // A colour that is both, as white is by day, is a ground where it fills.
            if (item.enabled && under && !grounds.concat(parting).some(name => String(Theme[name]) === String(item.color)))
                stands(item.color, under, item, what);
            painted.push({
                box: box,
                colour: under && (opacity < 1 || item.color.a < 1) ? mixed(item.color, under, opacity) : item.color
            });
        } else if (isDrawnText(item)) {
            known(item.color, item, what);
            const under = behind(x, y);
            if (item.enabled && under)
                stands(item.color, under, item, what);
        } else if (item.containsMode !== undefined && item.data !== undefined) {
            for (const path of Array.from(item.data))
                if (path && path.fillColor !== undefined)
                    for (const colour of path.strokeWidth > 0 ? [path.fillColor, path.strokeColor] : [path.fillColor])
                        if (!clear(colour))
                            known(colour, item, what);
        }
    }
    /// In the order in which it is painted.
    function paint(item, what, opacity, clip) {
        if (!item.visible || item.opacity === 0)
            return;
        const shown = opacity * item.opacity;
        let inside = clip;
        if (item.clip)
            inside = within(item.mapToItem(main.contentItem, Qt.rect(0, 0, item.width, item.height)), clip);
        // The engine's sort mixes equals.
        const children = Array.from(item.children).map((child, at) => ({
                    child: child,
                    at: at
                })).sort((a, b) => a.child.z - b.child.z || a.at - b.at).map(one => one.child);
        for (const child of children.filter(child => child.z < 0))
            paint(child, what, shown, inside);
        draw(item, what, shown, clip);
        for (const child of children.filter(child => child.z >= 0))
            paint(child, what, shown, inside);
    }

    function test_every_data() {
        return [
            {
                tag: "phone",
                width: 390,
                height: 844
            },
            {
                tag: "tablet",
                width: 1180,
                height: 820
            }
        ];
    }
    function test_every(data) {
        open(data.width, data.height);
        test.worst = {};
        test.looked = 0;
        test.look = what => {
            for (const night of [true, false]) {
                Stage.app.night = night;
                test.least = night ? 4.5 : 7;
                test.painted = [
                    {
                        box: Qt.rect(0, 0, main.width, main.height),
                        colour: main.color
                    }
                ];
                paint(main.contentItem, what + (night ? " at night" : " by day"), 1, Qt.rect(0, 0, main.width, main.height));
                ++test.looked;
                if (!night)
                    continue;
                const light = Stage.light(main);
                if (light.most > brightest)
                    wrong(what, "as bright as " + light.most.toFixed(3));
                // A code is as bright as a camera needs it, and goes by a touch.
                if (light.mean > brightestScreen && !seen("followCode"))
                    wrong(what, "on average " + light.mean.toFixed(4));
            }
        };
        wholeTour();
        verify(test.looked > 100, "screens looked at: " + test.looked);
        const pairs = Object.keys(test.worst).sort();
        verify(pairs.length > 12, pairs.join(", "));
    }
    /// The figure is made of shapes, not of boxes: all that can lie on each other, by the theme.
    function test_figure_data() {
        return [
            {
                tag: "day",
                night: false,
                least: 7
            },
            {
                tag: "night",
                night: true,
                least: 4.5
            }
        ];
    }
    function test_figure(data) {
        Theme.night = data.night;
        for (const mark of ["way", "drawn", "edge", "caution", "warning"])
            for (const ground of ["ground", "panel", "body", "glass", "blade"]) {
                const ratio = Theme.contrast(Theme[mark], Theme[ground]);
                verify(ratio >= data.least, mark + " on " + ground + ": " + ratio.toFixed(2));
            }
        // Filled against hollow: areas, told apart by less than a line; WCAG 2.2, 1.4.11 (from memory): 3:1.
        for (const fill of fills)
            for (const ground of ["body", "glass", "blade"]) {
                const ratio = Theme.contrast(mixed(Theme[fill], Theme[ground], 1), Theme[ground]);
                verify(ratio >= 3, fill + " on " + ground + ": " + ratio.toFixed(2));
            }
        Theme.night = false;
    }
    function test_nightIsDark() {
        Theme.night = true;
        for (const name of marks.concat(fills, parting)) {
            verify(Theme.luminance(Theme[name]) <= brightest, name);
            verify(Theme[name].b <= Theme[name].r, name + " isn't blue");
        }
        for (const name of grounds)
            verify(Theme.luminance(Theme[name]) <= brightestGround, name + ": " + Theme.luminance(Theme[name]).toFixed(4));
        Theme.night = false;
    }
    /// Nothing of the theme's colours is forgotten here.
    function test_allAreKnown() {
        const listed = marks.concat(grounds, parting, fills);
        for (const name of Object.keys(Theme))
            if (typeof Theme[name] === "object" && Theme[name] !== null && Theme[name].hslHue !== undefined)
                verify(listed.includes(name), name);
    }
}
