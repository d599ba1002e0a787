// One device that follows or may: whose it is, and the key that takes it back, which asks once more.
import QtQuick
import Ambit

Framed {
    id: row

    /// As SharingView has them; null while it goes.
    required property var who
    required property string words
    /// The first touch was on this one.
    required property bool asking
    readonly property string whoId: who?.id ?? ""
    readonly property string whose: who?.name ?? ""

    signal asked
    signal kept
    signal takenBack

    objectName: "follower." + whoId

    Label {
        width: parent.width
        text: row.whose
        strong: true
        font.pixelSize: Theme.large
        Accessible.role: Accessible.Heading
    }
    Label {
        width: parent.width
        visible: text !== ""
        text: row.words
    }
    Label {
        width: parent.width
        text: qsTr("Fingerprint %1").arg((row.who?.fingerprint ?? "").slice(0, 19))
        color: Theme.soft
        font.family: Theme.monospace
        font.pixelSize: Theme.small
    }
    Row {
        id: pair
        readonly property real half: (width - spacing) / 2
        width: parent.width
        topPadding: 6
        spacing: 12
        // Where the first touch was stands what keeps: the same touch twice does nothing.
        Key {
            objectName: "takeBackNow." + row.whoId
            width: pair.half
            height: Math.max(implicitHeight, other.implicitHeight)
            visible: row.asking
            broad: true
            text: qsTr("Take it back")
            about: row.whose
            onClicked: row.takenBack()
        }
        Item {
            width: pair.half
            height: 1
            visible: !row.asking
        }
        Key {
            id: other
            objectName: (row.asking ? "takeBackKeep." : "takeBack.") + row.whoId
            width: pair.half
            broad: row.asking
            text: row.asking ? qsTr("Keep") : qsTr("Take back")
            about: row.whose
            onClicked: {
                if (row.asking)
                    row.kept();
                else
                    row.asked();
            }
        }
    }
    Label {
        width: parent.width
        visible: row.asking
        topPadding: 6
        text: qsTr("Taken back, this device comes in again only with another code.")
    }
}
