// Work done: a discrepancy put right, or an inspection or other work without one (14 CFR 43.9(a): what, when, by whom, under which
// certificate).
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    /// Of the discrepancy; "": none.
    property string key: ""
    readonly property AircraftFileView its: app.aircraftFile
    readonly property DiscrepancyView one: key === "" ? null : its.discrepancy
    property var inspections: []

    function toggle(id: string) {
        screen.inspections = screen.inspections.includes(id) ? screen.inspections.filter(other => other !== id) : screen.inspections.concat([id]);
    }
    function sign() {
        const said = Object.assign({
            keys: screen.key === "" ? [] : [screen.key],
            inspections: screen.inspections
        }, work.values);
        if (screen.app.entries.rectify(said, signature.signature))
            screen.back();
    }

    Component.onCompleted: if (key !== "")
        its.openDiscrepancy(key)

    objectName: "screenRectify"
    title: key === "" ? qsTr("Inspection or work done") : qsTr("Put right")
    subtitle: key === "" ? its.registration : one ? Texts.line(one.name, one.words, "") : ""
    backText: qsTr("Back")
    backName: "entryBack"
    keys: SignKeys {
        width: parent.width
        fields: signature
        onSignAsked: screen.sign()
    }

    WorkFields {
        id: work
        width: parent.width
        its: screen.its
        byWhom: true
        Heading {
            width: parent.width
            visible: screen.its.inspections.length > 0
            text: qsTr("Inspections done with it")
        }
        Repeater {
            model: screen.its.inspections
            Tick {
                required property var modelData
                objectName: "inspection." + modelData.id
                width: screen.columnWidth
                text: modelData.name
                chosen: screen.inspections.includes(modelData.id)
                onClicked: screen.toggle(modelData.id)
            }
        }
    }
    SignatureFields {
        id: signature
        width: parent.width
        app: screen.app
        role: "mechanic"
        onAccepted: screen.sign()
    }
}
