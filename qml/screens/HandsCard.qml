// The card where one hand is free or none: one point, huge, answered by a key; or the portion that is told before the climb
// and looked at up there. Nothing is settled by touch here.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: card

    required property App app
    required property RoundView round
    readonly property HandsView hands: app.hands
    readonly property string mode: hands.mode
    readonly property bool onPoint: round.cardKind === "settle"
    readonly property real side: width > Theme.mm(80) ? Theme.mm(8) : Theme.margin
    readonly property real huge: Math.round(Math.min(Theme.text(56), Math.max(Theme.huge, Math.min(width / 12, height / 12))))
    /// One point: as large as leaves all of it in sight, by how many letters B612 sets in a line.
    readonly property real largest: {
        const wide = words.width, room = scroll.height - caution.height - (card.large ? head.height + words.spacing : 0) - 3 * words.spacing - Theme.large * 2;
        const high = (text, size) => text === "" ? 0 : Math.ceil(text.length * Theme.letter * size / wide + 0.4) * size * 1.4;
        let size = Math.min(Theme.text(80), height / 6);
        while (size > card.huge && high(round.cardTitle, Theme.fitting(round.cardTitle, wide, size)) + high(card.onPoint ? round.sound : "", size * 0.6) > room)
            size -= 2;
        return Math.max(card.huge, Math.floor(size));
    }
    /// A phone on its side: the keys stand beside the words.
    readonly property bool low: height < Theme.mm(72) && width > height
    /// Large text: who stands where and what a key does scroll with the words, or nothing of them would be seen.
    readonly property bool large: Theme.scale > 1.4
    readonly property real wordsWidth: low ? Math.round(width * 0.62) : width

    objectName: "handsCard"
    Accessible.role: Accessible.Pane
    Accessible.name: mode === "key" ? qsTr("One hand free: answer with a key") : mode === "read" ? qsTr("No hand free: read before the climb") : qsTr("Being looked at: nothing can be touched")
    onModeChanged: {
        clicker.forget();
        scroll.contentY = 0;
    }

    Keys.onPressed: event => {
        if (!clicker.answers(event.key))
            return;
        event.accepted = true;
        if (!event.isAutoRepeat)
            clicker.press();
    }
    Keys.onReleased: event => {
        if (!clicker.answers(event.key))
            return;
        event.accepted = true;
        if (!event.isAutoRepeat)
            clicker.release();
    }
    Clicker {
        id: clicker
        onOnce: card.hands.answerOnce()
        onTwice: card.hands.sayAgain()
        onLongOne: card.hands.answerLong()
    }
    Connections {
        target: card.round
        function onCardChanged() {
            scroll.contentY = 0;
        }
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.panel
    }
    MouseArea {
        // Nothing beneath is touched.
        anchors.fill: parent
    }
    StandHead {
        id: head
        parent: card.large ? standPlace : card
        x: card.large ? 0 : card.side
        y: card.large ? 0 : 12
        width: card.wordsWidth - 2 * card.side
        number: card.round.cardKind === "go" ? card.round.targetStandNumber : card.round.standNumber
        name: card.round.cardKind === "go" ? card.round.targetStandName : card.round.standName
        about: card.round.cardKind === "go" ? card.round.targetStandText : card.round.standText
        ahead: card.round.cardKind === "go"
    }
    Scroll {
        id: scroll
        anchors.top: card.top
        anchors.topMargin: card.large ? 12 : head.y + head.height + 12
        anchors.bottom: card.low ? parent.bottom : foot.top
        anchors.bottomMargin: 8
        width: card.wordsWidth
        contentHeight: words.height
        Column {
            id: words
            x: card.side
            width: scroll.width - 2 * card.side
            spacing: 12
            Item {
                id: standPlace
                width: parent.width
                height: head.height
                visible: card.large
            }
            Caution {
                id: caution
                width: parent.width
                texts: card.mode === "up" ? [] : card.round.cautions
            }
            // One point, or what is to be set.
            Label {
                objectName: "handsTitle"
                width: parent.width
                visible: card.mode === "key"
                text: card.round.cardTitle
                strong: true
                font.pixelSize: Theme.fitting(text, width, card.largest)
                lineHeight: 1.05
                Accessible.role: Accessible.Heading
            }
            Label {
                width: parent.width
                visible: card.mode === "key" && text !== ""
                text: card.onPoint ? Texts.line(card.round.cardHow, card.round.cardSetting, card.round.positionText) : card.round.cardHow
                font.pixelSize: Theme.large
            }
            Label {
                width: parent.width
                visible: card.mode === "key" && card.onPoint
                text: card.round.sound
                font.pixelSize: Math.round(card.largest * 0.6)
            }
            Label {
                width: parent.width
                visible: card.mode === "key" && card.onPoint && card.round.measured
                text: qsTr("This needs a value: give it when both hands are free.")
                strong: true
                font.pixelSize: Theme.large
            }
            // A portion.
            Label {
                width: parent.width
                visible: card.mode !== "key"
                text: card.mode === "up" ? qsTr("Look at these now. Keep your hands for holding on.") : qsTr("Read these, or listen. Then put the device away and climb.")
                strong: true
                font.pixelSize: Theme.title
                Accessible.role: Accessible.Heading
            }
            Repeater {
                model: card.mode === "key" ? [] : card.hands.portion
                Column {
                    id: one
                    required property var modelData
                    required property int index
                    width: words.width
                    spacing: 2
                    Label {
                        width: parent.width
                        text: qsTr("%1. %2").arg(one.index + 1).arg(one.modelData.name)
                        strong: true
                        font.pixelSize: Math.max(Theme.title, Math.round(card.huge * (card.hands.portion.length > 3 ? 0.45 : 0.62)))
                    }
                    Label {
                        width: parent.width
                        text: one.modelData.sound
                        font.pixelSize: Theme.large
                    }
                    Label {
                        width: parent.width
                        text: Texts.line(one.modelData.how, one.modelData.setting, "")
                        color: Theme.soft
                        font.pixelSize: Theme.small
                    }
                }
            }
            Label {
                width: parent.width
                visible: card.mode === "read" && card.hands.pointsAfter > 0
                text: card.hands.pointsAfter === 1 ? qsTr("One more up there after these.") : qsTr("%1 more up there after these.").arg(card.hands.pointsAfter)
            }
            Label {
                objectName: "voiceText"
                width: parent.width
                visible: text !== ""
                text: card.hands.voiceText
                color: Theme.soft
            }
            Item {
                id: hintPlace
                width: parent.width
                height: hint.height
                visible: card.large
            }
        }
    }
    Column {
        id: foot
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 12
        x: card.low ? card.wordsWidth + card.side : card.side
        width: parent.width - x - card.side
        spacing: 12
        Label {
            id: hint
            objectName: "keyHint"
            parent: card.large ? hintPlace : foot
            width: parent.width
            color: clicker.held ? Theme.ink : Theme.soft
            strong: clicker.held
            text: {
                switch (card.mode) {
                case "read":
                    return qsTr("A key does it too: one press: up I go. Two presses: say it again.");
                case "up":
                    return qsTr("A key does it too: a long press: down again. Two presses: say it again.");
                default:
                    return card.round.cardKind === "go" ? qsTr("With a key: one press: I am there. Two presses: say it again.") : !card.onPoint ? qsTr("With a key: one press: done. Two presses: say it again.") : card.round.measured ? qsTr("With a key: two presses: say it again.") : qsTr("With a key: one press: sound. A long press: finding. Two presses: say it again.");
                }
            }
        }
        Key {
            objectName: "keyClimb"
            width: parent.width
            visible: card.mode === "read"
            broad: true
            look: "solid"
            text: qsTr("Up I go")
            about: qsTr("Nothing can be touched until you are down again")
            onClicked: card.hands.climb()
        }
        Key {
            objectName: "keyDown"
            width: parent.width
            visible: card.mode === "up"
            broad: true
            look: "solid"
            text: qsTr("I am down again")
            about: qsTr("Each of them is asked for then")
            onClicked: card.hands.down()
        }
        Flow {
            width: parent.width
            spacing: 12
            readonly property real share: (width - spacing) / 2
            Key {
                objectName: "sayAgainKey"
                width: parent.share
                narrow: true
                text: qsTr("Say it again")
                onClicked: card.hands.sayAgain()
            }
            Key {
                objectName: "giveUpKey"
                width: parent.share
                narrow: true
                visible: card.mode === "up"
                text: qsTr("Not all of them")
                about: qsTr("Down again; they are read once more")
                onClicked: card.hands.giveUp()
            }
            Key {
                objectName: "touchInstead"
                width: parent.share
                narrow: true
                visible: card.mode !== "up"
                text: qsTr("Touch instead")
                about: qsTr("At this stand only")
                onClicked: card.hands.touchInstead()
            }
        }
    }
}
