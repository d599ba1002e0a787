// The points at this stand, each with its state.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Ambit

GridView {
    id: list

    required property RoundView round
    readonly property int columns: width > Theme.mm(62) * Theme.scale ? 2 : 1

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    cellWidth: Math.floor(width / columns)
    cellHeight: Theme.target * (1 + (Theme.scale - 1) * 0.5)
    model: round.here
    currentIndex: -1
    keyNavigationEnabled: false
    cacheBuffer: 4000
    highlightMoveDuration: 0
    onHeightChanged: settle.restart()
    onCurrentIndexChanged: settle.restart()

    Timer {
        // Once the rows have their places.
        id: settle
        interval: 1
        onTriggered: list.positionViewAtIndex(list.currentIndex, GridView.Contain)
    }
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Points here")

    delegate: T.AbstractButton {
        id: row
        required property int index
        required property string pointId
        required property string name
        required property string look
        required property bool current
        readonly property bool done: look !== "todo" && look !== "next"

        function follow() {
            if (row.current)
                list.currentIndex = row.index;
        }
        objectName: "here." + pointId
        width: list.cellWidth - 4
        height: list.cellHeight
        focusPolicy: Qt.StrongFocus
        onClicked: list.round.choosePoint(row.pointId)
        onCurrentChanged: row.follow()
        Component.onCompleted: row.follow()
        Keys.onReturnPressed: row.clicked()
        Keys.onEnterPressed: row.clicked()
        Accessible.role: Accessible.Button
        Accessible.name: row.name
        Accessible.description: ({
                "todo": qsTr("to do"),
                "next": qsTr("next"),
                "sound": qsTr("sound"),
                "finding": qsTr("finding"),
                "notInspected": qsTr("not inspected")
            })[row.look] + (row.current ? ", " + qsTr("on the card") : "")
        Accessible.onPressAction: row.clicked()
        background: Rectangle {
            radius: Theme.corner - 2
            color: row.down ? Theme.pressed : row.current ? Theme.wash : "transparent"
            FocusRing {
                anchors.margins: 1
                of: row
            }
        }
        Item {
            anchors.fill: parent
            Mark {
                id: mark
                x: 10
                anchors.verticalCenter: parent.verticalCenter
                look: row.current && !row.done ? "next" : row.look
            }
            Label {
                anchors.left: mark.right
                anchors.leftMargin: 12
                anchors.right: parent.right
                anchors.rightMargin: 4
                anchors.verticalCenter: parent.verticalCenter
                text: row.name
                strong: row.current
                color: row.done ? Theme.soft : Theme.ink
                maximumLineCount: 3
                elide: Text.ElideRight
                lineHeight: 1.05
                Accessible.ignored: true
            }
        }
    }
}
