// Takes an aircraft in: the file that describes its kind, its registration, its serial number.
import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app

    objectName: "sheetAddAircraft"
    title: qsTr("Add an aircraft")
    subtitle: qsTr("The airframe file describes its kind; the handbook has the last word.")
    backName: "addAircraftCancel"
    keys: Key {
        objectName: "addAircraftDone"
        width: parent.width
        broad: true
        look: "solid"
        text: qsTr("Add")
        onClicked: if (sheet.app.addAircraft(Texts.fileUrl(file.text), registration.text, serial.text))
            sheet.closed()
    }

    Field {
        id: file
        objectName: "addAircraftFile"
        width: parent.width
        focus: true
        label: qsTr("Airframe file")
    }
    Key {
        objectName: "addAircraftBrowse"
        width: parent.width
        text: qsTr("Choose the file")
        onClicked: dialog.ask()
    }
    Field {
        id: registration
        objectName: "addAircraftRegistration"
        width: parent.width
        label: qsTr("Registration")
        about: qsTr("as painted on it")
    }
    Field {
        id: serial
        objectName: "addAircraftSerial"
        width: parent.width
        label: qsTr("Serial number")
    }
    Asking {
        id: dialog
        what: "airframe"
        onGiven: urls => file.text = Texts.path(urls[0].toString())
    }
}
