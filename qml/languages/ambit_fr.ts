<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>AddAircraftSheet</name>
    <message>
        <source>Add an aircraft</source>
        <translation>Ajouter un aéronef</translation>
    </message>
    <message>
        <source>The airframe file describes its kind; the handbook has the last word.</source>
        <translation>Le fichier de type décrit le modèle&#x202f;; le manuel de vol a le dernier mot.</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>Airframe file</source>
        <translation>Fichier de type</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Choisir le fichier</translation>
    </message>
    <message>
        <source>Registration</source>
        <translation>Immatriculation</translation>
    </message>
    <message>
        <source>as painted on it</source>
        <translation>telle que peinte dessus</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
</context>
<context>
    <name>AircraftScreen</name>
    <message>
        <source>Which aircraft?</source>
        <translation>Quel aéronef&#x202f;?</translation>
    </message>
    <message>
        <source>The pilot in command decides. Ambit reminds and records.</source>
        <translation>Le commandant de bord décide. Ambit rappelle et consigne.</translation>
    </message>
    <message>
        <source>Add an aircraft</source>
        <translation>Ajouter un aéronef</translation>
    </message>
    <message>
        <source>Text %1 %</source>
        <translation>Texte %1&#x202f;%</translation>
    </message>
    <message>
        <source>Makes all text larger, up to twice; then small again</source>
        <translation>Agrandit tous les textes, jusqu’au double&#x202f;; puis de nouveau petits</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nuit</translation>
    </message>
    <message>
        <source>The night appearance spares eyes that are used to the dark</source>
        <translation>L’affichage de nuit ménage les yeux habitués à l’obscurité</translation>
    </message>
    <message>
        <source>There is no aircraft here yet. Add one: its airframe file, its registration, its serial number.</source>
        <translation>Il n’y a pas encore d’aéronef ici. Pour en ajouter un&#x202f;: son fichier de type, son immatriculation, son numéro de série.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>serial %1</source>
        <translation>n° de série %1</translation>
    </message>
    <message>
        <source>Go on with the round</source>
        <translation>Reprendre la visite</translation>
    </message>
</context>
<context>
    <name>AnswerSheet</name>
    <message>
        <source>Decline</source>
        <translation>Refuser</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Répondre</translation>
    </message>
    <message>
        <source>Decline it</source>
        <translation>Refuser</translation>
    </message>
    <message>
        <source>Give the answer</source>
        <translation>Donner la réponse</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Your answer</source>
        <translation>Réponse</translation>
    </message>
    <message>
        <source>What was asked and why it is declined stand in the record.</source>
        <translation>La demande et le motif du refus figurent au compte rendu.</translation>
    </message>
    <message>
        <source>Question and answer stand in the record.</source>
        <translation>Question et réponse figurent au compte rendu.</translation>
    </message>
</context>
<context>
    <name>AskedSheet</name>
    <message>
        <source>Asked</source>
        <translation>Demandes</translation>
    </message>
    <message>
        <source>By those who follow this round</source>
        <translation>De ceux qui suivent cette visite</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation>Rien n’est en suspens.</translation>
    </message>
    <message>
        <source>The walk leads there. It ends when the point is settled.</source>
        <translation>Le parcours y mène. La demande prend fin quand le point est traité.</translation>
    </message>
    <message>
        <source>Decline</source>
        <translation>Refuser</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Répondre</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Lu</translation>
    </message>
</context>
<context>
    <name>AskedStrip</name>
    <message>
        <source>and %1 more</source>
        <translation>+ %1</translation>
    </message>
    <message>
        <source>%1 asks</source>
        <translation>%1 demande</translation>
    </message>
</context>
<context>
    <name>BeginScreen</name>
    <message>
        <source>Begin a round</source>
        <translation>Débuter une visite</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Débuter</translation>
    </message>
    <message>
        <source>Which walk</source>
        <translation>Quelle visite</translation>
    </message>
    <message numerus="yes">
        <source>%n points</source>
        <translation>
            <numerusform>%n point</numerusform>
            <numerusform>%n points</numerusform>
        </translation>
    </message>
    <message>
        <source>Who walks</source>
        <translation>Qui fait la visite</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Certificate or licence number</source>
        <translation>Numéro de licence ou de certificat</translation>
    </message>
    <message>
        <source>Walk it on your own</source>
        <translation>Faire la visite seul</translation>
    </message>
    <message>
        <source>What others found today is not shown, so that two rounds can be laid side by side</source>
        <translation>Ce que d’autres ont constaté aujourd’hui n’est pas montré, pour que deux visites puissent être comparées</translation>
    </message>
    <message>
        <source>What the counters say</source>
        <translation>Relevé des compteurs</translation>
    </message>
    <message>
        <source>last time %1</source>
        <translation>la dernière fois %1</translation>
    </message>
    <message>
        <source>On every round</source>
        <translation>À chaque visite</translation>
    </message>
</context>
<context>
    <name>BesideScreen</name>
    <message>
        <source>On their own: wasn&apos;t shown what others found that day</source>
        <translation>Seul&#x202f;: n’a pas vu ce que d’autres avaient constaté ce jour-là</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Choose another round of the same walk</source>
        <translation>Choisir une autre visite du même genre</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>There is no other record of this walk with the same description of the machine.</source>
        <translation>Il n’y a pas d’autre compte rendu de cette visite avec la même description de la machine.</translation>
    </message>
    <message>
        <source>Kappa is agreement beyond chance: 1 is full, 0 no better than chance. Where both say sound nearly throughout, it tells little. Nobody is right by it.</source>
        <translation>Kappa mesure l’accord au-delà du hasard&#x202f;: 1 est un accord total, 0 pas mieux que le hasard. Quand les deux disent «&#x202f;conforme&#x202f;» presque partout, il dit peu. Il ne dit pas qui a raison.</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Premier</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>Second</translation>
    </message>
    <message>
        <source>Seen differently</source>
        <translation>Vus différemment</translation>
    </message>
    <message>
        <source>Settled by one only</source>
        <translation>Traités par un seul</translation>
    </message>
    <message>
        <source>How often each word met which</source>
        <translation>Combien de fois chaque résultat en a rencontré un autre</translation>
    </message>
    <message>
        <source>Rows: the first. Columns: the second.</source>
        <translation>Lignes&#x202f;: le premier. Colonnes&#x202f;: le second.</translation>
    </message>
</context>
<context>
    <name>BlockedSheet</name>
    <message>
        <source>This stand can&apos;t be used</source>
        <translation>Ce poste est inutilisable</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Blocked</source>
        <translation>Bloqué</translation>
    </message>
    <message>
        <source>Slippery or iced</source>
        <translation>Glissant ou givré</translation>
    </message>
    <message>
        <source>Unsafe</source>
        <translation>Dangereux</translation>
    </message>
    <message>
        <source>Or in your words</source>
        <translation>Ou en quelques mots</translation>
    </message>
    <message>
        <source>It can&apos;t be used, as I wrote</source>
        <translation>Inutilisable, comme écrit</translation>
    </message>
    <message>
        <source>What is left is ordered anew without it. What can be settled nowhere else stays to be said as not inspected.</source>
        <translation>Le reste est réordonné sans lui. Ce qui ne peut être traité nulle part ailleurs restera à déclarer non inspecté.</translation>
    </message>
</context>
<context>
    <name>CameraPlace</name>
    <message>
        <source>There is no camera here. Take the photo with another device and add its file.</source>
        <translation>Il n’y a pas de caméra ici. Prendre la photo avec un autre appareil et ajouter son fichier.</translation>
    </message>
    <message>
        <source>Put the camera away</source>
        <translation>Fermer la caméra</translation>
    </message>
</context>
<context>
    <name>CameraSession</name>
    <message>
        <source>The camera can&apos;t be used: %1</source>
        <translation>La caméra est inutilisable&#x202f;: %1</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>La caméra démarre.</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Prendre la photo</translation>
    </message>
</context>
<context>
    <name>Card</name>
    <message>
        <source>Go to %1</source>
        <translation>Aller à %1</translation>
    </message>
    <message>
        <source>Every point is settled</source>
        <translation>Tous les points sont traités</translation>
    </message>
    <message>
        <source>1 point can&apos;t be settled now</source>
        <translation>1 point ne peut pas être traité maintenant</translation>
    </message>
    <message>
        <source>%1 points can&apos;t be settled now</source>
        <translation>%1 points ne peuvent pas être traités maintenant</translation>
    </message>
    <message>
        <source>No way leads on from here. Say what can be used again, or settle what is left as not inspected.</source>
        <translation>Aucun chemin ne mène plus loin. Indiquer ce qui est de nouveau utilisable, ou déclarer le reste non inspecté.</translation>
    </message>
</context>
<context>
    <name>CardKeys</name>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Conforme</translation>
    </message>
    <message>
        <source>Back to the walk</source>
        <translation>Retour à la visite</translation>
    </message>
    <message>
        <source>Settle again</source>
        <translation>Refaire</translation>
    </message>
    <message>
        <source>I am at the foot of it</source>
        <translation>Je suis au pied</translation>
    </message>
    <message>
        <source>I am there</source>
        <translation>J’y suis</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revue</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Mesurer</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>Not inspected</source>
        <translation>Non inspecté</translation>
    </message>
    <message>
        <source>Can&apos;t be used</source>
        <translation>Inutili­sable</translation>
    </message>
    <message>
        <source>In the way</source>
        <translation>Obstacle</translation>
    </message>
    <message>
        <source>A wall, another machine: mark it on the figure</source>
        <translation>Un mur, un autre aéronef&#x202f;: le marquer sur le dessin</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Review, note, file, night, text size</source>
        <translation>Revue, note, dossier, nuit, taille du texte</translation>
    </message>
    <message>
        <source>To be compared, or measured in</source>
        <translation>À comparer, ou pour y mesurer</translation>
    </message>
</context>
<context>
    <name>CardWords</name>
    <message>
        <source>Something is still open. The review says what.</source>
        <translation>Il reste quelque chose en suspens. La revue dit quoi.</translation>
    </message>
    <message>
        <source>Look once more, then conclude.</source>
        <translation>Regarder une dernière fois, puis conclure.</translation>
    </message>
    <message>
        <source>The round waits here as it stands. Before going on, look where you left off.</source>
        <translation>La visite attend ici, telle quelle. Avant de continuer, regarder là où elle s’est arrêtée.</translation>
    </message>
    <message>
        <source>Last time</source>
        <translation>La dernière fois</translation>
    </message>
    <message>
        <source>Settled: %1</source>
        <translation>Traité&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>Carried</name>
    <message>
        <source>Deferred %1 on %2, placard %3</source>
        <translation>Reportée %1 selon %2, affichette %3</translation>
    </message>
    <message>
        <source>, until %1</source>
        <translation>, jusqu’au %1</translation>
    </message>
    <message>
        <source>: has it grown?</source>
        <translation>. S’est-elle aggravée&#x202f;?</translation>
    </message>
    <message>
        <source>Put right %1 by %2: %3 Is it sound now?</source>
        <translation>Rectifiée %1 par %2&#x202f;: %3 Est-ce conforme à présent&#x202f;?</translation>
    </message>
    <message>
        <source>Found %1: %2</source>
        <translation>Constatée %1&#x202f;: %2</translation>
    </message>
    <message>
        <source>It grounds the aircraft until it is put right. Has it been?</source>
        <translation>L’aéronef reste immobilisé jusqu’à la rectification. Est-elle faite&#x202f;?</translation>
    </message>
    <message>
        <source>Nobody has assessed it yet: has it grown?</source>
        <translation>Personne ne l’a encore évaluée&#x202f;: s’est-elle aggravée&#x202f;?</translation>
    </message>
    <message>
        <source>deferred</source>
        <translation>reportée</translation>
    </message>
    <message>
        <source>grounds</source>
        <translation>immobilise</translation>
    </message>
    <message>
        <source>put right</source>
        <translation>rectifiée</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouverte</translation>
    </message>
</context>
<context>
    <name>CarriedList</name>
    <message>
        <source>To look at again on this round</source>
        <translation>À revoir lors de cette visite</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>Warning: %1</source>
        <translation>Danger&#x202f;: %1</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Attention&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>CodeCamera</name>
    <message>
        <source>There is no camera here. Type the letters instead.</source>
        <translation>Il n’y a pas de caméra ici. Taper plutôt les lettres.</translation>
    </message>
    <message>
        <source>Put the camera away</source>
        <translation>Fermer la caméra</translation>
    </message>
</context>
<context>
    <name>CodePlace</name>
    <message>
        <source>Scan it with the camera</source>
        <translation>Lire avec la caméra</translation>
    </message>
    <message>
        <source>From a picture of it</source>
        <translation>À partir d’une image</translation>
    </message>
    <message>
        <source>There is no such code in that picture. Take it straight on, all of the code in it.</source>
        <translation>Il n’y a pas de code de ce genre dans cette image. Le prendre bien de face et en entier.</translation>
    </message>
</context>
<context>
    <name>ComparedWalk</name>
    <message>
        <source>The two orders are being compared</source>
        <translation>Les deux ordres sont en cours de comparaison</translation>
    </message>
    <message>
        <source>This way round</source>
        <translation>Ce tour</translation>
    </message>
    <message>
        <source>As listed</source>
        <translation>Ordre de la liste</translation>
    </message>
</context>
<context>
    <name>ConcludeScreen</name>
    <message>
        <source>Conclusion</source>
        <translation>Conclusion</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Choose first</source>
        <translation>Choisir d’abord</translation>
    </message>
    <message>
        <source>Conclude: fit</source>
        <translation>Conclure&#x202f;: apte au vol</translation>
    </message>
    <message>
        <source>Conclude: not fit</source>
        <translation>Conclure&#x202f;: non apte au vol</translation>
    </message>
    <message>
        <source>In your judgement, is this aircraft fit for this flight?</source>
        <translation>En toute conscience, cet aéronef est-il apte à ce vol&#x202f;?</translation>
    </message>
    <message>
        <source>Not fit</source>
        <translation>Non apte au vol</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Apte au vol</translation>
    </message>
    <message>
        <source>Nothing stands against fit.</source>
        <translation>Rien ne s’oppose à «&#x202f;apte au vol&#x202f;».</translation>
    </message>
    <message>
        <source>What stands against fit</source>
        <translation>Ce qui s’oppose à «&#x202f;apte au vol&#x202f;»</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Motifs</translation>
    </message>
    <message>
        <source>Ambit never decides. The pilot in command does; the handbook and the local rules have the last word.</source>
        <translation>Ambit ne décide jamais. C’est le commandant de bord&#x202f;; le manuel de vol et les règles locales ont le dernier mot.</translation>
    </message>
</context>
<context>
    <name>CounterFields</name>
    <message>
        <source>last %1</source>
        <translation>dernier %1</translation>
    </message>
</context>
<context>
    <name>CountersignScreen</name>
    <message>
        <source>Sign under it</source>
        <translation>Contresigner</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>You sign the record as it stands, and the signatures already under it. Nothing in it changes.</source>
        <translation>Est signé le compte rendu tel quel, avec les signatures qu’il porte déjà. Rien n’y change.</translation>
    </message>
</context>
<context>
    <name>DeferScreen</name>
    <message>
        <source>Defer</source>
        <translation>Reporter</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>It grounds the aircraft</source>
        <translation>Elle immobilise l’aéronef</translation>
    </message>
    <message>
        <source>On which basis</source>
        <translation>Sur quelle base</translation>
    </message>
    <message>
        <source>For an aircraft without a minimum equipment list: its questions follow</source>
        <translation>Pour un aéronef sans liste minimale d’équipements&#x202f;: les questions suivent</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Question %1 of %2</source>
        <translation>Question %1 sur %2</translation>
    </message>
    <message>
        <source>I answered wrongly: ask again</source>
        <translation>Mauvaise réponse&#x202f;: recommencer</translation>
    </message>
    <message>
        <source>Another basis</source>
        <translation>Une autre base</translation>
    </message>
