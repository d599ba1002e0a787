// At the edge of what scrolls: that there is more, and where.
import QtQuick
import Ambit

Rectangle {
    required property Flickable of

    objectName: "scrollBar"
    parent: of
    z: 2
    anchors.right: parent.right
    anchors.rightMargin: 3
    y: of.visibleArea.yPosition * of.height
    width: 4
    height: Math.max(24, of.visibleArea.heightRatio * of.height)
    radius: 2
    visible: of.visibleArea.heightRatio < 0.999
    color: Theme.soft
}
