// Several lines to write in.
import QtQuick
import QtQuick.Templates as T
import Ambit

T.TextArea {
    id: field

    required property string label
    property int lines: 2

    implicitWidth: 200
    implicitHeight: Math.max(Theme.target, topPadding + bottomPadding + Math.max(contentHeight, lines * 1.25 * Theme.large))
    leftPadding: Theme.margin
    rightPadding: Theme.margin
    topPadding: caption.implicitHeight + 12
    bottomPadding: 10
    color: Theme.ink
    font.family: Theme.family
    font.pixelSize: Theme.large
    selectionColor: Theme.way
    selectedTextColor: Theme.panel
    selectByMouse: true
    wrapMode: TextEdit.Wrap
    textFormat: TextEdit.PlainText
    activeFocusOnTab: true
    Keys.onTabPressed: field.nextItemInFocusChain(true).forceActiveFocus(Qt.TabFocusReason)
    Keys.onBacktabPressed: field.nextItemInFocusChain(false).forceActiveFocus(Qt.BacktabFocusReason)
    Accessible.role: Accessible.EditableText
    Accessible.name: field.label
    Accessible.multiLine: true

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
        text: field.label
        color: Theme.soft
        font.pixelSize: Theme.small
        Accessible.ignored: true
    }
}
