<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>BroughtView</name>
    <message>
        <source>Bring it back: %1 to decide first</source>
        <translation>Zurückbringen: erst %1 zu entscheiden</translation>
    </message>
    <message>
        <source>Bring it back</source>
        <translation>Zurückbringen</translation>
    </message>
    <message>
        <source>Bring it, and it stays away</source>
        <translation>Übernehmen, und sie bleibt unterwegs</translation>
    </message>
    <message>
        <source>Close this look</source>
        <translation>Ansicht schließen</translation>
    </message>
</context>
<context>
    <name>CarryBars</name>
    <message>
        <source>chance that so many suffice. %1</source>
        <translation>Wahrscheinlichkeit, dass so viele reichen. %1</translation>
    </message>
    <message>
        <source>there</source>
        <translation>da</translation>
    </message>
</context>
<context>
    <name>CarryPane</name>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <source>nothing lacks with</source>
        <translation>nichts fehlt mit</translation>
    </message>
    <message>
        <source>certain for</source>
        <translation>Gewissheit für</translation>
    </message>
    <message>
        <source>each part by itself</source>
        <translation>jedes Teil für sich</translation>
    </message>
    <message>
        <source>all together, at least money</source>
        <translation>alle zusammen, am günstigsten</translation>
    </message>
    <message>
        <source>another part</source>
        <translation>weiteres Teil</translation>
    </message>
    <message>
        <source>%1 is no part of this shop.</source>
        <translation>%1 ist kein Teil dieser Werkstatt.</translation>
    </message>
    <message>
        <source>part, and how it is used up</source>
        <translation>Teil und wie es verbraucht wird</translation>
    </message>
    <message>
        <source>carry</source>
        <translation>mit</translation>
    </message>
    <message>
        <source>there</source>
        <translation>da</translation>
    </message>
    <message>
        <source>spares to carry, %1 parts</source>
        <translation>Ersatzteile zum Mitnehmen, Teile: %1</translation>
    </message>
    <message>
        <source>Reckoning …</source>
        <translation>Wird errechnet …</translation>
    </message>
    <message>
        <source>No part is listed in the shop&apos;s spares.csv. Write the number of one above.</source>
        <translation>In spares.csv der Werkstatt steht kein Teil. Oben die Nummer eines Teils eintragen.</translation>
    </message>
