// Who signs an entry in the file: as what, under which certificate, with a key of this device.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: fields

    required property App app
    /// As what one signs, to begin with.
    property string role: app.personRole !== "" ? app.personRole : "owner"
    property string title: qsTr("Who signs")
    property alias whose: key.whose
    property alias without: key.without
    property alias only: key.only
    readonly property bool keyExists: key.key !== null
    readonly property var signature: ({
            role: role,
            certificate: certificate.text,
            passphrase: key.passphraseText,
            key: key.keyId
        })
    readonly property bool canMake: key.canMake

    signal accepted

    function make() {
        key.make();
    }

    spacing: 12

    Heading {
        width: parent.width
        text: fields.title
    }
    RoleChoice {
        width: parent.width
        app: fields.app
        prefix: "signRole."
        role: fields.role
        onChosen: role => fields.role = role
    }
    Field {
        id: certificate
        objectName: "signCertificate"
        width: parent.width
        label: qsTr("Certificate or licence number")
        // That of whose round was last; nobody signs under another's.
        text: (key.key === null ? fields.whose : key.key.name) === fields.app.personName ? fields.app.personCertificate : ""
    }
    KeyFields {
        id: key
        width: parent.width
        app: fields.app
        onAccepted: fields.accepted()
    }
}
