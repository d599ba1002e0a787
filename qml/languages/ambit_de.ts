<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AddAircraftSheet</name>
    <message>
        <source>Add an aircraft</source>
        <translation>Luftfahrzeug anlegen</translation>
    </message>
    <message>
        <source>The airframe file describes its kind; the handbook has the last word.</source>
        <translation>Die Musterdatei beschreibt das Muster; das letzte Wort hat das Flughandbuch.</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Anlegen</translation>
    </message>
    <message>
        <source>Airframe file</source>
        <translation>Musterdatei</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Datei wählen</translation>
    </message>
    <message>
        <source>Registration</source>
        <translation>Kennzeichen</translation>
    </message>
    <message>
        <source>as painted on it</source>
        <translation>wie aufgemalt</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Werknummer</translation>
    </message>
</context>
<context>
    <name>AircraftScreen</name>
    <message>
        <source>Which aircraft?</source>
        <translation>Welches Luftfahrzeug?</translation>
    </message>
    <message>
        <source>The pilot in command decides. Ambit reminds and records.</source>
        <translation>Der verantwortliche Pilot entscheidet. Ambit erinnert und schreibt mit.</translation>
    </message>
    <message>
        <source>Add an aircraft</source>
        <translation>Luftfahrzeug anlegen</translation>
    </message>
    <message>
        <source>Text %1 %</source>
        <translation>Text %1 %</translation>
    </message>
    <message>
        <source>Makes all text larger, up to twice; then small again</source>
        <translation>Macht alle Texte größer, bis doppelt so groß; dann wieder klein</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>The night appearance spares eyes that are used to the dark</source>
        <translation>Die Nachtdarstellung schont Augen, die sich an das Dunkel gewöhnt haben</translation>
    </message>
    <message>
        <source>There is no aircraft here yet. Add one: its airframe file, its registration, its serial number.</source>
        <translation>Hier ist noch kein Luftfahrzeug. Zum Anlegen: Musterdatei, Kennzeichen, Werknummer.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>Werknr. %1</translation>
    </message>
    <message>
        <source>Go on with the round</source>
        <translation>Rundgang fortsetzen</translation>
    </message>
</context>
<context>
    <name>AnswerSheet</name>
    <message>
        <source>Decline</source>
        <translation>Ablehnen</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>Decline it</source>
        <translation>Ablehnen</translation>
    </message>
    <message>
        <source>Give the answer</source>
        <translation>Antwort geben</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Warum nicht</translation>
    </message>
    <message>
        <source>Your answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>What was asked and why it is declined stand in the record.</source>
        <translation>Die Bitte und der Grund der Ablehnung stehen im Protokoll.</translation>
    </message>
    <message>
        <source>Question and answer stand in the record.</source>
        <translation>Frage und Antwort stehen im Protokoll.</translation>
    </message>
</context>
<context>
    <name>AskedSheet</name>
    <message>
        <source>Asked</source>
        <translation>Nachgefragt</translation>
    </message>
    <message>
        <source>By those who follow this round</source>
        <translation>Von denen, die bei diesem Rundgang mitsehen</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation>Nichts ist offen.</translation>
    </message>
    <message>
        <source>The walk leads there. It ends when the point is settled.</source>
        <translation>Der Weg führt dorthin. Es endet, wenn der Punkt erledigt ist.</translation>
    </message>
    <message>
        <source>Decline</source>
        <translation>Ablehnen</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Gelesen</translation>
    </message>
</context>
<context>
    <name>AskedStrip</name>
    <message>
        <source>and %1 more</source>
        <translation>und %1 mehr</translation>
    </message>
    <message>
        <source>%1 asks</source>
        <translation>%1 fragt nach</translation>
    </message>
</context>
<context>
    <name>BeginScreen</name>
    <message>
        <source>Begin a round</source>
        <translation>Rundgang beginnen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Beginnen</translation>
    </message>
    <message>
        <source>Which walk</source>
        <translation>Welcher Rundgang</translation>
    </message>
    <message numerus="yes">
        <source>%n points</source>
        <translation>
            <numerusform>%n Punkt</numerusform>
            <numerusform>%n Punkte</numerusform>
        </translation>
    </message>
    <message>
        <source>Who walks</source>
        <translation>Wer geht</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Certificate or licence number</source>
        <translation>Lizenznummer</translation>
    </message>
    <message>
        <source>Walk it on your own</source>
        <translation>Allein gehen</translation>
    </message>
    <message>
        <source>What others found today is not shown, so that two rounds can be laid side by side</source>
        <translation>Was andere heute gefunden haben, wird nicht gezeigt, damit zwei Rundgänge nebeneinandergelegt werden können</translation>
    </message>
    <message>
        <source>What the counters say</source>
        <translation>Was die Zähler zeigen</translation>
    </message>
    <message>
        <source>last time %1</source>
        <translation>zuletzt %1</translation>
    </message>
    <message>
        <source>On every round</source>
        <translation>Bei jedem Rundgang</translation>
    </message>
</context>
<context>
    <name>BesideScreen</name>
    <message>
        <source>On their own: wasn&apos;t shown what others found that day</source>
        <translation>Für sich: sah nicht, was andere an dem Tag gefunden hatten</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Choose another round of the same walk</source>
        <translation>Anderen Rundgang gleicher Art wählen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>There is no other record of this walk with the same description of the machine.</source>
        <translation>Es gibt kein anderes Protokoll dieses Rundgangs mit derselben Beschreibung des Musters.</translation>
    </message>
    <message>
        <source>Kappa is agreement beyond chance: 1 is full, 0 no better than chance. Where both say sound nearly throughout, it tells little. Nobody is right by it.</source>
        <translation>Kappa ist Übereinstimmung über den Zufall hinaus: 1 ist völlige, 0 nicht mehr als Zufall. Wo beide fast überall „in Ordnung“ sagen, sagt es wenig. Wer recht hat, sagt es nicht.</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Erster</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Zweiter</translation>
    </message>
    <message>
        <source>Seen differently</source>
        <translation>Verschieden gesehen</translation>
    </message>
    <message>
        <source>Settled by one only</source>
        <translation>Nur von einem erledigt</translation>
    </message>
    <message>
        <source>How often each word met which</source>
        <translation>Wie oft welches Ergebnis auf welches traf</translation>
    </message>
    <message>
        <source>Rows: the first. Columns: the second.</source>
        <translation>Zeilen: der erste. Spalten: der zweite.</translation>
    </message>
</context>
<context>
    <name>BlockedSheet</name>
    <message>
        <source>This stand can&apos;t be used</source>
        <translation>Dieser Standort ist nicht nutzbar</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Warum nicht</translation>
    </message>
    <message>
        <source>Blocked</source>
        <translation>Versperrt</translation>
    </message>
    <message>
        <source>Slippery or iced</source>
        <translation>Rutschig oder vereist</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Unsicher</translation>
    </message>
    <message>
        <source>Or in your words</source>
        <translation>Oder in eigenen Worten</translation>
    </message>
    <message>
        <source>It can&apos;t be used, as I wrote</source>
        <translation>Nicht nutzbar, wie geschrieben</translation>
    </message>
    <message>
        <source>What is left is ordered anew without it. What can be settled nowhere else stays to be said as not inspected.</source>
        <translation>Der Rest wird ohne ihn neu geordnet. Was sich sonst nirgends erledigen lässt, bleibt als nicht geprüft zu melden.</translation>
    </message>
</context>
<context>
    <name>CameraPlace</name>
    <message>
        <source>There is no camera here. Take the photo with another device and add its file.</source>
        <translation>Hier ist keine Kamera. Das Foto mit einem anderen Gerät aufnehmen und die Datei hinzufügen.</translation>
    </message>
    <message>
        <source>Put the camera away</source>
        <translation>Kamera weglegen</translation>
    </message>
</context>
<context>
    <name>CameraSession</name>
    <message>
        <source>The camera can&apos;t be used: %1</source>
        <translation>Die Kamera ist nicht nutzbar: %1</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>Die Kamera startet.</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Foto aufnehmen</translation>
    </message>
</context>
<context>
    <name>Card</name>
    <message>
        <source>Go to %1</source>
        <translation>Weiter zu %1</translation>
    </message>
    <message>
        <source>Every point is settled</source>
        <translation>Jeder Punkt ist erledigt</translation>
    </message>
    <message>
        <source>1 point can&apos;t be settled now</source>
        <translation>1 Punkt lässt sich jetzt nicht erledigen</translation>
    </message>
    <message>
        <source>%1 points can&apos;t be settled now</source>
        <translation>%1 Punkte lassen sich jetzt nicht erledigen</translation>
    </message>
    <message>
        <source>No way leads on from here. Say what can be used again, or settle what is left as not inspected.</source>
        <translation>Von hier führt kein Weg weiter. Angeben, was wieder nutzbar ist, oder den Rest als nicht geprüft erledigen.</translation>
    </message>
</context>
<context>
    <name>CardKeys</name>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Back to the walk</source>
        <translation>Zurück zum Rundgang</translation>
    </message>
    <message>
        <source>Settle again</source>
        <translation>Neu erledigen</translation>
    </message>
    <message>
        <source>I am at the foot of it</source>
        <translation>Ich stehe davor</translation>
    </message>
    <message>
        <source>I am there</source>
        <translation>Ich bin da</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Not inspected</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>Can&apos;t be used</source>
        <translation>Nicht nutzbar</translation>
    </message>
    <message>
        <source>In the way</source>
        <translation>Im Weg</translation>
    </message>
    <message>
        <source>A wall, another machine: mark it on the figure</source>
        <translation>Eine Wand, ein anderes Luftfahrzeug: auf der Zeichnung markieren</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Review, note, file, night, text size</source>
        <translation>Durchsicht, Notiz, Akte, Nacht, Textgröße</translation>
    </message>
    <message>
        <source>To be compared, or measured in</source>
        <translation>Zum Vergleichen oder um darin zu messen</translation>
    </message>
</context>
<context>
    <name>CardWords</name>
    <message>
        <source>Something is still open. The review says what.</source>
        <translation>Etwas ist noch offen. Die Durchsicht zeigt, was.</translation>
    </message>
    <message>
        <source>Look once more, then conclude.</source>
        <translation>Noch einmal hinsehen, dann abschließen.</translation>
    </message>
    <message>
        <source>The round waits here as it stands. Before going on, look where you left off.</source>
        <translation>Der Rundgang wartet hier, wie er steht. Vor dem Weitergehen dort hinsehen, wo er unterbrochen wurde.</translation>
    </message>
    <message>
        <source>Last time</source>
        <translation>Letztes Mal</translation>
    </message>
    <message>
        <source>Settled: %1</source>
        <translation>Erledigt: %1</translation>
    </message>
</context>
<context>
    <name>Carried</name>
    <message>
        <source>Deferred %1 on %2, placard %3</source>
        <translation>Zurückgestellt %1 nach %2, Hinweisschild %3</translation>
    </message>
    <message>
        <source>, until %1</source>
        <translation>, bis %1</translation>
    </message>
    <message>
        <source>: has it grown?</source>
        <translation>: Ist es mehr geworden?</translation>
    </message>
    <message>
        <source>Put right %1 by %2: %3 Is it sound now?</source>
        <translation>Behoben %1 von %2: %3 Ist es jetzt in Ordnung?</translation>
    </message>
    <message>
        <source>Found %1: %2</source>
        <translation>Gefunden %1: %2</translation>
    </message>
    <message>
        <source>It grounds the aircraft until it is put right. Has it been?</source>
        <translation>Das Luftfahrzeug bleibt am Boden, bis es behoben ist. Ist es das?</translation>
    </message>
    <message>
        <source>Nobody has assessed it yet: has it grown?</source>
        <translation>Noch hat es niemand beurteilt: Ist es mehr geworden?</translation>
    </message>
    <message>
        <source>deferred</source>
        <translation>zurückgestellt</translation>
    </message>
    <message>
        <source>grounds</source>
        <translation>am Boden</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
</context>
<context>
    <name>CarriedList</name>
    <message>
        <source>To look at again on this round</source>
        <translation>Bei diesem Rundgang noch einmal ansehen</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>Warning: %1</source>
        <translation>Warnung: %1</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
</context>
<context>
    <name>CodeCamera</name>
    <message>
        <source>There is no camera here. Type the letters instead.</source>
        <translation>Hier ist keine Kamera. Stattdessen die Buchstaben eintippen.</translation>
    </message>
    <message>
        <source>Put the camera away</source>
        <translation>Kamera weglegen</translation>
    </message>
</context>
<context>
    <name>CodePlace</name>
    <message>
        <source>Scan it with the camera</source>
        <translation>Mit der Kamera lesen</translation>
    </message>
    <message>
        <source>From a picture of it</source>
        <translation>Aus einem Bild davon</translation>
    </message>
    <message>
        <source>There is no such code in that picture. Take it straight on, all of the code in it.</source>
        <translation>In diesem Bild ist kein solcher Code. Gerade von vorn aufnehmen, mit dem ganzen Code darin.</translation>
    </message>
</context>
<context>
    <name>ComparedWalk</name>
    <message>
        <source>The two orders are being compared</source>
        <translation>Die beiden Reihenfolgen werden verglichen</translation>
    </message>
    <message>
        <source>This way round</source>
        <translation>Dieser Weg</translation>
    </message>
    <message>
        <source>As listed</source>
        <translation>Wie aufgelistet</translation>
    </message>
</context>
<context>
    <name>ConcludeScreen</name>
    <message>
        <source>Conclusion</source>
        <translation>Abschluss</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Choose first</source>
        <translation>Erst wählen</translation>
    </message>
    <message>
        <source>Conclude: fit</source>
        <translation>Abschluss: flugbereit</translation>
    </message>
    <message>
        <source>Conclude: not fit</source>
        <translation>Abschluss: nicht flugbereit</translation>
    </message>
    <message>
        <source>In your judgement, is this aircraft fit for this flight?</source>
        <translation>Ist dieses Luftfahrzeug nach eigenem Urteil für diesen Flug bereit?</translation>
    </message>
    <message>
        <source>Not fit</source>
        <translation>Nicht flugbereit</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Flugbereit</translation>
    </message>
    <message>
        <source>Nothing stands against fit.</source>
        <translation>Nichts spricht gegen flugbereit.</translation>
    </message>
    <message>
        <source>What stands against fit</source>
        <translation>Was gegen flugbereit spricht</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>Ambit never decides. The pilot in command does; the handbook and the local rules have the last word.</source>
        <translation>Ambit entscheidet nie. Das tut der verantwortliche Pilot; das letzte Wort haben das Flughandbuch und die örtlichen Regeln.</translation>
    </message>
</context>
<context>
    <name>CounterFields</name>
    <message>
        <source>last %1</source>
        <translation>zuletzt %1</translation>
    </message>
</context>
<context>
    <name>CountersignScreen</name>
    <message>
        <source>Sign under it</source>
        <translation>Gegenzeichnen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>You sign the record as it stands, and the signatures already under it. Nothing in it changes.</source>
        <translation>Gezeichnet wird das Protokoll, wie es steht, mit den Unterschriften, die es schon trägt. Nichts darin ändert sich.</translation>
    </message>
