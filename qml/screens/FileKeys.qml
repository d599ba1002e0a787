// The ways further into the file, and what can be signed without a discrepancy.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: column

    /// The file has been read: what is signed now goes after its latest records.
    property bool ready: false
    readonly property var looking: [
        {
            step: "Search",
            name: "fileSearch",
            text: qsTr("Search")
        },
        {
            step: "History",
            name: "fileHistory",
            text: qsTr("History of a point")
        },
        {
            step: "Findings",
            name: "fileFindings",
            text: qsTr("Where findings were")
        },
        {
            step: "Verify",
            name: "fileVerify",
            text: qsTr("Verify")
        },
        {
            step: "Export",
            name: "fileExport",
            text: qsTr("Write the whole file")
        }
    ]
    readonly property var signing: [
        {
            step: "Reading",
            name: "fileReadCounters",
            text: qsTr("Read counters")
        },
        {
            step: "Rectify",
            name: "fileWork",
            text: qsTr("Inspection or work done")
        },
        {
            step: "HandOver",
            name: "fileHandOver",
            text: qsTr("Hand over")
        }
    ]

    signal asked(string step)

    spacing: 12

    Heading {
        width: parent.width
        text: qsTr("Look into it")
    }
    Repeater {
        model: [column.looking, column.signing]
        Grid {
            id: grid
            required property var modelData
            required property int index
            readonly property bool signs: index === 1
            width: column.width
            columns: width > Theme.mm(56) * Theme.scale ? 2 : 1
            spacing: 12
            Repeater {
                model: grid.modelData
                Key {
                    required property var modelData
                    objectName: modelData.name
                    width: (grid.width - (grid.columns - 1) * grid.spacing) / grid.columns
                    broad: true
                    enabled: !grid.signs || column.ready
                    text: modelData.text
                    about: grid.signs ? qsTr("Leaves a signed record in the file") : ""
                    onClicked: column.asked(modelData.step)
                }
            }
        }
    }
}
