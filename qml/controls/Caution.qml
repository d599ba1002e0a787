// What to beware of, framed, with the cut corner. Not shown without words.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Rectangle {
    id: caution

    property var texts: []
    /// A warning is red; everything else is a caution.
    property bool warns: false
    /// One after the other instead of one below the other.
    property bool flowing: false
    readonly property color colour: warns ? Theme.warning : Theme.caution

    visible: texts.length > 0
    implicitHeight: visible ? Math.max(40, words.implicitHeight + 18) : 0
    radius: Theme.corner - 2
    color: Theme.panel
    border.width: 2
    border.color: colour
    Accessible.role: Accessible.AlertMessage
    Accessible.name: (warns ? qsTr("Warning: %1") : qsTr("Caution: %1")).arg(Texts.joined(texts, " "))

    CutCorner {
        radius: caution.radius
        colour: caution.colour
        width: Theme.mark(28)
        height: width
    }
    Column {
        id: words
        anchors.verticalCenter: parent.verticalCenter
        x: 38
        width: parent.width - x - 12
        spacing: 4
        Repeater {
            model: caution.flowing && caution.texts.length > 0 ? [Texts.joined(caution.texts, " ")] : caution.texts
            Label {
                required property string modelData
                width: words.width
                text: modelData
                Accessible.ignored: true
            }
        }
    }
}
