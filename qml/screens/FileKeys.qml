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
            step: "Part",
            name: "filePart",
            text: qsTr("Part changed")
        },
        {
            step: "HandOver",
            name: "fileHandOver",
            text: qsTr("Hand over")
        }
    ]
    readonly property var keeping: [
        {
            step: "Keys",
            name: "fileKeys",
            text: qsTr("Whose key counts")
        },
        {
            step: "Retention",
            name: "fileRetention",
            text: qsTr("What may go")
        }
    ]

    signal asked(string step)

    spacing: 12

    Repeater {
        model: [
            {
                title: qsTr("Look into it"),
                keys: column.looking,
                signs: false
            },
            {
                title: qsTr("Sign something new"),
                keys: column.signing,
                signs: true
            },
            {
                title: qsTr("Keep it in order"),
                keys: column.keeping,
                signs: false
            }
        ]
        Column {
            id: part
            required property var modelData
            width: column.width
            spacing: 12
            Heading {
                width: parent.width
                text: part.modelData.title
            }
            Grid {
                id: grid
                width: parent.width
                columns: width > Theme.mm(56) * Theme.scale ? 2 : 1
                spacing: 12
                Repeater {
                    model: part.modelData.keys
                    Key {
                        required property var modelData
                        objectName: modelData.name
                        width: (grid.width - (grid.columns - 1) * grid.spacing) / grid.columns
                        broad: true
                        enabled: !part.modelData.signs || column.ready
                        text: modelData.text
                        about: part.modelData.signs ? qsTr("Leaves a signed record in the file") : ""
                        onClicked: column.asked(modelData.step)
                    }
                }
            }
        }
    }
}
