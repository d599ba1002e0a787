// A zone and its state, told by pattern: hollow = to do, heavy outline = on the card, filled = sound, filled with a cut corner =
// finding, hatched = not inspected, a dashed outline where something is open.
import QtQuick
import QtQuick.Shapes
import Ambit
import "geometry.js" as Geometry

Item {
    id: zone

    required property string zoneId
    required property string name
    required property var outline
    required property string look
    required property bool current
    required property bool openOwed
    required property int settled
    required property int total

    /// Pixels a metre, and the figure's origin in the zone's parent.
    property real perMetre: 1
    property point origin
    /// Places that are touched before this zone is, in metres.
    property var away: []
    property real clear: 0
    property bool marked: false
    /// The aircraft's parts: what is settled is filled where there is something of the aircraft.
    property var parts: []
    property bool inView: true
    readonly property var pieces: look === "none" || look === "todo" ? [] : Geometry.covered(parts, outline)
    readonly property string piecesPath: Geometry.svgAll(pieces, perMetre, -box.x * perMetre, -box.y * perMetre, true)
    readonly property bool used: look !== "none"
    readonly property rect box: Geometry.bounds(outline)
    readonly property var local: Geometry.scaled(outline, perMetre, -box.x * perMetre, -box.y * perMetre)
    readonly property point touchPoint: {
        const heart = Geometry.heart(outline, away, clear);
        return Qt.point((heart.x - box.x) * perMetre, (heart.y - box.y) * perMetre);
    }
    readonly property string stateText: {
        const states = {
            "none": qsTr("nothing of this walk"),
            "todo": qsTr("to do"),
            "sound": qsTr("sound"),
            "finding": qsTr("finding"),
            "notInspected": qsTr("not inspected")
        };
        return states[look] + (used ? ", " + qsTr("%1 of %2 settled").arg(settled).arg(total) : "") + (openOwed ? ", " + qsTr("something is open") : "");
    }

    /// Else it is only drawn.
    property bool touchable: true

    signal asked

    function hatches(): string {
        let path = "";
        for (const piece of zone.pieces)
            path += Geometry.hatch(Geometry.scaled(piece, zone.perMetre, -zone.box.x * zone.perMetre, -zone.box.y * zone.perMetre), 7);
        return path;
    }

    objectName: "zone." + zoneId
    x: box.x * perMetre + origin.x
    y: box.y * perMetre + origin.y
    width: box.width * perMetre
    height: box.height * perMetre
    Accessible.role: touchable ? Accessible.Button : Accessible.StaticText
    Accessible.name: name
    Accessible.description: stateText
    Accessible.onPressAction: zone.asked()

    /// Is this place, in the zone's own pixels, inside its outline?
    function holds(x: real, y: real): bool {
        return shape.contains(Qt.point(x, y));
    }

    Shape {
        id: shape
        anchors.fill: parent
        containsMode: Shape.FillContains
        visible: zone.used && zone.inView
        ShapePath {
            fillColor: zone.look === "sound" ? Theme.settled : zone.look === "finding" ? Theme.found : "transparent"
            fillRule: ShapePath.WindingFill
            strokeWidth: -1
            PathSvg {
                path: zone.piecesPath
            }
        }
        ShapePath {
            fillColor: "transparent"
            strokeColor: zone.current || zone.marked ? Theme.way : zone.openOwed ? Theme.drawn : Theme.edge
            strokeWidth: zone.current ? 4 : zone.marked ? 3 : zone.openOwed ? 1.4 : 1
            strokeStyle: zone.openOwed && !zone.current ? ShapePath.DashLine : ShapePath.SolidLine
            dashPattern: [5, 4]
            joinStyle: ShapePath.MiterJoin
            PathSvg {
                path: Geometry.svg(zone.local, 1, 0, 0, true)
            }
        }
        ShapePath {
            fillColor: "transparent"
            strokeColor: zone.look === "notInspected" ? Theme.drawn : "transparent"
            strokeWidth: zone.look === "notInspected" ? 1.2 : -1
            PathSvg {
                path: zone.look === "notInspected" ? zone.hatches() : ""
            }
        }
        ShapePath {
            // Paper shows between the fill and its cut corner.
            fillColor: zone.look === "finding" ? Theme.panel : "transparent"
            strokeWidth: -1
            PathSvg {
                path: zone.look === "finding" ? Geometry.cutCorner(zone.local, 20) : ""
            }
        }
        ShapePath {
            fillColor: zone.look === "finding" ? Theme.caution : "transparent"
            strokeWidth: -1
            PathSvg {
                path: zone.look === "finding" ? Geometry.cutCorner(zone.local, 15) : ""
            }
        }
    }
}
