// What somebody who follows asks, between the figure and the card: touched, it shows all that is asked.
import QtQuick
import QtQuick.Templates as T
import Ambit

T.AbstractButton {
    id: strip

    required property RoundView round
    readonly property var asks: round.asks
    readonly property var first: asks.length > 0 ? asks[0] : null
    readonly property string more: asks.length < 2 ? "" : qsTr("and %1 more").arg(asks.length - 1)

    /// Large text leaves no room for more than who asks; all of it is a touch away.
    readonly property bool large: Theme.scale > 1.4

    objectName: "askedStrip"
    visible: first !== null
    implicitHeight: visible ? Math.max(Theme.target, lines.implicitHeight + 16) : 0
    focusPolicy: Qt.StrongFocus
    text: first === null ? "" : Texts.line(first.who, first.title, more)
    Keys.onReturnPressed: strip.clicked()
    Keys.onEnterPressed: strip.clicked()
    Accessible.role: Accessible.Button
    Accessible.name: strip.text
    Accessible.description: strip.first === null ? "" : strip.first.words
    Accessible.onPressAction: strip.clicked()

    background: Rectangle {
        color: strip.down ? Theme.pressed : Theme.wash
        Rectangle {
            width: parent.width
            height: 2
            color: Theme.line
        }
        Rectangle {
            y: 2
            width: 8
            height: parent.height - 2
            color: Theme.ink
        }
        FocusRing {
            of: strip
        }
    }
    Column {
        id: lines
        x: 24
        width: strip.width - x - Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        spacing: 2
        Label {
            width: parent.width
            text: strip.large && strip.first !== null ? Texts.line(qsTr("%1 asks").arg(strip.first.who), strip.more, "") : strip.text
            strong: true
            maximumLineCount: 2
            elide: Text.ElideRight
            Accessible.ignored: true
        }
        Label {
            width: parent.width
            visible: text !== "" && !strip.large
            text: strip.first === null ? "" : strip.first.words
            maximumLineCount: strip.width > Theme.mm(70) ? 2 : 1
            elide: Text.ElideRight
            Accessible.ignored: true
        }
    }
}
