// A measured value: takes figures from the keypad or a keyboard, never the system's own keyboard. Below it, once there is one:
// what it is read from and how well.
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
    /// Where a touch is for the value itself.
    readonly property point touchPoint: Qt.point(width / 2, frame.height / 2)
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
        if (!reading.ofUncertainty)
            text = typed(text, character);
        else if (character !== "-")
            reading.tellUncertainty(typed(reading.fresh ? "" : reading.uncertainty, character));
    }
    function clear() {
        if (reading.ofUncertainty)
            reading.tellUncertainty("");
        else
            text = "";
    }
    function erase() {
        if (reading.ofUncertainty)
            reading.tellUncertainty(reading.uncertainty.slice(0, -1));
        else
            text = text.slice(0, -1);
    }

    onActiveFocusChanged: if (!activeFocus)
        reading.ofUncertainty = false

    implicitHeight: frame.height + (reading.visible ? reading.height : 0)
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
                reading.ofUncertainty = false;
                field.forceActiveFocus();
            }
        }
    }
    Column {
        id: column
        anchors.left: parent.left
        anchors.leftMargin: Theme.margin + (field.refusal !== "" ? 12 : 0)
        anchors.right: value.left
        anchors.rightMargin: Theme.gap
        anchors.verticalCenter: frame.verticalCenter
        Label {
            width: parent.width
            text: field.quantity
            strong: true
            font.pixelSize: Theme.giving(text, width, Theme.normal)
            Accessible.ignored: true
        }
        Label {
            objectName: field.objectName + ".limit"
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
            objectName: field.objectName + ".figures"
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
        width: Theme.mark(22)
        height: width
    }
    ReadingChoices {
        id: reading
        y: frame.height
        width: parent.width
        visible: field.text !== "" && !field.byPhoto
        name: field.objectName
        round: field.round
        value: field.text
        unit: field.unit
        onFiguresAsked: field.forceActiveFocus()
    }
}
