// Said afterwards: a part was renewed before a value, so that its values begin anew there. Or it was not after all.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property string pointId
    property string pointName: ""
    readonly property PointHistoryView history: app.pointHistory
    readonly property var values: Array.from(history.values)
    property string chosen: ""
    readonly property var value: values.find(one => one.recordId === chosen) ?? null

    function sign() {
        if (screen.app.entries.tellRenewed({
            record: screen.chosen,
            point: screen.pointId,
            renewed: screen.value !== null && !screen.value.renewed,
            words: words.text
        }, signature.signature))
            screen.back();
    }

    Component.onCompleted: if (history.pointId !== pointId)
        history.show(app.file.registration, pointId)

    objectName: "screenRenewed"
    title: qsTr("Renewed before a value")
    subtitle: Texts.line(app.file.registration, pointName, "")
    backText: qsTr("Back")
    backName: "entryBack"
    keys: SignKeys {
        width: parent.width
        fields: signature
        // What is chosen may be out of sight, and what is said of it.
        does: screen.value === null ? qsTr("Sign and keep") : screen.value.renewed ? qsTr("Sign: not renewed") : qsTr("Sign: renewed")
        onSignAsked: screen.sign()
    }

    Label {
        width: parent.width
        text: qsTr("If a part was renewed or repainted and nobody said so when it was next measured, the owner or a mechanic says it here. Its values begin anew at the one you choose. What you sign stays; only signing again takes it back.")
    }
    Heading {
        width: parent.width
        text: qsTr("The first value since then")
    }
    Repeater {
        model: screen.values
        Choice {
            required property var modelData
            objectName: "renewedValue." + modelData.recordId
            width: screen.columnWidth
            text: modelData.text
            about: Texts.line(modelData.whenText, modelData.by, modelData.renewed ? qsTr("told as renewed before it") : "")
            chosen: screen.chosen === modelData.recordId
            onClicked: screen.chosen = modelData.recordId
        }
    }
    Key {
        objectName: "renewedMore"
        width: parent.width
        visible: screen.history.canMoreValues
        text: qsTr("Show earlier ones")
        onClicked: screen.history.moreValues()
    }
    Label {
        objectName: "renewedBack"
        width: parent.width
        strong: true
        visible: screen.value !== null && screen.value.renewed
        text: qsTr("This one is told as renewed: you sign that the part was not renewed before it.")
    }
    WordsField {
        id: words
        objectName: "renewedWords"
        width: parent.width
        label: qsTr("Words, if any")
    }
    SignatureFields {
        id: signature
        width: parent.width
        app: screen.app
        role: "owner"
        onAccepted: screen.sign()
    }
}
