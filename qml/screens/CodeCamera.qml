// The camera's picture, looked at twice a second for a code. Where there is no camera, it says so.
import QtQuick
import QtMultimedia
import Ambit

Column {
    id: place

    /// A frame as an image.
    signal seen(var image)
    signal closed

    spacing: 12
    MediaDevices {
        id: devices
    }
    CaptureSession {
        camera: Camera {
            active: devices.videoInputs.length > 0
        }
        imageCapture: ImageCapture {
            id: capture
            onImageCaptured: place.seen(capture.preview)
        }
        videoOutput: output
    }
    Timer {
        interval: 500
        repeat: true
        running: capture.readyForCapture
        onTriggered: capture.capture()
    }
    VideoOutput {
        id: output
        width: parent.width
        height: width * 0.75
        visible: devices.videoInputs.length > 0
    }
    Label {
        width: parent.width
        visible: devices.videoInputs.length === 0
        text: qsTr("There is no camera here. Type the letters instead.")
    }
    Key {
        objectName: "codeCameraClose"
        width: parent.width
        text: qsTr("Put the camera away")
        onClicked: place.closed()
    }
}
