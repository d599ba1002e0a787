// Something in the way that isn't the aircraft's: a heavy outline, hatched both ways, and what it is in a word.
import QtQuick
import QtQuick.Shapes
import Ambit
import "geometry.js" as Geometry

Item {
    id: mark

    required property var outline
    required property string why
    /// A small figure has no room for the word.
    property bool worded: true
    /// Pixels a metre, and the figure's origin in the parent.
    property real perMetre: 1
    property point origin
    /// What of the parent is seen: the word stays within it.
    property size seen: Qt.size(Infinity, Infinity)
    readonly property rect box: Geometry.bounds(outline)
    readonly property var local: Geometry.scaled(outline, perMetre, -box.x * perMetre, -box.y * perMetre)

    x: box.x * perMetre + origin.x
    y: box.y * perMetre + origin.y
    width: box.width * perMetre
    height: box.height * perMetre
    Accessible.role: Accessible.StaticText
    Accessible.name: qsTr("In the way: %1").arg(why)

    Shape {
        anchors.fill: parent
        ShapePath {
            fillColor: Theme.panel
            strokeColor: Theme.drawn
            strokeWidth: 3
            joinStyle: ShapePath.MiterJoin
            PathSvg {
                path: Geometry.svg(mark.local, 1, 0, 0, true)
            }
        }
        ShapePath {
            fillColor: "transparent"
            strokeColor: Theme.drawn
            strokeWidth: 1.2
            PathSvg {
                path: Geometry.hatch(mark.local, 12) + Geometry.hatchBack(mark.local, 12)
            }
        }
    }
    Rectangle {
        x: Math.max(4 - mark.x, Math.min((mark.width - width) / 2, mark.seen.width - mark.x - width - 4))
        y: Math.max(4 - mark.y, Math.min((mark.height - height) / 2, mark.seen.height - mark.y - height - 4))
        visible: mark.worded && mark.why !== "" && width < mark.width + 40
        width: word.implicitWidth + 12
        height: word.implicitHeight + 4
        color: Theme.panel
        Label {
            id: word
            anchors.centerIn: parent
            text: mark.why.length > 18 ? mark.why.substring(0, 17) + "…" : mark.why
            wrapMode: Text.NoWrap
            font.pixelSize: Theme.small
            Accessible.ignored: true
        }
    }
}
