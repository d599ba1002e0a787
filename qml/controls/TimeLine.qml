// Along what was walked: a touch or a drag shows that moment. What stands out is marked by shape: found = filled with a cut
// corner, not inspected = hatched, asked = a ring, points settled fast = two bars.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Item {
    id: line

    /// Seconds in all, and shown.
    property real length: 1
    property real at: 0
    /// [{seconds, look}]
    property var marks: []
    property string clock: ""
    readonly property real edge: 14
    readonly property real perSecond: length > 0 ? (width - 2 * edge) / length : 0

    signal asked(real seconds)

    objectName: "timeLine"
    /// For a hand in a test: 0 to 1 along it.
    property point aim: Qt.point(0.5, 0)
    readonly property point touchPoint: Qt.point(edge + aim.x * (width - 2 * edge), height / 2)

    implicitHeight: Theme.target
    activeFocusOnTab: true
    Accessible.role: Accessible.Slider
    Accessible.name: qsTr("Time")
    Accessible.description: line.clock
    Accessible.focusable: true
    Accessible.onIncreaseAction: line.asked(line.at + 10)
    Accessible.onDecreaseAction: line.asked(line.at - 10)
    Keys.onRightPressed: line.asked(line.at + 10)
    Keys.onLeftPressed: line.asked(line.at - 10)

    function secondsAt(x: real): real {
        return line.perSecond > 0 ? Math.min(line.length, Math.max(0, (x - line.edge) / line.perSecond)) : 0;
    }

    Rectangle {
        x: line.edge
        anchors.verticalCenter: parent.verticalCenter
        width: line.width - 2 * line.edge
        height: 4
        color: Theme.line
        Rectangle {
            width: line.at * line.perSecond
            height: parent.height
            color: Theme.way
        }
    }
    Repeater {
        model: line.marks
        Item {
            id: one
            required property var modelData
            readonly property string look: modelData.look
            x: line.edge + modelData.seconds * line.perSecond - width / 2
            y: line.height / 2 - (look === "quick" || look === "asked" ? 26 : -8)
            width: 14
            height: 16
            Mark {
                anchors.fill: parent
                visible: one.look === "finding" || one.look === "notInspected"
                look: one.look
            }
            Rectangle {
                anchors.fill: parent
                visible: one.look === "asked"
                radius: width / 2
                color: "transparent"
                border.width: 3
                border.color: Theme.ink
            }
            Repeater {
                model: one.look === "quick" ? 2 : 0
                Rectangle {
                    required property int index
                    x: 2 + index * 6
                    width: 3
                    height: one.height
                    color: Theme.ink
                }
            }
        }
    }
    Rectangle {
        x: line.edge + line.at * line.perSecond - width / 2
        anchors.verticalCenter: parent.verticalCenter
        width: 14
        height: Theme.target * 0.6
        radius: 7
        color: Theme.panel
        border.width: 4
        border.color: Theme.way
    }
    MouseArea {
        anchors.fill: parent
        preventStealing: true
        onPressed: mouse => line.asked(line.secondsAt(mouse.x))
        onPositionChanged: mouse => line.asked(line.secondsAt(mouse.x))
    }
    FocusRing {
        of: line
    }
}
