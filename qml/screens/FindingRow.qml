// A finding as the record tells it, with its photos.
import QtQuick
import Ambit

Rectangle {
    id: row

    property var value: ({})
    readonly property bool grounds: value.severity === "grounds"

    implicitHeight: words.implicitHeight + 24
    radius: Theme.corner
    color: Theme.panel
    border.width: 1
    border.color: Theme.soft

    CutCorner {
        radius: Theme.corner
        colour: row.grounds ? Theme.warning : Theme.caution
    }
    Column {
        id: words
        x: 40
        y: 12
        width: parent.width - x - 16
        spacing: 4
        Label {
            width: parent.width
            text: (row.value.name ?? "") + (row.value.value ? "\u00a0· " + row.value.value : "")
            strong: true
            font.pixelSize: Theme.large
        }
        Label {
            width: parent.width
            text: (row.grounds ? qsTr("Grounds the aircraft") : qsTr("For assessment")) + "\u00a0· " + (row.value.atText ?? "")
            color: Theme.soft
            font.pixelSize: Theme.small
        }
        Label {
            width: parent.width
            text: row.value.words ?? ""
        }
        Photos {
            width: parent.width
            sources: row.value.photos ?? []
        }
    }
}
