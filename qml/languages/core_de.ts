<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name></name>
    <message id="The archive has no record of this aircraft.">
        <source></source>
        <translation>Das Archiv hat kein Protokoll dieses Luftfahrzeugs.</translation>
    </message>
    <message id="Look at its registration, or import its records.">
        <source></source>
        <translation>Kennzeichen prüfen oder seine Protokolle einlesen.</translation>
    </message>
    <message id="An aircraft needs a registration and a serial number.">
        <source></source>
        <translation>Ein Luftfahrzeug braucht Kennzeichen und Werknummer.</translation>
    </message>
    <message id="Fill in both.">
        <source></source>
        <translation>Beides ausfüllen.</translation>
    </message>
    <message id="The airframe's text is not that of its hash.">
        <source></source>
        <translation>Der Text der Musterbeschreibung passt nicht zu seinem Hash.</translation>
    </message>
    <message id="The archive knows %1 with the serial number %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Archiv kennt %1 mit der Werknummer %2.</numerusform>
            <numerusform>Das Archiv kennt %1 mit der Werknummer %2.</numerusform>
        </translation>
    </message>
    <message id="Look at the data plate; one registration is one machine here.">
        <source></source>
        <translation>Auf das Typenschild sehen: Ein Kennzeichen ist hier ein Luftfahrzeug.</translation>
    </message>
    <message id="The archive is damaged: this is not what was stored.">
        <source></source>
        <translation>Das Archiv ist beschädigt: Das ist nicht, was gespeichert wurde.</translation>
    </message>
    <message id="Keep the file, copy it away, and go on with a backup.">
        <source></source>
        <translation>Die Datei behalten, wegkopieren und mit einer Sicherung weitermachen.</translation>
    </message>
    <message id="The archive is damaged, and so would be its copy: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Archiv ist beschädigt, und seine Kopie wäre es auch: %1.</numerusform>
            <numerusform>Das Archiv ist beschädigt, und seine Kopie wäre es auch: %1.</numerusform>
        </translation>
    </message>
    <message id="Nothing was written. Go on with an earlier backup.">
        <source></source>
        <translation>Nichts wurde geschrieben. Mit einer früheren Sicherung weitermachen.</translation>
    </message>
    <message id="There is a file already; a backup never overwrites one.">
        <source></source>
        <translation>Es gibt schon eine Datei; eine Sicherung überschreibt nie eine.</translation>
    </message>
    <message id="Choose another name.">
        <source></source>
        <translation>Einen anderen Namen wählen.</translation>
    </message>
    <message id="The backup was stopped; nothing is left of it.">
        <source></source>
        <translation>Die Sicherung wurde angehalten; nichts ist davon übrig.</translation>
    </message>
    <message id="Nothing was changed. Try again; if it stays so, look at the disk.">
        <source></source>
        <translation>Nichts wurde geändert. Noch einmal versuchen; bleibt es so, den Datenträger prüfen.</translation>
    </message>
    <message id="The disk is full. Make room and try again; nothing was lost.">
        <source></source>
        <translation>Der Datenträger ist voll. Platz schaffen und noch einmal versuchen; nichts ging verloren.</translation>
    </message>
    <message id="Another program has the archive open. Close it and try again.">
        <source></source>
        <translation>Ein anderes Programm hat das Archiv offen. Es schließen und noch einmal versuchen.</translation>
    </message>
    <message id="The file is damaged. Keep it, copy it away, and go on with a backup or a new archive.">
        <source></source>
        <translation>Die Datei ist beschädigt. Diese behalten, wegkopieren und mit einer Sicherung oder einem neuen Archiv weitermachen.</translation>
    </message>
    <message id="The archive could not %1: %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Archiv konnte %1: %2.</numerusform>
            <numerusform>Das Archiv konnte %1: %2.</numerusform>
        </translation>
    </message>
    <message id="The archive has no such record to go on after.">
        <source></source>
        <translation>Das Archiv hat kein solches Protokoll, an das anzuschließen wäre.</translation>
    </message>
    <message id="Search anew.">
        <source></source>
        <translation>Neu suchen.</translation>
    </message>
    <message id="What was said is not canonical JSON.">
        <source></source>
        <translation>Das Gesagte ist kein kanonisches JSON.</translation>
    </message>
    <message id="This is neither a record nor a photo nor an airframe.">
        <source></source>
        <translation>Das ist weder Protokoll noch Foto noch Musterbeschreibung.</translation>
    </message>
    <message id="Give record.json, record.pdf, or what “ambit archive export” wrote.">
        <source></source>
        <translation>record.json, record.pdf oder das angeben, was „ambit archive export“ geschrieben hat.</translation>
    </message>
    <message id="No record here names this photo.">
        <source></source>
        <translation>Kein Protokoll hier nennt dieses Foto.</translation>
    </message>
    <message id="Import the record it belongs to with it.">
        <source></source>
        <translation>Das zugehörige Protokoll mit einlesen.</translation>
    </message>
    <message id="This is another record than was announced.">
        <source></source>
        <translation>Das ist ein anderes Protokoll als angekündigt.</translation>
    </message>
    <message id="Nothing of it was kept.">
        <source></source>
        <translation>Nichts davon wurde behalten.</translation>
    </message>
    <message id="More than 32768 records bear the very same time.">
        <source></source>
        <translation>Mehr als 32768 Protokolle tragen genau dieselbe Zeit.</translation>
    </message>
    <message id="Look at where they come from.">
        <source></source>
        <translation>Prüfen, woher sie kommen.</translation>
    </message>
    <message id="The photo's bytes are not those of its hash.">
        <source></source>
        <translation>Die Bytes des Fotos passen nicht zu seinem Hash.</translation>
    </message>
    <message id="Take the photo again.">
        <source></source>
        <translation>Das Foto noch einmal aufnehmen.</translation>
    </message>
    <message id="This is not canonical.">
        <source></source>
        <translation>Das ist nicht kanonisch.</translation>
    </message>
    <message id="An event of this round is damaged in the archive.">
        <source></source>
        <translation>Ein Ereignis dieses Rundgangs ist im Archiv beschädigt.</translation>
    </message>
    <message id="The archive has no such round.">
        <source></source>
        <translation>Das Archiv hat keinen solchen Rundgang.</translation>
    </message>
    <message id="This is not the next event of the round.">
        <source></source>
        <translation>Das ist nicht das nächste Ereignis des Rundgangs.</translation>
    </message>
    <message id="Another program may be walking it; open the round again.">
        <source></source>
        <translation>Vielleicht geht ihn ein anderes Programm; den Rundgang neu öffnen.</translation>
    </message>
    <message id="The archive has no such round, and this event does not open it.">
        <source></source>
        <translation>Das Archiv hat keinen solchen Rundgang, und dieses Ereignis eröffnet ihn nicht.</translation>
    </message>
    <message id="The archive does not know the aircraft %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Archiv kennt das Luftfahrzeug %1 nicht.</numerusform>
            <numerusform>Das Archiv kennt das Luftfahrzeug %1 nicht.</numerusform>
        </translation>
    </message>
    <message id="Add the aircraft first.">
        <source></source>
        <translation>Zuerst das Luftfahrzeug anlegen.</translation>
    </message>
    <message id="The event names a photo that is not there.">
        <source></source>
        <translation>Das Ereignis nennt ein Foto, das nicht da ist.</translation>
    </message>
    <message id="Give the photo's bytes with it.">
        <source></source>
        <translation>Die Bytes des Fotos mitgeben.</translation>
    </message>
    <message id="The archive has this record already.">
        <source></source>
        <translation>Das Archiv hat dieses Protokoll schon.</translation>
    </message>
    <message id="Open the round again.">
        <source></source>
        <translation>Den Rundgang neu öffnen.</translation>
    </message>
    <message id="Two logs of one round differ: it was walked on two devices.">
        <source></source>
        <translation>Zwei Aufzeichnungen eines Rundgangs unterscheiden sich: Er wurde auf zwei Geräten gegangen.</translation>
    </message>
    <message id="Both archives keep theirs; conclude one of them and let the other be.">
        <source></source>
        <translation>Beide Archive behalten ihre; eine davon abschließen und die andere ruhen lassen.</translation>
    </message>
    <message id="There is no such archive.">
        <source></source>
        <translation>Es gibt kein solches Archiv.</translation>
    </message>
    <message id="Look at its name.">
        <source></source>
        <translation>Den Namen prüfen.</translation>
    </message>
    <message id="This is the archive itself.">
        <source></source>
        <translation>Das ist das Archiv selbst.</translation>
    </message>
    <message id="Give another.">
        <source></source>
        <translation>Ein anderes angeben.</translation>
    </message>
    <message id="The file breaks off or is damaged: what follows in it can't be read.">
        <source></source>
        <translation>Die Datei bricht ab oder ist beschädigt: Was folgt, ist nicht lesbar.</translation>
    </message>
    <message id="Ask for it again. What came before it is taken in.">
        <source></source>
        <translation>Noch einmal anfordern. Was davor kam, ist aufgenommen.</translation>
    </message>
    <message id="The file breaks off or is damaged.">
        <source></source>
        <translation>Die Datei bricht ab oder ist beschädigt.</translation>
    </message>
    <message id="This is larger than 512 MiB.">
        <source></source>
        <translation>Das ist größer als 512 MiB.</translation>
    </message>
    <message id="It is no record or photo.">
        <source></source>
        <translation>Es ist weder Protokoll noch Foto.</translation>
    </message>
    <message id="Leave out control characters and fill in what is empty.">
        <source></source>
        <translation>Steuerzeichen weglassen und Leeres ausfüllen.</translation>
    </message>
    <message id="A signature comes with its record.">
        <source></source>
        <translation>Eine Unterschrift kommt mit ihrem Protokoll.</translation>
    </message>
    <message id="Seal the round.">
        <source></source>
        <translation>Den Rundgang unterschreiben.</translation>
    </message>
    <message id="Something was done after it.">
        <source></source>
        <translation>Danach wurde noch etwas getan.</translation>
    </message>
    <message id="The archive is damaged: a record can't be unpacked.">
        <source></source>
        <translation>Das Archiv ist beschädigt: Ein Protokoll lässt sich nicht entpacken.</translation>
    </message>
    <message id="The archive has no such record.">
        <source></source>
        <translation>Das Archiv hat kein solches Protokoll.</translation>
    </message>
    <message id="This record is of another aircraft.">
        <source></source>
        <translation>Dieses Protokoll gehört zu einem anderen Luftfahrzeug.</translation>
    </message>
    <message id="Look at its identity.">
        <source></source>
        <translation>Seine Kennung prüfen.</translation>
    </message>
    <message id="This record is the latest of its file: the next one names it.">
        <source></source>
        <translation>Dieses Protokoll ist das letzte seiner Akte: Das nächste nennt es.</translation>
    </message>
    <message id="Let it go when there are later ones.">
        <source></source>
        <translation>Es aussondern, wenn es spätere gibt.</translation>
    </message>
    <message id="This record says what was let go: without it the chain breaks.">
        <source></source>
        <translation>Dieses Protokoll sagt, was ausgesondert wurde: Ohne es reißt die Kette.</translation>
    </message>
    <message id="No record is named that is to go.">
        <source></source>
        <translation>Kein Protokoll ist genannt, das gehen soll.</translation>
    </message>
    <message id="Nothing was changed. Keep the file, copy it away, and go on with a backup or a new archive.">
        <source></source>
        <translation>Nichts wurde geändert. Die Datei behalten, wegkopieren und mit einer Sicherung oder einem neuen Archiv weitermachen.</translation>
    </message>
    <message id="The archive is damaged: the file was cut off.">
        <source></source>
        <translation>Das Archiv ist beschädigt: Die Datei wurde abgeschnitten.</translation>
    </message>
    <message id="The archive is damaged: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Archiv ist beschädigt: %1.</numerusform>
            <numerusform>Das Archiv ist beschädigt: %1.</numerusform>
        </translation>
    </message>
    <message id="This database is not an Ambit archive.">
        <source></source>
        <translation>Diese Datenbank ist kein Archiv von Ambit.</translation>
    </message>
    <message id="Choose another file.">
        <source></source>
        <translation>Eine andere Datei wählen.</translation>
    </message>
    <message id="The archive is damaged: its version is %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Archiv ist beschädigt: Seine Version ist %1.</numerusform>
            <numerusform>Das Archiv ist beschädigt: Seine Version ist %1.</numerusform>
        </translation>
    </message>
    <message id="This archive was made by a newer Ambit.">
        <source></source>
        <translation>Dieses Archiv stammt von einem neueren Ambit.</translation>
    </message>
    <message id="Update Ambit; the archive is untouched.">
        <source></source>
        <translation>Ambit auf den neuen Stand bringen; das Archiv ist unberührt.</translation>
    </message>
    <message id="Only a concluded round is signed.">
        <source></source>
        <translation>Nur ein abgeschlossener Rundgang wird unterschrieben.</translation>
    </message>
    <message id="Conclude it first.">
        <source></source>
        <translation>Ihn zuerst abschließen.</translation>
    </message>
    <message id="This key belongs to %1; the round was walked by %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieser Schlüssel gehört %1; den Rundgang ging %2.</numerusform>
            <numerusform>Dieser Schlüssel gehört %1; den Rundgang ging %2.</numerusform>
        </translation>
    </message>
    <message id="Sign with the key of the person who walked it.">
        <source></source>
        <translation>Mit dem Schlüssel der Person unterschreiben, die ihn ging.</translation>
    </message>
    <message id="The folder could not be made: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Ordner ließ sich nicht anlegen: %1.</numerusform>
            <numerusform>Der Ordner ließ sich nicht anlegen: %1.</numerusform>
        </translation>
    </message>
    <message id="Choose another folder.">
        <source></source>
        <translation>Einen anderen Ordner wählen.</translation>
    </message>
    <message id="The check was stopped.">
        <source></source>
        <translation>Die Prüfung wurde angehalten.</translation>
    </message>
    <message id="A record that came after it is gone, and nothing says which.">
        <source></source>
        <translation>Ein Protokoll, das danach kam, ist weg, und nichts sagt, welches.</translation>
    </message>
    <message id="This photo is not what was stored.">
        <source></source>
        <translation>Dieses Foto ist nicht, was gespeichert wurde.</translation>
    </message>
    <message id="The record that sealed this round is not here.">
        <source></source>
        <translation>Das Protokoll, das diesen Rundgang versiegelt hat, ist nicht hier.</translation>
    </message>
    <message id="A search can't find it: its words are gone.">
        <source></source>
        <translation>Eine Suche findet es nicht: Seine Wörter sind weg.</translation>
    </message>
    <message id="The records hold, but the archive around them is damaged: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Protokolle halten, aber das Archiv um sie ist beschädigt: %1.</numerusform>
            <numerusform>Die Protokolle halten, aber das Archiv um sie ist beschädigt: %1.</numerusform>
        </translation>
    </message>
    <message id="It doesn't hold as it was kept by an older Ambit.">
        <source></source>
        <translation>So, wie ein älteres Ambit es aufbewahrt hat, hält es nicht.</translation>
    </message>
    <message id="Go on with a backup.">
        <source></source>
        <translation>Mit einer Sicherung weitermachen.</translation>
    </message>
    <message id="Its signature is gone.">
        <source></source>
        <translation>Seine Unterschrift ist weg.</translation>
    </message>
    <message id="It isn't in its place: it was moved to another aircraft or time.">
        <source></source>
        <translation>Es ist nicht an seinem Platz: Es wurde zu einem anderen Luftfahrzeug oder einer anderen Zeit verschoben.</translation>
    </message>
    <message id="What the archive keeps beside it isn't what it says.">
        <source></source>
        <translation>Was das Archiv daneben aufbewahrt, ist nicht, was es sagt.</translation>
    </message>
    <message id="This day lies outside the calendar known here.">
        <source></source>
        <translation>Dieser Tag liegt außerhalb des hier bekannten Kalenders.</translation>
    </message>
    <message id="Use a day in the years 1 to 9999.">
        <source></source>
        <translation>Einen Tag der Jahre 1 bis 9999 nehmen.</translation>
    </message>
    <message id="There is no such day.">
        <source></source>
        <translation>Diesen Tag gibt es nicht.</translation>
    </message>
    <message id="Give a day of the calendar, in the years 1 to 9999.">
        <source></source>
        <translation>Einen Kalendertag der Jahre 1 bis 9999 angeben.</translation>
    </message>
    <message id="This is not a date.">
        <source></source>
        <translation>Das ist kein Datum.</translation>
    </message>
    <message id="Write a day of the calendar like 2026-06-20.">
        <source></source>
        <translation>Einen Kalendertag so schreiben: 2026-06-20.</translation>
    </message>
    <message id="This is not a decimal number.">
        <source></source>
        <translation>Das ist keine Dezimalzahl.</translation>
    </message>
    <message id="Write it like 24.5: digits, one point where needed, at most 15 digits.">
        <source></source>
        <translation>So schreiben: 24,5 – Ziffern, wo nötig ein Komma, höchstens 15 Ziffern.</translation>
    </message>
    <message id="This sum takes more than 15 digits.">
        <source></source>
        <translation>Diese Summe braucht mehr als 15 Ziffern.</translation>
    </message>
    <message id="Use fewer digits or fewer decimals.">
        <source></source>
        <translation>Weniger Ziffern oder weniger Nachkommastellen nehmen.</translation>
    </message>
    <message id="%1: %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1: %2.</numerusform>
            <numerusform>%1: %2.</numerusform>
        </translation>
    </message>
    <message id="The folder could not be synced to disk">
        <source></source>
        <translation>Der Ordner ließ sich nicht auf den Datenträger sichern</translation>
    </message>
    <message id="The file could not be opened">
        <source></source>
        <translation>Die Datei ließ sich nicht öffnen</translation>
    </message>
    <message id="This is not a regular file.">
        <source></source>
        <translation>Das ist keine gewöhnliche Datei.</translation>
    </message>
    <message id="The file is larger than %1 bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Datei ist größer als %1 Bytes.</numerusform>
            <numerusform>Die Datei ist größer als %1 Bytes.</numerusform>
        </translation>
    </message>
    <message id="The file could not be read">
        <source></source>
        <translation>Die Datei ließ sich nicht lesen</translation>
    </message>
    <message id="The file could not be made">
        <source></source>
        <translation>Die Datei ließ sich nicht anlegen</translation>
    </message>
    <message id="The file could not be written">
        <source></source>
        <translation>Die Datei ließ sich nicht schreiben</translation>
    </message>
    <message id="“%1”" numerus="yes">
        <source></source>
        <translation>
            <numerusform>„%1“</numerusform>
            <numerusform>„%1“</numerusform>
        </translation>
    </message>
    <message id="This is not a time.">
        <source></source>
        <translation>Das ist keine Zeit.</translation>
    </message>
    <message id="Write it like %1, in the years 1970 to 9999." numerus="yes">
        <source></source>
        <translation>
            <numerusform>So schreiben: %1, in den Jahren 1970 bis 9999.</numerusform>
            <numerusform>So schreiben: %1, in den Jahren 1970 bis 9999.</numerusform>
        </translation>
    </message>
    <message id="No record says when it was last done.">
        <source></source>
        <translation>Kein Protokoll sagt, wann es zuletzt gemacht wurde.</translation>
    </message>
    <message id="No record says when the part was fitted.">
        <source></source>
        <translation>Kein Protokoll sagt, wann das Teil eingebaut wurde.</translation>
    </message>
    <message id="%1 is past: %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist überschritten: %2.</numerusform>
            <numerusform>%1 ist überschritten: %2.</numerusform>
        </translation>
    </message>
    <message id="Does the type certificate ask for this item in flight by day under visual flight rules?">
        <source></source>
        <translation>Verlangt die Musterzulassung diesen Gegenstand für Flüge am Tag nach Sichtflugregeln?</translation>
    </message>
    <message id="What the aircraft's certification asks for can't be deferred.">
        <source></source>
        <translation>Was die Zulassung des Luftfahrzeugs verlangt, lässt sich nicht zurückstellen.</translation>
    </message>
    <message id="Does the aircraft's equipment list, or its list of kinds of operations, ask for it?">
        <source></source>
        <translation>Verlangt die Ausrüstungsliste des Luftfahrzeugs oder seine Liste der Betriebsarten ihn?</translation>
    </message>
    <message id="What the aircraft's own lists ask for can't be deferred.">
        <source></source>
        <translation>Was die eigenen Listen des Luftfahrzeugs verlangen, lässt sich nicht zurückstellen.</translation>
    </message>
    <message id="Does a rule for the flights in view ask for it (14 CFR 91.205 or another)?">
        <source></source>
        <translation>Verlangt eine Vorschrift für die beabsichtigten Flüge ihn (14 CFR 91.205 oder eine andere)?</translation>
    </message>
    <message id="A rule asks for it on such flights: it can't be deferred for them.">
        <source></source>
        <translation>Eine Vorschrift verlangt ihn für solche Flüge: Für sie lässt er sich nicht zurückstellen.</translation>
    </message>
    <message id="Does an airworthiness directive ask for it to work?">
        <source></source>
        <translation>Verlangt eine Lufttüchtigkeitsanweisung, dass er funktioniert?</translation>
    </message>
    <message id="A directive asks for it: it can't be deferred.">
        <source></source>
        <translation>Eine Anweisung verlangt ihn: Er lässt sich nicht zurückstellen.</translation>
    </message>
    <message id="Has it been removed, or deactivated, and a placard put up (“Inoperative” where it was deactivated)?">
        <source></source>
        <translation>Wurde er ausgebaut oder stillgelegt und ein Hinweisschild angebracht („Inoperative“, wo er stillgelegt wurde)?</translation>
    </message>
    <message id="It must be removed or deactivated, and placarded, first.">
        <source></source>
        <translation>Er muss zuerst ausgebaut oder stillgelegt und beschildert werden.</translation>
    </message>
    <message id="Has a pilot or mechanic with the certificate and rating for it found that it is no hazard as it is?">
        <source></source>
        <translation>Hat ein Pilot oder Mechaniker mit Lizenz und Berechtigung dafür festgestellt, dass er so keine Gefahr ist?</translation>
    </message>
    <message id="Somebody who may must find first that it is no hazard.">
        <source></source>
        <translation>Jemand, der das darf, muss zuerst feststellen, dass er keine Gefahr ist.</translation>
    </message>
    <message id="There are %1 questions, and %2 answers." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Es gibt %1 Fragen und %2 Antworten.</numerusform>
            <numerusform>Es gibt %1 Fragen und %2 Antworten.</numerusform>
        </translation>
    </message>
    <message id="Answer each of them, in their order.">
        <source></source>
        <translation>Jede davon beantworten, in ihrer Reihenfolge.</translation>
    </message>
    <message id="Have it put right, or do what the question asks for.">
        <source></source>
        <translation>Es beheben lassen oder tun, was die Frage verlangt.</translation>
    </message>
    <message id="An assessment of something nobody found.">
        <source></source>
        <translation>Eine Beurteilung von etwas, das niemand fand.</translation>
    </message>
    <message id="%1 was assessed though it had been put right." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wurde beurteilt, obwohl es behoben war.</numerusform>
            <numerusform>%1 wurde beurteilt, obwohl es behoben war.</numerusform>
        </translation>
    </message>
    <message id="%1 was assessed twice by people who didn't know of each other." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wurde zweimal beurteilt, von Leuten, die nichts voneinander wussten.</numerusform>
            <numerusform>%1 wurde zweimal beurteilt, von Leuten, die nichts voneinander wussten.</numerusform>
        </translation>
    </message>
    <message id="A rectification of something nobody found.">
        <source></source>
        <translation>Eine Behebung von etwas, das niemand fand.</translation>
    </message>
    <message id="%1 was put right twice." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wurde zweimal behoben.</numerusform>
            <numerusform>%1 wurde zweimal behoben.</numerusform>
        </translation>
    </message>
    <message id="At %1 serial %2 was taken off, but %3 had been fitted." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Bei %1 wurde die Seriennummer %2 ausgebaut, aber %3 war eingebaut.</numerusform>
            <numerusform>Bei %1 wurde die Seriennummer %2 ausgebaut, aber %3 war eingebaut.</numerusform>
        </translation>
    </message>
    <message id="At %1 a part was fitted though one was there." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Bei %1 wurde ein Teil eingebaut, obwohl eines da war.</numerusform>
            <numerusform>Bei %1 wurde ein Teil eingebaut, obwohl eines da war.</numerusform>
        </translation>
    </message>
    <message id="Who says whose key is trusted isn't the owner.">
        <source></source>
        <translation>Wer sagt, wessen Schlüssel gilt, ist nicht der Halter.</translation>
    </message>
    <message id="A key was revoked by somebody whose it isn't and who isn't the owner.">
        <source></source>
        <translation>Ein Schlüssel wurde von jemandem widerrufen, dem er nicht gehört und der nicht der Halter ist.</translation>
    </message>
    <message id="The counter %1 runs backwards: %2, then %3." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Zähler %1 läuft rückwärts: %2, dann %3.</numerusform>
            <numerusform>Der Zähler %1 läuft rückwärts: %2, dann %3.</numerusform>
        </translation>
    </message>
    <message id="%1, found on %2 by %3 (%4)" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1, gefunden am %2 von %3 (%4)</numerusform>
            <numerusform>%1, gefunden am %2 von %3 (%4)</numerusform>
        </translation>
    </message>
    <message id="%1 grounds the aircraft until it is put right." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 hält das Luftfahrzeug am Boden, bis es behoben ist.</numerusform>
            <numerusform>%1 hält das Luftfahrzeug am Boden, bis es behoben ist.</numerusform>
        </translation>
    </message>
    <message id="%1 was not assessed: put it right, or defer it on a stated basis." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wurde nicht beurteilt: beheben oder mit Grundlage zurückstellen.</numerusform>
            <numerusform>%1 wurde nicht beurteilt: beheben oder mit Grundlage zurückstellen.</numerusform>
        </translation>
    </message>
    <message id="%1 was deferred until %2, which is past." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 war bis %2 zurückgestellt; das ist vorbei.</numerusform>
            <numerusform>%1 war bis %2 zurückgestellt; das ist vorbei.</numerusform>
        </translation>
    </message>
    <message id="%1 was deferred until %2 says %3; it says %4." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 war zurückgestellt, bis %2 %3 zeigt; er zeigt %4.</numerusform>
            <numerusform>%1 war zurückgestellt, bis %2 %3 zeigt; er zeigt %4.</numerusform>
        </translation>
    </message>
    <message id="14 CFR 91.417(b)(1): a year has passed since the work.">
        <source></source>
        <translation>14 CFR 91.417(b)(1): Seit der Arbeit ist ein Jahr vergangen.</translation>
    </message>
    <message id="It is the latest: the next record names it.">
        <source></source>
        <translation>Es ist das letzte: Das nächste Protokoll nennt es.</translation>
    </message>
    <message id="14 CFR 91.417(b)(3): a discrepancy in it isn't put right and seen sound yet.">
        <source></source>
        <translation>14 CFR 91.417(b)(3): Eine Beanstandung darin ist noch nicht behoben und als in Ordnung gesehen.</translation>
    </message>
    <message id="14 CFR 91.417(b)(2): it says what the aircraft's times, parts or inspections are now.">
        <source></source>
        <translation>14 CFR 91.417(b)(2): Es sagt, was Zeiten, Teile oder Prüfungen des Luftfahrzeugs jetzt sind.</translation>
    </message>
    <message id="14 CFR 91.417 doesn't ask for rounds; nothing in it is open.">
        <source></source>
        <translation>14 CFR 91.417 verlangt keine Rundgänge; nichts darin ist offen.</translation>
    </message>
    <message id="14 CFR 91.417(b)(1): the work was repeated or superseded since.">
        <source></source>
        <translation>14 CFR 91.417(b)(1): Die Arbeit wurde seither wiederholt oder ersetzt.</translation>
    </message>
    <message id="14 CFR 91.417(b)(1): records of work stay for a year, or until it is repeated or superseded.">
        <source></source>
        <translation>14 CFR 91.417(b)(1): Protokolle von Arbeiten bleiben ein Jahr oder bis zur Wiederholung oder Ersetzung.</translation>
    </message>
    <message id="14 CFR 91.417(b)(3): what it is about was put right and seen sound.">
        <source></source>
        <translation>14 CFR 91.417(b)(3): Worum es geht, wurde behoben und als in Ordnung gesehen.</translation>
    </message>
    <message id="Later readings say what the counters are now.">
        <source></source>
        <translation>Spätere Ablesungen sagen, was die Zähler jetzt sind.</translation>
    </message>
    <message id="It says who owns the aircraft, whose word counts, or what was let go.">
        <source></source>
        <translation>Es sagt, wem das Luftfahrzeug gehört, wessen Wort gilt oder was ausgesondert wurde.</translation>
    </message>
    <message id="The archive is damaged: what is kept about a record can't be read.">
        <source></source>
        <translation>Das Archiv ist beschädigt: Was über ein Protokoll aufbewahrt wird, ist nicht lesbar.</translation>
    </message>
    <message id="%1 %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 %2</numerusform>
            <numerusform>%1 %2</numerusform>
        </translation>
    </message>
    <message id="days">
        <source></source>
        <translation>Tage</translation>
    </message>
    <message id="%1 runs backwards, from %2 to %3." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 läuft rückwärts: erst %2, dann %3.</numerusform>
            <numerusform>%1 läuft rückwärts: erst %2, dann %3.</numerusform>
        </translation>
    </message>
    <message id="Correct what is wrong; where a counter was replaced, give the past from then on.">
        <source></source>
        <translation>Berichtigen, was falsch ist; wo ein Zähler ersetzt wurde, die Vergangenheit ab da angeben.</translation>
    </message>
    <message id="The counter %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Zähler %1</numerusform>
            <numerusform>Der Zähler %1</numerusform>
        </translation>
    </message>
    <message id="The calendar">
        <source></source>
        <translation>Der Kalender</translation>
    </message>
    <message id="What the counter %1 read when this was last done is not known." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Was der Zähler %1 zeigte, als dies zuletzt gemacht wurde, ist nicht bekannt.</numerusform>
            <numerusform>Was der Zähler %1 zeigte, als dies zuletzt gemacht wurde, ist nicht bekannt.</numerusform>
        </translation>
    </message>
    <message id="Enter it from the logbook.">
        <source></source>
        <translation>Aus den Wartungsunterlagen eintragen.</translation>
    </message>
    <message id="The day when this was last done is not known.">
        <source></source>
        <translation>Der Tag, an dem dies zuletzt gemacht wurde, ist nicht bekannt.</translation>
    </message>
    <message id="What the counter %1 read when this part was fitted is not known." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Was der Zähler %1 zeigte, als dieses Teil eingebaut wurde, ist nicht bekannt.</numerusform>
            <numerusform>Was der Zähler %1 zeigte, als dieses Teil eingebaut wurde, ist nicht bekannt.</numerusform>
        </translation>
    </message>
    <message id="What this part had run by %1 when it was fitted is not known." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Was dieses Teil nach %1 gelaufen war, als es eingebaut wurde, ist nicht bekannt.</numerusform>
            <numerusform>Was dieses Teil nach %1 gelaufen war, als es eingebaut wurde, ist nicht bekannt.</numerusform>
        </translation>
    </message>
    <message id="Enter it from the part's papers; a new part had run 0.">
        <source></source>
        <translation>Aus den Papieren des Teils eintragen; ein neues Teil war 0 gelaufen.</translation>
    </message>
    <message id="The day when this part's life began is not known.">
        <source></source>
        <translation>Der Tag, an dem die Laufzeit dieses Teils begann, ist nicht bekannt.</translation>
    </message>
    <message id="Enter it from the part's papers.">
        <source></source>
        <translation>Aus den Papieren des Teils eintragen.</translation>
    </message>
    <message id="The counter %1 has no reading now." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Zähler %1 hat jetzt keine Ablesung.</numerusform>
            <numerusform>Der Zähler %1 hat jetzt keine Ablesung.</numerusform>
        </translation>
    </message>
    <message id="Read it.">
        <source></source>
        <translation>Ihn ablesen.</translation>
    </message>
    <message id="Today's date is not known.">
        <source></source>
        <translation>Das heutige Datum ist nicht bekannt.</translation>
    </message>
    <message id="Set the clock, or enter it.">
        <source></source>
        <translation>Die Uhr stellen oder es eintragen.</translation>
    </message>
    <message id="This span is empty.">
        <source></source>
        <translation>Diese Frist ist leer.</translation>
    </message>
    <message id="Give its length.">
        <source></source>
        <translation>Die Länge angeben.</translation>
    </message>
    <message id="%1; last done %2 late, within its allowance" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1; zuletzt %2 zu spät gemacht, im Rahmen der Toleranz</numerusform>
            <numerusform>%1; zuletzt %2 zu spät gemacht, im Rahmen der Toleranz</numerusform>
        </translation>
    </message>
    <message id="%1; last done %2 late" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1; zuletzt %2 zu spät gemacht</numerusform>
            <numerusform>%1; zuletzt %2 zu spät gemacht</numerusform>
        </translation>
    </message>
    <message id="unknown: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>unbekannt: %1</numerusform>
            <numerusform>unbekannt: %1</numerusform>
        </translation>
    </message>
    <message id="due on %1, %2 left" numerus="yes">
        <source></source>
        <translation>
            <numerusform>fällig am %1, noch %2</numerusform>
            <numerusform>fällig am %1, noch %2</numerusform>
        </translation>
    </message>
    <message id="due at %1, %2 left" numerus="yes">
        <source></source>
        <translation>
            <numerusform>fällig bei %1, noch %2</numerusform>
            <numerusform>fällig bei %1, noch %2</numerusform>
        </translation>
    </message>
    <message id="was due on %1, passed by %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>war fällig am %1, um %2 überschritten</numerusform>
            <numerusform>war fällig am %1, um %2 überschritten</numerusform>
        </translation>
    </message>
    <message id="was due at %1, passed by %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>war fällig bei %1, um %2 überschritten</numerusform>
            <numerusform>war fällig bei %1, um %2 überschritten</numerusform>
        </translation>
    </message>
    <message id="%1; allowed by at most %2, and only: %3" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1; erlaubt um höchstens %2, und nur: %3</numerusform>
            <numerusform>%1; erlaubt um höchstens %2, und nur: %3</numerusform>
        </translation>
    </message>
    <message id="%1 to %2 %3" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 bis %2 %3</numerusform>
            <numerusform>%1 bis %2 %3</numerusform>
        </translation>
    </message>
    <message id="at least %1 %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>mindestens %1 %2</numerusform>
            <numerusform>mindestens %1 %2</numerusform>
        </translation>
    </message>
    <message id="at most %1 %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>höchstens %1 %2</numerusform>
            <numerusform>höchstens %1 %2</numerusform>
        </translation>
    </message>
    <message id="no limit">
        <source></source>
        <translation>kein Grenzwert</translation>
    </message>
    <message id="This is not an X.509 certificate in DER.">
        <source></source>
        <translation>Das ist kein X.509-Zertifikat in DER.</translation>
    </message>
    <message id="This certificate's key is not meant for signing.">
        <source></source>
        <translation>Der Schlüssel dieses Zertifikats ist nicht zum Unterschreiben gedacht.</translation>
    </message>
    <message id="The certificate's own signature doesn't hold.">
        <source></source>
        <translation>Die eigene Unterschrift des Zertifikats hält nicht.</translation>
    </message>
    <message id="The certificate's life has no beginning or no end.">
        <source></source>
        <translation>Die Laufzeit des Zertifikats hat keinen Anfang oder kein Ende.</translation>
    </message>
    <message id="The certificate doesn't bear exactly one name.">
        <source></source>
        <translation>Das Zertifikat trägt nicht genau einen Namen.</translation>
    </message>
    <message id="A counter doesn't count below 0.">
        <source></source>
        <translation>Ein Zähler zählt nicht unter 0.</translation>
    </message>
    <message id="This counter is there twice.">
        <source></source>
        <translation>Dieser Zähler steht zweimal da.</translation>
    </message>
    <message id="The earlier records must be sorted, each once.">
        <source></source>
        <translation>Die früheren Protokolle müssen sortiert sein, jedes einmal.</translation>
    </message>
    <message id="Work is approved with the number of a certificate (14 CFR 43.9(a)(4)).">
        <source></source>
        <translation>Eine Arbeit wird mit der Nummer einer Lizenz freigegeben (14 CFR 43.9(a)(4)).</translation>
    </message>
    <message id="A reading says at least one counter.">
        <source></source>
        <translation>Eine Ablesung nennt mindestens einen Zähler.</translation>
    </message>
    <message id="A part change takes a part off, puts one on, or both.">
        <source></source>
        <translation>Ein Teiletausch baut ein Teil aus, eines ein oder beides.</translation>
    </message>
    <message id="Nothing is said that the key is good for.">
        <source></source>
        <translation>Es steht nicht da, wofür der Schlüssel gilt.</translation>
    </message>
    <message id="No record is named that was let go.">
        <source></source>
        <translation>Kein Protokoll ist genannt, das ausgesondert wurde.</translation>
    </message>
    <message id="A deferral under 91.213(d) answers its questions.">
        <source></source>
        <translation>Eine Zurückstellung nach 91.213(d) beantwortet deren Fragen.</translation>
    </message>
    <message id="This basis needs a reference: which list, which item.">
        <source></source>
        <translation>Diese Grundlage braucht einen Beleg: welche Liste, welcher Eintrag.</translation>
    </message>
    <message id="This is no kind of record.">
        <source></source>
        <translation>Das ist keine Art von Protokoll.</translation>
    </message>
    <message id="This is not a key file.">
        <source></source>
        <translation>Das ist keine Schlüsseldatei.</translation>
    </message>
    <message id="A key file holds an ENCRYPTED PRIVATE KEY and a CERTIFICATE, as “ambit key new” writes them.">
        <source></source>
        <translation>Eine Schlüsseldatei enthält ENCRYPTED PRIVATE KEY und CERTIFICATE, wie „ambit key new“ sie schreibt.</translation>
    </message>
    <message id="A key's name is one line of 1 to 64 characters.">
        <source></source>
        <translation>Der Name eines Schlüssels ist eine Zeile mit 1 bis 64 Zeichen.</translation>
    </message>
    <message id="A passphrase has 8 to 1024 bytes.">
        <source></source>
        <translation>Eine Passphrase hat 8 bis 1024 Bytes.</translation>
    </message>
    <message id="Choose another one.">
        <source></source>
        <translation>Eine andere wählen.</translation>
    </message>
    <message id="This passphrase doesn't unlock the key.">
        <source></source>
        <translation>Diese Passphrase schließt den Schlüssel nicht auf.</translation>
    </message>
    <message id="Try again.">
        <source></source>
        <translation>Noch einmal versuchen.</translation>
    </message>
    <message id="The key file's certificate belongs to another key.">
        <source></source>
        <translation>Das Zertifikat der Schlüsseldatei gehört zu einem anderen Schlüssel.</translation>
    </message>
    <message id="%1 is not settled." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist nicht erledigt.</numerusform>
            <numerusform>%1 ist nicht erledigt.</numerusform>
        </translation>
    </message>
    <message id="%1 is still open." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist noch offen.</numerusform>
            <numerusform>%1 ist noch offen.</numerusform>
        </translation>
    </message>
    <message id="%1 is still owed: %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 steht noch aus: %2</numerusform>
            <numerusform>%1 steht noch aus: %2</numerusform>
        </translation>
    </message>
    <message id="The finding at %1 grounds the aircraft." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Befund bei %1 hält das Luftfahrzeug am Boden.</numerusform>
            <numerusform>Der Befund bei %1 hält das Luftfahrzeug am Boden.</numerusform>
        </translation>
    </message>
    <message id="%1 is not inspected, and nothing is stated that allows flight without it." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist nicht geprüft, und nichts ist angegeben, das den Flug ohne dies erlaubt.</numerusform>
            <numerusform>%1 ist nicht geprüft, und nichts ist angegeben, das den Flug ohne dies erlaubt.</numerusform>
        </translation>
    </message>
    <message id="%1 is to be looked at again: asked by %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist noch einmal anzusehen: Bitte von %2.</numerusform>
            <numerusform>%1 ist noch einmal anzusehen: Bitte von %2.</numerusform>
        </translation>
    </message>
    <message id="%1 asks %2 and has no answer yet." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 fragt %2 und hat noch keine Antwort.</numerusform>
            <numerusform>%1 fragt %2 und hat noch keine Antwort.</numerusform>
        </translation>
    </message>
    <message id="Something was done after %1: the last look comes last." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Nach %1 wurde noch etwas getan: Der letzte Blick kommt zuletzt.</numerusform>
            <numerusform>Nach %1 wurde noch etwas getan: Der letzte Blick kommt zuletzt.</numerusform>
        </translation>
    </message>
    <message id="A table of agreement is square and counts.">
        <source></source>
        <translation>Eine Tafel der Übereinstimmung ist quadratisch und zählt.</translation>
    </message>
    <message id="There is nothing that both settled.">
        <source></source>
        <translation>Es gibt nichts, das beide erledigt haben.</translation>
    </message>
    <message id="Both settled every point with the same word: chance alone would agree as well, and kappa is undefined.">
        <source></source>
        <translation>Beide haben jeden Punkt mit demselben Wort erledigt: Der Zufall allein stimmte ebenso überein, und Kappa ist nicht bestimmt.</translation>
    </message>
    <message id="Lay two rounds of the same walk on the same aircraft side by side.">
        <source></source>
        <translation>Zwei Rundgänge desselben Wegs am selben Luftfahrzeug nebeneinanderlegen.</translation>
    </message>
    <message id="This is one and the same round.">
        <source></source>
        <translation>Das ist ein und derselbe Rundgang.</translation>
    </message>
    <message id="These are rounds of two aircraft.">
        <source></source>
        <translation>Das sind Rundgänge an zwei Luftfahrzeugen.</translation>
    </message>
    <message id="These are two different walks.">
        <source></source>
        <translation>Das sind zwei verschiedene Wege.</translation>
    </message>
    <message id="The airframe's description was changed between these rounds.">
        <source></source>
        <translation>Die Musterbeschreibung wurde zwischen diesen Rundgängen geändert.</translation>
    </message>
    <message id="This is no round: it doesn't begin with the event “opened”.">
        <source></source>
        <translation>Das ist kein Rundgang: Er beginnt nicht mit dem Ereignis „opened“.</translation>
    </message>
    <message id="This field is missing.">
        <source></source>
        <translation>Dieses Feld fehlt.</translation>
    </message>
    <message id="A list of 3 to 20 corners is expected here.">
        <source></source>
        <translation>Hier wird eine Liste von 3 bis 20 Ecken erwartet.</translation>
    </message>
    <message id="A corner is two decimal strings, metres from -100 to 100 with at most 3 decimals.">
        <source></source>
        <translation>Eine Ecke besteht aus zwei Dezimalzahlen, Meter von -100 bis 100 mit höchstens 3 Nachkommastellen.</translation>
    </message>
    <message id="A time like 2026-06-20T05:30:00.000Z is expected here.">
        <source></source>
        <translation>Hier wird eine Zeit wie 2026-06-20T05:30:00.000Z erwartet.</translation>
    </message>
    <message id="A point is expected here.">
        <source></source>
        <translation>Hier wird ein Punkt erwartet.</translation>
    </message>
    <message id="%1 and %2">
        <source></source>
        <translation>%1 und %2</translation>
    </message>
    <message id="%1, %2 and %3 more">
        <source></source>
        <translation>%1, %2 und noch %3</translation>
    </message>
    <message id="%1 can't be settled now">
        <source></source>
        <translation>%1: jetzt nicht zu erledigen</translation>
    </message>
    <message id="%1 is added">
        <source></source>
        <translation>%1 kommt hinzu</translation>
    </message>
    <message id="%1 are added">
        <source></source>
        <translation>%1 kommen hinzu</translation>
    </message>
    <message id="%1 can be settled again">
        <source></source>
        <translation>%1: wieder zu erledigen</translation>
    </message>
    <message id="%1 is now settled here">
        <source></source>
        <translation>%1 wird jetzt hier erledigt</translation>
    </message>
    <message id="%1 are now settled here">
        <source></source>
        <translation>%1 werden jetzt hier erledigt</translation>
    </message>
    <message id="%1 is now settled from %2">
        <source></source>
        <translation>%1 wird jetzt von %2 aus erledigt</translation>
    </message>
    <message id="%1 are now settled from %2">
        <source></source>
        <translation>%1 werden jetzt von %2 aus erledigt</translation>
    </message>
    <message id="%1 is left out">
        <source></source>
        <translation>%1 entfällt</translation>
    </message>
    <message id="%1 are left out">
        <source></source>
        <translation>%1 entfallen</translation>
    </message>
    <message id="%1 now comes first">
        <source></source>
        <translation>%1 kommt jetzt zuerst</translation>
    </message>
    <message id="%1 now come first">
        <source></source>
        <translation>%1 kommen jetzt zuerst</translation>
    </message>
    <message id="%1 now comes after %2">
        <source></source>
        <translation>%1 kommt jetzt nach %2</translation>
    </message>
    <message id="%1 now come after %2">
        <source></source>
        <translation>%1 kommen jetzt nach %2</translation>
    </message>
    <message id="%1 is added first">
        <source></source>
        <translation>%1 kommt als Erstes hinzu</translation>
    </message>
    <message id="%1 are added first">
        <source></source>
        <translation>%1 kommen als Erstes hinzu</translation>
    </message>
    <message id="%1 is added after %2">
        <source></source>
        <translation>%1 kommt nach %2 hinzu</translation>
    </message>
    <message id="%1 are added after %2">
        <source></source>
        <translation>%1 kommen nach %2 hinzu</translation>
    </message>
    <message id="The round goes on at %1">
        <source></source>
        <translation>Der Rundgang geht bei %1 weiter</translation>
    </message>
    <message id="%1 was reached out of turn">
        <source></source>
        <translation>%1 wurde außer der Reihe erreicht</translation>
    </message>
    <message id="%1 is to be settled again">
        <source></source>
        <translation>%1 ist noch einmal zu erledigen</translation>
    </message>
    <message id="Asked by %1: look again at %2">
        <source></source>
        <translation>Bitte von %1: %2 noch einmal ansehen</translation>
    </message>
    <message id="The second look at %1 is declined">
        <source></source>
        <translation>Der zweite Blick auf %1 ist abgelehnt</translation>
    </message>
    <message id="%1 is sound">
        <source></source>
        <translation>%1 ist in Ordnung</translation>
    </message>
    <message id="%1 is a finding">
        <source></source>
        <translation>%1 ist ein Befund</translation>
    </message>
    <message id="%1 is not inspected">
        <source></source>
        <translation>%1 ist nicht geprüft</translation>
    </message>
    <message id="%1 can't be used">
        <source></source>
        <translation>%1 ist nicht nutzbar</translation>
    </message>
    <message id="%1 can be used again">
        <source></source>
        <translation>%1 ist wieder nutzbar</translation>
    </message>
    <message id="%1 is in the way">
        <source></source>
        <translation>%1 ist im Weg</translation>
    </message>
    <message id="%1 isn't in the way any more">
        <source></source>
        <translation>%1 ist nicht mehr im Weg</translation>
    </message>
    <message id="The light is low">
        <source></source>
        <translation>Das Licht ist schwach</translation>
    </message>
    <message id="The light is good again">
        <source></source>
        <translation>Das Licht ist wieder gut</translation>
    </message>
    <message id="After an interruption">
        <source></source>
        <translation>Nach einer Unterbrechung</translation>
    </message>
    <message id="What was settled quickly is looked at again">
        <source></source>
        <translation>Was schnell erledigt wurde, wird noch einmal angesehen</translation>
    </message>
    <message id="The flight goes into the dark">
        <source></source>
        <translation>Der Flug geht ins Dunkle</translation>
    </message>
    <message id="The flight doesn't go into the dark">
        <source></source>
        <translation>Der Flug geht nicht ins Dunkle</translation>
    </message>
    <message id="%1: %2">
        <source></source>
        <translation>%1: %2</translation>
    </message>
    <message id="%1. %2">
        <source></source>
        <translation>%1. %2</translation>
    </message>
    <message id="%1, and %2 more.">
        <source></source>
        <translation>%1, und noch %2.</translation>
    </message>
    <message id="The airframe has no such zone.">
        <source></source>
        <translation>Das Muster hat keine solche Zone.</translation>
    </message>
    <message id="Nothing is left to settle at %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Bei %1 ist nichts mehr zu erledigen.</numerusform>
            <numerusform>Bei %1 ist nichts mehr zu erledigen.</numerusform>
        </translation>
    </message>
    <message id="%1 is wanted next">
        <source></source>
        <translation>%1 ist als Nächstes gewünscht</translation>
    </message>
    <message id="%1 or %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 oder %2</numerusform>
            <numerusform>%1 oder %2</numerusform>
        </translation>
    </message>
    <message id="%1 can't be used: %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist nicht nutzbar: %2</numerusform>
            <numerusform>%1 ist nicht nutzbar: %2</numerusform>
        </translation>
    </message>
    <message id="If it can be used again, say so first.">
        <source></source>
        <translation>Ist er wieder nutzbar, das zuerst sagen.</translation>
    </message>
    <message id="This walk has no such point.">
        <source></source>
        <translation>Dieser Weg hat keinen solchen Punkt.</translation>
    </message>
    <message id="%1 is settled from %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wird von %2 aus erledigt.</numerusform>
            <numerusform>%1 wird von %2 aus erledigt.</numerusform>
        </translation>
    </message>
    <message id="Go there first.">
        <source></source>
        <translation>Zuerst dorthin gehen.</translation>
    </message>
    <message id="%1 needs %2: %3." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 braucht %2: %3.</numerusform>
            <numerusform>%1 braucht %2: %3.</numerusform>
        </translation>
    </message>
    <message id="Change the setting first.">
        <source></source>
        <translation>Zuerst die Stellung ändern.</translation>
    </message>
    <message id="%1 comes before %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 kommt vor %2.</numerusform>
            <numerusform>%1 kommt vor %2.</numerusform>
        </translation>
    </message>
    <message id="Settle it first.">
        <source></source>
        <translation>Das zuerst erledigen.</translation>
    </message>
    <message id="%1 is closed; %2 is seen through it." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist geschlossen; %2 wird hindurch gesehen.</numerusform>
            <numerusform>%1 ist geschlossen; %2 wird hindurch gesehen.</numerusform>
        </translation>
    </message>
    <message id="Open it, or settle the point as not inspected.">
        <source></source>
        <translation>Öffnen oder den Punkt als nicht geprüft erledigen.</translation>
    </message>
    <message id="%1 isn't measured." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wird nicht gemessen.</numerusform>
            <numerusform>%1 wird nicht gemessen.</numerusform>
        </translation>
    </message>
    <message id="Leave the value out.">
        <source></source>
        <translation>Den Wert weglassen.</translation>
    </message>
    <message id="%1 is measured and has no value." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wird gemessen und hat keinen Wert.</numerusform>
            <numerusform>%1 wird gemessen und hat keinen Wert.</numerusform>
        </translation>
    </message>
    <message id="Give its %1 in %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 in %2 angeben.</numerusform>
            <numerusform>%1 in %2 angeben.</numerusform>
        </translation>
    </message>
    <message id="%1 %2 is out of the limit (%3): that isn't sound." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 %2 liegt außerhalb des Grenzwerts (%3): Das ist nicht in Ordnung.</numerusform>
            <numerusform>%1 %2 liegt außerhalb des Grenzwerts (%3): Das ist nicht in Ordnung.</numerusform>
        </translation>
    </message>
    <message id="Measure again, or settle it as a finding.">
        <source></source>
        <translation>Noch einmal messen oder als Befund erledigen.</translation>
    </message>
    <message id="%1 is settled already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist schon erledigt.</numerusform>
            <numerusform>%1 ist schon erledigt.</numerusform>
        </translation>
    </message>
    <message id="Re-open it first.">
        <source></source>
        <translation>Zuerst „Neu erledigen“ wählen.</translation>
    </message>
    <message id="Not inspected needs a reason.">
        <source></source>
        <translation>„Nicht geprüft“ braucht einen Grund.</translation>
    </message>
    <message id="Say why.">
        <source></source>
        <translation>Den Grund sagen.</translation>
    </message>
    <message id="A finding needs words.">
        <source></source>
        <translation>Ein Befund braucht Worte.</translation>
    </message>
    <message id="Say what was found.">
        <source></source>
        <translation>Sagen, was gefunden wurde.</translation>
    </message>
    <message id="A finding at %1 grounds the aircraft." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ein Befund bei %1 hält das Luftfahrzeug am Boden.</numerusform>
            <numerusform>Ein Befund bei %1 hält das Luftfahrzeug am Boden.</numerusform>
        </translation>
    </message>
    <message id="Give it the class “grounds”.">
        <source></source>
        <translation>Ihm die Klasse „am Boden“ geben.</translation>
    </message>
    <message id="This round is opened already.">
        <source></source>
        <translation>Dieser Rundgang ist schon eröffnet.</translation>
    </message>
    <message id="A new order needs a reason.">
        <source></source>
        <translation>Eine neue Reihenfolge braucht einen Grund.</translation>
    </message>
    <message id="The airframe has no such stand.">
        <source></source>
        <translation>Das Muster hat keinen solchen Standort.</translation>
    </message>
    <message id="%1 is reached only from %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist nur von %2 aus erreichbar.</numerusform>
            <numerusform>%1 ist nur von %2 aus erreichbar.</numerusform>
        </translation>
    </message>
    <message id="The airframe has no such setting.">
        <source></source>
        <translation>Das Muster hat keine solche Stellung.</translation>
    </message>
    <message id="%1 can't be brought from “%2” to “%3”." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 lässt sich nicht von „%2“ nach „%3“ bringen.</numerusform>
            <numerusform>%1 lässt sich nicht von „%2“ nach „%3“ bringen.</numerusform>
        </translation>
    </message>
    <message id="%1 is changed from %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wird von %2 aus geändert.</numerusform>
            <numerusform>%1 wird von %2 aus geändert.</numerusform>
        </translation>
    </message>
    <message id="%1 may be changed only when %2 is settled sound." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 darf nur geändert werden, wenn %2 als in Ordnung erledigt ist.</numerusform>
            <numerusform>%1 darf nur geändert werden, wenn %2 als in Ordnung erledigt ist.</numerusform>
        </translation>
    </message>
    <message id="Re-opening needs a reason.">
        <source></source>
        <translation>Neu erledigen braucht einen Grund.</translation>
    </message>
    <message id="%1 isn't settled; it can't be re-opened." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist nicht erledigt; neu erledigen geht nicht.</numerusform>
            <numerusform>%1 ist nicht erledigt; neu erledigen geht nicht.</numerusform>
        </translation>
    </message>
    <message id="The airframe has no such opening.">
        <source></source>
        <translation>Das Muster hat keine solche Öffnung.</translation>
    </message>
    <message id="%1 isn't open." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist nicht offen.</numerusform>
            <numerusform>%1 ist nicht offen.</numerusform>
        </translation>
    </message>
    <message id="%1 is open already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist schon offen.</numerusform>
            <numerusform>%1 ist schon offen.</numerusform>
        </translation>
    </message>
    <message id="The round isn't paused.">
        <source></source>
        <translation>Der Rundgang hat keine Pause.</translation>
    </message>
    <message id="A note needs words.">
        <source></source>
        <translation>Eine Notiz braucht Worte.</translation>
    </message>
    <message id="A stand that can't be used needs a reason.">
        <source></source>
        <translation>Ein nicht nutzbarer Standort braucht einen Grund.</translation>
    </message>
    <message id="%1 is blocked already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist schon versperrt.</numerusform>
            <numerusform>%1 ist schon versperrt.</numerusform>
        </translation>
    </message>
    <message id="%1 isn't blocked." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist nicht versperrt.</numerusform>
            <numerusform>%1 ist nicht versperrt.</numerusform>
        </translation>
    </message>
    <message id="The next area to be marked is number %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die nächste zu markierende Fläche hat die Nummer %1.</numerusform>
            <numerusform>Die nächste zu markierende Fläche hat die Nummer %1.</numerusform>
        </translation>
    </message>
    <message id="A marked area needs a reason.">
        <source></source>
        <translation>Eine markierte Fläche braucht einen Grund.</translation>
    </message>
    <message id="Say what is there.">
        <source></source>
        <translation>Sagen, was da ist.</translation>
    </message>
    <message id="More than %1 areas can't be marked." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Mehr als %1 Flächen lassen sich nicht markieren.</numerusform>
            <numerusform>Mehr als %1 Flächen lassen sich nicht markieren.</numerusform>
        </translation>
    </message>
    <message id="Clear one, or mark one larger area.">
        <source></source>
        <translation>Eine freigeben oder eine größere markieren.</translation>
    </message>
    <message id="Mark it again.">
        <source></source>
        <translation>Noch einmal markieren.</translation>
    </message>
    <message id="The marked area covers where you stand.">
        <source></source>
        <translation>Die markierte Fläche bedeckt den eigenen Platz.</translation>
    </message>
    <message id="Mark it beside you.">
        <source></source>
        <translation>Neben sich markieren.</translation>
    </message>
    <message id="There is no marked area number %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Es gibt keine markierte Fläche Nummer %1.</numerusform>
            <numerusform>Es gibt keine markierte Fläche Nummer %1.</numerusform>
        </translation>
    </message>
    <message id="The light is low already.">
        <source></source>
        <translation>Das Licht ist schon schwach.</translation>
    </message>
    <message id="The light is good already.">
        <source></source>
        <translation>Das Licht ist schon gut.</translation>
    </message>
    <message id="What is asked next has number %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Was als Nächstes verlangt wird, hat die Nummer %1.</numerusform>
            <numerusform>Was als Nächstes verlangt wird, hat die Nummer %1.</numerusform>
        </translation>
    </message>
    <message id="More than %1 things can't be asked in a round." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Mehr als %1 Dinge lassen sich in einem Rundgang nicht verlangen.</numerusform>
            <numerusform>Mehr als %1 Dinge lassen sich in einem Rundgang nicht verlangen.</numerusform>
        </translation>
    </message>
    <message id="This was said of another round.">
        <source></source>
        <translation>Das wurde über einen anderen Rundgang gesagt.</translation>
    </message>
    <message id="This was said already.">
        <source></source>
        <translation>Das wurde schon gesagt.</translation>
    </message>
    <message id="Say it anew if it is meant again.">
        <source></source>
        <translation>Es neu sagen, wenn es noch einmal gemeint ist.</translation>
    </message>
    <message id="A look again needs a point.">
        <source></source>
        <translation>„Noch einmal ansehen“ braucht einen Punkt.</translation>
    </message>
    <message id="Say where.">
        <source></source>
        <translation>Sagen, wo.</translation>
    </message>
    <message id="This needs words.">
        <source></source>
        <translation>Dies braucht Worte.</translation>
    </message>
    <message id="%1 things are asked already that are still open." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 Dinge sind schon verlangt und noch offen.</numerusform>
            <numerusform>%1 Dinge sind schon verlangt und noch offen.</numerusform>
        </translation>
    </message>
    <message id="Wait until one is settled, answered or declined.">
        <source></source>
        <translation>Warten, bis eines erledigt, beantwortet oder abgelehnt ist.</translation>
    </message>
    <message id="Nothing was asked with number %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Mit der Nummer %1 wurde nichts verlangt.</numerusform>
            <numerusform>Mit der Nummer %1 wurde nichts verlangt.</numerusform>
        </translation>
    </message>
    <message id="A remark needs no answer.">
        <source></source>
        <translation>Eine Bemerkung braucht keine Antwort.</translation>
    </message>
    <message id="What was asked with number %1 isn't open." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Was mit der Nummer %1 verlangt wurde, ist nicht offen.</numerusform>
            <numerusform>Was mit der Nummer %1 verlangt wurde, ist nicht offen.</numerusform>
        </translation>
    </message>
    <message id="An answer needs words.">
        <source></source>
        <translation>Eine Antwort braucht Worte.</translation>
    </message>
    <message id="To look again at %1 isn't answered with words." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 noch einmal ansehen: Das wird nicht mit Worten beantwortet.</numerusform>
            <numerusform>%1 noch einmal ansehen: Das wird nicht mit Worten beantwortet.</numerusform>
        </translation>
    </message>
    <message id="Settle the point again, or decline with a reason.">
        <source></source>
        <translation>Den Punkt noch einmal erledigen oder mit Grund ablehnen.</translation>
    </message>
    <message id="Declining needs a reason.">
        <source></source>
        <translation>Ablehnen braucht einen Grund.</translation>
    </message>
    <message id="A round is walked on one's own from its beginning.">
        <source></source>
        <translation>Allein geht man einen Rundgang von Anfang an.</translation>
    </message>
    <message id="Open a new round to walk it on your own.">
        <source></source>
        <translation>Einen neuen Rundgang eröffnen, um ihn allein zu gehen.</translation>
    </message>
    <message id="A portion has 1 to %1 points." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Eine Portion hat 1 bis %1 Punkte.</numerusform>
            <numerusform>Eine Portion hat 1 bis %1 Punkte.</numerusform>
        </translation>
    </message>
    <message id="%1 stands in the portion twice." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 steht zweimal in der Portion.</numerusform>
            <numerusform>%1 steht zweimal in der Portion.</numerusform>
        </translation>
    </message>
    <message id="Nothing is being looked at in a portion.">
        <source></source>
        <translation>Gerade wird keine Portion angesehen.</translation>
    </message>
    <message id="One goes back by 1 to %1 points." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Man geht um 1 bis %1 Punkte zurück.</numerusform>
            <numerusform>Man geht um 1 bis %1 Punkte zurück.</numerusform>
        </translation>
    </message>
    <message id="An interruption takes no less than no time.">
        <source></source>
        <translation>Eine Unterbrechung dauert nicht weniger als keine Zeit.</translation>
    </message>
    <message id="That isn't what the rule asks for again.">
        <source></source>
        <translation>Das ist nicht, was die Regel noch einmal verlangt.</translation>
    </message>
    <message id="This was asked about once in this round.">
        <source></source>
        <translation>Danach wurde in diesem Rundgang schon einmal gefragt.</translation>
    </message>
    <message id="These points were not settled there.">
        <source></source>
        <translation>Diese Punkte wurden dort nicht erledigt.</translation>
    </message>
    <message id="The flight goes into the dark already.">
        <source></source>
        <translation>Der Flug geht schon ins Dunkle.</translation>
    </message>
    <message id="The flight doesn't go into the dark.">
        <source></source>
        <translation>Der Flug geht nicht ins Dunkle.</translation>
    </message>
    <message id="The round can't be concluded as fit: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Rundgang lässt sich nicht als flugbereit abschließen: %1</numerusform>
            <numerusform>Der Rundgang lässt sich nicht als flugbereit abschließen: %1</numerusform>
        </translation>
    </message>
    <message id="The round can't be concluded as not fit: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Rundgang lässt sich nicht als nicht flugbereit abschließen: %1</numerusform>
            <numerusform>Der Rundgang lässt sich nicht als nicht flugbereit abschließen: %1</numerusform>
        </translation>
    </message>
    <message id="And %1 more stand against it." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Und noch %1 stehen dagegen.</numerusform>
            <numerusform>Und noch %1 stehen dagegen.</numerusform>
        </translation>
    </message>
    <message id="Settle what is left, close what is open, answer what is asked.">
        <source></source>
        <translation>Erledigen, was übrig ist, schließen, was offen ist, beantworten, was gefragt ist.</translation>
    </message>
    <message id="There is no conclusion to withdraw.">
        <source></source>
        <translation>Es gibt keinen Abschluss zurückzunehmen.</translation>
    </message>
    <message id="Withdrawing a conclusion needs a reason.">
        <source></source>
        <translation>Einen Abschluss zurücknehmen braucht einen Grund.</translation>
    </message>
    <message id="Only a concluded round can be signed.">
        <source></source>
        <translation>Nur ein abgeschlossener Rundgang lässt sich unterschreiben.</translation>
    </message>
    <message id="The round is %1's; the key is %2's." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Rundgang gehört %1; der Schlüssel gehört %2.</numerusform>
            <numerusform>Der Rundgang gehört %1; der Schlüssel gehört %2.</numerusform>
        </translation>
    </message>
    <message id="The round is paused.">
        <source></source>
        <translation>Der Rundgang hat Pause.</translation>
    </message>
    <message id="Resume it first.">
        <source></source>
        <translation>Ihn zuerst fortsetzen.</translation>
    </message>
    <message id="The round is concluded: nothing more can be asked in it.">
        <source></source>
        <translation>Der Rundgang ist abgeschlossen: Mehr lässt sich darin nicht verlangen.</translation>
    </message>
    <message id="Ask for the conclusion to be taken back first.">
        <source></source>
        <translation>Zuerst bitten, den Abschluss zurückzunehmen.</translation>
    </message>
    <message id="The round is concluded.">
        <source></source>
        <translation>Der Rundgang ist abgeschlossen.</translation>
    </message>
    <message id="Withdraw the conclusion first.">
        <source></source>
        <translation>Zuerst den Abschluss zurücknehmen.</translation>
    </message>
    <message id="The round is signed and sealed; nothing can be added.">
        <source></source>
        <translation>Der Rundgang ist unterschrieben und versiegelt; nichts kommt mehr hinzu.</translation>
    </message>
    <message id="Open a new round.">
        <source></source>
        <translation>Einen neuen Rundgang eröffnen.</translation>
    </message>
    <message id="A portion is being looked at: nothing is settled meanwhile.">
        <source></source>
        <translation>Eine Portion wird gerade angesehen: Dabei wird nichts erledigt.</translation>
    </message>
    <message id="Say first that you are down again.">
        <source></source>
        <translation>Zuerst sagen, dass man wieder unten ist.</translation>
    </message>
    <message id="The airframe has no such walk.">
        <source></source>
        <translation>Das Muster hat keinen solchen Weg.</translation>
    </message>
    <message id="The plan names something that this walk doesn't have.">
        <source></source>
        <translation>Der Plan nennt etwas, das dieser Weg nicht hat.</translation>
    </message>
    <message id="This round was opened with another airframe description.">
        <source></source>
        <translation>Dieser Rundgang wurde mit einer anderen Musterbeschreibung eröffnet.</translation>
    </message>
    <message id="Use the description it was opened with.">
        <source></source>
        <translation>Die Beschreibung nehmen, mit der er eröffnet wurde.</translation>
    </message>
    <message id="The airframe has no such counter.">
        <source></source>
        <translation>Das Muster hat keinen solchen Zähler.</translation>
    </message>
    <message id="This counter is read twice.">
        <source></source>
        <translation>Dieser Zähler ist zweimal abgelesen.</translation>
    </message>
    <message id="A counter reads zero or more, in digits.">
        <source></source>
        <translation>Ein Zähler zeigt null oder mehr, in Ziffern.</translation>
    </message>
    <message id="A round begins with the event “opened”, number 1.">
        <source></source>
        <translation>Ein Rundgang beginnt mit dem Ereignis „opened“, Nummer 1.</translation>
    </message>
    <message id="This round has no events.">
        <source></source>
        <translation>Dieser Rundgang hat keine Ereignisse.</translation>
    </message>
    <message id="An address like 192.168.1.7 is expected here.">
        <source></source>
        <translation>Hier wird eine Adresse wie 192.168.1.7 erwartet.</translation>
    </message>
    <message id="%1 devices may watch already, which is as many as there is room for." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Schon %1 Geräte dürfen mitsehen; für mehr ist kein Platz.</numerusform>
            <numerusform>Schon %1 Geräte dürfen mitsehen; für mehr ist kein Platz.</numerusform>
        </translation>
    </message>
    <message id="Take one back first.">
        <source></source>
        <translation>Zuerst eines ausschließen.</translation>
    </message>
    <message id="Ask the walker for a new invitation.">
        <source></source>
        <translation>Beim Gehenden eine neue Einladung holen.</translation>
    </message>
    <message id="This device has shown no certificate.">
        <source></source>
        <translation>Dieses Gerät hat kein Zertifikat gezeigt.</translation>
    </message>
    <message id="This device isn't known here, and shows no invitation.">
        <source></source>
        <translation>Dieses Gerät ist hier nicht bekannt und zeigt keine Einladung.</translation>
    </message>
    <message id="The last invitation has been used; it serves once.">
        <source></source>
        <translation>Die letzte Einladung ist verbraucht; sie gilt einmal.</translation>
    </message>
    <message id="The last invitation is older than five minutes.">
        <source></source>
        <translation>Die letzte Einladung ist älter als fünf Minuten.</translation>
    </message>
    <message id="The last invitation is void: too many wrong words were tried.">
        <source></source>
        <translation>Die letzte Einladung gilt nicht mehr: Zu viele falsche Wörter wurden versucht.</translation>
    </message>
    <message id="This device isn't known here, and nobody is invited now.">
        <source></source>
        <translation>Dieses Gerät ist hier nicht bekannt, und gerade ist niemand eingeladen.</translation>
    </message>
    <message id="This isn't the invitation's word (wrong word %1 of %2)." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das ist nicht das Wort der Einladung (falsches Wort %1 von %2).</numerusform>
            <numerusform>Das ist nicht das Wort der Einladung (falsches Wort %1 von %2).</numerusform>
        </translation>
    </message>
    <message id="No reason given.">
        <source></source>
        <translation>Kein Grund genannt.</translation>
    </message>
    <message id="An invitation names one to eight addresses.">
        <source></source>
        <translation>Eine Einladung nennt eine bis acht Adressen.</translation>
    </message>
    <message id="An invitation names an address that no other device can reach.">
        <source></source>
        <translation>Eine Einladung nennt eine Adresse, die kein anderes Gerät erreicht.</translation>
    </message>
    <message id="An invitation names a port from 1 to 65535.">
        <source></source>
        <translation>Eine Einladung nennt einen Port von 1 bis 65535.</translation>
    </message>
    <message id="An invitation is made with the whole SHA-256 of a certificate, in hex.">
        <source></source>
        <translation>Eine Einladung trägt den ganzen SHA-256 eines Zertifikats, hexadezimal.</translation>
    </message>
    <message id="An invitation's word has eight letters.">
        <source></source>
        <translation>Das Wort einer Einladung hat acht Buchstaben.</translation>
    </message>
    <message id="This is no invitation to watch, or only a part of one.">
        <source></source>
        <translation>Das ist keine Einladung zum Mitsehen oder nur ein Teil davon.</translation>
    </message>
    <message id="Scan the code again, or type the letters under it.">
        <source></source>
        <translation>Den Code noch einmal lesen oder die Buchstaben darunter tippen.</translation>
    </message>
    <message id="Bring both devices to the same Ambit.">
        <source></source>
        <translation>Beide Geräte auf dasselbe Ambit bringen.</translation>
    </message>
    <message id="This is no code to watch by: it has other letters, or too many.">
        <source></source>
        <translation>Das ist kein Code zum Mitsehen: Er hat andere Buchstaben oder zu viele.</translation>
    </message>
    <message id="Type the letters as they stand on the walker's device.">
        <source></source>
        <translation>Die Buchstaben so tippen, wie sie auf dem Gerät des Gehenden stehen.</translation>
    </message>
    <message id="Compare it with the walker's device, group by group.">
        <source></source>
        <translation>Mit dem Gerät des Gehenden vergleichen, Gruppe für Gruppe.</translation>
    </message>
    <message id="This code has %1 letters where %2 are expected." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieser Code hat %1 Buchstaben statt %2.</numerusform>
            <numerusform>Dieser Code hat %1 Buchstaben statt %2.</numerusform>
        </translation>
    </message>
    <message id="This code is too short.">
        <source></source>
        <translation>Dieser Code ist zu kurz.</translation>
    </message>
    <message id="A letter of this code is wrong.">
        <source></source>
        <translation>Ein Buchstabe dieses Codes ist falsch.</translation>
    </message>
    <message id="This code is of a later version.">
        <source></source>
        <translation>Dieser Code ist von einer späteren Version.</translation>
    </message>
    <message id="This code names an address that no device has.">
        <source></source>
        <translation>Dieser Code nennt eine Adresse, die kein Gerät hat.</translation>
    </message>
    <message id="There is no code to type for an IPv6 address.">
        <source></source>
        <translation>Für eine IPv6-Adresse gibt es keinen Code zum Tippen.</translation>
    </message>
    <message id="Scan the QR code instead.">
        <source></source>
        <translation>Stattdessen den QR-Code lesen.</translation>
    </message>
    <message id="“%1” is no reading of %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>„%1“ ist keine Ablesung von %2.</numerusform>
            <numerusform>„%1“ ist keine Ablesung von %2.</numerusform>
        </translation>
    </message>
    <message id="Write it in digits, with a point before decimals: 1284.6">
        <source></source>
        <translation>In Ziffern schreiben, mit einem Komma vor den Nachkommastellen: 1284,6</translation>
    </message>
    <message id="There is no such aircraft here.">
        <source></source>
        <translation>Hier gibt es kein solches Luftfahrzeug.</translation>
    </message>
    <message id="The aircraft has no registration.">
        <source></source>
        <translation>Das Luftfahrzeug hat kein Kennzeichen.</translation>
    </message>
    <message id="Write what is painted on it.">
        <source></source>
        <translation>Schreiben, was darauf steht.</translation>
    </message>
    <message id="Nobody's name is given.">
        <source></source>
        <translation>Kein Name ist angegeben.</translation>
    </message>
    <message id="Say who walks round.">
        <source></source>
        <translation>Sagen, wer herumgeht.</translation>
    </message>
    <message id="There is no such round here.">
        <source></source>
        <translation>Hier gibt es keinen solchen Rundgang.</translation>
    </message>
    <message id="This round was never opened.">
        <source></source>
        <translation>Dieser Rundgang wurde nie eröffnet.</translation>
    </message>
    <message id="No discrepancy is chosen.">
        <source></source>
        <translation>Keine Beanstandung ist gewählt.</translation>
    </message>
    <message id="This basis needs a reference.">
        <source></source>
        <translation>Diese Grundlage braucht einen Beleg.</translation>
    </message>
    <message id="Say which list and which item, or which permission.">
        <source></source>
        <translation>Sagen, welche Liste und welcher Eintrag oder welche Genehmigung.</translation>
    </message>
    <message id="Nothing says what the placard says.">
        <source></source>
        <translation>Es steht nicht da, was das Hinweisschild sagt.</translation>
    </message>
    <message id="Write its words, and where it is.">
        <source></source>
        <translation>Seine Worte schreiben und wo es ist.</translation>
    </message>
    <message id="Nobody is named who found that it is no hazard.">
        <source></source>
        <translation>Niemand ist genannt, der festgestellt hat, dass es keine Gefahr ist.</translation>
    </message>
    <message id="Name the pilot or mechanic who may.">
        <source></source>
        <translation>Den Piloten oder Mechaniker nennen, der das darf.</translation>
    </message>
    <message id="Nothing says what was done.">
        <source></source>
        <translation>Es steht nicht da, was getan wurde.</translation>
    </message>
    <message id="Describe the work in a few words.">
        <source></source>
        <translation>Die Arbeit in wenigen Worten beschreiben.</translation>
    </message>
    <message id="Nothing says which kind of certificate you approve under.">
        <source></source>
        <translation>Es steht nicht da, unter welcher Art von Lizenz freigegeben wird.</translation>
    </message>
    <message id="For example: mechanic, airframe and powerplant.">
        <source></source>
        <translation>Zum Beispiel: Mechaniker, Zelle und Triebwerk.</translation>
    </message>
    <message id="A part has a name, a number and a serial number.">
        <source></source>
        <translation>Ein Teil hat einen Namen, eine Teilenummer und eine Seriennummer.</translation>
    </message>
    <message id="Write all three as they stand on it; “none” where it bears none.">
        <source></source>
        <translation>Alle drei schreiben, wie sie darauf stehen; „keine“, wo nichts steht.</translation>
    </message>
    <message id="Nothing says why.">
        <source></source>
        <translation>Es steht nicht da, warum.</translation>
    </message>
    <message id="Say in a few words what was found on looking closer.">
        <source></source>
        <translation>In wenigen Worten sagen, was bei näherem Hinsehen gefunden wurde.</translation>
    </message>
    <message id="Nothing says where on the aircraft the part is.">
        <source></source>
        <translation>Es steht nicht da, wo am Luftfahrzeug das Teil ist.</translation>
    </message>
    <message id="Choose a place, or write one: one part at a time is in it.">
        <source></source>
        <translation>Einen Platz wählen oder schreiben: An jedem ist ein Teil.</translation>
    </message>
    <message id="No part is named.">
        <source></source>
        <translation>Kein Teil ist genannt.</translation>
    </message>
    <message id="Say which came off, which was fitted, or both.">
        <source></source>
        <translation>Sagen, welches ausgebaut, welches eingebaut wurde oder beides.</translation>
    </message>
    <message id="No counter was read.">
        <source></source>
        <translation>Kein Zähler wurde abgelesen.</translation>
    </message>
    <message id="Write what at least one of them says.">
        <source></source>
        <translation>Schreiben, was mindestens einer davon zeigt.</translation>
    </message>
    <message id="Nobody is named who gets the aircraft.">
        <source></source>
        <translation>Niemand ist genannt, der das Luftfahrzeug bekommt.</translation>
    </message>
    <message id="Name the new owner.">
        <source></source>
        <translation>Den neuen Halter nennen.</translation>
    </message>
    <message id="Say whose key it is.">
        <source></source>
        <translation>Sagen, wessen Schlüssel es ist.</translation>
    </message>
    <message id="Nothing says what the key is good for.">
        <source></source>
        <translation>Es steht nicht da, wofür der Schlüssel gilt.</translation>
    </message>
    <message id="Choose one role or more.">
        <source></source>
        <translation>Eine Rolle oder mehrere wählen.</translation>
    </message>
    <message id="Lost, stolen, a person who left: say it.">
        <source></source>
        <translation>Verloren, gestohlen, jemand ist ausgeschieden: es sagen.</translation>
    </message>
    <message id="The aircraft's file isn't read yet.">
        <source></source>
        <translation>Die Akte des Luftfahrzeugs ist noch nicht gelesen.</translation>
    </message>
    <message id="Wait until it is: what you sign goes after its latest records.">
        <source></source>
        <translation>Warten, bis sie es ist: Was unterschrieben wird, kommt nach ihren letzten Protokollen.</translation>
    </message>
    <message id="Add it with its airframe and serial number first.">
        <source></source>
        <translation>Es zuerst mit Muster und Werknummer anlegen.</translation>
    </message>
    <message id="The number of your certificate is missing.">
        <source></source>
        <translation>Die Nummer der Lizenz fehlt.</translation>
    </message>
    <message id="Work is approved with it (14 CFR 43.9(a)(4)).">
        <source></source>
        <translation>Mit ihr wird die Arbeit freigegeben (14 CFR 43.9(a)(4)).</translation>
    </message>
    <message id="No record is chosen.">
        <source></source>
        <translation>Kein Protokoll ist gewählt.</translation>
    </message>
    <message id="Choose those that are to go.">
        <source></source>
        <translation>Die wählen, die gehen sollen.</translation>
    </message>
    <message id="Nothing says what allows it.">
        <source></source>
        <translation>Es steht nicht da, was es erlaubt.</translation>
    </message>
    <message id="Name the rule, and who says it holds here.">
        <source></source>
        <translation>Die Vorschrift nennen und wer sagt, dass sie hier gilt.</translation>
    </message>
    <message id="A record that you chose must stay.">
        <source></source>
        <translation>Ein gewähltes Protokoll muss bleiben.</translation>
    </message>
    <message id="Say that other rules allow it, if they do.">
        <source></source>
        <translation>Sagen, dass andere Vorschriften es erlauben, wenn es so ist.</translation>
    </message>
    <message id="This record's round was never opened.">
        <source></source>
        <translation>Der Rundgang dieses Protokolls wurde nie eröffnet.</translation>
    </message>
    <message id="This is neither a JPEG nor a PNG picture.">
        <source></source>
        <translation>Das ist weder ein JPEG- noch ein PNG-Bild.</translation>
    </message>
    <message id="Choose another file, or save the photo as JPEG.">
        <source></source>
        <translation>Eine andere Datei wählen oder das Foto als JPEG speichern.</translation>
    </message>
    <message id="There is no point on the card.">
        <source></source>
        <translation>Auf der Karte steht kein Punkt.</translation>
    </message>
    <message id="Go to where the next one is.">
        <source></source>
        <translation>Dorthin gehen, wo der nächste ist.</translation>
    </message>
    <message id="The plan leads nowhere else now.">
        <source></source>
        <translation>Der Plan führt jetzt nirgendwohin.</translation>
    </message>
    <message id="There is nothing to set now.">
        <source></source>
        <translation>Jetzt ist nichts zu stellen.</translation>
    </message>
    <message id="“%1” is no date." numerus="yes">
        <source></source>
        <translation>
            <numerusform>„%1“ ist kein Datum.</numerusform>
            <numerusform>„%1“ ist kein Datum.</numerusform>
        </translation>
    </message>
    <message id="Write year, month and day: 2026-06-20">
        <source></source>
        <translation>Jahr, Monat und Tag schreiben: 2026-06-20</translation>
    </message>
    <message id="“%1” is no reading of a counter." numerus="yes">
        <source></source>
        <translation>
            <numerusform>„%1“ ist keine Ablesung eines Zählers.</numerusform>
            <numerusform>„%1“ ist keine Ablesung eines Zählers.</numerusform>
        </translation>
    </message>
    <message id="No key is named.">
        <source></source>
        <translation>Kein Schlüssel ist genannt.</translation>
    </message>
    <message id="Choose one of those that signed here, or write its fingerprint.">
        <source></source>
        <translation>Einen wählen, mit dem hier unterschrieben wurde, oder seinen Fingerabdruck schreiben.</translation>
    </message>
    <message id="This is no key's fingerprint: it has 64 digits, 0 to 9 and a to f.">
        <source></source>
        <translation>Das ist kein Fingerabdruck eines Schlüssels: Er hat 64 Stellen, 0 bis 9 und a bis f.</translation>
    </message>
    <message id="Copy it from the page of a record that the key has signed.">
        <source></source>
        <translation>Ihn von der Seite eines Protokolls abschreiben, das der Schlüssel unterschrieben hat.</translation>
    </message>
    <message id="This device has no network to share the walk by.">
        <source></source>
        <translation>Dieses Gerät hat kein Netz, um den Rundgang zu teilen.</translation>
    </message>
    <message id="The round is not in hand on the walker's device now.">
        <source></source>
        <translation>Der Rundgang ist auf dem Gerät des Gehenden gerade nicht in der Hand.</translation>
    </message>
    <message id="Say it again when it goes on.">
        <source></source>
        <translation>Es noch einmal sagen, wenn er weitergeht.</translation>
    </message>
    <message id="The folder for the key can't be made.">
        <source></source>
        <translation>Der Ordner für den Schlüssel lässt sich nicht anlegen.</translation>
    </message>
    <message id="Sign with it; records signed with it can be checked only as long as it is known.">
        <source></source>
        <translation>Mit ihm unterschreiben; was er unterschrieben hat, lässt sich nur prüfen, solange er bekannt ist.</translation>
    </message>
    <message id="This device has no key yet.">
        <source></source>
        <translation>Dieses Gerät hat noch keinen Schlüssel.</translation>
    </message>
    <message id="This device doesn't have that key.">
        <source></source>
        <translation>Dieses Gerät hat diesen Schlüssel nicht.</translation>
    </message>
    <message id="Make one, then sign with it.">
        <source></source>
        <translation>Einen anlegen, dann damit unterschreiben.</translation>
    </message>
    <message id="There is no round to sign.">
        <source></source>
        <translation>Es gibt keinen Rundgang zu unterschreiben.</translation>
    </message>
    <message id="This record holds no round.">
        <source></source>
        <translation>Dieses Protokoll enthält keinen Rundgang.</translation>
    </message>
    <message id="Nothing of this round is here yet.">
        <source></source>
        <translation>Von diesem Rundgang ist noch nichts hier.</translation>
    </message>
    <message id="There is no round to say something to.">
        <source></source>
        <translation>Es gibt keinen Rundgang, zu dem etwas zu sagen wäre.</translation>
    </message>
    <message id="Wait for one.">
        <source></source>
        <translation>Auf einen warten.</translation>
    </message>
    <message id="The walker's device may be newer: bring both up to date.">
        <source></source>
        <translation>Das Gerät des Gehenden ist vielleicht neuer: beide auf den neuen Stand bringen.</translation>
    </message>
    <message id="The connection isn't TLS 1.3.">
        <source></source>
        <translation>Die Verbindung ist nicht TLS 1.3.</translation>
    </message>
    <message id="Join the same network as the walker's device and use a new code. If it happens again, somebody may be in between.">
        <source></source>
        <translation>In dasselbe Netz wie das Gerät des Gehenden gehen und einen neuen Code nehmen. Geschieht es wieder, ist vielleicht jemand dazwischen.</translation>
    </message>
    <message id="This is not where a device was.">
        <source></source>
        <translation>Das ist nicht, wo ein Gerät war.</translation>
    </message>
    <message id="This device's TLS can't use the key.">
        <source></source>
        <translation>Das TLS dieses Geräts kann den Schlüssel nicht verwenden.</translation>
    </message>
    <message id="Install Qt's OpenSSL backend.">
        <source></source>
        <translation>Qts OpenSSL-Anbindung installieren.</translation>
    </message>
    <message id="The other device showed no person's certificate.">
        <source></source>
        <translation>Das andere Gerät hat kein Zertifikat einer Person gezeigt.</translation>
    </message>
    <message id="Both devices need a key.">
        <source></source>
        <translation>Beide Geräte brauchen einen Schlüssel.</translation>
    </message>
    <message id="Another program may use the port; close it, or choose another port.">
        <source></source>
        <translation>Vielleicht verwendet ein anderes Programm den Port; es schließen oder einen anderen Port wählen.</translation>
    </message>
    <message id="This device has no good randomness now.">
        <source></source>
        <translation>Dieses Gerät hat gerade keine guten Zufallszahlen.</translation>
    </message>
    <message id="This device is on no network.">
        <source></source>
        <translation>Dieses Gerät ist in keinem Netz.</translation>
    </message>
    <message id="Join a wireless network, or open a hotspot on one of the devices.">
        <source></source>
        <translation>In ein WLAN gehen oder auf einem der Geräte einen Hotspot öffnen.</translation>
    </message>
    <message id="Too many devices are connected.">
        <source></source>
        <translation>Zu viele Geräte sind verbunden.</translation>
    </message>
    <message id="Try again in a moment.">
        <source></source>
        <translation>Gleich noch einmal versuchen.</translation>
    </message>
    <message id="The walker no longer shares the walk with you.">
        <source></source>
        <translation>Der Gehende teilt den Rundgang nicht mehr mit diesem Gerät.</translation>
    </message>
    <message id="A line needs values at different places.">
        <source></source>
        <translation>Eine Linie braucht Werte an verschiedenen Stellen.</translation>
    </message>
    <message id="Measure again later.">
        <source></source>
        <translation>Später noch einmal messen.</translation>
    </message>
    <message id="These figures together take more than 15 digits.">
        <source></source>
        <translation>Diese Zahlen brauchen zusammen mehr als 15 Ziffern.</translation>
    </message>
    <message id="Use fewer decimals.">
        <source></source>
        <translation>Weniger Nachkommastellen nehmen.</translation>
    </message>
    <message id="There are no values.">
        <source></source>
        <translation>Es gibt keine Werte.</translation>
    </message>
    <message id="Measure first.">
        <source></source>
        <translation>Zuerst messen.</translation>
    </message>
    <message id="The values run backwards, from %1 to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Werte laufen rückwärts: erst %1, dann %2.</numerusform>
            <numerusform>Die Werte laufen rückwärts: erst %1, dann %2.</numerusform>
        </translation>
    </message>
    <message id="Give them in the order in which they were measured.">
        <source></source>
        <translation>In der Reihenfolge angeben, in der gemessen wurde.</translation>
    </message>
    <message id="An uncertainty can't be below zero.">
        <source></source>
        <translation>Eine Unsicherheit ist nicht unter null.</translation>
    </message>
    <message id="The next flight can't lie before the last value.">
        <source></source>
        <translation>Der nächste Flug kann nicht vor dem letzten Wert liegen.</translation>
    </message>
    <message id="The confidence must lie between 0.5 and 0.999.">
        <source></source>
        <translation>Das Vertrauensniveau liegt zwischen 0,5 und 0,999.</translation>
    </message>
    <message id="limit not within the next %1 %2, %3 %" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Grenzwert nicht innerhalb der nächsten %1 %2, %3 %</numerusform>
            <numerusform>Grenzwert nicht innerhalb der nächsten %1 %2, %3 %</numerusform>
        </translation>
    </message>
    <message id="limit in %1 %2 at the earliest, %3 %; the latest can't be told" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Grenzwert frühestens in %1 %2, %3 %; spätestens wann, ist nicht zu sagen</numerusform>
            <numerusform>Grenzwert frühestens in %1 %2, %3 %; spätestens wann, ist nicht zu sagen</numerusform>
        </translation>
    </message>
    <message id="limit in %1 to %2 %3, %4 %" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Grenzwert in %1 bis %2 %3, %4 %</numerusform>
            <numerusform>Grenzwert in %1 bis %2 %3, %4 %</numerusform>
        </translation>
    </message>
    <message id="the last value is beyond the limit">
        <source></source>
        <translation>der letzte Wert liegt jenseits des Grenzwerts</translation>
    </message>
    <message id="the limit may be reached already">
        <source></source>
        <translation>der Grenzwert ist vielleicht schon erreicht</translation>
    </message>
    <message id="the limit may be passed within the next %1 %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>der Grenzwert wird vielleicht innerhalb der nächsten %1 %2 überschritten</numerusform>
            <numerusform>der Grenzwert wird vielleicht innerhalb der nächsten %1 %2 überschritten</numerusform>
        </translation>
    </message>
    <message id="the limit is not reached within the next %1 %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>der Grenzwert wird innerhalb der nächsten %1 %2 nicht erreicht</numerusform>
            <numerusform>der Grenzwert wird innerhalb der nächsten %1 %2 nicht erreicht</numerusform>
        </translation>
    </message>
    <message id="too few values for a trend: at least %1, at three different times" numerus="yes">
        <source></source>
        <translation>
            <numerusform>zu wenige Werte für einen Trend: mindestens %1, zu drei verschiedenen Zeiten</numerusform>
            <numerusform>zu wenige Werte für einen Trend: mindestens %1, zu drei verschiedenen Zeiten</numerusform>
        </translation>
    </message>
    <message id="no trend">
        <source></source>
        <translation>kein Trend</translation>
    </message>
    <message id="rises by %1 %2 per %3" numerus="yes">
        <source></source>
        <translation>
            <numerusform>steigt um %1 %2 je %3</numerusform>
            <numerusform>steigt um %1 %2 je %3</numerusform>
        </translation>
    </message>
    <message id="falls by %1 %2 per %3" numerus="yes">
        <source></source>
        <translation>
            <numerusform>fällt um %1 %2 je %3</numerusform>
            <numerusform>fällt um %1 %2 je %3</numerusform>
        </translation>
    </message>
    <message id="looks renewed: confirm it, the trend begins there">
        <source></source>
        <translation>sieht erneuert aus: bestätigen, der Trend beginnt dort</translation>
    </message>
    <message id="the last value is out of line with those before: measure again">
        <source></source>
        <translation>der letzte Wert passt nicht zu den früheren: noch einmal messen</translation>
    </message>
    <message id="%1 values far from the others are left out" numerus="yes">
        <source></source>
        <translation>
            <numerusform>fernab liegende Werte, weggelassen: %1</numerusform>
            <numerusform>fernab liegende Werte, weggelassen: %1</numerusform>
        </translation>
    </message>
    <message id="The unit %1 is not known." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Einheit %1 ist nicht bekannt.</numerusform>
            <numerusform>Die Einheit %1 ist nicht bekannt.</numerusform>
        </translation>
    </message>
    <message id="Enter the value in the unit of the limit.">
        <source></source>
        <translation>Den Wert in der Einheit des Grenzwerts eingeben.</translation>
    </message>
    <message id="%1 and %2 are units of different quantities." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 und %2 sind Einheiten verschiedener Größen.</numerusform>
            <numerusform>%1 und %2 sind Einheiten verschiedener Größen.</numerusform>
        </translation>
    </message>
    <message id="%1 %2, rounded" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 %2, gerundet</numerusform>
            <numerusform>%1 %2, gerundet</numerusform>
        </translation>
    </message>
    <message id="The picture is too small to find a card in.">
        <source></source>
        <translation>Das Bild ist zu klein, um eine Karte darin zu finden.</translation>
    </message>
    <message id="The picture has more than 50 million pixels.">
        <source></source>
        <translation>Das Bild hat mehr als 50 Millionen Bildpunkte.</translation>
    </message>
    <message id="No card can be seen for sure.">
        <source></source>
        <translation>Keine Karte ist sicher zu erkennen.</translation>
    </message>
    <message id="Mark its corners, or lay it where all four sides stand out, and take the picture again.">
        <source></source>
        <translation>Ihre Ecken markieren oder sie hinlegen, wo sich alle vier Seiten abheben, und das Bild noch einmal aufnehmen.</translation>
    </message>
    <message id="More than one shape looks like the card.">
        <source></source>
        <translation>Mehr als eine Form sieht wie die Karte aus.</translation>
    </message>
    <message id="Mark its corners, or take away what lies beside it, and take the picture again.">
        <source></source>
        <translation>Ihre Ecken markieren oder wegräumen, was daneben liegt, und das Bild noch einmal aufnehmen.</translation>
    </message>
    <message id="Two marks are in the same place.">
        <source></source>
        <translation>Zwei Marken sind an derselben Stelle.</translation>
    </message>
    <message id="Move one of them to where it belongs.">
        <source></source>
        <translation>Eine davon dorthin schieben, wo sie hingehört.</translation>
    </message>
    <message id="A corner's place or the picture's size is no number.">
        <source></source>
        <translation>Die Lage einer Ecke oder die Größe des Bildes ist keine Zahl.</translation>
    </message>
    <message id="These four corners don't go round the card.">
        <source></source>
        <translation>Diese vier Ecken gehen nicht um die Karte herum.</translation>
    </message>
    <message id="Mark the card's corners clockwise, one after the other.">
        <source></source>
        <translation>Die Ecken der Karte im Uhrzeigersinn markieren, eine nach der anderen.</translation>
    </message>
    <message id="The card is too small in the picture.">
        <source></source>
        <translation>Die Karte ist im Bild zu klein.</translation>
    </message>
    <message id="Go closer, until the card fills a quarter of the picture's width.">
        <source></source>
        <translation>Näher herangehen, bis die Karte ein Viertel der Bildbreite füllt.</translation>
    </message>
    <message id="The picture is blurred.">
        <source></source>
        <translation>Das Bild ist unscharf.</translation>
    </message>
    <message id="Hold the camera still, let it focus on the card, and take it again.">
        <source></source>
        <translation>Die Kamera ruhig halten, auf die Karte scharf stellen lassen und noch einmal aufnehmen.</translation>
    </message>
    <message id="It can't be told which way round the card lies.">
        <source></source>
        <translation>Es ist nicht zu sagen, wie herum die Karte liegt.</translation>
    </message>
    <message id="Look more straight down on the card, or say which of its sides is the long one.">
        <source></source>
        <translation>Gerader von oben auf die Karte sehen oder sagen, welche Seite die lange ist.</translation>
    </message>
    <message id="These four corners are not those of a card of this size.">
        <source></source>
        <translation>Diese vier Ecken sind nicht die einer Karte dieser Größe.</translation>
    </message>
    <message id="Mark the corners where the card's straight sides would meet.">
        <source></source>
        <translation>Die Ecken dort markieren, wo sich die geraden Seiten der Karte träfen.</translation>
    </message>
    <message id="The camera looks at the card too flat.">
        <source></source>
        <translation>Die Kamera sieht zu flach auf die Karte.</translation>
    </message>
    <message id="Hold it more straight above the card.">
        <source></source>
        <translation>Sie gerader über die Karte halten.</translation>
    </message>
    <message id="A mark's place is no number.">
        <source></source>
        <translation>Die Lage einer Marke ist keine Zahl.</translation>
    </message>
    <message id="A mark is too far from the card to be measured.">
        <source></source>
        <translation>Eine Marke ist zu weit von der Karte weg, um gemessen zu werden.</translation>
    </message>
    <message id="Lay the card closer to what is measured: within two card lengths.">
        <source></source>
        <translation>Die Karte näher an das Gemessene legen: innerhalb von zwei Kartenlängen.</translation>
    </message>
    <message id="An outline needs three marks or more.">
        <source></source>
        <translation>Ein Umriss braucht drei Marken oder mehr.</translation>
    </message>
    <message id="Mark it all the way round.">
        <source></source>
        <translation>Ringsherum markieren.</translation>
    </message>
    <message id="The outline crosses itself.">
        <source></source>
        <translation>Der Umriss kreuzt sich selbst.</translation>
    </message>
    <message id="Mark it once round, without going back.">
        <source></source>
        <translation>Einmal ringsherum markieren, ohne zurückzugehen.</translation>
    </message>
    <message id="The second length measures %1 mm and should be %2 mm: the card isn't flat with the part." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die zweite Länge misst %1 mm und sollte %2 mm sein: Die Karte liegt nicht eben mit dem Teil.</numerusform>
            <numerusform>Die zweite Länge misst %1 mm und sollte %2 mm sein: Die Karte liegt nicht eben mit dem Teil.</numerusform>
        </translation>
    </message>
    <message id="Lay the card flat on the part, in the same plane, and take the picture again.">
        <source></source>
        <translation>Die Karte flach auf das Teil legen, in dieselbe Ebene, und das Bild noch einmal aufnehmen.</translation>
    </message>
    <message id="How far the camera is tilted over the bolt isn't known well enough.">
        <source></source>
        <translation>Wie schräg die Kamera über der Schraube steht, ist nicht gut genug bekannt.</translation>
    </message>
    <message id="Hold it straight above the bolt, or lay a card beside it.">
        <source></source>
        <translation>Sie gerade über die Schraube halten oder eine Karte daneben legen.</translation>
    </message>
    <message id="1 day">
        <source></source>
        <translation>1 Tag</translation>
    </message>
    <message id="And one more stands against it.">
        <source></source>
        <translation>Und noch eines steht dagegen.</translation>
    </message>
    <message id="This photo has more than 50 megapixels.">
        <source></source>
        <translation>Dieses Foto hat mehr als 50 Megapixel.</translation>
    </message>
    <message id="Take it with fewer, or save it smaller.">
        <source></source>
        <translation>Mit weniger aufnehmen oder kleiner speichern.</translation>
    </message>
    <message id="This picture is too long and narrow for a photo.">
        <source></source>
        <translation>Für ein Foto ist dieses Bild zu lang und zu schmal.</translation>
    </message>
    <message id="This photo is damaged: its file breaks off or contradicts itself.">
        <source></source>
        <translation>Dieses Foto ist beschädigt: Seine Datei bricht ab oder widerspricht sich.</translation>
    </message>
    <message id="Take it again, or save it anew as JPEG.">
        <source></source>
        <translation>Noch einmal aufnehmen oder neu als JPEG speichern.</translation>
    </message>
    <message id="This kind of JPEG can't be read.">
        <source></source>
        <translation>Diese Art JPEG ist nicht lesbar.</translation>
    </message>
    <message id="Save it anew as an ordinary JPEG.">
        <source></source>
        <translation>Neu als gewöhnliches JPEG speichern.</translation>
    </message>
    <message id="This file holds more than one picture.">
        <source></source>
        <translation>Diese Datei enthält mehr als ein Bild.</translation>
    </message>
    <message id="HEIF photos can't be read on this device.">
        <source></source>
        <translation>HEIF-Fotos sind auf diesem Gerät nicht lesbar.</translation>
    </message>
    <message id="Save the photo as JPEG, or have the camera make JPEGs.">
        <source></source>
        <translation>Das Foto als JPEG speichern oder die Kamera auf JPEG stellen.</translation>
    </message>
    <message id="There is not enough memory for this photo.">
        <source></source>
        <translation>Für dieses Foto reicht der Speicher nicht.</translation>
    </message>
    <message id="Close what else runs, or take it with fewer pixels.">
        <source></source>
        <translation>Schließen, was sonst läuft, oder mit weniger Pixeln aufnehmen.</translation>
    </message>
    <message id="There is no %1 %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 %2 gibt es nicht.</numerusform>
            <numerusform>%1 %2 gibt es nicht.</numerusform>
        </translation>
    </message>
    <message id="Name one that exists, or add it.">
        <source></source>
        <translation>Etwas nennen, das es gibt, oder es hinzufügen.</translation>
    </message>
    <message id="setting">
        <source></source>
        <translation>Stellung</translation>
    </message>
    <message id="state">
        <source></source>
        <translation>Zustand</translation>
    </message>
    <message id="the solid part %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>des festen Teils %1</numerusform>
            <numerusform>des festen Teils %1</numerusform>
        </translation>
    </message>
    <message id="the keep-out area %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>der Sperrfläche %1</numerusform>
            <numerusform>der Sperrfläche %1</numerusform>
        </translation>
    </message>
    <message id="This place lies inside %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieser Platz liegt innerhalb %1.</numerusform>
            <numerusform>Dieser Platz liegt innerhalb %1.</numerusform>
        </translation>
    </message>
    <message id="Move it to free ground.">
        <source></source>
        <translation>Auf freien Boden verlegen.</translation>
    </message>
    <message id="Solid parts and keep-out areas close a ring round this place.">
        <source></source>
        <translation>Feste Teile und Sperrflächen schließen einen Ring um diesen Platz.</translation>
    </message>
    <message id="Move it, or leave a way between them.">
        <source></source>
        <translation>Verlegen oder einen Weg dazwischen lassen.</translation>
    </message>
    <message id="stand">
        <source></source>
        <translation>Standort</translation>
    </message>
    <message id="This stand steps to itself.">
        <source></source>
        <translation>Dieser Standort führt auf sich selbst.</translation>
    </message>
    <message id="Remove it.">
        <source></source>
        <translation>Entfernen.</translation>
    </message>
    <message id="The stand %1 has no step to this one." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Vom Standort %1 führt kein Schritt auf diesen.</numerusform>
            <numerusform>Vom Standort %1 führt kein Schritt auf diesen.</numerusform>
        </translation>
    </message>
    <message id="Add %1 to its stepTo, or take it out of here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 in sein stepTo aufnehmen oder hier weglassen.</numerusform>
            <numerusform>%1 in sein stepTo aufnehmen oder hier weglassen.</numerusform>
        </translation>
    </message>
    <message id="This change leads to where it starts.">
        <source></source>
        <translation>Diese Änderung führt dorthin, wo sie beginnt.</translation>
    </message>
    <message id="Name another state.">
        <source></source>
        <translation>Einen anderen Zustand nennen.</translation>
    </message>
    <message id="There is a change between the same two states already.">
        <source></source>
        <translation>Zwischen denselben zwei Zuständen gibt es schon eine Änderung.</translation>
    </message>
    <message id="Merge the two.">
        <source></source>
        <translation>Beide zusammenlegen.</translation>
    </message>
    <message id="No change leads to the state %1 of %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Keine Änderung führt zum Zustand %1 von %2.</numerusform>
            <numerusform>Keine Änderung führt zum Zustand %1 von %2.</numerusform>
        </translation>
    </message>
    <message id="Add a change to it, or don't want it.">
        <source></source>
        <translation>Eine Änderung dorthin hinzufügen oder ihn nicht verlangen.</translation>
    </message>
    <message id="The opening %1 is met open at the start." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Öffnung %1 wird am Anfang offen vorgefunden.</numerusform>
            <numerusform>Die Öffnung %1 wird am Anfang offen vorgefunden.</numerusform>
        </translation>
    </message>
    <message id="Don't open it, or take its %1 away." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Sie nicht öffnen oder ihr %1 wegnehmen.</numerusform>
            <numerusform>Sie nicht öffnen oder ihr %1 wegnehmen.</numerusform>
        </translation>
    </message>
    <message id="One point opens and closes %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ein Punkt öffnet und schließt %1.</numerusform>
            <numerusform>Ein Punkt öffnet und schließt %1.</numerusform>
        </translation>
    </message>
    <message id="Make it two points, or leave the opening away.">
        <source></source>
        <translation>Zwei Punkte daraus machen oder die Öffnung weglassen.</translation>
    </message>
    <message id="The point looks through %1, which it opens itself." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Punkt blickt durch %1, das er selbst öffnet.</numerusform>
            <numerusform>Der Punkt blickt durch %1, das er selbst öffnet.</numerusform>
        </translation>
    </message>
    <message id="Take it out of through.">
        <source></source>
        <translation>Aus through herausnehmen.</translation>
    </message>
    <message id="This walk opens %1 at %2 and doesn't close it by day." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieser Weg öffnet %1 bei %2 und schließt es am Tag nicht.</numerusform>
            <numerusform>Dieser Weg öffnet %1 bei %2 und schließt es am Tag nicht.</numerusform>
        </translation>
    </message>
    <message id="This walk opens %1 at %2 and doesn't close it." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieser Weg öffnet %1 bei %2 und schließt es nicht.</numerusform>
            <numerusform>Dieser Weg öffnet %1 bei %2 und schließt es nicht.</numerusform>
        </translation>
    </message>
    <message id="Let a point close it that isn't for the night only.">
        <source></source>
        <translation>Einen Punkt schließen lassen, der nicht nur für die Nacht ist.</translation>
    </message>
    <message id="Add the point that closes it.">
        <source></source>
        <translation>Den Punkt hinzufügen, der es schließt.</translation>
    </message>
    <message id="counter">
        <source></source>
        <translation>Zähler</translation>
    </message>
    <message id="This item counts by it already.">
        <source></source>
        <translation>Danach zählt dieser Eintrag schon.</translation>
    </message>
    <message id="Keep the one that comes first.">
        <source></source>
        <translation>Den behalten, der zuerst kommt.</translation>
    </message>
    <message id="The counter %1 counts in %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Zähler %1 zählt in %2.</numerusform>
            <numerusform>Der Zähler %1 zählt in %2.</numerusform>
        </translation>
    </message>
    <message id="Give the count in that unit.">
        <source></source>
        <translation>Die Zahl in dieser Einheit angeben.</translation>
    </message>
    <message id="Solid parts and keep-out areas have %1 corners." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Feste Teile und Sperrflächen haben %1 Ecken.</numerusform>
            <numerusform>Feste Teile und Sperrflächen haben %1 Ecken.</numerusform>
        </translation>
    </message>
    <message id="Use at most %1 in all." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Höchstens %1 insgesamt verwenden.</numerusform>
            <numerusform>Höchstens %1 insgesamt verwenden.</numerusform>
        </translation>
    </message>
    <message id="No way leads from the ground to this stand.">
        <source></source>
        <translation>Kein Weg führt vom Boden zu diesem Standort.</translation>
    </message>
    <message id="Let it be reached from a stand that is reached itself, or leave onlyFrom out.">
        <source></source>
        <translation>Ihn von einem Standort erreichen lassen, der selbst erreicht wird, oder onlyFrom weglassen.</translation>
    </message>
    <message id="zone">
        <source></source>
        <translation>Zone</translation>
    </message>
    <message id="opening">
        <source></source>
        <translation>Öffnung</translation>
    </message>
    <message id="No point opens this.">
        <source></source>
        <translation>Kein Punkt öffnet dies.</translation>
    </message>
    <message id="Let one open it, or say that it is met open.">
        <source></source>
        <translation>Einen Punkt öffnen lassen oder sagen, dass es offen vorgefunden wird.</translation>
    </message>
    <message id="No point closes this.">
        <source></source>
        <translation>Kein Punkt schließt dies.</translation>
    </message>
    <message id="Let one close it.">
        <source></source>
        <translation>Einen Punkt schließen lassen.</translation>
    </message>
    <message id="With the name of %1 put in, this text is too long." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Mit dem Namen von %1 eingesetzt ist dieser Text zu lang.</numerusform>
            <numerusform>Mit dem Namen von %1 eingesetzt ist dieser Text zu lang.</numerusform>
        </translation>
    </message>
    <message id="Use at most %1 characters." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Höchstens %1 Zeichen verwenden.</numerusform>
            <numerusform>Höchstens %1 Zeichen verwenden.</numerusform>
        </translation>
    </message>
    <message id="The point wants %1 to be %2, and its repeat's member %3 wants %4." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Punkt verlangt für %1 %2, das Glied %3 seiner Wiederholung %4.</numerusform>
            <numerusform>Der Punkt verlangt für %1 %2, das Glied %3 seiner Wiederholung %4.</numerusform>
        </translation>
    </message>
    <message id="Take one of the two away.">
        <source></source>
        <translation>Eines von beiden wegnehmen.</translation>
    </message>
    <message id="There is no repeat %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Wiederholung %1 gibt es nicht.</numerusform>
            <numerusform>Die Wiederholung %1 gibt es nicht.</numerusform>
        </translation>
    </message>
    <message id="There is no point %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Den Punkt %1 gibt es nicht.</numerusform>
            <numerusform>Den Punkt %1 gibt es nicht.</numerusform>
        </translation>
    </message>
    <message id="There are more than %1 points after repetition." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Nach der Wiederholung sind es mehr als %1 Punkte.</numerusform>
            <numerusform>Nach der Wiederholung sind es mehr als %1 Punkte.</numerusform>
        </translation>
    </message>
    <message id="Use fewer points, or repeat fewer.">
        <source></source>
        <translation>Weniger Punkte verwenden oder weniger wiederholen.</translation>
    </message>
    <message id="an object">
        <source></source>
        <translation>ein Objekt</translation>
    </message>
    <message id="This is of the type %1; here belongs %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das ist vom Typ %1; hierher gehört: %2.</numerusform>
            <numerusform>Das ist vom Typ %1; hierher gehört: %2.</numerusform>
        </translation>
    </message>
    <message id="Put %1 here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hierher gehört: %1.</numerusform>
            <numerusform>Hierher gehört: %1.</numerusform>
        </translation>
    </message>
    <message id="The field %1 is missing." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Feld %1 fehlt.</numerusform>
            <numerusform>Das Feld %1 fehlt.</numerusform>
        </translation>
    </message>
    <message id="Add it.">
        <source></source>
        <translation>Hinzufügen.</translation>
    </message>
    <message id="The field %1 is not known here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Feld %1 ist hier nicht bekannt.</numerusform>
            <numerusform>Das Feld %1 ist hier nicht bekannt.</numerusform>
        </translation>
    </message>
    <message id="Remove it, or correct its name.">
        <source></source>
        <translation>Entfernen oder seinen Namen berichtigen.</translation>
    </message>
    <message id="an id">
        <source></source>
        <translation>eine Kennung</translation>
    </message>
    <message id="%1 is not an id." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist keine Kennung.</numerusform>
            <numerusform>%1 ist keine Kennung.</numerusform>
        </translation>
    </message>
    <message id="Use 1 to 48 characters of a to z, 0 to 9 and the hyphen.">
        <source></source>
        <translation>1 bis 48 Zeichen aus a bis z, 0 bis 9 und Bindestrich verwenden.</translation>
    </message>
    <message id="a word">
        <source></source>
        <translation>ein Wort</translation>
    </message>
    <message id="This word is empty or too long.">
        <source></source>
        <translation>Dieses Wort ist leer oder zu lang.</translation>
    </message>
    <message id="Name what is meant.">
        <source></source>
        <translation>Nennen, was gemeint ist.</translation>
    </message>
    <message id="a text">
        <source></source>
        <translation>ein Text</translation>
    </message>
    <message id="This text is empty or too long.">
        <source></source>
        <translation>Dieser Text ist leer oder zu lang.</translation>
    </message>
    <message id="Use 1 to %1 characters." numerus="yes">
        <source></source>
        <translation>
            <numerusform>1 bis %1 Zeichen verwenden.</numerusform>
            <numerusform>1 bis %1 Zeichen verwenden.</numerusform>
        </translation>
    </message>
    <message id="This text holds a control character, or one that stands for none.">
        <source></source>
        <translation>Dieser Text enthält ein Steuerzeichen oder eines, das für keines steht.</translation>
    </message>
    <message id="Remove it; the text is one line.">
        <source></source>
        <translation>Entfernen; der Text ist eine Zeile.</translation>
    </message>
    <message id="Remove it; only line ends are allowed.">
        <source></source>
        <translation>Entfernen; erlaubt sind nur Zeilenenden.</translation>
    </message>
    <message id="This text has a placeholder that nothing fills.">
        <source></source>
        <translation>Dieser Text hat einen Platzhalter, den nichts füllt.</translation>
    </message>
    <message id="Remove the braces; only a repeated point has a placeholder.">
        <source></source>
        <translation>Die Klammern entfernen; nur ein wiederholter Punkt hat einen Platzhalter.</translation>
    </message>
    <message id="The only one here is {%1}." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der einzige hier ist {%1}.</numerusform>
            <numerusform>Der einzige hier ist {%1}.</numerusform>
        </translation>
    </message>
    <message id="This id is empty.">
        <source></source>
        <translation>Diese Kennung ist leer.</translation>
    </message>
    <message id="%1 stands in the list already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 steht schon in der Liste.</numerusform>
            <numerusform>%1 steht schon in der Liste.</numerusform>
        </translation>
    </message>
    <message id="a number">
        <source></source>
        <translation>eine Zahl</translation>
    </message>
    <message id="This number is out of range.">
        <source></source>
        <translation>Diese Zahl liegt außerhalb des Bereichs.</translation>
    </message>
    <message id="Use %1 to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 bis %2 verwenden.</numerusform>
            <numerusform>%1 bis %2 verwenden.</numerusform>
        </translation>
    </message>
    <message id="This is not a whole number.">
        <source></source>
        <translation>Das ist keine ganze Zahl.</translation>
    </message>
    <message id="Use a whole number from %1 to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Eine ganze Zahl von %1 bis %2 verwenden.</numerusform>
            <numerusform>Eine ganze Zahl von %1 bis %2 verwenden.</numerusform>
        </translation>
    </message>
    <message id="true or false">
        <source></source>
        <translation>true oder false</translation>
    </message>
    <message id="a place [x, y]">
        <source></source>
        <translation>ein Ort [x, y]</translation>
    </message>
    <message id="This place doesn't have two coordinates.">
        <source></source>
        <translation>Dieser Ort hat nicht zwei Koordinaten.</translation>
    </message>
    <message id="Write it as [x, y], in metres.">
        <source></source>
        <translation>Als [x, y] in Metern schreiben.</translation>
    </message>
    <message id="Give the corners of a simple polygon in order, each once.">
        <source></source>
        <translation>Die Ecken eines einfachen Vielecks der Reihe nach angeben, jede einmal.</translation>
    </message>
    <message id="a state's id">
        <source></source>
        <translation>die Kennung eines Zustands</translation>
    </message>
    <message id="a decimal number as a text">
        <source></source>
        <translation>eine Dezimalzahl als Text</translation>
    </message>
    <message id="%1 is not a decimal number." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist keine Dezimalzahl.</numerusform>
            <numerusform>%1 ist keine Dezimalzahl.</numerusform>
        </translation>
    </message>
    <message id="a list">
        <source></source>
        <translation>eine Liste</translation>
    </message>
    <message id="This list has %1 entries." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Diese Liste hat %1 Einträge.</numerusform>
            <numerusform>Diese Liste hat %1 Einträge.</numerusform>
        </translation>
    </message>
    <message id="Give %1 to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 bis %2 angeben.</numerusform>
            <numerusform>%1 bis %2 angeben.</numerusform>
        </translation>
    </message>
    <message id="This word stands in the list already.">
        <source></source>
        <translation>Dieses Wort steht schon in der Liste.</translation>
    </message>
    <message id="The word %1 is not known here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Wort %1 ist hier nicht bekannt.</numerusform>
            <numerusform>Das Wort %1 ist hier nicht bekannt.</numerusform>
        </translation>
    </message>
    <message id="Use one of: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Eines davon verwenden: %1.</numerusform>
            <numerusform>Eines davon verwenden: %1.</numerusform>
        </translation>
    </message>
    <message id="%1 is not an airframe's format." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist nicht das Format einer Musterbeschreibung.</numerusform>
            <numerusform>%1 ist nicht das Format einer Musterbeschreibung.</numerusform>
        </translation>
    </message>
    <message id="Give a file with the format %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Eine Datei mit dem Format %1 angeben.</numerusform>
            <numerusform>Eine Datei mit dem Format %1 angeben.</numerusform>
        </translation>
    </message>
    <message id="This version of the airframe format is not known here.">
        <source></source>
        <translation>Diese Version des Formats von Musterbeschreibungen ist hier nicht bekannt.</translation>
    </message>
    <message id="Use version 1, or a newer Ambit.">
        <source></source>
        <translation>Version 1 verwenden oder ein neueres Ambit.</translation>
    </message>
    <message id="The outline has fewer than three corners.">
        <source></source>
        <translation>Der Umriss hat weniger als drei Ecken.</translation>
    </message>
    <message id="The outline's last corner is its first again.">
        <source></source>
        <translation>Die letzte Ecke des Umrisses ist wieder seine erste.</translation>
    </message>
    <message id="Corner %1 of the outline is given twice in a row." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ecke %1 des Umrisses steht zweimal nacheinander.</numerusform>
            <numerusform>Ecke %1 des Umrisses steht zweimal nacheinander.</numerusform>
        </translation>
    </message>
    <message id="The outline folds back on itself at corner %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Umriss läuft an Ecke %1 in sich zurück.</numerusform>
            <numerusform>Der Umriss läuft an Ecke %1 in sich zurück.</numerusform>
        </translation>
    </message>
    <message id="The outline crosses itself: the edge from corner %1 meets the edge from corner %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Umriss kreuzt sich: Die Kante von Ecke %1 trifft die Kante von Ecke %2.</numerusform>
            <numerusform>Der Umriss kreuzt sich: Die Kante von Ecke %1 trifft die Kante von Ecke %2.</numerusform>
        </translation>
    </message>
    <message id="A stand with access %1 has its feet on the ground." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ein Standort mit dem Zugang %1 ist auf dem Boden.</numerusform>
            <numerusform>Ein Standort mit dem Zugang %1 ist auf dem Boden.</numerusform>
        </translation>
    </message>
    <message id="Make its level 0, or its access step or ladder.">
        <source></source>
        <translation>Seine Höhe 0 machen oder seinen Zugang step oder ladder.</translation>
    </message>
    <message id="A stand with access %1 has its feet above the ground." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ein Standort mit dem Zugang %1 ist über dem Boden.</numerusform>
            <numerusform>Ein Standort mit dem Zugang %1 ist über dem Boden.</numerusform>
        </translation>
    </message>
    <message id="Give its level in metres, or make its access ground or kneel.">
        <source></source>
        <translation>Seine Höhe in Metern angeben oder seinen Zugang ground oder kneel machen.</translation>
    </message>
    <message id="A stand with access %1 has no caution." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ein Standort mit dem Zugang %1 hat keinen Warnhinweis.</numerusform>
            <numerusform>Ein Standort mit dem Zugang %1 hat keinen Warnhinweis.</numerusform>
        </translation>
    </message>
    <message id="Say what to mind up there.">
        <source></source>
        <translation>Sagen, worauf dort oben zu achten ist.</translation>
    </message>
    <message id="This limit has neither min nor max.">
        <source></source>
        <translation>Dieser Grenzwert hat weder min noch max.</translation>
    </message>
    <message id="Give at least one of them.">
        <source></source>
        <translation>Mindestens eines davon angeben.</translation>
    </message>
    <message id="The least allowed value, %1, is above the greatest, %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der kleinste erlaubte Wert, %1, liegt über dem größten, %2.</numerusform>
            <numerusform>Der kleinste erlaubte Wert, %1, liegt über dem größten, %2.</numerusform>
        </translation>
    </message>
    <message id="Correct min or max.">
        <source></source>
        <translation>min oder max berichtigen.</translation>
    </message>
    <message id="The point is measured and has no limit.">
        <source></source>
        <translation>Der Punkt wird gemessen und hat keinen Grenzwert.</translation>
    </message>
    <message id="Add the limit, or take %1 out of how." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Den Grenzwert hinzufügen oder %1 aus how herausnehmen.</numerusform>
            <numerusform>Den Grenzwert hinzufügen oder %1 aus how herausnehmen.</numerusform>
        </translation>
    </message>
    <message id="The point has a limit and is not measured.">
        <source></source>
        <translation>Der Punkt hat einen Grenzwert und wird nicht gemessen.</translation>
    </message>
    <message id="Remove the limit, or add %1 to how." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Den Grenzwert entfernen oder %1 in how aufnehmen.</numerusform>
            <numerusform>Den Grenzwert entfernen oder %1 in how aufnehmen.</numerusform>
        </translation>
    </message>
    <message id="%1 is not a JASC code." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist kein JASC-Code.</numerusform>
            <numerusform>%1 ist kein JASC-Code.</numerusform>
        </translation>
    </message>
    <message id="Give its four digits.">
        <source></source>
        <translation>Seine vier Ziffern angeben.</translation>
    </message>
    <message id="%1 is not a list of points." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist keine Liste von Punkten.</numerusform>
            <numerusform>%1 ist keine Liste von Punkten.</numerusform>
        </translation>
    </message>
    <message id="Write %1, or list points." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 schreiben oder Punkte auflisten.</numerusform>
            <numerusform>%1 schreiben oder Punkte auflisten.</numerusform>
        </translation>
    </message>
    <message id="The id %1 is taken by another entry of this list." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Kennung %1 hat schon ein anderer Eintrag dieser Liste.</numerusform>
            <numerusform>Die Kennung %1 hat schon ein anderer Eintrag dieser Liste.</numerusform>
        </translation>
    </message>
    <message id="Give each its own.">
        <source></source>
        <translation>Jedem eine eigene geben.</translation>
    </message>
    <message id="This count is %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Diese Zahl ist %1.</numerusform>
            <numerusform>Diese Zahl ist %1.</numerusform>
        </translation>
    </message>
    <message id="Use zero or more.">
        <source></source>
        <translation>Null oder mehr verwenden.</translation>
    </message>
    <message id="Use more than zero.">
        <source></source>
        <translation>Mehr als null verwenden.</translation>
    </message>
    <message id="This is as much as the count itself, %1, or more." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das ist so viel wie die Zahl selbst, %1, oder mehr.</numerusform>
            <numerusform>Das ist so viel wie die Zahl selbst, %1, oder mehr.</numerusform>
        </translation>
    </message>
    <message id="Use less.">
        <source></source>
        <translation>Weniger verwenden.</translation>
    </message>
    <message id="So many days before the end, it may not have begun yet.">
        <source></source>
        <translation>So viele Tage vor dem Ende hat es vielleicht noch nicht begonnen.</translation>
    </message>
    <message id="Use fewer.">
        <source></source>
        <translation>Weniger verwenden.</translation>
    </message>
    <message id="This counts by a counter and by months at once.">
        <source></source>
        <translation>Das zählt nach einem Zähler und nach Monaten zugleich.</translation>
    </message>
    <message id="Make it two entries of the list.">
        <source></source>
        <translation>Zwei Einträge der Liste daraus machen.</translation>
    </message>
    <message id="This has neither a counter nor months.">
        <source></source>
        <translation>Das hat weder einen Zähler noch Monate.</translation>
    </message>
    <message id="Give one of them.">
        <source></source>
        <translation>Eines davon angeben.</translation>
    </message>
    <message id="This text has lost the placeholder of what it translates.">
        <source></source>
        <translation>Dieser Text hat den Platzhalter dessen verloren, was er übersetzt.</translation>
    </message>
    <message id="Put {%1} where its name belongs." numerus="yes">
        <source></source>
        <translation>
            <numerusform>{%1} dort einsetzen, wo der Name hingehört.</numerusform>
            <numerusform>{%1} dort einsetzen, wo der Name hingehört.</numerusform>
        </translation>
    </message>
    <message id="No text of this airframe says %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Kein Text dieser Musterbeschreibung sagt %1.</numerusform>
            <numerusform>Kein Text dieser Musterbeschreibung sagt %1.</numerusform>
        </translation>
    </message>
    <message id="Write it as it stands in the file, or remove it.">
        <source></source>
        <translation>So schreiben, wie es in der Datei steht, oder entfernen.</translation>
    </message>
    <message id="These are %1 languages." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das sind %1 Sprachen.</numerusform>
            <numerusform>Das sind %1 Sprachen.</numerusform>
        </translation>
    </message>
    <message id="Give %1 at most." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Höchstens %1 angeben.</numerusform>
            <numerusform>Höchstens %1 angeben.</numerusform>
        </translation>
    </message>
    <message id="%1 is not a language's code." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ist kein Sprachcode.</numerusform>
            <numerusform>%1 ist kein Sprachcode.</numerusform>
        </translation>
    </message>
    <message id="Use the two lower-case letters of ISO 639-1, as in %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die zwei Kleinbuchstaben nach ISO 639-1 verwenden, wie %1.</numerusform>
            <numerusform>Die zwei Kleinbuchstaben nach ISO 639-1 verwenden, wie %1.</numerusform>
        </translation>
    </message>
    <message id="%1 waits for %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wartet auf %2</numerusform>
            <numerusform>%1 wartet auf %2</numerusform>
        </translation>
    </message>
    <message id="No order can settle these points: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Keine Reihenfolge kann diese Punkte erledigen: %1.</numerusform>
            <numerusform>Keine Reihenfolge kann diese Punkte erledigen: %1.</numerusform>
        </translation>
    </message>
    <message id="Break the circle: look at their after, through, opens, closes and when, and at the changes' needs.">
        <source></source>
        <translation>Den Kreis auflösen: ihr after, through, opens, closes und when ansehen und needs der Änderungen.</translation>
    </message>
    <message id="list its files">
        <source></source>
        <translation>seine Akten nicht auflisten</translation>
    </message>
    <message id="note its discrepancies">
        <source></source>
        <translation>seine Beanstandungen nicht vermerken</translation>
    </message>
    <message id="be opened">
        <source></source>
        <translation>nicht geöffnet werden</translation>
    </message>
    <message id="keep the airframe">
        <source></source>
        <translation>die Musterbeschreibung nicht aufbewahren</translation>
    </message>
    <message id="keep the aircraft">
        <source></source>
        <translation>das Luftfahrzeug nicht aufbewahren</translation>
    </message>
    <message id="list its aircraft">
        <source></source>
        <translation>seine Luftfahrzeuge nicht auflisten</translation>
    </message>
    <message id="The archive has no such %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das fehlt im Archiv: %1.</numerusform>
            <numerusform>Das fehlt im Archiv: %1.</numerusform>
        </translation>
    </message>
    <message id="read the %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 nicht lesen</numerusform>
            <numerusform>%1 nicht lesen</numerusform>
        </translation>
    </message>
    <message id="airframe">
        <source></source>
        <translation>die Musterbeschreibung</translation>
    </message>
    <message id="photo">
        <source></source>
        <translation>das Foto</translation>
    </message>
    <message id="make its copy">
        <source></source>
        <translation>seine Kopie nicht anlegen</translation>
    </message>
    <message id="read its copy">
        <source></source>
        <translation>seine Kopie nicht lesen</translation>
    </message>
    <message id="finish its copy">
        <source></source>
        <translation>seine Kopie nicht fertigstellen</translation>
    </message>
    <message id="be read">
        <source></source>
        <translation>nicht gelesen werden</translation>
    </message>
    <message id="be copied">
        <source></source>
        <translation>nicht kopiert werden</translation>
    </message>
    <message id="begin">
        <source></source>
        <translation>nicht beginnen</translation>
    </message>
    <message id="commit">
        <source></source>
        <translation>nicht festschreiben</translation>
    </message>
    <message id="undo">
        <source></source>
        <translation>nicht zurücknehmen</translation>
    </message>
    <message id="The export could not be written: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Export ließ sich nicht schreiben: %1.</numerusform>
            <numerusform>Der Export ließ sich nicht schreiben: %1.</numerusform>
        </translation>
    </message>
    <message id="Nothing is left of it. Make room, or choose another folder.">
        <source></source>
        <translation>Davon bleibt nichts zurück. Platz schaffen oder einen anderen Ordner wählen.</translation>
    </message>
    <message id="There is a file already; an export never overwrites one.">
        <source></source>
        <translation>Es gibt schon eine Datei; ein Export überschreibt nie eine.</translation>
    </message>
    <message id="Look at its registration.">
        <source></source>
        <translation>Das Kennzeichen prüfen.</translation>
    </message>
    <message id="search">
        <source></source>
        <translation>nicht suchen</translation>
    </message>
    <message id="read the point's history">
        <source></source>
        <translation>den Verlauf des Punkts nicht lesen</translation>
    </message>
    <message id="keep the record">
        <source></source>
        <translation>das Protokoll nicht aufbewahren</translation>
    </message>
    <message id="link the record">
        <source></source>
        <translation>das Protokoll nicht verknüpfen</translation>
    </message>
    <message id="read the record's signatures">
        <source></source>
        <translation>die Unterschriften des Protokolls nicht lesen</translation>
    </message>
    <message id="keep the signature">
        <source></source>
        <translation>die Unterschrift nicht aufbewahren</translation>
    </message>
    <message id="look for the record">
        <source></source>
        <translation>nach dem Protokoll nicht suchen</translation>
    </message>
    <message id="await a photo">
        <source></source>
        <translation>kein Foto erwarten</translation>
    </message>
    <message id="keep the photo">
        <source></source>
        <translation>das Foto nicht aufbewahren</translation>
    </message>
    <message id="keep the record's PDF">
        <source></source>
        <translation>die PDF-Datei des Protokolls nicht aufbewahren</translation>
    </message>
    <message id="list its rounds">
        <source></source>
        <translation>seine Rundgänge nicht auflisten</translation>
    </message>
    <message id="read the round">
        <source></source>
        <translation>den Rundgang nicht lesen</translation>
    </message>
    <message id="find the round">
        <source></source>
        <translation>den Rundgang nicht finden</translation>
    </message>
    <message id="keep the event">
        <source></source>
        <translation>das Ereignis nicht aufbewahren</translation>
    </message>
    <message id="keep the round">
        <source></source>
        <translation>den Rundgang nicht aufbewahren</translation>
    </message>
    <message id="look for the photo">
        <source></source>
        <translation>nach dem Foto nicht suchen</translation>
    </message>
    <message id="seal the round">
        <source></source>
        <translation>den Rundgang nicht versiegeln</translation>
    </message>
    <message id="read its older records">
        <source></source>
        <translation>seine älteren Protokolle nicht lesen</translation>
    </message>
    <message id="move its older records">
        <source></source>
        <translation>seine älteren Protokolle nicht umziehen</translation>
    </message>
    <message id="A record could not be packed: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ein Protokoll ließ sich nicht packen: %1.</numerusform>
            <numerusform>Ein Protokoll ließ sich nicht packen: %1.</numerusform>
        </translation>
    </message>
    <message id="read the record">
        <source></source>
        <translation>das Protokoll nicht lesen</translation>
    </message>
    <message id="read the record's PDF">
        <source></source>
        <translation>die PDF-Datei des Protokolls nicht lesen</translation>
    </message>
    <message id="list its records">
        <source></source>
        <translation>seine Protokolle nicht auflisten</translation>
    </message>
    <message id="read the aircraft's records">
        <source></source>
        <translation>die Protokolle des Luftfahrzeugs nicht lesen</translation>
    </message>
    <message id="find the latest records">
        <source></source>
        <translation>die letzten Protokolle nicht finden</translation>
    </message>
    <message id="let the record go">
        <source></source>
        <translation>das Protokoll nicht aussondern</translation>
    </message>
    <message id="let the photo go">
        <source></source>
        <translation>das Foto nicht aussondern</translation>
    </message>
    <message id="be settled">
        <source></source>
        <translation>nicht zur Ruhe kommen</translation>
    </message>
    <message id="This is not base64.">
        <source></source>
        <translation>Das ist kein Base64.</translation>
    </message>
    <message id="This base64 doesn't end as it must.">
        <source></source>
        <translation>Dieses Base64 endet nicht, wie es muss.</translation>
    </message>
    <message id="This is not hex.">
        <source></source>
        <translation>Das ist kein Hex.</translation>
    </message>
    <message id="This base64 lacks its padding.">
        <source></source>
        <translation>Diesem Base64 fehlen seine Füllzeichen.</translation>
    </message>
    <message id="An object is expected here.">
        <source></source>
        <translation>Hier wird ein Objekt erwartet.</translation>
    </message>
    <message id="A text is expected here.">
        <source></source>
        <translation>Hier wird ein Text erwartet.</translation>
    </message>
    <message id="This text is empty.">
        <source></source>
        <translation>Dieser Text ist leer.</translation>
    </message>
    <message id="This text is longer than %1 bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieser Text ist länger als %1 Bytes.</numerusform>
            <numerusform>Dieser Text ist länger als %1 Bytes.</numerusform>
        </translation>
    </message>
    <message id="This text holds control characters or is not UTF-8.">
        <source></source>
        <translation>Dieser Text enthält Steuerzeichen oder ist kein UTF-8.</translation>
    </message>
    <message id="A decimal number in quotes is expected here.">
        <source></source>
        <translation>Hier wird eine Dezimalzahl in Anführungszeichen erwartet.</translation>
    </message>
    <message id="A SHA-256 of 64 lower-case hex digits is expected here.">
        <source></source>
        <translation>Hier wird ein SHA-256 aus 64 Hexziffern in Kleinschreibung erwartet.</translation>
    </message>
    <message id="An integer from %1 to %2 is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hier wird eine ganze Zahl von %1 bis %2 erwartet.</numerusform>
            <numerusform>Hier wird eine ganze Zahl von %1 bis %2 erwartet.</numerusform>
        </translation>
    </message>
    <message id="One of these words is expected here: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hier wird eines dieser Wörter erwartet: %1.</numerusform>
            <numerusform>Hier wird eines dieser Wörter erwartet: %1.</numerusform>
        </translation>
    </message>
    <message id="A list of at most %1 is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hier wird eine Liste mit höchstens %1 Einträgen erwartet.</numerusform>
            <numerusform>Hier wird eine Liste mit höchstens %1 Einträgen erwartet.</numerusform>
        </translation>
    </message>
    <message id="This field is not known.">
        <source></source>
        <translation>Dieses Feld ist nicht bekannt.</translation>
    </message>
    <message id="The name %1 stands twice in one object." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Name %1 steht zweimal in einem Objekt.</numerusform>
            <numerusform>Der Name %1 steht zweimal in einem Objekt.</numerusform>
        </translation>
    </message>
    <message id="Keep one of the two.">
        <source></source>
        <translation>Einen der beiden behalten.</translation>
    </message>
    <message id="A number is too large for any reader.">
        <source></source>
        <translation>Eine Zahl ist für jeden Leser zu groß.</translation>
    </message>
    <message id="Write a smaller number.">
        <source></source>
        <translation>Eine kleinere Zahl schreiben.</translation>
    </message>
    <message id="The text is not JSON: it breaks off or goes wrong at byte %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Text ist kein JSON: Bei Byte %1 bricht er ab oder wird falsch.</numerusform>
            <numerusform>Der Text ist kein JSON: Bei Byte %1 bricht er ab oder wird falsch.</numerusform>
        </translation>
    </message>
    <message id="Mend the text there.">
        <source></source>
        <translation>Den Text dort berichtigen.</translation>
    </message>
    <message id="Arrays and objects are nested more than %1 deep." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Listen und Objekte sind tiefer als %1 geschachtelt.</numerusform>
            <numerusform>Listen und Objekte sind tiefer als %1 geschachtelt.</numerusform>
        </translation>
    </message>
    <message id="Nest less deep.">
        <source></source>
        <translation>Weniger tief schachteln.</translation>
    </message>
    <message id="The text is larger than %1 bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Text ist größer als %1 Bytes.</numerusform>
            <numerusform>Der Text ist größer als %1 Bytes.</numerusform>
        </translation>
    </message>
    <message id="Make it smaller.">
        <source></source>
        <translation>Verkleinern.</translation>
    </message>
    <message id="The text begins with a byte-order mark.">
        <source></source>
        <translation>Der Text beginnt mit einer Bytereihenfolge-Marke (BOM).</translation>
    </message>
    <message id="Save it without one.">
        <source></source>
        <translation>Ohne sie speichern.</translation>
    </message>
    <message id="The text is not UTF-8 at byte %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Text ist bei Byte %1 kein UTF-8.</numerusform>
            <numerusform>Der Text ist bei Byte %1 kein UTF-8.</numerusform>
        </translation>
    </message>
    <message id="Save it as UTF-8.">
        <source></source>
        <translation>Als UTF-8 speichern.</translation>
    </message>
    <message id="The text has a NUL at byte %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Text hat bei Byte %1 ein NUL.</numerusform>
            <numerusform>Der Text hat bei Byte %1 ein NUL.</numerusform>
        </translation>
    </message>
    <message id="The text is not JSON.">
        <source></source>
        <translation>Der Text ist kein JSON.</translation>
    </message>
    <message id="A number here can only be an integer.">
        <source></source>
        <translation>Eine Zahl kann hier nur eine ganze Zahl sein.</translation>
    </message>
    <message id="This is too large, nested too deep, or holds what is not UTF-8.">
        <source></source>
        <translation>Das ist zu groß, zu tief geschachtelt oder enthält etwas, das kein UTF-8 ist.</translation>
    </message>
    <message id="This is said by %1, the key's holder is %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das sagt %1; der Schlüssel gehört %2.</numerusform>
            <numerusform>Das sagt %1; der Schlüssel gehört %2.</numerusform>
        </translation>
    </message>
    <message id="Sign with the key of the person who says it.">
        <source></source>
        <translation>Mit dem Schlüssel der Person unterschreiben, die es sagt.</translation>
    </message>
    <message id="The signature of what was asked must declare low S.">
        <source></source>
        <translation>Die Unterschrift des Verlangten muss ein niedriges S erklären.</translation>
    </message>
    <message id="What was asked is said to be by %1, but the key is %2's." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Verlangte soll von %1 sein, der Schlüssel gehört aber %2.</numerusform>
            <numerusform>Das Verlangte soll von %1 sein, der Schlüssel gehört aber %2.</numerusform>
        </translation>
    </message>
    <message id="This was signed by another key than that of %1, from whose device it came." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das wurde mit einem anderen Schlüssel unterschrieben als dem von %1, von dessen Gerät es kam.</numerusform>
            <numerusform>Das wurde mit einem anderen Schlüssel unterschrieben als dem von %1, von dessen Gerät es kam.</numerusform>
        </translation>
    </message>
    <message id="Each says it on their own device.">
        <source></source>
        <translation>Jeder sagt es auf dem eigenen Gerät.</translation>
    </message>
    <message id="This is not the content of a record: its format is not “ambit-record”.">
        <source></source>
        <translation>Das ist nicht der Inhalt eines Protokolls: Sein Format ist nicht „ambit-record“.</translation>
    </message>
    <message id="This Ambit doesn't know records of this version and kind.">
        <source></source>
        <translation>Dieses Ambit kennt Protokolle dieser Version und Art nicht.</translation>
    </message>
    <message id="Use a newer Ambit.">
        <source></source>
        <translation>Ein neueres Ambit verwenden.</translation>
    </message>
    <message id="“fit” can't stand beside this point's outcome.">
        <source></source>
        <translation>„fit“ kann nicht neben dem Ergebnis dieses Punkts stehen.</translation>
    </message>
    <message id="A value out of its limit isn't sound.">
        <source></source>
        <translation>Ein Wert außerhalb seines Grenzwerts ist nicht in Ordnung.</translation>
    </message>
    <message id="The version isn't the one that brought the latest kind among the events.">
        <source></source>
        <translation>Die Version ist nicht die, welche die jüngste Art unter den Ereignissen gebracht hat.</translation>
    </message>
    <message id="This isn't what the record's own events say.">
        <source></source>
        <translation>Das ist nicht, was die eigenen Ereignisse des Protokolls sagen.</translation>
    </message>
    <message id="The signer gave no ES256 signature.">
        <source></source>
        <translation>Der Unterzeichner gab keine ES256-Unterschrift.</translation>
    </message>
    <message id="The PDF's signature is not one that Ambit makes.">
        <source></source>
        <translation>Die Unterschrift der PDF-Datei ist keine, wie Ambit sie macht.</translation>
    </message>
    <message id="The PDF was changed after signing, or its signature is not in the one form Ambit makes.">
        <source></source>
        <translation>Die PDF-Datei wurde nach dem Unterschreiben geändert, oder ihre Unterschrift hat nicht die eine Form, die Ambit macht.</translation>
    </message>
    <message id="The PDF's signature has high S.">
        <source></source>
        <translation>Die Unterschrift der PDF-Datei hat ein hohes S.</translation>
    </message>
    <message id="The PDF's signature by %1 doesn't hold." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Unterschrift der PDF-Datei von %1 hält nicht.</numerusform>
            <numerusform>Die Unterschrift der PDF-Datei von %1 hält nicht.</numerusform>
        </translation>
    </message>
    <message id="Only a concluded round becomes a record.">
        <source></source>
        <translation>Nur ein abgeschlossener Rundgang wird ein Protokoll.</translation>
    </message>
    <message id="This is not a P-256 key with its curve named and its point written out.">
        <source></source>
        <translation>Das ist kein P-256-Schlüssel mit benannter Kurve und ausgeschriebenem Punkt.</translation>
    </message>
    <message id="This is not a P-256 signature in DER.">
        <source></source>
        <translation>Das ist keine P-256-Unterschrift in DER.</translation>
    </message>
    <message id="A certificate is base64 text.">
        <source></source>
        <translation>Ein Zertifikat ist Base64-Text.</translation>
    </message>
    <message id="This certificate is not strict base64.">
        <source></source>
        <translation>Dieses Zertifikat ist kein strenges Base64.</translation>
    </message>
    <message id="The protected header doesn't name one to eight certificates in x5c.">
        <source></source>
        <translation>Der geschützte Kopf nennt in x5c nicht ein bis acht Zertifikate.</translation>
    </message>
    <message id="This is a countersignature, and the signature before it is missing.">
        <source></source>
        <translation>Das ist eine Gegenzeichnung, und die Unterschrift davor fehlt.</translation>
    </message>
    <message id="The protected header's “s” can only be “low”.">
        <source></source>
        <translation>Das „s“ des geschützten Kopfs kann nur „low“ sein.</translation>
    </message>
    <message id="The protected header is not in canonical form, or says more than Ambit's.">
        <source></source>
        <translation>Der geschützte Kopf ist nicht in kanonischer Form oder sagt mehr als der von Ambit.</translation>
    </message>
    <message id="The protected header is not in canonical form.">
        <source></source>
        <translation>Der geschützte Kopf ist nicht in kanonischer Form.</translation>
    </message>
    <message id="This countersignature was given after another signature than the one before it: one was exchanged, taken away or moved.">
        <source></source>
        <translation>Diese Gegenzeichnung wurde nach einer anderen Unterschrift gegeben als der davor: Eine wurde ausgetauscht, weggenommen oder verschoben.</translation>
    </message>
    <message id="The countersigner is named %1, the certificate's holder %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Gegenzeichnende heißt %1, der Inhaber des Zertifikats %2.</numerusform>
            <numerusform>Der Gegenzeichnende heißt %1, der Inhaber des Zertifikats %2.</numerusform>
        </translation>
    </message>
    <message id="The protected header is not strict base64url.">
        <source></source>
        <translation>Der geschützte Kopf ist kein strenges Base64url.</translation>
    </message>
    <message id="The protected header is not a JSON object.">
        <source></source>
        <translation>Der geschützte Kopf ist kein JSON-Objekt.</translation>
    </message>
    <message id="The signature demands an extension (crit) that Ambit doesn't know.">
        <source></source>
        <translation>Die Unterschrift verlangt eine Erweiterung (crit), die Ambit nicht kennt.</translation>
    </message>
    <message id="The signature's algorithm is not ES256.">
        <source></source>
        <translation>Das Verfahren der Unterschrift ist nicht ES256.</translation>
    </message>
    <message id="A signature has exactly “protected” and “signature”, both texts.">
        <source></source>
        <translation>Eine Unterschrift hat genau „protected“ und „signature“, beides Texte.</translation>
    </message>
    <message id="The signature is not 64 bytes in strict base64url.">
        <source></source>
        <translation>Die Unterschrift ist nicht 64 Bytes in strengem Base64url.</translation>
    </message>
    <message id="The signature declares low S but has high S.">
        <source></source>
        <translation>Die Unterschrift erklärt ein niedriges S, hat aber ein hohes.</translation>
    </message>
    <message id="The signature of %1 doesn't hold: something was changed after signing." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Unterschrift von %1 hält nicht: Nach dem Unterschreiben wurde etwas geändert.</numerusform>
            <numerusform>Die Unterschrift von %1 hält nicht: Nach dem Unterschreiben wurde etwas geändert.</numerusform>
        </translation>
    </message>
    <message id="The cryptographic library failed: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Kryptografie-Bibliothek scheiterte: %1.</numerusform>
            <numerusform>Die Kryptografie-Bibliothek scheiterte: %1.</numerusform>
        </translation>
    </message>
    <message id="signing">
        <source></source>
        <translation>beim Unterschreiben</translation>
    </message>
    <message id="making a key">
        <source></source>
        <translation>beim Erzeugen eines Schlüssels</translation>
    </message>
    <message id="making a certificate">
        <source></source>
        <translation>beim Erzeugen eines Zertifikats</translation>
    </message>
    <message id="locking the key">
        <source></source>
        <translation>beim Verschließen des Schlüssels</translation>
    </message>
    <message id="writing the certificate">
        <source></source>
        <translation>beim Schreiben des Zertifikats</translation>
    </message>
    <message id="The connection's certificate is not an X.509 certificate in DER.">
        <source></source>
        <translation>Das Zertifikat der Verbindung ist kein X.509-Zertifikat in DER.</translation>
    </message>
    <message id="The connection's certificate is not vouched for by %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Für das Zertifikat der Verbindung bürgt %1 nicht.</numerusform>
            <numerusform>Für das Zertifikat der Verbindung bürgt %1 nicht.</numerusform>
        </translation>
    </message>
    <message id="This is not a record in canonical form.">
        <source></source>
        <translation>Das ist kein Protokoll in kanonischer Form.</translation>
    </message>
    <message id="Use the file as it was signed.">
        <source></source>
        <translation>Die Datei so verwenden, wie sie unterschrieben wurde.</translation>
    </message>
    <message id="The signature doesn't cover the file from its first byte to its last: something was added or cut off.">
        <source></source>
        <translation>Die Unterschrift deckt die Datei nicht vom ersten bis zum letzten Byte: Etwas wurde angefügt oder abgeschnitten.</translation>
    </message>
    <message id="The file doesn't bear exactly one signature of Ambit's form.">
        <source></source>
        <translation>Die Datei trägt nicht genau eine Unterschrift in der Form von Ambit.</translation>
    </message>
    <message id="The signature leaves out more than itself.">
        <source></source>
        <translation>Die Unterschrift lässt mehr aus als sich selbst.</translation>
    </message>
    <message id="The signature is not written in lower-case hex.">
        <source></source>
        <translation>Die Unterschrift ist nicht in Hexziffern in Kleinschreibung geschrieben.</translation>
    </message>
    <message id="The file's digest could not be computed.">
        <source></source>
        <translation>Der Hash der Datei ließ sich nicht berechnen.</translation>
    </message>
    <message id="The signature breaks off, or its padding isn't empty.">
        <source></source>
        <translation>Die Unterschrift bricht ab, oder ihr Füllraum ist nicht leer.</translation>
    </message>
    <message id="The signature's padding is not as long as Ambit makes it.">
        <source></source>
        <translation>Der Füllraum der Unterschrift ist nicht so lang, wie Ambit ihn macht.</translation>
    </message>
    <message id="The file doesn't have exactly one field for each signature.">
        <source></source>
        <translation>Die Datei hat nicht genau ein Feld für jede Unterschrift.</translation>
    </message>
    <message id="The file's field is not the signature that was checked.">
        <source></source>
        <translation>Das Feld der Datei ist nicht die Unterschrift, die geprüft wurde.</translation>
    </message>
    <message id="The file holds more signatures than its fields show.">
        <source></source>
        <translation>Die Datei enthält mehr Unterschriften, als ihre Felder zeigen.</translation>
    </message>
    <message id="The file hides objects in streams, which Ambit never does.">
        <source></source>
        <translation>Die Datei versteckt Objekte in Datenströmen, was Ambit nie tut.</translation>
    </message>
    <message id="The file doesn't carry exactly one attachment, record.json.">
        <source></source>
        <translation>Die Datei trägt nicht genau einen Anhang, record.json.</translation>
    </message>
    <message id="The attachment is not one and the same for every reader.">
        <source></source>
        <translation>Der Anhang ist nicht für jeden Leser ein und derselbe.</translation>
    </message>
    <message id="The attached record can't be unpacked.">
        <source></source>
        <translation>Das angehängte Protokoll lässt sich nicht entpacken.</translation>
    </message>
    <message id="The file is not a sound PDF: readers could see different things.">
        <source></source>
        <translation>Die Datei ist keine einwandfreie PDF-Datei: Leser könnten Verschiedenes sehen.</translation>
    </message>
    <message id="The PDF and the record in it were signed with two keys.">
        <source></source>
        <translation>Die PDF-Datei und das Protokoll darin wurden mit zwei Schlüsseln unterschrieben.</translation>
    </message>
    <message id="The attached record bears more signatures than the PDF that it was attached to.">
        <source></source>
        <translation>Das angehängte Protokoll trägt mehr Unterschriften als die PDF-Datei, an die es gehängt wurde.</translation>
    </message>
    <message id="What follows the signature is not exactly what a countersignature adds: something else was changed, added or cut off.">
        <source></source>
        <translation>Was auf die Unterschrift folgt, ist nicht genau, was eine Gegenzeichnung anfügt: Etwas anderes wurde geändert, angefügt oder abgeschnitten.</translation>
    </message>
    <message id="Another record is attached than the first signature covers.">
        <source></source>
        <translation>Ein anderes Protokoll ist angehängt, als die erste Unterschrift deckt.</translation>
    </message>
    <message id="This is not a PDF that Ambit makes.">
        <source></source>
        <translation>Das ist keine PDF-Datei, wie Ambit sie macht.</translation>
    </message>
    <message id="The file is not a sound PDF: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Datei ist keine einwandfreie PDF-Datei: %1</numerusform>
            <numerusform>Die Datei ist keine einwandfreie PDF-Datei: %1</numerusform>
        </translation>
    </message>
    <message id="This PDF can't be countersigned: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Diese PDF-Datei lässt sich nicht gegenzeichnen: %1.</numerusform>
            <numerusform>Diese PDF-Datei lässt sich nicht gegenzeichnen: %1.</numerusform>
        </translation>
    </message>
    <message id="Use the PDF as Ambit signed it.">
        <source></source>
        <translation>Die PDF-Datei so verwenden, wie Ambit sie unterschrieben hat.</translation>
    </message>
    <message id="The record's last countersignature is by another key.">
        <source></source>
        <translation>Die letzte Gegenzeichnung des Protokolls ist mit einem anderen Schlüssel.</translation>
    </message>
    <message id="Countersign the record and its PDF with the same key.">
        <source></source>
        <translation>Das Protokoll und seine PDF-Datei mit demselben Schlüssel gegenzeichnen.</translation>
    </message>
    <message id="The PDF is not that of the record before its last signature.">
        <source></source>
        <translation>Die PDF-Datei ist nicht die des Protokolls vor seiner letzten Unterschrift.</translation>
    </message>
    <message id="Give the PDF that belongs to the record.">
        <source></source>
        <translation>Die PDF-Datei angeben, die zum Protokoll gehört.</translation>
    </message>
    <message id="The bytes of this photo are missing.">
        <source></source>
        <translation>Die Bytes dieses Fotos fehlen.</translation>
    </message>
    <message id="This photo is not a JPEG in grey or colour of the size it was drawn for.">
        <source></source>
        <translation>Dieses Foto ist kein JPEG in Grau oder Farbe in der Größe, für die es gezeichnet wurde.</translation>
    </message>
    <message id="The drawn pages don't have exactly one place for this photo.">
        <source></source>
        <translation>Die gezeichneten Seiten haben nicht genau einen Platz für dieses Foto.</translation>
    </message>
    <message id="The drawn pages hold a signature already.">
        <source></source>
        <translation>Die gezeichneten Seiten enthalten schon eine Unterschrift.</translation>
    </message>
    <message id="The file is too large to be signed.">
        <source></source>
        <translation>Die Datei ist zu groß, um unterschrieben zu werden.</translation>
    </message>
    <message id="The drawn pages hold a form already.">
        <source></source>
        <translation>Die gezeichneten Seiten enthalten schon ein Formular.</translation>
    </message>
    <message id="The record is countersigned already; a PDF carries it as first signed.">
        <source></source>
        <translation>Das Protokoll ist schon gegengezeichnet; eine PDF-Datei trägt es, wie es zuerst unterschrieben wurde.</translation>
    </message>
    <message id="Make the PDF first, then countersign both.">
        <source></source>
        <translation>Zuerst die PDF-Datei machen, dann beide gegenzeichnen.</translation>
    </message>
    <message id="The record was signed with another key.">
        <source></source>
        <translation>Das Protokoll wurde mit einem anderen Schlüssel unterschrieben.</translation>
    </message>
    <message id="Sign the record and its PDF with the same key.">
        <source></source>
        <translation>Das Protokoll und seine PDF-Datei mit demselben Schlüssel unterschreiben.</translation>
    </message>
    <message id="The drawn pages can't be used: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die gezeichneten Seiten sind nicht verwendbar: %1</numerusform>
            <numerusform>Die gezeichneten Seiten sind nicht verwendbar: %1</numerusform>
        </translation>
    </message>
    <message id="%1 signed twice with the same key." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 hat zweimal mit demselben Schlüssel unterschrieben.</numerusform>
            <numerusform>%1 hat zweimal mit demselben Schlüssel unterschrieben.</numerusform>
        </translation>
    </message>
    <message id="This is not what was stored: its hash is another.">
        <source></source>
        <translation>Das ist nicht, was gespeichert wurde: Sein Hash ist ein anderer.</translation>
    </message>
    <message id="It bears no signature, or too many.">
        <source></source>
        <translation>Es trägt keine Unterschrift oder zu viele.</translation>
    </message>
    <message id="The record was signed by %1, not by its signer." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Protokoll wurde von %1 unterschrieben, nicht von seinem Unterzeichner.</numerusform>
            <numerusform>Das Protokoll wurde von %1 unterschrieben, nicht von seinem Unterzeichner.</numerusform>
        </translation>
    </message>
    <message id="The file is not in canonical form (RFC 8785): bytes were changed or it was reformatted.">
        <source></source>
        <translation>Die Datei ist nicht in kanonischer Form (RFC 8785): Bytes wurden geändert, oder sie wurde umformatiert.</translation>
    </message>
    <message id="A record has exactly “content” and “signatures”.">
        <source></source>
        <translation>Ein Protokoll hat genau „content“ und „signatures“.</translation>
    </message>
    <message id="This is not a record.">
        <source></source>
        <translation>Das ist kein Protokoll.</translation>
    </message>
    <message id="The record bears no signature.">
        <source></source>
        <translation>Das Protokoll trägt keine Unterschrift.</translation>
    </message>
    <message id="A record bears at most eight signatures.">
        <source></source>
        <translation>Ein Protokoll trägt höchstens acht Unterschriften.</translation>
    </message>
    <message id="The content's signer is %1, the key's is %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Unterzeichner des Inhalts ist %1, der des Schlüssels %2.</numerusform>
            <numerusform>Der Unterzeichner des Inhalts ist %1, der des Schlüssels %2.</numerusform>
        </translation>
    </message>
    <message id="Sign with the key of the person who walked the round.">
        <source></source>
        <translation>Mit dem Schlüssel der Person unterschreiben, die den Rundgang ging.</translation>
    </message>
    <message id="%1 has signed this record with this key already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 hat dieses Protokoll mit diesem Schlüssel schon unterschrieben.</numerusform>
            <numerusform>%1 hat dieses Protokoll mit diesem Schlüssel schon unterschrieben.</numerusform>
        </translation>
    </message>
    <message id="A countersignature is another person's, by a key of their own.">
        <source></source>
        <translation>Eine Gegenzeichnung ist die einer anderen Person mit eigenem Schlüssel.</translation>
    </message>
    <message id="The record bears eight signatures already, and can't bear more.">
        <source></source>
        <translation>Das Protokoll trägt schon acht Unterschriften; mehr kann es nicht tragen.</translation>
    </message>
    <message id="The countersigner is %1, the key's holder is %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Gegenzeichnende ist %1, der Schlüssel gehört %2.</numerusform>
            <numerusform>Der Gegenzeichnende ist %1, der Schlüssel gehört %2.</numerusform>
        </translation>
    </message>
    <message id="Sign with the countersigner's own key.">
        <source></source>
        <translation>Mit dem eigenen Schlüssel des Gegenzeichnenden unterschreiben.</translation>
    </message>
    <message id="A list is expected here.">
        <source></source>
        <translation>Hier wird eine Liste erwartet.</translation>
    </message>
    <message id="Plain text of at most 8192 bytes is expected here.">
        <source></source>
        <translation>Hier wird einfacher Text mit höchstens 8192 Bytes erwartet.</translation>
    </message>
    <message id="This word is not one of those that can stand here.">
        <source></source>
        <translation>Dieses Wort gehört nicht zu denen, die hier stehen können.</translation>
    </message>
    <message id="A SHA-256 in lower-case hex is expected here.">
        <source></source>
        <translation>Hier wird ein SHA-256 aus Hexziffern in Kleinschreibung erwartet.</translation>
    </message>
    <message id="A decimal number is expected here.">
        <source></source>
        <translation>Hier wird eine Dezimalzahl erwartet.</translation>
    </message>
    <message id="A time in UTC is expected here.">
        <source></source>
        <translation>Hier wird eine Zeit in UTC erwartet.</translation>
    </message>
    <message id="A date is expected here, as 2026-06-20.">
        <source></source>
        <translation>Hier wird ein Datum erwartet, wie 2026-06-20.</translation>
    </message>
    <message id="True or false is expected here.">
        <source></source>
        <translation>Hier wird true oder false erwartet.</translation>
    </message>
    <message id="The events' numbers don't follow each other.">
        <source></source>
        <translation>Die Nummern der Ereignisse folgen nicht aufeinander.</translation>
    </message>
    <message id="A round begins with the event “opened”.">
        <source></source>
        <translation>Ein Rundgang beginnt mit dem Ereignis „opened“.</translation>
    </message>
    <message id="A concluded round takes nothing more.">
        <source></source>
        <translation>Ein abgeschlossener Rundgang nimmt nichts mehr auf.</translation>
    </message>
    <message id="The round is not concluded.">
        <source></source>
        <translation>Der Rundgang ist nicht abgeschlossen.</translation>
    </message>
    <message id="A re-opened point was not settled again.">
        <source></source>
        <translation>Ein neu geöffneter Punkt wurde nicht wieder erledigt.</translation>
    </message>
    <message id="A round is opened once.">
        <source></source>
        <translation>Ein Rundgang wird einmal eröffnet.</translation>
    </message>
    <message id="A settled point must be re-opened before it is settled again.">
        <source></source>
        <translation>Ein erledigter Punkt muss neu geöffnet werden, bevor er wieder erledigt wird.</translation>
    </message>
    <message id="Only a settled point can be re-opened.">
        <source></source>
        <translation>Nur ein erledigter Punkt kann neu geöffnet werden.</translation>
    </message>
    <message id="Only a settled point is settled again.">
        <source></source>
        <translation>Nur ein erledigter Punkt wird noch einmal erledigt.</translation>
    </message>
    <message id="A quick run is asked about once.">
        <source></source>
        <translation>Nach schnell erledigten Punkten wird einmal gefragt.</translation>
    </message>
    <message id="What is asked is numbered without a gap.">
        <source></source>
        <translation>Was verlangt wird, ist lückenlos nummeriert.</translation>
    </message>
    <message id="Only an open question is answered.">
        <source></source>
        <translation>Nur eine offene Frage wird beantwortet.</translation>
    </message>
    <message id="Only what is open is declined.">
        <source></source>
        <translation>Nur was offen ist, wird abgelehnt.</translation>
    </message>
    <message id="Something that was asked is open still.">
        <source></source>
        <translation>Etwas, das verlangt wurde, ist noch offen.</translation>
    </message>
    <message id="There is no conclusion to take back.">
        <source></source>
        <translation>Es gibt keinen Abschluss, der zurückzunehmen wäre.</translation>
    </message>
    <message id="A blocked stand is blocked once.">
        <source></source>
        <translation>Ein gesperrter Standort wird einmal gesperrt.</translation>
    </message>
    <message id="Only a blocked stand is freed.">
        <source></source>
        <translation>Nur ein gesperrter Standort wird freigegeben.</translation>
    </message>
    <message id="A marked area is marked once.">
        <source></source>
        <translation>Eine markierte Fläche wird einmal markiert.</translation>
    </message>
    <message id="Only a marked area is cleared.">
        <source></source>
        <translation>Nur eine markierte Fläche wird freigegeben.</translation>
    </message>
    <message id="The light is said to be what it was not.">
        <source></source>
        <translation>Vom Licht wird gesagt, was es nicht war.</translation>
    </message>
    <message id="A round's own signature can't be part of what it signs.">
        <source></source>
        <translation>Die eigene Unterschrift eines Rundgangs kann nicht Teil dessen sein, was sie unterschreibt.</translation>
    </message>
    <message id="Degrees from -%1 to %1 are expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hier werden Grad von -%1 bis %1 erwartet.</numerusform>
            <numerusform>Hier werden Grad von -%1 bis %1 erwartet.</numerusform>
        </translation>
    </message>
    <message id="32 hex digits in lower case are expected here.">
        <source></source>
        <translation>Hier werden 32 Hexziffern in Kleinschreibung erwartet.</translation>
    </message>
    <message id="A list of %1 to %2 points is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hier wird eine Liste mit %1 bis %2 Punkten erwartet.</numerusform>
            <numerusform>Hier wird eine Liste mit %1 bis %2 Punkten erwartet.</numerusform>
        </translation>
    </message>
    <message id="This kind of event is not known: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Diese Art von Ereignis ist nicht bekannt: %1.</numerusform>
            <numerusform>Diese Art von Ereignis ist nicht bekannt: %1.</numerusform>
        </translation>
    </message>
    <message id="The events' numbers don't follow each other: %1 is expected." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Nummern der Ereignisse folgen nicht aufeinander: Erwartet wird %1.</numerusform>
            <numerusform>Die Nummern der Ereignisse folgen nicht aufeinander: Erwartet wird %1.</numerusform>
        </translation>
    </message>
    <message id="The airframe has no such %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das fehlt im Muster: %1.</numerusform>
            <numerusform>Das fehlt im Muster: %1.</numerusform>
        </translation>
    </message>
    <message id="walk">
        <source></source>
        <translation>Weg</translation>
    </message>
    <message id="point">
        <source></source>
        <translation>Punkt</translation>
    </message>
    <message id="state of a setting">
        <source></source>
        <translation>Zustand einer Stellung</translation>
    </message>
    <message id="There are too many combinations of settings to plan with.">
        <source></source>
        <translation>Es gibt zu viele Verbindungen von Stellungen, um damit zu planen.</translation>
    </message>
    <message id="Let fewer points ask for settings.">
        <source></source>
        <translation>Weniger Punkte nach Stellungen verlangen lassen.</translation>
    </message>
    <message id="There are too many conditions on changes of settings to plan with.">
        <source></source>
        <translation>Es gibt zu viele Bedingungen an Änderungen von Stellungen, um damit zu planen.</translation>
    </message>
    <message id="This step can't be done: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieser Schritt geht nicht: %1.</numerusform>
            <numerusform>Dieser Schritt geht nicht: %1.</numerusform>
        </translation>
    </message>
    <message id="This piece is of another file than was asked for.">
        <source></source>
        <translation>Dieses Stück ist von einer anderen Datei als verlangt.</translation>
    </message>
    <message id="This piece begins at byte %1; byte %2 was asked for." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieses Stück beginnt bei Byte %1; verlangt war Byte %2.</numerusform>
            <numerusform>Dieses Stück beginnt bei Byte %1; verlangt war Byte %2.</numerusform>
        </translation>
    </message>
    <message id="This file is said to have %1 bytes; %2 were expected." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Diese Datei soll %1 Bytes haben; erwartet waren %2.</numerusform>
            <numerusform>Diese Datei soll %1 Bytes haben; erwartet waren %2.</numerusform>
        </translation>
    </message>
    <message id="This file is said to have %1 bytes; %2 at most were expected." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Diese Datei soll %1 Bytes haben; erwartet waren höchstens %2.</numerusform>
            <numerusform>Diese Datei soll %1 Bytes haben; erwartet waren höchstens %2.</numerusform>
        </translation>
    </message>
    <message id="This piece has no bytes, or more than its file.">
        <source></source>
        <translation>Dieses Stück hat keine Bytes oder mehr als seine Datei.</translation>
    </message>
    <message id="The bytes that came are not the file that was asked for.">
        <source></source>
        <translation>Die angekommenen Bytes sind nicht die verlangte Datei.</translation>
    </message>
    <message id="Another file is on its way.">
        <source></source>
        <translation>Eine andere Datei ist unterwegs.</translation>
    </message>
    <message id="Ask again when it is here.">
        <source></source>
        <translation>Noch einmal verlangen, wenn sie da ist.</translation>
    </message>
    <message id="A file was asked for before the last question was answered.">
        <source></source>
        <translation>Eine Datei wurde verlangt, bevor die letzte Frage beantwortet war.</translation>
    </message>
    <message id="A piece of a file came that nobody had asked for.">
        <source></source>
        <translation>Ein Stück einer Datei kam, die niemand verlangt hatte.</translation>
    </message>
    <message id="An answer came that nobody had asked for.">
        <source></source>
        <translation>Eine Antwort kam, die niemand verlangt hatte.</translation>
    </message>
    <message id="A one-time word needs %1 random bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ein Einmalwort braucht %1 zufällige Bytes.</numerusform>
            <numerusform>Ein Einmalwort braucht %1 zufällige Bytes.</numerusform>
        </translation>
    </message>
    <message id="A plain text of 1 to %1 bytes is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hier wird einfacher Text mit 1 bis %1 Bytes erwartet.</numerusform>
            <numerusform>Hier wird einfacher Text mit 1 bis %1 Bytes erwartet.</numerusform>
        </translation>
    </message>
    <message id="%1 lower-case hex digits are expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hier werden %1 Hexziffern in Kleinschreibung erwartet.</numerusform>
            <numerusform>Hier werden %1 Hexziffern in Kleinschreibung erwartet.</numerusform>
        </translation>
    </message>
    <message id="A one-time word is %1 letters and digits." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ein Einmalwort hat %1 Buchstaben und Ziffern.</numerusform>
            <numerusform>Ein Einmalwort hat %1 Buchstaben und Ziffern.</numerusform>
        </translation>
    </message>
    <message id="Where nothing is had there is no last event.">
        <source></source>
        <translation>Wo nichts da ist, gibt es kein letztes Ereignis.</translation>
    </message>
    <message id="A list of at most %1 names is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hier wird eine Liste mit höchstens %1 Namen erwartet.</numerusform>
            <numerusform>Hier wird eine Liste mit höchstens %1 Namen erwartet.</numerusform>
        </translation>
    </message>
    <message id="A name is a plain text of 1 to %1 bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ein Name ist einfacher Text mit 1 bis %1 Bytes.</numerusform>
            <numerusform>Ein Name ist einfacher Text mit 1 bis %1 Bytes.</numerusform>
        </translation>
    </message>
    <message id="A statement is an object in canonical JSON.">
        <source></source>
        <translation>Eine Aussage ist ein Objekt in kanonischem JSON.</translation>
    </message>
    <message id="record.json comes first, record.pdf second.">
        <source></source>
        <translation>record.json kommt zuerst, record.pdf danach.</translation>
    </message>
    <message id="A record has a file at least.">
        <source></source>
        <translation>Ein Protokoll hat mindestens eine Datei.</translation>
    </message>
    <message id="Base64url without padding is expected here.">
        <source></source>
        <translation>Hier wird Base64url ohne Füllzeichen erwartet.</translation>
    </message>
    <message id="This piece reaches beyond its file's end.">
        <source></source>
        <translation>Dieses Stück reicht über das Ende seiner Datei hinaus.</translation>
    </message>
    <message id="This code is not known.">
        <source></source>
        <translation>Dieser Code ist nicht bekannt.</translation>
    </message>
    <message id="Only the %1 may send %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Nur die Seite „%1“ darf %2 senden.</numerusform>
            <numerusform>Nur die Seite „%1“ darf %2 senden.</numerusform>
        </translation>
    </message>
    <message id="watcher">
        <source></source>
        <translation>Mitsehender</translation>
    </message>
    <message id="walker">
        <source></source>
        <translation>Gehender</translation>
    </message>
    <message id="This kind of frame is not known: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Diese Art von Nachricht ist nicht bekannt: %1</numerusform>
            <numerusform>Diese Art von Nachricht ist nicht bekannt: %1</numerusform>
        </translation>
    </message>
    <message id="The other device speaks version %1 of the watch protocol, this one version %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das andere Gerät spricht Version %1 des Protokolls zum Mitsehen, dieses Version %2.</numerusform>
            <numerusform>Das andere Gerät spricht Version %1 des Protokolls zum Mitsehen, dieses Version %2.</numerusform>
        </translation>
    </message>
    <message id="A frame is at most %1 bytes; this one has %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Eine Nachricht hat höchstens %1 Bytes; diese hat %2.</numerusform>
            <numerusform>Eine Nachricht hat höchstens %1 Bytes; diese hat %2.</numerusform>
        </translation>
    </message>
    <message id="A frame is canonical JSON, whole; this is not.">
        <source></source>
        <translation>Eine Nachricht ist vollständiges kanonisches JSON; diese ist keines.</translation>
    </message>
    <message id="This invitation is of version %1; this Ambit reads version 1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Diese Einladung hat Version %1; dieses Ambit liest Version 1.</numerusform>
            <numerusform>Diese Einladung hat Version %1; dieses Ambit liest Version 1.</numerusform>
        </translation>
    </message>
    <message id="%1 is said once, after %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wird einmal gesagt, nach %2.</numerusform>
            <numerusform>%1 wird einmal gesagt, nach %2.</numerusform>
        </translation>
    </message>
    <message id="The first thing a walker says is %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das Erste, was der Gehende sagt, ist %1.</numerusform>
            <numerusform>Das Erste, was der Gehende sagt, ist %1.</numerusform>
        </translation>
    </message>
    <message id="Only the watcher may send %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Nur der Mitsehende darf %1 senden.</numerusform>
            <numerusform>Nur der Mitsehende darf %1 senden.</numerusform>
        </translation>
    </message>
    <message id="Another round was told of before the last one was answered.">
        <source></source>
        <translation>Ein anderer Rundgang wurde angekündigt, bevor der letzte beantwortet war.</translation>
    </message>
    <message id="This round was told of already.">
        <source></source>
        <translation>Dieser Rundgang wurde schon angekündigt.</translation>
    </message>
    <message id="This event is of another round than was told of.">
        <source></source>
        <translation>Dieses Ereignis ist von einem anderen Rundgang als angekündigt.</translation>
    </message>
    <message id="Event %1 came where event %2 is the next." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ereignis %1 kam, wo Ereignis %2 das nächste ist.</numerusform>
            <numerusform>Ereignis %1 kam, wo Ereignis %2 das nächste ist.</numerusform>
        </translation>
    </message>
    <message id="More events came than were asked for.">
        <source></source>
        <translation>Es kamen mehr Ereignisse als verlangt.</translation>
    </message>
    <message id="The first event of a round opens it, and its hash is the round's id.">
        <source></source>
        <translation>Das erste Ereignis eines Rundgangs eröffnet ihn, und sein Hash ist die Kennung des Rundgangs.</translation>
    </message>
    <message id="This round is too long to be followed.">
        <source></source>
        <translation>Dieser Rundgang ist zu lang, um ihn mitzusehen.</translation>
    </message>
    <message id="An answer came to what nobody had said.">
        <source></source>
        <translation>Eine Antwort kam auf etwas, das niemand gesagt hatte.</translation>
    </message>
    <message id="This record is of another round than was told of.">
        <source></source>
        <translation>Dieses Protokoll ist von einem anderen Rundgang als angekündigt.</translation>
    </message>
    <message id="This isn't the record that the round's last event names.">
        <source></source>
        <translation>Das ist nicht das Protokoll, das das letzte Ereignis des Rundgangs nennt.</translation>
    </message>
    <message id="What was said last isn't answered yet.">
        <source></source>
        <translation>Das zuletzt Gesagte ist noch nicht beantwortet.</translation>
    </message>
    <message id="Wait until it is.">
        <source></source>
        <translation>Warten, bis es so weit ist.</translation>
    </message>
    <message id="The last record offered isn't answered yet.">
        <source></source>
        <translation>Das zuletzt angebotene Protokoll ist noch nicht beantwortet.</translation>
    </message>
    <message id="%1 is said once." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 wird einmal gesagt.</numerusform>
            <numerusform>%1 wird einmal gesagt.</numerusform>
        </translation>
    </message>
    <message id="Nothing but %1 may be said before %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Nichts als %1 darf vor %2 gesagt werden.</numerusform>
            <numerusform>Nichts als %1 darf vor %2 gesagt werden.</numerusform>
        </translation>
    </message>
    <message id="Only the walker may send %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Nur der Gehende darf %1 senden.</numerusform>
            <numerusform>Nur der Gehende darf %1 senden.</numerusform>
        </translation>
    </message>
    <message id="%1 names a round that isn't walked here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 nennt einen Rundgang, der hier nicht gegangen wird.</numerusform>
            <numerusform>%1 nennt einen Rundgang, der hier nicht gegangen wird.</numerusform>
        </translation>
    </message>
    <message id="The first %1 of a round names its last event's hash." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Das erste %1 eines Rundgangs nennt den Hash seines letzten Ereignisses.</numerusform>
            <numerusform>Das erste %1 eines Rundgangs nennt den Hash seines letzten Ereignisses.</numerusform>
        </translation>
    </message>
    <message id="Set this round's copy on the watcher's device aside and follow it anew.">
        <source></source>
        <translation>Die Kopie dieses Rundgangs auf dem Gerät des Mitsehenden beiseitelegen und ihm neu folgen.</translation>
    </message>
    <message id="The watcher has %1 events of this round, the walker %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Mitsehende hat %1 Ereignisse dieses Rundgangs, der Gehende %2.</numerusform>
            <numerusform>Der Mitsehende hat %1 Ereignisse dieses Rundgangs, der Gehende %2.</numerusform>
        </translation>
    </message>
    <message id="The walker's log can't be read now.">
        <source></source>
        <translation>Die Aufzeichnung des Gehenden ist gerade nicht lesbar.</translation>
    </message>
    <message id="Event %1 of this round is another on the two devices." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ereignis %1 dieses Rundgangs ist auf den zwei Geräten verschieden.</numerusform>
            <numerusform>Ereignis %1 dieses Rundgangs ist auf den zwei Geräten verschieden.</numerusform>
        </translation>
    </message>
    <message id="Only the first %1 of a round names an event's hash." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Nur das erste %1 eines Rundgangs nennt den Hash eines Ereignisses.</numerusform>
            <numerusform>Nur das erste %1 eines Rundgangs nennt den Hash eines Ereignisses.</numerusform>
        </translation>
    </message>
    <message id="%1 says %2 events; from %3 to %4 are possible." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 sagt %2 Ereignisse; möglich sind %3 bis %4.</numerusform>
            <numerusform>%1 sagt %2 Ereignisse; möglich sind %3 bis %4.</numerusform>
        </translation>
    </message>
    <message id="%1 takes room back, or says nothing new." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 nimmt Platz zurück oder sagt nichts Neues.</numerusform>
            <numerusform>%1 nimmt Platz zurück oder sagt nichts Neues.</numerusform>
        </translation>
    </message>
    <message id="%1 came before the last one was answered." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 kam, bevor das letzte beantwortet war.</numerusform>
            <numerusform>%1 kam, bevor das letzte beantwortet war.</numerusform>
        </translation>
    </message>
    <message id="Event %1 of this round is too large to be sent." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ereignis %1 dieses Rundgangs ist zu groß, um gesendet zu werden.</numerusform>
            <numerusform>Ereignis %1 dieses Rundgangs ist zu groß, um gesendet zu werden.</numerusform>
        </translation>
    </message>
    <message id="“fit” can't stand beside where this point's value is going.">
        <source></source>
        <translation>„fit“ kann nicht neben dem stehen, wohin der Wert dieses Punkts geht.</translation>
    </message>
    <message id="Where a value is going is told of a settled point.">
        <source></source>
        <translation>Wohin ein Wert geht, wird von einem erledigten Punkt gesagt.</translation>
    </message>
    <message id="%1 comes to its limit before the next flight ends, as its values go." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 kommt nach dem Verlauf der Werte vor dem Ende des nächsten Flugs an seine Grenze.</numerusform>
            <numerusform>%1 kommt nach dem Verlauf der Werte vor dem Ende des nächsten Flugs an seine Grenze.</numerusform>
        </translation>
    </message>
    <message id="true is expected here, or nothing.">
        <source></source>
        <translation>Hier wird true erwartet, oder nichts.</translation>
    </message>
    <message id="The value isn't the one measured in the photo.">
        <source></source>
        <translation>Der Wert ist nicht der im Foto gemessene.</translation>
    </message>
    <message id="A list that isn't empty is expected here.">
        <source></source>
        <translation>Hier wird eine Liste erwartet, die nicht leer ist.</translation>
    </message>
    <message id="What was measured in a photo needs that photo.">
        <source></source>
        <translation>Was in einem Foto gemessen wurde, braucht dieses Foto.</translation>
    </message>
    <message id="Pixels from -100000 to 100000 with at most 2 decimals are expected here.">
        <source></source>
        <translation>Hier werden Pixel von -100000 bis 100000 mit höchstens 2 Nachkommastellen erwartet.</translation>
    </message>
    <message id="Zero or more is expected here.">
        <source></source>
        <translation>Hier wird null oder mehr erwartet.</translation>
    </message>
    <message id="At least %1 marks are expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Hier werden mindestens %1 Marken erwartet.</numerusform>
            <numerusform>Hier werden mindestens %1 Marken erwartet.</numerusform>
        </translation>
    </message>
    <message id="Without a card only an angle can be measured.">
        <source></source>
        <translation>Ohne Karte lässt sich nur ein Winkel messen.</translation>
    </message>
    <message id="Lay a card beside it, and take the picture again.">
        <source></source>
        <translation>Eine Karte danebenlegen und das Bild noch einmal aufnehmen.</translation>
    </message>
    <message id="A line has two ends.">
        <source></source>
        <translation>Eine Linie hat zwei Enden.</translation>
    </message>
    <message id="The limit's own unit isn't named again.">
        <source></source>
        <translation>Die Einheit der Grenze selbst wird nicht noch einmal genannt.</translation>
    </message>
    <message id="Leave the unit out.">
        <source></source>
        <translation>Die Einheit weglassen.</translation>
    </message>
    <message id="The airframe doesn't say that this stands against the conclusion.">
        <source></source>
        <translation>Die Beschreibung sagt nicht, dass das gegen den Schluss steht.</translation>
    </message>
    <message id="It isn't said what the value with this uncertainty is read from.">
        <source></source>
        <translation>Es ist nicht gesagt, woran der Wert mit dieser Unsicherheit abgelesen wird.</translation>
    </message>
    <message id="Add %1, or take the uncertainty out." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ergänzen oder die Unsicherheit weglassen.</numerusform>
            <numerusform>%1 ergänzen oder die Unsicherheit weglassen.</numerusform>
        </translation>
    </message>
    <message id="read on a gauge">
        <source></source>
        <translation>an einem Messgerät abgelesen</translation>
    </message>
    <message id="taken with a ruler or caliper">
        <source></source>
        <translation>mit Lineal oder Messschieber gemessen</translation>
    </message>
    <message id="read on the dipstick">
        <source></source>
        <translation>am Messstab abgelesen</translation>
    </message>
    <message id="read on a meter">
        <source></source>
        <translation>an einem Zähler abgelesen</translation>
    </message>
    <message id="counted">
        <source></source>
        <translation>gezählt</translation>
    </message>
    <message id="judged by eye">
        <source></source>
        <translation>mit dem Auge geschätzt</translation>
    </message>
    <message id="An uncertainty goes with what the value was read from.">
        <source></source>
        <translation>Eine Unsicherheit gehört zu dem, woran der Wert abgelesen wurde.</translation>
    </message>
    <message id="What was read from something has a value.">
        <source></source>
        <translation>Was irgendwo abgelesen wurde, hat einen Wert.</translation>
    </message>
    <message id="A value is read from one thing, or measured in a photo.">
        <source></source>
        <translation>Ein Wert wird an einem Ding abgelesen oder in einem Foto gemessen.</translation>
    </message>
    <message id="An uncertainty is zero or more, and goes with what the value was read from.">
        <source></source>
        <translation>Eine Unsicherheit ist null oder mehr und gehört zu dem, woran der Wert abgelesen wurde.</translation>
    </message>
    <message id="This record was made by a newer Ambit: its version is %1, and this one knows those up to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieses Protokoll stammt von einem neueren Ambit: Es hat Version %1, dieses kennt die bis %2.</numerusform>
            <numerusform>Dieses Protokoll stammt von einem neueren Ambit: Es hat Version %1, dieses kennt die bis %2.</numerusform>
        </translation>
    </message>
    <message id="Update this Ambit.">
        <source></source>
        <translation>Dieses Ambit aktualisieren.</translation>
    </message>
    <message id="This Ambit can't read the walker's next event. %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Dieses Ambit kann das nächste Ereignis des Gehenden nicht lesen. %1</numerusform>
            <numerusform>Dieses Ambit kann das nächste Ereignis des Gehenden nicht lesen. %1</numerusform>
        </translation>
    </message>
    <message id="measured in a photo">
        <source></source>
        <translation>in einem Foto gemessen</translation>
    </message>
    <message id="Nobody looks ahead by less than zero: this is %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Weniger als null voraus schaut niemand: hier steht %1.</numerusform>
            <numerusform>Weniger als null voraus schaut niemand: hier steht %1.</numerusform>
        </translation>
    </message>
    <message id="Of a value that nobody measured it was said whether its part was renewed.">
        <source></source>
        <translation>Von einem Wert, den niemand gemessen hat, wurde gesagt, ob sein Teil erneuert wurde.</translation>
    </message>
    <message id="Whether a part was renewed was said in two ways by people who didn't know of each other.">
        <source></source>
        <translation>Ob ein Teil erneuert wurde, haben zwei verschieden gesagt, die nichts voneinander wussten.</translation>
    </message>
    <message id="The value that it speaks of was let go.">
        <source></source>
        <translation>Der Wert, von dem es spricht, wurde entfernt.</translation>
    </message>
    <message id="It says where a part's values begin anew.">
        <source></source>
        <translation>Es sagt, wo die Werte eines Teils neu beginnen.</translation>
    </message>
    <message id="That a part was renewed is said afterwards by the owner or a mechanic.">
        <source></source>
        <translation>Dass ein Teil erneuert wurde, sagt nachträglich der Halter oder ein Mechaniker.</translation>
    </message>
    <message id="No value is chosen.">
        <source></source>
        <translation>Kein Wert ist gewählt.</translation>
    </message>
    <message id="Choose the first one after the part was renewed.">
        <source></source>
        <translation>Den ersten nach der Erneuerung des Teils wählen.</translation>
    </message>
    <message id="It can only be read here. Copy it to where you may write.">
        <source></source>
        <translation>Es lässt sich hier nur lesen. Dorthin kopieren, wo geschrieben werden darf.</translation>
    </message>
    <message id="Look whether its folder is there and may be written to.">
        <source></source>
        <translation>Prüfen, ob sein Ordner da ist und beschrieben werden darf.</translation>
    </message>
    <message id="The folder could not be read to its end: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Der Ordner ließ sich nicht bis zum Ende lesen: %1.</numerusform>
            <numerusform>Der Ordner ließ sich nicht bis zum Ende lesen: %1.</numerusform>
        </translation>
    </message>
    <message id="Look whether you may read all of it.">
        <source></source>
        <translation>Prüfen, ob alles darin gelesen werden darf.</translation>
    </message>
    <message id="The records bear two serial numbers: %1 and %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Die Protokolle tragen zwei Werknummern: %1 und %2.</numerusform>
            <numerusform>Die Protokolle tragen zwei Werknummern: %1 und %2.</numerusform>
        </translation>
    </message>
</context>
</TS>
