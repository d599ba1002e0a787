// Does every record hold, and is none missing? What doesn't, and what is, by name.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property VerificationView verdict: app.verification

    Component.onCompleted: verdict.run(app.file.registration)

    objectName: "screenVerify"
    title: qsTr("Verify")
    subtitle: app.file.registration
    backText: qsTr("Back")
    backName: "verifyBack"
    keys: Key {
        objectName: "verifyKey"
        narrow: true
        width: parent.width
        broad: true
        enabled: !screen.verdict.running
        text: qsTr("Verify again")
        onClicked: screen.verdict.run(screen.app.file.registration)
    }

    Label {
        objectName: "verifyRunning"
        width: parent.width
        visible: screen.verdict.running
        text: qsTr("%1 of %2 records looked at: each one's signatures, its words, and the earlier ones that it names …").arg(screen.verdict.lookedAt).arg(Math.max(screen.verdict.all, screen.app.file.recordCount))
    }
    Framed {
        width: parent.width
        visible: screen.verdict.done && screen.verdict.good
        Label {
            objectName: "verifyGood"
            width: parent.width
            text: qsTr("No page is missing and none was changed.")
            strong: true
            font.pixelSize: Theme.title
        }
        Label {
            width: parent.width
            text: screen.verdict.records === 1 ? qsTr("1 record looked at: its signature holds, and it names no earlier one that isn't here.") : qsTr("%1 records looked at: every signature holds, and every earlier record that one names is here.").arg(screen.verdict.records)
        }
    }
    Caution {
        objectName: "verifyBad"
        width: parent.width
        warns: true
        texts: !screen.verdict.done || screen.verdict.good ? [] : [qsTr("%1 records looked at: %2 don't hold, %3 are missing.").arg(screen.verdict.records).arg(screen.verdict.broken.length).arg(screen.verdict.missing.length)]
    }
    Heading {
        width: parent.width
        visible: screen.verdict.done && screen.verdict.broken.length > 0
        text: qsTr("Don't hold")
    }
    Repeater {
        model: screen.verdict.done ? screen.verdict.broken : []
        RowKey {
            required property var modelData
            objectName: "broken." + modelData.recordId
            width: screen.columnWidth
            look: "finding"
            grounds: true
            text: modelData.name
            about: modelData.words
            enabled: modelData.recordId !== ""
            onClicked: screen.app.file.open(modelData.recordId)
        }
    }
    Heading {
        width: parent.width
        visible: screen.verdict.done && screen.verdict.missing.length > 0
        text: qsTr("Missing")
    }
    Repeater {
        model: screen.verdict.done ? screen.verdict.missing : []
        RecordRow {
            required property var modelData
            objectName: "hole." + modelData.recordId
            width: screen.columnWidth
            look: "todo"
            text: modelData.name
            about: modelData.words
        }
    }
}
