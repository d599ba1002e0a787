// Who is followed, the one that needs attention first; before that, with whose key.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property WatchView its: app.watch
    readonly property var absent: Array.from(its.known).filter(one => !one.followed)
    readonly property int across: Math.max(1, Math.floor(columnWidth / (Theme.mm(56) * Math.sqrt(Theme.scale))))

    signal studentAsked(int number)
    signal joinAsked

    function start() {
        if (screen.its.start(signature.signature))
            screen.forceActiveFocus();
    }

    objectName: "screenWatch"
    title: qsTr("Watch")
    subtitle: its.open ? qsTr("As %1").arg(its.me) : qsTr("Follow a walk while it is walked")
    columnWidth: its.open ? width - keysWidth - 2 * Theme.margin : Math.min(width - keysWidth - 2 * Theme.margin, Theme.mm(118))
    keys: Key {
        objectName: screen.its.open ? "watchJoin" : "watchStart"
        width: parent.width
        visible: screen.its.possible
        broad: true
        narrow: true
        look: "solid"
        enabled: screen.its.open || signature.keyExists || signature.canMake
        text: screen.its.open ? qsTr("Follow another") : signature.keyExists ? qsTr("Follow walks") : qsTr("Make the key")
        onClicked: screen.its.open ? screen.joinAsked() : signature.keyExists ? screen.start() : signature.make()
    }

    Label {
        objectName: "watchImpossible"
        width: parent.width
        visible: !screen.its.possible
        text: qsTr("This device can't follow others.")
    }
    Column {
        width: parent.width
        visible: screen.its.possible && !screen.its.open
        spacing: 12
        Label {
            width: parent.width
            text: qsTr("You see what is settled as it is settled, ask for a second look, and sign under the record. Both devices are in the same network, a phone's hotspot will do; nothing goes further. The pilot settles: nobody else can.")
        }
        SignatureFields {
            id: signature
            width: parent.width
            app: screen.app
            role: "instructor"
            title: qsTr("Who follows")
            onAccepted: screen.start()
        }
    }
    Column {
        width: parent.width
        visible: screen.its.open
        spacing: 12
        Label {
            objectName: "watchNobody"
            width: parent.width
            visible: screen.its.students.count === 0
            text: qsTr("You follow nobody. On the other device: More, “Who follows”, “Show a code”. Then touch “Follow another” here.")
            font.pixelSize: Theme.large
        }
        Grid {
            id: grid
            width: parent.width
            columns: screen.across
            spacing: 12
            readonly property real cell: (width - (columns - 1) * spacing) / columns
            Repeater {
                model: screen.its.students
                StudentTile {
                    width: grid.cell
                    seenFrom: screen.seenFrom - grid.y - (grid.parent?.y ?? 0) - y
                    seenTo: screen.seenTo - grid.y - (grid.parent?.y ?? 0) - y
                    onClicked: screen.studentAsked(student.number)
                }
            }
        }
        Heading {
            width: parent.width
            visible: screen.absent.length > 0
            text: qsTr("Known from earlier")
        }
        Repeater {
            model: screen.absent
            Row {
                id: one
                required property var modelData
                width: grid.width
                spacing: 12
                Key {
                    objectName: "watchKnown." + one.modelData.name
                    width: one.width - forget.width - 12
                    text: qsTr("Follow %1").arg(one.modelData.name)
                    about: qsTr("Without a code. Fingerprint %1").arg(one.modelData.fingerprint)
                    onClicked: screen.its.joinKnown(one.modelData.id)
                }
                Key {
                    id: forget
                    objectName: "watchForget." + one.modelData.name
                    text: qsTr("Forget")
                    about: qsTr("%1 is only followed again with a new code").arg(one.modelData.name)
                    onClicked: screen.its.forget(one.modelData.id)
                }
            }
        }
        Key {
            objectName: "watchStop"
            width: parent.width
            text: screen.its.students.count === 0 ? qsTr("Lock the key again") : qsTr("Follow nobody any more")
            about: qsTr("The key is locked again")
            onClicked: screen.its.stop()
        }
    }
}
