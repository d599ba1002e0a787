// A page: where one is, what can be scrolled, and the keys that stay in the thumb's reach.
import QtQuick
import Ambit

FocusScope {
    id: page

    property string title: ""
    property string subtitle: ""
    /// "" where there is no way back.
    property string backText: ""
    property string backName: ""
    property color ground: Theme.ground
    property real columnWidth: Math.min(width - keysWidth - 2 * Theme.margin, Theme.mm(118))
    default property alias content: column.data
    property alias actions: actionRow.data
    property alias keys: keyColumn.data
    /// What of the content is in sight, in its own measure.
    readonly property real seenFrom: scroll.contentY - column.y
    readonly property real seenTo: seenFrom + scroll.height
    readonly property bool tall: height > 560
    /// A phone on its side: the keys stand beside, not below.
    readonly property bool low: height < Theme.mm(72) && width > height
    readonly property real keysWidth: low && foot.visible ? Theme.mm(38) : 0

    signal back

    focus: true
    Accessible.role: Accessible.Pane
    Accessible.name: title
    Keys.onEscapePressed: if (page.backText !== "")
        page.back()
    Keys.onBackPressed: if (page.backText !== "")
        page.back()

    Rectangle {
        anchors.fill: parent
        color: page.ground
    }
    Item {
        id: head
        x: (page.width - page.keysWidth - page.columnWidth) / 2
        width: page.columnWidth + page.keysWidth
        height: Math.max(Theme.target, titles.implicitHeight + 2 * Theme.gap) + (page.tall ? Theme.gap : 0)

        Column {
            id: titles
            anchors.left: parent.left
            anchors.right: headKeys.left
            anchors.rightMargin: Theme.gap
            anchors.verticalCenter: parent.verticalCenter
            Label {
                width: parent.width
                text: page.title
                strong: true
                font.pixelSize: Theme.title
                Accessible.role: Accessible.Heading
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: page.subtitle
                color: Theme.soft
                font.pixelSize: Theme.small
            }
        }
        Row {
            id: headKeys
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            spacing: Theme.gap
            Row {
                id: actionRow
                spacing: Theme.gap
            }
            Key {
                objectName: page.backName
                visible: page.backText !== ""
                text: page.backText
                onClicked: page.back()
            }
        }
    }
    Scroll {
        id: scroll
        anchors.top: head.bottom
        anchors.bottom: page.low || !foot.visible ? parent.bottom : foot.top
        x: Theme.leftHanded ? page.keysWidth : 0
        width: parent.width - page.keysWidth
        contentHeight: column.height + 2 * Theme.gap
        Column {
            id: column
            x: (scroll.width - page.columnWidth) / 2
            y: Theme.gap / 2
            width: page.columnWidth
            spacing: 12
        }
    }
    Rectangle {
        id: foot
        anchors.bottom: parent.bottom
        x: page.low && !Theme.leftHanded ? page.width - width : 0
        width: page.low ? page.keysWidth : parent.width
        height: keyColumn.implicitHeight > 0 ? keyColumn.implicitHeight + 2 * 12 : 0
        visible: keyColumn.children.length > 0
        color: page.ground
        Rectangle {
            width: parent.width
            height: 1
            visible: !page.low && foot.height > 0
            color: Theme.line
        }
        Column {
            id: keyColumn
            x: page.low ? (Theme.leftHanded ? Theme.margin : 12) : (page.width - page.columnWidth) / 2
            y: 12
            width: page.low ? page.keysWidth - 12 - Theme.margin : page.columnWidth
            spacing: 12
        }
    }
}
