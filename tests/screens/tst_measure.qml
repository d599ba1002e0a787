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
        verify(event.valueFrom === undefined);
        compare(event.measurements.length, 1);
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
    function measuredBefore(values) {
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
        measuredBefore(["4.6", "4.5", "4.3", "4.2", "4.0"]);
        openFile();
        touch("fileHistory");
        type("historyName", "shoe");
        touch("historyPoint." + point);
        tryVerify(() => Stage.app.trend.there, 5000);
        const chart = see("trendChart");
        bringIntoView(chart, Qt.point(chart.width / 2, chart.height / 2));
        verify(see("trendText.0").text !== "");
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
    }
}
