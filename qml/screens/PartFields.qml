// A part as it stands on it, and what it has run itself.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: fields

    required property AircraftFileView its
    required property string title
    required property string prefix
    /// What it has run, asked as a question.
    required property string askRun
    readonly property var values: ({
            name: nameField.text,
            number: numberField.text,
            serial: serialField.text,
            counters: fields.run ? counters.values : {}
        })
    property bool run: false

    function fill(part: string, number: string, serial: string) {
        nameField.text = part;
        numberField.text = number;
        serialField.text = serial;
    }

    spacing: 12

    Heading {
        width: parent.width
        text: fields.title
    }
    Field {
        id: nameField
        objectName: fields.prefix + "name"
        width: parent.width
        label: qsTr("Part")
    }
    Pair {
        id: numbers
        width: parent.width
        Field {
            id: numberField
            objectName: fields.prefix + "number"
            width: numbers.each
            height: Math.max(implicitHeight, numbers.tallest)
            label: qsTr("Part number")
        }
        Field {
            id: serialField
            objectName: fields.prefix + "serial"
            width: numbers.each
            height: Math.max(implicitHeight, numbers.tallest)
            label: qsTr("Serial number")
        }
    }
    Key {
        objectName: fields.prefix + "askRun"
        width: parent.width
        visible: !fields.run && fields.its.counters.length > 0
        text: fields.askRun
        onClicked: fields.run = true
    }
    CounterFields {
        id: counters
        width: parent.width
        visible: fields.run
        its: fields.its
        prefix: fields.prefix + "counter."
        sayLast: false
    }
}
