// A test of the file's screens: rounds walked and signed quickly, the file opened and read, an entry signed.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: fileCase

    readonly property string passphrase: "round and round"
    readonly property var finding: ({
            point: "fairing.left",
            words: "Black powder at two rivets.",
            grounds: false
        })

    /// A whole round that found this, signed; then so many days go by.
    function pastRound(found, days) {
        const app = Stage.app;
        verify(app.begin("OX-DEMO", "daily", "Robin Example", "pilot", "DEMO-PPL-0001", {
            "airframe-hours": "1284.6"
        }), app.problem);
        for (const one of found) {
            verify(Stage.walkTo(one.point));
            verify(app.round.settleFinding(one.words, one.grounds, {}, ""), app.problem);
        }
        verify(Stage.walkTo(""));
        verify(app.round.conclude(!found.some(one => one.grounds), "As found."), app.problem);
        if (!app.signing.keyExists)
            verify(app.signing.newKey("Robin Example", passphrase));
        verify(app.signing.sign(passphrase), app.problem);
        app.leaveRound();
        Stage.advance(days * 86400);
    }
    function openFile() {
        touch("placeFile");
        touch("fileAircraft.OX-DEMO");
        see("screenFile");
        isRead();
    }
    function isRead() {
        tryVerify(() => Stage.app.aircraftFile.known && !Stage.app.aircraftFile.reading, 5000, "the file is read");
    }
    function sign() {
        type("signCertificate", "DEMO-0001");
        type("signPassphrase", passphrase);
        Stage.advance(60); // what is signed now is the newest
        touch("entrySign");
        compare(Stage.app.problem, "");
        isRead();
    }
}
