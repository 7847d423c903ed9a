<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>BenchDeed</name>
    <message>
        <source>Cut</source>
        <translation>Ablängen</translation>
    </message>
    <message>
        <source>Make up</source>
        <translation>Fertigen</translation>
    </message>
    <message>
        <source>Open box</source>
        <translation>Karton öffnen</translation>
    </message>
    <message>
        <source>Lengths off it, to a place or for a build; which piece gives which.</source>
        <translation>Längen davon, an einen Platz oder für einen Aufbau; welches Stück welche gibt.</translation>
    </message>
    <message>
        <source>A length and two ends become one piece with a tag of its own.</source>
        <translation>Eine Länge und zwei Armaturen werden ein Stück mit eigenem Etikett.</translation>
    </message>
    <message>
        <source>What lies in one box goes to stock, its value shared out.</source>
        <translation>Was in einem Karton liegt, kommt ins Lager, sein Wert wird aufgeteilt.</translation>
    </message>
    <message>
        <source>No box is chosen; choose one where it lies.</source>
        <translation>Kein Karton ist gewählt; einen dort wählen, wo er liegt.</translation>
    </message>
    <message>
        <source>None of it is in stock.</source>
        <translation>Nichts davon ist im Lager.</translation>
    </message>
    <message>
        <source>%1 off %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 as %2</source>
        <translation>%1 als %2</translation>
    </message>
    <message>
        <source>%1 lengths</source>
        <translation>%1 Längen</translation>
    </message>
    <message>
        <source>Cut of %1: %2, to %3.</source>
        <translation>Abgelängt, %1: %2, nach %3.</translation>
    </message>
    <message>
        <source>%1 is made up of %2, and lies at %3.</source>
        <translation>%1 ist aus %2 gefertigt und liegt in %3.</translation>
    </message>
    <message>
        <source>A box of %1 is opened; out of it came %2.</source>
        <translation>Ein Karton %1 ist geöffnet; heraus kam: %2.</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1, %2 (%3 free)</source>
        <translation>%1, %2 (%3 frei)</translation>
    </message>
    <message>
        <source>all that is in it</source>
        <translation>alles darin</translation>
    </message>
    <message>
        <source>the shortest that gives it</source>
        <translation>das kürzeste, das reicht</translation>
    </message>
    <message>
        <source>no build: to a place</source>
        <translation>kein Aufbau: an einen Platz</translation>
    </message>
    <message>
        <source>%1, the piece in hand</source>
        <translation>%1, das Stück in der Hand</translation>
    </message>
    <message>
        <source>remnants first</source>
        <translation>Reste zuerst</translation>
    </message>
    <message>
        <source>the least waste</source>
        <translation>wenigster Verschnitt</translation>
    </message>
    <message>
        <source>type or scan the bin: C4</source>
        <translation>Fach tippen oder scannen: C4</translation>
    </message>
    <message>
        <source>which lengths</source>
        <translation>welche Längen</translation>
    </message>
    <message>
        <source>24 in + 2 x 2 ft 4 in; none: the build&apos;s</source>
        <translation>24 in + 2 x 2 ft 4 in; leer: alle</translation>
    </message>
    <message>
        <source>for which build</source>
        <translation>für welchen Aufbau</translation>
    </message>
    <message>
        <source>off which piece</source>
        <translation>von welchem Stück</translation>
    </message>
    <message>
        <source>to which place</source>
        <translation>an welchen Platz</translation>
    </message>
    <message>
        <source>what each cut takes</source>
        <translation>Verlust je Schnitt</translation>
    </message>
    <message>
        <source>a shorter rest goes to scrap</source>
        <translation>kürzerer Rest wird verschrottet</translation>
    </message>
    <message>
        <source>length, as it is cut</source>
        <translation>Länge, wie abgelängt</translation>
    </message>
    <message>
        <source>22 1/2 in, 570 mm</source>
        <translation>22 1/2 in, 570 mm</translation>
    </message>
    <message>
        <source>end at its start</source>
        <translation>Armatur am Anfang</translation>
    </message>
    <message>
        <source>end at its far end</source>
        <translation>Armatur am Ende</translation>
    </message>
    <message>
        <source>tag</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>clocking, degrees</source>
        <translation>Verdrehwinkel, Grad</translation>
    </message>
    <message>
        <source>90, where the ends are bent</source>
        <translation>90, wenn die Enden gebogen sind</translation>
    </message>
    <message>
        <source>may be used until</source>
        <translation>verwendbar bis</translation>
    </message>
    <message>
        <source>proof test</source>
        <translation>Druckprüfung</translation>
    </message>
    <message>
        <source>not made yet</source>
        <translation>noch nicht gemacht</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>held at</source>
        <translation>gehalten bei</translation>
    </message>
    <message>
        <source>with what</source>
        <translation>womit</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>tested by</source>
        <translation>geprüft von</translation>
    </message>
    <message>
        <source>whoever is at the desk</source>
        <translation>wer am Programm ist</translation>
    </message>
    <message>
        <source>its contents go to</source>
        <translation>sein Inhalt kommt nach</translation>
    </message>
    <message>
        <source>what comes out</source>
        <translation>was herauskommt</translation>
    </message>
    <message>
        <source>without its contents</source>
        <translation>ohne Inhalt</translation>
    </message>
    <message>
        <source>it is still a piece</source>
        <translation>es bleibt ein Stück</translation>
    </message>
    <message>
        <source>nothing is left of it: a pack, a kit</source>
        <translation>nichts bleibt davon: Packung, Satz</translation>
    </message>
    <message>
        <source>what one of them cost, if not by its offer</source>
        <translation>Preis je Stück, wenn nicht nach Angebot</translation>
    </message>
    <message>
        <source>And off %1 pieces more.</source>
        <translation>Und von %1 weiteren Stücken.</translation>
    </message>
    <message>
        <source>Nothing here is long enough for %1. One piece of %2 would be.</source>
        <translation>Nichts hier ist lang genug für %1. Ein Stück von %2 wäre es.</translation>
    </message>
    <message>
        <source>To waste: %1.</source>
        <translation>Verschnitt: %1.</translation>
    </message>
    <message>
        <source>There was no time to prove that nothing is better.</source>
        <translation>Die Zeit reichte nicht, um zu belegen, dass es nicht besser geht.</translation>
    </message>
    <message>
        <source>%1 in %2, %3</source>
        <translation>%1 in %2, %3</translation>
    </message>
    <message>
        <source>%1, %2 is left</source>
        <translation>%1, Rest %2</translation>
    </message>
    <message>
        <source>%1, nothing is left</source>
        <translation>%1, kein Rest</translation>
    </message>
    <message>
        <source>off %1: %2</source>
        <translation>von %1: %2</translation>
    </message>
    <message>
        <source>The build wants no length of it any more.</source>
        <translation>Der Aufbau braucht keine Länge mehr davon.</translation>
    </message>
    <message>
        <source>%1 comes off %2; between its seats the hose has %3.</source>
        <translation>%1 wird von %2 abgelängt; von Sitz zu Sitz misst der Schlauch %3.</translation>
    </message>
    <message>
        <source>%1 is worth %2.</source>
        <translation>%1 ist %2 wert.</translation>
    </message>
    <message>
        <source>Without a proof test it is to be checked, and free to nobody.</source>
        <translation>Ohne Druckprüfung ist sie zu prüfen und für niemanden frei.</translation>
    </message>
    <message>
        <source>It has failed its test: it is not to be used.</source>
        <translation>Die Prüfung ist nicht bestanden: gesperrt.</translation>
    </message>
    <message>
        <source>by its offer</source>
        <translation>nach Angebot</translation>
    </message>
    <message>
        <source>as it was written</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>what is left of the box</source>
        <translation>was vom Karton übrig ist</translation>
    </message>
    <message>
        <source>nobody sells it</source>
        <translation>verkauft niemand</translation>
    </message>
    <message>
        <source>%1 of %2 to %3: %4, %5</source>
        <translation>%1 von %2 nach %3: %4, %5</translation>
    </message>
    <message>
        <source>%1 was found missing before.</source>
        <translation>%1 fehlte schon vorher.</translation>
    </message>
    <message>
        <source>The build %1 keeps what it has got in the box.</source>
        <translation>Der Aufbau %1 behält, was er im Karton hat.</translation>
    </message>
    <message>
        <source>%1, where it ages</source>
        <translation>%1, wenn er altert</translation>
    </message>
