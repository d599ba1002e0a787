// What may go from the file and what must stay, by reason (14 CFR 91.417(b)). Nothing goes from here: what is chosen goes on to be signed for.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property RetentionView retention: app.retention
    readonly property var all: Array.from(retention.mayGo).concat(Array.from(retention.mustStay))
    property var chosen: []
    property bool staying: false

    signal stepAsked(string step, var values)

    /// [{why, rows}], in the order of their first.
    function byReason(rows: var): var {
        const groups = [];
        for (const one of Array.from(rows)) {
            let group = groups.find(other => other.why === one.why);
            if (!group)
                groups.push(group = {
                    why: one.why,
                    rows: []
                });
            group.rows.push(one);
        }
        return groups;
    }
    function choose(ids: var, wanted: bool) {
        const others = screen.chosen.filter(id => !ids.includes(id));
        screen.chosen = wanted ? others.concat(ids) : others;
    }
    function goOn() {
        screen.stepAsked("Remove", {
            rows: screen.all.filter(one => screen.chosen.includes(one.recordId))
        });
    }

    Component.onCompleted: retention.look(app.file.registration)

    objectName: "screenRetention"
    title: qsTr("What may go")
    subtitle: app.file.registration
    backText: qsTr("Back")
    backName: "retentionBack"
    keys: Key {
        objectName: "retentionGoOn"
        width: parent.width
        broad: true
        enabled: screen.chosen.length > 0
        text: screen.chosen.length === 0 ? qsTr("Nothing is chosen") : screen.chosen.length === 1 ? qsTr("Go on with 1 record") : qsTr("Go on with %1 records").arg(screen.chosen.length)
        onClicked: screen.goOn()
    }

    Label {
        width: parent.width
        text: qsTr("Ambit lets nothing go by itself. This is what 14 CFR 91.417(b) says of each record; the operator, a lessor or other rules may ask for more.")
    }
    Label {
        objectName: "retentionReading"
        width: parent.width
        visible: screen.retention.reading
        text: qsTr("The records are being looked at …")
    }
    Heading {
        objectName: "retentionMayGo"
        width: parent.width
        visible: !screen.retention.reading
        text: screen.retention.mayGo.length === 0 ? qsTr("Nothing may go now.") : qsTr("May go: %1").arg(screen.retention.mayGo.length)
    }
    Repeater {
        model: screen.byReason(screen.retention.mayGo)
        RetentionGroup {
            width: screen.columnWidth
            prefix: "mayGo."
            chosen: screen.chosen
            onChoiceAsked: (ids, wanted) => screen.choose(ids, wanted)
        }
    }
    Heading {
        width: parent.width
        visible: screen.retention.mustStay.length > 0
        text: qsTr("Must stay: %1").arg(screen.retention.mustStay.length)
    }
    Key {
        objectName: "retentionStaying"
        width: parent.width
        visible: !screen.staying && screen.retention.mustStay.length > 0
        text: qsTr("Show what must stay, and why")
        onClicked: screen.staying = true
    }
    Repeater {
        model: screen.staying ? screen.byReason(screen.retention.mustStay) : []
        RetentionGroup {
            width: screen.columnWidth
            prefix: "mustStay."
            stays: true
            chosen: screen.chosen
            onChoiceAsked: (ids, wanted) => screen.choose(ids, wanted)
        }
    }
}
