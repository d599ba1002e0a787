// All records of the aircraft, the newest first, fifty more at a time.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property FileView file: app.file

    objectName: "screenRecords"
    title: qsTr("Records of %1").arg(file.registration)
    subtitle: qsTr("%1 of %2, the newest first").arg(file.records.count).arg(file.recordCount)
    backText: qsTr("Back")
    backName: "recordsBack"

    Repeater {
        model: screen.file.records
        RecordKey {
            width: screen.columnWidth
            onClicked: screen.file.open(recordId)
        }
    }
    Key {
        objectName: "recordsMore"
        width: parent.width
        broad: true
        visible: screen.file.records.count < screen.file.recordCount
        text: qsTr("Show earlier ones")
        onClicked: screen.file.showMore()
    }
}
