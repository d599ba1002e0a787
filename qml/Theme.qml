pragma Singleton

// What everything on the screen is made of: colours by day and by night, sizes in millimetres, text.
// Every text and mark stands out from what is behind it by 7:1 in the sun and 4.5:1 at night, areas of the figure from each other by
// 3:1 (tests/screens/tst_contrast.qml). By night nothing is brighter than about a third of white and nothing is blue, so that eyes stay
// used to the dark.
// Red and amber are for warning and caution only (14 CFR 27.1322).
import QtQuick

QtObject {
    id: theme

    property bool night: false
    /// 1 to 2: the person's choice of text size.
    property real scale: 1
    /// Logical pixels a millimetre, as the screen tells; 0: it can't be believed.
    property real density: 0
    /// What the thumb reaches stands on the left.
    property bool leftHanded: false
    /// A keyboard has been used: keys show their letters.
    property bool keyboard: false

    /// What is usual for a phone where the screen tells nothing or nonsense: no screen has 600 dots an inch that the system
    /// doesn't make up for.
    readonly property real believed: density < 1 || density > 24 ? 6.3 : density
    readonly property real pixelsPerMm: Math.min(7, Math.max(4.5, believed))
    /// How much larger all must be drawn on a screen finer than that: pixels of the design are never smaller than 1/7 mm.
    readonly property real enlargement: Math.max(1, believed / 7)
    readonly property real target: mm(12)
    readonly property real key: mm(18)
    /// The measure of every gap.
    readonly property int gap: 8
    readonly property int margin: 16
    readonly property int corner: 8

    readonly property color ground: night ? "#0b0908" : "#f7f6f2"
    readonly property color panel: night ? "#13100d" : "#ffffff"
    readonly property color ink: night ? "#a8916f" : "#14181c"
    readonly property color soft: night ? "#9d8868" : "#3f4850"
    readonly property color line: night ? "#322b22" : "#dadbdb"
    /// The way round, what is next, and what leads somewhere.
    readonly property color way: night ? "#b39b78" : "#224372"
    readonly property color wash: night ? "#1b1611" : "#ecf0f6"
    /// The one dark key, and what is written on it.
    readonly property color solid: night ? "#2a231a" : "#14181c"
    readonly property color solidInk: night ? "#b39b78" : "#ffffff"
    /// Laid over what waits under a sheet.
    readonly property color shade: night ? "#000000" : "#14181c"
    readonly property color pressed: night ? "#251d14" : "#dfe5ee"
    readonly property color caution: night ? "#bd7a16" : "#693d00"
    readonly property color warning: night ? "#e4604b" : "#8b1a14"

    // The figure.
    readonly property color body: night ? "#1a1612" : "#ebeae5"
    readonly property color glass: night ? "#221d17" : "#dde1e4"
    readonly property color blade: night ? "#1e1914" : "#e2e4e5"
    readonly property color drawn: night ? "#9a8464" : "#20262b"
    // Laid over the parts, so that they show through.
    readonly property color settled: night ? "#cc927f62" : "#b4465662"
    readonly property color found: night ? "#ccac7420" : "#d0905d10"
    readonly property color edge: night ? "#9a8464" : "#40474d"

    readonly property string family: "B612"
    readonly property string monospace: "B612 Mono"
    readonly property int small: text(14)
    readonly property int normal: text(16)
    readonly property int large: text(18)
    readonly property int title: text(22)
    readonly property int huge: text(26)

    /// How wide a bold letter of ours is, of its height.
    readonly property real letter: 0.58

    function mm(length: real): real {
        return Math.ceil(length * theme.pixelsPerMm);
    }
    function text(pixels: real): int {
        return Math.round(pixels * Math.min(2, Math.max(1, theme.scale)));
    }
    /// Of a mark beside words. Half as fast as the words grow: beside large ones there is little room.
    function mark(pixels: real): int {
        return Math.round(pixels * (1 + Math.min(2, Math.max(1, theme.scale))) / 2);
    }
    /// The size at which no word of the text is broken. Where even our normal size is too large for one, the word is broken. A width
    /// that isn't known yet asks for nothing.
    function fitting(text: string, width: real, size: int): int {
        if (width <= 0)
            return size;
        const longest = text.split(/[\s\u00AD\-\/]+/).reduce((most, word) => Math.max(most, word.length), 1);
        return Math.min(size, Math.max(theme.normal, Math.floor(width / (longest * theme.letter))));
    }
    /// The same where a word may not be broken at all: large text gives way, down to what is read at 100 %.
    function giving(text: string, width: real, size: int): int {
        if (width <= 0)
            return size;
        const longest = text.split(/[\s\u00AD\-\/]+/).reduce((most, word) => Math.max(most, word.length), 1);
        return Math.min(size, Math.max(16, Math.floor(width / (longest * theme.letter))));
    }
    function nextScale() {
        theme.scale = theme.scale >= 2 ? 1 : theme.scale + 0.25;
    }
    /// WCAG 2.2: relative luminance and contrast.
    function luminance(colour: color): real {
        const part = c => c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        return 0.2126 * part(colour.r) + 0.7152 * part(colour.g) + 0.0722 * part(colour.b);
    }
    function contrast(a: color, b: color): real {
        const lighter = Math.max(luminance(a), luminance(b)), darker = Math.min(luminance(a), luminance(b));
        return (lighter + 0.05) / (darker + 0.05);
    }
}
