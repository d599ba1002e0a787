// Records go for good: which, what allows it, who signs for it; asked a second time before it is done.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    /// As RetentionView has them.
    required property var rows
    readonly property int count: rows.length
    readonly property var against: rows.filter(one => one.never !== undefined)
    readonly property int few: 5
    property bool although: false
    property bool allNames: false
    /// Signed for, and asked again.
    property bool asking: false

    function letGo() {
        const done = screen.app.entries.letGo({
            records: screen.rows.map(one => one.recordId),
            basis: basis.text,
            although: screen.although
        }, signature.signature);
        screen.asking = false;
        if (done)
            screen.back();
    }

    objectName: "screenRemove"
    title: count === 1 ? qsTr("Let 1 record go") : qsTr("Let %1 records go").arg(count)
    subtitle: app.file.registration
    backText: qsTr("Back")
    backName: "entryBack"
    keys: [
        SignKeys {
            width: parent.width
            visible: !screen.asking
            fields: signature
            does: qsTr("Sign and let go …")
            onSignAsked: screen.asking = true
        },
        Label {
            objectName: "removeAsks"
            width: parent.width
            visible: screen.asking
            text: screen.count === 1 ? qsTr("This can't be undone: 1 record goes from this device for good.") : qsTr("This can't be undone: %1 records go from this device for good.").arg(screen.count)
            strong: true
            font.pixelSize: screen.low ? Theme.normal : Theme.large
        },
        Pair {
            id: pair
            width: parent.width
            visible: screen.asking
            Key {
                objectName: "removeKeep"
                width: pair.each
                height: Math.max(implicitHeight, pair.tallest)
                broad: !screen.low // two of them and the words beside a low page
                text: screen.count === 1 ? qsTr("Keep it") : qsTr("Keep them")
                onClicked: screen.asking = false
            }
            Key {
                objectName: "removeForGood"
                width: pair.each
                height: Math.max(implicitHeight, pair.tallest)
                broad: !screen.low // two of them and the words beside a low page
                look: "solid"
                text: qsTr("Let go for good")
                onClicked: screen.letGo()
            }
        }
    ]

    Column {
        width: parent.width
        spacing: 12
        enabled: !screen.asking
        Framed {
            width: parent.width
            Repeater {
                model: screen.allNames ? screen.rows : screen.rows.slice(0, screen.few)
                Label {
                    required property var modelData
                    width: parent?.width ?? 0
                    text: Texts.line(modelData.name, modelData.who, "")
                }
            }
        }
        Key {
            objectName: "removeAllNames"
            width: parent.width
            visible: !screen.allNames && screen.count > screen.few
            text: qsTr("Show all %1").arg(screen.count)
            onClicked: screen.allNames = true
        }
        Label {
            width: parent.width
            text: qsTr("What they say, their signatures, their PDFs, and the photos that no other record names leave this archive. Copies elsewhere stay where they are. In their place stays a signed record: it names each by its kind, its day and its identity, so that the chain holds, and says what allowed it.")
        }
        Caution {
            objectName: "removeAgainst"
            width: parent.width
            warns: true
            texts: screen.against.length === 0 ? [] : [screen.against.length === 1 ? qsTr("One of them must stay by 14 CFR 91.417(b):") : qsTr("%1 of them must stay by 14 CFR 91.417(b):").arg(screen.against.length)].concat(screen.against.map(one => Texts.said(one.name, one.why)))
        }
        Tick {
            objectName: "removeAlthough"
            width: parent.width
            visible: screen.against.length > 0
            text: qsTr("Other rules allow it all the same")
            about: qsTr("Name them below.")
            chosen: screen.although
            onClicked: screen.although = !screen.although
        }
        WordsField {
            id: basis
            objectName: "removeBasis"
            width: parent.width
            label: qsTr("What allows it")
            text: screen.app.retention.basisOf(screen.rows.map(one => one.recordId))
        }
        SignatureFields {
            id: signature
            width: parent.width
            app: screen.app
            role: "owner"
            onAccepted: screen.asking = true
        }
    }
}
