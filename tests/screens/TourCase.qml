// Every screen, sheet and state that a test can open without another device, one after the other; `look` is called at each.
import QtQuick
import QtTest
import Ambit
import AmbitTest

LookCase {
    id: tour

    function sheet(key, name, close) {
        touch(key);
        see(name);
        at(name);
        touch(close);
        tryVerify(() => seen(name) === null);
    }
    function before() {
        at("screenAircraft");
        sheet("addAircraft", "sheetAddAircraft", "addAircraftCancel");
        touch("followKey");
        see("sheetFollowers");
        at("sheetFollowers");
        touch("followersClose");
        touch("aircraft.OX-DEMO");
        see("screenBegin");
        touch("walk.daily");
        tryVerify(() => Stage.app.comparison.ready, 10000);
        at("screenBegin");
        touch("beginBack");
    }
    function walk() {
        beginRound("OX-DEMO", "daily");
        const round = Stage.app.round;
        at("card go");
        sheet("linkBlocked", "sheetBlocked", "blockedCancel");
        touch("linkMark");
        see("markFigure").aim = Qt.point(round.figure.bounds.x - 3, round.figure.bounds.y + 1);
        touch("markFigure");
        see("markFigure").aim = Qt.point(round.figure.bounds.x - 1.5, round.figure.bounds.y + 3);
        touch("markFigure");
        at("sheetMark");
        touch("markReason.0");
        tryVerify(() => seen("sheetMark") === null);
        touch("keyHere");
        at("card settle");
        verify(round.settleNotInspected("Can't be reached today.", ""));
        verify(Stage.walkTo("fairing.left"));
        at("card with a caution");
        verify(round.settleFinding("Black powder at two rivets.", false, [Stage.photo("fairing-left-1.jpg")], ""));
        compare(Stage.ask("question", "", "Which fuel is in it?"), "");
        compare(Stage.ask("lookAgain", "papers", "From below, too."), "");
        tryVerify(() => seen("askedStrip") !== null);
        at("asked");
        touch("askedStrip");
        see("sheetAsked");
        at("sheetAsked");
        touch("askAnswer.1");
        see("sheetAnswer");
        at("sheetAnswer");
        type("answerWords", "100LL, drained clear.");
        touch("answerDone");
        tryVerify(() => seen("sheetAnswer") === null);
        verify(Stage.walkTo("oil-level"));
        at("card measured");
        touch("valueField");
        see("pad.5");
        touch("pad.9");
        at("figures typed");
        touch("pad.Done");
        touch("keySound"); // out of limits
        see("problemText");
        at("refused");
        touch("problemClose");
        sheet("keyFinding", "sheetFinding", "findingCancel");
        sheet("linkNotInspected", "sheetNotInspected", "notInspectedCancel");
        sheet("linkWhy", "sheetWhy", "whyClose");
        sheet("moreKey", "sheetMore", "moreClose");
        touch("moreKey");
        sheet("noteKey", "sheetNote", "noteCancel");
        touch("linkPhoto");
        see("cameraClose");
        at("camera");
        touch("findingCancel");
        if (seen("figureZoomKey")) {
            touch("figureZoomKey");
            at("closer");
            touch("figureZoomKey");
        }
        touch("pauseKey");
        at("paused");
        touch("resumeKey");
    }
    function end() {
        const round = Stage.app.round;
        touch("moreKey");
        touch("reviewKey");
        see("screenReview");
        at("screenReview");
        sheet("reviewRest", "sheetRest", "notInspectedCancel");
        touch("reviewSettled");
        at("review, all settled");
        sheet("reopen.fairing.left", "sheetReopen", "reopenCancel");
        touch("reviewBack");
        verify(Stage.walkTo(""));
        at("card done");
        touch("keyReview");
        touch("reviewConclude");
        see("screenConclude");
        at("screenConclude");
        touch("concludeNotFit");
        type("concludeReasons", "Not inspected without a basis.");
        at("concluded not fit");
        touch("concludeDone");
        compare(round.phase, "concluded");
        see("screenSign");
        at("screenSign, no key");
        type("newKeyPassphrase", passphrase);
        type("newKeyPassphraseAgain", passphrase);
        touch("newKeyDone");
        at("screenSign");
        type("signPassphrase", passphrase);
        touch("signKey");
        see("screenFile");
    }
    function there(key, screen, back) {
        touch(key);
        see(screen);
        at(screen);
        touch(back);
    }
    function file() {
        isRead();
        at("screenFile");
        touch("record." + Stage.app.signing.recordId);
        see("screenRecord");
        at("screenRecord");
        there("recordCountersign", "screenCountersign", "entryBack");
        touch("recordReplay");
        see("screenFollow");
        touch("nowKey");
        at("screenFollow");
        touch("followBack");
        touch("recordClose");
        touch("discrepancy.fairing.left");
        see("screenDiscrepancy");
        at("screenDiscrepancy");
        touch("deferKey");
        see("screenDefer");
        at("screenDefer");
        touch("entryBack");
        there("rectifyKey", "screenRectify", "entryBack");
        touch("discrepancyBack");
        there("fileRecords", "screenRecords", "recordsBack");
        there("fileSearch", "screenSearch", "searchBack");
        there("fileHistory", "screenHistory", "historyBack");
        there("fileFindings", "screenFindings", "findingsBack");
        there("fileVerify", "screenVerify", "verifyBack");
        there("fileExport", "screenExport", "exportBack");
        there("fileReadCounters", "screenReading", "entryBack");
        there("filePart", "screenPart", "entryBack");
        there("fileHandOver", "screenHandOver", "entryBack");
        there("fileKeys", "screenKeys", "keysBack");
        touch("fileRetention");
        see("screenRetention");
        tryVerify(() => !Stage.app.retention.reading, 5000);
        at("screenRetention");
        touch("retentionBack");
    }
    function wholeTour() {
        tour.wrongs = {};
        before();
        walk();
        end();
        file();
        noneWrong();
    }
}
