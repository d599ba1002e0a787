// A settled point is settled again. What was said before stays in the record.
import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    required property string pointId
    required property string name
    property string value: ""

    objectName: "sheetReopen"
    title: qsTr("Settle again")
    subtitle: name
    backName: "reopenCancel"
    keys: Key {
        objectName: "reopenDone"
        width: parent.width
        broad: true
        look: "solid"
        text: qsTr("Settle it again")
        onClicked: if (sheet.round.reopen(sheet.pointId, reason.text))
            sheet.closed()
    }

    WordsField {
        id: reason
        objectName: "reopenWhy"
        width: parent.width
        focus: true
        label: qsTr("Why it is settled again")
    }
    Label {
        width: parent.width
        text: qsTr("What was said before stays in the record, with its time.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }
}
