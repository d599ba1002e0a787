// What every record of work says (14 CFR 43.9(a)): what was done, when, by whom, under which kind of certificate, at which counters.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: fields

    required property AircraftFileView its
    /// Somebody else than who signs may have done it.
    property bool byWhom: false
    readonly property var values: ({
            description: description.text,
            completedOn: completed.text,
            performedBy: by.text,
            certificateKind: kind.text,
            counters: counters.values
        })
    /// Between what was done and the rest.
    default property alias between: slot.data

    spacing: 12

    WordsField {
        id: description
        objectName: "workDescription"
        width: parent.width
        label: qsTr("What was done")
    }
    Column {
        id: slot
        width: parent.width
        visible: children.length > 0
        spacing: 12
    }
    Field {
        id: completed
        objectName: "workCompletedOn"
        width: parent.width
        label: qsTr("Completed on: year-month-day")
        text: fields.its.today
    }
    Field {
        id: by
        objectName: "workPerformedBy"
        width: parent.width
        visible: fields.byWhom
        label: qsTr("Done by, if not by who signs")
    }
    Field {
        id: kind
        objectName: "workCertificateKind"
        width: parent.width
        label: qsTr("Kind of certificate you approve under")
    }
    Heading {
        width: parent.width
        visible: fields.its.counters.length > 0
        text: qsTr("What the counters said then")
    }
    CounterFields {
        id: counters
        width: parent.width
        its: fields.its
    }
}
