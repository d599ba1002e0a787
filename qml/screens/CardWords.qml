// What the card says.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: words

    required property RoundView round
    required property string kind
    /// Only what it is: the figures need the place.
    property bool brief: false
    /// False: its title stands elsewhere.
    property bool titled: true
    readonly property bool settle: kind === "settle"

    spacing: 6

    CardTitle {
        width: parent.width
        visible: words.kind !== "go" && words.titled
        round: words.round
        kind: words.kind
    }
    Label {
        width: parent.width
        visible: words.settle && text !== "" && !words.brief
        text: Texts.line(words.round.cardHow, words.round.cardSetting, Texts.unparted(words.round.positionText))
        color: Theme.soft
        font.pixelSize: Theme.small
    }
    Item {
        // What the aircraft carries here, before what was seen last time.
        objectName: "carriedText"
        width: parent.width
        height: carried.height + 12
        visible: words.settle && words.round.carriedText !== "" && !words.brief
        Rectangle {
            width: 4
            height: parent.height
            color: Theme.ink
        }
        Mark {
            id: carriedMark
            x: 14
            y: 7
            look: "finding"
            width: Theme.mark(18)
            height: width
        }
        Label {
            id: carried
            x: carriedMark.x + carriedMark.width + 12
            y: 6
            width: parent.width - x
            text: words.round.carriedText
        }
    }
    Rectangle {
        // Somebody who follows asks to look here again.
        objectName: "askedText"
        width: parent.width
        height: asked.height + 16
        visible: words.settle && words.round.askedText !== "" && !words.brief
        color: Theme.wash
        Rectangle {
            width: 8
            height: parent.height
            color: Theme.ink
        }
        Label {
            id: asked
            x: 24
            y: 8
            width: parent.width - x - 8
            text: words.round.askedText
            strong: true
        }
    }
    Label {
        width: parent.width
        visible: text !== "" && !words.brief
        font.pixelSize: Theme.fitting(text, width, Theme.large)
        text: {
            switch (words.kind) {
            case "settle":
                return words.round.sound;
            case "set":
                return words.round.cardHow;
            case "done":
                return words.round.cardHow !== "" ? words.round.cardHow : words.round.owedCount > 0 ? qsTr("Something is still open. The review says what.") : qsTr("Look once more, then conclude.");
            case "paused":
                return qsTr("The round waits here as it stands. Before going on, look where you left off.");
            default:
                return words.round.settledCount === 0 ? Texts.unparted(words.round.planText) : "";
            }
        }
    }
    Label {
        // What moved in the order, and why, until one has gone on from here.
        objectName: "orderText"
        width: parent.width
        visible: text !== "" && !words.brief && words.kind !== "paused"
        text: words.round.orderText
    }
    Item {
        width: parent.width
        height: Math.max(lastLabel.height, last.height)
        visible: words.settle && words.round.lastTime !== "" && !words.brief
        Label {
            id: lastLabel
            text: qsTr("Last time")
            strong: true
            color: Theme.soft
            font.pixelSize: Theme.small
        }
        Label {
            id: last
            x: lastLabel.width + 14
            width: parent.width - x
            text: words.round.lastTime
            color: Theme.soft
            font.pixelSize: Theme.small
        }
    }
    Repeater {
        model: words.settle && !words.brief ? words.round.trendTexts : []
        Label {
            required property string modelData
            required property int index
            objectName: "trendText." + index
            width: words.width
            text: Texts.begun(modelData)
            strong: index === 0
            color: Theme.soft
            font.pixelSize: Theme.small
        }
    }
    Row {
        width: parent.width
        visible: words.settle && words.round.cardOutcome !== ""
        spacing: 12
        topPadding: 4
        Mark {
            id: outcome
            look: words.round.cardOutcome
            grounds: words.round.findingGrounds
        }
        Label {
            width: parent.width - outcome.width - 12
            text: qsTr("Settled: %1").arg(words.round.outcomeText)
            strong: true
        }
    }
}
