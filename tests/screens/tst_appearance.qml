// Sizes and contrasts as the design promises, by day and by night.
import QtQuick
import QtTest
import Ambit

TestCase {
    name: "Appearance"

    function cleanup() {
        Theme.night = false;
    }
    function test_sizes() {
        compare(Theme.target, Math.ceil(12 * 6.3));
        compare(Theme.key, Math.ceil(18 * 6.3));
        verify(Theme.small >= 14);
        Theme.density = 0.2;
        compare(Theme.target, Math.ceil(12 * 6.3));
        Theme.density = 20;
        compare(Theme.target, 84);
        Theme.density = 0;
    }
    function test_contrast_data() {
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
    function test_contrast(data) {
        Theme.night = data.night;
        const grounds = ["ground", "panel", "wash"];
        for (const ink of ["ink", "soft", "way"])
            for (const ground of grounds) {
                const ratio = Theme.contrast(Theme[ink], Theme[ground]);
                verify(ratio >= data.least, ink + " on " + ground + ": " + ratio.toFixed(2));
            }
        for (const pair of [["solidInk", "solid"], ["ink", "pressed"]]) {
            const ratio = Theme.contrast(Theme[pair[0]], Theme[pair[1]]);
            verify(ratio >= data.least, pair[0] + " on " + pair[1] + ": " + ratio.toFixed(2));
        }
        // What isn't text: frames and corners.
        for (const mark of ["caution", "warning", "drawn", "way"])
            for (const ground of ["ground", "panel"]) {
                const ratio = Theme.contrast(Theme[mark], Theme[ground]);
                verify(ratio >= 2.9, mark + " on " + ground + ": " + ratio.toFixed(2));
            }
    }
    function test_nightSparesTheEyes() {
        Theme.night = true;
        for (const name of ["ground", "panel", "ink", "soft", "line", "way", "wash", "solid", "solidInk", "pressed", "caution", "warning", "body", "glass", "blade", "drawn", "settled", "found", "edge"]) {
            const colour = Theme[name];
            verify(Theme.luminance(colour) < 0.35, name);
            verify(colour.r >= colour.g && colour.g >= colour.b || name === "warning", name + " is warm");
        }
    }
}
