// Every screen, sheet and state that a test can open without a network, one after the other; `look` is called at each.
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
        sheet("linkPhoto", "sheetMeasure", "measureCancel");
        touch("keyFinding");
        touch("findingCamera");
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
    /// Somebody else's walk: the one that was walked here, told again as another device's.
    function watch() {
        touch("placeWatch");
        see("screenWatch");
        at("screenWatch, closed");
        type("signPassphrase", passphrase);
        touch("watchStart");
        see("watchNobody");
        at("screenWatch, nobody");
        touch("watchJoin");
        see("sheetJoin");
        at("sheetJoin");
        type("joinCode", Stage.codeToFollow());
        at("sheetJoin, typed");
        touch("joinDone");
        tryVerify(() => seen("sheetJoin") === null);
        at("screenWatch, on the way");
        const events = Stage.events;
        const found = events.indexOf("settled", events.indexOf("asked"));
        verify(Stage.hear(1, "Robin Example", found + 1));
        see("student.Robin Example");
        at("screenWatch, one walks");
        touch("student.Robin Example");
        see("screenFollow");
        at("screenFollow, live");
        touch("sayKey");
        see("sheetSay");
        at("sheetSay");
        touch("sayWhere");
        at("sheetSay, where");
        touch("sayPoint.papers");
        type("sayWords", "From below, too.");
        at("sheetSay, in words");
        touch("sayAgain");
        tryVerify(() => seen("sheetSay") === null);
        at("screenFollow, said");
        Stage.lose(1);
        at("screenFollow, no connection");
        touch("followBack");
        see("screenWatch");
        verify(Stage.hear(1, "Robin Example", events.length));
        verify(Stage.hearRecord(1));
        at("screenWatch, signed");
        touch("student.Robin Example");
        see("followRecord");
        at("screenFollow, signed");
        touch("followBack");
        touch("watchStop");
        touch("placeWalk");
        see("screenAircraft");
    }
    /// Others follow this one's walk.
    function share() {
        touch("followKey");
        see("followStart");
        at("sheetFollowers, a key is there");
        type("signPassphrase", passphrase);
        touch("followStart");
        see("followInvite");
        at("sheetFollowers, nobody");
        touch("followInvite");
        see("followCode");
        at("sheetFollowers, a code");
        Stage.refuse("192.168.43.9:40112 Mo Sample", "This isn't the invitation's word.");
        see("followRefused");
        at("sheetFollowers, one not let in");
        verify(Stage.follow("Kim Example"));
        tryVerify(() => Stage.app.sharing.watching.length === 1);
        const kim = Stage.app.sharing.watching[0].id;
        frame(); // the code is gone, and the rows have their places
        touch("takeBack." + kim);
        see("takeBackNow." + kim);
        at("sheetFollowers, one is taken back");
        touch("takeBackKeep." + kim);
        touch("followersClose");
        tryVerify(() => seen("sheetFollowers") === null);
        beginRound("OX-DEMO", "daily");
        see("watchingText");
        at("card followed");
    }
    function wholeTour() {
        tour.wrongs = {};
        before();
        walk();
        end();
        file();
        watch();
        share();
        noneWrong();
    }
}
