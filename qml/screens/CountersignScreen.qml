// Another person puts their signature under a record: an instructor, an owner, a second mechanic.
import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property RecordView record: app.file.record

    function sign() {
        if (screen.app.signing.countersign(screen.record.recordId, signature.signature))
            screen.back();
    }

    objectName: "screenCountersign"
    title: qsTr("Sign under it")
    subtitle: record ? Texts.line(record.registration, record.walkName, record.whenText) : ""
    backText: qsTr("Back")
    backName: "entryBack"
    keys: SignKeys {
        width: parent.width
        fields: signature
        onSignAsked: screen.sign()
    }

    Framed {
        width: parent.width
        Label {
            width: parent.width
            text: screen.record ? screen.record.conclusionText : ""
            strong: true
            font.pixelSize: Theme.fitting(text, width, Theme.huge)
            Accessible.role: Accessible.Heading
        }
        Label {
            width: parent.width
            text: screen.record ? Array.from(screen.record.signatures).map(one => one.who).join("\n") : ""
        }
    }
    Label {
        width: parent.width
        text: qsTr("You sign the record as it stands, and the signatures already under it. Nothing in it changes.")
    }
    SignatureFields {
        id: signature
        width: parent.width
        app: screen.app
        role: "instructor"
        whose: ""
        without: screen.record ? Array.from(screen.record.signatures).map(one => one.key) : []
        onAccepted: screen.sign()
    }
}
