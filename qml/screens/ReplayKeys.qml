// The time of a walk that is followed: scrolled, played at a speed, and back to now.
import QtQuick
import Ambit

Column {
    id: keys

    required property FollowedRound round
    /// The end is now.
    property bool live: false
    /// Two by two where large text makes a row of them too narrow for the time.
    readonly property int columns: width / 4 > Theme.mm(16) * Theme.scale * 0.7 ? 4 : 2
    readonly property real cell: (width - (columns - 1) * Theme.gap) / columns

    spacing: 4

    TimeLine {
        width: parent.width
        length: keys.round ? keys.round.length : 1
        at: keys.round ? keys.round.seconds : 0
        marks: keys.round ? keys.round.marks : []
        clock: keys.round ? keys.round.clockText : ""
        onAsked: seconds => keys.round.showAt(seconds)
    }
    Grid {
        columns: keys.columns
        spacing: Theme.gap
        Key {
            objectName: "playKey"
            width: keys.cell
            narrow: true
            text: keys.round && keys.round.playing ? qsTr("Stop") : qsTr("Play")
            about: qsTr("Walks it again from here")
            onClicked: keys.round.playing ? keys.round.stop() : keys.round.play()
        }
        Key {
            objectName: "speedKey"
            width: keys.cell
            narrow: true
            text: keys.round ? qsTr("%1 ×").arg(keys.round.speed) : ""
            about: qsTr("Times as fast as it was walked")
            onClicked: keys.round.speed = keys.round.speed >= 32 ? 1 : keys.round.speed * 2
        }
        Label {
            objectName: "followClock"
            width: keys.cell
            height: Theme.target
            text: keys.round ? keys.round.clockText : ""
            strong: true
            // Large text gives way rather than break the time.
            wrapMode: Text.NoWrap
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.text(12.5)
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
        }
        Key {
            objectName: "nowKey"
            width: keys.cell
            narrow: true
            look: keys.round && keys.round.atEnd ? "solid" : "outline"
            text: keys.live ? qsTr("Now") : qsTr("End")
            about: keys.live ? qsTr("What is settled as it is settled") : ""
            onClicked: keys.round.showEnd()
        }
    }
}
