// A measured value: takes figures from the keypad or a keyboard, never the system's own keyboard.
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
    /// Between a number's whole and its fraction, as its reader writes it; either is taken.
    readonly property string mark: qsTr(".", "between a number's whole and its fraction")

    signal unitAsked(string unit)

    function nextUnit() {
        const all = Array.from(units);
        unitAsked(all[(all.indexOf(unit) + 1) % all.length]);
    }
    function type(character: string) {
        const c = /^[.,]$/.test(character) ? mark : character;
        if (!/^[0-9.,-]$/.test(c) || text.length > 11 || (c === "-" && text !== "") || (c === mark && text.includes(mark)))
            return;
        text += c;
    }
    function erase() {
        text = text.slice(0, -1);
    }

    implicitHeight: Math.max(Theme.target, column.implicitHeight + 14)
    activeFocusOnTab: true
    Accessible.role: Accessible.EditableText
    Accessible.name: qsTr("%1 in %2").arg(quantity).arg(unit)
    Accessible.description: limitText
    Accessible.focusable: true
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Backspace)
            field.erase();
        else if (event.key === Qt.Key_Delete || event.key === Qt.Key_Clear)
            field.text = "";
        else if (/^[0-9.,-]$/.test(event.text))
            field.type(event.text);
        else
            return;
        event.accepted = true;
    }
    Rectangle {
        anchors.fill: parent
        radius: Theme.corner
        color: Theme.panel
        border.width: field.activeFocus ? 3 : 2
        border.color: field.activeFocus ? Theme.way : Theme.ink
    }
    TapHandler {
        onTapped: field.forceActiveFocus()
    }
    Column {
        id: column
        anchors.left: parent.left
        anchors.leftMargin: Theme.margin
        anchors.right: value.left
        anchors.verticalCenter: parent.verticalCenter
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
        anchors.verticalCenter: parent.verticalCenter
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
}
