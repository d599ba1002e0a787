// A walk that somebody else walks, or has walked: the figure, what is in hand and how long, time at each stand; scrolled back,
// replayed; and what is said to whoever walks.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: screen

    required property App app
    /// null: a record's walk, again.
    property Student student: null
    readonly property FollowedRound round: student ? student.round : app.watch.replay
    readonly property bool wide: width > height && width > Theme.mm(100)
    /// A phone on its side, text large: the keys of the replay go to the panel, where there is room.
    readonly property bool crowded: wide && height < Theme.mm(72) && Theme.scale > 1.4
    readonly property bool sheetOpen: sheet.status !== Loader.Null
    readonly property real side: wide ? Math.max(Theme.mm(64), width * 0.42) : width
    readonly property bool live: student !== null && round !== null && round.atEnd

    signal back
    signal recordAsked(string registration, string recordId)

    function openSay(zoneId: string, pointId: string) {
        if (screen.student && screen.round)
            sheet.setSource("SaySheet.qml", {
                app: screen.app,
                student: screen.student,
                zoneId: zoneId,
                pointId: pointId
            });
    }

    objectName: "screenFollow"
    focus: true
    Accessible.role: Accessible.Pane
    Accessible.name: student ? qsTr("Following %1").arg(student.name) : qsTr("The walk again")
    Keys.onEscapePressed: screen.back()
    Keys.onBackPressed: screen.back()
    onLiveChanged: if (live)
        student.look()
    Component.onCompleted: if (live)
        student.look()
    Component.onDestruction: if (screen.round)
        screen.round.stop()

    Connections {
        // What comes while one looks is looked at.
        target: screen.round
        function onGrown() {
            if (screen.live)
                screen.student.look();
        }
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.ground
    }
    FocusScope {
        id: beneath
        anchors.fill: parent
        focus: !screen.sheetOpen
        enabled: !screen.sheetOpen

        Item {
            id: figurePane
            x: screen.wide && Theme.leftHanded ? screen.side : 0
            width: screen.wide ? parent.width - screen.side : parent.width
            height: screen.wide ? parent.height : Math.max(head.height + Theme.mm(12), Math.min(parent.height * 0.56, head.height + Theme.mm(head.under ? 26 : 39)))
            Item {
                id: figurePlace
                anchors.top: head.bottom
                anchors.bottom: times.top
                width: parent.width
                Repeater {
                    model: screen.round ? 1 : 0
                    FigureView {
                        width: figurePlace.width
                        height: figurePlace.height
                        figure: screen.round.figure
                        nextStand: screen.round.targetStandId
                        topInset: 12
                        bottomInset: 12
                        onZoneAsked: zoneId => screen.openSay(zoneId, "")
                    }
                }
            }
            Item {
                id: head
                width: parent.width
                /// Large text on a phone: how far it is stands below the key, over the whole width.
                readonly property bool under: !screen.wide && Theme.scale > 1.4
                height: Math.max(Theme.target, titles.implicitHeight) + 2 * Theme.gap
                Column {
                    id: titles
                    x: Theme.margin
                    width: head.under ? parent.width - 2 * x : beside
                    anchors.verticalCenter: parent.verticalCenter
                    readonly property real beside: head.width - backKey.width - 3 * Theme.margin
                    Label {
                        width: titles.beside
                        height: head.under ? Math.max(implicitHeight, backKey.height) : implicitHeight
                        text: screen.student ? screen.student.name : screen.round ? screen.round.person : ""
                        strong: true
                        font.pixelSize: head.under ? Theme.giving(text, width, Theme.normal) : screen.crowded ? Theme.large : Theme.title
                        Accessible.role: Accessible.Heading
                    }
                    Label {
                        objectName: "followProgress"
                        width: parent.width
                        text: screen.round ? Texts.unparted(Texts.line(screen.round.registration, qsTr("%1 of %2 settled").arg(screen.round.settledCount).arg(screen.round.pointCount), screen.round.findingCount > 0 ? Texts.findings(screen.round.findingCount) : "")) : ""
                        color: Theme.soft
                        font.pixelSize: Theme.small
                    }
                }
                Key {
                    id: backKey
                    objectName: "followBack"
                    anchors.right: parent.right
                    anchors.rightMargin: Theme.margin
                    y: head.under ? Theme.gap : (head.height - height) / 2
                    text: qsTr("Back")
                    onClicked: screen.back()
                }
            }
            ReplayKeys {
                id: times
                x: Theme.margin
                anchors.bottom: parent.bottom
                anchors.bottomMargin: visible ? 12 : 0
                width: parent.width - 2 * x
                height: visible ? implicitHeight : 0
                visible: screen.wide && !screen.crowded && screen.round !== null
                round: screen.round
                live: screen.student !== null
            }
        }
        Rectangle {
            id: panel
            // Where the thumb is.
            x: screen.wide && !Theme.leftHanded ? figurePane.width : 0
            y: screen.wide ? 0 : figurePane.height + Theme.gap
            width: screen.side
            height: parent.height - y
            color: Theme.panel
            Rectangle {
                x: screen.wide && Theme.leftHanded ? parent.width - width : 0
                width: screen.wide ? 2 : parent.width
                height: screen.wide ? parent.height : 2
                color: Theme.line
            }
            Scroll {
                id: scroll
                anchors.top: parent.top
                anchors.topMargin: 2
                anchors.bottom: foot.top
                anchors.bottomMargin: foot.visible ? 12 : 0
                x: 2
                width: parent.width - 2
                contentHeight: all.height + 24
                FollowPanel {
                    id: all
                    x: Theme.margin
                    y: 12
                    width: parent.width - 2 * Theme.margin
                    round: screen.round
                    student: screen.student
                    withKeys: !screen.wide || screen.crowded
                    onMomentAsked: seq => screen.round.showEvent(seq)
                    onSayAsked: pointId => screen.openSay("", pointId)
                }
            }
            Column {
                id: foot
                x: Theme.margin
                width: parent.width - 2 * x
                anchors.bottom: parent.bottom
                anchors.bottomMargin: visible ? 12 : 0
                spacing: 12
                visible: screen.student !== null && screen.round !== null
                height: visible ? implicitHeight : 0
                Key {
                    objectName: "followRecord"
                    width: parent.width
                    broad: true
                    look: "solid"
                    visible: screen.student !== null && screen.student.recordId !== ""
                    text: screen.student && screen.student.signedHere ? qsTr("See the record") : qsTr("See the record and sign")
                    onClicked: screen.recordAsked(screen.round.registration, screen.student.recordId)
                }
                Key {
                    objectName: "sayKey"
                    width: parent.width
                    broad: true
                    look: screen.student && screen.student.recordId !== "" ? "outline" : "solid"
                    visible: screen.round !== null && screen.round.phase !== "sealed"
                    text: qsTr("Say something")
                    about: qsTr("Look again, a question, a remark")
                    onClicked: screen.openSay("", "")
                }
            }
        }
    }
    Loader {
        id: sheet
        anchors.fill: parent
        focus: screen.sheetOpen
        onLoaded: (item as Item).forceActiveFocus()
    }
    Connections {
        target: sheet.item
        ignoreUnknownSignals: true
        function onClosed() {
            sheet.source = "";
            screen.forceActiveFocus();
        }
    }
}
