// Which stand: its number in a circle, its name, how one stands there.
import QtQuick
import Ambit

Item {
    id: head

    property int number: 0
    property string name: ""
    property string about: ""
    property bool ahead: false

    property bool shown: true

    implicitHeight: visible ? Math.max(40, words.implicitHeight) : 0
    height: implicitHeight
    visible: shown && name !== ""
    Accessible.role: Accessible.StaticText
    Accessible.name: (ahead ? qsTr("Next stand %1, %2") : qsTr("At stand %1, %2")).arg(number).arg(name) + ", " + about

    Rectangle {
        id: circle
        anchors.verticalCenter: parent.verticalCenter
        width: Math.max(38, digits.implicitHeight + 16)
        height: width
        radius: width / 2
        color: Theme.panel
        border.width: head.ahead ? 2 : 5
        border.color: Theme.way
        Label {
            id: digits
            anchors.centerIn: parent
            text: head.number
            strong: true
            lineHeight: 1
            color: Theme.way
            Accessible.ignored: true
        }
    }
    Column {
        id: words
        anchors.left: circle.right
        anchors.leftMargin: 12
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        Label {
            width: parent.width
            text: head.name
            strong: true
            font.pixelSize: Theme.fitting(text, width, head.ahead ? Theme.title : Theme.large)
            Accessible.ignored: true
        }
        Label {
            width: parent.width
            text: head.about
            color: Theme.soft
            font.pixelSize: Theme.small
            Accessible.ignored: true
        }
    }
}
