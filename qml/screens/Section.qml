// A part of a record: its title, and its rows, {look, text, about, at} or findings; long ones are folded until they are asked for.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: section

    required property string title
    required property string none
    required property var rows
    /// The rows are findings.
    property bool findings: false
    property bool folded: false
    property string foldName: ""

    spacing: 8
    visible: rows.length > 0 || none !== ""

    Label {
        width: parent.width
        topPadding: 8
        text: section.title
        strong: true
        font.pixelSize: Theme.fitting(text, width, Theme.title)
        Accessible.role: Accessible.Heading
    }
    Label {
        width: parent.width
        visible: section.rows.length === 0
        text: section.none
    }
    Key {
        objectName: section.foldName
        width: parent.width
        visible: section.folded
        text: qsTr("Show all %1").arg(section.rows.length)
        about: section.title
        onClicked: section.folded = false
    }
    Repeater {
        model: section.folded || !section.findings ? [] : section.rows
        FindingRow {
            required property var modelData
            width: section.width
            value: modelData
        }
    }
    Repeater {
        model: section.folded || section.findings ? [] : section.rows
        RecordRow {
            required property var modelData
            width: section.width
            look: modelData.look ?? ""
            text: modelData.text
            about: modelData.about ?? ""
            at: modelData.at ?? ""
        }
    }
}
