// Several points settled within the time that one of them takes: asked about once, and nobody is judged by it.
import QtQuick
import Ambit

Rectangle {
    id: strip

    required property ConditionsView conditions

    readonly property bool large: Theme.scale > 1.4

    objectName: "quickStrip"
    visible: conditions.quickText !== ""
    implicitHeight: visible ? column.height + 20 : 0
    color: Theme.wash
    Accessible.role: Accessible.AlertMessage
    Accessible.name: words.text

    Rectangle {
        width: parent.width
        height: 2
        color: Theme.line
    }
    Column {
        id: column
        x: Theme.margin
        y: 10
        width: parent.width - 2 * x
        spacing: 8
        Label {
            id: words
            width: parent.width
            // Large text leaves no room for why it is asked.
            text: (strip.large ? qsTr("%1: was each looked at?") : qsTr("%1: less than one of them takes. Was each of them looked at?")).arg(strip.conditions.quickText)
            Accessible.ignored: true
        }
        Row {
            width: parent.width
            spacing: 12
            Key {
                objectName: "quickAgain"
                width: (parent.width - 12) / 2
                narrow: true
                text: qsTr("Look again")
                about: words.text
                onClicked: strip.conditions.answerQuick(true)
            }
            Key {
                objectName: "quickMeant"
                width: (parent.width - 12) / 2
                narrow: true
                text: qsTr("Yes, each")
                about: words.text
                onClicked: strip.conditions.answerQuick(false)
            }
        }
    }
}
