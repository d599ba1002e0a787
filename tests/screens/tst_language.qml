// The language is changed in the middle of a round: the words change, all of them, and nothing else.
import QtQuick
import QtTest
import Ambit
import AmbitTest

ScreenCase {
    id: test

    name: "Language"

    function texts() {
        return all(main.contentItem, item => item.paintedHeight !== undefined && item.text !== undefined && item.text !== "", []).map(item => item.text);
    }
    function test_changes_in_a_round() {
        open(390, 844);
        beginRound("OX-DEMO", "daily");
        touch("keyHere");
        see("keySound");
        const english = texts();
        const said = Stage.events;
        compare(see("keySound").text, "Sound");
        touch("moreKey");
        compare(see("reviewKey").text, "Review");
        compare(see("languageKey").text, "Language: English");
        touch("languageKey"); // from the device's to English, which this one's is
        compare(Stage.app.language, "en");
        compare(see("reviewKey").text, "Review");
        touch("languageKey");
        compare(Stage.app.language, "de");
        compare(see("languageKey").text, "Sprache: Deutsch");
        compare(see("reviewKey").text, "Durchsicht");
        touch("moreClose");
        tryVerify(() => seen("sheetMore") === null);
        compare(see("keySound").text, "In Ordnung");
        compare(see("keyFinding").text, "Befund");
        verify(texts().some(text => text.includes("Ansehen") || text.includes("Fühlen")), "what a view model has put into words");
        touch("moreKey");
        touch("languageKey");
        compare(Stage.app.language, "");
        touch("moreClose");
        tryVerify(() => seen("sheetMore") === null);
        compare(texts().join("|"), english.join("|"));
        compare(Stage.events.join(), said.join());
    }
}
