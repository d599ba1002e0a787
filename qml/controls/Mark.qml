// A state by its shape: hollow = to do, heavy outline = next, filled = sound, filled with a cut corner = finding, hatched = not
// inspected; "owed": a frame left open.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Item {
    id: mark

    property string look: "todo"
    property bool grounds: false
    readonly property bool hatched: look === "notInspected"
    readonly property bool filled: look === "sound" || look === "finding"

    implicitWidth: Theme.mark(20)
    implicitHeight: Theme.mark(20)
    Accessible.ignored: true

    Rectangle {
        anchors.fill: parent
        visible: mark.look !== "owed"
        color: mark.filled ? Theme.soft : Theme.panel
        border.width: mark.look === "next" ? Theme.mark(4) : mark.filled ? 0 : Theme.mark(2)
        border.color: mark.look === "next" ? Theme.way : Theme.ink
    }
    Item {
        anchors.fill: parent
        anchors.margins: 1
        visible: mark.hatched
        clip: true
        Repeater {
            model: 6
            Rectangle {
                required property int index
                x: parent ? (index - 2) * Theme.mark(6) : 0
                width: mark.width * 0.075
                height: parent ? parent.height * 1.5 : 0
                y: parent ? -parent.height * 0.25 : 0
                rotation: 45
                antialiasing: true
                color: Theme.ink
            }
        }
    }
    Item {
        // A frame left open at its corner.
        anchors.fill: parent
        visible: mark.look === "owed"
        Rectangle {
            width: Theme.mark(2)
            height: parent.height
            color: Theme.ink
        }
        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: Theme.mark(2)
            color: Theme.ink
        }
        Rectangle {
            width: parent.width * 0.6
            height: Theme.mark(2)
            color: Theme.ink
        }
        Rectangle {
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            width: Theme.mark(2)
            height: parent.height * 0.6
            color: Theme.ink
        }
    }
    CutCorner {
        // Paper shows between the fill and its cut corner.
        visible: mark.look === "finding"
        width: mark.width * 0.75
        height: width
        colour: Theme.panel
    }
    CutCorner {
        visible: mark.look === "finding"
        width: mark.width * 0.6
        height: width
        colour: mark.grounds ? Theme.warning : Theme.caution
    }
}
