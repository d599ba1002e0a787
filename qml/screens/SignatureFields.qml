// Who signs an entry in the file: as what, under which certificate, with the key of this device.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: fields

    required property App app
    /// As what one signs, to begin with.
    property string role: app.personRole !== "" ? app.personRole : "owner"
    readonly property bool keyExists: app.signing.keyExists
    readonly property var signature: ({
            role: role,
            certificate: certificate.text,
            passphrase: key.passphraseText
        })
    readonly property bool canMake: key.canMake

    signal accepted

    function make() {
        key.make();
    }

    spacing: 12

    Heading {
        width: parent.width
        text: qsTr("Who signs")
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
        text: fields.app.personCertificate
    }
    KeyFields {
        id: key
        width: parent.width
        app: fields.app
        onAccepted: fields.accepted()
    }
}
