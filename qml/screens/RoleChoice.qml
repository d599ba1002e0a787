// As what a person acts.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Grid {
    id: roles

    required property App app
    required property string prefix
    required property string role

    signal chosen(string role)

    columns: width > Theme.mm(116) * Theme.scale ? 4 : width > Theme.mm(56) * Theme.scale ? 2 : 1
    spacing: Theme.gap
    Repeater {
        model: roles.app.roles
        Choice {
            required property var modelData
            objectName: roles.prefix + modelData.id
            width: (roles.width - (roles.columns - 1) * Theme.gap) / roles.columns
            text: modelData.name
            chosen: roles.role === modelData.id
            onClicked: roles.chosen(modelData.id)
        }
    }
}