</context>
<context>
    <name>Carrying</name>
    <message>
        <source>wears out, counted</source>
        <translation>Verschleiß, gezählt</translation>
    </message>
    <message>
        <source>crash, in sets</source>
        <translation>Unfall, in Sätzen</translation>
    </message>
    <message>
        <source>crash, a judgement</source>
        <translation>Unfall, nach Ermessen</translation>
    </message>
    <message>
        <source>by chance, Poisson</source>
        <translation>Zufall, Poisson</translation>
    </message>
    <message>
        <source>by chance, few uses</source>
        <translation>Zufall, wenig Verbrauch</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation>%1 zu wenig</translation>
    </message>
    <message>
        <source>carry %1</source>
        <translation>mitnehmen: %1</translation>
    </message>
    <message>
        <source>there: %1</source>
        <translation>da: %1</translation>
    </message>
    <message>
        <source>the shop&apos;s own history at %1</source>
        <translation>die eigenen Aufzeichnungen der Werkstatt: %1</translation>
    </message>
    <message>
        <source>Poisson</source>
        <translation>Poisson</translation>
    </message>
    <message>
        <source>predictive: the rate itself is only known from few uses</source>
        <translation>prädiktiv: die Rate selbst ist nur aus wenig Verbrauch bekannt</translation>
    </message>
    <message>
        <source>%1. %2 would say %3.</source>
        <translation>%1. %2 ergäbe %3.</translation>
    </message>
    <message>
        <source>Predictive</source>
        <translation>Prädiktiv</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>from</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>to be expected</source>
        <translation>zu erwarten</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>law</source>
        <translation>Verteilung</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <source>fitted</source>
        <translation>eingebaut</translation>
    </message>
    <message>
        <source>fill rate</source>
        <translation>Erfüllungsgrad</translation>
    </message>
    <message>
        <source>of all that will be wanted %1 is there; that is another measure</source>
        <translation>von allem, was gebraucht werden wird, sind %1 da; das ist ein anderes Maß</translation>
    </message>
    <message>
        <source>%1 suffice with %2</source>
        <translation>mit %1 reicht es zu %2</translation>
    </message>
    <message>
        <source>until what is ordered now can be here</source>
        <translation>bis hier sein kann, was jetzt bestellt wird</translation>
    </message>
    <message>
        <source>only %1</source>
        <translation>nur %1</translation>
    </message>
    <message>
        <source>the next event: %1</source>
        <translation>die nächste Veranstaltung: %1</translation>
    </message>
    <message>
        <source>the next %1 events, to %2</source>
        <translation>die nächsten %1 Veranstaltungen, bis %2</translation>
    </message>
    <message>
        <source>Carry %1: so many are due before the running is over.</source>
        <translation>%1 mitnehmen: So viel wird fällig, bevor das Fahren vorbei ist.</translation>
    </message>
    <message>
        <source>%1 %2 more when it is.</source>
        <translation>%1 Danach noch %2.</translation>
    </message>
    <message>
        <source>Carry %1: nothing lacks with %2.</source>
        <translation>%1 mitnehmen: Mit einer Gewissheit von %2 fehlt nichts.</translation>
    </message>
    <message>
        <source>Carry %1: a judgement, which no chance stands behind.</source>
        <translation>%1 mitnehmen: ein Ermessen, hinter dem keine Wahrscheinlichkeit steht.</translation>
    </message>
    <message>
        <source>All of it together costs %1; nothing of what is used by chance lacks with %2.</source>
        <translation>Alles zusammen kostet %1; von dem, was durch Zufall verbraucht wird, fehlt mit %2 nichts.</translation>
    </message>
    <message>
        <source>No kit of that certainty costs less.</source>
        <translation>Keine Zusammenstellung mit dieser Gewissheit kostet weniger.</translation>
    </message>
    <message>
        <source>That no other costs less is not proven; none costs less than %1.</source>
        <translation>Dass keine andere weniger kostet, ist nicht bewiesen; keine kostet weniger als %1.</translation>
    </message>
    <message>
        <source>the interval in the list of spares, and how far each piece has run</source>
        <translation>das Intervall in der Ersatzteilliste und wie weit jedes Stück gelaufen ist</translation>
    </message>
    <message>
        <source>the rate in the list of spares</source>
        <translation>die Rate in der Ersatzteilliste</translation>
    </message>
    <message>
        <source>so many sets as the list of spares says</source>
        <translation>so viele Sätze, wie die Ersatzteilliste sagt</translation>
    </message>
    <message>
        <source>%1, the next event at least; %2</source>
        <translation>%1, mindestens die nächste Veranstaltung; %2</translation>
    </message>
