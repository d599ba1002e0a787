// Searching the aircraft's records: words, person, part, JASC, dates, kind, state; what fits, the newest first.
pragma ComponentBehavior: Bound

import QtQuick
import Ambit

Page {
    id: screen

    required property App app
    readonly property SearchView search: app.search
    property string kind: search.was("kind")
    property string inState: search.was("state")
    /// What to search is being written; else what came of it is shown.
    property bool writing: !search.asked
    property bool more: kind !== "" || inState !== "" || from.text !== "" || until.text !== ""

    function ask() {
        const asked = screen.search.search(screen.app.file.registration, {
            words: words.text,
            person: person.text,
            part: part.text,
            jasc: jasc.text,
            from: from.text,
            until: until.text,
            kind: screen.kind,
            state: screen.inState
        });
        screen.writing = !asked;
    }

    objectName: "screenSearch"
    title: qsTr("Search")
    subtitle: app.file.registration
    backText: qsTr("Back")
    backName: "searchBack"
    keys: Key {
        objectName: screen.writing ? "searchKey" : "searchAgain"
        width: parent.width
        broad: true
        look: screen.writing ? "solid" : "outline"
        text: screen.writing ? qsTr("Search") : qsTr("Search for something else")
        onClicked: {
            if (screen.writing)
                screen.ask();
            else
                screen.writing = true;
        }
    }

    Column {
        width: parent.width
        visible: screen.writing
        spacing: 12
        Field {
            id: words
            objectName: "searchWords"
            width: parent.width
            label: qsTr("Words")
            about: qsTr("in what was written, or a point's name")
            text: screen.search.was("words")
            onAccepted: screen.ask()
        }
        Field {
            id: part
            objectName: "searchPart"
            width: parent.width
            label: qsTr("Part")
            about: qsTr("name, number, serial, position")
            text: screen.search.was("part")
            onAccepted: screen.ask()
        }
        Row {
            width: parent.width
            spacing: 12
            Field {
                id: person
                objectName: "searchPerson"
                width: (parent.width - 12) * 0.62
                label: qsTr("Person")
                text: screen.search.was("person")
                onAccepted: screen.ask()
            }
            Field {
                id: jasc
                objectName: "searchJasc"
                width: parent.width - 12 - person.width
                label: qsTr("JASC")
                text: screen.search.was("jasc")
                inputMethodHints: Qt.ImhDigitsOnly
                onAccepted: screen.ask()
            }
        }
        Key {
            objectName: "searchMoreFields"
            width: parent.width
            visible: !screen.more
            text: qsTr("By date, kind or state")
            onClicked: screen.more = true
        }
        Pair {
            id: days
            width: parent.width
            visible: screen.more
            Field {
                id: from
                objectName: "searchFrom"
                width: days.each
                height: Math.max(implicitHeight, days.tallest)
                label: qsTr("From")
                about: qsTr("y-m-d")
                text: screen.search.was("from")
                onAccepted: screen.ask()
            }
            Field {
                id: until
                objectName: "searchUntil"
                width: days.each
                height: Math.max(implicitHeight, days.tallest)
                label: qsTr("Until")
                about: qsTr("y-m-d")
                text: screen.search.was("until")
                onAccepted: screen.ask()
            }
        }
        OneOf {
            width: parent.width
            visible: screen.more
            title: qsTr("Kind of record")
            prefix: "searchKind."
            all: screen.search.kinds
            chosen: screen.kind
            onAsked: id => screen.kind = id
        }
        OneOf {
            width: parent.width
            visible: screen.more
            title: qsTr("What was found is now")
            prefix: "searchState."
            all: screen.search.states
            chosen: screen.inState
            onAsked: id => screen.inState = id
        }
    }
    Heading {
        objectName: "searchCount"
        width: parent.width
        visible: !screen.writing
        text: screen.search.searching ? qsTr("Searching …") : screen.search.hits.count === 0 ? qsTr("Nothing fits.") : screen.search.canMore ? qsTr("The newest %1 that fit").arg(screen.search.hits.count) : screen.search.hits.count === 1 ? qsTr("1 record fits") : qsTr("%1 records fit").arg(screen.search.hits.count)
    }
    Repeater {
        model: screen.writing ? null : screen.search.hits
        RecordKey {
            required property string gloss
            width: screen.columnWidth
            note: gloss
            onClicked: screen.app.file.open(recordId)
        }
    }
    Key {
        objectName: "searchMore"
        width: parent.width
        broad: true
        visible: !screen.writing && screen.search.canMore
        text: qsTr("Show earlier ones")
        onClicked: screen.search.more()
    }
}
