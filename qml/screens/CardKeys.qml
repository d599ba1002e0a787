// The card's broad keys, always at the same place, and under them where one goes to look.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: keys

    required property RoundView round
    required property string kind
    required property bool settling
    property bool withMore: false
    /// Up there no hand is free: its points are told at the foot.
    property bool toTheFoot: false
    /// Figures are typed: with large text the links give the field their room.
    property bool measuring: false
    /// How far the links may reach beyond the keys.
    property real bleed: 0

    signal soundAsked
    signal findingAsked(bool camera)
    signal measureAsked
    signal sheetAsked(string file, var more)
    signal reviewAsked

    readonly property bool onPoint: kind === "settle"

    implicitHeight: column.implicitHeight

    Column {
        id: column
        width: parent.width
        Row {
            id: pair
            width: parent.width
            spacing: 12
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            visible: keys.settling
            readonly property real half: (width - spacing) / 2
            Key {
                objectName: "keyFinding"
                width: pair.half
                broad: true
                cut: true
                narrow: true
                letter: "F"
                text: qsTr("Finding")
                about: keys.round.cardTitle
                onClicked: keys.findingAsked(false)
            }
            Key {
                objectName: "keySound"
                width: pair.half
                broad: true
                focus: true
                narrow: true
                look: "solid"
                letter: "S"
                text: qsTr("Sound")
                about: keys.round.cardTitle
                onClicked: keys.soundAsked()
            }
        }
        Row {
            width: parent.width
            spacing: 12
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            visible: keys.onPoint && !keys.settling
            Key {
                objectName: "keyBackToWalk"
                width: pair.half
                broad: true
                text: qsTr("Back to the walk")
                onClicked: keys.round.choosePoint("")
            }
            Key {
                objectName: "reopen." + keys.round.pointId
                width: pair.half
                broad: true
                text: qsTr("Settle again")
                onClicked: keys.sheetAsked("ReopenSheet.qml", {
                    pointId: keys.round.pointId,
                    name: keys.round.cardTitle
                })
            }
        }
        Key {
            objectName: "keyHere"
            width: parent.width
            visible: keys.kind === "go"
            broad: true
            look: "solid"
            letter: "I"
            text: keys.toTheFoot ? qsTr("I am at the foot of it") : qsTr("I am there")
            about: keys.round.cardTitle
            onClicked: keys.round.atStand()
        }
        Key {
            objectName: "keySet"
            width: parent.width
            visible: keys.kind === "set"
            broad: true
            look: "solid"
            letter: "D"
            text: qsTr("Done")
            about: keys.round.cardTitle
            onClicked: keys.round.changeSetting()
        }
        Key {
            objectName: "keyReview"
            width: parent.width
            visible: keys.kind === "done"
            broad: true
            look: "solid"
            letter: "R"
            text: qsTr("Review")
            onClicked: keys.reviewAsked()
        }
        Key {
            objectName: "resumeKey"
            width: parent.width
            visible: keys.kind === "paused"
            broad: true
            look: "solid"
            letter: "P"
            text: qsTr("Go on")
            onClicked: keys.round.resume()
        }
        Flow {
            id: links
            visible: !(keys.measuring && Theme.scale > 1.4)
            x: -keys.bleed
            width: parent.width + 2 * keys.bleed
            height: rows * cell
            /// Two lines of large text.
            readonly property real cell: Math.max(Theme.target, Math.ceil(2.7 * Theme.normal))
            readonly property int count: (keys.kind === "go" ? 2 : 3) + (measure.visible ? 1 : 0) + (keys.withMore ? 1 : 0)
            /// Large text takes two rows.
            readonly property int rows: keys.onPoint && width < count * Theme.mm(11) * Theme.scale ? 2 : 1
            layoutDirection: (keys.onPoint || keys.kind === "go") !== Theme.leftHanded ? Qt.LeftToRight : Qt.RightToLeft
            readonly property real share: Math.floor(width / Math.ceil(count / rows))
            Key {
                objectName: "linkWhy"
                width: links.share
                height: links.cell
                narrow: true
                visible: keys.onPoint
                look: "link"
                letter: "W"
                text: qsTr("Why")
                onClicked: keys.sheetAsked("WhySheet.qml", {})
            }
            Key {
                id: measure
                objectName: "linkMeasure"
                width: links.share
                height: links.cell
                narrow: true
                visible: keys.settling && keys.round.measured
                look: "link"
                text: qsTr("Measure")
                onClicked: keys.measureAsked()
            }
            Key {
                objectName: "linkPhoto"
                width: links.share
                height: links.cell
                narrow: true
                visible: keys.onPoint
                enabled: keys.settling
                look: "link"
                text: qsTr("Photo")
                about: qsTr("To be compared, or measured in")
                onClicked: keys.sheetAsked("MeasureSheet.qml", {})
            }
            Key {
                objectName: "linkNotInspected"
                width: links.share
                height: links.cell
                narrow: true
                visible: keys.onPoint
                enabled: keys.settling
                look: "link"
                text: qsTr("Not inspected")
                onClicked: keys.sheetAsked("NotInspectedSheet.qml", {})
            }
            Key {
                objectName: "linkBlocked"
                width: links.share
                height: links.cell
                narrow: true
                visible: keys.kind === "go"
                look: "link"
                text: qsTr("Can't be used")
                about: keys.round.targetStandName
                onClicked: keys.sheetAsked("BlockedSheet.qml", {
                    standId: keys.round.targetStandId,
                    name: keys.round.targetStandName
                })
            }
            Key {
                objectName: "linkMark"
                width: links.share
                height: links.cell
                narrow: true
                visible: keys.kind === "go"
                look: "link"
                text: qsTr("In the way")
                about: qsTr("A wall, another machine: mark it on the figure")
                onClicked: keys.sheetAsked("MarkSheet.qml", {})
            }
            Key {
                objectName: "moreKey"
                width: links.share
                height: links.cell
                narrow: true
                visible: keys.withMore
                look: "link"
                text: qsTr("More")
                about: qsTr("Review, note, file, night, text size")
                onClicked: keys.sheetAsked("MoreSheet.qml", {})
            }
        }
    }
}
