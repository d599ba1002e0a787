// Two walks of the same aircraft: one on one's own, then both side by side.
import QtQuick
import QtTest
import Ambit
import AmbitTest

FileCase {
    id: test

    name: "Beside"

    readonly property string words: "Black powder at two rivets."

    /// A whole round, signed by who walked it. Gives its record.
    function walked(name, alone, finding) {
        const app = Stage.app;
        verify(app.begin("OX-DEMO", "daily", name, "pilot", "", {}, alone), app.problem);
        compare(app.round.alone, alone);
        if (finding) {
            verify(Stage.walkTo("fairing.left"));
            verify(app.round.settleFinding(words, false, [], ""), app.problem);
        }
        verify(Stage.walkTo(""));
        verify(app.round.conclude(true, "As found."), app.problem);
        if (app.signing.keyOf(name) === "")
            verify(app.signing.newKey(name, passphrase), app.problem);
        verify(app.signing.sign(passphrase, app.signing.keyOf(name)), app.problem);
        const record = app.signing.recordId;
        app.leaveRound();
        Stage.advance(600);
        return record;
    }
    /// On the Begin screen, by touches; up to the fairing.
    function begun(name, alone) {
        touch("aircraft.OX-DEMO");
        see("screenBegin");
        isRead();
        touch("walk.daily");
        tryVerify(() => seen("carriedCount") !== null);
        if (alone) {
            touch("beginAlone");
            verify(see("beginAlone").chosen);
            tryVerify(() => seen("carriedCount") === null);
        }
        check();
        type("beginName", name);
        touch("beginKey");
        see("screenWalk");
        isRead();
        verify(Stage.walkTo("fairing.left"));
        return Stage.app.round;
    }

    function test_onOnesOwnNothingOfOthersIsShown() {
        open(390, 844);
        walked("Robin Example", false, true);
        let round = begun("Ines Example", true);
        compare(Stage.events[1], "alone");
        wait(300);
        compare(round.carriedText, "");
        compare(round.lastTime, "");
        // Left and taken up again it is the same.
        const id = round.roundId;
        Stage.app.leaveRound();
        verify(Stage.app.resume(id));
        round = Stage.app.round;
        verify(round.alone);
        verify(Stage.walkTo("fairing.left"));
        wait(300);
        compare(round.carriedText, "");
        compare(round.lastTime, "");
        Stage.app.leaveRound();
        // The next day it is no news any more.
        Stage.advance(86400);
        verify(Stage.app.begin("OX-DEMO", "daily", "Ines Example", "pilot", "", {}, true));
        isRead();
        verify(Stage.walkTo("fairing.left"));
        tryVerify(() => Stage.app.round.carriedText.includes(words));
        verify(Stage.app.round.lastTime.includes(words));
    }

    function test_otherwiseItIsShown() {
        open(390, 844);
        walked("Robin Example", false, true);
        const round = begun("Ines Example", false);
        tryVerify(() => round.carriedText.includes(words), 5000, "carried: " + round.carriedText);
        verify(round.lastTime.includes(words), round.lastTime);
        verify(!Stage.events.includes("alone"));
    }

    /// What one found oneself is no secret.
    function test_onesOwnIsShown() {
        open(390, 844);
        walked("Robin Example", false, true);
        const round = begun("Robin Example", true);
        tryVerify(() => round.carriedText.includes(words));
        verify(round.lastTime.includes(words));
    }

    function test_sideBySide_data() {
        return sizes;
    }
    function test_sideBySide(data) {
        open(data.width, data.height);
        const first = walked("Robin Example", false, true);
        openFile();
        touch("record." + first);
        touch("recordBeside");
        see("screenBeside");
        see("besideNone");
        check();
        touch("besideBack");
        see("screenRecord");
        touch("recordClose");
        touch("placeWalk");
        const second = walked("Ines Example", true, false);
        openFile();
        touch("record." + second);
        touch("recordBeside");
        see("screenBeside");
        check();
        touch("besideWith." + first);
        const its = Stage.app.beside;
        tryVerify(() => its.laid);
        compare(Stage.app.problem, "");
        compare(its.differing.length, 1);
        compare(its.differing[0].id, "fairing.left");
        compare(its.single.length, 0);
        compare(its.first.alone, true);
        compare(its.second.alone, false);
        verify(its.differing[0].secondText.includes(words), its.differing[0].secondText);
        see("beside.fairing.left");
        verify(see("besideKappa").text.startsWith("Cohen's kappa "), see("besideKappa").text);
        check();
        touch("besideBack");
        see("screenRecord");
    }
}
