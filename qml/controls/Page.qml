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
    /// The keys beside reach up to the head.
    readonly property bool keysHigh: low && foot.height > height - Theme.target - 4 * Theme.gap
    /// Large text on a small page: the title would leave no room for what it heads, and goes with it.
    readonly property bool titleScrolls: (Theme.scale > 1.4 && (height < Theme.mm(90) || columnWidth < Math.max(Theme.mm(56), Theme.mm(32) * Theme.scale))) || titleBreaks || subtitleLong
    /// Beside the keys a word of it would be broken.
    readonly property bool titleBreaks: headKeys.width > 0 && Theme.fitting(title, columnWidth + (keysHigh ? 0 : keysWidth) - headKeys.width - Theme.gap, Theme.large) < Theme.large

    /// More than three lines beside the keys.
    readonly property bool subtitleLong: subtitle.length * Theme.small / 2 > 3 * (columnWidth - headKeys.width)

    signal back

    /// Where the page is about something else now.
    function toTop() {
        scroll.contentY = 0;
    }

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
        z: 1
        x: (page.width - page.keysWidth - page.columnWidth) / 2 + (page.keysHigh && Theme.leftHanded ? page.keysWidth : 0)
        width: page.columnWidth + (page.keysHigh ? 0 : page.keysWidth)
        height: !page.titleScrolls ? Math.max(Theme.target, titles.implicitHeight + 2 * Theme.gap) + (page.tall ? Theme.gap : 0) : headKeys.width > 0 ? Theme.target + 2 * Theme.gap : Theme.gap

        Rectangle {
            // A software renderer draws a figure that was scrolled away.
            x: (page.keysHigh && Theme.leftHanded ? page.keysWidth : 0) - head.x
            width: page.width - (page.keysHigh ? page.keysWidth : 0)
            height: head.height
            color: page.ground
        }
        Column {
            id: titles
            parent: page.titleScrolls ? scroll.contentItem : head
            x: page.titleScrolls ? column.x : 0
            y: page.titleScrolls ? 0 : (head.height - height) / 2
            width: page.titleScrolls ? column.width : headKeys.x - Theme.gap
            Label {
                width: parent.width
                text: page.title
                strong: true
                // No word of it is broken where text is large and the page narrow.
                font.pixelSize: Theme.fitting(text, width, page.columnWidth < Theme.mm(34) * Theme.scale ? Theme.large : Theme.title)
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
        contentHeight: column.y + column.height + 1.5 * Theme.gap
        Column {
            id: column
            x: (scroll.width - page.columnWidth) / 2
            y: Theme.gap / 2 + (page.titleScrolls ? titles.height + Theme.gap : 0)
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
