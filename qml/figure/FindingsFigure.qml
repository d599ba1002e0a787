// The aircraft from above, nose up, with where findings were. A touch chooses a zone.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Shapes
import Ambit
import "geometry.js" as Geometry

FocusScope {
    id: view

    required property ZoneFindings findings
    property string chosen: ""
    /// Of its height, what is in sight where it can be scrolled away.
    property real seenFrom: 0
    property real seenTo: height
    readonly property rect box: findings.bounds
    readonly property real perMetre: box.width > 0 ? Math.min((width - 24) / box.width, (height - 24) / box.height) : 1
    readonly property point origin: Qt.point(width / 2 - (box.x + box.width / 2) * perMetre, height / 2 - (box.y + box.height / 2) * perMetre)

    signal zoneAsked(string zoneId)

    function move(by: int) {
        const count = zones.count;
        let at = 0;
        for (let i = 0; i < count; ++i)
            if ((zones.itemAt(i) as FoundZone).zoneId === view.chosen)
                at = i + by;
        view.zoneAsked((zones.itemAt((at + count) % count) as FoundZone).zoneId);
    }
    function touch(x: real, y: real) {
        for (let i = zones.count - 1; i >= 0; --i) {
            const one = zones.itemAt(i) as FoundZone;
            if (one.holds(x - one.x, y - one.y)) {
                view.zoneAsked(one.zoneId);
                return;
            }
        }
    }

    function shows(y: real, height: real): bool {
        return y + height > view.seenFrom && y < view.seenTo;
    }

    clip: true
    activeFocusOnTab: true
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("The figure: the aircraft from above, nose up, with the number of findings in each zone")
    Accessible.focusable: true
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Right || event.key === Qt.Key_Down)
            view.move(1);
        else if (event.key === Qt.Key_Left || event.key === Qt.Key_Up)
            view.move(-1);
        else
            return;
        event.accepted = true;
    }

    Repeater {
        model: view.findings.parts
        Shape {
            id: part
            required property var modelData
            readonly property string kind: modelData.kind
            // The software renderer draws a shape whose clip is empty: keep away what is out of sight.
            readonly property rect box: Geometry.bounds(modelData.outline)
            visible: view.shows(box.y * view.perMetre + view.origin.y, box.height * view.perMetre)
            anchors.fill: parent
            Accessible.ignored: true
            ShapePath {
                fillColor: part.kind === "glass" ? Theme.glass : part.kind === "rotor" || part.kind === "propeller" ? Theme.blade : part.kind === "gear" ? Theme.drawn : Theme.body
                strokeColor: Theme.drawn
                strokeWidth: part.kind === "gear" || part.kind === "tread" ? 1 : 1.4
                joinStyle: ShapePath.RoundJoin
                PathSvg {
                    path: Geometry.svg(part.modelData.outline, view.perMetre, view.origin.x, view.origin.y, true)
                }
            }
        }
    }
    Repeater {
        id: zones
        model: view.findings.zones
        FoundZone {
            perMetre: view.perMetre
            origin: view.origin
            parts: view.findings.parts
            chosen: zoneId === view.chosen
            inView: view.shows(y, height)
            onAsked: view.zoneAsked(zoneId)
        }
    }
    FocusRing {
        of: view
        anchors.margins: 2
    }
    TapHandler {
        gesturePolicy: TapHandler.WithinBounds
        onTapped: eventPoint => view.touch(eventPoint.position.x, eventPoint.position.y)
    }
}
