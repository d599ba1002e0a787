// Text at 200 %, on the smallest phone: nothing is cut, nothing lies over something else or outside the window, in every screen that can
// be opened.
import QtQuick
import QtTest
import Ambit
import AmbitTest

TourCase {
    id: test

    name: "LargeText"

    property int looked: 0

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
                tag: "phone, German", // wide enough for a head that stays, were its words shorter
                width: 390,
                height: 844,
                language: "de"
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
            allWhole(what);
            ++test.looked;
        };
        wholeTour();
        verify(test.looked > 50, "screens looked at: " + test.looked);
        Theme.scale = 1;
    }
}
