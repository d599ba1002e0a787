// One thing that is not sound, owed or unsettled.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Ambit

Rectangle {
    id: row

    required property string kind
    required property string itemId
    required property string title
    required property string detail
    required property string basis
    required property string severity
    required property string value
    required property var photos
    readonly property bool narrow: width < Theme.mm(74) * Theme.scale
    /// Where the words begin, beside the mark.
    readonly property real edge: 16 + Theme.mark(20) + 12
    readonly property bool point: kind !== "owed"
    readonly property string kindText: {
        switch (kind) {
        case "finding":
            return Texts.line(qsTr("Finding"), severity === "grounds" ? qsTr("grounds the aircraft") : qsTr("for assessment"), "");
        case "notInspected":
            return qsTr("Not inspected");
        case "owed":
            return qsTr("Open");
        default:
            return qsTr("To do");
        }
    }

    signal touched
    signal reopenAsked
    signal closedAsked

    implicitHeight: act.visible && act.below ? body.implicitHeight + act.height - act.over : Math.max(body.implicitHeight, act.visible ? act.height + 12 : 0)
    radius: Theme.corner
    color: Theme.panel
    border.width: kind === "unsettled" ? 1 : 2
    border.color: kind === "unsettled" ? Theme.soft : Theme.ink

    CutCorner {
        visible: row.kind === "finding"
        radius: Theme.corner
        colour: row.severity === "grounds" ? Theme.warning : Theme.caution
    }
    T.AbstractButton {
        id: body
        objectName: "review." + row.itemId
        anchors.left: parent.left
        anchors.right: act.visible && !act.below ? act.left : parent.right
        implicitHeight: Math.max(Theme.target, words.implicitHeight + 24)
        height: act.visible && act.below ? row.height - act.height + act.over : row.height
        enabled: row.point
        focusPolicy: row.point ? Qt.StrongFocus : Qt.NoFocus
        onClicked: row.touched()
        Keys.onReturnPressed: body.clicked()
        Keys.onEnterPressed: body.clicked()
        Accessible.role: row.point ? Accessible.Button : Accessible.StaticText
        Accessible.name: Texts.said(row.kindText, row.title)
        Accessible.description: row.detail
        Accessible.onPressAction: body.clicked()
        background: Item {
            FocusRing {
                anchors.margins: 2
                of: body
            }
        }
        Mark {
            id: mark
            x: row.kind === "finding" ? 30 : 16
            y: 14
            visible: row.kind !== "finding"
            look: row.kind === "unsettled" ? "todo" : row.kind
            grounds: row.severity === "grounds"
        }
        Column {
            id: words
            x: row.edge
            y: 12
            width: parent.width - x - 8
            spacing: 3
            Label {
                width: parent.width
                text: row.title + (row.value === "" ? "" : "\u00a0· " + row.value)
                strong: true
                font.pixelSize: Theme.large
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                text: row.kindText
                color: Theme.soft
                font.pixelSize: Theme.small
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: text !== "" && row.kind !== "unsettled"
                text: row.detail
                Accessible.ignored: true
            }
            Label {
                width: parent.width
                visible: row.kind === "notInspected"
                text: row.basis === "" ? qsTr("No basis stated.") : qsTr("Basis: %1").arg(row.basis)
                strong: row.basis === ""
                Accessible.ignored: true
            }
            Photos {
                width: parent.width
                sources: row.photos
                side: Theme.mm(14)
            }
        }
    }
    Key {
        id: act
        readonly property real beside: row.width - width - 6 - row.edge - 8
        /// Beside it a word would be broken.
        readonly property bool breaks: Theme.fitting(row.title, beside, Theme.large) < Theme.large || Theme.fitting(row.detail, beside, Theme.normal + 1) < Theme.normal + 1
        readonly property bool below: row.narrow && (row.kind !== "owed" || breaks)
        /// How far it reaches up beside the last words: a link has no frame.
        readonly property real over: look === "link" ? 8 : 0
        readonly property bool settled: row.kind === "finding" || row.kind === "notInspected"
        objectName: row.kind === "owed" ? "owedClosed." + row.itemId : settled ? "reopen." + row.itemId : ""
        anchors.right: parent.right
        anchors.rightMargin: 6
        y: below ? row.height - height - (look === "link" ? 0 : 6) : (row.height - height) / 2
        width: Math.max(Theme.mm(18), implicitWidth)
        visible: settled || row.kind === "owed"
        look: row.kind === "owed" ? "outline" : "link"
        text: row.kind === "owed" ? qsTr("Is closed") : qsTr("Settle again")
        about: row.title
        onClicked: row.kind === "owed" ? row.closedAsked() : row.reopenAsked()
    }
}
