// Where a code is scanned: by the camera, or out of a picture of it.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Column {
    id: place

    required property App app
    property bool scanning: false

    signal read(string text)

    spacing: 12

    Key {
        objectName: "codeScan"
        width: parent.width
        visible: !place.scanning
        broad: true
        text: qsTr("Scan it with the camera")
        onClicked: place.scanning = true
    }
    Loader {
        width: parent.width
        active: place.scanning
        visible: active
        source: active ? "CodeCamera.qml" : ""
        onLoaded: {
            const camera = item as CodeCamera;
            camera.seen.connect(image => {
                const text = place.app.watch.codeIn(image);
                if (text !== "") {
                    place.scanning = false;
                    place.read(text);
                }
            });
            camera.closed.connect(() => place.scanning = false);
        }
    }
    Key {
        objectName: "codePicture"
        width: parent.width
        text: qsTr("From a picture of it")
        onClicked: dialog.ask()
    }
    Label {
        objectName: "codeNone"
        property bool none: false
        id: said
        width: parent.width
        visible: none
        text: qsTr("There is no such code in that picture. Take it straight on, all of the code in it.")
    }
    Asking {
        id: dialog
        what: "photos"
        onGiven: urls => {
            const text = place.app.watch.codeIn(urls[0]);
            said.none = text === "";
            if (text !== "")
                place.read(text);
        }
    }
}
