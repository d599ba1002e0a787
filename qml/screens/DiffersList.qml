// What differs today, and how each is taken back: stands that can't be used, and what is in the way.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: list

    required property RoundView round

    spacing: 12
    visible: round.blockedStands.length > 0 || round.markedAreas.length > 0

    component Line: Column {
        id: line
        required property string what
        required property string why
        required property string keyName
        required property string keyText
        signal asked

        width: list.width
        spacing: 6
        Label {
            width: parent.width
            text: line.what
            strong: true
        }
        Label {
            width: parent.width
            text: line.why
            color: Theme.soft
            font.pixelSize: Theme.small
        }
        Key {
            objectName: line.keyName
            width: parent.width
            text: line.keyText
            about: line.what
            onClicked: line.asked()
        }
    }

    Repeater {
        model: list.round.blockedStands
        Line {
            required property var modelData
            what: modelData.name
            why: Texts.line(qsTr("Can't be used: %1").arg(modelData.why), modelData.sinceText, "")
            keyName: "standFree." + modelData.id
            keyText: qsTr("Can be used again")
            onAsked: list.round.freeStand(modelData.id)
        }
    }
    Repeater {
        model: list.round.markedAreas
        Line {
            required property var modelData
            what: modelData.why
            why: Texts.line(qsTr("In the way"), modelData.sinceText, "")
            keyName: "areaCleared." + modelData.area
            keyText: qsTr("Not in the way any more")
            onAsked: list.round.clearArea(modelData.area)
        }
    }
}
