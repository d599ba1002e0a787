<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
<context>
    <name></name>
    <message id="The archive has no record of this aircraft.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Look at its registration, or import its records.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="An aircraft needs a registration and a serial number.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Fill in both.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The airframe's text is not that of its hash.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive knows %1 with the serial number %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Look at the data plate; one registration is one machine here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive is damaged: this is not what was stored.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Keep the file, copy it away, and go on with a backup.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive is damaged, and so would be its copy: %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Nothing was written. Go on with an earlier backup.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is a file already; a backup never overwrites one.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Choose another name.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The backup was stopped; nothing is left of it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing was changed. Try again; if it stays so, look at the disk.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The disk is full. Make room and try again; nothing was lost.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Another program has the archive open. Close it and try again.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The file is damaged. Keep it, copy it away, and go on with a backup or a new archive.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive could not %1: %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The archive has no such record to go on after.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Search anew.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="What was said is not canonical JSON.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is neither a record nor a photo nor an airframe.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Give record.json, record.pdf, or what “ambit archive export” wrote.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="No record here names this photo.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Import the record it belongs to with it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is another record than was announced.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing of it was kept.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="More than 32768 records bear the very same time.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Look at where they come from.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The photo's bytes are not those of its hash.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Take the photo again.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is not canonical.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="An event of this round is damaged in the archive.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive has no such round.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is not the next event of the round.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Another program may be walking it; open the round again.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive has no such round, and this event does not open it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive does not know the aircraft %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Add the aircraft first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The event names a photo that is not there.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Give the photo's bytes with it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive has this record already.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Open the round again.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Two logs of one round differ: it was walked on two devices.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Both archives keep theirs; conclude one of them and let the other be.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no such archive.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Look at its name.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is the archive itself.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Give another.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The file breaks off or is damaged: what follows in it can't be read.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Ask for it again. What came before it is taken in.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The file breaks off or is damaged.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is larger than 512 MiB.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="It is no record or photo.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Leave out control characters and fill in what is empty.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A signature comes with its record.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Seal the round.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Something was done after it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive is damaged: a record can't be unpacked.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive has no such record.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This record is of another aircraft.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Look at its identity.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This record is the latest of its file: the next one names it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Let it go when there are later ones.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This record says what was let go: without it the chain breaks.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="No record is named that is to go.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing was changed. Keep the file, copy it away, and go on with a backup or a new archive.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive is damaged: the file was cut off.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive is damaged: %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="This database is not an Ambit archive.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Choose another file.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive is damaged: its version is %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="This archive was made by a newer Ambit.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Update Ambit; the archive is untouched.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Only a concluded round is signed.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Conclude it first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This key belongs to %1; the round was walked by %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Sign with the key of the person who walked it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The folder could not be made: %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Choose another folder.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The check was stopped.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A record that came after it is gone, and nothing says which.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This photo is not what was stored.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The record that sealed this round is not here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A search can't find it: its words are gone.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The records hold, but the archive around them is damaged: %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="It doesn't hold as it was kept by an older Ambit.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Go on with a backup.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Its signature is gone.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="It isn't in its place: it was moved to another aircraft or time.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="What the archive keeps beside it isn't what it says.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This day lies outside the calendar known here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Use a day in the years 1 to 9999.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no such day.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Give a day of the calendar, in the years 1 to 9999.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is not a date.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Write a day of the calendar like 2026-06-20.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is not a decimal number.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Write it like 24.5: digits, one point where needed, at most 15 digits.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This sum takes more than 15 digits.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Use fewer digits or fewer decimals.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1: %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The folder could not be synced to disk">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The file could not be opened">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is not a regular file.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The file is larger than %1 bytes." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The file could not be read">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The file could not be made">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The file could not be written">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="“%1”" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="This is not a time.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Write it like %1, in the years 1970 to 9999." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="No record says when it was last done.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="No record says when the part was fitted.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 is past: %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Does the type certificate ask for this item in flight by day under visual flight rules?">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="What the aircraft's certification asks for can't be deferred.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Does the aircraft's equipment list, or its list of kinds of operations, ask for it?">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="What the aircraft's own lists ask for can't be deferred.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Does a rule for the flights in view ask for it (14 CFR 91.205 or another)?">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A rule asks for it on such flights: it can't be deferred for them.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Does an airworthiness directive ask for it to work?">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A directive asks for it: it can't be deferred.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Has it been removed, or deactivated, and a placard put up (“Inoperative” where it was deactivated)?">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="It must be removed or deactivated, and placarded, first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Has a pilot or mechanic with the certificate and rating for it found that it is no hazard as it is?">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Somebody who may must find first that it is no hazard.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There are %1 questions, and %2 answers." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Answer each of them, in their order.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Have it put right, or do what the question asks for.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="An assessment of something nobody found.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 was assessed though it had been put right." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 was assessed twice by people who didn't know of each other." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="A rectification of something nobody found.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 was put right twice." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="At %1 serial %2 was taken off, but %3 had been fitted." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="At %1 a part was fitted though one was there." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Who says whose key is trusted isn't the owner.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A key was revoked by somebody whose it isn't and who isn't the owner.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The counter %1 runs backwards: %2, then %3." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1, found on %2 by %3 (%4)" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 grounds the aircraft until it is put right." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 was not assessed: put it right, or defer it on a stated basis." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 was deferred until %2, which is past." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 was deferred until %2 says %3; it says %4." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="14 CFR 91.417(b)(1): a year has passed since the work.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="It is the latest: the next record names it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="14 CFR 91.417(b)(3): a discrepancy in it isn't put right and seen sound yet.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="14 CFR 91.417(b)(2): it says what the aircraft's times, parts or inspections are now.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="14 CFR 91.417 doesn't ask for rounds; nothing in it is open.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="14 CFR 91.417(b)(1): the work was repeated or superseded since.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="14 CFR 91.417(b)(1): records of work stay for a year, or until it is repeated or superseded.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="14 CFR 91.417(b)(3): what it is about was put right and seen sound.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Later readings say what the counters are now.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="It says who owns the aircraft, whose word counts, or what was let go.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The archive is damaged: what is kept about a record can't be read.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="days">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 runs backwards, from %2 to %3." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Correct what is wrong; where a counter was replaced, give the past from then on.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The counter %1" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The calendar">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="What the counter %1 read when this was last done is not known." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Enter it from the logbook.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The day when this was last done is not known.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="What the counter %1 read when this part was fitted is not known." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="What this part had run by %1 when it was fitted is not known." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Enter it from the part's papers; a new part had run 0.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The day when this part's life began is not known.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Enter it from the part's papers.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The counter %1 has no reading now." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Read it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Today's date is not known.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Set the clock, or enter it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This span is empty.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Give its length.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1; last done %2 late, within its allowance" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1; last done %2 late" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="unknown: %1" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="due on %1, %2 left" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="due at %1, %2 left" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="was due on %1, passed by %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="was due at %1, passed by %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1; allowed by at most %2, and only: %3" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 to %2 %3" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="at least %1 %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="at most %1 %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="no limit">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is not an X.509 certificate in DER.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This certificate's key is not meant for signing.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The certificate's own signature doesn't hold.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The certificate's life has no beginning or no end.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The certificate doesn't bear exactly one name.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A counter doesn't count below 0.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This counter is there twice.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The earlier records must be sorted, each once.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Work is approved with the number of a certificate (14 CFR 43.9(a)(4)).">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A reading says at least one counter.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A part change takes a part off, puts one on, or both.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing is said that the key is good for.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="No record is named that was let go.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A deferral under 91.213(d) answers its questions.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This basis needs a reference: which list, which item.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is no kind of record.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is not a key file.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A key file holds an ENCRYPTED PRIVATE KEY and a CERTIFICATE, as “ambit key new” writes them.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A key's name is one line of 1 to 64 characters.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A passphrase has 8 to 1024 bytes.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Choose another one.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This passphrase doesn't unlock the key.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Try again.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The key file's certificate belongs to another key.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 is not settled." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is still open." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is still owed: %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The finding at %1 grounds the aircraft." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is not inspected, and nothing is stated that allows flight without it." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is to be looked at again: asked by %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 asks %2 and has no answer yet." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Something was done after %1: the last look comes last." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="A table of agreement is square and counts.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is nothing that both settled.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Both settled every point with the same word: chance alone would agree as well, and kappa is undefined.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Lay two rounds of the same walk on the same aircraft side by side.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is one and the same round.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="These are rounds of two aircraft.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="These are two different walks.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The airframe's description was changed between these rounds.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is no round: it doesn't begin with the event “opened”.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This field is missing.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A list of 3 to 20 corners is expected here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A corner is two decimal strings, metres from -100 to 100 with at most 3 decimals.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A time like 2026-06-20T05:30:00.000Z is expected here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A point is expected here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 and %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1, %2 and %3 more" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 can't be settled now" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is added" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 are added" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 can be settled again" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is now settled here" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 are now settled here" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is now settled from %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 are now settled from %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is left out" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 are left out" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 now comes first" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 now come first" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 now comes after %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 now come after %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is added first" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 are added first" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is added after %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 are added after %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The round goes on at %1" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 was reached out of turn" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is to be settled again" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Asked by %1: look again at %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The second look at %1 is declined" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is sound" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is a finding" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is not inspected" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 can't be used" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 can be used again" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is in the way" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 isn't in the way any more" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The light is low">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The light is good again">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="After an interruption">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="What was settled quickly is looked at again">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The flight goes into the dark">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The flight doesn't go into the dark">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1: %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1. %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1, and %2 more." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The airframe has no such zone.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing is left to settle at %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is wanted next" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 or %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 can't be used: %2" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="If it can be used again, say so first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This walk has no such point.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 is settled from %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Go there first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 needs %2: %3." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Change the setting first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 comes before %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Settle it first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 is closed; %2 is seen through it." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Open it, or settle the point as not inspected.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 isn't measured." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Leave the value out.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 is measured and has no value." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Give its %1 in %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 %2 is out of the limit (%3): that isn't sound." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Measure again, or settle it as a finding.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 is settled already." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Re-open it first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Not inspected needs a reason.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say why.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A finding needs words.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say what was found.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A finding at %1 grounds the aircraft." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Give it the class “grounds”.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This round is opened already.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A new order needs a reason.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The airframe has no such stand.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 is reached only from %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The airframe has no such setting.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 can't be brought from “%2” to “%3”." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is changed from %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 may be changed only when %2 is settled sound." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Re-opening needs a reason.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 isn't settled; it can't be re-opened." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The airframe has no such opening.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 isn't open." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 is open already." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The round isn't paused.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A note needs words.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A stand that can't be used needs a reason.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 is blocked already." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 isn't blocked." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The next area to be marked is number %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="A marked area needs a reason.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say what is there.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="More than %1 areas can't be marked." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Clear one, or mark one larger area.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Mark it again.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The marked area covers where you stand.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Mark it beside you.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no marked area number %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The light is low already.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The light is good already.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="What is asked next has number %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="More than %1 things can't be asked in a round." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="This was said of another round.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This was said already.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say it anew if it is meant again.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A look again needs a point.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say where.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This needs words.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 things are asked already that are still open." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Wait until one is settled, answered or declined.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing was asked with number %1." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="A remark needs no answer.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="What was asked with number %1 isn't open." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="An answer needs words.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="To look again at %1 isn't answered with words." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Settle the point again, or decline with a reason.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Declining needs a reason.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A round is walked on one's own from its beginning.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Open a new round to walk it on your own.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A portion has 1 to %1 points." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="%1 stands in the portion twice." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Nothing is being looked at in a portion.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="One goes back by 1 to %1 points." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="An interruption takes no less than no time.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="That isn't what the rule asks for again.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This was asked about once in this round.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="These points were not settled there.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The flight goes into the dark already.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The flight doesn't go into the dark.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The round can't be concluded as fit: %1" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The round can't be concluded as not fit: %1" numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="And %1 more stand against it." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Settle what is left, close what is open, answer what is asked.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no conclusion to withdraw.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Withdrawing a conclusion needs a reason.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Only a concluded round can be signed.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The round is %1's; the key is %2's." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="The round is paused.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Resume it first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The round is concluded: nothing more can be asked in it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Ask for the conclusion to be taken back first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The round is concluded.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Withdraw the conclusion first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The round is signed and sealed; nothing can be added.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Open a new round.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A portion is being looked at: nothing is settled meanwhile.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say first that you are down again.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The airframe has no such walk.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The plan names something that this walk doesn't have.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This round was opened with another airframe description.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Use the description it was opened with.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The airframe has no such counter.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This counter is read twice.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A counter reads zero or more, in digits.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A round begins with the event “opened”, number 1.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This round has no events.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="An address like 192.168.1.7 is expected here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="%1 devices may watch already, which is as many as there is room for." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Take one back first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Ask the walker for a new invitation.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This device has shown no certificate.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This device isn't known here, and shows no invitation.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The last invitation has been used; it serves once.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The last invitation is older than five minutes.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The last invitation is void: too many wrong words were tried.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This device isn't known here, and nobody is invited now.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This isn't the invitation's word (wrong word %1 of %2)." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="No reason given.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="An invitation names one to eight addresses.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="An invitation names an address that no other device can reach.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="An invitation names a port from 1 to 65535.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="An invitation is made with the whole SHA-256 of a certificate, in hex.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="An invitation's word has eight letters.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is no invitation to watch, or only a part of one.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Scan the code again, or type the letters under it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Bring both devices to the same Ambit.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is no code to watch by: it has other letters, or too many.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Type the letters as they stand on the walker's device.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Compare it with the walker's device, group by group.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This code has %1 letters where %2 are expected." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="This code is too short.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A letter of this code is wrong.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This code is of a later version.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This code names an address that no device has.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no code to type for an IPv6 address.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Scan the QR code instead.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="“%1” is no reading of %2." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Write it in digits, with a point before decimals: 1284.6">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no such aircraft here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The aircraft has no registration.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Write what is painted on it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nobody's name is given.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say who walks round.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no such round here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This round was never opened.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="No discrepancy is chosen.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This basis needs a reference.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say which list and which item, or which permission.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing says what the placard says.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Write its words, and where it is.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nobody is named who found that it is no hazard.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Name the pilot or mechanic who may.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing says what was done.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Describe the work in a few words.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing says which kind of certificate you approve under.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="For example: mechanic, airframe and powerplant.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A part has a name, a number and a serial number.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Write all three as they stand on it; “none” where it bears none.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing says why.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say in a few words what was found on looking closer.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing says where on the aircraft the part is.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Choose a place, or write one: one part at a time is in it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="No part is named.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say which came off, which was fitted, or both.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="No counter was read.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Write what at least one of them says.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nobody is named who gets the aircraft.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Name the new owner.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say whose key it is.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing says what the key is good for.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Choose one role or more.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Lost, stolen, a person who left: say it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The aircraft's file isn't read yet.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Wait until it is: what you sign goes after its latest records.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Add it with its airframe and serial number first.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The number of your certificate is missing.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Work is approved with it (14 CFR 43.9(a)(4)).">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="No record is chosen.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Choose those that are to go.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing says what allows it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Name the rule, and who says it holds here.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="A record that you chose must stay.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say that other rules allow it, if they do.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This record's round was never opened.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is neither a JPEG nor a PNG picture.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Choose another file, or save the photo as JPEG.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no point on the card.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Go to where the next one is.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The plan leads nowhere else now.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is nothing to set now.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="“%1” is no date." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="Write year, month and day: 2026-06-20">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="“%1” is no reading of a counter." numerus="yes">
        <source></source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message id="No key is named.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Choose one of those that signed here, or write its fingerprint.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is no key's fingerprint: it has 64 digits, 0 to 9 and a to f.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Copy it from the page of a record that the key has signed.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This device has no network to share the walk by.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The round is not in hand on the walker's device now.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Say it again when it goes on.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The folder for the key can't be made.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Sign with it; records signed with it can be checked only as long as it is known.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This device has no key yet.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This device doesn't have that key.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Make one, then sign with it.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no round to sign.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This record holds no round.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Nothing of this round is here yet.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="There is no round to say something to.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Wait for one.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The walker's device may be newer: bring both up to date.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The connection isn't TLS 1.3.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Join the same network as the walker's device and use a new code. If it happens again, somebody may be in between.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This is not where a device was.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This device's TLS can't use the key.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Install Qt's OpenSSL backend.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The other device showed no person's certificate.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Both devices need a key.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Another program may use the port; close it, or choose another port.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This device has no good randomness now.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="This device is on no network.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Join a wireless network, or open a hotspot on one of the devices.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Too many devices are connected.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="Try again in a moment.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
    <message id="The walker no longer shares the walk with you.">
        <source></source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