</context>
<context>
    <name>DeferScreen</name>
    <message>
        <source>Defer</source>
        <translation>Zurückstellen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>It grounds the aircraft</source>
        <translation>Es hält das Luftfahrzeug am Boden</translation>
    </message>
    <message>
        <source>On which basis</source>
        <translation>Auf welcher Grundlage</translation>
    </message>
    <message>
        <source>For an aircraft without a minimum equipment list: its questions follow</source>
        <translation>Für ein Luftfahrzeug ohne Mindestausrüstungs-Liste: ihre Fragen folgen</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>Question %1 of %2</source>
        <translation>Frage %1 von %2</translation>
    </message>
    <message>
        <source>I answered wrongly: ask again</source>
        <translation>Falsch geantwortet: neu fragen</translation>
    </message>
    <message>
        <source>Another basis</source>
        <translation>Andere Grundlage</translation>
    </message>
</context>
<context>
    <name>DeferTerms</name>
    <message>
        <source>What was found on looking closer</source>
        <translation>Was bei näherem Hinsehen gefunden wurde</translation>
    </message>
    <message>
        <source>Where the basis says so: list and item, permission</source>
        <translation>Wo die Grundlage es sagt: Liste und Posten, Genehmigung</translation>
    </message>
    <message>
        <source>Made safe</source>
        <translation>Gesichert</translation>
    </message>
    <message>
        <source>Deactivated</source>
        <translation>Stillgelegt</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Ausgebaut</translation>
    </message>
    <message>
        <source>Placard: what it says, and where</source>
        <translation>Hinweisschild: was darauf steht, und wo</translation>
    </message>
    <message>
        <source>What the aircraft is not used for meanwhile</source>
        <translation>Wofür das Luftfahrzeug solange nicht eingesetzt wird</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Date: year-month-day; empty: none</source>
        <translation>Datum: Jahr-Monat-Tag; leer: keines</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>From today on</source>
        <translation>Ab heute</translation>
    </message>
    <message>
        <source>Who found that it is no hazard</source>
        <translation>Wer festgestellt hat, dass keine Gefahr besteht</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Certificate or licence number</source>
        <translation>Lizenznummer</translation>
    </message>
</context>
<context>
    <name>DiffersList</name>
    <message>
        <source>Can&apos;t be used: %1</source>
        <translation>Nicht nutzbar: %1</translation>
    </message>
    <message>
        <source>Can be used again</source>
        <translation>Wieder nutzbar</translation>
    </message>
    <message>
        <source>In the way</source>
        <translation>Im Weg</translation>
    </message>
    <message>
        <source>Not in the way any more</source>
        <translation>Nicht mehr im Weg</translation>
    </message>
</context>
<context>
    <name>DiscrepancyScreen</name>
    <message>
        <source>Discrepancy</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Defer</source>
        <translation>Zurück­stellen</translation>
    </message>
    <message>
        <source>Leave it as it is for a while, on a stated basis</source>
        <translation>Eine Weile so lassen, auf einer angegebenen Grundlage</translation>
    </message>
    <message>
        <source>Grounds</source>
        <translation>Am Boden lassen</translation>
    </message>
    <message>
        <source>The aircraft doesn&apos;t fly until it is put right</source>
        <translation>Das Luftfahrzeug fliegt nicht, bis es behoben ist</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Beheben</translation>
    </message>
    <message>
        <source>History of this point</source>
        <translation>Verlauf dieses Punktes</translation>
    </message>
    <message>
        <source>From the first to the last</source>
        <translation>Vom ersten bis zum letzten</translation>
    </message>
</context>
<context>
    <name>EntryWords</name>
    <message>
        <source>Deferred</source>
        <translation>Zurückgestellt</translation>
    </message>
    <message>
        <source>Grounds the aircraft</source>
        <translation>Hält das Luftfahrzeug am Boden</translation>
    </message>
    <message>
        <source>Inspection done</source>
        <translation>Kontrolle erledigt</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>Arbeit erledigt</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Behoben</translation>
    </message>
    <message>
        <source>Counters read</source>
        <translation>Zähler abgelesen</translation>
    </message>
    <message>
        <source>Part taken off</source>
        <translation>Teil ausgebaut</translation>
    </message>
    <message>
        <source>Part fitted</source>
        <translation>Teil eingebaut</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Teil getauscht</translation>
    </message>
    <message>
        <source>Handed over to %1</source>
        <translation>Übergeben an %1</translation>
    </message>
    <message>
        <source>Key of %1 trusted</source>
        <translation>Schlüssel von %1 anerkannt</translation>
    </message>
    <message>
        <source>Key revoked</source>
        <translation>Schlüssel widerrufen</translation>
    </message>
    <message>
        <source>Records let go</source>
        <translation>Protokolle ausgesondert</translation>
    </message>
    <message>
        <source>Discrepancy</source>
        <translation>Beanstandung</translation>
    </message>
    <message>
        <source>Assessment</source>
        <translation>Beurteilung</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Puts right</source>
        <translation>Behebt</translation>
    </message>
    <message>
        <source>Inspections done</source>
        <translation>Erledigte Kontrollen</translation>
    </message>
    <message>
        <source>Counters</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Ausgebaut</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Eingebaut</translation>
    </message>
    <message>
        <source>To</source>
        <translation>An</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wortlaut</translation>
    </message>
    <message>
        <source>Whose key</source>
        <translation>Wessen Schlüssel</translation>
    </message>
    <message>
        <source>Good for</source>
        <translation>Gilt als</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Fingerprint</source>
        <translation>Fingerabdruck</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>of %1 UTC, record %2</source>
        <translation>vom %1 UTC, Protokoll %2</translation>
    </message>
    <message>
        <source>%1 (found in record %2)</source>
        <translation>%1 (gefunden in Protokoll %2)</translation>
    </message>
    <message>
        <source>, number %1</source>
        <translation>, Nummer %1</translation>
    </message>
    <message>
        <source>, serial %1</source>
        <translation>, Seriennr. %1</translation>
    </message>
    <message>
        <source>Completed on</source>
        <translation>Abgeschlossen am</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Ausgeführt von</translation>
    </message>
    <message>
        <source>Approved under</source>
        <translation>Freigegeben als</translation>
    </message>
    <message>
        <source>Counters then</source>
        <translation>Zählerstände dabei</translation>
    </message>
    <message>
        <source>Where it says so</source>
        <translation>Wo es steht</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Ja</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Nein</translation>
    </message>
    <message>
        <source>The item is</source>
        <translation>Der Posten ist</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>ausgebaut</translation>
    </message>
    <message>
        <source>deactivated</source>
        <translation>stillgelegt</translation>
    </message>
    <message>
        <source>Placard</source>
        <translation>Hinweisschild</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Beschränkungen</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Until the counters say</source>
        <translation>Bis zum Zählerstand</translation>
    </message>
    <message>
        <source>No hazard, found by</source>
        <translation>Keine Gefahr, festgestellt von</translation>
    </message>
    <message>
        <source>Renewed before a value</source>
        <translation>Vor einem Wert erneuert</translation>
    </message>
    <message>
        <source>Not renewed before a value</source>
        <translation>Vor einem Wert nicht erneuert</translation>
    </message>
    <message>
        <source>Value of the record</source>
        <translation>Wert des Protokolls</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Was gemessen wurde</translation>
    </message>
</context>
<context>
    <name>ExportScreen</name>
    <message>
        <source>Write the whole file</source>
        <translation>Ganze Akte schreiben</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation>Wird geschrieben …</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Every record with its signatures, PDFs and photos, a page to read them by, and how to check them with stock tools: one zip for the next owner, a mechanic or the drawer at home. Nothing leaves this archive.</source>
        <translation>Jedes Protokoll mit Unterschriften, PDF und Fotos, eine Seite zum Lesen, und wie alles mit gängigen Werkzeugen zu prüfen ist: ein ZIP für den nächsten Halter, für die Werkstatt oder für die Schublade zu Hause. Nichts verlässt dieses Archiv.</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Ordner wählen</translation>
    </message>
    <message>
        <source>Written:
%1
%2</source>
        <translation>Geschrieben:
%1
%2</translation>
    </message>
</context>
<context>
    <name>FigureView</name>
    <message>
        <source>The figure: the aircraft from above, nose up</source>
        <translation>Die Zeichnung: das Luftfahrzeug von oben, Nase nach oben</translation>
    </message>
    <message>
        <source>Arrow keys choose a zone, Enter goes there</source>
        <translation>Pfeiltasten wählen einen Bereich, die Eingabetaste geht dorthin</translation>
    </message>
</context>
<context>
    <name>FileDialogs</name>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.heic *.heif)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.heic *.heif)</translation>
    </message>
    <message>
        <source>Airframes (*.json)</source>
        <translation>Muster (*.json)</translation>
    </message>
</context>
<context>
    <name>FileKeys</name>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>History of a point</source>
        <translation>Verlauf eines Punktes</translation>
    </message>
    <message>
        <source>Where findings were</source>
        <translation>Wo Befunde waren</translation>
    </message>
    <message>
        <source>Verify</source>
        <translation>Nachprüfen</translation>
    </message>
    <message>
        <source>Write the whole file</source>
        <translation>Ganze Akte schreiben</translation>
    </message>
    <message>
        <source>Read counters</source>
        <translation>Zähler ablesen</translation>
    </message>
    <message>
        <source>Inspection or work done</source>
        <translation>Kontrolle oder Arbeit erledigt</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Teil getauscht</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Whose key counts</source>
        <translation>Wessen Schlüssel gilt</translation>
    </message>
    <message>
        <source>What may go</source>
        <translation>Was wegdarf</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>Hineinsehen</translation>
    </message>
    <message>
        <source>Sign something new</source>
        <translation>Neues unterschreiben</translation>
    </message>
    <message>
        <source>Keep it in order</source>
        <translation>In Ordnung halten</translation>
    </message>
    <message>
        <source>Leaves a signed record in the file</source>
        <translation>Hinterlässt ein unterschriebenes Protokoll in der Akte</translation>
    </message>
</context>
<context>
    <name>FileScreen</name>
    <message>
        <source>File of %1</source>
        <translation>Akte von %1</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Akte</translation>
    </message>
    <message>
        <source>Choose an aircraft</source>
        <translation>Luftfahrzeug wählen</translation>
    </message>
    <message>
        <source>The file is being read …</source>
        <translation>Die Akte wird gelesen …</translation>
    </message>
    <message>
        <source>1 record</source>
        <translation>1 Protokoll</translation>
    </message>
    <message>
        <source>%1 records</source>
        <translation>%1 Protokolle</translation>
    </message>
    <message>
        <source>Open discrepancies</source>
        <translation>Offene Beanstandungen</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Keine.</translation>
    </message>
    <message>
        <source>Put right, to be seen on the next round</source>
        <translation>Behoben, beim nächsten Rundgang anzusehen</translation>
    </message>
    <message>
        <source>Due next</source>
        <translation>Als Nächstes fällig</translation>
    </message>
    <message>
        <source>Show all %1 that come due</source>
        <translation>Alle %1 Fälligkeiten zeigen</translation>
    </message>
    <message>
        <source>Last rounds</source>
        <translation>Letzte Rundgänge</translation>
    </message>
    <message>
        <source>There is no round yet. It leaves a record when it is signed.</source>
        <translation>Noch kein Rundgang. Er hinterlässt ein Protokoll, wenn er unterschrieben ist.</translation>
    </message>
    <message>
        <source>All records: %1</source>
        <translation>Alle Protokolle: %1</translation>
    </message>
</context>
<context>
    <name>FileState</name>
    <message>
        <source>Stands against fit</source>
        <translation>Spricht gegen flugbereit</translation>
    </message>
    <message>
        <source>The file is being read …</source>
        <translation>Die Akte wird gelesen …</translation>
    </message>
    <message>
        <source>The file can&apos;t be read whole, so nothing can be said from it. Verify says which records don&apos;t hold.</source>
        <translation>Die Akte ist nicht ganz lesbar, also lässt sich aus ihr nichts sagen. Nachprüfen zeigt, welche Protokolle nicht halten.</translation>
    </message>
    <message>
        <source>Nothing in the file stands against it. The pilot in command looks and decides.</source>
        <translation>Nichts in der Akte spricht dagegen. Der verantwortliche Pilot sieht nach und entscheidet.</translation>
    </message>
    <message>
        <source>A record is missing here: what it says isn&apos;t known. Verify names it.</source>
        <translation>Hier fehlt ein Protokoll: Was darin steht, ist nicht bekannt. Nachprüfen nennt es.</translation>
    </message>
    <message>
        <source>%1 records are missing here: what they say isn&apos;t known. Verify names them.</source>
        <translation>Hier fehlen %1 Protokolle: Was darin steht, ist nicht bekannt. Nachprüfen nennt sie.</translation>
    </message>
</context>
<context>
    <name>FileWords</name>
    <message>
        <source>Round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Assessment</source>
        <translation>Beurteilung</translation>
    </message>
    <message>
        <source>Rectification</source>
        <translation>Behebung</translation>
    </message>
    <message>
        <source>Counter reading</source>
        <translation>Zählerstand</translation>
    </message>
    <message>
        <source>Part change</source>
        <translation>Teiletausch</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Übergabe</translation>
    </message>
    <message>
        <source>Key trusted</source>
        <translation>Schlüssel anerkannt</translation>
    </message>
    <message>
        <source>Key revoked</source>
        <translation>Schlüssel widerrufen</translation>
    </message>
    <message>
        <source>Records let go</source>
        <translation>Protokolle ausgesondert</translation>
    </message>
    <message>
        <source>Not assessed</source>
        <translation>Nicht beurteilt</translation>
    </message>
    <message>
        <source>Deferred</source>
        <translation>Zurückgestellt</translation>
    </message>
    <message>
        <source>Grounding</source>
        <translation>Am Boden</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Behoben</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Abgeschlossen</translation>
    </message>
    <message>
        <source>Not assessed yet</source>
        <translation>Noch nicht beurteilt</translation>
    </message>
    <message>
        <source>Grounds the aircraft</source>
        <translation>Hält das Luftfahrzeug am Boden</translation>
    </message>
    <message>
        <source>Deferred on %1</source>
        <translation>Zurückgestellt nach %1</translation>
    </message>
    <message>
        <source> until %1</source>
        <translation> bis %1</translation>
    </message>
    <message>
        <source>Put right by %1; no round has seen it yet</source>
        <translation>Behoben von %1; noch hat es kein Rundgang gesehen</translation>
    </message>
    <message>
        <source>Put right, and seen sound after</source>
        <translation>Behoben, und danach in Ordnung gesehen</translation>
    </message>
    <message>
        <source>Found %1 by %2</source>
        <translation>Gefunden %1 von %2</translation>
    </message>
    <message>
        <source>, seen again once</source>
        <translation>, noch einmal gesehen</translation>
    </message>
    <message>
        <source>, seen again %1 times</source>
        <translation>, noch %1-mal gesehen</translation>
    </message>
    <message>
        <source>Not due yet</source>
        <translation>Noch nicht fällig</translation>
    </message>
    <message>
        <source>Due soon</source>
        <translation>Bald fällig</translation>
    </message>
    <message>
        <source>Beyond, within its allowance</source>
        <translation>Darüber, innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Passed</source>
        <translation>Überschritten</translation>
    </message>
    <message>
        <source>Has signed nothing in this file</source>
        <translation>Hat in dieser Akte nichts unterschrieben</translation>
    </message>
    <message>
        <source>Signed 1 record as %1</source>
        <translation>Hat 1 Protokoll als %1 unterschrieben</translation>
    </message>
    <message>
        <source>Signed %1 records as %2</source>
        <translation>Hat %1 Protokolle als %2 unterschrieben</translation>
    </message>
    <message>
        <source>Good for nothing since %1</source>
        <translation>Gilt seit %1 nicht mehr</translation>
    </message>
    <message>
        <source>The owner&apos;s: the first to say whose key counts</source>
        <translation>Gehört dem Halter: Er sagt als Erster, wessen Schlüssel gilt</translation>
    </message>
    <message>
        <source>Good for %1 since %2</source>
        <translation>Gilt als %1 seit %2</translation>
    </message>
    <message>
        <source>The owner has said nothing of this key</source>
        <translation>Der Halter hat von diesem Schlüssel nichts gesagt</translation>
    </message>
    <message>
        <source>pilot</source>
        <comment>within a sentence</comment>
        <translation>Pilot</translation>
    </message>
    <message>
        <source>instructor</source>
        <comment>within a sentence</comment>
        <translation>Fluglehrer</translation>
    </message>
    <message>
        <source>owner</source>
        <comment>within a sentence</comment>
        <translation>Halter</translation>
    </message>
    <message>
        <source>mechanic</source>
        <comment>within a sentence</comment>
        <translation>Mechaniker</translation>
    </message>
    <message>
        <source>minimum equipment list</source>
        <translation>Mindestausrüstungs-Liste</translation>
    </message>
    <message>
        <source>other</source>
        <comment>basis of a deferral</comment>
        <translation>einer anderen Grundlage</translation>
    </message>
    <message>
        <source>Renewal told afterwards</source>
        <translation>Erneuerung, nachgetragen</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Grounds the aircraft</source>
        <translation>Hält das Luftfahrzeug am Boden</translation>
    </message>
    <message>
        <source>For assessment</source>
        <translation>Zu beurteilen</translation>
    </message>
