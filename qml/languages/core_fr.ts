<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr">
<context>
    <name></name>
    <message id="The archive has no record of this aircraft.">
        <source></source>
        <translation>Les archives n’ont aucun compte rendu de cet aéronef.</translation>
    </message>
    <message id="Look at its registration, or import its records.">
        <source></source>
        <translation>Vérifier son immatriculation, ou importer ses comptes rendus.</translation>
    </message>
    <message id="An aircraft needs a registration and a serial number.">
        <source></source>
        <translation>Un aéronef a besoin d’une immatriculation et d’un numéro de série.</translation>
    </message>
    <message id="Fill in both.">
        <source></source>
        <translation>Remplir les deux.</translation>
    </message>
    <message id="The airframe's text is not that of its hash.">
        <source></source>
        <translation>Le texte de la description du type n’est pas celui de son empreinte.</translation>
    </message>
    <message id="The archive knows %1 with the serial number %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les archives connaissent %1 avec le numéro de série %2.</numerusform>
            <numerusform>Les archives connaissent %1 avec le numéro de série %2.</numerusform>
        </translation>
    </message>
    <message id="Look at the data plate; one registration is one machine here.">
        <source></source>
        <translation>Regarder la plaque signalétique&#x202f;; une immatriculation est ici un seul aéronef.</translation>
    </message>
    <message id="The archive is damaged: this is not what was stored.">
        <source></source>
        <translation>Les archives sont endommagées&#x202f;: ce n’est pas ce qui a été conservé.</translation>
    </message>
    <message id="Keep the file, copy it away, and go on with a backup.">
        <source></source>
        <translation>Garder le fichier, le copier ailleurs et continuer avec une sauvegarde.</translation>
    </message>
    <message id="The archive is damaged, and so would be its copy: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les archives sont endommagées, et leur copie le serait aussi&#x202f;: %1.</numerusform>
            <numerusform>Les archives sont endommagées, et leur copie le serait aussi&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="Nothing was written. Go on with an earlier backup.">
        <source></source>
        <translation>Rien n’a été écrit. Continuer avec une sauvegarde antérieure.</translation>
    </message>
    <message id="There is a file already; a backup never overwrites one.">
        <source></source>
        <translation>Un fichier existe déjà&#x202f;; une sauvegarde n’en écrase jamais un.</translation>
    </message>
    <message id="Choose another name.">
        <source></source>
        <translation>Choisir un autre nom.</translation>
    </message>
    <message id="The backup was stopped; nothing is left of it.">
        <source></source>
        <translation>La sauvegarde a été arrêtée&#x202f;; il n’en reste rien.</translation>
    </message>
    <message id="Nothing was changed. Try again; if it stays so, look at the disk.">
        <source></source>
        <translation>Rien n’a été modifié. Réessayer&#x202f;; si cela persiste, vérifier le disque.</translation>
    </message>
    <message id="The disk is full. Make room and try again; nothing was lost.">
        <source></source>
        <translation>Le disque est plein. Faire de la place et réessayer&#x202f;; rien n’est perdu.</translation>
    </message>
    <message id="Another program has the archive open. Close it and try again.">
        <source></source>
        <translation>Un autre programme tient les archives ouvertes. Le fermer et réessayer.</translation>
    </message>
    <message id="The file is damaged. Keep it, copy it away, and go on with a backup or a new archive.">
        <source></source>
        <translation>Le fichier est endommagé. Le garder, le copier ailleurs et continuer avec une sauvegarde ou de nouvelles archives.</translation>
    </message>
    <message id="The archive could not %1: %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les archives n’ont pas pu %1&#x202f;: %2.</numerusform>
            <numerusform>Les archives n’ont pas pu %1&#x202f;: %2.</numerusform>
        </translation>
    </message>
    <message id="The archive has no such record to go on after.">
        <source></source>
        <translation>Les archives n’ont pas de tel compte rendu à la suite duquel continuer.</translation>
    </message>
    <message id="Search anew.">
        <source></source>
        <translation>Chercher à nouveau.</translation>
    </message>
    <message id="What was said is not canonical JSON.">
        <source></source>
        <translation>Ce qui a été dit n’est pas du JSON canonique.</translation>
    </message>
    <message id="This is neither a record nor a photo nor an airframe.">
        <source></source>
        <translation>Ce n’est ni un compte rendu, ni une photo, ni une description de type.</translation>
    </message>
    <message id="Give record.json, record.pdf, or what “ambit archive export” wrote.">
        <source></source>
        <translation>Donner record.json, record.pdf ou ce que «&#x202f;ambit archive export&#x202f;» a écrit.</translation>
    </message>
    <message id="No record here names this photo.">
        <source></source>
        <translation>Aucun compte rendu ici ne nomme cette photo.</translation>
    </message>
    <message id="Import the record it belongs to with it.">
        <source></source>
        <translation>Importer avec elle le compte rendu auquel elle appartient.</translation>
    </message>
    <message id="This is another record than was announced.">
        <source></source>
        <translation>C’est un autre compte rendu que celui annoncé.</translation>
    </message>
    <message id="Nothing of it was kept.">
        <source></source>
        <translation>Rien n’en a été gardé.</translation>
    </message>
    <message id="More than 32768 records bear the very same time.">
        <source></source>
        <translation>Plus de 32768 comptes rendus portent exactement la même heure.</translation>
    </message>
    <message id="Look at where they come from.">
        <source></source>
        <translation>Vérifier d’où ils viennent.</translation>
    </message>
    <message id="The photo's bytes are not those of its hash.">
        <source></source>
        <translation>Les octets de la photo ne sont pas ceux de son empreinte.</translation>
    </message>
    <message id="Take the photo again.">
        <source></source>
        <translation>Reprendre la photo.</translation>
    </message>
    <message id="This is not canonical.">
        <source></source>
        <translation>Ce n’est pas canonique.</translation>
    </message>
    <message id="An event of this round is damaged in the archive.">
        <source></source>
        <translation>Un événement de cette visite est endommagé dans les archives.</translation>
    </message>
    <message id="The archive has no such round.">
        <source></source>
        <translation>Les archives n’ont pas de telle visite.</translation>
    </message>
    <message id="This is not the next event of the round.">
        <source></source>
        <translation>Ce n’est pas l’événement suivant de la visite.</translation>
    </message>
    <message id="Another program may be walking it; open the round again.">
        <source></source>
        <translation>Un autre programme la parcourt peut-être&#x202f;; rouvrir la visite.</translation>
    </message>
    <message id="The archive has no such round, and this event does not open it.">
        <source></source>
        <translation>Les archives n’ont pas de telle visite, et cet événement ne l’ouvre pas.</translation>
    </message>
    <message id="The archive does not know the aircraft %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les archives ne connaissent pas l’aéronef %1.</numerusform>
            <numerusform>Les archives ne connaissent pas l’aéronef %1.</numerusform>
        </translation>
    </message>
    <message id="Add the aircraft first.">
        <source></source>
        <translation>Ajouter d’abord l’aéronef.</translation>
    </message>
    <message id="The event names a photo that is not there.">
        <source></source>
        <translation>L’événement nomme une photo qui n’est pas là.</translation>
    </message>
    <message id="Give the photo's bytes with it.">
        <source></source>
        <translation>Donner les octets de la photo avec lui.</translation>
    </message>
    <message id="The archive has this record already.">
        <source></source>
        <translation>Les archives ont déjà ce compte rendu.</translation>
    </message>
    <message id="Open the round again.">
        <source></source>
        <translation>Rouvrir la visite.</translation>
    </message>
    <message id="Two logs of one round differ: it was walked on two devices.">
        <source></source>
        <translation>Deux journaux d’une même visite diffèrent&#x202f;: elle a été faite sur deux appareils.</translation>
    </message>
    <message id="Both archives keep theirs; conclude one of them and let the other be.">
        <source></source>
        <translation>Chaque côté garde le sien&#x202f;; en conclure un et laisser l’autre.</translation>
    </message>
    <message id="There is no such archive.">
        <source></source>
        <translation>Il n’y a pas de telles archives.</translation>
    </message>
    <message id="Look at its name.">
        <source></source>
        <translation>Vérifier leur nom.</translation>
    </message>
    <message id="This is the archive itself.">
        <source></source>
        <translation>Ce sont ces archives mêmes.</translation>
    </message>
    <message id="Give another.">
        <source></source>
        <translation>En donner d’autres.</translation>
    </message>
    <message id="The file breaks off or is damaged: what follows in it can't be read.">
        <source></source>
        <translation>Le fichier s’interrompt ou est endommagé&#x202f;: la suite est illisible.</translation>
    </message>
    <message id="Ask for it again. What came before it is taken in.">
        <source></source>
        <translation>Le redemander. Ce qui précède est repris.</translation>
    </message>
    <message id="The file breaks off or is damaged.">
        <source></source>
        <translation>Le fichier s’interrompt ou est endommagé.</translation>
    </message>
    <message id="It is no record or photo.">
        <source></source>
        <translation>Ce n’est ni un compte rendu ni une photo.</translation>
    </message>
    <message id="Leave out control characters and fill in what is empty.">
        <source></source>
        <translation>Retirer les caractères de commande et remplir ce qui est vide.</translation>
    </message>
    <message id="A signature comes with its record.">
        <source></source>
        <translation>Une signature vient avec son compte rendu.</translation>
    </message>
    <message id="Seal the round.">
        <source></source>
        <translation>Signer la visite.</translation>
    </message>
    <message id="Something was done after it.">
        <source></source>
        <translation>Quelque chose a été fait après.</translation>
    </message>
    <message id="The archive is damaged: a record can't be unpacked.">
        <source></source>
        <translation>Les archives sont endommagées&#x202f;: un compte rendu ne peut pas être décompressé.</translation>
    </message>
    <message id="The archive has no such record.">
        <source></source>
        <translation>Les archives n’ont pas de tel compte rendu.</translation>
    </message>
    <message id="This record is of another aircraft.">
        <source></source>
        <translation>Ce compte rendu est d’un autre aéronef.</translation>
    </message>
    <message id="Look at its identity.">
        <source></source>
        <translation>Vérifier son identité.</translation>
    </message>
    <message id="This record is the latest of its file: the next one names it.">
        <source></source>
        <translation>Ce compte rendu est le dernier de son dossier&#x202f;: le suivant le nomme.</translation>
    </message>
    <message id="Let it go when there are later ones.">
        <source></source>
        <translation>L’éliminer quand il y en aura de plus récents.</translation>
    </message>
    <message id="This record says what was let go: without it the chain breaks.">
        <source></source>
        <translation>Ce compte rendu dit ce qui a été éliminé&#x202f;: sans lui la chaîne se rompt.</translation>
    </message>
    <message id="No record is named that is to go.">
        <source></source>
        <translation>Aucun compte rendu à éliminer n’est nommé.</translation>
    </message>
    <message id="Nothing was changed. Keep the file, copy it away, and go on with a backup or a new archive.">
        <source></source>
        <translation>Rien n’a été modifié. Garder le fichier, le copier ailleurs et continuer avec une sauvegarde ou de nouvelles archives.</translation>
    </message>
    <message id="The archive is damaged: the file was cut off.">
        <source></source>
        <translation>Les archives sont endommagées&#x202f;: le fichier a été coupé.</translation>
    </message>
    <message id="The archive is damaged: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les archives sont endommagées&#x202f;: %1.</numerusform>
            <numerusform>Les archives sont endommagées&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="This database is not an Ambit archive.">
        <source></source>
        <translation>Cette base de données n’est pas une archive d’Ambit.</translation>
    </message>
    <message id="Choose another file.">
        <source></source>
        <translation>Choisir un autre fichier.</translation>
    </message>
    <message id="The archive is damaged: its version is %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les archives sont endommagées&#x202f;: leur version est %1.</numerusform>
            <numerusform>Les archives sont endommagées&#x202f;: leur version est %1.</numerusform>
        </translation>
    </message>
    <message id="This archive was made by a newer Ambit.">
        <source></source>
        <translation>Ces archives viennent d’un Ambit plus récent.</translation>
    </message>
    <message id="Update Ambit; the archive is untouched.">
        <source></source>
        <translation>Mettre Ambit à jour&#x202f;; les archives sont intactes.</translation>
    </message>
    <message id="Only a concluded round is signed.">
        <source></source>
        <translation>Seule une visite conclue est signée.</translation>
    </message>
    <message id="Conclude it first.">
        <source></source>
        <translation>La conclure d’abord.</translation>
    </message>
    <message id="This key belongs to %1; the round was walked by %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Cette clé appartient à %1&#x202f;; la visite a été faite par %2.</numerusform>
            <numerusform>Cette clé appartient à %1&#x202f;; la visite a été faite par %2.</numerusform>
        </translation>
    </message>
    <message id="Sign with the key of the person who walked it.">
        <source></source>
        <translation>Signer avec la clé de la personne qui l’a faite.</translation>
    </message>
    <message id="The folder could not be made: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’endroit n’a pas pu être créé&#x202f;: %1.</numerusform>
            <numerusform>L’endroit n’a pas pu être créé&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="Choose another folder.">
        <source></source>
        <translation>Choisir un autre endroit.</translation>
    </message>
    <message id="The check was stopped.">
        <source></source>
        <translation>La vérification a été arrêtée.</translation>
    </message>
    <message id="A record that came after it is gone, and nothing says which.">
        <source></source>
        <translation>Un compte rendu venu après a disparu, et rien ne dit lequel.</translation>
    </message>
    <message id="This photo is not what was stored.">
        <source></source>
        <translation>Cette photo n’est pas ce qui a été conservé.</translation>
    </message>
    <message id="The record that sealed this round is not here.">
        <source></source>
        <translation>Le compte rendu qui a scellé cette visite n’est pas ici.</translation>
    </message>
    <message id="A search can't find it: its words are gone.">
        <source></source>
        <translation>Une recherche ne le trouve pas&#x202f;: ses mots ont disparu.</translation>
    </message>
    <message id="The records hold, but the archive around them is damaged: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les comptes rendus tiennent, mais les archives autour sont endommagées&#x202f;: %1.</numerusform>
            <numerusform>Les comptes rendus tiennent, mais les archives autour sont endommagées&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="It doesn't hold as it was kept by an older Ambit.">
        <source></source>
        <translation>Tel qu’un Ambit plus ancien l’a conservé, il ne tient pas.</translation>
    </message>
    <message id="Go on with a backup.">
        <source></source>
        <translation>Continuer avec une sauvegarde.</translation>
    </message>
    <message id="Its signature is gone.">
        <source></source>
        <translation>Sa signature a disparu.</translation>
    </message>
    <message id="It isn't in its place: it was moved to another aircraft or time.">
        <source></source>
        <translation>Il n’est pas à sa place&#x202f;: il a été déplacé vers un autre aéronef ou une autre heure.</translation>
    </message>
    <message id="What the archive keeps beside it isn't what it says.">
        <source></source>
        <translation>Ce que les archives gardent à côté n’est pas ce qu’il dit.</translation>
    </message>
    <message id="This day lies outside the calendar known here.">
        <source></source>
        <translation>Ce jour est hors du calendrier connu ici.</translation>
    </message>
    <message id="Use a day in the years 1 to 9999.">
        <source></source>
        <translation>Prendre un jour des années 1 à 9999.</translation>
    </message>
    <message id="There is no such day.">
        <source></source>
        <translation>Ce jour n’existe pas.</translation>
    </message>
    <message id="Give a day of the calendar, in the years 1 to 9999.">
        <source></source>
        <translation>Donner un jour du calendrier, des années 1 à 9999.</translation>
    </message>
    <message id="This is not a date.">
        <source></source>
        <translation>Ce n’est pas une date.</translation>
    </message>
    <message id="Write a day of the calendar like 2026-06-20.">
        <source></source>
        <translation>Écrire un jour du calendrier ainsi&#x202f;: 2026-06-20.</translation>
    </message>
    <message id="This is not a decimal number.">
        <source></source>
        <translation>Ce n’est pas un nombre décimal.</translation>
    </message>
    <message id="Write it like 24.5: digits, one point where needed, at most 15 digits.">
        <source></source>
        <translation>Écrire ainsi&#x202f;: 24,5 – des chiffres, une virgule au besoin, 15 chiffres au plus.</translation>
    </message>
    <message id="This sum takes more than 15 digits.">
        <source></source>
        <translation>Cette somme demande plus de 15 chiffres.</translation>
    </message>
    <message id="Use fewer digits or fewer decimals.">
        <source></source>
        <translation>Prendre moins de chiffres ou moins de décimales.</translation>
    </message>
    <message id="%1: %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1&#x202f;: %2.</numerusform>
            <numerusform>%1&#x202f;: %2.</numerusform>
        </translation>
    </message>
    <message id="The folder could not be synced to disk">
        <source></source>
        <translation>L’endroit n’a pas pu être écrit sur le disque</translation>
    </message>
    <message id="The file could not be opened">
        <source></source>
        <translation>Le fichier n’a pas pu être ouvert</translation>
    </message>
    <message id="This is not a regular file.">
        <source></source>
        <translation>Ce n’est pas un fichier ordinaire.</translation>
    </message>
    <message id="The file is larger than %1 bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le fichier est plus grand que %1 octets.</numerusform>
            <numerusform>Le fichier est plus grand que %1 octets.</numerusform>
        </translation>
    </message>
    <message id="The file could not be read">
        <source></source>
        <translation>Le fichier n’a pas pu être lu</translation>
    </message>
    <message id="The file could not be made">
        <source></source>
        <translation>Le fichier n’a pas pu être créé</translation>
    </message>
    <message id="The file could not be written">
        <source></source>
        <translation>Le fichier n’a pas pu être écrit</translation>
    </message>
    <message id="“%1”" numerus="yes">
        <source></source>
        <translation>
            <numerusform>«&#x202f;%1&#x202f;»</numerusform>
            <numerusform>«&#x202f;%1&#x202f;»</numerusform>
        </translation>
    </message>
    <message id="This is not a time.">
        <source></source>
        <translation>Ce n’est pas une heure.</translation>
    </message>
    <message id="Write it like %1, in the years 1970 to 9999." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Écrire ainsi&#x202f;: %1, des années 1970 à 9999.</numerusform>
            <numerusform>Écrire ainsi&#x202f;: %1, des années 1970 à 9999.</numerusform>
        </translation>
    </message>
    <message id="No record says when it was last done.">
        <source></source>
        <translation>Aucun compte rendu ne dit quand cela a été fait la dernière fois.</translation>
    </message>
    <message id="No record says when the part was fitted.">
        <source></source>
        <translation>Aucun compte rendu ne dit quand la pièce a été posée.</translation>
    </message>
    <message id="%1 is past: %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est dépassé&#x202f;: %2.</numerusform>
            <numerusform>%1 est dépassé&#x202f;: %2.</numerusform>
        </translation>
    </message>
    <message id="Does the type certificate ask for this item in flight by day under visual flight rules?">
        <source></source>
        <translation>Le certificat de type demande-t-il cet élément pour le vol de jour selon les règles de vol à vue&#x202f;?</translation>
    </message>
    <message id="What the aircraft's certification asks for can't be deferred.">
        <source></source>
        <translation>Ce que la certification de l’aéronef demande ne peut pas être reporté.</translation>
    </message>
    <message id="Does the aircraft's equipment list, or its list of kinds of operations, ask for it?">
        <source></source>
        <translation>La liste d’équipements de l’aéronef, ou sa liste des types d’exploitation, le demande-t-elle&#x202f;?</translation>
    </message>
    <message id="What the aircraft's own lists ask for can't be deferred.">
        <source></source>
        <translation>Ce que les listes de l’aéronef demandent ne peut pas être reporté.</translation>
    </message>
    <message id="Does a rule for the flights in view ask for it (14 CFR 91.205 or another)?">
        <source></source>
        <translation>Une règle pour les vols prévus le demande-t-elle (14 CFR 91.205 ou une autre)&#x202f;?</translation>
    </message>
    <message id="A rule asks for it on such flights: it can't be deferred for them.">
        <source></source>
        <translation>Une règle le demande pour de tels vols&#x202f;: il ne peut pas être reporté pour eux.</translation>
    </message>
    <message id="Does an airworthiness directive ask for it to work?">
        <source></source>
        <translation>Une consigne de navigabilité demande-t-elle qu’il fonctionne&#x202f;?</translation>
    </message>
    <message id="A directive asks for it: it can't be deferred.">
        <source></source>
        <translation>Une consigne le demande&#x202f;: il ne peut pas être reporté.</translation>
    </message>
    <message id="Has it been removed, or deactivated, and a placard put up (“Inoperative” where it was deactivated)?">
        <source></source>
        <translation>A-t-il été déposé, ou désactivé, et une affichette posée («&#x202f;Inoperative&#x202f;» là où il a été désactivé)&#x202f;?</translation>
    </message>
    <message id="It must be removed or deactivated, and placarded, first.">
        <source></source>
        <translation>Il doit d’abord être déposé ou désactivé, et signalé par une affichette.</translation>
    </message>
    <message id="Has a pilot or mechanic with the certificate and rating for it found that it is no hazard as it is?">
        <source></source>
        <translation>Un pilote ou un mécanicien titulaire de la licence et de la qualification pour cela a-t-il constaté qu’il n’est pas un danger tel quel&#x202f;?</translation>
    </message>
    <message id="Somebody who may must find first that it is no hazard.">
        <source></source>
        <translation>Quelqu’un d’habilité doit d’abord constater qu’il n’est pas un danger.</translation>
    </message>
    <message id="There are %1 questions, and %2 answers." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Il y a %1 questions et %2 réponses.</numerusform>
            <numerusform>Il y a %1 questions et %2 réponses.</numerusform>
        </translation>
    </message>
    <message id="Answer each of them, in their order.">
        <source></source>
        <translation>Répondre à chacune, dans leur ordre.</translation>
    </message>
    <message id="Have it put right, or do what the question asks for.">
        <source></source>
        <translation>Le faire rectifier, ou faire ce que la question demande.</translation>
    </message>
    <message id="An assessment of something nobody found.">
        <source></source>
        <translation>Une évaluation de quelque chose que personne n’a trouvé.</translation>
    </message>
    <message id="%1 was assessed though it had been put right." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 a été évalué alors qu’il avait été rectifié.</numerusform>
            <numerusform>%1 a été évalué alors qu’il avait été rectifié.</numerusform>
        </translation>
    </message>
    <message id="%1 was assessed twice by people who didn't know of each other." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 a été évalué deux fois par des personnes qui ne savaient rien l’une de l’autre.</numerusform>
            <numerusform>%1 a été évalué deux fois par des personnes qui ne savaient rien l’une de l’autre.</numerusform>
        </translation>
    </message>
    <message id="A rectification of something nobody found.">
        <source></source>
        <translation>Une remise en état de quelque chose que personne n’a trouvé.</translation>
    </message>
    <message id="%1 was put right twice." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 a été rectifié deux fois.</numerusform>
            <numerusform>%1 a été rectifié deux fois.</numerusform>
        </translation>
    </message>
    <message id="At %1 serial %2 was taken off, but %3 had been fitted." numerus="yes">
        <source></source>
        <translation>
            <numerusform>À %1 le numéro de série %2 a été déposé, mais %3 était posé.</numerusform>
            <numerusform>À %1 le numéro de série %2 a été déposé, mais %3 était posé.</numerusform>
        </translation>
    </message>
    <message id="At %1 a part was fitted though one was there." numerus="yes">
        <source></source>
        <translation>
            <numerusform>À %1 une pièce a été posée alors qu’il y en avait une.</numerusform>
            <numerusform>À %1 une pièce a été posée alors qu’il y en avait une.</numerusform>
        </translation>
    </message>
    <message id="Who says whose key is trusted isn't the owner.">
        <source></source>
        <translation>Qui dit quelle clé est reconnue n’est pas le propriétaire.</translation>
    </message>
    <message id="A key was revoked by somebody whose it isn't and who isn't the owner.">
        <source></source>
        <translation>Une clé a été révoquée par quelqu’un à qui elle n’est pas et qui n’est pas le propriétaire.</translation>
    </message>
    <message id="The counter %1 runs backwards: %2, then %3." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le compteur %1 recule&#x202f;: %2, puis %3.</numerusform>
            <numerusform>Le compteur %1 recule&#x202f;: %2, puis %3.</numerusform>
        </translation>
    </message>
    <message id="%1, found on %2 by %3 (%4)" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1, trouvé le %2 par %3 (%4)</numerusform>
            <numerusform>%1, trouvé le %2 par %3 (%4)</numerusform>
        </translation>
    </message>
    <message id="%1 grounds the aircraft until it is put right." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 immobilise l’aéronef jusqu’à sa rectification.</numerusform>
            <numerusform>%1 immobilise l’aéronef jusqu’à sa rectification.</numerusform>
        </translation>
    </message>
    <message id="%1 was not assessed: put it right, or defer it on a stated basis." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’a pas été évalué&#x202f;: le rectifier, ou le reporter sur une base énoncée.</numerusform>
            <numerusform>%1 n’a pas été évalué&#x202f;: le rectifier, ou le reporter sur une base énoncée.</numerusform>
        </translation>
    </message>
    <message id="%1 was deferred until %2, which is past." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 était reporté jusqu’au %2, qui est passé.</numerusform>
            <numerusform>%1 était reporté jusqu’au %2, qui est passé.</numerusform>
        </translation>
    </message>
    <message id="%1 was deferred until %2 says %3; it says %4." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 était reporté jusqu’à ce que %2 indique %3&#x202f;; il indique %4.</numerusform>
            <numerusform>%1 était reporté jusqu’à ce que %2 indique %3&#x202f;; il indique %4.</numerusform>
        </translation>
    </message>
    <message id="14 CFR 91.417(b)(1): a year has passed since the work.">
        <source></source>
        <translation>14 CFR 91.417(b)(1)&#x202f;: un an a passé depuis le travail.</translation>
    </message>
    <message id="It is the latest: the next record names it.">
        <source></source>
        <translation>C’est le dernier&#x202f;: le compte rendu suivant le nomme.</translation>
    </message>
    <message id="14 CFR 91.417(b)(3): a discrepancy in it isn't put right and seen sound yet.">
        <source></source>
        <translation>14 CFR 91.417(b)(3)&#x202f;: une anomalie n’y est pas encore rectifiée et vue conforme.</translation>
    </message>
    <message id="14 CFR 91.417(b)(2): it says what the aircraft's times, parts or inspections are now.">
        <source></source>
        <translation>14 CFR 91.417(b)(2)&#x202f;: il dit ce que sont maintenant les heures, pièces ou inspections de l’aéronef.</translation>
    </message>
    <message id="14 CFR 91.417 doesn't ask for rounds; nothing in it is open.">
        <source></source>
        <translation>14 CFR 91.417 ne demande pas les visites&#x202f;; rien n’y est ouvert.</translation>
    </message>
    <message id="14 CFR 91.417(b)(1): the work was repeated or superseded since.">
        <source></source>
        <translation>14 CFR 91.417(b)(1)&#x202f;: le travail a été répété ou remplacé depuis.</translation>
    </message>
    <message id="14 CFR 91.417(b)(1): records of work stay for a year, or until it is repeated or superseded.">
        <source></source>
        <translation>14 CFR 91.417(b)(1)&#x202f;: les comptes rendus de travaux restent un an, ou jusqu’à leur répétition ou remplacement.</translation>
    </message>
    <message id="14 CFR 91.417(b)(3): what it is about was put right and seen sound.">
        <source></source>
        <translation>14 CFR 91.417(b)(3)&#x202f;: ce dont il s’agit a été rectifié et vu conforme.</translation>
    </message>
    <message id="Later readings say what the counters are now.">
        <source></source>
        <translation>Des relevés plus récents disent ce que sont les compteurs.</translation>
    </message>
    <message id="It says who owns the aircraft, whose word counts, or what was let go.">
        <source></source>
        <translation>Il dit à qui est l’aéronef, quelle parole fait foi, ou ce qui a été éliminé.</translation>
    </message>
    <message id="The archive is damaged: what is kept about a record can't be read.">
        <source></source>
        <translation>Les archives sont endommagées&#x202f;: ce qui est gardé d’un compte rendu est illisible.</translation>
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
        <translation>jours</translation>
    </message>
    <message id="%1 runs backwards, from %2 to %3." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 recule&#x202f;: d’abord %2, puis %3.</numerusform>
            <numerusform>%1 recule&#x202f;: d’abord %2, puis %3.</numerusform>
        </translation>
    </message>
    <message id="Correct what is wrong; where a counter was replaced, give the past from then on.">
        <source></source>
        <translation>Corriger ce qui est faux&#x202f;; si un compteur a été remplacé, donner le passé à partir de là.</translation>
    </message>
    <message id="The counter %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le compteur %1</numerusform>
            <numerusform>Le compteur %1</numerusform>
        </translation>
    </message>
    <message id="The calendar">
        <source></source>
        <translation>Le calendrier</translation>
    </message>
    <message id="What the counter %1 read when this was last done is not known." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce que le compteur %1 indiquait quand cela a été fait la dernière fois n’est pas connu.</numerusform>
            <numerusform>Ce que le compteur %1 indiquait quand cela a été fait la dernière fois n’est pas connu.</numerusform>
        </translation>
    </message>
    <message id="Enter it from the logbook.">
        <source></source>
        <translation>Le saisir d’après les documents d’entretien.</translation>
    </message>
    <message id="The day when this was last done is not known.">
        <source></source>
        <translation>Le jour où cela a été fait la dernière fois n’est pas connu.</translation>
    </message>
    <message id="What the counter %1 read when this part was fitted is not known." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce que le compteur %1 indiquait quand cette pièce a été posée n’est pas connu.</numerusform>
            <numerusform>Ce que le compteur %1 indiquait quand cette pièce a été posée n’est pas connu.</numerusform>
        </translation>
    </message>
    <message id="What this part had run by %1 when it was fitted is not known." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce que cette pièce avait fait selon %1 quand elle a été posée n’est pas connu.</numerusform>
            <numerusform>Ce que cette pièce avait fait selon %1 quand elle a été posée n’est pas connu.</numerusform>
        </translation>
    </message>
    <message id="Enter it from the part's papers; a new part had run 0.">
        <source></source>
        <translation>Le saisir d’après les papiers de la pièce&#x202f;; une pièce neuve avait fait 0.</translation>
    </message>
    <message id="The day when this part's life began is not known.">
        <source></source>
        <translation>Le jour où la vie de cette pièce a commencé n’est pas connu.</translation>
    </message>
    <message id="Enter it from the part's papers.">
        <source></source>
        <translation>Le saisir d’après les papiers de la pièce.</translation>
    </message>
    <message id="The counter %1 has no reading now." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le compteur %1 n’a pas de relevé maintenant.</numerusform>
            <numerusform>Le compteur %1 n’a pas de relevé maintenant.</numerusform>
        </translation>
    </message>
    <message id="Read it.">
        <source></source>
        <translation>Le relever.</translation>
    </message>
    <message id="Today's date is not known.">
        <source></source>
        <translation>La date du jour n’est pas connue.</translation>
    </message>
    <message id="Set the clock, or enter it.">
        <source></source>
        <translation>Régler l’horloge, ou saisir la date.</translation>
    </message>
    <message id="This span is empty.">
        <source></source>
        <translation>Cet intervalle est vide.</translation>
    </message>
    <message id="Give its length.">
        <source></source>
        <translation>Donner sa longueur.</translation>
    </message>
    <message id="%1; last done %2 late, within its allowance" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1&#x202f;; fait la dernière fois %2 trop tard, dans la tolérance</numerusform>
            <numerusform>%1&#x202f;; fait la dernière fois %2 trop tard, dans la tolérance</numerusform>
        </translation>
    </message>
    <message id="%1; last done %2 late" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1&#x202f;; fait la dernière fois %2 trop tard</numerusform>
            <numerusform>%1&#x202f;; fait la dernière fois %2 trop tard</numerusform>
        </translation>
    </message>
    <message id="unknown: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>inconnu&#x202f;: %1</numerusform>
            <numerusform>inconnu&#x202f;: %1</numerusform>
        </translation>
    </message>
    <message id="due on %1, %2 left" numerus="yes">
        <source></source>
        <translation>
            <numerusform>échéance le %1, il reste %2</numerusform>
            <numerusform>échéance le %1, il reste %2</numerusform>
        </translation>
    </message>
    <message id="due at %1, %2 left" numerus="yes">
        <source></source>
        <translation>
            <numerusform>échéance à %1, il reste %2</numerusform>
            <numerusform>échéance à %1, il reste %2</numerusform>
        </translation>
    </message>
    <message id="was due on %1, passed by %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>échéance le %1, dépassée de %2</numerusform>
            <numerusform>échéance le %1, dépassée de %2</numerusform>
        </translation>
    </message>
    <message id="was due at %1, passed by %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>échéance à %1, dépassée de %2</numerusform>
            <numerusform>échéance à %1, dépassée de %2</numerusform>
        </translation>
    </message>
    <message id="%1; allowed by at most %2, and only: %3" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1&#x202f;; permis de %2 au plus, et seulement&#x202f;: %3</numerusform>
            <numerusform>%1&#x202f;; permis de %2 au plus, et seulement&#x202f;: %3</numerusform>
        </translation>
    </message>
    <message id="%1 to %2 %3" numerus="yes">
        <source></source>
        <translation>
            <numerusform>de %1 à %2 %3</numerusform>
            <numerusform>de %1 à %2 %3</numerusform>
        </translation>
    </message>
    <message id="at least %1 %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>au moins %1 %2</numerusform>
            <numerusform>au moins %1 %2</numerusform>
        </translation>
    </message>
    <message id="at most %1 %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>au plus %1 %2</numerusform>
            <numerusform>au plus %1 %2</numerusform>
        </translation>
    </message>
    <message id="no limit">
        <source></source>
        <translation>pas de limite</translation>
    </message>
    <message id="This is not an X.509 certificate in DER.">
        <source></source>
        <translation>Ce n’est pas un certificat X.509 en DER.</translation>
    </message>
    <message id="This certificate's key is not meant for signing.">
        <source></source>
        <translation>La clé de ce certificat n’est pas faite pour signer.</translation>
    </message>
    <message id="The certificate's own signature doesn't hold.">
        <source></source>
        <translation>La signature du certificat même ne tient pas.</translation>
    </message>
    <message id="The certificate's life has no beginning or no end.">
        <source></source>
        <translation>La durée du certificat n’a pas de début ou pas de fin.</translation>
    </message>
    <message id="The certificate doesn't bear exactly one name.">
        <source></source>
        <translation>Le certificat ne porte pas exactement un nom.</translation>
    </message>
    <message id="A counter doesn't count below 0.">
        <source></source>
        <translation>Un compteur ne compte pas sous 0.</translation>
    </message>
    <message id="This counter is there twice.">
        <source></source>
        <translation>Ce compteur est là deux fois.</translation>
    </message>
    <message id="The earlier records must be sorted, each once.">
        <source></source>
        <translation>Les comptes rendus antérieurs doivent être triés, chacun une fois.</translation>
    </message>
    <message id="Work is approved with the number of a certificate (14 CFR 43.9(a)(4)).">
        <source></source>
        <translation>Un travail est approuvé avec le numéro d’une licence (14 CFR 43.9(a)(4)).</translation>
    </message>
    <message id="A reading says at least one counter.">
        <source></source>
        <translation>Un relevé nomme au moins un compteur.</translation>
    </message>
    <message id="A part change takes a part off, puts one on, or both.">
        <source></source>
        <translation>Un changement de pièce en dépose une, en pose une, ou les deux.</translation>
    </message>
    <message id="Nothing is said that the key is good for.">
        <source></source>
        <translation>Rien ne dit à quoi sert la clé.</translation>
    </message>
    <message id="No record is named that was let go.">
        <source></source>
        <translation>Aucun compte rendu éliminé n’est nommé.</translation>
    </message>
    <message id="A deferral under 91.213(d) answers its questions.">
        <source></source>
        <translation>Un report selon 91.213(d) répond à ses questions.</translation>
    </message>
    <message id="This basis needs a reference: which list, which item.">
        <source></source>
        <translation>Cette base demande une référence&#x202f;: quelle liste, quel élément.</translation>
    </message>
    <message id="This is no kind of record.">
        <source></source>
        <translation>Ce n’est pas un genre de compte rendu.</translation>
    </message>
    <message id="This is not a key file.">
        <source></source>
        <translation>Ce n’est pas un fichier de clé.</translation>
    </message>
    <message id="A key file holds an ENCRYPTED PRIVATE KEY and a CERTIFICATE, as “ambit key new” writes them.">
        <source></source>
        <translation>Un fichier de clé contient ENCRYPTED PRIVATE KEY et CERTIFICATE, comme «&#x202f;ambit key new&#x202f;» les écrit.</translation>
    </message>
    <message id="A key's name is one line of 1 to 64 characters.">
        <source></source>
        <translation>Le nom d’une clé est une ligne de 1 à 64 caractères.</translation>
    </message>
    <message id="A passphrase has 8 to 1024 bytes.">
        <source></source>
        <translation>Une phrase secrète a de 8 à 1024 octets.</translation>
    </message>
    <message id="Choose another one.">
        <source></source>
        <translation>En choisir une autre.</translation>
    </message>
    <message id="This passphrase doesn't unlock the key.">
        <source></source>
        <translation>Cette phrase secrète n’ouvre pas la clé.</translation>
    </message>
    <message id="Try again.">
        <source></source>
        <translation>Réessayer.</translation>
    </message>
    <message id="The key file's certificate belongs to another key.">
        <source></source>
        <translation>Le certificat du fichier de clé appartient à une autre clé.</translation>
    </message>
    <message id="%1 is not settled." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas traité.</numerusform>
            <numerusform>%1 n’est pas traité.</numerusform>
        </translation>
    </message>
    <message id="%1 is still open." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est encore ouvert.</numerusform>
            <numerusform>%1 est encore ouvert.</numerusform>
        </translation>
    </message>
    <message id="%1 is still owed: %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 reste à faire&#x202f;: %2</numerusform>
            <numerusform>%1 reste à faire&#x202f;: %2</numerusform>
        </translation>
    </message>
    <message id="The finding at %1 grounds the aircraft." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le constat à %1 immobilise l’aéronef.</numerusform>
            <numerusform>Le constat à %1 immobilise l’aéronef.</numerusform>
        </translation>
    </message>
    <message id="%1 is not inspected, and nothing is stated that allows flight without it." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas inspecté, et rien n’est énoncé qui permette le vol sans cela.</numerusform>
            <numerusform>%1 n’est pas inspecté, et rien n’est énoncé qui permette le vol sans cela.</numerusform>
        </translation>
    </message>
    <message id="%1 is to be looked at again: asked by %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est à revoir&#x202f;: demandé par %2.</numerusform>
            <numerusform>%1 est à revoir&#x202f;: demandé par %2.</numerusform>
        </translation>
    </message>
    <message id="%1 asks %2 and has no answer yet." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 demande %2 et n’a pas encore de réponse.</numerusform>
            <numerusform>%1 demande %2 et n’a pas encore de réponse.</numerusform>
        </translation>
    </message>
    <message id="Something was done after %1: the last look comes last." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Quelque chose a été fait après %1&#x202f;: le dernier regard vient en dernier.</numerusform>
            <numerusform>Quelque chose a été fait après %1&#x202f;: le dernier regard vient en dernier.</numerusform>
        </translation>
    </message>
    <message id="A table of agreement is square and counts.">
        <source></source>
        <translation>Un tableau d’accord est carré et compte.</translation>
    </message>
    <message id="There is nothing that both settled.">
        <source></source>
        <translation>Il n’y a rien que les deux aient traité.</translation>
    </message>
    <message id="Both settled every point with the same word: chance alone would agree as well, and kappa is undefined.">
        <source></source>
        <translation>Les deux ont traité chaque point du même mot&#x202f;: le hasard seul s’accorderait autant, et kappa n’est pas défini.</translation>
    </message>
    <message id="Lay two rounds of the same walk on the same aircraft side by side.">
        <source></source>
        <translation>Placer côte à côte deux visites du même parcours sur le même aéronef.</translation>
    </message>
    <message id="This is one and the same round.">
        <source></source>
        <translation>C’est une seule et même visite.</translation>
    </message>
    <message id="These are rounds of two aircraft.">
        <source></source>
        <translation>Ce sont des visites de deux aéronefs.</translation>
    </message>
    <message id="These are two different walks.">
        <source></source>
        <translation>Ce sont deux parcours différents.</translation>
    </message>
    <message id="The airframe's description was changed between these rounds.">
        <source></source>
        <translation>La description du type a changé entre ces visites.</translation>
    </message>
    <message id="This is no round: it doesn't begin with the event “opened”.">
        <source></source>
        <translation>Ce n’est pas une visite&#x202f;: elle ne commence pas par l’événement «&#x202f;opened&#x202f;».</translation>
    </message>
    <message id="This field is missing.">
        <source></source>
        <translation>Ce champ manque.</translation>
    </message>
    <message id="A list of 3 to 20 corners is expected here.">
        <source></source>
        <translation>Une liste de 3 à 20 coins est attendue ici.</translation>
    </message>
    <message id="A corner is two decimal strings, metres from -100 to 100 with at most 3 decimals.">
        <source></source>
        <translation>Un coin est deux nombres décimaux, en mètres de -100 à 100 avec 3 décimales au plus.</translation>
    </message>
    <message id="A time like 2026-06-20T05:30:00.000Z is expected here.">
        <source></source>
        <translation>Une heure comme 2026-06-20T05:30:00.000Z est attendue ici.</translation>
    </message>
    <message id="A point is expected here.">
        <source></source>
        <translation>Un point est attendu ici.</translation>
    </message>
    <message id="%1 and %2">
        <source></source>
        <translation>%1 et %2</translation>
    </message>
    <message id="%1, %2 and %3 more">
        <source></source>
        <translation>%1, %2 et %3 de plus</translation>
    </message>
    <message id="%1 can't be settled now">
        <source></source>
        <translation>%1&#x202f;: impossible à traiter maintenant</translation>
    </message>
    <message id="%1 is added">
        <source></source>
        <translation>%1 est ajouté</translation>
    </message>
    <message id="%1 are added">
        <source></source>
        <translation>%1 sont ajoutés</translation>
    </message>
    <message id="%1 can be settled again">
        <source></source>
        <translation>%1&#x202f;: de nouveau possible à traiter</translation>
    </message>
    <message id="%1 is now settled here">
        <source></source>
        <translation>%1 est maintenant traité d’ici</translation>
    </message>
    <message id="%1 are now settled here">
        <source></source>
        <translation>%1 sont maintenant traités d’ici</translation>
    </message>
    <message id="%1 is now settled from %2">
        <source></source>
        <translation>%1 est maintenant traité depuis %2</translation>
    </message>
    <message id="%1 are now settled from %2">
        <source></source>
        <translation>%1 sont maintenant traités depuis %2</translation>
    </message>
    <message id="%1 is left out">
        <source></source>
        <translation>%1 est omis</translation>
    </message>
    <message id="%1 are left out">
        <source></source>
        <translation>%1 sont omis</translation>
    </message>
    <message id="%1 now comes first">
        <source></source>
        <translation>%1 vient maintenant en premier</translation>
    </message>
    <message id="%1 now come first">
        <source></source>
        <translation>%1 viennent maintenant en premier</translation>
    </message>
    <message id="%1 now comes after %2">
        <source></source>
        <translation>%1 vient maintenant après %2</translation>
    </message>
    <message id="%1 now come after %2">
        <source></source>
        <translation>%1 viennent maintenant après %2</translation>
    </message>
    <message id="%1 is added first">
        <source></source>
        <translation>%1 est ajouté en premier</translation>
    </message>
    <message id="%1 are added first">
        <source></source>
        <translation>%1 sont ajoutés en premier</translation>
    </message>
    <message id="%1 is added after %2">
        <source></source>
        <translation>%1 est ajouté après %2</translation>
    </message>
    <message id="%1 are added after %2">
        <source></source>
        <translation>%1 sont ajoutés après %2</translation>
    </message>
    <message id="The round goes on at %1">
        <source></source>
        <translation>La visite reprend à %1</translation>
    </message>
    <message id="%1 was reached out of turn">
        <source></source>
        <translation>%1 a été atteint hors de l’ordre</translation>
    </message>
    <message id="%1 is to be settled again">
        <source></source>
        <translation>%1 est à refaire</translation>
    </message>
    <message id="Asked by %1: look again at %2">
        <source></source>
        <translation>Demandé par %1&#x202f;: revoir %2</translation>
    </message>
    <message id="The second look at %1 is declined">
        <source></source>
        <translation>Le second regard sur %1 est refusé</translation>
    </message>
    <message id="%1 is sound">
        <source></source>
        <translation>%1 est conforme</translation>
    </message>
    <message id="%1 is a finding">
        <source></source>
        <translation>%1 est un constat</translation>
    </message>
    <message id="%1 is not inspected">
        <source></source>
        <translation>%1 n’est pas inspecté</translation>
    </message>
    <message id="%1 can't be used">
        <source></source>
        <translation>%1 est inutilisable</translation>
    </message>
    <message id="%1 can be used again">
        <source></source>
        <translation>%1 est de nouveau utilisable</translation>
    </message>
    <message id="%1 is in the way">
        <source></source>
        <translation>%1 fait obstacle</translation>
    </message>
    <message id="%1 isn't in the way any more">
        <source></source>
        <translation>%1 ne fait plus obstacle</translation>
    </message>
    <message id="The light is low">
        <source></source>
        <translation>La lumière est faible</translation>
    </message>
    <message id="The light is good again">
        <source></source>
        <translation>La lumière est de nouveau bonne</translation>
    </message>
    <message id="After an interruption">
        <source></source>
        <translation>Après une interruption</translation>
    </message>
    <message id="What was settled quickly is looked at again">
        <source></source>
        <translation>Ce qui a été traité vite est revu</translation>
    </message>
    <message id="The flight goes into the dark">
        <source></source>
        <translation>Le vol entre dans la nuit</translation>
    </message>
    <message id="The flight doesn't go into the dark">
        <source></source>
        <translation>Le vol n’entre pas dans la nuit</translation>
    </message>
    <message id="%1: %2">
        <source></source>
        <translation>%1&#x202f;: %2</translation>
    </message>
    <message id="%1. %2">
        <source></source>
        <translation>%1. %2</translation>
    </message>
    <message id="%1, and %2 more.">
        <source></source>
        <translation>%1, et %2 de plus.</translation>
    </message>
    <message id="The airframe has no such zone.">
        <source></source>
        <translation>Le type n’a pas de telle zone.</translation>
    </message>
    <message id="Nothing is left to settle at %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Il ne reste rien à traiter à %1.</numerusform>
            <numerusform>Il ne reste rien à traiter à %1.</numerusform>
        </translation>
    </message>
    <message id="%1 is wanted next">
        <source></source>
        <translation>%1 est voulu ensuite</translation>
    </message>
    <message id="%1 or %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ou %2</numerusform>
            <numerusform>%1 ou %2</numerusform>
        </translation>
    </message>
    <message id="%1 can't be used: %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est inutilisable&#x202f;: %2</numerusform>
            <numerusform>%1 est inutilisable&#x202f;: %2</numerusform>
        </translation>
    </message>
    <message id="If it can be used again, say so first.">
        <source></source>
        <translation>S’il est de nouveau utilisable, le dire d’abord.</translation>
    </message>
    <message id="This walk has no such point.">
        <source></source>
        <translation>Ce parcours n’a pas de tel point.</translation>
    </message>
    <message id="%1 is settled from %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est traité depuis %2.</numerusform>
            <numerusform>%1 est traité depuis %2.</numerusform>
        </translation>
    </message>
    <message id="Go there first.">
        <source></source>
        <translation>Y aller d’abord.</translation>
    </message>
    <message id="%1 needs %2: %3." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 demande %2&#x202f;: %3.</numerusform>
            <numerusform>%1 demande %2&#x202f;: %3.</numerusform>
        </translation>
    </message>
    <message id="Change the setting first.">
        <source></source>
        <translation>Changer d’abord la position.</translation>
    </message>
    <message id="%1 comes before %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 vient avant %2.</numerusform>
            <numerusform>%1 vient avant %2.</numerusform>
        </translation>
    </message>
    <message id="Settle it first.">
        <source></source>
        <translation>Le traiter d’abord.</translation>
    </message>
    <message id="%1 is closed; %2 is seen through it." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est fermé&#x202f;; %2 se voit à travers.</numerusform>
            <numerusform>%1 est fermé&#x202f;; %2 se voit à travers.</numerusform>
        </translation>
    </message>
    <message id="Open it, or settle the point as not inspected.">
        <source></source>
        <translation>L’ouvrir, ou traiter le point comme non inspecté.</translation>
    </message>
    <message id="%1 isn't measured." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ne se mesure pas.</numerusform>
            <numerusform>%1 ne se mesure pas.</numerusform>
        </translation>
    </message>
    <message id="Leave the value out.">
        <source></source>
        <translation>Omettre la valeur.</translation>
    </message>
    <message id="%1 is measured and has no value." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 se mesure et n’a pas de valeur.</numerusform>
            <numerusform>%1 se mesure et n’a pas de valeur.</numerusform>
        </translation>
    </message>
    <message id="Give its %1 in %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Donner %1 en %2.</numerusform>
            <numerusform>Donner %1 en %2.</numerusform>
        </translation>
    </message>
    <message id="%1 %2 is out of the limit (%3): that isn't sound." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 %2 est hors de la limite (%3)&#x202f;: ce n’est pas conforme.</numerusform>
            <numerusform>%1 %2 est hors de la limite (%3)&#x202f;: ce n’est pas conforme.</numerusform>
        </translation>
    </message>
    <message id="Measure again, or settle it as a finding.">
        <source></source>
        <translation>Mesurer de nouveau, ou le traiter comme constat.</translation>
    </message>
    <message id="%1 is settled already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est déjà traité.</numerusform>
            <numerusform>%1 est déjà traité.</numerusform>
        </translation>
    </message>
    <message id="Re-open it first.">
        <source></source>
        <translation>Choisir d’abord «&#x202f;Refaire&#x202f;».</translation>
    </message>
    <message id="Not inspected needs a reason.">
        <source></source>
        <translation>«&#x202f;Non inspecté&#x202f;» demande un motif.</translation>
    </message>
    <message id="Say why.">
        <source></source>
        <translation>Dire pourquoi.</translation>
    </message>
    <message id="A finding needs words.">
        <source></source>
        <translation>Un constat demande des mots.</translation>
    </message>
    <message id="Say what was found.">
        <source></source>
        <translation>Dire ce qui a été trouvé.</translation>
    </message>
    <message id="A finding at %1 grounds the aircraft." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un constat à %1 immobilise l’aéronef.</numerusform>
            <numerusform>Un constat à %1 immobilise l’aéronef.</numerusform>
        </translation>
    </message>
    <message id="Give it the class “grounds”.">
        <source></source>
        <translation>Lui donner la classe «&#x202f;immobilise&#x202f;».</translation>
    </message>
    <message id="This round is opened already.">
        <source></source>
        <translation>Cette visite est déjà ouverte.</translation>
    </message>
    <message id="A new order needs a reason.">
        <source></source>
        <translation>Un nouvel ordre demande un motif.</translation>
    </message>
    <message id="The airframe has no such stand.">
        <source></source>
        <translation>Le type n’a pas de tel poste.</translation>
    </message>
    <message id="%1 is reached only from %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ne s’atteint que depuis %2.</numerusform>
            <numerusform>%1 ne s’atteint que depuis %2.</numerusform>
        </translation>
    </message>
    <message id="The airframe has no such setting.">
        <source></source>
        <translation>Le type n’a pas de telle position.</translation>
    </message>
    <message id="%1 can't be brought from “%2” to “%3”." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ne peut pas passer de «&#x202f;%2&#x202f;» à «&#x202f;%3&#x202f;».</numerusform>
            <numerusform>%1 ne peut pas passer de «&#x202f;%2&#x202f;» à «&#x202f;%3&#x202f;».</numerusform>
        </translation>
    </message>
    <message id="%1 is changed from %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 se change depuis %2.</numerusform>
            <numerusform>%1 se change depuis %2.</numerusform>
        </translation>
    </message>
    <message id="%1 may be changed only when %2 is settled sound." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 ne peut être changé que si %2 est traité conforme.</numerusform>
            <numerusform>%1 ne peut être changé que si %2 est traité conforme.</numerusform>
        </translation>
    </message>
    <message id="Re-opening needs a reason.">
        <source></source>
        <translation>Refaire demande un motif.</translation>
    </message>
    <message id="%1 isn't settled; it can't be re-opened." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas traité&#x202f;; impossible de le refaire.</numerusform>
            <numerusform>%1 n’est pas traité&#x202f;; impossible de le refaire.</numerusform>
        </translation>
    </message>
    <message id="The airframe has no such opening.">
        <source></source>
        <translation>Le type n’a pas de telle ouverture.</translation>
    </message>
    <message id="%1 isn't open." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas ouvert.</numerusform>
            <numerusform>%1 n’est pas ouvert.</numerusform>
        </translation>
    </message>
    <message id="%1 is open already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est déjà ouvert.</numerusform>
            <numerusform>%1 est déjà ouvert.</numerusform>
        </translation>
    </message>
    <message id="The round isn't paused.">
        <source></source>
        <translation>La visite n’est pas en pause.</translation>
    </message>
    <message id="A note needs words.">
        <source></source>
        <translation>Une note demande des mots.</translation>
    </message>
    <message id="A stand that can't be used needs a reason.">
        <source></source>
        <translation>Un poste inutilisable demande un motif.</translation>
    </message>
    <message id="%1 is blocked already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est déjà bloqué.</numerusform>
            <numerusform>%1 est déjà bloqué.</numerusform>
        </translation>
    </message>
    <message id="%1 isn't blocked." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas bloqué.</numerusform>
            <numerusform>%1 n’est pas bloqué.</numerusform>
        </translation>
    </message>
    <message id="The next area to be marked is number %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>La prochaine aire à marquer a le numéro %1.</numerusform>
            <numerusform>La prochaine aire à marquer a le numéro %1.</numerusform>
        </translation>
    </message>
    <message id="A marked area needs a reason.">
        <source></source>
        <translation>Une aire marquée demande un motif.</translation>
    </message>
    <message id="Say what is there.">
        <source></source>
        <translation>Dire ce qu’il y a là.</translation>
    </message>
    <message id="More than %1 areas can't be marked." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Plus de %1 aires ne peuvent pas être marquées.</numerusform>
            <numerusform>Plus de %1 aires ne peuvent pas être marquées.</numerusform>
        </translation>
    </message>
    <message id="Clear one, or mark one larger area.">
        <source></source>
        <translation>En libérer une, ou en marquer une plus grande.</translation>
    </message>
    <message id="Mark it again.">
        <source></source>
        <translation>La marquer de nouveau.</translation>
    </message>
    <message id="The marked area covers where you stand.">
        <source></source>
        <translation>L’aire marquée couvre l’endroit où l’on se tient.</translation>
    </message>
    <message id="Mark it beside you.">
        <source></source>
        <translation>La marquer à côté de soi.</translation>
    </message>
    <message id="There is no marked area number %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Il n’y a pas de aire marquée numéro %1.</numerusform>
            <numerusform>Il n’y a pas de aire marquée numéro %1.</numerusform>
        </translation>
    </message>
    <message id="The light is low already.">
        <source></source>
        <translation>La lumière est déjà faible.</translation>
    </message>
    <message id="The light is good already.">
        <source></source>
        <translation>La lumière est déjà bonne.</translation>
    </message>
    <message id="What is asked next has number %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce qui est demandé ensuite a le numéro %1.</numerusform>
            <numerusform>Ce qui est demandé ensuite a le numéro %1.</numerusform>
        </translation>
    </message>
    <message id="More than %1 things can't be asked in a round." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Plus de %1 choses ne peuvent pas être demandées dans une visite.</numerusform>
            <numerusform>Plus de %1 choses ne peuvent pas être demandées dans une visite.</numerusform>
        </translation>
    </message>
    <message id="This was said of another round.">
        <source></source>
        <translation>Cela a été dit d’une autre visite.</translation>
    </message>
    <message id="This was said already.">
        <source></source>
        <translation>Cela a déjà été dit.</translation>
    </message>
    <message id="Say it anew if it is meant again.">
        <source></source>
        <translation>Le redire à neuf si c’est de nouveau voulu.</translation>
    </message>
    <message id="A look again needs a point.">
        <source></source>
        <translation>Un second regard demande un point.</translation>
    </message>
    <message id="Say where.">
        <source></source>
        <translation>Dire où.</translation>
    </message>
    <message id="This needs words.">
        <source></source>
        <translation>Ceci demande des mots.</translation>
    </message>
    <message id="%1 things are asked already that are still open." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 choses sont déjà demandées et encore ouvertes.</numerusform>
            <numerusform>%1 choses sont déjà demandées et encore ouvertes.</numerusform>
        </translation>
    </message>
    <message id="Wait until one is settled, answered or declined.">
        <source></source>
        <translation>Attendre que l’une soit traitée, ait sa réponse ou soit refusée.</translation>
    </message>
    <message id="Nothing was asked with number %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Rien n’a été demandé avec le numéro %1.</numerusform>
            <numerusform>Rien n’a été demandé avec le numéro %1.</numerusform>
        </translation>
    </message>
    <message id="A remark needs no answer.">
        <source></source>
        <translation>Une remarque ne demande pas de réponse.</translation>
    </message>
    <message id="What was asked with number %1 isn't open." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce qui a été demandé avec le numéro %1 n’est pas ouvert.</numerusform>
            <numerusform>Ce qui a été demandé avec le numéro %1 n’est pas ouvert.</numerusform>
        </translation>
    </message>
    <message id="An answer needs words.">
        <source></source>
        <translation>Une réponse demande des mots.</translation>
    </message>
    <message id="To look again at %1 isn't answered with words." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Revoir %1&#x202f;: on n’y répond pas par des mots.</numerusform>
            <numerusform>Revoir %1&#x202f;: on n’y répond pas par des mots.</numerusform>
        </translation>
    </message>
    <message id="Settle the point again, or decline with a reason.">
        <source></source>
        <translation>Refaire le point, ou refuser avec un motif.</translation>
    </message>
    <message id="Declining needs a reason.">
        <source></source>
        <translation>Refuser demande un motif.</translation>
    </message>
    <message id="A round is walked on one's own from its beginning.">
        <source></source>
        <translation>Une visite faite seul l’est dès son début.</translation>
    </message>
    <message id="Open a new round to walk it on your own.">
        <source></source>
        <translation>Ouvrir une nouvelle visite pour la faire seul.</translation>
    </message>
    <message id="A portion has 1 to %1 points." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Une portion a de 1 à %1 points.</numerusform>
            <numerusform>Une portion a de 1 à %1 points.</numerusform>
        </translation>
    </message>
    <message id="%1 stands in the portion twice." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est deux fois dans la portion.</numerusform>
            <numerusform>%1 est deux fois dans la portion.</numerusform>
        </translation>
    </message>
    <message id="Nothing is being looked at in a portion.">
        <source></source>
        <translation>Aucune portion n’est en train d’être regardée.</translation>
    </message>
    <message id="One goes back by 1 to %1 points." numerus="yes">
        <source></source>
        <translation>
            <numerusform>On recule de 1 à %1 points.</numerusform>
            <numerusform>On recule de 1 à %1 points.</numerusform>
        </translation>
    </message>
    <message id="An interruption takes no less than no time.">
        <source></source>
        <translation>Une interruption ne dure pas moins que rien.</translation>
    </message>
    <message id="That isn't what the rule asks for again.">
        <source></source>
        <translation>Ce n’est pas ce que la règle demande de nouveau.</translation>
    </message>
    <message id="This was asked about once in this round.">
        <source></source>
        <translation>Cela a déjà été demandé une fois dans cette visite.</translation>
    </message>
    <message id="These points were not settled there.">
        <source></source>
        <translation>Ces points n’ont pas été traités là.</translation>
    </message>
    <message id="The flight goes into the dark already.">
        <source></source>
        <translation>Le vol entre déjà dans la nuit.</translation>
    </message>
    <message id="The flight doesn't go into the dark.">
        <source></source>
        <translation>Le vol n’entre pas dans la nuit.</translation>
    </message>
    <message id="The round can't be concluded as fit: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>La visite ne peut pas être conclue apte au vol&#x202f;: %1</numerusform>
            <numerusform>La visite ne peut pas être conclue apte au vol&#x202f;: %1</numerusform>
        </translation>
    </message>
    <message id="The round can't be concluded as not fit: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>La visite ne peut pas être conclue non apte au vol&#x202f;: %1</numerusform>
            <numerusform>La visite ne peut pas être conclue non apte au vol&#x202f;: %1</numerusform>
        </translation>
    </message>
    <message id="And %1 more stand against it." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Et %1 de plus s’y opposent.</numerusform>
            <numerusform>Et %1 de plus s’y opposent.</numerusform>
        </translation>
    </message>
    <message id="Settle what is left, close what is open, answer what is asked.">
        <source></source>
        <translation>Traiter ce qui reste, refermer ce qui est ouvert, répondre à ce qui est demandé.</translation>
    </message>
    <message id="There is no conclusion to withdraw.">
        <source></source>
        <translation>Il n’y a pas de conclusion à retirer.</translation>
    </message>
    <message id="Withdrawing a conclusion needs a reason.">
        <source></source>
        <translation>Retirer une conclusion demande un motif.</translation>
    </message>
    <message id="Only a concluded round can be signed.">
        <source></source>
        <translation>Seule une visite conclue peut être signée.</translation>
    </message>
    <message id="The round is %1's; the key is %2's." numerus="yes">
        <source></source>
        <translation>
            <numerusform>La visite est à %1&#x202f;; la clé est à %2.</numerusform>
            <numerusform>La visite est à %1&#x202f;; la clé est à %2.</numerusform>
        </translation>
    </message>
    <message id="The round is paused.">
        <source></source>
        <translation>La visite est en pause.</translation>
    </message>
    <message id="Resume it first.">
        <source></source>
        <translation>La reprendre d’abord.</translation>
    </message>
    <message id="The round is concluded: nothing more can be asked in it.">
        <source></source>
        <translation>La visite est conclue&#x202f;: plus rien ne peut y être demandé.</translation>
    </message>
    <message id="Ask for the conclusion to be taken back first.">
        <source></source>
        <translation>Demander d’abord que la conclusion soit retirée.</translation>
    </message>
    <message id="The round is concluded.">
        <source></source>
        <translation>La visite est conclue.</translation>
    </message>
    <message id="Withdraw the conclusion first.">
        <source></source>
        <translation>Retirer d’abord la conclusion.</translation>
    </message>
    <message id="The round is signed and sealed; nothing can be added.">
        <source></source>
        <translation>La visite est signée et scellée&#x202f;; rien ne peut s’y ajouter.</translation>
    </message>
    <message id="Open a new round.">
        <source></source>
        <translation>Ouvrir une nouvelle visite.</translation>
    </message>
    <message id="A portion is being looked at: nothing is settled meanwhile.">
        <source></source>
        <translation>Une portion est en train d’être regardée&#x202f;: rien n’est traité pendant ce temps.</translation>
    </message>
    <message id="Say first that you are down again.">
        <source></source>
        <translation>Dire d’abord que l’on est redescendu.</translation>
    </message>
    <message id="The airframe has no such walk.">
        <source></source>
        <translation>Le type n’a pas de tel parcours.</translation>
    </message>
    <message id="The plan names something that this walk doesn't have.">
        <source></source>
        <translation>Le plan nomme quelque chose que ce parcours n’a pas.</translation>
    </message>
    <message id="This round was opened with another airframe description.">
        <source></source>
        <translation>Cette visite a été ouverte avec une autre description du type.</translation>
    </message>
    <message id="Use the description it was opened with.">
        <source></source>
        <translation>Prendre la description avec laquelle elle a été ouverte.</translation>
    </message>
    <message id="The airframe has no such counter.">
        <source></source>
        <translation>Le type n’a pas de tel compteur.</translation>
    </message>
    <message id="This counter is read twice.">
        <source></source>
        <translation>Ce compteur est relevé deux fois.</translation>
    </message>
    <message id="A counter reads zero or more, in digits.">
        <source></source>
        <translation>Un compteur indique zéro ou plus, en chiffres.</translation>
    </message>
    <message id="A round begins with the event “opened”, number 1.">
        <source></source>
        <translation>Une visite commence par l’événement «&#x202f;opened&#x202f;», numéro 1.</translation>
    </message>
    <message id="This round has no events.">
        <source></source>
        <translation>Cette visite n’a pas d’événements.</translation>
    </message>
    <message id="An address like 192.168.1.7 is expected here.">
        <source></source>
        <translation>Une adresse comme 192.168.1.7 est attendue ici.</translation>
    </message>
    <message id="%1 devices may watch already, which is as many as there is room for." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 appareils peuvent déjà suivre&#x202f;; il n’y a pas de place pour plus.</numerusform>
            <numerusform>%1 appareils peuvent déjà suivre&#x202f;; il n’y a pas de place pour plus.</numerusform>
        </translation>
    </message>
    <message id="Take one back first.">
        <source></source>
        <translation>En exclure un d’abord.</translation>
    </message>
    <message id="Ask the walker for a new invitation.">
        <source></source>
        <translation>Demander une nouvelle invitation à qui fait la visite.</translation>
    </message>
    <message id="This device has shown no certificate.">
        <source></source>
        <translation>Cet appareil n’a montré aucun certificat.</translation>
    </message>
    <message id="This device isn't known here, and shows no invitation.">
        <source></source>
        <translation>Cet appareil n’est pas connu ici et ne montre pas d’invitation.</translation>
    </message>
    <message id="The last invitation has been used; it serves once.">
        <source></source>
        <translation>La dernière invitation a servi&#x202f;; elle ne sert qu’une fois.</translation>
    </message>
    <message id="The last invitation is older than five minutes.">
        <source></source>
        <translation>La dernière invitation a plus de cinq minutes.</translation>
    </message>
    <message id="The last invitation is void: too many wrong words were tried.">
        <source></source>
        <translation>La dernière invitation ne vaut plus&#x202f;: trop de mots faux ont été essayés.</translation>
    </message>
    <message id="This device isn't known here, and nobody is invited now.">
        <source></source>
        <translation>Cet appareil n’est pas connu ici, et personne n’est invité.</translation>
    </message>
    <message id="This isn't the invitation's word (wrong word %1 of %2)." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce n’est pas le mot de l’invitation (mot faux %1 sur %2).</numerusform>
            <numerusform>Ce n’est pas le mot de l’invitation (mot faux %1 sur %2).</numerusform>
        </translation>
    </message>
    <message id="No reason given.">
        <source></source>
        <translation>Aucun motif donné.</translation>
    </message>
    <message id="An invitation names one to eight addresses.">
        <source></source>
        <translation>Une invitation nomme de une à huit adresses.</translation>
    </message>
    <message id="An invitation names an address that no other device can reach.">
        <source></source>
        <translation>Une invitation nomme une adresse qu’aucun autre appareil n’atteint.</translation>
    </message>
    <message id="An invitation names a port from 1 to 65535.">
        <source></source>
        <translation>Une invitation nomme un port de 1 à 65535.</translation>
    </message>
    <message id="An invitation is made with the whole SHA-256 of a certificate, in hex.">
        <source></source>
        <translation>Une invitation porte le SHA-256 entier d’un certificat, en hexadécimal.</translation>
    </message>
    <message id="An invitation's word has eight letters.">
        <source></source>
        <translation>Le mot d’une invitation a huit lettres.</translation>
    </message>
    <message id="This is no invitation to watch, or only a part of one.">
        <source></source>
        <translation>Ce n’est pas une invitation à suivre, ou seulement une partie.</translation>
    </message>
    <message id="Scan the code again, or type the letters under it.">
        <source></source>
        <translation>Lire le code de nouveau, ou taper les lettres au-dessous.</translation>
    </message>
    <message id="Bring both devices to the same Ambit.">
        <source></source>
        <translation>Mettre les deux appareils au même Ambit.</translation>
    </message>
    <message id="This is no code to watch by: it has other letters, or too many.">
        <source></source>
        <translation>Ce n’est pas un code pour suivre&#x202f;: il a d’autres lettres, ou trop.</translation>
    </message>
    <message id="Type the letters as they stand on the walker's device.">
        <source></source>
        <translation>Taper les lettres comme elles sont sur l’appareil de la visite.</translation>
    </message>
    <message id="Compare it with the walker's device, group by group.">
        <source></source>
        <translation>Le comparer à l’appareil de la visite, groupe par groupe.</translation>
    </message>
    <message id="This code has %1 letters where %2 are expected." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce code a %1 lettres au lieu de %2.</numerusform>
            <numerusform>Ce code a %1 lettres au lieu de %2.</numerusform>
        </translation>
    </message>
    <message id="This code is too short.">
        <source></source>
        <translation>Ce code est trop court.</translation>
    </message>
    <message id="A letter of this code is wrong.">
        <source></source>
        <translation>Une lettre de ce code est fausse.</translation>
    </message>
    <message id="This code is of a later version.">
        <source></source>
        <translation>Ce code est d’une version plus récente.</translation>
    </message>
    <message id="This code names an address that no device has.">
        <source></source>
        <translation>Ce code nomme une adresse qu’aucun appareil n’a.</translation>
    </message>
    <message id="There is no code to type for an IPv6 address.">
        <source></source>
        <translation>Il n’y a pas de code à taper pour une adresse IPv6.</translation>
    </message>
    <message id="Scan the QR code instead.">
        <source></source>
        <translation>Lire plutôt le code QR.</translation>
    </message>
    <message id="“%1” is no reading of %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>«&#x202f;%1&#x202f;» n’est pas un relevé de %2.</numerusform>
            <numerusform>«&#x202f;%1&#x202f;» n’est pas un relevé de %2.</numerusform>
        </translation>
    </message>
    <message id="Write it in digits, with a point before decimals: 1284.6">
        <source></source>
        <translation>L’écrire en chiffres, avec une virgule avant les décimales&#x202f;: 1284,6</translation>
    </message>
    <message id="There is no such aircraft here.">
        <source></source>
        <translation>Il n’y a pas de tel aéronef ici.</translation>
    </message>
    <message id="The aircraft has no registration.">
        <source></source>
        <translation>L’aéronef n’a pas d’immatriculation.</translation>
    </message>
    <message id="Write what is painted on it.">
        <source></source>
        <translation>Écrire ce qui est peint dessus.</translation>
    </message>
    <message id="Nobody's name is given.">
        <source></source>
        <translation>Aucun nom n’est donné.</translation>
    </message>
    <message id="Say who walks round.">
        <source></source>
        <translation>Dire qui fait le tour.</translation>
    </message>
    <message id="There is no such round here.">
        <source></source>
        <translation>Il n’y a pas de telle visite ici.</translation>
    </message>
    <message id="This round was never opened.">
        <source></source>
        <translation>Cette visite n’a jamais été ouverte.</translation>
    </message>
    <message id="No discrepancy is chosen.">
        <source></source>
        <translation>Aucune anomalie n’est choisie.</translation>
    </message>
    <message id="This basis needs a reference.">
        <source></source>
        <translation>Cette base demande une référence.</translation>
    </message>
    <message id="Say which list and which item, or which permission.">
        <source></source>
        <translation>Dire quelle liste et quel élément, ou quelle autorisation.</translation>
    </message>
    <message id="Nothing says what the placard says.">
        <source></source>
        <translation>Rien ne dit ce que porte l’affichette.</translation>
    </message>
    <message id="Write its words, and where it is.">
        <source></source>
        <translation>Écrire ses mots, et où elle est.</translation>
    </message>
    <message id="Nobody is named who found that it is no hazard.">
        <source></source>
        <translation>Personne n’est nommé qui ait constaté l’absence de danger.</translation>
    </message>
    <message id="Name the pilot or mechanic who may.">
        <source></source>
        <translation>Nommer le pilote ou le mécanicien habilité.</translation>
    </message>
    <message id="Nothing says what was done.">
        <source></source>
        <translation>Rien ne dit ce qui a été fait.</translation>
    </message>
    <message id="Describe the work in a few words.">
        <source></source>
        <translation>Décrire le travail en quelques mots.</translation>
    </message>
    <message id="Nothing says which kind of certificate you approve under.">
        <source></source>
        <translation>Rien ne dit sous quel genre de licence l’approbation est donnée.</translation>
    </message>
    <message id="For example: mechanic, airframe and powerplant.">
        <source></source>
        <translation>Par exemple&#x202f;: mécanicien, cellule et moteur.</translation>
    </message>
    <message id="A part has a name, a number and a serial number.">
        <source></source>
        <translation>Une pièce a un nom, une référence et un numéro de série.</translation>
    </message>
    <message id="Write all three as they stand on it; “none” where it bears none.">
        <source></source>
        <translation>Écrire les trois comme ils sont dessus&#x202f;; «&#x202f;aucun&#x202f;» où il n’y en a pas.</translation>
    </message>
    <message id="Nothing says why.">
        <source></source>
        <translation>Rien ne dit pourquoi.</translation>
    </message>
    <message id="Say in a few words what was found on looking closer.">
        <source></source>
        <translation>Dire en quelques mots ce qui a été trouvé en regardant de plus près.</translation>
    </message>
    <message id="Nothing says where on the aircraft the part is.">
        <source></source>
        <translation>Rien ne dit où est la pièce sur l’aéronef.</translation>
    </message>
    <message id="Choose a place, or write one: one part at a time is in it.">
        <source></source>
        <translation>Choisir une place, ou en écrire une&#x202f;: une pièce à la fois s’y trouve.</translation>
    </message>
    <message id="No part is named.">
        <source></source>
        <translation>Aucune pièce n’est nommée.</translation>
    </message>
    <message id="Say which came off, which was fitted, or both.">
        <source></source>
        <translation>Dire laquelle a été déposée, laquelle posée, ou les deux.</translation>
    </message>
    <message id="No counter was read.">
        <source></source>
        <translation>Aucun compteur n’a été relevé.</translation>
    </message>
    <message id="Write what at least one of them says.">
        <source></source>
        <translation>Écrire ce qu’indique au moins l’un d’eux.</translation>
    </message>
    <message id="Nobody is named who gets the aircraft.">
        <source></source>
        <translation>Personne n’est nommé qui reçoive l’aéronef.</translation>
    </message>
    <message id="Name the new owner.">
        <source></source>
        <translation>Nommer le nouveau propriétaire.</translation>
    </message>
    <message id="Say whose key it is.">
        <source></source>
        <translation>Dire à qui est la clé.</translation>
    </message>
    <message id="Nothing says what the key is good for.">
        <source></source>
        <translation>Rien ne dit à quoi sert la clé.</translation>
    </message>
    <message id="Choose one role or more.">
        <source></source>
        <translation>Choisir un rôle ou plusieurs.</translation>
    </message>
    <message id="Lost, stolen, a person who left: say it.">
        <source></source>
        <translation>Perdue, volée, une personne partie&#x202f;: le dire.</translation>
    </message>
    <message id="The aircraft's file isn't read yet.">
        <source></source>
        <translation>Le dossier de l’aéronef n’est pas encore lu.</translation>
    </message>
    <message id="Wait until it is: what you sign goes after its latest records.">
        <source></source>
        <translation>Attendre qu’il le soit&#x202f;: ce qui est signé vient après ses derniers comptes rendus.</translation>
    </message>
    <message id="Add it with its airframe and serial number first.">
        <source></source>
        <translation>L’ajouter d’abord avec son type et son numéro de série.</translation>
    </message>
    <message id="The number of your certificate is missing.">
        <source></source>
        <translation>Le numéro de la licence manque.</translation>
    </message>
    <message id="Work is approved with it (14 CFR 43.9(a)(4)).">
        <source></source>
        <translation>Le travail est approuvé avec lui (14 CFR 43.9(a)(4)).</translation>
    </message>
    <message id="No record is chosen.">
        <source></source>
        <translation>Aucun compte rendu n’est choisi.</translation>
    </message>
    <message id="Choose those that are to go.">
        <source></source>
        <translation>Choisir ceux qui doivent partir.</translation>
    </message>
    <message id="Nothing says what allows it.">
        <source></source>
        <translation>Rien ne dit ce qui le permet.</translation>
    </message>
    <message id="Name the rule, and who says it holds here.">
        <source></source>
        <translation>Nommer la règle, et qui dit qu’elle vaut ici.</translation>
    </message>
    <message id="A record that you chose must stay.">
        <source></source>
        <translation>Un compte rendu choisi doit rester.</translation>
    </message>
    <message id="Say that other rules allow it, if they do.">
        <source></source>
        <translation>Dire que d’autres règles le permettent, si c’est le cas.</translation>
    </message>
    <message id="This record's round was never opened.">
        <source></source>
        <translation>La visite de ce compte rendu n’a jamais été ouverte.</translation>
    </message>
    <message id="This is neither a JPEG nor a PNG picture.">
        <source></source>
        <translation>Ce n’est ni une image JPEG ni une image PNG.</translation>
    </message>
    <message id="Choose another file, or save the photo as JPEG.">
        <source></source>
        <translation>Choisir un autre fichier, ou enregistrer la photo en JPEG.</translation>
    </message>
    <message id="There is no point on the card.">
        <source></source>
        <translation>Il n’y a pas de point sur la carte.</translation>
    </message>
    <message id="Go to where the next one is.">
        <source></source>
        <translation>Aller où est le suivant.</translation>
    </message>
    <message id="The plan leads nowhere else now.">
        <source></source>
        <translation>Le plan ne mène nulle part maintenant.</translation>
    </message>
    <message id="There is nothing to set now.">
        <source></source>
        <translation>Il n’y a rien à régler maintenant.</translation>
    </message>
    <message id="“%1” is no date." numerus="yes">
        <source></source>
        <translation>
            <numerusform>«&#x202f;%1&#x202f;» n’est pas une date.</numerusform>
            <numerusform>«&#x202f;%1&#x202f;» n’est pas une date.</numerusform>
        </translation>
    </message>
    <message id="Write year, month and day: 2026-06-20">
        <source></source>
        <translation>Écrire année, mois et jour&#x202f;: 2026-06-20</translation>
    </message>
    <message id="“%1” is no reading of a counter." numerus="yes">
        <source></source>
        <translation>
            <numerusform>«&#x202f;%1&#x202f;» n’est pas un relevé de compteur.</numerusform>
            <numerusform>«&#x202f;%1&#x202f;» n’est pas un relevé de compteur.</numerusform>
        </translation>
    </message>
    <message id="No key is named.">
        <source></source>
        <translation>Aucune clé n’est nommée.</translation>
    </message>
    <message id="Choose one of those that signed here, or write its fingerprint.">
        <source></source>
        <translation>En choisir une qui a signé ici, ou écrire son empreinte.</translation>
    </message>
    <message id="This is no key's fingerprint: it has 64 digits, 0 to 9 and a to f.">
        <source></source>
        <translation>Ce n’est pas l’empreinte d’une clé&#x202f;: elle a 64 caractères, 0 à 9 et a à f.</translation>
    </message>
    <message id="Copy it from the page of a record that the key has signed.">
        <source></source>
        <translation>La copier de la page d’un compte rendu que la clé a signé.</translation>
    </message>
    <message id="This device has no network to share the walk by.">
        <source></source>
        <translation>Cet appareil n’a pas de réseau pour partager la visite.</translation>
    </message>
    <message id="The round is not in hand on the walker's device now.">
        <source></source>
        <translation>La visite n’est pas en main sur l’autre appareil maintenant.</translation>
    </message>
    <message id="Say it again when it goes on.">
        <source></source>
        <translation>Le redire quand elle reprend.</translation>
    </message>
    <message id="The folder for the key can't be made.">
        <source></source>
        <translation>L’endroit de la clé ne peut pas être créé.</translation>
    </message>
    <message id="Sign with it; records signed with it can be checked only as long as it is known.">
        <source></source>
        <translation>Signer avec elle&#x202f;; ce qu’elle a signé ne se vérifie que tant qu’elle est connue.</translation>
    </message>
    <message id="This device has no key yet.">
        <source></source>
        <translation>Cet appareil n’a pas encore de clé.</translation>
    </message>
    <message id="This device doesn't have that key.">
        <source></source>
        <translation>Cet appareil n’a pas cette clé.</translation>
    </message>
    <message id="Make one, then sign with it.">
        <source></source>
        <translation>En créer une, puis signer avec elle.</translation>
    </message>
    <message id="There is no round to sign.">
        <source></source>
        <translation>Il n’y a pas de visite à signer.</translation>
    </message>
    <message id="This record holds no round.">
        <source></source>
        <translation>Ce compte rendu ne contient pas de visite.</translation>
    </message>
    <message id="Nothing of this round is here yet.">
        <source></source>
        <translation>Rien de cette visite n’est encore ici.</translation>
    </message>
    <message id="There is no round to say something to.">
        <source></source>
        <translation>Il n’y a pas de visite à laquelle dire quelque chose.</translation>
    </message>
    <message id="Wait for one.">
        <source></source>
        <translation>En attendre une.</translation>
    </message>
    <message id="The walker's device may be newer: bring both up to date.">
        <source></source>
        <translation>L’autre appareil est peut-être plus récent&#x202f;: mettre les deux à jour.</translation>
    </message>
    <message id="The connection isn't TLS 1.3.">
        <source></source>
        <translation>La connexion n’est pas TLS 1.3.</translation>
    </message>
    <message id="Join the same network as the walker's device and use a new code. If it happens again, somebody may be in between.">
        <source></source>
        <translation>Rejoindre le même réseau que l’autre appareil et prendre un nouveau code. Si cela recommence, quelqu’un s’interpose peut-être.</translation>
    </message>
    <message id="This is not where a device was.">
        <source></source>
        <translation>Ce n’est pas où était un appareil.</translation>
    </message>
    <message id="This device's TLS can't use the key.">
        <source></source>
        <translation>Le TLS de cet appareil ne peut pas utiliser la clé.</translation>
    </message>
    <message id="Install Qt's OpenSSL backend.">
        <source></source>
        <translation>Installer le module OpenSSL de Qt.</translation>
    </message>
    <message id="The other device showed no person's certificate.">
        <source></source>
        <translation>L’autre appareil n’a pas montré de certificat personnel.</translation>
    </message>
    <message id="Both devices need a key.">
        <source></source>
        <translation>Les deux appareils ont besoin d’une clé.</translation>
    </message>
    <message id="Another program may use the port; close it, or choose another port.">
        <source></source>
        <translation>Un autre programme utilise peut-être le port&#x202f;; le fermer, ou choisir un autre port.</translation>
    </message>
    <message id="This device has no good randomness now.">
        <source></source>
        <translation>Cet appareil n’a pas de bon hasard maintenant.</translation>
    </message>
    <message id="This device is on no network.">
        <source></source>
        <translation>Cet appareil n’est sur aucun réseau.</translation>
    </message>
    <message id="Join a wireless network, or open a hotspot on one of the devices.">
        <source></source>
        <translation>Rejoindre un réseau sans fil, ou ouvrir un point d’accès sur l’un des appareils.</translation>
    </message>
    <message id="Too many devices are connected.">
        <source></source>
        <translation>Trop d’appareils sont connectés.</translation>
    </message>
    <message id="Try again in a moment.">
        <source></source>
        <translation>Réessayer dans un instant.</translation>
    </message>
    <message id="The walker no longer shares the walk with you.">
        <source></source>
        <translation>La visite n’est plus partagée avec cet appareil.</translation>
    </message>
    <message id="This is larger than 512 MiB.">
        <source></source>
        <translation>C’est plus grand que 512 Mio.</translation>
    </message>
    <message id="A line needs values at different places.">
        <source></source>
        <translation>Une droite demande des valeurs en des points différents.</translation>
    </message>
    <message id="Measure again later.">
        <source></source>
        <translation>Mesurer de nouveau plus tard.</translation>
    </message>
    <message id="These figures together take more than 15 digits.">
        <source></source>
        <translation>Ces nombres demandent ensemble plus de 15 chiffres.</translation>
    </message>
    <message id="Use fewer decimals.">
        <source></source>
        <translation>Prendre moins de décimales.</translation>
    </message>
    <message id="There are no values.">
        <source></source>
        <translation>Il n’y a pas de valeurs.</translation>
    </message>
    <message id="Measure first.">
        <source></source>
        <translation>Mesurer d’abord.</translation>
    </message>
    <message id="The values run backwards, from %1 to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les valeurs reculent&#x202f;: d’abord %1, puis %2.</numerusform>
            <numerusform>Les valeurs reculent&#x202f;: d’abord %1, puis %2.</numerusform>
        </translation>
    </message>
    <message id="Give them in the order in which they were measured.">
        <source></source>
        <translation>Les donner dans l’ordre où elles ont été mesurées.</translation>
    </message>
    <message id="An uncertainty can't be below zero.">
        <source></source>
        <translation>Une incertitude n’est pas sous zéro.</translation>
    </message>
    <message id="The next flight can't lie before the last value.">
        <source></source>
        <translation>Le prochain vol ne peut pas être avant la dernière valeur.</translation>
    </message>
    <message id="The confidence must lie between 0.5 and 0.999.">
        <source></source>
        <translation>La confiance est entre 0,5 et 0,999.</translation>
    </message>
    <message id="limit not within the next %1 %2, %3 %" numerus="yes">
        <source></source>
        <translation>
            <numerusform>limite pas avant %1 %2, %3 %</numerusform>
            <numerusform>limite pas avant %1 %2, %3 %</numerusform>
        </translation>
    </message>
    <message id="limit in %1 %2 at the earliest, %3 %; the latest can't be told" numerus="yes">
        <source></source>
        <translation>
            <numerusform>limite dans %1 %2 au plus tôt, %3 %&#x202f;; au plus tard, impossible à dire</numerusform>
            <numerusform>limite dans %1 %2 au plus tôt, %3 %&#x202f;; au plus tard, impossible à dire</numerusform>
        </translation>
    </message>
    <message id="limit in %1 to %2 %3, %4 %" numerus="yes">
        <source></source>
        <translation>
            <numerusform>limite dans %1 à %2 %3, %4 %</numerusform>
            <numerusform>limite dans %1 à %2 %3, %4 %</numerusform>
        </translation>
    </message>
    <message id="the last value is beyond the limit">
        <source></source>
        <translation>la dernière valeur est au-delà de la limite</translation>
    </message>
    <message id="the limit may be reached already">
        <source></source>
        <translation>la limite est peut-être déjà atteinte</translation>
    </message>
    <message id="the limit may be passed within the next %1 %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>la limite sera peut-être passée dans les prochaines %1 %2</numerusform>
            <numerusform>la limite sera peut-être passée dans les prochaines %1 %2</numerusform>
        </translation>
    </message>
    <message id="the limit is not reached within the next %1 %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>la limite n’est pas atteinte dans les prochaines %1 %2</numerusform>
            <numerusform>la limite n’est pas atteinte dans les prochaines %1 %2</numerusform>
        </translation>
    </message>
    <message id="too few values for a trend: at least %1, at three different times" numerus="yes">
        <source></source>
        <translation>
            <numerusform>trop peu de valeurs pour une tendance&#x202f;: au moins %1, à trois moments différents</numerusform>
            <numerusform>trop peu de valeurs pour une tendance&#x202f;: au moins %1, à trois moments différents</numerusform>
        </translation>
    </message>
    <message id="no trend">
        <source></source>
        <translation>pas de tendance</translation>
    </message>
    <message id="rises by %1 %2 per %3" numerus="yes">
        <source></source>
        <translation>
            <numerusform>monte de %1 %2 par %3</numerusform>
            <numerusform>monte de %1 %2 par %3</numerusform>
        </translation>
    </message>
    <message id="falls by %1 %2 per %3" numerus="yes">
        <source></source>
        <translation>
            <numerusform>baisse de %1 %2 par %3</numerusform>
            <numerusform>baisse de %1 %2 par %3</numerusform>
        </translation>
    </message>
    <message id="looks renewed: confirm it, the trend begins there">
        <source></source>
        <translation>semble renouvelé&#x202f;: le confirmer, la tendance commence là</translation>
    </message>
    <message id="the last value is out of line with those before: measure again">
        <source></source>
        <translation>la dernière valeur ne suit pas les précédentes&#x202f;: mesurer de nouveau</translation>
    </message>
    <message id="%1 values far from the others are left out" numerus="yes">
        <source></source>
        <translation>
            <numerusform>valeurs loin des autres, omises&#x202f;: %1</numerusform>
            <numerusform>valeurs loin des autres, omises&#x202f;: %1</numerusform>
        </translation>
    </message>
    <message id="The unit %1 is not known." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’unité %1 n’est pas connue.</numerusform>
            <numerusform>L’unité %1 n’est pas connue.</numerusform>
        </translation>
    </message>
    <message id="Enter the value in the unit of the limit.">
        <source></source>
        <translation>Saisir la valeur dans l’unité de la limite.</translation>
    </message>
    <message id="%1 and %2 are units of different quantities." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 et %2 sont des unités de grandeurs différentes.</numerusform>
            <numerusform>%1 et %2 sont des unités de grandeurs différentes.</numerusform>
        </translation>
    </message>
    <message id="%1 %2, rounded" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 %2, arrondi</numerusform>
            <numerusform>%1 %2, arrondi</numerusform>
        </translation>
    </message>
    <message id="The picture is too small to find a card in.">
        <source></source>
        <translation>L’image est trop petite pour y trouver une carte.</translation>
    </message>
    <message id="The picture has more than 50 million pixels.">
        <source></source>
        <translation>L’image a plus de 50 millions de pixels.</translation>
    </message>
    <message id="No card can be seen for sure.">
        <source></source>
        <translation>Aucune carte ne se voit avec certitude.</translation>
    </message>
    <message id="Mark its corners, or lay it where all four sides stand out, and take the picture again.">
        <source></source>
        <translation>Marquer ses coins, ou la poser où ses quatre côtés ressortent, et reprendre la photo.</translation>
    </message>
    <message id="More than one shape looks like the card.">
        <source></source>
        <translation>Plus d’une forme ressemble à la carte.</translation>
    </message>
    <message id="Mark its corners, or take away what lies beside it, and take the picture again.">
        <source></source>
        <translation>Marquer ses coins, ou enlever ce qui est à côté, et reprendre la photo.</translation>
    </message>
    <message id="Two marks are in the same place.">
        <source></source>
        <translation>Deux marques sont au même endroit.</translation>
    </message>
    <message id="Move one of them to where it belongs.">
        <source></source>
        <translation>En déplacer une où elle doit être.</translation>
    </message>
    <message id="A corner's place or the picture's size is no number.">
        <source></source>
        <translation>La place d’un coin ou la taille de l’image n’est pas un nombre.</translation>
    </message>
    <message id="These four corners don't go round the card.">
        <source></source>
        <translation>Ces quatre coins n’entourent pas la carte.</translation>
    </message>
    <message id="Mark the card's corners clockwise, one after the other.">
        <source></source>
        <translation>Marquer les coins de la carte dans le sens horaire, l’un après l’autre.</translation>
    </message>
    <message id="The card is too small in the picture.">
        <source></source>
        <translation>La carte est trop petite dans l’image.</translation>
    </message>
    <message id="Go closer, until the card fills a quarter of the picture's width.">
        <source></source>
        <translation>S’approcher jusqu’à ce que la carte remplisse un quart de la largeur.</translation>
    </message>
    <message id="The picture is blurred.">
        <source></source>
        <translation>L’image est floue.</translation>
    </message>
    <message id="Hold the camera still, let it focus on the card, and take it again.">
        <source></source>
        <translation>Tenir l’appareil immobile, le laisser faire le point sur la carte et reprendre.</translation>
    </message>
    <message id="It can't be told which way round the card lies.">
        <source></source>
        <translation>On ne peut pas dire dans quel sens la carte est posée.</translation>
    </message>
    <message id="Look more straight down on the card, or say which of its sides is the long one.">
        <source></source>
        <translation>Regarder la carte plus d’aplomb, ou dire lequel de ses côtés est le long.</translation>
    </message>
    <message id="These four corners are not those of a card of this size.">
        <source></source>
        <translation>Ces quatre coins ne sont pas ceux d’une carte de cette taille.</translation>
    </message>
    <message id="Mark the corners where the card's straight sides would meet.">
        <source></source>
        <translation>Marquer les coins où les côtés droits de la carte se rejoindraient.</translation>
    </message>
    <message id="The camera looks at the card too flat.">
        <source></source>
        <translation>L’appareil regarde la carte trop à plat.</translation>
    </message>
    <message id="Hold it more straight above the card.">
        <source></source>
        <translation>Le tenir plus droit au-dessus de la carte.</translation>
    </message>
    <message id="A mark's place is no number.">
        <source></source>
        <translation>La place d’une marque n’est pas un nombre.</translation>
    </message>
    <message id="A mark is too far from the card to be measured.">
        <source></source>
        <translation>Une marque est trop loin de la carte pour être mesurée.</translation>
    </message>
    <message id="Lay the card closer to what is measured: within two card lengths.">
        <source></source>
        <translation>Poser la carte plus près de ce qui est mesuré&#x202f;: à moins de deux longueurs de carte.</translation>
    </message>
    <message id="An outline needs three marks or more.">
        <source></source>
        <translation>Un contour demande trois marques ou plus.</translation>
    </message>
    <message id="Mark it all the way round.">
        <source></source>
        <translation>Marquer tout le tour.</translation>
    </message>
    <message id="The outline crosses itself.">
        <source></source>
        <translation>Le contour se croise.</translation>
    </message>
    <message id="Mark it once round, without going back.">
        <source></source>
        <translation>Le marquer une fois autour, sans revenir.</translation>
    </message>
    <message id="The second length measures %1 mm and should be %2 mm: the card isn't flat with the part." numerus="yes">
        <source></source>
        <translation>
            <numerusform>La seconde longueur mesure %1 mm et devrait faire %2 mm&#x202f;: la carte n’est pas dans le plan de la pièce.</numerusform>
            <numerusform>La seconde longueur mesure %1 mm et devrait faire %2 mm&#x202f;: la carte n’est pas dans le plan de la pièce.</numerusform>
        </translation>
    </message>
    <message id="Lay the card flat on the part, in the same plane, and take the picture again.">
        <source></source>
        <translation>Poser la carte à plat sur la pièce, dans le même plan, et reprendre la photo.</translation>
    </message>
    <message id="How far the camera is tilted over the bolt isn't known well enough.">
        <source></source>
        <translation>L’inclinaison de l’appareil au-dessus du boulon n’est pas assez bien connue.</translation>
    </message>
    <message id="Hold it straight above the bolt, or lay a card beside it.">
        <source></source>
        <translation>Le tenir droit au-dessus du boulon, ou poser une carte à côté.</translation>
    </message>
    <message id="1 day">
        <source></source>
        <translation>1 jour</translation>
    </message>
    <message id="And one more stands against it.">
        <source></source>
        <translation>Et un de plus s’y oppose.</translation>
    </message>
    <message id="This photo has more than 50 megapixels.">
        <source></source>
        <translation>Cette photo a plus de 50 mégapixels.</translation>
    </message>
    <message id="Take it with fewer, or save it smaller.">
        <source></source>
        <translation>La prendre avec moins, ou l’enregistrer plus petite.</translation>
    </message>
    <message id="This picture is too long and narrow for a photo.">
        <source></source>
        <translation>Cette image est trop longue et trop étroite pour une photo.</translation>
    </message>
    <message id="This photo is damaged: its file breaks off or contradicts itself.">
        <source></source>
        <translation>Cette photo est endommagée&#x202f;: son fichier s’interrompt ou se contredit.</translation>
    </message>
    <message id="Take it again, or save it anew as JPEG.">
        <source></source>
        <translation>La reprendre, ou l’enregistrer à nouveau en JPEG.</translation>
    </message>
    <message id="This kind of JPEG can't be read.">
        <source></source>
        <translation>Ce genre de JPEG n’est pas lisible.</translation>
    </message>
    <message id="Save it anew as an ordinary JPEG.">
        <source></source>
        <translation>L’enregistrer à nouveau en JPEG ordinaire.</translation>
    </message>
    <message id="This file holds more than one picture.">
        <source></source>
        <translation>Ce fichier contient plus d’une image.</translation>
    </message>
    <message id="HEIF photos can't be read on this device.">
        <source></source>
        <translation>Les photos HEIF ne sont pas lisibles sur cet appareil.</translation>
    </message>
    <message id="Save the photo as JPEG, or have the camera make JPEGs.">
        <source></source>
        <translation>Enregistrer la photo en JPEG, ou régler l’appareil sur JPEG.</translation>
    </message>
    <message id="There is not enough memory for this photo.">
        <source></source>
        <translation>La mémoire ne suffit pas pour cette photo.</translation>
    </message>
    <message id="Close what else runs, or take it with fewer pixels.">
        <source></source>
        <translation>Fermer ce qui tourne d’autre, ou la prendre avec moins de pixels.</translation>
    </message>
    <message id="There is no %1 %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Il n’y a pas&#x202f;: %1 %2.</numerusform>
            <numerusform>Il n’y a pas&#x202f;: %1 %2.</numerusform>
        </translation>
    </message>
    <message id="Name one that exists, or add it.">
        <source></source>
        <translation>Nommer quelque chose qui existe, ou l’ajouter.</translation>
    </message>
    <message id="setting">
        <source></source>
        <translation>position</translation>
    </message>
    <message id="state">
        <source></source>
        <translation>état</translation>
    </message>
    <message id="the solid part %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>la pièce solide %1</numerusform>
            <numerusform>la pièce solide %1</numerusform>
        </translation>
    </message>
    <message id="the keep-out area %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>la zone interdite %1</numerusform>
            <numerusform>la zone interdite %1</numerusform>
        </translation>
    </message>
    <message id="This place lies inside %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Cet endroit est à l’intérieur de&#x202f;: %1.</numerusform>
            <numerusform>Cet endroit est à l’intérieur de&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="Move it to free ground.">
        <source></source>
        <translation>Le déplacer en terrain libre.</translation>
    </message>
    <message id="Solid parts and keep-out areas close a ring round this place.">
        <source></source>
        <translation>Des pièces solides et des zones interdites forment un anneau autour de cet endroit.</translation>
    </message>
    <message id="Move it, or leave a way between them.">
        <source></source>
        <translation>Le déplacer, ou laisser un passage entre elles.</translation>
    </message>
    <message id="stand">
        <source></source>
        <translation>poste</translation>
    </message>
    <message id="This stand steps to itself.">
        <source></source>
        <translation>Ce poste mène à lui-même.</translation>
    </message>
    <message id="Remove it.">
        <source></source>
        <translation>L’enlever.</translation>
    </message>
    <message id="The stand %1 has no step to this one." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le poste %1 n’a pas de pas vers celui-ci.</numerusform>
            <numerusform>Le poste %1 n’a pas de pas vers celui-ci.</numerusform>
        </translation>
    </message>
    <message id="Add %1 to its stepTo, or take it out of here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ajouter %1 à son stepTo, ou l’enlever d’ici.</numerusform>
            <numerusform>Ajouter %1 à son stepTo, ou l’enlever d’ici.</numerusform>
        </translation>
    </message>
    <message id="This change leads to where it starts.">
        <source></source>
        <translation>Ce changement mène là où il commence.</translation>
    </message>
    <message id="Name another state.">
        <source></source>
        <translation>Nommer un autre état.</translation>
    </message>
    <message id="There is a change between the same two states already.">
        <source></source>
        <translation>Il y a déjà un changement entre ces deux mêmes états.</translation>
    </message>
    <message id="Merge the two.">
        <source></source>
        <translation>Réunir les deux.</translation>
    </message>
    <message id="No change leads to the state %1 of %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Aucun changement ne mène à l’état %1 de %2.</numerusform>
            <numerusform>Aucun changement ne mène à l’état %1 de %2.</numerusform>
        </translation>
    </message>
    <message id="Add a change to it, or don't want it.">
        <source></source>
        <translation>Ajouter un changement qui y mène, ou ne pas le demander.</translation>
    </message>
    <message id="The opening %1 is met open at the start." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’ouverture %1 est trouvée ouverte au début.</numerusform>
            <numerusform>L’ouverture %1 est trouvée ouverte au début.</numerusform>
        </translation>
    </message>
    <message id="Don't open it, or take its %1 away." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ne pas l’ouvrir, ou enlever son %1.</numerusform>
            <numerusform>Ne pas l’ouvrir, ou enlever son %1.</numerusform>
        </translation>
    </message>
    <message id="One point opens and closes %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un même point ouvre et ferme %1.</numerusform>
            <numerusform>Un même point ouvre et ferme %1.</numerusform>
        </translation>
    </message>
    <message id="Make it two points, or leave the opening away.">
        <source></source>
        <translation>En faire deux points, ou laisser l’ouverture de côté.</translation>
    </message>
    <message id="The point looks through %1, which it opens itself." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le point regarde à travers %1, qu’il ouvre lui-même.</numerusform>
            <numerusform>Le point regarde à travers %1, qu’il ouvre lui-même.</numerusform>
        </translation>
    </message>
    <message id="Take it out of through.">
        <source></source>
        <translation>L’enlever de through.</translation>
    </message>
    <message id="This walk opens %1 at %2 and doesn't close it by day." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce parcours ouvre %1 à %2 et ne le ferme pas de jour.</numerusform>
            <numerusform>Ce parcours ouvre %1 à %2 et ne le ferme pas de jour.</numerusform>
        </translation>
    </message>
    <message id="This walk opens %1 at %2 and doesn't close it." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce parcours ouvre %1 à %2 et ne le ferme pas.</numerusform>
            <numerusform>Ce parcours ouvre %1 à %2 et ne le ferme pas.</numerusform>
        </translation>
    </message>
    <message id="Let a point close it that isn't for the night only.">
        <source></source>
        <translation>Le faire fermer par un point qui ne soit pas seulement de nuit.</translation>
    </message>
    <message id="Add the point that closes it.">
        <source></source>
        <translation>Ajouter le point qui le ferme.</translation>
    </message>
    <message id="counter">
        <source></source>
        <translation>compteur</translation>
    </message>
    <message id="This item counts by it already.">
        <source></source>
        <translation>Cette entrée compte déjà ainsi.</translation>
    </message>
    <message id="Keep the one that comes first.">
        <source></source>
        <translation>Garder celle qui vient en premier.</translation>
    </message>
    <message id="The counter %1 counts in %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le compteur %1 compte en %2.</numerusform>
            <numerusform>Le compteur %1 compte en %2.</numerusform>
        </translation>
    </message>
    <message id="Give the count in that unit.">
        <source></source>
        <translation>Donner le nombre dans cette unité.</translation>
    </message>
    <message id="Solid parts and keep-out areas have %1 corners." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les pièces solides et les zones interdites ont %1 coins.</numerusform>
            <numerusform>Les pièces solides et les zones interdites ont %1 coins.</numerusform>
        </translation>
    </message>
    <message id="Use at most %1 in all." numerus="yes">
        <source></source>
        <translation>
            <numerusform>En utiliser %1 au plus en tout.</numerusform>
            <numerusform>En utiliser %1 au plus en tout.</numerusform>
        </translation>
    </message>
    <message id="No way leads from the ground to this stand.">
        <source></source>
        <translation>Aucun chemin ne mène du sol à ce poste.</translation>
    </message>
    <message id="Let it be reached from a stand that is reached itself, or leave onlyFrom out.">
        <source></source>
        <translation>Le faire atteindre depuis un poste atteint lui-même, ou omettre onlyFrom.</translation>
    </message>
    <message id="zone">
        <source></source>
        <translation>zone</translation>
    </message>
    <message id="opening">
        <source></source>
        <translation>ouverture</translation>
    </message>
    <message id="No point opens this.">
        <source></source>
        <translation>Aucun point n’ouvre ceci.</translation>
    </message>
    <message id="Let one open it, or say that it is met open.">
        <source></source>
        <translation>Le faire ouvrir par un point, ou dire qu’on le trouve ouvert.</translation>
    </message>
    <message id="No point closes this.">
        <source></source>
        <translation>Aucun point ne ferme ceci.</translation>
    </message>
    <message id="Let one close it.">
        <source></source>
        <translation>Le faire fermer par un point.</translation>
    </message>
    <message id="With the name of %1 put in, this text is too long." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Avec le nom de %1 inséré, ce texte est trop long.</numerusform>
            <numerusform>Avec le nom de %1 inséré, ce texte est trop long.</numerusform>
        </translation>
    </message>
    <message id="Use at most %1 characters." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Utiliser %1 caractères au plus.</numerusform>
            <numerusform>Utiliser %1 caractères au plus.</numerusform>
        </translation>
    </message>
    <message id="The point wants %1 to be %2, and its repeat's member %3 wants %4." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le point demande pour %1 %2, et le membre %3 de sa répétition %4.</numerusform>
            <numerusform>Le point demande pour %1 %2, et le membre %3 de sa répétition %4.</numerusform>
        </translation>
    </message>
    <message id="Take one of the two away.">
        <source></source>
        <translation>Enlever l’un des deux.</translation>
    </message>
    <message id="There is no repeat %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Il n’y a pas de répétition %1.</numerusform>
            <numerusform>Il n’y a pas de répétition %1.</numerusform>
        </translation>
    </message>
    <message id="There is no point %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Il n’y a pas de point %1.</numerusform>
            <numerusform>Il n’y a pas de point %1.</numerusform>
        </translation>
    </message>
    <message id="There are more than %1 points after repetition." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Il y a plus de %1 points après répétition.</numerusform>
            <numerusform>Il y a plus de %1 points après répétition.</numerusform>
        </translation>
    </message>
    <message id="Use fewer points, or repeat fewer.">
        <source></source>
        <translation>Utiliser moins de points, ou moins répéter.</translation>
    </message>
    <message id="an object">
        <source></source>
        <translation>un objet</translation>
    </message>
    <message id="This is of the type %1; here belongs %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ceci est du type %1&#x202f;; ce qui va ici&#x202f;: %2.</numerusform>
            <numerusform>Ceci est du type %1&#x202f;; ce qui va ici&#x202f;: %2.</numerusform>
        </translation>
    </message>
    <message id="Put %1 here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Mettre ici&#x202f;: %1.</numerusform>
            <numerusform>Mettre ici&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="The field %1 is missing." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le champ %1 manque.</numerusform>
            <numerusform>Le champ %1 manque.</numerusform>
        </translation>
    </message>
    <message id="Add it.">
        <source></source>
        <translation>L’ajouter.</translation>
    </message>
    <message id="The field %1 is not known here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le champ %1 n’est pas connu ici.</numerusform>
            <numerusform>Le champ %1 n’est pas connu ici.</numerusform>
        </translation>
    </message>
    <message id="Remove it, or correct its name.">
        <source></source>
        <translation>L’enlever, ou corriger son nom.</translation>
    </message>
    <message id="an id">
        <source></source>
        <translation>un identifiant</translation>
    </message>
    <message id="%1 is not an id." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas un identifiant.</numerusform>
            <numerusform>%1 n’est pas un identifiant.</numerusform>
        </translation>
    </message>
    <message id="Use 1 to 48 characters of a to z, 0 to 9 and the hyphen.">
        <source></source>
        <translation>Utiliser de 1 à 48 caractères parmi a à z, 0 à 9 et le trait d’union.</translation>
    </message>
    <message id="a word">
        <source></source>
        <translation>un mot</translation>
    </message>
    <message id="This word is empty or too long.">
        <source></source>
        <translation>Ce mot est vide ou trop long.</translation>
    </message>
    <message id="Name what is meant.">
        <source></source>
        <translation>Nommer ce qui est voulu.</translation>
    </message>
    <message id="a text">
        <source></source>
        <translation>un texte</translation>
    </message>
    <message id="This text is empty or too long.">
        <source></source>
        <translation>Ce texte est vide ou trop long.</translation>
    </message>
    <message id="Use 1 to %1 characters." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Utiliser de 1 à %1 caractères.</numerusform>
            <numerusform>Utiliser de 1 à %1 caractères.</numerusform>
        </translation>
    </message>
    <message id="This text holds a control character, or one that stands for none.">
        <source></source>
        <translation>Ce texte contient un caractère de commande, ou un caractère qui n’en est pas un.</translation>
    </message>
    <message id="Remove it; the text is one line.">
        <source></source>
        <translation>L’enlever&#x202f;; le texte tient sur une ligne.</translation>
    </message>
    <message id="Remove it; only line ends are allowed.">
        <source></source>
        <translation>L’enlever&#x202f;; seules les fins de ligne sont permises.</translation>
    </message>
    <message id="This text has a placeholder that nothing fills.">
        <source></source>
        <translation>Ce texte a un emplacement que rien ne remplit.</translation>
    </message>
    <message id="Remove the braces; only a repeated point has a placeholder.">
        <source></source>
        <translation>Enlever les accolades&#x202f;; seul un point répété a un emplacement.</translation>
    </message>
    <message id="The only one here is {%1}." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le seul ici est {%1}.</numerusform>
            <numerusform>Le seul ici est {%1}.</numerusform>
        </translation>
    </message>
    <message id="This id is empty.">
        <source></source>
        <translation>Cet identifiant est vide.</translation>
    </message>
    <message id="%1 stands in the list already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est déjà dans la liste.</numerusform>
            <numerusform>%1 est déjà dans la liste.</numerusform>
        </translation>
    </message>
    <message id="a number">
        <source></source>
        <translation>un nombre</translation>
    </message>
    <message id="This number is out of range.">
        <source></source>
        <translation>Ce nombre est hors des bornes.</translation>
    </message>
    <message id="Use %1 to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Utiliser de %1 à %2.</numerusform>
            <numerusform>Utiliser de %1 à %2.</numerusform>
        </translation>
    </message>
    <message id="This is not a whole number.">
        <source></source>
        <translation>Ce n’est pas un nombre entier.</translation>
    </message>
    <message id="Use a whole number from %1 to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Utiliser un nombre entier de %1 à %2.</numerusform>
            <numerusform>Utiliser un nombre entier de %1 à %2.</numerusform>
        </translation>
    </message>
    <message id="true or false">
        <source></source>
        <translation>true ou false</translation>
    </message>
    <message id="a place [x, y]">
        <source></source>
        <translation>un endroit [x, y]</translation>
    </message>
    <message id="This place doesn't have two coordinates.">
        <source></source>
        <translation>Cet endroit n’a pas deux coordonnées.</translation>
    </message>
    <message id="Write it as [x, y], in metres.">
        <source></source>
        <translation>L’écrire ainsi&#x202f;: [x, y], en mètres.</translation>
    </message>
    <message id="Give the corners of a simple polygon in order, each once.">
        <source></source>
        <translation>Donner les coins d’un polygone simple dans l’ordre, chacun une fois.</translation>
    </message>
    <message id="a state's id">
        <source></source>
        <translation>l’identifiant d’un état</translation>
    </message>
    <message id="a decimal number as a text">
        <source></source>
        <translation>un nombre décimal écrit comme texte</translation>
    </message>
    <message id="%1 is not a decimal number." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas un nombre décimal.</numerusform>
            <numerusform>%1 n’est pas un nombre décimal.</numerusform>
        </translation>
    </message>
    <message id="a list">
        <source></source>
        <translation>une liste</translation>
    </message>
    <message id="This list has %1 entries." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Cette liste a %1 entrées.</numerusform>
            <numerusform>Cette liste a %1 entrées.</numerusform>
        </translation>
    </message>
    <message id="Give %1 to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>En donner de %1 à %2.</numerusform>
            <numerusform>En donner de %1 à %2.</numerusform>
        </translation>
    </message>
    <message id="This word stands in the list already.">
        <source></source>
        <translation>Ce mot est déjà dans la liste.</translation>
    </message>
    <message id="The word %1 is not known here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le mot %1 n’est pas connu ici.</numerusform>
            <numerusform>Le mot %1 n’est pas connu ici.</numerusform>
        </translation>
    </message>
    <message id="Use one of: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Utiliser l’un de ceux-ci&#x202f;: %1.</numerusform>
            <numerusform>Utiliser l’un de ceux-ci&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="%1 is not an airframe's format." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas le format d’une description du type.</numerusform>
            <numerusform>%1 n’est pas le format d’une description du type.</numerusform>
        </translation>
    </message>
    <message id="Give a file with the format %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Donner un fichier au format %1.</numerusform>
            <numerusform>Donner un fichier au format %1.</numerusform>
        </translation>
    </message>
    <message id="This version of the airframe format is not known here.">
        <source></source>
        <translation>Cette version du format des descriptions du type n’est pas connue ici.</translation>
    </message>
    <message id="Use version 1, or a newer Ambit.">
        <source></source>
        <translation>Utiliser la version 1, ou un Ambit plus récent.</translation>
    </message>
    <message id="The outline has fewer than three corners.">
        <source></source>
        <translation>Le contour a moins de trois coins.</translation>
    </message>
    <message id="The outline's last corner is its first again.">
        <source></source>
        <translation>Le dernier coin du contour est de nouveau le premier.</translation>
    </message>
    <message id="Corner %1 of the outline is given twice in a row." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le coin %1 du contour est donné deux fois de suite.</numerusform>
            <numerusform>Le coin %1 du contour est donné deux fois de suite.</numerusform>
        </translation>
    </message>
    <message id="The outline folds back on itself at corner %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le contour revient sur lui-même au coin %1.</numerusform>
            <numerusform>Le contour revient sur lui-même au coin %1.</numerusform>
        </translation>
    </message>
    <message id="The outline crosses itself: the edge from corner %1 meets the edge from corner %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le contour se croise&#x202f;: l’arête du coin %1 rencontre l’arête du coin %2.</numerusform>
            <numerusform>Le contour se croise&#x202f;: l’arête du coin %1 rencontre l’arête du coin %2.</numerusform>
        </translation>
    </message>
    <message id="A stand with access %1 has its feet on the ground." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un poste d’accès %1 a les pieds au sol.</numerusform>
            <numerusform>Un poste d’accès %1 a les pieds au sol.</numerusform>
        </translation>
    </message>
    <message id="Make its level 0, or its access step or ladder.">
        <source></source>
        <translation>Mettre son niveau à 0, ou son accès à step ou ladder.</translation>
    </message>
    <message id="A stand with access %1 has its feet above the ground." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un poste d’accès %1 a les pieds au-dessus du sol.</numerusform>
            <numerusform>Un poste d’accès %1 a les pieds au-dessus du sol.</numerusform>
        </translation>
    </message>
    <message id="Give its level in metres, or make its access ground or kneel.">
        <source></source>
        <translation>Donner son niveau en mètres, ou mettre son accès à ground ou kneel.</translation>
    </message>
    <message id="A stand with access %1 has no caution." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un poste d’accès %1 n’a pas d’avertissement.</numerusform>
            <numerusform>Un poste d’accès %1 n’a pas d’avertissement.</numerusform>
        </translation>
    </message>
    <message id="Say what to mind up there.">
        <source></source>
        <translation>Dire à quoi faire attention là-haut.</translation>
    </message>
    <message id="This limit has neither min nor max.">
        <source></source>
        <translation>Cette limite n’a ni min ni max.</translation>
    </message>
    <message id="Give at least one of them.">
        <source></source>
        <translation>Donner au moins l’un d’eux.</translation>
    </message>
    <message id="The least allowed value, %1, is above the greatest, %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>La plus petite valeur permise, %1, est au-dessus de la plus grande, %2.</numerusform>
            <numerusform>La plus petite valeur permise, %1, est au-dessus de la plus grande, %2.</numerusform>
        </translation>
    </message>
    <message id="Correct min or max.">
        <source></source>
        <translation>Corriger min ou max.</translation>
    </message>
    <message id="The point is measured and has no limit.">
        <source></source>
        <translation>Le point est mesuré et n’a pas de limite.</translation>
    </message>
    <message id="Add the limit, or take %1 out of how." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ajouter la limite, ou enlever %1 de how.</numerusform>
            <numerusform>Ajouter la limite, ou enlever %1 de how.</numerusform>
        </translation>
    </message>
    <message id="The point has a limit and is not measured.">
        <source></source>
        <translation>Le point a une limite et n’est pas mesuré.</translation>
    </message>
    <message id="Remove the limit, or add %1 to how." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Enlever la limite, ou ajouter %1 à how.</numerusform>
            <numerusform>Enlever la limite, ou ajouter %1 à how.</numerusform>
        </translation>
    </message>
    <message id="%1 is not a JASC code." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas un code JASC.</numerusform>
            <numerusform>%1 n’est pas un code JASC.</numerusform>
        </translation>
    </message>
    <message id="Give its four digits.">
        <source></source>
        <translation>Donner ses quatre chiffres.</translation>
    </message>
    <message id="%1 is not a list of points." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas une liste de points.</numerusform>
            <numerusform>%1 n’est pas une liste de points.</numerusform>
        </translation>
    </message>
    <message id="Write %1, or list points." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Écrire %1, ou énumérer des points.</numerusform>
            <numerusform>Écrire %1, ou énumérer des points.</numerusform>
        </translation>
    </message>
    <message id="The id %1 is taken by another entry of this list." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’identifiant %1 est déjà pris par une autre entrée de cette liste.</numerusform>
            <numerusform>L’identifiant %1 est déjà pris par une autre entrée de cette liste.</numerusform>
        </translation>
    </message>
    <message id="Give each its own.">
        <source></source>
        <translation>En donner un propre à chacune.</translation>
    </message>
    <message id="This count is %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce nombre est %1.</numerusform>
            <numerusform>Ce nombre est %1.</numerusform>
        </translation>
    </message>
    <message id="Use zero or more.">
        <source></source>
        <translation>Utiliser zéro ou plus.</translation>
    </message>
    <message id="Use more than zero.">
        <source></source>
        <translation>Utiliser plus que zéro.</translation>
    </message>
    <message id="This is as much as the count itself, %1, or more." numerus="yes">
        <source></source>
        <translation>
            <numerusform>C’est autant que le nombre lui-même, %1, ou plus.</numerusform>
            <numerusform>C’est autant que le nombre lui-même, %1, ou plus.</numerusform>
        </translation>
    </message>
    <message id="Use less.">
        <source></source>
        <translation>Utiliser moins.</translation>
    </message>
    <message id="So many days before the end, it may not have begun yet.">
        <source></source>
        <translation>Autant de jours avant la fin, cela peut ne pas avoir commencé.</translation>
    </message>
    <message id="Use fewer.">
        <source></source>
        <translation>En utiliser moins.</translation>
    </message>
    <message id="This counts by a counter and by months at once.">
        <source></source>
        <translation>Ceci compte par un compteur et par mois à la fois.</translation>
    </message>
    <message id="Make it two entries of the list.">
        <source></source>
        <translation>En faire deux entrées de la liste.</translation>
    </message>
    <message id="This has neither a counter nor months.">
        <source></source>
        <translation>Ceci n’a ni compteur ni mois.</translation>
    </message>
    <message id="Give one of them.">
        <source></source>
        <translation>Donner l’un d’eux.</translation>
    </message>
    <message id="This text has lost the placeholder of what it translates.">
        <source></source>
        <translation>Ce texte a perdu l’emplacement de ce qu’il traduit.</translation>
    </message>
    <message id="Put {%1} where its name belongs." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Mettre {%1} là où va son nom.</numerusform>
            <numerusform>Mettre {%1} là où va son nom.</numerusform>
        </translation>
    </message>
    <message id="No text of this airframe says %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Aucun texte de cette description du type ne dit %1.</numerusform>
            <numerusform>Aucun texte de cette description du type ne dit %1.</numerusform>
        </translation>
    </message>
    <message id="Write it as it stands in the file, or remove it.">
        <source></source>
        <translation>L’écrire comme il est dans le fichier, ou l’enlever.</translation>
    </message>
    <message id="These are %1 languages." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Cela fait %1 langues.</numerusform>
            <numerusform>Cela fait %1 langues.</numerusform>
        </translation>
    </message>
    <message id="Give %1 at most." numerus="yes">
        <source></source>
        <translation>
            <numerusform>En donner %1 au plus.</numerusform>
            <numerusform>En donner %1 au plus.</numerusform>
        </translation>
    </message>
    <message id="%1 is not a language's code." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 n’est pas le code d’une langue.</numerusform>
            <numerusform>%1 n’est pas le code d’une langue.</numerusform>
        </translation>
    </message>
    <message id="Use the two lower-case letters of ISO 639-1, as in %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Utiliser les deux lettres minuscules d’ISO 639-1, comme dans %1.</numerusform>
            <numerusform>Utiliser les deux lettres minuscules d’ISO 639-1, comme dans %1.</numerusform>
        </translation>
    </message>
    <message id="%1 waits for %2" numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 attend %2</numerusform>
            <numerusform>%1 attend %2</numerusform>
        </translation>
    </message>
    <message id="No order can settle these points: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Aucun ordre ne peut traiter ces points&#x202f;: %1.</numerusform>
            <numerusform>Aucun ordre ne peut traiter ces points&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="Break the circle: look at their after, through, opens, closes and when, and at the changes' needs.">
        <source></source>
        <translation>Rompre le cercle&#x202f;: regarder leurs after, through, opens, closes et when, et les needs des changements.</translation>
    </message>
    <message id="list its files">
        <source></source>
        <translation>énumérer leurs dossiers</translation>
    </message>
    <message id="note its discrepancies">
        <source></source>
        <translation>noter leurs anomalies</translation>
    </message>
    <message id="be opened">
        <source></source>
        <translation>être ouvertes</translation>
    </message>
    <message id="keep the airframe">
        <source></source>
        <translation>conserver la description du type</translation>
    </message>
    <message id="keep the aircraft">
        <source></source>
        <translation>conserver l’aéronef</translation>
    </message>
    <message id="list its aircraft">
        <source></source>
        <translation>énumérer leurs aéronefs</translation>
    </message>
    <message id="The archive has no such %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ceci manque dans les archives&#x202f;: %1.</numerusform>
            <numerusform>Ceci manque dans les archives&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="read the %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>lire %1</numerusform>
            <numerusform>lire %1</numerusform>
        </translation>
    </message>
    <message id="airframe">
        <source></source>
        <translation>la description du type</translation>
    </message>
    <message id="photo">
        <source></source>
        <translation>la photo</translation>
    </message>
    <message id="make its copy">
        <source></source>
        <translation>faire leur copie</translation>
    </message>
    <message id="read its copy">
        <source></source>
        <translation>lire leur copie</translation>
    </message>
    <message id="finish its copy">
        <source></source>
        <translation>finir leur copie</translation>
    </message>
    <message id="be read">
        <source></source>
        <translation>être lues</translation>
    </message>
    <message id="be copied">
        <source></source>
        <translation>être copiées</translation>
    </message>
    <message id="begin">
        <source></source>
        <translation>commencer</translation>
    </message>
    <message id="commit">
        <source></source>
        <translation>valider l’écriture</translation>
    </message>
    <message id="undo">
        <source></source>
        <translation>annuler l’écriture</translation>
    </message>
    <message id="The export could not be written: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’export n’a pas pu être écrit&#x202f;: %1.</numerusform>
            <numerusform>L’export n’a pas pu être écrit&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="Nothing is left of it. Make room, or choose another folder.">
        <source></source>
        <translation>Il n’en reste rien. Faire de la place, ou choisir un autre dossier.</translation>
    </message>
    <message id="There is a file already; an export never overwrites one.">
        <source></source>
        <translation>Il y a déjà un fichier&#x202f;; un export n’en remplace jamais un.</translation>
    </message>
    <message id="Look at its registration.">
        <source></source>
        <translation>Vérifier son immatriculation.</translation>
    </message>
    <message id="search">
        <source></source>
        <translation>chercher</translation>
    </message>
    <message id="read the point's history">
        <source></source>
        <translation>lire l’historique du point</translation>
    </message>
    <message id="keep the record">
        <source></source>
        <translation>conserver le compte rendu</translation>
    </message>
    <message id="link the record">
        <source></source>
        <translation>relier le compte rendu</translation>
    </message>
    <message id="read the record's signatures">
        <source></source>
        <translation>lire les signatures du compte rendu</translation>
    </message>
    <message id="keep the signature">
        <source></source>
        <translation>conserver la signature</translation>
    </message>
    <message id="look for the record">
        <source></source>
        <translation>chercher le compte rendu</translation>
    </message>
    <message id="await a photo">
        <source></source>
        <translation>attendre une photo</translation>
    </message>
    <message id="keep the photo">
        <source></source>
        <translation>conserver la photo</translation>
    </message>
    <message id="keep the record's PDF">
        <source></source>
        <translation>conserver le PDF du compte rendu</translation>
    </message>
    <message id="list its rounds">
        <source></source>
        <translation>énumérer leurs visites</translation>
    </message>
    <message id="read the round">
        <source></source>
        <translation>lire la visite</translation>
    </message>
    <message id="find the round">
        <source></source>
        <translation>trouver la visite</translation>
    </message>
    <message id="keep the event">
        <source></source>
        <translation>conserver l’événement</translation>
    </message>
    <message id="keep the round">
        <source></source>
        <translation>conserver la visite</translation>
    </message>
    <message id="look for the photo">
        <source></source>
        <translation>chercher la photo</translation>
    </message>
    <message id="seal the round">
        <source></source>
        <translation>sceller la visite</translation>
    </message>
    <message id="read its older records">
        <source></source>
        <translation>lire leurs comptes rendus plus anciens</translation>
    </message>
    <message id="move its older records">
        <source></source>
        <translation>déplacer leurs comptes rendus plus anciens</translation>
    </message>
    <message id="A record could not be packed: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un compte rendu n’a pas pu être compressé&#x202f;: %1.</numerusform>
            <numerusform>Un compte rendu n’a pas pu être compressé&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="read the record">
        <source></source>
        <translation>lire le compte rendu</translation>
    </message>
    <message id="read the record's PDF">
        <source></source>
        <translation>lire le PDF du compte rendu</translation>
    </message>
    <message id="list its records">
        <source></source>
        <translation>énumérer leurs comptes rendus</translation>
    </message>
    <message id="read the aircraft's records">
        <source></source>
        <translation>lire les comptes rendus de l’aéronef</translation>
    </message>
    <message id="find the latest records">
        <source></source>
        <translation>trouver les derniers comptes rendus</translation>
    </message>
    <message id="let the record go">
        <source></source>
        <translation>éliminer le compte rendu</translation>
    </message>
    <message id="let the photo go">
        <source></source>
        <translation>éliminer la photo</translation>
    </message>
    <message id="be settled">
        <source></source>
        <translation>être mises au repos</translation>
    </message>
    <message id="This is not base64.">
        <source></source>
        <translation>Ce n’est pas du base64.</translation>
    </message>
    <message id="This base64 doesn't end as it must.">
        <source></source>
        <translation>Ce base64 ne finit pas comme il le doit.</translation>
    </message>
    <message id="This is not hex.">
        <source></source>
        <translation>Ce n’est pas de l’hexadécimal.</translation>
    </message>
    <message id="This base64 lacks its padding.">
        <source></source>
        <translation>Il manque à ce base64 son remplissage.</translation>
    </message>
    <message id="An object is expected here.">
        <source></source>
        <translation>Un objet est attendu ici.</translation>
    </message>
    <message id="A text is expected here.">
        <source></source>
        <translation>Un texte est attendu ici.</translation>
    </message>
    <message id="This text is empty.">
        <source></source>
        <translation>Ce texte est vide.</translation>
    </message>
    <message id="This text is longer than %1 bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce texte a plus de %1 octets.</numerusform>
            <numerusform>Ce texte a plus de %1 octets.</numerusform>
        </translation>
    </message>
    <message id="This text holds control characters or is not UTF-8.">
        <source></source>
        <translation>Ce texte contient des caractères de commande ou n’est pas de l’UTF-8.</translation>
    </message>
    <message id="A decimal number in quotes is expected here.">
        <source></source>
        <translation>Un nombre décimal entre guillemets est attendu ici.</translation>
    </message>
    <message id="A SHA-256 of 64 lower-case hex digits is expected here.">
        <source></source>
        <translation>Un SHA-256 de 64 chiffres hexadécimaux minuscules est attendu ici.</translation>
    </message>
    <message id="An integer from %1 to %2 is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un nombre entier de %1 à %2 est attendu ici.</numerusform>
            <numerusform>Un nombre entier de %1 à %2 est attendu ici.</numerusform>
        </translation>
    </message>
    <message id="One of these words is expected here: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’un de ces mots est attendu ici&#x202f;: %1.</numerusform>
            <numerusform>L’un de ces mots est attendu ici&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="A list of at most %1 is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Une liste de %1 entrées au plus est attendue ici.</numerusform>
            <numerusform>Une liste de %1 entrées au plus est attendue ici.</numerusform>
        </translation>
    </message>
    <message id="This field is not known.">
        <source></source>
        <translation>Ce champ n’est pas connu.</translation>
    </message>
    <message id="The name %1 stands twice in one object." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le nom %1 est deux fois dans un objet.</numerusform>
            <numerusform>Le nom %1 est deux fois dans un objet.</numerusform>
        </translation>
    </message>
    <message id="Keep one of the two.">
        <source></source>
        <translation>Garder l’un des deux.</translation>
    </message>
    <message id="A number is too large for any reader.">
        <source></source>
        <translation>Un nombre est trop grand pour tout lecteur.</translation>
    </message>
    <message id="Write a smaller number.">
        <source></source>
        <translation>Écrire un nombre plus petit.</translation>
    </message>
    <message id="The text is not JSON: it breaks off or goes wrong at byte %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le texte n’est pas du JSON&#x202f;: il s’interrompt ou devient faux à l’octet %1.</numerusform>
            <numerusform>Le texte n’est pas du JSON&#x202f;: il s’interrompt ou devient faux à l’octet %1.</numerusform>
        </translation>
    </message>
    <message id="Mend the text there.">
        <source></source>
        <translation>Corriger le texte à cet endroit.</translation>
    </message>
    <message id="Arrays and objects are nested more than %1 deep." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les listes et les objets sont imbriqués sur plus de %1 niveaux.</numerusform>
            <numerusform>Les listes et les objets sont imbriqués sur plus de %1 niveaux.</numerusform>
        </translation>
    </message>
    <message id="Nest less deep.">
        <source></source>
        <translation>Imbriquer moins.</translation>
    </message>
    <message id="The text is larger than %1 bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le texte a plus de %1 octets.</numerusform>
            <numerusform>Le texte a plus de %1 octets.</numerusform>
        </translation>
    </message>
    <message id="Make it smaller.">
        <source></source>
        <translation>Le réduire.</translation>
    </message>
    <message id="The text begins with a byte-order mark.">
        <source></source>
        <translation>Le texte commence par une marque d’ordre des octets (BOM).</translation>
    </message>
    <message id="Save it without one.">
        <source></source>
        <translation>L’enregistrer sans elle.</translation>
    </message>
    <message id="The text is not UTF-8 at byte %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le texte n’est pas de l’UTF-8 à l’octet %1.</numerusform>
            <numerusform>Le texte n’est pas de l’UTF-8 à l’octet %1.</numerusform>
        </translation>
    </message>
    <message id="Save it as UTF-8.">
        <source></source>
        <translation>L’enregistrer en UTF-8.</translation>
    </message>
    <message id="The text has a NUL at byte %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le texte a un NUL à l’octet %1.</numerusform>
            <numerusform>Le texte a un NUL à l’octet %1.</numerusform>
        </translation>
    </message>
    <message id="The text is not JSON.">
        <source></source>
        <translation>Le texte n’est pas du JSON.</translation>
    </message>
    <message id="A number here can only be an integer.">
        <source></source>
        <translation>Un nombre ne peut être ici qu’entier.</translation>
    </message>
    <message id="This is too large, nested too deep, or holds what is not UTF-8.">
        <source></source>
        <translation>C’est trop grand, trop imbriqué, ou contient ce qui n’est pas de l’UTF-8.</translation>
    </message>
    <message id="This is said by %1, the key's holder is %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ceci est dit par %1, la clé appartient à %2.</numerusform>
            <numerusform>Ceci est dit par %1, la clé appartient à %2.</numerusform>
        </translation>
    </message>
    <message id="Sign with the key of the person who says it.">
        <source></source>
        <translation>Signer avec la clé de la personne qui le dit.</translation>
    </message>
    <message id="The signature of what was asked must declare low S.">
        <source></source>
        <translation>La signature de ce qui a été demandé doit déclarer un S bas.</translation>
    </message>
    <message id="What was asked is said to be by %1, but the key is %2's." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce qui a été demandé serait de %1, mais la clé est à %2.</numerusform>
            <numerusform>Ce qui a été demandé serait de %1, mais la clé est à %2.</numerusform>
        </translation>
    </message>
    <message id="This was signed by another key than that of %1, from whose device it came." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ceci a été signé avec une autre clé que celle de %1, de l’appareil de qui cela vient.</numerusform>
            <numerusform>Ceci a été signé avec une autre clé que celle de %1, de l’appareil de qui cela vient.</numerusform>
        </translation>
    </message>
    <message id="Each says it on their own device.">
        <source></source>
        <translation>Chacun le dit sur son propre appareil.</translation>
    </message>
    <message id="This is not the content of a record: its format is not “ambit-record”.">
        <source></source>
        <translation>Ce n’est pas le contenu d’un compte rendu&#x202f;: son format n’est pas «&#x202f;ambit-record&#x202f;».</translation>
    </message>
    <message id="This Ambit doesn't know records of this version and kind.">
        <source></source>
        <translation>Cet Ambit ne connaît pas les comptes rendus de cette version et de ce genre.</translation>
    </message>
    <message id="Use a newer Ambit.">
        <source></source>
        <translation>Utiliser un Ambit plus récent.</translation>
    </message>
    <message id="“fit” can't stand beside this point's outcome.">
        <source></source>
        <translation>«&#x202f;fit&#x202f;» ne peut pas être à côté du résultat de ce point.</translation>
    </message>
    <message id="A value out of its limit isn't sound.">
        <source></source>
        <translation>Une valeur hors de sa limite n’est pas conforme.</translation>
    </message>
    <message id="The version isn't the one that brought the latest kind among the events.">
        <source></source>
        <translation>La version n’est pas celle qui a apporté le genre le plus récent parmi les événements.</translation>
    </message>
    <message id="This isn't what the record's own events say.">
        <source></source>
        <translation>Ce n’est pas ce que disent les événements du compte rendu.</translation>
    </message>
    <message id="The signer gave no ES256 signature.">
        <source></source>
        <translation>Le signataire n’a pas donné de signature ES256.</translation>
    </message>
    <message id="The PDF's signature is not one that Ambit makes.">
        <source></source>
        <translation>La signature du PDF n’est pas de celles que fait Ambit.</translation>
    </message>
    <message id="The PDF was changed after signing, or its signature is not in the one form Ambit makes.">
        <source></source>
        <translation>Le PDF a été modifié après la signature, ou sa signature n’a pas la seule forme que fait Ambit.</translation>
    </message>
    <message id="The PDF's signature has high S.">
        <source></source>
        <translation>La signature du PDF a un S haut.</translation>
    </message>
    <message id="The PDF's signature by %1 doesn't hold." numerus="yes">
        <source></source>
        <translation>
            <numerusform>La signature du PDF par %1 ne tient pas.</numerusform>
            <numerusform>La signature du PDF par %1 ne tient pas.</numerusform>
        </translation>
    </message>
    <message id="Only a concluded round becomes a record.">
        <source></source>
        <translation>Seule une visite conclue devient un compte rendu.</translation>
    </message>
    <message id="This is not a P-256 key with its curve named and its point written out.">
        <source></source>
        <translation>Ce n’est pas une clé P-256 à courbe nommée et à point écrit en entier.</translation>
    </message>
    <message id="This is not a P-256 signature in DER.">
        <source></source>
        <translation>Ce n’est pas une signature P-256 en DER.</translation>
    </message>
    <message id="A certificate is base64 text.">
        <source></source>
        <translation>Un certificat est du texte en base64.</translation>
    </message>
    <message id="This certificate is not strict base64.">
        <source></source>
        <translation>Ce certificat n’est pas du base64 strict.</translation>
    </message>
    <message id="The protected header doesn't name one to eight certificates in x5c.">
        <source></source>
        <translation>L’en-tête protégé ne nomme pas d’un à huit certificats dans x5c.</translation>
    </message>
    <message id="This is a countersignature, and the signature before it is missing.">
        <source></source>
        <translation>C’est une contresignature, et la signature d’avant manque.</translation>
    </message>
    <message id="The protected header's “s” can only be “low”.">
        <source></source>
        <translation>Le «&#x202f;s&#x202f;» de l’en-tête protégé ne peut être que «&#x202f;low&#x202f;».</translation>
    </message>
    <message id="The protected header is not in canonical form, or says more than Ambit's.">
        <source></source>
        <translation>L’en-tête protégé n’est pas en forme canonique, ou en dit plus que celui d’Ambit.</translation>
    </message>
    <message id="The protected header is not in canonical form.">
        <source></source>
        <translation>L’en-tête protégé n’est pas en forme canonique.</translation>
    </message>
    <message id="This countersignature was given after another signature than the one before it: one was exchanged, taken away or moved.">
        <source></source>
        <translation>Cette contresignature a été donnée après une autre signature que celle d’avant&#x202f;: l’une a été échangée, enlevée ou déplacée.</translation>
    </message>
    <message id="The countersigner is named %1, the certificate's holder %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le contresignataire est nommé %1, le titulaire du certificat %2.</numerusform>
            <numerusform>Le contresignataire est nommé %1, le titulaire du certificat %2.</numerusform>
        </translation>
    </message>
    <message id="The protected header is not strict base64url.">
        <source></source>
        <translation>L’en-tête protégé n’est pas du base64url strict.</translation>
    </message>
    <message id="The protected header is not a JSON object.">
        <source></source>
        <translation>L’en-tête protégé n’est pas un objet JSON.</translation>
    </message>
    <message id="The signature demands an extension (crit) that Ambit doesn't know.">
        <source></source>
        <translation>La signature exige une extension (crit) qu’Ambit ne connaît pas.</translation>
    </message>
    <message id="The signature's algorithm is not ES256.">
        <source></source>
        <translation>L’algorithme de la signature n’est pas ES256.</translation>
    </message>
    <message id="A signature has exactly “protected” and “signature”, both texts.">
        <source></source>
        <translation>Une signature a exactement «&#x202f;protected&#x202f;» et «&#x202f;signature&#x202f;», deux textes.</translation>
    </message>
    <message id="The signature is not 64 bytes in strict base64url.">
        <source></source>
        <translation>La signature ne fait pas 64 octets en base64url strict.</translation>
    </message>
    <message id="The signature declares low S but has high S.">
        <source></source>
        <translation>La signature déclare un S bas mais a un S haut.</translation>
    </message>
    <message id="The signature of %1 doesn't hold: something was changed after signing." numerus="yes">
        <source></source>
        <translation>
            <numerusform>La signature de %1 ne tient pas&#x202f;: quelque chose a été modifié après la signature.</numerusform>
            <numerusform>La signature de %1 ne tient pas&#x202f;: quelque chose a été modifié après la signature.</numerusform>
        </translation>
    </message>
    <message id="The cryptographic library failed: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>La bibliothèque cryptographique a échoué&#x202f;: %1.</numerusform>
            <numerusform>La bibliothèque cryptographique a échoué&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="signing">
        <source></source>
        <translation>en signant</translation>
    </message>
    <message id="making a key">
        <source></source>
        <translation>en faisant une clé</translation>
    </message>
    <message id="making a certificate">
        <source></source>
        <translation>en faisant un certificat</translation>
    </message>
    <message id="locking the key">
        <source></source>
        <translation>en verrouillant la clé</translation>
    </message>
    <message id="writing the certificate">
        <source></source>
        <translation>en écrivant le certificat</translation>
    </message>
    <message id="The connection's certificate is not an X.509 certificate in DER.">
        <source></source>
        <translation>Le certificat de la connexion n’est pas un certificat X.509 en DER.</translation>
    </message>
    <message id="The connection's certificate is not vouched for by %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le certificat de la connexion n’est pas garanti par %1.</numerusform>
            <numerusform>Le certificat de la connexion n’est pas garanti par %1.</numerusform>
        </translation>
    </message>
    <message id="This is not a record in canonical form.">
        <source></source>
        <translation>Ce n’est pas un compte rendu en forme canonique.</translation>
    </message>
    <message id="Use the file as it was signed.">
        <source></source>
        <translation>Utiliser le fichier tel qu’il a été signé.</translation>
    </message>
    <message id="The signature doesn't cover the file from its first byte to its last: something was added or cut off.">
        <source></source>
        <translation>La signature ne couvre pas le fichier du premier octet au dernier&#x202f;: quelque chose a été ajouté ou coupé.</translation>
    </message>
    <message id="The file doesn't bear exactly one signature of Ambit's form.">
        <source></source>
        <translation>Le fichier ne porte pas exactement une signature de la forme d’Ambit.</translation>
    </message>
    <message id="The signature leaves out more than itself.">
        <source></source>
        <translation>La signature laisse de côté plus qu’elle-même.</translation>
    </message>
    <message id="The signature is not written in lower-case hex.">
        <source></source>
        <translation>La signature n’est pas écrite en chiffres hexadécimaux minuscules.</translation>
    </message>
    <message id="The file's digest could not be computed.">
        <source></source>
        <translation>L’empreinte du fichier n’a pas pu être calculée.</translation>
    </message>
    <message id="The signature breaks off, or its padding isn't empty.">
        <source></source>
        <translation>La signature s’interrompt, ou son remplissage n’est pas vide.</translation>
    </message>
    <message id="The signature's padding is not as long as Ambit makes it.">
        <source></source>
        <translation>Le remplissage de la signature n’est pas aussi long que celui d’Ambit.</translation>
    </message>
    <message id="The file doesn't have exactly one field for each signature.">
        <source></source>
        <translation>Le fichier n’a pas exactement un champ pour chaque signature.</translation>
    </message>
    <message id="The file's field is not the signature that was checked.">
        <source></source>
        <translation>Le champ du fichier n’est pas la signature qui a été vérifiée.</translation>
    </message>
    <message id="The file holds more signatures than its fields show.">
        <source></source>
        <translation>Le fichier contient plus de signatures que ses champs n’en montrent.</translation>
    </message>
    <message id="The file hides objects in streams, which Ambit never does.">
        <source></source>
        <translation>Le fichier cache des objets dans des flux, ce qu’Ambit ne fait jamais.</translation>
    </message>
    <message id="The file doesn't carry exactly one attachment, record.json.">
        <source></source>
        <translation>Le fichier ne porte pas exactement une pièce jointe, record.json.</translation>
    </message>
    <message id="The attachment is not one and the same for every reader.">
        <source></source>
        <translation>La pièce jointe n’est pas une seule et même pour tout lecteur.</translation>
    </message>
    <message id="The attached record can't be unpacked.">
        <source></source>
        <translation>Le compte rendu joint ne peut pas être décompressé.</translation>
    </message>
    <message id="The file is not a sound PDF: readers could see different things.">
        <source></source>
        <translation>Le fichier n’est pas un PDF sain&#x202f;: des lecteurs pourraient voir des choses différentes.</translation>
    </message>
    <message id="The PDF and the record in it were signed with two keys.">
        <source></source>
        <translation>Le PDF et le compte rendu qu’il contient ont été signés avec deux clés.</translation>
    </message>
    <message id="The attached record bears more signatures than the PDF that it was attached to.">
        <source></source>
        <translation>Le compte rendu joint porte plus de signatures que le PDF auquel il a été joint.</translation>
    </message>
    <message id="What follows the signature is not exactly what a countersignature adds: something else was changed, added or cut off.">
        <source></source>
        <translation>Ce qui suit la signature n’est pas exactement ce qu’une contresignature ajoute&#x202f;: autre chose a été modifié, ajouté ou coupé.</translation>
    </message>
    <message id="Another record is attached than the first signature covers.">
        <source></source>
        <translation>Un autre compte rendu est joint que celui que couvre la première signature.</translation>
    </message>
    <message id="This is not a PDF that Ambit makes.">
        <source></source>
        <translation>Ce n’est pas un PDF comme en fait Ambit.</translation>
    </message>
    <message id="The file is not a sound PDF: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le fichier n’est pas un PDF sain&#x202f;: %1</numerusform>
            <numerusform>Le fichier n’est pas un PDF sain&#x202f;: %1</numerusform>
        </translation>
    </message>
    <message id="This PDF can't be countersigned: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce PDF ne peut pas être contresigné&#x202f;: %1.</numerusform>
            <numerusform>Ce PDF ne peut pas être contresigné&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="Use the PDF as Ambit signed it.">
        <source></source>
        <translation>Utiliser le PDF tel qu’Ambit l’a signé.</translation>
    </message>
    <message id="The record's last countersignature is by another key.">
        <source></source>
        <translation>La dernière contresignature du compte rendu est d’une autre clé.</translation>
    </message>
    <message id="Countersign the record and its PDF with the same key.">
        <source></source>
        <translation>Contresigner le compte rendu et son PDF avec la même clé.</translation>
    </message>
    <message id="The PDF is not that of the record before its last signature.">
        <source></source>
        <translation>Le PDF n’est pas celui du compte rendu d’avant sa dernière signature.</translation>
    </message>
    <message id="Give the PDF that belongs to the record.">
        <source></source>
        <translation>Donner le PDF qui appartient au compte rendu.</translation>
    </message>
    <message id="The bytes of this photo are missing.">
        <source></source>
        <translation>Les octets de cette photo manquent.</translation>
    </message>
    <message id="This photo is not a JPEG in grey or colour of the size it was drawn for.">
        <source></source>
        <translation>Cette photo n’est pas un JPEG gris ou couleur de la taille pour laquelle elle a été dessinée.</translation>
    </message>
    <message id="The drawn pages don't have exactly one place for this photo.">
        <source></source>
        <translation>Les pages dessinées n’ont pas exactement une place pour cette photo.</translation>
    </message>
    <message id="The drawn pages hold a signature already.">
        <source></source>
        <translation>Les pages dessinées contiennent déjà une signature.</translation>
    </message>
    <message id="The file is too large to be signed.">
        <source></source>
        <translation>Le fichier est trop grand pour être signé.</translation>
    </message>
    <message id="The drawn pages hold a form already.">
        <source></source>
        <translation>Les pages dessinées contiennent déjà un formulaire.</translation>
    </message>
    <message id="The record is countersigned already; a PDF carries it as first signed.">
        <source></source>
        <translation>Le compte rendu est déjà contresigné&#x202f;; un PDF le porte tel qu’il a d’abord été signé.</translation>
    </message>
    <message id="Make the PDF first, then countersign both.">
        <source></source>
        <translation>Faire d’abord le PDF, puis contresigner les deux.</translation>
    </message>
    <message id="The record was signed with another key.">
        <source></source>
        <translation>Le compte rendu a été signé avec une autre clé.</translation>
    </message>
    <message id="Sign the record and its PDF with the same key.">
        <source></source>
        <translation>Signer le compte rendu et son PDF avec la même clé.</translation>
    </message>
    <message id="The drawn pages can't be used: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les pages dessinées ne sont pas utilisables&#x202f;: %1</numerusform>
            <numerusform>Les pages dessinées ne sont pas utilisables&#x202f;: %1</numerusform>
        </translation>
    </message>
    <message id="%1 signed twice with the same key." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 a signé deux fois avec la même clé.</numerusform>
            <numerusform>%1 a signé deux fois avec la même clé.</numerusform>
        </translation>
    </message>
    <message id="This is not what was stored: its hash is another.">
        <source></source>
        <translation>Ce n’est pas ce qui a été conservé&#x202f;: son empreinte est une autre.</translation>
    </message>
    <message id="It bears no signature, or too many.">
        <source></source>
        <translation>Il ne porte aucune signature, ou trop.</translation>
    </message>
    <message id="The record was signed by %1, not by its signer." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le compte rendu a été signé par %1, pas par son signataire.</numerusform>
            <numerusform>Le compte rendu a été signé par %1, pas par son signataire.</numerusform>
        </translation>
    </message>
    <message id="The file is not in canonical form (RFC 8785): bytes were changed or it was reformatted.">
        <source></source>
        <translation>Le fichier n’est pas en forme canonique (RFC 8785)&#x202f;: des octets ont été changés ou il a été remis en forme.</translation>
    </message>
    <message id="A record has exactly “content” and “signatures”.">
        <source></source>
        <translation>Un compte rendu a exactement «&#x202f;content&#x202f;» et «&#x202f;signatures&#x202f;».</translation>
    </message>
    <message id="This is not a record.">
        <source></source>
        <translation>Ce n’est pas un compte rendu.</translation>
    </message>
    <message id="The record bears no signature.">
        <source></source>
        <translation>Le compte rendu ne porte aucune signature.</translation>
    </message>
    <message id="A record bears at most eight signatures.">
        <source></source>
        <translation>Un compte rendu porte huit signatures au plus.</translation>
    </message>
    <message id="The content's signer is %1, the key's is %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le signataire du contenu est %1, celui de la clé %2.</numerusform>
            <numerusform>Le signataire du contenu est %1, celui de la clé %2.</numerusform>
        </translation>
    </message>
    <message id="Sign with the key of the person who walked the round.">
        <source></source>
        <translation>Signer avec la clé de la personne qui a fait la visite.</translation>
    </message>
    <message id="%1 has signed this record with this key already." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 a déjà signé ce compte rendu avec cette clé.</numerusform>
            <numerusform>%1 a déjà signé ce compte rendu avec cette clé.</numerusform>
        </translation>
    </message>
    <message id="A countersignature is another person's, by a key of their own.">
        <source></source>
        <translation>Une contresignature est celle d’une autre personne, avec sa propre clé.</translation>
    </message>
    <message id="The record bears eight signatures already, and can't bear more.">
        <source></source>
        <translation>Le compte rendu porte déjà huit signatures, et ne peut en porter plus.</translation>
    </message>
    <message id="The countersigner is %1, the key's holder is %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le contresignataire est %1, la clé appartient à %2.</numerusform>
            <numerusform>Le contresignataire est %1, la clé appartient à %2.</numerusform>
        </translation>
    </message>
    <message id="Sign with the countersigner's own key.">
        <source></source>
        <translation>Signer avec la clé du contresignataire même.</translation>
    </message>
    <message id="A list is expected here.">
        <source></source>
        <translation>Une liste est attendue ici.</translation>
    </message>
    <message id="Plain text of at most 8192 bytes is expected here.">
        <source></source>
        <translation>Un texte simple de 8192 octets au plus est attendu ici.</translation>
    </message>
    <message id="This word is not one of those that can stand here.">
        <source></source>
        <translation>Ce mot n’est pas de ceux qui peuvent être ici.</translation>
    </message>
    <message id="A SHA-256 in lower-case hex is expected here.">
        <source></source>
        <translation>Un SHA-256 en hexadécimal minuscule est attendu ici.</translation>
    </message>
    <message id="A decimal number is expected here.">
        <source></source>
        <translation>Un nombre décimal est attendu ici.</translation>
    </message>
    <message id="A time in UTC is expected here.">
        <source></source>
        <translation>Une heure UTC est attendue ici.</translation>
    </message>
    <message id="A date is expected here, as 2026-06-20.">
        <source></source>
        <translation>Une date est attendue ici, comme 2026-06-20.</translation>
    </message>
    <message id="True or false is expected here.">
        <source></source>
        <translation>true ou false est attendu ici.</translation>
    </message>
    <message id="The events' numbers don't follow each other.">
        <source></source>
        <translation>Les numéros des événements ne se suivent pas.</translation>
    </message>
    <message id="A round begins with the event “opened”.">
        <source></source>
        <translation>Une visite commence par l’événement «&#x202f;opened&#x202f;».</translation>
    </message>
    <message id="A concluded round takes nothing more.">
        <source></source>
        <translation>Une visite conclue ne prend plus rien.</translation>
    </message>
    <message id="The round is not concluded.">
        <source></source>
        <translation>La visite n’est pas conclue.</translation>
    </message>
    <message id="A re-opened point was not settled again.">
        <source></source>
        <translation>Un point rouvert n’a pas été traité de nouveau.</translation>
    </message>
    <message id="A round is opened once.">
        <source></source>
        <translation>Une visite s’ouvre une fois.</translation>
    </message>
    <message id="A settled point must be re-opened before it is settled again.">
        <source></source>
        <translation>Un point traité doit être rouvert avant d’être traité de nouveau.</translation>
    </message>
    <message id="Only a settled point can be re-opened.">
        <source></source>
        <translation>Seul un point traité peut être rouvert.</translation>
    </message>
    <message id="Only a settled point is settled again.">
        <source></source>
        <translation>Seul un point traité est traité de nouveau.</translation>
    </message>
    <message id="A quick run is asked about once.">
        <source></source>
        <translation>On ne demande qu’une fois pour des points traités vite.</translation>
    </message>
    <message id="What is asked is numbered without a gap.">
        <source></source>
        <translation>Ce qui est demandé est numéroté sans lacune.</translation>
    </message>
    <message id="Only an open question is answered.">
        <source></source>
        <translation>Seule une question ouverte reçoit une réponse.</translation>
    </message>
    <message id="Only what is open is declined.">
        <source></source>
        <translation>Seul ce qui est ouvert est refusé.</translation>
    </message>
    <message id="Something that was asked is open still.">
        <source></source>
        <translation>Quelque chose de demandé est encore ouvert.</translation>
    </message>
    <message id="There is no conclusion to take back.">
        <source></source>
        <translation>Il n’y a pas de conclusion à reprendre.</translation>
    </message>
    <message id="A blocked stand is blocked once.">
        <source></source>
        <translation>Un poste bloqué ne se bloque qu’une fois.</translation>
    </message>
    <message id="Only a blocked stand is freed.">
        <source></source>
        <translation>Seul un poste bloqué est libéré.</translation>
    </message>
    <message id="A marked area is marked once.">
        <source></source>
        <translation>Une aire marquée ne se marque qu’une fois.</translation>
    </message>
    <message id="Only a marked area is cleared.">
        <source></source>
        <translation>Seule une aire marquée est libérée.</translation>
    </message>
    <message id="The light is said to be what it was not.">
        <source></source>
        <translation>De la lumière il est dit ce qu’elle n’était pas.</translation>
    </message>
    <message id="A round's own signature can't be part of what it signs.">
        <source></source>
        <translation>La signature d’une visite ne peut pas faire partie de ce qu’elle signe.</translation>
    </message>
    <message id="Degrees from -%1 to %1 are expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Des degrés de -%1 à %1 sont attendus ici.</numerusform>
            <numerusform>Des degrés de -%1 à %1 sont attendus ici.</numerusform>
        </translation>
    </message>
    <message id="32 hex digits in lower case are expected here.">
        <source></source>
        <translation>32 chiffres hexadécimaux minuscules sont attendus ici.</translation>
    </message>
    <message id="A list of %1 to %2 points is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Une liste de %1 à %2 points est attendue ici.</numerusform>
            <numerusform>Une liste de %1 à %2 points est attendue ici.</numerusform>
        </translation>
    </message>
    <message id="This kind of event is not known: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce genre d’événement n’est pas connu&#x202f;: %1.</numerusform>
            <numerusform>Ce genre d’événement n’est pas connu&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="The events' numbers don't follow each other: %1 is expected." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les numéros des événements ne se suivent pas&#x202f;: %1 est attendu.</numerusform>
            <numerusform>Les numéros des événements ne se suivent pas&#x202f;: %1 est attendu.</numerusform>
        </translation>
    </message>
    <message id="The airframe has no such %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ceci manque dans le type&#x202f;: %1.</numerusform>
            <numerusform>Ceci manque dans le type&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="walk">
        <source></source>
        <translation>parcours</translation>
    </message>
    <message id="point">
        <source></source>
        <translation>point</translation>
    </message>
    <message id="state of a setting">
        <source></source>
        <translation>état d’une position</translation>
    </message>
    <message id="There are too many combinations of settings to plan with.">
        <source></source>
        <translation>Il y a trop de combinaisons de positions pour planifier avec.</translation>
    </message>
    <message id="Let fewer points ask for settings.">
        <source></source>
        <translation>Faire demander des positions à moins de points.</translation>
    </message>
    <message id="There are too many conditions on changes of settings to plan with.">
        <source></source>
        <translation>Il y a trop de conditions sur les changements de position pour planifier avec.</translation>
    </message>
    <message id="This step can't be done: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Cette étape est impossible&#x202f;: %1.</numerusform>
            <numerusform>Cette étape est impossible&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="This piece is of another file than was asked for.">
        <source></source>
        <translation>Ce morceau est d’un autre fichier que demandé.</translation>
    </message>
    <message id="This piece begins at byte %1; byte %2 was asked for." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce morceau commence à l’octet %1&#x202f;; l’octet %2 était demandé.</numerusform>
            <numerusform>Ce morceau commence à l’octet %1&#x202f;; l’octet %2 était demandé.</numerusform>
        </translation>
    </message>
    <message id="This file is said to have %1 bytes; %2 were expected." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce fichier aurait %1 octets&#x202f;; %2 étaient attendus.</numerusform>
            <numerusform>Ce fichier aurait %1 octets&#x202f;; %2 étaient attendus.</numerusform>
        </translation>
    </message>
    <message id="This file is said to have %1 bytes; %2 at most were expected." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce fichier aurait %1 octets&#x202f;; %2 au plus étaient attendus.</numerusform>
            <numerusform>Ce fichier aurait %1 octets&#x202f;; %2 au plus étaient attendus.</numerusform>
        </translation>
    </message>
    <message id="This piece has no bytes, or more than its file.">
        <source></source>
        <translation>Ce morceau n’a pas d’octets, ou plus que son fichier.</translation>
    </message>
    <message id="The bytes that came are not the file that was asked for.">
        <source></source>
        <translation>Les octets venus ne sont pas le fichier demandé.</translation>
    </message>
    <message id="Another file is on its way.">
        <source></source>
        <translation>Un autre fichier est en route.</translation>
    </message>
    <message id="Ask again when it is here.">
        <source></source>
        <translation>Redemander quand il sera là.</translation>
    </message>
    <message id="A file was asked for before the last question was answered.">
        <source></source>
        <translation>Un fichier a été demandé avant la réponse à la dernière question.</translation>
    </message>
    <message id="A piece of a file came that nobody had asked for.">
        <source></source>
        <translation>Un morceau de fichier est venu que personne n’avait demandé.</translation>
    </message>
    <message id="An answer came that nobody had asked for.">
        <source></source>
        <translation>Une réponse est venue que personne n’avait demandée.</translation>
    </message>
    <message id="A one-time word needs %1 random bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un mot à usage unique demande %1 octets de hasard.</numerusform>
            <numerusform>Un mot à usage unique demande %1 octets de hasard.</numerusform>
        </translation>
    </message>
    <message id="A plain text of 1 to %1 bytes is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un texte simple de 1 à %1 octets est attendu ici.</numerusform>
            <numerusform>Un texte simple de 1 à %1 octets est attendu ici.</numerusform>
        </translation>
    </message>
    <message id="%1 lower-case hex digits are expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 chiffres hexadécimaux minuscules sont attendus ici.</numerusform>
            <numerusform>%1 chiffres hexadécimaux minuscules sont attendus ici.</numerusform>
        </translation>
    </message>
    <message id="A one-time word is %1 letters and digits." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un mot à usage unique a %1 lettres et chiffres.</numerusform>
            <numerusform>Un mot à usage unique a %1 lettres et chiffres.</numerusform>
        </translation>
    </message>
    <message id="Where nothing is had there is no last event.">
        <source></source>
        <translation>Où il n’y a rien, il n’y a pas de dernier événement.</translation>
    </message>
    <message id="A list of at most %1 names is expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Une liste de %1 noms au plus est attendue ici.</numerusform>
            <numerusform>Une liste de %1 noms au plus est attendue ici.</numerusform>
        </translation>
    </message>
    <message id="A name is a plain text of 1 to %1 bytes." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un nom est un texte simple de 1 à %1 octets.</numerusform>
            <numerusform>Un nom est un texte simple de 1 à %1 octets.</numerusform>
        </translation>
    </message>
    <message id="A statement is an object in canonical JSON.">
        <source></source>
        <translation>Une déclaration est un objet en JSON canonique.</translation>
    </message>
    <message id="record.json comes first, record.pdf second.">
        <source></source>
        <translation>record.json vient d’abord, record.pdf ensuite.</translation>
    </message>
    <message id="A record has a file at least.">
        <source></source>
        <translation>Un compte rendu a au moins un fichier.</translation>
    </message>
    <message id="Base64url without padding is expected here.">
        <source></source>
        <translation>Du base64url sans remplissage est attendu ici.</translation>
    </message>
    <message id="This piece reaches beyond its file's end.">
        <source></source>
        <translation>Ce morceau dépasse la fin de son fichier.</translation>
    </message>
    <message id="This code is not known.">
        <source></source>
        <translation>Ce code n’est pas connu.</translation>
    </message>
    <message id="Only the %1 may send %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Seul le côté «&#x202f;%1&#x202f;» peut envoyer %2.</numerusform>
            <numerusform>Seul le côté «&#x202f;%1&#x202f;» peut envoyer %2.</numerusform>
        </translation>
    </message>
    <message id="watcher">
        <source></source>
        <translation>qui suit</translation>
    </message>
    <message id="walker">
        <source></source>
        <translation>qui fait la visite</translation>
    </message>
    <message id="This kind of frame is not known: %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce genre de message n’est pas connu&#x202f;: %1</numerusform>
            <numerusform>Ce genre de message n’est pas connu&#x202f;: %1</numerusform>
        </translation>
    </message>
    <message id="The other device speaks version %1 of the watch protocol, this one version %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’autre appareil parle la version %1 du protocole de suivi, celui-ci la version %2.</numerusform>
            <numerusform>L’autre appareil parle la version %1 du protocole de suivi, celui-ci la version %2.</numerusform>
        </translation>
    </message>
    <message id="A frame is at most %1 bytes; this one has %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Un message a %1 octets au plus&#x202f;; celui-ci en a %2.</numerusform>
            <numerusform>Un message a %1 octets au plus&#x202f;; celui-ci en a %2.</numerusform>
        </translation>
    </message>
    <message id="A frame is canonical JSON, whole; this is not.">
        <source></source>
        <translation>Un message est du JSON canonique, entier&#x202f;; celui-ci ne l’est pas.</translation>
    </message>
    <message id="This invitation is of version %1; this Ambit reads version 1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Cette invitation est de la version %1&#x202f;; cet Ambit lit la version 1.</numerusform>
            <numerusform>Cette invitation est de la version %1&#x202f;; cet Ambit lit la version 1.</numerusform>
        </translation>
    </message>
    <message id="%1 is said once, after %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 se dit une fois, après %2.</numerusform>
            <numerusform>%1 se dit une fois, après %2.</numerusform>
        </translation>
    </message>
    <message id="The first thing a walker says is %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>La première chose que dit qui fait la visite est %1.</numerusform>
            <numerusform>La première chose que dit qui fait la visite est %1.</numerusform>
        </translation>
    </message>
    <message id="Only the watcher may send %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Seul qui suit peut envoyer %1.</numerusform>
            <numerusform>Seul qui suit peut envoyer %1.</numerusform>
        </translation>
    </message>
    <message id="Another round was told of before the last one was answered.">
        <source></source>
        <translation>Une autre visite a été annoncée avant la réponse à la dernière.</translation>
    </message>
    <message id="This round was told of already.">
        <source></source>
        <translation>Cette visite a déjà été annoncée.</translation>
    </message>
    <message id="This event is of another round than was told of.">
        <source></source>
        <translation>Cet événement est d’une autre visite qu’annoncé.</translation>
    </message>
    <message id="Event %1 came where event %2 is the next." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’événement %1 est venu là où l’événement %2 est le suivant.</numerusform>
            <numerusform>L’événement %1 est venu là où l’événement %2 est le suivant.</numerusform>
        </translation>
    </message>
    <message id="More events came than were asked for.">
        <source></source>
        <translation>Il est venu plus d’événements que demandé.</translation>
    </message>
    <message id="The first event of a round opens it, and its hash is the round's id.">
        <source></source>
        <translation>Le premier événement d’une visite l’ouvre, et son empreinte est l’identifiant de la visite.</translation>
    </message>
    <message id="This round is too long to be followed.">
        <source></source>
        <translation>Cette visite est trop longue pour être suivie.</translation>
    </message>
    <message id="An answer came to what nobody had said.">
        <source></source>
        <translation>Une réponse est venue à ce que personne n’avait dit.</translation>
    </message>
    <message id="This record is of another round than was told of.">
        <source></source>
        <translation>Ce compte rendu est d’une autre visite qu’annoncé.</translation>
    </message>
    <message id="This isn't the record that the round's last event names.">
        <source></source>
        <translation>Ce n’est pas le compte rendu que nomme le dernier événement de la visite.</translation>
    </message>
    <message id="What was said last isn't answered yet.">
        <source></source>
        <translation>Ce qui a été dit en dernier n’a pas encore sa réponse.</translation>
    </message>
    <message id="Wait until it is.">
        <source></source>
        <translation>Attendre qu’il l’ait.</translation>
    </message>
    <message id="The last record offered isn't answered yet.">
        <source></source>
        <translation>Le dernier compte rendu offert n’a pas encore sa réponse.</translation>
    </message>
    <message id="%1 is said once." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 se dit une fois.</numerusform>
            <numerusform>%1 se dit une fois.</numerusform>
        </translation>
    </message>
    <message id="Nothing but %1 may be said before %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Rien d’autre que %1 ne peut être dit avant %2.</numerusform>
            <numerusform>Rien d’autre que %1 ne peut être dit avant %2.</numerusform>
        </translation>
    </message>
    <message id="Only the walker may send %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Seul qui fait la visite peut envoyer %1.</numerusform>
            <numerusform>Seul qui fait la visite peut envoyer %1.</numerusform>
        </translation>
    </message>
    <message id="%1 names a round that isn't walked here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 nomme une visite qui n’est pas faite ici.</numerusform>
            <numerusform>%1 nomme une visite qui n’est pas faite ici.</numerusform>
        </translation>
    </message>
    <message id="The first %1 of a round names its last event's hash." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le premier %1 d’une visite nomme l’empreinte de son dernier événement.</numerusform>
            <numerusform>Le premier %1 d’une visite nomme l’empreinte de son dernier événement.</numerusform>
        </translation>
    </message>
    <message id="Set this round's copy on the watcher's device aside and follow it anew.">
        <source></source>
        <translation>Mettre de côté la copie de cette visite sur l’appareil qui suit, et la suivre de nouveau.</translation>
    </message>
    <message id="The watcher has %1 events of this round, the walker %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’appareil qui suit a %1 événements de cette visite, l’autre %2.</numerusform>
            <numerusform>L’appareil qui suit a %1 événements de cette visite, l’autre %2.</numerusform>
        </translation>
    </message>
    <message id="The walker's log can't be read now.">
        <source></source>
        <translation>Le journal de l’autre appareil est illisible maintenant.</translation>
    </message>
    <message id="Event %1 of this round is another on the two devices." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’événement %1 de cette visite n’est pas le même sur les deux appareils.</numerusform>
            <numerusform>L’événement %1 de cette visite n’est pas le même sur les deux appareils.</numerusform>
        </translation>
    </message>
    <message id="Only the first %1 of a round names an event's hash." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Seul le premier %1 d’une visite nomme l’empreinte d’un événement.</numerusform>
            <numerusform>Seul le premier %1 d’une visite nomme l’empreinte d’un événement.</numerusform>
        </translation>
    </message>
    <message id="%1 says %2 events; from %3 to %4 are possible." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 dit %2 événements&#x202f;; de %3 à %4 sont possibles.</numerusform>
            <numerusform>%1 dit %2 événements&#x202f;; de %3 à %4 sont possibles.</numerusform>
        </translation>
    </message>
    <message id="%1 takes room back, or says nothing new." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 reprend de la place, ou ne dit rien de nouveau.</numerusform>
            <numerusform>%1 reprend de la place, ou ne dit rien de nouveau.</numerusform>
        </translation>
    </message>
    <message id="%1 came before the last one was answered." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 est venu avant la réponse au dernier.</numerusform>
            <numerusform>%1 est venu avant la réponse au dernier.</numerusform>
        </translation>
    </message>
    <message id="Event %1 of this round is too large to be sent." numerus="yes">
        <source></source>
        <translation>
            <numerusform>L’événement %1 de cette visite est trop grand pour être envoyé.</numerusform>
            <numerusform>L’événement %1 de cette visite est trop grand pour être envoyé.</numerusform>
        </translation>
    </message>
    <message id="“fit” can't stand beside where this point's value is going.">
        <source></source>
        <translation>«&#x202f;fit&#x202f;» ne peut pas figurer à côté de l’évolution de la valeur de ce point.</translation>
    </message>
    <message id="Where a value is going is told of a settled point.">
        <source></source>
        <translation>L’évolution d’une valeur se dit d’un point réglé.</translation>
    </message>
    <message id="%1 comes to its limit before the next flight ends, as its values go." numerus="yes">
        <source></source>
        <translation>
            <numerusform>%1 atteint sa limite avant la fin du prochain vol, d’après ses valeurs.</numerusform>
            <numerusform>%1 atteint sa limite avant la fin du prochain vol, d’après ses valeurs.</numerusform>
        </translation>
    </message>
    <message id="true is expected here, or nothing.">
        <source></source>
        <translation>true est attendu ici, ou rien.</translation>
    </message>
    <message id="The value isn't the one measured in the photo.">
        <source></source>
        <translation>La valeur n’est pas celle mesurée dans la photo.</translation>
    </message>
    <message id="A list that isn't empty is expected here.">
        <source></source>
        <translation>Une liste non vide est attendue ici.</translation>
    </message>
    <message id="What was measured in a photo needs that photo.">
        <source></source>
        <translation>Ce qui a été mesuré dans une photo demande cette photo.</translation>
    </message>
    <message id="Pixels from -100000 to 100000 with at most 2 decimals are expected here.">
        <source></source>
        <translation>Des pixels de -100000 à 100000 avec au plus 2 décimales sont attendus ici.</translation>
    </message>
    <message id="Zero or more is expected here.">
        <source></source>
        <translation>Zéro ou plus est attendu ici.</translation>
    </message>
    <message id="At least %1 marks are expected here." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Au moins %1 repères sont attendus ici.</numerusform>
            <numerusform>Au moins %1 repères sont attendus ici.</numerusform>
        </translation>
    </message>
    <message id="Without a card only an angle can be measured.">
        <source></source>
        <translation>Sans carte, seul un angle peut être mesuré.</translation>
    </message>
    <message id="Lay a card beside it, and take the picture again.">
        <source></source>
        <translation>Poser une carte à côté, et reprendre la photo.</translation>
    </message>
    <message id="A line has two ends.">
        <source></source>
        <translation>Une ligne a deux extrémités.</translation>
    </message>
    <message id="The limit's own unit isn't named again.">
        <source></source>
        <translation>L’unité même de la limite n’est pas nommée à nouveau.</translation>
    </message>
    <message id="Leave the unit out.">
        <source></source>
        <translation>Omettre l’unité.</translation>
    </message>
    <message id="The airframe doesn't say that this stands against the conclusion.">
        <source></source>
        <translation>La description ne dit pas que cela s’oppose à la conclusion.</translation>
    </message>
    <message id="It isn't said what the value with this uncertainty is read from.">
        <source></source>
        <translation>Il n’est pas dit sur quoi est lue la valeur qui a cette incertitude.</translation>
    </message>
    <message id="Add %1, or take the uncertainty out." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ajoutez %1, ou retirez l’incertitude.</numerusform>
            <numerusform>Ajoutez %1, ou retirez l’incertitude.</numerusform>
        </translation>
    </message>
    <message id="read on a gauge">
        <source></source>
        <translation>lue sur un instrument</translation>
    </message>
    <message id="taken with a ruler or caliper">
        <source></source>
        <translation>prise à la règle ou au pied à coulisse</translation>
    </message>
    <message id="read on the dipstick">
        <source></source>
        <translation>lue sur la jauge à tige</translation>
    </message>
    <message id="read on a meter">
        <source></source>
        <translation>lue sur un compteur</translation>
    </message>
    <message id="counted">
        <source></source>
        <translation>comptée</translation>
    </message>
    <message id="judged by eye">
        <source></source>
        <translation>estimée à l’œil</translation>
    </message>
    <message id="An uncertainty goes with what the value was read from.">
        <source></source>
        <translation>Une incertitude va avec ce sur quoi la valeur a été lue.</translation>
    </message>
    <message id="What was read from something has a value.">
        <source></source>
        <translation>Ce qui a été lu quelque part a une valeur.</translation>
    </message>
    <message id="A value is read from one thing, or measured in a photo.">
        <source></source>
        <translation>Une valeur est lue à un seul endroit, ou mesurée dans une photo.</translation>
    </message>
    <message id="An uncertainty is zero or more, and goes with what the value was read from.">
        <source></source>
        <translation>Une incertitude est nulle ou positive, et va avec ce sur quoi la valeur a été lue.</translation>
    </message>
    <message id="This record was made by a newer Ambit: its version is %1, and this one knows those up to %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Ce compte rendu vient d’un Ambit plus récent&#x202f;: sa version est %1, celui-ci connaît celles jusqu’à %2.</numerusform>
            <numerusform>Ce compte rendu vient d’un Ambit plus récent&#x202f;: sa version est %1, celui-ci connaît celles jusqu’à %2.</numerusform>
        </translation>
    </message>
    <message id="Update this Ambit.">
        <source></source>
        <translation>Mettre à jour cet Ambit.</translation>
    </message>
    <message id="This Ambit can't read the walker's next event. %1" numerus="yes">
        <source></source>
        <translation>
            <numerusform>Cet Ambit ne peut pas lire l’événement suivant de l’autre appareil. %1</numerusform>
            <numerusform>Cet Ambit ne peut pas lire l’événement suivant de l’autre appareil. %1</numerusform>
        </translation>
    </message>
    <message id="measured in a photo">
        <source></source>
        <translation>mesurée dans une photo</translation>
    </message>
    <message id="Nobody looks ahead by less than zero: this is %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>On ne regarde pas à moins de zéro en avant&#x202f;: il y a ici %1.</numerusform>
            <numerusform>On ne regarde pas à moins de zéro en avant&#x202f;: il y a ici %1.</numerusform>
        </translation>
    </message>
    <message id="Of a value that nobody measured it was said whether its part was renewed.">
        <source></source>
        <translation>D’une valeur que personne n’a mesurée, il a été dit si sa pièce a été remplacée.</translation>
    </message>
    <message id="Whether a part was renewed was said in two ways by people who didn't know of each other.">
        <source></source>
        <translation>Deux personnes qui ne savaient rien l’une de l’autre ont dit différemment si une pièce a été remplacée.</translation>
    </message>
    <message id="The value that it speaks of was let go.">
        <source></source>
        <translation>La valeur dont il parle a été retirée.</translation>
    </message>
    <message id="It says where a part's values begin anew.">
        <source></source>
        <translation>Il dit où les valeurs d’une pièce repartent.</translation>
    </message>
    <message id="That a part was renewed is said afterwards by the owner or a mechanic.">
        <source></source>
        <translation>C’est le propriétaire ou un mécanicien qui dit après coup qu’une pièce a été remplacée.</translation>
    </message>
    <message id="No value is chosen.">
        <source></source>
        <translation>Aucune valeur n’est choisie.</translation>
    </message>
    <message id="Choose the first one after the part was renewed.">
        <source></source>
        <translation>Choisir la première après le remplacement de la pièce.</translation>
    </message>
    <message id="It can only be read here. Copy it to where you may write.">
        <source></source>
        <translation>On ne peut que les lire ici. Les copier là où l’on peut écrire.</translation>
    </message>
    <message id="Look whether its folder is there and may be written to.">
        <source></source>
        <translation>Vérifier que leur dossier existe et qu’on peut y écrire.</translation>
    </message>
    <message id="The folder could not be read to its end: %1." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Le dossier n’a pas pu être lu jusqu’au bout&#x202f;: %1.</numerusform>
            <numerusform>Le dossier n’a pas pu être lu jusqu’au bout&#x202f;: %1.</numerusform>
        </translation>
    </message>
    <message id="Look whether you may read all of it.">
        <source></source>
        <translation>Vérifier qu’on peut tout y lire.</translation>
    </message>
    <message id="The records bear two serial numbers: %1 and %2." numerus="yes">
        <source></source>
        <translation>
            <numerusform>Les comptes rendus portent deux numéros de série&#x202f;: %1 et %2.</numerusform>
            <numerusform>Les comptes rendus portent deux numéros de série&#x202f;: %1 et %2.</numerusform>
        </translation>
    </message>
</context>
</TS>