</context>
<context>
    <name>Copies</name>
    <message>
        <source>%1 of %2, %3 → %4</source>
        <translation>%1 von %2, %3 → %4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>decided: %1</source>
        <translation>entschieden: %1</translation>
    </message>
    <message>
        <source>to decide: %1</source>
        <translation>zu entscheiden: %1</translation>
    </message>
    <message>
        <source>1 movement</source>
        <translation>1 Bewegung</translation>
    </message>
    <message>
        <source>%1 movements</source>
        <translation>%1 Bewegungen</translation>
    </message>
    <message>
        <source>1 record</source>
        <translation>1 Eintrag</translation>
    </message>
    <message>
        <source>%1 records</source>
        <translation>%1 Einträge</translation>
    </message>
    <message>
        <source>new place %1</source>
        <translation>neuer Platz %1</translation>
    </message>
    <message>
        <source>1 look into a box</source>
        <translation>1 Blick in einen Karton</translation>
    </message>
    <message>
        <source>%1 looks into boxes</source>
        <translation>%1 Blicke in Kartons</translation>
    </message>
    <message>
        <source>nothing new</source>
        <translation>nichts Neues</translation>
    </message>
    <message>
        <source>ended %1</source>
        <translation>beendet am %1</translation>
    </message>
    <message>
        <source>back %1</source>
        <translation>zurück am %1</translation>
    </message>
    <message>
        <source>away</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>away, brought %1</source>
        <translation>unterwegs, übernommen am %1</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>mitgenommen am %1</translation>
    </message>
    <message>
        <source>taken %1 by %2</source>
        <translation>mitgenommen am %1 von %2</translation>
    </message>
    <message>
        <source>with %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>no place is its own</source>
        <translation>kein Platz gehört ihr</translation>
    </message>
    <message>
        <source>its own: %1</source>
        <translation>ihr gehört: %1</translation>
    </message>
    <message>
        <source>copy %1, %2, %3</source>
        <translation>Kopie %1, %2, %3</translation>
    </message>
    <message>
        <source>away with the copy %1</source>
        <translation>unterwegs mit der Kopie %1</translation>
    </message>
    <message>
        <source>away with %1</source>
        <translation>unterwegs mit %1</translation>
    </message>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2: %3 %4</translation>
    </message>
    <message>
        <source>%1 ran at %2</source>
        <translation>%1 ist gelaufen bei %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>taken back: %1</source>
        <translation>zurückgenommen: %1</translation>
    </message>
    <message>
        <source>called %1 from then on</source>
        <translation>heißt von da an %1</translation>
    </message>
    <message>
        <source>%1: %2 at %3</source>
        <translation>%1: %2 in %3</translation>
    </message>
    <message>
        <source>found %1</source>
        <translation>gefunden %1</translation>
    </message>
    <message>
        <source>%1 (there then: %2)</source>
        <translation>%1 (dann dort: %2)</translation>
    </message>
    <message>
        <source>%1 (there are: %2)</source>
        <translation>%1 (dort liegen: %2)</translation>
    </message>
    <message>
        <source>%1: %2 lack</source>
        <translation>%1: %2 fehlen</translation>
    </message>
    <message>
        <source>%1: taken %2, there %3</source>
        <translation>%1: genommen %2, dort %3</translation>
    </message>
    <message>
        <source>%1 is open again</source>
        <translation>%1 ist wieder offen</translation>
    </message>
    <message>
        <source>%1 is done</source>
        <translation>%1 ist fertig</translation>
    </message>
    <message>
        <source>no more promised to %1: %2 of %3</source>
        <translation>%1 nicht mehr zugesagt: %2 von %3</translation>
    </message>
    <message>
        <source>promised to %1: %2 of %3</source>
        <translation>%1 zugesagt: %2 von %3</translation>
    </message>
</context>
<context>
    <name>CopiesPane</name>
    <message>
        <source>copies that go along: %1</source>
        <translation>Kopien zum Mitnehmen: %1</translation>
    </message>
    <message>
        <source>A copy is the shop in one file for another machine, without a network. What lies in its drawers is the copy&apos;s until it is back: here nobody moves, counts or promises it meanwhile.</source>
        <translation>Eine Kopie ist die Werkstatt in einer Datei für einen anderen Rechner, ohne Netz. Was in ihren Schubladen liegt, gehört der Kopie, bis sie zurück ist: Hier wird es so lange nicht umgelagert, gezählt oder zugesagt.</translation>
    </message>
    <message>
        <source>Take a copy along…</source>
        <translation>Kopie mitnehmen…</translation>
    </message>
    <message>
        <source>A copy came back: look at it…</source>
        <translation>Eine Kopie kam zurück: ansehen…</translation>
    </message>
    <message>
        <source>Copies that went along: %1</source>
        <translation>Mitgenommene Kopien: %1</translation>
    </message>
</context>
<context>
    <name>CopyProgress</name>
    <message>
        <source>Stop</source>
        <translation>Abbrechen</translation>
    </message>
