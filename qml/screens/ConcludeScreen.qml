// Fit or not fit: the pilot decides. Neither is chosen beforehand.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property RoundView round
    property string chosen: ""
    property var standing: round.against(true)
    property var warnings: round.warnings()

    objectName: "screenConclude"
    title: qsTr("Conclusion")
    subtitle: Texts.line(round.registration, round.person, "")
    backText: qsTr("Back")
    backName: "concludeBack"
    keys: Key {
        objectName: "concludeDone"
        narrow: true
        width: parent.width
        broad: true
        look: "solid"
        enabled: screen.chosen !== ""
        text: screen.chosen === "" ? qsTr("Choose first") : screen.chosen === "fit" ? qsTr("Conclude: fit") : qsTr("Conclude: not fit")
        onClicked: screen.round.conclude(screen.chosen === "fit", reasons.text)
    }
    Connections {
        target: screen.round
        function onProgressChanged() {
            screen.standing = screen.round.against(true);
            screen.warnings = screen.round.warnings();
        }
    }

    Label {
        width: parent.width
        text: qsTr("In your judgement, is this aircraft fit for this flight?")
        font.pixelSize: Theme.large
    }
    Pair {
        id: pair
        width: parent.width
        Choice {
            objectName: "concludeNotFit"
            width: pair.each
            height: Math.max(implicitHeight, pair.tallest)
            broad: true
            text: qsTr("Not fit")
            chosen: screen.chosen === "not fit"
            onClicked: screen.chosen = "not fit"
        }
        Choice {
            objectName: "concludeFit"
            width: pair.each
            height: Math.max(implicitHeight, pair.tallest)
            broad: true
            text: qsTr("Fit")
            chosen: screen.chosen === "fit"
            onClicked: screen.chosen = "fit"
        }
    }
    Column {
        width: parent.width
        spacing: 8
        Label {
            width: parent.width
            topPadding: 8
            text: screen.standing.length === 0 ? qsTr("Nothing stands against fit.") : qsTr("What stands against fit")
            strong: true
            Accessible.role: Accessible.Heading
        }
        Repeater {
            model: screen.standing
            Row {
                id: one
                required property string modelData
                required property int index
                width: parent ? parent.width : 0
                spacing: 12
                Rectangle {
                    y: 8
                    width: 8
                    height: 8
                    color: Theme.ink
                }
                Label {
                    objectName: "concludeAgainst." + one.index
                    width: one.width - 20
                    text: one.modelData
                }
            }
        }
    }
    Repeater {
        model: screen.warnings
        Label {
            required property string modelData
            required property int index
            objectName: "concludeWarning." + index
            width: screen.columnWidth
            text: modelData
            strong: true
        }
    }
    WordsField {
        id: reasons
        objectName: "concludeReasons"
        width: parent.width
        lines: 3
        label: qsTr("Reasons")
    }
    Label {
        width: parent.width
        text: qsTr("Ambit never decides. The pilot in command does; the handbook and the local rules have the last word.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }
}
