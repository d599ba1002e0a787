// On what terms a discrepancy may wait: in whose words, what is put up, what it limits, until when, who found that it may.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: terms

    required property App app
    required property bool byRule
    property bool removed: false
    property string role: "mechanic"
    readonly property var said: ({
            words: words.text,
            reference: reference.text,
            removed: removed,
            placard: placard.text,
            limits: limits.text,
            until: until.text,
            untilCounters: counters.values,
            determinedBy: by.text,
            determinedRole: role,
            determinedCertificate: certificate.text
        })

    spacing: 12

    WordsField {
        id: words
        objectName: "deferWords"
        width: parent.width
        label: qsTr("What was found on looking closer")
    }
    Field {
        id: reference
        objectName: "deferReference"
        width: parent.width
        visible: !terms.byRule
        label: qsTr("Where the basis says so: list and item, permission")
    }
    Heading {
        width: parent.width
        text: qsTr("Made safe")
    }
    Pair {
        id: made
        width: parent.width
        spacing: Theme.gap
        Choice {
            objectName: "deferDeactivated"
            width: made.each
            text: qsTr("Deactivated")
            chosen: !terms.removed
            onClicked: terms.removed = false
        }
        Choice {
            objectName: "deferRemoved"
            width: made.each
            text: qsTr("Removed")
            chosen: terms.removed
            onClicked: terms.removed = true
        }
    }
    WordsField {
        id: placard
        objectName: "deferPlacard"
        width: parent.width
        label: qsTr("Placard: what it says, and where")
    }
    WordsField {
        id: limits
        objectName: "deferLimits"
        width: parent.width
        label: qsTr("What the aircraft is not used for meanwhile")
    }
    Heading {
        width: parent.width
        text: qsTr("Until")
    }
    Field {
        id: until
        objectName: "deferUntil"
        width: parent.width
        label: qsTr("Date: year-month-day; empty: none")
    }
    Row {
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: [7, 30, 90]
            Key {
                required property int modelData
                objectName: "untilIn." + modelData
                width: (parent.width - 2 * Theme.gap) / 3
                text: qsTr("%1 days").arg(modelData)
                about: qsTr("From today on")
                onClicked: until.text = terms.app.entries.dayAfter(modelData)
            }
        }
    }
    CounterFields {
        id: counters
        width: parent.width
        its: terms.app.aircraftFile
        prefix: "untilCounter."
    }
    Heading {
        width: parent.width
        text: qsTr("Who found that it is no hazard")
    }
    Field {
        id: by
        objectName: "deferBy"
        width: parent.width
        label: qsTr("Name")
        text: terms.app.personName !== "" ? terms.app.personName : terms.app.signing.keys[0]?.name ?? ""
    }
    RoleChoice {
        width: parent.width
        app: terms.app
        prefix: "deferByRole."
        role: terms.role
        onChosen: role => terms.role = role
    }
    Field {
        id: certificate
        objectName: "deferByCertificate"
        width: parent.width
        label: qsTr("Certificate or licence number")
        text: terms.app.personCertificate
    }
}
