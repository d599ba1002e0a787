// The place for the camera's picture. Where there is no camera, it says so, and nothing of a camera is loaded.
import QtQuick
import QtMultimedia
import Ambit

Column {
    id: place

    signal taken(url file)
    signal closed

    spacing: 12
    MediaDevices {
        id: devices
        onVideoInputsChanged: place.look()
    }
    function look() {
        if (devices.videoInputs.length > 0 && session.status === Loader.Null)
            session.setSource("CameraSession.qml");
    }
    Component.onCompleted: look()

    Loader {
        id: session
        width: parent.width
        visible: status === Loader.Ready
    }
    Connections {
        target: session.item
        ignoreUnknownSignals: true
        function onTaken(file: url) {
            place.taken(file);
        }
    }
    Label {
        width: parent.width
        visible: session.status !== Loader.Ready
        text: qsTr("There is no camera here. Take the photo with another device and add its file.")
    }
    Key {
        objectName: "cameraClose"
        width: parent.width
        text: qsTr("Put the camera away")
        onClicked: place.closed()
    }
}
