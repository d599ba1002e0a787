// The walk: the figure with the way round, and the card in hand under it, or beside it where it is wide.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: screen

    required property App app
    required property RoundView round
    readonly property bool wide: width > height && width > Theme.mm(100)
    readonly property bool tall: height > Theme.mm(100)
    readonly property bool paused: round.phase === "paused"
    readonly property real cardWidth: wide ? Math.min(width * 0.5, Math.max(Theme.mm(60), width * 0.407)) : width
    readonly property real cardHeight: wide ? height : Math.min(height * 0.72, card.keysHeight + Theme.mm(38) * (1 + (Theme.scale - 1) * 0.8))
    readonly property bool listBeside: !wide && width > Theme.mm(100)
    readonly property bool sheetOpen: sheet.status !== Loader.Null

    signal reviewAsked
    signal leaveAsked
    signal placeAsked(string place)

    function openSheet(file: string, more: var) {
        const values = {
            app: screen.app,
            round: screen.round,
            value: card.value
        };
        sheet.setSource(file, Object.assign(values, more));
    }
    function closeSheet() {
        sheet.source = "";
        screen.forceActiveFocus();
    }

    objectName: "screenWalk"
    focus: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Walk")

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
            width: screen.wide ? screen.width - screen.cardWidth : screen.width
            height: screen.wide ? screen.height - bar.height : screen.height - screen.cardHeight - bar.height
            clip: true

            FigureView {
                id: figure
                width: screen.listBeside ? parent.width - sideList.width - Theme.margin : parent.width
                height: parent.height
                topInset: screen.wide && screen.tall ? 84 : screen.tall && screen.listBeside ? 70 : 34
                figure: screen.round.figure
                nextStand: screen.round.targetStandId
                onZoneAsked: zoneId => screen.round.tapZone(zoneId)
                onStandAsked: standId => screen.round.goTo(standId)
            }
            WalkHead {
                id: head
                x: screen.wide ? 24 : Theme.margin
                y: screen.wide && screen.tall ? 16 : 8
                width: parent.width - x - pauseKey.width - 2 * Theme.margin
                round: screen.round
                brief: !screen.wide && !screen.listBeside
            }
            Key {
                id: pauseKey
                objectName: "pauseKey"
                anchors.right: parent.right
                anchors.rightMargin: screen.wide ? 24 : Theme.margin
                y: screen.wide && screen.tall ? 16 : 8
                visible: !screen.paused
                letter: "P"
                text: qsTr("Pause")
                onClicked: screen.round.pause()
            }
            StandList {
                id: sideList
                visible: screen.listBeside
                anchors.right: parent.right
                anchors.rightMargin: Theme.margin
                y: pauseKey.y + pauseKey.height + 12
                height: parent.height - y - 8
                width: Theme.mm(44)
                round: screen.round
            }
            Keypad {
                id: pad
                visible: card.measuring
                anchors.right: parent.right
                anchors.bottom: parent.bottom
                width: screen.wide ? Math.min(parent.width, Theme.mm(66)) : parent.width
                onTyped: character => card.typeValue(character)
                onErased: card.eraseValue()
                onDone: card.leaveValue()
            }
        }
        WalkCard {
            id: card
            x: screen.wide ? screen.width - width : 0
            y: screen.wide ? 0 : figurePane.height
            width: screen.cardWidth
            height: screen.cardHeight
            focus: true
            round: screen.round
            wide: screen.wide
            withList: screen.wide && screen.tall
            onSheetAsked: (file, more) => screen.openSheet(file, more)
            onReviewAsked: screen.reviewAsked()
        }
        PlacesBar {
            id: bar
            anchors.bottom: parent.bottom
            width: figurePane.width
            place: "walk"
            onAsked: place => screen.placeAsked(place)
            Key {
                objectName: "moreKey"
                look: "link"
                text: qsTr("More")
                about: qsTr("Review, note, night, text size, other aircraft")
                letter: "M"
                onClicked: screen.openSheet("MoreSheet.qml", {})
            }
        }
        Rectangle {
            // The card's edge.
            x: screen.wide ? figurePane.width : 0
            y: screen.wide ? 0 : figurePane.height
            width: screen.wide ? 2 : parent.width
            height: screen.wide ? parent.height : 2
            color: Theme.line
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
            screen.closeSheet();
        }
        function onWentOn() {
            card.clearValue();
            screen.closeSheet();
        }
        function onReviewAsked() {
            screen.reviewAsked();
        }
        function onLeaveAsked() {
            screen.leaveAsked();
        }
        function onSheetAsked(file: string) {
            screen.openSheet(file, {});
        }
    }
    WalkLetters {
        live: !screen.sheetOpen && screen.visible
        kind: screen.paused ? "paused" : card.settling ? "settle" : screen.round.cardKind
        card: card
        onPauseAsked: screen.paused ? screen.round.resume() : screen.round.pause()
        onMoreAsked: screen.openSheet("MoreSheet.qml", {})
    }
}
