// What each counter says, to be written; beside each what it said last.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: fields

    required property AircraftFileView its
    property string prefix: "counter."
    property bool sayLast: true
    /// id → what was written
    property var values: ({})

    spacing: 12

    Repeater {
        model: fields.its.counters
        Field {
            required property var modelData
            objectName: fields.prefix + modelData.id
            width: fields.width
            label: modelData.label
            about: modelData.value === "" || !fields.sayLast ? "" : qsTr("last %1").arg(modelData.value)
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            onTextEdited: {
                const all = Object.assign({}, fields.values);
                all[modelData.id] = text;
                fields.values = all;
            }
        }
    }
}
