// A question is answered, or what is asked is declined with words: into the record, with its time.
import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    required property int ask
    required property bool declining
    /// Who asks what.
    required property string asked
    required property string words
    property string value: ""

    objectName: declining ? "sheetDecline" : "sheetAnswer"
    title: declining ? qsTr("Decline") : qsTr("Answer")
    subtitle: asked
    backName: declining ? "declineCancel" : "answerCancel"
    keys: Key {
        objectName: sheet.declining ? "declineDone" : "answerDone"
        width: parent.width
        broad: true
        look: "solid"
        enabled: said.text.trim() !== ""
        text: sheet.declining ? qsTr("Decline it") : qsTr("Give the answer")
        onClicked: if (sheet.declining ? sheet.round.decline(sheet.ask, said.text) : sheet.round.answer(sheet.ask, said.text))
            sheet.closed()
    }

    Label {
        width: parent.width
        visible: text !== ""
        text: sheet.words
        font.pixelSize: Theme.large
    }
    WordsField {
        id: said
        objectName: sheet.declining ? "declineWhy" : "answerWords"
        width: parent.width
        focus: true
        lines: 3
        label: sheet.declining ? qsTr("Why not") : qsTr("Your answer")
    }
    Label {
        width: parent.width
        text: sheet.declining ? qsTr("What was asked and why it is declined stand in the record.") : qsTr("Question and answer stand in the record.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }
}
