// What the tour has no room for: hands and portions, measuring in a photo, an aircraft with a life behind it. Words are long, rows are many.
import QtQuick
import QtTest
import Ambit
import AmbitTest

TourCase {
    id: further

    readonly property string shoe: "skid-shoe.left"
    readonly property string walker: "Friederike Musterfrau-Langenfeld"
    readonly property string other: "Maximilian Beispiel von Hohenmuster"
    readonly property var longWords: ["Schwarzer Abrieb an zwei Nieten der Verkleidung, seit der letzten Kontrolle deutlich mehr; mit dem Fingernagel fühlbar.", "Haarriss an der Schweißnaht des hinteren Querrohrs, etwa 12 mm lang, endet unter dem Lack."]

    /// A whole round, signed: {point: words} or {point: [words, grounds]}; measured values lie a little lower each time.
    function lived(who, found, values, hours, days, alone = false) {
        const app = Stage.app;
        verify(app.begin("OX-DEMO", "daily", who, "pilot", "DEMO-PPL-0001", {
            "airframe-hours": hours
        }, alone), app.problem);
        const left = Object.keys(values).concat(Object.keys(found));
        while (left.length > 0) {
            verify(stepTo(left), left.join());
            const point = left.splice(left.indexOf(app.round.pointId), 1)[0];
            if (found[point])
                verify(app.round.settleFinding(found[point], point !== "fairing.left", point === "fairing.left" ? [Stage.photo("fairing-left-1.jpg"), Stage.photo("fairing-left-2.jpg")] : [], ""), app.problem);
            else
                verify(app.round.settleSound(values[point]), app.problem);
        }
        verify(Stage.walkTo(""));
        verify(app.round.conclude(Object.keys(found).length === 0, "Wie vorgefunden; die Nieten sind fest, der Mechaniker weiß Bescheid."), app.problem);
        if (app.signing.keyOf(who) === "")
            verify(app.signing.newKey(who, passphrase), app.problem);
        verify(app.signing.sign(passphrase, app.signing.keyOf(who)), app.problem);
        const record = app.signing.recordId;
        app.leaveRound();
        Stage.advance(days * 86400);
        return record;
    }
    /// Up to whichever comes first.
    function stepTo(points) {
        const round = Stage.app.round;
        while (round.cardKind !== "done") {
            if (points.includes(round.pointId))
                return true;
            if (!Stage.walkOn())
                return false;
        }
        return false;
    }
    function gone(name) {
        tryVerify(() => seen(name) === null, 2000, "gone: " + name);
    }
    function opened(name) {
        see(name);
        at(name);
    }

    // --- hands ----------------------------------------------------------------------------------------------------------
    function fewHands() {
        Stage.app.habits.keys = true;
        Stage.app.habits.portions = true;
        beginRound("OX-DEMO", "daily");
        const round = Stage.app.round;
        touch("moreKey");
        touch("habitsKey");
        opened("sheetHabits");
        touch("habitsClose");
        gone("sheetHabits");
        Stage.advance(60);
        touch("keyHere");
        for (let i = 0; i < 3; ++i) {
            touch("keySound");
            wait(0);
        }
        see("quickStrip");
        at("settled quickly");
        touch("quickAgain");
        gone("quickStrip");
        verify(Stage.walkTo("hinge-bolt.a"));
        see("keyClimb");
        at("hands, before the climb");
        touch("keyClimb");
        see("keyDown");
        at("hands, up there");
        touch("keyDown");
        see("askingText");
        at("card, down again");
        verify(Stage.walkTo("fuel-cap-open"));
        see("handsCard");
        at("hands, one key");
        const point = round.pointId;
        keyPress(Qt.Key_PageDown);
        tryCompare(round, "findingCount", 1, 3000);
        keyRelease(Qt.Key_PageDown);
        at("hands, told by key");
        touch("touchInstead");
        gone("handsCard");
        while (round.cardKind !== "go")
            follow({});
        at("card go, a finding without words");
        touch("inWords." + point);
        type("inWordsText", "Dichtung der Tankverschlusskappe gerissen.");
        at("sheetInWords");
        touch("inWordsDone");
        gone("sheetInWords");
        touch("linkBlocked");
        see("sheetBlocked");
        touch("blockedReason.1");
        gone("sheetBlocked");
        at("card go, moved");
        touch("moreKey");
        see("sheetMore");
        touch("lightKey");
        gone("sheetMore");
        touch("moreKey");
        see("sheetMore");
        at("sheetMore, differs");
        touch("standFree." + round.blockedStands[0].id);
        tryVerify(() => round.blockedStands.length === 0);
        touch("lightKey");
        gone("sheetMore");
        touch("pauseKey");
        Stage.advance(600);
        touch("resumeKey");
        opened("sheetInterrupted");
        touch("interruptedDone");
        gone("sheetInterrupted");
        Stage.advance(300);
        Stage.app.conditions.tick();
        see("sheetInterrupted");
        at("sheetInterrupted, nobody there");
        touch("interruptedDone");
        tryVerify(() => Stage.app.conditions.interruptedText !== "");
        touch("interruptedDone");
        gone("sheetInterrupted");
        Stage.app.habits.keys = false;
        Stage.app.habits.portions = false;
        Stage.app.leaveRound();
        see("screenAircraft");
        at("screenAircraft, a round is open");
    }

    // --- measuring ------------------------------------------------------------------------------------------------------
    function bringTo(x, y) {
        const glass = see("measureGlass");
        frame();
        for (let i = 0; i < 12; ++i) {
            const is = glass.onScreen(x, y);
            const dx = Math.max(-80, Math.min(80, glass.width / 2 - is.x));
            const dy = Math.max(-60, Math.min(60, glass.height / 2 - is.y));
            if (Math.abs(dx) < 0.5 && Math.abs(dy) < 0.5)
                return;
            mousePress(glass, glass.width / 2, glass.height / 2);
            mouseMove(glass, glass.width / 2 + dx, glass.height / 2 + dy);
            mouseRelease(glass, glass.width / 2 + dx, glass.height / 2 + dy);
        }
    }
    function mark(x, y, what = "") {
        const glass = see("measureGlass");
        bringIntoView(glass, Qt.point(glass.width / 2, glass.height / 2));
        frame();
        const place = glass.onScreen(x, y);
        mouseClick(glass, place.x, place.y);
        tryVerify(() => Stage.app.measure.held >= 0);
        bringTo(x, y);
        if (what !== "")
            at(what);
        touch("measureHere");
    }
    function begins(who, values) {
        verify(Stage.app.begin("OX-DEMO", "daily", who, "pilot", "DEMO-PPL-0001", values), Stage.app.problem);
        see("screenWalk");
    }
    function toTheShoe() {
        verify(Stage.walkTo(shoe), Stage.app.problem + Stage.app.round.cardKind + Stage.app.round.pointId);
        frame();
    }
    function measured() {
        see("sheetMeasure");
        type("measurePhotoUrl", Stage.cardPhoto());
        touch("measurePhotoUrlAdd");
        tryCompare(Stage.app.measure, "phase", "photo", 10000);
    }
    function corners() {
        touch("measureBegin");
        for (let i = 0; i < 4; ++i)
            touch("measureHere");
    }
    function inAPhoto() {
        begins(walker, {
            "airframe-hours": "1300"
        });
        toTheShoe();
        tryVerify(() => Stage.app.round.trendTexts.length > 0, 5000);
        at("card measured, trend");
        touch("measurePhoto");
        see("sheetMeasure");
        at("measure, nothing yet");
        measured();
        at("measure, a photo");
        touch("measureBegin");
        at("measure, a corner");
        for (let i = 0; i < 4; ++i)
            touch("measureHere");
        at("measure, corners");
        touch("measureCornersRight");
        at("measure, no marks yet");
        mark(1300, 700, "measure, a mark");
        mark(1500, 700);
        at("measure, result");
        touch("measureKeep");
        tryVerify(() => see("valueField").text !== "");
        at("card measured, kept");
        touch("keySound");
        compare(Stage.app.problem, "");
        verify(Stage.walkTo(""));
        verify(Stage.app.round.conclude(false, "Das Spiel der Heckrotorblätter nimmt zu."), Stage.app.problem);
        verify(Stage.app.signing.sign(passphrase, Stage.app.signing.keyOf(walker)), Stage.app.problem);
        Stage.app.leaveRound();
        Stage.advance(3 * 86400);
        frame();
        begins(walker, {});
        frame();
        verify(Stage.walkTo("fairing.left"), Stage.app.problem + Stage.app.round.cardKind + Stage.app.round.pointId);
        at("card carried");
        touch("keyFinding");
        see("sheetFinding");
        type("findingPhotoUrl", Stage.photo("fairing-left-2.jpg").toString());
        touch("findingPhotoUrlAdd");
        wait(300);
        at("sheetFinding, a photo");
        touch("findingCancel");
        gone("sheetFinding");
        toTheShoe();
        touch("measurePhoto");
        tryVerify(() => Stage.app.measure.lastText !== "", 5000);
        tryVerify(() => see("measureLastPhoto").status === Image.Ready);
        at("measure, the last photo");
        measured();
        corners();
        touch("measureCornersRight");
        mark(1300, 700);
        mark(1500, 700);
        touch("measureBlink");
        at("measure, then");
        touch("measureBlink");
        touch("measureCancel");
        Stage.app.leaveRound();
        see("screenAircraft");
    }

    // --- the file of an aircraft that has lived -------------------------------------------------------------------------
    function life() {
        const values = ["4.6", "4.5", "4.3", "4.2", "4.0"];
        for (let i = 0; i < values.length; ++i) {
            const found = {};
            if (i > 0)
                found["fairing.left"] = longWords[0];
            if (i > 2)
                found["tail-control"] = longWords[1];
            const sound = {};
            sound[shoe] = values[i];
            lived(i % 2 ? other : walker, found, sound, String(1284 + 2 * i), 2);
        }
    }
    /// A part of its name that a test's keys can type.
    function partOf(point: string): string {
        const name = Array.from(Stage.app.aircraftFile.points).find(one => one.id === point).name;
        return name.match(/[A-Za-z]+/g).reduce((longest, part) => part.length > longest.length ? part : longest);
    }
    function wholeFile() {
        openFile();
        at("file of a life");
        if (seen("fileAllDue")) {
            touch("fileAllDue");
            at("file, all due");
        }
        touch("fileHistory");
        see("screenHistory");
        type("historyName", partOf(shoe));
        at("history, named");
        type("historyName", "");
        touch("historyPoint." + shoe);
        tryVerify(() => Stage.app.trend.there, 5000);
        frame();
        at("history, a trend");
        frame();
        touch("historyRenewed");
        see("screenRenewed");
        touch("renewedValue." + Stage.app.pointHistory.values[0].recordId);
        frame();
        at("renewed, told afterwards");
        touch("entryBack");
        see("screenHistory");
        touch("historyOther");
        see("historyName");
        type("historyName", partOf("fairing.left"));
        frame();
        touch("historyPoint.fairing.left");
        tryVerify(() => Stage.app.pointHistory.sightings.count > 3, 5000);
        at("history, sightings");
        touch("historyBack");
        touch("fileSearch");
        touch("searchMoreFields");
        frame();
        at("search, all fields");
        type("searchWords", "Nieten");
        touch("searchKey");
        tryVerify(() => Stage.app.search.hits.count > 0, 5000);
        at("search, hits");
        touch("searchAgain");
        type("searchWords", "Tragschrauber");
        touch("searchKey");
        tryVerify(() => Stage.app.search.hits.count === 0, 5000);
        at("search, nothing");
        touch("searchBack");
        touch("fileFindings");
        see("screenFindings");
        at("findings");
        touch("foundZone.mast-left");
        see("found.0");
        at("findings, a zone");
        touch("findingsDays.30");
        touch("findingsBack");
        touch("fileVerify");
        tryVerify(() => Stage.app.verification.done, 10000);
        at("verified");
        touch("verifyBack");
        touch("fileRecords");
        see("screenRecords");
        at("records, many");
        touch("recordsBack");
        touch("filePart");
        see("screenPart");
        touch("partElsewhere");
        touch("on.askRun");
        touch("off.askRun");
        at("part, elsewhere");
        touch("entryBack");
        touch("fileWork");
        opened("screenRectify");
        touch("entryBack");
    }
    function aDiscrepancy() {
        touch("discrepancy.fairing.left");
        see("screenDiscrepancy");
        at("discrepancy, seen often");
        touch("groundKey");
        opened("screenGround");
        touch("entryBack");
        see("screenDiscrepancy");
        frame();
        touch("deferKey");
        see("screenDefer");
        touch("basis.0");
        frame();
        at("defer, a question");
        touch("answerNo");
        touch("answerYes");
        see("deferRuledOut");
        at("defer, ruled out");
        touch("answerAgain");
        for (const answer of ["answerNo", "answerNo", "answerNo", "answerYes", "answerYes"])
            touch(answer);
        type("deferWords", "Die Nieten sind fest, der Abrieb ist trocken.");
        type("deferPlacard", "Verkleidung vor jedem Flug ansehen");
        touch("untilIn.30");
        type("deferBy", other);
        at("defer, in words");
        touch("signKeyOf." + walker);
        sign();
        see("screenDiscrepancy");
        at("discrepancy, deferred");
        touch("rectifyKey");
        see("screenRectify");
        type("workDescription", "Nieten ersetzt, Verkleidung nachgearbeitet.");
        type("workCertificateKind", "mechanic, airframe");
        type("counter.airframe-hours", "1310.0");
        at("rectify, written");
        touch("signKeyOf." + walker);
        sign();
        at("discrepancy, put right");
        touch("discrepancyBack");
        see("screenFile");
    }
    function keysAndRetention() {
        touch("fileKeys");
        see("screenKeys");
        at("keys, nobody trusted");
        const key = Stage.app.signing.keys[0].id;
        touch("trust." + key);
        opened("screenTrust");
        touch("trustRole.pilot");
        touch("signKeyOf." + walker);
        sign();
        see("screenKeys");
        at("keys, one trusted");
        touch("keysOther");
        see("screenTrust");
        at("trust, a key from elsewhere");
        touch("entryBack");
        touch("revoke." + key);
        opened("screenRevoke");
        touch("entryBack");
        touch("keysBack");
        touch("fileRetention");
        see("screenRetention");
        tryVerify(() => !Stage.app.retention.reading, 5000);
        touch("retentionStaying");
        frame();
        touch("mustStay.each.0");
        frame();
        at("retention, all rows");
        const all = Array.from({
            length: Stage.app.file.records.count
        }, (_, i) => Stage.app.file.records.get(i).recordId);
        touch("mustStay." + all.find(id => seen("mustStay." + id) && seen("mustStay." + id).enabled));
        touch("retentionGoOn");
        opened("screenRemove");
        touch("entrySign");
        frame();
        at("remove, asked");
        touch("removeKeep");
        frame();
        touch("entryBack");
        touch("retentionBack");
    }
    function recordOf(one) {
        touch("fileRecords");
        see("screenRecords");
        touch("record." + one);
        see("screenRecord");
        at("record with findings");
        touch("recordPoints");
        frame();
        at("record, all points");
        touch("recordTimeline");
        frame();
        at("record, whole round");
        touch("recordBeside");
        see("screenBeside");
        at("beside, which");
        const others = all(see("screenBeside"), item => item.objectName.startsWith("besideWith."), []);
        verify(others.length > 0);
        touch(others[others.length - 1].objectName);
        tryVerify(() => Stage.app.beside.laid, 5000);
        frame();
        at("beside, laid");
        touch("besideBack");
        touch("recordReplay");
        see("screenFollow");
        at("replay, begin");
        touch("playKey");
        touch("speedKey");
        touch("playKey");
        touch("nowKey");
        at("replay, end");
        touch("followBack");
        touch("recordClose");
        touch("recordsBack");
    }
    /// Back to the begin of a round, with what the aircraft carries.
    function beginCarrying() {
        touch("placeWalk");
        touch("aircraft.OX-DEMO");
        see("screenBegin");
        isRead();
        touch("walk.daily");
        tryVerify(() => seen("carriedCount") !== null);
        at("begin, carried");
        touch("beginBack");
    }
    function furtherTour() {
        further.wrongs = {};
        fewHands();
        life();
        Stage.app.leaveRound();
        const twice = [lived(walker, {
                "fairing.left": longWords[0]
            }, {}, "1296", 0), lived(other, {
                "tail-control": longWords[1]
            }, {}, "1296", 1, true)];
        inAPhoto();
        beginCarrying();
        wholeFile();
        recordOf(twice[1]);
        aDiscrepancy();
        keysAndRetention();
        noneWrong();
    }
}