</context>
<context>
    <name>FindingSheet</name>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Keep the finding</source>
        <translation>Befund behalten</translation>
    </message>
    <message>
        <source>What you see, where, how large</source>
        <translation>Was zu sehen ist, wo, wie groß</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Was es bedeutet</translation>
    </message>
    <message>
        <source>Grounds the aircraft</source>
        <translation>Hält das Luftfahrzeug am Boden</translation>
    </message>
    <message>
        <source>At this point every finding does.</source>
        <translation>An diesem Punkt gilt das für jeden Befund.</translation>
    </message>
    <message>
        <source>Not flown until it is rectified.</source>
        <translation>Kein Flug, bis es behoben ist.</translation>
    </message>
    <message>
        <source>For assessment</source>
        <translation>Zu beurteilen</translation>
    </message>
    <message>
        <source>You assess it before the conclusion.</source>
        <translation>Vor dem Abschluss zu beurteilen.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Weglassen: %1</translation>
    </message>
    <message>
        <source>Measure in a photo</source>
        <translation>In einem Foto messen</translation>
    </message>
    <message>
        <source>By a card that lies beside it</source>
        <translation>Mit einer Karte, die daneben liegt</translation>
    </message>
</context>
<context>
    <name>FindingsFigure</name>
    <message>
        <source>The figure: the aircraft from above, nose up, with the number of findings in each zone</source>
        <translation>Die Zeichnung: das Luftfahrzeug von oben, Nase nach oben, mit der Zahl der Befunde in jedem Bereich</translation>
    </message>
</context>
<context>
    <name>FindingsScreen</name>
    <message>
        <source>Where findings were</source>
        <translation>Wo Befunde waren</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Nothing was found in that time.</source>
        <translation>In dieser Zeit wurde nichts gefunden.</translation>
    </message>
    <message>
        <source>Each number counts the findings of that time in its zone; the closer the hatching, the more. Touch a zone to read them.</source>
        <translation>Jede Zahl zählt die Befunde dieser Zeit in ihrem Bereich; je dichter die Schraffur, desto mehr. Einen Bereich berühren, um sie zu lesen.</translation>
    </message>
    <message>
        <source>All zones</source>
        <translation>Alle Bereiche</translation>
    </message>
</context>
<context>
    <name>FollowKey</name>
    <message>
        <source>Who follows</source>
        <translation>Wer mitsieht</translation>
    </message>
    <message>
        <source>Let others follow</source>
        <translation>Andere mitsehen lassen</translation>
    </message>
    <message>
        <source>From their own devices, on this network</source>
        <translation>Von eigenen Geräten, in diesem Netz</translation>
    </message>
</context>
<context>
    <name>FollowPanel</name>
    <message>
        <source>Here; no round is walked yet.</source>
        <translation>Da; noch kein Rundgang.</translation>
    </message>
    <message>
        <source>Your signature is under the record on both devices.</source>
        <translation>Die eigene Unterschrift steht auf beiden Geräten unter dem Protokoll.</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Gesagt</translation>
    </message>
    <message>
        <source>Settled within the time that one takes</source>
        <translation>Schneller erledigt, als es dauert</translation>
    </message>
    <message>
        <source>Time at each stand</source>
        <translation>Zeit an jedem Standort</translation>
    </message>
    <message>
        <source>Taken, and what the airframe&apos;s description says these points take.</source>
        <translation>Gebraucht, und was diese Punkte laut Beschreibung des Musters brauchen.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
</context>
<context>
    <name>FollowScreen</name>
    <message>
        <source>Following %1</source>
        <translation>Mitsehen bei %1</translation>
    </message>
    <message>
        <source>The walk again</source>
        <translation>Der Rundgang noch einmal</translation>
    </message>
    <message>
        <source>%1 of %2 settled</source>
        <translation>%1/%2</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>See the record</source>
        <translation>Protokoll ansehen</translation>
    </message>
    <message>
        <source>See the record and sign</source>
        <translation>Protokoll ansehen und zeichnen</translation>
    </message>
    <message>
        <source>Say something</source>
        <translation>Etwas sagen</translation>
    </message>
    <message>
        <source>Look again, a question, a remark</source>
        <translation>Noch einmal ansehen, eine Frage, eine Bemerkung</translation>
    </message>
</context>
<context>
    <name>FollowerRow</name>
    <message>
        <source>Fingerprint %1</source>
        <translation>Fingerabdruck %1</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Ausschließen</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Ausschließen</translation>
    </message>
    <message>
        <source>Taken back, this device comes in again only with another code.</source>
        <translation>Danach kommt dieses Gerät nur mit einem anderen Code wieder herein.</translation>
    </message>
</context>
<context>
    <name>FollowersSheet</name>
    <message>
        <source>Has everything so far</source>
        <translation>Hat bisher alles</translation>
    </message>
    <message>
        <source>1 entry behind</source>
        <translation>1 Eintrag zurück</translation>
    </message>
    <message>
        <source>%1 entries behind</source>
        <translation>%1 Einträge zurück</translation>
    </message>
    <message>
        <source>Let one in</source>
        <translation>Jemanden einlassen</translation>
    </message>
    <message>
        <source>Who follows</source>
        <translation>Wer mitsieht</translation>
    </message>
    <message>
        <source>Nobody can follow now</source>
        <translation>Jetzt kann niemand mitsehen</translation>
    </message>
    <message>
        <source>Nobody follows yet</source>
        <translation>Noch sieht niemand mit</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Schlüssel erstellen</translation>
    </message>
    <message>
        <source>Let others follow</source>
        <translation>Andere mitsehen lassen</translation>
    </message>
    <message>
        <source>Show a code</source>
        <translation>Code zeigen</translation>
    </message>
    <message>
        <source>Put the code away</source>
        <translation>Code wegnehmen</translation>
    </message>
    <message>
        <source>Others on this network can follow your round on their own devices; nothing leaves this network. Each of them is let in by you, and taken back by you. Nobody can settle or change anything.</source>
        <translation>Andere in diesem Netz können dem Rundgang auf eigenen Geräten folgen; nichts verlässt dieses Netz. Jeder wird hier eingelassen und hier wieder ausgeschlossen. Niemand kann etwas erledigen oder ändern.</translation>
    </message>
    <message>
        <source>Not let in</source>
        <translation>Nicht eingelassen</translation>
    </message>
    <message>
        <source>Show a code to let the first device in.</source>
        <translation>Einen Code zeigen, um das erste Gerät einzulassen.</translation>
    </message>
    <message>
        <source>Who was let in before joins without a code. Show a code to let another device in.</source>
        <translation>Wer schon eingelassen war, kommt ohne Code dazu. Einen Code zeigen, um ein weiteres Gerät einzulassen.</translation>
    </message>
    <message>
        <source>May follow, too</source>
        <translation>Darf auch mitsehen</translation>
    </message>
    <message>
        <source>Read aloud what they say</source>
        <translation>Vorlesen, was sie sagen</translation>
    </message>
    <message>
        <source>This device has no voice: it is shown only</source>
        <translation>Dieses Gerät hat keine Stimme: Es wird nur gezeigt</translation>
    </message>
    <message>
        <source>Stop: nobody follows any more</source>
        <translation>Beenden: Niemand sieht mehr mit</translation>
    </message>
</context>
<context>
    <name>GroundScreen</name>
    <message>
        <source>It grounds the aircraft</source>
        <translation>Es hält das Luftfahrzeug am Boden</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Why it can&apos;t wait</source>
        <translation>Warum es nicht warten kann</translation>
    </message>
</context>
<context>
    <name>HabitsSheet</name>
    <message>
        <source>How you are asked</source>
        <translation>Wie gefragt wird</translation>
    </message>
    <message>
        <source>On this device, until it is changed here.</source>
        <translation>Auf diesem Gerät, bis es hier geändert wird.</translation>
    </message>
    <message>
        <source>Fewer: %1</source>
        <translation>Weniger: %1</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Weniger</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Mehr: %1</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>A key answers where one hand is free</source>
        <translation>Eine Taste antwortet, wo eine Hand frei ist</translation>
    </message>
    <message>
        <source>A clicker, a headset, a volume key, any key of a keyboard: one press sound, a long press finding, two presses say it again.</source>
        <translation>Ein Klicker, ein Headset, eine Lautstärketaste, jede Taste einer Tastatur: einmal drücken in Ordnung, lang drücken Befund, zweimal drücken sagt es noch einmal.</translation>
    </message>
    <message>
        <source>Told before the climb where no hand is free</source>
        <translation>Vor dem Aufstieg angesagt, wo keine Hand frei ist</translation>
    </message>
    <message>
        <source>In small portions; down again, each point is asked for.</source>
        <translation>In kleinen Portionen; wieder unten wird jeder Punkt abgefragt.</translation>
    </message>
    <message>
        <source>One point at a time</source>
        <translation>Ein Punkt auf einmal</translation>
    </message>
    <message>
        <source>%1 points at a time</source>
        <translation>%1 Punkte auf einmal</translation>
    </message>
    <message>
        <source>Every card is read aloud</source>
        <translation>Jede Karte wird vorgelesen</translation>
    </message>
    <message>
        <source>After an interruption</source>
        <translation>Nach einer Unterbrechung</translation>
    </message>
    <message>
        <source>The operator&apos;s choice: published advice differs. What was done stands in the record.</source>
        <translation>Der Betreiber wählt: Veröffentlichte Ratschläge gehen auseinander. Was geschah, steht im Protokoll.</translation>
    </message>
    <message>
        <source>Back some points</source>
        <translation>Einige Punkte zurück</translation>
    </message>
    <message>
        <source>The stand again</source>
        <translation>Standort noch einmal</translation>
    </message>
    <message>
        <source>From the start</source>
        <translation>Von vorn</translation>
    </message>
    <message>
        <source>Back one point</source>
        <translation>Einen Punkt zurück</translation>
    </message>
    <message>
        <source>Back %1 points</source>
        <translation>%1 Punkte zurück</translation>
    </message>
    <message>
        <source>Photos keep all that the camera wrote</source>
        <translation>Fotos behalten alles, was die Kamera schrieb</translation>
    </message>
    <message>
        <source>The place and the device go into the record, too, for all who read it. Otherwise only the time does.</source>
        <translation>Auch Ort und Gerät kommen ins Protokoll, für alle, die es lesen. Sonst nur die Zeit.</translation>
    </message>
</context>
<context>
    <name>HandOverScreen</name>
    <message>
        <source>Hand over</source>
        <translation>Übergeben</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>With this record the aircraft and its whole file go to another owner. It is the last page that you sign; the next owner goes on from it.</source>
        <translation>Mit diesem Protokoll gehen Luftfahrzeug und ganze Akte an einen anderen Halter. Es ist die letzte hier unterschriebene Seite; der nächste Halter schreibt sie fort.</translation>
    </message>
    <message>
        <source>To</source>
        <translation>An</translation>
    </message>
    <message>
        <source>Words, if any</source>
        <translation>Bemerkung, falls nötig</translation>
    </message>
</context>
<context>
    <name>HandsCard</name>
    <message>
        <source>One hand free: answer with a key</source>
        <translation>Eine Hand frei: mit einer Taste antworten</translation>
    </message>
    <message>
        <source>No hand free: read before the climb</source>
        <translation>Keine Hand frei: vor dem Aufstieg lesen</translation>
    </message>
    <message>
        <source>Being looked at: nothing can be touched</source>
        <translation>Wird angesehen: Nichts ist zu berühren</translation>
    </message>
    <message>
        <source>This needs a value: give it when both hands are free.</source>
        <translation>Das braucht einen Wert: angeben, wenn beide Hände frei sind.</translation>
    </message>
    <message>
        <source>Look at these now. Keep your hands for holding on.</source>
        <translation>Diese jetzt ansehen. Die Hände sind zum Festhalten da.</translation>
    </message>
    <message>
        <source>Read these, or listen. Then put the device away and climb.</source>
        <translation>Diese lesen oder anhören. Dann das Gerät wegstecken und aufsteigen.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>One more up there after these.</source>
        <translation>Danach oben noch einer.</translation>
    </message>
    <message>
        <source>%1 more up there after these.</source>
        <translation>Danach oben noch %1.</translation>
    </message>
    <message>
        <source>A key does it too: one press: up I go. Two presses: say it again.</source>
        <translation>Auch mit einer Taste: einmal drücken: hinauf. Zweimal drücken: noch einmal sagen.</translation>
    </message>
    <message>
        <source>A key does it too: a long press: down again. Two presses: say it again.</source>
        <translation>Auch mit einer Taste: lang drücken: wieder unten. Zweimal drücken: noch einmal sagen.</translation>
    </message>
    <message>
        <source>With a key: one press: I am there. Two presses: say it again.</source>
        <translation>Mit einer Taste: einmal drücken: ich bin da. Zweimal drücken: noch einmal sagen.</translation>
    </message>
    <message>
        <source>With a key: one press: done. Two presses: say it again.</source>
        <translation>Mit einer Taste: einmal drücken: fertig. Zweimal drücken: noch einmal sagen.</translation>
    </message>
    <message>
        <source>With a key: two presses: say it again.</source>
        <translation>Mit einer Taste: zweimal drücken: noch einmal sagen.</translation>
    </message>
    <message>
        <source>With a key: one press: sound. A long press: finding. Two presses: say it again.</source>
        <translation>Mit einer Taste: einmal drücken: in Ordnung. Lang drücken: Befund. Zweimal drücken: noch einmal sagen.</translation>
    </message>
    <message>
        <source>Up I go</source>
        <translation>Ich steige hinauf</translation>
    </message>
    <message>
        <source>Nothing can be touched until you are down again</source>
        <translation>Nichts ist zu berühren, bis Sie wieder unten sind</translation>
    </message>
    <message>
        <source>I am down again</source>
        <translation>Ich bin wieder unten</translation>
    </message>
    <message>
        <source>Each of them is asked for then</source>
        <translation>Jeder wird dann abgefragt</translation>
    </message>
    <message>
        <source>Say it again</source>
        <translation>Nochmal sagen</translation>
    </message>
    <message>
        <source>Not all of them</source>
        <translation>Nicht alle</translation>
    </message>
    <message>
        <source>Down again; they are read once more</source>
        <translation>Wieder unten; sie werden noch einmal vorgelesen</translation>
    </message>
    <message>
        <source>Touch instead</source>
        <translation>Doch berühren</translation>
    </message>
    <message>
        <source>At this stand only</source>
        <translation>Nur an diesem Standort</translation>
    </message>
