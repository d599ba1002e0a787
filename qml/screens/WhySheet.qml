// The point's own page: why it matters, what sound looks like, what isn't sound.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    property string value: ""

    objectName: "sheetWhy"
    title: round.cardTitle
    subtitle: Texts.line(round.cardHow, round.cardSetting, "")
    backName: "whyClose"

    Repeater {
        model: [{
                head: qsTr("Why it matters"),
                words: sheet.round.why
            }, {
                head: qsTr("Sound"),
                words: sheet.round.sound
            }, {
                head: qsTr("Not sound"),
                words: sheet.round.unsound
            }, {
                head: qsTr("A finding here"),
                words: sheet.round.findingGrounds ? qsTr("Grounds the aircraft.") : qsTr("Is at least for assessment.")
            }, {
                head: qsTr("Limit"),
                words: sheet.round.measured ? Texts.said(sheet.round.quantity, sheet.round.limitText) + ". " + sheet.round.limitSource + "." : ""
            }, {
                head: qsTr("Last time"),
                words: sheet.round.lastTime
            }, {
                head: qsTr("In this round"),
                words: sheet.round.outcomeText
            }]
        Column {
            id: part
            required property var modelData
            width: parent ? parent.width : 0
            visible: modelData.words !== ""
            spacing: 3
            Label {
                width: parent.width
                text: part.modelData.head
                color: Theme.soft
                font.pixelSize: Theme.small
                strong: true
                Accessible.role: Accessible.Heading
            }
            Label {
                width: parent.width
                text: part.modelData.words
                font.pixelSize: Theme.large
            }
        }
    }
    Caution {
        width: parent.width
        texts: sheet.round.cautions
    }
    Label {
        width: parent.width
        topPadding: 8
        text: sheet.round.notice
        color: Theme.soft
        font.pixelSize: Theme.small
    }
}
