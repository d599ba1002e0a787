// How large what is touched is, in millimetres, in every screen that can be opened, on screens of three densities: measured on the window,
// as a finger meets it. DESIGN.md, section 6: targets 12 mm, keys 18 mm.
import QtQuick
import QtTest
import Ambit
import AmbitTest

TourCase {
    id: test

    name: "Targets"

    property int measured: 0
    property int keys: 0

    function isTarget(item) {
        const roles = [Accessible.Button, Accessible.RadioButton, Accessible.CheckBox, Accessible.EditableText, Accessible.PageTab, Accessible.Slider];
        const mouseArea = item.pressedButtons !== undefined && item.containsMouse !== undefined;
        return item.enabled && item.width > 0 && !isPlace(item) && (touchable(item) || field(item) || mouseArea || roles.includes(item.Accessible.role));
    }
    function measure(item, what, density) {
        const box = item.mapToItem(main.contentItem, Qt.rect(0, 0, item.width, item.height));
        const wide = box.width / density, high = box.height / density;
        ++test.measured;
        if (wide < 11.99 || high < 11.99)
            wrong(what, wide.toFixed(2) + " × " + high.toFixed(2) + " mm, " + path(item));
        if (item.broad === true) {
            ++test.keys;
            if (high < 17.99 || wide < 17.99)
                wrong(what, "a key of " + wide.toFixed(2) + " × " + high.toFixed(2) + " mm, " + path(item));
        }
    }
    /// A phone's glass, 62 × 134 mm, of three densities that the system doesn't make up for, as a desktop's screen may have them. Where
    /// the system does (two and three of the screen's dots for one of ours), a phone of 320 or 480 dots an inch is the first of them. And
    /// a desktop's window.
    readonly property var glasses: [160, 320, 480].map(dots => ({
                dots: dots,
                width: Math.round(62 * dots / 25.4),
                height: Math.round(134 * dots / 25.4)
            })).concat([
        {
            dots: 96,
            width: 1180,
            height: 820
        }
    ])
    function become(width, height, density) {
        Theme.density = density;
        main.width = width;
        main.height = height;
        frame();
    }
    function test_millimetres() {
        open(390, 844);
        test.measured = test.keys = 0;
        test.look = what => {
            if (what.endsWith(", scrolled"))
                return; // what is out of sight has been measured already
            for (const glass of glasses) {
                become(glass.width, glass.height, glass.dots / 25.4);
                for (const item of all(main.contentItem, isTarget, []))
                    measure(item, what + " at " + glass.dots + " dpi", glass.dots / 25.4);
            }
            become(390, 844, 0);
        };
        wholeTour();
        verify(test.measured > 1500, "measured: " + test.measured);
        verify(test.keys > 150, "keys: " + test.keys);
    }
    /// Never so large that less than the smallest phone is left, whatever the screen says of itself.
    function test_aWindowKeepsItsRoom() {
        open(400, 380);
        Theme.density = 19;
        frame();
        const room = see("screenAircraft");
        verify(room.width >= 360 - 0.5);
        Theme.density = 500;
        compare(Theme.pixelsPerMm, 6.3);
        compare(Theme.enlargement, 1);
        Theme.density = 0;
    }
    function cleanup() {
        Theme.density = 0;
        if (main) {
            main.destroy();
            main = null;
            wait(0);
        }
        Stage.fresh();
    }
}
