// Records that may go, or must stay, for one and the same reason: all at once, or one by one.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: group

    required property var modelData
    required property int index
    required property string prefix
    required property var chosen
    /// They must stay by the rule: none is chosen but by itself.
    property bool stays: false
    readonly property var ids: modelData.rows.map(one => one.recordId)
    readonly property bool allChosen: ids.every(id => chosen.includes(id))
    readonly property int some: ids.filter(id => chosen.includes(id)).length
    property int shown: 0
    readonly property int atOnce: 50

    signal choiceAsked(var ids, bool wanted)

    spacing: Theme.gap

    Label {
        width: parent.width
        text: group.modelData.why
    }
    Tick {
        objectName: group.prefix + "all." + group.index
        width: parent.width
        visible: !group.stays
        text: group.ids.length === 1 ? group.modelData.rows[0].name : qsTr("All %1 of these").arg(group.ids.length)
        about: group.ids.length === 1 ? group.modelData.rows[0].who : group.some > 0 && !group.allChosen ? qsTr("%1 of them chosen").arg(group.some) : ""
        chosen: group.allChosen
        onClicked: group.choiceAsked(group.ids, !group.allChosen)
    }
    Repeater {
        model: group.modelData.rows.slice(0, group.shown)
        Tick {
            id: choice
            required property var modelData
            readonly property bool never: modelData.never ?? false
            objectName: group.prefix + modelData.recordId
            width: group.width
            text: modelData.name
            about: modelData.who
            enabled: !never
            opacity: enabled ? 1 : 0.6
            chosen: group.chosen.includes(modelData.recordId)
            onClicked: group.choiceAsked([modelData.recordId], !choice.chosen)
        }
    }
    Key {
        objectName: group.prefix + "each." + group.index
        width: parent.width
        visible: group.shown < group.ids.length && (group.stays || group.ids.length > 1)
        text: group.shown > 0 ? qsTr("Show more") : group.ids.length === 1 ? qsTr("Show which one") : qsTr("Show them one by one")
        onClicked: group.shown += group.atOnce
    }
}
