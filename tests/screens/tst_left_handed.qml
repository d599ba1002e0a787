// For the left hand: what the thumb reaches stands on the left, on every size; what is written is not mirrored, and all of it works.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "LeftHanded"

    function left(item) {
        return item.mapToItem(main.contentItem, 0, 0).x;
    }
    function right(item) {
        return left(item) + item.width;
    }
    function turn() {
        touch("moreKey");
        touch("handKey");
        touch("moreClose");
        waitForRendering(main.contentItem);
    }
    function test_mirrored_data() {
        return sizes;
    }
    function test_mirrored(data) {
        open(data.width, data.height);
        beginRound("OX-DEMO", "daily");
        touch("keyHere");
        const wide = data.width > data.height;
        const figureBefore = left(see("figure")), soundBefore = left(see("keySound"));
        verify(left(see("keyFinding")) < soundBefore);
        verify(!Stage.app.leftHanded);
        turn();
        verify(Stage.app.leftHanded);
        check();
        // The key that is pressed most lies where the thumb is.
        verify(right(see("keySound")) <= left(see("keyFinding")));
        verify(left(see("keySound")) < 40);
        if (wide) {
            verify(left(see("figure")) >= right(see("keyFinding")));
            verify(figureBefore < soundBefore);
        }
        verify(left(see("pauseKey")) - left(see("figure").parent) < 30);
        const settled = Stage.app.round.settledCount;
        touch("keySound");
        compare(Stage.app.round.settledCount, settled + 1);
        touch("keyFinding");
        see("sheetFinding");
        check();
        const page = see("findingDone");
        if (data.width > Theme.mm(140) && wide)
            verify(right(page) < main.width / 2 + 30, "the sheet comes from the left");
        touch("findingCancel");
        for (const point of [0, 1, 2, 3])
            if (Stage.app.round.cardKind === "settle")
                touch("keySound");
        verify(Stage.walkTo("oil-level"));
        waitForRendering(main.contentItem);
        touch("valueField");
        touch("pad.5");
        check();
        touch("pad.Done");
        turn();
        verify(!Stage.app.leftHanded);
        fuzzyCompare(left(see("figure")), figureBefore, 1);
        verify(left(see("keyFinding")) < left(see("keySound")));
    }
    /// Text size doubled: nothing of it falls off the other side.
    function test_largeText_data() {
        return sizes;
    }
    function test_largeText(data) {
        open(data.width, data.height);
        Stage.app.leftHanded = true;
        Theme.scale = 2;
        beginRound("OX-DEMO", "daily");
        check();
        verify(Stage.walkTo("fairing.left"));
        check();
        for (const name of ["keySound", "keyFinding", "pauseKey"]) {
            verify(left(see(name)) >= 0, name);
            verify(right(see(name)) <= main.width + 0.5, name);
        }
        Theme.scale = 1;
    }
}
