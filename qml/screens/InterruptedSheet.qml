// After an interruption: how long it was, and what the operator's rule asks for again. And before that, where nothing was told
// for long: is somebody there?
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    readonly property ConditionsView conditions: app.conditions
    readonly property string rule: app.habits.backText
    readonly property bool silent: conditions.silentText !== ""

    objectName: "sheetInterrupted"
    title: silent ? qsTr("Are you there?") : qsTr("After an interruption")
    subtitle: silent ? conditions.silentText : ""
    backText: ""
    keys: Key {
        objectName: "interruptedDone"
        width: parent.width
        broad: true
        focus: true
        look: "solid"
        text: sheet.silent ? qsTr("I am here") : qsTr("Go on")
        onClicked: sheet.silent ? sheet.conditions.comeBack() : sheet.conditions.read()
    }

    Label {
        width: parent.width
        text: sheet.silent ? qsTr("An interruption is when something gets left out. The rule here: %1.").arg(sheet.rule) : sheet.conditions.interruptedText
        font.pixelSize: Theme.large
    }
    Repeater {
        model: sheet.silent ? [] : sheet.conditions.again
        Row {
            id: row
            required property string modelData
            width: parent ? parent.width : 0
            spacing: 12
            Mark {
                id: mark
                y: 2
                look: "todo"
            }
            Label {
                width: row.width - mark.width - 12
                text: row.modelData
                font.pixelSize: Theme.large
            }
        }
    }
    Label {
        width: parent.width
        text: sheet.silent ? "" : qsTr("Before going on, look where you left off. Take your time.")
        visible: text !== ""
    }
}
