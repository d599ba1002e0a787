// The window: its places, and the screen in each. Which screen shows follows from the models; nothing is decided here.
pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Templates as T
import Ambit

Window {
    id: window

    required property App app
    property string place: "walk"
    /// Within the walk: "", "review", "conclude"; before it: "begin".
    property string step: ""
    property string registration: ""
    /// Within the file: {step (a screen), values, above (bool: it was asked for on the opened record's page)}; the last one is shown.
    property var steps: []
    /// In the watch: the number of the one who is looked at; 0: all of them.
    property int watching: 0
    readonly property var lastStep: steps.length > 0 ? steps[steps.length - 1] : null
    readonly property bool onRecord: app.file.record !== null && !lastStep?.above
    readonly property string phase: app.round ? app.round.phase : ""
    readonly property string wanted: {
        if (inWatch)
            return watching > 0 ? "Follow" : "Watch";
        if (inFile)
            return onRecord ? "Record" : lastStep ? lastStep.step : "File";
        if (!app.round)
            return step === "begin" ? "Begin" : "Aircraft";
        if (phase === "concluded")
            return "Sign";
        return step === "review" ? "Review" : step === "conclude" ? "Conclude" : "Walk";
    }
    readonly property var round: app.round
    readonly property bool interrupted: app.conditions.interruptedText !== "" || app.conditions.silentText !== ""
    readonly property bool inWatch: place === "watch"
    readonly property bool inFile: place === "file" || (phase === "sealed" && !inWatch)

    function show() {
        const values = {
            app: window.app
        };
        if (wanted === "Walk" || wanted === "Review" || wanted === "Conclude" || wanted === "Sign")
            values.round = window.app.round;
        if (wanted === "Begin")
            values.registration = window.registration;
        if (wanted === "Record")
            values.record = window.app.file.record;
        if (wanted === "Follow" && inWatch)
            values.student = window.app.watch.student(window.watching);
        if (inFile && lastStep && wanted !== "Record")
            Object.assign(values, lastStep.values);
        sheet.source = "";
        screen.setSource("screens/" + wanted + "Screen.qml", values);
    }
    function go(place: string) {
        if (place === "walk" && window.phase === "sealed")
            window.app.leaveRound();
        if (place === "file")
            window.app.file.close();
        window.steps = [];
        window.watching = 0;
        window.place = place;
    }

    width: 1180
    height: 820
    minimumWidth: 360
    minimumHeight: 360
    visible: true
    color: Theme.ground
    title: qsTr("Ambit")
    onWantedChanged: show()
    onRoundChanged: step = ""
    onPhaseChanged: {
        if (phase === "sealed")
            place = "file";
        else if (phase === "walking" && step === "conclude")
            step = "review";
    }
    onActiveFocusItemChanged: {
        // Moving on by keyboard shows that there is one.
        const control = activeFocusItem as T.Control;
        if (control && control.visualFocus)
            Theme.keyboard = true;
    }
    Component.onCompleted: show()

    Binding {
        target: Theme
        property: "night"
        value: window.app.night
    }
    Binding {
        target: Theme
        property: "leftHanded"
        value: window.app.leftHanded
    }
    Binding {
        target: Theme
        property: "density"
        value: Qt.platform.pluginName === "offscreen" ? 0 : window.Screen.pixelDensity
    }
    Item {
        // On a screen finer than the system makes up for, all of it is drawn larger: millimetres stay millimetres.
        id: room
        width: window.width / scale
        height: window.height / scale
        scale: Math.max(1, Math.min(Theme.enlargement, window.width / window.minimumWidth, window.height / window.minimumHeight))
        transformOrigin: Item.TopLeft

        Loader {
            id: screen
            width: parent.width
            height: bar.visible ? parent.height - bar.height : parent.height
            focus: sheet.status === Loader.Null
            enabled: sheet.status === Loader.Null && !window.interrupted
            onLoaded: (item as Item).forceActiveFocus()
        }
        Rectangle {
            anchors.fill: bar
            visible: bar.visible
            color: Theme.ground
            Rectangle {
                width: parent.width
                height: 1
                color: Theme.line
            }
        }
        PlacesBar {
            id: bar
            anchors.bottom: parent.bottom
            width: parent.width
            visible: window.wanted !== "Walk"
            enabled: sheet.status === Loader.Null
            place: window.inWatch ? "watch" : window.inFile ? "file" : "walk"
            withWatch: window.app.watch.possible
            onAsked: place => window.go(place)
        }
        Loader {
            id: sheet
            anchors.fill: parent
            onLoaded: (item as Item).forceActiveFocus()
        }
        Loader {
            id: cut
            anchors.fill: parent
            active: window.interrupted
            onActiveChanged: if (active)
                setSource("screens/InterruptedSheet.qml", {
                    app: window.app
                });
            onLoaded: (item as Item).forceActiveFocus()
        }
        ProblemBar {
            app: window.app
            x: (parent.width - width) / 2
            y: Theme.gap
            width: Math.min(parent.width - 2 * Theme.gap, Theme.mm(110))
        }
        QuietLine {
            // Over neither the title nor the keys, and beside the card where that stands beside.
            readonly property real middle: room.width <= room.height ? 0.5 : Theme.leftHanded ? 0.7 : 0.3
            x: Math.min(room.width - width - Theme.margin, Math.max(Theme.margin, room.width * middle - width / 2))
            y: parent.height * 0.17
            words: guard.ignored
        }
    }
    TouchGuard {
        id: guard
        over: window
    }
    Connections {
        target: screen.item
        ignoreUnknownSignals: true
        function onChosen(registration: string) {
            window.registration = registration;
            window.step = "begin";
        }
        function onAddAsked() {
            sheet.setSource("screens/AddAircraftSheet.qml", {
                app: window.app
            });
        }
        function onFollowersAsked() {
            sheet.setSource("screens/FollowersSheet.qml", {
                app: window.app
            });
        }
        function onReviewAsked() {
            window.step = "review";
        }
        function onConcludeAsked() {
            window.step = "conclude";
        }
        function onLeaveAsked() {
            window.app.leaveRound();
        }
        function onStepAsked(step: string, values: var) {
            window.steps = window.steps.concat([
                {
                    step: step,
                    values: values,
                    above: window.app.file.record !== null
                }
            ]);
        }
        function onStepInstead(step: string, values: var) {
            window.steps = window.steps.slice(0, -1).concat([
                {
                    step: step,
                    values: values,
                    above: window.lastStep?.above ?? false
                }
            ]);
        }
        function onStudentAsked(number: int) {
            window.watching = number;
        }
        function onJoinAsked() {
            sheet.setSource("screens/JoinSheet.qml", {
                app: window.app
            });
        }
        function onRecordAsked(registration: string, recordId: string) {
            window.go("file");
            window.app.file.registration = registration;
            window.app.file.open(recordId);
        }
        function onPlaceAsked(place: string) {
            window.go(place);
        }
        function onBack() {
            if (window.inWatch)
                window.watching = 0;
            else if (window.wanted === "Conclude")
                window.step = "review";
            else if (window.wanted === "Sign")
                window.app.round.withdraw(qsTr("Taken back before signing."));
            else if (window.wanted === "Record")
                window.app.file.close();
            else if (window.inFile)
                window.steps = window.steps.slice(0, -1);
            else
                window.step = "";
        }
    }
    Connections {
        target: sheet.item
        ignoreUnknownSignals: true
        function onClosed() {
            sheet.source = "";
        }
    }
}
