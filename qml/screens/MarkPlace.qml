// The ground round the aircraft, and a box on it: two opposite corners are touched, or it is drawn with a finger; then a corner, or
// the whole box, can be moved.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: place

    required property FigureModel figure
    /// Metres on the figure, y down.
    property point first
    property point second
    /// How many corners are there: 0, 1, 2.
    property int corners: 0
    readonly property bool whole: corners === 2 && first.x !== second.x && first.y !== second.y
    /// Copies: a point read from a property would go on following it.
    readonly property var outline: whole ? [Qt.point(first.x, first.y), Qt.point(second.x, first.y), Qt.point(second.x, second.y), Qt.point(first.x, second.y)] : []
    readonly property string sizeText: whole ? figure.lengthText(Math.abs(second.x - first.x)) + " × " + figure.lengthText(Math.abs(second.y - first.y)) : ""
    /// What an arrow key moves by, in metres.
    readonly property real step: 0.5
    /// Where the keyboard is.
    property point at: Qt.point(figure.bounds.x, figure.bounds.y)
    /// Where a hand that looks for this place by its name touches it, in metres.
    property point aim: at
    readonly property point touchPoint: pixels(aim, ground.perMetre, ground.origin)

    function pixels(spot: point, perMetre: real, origin: point): point {
        return Qt.point(spot.x * perMetre + origin.x, spot.y * perMetre + origin.y);
    }
    function seenAt(spot: point): point {
        return place.pixels(spot, ground.perMetre, ground.origin);
    }
    /// Decimetres are as fine as a finger.
    function rounded(x: real, y: real): point {
        return Qt.point(Math.round(x * 10) / 10, Math.round(y * 10) / 10);
    }
    function metres(x: real, y: real): point {
        return place.rounded((x - ground.origin.x) / ground.perMetre, (y - ground.origin.y) / ground.perMetre);
    }
    function addCorner(spot: point) {
        if (place.corners === 0) {
            place.first = spot;
            place.corners = 1;
        } else if (place.corners === 1 && spot.x !== place.first.x && spot.y !== place.first.y) {
            place.second = spot;
            place.corners = 2;
        }
    }
    function takeBack() {
        place.corners = Math.max(0, place.corners - 1);
    }
    /// The corner of the box under a finger; -1: none.
    function cornerAt(x: real, y: real): int {
        let nearest = -1, least = Theme.target / 2;
        for (let i = 0; i < place.outline.length; ++i) {
            const spot = place.seenAt(place.outline[i]);
            const away = Math.hypot(spot.x - x, spot.y - y);
            if (away < least) {
                least = away;
                nearest = i;
            }
        }
        return nearest;
    }
    function holds(spot: point): bool {
        return place.whole && (spot.x - place.first.x) * (spot.x - place.second.x) < 0 && (spot.y - place.first.y) * (spot.y - place.second.y) < 0;
    }
    function moveBy(x: real, y: real) {
        if (place.corners === 2)
            place.second = place.rounded(place.second.x + x, place.second.y + y);
        else
            place.at = place.rounded(place.at.x + x, place.at.y + y);
    }

    objectName: "markFigure"
    activeFocusOnTab: true
    clip: true
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("The ground round the aircraft, from above, nose up")
    Accessible.description: qsTr("Arrow keys move by %1, Enter sets a corner, Backspace takes it back").arg(figure.lengthText(step))
    Accessible.focusable: true
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Left)
            place.moveBy(-place.step, 0);
        else if (event.key === Qt.Key_Right)
            place.moveBy(place.step, 0);
        else if (event.key === Qt.Key_Up)
            place.moveBy(0, -place.step);
        else if (event.key === Qt.Key_Down)
            place.moveBy(0, place.step);
        else if (event.key === Qt.Key_Return || event.key === Qt.Key_Enter || event.key === Qt.Key_Space)
            place.addCorner(place.at);
        else if (event.key === Qt.Key_Backspace)
            place.takeBack();
        else
            return;
        Theme.keyboard = true;
        event.accepted = true;
    }

    FigureView {
        id: ground
        anchors.fill: parent
        figure: place.figure
        still: true
        around: 5
        topInset: 8
        bottomInset: 8
        sideInset: 8
    }
    MarkedShape {
        visible: place.whole
        outline: place.whole ? place.outline : [Qt.point(0, 0), Qt.point(1, 0), Qt.point(1, 1)]
        why: ""
        perMetre: ground.perMetre
        origin: ground.origin
    }
    Repeater {
        model: place.corners === 1 ? [place.first] : place.outline
        Rectangle {
            required property point modelData
            readonly property point spot: place.pixels(modelData, ground.perMetre, ground.origin)
            x: spot.x - width / 2
            y: spot.y - height / 2
            width: 26
            height: width
            radius: width / 2
            color: Theme.panel
            border.width: 5
            border.color: Theme.way
        }
    }
    Item {
        // The keyboard's cross.
        readonly property point spot: place.pixels(place.at, ground.perMetre, ground.origin)
        visible: place.activeFocus && Theme.keyboard && place.corners < 2
        x: spot.x
        y: spot.y
        Rectangle {
            x: -18
            y: -1.5
            width: 36
            height: 3
            color: Theme.way
        }
        Rectangle {
            x: -1.5
            y: -18
            width: 3
            height: 36
            color: Theme.way
        }
    }
    MouseArea {
        id: finger
        /// Where it came down: in metres, and in pixels.
        property point from
        property point start
        /// "corner", "box", "draw"; "" nothing.
        property string doing: ""
        /// Farther than a finger trembles.
        function moved(mouse): bool {
            return Math.hypot(mouse.x - finger.start.x, mouse.y - finger.start.y) > 16;
        }

        anchors.fill: parent
        preventStealing: true
        onPressed: mouse => {
            place.forceActiveFocus();
            from = place.metres(mouse.x, mouse.y);
            start = Qt.point(mouse.x, mouse.y);
            const corner = place.cornerAt(mouse.x, mouse.y);
            if (corner >= 0) {
                // The corner opposite stays.
                const stays = place.outline[(corner + 2) % 4], goes = place.outline[corner];
                place.first = stays;
                place.second = goes;
                doing = "corner";
            } else {
                doing = place.holds(from) ? "box" : place.corners < 2 ? "draw" : "";
            }
        }
        onPositionChanged: mouse => {
            const spot = place.metres(mouse.x, mouse.y);
            if (doing === "corner") {
                if (spot.x !== place.first.x && spot.y !== place.first.y)
                    place.second = spot;
            } else if (doing === "box") {
                const x = spot.x - from.x, y = spot.y - from.y;
                place.first = place.rounded(place.first.x + x, place.first.y + y);
                place.second = place.rounded(place.second.x + x, place.second.y + y);
                from = spot;
            } else if (doing === "draw" && finger.moved(mouse)) {
                place.corners = 0;
                place.addCorner(from);
                place.addCorner(spot);
            }
        }
        onReleased: mouse => {
            if (doing === "draw" && !finger.moved(mouse))
                place.addCorner(place.metres(mouse.x, mouse.y));
            doing = "";
        }
    }
    FocusRing {
        of: place
        anchors.margins: 2
    }
}
