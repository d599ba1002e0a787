// Before a round: what stands against fit, and what the walk will come by that is open.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: list

    required property AircraftFileView its
    required property bool shown

    visible: shown
    spacing: 12

    FileState {
        width: parent.width
        its: list.its
    }
    Label {
        objectName: "carriedCount"
        width: parent.width
        visible: list.its.open.length + list.its.putRight.length > 0
        text: qsTr("To look at again on this round")
        strong: true
        Accessible.role: Accessible.Heading
    }
    Repeater {
        model: list.shown ? Array.from(list.its.open).concat(Array.from(list.its.putRight)) : []
        RecordRow {
            required property var modelData
            objectName: "carried." + modelData.pointId
            width: list.width
            look: modelData.state === "rectified" ? "next" : "finding"
            text: Texts.said(modelData.name, modelData.words)
            about: modelData.stateText + "\u00a0· " + modelData.sinceText
        }
    }
}
