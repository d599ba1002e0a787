// Which aircraft: each with its last conclusion and the round that waits.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Ambit

Page {
    id: screen

    required property App app

    /// A phone on its side, text large: no room for three keys beside.
    readonly property bool crowded: low && Theme.scale > 1.4

    signal chosen(string registration)
    signal addAsked
    signal followersAsked

    objectName: "screenAircraft"
    title: qsTr("Which aircraft?")
    subtitle: qsTr("The pilot in command decides. Ambit reminds and records.")
    keys: Flow {
        id: foot
        readonly property bool narrow: width < Theme.mm(54) * Theme.scale
        readonly property int columns: narrow ? 1 : !screen.app.sharing.possible ? 3 : width < Theme.mm(90) * Theme.scale ? 2 : 4
        readonly property real part: Math.floor((width - (columns - 1) * 12) / columns)
        spacing: 12
        width: parent.width
        Key {
            objectName: visible ? "addAircraft" : ""
            width: foot.part
            visible: !screen.crowded
            text: qsTr("Add an aircraft")
            onClicked: screen.addAsked()
        }
        FollowKey {
            width: foot.part
            visible: sharing.possible && !foot.narrow
            sharing: screen.app.sharing
            onClicked: screen.followersAsked()
        }
        Key {
            objectName: "textSizeKey"
            width: foot.part
            text: qsTr("Text %1 %").arg(Math.round(Theme.scale * 100))
            about: qsTr("Makes all text larger, up to twice; then small again")
            onClicked: Theme.nextScale()
        }
        Key {
            objectName: "nightKey"
            width: foot.part
            text: screen.app.night ? qsTr("Day") : qsTr("Night")
            about: qsTr("The night appearance spares eyes that are used to the dark")
            onClicked: screen.app.night = !screen.app.night
        }
    }

    Label {
        width: parent.width
        visible: rows.count === 0
        text: qsTr("There is no aircraft here yet. Add one: its airframe file, its registration, its serial number.")
    }
    Repeater {
        id: rows
        model: screen.app.aircraft
        Column {
            id: row
            required property string registration
            required property string serial
            required property string airframeName
            required property string openRoundId
            required property string openRoundText
            required property string lastConclusion
            required property string lastText
            width: screen.columnWidth
            spacing: Theme.gap
            T.AbstractButton {
                id: card
                objectName: "aircraft." + row.registration
                width: parent.width
                implicitHeight: Math.max(Theme.key, words.implicitHeight + 32)
                focusPolicy: Qt.StrongFocus
                onClicked: screen.chosen(row.registration)
                Keys.onReturnPressed: card.clicked()
                Keys.onEnterPressed: card.clicked()
                Accessible.role: Accessible.Button
                Accessible.name: qsTr("%1, %2").arg(row.registration).arg(row.airframeName)
                Accessible.description: row.lastText
                Accessible.onPressAction: card.clicked()
                background: Rectangle {
                    radius: Theme.corner
                    color: card.down ? Theme.pressed : Theme.panel
                    border.width: 2
                    border.color: Theme.ink
                    FocusRing {
                        of: card
                    }
                }
                Column {
                    id: words
                    x: 20
                    y: 16
                    width: parent.width - 40
                    spacing: 4
                    Label {
                        width: parent.width
                        text: row.registration
                        strong: true
                        font.pixelSize: Theme.huge
                        Accessible.ignored: true
                    }
                    Label {
                        width: parent.width
                        text: row.airframeName + (row.serial === "" ? "" : "\u00a0· " + qsTr("serial %1").arg(row.serial))
                        color: Theme.soft
                        font.pixelSize: Theme.small
                        Accessible.ignored: true
                    }
                    Row {
                        width: parent.width
                        visible: row.lastText !== ""
                        spacing: 10
                        topPadding: 4
                        Mark {
                            id: mark
                            anchors.verticalCenter: last.verticalCenter
                            visible: row.lastConclusion !== ""
                            look: row.lastConclusion === "fit" ? "sound" : "finding"
                            grounds: true
                        }
                        Label {
                            id: last
                            width: parent.width - (row.lastConclusion !== "" ? mark.width + 10 : 0)
                            text: row.lastText
                            Accessible.ignored: true
                        }
                    }
                }
            }
            Key {
                objectName: "resume." + row.registration
                visible: row.openRoundId !== ""
                width: parent.width
                broad: true
                look: "solid"
                text: qsTr("Go on with the round")
                about: row.openRoundText
                onClicked: screen.app.resume(row.openRoundId)
            }
            Label {
                visible: row.openRoundId !== ""
                width: parent.width
                text: row.openRoundText
                font.pixelSize: Theme.small
                color: Theme.soft
            }
        }
    }
    Key {
        objectName: visible ? "addAircraft" : ""
        width: parent.width
        visible: screen.crowded
        text: qsTr("Add an aircraft")
        onClicked: screen.addAsked()
    }
    FollowKey {
        // Where the keys below are one under the other, another would leave no room for the aircraft.
        width: parent.width
        visible: sharing.possible && foot.narrow
        sharing: screen.app.sharing
        onClicked: screen.followersAsked()
    }
    LanguageKey {
        width: parent.width
        app: screen.app
    }
}
