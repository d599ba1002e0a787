// One of several words, or none: a second touch takes it back.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: column

    required property string title
    required property string prefix
    /// [{id, name}]
    required property var all
    required property string chosen

    signal asked(string id)

    spacing: Theme.gap

    Label {
        width: parent.width
        text: column.title
        strong: true
        Accessible.role: Accessible.Heading
    }
    Grid {
        id: grid
        width: parent.width
        columns: Math.max(1, Math.floor(width / (Theme.mm(27) * Theme.scale)))
        spacing: Theme.gap
        Repeater {
            model: column.all
            Choice {
                id: choice
                required property var modelData
                objectName: column.prefix + modelData.id
                width: (grid.width - (grid.columns - 1) * Theme.gap) / grid.columns
                text: modelData.name
                chosen: column.chosen === modelData.id
                onClicked: column.asked(choice.chosen ? "" : modelData.id)
            }
        }
    }
}
