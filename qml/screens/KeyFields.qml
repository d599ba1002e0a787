// The key of this device: made here the first time, unlocked by its passphrase ever after.
import QtQuick
import Ambit

Column {
    id: fields

    required property App app
    readonly property SigningView signing: app.signing
    readonly property bool canMake: passphrase.text !== "" && passphrase.text === again.text
    readonly property string passphraseText: word.text

    signal accepted

    function make() {
        if (fields.signing.newKey(name.text, passphrase.text)) {
            passphrase.text = "";
            again.text = "";
            word.forceActiveFocus();
        }
    }

    spacing: 12

    Column {
        width: parent.width
        spacing: 12
        visible: !fields.signing.keyExists
        Label {
            width: parent.width
            text: qsTr("This device has no key yet. Your key signs what you conclude. It stays on this device, locked by a passphrase that nobody can recover.")
        }
        Field {
            id: name
            objectName: "newKeyName"
            width: parent.width
            label: qsTr("Your name")
            text: fields.app.personName
        }
        Field {
            id: passphrase
            objectName: "newKeyPassphrase"
            width: parent.width
            label: qsTr("Passphrase")
            about: qsTr("at least 8 characters")
            echoMode: TextInput.Password
        }
        Field {
            id: again
            objectName: "newKeyPassphraseAgain"
            width: parent.width
            label: qsTr("The same passphrase again")
            echoMode: TextInput.Password
        }
        Label {
            width: parent.width
            visible: again.text !== "" && again.text !== passphrase.text
            text: qsTr("The two are not the same yet.")
            strong: true
        }
    }
    Column {
        width: parent.width
        spacing: 12
        visible: fields.signing.keyExists
        Label {
            width: parent.width
            text: qsTr("Key of %1").arg(fields.signing.keyName)
            strong: true
        }
        Field {
            id: word
            objectName: "signPassphrase"
            width: parent.width
            focus: true
            label: qsTr("Passphrase")
            echoMode: TextInput.Password
            onAccepted: fields.accepted()
        }
        Label {
            width: parent.width
            text: qsTr("Fingerprint %1").arg(fields.signing.fingerprint)
            color: Theme.soft
            font.family: Theme.monospace
            font.pixelSize: Theme.small
        }
    }
}
