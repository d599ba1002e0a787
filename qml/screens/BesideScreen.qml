// Two rounds of the same walk side by side: first the other one is chosen, then what each saw.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property string recordId
    readonly property BesideView its: app.beside
    readonly property var others: its.others(recordId)
    readonly property var first: its.first
    readonly property var second: its.second

    component Side: Column {
        id: side
        required property string head
        required property var who
        spacing: 2
        Label {
            width: parent.width
            text: side.head
            color: Theme.soft
            font.pixelSize: Theme.small
        }
        Label {
            width: parent.width
            text: side.who.who ?? ""
            strong: true
        }
        Label {
            width: parent.width
            text: Texts.line(side.who.whenText ?? "", side.who.conclusionText ?? "", "")
        }
        Label {
            width: parent.width
            visible: side.who.alone ?? false
            text: qsTr("On their own: wasn't shown what others found that day")
            color: Theme.soft
            font.pixelSize: Theme.small
        }
    }
    component Point: Column {
        id: point
        required property var modelData
        width: screen.columnWidth
        spacing: 4
        Label {
            width: parent.width
            topPadding: 6
            text: point.modelData.name
            strong: true
        }
        RecordRow {
            width: parent.width
            look: point.modelData.firstLook
            text: point.modelData.firstText
            about: screen.first.who
        }
        RecordRow {
            width: parent.width
            look: point.modelData.secondLook
            text: point.modelData.secondText
            about: screen.second.who
        }
        Rectangle {
            width: parent.width
            height: 1
            color: Theme.line
        }
    }

    objectName: "screenBeside"
    title: qsTr("Side by side")
    subtitle: its.laid ? "" : qsTr("Choose another round of the same walk")
    backText: qsTr("Back")
    backName: "besideBack"
    columnWidth: Math.min(width - keysWidth - 2 * Theme.margin, Theme.mm(130))
    Component.onCompleted: its.clear()

    Label {
        objectName: "besideNone"
        width: parent.width
        visible: !screen.its.laid && screen.others.length === 0
        text: qsTr("There is no other record of this walk with the same description of the machine.")
    }
    Repeater {
        model: screen.its.laid ? [] : screen.others
        RowKey {
            required property var modelData
            objectName: "besideWith." + modelData.recordId
            width: screen.columnWidth
            text: modelData.who
            about: Texts.line(modelData.whenText, modelData.conclusionText, "")
            onClicked: screen.its.lay(screen.recordId, modelData.recordId)
        }
    }
    Column {
        width: parent.width
        visible: screen.its.laid
        spacing: 12
        Framed {
            width: parent.width
            Label {
                objectName: "besideSame"
                width: parent.width
                text: screen.its.sameText
                strong: true
                font.pixelSize: Theme.title
            }
            Label {
                objectName: "besideKappa"
                width: parent.width
                text: screen.its.kappaText
                font.pixelSize: Theme.large
            }
            Label {
                width: parent.width
                text: qsTr("Kappa is agreement beyond chance: 1 is full, 0 no better than chance. Where both say sound nearly throughout, it tells little. Nobody is right by it.")
                color: Theme.soft
                font.pixelSize: Theme.small
            }
        }
        Grid {
            id: sides
            width: parent.width
            columns: width > Theme.mm(56) * Theme.scale ? 2 : 1
            spacing: 12
            readonly property real cell: (width - (columns - 1) * spacing) / columns
            Side {
                width: sides.cell
                head: qsTr("First")
                who: screen.first
            }
            Side {
                width: sides.cell
                head: qsTr("Second")
                who: screen.second
            }
        }
        Heading {
            width: parent.width
            visible: screen.its.differing.length > 0
            text: qsTr("Seen differently")
        }
        Repeater {
            model: screen.its.laid ? screen.its.differing : []
            Point {
                objectName: "beside." + modelData.id
            }
        }
        Heading {
            width: parent.width
            visible: screen.its.single.length > 0
            text: qsTr("Settled by one only")
        }
        Repeater {
            model: screen.its.laid ? screen.its.single : []
            Point {
                objectName: "beside." + modelData.id
            }
        }
        Heading {
            width: parent.width
            text: qsTr("How often each word met which")
        }
        Label {
            width: parent.width
            text: qsTr("Rows: the first. Columns: the second.")
            color: Theme.soft
            font.pixelSize: Theme.small
        }
        Grid {
            id: counts
            objectName: "besideTable"
            width: parent.width
            columns: 4
            readonly property real cell: width / 4
            Repeater {
                model: {
                    const cells = [""];
                    for (const row of screen.its.table)
                        cells.push(row.name);
                    for (const row of screen.its.table)
                        cells.push(row.name, ...row.counts);
                    return cells;
                }
                Label {
                    required property var modelData
                    required property int index
                    width: counts.cell
                    padding: 4
                    text: modelData
                    strong: index > 4 && index % 5 === 0
                    color: index < 4 || index % 4 === 0 ? Theme.soft : Theme.ink
                    font.pixelSize: Theme.giving(String(modelData), 0.9 * (width - 2 * padding), index < 4 || index % 4 === 0 ? Theme.small : Theme.large)
                }
            }
        }
    }
}
