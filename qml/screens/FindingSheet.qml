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
    /// Its unit, and whether the part was renewed; likewise.
    property string unit: round.unit
    property bool renewed: false
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
        if (sheet.round.settleFinding(words.text, sheet.grounds, sheet.photos, measured.text, measured.unit, sheet.renewed))
            sheet.wentOn();
    }

    /// What is measured in a photo goes with the finding, and is its value where one is measured.
    readonly property string keptValue: round.keptValue
    onKeptValueChanged: {
        if (keptValue === "" || !measuring)
            return;
        measured.unit = round.keptUnit;
        measured.text = keptValue;
        measuring = false;
    }
    /// Until what was kept is told, which may be a moment after.
    property bool measuring: false
    function measure() {
        sheet.measuring = true;
        glass.setSource("MeasureSheet.qml", {
            app: sheet.app,
            round: sheet.round
        });
    }
    function leaveGlass() {
        glass.source = "";
        words.forceActiveFocus();
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
        source.startCamera()

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
        round: sheet.round
        quantity: sheet.round.quantity
        unit: sheet.unit
        units: sheet.round.units
        limitText: sheet.round.limitText
        text: sheet.value
        refusal: text === "" || limitText === "" ? "" : sheet.round.outOfLimit(text, unit) // said anew when the limit is, in another language
        onUnitAsked: unit => measured.unit = unit
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
    Repeater {
        model: sheet.round.keptTexts
        Key {
            required property string modelData
            required property int index
            objectName: "findingDropKept." + index
            width: sheet.pageWidth > 0 ? source.width : 0
            look: "link"
            text: qsTr("Leave out: %1").arg(modelData)
            onClicked: sheet.round.dropKept(index)
        }
    }
    Photos {
        width: parent.width
        sources: sheet.photos
        change: true
        onRemoved: index => sheet.photos = Array.from(sheet.photos).filter((one, i) => i !== index)
    }
    PhotoSource {
        id: source
        width: parent.width
        prefix: "finding"
        onGiven: urls => sheet.add(urls)
    }
    Key {
        objectName: "findingMeasure"
        width: parent.width
        text: qsTr("Measure in a photo")
        about: qsTr("By a card that lies beside it")
        onClicked: sheet.measure()
    }
    Loader {
        // Over all of this one, which keeps what was said in it.
        id: glass
        parent: sheet
        anchors.fill: parent
        z: 2
        focus: status !== Loader.Null
        onLoaded: (item as Item).forceActiveFocus()
    }
    Connections {
        target: glass.item
        ignoreUnknownSignals: true
        function onClosed() {
            sheet.leaveGlass();
        }
    }
}