</context>
<context>
    <name>HistoryScreen</name>
    <message>
        <source>History of a point</source>
        <translation>Verlauf eines Punktes</translation>
    </message>
    <message>
        <source>the newest first</source>
        <translation>die neuesten zuerst</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>Teil des Namens</translation>
    </message>
    <message>
        <source>And %1 more: write a part of its name.</source>
        <translation>Und %1 mehr: einen Teil des Namens schreiben.</translation>
    </message>
    <message>
        <source>Another point</source>
        <translation>Anderer Punkt</translation>
    </message>
    <message>
        <source>The records are being read …</source>
        <translation>Die Protokolle werden gelesen …</translation>
    </message>
    <message>
        <source>No record says anything of this point.</source>
        <translation>Kein Protokoll sagt etwas über diesen Punkt.</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Frühere zeigen</translation>
    </message>
    <message>
        <source>Where its values are going</source>
        <translation>Wohin seine Werte gehen</translation>
    </message>
    <message>
        <source>Chart of the values</source>
        <translation>Verlauf der Werte</translation>
    </message>
    <message>
        <source>A part was renewed</source>
        <translation>Ein Teil wurde erneuert</translation>
    </message>
</context>
<context>
    <name>InWordsSheet</name>
    <message>
        <source>What did you find?</source>
        <translation>Was wurde gefunden?</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
</context>
<context>
    <name>InterruptedSheet</name>
    <message>
        <source>Are you there?</source>
        <translation>Sind Sie da?</translation>
    </message>
    <message>
        <source>After an interruption</source>
        <translation>Nach einer Unterbrechung</translation>
    </message>
    <message>
        <source>I am here</source>
        <translation>Ich bin da</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>An interruption is when something gets left out. The rule here: %1.</source>
        <translation>Bei einer Unterbrechung bleibt leicht etwas aus. Die Regel hier: %1.</translation>
    </message>
    <message>
        <source>Before going on, look where you left off. Take your time.</source>
        <translation>Vor dem Weitergehen dort hinsehen, wo unterbrochen wurde. In Ruhe.</translation>
    </message>
</context>
<context>
    <name>InvitationCode</name>
    <message>
        <source>A code for the other device&apos;s camera</source>
        <translation>Ein Code für die Kamera des anderen Geräts</translation>
    </message>
    <message>
        <source>Lets one device in, once: %1 left</source>
        <translation>Lässt einmal ein Gerät ein: noch %1</translation>
    </message>
    <message>
        <source>Or typed on the other device:</source>
        <translation>Oder auf dem anderen Gerät getippt:</translation>
    </message>
    <message>
        <source>This network has no address that could be typed: the other device needs its camera.</source>
        <translation>Dieses Netz hat keine Adresse, die sich tippen ließe: Das andere Gerät braucht seine Kamera.</translation>
    </message>
</context>
<context>
    <name>JoinSheet</name>
    <message>
        <source>Follow another</source>
        <translation>Jemandem folgen</translation>
    </message>
    <message>
        <source>With the code on their screen</source>
        <translation>Mit dem Code auf dessen Bildschirm</translation>
    </message>
    <message>
        <source>Follow</source>
        <translation>Folgen</translation>
    </message>
    <message>
        <source>The code&apos;s letters</source>
        <translation>Buchstaben des Codes</translation>
    </message>
    <message>
        <source>spaces don&apos;t matter</source>
        <translation>Leerzeichen sind egal</translation>
    </message>
    <message>
        <source>On the device of whoever walks: More, “Who follows”, “Show a code”. It lets one device in, within five minutes.</source>
        <translation>Auf dem Gerät dessen, der geht: Mehr, „Wer mitsieht“, „Code zeigen“. Er lässt ein Gerät ein, innerhalb von fünf Minuten.</translation>
    </message>
</context>
<context>
    <name>KeyCard</name>
    <message>
        <source>A key nobody has named</source>
        <translation>Ein Schlüssel, den niemand benannt hat</translation>
    </message>
    <message>
        <source>Trust it</source>
        <translation>Gelten lassen</translation>
    </message>
    <message>
        <source>Revoke it</source>
        <translation>Widerrufen</translation>
    </message>
</context>
<context>
    <name>KeyFields</name>
    <message>
        <source>Key of %1</source>
        <translation>Schlüssel von %1</translation>
    </message>
    <message>
        <source>This device has no key yet. Your key signs what you conclude. It stays on this device, locked by a passphrase that nobody can recover.</source>
        <translation>Dieses Gerät hat noch keinen Schlüssel. Er unterschreibt, was Sie abschließen. Er bleibt auf diesem Gerät, gesperrt durch eine Passphrase, die niemand wiederherstellen kann.</translation>
    </message>
    <message>
        <source>A key of your own, beside those of the others who use this device. It stays here, locked by a passphrase that nobody can recover.</source>
        <translation>Ein eigener Schlüssel, neben denen der anderen auf diesem Gerät. Er bleibt hier, gesperrt durch eine Passphrase, die niemand wiederherstellen kann.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Eigener Name</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>at least 8 characters</source>
        <translation>mindestens 8 Zeichen</translation>
    </message>
    <message>
        <source>The same passphrase again</source>
        <translation>Dieselbe Passphrase noch einmal</translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation>Die beiden sind noch nicht gleich.</translation>
    </message>
    <message>
        <source>Fingerprint %1</source>
        <translation>Fingerabdruck %1</translation>
    </message>
    <message>
        <source>Make a key for another person</source>
        <translation>Schlüssel für eine weitere Person</translation>
    </message>
</context>
<context>
    <name>KeySubject</name>
    <message>
        <source>Whose key it is</source>
        <translation>Wessen Schlüssel es ist</translation>
    </message>
    <message>
        <source>The key&apos;s fingerprint: 64 digits, 0 to 9 and a to f</source>
        <translation>Fingerabdruck des Schlüssels: 64 Stellen, 0 bis 9 und a bis f</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Figures</source>
        <translation>Ziffern</translation>
    </message>
    <message>
        <source>Erase</source>
        <translation>Korr.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>.</source>
        <comment>between a number&apos;s whole and its fraction</comment>
        <translation>,</translation>
    </message>
</context>
<context>
    <name>KeysScreen</name>
    <message>
        <source>On this device; has signed nothing in this file</source>
        <translation>Auf diesem Gerät; hat in dieser Akte nichts unterschrieben</translation>
    </message>
    <message>
        <source>The owner has said nothing of this key</source>
        <translation>Der Halter hat von diesem Schlüssel nichts gesagt</translation>
    </message>
    <message>
        <source>Whose key counts</source>
        <translation>Wessen Schlüssel gilt</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Trust another key</source>
        <translation>Weiteren Schlüssel anerkennen</translation>
    </message>
    <message>
        <source>A signature says which key made it. Whose key that is, and as what it counts, the owner says.</source>
        <translation>Eine Unterschrift sagt, welcher Schlüssel sie gemacht hat. Wessen Schlüssel das ist und als was er gilt, sagt der Halter.</translation>
    </message>
    <message>
        <source>The file is being read …</source>
        <translation>Die Akte wird gelesen …</translation>
    </message>
    <message>
        <source>Nobody has signed anything here, and this device has no key yet.</source>
        <translation>Hier hat noch niemand etwas unterschrieben, und dieses Gerät hat noch keinen Schlüssel.</translation>
    </message>
</context>
<context>
    <name>LanguageKey</name>
    <message>
        <source>Language: %1</source>
        <translation>Sprache: %1</translation>
    </message>
    <message>
        <source>The device&apos;s; a touch chooses another</source>
        <translation>Die des Geräts; ein Tippen wählt eine andere</translation>
    </message>
    <message>
        <source>A touch chooses another, or the device&apos;s again</source>
        <translation>Ein Tippen wählt eine andere oder wieder die des Geräts</translation>
    </message>
</context>
<context>
    <name>LastTime</name>
    <message>
        <source>%1 flight hours</source>
        <translation>%1 Flugstunden</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Ambit</source>
        <translation>Ambit</translation>
    </message>
    <message>
        <source>Taken back before signing.</source>
        <translation>Vor dem Unterschreiben zurückgenommen.</translation>
    </message>
</context>
<context>
    <name>MarkPlace</name>
    <message>
        <source>The ground round the aircraft, from above, nose up</source>
        <translation>Der Boden um das Luftfahrzeug, von oben, Nase nach oben</translation>
    </message>
    <message>
        <source>Arrow keys move by %1, Enter sets a corner, Backspace takes it back</source>
        <translation>Pfeiltasten bewegen um %1, die Eingabetaste setzt eine Ecke, die Rücktaste nimmt sie zurück</translation>
    </message>
</context>
<context>
    <name>MarkSheet</name>
    <message>
        <source>Something is in the way</source>
        <translation>Etwas ist im Weg</translation>
    </message>
    <message>
        <source>Touch one corner of it on the figure.</source>
        <translation>Eine Ecke davon auf der Zeichnung berühren.</translation>
    </message>
    <message>
        <source>Touch the opposite corner.</source>
        <translation>Die gegenüberliegende Ecke berühren.</translation>
    </message>
    <message>
        <source>%1. Drag a corner, or all of it, to its place.</source>
        <translation>%1. Eine Ecke oder das Ganze an seinen Platz ziehen.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Another machine</source>
        <translation>Anderes Luftfahrzeug</translation>
    </message>
    <message>
        <source>It is marked as in the way</source>
        <translation>Es ist als im Weg markiert</translation>
    </message>
    <message>
        <source>Or what else it is</source>
        <translation>Oder was es sonst ist</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Ecke zurück</translation>
    </message>
    <message>
        <source>The last corner</source>
        <translation>Die letzte Ecke</translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation>Markieren</translation>
    </message>
</context>
<context>
    <name>MarkedShape</name>
    <message>
        <source>In the way: %1</source>
        <translation>Im Weg: %1</translation>
    </message>
</context>
<context>
    <name>MeasureSheet</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>The mark to the left</source>
        <translation>Die Marke nach links</translation>
    </message>
    <message>
        <source>The mark up</source>
        <translation>Die Marke nach oben</translation>
    </message>
    <message>
        <source>The mark down</source>
        <translation>Die Marke nach unten</translation>
    </message>
    <message>
        <source>The mark to the right</source>
        <translation>Die Marke nach rechts</translation>
    </message>
    <message>
        <source>This is corner %1</source>
        <translation>Das ist Ecke %1</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Hier</translation>
    </message>
    <message>
        <source>The corners are right</source>
        <translation>Die Ecken stimmen</translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation>%1 behalten</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Take back the last mark</source>
        <translation>Letzte Marke zurücknehmen</translation>
    </message>
    <message>
        <source>Measure by the card</source>
        <translation>Mit der Karte messen</translation>
    </message>
    <message>
        <source>Keep the photo</source>
        <translation>Foto behalten</translation>
    </message>
    <message>
        <source>To be compared with next time</source>
        <translation>Zum Vergleich beim nächsten Mal</translation>
    </message>
    <message>
        <source>Last time: %1</source>
        <translation>Letztes Mal: %1</translation>
    </message>
    <message>
        <source>The last photo</source>
        <translation>Das letzte Foto</translation>
    </message>
    <message>
        <source>To measure, lay any card of the usual size (85.6 × 54 mm) flat on the part, so that all of it is seen, and look straight at it.</source>
        <translation>Zum Messen eine Karte der üblichen Größe (85,6 × 54 mm) flach auf das Teil legen, ganz sichtbar, und gerade darauf schauen.</translation>
    </message>
    <message>
        <source>The photo is being read …</source>
        <translation>Das Foto wird gelesen …</translation>
    </message>
    <message>
        <source>The photo about the mark, from close</source>
        <translation>Das Foto um die Marke, aus der Nähe</translation>
    </message>
    <message>
        <source>The photo</source>
        <translation>Das Foto</translation>
    </message>
    <message>
        <source>Show today&apos;s photo</source>
        <translation>Foto von heute zeigen</translation>
    </message>
    <message>
        <source>Show the last photo</source>
        <translation>Letztes Foto zeigen</translation>
    </message>
    <message>
        <source>Both at one scale, by their cards</source>
        <translation>Beide im selben Maßstab, nach ihren Karten</translation>
    </message>
    <message>
        <source>It is a long one</source>
        <translation>Es ist eine lange</translation>
    </message>
    <message>
        <source>It is a short one</source>
        <translation>Es ist eine kurze</translation>
    </message>
    <message>
        <source>A length you know there, mm</source>
        <translation>Eine dort bekannte Länge, mm</translation>
    </message>
    <message>
        <source>Shows whether the card lies flat with the part; may stay empty</source>
        <translation>Zeigt, ob die Karte flach auf dem Teil liegt; darf leer bleiben</translation>
    </message>
    <message>
        <source>Look at the card&apos;s corners again</source>
        <translation>Ecken der Karte noch einmal ansehen</translation>
    </message>
    <message>
        <source>No card lies there: only an angle</source>
        <translation>Keine Karte dabei: nur ein Winkel</translation>
    </message>
    <message>
        <source>Of a slippage mark, seen straight from above</source>
        <translation>Einer Rutschmarke, gerade von oben gesehen</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Anderes Foto</translation>
    </message>
