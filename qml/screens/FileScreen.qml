// One aircraft's file on one page: what stands against fit, what is open, what comes due, the last rounds; then the ways further in.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property FileView file: app.file
    readonly property AircraftFileView its: app.aircraftFile
    readonly property bool chosen: file.registration !== ""
    readonly property int fewDue: 3
    property bool allDue: false
    /// What is passed or comes soon, and what comes first of the rest: not a page of what nobody knows.
    readonly property var dueShown: Array.from(its.due).filter((one, i) => allDue || i < fewDue || (one.verdict !== "fine" && one.verdict !== "unknown"))

    readonly property bool wide: width > Theme.mm(140)

    signal stepAsked(string step, var values)

    function ask(key: string) {
        screen.stepAsked("Discrepancy", {
            key: key
        });
    }

    objectName: "screenFile"
    columnWidth: Math.min(width - keysWidth - 2 * Theme.margin, Theme.mm(wide ? 170 : 118))
    title: chosen ? qsTr("File of %1").arg(file.registration) : qsTr("File")
    subtitle: !chosen ? qsTr("Choose an aircraft") : its.reading ? qsTr("The file is being read …") : file.recordCount === 1 ? qsTr("1 record") : qsTr("%1 records").arg(file.recordCount)

    Flow {
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: screen.app.aircraft
            Key {
                required property string registration
                required property string airframeName
                objectName: "fileAircraft." + registration
                text: registration
                about: airframeName
                look: registration === screen.file.registration ? "solid" : "outline"
                onClicked: screen.file.registration = registration
            }
        }
    }
    Item {
        width: screen.columnWidth
        height: screen.wide ? Math.max(now.height, then.height) : then.y + then.height
        visible: screen.chosen
        Column {
            id: now
            width: screen.wide ? (parent.width - 24) / 2 : parent.width
            spacing: 12
            FileState {
                width: parent.width
                its: screen.its
            }
            Heading {
                width: parent.width
                visible: screen.its.known
                text: qsTr("Open discrepancies")
            }
            Label {
                width: parent.width
                visible: screen.its.known && screen.its.open.length === 0
                text: qsTr("None.")
            }
            Repeater {
                model: screen.its.open
                DiscrepancyKey {
                    width: now.width
                    onClicked: screen.ask(key)
                }
            }
            Heading {
                width: parent.width
                visible: screen.its.putRight.length > 0
                text: qsTr("Put right, to be seen on the next round")
            }
            Repeater {
                model: screen.its.putRight
                DiscrepancyKey {
                    width: now.width
                    onClicked: screen.ask(key)
                }
            }
            Heading {
                width: parent.width
                visible: screen.its.due.length > 0
                text: qsTr("Due next")
            }
            Repeater {
                model: screen.dueShown
                DueRow {
                    width: now.width
                }
            }
            Key {
                objectName: "fileAllDue"
                width: parent.width
                visible: screen.dueShown.length < screen.its.due.length
                text: qsTr("Show all %1 that come due").arg(screen.its.due.length)
                onClicked: screen.allDue = true
            }
        }
        Column {
            id: then
            x: screen.wide ? now.width + 24 : 0
            y: screen.wide ? 0 : now.height + 12
            width: now.width
            spacing: 12
            Heading {
                width: parent.width
                text: qsTr("Last rounds")
            }
            Label {
                width: parent.width
                visible: screen.file.lastRounds.count === 0
                text: qsTr("There is no round yet. It leaves a record when it is signed.")
            }
            Repeater {
                model: screen.file.lastRounds
                RecordKey {
                    width: then.width
                    justNow: recordId === screen.app.signing.recordId
                    onClicked: screen.file.open(recordId)
                }
            }
            Key {
                objectName: "fileRecords"
                width: parent.width
                visible: screen.file.recordCount > 0
                text: qsTr("All records: %1").arg(screen.file.recordCount)
                onClicked: screen.stepAsked("Records", {})
            }
            FileKeys {
                width: parent.width
                ready: screen.its.known && !screen.its.reading
                onAsked: step => screen.stepAsked(step, {})
            }
        }
    }
}
