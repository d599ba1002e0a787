// What a page says first, in a frame.
import QtQuick
import Ambit

Rectangle {
    default property alias content: column.data

    implicitHeight: column.implicitHeight + 32
    radius: Theme.corner
    color: Theme.panel
    border.width: 2
    border.color: Theme.ink

    Column {
        id: column
        x: 20
        y: 16
        width: parent.width - 40
        spacing: 6
    }
}
