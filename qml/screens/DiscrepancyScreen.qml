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

    readonly property bool narrowKeys: foot.width <= Theme.mm(54) * Theme.scale
    /// The keys stand beside a low page, one above the other.
    readonly property bool stacked: low && narrowKeys
    /// Large text: three keys below would leave no room for what they are about. Two of them go with it.
    readonly property bool crowded: !low && narrowKeys

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
    keys: Item {
        id: foot
        width: parent.width
        height: screen.stacked ? ways.height + 12 + rectify.height : screen.crowded ? rectify.height : Math.max(ways.height, rectify.height)
        visible: screen.one !== null && screen.one.isOpen
        Grid {
            id: ways
            parent: screen.crowded ? beneath : foot
            width: columns === 1 ? cell : 2 * cell + spacing
            columns: screen.narrowKeys ? 1 : 2
            spacing: Theme.gap // three keys of 18 mm are as wide as a phone
            readonly property real cell: screen.narrowKeys ? foot.width : (foot.width - 2 * spacing) / 3
            readonly property real tallest: columns === 1 ? 0 : Math.max(defer.implicitHeight, ground.implicitHeight, rectify.implicitHeight)
            Key {
                id: defer
                objectName: "deferKey"
                narrow: true
                width: ways.cell
                height: Math.max(implicitHeight, ways.tallest)
                broad: !screen.low // three of them beside a low page
                enabled: !screen.its.reading
                text: qsTr("Defer")
                about: qsTr("Leave it as it is for a while, on a stated basis")
                onClicked: screen.ask("Defer")
            }
            Key {
                id: ground
                objectName: "groundKey"
                narrow: true
                width: ways.cell
                height: Math.max(implicitHeight, ways.tallest)
                broad: !screen.low // three of them beside a low page
                enabled: !screen.its.reading
                text: qsTr("Grounds")
                about: qsTr("The aircraft doesn't fly until it is put right")
                onClicked: screen.ask("Ground")
            }
        }
        Key {
            id: rectify
            objectName: "rectifyKey"
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            narrow: true
            width: ways.cell
            height: Math.max(implicitHeight, ways.tallest)
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
    Column {
        id: beneath
        width: parent.width
        visible: screen.crowded && foot.visible
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
