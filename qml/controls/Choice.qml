// One of several things to choose: a broad row with a ring that fills.
import QtQuick
import QtQuick.Templates as T
import Ambit

T.AbstractButton {
    id: choice

    property bool chosen: false
    property string about: ""
    property bool broad: false
    property bool cut: false
    property color cutColour: Theme.caution

    implicitWidth: Math.max(Theme.target, words.implicitWidth + leftPadding + rightPadding)
    implicitHeight: Math.max(broad ? Theme.key : Theme.target, words.implicitHeight + 2 * 12)
    leftPadding: Theme.margin + 22 + 12
    rightPadding: Theme.margin
    focusPolicy: Qt.StrongFocus
    Keys.onReturnPressed: choice.clicked()
    Keys.onEnterPressed: choice.clicked()
    Accessible.role: Accessible.RadioButton
    Accessible.name: choice.text
    Accessible.description: choice.about
    Accessible.checkable: true
    Accessible.checked: choice.chosen
    Accessible.onPressAction: choice.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: choice.down ? Theme.pressed : choice.chosen ? Theme.wash : Theme.panel
        border.width: choice.chosen ? 3 : 1
        border.color: choice.chosen ? Theme.way : Theme.soft
        CutCorner {
            visible: choice.cut
            width: 22
            height: width
            radius: Theme.corner
            colour: choice.cutColour
        }
        Rectangle {
            x: Theme.margin
            anchors.verticalCenter: parent.verticalCenter
            width: 22
            height: width
            radius: width / 2
            color: "transparent"
            border.width: choice.chosen ? 7 : 2
            border.color: choice.chosen ? Theme.way : Theme.ink
        }
        FocusRing {
            of: choice
        }
    }
    Item {
        anchors.fill: parent
        anchors.leftMargin: choice.leftPadding
        anchors.rightMargin: choice.rightPadding
        Column {
            id: words
            width: parent.width
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            Label {
                width: parent.width
                text: choice.text
                strong: true
                font.pixelSize: choice.broad ? Theme.title : Theme.large
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: choice.about
                font.pixelSize: Theme.small
                Accessible.ignored: true
            }
        }
    }
}
