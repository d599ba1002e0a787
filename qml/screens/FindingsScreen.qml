// Where on the aircraft findings were over a chosen time; a touched zone says which.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    property string zone: ""
    readonly property ZoneFindings findings: app.zoneFindings
    readonly property var found: zone === "" ? [] : findings.zones.length > 0 ? findings.foundIn(zone) : []
    readonly property string zoneText: {
        for (const one of Array.from(findings.zones))
            if (one.zoneId === zone)
                return one.text;
        return "";
    }

    signal stepAsked(string step, var values)
    signal stepInstead(string step, var values)

    objectName: "screenFindings"
    title: qsTr("Where findings were")
    subtitle: Texts.line(app.file.registration, Texts.findings(findings.total), "")
    backText: qsTr("Back")
    backName: "findingsBack"

    Row {
        id: times
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: screen.findings.times
            Choice {
                required property var modelData
                objectName: "findingsDays." + modelData.days
                width: (times.width - 2 * Theme.gap) / 3
                text: modelData.name
                chosen: screen.findings.days === modelData.days
                onClicked: screen.findings.days = modelData.days
            }
        }
    }
    FindingsFigure {
        objectName: "findingsFigure"
        width: parent.width
        height: Math.max(Theme.mm(50), Math.min(screen.height * 0.62, width * 1.4))
        findings: screen.findings
        chosen: screen.zone
        onZoneAsked: zoneId => {
            screen.zone = zoneId;
            screen.stepInstead("Findings", {
                zone: zoneId
            });
        }
    }
    Label {
        width: parent.width
        visible: screen.zone === ""
        text: qsTr("Each number counts the findings of that time in its zone; the closer the hatching, the more. Touch a zone to read them.")
        color: Theme.soft
        font.pixelSize: Theme.small
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
            width: screen.columnWidth
            onClicked: screen.stepAsked("Discrepancy", {
                key: key
            })
        }
    }
}
