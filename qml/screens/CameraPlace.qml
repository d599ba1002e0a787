// The camera's picture and its key. Where there is no camera, it says so.
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
    }
    CaptureSession {
        camera: Camera {
            id: camera
            active: devices.videoInputs.length > 0
        }
        imageCapture: ImageCapture {
            id: capture
            onImageSaved: (id, path) => place.taken(Texts.fileUrl(path))
            onErrorOccurred: (id, error, message) => said.text = message
        }
        videoOutput: output
    }
    Rectangle {
        width: parent.width
        height: width * 0.66
        visible: capture.readyForCapture
        color: Theme.body
        VideoOutput {
            id: output
            anchors.fill: parent
        }
    }
    Label {
        id: said
        width: parent.width
        visible: text !== ""
        text: capture.readyForCapture ? "" : devices.videoInputs.length === 0 ? qsTr("There is no camera here. Take the photo with another device and add its file.") : camera.error !== Camera.NoError ? qsTr("The camera can't be used: %1").arg(camera.errorString) : qsTr("The camera is starting.")
    }
    Row {
        id: keys
        width: parent.width
        spacing: 12
        Key {
            objectName: "cameraTake"
            width: (keys.width - 12) / 2
            enabled: capture.readyForCapture
            text: qsTr("Take the photo")
            onClicked: capture.captureToFile("")
        }
        Key {
            objectName: "cameraClose"
            width: (keys.width - 12) / 2
            text: qsTr("Put away")
            onClicked: place.closed()
        }
    }
}
