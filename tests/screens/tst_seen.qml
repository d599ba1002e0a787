// What people saw wrong in pictures of the screens, each once.
import QtQuick
import QtTest
import Ambit
import AmbitTest

FileCase {
    id: test

    name: "Seen"

    function cleanup() {
        Theme.scale = 1;
        if (main) {
            main.destroy();
            main = null;
            wait(0);
        }
        Stage.fresh();
    }
    function large(language) {
        open(390, 844, language);
        Theme.scale = 2;
        frame();
    }
    function scroll() {
        return all(main.contentItem, item => item.contentY !== undefined && item.contentHeight > item.height + 1, [])[0];
    }
    /// How many of its points are drawn otherwise.
    function differing(a, b, x0, y0, x1, y1) {
        let count = 0;
        for (let x = x0; x < x1; x += 3)
            for (let y = y0; y < y1; y += 3)
                if (!Qt.colorEqual(a.pixel(x, y), b.pixel(x, y)))
                    ++count;
        return count;
    }
    /// The software renderer draws a shape whose clip is empty: parts of the figure stood over the title and the places, and stayed.
    function test_aFigureScrolledAwayLeavesNothing_data() {
        return [
            {
                tag: "100 %",
                scale: 1
            },
            {
                tag: "200 %",
                scale: 2
            }
        ];
    }
    function test_aFigureScrolledAwayLeavesNothing(data) {
        open(390, 844);
        pastRound([finding], 1);
        Theme.scale = data.scale;
        openFile();
        touch("fileFindings");
        see("findingsFigure");
        touch(all(main.contentItem, item => item.objectName.startsWith("findingsIn."), [])[0].objectName);
        see("findingsAllZones");
        const page = scroll();
        page.contentY = 0;
        frame();
        const before = grabImage(main.contentItem);
        for (const to of [0.5, 1]) {
            page.contentY = to * (page.contentHeight - page.height);
            frame();
            wait(20);
            const after = grabImage(main.contentItem);
            const head = main.contentItem.mapFromItem(page, 0, 0).y;
            const foot = head + page.height;
            verify(foot < main.height - 40);
            compare(differing(before, after, 0, 0, main.width, head - 2), 0, "over the head, scrolled to " + to);
            compare(differing(before, after, 0, foot + 2, main.width, main.height), 0, "over the places, scrolled to " + to);
        }
        touch("findingsBack");
        see("screenFile");
        frame();
        const away = grabImage(main.contentItem);
        compare(differing(before, away, 0, main.height - Theme.target + 4, main.width, main.height), 0, "over the places, another page");
    }

    /// A ring of 22 px beside letters of 36 looked like a full stop.
    function test_ringsGrowWithTheWords() {
        open(390, 844);
        touch("aircraft.OX-DEMO");
        see("screenBegin");
        const choice = see("walk.daily");
        const ring = all(choice, item => item.radius !== undefined && item.width === item.height && item.radius === item.width / 2, [])[0];
        const small = ring.width;
        Theme.scale = 2;
        frame();
        compare(ring.width, small * 1.5);
        const words = all(choice, item => item.text !== undefined && item.text === choice.text, []).filter(item => item !== choice)[0];
        verify(words.mapToItem(choice, 0, 0).x >= ring.mapToItem(choice, ring.width, 0).x + 8);
    }

    /// "5 min · 5 / offen".
    function test_whatBelongsTogetherStaysInOneLine() {
        large("de");
        beginRound("OX-DEMO", "daily");
        const text = see("walkProgress").text;
        verify(text.includes("·"));
        for (const part of text.split("· "))
            verify(!part.includes(" "), "“" + part + "” may be parted");
    }

    /// The field for the value lay below the card's edge, under a list of twelve points.
    function test_aValueIsEnteredWithoutScrolling() {
        open(1180, 820);
        for (let i = 0; i < 3; ++i)
            pastRound([], 1);
        beginRound("OX-DEMO", "daily");
        verify(Stage.walkTo("skid-shoe.left"));
        tryVerify(() => Stage.app.round.trendTexts.length > 0, 5000);
        frame();
        const field = see("valueField");
        const keys = see("keySound");
        verify(field.mapToItem(main.contentItem, 0, field.height).y <= keys.mapToItem(main.contentItem, 0, 0).y);
    }

    /// Reasons are touched; a keyboard that comes up by itself would cover them.
    function test_reasonsAreSeenFirst() {
        large("de");
        beginRound("OX-DEMO", "daily");
        touch("keyHere");
        touch("linkNotInspected");
        see("sheetNotInspected");
        frame();
        verify(!see("notInspectedWhy").activeFocus);
        compare(scroll().contentY, 0);
        keyClick(Qt.Key_Escape);
        tryVerify(() => seen("sheetNotInspected") === null);
    }

    /// While a round is open there has been one.
    function test_anOpenRoundIsOne() {
        open(390, 844);
        const texts = () => all(see("aircraft.OX-DEMO"), item => item.text !== undefined, []).map(item => item.text);
        verify(texts().includes("No round yet"));
        beginRound("OX-DEMO", "daily");
        Stage.app.leaveRound();
        see("resume.OX-DEMO");
        verify(!texts().includes("No round yet"));
    }
}
