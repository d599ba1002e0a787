// The system's dialogs.
import QtQuick
import QtQuick.Dialogs

Item {
    id: dialogs

    signal given(var urls)

    function open(what: string) {
        if (what === "folder") {
            folder.open();
            return;
        }
        file.fileMode = what === "photos" ? FileDialog.OpenFiles : FileDialog.OpenFile;
        file.nameFilters = what === "photos" ? [qsTr("Photos (*.jpg *.jpeg *.png *.heic *.heif)")] : [qsTr("Airframes (*.json)")];
        file.open();
    }
    FileDialog {
        id: file
        onAccepted: dialogs.given(selectedFiles)
    }
    FolderDialog {
        id: folder
        onAccepted: dialogs.given([selectedFolder])
    }
}
