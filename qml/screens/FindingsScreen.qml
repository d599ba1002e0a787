// Where on the aircraft findings were over a chosen time; a touched zone says which.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    property string zone: ""
    readonly property bool wide: width > Theme.mm(140)
    readonly property ZoneFindings findings: app.zoneFindings
    /// Asked again with other times and other records: both make other zones.
    readonly property var found: findings.zones.length > 0 && zone !== "" ? findings.foundIn(zone) : []
    readonly property string zoneText: {
        for (const one of Array.from(findings.zones))
            if (one.zoneId === zone)
                return one.text;
        return "";
    }

    signal stepAsked(string step, var values)
    signal stepInstead(string step, var values)

    /// Also for whoever comes back to this page.
    function choose(zoneId: string) {
        screen.zone = zoneId;
        screen.stepInstead("Findings", {
            zone: zoneId
        });
    }

    objectName: "screenFindings"
    columnWidth: Math.min(width - keysWidth - 2 * Theme.margin, Theme.mm(wide ? 170 : 118))
    title: qsTr("Where findings were")
    subtitle: Texts.line(app.file.registration, Texts.findings(findings.total), "")
    backText: qsTr("Back")
    backName: "findingsBack"

    Grid {
        id: times
        width: parent.width
        columns: width < Theme.mm(66) * Theme.scale ? 1 : 3
        spacing: Theme.gap
        Repeater {
            model: screen.findings.times
            Choice {
                required property var modelData
                objectName: "findingsDays." + modelData.days
                width: (times.width - (times.columns - 1) * Theme.gap) / times.columns
                text: modelData.name
                chosen: screen.findings.days === modelData.days
                onClicked: screen.findings.days = modelData.days
            }
        }
    }
    Item {
        id: both
        width: screen.columnWidth
        height: screen.wide ? Math.max(figure.height, list.height) : list.y + list.height
        FindingsFigure {
            id: figure
            objectName: "findingsFigure"
            width: screen.wide ? (parent.width - 24) / 2 : parent.width
            height: Math.max(Theme.mm(50), Math.min(screen.height * (screen.wide ? 0.75 : 0.58), width * 1.5))
            findings: screen.findings
            chosen: screen.zone
            seenFrom: screen.seenFrom - both.y
            seenTo: screen.seenTo - both.y
            onZoneAsked: zoneId => screen.choose(zoneId)
        }
        Column {
            id: list
            x: screen.wide ? figure.width + 24 : 0
            y: screen.wide ? 0 : figure.height + 12
            width: screen.wide ? figure.width : parent.width
            spacing: 12
            Label {
                width: parent.width
                visible: screen.zone === ""
                text: screen.findings.total === 0 ? qsTr("Nothing was found in that time.") : qsTr("Each number counts the findings of that time in its zone; the closer the hatching, the more. Touch a zone to read them.")
            }
            Repeater {
                model: screen.zone === "" ? Array.from(screen.findings.zones).filter(one => one.count > 0).sort((a, b) => b.count - a.count) : []
                Key {
                    required property var modelData
                    objectName: "findingsIn." + modelData.zoneId
                    width: list.width
                    text: modelData.text
                    onClicked: screen.choose(modelData.zoneId)
                }
            }
            Heading {
                objectName: "findingsZone"
                width: parent.width
                visible: screen.zone !== ""
                text: screen.zoneText
            }
            Repeater {
                model: screen.found
                DiscrepancyKey {
                    required property int index
                    objectName: "found." + index // a point may have had several
                    width: list.width
                    onClicked: screen.stepAsked("Discrepancy", {
                        key: key
                    })
                }
            }
            Key {
                objectName: "findingsAllZones"
                width: parent.width
                visible: screen.zone !== ""
                text: qsTr("All zones")
                onClicked: screen.choose("")
            }
        }
    }
}
