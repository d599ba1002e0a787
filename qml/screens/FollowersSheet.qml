// Who follows this device's round from theirs: it is opened here, each is let in and taken back here, and closed again.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    property RoundView round: null
    property string value: ""
    readonly property SharingView sharing: app.sharing
    readonly property bool codeShown: sharing.codePicture !== ""
    readonly property var watching: Array.from(sharing.watching)
    readonly property var others: Array.from(sharing.known).filter(one => !one.here)
    property KeyFields fields: null
    /// Id of the device that is to be taken back, if it is touched once more.
    property string asking: ""

    function behind(events: int): string {
        return events === 0 ? qsTr("Has everything so far") : events === 1 ? qsTr("1 entry behind") : qsTr("%1 entries behind").arg(events);
    }
    function start() {
        sheet.sharing.start(sheet.fields?.passphraseText ?? "", sheet.fields?.keyId ?? "");
    }
    function takeBack(id: string) {
        sheet.asking = "";
        sheet.sharing.takeBack(id);
    }

    objectName: "sheetFollowers"
    title: sheet.codeShown ? qsTr("Let one in") : qsTr("Who follows")
    subtitle: !sharing.open ? qsTr("Nobody can follow now") : sharing.watchingText !== "" ? sharing.watchingText : qsTr("Nobody follows yet")
    backName: "followersClose"
    keys: [
        Key {
            objectName: "newKeyDone"
            width: parent.width
            visible: !sheet.sharing.open && sheet.fields?.key === null
            broad: true
            narrow: true
            look: "solid"
            enabled: sheet.fields?.canMake ?? false
            text: qsTr("Make the key")
            onClicked: sheet.fields.make()
        },
        Key {
            objectName: "followStart"
            width: parent.width
            visible: !sheet.sharing.open && sheet.fields?.key !== null
            broad: true
            narrow: true
            look: "solid"
            text: qsTr("Let others follow")
            onClicked: sheet.start()
        },
        Key {
            objectName: "followInvite"
            width: parent.width
            visible: sheet.sharing.open && !sheet.codeShown
            broad: true
            narrow: true
            look: "solid"
            text: qsTr("Show a code")
            onClicked: sheet.sharing.invite()
        },
        Key {
            objectName: "followCodeAway"
            width: parent.width
            visible: sheet.codeShown
            broad: true
            narrow: true
            text: qsTr("Put the code away")
            onClicked: sheet.sharing.putCodeAway()
        }
    ]

    Label {
        width: parent.width
        visible: !sheet.sharing.open
        text: qsTr("Others on this network can follow your round on their own devices; nothing leaves this network. Each of them is let in by you, and taken back by you. Nobody can settle or change anything.")
    }
    Repeater {
        // What was typed goes with it.
        model: sheet.sharing.open ? 0 : 1
        onItemAdded: (index, item) => sheet.fields = item as KeyFields
        onItemRemoved: sheet.fields = null
        KeyFields {
            width: parent ? parent.width : 0
            focus: true
            first: true
            app: sheet.app
            whose: sheet.round?.person ?? sheet.app.personName
            onAccepted: sheet.start()
        }
    }
    InvitationCode {
        width: parent.width
        visible: sheet.codeShown
        sharing: sheet.sharing
        room: sheet.height - Theme.mm(24)
    }
    Framed {
        width: parent.width
        visible: sheet.sharing.lastRefusal !== ""
        Label {
            width: parent.width
            text: qsTr("Not let in")
            strong: true
            Accessible.role: Accessible.Heading
        }
        Label {
            objectName: "followRefused"
            width: parent.width
            text: sheet.sharing.lastRefusal
            Accessible.role: Accessible.AlertMessage
        }
    }
    Repeater {
        // Numbers, not the list: a row stays what it is while it is touched and the list changes.
        model: sheet.codeShown ? 0 : sheet.watching.length
        FollowerRow {
            required property int index
            width: parent ? parent.width : 0
            who: sheet.watching[index] ?? null
            words: sheet.behind(who?.behind ?? 0)
            asking: sheet.asking !== "" && sheet.asking === whoId
            onAsked: sheet.asking = whoId
            onKept: sheet.asking = ""
            onTakenBack: sheet.takeBack(whoId)
        }
    }
    Label {
        width: parent.width
        visible: sheet.sharing.open && !sheet.codeShown && sheet.watching.length === 0
        text: sheet.others.length === 0 ? qsTr("Show a code to let the first device in.") : qsTr("Who was let in before joins without a code. Show a code to let another device in.")
    }
    Heading {
        width: parent.width
        visible: !sheet.codeShown && sheet.others.length > 0
        text: qsTr("May follow, too")
    }
    Repeater {
        model: sheet.codeShown ? 0 : sheet.others.length
        FollowerRow {
            required property int index
            width: parent ? parent.width : 0
            who: sheet.others[index] ?? null
            words: ""
            asking: sheet.asking !== "" && sheet.asking === whoId
            onAsked: sheet.asking = whoId
            onKept: sheet.asking = ""
            onTakenBack: sheet.takeBack(whoId)
        }
    }
    Tick {
        objectName: "followAloud"
        width: parent.width
        visible: sheet.sharing.open && !sheet.codeShown
        chosen: sheet.sharing.readAloud
        text: qsTr("Read aloud what they say")
        about: sheet.sharing.hasVoice ? "" : qsTr("This device has no voice: it is shown only")
        onClicked: sheet.sharing.readAloud = !sheet.sharing.readAloud
    }
    Key {
        objectName: "followStop"
        width: parent.width
        visible: sheet.sharing.open && !sheet.codeShown
        broad: true
        text: qsTr("Stop: nobody follows any more")
        onClicked: sheet.sharing.stop()
    }
}
