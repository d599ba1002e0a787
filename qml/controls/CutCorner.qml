// The cut corner that marks a finding or a caution.
import QtQuick
import Ambit

Item {
    id: cut

    property color colour: Theme.caution
    /// Of the frame it sits in.
    property real radius: 0

    implicitWidth: Theme.mark(26)
    implicitHeight: implicitWidth
    clip: true
    Accessible.ignored: true

    Rectangle {
        // A square on its corner: one of its four quarters is seen.
        readonly property real inset: cut.radius * 0.15
        x: inset - width / 2
        y: inset - height / 2
        width: (cut.width - inset) * Math.SQRT2
        height: width
        rotation: 45
        color: cut.colour
    }
}
