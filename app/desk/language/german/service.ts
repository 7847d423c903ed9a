<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>DueEntry</name>
    <message>
        <source>! takes %1</source>
        <translation>! nötig: %1</translation>
    </message>
    <message>
        <source>takes %1</source>
        <translation>nötig: %1</translation>
    </message>
</context>
<context>
    <name>DueList</name>
    <message>
        <source>what is due now or later, %1</source>
        <translation>was jetzt oder später fällig ist, %1</translation>
    </message>
</context>
<context>
    <name>LotEntry</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
</context>
<context>
    <name>LotSheet</name>
    <message>
        <source>where it came from and went</source>
        <translation>woher es kam und wohin es ging</translation>
    </message>
    <message>
        <source>what to do if it is bad, %1</source>
        <translation>was zu tun ist, wenn es schlecht ist, %1</translation>
    </message>
    <message>
        <source>What to do if it is bad, what is most dangerous first</source>
        <translation>Was zu tun ist, wenn es schlecht ist, das Gefährlichste zuerst</translation>
    </message>
</context>
<context>
    <name>OpeningCautionList</name>
    <message>
        <source>–  %1</source>
        <translation>–  %1</translation>
    </message>
</context>
<context>
    <name>PiecePanelView</name>
    <message>
        <source>no position is in hand</source>
        <translation>kein Einbauplatz ist in der Hand</translation>
    </message>
    <message>
        <source>%1, %2. %3</source>
        <translation>%1, %2. %3</translation>
    </message>
    <message>
        <source>No position is in hand. Choose one at the left, or scan its lot.</source>
        <translation>Kein Einbauplatz ist in der Hand. Links einen wählen oder seine Charge scannen.</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
</context>
<context>
    <name>PositionLine</name>
    <message>
        <source>washed
%1</source>
        <translation>Waschgänge
%1</translation>
    </message>
</context>
<context>
    <name>PositionList</name>
    <message>
        <source>positions of the car, %1</source>
        <translation>Einbauplätze des Autos, %1</translation>
    </message>
    <message>
        <source>Service card  C</source>
        <translation>Wartungskarte  C</translation>
    </message>
    <message>
        <source>what is due, as a paper for the bench</source>
        <translation>was fällig ist, als Blatt für die Werkbank</translation>
    </message>
    <message>
        <source>Inspection sheet  S</source>
        <translation>Abnahmeblatt  S</translation>
    </message>
    <message>
        <source>each piece with lot and days, for the scrutineer</source>
        <translation>jedes Stück mit Charge und Tagen, für die Abnahme</translation>
    </message>
    <message>
        <source>without plain rings and washers ▴</source>
        <translation>ohne einfache Ringe und Scheiben ▴</translation>
    </message>
    <message>
        <source>rings and washers too ▾</source>
        <translation>auch Ringe und Scheiben ▾</translation>
    </message>
</context>
<context>
    <name>ServiceArea</name>
    <message>
        <source>Nothing is known of what is in this car, so nothing to print.</source>
        <translation>Was in diesem Auto ist, ist nicht bekannt, also gibt es nichts zu drucken.</translation>
    </message>
    <message>
        <source>A lot, serial, tag or part, then Enter  (Ctrl+F)</source>
        <translation>Charge, Nummer, Etikett, dann Enter  (Strg+F)</translation>
    </message>
    <message>
        <source>Narrow: filter, pump, a lot  (Ctrl+F)</source>
        <translation>Eingrenzen: filter, eine Charge  (Strg+F)</translation>
    </message>
    <message>
        <source>The lot to follow</source>
        <translation>Gesuchte Charge</translation>
    </message>
    <message>
        <source>Find in the cars</source>
        <translation>In den Autos suchen</translation>
    </message>
    <message>
        <source>Papers (*.pdf)</source>
        <translation>Blätter (*.pdf)</translation>
    </message>
