// From a day on a key counts for nothing: lost, stolen, or its holder has left.
import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    /// Fingerprint and name of the key.
    required property string key
    property string name: ""

    function sign() {
        if (screen.app.entries.revoke({
            key: subject.fingerprint,
            from: from.text,
            why: why.text
        }, signature.signature))
            screen.back();
    }

    objectName: "screenRevoke"
    title: qsTr("Revoke a key")
    subtitle: app.aircraftFile.registration
    backText: qsTr("Back")
    backName: "entryBack"
    keys: SignKeys {
        width: parent.width
        fields: signature
        onSignAsked: screen.sign()
    }

    KeySubject {
        id: subject
        width: parent.width
        key: screen.key
        knownName: screen.name
        named: false
    }
    Label {
        width: parent.width
        text: qsTr("What it signs from that day on counts for nothing in this file; what it signed before stays as it was. The owner may revoke any key, others their own. It can't be taken back: whose key it was makes a new one.")
    }
    Field {
        id: from
        objectName: "revokeFrom"
        width: parent.width
        label: qsTr("From: year-month-day")
        about: qsTr("empty: from now on")
    }
    WordsField {
        id: why
        objectName: "revokeWhy"
        width: parent.width
        label: qsTr("Why")
    }
    SignatureFields {
        id: signature
        width: parent.width
        app: screen.app
        role: "owner"
        onAccepted: screen.sign()
    }
}