</context>
<context>
    <name>BinTag</name>
    <message>
        <source>in hand: %1</source>
        <translation>in der Hand: %1</translation>
    </message>
</context>
<context>
    <name>CardLine</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>! %1</source>
        <translation>! %1</translation>
    </message>
    <message>
        <source>take back …</source>
        <translation>zurücknehmen …</translation>
    </message>
    <message>
        <source>take back: %1</source>
        <translation>zurücknehmen: %1</translation>
    </message>
</context>
<context>
    <name>CutBar</name>
    <message>
        <source>%1:  %2</source>
        <translation>%1:  %2</translation>
    </message>
</context>
<context>
    <name>NarrowStrip</name>
    <message>
        <source>show all of the stock again</source>
        <translation>wieder das ganze Lager zeigen</translation>
    </message>
    <message>
        <source>all of it</source>
        <translation>alles</translation>
    </message>
</context>
<context>
    <name>Narrowing</name>
    <message>
        <source>any</source>
        <translation>alle</translation>
    </message>
    <message>
        <source>wherever we have it</source>
        <translation>wo immer es liegt</translation>
    </message>
    <message>
        <source>on shelves and in bins</source>
        <translation>in Regalen und Fächern</translation>
    </message>
    <message>
        <source>in the trailer</source>
        <translation>im Anhänger</translation>
    </message>
    <message>
        <source>lent or out for repair</source>
        <translation>verliehen oder in Reparatur</translation>
    </message>
    <message>
        <source>in a car</source>
        <translation>in einem Auto</translation>
    </message>
    <message>
        <source>also what we have none of</source>
        <translation>auch, was nicht da ist</translation>
    </message>
    <message>
        <source>past its day</source>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>dash</source>
        <translation>Dash</translation>
    </message>
    <message>
        <source>thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>micron</source>
        <translation>Feinheit</translation>
    </message>
    <message>
        <source>%1 µm</source>
        <translation>%1 µm</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>what we keep</source>
        <translation>Sollbestand</translation>
    </message>
    <message>
        <source>below it only</source>
        <translation>nur darunter</translation>
    </message>
    <message>
        <source>below what we keep</source>
        <translation>unter Sollbestand</translation>
    </message>