</context>
<context>
    <name>ServiceDesk</name>
    <message>
        <source>%1 is no number of them. Write 0 or more.</source>
        <translation>%1 ist keine Anzahl. 0 oder mehr schreiben.</translation>
    </message>
    <message>
        <source>Say which part it is.</source>
        <translation>Angeben, welches Teil es ist.</translation>
    </message>
    <message>
        <source>%1 of %2 %3, %4.</source>
        <translation>%1 in %2 %3, %4.</translation>
    </message>
    <message>
        <source>%1: %2 fresh, %3 short.</source>
        <translation>%1: %2 neu, %3 zu wenig.</translation>
    </message>
    <message>
        <source>%1: %2 fresh.</source>
        <translation>%1: %2 neu.</translation>
    </message>
    <message>
        <source>Leak-test it.</source>
        <translation>Dichtprüfung machen.</translation>
    </message>
    <message>
        <source>%1 ran at %2: %3.</source>
        <translation>%1 lief bei %2: %3.</translation>
    </message>
    <message>
        <source>Wash</source>
        <translation>Waschen</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Inspect</source>
        <translation>Prüfen</translation>
    </message>
    <message>
        <source>Damaged</source>
        <translation>Beschädigt</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Ausbauen</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Einbauen</translation>
    </message>
    <message>
        <source>It ran</source>
        <translation>Gelaufen</translation>
    </message>
    <message>
        <source>opened, washed, back in</source>
        <translation>geöffnet, gewaschen, wieder drin</translation>
    </message>
    <message>
        <source>the old one out, another in</source>
        <translation>das alte raus, ein anderes hinein</translation>
    </message>
    <message>
        <source>looked at, found good</source>
        <translation>geprüft, für gut befunden</translation>
    </message>
    <message>
        <source>looked at, found damaged: it is spent</source>
        <translation>geprüft, als beschädigt befunden: verbraucht</translation>
    </message>
    <message>
        <source>out of the car; its place stays empty</source>
        <translation>aus dem Auto; sein Platz bleibt leer</translation>
    </message>
    <message>
        <source>says what is there, or puts it there</source>
        <translation>sagt, was dort ist, oder baut es ein</translation>
    </message>
    <message>
        <source>how far the car ran at an event</source>
        <translation>Laufleistung des Autos bei einer Veranstaltung</translation>
    </message>
    <message>
        <source>It has no tag of its own, so that nobody can tell it from others. Say under Stock what it is.</source>
        <translation>Es hat kein eigenes Etikett, darum kann es niemand von anderen unterscheiden. Unter Lager angeben, was es ist.</translation>
    </message>
    <message>
        <source>No wash: %1 %2.</source>
        <translation>Kein Waschen: %1 %2.</translation>
    </message>
    <message>
        <source>This is nothing that is washed.</source>
        <translation>Das ist nichts, was gewaschen wird.</translation>
    </message>
    <message>
        <source>No wash: it is spent, %1. Replace it.</source>
        <translation>Kein Waschen: verbraucht, %1. Ersetzen.</translation>
    </message>
    <message>
        <source>Choose a car first.</source>
        <translation>Erst ein Auto wählen.</translation>
    </message>
    <message>
        <source>It is out of the car.</source>
        <translation>Es ist ausgebaut.</translation>
    </message>
    <message>
        <source>Nothing is there. Fit what goes there first.</source>
        <translation>Dort ist nichts. Erst einbauen, was dorthin kommt.</translation>
    </message>
    <message>
        <source>It was found damaged already. Replace it.</source>
        <translation>Es wurde schon als beschädigt befunden. Ersetzen.</translation>
    </message>
    <message>
        <source>%1, key %2</source>
        <translation>%1, Taste %2</translation>
    </message>
    <message>
        <source>%1 ran</source>
        <translation>Gelaufen: %1</translation>
    </message>
    <message>
        <source>Fit something in %1</source>
        <translation>In %1 etwas einbauen</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 in %3</translation>
    </message>
    <message>
        <source>Washed, back in</source>
        <translation>Gewaschen, wieder drin</translation>
    </message>
    <message>
        <source>Replaced</source>
        <translation>Ersetzt</translation>
    </message>
    <message>
        <source>Found good</source>
        <translation>Für gut befunden</translation>
    </message>
    <message>
        <source>Found damaged</source>
        <translation>Ist beschädigt</translation>
    </message>
    <message>
        <source>Taken out</source>
        <translation>Ausgebaut</translation>
    </message>
    <message>
        <source>It is in</source>
        <translation>Ist eingebaut</translation>
    </message>
    <message>
        <source>It ran so far</source>
        <translation>So viel gelaufen</translation>
    </message>
    <message>
        <source>what was found</source>
        <translation>was zu sehen war</translation>
    </message>
    <message>
        <source>clean, fibres, rust, metal</source>
        <translation>sauber, Fasern, Rost, Metall</translation>
    </message>
    <message>
        <source>fresh ones go in</source>
        <translation>neue kommen hinein</translation>
    </message>
    <message>
        <source>the old ones stay</source>
        <translation>die alten bleiben</translation>
    </message>
    <message>
        <source>rings of its joints</source>
        <translation>Ringe der Verbindungen</translation>
    </message>
    <message>
        <source>where the old one goes</source>
        <translation>wohin das alte kommt</translation>
    </message>
    <message>
        <source>empty: scrap, or to be checked</source>
        <translation>leer: verschrotten oder zu prüfen</translation>
    </message>
    <message>
        <source>type or scan the bin: C4</source>
        <translation>Fach tippen oder scannen: C4</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>what the old one is then</source>
        <translation>was das alte dann ist</translation>
    </message>
    <message>
        <source>its tag from then on</source>
        <translation>sein Etikett ab dann</translation>
    </message>
    <message>
        <source>so that its washes stay known</source>
        <translation>damit Waschgänge bekannt bleiben</translation>
    </message>
    <message>
        <source>what goes in, from</source>
        <translation>was hineinkommt, woher</translation>
    </message>
    <message>
        <source>bottle or lot of what goes in</source>
        <translation>Flasche oder Charge, die hineinkommt</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>its number</source>
        <translation>seine Nummer</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>its bottle was opened on</source>
        <translation>Flasche geöffnet am</translation>
    </message>
    <message>
        <source>done on</source>
        <translation>erledigt am</translation>
    </message>
    <message>
        <source>part or fluid</source>
        <translation>Teil oder Flüssigkeit</translation>
    </message>
    <message>
        <source>type or scan its number</source>
        <translation>Nummer tippen oder scannen</translation>
    </message>
    <message>
        <source>where in the car</source>
        <translation>wo im Auto</translation>
    </message>
    <message>
        <source>may be a new name</source>
        <translation>darf ein neuer Name sein</translation>
    </message>
    <message>
        <source>it comes from</source>
        <translation>woher es kommt</translation>
    </message>
    <message>
        <source>it was in the car already</source>
        <translation>war schon im Auto</translation>
    </message>
    <message>
        <source>the stock, nearest first</source>
        <translation>aus dem Lager, das Nächste zuerst</translation>
    </message>
    <message>
        <source>a spare in the car</source>
        <translation>Ersatzteil im Auto</translation>
    </message>
    <message>
        <source>lot, serial or tag</source>
        <translation>Charge, Seriennummer oder Etikett</translation>
    </message>
    <message>
        <source>in since</source>
        <translation>eingebaut seit</translation>
    </message>
    <message>
        <source>washed before</source>
        <translation>Waschgänge vorher</translation>
    </message>
    <message>
        <source>runs before</source>
        <translation>Läufe vorher</translation>
    </message>
    <message>
        <source>hours before</source>
        <translation>Stunden vorher</translation>
    </message>
    <message>
        <source>made, cured or opened on</source>
        <translation>hergestellt, vulkanisiert oder geöffnet am</translation>
    </message>
    <message>
        <source>may be used until</source>
        <translation>verwendbar bis</translation>
    </message>
    <message>
        <source>something else, written below</source>
        <translation>etwas anderes, unten angegeben</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>Läufe</translation>
    </message>
    <message>
        <source>hours of the engine</source>
        <translation>Motorstunden</translation>
    </message>
    <message>
        <source>at</source>
        <translation>bei</translation>
    </message>
    <message>
        <source>or at something else</source>
        <translation>oder bei etwas anderem</translation>
    </message>
    <message>
        <source>a test day</source>
        <translation>ein Testtag</translation>
    </message>
    <message>
        <source>on</source>
        <translation>am</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: %2 free</source>
        <translation>%1: %2 frei</translation>
    </message>
    <message>
        <source>none is free in the stock</source>
        <translation>im Lager ist keins frei</translation>
    </message>
    <message>
        <source>a spare that lies in the car</source>
        <translation>ein Ersatzteil, das im Auto liegt</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bald</translation>
    </message>
    <message>
        <source>before %1, %2</source>
        <translation>vor %1, %2</translation>
    </message>
    <message>
        <source>before %1</source>
        <translation>vor %1</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>takes %1</source>
        <translation>nötig: %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, %2 short</source>
        <translation>%1, fehlt %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 things</source>
        <translation>%1 Arbeiten</translation>
    </message>
    <message>
        <source>nothing before the next events</source>
        <translation>nichts vor den nächsten Veranstaltungen</translation>
    </message>
    <message>
        <source>1 thing before %1</source>
        <translation>1 Arbeit vor %1</translation>
    </message>
    <message>
        <source>%1 things before %2</source>
        <translation>%1 Arbeiten vor %2</translation>
    </message>
    <message>
        <source>Which cars</source>
        <translation>Welche Autos</translation>
    </message>
    <message>
        <source>%1 has it</source>
        <translation>%1 hat es</translation>
    </message>
    <message>
        <source>%1 had it</source>
        <translation>%1 hatte es</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>%1 free to go in instead</source>
        <translation>stattdessen frei: %1</translation>
    </message>
    <message>
        <source>was there on the first day</source>
        <translation>war am ersten Tag da</translation>
    </message>
    <message>
        <source>Where it came from</source>
        <translation>Woher es kam</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>What was made of it</source>
        <translation>Was daraus gemacht wurde</translation>
    </message>
    <message>
        <source>made-up hoses</source>
        <translation>Schlauchleitungen</translation>
    </message>
    <message>
        <source>Not told apart</source>
        <translation>Nicht zu unterscheiden</translation>
    </message>
    <message>
        <source>some of it went among pieces without a lot: look at all of them</source>
        <translation>etwas davon kam zu Stücken ohne Charge: alle ansehen</translation>
    </message>
    <message>
        <source>What is to be done</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>it takes</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>this pump</source>
        <translation>diese Pumpe</translation>
    </message>
    <message>
        <source>How far it ran</source>
        <translation>Laufleistung</translation>
    </message>
    <message>
        <source>since it was fitted, %1</source>
        <translation>seit dem Einbau, %1</translation>
    </message>
    <message>
        <source>since it was washed, %1</source>
        <translation>seit dem Waschen, %1</translation>
    </message>
    <message>
        <source>since it was looked at, %1</source>
        <translation>seit dem Prüfen, %1</translation>
    </message>
    <message>
        <source>in all, wherever it was</source>
        <translation>insgesamt, wo immer es war</translation>
    </message>
    <message>
        <source>What is known of it</source>
        <translation>Was davon bekannt ist</translation>
    </message>
    <message>
        <source>washed</source>
        <translation>gewaschen</translation>
    </message>
    <message>
        <source>made, cured or opened</source>
        <translation>hergestellt, vulkanisiert oder geöffnet</translation>
    </message>
    <message>
        <source>came inside its filter</source>
        <translation>kam in seinem Filter mit</translation>
    </message>
    <message>
        <source>noted last</source>
        <translation>zuletzt notiert</translation>
    </message>
    <message>
        <source>What was done here</source>
        <translation>Was hier getan wurde</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>, washed %1 times</source>
        <translation>, %1 mal gewaschen</translation>
    </message>
    <message>
        <source>What was here before</source>
        <translation>Was vorher hier war</translation>
    </message>
    <message>
        <source>was %1, out since %2; ran %3 in all</source>
        <translation>war %1, ausgebaut seit %2; insgesamt gelaufen: %3</translation>
    </message>
    <message>
        <source>nothing is there</source>
        <translation>dort ist nichts</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>1 run</source>
        <translation>1 Lauf</translation>
    </message>
    <message>
        <source>%1 runs</source>
        <translation>%1 Läufe</translation>
    </message>
    <message>
        <source>1 event</source>
        <translation>1 Veranstaltung</translation>
    </message>
    <message>
        <source>%1 events</source>
        <translation>%1 Veranstaltungen</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>damaged: replace it</source>
        <translation>beschädigt: ersetzen</translation>
    </message>
    <message>
        <source>stopped: good until %1, replace it</source>
        <translation>Halt: gut bis %1, ersetzen</translation>
    </message>
    <message>
        <source>over: %1 it, it was due by %2</source>
        <translation>überfällig: %1, war fällig bis %2</translation>
    </message>
    <message>
        <source>over by %1: %2 it now</source>
        <translation>überzogen um %1: jetzt %2</translation>
    </message>
    <message>
        <source>%1 before %2, %3</source>
        <translation>%1 vor %2, %3</translation>
    </message>
    <message>
        <source>past its day at %1: good until %2</source>
        <translation>abgelaufen bei %1: gut bis %2</translation>
    </message>
    <message>
        <source>%1 before %2</source>
        <translation>%1 vor %2</translation>
    </message>
    <message>
        <source>wash</source>
        <translation>waschen</translation>
    </message>
    <message>
        <source>inspect</source>
        <translation>prüfen</translation>
    </message>
    <message>
        <source>replace</source>
        <translation>ersetzen</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>eingebaut</translation>
    </message>
    <message>
        <source>replaced</source>
        <translation>ersetzt</translation>
    </message>
    <message>
        <source>inspected</source>
        <translation>geprüft</translation>
    </message>
    <message>
        <source>found damaged</source>
        <translation>als beschädigt befunden</translation>
    </message>
    <message>
        <source>taken out</source>
        <translation>ausgebaut</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>fuel</source>
        <translation>Kraftstoff</translation>
    </message>
    <message>
        <source>brakes</source>
        <translation>Bremsen</translation>
    </message>
    <message>
        <source>oil</source>
        <translation>Öl</translation>
    </message>
    <message>
        <source>coolant</source>
        <translation>Kühlmittel</translation>
    </message>
    <message>
        <source>%1 it now</source>
        <translation>jetzt %1</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>fine until %1</source>
        <translation>gut bis %1</translation>
    </message>
    <message>
        <source>%1 within %2</source>
        <translation>%1: noch %2</translation>
    </message>
    <message>
        <source>fine for %1</source>
        <translation>gut für %1</translation>
    </message>
    <message>
        <source>fine: no interval counts for it</source>
        <translation>gut: kein Intervall gilt dafür</translation>
    </message>
    <message>
        <source>spent, washed %1: replace it</source>
        <translation>verbraucht (Waschgänge: %1): ersetzen</translation>
    </message>
    <message>
        <source>to be checked: washed, it can go in again</source>
        <translation>zu prüfen: gewaschen kann es wieder hinein</translation>
    </message>
    <message>
        <source>to be checked: say under Stock what it is</source>
        <translation>zu prüfen: unter Lager angeben, was es ist</translation>
    </message>
    <message>
        <source>named by the shop</source>
        <translation>von der Werkstatt benannt</translation>
    </message>
    <message>
        <source>in since %1</source>
        <translation>eingebaut seit %1</translation>
    </message>
    <message>
        <source>washed %1</source>
        <translation>Waschgänge: %1</translation>
    </message>
    <message>
        <source>was %1</source>
        <translation>war %1</translation>
    </message>
    <message>
        <source>out %1</source>
        <translation>ausgebaut am %1</translation>
    </message>
    <message>
        <source>out of the car, to be checked</source>
        <translation>ausgebaut, zu prüfen</translation>
    </message>
    <message>
        <source>nothing is due</source>
        <translation>nichts ist fällig</translation>
    </message>
    <message>
        <source>1 thing is due</source>
        <translation>1 Arbeit ist fällig</translation>
    </message>
    <message>
        <source>%1 things are due</source>
        <translation>%1 Arbeiten sind fällig</translation>
    </message>
    <message>
        <source>All cars</source>
        <translation>Alle Autos</translation>
    </message>
    <message>
        <source>nothing known of it</source>
        <translation>nichts davon bekannt</translation>
    </message>
    <message>
        <source>cannot be opened, and no filter stands before it</source>
        <translation>nicht zu öffnen, und kein Filter sitzt davor</translation>
    </message>
    <message>
        <source>cannot be opened; protected by %1, washed %2</source>
        <translation>nicht zu öffnen; geschützt durch %1, gewaschen am %2</translation>
    </message>
    <message>
        <source>cannot be opened; protected by %1, in since %2</source>
        <translation>nicht zu öffnen; geschützt durch %1, eingebaut seit %2</translation>
    </message>
    <message>
        <source>It was found damaged: no look makes it good again. Replace it; where that was a slip, take it back under What was done here.</source>
        <translation>Als beschädigt gefunden: Prüfen macht es nicht wieder gut. Ersetzen; wo es ein Versehen war, unter „Was hier getan wurde“ zurücknehmen.</translation>
    </message>
    <message>
        <source>if it is bad: stop using it</source>
        <translation>wenn schlecht: nicht mehr verwenden</translation>
    </message>
    <message>
        <source>if it is bad: set it aside</source>
        <translation>wenn schlecht: beiseitelegen</translation>
    </message>
    <message>
        <source>if it is bad: inspect it</source>
        <translation>wenn schlecht: prüfen</translation>
    </message>
    <message>
        <source>if it is bad: ask it back</source>
        <translation>wenn schlecht: zurückfordern</translation>
    </message>
    <message>
        <source>%1 is no day. Write it like %2.</source>
        <translation>%1 ist kein Tag. Zu schreiben wie %2.</translation>
    </message>
    <message>
        <source>nothing is due, %1 later</source>
        <translation>nichts fällig, %1 später</translation>
    </message>
    <message>
        <source>%1 due now, %2 later</source>
        <translation>%1 fällig, %2 später</translation>
    </message>
    <message>
        <source>decided when a copy was brought, and stays</source>
        <translation>beim Zurückbringen einer Kopie entschieden, und bleibt</translation>
    </message>
