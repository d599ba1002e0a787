// What lets one device in: a code to be photographed, the same to be read aloud and typed, and how long it is good for.
import QtQuick
import Ambit

Grid {
    id: codes

    required property SharingView sharing
    /// The picture is whole in this height.
    required property real room
    readonly property int seconds: sharing.codeSeconds
    readonly property string leftText: Math.floor(seconds / 60) + ":" + String(seconds % 60).padStart(2, "0")
    readonly property real most: Math.min(width, Theme.mm(70) / Math.max(1, Theme.scale * 0.75), Math.max(Theme.mm(36), room))
    readonly property bool beside: width - most > Theme.mm(34) * Theme.scale

    columns: beside ? 2 : 1
    columnSpacing: 20
    rowSpacing: 12

    Item {
        width: codes.beside ? ground.width : codes.width
        height: ground.height
        Rectangle {
            id: ground
            objectName: "followCode"
            anchors.horizontalCenter: parent.horizontalCenter
            // As many pixels for each module.
            width: Math.max(1, Math.floor(codes.most / Math.max(1, picture.implicitWidth))) * Math.max(1, picture.implicitWidth)
            height: width
            // By night as dark as the ink is bright: what reads it needs contrast, not white.
            color: Theme.night ? Theme.ink : "#ffffff"
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("A code for the other device's camera")
            Image {
                id: picture
                anchors.fill: parent
                source: codes.sharing.codePicture
                smooth: false
                fillMode: Image.Stretch
            }
        }
    }
    Column {
        width: codes.beside ? codes.width - ground.width - codes.columnSpacing : codes.width
        spacing: 4
        Label {
            objectName: "followCodeLeft"
            width: parent.width
            text: qsTr("Lets one device in, once: %1 left").arg(codes.leftText)
            strong: true
        }
        Label {
            width: parent.width
            visible: typed.visible
            text: qsTr("Or typed on the other device:")
            color: Theme.soft
        }
        Label {
            id: typed
            objectName: "followCodeText"
            width: parent.width
            visible: text !== ""
            text: codes.sharing.codeText.replace(/-/g, " ")
            font.family: Theme.monospace
            font.pixelSize: Math.min(Theme.huge, 40) // large already: the last group is not to be missed
            wrapMode: Text.WordWrap
            // Letter by letter, for whoever hears it.
            Accessible.name: Array.from(text.replace(/ /g, "")).join(" ")
        }
        Label {
            width: parent.width
            visible: !typed.visible
            text: qsTr("This network has no address that could be typed: the other device needs its camera.")
            color: Theme.soft
        }
    }
}
