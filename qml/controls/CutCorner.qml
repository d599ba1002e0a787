// The cut corner that marks a finding or a caution.
import QtQuick
import QtQuick.Shapes
import Ambit

Shape {
    id: cut

    property color colour: Theme.caution
    /// Of the frame it sits in.
    property real radius: 0

    implicitWidth: 26
    implicitHeight: implicitWidth
    ShapePath {
        fillColor: cut.colour
        strokeColor: "transparent"
        strokeWidth: -1
        startX: 0
        startY: cut.radius
        PathArc {
            x: cut.radius
            y: 0
            radiusX: cut.radius
            radiusY: cut.radius
        }
        PathLine {
            x: cut.width
            y: 0
        }
        PathLine {
            x: 0
            y: cut.height
        }
        PathLine {
            x: 0
            y: cut.radius
        }
    }
}
