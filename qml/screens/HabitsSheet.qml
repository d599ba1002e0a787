// How one is asked where hands are few, and what an interruption asks for again.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    property string value: ""
    readonly property Habits habits: app.habits

    objectName: "sheetHabits"
    title: qsTr("How you are asked")
    subtitle: qsTr("On this device, until it is changed here.")
    backName: "habitsClose"

    component Switch: Tick {
        id: choice
        property bool on: false
        signal asked(bool on)
        width: parent ? parent.width : 0
        chosen: choice.on
        onClicked: choice.asked(!choice.on)
    }
    component Count: Column {
        id: count
        required property string label
        required property string prefix
        required property int number
        signal asked(int number)
        readonly property real middle: width - 2 * Theme.key - 24
        /// Between the keys there is room for two lines.
        readonly property bool above: words.implicitWidth > 1.9 * middle
        width: parent ? parent.width : 0
        spacing: 4
        Label {
            id: words
            width: parent.width
            visible: count.above
            text: count.label
            strong: true
        }
        Row {
            spacing: 12
            Key {
                id: fewer
                objectName: count.prefix + "Fewer"
                width: Theme.key
                enabled: count.number > 1
                text: "−"
                about: qsTr("Fewer: %1").arg(count.label)
                Accessible.name: qsTr("Fewer")
                onClicked: count.asked(count.number - 1)
            }
            Label {
                width: count.middle
                height: fewer.height
                text: count.above ? "" : count.label
                strong: true
                verticalAlignment: Text.AlignVCenter
                horizontalAlignment: Text.AlignHCenter
            }
            Key {
                objectName: count.prefix + "More"
                width: Theme.key
                enabled: count.number < 9
                text: "+"
                about: qsTr("More: %1").arg(count.label)
                Accessible.name: qsTr("More")
                onClicked: count.asked(count.number + 1)
            }
        }
    }

    Switch {
        objectName: "habitKeys"
        focus: true
        on: sheet.habits.keys
        text: qsTr("A key answers where one hand is free")
        about: qsTr("A clicker, a headset, a volume key, any key of a keyboard: one press sound, a long press finding, two presses say it again.")
        onAsked: on => sheet.habits.keys = on
    }
    Switch {
        objectName: "habitPortions"
        on: sheet.habits.portions
        text: qsTr("Told before the climb where no hand is free")
        about: qsTr("In small portions; down again, each point is asked for.")
        onAsked: on => sheet.habits.portions = on
    }
    Count {
        visible: sheet.habits.portions
        prefix: "portion"
        number: sheet.habits.portionSize
        label: number === 1 ? qsTr("One point at a time") : qsTr("%1 points at a time").arg(number)
        onAsked: number => sheet.habits.portionSize = number
    }
    Switch {
        objectName: "habitAloud"
        on: sheet.habits.aloud
        text: qsTr("Every card is read aloud")
        about: sheet.app.hands.voiceText
        onAsked: on => sheet.habits.aloud = on
    }
    Switch {
        objectName: "habitPhotos"
        on: sheet.habits.photosAsTaken
        text: qsTr("Photos keep all that the camera wrote")
        about: qsTr("The place and the device go into the record, too, for all who read it. Otherwise only the time does.")
        onAsked: on => sheet.habits.photosAsTaken = on
    }
    Label {
        width: parent.width
        topPadding: 8
        text: qsTr("After an interruption")
        strong: true
        Accessible.role: Accessible.Heading
    }
    Label {
        width: parent.width
        text: qsTr("The operator's choice: published advice differs. What was done stands in the record.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }
    Repeater {
        model: [
            {
                id: "points",
                name: qsTr("Back some points")
            },
            {
                id: "stand",
                name: qsTr("The stand again")
            },
            {
                id: "start",
                name: qsTr("From the start")
            }
        ]
        Choice {
            required property var modelData
            objectName: "habitBack." + modelData.id
            width: parent ? parent.width : 0
            text: modelData.name
            chosen: sheet.habits.backFrom === modelData.id
            onClicked: sheet.habits.backFrom = modelData.id
        }
    }
    Count {
        visible: sheet.habits.backFrom === "points"
        prefix: "back"
        number: sheet.habits.backPoints
        label: number === 1 ? qsTr("Back one point") : qsTr("Back %1 points").arg(number)
        onAsked: number => sheet.habits.backPoints = number
    }
}