</context>
<context>
    <name>MoreSheet</name>
    <message>
        <source>Review</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>Everything not sound, everything owed, everything unsettled</source>
        <translation>Alles, was nicht in Ordnung, noch zu schließen oder unerledigt ist</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>How you are asked</source>
        <translation>Wie gefragt wird</translation>
    </message>
    <message>
        <source>Keys, portions, reading aloud, photos; what an interruption asks for again</source>
        <translation>Tasten, Portionen, Vorlesen, Fotos; was nach einer Unterbrechung noch einmal gefragt wird</translation>
    </message>
    <message>
        <source>If something is different today</source>
        <translation>Wenn heute etwas anders ist</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be used</source>
        <translation>„%1“ ist nicht nutzbar</translation>
    </message>
    <message>
        <source>The next stand</source>
        <translation>Der nächste Standort</translation>
    </message>
    <message>
        <source>Where you are</source>
        <translation>Der Standort hier</translation>
    </message>
    <message>
        <source>Something is in the way</source>
        <translation>Etwas ist im Weg</translation>
    </message>
    <message>
        <source>A wall, another machine: mark it on the figure</source>
        <translation>Eine Wand, ein anderes Luftfahrzeug: auf der Zeichnung markieren</translation>
    </message>
    <message>
        <source>The light is good again</source>
        <translation>Das Licht ist wieder gut</translation>
    </message>
    <message>
        <source>The light is going</source>
        <translation>Das Licht lässt nach</translation>
    </message>
    <message>
        <source>In low light, what is reached by climbing comes first</source>
        <translation>Bei wenig Licht kommt zuerst, was einen Aufstieg braucht</translation>
    </message>
    <message>
        <source>The flight doesn&apos;t go into the dark</source>
        <translation>Der Flug geht nicht ins Dunkle</translation>
    </message>
    <message>
        <source>The flight goes into the dark</source>
        <translation>Der Flug geht ins Dunkle</translation>
    </message>
    <message>
        <source>What the airframe asks for at night is added to the walk</source>
        <translation>Was das Muster bei Nacht verlangt, kommt zum Rundgang hinzu</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Akte</translation>
    </message>
    <message>
        <source>The records of the aircraft; the round waits</source>
        <translation>Die Protokolle des Luftfahrzeugs; der Rundgang wartet</translation>
    </message>
    <message>
        <source>Watch</source>
        <translation>Mitsehen</translation>
    </message>
    <message>
        <source>Follow others; the round waits</source>
        <translation>Anderen folgen; der Rundgang wartet</translation>
    </message>
    <message>
        <source>Leave the round</source>
        <translation>Rundgang verlassen</translation>
    </message>
    <message>
        <source>It waits as it stands</source>
        <translation>Er wartet, wie er steht</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>The night appearance spares eyes that are used to the dark</source>
        <translation>Die Nachtdarstellung schont Augen, die sich an das Dunkel gewöhnt haben</translation>
    </message>
    <message>
        <source>Text %1 %</source>
        <translation>Text %1 %</translation>
    </message>
    <message>
        <source>Makes all text larger, up to twice; then small again</source>
        <translation>Macht alle Texte größer, bis doppelt so groß; dann wieder klein</translation>
    </message>
    <message>
        <source>For the right hand</source>
        <translation>Für die rechte Hand</translation>
    </message>
    <message>
        <source>For the left hand</source>
        <translation>Für die linke Hand</translation>
    </message>
    <message>
        <source>What the thumb reaches changes sides</source>
        <translation>Was der Daumen erreicht, wechselt die Seite</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>On a keyboard: I = I am there, D = done, S = sound, F = finding, N = not inspected, W = why, V = value, R = review, P = pause, M = more.</source>
        <translation>Auf einer Tastatur: I = ich bin da, D = fertig, S = in Ordnung, F = Befund, N = nicht geprüft, W = warum, V = Wert, R = Durchsicht, P = Pause, M = mehr.</translation>
    </message>
</context>
<context>
    <name>NotInspectedSheet</name>
    <message>
        <source>Not inspected</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message numerus="yes">
        <source>All %n points that are left</source>
        <translation>
            <numerusform>Den %n Punkt, der übrig ist</numerusform>
            <numerusform>Alle %n Punkte, die übrig sind</numerusform>
        </translation>
    </message>
    <message>
        <source>Settle all as not inspected</source>
        <translation>Alle als nicht geprüft erledigen</translation>
    </message>
    <message>
        <source>Settle as not inspected</source>
        <translation>Als nicht geprüft erledigen</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Warum nicht</translation>
    </message>
    <message>
        <source>The walk is stopped.</source>
        <translation>Der Rundgang wird abgebrochen.</translation>
    </message>
    <message>
        <source>Can&apos;t be reached today.</source>
        <translation>Heute nicht erreichbar.</translation>
    </message>
    <message>
        <source>Covered by ice, snow or dirt.</source>
        <translation>Von Eis, Schnee oder Schmutz bedeckt.</translation>
    </message>
    <message>
        <source>Too dark to see.</source>
        <translation>Zu dunkel, um etwas zu sehen.</translation>
    </message>
    <message>
        <source>In your words</source>
        <translation>In eigenen Worten</translation>
    </message>
    <message>
        <source>What allows flight without it</source>
        <translation>Was den Flug ohne das erlaubt</translation>
    </message>
    <message>
        <source>Basis: handbook section, deferral, permission</source>
        <translation>Grundlage: Abschnitt im Flughandbuch, Zurückstellung, Genehmigung</translation>
    </message>
    <message>
        <source>Without a stated basis, the conclusion can&apos;t be fit.</source>
        <translation>Ohne angegebene Grundlage kann der Abschluss nicht flugbereit sein.</translation>
    </message>
</context>
<context>
    <name>NoteSheet</name>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Goes into the record with its time.</source>
        <translation>Kommt mit der Uhrzeit ins Protokoll.</translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation>Notiz behalten</translation>
    </message>
</context>
<context>
    <name>PartFields</name>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
</context>
<context>
    <name>PartScreen</name>
    <message>
        <source>Changed</source>
        <translation>Getauscht</translation>
    </message>
    <message>
        <source>Only taken off</source>
        <translation>Nur ausgebaut</translation>
    </message>
    <message>
        <source>Only fitted</source>
        <translation>Nur eingebaut</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Teil getauscht</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>No record says what is fitted</source>
        <translation>Kein Protokoll sagt, was eingebaut ist</translation>
    </message>
    <message>
        <source>Another place</source>
        <translation>Anderer Platz</translation>
    </message>
    <message>
        <source>Place on the aircraft</source>
        <translation>Platz am Luftfahrzeug</translation>
    </message>
    <message>
        <source>one part at a time is in it</source>
        <translation>dort sitzt immer nur ein Teil</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Ausgebaut</translation>
    </message>
    <message>
        <source>Say what it has run</source>
        <translation>Laufzeit angeben</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Eingebaut</translation>
    </message>
    <message>
        <source>Not new: say what it had run</source>
        <translation>Nicht neu: bisherige Laufzeit angeben</translation>
    </message>
    <message>
        <source>The work</source>
        <translation>Die Arbeit</translation>
    </message>
</context>
<context>
    <name>PhotoSource</name>
    <message>
        <source>Camera</source>
        <translation>Kamera</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation>Aus einer Datei</translation>
    </message>
    <message>
        <source>Photo&apos;s path</source>
        <translation>Pfad des Fotos</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
</context>
<context>
    <name>PlacesBar</name>
    <message>
        <source>Places</source>
        <translation>Orte</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Akte</translation>
    </message>
    <message>
        <source>Watch</source>
        <translation>Mitsehen</translation>
    </message>
</context>
<context>
    <name>ProblemBar</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>QuickStrip</name>
    <message>
        <source>%1: less than one of them takes. Was each of them looked at?</source>
        <translation>%1: weniger, als einer von ihnen braucht. Wurde jeder angesehen?</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Nochmal ansehen</translation>
    </message>
    <message>
        <source>Yes, each</source>
        <translation>Ja, jeder</translation>
    </message>
    <message>
        <source>%1: was each looked at?</source>
        <translation>%1: jeder angesehen?</translation>
    </message>
</context>
<context>
    <name>ReadingChoices</name>
    <message>
        <source>Say what it is read from</source>
        <translation>Angeben, womit gemessen</translation>
    </message>
    <message>
        <source>What the value is read from</source>
        <translation>Womit der Wert gemessen ist</translation>
    </message>
    <message>
        <source>± …</source>
        <comment>an uncertainty not stated yet</comment>
        <translation>± …</translation>
    </message>
    <message>
        <source>± %1 %2</source>
        <translation>± %1 %2</translation>
    </message>
    <message>
        <source>The standard uncertainty of such a reading</source>
        <translation>Die Standardunsicherheit einer solchen Ablesung</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Keine Angabe</translation>
    </message>
</context>
<context>
    <name>ReadingScreen</name>
    <message>
        <source>Read counters</source>
        <translation>Zähler ablesen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>RecordKey</name>
    <message>
        <source>Signed and sealed just now</source>
        <translation>Soeben unterschrieben und versiegelt</translation>
    </message>
</context>
<context>
    <name>RecordScreen</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Nichts wurde gefunden.</translation>
    </message>
    <message>
        <source>Not inspected</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>No basis stated.</source>
        <translation>Keine Grundlage angegeben.</translation>
    </message>
    <message>
        <source>Basis: %1</source>
        <translation>Grundlage: %1</translation>
    </message>
    <message>
        <source>Counters</source>
        <translation>Zähler</translation>
    </message>
    <message>
        <source>Who signed</source>
        <translation>Wer unterschrieben hat</translation>
    </message>
    <message>
        <source>Sign under it</source>
        <translation>Gegenzeichnen</translation>
    </message>
    <message>
        <source>Another person puts their signature under this record</source>
        <translation>Eine andere Person setzt ihre Unterschrift unter dieses Protokoll</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Nebeneinander</translation>
    </message>
    <message>
        <source>Laid beside another round of the same walk: who saw what</source>
        <translation>Neben einen anderen Rundgang gleicher Art gelegt: wer was gesehen hat</translation>
    </message>
    <message>
        <source>Walk it again</source>
        <translation>Noch einmal ablaufen</translation>
    </message>
    <message>
        <source>The round as it went, at any speed, with the time at each stand</source>
        <translation>Der Rundgang, wie er war, in beliebigem Tempo, mit der Zeit an jedem Standort</translation>
    </message>
    <message>
        <source>Whose key counts</source>
        <translation>Wessen Schlüssel gilt</translation>
    </message>
    <message>
        <source>Take it along</source>
        <translation>Mitnehmen</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Ordner</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Ordner wählen</translation>
    </message>
    <message>
        <source>Write record, PDF and photos</source>
        <translation>Protokoll, PDF und Fotos schreiben</translation>
    </message>
    <message>
        <source>Write record</source>
        <translation>Protokoll schreiben</translation>
    </message>
    <message>
        <source>Written:
%1</source>
        <translation>Geschrieben:
%1</translation>
    </message>
    <message>
        <source>Every point</source>
        <translation>Jeder Punkt</translation>
    </message>
    <message>
        <source>The whole round</source>
        <translation>Der ganze Rundgang</translation>
    </message>
    <message>
        <source>Record %1</source>
        <translation>Protokoll %1</translation>
    </message>
</context>
<context>
    <name>RecordsScreen</name>
    <message>
        <source>Records of %1</source>
        <translation>Protokolle von %1</translation>
    </message>
    <message>
        <source>%1 of %2, the newest first</source>
        <translation>%1 von %2, die neuesten zuerst</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Frühere zeigen</translation>
    </message>
</context>
<context>
    <name>RectifyScreen</name>
    <message>
        <source>Inspection or work done</source>
        <translation>Kontrolle oder Arbeit erledigt</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Beheben</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Inspections done with it</source>
        <translation>Damit erledigte Kontrollen</translation>
    </message>
</context>
<context>
    <name>RemoveScreen</name>
    <message>
        <source>Let 1 record go</source>
        <translation>1 Protokoll aussondern</translation>
    </message>
    <message>
        <source>Let %1 records go</source>
        <translation>%1 Protokolle aussondern</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Sign and let go …</source>
        <translation>Unterschreiben und aussondern …</translation>
    </message>
    <message>
        <source>This can&apos;t be undone: 1 record goes from this device for good.</source>
        <translation>Das lässt sich nicht rückgängig machen: 1 Protokoll verschwindet endgültig von diesem Gerät.</translation>
    </message>
    <message>
        <source>This can&apos;t be undone: %1 records go from this device for good.</source>
        <translation>Das lässt sich nicht rückgängig machen: %1 Protokolle verschwinden endgültig von diesem Gerät.</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Let go for good</source>
        <translation>Endgültig aussondern</translation>
    </message>
    <message>
        <source>Show all %1</source>
        <translation>Alle %1 zeigen</translation>
    </message>
    <message>
        <source>What they say, their signatures, their PDFs, and the photos that no other record names leave this archive. Copies elsewhere stay where they are. In their place stays a signed record: it names each by its kind, its day and its identity, so that the chain holds, and says what allowed it.</source>
        <translation>Was darin steht, die Unterschriften, die PDFs und die Fotos, die kein anderes Protokoll nennt, verlassen dieses Archiv. Kopien anderswo bleiben, wo sie sind. An ihre Stelle tritt ein unterschriebenes Protokoll: Es nennt jedes nach Art, Tag und Identität, damit die Kette hält, und sagt, was es erlaubt hat.</translation>
    </message>
    <message>
        <source>%1 of them must stay by 14 CFR 91.417(b):</source>
        <translation>%1 davon müssen nach 14 CFR 91.417(b) bleiben:</translation>
    </message>
    <message>
        <source>Other rules allow it all the same</source>
        <translation>Andere Regeln erlauben es dennoch</translation>
    </message>
    <message>
        <source>Name them below.</source>
        <translation>Sie unten nennen.</translation>
    </message>
    <message>
        <source>What allows it</source>
        <translation>Was es erlaubt</translation>
    </message>
    <message>
        <source>One of them must stay by 14 CFR 91.417(b):</source>
        <translation>Eines davon muss nach 14 CFR 91.417(b) bleiben:</translation>
    </message>
</context>
<context>
    <name>RenewedScreen</name>
    <message>
        <source>Renewed before a value</source>
        <translation>Vor einem Wert erneuert</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>If a part was renewed or repainted and nobody said so when it was next measured, the owner or a mechanic says it here. Its values begin anew at the one you choose. What you sign stays; only signing again takes it back.</source>
        <translation>Wurde ein Teil erneuert oder neu gestrichen und hat das bei der nächsten Messung niemand gesagt, sagt es der Halter oder ein Mechaniker hier. Seine Werte beginnen bei dem gewählten neu. Was Sie unterschreiben, bleibt; nur eine weitere Unterschrift nimmt es zurück.</translation>
    </message>
    <message>
        <source>The first value since then</source>
        <translation>Der erste Wert danach</translation>
    </message>
    <message>
        <source>told as renewed before it</source>
        <translation>gilt als davor erneuert</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Frühere zeigen</translation>
    </message>
    <message>
        <source>This one is told as renewed: you sign that the part was not renewed before it.</source>
        <translation>Vor diesem gilt das Teil als erneuert: Sie unterschreiben, dass es davor nicht erneuert wurde.</translation>
    </message>
    <message>
        <source>Words, if any</source>
        <translation>Bemerkung, falls nötig</translation>
    </message>
    <message>
        <source>Sign and keep</source>
        <translation>Unterschreiben und behalten</translation>
    </message>
    <message>
        <source>Sign: not renewed</source>
        <translation>Unterschreiben: nicht erneuert</translation>
    </message>
    <message>
        <source>Sign: renewed</source>
        <translation>Unterschreiben: erneuert</translation>
    </message>
</context>
<context>
    <name>ReopenSheet</name>
    <message>
        <source>Settle again</source>
        <translation>Neu erledigen</translation>
    </message>
    <message>
        <source>Settle it again</source>
        <translation>Neu erledigen</translation>
    </message>
    <message>
        <source>Why it is settled again</source>
        <translation>Warum neu erledigt wird</translation>
    </message>
    <message>
        <source>What was said before stays in the record, with its time.</source>
        <translation>Was vorher gesagt wurde, bleibt mit seiner Uhrzeit im Protokoll.</translation>
    </message>
</context>
<context>
    <name>ReplayKeys</name>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Walks it again from here</source>
        <translation>Läuft ihn ab hier noch einmal ab</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>Times as fast as it was walked</source>
        <translation>So viel Mal schneller, als gegangen wurde</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>What is settled as it is settled</source>
        <translation>Was erledigt wird, im selben Augenblick</translation>
    </message>
</context>
<context>
    <name>RetentionGroup</name>
    <message>
        <source>All %1 of these</source>
        <translation>Alle %1 davon</translation>
    </message>
    <message>
        <source>%1 of them chosen</source>
        <translation>%1 davon gewählt</translation>
    </message>
    <message>
        <source>Show more</source>
        <translation>Mehr zeigen</translation>
    </message>
    <message>
        <source>Show which one</source>
        <translation>Zeigen, welches</translation>
    </message>
    <message>
        <source>Show them one by one</source>
        <translation>Einzeln zeigen</translation>
    </message>