</context>
<context>
    <name>DeferTerms</name>
    <message>
        <source>What was found on looking closer</source>
        <translation>Ce qu’un examen plus attentif a montré</translation>
    </message>
    <message>
        <source>Where the basis says so: list and item, permission</source>
        <translation>Là où la base le dit&#x202f;: liste et article, autorisation</translation>
    </message>
    <message>
        <source>Made safe</source>
        <translation>Mise en sécurité</translation>
    </message>
    <message>
        <source>Deactivated</source>
        <translation>Désactivé</translation>
    </message>
    <message>
        <source>Removed</source>
        <translation>Déposé</translation>
    </message>
    <message>
        <source>Placard: what it says, and where</source>
        <translation>Affichette&#x202f;: ce qu’elle dit, et où</translation>
    </message>
    <message>
        <source>What the aircraft is not used for meanwhile</source>
        <translation>Ce à quoi l’aéronef ne sert pas entre-temps</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Jusqu’au</translation>
    </message>
    <message>
        <source>Date: year-month-day; empty: none</source>
        <translation>Date&#x202f;: année-mois-jour&#x202f;; vide&#x202f;: aucune</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>From today on</source>
        <translation>À partir d’aujourd’hui</translation>
    </message>
    <message>
        <source>Who found that it is no hazard</source>
        <translation>Qui a établi qu’il n’y a pas de danger</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Certificate or licence number</source>
        <translation>Numéro de licence ou de certificat</translation>
    </message>
</context>
<context>
    <name>DiffersList</name>
    <message>
        <source>Can&apos;t be used: %1</source>
        <translation>Inutilisable&#x202f;: %1</translation>
    </message>
    <message>
        <source>Can be used again</source>
        <translation>De nouveau utilisable</translation>
    </message>
    <message>
        <source>In the way</source>
        <translation>Obstacle</translation>
    </message>
    <message>
        <source>Not in the way any more</source>
        <translation>Ne gêne plus</translation>
    </message>
</context>
<context>
    <name>DiscrepancyScreen</name>
    <message>
        <source>Discrepancy</source>
        <translation>Anomalie</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Defer</source>
        <translation>Reporter</translation>
    </message>
    <message>
        <source>Leave it as it is for a while, on a stated basis</source>
        <translation>La laisser ainsi un certain temps, sur une base déclarée</translation>
    </message>
    <message>
        <source>Grounds</source>
        <translation>Laisser au sol</translation>
    </message>
    <message>
        <source>The aircraft doesn&apos;t fly until it is put right</source>
        <translation>L’aéronef ne vole pas avant la rectification</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Rectifier</translation>
    </message>
    <message>
        <source>History of this point</source>
        <translation>Historique de ce point</translation>
    </message>
    <message>
        <source>From the first to the last</source>
        <translation>Du premier au dernier</translation>
    </message>
</context>
<context>
    <name>EntryWords</name>
    <message>
        <source>Deferred</source>
        <translation>Reportée</translation>
    </message>
    <message>
        <source>Grounds the aircraft</source>
        <translation>Immobilise l’aéronef</translation>
    </message>
    <message>
        <source>Inspection done</source>
        <translation>Inspection faite</translation>
    </message>
    <message>
        <source>Work done</source>
        <translation>Travaux faits</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Rectifiée</translation>
    </message>
    <message>
        <source>Counters read</source>
        <translation>Compteurs relevés</translation>
    </message>
    <message>
        <source>Part taken off</source>
        <translation>Pièce déposée</translation>
    </message>
    <message>
        <source>Part fitted</source>
        <translation>Pièce posée</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Pièce remplacée</translation>
    </message>
    <message>
        <source>Handed over to %1</source>
        <translation>Remis à %1</translation>
    </message>
    <message>
        <source>Key of %1 trusted</source>
        <translation>Clé de %1 reconnue</translation>
    </message>
    <message>
        <source>Key revoked</source>
        <translation>Clé révoquée</translation>
    </message>
    <message>
        <source>Records let go</source>
        <translation>Comptes rendus éliminés</translation>
    </message>
    <message>
        <source>Discrepancy</source>
        <translation>Anomalie</translation>
    </message>
    <message>
        <source>Assessment</source>
        <translation>Évaluation</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Puts right</source>
        <translation>Rectifie</translation>
    </message>
    <message>
        <source>Inspections done</source>
        <translation>Inspections faites</translation>
    </message>
    <message>
        <source>Counters</source>
        <translation>Compteurs</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Déposée</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Posée</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Texte</translation>
    </message>
    <message>
        <source>Whose key</source>
        <translation>Clé de qui</translation>
    </message>
    <message>
        <source>Good for</source>
        <translation>Vaut comme</translation>
    </message>
    <message>
        <source>From</source>
        <translation>À partir du</translation>
    </message>
    <message>
        <source>Fingerprint</source>
        <translation>Empreinte</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>of %1 UTC, record %2</source>
        <translation>du %1 UTC, compte rendu %2</translation>
    </message>
    <message>
        <source>%1 (found in record %2)</source>
        <translation>%1 (constat du compte rendu %2)</translation>
    </message>
    <message>
        <source>, number %1</source>
        <translation>, numéro %1</translation>
    </message>
    <message>
        <source>, serial %1</source>
        <translation>, n° de série %1</translation>
    </message>
    <message>
        <source>Completed on</source>
        <translation>Terminé le</translation>
    </message>
    <message>
        <source>Done by</source>
        <translation>Fait par</translation>
    </message>
    <message>
        <source>Approved under</source>
        <translation>Approuvé au titre de</translation>
    </message>
    <message>
        <source>Counters then</source>
        <translation>Compteurs à ce moment</translation>
    </message>
    <message>
        <source>Where it says so</source>
        <translation>Où cela est écrit</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Oui</translation>
    </message>
    <message>
        <source>No</source>
        <translation>Non</translation>
    </message>
    <message>
        <source>The item is</source>
        <translation>L’élément est</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>déposé</translation>
    </message>
    <message>
        <source>deactivated</source>
        <translation>désactivé</translation>
    </message>
    <message>
        <source>Placard</source>
        <translation>Affichette</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limitations</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Jusqu’au</translation>
    </message>
    <message>
        <source>Until the counters say</source>
        <translation>Jusqu’au compteur</translation>
    </message>
    <message>
        <source>No hazard, found by</source>
        <translation>Aucun danger, établi par</translation>
    </message>
    <message>
        <source>Renewed before a value</source>
        <translation>Remplacé avant une valeur</translation>
    </message>
    <message>
        <source>Not renewed before a value</source>
        <translation>Pas remplacé avant une valeur</translation>
    </message>
    <message>
        <source>Value of the record</source>
        <translation>Valeur du compte rendu</translation>
    </message>
    <message>
        <source>What was measured</source>
        <translation>Ce qui a été mesuré</translation>
    </message>
</context>
<context>
    <name>ExportScreen</name>
    <message>
        <source>Write the whole file</source>
        <translation>Écrire tout le dossier</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Writing …</source>
        <translation>Écriture en cours…</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Écrire</translation>
    </message>
    <message>
        <source>Every record with its signatures, PDFs and photos, a page to read them by, and how to check them with stock tools: one zip for the next owner, a mechanic or the drawer at home. Nothing leaves this archive.</source>
        <translation>Tous les comptes rendus avec signatures, PDF et photos, une page pour les lire, et comment les vérifier avec des outils courants&#x202f;: un seul zip pour le prochain propriétaire, un mécanicien ou le tiroir à la maison. Rien ne quitte ces archives.</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Choisir</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Choisir l’endroit</translation>
    </message>
    <message>
        <source>Written:
%1
%2</source>
        <translation>Écrit&#x202f;:
%1
%2</translation>
    </message>
</context>
<context>
    <name>FigureView</name>
    <message>
        <source>The figure: the aircraft from above, nose up</source>
        <translation>Le dessin&#x202f;: l’aéronef vu de dessus, nez en haut</translation>
    </message>
    <message>
        <source>Arrow keys choose a zone, Enter goes there</source>
        <translation>Les flèches choisissent une zone, Entrée y va</translation>
    </message>
</context>
<context>
    <name>FileDialogs</name>
    <message>
        <source>Photos (*.jpg *.jpeg *.png *.heic *.heif)</source>
        <translation>Images (*.jpg *.jpeg *.png *.heic *.heif)</translation>
    </message>
    <message>
        <source>Airframes (*.json)</source>
        <translation>Types (*.json)</translation>
    </message>
</context>
<context>
    <name>FileKeys</name>
    <message>
        <source>Search</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>History of a point</source>
        <translation>Historique d’un point</translation>
    </message>
    <message>
        <source>Where findings were</source>
        <translation>Où étaient les constats</translation>
    </message>
    <message>
        <source>Verify</source>
        <translation>Vérifier</translation>
    </message>
    <message>
        <source>Write the whole file</source>
        <translation>Écrire tout le dossier</translation>
    </message>
    <message>
        <source>Read counters</source>
        <translation>Relever les compteurs</translation>
    </message>
    <message>
        <source>Inspection or work done</source>
        <translation>Inspection ou travaux faits</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Pièce remplacée</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>Whose key counts</source>
        <translation>Quelles clés font foi</translation>
    </message>
    <message>
        <source>What may go</source>
        <translation>Ce qui est éliminable</translation>
    </message>
    <message>
        <source>Look into it</source>
        <translation>Consulter</translation>
    </message>
    <message>
        <source>Sign something new</source>
        <translation>Signer du nouveau</translation>
    </message>
    <message>
        <source>Keep it in order</source>
        <translation>Tenir en ordre</translation>
    </message>
    <message>
        <source>Leaves a signed record in the file</source>
        <translation>Laisse un compte rendu signé dans le dossier</translation>
    </message>
</context>
<context>
    <name>FileScreen</name>
    <message>
        <source>File of %1</source>
        <translation>Dossier de %1</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Choose an aircraft</source>
        <translation>Choisir un aéronef</translation>
    </message>
    <message>
        <source>The file is being read …</source>
        <translation>Lecture du dossier en cours…</translation>
    </message>
    <message>
        <source>1 record</source>
        <translation>1 compte rendu</translation>
    </message>
    <message>
        <source>%1 records</source>
        <translation>%1 comptes rendus</translation>
    </message>
    <message>
        <source>Open discrepancies</source>
        <translation>Anomalies ouvertes</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Aucune.</translation>
    </message>
    <message>
        <source>Put right, to be seen on the next round</source>
        <translation>Rectifiées, à voir à la prochaine visite</translation>
    </message>
    <message>
        <source>Due next</source>
        <translation>Prochaines échéances</translation>
    </message>
    <message>
        <source>Show all %1 that come due</source>
        <translation>Montrer les %1 échéances</translation>
    </message>
    <message>
        <source>Last rounds</source>
        <translation>Dernières visites</translation>
    </message>
    <message>
        <source>There is no round yet. It leaves a record when it is signed.</source>
        <translation>Pas encore de visite. Signée, elle laisse un compte rendu.</translation>
    </message>
    <message>
        <source>All records: %1</source>
        <translation>Tous les comptes rendus&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>FileState</name>
    <message>
        <source>Stands against fit</source>
        <translation>S’oppose à «&#x202f;apte au vol&#x202f;»</translation>
    </message>
    <message>
        <source>The file is being read …</source>
        <translation>Lecture du dossier en cours…</translation>
    </message>
    <message>
        <source>The file can&apos;t be read whole, so nothing can be said from it. Verify says which records don&apos;t hold.</source>
        <translation>Le dossier ne peut pas être lu en entier, donc rien ne peut en être dit. Vérifier montre quels comptes rendus ne tiennent pas.</translation>
    </message>
    <message>
        <source>Nothing in the file stands against it. The pilot in command looks and decides.</source>
        <translation>Rien dans le dossier ne s’y oppose. Le commandant de bord regarde et décide.</translation>
    </message>
    <message>
        <source>A record is missing here: what it says isn&apos;t known. Verify names it.</source>
        <translation>Il manque ici un compte rendu&#x202f;: son contenu est inconnu. Vérifier le nomme.</translation>
    </message>
    <message>
        <source>%1 records are missing here: what they say isn&apos;t known. Verify names them.</source>
        <translation>Il manque ici %1 comptes rendus&#x202f;: leur contenu est inconnu. Vérifier les nomme.</translation>
    </message>
</context>
<context>
    <name>FileWords</name>
    <message>
        <source>Round</source>
        <translation>Visite</translation>
    </message>
    <message>
        <source>Assessment</source>
        <translation>Évaluation</translation>
    </message>
    <message>
        <source>Rectification</source>
        <translation>Remise en état</translation>
    </message>
    <message>
        <source>Counter reading</source>
        <translation>Relevé de compteurs</translation>
    </message>
    <message>
        <source>Part change</source>
        <translation>Changement de pièce</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Remise au suivant</translation>
    </message>
    <message>
        <source>Key trusted</source>
        <translation>Clé reconnue</translation>
    </message>
    <message>
        <source>Key revoked</source>
        <translation>Clé révoquée</translation>
    </message>
    <message>
        <source>Records let go</source>
        <translation>Comptes rendus éliminés</translation>
    </message>
    <message>
        <source>Not assessed</source>
        <translation>Non évaluée</translation>
    </message>
    <message>
        <source>Deferred</source>
        <translation>Reportée</translation>
    </message>
    <message>
        <source>Grounding</source>
        <translation>Immobilise</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Rectifiée</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Close</translation>
    </message>
    <message>
        <source>Not assessed yet</source>
        <translation>Pas encore évaluée</translation>
    </message>
    <message>
        <source>Grounds the aircraft</source>
        <translation>Immobilise l’aéronef</translation>
    </message>
    <message>
        <source>Deferred on %1</source>
        <translation>Reportée selon %1</translation>
    </message>
    <message>
        <source> until %1</source>
        <translation> jusqu’au %1</translation>
    </message>
    <message>
        <source>Put right by %1; no round has seen it yet</source>
        <translation>Rectifiée par %1&#x202f;; aucune visite ne l’a encore vue</translation>
    </message>
    <message>
        <source>Put right, and seen sound after</source>
        <translation>Rectifiée, et vue conforme ensuite</translation>
    </message>
    <message>
        <source>Found %1 by %2</source>
        <translation>Constatée %1 par %2</translation>
    </message>
    <message>
        <source>, seen again once</source>
        <translation>, revue une fois</translation>
    </message>
    <message>
        <source>, seen again %1 times</source>
        <translation>, revue %1 fois</translation>
    </message>
    <message>
        <source>Not due yet</source>
        <translation>Pas encore à échéance</translation>
    </message>
    <message>
        <source>Due soon</source>
        <translation>Échéance proche</translation>
    </message>
    <message>
        <source>Beyond, within its allowance</source>
        <translation>Dépassée, dans la tolérance</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Inconnue</translation>
    </message>
    <message>
        <source>Passed</source>
        <translation>Dépassée</translation>
    </message>
    <message>
        <source>Has signed nothing in this file</source>
        <translation>N’a rien signé dans ce dossier</translation>
    </message>
    <message>
        <source>Signed 1 record as %1</source>
        <translation>A signé 1 compte rendu comme %1</translation>
    </message>
    <message>
        <source>Signed %1 records as %2</source>
        <translation>A signé %1 comptes rendus comme %2</translation>
    </message>
    <message>
        <source>Good for nothing since %1</source>
        <translation>Ne vaut plus rien depuis %1</translation>
    </message>
    <message>
        <source>The owner&apos;s: the first to say whose key counts</source>
        <translation>Celle du propriétaire&#x202f;: le premier à dire quelles clés font foi</translation>
    </message>
    <message>
        <source>Good for %1 since %2</source>
        <translation>Vaut comme %1 depuis %2</translation>
    </message>
    <message>
        <source>The owner has said nothing of this key</source>
        <translation>Le propriétaire n’a rien dit de cette clé</translation>
    </message>
    <message>
        <source>pilot</source>
        <comment>within a sentence</comment>
        <translation>pilote</translation>
    </message>
    <message>
        <source>instructor</source>
        <comment>within a sentence</comment>
        <translation>instructeur</translation>
    </message>
    <message>
        <source>owner</source>
        <comment>within a sentence</comment>
        <translation>propriétaire</translation>
    </message>
    <message>
        <source>mechanic</source>
        <comment>within a sentence</comment>
        <translation>mécanicien</translation>
    </message>
    <message>
        <source>minimum equipment list</source>
        <translation>liste minimale d’équipements</translation>
    </message>
    <message>
        <source>other</source>
        <comment>basis of a deferral</comment>
        <translation>une autre base</translation>
    </message>
    <message>
        <source>Renewal told afterwards</source>
        <translation>Remplacement signalé après coup</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Grounds the aircraft</source>
        <translation>Immobilise l’aéronef</translation>
    </message>
    <message>
        <source>For assessment</source>
        <translation>À évaluer</translation>
    </message>