</context>
<context>
    <name>CopySheets</name>
    <message>
        <source>Where the copy goes</source>
        <translation>Wohin die Kopie kommt</translation>
    </message>
    <message>
        <source>Shop files (*.flarestock)</source>
        <translation>Werkstattdateien (*.flarestock)</translation>
    </message>
    <message>
        <source>The copy that came back</source>
        <translation>Die Kopie, die zurückkam</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Put it there</source>
        <translation>Dorthin legen</translation>
    </message>
    <message>
        <source>trailer-copy.flarestock</source>
        <translation>anhaenger-kopie.flarestock</translation>
    </message>
</context>
<context>
    <name>DrawerFront</name>
    <message>
        <source>%1, pulled out</source>
        <translation>%1, herausgezogen</translation>
    </message>
</context>
<context>
    <name>DrawerTable</name>
    <message>
        <source>there</source>
        <translation>da</translation>
    </message>
    <message>
        <source>to be</source>
        <translation>soll</translation>
    </message>
    <message>
        <source>Note as brought: all it lacks</source>
        <translation>Als eingeräumt vermerken: alles, was fehlt</translation>
    </message>
</context>
<context>
    <name>DrawerWall</name>
    <message>
        <source>drawers of the trailer</source>
        <translation>Schubladen des Anhängers</translation>
    </message>
</context>
<context>
    <name>GiveUpSheet</name>
    <message>
        <source>The copy %1 does not come back</source>
        <translation>Die Kopie %1 kommt nicht zurück</translation>
    </message>
    <message>
        <source>Its drawers are the shop&apos;s again, as the book has them: count them. What was used in the copy is not known here. Were it brought all the same, what is new in it would come, and what disagrees would be asked.</source>
        <translation>Ihre Schubladen gehören wieder der Werkstatt, so wie sie im Buch stehen: nachzählen. Was in der Kopie verbraucht wurde, ist hier nicht bekannt. Würde sie doch noch zurückgebracht, käme das Neue darin hinzu, und nach dem, was sich widerspricht, würde gefragt.</translation>
    </message>
    <message>
        <source>From now on this drawer is moved and counted here, although it is with the copy. What both sides then say of it can disagree; that is asked when the copy is brought. This cannot be taken back.</source>
        <translation>Ab jetzt wird in dieser Schublade hier umgelagert und gezählt, obwohl sie bei der Kopie ist. Was beide Seiten dann über sie sagen, kann sich widersprechen; danach wird gefragt, wenn die Kopie zurückgebracht wird. Dies lässt sich nicht zurücknehmen.</translation>
    </message>
    <message>
        <source>which drawer</source>
        <translation>welche Schublade</translation>
    </message>
    <message>
        <source>It is away no more</source>
        <translation>Sie ist nicht mehr unterwegs</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
    <message>
        <source>Release a drawer of the copy %1</source>
        <translation>Eine Schublade der Kopie %1 freigeben</translation>
    </message>
    <message>
        <source>Release it: it is used here</source>
        <translation>Freigeben: Sie wird hier benutzt</translation>
    </message>
</context>
<context>
    <name>LoadPane</name>
    <message>
        <source>what to take out of the drawers</source>
        <translation>was aus den Schubladen auszuräumen ist</translation>
    </message>
    <message>
        <source>what to bring into the drawers</source>
        <translation>was in die Schubladen einzuräumen ist</translation>
    </message>
    <message>
        <source>%1 is not on this list, or it is ticked already.</source>
        <translation>%1 steht nicht auf dieser Liste oder ist schon abgehakt.</translation>
    </message>
    <message>
        <source>Nothing is to be taken out: all that lies in the drawers belongs there.</source>
        <translation>Nichts ist auszuräumen: Alles, was in den Schubladen liegt, gehört dorthin.</translation>
    </message>
    <message>
        <source>Nothing is to be brought: every drawer holds what it is to hold.</source>
        <translation>Nichts ist einzuräumen: Jede Schublade hat, was sie haben soll.</translation>
    </message>
    <message>
        <source>typed or scanned: %1, Enter looks for it</source>
        <translation>getippt oder gescannt: %1, Enter sucht es</translation>
    </message>
    <message>
        <source>where what has no bin goes</source>
        <translation>wohin kommt, was kein Fach hat</translation>
    </message>
    <message>
        <source>no bin: where to?</source>
        <translation>kein Fach: wohin?</translation>
    </message>
    <message>
        <source>no bin: to %1</source>
        <translation>kein Fach: nach %1</translation>
    </message>
    <message>
        <source>Note as taken out: %1 of %2</source>
        <translation>Als ausgeräumt vermerken: %1 von %2</translation>
    </message>
    <message>
        <source>Note as brought: %1 of %2</source>
        <translation>Als eingeräumt vermerken: %1 von %2</translation>
    </message>
    <message>
        <source>Tick none</source>
        <translation>Nichts abhaken</translation>
    </message>
    <message>
        <source>Tick all</source>
        <translation>Alles abhaken</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>write this list to a file</source>
        <translation>diese Liste in eine Datei schreiben</translation>
    </message>
