<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Adjust</name>
    <message>
        <source>learned loop</source>
        <translation>gelernter Kreislauf</translation>
    </message>
    <message>
        <source>ratio of %1</source>
        <translation>Verhältnis zu %1</translation>
    </message>
    <message>
        <source>sum of branches</source>
        <translation>Summe der Zweige</translation>
    </message>
    <message>
        <source>last %1 % of target</source>
        <translation>zuletzt %1 % vom Soll</translation>
    </message>
    <message>
        <source>%1, %2 % of target</source>
        <translation>%1, %2 % vom Soll</translation>
    </message>
    <message>
        <source>%1 in round %2</source>
        <translation>%1 in Runde %2</translation>
    </message>
    <message>
        <source>Aim: %1</source>
        <translation>Ziel: %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Ctrl+B reads the reference.</source>
        <translation>Strg+B liest die Referenz ab.</translation>
    </message>
    <message>
        <source>No try yet at this valve.</source>
        <translation>An diesem Ventil noch kein Versuch.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4</source>
        <translation>%1: %2, %3 %4</translation>
    </message>
    <message>
        <source>Tries   %1</source>
        <translation>Versuche   %1</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>noch nicht abgelesen</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>round %1%2</source>
        <translation>Runde %1%2</translation>
    </message>
    <message>
        <source>read the valve</source>
        <translation>Ventil ablesen</translation>
    </message>
    <message>
        <source>no water passes at that setting</source>
        <translation>bei dieser Einstellung fließt kein Wasser</translation>
    </message>
    <message>
        <source>aim %1 at %2</source>
        <translation>Ziel %1 bei %2</translation>
    </message>
    <message>
        <source>too much flow, %1</source>
        <translation>zu viel Durchfluss, %1</translation>
    </message>
    <message>
        <source>too little flow, %1</source>
        <translation>zu wenig Durchfluss, %1</translation>
    </message>
    <message>
        <source>below what can be read; close further or change the meter (menu Round)</source>
        <translation>unter dem Ablesbaren; weiter schließen oder Messgerät wechseln (Menü Runde)</translation>
    </message>
    <message>
        <source>%1: read the valve.</source>
        <translation>%1: Ventil ablesen.</translation>
    </message>
    <message>
        <source>%1: %2. %3 read at setting %4; %5.</source>
        <translation>%1: %2. %3 abgelesen bei Einstellung %4; %5.</translation>
    </message>
    <message>
        <source>two tries</source>
        <translation>zwei Versuche</translation>
    </message>
    <message>
        <source>a try, learned loop</source>
        <translation>Versuch, gelernter Kreislauf</translation>
    </message>
    <message>
        <source>a try, design loss</source>
        <translation>Versuch, Auslegungsverlust</translation>
    </message>
    <message>
        <source>No try here since another valve was turned.</source>
        <translation>Hier kein Versuch, seit ein anderes Ventil gedreht wurde.</translation>
    </message>
    <message>
        <source>No try yet; expected: learned loop.</source>
        <translation>Kein Versuch; erwartet: gelernter Kreislauf.</translation>
    </message>
    <message>
        <source>doubtful as read; read it again (Ctrl+R) or change the meter (menu Round)</source>
        <translation>fraglich; neu ablesen (Strg+R) oder Messgerät wechseln (Menü Runde)</translation>
    </message>
    <message>
        <source>not read at %1 yet: read the valve here</source>
        <translation>bei %1 noch nicht abgelesen: das Ventil hier ablesen</translation>
    </message>
    <message>
        <source>Counted in other ways the aim differs by %1 % of flow: %2.</source>
        <translation>Anders gerechnet weicht das Ziel um %1 % vom Durchfluss ab: %2.</translation>
    </message>
    <message>
        <source>Shut: %1 available.</source>
        <translation>Zu: %1 verfügbar.</translation>
    </message>
    <message>
        <source>at the lowest setting, still too much flow, %1</source>
        <translation>kleinste Einstellung, immer noch zu viel Durchfluss, %1</translation>
    </message>
    <message>
        <source>fully open, still too little flow, %1</source>
        <translation>ganz offen, immer noch zu wenig Durchfluss, %1</translation>
    </message>
    <message>
        <source>Leave it: it fits the aim here. Ctrl+Enter goes to the next valve.</source>
        <translation>So lassen: hier passt es zum Ziel. Strg+Enter geht zum nächsten Ventil.</translation>
    </message>
    <message>
        <source>Leave it: it fits the aim here.</source>
        <translation>So lassen: hier passt es zum Ziel.</translation>
    </message>
    <message>
        <source>Leave it: it fits the aim here, and would be nearest to it at %1.</source>
        <translation>So lassen: hier passt es zum Ziel, am nächsten wäre es bei %1.</translation>
    </message>
    <message>
        <source>Open it to a setting that passes water, then read it there.</source>
        <translation>Auf eine Einstellung öffnen, die Wasser durchlässt, und dort ablesen.</translation>
    </message>
    <message>
        <source>Open it first: the aim here, %1, is above the %2 available.</source>
        <translation>Zuerst öffnen: das Ziel hier, %1, liegt über den verfügbaren %2.</translation>
    </message>
    <message>
        <source>Read it here: aim %1 now, %2 once all valves are set.</source>
        <translation>Hier ablesen: Ziel jetzt %1, %2 wenn alle Ventile eingestellt sind.</translation>
    </message>
    <message>
        <source>Read it here: aim %1 now.</source>
        <translation>Hier ablesen: Ziel jetzt %1.</translation>
    </message>
    <message>
        <source>Turn it to %1 (Ctrl+Shift+T) and read it: aim %2 now, %3 once all valves are set.</source>
        <translation>Auf %1 drehen (Strg+Umschalt+T) und ablesen: Ziel jetzt %2, %3 wenn alle Ventile eingestellt sind.</translation>
    </message>
    <message>
        <source>Hold it here: the scale ends. Close the valve of its riser, or fit a smaller one.</source>
        <translation>Hier halten: die Skala endet. Das Ventil des Steigstrangs schließen oder ein kleineres einbauen.</translation>
    </message>
    <message>
        <source>Hold it here: it takes more as the others are closed.</source>
        <translation>Hier halten: es nimmt mehr, wenn die anderen geschlossen werden.</translation>
    </message>
    <message>
        <source>Try %1, as advised: aim %2 now, %3 once all valves are set.</source>
        <translation>%1 versuchen, wie empfohlen: Ziel jetzt %2, %3 wenn alle Ventile eingestellt sind.</translation>
    </message>
    <message>
        <source>Even fully open at %1 it stays below the aim: %2 expected there, aim %3. Leave it open there as the reference, and close the others.</source>
        <translation>Auch ganz offen bei %1 bleibt es unter dem Ziel: dort %2 zu erwarten, Ziel %3. Dort als Referenz offen lassen und die anderen schließen.</translation>
    </message>
    <message>
        <source>Even at %1, where the scale ends, it takes too much: %2 expected there, aim %3. Close the valve of its riser, or fit a smaller one.</source>
        <translation>Auch bei %1, wo die Skala endet, nimmt es zu viel: dort %2 zu erwarten, Ziel %3. Das Ventil des Steigstrangs schließen oder ein kleineres einbauen.</translation>
    </message>
    <message>
        <source>Open it to %1: the aim here, %2, is above the %3 available.</source>
        <translation>Auf %1 öffnen: das Ziel hier, %2, liegt über den verfügbaren %3.</translation>
    </message>
    <message>
        <source>No mark is nearer to the aim than %1: turn by less than a mark, or hold it here.</source>
        <translation>Keine Marke liegt näher am Ziel als %1: um weniger als eine Marke drehen oder hier halten.</translation>
    </message>
    <message>
        <source>Try %1: about %2 expected there now, aim %3 (%4).</source>
        <translation>%1 versuchen: dort jetzt etwa %2 zu erwarten, Ziel %3 (%4).</translation>
    </message>
    <message>
        <source>A setting to try is named once it is read again.</source>
        <translation>Eine Einstellung zum Versuchen wird vorgeschlagen, sobald neu abgelesen ist.</translation>
    </message>
    <message>
        <source>Turn it by the word and read it: then the setting to aim at can be told.</source>
        <translation>Nach dem Wort drehen und ablesen: dann lässt sich die Zieleinstellung angeben.</translation>
    </message>
    <message>
        <source>it fits: %1</source>
        <translation>es passt: %1</translation>
    </message>
    <message>
        <source>Turn it to %1 (Ctrl+Shift+T) and read it, then read a final round: it tells whether the index circuit is proved.</source>
        <translation>Auf %1 drehen (Strg+Umschalt+T) und ablesen, dann eine Schlussrunde ablesen: sie zeigt, ob der Schlechtpunktkreis nachgewiesen ist.</translation>
    </message>
    <message>
        <source>Try %1, a first guess while the advice is not ready: aim %2 now.</source>
        <translation>%1 versuchen, eine erste Schätzung, solange der Rat nicht bereit ist: Ziel jetzt %2.</translation>
    </message>
</context>
<context>
    <name>ConvergenceChart</name>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Of target, %</source>
        <translation>Vom Soll, %</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Of target by round</source>
        <translation>Vom Soll je Runde</translation>
    </message>
    <message>
        <source>largest</source>
        <translation>größter Wert</translation>
    </message>
    <message>
        <source>9 of 10 below</source>
        <translation>9 von 10 unter</translation>
    </message>
    <message>
        <source>half below</source>
        <translation>die Hälfte unter</translation>
    </message>
    <message>
        <source>1 of 10 below</source>
        <translation>1 von 10 unter</translation>
    </message>
    <message>
        <source>smallest</source>
        <translation>kleinster Wert</translation>
    </message>
    <message>
        <source>The lines in between stand in the table.</source>
        <translation>Die Linien dazwischen stehen in der Tabelle.</translation>
    </message>
    <message>
        <source>%1 of %2 terminals on share in round %3.</source>
        <translation>%1 von %2 Verbrauchern im Anteil in Runde %3.</translation>
    </message>
    <message>
        <source>No share is known in round %1.</source>
        <translation>In Runde %1 ist kein Anteil bekannt.</translation>
    </message>
    <message>
        <source>Spread by round %1 %.</source>
        <translation>Streuung je Runde %1 %.</translation>
    </message>
    <message>
        <source>%1 of %2 terminals are read.</source>
        <translation>%1 von %2 Verbrauchern sind abgelesen.</translation>
    </message>
</context>
<context>
    <name>ImportColumn</name>
    <message>
        <source>Accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>Accuracy, at least</source>
        <translation>Genauigkeit, mindestens</translation>
    </message>
    <message>
        <source>Accuracy, more shut</source>
        <translation>Genauigkeit, weiter zu</translation>
    </message>
    <message>
        <source>Current, A</source>
        <translation>Strom, A</translation>
    </message>
    <message>
        <source>Current, second phase</source>
        <translation>Strom, zweite Phase</translation>
    </message>
    <message>
        <source>Current, third phase</source>
        <translation>Strom, dritte Phase</translation>
    </message>
    <message>
        <source>Several pumps: how</source>
        <translation>Mehrere Pumpen: Schaltung</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Cannot be read</source>
        <translation>Nicht ablesbar</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>Loss of the circuit</source>
        <translation>Verlust des Kreises</translation>
    </message>
    <message>
        <source>Corrects</source>
        <translation>Berichtigt</translation>
    </message>
    <message>
        <source>Design flow</source>
        <translation>Auslegungsdurchfluss</translation>
    </message>
    <message>
        <source>Discharge</source>
        <translation>Druckseite</translation>
    </message>
    <message>
        <source>Discharge bore</source>
        <translation>Druckstutzen, innen</translation>
    </message>
    <message>
        <source>Height of the discharge gauge</source>
        <translation>Höhe des Manometers, Druckseite</translation>
    </message>
    <message>
        <source>Before the valve</source>
        <translation>Vor dem Ventil</translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation>Fraglich</translation>
    </message>
    <message>
        <source>Straight pipe behind, diameters</source>
        <translation>Gerades Rohr dahinter, Durchmesser</translation>
    </message>
    <message>
        <source>DP</source>
        <translation>Δp</translation>
    </message>
    <message>
        <source>Has a drive</source>
        <translation>Hat einen Umrichter</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>Rise on one gauge</source>
        <translation>Anstieg an einem Manometer</translation>
    </message>
    <message>
        <source>Feeds the chiller or boiler alone</source>
        <translation>Speist Kältemaschine oder Kessel allein</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Förderhöhe</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Laufrad</translation>
    </message>
    <message>
        <source>Smallest impeller</source>
        <translation>Kleinstes Laufrad</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Last DP</source>
        <translation>Letzte Δp</translation>
    </message>
    <message>
        <source>Most DP</source>
        <translation>Größte Δp</translation>
    </message>
    <message>
        <source>Least DP</source>
        <translation>Kleinste Δp</translation>
    </message>
    <message>
        <source>Lowest speed</source>
        <translation>Kleinste Drehzahl</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Efficiency of the motor</source>
        <translation>Motorwirkungsgrad</translation>
    </message>
    <message>
        <source>Power of the motor</source>
        <translation>Motorleistung</translation>
    </message>
    <message>
        <source>Current without load</source>
        <translation>Leerlaufstrom</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>NPSH required</source>
        <translation>NPSH nötig</translation>
    </message>
    <message>
        <source>Reason where overdue</source>
        <translation>Grund, falls überfällig</translation>
    </message>
    <message>
        <source>Fed by</source>
        <translation>Gespeist von</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Speed on the plate</source>
        <translation>Drehzahl, Schild</translation>
    </message>
    <message>
        <source>Point of the test</source>
        <translation>Punkt des Tests</translation>
    </message>
    <message>
        <source>Dealt with as</source>
        <translation>Behandelt als</translation>
    </message>
    <message>
        <source>Why so</source>
        <translation>Warum so</translation>
    </message>
    <message>
        <source>Positive displacement</source>
        <translation>Verdrängerpumpe</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Power factor</source>
        <translation>Leistungsfaktor</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Repeated</source>
        <translation>Wiederholt</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Auflösung</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Rücklauf</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Loss of the run</source>
        <translation>Verlust der Strecke</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>Läuft</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Skala</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Versorgt</translation>
    </message>
    <message>
        <source>Service factor</source>
        <translation>Servicefaktor</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Setting now</source>
        <translation>Einstellung jetzt</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Suction</source>
        <translation>Saugseite</translation>
    </message>
    <message>
        <source>Suction bore</source>
        <translation>Saugstutzen, innen</translation>
    </message>
    <message>
        <source>Height of the suction gauge</source>
        <translation>Höhe des Manometers, Saugseite</translation>
    </message>
    <message>
        <source>Synchronous speed</source>
        <translation>Synchrondrehzahl</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Discharge valve open</source>
        <translation>Drosselventil auf</translation>
    </message>
    <message>
        <source>Tag of the discharge valve</source>
        <translation>Kennung des Drosselventils</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Straight pipe before, diameters</source>
        <translation>Gerades Rohr davor, Durchmesser</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>Model of the valve</source>
        <translation>Modell des Ventils</translation>
    </message>
    <message>
        <source>Size of the valve</source>
        <translation>Größe des Ventils</translation>
    </message>
    <message>
        <source>Voltage, V</source>
        <translation>Spannung, V</translation>
    </message>
    <message>
        <source>Voltage, second phase</source>
        <translation>Spannung, zweite Phase</translation>
    </message>
    <message>
        <source>Voltage, third phase</source>
        <translation>Spannung, dritte Phase</translation>
    </message>
    <message>
        <source>Zero at the end</source>
        <translation>Nullpunkt am Ende</translation>
    </message>
    <message>
        <source>Zero at the start</source>
        <translation>Nullpunkt am Anfang</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Höhe über Meer</translation>
    </message>
    <message>
        <source>Answer to</source>
        <translation>Antwort auf</translation>
    </message>
    <message>
        <source>Branch</source>
        <translation>Zweig</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Bildtext</translation>
    </message>
    <message>
        <source>Client</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>Closed on</source>
        <translation>Geschlossen am</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Vorschrift</translation>
    </message>
    <message>
        <source>Clause of the energy code</source>
        <translation>Abschnitt der Energievorschrift</translation>
    </message>
    <message>
        <source>Edition of the energy code</source>
        <translation>Ausgabe der Energievorschrift</translation>
    </message>
    <message>
        <source>Exception of the energy code</source>
        <translation>Ausnahme der Energievorschrift</translation>
    </message>
    <message>
        <source>Form of the clause</source>
        <translation>Form des Abschnitts</translation>
    </message>
    <message>
        <source>Cv or Kv</source>
        <translation>Cv oder Kv</translation>
    </message>
    <message>
        <source>Concentration</source>
        <translation>Konzentration</translation>
    </message>
    <message>
        <source>Consequence</source>
        <translation>Folge</translation>
    </message>
    <message>
        <source>Content</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Decided on</source>
        <translation>Entschieden am</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Entschieden von</translation>
    </message>
    <message>
        <source>Deficiency</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>Description</source>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Feld</translation>
    </message>
    <message>
        <source>Fill pressure</source>
        <translation>Fülldruck</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Medium</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>Obere Grenze</translation>
    </message>
    <message>
        <source>Hours per year</source>
        <translation>Stunden im Jahr</translation>
    </message>
    <message>
        <source>Mandatory</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>Resolved</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Load of a year</source>
        <translation>Last eines Jahres</translation>
    </message>
    <message>
        <source>Location</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>Untere Grenze</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Matching band</source>
        <translation>Abgleichband</translation>
    </message>
    <message>
        <source>Type of file</source>
        <translation>Art der Datei</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Opened on</source>
        <translation>Geöffnet am</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Zuständig</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Folge</translation>
    </message>
    <message>
        <source>Price of power</source>
        <translation>Strompreis</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Kennlinie</translation>
    </message>
    <message>
        <source>Raised on</source>
        <translation>Gemeldet am</translation>
    </message>
    <message>
        <source>Raised by</source>
        <translation>Gemeldet von</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Bereitschaft</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>Longest age of a reading</source>
        <translation>Höchstalter einer Ablesung</translation>
    </message>
    <message>
        <source>Remedy</source>
        <translation>Abhilfe</translation>
    </message>
    <message>
        <source>Reset of the set-point</source>
        <translation>Führung des Sollwerts</translation>
    </message>
    <message>
        <source>Resolved on</source>
        <translation>Erledigt am</translation>
    </message>
    <message>
        <source>Resolved by</source>
        <translation>Erledigt von</translation>
    </message>
    <message>
        <source>Reading of the retest</source>
        <translation>Ablesung der Nachprüfung</translation>
    </message>
    <message>
        <source>Result of the retest</source>
        <translation>Ergebnis der Nachprüfung</translation>
    </message>
    <message>
        <source>Retested on</source>
        <translation>Nachgeprüft am</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>Stichprobe</translation>
    </message>
    <message>
        <source>Seed of the sample</source>
        <translation>Startzahl der Stichprobe</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>Sent on</source>
        <translation>Gesendet am</translation>
    </message>
    <message>
        <source>Sent by</source>
        <translation>Gesendet von</translation>
    </message>
    <message>
        <source>Set by</source>
        <translation>Gesetzt von</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Subject</source>
        <translation>Gegenstand</translation>
    </message>
    <message>
        <source>Supersedes</source>
        <translation>Ersetzt</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Tolerance above</source>
        <translation>Toleranz nach oben</translation>
    </message>
    <message>
        <source>Tolerance below</source>
        <translation>Toleranz nach unten</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Gewerk</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Table of settings</source>
        <translation>Tabelle der Einstellungen</translation>
    </message>
    <message>
        <source>Zero</source>
        <translation>Null</translation>
    </message>
    <message>
        <source>Earlier design flows</source>
        <translation>Frühere Auslegungsdurchflüsse</translation>
    </message>
</context>
<context>
    <name>ImportSource</name>
    <message>
        <source>the clipboard</source>
        <translation>die Zwischenablage</translation>
    </message>
</context>
<context>
    <name>Message</name>
    <message>
        <source>A imbalance</source>
        <translation>A-Unsymmetrie</translation>
    </message>
    <message>
        <source>A of plate</source>
        <translation>A vom Schild</translation>
    </message>
    <message>
        <source>A of plate × SF</source>
        <translation>A vom Schild × SF</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Im Jahr</translation>
    </message>
    <message>
        <source>About</source>
        <translation>Betrifft</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>Adds to flow ±</source>
        <translation>Unsicherheit im Durchfluss ±</translation>
    </message>
    <message>
        <source>Again over reported</source>
        <translation>Neu / berichtet</translation>
    </message>
    <message>
        <source>Amp ratio</source>
        <translation>Stromverhältnis</translation>
    </message>
    <message>
        <source>At design flow</source>
        <translation>Bei Auslegungsdurchfluss</translation>
    </message>
    <message>
        <source>At full speed</source>
        <translation>Bei voller Drehzahl</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Mindestens</translation>
    </message>
    <message>
        <source>Balancing devices and straight pipe</source>
        <translation>Regulierarmaturen und gerades Rohr</translation>
    </message>
    <message>
        <source>Balancing valves</source>
        <translation>Strangregulierventile</translation>
    </message>
    <message>
        <source>Before a shutoff test</source>
        <translation>Vor einem Nullförderversuch</translation>
    </message>
    <message>
        <source>By meter</source>
        <translation>Nach Messgerät</translation>
    </message>
    <message>
        <source>By terminals</source>
        <translation>Nach Verbrauchern</translation>
    </message>
    <message>
        <source>By the law</source>
        <translation>Nach dem Gesetz</translation>
    </message>
    <message>
        <source>CHANGED OR BROKEN</source>
        <translation>GEÄNDERT ODER BESCHÄDIGT</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Caution: electrical measurements, drives and work on pumps are for qualified people under the local codes, with the supply isolated and locked off and the pressure let down. Check the motor&apos;s rating and least speed first.</source>
        <translation>Vorsicht: Elektrische Messungen, Umrichter und Arbeiten an Pumpen sind Sache von Fachkräften nach den örtlichen Vorschriften, mit freigeschalteter, gegen Wiedereinschalten gesicherter Anlage und abgelassenem Druck. Prüfen Sie zuerst Nennwerte und kleinste Drehzahl des Motors.</translation>
    </message>
    <message>
        <source>Caution: the affinity laws are a first estimate, for a loop without static head. A full trim by them tends to cut too much; common practice cuts 70 to 80 % of it, tests, and cuts again. Check the least impeller of the casing before any cut: it cannot be taken back.</source>
        <translation>Vorsicht: Die Ähnlichkeitsgesetze sind eine erste Schätzung für einen Kreislauf ohne statische Höhe. Volles Abdrehen nach ihnen nimmt meist zu viel weg; üblich ist, 70 bis 80 % davon abzudrehen, zu prüfen und nachzudrehen. Prüfen Sie vorher das kleinste Laufrad des Gehäuses: Abdrehen lässt sich nicht zurücknehmen.</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>Check with your PDF viewer&apos;s signature panel.</source>
        <translation>Prüfen Sie es mit der Signaturanzeige Ihres PDF-Betrachters.</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <source>Circuits in walking order</source>
        <translation>Kreise in Gehreihenfolge</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Geschlossen</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Vorschrift</translation>
    </message>
    <message>
        <source>Coefficient there</source>
        <translation>Beiwert dort</translation>
    </message>
    <message>
        <source>Confirmed: {1} of {2} terminals within 10 % of what was reported</source>
        <translation>Bestätigt: {1} von {2} Verbrauchern innerhalb 10 % des Berichteten</translation>
    </message>
    <message>
        <source>Cost a year</source>
        <translation>Kosten im Jahr</translation>
    </message>
    <message>
        <source>Counts</source>
        <translation>Zählt</translation>
    </message>
    <message>
        <source>Curve range</source>
        <translation>Kennlinienbereich</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Dealt with as</source>
        <translation>Behandelt als</translation>
    </message>
    <message>
        <source>Decided by</source>
        <translation>Entschieden von</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Mängel</translation>
    </message>
    <message>
        <source>Deficiency {1}: {2}</source>
        <translation>Mangel {1}: {2}</translation>
    </message>
    <message>
        <source>Design</source>
        <translation>Auslegung</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Armatur</translation>
    </message>
    <message>
        <source>Discharge</source>
        <translation>Druckseite</translation>
    </message>
    <message>
        <source>Dp left across each valve at design flow</source>
        <translation>Verbleibende Δp an jedem Ventil bei Auslegungsdurchfluss</translation>
    </message>
    <message>
        <source>Dp left by read-and-set and by a proportional balance</source>
        <translation>Δp, die Ablesen-Einstellen und proportionaler Abgleich lassen</translation>
    </message>
    <message>
        <source>Dp set-point of the drive</source>
        <translation>Δp-Sollwert des Umrichters</translation>
    </message>
    <message>
        <source>Dp there</source>
        <translation>Δp dort</translation>
    </message>
    <message>
        <source>Draft until signed: nobody has signed this report.</source>
        <translation>Entwurf, bis signiert: Niemand hat diesen Bericht signiert.</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Betriebspunkt</translation>
    </message>
    <message>
        <source>Duty of each pump by round</source>
        <translation>Betriebspunkt jeder Pumpe je Runde</translation>
    </message>
    <message>
        <source>Duty {1} {2} at {3} {4}; {5} % of design.</source>
        <translation>Betriebspunkt {1} {2} bei {3} {4}; {5} % der Auslegung.</translation>
    </message>
    <message>
        <source>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}</source>
        <translation>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}</translation>
    </message>
    <message>
        <source>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}: below the least impeller of {5}, so trimming alone cannot do it</source>
        <translation>D₂ = D₁ · n₂/n₁ = {1} · {2} = {3} {4}: unter dem kleinsten Laufrad von {5}, also reicht Abdrehen allein nicht</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>Electrical</source>
        <translation>Elektrisch</translation>
    </message>
    <message>
        <source>Element</source>
        <translation>Element</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Energy a year</source>
        <translation>Energie im Jahr</translation>
    </message>
    <message>
        <source>Energy code: balancing</source>
        <translation>Energievorschrift: Abgleich</translation>
    </message>
    <message>
        <source>Energy of the slowed pump: its drive holds {1} at the sensor while the flow goes down; the others ride their curves.</source>
        <translation>Energie der verlangsamten Pumpe: Ihr Umrichter hält {1} am Fühler, während der Durchfluss sinkt; die anderen folgen ihren Kennlinien.</translation>
    </message>
    <message>
        <source>Every reading as typed</source>
        <translation>Jede Ablesung wie eingegeben</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Exception</source>
        <translation>Ausnahme</translation>
    </message>
    <message>
        <source>Exceptions</source>
        <translation>Ausnahmen</translation>
    </message>
    <message>
        <source>Excess head</source>
        <translation>Überschüssige Förderhöhe</translation>
    </message>
    <message>
        <source>Excess head and what to do about it</source>
        <translation>Überschüssige Förderhöhe und was damit zu tun ist</translation>
    </message>
    <message>
        <source>Excess power</source>
        <translation>Überschuss an Leistung</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Final round</source>
        <translation>Schlussrunde</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>First cut</source>
        <translation>Erstes Abdrehen</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>Flow before rebalancing</source>
        <translation>Durchfluss vor Abgleich</translation>
    </message>
    <message>
        <source>Flow by curve</source>
        <translation>Durchfluss nach Kennlinie</translation>
    </message>
    <message>
        <source>Flow by every way, and duty</source>
        <translation>Durchfluss nach jedem Verfahren und Betriebspunkt</translation>
    </message>
    <message>
        <source>Flow off</source>
        <translation>Durchflussabweichung</translation>
    </message>
    <message>
        <source>Flow {1} to {2} % of design; share within ± {3} % of the target share</source>
        <translation>Durchfluss {1} bis {2} % der Auslegung; Anteil innerhalb ± {3} % des Sollanteils</translation>
    </message>
    <message>
        <source>Flow {1}, head {2}; readings keep the unit in which they were typed</source>
        <translation>Durchfluss {1}, Förderhöhe {2}; Ablesungen behalten die Einheit, in der sie getippt wurden</translation>
    </message>
    <message>
        <source>Flow, curve</source>
        <translation>Durchfluss, Kennlinie</translation>
    </message>
    <message>
        <source>Flow, read</source>
        <translation>Durchfluss, gemessen</translation>
    </message>
    <message>
        <source>Flow, sum</source>
        <translation>Durchfluss, Summe</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Medium</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>Found by</source>
        <translation>Gefunden durch</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>From the dp across each valve and its table: Q = Kv √(dp / SG), m³/h and bar, or Cv with gpm and psi (IEC 60534-2-1); SG = density over 999.0 kg/m³</source>
        <translation>Aus der Δp an jedem Ventil und seiner Tabelle: Q = Kv √(dp / SG), m³/h und bar, oder Cv mit gpm und psi (IEC 60534-2-1); SG = Dichte durch 999.0 kg/m³</translation>
    </message>
    <message>
        <source>Fully open</source>
        <translation>Ganz offen</translation>
    </message>
    <message>
        <source>Gauge pressure behind each element, in the direction of flow</source>
        <translation>Überdruck hinter jedem Element, in Fließrichtung</translation>
    </message>
    <message>
        <source>Gauge pressure round the circuit, pump on and off</source>
        <translation>Überdruck im Kreis, Pumpe ein und aus</translation>
    </message>
    <message>
        <source>Gauge zero</source>
        <translation>Manometer-Nullpunkt</translation>
    </message>
    <message>
        <source>Gauges and motor readings are for qualified people; lock-out, local codes and the plant&apos;s rules come first. Trimming and drives are for the maker or licensed firms.</source>
        <translation>Manometer- und Motormessungen sind Sache von Fachkräften; Freischaltung, örtliche Vorschriften und Regeln der Anlage gehen vor. Abdrehen und Umrichter sind Sache des Herstellers oder zugelassener Firmen.</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Förderhöhe</translation>
    </message>
    <message>
        <source>Head and its parts</source>
        <translation>Förderhöhe und ihre Bestandteile</translation>
    </message>
    <message>
        <source>Head by the option</source>
        <translation>Förderhöhe der Option</translation>
    </message>
    <message>
        <source>Head off</source>
        <translation>Förderhöhe daneben</translation>
    </message>
    <message>
        <source>Head that the index circuit needs at design flow</source>
        <translation>Förderhöhe, die der Schlechtpunktkreis bei Auslegungsdurchfluss braucht</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Laufrad</translation>
    </message>
    <message>
        <source>Index circuit</source>
        <translation>Schlechtpunktkreis</translation>
    </message>
    <message>
        <source>Index path</source>
        <translation>Schlechtpunktweg</translation>
    </message>
    <message>
        <source>Index terminal {1} has no setting on record: not shown to be fully open</source>
        <translation>Verbraucher am Schlechtpunkt {1} hat keine Einstellung: nicht gezeigt, dass es ganz offen ist</translation>
    </message>
    <message>
        <source>Index valve</source>
        <translation>Schlechtpunktventil</translation>
    </message>
    <message>
        <source>Index valve ended fully open and its dp is readable: the circuit that governs the pump head is not throttled.</source>
        <translation>Das Schlechtpunktventil ist am Ende ganz offen, seine Δp ablesbar: Der Kreis, der die Förderhöhe bestimmt, ist nicht gedrosselt.</translation>
    </message>
    <message>
        <source>Index valve {1} at {2} of {3}: fully open</source>
        <translation>Schlechtpunktventil {1} auf {2} von {3}: ganz offen</translation>
    </message>
    <message>
        <source>Index valve {1} at {2} of {3}: not fully open</source>
        <translation>Schlechtpunktventil {1} auf {2} von {3}: nicht ganz offen</translation>
    </message>
    <message>
        <source>Input power</source>
        <translation>Aufnahmeleistung</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>Keeping it</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Largest minus smallest of target in any group: {1} %</source>
        <translation>Größtes minus kleinstes vom Soll je Gruppe: {1} %</translation>
    </message>
    <message>
        <source>Largest minus smallest of target in any group: {1} %, from {2} % in round {3}</source>
        <translation>Größtes minus kleinstes vom Soll je Gruppe: {1} %, von {2} % in Runde {3}</translation>
    </message>
    <message>
        <source>Least dp</source>
        <translation>Kleinste Δp</translation>
    </message>
    <message>
        <source>Least throttling</source>
        <translation>Geringste Drosselung</translation>
    </message>
    <message>
        <source>Left to throttle</source>
        <translation>Noch zu drosseln</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Tiefster</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>Method, tolerances and instruments</source>
        <translation>Verfahren, Toleranzen und Messgeräte</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Fehlend</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Must hold</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>NPSH available is {1} and required {2}, a margin below {3}; raise the fill pressure or lower the temperature before the pump is damaged</source>
        <translation>NPSH vorhanden ist {1}, nötig {2}, die Reserve unter {3}; erhöhen Sie den Fülldruck oder senken Sie die Temperatur, bevor die Pumpe Schaden nimmt</translation>
    </message>
    <message>
        <source>NPSH required</source>
        <translation>NPSH nötig</translation>
    </message>
    <message>
        <source>NPSH required may rise after a trim; check the margin at the suction again</source>
        <translation>das nötige NPSH kann nach dem Abdrehen steigen; prüfen Sie die Reserve an der Saugseite erneut</translation>
    </message>
    <message>
        <source>NPSH there</source>
        <translation>NPSH vorhanden</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>New setting</source>
        <translation>Neue Einstellung</translation>
    </message>
    <message>
        <source>No branch is on record.</source>
        <translation>Kein Zweig ist eingetragen.</translation>
    </message>
    <message>
        <source>No decision can be made yet; see what is missing below, and enter it.</source>
        <translation>Noch ist keine Entscheidung möglich; sehen Sie unten, was fehlt, und tragen Sie es ein.</translation>
    </message>
    <message>
        <source>No deficiency is on record.</source>
        <translation>Kein Mangel ist eingetragen.</translation>
    </message>
    <message>
        <source>No dp set-point is on record; enter one where a drive follows a dp sensor.</source>
        <translation>Kein Δp-Sollwert ist eingetragen; tragen Sie einen ein, wo ein Umrichter einem Δp-Fühler folgt.</translation>
    </message>
    <message>
        <source>No duty known: pump curve, pump readings or branch flows are missing</source>
        <translation>Betriebspunkt unbekannt: Kennlinie, Pumpenablesungen oder Durchflüsse der Zweige fehlen</translation>
    </message>
    <message>
        <source>No finding, doubtful reading, correction or overdue instrument.</source>
        <translation>Kein Befund, keine fragliche Ablesung, Berichtigung oder überfälliges Messgerät.</translation>
    </message>
    <message>
        <source>No instrument is on record.</source>
        <translation>Kein Messgerät ist eingetragen.</translation>
    </message>
    <message>
        <source>No list of readiness is on record.</source>
        <translation>Keine Liste der Bereitschaft ist eingetragen.</translation>
    </message>
    <message>
        <source>No other</source>
        <translation>Kein anderer</translation>
    </message>
    <message>
        <source>No other terminal is fully open with less of its design flow</source>
        <translation>Kein anderer Verbraucher ist ganz offen mit kleinerem Teil seines Auslegungsdurchflusses</translation>
    </message>
    <message>
        <source>No pump is on record.</source>
        <translation>Keine Pumpe ist eingetragen.</translation>
    </message>
    <message>
        <source>No reading is on record.</source>
        <translation>Keine Ablesung ist eingetragen.</translation>
    </message>
    <message>
        <source>No round of readings has been walked yet</source>
        <translation>Noch wurde keine Runde abgelesen</translation>
    </message>
    <message>
        <source>No witness round is on record.</source>
        <translation>Keine Zeugenrunde ist eingetragen.</translation>
    </message>
    <message>
        <source>No-load A</source>
        <translation>Leerlauf A</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Nobody is on record</source>
        <translation>Niemand ist eingetragen</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>Not confirmed: {1} of {2} terminals within 10 % of what was reported</source>
        <translation>Nicht bestätigt: {1} von {2} Verbrauchern innerhalb 10 % des Berichteten</translation>
    </message>
    <message>
        <source>Not known: not every terminal has been read; design {1} {2}</source>
        <translation>Nicht bekannt: Nicht jeder Verbraucher wurde abgelesen; Auslegung {1} {2}</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Of best flow</source>
        <translation>Vom besten Durchfluss</translation>
    </message>
    <message>
        <source>Of design</source>
        <translation>Von Auslegung</translation>
    </message>
    <message>
        <source>Of design flow</source>
        <translation>Vom Auslegungsdurchfluss</translation>
    </message>
    <message>
        <source>Of target</source>
        <translation>Vom Soll</translation>
    </message>
    <message>
        <source>Of target by round</source>
        <translation>Vom Soll je Runde</translation>
    </message>
    <message>
        <source>Of target by round, in percent</source>
        <translation>Vom Soll je Runde, in Prozent</translation>
    </message>
    <message>
        <source>On share</source>
        <translation>Im Anteil</translation>
    </message>
    <message>
        <source>One-line diagram</source>
        <translation>Strangschema</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Option</translation>
    </message>
    <message>
        <source>Or impeller</source>
        <translation>Oder Laufrad</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Zuständig</translation>
    </message>
    <message>
        <source>Path</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Phases, load and suction</source>
        <translation>Phasen, Last und Saugseite</translation>
    </message>
    <message>
        <source>Pipe before / needs</source>
        <translation>Rohr davor / nötig</translation>
    </message>
    <message>
        <source>Pipe behind / needs</source>
        <translation>Rohr dahinter / nötig</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Pressure along the circuit of {1}</source>
        <translation>Druck entlang des Kreises von {1}</translation>
    </message>
    <message>
        <source>Proportional</source>
        <translation>Proportional</translation>
    </message>
    <message>
        <source>Proportional balance: in each group of branches the one with the lowest flow over design flow is the reference and its valve stays fully open; the others are set to the same proportion, group by group, and the pump then brings the total to design</source>
        <translation>Proportionaler Abgleich: In jeder Gruppe ist der Zweig mit dem kleinsten Verhältnis von Durchfluss zu Auslegungsdurchfluss die Referenz, sein Ventil bleibt ganz offen; die anderen werden auf dasselbe Verhältnis gestellt, Gruppe für Gruppe, und die Pumpe bringt dann die Summe auf Auslegung</translation>
    </message>
    <message>
        <source>Proposed remedy</source>
        <translation>Vorgeschlagene Abhilfe</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>Pump and system</source>
        <translation>Pumpe und Anlage</translation>
    </message>
    <message>
        <source>Pump curve and system curves</source>
        <translation>Pumpenkennlinie und Anlagenkennlinien</translation>
    </message>
    <message>
        <source>Pump off</source>
        <translation>Pumpe aus</translation>
    </message>
    <message>
        <source>Pump on</source>
        <translation>Pumpe ein</translation>
    </message>
    <message>
        <source>Pump test, {1}</source>
        <translation>Pumpentest, {1}</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Abgelesen</translation>
    </message>
    <message>
        <source>Read again</source>
        <translation>Neu abgelesen</translation>
    </message>
    <message>
        <source>Read-and-set</source>
        <translation>Ablesen-Einstellen</translation>
    </message>
    <message>
        <source>Read-and-set against proportional</source>
        <translation>Ablesen-Einstellen gegen proportional</translation>
    </message>
    <message>
        <source>Read-and-set leaves {1} across {2}, a proportional balance with the pump reduced leaves {3}.</source>
        <translation>Ablesen-Einstellen lässt {1} an {2}, ein proportionaler Abgleich mit reduzierter Pumpe lässt {3}.</translation>
    </message>
    <message>
        <source>Readable dp</source>
        <translation>Ablesbare Δp</translation>
    </message>
    <message>
        <source>Readiness before the survey</source>
        <translation>Bereitschaft vor der Aufnahme</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>Readings at branches</source>
        <translation>Ablesungen an Zweigen</translation>
    </message>
    <message>
        <source>Readings at pumps</source>
        <translation>Ablesungen an Pumpen</translation>
    </message>
    <message>
        <source>Readings taken</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Reported</source>
        <translation>Berichtet</translation>
    </message>
    <message>
        <source>Reset</source>
        <translation>Führung</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Rev.</source>
        <translation>Rev.</translation>
    </message>
    <message>
        <source>Review and revisions</source>
        <translation>Prüfung und Revisionen</translation>
    </message>
    <message>
        <source>Reviewed and accepted</source>
        <translation>Geprüft und angenommen</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Anstieg</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Round {1}</source>
        <translation>Runde {1}</translation>
    </message>
    <message>
        <source>Round {1} began before the list was done: {2}</source>
        <translation>Runde {1} begann, bevor die Liste erledigt war: {2}</translation>
    </message>
    <message>
        <source>Round {1} read again what round {2} had reported</source>
        <translation>Runde {1} las neu ab, was Runde {2} berichtet hatte</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Rounds and who decided on them</source>
        <translation>Runden und wer über sie entschied</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Skala</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>Sent by</source>
        <translation>Gesendet von</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Serien-Nr.</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Versorgt</translation>
    </message>
    <message>
        <source>Set-point</source>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>Set-point over flow, sensor {1}</source>
        <translation>Sollwert über Durchfluss, Fühler {1}</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Setting now</source>
        <translation>Einstellung jetzt</translation>
    </message>
    <message>
        <source>Shaft power</source>
        <translation>Wellenleistung</translation>
    </message>
    <message>
        <source>Shaft power by every method the readings allow</source>
        <translation>Wellenleistung nach jedem Verfahren, das die Ablesungen erlauben</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>Anteil</translation>
    </message>
    <message>
        <source>Share: a branch&apos;s flow over the sum of the terminals. Target share: the same of the design flows. Of target: share over target share. Of design: flow over design flow. Spread: largest minus smallest of target in a group.</source>
        <translation>Anteil: Durchfluss eines Zweigs durch die Summe der Verbraucher. Sollanteil: dasselbe mit Auslegungsdurchflüssen. Vom Soll: Anteil durch Sollanteil. Von Auslegung: Durchfluss durch Auslegungsdurchfluss. Streuung: größtes minus kleinstes vom Soll in einer Gruppe.</translation>
    </message>
    <message>
        <source>Shares</source>
        <translation>Anteile</translation>
    </message>
    <message>
        <source>Shares by round</source>
        <translation>Anteile je Runde</translation>
    </message>
    <message>
        <source>Shutoff test</source>
        <translation>Nullförderversuch</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Signatures so far</source>
        <translation>Bisherige Signaturen</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Signiert von</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Slip</source>
        <translation>Schlupf</translation>
    </message>
    <message>
        <source>Solved flow</source>
        <translation>Berechneter Durchfluss</translation>
    </message>
    <message>
        <source>Solved head</source>
        <translation>Berechnete Förderhöhe</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Spread by round: {1}. On share by round: {2} of {3} terminals.</source>
        <translation>Streuung je Runde: {1}. Im Anteil je Runde: {2} von {3} Verbrauchern.</translation>
    </message>
    <message>
        <source>Standard uncertainties, combined as root of squares (JCGM 100:2008) from instrument, its floor, last digit, valve table and setting; a result whose uncertainty spans a limit is called undecidable</source>
        <translation>Standardunsicherheiten, als Wurzel der Quadrate verbunden (JCGM 100:2008), aus Messgerät, seinem Mindestwert, letzter Ziffer, Ventiltabelle und Einstellung; ein Ergebnis, dessen Unsicherheit eine Grenze überspannt, heißt unentscheidbar</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Suction</source>
        <translation>Saugseite</translation>
    </message>
    <message>
        <source>Supply and return are drawn as one pipe. Beside each valve stand its tag, the shape of its state, its percent of target and its setting; the filled part of a valve shows how far it is open. The index circuit is a double line.</source>
        <translation>Vor- und Rücklauf sind als ein Rohr gezeichnet. Neben jedem Ventil stehen Kennung, Zeichen seines Zustands, Prozent vom Soll und Einstellung; der gefüllte Teil eines Ventils zeigt, wie weit es offen ist. Der Schlechtpunktkreis ist eine Doppellinie.</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>That is {1} from {2} rpm</source>
        <translation>Das sind {1} statt {2} 1/min</translation>
    </message>
    <message>
        <source>The duty is not known, so the figure shows what is on record.</source>
        <translation>Der Betriebspunkt ist unbekannt, darum zeigt das Bild, was eingetragen ist.</translation>
    </message>
    <message>
        <source>The index circuit from the pump outward</source>
        <translation>Der Schlechtpunktkreis von der Pumpe nach außen</translation>
    </message>
    <message>
        <source>The index circuit is not known from these readings</source>
        <translation>Der Schlechtpunktkreis ist aus diesen Ablesungen nicht bekannt</translation>
    </message>
    <message>
        <source>The loop in the final round</source>
        <translation>Der Kreislauf in der Schlussrunde</translation>
    </message>
    <message>
        <source>The same options, each confirmed by a solve of the whole loop</source>
        <translation>Dieselben Optionen, jede durch Berechnen des ganzen Kreislaufs bestätigt</translation>
    </message>
    <message>
        <source>The sample holds the index terminal and those with the highest and the lowest of design, at least one of every group, and others drawn by chance with the seed {1}; the same seed gives the same sample. Confirmed: at most one in ten deviates by more than 10 % (common practice).</source>
        <translation>Die Stichprobe enthält den Verbraucher am Schlechtpunkt und die mit dem höchsten und kleinsten Wert von Auslegung, mindestens einen jeder Gruppe und weitere, mit der Startzahl {1} zufällig gezogen; dieselbe Startzahl gibt dieselbe Stichprobe. Bestätigt: höchstens einer von zehn weicht um mehr als 10 % ab (übliche Praxis).</translation>
    </message>
    <message>
        <source>The unit of {1} stands at {2} with the pump on and at {3} with it off.</source>
        <translation>Am Gerät von {1} liegen {2} mit Pumpe, {3} ohne.</translation>
    </message>
    <message>
        <source>This is revision {1}; it supersedes revision {2}.</source>
        <translation>Dies ist Revision {1}; sie ersetzt Revision {2}.</translation>
    </message>
    <message>
        <source>This is revision {1}; nothing was signed before.</source>
        <translation>Dies ist Revision {1}; davor wurde nichts signiert.</translation>
    </message>
    <message>
        <source>This report states what was read with the instruments listed, on the dates shown, and what follows from it by the method of section {1}. It says nothing of plant that was not measured.</source>
        <translation>Dieser Bericht gibt an, was mit den genannten Messgeräten an den gezeigten Tagen abgelesen wurde und was daraus nach dem Verfahren in Abschnitt {1} folgt. Über nicht gemessene Anlagenteile sagt er nichts.</translation>
    </message>
    <message>
        <source>This test is no legal advice; the authority having jurisdiction decides.</source>
        <translation>Diese Prüfung ist keine Rechtsberatung; die zuständige Behörde entscheidet.</translation>
    </message>
    <message>
        <source>Throttle</source>
        <translation>Drosselung</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Tolerances</source>
        <translation>Toleranzen</translation>
    </message>
    <message>
        <source>Total flow</source>
        <translation>Gesamtdurchfluss</translation>
    </message>
    <message>
        <source>Total head</source>
        <translation>Gesamtförderhöhe</translation>
    </message>
    <message>
        <source>Total head = pressure + gauge zero + elevation + velocity head, in the flowing fluid. Flow that counts: meter, else sum of the terminals, else curve.</source>
        <translation>Gesamtförderhöhe = Druck + Nullpunkt + Höhe + Geschwindigkeitshöhe, im fließenden Medium. Es zählt der Durchfluss nach Messgerät, sonst Summe der Verbraucher, sonst Kennlinie.</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Gewerk</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Unfinished: {1} of {2} terminals not read again</source>
        <translation>Unvollendet: {1} von {2} Verbrauchern nicht neu abgelesen</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>V imbalance</source>
        <translation>V-Unsymmetrie</translation>
    </message>
    <message>
        <source>V of plate</source>
        <translation>V vom Schild</translation>
    </message>
    <message>
        <source>V, A, PF</source>
        <translation>V, A, cos φ</translation>
    </message>
    <message>
        <source>Valve on return, pump on</source>
        <translation>Ventil im Rücklauf, Pumpe ein</translation>
    </message>
    <message>
        <source>Valve on supply, pump on</source>
        <translation>Ventil im Vorlauf, Pumpe ein</translation>
    </message>
    <message>
        <source>Velocity</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Wasted</source>
        <translation>Vergeudet</translation>
    </message>
    <message>
        <source>Water at {1}, density {2} kg/m³</source>
        <translation>Wasser bei {1}, Dichte {2} kg/m³</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>What a reader should know</source>
        <translation>Was man beim Lesen wissen sollte</translation>
    </message>
    <message>
        <source>What is missing</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>What is wrong, what follows</source>
        <translation>Was falsch ist, was folgt</translation>
    </message>
    <message>
        <source>What must hold before a survey</source>
        <translation>Was vor einer Aufnahme gelten muss</translation>
    </message>
    <message>
        <source>What the balancer cannot mend</source>
        <translation>Was die Einregulierung nicht beheben kann</translation>
    </message>
    <message>
        <source>What the change does</source>
        <translation>Was die Änderung bewirkt</translation>
    </message>
    <message>
        <source>Wire to water</source>
        <translation>Gesamtwirkungsgrad</translation>
    </message>
    <message>
        <source>Within 10 %</source>
        <translation>Innerhalb 10 %</translation>
    </message>
    <message>
        <source>Within limits</source>
        <translation>Innerhalb der Grenzen</translation>
    </message>
    <message>
        <source>Witness sample</source>
        <translation>Zeugenstichprobe</translation>
    </message>
    <message>
        <source>Zero</source>
        <translation>Null</translation>
    </message>
    <message>
        <source>Zero check</source>
        <translation>Nullprüfung</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; can be read two ways; write it without a thousands mark and with a point</source>
        <translation>„{1}“ kann auf zwei Arten gelesen werden; schreiben Sie es ohne Tausenderzeichen und mit Punkt</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; cannot be read as a picture; choose a JPEG or PNG file</source>
        <translation>„{1}“ ist nicht als Bild lesbar; wählen Sie eine JPEG- oder PNG-Datei</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; differs from the first row of this valve, which says &quot;{2}&quot;; make them alike</source>
        <translation>„{1}“ weicht von der ersten Zeile dieses Ventils ab, die „{2}“ sagt; machen Sie beide gleich</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; does not name a practice building; open the job with the version that made it</source>
        <translation>„{1}“ bezeichnet kein Übungsgebäude; öffnen Sie den Auftrag mit der Version, die ihn anlegte</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; has more than 15 digits; shorten it to what was read</source>
        <translation>„{1}“ hat mehr als 15 Ziffern; kürzen Sie es auf das Abgelesene</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is empty or the tag of another pump; type another tag</source>
        <translation>„{1}“ ist leer oder die Kennung einer anderen Pumpe; tippen Sie eine andere Kennung</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a date or time; write it as 2026-03-04 or 2026-03-04T14:02</source>
        <translation>„{1}“ ist weder Datum noch Zeit; schreiben Sie es als 2026-03-04 oder 2026-03-04T14:02</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a date; write it as 2027-03-31</source>
        <translation>„{1}“ ist kein Datum; schreiben Sie es als 2027-03-31</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a number; use digits with one point or comma</source>
        <translation>„{1}“ ist keine Zahl; nehmen Sie Ziffern mit einem Punkt oder Komma</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit that the column &quot;{2}&quot; can have; use one of {3}</source>
        <translation>„{1}“ ist keine Einheit für die Spalte „{2}“; nehmen Sie eine von {3}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a whole number from 1 to {2}; correct it</source>
        <translation>„{1}“ ist keine ganze Zahl von 1 bis {2}; berichtigen Sie sie</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not among the people of this job as supervisor or engineer; give the role on the place Job</source>
        <translation>„{1}“ ist unter den Personen dieses Auftrags nicht als Leitung oder Ingenieur; geben Sie die Rolle im Bereich Auftrag an</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not known here; use one of {2}</source>
        <translation>„{1}“ ist hier nicht bekannt; nehmen Sie eines von {2}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not known; write it as in {2}, or add it there</source>
        <translation>„{1}“ ist nicht bekannt; schreiben Sie es wie in {2}, oder fügen Sie es dort hinzu</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; lets a survey begin before the loop is ready, but no supervisor or engineer of this job says so; write name, colon, reason</source>
        <translation>„{1}“ lässt eine Aufnahme beginnen, bevor der Kreislauf bereit ist, aber weder Leitung noch Ingenieur dieses Auftrags sagt das; schreiben Sie Name, Doppelpunkt, Grund</translation>
    </message>
    <message>
        <source>a balance by hand valves is right at one flow only: when far circuits close, near ones take less than design; let the control valves do the rest and hold as little dp as the worst circuit needs</source>
        <translation>ein Abgleich mit Handventilen stimmt nur bei einem Durchfluss: Schließen ferne Kreise, erhalten nahe weniger als Auslegung; lassen Sie die Regelventile den Rest tun und halten Sie so wenig Δp, wie der Schlechtpunktkreis braucht</translation>
    </message>
    <message>
        <source>a branch needs a tag; type one, such as B-05</source>
        <translation>ein Zweig braucht eine Kennung; tippen Sie eine, etwa B-05</translation>
    </message>
    <message>
        <source>a branch to be changed is not in the job; choose one of its branches</source>
        <translation>ein zu ändernder Zweig ist nicht im Auftrag; wählen Sie einen seiner Zweige</translation>
    </message>
    <message>
        <source>a branch without branches of its own needs its design flow; give it</source>
        <translation>ein Zweig ohne eigene Zweige braucht seinen Auslegungsdurchfluss; geben Sie ihn an</translation>
    </message>
    <message>
        <source>a certificate needs a name of 1 to 64 characters; type the name of the person</source>
        <translation>ein Zertifikat braucht einen Namen von 1 bis 64 Zeichen; tippen Sie den Namen der Person</translation>
    </message>
    <message>
        <source>a change was interrupted and must be taken back before reading, but the folder cannot be written; copy the file and the one ending in -journal to a place of your own and open it there</source>
        <translation>eine Änderung wurde unterbrochen und muss vor dem Lesen zurückgenommen werden, aber der Ordner ist nicht beschreibbar; kopieren Sie die Datei und die mit der Endung -journal an einen eigenen Ort und öffnen Sie sie dort</translation>
    </message>
    <message>
        <source>a closed-valve dp was read where the valve is open; record it at the setting it was read at</source>
        <translation>eine Δp bei geschlossenem Ventil wurde dort gelesen, wo das Ventil offen ist; tragen Sie sie bei der abgelesenen Einstellung ein</translation>
    </message>
    <message>
        <source>a comment stays as it was written; write an answer to it instead</source>
        <translation>ein Kommentar bleibt, wie er geschrieben wurde; schreiben Sie stattdessen eine Antwort</translation>
    </message>
    <message>
        <source>a comment without words says nothing; write it</source>
        <translation>ein Kommentar ohne Worte sagt nichts; schreiben Sie ihn</translation>
    </message>
    <message>
        <source>a dp is given for a branch whose valve has no table; give its valve in branches.csv</source>
        <translation>für einen Zweig, dessen Ventil keine Tabelle hat, ist eine Δp angegeben; geben Sie sein Ventil in branches.csv an</translation>
    </message>
    <message>
        <source>a dp was read, but no usable valve table is known; give the valve&apos;s table or the flow</source>
        <translation>eine Δp wurde abgelesen, aber keine brauchbare Ventiltabelle ist bekannt; geben Sie die Tabelle des Ventils oder den Durchfluss an</translation>
    </message>
    <message>
        <source>a drive feeds the motor, so volts and amps behind it are no measure of power; read the power on the drive&apos;s display</source>
        <translation>ein Umrichter speist den Motor, also sind Spannung und Strom dahinter kein Maß der Leistung; lesen Sie die Leistung am Umrichter ab</translation>
    </message>
    <message>
        <source>a file of this name is there already; choose another name</source>
        <translation>eine Datei dieses Namens gibt es schon; wählen Sie einen anderen Namen</translation>
    </message>
    <message>
        <source>a file stands at {1} and is not overwritten; give the key another name</source>
        <translation>eine Datei liegt in {1} und wird nicht überschrieben; geben Sie dem Schlüssel einen anderen Namen</translation>
    </message>
    <message>
        <source>a flow of {1} was typed in although its valve has a table; read its dp, or give the reason</source>
        <translation>ein Durchfluss von {1} wurde eingetippt, obwohl sein Ventil eine Tabelle hat; lesen Sie dessen Δp ab oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>a flow or the dp of an open valve was read where the valve is shut; record it as a closed-valve reading</source>
        <translation>ein Durchfluss oder die Δp eines offenen Ventils wurde dort abgelesen, wo das Ventil zu ist; tragen Sie es als Ablesung bei geschlossenem Ventil ein</translation>
    </message>
    <message>
        <source>a job needs a name; type one</source>
        <translation>ein Auftrag braucht einen Namen; tippen Sie einen</translation>
    </message>
    <message>
        <source>a key with a self-made certificate is in {1}; keep its passphrase, nobody can find it</source>
        <translation>ein Schlüssel mit selbst erstelltem Zertifikat liegt in {1}; bewahren Sie seine Passphrase auf, niemand kann sie finden</translation>
    </message>
    <message>
        <source>a later revision changed more than its own signature ({1}); do not rely on this file, ask for it again</source>
        <translation>eine spätere Revision änderte mehr als ihre eigene Signatur ({1}); verlassen Sie sich nicht auf diese Datei, fordern Sie sie neu an</translation>
    </message>
    <message>
        <source>a line of readiness has no words; type them, or remove the line</source>
        <translation>eine Zeile der Bereitschaft hat keine Worte; tippen Sie sie oder entfernen Sie die Zeile</translation>
    </message>
    <message>
        <source>a name is missing; type one, or press Esc</source>
        <translation>ein Name fehlt; tippen Sie einen oder drücken Sie Esc</translation>
    </message>
    <message>
        <source>a quotation mark is opened and never closed; add the closing one</source>
        <translation>ein Anführungszeichen wird geöffnet und nie geschlossen; fügen Sie das schließende hinzu</translation>
    </message>
    <message>
        <source>a reading at setting {1} is outside the valve&apos;s table and is left out of the learning; correct the setting</source>
        <translation>eine Ablesung bei Einstellung {1} liegt außerhalb der Ventiltabelle und bleibt beim Lernen weg; berichtigen Sie die Einstellung</translation>
    </message>
    <message>
        <source>a reading of this valve does not fit the others; read it again as it stands</source>
        <translation>eine Ablesung dieses Ventils passt nicht zu den anderen; lesen Sie es neu ab, wie es steht</translation>
    </message>
    <message>
        <source>a round read at the settings that stand has every share within the band; nothing is left to turn</source>
        <translation>in einer Runde bei den stehenden Einstellungen liegt jeder Anteil im Band; nichts bleibt zu drehen</translation>
    </message>
    <message>
        <source>a row needs {1}; type it, or take the whole row out with its button</source>
        <translation>eine Zeile braucht {1}; tippen Sie es, oder nehmen Sie die ganze Zeile mit ihrem Knopf heraus</translation>
    </message>
    <message>
        <source>a row without setting stands for a valve that has a range of dp and no table, and this valve has more rows; give setting and coefficient in each or take the row out</source>
        <translation>eine Zeile ohne Einstellung steht für ein Ventil mit Δp-Bereich und ohne Tabelle, und dieses Ventil hat mehr Zeilen; geben Sie in jeder Einstellung und Beiwert an oder nehmen Sie die Zeile heraus</translation>
    </message>
    <message>
        <source>a setting is given but no valve with a table; give valve_model and valve_size</source>
        <translation>eine Einstellung ist angegeben, aber kein Ventil mit Tabelle; geben Sie valve_model und valve_size an</translation>
    </message>
    <message>
        <source>a signature that was there has been taken out; do not rely on this file, ask for it again</source>
        <translation>eine vorhandene Signatur wurde herausgenommen; verlassen Sie sich nicht auf diese Datei, fordern Sie sie neu an</translation>
    </message>
    <message>
        <source>a signed report stands there and would be lost; give the report another name</source>
        <translation>dort liegt ein signierter Bericht und ginge verloren; geben Sie dem Bericht einen anderen Namen</translation>
    </message>
    <message>
        <source>a sound copy of this job lies beside it, with {1} records, the newest of {2}; open that one</source>
        <translation>eine heile Kopie dieses Auftrags liegt daneben, mit {1} Einträgen, der neueste vom {2}; öffnen Sie diese</translation>
    </message>
    <message>
        <source>a trim cannot be taken back; make sure that no more circuits will be added, and let the pump&apos;s maker or a licensed shop do it</source>
        <translation>Abdrehen lässt sich nicht zurücknehmen; stellen Sie sicher, dass keine Kreise hinzukommen, und lassen Sie es den Pumpenhersteller oder eine zugelassene Werkstatt tun</translation>
    </message>
    <message>
        <source>a whole copy is at {1}; work goes on in the first file</source>
        <translation>eine ganze Kopie liegt in {1}; die Arbeit geht in der ersten Datei weiter</translation>
    </message>
    <message>
        <source>a workbook cannot be copied onto itself; choose another name</source>
        <translation>eine Arbeitsmappe kann nicht auf sich selbst kopiert werden; wählen Sie einen anderen Namen</translation>
    </message>
    <message>
        <source>a workbook cannot be merged with itself; choose the copy that the other laptop worked in</source>
        <translation>eine Arbeitsmappe kann nicht mit sich selbst zusammengeführt werden; wählen Sie die Kopie des anderen Laptops</translation>
    </message>
    <message>
        <source>a workbook holds exactly one job; change the one that is there</source>
        <translation>eine Arbeitsmappe enthält genau einen Auftrag; ändern Sie den vorhandenen</translation>
    </message>
    <message>
        <source>a workbook stands there and would be lost; give the output another name</source>
        <translation>dort liegt eine Arbeitsmappe und ginge verloren; geben Sie der Ausgabe einen anderen Namen</translation>
    </message>
    <message>
        <source>advice, unverified: no round has confirmed these settings; set them, then read every valve once more</source>
        <translation>Rat, nicht geprüft: Keine Runde hat diese Einstellungen bestätigt; stellen Sie sie ein und lesen Sie dann jedes Ventil noch einmal ab</translation>
    </message>
    <message>
        <source>all is stored, with the last reading, in {1}; work goes on there</source>
        <translation>alles ist gespeichert, mit der letzten Ablesung, in {1}; die Arbeit geht dort weiter</translation>
    </message>
    <message>
        <source>amps were read without volts, so no power follows from them; read the volts between the phases</source>
        <translation>Ströme wurden ohne Spannungen abgelesen, daraus folgt keine Leistung; lesen Sie die Spannungen zwischen den Phasen ab</translation>
    </message>
    <message>
        <source>an unknown time</source>
        <translation>eine unbekannte Zeit</translation>
    </message>
    <message>
        <source>an unreadable certificate</source>
        <translation>ein unlesbares Zertifikat</translation>
    </message>
    <message>
        <source>another program keeps the file locked; close that program and try again</source>
        <translation>ein anderes Programm hält die Datei gesperrt; schließen Sie es und versuchen Sie es erneut</translation>
    </message>
    <message>
        <source>at</source>
        <translation>um</translation>
    </message>
    <message>
        <source>at the new design flow the pump makes {1} at full speed and {2} are needed; a larger impeller or pump is needed, ask its maker</source>
        <translation>beim neuen Auslegungsdurchfluss erzeugt die Pumpe {1} bei voller Drehzahl, nötig sind {2}; ein größeres Laufrad oder eine größere Pumpe ist nötig, fragen Sie den Hersteller</translation>
    </message>
    <message>
        <source>at this set-point the index circuit takes {1} % of design flow, outside {2} to {3} %; correct the set-point</source>
        <translation>bei diesem Sollwert erhält der Schlechtpunktkreis {1} % des Auslegungsdurchflusses, außerhalb {2} bis {3} %; berichtigen Sie den Sollwert</translation>
    </message>
    <message>
        <source>before rebalancing this terminal would take {1} % of design flow; tell its users until it is balanced</source>
        <translation>vor neuem Abgleich erhielte dieser Verbraucher {1} % des Auslegungsdurchflusses; sagen Sie es den Nutzern, bis abgeglichen ist</translation>
    </message>
    <message>
        <source>both values cannot stand here; choose one of them</source>
        <translation>beide Werte können hier nicht stehen; wählen Sie einen davon</translation>
    </message>
    <message>
        <source>branches nearer to the limit of their share than they can be read: {1} ({2}); bring them nearer to target or read more accurately</source>
        <translation>Zweige, die näher an der Grenze ihres Anteils liegen, als man ablesen kann: {1} ({2}); bringen Sie sie näher ans Soll oder lesen Sie genauer ab</translation>
    </message>
    <message>
        <source>branches whose share is not known because a flow is missing: {1} ({2}); complete the readings</source>
        <translation>Zweige, deren Anteil unbekannt ist, weil ein Durchfluss fehlt: {1} ({2}); vervollständigen Sie die Ablesungen</translation>
    </message>
    <message>
        <source>by its table the pump takes {1} at shutoff and {2} at best efficiency; do not make a shutoff test without the maker&apos;s word</source>
        <translation>nach ihrer Tabelle nimmt die Pumpe {1} bei Nullförderung auf und {2} im Bestpunkt; machen Sie keinen Nullförderversuch ohne Zusage des Herstellers</translation>
    </message>
    <message>
        <source>c  corrected, see section {1}</source>
        <translation>c  berichtigt, siehe Abschnitt {1}</translation>
    </message>
    <message>
        <source>can be kept as a new revision of the job; the former stays in the history</source>
        <translation>kann als neue Revision des Auftrags behalten werden; die frühere bleibt im Verlauf</translation>
    </message>
    <message>
        <source>cannot be kept in this job; the reason stands below</source>
        <translation>kann in diesem Auftrag nicht behalten werden; der Grund steht unten</translation>
    </message>
    <message>
        <source>close the discharge valve slowly, never the suction valve; read both gauges within a minute, and open it again at once: the water in a pump that runs shut heats up</source>
        <translation>schließen Sie langsam das Drosselventil, nie das Saugventil; lesen Sie beide Manometer binnen einer Minute ab und öffnen Sie sofort wieder: Das Wasser in einer geschlossen laufenden Pumpe erhitzt sich</translation>
    </message>
    <message>
        <source>comments that are not resolved: {1}, the first is &quot;{2}&quot;; answer and resolve them, the report cannot be signed before</source>
        <translation>nicht erledigte Kommentare: {1}, der erste ist „{2}“; beantworten und erledigen Sie sie, vorher kann der Bericht nicht signiert werden</translation>
    </message>
    <message>
        <source>content</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>could not be read: {1}</source>
        <translation>nicht ablesbar: {1}</translation>
    </message>
    <message>
        <source>could not be read: {1} of {2} terminals ({3}); find another way to measure them</source>
        <translation>nicht ablesbar: {1} von {2} Verbrauchern ({3}); messen Sie sie auf anderem Weg</translation>
    </message>
    <message>
        <source>could not be read; give the reason</source>
        <translation>nicht ablesbar; geben Sie den Grund an</translation>
    </message>
    <message>
        <source>deficiencies that the report lists: {1}, of these open: {2}</source>
        <translation>Mängel, die der Bericht nennt: {1}, davon offen: {2}</translation>
    </message>
    <message>
        <source>design flow lies beyond the last point of the pump&apos;s curve at {1}; get the maker&apos;s curve for this flow, no number is computed there</source>
        <translation>Auslegungsdurchfluss liegt hinter dem letzten Punkt der Kennlinie bei {1}; holen Sie die Kennlinie des Herstellers für diesen Durchfluss, dort wird nichts berechnet</translation>
    </message>
    <message>
        <source>doubtful readings: {1} ({2}); read again or give the reasons</source>
        <translation>fragliche Ablesungen: {1} ({2}); lesen Sie neu ab oder geben Sie die Gründe an</translation>
    </message>
    <message>
        <source>dp as typed</source>
        <translation>Δp wie eingegeben</translation>
    </message>
    <message>
        <source>dp {1} at {2} is below the readable minimum of {3}</source>
        <translation>Δp {1} an {2} liegt unter dem ablesbaren Mindestwert {3}</translation>
    </message>
    <message>
        <source>dp {1} at {2}, not below the readable minimum of {3}</source>
        <translation>Δp {1} an {2}, nicht unter dem ablesbaren Mindestwert {3}</translation>
    </message>
    <message>
        <source>due {1} is before calibrated {2}; correct one of the dates</source>
        <translation>fällig {1} liegt vor kalibriert {2}; berichtigen Sie eines der Daten</translation>
    </message>
    <message>
        <source>e  reading of an earlier round</source>
        <translation>e  Ablesung einer früheren Runde</translation>
    </message>
    <message>
        <source>edition and clause are not entered; enter them</source>
        <translation>Ausgabe und Abschnitt sind nicht eingetragen; tragen Sie sie ein</translation>
    </message>
    <message>
        <source>every comment is resolved</source>
        <translation>jeder Kommentar ist erledigt</translation>
    </message>
    <message>
        <source>every valve of the working order is held; close this round and read all again (Ctrl+Shift+W)</source>
        <translation>jedes Ventil der Arbeitsfolge ist gehalten; schließen Sie diese Runde und lesen Sie alle neu ab (Strg+Umschalt+W)</translation>
    </message>
    <message>
        <source>exception claimed: {1}; keep its proof</source>
        <translation>beanspruchte Ausnahme: {1}; bewahren Sie ihren Beleg auf</translation>
    </message>
    <message>
        <source>excess power = Q rho g (H1/eta1 - H2/eta2) with Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; limit = the greater of {6} % of the plate and {7}</source>
        <translation>Überschuss an Leistung = Q rho g (H1/eta1 - H2/eta2) mit Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; Grenze = das Größere aus {6} % des Schilds und {7}</translation>
    </message>
    <message>
        <source>excess power = Q rho g (H1/eta1 - H2/eta2) with Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; limit = {6} % of the plate</source>
        <translation>Überschuss an Leistung = Q rho g (H1/eta1 - H2/eta2) mit Q = {1}, H1 = {2}, H2 = {3}, eta1 = {4} %, eta2 = {5} %; Grenze = {6} % des Schilds</translation>
    </message>
    <message>
        <source>f  flow read directly</source>
        <translation>f  Durchfluss direkt gemessen</translation>
    </message>
    <message>
        <source>flow {1} stands twice in the pump curve; keep one row</source>
        <translation>Durchfluss {1} steht zweimal in der Kennlinie; behalten Sie eine Zeile</translation>
    </message>
    <message>
        <source>flow, head and power would mean an efficiency of {1} %; check the power reading, the gauges and the flow</source>
        <translation>Durchfluss, Förderhöhe und Leistung ergäben einen Wirkungsgrad von {1} %; prüfen Sie Leistungsmessung, Manometer und Durchfluss</translation>
    </message>
    <message>
        <source>gauges differ by {1} with the pump off</source>
        <translation>Manometer weichen bei stehender Pumpe um {1} ab</translation>
    </message>
    <message>
        <source>in table {1} the value of {2} cannot be read; another program changed it, open a copy from before</source>
        <translation>in Tabelle {1} ist der Wert von {2} nicht lesbar; ein anderes Programm hat ihn geändert, öffnen Sie eine frühere Kopie</translation>
    </message>
    <message>
        <source>it has no valve to set and will take {1} % of target; fit a balancing valve, or accept what it takes</source>
        <translation>er hat kein einstellbares Ventil und wird {1} % vom Soll nehmen; bauen Sie ein Strangregulierventil ein, oder nehmen Sie es hin</translation>
    </message>
    <message>
        <source>it is not recorded whether the device stands on supply or return; look and enter it</source>
        <translation>es ist nicht eingetragen, ob die Armatur im Vor- oder Rücklauf sitzt; sehen Sie nach und tragen Sie es ein</translation>
    </message>
    <message>
        <source>it is the reference and was read before the valve of {1} was moved; read it again</source>
        <translation>sie ist die Referenz und wurde abgelesen, bevor das Ventil von {1} bewegt wurde; lesen Sie sie neu ab</translation>
    </message>
    <message>
        <source>it is the reference of its group and its valve stands at {1} of {2}; open it fully and match the others to it</source>
        <translation>sie ist die Referenz ihrer Gruppe und ihr Ventil steht auf {1} von {2}; öffnen Sie es ganz und gleichen Sie die anderen daran ab</translation>
    </message>
    <message>
        <source>it is the reference of its group and stands at {1}; open it fully to {2}</source>
        <translation>sie ist die Referenz ihrer Gruppe und steht auf {1}; öffnen Sie sie ganz bis {2}</translation>
    </message>
    <message>
        <source>it keeps its flow by itself and is left out of matching; check that its dp stays within its range</source>
        <translation>er hält seinen Durchfluss selbst und bleibt beim Abgleichen weg; prüfen Sie, dass seine Δp in ihrem Bereich bleibt</translation>
    </message>
    <message>
        <source>it keeps its flow by itself and is left out of the proportion of the group {1}; verify its dp range instead</source>
        <translation>er hält seinen Durchfluss selbst und bleibt aus dem Verhältnis der Gruppe {1}; prüfen Sie stattdessen seinen Δp-Bereich</translation>
    </message>
    <message>
        <source>it lies beyond all valves that were moved and changed by {1} % against the others there, in round {2} they kept step; look for air, a limiter or a moving control valve</source>
        <translation>er liegt hinter allen bewegten Ventilen und änderte sich um {1} % gegen die anderen dort, in Runde {2} blieben sie im Gleichschritt; suchen Sie Luft, einen Begrenzer oder ein bewegtes Regelventil</translation>
    </message>
    <message>
        <source>it may be made, by somebody who knows this plant; read the following first</source>
        <translation>er darf gemacht werden, von jemandem, der diese Anlage kennt; lesen Sie erst das Folgende</translation>
    </message>
    <message>
        <source>it must not be made on this pump; the following says why</source>
        <translation>er darf an dieser Pumpe nicht gemacht werden; das Folgende sagt, warum</translation>
    </message>
    <message>
        <source>it takes {1} % of target, the most of what is left to set; turn it from {2} to {3}</source>
        <translation>er nimmt {1} % vom Soll, am meisten von allen noch einzustellenden; drehen Sie von {2} auf {3}</translation>
    </message>
    <message>
        <source>it was read again with the same instrument {1}; use another one, or take its zero anew and give the reason</source>
        <translation>es wurde mit demselben Messgerät {1} neu abgelesen; nehmen Sie ein anderes, oder nullen Sie es neu und geben Sie den Grund an</translation>
    </message>
    <message>
        <source>it was read before the speed of pump {1} was changed in this final round; read it again, final readings come last</source>
        <translation>er wurde abgelesen, bevor die Drehzahl von Pumpe {1} in dieser Schlussrunde geändert wurde; lesen Sie neu ab, Schlussablesungen kommen zuletzt</translation>
    </message>
    <message>
        <source>it was read before the valve of {1} was moved in this final round; read it again, final readings come last</source>
        <translation>er wurde abgelesen, bevor das Ventil von {1} in dieser Schlussrunde bewegt wurde; lesen Sie neu ab, Schlussablesungen kommen zuletzt</translation>
    </message>
    <message>
        <source>its design flow is not known; enter it in System</source>
        <translation>sein Auslegungsdurchfluss ist unbekannt; tragen Sie ihn in Anlage ein</translation>
    </message>
    <message>
        <source>its design flow is {1}, those below it add up to {2}, {3} % apart; correct the schedule or state the diversity</source>
        <translation>sein Auslegungsdurchfluss ist {1}, die dahinter ergeben {2}, {3} % Unterschied; berichtigen Sie die Liste oder geben Sie die Gleichzeitigkeit an</translation>
    </message>
    <message>
        <source>its flow rose from {1} to {2} when nothing but its own valve was closed, which cannot be; read both again</source>
        <translation>sein Durchfluss stieg von {1} auf {2}, als nur sein eigenes Ventil geschlossen wurde, was nicht sein kann; lesen Sie beides neu ab</translation>
    </message>
    <message>
        <source>its own reading gives {1}, those below it add up to {2}, {3} times the uncertainty of the difference; read again and look for a branch that is missing</source>
        <translation>seine eigene Ablesung ergibt {1}, die dahinter ergeben {2}, das {3}-fache der Unsicherheit des Unterschieds; lesen Sie neu ab und suchen Sie einen fehlenden Zweig</translation>
    </message>
    <message>
        <source>its reading is dated {1}, before round {2} ended at {3}; check the clock and correct the time</source>
        <translation>seine Ablesung trägt das Datum {1}, bevor Runde {2} um {3} endete; prüfen Sie die Uhr und berichtigen Sie die Zeit</translation>
    </message>
    <message>
        <source>its share cannot be promised within {1} % yet, the standard uncertainty is {2} %; take the reading named as most helpful</source>
        <translation>sein Anteil ist noch nicht auf {1} % zugesagt, die Standardunsicherheit ist {2} %; nehmen Sie die als am hilfreichsten genannte Ablesung vor</translation>
    </message>
    <message>
        <source>its valve has not been read; read its dp as it stands</source>
        <translation>sein Ventil wurde nicht abgelesen; lesen Sie seine Δp ab, wie es steht</translation>
    </message>
    <message>
        <source>its valve makes only {1} at this flow, below the {2} that can be read; use a smaller valve or measure another way</source>
        <translation>sein Ventil erzeugt bei diesem Durchfluss nur {1}, unter den ablesbaren {2}; nehmen Sie ein kleineres Ventil oder messen Sie anders</translation>
    </message>
    <message>
        <source>its valve stands at {1} of {2}, where its table is least accurate and it may be noisy; consider a smaller valve or less excess head</source>
        <translation>sein Ventil steht auf {1} von {2}, wo seine Tabelle am ungenauesten ist und es rauschen kann; erwägen Sie ein kleineres Ventil oder weniger überschüssige Förderhöhe</translation>
    </message>
    <message>
        <source>its valve&apos;s table ends at {1} before it takes enough, it will take {2} % of target; throttle it at another place or fit a smaller valve</source>
        <translation>die Tabelle seines Ventils endet bei {1}, bevor er genug nimmt, er wird {2} % vom Soll nehmen; drosseln Sie an anderer Stelle oder bauen Sie ein kleineres Ventil ein</translation>
    </message>
    <message>
        <source>its zero moved by {1} in the course of the day, more than half of the {2} that can just be read with it; take a new zero and read the low dps again</source>
        <translation>sein Nullpunkt wanderte im Lauf des Tages um {1}, mehr als die Hälfte der eben ablesbaren {2}; nullen Sie neu und lesen Sie die kleinen Δp neu ab</translation>
    </message>
    <message>
        <source>lines of the list still stand in the way: {1}; settle them, or give the reason</source>
        <translation>Zeilen der Liste stehen noch im Weg: {1}; erledigen Sie sie oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>losses of {1} branch(es) are restated at their new design flows by the square law, since they are the same pipes; keep the designer&apos;s figures with the former revision</source>
        <translation>Verluste nach dem Quadratgesetz auf die neuen Auslegungsdurchflüsse umgerechnet, da es dieselben Rohre sind, Zweige: {1}; bewahren Sie die Zahlen des Planers bei der früheren Revision auf</translation>
    </message>
    <message>
        <source>makes {1} at full speed where {2} are needed</source>
        <translation>erzeugt {1} bei voller Drehzahl, nötig sind {2}</translation>
    </message>
    <message>
        <source>makes {1} at full speed where {2} are needed: enough at {3} % of speed</source>
        <translation>erzeugt {1} bei voller Drehzahl, nötig sind {2}: genug bei {3} % Drehzahl</translation>
    </message>
    <message>
        <source>mandatory lines of readiness that are open: {1}, the first is &quot;{2}&quot;; see to them, or have a supervisor say why the survey may begin</source>
        <translation>offene Pflichtzeilen der Bereitschaft: {1}, die erste ist „{2}“; erledigen Sie sie, oder lassen Sie die Leitung sagen, warum die Aufnahme beginnen darf</translation>
    </message>
    <message>
        <source>mandatory lines of readiness that are still open: {1}, the first is &quot;{2}&quot;; see to them or give the reason, the report cannot be signed before</source>
        <translation>noch offene Pflichtzeilen der Bereitschaft: {1}, die erste ist „{2}“; erledigen Sie sie oder geben Sie den Grund an, vorher kann der Bericht nicht signiert werden</translation>
    </message>
    <message>
        <source>maximum_dp {1} is not above minimum_dp {2}; correct one of them</source>
        <translation>maximum_dp {1} liegt nicht über minimum_dp {2}; berichtigen Sie einen Wert</translation>
    </message>
    <message>
        <source>may be made with the cautions below</source>
        <translation>darf mit den Vorsichtshinweisen unten gemacht werden</translation>
    </message>
    <message>
        <source>must not be made; the cautions say why</source>
        <translation>darf nicht gemacht werden; die Vorsichtshinweise sagen, warum</translation>
    </message>
    <message>
        <source>neither a reference nor other branches have been read; take the survey first</source>
        <translation>weder eine Referenz noch andere Zweige sind abgelesen; machen Sie erst die Aufnahme</translation>
    </message>
    <message>
        <source>neither both gauges nor their difference was read; read suction and discharge</source>
        <translation>weder beide Manometer noch ihr Unterschied wurden abgelesen; lesen Sie Saug- und Druckseite ab</translation>
    </message>
    <message>
        <source>neither hours a year nor a load profile is entered, so no yearly energy is computed; enter one in Job</source>
        <translation>weder Stunden im Jahr noch ein Lastprofil sind eingetragen, also wird keine Jahresenergie berechnet; tragen Sie eines in Auftrag ein</translation>
    </message>
    <message>
        <source>neither the pump&apos;s table nor a reading gives its efficiency here, so no power is computed; enter efficiency or power with the curve, or read the motor&apos;s power</source>
        <translation>weder die Tabelle der Pumpe noch eine Ablesung gibt hier ihren Wirkungsgrad, also wird keine Leistung berechnet; tragen Sie Wirkungsgrad oder Leistung zur Kennlinie ein, oder lesen Sie die Motorleistung ab</translation>
    </message>
    <message>
        <source>no action was taken back last; there is nothing to do again</source>
        <translation>zuletzt wurde nichts zurückgenommen; es gibt nichts zu wiederholen</translation>
    </message>
    <message>
        <source>no branch has a valve with a table to set; enter the valve tables</source>
        <translation>kein Zweig hat ein einstellbares Ventil mit Tabelle; tragen Sie die Ventiltabellen ein</translation>
    </message>
    <message>
        <source>no branch is called &quot;{1}&quot;; type a tag of the place System</source>
        <translation>kein Zweig heißt „{1}“; tippen Sie eine Kennung aus dem Bereich Anlage</translation>
    </message>
    <message>
        <source>no branch is called &quot;{1}&quot;; type a tag, or nothing for the pump</source>
        <translation>kein Zweig heißt „{1}“; tippen Sie eine Kennung, oder nichts für die Pumpe</translation>
    </message>
    <message>
        <source>no certificate in PEM form was found; give the file of the firm&apos;s root certificate</source>
        <translation>kein Zertifikat in PEM-Form gefunden; geben Sie die Datei mit dem Stammzertifikat der Firma an</translation>
    </message>
    <message>
        <source>no change is given; add, remove or change a branch</source>
        <translation>keine Änderung angegeben; fügen Sie einen Zweig hinzu, entfernen oder ändern Sie einen</translation>
    </message>
    <message>
        <source>no deficiency is in hand to keep the photo with; list one first</source>
        <translation>kein Mangel ist gewählt, zu dem das Foto gehört; nehmen Sie erst einen auf</translation>
    </message>
    <message>
        <source>no discharge valve is recorded for this pump; enter its tag if there is one</source>
        <translation>für diese Pumpe ist kein Drosselventil eingetragen; tragen Sie seine Kennung ein, wenn es eines gibt</translation>
    </message>
    <message>
        <source>no discharge valve is recorded for this pump; the test throttled to design flow needs one, enter its tag</source>
        <translation>für diese Pumpe ist kein Drosselventil eingetragen; der auf Auslegung gedrosselte Test braucht eines, tragen Sie seine Kennung ein</translation>
    </message>
    <message>
        <source>no finding blocks the signature</source>
        <translation>kein Befund sperrt die Signatur</translation>
    </message>
    <message>
        <source>no instrument is called &quot;{1}&quot;; type a tag of the place Job</source>
        <translation>kein Messgerät heißt „{1}“; tippen Sie eine Kennung aus dem Bereich Auftrag</translation>
    </message>
    <message>
        <source>no key file could be read at {1}; choose one, or make a certificate</source>
        <translation>in {1} ist keine Schlüsseldatei lesbar; wählen Sie eine, oder erstellen Sie ein Zertifikat</translation>
    </message>
    <message>
        <source>no link ends at this node; join it to the loop or take it out</source>
        <translation>an diesem Knoten endet keine Verbindung; schließen Sie ihn an den Kreislauf an oder nehmen Sie ihn heraus</translation>
    </message>
    <message>
        <source>no list says that the loop was ready; take the usual one on the place Job, or give the reason</source>
        <translation>keine Liste sagt, dass der Kreislauf bereit war; nehmen Sie die übliche im Bereich Auftrag, oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>no other unit or sign would explain this reading; read the valve again</source>
        <translation>keine andere Einheit und kein anderes Vorzeichen erklärt diese Ablesung; lesen Sie das Ventil neu ab</translation>
    </message>
    <message>
        <source>no pump is called &quot;{1}&quot;; type the tag of one of the job&apos;s pumps</source>
        <translation>keine Pumpe heißt „{1}“; tippen Sie die Kennung einer Pumpe des Auftrags</translation>
    </message>
    <message>
        <source>no pump is marked as running; mark the pumps that work together</source>
        <translation>keine Pumpe ist als laufend markiert; markieren Sie die Pumpen, die zusammen arbeiten</translation>
    </message>
    <message>
        <source>no round has flow and head of the pumps; read suction and discharge, and a round</source>
        <translation>keine Runde hat Durchfluss und Förderhöhe der Pumpen; lesen Sie Saug- und Druckseite ab, und eine Runde</translation>
    </message>
    <message>
        <source>no round is on record to keep this reading with; open a round first</source>
        <translation>keine Runde ist da, zu der diese Ablesung gehört; öffnen Sie erst eine Runde</translation>
    </message>
    <message>
        <source>no round is open; open the next round before reading</source>
        <translation>keine Runde ist offen; öffnen Sie die nächste Runde, bevor Sie ablesen</translation>
    </message>
    <message>
        <source>no running pump has a usable curve; enter at least two points of it</source>
        <translation>keine laufende Pumpe hat eine brauchbare Kennlinie; tragen Sie mindestens zwei Punkte ein</translation>
    </message>
    <message>
        <source>no setting is advised for this valve; see the remark beside the table</source>
        <translation>für dieses Ventil wird keine Einstellung empfohlen; sehen Sie die Bemerkung neben der Tabelle</translation>
    </message>
    <message>
        <source>no sound copy of this job lies beside it; look on the other laptop and on sticks</source>
        <translation>daneben liegt keine heile Kopie dieses Auftrags; sehen Sie auf dem anderen Laptop und auf Sticks nach</translation>
    </message>
    <message>
        <source>no terminal has a flow that could be read again; read and close a final round</source>
        <translation>kein Verbraucher hat einen Durchfluss, der neu abgelesen werden kann; lesen und schließen Sie eine Schlussrunde</translation>
    </message>
    <message>
        <source>no valve is in hand; choose one on the place Walk or Review</source>
        <translation>kein Ventil ist in der Hand; wählen Sie eines in Rundgang oder Prüfung</translation>
    </message>
    <message>
        <source>no valve of the group {1} is fully open, reference {2} stands at {3} of {4}; open it and match the others to it</source>
        <translation>kein Ventil der Gruppe {1} ist ganz offen, Referenz {2} steht auf {3} von {4}; öffnen Sie sie und gleichen Sie die anderen daran ab</translation>
    </message>
    <message>
        <source>no valve of the job is called &quot;{1}&quot;; type its tag or its number</source>
        <translation>kein Ventil des Auftrags heißt „{1}“; tippen Sie seine Kennung oder Nummer</translation>
    </message>
    <message>
        <source>no valve of the route is called &quot;{1}&quot;; type its tag or its number</source>
        <translation>kein Ventil des Wegs heißt „{1}“; tippen Sie seine Kennung oder Nummer</translation>
    </message>
    <message>
        <source>no valve of this group is fully open; open the one of the reference and match the others to it</source>
        <translation>kein Ventil dieser Gruppe ist ganz offen; öffnen Sie das der Referenz und gleichen Sie die anderen daran ab</translation>
    </message>
    <message>
        <source>no workbook is open; open one or make a new job</source>
        <translation>keine Arbeitsmappe ist offen; öffnen Sie eine oder legen Sie einen Auftrag an</translation>
    </message>
    <message>
        <source>none claimed</source>
        <translation>keine beansprucht</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not read in this round: {1} of {2} terminals ({3}); read them</source>
        <translation>in dieser Runde nicht abgelesen: {1} von {2} Verbrauchern ({3}); lesen Sie sie ab</translation>
    </message>
    <message>
        <source>not read yet; read it, or mark it as unreadable with the reason</source>
        <translation>noch nicht abgelesen; lesen Sie ab, oder markieren Sie als nicht ablesbar mit Grund</translation>
    </message>
    <message>
        <source>not read; stop the pump, read both gauges and enter them as pumps off</source>
        <translation>nicht abgelesen; halten Sie die Pumpe an, lesen Sie beide Manometer ab und tragen Sie sie als „Pumpen aus“ ein</translation>
    </message>
    <message>
        <source>not trusted: its chain does not lead to a certificate you gave; ask the signer&apos;s firm for its root certificate</source>
        <translation>nicht vertrauenswürdig: Seine Kette führt zu keinem Zertifikat, das Sie angegeben haben; erbitten Sie das Stammzertifikat der Firma</translation>
    </message>
    <message>
        <source>not trusted: no root certificate was given; give that of the signer&apos;s firm as PEM</source>
        <translation>nicht vertrauenswürdig: Kein Stammzertifikat angegeben; geben Sie das der Firma als PEM an</translation>
    </message>
    <message>
        <source>not trusted: nobody else vouches for the name; compare the fingerprint {1} with the signer</source>
        <translation>nicht vertrauenswürdig: Niemand sonst bürgt für den Namen; vergleichen Sie den Fingerabdruck {1} mit dem, den der Signierende nennt</translation>
    </message>
    <message>
        <source>nothing has been read yet; take a survey with every valve fully open</source>
        <translation>noch ist nichts abgelesen; machen Sie eine Aufnahme mit allen Ventilen ganz offen</translation>
    </message>
    <message>
        <source>nothing is left to choose from merging</source>
        <translation>vom Zusammenführen bleibt nichts zu wählen</translation>
    </message>
    <message>
        <source>nothing is missing</source>
        <translation>nichts fehlt</translation>
    </message>
    <message>
        <source>nothing was read at setting {1} yet; type the dp read there, then hold</source>
        <translation>bei Einstellung {1} wurde noch nichts abgelesen; tippen Sie die dort abgelesene Δp ein und halten Sie dann</translation>
    </message>
    <message>
        <source>nothing was read here, so its circuit is only known by design; read it</source>
        <translation>hier wurde nichts abgelesen, also ist sein Kreis nur durch die Auslegung bekannt; lesen Sie ab</translation>
    </message>
    <message>
        <source>of target spreads over {1} % in the group {2}, more than {3} %; match the group again</source>
        <translation>vom Soll streut um {1} % in der Gruppe {2}, mehr als {3} %; gleichen Sie die Gruppe neu ab</translation>
    </message>
    <message>
        <source>one of its readings does not fit the others: {1} in round {2}, expected {3} (z {4}); read it again now, that tells which one it is</source>
        <translation>eine seiner Ablesungen passt nicht zu den anderen: {1} in Runde {2}, erwartet {3} (z {4}); lesen Sie jetzt neu ab, das zeigt, welche es ist</translation>
    </message>
    <message>
        <source>only a practice job answers by itself; read the meter and type what it shows</source>
        <translation>nur ein Übungsauftrag antwortet selbst; lesen Sie das Messgerät ab und tippen Sie, was es zeigt</translation>
    </message>
    <message>
        <source>open for changes by {1} on {2} since {3} (process {4}), so it can only be read here; close it there first</source>
        <translation>seit {3} von {1} auf {2} zum Ändern geöffnet (Prozess {4}), also hier nur lesbar; schließen Sie sie erst dort</translation>
    </message>
    <message>
        <source>outside {3} % around their target share: {1} of {2} branches ({4}), the farthest is {5} with {6} % of target; adjust them</source>
        <translation>außerhalb {3} % um ihren Sollanteil: {1} von {2} Zweigen ({4}), am weitesten {5} mit {6} % vom Soll; stellen Sie sie ein</translation>
    </message>
    <message>
        <source>outside {3} to {4} % of design flow: {1} of {2} terminals ({5}), the farthest is {6} with {7} %; bring the total to design flow or record why not</source>
        <translation>außerhalb {3} bis {4} % des Auslegungsdurchflusses: {1} von {2} Verbrauchern ({5}), am weitesten {6} mit {7} %; bringen Sie die Summe auf Auslegung oder tragen Sie ein, warum nicht</translation>
    </message>
    <message>
        <source>power from slip is rough: the plate&apos;s slip may be off by 20 %; use a stroboscope good to 1 rpm</source>
        <translation>Leistung aus Schlupf ist grob: Der Schlupf des Schilds kann um 20 % daneben liegen; nehmen Sie ein Stroboskop, genau auf 1 1/min</translation>
    </message>
    <message>
        <source>power into the water over shaft power is {1} %, outside 20 to 90 %; check flow, head and motor readings</source>
        <translation>Leistung ins Wasser durch Wellenleistung ist {1} %, außerhalb 20 bis 90 %; prüfen Sie Durchfluss, Förderhöhe und Motormessung</translation>
    </message>
    <message>
        <source>pressure falls to {1} below the surrounding air here while the pump runs, so air is drawn in at any leak; raise the fill pressure, or move the vessel to the pump&apos;s suction</source>
        <translation>der Druck fällt hier bei laufender Pumpe {1} unter den Luftdruck, also zieht jedes Leck Luft; erhöhen Sie den Fülldruck, oder setzen Sie das Gefäß an die Saugseite der Pumpe</translation>
    </message>
    <message>
        <source>proved: every valve on the index path {1} fully open, one in every group, and the pump&apos;s discharge valve</source>
        <translation>nachgewiesen: jedes Ventil auf dem Schlechtpunktweg {1} ganz offen, eines in jeder Gruppe, und das Drosselventil der Pumpe</translation>
    </message>
    <message>
        <source>r  read more than once; the mean counts</source>
        <translation>r  mehrmals abgelesen; es zählt das Mittel</translation>
    </message>
    <message>
        <source>read again it takes {1}, {2} % of the {3} reported; find out why, a sample of which more than 10 % deviates calls for reading all again</source>
        <translation>neu abgelesen nimmt er {1}, {2} % der berichteten {3}; finden Sie heraus, warum, eine Stichprobe mit über 10 % Abweichung verlangt, alles neu abzulesen</translation>
    </message>
    <message>
        <source>read the dp of this valve as it stands; the largest uncertainty of a share falls by {1} %</source>
        <translation>lesen Sie die Δp dieses Ventils ab, wie es steht; die größte Unsicherheit eines Anteils fällt um {1} %</translation>
    </message>
    <message>
        <source>read this valve again as it stands; the largest uncertainty of a share falls by {1} %</source>
        <translation>lesen Sie dieses Ventil neu ab, wie es steht; die größte Unsicherheit eines Anteils fällt um {1} %</translation>
    </message>
    <message>
        <source>record {1} of the journal does not follow from those before it; the file was changed by another program or is damaged, open a copy from before</source>
        <translation>Eintrag {1} des Journals folgt nicht aus den früheren; die Datei wurde von einem anderen Programm geändert oder ist beschädigt, öffnen Sie eine frühere Kopie</translation>
    </message>
    <message>
        <source>round {1} has a reading number {2} already; give this one the next number</source>
        <translation>Runde {1} hat schon eine Ablesung Nummer {2}; geben Sie dieser die nächste Nummer</translation>
    </message>
    <message>
        <source>round {1} is &quot;{2}&quot; in an earlier row; write the same kind in all its rows</source>
        <translation>Runde {1} ist in einer früheren Zeile „{2}“; schreiben Sie in allen ihren Zeilen dieselbe Art</translation>
    </message>
    <message>
        <source>round {1} is accepted and takes no more changes; open a new round</source>
        <translation>Runde {1} ist angenommen und nimmt keine Änderungen mehr; öffnen Sie eine neue Runde</translation>
    </message>
    <message>
        <source>round {1} is accepted and takes no more readings; open a new round</source>
        <translation>Runde {1} ist angenommen und nimmt keine Ablesungen mehr; öffnen Sie eine neue Runde</translation>
    </message>
    <message>
        <source>round {1} is closed already; open a new round</source>
        <translation>Runde {1} ist schon geschlossen; öffnen Sie eine neue Runde</translation>
    </message>
    <message>
        <source>round {1} is closed and takes only corrections of its readings; open a new round for new readings</source>
        <translation>Runde {1} ist geschlossen und nimmt nur Berichtigungen ihrer Ablesungen; öffnen Sie für neue Ablesungen eine neue Runde</translation>
    </message>
    <message>
        <source>round {1} is sent by nobody; say who works at this desk, Round, Person</source>
        <translation>Runde {1} wird von niemandem gesendet; sagen Sie, wer an diesem Platz arbeitet, Runde, Person</translation>
    </message>
    <message>
        <source>round {1} is still open; close it before opening the next</source>
        <translation>Runde {1} ist noch offen; schließen Sie sie, bevor Sie die nächste öffnen</translation>
    </message>
    <message>
        <source>round {1} stands twice; keep one row for it</source>
        <translation>Runde {1} steht zweimal; behalten Sie eine Zeile dafür</translation>
    </message>
    <message>
        <source>rounds that are not accepted: {1}; have them accepted or give the reason</source>
        <translation>nicht angenommene Runden: {1}; lassen Sie sie annehmen oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>row {1} is named, but its table has {2} rows; give the number of one, the first is 1</source>
        <translation>Zeile {1} ist genannt, aber ihre Tabelle hat {2} Zeilen; geben Sie eine Nummer davon an, die erste ist 1</translation>
    </message>
    <message>
        <source>s  flow is the sum of the branches behind it</source>
        <translation>s  Durchfluss ist die Summe der Zweige dahinter</translation>
    </message>
    <message>
        <source>self-acting valves that work outside their range: {1} ({2}); bring their dp into the range</source>
        <translation>selbsttätige Ventile außerhalb ihres Bereichs: {1} ({2}); bringen Sie ihre Δp in den Bereich</translation>
    </message>
    <message>
        <source>setting {1} is outside the valve&apos;s scale, {2} to {3}; give a setting on the scale</source>
        <translation>Einstellung {1} liegt außerhalb der Skala des Ventils, {2} bis {3}; geben Sie eine Einstellung auf der Skala an</translation>
    </message>
    <message>
        <source>setting {1} lies outside the valve&apos;s table, {2} to {3}, so there is no flow; correct the setting</source>
        <translation>Einstellung {1} liegt außerhalb der Ventiltabelle, {2} bis {3}, also gibt es keinen Durchfluss; berichtigen Sie die Einstellung</translation>
    </message>
    <message>
        <source>setting {1} stands twice in the valve table; keep one row for it</source>
        <translation>Einstellung {1} steht zweimal in der Ventiltabelle; behalten Sie eine Zeile dafür</translation>
    </message>
    <message>
        <source>shut this valve for a moment, read the dp across it and set it back to {1}: it shows the head available here; the largest uncertainty of a share falls by {2} %</source>
        <translation>schließen Sie dieses Ventil kurz, lesen Sie die Δp daran ab und stellen Sie es zurück auf {1}: Das zeigt die hier verfügbare Förderhöhe; die größte Unsicherheit eines Anteils fällt um {2} %</translation>
    </message>
    <message>
        <source>signed by</source>
        <translation>signiert von</translation>
    </message>
    <message>
        <source>signer</source>
        <translation>Signierender</translation>
    </message>
    <message>
        <source>solved with this impeller or speed the loop takes {1} % of design flow; the affinity laws do not hold for this loop, take the solved figure</source>
        <translation>mit diesem Laufrad oder dieser Drehzahl berechnet nimmt der Kreislauf {1} % des Auslegungsdurchflusses; die Ähnlichkeitsgesetze gelten hier nicht, nehmen Sie die so berechnete Zahl</translation>
    </message>
    <message>
        <source>some design losses are far from what is read, so less is made of them all; check the schedule</source>
        <translation>einige Verluste der Auslegung liegen fern vom Abgelesenen, darum zählen alle weniger; prüfen Sie die Liste</translation>
    </message>
    <message>
        <source>some running pumps stand in series and some in parallel; mark all alike, or test each set by itself</source>
        <translation>einige laufende Pumpen stehen in Reihe, andere parallel; markieren Sie alle gleich, oder testen Sie jede Gruppe für sich</translation>
    </message>
    <message>
        <source>something was added behind the last signature; do not rely on this file, ask for it again</source>
        <translation>hinter der letzten Signatur wurde etwas hinzugefügt; verlassen Sie sich nicht auf diese Datei, fordern Sie sie neu an</translation>
    </message>
    <message>
        <source>strong enough at full speed</source>
        <translation>bei voller Drehzahl stark genug</translation>
    </message>
    <message>
        <source>terminals nearer to the limit of design flow than they can be read: {1} ({2}); read more accurately</source>
        <translation>Verbraucher, die näher an der Grenze des Auslegungsdurchflusses liegen, als man ablesen kann: {1} ({2}); lesen Sie genauer ab</translation>
    </message>
    <message>
        <source>text stands beside a quoted cell; quote the whole cell and write a quotation mark within it twice</source>
        <translation>neben einer Zelle in Anführungszeichen steht Text; setzen Sie die ganze Zelle in Anführungszeichen und schreiben Sie solche darin doppelt</translation>
    </message>
    <message>
        <source>the NPSH required at {1} is {2}; it must not be below zero, correct this row</source>
        <translation>das nötige NPSH bei {1} ist {2}; es darf nicht unter null liegen, berichtigen Sie diese Zeile</translation>
    </message>
    <message>
        <source>the PDF already has fields for signatures; begin from a report without them</source>
        <translation>das PDF hat schon Signaturfelder; beginnen Sie mit einem Bericht ohne sie</translation>
    </message>
    <message>
        <source>the PDF carries no signature, so nothing proves it; ask for the signed report</source>
        <translation>das PDF trägt keine Signatur, also ist nichts nachgewiesen; erbitten Sie den signierten Bericht</translation>
    </message>
    <message>
        <source>the balance of round {1} and any report signed on it no longer hold once this change is made; balance again and sign a new report</source>
        <translation>der Abgleich der Runde {1} und jeder darauf signierte Bericht gelten nach dieser Änderung nicht mehr; gleichen Sie neu ab und signieren Sie einen neuen Bericht</translation>
    </message>
    <message>
        <source>the balancing device has no table, so its flow cannot be read; enter model, size and table</source>
        <translation>die Regulierarmatur hat keine Tabelle, also ist ihr Durchfluss nicht ablesbar; tragen Sie Modell, Größe und Tabelle ein</translation>
    </message>
    <message>
        <source>the cell is empty; give a value</source>
        <translation>die Zelle ist leer; geben Sie einen Wert an</translation>
    </message>
    <message>
        <source>the certificate of {1} begins on {2}; check this computer&apos;s clock or use another key</source>
        <translation>das Zertifikat von {1} gilt erst ab {2}; prüfen Sie die Uhr dieses Rechners oder nehmen Sie einen anderen Schlüssel</translation>
    </message>
    <message>
        <source>the certificate of {1} ended on {2}; ask its issuer for a new one</source>
        <translation>das Zertifikat von {1} ist am {2} abgelaufen; fordern Sie beim Aussteller ein neues an</translation>
    </message>
    <message>
        <source>the certificate of {1} is not made for signing documents; use one with digital signature or non-repudiation among its uses</source>
        <translation>das Zertifikat von {1} ist nicht zum Signieren von Dokumenten gemacht; nehmen Sie eines mit digitaler Signatur oder Nichtabstreitbarkeit als Zweck</translation>
    </message>
    <message>
        <source>the changes of record {1} of the journal do not fit what was stored before; the file was changed by another program, open a copy from before</source>
        <translation>die Änderungen von Eintrag {1} des Journals passen nicht zum früher Gespeicherten; die Datei wurde von einem anderen Programm geändert, öffnen Sie eine frühere Kopie</translation>
    </message>
    <message>
        <source>the changes of the other copy do not fit together ({1}), so nothing was taken over; verify both files</source>
        <translation>die Änderungen der anderen Kopie passen nicht zusammen ({1}), also wurde nichts übernommen; prüfen Sie beide Dateien</translation>
    </message>
    <message>
        <source>the circuit has no design flow; ask the designer and enter it</source>
        <translation>der Kreis hat keinen Auslegungsdurchfluss; fragen Sie den Planer und tragen Sie ihn ein</translation>
    </message>
    <message>
        <source>the coefficient at setting {1} is {2}; only the lowest setting may have 0, all others must be above 0</source>
        <translation>der Beiwert bei Einstellung {1} ist {2}; nur die kleinste Einstellung darf 0 haben, alle anderen müssen über 0 liegen</translation>
    </message>
    <message>
        <source>the coefficient falls from {1} to {2} between settings {3} and {4}; correct the table, a valve passes more as it opens</source>
        <translation>der Beiwert fällt von {1} auf {2} zwischen den Einstellungen {3} und {4}; berichtigen Sie die Tabelle, ein Ventil lässt beim Öffnen mehr durch</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; has no unit; write it without brackets</source>
        <translation>die Spalte „{1}“ hat keine Einheit; schreiben Sie sie ohne Klammern</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; is missing; add it to the header row</source>
        <translation>die Spalte „{1}“ fehlt; fügen Sie sie der Kopfzeile hinzu</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; is not known; did you mean &quot;{2}&quot;? Known are: {3}</source>
        <translation>die Spalte „{1}“ ist nicht bekannt; meinten Sie „{2}“? Bekannt sind: {3}</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; needs its unit in brackets; use one of {2}</source>
        <translation>die Spalte „{1}“ braucht ihre Einheit in Klammern; nehmen Sie eine von {2}</translation>
    </message>
    <message>
        <source>the column &quot;{1}&quot; stands twice; keep one of them</source>
        <translation>die Spalte „{1}“ steht zweimal; behalten Sie eine davon</translation>
    </message>
    <message>
        <source>the currents of the phases differ by {1} % of their mean, more than {2} %; have the motor and its supply checked by a licensed electrician</source>
        <translation>die Ströme der Phasen weichen um {1} % ihres Mittels ab, mehr als {2} %; lassen Sie Motor und Zuleitung von einer Elektrofachkraft prüfen</translation>
    </message>
    <message>
        <source>the curve is flat here: the uncertainty of the head makes the flow {1} to {2}; use a meter or the sum of the terminals</source>
        <translation>die Kennlinie ist hier flach: Die Unsicherheit der Förderhöhe macht den Durchfluss {1} bis {2}; nehmen Sie ein Messgerät oder die Summe der Verbraucher</translation>
    </message>
    <message>
        <source>the curve of the {1} impeller does not lie below that of the {2} impeller; check the diameters of these rows</source>
        <translation>die Kennlinie des Laufrads {1} liegt nicht unter der des Laufrads {2}; prüfen Sie die Durchmesser dieser Zeilen</translation>
    </message>
    <message>
        <source>the density is {1} kg/m3; it must be above 0</source>
        <translation>die Dichte ist {1} kg/m3; sie muss über 0 liegen</translation>
    </message>
    <message>
        <source>the design flow is not known; enter it, its losses are stated at that flow</source>
        <translation>der Auslegungsdurchfluss ist unbekannt; tragen Sie ihn ein, seine Verluste gelten bei diesem Durchfluss</translation>
    </message>
    <message>
        <source>the device has {1} diameters of straight pipe before and {2} behind it and needs {3} and {4}; its flow is {5} % less certain, move it or say so in the report</source>
        <translation>die Armatur hat {1} Durchmesser gerades Rohr davor und {2} dahinter und braucht {3} und {4}; ihr Durchfluss ist {5} % unsicherer, versetzen Sie sie oder sagen Sie es im Bericht</translation>
    </message>
    <message>
        <source>the diameter lies beyond the smallest curve of the family; ask the maker before cutting</source>
        <translation>der Durchmesser liegt hinter der kleinsten Kennlinie der Familie; fragen Sie vor dem Abdrehen den Hersteller</translation>
    </message>
    <message>
        <source>the discharge gauge shows {1} less than the suction gauge; swap the readings, or check that the pump turns the right way and its valves are open</source>
        <translation>das Druckmanometer zeigt {1} weniger als das Saugmanometer; tauschen Sie die Ablesungen, oder prüfen Sie, ob die Pumpe richtig dreht und ihre Ventile offen sind</translation>
    </message>
    <message>
        <source>the discharge valve of this pump stands at {1}, not fully open at {2}; open it and trim or slow the pump, or claim an exception</source>
        <translation>das Drosselventil dieser Pumpe steht auf {1}, nicht ganz offen auf {2}; öffnen Sie es und drehen Sie die Pumpe ab oder verlangsamen Sie sie, oder beanspruchen Sie eine Ausnahme</translation>
    </message>
    <message>
        <source>the dp of the set-point is not entered; enter what the sensor read</source>
        <translation>die Δp des Sollwerts ist nicht eingetragen; tragen Sie ein, was der Fühler zeigte</translation>
    </message>
    <message>
        <source>the dp range of this self-acting valve is not entered; enter it, it is what is verified</source>
        <translation>der Δp-Bereich dieses selbsttätigen Ventils ist nicht eingetragen; tragen Sie ihn ein, er wird geprüft</translation>
    </message>
    <message>
        <source>the dp range of this self-acting valve is not known; enter minimum_dp in its valve table</source>
        <translation>der Δp-Bereich dieses selbsttätigen Ventils ist unbekannt; tragen Sie minimum_dp in seine Ventiltabelle ein</translation>
    </message>
    <message>
        <source>the drive&apos;s losses are not known and are left out; enter its efficiency</source>
        <translation>die Verluste des Umrichters sind unbekannt und bleiben weg; tragen Sie seinen Wirkungsgrad ein</translation>
    </message>
    <message>
        <source>the efficiency at {1} is {2} %; it must lie between 0 and 100 %, correct this row</source>
        <translation>der Wirkungsgrad bei {1} ist {2} %; er muss zwischen 0 und 100 % liegen, berichtigen Sie diese Zeile</translation>
    </message>
    <message>
        <source>the exponent of the loss is {1}; it must lie between 1 and 4, water has 1.7 to 2</source>
        <translation>der Exponent des Verlusts ist {1}; er muss zwischen 1 und 4 liegen, Wasser hat 1.7 bis 2</translation>
    </message>
    <message>
        <source>the factor on the pump curve is {1}; it must be above 0</source>
        <translation>der Faktor auf die Kennlinie ist {1}; er muss über 0 liegen</translation>
    </message>
    <message>
        <source>the file &quot;{1}&quot; has more than {2} MB; make it smaller</source>
        <translation>die Datei „{1}“ hat mehr als {2} MB; machen Sie sie kleiner</translation>
    </message>
    <message>
        <source>the file has {1} MB, more than the {2} MB that a table may have; split it or correct it</source>
        <translation>die Datei hat {1} MB, mehr als die {2} MB einer Tabelle; teilen oder berichtigen Sie sie</translation>
    </message>
    <message>
        <source>the file holds no key with its own certificate; export both together</source>
        <translation>die Datei enthält keinen Schlüssel mit eigenem Zertifikat; exportieren Sie beide zusammen</translation>
    </message>
    <message>
        <source>the file is empty, so nothing can be read from it; open a copy of it</source>
        <translation>die Datei ist leer, also ist nichts lesbar; öffnen Sie eine Kopie</translation>
    </message>
    <message>
        <source>the file is empty; give it a header row and data</source>
        <translation>die Datei ist leer; geben Sie ihr eine Kopfzeile und Daten</translation>
    </message>
    <message>
        <source>the file is missing; put it into the folder</source>
        <translation>die Datei fehlt; legen Sie sie in den Ordner</translation>
    </message>
    <message>
        <source>the file is not UTF-8 (it looks like UTF-16); save it as &quot;CSV UTF-8&quot;</source>
        <translation>die Datei ist nicht UTF-8 (sie sieht nach UTF-16 aus); speichern Sie sie als „CSV UTF-8“</translation>
    </message>
    <message>
        <source>the file was last changed by a newer program and can only be read; to change it, install version {1} or later</source>
        <translation>die Datei wurde zuletzt von einem neueren Programm geändert und ist nur lesbar; zum Ändern installieren Sie Version {1} oder neuer</translation>
    </message>
    <message>
        <source>the fill pressure is not entered, so only differences of pressure are right; read it at the expansion vessel with the pumps off and enter it in Job</source>
        <translation>der Fülldruck ist nicht eingetragen, also stimmen nur Druckunterschiede; lesen Sie ihn bei stehenden Pumpen am Ausdehnungsgefäß ab und tragen Sie ihn in Auftrag ein</translation>
    </message>
    <message>
        <source>the final flow is {1} % of design, outside {2} to {3} %; adjust it, or list the deficiency that keeps it there, the report cannot be signed before</source>
        <translation>der Schlussdurchfluss ist {1} % der Auslegung, außerhalb {2} bis {3} %; stellen Sie ihn ein, oder nehmen Sie den Mangel auf, der ihn dort hält, vorher kann der Bericht nicht signiert werden</translation>
    </message>
    <message>
        <source>the first signer allowed no later change, yet there is one; do not rely on this file, ask for it again</source>
        <translation>der erste Signierende erlaubte keine spätere Änderung, doch es gibt eine; verlassen Sie sich nicht auf diese Datei, fordern Sie sie neu an</translation>
    </message>
    <message>
        <source>the flow at the same pump head changed by {1} % since round {2}, with no valve moved; look for air, clogged strainers or moving control valves</source>
        <translation>der Durchfluss bei gleicher Förderhöhe änderte sich seit Runde {2} um {1} %, ohne dass ein Ventil bewegt wurde; suchen Sie Luft, verstopfte Schmutzfänger oder bewegte Regelventile</translation>
    </message>
    <message>
        <source>the flow coefficient is Kv {1}; it must be a number of 0 (shut) or more, correct the setting</source>
        <translation>der Durchflusskoeffizient ist Kv {1}; er muss eine Zahl ab 0 (zu) sein, berichtigen Sie die Einstellung</translation>
    </message>
    <message>
        <source>the flow of the group {1} rose from {2} to {3} when valves in it were only closed, which cannot be; read it again</source>
        <translation>der Durchfluss der Gruppe {1} stieg von {2} auf {3}, als darin nur Ventile geschlossen wurden, was nicht sein kann; lesen Sie neu ab</translation>
    </message>
    <message>
        <source>the flow read at the pump is {1}, the terminals add up to {2}; check the meter and look for an open bypass</source>
        <translation>der an der Pumpe gemessene Durchfluss ist {1}, die Verbraucher ergeben {2}; prüfen Sie das Messgerät und suchen Sie einen offenen Bypass</translation>
    </message>
    <message>
        <source>the fluid of the job cannot be used, so all flows are computed for water at 20 C; correct kind, concentration and temperature</source>
        <translation>das Medium des Auftrags ist nicht verwendbar, also werden alle Durchflüsse für Wasser von 20 C berechnet; berichtigen Sie Art, Konzentration und Temperatur</translation>
    </message>
    <message>
        <source>the folder cannot be made ({1}); choose a place that can be written</source>
        <translation>der Ordner kann nicht angelegt werden ({1}); wählen Sie einen beschreibbaren Ort</translation>
    </message>
    <message>
        <source>the folder or the file cannot be written, so the job can only be read; copy the file to a place of your own to change it</source>
        <translation>Ordner oder Datei sind nicht beschreibbar, also ist der Auftrag nur lesbar; kopieren Sie die Datei zum Ändern an einen eigenen Ort</translation>
    </message>
    <message>
        <source>the group of this valve has no reference yet; read its members in a survey first</source>
        <translation>die Gruppe dieses Ventils hat noch keine Referenz; lesen Sie ihre Mitglieder erst in einer Aufnahme ab</translation>
    </message>
    <message>
        <source>the handle stands at {1}, not where it was noted; the setting was corrected, check it</source>
        <translation>der Griff steht auf {1}, nicht wo es notiert war; die Einstellung wurde berichtigt, prüfen Sie sie</translation>
    </message>
    <message>
        <source>the head at shutoff lies outside the family of curves, the impeller is a first estimate; check the family</source>
        <translation>die Nullförderhöhe liegt außerhalb der Kennlinienfamilie, das Laufrad ist eine erste Schätzung; prüfen Sie die Familie</translation>
    </message>
    <message>
        <source>the head at shutoff says {1} of impeller and the record says {2}; check impeller, direction of turn, speed, wear and air before the curve is trusted</source>
        <translation>die Nullförderhöhe spricht für Laufrad {1}, eingetragen ist {2}; prüfen Sie Laufrad, Drehrichtung, Drehzahl, Verschleiß und Luft, bevor Sie der Kennlinie trauen</translation>
    </message>
    <message>
        <source>the head of {1} lies above the curve&apos;s {2} at shutoff, so the curve gives no flow; check gauges, speed and impeller</source>
        <translation>die Förderhöhe von {1} liegt über den {2} der Kennlinie bei Nullförderung, also gibt sie keinen Durchfluss; prüfen Sie Manometer, Drehzahl und Laufrad</translation>
    </message>
    <message>
        <source>the head of {1} lies below the last point of the curve, so the curve gives no flow; get the maker&apos;s curve for this duty</source>
        <translation>die Förderhöhe von {1} liegt unter dem letzten Punkt der Kennlinie, also gibt sie keinen Durchfluss; holen Sie die Kennlinie des Herstellers für diesen Betriebspunkt</translation>
    </message>
    <message>
        <source>the head required is {1} by one way and {2} by another; find out why before the pump is changed</source>
        <translation>die nötige Förderhöhe ist {1} nach einem Verfahren und {2} nach einem anderen; finden Sie heraus, warum, bevor die Pumpe geändert wird</translation>
    </message>
    <message>
        <source>the head rises from {1} to {2} between {3} and {4}; check these points, the duty is not unique on a rising curve</source>
        <translation>die Förderhöhe steigt von {1} auf {2} zwischen {3} und {4}; prüfen Sie diese Punkte, auf steigender Kennlinie ist der Betriebspunkt nicht eindeutig</translation>
    </message>
    <message>
        <source>the head stays at {1} between {2} and {3}; write one more digit or leave one of the rows out, the duty is not unique on a level curve</source>
        <translation>die Förderhöhe bleibt {1} zwischen {2} und {3}; schreiben Sie eine Ziffer mehr oder lassen Sie eine Zeile weg, auf waagrechter Kennlinie ist der Betriebspunkt nicht eindeutig</translation>
    </message>
    <message>
        <source>the head that the index circuit needs is not known; enter the design losses, or finish a round whose shares are within the band</source>
        <translation>die Förderhöhe, die der Schlechtpunktkreis braucht, ist unbekannt; tragen Sie die Verluste der Auslegung ein, oder beenden Sie eine Runde mit allen Anteilen im Band</translation>
    </message>
    <message>
        <source>the head with flow, {1}, is not below the head at shutoff, {2}; read one of them again</source>
        <translation>die Förderhöhe bei Durchfluss, {1}, liegt nicht unter der Nullförderhöhe, {2}; lesen Sie eine davon neu ab</translation>
    </message>
    <message>
        <source>the height of this unit over the pump is not entered, so it counts as level with the pump; enter it</source>
        <translation>die Höhe dieses Geräts über der Pumpe ist nicht eingetragen, also gilt es als auf Pumpenhöhe; tragen Sie sie ein</translation>
    </message>
    <message>
        <source>the impeller diameter at {1} is {2}; it must be above 0, correct this row</source>
        <translation>der Laufraddurchmesser bei {1} ist {2}; er muss über 0 liegen, berichtigen Sie diese Zeile</translation>
    </message>
    <message>
        <source>the impeller is {1} of the curve&apos;s own diameter; it must be above 0</source>
        <translation>das Laufrad ist {1} des Durchmessers der Kennlinie; es muss über 0 liegen</translation>
    </message>
    <message>
        <source>the impeller would be {1} % of the largest that the casing takes, below {2} %; ask the maker, slow the pump or replace it</source>
        <translation>das Laufrad wäre {1} % des größten im Gehäuse, unter {2} %; fragen Sie den Hersteller, verlangsamen Sie die Pumpe oder ersetzen Sie sie</translation>
    </message>
    <message>
        <source>the impeller would be {1}, below the least of {2} for this casing; do not trim, slow the pump or replace it</source>
        <translation>das Laufrad wäre {1}, unter dem kleinsten von {2} für dieses Gehäuse; drehen Sie nicht ab, verlangsamen Sie die Pumpe oder ersetzen Sie sie</translation>
    </message>
    <message>
        <source>the impeller would come below the maker&apos;s minimum of {1}; change the speed or the pump instead</source>
        <translation>das Laufrad käme unter das Mindestmaß {1} des Herstellers; ändern Sie stattdessen die Drehzahl oder die Pumpe</translation>
    </message>
    <message>
        <source>the impeller {1} is smaller than its minimum {2}; correct one of them</source>
        <translation>das Laufrad {1} ist kleiner als sein Mindestmaß {2}; berichtigen Sie eines davon</translation>
    </message>
    <message>
        <source>the index circuit is known and fully open along its path</source>
        <translation>der Schlechtpunktkreis ist bekannt und auf seinem Weg ganz offen</translation>
    </message>
    <message>
        <source>the index circuit is not fully open along its path; open its valves or give the reason</source>
        <translation>der Schlechtpunktkreis ist auf seinem Weg nicht ganz offen; öffnen Sie seine Ventile oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>the index circuit is not known from this round, so nothing can be proved; read every terminal</source>
        <translation>der Schlechtpunktkreis ist aus dieser Runde nicht bekannt, also ist nichts nachweisbar; lesen Sie jeden Verbraucher ab</translation>
    </message>
    <message>
        <source>the index circuit moves from {1} to {2}; open every valve on the new path</source>
        <translation>der Schlechtpunktkreis wandert von {1} zu {2}; öffnen Sie jedes Ventil auf dem neuen Weg</translation>
    </message>
    <message>
        <source>the index is a self-acting valve: the set-point must leave it the start of its range, {1}; read its dp at this set-point</source>
        <translation>am Schlechtpunkt sitzt ein selbsttätiges Ventil: Der Sollwert muss ihm den Beginn seines Bereichs lassen, {1}; lesen Sie seine Δp bei diesem Sollwert ab</translation>
    </message>
    <message>
        <source>the instrument &quot;{1}&quot; is not in the job; did you mean &quot;{2}&quot;?</source>
        <translation>das Messgerät „{1}“ ist nicht im Auftrag; meinten Sie „{2}“?</translation>
    </message>
    <message>
        <source>the instrument &quot;{1}&quot; stands twice; give every instrument its own tag</source>
        <translation>das Messgerät „{1}“ steht zweimal; geben Sie jedem Messgerät eine eigene Kennung</translation>
    </message>
    <message>
        <source>the instrument was calibrated on {1}, after it was used on {2}; keep the certificate that held then</source>
        <translation>das Messgerät wurde am {1} kalibriert, nachdem es am {2} benutzt wurde; bewahren Sie das damals gültige Zertifikat auf</translation>
    </message>
    <message>
        <source>the instrument was used, but its calibration due date is not given; enter it</source>
        <translation>das Messgerät wurde benutzt, aber sein Kalibriertermin fehlt; tragen Sie ihn ein</translation>
    </message>
    <message>
        <source>the job has no branches; add the first one in System</source>
        <translation>der Auftrag hat keine Zweige; fügen Sie den ersten in Anlage hinzu</translation>
    </message>
    <message>
        <source>the job has no branches; add them before reading</source>
        <translation>der Auftrag hat keine Zweige; fügen Sie sie vor dem Ablesen hinzu</translation>
    </message>
    <message>
        <source>the job has no name; add a row with the key &quot;name&quot;</source>
        <translation>der Auftrag hat keinen Namen; fügen Sie eine Zeile mit dem Schlüssel „name“ hinzu</translation>
    </message>
    <message>
        <source>the job has no pump yet; add one on the page Pump Data</source>
        <translation>der Auftrag hat noch keine Pumpe; fügen Sie eine auf der Seite Pumpendaten hinzu</translation>
    </message>
    <message>
        <source>the key &quot;{1}&quot; is not known; did you mean &quot;{2}&quot;? Known are: {3}</source>
        <translation>der Schlüssel „{1}“ ist nicht bekannt; meinten Sie „{2}“? Bekannt sind: {3}</translation>
    </message>
    <message>
        <source>the key &quot;{1}&quot; stands twice; keep one row for it</source>
        <translation>der Schlüssel „{1}“ steht zweimal; behalten Sie eine Zeile dafür</translation>
    </message>
    <message>
        <source>the key could not be written to {1} ({2}); choose a folder that can be written</source>
        <translation>der Schlüssel konnte nicht nach {1} geschrieben werden ({2}); wählen Sie einen beschreibbaren Ordner</translation>
    </message>
    <message>
        <source>the key is locked by a cipher that is no longer safe; export it again with a present-day program</source>
        <translation>der Schlüssel ist mit einem nicht mehr sicheren Verfahren verschlüsselt; exportieren Sie ihn mit einem heutigen Programm neu</translation>
    </message>
    <message>
        <source>the key is of a kind that is not used here; use RSA of 2048 bits or more, or a P-256, P-384 or P-521 key</source>
        <translation>der Schlüssel ist von einer hier nicht benutzten Art; nehmen Sie RSA ab 2048 Bit oder einen P-256-, P-384- oder P-521-Schlüssel</translation>
    </message>
    <message>
        <source>the kind of round {1} is not given; write one of {2}</source>
        <translation>die Art der Runde {1} fehlt; schreiben Sie eine von {2}</translation>
    </message>
    <message>
        <source>the last digits of {1} dps read with instrument {2} are too uneven to be chance, {3} of them end in {4}; check that they were read and not made up</source>
        <translation>die letzten Ziffern von {1} mit Messgerät {2} abgelesenen Δp sind zu ungleich für Zufall, {3} davon enden auf {4}; prüfen Sie, dass sie abgelesen und nicht erfunden sind</translation>
    </message>
    <message>
        <source>the law of trimming cuts too much, by 15 to 20 % of the change; cut first to {1} (three quarters of the calculated cut), test, and cut again</source>
        <translation>das Abdrehgesetz nimmt 15 bis 20 % der Änderung zu viel weg; drehen Sie erst auf {1} ab (drei Viertel des berechneten Abdrehens), prüfen Sie und drehen Sie nach</translation>
    </message>
    <message>
        <source>the learning did not settle; look at the doubtful readings and the design losses</source>
        <translation>das Lernen fand kein Ende; sehen Sie die fraglichen Ablesungen und die Verluste der Auslegung an</translation>
    </message>
    <message>
        <source>the learning was stopped; start it again</source>
        <translation>das Lernen wurde angehalten; starten Sie es neu</translation>
    </message>
    <message>
        <source>the line is longer than {1} characters; it is no row of a table, correct it</source>
        <translation>die Zeile ist länger als {1} Zeichen; sie ist keine Tabellenzeile, berichtigen Sie sie</translation>
    </message>
    <message>
        <source>the link ends at node &quot;{1}&quot;, which does not exist; correct the name or add the node</source>
        <translation>die Verbindung endet an Knoten „{1}“, den es nicht gibt; berichtigen Sie den Namen oder fügen Sie den Knoten hinzu</translation>
    </message>
    <message>
        <source>the link is given twice; give every link its own name</source>
        <translation>die Verbindung ist zweimal angegeben; geben Sie jeder einen eigenen Namen</translation>
    </message>
    <message>
        <source>the link starts and ends at node &quot;{1}&quot;; join it to two different nodes</source>
        <translation>die Verbindung beginnt und endet an Knoten „{1}“; schließen Sie sie an zwei verschiedene Knoten an</translation>
    </message>
    <message>
        <source>the loss of this circuit is not known; enter circuit_loss from the design, or learn it from a survey</source>
        <translation>der Verlust dieses Kreises ist unbekannt; tragen Sie circuit_loss aus der Auslegung ein, oder lernen Sie ihn aus einer Aufnahme</translation>
    </message>
    <message>
        <source>the loss of {1} Pa at {2} m3/s is no point of a loss; both must be above 0</source>
        <translation>der Verlust von {1} Pa bei {2} m3/s ist kein Punkt eines Verlusts; beide müssen über 0 liegen</translation>
    </message>
    <message>
        <source>the low limit of {1} stands above the high limit of {2}; correct them</source>
        <translation>die untere Grenze {1} liegt über der oberen {2}; berichtigen Sie sie</translation>
    </message>
    <message>
        <source>the lower limit {1} % is not below the upper limit {2} %; correct one of them</source>
        <translation>die untere Grenze {1} % liegt nicht unter der oberen {2} %; berichtigen Sie eine davon</translation>
    </message>
    <message>
        <source>the metered input power is chosen: it needs no power factor</source>
        <translation>die gemessene Aufnahmeleistung ist gewählt: Sie braucht keinen Leistungsfaktor</translation>
    </message>
    <message>
        <source>the motor draws {1} A, above its plate of {2} A and within its service factor; do not leave it there</source>
        <translation>der Motor zieht {1} A, über seinem Schild von {2} A und innerhalb seines Servicefaktors; lassen Sie ihn nicht so</translation>
    </message>
    <message>
        <source>the motor draws {1} A, more than plate times service factor, {2} A; throttle the pump&apos;s discharge at once and find out why</source>
        <translation>der Motor zieht {1} A, mehr als Schild mal Servicefaktor, {2} A; drosseln Sie sofort die Druckseite der Pumpe und finden Sie heraus, warum</translation>
    </message>
    <message>
        <source>the motor draws {1}, its plate allows {2}; throttle the pump&apos;s discharge before going on, or the motor may be damaged</source>
        <translation>der Motor zieht {1}, sein Schild erlaubt {2}; drosseln Sie die Druckseite der Pumpe, bevor Sie weitermachen, sonst kann der Motor Schaden nehmen</translation>
    </message>
    <message>
        <source>the motor is {1}: a large pump heats its water within seconds; have the permission of whoever runs the plant</source>
        <translation>der Motor hat {1}: Eine große Pumpe erhitzt ihr Wasser in Sekunden; holen Sie die Erlaubnis des Anlagenbetreibers ein</translation>
    </message>
    <message>
        <source>the motor&apos;s efficiency is not entered, so no energy is computed; enter it with the pump</source>
        <translation>der Wirkungsgrad des Motors ist nicht eingetragen, also wird keine Energie berechnet; tragen Sie ihn bei der Pumpe ein</translation>
    </message>
    <message>
        <source>the motor&apos;s efficiency is the plate&apos;s, at full load; take it at the present load from the maker&apos;s data</source>
        <translation>der Wirkungsgrad des Motors ist der vom Schild, bei Volllast; nehmen Sie ihn bei jetziger Last aus den Daten des Herstellers</translation>
    </message>
    <message>
        <source>the motor&apos;s plate power is not entered, so the clause cannot be tested; enter it</source>
        <translation>die Schildleistung des Motors ist nicht eingetragen, also ist der Abschnitt nicht prüfbar; tragen Sie sie ein</translation>
    </message>
    <message>
        <source>the motor&apos;s plate, {1}, is not above {2}: the pump need not be trimmed or slowed; keep the balance with the least throttling all the same</source>
        <translation>das Motorschild, {1}, liegt nicht über {2}: Die Pumpe muss weder abgedreht noch verlangsamt werden; halten Sie trotzdem den Abgleich mit der geringsten Drosselung</translation>
    </message>
    <message>
        <source>the motor&apos;s power or the pump&apos;s efficiency is not entered, so the motor is not checked; enter them</source>
        <translation>Motorleistung oder Wirkungsgrad der Pumpe sind nicht eingetragen, also wird der Motor nicht geprüft; tragen Sie sie ein</translation>
    </message>
    <message>
        <source>the motor&apos;s speed of {1} rpm does not lie below its synchronous speed of {2} rpm; read the speed again</source>
        <translation>die Motordrehzahl {1} 1/min liegt nicht unter der Synchrondrehzahl {2} 1/min; lesen Sie die Drehzahl neu ab</translation>
    </message>
    <message>
        <source>the name &quot;{1}&quot; stands twice; keep one row for it</source>
        <translation>der Name „{1}“ steht zweimal; behalten Sie eine Zeile dafür</translation>
    </message>
    <message>
        <source>the network has no links; add at least one circuit</source>
        <translation>das Netz hat keine Verbindungen; fügen Sie mindestens einen Kreis hinzu</translation>
    </message>
    <message>
        <source>the new design flow is missing; type it, such as 12.5 gpm or 0.8 L/s</source>
        <translation>der neue Auslegungsdurchfluss fehlt; tippen Sie ihn, etwa 12.5 gpm oder 0.8 L/s</translation>
    </message>
    <message>
        <source>the new design flow must be above 0; to take the circuit away, remove it</source>
        <translation>der neue Auslegungsdurchfluss muss über 0 liegen; um den Kreis wegzunehmen, entfernen Sie ihn</translation>
    </message>
    <message>
        <source>the newest round that was read is no final one; read and close a final round</source>
        <translation>die neueste abgelesene Runde ist keine Schlussrunde; lesen und schließen Sie eine Schlussrunde</translation>
    </message>
    <message>
        <source>the next value typed is kept beside the first, the mean counts; type it and press Enter</source>
        <translation>der nächste getippte Wert wird neben dem ersten behalten, es zählt das Mittel; tippen Sie ihn und drücken Sie Enter</translation>
    </message>
    <message>
        <source>the next value typed takes the place of the doubtful one; type it and press Enter</source>
        <translation>der nächste getippte Wert ersetzt den fraglichen; tippen Sie ihn und drücken Sie Enter</translation>
    </message>
    <message>
        <source>the no-load amps of {1} A are not below the plate&apos;s {2} A; correct the no-load reading</source>
        <translation>der Leerlaufstrom von {1} A liegt nicht unter den {2} A des Schilds; berichtigen Sie die Leerlaufablesung</translation>
    </message>
    <message>
        <source>the node is given twice; give every node its own name</source>
        <translation>der Knoten ist zweimal angegeben; geben Sie jedem einen eigenen Namen</translation>
    </message>
    <message>
        <source>the number {1} stands twice; give every deficiency its own</source>
        <translation>die Nummer {1} steht zweimal; geben Sie jedem Mangel eine eigene</translation>
    </message>
    <message>
        <source>the other copy holds nothing that is not here; there is nothing to merge</source>
        <translation>die andere Kopie enthält nichts, was hier fehlt; es gibt nichts zusammenzuführen</translation>
    </message>
    <message>
        <source>the parent &quot;{1}&quot; is not among the branches; did you mean &quot;{2}&quot;?</source>
        <translation>der speisende Zweig „{1}“ ist nicht unter den Zweigen; meinten Sie „{2}“?</translation>
    </message>
    <message>
        <source>the passphrase does not open this key; type it again</source>
        <translation>die Passphrase öffnet diesen Schlüssel nicht; tippen Sie sie noch einmal</translation>
    </message>
    <message>
        <source>the passphrase is shorter than {1} characters; choose a longer one</source>
        <translation>die Passphrase ist kürzer als {1} Zeichen; wählen Sie eine längere</translation>
    </message>
    <message>
        <source>the pipe diameters at the taps are not both known, so no velocity head is counted; enter them</source>
        <translation>die Rohrdurchmesser an den Messstellen sind nicht beide bekannt, also zählt keine Geschwindigkeitshöhe; tragen Sie sie ein</translation>
    </message>
    <message>
        <source>the pipe&apos;s inside diameter is {1} m; it must be above 0</source>
        <translation>der Innendurchmesser des Rohrs ist {1} m; er muss über 0 liegen</translation>
    </message>
    <message>
        <source>the pipe&apos;s length is {1} m; it must be above 0</source>
        <translation>die Länge des Rohrs ist {1} m; sie muss über 0 liegen</translation>
    </message>
    <message>
        <source>the pipe&apos;s roughness is {1} m; it must lie between 0 and a tenth of the inside diameter</source>
        <translation>die Rauheit des Rohrs ist {1} m; sie muss zwischen 0 und einem Zehntel des Innendurchmessers liegen</translation>
    </message>
    <message>
        <source>the position of this pump&apos;s discharge valve was not read in the final state; read it</source>
        <translation>die Stellung des Drosselventils dieser Pumpe wurde im Schlusszustand nicht abgelesen; lesen Sie sie ab</translation>
    </message>
    <message>
        <source>the power at {1} is {2}; it must be above 0, correct this row</source>
        <translation>die Leistung bei {1} ist {2}; sie muss über 0 liegen, berichtigen Sie diese Zeile</translation>
    </message>
    <message>
        <source>the power factor is the plate&apos;s, at full load; at part load it is lower, so measure it</source>
        <translation>der Leistungsfaktor ist der vom Schild, bei Volllast; bei Teillast ist er kleiner, also messen Sie ihn</translation>
    </message>
    <message>
        <source>the practice building has no branch {1}; read one of those that the job was made with</source>
        <translation>das Übungsgebäude hat keinen Zweig {1}; lesen Sie einen ab, mit dem der Auftrag angelegt wurde</translation>
    </message>
    <message>
        <source>the practice building has no pump {1}; read the one that the job was made with</source>
        <translation>das Übungsgebäude hat keine Pumpe {1}; lesen Sie die ab, mit der der Auftrag angelegt wurde</translation>
    </message>
    <message>
        <source>the pressure is given at a node that does not exist; correct the name</source>
        <translation>der Druck ist an einem Knoten angegeben, den es nicht gibt; berichtigen Sie den Namen</translation>
    </message>
    <message>
        <source>the pressure is given here and at node &quot;{1}&quot; of the same loop; keep one, a closed loop has one expansion vessel</source>
        <translation>der Druck ist hier und an Knoten „{1}“ desselben Kreislaufs angegeben; behalten Sie einen, ein geschlossener Kreislauf hat ein Ausdehnungsgefäß</translation>
    </message>
    <message>
        <source>the program met a defect in itself ({1}); what was stored is safe, close and open the workbook again</source>
        <translation>das Programm stieß auf einen eigenen Fehler ({1}); Gespeichertes ist sicher, schließen und öffnen Sie die Arbeitsmappe</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; has no rows in pump_curve.csv; give at least two points</source>
        <translation>die Pumpe „{1}“ hat keine Zeilen in pump_curve.csv; geben Sie mindestens zwei Punkte an</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; is not in pumps.csv; did you mean &quot;{2}&quot;?</source>
        <translation>die Pumpe „{1}“ ist nicht in pumps.csv; meinten Sie „{2}“?</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; is not in the job; did you mean &quot;{2}&quot;?</source>
        <translation>die Pumpe „{1}“ ist nicht im Auftrag; meinten Sie „{2}“?</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; stands twice; give every pump its own tag</source>
        <translation>die Pumpe „{1}“ steht zweimal; geben Sie jeder eine eigene Kennung</translation>
    </message>
    <message>
        <source>the pump curve bends sharply at {1} (its slope changes by a factor of {2}); check this point for a slip</source>
        <translation>die Kennlinie knickt bei {1} scharf (ihre Neigung ändert sich um den Faktor {2}); prüfen Sie diesen Punkt auf einen Tippfehler</translation>
    </message>
    <message>
        <source>the pump curve has flow {1} with head {2}; neither may be below zero, correct this row</source>
        <translation>die Kennlinie hat Durchfluss {1} mit Förderhöhe {2}; keines darf unter null liegen, berichtigen Sie diese Zeile</translation>
    </message>
    <message>
        <source>the pump gives {1} by its curve, the terminals add up to {2}; check gauges, curve and impeller, and look for an open bypass</source>
        <translation>die Pumpe gibt nach Kennlinie {1}, die Verbraucher ergeben {2}; prüfen Sie Manometer, Kennlinie und Laufrad und suchen Sie einen offenen Bypass</translation>
    </message>
    <message>
        <source>the pump has no drive; slowing needs one, or other sheaves, installed by licensed people</source>
        <translation>die Pumpe hat keinen Umrichter; Verlangsamen braucht einen, oder andere Riemenscheiben, eingebaut von zugelassenen Leuten</translation>
    </message>
    <message>
        <source>the pump has no usable curve, so it gives no flow; enter at least two points</source>
        <translation>die Pumpe hat keine brauchbare Kennlinie, also gibt sie keinen Durchfluss; tragen Sie mindestens zwei Punkte ein</translation>
    </message>
    <message>
        <source>the pump has no usable curve; enter at least two points of falling head, with the flow of each</source>
        <translation>die Pumpe hat keine brauchbare Kennlinie; tragen Sie mindestens zwei Punkte fallender Förderhöhe ein, jeden mit Durchfluss</translation>
    </message>
    <message>
        <source>the pump makes no excess head, so both ways leave the same; there is nothing to save</source>
        <translation>die Pumpe erzeugt keine überschüssige Förderhöhe, also lassen beide Verfahren dasselbe; es gibt nichts zu sparen</translation>
    </message>
    <message>
        <source>the pump makes {1} Pa at zero flow; it must be above 0, check the curve</source>
        <translation>die Pumpe erzeugt {1} Pa bei Durchfluss null; es muss über 0 liegen, prüfen Sie die Kennlinie</translation>
    </message>
    <message>
        <source>the pump runs at {1} % of full speed, where it makes no excess head; it is reduced as asked, keep it so</source>
        <translation>die Pumpe läuft mit {1} % der vollen Drehzahl, wo sie keine überschüssige Förderhöhe erzeugt; sie ist reduziert wie verlangt, lassen Sie es so</translation>
    </message>
    <message>
        <source>the pump stands still, or it is too weak to move water through the loop; check speed, curve and losses</source>
        <translation>die Pumpe steht still, oder sie ist zu schwach, um Wasser durch den Kreislauf zu bewegen; prüfen Sie Drehzahl, Kennlinie und Verluste</translation>
    </message>
    <message>
        <source>the pump would take {1} and the motor may give {2}; a larger motor is needed, ask a licensed electrician</source>
        <translation>die Pumpe nähme {1} auf und der Motor darf {2} geben; ein größerer Motor ist nötig, fragen Sie eine Elektrofachkraft</translation>
    </message>
    <message>
        <source>the pump&apos;s efficiency is not known, so the excess power cannot be computed; enter it with the curve, or read the motor&apos;s power</source>
        <translation>der Wirkungsgrad der Pumpe ist unbekannt, also ist der Leistungsüberschuss nicht berechenbar; tragen Sie ihn zur Kennlinie ein, oder lesen Sie die Motorleistung ab</translation>
    </message>
    <message>
        <source>the pump&apos;s first point stands at {1} m3/h; the power law needs its first point at zero flow</source>
        <translation>der erste Punkt der Pumpe steht bei {1} m3/h; das Potenzgesetz braucht seinen ersten Punkt bei Durchfluss null</translation>
    </message>
    <message>
        <source>the pump&apos;s pressure does not fall from {1} kPa between {2} and {3} m3/h; correct these points</source>
        <translation>der Druck der Pumpe fällt von {1} kPa zwischen {2} und {3} m3/h nicht; berichtigen Sie diese Punkte</translation>
    </message>
    <message>
        <source>the pump&apos;s specific speed is {1} (rpm, gpm, ft), so its power rises towards shutoff; do not make a shutoff test without the maker&apos;s word</source>
        <translation>die spezifische Drehzahl der Pumpe ist {1} (1/min, gpm, ft), also steigt ihre Leistung zur Nullförderung hin; machen Sie keinen Nullförderversuch ohne Zusage des Herstellers</translation>
    </message>
    <message>
        <source>the pump&apos;s speed is {1} of rated; it must be a number of 0 (stopped) or more</source>
        <translation>die Drehzahl der Pumpe ist {1} des Nennwerts; sie muss eine Zahl ab 0 (steht) sein</translation>
    </message>
    <message>
        <source>the pump&apos;s table gives no efficiencies, so its specific speed is not known; make sure that it is a radial pump before it is run shut</source>
        <translation>die Tabelle der Pumpe nennt keine Wirkungsgrade, also ist ihre spezifische Drehzahl unbekannt; stellen Sie sicher, dass es eine Radialpumpe ist, bevor sie geschlossen läuft</translation>
    </message>
    <message>
        <source>the range of constant flow is {1} to {2} Pa; the start must be above 0 and the end above it</source>
        <translation>der Bereich konstanten Durchflusses ist {1} bis {2} Pa; der Anfang muss über 0 liegen und das Ende darüber</translation>
    </message>
    <message>
        <source>the ratio of amps is chosen: neither power factor nor no-load amps are known</source>
        <translation>das Stromverhältnis ist gewählt: Weder Leistungsfaktor noch Leerlaufstrom sind bekannt</translation>
    </message>
    <message>
        <source>the ratio of amps reads too high at {1} % load; it holds above about 65 %, prefer another way</source>
        <translation>das Stromverhältnis zeigt bei {1} % Last zu viel; es gilt ab etwa 65 %, ziehen Sie ein anderes Verfahren vor</translation>
    </message>
    <message>
        <source>the readiness list is done</source>
        <translation>die Liste der Bereitschaft ist erledigt</translation>
    </message>
    <message>
        <source>the readings and the plate allow none of the five ways to the shaft power; read volts, amps and power factor, or the input power</source>
        <translation>Ablesungen und Schild erlauben keines der fünf Verfahren für die Wellenleistung; lesen Sie Spannung, Strom und Leistungsfaktor ab, oder die Aufnahmeleistung</translation>
    </message>
    <message>
        <source>the reference has not been read; read it first</source>
        <translation>die Referenz wurde nicht abgelesen; lesen Sie sie zuerst ab</translation>
    </message>
    <message>
        <source>the reference went from {1} to {2} % of design between its last two readings, more than the band of {3} %; read it again</source>
        <translation>die Referenz ging zwischen ihren letzten zwei Ablesungen von {1} auf {2} % der Auslegung, mehr als das Band von {3} %; lesen Sie sie neu ab</translation>
    </message>
    <message>
        <source>the report could not be written to {1} ({2}); choose a folder that exists and may be written, with room on the disk</source>
        <translation>der Bericht konnte nicht nach {1} geschrieben werden ({2}); wählen Sie einen vorhandenen, beschreibbaren Ordner mit Platz</translation>
    </message>
    <message>
        <source>the report has no page {1}; write the report again</source>
        <translation>der Bericht hat keine Seite {1}; schreiben Sie ihn neu</translation>
    </message>
    <message>
        <source>the report is of another workbook, or of a state that this one never had; open the workbook it names</source>
        <translation>der Bericht gehört zu einer anderen Arbeitsmappe oder einem Stand, den diese nie hatte; öffnen Sie die darin genannte</translation>
    </message>
    <message>
        <source>the report is of this workbook as it stands now</source>
        <translation>der Bericht ist von dieser Arbeitsmappe, wie sie jetzt steht</translation>
    </message>
    <message>
        <source>the report is of this workbook, which was changed since; sign a new report for what stands now</source>
        <translation>der Bericht ist von dieser Arbeitsmappe, die seither geändert wurde; signieren Sie einen neuen für den jetzigen Stand</translation>
    </message>
    <message>
        <source>the report is signed, but the workbook could not note it ({1}); open the workbook for changes and sign again under another name</source>
        <translation>der Bericht ist signiert, aber die Arbeitsmappe konnte es nicht vermerken ({1}); öffnen Sie sie zum Ändern und signieren Sie unter anderem Namen neu</translation>
    </message>
    <message>
        <source>the report was changed after it was signed; write it again, then sign that</source>
        <translation>der Bericht wurde nach der Signatur geändert; schreiben Sie ihn neu und signieren Sie dann diesen</translation>
    </message>
    <message>
        <source>the resistance is {1} Pa/(m3/s)^2; it must be a number of 0 or more, correct it or close the link</source>
        <translation>der Widerstand ist {1} Pa/(m3/s)^2; er muss eine Zahl ab 0 sein, berichtigen Sie ihn oder schließen Sie die Verbindung</translation>
    </message>
    <message>
        <source>the row at {1} has no impeller diameter; give one on every row of a family of curves or on none</source>
        <translation>die Zeile bei {1} hat keinen Laufraddurchmesser; geben Sie einen in jeder Zeile einer Kennlinienfamilie an oder in keiner</translation>
    </message>
    <message>
        <source>the row corrects row {1} of its round, which has {2} in this table; give the number of another one</source>
        <translation>die Zeile berichtigt Zeile {1} ihrer Runde, die in dieser Tabelle {2} hat; geben Sie die Nummer einer anderen an</translation>
    </message>
    <message>
        <source>the row has neither setting, dp, flow nor a note; give what was read or take the row out</source>
        <translation>die Zeile hat weder Einstellung, Δp, Durchfluss noch Notiz; geben Sie an, was abgelesen wurde, oder nehmen Sie sie heraus</translation>
    </message>
    <message>
        <source>the row has no reading at all; give what was read or take the row out</source>
        <translation>die Zeile hat gar keine Ablesung; geben Sie an, was abgelesen wurde, oder nehmen Sie sie heraus</translation>
    </message>
    <message>
        <source>the row has {1} cells and the header {2}; put a text that has a separator into quotation marks</source>
        <translation>die Zeile hat {1} Zellen und der Kopf {2}; setzen Sie einen Text mit Trennzeichen in Anführungszeichen</translation>
    </message>
    <message>
        <source>the row names no round; give its number, 1 is the survey</source>
        <translation>die Zeile nennt keine Runde; geben Sie ihre Nummer an, 1 ist die Aufnahme</translation>
    </message>
    <message>
        <source>the row needs one coefficient; give it in the column Cv or Kv, not in both</source>
        <translation>die Zeile braucht einen Beiwert; geben Sie ihn in der Spalte Cv oder Kv an, nicht in beiden</translation>
    </message>
    <message>
        <source>the sensor reads {1} with the pumps off, more than its accuracy of {2}; have it zeroed before the set-point is taken from it</source>
        <translation>der Fühler zeigt {1} bei stehenden Pumpen, mehr als seine Genauigkeit {2}; lassen Sie ihn nullen, bevor der Sollwert davon genommen wird</translation>
    </message>
    <message>
        <source>the sensor was not read with the pumps off; stop the pumps, read it and enter the value</source>
        <translation>der Fühler wurde bei stehenden Pumpen nicht abgelesen; halten Sie die Pumpen an, lesen Sie ihn ab und tragen Sie den Wert ein</translation>
    </message>
    <message>
        <source>the set flow is {1} m3/s; it must be a number of 0 or more</source>
        <translation>der eingestellte Durchfluss ist {1} m3/s; er muss eine Zahl ab 0 sein</translation>
    </message>
    <message>
        <source>the set-point follows the flow, but the flow at which it was found is not entered; enter it</source>
        <translation>der Sollwert folgt dem Durchfluss, aber der Durchfluss, bei dem er gefunden wurde, fehlt; tragen Sie ihn ein</translation>
    </message>
    <message>
        <source>the set-point of {1} is {2} % of what the index circuit needs at design flow, above 110 %; lower it</source>
        <translation>der Sollwert {1} ist {2} % dessen, was der Schlechtpunktkreis bei Auslegungsdurchfluss braucht, über 110 %; senken Sie ihn</translation>
    </message>
    <message>
        <source>the setting needed, {1}, is below {2}, where tables and marks are not reliable; set it by the dp, or fit a smaller valve</source>
        <translation>die nötige Einstellung, {1}, liegt unter {2}, wo Tabellen und Marken unzuverlässig sind; stellen Sie nach der Δp ein, oder bauen Sie ein kleineres Ventil ein</translation>
    </message>
    <message>
        <source>the signature does not fit the certificate of {1}; do not rely on this file, ask for it again</source>
        <translation>die Signatur passt nicht zum Zertifikat von {1}; verlassen Sie sich nicht auf diese Datei, fordern Sie sie neu an</translation>
    </message>
    <message>
        <source>the signature is not written as it must be ({1}); do not rely on this file, ask for it again</source>
        <translation>die Signatur ist nicht geschrieben, wie sie sein muss ({1}); verlassen Sie sich nicht auf diese Datei, fordern Sie sie neu an</translation>
    </message>
    <message>
        <source>the signed report could not be written; choose a place with room that can be written</source>
        <translation>der signierte Bericht konnte nicht geschrieben werden; wählen Sie einen beschreibbaren Ort mit Platz</translation>
    </message>
    <message>
        <source>the signed report there belongs to another workbook; give the report another name</source>
        <translation>der signierte Bericht dort gehört zu einer anderen Arbeitsmappe; geben Sie dem Bericht einen anderen Namen</translation>
    </message>
    <message>
        <source>the signed report there does not verify ({1}); keep it aside and sign a new report under another name</source>
        <translation>der signierte Bericht dort besteht die Prüfung nicht ({1}); legen Sie ihn beiseite und signieren Sie einen neuen unter anderem Namen</translation>
    </message>
    <message>
        <source>the slip is chosen: nothing better was read</source>
        <translation>der Schlupf ist gewählt: Besseres wurde nicht abgelesen</translation>
    </message>
    <message>
        <source>the speed would be {1} % of rated, below the least of {2} %; trim or throttle instead, or ask the maker</source>
        <translation>die Drehzahl wäre {1} % des Nennwerts, unter der kleinsten von {2} %; drehen Sie ab oder drosseln Sie stattdessen, oder fragen Sie den Hersteller</translation>
    </message>
    <message>
        <source>the standard uncertainty of this reading is {1} of its value; it must be above 0, state the instrument&apos;s accuracy</source>
        <translation>die Standardunsicherheit dieser Ablesung ist {1} ihres Werts; sie muss über 0 liegen, geben Sie die Genauigkeit des Messgeräts an</translation>
    </message>
    <message>
        <source>the static lift is {1} Pa; give a number</source>
        <translation>die statische Höhe ist {1} Pa; geben Sie eine Zahl an</translation>
    </message>
    <message>
        <source>the straight pipe before and behind the device is not recorded; it needs {1} and {2} diameters, look and enter it</source>
        <translation>das gerade Rohr vor und hinter der Armatur ist nicht eingetragen; nötig sind {1} und {2} Durchmesser, sehen Sie nach und tragen Sie es ein</translation>
    </message>
    <message>
        <source>the sum of minor loss coefficients is {1}; it must not be below 0</source>
        <translation>die Summe der Einzelwiderstandsbeiwerte ist {1}; sie darf nicht unter 0 liegen</translation>
    </message>
    <message>
        <source>the table cannot be written; check room and permissions there</source>
        <translation>die Tabelle kann nicht geschrieben werden; prüfen Sie dort Platz und Rechte</translation>
    </message>
    <message>
        <source>the table has no branches; give at least one row</source>
        <translation>die Tabelle hat keine Zweige; geben Sie mindestens eine Zeile an</translation>
    </message>
    <message>
        <source>the tables of the file are not those of a workbook ({1}); keep it as it is and open a copy from before</source>
        <translation>die Tabellen der Datei sind nicht die einer Arbeitsmappe ({1}); lassen Sie sie, wie sie ist, und öffnen Sie eine frühere Kopie</translation>
    </message>
    <message>
        <source>the tag &quot;{1}&quot; is not among the branches; did you mean &quot;{2}&quot;?</source>
        <translation>die Kennung „{1}“ ist nicht unter den Zweigen; meinten Sie „{2}“?</translation>
    </message>
    <message>
        <source>the tag &quot;{1}&quot; stands already in row {2}; give every one its own</source>
        <translation>die Kennung „{1}“ steht schon in Zeile {2}; geben Sie jedem eine eigene</translation>
    </message>
    <message>
        <source>the tag {1} is taken; type another</source>
        <translation>die Kennung {1} ist vergeben; tippen Sie eine andere</translation>
    </message>
    <message>
        <source>the text has more than {1} characters; shorten it</source>
        <translation>der Text hat mehr als {1} Zeichen; kürzen Sie ihn</translation>
    </message>
    <message>
        <source>the text is not UTF-8; save the file as &quot;CSV UTF-8&quot;</source>
        <translation>der Text ist nicht UTF-8; speichern Sie die Datei als „CSV UTF-8“</translation>
    </message>
    <message>
        <source>the three-way valve stands at {1}; its position must lie between 0 and 1</source>
        <translation>das Dreiwegeventil steht auf {1}; seine Stellung muss zwischen 0 und 1 liegen</translation>
    </message>
    <message>
        <source>the valve &quot;{1}&quot; has a range of dp and no table, which only a limiter or a picv can do with; give its table in valves.csv or correct the kind</source>
        <translation>das Ventil „{1}“ hat einen Δp-Bereich und keine Tabelle, womit nur ein Begrenzer oder PICV auskommt; geben Sie seine Tabelle in valves.csv an oder berichtigen Sie die Art</translation>
    </message>
    <message>
        <source>the valve &quot;{1}&quot; of size &quot;{2}&quot; is not in valves.csv; did you mean &quot;{3}&quot;?</source>
        <translation>das Ventil „{1}“ der Größe „{2}“ ist nicht in valves.csv; meinten Sie „{3}“?</translation>
    </message>
    <message>
        <source>the valve of {1} was moved after the reference was read; read the reference again</source>
        <translation>das Ventil von {1} wurde bewegt, nachdem die Referenz abgelesen war; lesen Sie die Referenz neu ab</translation>
    </message>
    <message>
        <source>the valve takes so little here that its side hardly matters for air; what counts is straight pipe</source>
        <translation>das Ventil nimmt hier so wenig, dass seine Seite für die Luft kaum zählt; es kommt auf gerades Rohr an</translation>
    </message>
    <message>
        <source>the viscosity is {1} m2/s; it must be above 0</source>
        <translation>die Viskosität ist {1} m2/s; sie muss über 0 liegen</translation>
    </message>
    <message>
        <source>the voltage is {1} % of the plate&apos;s; motors are made for 90 to 110 %, have the supply checked</source>
        <translation>die Spannung ist {1} % des Schilds; Motoren sind für 90 bis 110 % gebaut, lassen Sie die Zuleitung prüfen</translation>
    </message>
    <message>
        <source>the voltages of the phases differ by {1} % of their mean, more than {2} %; have the supply checked by a licensed electrician before the pump runs on</source>
        <translation>die Spannungen der Phasen weichen um {1} % ihres Mittels ab, mehr als {2} %; lassen Sie die Zuleitung von einer Elektrofachkraft prüfen, bevor die Pumpe weiterläuft</translation>
    </message>
    <message>
        <source>the water is {1}: gauges and vents scald, and a shut pump boils soon; have the permission of whoever runs the plant</source>
        <translation>das Wasser hat {1}: Manometer und Entlüfter verbrühen, und eine geschlossene Pumpe kocht bald; holen Sie die Erlaubnis des Anlagenbetreibers ein</translation>
    </message>
    <message>
        <source>the way with no-load amps is chosen: no power factor was measured, and it follows the load down</source>
        <translation>das Verfahren mit Leerlaufstrom ist gewählt: Kein Leistungsfaktor wurde gemessen, und es stimmt auch bei kleiner Last</translation>
    </message>
    <message>
        <source>the witness round confirms {1} of {2} terminals</source>
        <translation>die Zeugenrunde bestätigt {1} von {2} Verbrauchern</translation>
    </message>
    <message>
        <source>the witness round found {1} of {2} terminals more than 10 % off; read all again, or give the reason</source>
        <translation>die Zeugenrunde fand {1} von {2} Verbrauchern mehr als 10 % daneben; lesen Sie alles neu ab, oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>the workbook was changed after that report was signed; sign a new report under another name</source>
        <translation>die Arbeitsmappe wurde nach Signatur dieses Berichts geändert; signieren Sie einen neuen unter anderem Namen</translation>
    </message>
    <message>
        <source>there is a branch with this tag already; give the new one another tag</source>
        <translation>es gibt schon einen Zweig mit dieser Kennung; geben Sie dem neuen eine andere</translation>
    </message>
    <message>
        <source>there is a round {1} already; give this one another number</source>
        <translation>es gibt schon eine Runde {1}; geben Sie dieser eine andere Nummer</translation>
    </message>
    <message>
        <source>there is neither readings.csv nor pump_readings.csv with rows; put one into the folder</source>
        <translation>weder readings.csv noch pump_readings.csv mit Zeilen ist da; legen Sie eine in den Ordner</translation>
    </message>
    <message>
        <source>there is no action that can be taken back; go on with the work</source>
        <translation>keine Handlung kann zurückgenommen werden; arbeiten Sie weiter</translation>
    </message>
    <message>
        <source>there is no plain file &quot;{1}&quot; in the folder attachments; put it there or take the row out</source>
        <translation>im Ordner attachments ist keine einfache Datei „{1}“; legen Sie sie dorthin oder nehmen Sie die Zeile heraus</translation>
    </message>
    <message>
        <source>there is no reading to learn from; enter at least one dp at a valve</source>
        <translation>keine Ablesung zum Lernen ist da; tragen Sie mindestens eine Δp an einem Ventil ein</translation>
    </message>
    <message>
        <source>there is no round of readings yet; open one</source>
        <translation>noch keine Runde mit Ablesungen; öffnen Sie eine</translation>
    </message>
    <message>
        <source>there is no such file; check its name and folder</source>
        <translation>diese Datei gibt es nicht; prüfen Sie Namen und Ordner</translation>
    </message>
    <message>
        <source>there is no such folder; give the folder that holds job.csv and the other tables</source>
        <translation>diesen Ordner gibt es nicht; geben Sie den Ordner mit job.csv und den anderen Tabellen an</translation>
    </message>
    <message>
        <source>this branch feeds others; choose a terminal for the profile of a circuit</source>
        <translation>dieser Zweig speist andere; wählen Sie einen Verbraucher für den Druckverlauf eines Kreises</translation>
    </message>
    <message>
        <source>this branch has no valve with a table; it cannot be adjusted here</source>
        <translation>dieser Zweig hat kein Ventil mit Tabelle; er kann hier nicht eingestellt werden</translation>
    </message>
    <message>
        <source>this branch has no valve, so there is no setting; store a reading without one</source>
        <translation>dieser Zweig hat kein Ventil, also keine Einstellung; speichern Sie eine Ablesung ohne</translation>
    </message>
    <message>
        <source>this branch has readings, which stay for the record, so it is not taken out of this job; make a new workbook for the changed building</source>
        <translation>dieser Zweig hat Ablesungen, die im Protokoll bleiben, darum wird er nicht aus dem Auftrag genommen; legen Sie für das geänderte Gebäude eine neue Arbeitsmappe an</translation>
    </message>
    <message>
        <source>this branch is fed through itself: {1}; correct one parent, the first is fed at the pump</source>
        <translation>dieser Zweig wird durch sich selbst gespeist: {1}; berichtigen Sie einen speisenden Zweig, den ersten speist die Pumpe</translation>
    </message>
    <message>
        <source>this branch is marked as not balanced without a reason; write the reason</source>
        <translation>dieser Zweig ist ohne Grund als nicht einreguliert markiert; schreiben Sie den Grund</translation>
    </message>
    <message>
        <source>this branch would be fed from itself by way of its parents; choose another parent</source>
        <translation>dieser Zweig würde über andere durch sich selbst gespeist; wählen Sie einen anderen speisenden Zweig</translation>
    </message>
    <message>
        <source>this conflict is not in the job any more; look at the list again</source>
        <translation>dieser Konflikt ist nicht mehr im Auftrag; sehen Sie die Liste neu an</translation>
    </message>
    <message>
        <source>this is a positive displacement pump: running it shut bursts it or its pipe; do not make a shutoff test</source>
        <translation>dies ist eine Verdrängerpumpe: Geschlossen laufend sprengt sie sich oder ihr Rohr; machen Sie keinen Nullförderversuch</translation>
    </message>
    <message>
        <source>this is no PKCS#12 key file; choose a file that ends in .p12 or .pfx</source>
        <translation>dies ist keine PKCS#12-Schlüsseldatei; wählen Sie eine Datei mit der Endung .p12 oder .pfx</translation>
    </message>
    <message>
        <source>this is not a copy of the open workbook: their journals have no record in common; choose the file that the other laptop worked in</source>
        <translation>dies ist keine Kopie der offenen Arbeitsmappe: Ihre Journale haben keinen gemeinsamen Eintrag; wählen Sie die Datei des anderen Laptops</translation>
    </message>
    <message>
        <source>this is not a workbook; choose a file that was made as one</source>
        <translation>dies ist keine Arbeitsmappe; wählen Sie eine Datei, die als solche angelegt wurde</translation>
    </message>
    <message>
        <source>this job has no valve &quot;{1}&quot;; type one of {2}, or nothing</source>
        <translation>dieser Auftrag hat kein Ventil „{1}“; tippen Sie eines von {2}, oder nichts</translation>
    </message>
    <message>
        <source>this job was opened for reading only, so nothing was stored; open it for changes first</source>
        <translation>dieser Auftrag wurde nur zum Lesen geöffnet, also wurde nichts gespeichert; öffnen Sie ihn erst zum Ändern</translation>
    </message>
    <message>
        <source>this pump alone keeps water moving through a chiller or boiler; do not make a shutoff test unless whoever runs the plant has shut that down and agrees</source>
        <translation>diese Pumpe allein hält Wasser durch Kältemaschine oder Kessel in Bewegung; machen Sie keinen Nullförderversuch, außer der Anlagenbetreiber hat diese abgeschaltet und stimmt zu</translation>
    </message>
    <message>
        <source>this reading was marked doubtful by hand; read again or give the reason</source>
        <translation>diese Ablesung wurde von Hand als fraglich markiert; lesen Sie neu ab oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>this terminal is fully open and takes less of design than the index circuit; match the groups again so that the index is proved</source>
        <translation>dieser Verbraucher ist ganz offen und nimmt weniger von Auslegung als der Schlechtpunktkreis; gleichen Sie die Gruppen neu ab, damit der Schlechtpunkt nachgewiesen ist</translation>
    </message>
    <message>
        <source>this valve has no reading in this round; read it first</source>
        <translation>dieses Ventil hat in dieser Runde keine Ablesung; lesen Sie es erst ab</translation>
    </message>
    <message>
        <source>this valve is on the index circuit and stands at {1}, not fully open at {2}; open it and match the others to it</source>
        <translation>dieses Ventil liegt im Schlechtpunktkreis und steht auf {1}, nicht ganz offen auf {2}; öffnen Sie es und gleichen Sie die anderen daran ab</translation>
    </message>
    <message>
        <source>this valve is the reference of its group; read it as a try, or find another valve</source>
        <translation>dieses Ventil ist die Referenz seiner Gruppe; lesen Sie es als Versuch ab, oder wählen Sie ein anderes Ventil</translation>
    </message>
    <message>
        <source>this valve stands before the unit, where it lowers the pressure in it: air comes out there, and makes noise and false readings; move it to the return side, or vent at the unit</source>
        <translation>dieses Ventil sitzt vor dem Gerät, wo es den Druck darin senkt: Dort tritt Luft aus und macht Geräusch und falsche Ablesungen; versetzen Sie es in den Rücklauf, oder entlüften Sie am Gerät</translation>
    </message>
    <message>
        <source>this workbook can only be read here; save a copy and work in that</source>
        <translation>diese Arbeitsmappe ist hier nur lesbar; speichern Sie eine Kopie und arbeiten Sie darin</translation>
    </message>
    <message>
        <source>this would answer an answer; answer the first comment instead</source>
        <translation>das würde eine Antwort beantworten; antworten Sie stattdessen auf den ersten Kommentar</translation>
    </message>
    <message>
        <source>throttling takes {1} more than a reduced pump would, above the limit of {2}; trim the impeller or slow the pump, and open its valve</source>
        <translation>Drosseln braucht {1} mehr als eine reduzierte Pumpe, über der Grenze von {2}; drehen Sie das Laufrad ab oder verlangsamen Sie die Pumpe und öffnen Sie ihr Ventil</translation>
    </message>
    <message>
        <source>throttling takes {1} more than a reduced pump would, not above the limit of {2}: the throttle may stay; write down its position</source>
        <translation>Drosseln braucht {1} mehr als eine reduzierte Pumpe, nicht über der Grenze von {2}: Die Drossel darf bleiben; schreiben Sie ihre Stellung auf</translation>
    </message>
    <message>
        <source>too weak at full speed; see below</source>
        <translation>bei voller Drehzahl zu schwach; siehe unten</translation>
    </message>
    <message>
        <source>trusted: its chain leads to a certificate you gave</source>
        <translation>vertrauenswürdig: Seine Kette führt zu einem von Ihnen angegebenen Zertifikat</translation>
    </message>
    <message>
        <source>two gauges were read but their heights are not known, so no correction for height is made; enter the heights, or read both taps with one gauge</source>
        <translation>zwei Manometer wurden abgelesen, aber ihre Höhen sind unbekannt, also wird keine Höhe berichtigt; tragen Sie die Höhen ein, oder lesen Sie beide Stellen mit einem Manometer ab</translation>
    </message>
    <message>
        <source>unchanged, the whole file</source>
        <translation>unverändert, die ganze Datei</translation>
    </message>
    <message>
        <source>unchanged, up to this signature</source>
        <translation>unverändert, bis zu dieser Signatur</translation>
    </message>
    <message>
        <source>under the readable minimum, so that the flow is only a range: {1} ({2}); read them another way</source>
        <translation>unter dem ablesbaren Mindestwert, sodass der Durchfluss nur ein Bereich ist: {1} ({2}); messen Sie sie anders</translation>
    </message>
    <message>
        <source>volts, amps and power factor are chosen: the input power was not metered</source>
        <translation>Spannung, Strom und Leistungsfaktor sind gewählt: Die Aufnahmeleistung wurde nicht gemessen</translation>
    </message>
    <message>
        <source>waiting for review</source>
        <translation>wartet auf Prüfung</translation>
    </message>
    <message>
        <source>waiting for signature</source>
        <translation>wartet auf Signatur</translation>
    </message>
    <message>
        <source>what is known beforehand of factor {1} is no number; correct its design loss</source>
        <translation>was vom Faktor {1} vorab bekannt ist, ist keine Zahl; berichtigen Sie seinen Auslegungsverlust</translation>
    </message>
    <message>
        <source>what was read here does not fit the other readings and is left out; read it again</source>
        <translation>was hier abgelesen wurde, passt nicht zu den anderen Ablesungen und bleibt weg; lesen Sie neu ab</translation>
    </message>
    <message>
        <source>what was signed has been changed since; do not rely on this file, ask for it again</source>
        <translation>das Signierte wurde seither geändert; verlassen Sie sich nicht auf diese Datei, fordern Sie sie neu an</translation>
    </message>
    <message>
        <source>windows that are open keep their words; start Waterwright again to see it in {1}</source>
        <translation>offene Fenster behalten ihre Worte; starten Sie Waterwright neu, um es auf {1} zu sehen</translation>
    </message>
    <message>
        <source>with everything open it takes {1} % of design flow; verify its setting, its valve table, air and strainer before adjusting</source>
        <translation>bei allem offen nimmt er {1} % des Auslegungsdurchflusses; prüfen Sie Einstellung, Ventiltabelle, Luft und Schmutzfänger, bevor Sie einstellen</translation>
    </message>
    <message>
        <source>with its corrections the head is {1}; check the gauge heights and the zero reading</source>
        <translation>mit ihren Korrekturen ist die Förderhöhe {1}; prüfen Sie die Manometerhöhen und die Nullablesung</translation>
    </message>
    <message>
        <source>with the pump off the gauges differ by {1} after correction for height; use one gauge for both taps, or have them calibrated</source>
        <translation>bei stehender Pumpe weichen die Manometer nach Höhenkorrektur um {1} ab; nehmen Sie ein Manometer für beide Stellen, oder lassen Sie sie kalibrieren</translation>
    </message>
    <message>
        <source>with the pumps off the highest point stands at {1}, below the {2} that keep air out; raise the fill pressure, within what vessel and relief valve allow</source>
        <translation>bei stehenden Pumpen steht der höchste Punkt auf {1}, unter den {2}, die Luft fernhalten; erhöhen Sie den Fülldruck, soweit Gefäß und Sicherheitsventil es erlauben</translation>
    </message>
    <message>
        <source>with the valve behind the unit its water stands {1} higher and holds {2} mL/L more air; keep the valve on the return side</source>
        <translation>mit dem Ventil hinter dem Gerät steht sein Wasser {1} höher und hält {2} mL/L mehr Luft; lassen Sie das Ventil im Rücklauf</translation>
    </message>
    <message>
        <source>with {1} terminals the readings are not compared with a learned loop here; use advise for that</source>
        <translation>bei {1} Verbrauchern werden die Ablesungen hier nicht mit einem gelernten Kreislauf verglichen; nutzen Sie dafür advise</translation>
    </message>
    <message>
        <source>{1} % of design flow in the last round</source>
        <translation>{1} % des Auslegungsdurchflusses in der letzten Runde</translation>
    </message>
    <message>
        <source>{1} (clock of the signing computer)</source>
        <translation>{1} (Uhr des signierenden Rechners)</translation>
    </message>
    <message>
        <source>{1} (self-made certificate)</source>
        <translation>{1} (selbst erstelltes Zertifikat)</translation>
    </message>
    <message>
        <source>{1} C is outside 0 to 150 C, where the solubility of air is computed; correct the temperature</source>
        <translation>{1} C liegt außerhalb 0 bis 150 C, wo die Löslichkeit von Luft berechnet wird; berichtigen Sie die Temperatur</translation>
    </message>
    <message>
        <source>{1} across a shut valve is not above zero; check hoses and valves and read again</source>
        <translation>{1} an einem geschlossenen Ventil liegt nicht über null; prüfen Sie Schläuche und Ventile und lesen Sie neu ab</translation>
    </message>
    <message>
        <source>{1} across the valve is above {2}, it may be noisy or cavitate; lower the pump&apos;s head or throttle elsewhere too</source>
        <translation>{1} am Ventil liegt über {2}, es kann rauschen oder kavitieren; senken Sie die Förderhöhe der Pumpe oder drosseln Sie auch anderswo</translation>
    </message>
    <message>
        <source>{1} actions of {2} were taken over, {3} values are left to decide; undo takes all back at once</source>
        <translation>{1} Handlungen von {2} wurden übernommen, {3} Werte sind zu entscheiden; Rückgängig nimmt alles auf einmal zurück</translation>
    </message>
    <message>
        <source>{1} answered: &quot;{2}&quot;</source>
        <translation>{1} antwortete: „{2}“</translation>
    </message>
    <message>
        <source>{1} asks: &quot;{2}&quot;; correct the reading, or answer on the place Review (Alt+6)</source>
        <translation>{1} fragt: „{2}“; berichtigen Sie die Ablesung, oder antworten Sie in Prüfung (Alt+6)</translation>
    </message>
    <message>
        <source>{1} at the motor is {2} % off its plate&apos;s {3}; have the supply checked</source>
        <translation>{1} am Motor liegt {2} % neben den {3} des Schilds; lassen Sie die Zuleitung prüfen</translation>
    </message>
    <message>
        <source>{1} at the unit with the valve on the return, {2} on the supply</source>
        <translation>{1} am Gerät mit Ventil im Rücklauf, {2} im Vorlauf</translation>
    </message>
    <message>
        <source>{1} at the unit with the valve on the return, {2} on the supply; its water holds {3} and {4} mL/L of air</source>
        <translation>{1} am Gerät mit Ventil im Rücklauf, {2} im Vorlauf; sein Wasser hält {3} und {4} mL/L Luft</translation>
    </message>
    <message>
        <source>{1} at {2} of {3}, and every valve on its path fully open</source>
        <translation>{1} auf {2} von {3}, und jedes Ventil auf seinem Weg ganz offen</translation>
    </message>
    <message>
        <source>{1} at {2} of {3}, but not fully open on its path: {4}</source>
        <translation>{1} auf {2} von {3}, aber auf seinem Weg nicht ganz offen: {4}</translation>
    </message>
    <message>
        <source>{1} branches, of these {2} terminals; index circuit: {3}.</source>
        <translation>{1} Zweige, davon {2} Verbraucher; Schlechtpunktkreis: {3}.</translation>
    </message>
    <message>
        <source>{1} by the signer&apos;s clock</source>
        <translation>{1} nach der Uhr des Signierenden</translation>
    </message>
    <message>
        <source>{1} could not be read; choose a file that is there</source>
        <translation>{1} war nicht lesbar; wählen Sie eine vorhandene Datei</translation>
    </message>
    <message>
        <source>{1} has no dp in this round</source>
        <translation>{1} hat in dieser Runde keine Δp</translation>
    </message>
    <message>
        <source>{1} has no valve to be read; read its neighbours</source>
        <translation>{1} hat kein abzulesendes Ventil; lesen Sie die Nachbarn ab</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); read it again</source>
        <translation>{1} in Runde {2} passt nicht zu den anderen Ablesungen, die {3} erwarten (z {4}); lesen Sie neu ab</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); setting {5} instead of {6} would explain it, look at the handle and read it again</source>
        <translation>{1} in Runde {2} passt nicht zu den anderen Ablesungen, die {3} erwarten (z {4}); Einstellung {5} statt {6} würde es erklären, sehen Sie den Griff an und lesen Sie neu ab</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); the hoses are probably reversed, swap them and read it again</source>
        <translation>{1} in Runde {2} passt nicht zu den anderen Ablesungen, die {3} erwarten (z {4}); die Schläuche sind wohl vertauscht, tauschen Sie sie und lesen Sie neu ab</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); the same digits in {5} would, correct the unit or read it again</source>
        <translation>{1} in Runde {2} passt nicht zu den anderen Ablesungen, die {3} erwarten (z {4}); dieselben Ziffern in {5} würden passen, berichtigen Sie die Einheit oder lesen Sie neu ab</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); valve {5} instead of {6} would explain it, look at the valve&apos;s size and read it again</source>
        <translation>{1} in Runde {2} passt nicht zu den anderen Ablesungen, die {3} erwarten (z {4}); Ventil {5} statt {6} würde es erklären, sehen Sie die Ventilgröße an und lesen Sie neu ab</translation>
    </message>
    <message>
        <source>{1} in round {2} stands out, {3} was expected (z {4}); read it again before anything rests on it, one round alone cannot tell a wrong reading from an obstruction</source>
        <translation>{1} in Runde {2} fällt auf, erwartet war {3} (z {4}); lesen Sie neu ab, bevor etwas darauf beruht, eine Runde allein trennt Ablesefehler nicht von Verstopfung</translation>
    </message>
    <message>
        <source>{1} is before a reading of round {2} ({3}); correct the date or the round</source>
        <translation>{1} liegt vor einer Ablesung der Runde {2} ({3}); berichtigen Sie Datum oder Runde</translation>
    </message>
    <message>
        <source>{1} is before the row above it in its round ({2}); correct the time or put the rows in order</source>
        <translation>{1} liegt vor der Zeile darüber in ihrer Runde ({2}); berichtigen Sie die Zeit oder ordnen Sie die Zeilen</translation>
    </message>
    <message>
        <source>{1} is below the freezing point {2} of this mixture; correct temperature or concentration</source>
        <translation>{1} liegt unter dem Gefrierpunkt {2} dieser Mischung; berichtigen Sie Temperatur oder Konzentration</translation>
    </message>
    <message>
        <source>{1} is below zero, the hoses are probably reversed; swap them and read again, or store {2}</source>
        <translation>{1} liegt unter null, die Schläuche sind wohl vertauscht; tauschen Sie sie und lesen Sie neu ab, oder speichern Sie {2}</translation>
    </message>
    <message>
        <source>{1} is below zero; a loss is zero or more</source>
        <translation>{1} liegt unter null; ein Verlust ist null oder mehr</translation>
    </message>
    <message>
        <source>{1} is below zero; type zero or more, or nothing</source>
        <translation>{1} liegt unter null; tippen Sie null oder mehr, oder nichts</translation>
    </message>
    <message>
        <source>{1} is far from the expected {2}, in {3} it would be {4}; correct the unit, read again or give the reason</source>
        <translation>{1} liegt fern vom erwarteten {2}, in {3} wären es {4}; berichtigen Sie die Einheit, lesen Sie neu ab oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>{1} is far from {2} read at the same setting in round {3}; read again or give the reason</source>
        <translation>{1} liegt fern von {2}, bei derselben Einstellung in Runde {3} abgelesen; lesen Sie neu ab oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>{1} is far from {2} that the design flow needs at this setting; read again or give the reason</source>
        <translation>{1} liegt fern von {2}, die der Auslegungsdurchfluss bei dieser Einstellung braucht; lesen Sie neu ab oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>{1} is fed by this branch itself; choose a branch nearer the pump</source>
        <translation>{1} wird von diesem Zweig selbst gespeist; wählen Sie einen Zweig näher an der Pumpe</translation>
    </message>
    <message>
        <source>{1} is in table {2} but not in the journal; another program put it there, do not trust it</source>
        <translation>{1} steht in Tabelle {2}, aber nicht im Journal; ein anderes Programm hat es hineingesetzt, trauen Sie ihm nicht</translation>
    </message>
    <message>
        <source>{1} is in the journal but not in table {2}; another program removed it, open a copy from before</source>
        <translation>{1} steht im Journal, aber nicht in Tabelle {2}; ein anderes Programm hat es entfernt, öffnen Sie eine frühere Kopie</translation>
    </message>
    <message>
        <source>{1} is negative; this value must be {2}, correct it</source>
        <translation>{1} ist negativ; dieser Wert muss {2} sein, berichtigen Sie ihn</translation>
    </message>
    <message>
        <source>{1} is no height of a building above the sea; type one within -500 and 6000 m</source>
        <translation>{1} ist keine Höhe eines Gebäudes über dem Meer; tippen Sie eine zwischen -500 und 6000 m</translation>
    </message>
    <message>
        <source>{1} is not a number that a deficiency can have; give one that is free, from 1</source>
        <translation>{1} ist keine mögliche Nummer eines Mangels; geben Sie eine freie an, ab 1</translation>
    </message>
    <message>
        <source>{1} is not above zero; type a value above zero</source>
        <translation>{1} liegt nicht über null; tippen Sie einen Wert über null</translation>
    </message>
    <message>
        <source>{1} is not after the calibration of {2}; correct one of the dates</source>
        <translation>{1} liegt nicht nach der Kalibrierung vom {2}; berichtigen Sie eines der Daten</translation>
    </message>
    <message>
        <source>{1} is not below zero; type the lower limit as -10</source>
        <translation>{1} liegt nicht unter null; tippen Sie die untere Grenze als -10</translation>
    </message>
    <message>
        <source>{1} is not on the scale, {2} to {3}; type what the handle shows</source>
        <translation>{1} liegt nicht auf der Skala, {2} bis {3}; tippen Sie, was der Griff zeigt</translation>
    </message>
    <message>
        <source>{1} is not on this valve&apos;s scale, {2} to {3}, and is not stored; correct the setting</source>
        <translation>{1} liegt nicht auf der Skala dieses Ventils, {2} bis {3}, und wird nicht gespeichert; berichtigen Sie die Einstellung</translation>
    </message>
    <message>
        <source>{1} is off the valve&apos;s scale, {2} to {3}; correct the setting or the valve</source>
        <translation>{1} liegt neben der Skala des Ventils, {2} bis {3}; berichtigen Sie Einstellung oder Ventil</translation>
    </message>
    <message>
        <source>{1} is off this valve&apos;s scale, {2} to {3}; correct the setting</source>
        <translation>{1} liegt neben der Skala dieses Ventils, {2} bis {3}; berichtigen Sie die Einstellung</translation>
    </message>
    <message>
        <source>{1} is out of reason; type a value within {2} %</source>
        <translation>{1} ist nicht glaubhaft; tippen Sie einen Wert innerhalb {2} %</translation>
    </message>
    <message>
        <source>{1} is outside this valve&apos;s scale, {2} to {3}; type what the handle shows</source>
        <translation>{1} liegt außerhalb der Skala dieses Ventils, {2} bis {3}; tippen Sie, was der Griff zeigt</translation>
    </message>
    <message>
        <source>{1} is outside {2} to {3}; correct it</source>
        <translation>{1} liegt außerhalb {2} bis {3}; berichtigen Sie es</translation>
    </message>
    <message>
        <source>{1} is too large to be true; check digits and unit</source>
        <translation>{1} ist zu groß, um wahr zu sein; prüfen Sie Ziffern und Einheit</translation>
    </message>
    <message>
        <source>{1} is {2} % of the range {3} of instrument {4}; read between 10 and 95 % of it with another instrument</source>
        <translation>{1} ist {2} % des Bereichs {3} von Messgerät {4}; lesen Sie mit einem anderen zwischen 10 und 95 % ab</translation>
    </message>
    <message>
        <source>{1} lies on the index circuit and its valve stands at {2} of {3}; open it fully and match the others to it</source>
        <translation>{1} liegt im Schlechtpunktkreis und sein Ventil steht auf {2} von {3}; öffnen Sie es ganz und gleichen Sie die anderen daran ab</translation>
    </message>
    <message>
        <source>{1} of {2} dps are digit for digit those of round {3}; check that they were read and not copied</source>
        <translation>{1} von {2} Δp sind Ziffer für Ziffer die der Runde {3}; prüfen Sie, dass sie abgelesen und nicht abgeschrieben sind</translation>
    </message>
    <message>
        <source>{1} of {2} dps read the same {3}; check that they were read and not copied</source>
        <translation>{1} von {2} Δp lauten gleich {3}; prüfen Sie, dass sie abgelesen und nicht abgeschrieben sind</translation>
    </message>
    <message>
        <source>{1} of {2} flows equal their design flow to a tenth of a percent; check that they were read and not copied</source>
        <translation>{1} von {2} Durchflüssen gleichen ihrem Auslegungsdurchfluss auf ein Zehntelprozent; prüfen Sie, dass sie gemessen und nicht abgeschrieben sind</translation>
    </message>
    <message>
        <source>{1} of {2} lines that must hold are done or do not apply.</source>
        <translation>{1} von {2} Pflichtzeilen sind erledigt oder entfallen.</translation>
    </message>
    <message>
        <source>{1} of {2} terminals have neither a reading nor a reason; read them or say why not</source>
        <translation>{1} von {2} Verbrauchern ohne Ablesung und ohne Grund; lesen Sie sie ab oder sagen Sie, warum nicht</translation>
    </message>
    <message>
        <source>{1} of {2} terminals on share (of target within 100 ± {3} %)</source>
        <translation>{1} von {2} Verbrauchern im Anteil (vom Soll innerhalb 100 ± {3} %)</translation>
    </message>
    <message>
        <source>{1} on record, of these open: {2}.</source>
        <translation>{1} eingetragen, davon offen: {2}.</translation>
    </message>
    <message>
        <source>{1} pumps share this duty; trim all alike, and the stand-by with them</source>
        <translation>{1} Pumpen teilen diesen Betriebspunkt; drehen Sie alle gleich ab, auch die Reservepumpe</translation>
    </message>
    <message>
        <source>{1} read it again who had read it before; have somebody else read the sample</source>
        <translation>{1} las neu ab, wer schon vorher abgelesen hatte; lassen Sie jemand anderen die Stichprobe ablesen</translation>
    </message>
    <message>
        <source>{1} readings of this round are dated before the one entered before them, the first is of {2} after {3}; check the clock and correct the time</source>
        <translation>{1} Ablesungen dieser Runde sind früher datiert als die zuvor eingetragene, die erste vom {2} nach {3}; prüfen Sie die Uhr und berichtigen Sie die Zeit</translation>
    </message>
    <message>
        <source>{1} was read in {2}, most readings of instrument {3} in this round are in {4}; check the unit</source>
        <translation>{1} wurde in {2} abgelesen, die meisten Ablesungen mit Messgerät {3} in dieser Runde sind in {4}; prüfen Sie die Einheit</translation>
    </message>
    <message>
        <source>{1} {4}, {2} % of the design flow of {3} {4}</source>
        <translation>{1} {4}, {2} % des Auslegungsdurchflusses von {3} {4}</translation>
    </message>
    <message>
        <source>{1}, certificate by {2}</source>
        <translation>{1}, Zertifikat von {2}</translation>
    </message>
    <message>
        <source>{1}, listed in section {2}</source>
        <translation>{1}, aufgeführt in Abschnitt {2}</translation>
    </message>
    <message>
        <source>{1}. {2}; press Ctrl+U to store {3}</source>
        <translation>{1}. {2}; drücken Sie Strg+U, um {3} zu speichern</translation>
    </message>
    <message>
        <source>{1}: {3} of table {2} is not what the journal says ({4} instead of {5}); another program changed it, do not trust it</source>
        <translation>{1}: {3} der Tabelle {2} ist nicht, was das Journal sagt ({4} statt {5}); ein anderes Programm hat es geändert, trauen Sie ihm nicht</translation>
    </message>
    <message>
        <source>P₂/P₁ = (n₂/n₁)³ = {1}: {2} % {3w}</source>
        <translation>P₂/P₁ = (n₂/n₁)³ = {1}: {2} % {3w}</translation>
    </message>
    <message>
        <source>Reason given: {1}</source>
        <translation>Angegebener Grund: {1}</translation>
    </message>
    <message>
        <source>Round {1} ({2w}), {3}</source>
        <translation>Runde {1} ({2w}), {3}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no kind of branch; type one of {2w}</source>
        <translation>„{1}“ ist keine Art eines Zweigs; tippen Sie eine von {2w}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is none of the words of this column; type one of {2w}</source>
        <translation>„{1}“ ist keines der Wörter dieser Spalte; tippen Sie eines von {2w}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit of this value; use one of {2}</source>
        <translation>„{1}“ ist keine Einheit dieses Werts; nehmen Sie eine von {2}</translation>
    </message>
    <message>
        <source>a reading of round {1}, which is {2w}, is neither changed nor removed; enter a reading that corrects it</source>
        <translation>eine Ablesung der Runde {1} ({2w}) wird weder geändert noch entfernt; tragen Sie eine ein, die sie berichtigt</translation>
    </message>
    <message>
        <source>could not be read: no reason given</source>
        <translation>nicht ablesbar: kein Grund angegeben</translation>
    </message>
    <message>
        <source>doubtful reading {1w} kept: no reason given</source>
        <translation>fragliche Ablesung {1w} behalten: kein Grund angegeben</translation>
    </message>
    <message>
        <source>doubtful reading {1w} kept: {2}</source>
        <translation>fragliche Ablesung {1w} behalten: {2}</translation>
    </message>
    <message>
        <source>flow by {1w} is {2} and by {3w} is {4}, z = {5}: more apart than their uncertainties allow; find out which is wrong</source>
        <translation>Durchfluss nach {1w} ist {2} und nach {3w} {4}, z = {5}: weiter auseinander, als ihre Unsicherheiten erlauben; finden Sie heraus, was falsch ist</translation>
    </message>
    <message>
        <source>round {1} is {2w} and is neither removed nor numbered anew; open a new round</source>
        <translation>Runde {1} ist {2w} und wird weder entfernt noch neu nummeriert; öffnen Sie eine neue Runde</translation>
    </message>
    <message>
        <source>round {1} is {2w} and takes only readings that correct one of its own; say which reading this one corrects, or open a new round</source>
        <translation>Runde {1} ist {2w} und nimmt nur Ablesungen, die eine ihrer eigenen berichtigen; sagen Sie, welche diese berichtigt, oder öffnen Sie eine neue Runde</translation>
    </message>
    <message>
        <source>round {1} is {2w}, and withdrawing that needs a reason; give it</source>
        <translation>Runde {1} ist {2w}, und sie zurückzuziehen braucht einen Grund; geben Sie ihn an</translation>
    </message>
    <message>
        <source>round {1} is {2w}, so nothing in it is chosen; withdraw that first, with a reason</source>
        <translation>Runde {1} ist {2w}, also wird darin nichts gewählt; ziehen Sie das erst zurück, mit Grund</translation>
    </message>
    <message>
        <source>spread {1} %</source>
        <translation>Streuung {1} %</translation>
    </message>
    <message>
        <source>tested again {1}</source>
        <translation>nachgeprüft {1}</translation>
    </message>
    <message>
        <source>tested by {1w}, {2w}; the authority having jurisdiction decides</source>
        <translation>geprüft nach: {1w}, {2w}; die zuständige Behörde entscheidet</translation>
    </message>
    <message>
        <source>the PDF is damaged or not whole ({1w}); ask for the file again from whoever wrote it</source>
        <translation>das PDF ist beschädigt oder unvollständig ({1w}); erbitten Sie die Datei neu von dem, der sie schrieb</translation>
    </message>
    <message>
        <source>the PDF is of a form that is not read here ({1w}); give the report as Waterwright wrote it</source>
        <translation>das PDF hat eine Form, die hier nicht gelesen wird ({1w}); geben Sie den Bericht, wie Waterwright ihn schrieb</translation>
    </message>
    <message>
        <source>the file cannot be read ({1w}); check its rights and the disk it is on</source>
        <translation>die Datei ist nicht lesbar ({1w}); prüfen Sie ihre Rechte und das Laufwerk</translation>
    </message>
    <message>
        <source>the file cannot be written ({1w}); check its rights, its folder and the free space, nothing was changed</source>
        <translation>die Datei ist nicht beschreibbar ({1w}); prüfen Sie ihre Rechte, ihren Ordner und den freien Platz, nichts wurde geändert</translation>
    </message>
    <message>
        <source>the fluid is {1w} but its concentration is 0 %, so flows are computed as for water; enter the concentration</source>
        <translation>das Medium ist {1w}, aber seine Konzentration ist 0 %, also wird wie mit Wasser gerechnet; tragen Sie die Konzentration ein</translation>
    </message>
    <message>
        <source>the readings do not fit the loop as designed (probability {1w} %); look for a control valve that moves, air, a strainer or a pipe that the schedule lacks, the uncertainties given are too small</source>
        <translation>die Ablesungen passen nicht zum ausgelegten Kreislauf (Wahrscheinlichkeit {1w} %); suchen Sie ein bewegtes Regelventil, Luft, einen Schmutzfänger oder ein in der Liste fehlendes Rohr, die Unsicherheiten sind zu klein</translation>
    </message>
    <message>
        <source>the signature could not be made ({1w}); nothing was changed, try another key</source>
        <translation>die Signatur gelang nicht ({1w}); nichts wurde geändert, versuchen Sie einen anderen Schlüssel</translation>
    </message>
    <message>
        <source>the throttle keeps wasting {1} of head, {2w} at the shaft; leave it only where the energy code exempts the pump</source>
        <translation>die Drossel vergeudet weiter {1} Förderhöhe, {2w} an der Welle; lassen Sie sie nur, wo die Energievorschrift die Pumpe befreit</translation>
    </message>
    <message>
        <source>there is a {1w} of this name already; choose another name</source>
        <translation>dieser Name ist schon vergeben ({1w}); wählen Sie einen anderen</translation>
    </message>
    <message>
        <source>this refers to a {1w} that is not in the job; add it first or choose another</source>
        <translation>dies verweist auf etwas, das nicht im Auftrag ist ({1w}); fügen Sie es erst hinzu oder wählen Sie anderes</translation>
    </message>
    <message>
        <source>withdrawn: {1}</source>
        <translation>zurückgezogen: {1}</translation>
    </message>
    <message>
        <source>{1w} corrected to {2w} at {3w} by a person not written</source>
        <translation>{1w} berichtigt zu {2w} ({3w}), Person nicht notiert</translation>
    </message>
    <message>
        <source>{1w} corrected to {2w} at {3w} by {4}</source>
        <translation>{1w} berichtigt zu {2w} ({3w}) von {4}</translation>
    </message>
    <message>
        <source>{1w} struck: no reason given</source>
        <translation>{1w} gestrichen: kein Grund angegeben</translation>
    </message>
    <message>
        <source>{1w} struck: {2}</source>
        <translation>{1w} gestrichen: {2}</translation>
    </message>
    <message>
        <source>{1w} {2} by mass at {3}, density {4} kg/m³</source>
        <translation>{1w} {2} Massenanteil bei {3}, Dichte {4} kg/m³</translation>
    </message>
    <message>
        <source>{1w} {2} is still used by {3w} {4}; remove that first or let it use another</source>
        <translation>{1w} {2} wird noch benutzt: {3w} {4}; entfernen Sie das erst oder lassen Sie es anderes nutzen</translation>
    </message>
    <message>
        <source>{1w}, round {2}</source>
        <translation>{1w}, Runde {2}</translation>
    </message>
    <message>
        <source>{1w}; limits {2w} to {3w}; flow {4w}, speed {5w}</source>
        <translation>{1w}; Grenzen {2w} bis {3w}; Durchfluss {4w}, Drehzahl {5w}</translation>
    </message>
    <message>
        <source>{1} (the same)</source>
        <translation>{1} (derselbe)</translation>
    </message>
    <message>
        <source>{1} by the head at shutoff; the record says {2w}</source>
        <translation>{1} nach der Nullförderhöhe; eingetragen ist {2w}</translation>
    </message>
    <message>
        <source>{1} file</source>
        <translation>{1} Datei</translation>
    </message>
    <message>
        <source>{1} files</source>
        <translation>{1} Dateien</translation>
    </message>
    <message>
        <source>{1} kWh and {2w} more than with the pump reduced</source>
        <translation>{1} kWh und {2w} mehr als mit reduzierter Pumpe</translation>
    </message>
    <message>
        <source>{1} of {2}</source>
        <translation>{1} von {2}</translation>
    </message>
    <message>
        <source>{1} open</source>
        <translation>{1} offen</translation>
    </message>
    <message>
        <source>{1} self-made</source>
        <translation>{1} selbst erstellt</translation>
    </message>
    <message>
        <source>{1}, behind {2w}</source>
        <translation>{1}, hinter {2w}</translation>
    </message>
    <message>
        <source>{1}, index</source>
        <translation>{1}, Schlechtpunkt</translation>
    </message>
    <message>
        <source>the cell has a formula whose result was not stored; open the file in a spreadsheet program and save it</source>
        <translation>die Zelle hat eine Formel, deren Ergebnis nicht gespeichert ist; öffnen Sie die Datei in einer Tabellenkalkulation und speichern Sie sie</translation>
    </message>
    <message>
        <source>the cell {1} lies beyond column {2}, where no table reaches; clear it</source>
        <translation>die Zelle {1} liegt hinter Spalte {2}, wohin keine Tabelle reicht; leeren Sie sie</translation>
    </message>
    <message>
        <source>the file has a password or is of the older binary kind; save it as XLSX without a password</source>
        <translation>die Datei hat ein Kennwort oder ist von der älteren binären Art; speichern Sie sie als XLSX ohne Kennwort</translation>
    </message>
    <message>
        <source>the file has {1} MB, more than the {2} MB that a spreadsheet may have; take out what is not needed</source>
        <translation>die Datei hat {1} MB, mehr als die {2} MB einer Tabellenmappe; nehmen Sie Unnötiges heraus</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; cannot be understood (line {2}); open the file in a spreadsheet program and save it anew as XLSX</source>
        <translation>der Teil „{1}“ ist nicht verständlich (Zeile {2}); öffnen Sie die Datei in einer Tabellenkalkulation und speichern Sie sie neu als XLSX</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; declares a document type, which no spreadsheet does, so it is not read; save it anew</source>
        <translation>der Teil „{1}“ erklärt einen Dokumenttyp, was keine Tabelle tut, und wird nicht gelesen; speichern Sie sie neu</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; is missing; open the file in a spreadsheet program and save it anew as XLSX</source>
        <translation>der Teil „{1}“ fehlt; öffnen Sie die Datei in einer Tabellenkalkulation und speichern Sie sie neu als XLSX</translation>
    </message>
    <message>
        <source>the part &quot;{1}&quot; unpacks to more than a sheet of tables can need, so it is not read; save the tables alone as a new XLSX</source>
        <translation>der Teil „{1}“ wird entpackt größer, als ein Tabellenblatt braucht, und wird nicht gelesen; speichern Sie nur die Tabellen als neue XLSX</translation>
    </message>
    <message>
        <source>the sheet &quot;{1}&quot; has more than {2} cells; take out what is not needed</source>
        <translation>das Blatt „{1}“ hat mehr als {2} Zellen; nehmen Sie Unnötiges heraus</translation>
    </message>
    <message>
        <source>the sheet is empty; give it a row of headings and data</source>
        <translation>das Blatt ist leer; geben Sie ihm eine Kopfzeile und Daten</translation>
    </message>
    <message>
        <source>there is no sheet &quot;{1}&quot; in the spreadsheet; add it, or give a sheet that name</source>
        <translation>in der Tabelle gibt es kein Blatt „{1}“; fügen Sie es hinzu, oder geben Sie einem Blatt diesen Namen</translation>
    </message>
    <message>
        <source>there is no such file; give the name of a spreadsheet or a folder of tables</source>
        <translation>diese Datei gibt es nicht; geben Sie den Namen einer Tabelle oder eines Ordners mit Tabellen an</translation>
    </message>
    <message>
        <source>A forecast, not a reading: nothing was built or turned. Pipe sizes, expansion, relief and the electrical supply of a changed loop are for licensed engineers and local codes to decide.</source>
        <translation>Eine Vorhersage, keine Ablesung: Nichts wurde gebaut oder gedreht. Rohrgrößen, Ausdehnung, Absicherung und Stromversorgung eines geänderten Kreislaufs sind Sache zugelassener Ingenieure und örtlicher Vorschriften.</translation>
    </message>
    <message>
        <source>No round was read yet: settings are those entered, resistances those of the design.</source>
        <translation>Noch wurde keine Runde abgelesen: Einstellungen sind die eingetragenen, Widerstände die der Auslegung.</translation>
    </message>
    <message>
        <source>Settings are those of round {1}; resistances are learned from the readings where there are enough, else taken from the design.</source>
        <translation>Einstellungen sind die der Runde {1}; Widerstände sind aus Ablesungen gelernt, wo es genug gibt, sonst aus der Auslegung.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is in the job already; leave the row out, or give it another name</source>
        <translation>„{1}“ ist schon im Auftrag; lassen Sie die Zeile weg, oder geben Sie einen anderen Namen</translation>
    </message>
    <message>
        <source>a valve model needs a name; type it as its maker&apos;s table has it</source>
        <translation>ein Ventilmodell braucht einen Namen; tippen Sie ihn wie in der Tabelle des Herstellers</translation>
    </message>
    <message>
        <source>added at the pump, {1} at design</source>
        <translation>an der Pumpe hinzugefügt, {1} bei Auslegung</translation>
    </message>
    <message>
        <source>added below {1}, {2} at design</source>
        <translation>hinter {1} hinzugefügt, {2} bei Auslegung</translation>
    </message>
    <message>
        <source>line {1} has no two columns; copy the settings and the coefficients beside them</source>
        <translation>Zeile {1} hat keine zwei Spalten; kopieren Sie die Einstellungen mit den Beiwerten daneben</translation>
    </message>
    <message>
        <source>line {1}: &quot;{2}&quot; is not a number from 0; correct it where it was copied from</source>
        <translation>Zeile {1}: „{2}“ ist keine Zahl ab 0; berichtigen Sie sie, wo sie kopiert wurde</translation>
    </message>
    <message>
        <source>no branch of the same pipe is before or after this one; move it to another pipe by &quot;Fed by&quot;</source>
        <translation>kein Zweig desselben Rohrs liegt davor oder dahinter; versetzen Sie ihn mit „Gespeist von“ an ein anderes Rohr</translation>
    </message>
    <message>
        <source>round {1} is closed, so this corrects its reading and the old value stays in the history; for new readings take it back (Ctrl+Z) and open the next round (Ctrl+Shift+N)</source>
        <translation>Runde {1} ist geschlossen, also berichtigt dies ihre Ablesung und der alte Wert bleibt im Verlauf; für neue Ablesungen nehmen Sie es zurück (Strg+Z) und öffnen die nächste Runde (Strg+Umschalt+N)</translation>
    </message>
    <message>
        <source>round {1} is with the supervisor and takes no more readings here; open the next round</source>
        <translation>Runde {1} liegt bei der Leitung und nimmt hier keine Ablesungen mehr; öffnen Sie die nächste Runde</translation>
    </message>
    <message>
        <source>taken away with all below it</source>
        <translation>entfernt mit allem dahinter</translation>
    </message>
    <message>
        <source>the checkpoint &quot;{1}&quot; is stored; Ctrl+Shift+H shows the job as it stood there</source>
        <translation>der Sicherungspunkt „{1}“ ist gespeichert; Strg+Umschalt+H zeigt den Auftrag zu diesem Stand</translation>
    </message>
    <message>
        <source>the most dp {1} is not above the least dp {2}; type another</source>
        <translation>die größte Δp {1} liegt nicht über der kleinsten {2}; tippen Sie eine andere</translation>
    </message>
    <message>
        <source>the pump &quot;{1}&quot; has its curve in the job already; leave its rows out</source>
        <translation>die Pumpe „{1}“ hat ihre Kennlinie schon im Auftrag; lassen Sie ihre Zeilen weg</translation>
    </message>
    <message>
        <source>the table has no rows below its headings; fill it in</source>
        <translation>die Tabelle hat unter den Köpfen keine Zeilen; füllen Sie sie aus</translation>
    </message>
    <message>
        <source>this valve has no scale or no setting to step from; type its setting (Tab)</source>
        <translation>dieses Ventil hat keine Skala oder keine Einstellung zum Weiterzählen; tippen Sie seine Einstellung (Tab)</translation>
    </message>
    <message>
        <source>{2} at design instead of {1}</source>
        <translation>{2} bei Auslegung statt {1}</translation>
    </message>
    <message>
        <source>Last dp</source>
        <translation>Letzte Δp</translation>
    </message>
    <message>
        <source>Meter: {1}    Serial: ____________    Zero before: __________    Zero after: __________</source>
        <translation>Messgerät: {1}    Nummer: ____________    Null vorher: __________    Null nachher: __________</translation>
    </message>
    <message>
        <source>Read by: ____________________    Date: ______________    Unit of dp: {1}</source>
        <translation>Abgelesen von: ____________________    Datum: ______________    Einheit der Δp: {1}</translation>
    </message>
    <message>
        <source>Round {1} ({2w}): readings in the order of the route</source>
        <translation>Runde {1} ({2w}): Ablesungen in der Reihenfolge des Weges</translation>
    </message>
    <message>
        <source>Set now</source>
        <translation>Steht auf</translation>
    </message>
    <message>
        <source>Setting found</source>
        <translation>Einstellung gefunden</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>dp read</source>
        <translation>Δp abgelesen</translation>
    </message>
    <message>
        <source>the handbook does not stand beside the program; install the program anew</source>
        <translation>das Handbuch liegt nicht beim Programm; installieren Sie das Programm neu</translation>
    </message>
    <message>
        <source>the sample jobs do not stand beside the program; install the program anew</source>
        <translation>die Beispielaufträge liegen nicht beim Programm; installieren Sie das Programm neu</translation>
    </message>
    <message>
        <source>there is no row to import; choose a CSV or XLSX file with headings and rows</source>
        <translation>es gibt keine Zeile zu importieren; wählen Sie eine CSV- oder XLSX-Datei mit Köpfen und Zeilen</translation>
    </message>
    <message>
        <source>what was asked for is in {1}; open it from there</source>
        <translation>was verlangt war, steht in {1}; öffnen Sie es dort</translation>
    </message>
    <message>
        <source>{1} cannot be written ({2}); choose a place with room</source>
        <translation>{1} kann nicht geschrieben werden ({2}); wählen Sie einen Ort mit Platz</translation>
    </message>
    <message>
        <source>{1} is in the job; Ctrl+Z takes it back</source>
        <translation>{1} ist im Auftrag; Strg+Z nimmt es zurück</translation>
    </message>
    <message>
        <source>Not shown that this circuit governs the pump head: the part that is missing is marked above; mend it, or sign with the reason.</source>
        <translation>Nicht gezeigt, dass dieser Kreis die Förderhöhe bestimmt: was fehlt, ist oben markiert; beheben Sie es, oder signieren Sie mit dem Grund.</translation>
    </message>
    <message>
        <source>Not shown that {1} is the index: it takes {2} % of design, and fully open too with less are {3}; match groups and risers, read again, or sign with the reason</source>
        <translation>Nicht gezeigt, dass {1} der Schlechtpunkt ist: er nimmt {2} % der Auslegung, ebenfalls ganz offen mit weniger: {3}; gleichen Sie Gruppen und Steigstränge ab, lesen Sie neu ab, oder signieren Sie mit dem Grund</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no supervisor or engineer of this job; let one of them work at this desk, menu Round, Person: {2}</source>
        <translation>„{1}“ ist nicht Leitung oder Ingenieur dieses Auftrags; lassen Sie eine dieser Personen an diesem Platz arbeiten, Menü Runde, Person: {2}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is typed and not stored; store it with Enter or clear it with Esc before the handle moves</source>
        <translation>„{1}“ ist getippt und nicht gespeichert; speichern Sie mit Enter oder löschen Sie mit Esc, bevor sich der Griff bewegt</translation>
    </message>
    <message>
        <source>a step of a review is not undone; withdraw it with a reason on the place Review (Alt+6), below the rounds</source>
        <translation>ein Schritt einer Prüfung wird nicht rückgängig gemacht; ziehen Sie ihn mit Grund im Bereich Prüfung (Alt+6) unter den Runden zurück</translation>
    </message>
    <message>
        <source>done again: {1}; Ctrl+Z takes it back</source>
        <translation>wiederhergestellt: {1}; Strg+Z nimmt es zurück</translation>
    </message>
    <message>
        <source>every valve of the walk is read; close the round (Ctrl+Shift+W), or read this one again (Ctrl+R)</source>
        <translation>jedes Ventil des Rundgangs ist abgelesen; schließen Sie die Runde (Strg+Umschalt+W), oder lesen Sie dieses neu ab (Strg+R)</translation>
    </message>
    <message>
        <source>every valve on the path to {1} is fully open, but it is not shown to be the index</source>
        <translation>jedes Ventil auf dem Weg zu {1} ist ganz offen, aber es ist nicht gezeigt, dass es der Schlechtpunkt ist</translation>
    </message>
    <message>
        <source>its flow changed by {1} % against its neighbours since round {2}, with no valve moved around it; look for air, a clogged strainer or a moving control valve</source>
        <translation>sein Durchfluss änderte sich seit Runde {2} um {1} % gegen die Nachbarn, ohne dass ringsum ein Ventil bewegt wurde; suchen Sie Luft, einen verstopften Schmutzfänger oder ein bewegtes Regelventil</translation>
    </message>
    <message>
        <source>its valve is fully open and it takes {1} % of design, less than {2} on the index circuit with {3} %; match groups and risers, read both again, or give the reason</source>
        <translation>sein Ventil ist ganz offen und er nimmt {1} % der Auslegung, weniger als {2} im Schlechtpunktkreis mit {3} %; gleichen Sie Gruppen und Steigstränge ab, lesen Sie beide neu ab, oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>no comment is open and no item waits; close round {1} with Ctrl+Shift+W</source>
        <translation>kein Kommentar ist offen und nichts wartet; schließen Sie Runde {1} mit Strg+Umschalt+W</translation>
    </message>
    <message>
        <source>no comment is open and no item waits; open the next round (Ctrl+Shift+N), or go on with the report (Alt+7)</source>
        <translation>kein Kommentar ist offen und nichts wartet; öffnen Sie die nächste Runde (Strg+Umschalt+N), oder gehen Sie zum Bericht (Alt+7)</translation>
    </message>
    <message>
        <source>no key file is chosen; choose one, or make a certificate</source>
        <translation>keine Schlüsseldatei ist gewählt; wählen Sie eine, oder erstellen Sie ein Zertifikat</translation>
    </message>
    <message>
        <source>no person is chosen at this desk, so readings name nobody; choose one in the menu Round, Person</source>
        <translation>an diesem Platz ist keine Person gewählt, Ablesungen nennen also niemanden; wählen Sie eine im Menü Runde, Person</translation>
    </message>
    <message>
        <source>read-and-set leaves {1} more across the index valve {2} than its open drop, {3w} at the shaft</source>
        <translation>Ablesen-Einstellen lässt {1} mehr am Schlechtpunktventil {2} als dessen Verlust bei offenem Ventil, {3w} an der Welle</translation>
    </message>
    <message>
        <source>readings of the final round that name no person: {1} of {2}; choose the person (Round, Person) before reading</source>
        <translation>Ablesungen der Schlussrunde, die keine Person nennen: {1} von {2}; wählen Sie die Person (Runde, Person) vor dem Ablesen</translation>
    </message>
    <message>
        <source>round {1} opened; close it (Ctrl+Shift+W) once its valves are held and read</source>
        <translation>Runde {1} geöffnet; schließen Sie sie (Strg+Umschalt+W), wenn ihre Ventile gehalten und abgelesen sind</translation>
    </message>
    <message>
        <source>round {1} opened; look at this first: {2}</source>
        <translation>Runde {1} geöffnet; sehen Sie zuerst hierauf: {2}</translation>
    </message>
    <message>
        <source>the impeller in the pump is not known, the trimmed one would have {1} % of its diameter; find it with a shutoff test or enter it</source>
        <translation>das Laufrad der Pumpe ist unbekannt, das abgedrehte hätte {1} % seines Durchmessers; finden Sie es mit einem Nullförderversuch oder tragen Sie es ein</translation>
    </message>
    <message>
        <source>the job open here last is {1}; the menu File, Open Recent opens it</source>
        <translation>hier zuletzt offen war der Auftrag {1}; das Menü Datei, Zuletzt geöffnet, öffnet ihn</translation>
    </message>
    <message>
        <source>the passphrase of the key is missing; type it here</source>
        <translation>die Passphrase des Schlüssels fehlt; geben Sie sie hier ein</translation>
    </message>
    <message>
        <source>undone: {1}; Ctrl+Shift+Z does it again</source>
        <translation>zurückgenommen: {1}; Strg+Umschalt+Z stellt es wieder her</translation>
    </message>
    <message>
        <source>{1} is above the range of instrument {2}, which ends at {3}; read again, with another instrument if need be, or give the reason</source>
        <translation>{1} liegt über dem Bereich von Messgerät {2}, der bei {3} endet; lesen Sie neu ab, nötigenfalls mit anderem Messgerät, oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>{1} is named elsewhere in the job ({2w}) and stays; correct the row, or add another person</source>
        <translation>{1} wird anderswo im Auftrag genannt ({2w}) und bleibt; berichtigen Sie die Zeile oder fügen Sie eine andere Person hinzu</translation>
    </message>
    <message>
        <source>{1}; press Ctrl+R to read it again</source>
        <translation>{1}; drücken Sie Strg+R, um neu abzulesen</translation>
    </message>
    <message>
        <source>{1}; press Ctrl+U to store {2}</source>
        <translation>{1}; drücken Sie Strg+U, um {2} zu speichern</translation>
    </message>
    <message>
        <source>{1} was not written: this can be written with the ending {2}; give the file one of these</source>
        <translation>{1} wurde nicht geschrieben: möglich ist die Endung {2}; geben Sie der Datei eine davon</translation>
    </message>
    <message>
        <source>1 pasted reading</source>
        <translation>1 eingefügte Ablesung</translation>
    </message>
    <message>
        <source>Caution: hot or chilled water and pressure. Check rating and fittings of the hoses, open test ports slowly, vent the meter, keep clear of moving and live parts; local codes and the site&apos;s rules come first.</source>
        <translation>Vorsicht: heißes oder kaltes Wasser und Druck. Nenndruck und Verschraubungen der Schläuche prüfen, Messstutzen langsam öffnen, Messgerät entlüften, von bewegten und spannungführenden Teilen fernbleiben; örtliche Vorschriften und die Regeln der Anlage gehen vor.</translation>
    </message>
    <message>
        <source>Change of zones</source>
        <translation>Zonen ändern</translation>
    </message>
    <message>
        <source>Computed from</source>
        <translation>Berechnet aus</translation>
    </message>
    <message>
        <source>DP {1} at the reference, {2}</source>
        <translation>Δp {1} an der Referenz, {2}</translation>
    </message>
    <message>
        <source>DP {1} at {2}, {3}</source>
        <translation>Δp {1} bei {2}, {3}</translation>
    </message>
    <message>
        <source>DP {1} in place of {2}, {3}</source>
        <translation>Δp {1} statt {2}, {3}</translation>
    </message>
    <message>
        <source>DP {1} read again, {2}</source>
        <translation>Δp {1} nochmals abgelesen, {2}</translation>
    </message>
    <message>
        <source>DP {1} with the valve shut, {2}</source>
        <translation>Δp {1} bei geschlossenem Ventil, {2}</translation>
    </message>
    <message>
        <source>DP {1}, {2}</source>
        <translation>Δp {1}, {2}</translation>
    </message>
    <message>
        <source>Import from {1}</source>
        <translation>Import aus {1}</translation>
    </message>
    <message>
        <source>Last round read</source>
        <translation>Zuletzt abgelesene Runde</translation>
    </message>
    <message>
        <source>New job {1}</source>
        <translation>Neuer Auftrag {1}</translation>
    </message>
    <message>
        <source>New practice job</source>
        <translation>Neuer Übungsauftrag</translation>
    </message>
    <message>
        <source>Record readings from {1}</source>
        <translation>Ablesungen aus {1} aufnehmen</translation>
    </message>
    <message>
        <source>Sign the report</source>
        <translation>Bericht signieren</translation>
    </message>
    <message>
        <source>The loop in the last round read</source>
        <translation>Der Kreislauf in der zuletzt abgelesenen Runde</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit of {2w}; use one of {3}</source>
        <translation>„{1}“ ist keine Einheit für {2w}; nehmen Sie eine von {3}</translation>
    </message>
    <message>
        <source>accept round {1}</source>
        <translation>Runde {1} annehmen</translation>
    </message>
    <message>
        <source>all {1} terminals were read in the last round</source>
        <translation>alle {1} Verbraucher wurden in der letzten Runde abgelesen</translation>
    </message>
    <message>
        <source>answer to comment on {1w}</source>
        <translation>Antwort auf Kommentar zu {1w}</translation>
    </message>
    <message>
        <source>branch {1}</source>
        <translation>Zweig {1}</translation>
    </message>
    <message>
        <source>cannot be read, {1}</source>
        <translation>nicht ablesbar, {1}</translation>
    </message>
    <message>
        <source>checkpoint {1}</source>
        <translation>Sicherungspunkt {1}</translation>
    </message>
    <message>
        <source>choice of both, {1}</source>
        <translation>beide gewählt, {1}</translation>
    </message>
    <message>
        <source>choice of {1}, {2}</source>
        <translation>{1} gewählt, {2}</translation>
    </message>
    <message>
        <source>clock of {1}, nothing added</source>
        <translation>Uhr von {1}, nichts addiert</translation>
    </message>
    <message>
        <source>clock of {1}, {2} added</source>
        <translation>Uhr von {1}, {2} addiert</translation>
    </message>
    <message>
        <source>close round {1}</source>
        <translation>Runde {1} schließen</translation>
    </message>
    <message>
        <source>comment on {1w}</source>
        <translation>Kommentar zu {1w}</translation>
    </message>
    <message>
        <source>curve of {1}</source>
        <translation>Kennlinie von {1}</translation>
    </message>
    <message>
        <source>deficiency {1}</source>
        <translation>Mangel {1}</translation>
    </message>
    <message>
        <source>device at {1}</source>
        <translation>Armatur an {1}</translation>
    </message>
    <message>
        <source>doubtful, {1}</source>
        <translation>fraglich, {1}</translation>
    </message>
    <message>
        <source>flow {1}, {2}</source>
        <translation>Durchfluss {1}, {2}</translation>
    </message>
    <message>
        <source>fluid of the job</source>
        <translation>Medium des Auftrags</translation>
    </message>
    <message>
        <source>form of the energy code&apos;s clause</source>
        <translation>Form des Abschnitts der Energievorschrift</translation>
    </message>
    <message>
        <source>gauge rise {1}, {2}</source>
        <translation>Manometer-Anstieg {1}, {2}</translation>
    </message>
    <message>
        <source>hold at {1}, {2}</source>
        <translation>halten bei {1}, {2}</translation>
    </message>
    <message>
        <source>instrument {1}</source>
        <translation>Messgerät {1}</translation>
    </message>
    <message>
        <source>load of a year</source>
        <translation>Last eines Jahres</translation>
    </message>
    <message>
        <source>merge of 1 action of {1}</source>
        <translation>1 Handlung von {1} zusammengeführt</translation>
    </message>
    <message>
        <source>merge of {1} actions of {2}</source>
        <translation>{1} Handlungen von {2} zusammengeführt</translation>
    </message>
    <message>
        <source>meter {1} was due for calibration on {2}, {3} days ago; readings are kept and listed in the report, take another meter (menu Round, Meter) or give the reason (Job, If overdue, why)</source>
        <translation>Messgerät {1} war am {2} zur Kalibrierung fällig, vor {3} Tagen; Ablesungen werden behalten und im Bericht genannt, nehmen Sie ein anderes Messgerät (Menü Runde, Messgerät) oder geben Sie den Grund an (Auftrag, Falls überfällig, warum)</translation>
    </message>
    <message>
        <source>new branch {1}</source>
        <translation>neuer Zweig {1}</translation>
    </message>
    <message>
        <source>new instrument {1}</source>
        <translation>neues Messgerät {1}</translation>
    </message>
    <message>
        <source>new job</source>
        <translation>neuer Auftrag</translation>
    </message>
    <message>
        <source>new person</source>
        <translation>neue Person</translation>
    </message>
    <message>
        <source>new pump {1}</source>
        <translation>neue Pumpe {1}</translation>
    </message>
    <message>
        <source>new set-point {1}</source>
        <translation>neuer Sollwert {1}</translation>
    </message>
    <message>
        <source>new valve model {1}</source>
        <translation>neues Ventilmodell {1}</translation>
    </message>
    <message>
        <source>no reason, {1}</source>
        <translation>kein Grund, {1}</translation>
    </message>
    <message>
        <source>not doubtful, {1}</source>
        <translation>nicht fraglich, {1}</translation>
    </message>
    <message>
        <source>not stored, this is only in memory: {1}; Save a Copy Elsewhere, on the strip above, keeps it</source>
        <translation>nicht gespeichert, nur im Arbeitsspeicher: {1}; Kopie anderswo speichern, auf der Leiste oben, bewahrt es</translation>
    </message>
    <message>
        <source>note, {1}</source>
        <translation>Notiz, {1}</translation>
    </message>
    <message>
        <source>notes, {1}</source>
        <translation>Notizen, {1}</translation>
    </message>
    <message>
        <source>nothing is added to this laptop&apos;s clock; times are its own from now on</source>
        <translation>zur Uhr dieses Laptops wird nichts addiert; ab jetzt gelten ihre eigenen Zeiten</translation>
    </message>
    <message>
        <source>open round {1}</source>
        <translation>Runde {1} öffnen</translation>
    </message>
    <message>
        <source>open round {1}, witness of {2} terminals</source>
        <translation>Runde {1} öffnen, Zeugenprobe von {2} Verbrauchern</translation>
    </message>
    <message>
        <source>pasted table of {1}</source>
        <translation>eingefügte Tabelle von {1}</translation>
    </message>
    <message>
        <source>person {1}</source>
        <translation>Person {1}</translation>
    </message>
    <message>
        <source>photo {1}</source>
        <translation>Foto {1}</translation>
    </message>
    <message>
        <source>readiness: {1}</source>
        <translation>Bereitschaft: {1}</translation>
    </message>
    <message>
        <source>reason, {1}</source>
        <translation>Grund, {1}</translation>
    </message>
    <message>
        <source>reason: {1}</source>
        <translation>Grund: {1}</translation>
    </message>
    <message>
        <source>remove instrument {1}</source>
        <translation>Messgerät {1} entfernen</translation>
    </message>
    <message>
        <source>remove person {1}</source>
        <translation>Person {1} entfernen</translation>
    </message>
    <message>
        <source>remove photo</source>
        <translation>Foto entfernen</translation>
    </message>
    <message>
        <source>remove readiness line: {1}</source>
        <translation>Zeile der Bereitschaft entfernen: {1}</translation>
    </message>
    <message>
        <source>remove set-point {1}</source>
        <translation>Sollwert {1} entfernen</translation>
    </message>
    <message>
        <source>reopen comment on {1w}</source>
        <translation>Kommentar zu {1w} wieder öffnen</translation>
    </message>
    <message>
        <source>resolve comment on {1w}</source>
        <translation>Kommentar zu {1w} erledigen</translation>
    </message>
    <message>
        <source>route of {1}</source>
        <translation>Weg von {1}</translation>
    </message>
    <message>
        <source>send back round {1}</source>
        <translation>Runde {1} zurückgeben</translation>
    </message>
    <message>
        <source>send round {1}</source>
        <translation>Runde {1} senden</translation>
    </message>
    <message>
        <source>set-point of {1}</source>
        <translation>Sollwert von {1}</translation>
    </message>
    <message>
        <source>setting {1} in place of {2}, {3}</source>
        <translation>Einstellung {1} statt {2}, {3}</translation>
    </message>
    <message>
        <source>setting {1}, {2}</source>
        <translation>Einstellung {1}, {2}</translation>
    </message>
    <message>
        <source>table of {1}</source>
        <translation>Tabelle von {1}</translation>
    </message>
    <message>
        <source>test of {1}, {2w}: {3w} = {4}</source>
        <translation>Test von {1}, {2w}: {3w} = {4}</translation>
    </message>
    <message>
        <source>the PDF has no place for the signature of the {1w}; write the report again</source>
        <translation>das PDF hat keinen Platz für die Signatur „{1w}“; schreiben Sie den Bericht neu</translation>
    </message>
    <message>
        <source>the cell holds {1w} and not a value; mend its formula or write the value</source>
        <translation>die Zelle enthält {1w} und keinen Wert; berichtigen Sie ihre Formel oder schreiben Sie den Wert</translation>
    </message>
    <message>
        <source>the design losses: no learned loop that fits the readings was there</source>
        <translation>den Verlusten der Auslegung: ein gelernter Kreislauf, der zu den Ablesungen passt, war nicht da</translation>
    </message>
    <message>
        <source>the file cannot be read ({1w}); check its permissions</source>
        <translation>die Datei ist nicht lesbar ({1w}); prüfen Sie ihre Rechte</translation>
    </message>
    <message>
        <source>the file is damaged ({1w}); keep it as it is and open a copy from before</source>
        <translation>die Datei ist beschädigt ({1w}); lassen Sie sie, wie sie ist, und öffnen Sie eine frühere Kopie</translation>
    </message>
    <message>
        <source>the file is no XLSX spreadsheet, or is damaged ({1w}); save it anew as XLSX</source>
        <translation>die Datei ist keine XLSX-Tabelle oder beschädigt ({1w}); speichern Sie sie neu als XLSX</translation>
    </message>
    <message>
        <source>the learned loop for all that stays, the losses entered here for what is new</source>
        <translation>dem gelernten Kreislauf für alles, was bleibt, den hier eingegebenen Verlusten für das Neue</translation>
    </message>
    <message>
        <source>the spreadsheet cannot be written ({1w}); choose a place with room</source>
        <translation>die Tabelle kann nicht geschrieben werden ({1w}); wählen Sie einen Ort mit Platz</translation>
    </message>
    <message>
        <source>the {1w} has signed already; a signed report is not signed over, write a new one</source>
        <translation>„{1w}“ hat schon signiert; ein signierter Bericht wird nicht noch einmal signiert, schreiben Sie einen neuen</translation>
    </message>
    <message>
        <source>this clock is {1} h {2} min before the last stored action, so times of readings are uncertain; Ctrl+Alt+O, Set Clock Offset, sets it right</source>
        <translation>diese Uhr steht {1} h {2} min vor der letzten gespeicherten Handlung, die Zeiten der Ablesungen sind also unsicher; Strg+Alt+O, Uhr richtigstellen, behebt es</translation>
    </message>
    <message>
        <source>units of the job</source>
        <translation>Einheiten des Auftrags</translation>
    </message>
    <message>
        <source>usual readiness list</source>
        <translation>übliche Liste der Bereitschaft</translation>
    </message>
    <message>
        <source>valve model {1} removed</source>
        <translation>Ventilmodell {1} entfernt</translation>
    </message>
    <message>
        <source>withdraw revision {1} of the report</source>
        <translation>Revision {1} des Berichts zurückziehen</translation>
    </message>
    <message>
        <source>withdraw round {1}</source>
        <translation>Runde {1} zurückziehen</translation>
    </message>
    <message>
        <source>work goes on in the copy {1}; later open the first file and take this in with Ctrl+Shift+M, Merge Another Laptop</source>
        <translation>die Arbeit geht in der Kopie {1} weiter; öffnen Sie später die erste Datei und übernehmen Sie diese mit Strg+Umschalt+M, Mit anderem Laptop zusammenführen</translation>
    </message>
    <message>
        <source>written between {1} and {2} by the clock of {3}, which was set right later; the order of entry holds, not the times</source>
        <translation>zwischen {1} und {2} von der Uhr von {3} geschrieben, die später richtiggestellt wurde; es gilt die Reihenfolge der Eingabe, nicht die Zeiten</translation>
    </message>
    <message>
        <source>{1w} of the job</source>
        <translation>{1w} des Auftrags</translation>
    </message>
    <message>
        <source>{1w} of {2}</source>
        <translation>{1w} von {2}</translation>
    </message>
    <message>
        <source>{1} % by mass is outside the range of {2w}, {3} to {4} %; correct the concentration</source>
        <translation>{1} % Massenanteil liegt außerhalb des Bereichs von {2w}, {3} bis {4} %; berichtigen Sie die Konzentration</translation>
    </message>
    <message>
        <source>{1} are added to this laptop&apos;s clock in this job; once its own clock is right, Ctrl+Alt+O takes that back</source>
        <translation>in diesem Auftrag werden {1} zur Uhr dieses Laptops addiert; sobald seine eigene Uhr stimmt, nimmt Strg+Alt+O das zurück</translation>
    </message>
    <message>
        <source>{1} is outside the range of {2w}, {3} to {4}; correct the temperature</source>
        <translation>{1} liegt außerhalb des Bereichs von {2w}, {3} bis {4}; berichtigen Sie die Temperatur</translation>
    </message>
    <message>
        <source>{1} pasted readings</source>
        <translation>{1} eingefügte Ablesungen</translation>
    </message>
    <message>
        <source>{3} took back what was added to this laptop&apos;s clock: it showed {1} when it was {2}; times written before stay as they were</source>
        <translation>{3} hat zurückgenommen, was zur Uhr dieses Laptops addiert wurde: sie zeigte {1}, als es {2} war; Zeiten von vorher blieben, wie sie waren</translation>
    </message>
    <message>
        <source>{4} set this laptop&apos;s clock right: it showed {1} when it was {2}; from then on {3} are added, times written before stay as they were</source>
        <translation>{4} hat die Uhr dieses Laptops richtiggestellt: sie zeigte {1}, als es {2} war; seitdem werden {3} addiert, Zeiten von vorher blieben, wie sie waren</translation>
    </message>
    <message>
        <source>1 reading more or changed</source>
        <translation>1 Ablesung mehr oder geändert</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht ablesbar</translation>
    </message>
    <message>
        <source>fed from</source>
        <translation>gespeist von</translation>
    </message>
    <message>
        <source>kept, changed or used</source>
        <translation>behalten, geändert oder verwendet</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>pump readings</source>
        <translation>Pumpenablesungen</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>removed</source>
        <translation>entfernt</translation>
    </message>
    <message>
        <source>revision {1}</source>
        <translation>Revision {1}</translation>
    </message>
    <message>
        <source>round {1}</source>
        <translation>Runde {1}</translation>
    </message>
    <message>
        <source>signed report</source>
        <translation>signierter Bericht</translation>
    </message>
    <message>
        <source>the pump</source>
        <translation>die Pumpe</translation>
    </message>
    <message>
        <source>the report was stopped before its last page and nothing was written; make it again when there is time</source>
        <translation>der Bericht wurde vor seiner letzten Seite angehalten und nichts wurde geschrieben; erstellen Sie ihn neu, wenn Zeit dafür ist</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>{1w} without them</source>
        <translation>{1w} ohne sie</translation>
    </message>
    <message>
        <source>{1} bytes</source>
        <translation>{1} Byte</translation>
    </message>
    <message>
        <source>{1} readings more or changed</source>
        <translation>{1} Ablesungen mehr oder geändert</translation>
    </message>
    <message>
        <source>{1} rows</source>
        <translation>{1} Zeilen</translation>
    </message>
    <message>
        <source>Excess as read</source>
        <translation>Überschuss abgelesen</translation>
    </message>
    <message>
        <source>Proof</source>
        <translation>Nachweis</translation>
    </message>
    <message>
        <source>The building of this report is simulated: a program made up every reading, for practice. Nothing was measured, and nothing here is true of any real plant.</source>
        <translation>Das Gebäude dieses Berichts ist simuliert: Ein Programm hat jede Ablesung zur Übung erfunden. Nichts wurde gemessen, und nichts hier gilt für eine echte Anlage.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is typed in Adjust and not stored; store it there with Enter, or clear it with Esc</source>
        <translation>„{1}“ ist in Einstellen getippt und nicht gespeichert; dort mit Enter speichern oder mit Esc löschen</translation>
    </message>
    <message>
        <source>a flow of {1} is below zero and is not stored; turn the flow meter round and type the flow without a sign</source>
        <translation>ein Durchfluss von {1} liegt unter null und wird nicht gespeichert; drehen Sie das Durchflussmessgerät um und tippen Sie den Durchfluss ohne Vorzeichen</translation>
    </message>
    <message>
        <source>flow measured otherwise</source>
        <translation>Durchfluss anders gemessen</translation>
    </message>
    <message>
        <source>flow measured otherwise, method not noted</source>
        <translation>Durchfluss anders gemessen, Verfahren nicht notiert</translation>
    </message>
    <message>
        <source>flow measured otherwise, with {1}</source>
        <translation>Durchfluss anders gemessen, mit {1}</translation>
    </message>
    <message>
        <source>not chosen when merging; {1w} was</source>
        <translation>beim Zusammenführen nicht gewählt; gewählt wurde {1w}</translation>
    </message>
    <message>
        <source>not seen when round {1} was {2w} on {3}</source>
        <translation>nicht gesehen, als Runde {1} auf {3} {2w} wurde</translation>
    </message>
    <message>
        <source>readings of the other laptop were taken in</source>
        <translation>Ablesungen des anderen Laptops wurden übernommen</translation>
    </message>
    <message>
        <source>round {1} is closed and not sent; send it and have it accepted by a supervisor</source>
        <translation>Runde {1} ist geschlossen und nicht gesendet; senden Sie sie und lassen Sie sie von der Leitung annehmen</translation>
    </message>
    <message>
        <source>round {1} is sent and not accepted; have it accepted by a supervisor</source>
        <translation>Runde {1} ist gesendet und nicht angenommen; lassen Sie sie von der Leitung annehmen</translation>
    </message>
    <message>
        <source>round {1} is still open; close it, send it and have it accepted by a supervisor</source>
        <translation>Runde {1} ist noch offen; schließen Sie sie, senden Sie sie und lassen Sie sie von der Leitung annehmen</translation>
    </message>
    <message>
        <source>round {1} is {2w} and cannot become {3w}; take the steps in turn: close, send, decide</source>
        <translation>Runde {1} ist {2w} und kann nicht {3w} werden; gehen Sie die Schritte der Reihe nach: schließen, senden, entscheiden</translation>
    </message>
    <message>
        <source>round {1} was sent back; answer its comments, send it again and have it accepted by a supervisor</source>
        <translation>Runde {1} wurde zurückgegeben; beantworten Sie ihre Kommentare, senden Sie sie erneut und lassen Sie sie von der Leitung annehmen</translation>
    </message>
    <message>
        <source>the flow is stored, but not how it was measured; write that into its note (Shift+Enter, Ctrl+M), or choose the flow meter before you read (menu Round)</source>
        <translation>der Durchfluss ist gespeichert, aber nicht, wie er gemessen wurde; schreiben Sie es in seine Notiz (Umschalt+Enter, Strg+M) oder wählen Sie vor dem Ablesen das Durchflussmessgerät (Menü Runde)</translation>
    </message>
    <message>
        <source>the job is back as it was stored last, {1}; go on where the cursor stands</source>
        <translation>der Auftrag ist wieder da, wie er zuletzt gespeichert wurde, {1}; machen Sie weiter, wo der Cursor steht</translation>
    </message>
    <message>
        <source>the next flow typed takes the place of the one before; type it and press Enter</source>
        <translation>der nächste getippte Durchfluss ersetzt den vorigen; tippen Sie ihn und drücken Sie Enter</translation>
    </message>
    <message>
        <source>the reference was read {1w}, the limit is {2w}; read it again</source>
        <translation>die Referenz wurde {1w} abgelesen, die Grenze ist {2w}; lesen Sie sie neu ab</translation>
    </message>
    <message>
        <source>the same revision was signed on two laptops; the other one was chosen</source>
        <translation>dieselbe Revision wurde auf zwei Laptops signiert; gewählt wurde die andere</translation>
    </message>
    <message>
        <source>this branch has no usable valve table, a dp gives no flow here; add the table, or type its flow in Walk</source>
        <translation>dieser Zweig hat keine brauchbare Ventiltabelle, eine Δp gibt hier keinen Durchfluss; fügen Sie die Tabelle hinzu oder geben Sie den Durchfluss im Rundgang ein</translation>
    </message>
    <message>
        <source>{1w} struck</source>
        <translation>{1w} gestrichen</translation>
    </message>
    <message>
        <source>{1} (section {2})</source>
        <translation>{1} (Abschnitt {2})</translation>
    </message>
    <message>
        <source>*  end of the index circuit</source>
        <translation>*  Ende des Schlechtpunktkreises</translation>
    </message>
    <message>
        <source>Accepted by</source>
        <translation>Angenommen von</translation>
    </message>
    <message>
        <source>By the readings</source>
        <translation>Nach den Ablesungen</translation>
    </message>
    <message>
        <source>By the readings: cannot be decided within the measuring uncertainty</source>
        <translation>Nach den Ablesungen: innerhalb der Messunsicherheit nicht zu entscheiden</translation>
    </message>
    <message>
        <source>By the readings: not within tolerance</source>
        <translation>Nach den Ablesungen: nicht innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>By the readings: within tolerance</source>
        <translation>Nach den Ablesungen: innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>By the readings: within tolerance; index circuit not proved</source>
        <translation>Nach den Ablesungen: innerhalb der Toleranz; Schlechtpunktkreis nicht nachgewiesen</translation>
    </message>
    <message>
        <source>Files kept in the workbook: {1}; the pictures among them follow.</source>
        <translation>Dateien in der Arbeitsmappe: {1}; die Bilder darunter folgen.</translation>
    </message>
    <message>
        <source>Nobody yet: round {1} waits for the supervisor</source>
        <translation>Noch niemand: Runde {1} wartet auf die Leitung</translation>
    </message>
    <message>
        <source>Nobody yet: round {1} was not sent to a supervisor</source>
        <translation>Noch niemand: Runde {1} wurde nicht an die Leitung gesendet</translation>
    </message>
    <message>
        <source>Nobody: the supervisor sent round {1} back</source>
        <translation>Niemand: die Leitung hat Runde {1} zurückgegeben</translation>
    </message>
    <message>
        <source>Not known: {1} of {2} terminals read in this round</source>
        <translation>Nicht bekannt: {1} von {2} Verbrauchern in dieser Runde abgelesen</translation>
    </message>
    <message>
        <source>Trim or slow</source>
        <translation>Abdrehen oder verlangsamen</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is typed in Walk and not entered; store it there with Enter, or clear it with Esc</source>
        <translation>„{1}“ ist im Rundgang getippt und nicht eingegeben; dort mit Enter speichern oder mit Esc löschen</translation>
    </message>
    <message>
        <source>at the sum of the flows, {1}, the gauges read {2} and the pump&apos;s curve gives {3}: farther apart than their uncertainty of {4}; check gauges, speed and impeller and read again before the pump is changed</source>
        <translation>bei der Summe der Durchflüsse, {1}, zeigen die Manometer {2}, und die Pumpenkennlinie gibt {3}: weiter auseinander als ihre Unsicherheit von {4}; Manometer, Drehzahl und Laufrad prüfen und neu ablesen, bevor die Pumpe geändert wird</translation>
    </message>
    <message>
        <source>by the loop&apos;s readings the pump makes {1} too much at design flow, {2w}; lower its speed or trim its impeller after the valves are set, by a licensed person and within the limits of the maker and the local code. The number under Decision in Pump is another one: from the pump&apos;s curve, at full speed</source>
        <translation>nach den Ablesungen des Kreislaufs erzeugt die Pumpe bei Auslegungsdurchfluss {1} zu viel, {2w}; senken Sie nach dem Einstellen der Ventile die Drehzahl oder lassen Sie das Laufrad abdrehen, durch eine zugelassene Person und in den Grenzen des Herstellers und der örtlichen Vorschrift. Die Zahl unter Entscheidung in Pumpe ist eine andere: nach der Kennlinie der Pumpe, bei voller Drehzahl</translation>
    </message>
    <message>
        <source>by the readings the last round is within tolerance</source>
        <translation>nach den Ablesungen ist die letzte Runde innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>by the readings the last round is within tolerance; its index circuit is not proved</source>
        <translation>nach den Ablesungen ist die letzte Runde innerhalb der Toleranz; ihr Schlechtpunktkreis ist nicht nachgewiesen</translation>
    </message>
    <message>
        <source>by the readings the last round is {1w}; go on balancing, or give the reason why it stays so</source>
        <translation>nach den Ablesungen ist die letzte Runde {1w}; weiter abgleichen oder den Grund angeben, warum sie so bleibt</translation>
    </message>
    <message>
        <source>every round is accepted by a supervisor</source>
        <translation>jede Runde ist von der Leitung angenommen</translation>
    </message>
    <message>
        <source>follow the word now; {1} is expected once all valves are set</source>
        <translation>jetzt dem Wort folgen; {1} ist zu erwarten, wenn alle Ventile eingestellt sind</translation>
    </message>
    <message>
        <source>hold at {1} for now; the learned loop advises {2} with the others set, read it again then</source>
        <translation>vorerst auf {1} halten; der gelernte Kreislauf rät zu {2}, wenn die anderen eingestellt sind, dann neu ablesen</translation>
    </message>
    <message>
        <source>hold at {1} for now; {2} % of target expected here with the others set, turn to {3} then</source>
        <translation>vorerst auf {1} halten; {2} % vom Soll sind hier zu erwarten, wenn die anderen eingestellt sind, dann auf {3} drehen</translation>
    </message>
    <message>
        <source>in round {1}, which is open, no valve may be turned; close it first</source>
        <translation>in Runde {1}, die offen ist, darf kein Ventil gedreht werden; zuerst schließen</translation>
    </message>
    <message>
        <source>leave it at {1}; {2} % of target expected here with the others set</source>
        <translation>auf {1} lassen; {2} % vom Soll sind hier zu erwarten, wenn die anderen eingestellt sind</translation>
    </message>
    <message>
        <source>no pump or static lift is joined to this part, its nodes: {1}; join it to the loop or add its pump</source>
        <translation>an diesen Teil ist weder Pumpe noch statische Höhe angeschlossen, seine Knoten: {1}; verbinden Sie ihn mit dem Kreislauf oder fügen Sie seine Pumpe hinzu</translation>
    </message>
    <message>
        <source>not done yet, {1w}</source>
        <translation>noch nicht getan, {1w}</translation>
    </message>
    <message>
        <source>not proved; points against it, listed below: {1}</source>
        <translation>nicht nachgewiesen; Punkte dagegen, unten aufgeführt: {1}</translation>
    </message>
    <message>
        <source>nothing to do, {1w}</source>
        <translation>nichts zu tun, {1w}</translation>
    </message>
    <message>
        <source>points of the pump curve: {1}; give at least two of falling head</source>
        <translation>Punkte der Pumpenkennlinie: {1}; geben Sie mindestens zwei mit fallender Förderhöhe an</translation>
    </message>
    <message>
        <source>points of the pump&apos;s curve: {1}; this law needs {2w}, add or remove points</source>
        <translation>Punkte der Kennlinie dieser Pumpe: {1}; dieses Gesetz braucht {2w}, fügen Sie Punkte hinzu oder entfernen Sie welche</translation>
    </message>
    <message>
        <source>points of the valve table: {1}; give at least two, the highest being fully open</source>
        <translation>Punkte der Ventiltabelle: {1}; geben Sie mindestens zwei an, der höchste ist ganz offen</translation>
    </message>
    <message>
        <source>proved: every valve on the index path {1} fully open, and one in every group; no discharge valve is on record</source>
        <translation>nachgewiesen: jedes Ventil auf dem Schlechtpunktweg {1} ganz offen, und eines in jeder Gruppe; kein Drosselventil ist eingetragen</translation>
    </message>
    <message>
        <source>readings taken after its calibration ran out on {2}: {1}</source>
        <translation>Ablesungen, nachdem seine Kalibrierung am {2} ablief: {1}</translation>
    </message>
    <message>
        <source>reference of its group, at {1}; open it fully to {2}, the others are set to it</source>
        <translation>Referenz der Gruppe, steht auf {1}; ganz öffnen auf {2}, die anderen werden danach eingestellt</translation>
    </message>
    <message>
        <source>reference of its group, fully open; leave it, the others are set to it</source>
        <translation>Referenz der Gruppe, ganz offen; so lassen, die anderen werden danach eingestellt</translation>
    </message>
    <message>
        <source>round {2} was sent back, and comments that nobody has answered: {1}, the first is &quot;{3}&quot;; answer or resolve each, then send it</source>
        <translation>Runde {2} wurde zurückgegeben, und unbeantwortete Kommentare: {1}, der erste ist „{3}“; beantworten oder erledigen Sie jeden und senden Sie sie dann</translation>
    </message>
    <message>
        <source>terminals of the witness round that are not read again: {1}; read them</source>
        <translation>Verbraucher der Zeugenrunde, die nicht neu abgelesen sind: {1}; lesen Sie sie ab</translation>
    </message>
    <message>
        <source>the oldest reading the aim rests on is {1w} old, the limit is {2w}; read it again</source>
        <translation>die älteste Ablesung hinter dem Ziel ist {1w} alt, die Grenze ist {2w}; neu ablesen</translation>
    </message>
    <message>
        <source>this circuit shares its flow with others ({1}) and has no balancing device; put one on its return, or say why it is not balanced</source>
        <translation>dieser Kreis teilt seinen Durchfluss mit anderen ({1}) und hat keine Regulierarmatur; setzen Sie eine in seinen Rücklauf, oder sagen Sie, warum er nicht einreguliert wird</translation>
    </message>
    <message>
        <source>{1} is held although its word is {2}; go back and turn it, or take the hold back with Ctrl+Z</source>
        <translation>{1} ist gehalten, obwohl das Wort {2} ist; zurückgehen und drehen, oder das Halten mit Strg+Z zurücknehmen</translation>
    </message>
    <message>
        <source>{1} is the head available here with the valve shut; set the handle back to {2}</source>
        <translation>{1} ist die hier bei geschlossenem Ventil verfügbare Förderhöhe; stellen Sie den Griff zurück auf {2}</translation>
    </message>
    <message>
        <source>{1} was turned to {2} but not read there; the record still says {3}, go back and read it</source>
        <translation>{1} wurde auf {2} gedreht, aber dort nicht abgelesen; die Aufzeichnung sagt noch {3}, zurückgehen und ablesen</translation>
    </message>
    <message>
        <source>{1} {2} at {3} {4} in round {5}; {6} % of design flow, {7w}</source>
        <translation>{1} {2} bei {3} {4} in Runde {5}; {6} % des Auslegungsdurchflusses, {7w}</translation>
    </message>
    <message>
        <source>values to choose between after merging: {1}; choose in File, Decide Conflicts</source>
        <translation>nach dem Zusammenführen zu wählende Werte: {1}; wählen Sie in Datei, Konflikte entscheiden</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; names no {2w} of this folder; correct it or leave the cell empty</source>
        <translation>„{1}“ ist in diesem Ordner nicht zu finden ({2w}); berichtigen Sie es oder lassen Sie die Zelle leer</translation>
    </message>
    <message>
        <source>round {1} is {2w} and takes no further readings; record them in a new round</source>
        <translation>Runde {1} ist {2w} und nimmt keine weiteren Ablesungen; tragen Sie sie in einer neuen Runde ein</translation>
    </message>
    <message>
        <source>No speed or impeller is proposed: the gauges and the pump&apos;s curve contradict each other (section {1})</source>
        <translation>Weder Drehzahl noch Laufrad wird vorgeschlagen: Manometer und Pumpenkennlinie widersprechen einander (Abschnitt {1})</translation>
    </message>
    <message>
        <source>Options at design flow for the need of the index circuit, {1w}</source>
        <translation>Optionen bei Auslegungsdurchfluss für den Bedarf des Schlechtpunktkreises, {1w}</translation>
    </message>
    <message>
        <source>Pressure behind each element against the fill pressure, in the direction of flow</source>
        <translation>Druck hinter jedem Element gegen den Fülldruck, in Fließrichtung</translation>
    </message>
    <message>
        <source>Pressure round the circuit against the fill pressure, pump on</source>
        <translation>Druck im Kreis gegen den Fülldruck, Pumpe ein</translation>
    </message>
    <message>
        <source>The loop with its valves as they stood in round {5} takes {1} {4} and the pump makes {2} {4} {7w}: excess {3} {4} {6w}</source>
        <translation>Der Kreislauf mit seinen Ventilen wie in Runde {5} braucht {1} {4} und die Pumpe erzeugt {2} {4} {7w}: Überschuss {3} {4} {6w}</translation>
    </message>
    <message>
        <source>Undecidable whether {1} is the index: it takes {2} % of design, and fully open too with less are {3}, nearer than these readings tell ({4} %); read them again with a finer meter, or sign with the reason</source>
        <translation>Nicht entscheidbar, ob {1} der Schlechtpunkt ist: er nimmt {2} % der Auslegung, ebenfalls ganz offen mit weniger: {3}, näher, als diese Ablesungen unterscheiden ({4} %); lesen Sie sie mit einem feineren Messgerät neu ab, oder signieren Sie mit dem Grund</translation>
    </message>
    <message>
        <source>Undecidable: dp {1} at {2} is below the readable minimum of {3} by no more than its uncertainty of {4}; read it again with a finer meter</source>
        <translation>Nicht entscheidbar: Δp {1} an {2} liegt um nicht mehr als ihre Unsicherheit von {4} unter dem ablesbaren Mindestwert {3}; lesen Sie sie mit einem feineren Messgerät neu ab</translation>
    </message>
    <message>
        <source>With the pump on the unit of {1} stands at {2} against the fill pressure, which is not known.</source>
        <translation>Mit Pumpe liegen am Gerät von {1} {2} gegen den Fülldruck, der unbekannt ist.</translation>
    </message>
    <message>
        <source>advised {2} instead of {1}; turn it, then read</source>
        <translation>empfohlen: {2} statt {1}; drehen, dann ablesen</translation>
    </message>
    <message>
        <source>against the fill pressure, {1} at the unit with the valve on the return, {2} on the supply</source>
        <translation>gegen den Fülldruck {1} am Gerät mit Ventil im Rücklauf, {2} im Vorlauf</translation>
    </message>
    <message>
        <source>against the fill pressure, {1} behind {2w}</source>
        <translation>gegen den Fülldruck {1} hinter {2w}</translation>
    </message>
    <message>
        <source>at design flow the pump makes {1} of head and the index circuit needs {2}, {3} more; see that the index path is open and its strainers and filters are clean, check speed and impeller: a larger impeller or pump is for the engineer to decide</source>
        <translation>bei Auslegungsdurchfluss erzeugt die Pumpe {1} Förderhöhe und der Schlechtpunktkreis braucht {2}, {3} mehr; sehen Sie nach, ob der Schlechtpunktweg offen und seine Schmutzfänger und Filter sauber sind, prüfen Sie Drehzahl und Laufrad: über ein größeres Laufrad oder eine größere Pumpe entscheidet der Ingenieur</translation>
    </message>
    <message>
        <source>at shutoff one gauge reads {1} % of the curve&apos;s head and at the duty another reads {2} %; which is right is not known, so no excess, trim or speed is proposed: read both taps again with one gauge, and check impeller, speed and direction of turn</source>
        <translation>bei Nullförderung zeigt ein Manometer {1} % der Förderhöhe der Kennlinie und am Betriebspunkt ein anderes {2} %; welches stimmt, ist unbekannt, daher wird weder Überschuss noch Abdrehen noch Drehzahl vorgeschlagen: beide Messstellen mit einem Manometer neu ablesen und Laufrad, Drehzahl und Drehrichtung prüfen</translation>
    </message>
    <message>
        <source>at shutoff the head is {1} % of the curve&apos;s and at the duty {2} %; the curve counts, as it holds where the loop runs: read the shutoff head again where that is allowed</source>
        <translation>bei Nullförderung beträgt die Förderhöhe {1} % der Kennlinie und am Betriebspunkt {2} %; die Kennlinie zählt, denn sie stimmt dort, wo der Kreislauf läuft: lesen Sie die Nullförderhöhe neu ab, wo das erlaubt ist</translation>
    </message>
    <message>
        <source>at shutoff the head is {1} % of the curve&apos;s too, so the gauges are right; look for another impeller, wear, a wrong speed or air before the pump is changed</source>
        <translation>auch bei Nullförderung beträgt die Förderhöhe {1} % der Kennlinie, also stimmen die Manometer; suchen Sie nach anderem Laufrad, Verschleiß, falscher Drehzahl oder Luft, bevor die Pumpe geändert wird</translation>
    </message>
    <message>
        <source>at shutoff the same gauge reads {1} % of the curve&apos;s head and at the duty {2} %, so what differs comes with the flow; the duty counts, as it is what the terminals get: look for an open bypass, a strainer between the taps and a wrong valve table</source>
        <translation>bei Nullförderung zeigt dasselbe Manometer {1} % der Förderhöhe der Kennlinie und am Betriebspunkt {2} %, der Unterschied kommt also mit dem Durchfluss; der Betriebspunkt zählt, denn das bekommen die Verbraucher: suchen Sie nach offenem Bypass, Schmutzfänger zwischen den Messstellen und falscher Ventiltabelle</translation>
    </message>
    <message>
        <source>done again: {1}</source>
        <translation>wiederhergestellt: {1}</translation>
    </message>
    <message>
        <source>from reference {1}, last {2} % of design, read {3w}</source>
        <translation>nach Referenz {1}, zuletzt {2} % der Auslegung, abgelesen {3w}</translation>
    </message>
    <message>
        <source>from the flows of {1} other branches while these are not turned, oldest reading {2w}</source>
        <translation>aus den Durchflüssen von {1} anderen Zweigen, solange diese nicht verstellt werden, älteste Ablesung {2w}</translation>
    </message>
    <message>
        <source>from the learned loop, {1} is wanted here while the others stand as they do</source>
        <translation>nach dem gelernten Kreislauf soll hier {1} fließen, solange die anderen so stehen</translation>
    </message>
    <message>
        <source>its valve is fully open and it takes {1} % of design, {2} on the index circuit {3} %: nearer than these readings tell ({4} %); read both again with a finer meter, or give the reason</source>
        <translation>sein Ventil ist ganz offen und er nimmt {1} % der Auslegung, {2} im Schlechtpunktkreis {3} %: näher, als diese Ablesungen unterscheiden ({4} %); lesen Sie beide mit einem feineren Messgerät neu ab, oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>leave it at its stop for now; {1} is expected once all valves are set</source>
        <translation>vorerst am Anschlag lassen; {1} ist zu erwarten, wenn alle Ventile eingestellt sind</translation>
    </message>
    <message>
        <source>note removed, {1}</source>
        <translation>Notiz entfernt, {1}</translation>
    </message>
    <message>
        <source>notes removed, {1}</source>
        <translation>Notizen entfernt, {1}</translation>
    </message>
    <message>
        <source>reason before signing</source>
        <translation>Grund vor dem Signieren</translation>
    </message>
    <message>
        <source>reason before signing removed</source>
        <translation>Grund vor dem Signieren entfernt</translation>
    </message>
    <message>
        <source>reason removed: {1}</source>
        <translation>Grund entfernt: {1}</translation>
    </message>
    <message>
        <source>round {1} was accepted by {2}, who also read or sent it: {3}</source>
        <translation>Runde {1} wurde von {2} angenommen, selbst Ableser oder Absender: {3}</translation>
    </message>
    <message>
        <source>round {1} was read by {2}, at least in part; somebody who read none of it decides on it, menu Round, Person: {3}</source>
        <translation>Runde {1} wurde von {2} abgelesen, wenigstens zum Teil; wer nichts davon abgelesen hat, entscheidet darüber, Menü Runde, Person: {3}</translation>
    </message>
    <message>
        <source>round {1} was sent by {2}; another supervisor or engineer decides on it, menu Round, Person: {3}</source>
        <translation>Runde {1} wurde von {2} gesendet; eine andere Leitung oder ein anderer Ingenieur entscheidet darüber, Menü Runde, Person: {3}</translation>
    </message>
    <message>
        <source>rounds accepted by one who read or sent them: {1}; have somebody else accept them or give the reason</source>
        <translation>Runden, die ihr Ableser oder Absender selbst angenommen hat: {1}; lassen Sie sie von jemand anderem annehmen oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>taken back: {1}</source>
        <translation>zurückgenommen: {1}</translation>
    </message>
    <message>
        <source>test of {1}, {2w}: {3w} removed</source>
        <translation>Test von {1}, {2w}: {3w} entfernt</translation>
    </message>
    <message>
        <source>the gauges read {1} % of the head of the curve; below {2} or above {3} % a gauge is wrong or the curve is of another impeller, so no excess, trim or speed is proposed: read both taps again with one gauge, test at shutoff where that is allowed, and check impeller, speed and direction of turn</source>
        <translation>die Manometer zeigen {1} % der Förderhöhe der Kennlinie; unter {2} oder über {3} % ist ein Manometer falsch oder die Kennlinie gehört zu einem anderen Laufrad, daher wird weder Überschuss noch Abdrehen noch Drehzahl vorgeschlagen: beide Messstellen mit einem Manometer neu ablesen, bei Nullförderung prüfen, wo das erlaubt ist, und Laufrad, Drehzahl und Drehrichtung prüfen</translation>
    </message>
    <message>
        <source>the gauges read {2} % of the curve&apos;s head in round {1} and {4} % in round {3}; something changed or one was misread: read both taps again, and check speed, air and strainers</source>
        <translation>die Manometer zeigen {2} % der Förderhöhe der Kennlinie in Runde {1} und {4} % in Runde {3}; etwas hat sich geändert oder eines wurde falsch abgelesen: beide Messstellen neu ablesen und Drehzahl, Luft und Schmutzfänger prüfen</translation>
    </message>
    <message>
        <source>the numbers here rest on the gauges of round {1}: the pump&apos;s curve counts with its head times {2} at every flow, so that it meets them</source>
        <translation>die Zahlen hier beruhen auf den Manometern von Runde {1}: die Pumpenkennlinie gilt mit ihrer Förderhöhe mal {2} bei jedem Durchfluss, damit sie durch die Ablesung geht</translation>
    </message>
    <message>
        <source>the pump makes {1} at design flow, the index circuit needs {2}, {4} more: all circuits end at {3} % of design; see that the index path is open and its strainers and filters are clean, check speed and impeller: a larger impeller or pump is for the engineer to decide</source>
        <translation>die Pumpe erzeugt {1} bei Auslegungsdurchfluss, der Schlechtpunktkreis braucht {2}, {4} mehr: Alle Kreise enden bei {3} % der Auslegung; sehen Sie nach, ob der Schlechtpunktweg offen und seine Schmutzfänger und Filter sauber sind, prüfen Sie Drehzahl und Laufrad: über ein größeres Laufrad oder eine größere Pumpe entscheidet der Ingenieur</translation>
    </message>
    <message>
        <source>the word counts the newest readings of the others</source>
        <translation>das Wort rechnet mit den neuesten Ablesungen der anderen</translation>
    </message>
    <message>
        <source>the word counts what the others take once they are set</source>
        <translation>das Wort rechnet mit dem, was die anderen nehmen, wenn sie eingestellt sind</translation>
    </message>
    <message>
        <source>the word matches it to the reference {1}, at {2} % of design</source>
        <translation>das Wort gleicht es an die Referenz {1} an, bei {2} % der Auslegung</translation>
    </message>
    <message>
        <source>{1} at the design flow of {2}, {3w}</source>
        <translation>{1} beim Auslegungsdurchfluss von {2}, {3w}</translation>
    </message>
    <message>
        <source>{1} at the design flow of {2}, {3w}; the curve as published gives {4} {5w}</source>
        <translation>{1} beim Auslegungsdurchfluss von {2}, {3w}; die Kennlinie wie veröffentlicht gibt {4} {5w}</translation>
    </message>
    <message>
        <source>{1} is above the range of instrument {2} and is left out of the learning; read it again, or give the reason</source>
        <translation>{1} liegt über dem Bereich des Messgeräts {2} und bleibt beim Lernen weg; lesen Sie neu ab oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}, for comparison</source>
        <translation>{1} {2w}, {3w}, zum Vergleich</translation>
    </message>
    <message>
        <source>{1} {4}, {2} % of the design flow of {3} {4}; {5} doubtful in it</source>
        <translation>{1} {4}, {2} % des Auslegungsdurchflusses von {3} {4}; davon {5} fraglich</translation>
    </message>
    <message>
        <source>{1}, who also read or sent it: {2}</source>
        <translation>{1}, selbst Ableser oder Absender: {2}</translation>
    </message>
    <message>
        <source>{1}, who also read or sent it; no reason given</source>
        <translation>{1}, selbst Ableser oder Absender; kein Grund angegeben</translation>
    </message>
    <message>
        <source>{2} read or sent round {1} and is the only person of this job; write the reason why nobody else accepts it</source>
        <translation>{2} hat Runde {1} abgelesen oder gesendet und ist die einzige Person dieses Auftrags; schreiben Sie den Grund, warum niemand anders sie annimmt</translation>
    </message>
    <message>
        <source>{2} read or sent round {1}, and no other person of this job is supervisor or engineer; add one on the place Job</source>
        <translation>{2} hat Runde {1} abgelesen oder gesendet, und keine andere Person dieses Auftrags ist Leitung oder Ingenieur; fügen Sie eine im Bereich Auftrag hinzu</translation>
    </message>
    <message>
        <source>readings of {1} rounds and {2} branches are too many to learn the loop from; for advice make a job of each riser</source>
        <translation>Ablesungen aus {1} Runden an {2} Zweigen sind zu viele, um den Kreislauf daraus zu lernen; legen Sie für Ratschläge je Steigstrang einen Auftrag an</translation>
    </message>
    <message>
        <source>{1} readings taken while valves were being turned are too many for a loop of this size and are left out of the learning; read the next round without turning valves in between</source>
        <translation>{1} Ablesungen, zwischen denen Ventile verstellt wurden, sind für einen Kreislauf dieser Größe zu viele und bleiben beim Lernen außer Betracht; lesen Sie die nächste Runde ab, ohne dazwischen Ventile zu verstellen</translation>
    </message>
    <message>
        <source>No change of speed or impeller called for: the pump makes what the index circuit needs, as near as can be told</source>
        <translation>Keine Änderung von Drehzahl oder Laufrad nötig: die Pumpe erzeugt, was der Schlechtpunktkreis braucht, soweit feststellbar</translation>
    </message>
    <message>
        <source>Valves as read</source>
        <translation>Ventile wie abgelesen</translation>
    </message>
    <message>
        <source>it must not be made yet; get the consent that is named below first</source>
        <translation>er darf noch nicht gemacht werden; holen Sie zuerst die unten genannte Zustimmung ein</translation>
    </message>
    <message>
        <source>may be made only once the consent named in the cautions is given</source>
        <translation>erst zulässig, wenn die in den Vorsichtshinweisen genannte Zustimmung vorliegt</translation>
    </message>
    <message>
        <source>no change: at design flow the pump makes {1} and the index circuit needs {2}, no further apart than can be told; leave impeller and speed as they are</source>
        <translation>keine Änderung: bei Auslegungsdurchfluss erzeugt die Pumpe {1} und der Schlechtpunktkreis braucht {2}, der Unterschied ist nicht feststellbar; Laufrad und Drehzahl so lassen</translation>
    </message>
    <message>
        <source>round {1} is open; close it first (Ctrl+Shift+W), then it is sent and decided on</source>
        <translation>Runde {1} ist offen; schließen Sie sie zuerst (Strg+Umschalt+W), dann wird sie gesendet und entschieden</translation>
    </message>
    <message>
        <source>Every step of review, round by round</source>
        <translation>Jeder Schritt der Prüfung, Runde für Runde</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>comments open on round {1}: {2}, the first is &quot;{3}&quot;; answer and resolve each, or send the round back</source>
        <translation>offene Kommentare zur Runde {1}: {2}, der erste lautet „{3}“; jeden beantworten und erledigen oder die Runde zurückgeben</translation>
    </message>
    <message>
        <source>in all: {1}; at circuits: {2}, at pumps: {3}</source>
        <translation>insgesamt: {1}; an Kreisen: {2}, an Pumpen: {3}</translation>
    </message>
    <message>
        <source>items open in round {2}: {1}, the first is {3}; give each a reading or a reason</source>
        <translation>offene Punkte in Runde {2}: {1}, der erste ist {3}; jeden ablesen oder begründen</translation>
    </message>
    <message>
        <source>round {1} is accepted already; open the next round (Ctrl+Shift+N), or go on with the report (Alt+7)</source>
        <translation>Runde {1} ist schon angenommen; die nächste Runde öffnen (Strg+Umschalt+N) oder mit dem Bericht weitermachen (Alt+7)</translation>
    </message>
    <message>
        <source>round {1} is not sent; send it first (Ctrl+Alt+R), then a supervisor or engineer accepts it</source>
        <translation>Runde {1} ist nicht gesendet; zuerst senden (Strg+Alt+R), dann nimmt eine Leitung oder ein Ingenieur sie an</translation>
    </message>
    <message>
        <source>round {1} is sent already; have it accepted or sent back on the place Review (Alt+6)</source>
        <translation>Runde {1} ist schon gesendet; im Bereich Prüfung (Alt+6) annehmen oder zurückgeben lassen</translation>
    </message>
    <message>
        <source>Not shown that {1} is the index: it takes {2} % of design, and fully open too with less are {5}, and nearer than these readings tell ({4} %): {3}; match groups and risers, read again with a finer meter, or sign with the reason</source>
        <translation>Nicht gezeigt, dass {1} der Schlechtpunkt ist: er nimmt {2} % der Auslegung, ebenfalls ganz offen mit weniger: {5}, und näher, als diese Ablesungen unterscheiden ({4} %): {3}; gleichen Sie Gruppen und Steigstränge ab, lesen Sie mit einem feineren Messgerät neu ab, oder signieren Sie mit dem Grund</translation>
    </message>
    <message>
        <source>Pressures here rest on the fill pressure entered, {1} at the expansion vessel; {2} is what the suction gauge showed with the pump off, with its own height and zero</source>
        <translation>Die Drücke hier beruhen auf dem eingetragenen Fülldruck, {1} am Ausdehnungsgefäß; {2} zeigte das Saugmanometer bei stehender Pumpe, mit seiner eigenen Höhe und seinem Nullpunkt</translation>
    </message>
    <message>
        <source>Whether the pump is short cannot be told; read its gauges and every terminal again with finer meters (section {1})</source>
        <translation>Ob der Pumpe Förderhöhe fehlt, ist nicht feststellbar; lesen Sie ihre Manometer und jeden Verbraucher mit feineren Messgeräten neu ab (Abschnitt {1})</translation>
    </message>
    <message>
        <source>a round read at the settings that stand has every share within the band, but not the proof of the index circuit; turn the valve named, then read a final round</source>
        <translation>in einer Runde bei den stehenden Einstellungen liegt jeder Anteil im Band, der Schlechtpunktkreis ist aber nicht nachgewiesen; drehen Sie das genannte Ventil, dann lesen Sie eine Schlussrunde ab</translation>
    </message>
    <message>
        <source>an old reading, with the others not set; advised {2} instead of {1}: turn it, then read</source>
        <translation>alte Ablesung, die anderen waren nicht eingestellt; empfohlen {2} statt {1}: drehen, dann ablesen</translation>
    </message>
    <message>
        <source>lies on the index circuit at {1}; open it fully to {2}, or the index is not proved</source>
        <translation>liegt im Schlechtpunktkreis und steht auf {1}; ganz öffnen auf {2}, sonst ist der Schlechtpunkt nicht nachgewiesen</translation>
    </message>
    <message>
        <source>round {1} was read while valves were turned, so its shares may still change; read every valve in the next round</source>
        <translation>Runde {1} wurde abgelesen, während Ventile gedreht wurden, ihre Anteile können sich also noch ändern; lesen Sie in der nächsten Runde jedes Ventil ab</translation>
    </message>
    <message>
        <source>the pump makes {1} at design flow, the index circuit needs {2}: whether it is short cannot be told; read its gauges and every terminal again once all valves are set</source>
        <translation>die Pumpe erzeugt {1} bei Auslegungsdurchfluss, der Schlechtpunktkreis braucht {2}: ob ihr Förderhöhe fehlt, ist nicht feststellbar; lesen Sie ihre Manometer und jeden Verbraucher neu ab, sobald alle Ventile eingestellt sind</translation>
    </message>
    <message>
        <source>this terminal is fully open, and whether it takes less of design than the index circuit cannot be told; read both again with a finer meter</source>
        <translation>dieser Verbraucher ist ganz offen, und ob er weniger der Auslegung nimmt als der Schlechtpunktkreis, ist nicht feststellbar; lesen Sie beide mit einem feineren Messgerät neu ab</translation>
    </message>
    <message>
        <source>whether the pump is short cannot be told: at design flow it makes {1} and the index circuit needs {2}; read its gauges and every terminal again with finer meters, leave impeller and speed until then</source>
        <translation>ob der Pumpe Förderhöhe fehlt, ist nicht feststellbar: bei Auslegungsdurchfluss erzeugt sie {1} und der Schlechtpunktkreis braucht {2}; lesen Sie ihre Manometer und jeden Verbraucher mit feineren Messgeräten neu ab, lassen Sie Laufrad und Drehzahl bis dahin</translation>
    </message>
    <message>
        <source>{3} below it takes {4} % of design, the index {5} {6} %; open it from {1} to {2}, then read</source>
        <translation>{3} dahinter nimmt {4} % der Auslegung, der Schlechtpunkt {5} {6} %; von {1} auf {2} öffnen, dann ablesen</translation>
    </message>
    <message>
        <source>At design flow the shaft takes {2} slowed instead of {1} throttled: {3} % less</source>
        <translation>Beim Auslegungsdurchfluss braucht die Welle verlangsamt {2} statt gedrosselt {1}: {3} % weniger</translation>
    </message>
    <message>
        <source>Computed, not read: no round was read yet, settings and losses are those entered.</source>
        <translation>Berechnet, nicht abgelesen: Noch keine Runde ist abgelesen, Einstellungen und Verluste sind die eingegebenen.</translation>
    </message>
    <message>
        <source>Computed, not read: settings and pump as in round {1}, losses by the learned loop where the readings taught one, else by the design.</source>
        <translation>Berechnet, nicht abgelesen: Einstellungen und Pumpe wie in Runde {1}, Verluste nach dem gelernten Kreislauf, wo die Ablesungen einen ergaben, sonst nach der Auslegung.</translation>
    </message>
    <message>
        <source>Difference / uncertainty</source>
        <translation>Abweichung / Unsicherheit</translation>
    </message>
    <message>
        <source>Difference / uncertainty: how far two ways to the flow differ, as a multiple of their uncertainty together; above 2 one of them is wrong.</source>
        <translation>Abweichung / Unsicherheit: wie weit zwei Verfahren für den Durchfluss auseinanderliegen, als Vielfaches ihrer gemeinsamen Unsicherheit; über 2 ist eines von ihnen falsch.</translation>
    </message>
    <message>
        <source>Digits and units exactly as entered. A value that was corrected or struck stays, struck out. A setting that was entered before its reading stands in the row of that reading.</source>
        <translation>Ziffern und Einheiten genau wie eingetragen. Ein berichtigter oder gestrichener Wert bleibt durchgestrichen stehen. Eine Einstellung, die vor ihrer Ablesung eingetragen wurde, steht in der Zeile dieser Ablesung.</translation>
    </message>
    <message>
        <source>Duty {1} {2} at {3} {4}; {5} % of design. With these valves {6} % of the speed of the last round gives {7} {2}.</source>
        <translation>Betriebspunkt {1} {2} bei {3} {4}; {5} % der Auslegung. Mit diesen Ventilen ergeben {6} % der Drehzahl der letzten Runde {7} {2}.</translation>
    </message>
    <message>
        <source>No change of speed or impeller called for: design flow needs {1} % of the speed of the last round {2w}</source>
        <translation>Keine Änderung von Drehzahl oder Laufrad nötig: Der Auslegungsdurchfluss braucht {1} % der Drehzahl der letzten Runde {2w}</translation>
    </message>
    <message>
        <source>No gauge was read in round {1}: its duty is drawn as a dashed ring, with the head of the pump&apos;s curve.</source>
        <translation>In Runde {1} wurde kein Manometer abgelesen: Ihr Betriebspunkt ist als gestrichelter Ring gezeichnet, mit der Förderhöhe der Pumpenkennlinie.</translation>
    </message>
    <message>
        <source>Reasons</source>
        <translation>Gründe</translation>
    </message>
    <message>
        <source>Share: flow over the sum of the terminals. A riser or branch is read at its own valve, so that these shares need not add up to 100 %</source>
        <translation>Anteil: Durchfluss durch die Summe der Verbraucher. Ein Steigstrang oder Zweig wird an seinem eigenen Ventil abgelesen, deshalb müssen diese Anteile zusammen nicht 100 % ergeben</translation>
    </message>
    <message>
        <source>Short by {4} of head: design flow on this system needs {1} % of the speed of the last round {3w}. See that the index path is open and strainers and filters are clean; a larger impeller or pump is for the engineer to decide (section {2})</source>
        <translation>Es fehlen {4} Förderhöhe: Der Auslegungsdurchfluss braucht in dieser Anlage {1} % der Drehzahl der letzten Runde {3w}. Sehen Sie nach, ob der Schlechtpunktweg offen ist und Schmutzfänger und Filter sauber sind; über ein größeres Laufrad oder eine größere Pumpe entscheidet der Ingenieur (Abschnitt {2})</translation>
    </message>
    <message>
        <source>Test by each form of the clause</source>
        <translation>Prüfung nach jeder Form des Abschnitts</translation>
    </message>
    <message>
        <source>That is {1} rpm where full speed is {2} rpm</source>
        <translation>Das sind {1} 1/min bei voller Drehzahl von {2} 1/min</translation>
    </message>
    <message>
        <source>What would hold up a signature, and the reason why it stands</source>
        <translation>Was einer Signatur im Weg stünde, und warum es bestehen bleibt</translation>
    </message>
    <message>
        <source>below 60 % of full speed the efficiency falls by 1 to 3 points and the drive loses more; take the saving as an upper limit</source>
        <translation>unter 60 % der vollen Drehzahl fällt der Wirkungsgrad um 1 bis 3 Punkte und der Umrichter verliert mehr; nehmen Sie die Einsparung als Obergrenze</translation>
    </message>
    <message>
        <source>design flow would need {1} % of full speed; ask the maker first, motor and shaft may not bear it</source>
        <translation>der Auslegungsdurchfluss bräuchte {1} % der vollen Drehzahl; fragen Sie zuerst den Hersteller, Motor und Welle halten es vielleicht nicht aus</translation>
    </message>
    <message>
        <source>fully open, its valve makes only {1} at design flow; it reads well from {2} on and not at all below {3}; choose a smaller valve or another way to measure</source>
        <translation>ganz offen erzeugt sein Ventil beim Auslegungsdurchfluss nur {1}; gut ablesbar ist es ab {2}, unter {3} gar nicht; wählen Sie ein kleineres Ventil oder einen anderen Messweg</translation>
    </message>
    <message>
        <source>lines that would hold up a signature and stand with a reason: {1}, listed in section {2}</source>
        <translation>Zeilen, die einer Signatur im Weg stünden und mit Grund bestehen bleiben: {1}, siehe Abschnitt {2}</translation>
    </message>
    <message>
        <source>not turned in this round</source>
        <translation>in dieser Runde nicht gedreht</translation>
    </message>
    <message>
        <source>n₂/n₁ = Q design / Q where system and pump curve meet = {1} / {2} {6} = {3}: {4} % of the speed of round {5}</source>
        <translation>n₂/n₁ = Q Auslegung / Q, wo Anlagen- und Pumpenkennlinie sich treffen = {1} / {2} {6} = {3}: {4} % der Drehzahl von Runde {5}</translation>
    </message>
    <message>
        <source>the form of the energy code&apos;s clause is not chosen, the one with {1} and {2} is tested; choose it on the page Energy Code of Pump</source>
        <translation>die Form des Abschnitts der Energievorschrift ist nicht gewählt, geprüft wird die mit {1} und {2}; wählen Sie sie auf der Seite Vorschrift von Pumpe</translation>
    </message>
    <message>
        <source>the pump was read at {1} % of full speed; a motor does not run above 100 % without a drive that allows it, check the reading and the rated speed entered</source>
        <translation>die Pumpe wurde bei {1} % der vollen Drehzahl abgelesen; ein Motor läuft ohne passenden Umrichter nicht über 100 %, prüfen Sie Ablesung und eingegebene Nenndrehzahl</translation>
    </message>
    <message>
        <source>the speed was not read, so full speed is assumed; read it</source>
        <translation>die Drehzahl wurde nicht abgelesen, also wird volle Drehzahl angenommen; lesen Sie sie ab</translation>
    </message>
    <message>
        <source>valves not turned in round {1}: {2}</source>
        <translation>nicht gedrehte Ventile in Runde {1}: {2}</translation>
    </message>
    <message>
        <source>{1} % of the speed of the last round {6w}, or a trim, brings {2} {3}: it takes away the excess {4w} (section {5})</source>
        <translation>{1} % der Drehzahl der letzten Runde {6w} oder ein Abdrehen bringt {2} {3}: Das nimmt den Überschuss {4w} weg (Abschnitt {5})</translation>
    </message>
    <message>
        <source>{1} at {2} in round {3}, {4} % of full speed; shaft power there {5w}, efficiency {6w}</source>
        <translation>{1} bei {2} in Runde {3}, {4} % der vollen Drehzahl; Wellenleistung dort {5w}, Wirkungsgrad {6w}</translation>
    </message>
    <message>
        <source>Short by {1} of head at design flow {2w}: do not slow or trim the pump. See that the index path is open and strainers and filters are clean; a larger impeller or pump is for the engineer to decide (section {3})</source>
        <translation>Es fehlen {1} Förderhöhe beim Auslegungsdurchfluss {2w}: Die Pumpe weder verlangsamen noch abdrehen. Sehen Sie nach, ob der Schlechtpunktweg offen ist und Schmutzfänger und Filter sauber sind; über ein größeres Laufrad oder eine größere Pumpe entscheidet der Ingenieur (Abschnitt {3})</translation>
    </message>
    <message>
        <source>round {1} takes no new readings any more; open the next round (Ctrl+Shift+N), then read</source>
        <translation>Runde {1} nimmt keine neuen Ablesungen mehr an; öffnen Sie die nächste Runde (Strg+Umschalt+N), dann lesen Sie ab</translation>
    </message>
    <message>
        <source>In the figure the upright line at a tee is what is available there, supply less return; the bracket is the dp of the valve.</source>
        <translation>In der Abbildung ist die senkrechte Linie an einem Abzweig das, was dort verfügbar ist, Vorlauf weniger Rücklauf; die Klammer ist die Δp des Ventils.</translation>
    </message>
    <message>
        <source>Revision {1}: {2} signed as reviewer, and read or sent rounds {3} too.</source>
        <translation>Revision {1}: {2} signierte als Prüfender und las oder sandte auch die Runden {3}.</translation>
    </message>
    <message>
        <source>The index valve {1} ended at {2} of {3}, not fully open, and takes {4}.</source>
        <translation>Das Schlechtpunktventil {1} steht am Ende auf {2} von {3}, nicht ganz offen, und nimmt {4}.</translation>
    </message>
    <message>
        <source>The index valve {1} ended fully open and takes {2}.</source>
        <translation>Das Schlechtpunktventil {1} steht am Ende ganz offen und nimmt {2}.</translation>
    </message>
    <message>
        <source>The setting of valve {1} is not known, so it counts as fully open; enter it with its reading.</source>
        <translation>Die Einstellung von Ventil {1} ist nicht bekannt, daher zählt es als ganz offen; tragen Sie sie mit seiner Ablesung ein.</translation>
    </message>
    <message>
        <source>The valve {1} ended at {2} of {3} and takes {4}.</source>
        <translation>Das Ventil {1} steht am Ende auf {2} von {3} und nimmt {4}.</translation>
    </message>
    <message>
        <source>The valve {1} ended fully open and takes {2}.</source>
        <translation>Das Ventil {1} steht am Ende ganz offen und nimmt {2}.</translation>
    </message>
    <message>
        <source>branches added after round {1} was closed: {2}; rounds up to {1} are judged without them: read a new round</source>
        <translation>nach dem Schließen von Runde {1} kamen Zweige hinzu: {2}; Runden bis {1} werden ohne sie beurteilt: lesen Sie eine neue Runde ab</translation>
    </message>
    <message>
        <source>design flows changed after round {1} was closed: {2}; rounds up to {1} are judged by those before: read a new round</source>
        <translation>Auslegungsdurchflüsse wurden nach dem Schließen von Runde {1} geändert: {2}; Runden bis {1} werden nach den früheren beurteilt: lesen Sie eine neue Runde ab</translation>
    </message>
    <message>
        <source>it goes no further in the working order; move another valve</source>
        <translation>es geht in der Arbeitsfolge nicht weiter; verschieben Sie ein anderes Ventil</translation>
    </message>
    <message>
        <source>it is number {1} of {2} in the working order now; Ctrl+Alt+B goes back to the advised order</source>
        <translation>es ist nun Nummer {1} von {2} der Arbeitsfolge; Strg+Alt+B geht zur empfohlenen Folge zurück</translation>
    </message>
    <message>
        <source>its design flow is {1} to begin with; type its own, and by which branch it is fed</source>
        <translation>sein Auslegungsdurchfluss ist zunächst {1}; tippen Sie seinen eigenen und von welchem Zweig er versorgt wird</translation>
    </message>
    <message>
        <source>limits changed after round {1} was closed: share ±{2} %, was ±{3} %; of design {4} to {5} %, was {6} to {7} %; round {1} was accepted by those before</source>
        <translation>Grenzen nach dem Schließen von Runde {1} geändert: Anteil ±{2} %, war ±{3} %; der Auslegung {4} bis {5} %, war {6} bis {7} %; Runde {1} wurde nach den früheren angenommen</translation>
    </message>
    <message>
        <source>limits changed after round {1} was closed: share ±{2} %, was ±{3} %; of design {4} to {5} %, was {6} to {7} %; rounds up to {1} are judged by those before</source>
        <translation>Grenzen nach dem Schließen von Runde {1} geändert: Anteil ±{2} %, war ±{3} %; der Auslegung {4} bis {5} %, war {6} bis {7} %; Runden bis {1} werden nach den früheren beurteilt</translation>
    </message>
    <message>
        <source>not read in round {1}, {2} of {3} valves are; read it, or say why not when the round is closed (Ctrl+Shift+W)</source>
        <translation>in Runde {1} nicht abgelesen, {2} von {3} Ventilen sind es; lesen Sie es ab oder sagen Sie beim Schließen der Runde, warum nicht (Strg+Umschalt+W)</translation>
    </message>
    <message>
        <source>open comments: {1}, the first on {2}; Ctrl+Shift+Down goes to it, and from one to the next along the route</source>
        <translation>offene Kommentare: {1}, der erste zu {2}; Strg+Umschalt+Ab geht zu ihm, und weiter von einem zum nächsten auf dem Weg</translation>
    </message>
    <message>
        <source>read or sent these rounds too: {1}</source>
        <translation>las oder sandte auch diese Runden: {1}</translation>
    </message>
    <message>
        <source>round {1} was sent back, so this corrects its reading and the old value stays in the history; say why in a note (Ctrl+M)</source>
        <translation>Runde {1} wurde zurückgegeben, dies berichtigt also ihre Ablesung und der alte Wert bleibt im Verlauf; nennen Sie den Grund in einer Notiz (Strg+M)</translation>
    </message>
    <message>
        <source>round {1}: {2} of {3} terminals are on share and the index circuit is proved; send it for review, then look at the report</source>
        <translation>Runde {1}: {2} von {3} Verbrauchern im Anteil, und der Schlechtpunktkreis ist nachgewiesen; senden Sie sie zur Prüfung, dann sehen Sie den Bericht an</translation>
    </message>
    <message>
        <source>round {1}: {2} of {3} terminals are on share, but the index circuit is not proved; see on the place Adjust which valve to open, then read a final round</source>
        <translation>Runde {1}: {2} von {3} Verbrauchern im Anteil, aber der Schlechtpunktkreis ist nicht nachgewiesen; sehen Sie im Bereich Einstellen nach, welches Ventil zu öffnen ist, dann lesen Sie eine Schlussrunde ab</translation>
    </message>
    <message>
        <source>round {1}: {2} of {3} terminals are on share; go on in Adjust, then read a final round</source>
        <translation>Runde {1}: {2} von {3} Verbrauchern im Anteil; machen Sie in Einstellen weiter, dann lesen Sie eine Schlussrunde ab</translation>
    </message>
    <message>
        <source>the valves are taken in the advised order again; Alt+Shift+Up and Down change it</source>
        <translation>die Ventile werden wieder in der empfohlenen Folge genommen; Alt+Umschalt+Auf und Ab ändern sie</translation>
    </message>
    <message>
        <source>{1} in round {2} does not fit the other readings, which expect {3} (z {4}); with the point moved {5} would, correct it or read it again</source>
        <translation>{1} in Runde {2} passt nicht zu den anderen Ablesungen, die {3} erwarten (z {4}); mit verschobenem Dezimalpunkt würden {5} passen, berichtigen Sie es oder lesen Sie neu ab</translation>
    </message>
    <message>
        <source>{1} is far from the expected {2}, with the point moved it would be {3}; correct it, read again or give the reason</source>
        <translation>{1} liegt fern vom erwarteten {2}, mit verschobenem Dezimalpunkt wären es {3}; berichtigen Sie es, lesen Sie neu ab oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>{1} is under the readable minimum of {2}, the flow is only known to lie between {3} and {4}; close the valve {5w} to read, take another instrument or give the reason</source>
        <translation>{1} liegt unter dem ablesbaren Mindestwert {2}, der Durchfluss liegt nur bekannt zwischen {3} und {4}; schließen Sie das Ventil zum Ablesen {5w}, nehmen Sie ein anderes Messgerät oder geben Sie den Grund an</translation>
    </message>
    <message>
        <source>{1} read or sent rounds {2}, and the report tells it beside the signature; let somebody else review them, or sign once more</source>
        <translation>{1} las oder sandte die Runden {2}, und der Bericht sagt es neben der Signatur; lassen Sie jemand anderen prüfen, oder signieren Sie noch einmal</translation>
    </message>
    <message>
        <source>{1} was added after the reference was read; read the reference again</source>
        <translation>{1} kam hinzu, nachdem die Referenz abgelesen wurde; lesen Sie die Referenz neu ab</translation>
    </message>
    <message>
        <source>there is no row to paste; copy rows with their headings in the spreadsheet first</source>
        <translation>es gibt keine Zeile einzufügen; kopieren Sie zuerst in der Tabellenkalkulation Zeilen mit ihren Köpfen</translation>
    </message>
    <message>
        <source>An impeller of {1} with a first cut to {2}, as decided</source>
        <translation>Ein Laufrad von {1} mit erstem Abdrehen auf {2}, wie entschieden</translation>
    </message>
    <message>
        <source>Duty {1} {2} at {3} {4}; {5} % of design. Drawn as decided: speed {6} % of full speed.</source>
        <translation>Betriebspunkt {1} {2} bei {3} {4}; {5} % der Auslegung. Gezeichnet wie entschieden: Drehzahl {6} % der vollen.</translation>
    </message>
    <message>
        <source>For information: {1} % of the speed of the last round {6w} brings {2} {3}: it takes away the excess {4w}; order no speed or impeller by it (section {5})</source>
        <translation>Zur Kenntnis: {1} % der Drehzahl der letzten Runde bringt {6w} {2} {3}: Das nimmt den Überschuss {4w} weg; bestellen Sie danach weder Drehzahl noch Laufrad (Abschnitt {5})</translation>
    </message>
    <message>
        <source>No change: the pump runs at {1} % of full speed, as decided</source>
        <translation>Keine Änderung: die Pumpe läuft mit {1} % der vollen Drehzahl, wie entschieden</translation>
    </message>
    <message>
        <source>Speed {1} % of full speed, as decided</source>
        <translation>Drehzahl {1} % der vollen, wie entschieden</translation>
    </message>
    <message>
        <source>Speed {1} % of full speed, or an impeller of {2} with a first cut to {3}, as decided</source>
        <translation>Drehzahl {1} % der vollen, oder ein Laufrad von {2} mit erstem Abdrehen auf {3}, wie entschieden</translation>
    </message>
    <message>
        <source>The loop with its valves as they stood in round {5} takes {1} {4} and the pump makes {2} {4} {7w}: excess {3} {4} {6w}. The pump decision uses {8} {4} {9w}</source>
        <translation>Der Kreislauf mit seinen Ventilen wie in Runde {5} braucht {1} {4} und die Pumpe erzeugt {2} {4} {7w}: Überschuss {3} {4} {6w}. Die Entscheidung zur Pumpe richtet sich nach {8} {4} {9w}</translation>
    </message>
    <message>
        <source>What to order</source>
        <translation>Zu bestellen</translation>
    </message>
    <message>
        <source>Write x as the dp where a valve cannot be read, and note why; closing the round asks for the reason.</source>
        <translation>Schreiben Sie x als Δp, wo ein Ventil nicht ablesbar ist, und notieren Sie warum; beim Schließen der Runde wird nach dem Grund gefragt.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no number of a practice building; give a whole number from 1 to 999999999</source>
        <translation>„{1}“ ist keine Nummer eines Übungsgebäudes; geben Sie eine ganze Zahl von 1 bis 999999999</translation>
    </message>
    <message>
        <source>a first look: in round {1}, {2} of {3} terminals are on share and the index circuit is {4w}; leave the pump as it is until all are on share with the index proved</source>
        <translation>ein erster Blick: in Runde {1} sind {2} von {3} Verbrauchern im Anteil und der Schlechtpunktkreis ist {4w}; lassen Sie die Pumpe, wie sie ist, bis alle im Anteil sind und der Schlechtpunkt dabei nachgewiesen ist</translation>
    </message>
    <message>
        <source>a power factor of {1} is above 1; check the reading and its unit</source>
        <translation>ein Leistungsfaktor von {1} liegt über 1; Ablesung und Einheit prüfen</translation>
    </message>
    <message>
        <source>all dps of round {1} are about {2} % higher than round {3} makes expect, as with {4} % more speed: was the pump set faster, or another valve opened? Read the speed on the drive and look at the valves of the main; no single valve is to blame</source>
        <translation>alle Δp der Runde {1} sind etwa {2} % höher, als Runde {3} erwarten lässt, wie bei {4} % mehr Drehzahl: lief die Pumpe schneller, oder wurde ein anderes Ventil geöffnet? Drehzahl am Umrichter ablesen und die Ventile der Hauptleitung ansehen; kein einzelnes Ventil ist schuld</translation>
    </message>
    <message>
        <source>all dps of round {1} are about {2} % lower than round {3} makes expect, as with {4} % less speed: was the pump slowed, or another valve closed? Read the speed on the drive and look at the valves of the main; no single valve is to blame</source>
        <translation>alle Δp der Runde {1} sind etwa {2} % niedriger, als Runde {3} erwarten lässt, wie bei {4} % weniger Drehzahl: lief die Pumpe langsamer, oder wurde ein anderes Ventil geschlossen? Drehzahl am Umrichter ablesen und die Ventile der Hauptleitung ansehen; kein einzelnes Ventil ist schuld</translation>
    </message>
    <message>
        <source>for information: what follows is for the loop with its valves as they were read; order no speed or impeller by it</source>
        <translation>zur Kenntnis: Das Folgende gilt für den Kreislauf mit den Ventilen wie abgelesen; bestellen Sie danach weder Drehzahl noch Laufrad</translation>
    </message>
    <message>
        <source>in round {1} the index circuit ends at {3}, no more at {2}; see that every valve on its path is fully open</source>
        <translation>in Runde {1} endet der Schlechtpunktkreis an {3}, nicht mehr an {2}; sehen Sie nach, ob jedes Ventil auf seinem Weg ganz offen ist</translation>
    </message>
    <message>
        <source>no gauge with a known accuracy is named, so the usual 2 % of each reading are counted; name the gauge here and its accuracy on the place Job</source>
        <translation>kein Manometer mit bekannter Genauigkeit ist genannt, darum zählen die üblichen 2 % jeder Ablesung; das Manometer hier und seine Genauigkeit unter Auftrag angeben</translation>
    </message>
    <message>
        <source>no speed was read in round {1}, so full speed is taken and no number here is certain; read it on the drive before the pump is changed</source>
        <translation>in Runde {1} wurde keine Drehzahl abgelesen, darum gilt die volle, und keine Zahl hier ist sicher; am Umrichter ablesen, bevor die Pumpe geändert wird</translation>
    </message>
    <message>
        <source>no speed was read in round {1}, so the {2} % of full speed of round {3} are taken and no number here is certain; read it on the drive before the pump is changed</source>
        <translation>in Runde {1} wurde keine Drehzahl abgelesen, darum gelten die {2} % der vollen Drehzahl aus Runde {3}, und keine Zahl hier ist sicher; am Umrichter ablesen, bevor die Pumpe geändert wird</translation>
    </message>
    <message>
        <source>nothing was pasted: {1}</source>
        <translation>nichts wurde eingefügt: {1}</translation>
    </message>
    <message>
        <source>round {1} was read while valves were turned, so its shares may still change; the index circuit ends at {3} now, no more at {2}; read every valve in the next round</source>
        <translation>Runde {1} wurde abgelesen, während Ventile gedreht wurden, ihre Anteile können sich also noch ändern; der Schlechtpunktkreis endet jetzt an {3}, nicht mehr an {2}; lesen Sie in der nächsten Runde jedes Ventil ab</translation>
    </message>
    <message>
        <source>suction {1} is above discharge {2} with the pump running; swap the two readings, or check the direction of turn and the gauges</source>
        <translation>Saugseite {1} liegt bei laufender Pumpe über Druckseite {2}; beide Ablesungen tauschen oder Drehrichtung und Manometer prüfen</translation>
    </message>
    <message>
        <source>terminals without a flow in this round: {1} ({2}); closed like this it has no total flow, so no share of any branch and no index circuit: read them, or a valve above them, first</source>
        <translation>Verbraucher ohne Durchfluss in dieser Runde: {1} ({2}); so geschlossen hat sie keinen Gesamtdurchfluss, also keinen Anteil irgendeines Zweigs und keinen Schlechtpunktkreis: zuerst diese oder ein Ventil darüber ablesen</translation>
    </message>
    <message>
        <source>the instrument was due for calibration on {1}, readings of this round taken with it later: {2}, the last on {3}; use another one, or give one reason for all (Job, If overdue, why)</source>
        <translation>die Kalibrierung des Messgeräts war am {1} fällig, spätere Ablesungen dieser Runde damit: {2}, die letzte am {3}; ein anderes nehmen oder einen Grund für alle angeben (Auftrag, Falls überfällig, warum)</translation>
    </message>
    <message>
        <source>{1w} 0 with the pump running; check the clamp, the phases and the range, read again or leave it empty</source>
        <translation>{1w} 0 bei laufender Pumpe; Zange, Phasen und Bereich prüfen, neu ablesen oder leer lassen</translation>
    </message>
    <message>
        <source>{1w} gives {2} of head and {3w}, with less flow, only {4}; a pump&apos;s head falls as flow rises: read both taps again with one gauge</source>
        <translation>{1w} gibt {2} Förderhöhe und {3w}, mit weniger Durchfluss, nur {4}; die Förderhöhe fällt, wenn der Durchfluss steigt: beide Stutzen mit einem Manometer neu ablesen</translation>
    </message>
    <message>
        <source>{1w} {2} is far from {3} at the other points of this pump, with the point moved it would be {4}; correct it, read again or give the reason</source>
        <translation>{1w} {2} liegt fern von {3} an den anderen Punkten dieser Pumpe, mit versetztem Komma wären es {4}; berichtigen, neu ablesen oder den Grund angeben</translation>
    </message>
    <message>
        <source>{1w} {2} is far from {3} at the other points of this pump; check the point and the unit, read again or give the reason</source>
        <translation>{1w} {2} liegt fern von {3} an den anderen Punkten dieser Pumpe; Komma und Einheit prüfen, neu ablesen oder den Grund angeben</translation>
    </message>
    <message>
        <source>{1} at {2} in round {3}; no speed was read, full speed is taken: read it on the drive; shaft power there {5w}, efficiency {6w}</source>
        <translation>{1} bei {2} in Runde {3}; keine Drehzahl abgelesen, die volle gilt: am Umrichter ablesen; Wellenleistung dort {5w}, Wirkungsgrad {6w}</translation>
    </message>
    <message>
        <source>{1} at {2} in round {3}; no speed was read, the {4} % of full speed of round {7} are taken: read it on the drive; shaft power there {5w}, efficiency {6w}</source>
        <translation>{1} bei {2} in Runde {3}; keine Drehzahl abgelesen, es gelten die {4} % der vollen aus Runde {7}: am Umrichter ablesen; Wellenleistung dort {5w}, Wirkungsgrad {6w}</translation>
    </message>
    <message>
        <source>{1} is {2} % of the rated speed; check the reading and the rated speed entered, or give the reason</source>
        <translation>{1} sind {2} % der Nenndrehzahl; Ablesung und eingegebene Nenndrehzahl prüfen oder den Grund angeben</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}: the pump decision uses this one</source>
        <translation>{1} {2w}, {3w}: danach richtet sich die Entscheidung zur Pumpe</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}: the pump decision uses this one (section {4})</source>
        <translation>{1} {2w}, {3w}: danach richtet sich die Entscheidung zur Pumpe (Abschnitt {4})</translation>
    </message>
    <message>
        <source>{1} {2w}, {3w}: the pump decision uses this one, speed {5} % of full speed takes it away (section {4})</source>
        <translation>{1} {2w}, {3w}: danach richtet sich die Entscheidung zur Pumpe, {5} % der vollen Drehzahl nimmt sie weg (Abschnitt {4})</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a speed; type 0 to 120 % of rated</source>
        <translation>„{1}“ ist keine Drehzahl; 0 bis 120 % der Nenndrehzahl eintippen</translation>
    </message>
    <message>
        <source>no row is in hand; go to the row to remove first</source>
        <translation>keine Zeile ist gewählt; erst in die Zeile gehen, die weg soll</translation>
    </message>
    <message>
        <source>the row with {1} has no {2}; type it, or take the row out with its button</source>
        <translation>in der Zeile mit {1} fehlt: {2}; eintippen oder die Zeile mit ihrem Knopf entfernen</translation>
    </message>
    <message>
        <source>there is no table of advice here; do first what the page says</source>
        <translation>hier ist keine Tabelle des Rats; erst tun, was die Seite sagt</translation>
    </message>
    <message>
        <source>{1} is off the scale of {2}; type a setting from {3} to {4}</source>
        <translation>{1} liegt außerhalb der Skala von {2}; eine Einstellung von {3} bis {4} eintippen</translation>
    </message>
    <message>
        <source>this survey begins without a readiness list; see that the loop is clean, filled, vented and safe to run, and note it: Job, Readiness, Take Usual List</source>
        <translation>diese Aufnahme beginnt ohne Bereitschaftsliste; sehen Sie nach, dass der Kreislauf sauber, gefüllt, entlüftet und sicher zu betreiben ist, und notieren Sie es: Auftrag, Bereitschaft, Übliche Liste nehmen</translation>
    </message>
    <message>
        <source>Each terminal and each valve on the way before rebalancing, and its new setting</source>
        <translation>Jeder Verbraucher und jedes Ventil auf dem Weg vor neuem Abgleich und seine neue Einstellung</translation>
    </message>
    <message>
        <source>In {1} hours a year at the flow as read: {2} kWh or {4} {5} {3w}</source>
        <translation>In {1} Stunden im Jahr beim abgelesenen Durchfluss: {2} kWh oder {4} {5} {3w}</translation>
    </message>
    <message>
        <source>In {1} hours a year at the flow as read: {2} kWh {3w}</source>
        <translation>In {1} Stunden im Jahr beim abgelesenen Durchfluss: {2} kWh {3w}</translation>
    </message>
    <message>
        <source>No report of this job was signed before this one.</source>
        <translation>Vor diesem wurde kein Bericht dieses Auftrags signiert.</translation>
    </message>
    <message>
        <source>Power from the mains</source>
        <translation>Leistung aus dem Netz</translation>
    </message>
    <message>
        <source>a further change of speed brings no saving that could be told</source>
        <translation>eine weitere Änderung der Drehzahl bringt keine feststellbare Ersparnis</translation>
    </message>
    <message>
        <source>edition and clause of the adopted energy code are not entered, so the report names none; enter them</source>
        <translation>Ausgabe und Abschnitt der geltenden Energievorschrift sind nicht eingetragen, der Bericht nennt also keine; tragen Sie sie ein</translation>
    </message>
    <message>
        <source>only for sending back: round {1} has no open comment that says what to correct; choose a cell of the comparison, press Ctrl+Alt+C and write it</source>
        <translation>nur zum Zurückgeben: Runde {1} hat keinen offenen Kommentar, der sagt, was zu berichtigen ist; wählen Sie eine Zelle des Vergleichs, drücken Sie Strg+Alt+C und schreiben Sie ihn</translation>
    </message>
    <message>
        <source>round {1} is closed and has no reading of this point; open the next round (Ctrl+Shift+N) and read it there</source>
        <translation>Runde {1} ist geschlossen und hat keine Ablesung dieses Punktes; öffnen Sie die nächste Runde (Strg+Umschalt+N) und lesen Sie ihn dort ab</translation>
    </message>
    <message>
        <source>round {1} was sent back, so this corrects its reading and the old value stays on record; say why in the field Note</source>
        <translation>Runde {1} wurde zurückgegeben, dies berichtigt also ihre Ablesung und der alte Wert bleibt aufgezeichnet; nennen Sie den Grund im Feld Notiz</translation>
    </message>
    <message>
        <source>the study is saved as {1}</source>
        <translation>die Studie ist gespeichert als {1}</translation>
    </message>
    <message>
        <source>{1} is more than a whole; type an efficiency of 100 % at most</source>
        <translation>{1} ist mehr als ein Ganzes; tippen Sie einen Wirkungsgrad von höchstens 100 %</translation>
    </message>
    <message>
        <source>{1}: {2} in round {3}, {4} in round {5}: {6} {7w}, {8} %</source>
        <translation>{1}: {2} in Runde {3}, {4} in Runde {5}: {6} {7w}, {8} %</translation>
    </message>
    <message>
        <source>A copy of revision {1}, signed by {2}; nothing was changed since. The signed file counts.</source>
        <translation>Eine Kopie der Revision {1}, signiert von {2}; seither wurde nichts geändert. Es gilt die signierte Datei.</translation>
    </message>
    <message>
        <source>Revision {1}: {2} signed both the readings and the review.</source>
        <translation>Revision {1}: {2} signierte die Ablesungen und die Prüfung.</translation>
    </message>
    <message>
        <source>signed the readings too</source>
        <translation>signierte auch die Ablesungen</translation>
    </message>
    <message>
        <source>signed the review too</source>
        <translation>signierte auch die Prüfung</translation>
    </message>
    <message>
        <source>the report tests the energy code&apos;s clause and cannot name it; type code, edition and clause on Pump, Energy Code</source>
        <translation>der Bericht prüft den Abschnitt der Energievorschrift und kann ihn nicht nennen; geben Sie Vorschrift, Ausgabe und Abschnitt unter Pumpe, Vorschrift ein</translation>
    </message>
    <message>
        <source>{1} signed this revision in the other role too, and the report tells it beside the signature; let somebody else sign, or sign once more</source>
        <translation>{1} signierte diese Revision auch in der anderen Rolle, und der Bericht sagt es neben der Signatur; lassen Sie jemand anderen signieren oder signieren Sie noch einmal</translation>
    </message>
    <message>
        <source>Speed {1} % of full speed, as decided; the pump has no drive, so by a drive or other sheaves</source>
        <translation>Drehzahl {1} % der vollen, wie entschieden; die Pumpe hat keinen Umrichter, also durch einen Umrichter oder andere Riemenscheiben</translation>
    </message>
    <message>
        <source>The uncertainty of this difference is not known: no accuracy of the power meter is recorded</source>
        <translation>Die Unsicherheit dieser Differenz ist nicht bekannt: die Genauigkeit des Leistungsmessers ist nicht festgehalten</translation>
    </message>
    <message>
        <source>a head of {1} is far above the {2} of the pump&apos;s curve at no flow; check the gauges, the field and the unit, read again or give the reason</source>
        <translation>eine Förderhöhe von {1} liegt weit über den {2} der Pumpenkennlinie ohne Durchfluss; prüfen Sie die Manometer, das Feld und die Einheit, lesen Sie erneut ab oder nennen Sie den Grund</translation>
    </message>
    <message>
        <source>every valve of the working order is held, but {1} of {2} valves are not read in this round, the next along the route is {3}; go to each in Walk (Alt+3, Ctrl+Shift+Down), then close the round (Ctrl+Shift+W)</source>
        <translation>jedes Ventil der Arbeitsfolge ist gehalten, aber {1} von {2} Ventilen sind in dieser Runde nicht abgelesen, das nächste auf dem Weg ist {3}; lesen Sie jedes auf dem Rundgang ab (Alt+3, Strg+Umschalt+Ab), dann schließen Sie die Runde (Strg+Umschalt+W)</translation>
    </message>
    <message>
        <source>the gauges of {1} show a rise of {2} at {3}; both were stored</source>
        <translation>die Manometer von {1} zeigen einen Anstieg von {2} bei {3}; beides wurde gespeichert</translation>
    </message>
    <message>
        <source>the number is missing; write it in digits</source>
        <translation>die Zahl fehlt; schreiben Sie sie in Ziffern</translation>
    </message>
    <message>
        <source>this value must be above 0, not {1}; correct it</source>
        <translation>dieser Wert muss über 0 liegen, nicht {1}; berichtigen Sie ihn</translation>
    </message>
    <message>
        <source>{1} is more than a whole; give an efficiency of 100 % at most</source>
        <translation>{1} ist mehr als ein Ganzes; geben Sie einen Wirkungsgrad von höchstens 100 % an</translation>
    </message>
    <message>
        <source>the pressure rises to that of no flow; make sure that casing, gauges and pipe bear it, and that a boiler or chiller on this loop is off</source>
        <translation>der Druck steigt auf den ohne Durchfluss; stellen Sie sicher, dass Gehäuse, Manometer und Rohr ihn aushalten und ein Kessel oder eine Kältemaschine an diesem Kreislauf aus ist</translation>
    </message>
</context>
<context>
    <name>PagesProgress</name>
    <message>
        <source>Balance report</source>
        <translation>Einregulierungsbericht</translation>
    </message>
    <message>
        <source>Progress of the report</source>
        <translation>Fortschritt des Berichts</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Anhalten</translation>
    </message>
    <message>
        <source>The report is being made.</source>
        <translation>Der Bericht wird erstellt.</translation>
    </message>
    <message>
        <source>Pages laid out: %1</source>
        <translation>Gesetzte Seiten: %1</translation>
    </message>
    <message>
        <source>Pages written: %1 of %2</source>
        <translation>Geschriebene Seiten: %1 von %2</translation>
    </message>
</context>
<context>
    <name>PumpChart</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>slowed</source>
        <translation>verlangsamt</translation>
    </message>
    <message>
        <source>trimmed</source>
        <translation>abgedreht</translation>
    </message>
    <message>
        <source>%1 % speed</source>
        <translation>%1 % Drehzahl</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 allein</translation>
    </message>
    <message>
        <source>pump, round %1</source>
        <translation>Pumpe, Runde %1</translation>
    </message>
    <message>
        <source>pump as found</source>
        <translation>Pumpe wie vorgefunden</translation>
    </message>
    <message>
        <source>%1 pumps as found</source>
        <translation>%1 Pumpen wie vorgefunden</translation>
    </message>
    <message>
        <source>system, round %1</source>
        <translation>Anlage, Runde %1</translation>
    </message>
    <message>
        <source>design</source>
        <translation>Auslegung</translation>
    </message>
    <message>
        <source>Line or point</source>
        <translation>Linie oder Punkt</translation>
    </message>
    <message>
        <source>Flow, %1</source>
        <translation>Durchfluss, %1</translation>
    </message>
    <message>
        <source>Head, %1</source>
        <translation>Förderhöhe, %1</translation>
    </message>
    <message>
        <source>Uncertainty</source>
        <translation>Unsicherheit</translation>
    </message>
    <message>
        <source>Duty, round %1</source>
        <translation>Betriebspunkt, Runde %1</translation>
    </message>
    <message>
        <source>Design</source>
        <translation>Auslegung</translation>
    </message>
    <message>
        <source>Duty %1 %2 at %3 %4; %5 % of design.</source>
        <translation>Betriebspunkt %1 %2 bei %3 %4; %5 % der Auslegung.</translation>
    </message>
    <message>
        <source>Pump and system</source>
        <translation>Pumpe und Anlage</translation>
    </message>
    <message>
        <source>head from the pump&apos;s curve, no gauge read</source>
        <translation>Förderhöhe aus der Pumpenkurve, kein Manometer abgelesen</translation>
    </message>
    <message>
        <source>curve as published</source>
        <translation>Kennlinie wie veröffentlicht</translation>
    </message>
    <message>
        <source>curve through the gauges</source>
        <translation>Kennlinie, an Manometer angepasst</translation>
    </message>
    <message>
        <source>No change of speed or impeller called for.</source>
        <translation>Keine Änderung von Drehzahl oder Laufrad nötig.</translation>
    </message>
    <message>
        <source>Trimmed it has %1 of impeller.</source>
        <translation>Abgedreht hat sie ein Laufrad von %1.</translation>
    </message>
    <message>
        <source>Shaft power about %1 % against the last round.</source>
        <translation>Wellenleistung etwa %1 % gegen die letzte Runde.</translation>
    </message>
    <message>
        <source>Shaft power at design flow: %1 throttled, %2 slowed.</source>
        <translation>Wellenleistung beim Auslegungsdurchfluss: gedrosselt %1, verlangsamt %2.</translation>
    </message>
    <message>
        <source>With these valves %1 % of the speed of the last round gives %2 %3.</source>
        <translation>Mit diesen Ventilen ergeben %1 % der Drehzahl der letzten Runde %2 %3.</translation>
    </message>
    <message>
        <source>Dashed ring: no gauge read, head from the pump&apos;s curve.</source>
        <translation>Gestrichelter Ring: kein Manometer abgelesen, Förderhöhe aus der Pumpenkennlinie.</translation>
    </message>
    <message>
        <source>The pump runs at %1 % of full speed, which the decision counts.</source>
        <translation>Die Pumpe läuft mit %1 % der vollen Drehzahl, mit denen die Entscheidung rechnet.</translation>
    </message>
    <message>
        <source>Slowed to %1 % of full speed it meets the head that the pump decision uses.</source>
        <translation>Mit %1 % der vollen Drehzahl trifft sie die Förderhöhe, nach der sich die Entscheidung zur Pumpe richtet.</translation>
    </message>
</context>
<context>
    <name>PumpPage</name>
    <message>
        <source>The pumps are being computed.</source>
        <translation>Die Pumpen werden berechnet.</translation>
    </message>
</context>
<context>
    <name>PumpRoomChart</name>
    <message>
        <source>Pressure along the circuit</source>
        <translation>Druck entlang des Kreises</translation>
    </message>
    <message>
        <source>valve on return, pump on</source>
        <translation>Ventil im Rücklauf, Pumpe ein</translation>
    </message>
    <message>
        <source>valve on supply, pump on</source>
        <translation>Ventil im Vorlauf, Pumpe ein</translation>
    </message>
    <message>
        <source>pump off</source>
        <translation>Pumpe aus</translation>
    </message>
    <message>
        <source>Element, in the direction of flow</source>
        <translation>Element, in Fließrichtung</translation>
    </message>
    <message>
        <source>Gauge pressure, %1</source>
        <translation>Überdruck, %1</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Behind</source>
        <translation>Hinter</translation>
    </message>
    <message>
        <source>Pump on, as it stands</source>
        <translation>Pumpe ein, wie gebaut</translation>
    </message>
    <message>
        <source>Valve on the other side</source>
        <translation>Ventil auf der anderen Seite</translation>
    </message>
    <message>
        <source>Pump off</source>
        <translation>Pumpe aus</translation>
    </message>
    <message>
        <source>The unit of %1 stands at %2 %4 with the pump on and at %3 %4 with it off.</source>
        <translation>Am Gerät von %1 liegen %2 %4 mit Pumpe, %3 %4 ohne.</translation>
    </message>
    <message>
        <source>Dp left across the valves</source>
        <translation>Verbleibende Δp an den Ventilen</translation>
    </message>
    <message>
        <source>fully open</source>
        <translation>ganz offen</translation>
    </message>
    <message>
        <source>proportional</source>
        <translation>proportional</translation>
    </message>
    <message>
        <source>read-and-set</source>
        <translation>ablesen-einstellen</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>Fully open</source>
        <translation>Ganz offen</translation>
    </message>
    <message>
        <source>Proportional</source>
        <translation>Proportional</translation>
    </message>
    <message>
        <source>Read-and-set</source>
        <translation>Ablesen-Einstellen</translation>
    </message>
    <message>
        <source>%1, index</source>
        <translation>%1, Schlechtpunkt</translation>
    </message>
    <message>
        <source>Valve, in walking order</source>
        <translation>Ventil, in Gehreihenfolge</translation>
    </message>
    <message>
        <source>Dp, %1</source>
        <translation>Δp, %1</translation>
    </message>
    <message>
        <source>Dp at design flow that each way leaves across every valve.</source>
        <translation>Δp bei Auslegungsdurchfluss, die jedes Verfahren an jedem Ventil lässt.</translation>
    </message>
    <message>
        <source>Read-and-set leaves %1 %2 across the index valve %3, a proportional balance with the pump reduced leaves %4 %2.</source>
        <translation>Ablesen-Einstellen lässt %1 %2 am Schlechtpunktventil %3, ein proportionaler Abgleich mit reduzierter Pumpe lässt %4 %2.</translation>
    </message>
    <message>
        <source>before the pump</source>
        <translation>vor der Pumpe</translation>
    </message>
    <message>
        <source>Pressure against fill, %1</source>
        <translation>Druck gegen Fülldruck, %1</translation>
    </message>
    <message>
        <source>With the pump on the unit of %1 stands at %2%3 %4 against the fill pressure, which is not known.</source>
        <translation>Mit Pumpe liegen am Gerät von %1 %2%3 %4 gegen den Fülldruck, der unbekannt ist.</translation>
    </message>
    <message>
        <source>supply, pump on</source>
        <translation>Vorlauf, Pumpe ein</translation>
    </message>
    <message>
        <source>return, pump on</source>
        <translation>Rücklauf, Pumpe ein</translation>
    </message>
    <message>
        <source>Available at the tee</source>
        <translation>Verfügbar am Abzweig</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>Workbooks (*.wwj)</source>
        <translation>Arbeitsmappen (*.wwj)</translation>
    </message>
    <message>
        <source>Open a Workbook</source>
        <translation>Arbeitsmappe öffnen</translation>
    </message>
    <message>
        <source>Nothing Was Made</source>
        <translation>Nichts wurde angelegt</translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) in the tables must be mended first. Each line names the file, the row and the column.</source>
        <translation>
            <numerusform>%n Stelle in den Tabellen ist erst zu berichtigen. Jede Zeile nennt Datei, Zeile und Spalte.</numerusform>
            <numerusform>%n Stellen in den Tabellen sind erst zu berichtigen. Jede Zeile nennt Datei, Zeile und Spalte.</numerusform>
        </translation>
    </message>
    <message>
        <source>Faults in the tables</source>
        <translation>Fehler in den Tabellen</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>First: 3 terminals</source>
        <translation>Erste: 3 Verbraucher</translation>
    </message>
    <message>
        <source>One ladder of three terminals. Instruments scatter; nothing else is wrong.</source>
        <translation>Ein Strang mit drei Verbrauchern. Messgeräte streuen; sonst ist nichts falsch.</translation>
    </message>
    <message>
        <source>Steady: 12 terminals</source>
        <translation>Ruhig: 12 Verbraucher</translation>
    </message>
    <message>
        <source>Three branches of four terminals. Nothing is wrong but the design&apos;s losses.</source>
        <translation>Drei Zweige mit je vier Verbrauchern. Nur die Verluste der Auslegung stimmen nicht.</translation>
    </message>
    <message>
        <source>Faulty: 12 terminals</source>
        <translation>Fehlerhaft: 12 Verbraucher</translation>
    </message>
    <message>
        <source>As Steady, with errors in the valve tables, a control valve that does not open and a slip of reading.</source>
        <translation>Wie Ruhig, dazu Fehler in den Ventiltabellen, ein Regelventil, das nicht öffnet, und ein Ablesefehler.</translation>
    </message>
    <message>
        <source>Large: 120 terminals</source>
        <translation>Groß: 120 Verbraucher</translation>
    </message>
    <message>
        <source>Six risers of five branches of four terminals. Nothing is wrong but the design&apos;s losses.</source>
        <translation>Sechs Steigstränge mit fünf Zweigen zu vier Verbrauchern. Nur die Verluste der Auslegung stimmen nicht.</translation>
    </message>
    <message>
        <source>Large and faulty: 120 terminals</source>
        <translation>Groß und fehlerhaft: 120 Verbraucher</translation>
    </message>
    <message>
        <source>As Large, with air, a clogging strainer, a stuck control valve, a misread handle and slips of reading.</source>
        <translation>Wie Groß, dazu Luft, ein verstopfender Schmutzfänger, ein klemmendes Regelventil, ein falsch abgelesener Griff und Ablesefehler.</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>a terminal is shut</source>
        <translation>ein Verbraucher ist abgesperrt</translation>
    </message>
    <message>
        <source>air in the coil</source>
        <translation>Luft im Register</translation>
    </message>
    <message>
        <source>a strainer clogged during the job</source>
        <translation>ein Schmutzfänger verstopfte während der Arbeit</translation>
    </message>
    <message>
        <source>the control valve does not open fully</source>
        <translation>das Regelventil öffnet nicht ganz</translation>
    </message>
    <message>
        <source>the handle stood a turn off in round %1</source>
        <translation>der Griff stand in Runde %1 eine Umdrehung daneben</translation>
    </message>
    <message>
        <source>the meter stood on another unit in round %1</source>
        <translation>das Messgerät stand in Runde %1 auf einer anderen Einheit</translation>
    </message>
    <message>
        <source>half the dp was read in round %1</source>
        <translation>in Runde %1 wurde die halbe Δp abgelesen</translation>
    </message>
    <message>
        <source>twice the dp was read in round %1</source>
        <translation>in Runde %1 wurde die doppelte Δp abgelesen</translation>
    </message>
    <message>
        <source>Largest spread of a group</source>
        <translation>Größte Streuung einer Gruppe</translation>
    </message>
    <message>
        <source>Least flow of design</source>
        <translation>Kleinster Durchfluss von der Auslegung</translation>
    </message>
    <message>
        <source>An open valve in every group</source>
        <translation>Ein offenes Ventil in jeder Gruppe</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>Head for design flow everywhere</source>
        <translation>Förderhöhe für Auslegungsdurchfluss überall</translation>
    </message>
    <message>
        <source>Head saved</source>
        <translation>Gesparte Förderhöhe</translation>
    </message>
    <message>
        <source>Valves moved</source>
        <translation>Verstellte Ventile</translation>
    </message>
    <message>
        <source>Readings taken</source>
        <translation>Ablesungen</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Largest error of a share, true in the building</source>
        <translation>Größter Fehler eines Anteils, wahr im Gebäude</translation>
    </message>
    <message>
        <source>Largest error of a share, as the valves read</source>
        <translation>Größter Fehler eines Anteils, wie die Ventile anzeigen</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 wird gelesen</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Auf</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Ab</translation>
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
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (Fortsetzung)</translation>
    </message>
    <message>
        <source>The loop is too large to be drawn with its names; section %1 lists every branch.</source>
        <translation>Der Kreislauf ist zu groß, um ihn mit Namen zu zeichnen; Abschnitt %1 nennt jeden Zweig.</translation>
    </message>
    <message>
        <source>Part %1 of %2, from the pump outward, top to bottom</source>
        <translation>Teil %1 von %2, von der Pumpe nach außen, von oben nach unten</translation>
    </message>
    <message>
        <source>This picture cannot be read.</source>
        <translation>Dieses Bild kann nicht gelesen werden.</translation>
    </message>
    <message>
        <source>%1, balance report, round %2, revision %3.pdf</source>
        <translation>%1, Einregulierungsbericht, Runde %2, Revision %3.pdf</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Workbook %1</source>
        <translation>Arbeitsmappe %1</translation>
    </message>
    <message>
        <source>Newest record %1</source>
        <translation>Neuester Eintrag %1</translation>
    </message>
    <message>
        <source>The signatures cover this file with the tables attached to it. A block is only a picture: the signature panel of a PDF viewer, or Waterwright&apos;s verify, tells whether the file is unchanged and who signed it.</source>
        <translation>Die Signaturen gelten für diese Datei samt den angehängten Tabellen. Ein Feld ist nur ein Bild: Ob die Datei unverändert ist und wer sie signiert hat, sagen die Signaturanzeige eines PDF-Betrachters oder die Prüfung in Waterwright.</translation>
    </message>
    <message>
        <source>Balance report</source>
        <translation>Einregulierungsbericht</translation>
    </message>
    <message>
        <source>DRAFT, NOT SIGNED</source>
        <translation>ENTWURF, NICHT SIGNIERT</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>data %1</source>
        <translation>Daten %1</translation>
    </message>
    <message>
        <source>draft until signed</source>
        <translation>Entwurf, bis signiert</translation>
    </message>
    <message>
        <source>%1, study of a changed zone.pdf</source>
        <translation>%1, Studie einer geänderten Zone.pdf</translation>
    </message>
    <message>
        <source>A FORECAST, NO READINGS</source>
        <translation>VORHERSAGE, KEINE ABLESUNGEN</translation>
    </message>
    <message>
        <source>Study of a changed zone</source>
        <translation>Studie einer geänderten Zone</translation>
    </message>
    <message>
        <source>a study, never signed</source>
        <translation>eine Studie, nie signiert</translation>
    </message>
    <message>
        <source>%1, balance report, round %2, revision %3 draft.pdf</source>
        <translation>%1, Einregulierungsbericht, Runde %2, Revision %3 Entwurf.pdf</translation>
    </message>
    <message>
        <source>SIMULATED</source>
        <translation>SIMULIERT</translation>
    </message>
    <message>
        <source>%1, balance report, round %2, revision %3 copy.pdf</source>
        <translation>%1, Einregulierungsbericht, Runde %2, Revision %3 Kopie.pdf</translation>
    </message>
    <message>
        <source>COPY, NOT SIGNED</source>
        <translation>KOPIE, NICHT SIGNIERT</translation>
    </message>
    <message>
        <source>copy of the signed report</source>
        <translation>Kopie des signierten Berichts</translation>
    </message>
</context>
<context>
    <name>ReviewPlace</name>
    <message>
        <source>cannot be read</source>
        <translation>nicht ablesbar</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>adjusted</source>
        <translation>eingestellt</translation>
    </message>
    <message>
        <source>was, corrected</source>
        <translation>war, berichtigt</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>Messgerät %1</translation>
    </message>
</context>
<context>
    <name>RowRemoval</name>
    <message>
        <source>This workbook can only be read here.</source>
        <translation>Diese Arbeitsmappe kann hier nur gelesen werden.</translation>
    </message>
    <message>
        <source>There is no row here to remove.</source>
        <translation>Hier ist keine Zeile zu entfernen.</translation>
    </message>
</context>
<context>
    <name>SchematicView</name>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
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
        <translation>angenommen</translation>
    </message>
    <message>
        <source>adjusting</source>
        <translation>Einstellen</translation>
    </message>
    <message>
        <source>attachment</source>
        <translation>Anhang</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>Zweig</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>comment</source>
        <translation>Kommentar</translation>
    </message>
    <message>
        <source>deficiency</source>
        <translation>Mangel</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>direct</source>
        <translation>direkt</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>entfällt</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>engineer</source>
        <translation>Ingenieur</translation>
    </message>
    <message>
        <source>estimated</source>
        <translation>geschätzt</translation>
    </message>
    <message>
        <source>ethylene glycol</source>
        <translation>Ethylenglykol</translation>
    </message>
    <message>
        <source>final</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <source>full open</source>
        <translation>ganz offen</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>halten</translation>
    </message>
    <message>
        <source>index at design</source>
        <translation>Schlechtpunkt bei Auslegung</translation>
    </message>
    <message>
        <source>instrument</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>left as it is</source>
        <translation>bleibt so</translation>
    </message>
    <message>
        <source>limiter</source>
        <translation>Begrenzer</translation>
    </message>
    <message>
        <source>linear</source>
        <translation>linear</translation>
    </message>
    <message>
        <source>manual</source>
        <translation>manuell</translation>
    </message>
    <message>
        <source>merge conflict</source>
        <translation>Konflikt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not balanced</source>
        <translation>nicht einreguliert</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>orifice</source>
        <translation>Messblende</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>unsere</translation>
    </message>
    <message>
        <source>parallel</source>
        <translation>parallel</translation>
    </message>
    <message>
        <source>percent</source>
        <translation>Prozent</translation>
    </message>
    <message>
        <source>percent only</source>
        <translation>nur Prozent</translation>
    </message>
    <message>
        <source>percent or floor</source>
        <translation>Prozent oder Mindestwert</translation>
    </message>
    <message>
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>picv</source>
        <translation>PICV</translation>
    </message>
    <message>
        <source>proportional</source>
        <translation>proportional</translation>
    </message>
    <message>
        <source>propylene glycol</source>
        <translation>Propylenglykol</translation>
    </message>
    <message>
        <source>pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>pump reading</source>
        <translation>Pumpenablesung</translation>
    </message>
    <message>
        <source>readiness line</source>
        <translation>Zeile der Bereitschaft</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>reference</source>
        <translation>Referenz</translation>
    </message>
    <message>
        <source>remedied</source>
        <translation>behoben</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rücklauf</translation>
    </message>
    <message>
        <source>reverse</source>
        <translation>Tichelmann</translation>
    </message>
    <message>
        <source>round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>running</source>
        <translation>laufend</translation>
    </message>
    <message>
        <source>sent</source>
        <translation>gesendet</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>series</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>set-point</source>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>shut valve</source>
        <translation>Ventil zu</translation>
    </message>
    <message>
        <source>shutoff</source>
        <translation>Nullförderung</translation>
    </message>
    <message>
        <source>signed report</source>
        <translation>signierter Bericht</translation>
    </message>
    <message>
        <source>square</source>
        <translation>quadratisch</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>gültig</translation>
    </message>
    <message>
        <source>static</source>
        <translation>statisch</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>gestrichen</translation>
    </message>
    <message>
        <source>superseded</source>
        <translation>ersetzt</translation>
    </message>
    <message>
        <source>supervisor</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>supply</source>
        <translation>Vorlauf</translation>
    </message>
    <message>
        <source>survey</source>
        <translation>Aufnahme</translation>
    </message>
    <message>
        <source>technician</source>
        <translation>Techniker</translation>
    </message>
    <message>
        <source>theirs</source>
        <translation>deren</translation>
    </message>
    <message>
        <source>throttled to design</source>
        <translation>auf Auslegung gedrosselt</translation>
    </message>
    <message>
        <source>try</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>turns</source>
        <translation>Umdrehungen</translation>
    </message>
    <message>
        <source>two elbows</source>
        <translation>zwei Bögen</translation>
    </message>
    <message>
        <source>valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>verify limiter</source>
        <translation>Begrenzer prüfen</translation>
    </message>
    <message>
        <source>verify pressure-independent valve</source>
        <translation>druckunabhängiges Ventil prüfen</translation>
    </message>
    <message>
        <source>walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>witness</source>
        <translation>Zeuge</translation>
    </message>
    <message>
        <source>worst coil</source>
        <translation>ungünstigstes Register</translation>
    </message>
    <message>
        <source>5 % of the plate</source>
        <translation>5 % des Schilds</translation>
    </message>
    <message>
        <source>5 % of the plate or a fixed power</source>
        <translation>5 % des Schilds oder feste Leistung</translation>
    </message>
    <message>
        <source>All isolating and balancing valves are open</source>
        <translation>Alle Absperr- und Strangregulierventile sind offen</translation>
    </message>
    <message>
        <source>Bypasses are closed</source>
        <translation>Bypässe sind geschlossen</translation>
    </message>
    <message>
        <source>Chillers or boilers keep their design temperatures</source>
        <translation>Kältemaschinen oder Kessel halten ihre Auslegungstemperaturen</translation>
    </message>
    <message>
        <source>Control valves stand at full flow through their coils, seen at the valve</source>
        <translation>Regelventile stehen auf vollem Durchfluss durch das Register, am Ventil gesehen</translation>
    </message>
    <message>
        <source>Ethylene glycol</source>
        <translation>Ethylenglykol</translation>
    </message>
    <message>
        <source>Motor protection is set to the motor&apos;s plate</source>
        <translation>Der Motorschutz ist auf das Motorschild eingestellt</translation>
    </message>
    <message>
        <source>NO</source>
        <translation>NEIN</translation>
    </message>
    <message>
        <source>Pipework is complete and pressure tested</source>
        <translation>Das Rohrnetz ist vollständig und druckgeprüft</translation>
    </message>
    <message>
        <source>Propylene glycol</source>
        <translation>Propylenglykol</translation>
    </message>
    <message>
        <source>Pumps turn the right way, are aligned and lubricated</source>
        <translation>Pumpen drehen richtig, sind ausgerichtet und geschmiert</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Strainers are cleaned and start-up screens are out</source>
        <translation>Schmutzfänger sind gereinigt, Anfahrsiebe entfernt</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>The air side is balanced, where heat is to be checked</source>
        <translation>Die Luftseite ist einreguliert, wo Wärme geprüft wird</translation>
    </message>
    <message>
        <source>The controls hold that position until balancing is done</source>
        <translation>Die Regelung hält diese Stellung bis zum Ende der Einregulierung</translation>
    </message>
    <message>
        <source>The expansion vessel works and its pre-charge is checked</source>
        <translation>Das Ausdehnungsgefäß arbeitet, sein Vordruck ist geprüft</translation>
    </message>
    <message>
        <source>The loop is filled and vented at its high points; the pressure with the pumps off is noted</source>
        <translation>Der Kreislauf ist gefüllt und an den Hochpunkten entlüftet; der Druck bei stehenden Pumpen ist notiert</translation>
    </message>
    <message>
        <source>The loop is flushed and chemically cleaned</source>
        <translation>Der Kreislauf ist gespült und chemisch gereinigt</translation>
    </message>
    <message>
        <source>a cost that is not known</source>
        <translation>unbekannte Kosten</translation>
    </message>
    <message>
        <source>a power that is not known</source>
        <translation>unbekannte Leistung</translation>
    </message>
    <message>
        <source>a reading of</source>
        <translation>eine Ablesung von</translation>
    </message>
    <message>
        <source>a time not written</source>
        <translation>nicht notierter Zeit</translation>
    </message>
    <message>
        <source>as typed</source>
        <translation>wie eingegeben</translation>
    </message>
    <message>
        <source>at </source>
        <translation>um </translation>
    </message>
    <message>
        <source>blocks signing</source>
        <translation>sperrt die Signatur</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht ablesbar</translation>
    </message>
    <message>
        <source>chosen for this job</source>
        <translation>für diesen Auftrag gewählt</translation>
    </message>
    <message>
        <source>comment, OPEN</source>
        <translation>Kommentar, OFFEN</translation>
    </message>
    <message>
        <source>comment, resolved</source>
        <translation>Kommentar, erledigt</translation>
    </message>
    <message>
        <source>corrected</source>
        <translation>berichtigt</translation>
    </message>
    <message>
        <source>correction</source>
        <translation>Berichtigung</translation>
    </message>
    <message>
        <source>curve</source>
        <translation>Kennlinie</translation>
    </message>
    <message>
        <source>design losses</source>
        <translation>Verluste der Auslegung</translation>
    </message>
    <message>
        <source>discharge valve</source>
        <translation>Drosselventil</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>fraglich</translation>
    </message>
    <message>
        <source>encrypted, or with cross-reference streams</source>
        <translation>verschlüsselt oder mit Querverweis-Strömen</translation>
    </message>
    <message>
        <source>error</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>field</source>
        <translation>Feld</translation>
    </message>
    <message>
        <source>for comparison</source>
        <translation>zum Vergleich</translation>
    </message>
    <message>
        <source>its clause on hydronic balancing</source>
        <translation>ihr Abschnitt zum hydraulischen Abgleich</translation>
    </message>
    <message>
        <source>its folder cannot be written</source>
        <translation>ihr Ordner ist nicht beschreibbar</translation>
    </message>
    <message>
        <source>largest of any group</source>
        <translation>größte aller Gruppen</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>model learned from readings</source>
        <translation>aus Ablesungen gelerntes Modell</translation>
    </message>
    <message>
        <source>more</source>
        <translation>mehr</translation>
    </message>
    <message>
        <source>must be trimmed or slowed</source>
        <translation>muss abgedreht oder verlangsamt werden</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no cross-reference table</source>
        <translation>keine Querverweistabelle</translation>
    </message>
    <message>
        <source>no right to read it</source>
        <translation>kein Leserecht</translation>
    </message>
    <message>
        <source>no value</source>
        <translation>kein Wert</translation>
    </message>
    <message>
        <source>no valve</source>
        <translation>kein Ventil</translation>
    </message>
    <message>
        <source>not a number</source>
        <translation>keine Zahl</translation>
    </message>
    <message>
        <source>not allowed</source>
        <translation>nicht zulässig</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>nicht entschieden</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nicht eingetragen</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>nicht nötig</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht abgelesen</translation>
    </message>
    <message>
        <source>not readable</source>
        <translation>nicht ablesbar</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>of max</source>
        <translation>von max.</translation>
    </message>
    <message>
        <source>of the terminals</source>
        <translation>der Verbraucher</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>pipe of </source>
        <translation>Rohr von </translation>
    </message>
    <message>
        <source>place not entered</source>
        <translation>Ort nicht eingetragen</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>repeat</source>
        <translation>Wiederholung</translation>
    </message>
    <message>
        <source>return run of </source>
        <translation>Rücklaufstrecke von </translation>
    </message>
    <message>
        <source>round </source>
        <translation>Runde </translation>
    </message>
    <message>
        <source>setting </source>
        <translation>Einstellung </translation>
    </message>
    <message>
        <source>slow</source>
        <translation>verlangsamen</translation>
    </message>
    <message>
        <source>supply run to </source>
        <translation>Vorlaufstrecke zu </translation>
    </message>
    <message>
        <source>terminals</source>
        <translation>Verbraucher</translation>
    </message>
    <message>
        <source>the adopted energy code</source>
        <translation>die geltende Energievorschrift</translation>
    </message>
    <message>
        <source>the curve</source>
        <translation>Kennlinie</translation>
    </message>
    <message>
        <source>the meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>the pump is reduced already</source>
        <translation>die Pumpe ist schon reduziert</translation>
    </message>
    <message>
        <source>the report is too large</source>
        <translation>der Bericht ist zu groß</translation>
    </message>
    <message>
        <source>the same, each duty with its own efficiency</source>
        <translation>dasselbe, jeder Betriebspunkt mit eigenem Wirkungsgrad</translation>
    </message>
    <message>
        <source>the terminals</source>
        <translation>Verbraucher</translation>
    </message>
    <message>
        <source>throttle</source>
        <translation>drosseln</translation>
    </message>
    <message>
        <source>too many revisions</source>
        <translation>zu viele Revisionen</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>abdrehen</translation>
    </message>
    <message>
        <source>undecidable</source>
        <translation>unentscheidbar</translation>
    </message>
    <message>
        <source>under </source>
        <translation>unter </translation>
    </message>
    <message>
        <source>unit of </source>
        <translation>Gerät von </translation>
    </message>
    <message>
        <source>unknown power</source>
        <translation>unbekannte Leistung</translation>
    </message>
    <message>
        <source>valve </source>
        <translation>Ventil </translation>
    </message>
    <message>
        <source>warning</source>
        <translation>Warnung</translation>
    </message>
    <message>
        <source>with unit</source>
        <translation>mit Einheit</translation>
    </message>
    <message>
        <source>without a time</source>
        <translation>ohne Zeit</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source> min ago</source>
        <translation> min zuvor</translation>
    </message>
    <message>
        <source>DP</source>
        <translation>Δp</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>Alone guards a boiler or chiller</source>
        <translation>Schützt allein Kessel oder Kältemaschine</translation>
    </message>
    <message>
        <source>Amps, phase 1</source>
        <translation>Strom, Phase 1</translation>
    </message>
    <message>
        <source>Amps, phase 2</source>
        <translation>Strom, Phase 2</translation>
    </message>
    <message>
        <source>Amps, phase 3</source>
        <translation>Strom, Phase 3</translation>
    </message>
    <message>
        <source>Cv or Kv</source>
        <translation>Cv oder Kv</translation>
    </message>
    <message>
        <source>Discharge</source>
        <translation>Druckseite</translation>
    </message>
    <message>
        <source>Discharge bore</source>
        <translation>Druckstutzen, innen</translation>
    </message>
    <message>
        <source>Discharge gauge over shaft</source>
        <translation>Druckmanometer über Welle</translation>
    </message>
    <message>
        <source>Discharge valve at</source>
        <translation>Drosselventil auf</translation>
    </message>
    <message>
        <source>Discharge valve, tag</source>
        <translation>Drosselventil, Kennung</translation>
    </message>
    <message>
        <source>Flow by meter</source>
        <translation>Durchfluss, Messgerät</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>Has a drive</source>
        <translation>Hat einen Umrichter</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Laufrad</translation>
    </message>
    <message>
        <source>Input power</source>
        <translation>Aufnahmeleistung</translation>
    </message>
    <message>
        <source>Least dp</source>
        <translation>Kleinste Δp</translation>
    </message>
    <message>
        <source>Least impeller</source>
        <translation>Kleinstes Laufrad</translation>
    </message>
    <message>
        <source>Least speed, of rated</source>
        <translation>Kleinste Drehzahl, vom Nennwert</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>More shut</source>
        <translation>Fast zu</translation>
    </message>
    <message>
        <source>Most dp</source>
        <translation>Größte Δp</translation>
    </message>
    <message>
        <source>Motor efficiency</source>
        <translation>Motorwirkungsgrad</translation>
    </message>
    <message>
        <source>Motor power</source>
        <translation>Motorleistung</translation>
    </message>
    <message>
        <source>Motor speed, plate</source>
        <translation>Motordrehzahl, Schild</translation>
    </message>
    <message>
        <source>No-load amps</source>
        <translation>Leerlaufstrom</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Or rise, one gauge</source>
        <translation>Oder Anstieg, ein Manometer</translation>
    </message>
    <message>
        <source>Plate amps</source>
        <translation>Strom, Schild</translation>
    </message>
    <message>
        <source>Plate power factor</source>
        <translation>Leistungsfaktor, Schild</translation>
    </message>
    <message>
        <source>Plate volts</source>
        <translation>Spannung, Schild</translation>
    </message>
    <message>
        <source>Positive displacement</source>
        <translation>Verdrängerpumpe</translation>
    </message>
    <message>
        <source>Power factor</source>
        <translation>Leistungsfaktor</translation>
    </message>
    <message>
        <source>Rated speed</source>
        <translation>Nenndrehzahl</translation>
    </message>
    <message>
        <source>Reason, if doubted</source>
        <translation>Grund, falls fraglich</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Läuft</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Skala</translation>
    </message>
    <message>
        <source>Service factor</source>
        <translation>Servicefaktor</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>Suction</source>
        <translation>Saugseite</translation>
    </message>
    <message>
        <source>Suction bore</source>
        <translation>Saugstutzen, innen</translation>
    </message>
    <message>
        <source>Suction gauge over shaft</source>
        <translation>Saugmanometer über Welle</translation>
    </message>
    <message>
        <source>Synchronous speed</source>
        <translation>Synchrondrehzahl</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Volts, phases 1-2</source>
        <translation>Spannung, Phasen 1-2</translation>
    </message>
    <message>
        <source>Volts, phases 2-3</source>
        <translation>Spannung, Phasen 2-3</translation>
    </message>
    <message>
        <source>Volts, phases 3-1</source>
        <translation>Spannung, Phasen 3-1</translation>
    </message>
    <message>
        <source>a date outside the calendar</source>
        <translation>ein Datum außerhalb des Kalenders</translation>
    </message>
    <message>
        <source>a recorded change does not fit its tables</source>
        <translation>eine aufgezeichnete Änderung passt nicht zu ihren Tabellen</translation>
    </message>
    <message>
        <source>a text that the file does not have</source>
        <translation>einen Text, den die Datei nicht hat</translation>
    </message>
    <message>
        <source>above the index circuit with open valves</source>
        <translation>über dem Schlechtpunktkreis mit offenen Ventilen</translation>
    </message>
    <message>
        <source>above the loop with its valves as read</source>
        <translation>über dem Kreislauf mit den Ventilen wie abgelesen</translation>
    </message>
    <message>
        <source>age of old readings</source>
        <translation>Alter alter Ablesungen</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation>Höhenlage</translation>
    </message>
    <message>
        <source>at full speed</source>
        <translation>bei voller Drehzahl</translation>
    </message>
    <message>
        <source>at least 2</source>
        <translation>mindestens 2</translation>
    </message>
    <message>
        <source>band of target</source>
        <translation>Band vom Soll</translation>
    </message>
    <message>
        <source>by a balanced round</source>
        <translation>nach einer abgeglichenen Runde</translation>
    </message>
    <message>
        <source>by the design losses</source>
        <translation>nach den Verlusten der Auslegung</translation>
    </message>
    <message>
        <source>by the learned loop</source>
        <translation>nach dem gelernten Kreislauf</translation>
    </message>
    <message>
        <source>clause</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>client</source>
        <translation>Kunde</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>clock offset</source>
        <translation>Uhrversatz</translation>
    </message>
    <message>
        <source>code and edition</source>
        <translation>Vorschrift und Ausgabe</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>exactly 3</source>
        <translation>genau 3</translation>
    </message>
    <message>
        <source>exception claimed</source>
        <translation>beanspruchte Ausnahme</translation>
    </message>
    <message>
        <source>fill pressure</source>
        <translation>Fülldruck</translation>
    </message>
    <message>
        <source>glycol by mass</source>
        <translation>Glykol-Massenanteil</translation>
    </message>
    <message>
        <source>highest off design</source>
        <translation>höchste Abweichung von der Auslegung</translation>
    </message>
    <message>
        <source>hours a year</source>
        <translation>Stunden im Jahr</translation>
    </message>
    <message>
        <source>it has no sheet</source>
        <translation>sie hat kein Blatt</translation>
    </message>
    <message>
        <source>it names no workbook</source>
        <translation>sie nennt keine Mappe</translation>
    </message>
    <message>
        <source>lowest off design</source>
        <translation>niedrigste Abweichung von der Auslegung</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>no regular file, or no permission</source>
        <translation>keine gewöhnliche Datei oder kein Recht</translation>
    </message>
    <message>
        <source>no such folder, or no permission</source>
        <translation>kein solcher Ordner oder kein Recht</translation>
    </message>
    <message>
        <source>price of a kWh</source>
        <translation>Preis einer kWh</translation>
    </message>
    <message>
        <source>rpm</source>
        <translation>1/min</translation>
    </message>
    <message>
        <source>site</source>
        <translation>Standort</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>time uncertain</source>
        <translation>Zeit unsicher</translation>
    </message>
    <message>
        <source>unknown person</source>
        <translation>unbekannte Person</translation>
    </message>
    <message>
        <source> days</source>
        <translation> Tage</translation>
    </message>
    <message>
        <source> days ago</source>
        <translation> Tage zuvor</translation>
    </message>
    <message>
        <source> h ago</source>
        <translation> h zuvor</translation>
    </message>
    <message>
        <source> months</source>
        <translation> Monate</translation>
    </message>
    <message>
        <source> months ago</source>
        <translation> Monate zuvor</translation>
    </message>
    <message>
        <source> s ago</source>
        <translation> s zuvor</translation>
    </message>
    <message>
        <source> years</source>
        <translation> Jahre</translation>
    </message>
    <message>
        <source> years ago</source>
        <translation> Jahre zuvor</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>withdrawn</source>
        <translation>zurückgezogen</translation>
    </message>
    <message>
        <source>by the pump&apos;s curve</source>
        <translation>nach der Pumpenkennlinie</translation>
    </message>
    <message>
        <source>by the sum of the flows</source>
        <translation>nach der Summe der Durchflüsse</translation>
    </message>
    <message>
        <source>exempt as a small excess</source>
        <translation>befreit als kleiner Überschuss</translation>
    </message>
    <message>
        <source>exempt as a small motor</source>
        <translation>befreit als kleiner Motor</translation>
    </message>
    <message>
        <source>not within tolerance</source>
        <translation>nicht innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>shutoff test</source>
        <translation>Nullförderversuch</translation>
    </message>
    <message>
        <source>within tolerance</source>
        <translation>innerhalb der Toleranz</translation>
    </message>
    <message>
        <source>by the curve through the gauges of round </source>
        <translation>nach der Kennlinie, angepasst an die Manometer von Runde </translation>
    </message>
    <message>
        <source>from the pump&apos;s curve</source>
        <translation>aus der Pumpenkennlinie</translation>
    </message>
    <message>
        <source>from the pump&apos;s curve through the gauges of round </source>
        <translation>aus der Pumpenkennlinie, angepasst an die Manometer von Runde </translation>
    </message>
    <message>
        <source>without a name</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <source>not proved</source>
        <translation>nicht nachgewiesen</translation>
    </message>
    <message>
        <source>proved</source>
        <translation>nachgewiesen</translation>
    </message>
    <message>
        <source>withdrawn or sent back</source>
        <translation>zurückgezogen oder zurückgegeben</translation>
    </message>
    <message>
        <source>With other pumps</source>
        <translation>Mit anderen Pumpen</translation>
    </message>
    <message>
        <source>at the speed of the last round</source>
        <translation>bei der Drehzahl der letzten Runde</translation>
    </message>
    <message>
        <source>further</source>
        <translation>weiter</translation>
    </message>
    <message>
        <source>to </source>
        <translation>bis </translation>
    </message>
    <message>
        <source>Cooling coil {1}</source>
        <translation>Kühlregister {1}</translation>
    </message>
    <message>
        <source>DN 15 low</source>
        <translation>DN 15 klein</translation>
    </message>
    <message>
        <source>Practice building {1}</source>
        <translation>Übungsgebäude {1}</translation>
    </message>
    <message>
        <source>Practice valve</source>
        <translation>Übungsventil</translation>
    </message>
    <message>
        <source>Simulated, no real plant</source>
        <translation>Simuliert, keine echte Anlage</translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation>Übende Person</translation>
    </message>
    <message>
        <source>as it runs</source>
        <translation>wie sie läuft</translation>
    </message>
    <message>
        <source>current</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>dp meter</source>
        <translation>Δp-Messgerät</translation>
    </message>
    <message>
        <source>input power</source>
        <translation>aufgenommene Leistung</translation>
    </message>
    <message>
        <source>practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>pump gauge</source>
        <translation>Pumpenmanometer</translation>
    </message>
    <message>
        <source>throttled</source>
        <translation>gedrosselt</translation>
    </message>
    <message>
        <source>voltage</source>
        <translation>Spannung</translation>
    </message>
</context>
<context>
    <name>ValveChart</name>
    <message>
        <source>Flow coefficient over setting</source>
        <translation>Durchflusskoeffizient über Einstellung</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>A range of dp without a table: for a limiter or a pressure-independent valve.</source>
        <translation>Ein Δp-Bereich ohne Tabelle: für Begrenzer oder druckunabhängiges Ventil.</translation>
    </message>
    <message>
        <source>No points yet: type setting and coefficient, or paste two columns from a spreadsheet (Ctrl+V).</source>
        <translation>Noch keine Punkte: Tippen Sie Einstellung und Beiwert, oder fügen Sie zwei Spalten aus einer Tabellenkalkulation ein (Strg+V).</translation>
    </message>
    <message>
        <source>Setting, %1</source>
        <translation>Einstellung, %1</translation>
    </message>
    <message>
        <source>%1 %2 fully open, at setting %3.</source>
        <translation>%1 %2 ganz offen, bei Einstellung %3.</translation>
    </message>
    <message>
        <source>No valve model yet: add one, or paste a table (Ctrl+V).</source>
        <translation>Noch kein Ventilmodell: eines anlegen oder eine Tabelle einfügen (Strg+V).</translation>
    </message>
</context>
<context>
    <name>WalkSheet</name>
    <message>
        <source>Walk sheet</source>
        <translation>Begehungsblatt</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>walk sheet</source>
        <translation>Begehungsblatt</translation>
    </message>
    <message>
        <source>Round %1, %2</source>
        <translation>Runde %1, %2</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>Office</source>
        <translation>Büro</translation>
    </message>
    <message>
        <source>Daylight</source>
        <translation>Tageslicht</translation>
    </message>
    <message>
        <source>Plant-room dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>No workbook open</source>
        <translation>Keine Arbeitsmappe offen</translation>
    </message>
    <message>
        <source>PRACTICE · %1</source>
        <translation>ÜBUNG · %1</translation>
    </message>
    <message>
        <source>Round %1, %2, %3</source>
        <translation>Runde %1, %2, %3</translation>
    </message>
    <message>
        <source>Meter %1</source>
        <translation>Messgerät %1</translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation>, fällig seit %1</translation>
    </message>
    <message>
        <source>, calibrated to %1</source>
        <translation>, kalibriert bis %1</translation>
    </message>
    <message>
        <source>Not stored: %1</source>
        <translation>Nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>last stored %1: %2</source>
        <translation>zuletzt gespeichert %1: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>valves read, short</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 overdue</source>
        <comment>meter, short</comment>
        <translation>%1 überfällig</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>stored, short</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>read %1 of %2 valves</source>
        <translation>%1 von %2 Ventilen abgelesen</translation>
    </message>
    <message>
        <source>No person chosen, menu Round, Person: the account %1</source>
        <translation>Keine Person gewählt, Menü Runde, Person: das Konto %1</translation>
    </message>
    <message>
        <source>At this desk: %1</source>
        <translation>An diesem Platz: %1</translation>
    </message>
    <message>
        <source>nobody chosen</source>
        <translation>niemand gewählt</translation>
    </message>
    <message>
        <source>Valves to read: %1 of terminals, %2 of branches above them</source>
        <translation>Abzulesende Ventile: %1 von Verbrauchern, %2 von Zweigen darüber</translation>
    </message>
    <message>
        <source>last stored %1</source>
        <translation>zuletzt gespeichert %1</translation>
    </message>
    <message>
        <source>Rd %1</source>
        <comment>round, short</comment>
        <translation>Rd. %1</translation>
    </message>
</context>
<context>
    <name>Word</name>
    <message>
        <source>Not read</source>
        <translation>Nicht abgelesen</translation>
    </message>
    <message>
        <source>Short</source>
        <translation>Zu wenig</translation>
    </message>
    <message>
        <source>Over</source>
        <translation>Zu viel</translation>
    </message>
    <message>
        <source>On share</source>
        <translation>Im Anteil</translation>
    </message>
    <message>
        <source>Drifted</source>
        <translation>Abgedriftet</translation>
    </message>
    <message>
        <source>Doubtful</source>
        <translation>Fraglich</translation>
    </message>
    <message>
        <source>OPEN</source>
        <translation>ÖFFNEN</translation>
    </message>
    <message>
        <source>CLOSE</source>
        <translation>SCHLIESSEN</translation>
    </message>
    <message>
        <source>HOLD</source>
        <translation>HALTEN</translation>
    </message>
    <message>
        <source>READ AGAIN</source>
        <translation>NEU ABLESEN</translation>
    </message>
    <message>
        <source>Survey</source>
        <translation>Aufnahme</translation>
    </message>
    <message>
        <source>Adjusting</source>
        <translation>Einstellen</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <source>Witness</source>
        <translation>Zeuge</translation>
    </message>
    <message>
        <source>Manual valve</source>
        <translation>Handventil</translation>
    </message>
    <message>
        <source>Orifice</source>
        <translation>Messblende</translation>
    </message>
    <message>
        <source>Flow limiter</source>
        <translation>Durchflussbegrenzer</translation>
    </message>
    <message>
        <source>Pressure-independent</source>
        <translation>Druckunabhängig</translation>
    </message>
    <message>
        <source>No valve</source>
        <translation>Kein Ventil</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Ethylene glycol</source>
        <translation>Ethylenglykol</translation>
    </message>
    <message>
        <source>Propylene glycol</source>
        <translation>Propylenglykol</translation>
    </message>
    <message>
        <source>In range</source>
        <translation>Im Bereich</translation>
    </message>
    <message>
        <source>At shut stop</source>
        <translation>Anschlag zu</translation>
    </message>
    <message>
        <source>At open stop</source>
        <translation>Anschlag auf</translation>
    </message>
    <message>
        <source>NO FURTHER</source>
        <translation>AM ENDE</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
    <message>
        <source>sent</source>
        <translation>gesendet</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>sent back</source>
        <translation>zurückgegeben</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Read, no share</source>
        <translation>Gelesen, kein Anteil</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::AdjustPlace</name>
    <message>
        <source>Share of the valve in hand</source>
        <translation>Anteil des Ventils in der Hand</translation>
    </message>
    <message>
        <source>What the aim rests on</source>
        <translation>Worauf das Ziel beruht</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Aim DP</source>
        <translation>Ziel-Δp</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>Tries</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Setting to try next</source>
        <translation>Nächste Einstellung für einen Versuch</translation>
    </message>
    <message>
        <source>Hold Here, Next Valve</source>
        <translation>Hier halten, nächstes Ventil</translation>
    </message>
    <message>
        <source>Next valve</source>
        <translation>Nächstes Ventil</translation>
    </message>
    <message>
        <source>Adjust</source>
        <translation>Einstellen</translation>
    </message>
    <message>
        <source>Valve in hand</source>
        <translation>Ventil in der Hand</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Was hier fehlt</translation>
    </message>
    <message>
        <source>Find valve to adjust</source>
        <translation>Ventil zum Einstellen finden</translation>
    </message>
    <message>
        <source>tag or number</source>
        <translation>Kennung oder Nummer</translation>
    </message>
    <message>
        <source>&amp;Find valve</source>
        <translation>Ventil &amp;finden</translation>
    </message>
    <message>
        <source>Neighboring settings and their aims</source>
        <translation>Benachbarte Einstellungen und ihre Ziele</translation>
    </message>
    <message>
        <source>DP read at this setting</source>
        <translation>Bei dieser Einstellung abgelesene Δp</translation>
    </message>
    <message>
        <source>&amp;Setting</source>
        <translation>Ein&amp;stellung</translation>
    </message>
    <message>
        <source>Setting of the handle</source>
        <translation>Einstellung des Griffs</translation>
    </message>
    <message>
        <source>expect %1</source>
        <translation>erwarte %1</translation>
    </message>
    <message>
        <source>&amp;DP %1 at reference %2</source>
        <translation>Δ&amp;p %1 an der Referenz %2</translation>
    </message>
    <message>
        <source>No valve in hand</source>
        <translation>Kein Ventil in der Hand</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Keine Arbeitsmappe offen. Öffnen Sie eine (Strg+O) oder legen Sie einen Auftrag an (Strg+N).</translation>
    </message>
    <message>
        <source>No valve to adjust yet. Add the branches in System (Alt+2).</source>
        <translation>Noch kein Ventil einzustellen. Tragen Sie die Zweige in Anlage ein (Alt+2).</translation>
    </message>
    <message>
        <source>Read one full round first (Alt+3); the aim needs every branch.</source>
        <translation>Lesen Sie erst eine ganze Runde ab (Alt+3); das Ziel braucht jeden Zweig.</translation>
    </message>
    <message>
        <source>This branch has no valve to adjust. Find another (Ctrl+J).</source>
        <translation>Dieser Zweig hat kein Ventil zum Einstellen. Wählen Sie ein anderes (Strg+J).</translation>
    </message>
    <message>
        <source>%1 Find another valve with Ctrl+J.</source>
        <translation>%1 Wählen Sie ein anderes Ventil mit Strg+J.</translation>
    </message>
    <message>
        <source>of %1 %2</source>
        <translation>von %1 %2</translation>
    </message>
    <message>
        <source>not read here yet</source>
        <translation>hier noch nicht abgelesen</translation>
    </message>
    <message>
        <source>Up, Down %1</source>
        <translation>Auf, Ab %1</translation>
    </message>
    <message>
        <source>hold %1–%2</source>
        <translation>halten %1–%2</translation>
    </message>
    <message>
        <source>the valve is shut</source>
        <translation>das Ventil ist zu</translation>
    </message>
    <message>
        <source>aim %1, hold %2 to %3</source>
        <translation>Ziel %1, halten %2 bis %3</translation>
    </message>
    <message>
        <source>&amp;DP %1</source>
        <translation>Δ&amp;p %1</translation>
    </message>
    <message>
        <source>&amp;DP %1, valve shut</source>
        <translation>Δ&amp;p %1, Ventil zu</translation>
    </message>
    <message>
        <source>&amp;DP %1, read again</source>
        <translation>Δ&amp;p %1, neu ablesen</translation>
    </message>
    <message>
        <source>next: %1, %2</source>
        <translation>nächstes: %1, %2</translation>
    </message>
    <message>
        <source>no valve is left to adjust</source>
        <translation>kein Ventil bleibt einzustellen</translation>
    </message>
    <message>
        <source>%1, %2 % of target</source>
        <translation>%1, %2 % vom Soll</translation>
    </message>
    <message>
        <source>digits Enter stores this one reading and returns</source>
        <translation>Ziffern Enter speichert diese eine Ablesung und kehrt zurück</translation>
    </message>
    <message>
        <source>Esc gives it up</source>
        <translation>Esc bricht ab</translation>
    </message>
    <message>
        <source>Alt+3 walk</source>
        <translation>Alt+3 Rundgang</translation>
    </message>
    <message>
        <source>Ctrl+J find</source>
        <translation>Strg+J finden</translation>
    </message>
    <message>
        <source>digits Enter logs a try</source>
        <translation>Ziffern Enter Versuch</translation>
    </message>
    <message>
        <source>Ctrl+Shift+W closes the round first</source>
        <translation>Strg+Umschalt+W schließt zuerst die Runde</translation>
    </message>
    <message>
        <source>Up, Down setting</source>
        <translation>Auf, Ab Einstellung</translation>
    </message>
    <message>
        <source>Ctrl+Enter hold, next</source>
        <translation>Strg+Enter halten, weiter</translation>
    </message>
    <message>
        <source>Ctrl+B reference</source>
        <translation>Strg+B Referenz</translation>
    </message>
    <message>
        <source>Ctrl+I advice</source>
        <translation>Strg+I Rat</translation>
    </message>
    <message>
        <source>Esc clears</source>
        <translation>Esc leert</translation>
    </message>
    <message>
        <source>digits Enter moves the handle</source>
        <translation>Ziffern Enter dreht den Griff</translation>
    </message>
    <message>
        <source>Esc back</source>
        <translation>Esc zurück</translation>
    </message>
    <message>
        <source>Enter takes the setting</source>
        <translation>Enter nimmt die Einstellung</translation>
    </message>
    <message>
        <source>Enter goes to the valve</source>
        <translation>Enter geht zum Ventil</translation>
    </message>
    <message>
        <source>Ctrl+Enter hold</source>
        <translation>Strg+Enter halten</translation>
    </message>
    <message>
        <source>Ctrl+Shift+T advised setting</source>
        <translation>Strg+Umschalt+T empfohlene Einstellung</translation>
    </message>
    <message>
        <source>fully open</source>
        <translation>ganz offen</translation>
    </message>
    <message>
        <source>lowest setting</source>
        <translation>kleinste Einstellung</translation>
    </message>
    <message>
        <source>Hold Here</source>
        <translation>Hier halten</translation>
    </message>
    <message>
        <source>no aim while it is read apart</source>
        <translation>kein Ziel während dieser Ablesung</translation>
    </message>
    <message>
        <source>no aim here</source>
        <translation>hier kein Ziel</translation>
    </message>
    <message>
        <source>dp across %1 while it is shut</source>
        <translation>Δp an %1, während es zu ist</translation>
    </message>
    <message>
        <source>Shut %1 and read the dp across it. Enter stores it, then set the handle back to %2; Esc comes back without it.</source>
        <translation>%1 schließen und die Δp daran ablesen. Enter speichert, dann den Griff auf %2 zurückstellen; Esc kehrt ohne sie zurück.</translation>
    </message>
    <message>
        <source>shut for a moment</source>
        <translation>kurz geschlossen</translation>
    </message>
    <message>
        <source>then back to %1</source>
        <translation>dann zurück auf %1</translation>
    </message>
    <message>
        <source>valve shut</source>
        <translation>Ventil zu</translation>
    </message>
    <message>
        <source>SHUT</source>
        <translation>ZU</translation>
    </message>
    <message>
        <source>dp at the reference %1, not at %2</source>
        <translation>Δp an der Referenz %1, nicht an %2</translation>
    </message>
    <message>
        <source>Reference %1</source>
        <translation>Referenz %1</translation>
    </message>
    <message>
        <source>You read %1 now, not %2. Enter stores it and comes back to %2; Esc comes back without it.</source>
        <translation>Sie lesen jetzt %1 ab, nicht %2. Enter speichert und kehrt zu %2 zurück; Esc kehrt ohne Ablesung zurück.</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>an %1</translation>
    </message>
    <message>
        <source>leave it there</source>
        <translation>dort lassen</translation>
    </message>
    <message>
        <source>last at %1</source>
        <translation>zuletzt an %1</translation>
    </message>
    <message>
        <source>REFERENCE</source>
        <translation>REFERENZ</translation>
    </message>
    <message>
        <source>only %1 available</source>
        <translation>nur %1 verfügbar</translation>
    </message>
    <message>
        <source>Alt+Shift+Up, Alt+Shift+Down working order</source>
        <translation>Alt+Umschalt+Auf, Alt+Umschalt+Ab Arbeitsfolge</translation>
    </message>
</context>
<context>
    <name>ww::ui::AdviceModel</name>
    <message>
        <source>self-acting</source>
        <translation>selbsttätig</translation>
    </message>
    <message>
        <source>cannot be set</source>
        <translation>nicht einstellbar</translation>
    </message>
    <message>
        <source>scale too short</source>
        <translation>Skala zu kurz</translation>
    </message>
    <message>
        <source>fully open</source>
        <translation>ganz offen</translation>
    </message>
    <message>
        <source>set</source>
        <translation>gesetzt</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Folge</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Stellen auf</translation>
    </message>
    <message>
        <source>As read, %</source>
        <translation>Wie abgelesen, %</translation>
    </message>
    <message>
        <source>In truth, %</source>
        <translation>In Wahrheit, %</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>leave it</source>
        <translation>stehen lassen</translation>
    </message>
    <message>
        <source>hold for now</source>
        <translation>vorerst halten</translation>
    </message>
    <message>
        <source>by the reading</source>
        <translation>nach Ablesung</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>All set %1</source>
        <translation>Alle gesetzt %1</translation>
    </message>
    <message>
        <source>open to %1</source>
        <translation>öffnen auf %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::AdvicePanel</name>
    <message>
        <source>Enter takes the valve in hand at its advised setting</source>
        <translation>Enter nimmt das Ventil mit der empfohlenen Einstellung in die Hand</translation>
    </message>
    <message>
        <source>State of the advice</source>
        <translation>Stand des Rats</translation>
    </message>
    <message>
        <source>Computing</source>
        <translation>Berechnung läuft</translation>
    </message>
    <message>
        <source>About the advice</source>
        <translation>Zum Rat</translation>
    </message>
    <message>
        <source>About the advice, scrolled</source>
        <translation>Zum Rat, mit Bildlauf</translation>
    </message>
    <message>
        <source>computing…</source>
        <translation>wird berechnet…</translation>
    </message>
    <message>
        <source>No advice yet</source>
        <translation>Noch kein Rat</translation>
    </message>
    <message>
        <source>Advice not ready</source>
        <translation>Rat nicht bereit</translation>
    </message>
    <message>
        <source>Advice, unverified</source>
        <translation>Rat, nicht geprüft</translation>
    </message>
    <message>
        <source>Helps most: %1</source>
        <translation>Hilft am meisten: %1</translation>
    </message>
    <message>
        <source>Advised settings in the working order</source>
        <translation>Empfohlene Einstellungen in Arbeitsfolge</translation>
    </message>
    <message>
        <source>Read the survey first: the advice is made from its readings.</source>
        <translation>Zuerst die Aufnahme ablesen: der Rat entsteht aus ihren Ablesungen.</translation>
    </message>
    <message>
        <source>Shares confirmed by a round</source>
        <translation>Anteile durch eine Runde bestätigt</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>at least %1 %</source>
        <translation>mindestens %1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Once all are set as advised: chance that every share reads within ±%1 % of target: %2; that it truly is, with the errors of the valve tables: %3.</source>
        <translation>Wenn alle wie empfohlen eingestellt sind: Wahrscheinlichkeit, dass jeder Anteil in ±%1 % vom Soll abgelesen wird: %2; dass er es wirklich ist, mit den Fehlern der Ventiltabellen: %3.</translation>
    </message>
    <message>
        <source>Working order: the riser farthest over its target first, in it the valve farthest over, its own valve last.</source>
        <translation>Arbeitsfolge: zuerst der Steigstrang, der am weitesten über seinem Soll liegt, darin das Ventil, das am weitesten darüber liegt, sein eigenes Ventil zuletzt.</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>und %n weitere</numerusform>
            <numerusform>und %n weitere</numerusform>
        </translation>
    </message>
    <message>
        <source>The pump makes too little at design flow: see that the index path is open and that strainers and filters are clean, check speed and impeller. How much it lacks: Pump, Decision.</source>
        <translation>Die Pumpe erzeugt beim Auslegungsdurchfluss zu wenig: Sehen Sie nach, ob der Schlechtpunktweg offen ist und Schmutzfänger und Filter sauber sind, prüfen Sie Drehzahl und Laufrad. Wie viel fehlt: Pumpe, Entscheidung.</translation>
    </message>
    <message>
        <source>Whether the pump is short cannot be told: read its gauges and every terminal again once all valves are set. Its figures: Pump, Decision.</source>
        <translation>Ob die Pumpe zu wenig erzeugt, lässt sich nicht sagen: Lesen Sie ihre Manometer und jeden Verbraucher neu ab, wenn alle Ventile eingestellt sind. Ihre Zahlen: Pumpe, Entscheidung.</translation>
    </message>
    <message>
        <source>The pump makes enough at design flow. How much too much, and by which speed or impeller to take it away: Pump, Decision. Change it after the valves are set, by a licensed person and within the limits of the maker and the local code.</source>
        <translation>Die Pumpe erzeugt beim Auslegungsdurchfluss genug. Wie viel zu viel, und mit welcher Drehzahl oder welchem Laufrad es wegfällt: Pumpe, Entscheidung. Ändern Sie sie nach dem Einstellen der Ventile, durch eine befugte Person und in den Grenzen von Hersteller und örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Advice of earlier readings</source>
        <translation>Rat früherer Ablesungen</translation>
    </message>
    <message>
        <source>Working order: changed here by hand; Ctrl+Alt+B goes back to the advised one.</source>
        <translation>Arbeitsfolge: hier von Hand geändert; Strg+Alt+B geht zur empfohlenen zurück.</translation>
    </message>
    <message>
        <source>The pump makes too little at design flow at its present speed: raise it to about %1 % of full speed, by a licensed person and within the limits of the maker. Where that does not help, see that the index path is open and that strainers and filters are clean. Its figures: Pump, Decision.</source>
        <translation>Die Pumpe erzeugt beim Auslegungsdurchfluss mit ihrer jetzigen Drehzahl zu wenig: Erhöhen Sie diese auf etwa %1 % der vollen Drehzahl, durch eine befugte Person und in den Grenzen des Herstellers. Wo das nicht hilft, sehen Sie nach, ob der Schlechtpunktweg offen ist und Schmutzfänger und Filter sauber sind. Ihre Zahlen: Pumpe, Entscheidung.</translation>
    </message>
</context>
<context>
    <name>ww::ui::AimStripModel</name>
    <message>
        <source>setting %1, %2, %3</source>
        <translation>Einstellung %1, %2, %3</translation>
    </message>
    <message>
        <source>setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>aim %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>hold %1</source>
        <translation>halten %1</translation>
    </message>
    <message>
        <source>expect %1</source>
        <translation>erwarte %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::CertificateDialog</name>
    <message>
        <source>Make Certificate</source>
        <translation>Zertifikat erstellen</translation>
    </message>
    <message>
        <source>Make a Certificate</source>
        <translation>Zertifikat erstellen</translation>
    </message>
    <message>
        <source>A self-made certificate shows that reports come from the same hand. Nobody else vouches for the name, so verifying never calls it trusted: tell its fingerprint to whoever must rely on it, or use a key that an issuer of certificates gave you.</source>
        <translation>Ein selbst erstelltes Zertifikat zeigt, dass Berichte aus derselben Hand kommen. Niemand sonst bürgt für den Namen, darum gilt es bei der Prüfung nie als vertrauenswürdig: Teilen Sie seinen Fingerabdruck denen mit, die sich darauf verlassen, oder nutzen Sie einen Schlüssel einer Zertifizierungsstelle.</translation>
    </message>
    <message>
        <source>Name of the person</source>
        <translation>Name der Person</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation>Neue Passphrase</translation>
    </message>
    <message>
        <source>The same passphrase again</source>
        <translation>Passphrase wiederholen</translation>
    </message>
    <message>
        <source>Type the name of the person.</source>
        <translation>Tippen Sie den Namen der Person ein.</translation>
    </message>
    <message>
        <source>The passphrase needs %1 characters or more.</source>
        <translation>Die Passphrase braucht mindestens %1 Zeichen.</translation>
    </message>
    <message>
        <source>The two passphrases are not the same.</source>
        <translation>Die zwei Passphrasen sind verschieden.</translation>
    </message>
</context>
<context>
    <name>ww::ui::ClockDialog</name>
    <message>
        <source>Set Offset</source>
        <translation>Versatz setzen</translation>
    </message>
    <message>
        <source>Set Clock Offset</source>
        <translation>Uhr richtigstellen</translation>
    </message>
    <message>
        <source>What this laptop&apos;s clock is off by is added to every time written in this job from now on, and is told in the report. Times written before stay as they are.</source>
        <translation>Was die Uhr dieses Laptops falsch geht, wird ab jetzt zu jeder Zeit dieses Auftrags addiert und steht im Bericht. Zeiten von vorher bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>True date and time here</source>
        <translation>Richtiges Datum und Uhrzeit hier</translation>
    </message>
    <message>
        <source>True &amp;date and time here</source>
        <translation>Richtiges &amp;Datum und Uhrzeit hier</translation>
    </message>
    <message>
        <source>Use Own Clock</source>
        <translation>Uhr des Laptops verwenden</translation>
    </message>
    <message>
        <source>For a clock that is right again: nothing is added to it any more</source>
        <translation>Für eine Uhr, die wieder richtig geht: es wird nichts mehr addiert</translation>
    </message>
    <message>
        <source>Write day and time as in 2026-03-02 14:05.</source>
        <translation>Schreiben Sie Tag und Uhrzeit wie 2026-03-02 14:05.</translation>
    </message>
    <message>
        <source>That is what is written already; nothing is to be set.</source>
        <translation>So wird schon geschrieben; es ist nichts zu setzen.</translation>
    </message>
    <message>
        <source>This laptop&apos;s own clock is right; nothing is added to it any more.</source>
        <translation>Die Uhr dieses Laptops geht richtig; es wird nichts mehr addiert.</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>This laptop&apos;s clock is %1 behind.</source>
        <translation>Die Uhr dieses Laptops geht %1 nach.</translation>
    </message>
    <message>
        <source>This laptop&apos;s clock is %1 ahead.</source>
        <translation>Die Uhr dieses Laptops geht %1 vor.</translation>
    </message>
</context>
<context>
    <name>ww::ui::CloseRoundPanel</name>
    <message>
        <source>Go Back to Grid</source>
        <translation>Zurück zur Tabelle</translation>
    </message>
    <message>
        <source>Open items of the round</source>
        <translation>Offene Punkte der Runde</translation>
    </message>
    <message>
        <source>Close Round %1</source>
        <translation>Runde %1 schließen</translation>
    </message>
    <message>
        <source>Round %1 has no open items.</source>
        <translation>Runde %1 hat keine offenen Punkte.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) need a reading or a reason before round %1 is closed.</source>
        <translation>
            <numerusform>%n Punkt braucht eine Ablesung oder einen Grund, bevor Runde %1 geschlossen wird.</numerusform>
            <numerusform>%n Punkte brauchen eine Ablesung oder einen Grund, bevor Runde %1 geschlossen wird.</numerusform>
        </translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Reason for %1</source>
        <translation>Grund für %1</translation>
    </message>
    <message>
        <source>Read</source>
        <translation>Ablesen</translation>
    </message>
    <message>
        <source>Read %1</source>
        <translation>%1 ablesen</translation>
    </message>
    <message numerus="yes">
        <source>Round %1 can be closed; %n reading(s) do not fit the others.</source>
        <translation>
            <numerusform>Runde %1 kann geschlossen werden; %n Ablesung passt nicht zu den anderen.</numerusform>
            <numerusform>Runde %1 kann geschlossen werden; %n Ablesungen passen nicht zu den anderen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Mark %n as Not Turned</source>
        <translation>
            <numerusform>%n als nicht gedreht vermerken</numerusform>
            <numerusform>%n als nicht gedreht vermerken</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) need a reading or a reason before round %1 is sent.</source>
        <translation>
            <numerusform>%n Punkt braucht eine Ablesung oder einen Grund, bevor Runde %1 gesendet wird.</numerusform>
            <numerusform>%n Punkte brauchen eine Ablesung oder einen Grund, bevor Runde %1 gesendet wird.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::CodePage</name>
    <message>
        <source>not chosen</source>
        <translation>nicht gewählt</translation>
    </message>
    <message>
        <source>5 % of the plate</source>
        <translation>5 % des Schilds</translation>
    </message>
    <message>
        <source>Form of the clause</source>
        <translation>Form des Abschnitts</translation>
    </message>
    <message>
        <source>&amp;Allowed excess</source>
        <translation>&amp;Zulässiger Überschuss</translation>
    </message>
    <message>
        <source>Code and e&amp;dition</source>
        <translation>Vorschrift und A&amp;usgabe</translation>
    </message>
    <message>
        <source>&amp;Clause</source>
        <translation>A&amp;bschnitt</translation>
    </message>
    <message>
        <source>E&amp;xception claimed</source>
        <translation>Bean&amp;spruchte Ausnahme</translation>
    </message>
    <message>
        <source>Copy edition and clause from the code that is adopted where the building stands. An exception needs its number and who grants it.</source>
        <translation>Übernehmen Sie Ausgabe und Abschnitt aus der am Ort des Gebäudes geltenden Vorschrift. Eine Ausnahme braucht ihre Nummer und wer sie gewährt.</translation>
    </message>
    <message>
        <source>5 % of the plate or a fixed power</source>
        <translation>5 % der Typenschildleistung oder eine feste Leistung</translation>
    </message>
</context>
<context>
    <name>ww::ui::Commands</name>
    <message>
        <source>&amp;New Job…</source>
        <translation>&amp;Neuer Auftrag…</translation>
    </message>
    <message>
        <source>New Job from &amp;Tables…</source>
        <translation>Neuer Auftrag aus &amp;Tabellen…</translation>
    </message>
    <message>
        <source>New &amp;Practice Job…</source>
        <translation>Neuer Übungs&amp;auftrag…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;Recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Save a &amp;Copy…</source>
        <translation>&amp;Kopie speichern…</translation>
    </message>
    <message>
        <source>&amp;Merge Another Laptop…</source>
        <translation>Mit anderem &amp;Laptop zusammenführen…</translation>
    </message>
    <message>
        <source>&amp;Decide Conflicts…</source>
        <translation>Konflikte &amp;entscheiden…</translation>
    </message>
    <message>
        <source>C&amp;lose</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Find Valve…</source>
        <translation>Ventil &amp;finden…</translation>
    </message>
    <message>
        <source>Write &amp;Note…</source>
        <translation>&amp;Notiz schreiben…</translation>
    </message>
    <message>
        <source>Show &amp;History…</source>
        <translation>&amp;Verlauf zeigen…</translation>
    </message>
    <message>
        <source>Show the Job as It &amp;Stood…</source>
        <translation>&amp;Auftrag zu früherem Stand zeigen…</translation>
    </message>
    <message>
        <source>Go to Ne&amp;xt Open Item</source>
        <translation>Zum nä&amp;chsten offenen Punkt</translation>
    </message>
    <message>
        <source>Go to Pre&amp;vious Open Item</source>
        <translation>Zum v&amp;origen offenen Punkt</translation>
    </message>
    <message>
        <source>&amp;Open New Round…</source>
        <translation>&amp;Neue Runde öffnen…</translation>
    </message>
    <message>
        <source>&amp;Close Round…</source>
        <translation>Runde &amp;schließen…</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Messgerät</translation>
    </message>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Person</translation>
    </message>
    <message>
        <source>&amp;Read Again</source>
        <translation>Neu &amp;ablesen</translation>
    </message>
    <message>
        <source>&amp;Take Offered Fix</source>
        <translation>Angebotene &amp;Korrektur annehmen</translation>
    </message>
    <message>
        <source>&amp;Mark Doubtful</source>
        <translation>Als &amp;fraglich markieren</translation>
    </message>
    <message>
        <source>Record as &amp;Not Readable</source>
        <translation>Als &amp;nicht ablesbar vermerken</translation>
    </message>
    <message>
        <source>List De&amp;ficiency</source>
        <translation>&amp;Mangel aufnehmen</translation>
    </message>
    <message>
        <source>Take the Meter&apos;s &amp;Value (Practice)</source>
        <translation>&amp;Wert des Messgeräts nehmen (Übung)</translation>
    </message>
    <message>
        <source>Take the Pump&apos;s &amp;Gauges (Practice)</source>
        <translation>Manometer der &amp;Pumpe nehmen (Übung)</translation>
    </message>
    <message>
        <source>&amp;Add Branch</source>
        <translation>&amp;Zweig hinzufügen</translation>
    </message>
    <message>
        <source>Read R&amp;eference</source>
        <translation>&amp;Referenz ablesen</translation>
    </message>
    <message>
        <source>Read with Valve &amp;Shut</source>
        <translation>Mit geschlossenem &amp;Ventil ablesen</translation>
    </message>
    <message>
        <source>Take Advised Sett&amp;ing</source>
        <translation>Empf&amp;ohlene Einstellung nehmen</translation>
    </message>
    <message>
        <source>Show &amp;Convergence</source>
        <translation>&amp;Konvergenz zeigen</translation>
    </message>
    <message>
        <source>Change Chart and &amp;Table</source>
        <translation>&amp;Diagramm und Tabelle wechseln</translation>
    </message>
    <message>
        <source>Switch to Next &amp;Display</source>
        <translation>An&amp;zeige wechseln</translation>
    </message>
    <message>
        <source>Make Text &amp;Larger</source>
        <translation>Text ver&amp;größern</translation>
    </message>
    <message>
        <source>Show &amp;Full Screen</source>
        <translation>&amp;Vollbild zeigen</translation>
    </message>
    <message>
        <source>&amp;Export Unsigned Draft…</source>
        <translation>&amp;Unsignierten Entwurf exportieren…</translation>
    </message>
    <message>
        <source>&amp;Sign Report…</source>
        <translation>Bericht &amp;signieren…</translation>
    </message>
    <message>
        <source>&amp;Make a Certificate…</source>
        <translation>&amp;Zertifikat erstellen…</translation>
    </message>
    <message>
        <source>&amp;Verify a Report…</source>
        <translation>Bericht &amp;prüfen…</translation>
    </message>
    <message>
        <source>Show &amp;Truth against Found (Practice)…</source>
        <translation>Wa&amp;hrheit und Befund zeigen (Übung)…</translation>
    </message>
    <message>
        <source>Show &amp;Keys</source>
        <translation>&amp;Tasten zeigen</translation>
    </message>
    <message>
        <source>Show &amp;Version and Licence</source>
        <translation>&amp;Version und Lizenz zeigen</translation>
    </message>
    <message>
        <source>Show &amp;Job</source>
        <translation>&amp;Auftrag zeigen</translation>
    </message>
    <message>
        <source>Show &amp;System</source>
        <translation>A&amp;nlage zeigen</translation>
    </message>
    <message>
        <source>Show &amp;Walk</source>
        <translation>&amp;Rundgang zeigen</translation>
    </message>
    <message>
        <source>Show &amp;Pump</source>
        <translation>P&amp;umpe zeigen</translation>
    </message>
    <message>
        <source>Show Re&amp;view</source>
        <translation>&amp;Prüfung zeigen</translation>
    </message>
    <message>
        <source>Show &amp;Report</source>
        <translation>&amp;Bericht zeigen</translation>
    </message>
    <message>
        <source>Show Pump &amp;Curves</source>
        <translation>Pumpen&amp;kennlinien zeigen</translation>
    </message>
    <message>
        <source>Enter Pump &amp;Test</source>
        <translation>Pumpen&amp;test eintragen</translation>
    </message>
    <message>
        <source>Show Test &amp;Results</source>
        <translation>T&amp;estergebnisse zeigen</translation>
    </message>
    <message>
        <source>Show &amp;Decision</source>
        <translation>Ent&amp;scheidung zeigen</translation>
    </message>
    <message>
        <source>Compare Read and &amp;Set</source>
        <translation>Ablesen-Einstellen &amp;vergleichen</translation>
    </message>
    <message>
        <source>Show &amp;Pressures</source>
        <translation>&amp;Drücke zeigen</translation>
    </message>
    <message>
        <source>Test &amp;Energy Code</source>
        <translation>E&amp;nergievorschrift prüfen</translation>
    </message>
    <message>
        <source>List De&amp;vices</source>
        <translation>&amp;Armaturen auflisten</translation>
    </message>
    <message>
        <source>Enter Set-P&amp;oint</source>
        <translation>S&amp;ollwert eintragen</translation>
    </message>
    <message>
        <source>Enter Pump D&amp;ata</source>
        <translation>Pumpendaten eint&amp;ragen</translation>
    </message>
    <message>
        <source>Try &amp;Zones</source>
        <translation>&amp;Zonen probieren</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Round</source>
        <translation>&amp;Runde</translation>
    </message>
    <message>
        <source>&amp;Valve</source>
        <translation>&amp;Ventil</translation>
    </message>
    <message>
        <source>P&amp;ump</source>
        <translation>&amp;Pumpe</translation>
    </message>
    <message>
        <source>Vie&amp;w</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Re&amp;port</source>
        <translation>B&amp;ericht</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Write Comment</source>
        <translation>&amp;Kommentar schreiben</translation>
    </message>
    <message>
        <source>A&amp;djust This Valve</source>
        <translation>Dieses Ventil &amp;einstellen</translation>
    </message>
    <message>
        <source>Show Adv&amp;ice</source>
        <translation>Ra&amp;t zeigen</translation>
    </message>
    <message>
        <source>Make Text S&amp;maller</source>
        <translation>Text verk&amp;leinern</translation>
    </message>
    <message>
        <source>Reset Te&amp;xt Size</source>
        <translation>Te&amp;xtgröße zurücksetzen</translation>
    </message>
    <message>
        <source>Sh&amp;ow Adjust</source>
        <translation>&amp;Einstellen zeigen</translation>
    </message>
    <message>
        <source>&amp;Save Checkpoint…</source>
        <translation>Sicherungspunkt &amp;speichern…</translation>
    </message>
    <message>
        <source>Chan&amp;ge Preferences…</source>
        <translation>E&amp;instellungen ändern…</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Aus&amp;schneiden</translation>
    </message>
    <message>
        <source>Cop&amp;y</source>
        <translation>Ko&amp;pieren</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>E&amp;infügen</translation>
    </message>
    <message>
        <source>Move Branch U&amp;p the Route</source>
        <translation>Zwei&amp;g auf dem Weg vorrücken</translation>
    </message>
    <message>
        <source>Move Branch Do&amp;wn the Route</source>
        <translation>Zweig auf dem Weg z&amp;urücksetzen</translation>
    </message>
    <message>
        <source>Enter Valve Ta&amp;bles</source>
        <translation>Ventilta&amp;bellen eintragen</translation>
    </message>
    <message>
        <source>Use Lar&amp;ge Targets</source>
        <translation>Sc&amp;haltflächen vergrößern</translation>
    </message>
    <message>
        <source>Langu&amp;age</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>New Job &amp;from a Sample…</source>
        <translation>Neuer Auftrag aus Beis&amp;piel…</translation>
    </message>
    <message>
        <source>&amp;Import Table…</source>
        <translation>Tabelle i&amp;mportieren…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>E&amp;xport</translation>
    </message>
    <message>
        <source>Export CSV &amp;Tables…</source>
        <translation>CSV-&amp;Tabellen exportieren…</translation>
    </message>
    <message>
        <source>Export &amp;Spreadsheet…</source>
        <translation>Tabellen&amp;kalkulation exportieren…</translation>
    </message>
    <message>
        <source>Export &amp;JSON…</source>
        <translation>&amp;JSON exportieren…</translation>
    </message>
    <message>
        <source>Print &amp;Walk Sheet…</source>
        <translation>Begehungsblatt &amp;drucken…</translation>
    </message>
    <message>
        <source>Show &amp;Handbook</source>
        <translation>&amp;Handbuch zeigen</translation>
    </message>
    <message>
        <source>Show &amp;Release Notes</source>
        <translation>&amp;Neuerungen zeigen</translation>
    </message>
    <message>
        <source>Write Walk S&amp;heet to File…</source>
        <translation>Begehungsblatt in Datei sch&amp;reiben…</translation>
    </message>
    <message>
        <source>&amp;Send Round to Supervisor</source>
        <translation>Runde an Leitung s&amp;enden</translation>
    </message>
    <message>
        <source>&amp;Accept Round</source>
        <translation>Runde &amp;annehmen</translation>
    </message>
    <message>
        <source>Set Clock O&amp;ffset…</source>
        <translation>&amp;Uhr richtigstellen…</translation>
    </message>
    <message>
        <source>Try W&amp;hat If</source>
        <translation>Wa&amp;s wäre wenn probieren</translation>
    </message>
    <message>
        <source>Mark Rest as Not &amp;Turned</source>
        <translation>Rest als nich&amp;t gedreht vermerken</translation>
    </message>
    <message>
        <source>Restore Advised &amp;Order</source>
        <translation>Empfohlene &amp;Folge wiederherstellen</translation>
    </message>
</context>
<context>
    <name>ww::ui::CommentPanel</name>
    <message>
        <source>Comment</source>
        <translation>Kommentar</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>Resolve</source>
        <translation>Erledigen</translation>
    </message>
    <message>
        <source>Comments of the round</source>
        <translation>Kommentare der Runde</translation>
    </message>
    <message>
        <source>Text of the comment</source>
        <translation>Text des Kommentars</translation>
    </message>
    <message>
        <source>%1 — %2</source>
        <translation>%1 — %2</translation>
    </message>
    <message>
        <source>resolved</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Comments</source>
        <translation>Kommentare</translation>
    </message>
    <message numerus="yes">
        <source>Comments (%n open)</source>
        <translation>
            <numerusform>Kommentare (%n offen)</numerusform>
            <numerusform>Kommentare (%n offen)</numerusform>
        </translation>
    </message>
    <message>
        <source>Comment on %1 (Ctrl+Alt+C)</source>
        <translation>Kommentar zu %1 (Strg+Alt+C)</translation>
    </message>
    <message>
        <source>Reopen</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>Answer %1 on %2</source>
        <translation>Antwort an %1 zu %2</translation>
    </message>
    <message>
        <source>answer, Enter</source>
        <translation>Antwort, Enter</translation>
    </message>
    <message>
        <source>new comment, Enter</source>
        <translation>neuer Kommentar, Enter</translation>
    </message>
</context>
<context>
    <name>ww::ui::ControlKeys</name>
    <message>
        <source>Enter stores</source>
        <translation>Enter speichert</translation>
    </message>
    <message>
        <source>Esc restores</source>
        <translation>Esc stellt wieder her</translation>
    </message>
    <message>
        <source>Tab right</source>
        <translation>Tab nach rechts</translation>
    </message>
    <message>
        <source>type to change a cell</source>
        <translation>tippen ändert die Zelle</translation>
    </message>
    <message>
        <source>Enter down</source>
        <translation>Enter nach unten</translation>
    </message>
    <message>
        <source>F6 leaves the table</source>
        <translation>F6 verlässt die Tabelle</translation>
    </message>
    <message>
        <source>Tab next field</source>
        <translation>Tab nächstes Feld</translation>
    </message>
    <message>
        <source>type to change it</source>
        <translation>tippen ändert</translation>
    </message>
    <message>
        <source>Ctrl+Enter stores</source>
        <translation>Strg+Enter speichert</translation>
    </message>
    <message>
        <source>Space changes the tick</source>
        <translation>Leertaste ändert den Haken</translation>
    </message>
    <message>
        <source>Up, Down choose</source>
        <translation>Auf, Ab wählen</translation>
    </message>
    <message>
        <source>Enter presses the button</source>
        <translation>Enter drückt den Knopf</translation>
    </message>
    <message>
        <source>Space presses the button</source>
        <translation>Leertaste drückt den Knopf</translation>
    </message>
    <message>
        <source>Up, Down rows</source>
        <translation>Auf, Ab Zeilen</translation>
    </message>
    <message>
        <source>Left, Right pages</source>
        <translation>Links, Rechts Seiten</translation>
    </message>
    <message>
        <source>Up, Down scroll</source>
        <translation>Auf, Ab rollen</translation>
    </message>
    <message>
        <source>Enter next cell</source>
        <translation>Enter nächste Zelle</translation>
    </message>
</context>
<context>
    <name>ww::ui::CountedRows</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
</context>
<context>
    <name>ww::ui::CurvesPage</name>
    <message>
        <source>Index-circuit check</source>
        <translation>Prüfung des Schlechtpunktkreises</translation>
    </message>
    <message>
        <source>Duty and design flow</source>
        <translation>Betriebspunkt und Auslegungsdurchfluss</translation>
    </message>
    <message>
        <source>Duty and index-circuit check</source>
        <translation>Betriebspunkt und Prüfung des Schlechtpunktkreises</translation>
    </message>
    <message>
        <source>Enter two points of the pump&apos;s curve on the page Pump Data (Ctrl+Alt+0), or make the job from tables that have a curve.</source>
        <translation>Tragen Sie auf der Seite Pumpendaten (Strg+Alt+0) zwei Punkte der Pumpenkennlinie ein, oder legen Sie den Auftrag aus Tabellen mit Kennlinie an.</translation>
    </message>
</context>
<context>
    <name>ww::ui::DataPage</name>
    <message>
        <source>Add Pump</source>
        <translation>Pumpe hinzufügen</translation>
    </message>
    <message>
        <source>Maker&apos;s curve</source>
        <translation>Kennlinie des Herstellers</translation>
    </message>
    <message>
        <source>Remove Point</source>
        <translation>Punkt entfernen</translation>
    </message>
    <message>
        <source>Load of a year</source>
        <translation>Last eines Jahres</translation>
    </message>
    <message>
        <source>Remove Hours</source>
        <translation>Stunden entfernen</translation>
    </message>
    <message>
        <source>Plate and data of the pumps</source>
        <translation>Schild und Daten der Pumpen</translation>
    </message>
    <message>
        <source>&amp;Curve of pump</source>
        <translation>&amp;Kennlinie der Pumpe</translation>
    </message>
    <message>
        <source>Price of a &amp;kWh</source>
        <translation>&amp;Preis einer kWh</translation>
    </message>
    <message>
        <source>Impeller</source>
        <translation>Laufrad</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Förderhöhe</translation>
    </message>
    <message>
        <source>Efficiency</source>
        <translation>Wirkungsgrad</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>NPSH</source>
        <translation>NPSH</translation>
    </message>
    <message>
        <source>flow and head</source>
        <translation>Durchfluss und Förderhöhe</translation>
    </message>
    <message>
        <source>Hours a year</source>
        <translation>Stunden im Jahr</translation>
    </message>
    <message>
        <source>Of design flow</source>
        <translation>Vom Auslegungsdurchfluss</translation>
    </message>
    <message>
        <source>hours and a part of the design flow</source>
        <translation>Stunden und ein Teil des Auslegungsdurchflusses</translation>
    </message>
    <message>
        <source>Hours a &amp;year, if no table</source>
        <translation>Stunden im &amp;Jahr, ohne Tabelle</translation>
    </message>
</context>
<context>
    <name>ww::ui::DecisionPage</name>
    <message>
        <source>Pumps that run</source>
        <translation>Laufende Pumpen</translation>
    </message>
    <message>
        <source>Pumps &amp;that run</source>
        <translation>&amp;Laufende Pumpen</translation>
    </message>
    <message>
        <source>all that are marked</source>
        <translation>alle markierten</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 allein</translation>
    </message>
</context>
<context>
    <name>ww::ui::DecisionPanel</name>
    <message>
        <source>Send Round</source>
        <translation>Runde senden</translation>
    </message>
    <message>
        <source>Accept Round</source>
        <translation>Runde annehmen</translation>
    </message>
    <message>
        <source>Send Back</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>Withdraw</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>State of the round</source>
        <translation>Stand der Runde</translation>
    </message>
    <message>
        <source>Reason for sending back or withdrawing</source>
        <translation>Grund für Zurückgeben oder Zurückziehen</translation>
    </message>
    <message>
        <source>reason, to send back or withdraw</source>
        <translation>Grund, um zurückzugeben oder zurückzuziehen</translation>
    </message>
    <message>
        <source>Withdrawing needs a reason.</source>
        <translation>Zurückziehen braucht einen Grund.</translation>
    </message>
    <message>
        <source>Round %1: %2</source>
        <translation>Runde %1: %2</translation>
    </message>
    <message>
        <source>sent by</source>
        <translation>gesendet von</translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation>Grund: %1</translation>
    </message>
    <message>
        <source>begun early: %1</source>
        <translation>früh begonnen: %1</translation>
    </message>
    <message>
        <source>at this desk: %1</source>
        <translation>an diesem Arbeitsplatz: %1</translation>
    </message>
    <message>
        <source>no person chosen: decisions name the account %1</source>
        <translation>keine Person gewählt: Entscheidungen nennen das Konto %1</translation>
    </message>
    <message>
        <source>Change Person</source>
        <translation>Person wechseln</translation>
    </message>
    <message>
        <source>Lists who may decide on this round</source>
        <translation>Nennt, wer über diese Runde entscheiden darf</translation>
    </message>
    <message>
        <source>sent back by</source>
        <translation>zurückgegeben von</translation>
    </message>
    <message>
        <source>accepted by</source>
        <translation>angenommen von</translation>
    </message>
    <message>
        <source>withdrawn by</source>
        <translation>zurückgezogen von</translation>
    </message>
    <message>
        <source>To the People of the Job</source>
        <translation>Zu den Personen des Auftrags</translation>
    </message>
    <message>
        <source>accepted by the limits: share ±%1 %, of design %2 to +%3 %</source>
        <translation>angenommen nach den Grenzen: Anteil ±%1 %, der Auslegung %2 bis +%3 %</translation>
    </message>
</context>
<context>
    <name>ww::ui::DeficiencyPage</name>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was falsch ist</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Gewerk</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Raised</source>
        <translation>Gemeldet</translation>
    </message>
    <message>
        <source>Re-tested</source>
        <translation>Nachgeprüft</translation>
    </message>
    <message>
        <source>List Deficiency</source>
        <translation>Mangel aufnehmen</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Mängel</translation>
    </message>
    <message>
        <source>Photos of the deficiency</source>
        <translation>Fotos zum Mangel</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Status: open, remedied, closed or left as it is.</source>
        <translation>Stand: offen, behoben, geschlossen oder bleibt so.</translation>
    </message>
    <message>
        <source>Locatio&amp;n</source>
        <translation>&amp;Ort</translation>
    </message>
    <message>
        <source>Conse&amp;quence</source>
        <translation>&amp;Folge</translation>
    </message>
    <message>
        <source>Re&amp;medy proposed</source>
        <translation>&amp;Abhilfe vorgeschlagen</translation>
    </message>
    <message>
        <source>R&amp;e-test result</source>
        <translation>Ergebnis der Nach&amp;prüfung</translation>
    </message>
    <message>
        <source>round %1: %2</source>
        <translation>Runde %1: %2</translation>
    </message>
    <message>
        <source>no reading</source>
        <translation>keine Ablesung</translation>
    </message>
    <message>
        <source>, raised by %1</source>
        <translation>, gemeldet von %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::DevicePage</name>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Before it</source>
        <translation>Davor</translation>
    </message>
    <message>
        <source>D before</source>
        <translation>D davor</translation>
    </message>
    <message>
        <source>D behind</source>
        <translation>D dahinter</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Dealt with as</source>
        <translation>Behandelt als</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Where the devices sit</source>
        <translation>Wo die Armaturen sitzen</translation>
    </message>
    <message>
        <source>D: straight pipe in diameters. Before it: %1. Dealt with as: %2. Type a word or its first letters.</source>
        <translation>D: gerades Rohr in Durchmessern. Davor: %1. Behandelt als: %2. Tippen Sie ein Wort oder seine ersten Buchstaben.</translation>
    </message>
    <message>
        <source>Show Other Columns</source>
        <translation>Andere Spalten zeigen</translation>
    </message>
</context>
<context>
    <name>ww::ui::FieldTableModel</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Angabe</translation>
    </message>
</context>
<context>
    <name>ww::ui::HandbookWindow</name>
    <message>
        <source>Go &amp;Back</source>
        <translation>&amp;Zurückgehen</translation>
    </message>
    <message>
        <source>Go For&amp;ward</source>
        <translation>Weiter&amp;gehen</translation>
    </message>
    <message>
        <source>Find &amp;Next</source>
        <translation>&amp;Weitersuchen</translation>
    </message>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Chapter</source>
        <translation>Kapitel</translation>
    </message>
    <message>
        <source>Find in the handbook</source>
        <translation>Im Handbuch suchen</translation>
    </message>
    <message>
        <source>Result of the search</source>
        <translation>Ergebnis der Suche</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Release notes</source>
        <translation>Neuerungen</translation>
    </message>
    <message>
        <source>&amp;Find</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>%1 is no page of the handbook</source>
        <translation>%1 ist keine Seite des Handbuchs</translation>
    </message>
    <message>
        <source>Handbook: %1</source>
        <translation>Handbuch: %1</translation>
    </message>
    <message>
        <source>“%1” does not occur in the handbook; try one word of it</source>
        <translation>„%1“ kommt im Handbuch nicht vor; versuchen Sie ein Wort davon</translation>
    </message>
</context>
<context>
    <name>ww::ui::HistoryDialog</name>
    <message>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Reason, note</source>
        <translation>Grund, Notiz</translation>
    </message>
    <message>
        <source>Use This Value</source>
        <translation>Diesen Wert nehmen</translation>
    </message>
    <message>
        <source>History of %1</source>
        <translation>Verlauf von %1</translation>
    </message>
    <message>
        <source>undone</source>
        <translation>rückgängig gemacht</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht ablesbar</translation>
    </message>
    <message>
        <source>Stored, newest first</source>
        <translation>Gespeichert, Neuestes zuerst</translation>
    </message>
</context>
<context>
    <name>ww::ui::ImportDialog</name>
    <message>
        <source>&amp;Leave Out All with Faults</source>
        <translation>Alle mit Fehlern &amp;weglassen</translation>
    </message>
    <message>
        <source>Show Next &amp;Fault</source>
        <translation>Nächsten &amp;Fehler zeigen</translation>
    </message>
    <message>
        <source>Go &amp;Back</source>
        <translation>&amp;Zurückgehen</translation>
    </message>
    <message>
        <source>Readings of a walk</source>
        <translation>Ablesungen eines Rundgangs</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Zweige</translation>
    </message>
    <message>
        <source>Valve tables</source>
        <translation>Ventiltabellen</translation>
    </message>
    <message>
        <source>Pumps</source>
        <translation>Pumpen</translation>
    </message>
    <message>
        <source>Pump curves</source>
        <translation>Pumpenkennlinien</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>Readings at pumps</source>
        <translation>Ablesungen an Pumpen</translation>
    </message>
    <message>
        <source>State of the import</source>
        <translation>Stand des Imports</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation>&amp;Blatt</translation>
    </message>
    <message>
        <source>The rows &amp;are</source>
        <translation>Die Zeilen &amp;sind</translation>
    </message>
    <message>
        <source>&amp;Headings stand in row</source>
        <translation>&amp;Köpfe stehen in Zeile</translation>
    </message>
    <message>
        <source>Say which of your columns is which, and the unit where the heading has none. Columns with * are needed.</source>
        <translation>Sagen Sie, welche Ihrer Spalten welche ist, und die Einheit, wo der Kopf keine hat. Spalten mit * sind nötig.</translation>
    </message>
    <message>
        <source>Rows to import</source>
        <translation>Zu importierende Zeilen</translation>
    </message>
    <message>
        <source>What is wrong with this row</source>
        <translation>Was an dieser Zeile falsch ist</translation>
    </message>
    <message>
        <source>Nothing is in the job yet. Type over a cell to mend it; take the mark away (Space) to leave a row out.</source>
        <translation>Noch ist nichts im Auftrag. Überschreiben Sie eine Zelle, um sie zu berichtigen; nehmen Sie den Haken weg (Leertaste), um eine Zeile wegzulassen.</translation>
    </message>
    <message>
        <source>Show &amp;Rows</source>
        <translation>&amp;Zeilen zeigen</translation>
    </message>
    <message>
        <source>Still to choose: %1.</source>
        <translation>Noch zu wählen: %1.</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Import %n Row(s)</source>
        <translation>
            <numerusform>%n Zeile &amp;importieren</numerusform>
            <numerusform>%n Zeilen &amp;importieren</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) must be mended or left out.</source>
        <translation>
            <numerusform>%n Zeile ist zu berichtigen oder wegzulassen.</numerusform>
            <numerusform>%n Zeilen sind zu berichtigen oder wegzulassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Import: %1</source>
        <translation>Import: %1</translation>
    </message>
    <message>
        <source>Headings stand in row</source>
        <translation>Köpfe stehen in Zeile</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no row of this table; type one from 1 to %2</source>
        <translation>„%1“ ist keine Zeile dieser Tabelle; tippen Sie eine von 1 bis %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::ImportModel</name>
    <message>
        <source>left out</source>
        <translation>weggelassen</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>genommen</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Nehmen</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>What is wrong; what to do</source>
        <translation>Was falsch ist; was zu tun ist</translation>
    </message>
    <message>
        <source>left blank, not taken</source>
        <translation>leer gelassen, nicht übernommen</translation>
    </message>
</context>
<context>
    <name>ww::ui::InstrumentModel</name>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Serien-Nr.</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Genauigkeit</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Kalibriert</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>If overdue, why</source>
        <translation>Falls überfällig, warum</translation>
    </message>
    <message>
        <source>Fixed error</source>
        <translation>Fester Fehler</translation>
    </message>
</context>
<context>
    <name>ww::ui::JobPlace</name>
    <message>
        <source>Add Instrument</source>
        <translation>Messgerät hinzufügen</translation>
    </message>
    <message>
        <source>Add Person</source>
        <translation>Person hinzufügen</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Pages of the job</source>
        <translation>Seiten des Auftrags</translation>
    </message>
    <message>
        <source>Instruments and people</source>
        <translation>Messgeräte und Personen</translation>
    </message>
    <message>
        <source>Readiness</source>
        <translation>Bereitschaft</translation>
    </message>
    <message>
        <source>Deficiencies</source>
        <translation>Mängel</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Medium</translation>
    </message>
    <message>
        <source>&amp;Units shown</source>
        <translation>Gezeigte &amp;Einheiten</translation>
    </message>
    <message>
        <source>&amp;Fluid</source>
        <translation>&amp;Medium</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Site</source>
        <translation>&amp;Ort</translation>
    </message>
    <message>
        <source>C&amp;lient</source>
        <translation>&amp;Kunde</translation>
    </message>
    <message>
        <source>Loop</source>
        <translation>Kreislauf</translation>
    </message>
    <message>
        <source>&amp;Glycol by mass</source>
        <translation>&amp;Glykol, Massenanteil</translation>
    </message>
    <message>
        <source>&amp;Temperature</source>
        <translation>&amp;Temperatur</translation>
    </message>
    <message>
        <source>F&amp;ill pressure</source>
        <translation>F&amp;ülldruck</translation>
    </message>
    <message>
        <source>&amp;Altitude</source>
        <translation>Meeres&amp;höhe</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Off design, l&amp;owest</source>
        <translation>Von Auslegung, &amp;unten</translation>
    </message>
    <message>
        <source>Off design, &amp;highest</source>
        <translation>Von Auslegung, o&amp;ben</translation>
    </message>
    <message>
        <source>&amp;Band of target, ±</source>
        <translation>B&amp;and vom Soll, ±</translation>
    </message>
    <message>
        <source>Old after, &amp;minutes</source>
        <translation>Ablesung alt nach (m&amp;in)</translation>
    </message>
    <message>
        <source>Pump energy</source>
        <translation>Energie der Pumpe</translation>
    </message>
    <message>
        <source>&amp;Price of a kWh</source>
        <translation>&amp;Preis einer kWh</translation>
    </message>
    <message>
        <source>Currenc&amp;y</source>
        <translation>&amp;Währung</translation>
    </message>
    <message>
        <source>Hours a yea&amp;r</source>
        <translation>Stunden im &amp;Jahr</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Messgeräte</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Show Other Columns</source>
        <translation>Andere Spalten zeigen</translation>
    </message>
    <message>
        <source>Remove Instrument</source>
        <translation>Messgerät entfernen</translation>
    </message>
    <message>
        <source>Remove Person</source>
        <translation>Person entfernen</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Keine Arbeitsmappe offen. Öffnen Sie eine (Strg+O) oder legen Sie einen Auftrag an (Strg+N).</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Was hier fehlt</translation>
    </message>
</context>
<context>
    <name>ww::ui::JobStrip</name>
    <message>
        <source>Save a Copy Elsewhere…</source>
        <translation>Kopie anderswo speichern…</translation>
    </message>
    <message>
        <source>Job strip</source>
        <translation>Auftragszeile</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>Stored</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>Display</source>
        <translation>Anzeige</translation>
    </message>
    <message>
        <source>Conflicts to decide</source>
        <translation>Zu entscheidende Konflikte</translation>
    </message>
    <message>
        <source>Writes the whole workbook to another disk, with what could not be stored, and goes on there</source>
        <translation>Schreibt die ganze Arbeitsmappe auf ein anderes Laufwerk, mit dem, was nicht gespeichert werden konnte, und arbeitet dort weiter</translation>
    </message>
    <message>
        <source>Valves read</source>
        <translation>Abgelesene Ventile</translation>
    </message>
    <message numerus="yes">
        <source>%n to decide</source>
        <translation>
            <numerusform>%n zu entscheiden</numerusform>
            <numerusform>%n zu entscheiden</numerusform>
        </translation>
    </message>
    <message>
        <source>Places and commands</source>
        <translation>Bereiche und Befehle</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
</context>
<context>
    <name>ww::ui::JournalDialog</name>
    <message>
        <source>Record</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>Stored actions</source>
        <translation>Gespeicherte Handlungen</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Ablesung</translation>
    </message>
    <message>
        <source>Of target, %</source>
        <translation>Vom Soll, %</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>The job as it stood</source>
        <translation>Der Auftrag zu jenem Stand</translation>
    </message>
    <message>
        <source>The Job as It Stood</source>
        <translation>Der Auftrag zu einem früheren Stand</translation>
    </message>
    <message>
        <source>Export Its Tables…</source>
        <translation>Seine Tabellen exportieren…</translation>
    </message>
    <message>
        <source>Writes the job as it stood then as tables</source>
        <translation>Schreibt den damaligen Stand als Tabellen</translation>
    </message>
    <message>
        <source>Round %1, %2 of %3 terminals read.</source>
        <translation>Runde %1, %2 von %3 Verbrauchern abgelesen.</translation>
    </message>
    <message>
        <source>No round was open yet.</source>
        <translation>Es war noch keine Runde offen.</translation>
    </message>
    <message>
        <source>After record %1: %2</source>
        <translation>Nach Eintrag %1: %2</translation>
    </message>
    <message>
        <source>Folder for the Tables</source>
        <translation>Ordner für die Tabellen</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Geschrieben nach %1</translation>
    </message>
    <message>
        <source>Stored, newest first</source>
        <translation>Gespeichert, Neuestes zuerst</translation>
    </message>
    <message>
        <source>Computer</source>
        <translation>Rechner</translation>
    </message>
</context>
<context>
    <name>ww::ui::KeyList</name>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Store the reading and go to the next valve</source>
        <translation>Ablesung speichern und zum nächsten Ventil</translation>
    </message>
    <message>
        <source>digits, Enter</source>
        <translation>Ziffern, Enter</translation>
    </message>
    <message>
        <source>Walk past a valve</source>
        <translation>An einem Ventil vorbeigehen</translation>
    </message>
    <message>
        <source>Enter alone</source>
        <translation>nur Enter</translation>
    </message>
    <message>
        <source>Record that a valve cannot be read</source>
        <translation>Vermerken, dass ein Ventil nicht ablesbar ist</translation>
    </message>
    <message>
        <source>x, Enter</source>
        <translation>x, Enter</translation>
    </message>
    <message>
        <source>Change this valve&apos;s setting</source>
        <translation>Einstellung dieses Ventils ändern</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>Go back one valve</source>
        <translation>Ein Ventil zurück</translation>
    </message>
    <message>
        <source>Shift+Enter</source>
        <translation>Umschalt+Enter</translation>
    </message>
    <message>
        <source>Store and move up or down</source>
        <translation>Speichern und auf oder ab</translation>
    </message>
    <message>
        <source>Up, Down</source>
        <translation>Auf, Ab</translation>
    </message>
    <message>
        <source>Take back what is being typed</source>
        <translation>Getipptes zurücknehmen</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Type a unit behind the digits</source>
        <translation>Einheit hinter die Ziffern tippen</translation>
    </message>
    <message>
        <source>k kPa, m mbar, p psi, i inH₂O, f ftH₂O</source>
        <translation>k kPa, m mbar, p psi, i inH₂O, f ftH₂O</translation>
    </message>
    <message>
        <source>Leave the grid</source>
        <translation>Tabelle verlassen</translation>
    </message>
    <message>
        <source>Ctrl+Tab, F6</source>
        <translation>Strg+Tab, F6</translation>
    </message>
    <message>
        <source>In Adjust: log a try at the setting shown</source>
        <translation>In Einstellen: Versuch bei gezeigter Einstellung</translation>
    </message>
    <message>
        <source>In Adjust: follow the hand by one step, by one turn</source>
        <translation>In Einstellen: dem Griff um einen Schritt, eine Umdrehung folgen</translation>
    </message>
    <message>
        <source>Up, Down; PgUp, PgDn</source>
        <translation>Auf, Ab; Bild auf, Bild ab</translation>
    </message>
    <message>
        <source>In Adjust: take an advised setting from the table</source>
        <translation>In Einstellen: empfohlene Einstellung aus der Tabelle</translation>
    </message>
    <message>
        <source>Enter in the table</source>
        <translation>Enter in der Tabelle</translation>
    </message>
    <message>
        <source>Command</source>
        <translation>Befehl</translation>
    </message>
    <message>
        <source>Commands and their keys</source>
        <translation>Befehle und ihre Tasten</translation>
    </message>
    <message>
        <source>In Instruments and People: remove the row in hand</source>
        <translation>In Messgeräten und Personen: die Zeile entfernen</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>In the diagram of System: follow the pipe, open the valve</source>
        <translation>Im Strangschema der Anlage: dem Rohr folgen, das Ventil öffnen</translation>
    </message>
    <message>
        <source>arrows, Enter</source>
        <translation>Pfeile, Enter</translation>
    </message>
    <message>
        <source>In the diagram of System: larger, smaller, the whole loop</source>
        <translation>Im Strangschema der Anlage: größer, kleiner, der ganze Kreislauf</translation>
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
        <translation>Leiter der Δp</translation>
    </message>
</context>
<context>
    <name>ww::ui::MainWindow</name>
    <message>
        <source>Read-only</source>
        <translation>Nur lesen</translation>
    </message>
    <message>
        <source>Keys of this place</source>
        <translation>Tasten dieses Bereichs</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Auftrag</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Anlage</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Adjust</source>
        <translation>Einstellen</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source> — Round %1</source>
        <translation> — Runde %1</translation>
    </message>
    <message>
        <source>Read-only. %1</source>
        <translation>Nur lesen. %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>&amp;Hold Here, Go to Next Valve</source>
        <translation>Hier halten, zum nächsten V&amp;entil</translation>
    </message>
    <message>
        <source>%1 (missing)</source>
        <translation>%1 (fehlt)</translation>
    </message>
    <message>
        <source>Remove from List</source>
        <translation>Aus der Liste entfernen</translation>
    </message>
    <message>
        <source>Make a New Job</source>
        <translation>Neuen Auftrag anlegen</translation>
    </message>
    <message>
        <source>/new_job.wwj</source>
        <translation>/neuer_auftrag.wwj</translation>
    </message>
    <message>
        <source>Folder with the Tables of the Job</source>
        <translation>Ordner mit den Tabellen des Auftrags</translation>
    </message>
    <message>
        <source>Write the New Workbook</source>
        <translation>Neue Arbeitsmappe schreiben</translation>
    </message>
    <message>
        <source>Folder for the Tables</source>
        <translation>Ordner für die Tabellen</translation>
    </message>
    <message>
        <source>%1 copy.wwj</source>
        <translation>%1 Kopie.wwj</translation>
    </message>
    <message>
        <source>Save a Copy</source>
        <translation>Kopie speichern</translation>
    </message>
    <message>
        <source>Save a Copy Elsewhere and Go On There</source>
        <translation>Kopie anderswo speichern und dort weiterarbeiten</translation>
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

Arbeitsmappe für das Einregulieren geschlossener Wasserkreisläufe.

Freie Software unter der GNU General Public License, Version 3 oder neuer. Ohne Gewähr: Prüfen Sie Ergebnisse, bevor Sie danach handeln.</translation>
    </message>
    <message>
        <source>As the &amp;System</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>Make a Practice Job</source>
        <translation>Übungsauftrag anlegen</translation>
    </message>
    <message>
        <source>/practice_%1.wwj</source>
        <translation>/uebung_%1.wwj</translation>
    </message>
    <message>
        <source>A&amp;djust This Valve</source>
        <translation>Dieses Ventil &amp;einstellen</translation>
    </message>
    <message>
        <source>Save a Checkpoint</source>
        <translation>Sicherungspunkt speichern</translation>
    </message>
    <message>
        <source>Everything is stored already. A checkpoint gives this state of the job a name.</source>
        <translation>Alles ist schon gespeichert. Ein Sicherungspunkt gibt diesem Stand des Auftrags einen Namen.</translation>
    </message>
    <message>
        <source>state at %1</source>
        <translation>Stand um %1</translation>
    </message>
    <message>
        <source>New Job from a Sample</source>
        <translation>Neuer Auftrag aus Beispiel</translation>
    </message>
    <message>
        <source>Export a Spreadsheet</source>
        <translation>Tabellenkalkulation exportieren</translation>
    </message>
    <message>
        <source>Spreadsheets (*.xlsx)</source>
        <translation>Tabellenkalkulationen (*.xlsx)</translation>
    </message>
    <message>
        <source>Export as JSON</source>
        <translation>Als JSON exportieren</translation>
    </message>
    <message>
        <source>JSON documents (*.json)</source>
        <translation>JSON-Dokumente (*.json)</translation>
    </message>
    <message>
        <source>Write the Walk Sheet</source>
        <translation>Begehungsblatt schreiben</translation>
    </message>
    <message>
        <source>Paper (*.pdf);;Table to fill in (*.csv)</source>
        <translation>Papier (*.pdf);;Tabelle zum Ausfüllen (*.csv)</translation>
    </message>
    <message>
        <source>Import a Table</source>
        <translation>Eine Tabelle importieren</translation>
    </message>
    <message>
        <source>Tables (*.csv *.xlsx *.xlsm)</source>
        <translation>Tabellen (*.csv *.xlsx *.xlsm)</translation>
    </message>
    <message>
        <source>Walk sheet</source>
        <translation>Begehungsblatt</translation>
    </message>
    <message>
        <source>Print the Walk Sheet</source>
        <translation>Begehungsblatt drucken</translation>
    </message>
    <message>
        <source>Work in a Copy and Merge Later…</source>
        <translation>In einer Kopie arbeiten, später zusammenführen…</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>%1 wird geschrieben</translation>
    </message>
    <message>
        <source>Take Advised Sett&amp;ing</source>
        <translation>Empf&amp;ohlene Einstellung nehmen</translation>
    </message>
    <message>
        <source>Ctrl+Alt+1 to 0, Ctrl+Alt+Z pages</source>
        <translation>Strg+Alt+1 bis 0, Strg+Alt+Z Seiten</translation>
    </message>
    <message>
        <source>Ctrl+T numbers as a table</source>
        <translation>Strg+T Zahlen als Tabelle</translation>
    </message>
    <message>
        <source>Ctrl+Alt+C comment on the cell</source>
        <translation>Strg+Alt+C Kommentar zur Zelle</translation>
    </message>
    <message>
        <source>Ctrl+H its history</source>
        <translation>Strg+H ihr Verlauf</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Down next open item</source>
        <translation>Strg+Umschalt+Ab nächster offener Punkt</translation>
    </message>
    <message>
        <source>Ctrl+P export as PDF</source>
        <translation>Strg+P als PDF exportieren</translation>
    </message>
    <message>
        <source>Ctrl+O opens a workbook</source>
        <translation>Strg+O öffnet eine Arbeitsmappe</translation>
    </message>
    <message>
        <source>Ctrl+N new job</source>
        <translation>Strg+N neuer Auftrag</translation>
    </message>
    <message>
        <source>Ctrl+Shift+P practice</source>
        <translation>Strg+Umschalt+P üben</translation>
    </message>
    <message>
        <source>F1 handbook</source>
        <translation>F1 Handbuch</translation>
    </message>
    <message>
        <source>Ctrl+L takes the meter&apos;s value</source>
        <translation>Strg+L nimmt den Wert des Messgeräts</translation>
    </message>
    <message>
        <source>Ctrl+Z undo %1</source>
        <translation>Strg+Z rückgängig: %1</translation>
    </message>
    <message>
        <source>Take Advised Sett&amp;ing (the valve holds)</source>
        <translation>Empf&amp;ohlene Einstellung nehmen (das Ventil hält)</translation>
    </message>
    <message>
        <source>Del removes the row</source>
        <translation>Entf entfernt die Zeile</translation>
    </message>
    <message>
        <source>Up, Down places</source>
        <translation>Auf, Ab Bereiche</translation>
    </message>
    <message>
        <source>Ctrl+Z undo</source>
        <translation>Strg+Z rückgängig</translation>
    </message>
    <message>
        <source>Move Valve U&amp;p the Working Order</source>
        <translation>Ventil in der Arbeitsfolge &amp;vorrücken</translation>
    </message>
    <message>
        <source>Move Branch U&amp;p the Route</source>
        <translation>Zwei&amp;g auf dem Weg vorrücken</translation>
    </message>
    <message>
        <source>Move Valve Do&amp;wn the Working Order</source>
        <translation>Ventil in der Arbeitsfolge &amp;zurücksetzen</translation>
    </message>
    <message>
        <source>Move Branch Do&amp;wn the Route</source>
        <translation>Zweig auf dem Weg z&amp;urücksetzen</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Save Checkpoint</source>
        <translation>Sicherungspunkt &amp;speichern</translation>
    </message>
    <message>
        <source>Invented jobs, each with rounds that were read.</source>
        <translation>Erfundene Aufträge, jeder mit abgelesenen Runden.</translation>
    </message>
    <message>
        <source>&amp;Sample</source>
        <translation>&amp;Beispiel</translation>
    </message>
    <message>
        <source>&amp;Make Job…</source>
        <translation>&amp;Auftrag anlegen…</translation>
    </message>
    <message numerus="yes">
        <source>%n open comment(s)</source>
        <translation>
            <numerusform>%n offener Kommentar</numerusform>
            <numerusform>%n offene Kommentare</numerusform>
        </translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>%1 wird gelesen</translation>
    </message>
</context>
<context>
    <name>ww::ui::MarkShape</name>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
</context>
<context>
    <name>ww::ui::MatchPanel</name>
    <message>
        <source>choose a unit</source>
        <translation>Einheit wählen</translation>
    </message>
    <message>
        <source>choose a column</source>
        <translation>Spalte wählen</translation>
    </message>
    <message>
        <source>not in this table</source>
        <translation>nicht in dieser Tabelle</translation>
    </message>
    <message>
        <source>Column for %1</source>
        <translation>Spalte für %1</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Einheit von %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::MergeDialog</name>
    <message>
        <source>Merge Another Laptop&apos;s Work</source>
        <translation>Arbeit eines anderen Laptops übernehmen</translation>
    </message>
    <message>
        <source>“%1”, last changed by %2 on %3.</source>
        <translation>„%1“, zuletzt geändert von %2 auf %3.</translation>
    </message>
    <message numerus="yes">
        <source>%n action(s) will be taken over as one step for undo.</source>
        <translation>
            <numerusform>%n Handlung wird übernommen, rückgängig in einem Schritt.</numerusform>
            <numerusform>%n Handlungen werden übernommen, rückgängig in einem Schritt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) only there will be added.</source>
        <translation>
            <numerusform>%n Ablesung, die nur dort ist, wird hinzugefügt.</numerusform>
            <numerusform>%n Ablesungen, die nur dort sind, werden hinzugefügt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n place(s) read alike on both: nothing to do.</source>
        <translation>
            <numerusform>%n Stelle lautet auf beiden gleich: nichts zu tun.</numerusform>
            <numerusform>%n Stellen lauten auf beiden gleich: nichts zu tun.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) differ: pick now or later, none is picked yet.</source>
        <translation>
            <numerusform>%n Wert weicht ab: jetzt oder später wählen, noch ist keiner gewählt.</numerusform>
            <numerusform>%n Werte weichen ab: jetzt oder später wählen, noch ist keiner gewählt.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Merge</source>
        <translation>&amp;Zusammenführen</translation>
    </message>
    <message>
        <source>Decide What Merging Left Open</source>
        <translation>Entscheiden, was offen blieb</translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) differ between the laptops. What you do not pick stays open.</source>
        <translation>
            <numerusform>%n Wert weicht zwischen den Laptops ab. Was Sie nicht wählen, bleibt offen.</numerusform>
            <numerusform>%n Werte weichen zwischen den Laptops ab. Was Sie nicht wählen, bleibt offen.</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Store Choices</source>
        <translation>Wahl &amp;speichern</translation>
    </message>
    <message>
        <source>What merging does</source>
        <translation>Was das Zusammenführen tut</translation>
    </message>
    <message>
        <source>Values that differ</source>
        <translation>Abweichende Werte</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>This laptop</source>
        <translation>Dieser Laptop</translation>
    </message>
    <message>
        <source>Other laptop</source>
        <translation>Anderer Laptop</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Beide</translation>
    </message>
    <message>
        <source>The value that is not picked stays in the history.</source>
        <translation>Der nicht gewählte Wert bleibt im Verlauf.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>this laptop, %1</source>
        <translation>dieser Laptop, %1</translation>
    </message>
    <message>
        <source>other laptop, %1</source>
        <translation>anderer Laptop, %1</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
</context>
<context>
    <name>ww::ui::NewPracticeDialog</name>
    <message>
        <source>New Practice Job</source>
        <translation>Neuer Übungsauftrag</translation>
    </message>
    <message>
        <source>Name of the job</source>
        <translation>Name des Auftrags</translation>
    </message>
    <message>
        <source>Difficulty</source>
        <translation>Schwierigkeit</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was falsch ist</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Difficulty</source>
        <translation>&amp;Schwierigkeit</translation>
    </message>
    <message>
        <source>&amp;Make Job…</source>
        <translation>&amp;Auftrag anlegen…</translation>
    </message>
    <message>
        <source>A simulated building answers every reading. It is no real plant: nothing of it may be reported as a measurement.</source>
        <translation>Ein simuliertes Gebäude antwortet auf jede Ablesung. Es ist keine echte Anlage: Nichts davon darf als Messung berichtet werden.</translation>
    </message>
    <message>
        <source>Building number</source>
        <translation>Gebäudenummer</translation>
    </message>
    <message>
        <source>&amp;Building number</source>
        <translation>&amp;Gebäudenummer</translation>
    </message>
</context>
<context>
    <name>ww::ui::NotePanel</name>
    <message>
        <source>Photos of the valve</source>
        <translation>Fotos des Ventils</translation>
    </message>
    <message>
        <source>Go Back to Walk</source>
        <translation>Zurück zum Rundgang</translation>
    </message>
    <message>
        <source>Note to this &amp;reading</source>
        <translation>Notiz zu dieser &amp;Ablesung</translation>
    </message>
    <message>
        <source>&amp;Notes on the valve</source>
        <translation>&amp;Notizen zum Ventil</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Note to this reading</source>
        <translation>Notiz zu dieser Ablesung</translation>
    </message>
    <message>
        <source>Notes on the valve</source>
        <translation>Notizen zum Ventil</translation>
    </message>
    <message>
        <source>Ctrl+Enter stores and goes back</source>
        <translation>Strg+Enter speichert und kehrt zurück</translation>
    </message>
    <message>
        <source>Notes and photos of %1</source>
        <translation>Notizen und Fotos von %1</translation>
    </message>
    <message>
        <source>No valve in hand</source>
        <translation>Kein Ventil in der Hand</translation>
    </message>
</context>
<context>
    <name>ww::ui::NoticeLine</name>
    <message>
        <source>Notice</source>
        <translation>Meldung</translation>
    </message>
</context>
<context>
    <name>ww::ui::NumberPad</name>
    <message>
        <source>Number pad</source>
        <translation>Ziffernblock</translation>
    </message>
    <message>
        <source>Delete last digit</source>
        <translation>Letzte Ziffer löschen</translation>
    </message>
    <message>
        <source>set %1</source>
        <comment>a step of the setting; short</comment>
        <translation>Einst. %1</translation>
    </message>
    <message>
        <source>Setting one step down</source>
        <translation>Einstellung einen Schritt ab</translation>
    </message>
    <message>
        <source>Setting one step up</source>
        <translation>Einstellung einen Schritt auf</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Cannot be read</source>
        <translation>Nicht ablesbar</translation>
    </message>
    <message>
        <source>Store and go on</source>
        <translation>Speichern und weiter</translation>
    </message>
    <message>
        <source>Digit %1</source>
        <translation>Ziffer %1</translation>
    </message>
    <message>
        <source>note</source>
        <comment>a key of the number pad; short</comment>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Write a note</source>
        <translation>Eine Notiz schreiben</translation>
    </message>
</context>
<context>
    <name>ww::ui::OpenRoundPanel</name>
    <message>
        <source>&amp;Kind of round</source>
        <translation>&amp;Art der Runde</translation>
    </message>
    <message>
        <source>Kind of round</source>
        <translation>Art der Runde</translation>
    </message>
    <message>
        <source>&amp;Meter</source>
        <translation>&amp;Messgerät</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>&amp;Person</source>
        <translation>&amp;Person</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Who lets the survey begin, and why</source>
        <translation>Wer die Aufnahme beginnen lässt, und warum</translation>
    </message>
    <message>
        <source>name: reason</source>
        <translation>Name: Grund</translation>
    </message>
    <message>
        <source>Open round %1</source>
        <translation>Runde %1 öffnen</translation>
    </message>
    <message>
        <source>Open Round %1</source>
        <translation>Runde %1 öffnen</translation>
    </message>
    <message>
        <source>, was due %1</source>
        <translation>, fällig seit %1</translation>
    </message>
    <message>
        <source>, calibrated to %1</source>
        <translation>, kalibriert bis %1</translation>
    </message>
    <message numerus="yes">
        <source>%n mandatory line(s) of readiness are open, the first: %1. A supervisor may let the survey begin and say why.</source>
        <translation>
            <numerusform>%n Pflichtzeile der Bereitschaft ist offen, die erste: %1. Die Leitung kann die Aufnahme beginnen lassen und den Grund nennen.</numerusform>
            <numerusform>%n Pflichtzeilen der Bereitschaft sind offen, die erste: %1. Die Leitung kann die Aufnahme beginnen lassen und den Grund nennen.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ww::ui::PagePreview</name>
    <message>
        <source>Page %1: %2</source>
        <translation>Seite %1: %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::PeopleModel</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Zertifikat</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>Person %1</source>
        <translation>Person %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::PhotoList</name>
    <message>
        <source>Attach Photo…</source>
        <translation>Foto anhängen…</translation>
    </message>
    <message>
        <source>Remove Photo</source>
        <translation>Foto entfernen</translation>
    </message>
    <message>
        <source>Attach a Photo</source>
        <translation>Foto anhängen</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Bilder (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>ww::ui::PreferencesDialog</name>
    <message>
        <source>Use &amp;large targets</source>
        <translation>&amp;Große Schaltflächen</translation>
    </message>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Display</source>
        <translation>Anzeige</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Textgröße</translation>
    </message>
    <message>
        <source>&amp;Display</source>
        <translation>&amp;Anzeige</translation>
    </message>
    <message>
        <source>&amp;Text size</source>
        <translation>&amp;Textgröße</translation>
    </message>
    <message>
        <source>Units, tolerances and the route are facts of the job and stay as they are.</source>
        <translation>Einheiten, Toleranzen und der Weg gehören zum Auftrag und bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Reset Settings</source>
        <translation>Einstellungen zurücksetzen</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>Display, text size, language, targets, window and the list of recent files become as they were at first</source>
        <translation>Anzeige, Textgröße, Sprache, Schaltflächen, Fenster und die Liste zuletzt geöffneter Dateien werden wie am Anfang</translation>
    </message>
</context>
<context>
    <name>ww::ui::PressurePage</name>
    <message>
        <source>Pump &amp;off too</source>
        <translation>&amp;Pumpe aus dazu</translation>
    </message>
    <message>
        <source>Valve on the other &amp;side too</source>
        <translation>Ventil auf anderer &amp;Seite dazu</translation>
    </message>
    <message>
        <source>Circuit</source>
        <translation>Kreis</translation>
    </message>
    <message>
        <source>Cir&amp;cuit</source>
        <translation>&amp;Kreis</translation>
    </message>
    <message>
        <source>%1, index circuit</source>
        <translation>%1, Schlechtpunktkreis</translation>
    </message>
    <message>
        <source>The job has no circuits yet; add branches in System.</source>
        <translation>Der Auftrag hat noch keine Kreise; tragen Sie Zweige in Anlage ein.</translation>
    </message>
</context>
<context>
    <name>ww::ui::PumpChooser</name>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
</context>
<context>
    <name>ww::ui::PumpPlace</name>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>Pages of the pump</source>
        <translation>Seiten der Pumpe</translation>
    </message>
    <message>
        <source>Curves</source>
        <translation>Kennlinien</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Read and Set</source>
        <translation>Ablesen-Einstellen</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Energy Code</source>
        <translation>Vorschrift</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Armaturen</translation>
    </message>
    <message>
        <source>Set-Point</source>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>Pump Data</source>
        <translation>Pumpendaten</translation>
    </message>
    <message>
        <source>Zones</source>
        <translation>Zonen</translation>
    </message>
    <message>
        <source>Page of the pump</source>
        <translation>Seite der Pumpe</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Keine Arbeitsmappe offen. Öffnen Sie eine (Strg+O) oder legen Sie einen Auftrag an (Strg+N).</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReadinessPage</name>
    <message>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Must</source>
        <translation>Pflicht</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Zuständig</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Take Usual List</source>
        <translation>Übliche Liste nehmen</translation>
    </message>
    <message>
        <source>Add Line</source>
        <translation>Zeile hinzufügen</translation>
    </message>
    <message>
        <source>Remove Line</source>
        <translation>Zeile entfernen</translation>
    </message>
    <message>
        <source>Readiness list</source>
        <translation>Liste der Bereitschaft</translation>
    </message>
    <message>
        <source>New line</source>
        <translation>Neue Zeile</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>State: open, done or does not apply. No survey begins while a mandatory line is open.</source>
        <translation>Stand: offen, erledigt oder entfällt. Solange eine Pflichtzeile offen ist, beginnt keine Aufnahme.</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReadyList</name>
    <message>
        <source>To Job</source>
        <translation>Zum Auftrag</translation>
    </message>
    <message>
        <source>To System</source>
        <translation>Zur Anlage</translation>
    </message>
    <message>
        <source>To Walk</source>
        <translation>Zum Rundgang</translation>
    </message>
    <message>
        <source>To Pump</source>
        <translation>Zur Pumpe</translation>
    </message>
    <message>
        <source>To Review</source>
        <translation>Zur Prüfung</translation>
    </message>
    <message>
        <source>Decide Conflicts…</source>
        <translation>Konflikte entscheiden…</translation>
    </message>
    <message>
        <source>List Deficiency</source>
        <translation>Mangel aufnehmen</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>%1 zeigen</translation>
    </message>
    <message>
        <source>give the reason, Enter</source>
        <translation>Grund angeben, Enter</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Reason: %1</source>
        <translation>Grund: %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReportPlace</name>
    <message>
        <source>Pages of the report</source>
        <translation>Seiten des Berichts</translation>
    </message>
    <message>
        <source>Page as printed</source>
        <translation>Seite wie gedruckt</translation>
    </message>
    <message>
        <source>Ready to sign?</source>
        <translation>Signierbereit?</translation>
    </message>
    <message>
        <source>&amp;Export Unsigned Draft…</source>
        <translation>&amp;Unsignierten Entwurf exportieren…</translation>
    </message>
    <message>
        <source>Verif&amp;y a Report…</source>
        <translation>Bericht &amp;prüfen…</translation>
    </message>
    <message>
        <source>Readiness and signing</source>
        <translation>Bereitschaft und Signatur</translation>
    </message>
    <message>
        <source>The loop is being learned; the pages follow.</source>
        <translation>Der Kreislauf wird gelernt; die Seiten folgen.</translation>
    </message>
    <message>
        <source>Page %1</source>
        <translation>Seite %1</translation>
    </message>
    <message>
        <source>Ready to sign</source>
        <translation>Bereit zum Signieren</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
    <message>
        <source>Export Unsigned Draft</source>
        <translation>Unsignierten Entwurf exportieren</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Verify a Report</source>
        <translation>Bericht prüfen</translation>
    </message>
    <message>
        <source>Balance report</source>
        <translation>Einregulierungsbericht</translation>
    </message>
    <message>
        <source>The loop is being learned; the file is written when that is done.</source>
        <translation>Der Kreislauf wird gelernt; danach wird die Datei geschrieben.</translation>
    </message>
    <message>
        <source>Stopped; no file was written.</source>
        <translation>Angehalten; es wurde keine Datei geschrieben.</translation>
    </message>
    <message>
        <source>&amp;Lay Out the Pages</source>
        <translation>Seiten &amp;setzen</translation>
    </message>
    <message>
        <source>Stop &amp;Laying Out</source>
        <translation>Setzen &amp;anhalten</translation>
    </message>
    <message>
        <source>Laying out the pages was stopped.</source>
        <translation>Das Setzen der Seiten wurde angehalten.</translation>
    </message>
    <message>
        <source>The report is being computed; the pages follow.</source>
        <translation>Der Bericht wird berechnet; die Seiten folgen.</translation>
    </message>
    <message>
        <source>The pages are being laid out; so far: %1</source>
        <translation>Die Seiten werden gesetzt; bis jetzt: %1</translation>
    </message>
    <message>
        <source>Let the pages be laid out, then sign.</source>
        <translation>Lassen Sie die Seiten setzen, dann signieren Sie.</translation>
    </message>
    <message>
        <source>The pages are being laid out; sign when that is done.</source>
        <translation>Die Seiten werden gesetzt; signieren Sie, wenn das fertig ist.</translation>
    </message>
    <message>
        <source>No page is laid out yet.</source>
        <translation>Noch ist keine Seite gesetzt.</translation>
    </message>
    <message>
        <source>The pages follow.</source>
        <translation>Die Seiten folgen.</translation>
    </message>
    <message>
        <source>The loop is being learned; sign when that is done.</source>
        <translation>Der Kreislauf wird noch gelernt; signieren Sie, wenn das fertig ist.</translation>
    </message>
    <message>
        <source>The pages are being laid out; the file is written when that is done.</source>
        <translation>Die Seiten werden gesetzt; die Datei wird danach geschrieben.</translation>
    </message>
    <message>
        <source>Round of the report</source>
        <translation>Runde des Berichts</translation>
    </message>
    <message>
        <source>Round %1: draft</source>
        <translation>Runde %1: Entwurf</translation>
    </message>
    <message>
        <source>Round %1: %2</source>
        <translation>Runde %1: %2</translation>
    </message>
    <message>
        <source>Choose the newest round above the pages to sign its report.</source>
        <translation>Wählen Sie über den Seiten die neueste Runde, um ihren Bericht zu signieren.</translation>
    </message>
    <message>
        <source>Not ready to sign yet</source>
        <translation>Noch nicht bereit zum Signieren</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Was hier fehlt</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Keine Arbeitsmappe offen. Öffnen Sie eine (Strg+O) oder legen Sie einen Auftrag an (Strg+N).</translation>
    </message>
    <message>
        <source>Writes these pages as a PDF file; every page says that it is not signed</source>
        <translation>Schreibt diese Seiten als PDF-Datei; jede Seite sagt, dass sie nicht signiert ist</translation>
    </message>
</context>
<context>
    <name>ww::ui::ResultsPage</name>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>The job has no pump yet; add one on the page Pump Data.</source>
        <translation>Der Auftrag hat noch keine Pumpe; fügen Sie auf der Seite Pumpendaten eine hinzu.</translation>
    </message>
</context>
<context>
    <name>ww::ui::ReviewPlace</name>
    <message>
        <source>Round</source>
        <translation>Runde</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>On share</source>
        <translation>Im Anteil</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>Changed &amp;only</source>
        <translation>&amp;Nur Geändertes</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>DP</source>
        <translation>Δp</translation>
    </message>
    <message>
        <source>Of target, %</source>
        <translation>Vom Soll, %</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Who, when</source>
        <translation>Wer, wann</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Two rounds compared</source>
        <translation>Zwei Runden im Vergleich</translation>
    </message>
    <message>
        <source>Earlier round</source>
        <translation>Frühere Runde</translation>
    </message>
    <message>
        <source>Later round</source>
        <translation>Spätere Runde</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Vergleiche</translation>
    </message>
    <message>
        <source>&amp;with</source>
        <translation>&amp;mit</translation>
    </message>
    <message>
        <source>Spread and share by round</source>
        <translation>Streuung und Anteil je Runde</translation>
    </message>
    <message>
        <source>Nothing to review yet. Read and close a round on the place Walk (Alt+3).</source>
        <translation>Noch nichts zu prüfen. Lesen und schließen Sie eine Runde im Rundgang (Alt+3).</translation>
    </message>
    <message>
        <source>Round %1, %2</source>
        <translation>Runde %1, %2</translation>
    </message>
    <message>
        <source>Spread, %: %1.   On share: %2 of %3.</source>
        <translation>Streuung, %: %1.   Im Anteil: %2 von %3.</translation>
    </message>
    <message>
        <source>The same round twice: nothing to compare</source>
        <translation>Zweimal dieselbe Runde: nichts zu vergleichen</translation>
    </message>
    <message>
        <source>Order of the comparison</source>
        <translation>Reihenfolge des Vergleichs</translation>
    </message>
    <message>
        <source>Along the route</source>
        <translation>Entlang des Weges</translation>
    </message>
    <message>
        <source>Farthest from target first</source>
        <translation>Am weitesten vom Soll zuerst</translation>
    </message>
    <message>
        <source>Largest change first</source>
        <translation>Größte Änderung zuerst</translation>
    </message>
    <message>
        <source>&amp;Order</source>
        <translation>&amp;Reihenfolge</translation>
    </message>
    <message>
        <source>State, walked</source>
        <translation>Stand, abgelesen</translation>
    </message>
    <message>
        <source>Pages of the review</source>
        <translation>Seiten der Prüfung</translation>
    </message>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Convergence</source>
        <translation>Konvergenz</translation>
    </message>
    <message>
        <source>DP, %1</source>
        <translation>Δp, %1</translation>
    </message>
    <message>
        <source>Judging the rounds…</source>
        <translation>Die Runden werden beurteilt…</translation>
    </message>
    <message>
        <source>%1 read</source>
        <translation>%1 abgelesen</translation>
    </message>
    <message>
        <source>%1 of %2 readings changed</source>
        <translation>%1 von %2 Ablesungen geändert</translation>
    </message>
    <message>
        <source>How the round was read</source>
        <translation>Wie die Runde abgelesen wurde</translation>
    </message>
    <message>
        <source>Round %1</source>
        <translation>Runde %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>meter %1</source>
        <translation>Messgerät %1</translation>
    </message>
    <message numerus="yes">
        <source>%n doubtful</source>
        <translation>
            <numerusform>%n fraglich</numerusform>
            <numerusform>%n fraglich</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n corrected</source>
        <translation>
            <numerusform>%n berichtigt</numerusform>
            <numerusform>%n berichtigt</numerusform>
        </translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Keine Arbeitsmappe offen. Öffnen Sie eine (Strg+O) oder legen Sie einen Auftrag an (Strg+N).</translation>
    </message>
    <message>
        <source>The first round: all its rows</source>
        <translation>Die erste Runde: alle ihre Zeilen</translation>
    </message>
    <message>
        <source>Rd %1: %2</source>
        <translation>Rd. %1: %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::SectionView</name>
    <message>
        <source>%1, statements</source>
        <translation>%1, Aussagen</translation>
    </message>
    <message>
        <source>%1, findings</source>
        <translation>%1, Befunde</translation>
    </message>
</context>
<context>
    <name>ww::ui::SetPointPage</name>
    <message>
        <source>Set-point %1</source>
        <translation>Sollwert %1</translation>
    </message>
    <message>
        <source>Add Set-Point</source>
        <translation>Sollwert hinzufügen</translation>
    </message>
    <message>
        <source>Remove Set-Point</source>
        <translation>Sollwert entfernen</translation>
    </message>
    <message>
        <source>Dp set-points</source>
        <translation>Δp-Sollwerte</translation>
    </message>
    <message>
        <source>Found by: %1. Reset law: %2. Type a word or its first letters.</source>
        <translation>Gefunden durch: %1. Gesetz: %2. Tippen Sie ein Wort oder seine ersten Buchstaben.</translation>
    </message>
    <message>
        <source>Sensor</source>
        <translation>Fühler</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>Place in the loop</source>
        <translation>Ort im Kreislauf</translation>
    </message>
    <message>
        <source>Found by</source>
        <translation>Gefunden durch</translation>
    </message>
    <message>
        <source>Zero, pumps off</source>
        <translation>Null, Pumpen aus</translation>
    </message>
    <message>
        <source>Dp set-point</source>
        <translation>Δp-Sollwert</translation>
    </message>
    <message>
        <source>Flow there</source>
        <translation>Durchfluss dort</translation>
    </message>
    <message>
        <source>Speed there</source>
        <translation>Drehzahl dort</translation>
    </message>
    <message>
        <source>Reset law</source>
        <translation>Führungsgesetz</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Low limit</source>
        <translation>Untere Grenze</translation>
    </message>
    <message>
        <source>High limit</source>
        <translation>Obere Grenze</translation>
    </message>
    <message>
        <source>Set by</source>
        <translation>Gesetzt von</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>ww::ui::SideList</name>
    <message>
        <source>Places</source>
        <translation>Bereiche</translation>
    </message>
    <message>
        <source>Alt and the number opens a place</source>
        <translation>Alt und die Nummer öffnet einen Bereich</translation>
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
        <translation>zurückgezogen: %1</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>gilt</translation>
    </message>
    <message>
        <source>superseded, the workbook was changed since</source>
        <translation>überholt, die Arbeitsmappe wurde seither geändert</translation>
    </message>
    <message>
        <source>Signed versions: none</source>
        <translation>Signierte Fassungen: keine</translation>
    </message>
    <message>
        <source>Withdraw Report</source>
        <translation>Bericht zurückziehen</translation>
    </message>
    <message>
        <source>Signed versions</source>
        <translation>Signierte Fassungen</translation>
    </message>
    <message>
        <source>reason, to withdraw</source>
        <translation>Grund, um zurückzuziehen</translation>
    </message>
    <message>
        <source>Reason for withdrawing the report</source>
        <translation>Grund für das Zurückziehen des Berichts</translation>
    </message>
    <message>
        <source>Revision %1, %2: %3, %4
%5 — %6</source>
        <translation>Revision %1, %2: %3, %4
%5 — %6</translation>
    </message>
    <message>
        <source> (self-made certificate)</source>
        <translation> (selbst erstelltes Zertifikat)</translation>
    </message>
    <message>
        <source>Withdrawing needs a reason.</source>
        <translation>Zurückziehen braucht einen Grund.</translation>
    </message>
    <message>
        <source>Revision %1 is signed by %2; nothing was changed since</source>
        <translation>Revision %1 ist von %2 signiert; seither wurde nichts geändert</translation>
    </message>
</context>
<context>
    <name>ww::ui::SigningPanel</name>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Make a Certificate…</source>
        <translation>Zertifikat erstellen…</translation>
    </message>
    <message>
        <source>Sign…</source>
        <translation>Signieren…</translation>
    </message>
    <message>
        <source>key file, .p12</source>
        <translation>Schlüsseldatei, .p12</translation>
    </message>
    <message>
        <source>Key file</source>
        <translation>Schlüsseldatei</translation>
    </message>
    <message>
        <source>Choose the key file</source>
        <translation>Schlüsseldatei wählen</translation>
    </message>
    <message>
        <source>Makes a key whose certificate vouches for itself; nobody else confirms the name</source>
        <translation>Erstellt einen Schlüssel, dessen Zertifikat für sich selbst bürgt; niemand sonst bestätigt den Namen</translation>
    </message>
    <message>
        <source>asked each time, never kept</source>
        <translation>wird jedes Mal erfragt, nie gespeichert</translation>
    </message>
    <message>
        <source>Passphrase of the key</source>
        <translation>Passphrase des Schlüssels</translation>
    </message>
    <message>
        <source>Readings taken by me</source>
        <translation>Ablesungen von mir vorgenommen</translation>
    </message>
    <message>
        <source>Reviewed and accepted by me</source>
        <translation>Von mir geprüft und angenommen</translation>
    </message>
    <message>
        <source>Meaning of my signature</source>
        <translation>Bedeutung meiner Signatur</translation>
    </message>
    <message>
        <source>Technician and supervisor</source>
        <translation>Techniker und Leitung</translation>
    </message>
    <message>
        <source>Technician only</source>
        <translation>Nur Techniker</translation>
    </message>
    <message>
        <source>Who signs this report</source>
        <translation>Wer diesen Bericht signiert</translation>
    </message>
    <message>
        <source>Key</source>
        <translation>Schlüssel</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Bedeutung</translation>
    </message>
    <message>
        <source>Signers</source>
        <translation>Signierende</translation>
    </message>
    <message>
        <source>This workbook can only be read here.</source>
        <translation>Diese Arbeitsmappe kann hier nur gelesen werden.</translation>
    </message>
    <message>
        <source>Choose the Key File</source>
        <translation>Schlüsseldatei wählen</translation>
    </message>
    <message>
        <source>Sign the Report</source>
        <translation>Bericht signieren</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Signed by %1 as %2: %3</source>
        <translation>Signiert von %1 als %2: %3</translation>
    </message>
    <message>
        <source>The certificate is self-made: nobody else vouches for the name.</source>
        <translation>Das Zertifikat ist selbst erstellt: Niemand sonst bürgt für den Namen.</translation>
    </message>
    <message>
        <source>Keep the Key</source>
        <translation>Schlüssel aufbewahren</translation>
    </message>
    <message>
        <source>Next the supervisor signs this file: Reviewed and accepted by me.</source>
        <translation>Als Nächstes signiert die Leitung diese Datei: Von mir geprüft und angenommen.</translation>
    </message>
    <message>
        <source>Next the technician signs this file: Readings taken by me.</source>
        <translation>Als Nächstes signiert der Techniker diese Datei: Ablesungen von mir vorgenommen.</translation>
    </message>
    <message>
        <source>Why nothing can be signed</source>
        <translation>Warum nichts signiert werden kann</translation>
    </message>
    <message>
        <source>Still to do before signing: %1</source>
        <translation>Vor dem Signieren noch zu tun: %1</translation>
    </message>
    <message>
        <source>Keys (*.p12 *.pfx)</source>
        <translation>Schlüssel (*.p12 *.pfx)</translation>
    </message>
</context>
<context>
    <name>ww::ui::SpeedFields</name>
    <message>
        <source>A speed becomes a reading when it is typed, or confirmed with Enter in its field.</source>
        <translation>Eine Drehzahl wird zur Ablesung, wenn sie getippt oder in ihrem Feld mit Enter bestätigt wird.</translation>
    </message>
    <message>
        <source>Speed of %1, %2: as read</source>
        <translation>Drehzahl von %1, %2: abgelesen</translation>
    </message>
    <message>
        <source>Speed of %1, %2: as before</source>
        <translation>Drehzahl von %1, %2: wie zuvor</translation>
    </message>
</context>
<context>
    <name>ww::ui::SystemModel</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Versorgt</translation>
    </message>
    <message>
        <source>Fed by</source>
        <translation>Gespeist von</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Valve</source>
        <translation>Ventil</translation>
    </message>
    <message>
        <source>Setting
found</source>
        <translation>Einstellung
vorgefunden</translation>
    </message>
    <message>
        <source>Fully
open</source>
        <translation>Ganz
offen</translation>
    </message>
    <message>
        <source>Design
flow</source>
        <translation>Auslegungs-
durchfluss</translation>
    </message>
    <message>
        <source>Target
share %</source>
        <translation>Soll-
anteil %</translation>
    </message>
    <message>
        <source>Run
loss</source>
        <translation>Strecken-
verlust</translation>
    </message>
    <message>
        <source>Circuit
loss</source>
        <translation>Kreis-
verlust</translation>
    </message>
    <message>
        <source>Readable
from</source>
        <translation>Ablesbar
ab</translation>
    </message>
</context>
<context>
    <name>ww::ui::SystemPlace</name>
    <message>
        <source>&amp;Try What If</source>
        <translation>&amp;Was wäre wenn</translation>
    </message>
    <message>
        <source>Add Branch</source>
        <translation>Zweig hinzufügen</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Anlage</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Zweige</translation>
    </message>
    <message>
        <source>Type to change a cell; Enter goes down, Tab goes right</source>
        <translation>Tippen ändert eine Zelle; Enter geht nach unten, Tab nach rechts</translation>
    </message>
    <message>
        <source>Sums of the system</source>
        <translation>Summen der Anlage</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Was hier fehlt</translation>
    </message>
    <message>
        <source>Try what if</source>
        <translation>Was wäre wenn probieren</translation>
    </message>
    <message>
        <source>&amp;Find branch</source>
        <translation>Zweig &amp;finden</translation>
    </message>
    <message>
        <source>Find branch</source>
        <translation>Zweig finden</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O) or make a new job (Ctrl+N).</source>
        <translation>Keine Arbeitsmappe offen. Öffnen Sie eine (Strg+O) oder legen Sie einen Auftrag an (Strg+N).</translation>
    </message>
    <message numerus="yes">
        <source>%n terminal(s)</source>
        <translation>
            <numerusform>%n Verbraucher</numerusform>
            <numerusform>%n Verbraucher</numerusform>
        </translation>
    </message>
    <message>
        <source>sum of design &lt;b&gt;%1 %2&lt;/b&gt;</source>
        <translation>Summe der Auslegung &lt;b&gt;%1 %2&lt;/b&gt;</translation>
    </message>
    <message>
        <source>target shares add to &lt;b&gt;%1 %&lt;/b&gt;</source>
        <translation>Sollanteile ergeben &lt;b&gt;%1 %&lt;/b&gt;</translation>
    </message>
    <message numerus="yes">
        <source>%n terminal(s) without a valve table</source>
        <translation>
            <numerusform>%n Verbraucher ohne Ventiltabelle</numerusform>
            <numerusform>%n Verbraucher ohne Ventiltabelle</numerusform>
        </translation>
    </message>
    <message>
        <source>Valve Ta&amp;bles</source>
        <translation>Ventilta&amp;bellen</translation>
    </message>
    <message>
        <source>Show Other Columns</source>
        <translation>Andere Spalten zeigen</translation>
    </message>
    <message>
        <source>arrows follow the pipe</source>
        <translation>Pfeile folgen dem Rohr</translation>
    </message>
    <message>
        <source>Enter opens the valve</source>
        <translation>Enter öffnet das Ventil</translation>
    </message>
    <message>
        <source>+, - zoom</source>
        <translation>+, - Zoom</translation>
    </message>
    <message>
        <source>Enter goes to the branch</source>
        <translation>Enter geht zum Zweig</translation>
    </message>
    <message>
        <source>Ctrl+Shift+A adds a branch</source>
        <translation>Strg+Umschalt+A neuer Zweig</translation>
    </message>
    <message>
        <source>Ctrl+J find</source>
        <translation>Strg+J finden</translation>
    </message>
    <message>
        <source>Ctrl+T diagram</source>
        <translation>Strg+T Schema</translation>
    </message>
    <message>
        <source>Alt+Shift+Up, Alt+Shift+Down along the route</source>
        <translation>Alt+Umschalt+Auf, Alt+Umschalt+Ab auf dem Weg</translation>
    </message>
    <message>
        <source>Ctrl+Alt+F what if</source>
        <translation>Strg+Alt+F was wäre wenn</translation>
    </message>
    <message>
        <source>Show the diagram smaller</source>
        <translation>Strangschema kleiner zeigen</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Einpassen</translation>
    </message>
    <message>
        <source>Fit the whole loop into the diagram</source>
        <translation>Den ganzen Kreislauf in das Strangschema einpassen</translation>
    </message>
    <message>
        <source>Show the diagram larger</source>
        <translation>Strangschema größer zeigen</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Paste Table</source>
        <translation>Tabelle einfügen</translation>
    </message>
    <message>
        <source>Show the first terminal without a valve table</source>
        <translation>Den ersten Verbraucher ohne Ventiltabelle zeigen</translation>
    </message>
    <message>
        <source>Add the first branch (Ctrl+Shift+A), paste a branch table (Ctrl+V), or make the job from tables (Ctrl+Shift+I).</source>
        <translation>Fügen Sie den ersten Zweig hinzu (Strg+Umschalt+A), fügen Sie eine Zweigtabelle ein (Strg+V) oder legen Sie den Auftrag aus Tabellen an (Strg+Umschalt+I).</translation>
    </message>
</context>
<context>
    <name>ww::ui::TestPage</name>
    <message>
        <source>Pumps off</source>
        <translation>Pumpen aus</translation>
    </message>
    <message>
        <source>Shutoff</source>
        <translation>Nullförderung</translation>
    </message>
    <message>
        <source>Full open</source>
        <translation>Ganz offen</translation>
    </message>
    <message>
        <source>Throttled</source>
        <translation>Gedrosselt</translation>
    </message>
    <message>
        <source>Final</source>
        <translation>Schluss</translation>
    </message>
    <message>
        <source>As it runs</source>
        <translation>Wie sie läuft</translation>
    </message>
    <message>
        <source>Pump test sheet</source>
        <translation>Pumpentestblatt</translation>
    </message>
    <message>
        <source>Type to enter a value; Enter goes down, Tab goes right</source>
        <translation>Tippen trägt einen Wert ein; Enter geht nach unten, Tab nach rechts</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>Open a round first (Ctrl+Shift+N): readings are kept with one.</source>
        <translation>Öffnen Sie erst eine Runde (Strg+Umschalt+N): Ablesungen gehören zu einer.</translation>
    </message>
    <message>
        <source>Readings of round %1, %2.</source>
        <translation>Ablesungen der Runde %1, %2.</translation>
    </message>
    <message>
        <source>Readings of round %1, %2. New ones need the next round (Ctrl+Shift+N).</source>
        <translation>Ablesungen der Runde %1, %2. Neue brauchen die nächste Runde (Strg+Umschalt+N).</translation>
    </message>
</context>
<context>
    <name>ww::ui::TextTable</name>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>struck through</source>
        <translation>durchgestrichen</translation>
    </message>
</context>
<context>
    <name>ww::ui::TruthWindow</name>
    <message>
        <source>Truth against Found</source>
        <translation>Wahrheit und Befund</translation>
    </message>
    <message>
        <source>What the work came to</source>
        <translation>Was die Arbeit ergab</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Losses at design flow</source>
        <translation>Verluste bei Auslegungsdurchfluss</translation>
    </message>
    <message>
        <source>Loss at design flow, kPa</source>
        <translation>Verlust bei Auslegungsdurchfluss, kPa</translation>
    </message>
    <message>
        <source>%1 run</source>
        <translation>%1 Strecke</translation>
    </message>
    <message>
        <source>%1 circuit</source>
        <translation>%1 Kreis</translation>
    </message>
    <message>
        <source>No fault was planted in this building.</source>
        <translation>In diesem Gebäude war kein Fehler versteckt.</translation>
    </message>
    <message>
        <source>Faults of the building</source>
        <translation>Fehler des Gebäudes</translation>
    </message>
    <message>
        <source>True is what the simulated building really has; found is what was learned from your readings.</source>
        <translation>Wahr ist, was das simulierte Gebäude wirklich hat; gefunden ist, was aus Ihren Ablesungen gelernt wurde.</translation>
    </message>
    <message>
        <source>Before the work</source>
        <translation>Vor der Arbeit</translation>
    </message>
    <message>
        <source>By design</source>
        <translation>Laut Auslegung</translation>
    </message>
    <message>
        <source>True (simulated)</source>
        <translation>Wahr (simuliert)</translation>
    </message>
    <message>
        <source>Found from readings</source>
        <translation>Gefunden aus Ablesungen</translation>
    </message>
    <message>
        <source>± 1 sd of found</source>
        <translation>± 1 s des Gefundenen</translation>
    </message>
    <message>
        <source>Found / true</source>
        <translation>Gefunden / wahr</translation>
    </message>
    <message>
        <source>Classical method</source>
        <translation>Klassisches Verfahren</translation>
    </message>
    <message>
        <source>Practice building %1, number %2</source>
        <translation>Übungsgebäude %1, Nummer %2</translation>
    </message>
</context>
<context>
    <name>ww::ui::ValveCard</name>
    <message>
        <source>Go Bac&amp;k</source>
        <translation>Zu&amp;rück</translation>
    </message>
    <message>
        <source>Go to Ne&amp;xt</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>Valve in hand</source>
        <translation>Ventil in der Hand</translation>
    </message>
    <message>
        <source>Place on the route</source>
        <translation>Stelle auf dem Weg</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Versorgt</translation>
    </message>
    <message>
        <source>Last reading</source>
        <translation>Letzte Ablesung</translation>
    </message>
    <message>
        <source>Share against target</source>
        <translation>Anteil gegen Soll</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Setting of the valve in hand</source>
        <translation>Einstellung des Ventils in der Hand</translation>
    </message>
    <message>
        <source>DP of the valve in hand</source>
        <translation>Δp des Ventils in der Hand</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Notes, photos (%1)</source>
        <translation>Notizen, Fotos (%1)</translation>
    </message>
    <message>
        <source>Flow of the valve in hand</source>
        <translation>Durchfluss des Ventils in der Hand</translation>
    </message>
    <message>
        <source>%1 % of target  %2</source>
        <comment>share, state</comment>
        <translation>%1 % vom Soll  %2</translation>
    </message>
    <message>
        <source>Valve stored last</source>
        <translation>Zuletzt gespeichertes Ventil</translation>
    </message>
    <message>
        <source>%1 % of target</source>
        <translation>%1 % vom Soll</translation>
    </message>
    <message>
        <source>A&amp;djust</source>
        <translation>&amp;Einstellen</translation>
    </message>
    <message>
        <source>Takes the valve in hand to the place Adjust</source>
        <translation>Bringt das Ventil in der Hand in den Bereich Einstellen</translation>
    </message>
</context>
<context>
    <name>ww::ui::ValvePage</name>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Zweige</translation>
    </message>
    <message>
        <source>Add Valve &amp;Model</source>
        <translation>Ventil&amp;modell hinzufügen</translation>
    </message>
    <message>
        <source>Remove Model</source>
        <translation>Modell entfernen</translation>
    </message>
    <message>
        <source>Valve tables</source>
        <translation>Ventiltabellen</translation>
    </message>
    <message>
        <source>Valve models</source>
        <translation>Ventilmodelle</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Cv or Kv</source>
        <translation>Cv oder Kv</translation>
    </message>
    <message>
        <source>setting and coefficient</source>
        <translation>Einstellung und Beiwert</translation>
    </message>
    <message>
        <source>Table of the model</source>
        <translation>Tabelle des Modells</translation>
    </message>
    <message>
        <source>Remove Point</source>
        <translation>Punkt entfernen</translation>
    </message>
</context>
<context>
    <name>ww::ui::ValvePanel</name>
    <message>
        <source>Of target by round, %</source>
        <translation>Vom Soll je Runde, %</translation>
    </message>
    <message>
        <source>This reading</source>
        <translation>Diese Ablesung</translation>
    </message>
    <message>
        <source>Valve in hand</source>
        <translation>Ventil in der Hand</translation>
    </message>
    <message>
        <source>Design and valve</source>
        <translation>Auslegung und Ventil</translation>
    </message>
    <message>
        <source>Of target by round</source>
        <translation>Vom Soll je Runde</translation>
    </message>
    <message>
        <source>Of target by round, drawn</source>
        <translation>Vom Soll je Runde, gezeichnet</translation>
    </message>
    <message>
        <source>Reading as entered</source>
        <translation>Ablesung wie eingetragen</translation>
    </message>
    <message>
        <source>Reading against the learned loop</source>
        <translation>Ablesung gegen den gelernten Kreislauf</translation>
    </message>
    <message>
        <source>Open comments</source>
        <translation>Offene Kommentare</translation>
    </message>
    <message>
        <source>valve %1 %2</source>
        <translation>Ventil %1 %2</translation>
    </message>
    <message>
        <source>setting %1 of %2 %3%4</source>
        <translation>Einstellung %1 von %2 %3%4</translation>
    </message>
    <message>
        <source>, fully open</source>
        <translation>, ganz offen</translation>
    </message>
    <message>
        <source>readable from %1</source>
        <translation>ablesbar ab %1</translation>
    </message>
    <message>
        <source>not read in this round</source>
        <translation>in dieser Runde nicht abgelesen</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht ablesbar</translation>
    </message>
    <message>
        <source>marked doubtful</source>
        <translation>als fraglich markiert</translation>
    </message>
    <message>
        <source>reason: %1</source>
        <translation>Grund: %1</translation>
    </message>
    <message>
        <source>Open comment: %1, %2: %3</source>
        <translation>Offener Kommentar: %1, %2: %3</translation>
    </message>
    <message>
        <source>No valve in hand</source>
        <translation>Kein Ventil in der Hand</translation>
    </message>
    <message>
        <source>design %1 %2</source>
        <translation>Auslegung %1 %2</translation>
    </message>
    <message>
        <source>Ctrl+U takes what explains it, Ctrl+R reads again.</source>
        <translation>Strg+U nimmt, was sie erklärt, Strg+R liest neu ab.</translation>
    </message>
    <message>
        <source>Ctrl+R reads again.</source>
        <translation>Strg+R liest neu ab.</translation>
    </message>
    <message>
        <source>Notes of the valve in hand</source>
        <translation>Notizen des Ventils in der Hand</translation>
    </message>
    <message>
        <source>Notes, photos (%1)</source>
        <translation>Notizen, Fotos (%1)</translation>
    </message>
    <message>
        <source>About the valve in hand, scrolled</source>
        <translation>Zum Ventil in der Hand, mit Bildlauf</translation>
    </message>
    <message>
        <source>What the grid has no room for</source>
        <translation>Was in der Tabelle keinen Platz hat</translation>
    </message>
    <message>
        <source>Rd %1:</source>
        <comment>round, short</comment>
        <translation>Rd. %1:</translation>
    </message>
</context>
<context>
    <name>ww::ui::VerifyDialog</name>
    <message>
        <source>Verify a Report</source>
        <translation>Bericht prüfen</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Trust a Root Certificate…</source>
        <translation>Einem Stammzertifikat vertrauen…</translation>
    </message>
    <message>
        <source>The certificate of the signer&apos;s firm or issuer, as a PEM file</source>
        <translation>Das Zertifikat der Firma oder des Ausstellers, als PEM-Datei</translation>
    </message>
    <message>
        <source>Trust a Root Certificate</source>
        <translation>Einem Stammzertifikat vertrauen</translation>
    </message>
    <message>
        <source>Certificates (*.pem *.crt *.cer)</source>
        <translation>Zertifikate (*.pem *.crt *.cer)</translation>
    </message>
    <message>
        <source>%1: unchanged since it was signed</source>
        <translation>%1: unverändert seit der Signatur</translation>
    </message>
    <message>
        <source>%1: NOT proved to be as it was signed</source>
        <translation>%1: NICHT nachgewiesen, dass es noch so ist wie signiert</translation>
    </message>
    <message>
        <source>Not signed yet.</source>
        <translation>Noch nicht signiert.</translation>
    </message>
    <message>
        <source>Beside the open workbook</source>
        <translation>Verglichen mit der offenen Arbeitsmappe</translation>
    </message>
</context>
<context>
    <name>ww::ui::WalkGrid</name>
    <message>
        <source>Valves in walking order</source>
        <translation>Ventile in Gehreihenfolge</translation>
    </message>
    <message>
        <source>Type the dp, or the flow where a valve has no table, and press Enter; Ctrl+Tab or F6 leaves the grid</source>
        <translation>Tippen Sie die Δp, oder den Durchfluss, wo ein Ventil keine Tabelle hat, und drücken Sie Enter; Strg+Tab oder F6 verlässt die Tabelle</translation>
    </message>
</context>
<context>
    <name>ww::ui::WalkModel</name>
    <message>
        <source>not readable</source>
        <translation>nicht ablesbar</translation>
    </message>
    <message>
        <source>%1 mean</source>
        <translation>%1 Mittel</translation>
    </message>
    <message>
        <source>%1 | %2</source>
        <translation>%1 | %2</translation>
    </message>
    <message>
        <source>%1, reason</source>
        <translation>%1, Grund</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>%1 percent of target</source>
        <translation>%1 Prozent vom Soll</translation>
    </message>
    <message>
        <source>comment: %1</source>
        <translation>Kommentar: %1</translation>
    </message>
    <message>
        <source>Route</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Serves</source>
        <translation>Versorgt</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
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
        <translation>Letzte Δp
%1</translation>
    </message>
    <message>
        <source>Flow
%1</source>
        <translation>Durchfluss
%1</translation>
    </message>
    <message>
        <source>Share
%</source>
        <translation>Anteil
%</translation>
    </message>
    <message>
        <source>Target
%</source>
        <translation>Soll
%</translation>
    </message>
    <message>
        <source>Of target
%</source>
        <translation>Vom Soll
%</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Added later</source>
        <translation>Kam später</translation>
    </message>
</context>
<context>
    <name>ww::ui::WalkPlace</name>
    <message>
        <source>Walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Totals of the round</source>
        <translation>Summen der Runde</translation>
    </message>
    <message>
        <source>What is missing here</source>
        <translation>Was hier fehlt</translation>
    </message>
    <message>
        <source>&amp;Find valve</source>
        <translation>Ventil &amp;finden</translation>
    </message>
    <message>
        <source>Find valve</source>
        <translation>Ventil finden</translation>
    </message>
    <message>
        <source>tag or number</source>
        <translation>Kennung oder Nummer</translation>
    </message>
    <message>
        <source>No valve to read yet. Add the branches in System (Alt+2).</source>
        <translation>Noch kein Ventil abzulesen. Tragen Sie die Zweige in Anlage ein (Alt+2).</translation>
    </message>
    <message>
        <source>No round yet. Open Round 1 (Ctrl+Shift+N).</source>
        <translation>Noch keine Runde. Öffnen Sie Runde 1 (Strg+Umschalt+N).</translation>
    </message>
    <message>
        <source>Close Round %1…</source>
        <translation>Runde %1 schließen…</translation>
    </message>
    <message>
        <source>Open Round 1…</source>
        <translation>Runde 1 öffnen…</translation>
    </message>
    <message>
        <source>Open Round %1…</source>
        <translation>Runde %1 öffnen…</translation>
    </message>
    <message>
        <source>of design</source>
        <translation>der Auslegung</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>on share</source>
        <translation>im Anteil</translation>
    </message>
    <message>
        <source>carried over</source>
        <translation>übernommen</translation>
    </message>
    <message>
        <source>spread</source>
        <translation>Streuung</translation>
    </message>
    <message>
        <source>doubts</source>
        <translation>Fragliche</translation>
    </message>
    <message>
        <source>oldest reading</source>
        <translation>älteste Ablesung</translation>
    </message>
    <message>
        <source>No workbook is open. Open one (Ctrl+O), make a new job (Ctrl+N), or practice on a simulated building (Ctrl+Shift+P). F1 shows the handbook.</source>
        <translation>Keine Arbeitsmappe offen. Öffnen Sie eine (Strg+O), legen Sie einen Auftrag an (Strg+N), oder üben Sie an einem simulierten Gebäude (Strg+Umschalt+P). F1 zeigt das Handbuch.</translation>
    </message>
    <message>
        <source>Ctrl+T numbers as a table</source>
        <translation>Strg+T Zahlen als Tabelle</translation>
    </message>
    <message>
        <source>Ctrl+G back to the grid</source>
        <translation>Strg+G zurück zur Tabelle</translation>
    </message>
    <message>
        <source>Alt+2 system</source>
        <translation>Alt+2 Anlage</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N opens round 1</source>
        <translation>Strg+Umschalt+N öffnet Runde 1</translation>
    </message>
    <message>
        <source>Enter opens the round</source>
        <translation>Enter öffnet die Runde</translation>
    </message>
    <message>
        <source>Tab next choice</source>
        <translation>Tab nächste Wahl</translation>
    </message>
    <message>
        <source>Esc back to the grid</source>
        <translation>Esc zurück zur Tabelle</translation>
    </message>
    <message>
        <source>Esc back to the walk</source>
        <translation>Esc zurück zum Rundgang</translation>
    </message>
    <message>
        <source>Enter closes the round</source>
        <translation>Enter schließt die Runde</translation>
    </message>
    <message>
        <source>Enter stores the reason</source>
        <translation>Enter speichert den Grund</translation>
    </message>
    <message>
        <source>Tab next item</source>
        <translation>Tab nächster Punkt</translation>
    </message>
    <message>
        <source>digits Enter next valve</source>
        <translation>Ziffern Enter nächstes Ventil</translation>
    </message>
    <message>
        <source>digits Enter correct the reading</source>
        <translation>Ziffern Enter berichtigt die Ablesung</translation>
    </message>
    <message>
        <source>Tab setting</source>
        <translation>Tab Einstellung</translation>
    </message>
    <message>
        <source>x cannot read</source>
        <translation>x nicht ablesbar</translation>
    </message>
    <message>
        <source>Ctrl+Shift+N opens the next round</source>
        <translation>Strg+Umschalt+N öffnet die nächste Runde</translation>
    </message>
    <message>
        <source>Alt+4 adjust</source>
        <translation>Alt+4 einstellen</translation>
    </message>
    <message>
        <source>Ctrl+J find</source>
        <translation>Strg+J finden</translation>
    </message>
    <message>
        <source>Ctrl+R again</source>
        <translation>Strg+R neu ablesen</translation>
    </message>
    <message>
        <source>Ctrl+G convergence</source>
        <translation>Strg+G Konvergenz</translation>
    </message>
    <message>
        <source>F6 leaves the grid</source>
        <translation>F6 verlässt die Tabelle</translation>
    </message>
    <message>
        <source>Enter stores</source>
        <translation>Enter speichert</translation>
    </message>
    <message>
        <source>Esc restores</source>
        <translation>Esc stellt wieder her</translation>
    </message>
    <message>
        <source>Enter goes to the valve</source>
        <translation>Enter geht zum Ventil</translation>
    </message>
    <message>
        <source>terminals read</source>
        <translation>Verbraucher abgelesen</translation>
    </message>
    <message>
        <source>Round %1: nothing read yet</source>
        <translation>Runde %1: noch nichts abgelesen</translation>
    </message>
    <message>
        <source>%1, %2 doubtful in it</source>
        <translation>%1, davon %2 fraglich</translation>
    </message>
    <message>
        <source>total flow</source>
        <translation>Gesamtdurchfluss</translation>
    </message>
    <message>
        <source>Ctrl+Alt+X marks the rest as not turned</source>
        <translation>Strg+Alt+X Rest nicht gedreht</translation>
    </message>
    <message>
        <source>Enter takes the speed</source>
        <translation>Enter nimmt die Drehzahl</translation>
    </message>
    <message>
        <source>%1 of %2 terminals</source>
        <translation>%1 von %2 Verbrauchern</translation>
    </message>
</context>
<context>
    <name>ww::ui::WordSign</name>
    <message>
        <source>What to do at the valve</source>
        <translation>Was am Ventil zu tun ist</translation>
    </message>
</context>
<context>
    <name>ww::ui::WorkbookBridge</name>
    <message>
        <source>Opening %1</source>
        <translation>%1 wird geöffnet</translation>
    </message>
    <message>
        <source>Writing %1</source>
        <translation>%1 wird geschrieben</translation>
    </message>
    <message>
        <source>Comparing with %1</source>
        <translation>Vergleich mit %1</translation>
    </message>
</context>
<context>
    <name>ww::ui::ZonePage</name>
    <message>
        <source>&amp;Add Zone</source>
        <translation>Zone &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Re&amp;move Zone</source>
        <translation>Zone &amp;entfernen</translation>
    </message>
    <message>
        <source>Chan&amp;ge Flow</source>
        <translation>Durch&amp;fluss ändern</translation>
    </message>
    <message>
        <source>&amp;Start Anew</source>
        <translation>&amp;Neu beginnen</translation>
    </message>
    <message>
        <source>&amp;Keep as New Revision</source>
        <translation>Als neue &amp;Revision behalten</translation>
    </message>
    <message>
        <source>&amp;Tag</source>
        <translation>&amp;Kennung</translation>
    </message>
    <message>
        <source>of a new zone, or of one there is</source>
        <translation>einer neuen oder vorhandenen Zone</translation>
    </message>
    <message>
        <source>Design fl&amp;ow</source>
        <translation>A&amp;uslegungsdurchfluss</translation>
    </message>
    <message>
        <source>such as 12.5 gpm or 0.8 L/s</source>
        <translation>etwa 12.5 gpm oder 0.8 L/s</translation>
    </message>
    <message>
        <source>Fe&amp;d by</source>
        <translation>&amp;Gespeist von</translation>
    </message>
    <message>
        <source>tag; empty: the pump</source>
        <translation>Kennung; leer: die Pumpe</translation>
    </message>
    <message>
        <source>C&amp;ircuit loss</source>
        <translation>Kre&amp;isverlust</translation>
    </message>
    <message>
        <source>at that flow, without valve</source>
        <translation>bei diesem Durchfluss, ohne Ventil</translation>
    </message>
    <message>
        <source>Ru&amp;n loss</source>
        <translation>&amp;Streckenverlust</translation>
    </message>
    <message>
        <source>of the new pipe to it</source>
        <translation>des neuen Rohrs dorthin</translation>
    </message>
    <message>
        <source>Va&amp;lve</source>
        <translation>&amp;Ventil</translation>
    </message>
    <message>
        <source>model and size of the job</source>
        <translation>Modell und Größe des Auftrags</translation>
    </message>
    <message>
        <source>Tried on a copy; the job stays as it is until it is kept.</source>
        <translation>Probiert an einer Kopie; der Auftrag bleibt, wie er ist, bis man es behält.</translation>
    </message>
    <message>
        <source>Changes tried</source>
        <translation>Probierte Änderungen</translation>
    </message>
    <message>
        <source>add %1, %2</source>
        <translation>%1 hinzufügen, %2</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>The changed loop is being solved.</source>
        <translation>Der geänderte Kreislauf wird berechnet.</translation>
    </message>
    <message>
        <source>Type a tag and a flow at the left, and add a zone, remove one or change its flow: the changed loop is solved, and what it does to the balance, the pump and the signed report stands here.</source>
        <translation>Tippen Sie links Kennung und Durchfluss ein und fügen Sie eine Zone hinzu, entfernen Sie eine oder ändern Sie ihren Durchfluss: Der geänderte Kreislauf wird berechnet, und hier steht, was das für Abgleich, Pumpe und signierten Bericht bedeutet.</translation>
    </message>
    <message>
        <source>Save St&amp;udy…</source>
        <translation>S&amp;tudie speichern…</translation>
    </message>
    <message>
        <source>Save Study</source>
        <translation>Studie speichern</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>Change the design flows above too</source>
        <translation>Auslegungsdurchflüsse darüber mit ändern</translation>
    </message>
    <message>
        <source>Kept as one step: %1.</source>
        <translation>Als ein Schritt behalten: %1.</translation>
    </message>
    <message>
        <source>Next: set the valves of new branches fully open and read them in round %1, which is open: place Walk (Alt+3).</source>
        <translation>Weiter: Stellen Sie die Ventile neuer Zweige voll auf und lesen Sie sie in Runde %1 ab, die offen ist: Ort Rundgang (Alt+3).</translation>
    </message>
    <message>
        <source>Next: set the valves of new branches fully open, then open a round (Ctrl+Shift+N) and read every valve. Rounds that are closed keep the design they were judged by.</source>
        <translation>Weiter: Stellen Sie die Ventile neuer Zweige voll auf, öffnen Sie dann eine Runde (Strg+Umschalt+N) und lesen Sie jedes Ventil ab. Geschlossene Runden behalten die Auslegung, nach der sie beurteilt wurden.</translation>
    </message>
</context>
<context>
    <name>ww::ui::charts::ChartView</name>
    <message>
        <source>%1, as a table</source>
        <translation>%1, als Tabelle</translation>
    </message>
</context>
<context>
    <name>ww::ui::schematic::SchematicKey</name>
    <message>
        <source>Key to the diagram</source>
        <translation>Legende des Strangschemas</translation>
    </message>
    <message>
        <source>open part of a valve</source>
        <translation>offener Teil eines Ventils</translation>
    </message>
    <message>
        <source>index circuit, * its end</source>
        <translation>Schlechtpunktkreis, * sein Ende</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>pump</source>
        <translation>Pumpe</translation>
    </message>
</context>
<context>
    <name>ww::ui::schematic::SchematicView</name>
    <message>
        <source>One-line diagram</source>
        <translation>Strangschema</translation>
    </message>
    <message numerus="yes">
        <source>%n branch(es). Arrow keys follow the pipe, Enter opens the valve.</source>
        <translation>
            <numerusform>%n Zweig. Pfeiltasten folgen dem Rohr, Enter öffnet das Ventil.</numerusform>
            <numerusform>%n Zweige. Pfeiltasten folgen dem Rohr, Enter öffnet das Ventil.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, not read</source>
        <translation>%1, nicht abgelesen</translation>
    </message>
    <message>
        <source>%1, %2 of target</source>
        <translation>%1, %2 vom Soll</translation>
    </message>
    <message>
        <source>, on the index circuit</source>
        <translation>, im Schlechtpunktkreis</translation>
    </message>
</context>
<context>
    <name>ww::ui::system::WhatIfBench</name>
    <message>
        <source>Reset to the Last Round</source>
        <translation>Auf die letzte Runde zurücksetzen</translation>
    </message>
    <message>
        <source>What if: settings tried and flows predicted</source>
        <translation>Was wäre wenn: probierte Einstellungen, vorhergesagte Durchflüsse</translation>
    </message>
    <message>
        <source>Prediction</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>Pump speed, percent of rated</source>
        <translation>Pumpendrehzahl, Prozent vom Nennwert</translation>
    </message>
    <message>
        <source>Pump s&amp;peed, % of rated</source>
        <translation>Pumpen&amp;drehzahl, % vom Nennwert</translation>
    </message>
    <message>
        <source>Computed from design losses. Nothing here is stored as a reading.</source>
        <translation>Aus Verlusten der Auslegung berechnet. Nichts hier wird als Ablesung gespeichert.</translation>
    </message>
    <message>
        <source>What is computed from</source>
        <translation>Woraus berechnet wird</translation>
    </message>
    <message>
        <source>Computed from the learned loop. Nothing here is stored as a reading.</source>
        <translation>Aus dem gelernten Kreislauf berechnet. Nichts hier wird als Ablesung gespeichert.</translation>
    </message>
</context>
<context>
    <name>ww::ui::system::WhatIfModel</name>
    <message>
        <source>No prediction: %1</source>
        <translation>Keine Vorhersage: %1</translation>
    </message>
    <message>
        <source>No prediction: %1 (and %2 more)</source>
        <translation>Keine Vorhersage: %1 (und %2 weitere)</translation>
    </message>
    <message>
        <source>%1. No water moves.</source>
        <translation>%1. Kein Wasser fließt.</translation>
    </message>
    <message>
        <source>%1. Shares from %2 to %3 % of target.</source>
        <translation>%1. Anteile von %2 bis %3 % vom Soll.</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>abgesperrt</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Kennung</translation>
    </message>
    <message>
        <source>Setting now</source>
        <translation>Einstellung jetzt</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre wenn</translation>
    </message>
    <message>
        <source>Shut off</source>
        <translation>Absperren</translation>
    </message>
    <message>
        <source>Measured %1</source>
        <translation>Gemessen %1</translation>
    </message>
    <message>
        <source>Predicted %1</source>
        <translation>Vorhergesagt %1</translation>
    </message>
    <message>
        <source>Of target %</source>
        <translation>Vom Soll %</translation>
    </message>
    <message>
        <source>Of design %</source>
        <translation>Von Auslegung %</translation>
    </message>
    <message>
        <source>Valve dp %1</source>
        <translation>Ventil-Δp %1</translation>
    </message>
    <message>
        <source>Pump %1 %2 at %3 %4, %5 % of full speed</source>
        <translation>Pumpe %1 %2 bei %3 %4, %5 % der vollen Drehzahl</translation>
    </message>
</context>
</TS>
