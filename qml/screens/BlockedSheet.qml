// A stand can't be used: why. What is left is ordered anew round it.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    required property string standId
    required property string name
    property string value: ""

    function block(why: string) {
        if (sheet.round.blockStand(sheet.standId, why))
            sheet.closed();
    }

    objectName: "sheetBlocked"
    title: qsTr("This stand can't be used")
    subtitle: name
    backName: "blockedCancel"

    Label {
        text: qsTr("Why not")
        strong: true
        Accessible.role: Accessible.Heading
    }
    Repeater {
        model: [qsTr("Blocked"), qsTr("Slippery or iced"), qsTr("Unsafe")]
        Key {
            required property string modelData
            required property int index
            objectName: "blockedReason." + index
            width: words.width
            broad: true
            text: modelData
            about: sheet.name
            onClicked: sheet.block(modelData)
        }
    }
    WordsField {
        id: words
        objectName: "blockedWhy"
        width: parent.width
        label: qsTr("Or in your words")
    }
    Key {
        objectName: "blockedDone"
        width: parent.width
        broad: true
        enabled: words.text.trim() !== ""
        text: qsTr("It can't be used, as I wrote")
        onClicked: sheet.block(words.text)
    }
    Label {
        width: parent.width
        text: qsTr("What is left is ordered anew without it. What can be settled nowhere else stays to be said as not inspected.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }
}