</context>
<context>
    <name>RetentionScreen</name>
    <message>
        <source>What may go</source>
        <translation>Was wegdarf</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Nothing is chosen</source>
        <translation>Nichts ist gewählt</translation>
    </message>
    <message>
        <source>Go on with 1 record</source>
        <translation>Weiter mit 1 Protokoll</translation>
    </message>
    <message>
        <source>Go on with %1 records</source>
        <translation>Weiter mit %1 Protokollen</translation>
    </message>
    <message>
        <source>Ambit lets nothing go by itself. This is what 14 CFR 91.417(b) says of each record; the operator, a lessor or other rules may ask for more.</source>
        <translation>Ambit sondert nichts von selbst aus. Dies sagt 14 CFR 91.417(b) zu jedem Protokoll; Betreiber, Leasinggeber oder andere Regeln können mehr verlangen.</translation>
    </message>
    <message>
        <source>The records are being looked at …</source>
        <translation>Die Protokolle werden durchgesehen …</translation>
    </message>
    <message>
        <source>Nothing may go now.</source>
        <translation>Jetzt darf nichts weg.</translation>
    </message>
    <message>
        <source>May go: %1</source>
        <translation>Darf weg: %1</translation>
    </message>
    <message>
        <source>Must stay: %1</source>
        <translation>Muss bleiben: %1</translation>
    </message>
    <message>
        <source>Show what must stay, and why</source>
        <translation>Zeigen, was bleiben muss und warum</translation>
    </message>
</context>
<context>
    <name>ReviewRow</name>
    <message>
        <source>Not inspected</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>To do</source>
        <translation>Zu tun</translation>
    </message>
    <message>
        <source>No basis stated.</source>
        <translation>Keine Grundlage angegeben.</translation>
    </message>
    <message>
        <source>Basis: %1</source>
        <translation>Grundlage: %1</translation>
    </message>
    <message>
        <source>Is closed</source>
        <translation>Ist geschlossen</translation>
    </message>
    <message>
        <source>Settle again</source>
        <translation>Neu erledigen</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>grounds the aircraft</source>
        <translation>hält das Luftfahrzeug am Boden</translation>
    </message>
    <message>
        <source>for assessment</source>
        <translation>zu beurteilen</translation>
    </message>
</context>
<context>
    <name>ReviewScreen</name>
    <message>
        <source>Review</source>
        <translation>Durchsicht</translation>
    </message>
    <message>
        <source>%1 of %2 settled</source>
        <translation>%1 von %2 erledigt</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Conclude</source>
        <translation>Abschließen</translation>
    </message>
    <message>
        <source>Every point is settled sound and nothing is open.</source>
        <translation>Jeder Punkt ist als in Ordnung erledigt, nichts ist offen.</translation>
    </message>
    <message>
        <source>Stop the walk: the rest is not inspected</source>
        <translation>Rundgang abbrechen: der Rest ist nicht geprüft</translation>
    </message>
    <message>
        <source>Opened outside its point?</source>
        <translation>Außerhalb seines Punktes geöffnet?</translation>
    </message>
    <message>
        <source>Was opened: owed until it is closed</source>
        <translation>Wurde geöffnet: offen, bis es geschlossen ist</translation>
    </message>
    <message>
        <source>Hide what is settled</source>
        <translation>Erledigtes verbergen</translation>
    </message>
    <message>
        <source>Show all that is settled</source>
        <translation>Alles Erledigte zeigen</translation>
    </message>
    <message>
        <source>Settle again</source>
        <translation>Neu erledigen</translation>
    </message>
</context>
<context>
    <name>RevokeScreen</name>
    <message>
        <source>Revoke a key</source>
        <translation>Schlüssel widerrufen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>What it signs from that day on counts for nothing in this file; what it signed before stays as it was. The owner may revoke any key, others their own. It can&apos;t be taken back: whose key it was makes a new one.</source>
        <translation>Was er ab diesem Tag unterschreibt, gilt in dieser Akte nichts; was er davor unterschrieben hat, bleibt. Der Halter kann jeden Schlüssel widerrufen, andere ihren eigenen. Das lässt sich nicht zurücknehmen: Wem der Schlüssel gehörte, erstellt einen neuen.</translation>
    </message>
    <message>
        <source>From: year-month-day</source>
        <translation>Ab: Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>empty: from now on</source>
        <translation>leer: ab jetzt</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
</context>
<context>
    <name>SaySheet</name>
    <message>
        <source>To %1</source>
        <translation>An %1</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Noch einmal ansehen</translation>
    </message>
    <message>
        <source>The walk can&apos;t be concluded until the point is settled again, or it is declined with words</source>
        <translation>Der Rundgang lässt sich erst abschließen, wenn der Punkt neu erledigt oder mit Worten abgelehnt ist</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>A question; the answer stands in the record</source>
        <translation>Eine Frage; die Antwort steht im Protokoll</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Sagen</translation>
    </message>
    <message>
        <source>Needs no answer</source>
        <translation>Braucht keine Antwort</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Wo?</translation>
    </message>
    <message>
        <source>Of no point in particular</source>
        <translation>Zu keinem bestimmten Punkt</translation>
    </message>
    <message>
        <source>In hand: %1</source>
        <translation>Gerade dran: %1</translation>
    </message>
    <message>
        <source>Another point</source>
        <translation>Anderer Punkt</translation>
    </message>
    <message>
        <source>Choose a point</source>
        <translation>Punkt wählen</translation>
    </message>
    <message>
        <source>Your words</source>
        <translation>Wortlaut</translation>
    </message>
    <message>
        <source>Signed with your key; it stands in the record with what becomes of it. Nobody is hurried by it.</source>
        <translation>Mit dem eigenen Schlüssel unterschrieben; es steht im Protokoll, mit dem, was daraus wird. Niemand wird dadurch gedrängt.</translation>
    </message>
</context>
<context>
    <name>SearchScreen</name>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Search for something else</source>
        <translation>Nach anderem suchen</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Wörter</translation>
    </message>
    <message>
        <source>in what was written, or a point&apos;s name</source>
        <translation>im Geschriebenen, oder Name eines Punktes</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>name, number, serial, position</source>
        <translation>Name, Nummer, Seriennummer, Platz</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>JASC</source>
        <translation>JASC</translation>
    </message>
    <message>
        <source>By date, kind or state</source>
        <translation>Nach Datum, Art oder Stand</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>y-m-d</source>
        <translation>J-M-T</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Kind of record</source>
        <translation>Art des Protokolls</translation>
    </message>
    <message>
        <source>What was found is now</source>
        <translation>Was gefunden wurde, ist jetzt</translation>
    </message>
    <message>
        <source>Searching …</source>
        <translation>Suche läuft …</translation>
    </message>
    <message>
        <source>Nothing fits.</source>
        <translation>Nichts passt.</translation>
    </message>
    <message>
        <source>The newest %1 that fit</source>
        <translation>Die neuesten %1, die passen</translation>
    </message>
    <message>
        <source>1 record fits</source>
        <translation>1 Protokoll passt</translation>
    </message>
    <message>
        <source>%1 records fit</source>
        <translation>%1 Protokolle passen</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Frühere zeigen</translation>
    </message>
</context>
<context>
    <name>Section</name>
    <message>
        <source>Show all %1</source>
        <translation>Alle %1 zeigen</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
</context>
<context>
    <name>SignKeys</name>
    <message>
        <source>Sign and keep</source>
        <translation>Unterschreiben und behalten</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Schlüssel erstellen</translation>
    </message>
</context>
<context>
    <name>SignScreen</name>
    <message>
        <source>Sign</source>
        <translation>Unterschreiben</translation>
    </message>
    <message>
        <source>Make your key</source>
        <translation>Eigenen Schlüssel erstellen</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Schlüssel erstellen</translation>
    </message>
    <message>
        <source>Sign and seal</source>
        <translation>Unterschreiben, versiegeln</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>By signing you say: I walked this round as recorded, and this is my conclusion. The record is then sealed. Nobody can change it unseen, you neither.</source>
        <translation>Die Unterschrift sagt: Ich bin diesen Rundgang gegangen wie aufgezeichnet, und dies ist mein Abschluss. Dann wird das Protokoll versiegelt. Niemand kann es unbemerkt ändern, auch Sie nicht.</translation>
    </message>
</context>
<context>
    <name>SignatureFields</name>
    <message>
        <source>Who signs</source>
        <translation>Wer unterschreibt</translation>
    </message>
    <message>
        <source>Certificate or licence number</source>
        <translation>Lizenznummer</translation>
    </message>
</context>
<context>
    <name>SignatureRow</name>
    <message>
        <source>Signed under it %1</source>
        <translation>Gegengezeichnet %1</translation>
    </message>
    <message>
        <source>The owner has said nothing of this key</source>
        <translation>Der Halter hat von diesem Schlüssel nichts gesagt</translation>
    </message>
</context>
<context>
    <name>StandHead</name>
    <message>
        <source>Next stand %1, %2</source>
        <translation>Nächster Standort %1, %2</translation>
    </message>
    <message>
        <source>At stand %1, %2</source>
        <translation>An Standort %1, %2</translation>
    </message>
</context>
<context>
    <name>StandList</name>
    <message>
        <source>Points here</source>
        <translation>Punkte hier</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>zu tun</translation>
    </message>
    <message>
        <source>next</source>
        <translation>als Nächstes</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>not inspected</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>on the card</source>
        <translation>auf der Karte</translation>
    </message>
</context>
<context>
    <name>StandMark</name>
    <message>
        <source>Stand %1, %2</source>
        <translation>Standort %1, %2</translation>
    </message>
    <message>
        <source>Stand %1</source>
        <translation>Standort %1</translation>
    </message>
    <message>
        <source>can&apos;t be used: %1</source>
        <translation>nicht nutzbar: %1</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>been there</source>
        <translation>schon besucht</translation>
    </message>
    <message>
        <source>next</source>
        <translation>als Nächstes</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>voraus</translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>%1 began: %2</source>
        <translation>%1 hat begonnen: %2</translation>
    </message>
    <message>
        <source>Ordered anew: %1</source>
        <translation>Neu geordnet: %1</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>An %1</translation>
    </message>
    <message>
        <source>%1 re-opened: %2</source>
        <translation>%1 wieder aufgenommen: %2</translation>
    </message>
    <message>
        <source>%1: opened</source>
        <translation>%1: geöffnet</translation>
    </message>
    <message>
        <source>%1: put right</source>
        <translation>%1: behoben</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>Pausiert</translation>
    </message>
    <message>
        <source>Resumed</source>
        <translation>Fortgesetzt</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Notiz: %1</translation>
    </message>
    <message>
        <source>%1 can&apos;t be used: %2</source>
        <translation>%1 ist nicht nutzbar: %2</translation>
    </message>
    <message>
        <source>%1 can be used again</source>
        <translation>%1 ist wieder nutzbar</translation>
    </message>
    <message>
        <source>In the way, area %1: %2</source>
        <translation>Im Weg, Fläche %1: %2</translation>
    </message>
    <message>
        <source>Area %1 isn&apos;t in the way any more</source>
        <translation>Fläche %1 ist nicht mehr im Weg</translation>
    </message>
    <message>
        <source>The light is low</source>
        <translation>Das Licht ist schwach</translation>
    </message>
    <message>
        <source>The light is good again</source>
        <translation>Das Licht ist wieder gut</translation>
    </message>
    <message>
        <source>Walked on one&apos;s own: what others found that day was not shown</source>
        <translation>Allein gegangen: Was andere an dem Tag gefunden hatten, wurde nicht gezeigt</translation>
    </message>
    <message>
        <source>%1 asked to look again at %2 (%3)</source>
        <translation>%1 bat, %2 noch einmal anzusehen (%3)</translation>
    </message>
    <message>
        <source>%1 asked (%2)</source>
        <translation>%1 fragte (%2)</translation>
    </message>
    <message>
        <source>%1 remarked (%2)</source>
        <translation>%1 bemerkte (%2)</translation>
    </message>
    <message>
        <source>Answer to %1: %2</source>
        <translation>Antwort an %1: %2</translation>
    </message>
    <message>
        <source>Declined %1: %2</source>
        <translation>Abgelehnt, %1: %2</translation>
    </message>
    <message>
        <source>Looked at in one go: %1</source>
        <translation>In einem Zug angesehen: %1</translation>
    </message>
    <message>
        <source>Down again, and asked for each</source>
        <translation>Wieder unten, und jeder abgefragt</translation>
    </message>
    <message>
        <source>Down again: to be looked at once more</source>
        <translation>Wieder unten: noch einmal anzusehen</translation>
    </message>
    <message>
        <source>%1: it was meant so</source>
        <translation>%1: es war so gemeint</translation>
    </message>
    <message>
        <source>%1: looked at again</source>
        <translation>%1: noch einmal angesehen</translation>
    </message>
    <message>
        <source>Satellite time was %1</source>
        <translation>Satellitenzeit war %1</translation>
    </message>
    <message>
        <source>The flight doesn&apos;t go into the dark</source>
        <translation>Der Flug geht nicht ins Dunkle</translation>
    </message>
    <message>
        <source>It is dark: what is asked for at night is added</source>
        <translation>Es ist dunkel: Was bei Nacht verlangt wird, kommt hinzu</translation>
    </message>
    <message>
        <source>The flight goes into the dark: what is asked for at night is added</source>
        <translation>Der Flug geht ins Dunkle: Was bei Nacht verlangt wird, kommt hinzu</translation>
    </message>
    <message>
        <source>Conclusion withdrawn: %1</source>
        <translation>Abschluss zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Signed by %1</source>
        <translation>Unterschrieben von %1</translation>
    </message>
    <message>
        <source>Where %1 is going was told</source>
        <translation>Gesagt, wohin %1 geht</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>StudentTile</name>
    <message>
        <source>Somebody</source>
        <translation>Jemand</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Here; no round is walked yet.</source>
        <translation>Da; noch kein Rundgang.</translation>
    </message>
</context>
<context>
    <name>Texts</name>
    <message>
        <source>1 finding</source>
        <translation>1 Befund</translation>
    </message>
    <message>
        <source>%1 findings</source>
        <translation>%1 Befunde</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>TimeLine</name>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
</context>
<context>
    <name>TrustScreen</name>
    <message>
        <source>Trust a key</source>
        <translation>Schlüssel anerkennen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Nobody has said yet whose key counts here. Who signs this first is taken for the owner, and from then on only the owner&apos;s word counts.</source>
        <translation>Noch hat niemand gesagt, wessen Schlüssel hier gilt. Wer dies als Erster unterschreibt, gilt als Halter, und von da an zählt nur das Wort des Halters.</translation>
    </message>
    <message>
        <source>Compare the fingerprint with the one that the person reads to you from their own device.</source>
        <translation>Den Fingerabdruck mit dem vergleichen, den die Person vom eigenen Gerät vorliest.</translation>
    </message>
    <message>
        <source>It counts as that of a</source>
        <translation>Er gilt als der von</translation>
    </message>
    <message>
        <source>Since: year-month-day</source>
        <translation>Seit: Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>empty: from now on</source>
        <translation>leer: ab jetzt</translation>
    </message>
</context>
<context>
    <name>ValueField</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>Limit %1</source>
        <translation>Grenzwert %1</translation>
    </message>
    <message>
        <source>.</source>
        <comment>between a number&apos;s whole and its fraction</comment>
        <translation>,</translation>
    </message>
    <message>
        <source>Another unit</source>
        <translation>Andere Einheit</translation>
    </message>
