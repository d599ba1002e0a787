// Others follow: the link is opened, a code shown that a camera reads, a newcomer comes, is seen on the walk and taken back; by touches.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "Sharing"

    readonly property var devices: [sizes[0], sizes[2]]

    function withKey(width, height) {
        open(width, height);
        verify(Stage.app.signing.newKey("Robin Example", "a good passphrase"));
    }
    function openFromWalk() {
        touch("moreKey");
        touch("followKey");
        see("sheetFollowers");
    }
    function start() {
        type("signPassphrase", "a good passphrase");
        touch("followStart");
        tryVerify(() => Stage.app.sharing.open);
        compare(Stage.app.problem, "");
    }
    function within(item) {
        const at = item.mapToItem(main.contentItem, 0, 0);
        return at.x >= 0 && at.y >= 0 && at.x + item.width <= main.width && at.y + item.height <= main.height;
    }
    /// What a camera would read from the screen.
    function readCode() {
        const pictures = all(see("followCode"), one => one.source !== undefined && one.status !== undefined, []);
        compare(pictures.length, 1);
        tryCompare(pictures[0], "status", Image.Ready); // a data URL is loaded when there is time
        pictures[0].update();
        frame();
        const file = Stage.outFolder + "-screen.png";
        grabImage(main.contentItem).save(file);
        return Stage.readQr(file);
    }

    function test_fromStartToStop_data() {
        return devices;
    }
    function test_fromStartToStop(data) {
        withKey(data.width, data.height);
        beginRound("OX-DEMO", "daily");
        compare(seen("watchingText"), null);
        openFromWalk();
        check();
        type("signPassphrase", "a wrong passphrase");
        touch("followStart");
        verify(Stage.app.problem !== "");
        verify(!Stage.app.sharing.open);
        touch("problemClose");
        start();
        verify(seen("signPassphrase") === null, "what was typed is gone");
        check();

        touch("followInvite");
        const code = see("followCode");
        frame();
        verify(within(code), "whole on the screen");
        verify(code.width === code.height && code.width >= 0.6 * Math.min(main.width, 390), "large enough: " + code.width);
        check();
        verify(Stage.invitation !== "");
        compare(readCode(), Stage.invitation);
        const typed = see("followCodeText");
        compare(typed.text.replace(/ /g, ""), Stage.app.sharing.codeText.replace(/-/g, ""));
        verify(typed.text !== "");
        verify(/^([0-9A-Z]{4} )+[0-9A-Z]{4}$/.test(typed.text), typed.text);
        verify(typed.font.pixelSize >= 26);
        verify(within(typed));
        verify(/[45]:\d\d/.test(see("followCodeLeft").text), see("followCodeLeft").text);

        verify(Stage.follow("Kim Example"));
        tryVerify(() => seen("followCode") === null, 2000, "used, it goes by itself");
        const kim = Stage.app.sharing.watching[0].id;
        const told = all(see("follower." + kim), one => one.text !== undefined && one.text.startsWith("1 entry"), []);
        compare(told.length, 1);
        compare(Stage.events.length, 1);
        compare(told[0].text, "1 entry behind");
        check();
        touch("followersClose");
        tryVerify(() => seen("sheetFollowers") === null);
        tryVerify(() => seen("watchingText") !== null);
        compare(see("watchingText").text, "Kim Example follows");
        check();
        const calls = Stage.linkCalls.length;
        touch("keyHere");
        verify(Stage.linkCalls.length > calls);

        openFromWalk();
        touch("takeBack." + kim);
        see("takeBackNow." + kim);
        check();
        touch("takeBackKeep." + kim);
        compare(seen("takeBackNow." + kim), null);
        verify(!Stage.linkCalls.includes("takeBack " + kim));
        touch("takeBack." + kim);
        touch("takeBackNow." + kim);
        tryVerify(() => seen("follower." + kim) === null);
        verify(Stage.linkCalls.includes("takeBack " + kim));
        compare(Stage.app.sharing.watchingText, "");
        touch("followStop");
        tryVerify(() => !Stage.app.sharing.open);
        see("followStart");
        touch("followersClose");
        tryVerify(() => seen("sheetFollowers") === null);
        compare(seen("watchingText"), null);
        compare(Stage.app.problem, "");
    }

    /// Twice in the same place, as by a shaking hand: nobody is taken back.
    function test_theSameTouchTwiceTakesNobodyBack() {
        withKey(390, 844);
        touch("followKey");
        start();
        verify(Stage.follow("Kim Example"));
        tryVerify(() => Stage.app.sharing.watching.length === 1);
        const kim = Stage.app.sharing.watching[0].id;
        const key = see("takeBack." + kim);
        frame();
        const at = key.mapToItem(main.contentItem, key.width / 2, key.height / 2);
        touch("takeBack." + kim);
        see("takeBackKeep." + kim);
        frame();
        mouseClick(main.contentItem, at.x, at.y);
        tryVerify(() => seen("takeBack." + kim) !== null);
        verify(!Stage.linkCalls.includes("takeBack " + kim));
    }

    /// From the aircraft, before a walk; who makes a key here needs no round for it.
    function test_beforeAWalk_data() {
        return sizes;
    }
    function test_beforeAWalk(data) {
        open(data.width, data.height);
        check();
        touch("followKey");
        see("sheetFollowers");
        verify(!see("newKeyDone").enabled);
        type("newKeyName", "Robin Example");
        type("newKeyPassphrase", "a good passphrase");
        type("newKeyPassphraseAgain", "a good passphrase");
        touch("newKeyDone");
        start();
        touch("followInvite");
        frame();
        verify(within(see("followCode")), "whole on the screen");
        compare(readCode(), Stage.invitation);
        check();
        touch("followCodeAway");
        tryVerify(() => seen("followCode") === null);
        verify(Stage.linkCalls.includes("closeInvitation"));
        touch("followersClose");
        tryVerify(() => seen("sheetFollowers") === null);
        verify(Stage.app.sharing.open);
        beginRound("OX-DEMO", "daily");
        verify(Stage.linkCalls.some(one => one === "goOn " + Stage.app.round.roundId));
    }

    function test_whoIsTurnedAway() {
        withKey(390, 844);
        touch("followKey");
        start();
        touch("followInvite");
        Stage.refuse("192.168.43.9:40112 Mo Sample", "This isn't the invitation's word.");
        tryVerify(() => seen("followRefused") !== null);
        verify(see("followRefused").text.includes("Mo Sample: This isn't the invitation's word."), see("followRefused").text);
        see("followCode");
        check();
        touch("followCodeAway");
        touch("followInvite");
        compare(seen("followRefused"), null);
    }

    /// Who may follow and doesn't now is listed, too, and comes back without a code.
    function test_whoWentAwayMayComeBack() {
        withKey(390, 844);
        touch("followKey");
        start();
        Stage.follow("Kim Example");
        tryVerify(() => Stage.app.sharing.watching.length === 1);
        const kim = Stage.app.sharing.watching[0].id;
        Stage.leave("Kim Example");
        tryVerify(() => Stage.app.sharing.watching.length === 0);
        see("follower." + kim);
        compare(all(main.contentItem, one => one.objectName === "follower." + kim, []).length, 1);
        Stage.follow("Kim Example");
        tryVerify(() => Stage.app.sharing.watching.length === 1);
        compare(all(main.contentItem, one => one.objectName === "follower." + kim, []).length, 1);
    }

    /// The head has room for who follows: nothing else moves off the screen, and nothing is cut.
    function test_theHead_data() {
        const list = [];
        for (const size of sizes)
            for (const scale of [1, 2])
                list.push({
                    tag: size.tag + ", text " + scale * 100 + " %",
                    width: size.width,
                    height: size.height,
                    scale: scale
                });
        return list;
    }
    function test_theHead(data) {
        withKey(data.width, data.height);
        beginRound("OX-DEMO", "daily");
        verify(Stage.app.sharing.start("a good passphrase", ""));
        Theme.scale = data.scale;
        frame();
        Stage.follow("Kim Example");
        tryVerify(() => seen("watchingText") !== null);
        check();
        const text = see("watchingText"), pane = text.parent.parent;
        verify(within(text));
        const bottom = text.mapToItem(pane, 0, text.height).y;
        verify(bottom <= pane.height + 0.5, "not cut: " + bottom + " of " + pane.height);
        verify(!text.truncated, "whole: " + text.width + " of " + text.implicitWidth);
        verify(text.Accessible.ignored);
        verify(text.parent.Accessible.name.includes("Kim Example follows"), text.parent.Accessible.name);
        verify(within(see("keyHere")));
        verify(within(see("pauseKey")));
        Theme.scale = 1;
    }

    /// By night the code stands on the ink's ground, and is read all the same.
    function test_atNight() {
        withKey(390, 844);
        Stage.app.night = true;
        touch("followKey");
        start();
        touch("followInvite");
        const code = see("followCode");
        compare(code.color, Theme.ink);
        compare(readCode(), Stage.invitation);
        const image = grabImage(main.contentItem);
        let brightest = 0;
        for (let i = 0; i < image.width; i += 3)
            for (let j = 0; j < image.height; j += 3)
                brightest = Math.max(brightest, Theme.luminance(image.pixel(i, j)));
        verify(brightest > 0.2 && brightest < 0.36, "dim: " + brightest);
        verify(Theme.contrast(code.color, Qt.rgba(0, 0, 0, 1)) > 5, "a camera can tell them apart");
    }
}
