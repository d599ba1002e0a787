// What was found: in words, how serious, with photos.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    /// Measured already, on the card.
    required property string value
    /// Begin with the camera.
    property bool camera: false
    property bool grounds: round.findingGrounds
    property bool classed: round.findingGrounds
    property list<url> photos

    signal wentOn

    function add(more: var) {
        sheet.photos = Array.from(sheet.photos).concat(Array.from(more));
    }
    function keep() {
        if (sheet.round.settleFinding(words.text, sheet.grounds, sheet.photos, measured.text))
            sheet.wentOn();
    }

    objectName: "sheetFinding"
    title: qsTr("Finding")
    subtitle: round.cardTitle
    backName: "findingCancel"
    keys: Key {
        objectName: "findingDone"
        width: parent.width
        broad: true
        look: "solid"
        cut: true
        text: qsTr("Keep the finding")
        onClicked: sheet.keep()
    }
    onPhotosChanged: round.expectPhotos(Array.from(photos))
    Component.onCompleted: if (camera)
        cameraPlace.start()

    WordsField {
        id: words
        objectName: "findingWords"
        width: parent.width
        focus: true
        lines: 3
        label: qsTr("What you see, where, how large")
    }
    ValueField {
        id: measured
        objectName: "findingValue"
        width: parent.width
        visible: sheet.round.measured
        quantity: sheet.round.quantity
        unit: sheet.round.unit
        limitText: sheet.round.limitText
        text: sheet.value
        refusal: text === "" ? "" : sheet.round.outOfLimit(text)
    }
    Keypad {
        width: parent.width
        visible: measured.activeFocus
        color: "transparent"
        onTyped: character => measured.type(character)
        onErased: measured.erase()
        onDone: words.forceActiveFocus()
    }
    Label {
        topPadding: 6
        text: qsTr("What it means")
        strong: true
        Accessible.role: Accessible.Heading
    }
    Choice {
        objectName: "classGrounds"
        width: parent.width
        text: qsTr("Grounds the aircraft")
        about: sheet.round.findingGrounds ? qsTr("At this point every finding does.") : qsTr("Not flown until it is rectified.")
        cut: true
        cutColour: Theme.warning
        chosen: sheet.classed && sheet.grounds
        onClicked: {
            sheet.grounds = true;
            sheet.classed = true;
        }
    }
    Choice {
        objectName: "classAssess"
        width: parent.width
        visible: !sheet.round.findingGrounds
        text: qsTr("For assessment")
        about: qsTr("You assess it before the conclusion.")
        cut: true
        chosen: sheet.classed && !sheet.grounds
        onClicked: {
            sheet.grounds = false;
            sheet.classed = true;
        }
    }
    Label {
        topPadding: 6
        text: qsTr("Photos")
        strong: true
        Accessible.role: Accessible.Heading
    }
    Photos {
        width: parent.width
        sources: sheet.photos
        change: true
        onRemoved: index => sheet.photos = Array.from(sheet.photos).filter((one, i) => i !== index)
    }
    Row {
        id: ways
        width: parent.width
        spacing: 12
        Key {
            objectName: "findingCamera"
            width: (ways.width - 12) / 2
            text: qsTr("Camera")
            onClicked: cameraPlace.start()
        }
        Key {
            objectName: "findingPhotoAdd"
            width: (ways.width - 12) / 2
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
            sheet.add([file]);
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
            objectName: "findingPhotoUrl"
            width: byPath.narrow ? parent.width : parent.width - addKey.width - 12
            label: qsTr("Photo's path")
            onAccepted: addKey.clicked()
        }
        Key {
            id: addKey
            objectName: "findingPhotoUrlAdd"
            height: byPath.narrow ? implicitHeight : path.height
            text: qsTr("Add")
            onClicked: {
                if (path.text.trim() === "")
                    return;
                sheet.add([Texts.fileUrl(path.text)]);
                path.text = "";
            }
        }
    }
    Asking {
        id: dialog
        what: "photos"
        onGiven: urls => sheet.add(urls)
    }
}
