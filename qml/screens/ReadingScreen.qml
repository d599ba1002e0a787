// What the counters say today.
import QtQuick
import Ambit

Page {
    id: screen

    required property App app

    function sign() {
        if (screen.app.entries.readCounters({
            counters: counters.values
        }, signature.signature))
            screen.back();
    }

    objectName: "screenReading"
    title: qsTr("Read counters")
    subtitle: app.aircraftFile.registration
    backText: qsTr("Back")
    backName: "entryBack"
    keys: SignKeys {
        width: parent.width
        fields: signature
        onSignAsked: screen.sign()
    }

    CounterFields {
        id: counters
        width: parent.width
        its: screen.app.aircraftFile
    }
    SignatureFields {
        id: signature
        width: parent.width
        app: screen.app
        onAccepted: screen.sign()
    }
}
