// Where the keyboard is.
import QtQuick
import Ambit

Rectangle {
    required property Item of

    anchors.fill: parent
    anchors.margins: -3
    visible: of.activeFocus && Theme.keyboard
    color: "transparent"
    radius: Theme.corner + 3
    border.width: 3
    border.color: Theme.way
}
