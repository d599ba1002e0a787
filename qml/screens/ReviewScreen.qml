// Before the conclusion: everything not sound, everything owed, everything unsettled; each one touch from being put right.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

FocusScope {
    id: screen

    required property App app
    required property RoundView round
    readonly property bool sheetOpen: sheet.status !== Loader.Null
    property bool settledShown: false

    signal back
    signal concludeAsked

    function openSheet(file: string, more: var) {
        sheet.setSource(file, Object.assign({
            app: screen.app,
            round: screen.round
        }, more));
    }
    function reopen(pointId: string, name: string) {
        openSheet("ReopenSheet.qml", {
            pointId: pointId,
            name: name
        });
    }

    objectName: "screenReview"
    focus: true

    Page {
        id: page
        anchors.fill: parent
        focus: !screen.sheetOpen
        enabled: !screen.sheetOpen
        title: qsTr("Review")
        subtitle: Texts.line(screen.round.registration, qsTr("%1 of %2 settled").arg(screen.round.settledCount).arg(screen.round.pointCount), screen.round.walkName)
        backText: qsTr("Back")
        backName: "reviewBack"
        onBack: screen.back()
        keys: Key {
            objectName: "reviewConclude"
            narrow: true
            width: parent.width
            broad: true
            look: "solid"
            text: qsTr("Conclude")
            onClicked: screen.concludeAsked()
        }

        Label {
            width: parent.width
            visible: screen.round.review.count === 0
            text: qsTr("Every point is settled sound and nothing is open.")
            font.pixelSize: Theme.large
        }
        Repeater {
            model: screen.round.review
            ReviewRow {
                width: page.columnWidth
                onTouched: {
                    if (screen.round.choosePoint(itemId))
                        screen.back();
                }
                onReopenAsked: screen.reopen(itemId, title)
                onClosedAsked: screen.round.closed(itemId)
            }
        }
        Key {
            objectName: "reviewRest"
            width: parent.width
            visible: screen.round.settledCount < screen.round.pointCount
            text: qsTr("Stop the walk: the rest is not inspected")
            onClicked: screen.openSheet("NotInspectedSheet.qml", {
                rest: true
            })
        }
        Label {
            width: parent.width
            topPadding: 12
            visible: screen.round.openable.length > 0
            text: qsTr("Opened outside its point?")
            strong: true
            Accessible.role: Accessible.Heading
        }
        Flow {
            id: openable
            width: parent.width
            spacing: Theme.gap
            Repeater {
                model: screen.round.openable
                Key {
                    required property var modelData
                    objectName: "made." + modelData.id
                    narrow: Theme.scale > 1.5
                    width: narrow ? openable.width : Math.min(implicitWidth, openable.width)
                    text: modelData.name
                    about: qsTr("Was opened: owed until it is closed")
                    onClicked: screen.round.made(modelData.id)
                }
            }
        }
        Key {
            objectName: "reviewSettled"
            width: parent.width
            visible: screen.round.settledCount > 0
            text: screen.settledShown ? qsTr("Hide what is settled") : qsTr("Show all that is settled")
            onClicked: screen.settledShown = !screen.settledShown
        }
        Repeater {
            model: screen.settledShown ? Array.from(screen.round.settledPoints).filter(point => point.outcome === "sound") : []
            Item {
                id: settled
                required property var modelData
                /// Large text: no room for the words beside the key.
                readonly property bool narrow: width - again.width < Theme.mm(22) * Theme.scale
                width: page.columnWidth
                height: narrow ? said.implicitHeight + again.height : Math.max(again.height, said.implicitHeight + 8)
                Mark {
                    id: mark
                    x: 4
                    anchors.verticalCenter: said.verticalCenter
                    look: settled.modelData.outcome
                }
                Column {
                    id: said
                    anchors.left: mark.right
                    anchors.leftMargin: 12
                    anchors.right: settled.narrow ? parent.right : again.left
                    y: settled.narrow ? 0 : (settled.height - implicitHeight) / 2
                    Label {
                        width: parent.width
                        text: settled.modelData.name
                    }
                    Label {
                        width: parent.width
                        text: settled.modelData.outcomeText
                        color: Theme.soft
                        font.pixelSize: Theme.small
                    }
                }
                Key {
                    id: again
                    objectName: "reopen." + settled.modelData.id
                    anchors.right: parent.right
                    anchors.bottom: parent.bottom
                    look: "link"
                    text: qsTr("Settle again")
                    about: settled.modelData.name
                    onClicked: screen.reopen(settled.modelData.id, settled.modelData.name)
                }
            }
        }
    }
    Loader {
        id: sheet
        anchors.fill: parent
        focus: screen.sheetOpen
        onLoaded: (item as Item).forceActiveFocus()
    }
    Connections {
        target: sheet.item
        ignoreUnknownSignals: true
        function onClosed() {
            sheet.source = "";
            page.forceActiveFocus();
        }
        function onWentOn() {
            sheet.source = "";
            page.forceActiveFocus();
        }
    }
}