</context>
<context>
    <name>LoadStop</name>
    <message>
        <source>to buy</source>
        <translation>zu kaufen</translation>
    </message>
    <message>
        <source>no bin</source>
        <translation>kein Fach</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
<context>
    <name>LookCopySheet</name>
    <message>
        <source>A copy came back</source>
        <translation>Eine Kopie kam zurück</translation>
    </message>
    <message>
        <source>It is looked at first: what it would bring, and what has to be decided. Nothing is written by that, and the copy itself stays as it is.</source>
        <translation>Sie wird erst angesehen: was sie brächte und was zu entscheiden ist. Geschrieben wird dabei nichts, und die Kopie selbst bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>the file of the copy</source>
        <translation>die Datei der Kopie</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
</context>
<context>
    <name>QuestionSlip</name>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>which one, for: %1</source>
        <translation>welches, für: %1</translation>
    </message>
    <message>
        <source>which one? write its number</source>
        <translation>welches? Nummer eintragen</translation>
    </message>
</context>
<context>
    <name>SpareLine</name>
    <message>
        <source>%1  ·  %2, %3</source>
        <translation>%1  ·  %2, %3</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
<context>
    <name>SumBehind</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>drawer that is to hold it</source>
        <translation>Schublade, die es haben soll</translation>
    </message>
    <message>
        <source>Make it the level of this drawer</source>
        <translation>Als Sollbestand dieser Schublade</translation>
    </message>
    <message>
        <source>… of all parts, each in its drawer</source>
        <translation>… für alle Teile, je in ihrer Schublade</translation>
    </message>
</context>
<context>
    <name>TakeCopySheet</name>
    <message>
        <source>Take a copy along</source>
        <translation>Kopie mitnehmen</translation>
    </message>
    <message>
        <source>The copy is one file for another machine. Until it is brought back, what lies in these drawers is used there and not here.</source>
        <translation>Die Kopie ist eine Datei für einen anderen Rechner. Bis sie zurückgebracht ist, wird das, was in diesen Schubladen liegt, dort benutzt und nicht hier.</translation>
    </message>
    <message>
        <source>the new file</source>
        <translation>die neue Datei</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
    <message>
        <source>who has it</source>
        <translation>wer sie hat</translation>
    </message>
    <message>
        <source>what it is called; empty: as its file</source>
        <translation>wie sie heißt; leer: wie ihre Datei</translation>
    </message>
    <message>
        <source>what the copy is called</source>
        <translation>wie die Kopie heißt</translation>
    </message>
    <message>
        <source>the drawers that go along</source>
        <translation>die Schubladen, die mitgehen</translation>
    </message>
    <message>
        <source>Take it along</source>
        <translation>Mitnehmen</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
