// What a walk seldom needs.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Sheet {
    id: sheet

    required property App app
    required property RoundView round
    property string value: ""

    signal reviewAsked
    signal leaveAsked
    signal placeAsked(string place)
    signal sheetAsked(string file, var more)

    /// Whom “this stand” means: the one ahead, else where one is.
    readonly property bool ahead: round.targetStandId !== ""
    readonly property string standId: ahead ? round.targetStandId : round.standId
    readonly property string standName: ahead ? round.targetStandName : round.standName
    readonly property bool walking: round.phase === "walking"

    objectName: "sheetMore"
    title: round.walkName
    subtitle: Texts.line(round.person, Texts.unparted(round.planText), "")
    backName: "moreClose"

    Key {
        objectName: "reviewKey"
        width: parent.width
        focus: true
        text: qsTr("Review")
        about: qsTr("Everything not sound, everything owed, everything unsettled")
        onClicked: sheet.reviewAsked()
    }
    Key {
        objectName: "noteKey"
        width: parent.width
        text: qsTr("Note")
        onClicked: sheet.sheetAsked("NoteSheet.qml", {})
    }
    Key {
        objectName: "habitsKey"
        width: parent.width
        text: qsTr("How you are asked")
        about: qsTr("Keys, portions, reading aloud, photos; what an interruption asks for again")
        onClicked: sheet.sheetAsked("HabitsSheet.qml", {})
    }
    FollowKey {
        width: parent.width
        sharing: sheet.app.sharing
        onClicked: sheet.sheetAsked("FollowersSheet.qml", {})
    }
    Label {
        width: parent.width
        topPadding: 8
        text: qsTr("If something is different today")
        strong: true
        Accessible.role: Accessible.Heading
    }
    Key {
        objectName: "standBlockedKey"
        width: parent.width
        visible: sheet.standId !== ""
        enabled: sheet.walking && !Array.from(sheet.round.blockedStands).some(one => one.id === sheet.standId)
        text: qsTr("“%1” can't be used").arg(sheet.standName)
        about: sheet.ahead ? qsTr("The next stand") : qsTr("Where you are")
        onClicked: sheet.sheetAsked("BlockedSheet.qml", {
            standId: sheet.standId,
            name: sheet.standName
        })
    }
    Key {
        objectName: "markAreaKey"
        width: parent.width
        enabled: sheet.walking
        text: qsTr("Something is in the way")
        about: qsTr("A wall, another machine: mark it on the figure")
        onClicked: sheet.sheetAsked("MarkSheet.qml", {})
    }
    Key {
        objectName: "lightKey"
        width: parent.width
        enabled: sheet.walking
        text: sheet.round.lightLow ? qsTr("The light is good again") : qsTr("The light is going")
        about: qsTr("In low light, what is reached by climbing comes first")
        onClicked: if (sheet.round.tellLight(!sheet.round.lightLow))
            sheet.closed()
    }
    Key {
        objectName: "nightFlightKey"
        width: parent.width
        visible: sheet.app.conditions.nightPossible
        enabled: sheet.walking
        text: sheet.app.conditions.night ? qsTr("The flight doesn't go into the dark") : qsTr("The flight goes into the dark")
        about: qsTr("What the airframe asks for at night is added to the walk")
        onClicked: if (sheet.app.conditions.tellNight(!sheet.app.conditions.night))
            sheet.closed()
    }
    DiffersList {
        width: parent.width
        enabled: sheet.walking
        round: sheet.round
    }
    Label {
        objectName: "moreOrder"
        width: parent.width
        visible: text !== ""
        text: sheet.round.orderText
    }
    Rectangle {
        width: parent.width
        height: 2
        color: Theme.line
    }
    Key {
        objectName: "placeFile"
        width: parent.width
        text: qsTr("File")
        about: qsTr("The records of the aircraft; the round waits")
        onClicked: sheet.placeAsked("file")
    }
    Key {
        objectName: "placeWatch"
        width: parent.width
        visible: sheet.app.watch.possible
        text: qsTr("Watch")
        about: qsTr("Follow others; the round waits")
        onClicked: sheet.placeAsked("watch")
    }
    Key {
        objectName: "leaveKey"
        width: parent.width
        text: qsTr("Leave the round")
        about: qsTr("It waits as it stands")
        onClicked: sheet.leaveAsked()
    }
    Row {
        width: parent.width
        spacing: 12
        Key {
            objectName: "nightKey"
            width: (parent.width - 12) / 2
            text: sheet.app.night ? qsTr("Day") : qsTr("Night")
            about: qsTr("The night appearance spares eyes that are used to the dark")
            onClicked: sheet.app.night = !sheet.app.night
        }
        Key {
            objectName: "textSizeKey"
            width: (parent.width - 12) / 2
            text: qsTr("Text %1 %").arg(Math.round(Theme.scale * 100))
            about: qsTr("Makes all text larger, up to twice; then small again")
            onClicked: Theme.nextScale()
        }
    }
    Key {
        objectName: "handKey"
        width: parent.width
        text: sheet.app.leftHanded ? qsTr("For the right hand") : qsTr("For the left hand")
        about: qsTr("What the thumb reaches changes sides")
        onClicked: sheet.app.leftHanded = !sheet.app.leftHanded
    }
    LanguageKey {
        width: parent.width
        app: sheet.app
    }
    Label {
        width: parent.width
        topPadding: 8
        visible: sheet.round.owedCount > 0
        text: qsTr("Open")
        strong: true
        Accessible.role: Accessible.Heading
    }
    Repeater {
        model: sheet.round.owed
        Row {
            id: owed
            required property string owedText
            required property string sinceText
            width: parent ? parent.width : 0
            spacing: 12
            Mark {
                id: mark
                y: 2
                look: "owed"
            }
            Label {
                width: owed.width - mark.width - 12
                text: owed.owedText + "\u00a0· " + owed.sinceText
            }
        }
    }
    Label {
        objectName: "lightText"
        width: parent.width
        visible: text !== ""
        text: sheet.app.daylight.text
    }
    Label {
        objectName: "clockText"
        width: parent.width
        visible: text !== ""
        text: sheet.app.conditions.clockText
        strong: true
    }
    Caution {
        width: parent.width
        texts: sheet.round.generalCautions
    }
    Label {
        width: parent.width
        text: sheet.round.notice
        color: Theme.soft
        font.pixelSize: Theme.small
    }
    Label {
        width: parent.width
        text: qsTr("On a keyboard: I = I am there, D = done, S = sound, F = finding, N = not inspected, W = why, V = value, R = review, P = pause, M = more.")
        color: Theme.soft
        font.pixelSize: Theme.small
    }
}