</context>
<context>
    <name>FindingSheet</name>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Keep the finding</source>
        <translation>Garder le constat</translation>
    </message>
    <message>
        <source>What you see, where, how large</source>
        <translation>Ce qui se voit, où, de quelle taille</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Ce que cela signifie</translation>
    </message>
    <message>
        <source>Grounds the aircraft</source>
        <translation>Immobilise l’aéronef</translation>
    </message>
    <message>
        <source>At this point every finding does.</source>
        <translation>À ce point, c’est le cas de tout constat.</translation>
    </message>
    <message>
        <source>Not flown until it is rectified.</source>
        <translation>Pas de vol avant la remise en état.</translation>
    </message>
    <message>
        <source>For assessment</source>
        <translation>À évaluer</translation>
    </message>
    <message>
        <source>You assess it before the conclusion.</source>
        <translation>À évaluer avant la conclusion.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Retirer&#x202f;: %1</translation>
    </message>
    <message>
        <source>Measure in a photo</source>
        <translation>Mesurer dans une photo</translation>
    </message>
    <message>
        <source>By a card that lies beside it</source>
        <translation>Avec une carte posée à côté</translation>
    </message>
</context>
<context>
    <name>FindingsFigure</name>
    <message>
        <source>The figure: the aircraft from above, nose up, with the number of findings in each zone</source>
        <translation>Le dessin&#x202f;: l’aéronef vu de dessus, nez en haut, avec le nombre de constats dans chaque zone</translation>
    </message>
</context>
<context>
    <name>FindingsScreen</name>
    <message>
        <source>Where findings were</source>
        <translation>Où étaient les constats</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Nothing was found in that time.</source>
        <translation>Rien n’a été constaté pendant ce temps.</translation>
    </message>
    <message>
        <source>Each number counts the findings of that time in its zone; the closer the hatching, the more. Touch a zone to read them.</source>
        <translation>Chaque nombre compte les constats de cette période dans sa zone&#x202f;; plus les hachures sont serrées, plus il y en a. Toucher une zone pour les lire.</translation>
    </message>
    <message>
        <source>All zones</source>
        <translation>Toutes les zones</translation>
    </message>
</context>
<context>
    <name>FollowKey</name>
    <message>
        <source>Who follows</source>
        <translation>Qui suit</translation>
    </message>
    <message>
        <source>Let others follow</source>
        <translation>Laisser suivre</translation>
    </message>
    <message>
        <source>From their own devices, on this network</source>
        <translation>Depuis leurs propres appareils, sur ce réseau</translation>
    </message>
</context>
<context>
    <name>FollowPanel</name>
    <message>
        <source>Here; no round is walked yet.</source>
        <translation>Présent&#x202f;; pas encore de visite.</translation>
    </message>
    <message>
        <source>Your signature is under the record on both devices.</source>
        <translation>La signature est au bas du compte rendu sur les deux appareils.</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Constaté</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dit</translation>
    </message>
    <message>
        <source>Settled within the time that one takes</source>
        <translation>Traités plus vite qu’il ne faut</translation>
    </message>
    <message>
        <source>Time at each stand</source>
        <translation>Temps à chaque poste</translation>
    </message>
    <message>
        <source>Taken, and what the airframe&apos;s description says these points take.</source>
        <translation>Temps pris, et temps que ces points demandent selon la description du type.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Ce qui s’est passé</translation>
    </message>
</context>
<context>
    <name>FollowScreen</name>
    <message>
        <source>Following %1</source>
        <translation>Suivi de %1</translation>
    </message>
    <message>
        <source>The walk again</source>
        <translation>La visite rejouée</translation>
    </message>
    <message>
        <source>%1 of %2 settled</source>
        <translation>%1/%2</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>See the record</source>
        <translation>Voir le compte rendu</translation>
    </message>
    <message>
        <source>See the record and sign</source>
        <translation>Voir le compte rendu et signer</translation>
    </message>
    <message>
        <source>Say something</source>
        <translation>Dire quelque chose</translation>
    </message>
    <message>
        <source>Look again, a question, a remark</source>
        <translation>Regarder encore, une question, une remarque</translation>
    </message>
</context>
<context>
    <name>FollowerRow</name>
    <message>
        <source>Fingerprint %1</source>
        <translation>Empreinte %1</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Exclure</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Exclure</translation>
    </message>
    <message>
        <source>Taken back, this device comes in again only with another code.</source>
        <translation>Une fois exclu, cet appareil ne revient qu’avec un autre code.</translation>
    </message>
</context>
<context>
    <name>FollowersSheet</name>
    <message>
        <source>Has everything so far</source>
        <translation>A tout reçu jusqu’ici</translation>
    </message>
    <message>
        <source>1 entry behind</source>
        <translation>1 entrée de retard</translation>
    </message>
    <message>
        <source>%1 entries behind</source>
        <translation>%1 entrées de retard</translation>
    </message>
    <message>
        <source>Let one in</source>
        <translation>Admettre quelqu’un</translation>
    </message>
    <message>
        <source>Who follows</source>
        <translation>Qui suit</translation>
    </message>
    <message>
        <source>Nobody can follow now</source>
        <translation>Personne ne peut suivre maintenant</translation>
    </message>
    <message>
        <source>Nobody follows yet</source>
        <translation>Personne ne suit encore</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Créer la clé</translation>
    </message>
    <message>
        <source>Let others follow</source>
        <translation>Laisser suivre</translation>
    </message>
    <message>
        <source>Show a code</source>
        <translation>Montrer un code</translation>
    </message>
    <message>
        <source>Put the code away</source>
        <translation>Cacher le code</translation>
    </message>
    <message>
        <source>Others on this network can follow your round on their own devices; nothing leaves this network. Each of them is let in by you, and taken back by you. Nobody can settle or change anything.</source>
        <translation>D’autres sur ce réseau peuvent suivre la visite sur leurs propres appareils&#x202f;; rien ne quitte ce réseau. Chacun est admis ici, et exclu ici. Personne ne peut traiter ni changer quoi que ce soit.</translation>
    </message>
    <message>
        <source>Not let in</source>
        <translation>Non admis</translation>
    </message>
    <message>
        <source>Show a code to let the first device in.</source>
        <translation>Montrer un code pour admettre le premier appareil.</translation>
    </message>
    <message>
        <source>Who was let in before joins without a code. Show a code to let another device in.</source>
        <translation>Qui a déjà été admis revient sans code. Montrer un code pour admettre un autre appareil.</translation>
    </message>
    <message>
        <source>May follow, too</source>
        <translation>Peut aussi suivre</translation>
    </message>
    <message>
        <source>Read aloud what they say</source>
        <translation>Lire à haute voix ce qu’ils disent</translation>
    </message>
    <message>
        <source>This device has no voice: it is shown only</source>
        <translation>Cet appareil n’a pas de voix&#x202f;: affichage seul</translation>
    </message>
    <message>
        <source>Stop: nobody follows any more</source>
        <translation>Arrêter&#x202f;: plus personne ne suit</translation>
    </message>
</context>
<context>
    <name>GroundScreen</name>
    <message>
        <source>It grounds the aircraft</source>
        <translation>Elle immobilise l’aéronef</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Why it can&apos;t wait</source>
        <translation>Pourquoi cela ne peut pas attendre</translation>
    </message>
</context>
<context>
    <name>HabitsSheet</name>
    <message>
        <source>How you are asked</source>
        <translation>Façon de demander</translation>
    </message>
    <message>
        <source>On this device, until it is changed here.</source>
        <translation>Sur cet appareil, jusqu’à changement ici.</translation>
    </message>
    <message>
        <source>Fewer: %1</source>
        <translation>Moins&#x202f;: %1</translation>
    </message>
    <message>
        <source>Fewer</source>
        <translation>Moins</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Plus&#x202f;: %1</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>A key answers where one hand is free</source>
        <translation>Une touche répond là où une main est libre</translation>
    </message>
    <message>
        <source>A clicker, a headset, a volume key, any key of a keyboard: one press sound, a long press finding, two presses say it again.</source>
        <translation>Une télécommande, un casque, une touche de volume, toute touche d’un clavier&#x202f;: un appui conforme, un appui long constat, deux appuis répètent.</translation>
    </message>
    <message>
        <source>Told before the climb where no hand is free</source>
        <translation>Dit avant de monter, là où aucune main n’est libre</translation>
    </message>
    <message>
        <source>In small portions; down again, each point is asked for.</source>
        <translation>Par petites portions&#x202f;; une fois redescendu, chaque point est demandé.</translation>
    </message>
    <message>
        <source>One point at a time</source>
        <translation>Un point à la fois</translation>
    </message>
    <message>
        <source>%1 points at a time</source>
        <translation>%1 points à la fois</translation>
    </message>
    <message>
        <source>Every card is read aloud</source>
        <translation>Chaque carte est lue à haute voix</translation>
    </message>
    <message>
        <source>After an interruption</source>
        <translation>Après une interruption</translation>
    </message>
    <message>
        <source>The operator&apos;s choice: published advice differs. What was done stands in the record.</source>
        <translation>Au choix de l’exploitant&#x202f;: les conseils publiés divergent. Ce qui a été fait figure au compte rendu.</translation>
    </message>
    <message>
        <source>Back some points</source>
        <translation>Quelques points en arrière</translation>
    </message>
    <message>
        <source>The stand again</source>
        <translation>Refaire le poste</translation>
    </message>
    <message>
        <source>From the start</source>
        <translation>Depuis le début</translation>
    </message>
    <message>
        <source>Back one point</source>
        <translation>Un point en arrière</translation>
    </message>
    <message>
        <source>Back %1 points</source>
        <translation>%1 points en arrière</translation>
    </message>
    <message>
        <source>Photos keep all that the camera wrote</source>
        <translation>Les photos gardent tout ce que l’appareil a écrit</translation>
    </message>
    <message>
        <source>The place and the device go into the record, too, for all who read it. Otherwise only the time does.</source>
        <translation>Le lieu et l’appareil vont aussi dans le compte rendu, pour tous ceux qui le lisent. Sinon, l’heure seule.</translation>
    </message>
</context>
<context>
    <name>HandOverScreen</name>
    <message>
        <source>Hand over</source>
        <translation>Remettre</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>With this record the aircraft and its whole file go to another owner. It is the last page that you sign; the next owner goes on from it.</source>
        <translation>Par ce compte rendu, l’aéronef et tout son dossier passent à un autre propriétaire. C’est la dernière page signée ici&#x202f;; le prochain propriétaire la continue.</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>Words, if any</source>
        <translation>Remarques éventuelles</translation>
    </message>
</context>
<context>
    <name>HandsCard</name>
    <message>
        <source>One hand free: answer with a key</source>
        <translation>Une main libre&#x202f;: répondre par une touche</translation>
    </message>
    <message>
        <source>No hand free: read before the climb</source>
        <translation>Aucune main libre&#x202f;: lire avant de monter</translation>
    </message>
    <message>
        <source>Being looked at: nothing can be touched</source>
        <translation>Examen en cours&#x202f;: rien à toucher</translation>
    </message>
    <message>
        <source>This needs a value: give it when both hands are free.</source>
        <translation>Il faut une valeur&#x202f;: la donner quand les deux mains sont libres.</translation>
    </message>
    <message>
        <source>Look at these now. Keep your hands for holding on.</source>
        <translation>Regarder ceux-ci maintenant. Garder les mains pour se tenir.</translation>
    </message>
    <message>
        <source>Read these, or listen. Then put the device away and climb.</source>
        <translation>Les lire ou les écouter. Puis ranger l’appareil et monter.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>One more up there after these.</source>
        <translation>Encore un là-haut après ceux-ci.</translation>
    </message>
    <message>
        <source>%1 more up there after these.</source>
        <translation>Encore %1 là-haut après ceux-ci.</translation>
    </message>
    <message>
        <source>A key does it too: one press: up I go. Two presses: say it again.</source>
        <translation>Avec une touche aussi&#x202f;: un appui&#x202f;: je monte. Deux appuis&#x202f;: répéter.</translation>
    </message>
    <message>
        <source>A key does it too: a long press: down again. Two presses: say it again.</source>
        <translation>Avec une touche aussi&#x202f;: un appui long&#x202f;: redescendu. Deux appuis&#x202f;: répéter.</translation>
    </message>
    <message>
        <source>With a key: one press: I am there. Two presses: say it again.</source>
        <translation>Avec une touche&#x202f;: un appui&#x202f;: j’y suis. Deux appuis&#x202f;: répéter.</translation>
    </message>
    <message>
        <source>With a key: one press: done. Two presses: say it again.</source>
        <translation>Avec une touche&#x202f;: un appui&#x202f;: fait. Deux appuis&#x202f;: répéter.</translation>
    </message>
    <message>
        <source>With a key: two presses: say it again.</source>
        <translation>Avec une touche&#x202f;: deux appuis&#x202f;: répéter.</translation>
    </message>
    <message>
        <source>With a key: one press: sound. A long press: finding. Two presses: say it again.</source>
        <translation>Avec une touche&#x202f;: un appui&#x202f;: conforme. Un appui long&#x202f;: constat. Deux appuis&#x202f;: répéter.</translation>
    </message>
    <message>
        <source>Up I go</source>
        <translation>Je monte</translation>
    </message>
    <message>
        <source>Nothing can be touched until you are down again</source>
        <translation>Rien ne peut être touché avant la redescente</translation>
    </message>
    <message>
        <source>I am down again</source>
        <translation>Je suis redescendu</translation>
    </message>
    <message>
        <source>Each of them is asked for then</source>
        <translation>Chacun est alors demandé</translation>
    </message>
    <message>
        <source>Say it again</source>
        <translation>Répéter</translation>
    </message>
    <message>
        <source>Not all of them</source>
        <translation>Pas tous</translation>
    </message>
    <message>
        <source>Down again; they are read once more</source>
        <translation>Redescendu&#x202f;; ils sont relus encore une fois</translation>
    </message>
    <message>
        <source>Touch instead</source>
        <translation>Toucher l’écran</translation>
    </message>
    <message>
        <source>At this stand only</source>
        <translation>À ce poste seulement</translation>
    </message>
</context>
<context>
    <name>HistoryScreen</name>
    <message>
        <source>History of a point</source>
        <translation>Historique d’un point</translation>
    </message>
    <message>
        <source>the newest first</source>
        <translation>les plus récents d’abord</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Part of its name</source>
        <translation>Une partie de son nom</translation>
    </message>
    <message>
        <source>And %1 more: write a part of its name.</source>
        <translation>Et %1 de plus&#x202f;: écrire une partie du nom.</translation>
    </message>
    <message>
        <source>Another point</source>
        <translation>Un autre point</translation>
    </message>
    <message>
        <source>The records are being read …</source>
        <translation>Lecture des comptes rendus en cours…</translation>
    </message>
    <message>
        <source>No record says anything of this point.</source>
        <translation>Aucun compte rendu ne dit rien de ce point.</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Montrer les précédents</translation>
    </message>
    <message>
        <source>Where its values are going</source>
        <translation>Où vont ses valeurs</translation>
    </message>
    <message>
        <source>Chart of the values</source>
        <translation>Courbe des valeurs</translation>
    </message>
    <message>
        <source>A part was renewed</source>
        <translation>Une pièce a été remplacée</translation>
    </message>
