// A zone and how many findings were there: the number first, and the closer its hatching the more.
import QtQuick
import QtQuick.Shapes
import Ambit
import "geometry.js" as Geometry

Item {
    id: zone

    required property var modelData
    /// Pixels a metre, and the figure's origin in the zone's parent.
    property real perMetre: 1
    property point origin
    property var parts: []
    property bool chosen: false
    property bool inView: true
    readonly property string zoneId: modelData.zoneId
    readonly property int level: modelData.level
    readonly property rect box: Geometry.bounds(modelData.outline)
    readonly property var local: Geometry.scaled(modelData.outline, perMetre, -box.x * perMetre, -box.y * perMetre)
    readonly property point touchPoint: {
        const heart = Geometry.heart(modelData.outline, [], 0);
        return Qt.point((heart.x - box.x) * perMetre, (heart.y - box.y) * perMetre);
    }
    readonly property string hatching: {
        let path = "";
        if (level === 0)
            return path;
        for (const piece of Geometry.covered(parts, modelData.outline)) {
            const outline = Geometry.scaled(piece, perMetre, -box.x * perMetre, -box.y * perMetre);
            path += Geometry.hatch(outline, level === 1 ? 14 : 7);
            if (level === 3)
                path += Geometry.hatchBack(outline, 7);
        }
        return path;
    }

    signal asked

    function holds(x: real, y: real): bool {
        return shape.contains(Qt.point(x, y));
    }

    objectName: "foundZone." + zoneId
    x: box.x * perMetre + origin.x
    y: box.y * perMetre + origin.y
    width: box.width * perMetre
    height: box.height * perMetre
    Accessible.role: Accessible.Button
    Accessible.name: modelData.text
    Accessible.onPressAction: zone.asked()

    Shape {
        id: shape
        anchors.fill: parent
        visible: zone.inView
        containsMode: Shape.FillContains
        ShapePath {
            fillColor: "transparent"
            strokeColor: Theme.drawn
            strokeWidth: zone.level > 0 ? 1.2 : -1
            PathSvg {
                path: zone.hatching
            }
        }
        ShapePath {
            fillColor: "transparent"
            strokeColor: zone.chosen ? Theme.way : Theme.edge
            strokeWidth: zone.chosen ? 4 : 1
            joinStyle: ShapePath.MiterJoin
            PathSvg {
                path: Geometry.svg(zone.local, 1, 0, 0, true)
            }
        }
    }
    Rectangle {
        x: zone.touchPoint.x - width / 2
        y: zone.touchPoint.y - height / 2
        visible: zone.level > 0
        width: Math.max(height, digits.implicitWidth + 12)
        height: digits.implicitHeight + 8
        radius: height / 2
        color: Theme.panel
        border.width: 2
        border.color: Theme.ink
        Label {
            id: digits
            anchors.centerIn: parent
            text: zone.modelData.count
            strong: true
            lineHeight: 1
            Accessible.ignored: true
        }
    }
}
