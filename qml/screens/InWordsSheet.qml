// A finding that was told by key gets its words.
import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    required property string pointId
    required property string name
    property string value: ""

    objectName: "sheetInWords"
    title: qsTr("What did you find?")
    subtitle: sheet.name
    backName: "inWordsCancel"
    keys: Key {
        objectName: "inWordsDone"
        width: parent.width
        broad: true
        look: "solid"
        enabled: words.text.trim() !== ""
        text: qsTr("Keep it")
        onClicked: if (sheet.app.hands.putIntoWords(sheet.pointId, words.text))
            sheet.closed()
    }

    WordsField {
        id: words
        objectName: "inWordsText"
        width: parent.width
        focus: true
        lines: 4
        label: qsTr("What was found")
    }
}