</context>
<context>
    <name>InWordsSheet</name>
    <message>
        <source>What did you find?</source>
        <translation>Constat en quelques mots</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été constaté</translation>
    </message>
</context>
<context>
    <name>InterruptedSheet</name>
    <message>
        <source>Are you there?</source>
        <translation>Êtes-vous là&#x202f;?</translation>
    </message>
    <message>
        <source>After an interruption</source>
        <translation>Après une interruption</translation>
    </message>
    <message>
        <source>I am here</source>
        <translation>Je suis là</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>An interruption is when something gets left out. The rule here: %1.</source>
        <translation>C’est lors d’une interruption que l’on oublie. La règle ici&#x202f;: %1.</translation>
    </message>
    <message>
        <source>Before going on, look where you left off. Take your time.</source>
        <translation>Avant de continuer, regarder là où la visite s’est arrêtée. Prendre son temps.</translation>
    </message>
</context>
<context>
    <name>InvitationCode</name>
    <message>
        <source>A code for the other device&apos;s camera</source>
        <translation>Un code pour la caméra de l’autre appareil</translation>
    </message>
    <message>
        <source>Lets one device in, once: %1 left</source>
        <translation>Admet un appareil, une fois&#x202f;: reste %1</translation>
    </message>
    <message>
        <source>Or typed on the other device:</source>
        <translation>Ou à taper sur l’autre appareil&#x202f;:</translation>
    </message>
    <message>
        <source>This network has no address that could be typed: the other device needs its camera.</source>
        <translation>Ce réseau n’a pas d’adresse que l’on puisse taper&#x202f;: l’autre appareil a besoin de sa caméra.</translation>
    </message>
</context>
<context>
    <name>JoinSheet</name>
    <message>
        <source>Follow another</source>
        <translation>Suivre quelqu’un</translation>
    </message>
    <message>
        <source>With the code on their screen</source>
        <translation>Avec le code affiché sur son écran</translation>
    </message>
    <message>
        <source>Follow</source>
        <translation>Suivre</translation>
    </message>
    <message>
        <source>The code&apos;s letters</source>
        <translation>Lettres du code</translation>
    </message>
    <message>
        <source>spaces don&apos;t matter</source>
        <translation>les espaces ne comptent pas</translation>
    </message>
    <message>
        <source>On the device of whoever walks: More, “Who follows”, “Show a code”. It lets one device in, within five minutes.</source>
        <translation>Sur l’appareil de qui fait la visite&#x202f;: Plus, «&#x202f;Qui suit&#x202f;», «&#x202f;Montrer un code&#x202f;». Il admet un appareil, dans les cinq minutes.</translation>
    </message>
</context>
<context>
    <name>KeyCard</name>
    <message>
        <source>A key nobody has named</source>
        <translation>Une clé que personne n’a nommée</translation>
    </message>
    <message>
        <source>Trust it</source>
        <translation>La reconnaître</translation>
    </message>
    <message>
        <source>Revoke it</source>
        <translation>La révoquer</translation>
    </message>
</context>
<context>
    <name>KeyFields</name>
    <message>
        <source>Key of %1</source>
        <translation>Clé de %1</translation>
    </message>
    <message>
        <source>This device has no key yet. Your key signs what you conclude. It stays on this device, locked by a passphrase that nobody can recover.</source>
        <translation>Cet appareil n’a pas encore de clé. Elle signe les conclusions. Elle reste sur cet appareil, protégée par une phrase secrète que personne ne peut récupérer.</translation>
    </message>
    <message>
        <source>A key of your own, beside those of the others who use this device. It stays here, locked by a passphrase that nobody can recover.</source>
        <translation>Une clé personnelle, à côté de celles des autres personnes qui utilisent cet appareil. Elle reste ici, protégée par une phrase secrète que personne ne peut récupérer.</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Nom du signataire</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Phrase secrète</translation>
    </message>
    <message>
        <source>at least 8 characters</source>
        <translation>au moins 8 caractères</translation>
    </message>
    <message>
        <source>The same passphrase again</source>
        <translation>La même phrase secrète encore</translation>
    </message>
    <message>
        <source>The two are not the same yet.</source>
        <translation>Les deux ne sont pas encore identiques.</translation>
    </message>
    <message>
        <source>Fingerprint %1</source>
        <translation>Empreinte %1</translation>
    </message>
    <message>
        <source>Make a key for another person</source>
        <translation>Créer une clé pour une autre personne</translation>
    </message>
</context>
<context>
    <name>KeySubject</name>
    <message>
        <source>Whose key it is</source>
        <translation>À qui est la clé</translation>
    </message>
    <message>
        <source>The key&apos;s fingerprint: 64 digits, 0 to 9 and a to f</source>
        <translation>L’empreinte de la clé&#x202f;: 64 caractères, 0 à 9 et a à f</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Figures</source>
        <translation>Chiffres</translation>
    </message>
    <message>
        <source>Erase</source>
        <translation>Corr.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
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
        <translation>Sur cet appareil&#x202f;; n’a rien signé dans ce dossier</translation>
    </message>
    <message>
        <source>The owner has said nothing of this key</source>
        <translation>Le propriétaire n’a rien dit de cette clé</translation>
    </message>
    <message>
        <source>Whose key counts</source>
        <translation>Quelles clés font foi</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Trust another key</source>
        <translation>Reconnaître une autre clé</translation>
    </message>
    <message>
        <source>A signature says which key made it. Whose key that is, and as what it counts, the owner says.</source>
        <translation>Une signature dit quelle clé l’a faite. À qui est cette clé, et à quel titre elle vaut, c’est le propriétaire qui le dit.</translation>
    </message>
    <message>
        <source>The file is being read …</source>
        <translation>Lecture du dossier en cours…</translation>
    </message>
    <message>
        <source>Nobody has signed anything here, and this device has no key yet.</source>
        <translation>Personne n’a encore rien signé ici, et cet appareil n’a pas encore de clé.</translation>
    </message>
</context>
<context>
    <name>LanguageKey</name>
    <message>
        <source>Language: %1</source>
        <translation>Langue&#x202f;: %1</translation>
    </message>
    <message>
        <source>The device&apos;s; a touch chooses another</source>
        <translation>Celle de l’appareil&#x202f;; un toucher en choisit une autre</translation>
    </message>
    <message>
        <source>A touch chooses another, or the device&apos;s again</source>
        <translation>Un toucher en choisit une autre, ou de nouveau celle de l’appareil</translation>
    </message>
</context>
<context>
    <name>LastTime</name>
    <message>
        <source>%1 flight hours</source>
        <translation>%1 heures de vol</translation>
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
        <translation>Retiré avant la signature.</translation>
    </message>
</context>
<context>
    <name>MarkPlace</name>
    <message>
        <source>The ground round the aircraft, from above, nose up</source>
        <translation>Le sol autour de l’aéronef, vu de dessus, nez en haut</translation>
    </message>
    <message>
        <source>Arrow keys move by %1, Enter sets a corner, Backspace takes it back</source>
        <translation>Les flèches déplacent de %1, Entrée pose un coin, Retour arrière l’enlève</translation>
    </message>
</context>
<context>
    <name>MarkSheet</name>
    <message>
        <source>Something is in the way</source>
        <translation>Un obstacle sur le parcours</translation>
    </message>
    <message>
        <source>Touch one corner of it on the figure.</source>
        <translation>En toucher un coin sur le dessin.</translation>
    </message>
    <message>
        <source>Touch the opposite corner.</source>
        <translation>Toucher le coin opposé.</translation>
    </message>
    <message>
        <source>%1. Drag a corner, or all of it, to its place.</source>
        <translation>%1. Faire glisser un coin, ou le tout, à sa place.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Mur</translation>
    </message>
    <message>
        <source>Another machine</source>
        <translation>Un autre aéronef</translation>
    </message>
    <message>
        <source>It is marked as in the way</source>
        <translation>Il est marqué comme obstacle</translation>
    </message>
    <message>
        <source>Or what else it is</source>
        <translation>Ou ce que c’est d’autre</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Effacer le coin</translation>
    </message>
    <message>
        <source>The last corner</source>
        <translation>Le dernier coin</translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation>Marquer</translation>
    </message>
</context>
<context>
    <name>MarkedShape</name>
    <message>
        <source>In the way: %1</source>
        <translation>Obstacle&#x202f;: %1</translation>
    </message>
</context>
<context>
    <name>MeasureSheet</name>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>The mark to the left</source>
        <translation>Le repère vers la gauche</translation>
    </message>
    <message>
        <source>The mark up</source>
        <translation>Le repère vers le haut</translation>
    </message>
    <message>
        <source>The mark down</source>
        <translation>Le repère vers le bas</translation>
    </message>
    <message>
        <source>The mark to the right</source>
        <translation>Le repère vers la droite</translation>
    </message>
    <message>
        <source>This is corner %1</source>
        <translation>C’est le coin %1</translation>
    </message>
    <message>
        <source>Here</source>
        <translation>Ici</translation>
    </message>
    <message>
        <source>The corners are right</source>
        <translation>Les coins sont justes</translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation>Garder %1</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Take back the last mark</source>
        <translation>Reprendre le dernier repère</translation>
    </message>
    <message>
        <source>Measure by the card</source>
        <translation>Mesurer avec la carte</translation>
    </message>
    <message>
        <source>Keep the photo</source>
        <translation>Garder la photo</translation>
    </message>
    <message>
        <source>To be compared with next time</source>
        <translation>À comparer la prochaine fois</translation>
    </message>
    <message>
        <source>Last time: %1</source>
        <translation>La dernière fois&#x202f;: %1</translation>
    </message>
    <message>
        <source>The last photo</source>
        <translation>La dernière photo</translation>
    </message>
    <message>
        <source>To measure, lay any card of the usual size (85.6 × 54 mm) flat on the part, so that all of it is seen, and look straight at it.</source>
        <translation>Pour mesurer, poser une carte de taille courante (85,6 × 54 mm) à plat sur la pièce, entièrement visible, et la regarder bien de face.</translation>
    </message>
    <message>
        <source>The photo is being read …</source>
        <translation>La photo est lue …</translation>
    </message>
    <message>
        <source>The photo about the mark, from close</source>
        <translation>La photo autour du repère, de près</translation>
    </message>
    <message>
        <source>The photo</source>
        <translation>La photo</translation>
    </message>
    <message>
        <source>Show today&apos;s photo</source>
        <translation>Montrer la photo du jour</translation>
    </message>
    <message>
        <source>Show the last photo</source>
        <translation>Montrer la dernière photo</translation>
    </message>
    <message>
        <source>Both at one scale, by their cards</source>
        <translation>Les deux à la même échelle, d’après leurs cartes</translation>
    </message>
    <message>
        <source>It is a long one</source>
        <translation>C’est un long</translation>
    </message>
    <message>
        <source>It is a short one</source>
        <translation>C’est un court</translation>
    </message>
    <message>
        <source>A length you know there, mm</source>
        <translation>Une longueur connue à cet endroit, mm</translation>
    </message>
    <message>
        <source>Shows whether the card lies flat with the part; may stay empty</source>
        <translation>Montre si la carte est à plat avec la pièce&#x202f;; peut rester vide</translation>
    </message>
    <message>
        <source>Look at the card&apos;s corners again</source>
        <translation>Revoir les coins de la carte</translation>
    </message>
    <message>
        <source>No card lies there: only an angle</source>
        <translation>Pas de carte&#x202f;: seulement un angle</translation>
    </message>
    <message>
        <source>Of a slippage mark, seen straight from above</source>
        <translation>D’un témoin de rotation, vu bien d’en haut</translation>
    </message>
    <message>
        <source>Another photo</source>
        <translation>Une autre photo</translation>
    </message>
</context>
<context>
    <name>MoreSheet</name>
    <message>
        <source>Review</source>
        <translation>Revue</translation>
    </message>
    <message>
        <source>Everything not sound, everything owed, everything unsettled</source>
        <translation>Tout ce qui n’est pas conforme, reste à refermer ou n’est pas traité</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>How you are asked</source>
        <translation>Façon de demander</translation>
    </message>
    <message>
        <source>Keys, portions, reading aloud, photos; what an interruption asks for again</source>
        <translation>Touches, portions, lecture à haute voix, photos&#x202f;; ce qu’une interruption fait redemander</translation>
    </message>
    <message>
        <source>If something is different today</source>
        <translation>Si quelque chose diffère aujourd’hui</translation>
    </message>
    <message>
        <source>“%1” can&apos;t be used</source>
        <translation>«&#x202f;%1&#x202f;» est inutilisable</translation>
    </message>
    <message>
        <source>The next stand</source>
        <translation>Le poste suivant</translation>
    </message>
    <message>
        <source>Where you are</source>
        <translation>Le poste actuel</translation>
    </message>
    <message>
        <source>Something is in the way</source>
        <translation>Un obstacle sur le parcours</translation>
    </message>
    <message>
        <source>A wall, another machine: mark it on the figure</source>
        <translation>Un mur, un autre aéronef&#x202f;: le marquer sur le dessin</translation>
    </message>
    <message>
        <source>The light is good again</source>
        <translation>La lumière est de nouveau bonne</translation>
    </message>
    <message>
        <source>The light is going</source>
        <translation>La lumière baisse</translation>
    </message>
    <message>
        <source>In low light, what is reached by climbing comes first</source>
        <translation>Si la lumière est faible, ce qui demande une montée vient d’abord</translation>
    </message>
    <message>
        <source>The flight doesn&apos;t go into the dark</source>
        <translation>Le vol n’entre pas dans la nuit</translation>
    </message>
    <message>
        <source>The flight goes into the dark</source>
        <translation>Le vol entre dans la nuit</translation>
    </message>
    <message>
        <source>What the airframe asks for at night is added to the walk</source>
        <translation>Ce que le type demande de nuit s’ajoute à la visite</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>The records of the aircraft; the round waits</source>
        <translation>Les comptes rendus de l’aéronef&#x202f;; la visite attend</translation>
    </message>
    <message>
        <source>Watch</source>
        <translation>Suivi</translation>
    </message>
    <message>
        <source>Follow others; the round waits</source>
        <translation>Suivre d’autres visites&#x202f;; la visite en cours attend</translation>
    </message>
    <message>
        <source>Leave the round</source>
        <translation>Quitter la visite</translation>
    </message>
    <message>
        <source>It waits as it stands</source>
        <translation>Elle attend telle quelle</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nuit</translation>
    </message>
    <message>
        <source>The night appearance spares eyes that are used to the dark</source>
        <translation>L’affichage de nuit ménage les yeux habitués à l’obscurité</translation>
    </message>
    <message>
        <source>Text %1 %</source>
        <translation>Texte %1&#x202f;%</translation>
    </message>
    <message>
        <source>Makes all text larger, up to twice; then small again</source>
        <translation>Agrandit tous les textes, jusqu’au double&#x202f;; puis de nouveau petits</translation>
    </message>
    <message>
        <source>For the right hand</source>
        <translation>Pour la main droite</translation>
    </message>
    <message>
        <source>For the left hand</source>
        <translation>Pour la main gauche</translation>
    </message>
    <message>
        <source>What the thumb reaches changes sides</source>
        <translation>Ce que le pouce atteint change de côté</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>À refermer</translation>
    </message>
    <message>
        <source>On a keyboard: I = I am there, D = done, S = sound, F = finding, N = not inspected, W = why, V = value, R = review, P = pause, M = more.</source>
        <translation>Au clavier&#x202f;: I = j’y suis, D = fait, S = conforme, F = constat, N = non inspecté, W = pourquoi, V = valeur, R = revue, P = pause, M = plus.</translation>
    </message>
