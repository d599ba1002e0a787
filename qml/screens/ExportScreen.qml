// The whole file to take along: one zip that opens without Ambit.
import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property ExportView exporting: app.exporting

    objectName: "screenExport"
    title: qsTr("Write the whole file")
    subtitle: app.file.registration
    backText: qsTr("Back")
    backName: "exportBack"
    keys: Key {
        objectName: "exportWhole"
        width: parent.width
        broad: true
        enabled: !screen.exporting.running
        text: screen.exporting.running ? qsTr("Writing …") : qsTr("Write it")
        onClicked: screen.exporting.write(screen.app.file.registration, Texts.fileUrl(folder.text))
    }

    Label {
        width: parent.width
        text: qsTr("Every record with its signatures, PDFs and photos, a page to read them by, and how to check them with stock tools: one zip for the next owner, a mechanic or the drawer at home. Nothing leaves this archive.")
    }
    Row {
        width: parent.width
        spacing: 12
        Field {
            id: folder
            objectName: "exportWholeFolder"
            width: parent.width - browse.width - 12
            label: qsTr("Folder")
        }
        Key {
            id: browse
            objectName: "exportWholeBrowse"
            height: folder.height
            text: qsTr("Choose")
            about: qsTr("Choose the folder")
            onClicked: dialog.ask()
        }
    }
    Label {
        objectName: "exportWholeWritten"
        width: parent.width
        visible: screen.exporting.written !== ""
        text: qsTr("Written:\n%1\n%2").arg(screen.exporting.written).arg(screen.exporting.words)
        wrapMode: Text.WrapAnywhere
    }
    Asking {
        id: dialog
        what: "folder"
        onGiven: urls => folder.text = Texts.path(urls[0].toString())
    }
}
