// The signature that seals the round; the key of this device is made here the first time.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property RoundView round
    readonly property SigningView signing: app.signing

    objectName: "screenSign"
    title: signing.keyExists ? qsTr("Sign") : qsTr("Make your key")
    subtitle: Texts.line(round.registration, round.person, "")
    backText: qsTr("Take back")
    backName: "withdrawKey"
    keys: [
        Key {
            objectName: "newKeyDone"
            width: parent.width
            visible: !screen.signing.keyExists
            broad: true
            look: "solid"
            enabled: passphrase.text !== "" && passphrase.text === again.text
            text: qsTr("Make the key")
            onClicked: if (screen.signing.newKey(name.text, passphrase.text)) {
                passphrase.text = "";
                again.text = "";
                word.forceActiveFocus();
            }
        },
        Key {
            objectName: "signKey"
            width: parent.width
            visible: screen.signing.keyExists
            broad: true
            look: "solid"
            text: qsTr("Sign and seal")
            onClicked: screen.signing.sign(word.text)
        }
    ]

    Rectangle {
        width: parent.width
        height: said.implicitHeight + 32
        radius: Theme.corner
        color: Theme.panel
        border.width: 2
        border.color: Theme.ink
        Column {
            id: said
            x: 20
            y: 16
            width: parent.width - 40
            spacing: 6
            Label {
                width: parent.width
                text: screen.round.conclusionText
                strong: true
                font.pixelSize: Theme.huge
                Accessible.role: Accessible.Heading
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: screen.round.reasons
            }
            Label {
                width: parent.width
                text: Texts.line(screen.round.walkName, qsTr("%1 points").arg(screen.round.pointCount), Texts.findings(screen.round.findingCount))
                color: Theme.soft
                font.pixelSize: Theme.small
            }
        }
    }
    Label {
        width: parent.width
        text: qsTr("By signing you say: I walked this round as recorded, and this is my conclusion. The record is then sealed. Nobody can change it unseen, you neither.")
    }

    Column {
        width: parent.width
        spacing: 12
        visible: !screen.signing.keyExists
        Label {
            width: parent.width
            text: qsTr("This device has no key yet. Your key signs what you conclude. It stays on this device, locked by a passphrase that nobody can recover.")
        }
        Field {
            id: name
            objectName: "newKeyName"
            width: parent.width
            label: qsTr("Your name")
            text: screen.app.personName
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
        visible: screen.signing.keyExists
        Label {
            width: parent.width
            text: qsTr("Key of %1").arg(screen.signing.keyName)
            strong: true
        }
        Field {
            id: word
            objectName: "signPassphrase"
            width: parent.width
            focus: true
            label: qsTr("Passphrase")
            echoMode: TextInput.Password
            onAccepted: screen.signing.sign(word.text)
        }
        Label {
            width: parent.width
            text: qsTr("Fingerprint %1").arg(screen.signing.fingerprint)
            color: Theme.soft
            font.family: Theme.monospace
            font.pixelSize: Theme.small
        }
    }
}
