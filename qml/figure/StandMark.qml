// A stand: a numbered circle; filled = been there, heavy = here, thin = ahead; a bar beneath where one stands raised; crossed out
// where it can't be used.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Item {
    id: mark

    required property string standId
    required property string name
    required property int number
    required property real placeX
    required property real placeY
    required property bool raised
    required property string look
    /// Why it can't be used; "": it can.
    required property string blocked

    property real perMetre: 1
    property point origin
    property bool next: false
    readonly property bool here: look === "current"
    readonly property bool usable: blocked === ""
    /// Where stands are too close to each other for numbers, all but the ones that matter now are dots.
    property var places: []
    readonly property bool numbered: here || next || !usable || nearest * perMetre >= 24
    readonly property real nearest: {
        let least = Infinity;
        for (const place of places)
            if (place.x !== placeX || place.y !== placeY)
                least = Math.min(least, Math.hypot(place.x - placeX, place.y - placeY));
        return least;
    }
    readonly property real across: !numbered ? 13 : (here || next ? 28 : 23) * (1 + (Theme.scale - 1) * 0.3)

    /// Else it is only drawn.
    property bool touchable: true

    signal asked

    objectName: "stand." + standId
    x: placeX * perMetre + origin.x - width / 2
    y: placeY * perMetre + origin.y - height / 2
    z: here ? 3 : next ? 2 : numbered ? 1 : 0
    width: across
    height: across
    Accessible.role: touchable ? Accessible.Button : Accessible.StaticText
    Accessible.name: number > 0 ? qsTr("Stand %1, %2").arg(number).arg(name) : qsTr("Stand %1").arg(name)
    Accessible.description: !usable ? qsTr("can't be used: %1").arg(blocked) : here ? qsTr("here") : look === "done" ? qsTr("been there") : next ? qsTr("next") : qsTr("ahead")
    Accessible.onPressAction: mark.asked()

    Rectangle {
        anchors.fill: parent
        radius: width / 2
        color: mark.look === "done" ? Theme.way : Theme.panel
        border.width: mark.here ? 5 : mark.next ? 4 : 2
        border.color: Theme.way
    }
    Rectangle {
        visible: mark.raised && mark.numbered
        anchors.horizontalCenter: parent.horizontalCenter
        y: parent.height + 2
        width: parent.width * 0.8
        height: 3
        color: Theme.way
    }
    Text {
        visible: mark.numbered && mark.usable
        anchors.centerIn: parent
        anchors.verticalCenterOffset: 1
        text: mark.number
        font.family: Theme.family
        font.bold: true
        font.pixelSize: Math.max(14, Math.round(14 * (1 + (Theme.scale - 1) * 0.3)))
        color: mark.look === "done" ? Theme.panel : Theme.way
        Accessible.ignored: true
    }
    Repeater {
        // Two bars across.
        model: mark.usable ? 0 : 2
        Rectangle {
            required property int index
            anchors.centerIn: parent
            width: mark.width * 1.25
            height: 4
            rotation: index === 0 ? 45 : -45
            antialiasing: true
            color: mark.look === "done" ? Theme.panel : Theme.way
            border.width: mark.look === "done" ? 1 : 0
            border.color: Theme.way
        }
    }
}
