// The card in hand: where to stand, what to change or to settle, and its broad keys.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: card

    required property App app
    required property RoundView round
    property bool wide: false
    property bool withList: false
    property bool withMore: false
    /// A phone on its side: little height.
    property bool low: false
    readonly property string kind: round.phase === "paused" ? "paused" : round.cardKind
    readonly property bool onPoint: kind === "settle"
    /// A point to settle; one that is settled already can only be re-opened.
    readonly property bool settling: onPoint && round.cardOutcome === ""
    readonly property bool measuring: valueField.activeFocus && valueField.visible
    readonly property string value: settling && round.measured ? valueField.text : ""
    readonly property string unit: settling && round.measured ? valueField.unit : ""
    readonly property bool renewed: settling && round.measured && renewedTick.chosen
    readonly property real keysHeight: keys.height + keys.anchors.bottomMargin + 12
    /// What it takes to show all of its words.
    readonly property real neededHeight: texts.y + texts.cautionTop + caution.height + 8 + words.height + 16 + keys.height
    readonly property real side: wide ? (width > Theme.mm(66) ? 28 : Theme.margin) : Theme.margin

    signal sheetAsked(string file, var more)
    signal reviewAsked

    function settleSound() {
        if (card.round.settleSound(card.value, card.unit, card.renewed))
            card.clearValue();
    }
    function askFinding(camera: bool) {
        card.sheetAsked("FindingSheet.qml", {
            camera: camera
        });
    }
    function goOn() {
        if (card.round.cardKind === "go")
            card.round.atStand();
        else if (card.round.cardKind === "set")
            card.round.changeSetting();
    }
    function measure() {
        if (valueField.visible)
            valueField.forceActiveFocus();
    }
    function typeValue(character: string) {
        valueField.type(character);
    }
    function eraseValue() {
        valueField.erase();
    }
    function leaveValue() {
        keys.forceActiveFocus();
    }
    function clearValue() {
        valueField.text = "";
        keys.forceActiveFocus();
    }

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("The card in hand")

    Connections {
        target: card.round
        function onCardChanged() {
            texts.contentY = 0;
        }
    }
    readonly property string pointId: round.pointId
    onPointIdChanged: startAnew()
    /// What was measured in a photo is what is told, until somebody types.
    readonly property string keptValue: round.keptValue
    onKeptValueChanged: {
        // Left out again, it isn't taken for a typed one.
        if (keptValue === "" && valueField.text === shownValue)
            valueField.text = "";
        card.shownValue = keptValue;
        if (keptValue === "")
            return;
        valueField.unit = round.keptUnit;
        valueField.text = keptValue;
    }
    property string shownValue: ""
    function startAnew() {
        valueField.text = "";
        valueField.unit = Qt.binding(() => card.round.unit);
        renewedTick.chosen = false;
    }

    Rectangle {
        anchors.fill: parent
        color: Theme.panel
    }
    Scroll {
        id: texts
        // A caution keeps its place while the rest moves, unless it would leave nothing to read.
        readonly property bool sticks: caution.height < height * 0.5
        readonly property real titleTop: head.height + (head.height > 0 && (title.visible || caution.visible) ? 8 : 0)
        readonly property real cautionTop: titleTop + (title.visible ? title.height + 8 : 0)
        readonly property real listTop: cautionTop + caution.height + (list.visible ? 6 : 0)
        y: card.withList ? 24 : 10
        width: parent.width
        height: keys.y - 8 - y
        covered: sticks && caution.visible ? caution.height : 0
        contentHeight: words.y + words.height

        StandHead {
            id: head
            x: card.side
            width: texts.width - 2 * card.side
            number: card.kind === "go" ? card.round.targetStandNumber : card.round.standNumber
            name: card.kind === "go" ? card.round.cardTitle : card.round.standName
            about: card.kind === "go" ? card.round.targetStandText : card.round.standText
            ahead: card.kind === "go"
            shown: !(card.measuring && !card.withList) && !((card.low || (Theme.scale > 1.4 && !card.wide)) && card.onPoint)
        }
        CardTitle {
            // Large text: a caution would leave no sight of what it is about.
            id: title
            x: card.side
            y: texts.titleTop
            width: texts.width - 2 * card.side
            visible: Theme.scale > 1.4 && card.onPoint && caution.visible
            round: card.round
            kind: card.kind
        }
        StandList {
            id: list
            // The model's: the view's own count is told again whenever it comes into sight.
            readonly property int rows: card.round.here.count
            x: card.side - 10
            y: texts.listTop
            width: texts.width - 2 * x
            // With large text it would leave the words no place.
            visible: card.withList && Theme.scale <= 1.4 && rows > 0 && card.kind !== "paused" && card.kind !== "go"
            // Whole rows, as many as leave the words their place; where a value is measured, all of the words down to its field.
            readonly property real kept: Math.max(Theme.mm(32) * Theme.scale, valueField.visible ? 22 + valueField.y + valueField.height : 0)
            height: visible ? Math.max(1, Math.min(Math.ceil(rows / columns), Math.floor((texts.height - y - kept) / cellHeight))) * cellHeight : 0
            round: card.round
        }
        Rectangle {
            x: card.side
            y: list.y + list.height + 8
            visible: list.visible
            width: texts.width - 2 * card.side
            height: 2
            color: Theme.line
        }
        Column {
            id: words
            x: card.side
            y: texts.listTop + list.height + (list.visible ? 22 : 8)
            width: texts.width - 2 * card.side
            spacing: 6
            Label {
                objectName: "clockWrong"
                width: parent.width
                visible: text !== "" && card.kind === "go" && card.round.settledCount === 0
                text: card.app.conditions.clockText
                strong: true
            }
            Label {
                objectName: "askingText"
                width: parent.width
                visible: card.settling && card.app.hands.asking > 0
                text: card.app.hands.asking === 1 ? qsTr("Down again. The last one: was it sound?") : qsTr("Down again. %1 to tell: was it sound?").arg(card.app.hands.asking)
                strong: true
            }
            Label {
                width: parent.width
                visible: card.onPoint && card.round.lastLook
                text: qsTr("The last look: once round, slowly, with empty hands.")
                strong: true
            }
            Label {
                objectName: "openedText"
                width: parent.width
                visible: card.onPoint && card.round.lastLook && card.round.openedText !== ""
                text: qsTr("Open or fitted today: %1").arg(card.round.openedText)
            }
            Repeater {
                model: card.kind === "go" || card.kind === "done" ? card.app.hands.unworded : []
                Key {
                    required property var modelData
                    objectName: "inWords." + modelData.id
                    width: words.width
                    text: qsTr("Say what was found: %1").arg(modelData.name)
                    onClicked: card.sheetAsked("InWordsSheet.qml", {
                        pointId: modelData.id,
                        name: modelData.name
                    })
                }
            }
            CardWords {
                width: parent.width
                round: card.round
                kind: card.kind
                brief: card.measuring && !card.withList
                titled: !title.visible
            }
            ValueField {
                id: valueField
                objectName: "valueField"
                width: parent.width
                visible: card.settling && card.round.measured
                round: card.round
                quantity: card.round.quantity
                unit: card.round.unit
                units: card.round.units
                limitText: card.round.limitText
                refusal: text === "" || limitText === "" ? "" : card.round.outOfLimit(text, unit) // said anew when the limit is, in another language
                onUnitAsked: unit => valueField.unit = unit
                Keys.onReturnPressed: card.leaveValue()
                Keys.onEnterPressed: card.leaveValue()
                Keys.onEscapePressed: card.leaveValue()
            }
            Key {
                objectName: "measurePhoto"
                width: parent.width
                visible: card.settling && card.round.measured && !card.measuring
                text: qsTr("By a photo with a card")
                onClicked: card.sheetAsked("MeasureSheet.qml", {})
            }
            Repeater {
                model: card.settling ? card.round.keptTexts : []
                Key {
                    required property string modelData
                    required property int index
                    objectName: "dropKept." + index
                    width: words.width
                    look: "link"
                    text: qsTr("Leave out: %1").arg(modelData)
                    onClicked: card.round.dropKept(index)
                }
            }
            Tick {
                id: renewedTick
                objectName: "renewedTick"
                width: parent.width
                visible: card.settling && card.round.measured && card.round.trendTexts.length > 0
                text: qsTr("Renewed or repainted since the last value")
                onClicked: chosen = !chosen
            }
        }
        Caution {
            id: caution
            objectName: "cautions"
            z: 1
            x: card.side
            y: texts.sticks ? Math.max(texts.cautionTop, texts.contentY) : texts.cautionTop
            width: texts.width - 2 * card.side
            texts: card.kind === "done" || card.kind === "paused" ? [] : card.round.cautions
            flowing: !card.withList
        }
    }
    CardKeys {
        id: keys
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        anchors.leftMargin: card.side
        anchors.rightMargin: card.side
        anchors.bottomMargin: 2
        focus: true
        round: card.round
        kind: card.kind
        settling: card.settling
        toTheFoot: card.app.hands.toTheFoot
        withMore: card.withMore
        measuring: card.measuring
        bleed: card.wide ? 0 : card.side
        onSoundAsked: card.settleSound()
        onFindingAsked: camera => card.askFinding(camera)
        onMeasureAsked: card.measure()
        onSheetAsked: (file, more) => card.sheetAsked(file, more)
        onReviewAsked: card.reviewAsked()
    }
}
