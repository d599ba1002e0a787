// The demo round end to end, by touches only: begin, walk, a finding with a photo, one not inspected, a zone out of turn, a pause, review,
// conclusion, signature, and the record in the file.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    readonly property var values: ({
            "oil-level": "5.2",
            "belt-play": "9",
            "skid-shoe.left": "5.6",
            "skid-shoe.right": "5.1",
            "tail-play": "2.4"
        })

    name: "DemoRound"

    /// Follows the card until the condition holds; does something else at the points named in `special`.
    function until(condition, special) {
        for (let i = 0; i < 400 && !condition(); ++i) {
            const action = special[Stage.app.round.pointId];
            if (action)
                action();
            else
                follow(test.values);
        }
        verify(condition());
    }
    function findSomething() {
        verify(Stage.app.round.cautions.includes("Marked tread only. Three points of contact."));
        touch("keyFinding");
        see("sheetFinding");
        type("findingWords", "Black powder at two rivets.");
        if (seen("classAssess"))
            touch("classAssess");
        const dialog = findAsking(main.contentItem);
        dialog.answer = [Stage.photo("fairing-left-1.jpg")];
        touch("findingPhotoAdd");
        type("findingPhotoUrl", Stage.photo("fairing-left-2.jpg").toString().substring(7));
        touch("findingPhotoUrlAdd");
        touch("findingDone");
        tryVerify(() => seen("sheetFinding") === null);
        compare(Stage.app.round.findingCount, 1);
    }
    function findAsking(item) {
        if (item.objectName === "asking.photos")
            return item;
        for (const child of Array.from(item.children)) {
            const found = findAsking(child);
            if (found)
                return found;
        }
        return null;
    }
    function notInspected() {
        touch("linkNotInspected");
        see("sheetNotInspected");
        touch("notInspectedReason.0");
        type("notInspectedBasis", "Day flight only.");
        touch("notInspectedDone");
        tryVerify(() => seen("sheetNotInspected") === null);
    }
    function outOfTurn() {
        const before = Stage.app.round.targetStandId;
        touch("zone.tail-rotor");
        verify(Stage.events.includes("planned"));
        verify(Stage.app.round.targetStandId !== before);
    }
    function pauseAndGoOn() {
        touch("pauseKey");
        compare(Stage.app.round.phase, "paused");
        Stage.advance(600);
        touch("resumeKey");
        compare(Stage.app.round.phase, "walking");
        see("sheetInterrupted");
        touch("interruptedDone");
        tryVerify(() => seen("sheetInterrupted") === null);
    }
    function sign() {
        see("screenSign");
        type("newKeyName", "Robin Example");
        type("newKeyPassphrase", "round and round");
        verify(!see("newKeyDone").enabled);
        type("newKeyPassphraseAgain", "round and round");
        touch("newKeyDone");
        type("signPassphrase", "round and round");
        touch("signKey");
        tryVerify(() => Stage.app.signing.recordId !== "", 5000);
    }
    function readRecord() {
        see("screenFile");
        touch("record." + Stage.app.signing.recordId);
        see("screenRecord");
        verify(Stage.app.file.record.verified);
        verify(see("recordVerified").text !== "");
        compare(seen("recordNotVerified"), null);
        touch("recordPoints");
        type("exportFolder", Stage.outFolder);
        touch("exportKey");
        verify(see("exportedText").text.includes("record.pdf"));
        touch("recordClose");
        see("screenFile");
    }
    function test_round_data() {
        return [
            {
                tag: "phone",
                width: 390,
                height: 844
            },
            {
                tag: "tablet",
                width: 1180,
                height: 820
            }
        ];
    }
    function test_round(data) {
        open(data.width, data.height);
        beginRound("OX-DEMO", "daily");
        const round = Stage.app.round;
        const special = {
            "lamps": notInspected,
            "fairing.left": findSomething
        };
        until(() => round.settledCount === 2, special);
        pauseAndGoOn();
        until(() => round.cardKind === "go", special);
        outOfTurn();
        until(() => round.cardKind === "done", special);
        touch("keyReview");
        see("screenReview");
        see("review.fairing.left");
        see("review.lamps");
        touch("reviewConclude");
        see("screenConclude");
        verify(!see("concludeDone").enabled);
        touch("concludeFit");
        type("concludeReasons", "Mechanic told; firm under the thumb.");
        touch("concludeDone");
        sign();
        readRecord();
        touch("placeWalk");
        see("screenAircraft");
        verify(Stage.app.round === null);
    }
}