</context>
<context>
    <name>Trailer</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>no list</source>
        <translation>keine Liste</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>%1 aus %2</translation>
    </message>
    <message>
        <source>%1 to buy</source>
        <translation>%1 zu kaufen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not in the catalogue</source>
        <translation>nicht im Katalog</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 zu wenig</translation>
    </message>
    <message>
        <source>there: %1</source>
        <translation>da: %1</translation>
    </message>
    <message>
        <source>to be there: %1</source>
        <translation>soll: %1</translation>
    </message>
    <message>
        <source>not on its list</source>
        <translation>nicht auf ihrer Liste</translation>
    </message>
    <message>
        <source>more than it is to hold</source>
        <translation>mehr, als sie haben soll</translation>
    </message>
    <message>
        <source>to be checked</source>
        <translation>zu prüfen</translation>
    </message>
    <message>
        <source>not to be used</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>past its day by then</source>
        <translation>bis dahin abgelaufen</translation>
    </message>
    <message>
        <source>its box is open</source>
        <translation>sein Karton ist offen</translation>
    </message>
    <message>
        <source>%1 to take out</source>
        <translation>%1 ausräumen</translation>
    </message>
    <message>
        <source>all is there</source>
        <translation>alles ist da</translation>
    </message>
    <message>
        <source>nothing lacks</source>
        <translation>nichts fehlt</translation>
    </message>
    <message>
        <source>%1, %2: %3, %4</source>
        <translation>%1, %2: %3, %4</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>zu kaufen</translation>
    </message>
</context>
<context>
    <name>TrailerArea</name>
    <message>
        <source>%1 is neither a drawer nor a part in one or for one.</source>
        <translation>%1 ist weder eine Schublade noch ein Teil in einer oder für eine.</translation>
    </message>
    <message>
        <source>A drawer, or a part on the load list  (Ctrl+F)</source>
        <translation>Schublade oder Teil auf der Liste  (Strg+F)</translation>
    </message>
    <message>
        <source>Find in the trailer</source>
        <translation>Im Anhänger suchen</translation>
    </message>
</context>
<context>
    <name>TrailerTitle</name>
    <message>
        <source>packed for</source>
        <translation>gepackt für</translation>
    </message>
    <message>
        <source>Is it all there?</source>
        <translation>Ist alles da?</translation>
    </message>
    <message>
        <source>Is a copy away?</source>
        <translation>Ist eine Kopie unterwegs?</translation>
    </message>
</context>
<context>
    <name>TripLine</name>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>It does not come back…</source>
        <translation>Sie kommt nicht zurück…</translation>
    </message>
    <message>
        <source>Release a drawer of it…</source>
        <translation>Eine Schublade davon freigeben…</translation>
    </message>
</context>
<context>
    <name>WorkTabs</name>
    <message>
        <source>Drawer</source>
        <translation>Schublade</translation>
    </message>
    <message>
        <source>Bring in: %1</source>
        <translation>Einräumen: %1</translation>
    </message>
    <message>
        <source>Bring in</source>
        <translation>Einräumen</translation>
    </message>
    <message>
        <source>Take out: %1</source>
        <translation>Ausräumen: %1</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Ausräumen</translation>
    </message>
    <message>
        <source>Spares</source>
        <translation>Ersatzteile</translation>
    </message>
    <message>
        <source>How many to carry</source>
        <translation>Wie viel mitnehmen</translation>
    </message>
    <message>
        <source>Copies: %1 away</source>
        <translation>Kopien: %1 unterwegs</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Kopien</translation>
    </message>
</context>
<context>
    <name>flarestock::CarryDesk</name>
    <message>
        <source>95 %</source>
        <translation>95 %</translation>
    </message>
    <message>
        <source>a certainty of</source>
        <translation>eine Gewissheit von</translation>
    </message>
    <message>
        <source>Choose the drawer that is to hold it.</source>
        <translation>Die Schublade wählen, die es haben soll.</translation>
    </message>
    <message>
        <source>Of this part nothing could be reckoned.</source>
        <translation>Für dieses Teil ließ sich nichts errechnen.</translation>
    </message>
    <message>
        <source>%1 is to hold %2 of %3.</source>
        <translation>%1 soll haben: %2 von %3.</translation>
    </message>
    <message>
        <source>Of no part anything could be reckoned.</source>
        <translation>Für kein Teil ließ sich etwas errechnen.</translation>
    </message>
    <message>
        <source>The drawers are to hold what was reckoned of %1 parts.</source>
        <translation>Die Schubladen sollen haben, was errechnet wurde; Teile: %1.</translation>
    </message>
