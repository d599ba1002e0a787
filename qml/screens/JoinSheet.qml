// By the code that the other device shows: scanned, or typed.
import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app

    function join(code: string) {
        if (sheet.app.watch.join(code))
            sheet.closed();
    }

    objectName: "sheetJoin"
    title: qsTr("Follow another")
    subtitle: qsTr("With the code on their screen")
    backName: "joinCancel"
    keys: Key {
        objectName: "joinDone"
        width: parent.width
        broad: true
        look: "solid"
        enabled: code.text.trim() !== ""
        text: qsTr("Follow")
        onClicked: sheet.join(code.text)
    }

    Field {
        id: code
        objectName: "joinCode"
        width: parent.width
        focus: true
        label: qsTr("The code's letters")
        about: qsTr("spaces don't matter")
        font.family: Theme.monospace
        font.capitalization: Font.AllUppercase
        onAccepted: sheet.join(code.text)
    }
    Label {
        width: parent.width
        text: qsTr("On the device of whoever walks: More, “Who follows”, “Show a code”. It lets one device in, within five minutes.")
        color: Theme.soft
    }
    CodePlace {
        width: parent.width
        app: sheet.app
        onRead: text => sheet.join(text)
    }
}
