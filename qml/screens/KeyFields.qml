// Whose key signs: of the people who use this device each has one, made here the first time, unlocked by its passphrase ever after.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: fields

    required property App app
    /// Whose key it should be, where they have one.
    property string whose: app.personName
    /// Nobody else's will do, unless it is chosen.
    property bool only: false
    /// The passphrase is what one comes here to write: else a page would open scrolled down to it.
    property bool first: false
    /// Ids of keys that can't sign here (again).
    property var without: []
    readonly property SigningView signing: app.signing
    readonly property var usable: Array.from(signing.keys).filter(one => !without.includes(one.id))
    /// Id of the one that signs; "": one is to be made first.
    property string keyId: ""
    readonly property var key: usable.find(one => one.id === keyId) ?? null
    readonly property bool canMake: passphrase.text !== "" && passphrase.text === again.text
    readonly property string passphraseText: word.text

    signal accepted

    function make() {
        if (fields.signing.newKey(name.text, passphrase.text)) {
            fields.keyId = fields.signing.keyOf(name.text.trim());
            passphrase.text = "";
            again.text = "";
            word.forceActiveFocus();
        }
    }
    function choose() {
        const its = usable.find(one => one.name === fields.whose);
        fields.keyId = its ? its.id : usable.length > 0 && !fields.only ? usable[0].id : "";
    }

    Component.onCompleted: choose()

    spacing: 12

    Repeater {
        model: fields.usable.length > 1 || fields.key === null ? fields.usable : []
        Choice {
            required property var modelData
            objectName: "signKeyOf." + modelData.name
            width: fields.width
            text: qsTr("Key of %1").arg(modelData.name)
            chosen: fields.keyId === modelData.id
            onClicked: fields.keyId = modelData.id
        }
    }
    Column {
        width: parent.width
        spacing: 12
        visible: fields.key === null
        Label {
            width: parent.width
            text: fields.signing.keys.length === 0 ? qsTr("This device has no key yet. Your key signs what you conclude. It stays on this device, locked by a passphrase that nobody can recover.") : qsTr("A key of your own, beside those of the others who use this device. It stays here, locked by a passphrase that nobody can recover.")
        }
        Field {
            id: name
            objectName: "newKeyName"
            width: parent.width
            label: qsTr("Your name")
            text: fields.signing.keyOf(fields.whose) === "" ? fields.whose : ""
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
        visible: fields.key !== null
        Label {
            width: parent.width
            visible: fields.usable.length === 1
            text: qsTr("Key of %1").arg(fields.key?.name ?? "")
            strong: true
        }
        Field {
            id: word
            objectName: "signPassphrase"
            width: parent.width
            focus: fields.first
            label: qsTr("Passphrase")
            echoMode: TextInput.Password
            onAccepted: fields.accepted()
        }
        Label {
            width: parent.width
            text: qsTr("Fingerprint %1").arg(fields.key?.fingerprint ?? "")
            color: Theme.soft
            font.family: Theme.monospace
            font.pixelSize: Theme.small
        }
        Key {
            objectName: "keyAnother"
            width: Math.min(implicitWidth, parent.width)
            look: "link"
            text: qsTr("Make a key for another person")
            onClicked: fields.keyId = ""
        }
    }
}
