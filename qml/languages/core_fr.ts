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
            <numerusform>Les archives n’ont pas pu faire ceci (%1)&#x202f;: %2.</numerusform>
            <numerusform>Les archives n’ont pas pu faire ceci (%1)&#x202f;: %2.</numerusform>
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
</context>
</TS>
