// One record: conclusion first, then what was found, then every point, then who signed, and its way out.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property RecordView record
    readonly property bool isRound: record.kind === "round"
    property var written: []

    signal stepAsked(string step, var values)

    objectName: "screenRecord"
    title: Texts.line(record.registration, record.walkName, "")
    subtitle: record.whenText + (record.placeText === "" ? "" : "\u00a0· " + record.placeText)
    backText: qsTr("Back")
    backName: "recordClose"
    columnWidth: Math.min(width - keysWidth - 2 * Theme.margin, Theme.mm(130))

    Framed {
        width: parent.width
        Label {
            width: parent.width
            text: screen.record.conclusionText
            strong: true
            font.pixelSize: Theme.fitting(text, width, Theme.huge)
            Accessible.role: Accessible.Heading
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: screen.record.reasons
        }
        Label {
            width: parent.width
            text: screen.record.signer
        }
        Label {
            objectName: "recordVerified"
            width: parent.width
            visible: screen.record.verified
            text: screen.record.verifiedText
            strong: true
        }
    }
    Caution {
        objectName: "recordNotVerified"
        width: parent.width
        warns: true
        texts: screen.record.verified ? [] : [screen.record.verifiedText]
    }
    Repeater {
        model: screen.record.said
        NamedText {
            required property var modelData
            width: screen.columnWidth
            name: modelData.name
            text: modelData.text
        }
    }
    Section {
        width: parent.width
        title: qsTr("Findings")
        none: screen.isRound ? qsTr("Nothing was found.") : ""
        rows: screen.record.findings
        findings: true
    }
    Section {
        width: parent.width
        title: qsTr("Not inspected")
        none: ""
        rows: Array.from(screen.record.notInspected).map(one => ({
                    look: "notInspected",
                    text: one.name,
                    about: one.why + "\n" + (one.basis === "" ? qsTr("No basis stated.") : qsTr("Basis: %1").arg(one.basis))
                }))
    }
    Section {
        width: parent.width
        title: qsTr("Counters")
        none: ""
        rows: Array.from(screen.record.counters).map(one => ({
                    text: one.name,
                    at: one.value
                }))
    }
    Heading {
        width: parent.width
        visible: screen.record.signatures.length > 0
        text: qsTr("Who signed")
    }
    Repeater {
        model: screen.record.signatures
        SignatureRow {
            objectName: "signature." + index
            required property int index
            width: screen.columnWidth
            its: screen.app.aircraftFile
        }
    }
    Grid {
        id: signing
        width: parent.width
        visible: screen.record.verified
        columns: width > Theme.mm(56) * Theme.scale ? 2 : 1
        spacing: 12
        readonly property real cell: (width - (columns - 1) * spacing) / columns
        Key {
            objectName: "recordCountersign"
            width: signing.cell
            broad: true
            text: qsTr("Sign under it")
            about: qsTr("Another person puts their signature under this record")
            onClicked: screen.stepAsked("Countersign", {})
        }
        Key {
            objectName: "recordBeside"
            width: signing.cell
            broad: true
            visible: screen.isRound
            text: qsTr("Side by side")
            about: qsTr("Laid beside another round of the same walk: who saw what")
            onClicked: screen.stepAsked("Beside", {
                recordId: screen.record.recordId
            })
        }
        Key {
            objectName: "recordReplay"
            width: signing.cell
            broad: true
            visible: screen.isRound
            text: qsTr("Walk it again")
            about: qsTr("The round as it went, at any speed, with the time at each stand")
            onClicked: if (screen.app.watch.showReplay(screen.record.recordId))
                screen.stepAsked("Follow", {})
        }
        Key {
            objectName: "recordKeys"
            width: signing.cell
            broad: true
            text: qsTr("Whose key counts")
            onClicked: screen.stepAsked("Keys", {})
        }
    }
    Heading {
        width: parent.width
        text: qsTr("Take it along")
    }
    Row {
        width: parent.width
        spacing: 12
        Field {
            id: folder
            objectName: "exportFolder"
            width: parent.width - browse.width - 12
            label: qsTr("Folder")
        }
        Key {
            id: browse
            objectName: "exportBrowse"
            height: folder.height
            text: qsTr("Choose")
            about: qsTr("Choose the folder")
            onClicked: dialog.ask()
        }
    }
    Key {
        objectName: "exportKey"
        width: parent.width
        text: screen.isRound ? qsTr("Write record, PDF and photos") : qsTr("Write record")
        onClicked: screen.written = screen.app.file.exportRecord(screen.record.recordId, Texts.fileUrl(folder.text))
    }
    Label {
        objectName: "exportedText"
        width: parent.width
        visible: screen.written.length > 0
        text: qsTr("Written:\n%1").arg(Texts.joined(screen.written, "\n"))
        wrapMode: Text.WrapAnywhere
        font.pixelSize: Theme.small
    }
    Section {
        width: parent.width
        title: qsTr("Every point")
        none: ""
        rows: Array.from(screen.record.points).map(one => ({
                    look: one.outcome,
                    text: one.name,
                    about: Texts.line(one.outcomeText, one.value, ""),
                    at: one.atText
                }))
        folded: true
        foldName: "recordPoints"
    }
    Section {
        width: parent.width
        title: qsTr("The whole round")
        none: ""
        rows: Array.from(screen.record.timeline).map(one => ({
                    text: one.text,
                    at: one.atText
                }))
        folded: true
        foldName: "recordTimeline"
    }
    Label {
        width: parent.width
        text: qsTr("Record %1").arg(screen.record.recordId)
        color: Theme.soft
        font.family: Theme.monospace
        font.pixelSize: Theme.small
        wrapMode: Text.WrapAnywhere
    }
    Asking {
        id: dialog
        what: "folder"
        onGiven: urls => folder.text = Texts.path(urls[0].toString())
    }
}
