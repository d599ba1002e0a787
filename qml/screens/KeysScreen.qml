// Whose key counts for this aircraft: those that signed in its file and those of this device, and what the owner has said of each.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property AircraftFileView its: app.aircraftFile
    readonly property var strangers: Array.from(app.signing.keys).filter(one => !Array.from(its.keys).some(known => known.key === one.id)).map(one => ({
                key: one.id,
                name: one.name,
                fingerprint: one.fingerprint,
                words: qsTr("On this device; has signed nothing in this file"),
                standing: qsTr("The owner has said nothing of this key"),
                look: "todo",
                revoked: false
            }))
    readonly property bool ready: its.known && !its.reading

    signal stepAsked(string step, var values)

    function ask(step: string, key: string, name: string) {
        screen.stepAsked(step, {
            key: key,
            name: name
        });
    }

    objectName: "screenKeys"
    title: qsTr("Whose key counts")
    subtitle: its.registration
    backText: qsTr("Back")
    backName: "keysBack"
    keys: Key {
        objectName: "keysOther"
        narrow: true
        width: parent.width
        broad: true
        enabled: screen.ready
        text: qsTr("Trust another key")
        onClicked: screen.ask("Trust", "", "")
    }

    Label {
        width: parent.width
        text: qsTr("A signature says which key made it. Whose key that is, and as what it counts, the owner says.")
    }
    Label {
        objectName: "keysNone"
        width: parent.width
        visible: cards.count === 0
        text: screen.its.reading ? qsTr("The file is being read …") : qsTr("Nobody has signed anything here, and this device has no key yet.")
    }
    Repeater {
        id: cards
        model: Array.from(screen.its.keys).concat(screen.strangers)
        KeyCard {
            width: screen.columnWidth
            enabled: screen.ready
            onAsked: (step, key, name) => screen.ask(step, key, name)
        }
    }
}