</context>
<context>
    <name>OverTimePicture</name>
    <message>
        <source>on hand over time</source>
        <translation>Bestand im Verlauf</translation>
    </message>
    <message>
        <source>0</source>
        <translation>0</translation>
    </message>
    <message>
        <source>--  %1</source>
        <translation>--  %1</translation>
    </message>
</context>
<context>
    <name>PartCard</name>
    <message>
        <source>only for %1</source>
        <translation>nur für %1</translation>
    </message>
    <message>
        <source>past its day %1</source>
        <translation>abgelaufen am %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>seen %1</source>
        <translation>gesehen am %1</translation>
    </message>
    <message>
        <source>%1, seen %2</source>
        <translation>%1, gesehen am %2</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1 at %2, %3</source>
        <translation>%1 in %2, %3</translation>
    </message>
    <message>
        <source>nobody counts it</source>
        <translation>niemand zählt es</translation>
    </message>
    <message>
        <source>none in stock</source>
        <translation>keins im Lager</translation>
    </message>
    <message>
        <source>%1 in stock</source>
        <translation>%1 im Lager</translation>
    </message>
    <message>
        <source> − %1 promised</source>
        <translation> − %1 zugesagt</translation>
    </message>
    <message>
        <source> − %1 not to be taken</source>
        <translation> − %1 nicht zu entnehmen</translation>
    </message>
    <message>
        <source> = %1 free</source>
        <translation> = %1 frei</translation>
    </message>
    <message>
        <source>%1, in one piece</source>
        <translation>%1, in einem Stück</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>made up</source>
        <translation>Schlauchleitung</translation>
    </message>
    <message>
        <source>made %1 by %2</source>
        <translation>gefertigt am %1 von %2</translation>
    </message>
    <message>
        <source>to be used until %1</source>
        <translation>zu verwenden bis %1</translation>
    </message>
    <message>
        <source>promised</source>
        <translation>zugesagt</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>nobody has said until when</source>
        <translation>niemand hat gesagt, bis wann</translation>
    </message>
    <message>
        <source>overdue since %1</source>
        <translation>überfällig seit %1</translation>
    </message>
    <message>
        <source>away</source>
        <translation>außer Haus</translation>
    </message>
    <message>
        <source>filled up to %1</source>
        <translation>auffüllen auf %1</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>Sollbestand</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>what happened</source>
        <translation>was geschah</translation>
    </message>
    <message>
        <source>and %1 older</source>
        <translation>und %1 ältere</translation>
    </message>
    <message>
        <source>in packs of %1</source>
        <translation>in Packungen zu %1</translation>
    </message>
    <message>
        <source>from %1: %2</source>
        <translation>ab %1: %2</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>Lieferzeit: %1 Tg.</translation>
    </message>
    <message>
        <source>who sells it</source>
        <translation>wer es verkauft</translation>
    </message>
    <message>
        <source>%1  %2 → %3</source>
        <translation>%1  %2 → %3</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>taken back: %1</source>
        <translation>zurückgenommen: %1</translation>
    </message>
    <message>
        <source>%1 from then on</source>
        <translation>ab da %1</translation>
    </message>
    <message>
        <source>lent</source>
        <translation>verliehen</translation>
    </message>
    <message>
        <source>borrowed</source>
        <translation>geliehen</translation>
    </message>
    <message>
        <source>out for repair</source>
        <translation>in Reparatur</translation>
    </message>
    <message>
        <source>ring %1</source>
        <translation>Ring %1</translation>
    </message>
    <message>
        <source>a tin of odds</source>
        <translation>Dose Kleinteile</translation>
    </message>
    <message>
        <source>only its cost is another</source>
        <translation>nur seine Kosten sind andere</translation>
    </message>
    <message>
        <source>%1 here + %2 in the trailer</source>
        <translation>%1 hier + %2 im Anhänger</translation>
    </message>
    <message>
        <source>%1 in stock, in the trailer</source>
        <translation>%1 im Lager, im Anhänger</translation>
    </message>
</context>
<context>
    <name>PartHead</name>
    <message>
        <source>drawing of %1, %2</source>
        <translation>Zeichnung von %1, %2</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
<context>
    <name>PartPanelView</name>
    <message>
        <source>%1, %2. %3</source>
        <translation>%1, %2. %3</translation>
    </message>
    <message>
        <source>Where it lies</source>
        <translation>Wo es liegt</translation>
    </message>
    <message>
        <source>fewer ▴</source>
        <translation>weniger ▴</translation>
    </message>
    <message>
        <source>all that happened ▾</source>
        <translation>alles, was geschah ▾</translation>
    </message>
    <message>
        <source>Reading what happened …</source>
        <translation>Was geschah, wird gelesen …</translation>
    </message>
    <message>
        <source>No part is in hand. Choose one at the left, or scan it.</source>
        <translation>Kein Teil ist in der Hand. Links eins wählen oder scannen.</translation>
    </message>
