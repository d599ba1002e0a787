// A point that is not inspected says so, and why; `rest`: all that are left at once.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    property string value: ""
    property bool rest: false
    readonly property int remaining: round.pointCount - round.settledCount

    signal wentOn

    objectName: rest ? "sheetRest" : "sheetNotInspected"
    title: qsTr("Not inspected")
    subtitle: rest ? qsTr("All %n points that are left", "", remaining) : round.cardTitle
    backName: "notInspectedCancel"
    keys: Key {
        objectName: "notInspectedDone"
        width: parent.width
        broad: true
        look: "solid"
        text: sheet.rest ? qsTr("Settle all as not inspected") : qsTr("Settle as not inspected")
        onClicked: {
            const done = sheet.rest ? sheet.round.restNotInspected(why.text, basis.text) : sheet.round.settleNotInspected(why.text, basis.text);
            if (done)
                sheet.wentOn();
        }
    }

    Label {
        text: qsTr("Why not")
        strong: true
        Accessible.role: Accessible.Heading
    }
    Repeater {
        model: sheet.rest ? [qsTr("The walk is stopped.")] : [qsTr("Can't be reached today."), qsTr("Covered by ice, snow or dirt."), qsTr("Too dark to see.")]
        Choice {
            required property string modelData
            required property int index
            objectName: "notInspectedReason." + index
            width: why.width
            text: modelData
            chosen: why.text === modelData
            onClicked: why.text = modelData
        }
    }
    WordsField {
        id: why
        objectName: "notInspectedWhy"
        width: parent.width
        label: qsTr("In your words")
    }
    Label {
        topPadding: 6
        width: parent.width
        text: qsTr("What allows flight without it")
        strong: true
        Accessible.role: Accessible.Heading
    }
    WordsField {
        id: basis
        objectName: "notInspectedBasis"
        width: parent.width
        label: qsTr("Basis: handbook section, deferral, permission")
    }
    Label {
        width: parent.width
        text: qsTr("Without a stated basis, the conclusion can't be fit.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }
}
