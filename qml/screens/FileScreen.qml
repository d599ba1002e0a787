// The file: all records of one aircraft.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Ambit

Page {
    id: screen

    required property App app
    readonly property FileView file: app.file

    objectName: "screenFile"
    title: file.registration === "" ? qsTr("File") : qsTr("File of %1").arg(file.registration)
    subtitle: file.registration === "" ? qsTr("Choose an aircraft") : file.records.count === 1 ? qsTr("1 record, the newest first") : qsTr("%1 records, the newest first").arg(file.records.count)

    Flow {
        width: parent.width
        spacing: Theme.gap
        Repeater {
            model: screen.app.aircraft
            Key {
                required property string registration
                required property string airframeName
                objectName: "fileAircraft." + registration
                text: registration
                about: airframeName
                look: registration === screen.file.registration ? "solid" : "outline"
                onClicked: screen.file.registration = registration
            }
        }
    }
    Label {
        width: parent.width
        visible: screen.file.registration !== "" && screen.file.records.count === 0
        text: qsTr("There is no record yet. A round leaves one when it is signed.")
        font.pixelSize: Theme.large
    }
    Repeater {
        model: screen.file.records
        T.AbstractButton {
            id: row
            required property string recordId
            required property string title
            required property string conclusion
            required property string conclusionText
            required property string whenText
            required property string signer
            required property int findings
            objectName: "record." + recordId
            width: screen.columnWidth
            implicitHeight: Math.max(Theme.key, words.implicitHeight + 28)
            focusPolicy: Qt.StrongFocus
            onClicked: screen.file.open(row.recordId)
            Keys.onReturnPressed: row.clicked()
            Keys.onEnterPressed: row.clicked()
            Accessible.role: Accessible.Button
            Accessible.name: row.conclusionText + ", " + row.whenText
            Accessible.description: row.title + ", " + row.signer
            Accessible.onPressAction: row.clicked()
            background: Rectangle {
                radius: Theme.corner
                color: row.down ? Theme.pressed : Theme.panel
                border.width: 2
                border.color: Theme.ink
                FocusRing {
                    of: row
                }
            }
            Mark {
                id: mark
                x: 20
                anchors.verticalCenter: parent.verticalCenter
                look: row.conclusion === "fit" ? "sound" : "finding"
                grounds: true
            }
            Column {
                id: words
                anchors.left: mark.right
                anchors.leftMargin: 16
                anchors.right: parent.right
                anchors.rightMargin: 16
                anchors.verticalCenter: parent.verticalCenter
                spacing: 3
                Label {
                    width: parent.width
                    text: row.conclusionText
                    strong: true
                    font.pixelSize: Theme.title
                    Accessible.ignored: true
                }
                Label {
                    width: parent.width
                    text: row.whenText + " · " + row.signer
                    Accessible.ignored: true
                }
                Label {
                    width: parent.width
                    text: (row.recordId === screen.app.signing.recordId ? qsTr("Signed and sealed just now") + " · " : "") + row.title + " · " + Texts.findings(row.findings)
                    color: Theme.soft
                    font.pixelSize: Theme.small
                    Accessible.ignored: true
                }
            }
        }
    }
}
