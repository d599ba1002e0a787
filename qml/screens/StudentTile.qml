// One of several who are followed: the figure small, what needs attention first, how far it is.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Ambit

T.AbstractButton {
    id: tile

    required property Student student
    readonly property FollowedRound round: student.round
    /// Of its height, what is in sight.
    property real seenFrom: 0
    property real seenTo: height
    readonly property bool calls: student.need !== "nothing"
    readonly property string look: ({
            "grounds": "finding",
            "found": "finding",
            "toSign": "next"
        })[student.need] ?? ""

    objectName: "student." + student.name
    implicitHeight: Math.max(Theme.mm(38), words.implicitHeight + 28)
    focusPolicy: Qt.StrongFocus
    text: student.name === "" ? qsTr("Somebody") : student.name
    Keys.onReturnPressed: tile.clicked()
    Keys.onEnterPressed: tile.clicked()
    Accessible.role: Accessible.Button
    Accessible.name: tile.text
    Accessible.description: Texts.line(tile.student.needText, tile.round ? tile.round.registration : "", tile.student.linkText)
    Accessible.onPressAction: tile.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: tile.down ? Theme.pressed : Theme.panel
        border.width: tile.calls ? 5 : 2
        border.color: Theme.ink
        FocusRing {
            of: tile
        }
    }
    Item {
        anchors.fill: parent
        Item {
            id: figurePlace
            x: 10
            y: 10
            width: tile.width * (Theme.scale > 1.4 && tile.width < Theme.mm(66) ? 0.3 : 0.42)
            height: parent.height - 20
            visible: tile.round !== null && tile.seenTo > 0 && tile.seenFrom < tile.height
            Repeater {
                model: tile.round ? 1 : 0
                FigureView {
                    width: figurePlace.width
                    height: figurePlace.height
                    figure: tile.round.figure
                    quiet: true
                    nextStand: tile.round.targetStandId
                    topInset: 12
                    bottomInset: 12
                    sideInset: 16
                    seenFrom: tile.seenFrom - figurePlace.y
                    seenTo: tile.seenTo - figurePlace.y
                }
            }
        }
        Column {
            id: words
            x: tile.round ? figurePlace.x + figurePlace.width + 10 : 20
            width: parent.width - x - 16
            anchors.verticalCenter: parent.verticalCenter
            spacing: 3
            Row {
                width: parent.width
                spacing: 10
                visible: tile.calls
                Mark {
                    id: mark
                    y: 2
                    visible: tile.look !== ""
                    look: tile.look
                    grounds: tile.student.need === "grounds"
                }
                Label {
                    width: parent.width - (mark.visible ? mark.width + 10 : 0)
                    text: tile.student.needText
                    strong: true
                    font.pixelSize: Theme.fitting(text, width, Theme.large)
                    Accessible.ignored: true
                }
            }
            Label {
                width: parent.width
                text: tile.text
                strong: true
                font.pixelSize: Theme.fitting(text, width, tile.calls ? Theme.normal : Theme.large)
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: tile.round !== null
                text: tile.round ? tile.round.registration + "\u00a0· " + Texts.unparted(qsTr("%1 of %2").arg(tile.round.settledCount).arg(tile.round.pointCount)) : ""
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: tile.round ? (tile.round.phase === "walking" ? tile.round.cardTitle : tile.round.conclusionText) : ""
                maximumLineCount: Theme.scale > 1.4 ? 6 : 2
                elide: Text.ElideRight
                color: Theme.soft
                font.pixelSize: Theme.small
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== "" && tile.round !== null && tile.student.link === "in"
                text: tile.round ? tile.round.inHandText : ""
                color: Theme.soft
                font.pixelSize: Theme.small
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: tile.student.link === "in" && tile.round === null ? qsTr("Here; no round is walked yet.") : tile.student.linkText
                font.pixelSize: Theme.small
                Accessible.ignored: true
            }
        }
    }
}
