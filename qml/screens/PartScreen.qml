// A part comes off, another is fitted, or only one of both: with serial numbers and what each had run.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property AircraftFileView its: app.aircraftFile
    /// "change", "off", "on"
    property string what: "change"
    /// Position of the place chosen; "": another one, to be written.
    property string position: its.places.length > 0 ? its.places[0].position : ""
    readonly property var kinds: [
        {
            id: "change",
            text: qsTr("Changed")
        },
        {
            id: "off",
            text: qsTr("Only taken off")
        },
        {
            id: "on",
            text: qsTr("Only fitted")
        }
    ]

    /// What is known to be there is what comes off; what is fitted mostly bears the same name and number.
    function choose(position: string) {
        screen.position = position;
        const there = Array.from(screen.its.places).find(one => one.position === position);
        off.fill(there?.part ?? "", there?.number ?? "", there?.serial ?? "");
        on.fill(there?.part ?? "", there?.number ?? "", "");
    }
    function sign() {
        const said = Object.assign({
            position: screen.position !== "" ? screen.position : other.text,
            off: screen.what === "on" ? {} : off.values,
            on: screen.what === "off" ? {} : on.values
        }, work.values);
        if (screen.app.entries.changePart(said, signature.signature))
            screen.back();
    }

    Component.onCompleted: choose(position)

    objectName: "screenPart"
    title: qsTr("Part changed")
    subtitle: its.registration
    backText: qsTr("Back")
    backName: "entryBack"
    keys: SignKeys {
        width: parent.width
        fields: signature
        onSignAsked: screen.sign()
    }

    Grid {
        id: grid
        width: parent.width
        columns: width > Theme.mm(84) * Theme.scale ? 3 : 1
        spacing: Theme.gap
        Repeater {
            model: screen.kinds
            Choice {
                required property var modelData
                objectName: "partWhat." + modelData.id
                width: (grid.width - (grid.columns - 1) * Theme.gap) / grid.columns
                text: modelData.text
                chosen: screen.what === modelData.id
                onClicked: screen.what = modelData.id
            }
        }
    }
    Heading {
        width: parent.width
        text: qsTr("Where")
    }
    Repeater {
        model: screen.its.places
        Choice {
            required property var modelData
            objectName: "partPlace." + modelData.position
            width: screen.columnWidth
            text: modelData.name
            about: modelData.fittedText === "" ? qsTr("No record says what is fitted") : modelData.fittedText
            chosen: screen.position === modelData.position
            onClicked: if (screen.position !== modelData.position)
                screen.choose(modelData.position)
        }
    }
    Choice {
        objectName: "partElsewhere"
        width: parent.width
        visible: screen.its.places.length > 0
        text: qsTr("Another place")
        chosen: screen.position === ""
        onClicked: screen.choose("")
    }
    Field {
        id: other
        objectName: "partPosition"
        width: parent.width
        visible: screen.position === ""
        label: qsTr("Place on the aircraft")
        about: qsTr("one part at a time is in it")
    }
    PartFields {
        id: off
        width: parent.width
        visible: screen.what !== "on"
        its: screen.its
        title: qsTr("Taken off")
        prefix: "off."
        askRun: qsTr("Say what it has run")
    }
    PartFields {
        id: on
        width: parent.width
        visible: screen.what !== "off"
        its: screen.its
        title: qsTr("Fitted")
        prefix: "on."
        askRun: qsTr("Not new: say what it had run")
    }
    Heading {
        width: parent.width
        text: qsTr("The work")
    }
    WorkFields {
        id: work
        width: parent.width
        its: screen.its
    }
    SignatureFields {
        id: signature
        width: parent.width
        app: screen.app
        role: "mechanic"
        onAccepted: screen.sign()
    }
}
