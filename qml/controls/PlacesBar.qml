// The places, always in the thumb's reach, and what belongs beside them.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Ambit

Item {
    id: bar

    property string place: "walk"
    property bool withWatch: true
    default property alias beside: besideRow.data

    signal asked(string place)

    /// Large text gives way where the names would reach beyond the window.
    readonly property var places: withWatch ? [tabs.walk, tabs.file, tabs.watch] : [tabs.walk, tabs.file]
    readonly property real room: width - 2 * Theme.gap - (besideRow.width > 0 ? besideRow.width + Theme.gap : 0)
    readonly property real letters: places.reduce((sum, one) => sum + one.name.length, 0) * Theme.letter
    readonly property bool tight: letters * Theme.large + places.length * 2 * Theme.margin > room
    readonly property real side: tight ? Theme.gap : Theme.margin
    readonly property int written: Math.max(14, Math.min(Theme.large, Math.floor((room - places.length * 2 * side) / letters)))

    implicitHeight: Theme.target + 1
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("Places")

    Row {
        x: Theme.leftHanded && besideRow.width > 0 ? parent.width - width - Theme.gap : Theme.gap
        height: parent.height
        Repeater {
            id: tabs
            model: bar.places
            readonly property var walk: ({
                    id: "walk",
                    name: qsTr("Walk"),
                    object: "placeWalk"
                })
            readonly property var file: ({
                    id: "file",
                    name: qsTr("File"),
                    object: "placeFile"
                })
            readonly property var watch: ({
                    id: "watch",
                    name: qsTr("Watch"),
                    object: "placeWatch"
                })
            T.TabButton {
                id: tab
                required property var modelData
                readonly property bool here: bar.place === modelData.id
                objectName: modelData.object
                text: modelData.name
                implicitWidth: Math.max(Theme.target, word.implicitWidth + 2 * bar.side)
                implicitHeight: bar.height
                focusPolicy: Qt.StrongFocus
                checkable: false
                onClicked: bar.asked(tab.modelData.id)
                Keys.onReturnPressed: tab.clicked()
                Keys.onEnterPressed: tab.clicked()
                Accessible.role: Accessible.PageTab
                Accessible.name: tab.text
                Accessible.selected: tab.here
                Accessible.onPressAction: tab.clicked()
                background: Rectangle {
                    color: tab.down ? Theme.pressed : "transparent"
                    FocusRing {
                        anchors.margins: 2
                        of: tab
                    }
                    Rectangle {
                        anchors.horizontalCenter: parent.horizontalCenter
                        y: parent.height / 2 + word.implicitHeight / 2 + 4
                        width: word.implicitWidth
                        height: 4
                        visible: tab.here
                        color: Theme.ink
                    }
                }
                Label {
                    id: word
                    anchors.fill: parent
                    text: tab.text
                    strong: true
                    font.pixelSize: bar.written
                    lineHeight: 1
                    color: tab.here ? Theme.ink : Theme.soft
                    horizontalAlignment: Text.AlignHCenter
                    verticalAlignment: Text.AlignVCenter
                    Accessible.ignored: true
                }
            }
        }
    }
    Row {
        id: besideRow
        x: Theme.leftHanded ? Theme.gap : parent.width - width - Theme.gap
        anchors.verticalCenter: parent.verticalCenter
    }
}