</context>
<context>
    <name>NotInspectedSheet</name>
    <message>
        <source>Not inspected</source>
        <translation>Non inspecté</translation>
    </message>
    <message numerus="yes">
        <source>All %n points that are left</source>
        <translation>
            <numerusform>Le %n point restant</numerusform>
            <numerusform>Les %n points restants</numerusform>
        </translation>
    </message>
    <message>
        <source>Settle all as not inspected</source>
        <translation>Déclarer tous non inspectés</translation>
    </message>
    <message>
        <source>Settle as not inspected</source>
        <translation>Déclarer non inspecté</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>The walk is stopped.</source>
        <translation>La visite est interrompue.</translation>
    </message>
    <message>
        <source>Can&apos;t be reached today.</source>
        <translation>Inaccessible aujourd’hui.</translation>
    </message>
    <message>
        <source>Covered by ice, snow or dirt.</source>
        <translation>Couvert de givre, de neige ou de saleté.</translation>
    </message>
    <message>
        <source>Too dark to see.</source>
        <translation>Trop sombre pour voir.</translation>
    </message>
    <message>
        <source>In your words</source>
        <translation>En quelques mots</translation>
    </message>
    <message>
        <source>What allows flight without it</source>
        <translation>Ce qui permet le vol sans cela</translation>
    </message>
    <message>
        <source>Basis: handbook section, deferral, permission</source>
        <translation>Base&#x202f;: section du manuel de vol, report, autorisation</translation>
    </message>
    <message>
        <source>Without a stated basis, the conclusion can&apos;t be fit.</source>
        <translation>Sans base déclarée, la conclusion ne peut pas être «&#x202f;apte au vol&#x202f;».</translation>
    </message>
</context>
<context>
    <name>NoteSheet</name>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Goes into the record with its time.</source>
        <translation>Va au compte rendu avec son heure.</translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation>Garder la note</translation>
    </message>
</context>
<context>
    <name>PartFields</name>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>Part number</source>
        <translation>Réf. pièce</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
</context>
<context>
    <name>PartScreen</name>
    <message>
        <source>Changed</source>
        <translation>Remplacée</translation>
    </message>
    <message>
        <source>Only taken off</source>
        <translation>Seulement déposée</translation>
    </message>
    <message>
        <source>Only fitted</source>
        <translation>Seulement posée</translation>
    </message>
    <message>
        <source>Part changed</source>
        <translation>Pièce remplacée</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Où</translation>
    </message>
    <message>
        <source>No record says what is fitted</source>
        <translation>Aucun compte rendu ne dit ce qui est monté</translation>
    </message>
    <message>
        <source>Another place</source>
        <translation>Un autre emplacement</translation>
    </message>
    <message>
        <source>Place on the aircraft</source>
        <translation>Emplacement sur l’aéronef</translation>
    </message>
    <message>
        <source>one part at a time is in it</source>
        <translation>une seule pièce à la fois s’y trouve</translation>
    </message>
    <message>
        <source>Taken off</source>
        <translation>Déposée</translation>
    </message>
    <message>
        <source>Say what it has run</source>
        <translation>Indiquer son temps de marche</translation>
    </message>
    <message>
        <source>Fitted</source>
        <translation>Posée</translation>
    </message>
    <message>
        <source>Not new: say what it had run</source>
        <translation>Pas neuve&#x202f;: indiquer son temps de marche</translation>
    </message>
    <message>
        <source>The work</source>
        <translation>Les travaux</translation>
    </message>
</context>
<context>
    <name>PhotoSource</name>
    <message>
        <source>Camera</source>
        <translation>Appareil photo</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation>D’un fichier</translation>
    </message>
    <message>
        <source>Photo&apos;s path</source>
        <translation>Chemin de la photo</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>Photo %1</source>
        <translation>Photo %1</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Enlever</translation>
    </message>
</context>
<context>
    <name>PlacesBar</name>
    <message>
        <source>Places</source>
        <translation>Lieux</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Tour</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Dossier</translation>
    </message>
    <message>
        <source>Watch</source>
        <translation>Suivi</translation>
    </message>
</context>
<context>
    <name>ProblemBar</name>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>QuickStrip</name>
    <message>
        <source>%1: less than one of them takes. Was each of them looked at?</source>
        <translation>%1&#x202f;: moins qu’il n’en faut pour un seul. Chacun a-t-il été regardé&#x202f;?</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Regarder encore</translation>
    </message>
    <message>
        <source>Yes, each</source>
        <translation>Oui, chacun</translation>
    </message>
    <message>
        <source>%1: was each looked at?</source>
        <translation>%1&#x202f;: chacun a-t-il été regardé&#x202f;?</translation>
    </message>
</context>
<context>
    <name>ReadingChoices</name>
    <message>
        <source>Say what it is read from</source>
        <translation>Dire avec quoi c’est mesuré</translation>
    </message>
    <message>
        <source>What the value is read from</source>
        <translation>Avec quoi la valeur est mesurée</translation>
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
        <translation>L’incertitude type d’une telle lecture</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>Non précisé</translation>
    </message>
</context>
<context>
    <name>ReadingScreen</name>
    <message>
        <source>Read counters</source>
        <translation>Relever les compteurs</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
</context>
<context>
    <name>RecordKey</name>
    <message>
        <source>Signed and sealed just now</source>
        <translation>Signé et scellé à l’instant</translation>
    </message>
</context>
<context>
    <name>RecordScreen</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Constats</translation>
    </message>
    <message>
        <source>Nothing was found.</source>
        <translation>Rien n’a été constaté.</translation>
    </message>
    <message>
        <source>Not inspected</source>
        <translation>Non inspecté</translation>
    </message>
    <message>
        <source>No basis stated.</source>
        <translation>Aucune base déclarée.</translation>
    </message>
    <message>
        <source>Basis: %1</source>
        <translation>Base&#x202f;: %1</translation>
    </message>
    <message>
        <source>Counters</source>
        <translation>Compteurs</translation>
    </message>
    <message>
        <source>Who signed</source>
        <translation>Qui a signé</translation>
    </message>
    <message>
        <source>Sign under it</source>
        <translation>Contresigner</translation>
    </message>
    <message>
        <source>Another person puts their signature under this record</source>
        <translation>Une autre personne appose sa signature sur ce compte rendu</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Laid beside another round of the same walk: who saw what</source>
        <translation>À côté d’une autre visite du même genre&#x202f;: qui a vu quoi</translation>
    </message>
    <message>
        <source>Walk it again</source>
        <translation>Rejouer la visite</translation>
    </message>
    <message>
        <source>The round as it went, at any speed, with the time at each stand</source>
        <translation>La visite telle qu’elle s’est faite, à toute vitesse voulue, avec le temps à chaque poste</translation>
    </message>
    <message>
        <source>Whose key counts</source>
        <translation>Quelles clés font foi</translation>
    </message>
    <message>
        <source>Take it along</source>
        <translation>Emporter</translation>
    </message>
    <message>
        <source>Folder</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Choisir</translation>
    </message>
    <message>
        <source>Choose the folder</source>
        <translation>Choisir l’endroit</translation>
    </message>
    <message>
        <source>Write record, PDF and photos</source>
        <translation>Écrire compte rendu, PDF et photos</translation>
    </message>
    <message>
        <source>Write record</source>
        <translation>Écrire le compte rendu</translation>
    </message>
    <message>
        <source>Written:
%1</source>
        <translation>Écrit&#x202f;:
%1</translation>
    </message>
    <message>
        <source>Every point</source>
        <translation>Tous les points</translation>
    </message>
    <message>
        <source>The whole round</source>
        <translation>Toute la visite</translation>
    </message>
    <message>
        <source>Record %1</source>
        <translation>Compte rendu %1</translation>
    </message>
</context>
<context>
    <name>RecordsScreen</name>
    <message>
        <source>Records of %1</source>
        <translation>Comptes rendus de %1</translation>
    </message>
    <message>
        <source>%1 of %2, the newest first</source>
        <translation>%1 sur %2, les plus récents d’abord</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Montrer les précédents</translation>
    </message>
</context>
<context>
    <name>RectifyScreen</name>
    <message>
        <source>Inspection or work done</source>
        <translation>Inspection ou travaux faits</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Remise en état</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Inspections done with it</source>
        <translation>Inspections ainsi faites</translation>
    </message>
</context>
<context>
    <name>RemoveScreen</name>
    <message>
        <source>Let 1 record go</source>
        <translation>Éliminer 1 compte rendu</translation>
    </message>
    <message>
        <source>Let %1 records go</source>
        <translation>Éliminer %1 comptes rendus</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Sign and let go …</source>
        <translation>Signer et éliminer…</translation>
    </message>
    <message>
        <source>This can&apos;t be undone: 1 record goes from this device for good.</source>
        <translation>C’est irréversible&#x202f;: 1 compte rendu disparaît définitivement de cet appareil.</translation>
    </message>
    <message>
        <source>This can&apos;t be undone: %1 records go from this device for good.</source>
        <translation>C’est irréversible&#x202f;: %1 comptes rendus disparaissent définitivement de cet appareil.</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation>Les garder</translation>
    </message>
    <message>
        <source>Let go for good</source>
        <translation>Éliminer définitivement</translation>
    </message>
    <message>
        <source>Show all %1</source>
        <translation>Montrer les %1</translation>
    </message>
    <message>
        <source>What they say, their signatures, their PDFs, and the photos that no other record names leave this archive. Copies elsewhere stay where they are. In their place stays a signed record: it names each by its kind, its day and its identity, so that the chain holds, and says what allowed it.</source>
        <translation>Leur contenu, leurs signatures, leurs PDF et les photos qu’aucun autre compte rendu ne nomme quittent ces archives. Les copies ailleurs restent où elles sont. À leur place reste un compte rendu signé&#x202f;: il nomme chacun par son genre, son jour et son identité, pour que la chaîne tienne, et dit ce qui l’a permis.</translation>
    </message>
    <message>
        <source>%1 of them must stay by 14 CFR 91.417(b):</source>
        <translation>%1 d’entre eux doivent rester selon 14 CFR 91.417(b)&#x202f;:</translation>
    </message>
    <message>
        <source>Other rules allow it all the same</source>
        <translation>D’autres règles le permettent malgré tout</translation>
    </message>
    <message>
        <source>Name them below.</source>
        <translation>Les nommer ci-dessous.</translation>
    </message>
    <message>
        <source>What allows it</source>
        <translation>Ce qui le permet</translation>
    </message>
    <message>
        <source>One of them must stay by 14 CFR 91.417(b):</source>
        <translation>L’un d’eux doit rester selon 14 CFR 91.417(b)&#x202f;:</translation>
    </message>
</context>
<context>
    <name>RenewedScreen</name>
    <message>
        <source>Renewed before a value</source>
        <translation>Remplacé avant une valeur</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>If a part was renewed or repainted and nobody said so when it was next measured, the owner or a mechanic says it here. Its values begin anew at the one you choose. What you sign stays; only signing again takes it back.</source>
        <translation>Si une pièce a été remplacée ou repeinte et que personne ne l’a dit à la mesure suivante, le propriétaire ou un mécanicien le dit ici. Ses valeurs repartent de celle que vous choisissez. Ce que vous signez reste&#x202f;; seule une nouvelle signature le retire.</translation>
    </message>
    <message>
        <source>The first value since then</source>
        <translation>La première valeur depuis</translation>
    </message>
    <message>
        <source>told as renewed before it</source>
        <translation>dite remplacée avant</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Montrer les précédents</translation>
    </message>
    <message>
        <source>This one is told as renewed: you sign that the part was not renewed before it.</source>
        <translation>Avant celle-ci, la pièce est dite remplacée&#x202f;: vous signez qu’elle ne l’a pas été.</translation>
    </message>
    <message>
        <source>Words, if any</source>
        <translation>Remarques éventuelles</translation>
    </message>
    <message>
        <source>Sign and keep</source>
        <translation>Signer et garder</translation>
    </message>
    <message>
        <source>Sign: not renewed</source>
        <translation>Signer&#x202f;: pas remplacée</translation>
    </message>
    <message>
        <source>Sign: renewed</source>
        <translation>Signer&#x202f;: remplacée</translation>
    </message>
</context>
<context>
    <name>ReopenSheet</name>
    <message>
        <source>Settle again</source>
        <translation>Refaire le point</translation>
    </message>
    <message>
        <source>Settle it again</source>
        <translation>Refaire le point</translation>
    </message>
    <message>
        <source>Why it is settled again</source>
        <translation>Pourquoi refaire le point</translation>
    </message>
    <message>
        <source>What was said before stays in the record, with its time.</source>
        <translation>Ce qui a été dit avant reste au compte rendu, avec son heure.</translation>
    </message>
</context>
<context>
    <name>ReplayKeys</name>
    <message>
        <source>Stop</source>
        <translation>Arrêt</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Lire</translation>
    </message>
    <message>
        <source>Walks it again from here</source>
        <translation>Rejoue la visite à partir d’ici</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <translation>%1&#x202f;×</translation>
    </message>
    <message>
        <source>Times as fast as it was walked</source>
        <translation>Combien de fois plus vite que la visite réelle</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Direct</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>What is settled as it is settled</source>
        <translation>Ce qui est traité, au moment même</translation>
    </message>
</context>
<context>
    <name>RetentionGroup</name>
    <message>
        <source>All %1 of these</source>
        <translation>Les %1 de ce groupe</translation>
    </message>
    <message>
        <source>%1 of them chosen</source>
        <translation>%1 choisis parmi eux</translation>
    </message>
    <message>
        <source>Show more</source>
        <translation>En montrer plus</translation>
    </message>
    <message>
        <source>Show which one</source>
        <translation>Montrer lequel</translation>
    </message>
    <message>
        <source>Show them one by one</source>
        <translation>Les montrer un par un</translation>
    </message>
</context>
<context>
    <name>RetentionScreen</name>
    <message>
        <source>What may go</source>
        <translation>Ce qui est éliminable</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Nothing is chosen</source>
        <translation>Rien n’est choisi</translation>
    </message>
    <message>
        <source>Go on with 1 record</source>
        <translation>Continuer avec 1 compte rendu</translation>
    </message>
    <message>
        <source>Go on with %1 records</source>
        <translation>Continuer avec %1 comptes rendus</translation>
    </message>
    <message>
        <source>Ambit lets nothing go by itself. This is what 14 CFR 91.417(b) says of each record; the operator, a lessor or other rules may ask for more.</source>
        <translation>Ambit n’élimine rien de lui-même. Voici ce que 14 CFR 91.417(b) dit de chaque compte rendu&#x202f;; l’exploitant, un loueur ou d’autres règles peuvent demander plus.</translation>
    </message>
    <message>
        <source>The records are being looked at …</source>
        <translation>Examen des comptes rendus en cours…</translation>
    </message>
    <message>
        <source>Nothing may go now.</source>
        <translation>Rien n’est éliminable maintenant.</translation>
    </message>
    <message>
        <source>May go: %1</source>
        <translation>Éliminables&#x202f;: %1</translation>
    </message>
    <message>
        <source>Must stay: %1</source>
        <translation>À conserver&#x202f;: %1</translation>
    </message>
    <message>
        <source>Show what must stay, and why</source>
        <translation>Montrer ce qui est à conserver, et pourquoi</translation>
    </message>
