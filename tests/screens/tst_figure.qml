// The figure: a touch goes to the zone under it, and to no other.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "Figure"

    SignalSpy {
        id: asked
        signalName: "zoneAsked"
    }
    SignalSpy {
        id: stood
        signalName: "standAsked"
    }

    function test_zones_data() {
        return [
            {
                tag: "helicopter, phone",
                registration: "OX-DEMO",
                width: 390,
                height: 844
            },
            {
                tag: "helicopter, tablet",
                registration: "OX-DEMO",
                width: 1180,
                height: 820
            },
            {
                tag: "aeroplane, phone",
                registration: "OX-WING",
                width: 390,
                height: 844
            },
            {
                tag: "aeroplane, tablet",
                registration: "OX-WING",
                width: 1180,
                height: 820
            }
        ];
    }
    function test_zones(data) {
        open(data.width, data.height);
        beginRound(data.registration, "daily");
        const zones = Stage.app.round.figure.zones;
        const names = [];
        for (let i = 0; i < zones.count; ++i)
            if (zones.get(i).look !== "none")
                names.push(zones.get(i).zoneId);
        verify(names.length > 10);
        for (const name of names) {
            const figure = see("figure");
            asked.target = figure;
            asked.clear();
            touch("zone." + name);
            compare(asked.count, 1, name);
            compare(asked.signalArguments[0][0], name);
        }
    }
    function test_stands() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        stood.target = see("figure");
        stood.clear();
        touch("stand.left-boom");
        compare(stood.count, 1);
        compare(Stage.app.round.standId, "left-boom");
    }
    function test_closer() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        const figure = see("figure");
        touch("figureZoomKey");
        verify(figure.zoom > 1);
        touch("keyHere");
        compare(Stage.app.problem, "");
        touch("figureZoomKey");
        compare(figure.zoom, 1);
    }
    function test_states() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo(""));
        const zones = Stage.app.round.figure.zones;
        for (let i = 0; i < zones.count; ++i) {
            const row = zones.get(i);
            compare(row.look, "sound", row.zoneId);
            verify(see("zone." + row.zoneId).Accessible.description.includes("sound"));
        }
    }
}