</context>
<context>
    <name>flarestock::CopiesDesk</name>
    <message>
        <source>Stopping …</source>
        <translation>Wird abgebrochen …</translation>
    </message>
    <message>
        <source>%1 %2 of %3 entries</source>
        <translation>%1 %2 von %3 Einträgen</translation>
    </message>
    <message>
        <source>This shop is itself the copy %1 that was taken along. Bring it back at the shop that it was taken from.</source>
        <translation>Diese Werkstatt ist selbst die Kopie %1, die mitgenommen wurde. Zurückbringen lässt sie sich in der Werkstatt, aus der sie stammt.</translation>
    </message>
    <message>
        <source>Nothing can be written down here.</source>
        <translation>Hier lässt sich nichts eintragen.</translation>
    </message>
    <message>
        <source>this is one</source>
        <translation>dies ist eine</translation>
    </message>
    <message>
        <source>none is away</source>
        <translation>keine ist unterwegs</translation>
    </message>
    <message>
        <source>1 is away</source>
        <translation>1 ist unterwegs</translation>
    </message>
    <message>
        <source>%1 are away</source>
        <translation>%1 sind unterwegs</translation>
    </message>
    <message>
        <source>trailer</source>
        <translation>anhaenger</translation>
    </message>
    <message>
        <source>The copy %1</source>
        <translation>Die Kopie %1</translation>
    </message>
    <message>
        <source>It was brought already: nothing new is in it.</source>
        <translation>Sie wurde schon zurückgebracht: Nichts Neues ist darin.</translation>
    </message>
    <message>
        <source>Brought: %1. Nothing counts twice.</source>
        <translation>Übernommen: %1. Nichts zählt doppelt.</translation>
    </message>
    <message>
        <source>Would come: %1.</source>
        <translation>Hinzu käme: %1.</translation>
    </message>
    <message>
        <source>It does not know %1 of the shop&apos;s entries: to go on with it, take a new copy.</source>
        <translation>Von den Einträgen der Werkstatt kennt sie %1 nicht: Um weiterzuarbeiten, eine neue Kopie mitnehmen.</translation>
    </message>
    <message>
        <source>The shop is being written just now. Try again.</source>
        <translation>In die Werkstatt wird gerade geschrieben. Noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Name the file that goes along.</source>
        <translation>Die Datei nennen, die mitgeht.</translation>
    </message>
    <message>
        <source>Choose a drawer at least that goes along.</source>
        <translation>Mindestens eine Schublade wählen, die mitgeht.</translation>
    </message>
    <message>
        <source>The copy is being made …</source>
        <translation>Die Kopie wird angelegt …</translation>
    </message>
    <message>
        <source>Taken along as %1: %2.</source>
        <translation>Mitgenommen als %1: %2.</translation>
    </message>
    <message>
        <source>Choose the file of the copy.</source>
        <translation>Die Datei der Kopie wählen.</translation>
    </message>
    <message>
        <source>One question is open: choose an answer to it.</source>
        <translation>Eine Frage ist offen: eine Antwort dazu wählen.</translation>
    </message>
    <message>
        <source>%1 questions are open: choose an answer to each.</source>
        <translation>%1 Fragen sind offen: zu jeder eine Antwort wählen.</translation>
    </message>
    <message>
        <source>Looking at the copy …</source>
        <translation>Die Kopie wird angesehen …</translation>
    </message>
    <message>
        <source>Bringing it back …</source>
        <translation>Wird zurückgebracht …</translation>
    </message>
    <message>
        <source>Stopped: nothing of the copy was taken in.</source>
        <translation>Abgebrochen: Von der Kopie wurde nichts übernommen.</translation>
    </message>
    <message>
        <source>Brought back from %1: %2.</source>
        <translation>Zurückgebracht aus %1: %2.</translation>
    </message>
    <message>
        <source>Being written down …</source>
        <translation>Wird eingetragen …</translation>
    </message>
    <message>
        <source>The shop uses %1 from now on, although it is with the copy %2.</source>
        <translation>Die Werkstatt benutzt %1 ab jetzt, obwohl diese Schublade bei der Kopie %2 ist.</translation>
    </message>
    <message>
        <source>The copy %1 is away no more: what it had is the shop&apos;s again.</source>
        <translation>Die Kopie %1 ist nicht mehr unterwegs: Was sie hatte, gehört wieder der Werkstatt.</translation>
    </message>
    <message>
        <source>That a copy went along is not taken back by this key: give it up under Copies.</source>
        <translation>Dass eine Kopie mitging, nimmt diese Taste nicht zurück: die Kopie unter „Kopien“ aufgeben.</translation>
    </message>
    <message>
        <source>That the copy %1 was brought stays. What came with it is taken back one by one: in the journal of its part under Stock, or where Service says what was done.</source>
        <translation>Dass die Kopie %1 zurückgebracht ist, bleibt. Was mit ihr kam, wird einzeln zurückgenommen: im Journal des Teils unter Lager oder wo Wartung sagt, was gemacht wurde.</translation>
    </message>
    <message>
        <source>That the shop uses %1 stays until the copy is brought.</source>
        <translation>Dass die Werkstatt %1 benutzt, bleibt, bis die Kopie zurückgebracht ist.</translation>
    </message>
    <message>
        <source>That the copy %1 was given up stays; what it holds can still be brought.</source>
        <translation>Dass die Kopie %1 aufgegeben ist, bleibt; was in ihr steht, kann trotzdem zurückgebracht werden.</translation>
    </message>
    <message>
        <source>Take a copy along</source>
        <translation>Kopie mitnehmen</translation>
    </message>
