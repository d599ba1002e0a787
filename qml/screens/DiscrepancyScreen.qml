// One discrepancy: its whole life, and what can be done about it.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property string key
    readonly property AircraftFileView its: app.aircraftFile
    readonly property DiscrepancyView one: its.discrepancy

    signal stepAsked(string step, var values)

    function ask(step: string) {
        screen.stepAsked(step, {
            key: screen.key
        });
    }

    Component.onCompleted: its.openDiscrepancy(key)

    objectName: "screenDiscrepancy"
    title: one ? one.name : qsTr("Discrepancy")
    subtitle: one ? Texts.line(its.registration, one.where, "") : ""
    backText: qsTr("Back")
    backName: "discrepancyBack"
    keys: Grid {
        id: grid
        width: parent.width
        visible: screen.one !== null && screen.one.isOpen
        columns: width > Theme.mm(54) * Theme.scale ? 3 : 1
        spacing: Theme.gap // three keys of 18 mm are as wide as a phone
        readonly property real cell: (width - (columns - 1) * spacing) / columns
        Key {
            objectName: "deferKey"
            narrow: true
            width: grid.cell
            broad: !screen.low // three of them beside a low page
            enabled: !screen.its.reading
            text: qsTr("Defer")
            about: qsTr("Leave it as it is for a while, on a stated basis")
            onClicked: screen.ask("Defer")
        }
        Key {
            objectName: "groundKey"
            narrow: true
            width: grid.cell
            broad: !screen.low // three of them beside a low page
            enabled: !screen.its.reading
            text: qsTr("Grounds")
            about: qsTr("The aircraft doesn't fly until it is put right")
            onClicked: screen.ask("Ground")
        }
        Key {
            objectName: "rectifyKey"
            narrow: true
            width: grid.cell
            broad: !screen.low // three of them beside a low page
            look: "solid"
            enabled: !screen.its.reading
            text: qsTr("Put right")
            onClicked: screen.ask("Rectify")
        }
    }

    Framed {
        width: parent.width
        visible: screen.one !== null
        Label {
            width: parent.width
            text: screen.one ? screen.one.stateText : ""
            strong: true
            font.pixelSize: Theme.fitting(text, width, Theme.huge)
            Accessible.role: Accessible.Heading
        }
        Label {
            width: parent.width
            text: screen.one ? screen.one.words : ""
            font.pixelSize: Theme.large
        }
        Label {
            width: parent.width
            text: screen.one ? screen.one.sinceText : ""
        }
    }
    Key {
        objectName: "discrepancyHistory"
        width: parent.width
        visible: screen.one !== null
        text: qsTr("History of this point")
        onClicked: screen.stepAsked("History", {
            pointId: screen.one.pointId,
            pointName: screen.one.name
        })
    }
    Heading {
        width: parent.width
        text: qsTr("From the first to the last")
    }
    Repeater {
        model: screen.one ? screen.one.life : []
        LifeStep {
            width: screen.columnWidth
            onRecordAsked: screen.app.file.open(modelData.recordId)
        }
    }
}
