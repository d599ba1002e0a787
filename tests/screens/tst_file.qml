// The file by touches: what stands against fit and what is open, a deferral with its questions, work done, what the next round shows first,
// and the ways further in.
import QtQuick
import QtTest
import Ambit
import AmbitTest

FileCase {
    id: test

    name: "File"

    function openDiscrepancy() {
        touch("discrepancy.fairing.left");
        see("screenDiscrepancy");
        frame();
    }
    function answerAll() {
        for (const answer of ["answerNo", "answerNo", "answerNo", "answerNo", "answerYes", "answerYes"])
            touch(answer);
    }
    function defer() {
        openDiscrepancy();
        see("screenDiscrepancy");
        touch("deferKey");
        see("screenDefer");
        touch("basis.0");
        frame();
        answerAll();
        type("deferWords", "Rivets are firm.");
        type("deferPlacard", "Look at the fairing");
        touch("untilIn.30");
        type("deferBy", "Kim Example");
        sign();
        see("screenDiscrepancy");
    }

    function test_nothingYet() {
        open(390, 844);
        openFile();
        see("fileNothingAgainst");
        see("due.annual");
        verify(!seen("fileRecords"));
    }
    function test_whatIsWrong() {
        open(390, 844);
        pastRound([finding], 3);
        openFile();
        verify(see("against.0").texts[0].includes("was not assessed"));
        verify(!see("against.0").warns); // for a person to judge
        const row = see("discrepancy.fairing.left");
        compare(row.note, "Not assessed yet");
        compare(row.about, "Black powder at two rivets.");
        verify(row.small.startsWith("Found 3 days ago by Robin Example"));
        compare(Stage.app.file.lastRounds.count, 1);
        touch("fileRecords");
        see("screenRecords");
        touch("recordsBack");
        see("screenFile");
    }
    function test_wholeFile() {
        open(390, 844);
        pastRound([finding], 3);
        openFile();
        touch("fileExport");
        see("screenExport");
        touch("exportWhole"); // no folder yet
        verify(Stage.app.problem.includes("No folder"));
        Stage.app.clearProblem();
        type("exportWholeFolder", Stage.outFolder);
        touch("exportWhole");
        tryVerify(() => Stage.app.exporting.written !== "", 5000, "it is written");
        compare(Stage.app.problem, "");
        verify(Stage.app.exporting.words.startsWith("1 records, 1 PDFs"));
        touch("exportBack");
        see("screenFile");
    }
    function test_deferral() {
        open(390, 844);
        pastRound([finding], 3);
        openFile();
        openDiscrepancy();
        touch("deferKey");
        touch("basis.0");
        frame();
        touch("answerNo");
        touch("answerYes"); // the equipment list asks for it
        verify(see("deferRuledOut").texts[0].includes("can't be deferred"));
        verify(!seen("answerYes"));
        verify(!seen("deferPlacard"));
        touch("answerAgain");
        compare(see("deferQuestionNumber").text, "Question 2 of 6");
        touch("entryBack");
        touch("discrepancyBack");
        defer();
        compare(Stage.app.aircraftFile.discrepancy.state, "deferred");
        see("life.1");
        touch("discrepancyBack");
        see("fileNothingAgainst");
        verify(see("discrepancy.fairing.left").note.startsWith("Deferred on 14 CFR 91.213(d) until 2026-07-23"));

        // The next round comes by it and asks.
        Stage.advance(2 * 86400);
        touch("placeWalk");
        touch("aircraft.OX-DEMO");
        isRead();
        see("carried.fairing.left");
        touch("beginBack");
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo("fairing.left"));
        tryVerify(() => Stage.app.round.carriedText.endsWith("\nDeferred 2 days ago on 14 CFR 91.213(d), placard Look at the fairing, until 2026-07-23: has it grown?"), 2000, Stage.app.round.carriedText);
        see("carriedText");
        for (let row = 0; row < Stage.app.round.here.count; ++row)
            if (Stage.app.round.here.get(row).pointId === "fairing.left")
                compare(Stage.app.round.here.get(row).carried, "deferred");
    }
    function test_putRight() {
        open(390, 844);
        pastRound([finding], 3);
        openFile();
        openDiscrepancy();
        touch("rectifyKey");
        see("screenRectify");
        type("workDescription", "Rivets replaced.");
        touch("entrySign");
        verify(see("problemText").text.includes("certificate")); // nothing is kept without
        touch("problemClose");
        type("workCertificateKind", "mechanic, airframe");
        type("counter.airframe-hours", "1285.0");
        sign();
        compare(Stage.app.aircraftFile.discrepancy.state, "rectified");
        verify(!seen("deferKey"));
        touch("discrepancyBack");
        see("fileNothingAgainst");
        compare(Stage.app.aircraftFile.open.length, 0);
        see("discrepancy.fairing.left");
        compare(Stage.app.file.recordCount, 2);
        touch("fileRecords");
        touch("record." + Stage.app.file.records.get(0).recordId);
        see("screenRecord");
        compare(Stage.app.file.record.kind, "rectification");
        see("recordVerified");
        touch("recordClose");
        see("screenRecords");
    }
    function test_grounding() {
        open(1180, 820);
        pastRound([finding], 1);
        openFile();
        openDiscrepancy();
        touch("groundKey");
        type("groundWords", "A crack beside the rivet.");
        sign();
        see("screenDiscrepancy");
        touch("discrepancyBack");
        verify(see("against.0").texts[0].includes("grounds the aircraft"));
        verify(see("against.0").warns);
    }
    function test_readingAndInspection() {
        open(390, 844);
        pastRound([], 1);
        openFile();
        touch("fileReadCounters");
        see("screenReading");
        touch("entrySign");
        see("problemText");
        touch("problemClose");
        type("counter.airframe-hours", "1290.0");
        sign();
        see("screenFile");
        compare(Stage.app.aircraftFile.counters[0].value, "1290.0");
        touch("fileWork");
        type("workDescription", "Annual inspection.");
        touch("inspection.annual");
        type("workCertificateKind", "mechanic, inspection authorization");
        sign();
        see("screenFile");
        const annual = Stage.app.aircraftFile.due.filter(one => one.id === "annual")[0];
        compare(annual.verdict, "fine");
    }
    function test_search() {
        open(390, 844);
        pastRound([finding], 3);
        pastRound([], 1);
        openFile();
        touch("fileSearch");
        see("screenSearch");
        type("searchWords", "powder");
        touch("searchKey");
        tryCompare(see("searchCount"), "text", "1 record fits");
        const hit = Stage.app.search.hits.get(0);
        verify(hit.gloss.includes("Black powder"));
        touch("record." + hit.recordId);
        see("screenRecord");
        touch("recordClose");
        see("record." + hit.recordId);
        verify(!seen("searchWords"));
        touch("searchAgain");
        frame();
        compare(see("searchWords").text, "powder");
        type("searchWords", "");
        touch("searchMoreFields");
        frame();
        touch("searchKind.rectification");
        touch("searchKey");
        tryCompare(see("searchCount"), "text", "Nothing fits.");
        touch("searchAgain");
        frame();
        touch("searchKind.rectification"); // taken back
        type("searchFrom", "2026-06-21");
        touch("searchKey");
        tryCompare(see("searchCount"), "text", "1 record fits");
        touch("searchAgain");
        frame();
        type("searchFrom", "yesterday");
        touch("searchKey");
        see("problemText");
        see("searchFrom");
    }
    function test_history() {
        open(390, 844);
        pastRound([finding], 3);
        pastRound([finding], 1);
        openFile();
        touch("fileHistory");
        see("screenHistory");
        type("historyName", "fairing");
        frame(); // the rows have moved up
        touch("historyPoint.fairing.left");
        const sightings = Stage.app.pointHistory.sightings;
        tryCompare(sightings, "count", 2);
        compare(sightings.get(0).look, "finding");
        compare(sightings.get(0).words, "Black powder at two rivets.");
        touch("sighting." + sightings.get(1).recordId);
        see("screenRecord");
        touch("recordClose");
        see("sighting." + sightings.get(0).recordId);
        touch("historyOther");
        see("historyName");
        verify(seen("historyOther") === null);
    }
    function test_verify() {
        open(390, 844);
        pastRound([finding], 1);
        openFile();
        touch("fileVerify");
        see("screenVerify");
        tryVerify(() => seen("verifyGood") !== null, 5000);
        compare(Stage.app.verification.records, 1);
    }
    function test_whereFindingsWere() {
        open(390, 844);
        pastRound([finding], 40);
        openFile();
        touch("fileFindings");
        see("screenFindings");
        compare(Stage.app.zoneFindings.total, 1);
        touch("foundZone.mast-left");
        see("found.0");
        touch("findingsDays.30");
        compare(Stage.app.zoneFindings.total, 0);
        verify(!seen("found.0"));
        touch("findingsDays.0");
        compare(Stage.app.zoneFindings.total, 1);
    }
    function test_handOver() {
        open(390, 844);
        pastRound([], 1);
        openFile();
        touch("fileHandOver");
        type("handOverTo", "Kim Example");
        sign();
        see("screenFile");
        compare(Stage.app.file.records.get(0).title, "Hand-over");
    }
    function test_eachScreen_data() {
        return sizes;
    }
    function test_eachScreen(data) {
        open(data.width, data.height);
        pastRound([finding], 3);
        openFile();
        check();
        openDiscrepancy();
        see("screenDiscrepancy");
        check();
        touch("deferKey");
        check();
        touch("basis.0");
        frame();
        check();
        answerAll();
        see("deferPlacard");
        check();
        touch("entryBack");
        touch("groundKey");
        check();
        touch("entryBack");
        touch("rectifyKey");
        check();
        touch("entryBack");
        touch("discrepancyHistory");
        tryCompare(Stage.app.pointHistory.sightings, "count", 1);
        check();
        touch("historyBack");
        touch("discrepancyBack");
        touch("fileSearch");
        touch("searchMoreFields");
        frame();
        touch("searchKey");
        tryCompare(Stage.app.search.hits, "count", 1);
        check();
        touch("searchBack");
        touch("fileVerify");
        tryVerify(() => Stage.app.verification.done, 5000);
        check();
        touch("verifyBack");
        touch("fileFindings");
        check();
        touch("findingsBack");
        touch("fileReadCounters");
        check();
        touch("entryBack");
        touch("fileHandOver");
        check();
        touch("entryBack");
        touch("fileRecords");
        check();
    }
}
