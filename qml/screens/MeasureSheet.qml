// A photo of the point in hand: kept to be compared with next time, or measured in by a card that lies beside the part.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    /// Of whoever opens it; not used here.
    property string value: ""
    readonly property MeasureView its: app.measure
    readonly property bool held: its.held >= 0
    readonly property bool pictured: its.phase !== "none" && its.phase !== "reading"
    property bool blink: false

    signal wentOn

    objectName: "sheetMeasure"
    title: qsTr("Photo")
    subtitle: round.cardTitle
    backName: "measureCancel"
    Component.onCompleted: its.begin()
    Component.onDestruction: its.leave()

    function step(dx: int, dy: int) {
        glass.step(dx, dy);
    }

    keys: Column {
        width: parent.width
        spacing: 12
        Grid {
            id: arrows
            width: parent.width
            visible: sheet.held
            columns: width < 4 * Theme.target + 3 * Theme.gap ? 2 : 4
            spacing: Theme.gap
            Repeater {
                model: [
                    {
                        id: "left",
                        text: "←",
                        about: qsTr("The mark to the left"),
                        x: -1,
                        y: 0
                    },
                    {
                        id: "up",
                        text: "↑",
                        about: qsTr("The mark up"),
                        x: 0,
                        y: -1
                    },
                    {
                        id: "down",
                        text: "↓",
                        about: qsTr("The mark down"),
                        x: 0,
                        y: 1
                    },
                    {
                        id: "right",
                        text: "→",
                        about: qsTr("The mark to the right"),
                        x: 1,
                        y: 0
                    }
                ]
                Key {
                    required property var modelData
                    objectName: "nudge." + modelData.id
                    width: (arrows.width - (arrows.columns - 1) * arrows.spacing) / arrows.columns
                    text: modelData.text
                    Accessible.name: modelData.about
                    onClicked: sheet.step(modelData.x, modelData.y)
                }
            }
        }
        Key {
            objectName: "measureHere"
            width: parent.width
            visible: sheet.held
            broad: true
            look: "solid"
            text: sheet.its.phase === "corners" ? qsTr("This is corner %1").arg(sheet.its.held + 1) : qsTr("Here")
            onClicked: sheet.its.next()
        }
        Key {
            objectName: "measureCornersRight"
            width: parent.width
            visible: !sheet.held && sheet.its.phase === "corners"
            broad: true
            look: "solid"
            text: qsTr("The corners are right")
            onClicked: sheet.its.confirmCard()
        }
        Key {
            objectName: "measureKeep"
            width: parent.width
            visible: !sheet.held && sheet.its.phase === "marks"
            enabled: sheet.its.canKeep
            broad: true
            look: "solid"
            text: sheet.its.canKeep ? qsTr("Keep %1").arg(sheet.its.resultText) : qsTr("Keep")
            onClicked: if (sheet.its.keep())
                sheet.closed()
        }
        Key {
            objectName: "measureBack"
            width: parent.width
            visible: !sheet.held && sheet.its.phase === "marks"
            text: qsTr("Take back the last mark")
            onClicked: sheet.its.takeBack()
        }
        Key {
            objectName: "measureBegin"
            width: parent.width
            visible: sheet.its.phase === "photo"
            broad: true
            look: "solid"
            text: qsTr("Measure by the card")
            onClicked: sheet.its.lookAtCorners()
        }
        Key {
            objectName: "measureKeepPhoto"
            width: parent.width
            visible: sheet.its.phase === "photo"
            text: qsTr("Keep the photo")
            about: qsTr("To be compared with next time")
            onClicked: if (sheet.its.keepPhoto())
                sheet.closed()
        }
    }

    Label {
        objectName: "measureLast"
        width: parent.width
        visible: text !== ""
        text: sheet.its.lastText === "" ? "" : qsTr("Last time: %1").arg(sheet.its.lastText)
        color: Theme.soft
    }
    Image {
        objectName: "measureLastPhoto"
        width: parent.width
        height: visible ? Math.min(width * 0.66, sheet.height * 0.35) : 0
        visible: !sheet.pictured && sheet.its.lastSource !== ""
        source: sheet.its.lastSource
        sourceSize.width: 1000
        fillMode: Image.PreserveAspectFit
        opacity: Theme.night ? 0.45 : 1
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("The last photo")
    }
    Label {
        width: parent.width
        visible: sheet.its.phase === "none"
        text: qsTr("To measure, lay any card of the usual size (85.6 × 54 mm) flat on the part, so that all of it is seen, and look straight at it.")
    }
    PhotoSource {
        width: parent.width
        visible: sheet.its.phase === "none"
        prefix: "measure"
        onGiven: urls => sheet.its.read(urls[0])
    }
    Label {
        objectName: "measureReading"
        width: parent.width
        visible: sheet.its.phase === "reading"
        text: qsTr("The photo is being read …")
    }
    MeasureGlass {
        id: glass
        objectName: "measureGlass"
        width: parent.width
        height: visible ? Math.min(width * 0.75, Math.max(Theme.mm(34), sheet.height * (sheet.held ? 0.42 : 0.46))) : 0
        visible: sheet.pictured
        view: sheet.its
        last: sheet.blink
        ground: Theme.body
        // Set off from light and dark in the photo alike, and at night no brighter than the rest.
        ink: Theme.night ? Theme.ink : "#14181c"
        rim: Theme.night ? "#000000" : "#ffffff"
        shine: Theme.night ? 0.45 : 1
        stroke: Math.max(2, Theme.mm(0.35))
        activeFocusOnTab: true
        Accessible.role: Accessible.Graphic
        Accessible.name: sheet.held ? qsTr("The photo about the mark, from close") : qsTr("The photo")
        Accessible.description: sheet.its.askText
        Keys.onLeftPressed: sheet.step(-1, 0)
        Keys.onRightPressed: sheet.step(1, 0)
        Keys.onUpPressed: sheet.step(0, -1)
        Keys.onDownPressed: sheet.step(0, 1)
        FocusRing {
            of: glass
        }
        MouseArea {
            id: finger
            property real lastX: 0
            property real lastY: 0
            anchors.fill: parent
            preventStealing: sheet.held
            onPressed: event => {
                finger.lastX = event.x;
                finger.lastY = event.y;
            }
            onPositionChanged: event => {
                if (!sheet.held)
                    return;
                glass.draw(event.x - finger.lastX, event.y - finger.lastY);
                finger.lastX = event.x;
                finger.lastY = event.y;
            }
            onClicked: event => {
                if (!sheet.held)
                    glass.touch(event.x, event.y, Theme.target / 2);
            }
        }
    }
    Key {
        objectName: "measureBlink"
        width: parent.width
        visible: sheet.pictured && !sheet.held && sheet.its.lastText !== ""
        text: sheet.blink ? qsTr("Show today's photo") : qsTr("Show the last photo")
        about: sheet.its.sameScale ? qsTr("Both at one scale, by their cards") : ""
        onClicked: sheet.blink = !sheet.blink
    }
    Label {
        objectName: "measureCard"
        width: parent.width
        visible: text !== "" && (sheet.its.phase === "photo" || sheet.its.phase === "corners")
        text: sheet.its.cardText
    }
    Label {
        objectName: "measureAsk"
        width: parent.width
        visible: text !== "" && !sheet.held
        text: sheet.its.askText
        strong: true
    }
    Label {
        objectName: "measureResult"
        width: parent.width
        visible: text !== ""
        text: sheet.its.resultText
        font.pixelSize: Theme.huge
        strong: true
    }
    Label {
        objectName: "measureInterval"
        width: parent.width
        visible: text !== ""
        text: sheet.its.intervalText
    }
    Label {
        objectName: "measureRefusal"
        width: parent.width
        visible: text !== ""
        text: sheet.its.refusalText
        strong: true
    }
    Row {
        id: sides
        width: parent.width
        visible: sheet.its.asksSide
        spacing: Theme.gap
        Key {
            objectName: "measureLong"
            width: (sides.width - sides.spacing) / 2
            text: qsTr("It is a long one")
            onClicked: sheet.its.longSideFirst(true)
        }
        Key {
            objectName: "measureShort"
            width: (sides.width - sides.spacing) / 2
            text: qsTr("It is a short one")
            onClicked: sheet.its.longSideFirst(false)
        }
    }
    Grid {
        id: kinds
        width: parent.width
        visible: sheet.its.phase === "marks" && !sheet.held
        columns: Math.max(1, Math.floor(width / (Theme.mm(38) * Theme.scale)))
        spacing: Theme.gap
        Repeater {
            model: sheet.its.kinds
            Choice {
                required property var modelData
                objectName: "measureWhat." + modelData.id
                width: (kinds.width - (kinds.columns - 1) * kinds.spacing) / kinds.columns
                text: modelData.name
                chosen: sheet.its.what === modelData.id
                onClicked: sheet.its.choose(modelData.id)
            }
        }
    }
    Field {
        objectName: "measureKnown"
        width: parent.width
        visible: sheet.its.phase === "marks" && !sheet.held && sheet.its.withCard
        label: qsTr("A length you know there, mm")
        about: qsTr("Shows whether the card lies flat with the part; may stay empty")
        onTextChanged: sheet.its.tellKnown(text)
    }
    Key {
        objectName: "measureCorners"
        width: parent.width
        visible: sheet.its.phase === "marks" && !sheet.held && sheet.its.withCard
        look: "link"
        text: qsTr("Look at the card's corners again")
        onClicked: sheet.its.lookAtCorners()
    }
    Key {
        objectName: "measureNoCard"
        width: parent.width
        visible: sheet.its.phase === "photo"
        look: "link"
        text: qsTr("No card lies there: only an angle")
        about: qsTr("Of a slippage mark, seen straight from above")
        onClicked: sheet.its.goWithoutCard()
    }
    Key {
        objectName: "measureAnother"
        width: parent.width
        visible: sheet.pictured && !sheet.held
        look: "link"
        text: qsTr("Another photo")
        onClicked: sheet.its.leave()
    }
}