</context>
<context>
    <name>VerifyScreen</name>
    <message>
        <source>Verify</source>
        <translation>Nachprüfen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Verify again</source>
        <translation>Noch einmal nachprüfen</translation>
    </message>
    <message>
        <source>%1 of %2 records looked at: each one&apos;s signatures, its words, and the earlier ones that it names …</source>
        <translation>%1 von %2 Protokollen durchgesehen: bei jedem die Unterschriften, der Wortlaut und die früheren, die es nennt …</translation>
    </message>
    <message>
        <source>No page is missing and none was changed.</source>
        <translation>Keine Seite fehlt, und keine wurde geändert.</translation>
    </message>
    <message>
        <source>1 record looked at: its signature holds, and it names no earlier one that isn&apos;t here.</source>
        <translation>1 Protokoll durchgesehen: Die Unterschrift hält, und es nennt kein früheres, das hier fehlt.</translation>
    </message>
    <message>
        <source>%1 records looked at: every signature holds, and every earlier record that one names is here.</source>
        <translation>%1 Protokolle durchgesehen: Jede Unterschrift hält, und jedes frühere, das eines nennt, ist hier.</translation>
    </message>
    <message>
        <source>%1 records looked at: %2 don&apos;t hold, %3 are missing.</source>
        <translation>%1 Protokolle durchgesehen: %2 halten nicht, %3 fehlen.</translation>
    </message>
    <message>
        <source>Don&apos;t hold</source>
        <translation>Halten nicht</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Fehlen</translation>
    </message>
</context>
<context>
    <name>WalkCard</name>
    <message>
        <source>The card in hand</source>
        <translation>Die aktuelle Karte</translation>
    </message>
    <message>
        <source>Down again. The last one: was it sound?</source>
        <translation>Wieder unten. Der letzte: War er in Ordnung?</translation>
    </message>
    <message>
        <source>Down again. %1 to tell: was it sound?</source>
        <translation>Wieder unten. Noch %1: War der Punkt in Ordnung?</translation>
    </message>
    <message>
        <source>The last look: once round, slowly, with empty hands.</source>
        <translation>Der letzte Blick: einmal herum, langsam, mit leeren Händen.</translation>
    </message>
    <message>
        <source>Open or fitted today: %1</source>
        <translation>Heute geöffnet oder angebracht: %1</translation>
    </message>
    <message>
        <source>Say what was found: %1</source>
        <translation>Angeben, was gefunden wurde: %1</translation>
    </message>
    <message>
        <source>By a photo with a card</source>
        <translation>Mit Foto und Karte</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Weglassen: %1</translation>
    </message>
    <message>
        <source>Renewed or repainted since the last value</source>
        <translation>Seit dem letzten Wert erneuert oder neu gestrichen</translation>
    </message>
</context>
<context>
    <name>WalkHead</name>
    <message>
        <source>1 thing open</source>
        <translation>1 offen</translation>
    </message>
    <message>
        <source>%1 things open</source>
        <translation>%1 offen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 settled</source>
        <translation>%1 von %2 erledigt</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
</context>
<context>
    <name>WalkScreen</name>
    <message>
        <source>Walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Ganz</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Näher</translation>
    </message>
    <message>
        <source>The figure</source>
        <translation>Die Zeichnung</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Review, note, night, text size, other aircraft</source>
        <translation>Durchsicht, Notiz, Nacht, Textgröße, anderes Luftfahrzeug</translation>
    </message>
</context>
<context>
    <name>WalkSpoken</name>
    <message>
        <source>Next stand %1, %2, %3.</source>
        <translation>Nächster Standort %1, %2, %3.</translation>
    </message>
    <message>
        <source>To set: %1.</source>
        <translation>Einzustellen: %1.</translation>
    </message>
    <message>
        <source>%1, settled: %2.</source>
        <translation>%1, erledigt: %2.</translation>
    </message>
    <message>
        <source>To settle: %1. %2.</source>
        <translation>Zu erledigen: %1. %2.</translation>
    </message>
    <message>
        <source>On to the review.</source>
        <translation>Weiter zur Durchsicht.</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Vorsicht: %1</translation>
    </message>
    <message>
        <source>%1 of %2 settled.</source>
        <translation>%1 von %2 erledigt.</translation>
    </message>
</context>
<context>
    <name>WatchScreen</name>
    <message>
        <source>Watch</source>
        <translation>Mitsehen</translation>
    </message>
    <message>
        <source>As %1</source>
        <translation>Als %1</translation>
    </message>
    <message>
        <source>Follow a walk while it is walked</source>
        <translation>Einem Rundgang folgen, während er gegangen wird</translation>
    </message>
    <message>
        <source>Follow another</source>
        <translation>Jemandem folgen</translation>
    </message>
    <message>
        <source>Follow walks</source>
        <translation>Rundgängen folgen</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Schlüssel erstellen</translation>
    </message>
    <message>
        <source>This device can&apos;t follow others.</source>
        <translation>Dieses Gerät kann anderen nicht folgen.</translation>
    </message>
    <message>
        <source>You see what is settled as it is settled, ask for a second look, and sign under the record. Both devices are in the same network, a phone&apos;s hotspot will do; nothing goes further. The pilot settles: nobody else can.</source>
        <translation>Zu sehen ist, was erledigt wird, im selben Augenblick; ein zweiter Blick lässt sich erbitten, das Protokoll gegenzeichnen. Beide Geräte sind im selben Netz, der Hotspot eines Telefons genügt; weiter geht nichts. Der Pilot erledigt: sonst kann es niemand.</translation>
    </message>
    <message>
        <source>Who follows</source>
        <translation>Wer mitsieht</translation>
    </message>
    <message>
        <source>You follow nobody. On the other device: More, “Who follows”, “Show a code”. Then touch “Follow another” here.</source>
        <translation>Noch folgen Sie niemandem. Auf dem anderen Gerät: Mehr, „Wer mitsieht“, „Code zeigen“. Dann hier „Jemandem folgen“ berühren.</translation>
    </message>
    <message>
        <source>Known from earlier</source>
        <translation>Von früher bekannt</translation>
    </message>
    <message>
        <source>Follow %1</source>
        <translation>%1 folgen</translation>
    </message>
    <message>
        <source>Without a code. Fingerprint %1</source>
        <translation>Ohne Code. Fingerabdruck %1</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Vergessen</translation>
    </message>
    <message>
        <source>%1 is only followed again with a new code</source>
        <translation>%1 lässt sich nur mit einem neuen Code wieder folgen</translation>
    </message>
    <message>
        <source>Lock the key again</source>
        <translation>Den Schlüssel wieder sperren</translation>
    </message>
    <message>
        <source>Follow nobody any more</source>
        <translation>Niemandem mehr folgen</translation>
    </message>
    <message>
        <source>The key is locked again</source>
        <translation>Der Schlüssel ist wieder gesperrt</translation>
    </message>
</context>
<context>
    <name>WhySheet</name>
    <message>
        <source>Why it matters</source>
        <translation>Warum es zählt</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Not sound</source>
        <translation>Nicht in Ordnung</translation>
    </message>
    <message>
        <source>A finding here</source>
        <translation>Ein Befund hier</translation>
    </message>
    <message>
        <source>Grounds the aircraft.</source>
        <translation>Hält das Luftfahrzeug am Boden.</translation>
    </message>
    <message>
        <source>Is at least for assessment.</source>
        <translation>Ist mindestens zu beurteilen.</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenzwert</translation>
    </message>
    <message>
        <source>Last time</source>
        <translation>Letztes Mal</translation>
    </message>
    <message>
        <source>In this round</source>
        <translation>In diesem Rundgang</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Look</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Feel</source>
        <translation>Fühlen</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Bewegen</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Drainen</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Messen</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Zählen</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Hören</translation>
    </message>
    <message>
        <source>On the ground</source>
        <translation>Am Boden</translation>
    </message>
    <message>
        <source>Kneeling</source>
        <translation>Kniend</translation>
    </message>
    <message>
        <source>Raised</source>
        <translation>Erhöht</translation>
    </message>
    <message>
        <source>On a ladder</source>
        <translation>Auf einer Leiter</translation>
    </message>
    <message>
        <source>no hand free</source>
        <translation>keine Hand frei</translation>
    </message>
    <message>
        <source>one hand free</source>
        <translation>eine Hand frei</translation>
    </message>
    <message>
        <source>both hands free</source>
        <translation>beide Hände frei</translation>
    </message>
    <message>
        <source>Pilot</source>
        <translation>Pilot</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation>Fluglehrer</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Halter</translation>
    </message>
    <message>
        <source>Mechanic</source>
        <translation>Mechaniker</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>not inspected</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>Fit for flight</source>
        <translation>Flugbereit</translation>
    </message>
    <message>
        <source>Not fit for flight</source>
        <translation>Nicht flugbereit</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>gerade eben</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>vor %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>vor %1 h</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>vor %1 Tagen</translation>
    </message>
    <message>
        <source>Look again at %1</source>
        <translation>%1 noch einmal ansehen</translation>
    </message>
    <message>
        <source>A question</source>
        <translation>Eine Frage</translation>
    </message>
    <message>
        <source>A question on %1</source>
        <translation>Eine Frage zu %1</translation>
    </message>
    <message>
        <source>A remark</source>
        <translation>Eine Bemerkung</translation>
    </message>
    <message>
        <source>A remark on %1</source>
        <translation>Eine Bemerkung zu %1</translation>
    </message>
    <message>
        <source>%1 points in %2 s</source>
        <translation>%1 Punkte in %2 s</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>Paused for %1</source>
        <translation>Pausiert: %1</translation>
    </message>
    <message>
        <source>A call of %1</source>
        <translation>Anruf: %1</translation>
    </message>
    <message>
        <source>The screen was locked for %1</source>
        <translation>Bildschirm gesperrt: %1</translation>
    </message>
    <message>
        <source>Away from this screen for %1</source>
        <translation>Nicht auf diesem Bildschirm: %1</translation>
    </message>
    <message>
        <source>Nothing was told for %1</source>
        <translation>Nichts gemeldet: %1</translation>
    </message>
    <message>
        <source>The program was closed for %1</source>
        <translation>Programm geschlossen: %1</translation>
    </message>
    <message>
        <source>back one point</source>
        <translation>einen Punkt zurück</translation>
    </message>
    <message>
        <source>back %1 points</source>
        <translation>%1 Punkte zurück</translation>
    </message>
    <message>
        <source>the stand again</source>
        <translation>Standort noch einmal</translation>
    </message>
    <message>
        <source>from the start</source>
        <translation>von vorn</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <translation>%1: %2; %3</translation>
    </message>
    <message>
        <source>nothing to settle again</source>
        <translation>nichts neu zu erledigen</translation>
    </message>
    <message>
        <source>one point to settle again</source>
        <translation>ein Punkt neu zu erledigen</translation>
    </message>
    <message>
        <source>%1 points to settle again</source>
        <translation>%1 Punkte neu zu erledigen</translation>
    </message>
    <message>
        <source>.</source>
        <comment>between a number&apos;s whole and its fraction</comment>
        <translation>,</translation>
    </message>
    <message>
        <source>yyyy-MM-dd</source>
        <comment>a day, in a sentence</comment>
        <translation>dd.MM.yyyy</translation>
    </message>
    <message>
        <source>en</source>
        <comment>the language of this catalogue, ISO 639-1</comment>
        <translation>de</translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <translation>d. MMM yyyy, HH:mm</translation>
    </message>
    <message>
        <source>%1 m</source>
        <comment>metres</comment>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <comment>feet</comment>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 to %2 in 95 of 100 cases</source>
        <translation>%1 bis %2 in 95 von 100 Fällen</translation>
    </message>
    <message>
        <source>Its interval reaches beyond the limit: %1</source>
        <translation>Sein Intervall reicht über die Grenze hinaus: %1</translation>
    </message>
    <message>
        <source>landings</source>
        <translation>Landungen</translation>
    </message>
    <message>
        <source>cycles</source>
        <translation>Zyklen</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>Starts</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>WorkFields</name>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Completed on: year-month-day</source>
        <translation>Abgeschlossen am: Jahr-Monat-Tag</translation>
    </message>
    <message>
        <source>Done by, if not by who signs</source>
        <translation>Ausgeführt von, wenn nicht vom Unterzeichner</translation>
    </message>
    <message>
        <source>Kind of certificate you approve under</source>
        <translation>Art der Lizenz, mit der freigegeben wird</translation>
    </message>
    <message>
        <source>What the counters said then</source>
        <translation>Was die Zähler dabei zeigten</translation>
    </message>
</context>
<context>
    <name>ZoneShape</name>
    <message>
        <source>nothing of this walk</source>
        <translation>nichts auf diesem Rundgang</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>zu tun</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>not inspected</source>
        <translation>nicht geprüft</translation>
    </message>
    <message>
        <source>%1 of %2 settled</source>
        <translation>%1 von %2 erledigt</translation>
    </message>
    <message>
        <source>something is open</source>
        <translation>etwas ist offen</translation>
    </message>
</context>
<context>
    <name>ambit::view::AircraftFileView</name>
    <message>
        <source>%1, serial %2, fitted %3</source>
        <translation>%1, Seriennr. %2, eingebaut %3</translation>
    </message>
</context>
<context>
    <name>ambit::view::AircraftModel</name>
    <message>
        <source>%1, started %2</source>
        <translation>%1, begonnen %2</translation>
    </message>
    <message>
        <source>No round yet</source>
        <translation>Noch kein Rundgang</translation>
    </message>
</context>
<context>
    <name>ambit::view::BesideView</name>
    <message>
        <source>not settled</source>
        <translation>nicht erledigt</translation>
    </message>
    <message>
        <source>, grounds: %1</source>
        <translation>, am Boden: %1</translation>
    </message>
    <message>
        <source>, to be assessed: %1</source>
        <translation>, zu beurteilen: %1</translation>
    </message>
    <message>
        <source>Seen differently: %1 of %2 points that both settled</source>
        <translation>Verschieden gesehen: %1 von %2 Punkten, die beide erledigt haben</translation>
    </message>
    <message>
        <source>The same outcome at %1 of %2 points (%3 %)</source>
        <translation>Dasselbe Ergebnis bei %1 von %2 Punkten (%3 %)</translation>
    </message>
    <message>
        <source>Cohen&apos;s kappa %1, 95 % interval %2 to %3</source>
        <translation>Cohens Kappa %1, 95-%-Intervall %2 bis %3</translation>
    </message>
</context>
<context>
    <name>ambit::view::ConditionsView</name>
    <message>
        <source>This device&apos;s clock is %1 ahead of satellite time.</source>
        <translation>Die Uhr dieses Geräts geht gegenüber der Satellitenzeit %1 vor.</translation>
    </message>
    <message>
        <source>This device&apos;s clock is %1 behind satellite time.</source>
        <translation>Die Uhr dieses Geräts geht gegenüber der Satellitenzeit %1 nach.</translation>
    </message>
</context>
<context>
    <name>ambit::view::Daylight</name>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Twilight</source>
        <translation>Dämmerung</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nacht</translation>
    </message>
    <message>
        <source>%1; the sun doesn&apos;t set today or tomorrow</source>
        <translation>%1; die Sonne geht heute und morgen nicht unter</translation>
    </message>
    <message>
        <source>%1; the sun doesn&apos;t rise today or tomorrow</source>
        <translation>%1; die Sonne geht heute und morgen nicht auf</translation>
    </message>
    <message>
        <source>%1; the sun sets at %2</source>
        <translation>%1; Sonnenuntergang %2</translation>
    </message>
    <message>
        <source>%1; the sun rises at %2</source>
        <translation>%1; Sonnenaufgang %2</translation>
    </message>