</context>
<context>
    <name>ReviewRow</name>
    <message>
        <source>Not inspected</source>
        <translation>Non inspecté</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>À refermer</translation>
    </message>
    <message>
        <source>To do</source>
        <translation>À faire</translation>
    </message>
    <message>
        <source>No basis stated.</source>
        <translation>Aucune base déclarée.</translation>
    </message>
    <message>
        <source>Basis: %1</source>
        <translation>Base&#x202f;: %1</translation>
    </message>
    <message>
        <source>Is closed</source>
        <translation>C’est refermé</translation>
    </message>
    <message>
        <source>Settle again</source>
        <translation>Refaire</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>grounds the aircraft</source>
        <translation>immobilise l’aéronef</translation>
    </message>
    <message>
        <source>for assessment</source>
        <translation>à évaluer</translation>
    </message>
</context>
<context>
    <name>ReviewScreen</name>
    <message>
        <source>Review</source>
        <translation>Revue</translation>
    </message>
    <message>
        <source>%1 of %2 settled</source>
        <translation>%1 traités sur %2</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Conclude</source>
        <translation>Conclure</translation>
    </message>
    <message>
        <source>Every point is settled sound and nothing is open.</source>
        <translation>Chaque point est traité et conforme, rien n’est en suspens.</translation>
    </message>
    <message>
        <source>Stop the walk: the rest is not inspected</source>
        <translation>Interrompre la visite&#x202f;: le reste est non inspecté</translation>
    </message>
    <message>
        <source>Opened outside its point?</source>
        <translation>Ouvert en dehors de son point&#x202f;?</translation>
    </message>
    <message>
        <source>Was opened: owed until it is closed</source>
        <translation>A été ouvert&#x202f;: à refermer</translation>
    </message>
    <message>
        <source>Hide what is settled</source>
        <translation>Masquer ce qui est traité</translation>
    </message>
    <message>
        <source>Show all that is settled</source>
        <translation>Montrer tout ce qui est traité</translation>
    </message>
    <message>
        <source>Settle again</source>
        <translation>Refaire</translation>
    </message>
</context>
<context>
    <name>RevokeScreen</name>
    <message>
        <source>Revoke a key</source>
        <translation>Révoquer une clé</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>What it signs from that day on counts for nothing in this file; what it signed before stays as it was. The owner may revoke any key, others their own. It can&apos;t be taken back: whose key it was makes a new one.</source>
        <translation>Ce qu’elle signe à partir de ce jour ne compte pas dans ce dossier&#x202f;; ce qu’elle a signé avant reste valable. Le propriétaire peut révoquer toute clé, les autres la leur. C’est sans retour&#x202f;: qui avait cette clé en crée une nouvelle.</translation>
    </message>
    <message>
        <source>From: year-month-day</source>
        <translation>À partir du&#x202f;: année-mois-jour</translation>
    </message>
    <message>
        <source>empty: from now on</source>
        <translation>vide&#x202f;: dès maintenant</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
</context>
<context>
    <name>SaySheet</name>
    <message>
        <source>To %1</source>
        <translation>À %1</translation>
    </message>
    <message>
        <source>Look again</source>
        <translation>Regarder encore</translation>
    </message>
    <message>
        <source>The walk can&apos;t be concluded until the point is settled again, or it is declined with words</source>
        <translation>La visite ne peut pas être conclue avant que le point soit traité à nouveau, ou la demande refusée avec un motif</translation>
    </message>
    <message>
        <source>Ask</source>
        <translation>Deman­der</translation>
    </message>
    <message>
        <source>A question; the answer stands in the record</source>
        <translation>Une question&#x202f;; la réponse figure au compte rendu</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remar­que</translation>
    </message>
    <message>
        <source>Needs no answer</source>
        <translation>N’attend pas de réponse</translation>
    </message>
    <message>
        <source>Where?</source>
        <translation>Où&#x202f;?</translation>
    </message>
    <message>
        <source>Of no point in particular</source>
        <translation>À propos d’aucun point précis</translation>
    </message>
    <message>
        <source>In hand: %1</source>
        <translation>En cours&#x202f;: %1</translation>
    </message>
    <message>
        <source>Another point</source>
        <translation>Un autre point</translation>
    </message>
    <message>
        <source>Choose a point</source>
        <translation>Choisir un point</translation>
    </message>
    <message>
        <source>Your words</source>
        <translation>Texte</translation>
    </message>
    <message>
        <source>Signed with your key; it stands in the record with what becomes of it. Nobody is hurried by it.</source>
        <translation>Signé avec la clé personnelle&#x202f;; cela figure au compte rendu avec la suite donnée. Personne n’en est pressé.</translation>
    </message>
</context>
<context>
    <name>SearchScreen</name>
    <message>
        <source>Search</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Search for something else</source>
        <translation>Chercher autre chose</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Mots</translation>
    </message>
    <message>
        <source>in what was written, or a point&apos;s name</source>
        <translation>dans ce qui est écrit, ou nom d’un point</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Pièce</translation>
    </message>
    <message>
        <source>name, number, serial, position</source>
        <translation>nom, référence, n° de série, emplacement</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>JASC</source>
        <translation>JASC</translation>
    </message>
    <message>
        <source>By date, kind or state</source>
        <translation>Par date, genre ou état</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>y-m-d</source>
        <translation>a-m-j</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Jusqu’au</translation>
    </message>
    <message>
        <source>Kind of record</source>
        <translation>Genre de compte rendu</translation>
    </message>
    <message>
        <source>What was found is now</source>
        <translation>Ce qui a été constaté est à présent</translation>
    </message>
    <message>
        <source>Searching …</source>
        <translation>Recherche en cours…</translation>
    </message>
    <message>
        <source>Nothing fits.</source>
        <translation>Rien ne correspond.</translation>
    </message>
    <message>
        <source>The newest %1 that fit</source>
        <translation>Les %1 plus récents qui correspondent</translation>
    </message>
    <message>
        <source>1 record fits</source>
        <translation>1 compte rendu correspond</translation>
    </message>
    <message>
        <source>%1 records fit</source>
        <translation>%1 comptes rendus correspondent</translation>
    </message>
    <message>
        <source>Show earlier ones</source>
        <translation>Montrer les précédents</translation>
    </message>
</context>
<context>
    <name>Section</name>
    <message>
        <source>Show all %1</source>
        <translation>Montrer les %1</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
</context>
<context>
    <name>SignKeys</name>
    <message>
        <source>Sign and keep</source>
        <translation>Signer et garder</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Créer la clé</translation>
    </message>
</context>
<context>
    <name>SignScreen</name>
    <message>
        <source>Sign</source>
        <translation>Signer</translation>
    </message>
    <message>
        <source>Make your key</source>
        <translation>Créer sa clé</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Créer la clé</translation>
    </message>
    <message>
        <source>Sign and seal</source>
        <translation>Signer et sceller</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 points</translation>
    </message>
    <message>
        <source>By signing you say: I walked this round as recorded, and this is my conclusion. The record is then sealed. Nobody can change it unseen, you neither.</source>
        <translation>Signer, c’est dire&#x202f;: j’ai fait cette visite telle qu’elle est consignée, et voici ma conclusion. Le compte rendu est ensuite scellé. Personne ne peut le changer sans que cela se voie, pas même le signataire.</translation>
    </message>
</context>
<context>
    <name>SignatureFields</name>
    <message>
        <source>Who signs</source>
        <translation>Signataire</translation>
    </message>
    <message>
        <source>Certificate or licence number</source>
        <translation>Numéro de licence ou de certificat</translation>
    </message>
</context>
<context>
    <name>SignatureRow</name>
    <message>
        <source>Signed under it %1</source>
        <translation>Contresigné %1</translation>
    </message>
    <message>
        <source>The owner has said nothing of this key</source>
        <translation>Le propriétaire n’a rien dit de cette clé</translation>
    </message>
</context>
<context>
    <name>StandHead</name>
    <message>
        <source>Next stand %1, %2</source>
        <translation>Poste suivant %1, %2</translation>
    </message>
    <message>
        <source>At stand %1, %2</source>
        <translation>Au poste %1, %2</translation>
    </message>
</context>
<context>
    <name>StandList</name>
    <message>
        <source>Points here</source>
        <translation>Points à ce poste</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>next</source>
        <translation>suivant</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>conforme</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>not inspected</source>
        <translation>non inspecté</translation>
    </message>
    <message>
        <source>on the card</source>
        <translation>sur la carte</translation>
    </message>
</context>
<context>
    <name>StandMark</name>
    <message>
        <source>Stand %1, %2</source>
        <translation>Poste %1, %2</translation>
    </message>
    <message>
        <source>Stand %1</source>
        <translation>Poste %1</translation>
    </message>
    <message>
        <source>can&apos;t be used: %1</source>
        <translation>inutilisable&#x202f;: %1</translation>
    </message>
    <message>
        <source>here</source>
        <translation>ici</translation>
    </message>
    <message>
        <source>been there</source>
        <translation>déjà fait</translation>
    </message>
    <message>
        <source>next</source>
        <translation>suivant</translation>
    </message>
    <message>
        <source>ahead</source>
        <translation>à venir</translation>
    </message>
</context>
<context>
    <name>Story</name>
    <message>
        <source>%1 began: %2</source>
        <translation>%1 a commencé&#x202f;: %2</translation>
    </message>
    <message>
        <source>Ordered anew: %1</source>
        <translation>Réordonné&#x202f;: %1</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>Au poste&#x202f;: %1</translation>
    </message>
    <message>
        <source>%1 re-opened: %2</source>
        <translation>%1 repris&#x202f;: %2</translation>
    </message>
    <message>
        <source>%1: opened</source>
        <translation>%1&#x202f;: ouvert</translation>
    </message>
    <message>
        <source>%1: put right</source>
        <translation>%1&#x202f;: remis en ordre</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>En pause</translation>
    </message>
    <message>
        <source>Resumed</source>
        <translation>Reprise</translation>
    </message>
    <message>
        <source>Note: %1</source>
        <translation>Note&#x202f;: %1</translation>
    </message>
    <message>
        <source>%1 can&apos;t be used: %2</source>
        <translation>%1 inutilisable&#x202f;: %2</translation>
    </message>
    <message>
        <source>%1 can be used again</source>
        <translation>%1 de nouveau utilisable</translation>
    </message>
    <message>
        <source>In the way, area %1: %2</source>
        <translation>Obstacle, aire %1&#x202f;: %2</translation>
    </message>
    <message>
        <source>Area %1 isn&apos;t in the way any more</source>
        <translation>L’aire %1 ne gêne plus</translation>
    </message>
    <message>
        <source>The light is low</source>
        <translation>La lumière est faible</translation>
    </message>
    <message>
        <source>The light is good again</source>
        <translation>La lumière est de nouveau bonne</translation>
    </message>
    <message>
        <source>Walked on one&apos;s own: what others found that day was not shown</source>
        <translation>Visite faite seul&#x202f;: ce que d’autres avaient constaté ce jour-là n’a pas été montré</translation>
    </message>
    <message>
        <source>%1 asked to look again at %2 (%3)</source>
        <translation>%1 a demandé de revoir %2 (%3)</translation>
    </message>
    <message>
        <source>%1 asked (%2)</source>
        <translation>Question de %1 (%2)</translation>
    </message>
    <message>
        <source>%1 remarked (%2)</source>
        <translation>Remarque de %1 (%2)</translation>
    </message>
    <message>
        <source>Answer to %1: %2</source>
        <translation>Réponse à %1&#x202f;: %2</translation>
    </message>
    <message>
        <source>Declined %1: %2</source>
        <translation>Refusé à %1&#x202f;: %2</translation>
    </message>
    <message>
        <source>Looked at in one go: %1</source>
        <translation>Regardés d’un seul trait&#x202f;: %1</translation>
    </message>
    <message>
        <source>Down again, and asked for each</source>
        <translation>Redescendu, et chacun demandé</translation>
    </message>
    <message>
        <source>Down again: to be looked at once more</source>
        <translation>Redescendu&#x202f;: à regarder encore une fois</translation>
    </message>
    <message>
        <source>%1: it was meant so</source>
        <translation>%1&#x202f;: c’était voulu</translation>
    </message>
    <message>
        <source>%1: looked at again</source>
        <translation>%1&#x202f;: revu</translation>
    </message>
    <message>
        <source>Satellite time was %1</source>
        <translation>L’heure satellite était %1</translation>
    </message>
    <message>
        <source>The flight doesn&apos;t go into the dark</source>
        <translation>Le vol n’entre pas dans la nuit</translation>
    </message>
    <message>
        <source>It is dark: what is asked for at night is added</source>
        <translation>Il fait nuit&#x202f;: ce qui est demandé de nuit s’ajoute</translation>
    </message>
    <message>
        <source>The flight goes into the dark: what is asked for at night is added</source>
        <translation>Le vol entre dans la nuit&#x202f;: ce qui est demandé de nuit s’ajoute</translation>
    </message>
    <message>
        <source>Conclusion withdrawn: %1</source>
        <translation>Conclusion retirée&#x202f;: %1</translation>
    </message>
    <message>
        <source>Signed by %1</source>
        <translation>Signé par %1</translation>
    </message>
    <message>
        <source>Where %1 is going was told</source>
        <translation>Dit où va %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#x202f;: %2</translation>
    </message>
</context>
<context>
    <name>StudentTile</name>
    <message>
        <source>Somebody</source>
        <translation>Quelqu’un</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Here; no round is walked yet.</source>
        <translation>Présent&#x202f;; pas encore de visite.</translation>
    </message>
</context>
<context>
    <name>Texts</name>
    <message>
        <source>1 finding</source>
        <translation>1 constat</translation>
    </message>
    <message>
        <source>%1 findings</source>
        <translation>%1 constats</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#x202f;: %2</translation>
    </message>
</context>
<context>
    <name>TimeLine</name>
    <message>
        <source>Time</source>
        <translation>Temps</translation>
    </message>
</context>
<context>
    <name>TrustScreen</name>
    <message>
        <source>Trust a key</source>
        <translation>Reconnaître une clé</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Nobody has said yet whose key counts here. Who signs this first is taken for the owner, and from then on only the owner&apos;s word counts.</source>
        <translation>Personne n’a encore dit quelles clés font foi ici. Qui signe ceci le premier est tenu pour le propriétaire, et dès lors seule compte sa parole.</translation>
    </message>
    <message>
        <source>Compare the fingerprint with the one that the person reads to you from their own device.</source>
        <translation>Comparer l’empreinte avec celle que la personne lit sur son propre appareil.</translation>
    </message>
    <message>
        <source>It counts as that of a</source>
        <translation>Elle vaut comme celle de</translation>
    </message>
    <message>
        <source>Since: year-month-day</source>
        <translation>Depuis le&#x202f;: année-mois-jour</translation>
    </message>
    <message>
        <source>empty: from now on</source>
        <translation>vide&#x202f;: dès maintenant</translation>
    </message>
</context>
<context>
    <name>ValueField</name>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Limit %1</source>
        <translation>Limite %1</translation>
    </message>
    <message>
        <source>.</source>
        <comment>between a number&apos;s whole and its fraction</comment>
        <translation>,</translation>
    </message>
    <message>
        <source>Another unit</source>
        <translation>Une autre unité</translation>
    </message>
</context>
<context>
    <name>VerifyScreen</name>
    <message>
        <source>Verify</source>
        <translation>Vérifier</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Verify again</source>
        <translation>Vérifier à nouveau</translation>
    </message>
    <message>
        <source>%1 of %2 records looked at: each one&apos;s signatures, its words, and the earlier ones that it names …</source>
        <translation>%1 comptes rendus sur %2 examinés&#x202f;: pour chacun les signatures, le contenu et les précédents qu’il nomme…</translation>
    </message>
    <message>
        <source>No page is missing and none was changed.</source>
        <translation>Aucune page ne manque et aucune n’a été changée.</translation>
    </message>
    <message>
        <source>1 record looked at: its signature holds, and it names no earlier one that isn&apos;t here.</source>
        <translation>1 compte rendu examiné&#x202f;: sa signature tient, et il ne nomme aucun précédent qui manque ici.</translation>
    </message>
    <message>
        <source>%1 records looked at: every signature holds, and every earlier record that one names is here.</source>
        <translation>%1 comptes rendus examinés&#x202f;: chaque signature tient, et chaque compte rendu précédent nommé est ici.</translation>
    </message>
    <message>
        <source>%1 records looked at: %2 don&apos;t hold, %3 are missing.</source>
        <translation>%1 comptes rendus examinés&#x202f;: %2 ne tiennent pas, %3 manquent.</translation>
    </message>
    <message>
        <source>Don&apos;t hold</source>
        <translation>Ne tiennent pas</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Manquent</translation>
    </message>
