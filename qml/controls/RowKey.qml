// A row that opens something: its state by shape, what it is, and what there is to say of it.
import QtQuick
import QtQuick.Templates as T
import Ambit

T.AbstractButton {
    id: row

    /// Of its Mark; "": none.
    property string look: ""
    property bool grounds: false
    property string about: ""
    /// Said strongly, below.
    property string note: ""
    property string small: ""
    /// How wide what stands at its end is; its words leave that free.
    property real aside: 0

    implicitHeight: Math.max(Theme.key, words.implicitHeight + 28)
    focusPolicy: Qt.StrongFocus
    Keys.onReturnPressed: row.clicked()
    Keys.onEnterPressed: row.clicked()
    Accessible.role: Accessible.Button
    Accessible.name: row.text
    Accessible.description: Texts.line(row.note, row.about, row.small)
    Accessible.onPressAction: row.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: row.down ? Theme.pressed : Theme.panel
        border.width: 2
        border.color: Theme.ink
        FocusRing {
            of: row
        }
    }
    Item {
        anchors.fill: parent
        Mark {
            id: mark
            x: 20
            y: words.y + 3
            visible: row.look !== ""
            look: row.look
            grounds: row.grounds
        }
        Column {
            id: words
            x: row.look !== "" ? mark.x + mark.width + 16 : 20
            width: parent.width - x - 16 - row.aside
            anchors.verticalCenter: parent.verticalCenter
            spacing: 3
            Label {
                width: parent.width
                text: row.text
                strong: true
                font.pixelSize: Theme.giving(text, width, Theme.large)
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: row.note
                strong: true
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: row.about
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: row.small
                color: Theme.soft
                font.pixelSize: Theme.small
                Accessible.ignored: true
            }
        }
    }
}