</context>
<context>
    <name>SortHeading</name>
    <message>
        <source>%1, sorted downwards</source>
        <translation>%1, absteigend sortiert</translation>
    </message>
    <message>
        <source>%1, sorted upwards</source>
        <translation>%1, aufsteigend sortiert</translation>
    </message>
    <message>
        <source>sort by %1</source>
        <translation>sortieren: %1</translation>
    </message>
    <message>
        <source>%1 ▾</source>
        <translation>%1 ▾</translation>
    </message>
    <message>
        <source>%1 ▴</source>
        <translation>%1 ▴</translation>
    </message>
</context>
<context>
    <name>StockArea</name>
    <message>
        <source>Narrow: -8 orb, 10 micron, C4, od 22.1 mm  (Ctrl+F)</source>
        <translation>Eingrenzen: -8 orb, C4, od 22,1 mm  (Strg+F)</translation>
    </message>
    <message>
        <source>Find in stock</source>
        <translation>Im Lager suchen</translation>
    </message>
</context>
<context>
    <name>StockDeed</name>
    <message>
        <source>%1 of %2 taken from %3 for %4.</source>
        <translation>%1 von %2 aus %3 entnommen für %4.</translation>
    </message>
    <message>
        <source>%1 of %2 put back from %3 to %4.</source>
        <translation>%1 von %2 aus %3 nach %4 zurückgelegt.</translation>
    </message>
    <message>
        <source>%1 of %2 from %3: %4.</source>
        <translation>%1 von %2 aus %3: %4.</translation>
    </message>
    <message>
        <source>%1 of %2 from %3 thrown away.</source>
        <translation>%1 von %2 aus %3 weggeworfen.</translation>
    </message>
    <message>
        <source>%1 of %2 at %3 is %4 from now on.</source>
        <translation>%1 von %2 in %3, Zustand ab jetzt: %4.</translation>
    </message>
    <message>
        <source>%1 of %2 received from %3, to %4.</source>
        <translation>%1 von %2 angenommen, von %3 nach %4.</translation>
    </message>
    <message>
        <source>%1 at %2: at least %3 is kept there.</source>
        <translation>%1 in %2: Sollbestand mindestens %3.</translation>
    </message>
    <message>
        <source>%1 at %2: seen, and written down.</source>
        <translation>%1 in %2: gesehen und eingetragen.</translation>
    </message>
    <message>
        <source>%1 of %2 moved from %3 to %4.</source>
        <translation>%1 von %2 aus %3 nach %4 umgelagert.</translation>
    </message>
    <message>
        <source>Counted %1 at %2: found %3, the book said %4</source>
        <translation>%1 in %2 gezählt: gefunden %3, laut Buch %4</translation>
    </message>
    <message>
        <source>%1. Nothing to change.</source>
        <translation>%1. Nichts zu ändern.</translation>
    </message>
    <message>
        <source>%1: %2 less.</source>
        <translation>%1: %2 weniger.</translation>
    </message>
    <message>
        <source>%1: %2 more.</source>
        <translation>%1: %2 mehr.</translation>
    </message>
    <message>
        <source>how much</source>
        <translation>wie viel</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>5 ft 6 in, 1.2 m</source>
        <translation>5 ft 6 in oder 1,2 m</translation>
    </message>
    <message>
        <source>to which place</source>
        <translation>an welchen Platz</translation>
    </message>
    <message>
        <source>type or scan the bin: C4</source>
        <translation>Fach tippen oder scannen: C4</translation>
    </message>
    <message>
        <source>from now on</source>
        <translation>ab jetzt</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>wie bisher</translation>
    </message>
    <message>
        <source>build: %1</source>
        <translation>Aufbau: %1</translation>
    </message>
    <message>
        <source>which place</source>
        <translation>welcher Platz</translation>
    </message>
    <message>
        <source>type or scan it: C4</source>
        <translation>tippen oder scannen: C4</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>0: it is kept there no more</source>
        <translation>0: kein Sollbestand mehr</translation>
    </message>
    <message>
        <source>filled up to</source>
        <translation>auffüllen auf</translation>
    </message>
    <message>
        <source>the same, where nothing is written</source>
        <translation>gleich viel, wo nichts steht</translation>
    </message>
    <message>
        <source>from whom</source>
        <translation>von wem</translation>
    </message>
    <message>
        <source>what all of it cost</source>
        <translation>was alles zusammen gekostet hat</translation>
    </message>
    <message>
        <source>lot, serial or name of the piece</source>
        <translation>Charge, Seriennummer oder Name des Stücks</translation>
    </message>
    <message>
        <source>a piece needs one: COIL-17</source>
        <translation>für ein Stück nötig: COIL-17</translation>
    </message>
    <message>
        <source>where it has one</source>
        <translation>wo es das gibt</translation>
    </message>
    <message>
        <source>delivery note</source>
        <translation>Lieferschein</translation>
    </message>
    <message>
        <source>may be used until</source>
        <translation>verwendbar bis</translation>
    </message>
    <message>
        <source>how much is there</source>
        <translation>wie viel ist da</translation>
    </message>
    <message>
        <source>what lies in it</source>
        <translation>was darin liegt</translation>
    </message>
    <message>
        <source>of a tin of odds: M5 to M8, stainless</source>
        <translation>bei einer Dose Kleinteile: M5 bis M8, rostfrei</translation>
    </message>
    <message>
        <source>for what</source>
        <translation>wofür</translation>
    </message>
    <message>
        <source>how many lie there</source>
        <translation>wie viele dort liegen</translation>
    </message>
    <message>
        <source>what you have counted</source>
        <translation>was gezählt wurde</translation>
    </message>
    <message>
        <source>to whom</source>
        <translation>an wen</translation>
    </message>
    <message>
        <source>until which day</source>
        <translation>bis zu welchem Tag</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>thread torn</source>
        <translation>Gewinde ausgerissen</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Entnehmen</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurücklegen</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Umlagern</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Zählen</translation>
    </message>
    <message>
        <source>Receive</source>
        <translation>Annehmen</translation>
    </message>
    <message>
        <source>Lend</source>
        <translation>Verleihen</translation>
    </message>
    <message>
        <source>Throw away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Sollbestand</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Füllstand</translation>
    </message>
    <message>
        <source>No piece is chosen that lies in stock; choose one where it lies.</source>
        <translation>Kein Stück ist gewählt, das im Lager liegt; eins wählen, wo es liegt.</translation>
    </message>
    <message>
        <source>The shop has no borrower and no repairer among its places.</source>
        <translation>Unter den Plätzen der Werkstatt ist keiner zum Verleihen und keiner für Reparaturen.</translation>
    </message>
    <message>
        <source>Nothing of it is chosen that is in a car, lent or out for repair.</source>
        <translation>Nichts davon ist gewählt, was in einem Auto, verliehen oder in Reparatur ist.</translation>
    </message>
    <message>
        <source>The shop has no supplier among its places.</source>
        <translation>Unter den Plätzen der Werkstatt ist kein Lieferant.</translation>
    </message>
    <message>
        <source>A tin of odds is not counted.</source>
        <translation>Eine Dose Kleinteile wird nicht gezählt.</translation>
    </message>
    <message>
        <source>It is counted; a level is for what nobody counts.</source>
        <translation>Das wird gezählt; ein Füllstand ist für das, was niemand zählt.</translation>
    </message>
    <message>
        <source>For a build, to a car, or used up here.</source>
        <translation>Für einen Aufbau, in ein Auto oder hier verbraucht.</translation>
    </message>
    <message>
        <source>From a car, a borrower or a repairer to its place.</source>
        <translation>Aus einem Auto, vom Entleiher oder aus der Reparatur an seinen Platz.</translation>
    </message>
    <message>
        <source>To another bin, shelf or drawer.</source>
        <translation>An einen anderen Platz: Fach, Regal oder Schublade.</translation>
    </message>
    <message>
        <source>Count first; then it is said what the book had.</source>
        <translation>Erst zählen; danach steht hier, was das Buch hatte.</translation>
    </message>
    <message>
        <source>From a supplier, without an order.</source>
        <translation>Von einem Lieferanten, ohne Bestellung.</translation>
    </message>
    <message>
        <source>To somebody, or out for repair, until a day.</source>
        <translation>An jemanden oder zur Reparatur, bis zu einem Tag.</translation>
    </message>
    <message>
        <source>It goes to scrap, with the reason.</source>
        <translation>Es wird verschrottet, mit dem Grund.</translation>
    </message>
    <message>
        <source>What it is from now on: good, to be checked, not to be used.</source>
        <translation>Was es ab jetzt ist: gut, zu prüfen, gesperrt.</translation>
    </message>
    <message>
        <source>How much a place is to hold.</source>
        <translation>Wie viel ein Platz haben soll.</translation>
    </message>
    <message>
        <source>Plenty, low or out, of what nobody counts.</source>
        <translation>Reichlich, wenig oder leer bei dem, was niemand zählt.</translation>
    </message>
    <message>
        <source>Take %1</source>
        <translation>%1 entnehmen</translation>
    </message>
    <message>
        <source>Put %1 back</source>
        <translation>%1 zurücklegen</translation>
    </message>
    <message>
        <source>Move %1</source>
        <translation>%1 umlagern</translation>
    </message>
    <message>
        <source>Count %1</source>
        <translation>%1 zählen</translation>
    </message>
    <message>
        <source>Receive %1</source>
        <translation>%1 annehmen</translation>
    </message>
    <message>
        <source>Lend %1</source>
        <translation>%1 verleihen</translation>
    </message>
    <message>
        <source>Throw %1 away</source>
        <translation>%1 wegwerfen</translation>
    </message>
    <message>
        <source>What is %1 from now on?</source>
        <translation>Was ist %1 ab jetzt?</translation>
    </message>
    <message>
        <source>How much of %1 is kept?</source>
        <translation>Wie hoch ist der Sollbestand von %1?</translation>
    </message>
    <message>
        <source>How much of %1 is there?</source>
        <translation>Wie viel ist von %1 da?</translation>
    </message>
    <message>
        <source>whoever comes</source>
        <translation>für jeden</translation>
    </message>
    <message>
        <source>for which car alone</source>
        <translation>nur für welches Auto</translation>
    </message>
    <message>
        <source>%1 of it are promised to builds as a length, not as pieces: look at their pick lists before a long piece is cut or goes away.</source>
        <translation>Davon sind %1 Aufbauten als Länge zugesagt, nicht als Stücke: erst deren Entnahmelisten ansehen, ehe ein langes Stück geschnitten wird oder weggeht.</translation>
    </message>
    <message>
        <source>%1 did not come along with this copy: what lies there is used at home meanwhile. Write it down only if you have the piece in your hand; what then does not agree is asked when the copy is brought.</source>
        <translation>%1 ist mit dieser Kopie nicht mitgekommen: Was dort liegt, wird inzwischen in der Werkstatt gebraucht. Nur aufschreiben, wenn das Stück in der Hand ist; was dann nicht zusammenpasst, wird beim Zurückbringen der Kopie gefragt.</translation>
    </message>
    <message>
        <source>%1, where it ages</source>
        <translation>%1, wo es altert</translation>
    </message>
    <message>
        <source>%3 holds %1 of %2, and %4 would go. If more lies there, count it first.</source>
        <translation>%3 hat %1 von %2, gehen sollen %4. Liegt dort mehr, erst zählen.</translation>
    </message>
