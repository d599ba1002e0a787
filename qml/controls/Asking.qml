// Asks for a file, several photos or a folder by the system's own dialog, loaded when it is first asked for.
// Tests set `answer` and no dialog comes up.
import QtQuick

Loader {
    id: asking

    /// "airframe", "photos", "folder"
    required property string what
    property var answer: []

    signal given(var urls)

    function ask() {
        if (answer.length > 0)
            given(answer);
        else if (status === Loader.Ready)
            (item as FileDialogs).open(what);
        else
            setSource("FileDialogs.qml");
    }

    objectName: "asking." + what
    onLoaded: {
        const dialogs = item as FileDialogs;
        dialogs.given.connect(asking.given);
        dialogs.open(what);
    }
}
