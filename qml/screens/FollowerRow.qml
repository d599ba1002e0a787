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
    Item {
        id: pair
        /// Large text: one under the other.
        readonly property bool stacked: width < Theme.mm(44) * Theme.scale
        readonly property real share: stacked ? width : (width - 12) / 2
        width: parent.width
        height: 6 + (stacked && row.asking ? other.height + 12 + now.height : Math.max(other.height, row.asking ? now.height : 0))
        // Where the first touch was stands what keeps: the same touch twice does nothing.
        Key {
            id: now
            objectName: "takeBackNow." + row.whoId
            y: 6 + (pair.stacked ? other.height + 12 : 0)
            width: pair.share
            height: Math.max(implicitHeight, other.implicitHeight)
            visible: row.asking
            broad: true
            narrow: true
            text: qsTr("Take it back")
            about: row.whose
            onClicked: row.takenBack()
        }
        Key {
            id: other
            objectName: (row.asking ? "takeBackKeep." : "takeBack.") + row.whoId
            x: pair.width - width
            y: 6
            width: pair.share
            broad: row.asking
            narrow: true
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
