// Which aircraft, how far, and what is open.
import QtQuick
import Ambit

Column {
    id: head

    required property RoundView round
    property bool brief: false
    property bool withOpen: true
    /// Who follows, in words; "": nobody.
    property string watchingText: ""
    /// How wide that may be, once it stands lower than this.
    property real room: width
    property real roomFrom: 0

    readonly property string owedText: round.owedCount === 0 ? "" : round.owedCount === 1 ? qsTr("1 thing open") : qsTr("%1 things open").arg(round.owedCount)
    readonly property string openText: Texts.line(round.findingCount > 0 ? Texts.findings(round.findingCount) : "", owedText, "")
    /// No room but for what matters most.
    readonly property bool narrow: width < Theme.mm(32)

    /// Large text: how far and what is open stand under the key beside, over the whole width.
    readonly property bool under: brief && Theme.scale > 1.4 && roomFrom > 0

    spacing: 1
    Accessible.role: Accessible.StaticText
    Accessible.name: head.round.registration + ", " + progress.text + ", " + head.openText + (head.watchingText === "" ? "" : ", " + head.watchingText)

    Flow {
        id: first
        width: parent.width
        spacing: head.brief ? 12 : 2
        Label {
            id: mark
            text: head.round.registration
            strong: true
            font.pixelSize: head.brief ? Theme.large : Theme.huge
            lineHeight: 1
            Accessible.ignored: true
        }
        Label {
            id: progress
            objectName: "walkProgress"
            width: head.brief ? Math.min(implicitWidth, head.under ? head.room : parent.width) : parent.width
            topPadding: head.under ? Math.max(3, head.roomFrom - mark.height) : head.brief ? 3 : 0
            readonly property string all: (head.brief ? qsTr("%1 of %2") : qsTr("%1 of %2 settled")).arg(head.round.settledCount).arg(head.round.pointCount) + (head.narrow ? "" : "\u00a0· " + qsTr("%1 min").arg(head.round.minutes)) + (head.withOpen && head.openText !== "" ? "\u00a0· " + (head.narrow && head.owedText !== "" ? head.owedText : head.openText) : "")
            // Without a key beside it there is room for two lines, which whole parts would not fill.
            text: head.brief && !head.under ? all : Texts.unparted(all)
            color: Theme.soft
            font.pixelSize: Theme.small
            Accessible.ignored: true
        }
    }
    Label {
        objectName: "watchingText"
        width: first.height < head.roomFrom ? head.width : head.room
        visible: text !== ""
        text: head.watchingText
        font.pixelSize: Theme.small
        maximumLineCount: head.brief ? 1 : 2
        elide: Text.ElideRight
        lineHeight: 1
        Accessible.ignored: true
        Rectangle {
            // Where text is large the figure reaches up here.
            z: -1
            width: parent.contentWidth + 8
            height: parent.height
            color: Theme.ground
            opacity: 0.86
        }
    }
}
