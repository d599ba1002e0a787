// Something that comes due: how it stands, in a word and by shape, and by when.
import QtQuick
import Ambit

Item {
    id: row

    required property var modelData

    objectName: "due." + modelData.id
    implicitHeight: words.implicitHeight + 8
    Accessible.role: Accessible.StaticText
    Accessible.name: modelData.name + ", " + modelData.verdictText + ", " + modelData.words

    Mark {
        id: mark
        x: 4
        y: 6
        look: row.modelData.look
        grounds: row.modelData.verdict === "passed"
    }
    Column {
        id: words
        x: mark.x + mark.width + 12
        y: 4
        width: parent.width - x
        spacing: 2
        Label {
            width: parent.width
            text: row.modelData.name
            strong: true
            Accessible.ignored: true
        }
        Label {
            width: parent.width
            text: Texts.said(row.modelData.verdictText, row.modelData.words)
            Accessible.ignored: true
        }
    }
}
