<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Adjust</name>
    <message>
        <source>learned loop</source>
        <translation>boucle apprise</translation>
    </message>
    <message>
        <source>ratio of %1</source>
        <translation>rapport à %1</translation>
    </message>
    <message>
        <source>sum of branches</source>
        <translation>somme des branches</translation>
    </message>
    <message>
        <source>last %1 % of target</source>
        <translation>dernier&#xa0;: %1&#xa0;% de la cible</translation>
    </message>
    <message>
        <source>%1, %2 % of target</source>
        <translation>%1, %2&#xa0;% de la cible</translation>
    </message>
    <message>
        <source>%1 in round %2</source>
        <translation>%1 au passage %2</translation>
    </message>
    <message>
        <source>Aim: %1</source>
        <translation>Visée&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Ctrl+B reads the reference.</source>
        <translation>Ctrl+B mesure la référence.</translation>
    </message>
    <message>
        <source>No try yet at this valve.</source>
        <translation>Aucun essai encore à cette vanne.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4</source>
        <translation>%1&#xa0;: %2, %3 %4</translation>
    </message>
    <message>
        <source>Tries   %1</source>
        <translation>Essais   %1</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>pas encore mesuré</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>round %1%2</source>
        <translation>passage %1%2</translation>
    </message>
    <message>
        <source>read the valve</source>
        <translation>mesurez la vanne</translation>
    </message>
    <message>
        <source>no water passes at that setting</source>
        <translation>aucune eau ne passe à ce réglage</translation>
    </message>
    <message>
        <source>aim %1 at %2</source>
        <translation>visée %1 à %2</translation>
    </message>
    <message>
        <source>too much flow, %1</source>
        <translation>trop de débit, %1</translation>
    </message>
    <message>
        <source>too little flow, %1</source>
        <translation>trop peu de débit, %1</translation>
    </message>
    <message>
        <source>below what can be read; close further or change the meter (menu Round)</source>
        <translation>sous le seuil lisible&#xa0;; fermez davantage ou changez d’appareil (menu Passage)</translation>
    </message>
    <message>
        <source>%1: read the valve.</source>
        <translation>%1&#xa0;: mesurez la vanne.</translation>
    </message>
    <message>
        <source>%1: %2. %3 read at setting %4; %5.</source>
        <translation>%1&#xa0;: %2. %3 mesuré au réglage %4&#xa0;; %5.</translation>
    </message>
    <message>
        <source>two tries</source>
        <translation>deux essais</translation>
    </message>
    <message>
        <source>a try, learned loop</source>
        <translation>un essai, boucle apprise</translation>
    </message>
    <message>
        <source>a try, design loss</source>
        <translation>un essai, perte nominale</translation>
    </message>
    <message>
        <source>No try here since another valve was turned.</source>
        <translation>Aucun essai ici depuis qu’une autre vanne a été tournée.</translation>
    </message>
    <message>
        <source>No try yet; expected: learned loop.</source>
        <translation>Aucun essai&#xa0;; attendu&#xa0;: boucle apprise.</translation>
    </message>
    <message>
        <source>doubtful as read; read it again (Ctrl+R) or change the meter (menu Round)</source>
        <translation>douteux&#xa0;; remesurez (Ctrl+R) ou changez d’appareil (menu Passage)</translation>
    </message>
    <message>
        <source>not read at %1 yet: read the valve here</source>
        <translation>pas encore mesurée à %1&#xa0;: mesurez la vanne ici</translation>
    </message>
    <message>
        <source>Counted in other ways the aim differs by %1 % of flow: %2.</source>
        <translation>Calculée autrement, la visée diffère de %1&#xa0;% du débit&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Shut: %1 available.</source>
        <translation>Fermée&#xa0;: %1 disponibles.</translation>
    </message>
    <message>
        <source>at the lowest setting, still too much flow, %1</source>
        <translation>au réglage minimal, débit encore trop fort, %1</translation>
    </message>
    <message>
        <source>fully open, still too little flow, %1</source>
        <translation>ouverte en grand, débit encore trop faible, %1</translation>
    </message>
    <message>
        <source>Leave it: it fits the aim here. Ctrl+Enter goes to the next valve.</source>
        <translation>Laissez-la&#xa0;: elle convient à la visée ici. Ctrl+Entrée passe à la vanne suivante.</translation>
    </message>
    <message>
        <source>Leave it: it fits the aim here.</source>
        <translation>Laissez-la&#xa0;: elle convient à la visée ici.</translation>
    </message>
    <message>
        <source>Leave it: it fits the aim here, and would be nearest to it at %1.</source>
        <translation>Laissez-la&#xa0;: elle convient à la visée ici, et en serait la plus proche à %1.</translation>
    </message>
    <message>
        <source>Open it to a setting that passes water, then read it there.</source>
        <translation>Ouvrez-la à un réglage qui laisse passer l’eau, puis mesurez-la là.</translation>
    </message>
    <message>
        <source>Open it first: the aim here, %1, is above the %2 available.</source>
        <translation>Ouvrez-la d’abord&#xa0;: la visée ici, %1, dépasse les %2 disponibles.</translation>
    </message>
    <message>
        <source>Read it here: aim %1 now, %2 once all valves are set.</source>
        <translation>Mesurez-la ici&#xa0;: visée %1 maintenant, %2 une fois toutes les vannes réglées.</translation>
    </message>
    <message>
        <source>Read it here: aim %1 now.</source>
        <translation>Mesurez-la ici&#xa0;: visée %1 maintenant.</translation>
    </message>
    <message>
        <source>Turn it to %1 (Ctrl+Shift+T) and read it: aim %2 now, %3 once all valves are set.</source>
        <translation>Tournez-la à %1 (Ctrl+Maj+T) et mesurez-la&#xa0;: visée %2 maintenant, %3 une fois toutes les vannes réglées.</translation>
    </message>
    <message>
        <source>Hold it here: the scale ends. Close the valve of its riser, or fit a smaller one.</source>
        <translation>Tenez-la ici&#xa0;: l’échelle est au bout. Fermez la vanne de sa colonne, ou montez-en une plus petite.</translation>
    </message>
    <message>
        <source>Hold it here: it takes more as the others are closed.</source>
        <translation>Tenez-la ici&#xa0;: elle prendra plus quand les autres seront fermées.</translation>
    </message>
    <message>
        <source>Try %1, as advised: aim %2 now, %3 once all valves are set.</source>
        <translation>Essayez %1, comme conseillé&#xa0;: visée %2 maintenant, %3 une fois toutes les vannes réglées.</translation>
    </message>
    <message>
        <source>Even fully open at %1 it stays below the aim: %2 expected there, aim %3. Leave it open there as the reference, and close the others.</source>
        <translation>Même ouverte en grand à %1 elle reste sous la visée&#xa0;: %2 attendus là, visée %3. Laissez-la ouverte là comme référence, et fermez les autres.</translation>
    </message>
    <message>
        <source>Even at %1, where the scale ends, it takes too much: %2 expected there, aim %3. Close the valve of its riser, or fit a smaller one.</source>
        <translation>Même à %1, au bout de l’échelle, elle prend trop&#xa0;: %2 attendus là, visée %3. Fermez la vanne de sa colonne, ou montez-en une plus petite.</translation>
    </message>
    <message>
        <source>Open it to %1: the aim here, %2, is above the %3 available.</source>
        <translation>Ouvrez-la à %1&#xa0;: la visée ici, %2, dépasse les %3 disponibles.</translation>
    </message>
    <message>
        <source>No mark is nearer to the aim than %1: turn by less than a mark, or hold it here.</source>
        <translation>Aucun repère n’est plus près de la visée que %1&#xa0;: tournez de moins d’un repère, ou tenez-la ici.</translation>
    </message>
    <message>
        <source>Try %1: about %2 expected there now, aim %3 (%4).</source>
        <translation>Essayez %1&#xa0;: environ %2 attendus là maintenant, visée %3 (%4).</translation>
    </message>
    <message>
        <source>A setting to try is named once it is read again.</source>
        <translation>Un réglage à essayer sera proposé une fois la vanne remesurée.</translation>
    </message>
    <message>
        <source>Turn it by the word and read it: then the setting to aim at can be told.</source>
        <translation>Tournez-la selon le mot et mesurez-la&#xa0;: le réglage visé pourra alors être donné.</translation>
    </message>
    <message>
        <source>it fits: %1</source>
        <translation>elle convient&#xa0;: %1</translation>
    </message>
    <message>
        <source>Turn it to %1 (Ctrl+Shift+T) and read it, then read a final round: it tells whether the index circuit is proved.</source>
        <translation>Tournez-la à&#xa0;%1 (Ctrl+Maj+T) et mesurez-la, puis faites un passage final&#xa0;: il dit si le circuit défavorisé est prouvé.</translation>
    </message>
    <message>
        <source>Try %1, a first guess while the advice is not ready: aim %2 now.</source>
        <translation>Essayez %1, première estimation tant que le conseil n’est pas prêt&#xa0;: visée %2 maintenant.</translation>
    </message>
</context>
<context>
    <name>ConvergenceChart</name>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Passage %1</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>dispersion</translation>
    </message>
    <message>
        <source>Of target, %</source>
        <translation>% de la cible</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>Of target by round</source>
        <translation>De la cible par passage</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>la plus grande</translation>
    </message>
    <message>
        <source>9 of 10 below</source>
        <translation>9 sur 10 sous</translation>
    </message>
    <message>
        <source>half below</source>
        <translation>la moitié sous</translation>
    </message>
    <message>
        <source>1 of 10 below</source>
        <translation>1 sur 10 sous</translation>
    </message>
    <message>
        <source>smallest</source>
        <translation>la plus petite</translation>
    </message>
    <message>
        <source>The lines in between stand in the table.</source>
        <translation>Les lignes intermédiaires figurent dans le tableau.</translation>
    </message>
    <message>
        <source>%1 of %2 terminals on share in round %3.</source>
        <translation>%1 des %2 terminaux à leur part au passage %3.</translation>
    </message>
    <message>
        <source>No share is known in round %1.</source>
        <translation>Aucune part n’est connue au passage %1.</translation>
    </message>
    <message>
        <source>Spread by round %1 %.</source>
        <translation>Dispersion par passage %1&#xa0;%.</translation>
    </message>
    <message>
        <source>%1 of %2 terminals are read.</source>
        <translation>%1 des %2 terminaux sont mesurés.</translation>
    </message>
</context>
<context>
    <name>ImportColumn</name>
    <message>
        <source>Accuracy</source>
        <translation>Précision</translation>
    </message>
    <message>
        <source>Accuracy, at least</source>
        <translation>Précision, terme fixe</translation>
    </message>
    <message>
        <source>Accuracy, more shut</source>
        <translation>Précision, plus fermée</translation>
    </message>
    <message>
        <source>Current, A</source>
        <translation>Courant, A</translation>
    </message>
    <message>
        <source>Current, second phase</source>
        <translation>Courant, deuxième phase</translation>
    </message>
    <message>
        <source>Current, third phase</source>
        <translation>Courant, troisième phase</translation>
    </message>
    <message>
        <source>Several pumps: how</source>
        <translation>Plusieurs pompes&#xa0;: montage</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Étalonné</translation>
    </message>
    <message>
        <source>Cannot be read</source>
        <translation>Mesure impossible</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificat</translation>
    </message>
    <message>
        <source>Loss of the circuit</source>
        <translation>Perte du circuit</translation>
    </message>
    <message>
        <source>Corrects</source>
        <translation>Corrige</translation>
    </message>
    <message>
        <source>Design flow</source>
        <translation>Débit nominal</translation>
    </message>
    <message>
        <source>Discharge</source>
        <translation>Refoulement</translation>
    </message>
    <message>
        <source>Discharge bore</source>
        <translation>Diamètre de refoulement</translation>
    </message>
    <message>
        <source>Height of the discharge gauge</source>
        <translation>Hauteur du manomètre, refoulement</translation>
    </message>
    <message>
        <source>Before the valve</source>
        <translation>Avant la vanne</translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation>Douteux</translation>
    </message>
    <message>
        <source>Straight pipe behind, diameters</source>
        <translation>Longueur droite en aval, diamètres</translation>
    </message>
    <message>
        <source>DP</source>
        <translation>Δp</translation>
    </message>
    <message>
        <source>Has a drive</source>
        <translation>A un variateur</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Échéance</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Rendement</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Débit</translation>
    </message>
    <message>
        <source>Rise on one gauge</source>
        <translation>Différence sur un manomètre</translation>
    </message>
    <message>
        <source>Feeds the chiller or boiler alone</source>
        <translation>Alimente seule le groupe froid ou la chaudière</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Roue</translation>
    </message>
    <message>
        <source>Smallest impeller</source>
        <translation>Plus petite roue</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Last DP</source>
        <translation>Dernière Δp</translation>
    </message>
    <message>
        <source>Most DP</source>
        <translation>Δp maximale</translation>
    </message>
    <message>
        <source>Least DP</source>
        <translation>Δp minimale</translation>
    </message>
    <message>
        <source>Lowest speed</source>
        <translation>Vitesse minimale</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>Efficiency of the motor</source>
        <translation>Rendement du moteur</translation>
    </message>
    <message>
        <source>Power of the motor</source>
        <translation>Puissance du moteur</translation>
    </message>
    <message>
        <source>Current without load</source>
        <translation>Courant à vide</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>NPSH required</source>
        <translation>NPSH requis</translation>
    </message>
    <message>
        <source>Reason where overdue</source>
        <translation>Motif si échu</translation>
    </message>
    <message>
        <source>Fed by</source>
        <translation>Alimenté par</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Speed on the plate</source>
        <translation>Vitesse de plaque</translation>
    </message>
    <message>
        <source>Point of the test</source>
        <translation>Point de l’essai</translation>
    </message>
    <message>
        <source>Dealt with as</source>
        <translation>Traité comme</translation>
    </message>
    <message>
        <source>Why so</source>
        <translation>Pourquoi ainsi</translation>
    </message>
    <message>
        <source>Positive displacement</source>
        <translation>Volumétrique</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Puissance</translation>
    </message>
    <message>
        <source>Power factor</source>
        <translation>Facteur de puissance</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>But</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Repeated</source>
        <translation>Répété</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Résolution</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Retour</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>Loss of the run</source>
        <translation>Perte du tronçon</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>En marche</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numéro de série</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Desservi</translation>
    </message>
    <message>
        <source>Service factor</source>
        <translation>Facteur de service</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Setting now</source>
        <translation>Réglage actuel</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Côté</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Vitesse</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Suction</source>
        <translation>Aspiration</translation>
    </message>
    <message>
        <source>Suction bore</source>
        <translation>Diamètre d’aspiration</translation>
    </message>
    <message>
        <source>Height of the suction gauge</source>
        <translation>Hauteur du manomètre, aspiration</translation>
    </message>
    <message>
        <source>Synchronous speed</source>
        <translation>Vitesse de synchronisme</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Discharge valve open</source>
        <translation>Vanne de refoulement ouverte</translation>
    </message>
    <message>
        <source>Tag of the discharge valve</source>
        <translation>Repère de la vanne de refoulement</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Straight pipe before, diameters</source>
        <translation>Longueur droite en amont, diamètres</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Vanne</translation>
    </message>
    <message>
        <source>Model of the valve</source>
        <translation>Modèle de la vanne</translation>
    </message>
    <message>
        <source>Size of the valve</source>
        <translation>Taille de la vanne</translation>
    </message>
    <message>
        <source>Voltage, V</source>
        <translation>Tension, V</translation>
    </message>
    <message>
        <source>Voltage, second phase</source>
        <translation>Tension, deuxième phase</translation>
    </message>
    <message>
        <source>Voltage, third phase</source>
        <translation>Tension, troisième phase</translation>
    </message>
    <message>
        <source>Zero at the end</source>
        <translation>Zéro à la fin</translation>
    </message>
    <message>
        <source>Zero at the start</source>
        <translation>Zéro au début</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitude</translation>
    </message>
    <message>
        <source>Answer to</source>
        <translation>Réponse à</translation>
    </message>
    <message>
        <source>Branch</source>
        <translation>Branche</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Légende</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Client</translation>
    </message>
    <message>
        <source>Closed on</source>
        <translation>Clos le</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Clause of the energy code</source>
        <translation>Article du code énergétique</translation>
    </message>
    <message>
        <source>Edition of the energy code</source>
        <translation>Édition du code énergétique</translation>
    </message>
    <message>
        <source>Exception of the energy code</source>
        <translation>Exception du code énergétique</translation>
    </message>
    <message>
        <source>Form of the clause</source>
        <translation>Forme de l’article</translation>
    </message>
    <message>
        <source>Cv or Kv</source>
        <translation>Cv ou Kv</translation>
    </message>
    <message>
        <source>Concentration</source>
        <translation>Concentration</translation>
    </message>
    <message>
        <source>Consequence</source>
        <translation>Conséquence</translation>
    </message>
    <message>
        <source>Content</source>
        <translation>Contenu</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Devise</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Decided on</source>
        <translation>Décidé le</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Décidé par</translation>
    </message>
    <message>
        <source>Deficiency</source>
        <translation>Réserve</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Description</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Justificatif</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Champ</translation>
    </message>
    <message>
        <source>Fill pressure</source>
        <translation>Pression de remplissage</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Société</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluide</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Limite haute</translation>
    </message>
    <message>
        <source>Hours per year</source>
        <translation>Heures par an</translation>
    </message>
    <message>
        <source>Mandatory</source>
        <translation>Obligatoire</translation>
    </message>
    <message>
        <source>Resolved</source>
        <translation>Résolu</translation>
    </message>
    <message>
        <source>Load of a year</source>
        <translation>Charge d’une année</translation>
    </message>
    <message>
        <source>Location</source>
        <translation>Emplacement</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Limite basse</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Marge</translation>
    </message>
    <message>
        <source>Matching band</source>
        <translation>Bande d’équilibrage</translation>
    </message>
    <message>
        <source>Type of file</source>
        <translation>Type de fichier</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Numéro</translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation>Ouvert le</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordre</translation>
    </message>
    <message>
        <source>Price of power</source>
        <translation>Prix de l’électricité</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Exercice</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Courbe</translation>
    </message>
    <message>
        <source>Raised on</source>
        <translation>Émise le</translation>
    </message>
    <message>
        <source>Raised by</source>
        <translation>Émise par</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Préparation</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Longest age of a reading</source>
        <translation>Âge maximal d’une mesure</translation>
    </message>
    <message>
        <source>Remedy</source>
        <translation>Remède</translation>
    </message>
    <message>
        <source>Reset of the set-point</source>
        <translation>Loi de consigne</translation>
    </message>
    <message>
        <source>Resolved on</source>
        <translation>Résolu le</translation>
    </message>
    <message>
        <source>Resolved by</source>
        <translation>Résolu par</translation>
    </message>
    <message>
        <source>Reading of the retest</source>
        <translation>Mesure du nouvel essai</translation>
    </message>
    <message>
        <source>Result of the retest</source>
        <translation>Résultat du nouvel essai</translation>
    </message>
    <message>
        <source>Retested on</source>
        <translation>Essayé à nouveau le</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Échantillon</translation>
    </message>
    <message>
        <source>Seed of the sample</source>
        <translation>Numéro de tirage de l’échantillon</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Capteur</translation>
    </message>
    <message>
        <source>Sent on</source>
        <translation>Envoyé le</translation>
    </message>
    <message>
        <source>Sent by</source>
        <translation>Envoyé par</translation>
    </message>
    <message>
        <source>Set by</source>
        <translation>Réglée par</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Site</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Subject</source>
        <translation>Objet</translation>
    </message>
    <message>
        <source>Supersedes</source>
        <translation>Remplace</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texte</translation>
    </message>
    <message>
        <source>Tolerance above</source>
        <translation>Tolérance haute</translation>
    </message>
    <message>
        <source>Tolerance below</source>
        <translation>Tolérance basse</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Corps d’état</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>Table of settings</source>
        <translation>Table des réglages</translation>
    </message>
    <message>
        <source>Zero</source>
        <translation>Zéro</translation>
    </message>
    <message>
        <source>Earlier design flows</source>
        <translation>Débits nominaux antérieurs</translation>
    </message>
</context>
<context>
    <name>ImportSource</name>
    <message>
        <source>the clipboard</source>
        <translation>le presse-papiers</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>A imbalance</source>
        <translation>Déséquilibre A</translation>
    </message>
    <message>
        <source>A of plate</source>
        <translation>A de plaque</translation>
    </message>
    <message>
        <source>A of plate × SF</source>
        <translation>A de plaque × FS</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Par an</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Objet</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Précision</translation>
    </message>
    <message>
        <source>Adds to flow ±</source>
        <translation>Ajoute au débit ±</translation>
    </message>
    <message>
        <source>Again over reported</source>
        <translation>Remesuré / rapporté</translation>
    </message>
    <message>
        <source>Amp ratio</source>
        <translation>Rapport d’intensités</translation>
    </message>
    <message>
        <source>At design flow</source>
        <translation>Au débit nominal</translation>
    </message>
    <message>
        <source>At full speed</source>
        <translation>À pleine vitesse</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Au moins</translation>
    </message>
    <message>
        <source>Balancing devices and straight pipe</source>
        <translation>Organes d’équilibrage et longueurs droites</translation>
    </message>
    <message>
        <source>Balancing valves</source>
        <translation>Vannes d’équilibrage</translation>
    </message>
    <message>
        <source>Before a shutoff test</source>
        <translation>Avant un essai à débit nul</translation>
    </message>
    <message>
        <source>By meter</source>
        <translation>Par débitmètre</translation>
    </message>
    <message>
        <source>By terminals</source>
        <translation>Par terminaux</translation>
    </message>
    <message>
        <source>By the law</source>
        <translation>Par la loi</translation>
    </message>
    <message>
        <source>CHANGED OR BROKEN</source>
        <translation>MODIFIÉ OU ENDOMMAGÉ</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Étalonné</translation>
    </message>
    <message>
        <source>Caution: electrical measurements, drives and work on pumps are for qualified people under the local codes, with the supply isolated and locked off and the pressure let down. Check the motor&apos;s rating and least speed first.</source>
        <translation>Attention&#xa0;: mesures électriques, variateurs et travaux sur pompes sont réservés aux personnes qualifiées selon les règles locales, alimentation séparée et consignée, pression évacuée. Vérifiez d’abord les caractéristiques et la vitesse minimale du moteur.</translation>
    </message>
    <message>
        <source>Caution: the affinity laws are a first estimate, for a loop without static head. A full trim by them tends to cut too much; common practice cuts 70 to 80 % of it, tests, and cuts again. Check the least impeller of the casing before any cut: it cannot be taken back.</source>
        <translation>Attention&#xa0;: les lois de similitude sont une première estimation, pour une boucle sans hauteur statique. Un rognage complet selon elles enlève souvent trop&#xa0;; l’usage est d’en faire 70 à 80&#xa0;%, d’essayer, puis de rogner encore. Vérifiez la roue minimale du corps avant tout rognage&#xa0;: il est irréversible.</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificat</translation>
    </message>
    <message>
        <source>Check with your PDF viewer&apos;s signature panel.</source>
        <translation>Contrôlez avec le panneau des signatures de votre lecteur PDF.</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Retenu</translation>
    </message>
    <message>
        <source>Circuits in walking order</source>
        <translation>Circuits dans l’ordre de tournée</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Clos</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>Coefficient there</source>
        <translation>Coefficient alors</translation>
    </message>
    <message>
        <source>Confirmed: {1} of {2} terminals within 10 % of what was reported</source>
        <translation>Confirmé&#xa0;: {1} des {2} terminaux à moins de 10&#xa0;% du rapporté</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>Coût par an</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Retenu</translation>
    </message>
    <message>
        <source>Curve range</source>
        <translation>Plage de courbe</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Dealt with as</source>
        <translation>Traité comme</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Décidé par</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Réserves</translation>
    </message>
    <message>
        <source>Deficiency {1}: {2}</source>
        <translation>Réserve {1}&#xa0;: {2}</translation>
    </message>
    <message>
        <source>Design</source>
        <translation>Nominal</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Organe</translation>
    </message>
    <message>
        <source>Discharge</source>
        <translation>Refoulement</translation>
    </message>
    <message>
        <source>Dp left across each valve at design flow</source>
        <translation>Δp restante à chaque vanne au débit nominal</translation>
    </message>
    <message>
        <source>Dp left by read-and-set and by a proportional balance</source>
        <translation>Δp laissée par mesurer-régler et par un équilibrage proportionnel</translation>
    </message>
    <message>
        <source>Dp set-point of the drive</source>
        <translation>Consigne de Δp du variateur</translation>
    </message>
    <message>
        <source>Dp there</source>
        <translation>Δp alors</translation>
    </message>
    <message>
        <source>Draft until signed: nobody has signed this report.</source>
        <translation>Brouillon jusqu’à signature&#xa0;: personne n’a signé ce rapport.</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Échéance</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Fonctionnement</translation>
    </message>
    <message>
        <source>Duty of each pump by round</source>
        <translation>Point de fonctionnement de chaque pompe par passage</translation>
    </message>
    <message>
        <source>Duty {1} {2} at {3} {4}; {5} % of design.</source>
        <translation>Point de fonctionnement {1} {2} à {3} {4}&#xa0;; {5}&#xa0;% du nominal.</translation>
    </message>
    <message>
        <source>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}</source>
        <translation>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}</translation>
    </message>
    <message>
        <source>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}: below the least impeller of {5}, so trimming alone cannot do it</source>
        <translation>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}&#xa0;: sous la roue minimale de {5}, rogner seul ne suffit donc pas</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Rendement</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Électrique</translation>
    </message>
    <message>
        <source>Element</source>
        <translation>Élément</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Niveau</translation>
    </message>
    <message>
        <source>Energy a year</source>
        <translation>Énergie par an</translation>
    </message>
    <message>
        <source>Energy code: balancing</source>
        <translation>Code énergétique&#xa0;: équilibrage</translation>
    </message>
    <message>
        <source>Energy of the slowed pump: its drive holds {1} at the sensor while the flow goes down; the others ride their curves.</source>
        <translation>Énergie de la pompe ralentie&#xa0;: son variateur tient {1} au capteur quand le débit baisse&#xa0;; les autres suivent leurs courbes.</translation>
    </message>
    <message>
        <source>Every reading as typed</source>
        <translation>Chaque mesure telle que saisie</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Justificatif</translation>
    </message>
    <message>
        <source>Exception</source>
        <translation>Exception</translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation>Exceptions</translation>
    </message>
    <message>
        <source>Excess head</source>
        <translation>Hauteur excédentaire</translation>
    </message>
    <message>
        <source>Excess head and what to do about it</source>
        <translation>Hauteur excédentaire et ce qu’il faut en faire</translation>
    </message>
    <message>
        <source>Excess power</source>
        <translation>Puissance excédentaire</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>Final round</source>
        <translation>Passage final</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Société</translation>
    </message>
    <message>
        <source>First cut</source>
        <translation>Premier rognage</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Débit</translation>
    </message>
    <message>
        <source>Flow before rebalancing</source>
        <translation>Débit avant rééquilibrage</translation>
    </message>
    <message>
        <source>Flow by curve</source>
        <translation>Débit par courbe</translation>
    </message>
    <message>
        <source>Flow by every way, and duty</source>
        <translation>Débit par chaque méthode, et point de fonctionnement</translation>
    </message>
    <message>
        <source>Flow off</source>
        <translation>Écart de débit</translation>
    </message>
    <message>
        <source>Flow {1} to {2} % of design; share within ± {3} % of the target share</source>
        <translation>Débit {1} à {2}&#xa0;% du nominal&#xa0;; part à ± {3}&#xa0;% de la part cible</translation>
    </message>
    <message>
        <source>Flow {1}, head {2}; readings keep the unit in which they were typed</source>
        <translation>Débit {1}, hauteur {2}&#xa0;; les mesures gardent l’unité de leur saisie</translation>
    </message>
    <message>
        <source>Flow, curve</source>
        <translation>Débit, courbe</translation>
    </message>
    <message>
        <source>Flow, read</source>
        <translation>Débit, mesuré</translation>
    </message>
    <message>
        <source>Flow, sum</source>
        <translation>Débit, somme</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluide</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>Found by</source>
        <translation>Trouvée par</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>From the dp across each valve and its table: Q = Kv √(dp / SG), m³/h and bar, or Cv with gpm and psi (IEC 60534-2-1); SG = density over 999.0 kg/m³</source>
        <translation>De la Δp à chaque vanne et de sa table&#xa0;: Q = Kv √(dp / SG), m³/h et bar, ou Cv avec gpm et psi (IEC 60534-2-1)&#xa0;; SG = masse volumique sur 999.0 kg/m³</translation>
    </message>
    <message>
        <source>Fully open</source>
        <translation>Ouverte en grand</translation>
    </message>
    <message>
        <source>Gauge pressure behind each element, in the direction of flow</source>
        <translation>Pression relative après chaque élément, dans le sens du flux</translation>
    </message>
    <message>
        <source>Gauge pressure round the circuit, pump on and off</source>
        <translation>Pression relative le long du circuit, pompe en marche et arrêtée</translation>
    </message>
    <message>
        <source>Gauge zero</source>
        <translation>Zéro des manomètres</translation>
    </message>
    <message>
        <source>Gauges and motor readings are for qualified people; lock-out, local codes and the plant&apos;s rules come first. Trimming and drives are for the maker or licensed firms.</source>
        <translation>Manomètres et mesures du moteur sont réservés aux personnes qualifiées&#xa0;; consignation, règles locales et règles du site priment. Rognage et variateurs reviennent au fabricant ou à des entreprises agréées.</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Head and its parts</source>
        <translation>La hauteur et ses composantes</translation>
    </message>
    <message>
        <source>Head by the option</source>
        <translation>Hauteur par l’option</translation>
    </message>
    <message>
        <source>Head off</source>
        <translation>Écart de hauteur</translation>
    </message>
    <message>
        <source>Head that the index circuit needs at design flow</source>
        <translation>Hauteur que demande le circuit défavorisé au débit nominal</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Roue</translation>
    </message>
    <message>
        <source>Index circuit</source>
        <translation>Circuit défavorisé</translation>
    </message>
    <message>
        <source>Index path</source>
        <translation>Chemin défavorisé</translation>
    </message>
    <message>
        <source>Index terminal {1} has no setting on record: not shown to be fully open</source>
        <translation>Le terminal défavorisé {1} n’a pas de réglage noté&#xa0;: non montré ouvert en grand</translation>
    </message>
    <message>
        <source>Index valve</source>
        <translation>Vanne défavorisée</translation>
    </message>
    <message>
        <source>Index valve ended fully open and its dp is readable: the circuit that governs the pump head is not throttled.</source>
        <translation>La vanne défavorisée finit ouverte en grand et sa Δp est lisible&#xa0;: le circuit qui détermine la hauteur de la pompe n’est pas étranglé.</translation>
    </message>
    <message>
        <source>Index valve {1} at {2} of {3}: fully open</source>
        <translation>Vanne défavorisée {1} à {2} sur {3}&#xa0;: ouverte en grand</translation>
    </message>
    <message>
        <source>Index valve {1} at {2} of {3}: not fully open</source>
        <translation>Vanne défavorisée {1} à {2} sur {3}&#xa0;: pas ouverte en grand</translation>
    </message>
    <message>
        <source>Input power</source>
        <translation>Puissance absorbée</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Instrument</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Keeping it</source>
        <translation>La garder</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Largest minus smallest of target in any group: {1} %</source>
        <translation>Plus grand moins plus petit de la cible dans tout groupe&#xa0;: {1}&#xa0;%</translation>
    </message>
    <message>
        <source>Largest minus smallest of target in any group: {1} %, from {2} % in round {3}</source>
        <translation>Plus grand moins plus petit de la cible dans tout groupe&#xa0;: {1}&#xa0;%, de {2}&#xa0;% au passage {3}</translation>
    </message>
    <message>
        <source>Least dp</source>
        <translation>Δp minimale</translation>
    </message>
    <message>
        <source>Least throttling</source>
        <translation>Moindre étranglement</translation>
    </message>
    <message>
        <source>Left to throttle</source>
        <translation>Reste à étrangler</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Limite</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Ligne</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Plus basse</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Marge</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Méthode</translation>
    </message>
    <message>
        <source>Method, tolerances and instruments</source>
        <translation>Méthode, tolérances et instruments</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Manquant</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Moteur</translation>
    </message>
    <message>
        <source>Must hold</source>
        <translation>Obligatoire</translation>
    </message>
    <message>
        <source>NPSH available is {1} and required {2}, a margin below {3}; raise the fill pressure or lower the temperature before the pump is damaged</source>
        <translation>le NPSH disponible est {1}, requis {2}, marge sous {3}&#xa0;; montez la pression de remplissage ou baissez la température avant que la pompe ne s’abîme</translation>
    </message>
    <message>
        <source>NPSH required</source>
        <translation>NPSH requis</translation>
    </message>
    <message>
        <source>NPSH required may rise after a trim; check the margin at the suction again</source>
        <translation>le NPSH requis peut monter après un rognage&#xa0;; revérifiez la marge à l’aspiration</translation>
    </message>
    <message>
        <source>NPSH there</source>
        <translation>NPSH disponible</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>New setting</source>
        <translation>Nouveau réglage</translation>
    </message>
    <message>
        <source>No branch is on record.</source>
        <translation>Aucune branche n’est enregistrée.</translation>
    </message>
    <message>
        <source>No decision can be made yet; see what is missing below, and enter it.</source>
        <translation>Aucune décision possible encore&#xa0;; voyez ci-dessous ce qui manque, et saisissez-le.</translation>
    </message>
    <message>
        <source>No deficiency is on record.</source>
        <translation>Aucune réserve n’est enregistrée.</translation>
    </message>
    <message>
        <source>No dp set-point is on record; enter one where a drive follows a dp sensor.</source>
        <translation>Aucune consigne de Δp n’est enregistrée&#xa0;; saisissez-en une là où un variateur suit un capteur de Δp.</translation>
    </message>
    <message>
        <source>No duty known: pump curve, pump readings or branch flows are missing</source>
        <translation>Point de fonctionnement inconnu&#xa0;: courbe de pompe, mesures de pompe ou débits de branches manquent</translation>
    </message>
    <message>
        <source>No finding, doubtful reading, correction or overdue instrument.</source>
        <translation>Aucun constat, mesure douteuse, correction ni instrument échu.</translation>
    </message>
    <message>
        <source>No instrument is on record.</source>
        <translation>Aucun instrument n’est enregistré.</translation>
    </message>
    <message>
        <source>No list of readiness is on record.</source>
        <translation>Aucune liste de préparation n’est enregistrée.</translation>
    </message>
    <message>
        <source>No other</source>
        <translation>Aucun autre</translation>
    </message>
    <message>
        <source>No other terminal is fully open with less of its design flow</source>
        <translation>Aucun autre terminal n’est ouvert en grand avec moins de son débit nominal</translation>
    </message>
    <message>
        <source>No pump is on record.</source>
        <translation>Aucune pompe n’est enregistrée.</translation>
    </message>
    <message>
        <source>No reading is on record.</source>
        <translation>Aucune mesure n’est enregistrée.</translation>
    </message>
    <message>
        <source>No round of readings has been walked yet</source>
        <translation>Aucun passage de mesures n’a encore été fait</translation>
    </message>
    <message>
        <source>No witness round is on record.</source>
        <translation>Aucun passage témoin n’est enregistré.</translation>
    </message>
    <message>
        <source>No-load A</source>
        <translation>A à vide</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>Nobody is on record</source>
        <translation>Personne n’est enregistré</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucune</translation>
    </message>
    <message>
        <source>Not confirmed: {1} of {2} terminals within 10 % of what was reported</source>
        <translation>Non confirmé&#xa0;: {1} des {2} terminaux à moins de 10&#xa0;% du rapporté</translation>
    </message>
    <message>
        <source>Not known: not every terminal has been read; design {1} {2}</source>
        <translation>Inconnu&#xa0;: tous les terminaux n’ont pas été mesurés&#xa0;; nominal {1} {2}</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Of best flow</source>
        <translation>Du débit optimal</translation>
    </message>
    <message>
        <source>Of design</source>
        <translation>Du nominal</translation>
    </message>
    <message>
        <source>Of design flow</source>
        <translation>Du débit nominal</translation>
    </message>
    <message>
        <source>Of target</source>
        <translation>De la cible</translation>
    </message>
    <message>
        <source>Of target by round</source>
        <translation>De la cible par passage</translation>
    </message>
    <message>
        <source>Of target by round, in percent</source>
        <translation>De la cible par passage, en pour cent</translation>
    </message>
    <message>
        <source>On share</source>
        <translation>À sa part</translation>
    </message>
    <message>
        <source>One-line diagram</source>
        <translation>Schéma unifilaire</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Option</translation>
    </message>
    <message>
        <source>Or impeller</source>
        <translation>Ou roue</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Path</source>
        <translation>Chemin</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Phases, load and suction</source>
        <translation>Phases, charge et aspiration</translation>
    </message>
    <message>
        <source>Pipe before / needs</source>
        <translation>Longueur amont / requise</translation>
    </message>
    <message>
        <source>Pipe behind / needs</source>
        <translation>Longueur aval / requise</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Point</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Pression</translation>
    </message>
    <message>
        <source>Pressure along the circuit of {1}</source>
        <translation>Pression le long du circuit de {1}</translation>
    </message>
    <message>
        <source>Proportional</source>
        <translation>Proportionnel</translation>
    </message>
    <message>
        <source>Proportional balance: in each group of branches the one with the lowest flow over design flow is the reference and its valve stays fully open; the others are set to the same proportion, group by group, and the pump then brings the total to design</source>
        <translation>Équilibrage proportionnel&#xa0;: dans chaque groupe de branches, celle du plus petit débit sur débit nominal est la référence et sa vanne reste ouverte en grand&#xa0;; les autres sont réglées à la même proportion, groupe après groupe, puis la pompe amène le total au nominal</translation>
    </message>
    <message>
        <source>Proposed remedy</source>
        <translation>Remède proposé</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
    <message>
        <source>Pump and system</source>
        <translation>Pompe et réseau</translation>
    </message>
    <message>
        <source>Pump curve and system curves</source>
        <translation>Courbe de pompe et courbes de réseau</translation>
    </message>
    <message>
        <source>Pump off</source>
        <translation>Pompe arrêtée</translation>
    </message>
    <message>
        <source>Pump on</source>
        <translation>Pompe en marche</translation>
    </message>
    <message>
        <source>Pump test, {1}</source>
        <translation>Essai de pompe, {1}</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Mesurés</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Remesuré</translation>
    </message>
    <message>
        <source>Read-and-set</source>
        <translation>Mesurer-régler</translation>
    </message>
    <message>
        <source>Read-and-set against proportional</source>
        <translation>Mesurer-régler face au proportionnel</translation>
    </message>
    <message>
        <source>Read-and-set leaves {1} across {2}, a proportional balance with the pump reduced leaves {3}.</source>
        <translation>Mesurer-régler laisse {1} à {2}, un équilibrage proportionnel avec pompe réduite laisse {3}.</translation>
    </message>
    <message>
        <source>Readable dp</source>
        <translation>Δp lisible</translation>
    </message>
    <message>
        <source>Readiness before the survey</source>
        <translation>Préparation avant le relevé</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Mesures</translation>
    </message>
    <message>
        <source>Readings at branches</source>
        <translation>Mesures aux branches</translation>
    </message>
    <message>
        <source>Readings at pumps</source>
        <translation>Mesures aux pompes</translation>
    </message>
    <message>
        <source>Readings taken</source>
        <translation>Mesures faites</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Reported</source>
        <translation>Rapporté</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Variation</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Résultat</translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation>Rév.</translation>
    </message>
    <message>
        <source>Review and revisions</source>
        <translation>Revue et révisions</translation>
    </message>
    <message>
        <source>Reviewed and accepted</source>
        <translation>Revu et accepté</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Différence</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>Round {1}</source>
        <translation>Passage {1}</translation>
    </message>
    <message>
        <source>Round {1} began before the list was done: {2}</source>
        <translation>Le passage {1} a commencé avant la fin de la liste&#xa0;: {2}</translation>
    </message>
    <message>
        <source>Round {1} read again what round {2} had reported</source>
        <translation>Le passage {1} a remesuré ce que le passage {2} avait rapporté</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Passages</translation>
    </message>
    <message>
        <source>Rounds and who decided on them</source>
        <translation>Passages et qui en a décidé</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Capteur</translation>
    </message>
    <message>
        <source>Sent by</source>
        <translation>Envoyé par</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Série</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Desservi</translation>
    </message>
    <message>
        <source>Set-point</source>
        <translation>Consigne</translation>
    </message>
    <message>
        <source>Set-point over flow, sensor {1}</source>
        <translation>Consigne selon le débit, capteur {1}</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Setting now</source>
        <translation>Réglage actuel</translation>
    </message>
    <message>
        <source>Shaft power</source>
        <translation>Puissance à l’arbre</translation>
    </message>
    <message>
        <source>Shaft power by every method the readings allow</source>
        <translation>Puissance à l’arbre par chaque méthode que les mesures permettent</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Part</translation>
    </message>
    <message>
        <source>Share: a branch&apos;s flow over the sum of the terminals. Target share: the same of the design flows. Of target: share over target share. Of design: flow over design flow. Spread: largest minus smallest of target in a group.</source>
        <translation>Part&#xa0;: débit d’une branche sur la somme des terminaux. Part cible&#xa0;: de même avec les débits nominaux. De la cible&#xa0;: part sur part cible. Du nominal&#xa0;: débit sur débit nominal. Dispersion&#xa0;: plus grand moins plus petit de la cible dans un groupe.</translation>
    </message>
    <message>
        <source>Shares</source>
        <translation>Parts</translation>
    </message>
    <message>
        <source>Shares by round</source>
        <translation>Parts par passage</translation>
    </message>
    <message>
        <source>Shutoff test</source>
        <translation>Essai à débit nul</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Côté</translation>
    </message>
    <message>
        <source>Signatures so far</source>
        <translation>Signatures à ce jour</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Signé par</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Slip</source>
        <translation>Glissement</translation>
    </message>
    <message>
        <source>Solved flow</source>
        <translation>Débit calculé</translation>
    </message>
    <message>
        <source>Solved head</source>
        <translation>Hauteur calculée</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Vitesse</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Dispersion</translation>
    </message>
    <message>
        <source>Spread by round: {1}. On share by round: {2} of {3} terminals.</source>
        <translation>Dispersion par passage&#xa0;: {1}. À leur part par passage&#xa0;: {2} sur {3} terminaux.</translation>
    </message>
    <message>
        <source>Standard uncertainties, combined as root of squares (JCGM 100:2008) from instrument, its floor, last digit, valve table and setting; a result whose uncertainty spans a limit is called undecidable</source>
        <translation>Incertitudes-types, composées en racine des carrés (JCGM 100:2008), de l’instrument, de son terme fixe, du dernier chiffre, de la table de vanne et du réglage&#xa0;; un résultat dont l’incertitude enjambe une limite est dit indécidable</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Suction</source>
        <translation>Aspiration</translation>
    </message>
    <message>
        <source>Supply and return are drawn as one pipe. Beside each valve stand its tag, the shape of its state, its percent of target and its setting; the filled part of a valve shows how far it is open. The index circuit is a double line.</source>
        <translation>Aller et retour sont dessinés comme un seul tuyau. À côté de chaque vanne figurent son repère, le signe de son état, son pour cent de la cible et son réglage&#xa0;; la partie pleine d’une vanne montre son ouverture. Le circuit défavorisé est une ligne double.</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Cible</translation>
    </message>
    <message>
        <source>That is {1} from {2} rpm</source>
        <translation>Soit {1} au lieu de {2} tr/min</translation>
    </message>
    <message>
        <source>The duty is not known, so the figure shows what is on record.</source>
        <translation>Le point de fonctionnement est inconnu, la figure montre donc ce qui est enregistré.</translation>
    </message>
    <message>
        <source>The index circuit from the pump outward</source>
        <translation>Le circuit défavorisé depuis la pompe</translation>
    </message>
    <message>
        <source>The index circuit is not known from these readings</source>
        <translation>Le circuit défavorisé n’est pas connu par ces mesures</translation>
    </message>
    <message>
        <source>The loop in the final round</source>
        <translation>La boucle au passage final</translation>
    </message>
    <message>
        <source>The same options, each confirmed by a solve of the whole loop</source>
        <translation>Les mêmes options, chacune confirmée par un calcul de toute la boucle</translation>
    </message>
    <message>
        <source>The sample holds the index terminal and those with the highest and the lowest of design, at least one of every group, and others drawn by chance with the seed {1}; the same seed gives the same sample. Confirmed: at most one in ten deviates by more than 10 % (common practice).</source>
        <translation>L’échantillon comprend le terminal défavorisé, ceux du plus haut et du plus bas du nominal, au moins un par groupe, et d’autres tirés au sort avec le numéro {1}&#xa0;; le même numéro donne le même échantillon. Confirmé&#xa0;: au plus un sur dix s’écarte de plus de 10&#xa0;% (pratique courante).</translation>
    </message>
    <message>
        <source>The unit of {1} stands at {2} with the pump on and at {3} with it off.</source>
        <translation>L’unité de {1} est à {2} pompe en marche, à {3} arrêtée.</translation>
    </message>
    <message>
        <source>This is revision {1}; it supersedes revision {2}.</source>
        <translation>Ceci est la révision {1}&#xa0;; elle remplace la révision {2}.</translation>
    </message>
    <message>
        <source>This is revision {1}; nothing was signed before.</source>
        <translation>Ceci est la révision {1}&#xa0;; rien n’a été signé avant.</translation>
    </message>
    <message>
        <source>This report states what was read with the instruments listed, on the dates shown, and what follows from it by the method of section {1}. It says nothing of plant that was not measured.</source>
        <translation>Ce rapport dit ce qui a été mesuré avec les instruments listés, aux dates indiquées, et ce qui en découle par la méthode de la section {1}. Il ne dit rien de ce qui n’a pas été mesuré.</translation>
    </message>
    <message>
        <source>This test is no legal advice; the authority having jurisdiction decides.</source>
        <translation>Ce test n’est pas un avis juridique&#xa0;; l’autorité compétente décide.</translation>
    </message>
    <message>
        <source>Throttle</source>
        <translation>Étranglement</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Tolerances</source>
        <translation>Tolérances</translation>
    </message>
    <message>
        <source>Total flow</source>
        <translation>Débit total</translation>
    </message>
    <message>
        <source>Total head</source>
        <translation>Hauteur totale</translation>
    </message>
    <message>
        <source>Total head = pressure + gauge zero + elevation + velocity head, in the flowing fluid. Flow that counts: meter, else sum of the terminals, else curve.</source>
        <translation>Hauteur totale = pression + zéro des manomètres + niveau + hauteur de vitesse, dans le fluide en circulation. Débit retenu&#xa0;: débitmètre, sinon somme des terminaux, sinon courbe.</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Corps d’état</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertitude</translation>
    </message>
    <message>
        <source>Unfinished: {1} of {2} terminals not read again</source>
        <translation>Inachevé&#xa0;: {1} des {2} terminaux non remesurés</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>V imbalance</source>
        <translation>Déséquilibre V</translation>
    </message>
    <message>
        <source>V of plate</source>
        <translation>V de plaque</translation>
    </message>
    <message>
        <source>V, A, PF</source>
        <translation>V, A, cos φ</translation>
    </message>
    <message>
        <source>Valve on return, pump on</source>
        <translation>Vanne au retour, pompe en marche</translation>
    </message>
    <message>
        <source>Valve on supply, pump on</source>
        <translation>Vanne à l’aller, pompe en marche</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>Vitesse</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Wasted</source>
        <translation>Gaspillé</translation>
    </message>
    <message>
        <source>Water at {1}, density {2} kg/m³</source>
        <translation>Eau à {1}, masse volumique {2} kg/m³</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>What a reader should know</source>
        <translation>Ce que le lecteur doit savoir</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Ce qui manque</translation>
    </message>
    <message>
        <source>What is wrong, what follows</source>
        <translation>Ce qui ne va pas, ce qui s’ensuit</translation>
    </message>
    <message>
        <source>What must hold before a survey</source>
        <translation>Ce qui doit être fait avant un relevé</translation>
    </message>
    <message>
        <source>What the balancer cannot mend</source>
        <translation>Ce que l’équilibrage ne peut corriger</translation>
    </message>
    <message>
        <source>What the change does</source>
        <translation>Ce que fait le changement</translation>
    </message>
    <message>
        <source>Wire to water</source>
        <translation>Rendement global</translation>
    </message>
    <message>
        <source>Within 10 %</source>
        <translation>À moins de 10&#xa0;%</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>Dans les limites</translation>
    </message>
    <message>
        <source>Witness sample</source>
        <translation>Échantillon témoin</translation>
    </message>
    <message>
        <source>Zero</source>
        <translation>Zéro</translation>
    </message>
    <message>
        <source>Zero check</source>
        <translation>Contrôle du zéro</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; can be read two ways; write it without a thousands mark and with a point</source>
        <translation>«&#xa0;{1}&#xa0;» se lit de deux façons&#xa0;; écrivez-le sans séparateur de milliers et avec un point</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; cannot be read as a picture; choose a JPEG or PNG file</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas lisible comme image&#xa0;; choisissez un fichier JPEG ou PNG</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; differs from the first row of this valve, which says &quot;{2}&quot;; make them alike</source>
        <translation>«&#xa0;{1}&#xa0;» diffère de la première ligne de cette vanne, qui dit «&#xa0;{2}&#xa0;»&#xa0;; rendez-les identiques</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; does not name a practice building; open the job with the version that made it</source>
        <translation>«&#xa0;{1}&#xa0;» ne nomme aucun bâtiment d’exercice&#xa0;; ouvrez le chantier avec la version qui l’a créé</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; has more than 15 digits; shorten it to what was read</source>
        <translation>«&#xa0;{1}&#xa0;» a plus de 15 chiffres&#xa0;; réduisez-le à ce qui a été mesuré</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is empty or the tag of another pump; type another tag</source>
        <translation>«&#xa0;{1}&#xa0;» est vide ou le repère d’une autre pompe&#xa0;; tapez un autre repère</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a date or time; write it as 2026-03-04 or 2026-03-04T14:02</source>
        <translation>«&#xa0;{1}&#xa0;» n’est ni une date ni une heure&#xa0;; écrivez 2026-03-04 ou 2026-03-04T14:02</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a date; write it as 2027-03-31</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas une date&#xa0;; écrivez-la 2027-03-31</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a number; use digits with one point or comma</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas un nombre&#xa0;; tapez des chiffres avec un point ou une virgule</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit that the column &quot;{2}&quot; can have; use one of {3}</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas une unité pour la colonne «&#xa0;{2}&#xa0;»&#xa0;; prenez l’une de {3}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a whole number from 1 to {2}; correct it</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas un entier de 1 à {2}&#xa0;; corrigez-le</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not among the people of this job as supervisor or engineer; give the role on the place Job</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas parmi les personnes de ce chantier comme responsable ou ingénieur&#xa0;; donnez le rôle dans Chantier</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not known here; use one of {2}</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas connu ici&#xa0;; prenez l’un de {2}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not known; write it as in {2}, or add it there</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas connu&#xa0;; écrivez-le comme dans {2}, ou ajoutez-le là</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; lets a survey begin before the loop is ready, but no supervisor or engineer of this job says so; write name, colon, reason</source>
        <translation>«&#xa0;{1}&#xa0;» laisse commencer un relevé avant que la boucle soit prête, mais aucun responsable ou ingénieur de ce chantier ne le dit&#xa0;; écrivez nom, deux-points, motif</translation>
    </message>
    <message>
        <source>a balance by hand valves is right at one flow only: when far circuits close, near ones take less than design; let the control valves do the rest and hold as little dp as the worst circuit needs</source>
        <translation>un équilibrage par vannes manuelles n’est juste qu’à un débit&#xa0;: quand des circuits lointains ferment, les proches reçoivent moins que le nominal&#xa0;; laissez faire les vannes de régulation et tenez aussi peu de Δp que le circuit défavorisé demande</translation>
    </message>
    <message>
        <source>a branch needs a tag; type one, such as B-05</source>
        <translation>une branche demande un repère&#xa0;; tapez-en un, par exemple B-05</translation>
    </message>
    <message>
        <source>a branch to be changed is not in the job; choose one of its branches</source>
        <translation>une branche à changer n’est pas dans le chantier&#xa0;; choisissez l’une de ses branches</translation>
    </message>
    <message>
        <source>a branch without branches of its own needs its design flow; give it</source>
        <translation>une branche sans branches à elle demande son débit nominal&#xa0;; donnez-le</translation>
    </message>
    <message>
        <source>a certificate needs a name of 1 to 64 characters; type the name of the person</source>
        <translation>un certificat demande un nom de 1 à 64 caractères&#xa0;; tapez le nom de la personne</translation>
    </message>
    <message>
        <source>a change was interrupted and must be taken back before reading, but the folder cannot be written; copy the file and the one ending in -journal to a place of your own and open it there</source>
        <translation>un changement a été interrompu et doit être repris avant lecture, mais le dossier n’est pas accessible en écriture&#xa0;; copiez le fichier et celui en -journal chez vous et ouvrez-le là</translation>
    </message>
    <message>
        <source>a closed-valve dp was read where the valve is open; record it at the setting it was read at</source>
        <translation>une Δp de vanne fermée a été mesurée là où la vanne est ouverte&#xa0;; notez-la au réglage où elle a été mesurée</translation>
    </message>
    <message>
        <source>a comment stays as it was written; write an answer to it instead</source>
        <translation>un commentaire reste tel qu’il fut écrit&#xa0;; écrivez plutôt une réponse</translation>
    </message>
    <message>
        <source>a comment without words says nothing; write it</source>
        <translation>un commentaire sans mots ne dit rien&#xa0;; écrivez-le</translation>
    </message>
    <message>
        <source>a dp is given for a branch whose valve has no table; give its valve in branches.csv</source>
        <translation>une Δp est donnée pour une branche dont la vanne n’a pas de table&#xa0;; donnez sa vanne dans branches.csv</translation>
    </message>
    <message>
        <source>a dp was read, but no usable valve table is known; give the valve&apos;s table or the flow</source>
        <translation>une Δp a été mesurée, mais aucune table de vanne utilisable n’est connue&#xa0;; donnez la table de la vanne ou le débit</translation>
    </message>
    <message>
        <source>a drive feeds the motor, so volts and amps behind it are no measure of power; read the power on the drive&apos;s display</source>
        <translation>un variateur alimente le moteur, tension et intensité en aval ne mesurent donc pas la puissance&#xa0;; lisez-la sur l’écran du variateur</translation>
    </message>
    <message>
        <source>a file of this name is there already; choose another name</source>
        <translation>un fichier de ce nom existe déjà&#xa0;; choisissez un autre nom</translation>
    </message>
    <message>
        <source>a file stands at {1} and is not overwritten; give the key another name</source>
        <translation>un fichier se trouve à {1} et n’est pas écrasé&#xa0;; donnez un autre nom à la clé</translation>
    </message>
    <message>
        <source>a flow of {1} was typed in although its valve has a table; read its dp, or give the reason</source>
        <translation>un débit de {1} a été saisi bien que sa vanne ait une table&#xa0;; mesurez sa Δp, ou donnez le motif</translation>
    </message>
    <message>
        <source>a flow or the dp of an open valve was read where the valve is shut; record it as a closed-valve reading</source>
        <translation>un débit ou la Δp d’une vanne ouverte a été mesuré là où la vanne est fermée&#xa0;; notez-le comme mesure vanne fermée</translation>
    </message>
    <message>
        <source>a job needs a name; type one</source>
        <translation>un chantier demande un nom&#xa0;; tapez-en un</translation>
    </message>
    <message>
        <source>a key with a self-made certificate is in {1}; keep its passphrase, nobody can find it</source>
        <translation>une clé à certificat autosigné est dans {1}&#xa0;; gardez sa phrase secrète, personne ne peut la retrouver</translation>
    </message>
    <message>
        <source>a later revision changed more than its own signature ({1}); do not rely on this file, ask for it again</source>
        <translation>une révision ultérieure a changé plus que sa propre signature ({1})&#xa0;; ne vous fiez pas à ce fichier, redemandez-le</translation>
    </message>
    <message>
        <source>a line of readiness has no words; type them, or remove the line</source>
        <translation>une ligne de préparation n’a pas de mots&#xa0;; tapez-les, ou supprimez la ligne</translation>
    </message>
    <message>
        <source>a name is missing; type one, or press Esc</source>
        <translation>un nom manque&#xa0;; tapez-en un, ou appuyez sur Échap</translation>
    </message>
    <message>
        <source>a quotation mark is opened and never closed; add the closing one</source>
        <translation>un guillemet s’ouvre et ne se ferme jamais&#xa0;; ajoutez le fermant</translation>
    </message>
    <message>
        <source>a reading at setting {1} is outside the valve&apos;s table and is left out of the learning; correct the setting</source>
        <translation>une mesure au réglage {1} est hors de la table de vanne et écartée de l’apprentissage&#xa0;; corrigez le réglage</translation>
    </message>
    <message>
        <source>a reading of this valve does not fit the others; read it again as it stands</source>
        <translation>une mesure de cette vanne ne concorde pas avec les autres&#xa0;; remesurez-la telle qu’elle est</translation>
    </message>
    <message>
        <source>a round read at the settings that stand has every share within the band; nothing is left to turn</source>
        <translation>un passage fait aux réglages en place a chaque part dans la bande&#xa0;; rien ne reste à tourner</translation>
    </message>
    <message>
        <source>a row needs {1}; type it, or take the whole row out with its button</source>
        <translation>une ligne demande {1}&#xa0;; tapez-le, ou retirez toute la ligne avec son bouton</translation>
    </message>
    <message>
        <source>a row without setting stands for a valve that has a range of dp and no table, and this valve has more rows; give setting and coefficient in each or take the row out</source>
        <translation>une ligne sans réglage désigne une vanne à plage de Δp et sans table, or cette vanne a plus de lignes&#xa0;; donnez réglage et coefficient dans chacune ou retirez la ligne</translation>
    </message>
    <message>
        <source>a setting is given but no valve with a table; give valve_model and valve_size</source>
        <translation>un réglage est donné mais aucune vanne avec table&#xa0;; donnez valve_model et valve_size</translation>
    </message>
    <message>
        <source>a signature that was there has been taken out; do not rely on this file, ask for it again</source>
        <translation>une signature présente a été retirée&#xa0;; ne vous fiez pas à ce fichier, redemandez-le</translation>
    </message>
    <message>
        <source>a signed report stands there and would be lost; give the report another name</source>
        <translation>un rapport signé s’y trouve et serait perdu&#xa0;; donnez un autre nom au rapport</translation>
    </message>
    <message>
        <source>a sound copy of this job lies beside it, with {1} records, the newest of {2}; open that one</source>
        <translation>une copie saine de ce chantier est à côté, avec {1} enregistrements, le dernier du {2}&#xa0;; ouvrez celle-là</translation>
    </message>
    <message>
        <source>a trim cannot be taken back; make sure that no more circuits will be added, and let the pump&apos;s maker or a licensed shop do it</source>
        <translation>un rognage est irréversible&#xa0;; assurez-vous qu’aucun circuit ne sera ajouté, et confiez-le au fabricant de la pompe ou à un atelier agréé</translation>
    </message>
    <message>
        <source>a whole copy is at {1}; work goes on in the first file</source>
        <translation>une copie entière est dans {1}&#xa0;; le travail continue dans le premier fichier</translation>
    </message>
    <message>
        <source>a workbook cannot be copied onto itself; choose another name</source>
        <translation>un classeur ne se copie pas sur lui-même&#xa0;; choisissez un autre nom</translation>
    </message>
    <message>
        <source>a workbook cannot be merged with itself; choose the copy that the other laptop worked in</source>
        <translation>un classeur ne fusionne pas avec lui-même&#xa0;; choisissez la copie de l’autre portable</translation>
    </message>
    <message>
        <source>a workbook holds exactly one job; change the one that is there</source>
        <translation>un classeur contient exactement un chantier&#xa0;; changez celui qui est là</translation>
    </message>
    <message>
        <source>a workbook stands there and would be lost; give the output another name</source>
        <translation>un classeur s’y trouve et serait perdu&#xa0;; donnez un autre nom à la sortie</translation>
    </message>
    <message>
        <source>advice, unverified: no round has confirmed these settings; set them, then read every valve once more</source>
        <translation>conseil, non vérifié&#xa0;: aucun passage n’a confirmé ces réglages&#xa0;; réglez-les, puis mesurez chaque vanne encore une fois</translation>
    </message>
    <message>
        <source>all is stored, with the last reading, in {1}; work goes on there</source>
        <translation>tout est enregistré, avec la dernière mesure, dans {1}&#xa0;; le travail continue là</translation>
    </message>
    <message>
        <source>amps were read without volts, so no power follows from them; read the volts between the phases</source>
        <translation>les intensités ont été lues sans tensions, aucune puissance n’en découle&#xa0;; lisez les tensions entre phases</translation>
    </message>
    <message>
        <source>an unknown time</source>
        <translation>une heure inconnue</translation>
    </message>
    <message>
        <source>an unreadable certificate</source>
        <translation>un certificat illisible</translation>
    </message>
    <message>
        <source>another program keeps the file locked; close that program and try again</source>
        <translation>un autre programme verrouille le fichier&#xa0;; fermez-le et réessayez</translation>
    </message>
    <message>
        <source>at</source>
        <translation>à</translation>
    </message>
    <message>
        <source>at the new design flow the pump makes {1} at full speed and {2} are needed; a larger impeller or pump is needed, ask its maker</source>
        <translation>au nouveau débit nominal la pompe fournit {1} à pleine vitesse et il faut {2}&#xa0;; une roue ou une pompe plus grande est nécessaire, demandez à son fabricant</translation>
    </message>
    <message>
        <source>at this set-point the index circuit takes {1} % of design flow, outside {2} to {3} %; correct the set-point</source>
        <translation>à cette consigne le circuit défavorisé reçoit {1}&#xa0;% du débit nominal, hors de {2} à {3}&#xa0;%&#xa0;; corrigez la consigne</translation>
    </message>
    <message>
        <source>before rebalancing this terminal would take {1} % of design flow; tell its users until it is balanced</source>
        <translation>avant rééquilibrage ce terminal recevrait {1}&#xa0;% du débit nominal&#xa0;; prévenez ses usagers jusqu’à l’équilibrage</translation>
    </message>
    <message>
        <source>both values cannot stand here; choose one of them</source>
        <translation>les deux valeurs ne peuvent rester ici&#xa0;; choisissez-en une</translation>
    </message>
    <message>
        <source>branches nearer to the limit of their share than they can be read: {1} ({2}); bring them nearer to target or read more accurately</source>
        <translation>branches plus proches de la limite de leur part que la mesure ne distingue&#xa0;: {1} ({2})&#xa0;; rapprochez-les de la cible ou mesurez plus précisément</translation>
    </message>
    <message>
        <source>branches whose share is not known because a flow is missing: {1} ({2}); complete the readings</source>
        <translation>branches dont la part est inconnue faute d’un débit&#xa0;: {1} ({2})&#xa0;; complétez les mesures</translation>
    </message>
    <message>
        <source>by its table the pump takes {1} at shutoff and {2} at best efficiency; do not make a shutoff test without the maker&apos;s word</source>
        <translation>selon sa table la pompe absorbe {1} à débit nul et {2} au meilleur rendement&#xa0;; ne faites pas d’essai à débit nul sans l’accord du fabricant</translation>
    </message>
    <message>
        <source>c  corrected, see section {1}</source>
        <translation>c  corrigé, voir section {1}</translation>
    </message>
    <message>
        <source>can be kept as a new revision of the job; the former stays in the history</source>
        <translation>peut être gardée comme nouvelle révision du chantier&#xa0;; l’ancienne reste dans l’historique</translation>
    </message>
    <message>
        <source>cannot be kept in this job; the reason stands below</source>
        <translation>ne peut être gardée dans ce chantier&#xa0;; le motif est ci-dessous</translation>
    </message>
    <message>
        <source>close the discharge valve slowly, never the suction valve; read both gauges within a minute, and open it again at once: the water in a pump that runs shut heats up</source>
        <translation>fermez lentement la vanne de refoulement, jamais celle d’aspiration&#xa0;; lisez les deux manomètres en moins d’une minute et rouvrez aussitôt&#xa0;: l’eau d’une pompe qui tourne fermée s’échauffe</translation>
    </message>
    <message>
        <source>comments that are not resolved: {1}, the first is &quot;{2}&quot;; answer and resolve them, the report cannot be signed before</source>
        <translation>commentaires non résolus&#xa0;: {1}, le premier est «&#xa0;{2}&#xa0;»&#xa0;; répondez et résolvez-les, le rapport ne peut être signé avant</translation>
    </message>
    <message>
        <source>content</source>
        <translation>contenu</translation>
    </message>
    <message>
        <source>could not be read: {1}</source>
        <translation>n’a pu être mesuré&#xa0;: {1}</translation>
    </message>
    <message>
        <source>could not be read: {1} of {2} terminals ({3}); find another way to measure them</source>
        <translation>mesure impossible&#xa0;: {1} des {2} terminaux ({3})&#xa0;; trouvez un autre moyen de les mesurer</translation>
    </message>
    <message>
        <source>could not be read; give the reason</source>
        <translation>n’a pu être mesuré&#xa0;; donnez le motif</translation>
    </message>
    <message>
        <source>deficiencies that the report lists: {1}, of these open: {2}</source>
        <translation>réserves que le rapport liste&#xa0;: {1}, dont ouvertes&#xa0;: {2}</translation>
    </message>
    <message>
        <source>design flow lies beyond the last point of the pump&apos;s curve at {1}; get the maker&apos;s curve for this flow, no number is computed there</source>
        <translation>le débit nominal dépasse le dernier point de la courbe à {1}&#xa0;; obtenez la courbe du fabricant pour ce débit, rien n’y est calculé</translation>
    </message>
    <message>
        <source>doubtful readings: {1} ({2}); read again or give the reasons</source>
        <translation>mesures douteuses&#xa0;: {1} ({2})&#xa0;; remesurez ou donnez les motifs</translation>
    </message>
    <message>
        <source>dp as typed</source>
        <translation>Δp telle que saisie</translation>
    </message>
    <message>
        <source>dp {1} at {2} is below the readable minimum of {3}</source>
        <translation>Δp {1} à {2} est sous le minimum lisible de {3}</translation>
    </message>
    <message>
        <source>dp {1} at {2}, not below the readable minimum of {3}</source>
        <translation>Δp {1} à {2}, pas sous le minimum lisible de {3}</translation>
    </message>
    <message>
        <source>due {1} is before calibrated {2}; correct one of the dates</source>
        <translation>échéance {1} antérieure à l’étalonnage {2}&#xa0;; corrigez l’une des dates</translation>
    </message>
    <message>
        <source>e  reading of an earlier round</source>
        <translation>e  mesure d’un passage antérieur</translation>
    </message>
    <message>
        <source>edition and clause are not entered; enter them</source>
        <translation>édition et article non saisis&#xa0;; saisissez-les</translation>
    </message>
    <message>
        <source>every comment is resolved</source>
        <translation>chaque commentaire est résolu</translation>
    </message>
    <message>
        <source>every valve of the working order is held; close this round and read all again (Ctrl+Shift+W)</source>
        <translation>chaque vanne de l’ordre de travail est tenue&#xa0;; clôturez ce passage et remesurez tout (Ctrl+Maj+W)</translation>
    </message>
    <message>
        <source>exception claimed: {1}; keep its proof</source>
        <translation>exception invoquée&#xa0;: {1}&#xa0;; gardez-en la preuve</translation>
    </message>
    <message>
        <source>excess power = Q rho g (H1/eta1 - H2/eta2) with Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; limit = the greater of {6} % of the plate and {7}</source>
        <translation>puissance excédentaire = Q rho g (H1/eta1 - H2/eta2) avec Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4}&#xa0;%, eta2 = {5}&#xa0;%&#xa0;; limite = le plus grand de {6}&#xa0;% de la plaque et {7}</translation>
    </message>
    <message>
        <source>excess power = Q rho g (H1/eta1 - H2/eta2) with Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; limit = {6} % of the plate</source>
        <translation>puissance excédentaire = Q rho g (H1/eta1 - H2/eta2) avec Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4}&#xa0;%, eta2 = {5}&#xa0;%&#xa0;; limite = {6}&#xa0;% de la plaque</translation>
    </message>
    <message>
        <source>f  flow read directly</source>
        <translation>f  débit mesuré directement</translation>
    </message>
    <message>
        <source>flow {1} stands twice in the pump curve; keep one row</source>
        <translation>le débit {1} figure deux fois dans la courbe&#xa0;; gardez une ligne</translation>
    </message>
    <message>
        <source>flow, head and power would mean an efficiency of {1} %; check the power reading, the gauges and the flow</source>
        <translation>débit, hauteur et puissance donneraient un rendement de {1}&#xa0;%&#xa0;; vérifiez puissance lue, manomètres et débit</translation>
    </message>
    <message>
        <source>gauges differ by {1} with the pump off</source>
        <translation>les manomètres diffèrent de {1} pompe arrêtée</translation>
    </message>
    <message>
        <source>in table {1} the value of {2} cannot be read; another program changed it, open a copy from before</source>
        <translation>dans la table {1} la valeur de {2} est illisible&#xa0;; un autre programme l’a changée, ouvrez une copie antérieure</translation>
    </message>
    <message>
        <source>it has no valve to set and will take {1} % of target; fit a balancing valve, or accept what it takes</source>
        <translation>elle n’a pas de vanne à régler et prendra {1}&#xa0;% de la cible&#xa0;; posez une vanne d’équilibrage, ou acceptez ce qu’elle prend</translation>
    </message>
    <message>
        <source>it is not recorded whether the device stands on supply or return; look and enter it</source>
        <translation>il n’est pas noté si l’organe est à l’aller ou au retour&#xa0;; regardez et saisissez-le</translation>
    </message>
    <message>
        <source>it is the reference and was read before the valve of {1} was moved; read it again</source>
        <translation>elle est la référence et fut mesurée avant que la vanne de {1} ne bouge&#xa0;; remesurez-la</translation>
    </message>
    <message>
        <source>it is the reference of its group and its valve stands at {1} of {2}; open it fully and match the others to it</source>
        <translation>elle est la référence de son groupe et sa vanne est à {1} sur {2}&#xa0;; ouvrez-la en grand et réglez les autres sur elle</translation>
    </message>
    <message>
        <source>it is the reference of its group and stands at {1}; open it fully to {2}</source>
        <translation>elle est la référence de son groupe et se trouve à {1}&#xa0;; ouvrez-la en grand jusqu’à {2}</translation>
    </message>
    <message>
        <source>it keeps its flow by itself and is left out of matching; check that its dp stays within its range</source>
        <translation>elle tient son débit seule et reste hors de l’ajustement&#xa0;; vérifiez que sa Δp reste dans sa plage</translation>
    </message>
    <message>
        <source>it keeps its flow by itself and is left out of the proportion of the group {1}; verify its dp range instead</source>
        <translation>elle tient son débit seule et reste hors de la proportion du groupe {1}&#xa0;; vérifiez plutôt sa plage de Δp</translation>
    </message>
    <message>
        <source>it lies beyond all valves that were moved and changed by {1} % against the others there, in round {2} they kept step; look for air, a limiter or a moving control valve</source>
        <translation>elle est au-delà des vannes manœuvrées et a changé de {1}&#xa0;% face aux autres là-bas, au passage {2} elles allaient de pair&#xa0;; cherchez de l’air, un limiteur ou une vanne de régulation mobile</translation>
    </message>
    <message>
        <source>it may be made, by somebody who knows this plant; read the following first</source>
        <translation>il peut être fait, par quelqu’un qui connaît cette installation&#xa0;; lisez d’abord ce qui suit</translation>
    </message>
    <message>
        <source>it must not be made on this pump; the following says why</source>
        <translation>il ne doit pas être fait sur cette pompe&#xa0;; la suite dit pourquoi</translation>
    </message>
    <message>
        <source>it takes {1} % of target, the most of what is left to set; turn it from {2} to {3}</source>
        <translation>elle prend {1}&#xa0;% de la cible, le plus de ce qui reste à régler&#xa0;; tournez-la de {2} à {3}</translation>
    </message>
    <message>
        <source>it was read again with the same instrument {1}; use another one, or take its zero anew and give the reason</source>
        <translation>remesuré avec le même instrument {1}&#xa0;; prenez-en un autre, ou refaites son zéro et donnez le motif</translation>
    </message>
    <message>
        <source>it was read before the speed of pump {1} was changed in this final round; read it again, final readings come last</source>
        <translation>mesurée avant le changement de vitesse de la pompe {1} dans ce passage final&#xa0;; remesurez, les mesures finales viennent en dernier</translation>
    </message>
    <message>
        <source>it was read before the valve of {1} was moved in this final round; read it again, final readings come last</source>
        <translation>mesurée avant que la vanne de {1} ne bouge dans ce passage final&#xa0;; remesurez, les mesures finales viennent en dernier</translation>
    </message>
    <message>
        <source>its design flow is not known; enter it in System</source>
        <translation>son débit nominal est inconnu&#xa0;; saisissez-le dans Réseau</translation>
    </message>
    <message>
        <source>its design flow is {1}, those below it add up to {2}, {3} % apart; correct the schedule or state the diversity</source>
        <translation>son débit nominal est {1}, ceux en aval font {2}, soit {3}&#xa0;% d’écart&#xa0;; corrigez la liste ou déclarez le foisonnement</translation>
    </message>
    <message>
        <source>its flow rose from {1} to {2} when nothing but its own valve was closed, which cannot be; read both again</source>
        <translation>son débit est monté de {1} à {2} quand seule sa vanne se fermait, ce qui est impossible&#xa0;; remesurez les deux</translation>
    </message>
    <message>
        <source>its own reading gives {1}, those below it add up to {2}, {3} times the uncertainty of the difference; read again and look for a branch that is missing</source>
        <translation>sa propre mesure donne {1}, celles en aval font {2}, soit {3} fois l’incertitude de l’écart&#xa0;; remesurez et cherchez une branche manquante</translation>
    </message>
    <message>
        <source>its reading is dated {1}, before round {2} ended at {3}; check the clock and correct the time</source>
        <translation>sa mesure est datée du {1}, avant la fin du passage {2} à {3}&#xa0;; vérifiez l’horloge et corrigez l’heure</translation>
    </message>
    <message>
        <source>its share cannot be promised within {1} % yet, the standard uncertainty is {2} %; take the reading named as most helpful</source>
        <translation>sa part ne peut encore être promise à {1}&#xa0;% près, l’incertitude-type est {2}&#xa0;%&#xa0;; faites la mesure dite la plus utile</translation>
    </message>
    <message>
        <source>its valve has not been read; read its dp as it stands</source>
        <translation>sa vanne n’a pas été mesurée&#xa0;; mesurez sa Δp telle qu’elle est</translation>
    </message>
    <message>
        <source>its valve makes only {1} at this flow, below the {2} that can be read; use a smaller valve or measure another way</source>
        <translation>sa vanne ne crée que {1} à ce débit, sous les {2} lisibles&#xa0;; prenez une vanne plus petite ou mesurez autrement</translation>
    </message>
    <message>
        <source>its valve stands at {1} of {2}, where its table is least accurate and it may be noisy; consider a smaller valve or less excess head</source>
        <translation>sa vanne est à {1} sur {2}, là où sa table est la moins précise et où elle peut être bruyante&#xa0;; pensez à une vanne plus petite ou à moins de hauteur excédentaire</translation>
    </message>
    <message>
        <source>its valve&apos;s table ends at {1} before it takes enough, it will take {2} % of target; throttle it at another place or fit a smaller valve</source>
        <translation>la table de sa vanne finit à {1} avant qu’elle prenne assez, elle prendra {2}&#xa0;% de la cible&#xa0;; étranglez ailleurs ou posez une vanne plus petite</translation>
    </message>
    <message>
        <source>its zero moved by {1} in the course of the day, more than half of the {2} that can just be read with it; take a new zero and read the low dps again</source>
        <translation>son zéro a bougé de {1} dans la journée, plus de la moitié des {2} tout juste lisibles&#xa0;; refaites le zéro et remesurez les petites Δp</translation>
    </message>
    <message>
        <source>lines of the list still stand in the way: {1}; settle them, or give the reason</source>
        <translation>des lignes de la liste l’empêchent encore&#xa0;: {1}&#xa0;; réglez-les, ou donnez le motif</translation>
    </message>
    <message>
        <source>losses of {1} branch(es) are restated at their new design flows by the square law, since they are the same pipes; keep the designer&apos;s figures with the former revision</source>
        <translation>pertes recalculées aux nouveaux débits nominaux par la loi du carré, les tuyaux restant les mêmes, branches&#xa0;: {1}&#xa0;; gardez les chiffres du concepteur avec l’ancienne révision</translation>
    </message>
    <message>
        <source>makes {1} at full speed where {2} are needed</source>
        <translation>fournit {1} à pleine vitesse quand il faut {2}</translation>
    </message>
    <message>
        <source>makes {1} at full speed where {2} are needed: enough at {3} % of speed</source>
        <translation>fournit {1} à pleine vitesse quand il faut {2}&#xa0;: assez à {3}&#xa0;% de vitesse</translation>
    </message>
    <message>
        <source>mandatory lines of readiness that are open: {1}, the first is &quot;{2}&quot;; see to them, or have a supervisor say why the survey may begin</source>
        <translation>lignes obligatoires de préparation ouvertes&#xa0;: {1}, la première est «&#xa0;{2}&#xa0;»&#xa0;; occupez-vous-en, ou faites dire par un responsable pourquoi le relevé peut commencer</translation>
    </message>
    <message>
        <source>mandatory lines of readiness that are still open: {1}, the first is &quot;{2}&quot;; see to them or give the reason, the report cannot be signed before</source>
        <translation>lignes obligatoires de préparation encore ouvertes&#xa0;: {1}, la première est «&#xa0;{2}&#xa0;»&#xa0;; occupez-vous-en ou donnez le motif, le rapport ne peut être signé avant</translation>
    </message>
    <message>
        <source>maximum_dp {1} is not above minimum_dp {2}; correct one of them</source>
        <translation>maximum_dp {1} n’est pas au-dessus de minimum_dp {2}&#xa0;; corrigez l’un d’eux</translation>
    </message>
    <message>
        <source>may be made with the cautions below</source>
        <translation>peut être fait avec les précautions ci-dessous</translation>
    </message>
    <message>
        <source>must not be made; the cautions say why</source>
        <translation>ne doit pas être fait&#xa0;; les précautions disent pourquoi</translation>
    </message>
    <message>
        <source>neither a reference nor other branches have been read; take the survey first</source>
        <translation>ni référence ni autres branches n’ont été mesurées&#xa0;; faites d’abord le relevé</translation>
    </message>
    <message>
        <source>neither both gauges nor their difference was read; read suction and discharge</source>
        <translation>ni les deux manomètres ni leur différence n’ont été lus&#xa0;; lisez aspiration et refoulement</translation>
    </message>
    <message>
        <source>neither hours a year nor a load profile is entered, so no yearly energy is computed; enter one in Job</source>
        <translation>ni heures par an ni profil de charge saisis, aucune énergie annuelle n’est donc calculée&#xa0;; saisissez-en un dans Chantier</translation>
    </message>
    <message>
        <source>neither the pump&apos;s table nor a reading gives its efficiency here, so no power is computed; enter efficiency or power with the curve, or read the motor&apos;s power</source>
        <translation>ni la table de la pompe ni une mesure ne donne ici son rendement, aucune puissance n’est donc calculée&#xa0;; saisissez rendement ou puissance avec la courbe, ou lisez la puissance du moteur</translation>
    </message>
    <message>
        <source>no action was taken back last; there is nothing to do again</source>
        <translation>aucune action n’a été annulée en dernier&#xa0;; il n’y a rien à refaire</translation>
    </message>
    <message>
        <source>no branch has a valve with a table to set; enter the valve tables</source>
        <translation>aucune branche n’a de vanne à table à régler&#xa0;; saisissez les tables de vannes</translation>
    </message>
    <message>
        <source>no branch is called &quot;{1}&quot;; type a tag of the place System</source>
        <translation>aucune branche ne s’appelle «&#xa0;{1}&#xa0;»&#xa0;; tapez un repère de Réseau</translation>
    </message>
    <message>
        <source>no branch is called &quot;{1}&quot;; type a tag, or nothing for the pump</source>
        <translation>aucune branche ne s’appelle «&#xa0;{1}&#xa0;»&#xa0;; tapez un repère, ou rien pour la pompe</translation>
    </message>
    <message>
        <source>no certificate in PEM form was found; give the file of the firm&apos;s root certificate</source>
        <translation>aucun certificat PEM trouvé&#xa0;; donnez le fichier du certificat racine de la société</translation>
    </message>
    <message>
        <source>no change is given; add, remove or change a branch</source>
        <translation>aucun changement donné&#xa0;; ajoutez, supprimez ou changez une branche</translation>
    </message>
    <message>
        <source>no deficiency is in hand to keep the photo with; list one first</source>
        <translation>aucune réserve en main où garder la photo&#xa0;; notez-en d’abord une</translation>
    </message>
    <message>
        <source>no discharge valve is recorded for this pump; enter its tag if there is one</source>
        <translation>aucune vanne de refoulement notée pour cette pompe&#xa0;; saisissez son repère s’il y en a une</translation>
    </message>
    <message>
        <source>no discharge valve is recorded for this pump; the test throttled to design flow needs one, enter its tag</source>
        <translation>aucune vanne de refoulement notée pour cette pompe&#xa0;; l’essai étranglé au débit nominal en demande une, saisissez son repère</translation>
    </message>
    <message>
        <source>no finding blocks the signature</source>
        <translation>aucun constat ne bloque la signature</translation>
    </message>
    <message>
        <source>no instrument is called &quot;{1}&quot;; type a tag of the place Job</source>
        <translation>aucun instrument ne s’appelle «&#xa0;{1}&#xa0;»&#xa0;; tapez un repère de Chantier</translation>
    </message>
    <message>
        <source>no key file could be read at {1}; choose one, or make a certificate</source>
        <translation>aucun fichier de clé lisible à {1}&#xa0;; choisissez-en un, ou créez un certificat</translation>
    </message>
    <message>
        <source>no link ends at this node; join it to the loop or take it out</source>
        <translation>aucun lien n’aboutit à ce nœud&#xa0;; reliez-le à la boucle ou retirez-le</translation>
    </message>
    <message>
        <source>no list says that the loop was ready; take the usual one on the place Job, or give the reason</source>
        <translation>aucune liste ne dit que la boucle était prête&#xa0;; prenez l’usuelle dans Chantier, ou donnez le motif</translation>
    </message>
    <message>
        <source>no other unit or sign would explain this reading; read the valve again</source>
        <translation>aucune autre unité ni signe n’expliquerait cette mesure&#xa0;; remesurez la vanne</translation>
    </message>
    <message>
        <source>no pump is called &quot;{1}&quot;; type the tag of one of the job&apos;s pumps</source>
        <translation>aucune pompe ne s’appelle «&#xa0;{1}&#xa0;»&#xa0;; tapez le repère d’une pompe du chantier</translation>
    </message>
    <message>
        <source>no pump is marked as running; mark the pumps that work together</source>
        <translation>aucune pompe n’est marquée en marche&#xa0;; marquez les pompes qui travaillent ensemble</translation>
    </message>
    <message>
        <source>no round has flow and head of the pumps; read suction and discharge, and a round</source>
        <translation>aucun passage n’a débit et hauteur des pompes&#xa0;; lisez aspiration et refoulement, et un passage</translation>
    </message>
    <message>
        <source>no round is on record to keep this reading with; open a round first</source>
        <translation>aucun passage où garder cette mesure&#xa0;; ouvrez d’abord un passage</translation>
    </message>
    <message>
        <source>no round is open; open the next round before reading</source>
        <translation>aucun passage n’est ouvert&#xa0;; ouvrez le suivant avant de mesurer</translation>
    </message>
    <message>
        <source>no running pump has a usable curve; enter at least two points of it</source>
        <translation>aucune pompe en marche n’a de courbe utilisable&#xa0;; saisissez-en au moins deux points</translation>
    </message>
    <message>
        <source>no setting is advised for this valve; see the remark beside the table</source>
        <translation>aucun réglage n’est conseillé pour cette vanne&#xa0;; voyez la remarque près du tableau</translation>
    </message>
    <message>
        <source>no sound copy of this job lies beside it; look on the other laptop and on sticks</source>
        <translation>aucune copie saine de ce chantier à côté&#xa0;; cherchez sur l’autre portable et sur des clés USB</translation>
    </message>
    <message>
        <source>no terminal has a flow that could be read again; read and close a final round</source>
        <translation>aucun terminal n’a de débit à remesurer&#xa0;; mesurez et clôturez un passage final</translation>
    </message>
    <message>
        <source>no valve is in hand; choose one on the place Walk or Review</source>
        <translation>aucune vanne en main&#xa0;; choisissez-en une dans Tournée ou Revue</translation>
    </message>
    <message>
        <source>no valve of the group {1} is fully open, reference {2} stands at {3} of {4}; open it and match the others to it</source>
        <translation>aucune vanne du groupe {1} n’est ouverte en grand, la référence {2} est à {3} sur {4}&#xa0;; ouvrez-la et réglez les autres sur elle</translation>
    </message>
    <message>
        <source>no valve of the job is called &quot;{1}&quot;; type its tag or its number</source>
        <translation>aucune vanne du chantier ne s’appelle «&#xa0;{1}&#xa0;»&#xa0;; tapez son repère ou son numéro</translation>
    </message>
    <message>
        <source>no valve of the route is called &quot;{1}&quot;; type its tag or its number</source>
        <translation>aucune vanne de la tournée ne s’appelle «&#xa0;{1}&#xa0;»&#xa0;; tapez son repère ou son numéro</translation>
    </message>
    <message>
        <source>no valve of this group is fully open; open the one of the reference and match the others to it</source>
        <translation>aucune vanne de ce groupe n’est ouverte en grand&#xa0;; ouvrez celle de la référence et réglez les autres sur elle</translation>
    </message>
    <message>
        <source>no workbook is open; open one or make a new job</source>
        <translation>aucun classeur n’est ouvert&#xa0;; ouvrez-en un ou créez un chantier</translation>
    </message>
    <message>
        <source>none claimed</source>
        <translation>aucune invoquée</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>not read in this round: {1} of {2} terminals ({3}); read them</source>
        <translation>sans mesure à ce passage&#xa0;: {1} des {2} terminaux ({3})&#xa0;; mesurez-les</translation>
    </message>
    <message>
        <source>not read yet; read it, or mark it as unreadable with the reason</source>
        <translation>pas encore mesuré&#xa0;; mesurez, ou marquez illisible avec le motif</translation>
    </message>
    <message>
        <source>not read; stop the pump, read both gauges and enter them as pumps off</source>
        <translation>non lu&#xa0;; arrêtez la pompe, lisez les deux manomètres et saisissez-les comme pompes arrêtées</translation>
    </message>
    <message>
        <source>not trusted: its chain does not lead to a certificate you gave; ask the signer&apos;s firm for its root certificate</source>
        <translation>pas de confiance&#xa0;: sa chaîne ne mène à aucun certificat que vous avez donné&#xa0;; demandez à la société du signataire son certificat racine</translation>
    </message>
    <message>
        <source>not trusted: no root certificate was given; give that of the signer&apos;s firm as PEM</source>
        <translation>pas de confiance&#xa0;: aucun certificat racine donné&#xa0;; donnez celui de la société du signataire en PEM</translation>
    </message>
    <message>
        <source>not trusted: nobody else vouches for the name; compare the fingerprint {1} with the signer</source>
        <translation>pas de confiance&#xa0;: personne d’autre ne garantit le nom&#xa0;; comparez l’empreinte {1} avec celle que donne le signataire</translation>
    </message>
    <message>
        <source>nothing has been read yet; take a survey with every valve fully open</source>
        <translation>rien n’a encore été mesuré&#xa0;; faites un relevé avec toutes les vannes ouvertes en grand</translation>
    </message>
    <message>
        <source>nothing is left to choose from merging</source>
        <translation>rien ne reste à choisir de la fusion</translation>
    </message>
    <message>
        <source>nothing is missing</source>
        <translation>rien ne manque</translation>
    </message>
    <message>
        <source>nothing was read at setting {1} yet; type the dp read there, then hold</source>
        <translation>rien n’a encore été mesuré au réglage {1}&#xa0;; tapez la Δp mesurée là, puis tenez</translation>
    </message>
    <message>
        <source>nothing was read here, so its circuit is only known by design; read it</source>
        <translation>rien n’a été mesuré ici, son circuit n’est donc connu que par le calcul&#xa0;; mesurez-le</translation>
    </message>
    <message>
        <source>of target spreads over {1} % in the group {2}, more than {3} %; match the group again</source>
        <translation>de la cible se disperse de {1}&#xa0;% dans le groupe {2}, plus que {3}&#xa0;%&#xa0;; réglez de nouveau le groupe</translation>
    </message>
    <message>
        <source>one of its readings does not fit the others: {1} in round {2}, expected {3} (z {4}); read it again now, that tells which one it is</source>
        <translation>une de ses mesures ne concorde pas avec les autres&#xa0;: {1} au passage {2}, attendu {3} (z {4})&#xa0;; remesurez-la maintenant, cela dira laquelle</translation>
    </message>
    <message>
        <source>only a practice job answers by itself; read the meter and type what it shows</source>
        <translation>seul un chantier d’exercice répond tout seul&#xa0;; lisez l’appareil et tapez ce qu’il montre</translation>
    </message>
    <message>
        <source>open for changes by {1} on {2} since {3} (process {4}), so it can only be read here; close it there first</source>
        <translation>ouvert en modification par {1} sur {2} depuis {3} (processus {4}), donc seulement lisible ici&#xa0;; fermez-le d’abord là-bas</translation>
    </message>
    <message>
        <source>outside {3} % around their target share: {1} of {2} branches ({4}), the farthest is {5} with {6} % of target; adjust them</source>
        <translation>hors de {3}&#xa0;% autour de leur part cible&#xa0;: {1} des {2} branches ({4}), la plus éloignée est {5} avec {6}&#xa0;% de la cible&#xa0;; réglez-les</translation>
    </message>
    <message>
        <source>outside {3} to {4} % of design flow: {1} of {2} terminals ({5}), the farthest is {6} with {7} %; bring the total to design flow or record why not</source>
        <translation>hors de {3} à {4}&#xa0;% du débit nominal&#xa0;: {1} des {2} terminaux ({5}), le plus éloigné est {6} avec {7}&#xa0;%&#xa0;; amenez le total au nominal ou notez pourquoi non</translation>
    </message>
    <message>
        <source>power from slip is rough: the plate&apos;s slip may be off by 20 %; use a stroboscope good to 1 rpm</source>
        <translation>la puissance par glissement est grossière&#xa0;: le glissement de plaque peut être faux de 20&#xa0;%&#xa0;; prenez un stroboscope à 1 tr/min près</translation>
    </message>
    <message>
        <source>power into the water over shaft power is {1} %, outside 20 to 90 %; check flow, head and motor readings</source>
        <translation>la puissance à l’eau sur la puissance à l’arbre est {1}&#xa0;%, hors de 20 à 90&#xa0;%&#xa0;; vérifiez débit, hauteur et mesures du moteur</translation>
    </message>
    <message>
        <source>pressure falls to {1} below the surrounding air here while the pump runs, so air is drawn in at any leak; raise the fill pressure, or move the vessel to the pump&apos;s suction</source>
        <translation>la pression tombe ici à {1} sous l’air ambiant pompe en marche, de l’air entre donc à toute fuite&#xa0;; montez la pression de remplissage, ou placez le vase à l’aspiration de la pompe</translation>
    </message>
    <message>
        <source>proved: every valve on the index path {1} fully open, one in every group, and the pump&apos;s discharge valve</source>
        <translation>prouvé&#xa0;: chaque vanne du chemin défavorisé {1} ouverte en grand, une par groupe, et la vanne de refoulement de la pompe</translation>
    </message>
    <message>
        <source>r  read more than once; the mean counts</source>
        <translation>r  mesuré plus d’une fois&#xa0;; la moyenne compte</translation>
    </message>
    <message>
        <source>read again it takes {1}, {2} % of the {3} reported; find out why, a sample of which more than 10 % deviates calls for reading all again</source>
        <translation>remesurée elle prend {1}, {2}&#xa0;% des {3} rapportés&#xa0;; trouvez pourquoi, un échantillon dont plus de 10&#xa0;% s’écarte demande de tout remesurer</translation>
    </message>
    <message>
        <source>read the dp of this valve as it stands; the largest uncertainty of a share falls by {1} %</source>
        <translation>mesurez la Δp de cette vanne telle qu’elle est&#xa0;; la plus grande incertitude d’une part baisse de {1}&#xa0;%</translation>
    </message>
    <message>
        <source>read this valve again as it stands; the largest uncertainty of a share falls by {1} %</source>
        <translation>remesurez cette vanne telle qu’elle est&#xa0;; la plus grande incertitude d’une part baisse de {1}&#xa0;%</translation>
    </message>
    <message>
        <source>record {1} of the journal does not follow from those before it; the file was changed by another program or is damaged, open a copy from before</source>
        <translation>l’enregistrement {1} du journal ne suit pas les précédents&#xa0;; le fichier a été changé par un autre programme ou est endommagé, ouvrez une copie antérieure</translation>
    </message>
    <message>
        <source>round {1} has a reading number {2} already; give this one the next number</source>
        <translation>le passage {1} a déjà une mesure numéro {2}&#xa0;; donnez à celle-ci le numéro suivant</translation>
    </message>
    <message>
        <source>round {1} is &quot;{2}&quot; in an earlier row; write the same kind in all its rows</source>
        <translation>le passage {1} est «&#xa0;{2}&#xa0;» dans une ligne antérieure&#xa0;; écrivez le même type dans toutes ses lignes</translation>
    </message>
    <message>
        <source>round {1} is accepted and takes no more changes; open a new round</source>
        <translation>le passage {1} est accepté et n’admet plus de changement&#xa0;; ouvrez un nouveau passage</translation>
    </message>
    <message>
        <source>round {1} is accepted and takes no more readings; open a new round</source>
        <translation>le passage {1} est accepté et n’admet plus de mesures&#xa0;; ouvrez un nouveau passage</translation>
    </message>
    <message>
        <source>round {1} is closed already; open a new round</source>
        <translation>le passage {1} est déjà clos&#xa0;; ouvrez un nouveau passage</translation>
    </message>
    <message>
        <source>round {1} is closed and takes only corrections of its readings; open a new round for new readings</source>
        <translation>le passage {1} est clos et n’admet que des corrections de ses mesures&#xa0;; ouvrez un nouveau passage pour de nouvelles mesures</translation>
    </message>
    <message>
        <source>round {1} is sent by nobody; say who works at this desk, Round, Person</source>
        <translation>le passage {1} n’est envoyé par personne&#xa0;; dites qui travaille à ce poste, Passage, Personne</translation>
    </message>
    <message>
        <source>round {1} is still open; close it before opening the next</source>
        <translation>le passage {1} est encore ouvert&#xa0;; clôturez-le avant d’ouvrir le suivant</translation>
    </message>
    <message>
        <source>round {1} stands twice; keep one row for it</source>
        <translation>le passage {1} figure deux fois&#xa0;; gardez une ligne</translation>
    </message>
    <message>
        <source>rounds that are not accepted: {1}; have them accepted or give the reason</source>
        <translation>passages non acceptés&#xa0;: {1}&#xa0;; faites-les accepter ou donnez le motif</translation>
    </message>
    <message>
        <source>row {1} is named, but its table has {2} rows; give the number of one, the first is 1</source>
        <translation>la ligne {1} est nommée, mais sa table a {2} lignes&#xa0;; donnez un numéro valable, le premier est 1</translation>
    </message>
    <message>
        <source>s  flow is the sum of the branches behind it</source>
        <translation>s  le débit est la somme des branches en aval</translation>
    </message>
    <message>
        <source>self-acting valves that work outside their range: {1} ({2}); bring their dp into the range</source>
        <translation>vannes automatiques hors de leur plage&#xa0;: {1} ({2})&#xa0;; ramenez leur Δp dans la plage</translation>
    </message>
    <message>
        <source>setting {1} is outside the valve&apos;s scale, {2} to {3}; give a setting on the scale</source>
        <translation>le réglage {1} est hors de l’échelle de la vanne, {2} à {3}&#xa0;; donnez un réglage de l’échelle</translation>
    </message>
    <message>
        <source>setting {1} lies outside the valve&apos;s table, {2} to {3}, so there is no flow; correct the setting</source>
        <translation>le réglage {1} est hors de la table de vanne, {2} à {3}, il n’y a donc pas de débit&#xa0;; corrigez le réglage</translation>
    </message>
    <message>
        <source>setting {1} stands twice in the valve table; keep one row for it</source>
        <translation>le réglage {1} figure deux fois dans la table de vanne&#xa0;; gardez une ligne</translation>
    </message>
    <message>
        <source>shut this valve for a moment, read the dp across it and set it back to {1}: it shows the head available here; the largest uncertainty of a share falls by {2} %</source>
        <translation>fermez un instant cette vanne, mesurez la Δp à ses bornes et remettez-la à {1}&#xa0;: elle montre la hauteur disponible ici&#xa0;; la plus grande incertitude d’une part baisse de {2}&#xa0;%</translation>
    </message>
    <message>
        <source>signed by</source>
        <translation>signé par</translation>
    </message>
    <message>
        <source>signer</source>
        <translation>signataire</translation>
    </message>
    <message>
        <source>solved with this impeller or speed the loop takes {1} % of design flow; the affinity laws do not hold for this loop, take the solved figure</source>
        <translation>calculée avec cette roue ou vitesse, la boucle prend {1}&#xa0;% du débit nominal&#xa0;; les lois de similitude ne valent pas ici, prenez le chiffre calculé</translation>
    </message>
    <message>
        <source>some design losses are far from what is read, so less is made of them all; check the schedule</source>
        <translation>certaines pertes nominales sont loin des mesures, on s’y fie donc moins à toutes&#xa0;; vérifiez la liste</translation>
    </message>
    <message>
        <source>some running pumps stand in series and some in parallel; mark all alike, or test each set by itself</source>
        <translation>des pompes en marche sont en série et d’autres en parallèle&#xa0;; marquez-les toutes pareil, ou essayez chaque ensemble seul</translation>
    </message>
    <message>
        <source>something was added behind the last signature; do not rely on this file, ask for it again</source>
        <translation>quelque chose a été ajouté après la dernière signature&#xa0;; ne vous fiez pas à ce fichier, redemandez-le</translation>
    </message>
    <message>
        <source>strong enough at full speed</source>
        <translation>assez puissant à pleine vitesse</translation>
    </message>
    <message>
        <source>terminals nearer to the limit of design flow than they can be read: {1} ({2}); read more accurately</source>
        <translation>terminaux plus proches de la limite du débit nominal que la mesure ne distingue&#xa0;: {1} ({2})&#xa0;; mesurez plus précisément</translation>
    </message>
    <message>
        <source>text stands beside a quoted cell; quote the whole cell and write a quotation mark within it twice</source>
        <translation>du texte accompagne une cellule entre guillemets&#xa0;; mettez toute la cellule entre guillemets et doublez-les à l’intérieur</translation>
    </message>
    <message>
        <source>the NPSH required at {1} is {2}; it must not be below zero, correct this row</source>
        <translation>le NPSH requis à {1} est {2}&#xa0;; il ne peut être sous zéro, corrigez cette ligne</translation>
    </message>
    <message>
        <source>the PDF already has fields for signatures; begin from a report without them</source>
        <translation>le PDF a déjà des champs de signature&#xa0;; partez d’un rapport sans eux</translation>
    </message>
    <message>
        <source>the PDF carries no signature, so nothing proves it; ask for the signed report</source>
        <translation>le PDF ne porte pas de signature, rien ne l’authentifie donc&#xa0;; demandez le rapport signé</translation>
    </message>
    <message>
        <source>the balance of round {1} and any report signed on it no longer hold once this change is made; balance again and sign a new report</source>
        <translation>l’équilibrage du passage {1} et tout rapport signé dessus ne valent plus une fois ce changement fait&#xa0;; rééquilibrez et signez un nouveau rapport</translation>
    </message>
    <message>
        <source>the balancing device has no table, so its flow cannot be read; enter model, size and table</source>
        <translation>l’organe d’équilibrage n’a pas de table, son débit est donc illisible&#xa0;; saisissez modèle, taille et table</translation>
    </message>
    <message>
        <source>the cell is empty; give a value</source>
        <translation>la cellule est vide&#xa0;; donnez une valeur</translation>
    </message>
    <message>
        <source>the certificate of {1} begins on {2}; check this computer&apos;s clock or use another key</source>
        <translation>le certificat de {1} n’est valable qu’à partir du {2}&#xa0;; vérifiez l’horloge de cet ordinateur ou prenez une autre clé</translation>
    </message>
    <message>
        <source>the certificate of {1} ended on {2}; ask its issuer for a new one</source>
        <translation>le certificat de {1} a expiré le {2}&#xa0;; demandez-en un nouveau à son émetteur</translation>
    </message>
    <message>
        <source>the certificate of {1} is not made for signing documents; use one with digital signature or non-repudiation among its uses</source>
        <translation>le certificat de {1} n’est pas fait pour signer des documents&#xa0;; prenez-en un avec signature numérique ou non-répudiation parmi ses usages</translation>
    </message>
    <message>
        <source>the changes of record {1} of the journal do not fit what was stored before; the file was changed by another program, open a copy from before</source>
        <translation>les changements de l’enregistrement {1} du journal ne concordent pas avec ce qui précède&#xa0;; le fichier a été changé par un autre programme, ouvrez une copie antérieure</translation>
    </message>
    <message>
        <source>the changes of the other copy do not fit together ({1}), so nothing was taken over; verify both files</source>
        <translation>les changements de l’autre copie ne vont pas ensemble ({1}), rien n’a donc été repris&#xa0;; vérifiez les deux fichiers</translation>
    </message>
    <message>
        <source>the circuit has no design flow; ask the designer and enter it</source>
        <translation>le circuit n’a pas de débit nominal&#xa0;; demandez au concepteur et saisissez-le</translation>
    </message>
    <message>
        <source>the coefficient at setting {1} is {2}; only the lowest setting may have 0, all others must be above 0</source>
        <translation>le coefficient au réglage {1} est {2}&#xa0;; seul le plus petit réglage peut avoir 0, les autres doivent dépasser 0</translation>
    </message>
    <message>
        <source>the coefficient falls from {1} to {2} between settings {3} and {4}; correct the table, a valve passes more as it opens</source>
        <translation>le coefficient baisse de {1} à {2} entre les réglages {3} et {4}&#xa0;; corrigez la table, une vanne passe plus en s’ouvrant</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; has no unit; write it without brackets</source>
        <translation>la colonne «&#xa0;{1}&#xa0;» n’a pas d’unité&#xa0;; écrivez-la sans crochets</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; is missing; add it to the header row</source>
        <translation>la colonne «&#xa0;{1}&#xa0;» manque&#xa0;; ajoutez-la à l’en-tête</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; is not known; did you mean &quot;{2}&quot;? Known are: {3}</source>
        <translation>la colonne «&#xa0;{1}&#xa0;» est inconnue&#xa0;; vouliez-vous «&#xa0;{2}&#xa0;»&#xa0;? Connues&#xa0;: {3}</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; needs its unit in brackets; use one of {2}</source>
        <translation>la colonne «&#xa0;{1}&#xa0;» demande son unité entre crochets&#xa0;; prenez l’une de {2}</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; stands twice; keep one of them</source>
        <translation>la colonne «&#xa0;{1}&#xa0;» figure deux fois&#xa0;; gardez-en une</translation>
    </message>
    <message>
        <source>the currents of the phases differ by {1} % of their mean, more than {2} %; have the motor and its supply checked by a licensed electrician</source>
        <translation>les intensités des phases diffèrent de {1}&#xa0;% de leur moyenne, plus de {2}&#xa0;%&#xa0;; faites contrôler moteur et alimentation par un électricien habilité</translation>
    </message>
    <message>
        <source>the curve is flat here: the uncertainty of the head makes the flow {1} to {2}; use a meter or the sum of the terminals</source>
        <translation>la courbe est plate ici&#xa0;: l’incertitude de la hauteur donne un débit de {1} à {2}&#xa0;; prenez un débitmètre ou la somme des terminaux</translation>
    </message>
    <message>
        <source>the curve of the {1} impeller does not lie below that of the {2} impeller; check the diameters of these rows</source>
        <translation>la courbe de la roue {1} n’est pas sous celle de la roue {2}&#xa0;; vérifiez les diamètres de ces lignes</translation>
    </message>
    <message>
        <source>the density is {1} kg/m3; it must be above 0</source>
        <translation>la masse volumique est {1} kg/m3&#xa0;; elle doit dépasser 0</translation>
    </message>
    <message>
        <source>the design flow is not known; enter it, its losses are stated at that flow</source>
        <translation>le débit nominal est inconnu&#xa0;; saisissez-le, ses pertes sont données à ce débit</translation>
    </message>
    <message>
        <source>the device has {1} diameters of straight pipe before and {2} behind it and needs {3} and {4}; its flow is {5} % less certain, move it or say so in the report</source>
        <translation>l’organe a {1} diamètres de longueur droite en amont et {2} en aval, il en demande {3} et {4}&#xa0;; son débit est {5}&#xa0;% moins sûr, déplacez-le ou dites-le dans le rapport</translation>
    </message>
    <message>
        <source>the diameter lies beyond the smallest curve of the family; ask the maker before cutting</source>
        <translation>le diamètre dépasse la plus petite courbe de la famille&#xa0;; demandez au fabricant avant de rogner</translation>
    </message>
    <message>
        <source>the discharge gauge shows {1} less than the suction gauge; swap the readings, or check that the pump turns the right way and its valves are open</source>
        <translation>le manomètre de refoulement montre {1} de moins que celui d’aspiration&#xa0;; échangez les lectures, ou vérifiez que la pompe tourne dans le bon sens et que ses vannes sont ouvertes</translation>
    </message>
    <message>
        <source>the discharge valve of this pump stands at {1}, not fully open at {2}; open it and trim or slow the pump, or claim an exception</source>
        <translation>la vanne de refoulement de cette pompe est à {1}, pas ouverte en grand à {2}&#xa0;; ouvrez-la et rognez ou ralentissez la pompe, ou invoquez une exception</translation>
    </message>
    <message>
        <source>the dp of the set-point is not entered; enter what the sensor read</source>
        <translation>la Δp de la consigne n’est pas saisie&#xa0;; saisissez ce que le capteur a lu</translation>
    </message>
    <message>
        <source>the dp range of this self-acting valve is not entered; enter it, it is what is verified</source>
        <translation>la plage de Δp de cette vanne automatique n’est pas saisie&#xa0;; saisissez-la, c’est elle qu’on vérifie</translation>
    </message>
    <message>
        <source>the dp range of this self-acting valve is not known; enter minimum_dp in its valve table</source>
        <translation>la plage de Δp de cette vanne automatique est inconnue&#xa0;; saisissez minimum_dp dans sa table de vanne</translation>
    </message>
    <message>
        <source>the drive&apos;s losses are not known and are left out; enter its efficiency</source>
        <translation>les pertes du variateur sont inconnues et omises&#xa0;; saisissez son rendement</translation>
    </message>
    <message>
        <source>the efficiency at {1} is {2} %; it must lie between 0 and 100 %, correct this row</source>
        <translation>le rendement à {1} est {2}&#xa0;%&#xa0;; il doit être entre 0 et 100&#xa0;%, corrigez cette ligne</translation>
    </message>
    <message>
        <source>the exponent of the loss is {1}; it must lie between 1 and 4, water has 1.7 to 2</source>
        <translation>l’exposant de la perte est {1}&#xa0;; il doit être entre 1 et 4, l’eau a 1.7 à 2</translation>
    </message>
    <message>
        <source>the factor on the pump curve is {1}; it must be above 0</source>
        <translation>le facteur sur la courbe est {1}&#xa0;; il doit dépasser 0</translation>
    </message>
    <message>
        <source>the file &quot;{1}&quot; has more than {2} MB; make it smaller</source>
        <translation>le fichier «&#xa0;{1}&#xa0;» dépasse {2} Mo&#xa0;; réduisez-le</translation>
    </message>
    <message>
        <source>the file has {1} MB, more than the {2} MB that a table may have; split it or correct it</source>
        <translation>le fichier fait {1} Mo, plus que les {2} Mo d’une table&#xa0;; coupez-le ou corrigez-le</translation>
    </message>
    <message>
        <source>the file holds no key with its own certificate; export both together</source>
        <translation>le fichier ne contient pas de clé avec son certificat&#xa0;; exportez les deux ensemble</translation>
    </message>
    <message>
        <source>the file is empty, so nothing can be read from it; open a copy of it</source>
        <translation>le fichier est vide, rien n’y est lisible&#xa0;; ouvrez-en une copie</translation>
    </message>
    <message>
        <source>the file is empty; give it a header row and data</source>
        <translation>le fichier est vide&#xa0;; donnez-lui un en-tête et des données</translation>
    </message>
    <message>
        <source>the file is missing; put it into the folder</source>
        <translation>le fichier manque&#xa0;; mettez-le dans le dossier</translation>
    </message>
    <message>
        <source>the file is not UTF-8 (it looks like UTF-16); save it as &quot;CSV UTF-8&quot;</source>
        <translation>le fichier n’est pas en UTF-8 (il ressemble à UTF-16)&#xa0;; enregistrez-le en «&#xa0;CSV UTF-8&#xa0;»</translation>
    </message>
    <message>
        <source>the file was last changed by a newer program and can only be read; to change it, install version {1} or later</source>
        <translation>le fichier a été changé par un programme plus récent et ne peut qu’être lu&#xa0;; pour le changer, installez la version {1} ou ultérieure</translation>
    </message>
    <message>
        <source>the fill pressure is not entered, so only differences of pressure are right; read it at the expansion vessel with the pumps off and enter it in Job</source>
        <translation>la pression de remplissage n’est pas saisie, seules les différences de pression sont donc justes&#xa0;; lisez-la au vase d’expansion pompes arrêtées et saisissez-la dans Chantier</translation>
    </message>
    <message>
        <source>the final flow is {1} % of design, outside {2} to {3} %; adjust it, or list the deficiency that keeps it there, the report cannot be signed before</source>
        <translation>le débit final est {1}&#xa0;% du nominal, hors de {2} à {3}&#xa0;%&#xa0;; réglez-le, ou notez la réserve qui l’y retient, le rapport ne peut être signé avant</translation>
    </message>
    <message>
        <source>the first signer allowed no later change, yet there is one; do not rely on this file, ask for it again</source>
        <translation>le premier signataire n’admettait aucun changement, or il y en a un&#xa0;; ne vous fiez pas à ce fichier, redemandez-le</translation>
    </message>
    <message>
        <source>the flow at the same pump head changed by {1} % since round {2}, with no valve moved; look for air, clogged strainers or moving control valves</source>
        <translation>le débit à même hauteur de pompe a changé de {1}&#xa0;% depuis le passage {2}, sans vanne manœuvrée&#xa0;; cherchez de l’air, des filtres encrassés ou des vannes de régulation mobiles</translation>
    </message>
    <message>
        <source>the flow coefficient is Kv {1}; it must be a number of 0 (shut) or more, correct the setting</source>
        <translation>le coefficient de débit est Kv {1}&#xa0;; il doit être un nombre de 0 (fermée) ou plus, corrigez le réglage</translation>
    </message>
    <message>
        <source>the flow of the group {1} rose from {2} to {3} when valves in it were only closed, which cannot be; read it again</source>
        <translation>le débit du groupe {1} est monté de {2} à {3} quand des vannes s’y fermaient seulement, ce qui est impossible&#xa0;; remesurez-le</translation>
    </message>
    <message>
        <source>the flow read at the pump is {1}, the terminals add up to {2}; check the meter and look for an open bypass</source>
        <translation>le débit mesuré à la pompe est {1}, les terminaux font {2}&#xa0;; vérifiez l’appareil et cherchez un by-pass ouvert</translation>
    </message>
    <message>
        <source>the fluid of the job cannot be used, so all flows are computed for water at 20 C; correct kind, concentration and temperature</source>
        <translation>le fluide du chantier est inutilisable, tous les débits sont donc calculés pour l’eau à 20 C&#xa0;; corrigez nature, concentration et température</translation>
    </message>
    <message>
        <source>the folder cannot be made ({1}); choose a place that can be written</source>
        <translation>le dossier ne peut être créé ({1})&#xa0;; choisissez un lieu accessible en écriture</translation>
    </message>
    <message>
        <source>the folder or the file cannot be written, so the job can only be read; copy the file to a place of your own to change it</source>
        <translation>le dossier ou le fichier n’est pas accessible en écriture, le chantier ne peut donc qu’être lu&#xa0;; copiez le fichier chez vous pour le changer</translation>
    </message>
    <message>
        <source>the group of this valve has no reference yet; read its members in a survey first</source>
        <translation>le groupe de cette vanne n’a pas encore de référence&#xa0;; mesurez d’abord ses membres dans un relevé</translation>
    </message>
    <message>
        <source>the handle stands at {1}, not where it was noted; the setting was corrected, check it</source>
        <translation>la poignée est à {1}, pas où c’était noté&#xa0;; le réglage a été corrigé, vérifiez-le</translation>
    </message>
    <message>
        <source>the head at shutoff lies outside the family of curves, the impeller is a first estimate; check the family</source>
        <translation>la hauteur à débit nul est hors de la famille de courbes, la roue est une première estimation&#xa0;; vérifiez la famille</translation>
    </message>
    <message>
        <source>the head at shutoff says {1} of impeller and the record says {2}; check impeller, direction of turn, speed, wear and air before the curve is trusted</source>
        <translation>la hauteur à débit nul indique une roue de {1} et l’enregistrement {2}&#xa0;; vérifiez roue, sens de rotation, vitesse, usure et air avant de vous fier à la courbe</translation>
    </message>
    <message>
        <source>the head of {1} lies above the curve&apos;s {2} at shutoff, so the curve gives no flow; check gauges, speed and impeller</source>
        <translation>la hauteur de {1} dépasse les {2} de la courbe à débit nul, la courbe ne donne donc pas de débit&#xa0;; vérifiez manomètres, vitesse et roue</translation>
    </message>
    <message>
        <source>the head of {1} lies below the last point of the curve, so the curve gives no flow; get the maker&apos;s curve for this duty</source>
        <translation>la hauteur de {1} est sous le dernier point de la courbe, la courbe ne donne donc pas de débit&#xa0;; obtenez la courbe du fabricant pour ce point de fonctionnement</translation>
    </message>
    <message>
        <source>the head required is {1} by one way and {2} by another; find out why before the pump is changed</source>
        <translation>la hauteur requise est {1} par une méthode et {2} par une autre&#xa0;; trouvez pourquoi avant de changer la pompe</translation>
    </message>
    <message>
        <source>the head rises from {1} to {2} between {3} and {4}; check these points, the duty is not unique on a rising curve</source>
        <translation>la hauteur monte de {1} à {2} entre {3} et {4}&#xa0;; vérifiez ces points, le point de fonctionnement n’est pas unique sur une courbe montante</translation>
    </message>
    <message>
        <source>the head stays at {1} between {2} and {3}; write one more digit or leave one of the rows out, the duty is not unique on a level curve</source>
        <translation>la hauteur reste à {1} entre {2} et {3}&#xa0;; écrivez un chiffre de plus ou omettez une ligne, le point de fonctionnement n’est pas unique sur une courbe plate</translation>
    </message>
    <message>
        <source>the head that the index circuit needs is not known; enter the design losses, or finish a round whose shares are within the band</source>
        <translation>la hauteur que demande le circuit défavorisé est inconnue&#xa0;; saisissez les pertes nominales, ou finissez un passage dont les parts sont dans la bande</translation>
    </message>
    <message>
        <source>the head with flow, {1}, is not below the head at shutoff, {2}; read one of them again</source>
        <translation>la hauteur avec débit, {1}, n’est pas sous la hauteur à débit nul, {2}&#xa0;; remesurez l’une d’elles</translation>
    </message>
    <message>
        <source>the height of this unit over the pump is not entered, so it counts as level with the pump; enter it</source>
        <translation>le niveau de cette unité au-dessus de la pompe n’est pas saisi, elle compte donc à hauteur de pompe&#xa0;; saisissez-le</translation>
    </message>
    <message>
        <source>the impeller diameter at {1} is {2}; it must be above 0, correct this row</source>
        <translation>le diamètre de roue à {1} est {2}&#xa0;; il doit dépasser 0, corrigez cette ligne</translation>
    </message>
    <message>
        <source>the impeller is {1} of the curve&apos;s own diameter; it must be above 0</source>
        <translation>la roue est {1} du diamètre de la courbe&#xa0;; elle doit dépasser 0</translation>
    </message>
    <message>
        <source>the impeller would be {1} % of the largest that the casing takes, below {2} %; ask the maker, slow the pump or replace it</source>
        <translation>la roue serait {1}&#xa0;% de la plus grande du corps, sous {2}&#xa0;%&#xa0;; demandez au fabricant, ralentissez la pompe ou remplacez-la</translation>
    </message>
    <message>
        <source>the impeller would be {1}, below the least of {2} for this casing; do not trim, slow the pump or replace it</source>
        <translation>la roue serait {1}, sous le minimum de {2} pour ce corps&#xa0;; ne rognez pas, ralentissez la pompe ou remplacez-la</translation>
    </message>
    <message>
        <source>the impeller would come below the maker&apos;s minimum of {1}; change the speed or the pump instead</source>
        <translation>la roue passerait sous le minimum de {1} du fabricant&#xa0;; changez plutôt la vitesse ou la pompe</translation>
    </message>
    <message>
        <source>the impeller {1} is smaller than its minimum {2}; correct one of them</source>
        <translation>la roue {1} est plus petite que son minimum {2}&#xa0;; corrigez l’un d’eux</translation>
    </message>
    <message>
        <source>the index circuit is known and fully open along its path</source>
        <translation>le circuit défavorisé est connu et ouvert en grand sur son chemin</translation>
    </message>
    <message>
        <source>the index circuit is not fully open along its path; open its valves or give the reason</source>
        <translation>le circuit défavorisé n’est pas ouvert en grand sur son chemin&#xa0;; ouvrez ses vannes ou donnez le motif</translation>
    </message>
    <message>
        <source>the index circuit is not known from this round, so nothing can be proved; read every terminal</source>
        <translation>le circuit défavorisé n’est pas connu par ce passage, rien ne peut donc être prouvé&#xa0;; mesurez chaque terminal</translation>
    </message>
    <message>
        <source>the index circuit moves from {1} to {2}; open every valve on the new path</source>
        <translation>le circuit défavorisé passe de {1} à {2}&#xa0;; ouvrez chaque vanne du nouveau chemin</translation>
    </message>
    <message>
        <source>the index is a self-acting valve: the set-point must leave it the start of its range, {1}; read its dp at this set-point</source>
        <translation>le point défavorisé est une vanne automatique&#xa0;: la consigne doit lui laisser le début de sa plage, {1}&#xa0;; mesurez sa Δp à cette consigne</translation>
    </message>
    <message>
        <source>the instrument &quot;{1}&quot; is not in the job; did you mean &quot;{2}&quot;?</source>
        <translation>l’instrument «&#xa0;{1}&#xa0;» n’est pas dans le chantier&#xa0;; vouliez-vous «&#xa0;{2}&#xa0;»&#xa0;?</translation>
    </message>
    <message>
        <source>the instrument &quot;{1}&quot; stands twice; give every instrument its own tag</source>
        <translation>l’instrument «&#xa0;{1}&#xa0;» figure deux fois&#xa0;; donnez à chaque instrument son propre repère</translation>
    </message>
    <message>
        <source>the instrument was calibrated on {1}, after it was used on {2}; keep the certificate that held then</source>
        <translation>l’instrument a été étalonné le {1}, après usage le {2}&#xa0;; gardez le certificat alors valable</translation>
    </message>
    <message>
        <source>the instrument was used, but its calibration due date is not given; enter it</source>
        <translation>l’instrument a servi, mais son échéance d’étalonnage n’est pas donnée&#xa0;; saisissez-la</translation>
    </message>
    <message>
        <source>the job has no branches; add the first one in System</source>
        <translation>le chantier n’a pas de branches&#xa0;; ajoutez la première dans Réseau</translation>
    </message>
    <message>
        <source>the job has no branches; add them before reading</source>
        <translation>le chantier n’a pas de branches&#xa0;; ajoutez-les avant de mesurer</translation>
    </message>
    <message>
        <source>the job has no name; add a row with the key &quot;name&quot;</source>
        <translation>le chantier n’a pas de nom&#xa0;; ajoutez une ligne à la clé «&#xa0;name&#xa0;»</translation>
    </message>
    <message>
        <source>the job has no pump yet; add one on the page Pump Data</source>
        <translation>le chantier n’a pas encore de pompe&#xa0;; ajoutez-en une à la page Données pompe</translation>
    </message>
    <message>
        <source>the key &quot;{1}&quot; is not known; did you mean &quot;{2}&quot;? Known are: {3}</source>
        <translation>la clé «&#xa0;{1}&#xa0;» est inconnue&#xa0;; vouliez-vous «&#xa0;{2}&#xa0;»&#xa0;? Connues&#xa0;: {3}</translation>
    </message>
    <message>
        <source>the key &quot;{1}&quot; stands twice; keep one row for it</source>
        <translation>la clé «&#xa0;{1}&#xa0;» figure deux fois&#xa0;; gardez une ligne</translation>
    </message>
    <message>
        <source>the key could not be written to {1} ({2}); choose a folder that can be written</source>
        <translation>la clé n’a pu être écrite dans {1} ({2})&#xa0;; choisissez un dossier accessible en écriture</translation>
    </message>
    <message>
        <source>the key is locked by a cipher that is no longer safe; export it again with a present-day program</source>
        <translation>la clé est protégée par un chiffrement qui n’est plus sûr&#xa0;; exportez-la de nouveau avec un programme actuel</translation>
    </message>
    <message>
        <source>the key is of a kind that is not used here; use RSA of 2048 bits or more, or a P-256, P-384 or P-521 key</source>
        <translation>la clé est d’un type non utilisé ici&#xa0;; prenez RSA de 2048 bits ou plus, ou une clé P-256, P-384 ou P-521</translation>
    </message>
    <message>
        <source>the kind of round {1} is not given; write one of {2}</source>
        <translation>le type du passage {1} n’est pas donné&#xa0;; écrivez l’un de {2}</translation>
    </message>
    <message>
        <source>the last digits of {1} dps read with instrument {2} are too uneven to be chance, {3} of them end in {4}; check that they were read and not made up</source>
        <translation>les derniers chiffres de {1} Δp mesurées avec l’instrument {2} sont trop inégaux pour être du hasard, {3} finissent par {4}&#xa0;; vérifiez qu’elles ont été mesurées et non inventées</translation>
    </message>
    <message>
        <source>the law of trimming cuts too much, by 15 to 20 % of the change; cut first to {1} (three quarters of the calculated cut), test, and cut again</source>
        <translation>la loi du rognage enlève trop, de 15 à 20&#xa0;% du changement&#xa0;; rognez d’abord à {1} (trois quarts du rognage calculé), essayez, puis rognez encore</translation>
    </message>
    <message>
        <source>the learning did not settle; look at the doubtful readings and the design losses</source>
        <translation>l’apprentissage n’a pas convergé&#xa0;; voyez les mesures douteuses et les pertes nominales</translation>
    </message>
    <message>
        <source>the learning was stopped; start it again</source>
        <translation>l’apprentissage a été arrêté&#xa0;; relancez-le</translation>
    </message>
    <message>
        <source>the line is longer than {1} characters; it is no row of a table, correct it</source>
        <translation>la ligne dépasse {1} caractères&#xa0;; ce n’est pas une ligne de table, corrigez-la</translation>
    </message>
    <message>
        <source>the link ends at node &quot;{1}&quot;, which does not exist; correct the name or add the node</source>
        <translation>le lien finit au nœud «&#xa0;{1}&#xa0;», qui n’existe pas&#xa0;; corrigez le nom ou ajoutez le nœud</translation>
    </message>
    <message>
        <source>the link is given twice; give every link its own name</source>
        <translation>le lien est donné deux fois&#xa0;; donnez à chaque lien son propre nom</translation>
    </message>
    <message>
        <source>the link starts and ends at node &quot;{1}&quot;; join it to two different nodes</source>
        <translation>le lien commence et finit au nœud «&#xa0;{1}&#xa0;»&#xa0;; reliez-le à deux nœuds différents</translation>
    </message>
    <message>
        <source>the loss of this circuit is not known; enter circuit_loss from the design, or learn it from a survey</source>
        <translation>la perte de ce circuit est inconnue&#xa0;; saisissez circuit_loss d’après le calcul, ou apprenez-la d’un relevé</translation>
    </message>
    <message>
        <source>the loss of {1} Pa at {2} m3/s is no point of a loss; both must be above 0</source>
        <translation>la perte de {1} Pa à {2} m3/s n’est pas un point de perte&#xa0;; les deux doivent dépasser 0</translation>
    </message>
    <message>
        <source>the low limit of {1} stands above the high limit of {2}; correct them</source>
        <translation>la limite basse de {1} dépasse la limite haute de {2}&#xa0;; corrigez-les</translation>
    </message>
    <message>
        <source>the lower limit {1} % is not below the upper limit {2} %; correct one of them</source>
        <translation>la limite basse {1}&#xa0;% n’est pas sous la limite haute {2}&#xa0;%&#xa0;; corrigez l’une d’elles</translation>
    </message>
    <message>
        <source>the metered input power is chosen: it needs no power factor</source>
        <translation>la puissance absorbée mesurée est retenue&#xa0;: elle ne demande pas de facteur de puissance</translation>
    </message>
    <message>
        <source>the motor draws {1} A, above its plate of {2} A and within its service factor; do not leave it there</source>
        <translation>le moteur absorbe {1} A, au-dessus de sa plaque de {2} A et dans son facteur de service&#xa0;; ne l’y laissez pas</translation>
    </message>
    <message>
        <source>the motor draws {1} A, more than plate times service factor, {2} A; throttle the pump&apos;s discharge at once and find out why</source>
        <translation>le moteur absorbe {1} A, plus que plaque fois facteur de service, {2} A&#xa0;; étranglez aussitôt le refoulement de la pompe et trouvez pourquoi</translation>
    </message>
    <message>
        <source>the motor draws {1}, its plate allows {2}; throttle the pump&apos;s discharge before going on, or the motor may be damaged</source>
        <translation>le moteur absorbe {1}, sa plaque permet {2}&#xa0;; étranglez le refoulement de la pompe avant de continuer, sinon le moteur peut s’abîmer</translation>
    </message>
    <message>
        <source>the motor is {1}: a large pump heats its water within seconds; have the permission of whoever runs the plant</source>
        <translation>le moteur fait {1}&#xa0;: une grosse pompe chauffe son eau en quelques secondes&#xa0;; ayez l’accord de l’exploitant</translation>
    </message>
    <message>
        <source>the motor&apos;s efficiency is not entered, so no energy is computed; enter it with the pump</source>
        <translation>le rendement du moteur n’est pas saisi, aucune énergie n’est donc calculée&#xa0;; saisissez-le avec la pompe</translation>
    </message>
    <message>
        <source>the motor&apos;s efficiency is the plate&apos;s, at full load; take it at the present load from the maker&apos;s data</source>
        <translation>le rendement du moteur est celui de plaque, à pleine charge&#xa0;; prenez-le à la charge actuelle dans les données du fabricant</translation>
    </message>
    <message>
        <source>the motor&apos;s plate power is not entered, so the clause cannot be tested; enter it</source>
        <translation>la puissance de plaque du moteur n’est pas saisie, l’article ne peut donc être testé&#xa0;; saisissez-la</translation>
    </message>
    <message>
        <source>the motor&apos;s plate, {1}, is not above {2}: the pump need not be trimmed or slowed; keep the balance with the least throttling all the same</source>
        <translation>la plaque du moteur, {1}, ne dépasse pas {2}&#xa0;: la pompe n’a pas à être rognée ni ralentie&#xa0;; gardez tout de même l’équilibrage au moindre étranglement</translation>
    </message>
    <message>
        <source>the motor&apos;s power or the pump&apos;s efficiency is not entered, so the motor is not checked; enter them</source>
        <translation>la puissance du moteur ou le rendement de la pompe n’est pas saisi, le moteur n’est donc pas vérifié&#xa0;; saisissez-les</translation>
    </message>
    <message>
        <source>the motor&apos;s speed of {1} rpm does not lie below its synchronous speed of {2} rpm; read the speed again</source>
        <translation>la vitesse du moteur de {1} tr/min n’est pas sous sa vitesse de synchronisme de {2} tr/min&#xa0;; remesurez la vitesse</translation>
    </message>
    <message>
        <source>the name &quot;{1}&quot; stands twice; keep one row for it</source>
        <translation>le nom «&#xa0;{1}&#xa0;» figure deux fois&#xa0;; gardez une ligne</translation>
    </message>
    <message>
        <source>the network has no links; add at least one circuit</source>
        <translation>le réseau n’a pas de liens&#xa0;; ajoutez au moins un circuit</translation>
    </message>
    <message>
        <source>the new design flow is missing; type it, such as 12.5 gpm or 0.8 L/s</source>
        <translation>le nouveau débit nominal manque&#xa0;; tapez-le, par exemple 12.5 gpm ou 0.8 L/s</translation>
    </message>
    <message>
        <source>the new design flow must be above 0; to take the circuit away, remove it</source>
        <translation>le nouveau débit nominal doit dépasser 0&#xa0;; pour ôter le circuit, supprimez-le</translation>
    </message>
    <message>
        <source>the newest round that was read is no final one; read and close a final round</source>
        <translation>le dernier passage mesuré n’est pas final&#xa0;; mesurez et clôturez un passage final</translation>
    </message>
    <message>
        <source>the next value typed is kept beside the first, the mean counts; type it and press Enter</source>
        <translation>la prochaine valeur tapée est gardée à côté de la première, la moyenne compte&#xa0;; tapez-la puis Entrée</translation>
    </message>
    <message>
        <source>the next value typed takes the place of the doubtful one; type it and press Enter</source>
        <translation>la prochaine valeur tapée remplace la douteuse&#xa0;; tapez-la puis Entrée</translation>
    </message>
    <message>
        <source>the no-load amps of {1} A are not below the plate&apos;s {2} A; correct the no-load reading</source>
        <translation>l’intensité à vide de {1} A n’est pas sous les {2} A de la plaque&#xa0;; corrigez la mesure à vide</translation>
    </message>
    <message>
        <source>the node is given twice; give every node its own name</source>
        <translation>le nœud est donné deux fois&#xa0;; donnez à chaque nœud son propre nom</translation>
    </message>
    <message>
        <source>the number {1} stands twice; give every deficiency its own</source>
        <translation>le numéro {1} figure deux fois&#xa0;; donnez à chaque réserve le sien</translation>
    </message>
    <message>
        <source>the other copy holds nothing that is not here; there is nothing to merge</source>
        <translation>l’autre copie n’a rien qui ne soit ici&#xa0;; il n’y a rien à fusionner</translation>
    </message>
    <message>
        <source>the parent &quot;{1}&quot; is not among the branches; did you mean &quot;{2}&quot;?</source>
        <translation>le parent «&#xa0;{1}&#xa0;» n’est pas parmi les branches&#xa0;; vouliez-vous «&#xa0;{2}&#xa0;»&#xa0;?</translation>
    </message>
    <message>
        <source>the passphrase does not open this key; type it again</source>
        <translation>la phrase secrète n’ouvre pas cette clé&#xa0;; tapez-la de nouveau</translation>
    </message>
    <message>
        <source>the passphrase is shorter than {1} characters; choose a longer one</source>
        <translation>la phrase secrète a moins de {1} caractères&#xa0;; prenez-en une plus longue</translation>
    </message>
    <message>
        <source>the pipe diameters at the taps are not both known, so no velocity head is counted; enter them</source>
        <translation>les diamètres aux prises ne sont pas tous deux connus, aucune hauteur de vitesse n’est donc comptée&#xa0;; saisissez-les</translation>
    </message>
    <message>
        <source>the pipe&apos;s inside diameter is {1} m; it must be above 0</source>
        <translation>le diamètre intérieur du tuyau est {1} m&#xa0;; il doit dépasser 0</translation>
    </message>
    <message>
        <source>the pipe&apos;s length is {1} m; it must be above 0</source>
        <translation>la longueur du tuyau est {1} m&#xa0;; elle doit dépasser 0</translation>
    </message>
    <message>
        <source>the pipe&apos;s roughness is {1} m; it must lie between 0 and a tenth of the inside diameter</source>
        <translation>la rugosité du tuyau est {1} m&#xa0;; elle doit être entre 0 et un dixième du diamètre intérieur</translation>
    </message>
    <message>
        <source>the position of this pump&apos;s discharge valve was not read in the final state; read it</source>
        <translation>la position de la vanne de refoulement de cette pompe n’a pas été lue à l’état final&#xa0;; lisez-la</translation>
    </message>
    <message>
        <source>the power at {1} is {2}; it must be above 0, correct this row</source>
        <translation>la puissance à {1} est {2}&#xa0;; elle doit dépasser 0, corrigez cette ligne</translation>
    </message>
    <message>
        <source>the power factor is the plate&apos;s, at full load; at part load it is lower, so measure it</source>
        <translation>le facteur de puissance est celui de plaque, à pleine charge&#xa0;; à charge partielle il est plus bas, mesurez-le donc</translation>
    </message>
    <message>
        <source>the practice building has no branch {1}; read one of those that the job was made with</source>
        <translation>le bâtiment d’exercice n’a pas de branche {1}&#xa0;; mesurez-en une d’origine du chantier</translation>
    </message>
    <message>
        <source>the practice building has no pump {1}; read the one that the job was made with</source>
        <translation>le bâtiment d’exercice n’a pas de pompe {1}&#xa0;; mesurez celle d’origine du chantier</translation>
    </message>
    <message>
        <source>the pressure is given at a node that does not exist; correct the name</source>
        <translation>la pression est donnée à un nœud qui n’existe pas&#xa0;; corrigez le nom</translation>
    </message>
    <message>
        <source>the pressure is given here and at node &quot;{1}&quot; of the same loop; keep one, a closed loop has one expansion vessel</source>
        <translation>la pression est donnée ici et au nœud «&#xa0;{1}&#xa0;» de la même boucle&#xa0;; gardez-en une, une boucle fermée a un seul vase d’expansion</translation>
    </message>
    <message>
        <source>the program met a defect in itself ({1}); what was stored is safe, close and open the workbook again</source>
        <translation>le programme a rencontré un défaut interne ({1})&#xa0;; ce qui est enregistré est sauf, fermez puis rouvrez le classeur</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; has no rows in pump_curve.csv; give at least two points</source>
        <translation>la pompe «&#xa0;{1}&#xa0;» n’a pas de lignes dans pump_curve.csv&#xa0;; donnez au moins deux points</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; is not in pumps.csv; did you mean &quot;{2}&quot;?</source>
        <translation>la pompe «&#xa0;{1}&#xa0;» n’est pas dans pumps.csv&#xa0;; vouliez-vous «&#xa0;{2}&#xa0;»&#xa0;?</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; is not in the job; did you mean &quot;{2}&quot;?</source>
        <translation>la pompe «&#xa0;{1}&#xa0;» n’est pas dans le chantier&#xa0;; vouliez-vous «&#xa0;{2}&#xa0;»&#xa0;?</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; stands twice; give every pump its own tag</source>
        <translation>la pompe «&#xa0;{1}&#xa0;» figure deux fois&#xa0;; donnez à chaque pompe son propre repère</translation>
    </message>
    <message>
        <source>the pump curve bends sharply at {1} (its slope changes by a factor of {2}); check this point for a slip</source>
        <translation>la courbe plie brusquement à {1} (sa pente change d’un facteur {2})&#xa0;; cherchez une erreur à ce point</translation>
    </message>
    <message>
        <source>the pump curve has flow {1} with head {2}; neither may be below zero, correct this row</source>
        <translation>la courbe a un débit {1} avec hauteur {2}&#xa0;; aucun ne peut être sous zéro, corrigez cette ligne</translation>
    </message>
    <message>
        <source>the pump gives {1} by its curve, the terminals add up to {2}; check gauges, curve and impeller, and look for an open bypass</source>
        <translation>la pompe donne {1} selon sa courbe, les terminaux font {2}&#xa0;; vérifiez manomètres, courbe et roue, et cherchez un by-pass ouvert</translation>
    </message>
    <message>
        <source>the pump has no drive; slowing needs one, or other sheaves, installed by licensed people</source>
        <translation>la pompe n’a pas de variateur&#xa0;; ralentir en demande un, ou d’autres poulies, posés par des personnes agréées</translation>
    </message>
    <message>
        <source>the pump has no usable curve, so it gives no flow; enter at least two points</source>
        <translation>la pompe n’a pas de courbe utilisable, elle ne donne donc pas de débit&#xa0;; saisissez au moins deux points</translation>
    </message>
    <message>
        <source>the pump has no usable curve; enter at least two points of falling head, with the flow of each</source>
        <translation>la pompe n’a pas de courbe utilisable&#xa0;; saisissez au moins deux points de hauteur décroissante, chacun avec son débit</translation>
    </message>
    <message>
        <source>the pump makes no excess head, so both ways leave the same; there is nothing to save</source>
        <translation>la pompe n’a pas de hauteur excédentaire, les deux méthodes laissent donc de même&#xa0;; il n’y a rien à gagner</translation>
    </message>
    <message>
        <source>the pump makes {1} Pa at zero flow; it must be above 0, check the curve</source>
        <translation>la pompe fournit {1} Pa à débit nul&#xa0;; cela doit dépasser 0, vérifiez la courbe</translation>
    </message>
    <message>
        <source>the pump runs at {1} % of full speed, where it makes no excess head; it is reduced as asked, keep it so</source>
        <translation>la pompe tourne à {1}&#xa0;% de la pleine vitesse, sans hauteur excédentaire&#xa0;; elle est réduite comme demandé, gardez-la ainsi</translation>
    </message>
    <message>
        <source>the pump stands still, or it is too weak to move water through the loop; check speed, curve and losses</source>
        <translation>la pompe est arrêtée, ou trop faible pour mouvoir l’eau dans la boucle&#xa0;; vérifiez vitesse, courbe et pertes</translation>
    </message>
    <message>
        <source>the pump would take {1} and the motor may give {2}; a larger motor is needed, ask a licensed electrician</source>
        <translation>la pompe absorberait {1} et le moteur peut donner {2}&#xa0;; il faut un moteur plus grand, demandez à un électricien habilité</translation>
    </message>
    <message>
        <source>the pump&apos;s efficiency is not known, so the excess power cannot be computed; enter it with the curve, or read the motor&apos;s power</source>
        <translation>le rendement de la pompe est inconnu, la puissance excédentaire ne peut donc être calculée&#xa0;; saisissez-le avec la courbe, ou lisez la puissance du moteur</translation>
    </message>
    <message>
        <source>the pump&apos;s first point stands at {1} m3/h; the power law needs its first point at zero flow</source>
        <translation>le premier point de la pompe est à {1} m3/h&#xa0;; la loi de puissance demande le premier à débit nul</translation>
    </message>
    <message>
        <source>the pump&apos;s pressure does not fall from {1} kPa between {2} and {3} m3/h; correct these points</source>
        <translation>la pression de la pompe ne baisse pas depuis {1} kPa entre {2} et {3} m3/h&#xa0;; corrigez ces points</translation>
    </message>
    <message>
        <source>the pump&apos;s specific speed is {1} (rpm, gpm, ft), so its power rises towards shutoff; do not make a shutoff test without the maker&apos;s word</source>
        <translation>la vitesse spécifique de la pompe est {1} (tr/min, gpm, ft), sa puissance monte donc vers le débit nul&#xa0;; ne faites pas d’essai à débit nul sans l’accord du fabricant</translation>
    </message>
    <message>
        <source>the pump&apos;s speed is {1} of rated; it must be a number of 0 (stopped) or more</source>
        <translation>la vitesse de la pompe est {1} du nominal&#xa0;; ce doit être un nombre de 0 (arrêtée) ou plus</translation>
    </message>
    <message>
        <source>the pump&apos;s table gives no efficiencies, so its specific speed is not known; make sure that it is a radial pump before it is run shut</source>
        <translation>la table de la pompe ne donne pas de rendements, sa vitesse spécifique est donc inconnue&#xa0;; assurez-vous que c’est une pompe radiale avant de la faire tourner fermée</translation>
    </message>
    <message>
        <source>the range of constant flow is {1} to {2} Pa; the start must be above 0 and the end above it</source>
        <translation>la plage de débit constant est {1} à {2} Pa&#xa0;; le début doit dépasser 0 et la fin le dépasser</translation>
    </message>
    <message>
        <source>the ratio of amps is chosen: neither power factor nor no-load amps are known</source>
        <translation>le rapport d’intensités est retenu&#xa0;: ni facteur de puissance ni intensité à vide ne sont connus</translation>
    </message>
    <message>
        <source>the ratio of amps reads too high at {1} % load; it holds above about 65 %, prefer another way</source>
        <translation>le rapport d’intensités donne trop haut à {1}&#xa0;% de charge&#xa0;; il vaut au-dessus d’environ 65&#xa0;%, préférez une autre méthode</translation>
    </message>
    <message>
        <source>the readiness list is done</source>
        <translation>la liste de préparation est faite</translation>
    </message>
    <message>
        <source>the readings and the plate allow none of the five ways to the shaft power; read volts, amps and power factor, or the input power</source>
        <translation>mesures et plaque ne permettent aucune des cinq méthodes pour la puissance à l’arbre&#xa0;; lisez tension, intensité et facteur de puissance, ou la puissance absorbée</translation>
    </message>
    <message>
        <source>the reference has not been read; read it first</source>
        <translation>la référence n’a pas été mesurée&#xa0;; mesurez-la d’abord</translation>
    </message>
    <message>
        <source>the reference went from {1} to {2} % of design between its last two readings, more than the band of {3} %; read it again</source>
        <translation>la référence est passée de {1} à {2}&#xa0;% du nominal entre ses deux dernières mesures, plus que la bande de {3}&#xa0;%&#xa0;; remesurez-la</translation>
    </message>
    <message>
        <source>the report could not be written to {1} ({2}); choose a folder that exists and may be written, with room on the disk</source>
        <translation>le rapport n’a pu être écrit dans {1} ({2})&#xa0;; choisissez un dossier existant, accessible en écriture, avec de la place</translation>
    </message>
    <message>
        <source>the report has no page {1}; write the report again</source>
        <translation>le rapport n’a pas de page {1}&#xa0;; réécrivez-le</translation>
    </message>
    <message>
        <source>the report is of another workbook, or of a state that this one never had; open the workbook it names</source>
        <translation>le rapport est d’un autre classeur, ou d’un état que celui-ci n’a jamais eu&#xa0;; ouvrez le classeur qu’il nomme</translation>
    </message>
    <message>
        <source>the report is of this workbook as it stands now</source>
        <translation>le rapport est de ce classeur tel qu’il est maintenant</translation>
    </message>
    <message>
        <source>the report is of this workbook, which was changed since; sign a new report for what stands now</source>
        <translation>le rapport est de ce classeur, changé depuis&#xa0;; signez un nouveau rapport pour l’état actuel</translation>
    </message>
    <message>
        <source>the report is signed, but the workbook could not note it ({1}); open the workbook for changes and sign again under another name</source>
        <translation>le rapport est signé, mais le classeur n’a pu le noter ({1})&#xa0;; ouvrez le classeur en modification et signez de nouveau sous un autre nom</translation>
    </message>
    <message>
        <source>the report was changed after it was signed; write it again, then sign that</source>
        <translation>le rapport a été changé après signature&#xa0;; réécrivez-le, puis signez celui-là</translation>
    </message>
    <message>
        <source>the resistance is {1} Pa/(m3/s)^2; it must be a number of 0 or more, correct it or close the link</source>
        <translation>la résistance est {1} Pa/(m3/s)^2&#xa0;; ce doit être un nombre de 0 ou plus, corrigez-la ou fermez le lien</translation>
    </message>
    <message>
        <source>the row at {1} has no impeller diameter; give one on every row of a family of curves or on none</source>
        <translation>la ligne à {1} n’a pas de diamètre de roue&#xa0;; donnez-en un à chaque ligne d’une famille de courbes ou à aucune</translation>
    </message>
    <message>
        <source>the row corrects row {1} of its round, which has {2} in this table; give the number of another one</source>
        <translation>la ligne corrige la ligne {1} de son passage, qui a {2} dans cette table&#xa0;; donnez le numéro d’une autre</translation>
    </message>
    <message>
        <source>the row has neither setting, dp, flow nor a note; give what was read or take the row out</source>
        <translation>la ligne n’a ni réglage, ni Δp, ni débit, ni note&#xa0;; donnez ce qui a été mesuré ou retirez-la</translation>
    </message>
    <message>
        <source>the row has no reading at all; give what was read or take the row out</source>
        <translation>la ligne n’a aucune mesure&#xa0;; donnez ce qui a été mesuré ou retirez-la</translation>
    </message>
    <message>
        <source>the row has {1} cells and the header {2}; put a text that has a separator into quotation marks</source>
        <translation>la ligne a {1} cellules et l’en-tête {2}&#xa0;; mettez entre guillemets un texte contenant un séparateur</translation>
    </message>
    <message>
        <source>the row names no round; give its number, 1 is the survey</source>
        <translation>la ligne ne nomme aucun passage&#xa0;; donnez son numéro, 1 est le relevé</translation>
    </message>
    <message>
        <source>the row needs one coefficient; give it in the column Cv or Kv, not in both</source>
        <translation>la ligne demande un coefficient&#xa0;; donnez-le dans la colonne Cv ou Kv, pas les deux</translation>
    </message>
    <message>
        <source>the sensor reads {1} with the pumps off, more than its accuracy of {2}; have it zeroed before the set-point is taken from it</source>
        <translation>le capteur lit {1} pompes arrêtées, plus que sa précision de {2}&#xa0;; faites refaire son zéro avant d’en tirer la consigne</translation>
    </message>
    <message>
        <source>the sensor was not read with the pumps off; stop the pumps, read it and enter the value</source>
        <translation>le capteur n’a pas été lu pompes arrêtées&#xa0;; arrêtez les pompes, lisez-le et saisissez la valeur</translation>
    </message>
    <message>
        <source>the set flow is {1} m3/s; it must be a number of 0 or more</source>
        <translation>le débit réglé est {1} m3/s&#xa0;; ce doit être un nombre de 0 ou plus</translation>
    </message>
    <message>
        <source>the set-point follows the flow, but the flow at which it was found is not entered; enter it</source>
        <translation>la consigne suit le débit, mais le débit où elle a été trouvée n’est pas saisi&#xa0;; saisissez-le</translation>
    </message>
    <message>
        <source>the set-point of {1} is {2} % of what the index circuit needs at design flow, above 110 %; lower it</source>
        <translation>la consigne de {1} est {2}&#xa0;% de ce que demande le circuit défavorisé au débit nominal, au-dessus de 110&#xa0;%&#xa0;; baissez-la</translation>
    </message>
    <message>
        <source>the setting needed, {1}, is below {2}, where tables and marks are not reliable; set it by the dp, or fit a smaller valve</source>
        <translation>le réglage nécessaire, {1}, est sous {2}, où tables et repères ne sont pas fiables&#xa0;; réglez-le par la Δp, ou posez une vanne plus petite</translation>
    </message>
    <message>
        <source>the signature does not fit the certificate of {1}; do not rely on this file, ask for it again</source>
        <translation>la signature ne correspond pas au certificat de {1}&#xa0;; ne vous fiez pas à ce fichier, redemandez-le</translation>
    </message>
    <message>
        <source>the signature is not written as it must be ({1}); do not rely on this file, ask for it again</source>
        <translation>la signature n’est pas écrite comme il faut ({1})&#xa0;; ne vous fiez pas à ce fichier, redemandez-le</translation>
    </message>
    <message>
        <source>the signed report could not be written; choose a place with room that can be written</source>
        <translation>le rapport signé n’a pu être écrit&#xa0;; choisissez un lieu accessible en écriture avec de la place</translation>
    </message>
    <message>
        <source>the signed report there belongs to another workbook; give the report another name</source>
        <translation>le rapport signé qui s’y trouve est d’un autre classeur&#xa0;; donnez un autre nom au rapport</translation>
    </message>
    <message>
        <source>the signed report there does not verify ({1}); keep it aside and sign a new report under another name</source>
        <translation>le rapport signé qui s’y trouve ne passe pas la vérification ({1})&#xa0;; mettez-le de côté et signez un nouveau rapport sous un autre nom</translation>
    </message>
    <message>
        <source>the slip is chosen: nothing better was read</source>
        <translation>le glissement est retenu&#xa0;: rien de mieux n’a été mesuré</translation>
    </message>
    <message>
        <source>the speed would be {1} % of rated, below the least of {2} %; trim or throttle instead, or ask the maker</source>
        <translation>la vitesse serait {1}&#xa0;% du nominal, sous le minimum de {2}&#xa0;%&#xa0;; rognez ou étranglez plutôt, ou demandez au fabricant</translation>
    </message>
    <message>
        <source>the standard uncertainty of this reading is {1} of its value; it must be above 0, state the instrument&apos;s accuracy</source>
        <translation>l’incertitude-type de cette mesure est {1} de sa valeur&#xa0;; elle doit dépasser 0, donnez la précision de l’instrument</translation>
    </message>
    <message>
        <source>the static lift is {1} Pa; give a number</source>
        <translation>la hauteur statique est {1} Pa&#xa0;; donnez un nombre</translation>
    </message>
    <message>
        <source>the straight pipe before and behind the device is not recorded; it needs {1} and {2} diameters, look and enter it</source>
        <translation>les longueurs droites en amont et en aval de l’organe ne sont pas notées&#xa0;; il faut {1} et {2} diamètres, regardez et saisissez-les</translation>
    </message>
    <message>
        <source>the sum of minor loss coefficients is {1}; it must not be below 0</source>
        <translation>la somme des coefficients de pertes singulières est {1}&#xa0;; elle ne peut être sous 0</translation>
    </message>
    <message>
        <source>the table cannot be written; check room and permissions there</source>
        <translation>la table ne peut être écrite&#xa0;; vérifiez-y place et droits</translation>
    </message>
    <message>
        <source>the table has no branches; give at least one row</source>
        <translation>la table n’a pas de branches&#xa0;; donnez au moins une ligne</translation>
    </message>
    <message>
        <source>the tables of the file are not those of a workbook ({1}); keep it as it is and open a copy from before</source>
        <translation>les tables du fichier ne sont pas celles d’un classeur ({1})&#xa0;; gardez-le tel quel et ouvrez une copie antérieure</translation>
    </message>
    <message>
        <source>the tag &quot;{1}&quot; is not among the branches; did you mean &quot;{2}&quot;?</source>
        <translation>le repère «&#xa0;{1}&#xa0;» n’est pas parmi les branches&#xa0;; vouliez-vous «&#xa0;{2}&#xa0;»&#xa0;?</translation>
    </message>
    <message>
        <source>the tag &quot;{1}&quot; stands already in row {2}; give every one its own</source>
        <translation>le repère «&#xa0;{1}&#xa0;» figure déjà à la ligne {2}&#xa0;; donnez à chacun le sien</translation>
    </message>
    <message>
        <source>the tag {1} is taken; type another</source>
        <translation>le repère {1} est pris&#xa0;; tapez-en un autre</translation>
    </message>
    <message>
        <source>the text has more than {1} characters; shorten it</source>
        <translation>le texte dépasse {1} caractères&#xa0;; raccourcissez-le</translation>
    </message>
    <message>
        <source>the text is not UTF-8; save the file as &quot;CSV UTF-8&quot;</source>
        <translation>le texte n’est pas en UTF-8&#xa0;; enregistrez le fichier en «&#xa0;CSV UTF-8&#xa0;»</translation>
    </message>
    <message>
        <source>the three-way valve stands at {1}; its position must lie between 0 and 1</source>
        <translation>la vanne trois voies est à {1}&#xa0;; sa position doit être entre 0 et 1</translation>
    </message>
    <message>
        <source>the valve &quot;{1}&quot; has a range of dp and no table, which only a limiter or a picv can do with; give its table in valves.csv or correct the kind</source>
        <translation>la vanne «&#xa0;{1}&#xa0;» a une plage de Δp et pas de table, ce qui ne va qu’à un limiteur ou une PICV&#xa0;; donnez sa table dans valves.csv ou corrigez le type</translation>
    </message>
    <message>
        <source>the valve &quot;{1}&quot; of size &quot;{2}&quot; is not in valves.csv; did you mean &quot;{3}&quot;?</source>
        <translation>la vanne «&#xa0;{1}&#xa0;» de taille «&#xa0;{2}&#xa0;» n’est pas dans valves.csv&#xa0;; vouliez-vous «&#xa0;{3}&#xa0;»&#xa0;?</translation>
    </message>
    <message>
        <source>the valve of {1} was moved after the reference was read; read the reference again</source>
        <translation>la vanne de {1} a bougé après la mesure de la référence&#xa0;; remesurez la référence</translation>
    </message>
    <message>
        <source>the valve takes so little here that its side hardly matters for air; what counts is straight pipe</source>
        <translation>la vanne prend si peu ici que son côté importe peu pour l’air&#xa0;; ce qui compte est la longueur droite</translation>
    </message>
    <message>
        <source>the viscosity is {1} m2/s; it must be above 0</source>
        <translation>la viscosité est {1} m2/s&#xa0;; elle doit dépasser 0</translation>
    </message>
    <message>
        <source>the voltage is {1} % of the plate&apos;s; motors are made for 90 to 110 %, have the supply checked</source>
        <translation>la tension est {1}&#xa0;% de la plaque&#xa0;; les moteurs sont faits pour 90 à 110&#xa0;%, faites contrôler l’alimentation</translation>
    </message>
    <message>
        <source>the voltages of the phases differ by {1} % of their mean, more than {2} %; have the supply checked by a licensed electrician before the pump runs on</source>
        <translation>les tensions des phases diffèrent de {1}&#xa0;% de leur moyenne, plus de {2}&#xa0;%&#xa0;; faites contrôler l’alimentation par un électricien habilité avant que la pompe continue</translation>
    </message>
    <message>
        <source>the water is {1}: gauges and vents scald, and a shut pump boils soon; have the permission of whoever runs the plant</source>
        <translation>l’eau est à {1}&#xa0;: manomètres et purgeurs brûlent, et une pompe fermée bout vite&#xa0;; ayez l’accord de l’exploitant</translation>
    </message>
    <message>
        <source>the way with no-load amps is chosen: no power factor was measured, and it follows the load down</source>
        <translation>la méthode à intensité à vide est retenue&#xa0;: aucun facteur de puissance mesuré, et elle reste juste à faible charge</translation>
    </message>
    <message>
        <source>the witness round confirms {1} of {2} terminals</source>
        <translation>le passage témoin confirme {1} des {2} terminaux</translation>
    </message>
    <message>
        <source>the witness round found {1} of {2} terminals more than 10 % off; read all again, or give the reason</source>
        <translation>le passage témoin trouve {1} des {2} terminaux à plus de 10&#xa0;%&#xa0;; remesurez tout, ou donnez le motif</translation>
    </message>
    <message>
        <source>the workbook was changed after that report was signed; sign a new report under another name</source>
        <translation>le classeur a été changé après la signature de ce rapport&#xa0;; signez un nouveau rapport sous un autre nom</translation>
    </message>
    <message>
        <source>there is a branch with this tag already; give the new one another tag</source>
        <translation>il y a déjà une branche à ce repère&#xa0;; donnez un autre repère à la nouvelle</translation>
    </message>
    <message>
        <source>there is a round {1} already; give this one another number</source>
        <translation>il y a déjà un passage {1}&#xa0;; donnez un autre numéro à celui-ci</translation>
    </message>
    <message>
        <source>there is neither readings.csv nor pump_readings.csv with rows; put one into the folder</source>
        <translation>ni readings.csv ni pump_readings.csv avec des lignes&#xa0;; mettez-en un dans le dossier</translation>
    </message>
    <message>
        <source>there is no action that can be taken back; go on with the work</source>
        <translation>aucune action ne peut être annulée&#xa0;; continuez le travail</translation>
    </message>
    <message>
        <source>there is no plain file &quot;{1}&quot; in the folder attachments; put it there or take the row out</source>
        <translation>aucun fichier simple «&#xa0;{1}&#xa0;» dans le dossier attachments&#xa0;; mettez-le là ou retirez la ligne</translation>
    </message>
    <message>
        <source>there is no reading to learn from; enter at least one dp at a valve</source>
        <translation>aucune mesure dont apprendre&#xa0;; saisissez au moins une Δp à une vanne</translation>
    </message>
    <message>
        <source>there is no round of readings yet; open one</source>
        <translation>aucun passage de mesures encore&#xa0;; ouvrez-en un</translation>
    </message>
    <message>
        <source>there is no such file; check its name and folder</source>
        <translation>ce fichier n’existe pas&#xa0;; vérifiez son nom et son dossier</translation>
    </message>
    <message>
        <source>there is no such folder; give the folder that holds job.csv and the other tables</source>
        <translation>ce dossier n’existe pas&#xa0;; donnez celui qui contient job.csv et les autres tables</translation>
    </message>
    <message>
        <source>this branch feeds others; choose a terminal for the profile of a circuit</source>
        <translation>cette branche en alimente d’autres&#xa0;; choisissez un terminal pour le profil d’un circuit</translation>
    </message>
    <message>
        <source>this branch has no valve with a table; it cannot be adjusted here</source>
        <translation>cette branche n’a pas de vanne à table&#xa0;; elle ne peut être réglée ici</translation>
    </message>
    <message>
        <source>this branch has no valve, so there is no setting; store a reading without one</source>
        <translation>cette branche n’a pas de vanne, donc pas de réglage&#xa0;; enregistrez une mesure sans</translation>
    </message>
    <message>
        <source>this branch has readings, which stay for the record, so it is not taken out of this job; make a new workbook for the changed building</source>
        <translation>cette branche a des mesures, gardées pour mémoire, elle n’est donc pas ôtée de ce chantier&#xa0;; créez un nouveau classeur pour le bâtiment modifié</translation>
    </message>
    <message>
        <source>this branch is fed through itself: {1}; correct one parent, the first is fed at the pump</source>
        <translation>cette branche s’alimente elle-même&#xa0;: {1}&#xa0;; corrigez un parent, la première est alimentée à la pompe</translation>
    </message>
    <message>
        <source>this branch is marked as not balanced without a reason; write the reason</source>
        <translation>cette branche est marquée non équilibrée sans motif&#xa0;; écrivez le motif</translation>
    </message>
    <message>
        <source>this branch would be fed from itself by way of its parents; choose another parent</source>
        <translation>cette branche s’alimenterait elle-même par ses parents&#xa0;; choisissez un autre parent</translation>
    </message>
    <message>
        <source>this conflict is not in the job any more; look at the list again</source>
        <translation>ce conflit n’est plus dans le chantier&#xa0;; revoyez la liste</translation>
    </message>
    <message>
        <source>this is a positive displacement pump: running it shut bursts it or its pipe; do not make a shutoff test</source>
        <translation>c’est une pompe volumétrique&#xa0;: la faire tourner fermée la fait éclater, ou son tuyau&#xa0;; ne faites pas d’essai à débit nul</translation>
    </message>
    <message>
        <source>this is no PKCS#12 key file; choose a file that ends in .p12 or .pfx</source>
        <translation>ce n’est pas un fichier de clé PKCS#12&#xa0;; choisissez un fichier en .p12 ou .pfx</translation>
    </message>
    <message>
        <source>this is not a copy of the open workbook: their journals have no record in common; choose the file that the other laptop worked in</source>
        <translation>ce n’est pas une copie du classeur ouvert&#xa0;: leurs journaux n’ont aucun enregistrement commun&#xa0;; choisissez le fichier de l’autre portable</translation>
    </message>
    <message>
        <source>this is not a workbook; choose a file that was made as one</source>
        <translation>ce n’est pas un classeur&#xa0;; choisissez un fichier créé comme tel</translation>
    </message>
    <message>
        <source>this job has no valve &quot;{1}&quot;; type one of {2}, or nothing</source>
        <translation>ce chantier n’a pas de vanne «&#xa0;{1}&#xa0;»&#xa0;; tapez l’une de {2}, ou rien</translation>
    </message>
    <message>
        <source>this job was opened for reading only, so nothing was stored; open it for changes first</source>
        <translation>ce chantier a été ouvert en lecture seule, rien n’a donc été enregistré&#xa0;; ouvrez-le d’abord en modification</translation>
    </message>
    <message>
        <source>this pump alone keeps water moving through a chiller or boiler; do not make a shutoff test unless whoever runs the plant has shut that down and agrees</source>
        <translation>cette pompe seule fait circuler l’eau dans un groupe froid ou une chaudière&#xa0;; pas d’essai à débit nul, sauf si l’exploitant l’a arrêté et donne son accord</translation>
    </message>
    <message>
        <source>this reading was marked doubtful by hand; read again or give the reason</source>
        <translation>cette mesure a été marquée douteuse à la main&#xa0;; remesurez ou donnez le motif</translation>
    </message>
    <message>
        <source>this terminal is fully open and takes less of design than the index circuit; match the groups again so that the index is proved</source>
        <translation>ce terminal est ouvert en grand et prend moins du nominal que le circuit défavorisé&#xa0;; réglez de nouveau les groupes pour prouver le défavorisé</translation>
    </message>
    <message>
        <source>this valve has no reading in this round; read it first</source>
        <translation>cette vanne n’a pas de mesure à ce passage&#xa0;; mesurez-la d’abord</translation>
    </message>
    <message>
        <source>this valve is on the index circuit and stands at {1}, not fully open at {2}; open it and match the others to it</source>
        <translation>cette vanne est sur le circuit défavorisé et se trouve à {1}, pas ouverte en grand à {2}&#xa0;; ouvrez-la et réglez les autres sur elle</translation>
    </message>
    <message>
        <source>this valve is the reference of its group; read it as a try, or find another valve</source>
        <translation>cette vanne est la référence de son groupe&#xa0;; mesurez-la comme essai, ou trouvez une autre vanne</translation>
    </message>
    <message>
        <source>this valve stands before the unit, where it lowers the pressure in it: air comes out there, and makes noise and false readings; move it to the return side, or vent at the unit</source>
        <translation>cette vanne est avant l’unité, où elle baisse la pression&#xa0;: l’air en sort, fait du bruit et fausse les mesures&#xa0;; déplacez-la au retour, ou purgez à l’unité</translation>
    </message>
    <message>
        <source>this workbook can only be read here; save a copy and work in that</source>
        <translation>ce classeur ne peut être que lu ici&#xa0;; enregistrez une copie et travaillez-y</translation>
    </message>
    <message>
        <source>this would answer an answer; answer the first comment instead</source>
        <translation>ce serait répondre à une réponse&#xa0;; répondez plutôt au premier commentaire</translation>
    </message>
    <message>
        <source>throttling takes {1} more than a reduced pump would, above the limit of {2}; trim the impeller or slow the pump, and open its valve</source>
        <translation>étrangler prend {1} de plus qu’une pompe réduite, au-dessus de la limite de {2}&#xa0;; rognez la roue ou ralentissez la pompe, et ouvrez sa vanne</translation>
    </message>
    <message>
        <source>throttling takes {1} more than a reduced pump would, not above the limit of {2}: the throttle may stay; write down its position</source>
        <translation>étrangler prend {1} de plus qu’une pompe réduite, sans dépasser la limite de {2}&#xa0;: l’étranglement peut rester&#xa0;; notez sa position</translation>
    </message>
    <message>
        <source>too weak at full speed; see below</source>
        <translation>trop faible à pleine vitesse&#xa0;; voir ci-dessous</translation>
    </message>
    <message>
        <source>trusted: its chain leads to a certificate you gave</source>
        <translation>de confiance&#xa0;: sa chaîne mène à un certificat que vous avez donné</translation>
    </message>
    <message>
        <source>two gauges were read but their heights are not known, so no correction for height is made; enter the heights, or read both taps with one gauge</source>
        <translation>deux manomètres ont été lus mais leurs niveaux sont inconnus, aucune correction de niveau n’est donc faite&#xa0;; saisissez-les, ou lisez les deux prises avec un seul manomètre</translation>
    </message>
    <message>
        <source>unchanged, the whole file</source>
        <translation>inchangé, tout le fichier</translation>
    </message>
    <message>
        <source>unchanged, up to this signature</source>
        <translation>inchangé, jusqu’à cette signature</translation>
    </message>
    <message>
        <source>under the readable minimum, so that the flow is only a range: {1} ({2}); read them another way</source>
        <translation>sous le minimum lisible, le débit n’étant qu’une plage&#xa0;: {1} ({2})&#xa0;; mesurez-les autrement</translation>
    </message>
    <message>
        <source>volts, amps and power factor are chosen: the input power was not metered</source>
        <translation>tension, intensité et facteur de puissance sont retenus&#xa0;: la puissance absorbée n’a pas été mesurée</translation>
    </message>
    <message>
        <source>waiting for review</source>
        <translation>en attente de revue</translation>
    </message>
    <message>
        <source>waiting for signature</source>
        <translation>en attente de signature</translation>
    </message>
    <message>
        <source>what is known beforehand of factor {1} is no number; correct its design loss</source>
        <translation>ce qu’on sait d’avance du facteur {1} n’est pas un nombre&#xa0;; corrigez sa perte nominale</translation>
    </message>
    <message>
        <source>what was read here does not fit the other readings and is left out; read it again</source>
        <translation>ce qui a été mesuré ici ne concorde pas avec les autres mesures et est écarté&#xa0;; remesurez</translation>
    </message>
    <message>
        <source>what was signed has been changed since; do not rely on this file, ask for it again</source>
        <translation>ce qui a été signé a changé depuis&#xa0;; ne vous fiez pas à ce fichier, redemandez-le</translation>
    </message>
    <message>
        <source>windows that are open keep their words; start Waterwright again to see it in {1}</source>
        <translation>les fenêtres ouvertes gardent leurs mots&#xa0;; relancez Waterwright pour le voir en {1}</translation>
    </message>
    <message>
        <source>with everything open it takes {1} % of design flow; verify its setting, its valve table, air and strainer before adjusting</source>
        <translation>tout ouvert, elle prend {1}&#xa0;% du débit nominal&#xa0;; vérifiez réglage, table de vanne, air et filtre avant de régler</translation>
    </message>
    <message>
        <source>with its corrections the head is {1}; check the gauge heights and the zero reading</source>
        <translation>avec ses corrections la hauteur est {1}&#xa0;; vérifiez les niveaux des manomètres et le zéro</translation>
    </message>
    <message>
        <source>with the pump off the gauges differ by {1} after correction for height; use one gauge for both taps, or have them calibrated</source>
        <translation>pompe arrêtée, les manomètres diffèrent de {1} après correction de niveau&#xa0;; prenez un manomètre pour les deux prises, ou faites-les étalonner</translation>
    </message>
    <message>
        <source>with the pumps off the highest point stands at {1}, below the {2} that keep air out; raise the fill pressure, within what vessel and relief valve allow</source>
        <translation>pompes arrêtées, le point le plus haut est à {1}, sous les {2} qui tiennent l’air dehors&#xa0;; montez la pression de remplissage, dans ce que permettent vase et soupape</translation>
    </message>
    <message>
        <source>with the valve behind the unit its water stands {1} higher and holds {2} mL/L more air; keep the valve on the return side</source>
        <translation>avec la vanne après l’unité, son eau est {1} plus haut et retient {2} mL/L d’air de plus&#xa0;; gardez la vanne au retour</translation>
    </message>
    <message>
        <source>with {1} terminals the readings are not compared with a learned loop here; use advise for that</source>
        <translation>avec {1} terminaux les mesures ne sont pas comparées ici à une boucle apprise&#xa0;; utilisez advise pour cela</translation>
    </message>
    <message>
        <source>{1} % of design flow in the last round</source>
        <translation>{1}&#xa0;% du débit nominal au dernier passage</translation>
    </message>
    <message>
        <source>{1} (clock of the signing computer)</source>
        <translation>{1} (horloge de l’ordinateur signataire)</translation>
    </message>
    <message>
        <source>{1} (self-made certificate)</source>
        <translation>{1} (certificat autosigné)</translation>
    </message>
    <message>
        <source>{1} C is outside 0 to 150 C, where the solubility of air is computed; correct the temperature</source>
        <translation>{1} C est hors de 0 à 150 C, où la solubilité de l’air est calculée&#xa0;; corrigez la température</translation>
    </message>
    <message>
        <source>{1} across a shut valve is not above zero; check hoses and valves and read again</source>
        <translation>{1} à une vanne fermée n’est pas au-dessus de zéro&#xa0;; vérifiez flexibles et vannes et remesurez</translation>
    </message>
    <message>
        <source>{1} across the valve is above {2}, it may be noisy or cavitate; lower the pump&apos;s head or throttle elsewhere too</source>
        <translation>{1} à la vanne dépasse {2}, elle peut être bruyante ou caviter&#xa0;; baissez la hauteur de la pompe ou étranglez aussi ailleurs</translation>
    </message>
    <message>
        <source>{1} actions of {2} were taken over, {3} values are left to decide; undo takes all back at once</source>
        <translation>actions de {2} reprises&#xa0;: {1}, valeurs à décider&#xa0;: {3}&#xa0;; annuler reprend tout d’un coup</translation>
    </message>
    <message>
        <source>{1} answered: &quot;{2}&quot;</source>
        <translation>{1} a répondu&#xa0;: «&#xa0;{2}&#xa0;»</translation>
    </message>
    <message>
        <source>{1} asks: &quot;{2}&quot;; correct the reading, or answer on the place Review (Alt+6)</source>
        <translation>{1} demande&#xa0;: «&#xa0;{2}&#xa0;»&#xa0;; corrigez la mesure, ou répondez dans Revue (Alt+6)</translation>
    </message>
    <message>
        <source>{1} at the motor is {2} % off its plate&apos;s {3}; have the supply checked</source>
        <translation>{1} au moteur est à {2}&#xa0;% des {3} de la plaque&#xa0;; faites contrôler l’alimentation</translation>
    </message>
    <message>
        <source>{1} at the unit with the valve on the return, {2} on the supply</source>
        <translation>{1} à l’unité, vanne au retour, {2} à l’aller</translation>
    </message>
    <message>
        <source>{1} at the unit with the valve on the return, {2} on the supply; its water holds {3} and {4} mL/L of air</source>
        <translation>{1} à l’unité, vanne au retour, {2} à l’aller&#xa0;; son eau retient {3} et {4} mL/L d’air</translation>
    </message>
    <message>
        <source>{1} at {2} of {3}, and every valve on its path fully open</source>
        <translation>{1} à {2} sur {3}, et chaque vanne de son chemin ouverte en grand</translation>
    </message>
    <message>
        <source>{1} at {2} of {3}, but not fully open on its path: {4}</source>
        <translation>{1} à {2} sur {3}, mais pas ouvert en grand sur son chemin&#xa0;: {4}</translation>
    </message>
    <message>
        <source>{1} branches, of these {2} terminals; index circuit: {3}.</source>
        <translation>{1} branches, dont {2} terminaux&#xa0;; circuit défavorisé&#xa0;: {3}.</translation>
    </message>
    <message>
        <source>{1} by the signer&apos;s clock</source>
        <translation>{1} à l’horloge du signataire</translation>
    </message>
    <message>
        <source>{1} could not be read; choose a file that is there</source>
        <translation>{1} n’a pu être lu&#xa0;; choisissez un fichier présent</translation>
    </message>
    <message>
        <source>{1} has no dp in this round</source>
        <translation>{1} n’a pas de Δp à ce passage</translation>
    </message>
    <message>
        <source>{1} has no valve to be read; read its neighbours</source>
        <translation>{1} n’a pas de vanne à mesurer&#xa0;; mesurez ses voisines</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); read it again</source>
        <translation>{1} au passage {2} ne concorde pas avec les autres mesures, qui attendent {3} (z {4})&#xa0;; remesurez</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); setting {5} instead of {6} would explain it, look at the handle and read it again</source>
        <translation>{1} au passage {2} ne concorde pas avec les autres mesures, qui attendent {3} (z {4})&#xa0;; un réglage {5} au lieu de {6} l’expliquerait, regardez la poignée et remesurez</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); the hoses are probably reversed, swap them and read it again</source>
        <translation>{1} au passage {2} ne concorde pas avec les autres mesures, qui attendent {3} (z {4})&#xa0;; les flexibles sont sans doute inversés, échangez-les et remesurez</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); the same digits in {5} would, correct the unit or read it again</source>
        <translation>{1} au passage {2} ne concorde pas avec les autres mesures, qui attendent {3} (z {4})&#xa0;; les mêmes chiffres en {5} iraient, corrigez l’unité ou remesurez</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); valve {5} instead of {6} would explain it, look at the valve&apos;s size and read it again</source>
        <translation>{1} au passage {2} ne concorde pas avec les autres mesures, qui attendent {3} (z {4})&#xa0;; une vanne {5} au lieu de {6} l’expliquerait, regardez la taille de la vanne et remesurez</translation>
    </message>
    <message>
        <source>{1} in round {2} stands out, {3} was expected (z {4}); read it again before anything rests on it, one round alone cannot tell a wrong reading from an obstruction</source>
        <translation>{1} au passage {2} détonne, {3} était attendu (z {4})&#xa0;; remesurez avant de vous y fier, un seul passage ne distingue pas une fausse mesure d’une obstruction</translation>
    </message>
    <message>
        <source>{1} is before a reading of round {2} ({3}); correct the date or the round</source>
        <translation>{1} précède une mesure du passage {2} ({3})&#xa0;; corrigez la date ou le passage</translation>
    </message>
    <message>
        <source>{1} is before the row above it in its round ({2}); correct the time or put the rows in order</source>
        <translation>{1} précède la ligne du dessus dans son passage ({2})&#xa0;; corrigez l’heure ou ordonnez les lignes</translation>
    </message>
    <message>
        <source>{1} is below the freezing point {2} of this mixture; correct temperature or concentration</source>
        <translation>{1} est sous le point de congélation {2} de ce mélange&#xa0;; corrigez température ou concentration</translation>
    </message>
    <message>
        <source>{1} is below zero, the hoses are probably reversed; swap them and read again, or store {2}</source>
        <translation>{1} est sous zéro, les flexibles sont sans doute inversés&#xa0;; échangez-les et remesurez, ou enregistrez {2}</translation>
    </message>
    <message>
        <source>{1} is below zero; a loss is zero or more</source>
        <translation>{1} est sous zéro&#xa0;; une perte est zéro ou plus</translation>
    </message>
    <message>
        <source>{1} is below zero; type zero or more, or nothing</source>
        <translation>{1} est sous zéro&#xa0;; tapez zéro ou plus, ou rien</translation>
    </message>
    <message>
        <source>{1} is far from the expected {2}, in {3} it would be {4}; correct the unit, read again or give the reason</source>
        <translation>{1} est loin des {2} attendus, en {3} ce serait {4}&#xa0;; corrigez l’unité, remesurez ou donnez le motif</translation>
    </message>
    <message>
        <source>{1} is far from {2} read at the same setting in round {3}; read again or give the reason</source>
        <translation>{1} est loin de {2} mesuré au même réglage au passage {3}&#xa0;; remesurez ou donnez le motif</translation>
    </message>
    <message>
        <source>{1} is far from {2} that the design flow needs at this setting; read again or give the reason</source>
        <translation>{1} est loin des {2} que demande le débit nominal à ce réglage&#xa0;; remesurez ou donnez le motif</translation>
    </message>
    <message>
        <source>{1} is fed by this branch itself; choose a branch nearer the pump</source>
        <translation>{1} est alimenté par cette branche même&#xa0;; choisissez une branche plus près de la pompe</translation>
    </message>
    <message>
        <source>{1} is in table {2} but not in the journal; another program put it there, do not trust it</source>
        <translation>{1} est dans la table {2} mais pas au journal&#xa0;; un autre programme l’y a mis, ne vous y fiez pas</translation>
    </message>
    <message>
        <source>{1} is in the journal but not in table {2}; another program removed it, open a copy from before</source>
        <translation>{1} est au journal mais pas dans la table {2}&#xa0;; un autre programme l’a ôté, ouvrez une copie antérieure</translation>
    </message>
    <message>
        <source>{1} is negative; this value must be {2}, correct it</source>
        <translation>{1} est négatif&#xa0;; cette valeur doit être {2}, corrigez-la</translation>
    </message>
    <message>
        <source>{1} is no height of a building above the sea; type one within -500 and 6000 m</source>
        <translation>{1} n’est pas l’altitude d’un bâtiment&#xa0;; tapez-en une entre -500 et 6000 m</translation>
    </message>
    <message>
        <source>{1} is not a number that a deficiency can have; give one that is free, from 1</source>
        <translation>{1} n’est pas un numéro de réserve possible&#xa0;; donnez-en un libre, à partir de 1</translation>
    </message>
    <message>
        <source>{1} is not above zero; type a value above zero</source>
        <translation>{1} n’est pas au-dessus de zéro&#xa0;; tapez une valeur au-dessus de zéro</translation>
    </message>
    <message>
        <source>{1} is not after the calibration of {2}; correct one of the dates</source>
        <translation>{1} n’est pas après l’étalonnage du {2}&#xa0;; corrigez l’une des dates</translation>
    </message>
    <message>
        <source>{1} is not below zero; type the lower limit as -10</source>
        <translation>{1} n’est pas sous zéro&#xa0;; tapez la limite basse comme -10</translation>
    </message>
    <message>
        <source>{1} is not on the scale, {2} to {3}; type what the handle shows</source>
        <translation>{1} n’est pas sur l’échelle, {2} à {3}&#xa0;; tapez ce que montre la poignée</translation>
    </message>
    <message>
        <source>{1} is not on this valve&apos;s scale, {2} to {3}, and is not stored; correct the setting</source>
        <translation>{1} n’est pas sur l’échelle de cette vanne, {2} à {3}, et n’est pas enregistré&#xa0;; corrigez le réglage</translation>
    </message>
    <message>
        <source>{1} is off the valve&apos;s scale, {2} to {3}; correct the setting or the valve</source>
        <translation>{1} est hors de l’échelle de la vanne, {2} à {3}&#xa0;; corrigez le réglage ou la vanne</translation>
    </message>
    <message>
        <source>{1} is off this valve&apos;s scale, {2} to {3}; correct the setting</source>
        <translation>{1} est hors de l’échelle de cette vanne, {2} à {3}&#xa0;; corrigez le réglage</translation>
    </message>
    <message>
        <source>{1} is out of reason; type a value within {2} %</source>
        <translation>{1} est déraisonnable&#xa0;; tapez une valeur à moins de {2}&#xa0;%</translation>
    </message>
    <message>
        <source>{1} is outside this valve&apos;s scale, {2} to {3}; type what the handle shows</source>
        <translation>{1} est hors de l’échelle de cette vanne, {2} à {3}&#xa0;; tapez ce que montre la poignée</translation>
    </message>
    <message>
        <source>{1} is outside {2} to {3}; correct it</source>
        <translation>{1} est hors de {2} à {3}&#xa0;; corrigez-le</translation>
    </message>
    <message>
        <source>{1} is too large to be true; check digits and unit</source>
        <translation>{1} est trop grand pour être vrai&#xa0;; vérifiez chiffres et unité</translation>
    </message>
    <message>
        <source>{1} is {2} % of the range {3} of instrument {4}; read between 10 and 95 % of it with another instrument</source>
        <translation>{1} est {2}&#xa0;% de la plage {3} de l’instrument {4}&#xa0;; mesurez entre 10 et 95&#xa0;% avec un autre instrument</translation>
    </message>
    <message>
        <source>{1} lies on the index circuit and its valve stands at {2} of {3}; open it fully and match the others to it</source>
        <translation>{1} est sur le circuit défavorisé et sa vanne est à {2} sur {3}&#xa0;; ouvrez-la en grand et réglez les autres sur elle</translation>
    </message>
    <message>
        <source>{1} of {2} dps are digit for digit those of round {3}; check that they were read and not copied</source>
        <translation>{1} Δp sur {2} sont chiffre pour chiffre celles du passage {3}&#xa0;; vérifiez qu’elles ont été mesurées et non copiées</translation>
    </message>
    <message>
        <source>{1} of {2} dps read the same {3}; check that they were read and not copied</source>
        <translation>{1} Δp sur {2} donnent la même valeur {3}&#xa0;; vérifiez qu’elles ont été mesurées et non copiées</translation>
    </message>
    <message>
        <source>{1} of {2} flows equal their design flow to a tenth of a percent; check that they were read and not copied</source>
        <translation>{1} débits sur {2} égalent leur débit nominal à un dixième de pour cent&#xa0;; vérifiez qu’ils ont été mesurés et non copiés</translation>
    </message>
    <message>
        <source>{1} of {2} lines that must hold are done or do not apply.</source>
        <translation>Lignes obligatoires faites ou sans objet&#xa0;: {1} sur {2}.</translation>
    </message>
    <message>
        <source>{1} of {2} terminals have neither a reading nor a reason; read them or say why not</source>
        <translation>ni mesure ni motif&#xa0;: {1} des {2} terminaux&#xa0;; mesurez-les ou dites pourquoi non</translation>
    </message>
    <message>
        <source>{1} of {2} terminals on share (of target within 100 ± {3} %)</source>
        <translation>{1} des {2} terminaux à leur part (de la cible à 100 ± {3}&#xa0;%)</translation>
    </message>
    <message>
        <source>{1} on record, of these open: {2}.</source>
        <translation>{1} enregistrées, dont ouvertes&#xa0;: {2}.</translation>
    </message>
    <message>
        <source>{1} pumps share this duty; trim all alike, and the stand-by with them</source>
        <translation>{1} pompes partagent ce point de fonctionnement&#xa0;; rognez-les toutes pareil, celle de secours aussi</translation>
    </message>
    <message>
        <source>{1} read it again who had read it before; have somebody else read the sample</source>
        <translation>{1} a remesuré après avoir mesuré&#xa0;; faites mesurer l’échantillon par quelqu’un d’autre</translation>
    </message>
    <message>
        <source>{1} readings of this round are dated before the one entered before them, the first is of {2} after {3}; check the clock and correct the time</source>
        <translation>{1} mesures de ce passage sont datées avant la précédente saisie, la première du {2} après {3}&#xa0;; vérifiez l’horloge et corrigez l’heure</translation>
    </message>
    <message>
        <source>{1} was read in {2}, most readings of instrument {3} in this round are in {4}; check the unit</source>
        <translation>{1} a été mesuré en {2}, la plupart des mesures de l’instrument {3} à ce passage sont en {4}&#xa0;; vérifiez l’unité</translation>
    </message>
    <message>
        <source>{1} {4}, {2} % of the design flow of {3} {4}</source>
        <translation>{1} {4}, {2}&#xa0;% du débit nominal de {3} {4}</translation>
    </message>
    <message>
        <source>{1}, certificate by {2}</source>
        <translation>{1}, certificat de {2}</translation>
    </message>
    <message>
        <source>{1}, listed in section {2}</source>
        <translation>{1}, listées à la section {2}</translation>
    </message>
    <message>
        <source>{1}. {2}; press Ctrl+U to store {3}</source>
        <translation>{1}. {2}&#xa0;; appuyez sur Ctrl+U pour enregistrer {3}</translation>
    </message>
    <message>
        <source>{1}: {3} of table {2} is not what the journal says ({4} instead of {5}); another program changed it, do not trust it</source>
        <translation>{1}&#xa0;: {3} de la table {2} n’est pas ce que dit le journal ({4} au lieu de {5})&#xa0;; un autre programme l’a changé, ne vous y fiez pas</translation>
    </message>
    <message>
        <source>P₂/P₁ = (n₂/n₁)³ = {1}: {2} % {3w}</source>
        <translation>P₂/P₁ = (n₂/n₁)³ = {1}&#xa0;: {2}&#xa0;% {3w}</translation>
    </message>
    <message>
        <source>Reason given: {1}</source>
        <translation>Motif donné&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Round {1} ({2w}), {3}</source>
        <translation>Passage {1} ({2w}), {3}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no kind of branch; type one of {2w}</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas un type de branche&#xa0;; tapez l’un de {2w}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is none of the words of this column; type one of {2w}</source>
        <translation>«&#xa0;{1}&#xa0;» n’est aucun des mots de cette colonne&#xa0;; tapez l’un de {2w}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit of this value; use one of {2}</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas une unité de cette valeur&#xa0;; prenez l’une de {2}</translation>
    </message>
    <message>
        <source>a reading of round {1}, which is {2w}, is neither changed nor removed; enter a reading that corrects it</source>
        <translation>une mesure du passage {1} ({2w}) n’est ni changée ni supprimée&#xa0;; saisissez une mesure qui la corrige</translation>
    </message>
    <message>
        <source>could not be read: no reason given</source>
        <translation>n’a pu être mesuré&#xa0;: aucun motif donné</translation>
    </message>
    <message>
        <source>doubtful reading {1w} kept: no reason given</source>
        <translation>mesure douteuse {1w} gardée&#xa0;: aucun motif donné</translation>
    </message>
    <message>
        <source>doubtful reading {1w} kept: {2}</source>
        <translation>mesure douteuse {1w} gardée&#xa0;: {2}</translation>
    </message>
    <message>
        <source>flow by {1w} is {2} and by {3w} is {4}, z = {5}: more apart than their uncertainties allow; find out which is wrong</source>
        <translation>le débit selon {1w} est {2} et selon {3w} {4}, z = {5}&#xa0;: plus d’écart que leurs incertitudes ne permettent&#xa0;; trouvez lequel est faux</translation>
    </message>
    <message>
        <source>round {1} is {2w} and is neither removed nor numbered anew; open a new round</source>
        <translation>le passage {1} est {2w} et n’est ni supprimé ni renuméroté&#xa0;; ouvrez un nouveau passage</translation>
    </message>
    <message>
        <source>round {1} is {2w} and takes only readings that correct one of its own; say which reading this one corrects, or open a new round</source>
        <translation>le passage {1} est {2w} et n’admet que des mesures qui corrigent une des siennes&#xa0;; dites laquelle celle-ci corrige, ou ouvrez un nouveau passage</translation>
    </message>
    <message>
        <source>round {1} is {2w}, and withdrawing that needs a reason; give it</source>
        <translation>le passage {1} est {2w}, et le retirer demande un motif&#xa0;; donnez-le</translation>
    </message>
    <message>
        <source>round {1} is {2w}, so nothing in it is chosen; withdraw that first, with a reason</source>
        <translation>le passage {1} est {2w}, rien n’y est donc choisi&#xa0;; retirez d’abord cela, avec un motif</translation>
    </message>
    <message>
        <source>spread {1} %</source>
        <translation>dispersion {1}&#xa0;%</translation>
    </message>
    <message>
        <source>tested again {1}</source>
        <translation>revérifiée le {1}</translation>
    </message>
    <message>
        <source>tested by {1w}, {2w}; the authority having jurisdiction decides</source>
        <translation>testé selon&#xa0;: {1w}, {2w}&#xa0;; l’autorité compétente décide</translation>
    </message>
    <message>
        <source>the PDF is damaged or not whole ({1w}); ask for the file again from whoever wrote it</source>
        <translation>le PDF est endommagé ou incomplet ({1w})&#xa0;; redemandez le fichier à qui l’a écrit</translation>
    </message>
    <message>
        <source>the PDF is of a form that is not read here ({1w}); give the report as Waterwright wrote it</source>
        <translation>le PDF est d’une forme non lue ici ({1w})&#xa0;; donnez le rapport tel que Waterwright l’a écrit</translation>
    </message>
    <message>
        <source>the file cannot be read ({1w}); check its rights and the disk it is on</source>
        <translation>le fichier est illisible ({1w})&#xa0;; vérifiez ses droits et son disque</translation>
    </message>
    <message>
        <source>the file cannot be written ({1w}); check its rights, its folder and the free space, nothing was changed</source>
        <translation>le fichier ne peut être écrit ({1w})&#xa0;; vérifiez ses droits, son dossier et la place libre, rien n’a été changé</translation>
    </message>
    <message>
        <source>the fluid is {1w} but its concentration is 0 %, so flows are computed as for water; enter the concentration</source>
        <translation>le fluide est {1w} mais sa concentration est 0&#xa0;%, les débits sont donc calculés comme pour l’eau&#xa0;; saisissez la concentration</translation>
    </message>
    <message>
        <source>the readings do not fit the loop as designed (probability {1w} %); look for a control valve that moves, air, a strainer or a pipe that the schedule lacks, the uncertainties given are too small</source>
        <translation>les mesures ne concordent pas avec la boucle prévue (probabilité {1w}&#xa0;%)&#xa0;; cherchez une vanne de régulation mobile, de l’air, un filtre ou un tuyau absent de la liste, les incertitudes sont trop petites</translation>
    </message>
    <message>
        <source>the signature could not be made ({1w}); nothing was changed, try another key</source>
        <translation>la signature n’a pas pu être faite ({1w})&#xa0;; rien n’a été changé, essayez une autre clé</translation>
    </message>
    <message>
        <source>the throttle keeps wasting {1} of head, {2w} at the shaft; leave it only where the energy code exempts the pump</source>
        <translation>l’étranglement gaspille toujours {1} de hauteur, {2w} à l’arbre&#xa0;; ne le laissez que si le code énergétique exempte la pompe</translation>
    </message>
    <message>
        <source>there is a {1w} of this name already; choose another name</source>
        <translation>ce nom existe déjà ({1w})&#xa0;; choisissez-en un autre</translation>
    </message>
    <message>
        <source>this refers to a {1w} that is not in the job; add it first or choose another</source>
        <translation>ceci renvoie à un élément absent du chantier ({1w})&#xa0;; ajoutez-le d’abord ou choisissez-en un autre</translation>
    </message>
    <message>
        <source>withdrawn: {1}</source>
        <translation>retiré&#xa0;: {1}</translation>
    </message>
    <message>
        <source>{1w} corrected to {2w} at {3w} by a person not written</source>
        <translation>{1w} corrigé en {2w} ({3w}), personne non notée</translation>
    </message>
    <message>
        <source>{1w} corrected to {2w} at {3w} by {4}</source>
        <translation>{1w} corrigé en {2w} ({3w}) par {4}</translation>
    </message>
    <message>
        <source>{1w} struck: no reason given</source>
        <translation>{1w} biffé&#xa0;: aucun motif donné</translation>
    </message>
    <message>
        <source>{1w} struck: {2}</source>
        <translation>{1w} biffé&#xa0;: {2}</translation>
    </message>
    <message>
        <source>{1w} {2} by mass at {3}, density {4} kg/m³</source>
        <translation>{1w} {2} en masse à {3}, masse volumique {4} kg/m³</translation>
    </message>
    <message>
        <source>{1w} {2} is still used by {3w} {4}; remove that first or let it use another</source>
        <translation>{1w} {2} sert encore&#xa0;: {3w} {4}&#xa0;; supprimez d’abord cela ou faites-lui en prendre un autre</translation>
    </message>
    <message>
        <source>{1w}, round {2}</source>
        <translation>{1w}, passage {2}</translation>
    </message>
    <message>
        <source>{1w}; limits {2w} to {3w}; flow {4w}, speed {5w}</source>
        <translation>{1w}&#xa0;; limites {2w} à {3w}&#xa0;; débit {4w}, vitesse {5w}</translation>
    </message>
    <message>
        <source>{1} (the same)</source>
        <translation>{1} (le même)</translation>
    </message>
    <message>
        <source>{1} by the head at shutoff; the record says {2w}</source>
        <translation>{1} selon la hauteur à débit nul&#xa0;; l’enregistrement dit {2w}</translation>
    </message>
    <message>
        <source>{1} file</source>
        <translation>{1} fichier</translation>
    </message>
    <message>
        <source>{1} files</source>
        <translation>{1} fichiers</translation>
    </message>
    <message>
        <source>{1} kWh and {2w} more than with the pump reduced</source>
        <translation>{1} kWh et {2w} de plus qu’avec la pompe réduite</translation>
    </message>
    <message>
        <source>{1} of {2}</source>
        <translation>{1} sur {2}</translation>
    </message>
    <message>
        <source>{1} open</source>
        <translation>{1} ouverte</translation>
    </message>
    <message>
        <source>{1} self-made</source>
        <translation>{1} autosigné</translation>
    </message>
    <message>
        <source>{1}, behind {2w}</source>
        <translation>{1}, après {2w}</translation>
    </message>
    <message>
        <source>{1}, index</source>
        <translation>{1}, défavorisé</translation>
    </message>
    <message>
        <source>the cell has a formula whose result was not stored; open the file in a spreadsheet program and save it</source>
        <translation>la cellule a une formule dont le résultat n’a pas été enregistré&#xa0;; ouvrez le fichier dans un tableur et enregistrez-le</translation>
    </message>
    <message>
        <source>the cell {1} lies beyond column {2}, where no table reaches; clear it</source>
        <translation>la cellule {1} est au-delà de la colonne {2}, où aucune table ne va&#xa0;; videz-la</translation>
    </message>
    <message>
        <source>the file has a password or is of the older binary kind; save it as XLSX without a password</source>
        <translation>le fichier a un mot de passe ou est de l’ancien type binaire&#xa0;; enregistrez-le en XLSX sans mot de passe</translation>
    </message>
    <message>
        <source>the file has {1} MB, more than the {2} MB that a spreadsheet may have; take out what is not needed</source>
        <translation>le fichier fait {1} Mo, plus que les {2} Mo d’une feuille de calcul&#xa0;; ôtez le superflu</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; cannot be understood (line {2}); open the file in a spreadsheet program and save it anew as XLSX</source>
        <translation>la partie «&#xa0;{1}&#xa0;» est incompréhensible (ligne {2})&#xa0;; ouvrez le fichier dans un tableur et réenregistrez-le en XLSX</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; declares a document type, which no spreadsheet does, so it is not read; save it anew</source>
        <translation>la partie «&#xa0;{1}&#xa0;» déclare un type de document, ce qu’aucune feuille ne fait, elle n’est donc pas lue&#xa0;; réenregistrez-la</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; is missing; open the file in a spreadsheet program and save it anew as XLSX</source>
        <translation>la partie «&#xa0;{1}&#xa0;» manque&#xa0;; ouvrez le fichier dans un tableur et réenregistrez-le en XLSX</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; unpacks to more than a sheet of tables can need, so it is not read; save the tables alone as a new XLSX</source>
        <translation>la partie «&#xa0;{1}&#xa0;» décompressée dépasse ce qu’une feuille de tables peut demander, elle n’est donc pas lue&#xa0;; enregistrez les tables seules dans un nouveau XLSX</translation>
    </message>
    <message>
        <source>the sheet &quot;{1}&quot; has more than {2} cells; take out what is not needed</source>
        <translation>la feuille «&#xa0;{1}&#xa0;» dépasse {2} cellules&#xa0;; ôtez le superflu</translation>
    </message>
    <message>
        <source>the sheet is empty; give it a row of headings and data</source>
        <translation>la feuille est vide&#xa0;; donnez-lui un en-tête et des données</translation>
    </message>
    <message>
        <source>there is no sheet &quot;{1}&quot; in the spreadsheet; add it, or give a sheet that name</source>
        <translation>il n’y a pas de feuille «&#xa0;{1}&#xa0;» dans le classeur&#xa0;; ajoutez-la, ou donnez ce nom à une feuille</translation>
    </message>
    <message>
        <source>there is no such file; give the name of a spreadsheet or a folder of tables</source>
        <translation>ce fichier n’existe pas&#xa0;; donnez le nom d’une feuille de calcul ou d’un dossier de tables</translation>
    </message>
    <message>
        <source>A forecast, not a reading: nothing was built or turned. Pipe sizes, expansion, relief and the electrical supply of a changed loop are for licensed engineers and local codes to decide.</source>
        <translation>Une prévision, pas une mesure&#xa0;: rien n’a été construit ni tourné. Diamètres, expansion, soupapes et alimentation électrique d’une boucle modifiée relèvent d’ingénieurs agréés et des règles locales.</translation>
    </message>
    <message>
        <source>No round was read yet: settings are those entered, resistances those of the design.</source>
        <translation>Aucun passage n’a encore été mesuré&#xa0;: réglages saisis, résistances du calcul.</translation>
    </message>
    <message>
        <source>Settings are those of round {1}; resistances are learned from the readings where there are enough, else taken from the design.</source>
        <translation>Les réglages sont ceux du passage {1}&#xa0;; les résistances sont apprises des mesures là où il y en a assez, sinon prises du calcul.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is in the job already; leave the row out, or give it another name</source>
        <translation>«&#xa0;{1}&#xa0;» est déjà dans le chantier&#xa0;; omettez la ligne, ou donnez un autre nom</translation>
    </message>
    <message>
        <source>a valve model needs a name; type it as its maker&apos;s table has it</source>
        <translation>un modèle de vanne demande un nom&#xa0;; tapez-le comme dans la table du fabricant</translation>
    </message>
    <message>
        <source>added at the pump, {1} at design</source>
        <translation>ajouté à la pompe, {1} au nominal</translation>
    </message>
    <message>
        <source>added below {1}, {2} at design</source>
        <translation>ajouté en aval de {1}, {2} au nominal</translation>
    </message>
    <message>
        <source>line {1} has no two columns; copy the settings and the coefficients beside them</source>
        <translation>la ligne {1} n’a pas deux colonnes&#xa0;; copiez les réglages et les coefficients à côté</translation>
    </message>
    <message>
        <source>line {1}: &quot;{2}&quot; is not a number from 0; correct it where it was copied from</source>
        <translation>ligne {1}&#xa0;: «&#xa0;{2}&#xa0;» n’est pas un nombre à partir de 0&#xa0;; corrigez-le à la source</translation>
    </message>
    <message>
        <source>no branch of the same pipe is before or after this one; move it to another pipe by &quot;Fed by&quot;</source>
        <translation>aucune branche du même tuyau n’est avant ou après celle-ci&#xa0;; déplacez-la vers un autre tuyau par «&#xa0;Alimenté par&#xa0;»</translation>
    </message>
    <message>
        <source>round {1} is closed, so this corrects its reading and the old value stays in the history; for new readings take it back (Ctrl+Z) and open the next round (Ctrl+Shift+N)</source>
        <translation>le passage {1} est clos, ceci corrige donc sa mesure et l’ancienne valeur reste dans l’historique&#xa0;; pour de nouvelles mesures annulez (Ctrl+Z) et ouvrez le passage suivant (Ctrl+Maj+N)</translation>
    </message>
    <message>
        <source>round {1} is with the supervisor and takes no more readings here; open the next round</source>
        <translation>le passage {1} est chez le responsable et n’admet plus de mesures ici&#xa0;; ouvrez le passage suivant</translation>
    </message>
    <message>
        <source>taken away with all below it</source>
        <translation>supprimé avec tout ce qui est en aval</translation>
    </message>
    <message>
        <source>the checkpoint &quot;{1}&quot; is stored; Ctrl+Shift+H shows the job as it stood there</source>
        <translation>le jalon «&#xa0;{1}&#xa0;» est enregistré&#xa0;; Ctrl+Maj+H montre le chantier tel qu’il y était</translation>
    </message>
    <message>
        <source>the most dp {1} is not above the least dp {2}; type another</source>
        <translation>la Δp maximale {1} ne dépasse pas la minimale {2}&#xa0;; tapez-en une autre</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; has its curve in the job already; leave its rows out</source>
        <translation>la pompe «&#xa0;{1}&#xa0;» a déjà sa courbe dans le chantier&#xa0;; omettez ses lignes</translation>
    </message>
    <message>
        <source>the table has no rows below its headings; fill it in</source>
        <translation>la table n’a pas de lignes sous ses titres&#xa0;; remplissez-la</translation>
    </message>
    <message>
        <source>this valve has no scale or no setting to step from; type its setting (Tab)</source>
        <translation>cette vanne n’a pas d’échelle ou pas de réglage de départ&#xa0;; tapez son réglage (Tab)</translation>
    </message>
    <message>
        <source>{2} at design instead of {1}</source>
        <translation>{2} au nominal au lieu de {1}</translation>
    </message>
    <message>
        <source>Last dp</source>
        <translation>Dernière Δp</translation>
    </message>
    <message>
        <source>Meter: {1}    Serial: ____________    Zero before: __________    Zero after: __________</source>
        <translation>Appareil&#xa0;: {1}    N°&#xa0;: ____________    Zéro avant&#xa0;: __________    Zéro après&#xa0;: __________</translation>
    </message>
    <message>
        <source>Read by: ____________________    Date: ______________    Unit of dp: {1}</source>
        <translation>Mesuré par&#xa0;: ____________________    Date&#xa0;: ______________    Unité de Δp&#xa0;: {1}</translation>
    </message>
    <message>
        <source>Round {1} ({2w}): readings in the order of the route</source>
        <translation>Passage {1} ({2w})&#xa0;: mesures dans l’ordre du parcours</translation>
    </message>
    <message>
        <source>Set now</source>
        <translation>Réglé à</translation>
    </message>
    <message>
        <source>Setting found</source>
        <translation>Réglage trouvé</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Vanne</translation>
    </message>
    <message>
        <source>dp read</source>
        <translation>Δp mesurée</translation>
    </message>
    <message>
        <source>the handbook does not stand beside the program; install the program anew</source>
        <translation>le manuel n’est pas à côté du programme&#xa0;; réinstallez le programme</translation>
    </message>
    <message>
        <source>the sample jobs do not stand beside the program; install the program anew</source>
        <translation>les chantiers d’exemple ne sont pas à côté du programme&#xa0;; réinstallez le programme</translation>
    </message>
    <message>
        <source>there is no row to import; choose a CSV or XLSX file with headings and rows</source>
        <translation>il n’y a aucune ligne à importer&#xa0;; choisissez un fichier CSV ou XLSX avec en-têtes et lignes</translation>
    </message>
    <message>
        <source>what was asked for is in {1}; open it from there</source>
        <translation>ce qui était demandé est dans {1}&#xa0;; ouvrez-le là</translation>
    </message>
    <message>
        <source>{1} cannot be written ({2}); choose a place with room</source>
        <translation>{1} ne peut pas être écrit ({2})&#xa0;; choisissez un lieu avec de la place</translation>
    </message>
    <message>
        <source>{1} is in the job; Ctrl+Z takes it back</source>
        <translation>{1} est dans le chantier&#xa0;; Ctrl+Z l’annule</translation>
    </message>
    <message>
        <source>Not shown that this circuit governs the pump head: the part that is missing is marked above; mend it, or sign with the reason.</source>
        <translation>Non montré que ce circuit détermine la hauteur de la pompe&#xa0;: ce qui manque est marqué ci-dessus&#xa0;; corrigez-le, ou signez avec le motif.</translation>
    </message>
    <message>
        <source>Not shown that {1} is the index: it takes {2} % of design, and fully open too with less are {3}; match groups and risers, read again, or sign with the reason</source>
        <translation>Non montré que {1} est le point défavorisé&#xa0;: il prend {2}&#xa0;% du nominal, ouverts en grand aussi avec moins&#xa0;: {3}&#xa0;; équilibrez groupes et colonnes, remesurez, ou signez avec le motif</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no supervisor or engineer of this job; let one of them work at this desk, menu Round, Person: {2}</source>
        <translation>«&#xa0;{1}&#xa0;» n’est ni responsable ni ingénieur de ce chantier&#xa0;; mettez l’un d’eux à ce poste, menu Passage, Personne&#xa0;: {2}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is typed and not stored; store it with Enter or clear it with Esc before the handle moves</source>
        <translation>«&#xa0;{1}&#xa0;» est tapé et non enregistré&#xa0;; enregistrez avec Entrée ou effacez avec Échap avant de bouger la poignée</translation>
    </message>
    <message>
        <source>a step of a review is not undone; withdraw it with a reason on the place Review (Alt+6), below the rounds</source>
        <translation>une étape de revue ne s’annule pas&#xa0;; retirez-la avec un motif dans Revue (Alt+6), sous les passages</translation>
    </message>
    <message>
        <source>done again: {1}; Ctrl+Z takes it back</source>
        <translation>rétabli&#xa0;: {1}&#xa0;; Ctrl+Z l’annule</translation>
    </message>
    <message>
        <source>every valve of the walk is read; close the round (Ctrl+Shift+W), or read this one again (Ctrl+R)</source>
        <translation>chaque vanne de la tournée est mesurée&#xa0;; clôturez le passage (Ctrl+Maj+W), ou remesurez celle-ci (Ctrl+R)</translation>
    </message>
    <message>
        <source>every valve on the path to {1} is fully open, but it is not shown to be the index</source>
        <translation>chaque vanne sur le chemin vers {1} est ouverte en grand, mais il n’est pas montré que c’est le point défavorisé</translation>
    </message>
    <message>
        <source>its flow changed by {1} % against its neighbours since round {2}, with no valve moved around it; look for air, a clogged strainer or a moving control valve</source>
        <translation>son débit a changé de {1}&#xa0;% face aux voisines depuis le passage {2}, sans vanne manœuvrée autour&#xa0;; cherchez de l’air, un filtre encrassé ou une vanne de régulation mobile</translation>
    </message>
    <message>
        <source>its valve is fully open and it takes {1} % of design, less than {2} on the index circuit with {3} %; match groups and risers, read both again, or give the reason</source>
        <translation>sa vanne est ouverte en grand et elle prend {1}&#xa0;% du nominal, moins que {2} sur le circuit défavorisé avec {3}&#xa0;%&#xa0;; équilibrez groupes et colonnes, remesurez les deux, ou donnez le motif</translation>
    </message>
    <message>
        <source>no comment is open and no item waits; close round {1} with Ctrl+Shift+W</source>
        <translation>aucun commentaire n’est ouvert et rien n’attend&#xa0;; clôturez le passage {1} avec Ctrl+Maj+W</translation>
    </message>
    <message>
        <source>no comment is open and no item waits; open the next round (Ctrl+Shift+N), or go on with the report (Alt+7)</source>
        <translation>aucun commentaire n’est ouvert et rien n’attend&#xa0;; ouvrez le passage suivant (Ctrl+Maj+N), ou passez au rapport (Alt+7)</translation>
    </message>
    <message>
        <source>no key file is chosen; choose one, or make a certificate</source>
        <translation>aucun fichier de clé n’est choisi&#xa0;; choisissez-en un, ou créez un certificat</translation>
    </message>
    <message>
        <source>no person is chosen at this desk, so readings name nobody; choose one in the menu Round, Person</source>
        <translation>aucune personne n’est choisie à ce poste, les mesures ne nomment donc personne&#xa0;; choisissez-en une dans le menu Passage, Personne</translation>
    </message>
    <message>
        <source>read-and-set leaves {1} more across the index valve {2} than its open drop, {3w} at the shaft</source>
        <translation>mesurer-régler laisse {1} de plus à la vanne défavorisée {2} que sa perte vanne ouverte, {3w} à l’arbre</translation>
    </message>
    <message>
        <source>readings of the final round that name no person: {1} of {2}; choose the person (Round, Person) before reading</source>
        <translation>mesures du passage final qui ne nomment personne&#xa0;: {1} sur {2}&#xa0;; choisissez la personne (Passage, Personne) avant de mesurer</translation>
    </message>
    <message>
        <source>round {1} opened; close it (Ctrl+Shift+W) once its valves are held and read</source>
        <translation>passage {1} ouvert&#xa0;; clôturez-le (Ctrl+Maj+W) quand ses vannes sont tenues et mesurées</translation>
    </message>
    <message>
        <source>round {1} opened; look at this first: {2}</source>
        <translation>passage {1} ouvert&#xa0;; voyez d’abord ceci&#xa0;: {2}</translation>
    </message>
    <message>
        <source>the impeller in the pump is not known, the trimmed one would have {1} % of its diameter; find it with a shutoff test or enter it</source>
        <translation>la roue de la pompe est inconnue, rognée elle aurait {1}&#xa0;% de son diamètre&#xa0;; trouvez-la par un essai à débit nul ou saisissez-la</translation>
    </message>
    <message>
        <source>the job open here last is {1}; the menu File, Open Recent opens it</source>
        <translation>le dernier chantier ouvert ici est {1}&#xa0;; le menu Fichier, Ouvrir récents, l’ouvre</translation>
    </message>
    <message>
        <source>the passphrase of the key is missing; type it here</source>
        <translation>la phrase secrète de la clé manque&#xa0;; saisissez-la ici</translation>
    </message>
    <message>
        <source>undone: {1}; Ctrl+Shift+Z does it again</source>
        <translation>annulé&#xa0;: {1}&#xa0;; Ctrl+Maj+Z le rétablit</translation>
    </message>
    <message>
        <source>{1} is above the range of instrument {2}, which ends at {3}; read again, with another instrument if need be, or give the reason</source>
        <translation>{1} dépasse la plage de l’instrument {2}, qui finit à {3}&#xa0;; remesurez, au besoin avec un autre instrument, ou donnez le motif</translation>
    </message>
    <message>
        <source>{1} is named elsewhere in the job ({2w}) and stays; correct the row, or add another person</source>
        <translation>{1} est nommé ailleurs dans le chantier ({2w}) et reste&#xa0;; corrigez la ligne ou ajoutez une autre personne</translation>
    </message>
    <message>
        <source>{1}; press Ctrl+R to read it again</source>
        <translation>{1}&#xa0;; appuyez sur Ctrl+R pour remesurer</translation>
    </message>
    <message>
        <source>{1}; press Ctrl+U to store {2}</source>
        <translation>{1}&#xa0;; appuyez sur Ctrl+U pour enregistrer {2}</translation>
    </message>
    <message>
        <source>{1} was not written: this can be written with the ending {2}; give the file one of these</source>
        <translation>{1} n’a pas été écrit&#xa0;: l’extension possible est {2}&#xa0;; donnez-en une au fichier</translation>
    </message>
    <message>
        <source>1 pasted reading</source>
        <translation>1 mesure collée</translation>
    </message>
    <message>
        <source>Caution: hot or chilled water and pressure. Check rating and fittings of the hoses, open test ports slowly, vent the meter, keep clear of moving and live parts; local codes and the site&apos;s rules come first.</source>
        <translation>Attention&#xa0;: eau chaude ou glacée et pression. Vérifiez la tenue et les raccords des flexibles, ouvrez lentement les prises, purgez l’appareil, restez à l’écart des pièces en mouvement et sous tension&#xa0;; les règles locales et celles du site priment.</translation>
    </message>
    <message>
        <source>Change of zones</source>
        <translation>Changement de zones</translation>
    </message>
    <message>
        <source>Computed from</source>
        <translation>Calculé de</translation>
    </message>
    <message>
        <source>DP {1} at the reference, {2}</source>
        <translation>Δp {1} à la référence, {2}</translation>
    </message>
    <message>
        <source>DP {1} at {2}, {3}</source>
        <translation>Δp {1} à {2}, {3}</translation>
    </message>
    <message>
        <source>DP {1} in place of {2}, {3}</source>
        <translation>Δp {1} au lieu de {2}, {3}</translation>
    </message>
    <message>
        <source>DP {1} read again, {2}</source>
        <translation>Δp {1} remesurée, {2}</translation>
    </message>
    <message>
        <source>DP {1} with the valve shut, {2}</source>
        <translation>Δp {1} vanne fermée, {2}</translation>
    </message>
    <message>
        <source>DP {1}, {2}</source>
        <translation>Δp {1}, {2}</translation>
    </message>
    <message>
        <source>Import from {1}</source>
        <translation>Import depuis {1}</translation>
    </message>
    <message>
        <source>Last round read</source>
        <translation>Dernier passage mesuré</translation>
    </message>
    <message>
        <source>New job {1}</source>
        <translation>Nouveau chantier {1}</translation>
    </message>
    <message>
        <source>New practice job</source>
        <translation>Nouveau chantier d’exercice</translation>
    </message>
    <message>
        <source>Record readings from {1}</source>
        <translation>Mesures reprises de {1}</translation>
    </message>
    <message>
        <source>Sign the report</source>
        <translation>Signer le rapport</translation>
    </message>
    <message>
        <source>The loop in the last round read</source>
        <translation>La boucle au dernier passage mesuré</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit of {2w}; use one of {3}</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas une unité de {2w}&#xa0;; prenez l’une de {3}</translation>
    </message>
    <message>
        <source>accept round {1}</source>
        <translation>accepter le passage {1}</translation>
    </message>
    <message>
        <source>all {1} terminals were read in the last round</source>
        <translation>les {1} terminaux ont tous été mesurés au dernier passage</translation>
    </message>
    <message>
        <source>answer to comment on {1w}</source>
        <translation>réponse au commentaire sur {1w}</translation>
    </message>
    <message>
        <source>branch {1}</source>
        <translation>branche {1}</translation>
    </message>
    <message>
        <source>cannot be read, {1}</source>
        <translation>illisible, {1}</translation>
    </message>
    <message>
        <source>checkpoint {1}</source>
        <translation>jalon {1}</translation>
    </message>
    <message>
        <source>choice of both, {1}</source>
        <translation>les deux choisis, {1}</translation>
    </message>
    <message>
        <source>choice of {1}, {2}</source>
        <translation>{1} choisi, {2}</translation>
    </message>
    <message>
        <source>clock of {1}, nothing added</source>
        <translation>horloge de {1}, rien ajouté</translation>
    </message>
    <message>
        <source>clock of {1}, {2} added</source>
        <translation>horloge de {1}, {2} ajouté</translation>
    </message>
    <message>
        <source>close round {1}</source>
        <translation>clore le passage {1}</translation>
    </message>
    <message>
        <source>comment on {1w}</source>
        <translation>commentaire sur {1w}</translation>
    </message>
    <message>
        <source>curve of {1}</source>
        <translation>courbe de {1}</translation>
    </message>
    <message>
        <source>deficiency {1}</source>
        <translation>réserve {1}</translation>
    </message>
    <message>
        <source>device at {1}</source>
        <translation>organe à {1}</translation>
    </message>
    <message>
        <source>doubtful, {1}</source>
        <translation>douteux, {1}</translation>
    </message>
    <message>
        <source>flow {1}, {2}</source>
        <translation>débit {1}, {2}</translation>
    </message>
    <message>
        <source>fluid of the job</source>
        <translation>fluide du chantier</translation>
    </message>
    <message>
        <source>form of the energy code&apos;s clause</source>
        <translation>forme de l’article du code énergétique</translation>
    </message>
    <message>
        <source>gauge rise {1}, {2}</source>
        <translation>différence au manomètre {1}, {2}</translation>
    </message>
    <message>
        <source>hold at {1}, {2}</source>
        <translation>tenir à {1}, {2}</translation>
    </message>
    <message>
        <source>instrument {1}</source>
        <translation>instrument {1}</translation>
    </message>
    <message>
        <source>load of a year</source>
        <translation>charge d’une année</translation>
    </message>
    <message>
        <source>merge of 1 action of {1}</source>
        <translation>fusion de 1 action de {1}</translation>
    </message>
    <message>
        <source>merge of {1} actions of {2}</source>
        <translation>fusion de {1} actions de {2}</translation>
    </message>
    <message>
        <source>meter {1} was due for calibration on {2}, {3} days ago; readings are kept and listed in the report, take another meter (menu Round, Meter) or give the reason (Job, If overdue, why)</source>
        <translation>l’étalonnage de l’appareil {1} était dû le {2}, il y a {3} jours&#xa0;; les mesures sont gardées et citées dans le rapport, prenez un autre appareil (menu Passage, Appareil) ou donnez la raison (Chantier, Si échu, pourquoi)</translation>
    </message>
    <message>
        <source>new branch {1}</source>
        <translation>nouvelle branche {1}</translation>
    </message>
    <message>
        <source>new instrument {1}</source>
        <translation>nouvel instrument {1}</translation>
    </message>
    <message>
        <source>new job</source>
        <translation>nouveau chantier</translation>
    </message>
    <message>
        <source>new person</source>
        <translation>nouvelle personne</translation>
    </message>
    <message>
        <source>new pump {1}</source>
        <translation>nouvelle pompe {1}</translation>
    </message>
    <message>
        <source>new set-point {1}</source>
        <translation>nouvelle consigne {1}</translation>
    </message>
    <message>
        <source>new valve model {1}</source>
        <translation>nouveau modèle de vanne {1}</translation>
    </message>
    <message>
        <source>no reason, {1}</source>
        <translation>aucun motif, {1}</translation>
    </message>
    <message>
        <source>not doubtful, {1}</source>
        <translation>non douteux, {1}</translation>
    </message>
    <message>
        <source>not stored, this is only in memory: {1}; Save a Copy Elsewhere, on the strip above, keeps it</source>
        <translation>non enregistré, seulement en mémoire&#xa0;: {1}&#xa0;; Enregistrer une copie ailleurs, dans le bandeau du haut, le conserve</translation>
    </message>
    <message>
        <source>note, {1}</source>
        <translation>note, {1}</translation>
    </message>
    <message>
        <source>notes, {1}</source>
        <translation>notes, {1}</translation>
    </message>
    <message>
        <source>nothing is added to this laptop&apos;s clock; times are its own from now on</source>
        <translation>rien n’est ajouté à l’horloge de ce portable&#xa0;; les heures sont désormais les siennes</translation>
    </message>
    <message>
        <source>open round {1}</source>
        <translation>ouvrir le passage {1}</translation>
    </message>
    <message>
        <source>open round {1}, witness of {2} terminals</source>
        <translation>ouvrir le passage {1}, témoin de {2} terminaux</translation>
    </message>
    <message>
        <source>pasted table of {1}</source>
        <translation>tableau collé de {1}</translation>
    </message>
    <message>
        <source>person {1}</source>
        <translation>personne {1}</translation>
    </message>
    <message>
        <source>photo {1}</source>
        <translation>photo {1}</translation>
    </message>
    <message>
        <source>readiness: {1}</source>
        <translation>préparation&#xa0;: {1}</translation>
    </message>
    <message>
        <source>reason, {1}</source>
        <translation>motif, {1}</translation>
    </message>
    <message>
        <source>reason: {1}</source>
        <translation>motif&#xa0;: {1}</translation>
    </message>
    <message>
        <source>remove instrument {1}</source>
        <translation>retirer l’instrument {1}</translation>
    </message>
    <message>
        <source>remove person {1}</source>
        <translation>retirer la personne {1}</translation>
    </message>
    <message>
        <source>remove photo</source>
        <translation>retirer la photo</translation>
    </message>
    <message>
        <source>remove readiness line: {1}</source>
        <translation>retirer la ligne de préparation&#xa0;: {1}</translation>
    </message>
    <message>
        <source>remove set-point {1}</source>
        <translation>retirer la consigne {1}</translation>
    </message>
    <message>
        <source>reopen comment on {1w}</source>
        <translation>rouvrir le commentaire sur {1w}</translation>
    </message>
    <message>
        <source>resolve comment on {1w}</source>
        <translation>résoudre le commentaire sur {1w}</translation>
    </message>
    <message>
        <source>route of {1}</source>
        <translation>parcours de {1}</translation>
    </message>
    <message>
        <source>send back round {1}</source>
        <translation>renvoyer le passage {1}</translation>
    </message>
    <message>
        <source>send round {1}</source>
        <translation>envoyer le passage {1}</translation>
    </message>
    <message>
        <source>set-point of {1}</source>
        <translation>consigne de {1}</translation>
    </message>
    <message>
        <source>setting {1} in place of {2}, {3}</source>
        <translation>réglage {1} au lieu de {2}, {3}</translation>
    </message>
    <message>
        <source>setting {1}, {2}</source>
        <translation>réglage {1}, {2}</translation>
    </message>
    <message>
        <source>table of {1}</source>
        <translation>tableau de {1}</translation>
    </message>
    <message>
        <source>test of {1}, {2w}: {3w} = {4}</source>
        <translation>essai de {1}, {2w}&#xa0;: {3w} = {4}</translation>
    </message>
    <message>
        <source>the PDF has no place for the signature of the {1w}; write the report again</source>
        <translation>le PDF n’a pas de place pour la signature «&#xa0;{1w}&#xa0;»&#xa0;; réécrivez le rapport</translation>
    </message>
    <message>
        <source>the cell holds {1w} and not a value; mend its formula or write the value</source>
        <translation>la cellule contient {1w} et non une valeur&#xa0;; corrigez sa formule ou écrivez la valeur</translation>
    </message>
    <message>
        <source>the design losses: no learned loop that fits the readings was there</source>
        <translation>les pertes nominales&#xa0;: aucune boucle apprise conforme aux mesures n’était là</translation>
    </message>
    <message>
        <source>the file cannot be read ({1w}); check its permissions</source>
        <translation>le fichier est illisible ({1w})&#xa0;; vérifiez ses droits</translation>
    </message>
    <message>
        <source>the file is damaged ({1w}); keep it as it is and open a copy from before</source>
        <translation>le fichier est endommagé ({1w})&#xa0;; gardez-le tel quel et ouvrez une copie antérieure</translation>
    </message>
    <message>
        <source>the file is no XLSX spreadsheet, or is damaged ({1w}); save it anew as XLSX</source>
        <translation>le fichier n’est pas une feuille XLSX, ou est endommagé ({1w})&#xa0;; réenregistrez-le en XLSX</translation>
    </message>
    <message>
        <source>the learned loop for all that stays, the losses entered here for what is new</source>
        <translation>la boucle apprise pour tout ce qui reste, les pertes saisies ici pour ce qui est nouveau</translation>
    </message>
    <message>
        <source>the spreadsheet cannot be written ({1w}); choose a place with room</source>
        <translation>la feuille de calcul ne peut être écrite ({1w})&#xa0;; choisissez un lieu avec de la place</translation>
    </message>
    <message>
        <source>the {1w} has signed already; a signed report is not signed over, write a new one</source>
        <translation>«&#xa0;{1w}&#xa0;» a déjà signé&#xa0;; un rapport signé ne se signe pas de nouveau, écrivez-en un nouveau</translation>
    </message>
    <message>
        <source>this clock is {1} h {2} min before the last stored action, so times of readings are uncertain; Ctrl+Alt+O, Set Clock Offset, sets it right</source>
        <translation>cette horloge est {1} h {2} min avant la dernière action enregistrée, les heures des mesures sont donc incertaines&#xa0;; Ctrl+Alt+O, Décaler l’horloge, la remet juste</translation>
    </message>
    <message>
        <source>units of the job</source>
        <translation>unités du chantier</translation>
    </message>
    <message>
        <source>usual readiness list</source>
        <translation>liste de préparation usuelle</translation>
    </message>
    <message>
        <source>valve model {1} removed</source>
        <translation>modèle de vanne {1} retiré</translation>
    </message>
    <message>
        <source>withdraw revision {1} of the report</source>
        <translation>retirer la révision {1} du rapport</translation>
    </message>
    <message>
        <source>withdraw round {1}</source>
        <translation>retirer le passage {1}</translation>
    </message>
    <message>
        <source>work goes on in the copy {1}; later open the first file and take this in with Ctrl+Shift+M, Merge Another Laptop</source>
        <translation>le travail continue dans la copie {1}&#xa0;; ouvrez plus tard le premier fichier et reprenez celle-ci avec Ctrl+Maj+M, Fusionner un autre portable</translation>
    </message>
    <message>
        <source>written between {1} and {2} by the clock of {3}, which was set right later; the order of entry holds, not the times</source>
        <translation>écrit entre {1} et {2} par l’horloge de {3}, remise à l’heure plus tard&#xa0;; c’est l’ordre de saisie qui vaut, non les heures</translation>
    </message>
    <message>
        <source>{1w} of the job</source>
        <translation>{1w} du chantier</translation>
    </message>
    <message>
        <source>{1w} of {2}</source>
        <translation>{1w} de {2}</translation>
    </message>
    <message>
        <source>{1} % by mass is outside the range of {2w}, {3} to {4} %; correct the concentration</source>
        <translation>{1}&#xa0;% en masse est hors de la plage de {2w}, {3} à {4}&#xa0;%&#xa0;; corrigez la concentration</translation>
    </message>
    <message>
        <source>{1} are added to this laptop&apos;s clock in this job; once its own clock is right, Ctrl+Alt+O takes that back</source>
        <translation>{1} sont ajoutés à l’horloge de ce portable dans ce chantier&#xa0;; une fois sa propre horloge juste, Ctrl+Alt+O retire cela</translation>
    </message>
    <message>
        <source>{1} is outside the range of {2w}, {3} to {4}; correct the temperature</source>
        <translation>{1} est hors de la plage de {2w}, {3} à {4}&#xa0;; corrigez la température</translation>
    </message>
    <message>
        <source>{1} pasted readings</source>
        <translation>{1} mesures collées</translation>
    </message>
    <message>
        <source>{3} took back what was added to this laptop&apos;s clock: it showed {1} when it was {2}; times written before stay as they were</source>
        <translation>{3} a retiré ce qui était ajouté à l’horloge de ce portable&#xa0;: elle montrait {1} quand il était {2}&#xa0;; les heures écrites avant sont restées telles quelles</translation>
    </message>
    <message>
        <source>{4} set this laptop&apos;s clock right: it showed {1} when it was {2}; from then on {3} are added, times written before stay as they were</source>
        <translation>{4} a remis à l’heure l’horloge de ce portable&#xa0;: elle montrait {1} quand il était {2}&#xa0;; depuis, {3} sont ajoutés, les heures écrites avant sont restées telles quelles</translation>
    </message>
    <message>
        <source>1 reading more or changed</source>
        <translation>1 mesure de plus ou modifiée</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>alimentée par</translation>
    </message>
    <message>
        <source>kept, changed or used</source>
        <translation>gardé, modifié ou utilisé</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>pump readings</source>
        <translation>mesures de pompe</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>mesures</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>supprimé</translation>
    </message>
    <message>
        <source>revision {1}</source>
        <translation>révision {1}</translation>
    </message>
    <message>
        <source>round {1}</source>
        <translation>passage {1}</translation>
    </message>
    <message>
        <source>signed report</source>
        <translation>rapport signé</translation>
    </message>
    <message>
        <source>the pump</source>
        <translation>la pompe</translation>
    </message>
    <message>
        <source>the report was stopped before its last page and nothing was written; make it again when there is time</source>
        <translation>le rapport a été arrêté avant sa dernière page et rien n’a été écrit&#xa0;; refaites-le quand il y aura le temps</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>{1w} without them</source>
        <translation>{1w} sans elles</translation>
    </message>
    <message>
        <source>{1} bytes</source>
        <translation>{1} octets</translation>
    </message>
    <message>
        <source>{1} readings more or changed</source>
        <translation>{1} mesures de plus ou modifiées</translation>
    </message>
    <message>
        <source>{1} rows</source>
        <translation>{1} lignes</translation>
    </message>
    <message>
        <source>Excess as read</source>
        <translation>Excédent mesuré</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Preuve</translation>
    </message>
    <message>
        <source>The building of this report is simulated: a program made up every reading, for practice. Nothing was measured, and nothing here is true of any real plant.</source>
        <translation>Le bâtiment de ce rapport est simulé&#xa0;: un programme a inventé chaque mesure, pour s’exercer. Rien n’a été mesuré, et rien ici ne vaut pour une installation réelle.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is typed in Adjust and not stored; store it there with Enter, or clear it with Esc</source>
        <translation>«&#xa0;{1}&#xa0;» est tapé dans Régler et non enregistré&#xa0;; enregistrez-le là avec Entrée, ou effacez-le avec Échap</translation>
    </message>
    <message>
        <source>a flow of {1} is below zero and is not stored; turn the flow meter round and type the flow without a sign</source>
        <translation>un débit de {1} est inférieur à zéro et n’est pas enregistré&#xa0;; retournez le débitmètre et tapez le débit sans signe</translation>
    </message>
    <message>
        <source>flow measured otherwise</source>
        <translation>débit mesuré autrement</translation>
    </message>
    <message>
        <source>flow measured otherwise, method not noted</source>
        <translation>débit mesuré autrement, méthode non notée</translation>
    </message>
    <message>
        <source>flow measured otherwise, with {1}</source>
        <translation>débit mesuré autrement, avec {1}</translation>
    </message>
    <message>
        <source>not chosen when merging; {1w} was</source>
        <translation>non choisi lors de la fusion&#xa0;; choisi&#xa0;: {1w}</translation>
    </message>
    <message>
        <source>not seen when round {1} was {2w} on {3}</source>
        <translation>non vu quand le passage {1} a été {2w} sur {3}</translation>
    </message>
    <message>
        <source>readings of the other laptop were taken in</source>
        <translation>les mesures de l’autre portable ont été reprises</translation>
    </message>
    <message>
        <source>round {1} is closed and not sent; send it and have it accepted by a supervisor</source>
        <translation>le passage {1} est clos et n’est pas envoyé&#xa0;; envoyez-le et faites-le accepter par un responsable</translation>
    </message>
    <message>
        <source>round {1} is sent and not accepted; have it accepted by a supervisor</source>
        <translation>le passage {1} est envoyé et n’est pas accepté&#xa0;; faites-le accepter par un responsable</translation>
    </message>
    <message>
        <source>round {1} is still open; close it, send it and have it accepted by a supervisor</source>
        <translation>le passage {1} est encore ouvert&#xa0;; clôturez-le, envoyez-le et faites-le accepter par un responsable</translation>
    </message>
    <message>
        <source>round {1} is {2w} and cannot become {3w}; take the steps in turn: close, send, decide</source>
        <translation>le passage {1} est {2w} et ne peut pas devenir {3w}&#xa0;; suivez les étapes dans l’ordre&#xa0;: clore, envoyer, décider</translation>
    </message>
    <message>
        <source>round {1} was sent back; answer its comments, send it again and have it accepted by a supervisor</source>
        <translation>le passage {1} a été renvoyé&#xa0;; répondez à ses commentaires, renvoyez-le et faites-le accepter par un responsable</translation>
    </message>
    <message>
        <source>the flow is stored, but not how it was measured; write that into its note (Shift+Enter, Ctrl+M), or choose the flow meter before you read (menu Round)</source>
        <translation>le débit est enregistré, mais non la façon dont il a été mesuré&#xa0;; écrivez-la dans sa note (Maj+Entrée, Ctrl+M) ou choisissez le débitmètre avant de mesurer (menu Passage)</translation>
    </message>
    <message>
        <source>the job is back as it was stored last, {1}; go on where the cursor stands</source>
        <translation>le chantier est revenu tel qu’il fut enregistré en dernier, {1}&#xa0;; continuez là où se trouve le curseur</translation>
    </message>
    <message>
        <source>the next flow typed takes the place of the one before; type it and press Enter</source>
        <translation>le prochain débit tapé remplace le précédent&#xa0;; tapez-le puis Entrée</translation>
    </message>
    <message>
        <source>the reference was read {1w}, the limit is {2w}; read it again</source>
        <translation>la référence a été mesurée {1w}, la limite est {2w}&#xa0;; remesurez-la</translation>
    </message>
    <message>
        <source>the same revision was signed on two laptops; the other one was chosen</source>
        <translation>la même révision a été signée sur deux portables&#xa0;; l’autre a été choisie</translation>
    </message>
    <message>
        <source>this branch has no usable valve table, a dp gives no flow here; add the table, or type its flow in Walk</source>
        <translation>cette branche n’a pas de table de vanne utilisable, une Δp n’y donne pas de débit&#xa0;; ajoutez la table ou tapez son débit dans Tournée</translation>
    </message>
    <message>
        <source>{1w} struck</source>
        <translation>{1w} biffé</translation>
    </message>
    <message>
        <source>{1} (section {2})</source>
        <translation>{1} (section {2})</translation>
    </message>
    <message>
        <source>*  end of the index circuit</source>
        <translation>*  extrémité du circuit défavorisé</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>Accepté par</translation>
    </message>
    <message>
        <source>By the readings</source>
        <translation>Selon les mesures</translation>
    </message>
    <message>
        <source>By the readings: cannot be decided within the measuring uncertainty</source>
        <translation>Selon les mesures&#xa0;: indécidable dans l’incertitude de mesure</translation>
    </message>
    <message>
        <source>By the readings: not within tolerance</source>
        <translation>Selon les mesures&#xa0;: hors tolérance</translation>
    </message>
    <message>
        <source>By the readings: within tolerance</source>
        <translation>Selon les mesures&#xa0;: dans la tolérance</translation>
    </message>
    <message>
        <source>By the readings: within tolerance; index circuit not proved</source>
        <translation>Selon les mesures&#xa0;: dans la tolérance&#xa0;; circuit défavorisé non prouvé</translation>
    </message>
    <message>
        <source>Files kept in the workbook: {1}; the pictures among them follow.</source>
        <translation>Fichiers gardés dans le classeur&#xa0;: {1}&#xa0;; les images parmi eux suivent.</translation>
    </message>
    <message>
        <source>Nobody yet: round {1} waits for the supervisor</source>
        <translation>Personne encore&#xa0;: le passage {1} attend le responsable</translation>
    </message>
    <message>
        <source>Nobody yet: round {1} was not sent to a supervisor</source>
        <translation>Personne encore&#xa0;: le passage {1} n’a pas été envoyé à un responsable</translation>
    </message>
    <message>
        <source>Nobody: the supervisor sent round {1} back</source>
        <translation>Personne&#xa0;: le responsable a renvoyé le passage {1}</translation>
    </message>
    <message>
        <source>Not known: {1} of {2} terminals read in this round</source>
        <translation>Inconnu&#xa0;: terminaux mesurés à ce passage&#xa0;: {1} sur {2}</translation>
    </message>
    <message>
        <source>Trim or slow</source>
        <translation>Rogner ou ralentir</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is typed in Walk and not entered; store it there with Enter, or clear it with Esc</source>
        <translation>«&#xa0;{1}&#xa0;» est tapé dans la tournée et pas saisi&#xa0;; enregistrez-le là avec Entrée, ou effacez-le avec Échap</translation>
    </message>
    <message>
        <source>at the sum of the flows, {1}, the gauges read {2} and the pump&apos;s curve gives {3}: farther apart than their uncertainty of {4}; check gauges, speed and impeller and read again before the pump is changed</source>
        <translation>à la somme des débits, {1}, les manomètres indiquent {2} et la courbe de la pompe donne {3}&#xa0;: plus éloignés que leur incertitude de {4}&#xa0;; vérifiez manomètres, vitesse et roue et remesurez avant de modifier la pompe</translation>
    </message>
    <message>
        <source>by the loop&apos;s readings the pump makes {1} too much at design flow, {2w}; lower its speed or trim its impeller after the valves are set, by a licensed person and within the limits of the maker and the local code. The number under Decision in Pump is another one: from the pump&apos;s curve, at full speed</source>
        <translation>d’après les mesures de la boucle la pompe fournit {1} de trop au débit nominal, {2w}&#xa0;; réduisez sa vitesse ou faites rogner sa roue une fois les vannes réglées, par une personne habilitée et dans les limites du fabricant et des règles locales. Le nombre de Décision dans Pompe est différent&#xa0;: d’après la courbe de la pompe, à pleine vitesse</translation>
    </message>
    <message>
        <source>by the readings the last round is within tolerance</source>
        <translation>selon les mesures, le dernier passage est dans la tolérance</translation>
    </message>
    <message>
        <source>by the readings the last round is within tolerance; its index circuit is not proved</source>
        <translation>selon les mesures, le dernier passage est dans la tolérance&#xa0;; son circuit défavorisé n’est pas prouvé</translation>
    </message>
    <message>
        <source>by the readings the last round is {1w}; go on balancing, or give the reason why it stays so</source>
        <translation>selon les mesures, le dernier passage est {1w}&#xa0;; continuez l’équilibrage, ou dites pourquoi il reste ainsi</translation>
    </message>
    <message>
        <source>every round is accepted by a supervisor</source>
        <translation>chaque passage est accepté par un responsable</translation>
    </message>
    <message>
        <source>follow the word now; {1} is expected once all valves are set</source>
        <translation>suivez le mot maintenant&#xa0;; {1} est attendu une fois toutes les vannes réglées</translation>
    </message>
    <message>
        <source>hold at {1} for now; the learned loop advises {2} with the others set, read it again then</source>
        <translation>tenez {1} pour l’instant&#xa0;; la boucle apprise conseille {2}, les autres réglées, remesurez-la alors</translation>
    </message>
    <message>
        <source>hold at {1} for now; {2} % of target expected here with the others set, turn to {3} then</source>
        <translation>tenez {1} pour l’instant&#xa0;; {2}&#xa0;% de la cible attendus ici, les autres réglées, tournez alors à {3}</translation>
    </message>
    <message>
        <source>in round {1}, which is open, no valve may be turned; close it first</source>
        <translation>dans le passage {1}, ouvert, aucune vanne ne se tourne&#xa0;; clôturez-le d’abord</translation>
    </message>
    <message>
        <source>leave it at {1}; {2} % of target expected here with the others set</source>
        <translation>laissez-la à {1}&#xa0;; {2}&#xa0;% de la cible attendus ici, les autres réglées</translation>
    </message>
    <message>
        <source>no pump or static lift is joined to this part, its nodes: {1}; join it to the loop or add its pump</source>
        <translation>aucune pompe ni hauteur statique n’est reliée à cette partie, ses nœuds&#xa0;: {1}&#xa0;; reliez-la à la boucle ou ajoutez sa pompe</translation>
    </message>
    <message>
        <source>not done yet, {1w}</source>
        <translation>pas encore fait, {1w}</translation>
    </message>
    <message>
        <source>not proved; points against it, listed below: {1}</source>
        <translation>non prouvé&#xa0;; points contre, listés ci-dessous&#xa0;: {1}</translation>
    </message>
    <message>
        <source>nothing to do, {1w}</source>
        <translation>rien à faire, {1w}</translation>
    </message>
    <message>
        <source>points of the pump curve: {1}; give at least two of falling head</source>
        <translation>points de la courbe de la pompe&#xa0;: {1}&#xa0;; donnez-en au moins deux à hauteur décroissante</translation>
    </message>
    <message>
        <source>points of the pump&apos;s curve: {1}; this law needs {2w}, add or remove points</source>
        <translation>points de la courbe de cette pompe&#xa0;: {1}&#xa0;; cette loi en demande {2w}, ajoutez ou retirez des points</translation>
    </message>
    <message>
        <source>points of the valve table: {1}; give at least two, the highest being fully open</source>
        <translation>points de la table de la vanne&#xa0;: {1}&#xa0;; donnez-en au moins deux, le plus haut étant ouverte en grand</translation>
    </message>
    <message>
        <source>proved: every valve on the index path {1} fully open, and one in every group; no discharge valve is on record</source>
        <translation>prouvé&#xa0;: chaque vanne du chemin défavorisé {1} ouverte en grand, et une dans chaque groupe&#xa0;; aucune vanne de refoulement n’est enregistrée</translation>
    </message>
    <message>
        <source>readings taken after its calibration ran out on {2}: {1}</source>
        <translation>mesures faites après l’échéance de son étalonnage le {2}&#xa0;: {1}</translation>
    </message>
    <message>
        <source>reference of its group, at {1}; open it fully to {2}, the others are set to it</source>
        <translation>référence de son groupe, à {1}&#xa0;; ouvrez-la en grand à {2}, les autres se règlent sur elle</translation>
    </message>
    <message>
        <source>reference of its group, fully open; leave it, the others are set to it</source>
        <translation>référence de son groupe, ouverte en grand&#xa0;; laissez-la, les autres se règlent sur elle</translation>
    </message>
    <message>
        <source>round {2} was sent back, and comments that nobody has answered: {1}, the first is &quot;{3}&quot;; answer or resolve each, then send it</source>
        <translation>le passage {2} a été renvoyé, et commentaires restés sans réponse&#xa0;: {1}, le premier est «&#xa0;{3}&#xa0;»&#xa0;; répondez à chacun ou réglez-le, puis envoyez-le</translation>
    </message>
    <message>
        <source>terminals of the witness round that are not read again: {1}; read them</source>
        <translation>terminaux du passage témoin non remesurés&#xa0;: {1}&#xa0;; mesurez-les</translation>
    </message>
    <message>
        <source>the oldest reading the aim rests on is {1w} old, the limit is {2w}; read it again</source>
        <translation>la mesure la plus ancienne de la visée date de {1w}, la limite est {2w}&#xa0;; remesurez-la</translation>
    </message>
    <message>
        <source>this circuit shares its flow with others ({1}) and has no balancing device; put one on its return, or say why it is not balanced</source>
        <translation>ce circuit partage son débit avec d’autres ({1}) et n’a pas d’organe d’équilibrage&#xa0;; posez-en un à son retour, ou dites pourquoi il n’est pas équilibré</translation>
    </message>
    <message>
        <source>{1} is held although its word is {2}; go back and turn it, or take the hold back with Ctrl+Z</source>
        <translation>{1} est tenue bien que son mot soit {2}&#xa0;; revenez la tourner, ou annulez la tenue par Ctrl+Z</translation>
    </message>
    <message>
        <source>{1} is the head available here with the valve shut; set the handle back to {2}</source>
        <translation>{1} est la hauteur disponible ici, vanne fermée&#xa0;; remettez la poignée sur {2}</translation>
    </message>
    <message>
        <source>{1} was turned to {2} but not read there; the record still says {3}, go back and read it</source>
        <translation>{1} a été tournée à {2} mais pas mesurée là&#xa0;; l’enregistrement dit encore {3}, revenez la mesurer</translation>
    </message>
    <message>
        <source>{1} {2} at {3} {4} in round {5}; {6} % of design flow, {7w}</source>
        <translation>{1} {2} à {3} {4} au passage {5}&#xa0;; {6}&#xa0;% du débit nominal, {7w}</translation>
    </message>
    <message>
        <source>values to choose between after merging: {1}; choose in File, Decide Conflicts</source>
        <translation>valeurs à choisir après fusion&#xa0;: {1}&#xa0;; choisissez dans Fichier, Décider des conflits</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; names no {2w} of this folder; correct it or leave the cell empty</source>
        <translation>«&#xa0;{1}&#xa0;» est introuvable dans ce dossier ({2w})&#xa0;; corrigez-le ou laissez la cellule vide</translation>
    </message>
    <message>
        <source>round {1} is {2w} and takes no further readings; record them in a new round</source>
        <translation>le passage {1} est {2w} et n’admet plus de mesures&#xa0;; notez-les dans un nouveau passage</translation>
    </message>
    <message>
        <source>No speed or impeller is proposed: the gauges and the pump&apos;s curve contradict each other (section {1})</source>
        <translation>Ni vitesse ni roue n’est proposée&#xa0;: les manomètres et la courbe de la pompe se contredisent (section {1})</translation>
    </message>
    <message>
        <source>Options at design flow for the need of the index circuit, {1w}</source>
        <translation>Options au débit nominal pour le besoin du circuit défavorisé, {1w}</translation>
    </message>
    <message>
        <source>Pressure behind each element against the fill pressure, in the direction of flow</source>
        <translation>Pression après chaque élément par rapport au remplissage, dans le sens du flux</translation>
    </message>
    <message>
        <source>Pressure round the circuit against the fill pressure, pump on</source>
        <translation>Pression le long du circuit par rapport au remplissage, pompe en marche</translation>
    </message>
    <message>
        <source>The loop with its valves as they stood in round {5} takes {1} {4} and the pump makes {2} {4} {7w}: excess {3} {4} {6w}</source>
        <translation>La boucle avec ses vannes telles qu’au passage {5} prend {1} {4} et la pompe fournit {2} {4} {7w}&#xa0;: excédent {3} {4} {6w}</translation>
    </message>
    <message>
        <source>Undecidable whether {1} is the index: it takes {2} % of design, and fully open too with less are {3}, nearer than these readings tell ({4} %); read them again with a finer meter, or sign with the reason</source>
        <translation>Indécidable si {1} est le point défavorisé&#xa0;: il prend {2}&#xa0;% du nominal, ouverts en grand aussi avec moins&#xa0;: {3}, plus proches que ces mesures ne distinguent ({4}&#xa0;%)&#xa0;; remesurez-les avec un instrument plus fin, ou signez avec le motif</translation>
    </message>
    <message>
        <source>Undecidable: dp {1} at {2} is below the readable minimum of {3} by no more than its uncertainty of {4}; read it again with a finer meter</source>
        <translation>Indécidable&#xa0;: Δp {1} à {2} est sous le minimum lisible de {3} d’au plus son incertitude de {4}&#xa0;; remesurez-la avec un instrument plus fin</translation>
    </message>
    <message>
        <source>With the pump on the unit of {1} stands at {2} against the fill pressure, which is not known.</source>
        <translation>Pompe en marche, l’unité de {1} est à {2} par rapport à la pression de remplissage, qui n’est pas connue.</translation>
    </message>
    <message>
        <source>advised {2} instead of {1}; turn it, then read</source>
        <translation>conseillé {2} au lieu de {1}&#xa0;; tournez, puis mesurez</translation>
    </message>
    <message>
        <source>against the fill pressure, {1} at the unit with the valve on the return, {2} on the supply</source>
        <translation>par rapport à la pression de remplissage, {1} à l’unité, vanne au retour, {2} à l’aller</translation>
    </message>
    <message>
        <source>against the fill pressure, {1} behind {2w}</source>
        <translation>par rapport à la pression de remplissage, {1} après {2w}</translation>
    </message>
    <message>
        <source>at design flow the pump makes {1} of head and the index circuit needs {2}, {3} more; see that the index path is open and its strainers and filters are clean, check speed and impeller: a larger impeller or pump is for the engineer to decide</source>
        <translation>au débit nominal la pompe fournit {1} de hauteur et le circuit défavorisé demande {2}, soit {3} de plus&#xa0;; voyez si son chemin est ouvert et ses filtres propres, vérifiez vitesse et roue&#xa0;: une roue ou une pompe plus grande relève de l’ingénieur</translation>
    </message>
    <message>
        <source>at shutoff one gauge reads {1} % of the curve&apos;s head and at the duty another reads {2} %; which is right is not known, so no excess, trim or speed is proposed: read both taps again with one gauge, and check impeller, speed and direction of turn</source>
        <translation>à débit nul un manomètre indique {1}&#xa0;% de la hauteur de la courbe et au point de fonctionnement un autre indique {2}&#xa0;%&#xa0;; lequel est juste n’est pas connu, donc ni excédent, ni rognage, ni vitesse ne sont proposés&#xa0;: remesurez les deux prises avec un seul manomètre, et vérifiez roue, vitesse et sens de rotation</translation>
    </message>
    <message>
        <source>at shutoff the head is {1} % of the curve&apos;s and at the duty {2} %; the curve counts, as it holds where the loop runs: read the shutoff head again where that is allowed</source>
        <translation>à débit nul la hauteur est {1}&#xa0;% de celle de la courbe et au point de fonctionnement {2}&#xa0;%&#xa0;; la courbe est retenue, car elle est juste là où la boucle marche&#xa0;: remesurez la hauteur à débit nul là où c’est permis</translation>
    </message>
    <message>
        <source>at shutoff the head is {1} % of the curve&apos;s too, so the gauges are right; look for another impeller, wear, a wrong speed or air before the pump is changed</source>
        <translation>à débit nul aussi la hauteur est {1}&#xa0;% de celle de la courbe, les manomètres sont donc justes&#xa0;; cherchez une autre roue, de l’usure, une mauvaise vitesse ou de l’air avant de modifier la pompe</translation>
    </message>
    <message>
        <source>at shutoff the same gauge reads {1} % of the curve&apos;s head and at the duty {2} %, so what differs comes with the flow; the duty counts, as it is what the terminals get: look for an open bypass, a strainer between the taps and a wrong valve table</source>
        <translation>à débit nul le même manomètre indique {1}&#xa0;% de la hauteur de la courbe et au point de fonctionnement {2}&#xa0;%, l’écart vient donc avec le débit&#xa0;; le point de fonctionnement est retenu, car c’est ce que reçoivent les terminaux&#xa0;: cherchez un by-pass ouvert, un filtre entre les prises et une mauvaise table de vanne</translation>
    </message>
    <message>
        <source>done again: {1}</source>
        <translation>refait&#xa0;: {1}</translation>
    </message>
    <message>
        <source>from reference {1}, last {2} % of design, read {3w}</source>
        <translation>d’après la référence {1}, dernièrement {2}&#xa0;% du nominal, mesurée {3w}</translation>
    </message>
    <message>
        <source>from the flows of {1} other branches while these are not turned, oldest reading {2w}</source>
        <translation>d’après les débits de {1} autres branches tant qu’on ne les tourne pas, mesure la plus ancienne {2w}</translation>
    </message>
    <message>
        <source>from the learned loop, {1} is wanted here while the others stand as they do</source>
        <translation>d’après la boucle apprise il faut ici {1} tant que les autres restent ainsi</translation>
    </message>
    <message>
        <source>its valve is fully open and it takes {1} % of design, {2} on the index circuit {3} %: nearer than these readings tell ({4} %); read both again with a finer meter, or give the reason</source>
        <translation>sa vanne est ouverte en grand et elle prend {1}&#xa0;% du nominal, {2} sur le circuit défavorisé {3}&#xa0;%&#xa0;: plus proche que ces mesures ne distinguent ({4}&#xa0;%)&#xa0;; remesurez les deux avec un instrument plus fin, ou donnez le motif</translation>
    </message>
    <message>
        <source>leave it at its stop for now; {1} is expected once all valves are set</source>
        <translation>laissez-la en butée pour l’instant&#xa0;; {1} est attendu une fois toutes les vannes réglées</translation>
    </message>
    <message>
        <source>note removed, {1}</source>
        <translation>note retirée, {1}</translation>
    </message>
    <message>
        <source>notes removed, {1}</source>
        <translation>notes retirées, {1}</translation>
    </message>
    <message>
        <source>reason before signing</source>
        <translation>motif avant signature</translation>
    </message>
    <message>
        <source>reason before signing removed</source>
        <translation>motif avant signature retiré</translation>
    </message>
    <message>
        <source>reason removed: {1}</source>
        <translation>motif retiré&#xa0;: {1}</translation>
    </message>
    <message>
        <source>round {1} was accepted by {2}, who also read or sent it: {3}</source>
        <translation>le passage {1} a été accepté par {2}, qui l’a aussi mesuré ou envoyé&#xa0;: {3}</translation>
    </message>
    <message>
        <source>round {1} was read by {2}, at least in part; somebody who read none of it decides on it, menu Round, Person: {3}</source>
        <translation>le passage {1} a été mesuré par {2}, au moins en partie&#xa0;; quelqu’un qui n’en a rien mesuré en décide, menu Passage, Personne&#xa0;: {3}</translation>
    </message>
    <message>
        <source>round {1} was sent by {2}; another supervisor or engineer decides on it, menu Round, Person: {3}</source>
        <translation>le passage {1} a été envoyé par {2}&#xa0;; un autre responsable ou ingénieur en décide, menu Passage, Personne&#xa0;: {3}</translation>
    </message>
    <message>
        <source>rounds accepted by one who read or sent them: {1}; have somebody else accept them or give the reason</source>
        <translation>passages acceptés par qui les a mesurés ou envoyés&#xa0;: {1}&#xa0;; faites-les accepter par quelqu’un d’autre ou donnez le motif</translation>
    </message>
    <message>
        <source>taken back: {1}</source>
        <translation>annulé&#xa0;: {1}</translation>
    </message>
    <message>
        <source>test of {1}, {2w}: {3w} removed</source>
        <translation>essai de {1}, {2w}&#xa0;: {3w} retiré</translation>
    </message>
    <message>
        <source>the gauges read {1} % of the head of the curve; below {2} or above {3} % a gauge is wrong or the curve is of another impeller, so no excess, trim or speed is proposed: read both taps again with one gauge, test at shutoff where that is allowed, and check impeller, speed and direction of turn</source>
        <translation>les manomètres indiquent {1}&#xa0;% de la hauteur de la courbe&#xa0;; sous {2} ou au-dessus de {3}&#xa0;% un manomètre est faux ou la courbe est celle d’une autre roue, donc ni excédent, ni rognage, ni vitesse ne sont proposés&#xa0;: remesurez les deux prises avec un seul manomètre, essayez à débit nul là où c’est permis, et vérifiez roue, vitesse et sens de rotation</translation>
    </message>
    <message>
        <source>the gauges read {2} % of the curve&apos;s head in round {1} and {4} % in round {3}; something changed or one was misread: read both taps again, and check speed, air and strainers</source>
        <translation>les manomètres indiquent {2}&#xa0;% de la hauteur de la courbe au passage {1} et {4}&#xa0;% au passage {3}&#xa0;; quelque chose a changé ou l’une des mesures est fausse&#xa0;: remesurez les deux prises, et vérifiez vitesse, air et filtres</translation>
    </message>
    <message>
        <source>the numbers here rest on the gauges of round {1}: the pump&apos;s curve counts with its head times {2} at every flow, so that it meets them</source>
        <translation>les nombres ici reposent sur les manomètres du passage {1}&#xa0;: la courbe de la pompe est prise avec sa hauteur multipliée par {2} à chaque débit, afin de passer par la mesure</translation>
    </message>
    <message>
        <source>the pump makes {1} at design flow, the index circuit needs {2}, {4} more: all circuits end at {3} % of design; see that the index path is open and its strainers and filters are clean, check speed and impeller: a larger impeller or pump is for the engineer to decide</source>
        <translation>la pompe fournit {1} au débit nominal, le circuit défavorisé demande {2}, soit {4} de plus&#xa0;: tous les circuits finissent à {3}&#xa0;% du nominal&#xa0;; voyez si son chemin est ouvert et ses filtres propres, vérifiez vitesse et roue&#xa0;: une roue ou une pompe plus grande relève de l’ingénieur</translation>
    </message>
    <message>
        <source>the word counts the newest readings of the others</source>
        <translation>mot d’après les mesures les plus récentes des autres</translation>
    </message>
    <message>
        <source>the word counts what the others take once they are set</source>
        <translation>mot d’après ce que les autres prennent une fois réglées</translation>
    </message>
    <message>
        <source>the word matches it to the reference {1}, at {2} % of design</source>
        <translation>le mot la règle sur la référence {1}, à {2}&#xa0;% du nominal</translation>
    </message>
    <message>
        <source>{1} at the design flow of {2}, {3w}</source>
        <translation>{1} au débit nominal de {2}, {3w}</translation>
    </message>
    <message>
        <source>{1} at the design flow of {2}, {3w}; the curve as published gives {4} {5w}</source>
        <translation>{1} au débit nominal de {2}, {3w}&#xa0;; la courbe telle que publiée donne {4} {5w}</translation>
    </message>
    <message>
        <source>{1} is above the range of instrument {2} and is left out of the learning; read it again, or give the reason</source>
        <translation>{1} dépasse la plage de l’instrument {2} et est écarté de l’apprentissage&#xa0;; remesurez, ou donnez le motif</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}, for comparison</source>
        <translation>{1} {2w}, {3w}, pour comparaison</translation>
    </message>
    <message>
        <source>{1} {4}, {2} % of the design flow of {3} {4}; {5} doubtful in it</source>
        <translation>{1} {4}, {2}&#xa0;% du débit nominal de {3} {4}&#xa0;; mesures douteuses comprises&#xa0;: {5}</translation>
    </message>
    <message>
        <source>{1}, who also read or sent it: {2}</source>
        <translation>{1}, qui l’a aussi mesuré ou envoyé&#xa0;: {2}</translation>
    </message>
    <message>
        <source>{1}, who also read or sent it; no reason given</source>
        <translation>{1}, qui l’a aussi mesuré ou envoyé&#xa0;; aucun motif donné</translation>
    </message>
    <message>
        <source>{2} read or sent round {1} and is the only person of this job; write the reason why nobody else accepts it</source>
        <translation>{2} a mesuré ou envoyé le passage {1} et est la seule personne de ce chantier&#xa0;; écrivez le motif pour lequel personne d’autre ne l’accepte</translation>
    </message>
    <message>
        <source>{2} read or sent round {1}, and no other person of this job is supervisor or engineer; add one on the place Job</source>
        <translation>{2} a mesuré ou envoyé le passage {1}, et personne d’autre de ce chantier n’est responsable ou ingénieur&#xa0;; ajoutez quelqu’un dans l’espace Chantier</translation>
    </message>
    <message>
        <source>readings of {1} rounds and {2} branches are too many to learn the loop from; for advice make a job of each riser</source>
        <translation>les mesures de {1} passages sur {2} branches sont trop nombreuses pour apprendre la boucle&#xa0;; pour des conseils, faites un chantier par colonne</translation>
    </message>
    <message>
        <source>{1} readings taken while valves were being turned are too many for a loop of this size and are left out of the learning; read the next round without turning valves in between</source>
        <translation>{1} mesures faites pendant le réglage des vannes sont trop nombreuses pour une boucle de cette taille et sont laissées de côté dans l’apprentissage&#xa0;; faites le prochain passage sans tourner de vannes entre les mesures</translation>
    </message>
    <message>
        <source>No change of speed or impeller called for: the pump makes what the index circuit needs, as near as can be told</source>
        <translation>Aucun changement de vitesse ou de roue nécessaire&#xa0;: la pompe donne ce que demande le circuit défavorisé, autant qu’on puisse le dire</translation>
    </message>
    <message>
        <source>Valves as read</source>
        <translation>Vannes telles que lues</translation>
    </message>
    <message>
        <source>it must not be made yet; get the consent that is named below first</source>
        <translation>il ne peut pas encore être fait&#xa0;; obtenez d’abord l’accord nommé ci-dessous</translation>
    </message>
    <message>
        <source>may be made only once the consent named in the cautions is given</source>
        <translation>possible seulement une fois donné l’accord nommé dans les précautions</translation>
    </message>
    <message>
        <source>no change: at design flow the pump makes {1} and the index circuit needs {2}, no further apart than can be told; leave impeller and speed as they are</source>
        <translation>aucun changement&#xa0;: au débit nominal la pompe donne {1} et le circuit défavorisé demande {2}, écart non décelable&#xa0;; laissez la roue et la vitesse telles quelles</translation>
    </message>
    <message>
        <source>round {1} is open; close it first (Ctrl+Shift+W), then it is sent and decided on</source>
        <translation>le passage {1} est ouvert&#xa0;; clôturez-le d’abord (Ctrl+Maj+W), puis il est envoyé et soumis à décision</translation>
    </message>
    <message>
        <source>Every step of review, round by round</source>
        <translation>Chaque étape de la revue, passage par passage</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>comments open on round {1}: {2}, the first is &quot;{3}&quot;; answer and resolve each, or send the round back</source>
        <translation>commentaires ouverts sur le passage {1}&#xa0;: {2}, le premier est «&#xa0;{3}&#xa0;»&#xa0;; répondez à chacun et résolvez-le, ou renvoyez le passage</translation>
    </message>
    <message>
        <source>in all: {1}; at circuits: {2}, at pumps: {3}</source>
        <translation>en tout&#xa0;: {1}&#xa0;; sur les circuits&#xa0;: {2}, sur les pompes&#xa0;: {3}</translation>
    </message>
    <message>
        <source>items open in round {2}: {1}, the first is {3}; give each a reading or a reason</source>
        <translation>points ouverts au passage {2}&#xa0;: {1}, le premier est {3}&#xa0;; donnez à chacun une mesure ou un motif</translation>
    </message>
    <message>
        <source>round {1} is accepted already; open the next round (Ctrl+Shift+N), or go on with the report (Alt+7)</source>
        <translation>le passage {1} est déjà accepté&#xa0;; ouvrez le passage suivant (Ctrl+Maj+N), ou continuez avec le rapport (Alt+7)</translation>
    </message>
    <message>
        <source>round {1} is not sent; send it first (Ctrl+Alt+R), then a supervisor or engineer accepts it</source>
        <translation>le passage {1} n’est pas envoyé&#xa0;; envoyez-le d’abord (Ctrl+Alt+R), puis un responsable ou un ingénieur l’accepte</translation>
    </message>
    <message>
        <source>round {1} is sent already; have it accepted or sent back on the place Review (Alt+6)</source>
        <translation>le passage {1} est déjà envoyé&#xa0;; faites-le accepter ou renvoyer dans l’espace Revue (Alt+6)</translation>
    </message>
    <message>
        <source>Not shown that {1} is the index: it takes {2} % of design, and fully open too with less are {5}, and nearer than these readings tell ({4} %): {3}; match groups and risers, read again with a finer meter, or sign with the reason</source>
        <translation>Il n’est pas montré que {1} est le point défavorisé&#xa0;: il prend {2}&#xa0;% du nominal, ouverts en grand aussi avec moins&#xa0;: {5}, et plus proches que ces mesures ne distinguent ({4}&#xa0;%)&#xa0;: {3}&#xa0;; équilibrez groupes et colonnes, remesurez avec un instrument plus fin, ou signez avec le motif</translation>
    </message>
    <message>
        <source>Pressures here rest on the fill pressure entered, {1} at the expansion vessel; {2} is what the suction gauge showed with the pump off, with its own height and zero</source>
        <translation>Les pressions d’ici reposent sur la pression de remplissage saisie, {1} au vase d’expansion&#xa0;; {2} est ce que le manomètre d’aspiration montrait pompe arrêtée, avec sa propre hauteur et son zéro</translation>
    </message>
    <message>
        <source>Whether the pump is short cannot be told; read its gauges and every terminal again with finer meters (section {1})</source>
        <translation>Impossible de dire s’il manque de la hauteur à la pompe&#xa0;; remesurez ses manomètres et chaque terminal avec des instruments plus fins (section {1})</translation>
    </message>
    <message>
        <source>a round read at the settings that stand has every share within the band, but not the proof of the index circuit; turn the valve named, then read a final round</source>
        <translation>un passage fait aux réglages en place a chaque part dans la bande, mais le circuit défavorisé n’est pas prouvé&#xa0;; tournez la vanne nommée, puis faites un passage final</translation>
    </message>
    <message>
        <source>an old reading, with the others not set; advised {2} instead of {1}: turn it, then read</source>
        <translation>une mesure ancienne, les autres n’étant pas réglées&#xa0;; conseillé {2} au lieu de {1}&#xa0;: tournez, puis mesurez</translation>
    </message>
    <message>
        <source>lies on the index circuit at {1}; open it fully to {2}, or the index is not proved</source>
        <translation>sur le circuit défavorisé, à {1}&#xa0;; ouvrez-la en grand à {2}, sinon le défavorisé n’est pas prouvé</translation>
    </message>
    <message>
        <source>round {1} was read while valves were turned, so its shares may still change; read every valve in the next round</source>
        <translation>le passage {1} a été fait pendant que des vannes étaient tournées, ses parts peuvent donc encore changer&#xa0;; mesurez chaque vanne au prochain passage</translation>
    </message>
    <message>
        <source>the pump makes {1} at design flow, the index circuit needs {2}: whether it is short cannot be told; read its gauges and every terminal again once all valves are set</source>
        <translation>la pompe donne {1} au débit nominal, le circuit défavorisé demande {2}&#xa0;: impossible de dire s’il lui manque de la hauteur&#xa0;; remesurez ses manomètres et chaque terminal une fois toutes les vannes réglées</translation>
    </message>
    <message>
        <source>this terminal is fully open, and whether it takes less of design than the index circuit cannot be told; read both again with a finer meter</source>
        <translation>ce terminal est ouvert en grand, et impossible de dire s’il prend moins du nominal que le circuit défavorisé&#xa0;; remesurez les deux avec un instrument plus fin</translation>
    </message>
    <message>
        <source>whether the pump is short cannot be told: at design flow it makes {1} and the index circuit needs {2}; read its gauges and every terminal again with finer meters, leave impeller and speed until then</source>
        <translation>impossible de dire s’il manque de la hauteur à la pompe&#xa0;: au débit nominal elle donne {1} et le circuit défavorisé demande {2}&#xa0;; remesurez ses manomètres et chaque terminal avec des instruments plus fins, laissez la roue et la vitesse d’ici là</translation>
    </message>
    <message>
        <source>{3} below it takes {4} % of design, the index {5} {6} %; open it from {1} to {2}, then read</source>
        <translation>{3} en aval prend {4}&#xa0;% du nominal, le défavorisé {5} {6}&#xa0;%&#xa0;; ouvrez-la de {1} à {2}, puis mesurez</translation>
    </message>
    <message>
        <source>At design flow the shaft takes {2} slowed instead of {1} throttled: {3} % less</source>
        <translation>Au débit nominal l’arbre demande {2} pompe ralentie au lieu de {1} pompe étranglée&#xa0;: {3}&#xa0;% de moins</translation>
    </message>
    <message>
        <source>Computed, not read: no round was read yet, settings and losses are those entered.</source>
        <translation>Calculé, non mesuré&#xa0;: aucun passage mesuré, réglages et pertes sont ceux saisis.</translation>
    </message>
    <message>
        <source>Computed, not read: settings and pump as in round {1}, losses by the learned loop where the readings taught one, else by the design.</source>
        <translation>Calculé, non mesuré&#xa0;: réglages et pompe comme au passage {1}, pertes selon la boucle apprise si les mesures en donnent une, sinon selon le calcul.</translation>
    </message>
    <message>
        <source>Difference / uncertainty</source>
        <translation>Écart / incertitude</translation>
    </message>
    <message>
        <source>Difference / uncertainty: how far two ways to the flow differ, as a multiple of their uncertainty together; above 2 one of them is wrong.</source>
        <translation>Écart / incertitude&#xa0;: l’écart de deux méthodes de débit, en multiple de leur incertitude commune&#xa0;; au-dessus de 2 l’une est fausse.</translation>
    </message>
    <message>
        <source>Digits and units exactly as entered. A value that was corrected or struck stays, struck out. A setting that was entered before its reading stands in the row of that reading.</source>
        <translation>Chiffres et unités exactement tels que saisis. Une valeur corrigée ou biffée reste, barrée. Un réglage saisi avant sa mesure figure sur la ligne de cette mesure.</translation>
    </message>
    <message>
        <source>Duty {1} {2} at {3} {4}; {5} % of design. With these valves {6} % of the speed of the last round gives {7} {2}.</source>
        <translation>Point de fonctionnement {1} {2} à {3} {4}&#xa0;; {5}&#xa0;% du nominal. Avec ces vannes, {6}&#xa0;% de la vitesse du dernier passage donne {7} {2}.</translation>
    </message>
    <message>
        <source>No change of speed or impeller called for: design flow needs {1} % of the speed of the last round {2w}</source>
        <translation>Aucun changement de vitesse ou de roue&#xa0;: le débit nominal demande {1}&#xa0;% de la vitesse du dernier passage {2w}</translation>
    </message>
    <message>
        <source>No gauge was read in round {1}: its duty is drawn as a dashed ring, with the head of the pump&apos;s curve.</source>
        <translation>Aucun manomètre n’a été lu au passage {1}&#xa0;: son point est un anneau en tirets, avec la hauteur de la courbe de la pompe.</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Motifs</translation>
    </message>
    <message>
        <source>Share: flow over the sum of the terminals. A riser or branch is read at its own valve, so that these shares need not add up to 100 %</source>
        <translation>Part&#xa0;: débit rapporté à la somme des terminaux. Une colonne ou une branche est mesurée à sa propre vanne, ces parts ne font donc pas forcément 100&#xa0;% ensemble</translation>
    </message>
    <message>
        <source>Short by {4} of head: design flow on this system needs {1} % of the speed of the last round {3w}. See that the index path is open and strainers and filters are clean; a larger impeller or pump is for the engineer to decide (section {2})</source>
        <translation>Il manque {4} de hauteur&#xa0;: le débit nominal demande ici {1}&#xa0;% de la vitesse du dernier passage {3w}. Vérifiez que le chemin défavorisé est ouvert et que filtres et tamis sont propres&#xa0;; une roue ou une pompe plus grande est du ressort de l’ingénieur (section {2})</translation>
    </message>
    <message>
        <source>Test by each form of the clause</source>
        <translation>Test selon chaque forme de l’article</translation>
    </message>
    <message>
        <source>That is {1} rpm where full speed is {2} rpm</source>
        <translation>Soit {1} tr/min pour une pleine vitesse de {2} tr/min</translation>
    </message>
    <message>
        <source>What would hold up a signature, and the reason why it stands</source>
        <translation>Ce qui empêcherait une signature, et pourquoi cela reste ainsi</translation>
    </message>
    <message>
        <source>below 60 % of full speed the efficiency falls by 1 to 3 points and the drive loses more; take the saving as an upper limit</source>
        <translation>sous 60&#xa0;% de la pleine vitesse le rendement baisse de 1 à 3 points et le variateur perd plus&#xa0;; prenez l’économie comme une limite haute</translation>
    </message>
    <message>
        <source>design flow would need {1} % of full speed; ask the maker first, motor and shaft may not bear it</source>
        <translation>le débit nominal demanderait {1}&#xa0;% de la pleine vitesse&#xa0;; demandez d’abord au fabricant, moteur et arbre ne le supportent peut-être pas</translation>
    </message>
    <message>
        <source>fully open, its valve makes only {1} at design flow; it reads well from {2} on and not at all below {3}; choose a smaller valve or another way to measure</source>
        <translation>ouverte en grand, sa vanne ne crée que {1} au débit nominal&#xa0;; elle se lit bien dès {2}, et pas du tout sous {3}&#xa0;; prenez une vanne plus petite ou un autre moyen de mesure</translation>
    </message>
    <message>
        <source>lines that would hold up a signature and stand with a reason: {1}, listed in section {2}</source>
        <translation>lignes qui empêcheraient une signature et restent avec un motif&#xa0;: {1}, voir la section {2}</translation>
    </message>
    <message>
        <source>not turned in this round</source>
        <translation>non manœuvrée dans ce passage</translation>
    </message>
    <message>
        <source>n₂/n₁ = Q design / Q where system and pump curve meet = {1} / {2} {6} = {3}: {4} % of the speed of round {5}</source>
        <translation>n₂/n₁ = Q nominal / Q où se croisent les courbes de réseau et de pompe = {1} / {2} {6} = {3}&#xa0;: {4}&#xa0;% de la vitesse du passage {5}</translation>
    </message>
    <message>
        <source>the form of the energy code&apos;s clause is not chosen, the one with {1} and {2} is tested; choose it on the page Energy Code of Pump</source>
        <translation>la forme de l’article du code énergétique n’est pas choisie, celle avec {1} et {2} est testée&#xa0;; choisissez-la à la page Code énergétique de Pompe</translation>
    </message>
    <message>
        <source>the pump was read at {1} % of full speed; a motor does not run above 100 % without a drive that allows it, check the reading and the rated speed entered</source>
        <translation>la pompe a été lue à {1}&#xa0;% de la pleine vitesse&#xa0;; un moteur ne dépasse pas 100&#xa0;% sans variateur qui le permette, contrôlez la mesure et la vitesse nominale saisie</translation>
    </message>
    <message>
        <source>the speed was not read, so full speed is assumed; read it</source>
        <translation>la vitesse n’a pas été lue, la pleine vitesse est donc supposée&#xa0;; lisez-la</translation>
    </message>
    <message>
        <source>valves not turned in round {1}: {2}</source>
        <translation>vannes non manœuvrées au passage {1}&#xa0;: {2}</translation>
    </message>
    <message>
        <source>{1} % of the speed of the last round {6w}, or a trim, brings {2} {3}: it takes away the excess {4w} (section {5})</source>
        <translation>{1}&#xa0;% de la vitesse du dernier passage {6w}, ou un rognage, donne {2} {3}&#xa0;: cela supprime l’excédent {4w} (section {5})</translation>
    </message>
    <message>
        <source>{1} at {2} in round {3}, {4} % of full speed; shaft power there {5w}, efficiency {6w}</source>
        <translation>{1} à {2} au passage {3}, {4}&#xa0;% de la pleine vitesse&#xa0;; puissance à l’arbre {5w}, rendement {6w}</translation>
    </message>
    <message>
        <source>Short by {1} of head at design flow {2w}: do not slow or trim the pump. See that the index path is open and strainers and filters are clean; a larger impeller or pump is for the engineer to decide (section {3})</source>
        <translation>Il manque {1} de hauteur au débit nominal {2w}&#xa0;: ne ralentissez pas la pompe et ne rognez pas sa roue. Voyez si le chemin défavorisé est ouvert et si filtres et tamis sont propres&#xa0;; une roue ou une pompe plus grande est l’affaire de l’ingénieur (section {3})</translation>
    </message>
    <message>
        <source>round {1} takes no new readings any more; open the next round (Ctrl+Shift+N), then read</source>
        <translation>le passage {1} ne prend plus de nouvelles mesures&#xa0;; ouvrez le passage suivant (Ctrl+Maj+N), puis mesurez</translation>
    </message>
    <message>
        <source>In the figure the upright line at a tee is what is available there, supply less return; the bracket is the dp of the valve.</source>
        <translation>Sur la figure, le trait vertical à un té est ce qui y est disponible, aller moins retour&#xa0;; le crochet est la Δp de la vanne.</translation>
    </message>
    <message>
        <source>Revision {1}: {2} signed as reviewer, and read or sent rounds {3} too.</source>
        <translation>Révision {1}&#xa0;: {2} a signé comme relecteur, et a aussi mesuré ou envoyé les passages {3}.</translation>
    </message>
    <message>
        <source>The index valve {1} ended at {2} of {3}, not fully open, and takes {4}.</source>
        <translation>La vanne défavorisée {1} a fini à {2} sur {3}, pas ouverte en grand, et prend {4}.</translation>
    </message>
    <message>
        <source>The index valve {1} ended fully open and takes {2}.</source>
        <translation>La vanne défavorisée {1} a fini ouverte en grand et prend {2}.</translation>
    </message>
    <message>
        <source>The setting of valve {1} is not known, so it counts as fully open; enter it with its reading.</source>
        <translation>Le réglage de la vanne {1} n’est pas connu, elle compte donc comme ouverte en grand&#xa0;; saisissez-le avec sa mesure.</translation>
    </message>
    <message>
        <source>The valve {1} ended at {2} of {3} and takes {4}.</source>
        <translation>La vanne {1} a fini à {2} sur {3} et prend {4}.</translation>
    </message>
    <message>
        <source>The valve {1} ended fully open and takes {2}.</source>
        <translation>La vanne {1} a fini ouverte en grand et prend {2}.</translation>
    </message>
    <message>
        <source>branches added after round {1} was closed: {2}; rounds up to {1} are judged without them: read a new round</source>
        <translation>des branches ont été ajoutées après la clôture du passage {1}&#xa0;: {2}&#xa0;; les passages jusqu’au {1} sont jugés sans elles&#xa0;: mesurez un nouveau passage</translation>
    </message>
    <message>
        <source>design flows changed after round {1} was closed: {2}; rounds up to {1} are judged by those before: read a new round</source>
        <translation>des débits nominaux ont changé après la clôture du passage {1}&#xa0;: {2}&#xa0;; les passages jusqu’au {1} sont jugés d’après les précédents&#xa0;: mesurez un nouveau passage</translation>
    </message>
    <message>
        <source>it goes no further in the working order; move another valve</source>
        <translation>elle ne va pas plus loin dans l’ordre de travail&#xa0;; déplacez une autre vanne</translation>
    </message>
    <message>
        <source>it is number {1} of {2} in the working order now; Ctrl+Alt+B goes back to the advised order</source>
        <translation>elle est maintenant n° {1} sur {2} dans l’ordre de travail&#xa0;; Ctrl+Alt+B revient à l’ordre conseillé</translation>
    </message>
    <message>
        <source>its design flow is {1} to begin with; type its own, and by which branch it is fed</source>
        <translation>son débit de projet est {1} pour commencer&#xa0;; tapez le sien, et la branche qui l’alimente</translation>
    </message>
    <message>
        <source>limits changed after round {1} was closed: share ±{2} %, was ±{3} %; of design {4} to {5} %, was {6} to {7} %; round {1} was accepted by those before</source>
        <translation>limites changées après la clôture du passage {1}&#xa0;: part ±{2}&#xa0;%, était ±{3}&#xa0;%&#xa0;; du débit nominal {4} à {5}&#xa0;%, était {6} à {7}&#xa0;%&#xa0;; le passage {1} a été accepté d’après les précédentes</translation>
    </message>
    <message>
        <source>limits changed after round {1} was closed: share ±{2} %, was ±{3} %; of design {4} to {5} %, was {6} to {7} %; rounds up to {1} are judged by those before</source>
        <translation>limites changées après la clôture du passage {1}&#xa0;: part ±{2}&#xa0;%, était ±{3}&#xa0;%&#xa0;; du débit nominal {4} à {5}&#xa0;%, était {6} à {7}&#xa0;%&#xa0;; les passages jusqu’au {1} sont jugés d’après les précédentes</translation>
    </message>
    <message>
        <source>not read in round {1}, {2} of {3} valves are; read it, or say why not when the round is closed (Ctrl+Shift+W)</source>
        <translation>non mesurée au passage {1}, {2} vannes sur {3} le sont&#xa0;; mesurez-la, ou dites pourquoi non à la clôture du passage (Ctrl+Maj+W)</translation>
    </message>
    <message>
        <source>open comments: {1}, the first on {2}; Ctrl+Shift+Down goes to it, and from one to the next along the route</source>
        <translation>commentaires ouverts&#xa0;: {1}, le premier sur {2}&#xa0;; Ctrl+Maj+Bas y mène, puis de l’un à l’autre le long de la tournée</translation>
    </message>
    <message>
        <source>read or sent these rounds too: {1}</source>
        <translation>a aussi mesuré ou envoyé ces passages&#xa0;: {1}</translation>
    </message>
    <message>
        <source>round {1} was sent back, so this corrects its reading and the old value stays in the history; say why in a note (Ctrl+M)</source>
        <translation>le passage {1} a été renvoyé, ceci corrige donc sa mesure et l’ancienne valeur reste dans l’historique&#xa0;; dites pourquoi dans une note (Ctrl+M)</translation>
    </message>
    <message>
        <source>round {1}: {2} of {3} terminals are on share and the index circuit is proved; send it for review, then look at the report</source>
        <translation>passage {1}&#xa0;: {2} terminaux sur {3} à leur part, et le circuit défavorisé est prouvé&#xa0;; envoyez-le en revue, puis voyez le rapport</translation>
    </message>
    <message>
        <source>round {1}: {2} of {3} terminals are on share, but the index circuit is not proved; see on the place Adjust which valve to open, then read a final round</source>
        <translation>passage {1}&#xa0;: {2} terminaux sur {3} à leur part, mais le circuit défavorisé n’est pas prouvé&#xa0;; voyez dans Régler quelle vanne ouvrir, puis faites un passage final</translation>
    </message>
    <message>
        <source>round {1}: {2} of {3} terminals are on share; go on in Adjust, then read a final round</source>
        <translation>passage {1}&#xa0;: {2} terminaux sur {3} à leur part&#xa0;; continuez dans Régler, puis faites un passage final</translation>
    </message>
    <message>
        <source>the valves are taken in the advised order again; Alt+Shift+Up and Down change it</source>
        <translation>les vannes sont reprises dans l’ordre conseillé&#xa0;; Alt+Maj+Haut et Bas le changent</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); with the point moved {5} would, correct it or read it again</source>
        <translation>{1} au passage {2} ne concorde pas avec les autres mesures, qui attendent {3} (z {4})&#xa0;; avec le point décimal déplacé, {5} irait, corrigez ou remesurez</translation>
    </message>
    <message>
        <source>{1} is far from the expected {2}, with the point moved it would be {3}; correct it, read again or give the reason</source>
        <translation>{1} est loin des {2} attendus, avec le point décimal déplacé ce serait {3}&#xa0;; corrigez, remesurez ou donnez le motif</translation>
    </message>
    <message>
        <source>{1} is under the readable minimum of {2}, the flow is only known to lie between {3} and {4}; close the valve {5w} to read, take another instrument or give the reason</source>
        <translation>{1} est sous le minimum lisible de {2}, on sait seulement le débit entre {3} et {4}&#xa0;; fermez la vanne {5w} pour mesurer, prenez un autre instrument ou donnez le motif</translation>
    </message>
    <message>
        <source>{1} read or sent rounds {2}, and the report tells it beside the signature; let somebody else review them, or sign once more</source>
        <translation>{1} a mesuré ou envoyé les passages {2}, et le rapport le dit à côté de la signature&#xa0;; faites relire par quelqu’un d’autre, ou signez encore une fois</translation>
    </message>
    <message>
        <source>{1} was added after the reference was read; read the reference again</source>
        <translation>{1} a été ajouté après la mesure de la référence&#xa0;; remesurez la référence</translation>
    </message>
    <message>
        <source>there is no row to paste; copy rows with their headings in the spreadsheet first</source>
        <translation>il n’y a aucune ligne à coller&#xa0;; copiez d’abord des lignes avec leurs en-têtes dans le tableur</translation>
    </message>
    <message>
        <source>An impeller of {1} with a first cut to {2}, as decided</source>
        <translation>Une roue de {1} avec un premier rognage à {2}, comme décidé</translation>
    </message>
    <message>
        <source>Duty {1} {2} at {3} {4}; {5} % of design. Drawn as decided: speed {6} % of full speed.</source>
        <translation>Point de fonctionnement {1} {2} à {3} {4}&#xa0;; {5}&#xa0;% du nominal. Tracé comme décidé&#xa0;: vitesse {6}&#xa0;% de la pleine vitesse.</translation>
    </message>
    <message>
        <source>For information: {1} % of the speed of the last round {6w} brings {2} {3}: it takes away the excess {4w}; order no speed or impeller by it (section {5})</source>
        <translation>Pour information&#xa0;: {1}&#xa0;% de la vitesse du dernier passage {6w} donne {2} {3}&#xa0;: cela supprime l’excédent {4w}&#xa0;; n’en tirez ni vitesse ni roue à commander (section {5})</translation>
    </message>
    <message>
        <source>No change: the pump runs at {1} % of full speed, as decided</source>
        <translation>Aucun changement&#xa0;: la pompe tourne à {1}&#xa0;% de la pleine vitesse, comme décidé</translation>
    </message>
    <message>
        <source>Speed {1} % of full speed, as decided</source>
        <translation>Vitesse {1}&#xa0;% de la pleine vitesse, comme décidé</translation>
    </message>
    <message>
        <source>Speed {1} % of full speed, or an impeller of {2} with a first cut to {3}, as decided</source>
        <translation>Vitesse {1}&#xa0;% de la pleine vitesse, ou une roue de {2} avec un premier rognage à {3}, comme décidé</translation>
    </message>
    <message>
        <source>The loop with its valves as they stood in round {5} takes {1} {4} and the pump makes {2} {4} {7w}: excess {3} {4} {6w}. The pump decision uses {8} {4} {9w}</source>
        <translation>La boucle avec ses vannes telles qu’au passage {5} prend {1} {4} et la pompe fournit {2} {4} {7w}&#xa0;: excédent {3} {4} {6w}. La décision sur la pompe retient {8} {4} {9w}</translation>
    </message>
    <message>
        <source>What to order</source>
        <translation>À commander</translation>
    </message>
    <message>
        <source>Write x as the dp where a valve cannot be read, and note why; closing the round asks for the reason.</source>
        <translation>Écrivez x comme Δp là où une vanne ne peut être mesurée, et notez pourquoi&#xa0;; la clôture du passage demande le motif.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no number of a practice building; give a whole number from 1 to 999999999</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas un numéro de bâtiment d’exercice&#xa0;; donnez un entier de 1 à 999999999</translation>
    </message>
    <message>
        <source>a first look: in round {1}, {2} of {3} terminals are on share and the index circuit is {4w}; leave the pump as it is until all are on share with the index proved</source>
        <translation>un premier aperçu&#xa0;: au passage {1}, à leur part&#xa0;: {2} des {3} terminaux, circuit défavorisé {4w}&#xa0;; laissez la pompe telle quelle jusqu’à ce que tous soient à leur part avec le point défavorisé prouvé</translation>
    </message>
    <message>
        <source>a power factor of {1} is above 1; check the reading and its unit</source>
        <translation>un facteur de puissance de {1} dépasse 1&#xa0;; vérifier la mesure et son unité</translation>
    </message>
    <message>
        <source>all dps of round {1} are about {2} % higher than round {3} makes expect, as with {4} % more speed: was the pump set faster, or another valve opened? Read the speed on the drive and look at the valves of the main; no single valve is to blame</source>
        <translation>tous les Δp du passage {1} sont environ {2}&#xa0;% plus hauts que le passage {3} le laisse attendre, comme avec {4}&#xa0;% de vitesse en plus&#xa0;: la pompe a-t-elle été accélérée, ou une autre vanne ouverte&#xa0;? Lire la vitesse sur le variateur et regarder les vannes de la conduite principale&#xa0;; aucune vanne seule n&apos;est en cause</translation>
    </message>
    <message>
        <source>all dps of round {1} are about {2} % lower than round {3} makes expect, as with {4} % less speed: was the pump slowed, or another valve closed? Read the speed on the drive and look at the valves of the main; no single valve is to blame</source>
        <translation>tous les Δp du passage {1} sont environ {2}&#xa0;% plus bas que le passage {3} le laisse attendre, comme avec {4}&#xa0;% de vitesse en moins&#xa0;: la pompe a-t-elle été ralentie, ou une autre vanne fermée&#xa0;? Lire la vitesse sur le variateur et regarder les vannes de la conduite principale&#xa0;; aucune vanne seule n&apos;est en cause</translation>
    </message>
    <message>
        <source>for information: what follows is for the loop with its valves as they were read; order no speed or impeller by it</source>
        <translation>pour information&#xa0;: ce qui suit vaut pour la boucle avec ses vannes telles que mesurées&#xa0;; n’en tirez ni vitesse ni roue à commander</translation>
    </message>
    <message>
        <source>in round {1} the index circuit ends at {3}, no more at {2}; see that every valve on its path is fully open</source>
        <translation>au passage {1}, le circuit défavorisé finit à {3}, non plus à {2}&#xa0;; voyez si chaque vanne de son chemin est ouverte en grand</translation>
    </message>
    <message>
        <source>no gauge with a known accuracy is named, so the usual 2 % of each reading are counted; name the gauge here and its accuracy on the place Job</source>
        <translation>aucun manomètre de précision connue n&apos;est nommé, les 2&#xa0;% usuels de chaque mesure sont donc comptés&#xa0;; nommer le manomètre ici et sa précision dans Chantier</translation>
    </message>
    <message>
        <source>no speed was read in round {1}, so full speed is taken and no number here is certain; read it on the drive before the pump is changed</source>
        <translation>aucune vitesse n&apos;a été lue au passage {1}, la pleine vitesse est donc admise et aucun nombre ici n&apos;est sûr&#xa0;; la lire sur le variateur avant de modifier la pompe</translation>
    </message>
    <message>
        <source>no speed was read in round {1}, so the {2} % of full speed of round {3} are taken and no number here is certain; read it on the drive before the pump is changed</source>
        <translation>aucune vitesse n&apos;a été lue au passage {1}, les {2}&#xa0;% de la pleine vitesse du passage {3} sont donc admis et aucun nombre ici n&apos;est sûr&#xa0;; la lire sur le variateur avant de modifier la pompe</translation>
    </message>
    <message>
        <source>nothing was pasted: {1}</source>
        <translation>rien n’a été collé&#xa0;: {1}</translation>
    </message>
    <message>
        <source>round {1} was read while valves were turned, so its shares may still change; the index circuit ends at {3} now, no more at {2}; read every valve in the next round</source>
        <translation>le passage {1} a été fait pendant que des vannes étaient tournées, ses parts peuvent donc encore changer&#xa0;; le circuit défavorisé finit maintenant à {3}, non plus à {2}&#xa0;; mesurez chaque vanne au prochain passage</translation>
    </message>
    <message>
        <source>suction {1} is above discharge {2} with the pump running; swap the two readings, or check the direction of turn and the gauges</source>
        <translation>l&apos;aspiration {1} dépasse le refoulement {2} pompe en marche&#xa0;; échanger les deux mesures, ou vérifier le sens de rotation et les manomètres</translation>
    </message>
    <message>
        <source>terminals without a flow in this round: {1} ({2}); closed like this it has no total flow, so no share of any branch and no index circuit: read them, or a valve above them, first</source>
        <translation>terminaux sans débit dans ce passage&#xa0;: {1} ({2})&#xa0;; clos ainsi il n&apos;a pas de débit total, donc ni part d&apos;aucune branche ni circuit défavorisé&#xa0;: les mesurer d&apos;abord, ou une vanne au-dessus</translation>
    </message>
    <message>
        <source>the instrument was due for calibration on {1}, readings of this round taken with it later: {2}, the last on {3}; use another one, or give one reason for all (Job, If overdue, why)</source>
        <translation>l&apos;étalonnage de l&apos;instrument était dû le {1}, mesures de ce passage faites avec lui après&#xa0;: {2}, la dernière le {3}&#xa0;; en prendre un autre, ou donner un motif pour toutes (Chantier, Si échu, pourquoi)</translation>
    </message>
    <message>
        <source>{1w} 0 with the pump running; check the clamp, the phases and the range, read again or leave it empty</source>
        <translation>{1w} 0 pompe en marche&#xa0;; vérifier la pince, les phases et la plage, remesurer ou laisser vide</translation>
    </message>
    <message>
        <source>{1w} gives {2} of head and {3w}, with less flow, only {4}; a pump&apos;s head falls as flow rises: read both taps again with one gauge</source>
        <translation>{1w} donne {2} de hauteur et {3w}, avec moins de débit, seulement {4}&#xa0;; la hauteur d&apos;une pompe baisse quand le débit monte&#xa0;: remesurer les deux prises avec un seul manomètre</translation>
    </message>
    <message>
        <source>{1w} {2} is far from {3} at the other points of this pump, with the point moved it would be {4}; correct it, read again or give the reason</source>
        <translation>{1w} {2} est loin de {3} aux autres points de cette pompe, la virgule déplacée ce serait {4}&#xa0;; corriger, remesurer ou donner le motif</translation>
    </message>
    <message>
        <source>{1w} {2} is far from {3} at the other points of this pump; check the point and the unit, read again or give the reason</source>
        <translation>{1w} {2} est loin de {3} aux autres points de cette pompe&#xa0;; vérifier la virgule et l&apos;unité, remesurer ou donner le motif</translation>
    </message>
    <message>
        <source>{1} at {2} in round {3}; no speed was read, full speed is taken: read it on the drive; shaft power there {5w}, efficiency {6w}</source>
        <translation>{1} à {2} au passage {3}&#xa0;; aucune vitesse lue, la pleine vitesse est admise&#xa0;: la lire sur le variateur&#xa0;; puissance à l&apos;arbre {5w}, rendement {6w}</translation>
    </message>
    <message>
        <source>{1} at {2} in round {3}; no speed was read, the {4} % of full speed of round {7} are taken: read it on the drive; shaft power there {5w}, efficiency {6w}</source>
        <translation>{1} à {2} au passage {3}&#xa0;; aucune vitesse lue, les {4}&#xa0;% de la pleine vitesse du passage {7} sont admis&#xa0;: la lire sur le variateur&#xa0;; puissance à l&apos;arbre {5w}, rendement {6w}</translation>
    </message>
    <message>
        <source>{1} is {2} % of the rated speed; check the reading and the rated speed entered, or give the reason</source>
        <translation>{1} est {2}&#xa0;% de la vitesse nominale&#xa0;; vérifier la mesure et la vitesse nominale saisie, ou donner le motif</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}: the pump decision uses this one</source>
        <translation>{1} {2w}, {3w}&#xa0;: valeur retenue par la décision sur la pompe</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}: the pump decision uses this one (section {4})</source>
        <translation>{1} {2w}, {3w}&#xa0;: valeur retenue par la décision sur la pompe (section {4})</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}: the pump decision uses this one, speed {5} % of full speed takes it away (section {4})</source>
        <translation>{1} {2w}, {3w}&#xa0;: valeur retenue par la décision sur la pompe, {5}&#xa0;% de la pleine vitesse la supprime (section {4})</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a speed; type 0 to 120 % of rated</source>
        <translation>«&#xa0;{1}&#xa0;» n’est pas une vitesse&#xa0;; tapez de 0 à 120&#xa0;% de la nominale</translation>
    </message>
    <message>
        <source>no row is in hand; go to the row to remove first</source>
        <translation>aucune ligne n’est choisie&#xa0;; allez d’abord à la ligne à retirer</translation>
    </message>
    <message>
        <source>the row with {1} has no {2}; type it, or take the row out with its button</source>
        <translation>la ligne avec {1} n’a pas&#xa0;: {2}&#xa0;; tapez-le, ou retirez la ligne avec son bouton</translation>
    </message>
    <message>
        <source>there is no table of advice here; do first what the page says</source>
        <translation>il n’y a pas de tableau de conseil ici&#xa0;; faites d’abord ce que dit la page</translation>
    </message>
    <message>
        <source>{1} is off the scale of {2}; type a setting from {3} to {4}</source>
        <translation>{1} est hors de l’échelle de {2}&#xa0;; tapez un réglage de {3} à {4}</translation>
    </message>
    <message>
        <source>this survey begins without a readiness list; see that the loop is clean, filled, vented and safe to run, and note it: Job, Readiness, Take Usual List</source>
        <translation>ce relevé commence sans liste de préparation&#xa0;; voyez que la boucle est propre, remplie, purgée et sûre à exploiter, et notez-le&#xa0;: Chantier, Préparation, Prendre la liste usuelle</translation>
    </message>
    <message>
        <source>Each terminal and each valve on the way before rebalancing, and its new setting</source>
        <translation>Chaque terminal et chaque vanne sur le chemin avant rééquilibrage, et son nouveau réglage</translation>
    </message>
    <message>
        <source>In {1} hours a year at the flow as read: {2} kWh or {4} {5} {3w}</source>
        <translation>En {1} heures par an au débit relevé&#xa0;: {2} kWh ou {4} {5} {3w}</translation>
    </message>
    <message>
        <source>In {1} hours a year at the flow as read: {2} kWh {3w}</source>
        <translation>En {1} heures par an au débit relevé&#xa0;: {2} kWh {3w}</translation>
    </message>
    <message>
        <source>No report of this job was signed before this one.</source>
        <translation>Aucun rapport de ce chantier n’a été signé avant celui-ci.</translation>
    </message>
    <message>
        <source>Power from the mains</source>
        <translation>Puissance du réseau électrique</translation>
    </message>
    <message>
        <source>a further change of speed brings no saving that could be told</source>
        <translation>un nouveau changement de vitesse n’apporte aucune économie décelable</translation>
    </message>
    <message>
        <source>edition and clause of the adopted energy code are not entered, so the report names none; enter them</source>
        <translation>édition et article du code énergétique adopté non saisis, le rapport n’en nomme donc aucun&#xa0;; saisissez-les</translation>
    </message>
    <message>
        <source>only for sending back: round {1} has no open comment that says what to correct; choose a cell of the comparison, press Ctrl+Alt+C and write it</source>
        <translation>seulement pour renvoyer&#xa0;: le passage {1} n’a aucun commentaire ouvert qui dise quoi corriger&#xa0;; choisissez une cellule de la comparaison, appuyez sur Ctrl+Alt+C et écrivez-le</translation>
    </message>
    <message>
        <source>round {1} is closed and has no reading of this point; open the next round (Ctrl+Shift+N) and read it there</source>
        <translation>le passage {1} est clos et n’a pas de mesure de ce point&#xa0;; ouvrez le passage suivant (Ctrl+Maj+N) et mesurez-le là</translation>
    </message>
    <message>
        <source>round {1} was sent back, so this corrects its reading and the old value stays on record; say why in the field Note</source>
        <translation>le passage {1} a été renvoyé, ceci corrige donc sa mesure et l’ancienne valeur reste consignée&#xa0;; dites pourquoi dans le champ Note</translation>
    </message>
    <message>
        <source>the study is saved as {1}</source>
        <translation>l’étude est enregistrée sous {1}</translation>
    </message>
    <message>
        <source>{1} is more than a whole; type an efficiency of 100 % at most</source>
        <translation>{1} dépasse le tout&#xa0;; tapez un rendement de 100&#xa0;% au plus</translation>
    </message>
    <message>
        <source>{1}: {2} in round {3}, {4} in round {5}: {6} {7w}, {8} %</source>
        <translation>{1}&#xa0;: {2} au passage {3}, {4} au passage {5}&#xa0;: {6} {7w}, {8}&#xa0;%</translation>
    </message>
    <message>
        <source>A copy of revision {1}, signed by {2}; nothing was changed since. The signed file counts.</source>
        <translation>Une copie de la révision {1}, signée par {2}&#xa0;; rien n’a été modifié depuis. Le fichier signé fait foi.</translation>
    </message>
    <message>
        <source>Revision {1}: {2} signed both the readings and the review.</source>
        <translation>Révision {1}&#xa0;: {2} a signé les mesures et la revue.</translation>
    </message>
    <message>
        <source>signed the readings too</source>
        <translation>a signé aussi les mesures</translation>
    </message>
    <message>
        <source>signed the review too</source>
        <translation>a signé aussi la revue</translation>
    </message>
    <message>
        <source>the report tests the energy code&apos;s clause and cannot name it; type code, edition and clause on Pump, Energy Code</source>
        <translation>le rapport examine l’article du code énergétique et ne peut le nommer&#xa0;; saisissez code, édition et article sous Pompe, Code énergétique</translation>
    </message>
    <message>
        <source>{1} signed this revision in the other role too, and the report tells it beside the signature; let somebody else sign, or sign once more</source>
        <translation>{1} a signé cette révision dans l’autre rôle aussi, et le rapport le dit à côté de la signature&#xa0;; faites signer quelqu’un d’autre, ou signez encore une fois</translation>
    </message>
    <message>
        <source>Speed {1} % of full speed, as decided; the pump has no drive, so by a drive or other sheaves</source>
        <translation>Vitesse {1}&#xa0;% de la pleine vitesse, comme décidé&#xa0;; la pompe n’a pas de variateur, donc par un variateur ou d’autres poulies</translation>
    </message>
    <message>
        <source>The uncertainty of this difference is not known: no accuracy of the power meter is recorded</source>
        <translation>L’incertitude de cette différence n’est pas connue&#xa0;: aucune exactitude du wattmètre n’est notée</translation>
    </message>
    <message>
        <source>a head of {1} is far above the {2} of the pump&apos;s curve at no flow; check the gauges, the field and the unit, read again or give the reason</source>
        <translation>une hauteur de {1} dépasse de loin les {2} de la courbe de la pompe à débit nul&#xa0;; vérifiez les manomètres, le champ et l’unité, relisez ou donnez le motif</translation>
    </message>
    <message>
        <source>every valve of the working order is held, but {1} of {2} valves are not read in this round, the next along the route is {3}; go to each in Walk (Alt+3, Ctrl+Shift+Down), then close the round (Ctrl+Shift+W)</source>
        <translation>chaque vanne de l’ordre de travail est tenue, mais il reste à mesurer dans ce passage {1} des {2} vannes, la prochaine sur le parcours est {3}&#xa0;; mesurez chacune dans Tournée (Alt+3, Ctrl+Maj+Bas), puis clôturez le passage (Ctrl+Maj+W)</translation>
    </message>
    <message>
        <source>the gauges of {1} show a rise of {2} at {3}; both were stored</source>
        <translation>les manomètres de {1} montrent une différence de {2} à {3}&#xa0;; les deux sont enregistrées</translation>
    </message>
    <message>
        <source>the number is missing; write it in digits</source>
        <translation>le nombre manque&#xa0;; écrivez-le en chiffres</translation>
    </message>
    <message>
        <source>this value must be above 0, not {1}; correct it</source>
        <translation>cette valeur doit être supérieure à 0, et non {1}&#xa0;; corrigez-la</translation>
    </message>
    <message>
        <source>{1} is more than a whole; give an efficiency of 100 % at most</source>
        <translation>{1} dépasse le tout&#xa0;; donnez un rendement de 100&#xa0;% au plus</translation>
    </message>
    <message>
        <source>the pressure rises to that of no flow; make sure that casing, gauges and pipe bear it, and that a boiler or chiller on this loop is off</source>
        <translation>la pression monte à celle du débit nul&#xa0;; assurez-vous que le corps, les manomètres et la conduite la supportent et qu’une chaudière ou un groupe froid sur cette boucle est arrêté</translation>
    </message>
</context>
<context>
    <name>PagesProgress</name>
    <message>
        <source>Balance report</source>
        <translation>Rapport d’équilibrage</translation>
    </message>
    <message>
        <source>Progress of the report</source>
        <translation>Avancement du rapport</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Arrêter</translation>
    </message>
    <message>
        <source>The report is being made.</source>
        <translation>Le rapport est en cours de création.</translation>
    </message>
    <message>
        <source>Pages laid out: %1</source>
        <translation>Pages composées&#xa0;: %1</translation>
    </message>
    <message>
        <source>Pages written: %1 of %2</source>
        <translation>Pages écrites&#xa0;: %1 sur %2</translation>
    </message>
</context>
<context>
    <name>PumpChart</name>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>slowed</source>
        <translation>ralentie</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>rognée</translation>
    </message>
    <message>
        <source>%1 % speed</source>
        <translation>%1&#xa0;% de vitesse</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 seule</translation>
    </message>
    <message>
        <source>pump, round %1</source>
        <translation>pompe, passage %1</translation>
    </message>
    <message>
        <source>pump as found</source>
        <translation>pompe telle que trouvée</translation>
    </message>
    <message>
        <source>%1 pumps as found</source>
        <translation>%1 pompes telles que trouvées</translation>
    </message>
    <message>
        <source>system, round %1</source>
        <translation>réseau, passage %1</translation>
    </message>
    <message>
        <source>design</source>
        <translation>nominal</translation>
    </message>
    <message>
        <source>Line or point</source>
        <translation>Ligne ou point</translation>
    </message>
    <message>
        <source>Flow, %1</source>
        <translation>Débit, %1</translation>
    </message>
    <message>
        <source>Head, %1</source>
        <translation>Hauteur, %1</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Incertitude</translation>
    </message>
    <message>
        <source>Duty, round %1</source>
        <translation>Point de fonctionnement, passage %1</translation>
    </message>
    <message>
        <source>Design</source>
        <translation>Nominal</translation>
    </message>
    <message>
        <source>Duty %1 %2 at %3 %4; %5 % of design.</source>
        <translation>Point de fonctionnement %1 %2 à %3 %4&#xa0;; %5&#xa0;% du nominal.</translation>
    </message>
    <message>
        <source>Pump and system</source>
        <translation>Pompe et réseau</translation>
    </message>
    <message>
        <source>head from the pump&apos;s curve, no gauge read</source>
        <translation>hauteur d’après la courbe de pompe, aucun manomètre lu</translation>
    </message>
    <message>
        <source>curve as published</source>
        <translation>courbe publiée</translation>
    </message>
    <message>
        <source>curve through the gauges</source>
        <translation>courbe recalée sur les manomètres</translation>
    </message>
    <message>
        <source>No change of speed or impeller called for.</source>
        <translation>Aucun changement de vitesse ou de roue nécessaire.</translation>
    </message>
    <message>
        <source>Trimmed it has %1 of impeller.</source>
        <translation>Rognée, sa roue a %1.</translation>
    </message>
    <message>
        <source>Shaft power about %1 % against the last round.</source>
        <translation>Puissance à l’arbre environ %1&#xa0;% par rapport au dernier passage.</translation>
    </message>
    <message>
        <source>Shaft power at design flow: %1 throttled, %2 slowed.</source>
        <translation>Puissance à l’arbre au débit nominal&#xa0;: %1 étranglée, %2 ralentie.</translation>
    </message>
    <message>
        <source>With these valves %1 % of the speed of the last round gives %2 %3.</source>
        <translation>Avec ces vannes, %1&#xa0;% de la vitesse du dernier passage donne %2 %3.</translation>
    </message>
    <message>
        <source>Dashed ring: no gauge read, head from the pump&apos;s curve.</source>
        <translation>Anneau en tirets&#xa0;: aucun manomètre lu, hauteur tirée de la courbe de la pompe.</translation>
    </message>
    <message>
        <source>The pump runs at %1 % of full speed, which the decision counts.</source>
        <translation>La pompe tourne à %1&#xa0;% de la pleine vitesse, que la décision compte.</translation>
    </message>
    <message>
        <source>Slowed to %1 % of full speed it meets the head that the pump decision uses.</source>
        <translation>Ralentie à %1&#xa0;% de la pleine vitesse, elle donne la hauteur retenue par la décision sur la pompe.</translation>
    </message>
</context>
<context>
    <name>PumpPage</name>
    <message>
        <source>The pumps are being computed.</source>
        <translation>Calcul des pompes en cours.</translation>
    </message>
</context>
<context>
    <name>PumpRoomChart</name>
    <message>
        <source>Pressure along the circuit</source>
        <translation>Pression le long du circuit</translation>
    </message>
    <message>
        <source>valve on return, pump on</source>
        <translation>vanne au retour, pompe en marche</translation>
    </message>
    <message>
        <source>valve on supply, pump on</source>
        <translation>vanne à l’aller, pompe en marche</translation>
    </message>
    <message>
        <source>pump off</source>
        <translation>pompe arrêtée</translation>
    </message>
    <message>
        <source>Element, in the direction of flow</source>
        <translation>Élément, dans le sens du flux</translation>
    </message>
    <message>
        <source>Gauge pressure, %1</source>
        <translation>Pression relative, %1</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>Behind</source>
        <translation>Après</translation>
    </message>
    <message>
        <source>Pump on, as it stands</source>
        <translation>Pompe en marche, tel quel</translation>
    </message>
    <message>
        <source>Valve on the other side</source>
        <translation>Vanne de l’autre côté</translation>
    </message>
    <message>
        <source>Pump off</source>
        <translation>Pompe arrêtée</translation>
    </message>
    <message>
        <source>The unit of %1 stands at %2 %4 with the pump on and at %3 %4 with it off.</source>
        <translation>L’unité de %1 est à %2 %4 pompe en marche, à %3 %4 arrêtée.</translation>
    </message>
    <message>
        <source>Dp left across the valves</source>
        <translation>Δp restante aux vannes</translation>
    </message>
    <message>
        <source>fully open</source>
        <translation>ouverte en grand</translation>
    </message>
    <message>
        <source>proportional</source>
        <translation>proportionnel</translation>
    </message>
    <message>
        <source>read-and-set</source>
        <translation>mesurer-régler</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Vanne</translation>
    </message>
    <message>
        <source>Fully open</source>
        <translation>Ouverte en grand</translation>
    </message>
    <message>
        <source>Proportional</source>
        <translation>Proportionnel</translation>
    </message>
    <message>
        <source>Read-and-set</source>
        <translation>Mesurer-régler</translation>
    </message>
    <message>
        <source>%1, index</source>
        <translation>%1, défavorisé</translation>
    </message>
    <message>
        <source>Valve, in walking order</source>
        <translation>Vanne, dans l’ordre de tournée</translation>
    </message>
    <message>
        <source>Dp, %1</source>
        <translation>Δp, %1</translation>
    </message>
    <message>
        <source>Dp at design flow that each way leaves across every valve.</source>
        <translation>Δp au débit nominal que chaque méthode laisse à chaque vanne.</translation>
    </message>
    <message>
        <source>Read-and-set leaves %1 %2 across the index valve %3, a proportional balance with the pump reduced leaves %4 %2.</source>
        <translation>Mesurer-régler laisse %1 %2 à la vanne défavorisée %3, un équilibrage proportionnel avec pompe réduite laisse %4 %2.</translation>
    </message>
    <message>
        <source>before the pump</source>
        <translation>avant la pompe</translation>
    </message>
    <message>
        <source>Pressure against fill, %1</source>
        <translation>Pression par rapport au remplissage, %1</translation>
    </message>
    <message>
        <source>With the pump on the unit of %1 stands at %2%3 %4 against the fill pressure, which is not known.</source>
        <translation>Pompe en marche, l’unité de %1 est à %2%3 %4 par rapport à la pression de remplissage, qui n’est pas connue.</translation>
    </message>
    <message>
        <source>supply, pump on</source>
        <translation>aller, pompe en marche</translation>
    </message>
    <message>
        <source>return, pump on</source>
        <translation>retour, pompe en marche</translation>
    </message>
    <message>
        <source>Available at the tee</source>
        <translation>Disponible au té</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>Workbooks (*.wwj)</source>
        <translation>Classeurs (*.wwj)</translation>
    </message>
    <message>
        <source>Open a Workbook</source>
        <translation>Ouvrir un classeur</translation>
    </message>
    <message>
        <source>Nothing Was Made</source>
        <translation>Rien n’a été créé</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) in the tables must be mended first. Each line names the file, the row and the column.</source>
        <translation>
            <numerusform>%n endroit des tableaux est d’abord à corriger. Chaque ligne nomme le fichier, la ligne et la colonne.</numerusform>
            <numerusform>%n endroits des tableaux sont d’abord à corriger. Chaque ligne nomme le fichier, la ligne et la colonne.</numerusform>
        </translation>
    </message>
    <message>
        <source>Faults in the tables</source>
        <translation>Erreurs dans les tableaux</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>First: 3 terminals</source>
        <translation>Premier&#xa0;: 3 terminaux</translation>
    </message>
    <message>
        <source>One ladder of three terminals. Instruments scatter; nothing else is wrong.</source>
        <translation>Une ligne de trois terminaux. Les appareils dispersent&#xa0;; rien d’autre n’est faux.</translation>
    </message>
    <message>
        <source>Steady: 12 terminals</source>
        <translation>Calme&#xa0;: 12 terminaux</translation>
    </message>
    <message>
        <source>Three branches of four terminals. Nothing is wrong but the design&apos;s losses.</source>
        <translation>Trois branches de quatre terminaux. Seules les pertes nominales sont fausses.</translation>
    </message>
    <message>
        <source>Faulty: 12 terminals</source>
        <translation>Défauts&#xa0;: 12 terminaux</translation>
    </message>
    <message>
        <source>As Steady, with errors in the valve tables, a control valve that does not open and a slip of reading.</source>
        <translation>Comme Calme, avec des erreurs dans les tables de vannes, une vanne de régulation qui n’ouvre pas et une erreur de lecture.</translation>
    </message>
    <message>
        <source>Large: 120 terminals</source>
        <translation>Grand&#xa0;: 120 terminaux</translation>
    </message>
    <message>
        <source>Six risers of five branches of four terminals. Nothing is wrong but the design&apos;s losses.</source>
        <translation>Six colonnes de cinq branches de quatre terminaux. Seules les pertes nominales sont fausses.</translation>
    </message>
    <message>
        <source>Large and faulty: 120 terminals</source>
        <translation>Grand avec défauts&#xa0;: 120 terminaux</translation>
    </message>
    <message>
        <source>As Large, with air, a clogging strainer, a stuck control valve, a misread handle and slips of reading.</source>
        <translation>Comme Grand, avec de l’air, un filtre qui s’encrasse, une vanne de régulation bloquée, une poignée mal lue et des erreurs de lecture.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>a terminal is shut</source>
        <translation>un terminal est fermé</translation>
    </message>
    <message>
        <source>air in the coil</source>
        <translation>air dans la batterie</translation>
    </message>
    <message>
        <source>a strainer clogged during the job</source>
        <translation>un filtre s’est encrassé pendant le travail</translation>
    </message>
    <message>
        <source>the control valve does not open fully</source>
        <translation>la vanne de régulation n’ouvre pas en grand</translation>
    </message>
    <message>
        <source>the handle stood a turn off in round %1</source>
        <translation>la poignée était décalée d’un tour au passage %1</translation>
    </message>
    <message>
        <source>the meter stood on another unit in round %1</source>
        <translation>l’appareil était sur une autre unité au passage %1</translation>
    </message>
    <message>
        <source>half the dp was read in round %1</source>
        <translation>la moitié de la Δp a été mesurée au passage %1</translation>
    </message>
    <message>
        <source>twice the dp was read in round %1</source>
        <translation>le double de la Δp a été mesuré au passage %1</translation>
    </message>
    <message>
        <source>Largest spread of a group</source>
        <translation>Plus grande dispersion d’un groupe</translation>
    </message>
    <message>
        <source>Least flow of design</source>
        <translation>Plus petit débit, du nominal</translation>
    </message>
    <message>
        <source>An open valve in every group</source>
        <translation>Une vanne ouverte dans chaque groupe</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Head for design flow everywhere</source>
        <translation>Hauteur pour le débit nominal partout</translation>
    </message>
    <message>
        <source>Head saved</source>
        <translation>Hauteur épargnée</translation>
    </message>
    <message>
        <source>Valves moved</source>
        <translation>Vannes manœuvrées</translation>
    </message>
    <message>
        <source>Readings taken</source>
        <translation>Mesures faites</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Passages</translation>
    </message>
    <message>
        <source>Largest error of a share, true in the building</source>
        <translation>Plus grande erreur d’une part, vraie dans le bâtiment</translation>
    </message>
    <message>
        <source>Largest error of a share, as the valves read</source>
        <translation>Plus grande erreur d’une part, telle que mesurée aux vannes</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Lecture de %1</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Ctrl</source>
        <translation>Ctrl</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Maj</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Haut</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Bas</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>page %1 of %2</source>
        <translation>page %1 sur %2</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (suite)</translation>
    </message>
    <message>
        <source>The loop is too large to be drawn with its names; section %1 lists every branch.</source>
        <translation>La boucle est trop grande pour être dessinée avec ses noms&#xa0;; la section %1 liste chaque branche.</translation>
    </message>
    <message>
        <source>Part %1 of %2, from the pump outward, top to bottom</source>
        <translation>Partie %1 sur %2, depuis la pompe, de haut en bas</translation>
    </message>
    <message>
        <source>This picture cannot be read.</source>
        <translation>Cette image ne peut être lue.</translation>
    </message>
    <message>
        <source>%1, balance report, round %2, revision %3.pdf</source>
        <translation>%1, rapport d’équilibrage, passage %2, révision %3.pdf</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Chantier</translation>
    </message>
    <message>
        <source>Workbook %1</source>
        <translation>Classeur %1</translation>
    </message>
    <message>
        <source>Newest record %1</source>
        <translation>Dernier enregistrement %1</translation>
    </message>
    <message>
        <source>The signatures cover this file with the tables attached to it. A block is only a picture: the signature panel of a PDF viewer, or Waterwright&apos;s verify, tells whether the file is unchanged and who signed it.</source>
        <translation>Les signatures couvrent ce fichier et les tableaux joints. Un cartouche n’est qu’une image&#xa0;: le panneau des signatures d’un lecteur PDF, ou la vérification de Waterwright, dit si le fichier est inchangé et qui l’a signé.</translation>
    </message>
    <message>
        <source>Balance report</source>
        <translation>Rapport d’équilibrage</translation>
    </message>
    <message>
        <source>DRAFT, NOT SIGNED</source>
        <translation>BROUILLON, NON SIGNÉ</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>passage %1</translation>
    </message>
    <message>
        <source>data %1</source>
        <translation>données %1</translation>
    </message>
    <message>
        <source>draft until signed</source>
        <translation>brouillon jusqu’à signature</translation>
    </message>
    <message>
        <source>%1, study of a changed zone.pdf</source>
        <translation>%1, étude d’une zone modifiée.pdf</translation>
    </message>
    <message>
        <source>A FORECAST, NO READINGS</source>
        <translation>PRÉVISION, SANS MESURES</translation>
    </message>
    <message>
        <source>Study of a changed zone</source>
        <translation>Étude d’une zone modifiée</translation>
    </message>
    <message>
        <source>a study, never signed</source>
        <translation>une étude, jamais signée</translation>
    </message>
    <message>
        <source>%1, balance report, round %2, revision %3 draft.pdf</source>
        <translation>%1, rapport d’équilibrage, passage %2, révision %3 brouillon.pdf</translation>
    </message>
    <message>
        <source>SIMULATED</source>
        <translation>SIMULÉ</translation>
    </message>
    <message>
        <source>%1, balance report, round %2, revision %3 copy.pdf</source>
        <translation>%1, rapport d’équilibrage, passage %2, révision %3 copie.pdf</translation>
    </message>
    <message>
        <source>COPY, NOT SIGNED</source>
        <translation>COPIE, NON SIGNÉE</translation>
    </message>
    <message>
        <source>copy of the signed report</source>
        <translation>copie du rapport signé</translation>
    </message>
</context>
<context>
    <name>ReviewPlace</name>
    <message>
        <source>cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corrigé</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>réglé</translation>
    </message>
    <message>
        <source>was, corrected</source>
        <translation>était, corrigé</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>biffé</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>appareil %1</translation>
    </message>
</context>
<context>
    <name>RowRemoval</name>
    <message>
        <source>This workbook can only be read here.</source>
        <translation>Ici, ce classeur ne peut être que lu.</translation>
    </message>
    <message>
        <source>There is no row here to remove.</source>
        <translation>Aucune ligne à retirer ici.</translation>
    </message>
</context>
<context>
    <name>SchematicView</name>
    <message>
        <source>at %1</source>
        <translation>à %1</translation>
    </message>
</context>
<context>
    <name>Term</name>
    <message>
        <source>SI</source>
        <translation>SI</translation>
    </message>
    <message>
        <source>US</source>
        <translation>US</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>accepté</translation>
    </message>
    <message>
        <source>adjusting</source>
        <translation>réglage</translation>
    </message>
    <message>
        <source>attachment</source>
        <translation>pièce jointe</translation>
    </message>
    <message>
        <source>both</source>
        <translation>les deux</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>branche</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>clos</translation>
    </message>
    <message>
        <source>comment</source>
        <translation>commentaire</translation>
    </message>
    <message>
        <source>deficiency</source>
        <translation>réserve</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>degrés</translation>
    </message>
    <message>
        <source>direct</source>
        <translation>direct</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>sans objet</translation>
    </message>
    <message>
        <source>done</source>
        <translation>fait</translation>
    </message>
    <message>
        <source>engineer</source>
        <translation>ingénieur</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>estimé</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>éthylène glycol</translation>
    </message>
    <message>
        <source>final</source>
        <translation>final</translation>
    </message>
    <message>
        <source>full open</source>
        <translation>ouverte en grand</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>tenir</translation>
    </message>
    <message>
        <source>index at design</source>
        <translation>défavorisé au nominal</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>instrument</translation>
    </message>
    <message>
        <source>job</source>
        <translation>chantier</translation>
    </message>
    <message>
        <source>left as it is</source>
        <translation>laissé tel quel</translation>
    </message>
    <message>
        <source>limiter</source>
        <translation>limiteur</translation>
    </message>
    <message>
        <source>linear</source>
        <translation>linéaire</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manuelle</translation>
    </message>
    <message>
        <source>merge conflict</source>
        <translation>conflit de fusion</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>not balanced</source>
        <translation>non équilibré</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>orifice</source>
        <translation>diaphragme</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>la nôtre</translation>
    </message>
    <message>
        <source>parallel</source>
        <translation>parallèle</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>pour cent</translation>
    </message>
    <message>
        <source>percent only</source>
        <translation>pour cent seul</translation>
    </message>
    <message>
        <source>percent or floor</source>
        <translation>pour cent ou seuil</translation>
    </message>
    <message>
        <source>person</source>
        <translation>personne</translation>
    </message>
    <message>
        <source>picv</source>
        <translation>PICV</translation>
    </message>
    <message>
        <source>proportional</source>
        <translation>proportionnel</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>propylène glycol</translation>
    </message>
    <message>
        <source>pump</source>
        <translation>pompe</translation>
    </message>
    <message>
        <source>pump reading</source>
        <translation>mesure de pompe</translation>
    </message>
    <message>
        <source>readiness line</source>
        <translation>ligne de préparation</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motif</translation>
    </message>
    <message>
        <source>reference</source>
        <translation>référence</translation>
    </message>
    <message>
        <source>remedied</source>
        <translation>levée</translation>
    </message>
    <message>
        <source>return</source>
        <translation>retour</translation>
    </message>
    <message>
        <source>reverse</source>
        <translation>inversé</translation>
    </message>
    <message>
        <source>round</source>
        <translation>passage</translation>
    </message>
    <message>
        <source>running</source>
        <translation>en marche</translation>
    </message>
    <message>
        <source>sent</source>
        <translation>envoyé</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>renvoyé</translation>
    </message>
    <message>
        <source>series</source>
        <translation>série</translation>
    </message>
    <message>
        <source>set-point</source>
        <translation>consigne</translation>
    </message>
    <message>
        <source>shut valve</source>
        <translation>vanne fermée</translation>
    </message>
    <message>
        <source>shutoff</source>
        <translation>débit nul</translation>
    </message>
    <message>
        <source>signed report</source>
        <translation>rapport signé</translation>
    </message>
    <message>
        <source>square</source>
        <translation>quadratique</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>valable</translation>
    </message>
    <message>
        <source>static</source>
        <translation>statique</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>biffé</translation>
    </message>
    <message>
        <source>superseded</source>
        <translation>remplacé</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>responsable</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>aller</translation>
    </message>
    <message>
        <source>survey</source>
        <translation>relevé</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>technicien</translation>
    </message>
    <message>
        <source>theirs</source>
        <translation>la leur</translation>
    </message>
    <message>
        <source>throttled to design</source>
        <translation>étranglé au nominal</translation>
    </message>
    <message>
        <source>try</source>
        <translation>essai</translation>
    </message>
    <message>
        <source>turns</source>
        <translation>tours</translation>
    </message>
    <message>
        <source>two elbows</source>
        <translation>deux coudes</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>vanne</translation>
    </message>
    <message>
        <source>verify limiter</source>
        <translation>vérifier limiteur</translation>
    </message>
    <message>
        <source>verify pressure-independent valve</source>
        <translation>vérifier vanne indépendante de la pression</translation>
    </message>
    <message>
        <source>walk</source>
        <translation>tournée</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>witness</source>
        <translation>témoin</translation>
    </message>
    <message>
        <source>worst coil</source>
        <translation>batterie la plus défavorisée</translation>
    </message>
    <message>
        <source>5 % of the plate</source>
        <translation>5&#xa0;% de la plaque</translation>
    </message>
    <message>
        <source>5 % of the plate or a fixed power</source>
        <translation>5&#xa0;% de la plaque ou puissance fixe</translation>
    </message>
    <message>
        <source>All isolating and balancing valves are open</source>
        <translation>Toutes les vannes d’isolement et d’équilibrage sont ouvertes</translation>
    </message>
    <message>
        <source>Bypasses are closed</source>
        <translation>Les by-pass sont fermés</translation>
    </message>
    <message>
        <source>Chillers or boilers keep their design temperatures</source>
        <translation>Groupes froids ou chaudières tiennent leurs températures nominales</translation>
    </message>
    <message>
        <source>Control valves stand at full flow through their coils, seen at the valve</source>
        <translation>Les vannes de régulation sont à plein débit dans la batterie, vu à la vanne</translation>
    </message>
    <message>
        <source>Ethylene glycol</source>
        <translation>Éthylène glycol</translation>
    </message>
    <message>
        <source>Motor protection is set to the motor&apos;s plate</source>
        <translation>La protection du moteur est réglée selon sa plaque</translation>
    </message>
    <message>
        <source>NO</source>
        <translation>NON</translation>
    </message>
    <message>
        <source>Pipework is complete and pressure tested</source>
        <translation>La tuyauterie est complète et éprouvée</translation>
    </message>
    <message>
        <source>Propylene glycol</source>
        <translation>Propylène glycol</translation>
    </message>
    <message>
        <source>Pumps turn the right way, are aligned and lubricated</source>
        <translation>Les pompes tournent dans le bon sens, sont alignées et graissées</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Dispersion</translation>
    </message>
    <message>
        <source>Strainers are cleaned and start-up screens are out</source>
        <translation>Les filtres sont propres et les tamis de démarrage retirés</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Somme</translation>
    </message>
    <message>
        <source>The air side is balanced, where heat is to be checked</source>
        <translation>Le côté air est équilibré, là où la chaleur est contrôlée</translation>
    </message>
    <message>
        <source>The controls hold that position until balancing is done</source>
        <translation>La régulation tient cette position jusqu’à la fin de l’équilibrage</translation>
    </message>
    <message>
        <source>The expansion vessel works and its pre-charge is checked</source>
        <translation>Le vase d’expansion fonctionne et sa précharge est contrôlée</translation>
    </message>
    <message>
        <source>The loop is filled and vented at its high points; the pressure with the pumps off is noted</source>
        <translation>La boucle est remplie et purgée aux points hauts&#xa0;; la pression pompes arrêtées est notée</translation>
    </message>
    <message>
        <source>The loop is flushed and chemically cleaned</source>
        <translation>La boucle est rincée et nettoyée chimiquement</translation>
    </message>
    <message>
        <source>a cost that is not known</source>
        <translation>un coût inconnu</translation>
    </message>
    <message>
        <source>a power that is not known</source>
        <translation>une puissance inconnue</translation>
    </message>
    <message>
        <source>a reading of</source>
        <translation>une mesure de</translation>
    </message>
    <message>
        <source>a time not written</source>
        <translation>une heure non notée</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>tel que saisi</translation>
    </message>
    <message>
        <source>at </source>
        <translation>à </translation>
    </message>
    <message>
        <source>blocks signing</source>
        <translation>bloque la signature</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>chosen for this job</source>
        <translation>choisi pour ce chantier</translation>
    </message>
    <message>
        <source>comment, OPEN</source>
        <translation>commentaire, OUVERT</translation>
    </message>
    <message>
        <source>comment, resolved</source>
        <translation>commentaire, réglé</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>corrigé</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>correction</translation>
    </message>
    <message>
        <source>curve</source>
        <translation>courbe</translation>
    </message>
    <message>
        <source>design losses</source>
        <translation>pertes nominales</translation>
    </message>
    <message>
        <source>discharge valve</source>
        <translation>vanne de refoulement</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>douteux</translation>
    </message>
    <message>
        <source>encrypted, or with cross-reference streams</source>
        <translation>chiffré, ou avec flux de références croisées</translation>
    </message>
    <message>
        <source>error</source>
        <translation>erreur</translation>
    </message>
    <message>
        <source>field</source>
        <translation>champ</translation>
    </message>
    <message>
        <source>for comparison</source>
        <translation>pour comparaison</translation>
    </message>
    <message>
        <source>its clause on hydronic balancing</source>
        <translation>son article sur l’équilibrage hydraulique</translation>
    </message>
    <message>
        <source>its folder cannot be written</source>
        <translation>son dossier n’est pas accessible en écriture</translation>
    </message>
    <message>
        <source>largest of any group</source>
        <translation>la plus grande des groupes</translation>
    </message>
    <message>
        <source>less</source>
        <translation>de moins</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>appareil</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>manque</translation>
    </message>
    <message>
        <source>model learned from readings</source>
        <translation>modèle appris des mesures</translation>
    </message>
    <message>
        <source>more</source>
        <translation>de plus</translation>
    </message>
    <message>
        <source>must be trimmed or slowed</source>
        <translation>doit être rognée ou ralentie</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>no cross-reference table</source>
        <translation>pas de table de références croisées</translation>
    </message>
    <message>
        <source>no right to read it</source>
        <translation>pas le droit de le lire</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>aucune valeur</translation>
    </message>
    <message>
        <source>no valve</source>
        <translation>pas de vanne</translation>
    </message>
    <message>
        <source>not a number</source>
        <translation>pas un nombre</translation>
    </message>
    <message>
        <source>not allowed</source>
        <translation>non permis</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>non décidé</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>non saisi</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>pas nécessaire</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>not readable</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>of max</source>
        <translation>du max.</translation>
    </message>
    <message>
        <source>of the terminals</source>
        <translation>des terminaux</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>échu</translation>
    </message>
    <message>
        <source>pipe of </source>
        <translation>tuyau de </translation>
    </message>
    <message>
        <source>place not entered</source>
        <translation>lieu non saisi</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>repeat</source>
        <translation>répétition</translation>
    </message>
    <message>
        <source>return run of </source>
        <translation>tronçon retour de </translation>
    </message>
    <message>
        <source>round </source>
        <translation>passage </translation>
    </message>
    <message>
        <source>setting </source>
        <translation>réglage </translation>
    </message>
    <message>
        <source>slow</source>
        <translation>ralentir</translation>
    </message>
    <message>
        <source>supply run to </source>
        <translation>tronçon aller vers </translation>
    </message>
    <message>
        <source>terminals</source>
        <translation>terminaux</translation>
    </message>
    <message>
        <source>the adopted energy code</source>
        <translation>le code énergétique adopté</translation>
    </message>
    <message>
        <source>the curve</source>
        <translation>la courbe</translation>
    </message>
    <message>
        <source>the meter</source>
        <translation>l’appareil</translation>
    </message>
    <message>
        <source>the pump is reduced already</source>
        <translation>la pompe est déjà réduite</translation>
    </message>
    <message>
        <source>the report is too large</source>
        <translation>le rapport est trop grand</translation>
    </message>
    <message>
        <source>the same, each duty with its own efficiency</source>
        <translation>de même, chaque point avec son propre rendement</translation>
    </message>
    <message>
        <source>the terminals</source>
        <translation>les terminaux</translation>
    </message>
    <message>
        <source>throttle</source>
        <translation>étrangler</translation>
    </message>
    <message>
        <source>too many revisions</source>
        <translation>trop de révisions</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>rogner</translation>
    </message>
    <message>
        <source>undecidable</source>
        <translation>indécidable</translation>
    </message>
    <message>
        <source>under </source>
        <translation>moins de </translation>
    </message>
    <message>
        <source>unit of </source>
        <translation>unité de </translation>
    </message>
    <message>
        <source>unknown power</source>
        <translation>puissance inconnue</translation>
    </message>
    <message>
        <source>valve </source>
        <translation>vanne </translation>
    </message>
    <message>
        <source>warning</source>
        <translation>avertissement</translation>
    </message>
    <message>
        <source>with unit</source>
        <translation>avec unité</translation>
    </message>
    <message>
        <source>without a time</source>
        <translation>sans heure</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source> min ago</source>
        <translation> min avant</translation>
    </message>
    <message>
        <source>DP</source>
        <translation>Δp</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Précision</translation>
    </message>
    <message>
        <source>Alone guards a boiler or chiller</source>
        <translation>Protège seule chaudière ou groupe froid</translation>
    </message>
    <message>
        <source>Amps, phase 1</source>
        <translation>Intensité, phase 1</translation>
    </message>
    <message>
        <source>Amps, phase 2</source>
        <translation>Intensité, phase 2</translation>
    </message>
    <message>
        <source>Amps, phase 3</source>
        <translation>Intensité, phase 3</translation>
    </message>
    <message>
        <source>Cv or Kv</source>
        <translation>Cv ou Kv</translation>
    </message>
    <message>
        <source>Discharge</source>
        <translation>Refoulement</translation>
    </message>
    <message>
        <source>Discharge bore</source>
        <translation>Diamètre de refoulement</translation>
    </message>
    <message>
        <source>Discharge gauge over shaft</source>
        <translation>Mano. refoulement, au-dessus de l’axe</translation>
    </message>
    <message>
        <source>Discharge valve at</source>
        <translation>Vanne de refoulement à</translation>
    </message>
    <message>
        <source>Discharge valve, tag</source>
        <translation>Vanne de refoulement, repère</translation>
    </message>
    <message>
        <source>Flow by meter</source>
        <translation>Débit par débitmètre</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manomètre</translation>
    </message>
    <message>
        <source>Has a drive</source>
        <translation>A un variateur</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Roue</translation>
    </message>
    <message>
        <source>Input power</source>
        <translation>Puissance absorbée</translation>
    </message>
    <message>
        <source>Least dp</source>
        <translation>Δp minimale</translation>
    </message>
    <message>
        <source>Least impeller</source>
        <translation>Roue minimale</translation>
    </message>
    <message>
        <source>Least speed, of rated</source>
        <translation>Vitesse minimale, du nominal</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modèle</translation>
    </message>
    <message>
        <source>More shut</source>
        <translation>Presque fermée</translation>
    </message>
    <message>
        <source>Most dp</source>
        <translation>Δp maximale</translation>
    </message>
    <message>
        <source>Motor efficiency</source>
        <translation>Rendement du moteur</translation>
    </message>
    <message>
        <source>Motor power</source>
        <translation>Puissance du moteur</translation>
    </message>
    <message>
        <source>Motor speed, plate</source>
        <translation>Vitesse moteur, plaque</translation>
    </message>
    <message>
        <source>No-load amps</source>
        <translation>Intensité à vide</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Or rise, one gauge</source>
        <translation>Ou différence, un manomètre</translation>
    </message>
    <message>
        <source>Plate amps</source>
        <translation>Intensité, plaque</translation>
    </message>
    <message>
        <source>Plate power factor</source>
        <translation>Facteur de puissance, plaque</translation>
    </message>
    <message>
        <source>Plate volts</source>
        <translation>Tension, plaque</translation>
    </message>
    <message>
        <source>Positive displacement</source>
        <translation>Volumétrique</translation>
    </message>
    <message>
        <source>Power factor</source>
        <translation>Facteur de puissance</translation>
    </message>
    <message>
        <source>Rated speed</source>
        <translation>Vitesse nominale</translation>
    </message>
    <message>
        <source>Reason, if doubted</source>
        <translation>Motif, si douteux</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>En marche</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Échelle</translation>
    </message>
    <message>
        <source>Service factor</source>
        <translation>Facteur de service</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Vitesse</translation>
    </message>
    <message>
        <source>Suction</source>
        <translation>Aspiration</translation>
    </message>
    <message>
        <source>Suction bore</source>
        <translation>Diamètre d’aspiration</translation>
    </message>
    <message>
        <source>Suction gauge over shaft</source>
        <translation>Mano. aspiration, au-dessus de l’axe</translation>
    </message>
    <message>
        <source>Synchronous speed</source>
        <translation>Vitesse de synchronisme</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Volts, phases 1-2</source>
        <translation>Tension, phases 1-2</translation>
    </message>
    <message>
        <source>Volts, phases 2-3</source>
        <translation>Tension, phases 2-3</translation>
    </message>
    <message>
        <source>Volts, phases 3-1</source>
        <translation>Tension, phases 3-1</translation>
    </message>
    <message>
        <source>a date outside the calendar</source>
        <translation>une date hors du calendrier</translation>
    </message>
    <message>
        <source>a recorded change does not fit its tables</source>
        <translation>une modification enregistrée ne va pas avec ses tables</translation>
    </message>
    <message>
        <source>a text that the file does not have</source>
        <translation>un texte que le fichier n’a pas</translation>
    </message>
    <message>
        <source>above the index circuit with open valves</source>
        <translation>au-dessus du circuit défavorisé, vannes ouvertes</translation>
    </message>
    <message>
        <source>above the loop with its valves as read</source>
        <translation>au-dessus de la boucle avec ses vannes telles que mesurées</translation>
    </message>
    <message>
        <source>age of old readings</source>
        <translation>âge des mesures anciennes</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation>altitude</translation>
    </message>
    <message>
        <source>at full speed</source>
        <translation>à pleine vitesse</translation>
    </message>
    <message>
        <source>at least 2</source>
        <translation>au moins 2</translation>
    </message>
    <message>
        <source>band of target</source>
        <translation>bande de la cible</translation>
    </message>
    <message>
        <source>by a balanced round</source>
        <translation>selon un passage équilibré</translation>
    </message>
    <message>
        <source>by the design losses</source>
        <translation>selon les pertes nominales</translation>
    </message>
    <message>
        <source>by the learned loop</source>
        <translation>selon la boucle apprise</translation>
    </message>
    <message>
        <source>clause</source>
        <translation>article</translation>
    </message>
    <message>
        <source>client</source>
        <translation>client</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>horloge</translation>
    </message>
    <message>
        <source>clock offset</source>
        <translation>décalage d’horloge</translation>
    </message>
    <message>
        <source>code and edition</source>
        <translation>code et édition</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>devise</translation>
    </message>
    <message>
        <source>exactly 3</source>
        <translation>exactement 3</translation>
    </message>
    <message>
        <source>exception claimed</source>
        <translation>exception invoquée</translation>
    </message>
    <message>
        <source>fill pressure</source>
        <translation>pression de remplissage</translation>
    </message>
    <message>
        <source>glycol by mass</source>
        <translation>glycol en masse</translation>
    </message>
    <message>
        <source>highest off design</source>
        <translation>écart le plus haut au nominal</translation>
    </message>
    <message>
        <source>hours a year</source>
        <translation>heures par an</translation>
    </message>
    <message>
        <source>it has no sheet</source>
        <translation>il n’a pas de feuille</translation>
    </message>
    <message>
        <source>it names no workbook</source>
        <translation>il ne nomme aucun classeur</translation>
    </message>
    <message>
        <source>lowest off design</source>
        <translation>écart le plus bas au nominal</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nom</translation>
    </message>
    <message>
        <source>no regular file, or no permission</source>
        <translation>pas un fichier ordinaire, ou aucun droit</translation>
    </message>
    <message>
        <source>no such folder, or no permission</source>
        <translation>dossier absent, ou aucun droit</translation>
    </message>
    <message>
        <source>price of a kWh</source>
        <translation>prix du kWh</translation>
    </message>
    <message>
        <source>rpm</source>
        <translation>tr/min</translation>
    </message>
    <message>
        <source>site</source>
        <translation>lieu</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>température</translation>
    </message>
    <message>
        <source>time uncertain</source>
        <translation>heure incertaine</translation>
    </message>
    <message>
        <source>unknown person</source>
        <translation>personne inconnue</translation>
    </message>
    <message>
        <source> days</source>
        <translation> jours</translation>
    </message>
    <message>
        <source> days ago</source>
        <translation> jours avant</translation>
    </message>
    <message>
        <source> h ago</source>
        <translation> h avant</translation>
    </message>
    <message>
        <source> months</source>
        <translation> mois</translation>
    </message>
    <message>
        <source> months ago</source>
        <translation> mois avant</translation>
    </message>
    <message>
        <source> s ago</source>
        <translation> s avant</translation>
    </message>
    <message>
        <source> years</source>
        <translation> ans</translation>
    </message>
    <message>
        <source> years ago</source>
        <translation> ans avant</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>débit</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>retiré</translation>
    </message>
    <message>
        <source>by the pump&apos;s curve</source>
        <translation>d’après la courbe de la pompe</translation>
    </message>
    <message>
        <source>by the sum of the flows</source>
        <translation>d’après la somme des débits</translation>
    </message>
    <message>
        <source>exempt as a small excess</source>
        <translation>exempt comme petit excédent</translation>
    </message>
    <message>
        <source>exempt as a small motor</source>
        <translation>exempt comme petit moteur</translation>
    </message>
    <message>
        <source>not within tolerance</source>
        <translation>hors tolérance</translation>
    </message>
    <message>
        <source>shutoff test</source>
        <translation>essai à débit nul</translation>
    </message>
    <message>
        <source>within tolerance</source>
        <translation>dans la tolérance</translation>
    </message>
    <message>
        <source>by the curve through the gauges of round </source>
        <translation>d’après la courbe recalée sur les manomètres du passage </translation>
    </message>
    <message>
        <source>from the pump&apos;s curve</source>
        <translation>d’après la courbe de la pompe</translation>
    </message>
    <message>
        <source>from the pump&apos;s curve through the gauges of round </source>
        <translation>d’après la courbe de la pompe recalée sur les manomètres du passage </translation>
    </message>
    <message>
        <source>without a name</source>
        <translation>sans nom</translation>
    </message>
    <message>
        <source>not proved</source>
        <translation>non prouvé</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>prouvé</translation>
    </message>
    <message>
        <source>withdrawn or sent back</source>
        <translation>retiré ou renvoyé</translation>
    </message>
    <message>
        <source>With other pumps</source>
        <translation>Avec d’autres pompes</translation>
    </message>
    <message>
        <source>at the speed of the last round</source>
        <translation>à la vitesse du dernier passage</translation>
    </message>
    <message>
        <source>further</source>
        <translation>davantage</translation>
    </message>
    <message>
        <source>to </source>
        <translation>jusqu’à </translation>
    </message>
    <message>
        <source>Cooling coil {1}</source>
        <translation>Batterie froide {1}</translation>
    </message>
    <message>
        <source>DN 15 low</source>
        <translation>DN 15 réduit</translation>
    </message>
    <message>
        <source>Practice building {1}</source>
        <translation>Bâtiment d’exercice {1}</translation>
    </message>
    <message>
        <source>Practice valve</source>
        <translation>Vanne d’exercice</translation>
    </message>
    <message>
        <source>Simulated, no real plant</source>
        <translation>Simulé, aucune installation réelle</translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation>Stagiaire</translation>
    </message>
    <message>
        <source>as it runs</source>
        <translation>telle qu&apos;elle tourne</translation>
    </message>
    <message>
        <source>current</source>
        <translation>courant</translation>
    </message>
    <message>
        <source>dp meter</source>
        <translation>manomètre Δp</translation>
    </message>
    <message>
        <source>input power</source>
        <translation>puissance absorbée</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>exercice</translation>
    </message>
    <message>
        <source>pump gauge</source>
        <translation>manomètre de pompe</translation>
    </message>
    <message>
        <source>throttled</source>
        <translation>étranglée</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>tension</translation>
    </message>
</context>
<context>
    <name>ValveChart</name>
    <message>
        <source>Flow coefficient over setting</source>
        <translation>Coefficient de débit selon le réglage</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>A range of dp without a table: for a limiter or a pressure-independent valve.</source>
        <translation>Une plage de Δp sans table&#xa0;: pour un limiteur ou une vanne indépendante de la pression.</translation>
    </message>
    <message>
        <source>No points yet: type setting and coefficient, or paste two columns from a spreadsheet (Ctrl+V).</source>
        <translation>Pas encore de points&#xa0;: tapez réglage et coefficient, ou collez deux colonnes d’un tableur (Ctrl+V).</translation>
    </message>
    <message>
        <source>Setting, %1</source>
        <translation>Réglage, %1</translation>
    </message>
    <message>
        <source>%1 %2 fully open, at setting %3.</source>
        <translation>%1 %2 ouverte en grand, au réglage %3.</translation>
    </message>
    <message>
        <source>No valve model yet: add one, or paste a table (Ctrl+V).</source>
        <translation>Aucun modèle de vanne&#xa0;: ajoutez-en un ou collez un tableau (Ctrl+V).</translation>
    </message>
</context>
<context>
    <name>WalkSheet</name>
    <message>
        <source>Walk sheet</source>
        <translation>Fiche de tournée</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>passage %1</translation>
    </message>
    <message>
        <source>walk sheet</source>
        <translation>fiche de tournée</translation>
    </message>
    <message>
        <source>Round %1, %2</source>
        <translation>Passage %1, %2</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Office</source>
        <translation>Bureau</translation>
    </message>
    <message>
        <source>Daylight</source>
        <translation>Plein jour</translation>
    </message>
    <message>
        <source>Plant-room dark</source>
        <translation>Sombre</translation>
    </message>
    <message>
        <source>No workbook open</source>
        <translation>Aucun classeur ouvert</translation>
    </message>
    <message>
        <source>PRACTICE · %1</source>
        <translation>EXERCICE · %1</translation>
    </message>
    <message>
        <source>Round %1, %2, %3</source>
        <translation>Passage %1, %2, %3</translation>
    </message>
    <message>
        <source>Meter %1</source>
        <translation>Appareil %1</translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation>, échu le %1</translation>
    </message>
    <message>
        <source>, calibrated to %1</source>
        <translation>, étalonné jusqu’au %1</translation>
    </message>
    <message>
        <source>Not stored: %1</source>
        <translation>Non enregistré&#xa0;: %1</translation>
    </message>
    <message>
        <source>last stored %1: %2</source>
        <translation>dernier enregistrement %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>valves read, short</comment>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <comment>meter, short</comment>
        <translation>%1 échu</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>stored, short</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>read %1 of %2 valves</source>
        <translation>vannes mesurées&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>No person chosen, menu Round, Person: the account %1</source>
        <translation>Aucune personne choisie, menu Passage, Personne&#xa0;: le compte %1</translation>
    </message>
    <message>
        <source>At this desk: %1</source>
        <translation>À ce poste&#xa0;: %1</translation>
    </message>
    <message>
        <source>nobody chosen</source>
        <translation>aucune personne choisie</translation>
    </message>
    <message>
        <source>Valves to read: %1 of terminals, %2 of branches above them</source>
        <translation>Vannes à mesurer&#xa0;: %1 de terminaux, %2 de branches au-dessus</translation>
    </message>
    <message>
        <source>last stored %1</source>
        <translation>dernier enregistrement %1</translation>
    </message>
    <message>
        <source>Rd %1</source>
        <comment>round, short</comment>
        <translation>Pass. %1</translation>
    </message>
</context>
<context>
    <name>Word</name>
    <message>
        <source>Not read</source>
        <translation>Non mesuré</translation>
    </message>
    <message>
        <source>Short</source>
        <translation>Sous-débit</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Surdébit</translation>
    </message>
    <message>
        <source>On share</source>
        <translation>À sa part</translation>
    </message>
    <message>
        <source>Drifted</source>
        <translation>A dérivé</translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation>Douteux</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation>OUVRIR</translation>
    </message>
    <message>
        <source>CLOSE</source>
        <translation>FERMER</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation>TENIR</translation>
    </message>
    <message>
        <source>READ AGAIN</source>
        <translation>REMESURER</translation>
    </message>
    <message>
        <source>Survey</source>
        <translation>Relevé</translation>
    </message>
    <message>
        <source>Adjusting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>Witness</source>
        <translation>Témoin</translation>
    </message>
    <message>
        <source>Manual valve</source>
        <translation>Vanne manuelle</translation>
    </message>
    <message>
        <source>Orifice</source>
        <translation>Diaphragme</translation>
    </message>
    <message>
        <source>Flow limiter</source>
        <translation>Limiteur de débit</translation>
    </message>
    <message>
        <source>Pressure-independent</source>
        <translation>Indépendante de la pression</translation>
    </message>
    <message>
        <source>No valve</source>
        <translation>Pas de vanne</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Eau</translation>
    </message>
    <message>
        <source>Ethylene glycol</source>
        <translation>Éthylène glycol</translation>
    </message>
    <message>
        <source>Propylene glycol</source>
        <translation>Propylène glycol</translation>
    </message>
    <message>
        <source>In range</source>
        <translation>Dans la plage</translation>
    </message>
    <message>
        <source>At shut stop</source>
        <translation>Butée fermée</translation>
    </message>
    <message>
        <source>At open stop</source>
        <translation>Butée ouverte</translation>
    </message>
    <message>
        <source>NO FURTHER</source>
        <translation>AU BOUT</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>clos</translation>
    </message>
    <message>
        <source>sent</source>
        <translation>envoyé</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>accepté</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>renvoyé</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Read, no share</source>
        <translation>Mesuré, sans part</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1&#xa0;; %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::AdjustPlace</name>
    <message>
        <source>Share of the valve in hand</source>
        <translation>Part de la vanne en main</translation>
    </message>
    <message>
        <source>What the aim rests on</source>
        <translation>Sur quoi repose la visée</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Aim DP</source>
        <translation>Δp visée</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Tries</source>
        <translation>Essais</translation>
    </message>
    <message>
        <source>Setting to try next</source>
        <translation>Réglage à essayer ensuite</translation>
    </message>
    <message>
        <source>Hold Here, Next Valve</source>
        <translation>Tenir ici, vanne suivante</translation>
    </message>
    <message>
        <source>Next valve</source>
        <translation>Vanne suivante</translation>
    </message>
    <message>
        <source>Adjust</source>
        <translation>Régler</translation>
    </message>
    <message>
        <source>Valve in hand</source>
        <translation>Vanne en main</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Ce qui manque ici</translation>
    </message>
    <message>
        <source>Find valve to adjust</source>
        <translation>Trouver une vanne à régler</translation>
    </message>
    <message>
        <source>tag or number</source>
        <translation>repère ou numéro</translation>
    </message>
    <message>
        <source>&amp;Find valve</source>
        <translation>&amp;Trouver vanne</translation>
    </message>
    <message>
        <source>Neighboring settings and their aims</source>
        <translation>Réglages voisins et leurs visées</translation>
    </message>
    <message>
        <source>DP read at this setting</source>
        <translation>Δp mesurée à ce réglage</translation>
    </message>
    <message>
        <source>&amp;Setting</source>
        <translation>&amp;Réglage</translation>
    </message>
    <message>
        <source>Setting of the handle</source>
        <translation>Réglage de la poignée</translation>
    </message>
    <message>
        <source>expect %1</source>
        <translation>attendu %1</translation>
    </message>
    <message>
        <source>&amp;DP %1 at reference %2</source>
        <translation>Δ&amp;p %1 à la référence %2</translation>
    </message>
    <message>
        <source>No valve in hand</source>
        <translation>Aucune vanne en main</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Aucun classeur ouvert. Ouvrez-en un (Ctrl+O) ou créez un chantier (Ctrl+N).</translation>
    </message>
    <message>
        <source>No valve to adjust yet. Add the branches in System (Alt+2).</source>
        <translation>Aucune vanne à régler encore. Ajoutez les branches dans Réseau (Alt+2).</translation>
    </message>
    <message>
        <source>Read one full round first (Alt+3); the aim needs every branch.</source>
        <translation>Mesurez d’abord un passage complet (Alt+3)&#xa0;; la visée a besoin de chaque branche.</translation>
    </message>
    <message>
        <source>This branch has no valve to adjust. Find another (Ctrl+J).</source>
        <translation>Cette branche n’a pas de vanne à régler. Trouvez-en une autre (Ctrl+J).</translation>
    </message>
    <message>
        <source>%1 Find another valve with Ctrl+J.</source>
        <translation>%1 Trouvez une autre vanne avec Ctrl+J.</translation>
    </message>
    <message>
        <source>of %1 %2</source>
        <translation>de %1 %2</translation>
    </message>
    <message>
        <source>not read here yet</source>
        <translation>pas encore mesuré ici</translation>
    </message>
    <message>
        <source>Up, Down %1</source>
        <translation>Haut, Bas %1</translation>
    </message>
    <message>
        <source>hold %1–%2</source>
        <translation>tenir %1–%2</translation>
    </message>
    <message>
        <source>the valve is shut</source>
        <translation>la vanne est fermée</translation>
    </message>
    <message>
        <source>aim %1, hold %2 to %3</source>
        <translation>visée %1, tenir %2 à %3</translation>
    </message>
    <message>
        <source>&amp;DP %1</source>
        <translation>Δ&amp;p %1</translation>
    </message>
    <message>
        <source>&amp;DP %1, valve shut</source>
        <translation>Δ&amp;p %1, vanne fermée</translation>
    </message>
    <message>
        <source>&amp;DP %1, read again</source>
        <translation>Δ&amp;p %1, à remesurer</translation>
    </message>
    <message>
        <source>next: %1, %2</source>
        <translation>suivante&#xa0;: %1, %2</translation>
    </message>
    <message>
        <source>no valve is left to adjust</source>
        <translation>aucune vanne ne reste à régler</translation>
    </message>
    <message>
        <source>%1, %2 % of target</source>
        <translation>%1, %2&#xa0;% de la cible</translation>
    </message>
    <message>
        <source>digits Enter stores this one reading and returns</source>
        <translation>chiffres Entrée enregistre cette mesure et revient</translation>
    </message>
    <message>
        <source>Esc gives it up</source>
        <translation>Échap abandonne</translation>
    </message>
    <message>
        <source>Alt+3 walk</source>
        <translation>Alt+3 tournée</translation>
    </message>
    <message>
        <source>Ctrl+J find</source>
        <translation>Ctrl+J trouver</translation>
    </message>
    <message>
        <source>digits Enter logs a try</source>
        <translation>chiffres Entrée essai</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W closes the round first</source>
        <translation>Ctrl+Maj+W clôt d’abord le passage</translation>
    </message>
    <message>
        <source>Up, Down setting</source>
        <translation>Haut, Bas réglage</translation>
    </message>
    <message>
        <source>Ctrl+Enter hold, next</source>
        <translation>Ctrl+Entrée tenir, suivante</translation>
    </message>
    <message>
        <source>Ctrl+B reference</source>
        <translation>Ctrl+B référence</translation>
    </message>
    <message>
        <source>Ctrl+I advice</source>
        <translation>Ctrl+I conseil</translation>
    </message>
    <message>
        <source>Esc clears</source>
        <translation>Échap efface</translation>
    </message>
    <message>
        <source>digits Enter moves the handle</source>
        <translation>chiffres Entrée tourne la poignée</translation>
    </message>
    <message>
        <source>Esc back</source>
        <translation>Échap retour</translation>
    </message>
    <message>
        <source>Enter takes the setting</source>
        <translation>Entrée prend le réglage</translation>
    </message>
    <message>
        <source>Enter goes to the valve</source>
        <translation>Entrée va à la vanne</translation>
    </message>
    <message>
        <source>Ctrl+Enter hold</source>
        <translation>Ctrl+Entrée tenir</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T advised setting</source>
        <translation>Ctrl+Maj+T réglage conseillé</translation>
    </message>
    <message>
        <source>fully open</source>
        <translation>ouverte en grand</translation>
    </message>
    <message>
        <source>lowest setting</source>
        <translation>réglage minimal</translation>
    </message>
    <message>
        <source>Hold Here</source>
        <translation>Tenir ici</translation>
    </message>
    <message>
        <source>no aim while it is read apart</source>
        <translation>pas de visée pendant cette mesure</translation>
    </message>
    <message>
        <source>no aim here</source>
        <translation>pas de visée ici</translation>
    </message>
    <message>
        <source>dp across %1 while it is shut</source>
        <translation>Δp sur %1 tant qu’elle est fermée</translation>
    </message>
    <message>
        <source>Shut %1 and read the dp across it. Enter stores it, then set the handle back to %2; Esc comes back without it.</source>
        <translation>Fermez %1 et mesurez la Δp. Entrée l’enregistre, puis remettez la poignée à %2&#xa0;; Échap revient sans elle.</translation>
    </message>
    <message>
        <source>shut for a moment</source>
        <translation>fermée un instant</translation>
    </message>
    <message>
        <source>then back to %1</source>
        <translation>puis retour à %1</translation>
    </message>
    <message>
        <source>valve shut</source>
        <translation>vanne fermée</translation>
    </message>
    <message>
        <source>SHUT</source>
        <translation>FERMÉE</translation>
    </message>
    <message>
        <source>dp at the reference %1, not at %2</source>
        <translation>Δp à la référence %1, non à %2</translation>
    </message>
    <message>
        <source>Reference %1</source>
        <translation>Référence %1</translation>
    </message>
    <message>
        <source>You read %1 now, not %2. Enter stores it and comes back to %2; Esc comes back without it.</source>
        <translation>Vous mesurez %1 maintenant, non %2. Entrée l’enregistre et revient à %2&#xa0;; Échap revient sans mesure.</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>à %1</translation>
    </message>
    <message>
        <source>leave it there</source>
        <translation>laissez-la là</translation>
    </message>
    <message>
        <source>last at %1</source>
        <translation>dernière à %1</translation>
    </message>
    <message>
        <source>REFERENCE</source>
        <translation>RÉFÉRENCE</translation>
    </message>
    <message>
        <source>only %1 available</source>
        <translation>seulement %1 disponibles</translation>
    </message>
    <message>
        <source>Alt+Shift+Up, Alt+Shift+Down working order</source>
        <translation>Alt+Maj+Haut, Alt+Maj+Bas ordre de travail</translation>
    </message>
</context>
<context>
    <name>ww::ui::AdviceModel</name>
    <message>
        <source>self-acting</source>
        <translation>automatique</translation>
    </message>
    <message>
        <source>cannot be set</source>
        <translation>non réglable</translation>
    </message>
    <message>
        <source>scale too short</source>
        <translation>échelle trop courte</translation>
    </message>
    <message>
        <source>fully open</source>
        <translation>ouverte en grand</translation>
    </message>
    <message>
        <source>set</source>
        <translation>réglé</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Ordre</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Actuel</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Régler à</translation>
    </message>
    <message>
        <source>As read, %</source>
        <translation>Tel que mesuré,&#xa0;%</translation>
    </message>
    <message>
        <source>In truth, %</source>
        <translation>En réalité,&#xa0;%</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Remarque</translation>
    </message>
    <message>
        <source>leave it</source>
        <translation>laisser</translation>
    </message>
    <message>
        <source>hold for now</source>
        <translation>tenir pour l’instant</translation>
    </message>
    <message>
        <source>by the reading</source>
        <translation>d’après mesure</translation>
    </message>
    <message>
        <source>held</source>
        <translation>tenue</translation>
    </message>
    <message>
        <source>All set %1</source>
        <translation>Tout réglé %1</translation>
    </message>
    <message>
        <source>open to %1</source>
        <translation>ouvrir à %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::AdvicePanel</name>
    <message>
        <source>Enter takes the valve in hand at its advised setting</source>
        <translation>Entrée prend la vanne en main à son réglage conseillé</translation>
    </message>
    <message>
        <source>State of the advice</source>
        <translation>État du conseil</translation>
    </message>
    <message>
        <source>Computing</source>
        <translation>Calcul en cours</translation>
    </message>
    <message>
        <source>About the advice</source>
        <translation>À propos du conseil</translation>
    </message>
    <message>
        <source>About the advice, scrolled</source>
        <translation>À propos du conseil, défilé</translation>
    </message>
    <message>
        <source>computing…</source>
        <translation>calcul…</translation>
    </message>
    <message>
        <source>No advice yet</source>
        <translation>Pas encore de conseil</translation>
    </message>
    <message>
        <source>Advice not ready</source>
        <translation>Conseil non prêt</translation>
    </message>
    <message>
        <source>Advice, unverified</source>
        <translation>Conseil, non vérifié</translation>
    </message>
    <message>
        <source>Helps most: %1</source>
        <translation>Le plus utile&#xa0;: %1</translation>
    </message>
    <message>
        <source>Advised settings in the working order</source>
        <translation>Réglages conseillés dans l’ordre du travail</translation>
    </message>
    <message>
        <source>Read the survey first: the advice is made from its readings.</source>
        <translation>Faites d’abord le relevé&#xa0;: le conseil vient de ses mesures.</translation>
    </message>
    <message>
        <source>Shares confirmed by a round</source>
        <translation>Parts confirmées par un passage</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>plus de 99&#xa0;%</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>moins de 1&#xa0;%</translation>
    </message>
    <message>
        <source>at least %1 %</source>
        <translation>au moins %1&#xa0;%</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Once all are set as advised: chance that every share reads within ±%1 % of target: %2; that it truly is, with the errors of the valve tables: %3.</source>
        <translation>Une fois toutes réglées comme conseillé&#xa0;: probabilité que chaque part soit mesurée à ±%1&#xa0;% de la cible&#xa0;: %2&#xa0;; qu’elle le soit vraiment, avec les erreurs des tables de vanne&#xa0;: %3.</translation>
    </message>
    <message>
        <source>Working order: the riser farthest over its target first, in it the valve farthest over, its own valve last.</source>
        <translation>Ordre de travail&#xa0;: d’abord la colonne la plus au-dessus de sa cible, dans celle-ci la vanne la plus au-dessus, sa propre vanne en dernier.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n autre</numerusform>
            <numerusform>et %n autres</numerusform>
        </translation>
    </message>
    <message>
        <source>The pump makes too little at design flow: see that the index path is open and that strainers and filters are clean, check speed and impeller. How much it lacks: Pump, Decision.</source>
        <translation>La pompe fournit trop peu au débit nominal&#xa0;: vérifiez que le chemin défavorisé est ouvert et que filtres et tamis sont propres, contrôlez vitesse et roue. Ce qui manque&#xa0;: Pompe, Décision.</translation>
    </message>
    <message>
        <source>Whether the pump is short cannot be told: read its gauges and every terminal again once all valves are set. Its figures: Pump, Decision.</source>
        <translation>On ne peut dire s’il manque de la hauteur à la pompe&#xa0;: relisez ses manomètres et chaque terminal une fois toutes les vannes réglées. Ses chiffres&#xa0;: Pompe, Décision.</translation>
    </message>
    <message>
        <source>The pump makes enough at design flow. How much too much, and by which speed or impeller to take it away: Pump, Decision. Change it after the valves are set, by a licensed person and within the limits of the maker and the local code.</source>
        <translation>La pompe fournit assez au débit nominal. L’excès, et la vitesse ou la roue qui le supprime&#xa0;: Pompe, Décision. Ne la changez qu’après le réglage des vannes, par une personne habilitée et dans les limites du fabricant et des règles locales.</translation>
    </message>
    <message>
        <source>Advice of earlier readings</source>
        <translation>Conseil des mesures précédentes</translation>
    </message>
    <message>
        <source>Working order: changed here by hand; Ctrl+Alt+B goes back to the advised one.</source>
        <translation>Ordre de travail&#xa0;: changé ici à la main&#xa0;; Ctrl+Alt+B revient à l’ordre conseillé.</translation>
    </message>
    <message>
        <source>The pump makes too little at design flow at its present speed: raise it to about %1 % of full speed, by a licensed person and within the limits of the maker. Where that does not help, see that the index path is open and that strainers and filters are clean. Its figures: Pump, Decision.</source>
        <translation>La pompe fournit trop peu au débit nominal à sa vitesse actuelle&#xa0;: portez-la à environ %1&#xa0;% de la pleine vitesse, par une personne habilitée et dans les limites du fabricant. Si cela n’aide pas, vérifiez que le chemin défavorisé est ouvert et que filtres et tamis sont propres. Ses chiffres&#xa0;: Pompe, Décision.</translation>
    </message>
</context>
<context>
    <name>ww::ui::AimStripModel</name>
    <message>
        <source>setting %1, %2, %3</source>
        <translation>réglage %1, %2, %3</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>réglage</translation>
    </message>
    <message>
        <source>aim %1</source>
        <translation>visée %1</translation>
    </message>
    <message>
        <source>hold %1</source>
        <translation>tenir %1</translation>
    </message>
    <message>
        <source>expect %1</source>
        <translation>attendu %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::CertificateDialog</name>
    <message>
        <source>Make Certificate</source>
        <translation>Créer le certificat</translation>
    </message>
    <message>
        <source>Make a Certificate</source>
        <translation>Créer un certificat</translation>
    </message>
    <message>
        <source>A self-made certificate shows that reports come from the same hand. Nobody else vouches for the name, so verifying never calls it trusted: tell its fingerprint to whoever must rely on it, or use a key that an issuer of certificates gave you.</source>
        <translation>Un certificat autosigné montre que des rapports viennent de la même main. Personne d’autre ne garantit le nom, la vérification ne le dit donc jamais de confiance&#xa0;: communiquez son empreinte à qui doit s’y fier, ou utilisez une clé reçue d’une autorité de certification.</translation>
    </message>
    <message>
        <source>Name of the person</source>
        <translation>Nom de la personne</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Société</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Phrase secrète</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Confirmez</translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation>Nouvelle phrase secrète</translation>
    </message>
    <message>
        <source>The same passphrase again</source>
        <translation>Confirmez la phrase secrète</translation>
    </message>
    <message>
        <source>Type the name of the person.</source>
        <translation>Tapez le nom de la personne.</translation>
    </message>
    <message>
        <source>The passphrase needs %1 characters or more.</source>
        <translation>La phrase secrète demande au moins %1 caractères.</translation>
    </message>
    <message>
        <source>The two passphrases are not the same.</source>
        <translation>Les deux phrases secrètes diffèrent.</translation>
    </message>
</context>
<context>
    <name>ww::ui::ClockDialog</name>
    <message>
        <source>Set Offset</source>
        <translation>Régler le décalage</translation>
    </message>
    <message>
        <source>Set Clock Offset</source>
        <translation>Décaler l’horloge</translation>
    </message>
    <message>
        <source>What this laptop&apos;s clock is off by is added to every time written in this job from now on, and is told in the report. Times written before stay as they are.</source>
        <translation>L’écart de l’horloge de ce portable est ajouté dès maintenant à chaque heure écrite dans ce chantier et figure dans le rapport. Les heures écrites avant restent telles quelles.</translation>
    </message>
    <message>
        <source>True date and time here</source>
        <translation>Date et heure exactes ici</translation>
    </message>
    <message>
        <source>True &amp;date and time here</source>
        <translation>&amp;Date et heure exactes ici</translation>
    </message>
    <message>
        <source>Use Own Clock</source>
        <translation>Utiliser l’horloge du portable</translation>
    </message>
    <message>
        <source>For a clock that is right again: nothing is added to it any more</source>
        <translation>Pour une horloge de nouveau juste&#xa0;: plus rien n’y est ajouté</translation>
    </message>
    <message>
        <source>Write day and time as in 2026-03-02 14:05.</source>
        <translation>Écrivez jour et heure comme 2026-03-02 14:05.</translation>
    </message>
    <message>
        <source>That is what is written already; nothing is to be set.</source>
        <translation>C’est déjà l’heure écrite&#xa0;; rien n’est à régler.</translation>
    </message>
    <message>
        <source>This laptop&apos;s own clock is right; nothing is added to it any more.</source>
        <translation>L’horloge de ce portable est juste&#xa0;; plus rien n’y est ajouté.</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>This laptop&apos;s clock is %1 behind.</source>
        <translation>L’horloge de ce portable retarde de %1.</translation>
    </message>
    <message>
        <source>This laptop&apos;s clock is %1 ahead.</source>
        <translation>L’horloge de ce portable avance de %1.</translation>
    </message>
</context>
<context>
    <name>ww::ui::CloseRoundPanel</name>
    <message>
        <source>Go Back to Grid</source>
        <translation>Revenir à la grille</translation>
    </message>
    <message>
        <source>Open items of the round</source>
        <translation>Points ouverts du passage</translation>
    </message>
    <message>
        <source>Close Round %1</source>
        <translation>Clore le passage %1</translation>
    </message>
    <message>
        <source>Round %1 has no open items.</source>
        <translation>Le passage %1 n’a aucun point ouvert.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) need a reading or a reason before round %1 is closed.</source>
        <translation>
            <numerusform>%n point demande une mesure ou un motif avant de clore le passage %1.</numerusform>
            <numerusform>%n points demandent une mesure ou un motif avant de clore le passage %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>et %1 de plus</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motif</translation>
    </message>
    <message>
        <source>Reason for %1</source>
        <translation>Motif pour %1</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Mesurer</translation>
    </message>
    <message>
        <source>Read %1</source>
        <translation>Mesurer %1</translation>
    </message>
    <message numerus="yes">
        <source>Round %1 can be closed; %n reading(s) do not fit the others.</source>
        <translation>
            <numerusform>Le passage %1 peut être clos&#xa0;; %n mesure ne s’accorde pas avec les autres.</numerusform>
            <numerusform>Le passage %1 peut être clos&#xa0;; %n mesures ne s’accordent pas avec les autres.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Mark %n as Not Turned</source>
        <translation>
            <numerusform>Noter %n non manœuvrée</numerusform>
            <numerusform>Noter %n non manœuvrées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) need a reading or a reason before round %1 is sent.</source>
        <translation>
            <numerusform>%n point demande une mesure ou un motif avant l’envoi du passage %1.</numerusform>
            <numerusform>%n points demandent une mesure ou un motif avant l’envoi du passage %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::CodePage</name>
    <message>
        <source>not chosen</source>
        <translation>non choisi</translation>
    </message>
    <message>
        <source>5 % of the plate</source>
        <translation>5&#xa0;% de la plaque</translation>
    </message>
    <message>
        <source>Form of the clause</source>
        <translation>Forme de l’article</translation>
    </message>
    <message>
        <source>&amp;Allowed excess</source>
        <translation>&amp;Excédent permis</translation>
    </message>
    <message>
        <source>Code and e&amp;dition</source>
        <translation>&amp;Code et édition</translation>
    </message>
    <message>
        <source>&amp;Clause</source>
        <translation>&amp;Article</translation>
    </message>
    <message>
        <source>E&amp;xception claimed</source>
        <translation>E&amp;xception invoquée</translation>
    </message>
    <message>
        <source>Copy edition and clause from the code that is adopted where the building stands. An exception needs its number and who grants it.</source>
        <translation>Copiez édition et article du code en vigueur au lieu du bâtiment. Une exception demande son numéro et qui l’accorde.</translation>
    </message>
    <message>
        <source>5 % of the plate or a fixed power</source>
        <translation>5&#xa0;% de la plaque ou une puissance fixe</translation>
    </message>
</context>
<context>
    <name>ww::ui::Commands</name>
    <message>
        <source>&amp;New Job…</source>
        <translation>&amp;Nouveau chantier…</translation>
    </message>
    <message>
        <source>New Job from &amp;Tables…</source>
        <translation>Nouveau chantier depuis &amp;tableaux…</translation>
    </message>
    <message>
        <source>New &amp;Practice Job…</source>
        <translation>Nouveau chant&amp;ier d’exercice…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Ouvrir…</translation>
    </message>
    <message>
        <source>Open &amp;Recent</source>
        <translation>Ouvrir &amp;récents</translation>
    </message>
    <message>
        <source>Save a &amp;Copy…</source>
        <translation>Enregistrer une &amp;copie…</translation>
    </message>
    <message>
        <source>&amp;Merge Another Laptop…</source>
        <translation>&amp;Fusionner un autre portable…</translation>
    </message>
    <message>
        <source>&amp;Decide Conflicts…</source>
        <translation>&amp;Décider des conflits…</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>Fer&amp;mer</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rétablir</translation>
    </message>
    <message>
        <source>&amp;Find Valve…</source>
        <translation>&amp;Trouver une vanne…</translation>
    </message>
    <message>
        <source>Write &amp;Note…</source>
        <translation>Écrire une &amp;note…</translation>
    </message>
    <message>
        <source>Show &amp;History…</source>
        <translation>Voir l’&amp;historique…</translation>
    </message>
    <message>
        <source>Show the Job as It &amp;Stood…</source>
        <translation>Voir le chantier tel qu’il &amp;était…</translation>
    </message>
    <message>
        <source>Go to Ne&amp;xt Open Item</source>
        <translation>Aller au point ouvert &amp;suivant</translation>
    </message>
    <message>
        <source>Go to Pre&amp;vious Open Item</source>
        <translation>Aller au point ouvert &amp;précédent</translation>
    </message>
    <message>
        <source>&amp;Open New Round…</source>
        <translation>&amp;Ouvrir un passage…</translation>
    </message>
    <message>
        <source>&amp;Close Round…</source>
        <translation>&amp;Clore le passage…</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Appareil</translation>
    </message>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Personne</translation>
    </message>
    <message>
        <source>&amp;Read Again</source>
        <translation>&amp;Remesurer</translation>
    </message>
    <message>
        <source>&amp;Take Offered Fix</source>
        <translation>Prendre la &amp;correction proposée</translation>
    </message>
    <message>
        <source>&amp;Mark Doubtful</source>
        <translation>Marquer &amp;douteux</translation>
    </message>
    <message>
        <source>Record as &amp;Not Readable</source>
        <translation>Noter &amp;illisible</translation>
    </message>
    <message>
        <source>List De&amp;ficiency</source>
        <translation>Noter une réser&amp;ve</translation>
    </message>
    <message>
        <source>Take the Meter&apos;s &amp;Value (Practice)</source>
        <translation>Prendre la v&amp;aleur de l’appareil (exercice)</translation>
    </message>
    <message>
        <source>Take the Pump&apos;s &amp;Gauges (Practice)</source>
        <translation>Prendre les &amp;manomètres de la pompe (exercice)</translation>
    </message>
    <message>
        <source>&amp;Add Branch</source>
        <translation>Ajouter une &amp;branche</translation>
    </message>
    <message>
        <source>Read R&amp;eference</source>
        <translation>Mesurer la ré&amp;férence</translation>
    </message>
    <message>
        <source>Read with Valve &amp;Shut</source>
        <translation>Mes&amp;urer vanne fermée</translation>
    </message>
    <message>
        <source>Take Advised Sett&amp;ing</source>
        <translation>Prendre le réglage con&amp;seillé</translation>
    </message>
    <message>
        <source>Show &amp;Convergence</source>
        <translation>Voir la c&amp;onvergence</translation>
    </message>
    <message>
        <source>Change Chart and &amp;Table</source>
        <translation>Changer grap&amp;hique et tableau</translation>
    </message>
    <message>
        <source>Switch to Next &amp;Display</source>
        <translation>Changer d’a&amp;ffichage</translation>
    </message>
    <message>
        <source>Make Text &amp;Larger</source>
        <translation>Agran&amp;dir le texte</translation>
    </message>
    <message>
        <source>Show &amp;Full Screen</source>
        <translation>P&amp;asser en plein écran</translation>
    </message>
    <message>
        <source>&amp;Export Unsigned Draft…</source>
        <translation>&amp;Exporter le brouillon non signé…</translation>
    </message>
    <message>
        <source>&amp;Sign Report…</source>
        <translation>&amp;Signer le rapport…</translation>
    </message>
    <message>
        <source>&amp;Make a Certificate…</source>
        <translation>&amp;Créer un certificat…</translation>
    </message>
    <message>
        <source>&amp;Verify a Report…</source>
        <translation>&amp;Vérifier un rapport…</translation>
    </message>
    <message>
        <source>Show &amp;Truth against Found (Practice)…</source>
        <translation>Comparer réel et &amp;trouvé (exercice)…</translation>
    </message>
    <message>
        <source>Show &amp;Keys</source>
        <translation>Voir les &amp;touches</translation>
    </message>
    <message>
        <source>Show &amp;Version and Licence</source>
        <translation>Voir &amp;version et licence</translation>
    </message>
    <message>
        <source>Show &amp;Job</source>
        <translation>Voir &amp;Chantier</translation>
    </message>
    <message>
        <source>Show &amp;System</source>
        <translation>Voir Ré&amp;seau</translation>
    </message>
    <message>
        <source>Show &amp;Walk</source>
        <translation>Voir &amp;Tournée</translation>
    </message>
    <message>
        <source>Show &amp;Pump</source>
        <translation>Voir &amp;Pompe</translation>
    </message>
    <message>
        <source>Show Re&amp;view</source>
        <translation>Voir Re&amp;vue</translation>
    </message>
    <message>
        <source>Show &amp;Report</source>
        <translation>Voir &amp;Rapport</translation>
    </message>
    <message>
        <source>Show Pump &amp;Curves</source>
        <translation>Voir les &amp;courbes de pompe</translation>
    </message>
    <message>
        <source>Enter Pump &amp;Test</source>
        <translation>Saisir l’&amp;essai de pompe</translation>
    </message>
    <message>
        <source>Show Test &amp;Results</source>
        <translation>Voir les &amp;résultats</translation>
    </message>
    <message>
        <source>Show &amp;Decision</source>
        <translation>Voir la &amp;décision</translation>
    </message>
    <message>
        <source>Compare Read and &amp;Set</source>
        <translation>Comparer &amp;mesurer-régler</translation>
    </message>
    <message>
        <source>Show &amp;Pressures</source>
        <translation>Voir les &amp;pressions</translation>
    </message>
    <message>
        <source>Test &amp;Energy Code</source>
        <translation>Tester le code é&amp;nergétique</translation>
    </message>
    <message>
        <source>List De&amp;vices</source>
        <translation>&amp;Lister les organes</translation>
    </message>
    <message>
        <source>Enter Set-P&amp;oint</source>
        <translation>Saisir la c&amp;onsigne</translation>
    </message>
    <message>
        <source>Enter Pump D&amp;ata</source>
        <translation>S&amp;aisir les données de pompe</translation>
    </message>
    <message>
        <source>Try &amp;Zones</source>
        <translation>Essayer des &amp;zones</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>É&amp;dition</translation>
    </message>
    <message>
        <source>&amp;Round</source>
        <translation>&amp;Passage</translation>
    </message>
    <message>
        <source>&amp;Valve</source>
        <translation>&amp;Vanne</translation>
    </message>
    <message>
        <source>P&amp;ump</source>
        <translation>P&amp;ompe</translation>
    </message>
    <message>
        <source>Vie&amp;w</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>Re&amp;port</source>
        <translation>&amp;Rapport</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Aid&amp;e</translation>
    </message>
    <message>
        <source>&amp;Write Comment</source>
        <translation>Écrire un co&amp;mmentaire</translation>
    </message>
    <message>
        <source>A&amp;djust This Valve</source>
        <translation>Ré&amp;gler cette vanne</translation>
    </message>
    <message>
        <source>Show Adv&amp;ice</source>
        <translation>Voir le co&amp;nseil</translation>
    </message>
    <message>
        <source>Make Text S&amp;maller</source>
        <translation>Rédu&amp;ire le texte</translation>
    </message>
    <message>
        <source>Reset Te&amp;xt Size</source>
        <translation>Rétablir la taill&amp;e du texte</translation>
    </message>
    <message>
        <source>Sh&amp;ow Adjust</source>
        <translation>Voir Ré&amp;gler</translation>
    </message>
    <message>
        <source>&amp;Save Checkpoint…</source>
        <translation>&amp;Enregistrer un jalon…</translation>
    </message>
    <message>
        <source>Chan&amp;ge Preferences…</source>
        <translation>Changer les &amp;préférences…</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Co&amp;uper</translation>
    </message>
    <message>
        <source>Cop&amp;y</source>
        <translation>&amp;Copier</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>Co&amp;ller</translation>
    </message>
    <message>
        <source>Move Branch U&amp;p the Route</source>
        <translation>Monter la branche dans l’&amp;ordre</translation>
    </message>
    <message>
        <source>Move Branch Do&amp;wn the Route</source>
        <translation>Descendre la branc&amp;he dans l’ordre</translation>
    </message>
    <message>
        <source>Enter Valve Ta&amp;bles</source>
        <translation>Saisir les tab&amp;les de vannes</translation>
    </message>
    <message>
        <source>Use Lar&amp;ge Targets</source>
        <translation>Agrandir les &amp;boutons</translation>
    </message>
    <message>
        <source>Langu&amp;age</source>
        <translation>&amp;Langue</translation>
    </message>
    <message>
        <source>New Job &amp;from a Sample…</source>
        <translation>Nouveau c&amp;hantier d’exemple…</translation>
    </message>
    <message>
        <source>&amp;Import Table…</source>
        <translation>Importer un t&amp;ableau…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>E&amp;xporter</translation>
    </message>
    <message>
        <source>Export CSV &amp;Tables…</source>
        <translation>Exporter les &amp;tableaux CSV…</translation>
    </message>
    <message>
        <source>Export &amp;Spreadsheet…</source>
        <translation>Exporter une feuille de &amp;calcul…</translation>
    </message>
    <message>
        <source>Export &amp;JSON…</source>
        <translation>Exporter &amp;JSON…</translation>
    </message>
    <message>
        <source>Print &amp;Walk Sheet…</source>
        <translation>Imprimer la fiche de to&amp;urnée…</translation>
    </message>
    <message>
        <source>Show &amp;Handbook</source>
        <translation>Voir le &amp;manuel</translation>
    </message>
    <message>
        <source>Show &amp;Release Notes</source>
        <translation>Voir les &amp;nouveautés</translation>
    </message>
    <message>
        <source>Write Walk S&amp;heet to File…</source>
        <translation>Écrire &amp;la fiche dans un fichier…</translation>
    </message>
    <message>
        <source>&amp;Send Round to Supervisor</source>
        <translation>&amp;Envoyer le passage au responsable</translation>
    </message>
    <message>
        <source>&amp;Accept Round</source>
        <translation>Accep&amp;ter le passage</translation>
    </message>
    <message>
        <source>Set Clock O&amp;ffset…</source>
        <translation>&amp;Décaler l’horloge…</translation>
    </message>
    <message>
        <source>Try W&amp;hat If</source>
        <translation>&amp;Tester un cas</translation>
    </message>
    <message>
        <source>Mark Rest as Not &amp;Turned</source>
        <translation>Noter le reste &amp;non manœuvré</translation>
    </message>
    <message>
        <source>Restore Advised &amp;Order</source>
        <translation>Rétablir l’&amp;ordre conseillé</translation>
    </message>
</context>
<context>
    <name>ww::ui::CommentPanel</name>
    <message>
        <source>Comment</source>
        <translation>Commentaire</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Répondre</translation>
    </message>
    <message>
        <source>Resolve</source>
        <translation>Résoudre</translation>
    </message>
    <message>
        <source>Comments of the round</source>
        <translation>Commentaires du passage</translation>
    </message>
    <message>
        <source>Text of the comment</source>
        <translation>Texte du commentaire</translation>
    </message>
    <message>
        <source>%1 — %2</source>
        <translation>%1 — %2</translation>
    </message>
    <message>
        <source>resolved</source>
        <translation>résolu</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>Comments</source>
        <translation>Commentaires</translation>
    </message>
    <message numerus="yes">
        <source>Comments (%n open)</source>
        <translation>
            <numerusform>Commentaires (%n ouvert)</numerusform>
            <numerusform>Commentaires (%n ouverts)</numerusform>
        </translation>
    </message>
    <message>
        <source>Comment on %1 (Ctrl+Alt+C)</source>
        <translation>Commentaire sur %1 (Ctrl+Alt+C)</translation>
    </message>
    <message>
        <source>Reopen</source>
        <translation>Rouvrir</translation>
    </message>
    <message>
        <source>Answer %1 on %2</source>
        <translation>Réponse à %1 sur %2</translation>
    </message>
    <message>
        <source>answer, Enter</source>
        <translation>réponse, Entrée</translation>
    </message>
    <message>
        <source>new comment, Enter</source>
        <translation>nouveau commentaire, Entrée</translation>
    </message>
</context>
<context>
    <name>ww::ui::ControlKeys</name>
    <message>
        <source>Enter stores</source>
        <translation>Entrée enregistre</translation>
    </message>
    <message>
        <source>Esc restores</source>
        <translation>Échap rétablit</translation>
    </message>
    <message>
        <source>Tab right</source>
        <translation>Tab droite</translation>
    </message>
    <message>
        <source>type to change a cell</source>
        <translation>taper pour changer</translation>
    </message>
    <message>
        <source>Enter down</source>
        <translation>Entrée bas</translation>
    </message>
    <message>
        <source>F6 leaves the table</source>
        <translation>F6 quitte le tableau</translation>
    </message>
    <message>
        <source>Tab next field</source>
        <translation>Tab champ suivant</translation>
    </message>
    <message>
        <source>type to change it</source>
        <translation>taper pour changer</translation>
    </message>
    <message>
        <source>Ctrl+Enter stores</source>
        <translation>Ctrl+Entrée enregistre</translation>
    </message>
    <message>
        <source>Space changes the tick</source>
        <translation>Espace change la coche</translation>
    </message>
    <message>
        <source>Up, Down choose</source>
        <translation>Haut, Bas choisir</translation>
    </message>
    <message>
        <source>Enter presses the button</source>
        <translation>Entrée active le bouton</translation>
    </message>
    <message>
        <source>Space presses the button</source>
        <translation>Espace active le bouton</translation>
    </message>
    <message>
        <source>Up, Down rows</source>
        <translation>Haut, Bas lignes</translation>
    </message>
    <message>
        <source>Left, Right pages</source>
        <translation>Gauche, Droite pages</translation>
    </message>
    <message>
        <source>Up, Down scroll</source>
        <translation>Haut, Bas défiler</translation>
    </message>
    <message>
        <source>Enter next cell</source>
        <translation>Entrée case suivante</translation>
    </message>
</context>
<context>
    <name>ww::ui::CountedRows</name>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
</context>
<context>
    <name>ww::ui::CurvesPage</name>
    <message>
        <source>Index-circuit check</source>
        <translation>Contrôle du circuit défavorisé</translation>
    </message>
    <message>
        <source>Duty and design flow</source>
        <translation>Point de fonctionnement et débit nominal</translation>
    </message>
    <message>
        <source>Duty and index-circuit check</source>
        <translation>Point de fonctionnement et contrôle du circuit défavorisé</translation>
    </message>
    <message>
        <source>Enter two points of the pump&apos;s curve on the page Pump Data (Ctrl+Alt+0), or make the job from tables that have a curve.</source>
        <translation>Saisissez deux points de la courbe de pompe à la page Données pompe (Ctrl+Alt+0), ou créez le chantier depuis des tableaux avec courbe.</translation>
    </message>
</context>
<context>
    <name>ww::ui::DataPage</name>
    <message>
        <source>Add Pump</source>
        <translation>Ajouter pompe</translation>
    </message>
    <message>
        <source>Maker&apos;s curve</source>
        <translation>Courbe du fabricant</translation>
    </message>
    <message>
        <source>Remove Point</source>
        <translation>Supprimer point</translation>
    </message>
    <message>
        <source>Load of a year</source>
        <translation>Charge d’une année</translation>
    </message>
    <message>
        <source>Remove Hours</source>
        <translation>Supprimer heures</translation>
    </message>
    <message>
        <source>Plate and data of the pumps</source>
        <translation>Plaque et données des pompes</translation>
    </message>
    <message>
        <source>&amp;Curve of pump</source>
        <translation>&amp;Courbe de la pompe</translation>
    </message>
    <message>
        <source>Price of a &amp;kWh</source>
        <translation>&amp;Prix d’un kWh</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Roue</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Débit</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Rendement</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Puissance</translation>
    </message>
    <message>
        <source>NPSH</source>
        <translation>NPSH</translation>
    </message>
    <message>
        <source>flow and head</source>
        <translation>débit et hauteur</translation>
    </message>
    <message>
        <source>Hours a year</source>
        <translation>Heures par an</translation>
    </message>
    <message>
        <source>Of design flow</source>
        <translation>Du débit nominal</translation>
    </message>
    <message>
        <source>hours and a part of the design flow</source>
        <translation>heures et une part du débit nominal</translation>
    </message>
    <message>
        <source>Hours a &amp;year, if no table</source>
        <translation>Heures par &amp;an, sans tableau</translation>
    </message>
</context>
<context>
    <name>ww::ui::DecisionPage</name>
    <message>
        <source>Pumps that run</source>
        <translation>Pompes en marche</translation>
    </message>
    <message>
        <source>Pumps &amp;that run</source>
        <translation>Pompes en &amp;marche</translation>
    </message>
    <message>
        <source>all that are marked</source>
        <translation>toutes les marquées</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 seule</translation>
    </message>
</context>
<context>
    <name>ww::ui::DecisionPanel</name>
    <message>
        <source>Send Round</source>
        <translation>Envoyer le passage</translation>
    </message>
    <message>
        <source>Accept Round</source>
        <translation>Accepter le passage</translation>
    </message>
    <message>
        <source>Send Back</source>
        <translation>Renvoyer</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Retirer</translation>
    </message>
    <message>
        <source>State of the round</source>
        <translation>État du passage</translation>
    </message>
    <message>
        <source>Reason for sending back or withdrawing</source>
        <translation>Motif du renvoi ou du retrait</translation>
    </message>
    <message>
        <source>reason, to send back or withdraw</source>
        <translation>motif, pour renvoyer ou retirer</translation>
    </message>
    <message>
        <source>Withdrawing needs a reason.</source>
        <translation>Le retrait demande un motif.</translation>
    </message>
    <message>
        <source>Round %1: %2</source>
        <translation>Passage %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>sent by</source>
        <translation>envoyé par</translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation>motif&#xa0;: %1</translation>
    </message>
    <message>
        <source>begun early: %1</source>
        <translation>commencé tôt&#xa0;: %1</translation>
    </message>
    <message>
        <source>at this desk: %1</source>
        <translation>à ce poste&#xa0;: %1</translation>
    </message>
    <message>
        <source>no person chosen: decisions name the account %1</source>
        <translation>aucune personne choisie&#xa0;: les décisions nomment le compte %1</translation>
    </message>
    <message>
        <source>Change Person</source>
        <translation>Changer de personne</translation>
    </message>
    <message>
        <source>Lists who may decide on this round</source>
        <translation>Nomme qui peut décider de ce passage</translation>
    </message>
    <message>
        <source>sent back by</source>
        <translation>renvoyé par</translation>
    </message>
    <message>
        <source>accepted by</source>
        <translation>accepté par</translation>
    </message>
    <message>
        <source>withdrawn by</source>
        <translation>retiré par</translation>
    </message>
    <message>
        <source>To the People of the Job</source>
        <translation>Aux personnes du chantier</translation>
    </message>
    <message>
        <source>accepted by the limits: share ±%1 %, of design %2 to +%3 %</source>
        <translation>accepté d’après les limites&#xa0;: part ±%1&#xa0;%, du débit nominal %2 à +%3&#xa0;%</translation>
    </message>
</context>
<context>
    <name>ww::ui::DeficiencyPage</name>
    <message>
        <source>No.</source>
        <translation>N°</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Ce qui ne va pas</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Corps d’état</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Raised</source>
        <translation>Émise</translation>
    </message>
    <message>
        <source>Re-tested</source>
        <translation>Revérifiée</translation>
    </message>
    <message>
        <source>List Deficiency</source>
        <translation>Noter une réserve</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Réserves</translation>
    </message>
    <message>
        <source>Photos of the deficiency</source>
        <translation>Photos de la réserve</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Justificatif</translation>
    </message>
    <message>
        <source>Status: open, remedied, closed or left as it is.</source>
        <translation>État&#xa0;: ouvert, levé, clos ou laissé tel quel.</translation>
    </message>
    <message>
        <source>Locatio&amp;n</source>
        <translation>&amp;Lieu</translation>
    </message>
    <message>
        <source>Conse&amp;quence</source>
        <translation>Consé&amp;quence</translation>
    </message>
    <message>
        <source>Re&amp;medy proposed</source>
        <translation>&amp;Remède proposé</translation>
    </message>
    <message>
        <source>R&amp;e-test result</source>
        <translation>Résultat du con&amp;trôle</translation>
    </message>
    <message>
        <source>round %1: %2</source>
        <translation>passage %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>aucune mesure</translation>
    </message>
    <message>
        <source>, raised by %1</source>
        <translation>, émise par %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::DevicePage</name>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Côté</translation>
    </message>
    <message>
        <source>Before it</source>
        <translation>En amont</translation>
    </message>
    <message>
        <source>D before</source>
        <translation>D amont</translation>
    </message>
    <message>
        <source>D behind</source>
        <translation>D aval</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Hauteur</translation>
    </message>
    <message>
        <source>Dealt with as</source>
        <translation>Traité comme</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notes</translation>
    </message>
    <message>
        <source>Where the devices sit</source>
        <translation>Où sont les organes</translation>
    </message>
    <message>
        <source>D: straight pipe in diameters. Before it: %1. Dealt with as: %2. Type a word or its first letters.</source>
        <translation>D&#xa0;: longueur droite en diamètres. En amont&#xa0;: %1. Traité comme&#xa0;: %2. Tapez un mot ou ses premières lettres.</translation>
    </message>
    <message>
        <source>Show Other Columns</source>
        <translation>Voir d’autres colonnes</translation>
    </message>
</context>
<context>
    <name>ww::ui::FieldTableModel</name>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Élément</translation>
    </message>
</context>
<context>
    <name>ww::ui::HandbookWindow</name>
    <message>
        <source>Go &amp;Back</source>
        <translation>Re&amp;venir</translation>
    </message>
    <message>
        <source>Go For&amp;ward</source>
        <translation>&amp;Avancer</translation>
    </message>
    <message>
        <source>Find &amp;Next</source>
        <translation>&amp;Trouver</translation>
    </message>
    <message>
        <source>Handbook</source>
        <translation>Manuel</translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation>Chapitre</translation>
    </message>
    <message>
        <source>Find in the handbook</source>
        <translation>Chercher dans le manuel</translation>
    </message>
    <message>
        <source>Result of the search</source>
        <translation>Résultat de la recherche</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Sommaire</translation>
    </message>
    <message>
        <source>Release notes</source>
        <translation>Nouveautés</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>&amp;Chercher</translation>
    </message>
    <message>
        <source>%1 is no page of the handbook</source>
        <translation>%1 n’est pas une page du manuel</translation>
    </message>
    <message>
        <source>Handbook: %1</source>
        <translation>Manuel&#xa0;: %1</translation>
    </message>
    <message>
        <source>“%1” does not occur in the handbook; try one word of it</source>
        <translation>«&#xa0;%1&#xa0;» n’apparaît pas dans le manuel&#xa0;; essayez un seul mot</translation>
    </message>
</context>
<context>
    <name>ww::ui::HistoryDialog</name>
    <message>
        <source>Round</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>État</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Reason, note</source>
        <translation>Motif, note</translation>
    </message>
    <message>
        <source>Use This Value</source>
        <translation>Prendre cette valeur</translation>
    </message>
    <message>
        <source>History of %1</source>
        <translation>Historique de %1</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>annulé</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>Stored, newest first</source>
        <translation>Enregistré, le plus récent d’abord</translation>
    </message>
</context>
<context>
    <name>ww::ui::ImportDialog</name>
    <message>
        <source>&amp;Leave Out All with Faults</source>
        <translation>&amp;Omettre toutes celles en erreur</translation>
    </message>
    <message>
        <source>Show Next &amp;Fault</source>
        <translation>Montrer l’&amp;erreur suivante</translation>
    </message>
    <message>
        <source>Go &amp;Back</source>
        <translation>Re&amp;venir</translation>
    </message>
    <message>
        <source>Readings of a walk</source>
        <translation>Mesures d’une tournée</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Branches</translation>
    </message>
    <message>
        <source>Valve tables</source>
        <translation>Tables de vannes</translation>
    </message>
    <message>
        <source>Pumps</source>
        <translation>Pompes</translation>
    </message>
    <message>
        <source>Pump curves</source>
        <translation>Courbes de pompe</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>Readings at pumps</source>
        <translation>Mesures aux pompes</translation>
    </message>
    <message>
        <source>State of the import</source>
        <translation>État de l’import</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation>&amp;Feuille</translation>
    </message>
    <message>
        <source>The rows &amp;are</source>
        <translation>Les lignes &amp;sont</translation>
    </message>
    <message>
        <source>&amp;Headings stand in row</source>
        <translation>En-têtes à &amp;la ligne</translation>
    </message>
    <message>
        <source>Say which of your columns is which, and the unit where the heading has none. Columns with * are needed.</source>
        <translation>Dites laquelle de vos colonnes est laquelle, et l’unité si l’en-tête n’en a pas. Les colonnes avec * sont nécessaires.</translation>
    </message>
    <message>
        <source>Rows to import</source>
        <translation>Lignes à importer</translation>
    </message>
    <message>
        <source>What is wrong with this row</source>
        <translation>Ce qui ne va pas dans cette ligne</translation>
    </message>
    <message>
        <source>Nothing is in the job yet. Type over a cell to mend it; take the mark away (Space) to leave a row out.</source>
        <translation>Rien n’est encore dans le chantier. Tapez dans une cellule pour la corriger&#xa0;; ôtez la coche (Espace) pour omettre une ligne.</translation>
    </message>
    <message>
        <source>Show &amp;Rows</source>
        <translation>Montrer les l&amp;ignes</translation>
    </message>
    <message>
        <source>Still to choose: %1.</source>
        <translation>Reste à choisir&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Import %n Row(s)</source>
        <translation>
            <numerusform>&amp;Importer %n ligne</numerusform>
            <numerusform>&amp;Importer %n lignes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) must be mended or left out.</source>
        <translation>
            <numerusform>%n ligne est à corriger ou à omettre.</numerusform>
            <numerusform>%n lignes sont à corriger ou à omettre.</numerusform>
        </translation>
    </message>
    <message>
        <source>Import: %1</source>
        <translation>Importation&#xa0;: %1</translation>
    </message>
    <message>
        <source>Headings stand in row</source>
        <translation>En-têtes à la ligne</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no row of this table; type one from 1 to %2</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une ligne de ce tableau&#xa0;; tapez-en une de 1 à %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::ImportModel</name>
    <message>
        <source>left out</source>
        <translation>omise</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>prise</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Prendre</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Ligne</translation>
    </message>
    <message>
        <source>What is wrong; what to do</source>
        <translation>Ce qui ne va pas&#xa0;; que faire</translation>
    </message>
    <message>
        <source>left blank, not taken</source>
        <translation>laissé vide, non repris</translation>
    </message>
</context>
<context>
    <name>ww::ui::InstrumentModel</name>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Série</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Précision</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Étalonné</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Échéance</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificat</translation>
    </message>
    <message>
        <source>If overdue, why</source>
        <translation>Si échu, pourquoi</translation>
    </message>
    <message>
        <source>Fixed error</source>
        <translation>Erreur fixe</translation>
    </message>
</context>
<context>
    <name>ww::ui::JobPlace</name>
    <message>
        <source>Add Instrument</source>
        <translation>Ajouter instrument</translation>
    </message>
    <message>
        <source>Add Person</source>
        <translation>Ajouter personne</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Chantier</translation>
    </message>
    <message>
        <source>Pages of the job</source>
        <translation>Pages du chantier</translation>
    </message>
    <message>
        <source>Instruments and people</source>
        <translation>Instruments et personnes</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Préparation</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Réserves</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unités</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Fluide</translation>
    </message>
    <message>
        <source>&amp;Units shown</source>
        <translation>&amp;Unités affichées</translation>
    </message>
    <message>
        <source>&amp;Fluid</source>
        <translation>&amp;Fluide</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Site</source>
        <translation>Li&amp;eu</translation>
    </message>
    <message>
        <source>C&amp;lient</source>
        <translation>&amp;Client</translation>
    </message>
    <message>
        <source>Loop</source>
        <translation>Boucle</translation>
    </message>
    <message>
        <source>&amp;Glycol by mass</source>
        <translation>&amp;Glycol en masse</translation>
    </message>
    <message>
        <source>&amp;Temperature</source>
        <translation>&amp;Température</translation>
    </message>
    <message>
        <source>F&amp;ill pressure</source>
        <translation>Press&amp;ion de remplissage</translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation>&amp;Altitude</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Limites</translation>
    </message>
    <message>
        <source>Off design, l&amp;owest</source>
        <translation>Écart au nominal, ba&amp;s</translation>
    </message>
    <message>
        <source>Off design, &amp;highest</source>
        <translation>Écart au nominal, &amp;haut</translation>
    </message>
    <message>
        <source>&amp;Band of target, ±</source>
        <translation>&amp;Bande de la cible, ±</translation>
    </message>
    <message>
        <source>Old after, &amp;minutes</source>
        <translation>Mesure ancienne après (&amp;min)</translation>
    </message>
    <message>
        <source>Pump energy</source>
        <translation>Énergie de la pompe</translation>
    </message>
    <message>
        <source>&amp;Price of a kWh</source>
        <translation>&amp;Prix d’un kWh</translation>
    </message>
    <message>
        <source>Currenc&amp;y</source>
        <translation>&amp;Devise</translation>
    </message>
    <message>
        <source>Hours a yea&amp;r</source>
        <translation>Heu&amp;res par an</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Instruments</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personnes</translation>
    </message>
    <message>
        <source>Show Other Columns</source>
        <translation>Voir d’autres colonnes</translation>
    </message>
    <message>
        <source>Remove Instrument</source>
        <translation>Supprimer instrument</translation>
    </message>
    <message>
        <source>Remove Person</source>
        <translation>Supprimer personne</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Aucun classeur ouvert. Ouvrez-en un (Ctrl+O) ou créez un chantier (Ctrl+N).</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Ce qui manque ici</translation>
    </message>
</context>
<context>
    <name>ww::ui::JobStrip</name>
    <message>
        <source>Save a Copy Elsewhere…</source>
        <translation>Enregistrer une copie ailleurs…</translation>
    </message>
    <message>
        <source>Job strip</source>
        <translation>Bandeau du chantier</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Chantier</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Avancement</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Appareil</translation>
    </message>
    <message>
        <source>Stored</source>
        <translation>Enregistré</translation>
    </message>
    <message>
        <source>Display</source>
        <translation>Affichage</translation>
    </message>
    <message>
        <source>Conflicts to decide</source>
        <translation>Conflits à décider</translation>
    </message>
    <message>
        <source>Writes the whole workbook to another disk, with what could not be stored, and goes on there</source>
        <translation>Écrit tout le classeur sur un autre disque, avec ce qui n’a pu être enregistré, et continue là</translation>
    </message>
    <message>
        <source>Valves read</source>
        <translation>Vannes mesurées</translation>
    </message>
    <message numerus="yes">
        <source>%n to decide</source>
        <translation>
            <numerusform>%n à décider</numerusform>
            <numerusform>%n à décider</numerusform>
        </translation>
    </message>
    <message>
        <source>Places and commands</source>
        <translation>Espaces et commandes</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
</context>
<context>
    <name>ww::ui::JournalDialog</name>
    <message>
        <source>Record</source>
        <translation>Enregistrement</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Stored actions</source>
        <translation>Actions enregistrées</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Of target, %</source>
        <translation>% de la cible</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>The job as it stood</source>
        <translation>Le chantier tel qu’il était</translation>
    </message>
    <message>
        <source>The Job as It Stood</source>
        <translation>Le chantier tel qu’il était</translation>
    </message>
    <message>
        <source>Export Its Tables…</source>
        <translation>Exporter ses tableaux…</translation>
    </message>
    <message>
        <source>Writes the job as it stood then as tables</source>
        <translation>Écrit le chantier d’alors sous forme de tableaux</translation>
    </message>
    <message>
        <source>Round %1, %2 of %3 terminals read.</source>
        <translation>Passage %1, terminaux mesurés&#xa0;: %2 sur %3.</translation>
    </message>
    <message>
        <source>No round was open yet.</source>
        <translation>Aucun passage n’était encore ouvert.</translation>
    </message>
    <message>
        <source>After record %1: %2</source>
        <translation>Après l’enregistrement %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Folder for the Tables</source>
        <translation>Dossier des tableaux</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Écrit dans %1</translation>
    </message>
    <message>
        <source>Stored, newest first</source>
        <translation>Enregistré, le plus récent d’abord</translation>
    </message>
    <message>
        <source>Computer</source>
        <translation>Poste</translation>
    </message>
</context>
<context>
    <name>ww::ui::KeyList</name>
    <message>
        <source>Keys</source>
        <translation>Touches</translation>
    </message>
    <message>
        <source>Store the reading and go to the next valve</source>
        <translation>Enregistrer la mesure, vanne suivante</translation>
    </message>
    <message>
        <source>digits, Enter</source>
        <translation>chiffres, Entrée</translation>
    </message>
    <message>
        <source>Walk past a valve</source>
        <translation>Passer une vanne</translation>
    </message>
    <message>
        <source>Enter alone</source>
        <translation>Entrée seule</translation>
    </message>
    <message>
        <source>Record that a valve cannot be read</source>
        <translation>Noter qu’une vanne est illisible</translation>
    </message>
    <message>
        <source>x, Enter</source>
        <translation>x, Entrée</translation>
    </message>
    <message>
        <source>Change this valve&apos;s setting</source>
        <translation>Changer le réglage de cette vanne</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>Go back one valve</source>
        <translation>Revenir d’une vanne</translation>
    </message>
    <message>
        <source>Shift+Enter</source>
        <translation>Maj+Entrée</translation>
    </message>
    <message>
        <source>Store and move up or down</source>
        <translation>Enregistrer et monter ou descendre</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Haut, Bas</translation>
    </message>
    <message>
        <source>Take back what is being typed</source>
        <translation>Effacer ce qui est tapé</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Échap</translation>
    </message>
    <message>
        <source>Type a unit behind the digits</source>
        <translation>Taper une unité derrière les chiffres</translation>
    </message>
    <message>
        <source>k kPa, m mbar, p psi, i inH₂O, f ftH₂O</source>
        <translation>k kPa, m mbar, p psi, i inH₂O, f ftH₂O</translation>
    </message>
    <message>
        <source>Leave the grid</source>
        <translation>Quitter la grille</translation>
    </message>
    <message>
        <source>Ctrl+Tab, F6</source>
        <translation>Ctrl+Tab, F6</translation>
    </message>
    <message>
        <source>In Adjust: log a try at the setting shown</source>
        <translation>Dans Régler&#xa0;: essai au réglage affiché</translation>
    </message>
    <message>
        <source>In Adjust: follow the hand by one step, by one turn</source>
        <translation>Dans Régler&#xa0;: suivre la poignée d’un cran, d’un tour</translation>
    </message>
    <message>
        <source>Up, Down; PgUp, PgDn</source>
        <translation>Haut, Bas&#xa0;; Page préc., Page suiv.</translation>
    </message>
    <message>
        <source>In Adjust: take an advised setting from the table</source>
        <translation>Dans Régler&#xa0;: prendre un réglage conseillé du tableau</translation>
    </message>
    <message>
        <source>Enter in the table</source>
        <translation>Entrée dans le tableau</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Commande</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Commandes et leurs touches</translation>
    </message>
    <message>
        <source>In Instruments and People: remove the row in hand</source>
        <translation>Dans Instruments et Personnes&#xa0;: enlever la ligne</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Suppr</translation>
    </message>
    <message>
        <source>In the diagram of System: follow the pipe, open the valve</source>
        <translation>Dans le schéma de Réseau&#xa0;: suivre le tube, ouvrir la vanne</translation>
    </message>
    <message>
        <source>arrows, Enter</source>
        <translation>flèches, Entrée</translation>
    </message>
    <message>
        <source>In the diagram of System: larger, smaller, the whole loop</source>
        <translation>Dans le schéma de Réseau&#xa0;: agrandir, réduire, toute la boucle</translation>
    </message>
    <message>
        <source>+, -, 0</source>
        <translation>+, -, 0</translation>
    </message>
</context>
<context>
    <name>ww::ui::Ladder</name>
    <message>
        <source>Ladder of dp</source>
        <translation>Échelle des Δp</translation>
    </message>
</context>
<context>
    <name>ww::ui::MainWindow</name>
    <message>
        <source>Read-only</source>
        <translation>Lecture seule</translation>
    </message>
    <message>
        <source>Keys of this place</source>
        <translation>Touches de cet espace</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Chantier</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Réseau</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Tournée</translation>
    </message>
    <message>
        <source>Adjust</source>
        <translation>Régler</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revue</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Rapport</translation>
    </message>
    <message>
        <source> — Round %1</source>
        <translation> — Passage %1</translation>
    </message>
    <message>
        <source>Read-only. %1</source>
        <translation>Lecture seule. %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>&amp;Annuler %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rétablir</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>&amp;Rétablir %1</translation>
    </message>
    <message>
        <source>&amp;Hold Here, Go to Next Valve</source>
        <translation>Tenir ici, vanne suivant&amp;e</translation>
    </message>
    <message>
        <source>%1 (missing)</source>
        <translation>%1 (introuvable)</translation>
    </message>
    <message>
        <source>Remove from List</source>
        <translation>Retirer de la liste</translation>
    </message>
    <message>
        <source>Make a New Job</source>
        <translation>Créer un chantier</translation>
    </message>
    <message>
        <source>/new_job.wwj</source>
        <translation>/nouveau_chantier.wwj</translation>
    </message>
    <message>
        <source>Folder with the Tables of the Job</source>
        <translation>Dossier des tableaux du chantier</translation>
    </message>
    <message>
        <source>Write the New Workbook</source>
        <translation>Écrire le nouveau classeur</translation>
    </message>
    <message>
        <source>Folder for the Tables</source>
        <translation>Dossier des tableaux</translation>
    </message>
    <message>
        <source>%1 copy.wwj</source>
        <translation>%1 copie.wwj</translation>
    </message>
    <message>
        <source>Save a Copy</source>
        <translation>Enregistrer une copie</translation>
    </message>
    <message>
        <source>Save a Copy Elsewhere and Go On There</source>
        <translation>Enregistrer une copie ailleurs et y continuer</translation>
    </message>
    <message>
        <source>Waterwright</source>
        <translation>Waterwright</translation>
    </message>
    <message>
        <source>Waterwright %1

A field-balancing workbook for closed water loops.

Free software under the GNU General Public License, version 3 or later. There is no warranty: check results before you act on them.</source>
        <translation>Waterwright %1

Classeur d’équilibrage sur site pour boucles d’eau fermées.

Logiciel libre sous la GNU General Public License, version 3 ou ultérieure. Sans garantie&#xa0;: vérifiez les résultats avant d’agir.</translation>
    </message>
    <message>
        <source>As the &amp;System</source>
        <translation>Comme le &amp;système</translation>
    </message>
    <message>
        <source>Make a Practice Job</source>
        <translation>Créer un chantier d’exercice</translation>
    </message>
    <message>
        <source>/practice_%1.wwj</source>
        <translation>/exercice_%1.wwj</translation>
    </message>
    <message>
        <source>A&amp;djust This Valve</source>
        <translation>Ré&amp;gler cette vanne</translation>
    </message>
    <message>
        <source>Save a Checkpoint</source>
        <translation>Enregistrer un jalon</translation>
    </message>
    <message>
        <source>Everything is stored already. A checkpoint gives this state of the job a name.</source>
        <translation>Tout est déjà enregistré. Un jalon donne un nom à cet état du chantier.</translation>
    </message>
    <message>
        <source>state at %1</source>
        <translation>état à %1</translation>
    </message>
    <message>
        <source>New Job from a Sample</source>
        <translation>Nouveau chantier d’exemple</translation>
    </message>
    <message>
        <source>Export a Spreadsheet</source>
        <translation>Exporter une feuille de calcul</translation>
    </message>
    <message>
        <source>Spreadsheets (*.xlsx)</source>
        <translation>Feuilles de calcul (*.xlsx)</translation>
    </message>
    <message>
        <source>Export as JSON</source>
        <translation>Exporter en JSON</translation>
    </message>
    <message>
        <source>JSON documents (*.json)</source>
        <translation>Documents JSON (*.json)</translation>
    </message>
    <message>
        <source>Write the Walk Sheet</source>
        <translation>Écrire la fiche de tournée</translation>
    </message>
    <message>
        <source>Paper (*.pdf);;Table to fill in (*.csv)</source>
        <translation>Papier (*.pdf);;Tableau à remplir (*.csv)</translation>
    </message>
    <message>
        <source>Import a Table</source>
        <translation>Importer un tableau</translation>
    </message>
    <message>
        <source>Tables (*.csv *.xlsx *.xlsm)</source>
        <translation>Tableaux (*.csv *.xlsx *.xlsm)</translation>
    </message>
    <message>
        <source>Walk sheet</source>
        <translation>Fiche de tournée</translation>
    </message>
    <message>
        <source>Print the Walk Sheet</source>
        <translation>Imprimer la fiche de tournée</translation>
    </message>
    <message>
        <source>Work in a Copy and Merge Later…</source>
        <translation>Travailler dans une copie, fusionner plus tard…</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>Écriture de %1</translation>
    </message>
    <message>
        <source>Take Advised Sett&amp;ing</source>
        <translation>Prendre le réglage con&amp;seillé</translation>
    </message>
    <message>
        <source>Ctrl+Alt+1 to 0, Ctrl+Alt+Z pages</source>
        <translation>Ctrl+Alt+1 à 0, Ctrl+Alt+Z pages</translation>
    </message>
    <message>
        <source>Ctrl+T numbers as a table</source>
        <translation>Ctrl+T nombres en tableau</translation>
    </message>
    <message>
        <source>Ctrl+Alt+C comment on the cell</source>
        <translation>Ctrl+Alt+C commenter la cellule</translation>
    </message>
    <message>
        <source>Ctrl+H its history</source>
        <translation>Ctrl+H son historique</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Down next open item</source>
        <translation>Ctrl+Maj+Bas point ouvert suivant</translation>
    </message>
    <message>
        <source>Ctrl+P export as PDF</source>
        <translation>Ctrl+P exporter en PDF</translation>
    </message>
    <message>
        <source>Ctrl+O opens a workbook</source>
        <translation>Ctrl+O ouvre un classeur</translation>
    </message>
    <message>
        <source>Ctrl+N new job</source>
        <translation>Ctrl+N nouveau chantier</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P practice</source>
        <translation>Ctrl+Maj+P s’exercer</translation>
    </message>
    <message>
        <source>F1 handbook</source>
        <translation>F1 manuel</translation>
    </message>
    <message>
        <source>Ctrl+L takes the meter&apos;s value</source>
        <translation>Ctrl+L prend la valeur de l’appareil</translation>
    </message>
    <message>
        <source>Ctrl+Z undo %1</source>
        <translation>Ctrl+Z annuler %1</translation>
    </message>
    <message>
        <source>Take Advised Sett&amp;ing (the valve holds)</source>
        <translation>Prendre le réglage con&amp;seillé (la vanne tient)</translation>
    </message>
    <message>
        <source>Del removes the row</source>
        <translation>Suppr enlève la ligne</translation>
    </message>
    <message>
        <source>Up, Down places</source>
        <translation>Haut, Bas espaces</translation>
    </message>
    <message>
        <source>Ctrl+Z undo</source>
        <translation>Ctrl+Z annuler</translation>
    </message>
    <message>
        <source>Move Valve U&amp;p the Working Order</source>
        <translation>A&amp;vancer la vanne dans l’ordre de travail</translation>
    </message>
    <message>
        <source>Move Branch U&amp;p the Route</source>
        <translation>Monter la branche dans l’&amp;ordre</translation>
    </message>
    <message>
        <source>Move Valve Do&amp;wn the Working Order</source>
        <translation>Rec&amp;uler la vanne dans l’ordre de travail</translation>
    </message>
    <message>
        <source>Move Branch Do&amp;wn the Route</source>
        <translation>Descendre la branc&amp;he dans l’ordre</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Save Checkpoint</source>
        <translation>&amp;Enregistrer le jalon</translation>
    </message>
    <message>
        <source>Invented jobs, each with rounds that were read.</source>
        <translation>Chantiers inventés, chacun avec des passages mesurés.</translation>
    </message>
    <message>
        <source>&amp;Sample</source>
        <translation>&amp;Exemple</translation>
    </message>
    <message>
        <source>&amp;Make Job…</source>
        <translation>&amp;Créer le chantier…</translation>
    </message>
    <message numerus="yes">
        <source>%n open comment(s)</source>
        <translation>
            <numerusform>%n commentaire ouvert</numerusform>
            <numerusform>%n commentaires ouverts</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Lecture de %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::MarkShape</name>
    <message>
        <source>passed</source>
        <translation>réussi</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>échoué</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
</context>
<context>
    <name>ww::ui::MatchPanel</name>
    <message>
        <source>choose a unit</source>
        <translation>choisir une unité</translation>
    </message>
    <message>
        <source>choose a column</source>
        <translation>choisir une colonne</translation>
    </message>
    <message>
        <source>not in this table</source>
        <translation>absente de ce tableau</translation>
    </message>
    <message>
        <source>Column for %1</source>
        <translation>Colonne pour %1</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Unité de %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::MergeDialog</name>
    <message>
        <source>Merge Another Laptop&apos;s Work</source>
        <translation>Fusionner le travail d’un autre portable</translation>
    </message>
    <message>
        <source>“%1”, last changed by %2 on %3.</source>
        <translation>«&#xa0;%1&#xa0;», modifié en dernier par %2 sur %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n action(s) will be taken over as one step for undo.</source>
        <translation>
            <numerusform>%n action sera reprise, annulable en une étape.</numerusform>
            <numerusform>%n actions seront reprises, annulables en une étape.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) only there will be added.</source>
        <translation>
            <numerusform>%n mesure présente là seulement sera ajoutée.</numerusform>
            <numerusform>%n mesures présentes là seulement seront ajoutées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) read alike on both: nothing to do.</source>
        <translation>
            <numerusform>%n endroit est identique des deux côtés&#xa0;: rien à faire.</numerusform>
            <numerusform>%n endroits sont identiques des deux côtés&#xa0;: rien à faire.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) differ: pick now or later, none is picked yet.</source>
        <translation>
            <numerusform>%n valeur diffère&#xa0;: choisissez maintenant ou plus tard, rien n’est encore choisi.</numerusform>
            <numerusform>%n valeurs diffèrent&#xa0;: choisissez maintenant ou plus tard, rien n’est encore choisi.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Merge</source>
        <translation>&amp;Fusionner</translation>
    </message>
    <message>
        <source>Decide What Merging Left Open</source>
        <translation>Décider ce que la fusion a laissé</translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) differ between the laptops. What you do not pick stays open.</source>
        <translation>
            <numerusform>%n valeur diffère entre les portables. Ce que vous ne choisissez pas reste ouvert.</numerusform>
            <numerusform>%n valeurs diffèrent entre les portables. Ce que vous ne choisissez pas reste ouvert.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Store Choices</source>
        <translation>&amp;Enregistrer les choix</translation>
    </message>
    <message>
        <source>What merging does</source>
        <translation>Ce que fait la fusion</translation>
    </message>
    <message>
        <source>Values that differ</source>
        <translation>Valeurs qui diffèrent</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Endroit</translation>
    </message>
    <message>
        <source>This laptop</source>
        <translation>Ce portable</translation>
    </message>
    <message>
        <source>Other laptop</source>
        <translation>Autre portable</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Les deux</translation>
    </message>
    <message>
        <source>The value that is not picked stays in the history.</source>
        <translation>La valeur non choisie reste dans l’historique.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>this laptop, %1</source>
        <translation>ce portable, %1</translation>
    </message>
    <message>
        <source>other laptop, %1</source>
        <translation>autre portable, %1</translation>
    </message>
    <message>
        <source>both</source>
        <translation>les deux</translation>
    </message>
</context>
<context>
    <name>ww::ui::NewPracticeDialog</name>
    <message>
        <source>New Practice Job</source>
        <translation>Nouveau chantier d’exercice</translation>
    </message>
    <message>
        <source>Name of the job</source>
        <translation>Nom du chantier</translation>
    </message>
    <message>
        <source>Difficulty</source>
        <translation>Difficulté</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Ce qui ne va pas</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Nom</translation>
    </message>
    <message>
        <source>&amp;Difficulty</source>
        <translation>&amp;Difficulté</translation>
    </message>
    <message>
        <source>&amp;Make Job…</source>
        <translation>&amp;Créer le chantier…</translation>
    </message>
    <message>
        <source>A simulated building answers every reading. It is no real plant: nothing of it may be reported as a measurement.</source>
        <translation>Un bâtiment simulé répond à chaque mesure. Ce n’est pas une installation réelle&#xa0;: rien n’en peut être rapporté comme mesure.</translation>
    </message>
    <message>
        <source>Building number</source>
        <translation>Numéro du bâtiment</translation>
    </message>
    <message>
        <source>&amp;Building number</source>
        <translation>N&amp;uméro du bâtiment</translation>
    </message>
</context>
<context>
    <name>ww::ui::NotePanel</name>
    <message>
        <source>Photos of the valve</source>
        <translation>Photos de la vanne</translation>
    </message>
    <message>
        <source>Go Back to Walk</source>
        <translation>Revenir à Tournée</translation>
    </message>
    <message>
        <source>Note to this &amp;reading</source>
        <translation>Note sur cette &amp;mesure</translation>
    </message>
    <message>
        <source>&amp;Notes on the valve</source>
        <translation>&amp;Notes sur la vanne</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>Note to this reading</source>
        <translation>Note sur cette mesure</translation>
    </message>
    <message>
        <source>Notes on the valve</source>
        <translation>Notes sur la vanne</translation>
    </message>
    <message>
        <source>Ctrl+Enter stores and goes back</source>
        <translation>Ctrl+Entrée enregistre et revient</translation>
    </message>
    <message>
        <source>Notes and photos of %1</source>
        <translation>Notes et photos de %1</translation>
    </message>
    <message>
        <source>No valve in hand</source>
        <translation>Aucune vanne en main</translation>
    </message>
</context>
<context>
    <name>ww::ui::NoticeLine</name>
    <message>
        <source>Notice</source>
        <translation>Avis</translation>
    </message>
</context>
<context>
    <name>ww::ui::NumberPad</name>
    <message>
        <source>Number pad</source>
        <translation>Pavé numérique</translation>
    </message>
    <message>
        <source>Delete last digit</source>
        <translation>Effacer le dernier chiffre</translation>
    </message>
    <message>
        <source>set %1</source>
        <comment>a step of the setting; short</comment>
        <translation>rég. %1</translation>
    </message>
    <message>
        <source>Setting one step down</source>
        <translation>Réglage un cran plus bas</translation>
    </message>
    <message>
        <source>Setting one step up</source>
        <translation>Réglage un cran plus haut</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Point</translation>
    </message>
    <message>
        <source>Cannot be read</source>
        <translation>Mesure impossible</translation>
    </message>
    <message>
        <source>Store and go on</source>
        <translation>Enregistrer et continuer</translation>
    </message>
    <message>
        <source>Digit %1</source>
        <translation>Chiffre %1</translation>
    </message>
    <message>
        <source>note</source>
        <comment>a key of the number pad; short</comment>
        <translation>note</translation>
    </message>
    <message>
        <source>Write a note</source>
        <translation>Écrire une note</translation>
    </message>
</context>
<context>
    <name>ww::ui::OpenRoundPanel</name>
    <message>
        <source>&amp;Kind of round</source>
        <translation>&amp;Type de passage</translation>
    </message>
    <message>
        <source>Kind of round</source>
        <translation>Type de passage</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Appareil</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Appareil</translation>
    </message>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Personne</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Who lets the survey begin, and why</source>
        <translation>Qui laisse commencer le relevé, et pourquoi</translation>
    </message>
    <message>
        <source>name: reason</source>
        <translation>nom&#xa0;: motif</translation>
    </message>
    <message>
        <source>Open round %1</source>
        <translation>Ouvrir le passage %1</translation>
    </message>
    <message>
        <source>Open Round %1</source>
        <translation>Ouvrir le passage %1</translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation>, échu le %1</translation>
    </message>
    <message>
        <source>, calibrated to %1</source>
        <translation>, étalonnage valable jusqu’au %1</translation>
    </message>
    <message numerus="yes">
        <source>%n mandatory line(s) of readiness are open, the first: %1. A supervisor may let the survey begin and say why.</source>
        <translation>
            <numerusform>%n ligne obligatoire de préparation est ouverte, la première&#xa0;: %1. Un responsable peut laisser commencer le relevé et dire pourquoi.</numerusform>
            <numerusform>%n lignes obligatoires de préparation sont ouvertes, la première&#xa0;: %1. Un responsable peut laisser commencer le relevé et dire pourquoi.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::PagePreview</name>
    <message>
        <source>Page %1: %2</source>
        <translation>Page %1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::PeopleModel</name>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rôle</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificat</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Société</translation>
    </message>
    <message>
        <source>Person %1</source>
        <translation>Personne %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::PhotoList</name>
    <message>
        <source>Attach Photo…</source>
        <translation>Joindre une photo…</translation>
    </message>
    <message>
        <source>Remove Photo</source>
        <translation>Supprimer photo</translation>
    </message>
    <message>
        <source>Attach a Photo</source>
        <translation>Joindre une photo</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Images (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>ww::ui::PreferencesDialog</name>
    <message>
        <source>Use &amp;large targets</source>
        <translation>&amp;Grands boutons</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Préférences</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Display</source>
        <translation>Affichage</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Taille du texte</translation>
    </message>
    <message>
        <source>&amp;Display</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>&amp;Text size</source>
        <translation>&amp;Taille du texte</translation>
    </message>
    <message>
        <source>Units, tolerances and the route are facts of the job and stay as they are.</source>
        <translation>Unités, tolérances et ordre de tournée sont des données du chantier et restent tels quels.</translation>
    </message>
    <message>
        <source>Reset Settings</source>
        <translation>Réinitialiser les réglages</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Comme le système</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Langue</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Lan&amp;gue</translation>
    </message>
    <message>
        <source>Display, text size, language, targets, window and the list of recent files become as they were at first</source>
        <translation>Affichage, taille du texte, langue, boutons, fenêtre et liste des fichiers récents redeviennent comme au début</translation>
    </message>
</context>
<context>
    <name>ww::ui::PressurePage</name>
    <message>
        <source>Pump &amp;off too</source>
        <translation>Pompe &amp;arrêtée aussi</translation>
    </message>
    <message>
        <source>Valve on the other &amp;side too</source>
        <translation>Vanne de l’autre &amp;côté aussi</translation>
    </message>
    <message>
        <source>Circuit</source>
        <translation>Circuit</translation>
    </message>
    <message>
        <source>Cir&amp;cuit</source>
        <translation>Ci&amp;rcuit</translation>
    </message>
    <message>
        <source>%1, index circuit</source>
        <translation>%1, circuit défavorisé</translation>
    </message>
    <message>
        <source>The job has no circuits yet; add branches in System.</source>
        <translation>Le chantier n’a pas encore de circuits&#xa0;; ajoutez des branches dans Réseau.</translation>
    </message>
</context>
<context>
    <name>ww::ui::PumpChooser</name>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
</context>
<context>
    <name>ww::ui::PumpPlace</name>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
    <message>
        <source>Pages of the pump</source>
        <translation>Pages de la pompe</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Courbes</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Essai</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Résultats</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>Read and Set</source>
        <translation>Mesurer-régler</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Pression</translation>
    </message>
    <message>
        <source>Energy Code</source>
        <translation>Code énergétique</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Organes</translation>
    </message>
    <message>
        <source>Set-Point</source>
        <translation>Consigne</translation>
    </message>
    <message>
        <source>Pump Data</source>
        <translation>Données pompe</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zones</translation>
    </message>
    <message>
        <source>Page of the pump</source>
        <translation>Page de la pompe</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Aucun classeur ouvert. Ouvrez-en un (Ctrl+O) ou créez un chantier (Ctrl+N).</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReadinessPage</name>
    <message>
        <source>Line</source>
        <translation>Ligne</translation>
    </message>
    <message>
        <source>Must</source>
        <translation>Obligatoire</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Justificatif</translation>
    </message>
    <message>
        <source>Take Usual List</source>
        <translation>Prendre la liste usuelle</translation>
    </message>
    <message>
        <source>Add Line</source>
        <translation>Ajouter ligne</translation>
    </message>
    <message>
        <source>Remove Line</source>
        <translation>Supprimer ligne</translation>
    </message>
    <message>
        <source>Readiness list</source>
        <translation>Liste de préparation</translation>
    </message>
    <message>
        <source>New line</source>
        <translation>Nouvelle ligne</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>State: open, done or does not apply. No survey begins while a mandatory line is open.</source>
        <translation>État&#xa0;: ouvert, fait ou sans objet. Aucun relevé ne commence tant qu’une ligne obligatoire est ouverte.</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReadyList</name>
    <message>
        <source>To Job</source>
        <translation>Vers Chantier</translation>
    </message>
    <message>
        <source>To System</source>
        <translation>Vers Réseau</translation>
    </message>
    <message>
        <source>To Walk</source>
        <translation>Vers Tournée</translation>
    </message>
    <message>
        <source>To Pump</source>
        <translation>Vers Pompe</translation>
    </message>
    <message>
        <source>To Review</source>
        <translation>Vers Revue</translation>
    </message>
    <message>
        <source>Decide Conflicts…</source>
        <translation>Décider des conflits…</translation>
    </message>
    <message>
        <source>List Deficiency</source>
        <translation>Noter une réserve</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Voir</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Voir %1</translation>
    </message>
    <message>
        <source>give the reason, Enter</source>
        <translation>donnez le motif, Entrée</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Motif&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReportPlace</name>
    <message>
        <source>Pages of the report</source>
        <translation>Pages du rapport</translation>
    </message>
    <message>
        <source>Page as printed</source>
        <translation>Page telle qu’imprimée</translation>
    </message>
    <message>
        <source>Ready to sign?</source>
        <translation>Prêt à signer&#xa0;?</translation>
    </message>
    <message>
        <source>&amp;Export Unsigned Draft…</source>
        <translation>&amp;Exporter le brouillon non signé…</translation>
    </message>
    <message>
        <source>Verif&amp;y a Report…</source>
        <translation>Véri&amp;fier un rapport…</translation>
    </message>
    <message>
        <source>Readiness and signing</source>
        <translation>Préparation et signature</translation>
    </message>
    <message>
        <source>The loop is being learned; the pages follow.</source>
        <translation>La boucle est en cours d’apprentissage&#xa0;; les pages suivent.</translation>
    </message>
    <message>
        <source>Page %1</source>
        <translation>Page %1</translation>
    </message>
    <message>
        <source>Ready to sign</source>
        <translation>Prêt à signer</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Écrit&#xa0;: %1</translation>
    </message>
    <message>
        <source>Export Unsigned Draft</source>
        <translation>Exporter le brouillon non signé</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Fichiers PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Verify a Report</source>
        <translation>Vérifier un rapport</translation>
    </message>
    <message>
        <source>Balance report</source>
        <translation>Rapport d’équilibrage</translation>
    </message>
    <message>
        <source>The loop is being learned; the file is written when that is done.</source>
        <translation>La boucle est en cours d’apprentissage&#xa0;; le fichier sera écrit ensuite.</translation>
    </message>
    <message>
        <source>Stopped; no file was written.</source>
        <translation>Arrêté&#xa0;; aucun fichier n’a été écrit.</translation>
    </message>
    <message>
        <source>&amp;Lay Out the Pages</source>
        <translation>Co&amp;mposer les pages</translation>
    </message>
    <message>
        <source>Stop &amp;Laying Out</source>
        <translation>&amp;Arrêter la mise en page</translation>
    </message>
    <message>
        <source>Laying out the pages was stopped.</source>
        <translation>La mise en page a été arrêtée.</translation>
    </message>
    <message>
        <source>The report is being computed; the pages follow.</source>
        <translation>Le rapport est en cours de calcul&#xa0;; les pages suivent.</translation>
    </message>
    <message>
        <source>The pages are being laid out; so far: %1</source>
        <translation>Mise en page en cours&#xa0;; jusqu’ici&#xa0;: %1</translation>
    </message>
    <message>
        <source>Let the pages be laid out, then sign.</source>
        <translation>Laissez composer les pages, puis signez.</translation>
    </message>
    <message>
        <source>The pages are being laid out; sign when that is done.</source>
        <translation>Les pages sont en cours de mise en page&#xa0;; signez quand ce sera fait.</translation>
    </message>
    <message>
        <source>No page is laid out yet.</source>
        <translation>Aucune page n’est encore composée.</translation>
    </message>
    <message>
        <source>The pages follow.</source>
        <translation>Les pages suivent.</translation>
    </message>
    <message>
        <source>The loop is being learned; sign when that is done.</source>
        <translation>La boucle est en cours d’apprentissage&#xa0;; signez quand c’est fini.</translation>
    </message>
    <message>
        <source>The pages are being laid out; the file is written when that is done.</source>
        <translation>Les pages sont en cours de mise en page&#xa0;; le fichier sera écrit ensuite.</translation>
    </message>
    <message>
        <source>Round of the report</source>
        <translation>Passage du rapport</translation>
    </message>
    <message>
        <source>Round %1: draft</source>
        <translation>Passage %1&#xa0;: brouillon</translation>
    </message>
    <message>
        <source>Round %1: %2</source>
        <translation>Passage %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Choose the newest round above the pages to sign its report.</source>
        <translation>Choisissez le passage le plus récent au-dessus des pages pour signer son rapport.</translation>
    </message>
    <message>
        <source>Not ready to sign yet</source>
        <translation>Pas encore prêt à signer</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Ce qui manque ici</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Aucun classeur ouvert. Ouvrez-en un (Ctrl+O) ou créez un chantier (Ctrl+N).</translation>
    </message>
    <message>
        <source>Writes these pages as a PDF file; every page says that it is not signed</source>
        <translation>Écrit ces pages dans un fichier PDF&#xa0;; chaque page dit qu’elle n’est pas signée</translation>
    </message>
</context>
<context>
    <name>ww::ui::ResultsPage</name>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
    <message>
        <source>The job has no pump yet; add one on the page Pump Data.</source>
        <translation>Le chantier n’a pas encore de pompe&#xa0;; ajoutez-en une à la page Données pompe.</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReviewPlace</name>
    <message>
        <source>Round</source>
        <translation>Passage</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>On share</source>
        <translation>À sa part</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Dispersion</translation>
    </message>
    <message>
        <source>Changed &amp;only</source>
        <translation>Changés &amp;seuls</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>DP</source>
        <translation>Δp</translation>
    </message>
    <message>
        <source>Of target, %</source>
        <translation>% de la cible</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Who, when</source>
        <translation>Qui, quand</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revue</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Passages</translation>
    </message>
    <message>
        <source>Two rounds compared</source>
        <translation>Deux passages comparés</translation>
    </message>
    <message>
        <source>Earlier round</source>
        <translation>Passage antérieur</translation>
    </message>
    <message>
        <source>Later round</source>
        <translation>Passage ultérieur</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Comparer</translation>
    </message>
    <message>
        <source>&amp;with</source>
        <translation>&amp;avec</translation>
    </message>
    <message>
        <source>Spread and share by round</source>
        <translation>Dispersion et part par passage</translation>
    </message>
    <message>
        <source>Nothing to review yet. Read and close a round on the place Walk (Alt+3).</source>
        <translation>Rien à revoir encore. Mesurez et clôturez un passage dans Tournée (Alt+3).</translation>
    </message>
    <message>
        <source>Round %1, %2</source>
        <translation>Passage %1, %2</translation>
    </message>
    <message>
        <source>Spread, %: %1.   On share: %2 of %3.</source>
        <translation>Dispersion,&#xa0;%&#xa0;: %1.   À leur part&#xa0;: %2 sur %3.</translation>
    </message>
    <message>
        <source>The same round twice: nothing to compare</source>
        <translation>Deux fois le même passage&#xa0;: rien à comparer</translation>
    </message>
    <message>
        <source>Order of the comparison</source>
        <translation>Ordre de la comparaison</translation>
    </message>
    <message>
        <source>Along the route</source>
        <translation>Le long du parcours</translation>
    </message>
    <message>
        <source>Farthest from target first</source>
        <translation>Les plus loin de la cible</translation>
    </message>
    <message>
        <source>Largest change first</source>
        <translation>Plus grands changements</translation>
    </message>
    <message>
        <source>&amp;Order</source>
        <translation>&amp;Ordre</translation>
    </message>
    <message>
        <source>State, walked</source>
        <translation>État, parcours</translation>
    </message>
    <message>
        <source>Pages of the review</source>
        <translation>Pages de la revue</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Comparaison</translation>
    </message>
    <message>
        <source>Convergence</source>
        <translation>Convergence</translation>
    </message>
    <message>
        <source>DP, %1</source>
        <translation>Δp, %1</translation>
    </message>
    <message>
        <source>Judging the rounds…</source>
        <translation>Évaluation des passages…</translation>
    </message>
    <message>
        <source>%1 read</source>
        <translation>%1 mesurés</translation>
    </message>
    <message>
        <source>%1 of %2 readings changed</source>
        <translation>mesures changées&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>How the round was read</source>
        <translation>Comment le passage a été mesuré</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Passage %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>appareil %1</translation>
    </message>
    <message numerus="yes">
        <source>%n doubtful</source>
        <translation>
            <numerusform>%n douteuse</numerusform>
            <numerusform>%n douteuses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n corrected</source>
        <translation>
            <numerusform>%n corrigée</numerusform>
            <numerusform>%n corrigées</numerusform>
        </translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Aucun classeur ouvert. Ouvrez-en un (Ctrl+O) ou créez un chantier (Ctrl+N).</translation>
    </message>
    <message>
        <source>The first round: all its rows</source>
        <translation>Le premier passage&#xa0;: toutes ses lignes</translation>
    </message>
    <message>
        <source>Rd %1: %2</source>
        <translation>Pass. %1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::SectionView</name>
    <message>
        <source>%1, statements</source>
        <translation>%1, énoncés</translation>
    </message>
    <message>
        <source>%1, findings</source>
        <translation>%1, constats</translation>
    </message>
</context>
<context>
    <name>ww::ui::SetPointPage</name>
    <message>
        <source>Set-point %1</source>
        <translation>Consigne %1</translation>
    </message>
    <message>
        <source>Add Set-Point</source>
        <translation>Ajouter consigne</translation>
    </message>
    <message>
        <source>Remove Set-Point</source>
        <translation>Supprimer consigne</translation>
    </message>
    <message>
        <source>Dp set-points</source>
        <translation>Consignes de Δp</translation>
    </message>
    <message>
        <source>Found by: %1. Reset law: %2. Type a word or its first letters.</source>
        <translation>Trouvée par&#xa0;: %1. Loi&#xa0;: %2. Tapez un mot ou ses premières lettres.</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Capteur</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
    <message>
        <source>Place in the loop</source>
        <translation>Lieu dans la boucle</translation>
    </message>
    <message>
        <source>Found by</source>
        <translation>Trouvée par</translation>
    </message>
    <message>
        <source>Zero, pumps off</source>
        <translation>Zéro, pompes arrêtées</translation>
    </message>
    <message>
        <source>Dp set-point</source>
        <translation>Consigne de Δp</translation>
    </message>
    <message>
        <source>Flow there</source>
        <translation>Débit alors</translation>
    </message>
    <message>
        <source>Speed there</source>
        <translation>Vitesse alors</translation>
    </message>
    <message>
        <source>Reset law</source>
        <translation>Loi de variation</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Marge</translation>
    </message>
    <message>
        <source>Low limit</source>
        <translation>Limite basse</translation>
    </message>
    <message>
        <source>High limit</source>
        <translation>Limite haute</translation>
    </message>
    <message>
        <source>Set by</source>
        <translation>Réglée par</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
</context>
<context>
    <name>ww::ui::SideList</name>
    <message>
        <source>Places</source>
        <translation>Espaces</translation>
    </message>
    <message>
        <source>Alt and the number opens a place</source>
        <translation>Alt et le numéro ouvre un espace</translation>
    </message>
    <message>
        <source>%1, Alt+%2</source>
        <translation>%1, Alt+%2</translation>
    </message>
</context>
<context>
    <name>ww::ui::SignedVersions</name>
    <message>
        <source>withdrawn: %1</source>
        <translation>retiré&#xa0;: %1</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>en vigueur</translation>
    </message>
    <message>
        <source>superseded, the workbook was changed since</source>
        <translation>remplacé, le classeur a changé depuis</translation>
    </message>
    <message>
        <source>Signed versions: none</source>
        <translation>Versions signées&#xa0;: aucune</translation>
    </message>
    <message>
        <source>Withdraw Report</source>
        <translation>Retirer le rapport</translation>
    </message>
    <message>
        <source>Signed versions</source>
        <translation>Versions signées</translation>
    </message>
    <message>
        <source>reason, to withdraw</source>
        <translation>motif, pour retirer</translation>
    </message>
    <message>
        <source>Reason for withdrawing the report</source>
        <translation>Motif du retrait du rapport</translation>
    </message>
    <message>
        <source>Revision %1, %2: %3, %4
%5 — %6</source>
        <translation>Révision %1, %2&#xa0;: %3, %4
%5 — %6</translation>
    </message>
    <message>
        <source> (self-made certificate)</source>
        <translation> (certificat autosigné)</translation>
    </message>
    <message>
        <source>Withdrawing needs a reason.</source>
        <translation>Le retrait demande un motif.</translation>
    </message>
    <message>
        <source>Revision %1 is signed by %2; nothing was changed since</source>
        <translation>La révision %1 est signée par %2&#xa0;; rien n’a été modifié depuis</translation>
    </message>
</context>
<context>
    <name>ww::ui::SigningPanel</name>
    <message>
        <source>Choose…</source>
        <translation>Choisir…</translation>
    </message>
    <message>
        <source>Make a Certificate…</source>
        <translation>Créer un certificat…</translation>
    </message>
    <message>
        <source>Sign…</source>
        <translation>Signer…</translation>
    </message>
    <message>
        <source>key file, .p12</source>
        <translation>fichier de clé, .p12</translation>
    </message>
    <message>
        <source>Key file</source>
        <translation>Fichier de clé</translation>
    </message>
    <message>
        <source>Choose the key file</source>
        <translation>Choisir le fichier de clé</translation>
    </message>
    <message>
        <source>Makes a key whose certificate vouches for itself; nobody else confirms the name</source>
        <translation>Crée une clé dont le certificat se garantit lui-même&#xa0;; personne d’autre ne confirme le nom</translation>
    </message>
    <message>
        <source>asked each time, never kept</source>
        <translation>demandée à chaque fois, jamais gardée</translation>
    </message>
    <message>
        <source>Passphrase of the key</source>
        <translation>Phrase secrète de la clé</translation>
    </message>
    <message>
        <source>Readings taken by me</source>
        <translation>Mesures faites par moi</translation>
    </message>
    <message>
        <source>Reviewed and accepted by me</source>
        <translation>Revu et accepté par moi</translation>
    </message>
    <message>
        <source>Meaning of my signature</source>
        <translation>Sens de ma signature</translation>
    </message>
    <message>
        <source>Technician and supervisor</source>
        <translation>Technicien et responsable</translation>
    </message>
    <message>
        <source>Technician only</source>
        <translation>Technicien seul</translation>
    </message>
    <message>
        <source>Who signs this report</source>
        <translation>Qui signe ce rapport</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Clé</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Phrase secrète</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Sens</translation>
    </message>
    <message>
        <source>Signers</source>
        <translation>Signataires</translation>
    </message>
    <message>
        <source>This workbook can only be read here.</source>
        <translation>Ici, ce classeur ne peut être que lu.</translation>
    </message>
    <message>
        <source>Choose the Key File</source>
        <translation>Choisir le fichier de clé</translation>
    </message>
    <message>
        <source>Sign the Report</source>
        <translation>Signer le rapport</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Fichiers PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Signed by %1 as %2: %3</source>
        <translation>Signé par %1 comme %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>The certificate is self-made: nobody else vouches for the name.</source>
        <translation>Le certificat est autosigné&#xa0;: personne d’autre ne garantit le nom.</translation>
    </message>
    <message>
        <source>Keep the Key</source>
        <translation>Enregistrer la clé</translation>
    </message>
    <message>
        <source>Next the supervisor signs this file: Reviewed and accepted by me.</source>
        <translation>Ensuite le responsable signe ce fichier&#xa0;: Revu et accepté par moi.</translation>
    </message>
    <message>
        <source>Next the technician signs this file: Readings taken by me.</source>
        <translation>Ensuite le technicien signe ce fichier&#xa0;: Mesures faites par moi.</translation>
    </message>
    <message>
        <source>Why nothing can be signed</source>
        <translation>Pourquoi rien ne peut être signé</translation>
    </message>
    <message>
        <source>Still to do before signing: %1</source>
        <translation>Reste à faire avant de signer&#xa0;: %1</translation>
    </message>
    <message>
        <source>Keys (*.p12 *.pfx)</source>
        <translation>Clés (*.p12 *.pfx)</translation>
    </message>
</context>
<context>
    <name>ww::ui::SpeedFields</name>
    <message>
        <source>A speed becomes a reading when it is typed, or confirmed with Enter in its field.</source>
        <translation>Une vitesse devient une mesure si elle est tapée, ou confirmée par Entrée dans son champ.</translation>
    </message>
    <message>
        <source>Speed of %1, %2: as read</source>
        <translation>Vitesse de %1, %2&#xa0;: mesurée</translation>
    </message>
    <message>
        <source>Speed of %1, %2: as before</source>
        <translation>Vitesse de %1, %2&#xa0;: comme avant</translation>
    </message>
</context>
<context>
    <name>ww::ui::SystemModel</name>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Desservi</translation>
    </message>
    <message>
        <source>Fed by</source>
        <translation>Alimenté par</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Type</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Vanne</translation>
    </message>
    <message>
        <source>Setting
found</source>
        <translation>Réglage
trouvé</translation>
    </message>
    <message>
        <source>Fully
open</source>
        <translation>Ouverte
en grand</translation>
    </message>
    <message>
        <source>Design
flow</source>
        <translation>Débit
nominal</translation>
    </message>
    <message>
        <source>Target
share %</source>
        <translation>Part
cible&#xa0;%</translation>
    </message>
    <message>
        <source>Run
loss</source>
        <translation>Perte
tronçon</translation>
    </message>
    <message>
        <source>Circuit
loss</source>
        <translation>Perte
circuit</translation>
    </message>
    <message>
        <source>Readable
from</source>
        <translation>Lisible
dès</translation>
    </message>
</context>
<context>
    <name>ww::ui::SystemPlace</name>
    <message>
        <source>&amp;Try What If</source>
        <translation>Tester un ca&amp;s</translation>
    </message>
    <message>
        <source>Add Branch</source>
        <translation>Ajouter branche</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Réseau</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Branches</translation>
    </message>
    <message>
        <source>Type to change a cell; Enter goes down, Tab goes right</source>
        <translation>Tapez pour changer une cellule&#xa0;; Entrée descend, Tab va à droite</translation>
    </message>
    <message>
        <source>Sums of the system</source>
        <translation>Sommes du réseau</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Ce qui manque ici</translation>
    </message>
    <message>
        <source>Try what if</source>
        <translation>Tester un cas</translation>
    </message>
    <message>
        <source>&amp;Find branch</source>
        <translation>&amp;Trouver branche</translation>
    </message>
    <message>
        <source>Find branch</source>
        <translation>Trouver branche</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>repère</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Aucun classeur ouvert. Ouvrez-en un (Ctrl+O) ou créez un chantier (Ctrl+N).</translation>
    </message>
    <message numerus="yes">
        <source>%n terminal(s)</source>
        <translation>
            <numerusform>%n terminal</numerusform>
            <numerusform>%n terminaux</numerusform>
        </translation>
    </message>
    <message>
        <source>sum of design &lt;b&gt;%1 %2&lt;/b&gt;</source>
        <translation>somme nominale &lt;b&gt;%1 %2&lt;/b&gt;</translation>
    </message>
    <message>
        <source>target shares add to &lt;b&gt;%1 %&lt;/b&gt;</source>
        <translation>les parts cibles font &lt;b&gt;%1&#xa0;%&lt;/b&gt;</translation>
    </message>
    <message numerus="yes">
        <source>%n terminal(s) without a valve table</source>
        <translation>
            <numerusform>%n terminal sans table de vanne</numerusform>
            <numerusform>%n terminaux sans table de vanne</numerusform>
        </translation>
    </message>
    <message>
        <source>Valve Ta&amp;bles</source>
        <translation>Ta&amp;bles de vannes</translation>
    </message>
    <message>
        <source>Show Other Columns</source>
        <translation>Voir d’autres colonnes</translation>
    </message>
    <message>
        <source>arrows follow the pipe</source>
        <translation>flèches suivent le tuyau</translation>
    </message>
    <message>
        <source>Enter opens the valve</source>
        <translation>Entrée ouvre la vanne</translation>
    </message>
    <message>
        <source>+, - zoom</source>
        <translation>+, - zoom</translation>
    </message>
    <message>
        <source>Enter goes to the branch</source>
        <translation>Entrée va à la branche</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A adds a branch</source>
        <translation>Ctrl+Maj+A ajoute une branche</translation>
    </message>
    <message>
        <source>Ctrl+J find</source>
        <translation>Ctrl+J trouver</translation>
    </message>
    <message>
        <source>Ctrl+T diagram</source>
        <translation>Ctrl+T schéma</translation>
    </message>
    <message>
        <source>Alt+Shift+Up, Alt+Shift+Down along the route</source>
        <translation>Alt+Maj+Haut, Alt+Maj+Bas dans le parcours</translation>
    </message>
    <message>
        <source>Ctrl+Alt+F what if</source>
        <translation>Ctrl+Alt+F tester un cas</translation>
    </message>
    <message>
        <source>Show the diagram smaller</source>
        <translation>Voir le schéma en plus petit</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Cadrer</translation>
    </message>
    <message>
        <source>Fit the whole loop into the diagram</source>
        <translation>Cadrer toute la boucle dans le schéma</translation>
    </message>
    <message>
        <source>Show the diagram larger</source>
        <translation>Voir le schéma en plus grand</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Voir</translation>
    </message>
    <message>
        <source>Paste Table</source>
        <translation>Coller le tableau</translation>
    </message>
    <message>
        <source>Show the first terminal without a valve table</source>
        <translation>Voir le premier terminal sans tableau de vanne</translation>
    </message>
    <message>
        <source>Add the first branch (Ctrl+Shift+A), paste a branch table (Ctrl+V), or make the job from tables (Ctrl+Shift+I).</source>
        <translation>Ajoutez la première branche (Ctrl+Maj+A), collez un tableau de branches (Ctrl+V) ou créez le chantier à partir de tableaux (Ctrl+Maj+I).</translation>
    </message>
</context>
<context>
    <name>ww::ui::TestPage</name>
    <message>
        <source>Pumps off</source>
        <translation>Pompes arrêtées</translation>
    </message>
    <message>
        <source>Shutoff</source>
        <translation>Débit nul</translation>
    </message>
    <message>
        <source>Full open</source>
        <translation>Ouverte en grand</translation>
    </message>
    <message>
        <source>Throttled</source>
        <translation>Étranglée</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>As it runs</source>
        <translation>Telle qu’elle tourne</translation>
    </message>
    <message>
        <source>Pump test sheet</source>
        <translation>Feuille d’essai de pompe</translation>
    </message>
    <message>
        <source>Type to enter a value; Enter goes down, Tab goes right</source>
        <translation>Tapez pour saisir une valeur&#xa0;; Entrée descend, Tab va à droite</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pompe</translation>
    </message>
    <message>
        <source>Open a round first (Ctrl+Shift+N): readings are kept with one.</source>
        <translation>Ouvrez d’abord un passage (Ctrl+Maj+N)&#xa0;: les mesures lui appartiennent.</translation>
    </message>
    <message>
        <source>Readings of round %1, %2.</source>
        <translation>Mesures du passage %1, %2.</translation>
    </message>
    <message>
        <source>Readings of round %1, %2. New ones need the next round (Ctrl+Shift+N).</source>
        <translation>Mesures du passage %1, %2. De nouvelles demandent le passage suivant (Ctrl+Maj+N).</translation>
    </message>
</context>
<context>
    <name>ww::ui::TextTable</name>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>struck through</source>
        <translation>biffé</translation>
    </message>
</context>
<context>
    <name>ww::ui::TruthWindow</name>
    <message>
        <source>Truth against Found</source>
        <translation>Réel et trouvé</translation>
    </message>
    <message>
        <source>What the work came to</source>
        <translation>Ce que le travail a donné</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Actuel</translation>
    </message>
    <message>
        <source>Losses at design flow</source>
        <translation>Pertes au débit nominal</translation>
    </message>
    <message>
        <source>Loss at design flow, kPa</source>
        <translation>Perte au débit nominal, kPa</translation>
    </message>
    <message>
        <source>%1 run</source>
        <translation>%1 tronçon</translation>
    </message>
    <message>
        <source>%1 circuit</source>
        <translation>%1 circuit</translation>
    </message>
    <message>
        <source>No fault was planted in this building.</source>
        <translation>Aucun défaut n’était caché dans ce bâtiment.</translation>
    </message>
    <message>
        <source>Faults of the building</source>
        <translation>Défauts du bâtiment</translation>
    </message>
    <message>
        <source>True is what the simulated building really has; found is what was learned from your readings.</source>
        <translation>Réel est ce que le bâtiment simulé a vraiment&#xa0;; trouvé est ce qui a été appris de vos mesures.</translation>
    </message>
    <message>
        <source>Before the work</source>
        <translation>Avant le travail</translation>
    </message>
    <message>
        <source>By design</source>
        <translation>Selon le calcul</translation>
    </message>
    <message>
        <source>True (simulated)</source>
        <translation>Réel (simulé)</translation>
    </message>
    <message>
        <source>Found from readings</source>
        <translation>Trouvé par les mesures</translation>
    </message>
    <message>
        <source>± 1 sd of found</source>
        <translation>± 1 écart-type du trouvé</translation>
    </message>
    <message>
        <source>Found / true</source>
        <translation>Trouvé / réel</translation>
    </message>
    <message>
        <source>Classical method</source>
        <translation>Méthode classique</translation>
    </message>
    <message>
        <source>Practice building %1, number %2</source>
        <translation>Bâtiment d’exercice %1, numéro %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::ValveCard</name>
    <message>
        <source>Go Bac&amp;k</source>
        <translation>R&amp;etour</translation>
    </message>
    <message>
        <source>Go to Ne&amp;xt</source>
        <translation>&amp;Suivante</translation>
    </message>
    <message>
        <source>Valve in hand</source>
        <translation>Vanne en main</translation>
    </message>
    <message>
        <source>Place on the route</source>
        <translation>Place dans la tournée</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Desservi</translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation>Dernière mesure</translation>
    </message>
    <message>
        <source>Share against target</source>
        <translation>Part face à la cible</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Setting of the valve in hand</source>
        <translation>Réglage de la vanne en main</translation>
    </message>
    <message>
        <source>DP of the valve in hand</source>
        <translation>Δp de la vanne en main</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Notes, photos (%1)</source>
        <translation>Notes, photos (%1)</translation>
    </message>
    <message>
        <source>Flow of the valve in hand</source>
        <translation>Débit de la vanne en main</translation>
    </message>
    <message>
        <source>%1 % of target  %2</source>
        <comment>share, state</comment>
        <translation>%1&#xa0;% de la cible &#xa0;%2</translation>
    </message>
    <message>
        <source>Valve stored last</source>
        <translation>Dernière vanne enregistrée</translation>
    </message>
    <message>
        <source>%1 % of target</source>
        <translation>%1&#xa0;% de la cible</translation>
    </message>
    <message>
        <source>A&amp;djust</source>
        <translation>Ré&amp;gler</translation>
    </message>
    <message>
        <source>Takes the valve in hand to the place Adjust</source>
        <translation>Mène la vanne en main à l’espace Régler</translation>
    </message>
</context>
<context>
    <name>ww::ui::ValvePage</name>
    <message>
        <source>Points</source>
        <translation>Points</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Branches</translation>
    </message>
    <message>
        <source>Add Valve &amp;Model</source>
        <translation>Ajouter un &amp;modèle de vanne</translation>
    </message>
    <message>
        <source>Remove Model</source>
        <translation>Supprimer modèle</translation>
    </message>
    <message>
        <source>Valve tables</source>
        <translation>Tables de vannes</translation>
    </message>
    <message>
        <source>Valve models</source>
        <translation>Modèles de vannes</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>Cv or Kv</source>
        <translation>Cv ou Kv</translation>
    </message>
    <message>
        <source>setting and coefficient</source>
        <translation>réglage et coefficient</translation>
    </message>
    <message>
        <source>Table of the model</source>
        <translation>Table du modèle</translation>
    </message>
    <message>
        <source>Remove Point</source>
        <translation>Supprimer point</translation>
    </message>
</context>
<context>
    <name>ww::ui::ValvePanel</name>
    <message>
        <source>Of target by round, %</source>
        <translation>% de la cible par passage</translation>
    </message>
    <message>
        <source>This reading</source>
        <translation>Cette mesure</translation>
    </message>
    <message>
        <source>Valve in hand</source>
        <translation>Vanne en main</translation>
    </message>
    <message>
        <source>Design and valve</source>
        <translation>Nominal et vanne</translation>
    </message>
    <message>
        <source>Of target by round</source>
        <translation>De la cible par passage</translation>
    </message>
    <message>
        <source>Of target by round, drawn</source>
        <translation>De la cible par passage, tracé</translation>
    </message>
    <message>
        <source>Reading as entered</source>
        <translation>Mesure telle que saisie</translation>
    </message>
    <message>
        <source>Reading against the learned loop</source>
        <translation>Mesure face à la boucle apprise</translation>
    </message>
    <message>
        <source>Open comments</source>
        <translation>Commentaires ouverts</translation>
    </message>
    <message>
        <source>valve %1 %2</source>
        <translation>vanne %1 %2</translation>
    </message>
    <message>
        <source>setting %1 of %2 %3%4</source>
        <translation>réglage %1 sur %2 %3%4</translation>
    </message>
    <message>
        <source>, fully open</source>
        <translation>, ouverte en grand</translation>
    </message>
    <message>
        <source>readable from %1</source>
        <translation>lisible dès %1</translation>
    </message>
    <message>
        <source>not read in this round</source>
        <translation>non mesuré à ce passage</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>marked doubtful</source>
        <translation>marqué douteux</translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation>motif&#xa0;: %1</translation>
    </message>
    <message>
        <source>Open comment: %1, %2: %3</source>
        <translation>Commentaire ouvert&#xa0;: %1, %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>No valve in hand</source>
        <translation>Aucune vanne en main</translation>
    </message>
    <message>
        <source>design %1 %2</source>
        <translation>nominal %1 %2</translation>
    </message>
    <message>
        <source>Ctrl+U takes what explains it, Ctrl+R reads again.</source>
        <translation>Ctrl+U prend ce qui l’explique, Ctrl+R remesure.</translation>
    </message>
    <message>
        <source>Ctrl+R reads again.</source>
        <translation>Ctrl+R remesure.</translation>
    </message>
    <message>
        <source>Notes of the valve in hand</source>
        <translation>Notes de la vanne en main</translation>
    </message>
    <message>
        <source>Notes, photos (%1)</source>
        <translation>Notes, photos (%1)</translation>
    </message>
    <message>
        <source>About the valve in hand, scrolled</source>
        <translation>À propos de la vanne en main, défilé</translation>
    </message>
    <message>
        <source>What the grid has no room for</source>
        <translation>Ce qui ne tient pas dans la grille</translation>
    </message>
    <message>
        <source>Rd %1:</source>
        <comment>round, short</comment>
        <translation>Pass. %1&#xa0;:</translation>
    </message>
</context>
<context>
    <name>ww::ui::VerifyDialog</name>
    <message>
        <source>Verify a Report</source>
        <translation>Vérifier un rapport</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Ce qui a été trouvé</translation>
    </message>
    <message>
        <source>Trust a Root Certificate…</source>
        <translation>Faire confiance à un certificat racine…</translation>
    </message>
    <message>
        <source>The certificate of the signer&apos;s firm or issuer, as a PEM file</source>
        <translation>Le certificat de la société ou de l’émetteur du signataire, en fichier PEM</translation>
    </message>
    <message>
        <source>Trust a Root Certificate</source>
        <translation>Faire confiance à un certificat racine</translation>
    </message>
    <message>
        <source>Certificates (*.pem *.crt *.cer)</source>
        <translation>Certificats (*.pem *.crt *.cer)</translation>
    </message>
    <message>
        <source>%1: unchanged since it was signed</source>
        <translation>%1&#xa0;: inchangé depuis la signature</translation>
    </message>
    <message>
        <source>%1: NOT proved to be as it was signed</source>
        <translation>%1&#xa0;: RIEN ne prouve qu’il soit resté tel que signé</translation>
    </message>
    <message>
        <source>Not signed yet.</source>
        <translation>Pas encore signé.</translation>
    </message>
    <message>
        <source>Beside the open workbook</source>
        <translation>Comparé au classeur ouvert</translation>
    </message>
</context>
<context>
    <name>ww::ui::WalkGrid</name>
    <message>
        <source>Valves in walking order</source>
        <translation>Vannes dans l’ordre de tournée</translation>
    </message>
    <message>
        <source>Type the dp, or the flow where a valve has no table, and press Enter; Ctrl+Tab or F6 leaves the grid</source>
        <translation>Tapez la Δp, ou le débit là où une vanne n’a pas de table, puis Entrée&#xa0;; Ctrl+Tab ou F6 quitte la grille</translation>
    </message>
</context>
<context>
    <name>ww::ui::WalkModel</name>
    <message>
        <source>not readable</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>%1 mean</source>
        <translation>%1 moyenne</translation>
    </message>
    <message>
        <source>%1 | %2</source>
        <translation>%1 | %2</translation>
    </message>
    <message>
        <source>%1, reason</source>
        <translation>%1, motif</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>vide</translation>
    </message>
    <message>
        <source>%1 percent of target</source>
        <translation>%1 pour cent de la cible</translation>
    </message>
    <message>
        <source>comment: %1</source>
        <translation>commentaire&#xa0;: %1</translation>
    </message>
    <message>
        <source>Route</source>
        <translation>Ordre</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Desservi</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Réglage</translation>
    </message>
    <message>
        <source>DP
%1</source>
        <translation>Δp
%1</translation>
    </message>
    <message>
        <source>Last DP
%1</source>
        <translation>Dernière Δp
%1</translation>
    </message>
    <message>
        <source>Flow
%1</source>
        <translation>Débit
%1</translation>
    </message>
    <message>
        <source>Share
%</source>
        <translation>Part
%</translation>
    </message>
    <message>
        <source>Target
%</source>
        <translation>Cible
%</translation>
    </message>
    <message>
        <source>Of target
%</source>
        <translation>% de
la cible</translation>
    </message>
    <message>
        <source>State</source>
        <translation>État</translation>
    </message>
    <message>
        <source>Added later</source>
        <translation>Ajouté plus tard</translation>
    </message>
</context>
<context>
    <name>ww::ui::WalkPlace</name>
    <message>
        <source>Walk</source>
        <translation>Tournée</translation>
    </message>
    <message>
        <source>Totals of the round</source>
        <translation>Totaux du passage</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Ce qui manque ici</translation>
    </message>
    <message>
        <source>&amp;Find valve</source>
        <translation>&amp;Trouver vanne</translation>
    </message>
    <message>
        <source>Find valve</source>
        <translation>Trouver vanne</translation>
    </message>
    <message>
        <source>tag or number</source>
        <translation>repère ou numéro</translation>
    </message>
    <message>
        <source>No valve to read yet. Add the branches in System (Alt+2).</source>
        <translation>Aucune vanne à mesurer encore. Ajoutez les branches dans Réseau (Alt+2).</translation>
    </message>
    <message>
        <source>No round yet. Open Round 1 (Ctrl+Shift+N).</source>
        <translation>Aucun passage encore. Ouvrez le passage 1 (Ctrl+Maj+N).</translation>
    </message>
    <message>
        <source>Close Round %1…</source>
        <translation>Clore le passage %1…</translation>
    </message>
    <message>
        <source>Open Round 1…</source>
        <translation>Ouvrir le passage 1…</translation>
    </message>
    <message>
        <source>Open Round %1…</source>
        <translation>Ouvrir le passage %1…</translation>
    </message>
    <message>
        <source>of design</source>
        <translation>du nominal</translation>
    </message>
    <message>
        <source> %</source>
        <translation>&#xa0;%</translation>
    </message>
    <message>
        <source>on share</source>
        <translation>à sa part</translation>
    </message>
    <message>
        <source>carried over</source>
        <translation>reportés</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>dispersion</translation>
    </message>
    <message>
        <source>doubts</source>
        <translation>doutes</translation>
    </message>
    <message>
        <source>oldest reading</source>
        <translation>mesure la plus ancienne</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O), make a new job (Ctrl+N), or practice on a simulated building (Ctrl+Shift+P). F1 shows the handbook.</source>
        <translation>Aucun classeur ouvert. Ouvrez-en un (Ctrl+O), créez un chantier (Ctrl+N), ou exercez-vous sur un bâtiment simulé (Ctrl+Maj+P). F1 montre le manuel.</translation>
    </message>
    <message>
        <source>Ctrl+T numbers as a table</source>
        <translation>Ctrl+T nombres en tableau</translation>
    </message>
    <message>
        <source>Ctrl+G back to the grid</source>
        <translation>Ctrl+G retour à la grille</translation>
    </message>
    <message>
        <source>Alt+2 system</source>
        <translation>Alt+2 réseau</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N opens round 1</source>
        <translation>Ctrl+Maj+N ouvre le passage 1</translation>
    </message>
    <message>
        <source>Enter opens the round</source>
        <translation>Entrée ouvre le passage</translation>
    </message>
    <message>
        <source>Tab next choice</source>
        <translation>Tab choix suivant</translation>
    </message>
    <message>
        <source>Esc back to the grid</source>
        <translation>Échap retour à la grille</translation>
    </message>
    <message>
        <source>Esc back to the walk</source>
        <translation>Échap retour à la tournée</translation>
    </message>
    <message>
        <source>Enter closes the round</source>
        <translation>Entrée clôt le passage</translation>
    </message>
    <message>
        <source>Enter stores the reason</source>
        <translation>Entrée enregistre le motif</translation>
    </message>
    <message>
        <source>Tab next item</source>
        <translation>Tab point suivant</translation>
    </message>
    <message>
        <source>digits Enter next valve</source>
        <translation>chiffres Entrée vanne suivante</translation>
    </message>
    <message>
        <source>digits Enter correct the reading</source>
        <translation>chiffres Entrée corrige la mesure</translation>
    </message>
    <message>
        <source>Tab setting</source>
        <translation>Tab réglage</translation>
    </message>
    <message>
        <source>x cannot read</source>
        <translation>x illisible</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N opens the next round</source>
        <translation>Ctrl+Maj+N ouvre le passage suivant</translation>
    </message>
    <message>
        <source>Alt+4 adjust</source>
        <translation>Alt+4 régler</translation>
    </message>
    <message>
        <source>Ctrl+J find</source>
        <translation>Ctrl+J trouver</translation>
    </message>
    <message>
        <source>Ctrl+R again</source>
        <translation>Ctrl+R encore</translation>
    </message>
    <message>
        <source>Ctrl+G convergence</source>
        <translation>Ctrl+G convergence</translation>
    </message>
    <message>
        <source>F6 leaves the grid</source>
        <translation>F6 quitte la grille</translation>
    </message>
    <message>
        <source>Enter stores</source>
        <translation>Entrée enregistre</translation>
    </message>
    <message>
        <source>Esc restores</source>
        <translation>Échap rétablit</translation>
    </message>
    <message>
        <source>Enter goes to the valve</source>
        <translation>Entrée va à la vanne</translation>
    </message>
    <message>
        <source>terminals read</source>
        <translation>terminaux mesurés</translation>
    </message>
    <message>
        <source>Round %1: nothing read yet</source>
        <translation>Passage %1&#xa0;: rien de mesuré encore</translation>
    </message>
    <message>
        <source>%1, %2 doubtful in it</source>
        <translation>%1, dont %2 en doute</translation>
    </message>
    <message>
        <source>total flow</source>
        <translation>débit total</translation>
    </message>
    <message>
        <source>Ctrl+Alt+X marks the rest as not turned</source>
        <translation>Ctrl+Alt+X reste non manœuvré</translation>
    </message>
    <message>
        <source>Enter takes the speed</source>
        <translation>Entrée prend la vitesse</translation>
    </message>
    <message>
        <source>%1 of %2 terminals</source>
        <translation>%1 des %2 terminaux</translation>
    </message>
</context>
<context>
    <name>ww::ui::WordSign</name>
    <message>
        <source>What to do at the valve</source>
        <translation>Que faire à la vanne</translation>
    </message>
</context>
<context>
    <name>ww::ui::WorkbookBridge</name>
    <message>
        <source>Opening %1</source>
        <translation>Ouverture de %1</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>Écriture de %1</translation>
    </message>
    <message>
        <source>Comparing with %1</source>
        <translation>Comparaison avec %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::ZonePage</name>
    <message>
        <source>&amp;Add Zone</source>
        <translation>&amp;Ajouter zone</translation>
    </message>
    <message>
        <source>Re&amp;move Zone</source>
        <translation>&amp;Supprimer zone</translation>
    </message>
    <message>
        <source>Chan&amp;ge Flow</source>
        <translation>Chang&amp;er débit</translation>
    </message>
    <message>
        <source>&amp;Start Anew</source>
        <translation>Reco&amp;mmencer</translation>
    </message>
    <message>
        <source>&amp;Keep as New Revision</source>
        <translation>&amp;Garder en révision</translation>
    </message>
    <message>
        <source>&amp;Tag</source>
        <translation>&amp;Repère</translation>
    </message>
    <message>
        <source>of a new zone, or of one there is</source>
        <translation>d’une zone nouvelle ou existante</translation>
    </message>
    <message>
        <source>Design fl&amp;ow</source>
        <translation>Dé&amp;bit nominal</translation>
    </message>
    <message>
        <source>such as 12.5 gpm or 0.8 L/s</source>
        <translation>p. ex. 12.5 gpm ou 0.8 L/s</translation>
    </message>
    <message>
        <source>Fe&amp;d by</source>
        <translation>A&amp;limenté par</translation>
    </message>
    <message>
        <source>tag; empty: the pump</source>
        <translation>repère&#xa0;; vide&#xa0;: la pompe</translation>
    </message>
    <message>
        <source>C&amp;ircuit loss</source>
        <translation>Perte c&amp;ircuit</translation>
    </message>
    <message>
        <source>at that flow, without valve</source>
        <translation>à ce débit, sans vanne</translation>
    </message>
    <message>
        <source>Ru&amp;n loss</source>
        <translation>Perte tr&amp;onçon</translation>
    </message>
    <message>
        <source>of the new pipe to it</source>
        <translation>du nouveau tuyau vers elle</translation>
    </message>
    <message>
        <source>Va&amp;lve</source>
        <translation>&amp;Vanne</translation>
    </message>
    <message>
        <source>model and size of the job</source>
        <translation>modèle et taille du chantier</translation>
    </message>
    <message>
        <source>Tried on a copy; the job stays as it is until it is kept.</source>
        <translation>Essayé sur une copie&#xa0;; le chantier reste tel quel jusqu’à ce qu’on garde.</translation>
    </message>
    <message>
        <source>Changes tried</source>
        <translation>Changements essayés</translation>
    </message>
    <message>
        <source>add %1, %2</source>
        <translation>ajouter %1, %2</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>supprimer %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>The changed loop is being solved.</source>
        <translation>La boucle modifiée est en calcul.</translation>
    </message>
    <message>
        <source>Type a tag and a flow at the left, and add a zone, remove one or change its flow: the changed loop is solved, and what it does to the balance, the pump and the signed report stands here.</source>
        <translation>Tapez à gauche un repère et un débit, puis ajoutez une zone, supprimez-en une ou changez son débit&#xa0;: la boucle modifiée est calculée, et ce que cela fait à l’équilibrage, à la pompe et au rapport signé s’affiche ici.</translation>
    </message>
    <message>
        <source>Save St&amp;udy…</source>
        <translation>Enregistrer l’ét&amp;ude…</translation>
    </message>
    <message>
        <source>Save Study</source>
        <translation>Enregistrer l’étude</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Fichiers PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Change the design flows above too</source>
        <translation>Changer aussi les débits nominaux au-dessus</translation>
    </message>
    <message>
        <source>Kept as one step: %1.</source>
        <translation>Gardé en une étape&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Next: set the valves of new branches fully open and read them in round %1, which is open: place Walk (Alt+3).</source>
        <translation>Ensuite&#xa0;: ouvrez à fond les vannes des nouvelles branches et mesurez-les au passage %1, qui est ouvert&#xa0;: lieu Tournée (Alt+3).</translation>
    </message>
    <message>
        <source>Next: set the valves of new branches fully open, then open a round (Ctrl+Shift+N) and read every valve. Rounds that are closed keep the design they were judged by.</source>
        <translation>Ensuite&#xa0;: ouvrez à fond les vannes des nouvelles branches, puis ouvrez un passage (Ctrl+Maj+N) et mesurez chaque vanne. Les passages clos gardent la conception d’après laquelle ils ont été jugés.</translation>
    </message>
</context>
<context>
    <name>ww::ui::charts::ChartView</name>
    <message>
        <source>%1, as a table</source>
        <translation>%1, en tableau</translation>
    </message>
</context>
<context>
    <name>ww::ui::schematic::SchematicKey</name>
    <message>
        <source>Key to the diagram</source>
        <translation>Légende du schéma</translation>
    </message>
    <message>
        <source>open part of a valve</source>
        <translation>partie ouverte d’une vanne</translation>
    </message>
    <message>
        <source>index circuit, * its end</source>
        <translation>circuit défavorisé, * sa fin</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>pump</source>
        <translation>pompe</translation>
    </message>
</context>
<context>
    <name>ww::ui::schematic::SchematicView</name>
    <message>
        <source>One-line diagram</source>
        <translation>Schéma unifilaire</translation>
    </message>
    <message numerus="yes">
        <source>%n branch(es). Arrow keys follow the pipe, Enter opens the valve.</source>
        <translation>
            <numerusform>%n branche. Les flèches suivent le tuyau, Entrée ouvre la vanne.</numerusform>
            <numerusform>%n branches. Les flèches suivent le tuyau, Entrée ouvre la vanne.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, not read</source>
        <translation>%1, non mesuré</translation>
    </message>
    <message>
        <source>%1, %2 of target</source>
        <translation>%1, %2 de la cible</translation>
    </message>
    <message>
        <source>, on the index circuit</source>
        <translation>, sur le circuit défavorisé</translation>
    </message>
</context>
<context>
    <name>ww::ui::system::WhatIfBench</name>
    <message>
        <source>Reset to the Last Round</source>
        <translation>Rétablir le dernier passage</translation>
    </message>
    <message>
        <source>What if: settings tried and flows predicted</source>
        <translation>Cas testé&#xa0;: réglages essayés et débits prédits</translation>
    </message>
    <message>
        <source>Prediction</source>
        <translation>Prédiction</translation>
    </message>
    <message>
        <source>Pump speed, percent of rated</source>
        <translation>Vitesse de pompe, pour cent du nominal</translation>
    </message>
    <message>
        <source>Pump s&amp;peed, % of rated</source>
        <translation>Vi&amp;tesse de pompe,&#xa0;% du nominal</translation>
    </message>
    <message>
        <source>Computed from design losses. Nothing here is stored as a reading.</source>
        <translation>Calculé d’après les pertes nominales. Rien ici n’est enregistré comme mesure.</translation>
    </message>
    <message>
        <source>What is computed from</source>
        <translation>D’où vient le calcul</translation>
    </message>
    <message>
        <source>Computed from the learned loop. Nothing here is stored as a reading.</source>
        <translation>Calculé d’après la boucle apprise. Rien ici n’est enregistré comme mesure.</translation>
    </message>
</context>
<context>
    <name>ww::ui::system::WhatIfModel</name>
    <message>
        <source>No prediction: %1</source>
        <translation>Pas de prédiction&#xa0;: %1</translation>
    </message>
    <message>
        <source>No prediction: %1 (and %2 more)</source>
        <translation>Pas de prédiction&#xa0;: %1 (et %2 de plus)</translation>
    </message>
    <message>
        <source>%1. No water moves.</source>
        <translation>%1. L’eau ne circule pas.</translation>
    </message>
    <message>
        <source>%1. Shares from %2 to %3 % of target.</source>
        <translation>%1. Parts de %2 à %3&#xa0;% de la cible.</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>fermé</translation>
    </message>
    <message>
        <source>open</source>
        <translation>ouvert</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Repère</translation>
    </message>
    <message>
        <source>Setting now</source>
        <translation>Réglage actuel</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Cas testé</translation>
    </message>
    <message>
        <source>Shut off</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Measured %1</source>
        <translation>Mesuré %1</translation>
    </message>
    <message>
        <source>Predicted %1</source>
        <translation>Prédit %1</translation>
    </message>
    <message>
        <source>Of target %</source>
        <translation>% de la cible</translation>
    </message>
    <message>
        <source>Of design %</source>
        <translation>% du nominal</translation>
    </message>
    <message>
        <source>Valve dp %1</source>
        <translation>Δp de vanne %1</translation>
    </message>
    <message>
        <source>Pump %1 %2 at %3 %4, %5 % of full speed</source>
        <translation>Pompe %1 %2 à %3 %4, %5&#xa0;% de la pleine vitesse</translation>
    </message>
</context>
</TS>
