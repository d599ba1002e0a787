// Measured by touches: from a photo's file over the card's corners and two marks to the value in the log; and from the values of earlier
// rounds to the chart of where they are going.
import QtQuick
import QtTest
import Ambit
import AmbitTest

FileCase {
    id: measuring
    name: "Measure"

    readonly property string point: "skid-shoe.left"

    function at(name) {
        check();
        if (Stage.shotsFolder !== "")
            Stage.shoot(main, name);
    }
    /// The glass's mark is brought onto this place of the photo, by drawing the photo under the cross.
    function bringTo(x, y) {
        const glass = see("measureGlass");
        frame();
        for (let i = 0; i < 8; ++i) {
            const is = glass.onScreen(x, y);
            const dx = Math.max(-80, Math.min(80, glass.width / 2 - is.x));
            const dy = Math.max(-60, Math.min(60, glass.height / 2 - is.y));
            if (Math.abs(dx) < 0.5 && Math.abs(dy) < 0.5)
                return;
            mousePress(glass, glass.width / 2, glass.height / 2);
            mouseMove(glass, glass.width / 2 + dx, glass.height / 2 + dy);
            mouseRelease(glass, glass.width / 2 + dx, glass.height / 2 + dy);
        }
        const is = glass.onScreen(x, y);
        verify(Math.abs(is.x - glass.width / 2) < 1.5 && Math.abs(is.y - glass.height / 2) < 1.5, "brought there");
    }
    function mark(x, y) {
        const glass = see("measureGlass");
        bringIntoView(glass, Qt.point(glass.width / 2, glass.height / 2));
        frame();
        const place = glass.onScreen(x, y);
        mouseClick(glass, place.x, place.y);
        tryVerify(() => Stage.app.measure.held >= 0);
        bringTo(x, y);
        touch("measureHere");
        compare(Stage.app.measure.held, -1);
    }
    function takePhoto() {
        see("sheetMeasure");
        type("measurePhotoUrl", Stage.cardPhoto());
        touch("measurePhotoUrlAdd");
        tryCompare(Stage.app.measure, "phase", "photo", 10000);
    }
    function confirmCorners() {
        touch("measureBegin");
        for (let i = 0; i < 4; ++i) {
            compare(Stage.app.measure.held, i);
            touch("measureHere");
        }
        touch("measureCornersRight");
        compare(Stage.app.measure.phase, "marks");
    }

    function test_fromAPhotoToTheLog_data() {
        return sizes;
    }
    function test_fromAPhotoToTheLog(size) {
        open(size.width, size.height);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo(point));
        frame();
        touch("measurePhoto");
        at("measure-" + size.tag + "-none");
        takePhoto();
        at("measure-" + size.tag + "-photo");
        verify(see("measureCard").text.startsWith("A card was found"), see("measureCard").text);
        touch("measureBegin");
        at("measure-" + size.tag + "-corner");
        for (let i = 0; i < 4; ++i)
            touch("measureHere");
        at("measure-" + size.tag + "-corners");
        touch("measureCornersRight");
        verify(!see("measureKeep").enabled);
        mark(1300, 700);
        mark(1500, 700);
        const result = parseFloat(see("measureResult").text);
        verify(Math.abs(result - 20) < 0.4, see("measureResult").text);
        at("measure-" + size.tag + "-result");
        touch("measureKeep");
        tryCompare(see("valueField"), "text", String(Stage.app.round.keptValue));
        at("measure-" + size.tag + "-card");
        touch("keySound");
        compare(Stage.app.problem, "");
        const event = JSON.parse(Stage.lastSettled(point));
        compare(event.valueFrom, "photo");
        compare(event.measurements.length, 1);
        compare(event.measurements[0].value, event.value);
        compare(event.measurements[0].card.by, "finder");
        compare(event.measurements[0].photo, event.photos[0].sha256);
        verify(Math.abs(parseFloat(event.value) - 20) < 0.4, event.value);
    }
    /// Another value typed over it is a typed one; the photo and what was measured in it stay.
    function test_whatIsTypedIsNotFromThePhoto() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo(point));
        touch("measurePhoto");
        takePhoto();
        confirmCorners();
        mark(1300, 700);
        mark(1500, 700);
        touch("measureKeep");
        tryVerify(() => see("valueField").text !== "");
        type("valueField", "4.5");
        touch("keySound");
        const event = JSON.parse(Stage.lastSettled(point));
        compare(event.value, "4.5");
        compare(event.valueFrom, "ruler"); // as the airframe says of typed ones
        compare(event.uncertainty, "0.1");
        compare(event.measurements.length, 1);
    }
    /// Nobody has to say what a value is read from; whoever wants to, does it by touches, figures on the keypad.
    function test_whatItIsReadFrom_data() {
        return sizes.slice(0, 2);
    }
    function test_whatItIsReadFrom(size) {
        open(size.width, size.height);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo("oil-level"));
        type("valueField", "5.1");
        compare(see("valueField.from").text, "Read on the dipstick");
        compare(see("valueField.uncertainty").text, "± 0.15 qt");
        verify(see("valueField.interval").text.startsWith("4.81 to 5.39 qt in 95 of 100 cases"), see("valueField.interval").text);
        at("reading-" + size.tag);
        touch("valueField.uncertainty");
        for (const pad of ["0", ".", "6"])
            touch("pad." + pad);
        compare(see("valueField").text, "5.1");
        compare(see("valueField.uncertainty").text, "± 0.6 qt");
        verify(see("valueField.interval").text.includes("reaches beyond the limit"), see("valueField.interval").text);
        touch("valueField.from");
        at("reading-" + size.tag + "-from");
        touch("valueField.from.eye");
        compare(see("valueField.from").text, "Judged by eye");
        compare(see("valueField.uncertainty").text, "± …");
        touch("valueField.uncertainty");
        touch("pad.1");
        touch("pad.Erase");
        for (const pad of ["0", ".", "4"])
            touch("pad." + pad);
        touch("pad.Done");
        touch("keySound");
        compare(Stage.app.problem, "");
        const event = JSON.parse(Stage.lastSettled("oil-level"));
        compare(event.value, "5.1");
        compare(event.valueFrom, "eye");
        compare(event.uncertainty, "0.4");
        // The next one is as its airframe says again; in another unit so is its uncertainty, to two digits.
        verify(Stage.walkTo("tail-play"));
        type("valueField", "2.1");
        compare(see("valueField.uncertainty").text, "± 0.3 mm");
        for (let i = 0; i < 12 && see("valueField").unit !== "in"; ++i)
            touch("valueField.unit");
        type("valueField", "0.1"); // 2.1 in would be beyond
        compare(see("valueField.uncertainty").text, "± 0.012 in");
        touch("pad.Done");
        frame();
        touch("valueField.from");
        at("reading-" + size.tag + "-none");
        touch("valueField.from.none");
        verify(!seen("valueField.uncertainty"));
        touch("keySound");
        const bare = JSON.parse(Stage.lastSettled("tail-play"));
        verify(bare.valueFrom === undefined && bare.uncertainty === undefined);
    }
    /// How much of the item is seen in what scrolls it.
    function shareInSight(item) {
        for (let up = item.parent; up; up = up.parent) {
            if (up.contentY === undefined)
                continue;
            const top = item.mapToItem(up, 0, 0).y;
            return (Math.min(top + item.height, up.height) - Math.max(top, 0)) / item.height;
        }
        return 1;
    }
    function test_openedChoicesAreInSight_data() {
        return [
            {
                tag: "phone, keypad open",
                width: 390,
                height: 844,
                scale: 1
            },
            {
                tag: "smallest phone, large text",
                width: 360,
                height: 740,
                scale: 2
            },
            {
                tag: "smallest phone, large text, keypad open",
                width: 360,
                height: 740,
                scale: 2
            }
        ];
    }
    function test_openedChoicesAreInSight(how) {
        open(how.width, how.height);
        Theme.scale = how.scale;
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo("oil-level"));
        type("valueField", "5.1");
        if (!how.tag.endsWith("open"))
            touch("pad.Done");
        frame();
        touch("valueField.from");
        frame();
        at("choices-" + how.tag.replace(/[ ,]+/g, "-"));
        const first = see("valueField.from.gauge");
        compare(shareInSight(first), 1);
        const above = see("cautions");
        verify(first.mapToItem(main.contentItem, 0, 0).y >= above.mapToItem(main.contentItem, 0, above.height).y, "under the caution");
        compare(seen("pad.Done") !== null, how.tag.endsWith("open")); // a touch leaves the keypad as it is
    }
    function test_theLimitsWordsKeepOffTheValue() {
        open(360, 740);
        Theme.scale = 2;
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo("oil-level"));
        frame();
        at("limit-beside-value");
        const limit = see("valueField.limit");
        const figures = see("valueField.figures");
        const from = limit.mapToItem(main.contentItem, limit.width, 0).x;
        const to = figures.mapToItem(main.contentItem, 0, 0).x;
        verify(to - from >= Theme.gap - 0.5, from + " to " + to);
    }
    function test_whatIsLeftOutIsNoTypedValue() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo(point));
        touch("measurePhoto");
        takePhoto();
        confirmCorners();
        mark(1300, 700);
        mark(1500, 700);
        touch("measureKeep");
        tryVerify(() => see("valueField").text !== "");
        touch("dropKept.0");
        tryCompare(see("valueField"), "text", "");
    }
    function test_aPhotoIsKeptToBeCompared() {
        open(1180, 820);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo("papers"));
        touch("linkPhoto");
        takePhoto();
        touch("measureKeepPhoto");
        see("dropKept.0");
        touch("keySound");
        const event = JSON.parse(Stage.lastSettled("papers"));
        compare(event.photos.length, 1);
        verify(event.measurements === undefined);
    }
    /// While a finding is told, what is found is measured on the spot: its words stay, the photo and the marks go with it.
    function test_inAFindingBeingTold() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo(point));
        touch("keyFinding");
        see("sheetFinding");
        type("findingWords", "Scored");
        touch("findingMeasure");
        takePhoto();
        confirmCorners();
        mark(1300, 700);
        mark(1500, 700);
        touch("measureKeep");
        tryVerify(() => !seen("sheetMeasure"));
        see("sheetFinding");
        compare(see("findingWords").text, "Scored");
        tryCompare(see("findingValue"), "text", String(Stage.app.round.keptValue));
        at("finding-measured");
        touch("findingMeasure");
        touch("measureCancel");
        touch("classAssess");
        touch("findingDone");
        compare(Stage.app.problem, "");
        const event = JSON.parse(Stage.lastSettled(point));
        compare(event.words, "Scored");
        compare(event.valueFrom, "photo");
        compare(event.measurements.length, 1);
        compare(event.measurements[0].value, event.value);
        compare(event.photos.length, 1);
    }
    function test_anotherUnit() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo(point));
        frame();
        touch("valueField.unit");
        let unit = see("valueField").unit;
        for (let i = 0; i < 12 && unit !== "in"; ++i) {
            touch("valueField.unit");
            unit = see("valueField").unit;
        }
        compare(unit, "in");
        type("valueField", "0.1"); // 2.54 mm: below 3.0
        verify(Stage.app.round.outOfLimit("0.1", "in") !== "");
        touch("keySound");
        verify(Stage.app.problem !== "");
        touch("problemClose");
        type("valueField", "0.2");
        touch("keySound");
        compare(Stage.app.problem, "");
        compare(JSON.parse(Stage.lastSettled(point)).unit, "in");
    }

    /// The last photo is there the next time, at the same scale where both have a card.
    function test_yesterdayBesideToday() {
        open(390, 844);
        const app = Stage.app;
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo(point));
        touch("measurePhoto");
        compare(app.measure.lastText, "");
        takePhoto();
        confirmCorners();
        mark(1300, 700);
        mark(1500, 700);
        touch("measureKeep");
        tryVerify(() => see("valueField").text !== "");
        touch("keySound");
        verify(Stage.walkTo(""));
        verify(app.round.conclude(true, ""), app.problem);
        verify(app.signing.newKey("Robin Example", passphrase));
        verify(app.signing.sign(passphrase), app.problem);
        app.leaveRound();
        Stage.advance(3 * 86400);
        frame();
        verify(app.begin("OX-DEMO", "daily", "Robin Example", "pilot", "DEMO-PPL-0001", {}), app.problem);
        see("screenWalk");
        verify(Stage.walkTo(point));
        touch("measurePhoto");
        tryVerify(() => app.measure.lastText !== "", 5000);
        verify(see("measureLast").text.includes("3 days ago"), see("measureLast").text);
        tryVerify(() => see("measureLastPhoto").status === Image.Ready);
        at("measure-last");
        takePhoto();
        confirmCorners();
        verify(app.measure.sameScale);
        mark(1300, 700);
        mark(1500, 700);
        touch("measureBlink");
        at("measure-blink");
        touch("measureBlink");
        touch("measureCancel");
    }

    /// Measured that often before, the hours two apart.
    function measuredBefore(point, values) {
        const app = Stage.app;
        values.forEach((value, i) => {
            verify(app.begin("OX-DEMO", "daily", "Robin Example", "pilot", "DEMO-PPL-0001", {
                "airframe-hours": String(1284 + 2 * i)
            }), app.problem);
            verify(Stage.walkTo(point));
            verify(app.round.settleSound(value), app.problem);
            verify(Stage.walkTo(""));
            verify(app.round.conclude(true, ""), app.problem);
            if (!app.signing.keyExists)
                verify(app.signing.newKey("Robin Example", passphrase));
            verify(app.signing.sign(passphrase), app.problem);
            app.leaveRound();
            Stage.advance(2 * 86400);
        });
    }
    function test_whereItIsGoing_data() {
        return sizes.slice(0, 3);
    }
    function test_whereItIsGoing(size) {
        open(size.width, size.height);
        measuredBefore(point, ["4.6", "4.5", "4.3", "4.2", "4.0"]);
        openFile();
        touch("fileHistory");
        type("historyName", "shoe");
        frame(); // the rows have moved up
        touch("historyPoint." + point);
        compare(Stage.app.pointHistory.pointId, point);
        tryVerify(() => Stage.app.trend.there, 5000);
        const chart = see("trendChart");
        bringIntoView(chart, Qt.point(chart.width / 2, chart.height / 2));
        verify(see("trendText.0").text !== "");
        verify(Stage.app.trend.spoken.endsWith("4.0 mm ± 0.1 at 1292 h, taken with a ruler or caliper"), Stage.app.trend.spoken);
        at("trend-" + size.tag);
        compare(Stage.app.trend.over, "airframe-hours");
        touch("trendOver.days");
        compare(Stage.app.trend.over, "days");
        // And on the card, when it is measured again.
        const app = Stage.app;
        verify(app.begin("OX-DEMO", "daily", "Robin Example", "pilot", "DEMO-PPL-0001", {
            "airframe-hours": "1294"
        }), app.problem);
        verify(Stage.walkTo(point));
        tryVerify(() => app.round.trendTexts.length > 0, 5000);
        verify(app.round.settleSound("3.9"), app.problem);
        const told = JSON.parse(Stage.lastTrend(point));
        compare(told.over, "airframe-hours");
        compare(told.values.length, 6);
        compare(told.values[5].value, "3.9");
        compare(told.values[5].x, "1294");
        compare(told.values[5].uncertainty, "0.1"); // the airframe's
    }

    /// Nobody said that the shoe was renewed: the owner says it on the point's page, and takes it back there.
    function test_renewedIsSaidAfterwards_data() {
        return sizes.slice(0, 3);
    }
    function test_renewedIsSaidAfterwards(size) {
        open(size.width, size.height);
        measuredBefore(point, ["4.6", "4.5", "5.2"]);
        openFile();
        touch("fileHistory");
        type("historyName", "shoe");
        frame(); // the rows have moved up
        touch("historyPoint." + point);
        const history = Stage.app.pointHistory;
        tryVerify(() => Stage.app.trend.there && history.values.length === 3, 5000);
        const id = history.values[0].recordId;
        verify(!history.values[0].renewed);
        for (const renewed of [true, false]) {
            frame(); // what was read has moved it
            touch("historyRenewed");
            see("screenRenewed");
            at("renewed-" + size.tag);
            verify(seen("renewedBack") === null);
            touch("renewedValue." + id);
            compare(seen("renewedBack") !== null, !renewed);
            compare(see("entrySign").text, renewed ? "Sign: renewed" : "Sign: not renewed");
            at("renewed-chosen-" + renewed + "-" + size.tag);
            type("renewedWords", "Shoe changed.");
            sign();
            see("screenHistory");
            tryVerify(() => Stage.app.trend.there && history.values.length === 3, 5000);
            compare(history.values[0].recordId, id);
            compare(history.values[0].renewed, renewed);
            compare(see("sighting." + id).text.endsWith("renewed before it"), renewed);
            Stage.app.night = !Stage.app.night;
            at("renewed-history-" + renewed + "-" + size.tag);
        }
        compare(history.sightings.get(0).words.endsWith("Shoe changed."), true);
        compare(history.sightings.count, 5);
    }

    /// The part was renewed long ago: the value is further down than what is shown at once.
    function test_earlierValuesAreShownWhenAskedFor() {
        open(390, 844);
        measuredBefore(point, ["4.6", "4.5", "4.4", "4.3", "5.2", "5.1", "5.0"]);
        openFile();
        touch("fileHistory");
        type("historyName", "shoe");
        frame(); // the rows have moved up
        touch("historyPoint." + point);
        const history = Stage.app.pointHistory;
        tryVerify(() => Stage.app.trend.there && history.values.length > 0, 5000);
        frame();
        touch("historyRenewed");
        see("screenRenewed");
        compare(history.values.length, 6);
        compare(history.values[5].text.split(" ")[0], "4.5");
        touch("renewedMore");
        compare(history.values.length, 7);
        const oldest = history.values[6];
        compare(oldest.text.split(" ")[0], "4.6");
        tryVerify(() => seen("renewedMore") === null); // there are no more
        touch("renewedValue." + oldest.recordId);
        compare(see("entrySign").text, "Sign: renewed");
    }

    /// Where the airframe says so, what is coming stands against fit: the screen names it and refuses.
    function test_whatIsComingStandsAgainstFit() {
        open(390, 844);
        measuredBefore("tail-play", ["4.4", "4.9", "5.3"]);
        const app = Stage.app;
        verify(app.begin("OX-DEMO", "daily", "Robin Example", "pilot", "DEMO-PPL-0001", {
            "airframe-hours": "1290"
        }), app.problem);
        see("screenWalk");
        verify(Stage.walkTo("tail-play"));
        tryVerify(() => app.round.trendTexts.length > 0, 5000);
        type("valueField", "5.8"); // within 6.0
        touch("keySound");
        compare(app.problem, "");
        const told = JSON.parse(Stage.lastTrend("tail-play"));
        compare(told.is, "near");
        compare(told.then, "against");
        verify(Stage.walkTo(""));
        touch("keyReview");
        touch("reviewConclude");
        see("screenConclude");
        verify(see("concludeAgainst.0").text.includes("Tail blade play"), see("concludeAgainst.0").text);
        at("conclude-against");
        touch("concludeFit");
        touch("concludeDone");
        verify(see("problemText").text.includes("Tail blade play"), see("problemText").text);
        compare(app.round.phase, "walking");
        touch("problemClose");
        touch("concludeNotFit");
        type("concludeReasons", "Play");
        touch("concludeDone");
        see("screenSign");
        compare(app.round.phase, "concluded");
        compare(app.round.concludedFit, false);
    }
    /// One value is no trend, but its own interval may reach there: judged the same, typed or from a photo.
    function test_aFirstValueThatReachesTheLimit() {
        open(390, 844);
        const app = Stage.app;
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo("tail-play"));
        type("valueField", "5.5");
        touch("keySound");
        tryVerify(() => Stage.lastTrend("tail-play") !== "", 5000);
        const told = JSON.parse(Stage.lastTrend("tail-play"));
        compare(told.is, "near");
        compare(told.words[0].text, "the limit may be reached already");
        verify(app.round.against(true).some(one => one.includes("Tail blade play")), app.round.against(true));
    }
}
