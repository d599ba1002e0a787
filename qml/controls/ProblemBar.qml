// What went wrong or was refused, and what to do.
import QtQuick
import Ambit

Rectangle {
    id: bar

    required property App app

    /// Large text: no room for the words beside the key.
    readonly property bool narrow: width - close.width < Theme.mm(26) * Theme.scale

    visible: app.problem !== ""
    implicitHeight: narrow ? words.implicitHeight + close.height + 24 : Math.max(words.implicitHeight + 24, Theme.target + 12)
    color: Theme.panel
    radius: Theme.corner
    border.width: 3
    border.color: Theme.ink
    Accessible.role: Accessible.AlertMessage
    Accessible.name: app.problem

    Label {
        id: words
        objectName: "problemText"
        anchors.left: parent.left
        anchors.leftMargin: Theme.margin
        anchors.right: bar.narrow ? parent.right : close.left
        anchors.rightMargin: bar.narrow ? Theme.margin : 12
        y: bar.narrow ? 12 : (bar.height - implicitHeight) / 2
        text: bar.app.problem
        strong: true
        Accessible.ignored: true
    }
    Key {
        id: close
        objectName: "problemClose"
        anchors.right: parent.right
        anchors.rightMargin: 6
        y: bar.narrow ? bar.height - height - 6 : (bar.height - height) / 2
        text: qsTr("Close")
        onClicked: bar.app.clearProblem()
    }
}