</context>
<context>
    <name>ServiceTitle</name>
    <message>
        <source>Past its time?</source>
        <translation>Etwas überfällig?</translation>
    </message>
    <message>
        <source>What comes next?</source>
        <translation>Was kommt als Nächstes?</translation>
    </message>
</context>
<context>
    <name>SheetTabs</name>
    <message>
        <source>which car</source>
        <translation>welches Auto</translation>
    </message>
    <message>
        <source>Lot or serial</source>
        <translation>Charge oder Seriennummer</translation>
    </message>
    <message>
        <source>where did it go?</source>
        <translation>wo ist es geblieben?</translation>
    </message>
    <message>
        <source>Lot or serial: where did it go?</source>
        <translation>Charge oder Seriennummer: wo ist es geblieben?</translation>
    </message>
</context>
<context>
    <name>flarestock::LotSearch</name>
    <message>
        <source>Following %1 …</source>
        <translation>%1 wird gesucht …</translation>
    </message>
    <message>
        <source>Nothing of %1 is here any more.</source>
        <translation>Von %1 ist nichts mehr hier.</translation>
    </message>
    <message>
        <source>Type or scan a lot, a serial, a tag or a part above (Ctrl+F), then Enter: where it came from, which cars carry it, and what to do if it is bad.</source>
        <translation>Oben eine Charge, eine Seriennummer, ein Etikett oder ein Teil tippen oder scannen (Strg+F), dann Enter: woher es kam, welche Autos es haben und was zu tun ist, wenn es schlecht ist.</translation>
    </message>
