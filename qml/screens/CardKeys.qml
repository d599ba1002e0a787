// The card's broad keys, always at the same place, and under them where one goes to look.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: keys

    required property RoundView round
    required property string kind
    required property bool settling

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
            visible: keys.settling
            readonly property real half: (width - spacing) / 2
            Key {
                objectName: "keyFinding"
                width: pair.half
                broad: true
                cut: true
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
            text: qsTr("I am there")
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
        Row {
            id: links
            width: parent.width
            height: Theme.target
            readonly property real share: width / (keys.settling && keys.round.measured ? 4 : 3)
            opacity: keys.onPoint ? 1 : 0
            enabled: keys.onPoint
            Key {
                objectName: "linkWhy"
                width: links.share
                look: "link"
                text: qsTr("Why")
                onClicked: keys.sheetAsked("WhySheet.qml", {})
            }
            Key {
                objectName: "linkMeasure"
                visible: keys.settling && keys.round.measured
                width: links.share
                look: "link"
                text: qsTr("Measure")
                onClicked: keys.measureAsked()
            }
            Key {
                objectName: "linkPhoto"
                enabled: keys.settling
                width: links.share
                look: "link"
                text: qsTr("Photo")
                about: qsTr("A finding with a photo")
                onClicked: keys.findingAsked(true)
            }
            Key {
                objectName: "linkNotInspected"
                enabled: keys.settling
                width: links.share
                look: "link"
                text: qsTr("Not inspected")
                onClicked: keys.sheetAsked("NotInspectedSheet.qml", {})
            }
        }
    }
}
