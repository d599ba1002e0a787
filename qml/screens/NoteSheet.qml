// A remark that belongs to no point.
import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    property string value: ""

    objectName: "sheetNote"
    title: qsTr("Note")
    subtitle: qsTr("Goes into the record with its time.")
    backName: "noteCancel"
    keys: Key {
        objectName: "noteDone"
        width: parent.width
        broad: true
        look: "solid"
        text: qsTr("Keep the note")
        onClicked: if (sheet.round.note(words.text))
            sheet.closed()
    }

    WordsField {
        id: words
        objectName: "noteWords"
        width: parent.width
        focus: true
        lines: 4
        label: qsTr("Note")
    }
}