</context>
<context>
    <name>WalkCard</name>
    <message>
        <source>The card in hand</source>
        <translation>La carte en cours</translation>
    </message>
    <message>
        <source>Down again. The last one: was it sound?</source>
        <translation>Redescendu. Le dernier&#x202f;: était-il conforme&#x202f;?</translation>
    </message>
    <message>
        <source>Down again. %1 to tell: was it sound?</source>
        <translation>Redescendu. Encore %1&#x202f;: le point était-il conforme&#x202f;?</translation>
    </message>
    <message>
        <source>The last look: once round, slowly, with empty hands.</source>
        <translation>Le dernier regard&#x202f;: un tour, lentement, les mains vides.</translation>
    </message>
    <message>
        <source>Open or fitted today: %1</source>
        <translation>Ouvert ou posé aujourd’hui&#x202f;: %1</translation>
    </message>
    <message>
        <source>Say what was found: %1</source>
        <translation>Dire ce qui a été constaté&#x202f;: %1</translation>
    </message>
    <message>
        <source>By a photo with a card</source>
        <translation>Par une photo avec carte</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Retirer&#x202f;: %1</translation>
    </message>
    <message>
        <source>Renewed or repainted since the last value</source>
        <translation>Remplacé ou repeint depuis la dernière valeur</translation>
    </message>
</context>
<context>
    <name>WalkHead</name>
    <message>
        <source>1 thing open</source>
        <translation>1 à refermer</translation>
    </message>
    <message>
        <source>%1 things open</source>
        <translation>%1 à refermer</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 of %2 settled</source>
        <translation>%1 traités sur %2</translation>
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
        <translation>Visite</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Whole</source>
        <translation>Entier</translation>
    </message>
    <message>
        <source>Closer</source>
        <translation>Plus près</translation>
    </message>
    <message>
        <source>The figure</source>
        <translation>Le dessin</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Review, note, night, text size, other aircraft</source>
        <translation>Revue, note, nuit, taille du texte, autre aéronef</translation>
    </message>
</context>
<context>
    <name>WalkSpoken</name>
    <message>
        <source>Next stand %1, %2, %3.</source>
        <translation>Poste suivant %1, %2, %3.</translation>
    </message>
    <message>
        <source>To set: %1.</source>
        <translation>À régler&#x202f;: %1.</translation>
    </message>
    <message>
        <source>%1, settled: %2.</source>
        <translation>%1, traité&#x202f;: %2.</translation>
    </message>
    <message>
        <source>To settle: %1. %2.</source>
        <translation>À traiter&#x202f;: %1. %2.</translation>
    </message>
    <message>
        <source>On to the review.</source>
        <translation>Passer à la revue.</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Attention&#x202f;: %1</translation>
    </message>
    <message>
        <source>%1 of %2 settled.</source>
        <translation>%1 traités sur %2.</translation>
    </message>
</context>
<context>
    <name>WatchScreen</name>
    <message>
        <source>Watch</source>
        <translation>Suivi</translation>
    </message>
    <message>
        <source>As %1</source>
        <translation>En tant que %1</translation>
    </message>
    <message>
        <source>Follow a walk while it is walked</source>
        <translation>Suivre une visite pendant qu’elle se fait</translation>
    </message>
    <message>
        <source>Follow another</source>
        <translation>Suivre quelqu’un</translation>
    </message>
    <message>
        <source>Follow walks</source>
        <translation>Suivre des visites</translation>
    </message>
    <message>
        <source>Make the key</source>
        <translation>Créer la clé</translation>
    </message>
    <message>
        <source>This device can&apos;t follow others.</source>
        <translation>Cet appareil ne peut pas en suivre d’autres.</translation>
    </message>
    <message>
        <source>You see what is settled as it is settled, ask for a second look, and sign under the record. Both devices are in the same network, a phone&apos;s hotspot will do; nothing goes further. The pilot settles: nobody else can.</source>
        <translation>Ce qui est traité se voit au moment même&#x202f;; un second regard peut être demandé, le compte rendu contresigné. Les deux appareils sont sur le même réseau, le partage de connexion d’un téléphone suffit&#x202f;; rien ne va plus loin. Le pilote traite les points&#x202f;: personne d’autre ne le peut.</translation>
    </message>
    <message>
        <source>Who follows</source>
        <translation>Qui suit</translation>
    </message>
    <message>
        <source>You follow nobody. On the other device: More, “Who follows”, “Show a code”. Then touch “Follow another” here.</source>
        <translation>Personne n’est suivi. Sur l’autre appareil&#x202f;: Plus, «&#x202f;Qui suit&#x202f;», «&#x202f;Montrer un code&#x202f;». Puis toucher ici «&#x202f;Suivre quelqu’un&#x202f;».</translation>
    </message>
    <message>
        <source>Known from earlier</source>
        <translation>Déjà connus</translation>
    </message>
    <message>
        <source>Follow %1</source>
        <translation>Suivre %1</translation>
    </message>
    <message>
        <source>Without a code. Fingerprint %1</source>
        <translation>Sans code. Empreinte %1</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Oublier</translation>
    </message>
    <message>
        <source>%1 is only followed again with a new code</source>
        <translation>%1 ne peut être suivi à nouveau qu’avec un nouveau code</translation>
    </message>
    <message>
        <source>Lock the key again</source>
        <translation>Reverrouiller la clé</translation>
    </message>
    <message>
        <source>Follow nobody any more</source>
        <translation>Ne plus suivre personne</translation>
    </message>
    <message>
        <source>The key is locked again</source>
        <translation>La clé est de nouveau verrouillée</translation>
    </message>
</context>
<context>
    <name>WhySheet</name>
    <message>
        <source>Why it matters</source>
        <translation>Pourquoi c’est important</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Conforme</translation>
    </message>
    <message>
        <source>Not sound</source>
        <translation>Non conforme</translation>
    </message>
    <message>
        <source>A finding here</source>
        <translation>Un constat ici</translation>
    </message>
    <message>
        <source>Grounds the aircraft.</source>
        <translation>Immobilise l’aéronef.</translation>
    </message>
    <message>
        <source>Is at least for assessment.</source>
        <translation>Est au moins à évaluer.</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Last time</source>
        <translation>La dernière fois</translation>
    </message>
    <message>
        <source>In this round</source>
        <translation>Dans cette visite</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Look</source>
        <translation>Regarder</translation>
    </message>
    <message>
        <source>Feel</source>
        <translation>Toucher</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Bouger</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Tourner</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Purger</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Mesurer</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Compter</translation>
    </message>
    <message>
        <source>Listen</source>
        <translation>Écouter</translation>
    </message>
    <message>
        <source>On the ground</source>
        <translation>Au sol</translation>
    </message>
    <message>
        <source>Kneeling</source>
        <translation>À genoux</translation>
    </message>
    <message>
        <source>Raised</source>
        <translation>En hauteur</translation>
    </message>
    <message>
        <source>On a ladder</source>
        <translation>Sur une échelle</translation>
    </message>
    <message>
        <source>no hand free</source>
        <translation>aucune main libre</translation>
    </message>
    <message>
        <source>one hand free</source>
        <translation>une main libre</translation>
    </message>
    <message>
        <source>both hands free</source>
        <translation>deux mains libres</translation>
    </message>
    <message>
        <source>Pilot</source>
        <translation>Pilote</translation>
    </message>
    <message>
        <source>Instructor</source>
        <translation>Instructeur</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Propriétaire</translation>
    </message>
    <message>
        <source>Mechanic</source>
        <translation>Mécanicien</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>conforme</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>not inspected</source>
        <translation>non inspecté</translation>
    </message>
    <message>
        <source>Fit for flight</source>
        <translation>Apte au vol</translation>
    </message>
    <message>
        <source>Not fit for flight</source>
        <translation>Non apte au vol</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>à l’instant</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>il y a %1 min</translation>
    </message>
    <message>
        <source>%1 h ago</source>
        <translation>il y a %1 h</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>il y a %1 jours</translation>
    </message>
    <message>
        <source>Look again at %1</source>
        <translation>Revoir %1</translation>
    </message>
    <message>
        <source>A question</source>
        <translation>Une question</translation>
    </message>
    <message>
        <source>A question on %1</source>
        <translation>Une question sur %1</translation>
    </message>
    <message>
        <source>A remark</source>
        <translation>Une remarque</translation>
    </message>
    <message>
        <source>A remark on %1</source>
        <translation>Une remarque sur %1</translation>
    </message>
    <message>
        <source>%1 points in %2 s</source>
        <translation>%1 points en %2 s</translation>
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
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>Paused for %1</source>
        <translation>En pause&#x202f;: %1</translation>
    </message>
    <message>
        <source>A call of %1</source>
        <translation>Appel&#x202f;: %1</translation>
    </message>
    <message>
        <source>The screen was locked for %1</source>
        <translation>Écran verrouillé&#x202f;: %1</translation>
    </message>
    <message>
        <source>Away from this screen for %1</source>
        <translation>Hors de cet écran&#x202f;: %1</translation>
    </message>
    <message>
        <source>Nothing was told for %1</source>
        <translation>Rien de signalé&#x202f;: %1</translation>
    </message>
    <message>
        <source>The program was closed for %1</source>
        <translation>Programme fermé&#x202f;: %1</translation>
    </message>
    <message>
        <source>back one point</source>
        <translation>un point en arrière</translation>
    </message>
    <message>
        <source>back %1 points</source>
        <translation>%1 points en arrière</translation>
    </message>
    <message>
        <source>the stand again</source>
        <translation>refaire le poste</translation>
    </message>
    <message>
        <source>from the start</source>
        <translation>depuis le début</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <translation>%1&#x202f;: %2&#x202f;; %3</translation>
    </message>
    <message>
        <source>nothing to settle again</source>
        <translation>aucun point à refaire</translation>
    </message>
    <message>
        <source>one point to settle again</source>
        <translation>un point à refaire</translation>
    </message>
    <message>
        <source>%1 points to settle again</source>
        <translation>%1 points à refaire</translation>
    </message>
    <message>
        <source>.</source>
        <comment>between a number&apos;s whole and its fraction</comment>
        <translation>,</translation>
    </message>
    <message>
        <source>yyyy-MM-dd</source>
        <comment>a day, in a sentence</comment>
        <translation>dd/MM/yyyy</translation>
    </message>
    <message>
        <source>en</source>
        <comment>the language of this catalogue, ISO 639-1</comment>
        <translation>fr</translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <translation>d MMM yyyy, HH:mm</translation>
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
        <translation>%1 à %2 dans 95 cas sur 100</translation>
    </message>
    <message>
        <source>Its interval reaches beyond the limit: %1</source>
        <translation>Son intervalle dépasse la limite&#x202f;: %1</translation>
    </message>
    <message>
        <source>landings</source>
        <translation>atterrissages</translation>
    </message>
    <message>
        <source>cycles</source>
        <translation>cycles</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>démarrages</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#x202f;: %2</translation>
    </message>
</context>
<context>
    <name>WorkFields</name>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Completed on: year-month-day</source>
        <translation>Terminé le&#x202f;: année-mois-jour</translation>
    </message>
    <message>
        <source>Done by, if not by who signs</source>
        <translation>Fait par, si ce n’est pas le signataire</translation>
    </message>
    <message>
        <source>Kind of certificate you approve under</source>
        <translation>Genre de licence au titre de laquelle l’approbation est donnée</translation>
    </message>
    <message>
        <source>What the counters said then</source>
        <translation>Ce que disaient alors les compteurs</translation>
    </message>
</context>
<context>
    <name>ZoneShape</name>
    <message>
        <source>nothing of this walk</source>
        <translation>rien de cette visite</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>à faire</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>conforme</translation>
    </message>
    <message>
        <source>finding</source>
        <translation>constat</translation>
    </message>
    <message>
        <source>not inspected</source>
        <translation>non inspecté</translation>
    </message>
    <message>
        <source>%1 of %2 settled</source>
        <translation>%1 traités sur %2</translation>
    </message>
    <message>
        <source>something is open</source>
        <translation>quelque chose est ouvert</translation>
    </message>
</context>
<context>
    <name>ambit::view::AircraftFileView</name>
    <message>
        <source>%1, serial %2, fitted %3</source>
        <translation>%1, n° de série %2, posé %3</translation>
    </message>
</context>
<context>
    <name>ambit::view::AircraftModel</name>
    <message>
        <source>%1, started %2</source>
        <translation>%1, commencée %2</translation>
    </message>
    <message>
        <source>No round yet</source>
        <translation>Pas encore de visite</translation>
    </message>
