// The start of a round: which walk, who, what the counters say; the usual cautions and what has the last word.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    required property string registration
    readonly property var walks: inLanguage(app.language, app.walks(registration))
    readonly property var readings: inLanguage(app.language, app.counters(registration))
    readonly property bool twoColumns: width > Theme.mm(140)
    readonly property real formWidth: twoColumns ? (columnWidth - 24) * 0.58 : columnWidth
    property string walk: walks.length === 1 ? walks[0].id : ""
    property string role: app.personRole !== "" ? app.personRole : "pilot"
    property var counters: ({})
    property bool alone: false

    /// Texts that were asked for, asked for again when another language is spoken.
    function inLanguage(_language: string, texts: var): var {
        return texts;
    }

    onWalkChanged: app.compareWalk(registration, walk)
    Component.onCompleted: {
        app.file.registration = registration;
        app.compareWalk(registration, walk);
    }

    objectName: "screenBegin"
    title: qsTr("Begin a round")
    subtitle: registration
    backText: qsTr("Back")
    backName: "beginBack"
    columnWidth: Math.min(width - keysWidth - 2 * Theme.margin, Theme.mm(twoColumns ? 170 : 118))
    keys: Key {
        objectName: "beginKey"
        width: parent.width
        broad: true
        look: "solid"
        text: qsTr("Begin")
        onClicked: screen.app.begin(screen.registration, screen.walk, name.text, screen.role, certificate.text, screen.counters, screen.alone)
    }

    Item {
        width: screen.columnWidth
        height: screen.twoColumns ? Math.max(form.height, advice.height) : form.height + advice.height + 24
        Column {
            id: form
            width: screen.formWidth
            spacing: 12
            CarriedList {
                width: parent.width
                shown: !screen.twoColumns && !screen.alone
                its: screen.app.aircraftFile
            }
            Label {
                text: qsTr("Which walk")
                strong: true
                Accessible.role: Accessible.Heading
            }
            Repeater {
                model: screen.walks
                Choice {
                    required property var modelData
                    objectName: "walk." + modelData.id
                    width: form.width
                    text: modelData.name
                    about: qsTr("%n points", "", modelData.points) + "\u00a0· " + modelData.about
                    chosen: screen.walk === modelData.id
                    onClicked: screen.walk = modelData.id
                }
            }
            ComparedWalk {
                width: parent.width
                comparison: screen.app.comparison
            }
            Label {
                topPadding: 8
                text: qsTr("Who walks")
                strong: true
                Accessible.role: Accessible.Heading
            }
            Field {
                id: name
                objectName: "beginName"
                width: parent.width
                label: qsTr("Name")
                text: screen.app.personName
            }
            RoleChoice {
                width: parent.width
                app: screen.app
                prefix: "role."
                role: screen.role
                onChosen: role => screen.role = role
            }
            Field {
                id: certificate
                objectName: "beginCertificate"
                width: parent.width
                label: qsTr("Certificate or licence number")
                text: screen.app.personCertificate
            }
            Tick {
                objectName: "beginAlone"
                width: parent.width
                text: qsTr("Walk it on your own")
                about: qsTr("What others found today is not shown, so that two rounds can be laid side by side")
                chosen: screen.alone
                onClicked: screen.alone = !screen.alone
            }
            Label {
                topPadding: 8
                visible: screen.readings.length > 0
                text: qsTr("What the counters say")
                strong: true
                Accessible.role: Accessible.Heading
            }
            Repeater {
                model: screen.readings
                Field {
                    required property var modelData
                    objectName: "counter." + modelData.id
                    width: form.width
                    label: modelData.label
                    about: modelData.last === "" ? "" : qsTr("last time %1").arg(modelData.last)
                    inputMethodHints: Qt.ImhFormattedNumbersOnly
                    onTextChanged: {
                        const all = Object.assign({}, screen.counters);
                        all[modelData.id] = text;
                        screen.counters = all;
                    }
                }
            }
        }
        Column {
            id: advice
            x: screen.twoColumns ? screen.formWidth + 24 : 0
            y: screen.twoColumns ? 0 : form.height + 24
            width: screen.twoColumns ? screen.columnWidth - x : screen.columnWidth
            spacing: 12
            CarriedList {
                width: parent.width
                shown: screen.twoColumns && !screen.alone
                its: screen.app.aircraftFile
            }
            Label {
                text: qsTr("On every round")
                strong: true
                Accessible.role: Accessible.Heading
            }
            Caution {
                width: parent.width
                texts: screen.inLanguage(screen.app.language, screen.app.cautions(screen.registration))
            }
            Label {
                width: parent.width
                text: screen.inLanguage(screen.app.language, screen.app.notice(screen.registration))
                color: Theme.soft
                font.pixelSize: Theme.small
            }
        }
    }
}
