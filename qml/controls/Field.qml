// One line to write in, its name inside its frame.
import QtQuick
import QtQuick.Templates as T
import Ambit

T.TextField {
    id: field

    required property string label
    property string about: ""

    implicitWidth: 200
    implicitHeight: Math.max(Theme.target, caption.implicitHeight + contentHeight + 20)
    leftPadding: Theme.margin
    rightPadding: Theme.margin
    topPadding: caption.implicitHeight + 10
    bottomPadding: 8
    color: Theme.ink
    font.family: Theme.family
    font.pixelSize: Theme.large
    selectionColor: Theme.way
    selectedTextColor: Theme.panel
    selectByMouse: true
    verticalAlignment: TextInput.AlignVCenter
    Accessible.role: Accessible.EditableText
    Accessible.name: field.label
    Accessible.description: field.about
    // Qt keeps a password field's name to itself, and not only what is in it; that it is one is told by its state all the same.
    Accessible.onPasswordEditChanged: if (Accessible.passwordEdit)
        Accessible.passwordEdit = false

    background: Rectangle {
        radius: Theme.corner
        color: Theme.panel
        border.width: field.activeFocus ? 3 : 1
        border.color: field.activeFocus ? Theme.way : Theme.soft
    }
    Label {
        id: caption
        x: Theme.margin
        y: 9
        width: parent.width - 2 * Theme.margin
        text: field.label + (field.about === "" ? "" : "\u00a0\u00a0·  " + field.about)
        color: Theme.soft
        font.pixelSize: Theme.small
        Accessible.ignored: true
    }
}
