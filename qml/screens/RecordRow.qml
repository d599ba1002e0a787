// A line of a record.
import QtQuick
import Ambit

Item {
    id: row

    property string look: ""
    property string text: ""
    property string about: ""
    property string at: ""

    /// Large text on a phone: the time stands above the words.
    readonly property bool above: Theme.scale > 1.4 && width < Theme.mm(60)

    implicitHeight: words.y + words.implicitHeight + 6

    Mark {
        id: mark
        y: words.y + 2
        visible: row.look !== ""
        look: row.look
        width: Theme.mark(18)
        height: width
    }
    Column {
        id: words
        x: row.look !== "" ? mark.width + 12 : 0
        y: row.above && row.at !== "" ? time.y + time.height : 6
        width: parent.width - x - (row.above ? 0 : time.width + 12)
        Label {
            width: parent.width
            text: row.text
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: row.about
            color: Theme.soft
            font.pixelSize: Theme.small
        }
    }
    Label {
        id: time
        anchors.right: parent.right
        y: 6
        text: row.at
        color: Theme.soft
        font.pixelSize: Theme.small
        wrapMode: Text.NoWrap
    }
}
