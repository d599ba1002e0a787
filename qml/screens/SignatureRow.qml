// One of a record's signatures: who, as what, when, by which key, and what the owner has said of that key.
import QtQuick
import Ambit

Column {
    id: row

    required property var modelData
    required property AircraftFileView its
    readonly property var known: Array.from(its.keys).find(one => one.key === modelData.key) ?? null

    spacing: 1

    Label {
        width: parent.width
        text: row.modelData.who
        strong: true
    }
    Label {
        width: parent.width
        visible: row.modelData.whenText !== ""
        text: qsTr("Signed under it %1").arg(row.modelData.whenText)
    }
    Label {
        width: parent.width
        visible: row.its.known
        text: row.known ? row.known.standing : qsTr("The owner has said nothing of this key")
    }
    Label {
        width: parent.width
        text: row.modelData.fingerprint
        color: Theme.soft
        font.family: Theme.monospace
        font.pixelSize: Theme.small
    }
}
