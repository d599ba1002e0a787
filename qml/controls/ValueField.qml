// A measured value: takes figures from the keypad or a keyboard, never the system's own keyboard. Below it, once there is one:
// what it is read from and how well, as the airframe says or as it is told here.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: field

    required property string quantity
    required property string unit
    /// In which it may be entered instead; fewer than two: no choice.
    property var units: []
    property string limitText: ""
    property string refusal: ""
    property string text: ""
    /// Of the point that it is for.
    required property RoundView round
    readonly property bool byPhoto: text !== "" && text === round.keptValue && unit === round.keptUnit
    property string uncertainty: ""
    property string interval: ""
    /// What is typed goes into the uncertainty; the first figure replaces it.
    property bool ofUncertainty: false
    property bool fresh: false
    property bool choosing: false
    /// Where a touch is for the value itself.
    readonly property point touchPoint: Qt.point(width / 2, frame.height / 2)
    /// "Read on a gauge"; "" if it isn't said.
    readonly property string fromText: Array.from(round.sources).filter(one => one.id === round.valueFrom).map(one => one.name).join("")
    /// Between a number's whole and its fraction, as its reader writes it; either is taken.
    readonly property string mark: qsTr(".", "between a number's whole and its fraction")

    signal unitAsked(string unit)

    function nextUnit() {
        const all = Array.from(units);
        unitAsked(all[(all.indexOf(unit) + 1) % all.length]);
    }
    function typed(into: string, character: string): string {
        const c = /^[.,]$/.test(character) ? mark : character;
        const fits = /^[0-9.,-]$/.test(c) && into.length <= 11 && !(c === "-" && into !== "") && !(c === mark && into.includes(mark));
        return fits ? into + c : into;
    }
    function type(character: string) {
        if (!ofUncertainty)
            text = typed(text, character);
        else if (character !== "-")
            tellUncertainty(typed(fresh ? "" : uncertainty, character));
    }
    function clear() {
        if (ofUncertainty)
            tellUncertainty("");
        else
            text = "";
    }
    function erase() {
        if (ofUncertainty)
            tellUncertainty(uncertainty.slice(0, -1));
        else
            text = text.slice(0, -1);
    }
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
        interval = byPhoto ? "" : round.intervalIn(text, unit);
    }

    onTextChanged: {
        if (text === "")
            choosing = ofUncertainty = false;
        ask();
    }
    onUnitChanged: {
        ofUncertainty = false;
        ask();
    }
    onActiveFocusChanged: if (!activeFocus)
        ofUncertainty = false
    onOfUncertaintyChanged: ask()
    Component.onCompleted: ask()
    Connections {
        target: field.round
        function onReadingChanged() {
            field.ask();
        }
    }

    implicitHeight: frame.height + (more.visible ? more.height : 0)
    activeFocusOnTab: true
    Accessible.role: Accessible.EditableText
    Accessible.name: qsTr("%1 in %2").arg(quantity).arg(unit)
    Accessible.description: limitText
    Accessible.focusable: true
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Backspace)
            field.erase();
        else if (event.key === Qt.Key_Delete || event.key === Qt.Key_Clear)
            field.clear();
        else if (/^[0-9.,-]$/.test(event.text))
            field.type(event.text);
        else
            return;
        event.accepted = true;
    }
    Rectangle {
        id: frame
        width: parent.width
        height: Math.max(Theme.target, column.implicitHeight + 14)
        radius: Theme.corner
        color: Theme.panel
        border.width: field.activeFocus ? 3 : 2
        border.color: field.activeFocus ? Theme.way : Theme.ink
    }
    Item {
        anchors.fill: frame
        TapHandler {
            onTapped: {
                field.ofUncertainty = false;
                field.forceActiveFocus();
            }
        }
    }
    Column {
        id: column
        anchors.left: parent.left
        anchors.leftMargin: Theme.margin
        anchors.right: value.left
        anchors.verticalCenter: frame.verticalCenter
        Label {
            width: parent.width
            text: field.quantity
            strong: true
            font.pixelSize: Theme.giving(text, width, Theme.normal)
            Accessible.ignored: true
        }
        Label {
            width: parent.width
            text: field.refusal !== "" ? field.refusal : qsTr("Limit %1").arg(field.limitText)
            strong: field.refusal !== ""
            color: field.refusal !== "" ? Theme.ink : Theme.soft
            font.pixelSize: Theme.small
            Accessible.ignored: true
        }
    }
    Row {
        id: value
        anchors.right: parent.right
        anchors.rightMargin: Theme.margin
        anchors.verticalCenter: frame.verticalCenter
        spacing: 6
        Label {
            id: digits
            anchors.verticalCenter: parent.verticalCenter
            text: field.text === "" ? "—" : field.text
            font.pixelSize: Theme.huge
            strong: true
            Accessible.ignored: true
        }
        Label {
            anchors.baseline: digits.baseline
            visible: field.units.length < 2
            text: field.unit
            color: Theme.soft
            Accessible.ignored: true
        }
        Key {
            objectName: field.objectName + ".unit"
            anchors.verticalCenter: parent.verticalCenter
            visible: field.units.length > 1
            look: "link"
            text: field.unit
            about: qsTr("Another unit")
            onClicked: field.nextUnit()
        }
    }
    CutCorner {
        visible: field.refusal !== ""
        radius: Theme.corner
        width: 22
        height: 22
    }
    Column {
        id: more
        y: frame.height
        width: parent.width
        visible: field.text !== "" && !field.byPhoto
        Flow {
            width: parent.width
            spacing: Theme.gap
            Key {
                objectName: field.objectName + ".from"
                width: Math.min(implicitWidth, more.width)
                look: "link"
                focusPolicy: Qt.TabFocus // a touch leaves the keypad where it is
                text: field.fromText === "" ? qsTr("Say what it is read from") : field.fromText
                about: qsTr("What the value is read from")
                onClicked: field.choosing = !field.choosing
            }
            Key {
                objectName: field.objectName + ".uncertainty"
                width: Math.min(implicitWidth, more.width)
                visible: field.fromText !== "" && !field.choosing
                look: field.ofUncertainty ? "outline" : "link"
                focusPolicy: Qt.TabFocus
                text: field.uncertainty === "" ? qsTr("± …", "an uncertainty not stated yet") : qsTr("± %1 %2").arg(field.uncertainty).arg(field.unit)
                about: qsTr("The standard uncertainty of such a reading")
                onClicked: {
                    field.ofUncertainty = !field.ofUncertainty;
                    field.fresh = field.ofUncertainty;
                    field.forceActiveFocus();
                }
            }
        }
        Label {
            objectName: field.objectName + ".interval"
            width: parent.width
            visible: text !== "" && !field.choosing
            text: field.interval
            color: Theme.soft
            font.pixelSize: Theme.small
        }
        Column {
            width: parent.width
            visible: field.choosing
            spacing: 8
            Repeater {
                model: field.choosing ? field.round.sources : []
                Choice {
                    required property var modelData
                    objectName: field.objectName + ".from." + modelData.id
                    width: more.width
                    focusPolicy: Qt.TabFocus
                    text: modelData.name
                    chosen: field.round.valueFrom === modelData.id
                    onClicked: field.tellFrom(modelData.id)
                }
            }
            Choice {
                objectName: field.objectName + ".from.none"
                width: more.width
                focusPolicy: Qt.TabFocus
                text: qsTr("Not said")
                chosen: field.round.valueFrom === ""
                onClicked: field.tellFrom("")
            }
        }
    }
}
