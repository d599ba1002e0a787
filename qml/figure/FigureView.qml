// The aircraft from above, nose up: its parts, the zones with their state, the stands, the way walked and the way ahead.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Shapes
import Ambit
import "geometry.js" as Geometry

FocusScope {
    id: view

    required property FigureModel figure
    property string nextStand: ""
    property real topInset: 20
    property real bottomInset: 20
    property real sideInset: 22
    /// Only drawn, without the zones: nothing in it is touched.
    property bool still: false
    /// Drawn with its zones, and bears no names: nothing in it is touched.
    property bool quiet: false
    readonly property bool touchable: !still && !quiet
    /// Of its height, what is in sight where it can be scrolled away.
    property real seenFrom: 0
    property real seenTo: height
    /// Metres of ground shown beside the aircraft.
    property real around: 0
    readonly property rect box: Qt.rect(figure.bounds.x - around, figure.bounds.y - around, figure.bounds.width + 2 * around, figure.bounds.height + 2 * around)
    /// 1: all of it; more: closer, with `middle` (metres) in the middle.
    property real zoom: 1
    property point middle: Qt.point(box.x + box.width / 2, box.y + box.height / 2)
    readonly property real fit: Math.max(4, Math.min((width - 2 * sideInset) / box.width, (height - topInset - bottomInset) / box.height))
    readonly property real perMetre: fit * zoom
    readonly property point centre: Qt.point(width / 2, topInset + (height - topInset - bottomInset) / 2)
    readonly property point origin: zoom > 1 ? Qt.point(centre.x - middle.x * perMetre, centre.y - middle.y * perMetre) : Qt.point(centre.x - (box.x + box.width / 2) * perMetre, centre.y - (box.y + box.height / 2) * perMetre)
    /// The zone that the keyboard is on.
    property int at: -1

    signal zoneAsked(string zoneId)
    signal standAsked(string standId)

    objectName: touchable ? "figure" : ""
    activeFocusOnTab: touchable
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("The figure: the aircraft from above, nose up")
    Accessible.description: at < 0 ? qsTr("Arrow keys choose a zone, Enter goes there") : ""
    Accessible.focusable: true

    function move(by: int) {
        const count = zones.count;
        for (let i = 1; i <= count; ++i) {
            const next = ((view.at < 0 ? (by > 0 ? -1 : count) : view.at) + by * i + count * 2) % count;
            if ((zones.itemAt(next) as ZoneShape).used) {
                view.at = next;
                return;
            }
        }
    }
    /// What a finger at this place means: the stand under it, else the zone, else a stand close by.
    function touch(x: real, y: real) {
        let near = null, least = Infinity;
        for (let i = 0; i < stands.count; ++i) {
            const one = stands.itemAt(i) as StandMark;
            const away = Math.hypot(one.x + one.width / 2 - x, one.y + one.height / 2 - y);
            if (away < least) {
                least = away;
                near = one;
            }
        }
        if (near && least <= near.width / 2 + 4) {
            view.standAsked(near.standId);
            return;
        }
        for (let i = zones.count - 1; i >= 0; --i) {
            const one = zones.itemAt(i) as ZoneShape;
            if (one.used && one.holds(x - one.x, y - one.y)) {
                view.zoneAsked(one.zoneId);
                return;
            }
        }
        if (near && least <= Theme.target / 2)
            view.standAsked(near.standId);
    }

    /// Closer to what is on the card, or all of it again.
    function toggleZoom() {
        view.zoom = view.zoom > 1 ? 1 : Math.max(1.5, 75 / view.fit);
        view.follow();
    }
    function follow() {
        if (view.figure.reaching) {
            view.middle = Qt.point((view.figure.reachFrom.x + view.figure.reachTo.x) / 2, (view.figure.reachFrom.y + view.figure.reachTo.y) / 2);
            return;
        }
        for (let i = 0; i < stands.count; ++i) {
            const one = stands.itemAt(i) as StandMark;
            if (one && (one.next || (one.here && view.nextStand === "")))
                view.middle = Qt.point(one.placeX, one.placeY);
        }
    }
    function shows(x: real, y: real, width: real, height: real): bool {
        return x + width > 0 && y + height > view.seenFrom && x < view.width && y < view.seenTo;
    }

    clip: true
    onNextStandChanged: follow()
    Connections {
        target: view.figure
        function onReachChanged() {
            view.follow();
        }
    }
    onActiveFocusChanged: if (!activeFocus)
        at = -1
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Right || event.key === Qt.Key_Down)
            view.move(1);
        else if (event.key === Qt.Key_Left || event.key === Qt.Key_Up)
            view.move(-1);
        else if (view.at >= 0 && (event.key === Qt.Key_Return || event.key === Qt.Key_Enter || event.key === Qt.Key_Space))
            view.zoneAsked((zones.itemAt(view.at) as ZoneShape).zoneId);
        else
            return;
        event.accepted = true;
    }

    Repeater {
        model: view.figure.parts
        Shape {
            id: part
            required property var modelData
            readonly property string kind: modelData.kind
            readonly property bool thin: kind === "gear" || kind === "tread"
            // The software renderer draws a shape whose clip is empty: keep away what is out of sight.
            readonly property rect box: Geometry.bounds(modelData.outline)
            visible: view.shows(box.x * view.perMetre + view.origin.x, box.y * view.perMetre + view.origin.y, box.width * view.perMetre, box.height * view.perMetre)
            anchors.fill: parent
            Accessible.ignored: true
            ShapePath {
                fillColor: part.kind === "glass" ? Theme.glass : part.kind === "rotor" || part.kind === "propeller" ? Theme.blade : part.kind === "gear" ? Theme.drawn : Theme.body
                strokeColor: Theme.drawn
                strokeWidth: part.thin ? 1 : 1.4
                joinStyle: ShapePath.RoundJoin
                PathSvg {
                    path: Geometry.svg(part.modelData.outline, view.perMetre, view.origin.x, view.origin.y, true)
                }
            }
        }
    }
    Repeater {
        id: zones
        model: view.still ? null : view.figure.zones
        ZoneShape {
            required property int index
            objectName: view.quiet ? "" : "zone." + zoneId
            touchable: view.touchable
            perMetre: view.perMetre
            origin: view.origin
            away: view.standPlaces
            clear: 22 / view.perMetre
            marked: view.activeFocus && index === view.at
            parts: view.figure.parts
            inView: view.shows(x, y, width, height)
            onAsked: view.zoneAsked(zoneId)
        }
    }
    Repeater {
        model: view.figure.marked
        MarkedShape {
            worded: !view.quiet
            required property var modelData
            outline: modelData.outline
            why: modelData.why
            seen: Qt.size(view.width, view.height)
            perMetre: view.perMetre
            origin: view.origin
            visible: view.shows(x, y, width, height)
        }
    }
    Shape {
        anchors.fill: parent
        visible: !view.still
        Accessible.ignored: true
        ShapePath {
            strokeColor: Theme.way
            strokeWidth: 3
            fillColor: "transparent"
            joinStyle: ShapePath.RoundJoin
            capStyle: ShapePath.RoundCap
            PathSvg {
                path: Geometry.svgAll(view.figure.wayDone, view.perMetre, view.origin.x, view.origin.y, false)
            }
        }
        ShapePath {
            strokeColor: Theme.way
            strokeWidth: 2.4
            fillColor: "transparent"
            strokeStyle: ShapePath.DashLine
            dashPattern: [0.1, 2.6]
            capStyle: ShapePath.RoundCap
            PathSvg {
                path: Geometry.svgAll(view.figure.wayAhead, view.perMetre, view.origin.x, view.origin.y, false)
            }
        }
    }
    Shape {
        id: reach
        readonly property point from: Qt.point(view.figure.reachFrom.x * view.perMetre + view.origin.x, view.figure.reachFrom.y * view.perMetre + view.origin.y)
        readonly property point to: Qt.point(view.figure.reachTo.x * view.perMetre + view.origin.x, view.figure.reachTo.y * view.perMetre + view.origin.y)
        anchors.fill: parent
        visible: view.figure.reaching && !view.still
        Accessible.ignored: true
        ShapePath {
            strokeColor: Theme.way
            strokeWidth: 3
            fillColor: "transparent"
            startX: reach.from.x
            startY: reach.from.y
            PathLine {
                x: reach.to.x + (reach.from.x - reach.to.x) * 0.1
                y: reach.to.y + (reach.from.y - reach.to.y) * 0.1
            }
        }
        ShapePath {
            strokeWidth: -1
            fillColor: Theme.way
            PathSvg {
                path: Geometry.arrowHead(reach.from, reach.to, 15)
            }
        }
    }
    property var standPlaces: []
    function gatherStands() {
        const places = [];
        for (let i = 0; i < stands.count; ++i) {
            const one = stands.itemAt(i) as StandMark;
            if (one)
                places.push(Qt.point(one.placeX, one.placeY));
        }
        standPlaces = places;
    }
    Repeater {
        id: stands
        model: view.figure.stands
        onCountChanged: view.gatherStands()
        StandMark {
            perMetre: view.perMetre
            origin: view.origin
            objectName: view.touchable ? "stand." + standId : ""
            touchable: view.touchable
            next: standId === view.nextStand && look !== "current"
            places: view.standPlaces
            onAsked: view.standAsked(standId)
        }
    }
    Rectangle {
        // Which zone the keyboard is on, in words.
        id: tag
        readonly property ZoneShape zone: view.at >= 0 ? zones.itemAt(view.at) as ZoneShape : null
        visible: zone !== null && view.activeFocus
        anchors.horizontalCenter: parent.horizontalCenter
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 4
        width: spoken.implicitWidth + 24
        height: spoken.implicitHeight + 12
        radius: Theme.corner
        color: Theme.panel
        border.width: 2
        border.color: Theme.way
        Label {
            id: spoken
            anchors.centerIn: parent
            text: tag.zone ? tag.zone.name + "\u00a0· " + tag.zone.stateText : ""
            wrapMode: Text.NoWrap
        }
    }
    FocusRing {
        of: view
        anchors.margins: 2
    }
    PinchHandler {
        enabled: view.touchable
        property real before: 1
        target: null
        onActiveChanged: if (active)
            before = view.zoom
        onActiveScaleChanged: if (active)
            view.zoom = Math.min(6, Math.max(1, before * activeScale))
    }
    DragHandler {
        property point before
        target: null
        enabled: view.zoom > 1 && view.touchable
        onActiveChanged: if (active)
            before = view.middle
        onTranslationChanged: if (active)
            view.middle = Qt.point(before.x - translation.x / view.perMetre, before.y - translation.y / view.perMetre)
    }
    TapHandler {
        enabled: view.touchable
        gesturePolicy: TapHandler.WithinBounds
        onTapped: eventPoint => view.touch(eventPoint.position.x, eventPoint.position.y)
    }
}
