// Something that is worth saying and nothing to put right: a line that goes by itself and takes no touch.
import QtQuick
import Ambit

Rectangle {
    id: line

    property string words: ""

    objectName: "quietLine"
    visible: words !== ""
    width: Math.min(label.implicitWidth + 2 * Theme.margin, parent ? parent.width - 2 * Theme.margin : 0)
    implicitHeight: label.implicitHeight + 16
    radius: Theme.corner
    color: Theme.wash
    border.width: 1
    border.color: Theme.soft
    Accessible.role: Accessible.Notification
    Accessible.name: words

    Label {
        id: label
        objectName: "quietText"
        x: Theme.margin
        anchors.verticalCenter: parent.verticalCenter
        width: parent.width - 2 * x
        text: line.words
        font.pixelSize: Theme.small
        horizontalAlignment: Text.AlignHCenter
        Accessible.ignored: true
    }
}
