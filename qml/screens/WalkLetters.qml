// The keyboard's letters on the walk. A letter does what its key does, never more.
import QtQuick
import Ambit

Item {
    id: letters

    required property bool live
    required property string kind
    required property WalkCard card

    signal pauseAsked
    signal moreAsked

    function used() {
        Theme.keyboard = true;
    }

    Shortcut {
        sequence: "S"
        enabled: letters.live && letters.kind === "settle"
        onActivated: {
            letters.used();
            letters.card.settleSound();
        }
    }
    Shortcut {
        sequence: "F"
        enabled: letters.live && letters.kind === "settle"
        onActivated: {
            letters.used();
            letters.card.askFinding(false);
        }
    }
    Shortcut {
        sequence: "N"
        enabled: letters.live && letters.kind === "settle"
        onActivated: letters.card.sheetAsked("NotInspectedSheet.qml", {})
    }
    Shortcut {
        sequence: "W"
        enabled: letters.live && letters.card.onPoint
        onActivated: letters.card.sheetAsked("WhySheet.qml", {})
    }
    Shortcut {
        sequence: "V"
        enabled: letters.live && letters.kind === "settle"
        onActivated: letters.card.measure()
    }
    Shortcut {
        sequence: "I"
        enabled: letters.live && letters.kind === "go"
        onActivated: {
            letters.used();
            letters.card.goOn();
        }
    }
    Shortcut {
        sequence: "D"
        enabled: letters.live && letters.kind === "set"
        onActivated: {
            letters.used();
            letters.card.goOn();
        }
    }
    Shortcut {
        sequence: "R"
        enabled: letters.live
        onActivated: letters.card.reviewAsked()
    }
    Shortcut {
        sequence: "P"
        enabled: letters.live
        onActivated: letters.pauseAsked()
    }
    Shortcut {
        sequence: "M"
        enabled: letters.live
        onActivated: letters.moreAsked()
    }
}
