// Parts, keys, what may go, and a second signature, by touches: from the file to the record that each leaves, and what is refused.
import QtQuick
import QtTest
import Ambit
import AmbitTest

FileCase {
    id: test

    name: "People"

    function refusedFor(words: string) {
        verify(see("problemText").text.includes(words), see("problemText").text);
        touch("problemClose");
    }
    function newest(): string {
        return Stage.app.file.records.get(0).title;
    }
    function myKey(): string {
        return Stage.app.signing.keys[0].id;
    }
    function standing(key: string): string {
        return see("standing." + key).text;
    }
    /// The work's own fields, and the signature.
    function signWork() {
        type("workDescription", "Blades changed.");
        type("workCertificateKind", "mechanic, airframe");
        sign();
    }
    function newKey(name: string) {
        type("newKeyName", name);
        type("newKeyPassphrase", passphrase);
        type("newKeyPassphraseAgain", passphrase);
        touch("newKeyDone");
        frame();
    }
    function openRecord(row: int) {
        touch("record." + Stage.app.file.records.get(row).recordId);
        see("screenRecord");
    }

    function test_partChange() {
        open(390, 844);
        pastRound([], 1);
        openFile();
        touch("filePart");
        see("screenPart");
        touch("partPlace.main-rotor-blades");
        touch("partWhat.on");
        verify(!seen("off.name"));
        type("on.name", "Main rotor blade set");
        type("on.number", "DEMO-7");
        type("workDescription", "Blades changed.");
        type("workCertificateKind", "mechanic, airframe");
        touch("entrySign");
        refusedFor("serial number");
        compare(Stage.app.file.recordCount, 1);
        type("on.serial", "S-1");
        touch("on.askRun");
        type("on.counter.airframe-hours", "100.0");
        type("counter.airframe-hours", "1285.0");
        signWork();
        see("screenFile");
        compare(newest(), "Part change");
        const blades = Array.from(Stage.app.aircraftFile.due).find(one => one.id === "main-rotor-blades");
        compare(blades.verdict, "fine"); // 2100 hours of 2200 to go

        // What is there is what comes off.
        touch("filePart");
        verify(see("partPlace.main-rotor-blades").about.startsWith("Main rotor blade set, serial S-1"));
        compare(see("off.serial").text, "S-1");
        compare(see("on.number").text, "DEMO-7");
        type("on.serial", "S-2");
        signWork();
        see("screenFile");
        compare(Stage.app.aircraftFile.places[0].serial, "S-2");
        compare(Stage.app.aircraftFile.conflicts.length, 0);

        // Another place, by name; only off.
        touch("filePart");
        touch("partElsewhere");
        touch("partWhat.off");
        touch("entrySign");
        refusedFor("where on the aircraft");
    }
    function test_trustAndRevoke() {
        open(390, 844);
        pastRound([], 1);
        openFile();
        touch("fileKeys");
        see("screenKeys");
        compare(standing(myKey()), "The owner has said nothing of this key");
        touch("trust." + myKey());
        see("screenTrust");
        see("trustFirst");
        touch("entrySign");
        refusedFor("good for");
        touch("trustRole.pilot");
        touch("trustRole.owner");
        touch("trustRole.owner"); // taken back
        type("trustFrom", "2026-06-01");
        sign();
        see("screenKeys");
        compare(newest(), "Key trusted");
        verify(standing(myKey()).includes("The owner's"));
        verify(standing(myKey()).includes("Good for pilot since 1 Jun 2026, 00:00"));
        verify(!standing(myKey()).includes("Good for owner"));
        touch("revoke." + myKey());
        see("screenRevoke");
        type("revokeFrom", "soon");
        type("revokeWhy", "The tablet was stolen.");
        touch("entrySign");
        refusedFor("is no date");
        type("revokeFrom", "");
        sign();
        see("screenKeys");
        compare(newest(), "Key revoked");
        verify(standing(myKey()).startsWith("Good for nothing since 21 Jun 2026"));
        verify(!seen("trust." + myKey()));
        touch("keysBack");
        see("screenFile");
    }
    function test_aKeyFromElsewhere() {
        open(390, 844);
        pastRound([], 1);
        openFile();
        touch("fileKeys");
        touch("keysOther");
        see("screenTrust");
        touch("trustRole.mechanic");
        type("keyHolder", "Mo Sample");
        type("keyFingerprint", "12AB");
        touch("entrySign");
        refusedFor("64 digits");
        type("keyFingerprint", "AB12 ".repeat(16));
        sign();
        verify(standing("ab12".repeat(16)).startsWith("Good for mechanic since 21 Jun 2026"));
    }
    function test_countersigned() {
        open(390, 844);
        pastRound([finding], 1);
        openFile();
        openRecord(0);
        const record = Stage.app.file.record.recordId;
        see("signature.0");
        verify(!seen("signature.1"));
        touch("recordCountersign");
        see("screenCountersign");
        verify(!seen("signPassphrase")); // the one key of this device signed it already
        compare(see("signCertificate").text, ""); // nor is that of who walked offered to whoever signs under it
        type("newKeyName", "Robin Example");
        type("newKeyPassphrase", passphrase);
        type("newKeyPassphraseAgain", passphrase);
        touch("newKeyDone");
        refusedFor("has a key on this device already");
        newKey("Kim Example");
        compare(see("signCertificate").text, ""); // not that of another
        type("signPassphrase", "something else");
        touch("entrySign");
        see("problemText");
        touch("problemClose");
        sign();
        see("screenRecord");
        compare(Stage.app.file.record.recordId, record);
        compare(Stage.app.file.record.signatures.length, 2);
        compare(Stage.app.file.record.signatures[1].who, "Kim Example\u00a0· Instructor\u00a0· DEMO-0001");
        see("signature.1");
        verify(see("recordVerified").text.startsWith("All 2 signatures hold"));
        touch("recordKeys");
        see("screenKeys");
        touch("keysBack");
        see("screenRecord");
        touch("recordClose");
        see("screenFile");
        compare(Stage.app.file.recordCount, 1);
        touch("fileVerify");
        tryVerify(() => seen("verifyGood") !== null, 5000);
    }
    /// What stands first on a form is read first: nothing is scrolled away by a field that wants the keyboard.
    function test_formsOpenAtTheirBeginning() {
        open(390, 844);
        pastRound([], 1);
        openFile();
        for (const [key, page] of [["fileReadCounters", "screenReading"], ["fileWork", "screenRectify"], ["filePart", "screenPart"], ["fileHandOver", "screenHandOver"]]) {
            touch(key);
            see(page);
            frame();
            const first = all(see(page), item => item.contentY !== undefined && item.contentHeight > item.height, [])[0];
            verify(first !== undefined, page); // there is something to scroll
            compare(first.contentY, 0, page);
            touch("entryBack");
            see("screenFile");
        }
    }
    function test_twoPeopleOneDevice() {
        open(390, 844);
        pastRound([], 1);
        verify(Stage.app.signing.newKey("Kim Example", "another passphrase"));
        openFile();
        touch("fileReadCounters");
        verify(see("signKeyOf.Robin Example").chosen);
        compare(see("signCertificate").text, "DEMO-PPL-0001");
        frame();
        touch("signKeyOf.Kim Example");
        tryCompare(see("signCertificate"), "text", "");
        type("counter.airframe-hours", "1290.0");
        type("signPassphrase", passphrase);
        touch("entrySign");
        see("problemText"); // that is the other's
        touch("problemClose");
        type("signPassphrase", "another passphrase");
        touch("entrySign");
        see("screenFile");
        compare(Stage.app.file.records.get(0).signer, "Kim Example");
    }
    function test_letGo() {
        open(390, 844);
        pastRound([], 1);
        pastRound([], 1);
        openFile();
        const first = Stage.app.file.records.get(1).recordId;
        touch("fileRetention");
        see("screenRetention");
        tryCompare(see("retentionMayGo"), "text", "May go: 1");
        verify(!see("retentionGoOn").enabled);
        touch("mayGo.all.0");
        touch("retentionGoOn");
        see("screenRemove");
        verify(see("removeBasis").text.includes("14 CFR 91.417"));
        type("signPassphrase", "something else");
        touch("entrySign");
        verify(see("removeAsks").text.includes("can't be undone"));
        touch("removeKeep");
        verify(!seen("removeAsks"));
        compare(Stage.app.file.recordCount, 2); // asked, and kept
        touch("entrySign");
        touch("removeForGood");
        see("problemText"); // the passphrase
        touch("problemClose");
        compare(Stage.app.file.recordCount, 2);
        type("signPassphrase", passphrase);
        touch("entrySign");
        touch("removeForGood");
        see("screenRetention");
        isRead();
        compare(Stage.app.file.recordCount, 2);
        compare(newest(), "Records let go");
        compare(Stage.app.aircraftFile.holes, 0);
        verify(!Stage.app.file.open(first));
        Stage.app.clearProblem();
        tryCompare(see("retentionMayGo"), "text", "Nothing may go now.");
        touch("retentionBack");
        see("screenFile");
    }
    function test_whatMustStay() {
        open(390, 844);
        pastRound([finding], 1);
        pastRound([], 1);
        openFile();
        const found = Stage.app.file.records.get(1).recordId, last = Stage.app.file.records.get(0).recordId;
        touch("fileRetention");
        tryCompare(see("retentionMayGo"), "text", "Nothing may go now.");
        touch("retentionStaying");
        frame();
        verify(!seen("mustStay.all.0"));
        touch("mustStay.each.0");
        touch("mustStay.each.1");
        frame();
        verify(!see("mustStay." + last).enabled); // the chain would break
        touch("mustStay." + found);
        touch("retentionGoOn");
        verify(see("removeAgainst").texts[1].includes("isn't put right"));
        type("removeBasis", "The operator's rules.");
        type("signPassphrase", passphrase);
        touch("entrySign");
        touch("removeForGood");
        refusedFor("must stay");
        compare(Stage.app.file.recordCount, 2);
        touch("removeAlthough");
        touch("entrySign");
        touch("removeForGood");
        see("screenRetention");
        compare(newest(), "Records let go");
        compare(Stage.app.problem, "");
    }
    function test_walkedByAnother() {
        open(390, 844);
        pastRound([], 1);
        verify(Stage.app.begin("OX-DEMO", "daily", "Kim Example", "owner", "", {}));
        verify(Stage.walkTo(""));
        verify(Stage.app.round.conclude(true, ""));
        see("screenSign");
        verify(!seen("signPassphrase")); // Robin's key isn't offered in place of Kim's
        newKey("Kim Example");
        type("signPassphrase", passphrase);
        touch("signKey");
        tryVerify(() => seen("screenFile") !== null, 5000);
        compare(Stage.app.file.records.get(0).signer, "Kim Example");
    }
    function test_eachScreen_data() {
        return sizes.concat([
            {
                tag: "narrow",
                width: 360,
                height: 640
            }
        ]);
    }
    function test_eachScreen(data) {
        open(data.width, data.height);
        pastRound([finding], 1);
        pastRound([], 1);
        openFile();
        touch("filePart");
        see("screenPart");
        check();
        touch("partElsewhere");
        touch("on.askRun");
        touch("off.askRun");
        check();
        touch("entryBack");
        touch("fileKeys");
        see("screenKeys");
        check();
        touch("trust." + myKey());
        check();
        touch("entryBack");
        touch("keysOther");
        check();
        touch("entryBack");
        touch("revoke." + myKey());
        check();
        touch("entryBack");
        touch("keysBack");
        touch("fileRetention");
        tryVerify(() => !Stage.app.retention.reading);
        touch("retentionStaying");
        frame();
        touch("mustStay.each.0");
        touch("mustStay.each.1");
        frame();
        check();
        touch("mustStay." + Stage.app.file.records.get(1).recordId);
        touch("retentionGoOn");
        see("screenRemove");
        check();
        touch("entrySign");
        frame();
        check();
        touch("removeKeep");
        frame();
        touch("entryBack");
        touch("retentionBack");
        openRecord(0);
        check();
        touch("recordCountersign");
        check();
        newKey("Kim Example");
        check();
    }
}
