// What can be chosen, in words, and what is said of it; in a row beside its ring.
import QtQuick
import QtQuick.Templates as T
import Ambit

Item {
    id: place

    required property T.AbstractButton of
    property string about: ""
    property bool broad: false
    readonly property real wordsWidth: words.implicitWidth
    readonly property real wordsHeight: words.implicitHeight

    anchors.fill: parent
    anchors.leftMargin: of.leftPadding
    anchors.rightMargin: of.rightPadding

    Column {
        id: words
        width: parent.width
        anchors.verticalCenter: parent.verticalCenter
        spacing: 2
        Label {
            width: parent.width
            text: place.of.text
            strong: true
            font.pixelSize: Theme.giving(text, width, place.broad ? Theme.title : Theme.large)
            Accessible.ignored: true
        }
        Label {
            width: parent.width
            visible: text !== ""
            text: place.about
            font.pixelSize: Theme.small
            Accessible.ignored: true
        }
    }
}
