// Every screen and sheet, phone and tablet, upright and on its side: it loads without a warning, each control has a name and is large
// enough for gloves, nothing is written too small, and the broad keys lie within the window.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "Screens"

    function sheet(key, name, close) {
        touch(key);
        see(name);
        check();
        touch(close);
        tryVerify(() => seen(name) === null);
    }
    function test_each_data() {
        return sizes;
    }
    function test_each(data) {
        open(data.width, data.height);
        see("screenAircraft");
        check();
        sheet("addAircraft", "sheetAddAircraft", "addAircraftCancel");
        touch("aircraft.OX-DEMO");
        see("screenBegin");
        check();
        touch("beginBack");
        beginRound("OX-DEMO", "daily");
        check();
        verify(Stage.walkTo("oil-level"));
        check();
        touch("valueField");
        see("pad.5");
        check();
        touch("pad.5");
        touch("pad..");
        touch("pad.2");
        compare(see("valueField").text, "5.2");
        touch("pad.Done");
        sheet("keyFinding", "sheetFinding", "findingCancel");
        sheet("linkNotInspected", "sheetNotInspected", "notInspectedCancel");
        sheet("linkWhy", "sheetWhy", "whyClose");
        sheet("moreKey", "sheetMore", "moreClose");
        touch("moreKey");
        sheet("noteKey", "sheetNote", "noteCancel");
        touch("pauseKey");
        check();
        touch("resumeKey");
        touch("moreKey");
        touch("reviewKey");
        see("screenReview");
        check();
        sheet("reviewRest", "sheetRest", "notInspectedCancel");
        touch("reviewSettled");
        check();
        sheet("reopen.papers", "sheetReopen", "reopenCancel");
        touch("reviewBack");
        verify(Stage.walkTo(""));
        check();
        touch("keyReview");
        touch("reviewConclude");
        see("screenConclude");
        check();
        touch("concludeFit");
        touch("concludeDone");
        see("screenSign");
        check();
        touch("withdrawKey");
        see("screenReview");
        touch("reviewConclude");
        touch("concludeNotFit");
        type("concludeReasons", "Test.");
        touch("concludeDone");
        type("newKeyPassphrase", "round and round");
        type("newKeyPassphraseAgain", "round and round");
        touch("newKeyDone");
        check();
        type("signPassphrase", "wrong");
        touch("signKey");
        see("problemText");
        touch("problemClose");
        type("signPassphrase", "round and round");
        touch("signKey");
        see("screenFile");
        check();
        touch("record." + Stage.app.signing.recordId);
        see("screenRecord");
        check();
    }
    function test_night() {
        open(390, 844);
        touch("nightKey");
        verify(Theme.night);
        beginRound("OX-WING", "daily");
        check();
        touch("moreKey");
        touch("nightKey");
        verify(!Theme.night);
    }
    function test_largestText_data() {
        return sizes;
    }
    function test_largestText(data) {
        open(data.width, data.height);
        for (let i = 0; i < 4; ++i) {
            touch("textSizeKey");
            frame();
        }
        compare(Theme.scale, 2);
        beginRound("OX-DEMO", "daily");
        check();
        verify(Stage.walkTo("fairing.left"));
        check();
        for (const item of all(main.contentItem, one => one.truncated === true, []))
            fail("cut off: " + path(item));
        touch("keyFinding");
        check();
    }
    function test_cameraSaysSo() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo("papers"));
        touch("keyFinding");
        touch("findingCamera");
        see("cameraClose");
        verify(!seen("cameraTake") || !seen("cameraTake").enabled);
        touch("cameraClose");
        touch("findingCancel");
    }
}
