// The signature that seals the round; the key of who walked is made here the first time.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property RoundView round
    readonly property SigningView signing: app.signing

    objectName: "screenSign"
    title: key.key ? qsTr("Sign") : qsTr("Make your key")
    subtitle: Texts.line(round.registration, round.person, "")
    backText: qsTr("Take back")
    backName: "withdrawKey"
    keys: [
        Key {
            objectName: "newKeyDone"
            width: parent.width
            visible: key.key === null
            broad: true
            look: "solid"
            enabled: key.canMake
            text: qsTr("Make the key")
            onClicked: key.make()
        },
        Key {
            objectName: "signKey"
            narrow: true
            width: parent.width
            visible: key.key !== null
            broad: true
            look: "solid"
            text: qsTr("Sign and seal")
            onClicked: screen.signing.sign(key.passphraseText, key.keyId)
        }
    ]

    Framed {
        width: parent.width
        Label {
            width: parent.width
            text: screen.round.conclusionText
            strong: true
            font.pixelSize: Theme.fitting(text, width, Theme.huge)
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
    Label {
        width: parent.width
        text: qsTr("By signing you say: I walked this round as recorded, and this is my conclusion. The record is then sealed. Nobody can change it unseen, you neither.")
    }

    KeyFields {
        id: key
        width: parent.width
        focus: true
        first: true
        app: screen.app
        whose: screen.round.person
        only: true
        onAccepted: screen.signing.sign(passphraseText, keyId)
    }
}
