// The owner says whose key counts, as what, and since when.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    /// Fingerprint and name of the key; "": to be written.
    property string key: ""
    property string name: ""
    readonly property AircraftFileView its: app.aircraftFile
    readonly property bool hasOwner: Array.from(its.keys).some(one => one.owner)
    property var roles: []

    function toggle(id: string) {
        screen.roles = screen.roles.includes(id) ? screen.roles.filter(other => other !== id) : screen.roles.concat([id]);
    }
    function sign() {
        if (screen.app.entries.trust({
            name: subject.name,
            key: subject.fingerprint,
            roles: screen.roles,
            from: from.text
        }, signature.signature))
            screen.back();
    }

    objectName: "screenTrust"
    title: qsTr("Trust a key")
    subtitle: its.registration
    backText: qsTr("Back")
    backName: "entryBack"
    keys: SignKeys {
        width: parent.width
        fields: signature
        onSignAsked: screen.sign()
    }

    Label {
        objectName: "trustFirst"
        width: parent.width
        visible: !screen.hasOwner
        text: qsTr("Nobody has said yet whose key counts here. Who signs this first is taken for the owner, and from then on only the owner's word counts.")
    }
    KeySubject {
        id: subject
        width: parent.width
        key: screen.key
        knownName: screen.name
    }
    Label {
        width: parent.width
        text: qsTr("Compare the fingerprint with the one that the person reads to you from their own device.")
    }
    Heading {
        width: parent.width
        text: qsTr("It counts as that of a")
    }
    Grid {
        id: grid
        width: parent.width
        columns: width > Theme.mm(56) * Theme.scale ? 2 : 1
        spacing: Theme.gap
        Repeater {
            model: screen.app.roles
            Tick {
                required property var modelData
                objectName: "trustRole." + modelData.id
                width: (grid.width - (grid.columns - 1) * Theme.gap) / grid.columns
                text: modelData.name
                chosen: screen.roles.includes(modelData.id)
                onClicked: screen.toggle(modelData.id)
            }
        }
    }
    Field {
        id: from
        objectName: "trustFrom"
        width: parent.width
        label: qsTr("Since: year-month-day")
        about: qsTr("empty: from now on")
    }
    SignatureFields {
        id: signature
        width: parent.width
        app: screen.app
        role: "owner"
        onAccepted: screen.sign()
    }
}
