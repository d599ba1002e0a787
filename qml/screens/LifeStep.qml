// One thing that happened to a discrepancy: what, when, by whom, in whose words; touch opens the record that says so.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: step

    required property var modelData
    required property int index

    signal recordAsked

    spacing: 6

    RowKey {
        objectName: "life." + step.index
        width: parent.width
        look: step.modelData.look
        text: step.modelData.what
        about: step.modelData.words
        small: step.modelData.agoText + "\u00a0· " + step.modelData.whenText + "\u00a0· " + step.modelData.by
        onClicked: step.recordAsked()
    }
    Repeater {
        model: step.modelData.details
        NamedText {
            required property var modelData
            x: 20
            width: step.width - 40
            name: modelData.name
            text: modelData.text
        }
    }
}
