// Which aircraft, how far, and what is open.
import QtQuick
import Ambit

Column {
    id: head

    required property RoundView round
    property bool brief: false

    spacing: 1
    Accessible.role: Accessible.StaticText
    Accessible.name: head.round.registration + ", " + progress.text + ", " + found.text

    Label {
        width: parent.width
        text: head.round.registration
        strong: true
        font.pixelSize: head.brief ? Theme.title : Theme.huge
        lineHeight: 1
        Accessible.ignored: true
    }
    Label {
        id: progress
        width: parent.width
        text: qsTr("%1 of %2 settled").arg(head.round.settledCount).arg(head.round.pointCount) + " · " + qsTr("%1 min").arg(head.round.minutes)
        color: Theme.soft
        font.pixelSize: Theme.small
        Accessible.ignored: true
    }
    Label {
        id: found
        width: parent.width
        visible: text !== ""
        text: {
            const parts = [];
            if (head.round.findingCount > 0)
                parts.push(head.round.findingCount === 1 ? qsTr("1 finding") : qsTr("%1 findings").arg(head.round.findingCount));
            if (head.round.owedCount > 0)
                parts.push(head.round.owedCount === 1 ? qsTr("1 thing open") : qsTr("%1 things open").arg(head.round.owedCount));
            return parts.join(" · ");
        }
        font.pixelSize: Theme.small
        strong: true
        Accessible.ignored: true
    }
}
