// A discrepancy is left as it is for a while: on which basis, its questions one by one, then what is put up, what it limits, how long.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property string key
    readonly property EntryView entries: app.entries
    readonly property DiscrepancyView one: app.aircraftFile.discrepancy
    readonly property bool byRule: basis === entries.bases[0].id
    readonly property bool asking: byRule && answers.length < entries.questions.length
    property string basis: ""
    property var answers: []
    /// Why the last answer rules a deferral out.
    property string ruledOut: ""

    signal stepInstead(string step, var values)

    function answer(yes: bool) {
        const reason = screen.entries.ruledOut(screen.answers.length, yes);
        if (reason !== "")
            screen.ruledOut = reason;
        else
            screen.answers = screen.answers.concat([yes]);
    }
    function sign() {
        if (screen.entries.defer(Object.assign({
            key: screen.key,
            basis: screen.basis,
            answers: screen.answers
        }, terms.said), signature.signature))
            screen.back();
    }

    Component.onCompleted: app.aircraftFile.openDiscrepancy(key)

    objectName: "screenDefer"
    title: qsTr("Defer")
    subtitle: one ? Texts.line(one.name, one.words, "") : ""
    backText: qsTr("Back")
    backName: "entryBack"
    keys: [
        Row {
            width: parent.width
            visible: screen.asking && screen.ruledOut === ""
            spacing: 12
            Key {
                objectName: "answerYes"
                width: (parent.width - 12) / 2
                broad: true
                text: qsTr("Yes")
                onClicked: screen.answer(true)
            }
            Key {
                objectName: "answerNo"
                width: (parent.width - 12) / 2
                broad: true
                text: qsTr("No")
                onClicked: screen.answer(false)
            }
        },
        Key {
            objectName: "groundInstead"
            width: parent.width
            visible: screen.ruledOut !== ""
            broad: true
            text: qsTr("It grounds the aircraft")
            onClicked: screen.stepInstead("Ground", {
                key: screen.key
            })
        },
        SignKeys {
            width: parent.width
            visible: screen.basis !== "" && !screen.asking
            fields: signature
            onSignAsked: screen.sign()
        }
    ]

    Column {
        width: parent.width
        visible: screen.basis === ""
        spacing: 12
        Heading {
            width: parent.width
            text: qsTr("On which basis")
        }
        Repeater {
            model: screen.entries.bases
            Choice {
                required property var modelData
                required property int index
                objectName: "basis." + index
                width: screen.columnWidth
                broad: true
                text: Texts.begun(modelData.name)
                about: index === 0 ? qsTr("For an aircraft without a minimum equipment list: its questions follow") : ""
                chosen: screen.basis === modelData.id
                onClicked: screen.basis = modelData.id
            }
        }
    }
    NamedText {
        width: parent.width
        visible: screen.basis !== ""
        name: qsTr("Basis")
        text: Array.from(screen.entries.bases).find(one => one.id === screen.basis)?.name ?? ""
    }
    Framed {
        width: parent.width
        visible: screen.asking
        Label {
            objectName: "deferQuestionNumber"
            width: parent.width
            text: qsTr("Question %1 of %2").arg(screen.answers.length + 1).arg(screen.entries.questions.length)
            color: Theme.soft
            font.pixelSize: Theme.small
        }
        Label {
            objectName: "deferQuestion"
            width: parent.width
            text: screen.asking ? screen.entries.questions[screen.answers.length].text : ""
            strong: true
            font.pixelSize: Theme.giving(text, width, Theme.title)
        }
    }
    Caution {
        objectName: "deferRuledOut"
        width: parent.width
        texts: screen.ruledOut === "" ? [] : [screen.ruledOut]
    }
    Key {
        objectName: "answerAgain"
        width: parent.width
        visible: screen.ruledOut !== ""
        text: qsTr("I answered wrongly: ask again")
        onClicked: screen.ruledOut = ""
    }
    Key {
        objectName: "deferOtherBasis"
        width: parent.width
        visible: screen.basis !== ""
        text: qsTr("Another basis")
        onClicked: {
            screen.basis = "";
            screen.answers = [];
            screen.ruledOut = "";
        }
    }
    DeferTerms {
        id: terms
        width: parent.width
        visible: screen.basis !== "" && !screen.asking
        app: screen.app
        byRule: screen.byRule
    }
    SignatureFields {
        id: signature
        width: parent.width
        visible: terms.visible
        app: screen.app
        onAccepted: screen.sign()
    }
}
