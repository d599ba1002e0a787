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
    onHeightChanged: settle.restart()
    Component.onCompleted: settle.restart()

    Connections {
        target: list.round
        function onCardChanged() {
            settle.restart();
        }
    }
    Timer {
        // Once the rows have their places, the one on the card is in sight.
        id: settle
        interval: 1
        onTriggered: {
            for (let row = 0; row < list.count; ++row)
                if (list.round.here.get(row).current)
                    list.positionViewAtIndex(row, GridView.Center);
        }
    }
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Points here")

    ScrollMark {
        of: list
    }

    delegate: T.AbstractButton {
        id: row
        required property string pointId
        required property string name
        required property string look
        required property bool current
        /// What the aircraft's file says is open here, in a word.
        required property string carried
        readonly property bool done: look !== "todo" && look !== "next"

        objectName: "here." + pointId
        width: list.cellWidth - 4
        height: list.cellHeight
        focusPolicy: Qt.StrongFocus
        onClicked: list.round.choosePoint(row.pointId)
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
            })[row.look] + (row.carried === "" ? "" : ", " + row.carried) + (row.current ? ", " + qsTr("on the card") : "")
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
                text: Texts.line(row.name, row.carried, "")
                strong: row.current || row.carried !== ""
                color: row.done ? Theme.soft : Theme.ink
                maximumLineCount: 3
                elide: Text.ElideRight
                lineHeight: 1.05
                Accessible.ignored: true
            }
        }
    }
}