</context>
<context>
    <name>StockHead</name>
    <message>
        <source>part, and what it is</source>
        <translation>Teil und was es ist</translation>
    </message>
    <message>
        <source>where</source>
        <translation>wo</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>promised</source>
        <translation>zugesagt</translation>
    </message>
    <message>
        <source>in the trailer</source>
        <translation>im Anhänger</translation>
    </message>
    <message>
        <source>we keep</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>on order</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>free in all</source>
        <translation>insgesamt frei</translation>
    </message>
    <message>
        <source>here and in the trailer, less what is promised or must stay</source>
        <translation>hier und im Anhänger, ohne was zugesagt ist oder bleiben muss</translation>
    </message>
</context>
<context>
    <name>StockSheets</name>
    <message>
        <source>Labels (*.pdf)</source>
        <translation>Etiketten (*.pdf)</translation>
    </message>
    <message>
        <source>A photo of %1</source>
        <translation>Ein Foto von %1</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png)</source>
        <translation>Bilder (*.jpg *.jpeg *.png)</translation>
    </message>
</context>
<context>
    <name>StockTable</name>
    <message>
        <source>stock, %1 parts</source>
        <translation>Lager, Teile: %1</translation>
    </message>
    <message>
        <source>broken outline: below what we keep</source>
        <translation>gestrichelt: unter Sollbestand</translation>
    </message>
