// The camera's picture and the key that takes it.
import QtQuick
import QtMultimedia
import Ambit

Column {
    id: place

    signal taken(url file)

    spacing: 12
    CaptureSession {
        camera: Camera {
            id: camera
            active: true
        }
        imageCapture: ImageCapture {
            id: capture
            onImageSaved: (id, path) => place.taken(Texts.fileUrl(path))
            onErrorOccurred: (id, error, message) => said.refusal = message
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
        property string refusal: ""
        width: parent.width
        visible: text !== ""
        text: refusal !== "" ? refusal : capture.readyForCapture ? "" : camera.error !== Camera.NoError ? qsTr("The camera can't be used: %1").arg(camera.errorString) : qsTr("The camera is starting.")
    }
    Key {
        objectName: "cameraTake"
        width: parent.width
        enabled: capture.readyForCapture
        text: qsTr("Take the photo")
        onClicked: capture.captureToFile("")
    }
}
