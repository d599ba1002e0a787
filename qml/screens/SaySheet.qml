// What whoever follows says to whoever walks: a second look, a question, a remark. Signed by the one, in the record of the other.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property Student student
    /// Points of this zone only; "": all.
    property string zoneId: ""
    property string pointId: ""
    readonly property FollowedRound round: student.round
    readonly property var choices: round ? round.points(zoneId) : []
    readonly property var chosen: Array.from(choices).find(one => one.id === pointId) ?? null
    property bool choosing: zoneId !== ""

    function say(kind: string) {
        if (sheet.app.watch.say(sheet.student.number, kind, sheet.pointId, words.text))
            sheet.closed();
    }

    objectName: "sheetSay"
    title: qsTr("To %1").arg(student.name)
    subtitle: round ? round.registration : ""
    backName: "sayCancel"
    onRoundChanged: if (!round)
        closed()
    keys: [
        Key {
            objectName: "sayAgain"
            width: parent ? parent.width : 0
            broad: true
            look: "solid"
            enabled: sheet.chosen !== null
            text: qsTr("Look again")
            about: qsTr("The walk can't be concluded until the point is settled again, or it is declined with words")
            onClicked: sheet.say("lookAgain")
        },
        Row {
            id: pair
            width: parent ? parent.width : 0
            spacing: 12
            layoutDirection: Theme.leftHanded ? Qt.RightToLeft : Qt.LeftToRight
            Key {
                objectName: "sayQuestion"
                width: (pair.width - 12) / 2
                broad: true
                narrow: true
                enabled: words.text.trim() !== ""
                text: qsTr("Ask")
                about: qsTr("A question; the answer stands in the record")
                onClicked: sheet.say("question")
            }
            Key {
                objectName: "sayRemark"
                width: (pair.width - 12) / 2
                broad: true
                narrow: true
                enabled: words.text.trim() !== ""
                text: qsTr("Remark")
                about: qsTr("Needs no answer")
                onClicked: sheet.say("remark")
            }
        }
    ]

    Label {
        width: parent.width
        text: sheet.choosing ? qsTr("Where?") : sheet.chosen ? sheet.chosen.name : qsTr("Of no point in particular")
        strong: true
        font.pixelSize: Theme.large
        Accessible.role: Accessible.Heading
    }
    Key {
        objectName: "sayInHand"
        width: parent.width
        visible: sheet.choosing && sheet.zoneId === "" && sheet.round !== null && sheet.round.pointId !== ""
        text: sheet.round ? qsTr("In hand: %1").arg(sheet.round.cardTitle) : ""
        onClicked: {
            sheet.pointId = sheet.round.pointId;
            sheet.choosing = false;
        }
    }
    Repeater {
        model: sheet.choosing ? sheet.choices : []
        Choice {
            required property var modelData
            objectName: "sayPoint." + modelData.id
            width: parent ? parent.width : 0
            text: modelData.name
            chosen: sheet.pointId === modelData.id
            onClicked: {
                sheet.pointId = modelData.id;
                sheet.choosing = false;
            }
        }
    }
    Key {
        objectName: "sayWhere"
        width: parent.width
        visible: !sheet.choosing
        text: sheet.chosen ? qsTr("Another point") : qsTr("Choose a point")
        onClicked: sheet.choosing = true
    }
    WordsField {
        id: words
        objectName: "sayWords"
        width: parent.width
        visible: !sheet.choosing
        lines: 3
        label: qsTr("Your words")
    }
    Label {
        width: parent.width
        visible: !sheet.choosing
        text: qsTr("Signed with your key; it stands in the record with what becomes of it. Nobody is hurried by it.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }
}
