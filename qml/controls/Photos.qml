// Photos in a row, with a key to take each out where `change` says so.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Flow {
    id: photos

    property var sources: []
    property bool change: false
    property real side: Theme.mm(22)

    signal removed(int index)

    spacing: Theme.gap
    visible: sources.length > 0
    Repeater {
        model: photos.sources
        Column {
            id: photo
            required property var modelData
            required property int index
            spacing: 4
            Rectangle {
                width: photos.side * 1.25
                height: photos.side
                color: Theme.body
                border.width: 1
                border.color: Theme.soft
                Image {
                    anchors.fill: parent
                    anchors.margins: 1
                    source: photo.modelData
                    sourceSize.width: 480
                    fillMode: Image.PreserveAspectCrop
                    opacity: Theme.night ? 0.45 : 1
                    Accessible.role: Accessible.Graphic
                    Accessible.name: qsTr("Photo %1").arg(photo.index + 1)
                }
            }
            Key {
                objectName: "photoRemove." + photo.index
                width: Math.max(photos.side * 1.25, implicitWidth)
                visible: photos.change
                look: "link"
                text: qsTr("Take out")
                about: qsTr("Photo %1").arg(photo.index + 1)
                onClicked: photos.removed(photo.index)
            }
        }
    }
}