</context>
<context>
    <name>ambit::view::DiscrepancyView</name>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>Wieder gesehen</translation>
    </message>
    <message>
        <source>Said to be sound, though nobody had put it right</source>
        <translation>Als in Ordnung gemeldet, obwohl es niemand behoben hatte</translation>
    </message>
    <message>
        <source>Assessed: it grounds the aircraft</source>
        <translation>Beurteilt: Es hält das Luftfahrzeug am Boden</translation>
    </message>
    <message>
        <source>Deferred</source>
        <translation>Zurückgestellt</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Behoben</translation>
    </message>
    <message>
        <source>Seen sound after that</source>
        <translation>Danach in Ordnung gesehen</translation>
    </message>
</context>
<context>
    <name>ambit::view::ExportView</name>
    <message>
        <source>%1 records, %2 PDFs, %3 photos</source>
        <translation>%1 Protokolle, %2 PDFs, %3 Fotos</translation>
    </message>
    <message>
        <source>; %1 photos aren&apos;t here and are missing</source>
        <translation>; %1 Fotos sind nicht hier und fehlen</translation>
    </message>
</context>
<context>
    <name>ambit::view::FollowedRound</name>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>looked at again</source>
        <translation>noch einmal angesehen</translation>
    </message>
    <message>
        <source>answered: %1</source>
        <translation>beantwortet: %1</translation>
    </message>
    <message>
        <source>declined: %1</source>
        <translation>abgelehnt: %1</translation>
    </message>
    <message>
        <source>told</source>
        <translation>mitgeteilt</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>Pausiert</translation>
    </message>
    <message>
        <source>On the way for %1</source>
        <translation>Unterwegs seit %1</translation>
    </message>
    <message>
        <source>In hand for %1, takes about %2</source>
        <translation>Dran seit %1, dauert etwa %2</translation>
    </message>
    <message>
        <source>In hand for %1</source>
        <translation>Dran seit %1</translation>
    </message>
</context>
<context>
    <name>ambit::view::HandsView</name>
    <message>
        <source>This needs a value. Give it when both hands are free.</source>
        <translation>Das braucht einen Wert. Angeben, wenn beide Hände frei sind.</translation>
    </message>
    <message>
        <source>To be put into words.</source>
        <translation>In Worte zu fassen.</translation>
    </message>
    <message>
        <source>One point</source>
        <translation>Ein Punkt</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 Punkte</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Caution. %1</source>
        <translation>Vorsicht. %1</translation>
    </message>
    <message>
        <source>There is no voice on this device: read it here.</source>
        <translation>Dieses Gerät hat keine Stimme: hier lesen.</translation>
    </message>
</context>
<context>
    <name>ambit::view::MeasureView</name>
    <message>
        <source>Bring each corner of the card under the cross: where its sides, carried on, would meet.</source>
        <translation>Jede Ecke der Karte unter das Kreuz bringen: dort, wo sich ihre Seiten verlängert träfen.</translation>
    </message>
    <message>
        <source>Is the cross where the card&apos;s sides, carried on, would meet? If not, draw the photo there.</source>
        <translation>Ist das Kreuz dort, wo sich die Seiten der Karte verlängert träfen? Wenn nicht, das Foto dorthin ziehen.</translation>
    </message>
    <message>
        <source>A card was found. Look at its corners before you measure.</source>
        <translation>Eine Karte wurde gefunden. Vor dem Messen ihre Ecken ansehen.</translation>
    </message>
    <message>
        <source>Its corners can be marked by hand.</source>
        <translation>Ihre Ecken lassen sich von Hand setzen.</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Abstand</translation>
    </message>
    <message>
        <source>Distance to a line</source>
        <translation>Abstand zu einer Linie</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>Largest width</source>
        <translation>Größte Breite</translation>
    </message>
    <message>
        <source>Slippage mark: offset</source>
        <translation>Rutschmarke: Versatz</translation>
    </message>
    <message>
        <source>Slippage mark: angle</source>
        <translation>Rutschmarke: Winkel</translation>
    </message>
    <message>
        <source>Mark the first end.</source>
        <translation>Das eine Ende markieren.</translation>
    </message>
    <message>
        <source>Mark the other end.</source>
        <translation>Das andere Ende markieren.</translation>
    </message>
    <message>
        <source>Mark the place whose distance to a line you want.</source>
        <translation>Die Stelle markieren, deren Abstand zu einer Linie gesucht ist.</translation>
    </message>
    <message>
        <source>Mark the line: one place on it.</source>
        <translation>Die Linie markieren: eine Stelle darauf.</translation>
    </message>
    <message>
        <source>Mark another place on the line, far from the first.</source>
        <translation>Eine weitere Stelle auf der Linie markieren, weit von der ersten.</translation>
    </message>
    <message>
        <source>Mark the outline, one corner after another: %1 so far.</source>
        <translation>Den Umriss markieren, Ecke um Ecke: bisher %1.</translation>
    </message>
    <message>
        <source>The stroke on the bolt: mark its far end.</source>
        <translation>Der Strich auf der Schraube: sein äußeres Ende markieren.</translation>
    </message>
    <message>
        <source>The stroke on the bolt: mark its end at the joint.</source>
        <translation>Der Strich auf der Schraube: sein Ende an der Fuge markieren.</translation>
    </message>
    <message>
        <source>The stroke on the part: mark its end at the joint.</source>
        <translation>Der Strich auf dem Teil: sein Ende an der Fuge markieren.</translation>
    </message>
    <message>
        <source>The stroke on the part: mark its far end.</source>
        <translation>Der Strich auf dem Teil: sein äußeres Ende markieren.</translation>
    </message>
    <message>
        <source>The length you know: mark its first end.</source>
        <translation>Die bekannte Länge: ihr eines Ende markieren.</translation>
    </message>
    <message>
        <source>The length you know: mark its other end.</source>
        <translation>Die bekannte Länge: ihr anderes Ende markieren.</translation>
    </message>
    <message>
        <source>Mark more of the outline, or keep it: %1 so far.</source>
        <translation>Mehr vom Umriss markieren oder so behalten: bisher %1.</translation>
    </message>
    <message>
        <source>Within the limit: %1</source>
        <translation>Innerhalb der Grenze: %1</translation>
    </message>
    <message>
        <source>Below the limit: %1</source>
        <translation>Unter der Grenze: %1</translation>
    </message>
    <message>
        <source>Above the limit: %1</source>
        <translation>Über der Grenze: %1</translation>
    </message>
    <message>
        <source>The photo leaves open which way the card lies: say which side is drawn bold.</source>
        <translation>Das Foto lässt offen, wie die Karte liegt: sagen, welche Seite fett gezeichnet ist.</translation>
    </message>
    <message>
        <source>Each corner has been looked at. Touch one to move it once more.</source>
        <translation>Jede Ecke ist angesehen. Eine berühren, um sie noch zu verschieben.</translation>
    </message>
</context>
<context>
    <name>ambit::view::OwedModel</name>
    <message>
        <source>from the start</source>
        <translation>von Anfang an</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
</context>
<context>
    <name>ambit::view::PlanComparison</name>
    <message>
        <source>Climbs</source>
        <translation>Aufstiege</translation>
    </message>
    <message>
        <source>Changes of %1</source>
        <translation>Wechsel %1</translation>
    </message>
    <message>
        <source>Changes of settings</source>
        <translation>Wechsel der Stellung</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>No shorter walk exists, climbs and changes weighed in.</source>
        <translation>Einen kürzeren Weg gibt es nicht, Aufstiege und Wechsel eingerechnet.</translation>
    </message>
    <message>
        <source>At most %1 % longer than the shortest possible, climbs and changes weighed in.</source>
        <translation>Höchstens %1 % länger als der kürzestmögliche, Aufstiege und Wechsel eingerechnet.</translation>
    </message>
    <message>
        <source>%1: %2 this way round, %3 as listed.</source>
        <translation>%1: %2 auf diesem Weg, %3 wie aufgelistet.</translation>
    </message>
    <message>
        <source>Way walked</source>
        <translation>Gegangener Weg</translation>
    </message>
</context>
<context>
    <name>ambit::view::PointHistoryView</name>
    <message>
        <source>Sound</source>
        <translation>In Ordnung</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Not inspected</source>
        <translation>Nicht geprüft</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>below</source>
        <translation>darunter</translation>
    </message>
    <message>
        <source>above</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>renewed before it</source>
        <translation>davor erneuert</translation>
    </message>
</context>
<context>
    <name>ambit::view::RecordView</name>
    <message>
        <source>This record does not hold: %1</source>
        <translation>Dieses Protokoll hält nicht: %1</translation>
    </message>
    <message>
        <source>The signature holds and nothing was changed since.</source>
        <translation>Die Unterschrift hält, und seitdem wurde nichts geändert.</translation>
    </message>
    <message>
        <source>All %1 signatures hold and nothing was changed since.</source>
        <translation>Alle %1 Unterschriften halten, und seitdem wurde nichts geändert.</translation>
    </message>
    <message>
        <source>This record does not hold: it is not the one that the archive names.</source>
        <translation>Dieses Protokoll hält nicht: Es ist nicht das, das das Archiv nennt.</translation>
    </message>
</context>
<context>
    <name>ambit::view::RetentionView</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 vom %2</translation>
    </message>
</context>
<context>
    <name>ambit::view::ReviewModel</name>
    <message>
        <source>not settled</source>
        <translation>nicht erledigt</translation>
    </message>
</context>
<context>
    <name>ambit::view::RoundView</name>
    <message>
        <source>Told by key: not as it should be.</source>
        <translation>Per Taste gemeldet: nicht, wie es sein soll.</translation>
    </message>
    <message>
        <source>%1 asks to look again</source>
        <translation>%1 bittet um einen zweiten Blick</translation>
    </message>
    <message>
        <source>%1. The order stays as it is.</source>
        <translation>%1. Die Reihenfolge bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>seit %1</translation>
    </message>
    <message>
        <source>%1 is below the limit: %2</source>
        <translation>%1 liegt unter dem Grenzwert: %2</translation>
    </message>
    <message>
        <source>%1 is above the limit: %2</source>
        <translation>%1 liegt über dem Grenzwert: %2</translation>
    </message>
    <message>
        <source>no climb</source>
        <translation>kein Aufstieg</translation>
    </message>
    <message>
        <source>1 climb</source>
        <translation>1 Aufstieg</translation>
    </message>
    <message>
        <source>%1 climbs</source>
        <translation>%1 Aufstiege</translation>
    </message>
    <message>
        <source>about %1 min</source>
        <translation>etwa %1 min</translation>
    </message>
    <message>
        <source>Paused since %1</source>
        <translation>Pausiert seit %1</translation>
    </message>
    <message>
        <source>%1 of %2 up here</source>
        <translation>%1 von %2 hier oben</translation>
    </message>
    <message>
        <source>%1 of %2 here</source>
        <translation>%1 von %2 hier</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>%1 may come to its limit before the next flight ends</source>
        <translation>%1 kann vor dem Ende des nächsten Flugs an seine Grenze kommen</translation>
    </message>
    <message>
        <source>%1 is beyond its limit</source>
        <translation>%1 ist über seine Grenze hinaus</translation>
    </message>
</context>
<context>
    <name>ambit::view::SharingView</name>
    <message>
        <source>%1 follows</source>
        <translation>%1 sieht mit</translation>
    </message>
    <message>
        <source>%1 and %2 follow</source>
        <translation>%1 und %2 sehen mit</translation>
    </message>
    <message>
        <source>%1 follow</source>
        <translation>%1 sehen mit</translation>
    </message>
    <message>
        <source>From %1. %2.</source>
        <translation>Von %1. %2.</translation>
    </message>
</context>
<context>
    <name>ambit::view::Student</name>
    <message>
        <source>Not here yet; looked for.</source>
        <translation>Noch nicht da; wird gesucht.</translation>
    </message>
    <message>
        <source>No connection just now; tried again by itself. Nothing is lost.</source>
        <translation>Gerade keine Verbindung; wird von selbst neu versucht. Nichts ist verloren.</translation>
    </message>
    <message>
        <source>Ended.</source>
        <translation>Beendet.</translation>
    </message>
    <message>
        <source>Found what grounds</source>
        <translation>Hat gefunden, was am Boden hält</translation>
    </message>
    <message>
        <source>Concluded: the record waits for you</source>
        <translation>Abgeschlossen: Das Protokoll wartet auf Sie</translation>
    </message>
    <message>
        <source>Has replied</source>
        <translation>Hat geantwortet</translation>
    </message>
    <message>
        <source>Not sound, or not inspected</source>
        <translation>Nicht in Ordnung, oder nicht geprüft</translation>
    </message>
    <message>
        <source>Longer at this than it takes</source>
        <translation>Länger dabei, als es dauert</translation>
    </message>
    <message>
        <source>No connection</source>
        <translation>Keine Verbindung</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>Pausiert</translation>
    </message>
    <message>
        <source>%1: on its way</source>
        <translation>%1: unterwegs</translation>
    </message>
    <message>
        <source>%1: has arrived</source>
        <translation>%1: angekommen</translation>
    </message>
    <message>
        <source>%1: not taken. %2</source>
        <translation>%1: nicht angenommen. %2</translation>
    </message>
</context>
<context>
    <name>ambit::view::TouchGuard</name>
    <message>
        <source>Two places were touched at once: nothing was taken.</source>
        <translation>Zwei Stellen zugleich berührt: Nichts wurde angenommen.</translation>
    </message>
    <message>
        <source>That touch was too short: nothing was taken.</source>
        <translation>Diese Berührung war zu kurz: Nichts wurde angenommen.</translation>
    </message>
    <message>
        <source>That touch came too soon after the last: nothing was taken.</source>
        <translation>Diese Berührung kam zu bald nach der letzten: Nichts wurde angenommen.</translation>
    </message>
</context>
<context>
    <name>ambit::view::TrendView</name>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Days since the first value</source>
        <translation>Tage seit dem ersten Wert</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>renewed</source>
        <translation>erneuert</translation>
    </message>
    <message>
        <source>limit, 95 %</source>
        <translation>Grenze, 95 %</translation>
    </message>
    <message>
        <source>%1 after %2 days</source>
        <translation>%1 nach %2 Tagen</translation>
    </message>
</context>
<context>
    <name>ambit::view::VerificationView</name>
    <message>
        <source>Record %1</source>
        <translation>Protokoll %1</translation>
    </message>
    <message>
        <source>%1 of %2 UTC, %3</source>
        <translation>%1 vom %2 UTC, %3</translation>
    </message>
    <message>
        <source>Kept as %1</source>
        <translation>Aufbewahrt als %1</translation>
    </message>
    <message>
        <source>It was here as a latest one.</source>
        <translation>Es war hier als eines der letzten.</translation>
    </message>
    <message>
        <source>Named as an earlier one by: %1</source>
        <translation>Als früheres genannt von: %1</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>A record names it.</source>
        <translation>Ein Protokoll nennt es.</translation>
    </message>
</context>
<context>
    <name>ambit::view::WatchView</name>
    <message>
        <source>Your signature</source>
        <translation>Eigene Unterschrift</translation>
    </message>
</context>
<context>
    <name>ambit::view::ZoneFindings</name>
    <message>
        <source>30 days</source>
        <translation>30 Tage</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 Jahr</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>%1: 1 finding</source>
        <translation>%1: 1 Befund</translation>
    </message>
    <message>
        <source>%1: %2 findings</source>
        <translation>%1: %2 Befunde</translation>
    </message>
</context>
</TS>
