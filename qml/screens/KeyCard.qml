// One key: whose it is, what it signed, what the owner has said of it, and what may be said now.
import QtQuick
import Ambit

Framed {
    id: card

    required property var modelData

    signal asked(string step, string key, string name)

    Row {
        width: parent.width
        spacing: 12
        Mark {
            id: mark
            y: 3
            look: card.modelData.look
            grounds: card.modelData.revoked
        }
        Label {
            width: parent.width - mark.width - 12
            text: card.modelData.name === "" ? qsTr("A key nobody has named") : card.modelData.name
            strong: true
            font.pixelSize: Theme.large
        }
    }
    Label {
        objectName: "standing." + card.modelData.key
        width: parent.width
        text: card.modelData.standing
    }
    Label {
        width: parent.width
        text: card.modelData.words
        color: Theme.soft
        font.pixelSize: Theme.small
    }
    Label {
        width: parent.width
        text: card.modelData.fingerprint
        color: Theme.soft
        font.family: Theme.monospace
        font.pixelSize: Theme.small
    }
    Pair {
        id: answers
        width: parent.width
        topPadding: 6
        Key {
            objectName: "trust." + card.modelData.key
            width: answers.each
            height: Math.max(implicitHeight, answers.tallest)
            narrow: true
            visible: !card.modelData.revoked
            text: qsTr("Trust it")
            about: card.modelData.name
            onClicked: card.asked("Trust", card.modelData.key, card.modelData.name)
        }
        Key {
            objectName: "revoke." + card.modelData.key
            width: answers.each
            height: Math.max(implicitHeight, answers.tallest)
            narrow: true
            visible: !card.modelData.revoked
            text: qsTr("Revoke it")
            about: card.modelData.name
            onClicked: card.asked("Revoke", card.modelData.key, card.modelData.name)
        }
    }
}
