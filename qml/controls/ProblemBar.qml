// What went wrong or was refused, and what to do.
import QtQuick
import Ambit

Rectangle {
    id: bar

    required property App app

    visible: app.problem !== ""
    implicitHeight: Math.max(words.implicitHeight + 24, Theme.target + 12)
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
        anchors.right: close.left
        anchors.rightMargin: 12
        anchors.verticalCenter: parent.verticalCenter
        text: bar.app.problem
        strong: true
        Accessible.ignored: true
    }
    Key {
        id: close
        objectName: "problemClose"
        anchors.right: parent.right
        anchors.rightMargin: 6
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Close")
        onClicked: bar.app.clearProblem()
    }
}