</context>
<context>
    <name>flarestock::LoadList</name>
    <message>
        <source>Tick first what is in the hand.</source>
        <translation>Erst abhaken, was in der Hand ist.</translation>
    </message>
    <message>
        <source>There is nothing in the bins to bring into %1.</source>
        <translation>In den Fächern liegt nichts, was nach %1 einzuräumen wäre.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 lines of the list</source>
        <translation>%1 Zeilen der Liste</translation>
    </message>
    <message>
        <source>Brought into the trailer: %1.</source>
        <translation>In den Anhänger eingeräumt: %1.</translation>
    </message>
    <message>
        <source>Taken out of the trailer: %1.</source>
        <translation>Aus dem Anhänger ausgeräumt: %1.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
</context>
<context>
    <name>flarestock::TrailerDesk</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Trailer, by %1</source>
        <translation>Anhänger, bis %1</translation>
    </message>
    <message>
        <source>Trailer</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>1 drawer</source>
        <translation>1 Schublade</translation>
    </message>
    <message>
        <source>%1 drawers</source>
        <translation>%1 Schubladen</translation>
    </message>
    <message>
        <source>%1  ·  counted as there is what is good on %2</source>
        <translation>%1  ·  als da zählt, was am %2 gut ist</translation>
    </message>
    <message>
        <source>Nothing is known here of what this shop has in its trailer.</source>
        <translation>Was diese Werkstatt in ihrem Anhänger hat, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>Looking into the drawers …</source>
        <translation>Die Schubladen werden durchgesehen …</translation>
    </message>
    <message>
        <source>The shop has no drawer yet. Its places are kept in shop.toml: a place of the kind drawer is one of the trailer.</source>
        <translation>Die Werkstatt hat noch keine Schublade. Ihre Plätze stehen in shop.toml: Ein Platz der Art drawer gehört zum Anhänger.</translation>
    </message>
    <message>
        <source>looking</source>
        <translation>wird angesehen</translation>
    </message>
    <message>
        <source>%1 of %2 pieces</source>
        <translation>%1 von %2 Stück</translation>
    </message>
    <message>
        <source>as of today</source>
        <translation>Stand heute</translation>
    </message>
    <message>
        <source>Pulled out: %1, %2</source>
        <translation>Herausgezogen: %1, %2</translation>
    </message>
    <message>
        <source>Nothing lies here, and nothing is to.</source>
        <translation>Hier liegt nichts, und hier soll nichts liegen.</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
</TS>
