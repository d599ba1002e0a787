// A discrepancy grounds the aircraft until it is put right.
import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property string key
    readonly property DiscrepancyView one: app.aircraftFile.discrepancy

    function sign() {
        if (screen.app.entries.ground({
            key: screen.key,
            words: words.text
        }, signature.signature))
            screen.back();
    }

    Component.onCompleted: app.aircraftFile.openDiscrepancy(key)

    objectName: "screenGround"
    title: qsTr("It grounds the aircraft")
    subtitle: one ? Texts.line(one.name, one.words, "") : ""
    backText: qsTr("Back")
    backName: "entryBack"
    keys: SignKeys {
        width: parent.width
        fields: signature
        onSignAsked: screen.sign()
    }

    WordsField {
        id: words
        objectName: "groundWords"
        width: parent.width
        label: qsTr("Why it can't wait")
    }
    SignatureFields {
        id: signature
        width: parent.width
        app: screen.app
        onAccepted: screen.sign()
    }
}