</context>
<context>
    <name>StockTitle</name>
    <message>
        <source>Below what we keep?</source>
        <translation>Unter Sollbestand?</translation>
    </message>
    <message>
        <source>Unmarked fitting?</source>
        <translation>Unbekannte Verschraubung?</translation>
    </message>
    <message>
        <source>What is this?</source>
        <translation>Was ist das?</translation>
    </message>
    <message>
        <source>Ctrl+M</source>
        <translation>Strg+M</translation>
    </message>
</context>
<context>
    <name>flarestock::BenchForm</name>
    <message>
        <source>Cut %1</source>
        <translation>%1 ablängen</translation>
    </message>
    <message>
        <source>Make up a hose of %1</source>
        <translation>Schlauchleitung aus %1 fertigen</translation>
    </message>
    <message>
        <source>Open a box of %1</source>
        <translation>Einen Karton %1 öffnen</translation>
    </message>
    <message>
        <source>%1: one of %2 at %3</source>
        <translation>%1: eins von %2 in %3</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Ablängen</translation>
    </message>
    <message>
        <source>Make up</source>
        <translation>Fertigen</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>What the saw has cut stays cut: Take back puts the book right only where nothing was cut yet. A length cut for nothing goes back to the rack as a piece of its own.</source>
        <translation>Was die Säge geschnitten hat, bleibt geschnitten: „Zurücknehmen“ stellt das Buch nur richtig, wo noch nichts geschnitten wurde. Eine umsonst geschnittene Länge kommt als eigenes Stück zurück ins Regal.</translation>
    </message>
    <message>
        <source>A proof test is made with water behind a guard, nobody in line with the ends; blow the hose out and dry it before it carries fuel or brake fluid.</source>
        <translation>Die Druckprüfung wird mit Wasser hinter einem Schutz gemacht, niemand steht in Richtung der Enden; den Schlauch ausblasen und trocknen, bevor er Kraftstoff oder Bremsflüssigkeit führt.</translation>
    </message>
