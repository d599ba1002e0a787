// The key that something is said of: as it was chosen, or to be written.
import QtQuick
import Ambit

Column {
    id: subject

    property string key: ""
    property string knownName: ""
    /// Its holder is asked for, where the key is to be written.
    property bool named: true
    readonly property string fingerprint: key !== "" ? key : written.text
    readonly property string name: knownName !== "" ? knownName : holder.text

    spacing: 12

    Framed {
        width: parent.width
        visible: subject.key !== ""
        Label {
            width: parent.width
            visible: text !== ""
            text: subject.knownName
            strong: true
            font.pixelSize: Theme.large
        }
        Label {
            width: parent.width
            text: subject.key.replace(/(.{4})(?=.)/g, "$1 ")
            font.family: Theme.monospace
        }
    }
    Field {
        id: holder
        objectName: "keyHolder"
        width: parent.width
        visible: subject.named && subject.knownName === ""
        label: qsTr("Whose key it is")
    }
    WordsField {
        id: written
        objectName: "keyFingerprint"
        width: parent.width
        visible: subject.key === ""
        label: qsTr("The key's fingerprint: 64 digits, 0 to 9 and a to f")
        font.family: Theme.monospace
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
    }
}
