// Everything that is asked and still open, and remarks not read yet.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    property string value: ""

    signal sheetAsked(string file, var more)

    function write(ask: var, declining: bool) {
        sheet.sheetAsked("AnswerSheet.qml", {
            ask: ask.ask,
            declining: declining,
            asked: Texts.line(ask.who, ask.title, ""),
            words: ask.words
        });
    }

    objectName: "sheetAsked"
    title: qsTr("Asked")
    subtitle: qsTr("By those who follow this round")
    backName: "askedClose"

    Label {
        width: parent.width
        visible: sheet.round.asks.length === 0
        text: qsTr("Nothing is open.")
    }
    Repeater {
        model: sheet.round.asks
        Framed {
            id: one
            required property var modelData
            width: parent ? parent.width : 0
            Label {
                width: parent.width
                text: one.modelData.title
                strong: true
                font.pixelSize: Theme.large
                Accessible.role: Accessible.Heading
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: one.modelData.words
                font.pixelSize: Theme.large
            }
            Label {
                width: parent.width
                text: Texts.line(one.modelData.who, one.modelData.sinceText, "")
                color: Theme.soft
                font.pixelSize: Theme.small
            }
            Label {
                width: parent.width
                visible: one.modelData.kind === "lookAgain"
                text: qsTr("The walk leads there. It ends when the point is settled.")
                color: Theme.soft
                font.pixelSize: Theme.small
            }
            Row {
                id: pair
                readonly property real half: (width - spacing) / 2
                width: parent.width
                topPadding: 6
                spacing: 12
                layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
                visible: one.modelData.kind !== "remark"
                Key {
                    objectName: "askDecline." + one.modelData.ask
                    width: one.modelData.kind === "question" ? pair.half : pair.width
                    narrow: true
                    text: qsTr("Decline")
                    about: one.modelData.title
                    onClicked: sheet.write(one.modelData, true)
                }
                Key {
                    objectName: "askAnswer." + one.modelData.ask
                    width: pair.half
                    narrow: true
                    visible: one.modelData.kind === "question"
                    look: "solid"
                    text: qsTr("Answer")
                    about: one.modelData.title
                    onClicked: sheet.write(one.modelData, false)
                }
            }
            Key {
                objectName: "askRead." + one.modelData.ask
                width: parent.width
                visible: one.modelData.kind === "remark"
                look: "solid"
                text: qsTr("Read")
                about: one.modelData.title
                onClicked: {
                    const last = sheet.round.asks.length === 1;
                    sheet.round.readRemark(one.modelData.ask);
                    if (last)
                        sheet.closed();
                }
            }
        }
    }
}
