// A state by its shape: hollow = to do, heavy outline = next, filled = sound, filled with a cut corner = finding, hatched = not
// inspected; "owed": a frame left open.
import QtQuick
import QtQuick.Shapes
import Ambit

Item {
    id: mark

    property string look: "todo"
    property bool grounds: false
    readonly property bool hatched: look === "notInspected"
    readonly property bool filled: look === "sound" || look === "finding"

    implicitWidth: 20
    implicitHeight: 20
    Accessible.ignored: true

    Rectangle {
        anchors.fill: parent
        visible: mark.look !== "owed"
        color: mark.filled ? Theme.soft : Theme.panel
        border.width: mark.look === "next" ? 4 : mark.filled ? 0 : 2
        border.color: mark.look === "next" ? Theme.way : Theme.ink
    }
    Shape {
        anchors.fill: parent
        visible: mark.hatched
        ShapePath {
            strokeColor: Theme.ink
            strokeWidth: 1.5
            fillColor: "transparent"
            PathSvg {
                path: "M1 7 L7 1 M1 13 L13 1 M1 19 L19 1 M7 19 L19 7 M13 19 L19 13"
            }
        }
    }
    Shape {
        anchors.fill: parent
        visible: mark.look === "owed"
        ShapePath {
            strokeColor: Theme.ink
            strokeWidth: 2
            fillColor: "transparent"
            PathSvg {
                path: "M19 6 L19 19 L1 19 L1 1 L14 1"
            }
        }
    }
    CutCorner {
        // Paper shows between the fill and its cut corner.
        visible: mark.look === "finding"
        width: 15
        height: 15
        colour: Theme.panel
    }
    CutCorner {
        visible: mark.look === "finding"
        width: 12
        height: 12
        colour: mark.grounds ? Theme.warning : Theme.caution
    }
}
