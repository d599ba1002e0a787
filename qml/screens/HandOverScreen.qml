// The aircraft and its file go to another owner (14 CFR 91.417(b)(2)).
import QtQuick
import Ambit

Page {
    id: screen

    required property App app

    function sign() {
        if (screen.app.entries.handOver({
            to: to.text,
            words: words.text
        }, signature.signature))
            screen.back();
    }

    objectName: "screenHandOver"
    title: qsTr("Hand over")
    subtitle: app.aircraftFile.registration
    backText: qsTr("Back")
    backName: "entryBack"
    keys: SignKeys {
        width: parent.width
        fields: signature
        onSignAsked: screen.sign()
    }

    Label {
        width: parent.width
        text: qsTr("With this record the aircraft and its whole file go to another owner. It is the last page that you sign; the next owner goes on from it.")
    }
    Field {
        id: to
        objectName: "handOverTo"
        width: parent.width
        label: qsTr("To")
    }
    WordsField {
        id: words
        objectName: "handOverWords"
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
