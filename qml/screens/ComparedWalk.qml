// What the chosen walk costs this way round, against the order in which it is listed. Its height is the same before the figures are
// there, so that nothing moves under a finger.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: table

    required property PlanComparison comparison
    readonly property real figureWidth: Math.min(width * 0.3, Theme.mm(24) * Theme.scale)

    objectName: "comparedWalk"
    spacing: 6
    visible: comparison.ready || comparison.pending
    Accessible.role: Accessible.StaticText
    Accessible.name: comparison.ready ? comparison.spoken : qsTr("The two orders are being compared")

    component Figure: Label {
        width: table.figureWidth
        anchors.bottom: parent ? parent.bottom : undefined
        horizontalAlignment: Text.AlignRight
        Accessible.ignored: true
    }

    Item {
        width: parent.width
        height: Math.max(ourHead.implicitHeight, listedHead.implicitHeight)
        Figure {
            id: ourHead
            anchors.right: listedHead.left
            text: qsTr("This way round")
            strong: true
            font.pixelSize: Theme.small
        }
        Figure {
            id: listedHead
            anchors.right: parent.right
            text: qsTr("As listed")
            color: Theme.soft
            font.pixelSize: Theme.small
        }
    }
    Rectangle {
        width: parent.width
        height: 1
        color: Theme.line
    }
    Repeater {
        model: table.comparison.rows
        Item {
            id: row
            required property var modelData
            width: table.width
            height: Math.max(what.implicitHeight, planned.implicitHeight)
            Label {
                id: what
                width: parent.width - 2 * table.figureWidth
                text: row.modelData.what
                Accessible.ignored: true
            }
            Figure {
                id: planned
                anchors.right: listed.left
                text: row.modelData.planned
                strong: true
            }
            Figure {
                id: listed
                anchors.right: parent.right
                text: row.modelData.listed
                color: Theme.soft
            }
        }
    }
    Label {
        objectName: "comparedProof"
        width: parent.width
        height: Math.max(implicitHeight, twoLines.implicitHeight)
        text: table.comparison.proof
        font.pixelSize: Theme.small
        color: Theme.soft
        Accessible.ignored: true
    }
    Label {
        id: twoLines
        visible: false
        text: " \n "
        font.pixelSize: Theme.small
        Accessible.ignored: true
    }
}
