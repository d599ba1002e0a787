// Beside the figure of a walk that is followed: what is in hand, what was asked, what was fast, time at each stand, and all that
// happened, the newest first.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Ambit

Column {
    id: panel

    required property FollowedRound round
    required property Student student
    /// The time's keys stand here: there is no room under the figure.
    property bool withKeys: false

    signal momentAsked(int seq)
    signal sayAsked(string pointId)

    spacing: 12

    Label {
        objectName: "followLink"
        width: parent.width
        visible: text !== ""
        text: panel.student === null ? "" : panel.student.link === "in" && panel.round === null ? qsTr("Here; no round is walked yet.") : panel.student.linkText
        strong: true
    }
    Label {
        objectName: "followSaid"
        width: parent.width
        visible: text !== ""
        text: panel.student ? panel.student.saidText : ""
    }
    Label {
        objectName: "followSigned"
        width: parent.width
        visible: panel.student !== null && panel.student.signedThere
        text: qsTr("Your signature is under the record on both devices.")
        strong: true
    }
    Column {
        width: parent.width
        visible: panel.round !== null
        spacing: 12
        Framed {
            width: parent.width
            StandHead {
                width: parent.width
                number: panel.round ? panel.round.standNumber : 0
                name: panel.round ? panel.round.standName : ""
                about: panel.round ? panel.round.standText : ""
            }
            Label {
                objectName: "followInHand"
                width: parent.width
                text: panel.round ? (panel.round.conclusionText !== "" ? panel.round.conclusionText : panel.round.cardTitle) : ""
                strong: true
                font.pixelSize: Theme.title
            }
            Label {
                width: parent.width
                visible: text !== ""
                text: panel.round ? (panel.round.conclusionText !== "" ? panel.round.reasons : panel.round.cardHow) : ""
            }
            Label {
                objectName: "followTime"
                width: parent.width
                visible: text !== ""
                text: panel.round ? panel.round.inHandText : ""
                font.pixelSize: Theme.large
            }
        }
        Heading {
            width: parent.width
            visible: findings.count > 0
            text: qsTr("Found")
        }
        Repeater {
            id: findings
            model: panel.round ? panel.round.findings : []
            RowKey {
                id: found
                required property var modelData
                objectName: "followFound." + modelData.id
                width: panel.width
                look: "finding"
                grounds: modelData.severity === "grounds"
                text: modelData.name
                about: modelData.words
                enabled: panel.student !== null
                onClicked: panel.sayAsked(modelData.id)
                aside: pictures.width > 0 ? pictures.width + 12 : 0
                Row {
                    id: pictures
                    anchors.right: parent.right
                    anchors.rightMargin: 12
                    anchors.verticalCenter: parent.verticalCenter
                    spacing: 6
                    Repeater {
                        // Beside its words on a phone there is room for one.
                        model: Array.from(found.modelData.photos).slice(0, found.width < Theme.mm(60) * Theme.scale ? 1 : 3)
                        Image {
                            required property string modelData
                            width: Theme.mm(12)
                            height: width
                            sourceSize.width: 2 * width
                            fillMode: Image.PreserveAspectCrop
                            cache: false // asked for before it came, it would stay missing
                            opacity: Theme.night ? 0.45 : 1
                            source: modelData
                            visible: status === Image.Ready
                        }
                    }
                }
            }
        }
        Heading {
            width: parent.width
            visible: asks.count > 0
            text: qsTr("Said")
        }
        Repeater {
            id: asks
            model: panel.round ? panel.round.asks : []
            RecordRow {
                required property var modelData
                objectName: "followAsk." + modelData.ask
                width: panel.width
                text: Texts.line(modelData.title, modelData.words, "")
                about: Texts.line(modelData.who, modelData.becameText, "")
            }
        }
        Heading {
            width: parent.width
            visible: quick.count > 0
            text: qsTr("Settled within the time that one takes")
        }
        Repeater {
            id: quick
            model: panel.round ? panel.round.quick : []
            RowKey {
                required property var modelData
                objectName: "quick." + modelData.seq
                width: panel.width
                text: modelData.text
                about: modelData.standName
                onClicked: panel.momentAsked(modelData.seq)
            }
        }
        ReplayKeys {
            width: parent.width
            visible: panel.withKeys
            round: panel.round
            live: panel.student !== null
        }
        Heading {
            width: parent.width
            visible: stands.count > 0
            text: qsTr("Time at each stand")
        }
        Label {
            width: parent.width
            visible: stands.count > 0
            text: qsTr("Taken, and what the airframe's description says these points take.")
            color: Theme.soft
            font.pixelSize: Theme.small
        }
        Repeater {
            id: stands
            model: panel.round ? panel.round.stands : []
            Item {
                id: one
                required property var modelData
                objectName: "pace." + modelData.stand
                /// Large text: no room for the name beside the time.
                readonly property bool narrow: width - time.width < Theme.mm(18) * Theme.scale
                width: panel.width
                height: (narrow ? line.implicitHeight + time.implicitHeight : Math.max(line.implicitHeight, time.implicitHeight)) + 14
                Accessible.role: Accessible.StaticText
                Accessible.name: line.text + ", " + time.text + (one.modelData.quickText === "" ? "" : ", " + one.modelData.quickText)
                Label {
                    id: line
                    width: one.narrow ? parent.width : parent.width - time.width - 12
                    text: (one.modelData.number > 0 ? one.modelData.number + "  " : "") + one.modelData.name
                    strong: one.modelData.here
                    Accessible.ignored: true
                }
                Label {
                    id: time
                    anchors.right: parent.right
                    y: one.narrow ? line.implicitHeight : 0
                    text: qsTr("%1 of %2").arg(one.modelData.spentText).arg(one.modelData.expectedText)
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
                Rectangle {
                    // Full: twice what is expected; the notch: what is.
                    anchors.bottom: parent.bottom
                    anchors.bottomMargin: 2
                    width: parent.width
                    height: 6
                    color: Theme.line
                    Rectangle {
                        width: parent.width * one.modelData.share / 2
                        height: parent.height
                        color: Theme.way
                    }
                    Rectangle {
                        x: parent.width / 2
                        y: -2
                        width: 2
                        height: parent.height + 4
                        color: Theme.ink
                    }
                }
            }
        }
        Heading {
            width: parent.width
            text: qsTr("What happened")
        }
        ListView {
            objectName: "toldList"
            width: parent.width
            height: contentHeight
            interactive: false
            cacheBuffer: 100
            model: panel.round ? panel.round.told : null
            delegate: T.AbstractButton {
                id: happened
                required property int seq
                required property string atText
                required property string told
                required property string look
                objectName: "told." + seq
                width: panel.width
                implicitHeight: Math.max(Theme.target, row.implicitHeight)
                text: told
                focusPolicy: Qt.StrongFocus
                onClicked: panel.momentAsked(happened.seq)
                Accessible.role: Accessible.Button
                Accessible.name: happened.told
                Accessible.description: happened.atText
                Accessible.onPressAction: happened.clicked()
                background: Rectangle {
                    color: happened.down ? Theme.pressed : "transparent"
                    FocusRing {
                        of: happened
                    }
                }
                RecordRow {
                    id: row
                    width: parent.width
                    anchors.verticalCenter: parent.verticalCenter
                    look: happened.look
                    text: happened.told
                    at: happened.atText
                }
            }
        }
    }
}
