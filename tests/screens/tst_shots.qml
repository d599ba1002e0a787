// Every screen and sheet as it looks, for people to look at: phone and tablet, by day and by night, text at 100 and 200 %. Taken where
// AMBIT_SHOTS names a folder; without one the German phone alone is walked through, at 200 %, and nothing may be cut or out of reach.
import QtQuick
import QtTest
import Ambit
import AmbitTest

FurtherCase {
    id: test

    name: "Shots"

    property int looked: 0

    function test_further_data() {
        const rows = [];
        for (const size of [sizes[0], sizes[2]])
            for (const scale of [2, 1])
                for (const language of ["de", "fr"])
                    rows.push({
                        tag: size.tag + " " + scale * 100 + " " + language,
                        width: size.width,
                        height: size.height,
                        scale: scale,
                        language: language
                    });
        return Stage.shotsFolder === "" ? rows.slice(0, 1) : rows;
    }
    function test_further(data) {
        begin(data);
        furtherTour();
        verify(test.looked > 50, "screens looked at: " + test.looked);
    }
    function test_tour_data() {
        return test_further_data();
    }
    function test_tour(data) {
        if (Stage.shotsFolder === "")
            skip("tst_large_text walks it, too");
        begin(data);
        wholeTour();
    }
    function begin(data) {
        open(data.width, data.height, data.language);
        Theme.scale = data.scale;
        frame();
        test.looked = 0;
        test.look = what => {
            allWhole(what);
            allReachable(what);
            ++test.looked;
        };
    }
    function cleanup() {
        Theme.scale = 1;
        if (main) {
            main.destroy();
            main = null;
            wait(0);
        }
        Stage.fresh();
    }
}
