// What a typed value was read from and how well: as the airframe says, or as it is told here.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: reading

    /// What its keys are found by begins with this.
    required property string name
    required property RoundView round
    required property string value
    required property string unit
    property string uncertainty: ""
    /// What is typed goes into the uncertainty; the first figure replaces it.
    property bool ofUncertainty: false
    property bool fresh: false
    property bool choosing: false
    /// "Read on a gauge"; "" if it isn't said.
    readonly property string fromText: Array.from(round.sources).filter(one => one.id === round.valueFrom).map(one => one.name).join("")

    /// Figures are wanted, from the keypad or a keyboard.
    signal figuresAsked

    function tellUncertainty(figures: string) {
        fresh = false;
        uncertainty = figures;
        round.tellReading(round.valueFrom, figures, unit);
    }
    function tellFrom(id: string) {
        choosing = false;
        ofUncertainty = false;
        // Another means, another uncertainty: nobody has stated that one yet.
        round.tellReading(id, id === round.valueFrom ? uncertainty : "", unit);
    }
    function ask() {
        // While it is being typed the figures are the typist's own.
        if (!ofUncertainty)
            uncertainty = round.uncertaintyIn(unit);
        interval.text = round.intervalIn(value, unit);
    }
    function reveal() {
        for (let up = parent; up; up = up.parent) {
            const scroll = up as Scroll;
            if (scroll)
                return scroll.reveal(list);
        }
    }

    onValueChanged: {
        if (value === "")
            choosing = ofUncertainty = false;
        ask();
    }
    onUnitChanged: {
        ofUncertainty = false;
        ask();
    }
    onOfUncertaintyChanged: ask()
    Component.onCompleted: ask()
    Connections {
        target: reading.round
        function onReadingChanged() {
            reading.ask();
        }
    }
    /// What was opened is looked for once it has its place.
    Connections {
        target: reading.Window.window
        enabled: list.opened
        function onAfterAnimating() {
            list.opened = false;
            reading.reveal();
        }
    }

    Flow {
        width: parent.width
        spacing: Theme.gap
        Key {
            objectName: reading.name + ".from"
            width: Math.min(implicitWidth, reading.width)
            look: "link"
            focusPolicy: Qt.TabFocus // a touch leaves the keypad where it is
            text: reading.fromText === "" ? qsTr("Say what it is read from") : reading.fromText
            about: qsTr("What the value is read from")
            onClicked: reading.choosing = !reading.choosing
        }
        Key {
            objectName: reading.name + ".uncertainty"
            width: Math.min(implicitWidth, reading.width)
            visible: reading.fromText !== "" && !reading.choosing
            look: reading.ofUncertainty ? "outline" : "link"
            focusPolicy: Qt.TabFocus
            text: reading.uncertainty === "" ? qsTr("± …", "an uncertainty not stated yet") : qsTr("± %1 %2").arg(reading.uncertainty).arg(reading.unit)
            about: qsTr("The standard uncertainty of such a reading")
            onClicked: {
                reading.ofUncertainty = !reading.ofUncertainty;
                reading.fresh = reading.ofUncertainty;
                reading.figuresAsked();
            }
        }
    }
    Label {
        id: interval
        objectName: reading.name + ".interval"
        width: parent.width
        visible: text !== "" && !reading.choosing
        color: Theme.soft
        font.pixelSize: Theme.small
    }
    Column {
        id: list
        property bool opened: false
        width: parent.width
        visible: reading.choosing
        spacing: 8
        onVisibleChanged: opened = visible
        Repeater {
            model: reading.choosing ? reading.round.sources : []
            Choice {
                required property var modelData
                objectName: reading.name + ".from." + modelData.id
                width: reading.width
                focusPolicy: Qt.TabFocus
                text: modelData.name
                chosen: reading.round.valueFrom === modelData.id
                onClicked: reading.tellFrom(modelData.id)
            }
        }
        Choice {
            objectName: reading.name + ".from.none"
            width: reading.width
            focusPolicy: Qt.TabFocus
            text: qsTr("Not said")
            chosen: reading.round.valueFrom === ""
            onClicked: reading.tellFrom("")
        }
    }
}
