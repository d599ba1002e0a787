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
    readonly property bool low: wide && !tall
    readonly property real cardWidth: low ? Math.max(width * 0.5, Math.min(width - Theme.mm(54), width * 0.62)) : wide ? Math.min(width * 0.5, Math.max(Theme.mm(60), width * (large ? 0.5 : 0.407))) : width
    readonly property real cardHeight: wide ? height : Math.min(card.measuring ? height - barHeight - pad.implicitHeight : large ? Math.max(card.keysHeight + Theme.mm(8), height - barHeight - stripHeight - Math.min(Theme.mm(followed ? 37 : 30), head.y + head.height + 8)) : (height - barHeight) * 0.78, Math.max(card.keysHeight + Theme.mm(card.onPoint && !card.measuring ? 38 : 14), Math.ceil(card.neededHeight / 24) * 24))
    /// The places have their bar where there is room; else they are behind “More”.
    readonly property bool barShown: wide || listBeside
    readonly property real barHeight: barShown ? bar.height : 0
    /// While figures are typed the keys' pad stands there.
    readonly property real stripHeight: (strip.visible ? strip.height : 0) + (quickStrip.visible ? quickStrip.height : 0)
    readonly property bool listBeside: !wide && width > Theme.mm(100)
    readonly property bool followed: app.sharing.watchingText !== ""
    readonly property bool sheetOpen: sheet.status !== Loader.Null
    /// No touch settles anything now.
    readonly property bool handsFew: app.hands.mode !== "touch"
    /// The card stands on the left, and with it what the thumb reaches.
    readonly property bool leftHanded: Theme.leftHanded
    readonly property bool large: Theme.scale > 1.4
    /// With large text what stands under the key of the pause needs the left edge.
    readonly property bool pauseLeft: leftHanded && !(large && head.brief)

    signal reviewAsked
    signal leaveAsked
    signal placeAsked(string place)

    function openSheet(file: string, more: var) {
        const values = {
            app: screen.app,
            round: screen.round,
            value: card.value
        };
        if (file === "FindingSheet.qml" && card.unit !== "") {
            values.unit = card.unit;
            values.renewed = card.renewed;
        }
        kept = file === "FindingSheet.qml" || file === "NotInspectedSheet.qml" || file === "MeasureSheet.qml" ? screen.round.pointId : "";
        sheet.setSource(file, Object.assign(values, more));
    }
    /// The point that words are being found for stays in hand, whatever an interruption asks for meanwhile: they are
    /// never kept at another one.
    property string kept: ""
    property bool heldBack: false
    function closeSheet() {
        sheet.source = "";
        screen.forceActiveFocus();
        if (few.item)
            (few.item as Item).forceActiveFocus();
        if (heldBack && round.pointId === kept)
            round.choosePoint("");
        kept = "";
        heldBack = false;
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
        focus: !screen.sheetOpen && !screen.handsFew
        enabled: !screen.sheetOpen && !screen.handsFew
        visible: !screen.handsFew

        Item {
            id: figurePane
            x: screen.wide && screen.leftHanded ? screen.cardWidth : 0
            width: screen.wide ? screen.width - screen.cardWidth : screen.width
            height: (screen.wide ? screen.height : screen.height - screen.cardHeight) - screen.barHeight - screen.stripHeight
            clip: true

            FigureView {
                id: figure
                x: screen.leftHanded ? parent.width - width : 0
                width: screen.listBeside ? parent.width - sideList.width - Theme.margin : parent.width
                height: parent.height
                readonly property real inset: screen.wide && screen.tall ? 84 : screen.listBeside ? 70 : 40 * Math.max(1, Theme.scale * 0.9)
                topInset: screen.followed || Theme.scale > 1 ? Math.max(inset, Math.min(head.y + head.height + 8, parent.height * (screen.large ? 0.6 : 0.3))) : inset
                bottomInset: screen.wide && screen.tall ? 24 : open.visible && (screen.large || open.width > parent.width * 0.3) ? open.height + 16 : 14
                visible: parent.height > Theme.mm(24) * (screen.large ? 1.6 : 1)
                figure: screen.round.figure
                nextStand: screen.round.targetStandId
                onZoneAsked: zoneId => screen.round.tapZone(zoneId)
                onStandAsked: standId => screen.round.goTo(standId)
            }
            Rectangle {
                // So that the words can be read over a figure that is closer.
                visible: figure.zoom > 1
                x: screen.leftHanded ? parent.width - width : 0
                width: parent.width - pauseKey.width - pauseKey.edge - 8
                height: head.y + head.height + 6
                color: Theme.ground
                opacity: 0.86
            }
            WalkHead {
                id: head
                readonly property real edge: screen.wide ? 24 : Theme.margin
                readonly property real pauseWidth: pauseKey.visible ? pauseKey.width + 24 : 0
                x: edge + (screen.pauseLeft ? pauseWidth : 0)
                y: screen.wide && screen.tall ? 16 : 8
                width: parent.width - edge - pauseWidth - Theme.margin
                round: screen.round
                withOpen: !brief || !figure.visible
                watchingText: screen.app.sharing.watchingText
                room: screen.pauseLeft ? width : parent.width - edge - Theme.margin
                roomFrom: pauseKey.visible ? pauseKey.y + pauseKey.height - y : 0
                brief: !(screen.wide && screen.tall) && !screen.listBeside
            }
            Key {
                id: pauseKey
                objectName: "pauseKey"
                readonly property real edge: screen.wide ? 24 : Theme.margin
                x: screen.pauseLeft ? edge : parent.width - width - edge
                y: screen.wide && screen.tall ? 16 : 8
                // Half under the pad it would be touched by mistake.
                readonly property bool covered: pad.visible && pad.y < figurePane.y + y + height && pad.x < figurePane.x + x + width
                visible: !screen.paused && !covered
                letter: "P"
                text: qsTr("Pause")
                onClicked: screen.round.pause()
            }
            StandList {
                id: sideList
                visible: screen.listBeside
                x: screen.leftHanded ? Theme.margin : parent.width - width - Theme.margin
                y: pauseKey.y + pauseKey.height + 12
                height: parent.height - y - 8
                width: Theme.mm(44)
                round: screen.round
            }
            Repeater {
                // And what is written at its foot.
                model: figure.zoom > 1 ? [zoomKey, open] : []
                Rectangle {
                    required property Item modelData
                    readonly property real words: modelData === open ? open.height : Theme.large
                    x: modelData.x - Theme.gap
                    y: modelData.y + (modelData.height - height) / 2
                    width: modelData.width + 2 * Theme.gap
                    height: words + Theme.gap
                    visible: modelData.visible
                    color: Theme.ground
                    opacity: 0.86
                }
            }
            Key {
                id: zoomKey
                objectName: "figureZoomKey"
                x: screen.leftHanded ? figure.x : figure.x + figure.width - width
                anchors.bottom: parent.bottom
                visible: figure.visible && !card.measuring
                look: "link"
                text: figure.zoom > 1 ? qsTr("Whole") : qsTr("Closer")
                about: qsTr("The figure")
                onClicked: figure.toggleZoom()
            }
            Label {
                id: open
                width: Math.min(implicitWidth, parent.width - zoomKey.width - 2 * Theme.margin)
                x: screen.leftHanded ? parent.width - width - Theme.margin : Theme.margin
                anchors.bottom: parent.bottom
                anchors.bottomMargin: 8
                visible: head.brief && figure.visible && !card.measuring
                text: Texts.unparted(head.openText)
                strong: true
                font.pixelSize: Theme.small
                Accessible.ignored: true
            }
        }
        AskedStrip {
            id: strip
            x: figurePane.x
            y: figurePane.height
            width: figurePane.width
            visible: first !== null && !card.measuring
            round: screen.round
            onClicked: screen.openSheet("AskedSheet.qml", {})
        }
        QuickStrip {
            id: quickStrip
            x: figurePane.x
            y: figurePane.height + strip.height * (strip.visible ? 1 : 0)
            width: figurePane.width
            visible: screen.app.conditions.quickText !== "" && !card.measuring
            conditions: screen.app.conditions
        }
        WalkCard {
            id: card
            x: screen.wide && !screen.leftHanded ? screen.width - width : 0
            y: screen.wide ? 0 : figurePane.height + screen.stripHeight
            width: screen.cardWidth
            height: screen.cardHeight
            focus: true
            app: screen.app
            round: screen.round
            wide: screen.wide
            withList: screen.wide && screen.tall
            withMore: !screen.barShown
            low: screen.low
            onSheetAsked: (file, more) => screen.openSheet(file, more)
            onReviewAsked: screen.reviewAsked()
        }
        PlacesBar {
            id: bar
            x: figurePane.x
            anchors.bottom: parent.bottom
            width: figurePane.width
            visible: screen.barShown
            place: "walk"
            withWatch: screen.app.watch.possible
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
        Keypad {
            id: pad
            visible: card.measuring
            x: screen.leftHanded ? figurePane.x : figurePane.x + figurePane.width - width
            anchors.bottom: screen.low ? parent.bottom : figurePane.bottom
            width: screen.wide ? Math.min(figurePane.width, Theme.mm(66)) : figurePane.width
            onTyped: character => card.typeValue(character)
            onErased: card.eraseValue()
            onDone: card.leaveValue()
        }
        Rectangle {
            // The card's edge.
            x: !screen.wide ? 0 : screen.leftHanded ? card.width - width : figurePane.width
            y: screen.wide ? 0 : card.y
            width: screen.wide ? 2 : parent.width
            height: screen.wide ? parent.height : 2
            color: Theme.line
        }
    }
    Loader {
        id: few
        anchors.fill: parent
        active: screen.handsFew
        enabled: active && !screen.sheetOpen
        focus: enabled
        onActiveChanged: {
            if (active)
                setSource("HandsCard.qml", {
                    app: screen.app,
                    round: screen.round
                });
            else if (!screen.sheetOpen)
                beneath.forceActiveFocus();
        }
        onLoaded: if (!screen.sheetOpen)
            (item as Item).forceActiveFocus()
    }
    Connections {
        target: screen.round
        function onCardChanged() {
            if (screen.kept !== "" && screen.round.pointId !== screen.kept)
                screen.heldBack = screen.round.choosePoint(screen.kept);
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
        function onPlaceAsked(place: string) {
            screen.placeAsked(place);
        }
        function onLeaveAsked() {
            screen.leaveAsked();
        }
        function onSheetAsked(file: string, more: var) {
            screen.openSheet(file, more);
        }
    }
    WalkSpoken {
        round: screen.round
    }
    WalkLetters {
        live: !screen.sheetOpen && !screen.handsFew && screen.visible && screen.enabled
        kind: screen.paused ? "paused" : card.settling ? "settle" : screen.round.cardKind
        card: card
        onPauseAsked: screen.paused ? screen.round.resume() : screen.round.pause()
        onMoreAsked: screen.openSheet("MoreSheet.qml", {})
    }
}
