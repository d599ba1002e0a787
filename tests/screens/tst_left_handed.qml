// For the left hand: what the thumb reaches stands on the left, on every size; what is written is not mirrored, and all of it works.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "LeftHanded"

    function leftOf(item) {
        return item.mapToItem(main.contentItem, 0, 0).x;
    }
    function rightOf(item) {
        return leftOf(item) + item.width;
    }
    function turn() {
        touch("moreKey");
        touch("handKey");
        touch("moreClose");
        frame();
    }
    function test_mirrored_data() {
        return sizes;
    }
    function test_mirrored(data) {
        open(data.width, data.height);
        beginRound("OX-DEMO", "daily");
        frame();
        touch("keyHere");
        const wide = data.width > data.height;
        const figureBefore = leftOf(see("figure")), soundBefore = leftOf(see("keySound"));
        verify(leftOf(see("keyFinding")) < soundBefore);
        verify(!Stage.app.leftHanded);
        turn();
        verify(Stage.app.leftHanded);
        check();
        // The key that is pressed most lies where the thumb is.
        verify(rightOf(see("keySound")) <= leftOf(see("keyFinding")));
        verify(leftOf(see("keySound")) < 40);
        if (wide) {
            verify(leftOf(see("figure")) >= rightOf(see("keyFinding")));
            verify(figureBefore < soundBefore);
        }
        verify(leftOf(see("pauseKey")) - leftOf(see("figure").parent) < 30);
        const settled = Stage.app.round.settledCount;
        touch("keySound");
        compare(Stage.app.round.settledCount, settled + 1);
        touch("keyFinding");
        see("sheetFinding");
        check();
        const page = see("findingDone");
        if (data.width > Theme.mm(140) && wide)
            verify(rightOf(page) < main.width / 2 + 30, "the sheet comes from the left");
        touch("findingCancel");
        verify(Stage.walkTo("oil-level"));
        frame();
        touch("valueField");
        touch("pad.5");
        check();
        touch("pad.Done");
        turn();
        verify(!Stage.app.leftHanded);
        fuzzyCompare(leftOf(see("figure")), figureBefore, 1);
        verify(leftOf(see("keyFinding")) < leftOf(see("keySound")));
    }
    /// Text size doubled: nothing of it falls off the other side.
    function test_largeText_data() {
        return sizes;
    }
    function test_largeText(data) {
        open(data.width, data.height);
        Stage.app.leftHanded = true;
        Theme.scale = 2;
        frame();
        beginRound("OX-DEMO", "daily");
        check();
        verify(Stage.walkTo("fairing.left"));
        check();
        for (const name of ["keySound", "keyFinding", "pauseKey"]) {
            verify(leftOf(see(name)) >= 0, name);
            verify(rightOf(see(name)) <= main.width + 0.5, name);
        }
        Theme.scale = 1;
    }
}
