// What something is called, and below it what is said of it.
import QtQuick
import Ambit

Column {
    id: named

    property string name: ""
    property string text: ""

    spacing: 1

    Label {
        width: parent.width
        text: named.name
        color: Theme.soft
        font.pixelSize: Theme.small
    }
    Label {
        width: parent.width
        text: named.text
    }
}