</context>
<context>
    <name>flarestock::PaperForm</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>no event: as it stands today</source>
        <translation>keine Veranstaltung: Stand heute</translation>
    </message>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Service card of %1</source>
        <translation>Wartungskarte von %1</translation>
    </message>
    <message>
        <source>Inspection sheet of %1</source>
        <translation>Abnahmeblatt von %1</translation>
    </message>
    <message>
        <source>For the bench: what is due until then, why, what it takes, a box to tick.</source>
        <translation>Für die Werkbank: was bis dahin fällig ist, warum, was nötig ist, ein Kästchen zum Abhaken.</translation>
    </message>
    <message>
        <source>For the scrutineer: each piece with its lot, since when and until when.</source>
        <translation>Für die Abnahme: jedes Stück mit Charge, seit wann und bis wann.</translation>
    </message>
    <message>
        <source>Choose its file …</source>
        <translation>Datei wählen …</translation>
    </message>
    <message>
        <source>%1 written: %2</source>
        <translation>%1 geschrieben: %2</translation>
    </message>
</context>
<context>
    <name>flarestock::ServiceDesk</name>
    <message>
        <source>%1 is at %2 positions; this is the first of them.</source>
        <translation>%1 ist an mehreren Einbauplätzen (%2); dies ist der erste davon.</translation>
    </message>
    <message>
        <source>Where did a lot go?</source>
        <translation>Wo ist eine Charge geblieben?</translation>
    </message>
    <message>
        <source>Where %1 went</source>
        <translation>Verbleib von %1</translation>
    </message>
    <message>
        <source>Service: %1</source>
        <translation>Wartung: %1</translation>
    </message>
    <message>
        <source>Service: what is due</source>
        <translation>Wartung: was fällig ist</translation>
    </message>
    <message>
        <source>a lot, a serial, a tag or a part</source>
        <translation>Charge, Seriennummer, Etikett oder Teil</translation>
    </message>
    <message>
        <source>by the shop&apos;s own intervals</source>
        <translation>nach den eigenen Intervallen der Werkstatt</translation>
    </message>
    <message>
        <source>by the usual intervals: the shop has none of its own</source>
        <translation>nach den üblichen Intervallen (die Werkstatt hat keine eigenen)</translation>
    </message>
    <message>
        <source>%1, and the events of its season</source>
        <translation>%1 und den Veranstaltungen ihrer Saison</translation>
    </message>
    <message>
        <source>it has not run yet, as far as the shop was told</source>
        <translation>noch nicht gelaufen, soweit es der Werkstatt gesagt wurde</translation>
    </message>
    <message>
        <source>ran %1; last at %2, %3</source>
        <translation>gelaufen: %1; zuletzt bei %2, %3</translation>
    </message>
    <message>
        <source>Nothing is known here of the cars of this shop.</source>
        <translation>Über die Autos dieser Werkstatt ist hier nichts bekannt.</translation>
    </message>
    <message>
        <source>Looking into the cars …</source>
        <translation>Die Autos werden durchgesehen …</translation>
    </message>
    <message>
        <source>Nothing is due on any car.</source>
        <translation>An keinem Auto ist etwas fällig.</translation>
    </message>
    <message>
        <source>Nothing that is due says that.</source>
        <translation>Nichts, was fällig ist, hat diese Wörter.</translation>
    </message>
    <message>
        <source>Nothing is known of what is in this car. Issue a build to it under Builds, or say what is in it: press F.</source>
        <translation>Was in diesem Auto ist, ist nicht bekannt. Unter Aufbauten einen Aufbau dafür ausgeben oder angeben, was darin ist: F drücken.</translation>
    </message>
    <message>
        <source>Nothing in this car says that.</source>
        <translation>Nichts in diesem Auto hat diese Wörter.</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>Before it is opened</source>
        <translation>Vor dem Öffnen</translation>
    </message>
    <message>
        <source>Before the %1 line is opened</source>
        <translation>Vor dem Öffnen der Leitung (%1)</translation>
    </message>
</context>
<context>
    <name>flarestock::WorkForm</name>
    <message>
        <source>A fluid goes by its name, and its lot is the bottle: DOT 4.</source>
        <translation>Eine Flüssigkeit steht unter ihrem Namen, ihre Charge ist die Flasche: DOT 4.</translation>
    </message>
</context>
</TS>
