// A line of a record.
import QtQuick
import Ambit

Item {
    id: row

    property string look: ""
    property string text: ""
    property string about: ""
    property string at: ""

    implicitHeight: words.implicitHeight + 12

    Mark {
        id: mark
        y: 8
        visible: row.look !== ""
        look: row.look
        width: 18
        height: 18
    }
    Column {
        id: words
        x: row.look !== "" ? 30 : 0
        y: 6
        width: parent.width - x - time.width - 12
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