</context>
<context>
    <name>flarestock::GoingBack</name>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>%1 of %2 goes back, %3 → %4</source>
        <translation>%1 von %2 geht zurück, %3 → %4</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>booked twice, wrong bin</source>
        <translation>doppelt gebucht, falsches Fach</translation>
    </message>
    <message>
        <source>The book goes back, not the piece: put it where the lines below say. It stays written down that it was taken back.</source>
        <translation>Nur das Buch geht zurück, nicht das Stück: es dorthin legen, wo die Zeilen unten sagen. Dass zurückgenommen wurde, bleibt eingetragen.</translation>
    </message>
    <message>
        <source>Gone back: %1.</source>
        <translation>Zurückgenommen: %1.</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>%1: %2, %3, counts no more</source>
        <translation>%1: %2, %3, zählt nicht mehr</translation>
    </message>
    <message>
        <source>%1: what it ran at %2 counts no more</source>
        <translation>%1: was bei %2 gelaufen ist, zählt nicht mehr</translation>
    </message>
</context>
<context>
    <name>flarestock::LabelForm</name>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>With a code that scans, for the part, its lot or its place, as a PDF.</source>
        <translation>Mit scanbarem Code, für das Teil, seine Charge oder seinen Platz, als PDF.</translation>
    </message>
    <message>
        <source>for what</source>
        <translation>wofür</translation>
    </message>
    <message>
        <source>how many of each</source>
        <translation>wie viele von jedem</translation>
    </message>
    <message>
        <source>size, width by height in mm</source>
        <translation>Größe, Breite mal Höhe in mm</translation>
    </message>
    <message>
        <source>the part %1</source>
        <translation>das Teil %1</translation>
    </message>
    <message>
        <source>its lot %1</source>
        <translation>seine Charge %1</translation>
    </message>
    <message>
        <source>the place %1</source>
        <translation>der Platz %1</translation>
    </message>
    <message>
        <source>every bin, shelf and drawer</source>
        <translation>jedes Fach, Regal und jede Schublade</translation>
    </message>
    <message>
        <source>Labels for %1</source>
        <translation>Etiketten für %1</translation>
    </message>
    <message>
        <source>A page a label. The code is what a hand would type, and the scanner types it for one.</source>
        <translation>Eine Seite je Etikett. Der Code ist, was die Hand tippen würde; der Scanner tippt es für sie.</translation>
    </message>
    <message>
        <source>Choose its file …</source>
        <translation>Datei wählen …</translation>
    </message>
    <message>
        <source>Say how many of each: 1 to %1.</source>
        <translation>Angeben, wie viele von jedem: 1 bis %1.</translation>
    </message>
    <message>
        <source>1 label</source>
        <translation>1 Etikett</translation>
    </message>
    <message>
        <source>%1 labels</source>
        <translation>%1 Etiketten</translation>
    </message>
    <message>
        <source>%1 for %2 written: %3</source>
        <translation>%1 für %2 geschrieben: %3</translation>
    </message>
</context>
<context>
    <name>flarestock::OverTime</name>
    <message>
        <source>%1 came, %2 went.</source>
        <translation>Zugang %1, Abgang %2.</translation>
    </message>
    <message>
        <source>Always %1 since %2.</source>
        <translation>Seit %2 immer %1.</translation>
    </message>
    <message>
        <source>Between %1 and %2 since %3; %4 now.</source>
        <translation>Seit %3 zwischen %1 und %2; jetzt %4.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>we keep %1</source>
        <translation>Soll %1</translation>
    </message>
</context>
<context>
    <name>flarestock::PartPhoto</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>A picture file, kept in the shop beside the part.</source>
        <translation>Eine Bilddatei, in der Werkstatt beim Teil aufbewahrt.</translation>
    </message>
    <message>
        <source>Photo away</source>
        <translation>Foto weg</translation>
    </message>
    <message>
        <source>The part is shown without its photo again.</source>
        <translation>Das Teil wird wieder ohne sein Foto gezeigt.</translation>
    </message>
    <message>
        <source>photo of %1</source>
        <translation>Foto von %1</translation>
    </message>
    <message>
        <source>A photo is kept beside %1.</source>
        <translation>Ein Foto ist jetzt bei %1.</translation>
    </message>
    <message>
        <source>The photo of %1 is put away.</source>
        <translation>Das Foto von %1 ist weggelegt.</translation>
    </message>
</context>
<context>
    <name>flarestock::PlaceForm</name>
    <message>
        <source>a bin</source>
        <translation>ein Fach</translation>
    </message>
    <message>
        <source>a shelf, a rack</source>
        <translation>ein Regal</translation>
    </message>
    <message>
        <source>a drawer of the trailer</source>
        <translation>eine Schublade des Anhängers</translation>
    </message>
    <message>
        <source>a car</source>
        <translation>ein Auto</translation>
    </message>
    <message>
        <source>a supplier</source>
        <translation>ein Lieferant</translation>
    </message>
    <message>
        <source>somebody who borrows</source>
        <translation>ein Entleiher</translation>
    </message>
    <message>
        <source>somebody who repairs</source>
        <translation>eine Reparaturwerkstatt</translation>
    </message>
    <message>
        <source>New place</source>
        <translation>Neuer Platz</translation>
    </message>
    <message>
        <source>A bin, drawer, car, supplier or borrower that the shop has not had yet.</source>
        <translation>Ein Fach, eine Schublade, ein Auto, ein Lieferant oder Entleiher, den die Werkstatt noch nicht hatte.</translation>
    </message>
    <message>
        <source>its short name, as it is scanned</source>
        <translation>Kurzname, wie er gescannt wird</translation>
    </message>
    <message>
        <source>what it is</source>
        <translation>was es ist</translation>
    </message>
    <message>
        <source>in words</source>
        <translation>in Worten</translation>
    </message>
    <message>
        <source>left open: as its short name</source>
        <translation>leer: wie der Kurzname</translation>
    </message>
    <message>
        <source>A place stays, and Take back does not reach it: one that was made by mistake is left empty.</source>
        <translation>Ein Platz bleibt, „Zurücknehmen“ erreicht ihn nicht: ein versehentlich angelegter bleibt leer.</translation>
    </message>
    <message>
        <source>Nothing can be written down here.</source>
        <translation>Hier lässt sich nichts eintragen.</translation>
    </message>
    <message>
        <source>%1 is a place of the shop now.</source>
        <translation>%1 ist jetzt ein Platz der Werkstatt.</translation>
    </message>
    <message>
        <source>A new place</source>
        <translation>Ein neuer Platz</translation>
    </message>
    <message>
        <source>Add it</source>
        <translation>Hinzufügen</translation>
    </message>
