// What can be chosen: a broad row with a ring that fills, or a square where several can be.
import QtQuick
import QtQuick.Templates as T
import Ambit

Rectangle {
    id: frame

    required property T.AbstractButton of
    required property bool chosen
    property bool square: false
    property bool cut: false
    property color cutColour: Theme.caution

    radius: Theme.corner
    color: of.down ? Theme.pressed : chosen ? Theme.wash : Theme.panel
    border.width: chosen ? 3 : 1
    border.color: chosen ? Theme.way : Theme.soft

    CutCorner {
        visible: frame.cut
        width: Theme.mark(22)
        height: width
        radius: Theme.corner
        colour: frame.cutColour
    }
    Rectangle {
        x: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        width: Theme.mark(22)
        height: width
        radius: frame.square ? 3 : width / 2
        color: "transparent"
        border.width: frame.chosen ? Theme.mark(7) : Theme.mark(2)
        border.color: frame.chosen ? Theme.way : Theme.ink
    }
    FocusRing {
        of: frame.of
    }
}
