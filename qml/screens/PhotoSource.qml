// Where a photo comes from: the camera, a file, a path.
import QtQuick
import Ambit

Column {
    id: source

    /// Of the keys' names.
    required property string prefix

    signal given(var urls)

    function startCamera() {
        cameraPlace.start();
    }

    spacing: 12

    Pair {
        id: ways
        width: parent.width
        Key {
            objectName: source.prefix + "Camera"
            width: ways.each
            height: Math.max(implicitHeight, ways.tallest)
            text: qsTr("Camera")
            onClicked: cameraPlace.start()
        }
        Key {
            objectName: source.prefix + "PhotoAdd"
            width: ways.each
            height: Math.max(implicitHeight, ways.tallest)
            text: qsTr("From a file")
            onClicked: dialog.ask()
        }
    }
    Loader {
        id: cameraPlace
        function start() {
            setSource("CameraPlace.qml", {
                width: Qt.binding(() => cameraPlace.width)
            });
        }
        width: parent.width
        visible: status !== Loader.Null
    }
    Connections {
        target: cameraPlace.item
        ignoreUnknownSignals: true
        function onTaken(file: url) {
            source.given([file]);
        }
        function onClosed() {
            cameraPlace.source = "";
        }
    }
    Grid {
        id: byPath
        /// Large text: no room for the field beside the key.
        readonly property bool narrow: width - addKey.implicitWidth < Theme.mm(22) * Theme.scale
        width: parent.width
        columns: narrow ? 1 : 2
        spacing: 12
        Field {
            id: path
            objectName: source.prefix + "PhotoUrl"
            width: byPath.narrow ? parent.width : parent.width - addKey.width - 12
            label: qsTr("Photo's path")
            onAccepted: addKey.clicked()
        }
        Key {
            id: addKey
            objectName: source.prefix + "PhotoUrlAdd"
            height: byPath.narrow ? implicitHeight : path.height
            text: qsTr("Add")
            onClicked: {
                if (path.text.trim() === "")
                    return;
                source.given([Texts.fileUrl(path.text)]);
                path.text = "";
            }
        }
    }
    Asking {
        id: dialog
        what: "photos"
        onGiven: urls => source.given(urls)
    }
}