</context>
<context>
    <name>flarestock::StockDesk</name>
    <message>
        <source>Stock</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Stock: what it can be</source>
        <translation>Lager: was es sein kann</translation>
    </message>
    <message>
        <source>Stock: what it can be, %1</source>
        <translation>Lager: was es sein kann, %1</translation>
    </message>
    <message>
        <source>Stock: %1</source>
        <translation>Lager: %1</translation>
    </message>
    <message>
        <source>1 part</source>
        <translation>1 Teil</translation>
    </message>
    <message>
        <source>%1 parts</source>
        <translation>%1 Teile</translation>
    </message>
    <message>
        <source>%1  ·  free is what lies in stock, is good, and is promised to no build</source>
        <translation>%1  ·  frei ist, was im Lager liegt, gut ist und keinem Aufbau zugesagt ist</translation>
    </message>
    <message>
        <source>Nothing is known here of what this shop has in stock.</source>
        <translation>Was diese Werkstatt im Lager hat, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>Looking through the shop …</source>
        <translation>Die Werkstatt wird durchgesehen …</translation>
    </message>
    <message>
        <source>Nothing in stock is like that. Clear what you asked for, or look also at what we have none of.</source>
        <translation>Nichts im Lager ist so. Die Suche leeren oder auch ansehen, was nicht da ist.</translation>
    </message>
    <message>
        <source>Nothing is in stock yet. Receive what a supplier brought: choose a part under &quot;also what we have none of&quot;.</source>
        <translation>Noch liegt nichts im Lager. Annehmen, was ein Lieferant gebracht hat: ein Teil unter „auch, was nicht da ist“ wählen.</translation>
    </message>
    <message>
        <source>nothing is below</source>
        <translation>nichts liegt darunter</translation>
    </message>
    <message>
        <source>1 part is below</source>
        <translation>1 Teil liegt darunter</translation>
    </message>
    <message>
        <source>%1 parts are below</source>
        <translation>%1 Teile liegen darunter</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
</context>
<context>
    <name>flarestock::StockForm</name>
    <message>
        <source>%1 at %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What has held fuel gives off vapour: let it drain and air before it goes into the bin, away from sparks.</source>
        <translation>Was Kraftstoff enthalten hat, gibt Dämpfe ab: vor dem Wegwerfen leerlaufen und auslüften lassen, fern von Funken.</translation>
    </message>
    <message>
        <source>Who calls a used piece good has looked at its threads, its seat and its seals.</source>
        <translation>Wer ein gebrauchtes Stück gut nennt, hat sich seine Gewinde, seinen Sitz und seine Dichtungen angesehen.</translation>
    </message>
    <message>
        <source>Write down what you have counted, 0 where nothing lies there.</source>
        <translation>Eintragen, was gezählt wurde, 0, wo nichts liegt.</translation>
    </message>
</context>
<context>
    <name>flarestock::StockRows</name>
    <message>
        <source>out</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>low</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>plenty</source>
        <translation>reichlich</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>away</source>
        <translation>außer Haus</translation>
    </message>
    <message>
        <source>in a car</source>
        <translation>in einem Auto</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>here %1</source>
        <translation>hier %1</translation>
    </message>
    <message>
        <source>promised %1</source>
        <translation>zugesagt %1</translation>
    </message>
    <message>
        <source>in the trailer %1</source>
        <translation>im Anhänger %1</translation>
    </message>
    <message>
        <source>kept %1</source>
        <translation>Soll %1</translation>
    </message>
    <message>
        <source>on order %1</source>
        <translation>bestellt %1</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>Ort: %1</translation>
    </message>
    <message>
        <source>below what we keep</source>
        <translation>unter Sollbestand</translation>
    </message>
    <message>
        <source>a tin of odds</source>
        <translation>Dose Kleinteile</translation>
    </message>
    <message>
        <source>below</source>
        <translation>unter Soll</translation>
    </message>
    <message>
        <source>free in all %1</source>
        <translation>insgesamt frei %1</translation>
    </message>
</context>
</TS>
