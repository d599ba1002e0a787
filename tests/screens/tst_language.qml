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
    function test_changes_in_a_round_data() {
        return [
            {
                tag: "de",
                key: "Sprache: Deutsch",
                review: "Durchsicht",
                sound: "In Ordnung",
                finding: "Befund",
                how: /Ansehen|Fühlen/
            },
            {
                tag: "fr",
                key: "Langue\u202f: Français",
                review: "Revue",
                sound: "Conforme",
                finding: "Constat",
                how: /Regarder|Toucher/
            }
        ];
    }
    /// Touches the key until this one is spoken: from the device's to English, which this one's is, and on.
    function touchUntil(language) {
        for (let touches = 0; Stage.app.language !== language && touches < 10; ++touches)
            touch("languageKey");
        compare(Stage.app.language, language);
    }
    function test_chosen_before_a_round() {
        open(360, 740);
        const english = see("screenAircraft").title;
        touchUntil("fr");
        compare(see("screenAircraft").title, "Quel aéronef\u202f?");
        touchUntil("");
        compare(see("screenAircraft").title, english);
    }
    /// What a view puts into words only when it is asked.
    function test_changes_what_was_asked_for() {
        open(390, 844);
        touch("aircraft.OX-DEMO");
        see("screenBegin");
        compare(see("role.instructor").text, "Instructor");
        Stage.app.language = "de";
        compare(see("role.instructor").text, "Fluglehrer");
        Stage.app.language = "en";
        frame(); // what is chosen from is made anew, and has its places with the next frame
        touch("walk.daily");
        type("beginName", "Robin Example");
        touch("beginKey");
        see("screenWalk");
        verify(Stage.walkTo("oil-level"));
        touch("valueField");
        touch("pad.9");
        touch("pad.Done");
        compare(see("valueField.limit").text, "9 qt is above the limit: 4.0 to 6.0 qt");
        Stage.app.language = "de";
        compare(see("valueField.limit").text, "9 qt liegt über dem Grenzwert: 4,0 bis 6,0 qt");
    }
    function test_changes_in_a_round(data) {
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
        touch("languageKey");
        compare(Stage.app.language, "en");
        compare(see("reviewKey").text, "Review");
        touchUntil(data.tag);
        compare(see("languageKey").text, data.key);
        compare(see("reviewKey").text, data.review);
        touch("moreClose");
        tryVerify(() => seen("sheetMore") === null);
        compare(see("keySound").text, data.sound);
        compare(see("keyFinding").text, data.finding);
        verify(texts().some(text => data.how.test(text)), "what a view model has put into words");
        touch("moreKey");
        touchUntil("");
        touch("moreClose");
        tryVerify(() => seen("sheetMore") === null);
        compare(texts().join("|"), english.join("|"));
        compare(Stage.events.join(), said.join());
    }
}