</context>
<context>
    <name>ambit::view::BesideView</name>
    <message>
        <source>not settled</source>
        <translation>non traité</translation>
    </message>
    <message>
        <source>, grounds: %1</source>
        <translation>, immobilise&#x202f;: %1</translation>
    </message>
    <message>
        <source>, to be assessed: %1</source>
        <translation>, à évaluer&#x202f;: %1</translation>
    </message>
    <message>
        <source>Seen differently: %1 of %2 points that both settled</source>
        <translation>Vus différemment&#x202f;: %1 des %2 points traités par les deux</translation>
    </message>
    <message>
        <source>The same outcome at %1 of %2 points (%3 %)</source>
        <translation>Même résultat pour %1 points sur %2 (%3&#x202f;%)</translation>
    </message>
    <message>
        <source>Cohen&apos;s kappa %1, 95 % interval %2 to %3</source>
        <translation>Kappa de Cohen %1, intervalle à 95&#x202f;% de %2 à %3</translation>
    </message>
</context>
<context>
    <name>ambit::view::ConditionsView</name>
    <message>
        <source>This device&apos;s clock is %1 ahead of satellite time.</source>
        <translation>L’horloge de cet appareil avance de %1 sur l’heure satellite.</translation>
    </message>
    <message>
        <source>This device&apos;s clock is %1 behind satellite time.</source>
        <translation>L’horloge de cet appareil retarde de %1 sur l’heure satellite.</translation>
    </message>
</context>
<context>
    <name>ambit::view::Daylight</name>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Twilight</source>
        <translation>Crépuscule</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Nuit</translation>
    </message>
    <message>
        <source>%1; the sun doesn&apos;t set today or tomorrow</source>
        <translation>%1&#x202f;; le soleil ne se couche ni aujourd’hui ni demain</translation>
    </message>
    <message>
        <source>%1; the sun doesn&apos;t rise today or tomorrow</source>
        <translation>%1&#x202f;; le soleil ne se lève ni aujourd’hui ni demain</translation>
    </message>
    <message>
        <source>%1; the sun sets at %2</source>
        <translation>%1&#x202f;; coucher du soleil à %2</translation>
    </message>
    <message>
        <source>%1; the sun rises at %2</source>
        <translation>%1&#x202f;; lever du soleil à %2</translation>
    </message>
</context>
<context>
    <name>ambit::view::DiscrepancyView</name>
    <message>
        <source>Found</source>
        <translation>Constaté</translation>
    </message>
    <message>
        <source>Seen again</source>
        <translation>Revue</translation>
    </message>
    <message>
        <source>Said to be sound, though nobody had put it right</source>
        <translation>Déclarée conforme, bien que personne ne l’ait rectifiée</translation>
    </message>
    <message>
        <source>Assessed: it grounds the aircraft</source>
        <translation>Évaluée&#x202f;: elle immobilise l’aéronef</translation>
    </message>
    <message>
        <source>Deferred</source>
        <translation>Reportée</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Rectifiée</translation>
    </message>
    <message>
        <source>Seen sound after that</source>
        <translation>Vue conforme après cela</translation>
    </message>
</context>
<context>
    <name>ambit::view::ExportView</name>
    <message>
        <source>%1 records, %2 PDFs, %3 photos</source>
        <translation>%1 comptes rendus, %2 PDF, %3 photos</translation>
    </message>
    <message>
        <source>; %1 photos aren&apos;t here and are missing</source>
        <translation>, et %1 photos manquent ici</translation>
    </message>
</context>
<context>
    <name>ambit::view::FollowedRound</name>
    <message>
        <source>open</source>
        <translation>ouverte</translation>
    </message>
    <message>
        <source>looked at again</source>
        <translation>revu</translation>
    </message>
    <message>
        <source>answered: %1</source>
        <translation>réponse&#x202f;: %1</translation>
    </message>
    <message>
        <source>declined: %1</source>
        <translation>refusé&#x202f;: %1</translation>
    </message>
    <message>
        <source>told</source>
        <translation>transmis</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>En pause</translation>
    </message>
    <message>
        <source>On the way for %1</source>
        <translation>En chemin depuis %1</translation>
    </message>
    <message>
        <source>In hand for %1, takes about %2</source>
        <translation>En cours depuis %1, demande environ %2</translation>
    </message>
    <message>
        <source>In hand for %1</source>
        <translation>En cours depuis %1</translation>
    </message>
</context>
<context>
    <name>ambit::view::HandsView</name>
    <message>
        <source>This needs a value. Give it when both hands are free.</source>
        <translation>Il faut une valeur. La donner quand les deux mains sont libres.</translation>
    </message>
    <message>
        <source>To be put into words.</source>
        <translation>À mettre en mots.</translation>
    </message>
    <message>
        <source>One point</source>
        <translation>Un point</translation>
    </message>
    <message>
        <source>%1 points</source>
        <translation>%1 points</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#x202f;: %2</translation>
    </message>
    <message>
        <source>Caution. %1</source>
        <translation>Attention. %1</translation>
    </message>
    <message>
        <source>There is no voice on this device: read it here.</source>
        <translation>Cet appareil n’a pas de voix&#x202f;: lire ici.</translation>
    </message>
</context>
<context>
    <name>ambit::view::MeasureView</name>
    <message>
        <source>Bring each corner of the card under the cross: where its sides, carried on, would meet.</source>
        <translation>Amener chaque coin de la carte sous la croix&#x202f;: là où ses côtés, prolongés, se rencontreraient.</translation>
    </message>
    <message>
        <source>Is the cross where the card&apos;s sides, carried on, would meet? If not, draw the photo there.</source>
        <translation>La croix est-elle là où les côtés de la carte, prolongés, se rencontreraient&#x202f;? Sinon, y tirer la photo.</translation>
    </message>
    <message>
        <source>A card was found. Look at its corners before you measure.</source>
        <translation>Une carte a été trouvée. Regarder ses coins avant de mesurer.</translation>
    </message>
    <message>
        <source>Its corners can be marked by hand.</source>
        <translation>Ses coins peuvent être placés à la main.</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distance</translation>
    </message>
    <message>
        <source>Distance to a line</source>
        <translation>Distance à une ligne</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Largest width</source>
        <translation>Plus grande largeur</translation>
    </message>
    <message>
        <source>Slippage mark: offset</source>
        <translation>Témoin de rotation&#x202f;: décalage</translation>
    </message>
    <message>
        <source>Slippage mark: angle</source>
        <translation>Témoin de rotation&#x202f;: angle</translation>
    </message>
    <message>
        <source>Mark the first end.</source>
        <translation>Marquer une extrémité.</translation>
    </message>
    <message>
        <source>Mark the other end.</source>
        <translation>Marquer l’autre extrémité.</translation>
    </message>
    <message>
        <source>Mark the place whose distance to a line you want.</source>
        <translation>Marquer l’endroit dont on cherche la distance à une ligne.</translation>
    </message>
    <message>
        <source>Mark the line: one place on it.</source>
        <translation>Marquer la ligne&#x202f;: un endroit dessus.</translation>
    </message>
    <message>
        <source>Mark another place on the line, far from the first.</source>
        <translation>Marquer un autre endroit de la ligne, loin du premier.</translation>
    </message>
    <message>
        <source>Mark the outline, one corner after another: %1 so far.</source>
        <translation>Marquer le contour, un coin après l’autre&#x202f;: %1 pour l’instant.</translation>
    </message>
    <message>
        <source>The stroke on the bolt: mark its far end.</source>
        <translation>Le trait sur le boulon&#x202f;: marquer son extrémité éloignée.</translation>
    </message>
    <message>
        <source>The stroke on the bolt: mark its end at the joint.</source>
        <translation>Le trait sur le boulon&#x202f;: marquer son extrémité au joint.</translation>
    </message>
    <message>
        <source>The stroke on the part: mark its end at the joint.</source>
        <translation>Le trait sur la pièce&#x202f;: marquer son extrémité au joint.</translation>
    </message>
    <message>
        <source>The stroke on the part: mark its far end.</source>
        <translation>Le trait sur la pièce&#x202f;: marquer son extrémité éloignée.</translation>
    </message>
    <message>
        <source>The length you know: mark its first end.</source>
        <translation>La longueur connue&#x202f;: marquer une extrémité.</translation>
    </message>
    <message>
        <source>The length you know: mark its other end.</source>
        <translation>La longueur connue&#x202f;: marquer l’autre extrémité.</translation>
    </message>
    <message>
        <source>Mark more of the outline, or keep it: %1 so far.</source>
        <translation>Marquer encore du contour, ou le garder&#x202f;: %1 pour l’instant.</translation>
    </message>
    <message>
        <source>Within the limit: %1</source>
        <translation>Dans la limite&#x202f;: %1</translation>
    </message>
    <message>
        <source>Below the limit: %1</source>
        <translation>Sous la limite&#x202f;: %1</translation>
    </message>
    <message>
        <source>Above the limit: %1</source>
        <translation>Au-dessus de la limite&#x202f;: %1</translation>
    </message>
    <message>
        <source>The photo leaves open which way the card lies: say which side is drawn bold.</source>
        <translation>La photo ne dit pas dans quel sens est la carte&#x202f;: dire quel côté est dessiné en gras.</translation>
    </message>
    <message>
        <source>Each corner has been looked at. Touch one to move it once more.</source>
        <translation>Chaque coin a été regardé. En toucher un pour le déplacer encore.</translation>
    </message>
</context>
<context>
    <name>ambit::view::OwedModel</name>
    <message>
        <source>from the start</source>
        <translation>depuis le début</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>depuis %1</translation>
    </message>
</context>
<context>
    <name>ambit::view::PlanComparison</name>
    <message>
        <source>Climbs</source>
        <translation>Montées</translation>
    </message>
    <message>
        <source>Changes of %1</source>
        <translation>Changements&#x202f;: %1</translation>
    </message>
    <message>
        <source>Changes of settings</source>
        <translation>Changements de position</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minutes</translation>
    </message>
    <message>
        <source>No shorter walk exists, climbs and changes weighed in.</source>
        <translation>Il n’existe pas de parcours plus court, montées et changements pris en compte.</translation>
    </message>
    <message>
        <source>At most %1 % longer than the shortest possible, climbs and changes weighed in.</source>
        <translation>Au plus %1&#x202f;% de plus que le parcours le plus court possible, montées et changements pris en compte.</translation>
    </message>
    <message>
        <source>%1: %2 this way round, %3 as listed.</source>
        <translation>%1&#x202f;: %2 par ce parcours, %3 dans l’ordre de la liste.</translation>
    </message>
    <message>
        <source>Way walked</source>
        <translation>Distance à pied</translation>
    </message>
</context>
<context>
    <name>ambit::view::PointHistoryView</name>
    <message>
        <source>Sound</source>
        <translation>Conforme</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Not inspected</source>
        <translation>Non inspecté</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dans la limite</translation>
    </message>
    <message>
        <source>below</source>
        <translation>en dessous</translation>
    </message>
    <message>
        <source>above</source>
        <translation>au-dessus</translation>
    </message>
    <message>
        <source>renewed before it</source>
        <translation>remplacée avant</translation>
    </message>
</context>
<context>
    <name>ambit::view::RecordView</name>
    <message>
        <source>This record does not hold: %1</source>
        <translation>Ce compte rendu ne tient pas&#x202f;: %1</translation>
    </message>
    <message>
        <source>The signature holds and nothing was changed since.</source>
        <translation>La signature tient et rien n’a été changé depuis.</translation>
    </message>
    <message>
        <source>All %1 signatures hold and nothing was changed since.</source>
        <translation>Les %1 signatures tiennent et rien n’a été changé depuis.</translation>
    </message>
    <message>
        <source>This record does not hold: it is not the one that the archive names.</source>
        <translation>Ce compte rendu ne tient pas&#x202f;: ce n’est pas celui que les archives nomment.</translation>
    </message>
</context>
<context>
    <name>ambit::view::RetentionView</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 du %2</translation>
    </message>
</context>
<context>
    <name>ambit::view::ReviewModel</name>
    <message>
        <source>not settled</source>
        <translation>non traité</translation>
    </message>
</context>
<context>
    <name>ambit::view::RoundView</name>
    <message>
        <source>Told by key: not as it should be.</source>
        <translation>Déclaré par touche&#x202f;: pas comme il devrait être.</translation>
    </message>
    <message>
        <source>%1 asks to look again</source>
        <translation>%1 demande un second regard</translation>
    </message>
    <message>
        <source>%1. The order stays as it is.</source>
        <translation>%1. L’ordre reste ce qu’il est.</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>depuis %1</translation>
    </message>
    <message>
        <source>%1 is below the limit: %2</source>
        <translation>%1 est sous la limite&#x202f;: %2</translation>
    </message>
    <message>
        <source>%1 is above the limit: %2</source>
        <translation>%1 est au-dessus de la limite&#x202f;: %2</translation>
    </message>
    <message>
        <source>no climb</source>
        <translation>aucune montée</translation>
    </message>
    <message>
        <source>1 climb</source>
        <translation>1 montée</translation>
    </message>
    <message>
        <source>%1 climbs</source>
        <translation>%1 montées</translation>
    </message>
    <message>
        <source>about %1 min</source>
        <translation>environ %1 min</translation>
    </message>
    <message>
        <source>Paused since %1</source>
        <translation>En pause depuis %1</translation>
    </message>
    <message>
        <source>%1 of %2 up here</source>
        <translation>%1 sur %2 là-haut</translation>
    </message>
    <message>
        <source>%1 of %2 here</source>
        <translation>%1 sur %2 ici</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Photo</translation>
    </message>
    <message>
        <source>%1 may come to its limit before the next flight ends</source>
        <translation>%1 peut atteindre sa limite avant la fin du prochain vol</translation>
    </message>
    <message>
        <source>%1 is beyond its limit</source>
        <translation>%1 dépasse sa limite</translation>
    </message>
</context>
<context>
    <name>ambit::view::SharingView</name>
    <message>
        <source>%1 follows</source>
        <translation>%1 suit</translation>
    </message>
    <message>
        <source>%1 and %2 follow</source>
        <translation>%1 et %2 suivent</translation>
    </message>
    <message>
        <source>%1 follow</source>
        <translation>%1 suivent</translation>
    </message>
    <message>
        <source>From %1. %2.</source>
        <translation>De %1. %2.</translation>
    </message>
</context>
<context>
    <name>ambit::view::Student</name>
    <message>
        <source>Not here yet; looked for.</source>
        <translation>Pas encore là&#x202f;; recherche en cours.</translation>
    </message>
    <message>
        <source>No connection just now; tried again by itself. Nothing is lost.</source>
        <translation>Pas de liaison pour l’instant&#x202f;; nouvel essai automatique. Rien n’est perdu.</translation>
    </message>
    <message>
        <source>Ended.</source>
        <translation>Terminé.</translation>
    </message>
    <message>
        <source>Found what grounds</source>
        <translation>A un constat qui immobilise</translation>
    </message>
    <message>
        <source>Concluded: the record waits for you</source>
        <translation>Conclu&#x202f;: le compte rendu attend la signature</translation>
    </message>
    <message>
        <source>Has replied</source>
        <translation>A répondu</translation>
    </message>
    <message>
        <source>Not sound, or not inspected</source>
        <translation>Non conforme, ou non inspecté</translation>
    </message>
    <message>
        <source>Longer at this than it takes</source>
        <translation>Y passe plus de temps qu’il ne faut</translation>
    </message>
    <message>
        <source>No connection</source>
        <translation>Pas de liaison</translation>
    </message>
    <message>
        <source>Paused</source>
        <translation>En pause</translation>
    </message>
    <message>
        <source>%1: on its way</source>
        <translation>%1&#x202f;: en route</translation>
    </message>
    <message>
        <source>%1: has arrived</source>
        <translation>%1&#x202f;: arrivé</translation>
    </message>
    <message>
        <source>%1: not taken. %2</source>
        <translation>%1&#x202f;: non accepté. %2</translation>
    </message>
</context>
<context>
    <name>ambit::view::TouchGuard</name>
    <message>
        <source>Two places were touched at once: nothing was taken.</source>
        <translation>Deux endroits touchés à la fois&#x202f;: rien n’a été pris en compte.</translation>
    </message>
    <message>
        <source>That touch was too short: nothing was taken.</source>
        <translation>Toucher trop court&#x202f;: rien n’a été pris en compte.</translation>
    </message>
    <message>
        <source>That touch came too soon after the last: nothing was taken.</source>
        <translation>Toucher trop tôt après le précédent&#x202f;: rien n’a été pris en compte.</translation>
    </message>
</context>
<context>
    <name>ambit::view::TrendView</name>
    <message>
        <source>Days</source>
        <translation>Jours</translation>
    </message>
    <message>
        <source>Days since the first value</source>
        <translation>Jours depuis la première valeur</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>limit</source>
        <translation>limite</translation>
    </message>
    <message>
        <source>renewed</source>
        <translation>renouvelé</translation>
    </message>
    <message>
        <source>limit, 95 %</source>
        <translation>limite, 95 %</translation>
    </message>
    <message>
        <source>%1 after %2 days</source>
        <translation>%1 après %2 jours</translation>
    </message>
</context>
<context>
    <name>ambit::view::VerificationView</name>
    <message>
        <source>Record %1</source>
        <translation>Compte rendu %1</translation>
    </message>
    <message>
        <source>%1 of %2 UTC, %3</source>
        <translation>%1 du %2 UTC, %3</translation>
    </message>
    <message>
        <source>Kept as %1</source>
        <translation>Conservé sous %1</translation>
    </message>
    <message>
        <source>It was here as a latest one.</source>
        <translation>Il était ici l’un des derniers.</translation>
    </message>
    <message>
        <source>Named as an earlier one by: %1</source>
        <translation>Nommé comme précédent par&#x202f;: %1</translation>
    </message>
    <message>
        <source>Photo %1</source>
        <translation>Photo %1</translation>
    </message>
    <message>
        <source>A record names it.</source>
        <translation>Un compte rendu le nomme.</translation>
    </message>
</context>
<context>
    <name>ambit::view::WatchView</name>
    <message>
        <source>Your signature</source>
        <translation>Signature</translation>
    </message>
</context>
<context>
    <name>ambit::view::ZoneFindings</name>
    <message>
        <source>30 days</source>
        <translation>30 jours</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 an</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tous</translation>
    </message>
    <message>
        <source>%1: 1 finding</source>
        <translation>%1&#x202f;: 1 constat</translation>
    </message>
    <message>
        <source>%1: %2 findings</source>
        <translation>%1&#x202f;: %2 constats</translation>
    </message>
</context>
</TS>
