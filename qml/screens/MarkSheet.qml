// Something is in the way that the figure doesn't know: where it is, by two corners, and what it is.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: sheet

    required property App app
    required property RoundView round
    property string value: ""
    readonly property bool beside: width > height && width > Theme.mm(100)

    signal closed

    function mark(why: string) {
        if (sheet.round.markArea(place.outline, why))
            sheet.closed();
    }

    objectName: "sheetMark"
    anchors.fill: parent
    focus: true
    Accessible.role: Accessible.Pane
    Accessible.name: page.title
    Keys.onEscapePressed: sheet.closed()
    Keys.onBackPressed: sheet.closed()

    Rectangle {
        anchors.fill: parent
        color: Theme.ground
    }
    MarkPlace {
        id: place
        x: sheet.beside && Theme.leftHanded ? page.width : 0
        width: sheet.beside ? parent.width - page.width : parent.width
        height: sheet.beside ? parent.height : parent.height - page.height
        figure: sheet.round.figure
    }
    Page {
        id: page
        x: Theme.leftHanded ? 0 : parent.width - width
        anchors.bottom: parent.bottom
        width: sheet.beside ? Math.max(Theme.mm(52), parent.width * 0.42) : parent.width
        height: sheet.beside ? parent.height : Math.round(parent.height * 0.49)
        columnWidth: width - 2 * Theme.margin
        ground: Theme.panel
        title: qsTr("Something is in the way")
        subtitle: place.corners === 0 ? qsTr("Touch one corner of it on the figure.") : !place.whole ? qsTr("Touch the opposite corner.") : qsTr("%1. Drag a corner, or all of it, to its place.").arg(place.sizeText)
        backText: qsTr("Back")
        backName: "markCancel"
        onBack: sheet.closed()

        Row {
            width: parent.width
            spacing: 12
            Repeater {
                model: [qsTr("Wall"), qsTr("Another machine")]
                Key {
                    required property string modelData
                    required property int index
                    objectName: "markReason." + index
                    width: (page.columnWidth - 12) / 2
                    narrow: true
                    broad: true
                    enabled: place.whole
                    text: modelData
                    about: qsTr("It is marked as in the way")
                    onClicked: sheet.mark(modelData)
                }
            }
        }
        Field {
            id: words
            objectName: "markWords"
            width: parent.width
            label: qsTr("Or what else it is")
        }
        Row {
            width: parent.width
            spacing: 12
            Key {
                objectName: "markUndo"
                width: (parent.width - 12) / 2
                narrow: true
                enabled: place.corners > 0
                text: qsTr("Take back")
                about: qsTr("The last corner")
                onClicked: place.takeBack()
            }
            Key {
                objectName: "markDone"
                width: (parent.width - 12) / 2
                narrow: true
                enabled: place.whole && words.text.trim() !== ""
                text: qsTr("Mark it")
                about: words.text
                onClicked: sheet.mark(words.text)
            }
        }
    }
    Rectangle {
        // The page's edge.
        x: !sheet.beside ? 0 : Theme.leftHanded ? page.width - width : page.x
        y: sheet.beside ? 0 : page.y
        width: sheet.beside ? 2 : parent.width
        height: sheet.beside ? parent.height : 2
        color: Theme.line
    }
}
