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
        // As many as leave the longest word whole beside its ring.
        readonly property int longest: Array.from(column.all).reduce((most, one) => Math.max(most, ...one.name.split(/[\s\u00AD\-]+/).map(word => word.length)), 1)
        columns: Math.max(1, Math.floor((width + spacing) / (Math.max(Theme.mm(27) * Theme.scale, longest * Theme.letter * Theme.large + 2 * Theme.margin + Theme.mark(22) + 12) + spacing)))
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
