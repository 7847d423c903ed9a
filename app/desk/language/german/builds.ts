<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Abreast</name>
    <message>
        <source>not enough for all</source>
        <translation>reicht nicht für alle</translation>
    </message>
    <message>
        <source>Nothing changes: each build gets what it had.</source>
        <translation>Es ändert sich nichts: Jeder Aufbau bekommt, was er hatte.</translation>
    </message>
    <message>
        <source>No pieces change hands; what is short has to be ordered by other days.</source>
        <translation>Kein Stück wechselt den Aufbau; was fehlt, ist bis zu anderen Tagen zu bestellen.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 loses %2</source>
        <translation>%1 verliert %2</translation>
    </message>
    <message>
        <source>%1 gets %2</source>
        <translation>%1 bekommt %2</translation>
    </message>
    <message>
        <source>one more build changes</source>
        <translation>bei einem weiteren Aufbau ändert sich etwas</translation>
    </message>
    <message>
        <source>%1 more builds change</source>
        <translation>bei %1 weiteren Aufbauten ändert sich etwas</translation>
    </message>
    <message>
        <source>More to order: %1.</source>
        <translation>Mehr zu bestellen: %1.</translation>
    </message>
    <message>
        <source>More to order: %1, the first by %2.</source>
        <translation>Mehr zu bestellen: %1, das erste bis %2.</translation>
    </message>
    <message>
        <source>Less to order: %1.</source>
        <translation>Weniger zu bestellen: %1.</translation>
    </message>
    <message>
        <source>%1 short, %2 too late</source>
        <translation>%1 fehlen, %2 zu spät</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 fehlen</translation>
    </message>
    <message>
        <source>%1 on the way, all in time</source>
        <translation>%1 unterwegs, alles rechtzeitig</translation>
    </message>
    <message>
        <source>all here</source>
        <translation>alles hier</translation>
    </message>
    <message>
        <source>no car</source>
        <translation>kein Auto</translation>
    </message>
    <message>
        <source>was %1</source>
        <translation>war %1</translation>
    </message>
    <message>
        <source>needs %1</source>
        <translation>braucht %1</translation>
    </message>
    <message>
        <source>wants none</source>
        <translation>braucht nichts davon</translation>
    </message>
    <message>
        <source>%1, %2 %3: %4</source>
        <translation>%1, %2 %3: %4</translation>
    </message>
    <message>
        <source>before: wanted none</source>
        <translation>vorher: brauchte nichts</translation>
    </message>
    <message>
        <source>before: %1</source>
        <translation>vorher: %1</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>none here</source>
        <translation>nichts hier</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>%1 here, %2 free</source>
        <translation>%1 hier, %2 frei</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 on order, no day said</source>
        <translation>%1 bestellt, kein Tag genannt</translation>
    </message>
    <message>
        <source>%1 due %2</source>
        <translation>%1 erwartet %2</translation>
    </message>
    <message>
        <source>enough for all</source>
        <translation>reicht für alle</translation>
    </message>
    <message>
        <source>one build only, all here</source>
        <translation>nur ein Aufbau, alles hier</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>%1 an %2, %3</translation>
    </message>
    <message>
        <source>%1 reserved for %2</source>
        <translation>%1 reserviert für %2</translation>
    </message>
    <message>
        <source>It gets the last of the stock: %1.</source>
        <translation>Er bekommt das Letzte aus dem Lager: %1.</translation>
    </message>
    <message>
        <source>It gets the last of the stock, %1: %2 comes after it.</source>
        <translation>Er bekommt das Letzte aus dem Lager, %1: Danach kommt %2.</translation>
    </message>
    <message>
        <source>It gets the last of the stock, %1: %2 has the same day and stands after it.</source>
        <translation>Er bekommt das Letzte aus dem Lager, %1: %2 hat denselben Tag und steht dahinter.</translation>
    </message>
    <message>
        <source>It gets the last of the stock, %1: its day, %2, comes before that of %3, %4.</source>
        <translation>Er bekommt das Letzte aus dem Lager, %1: Sein Tag, %2, kommt vor dem von %3, %4.</translation>
    </message>
    <message>
        <source>%1 in its car and %2 reserved stay its own, whatever the days.</source>
        <translation>%1 in seinem Auto und %2 reserviert: Das bleibt ihm bei allen Tagen.</translation>
    </message>
    <message>
        <source>%1 in its car: that stays its own, whatever the days.</source>
        <translation>%1 in seinem Auto: Das bleibt ihm bei allen Tagen.</translation>
    </message>
    <message>
        <source>%1 reserved: that stays its own, whatever the days.</source>
        <translation>%1 reserviert: Das bleibt ihm bei allen Tagen.</translation>
    </message>
    <message>
        <source>%1 of %2, due %3</source>
        <translation>%1 von %2, erwartet %3</translation>
    </message>
    <message>
        <source>In time yet: %1, ordered by %2.</source>
        <translation>Noch rechtzeitig: %1, bestellt bis %2.</translation>
    </message>
    <message>
        <source>%1, and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>no day said</source>
        <translation>kein Tag genannt</translation>
    </message>
    <message>
        <source>%1 in the car</source>
        <translation>%1 im Auto</translation>
    </message>
    <message>
        <source>%1 reserved</source>
        <translation>%1 reserviert</translation>
    </message>
    <message>
        <source>%1 here, the last</source>
        <translation>%1 hier, das Letzte</translation>
    </message>
    <message>
        <source>%1 here</source>
        <translation>%1 hier</translation>
    </message>
    <message>
        <source>short %1</source>
        <translation>fehlt %1</translation>
    </message>
    <message>
        <source>order soon</source>
        <translation>bald bestellen</translation>
    </message>
    <message>
        <source>nobody sells it</source>
        <translation>niemand verkauft es</translation>
    </message>
    <message>
        <source>order by %1, is over</source>
        <translation>bestellen bis %1, vorbei</translation>
    </message>
    <message>
        <source>order by %1</source>
        <translation>bestellen bis %1</translation>
    </message>
    <message>
        <source>What lies here goes first: %1.</source>
        <translation>Was hier liegt, geht vorher weg: %1.</translation>
    </message>
    <message>
        <source>None lies here.</source>
        <translation>Davon liegt nichts hier.</translation>
    </message>
    <message>
        <source>On its way: %1.</source>
        <translation>Unterwegs: %1.</translation>
    </message>
    <message>
        <source>Comes too late: %1.</source>
        <translation>Kommt zu spät: %1.</translation>
    </message>
    <message>
        <source>%1 more lie here, in pieces that are too short.</source>
        <translation>%1 liegen noch hier, in zu kurzen Stücken.</translation>
    </message>
    <message>
        <source>order by %1 of %2</source>
        <translation>bestellen bis %1 bei %2</translation>
    </message>
</context>
<context>
    <name>AbreastFoot</name>
    <message>
        <source>Reserve it</source>
        <translation>Reservieren</translation>
    </message>
    <message>
        <source>What is free of this part becomes this build&apos;s own, whatever the days.</source>
        <translation>Was von diesem Teil frei ist, gehört dann diesem Aufbau, bei allen Tagen.</translation>
    </message>
    <message>
        <source>To Buying</source>
        <translation>Zum Einkauf</translation>
    </message>
    <message>
        <source>to this part among what is short</source>
        <translation>zu diesem Teil unter dem, was fehlt</translation>
    </message>
    <message>
        <source>This build is not short of it.</source>
        <translation>Diesem Aufbau fehlt davon nichts.</translation>
    </message>
    <message>
        <source>To the build</source>
        <translation>Zum Aufbau</translation>
    </message>
</context>
<context>
    <name>AbreastHead</name>
    <message>
        <source>one day earlier: %1</source>
        <translation>einen Tag früher: %1</translation>
    </message>
    <message>
        <source>another day for %1, now %2</source>
        <translation>anderer Tag für %1, jetzt %2</translation>
    </message>
    <message>
        <source>one day later: %1</source>
        <translation>einen Tag später: %1</translation>
    </message>
</context>
<context>
    <name>AbreastHeads</name>
    <message>
        <source>builds by their days; Ctrl and an arrow tries another day</source>
        <translation>Aufbauten nach Tagen; Strg und ein Pfeil probiert einen anderen Tag</translation>
    </message>
    <message>
        <source>builds %1 to %2 of %3, the earliest first</source>
        <translation>Aufbauten %1 bis %2 von %3, der früheste zuerst</translation>
    </message>
    <message>
        <source>the earliest build first</source>
        <translation>der früheste Aufbau zuerst</translation>
    </message>
    <message>
        <source>the builds before them</source>
        <translation>die Aufbauten davor</translation>
    </message>
    <message>
        <source>the builds after them</source>
        <translation>die Aufbauten danach</translation>
    </message>
</context>
<context>
    <name>AbreastKey</name>
    <message>
        <source>from stock</source>
        <translation>aus dem Lager</translation>
    </message>
    <message>
        <source>its own: reserved, or in the car</source>
        <translation>schon seines: reserviert oder im Auto</translation>
    </message>
    <message>
        <source>on order, in time</source>
        <translation>bestellt, rechtzeitig</translation>
    </message>
    <message>
        <source>short</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>Ctrl+← →  another day    ↵  to what is short, else to the build</source>
        <translation>Strg+← →  anderer Tag    ↵  zu dem, was fehlt, sonst zum Aufbau</translation>
    </message>
</context>
<context>
    <name>AbreastLine</name>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
</context>
<context>
    <name>AbreastTable</name>
    <message>
        <source>who gets what, %1 parts</source>
        <translation>wer was bekommt, %1 Teile</translation>
    </message>
</context>
<context>
    <name>AbreastTitle</name>
    <message>
        <source>Builds by date</source>
        <translation>Aufbauten nach Tagen</translation>
    </message>
    <message>
        <source>Shared or short</source>
        <translation>Geteilt oder fehlend</translation>
    </message>
    <message>
        <source>All parts</source>
        <translation>Alle Teile</translation>
    </message>
    <message>
        <source>What changes: %1</source>
        <translation>Was sich ändert: %1</translation>
    </message>
    <message>
        <source>Back to the build  Esc</source>
        <translation>Zurück zum Aufbau  Esc</translation>
    </message>
    <message>
        <source>As if: working out who gets what …</source>
        <translation>Als ob: Wird ausgerechnet …</translation>
    </message>
    <message>
        <source>As if: %1</source>
        <translation>Als ob: %1</translation>
    </message>
    <message>
        <source>Keep these days</source>
        <translation>Diese Tage behalten</translation>
    </message>
    <message>
        <source>As before</source>
        <translation>Wie vorher</translation>
    </message>
</context>
<context>
    <name>AnswerStrip</name>
    <message>
        <source>fewer ▴</source>
        <translation>weniger ▴</translation>
    </message>
    <message>
        <source>all %1 ▾</source>
        <translation>alle %1 ▾</translation>
    </message>
    <message>
        <source>fewer answers</source>
        <translation>weniger Angaben</translation>
    </message>
    <message>
        <source>all answers</source>
        <translation>alle Angaben</translation>
    </message>
</context>
<context>
    <name>AnswerTag</name>
    <message>
        <source>%1: not accepted</source>
        <translation>%1: nicht angenommen</translation>
    </message>
</context>
<context>
    <name>Answers</name>
    <message>
        <source>worked out: %1</source>
        <translation>errechnet: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, worked out</source>
        <translation>%1, errechnet</translation>
    </message>
    <message>
        <source>from the shelf</source>
        <translation>aus dem Lager</translation>
    </message>
    <message>
        <source>fewest pieces</source>
        <translation>wenigste Teile</translation>
    </message>
    <message>
        <source>least money</source>
        <translation>am günstigsten</translation>
    </message>
    <message>
        <source>prefer</source>
        <translation>bevorzugt</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
</context>
<context>
    <name>BetterSlip</name>
    <message>
        <source>⚐ %1</source>
        <translation>⚐ %1</translation>
    </message>
    <message>
        <source>take %1</source>
        <translation>mit %1</translation>
    </message>
</context>
<context>
    <name>Bill</name>
    <message>
        <source>the whole build</source>
        <translation>der ganze Aufbau</translation>
    </message>
    <message numerus="yes">
        <source>cut in %n pieces</source>
        <translation>
            <numerusform>in %n Stück geschnitten</numerusform>
            <numerusform>in %n Stücke geschnitten</numerusform>
        </translation>
    </message>
    <message>
        <source>no price</source>
        <translation>kein Preis</translation>
    </message>
    <message>
        <source>other currency</source>
        <translation>andere Währung</translation>
    </message>
    <message>
        <source>need %1</source>
        <translation>Bedarf %1</translation>
    </message>
    <message>
        <source>free here %1</source>
        <translation>hier frei %1</translation>
    </message>
    <message>
        <source>in the trailer %1</source>
        <translation>im Anhänger %1</translation>
    </message>
    <message>
        <source>in the car %1</source>
        <translation>im Auto %1</translation>
    </message>
    <message>
        <source>not short</source>
        <translation>fehlt nicht</translation>
    </message>
    <message>
        <source>short %1</source>
        <translation>fehlt %1</translation>
    </message>
    <message>
        <source>on the way %1</source>
        <translation>unterwegs %1</translation>
    </message>
    <message>
        <source>each %1</source>
        <translation>Preis %1</translation>
    </message>
    <message>
        <source>cost %1</source>
        <translation>Betrag %1</translation>
    </message>
</context>
<context>
    <name>BillEntry</name>
    <message>
        <source>%1  ·  tool, comes back</source>
        <translation>%1  ·  Werkzeug, kommt zurück</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>short %1</source>
        <translation>fehlt %1</translation>
    </message>
</context>
<context>
    <name>BillHead</name>
    <message>
        <source>part, and what it is</source>
        <translation>Teil und was es ist</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
    <message>
        <source>need</source>
        <translation>Bedarf</translation>
    </message>
    <message>
        <source>free here</source>
        <translation>hier frei</translation>
    </message>
    <message>
        <source>in the trailer</source>
        <translation>im Anhänger</translation>
    </message>
    <message>
        <source>in the car</source>
        <translation>im Auto</translation>
    </message>
    <message>
        <source>short</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>on the way</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>each</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>Betrag</translation>
    </message>
</context>
<context>
    <name>BillLedger</name>
    <message>
        <source>Bill</source>
        <translation>Stückliste</translation>
    </message>
    <message>
        <source>Bill of materials</source>
        <translation>Stückliste</translation>
    </message>
    <message>
        <source>by station</source>
        <translation>nach Station</translation>
    </message>
    <message>
        <source>by kind</source>
        <translation>nach Art</translation>
    </message>
    <message>
        <source>bill of materials</source>
        <translation>Stückliste</translation>
    </message>
    <message>
        <source>total</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>total %1</source>
        <translation>Summe %1</translation>
    </message>
    <message>
        <source>unfold ▴</source>
        <translation>auf ▴</translation>
    </message>
    <message>
        <source>fold away ▾</source>
        <translation>zu ▾</translation>
    </message>
    <message>
        <source>unfold the bill</source>
        <translation>Stückliste aufklappen</translation>
    </message>
    <message>
        <source>fold the bill away, for more of the map</source>
        <translation>Stückliste zuklappen, für mehr Platz im Leitungsplan</translation>
    </message>
</context>
<context>
    <name>BuildChooser</name>
    <message>
        <source>builds and templates</source>
        <translation>Aufbauten und Vorlagen</translation>
    </message>
    <message>
        <source>Change templates, or make one…</source>
        <translation>Vorlagen ändern oder eine neue machen…</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Strg+T</translation>
    </message>
    <message>
        <source>Plan what is on the desk…</source>
        <translation>Planen, was hier liegt…</translation>
    </message>
    <message>
        <source>Plan another one like it…</source>
        <translation>Noch so einen planen…</translation>
    </message>
    <message>
        <source>Ctrl+N</source>
        <translation>Strg+N</translation>
    </message>
    <message>
        <source>Its title, car, day…</source>
        <translation>Titel, Auto, Tag…</translation>
    </message>
    <message>
        <source>Give it up…</source>
        <translation>Aufgeben…</translation>
    </message>
    <message>
        <source>All of them by date…</source>
        <translation>Alle nach Tagen…</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Strg+D</translation>
    </message>
</context>
<context>
    <name>BuildLine</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>BuildTitle</name>
    <message>
        <source>Other build…</source>
        <translation>Anderer…</translation>
    </message>
    <message>
        <source>Ctrl+B</source>
        <translation>Strg+B</translation>
    </message>
    <message>
        <source>Is everything here?</source>
        <translation>Ist alles da?</translation>
    </message>
    <message>
        <source>Is anything stopped?</source>
        <translation>Hält etwas auf?</translation>
    </message>
    <message>
        <source>By date…</source>
        <translation>Nach Tagen…</translation>
    </message>
    <message>
        <source>Builds by date</source>
        <translation>Aufbauten nach Tagen</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Strg+D</translation>
    </message>
</context>
<context>
    <name>BuildsArea</name>
    <message>
        <source>Nothing in this build has all these words.</source>
        <translation>Nichts in diesem Aufbau hat alle diese Wörter.</translation>
    </message>
    <message>
        <source>Find: pump, -8 orb, 10 micron, od 22.1 mm  (Ctrl+F)</source>
        <translation>Suchen: pump, -8 orb, od 22,1 mm  (Strg+F)</translation>
    </message>
    <message>
        <source>Find in this build</source>
        <translation>In diesem Aufbau suchen</translation>
    </message>
    <message>
        <source>Narrow: AD-66, adapter, hose end  (Ctrl+F)</source>
        <translation>Eingrenzen: AD-66, Adapter  (Strg+F)</translation>
    </message>
    <message>
        <source>Find among the parts of all builds</source>
        <translation>In den Teilen aller Aufbauten suchen</translation>
    </message>
</context>
<context>
    <name>Caliper</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>wants %1</source>
        <translation>verlangt %1</translation>
    </message>
    <message>
        <source>could be made with %1</source>
        <translation>ginge auch mit %1</translation>
    </message>
    <message>
        <source>%1; %2 in %3</source>
        <translation>%1; %2 in %3</translation>
    </message>
    <message>
        <source>no thread</source>
        <translation>kein Gewinde</translation>
    </message>
</context>
<context>
    <name>CostBySystem</name>
    <message>
        <source>the whole build</source>
        <translation>der ganze Aufbau</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message>
        <source>%1 here, %2 to buy</source>
        <translation>%1 hier, %2 zu kaufen</translation>
    </message>
    <message>
        <source>all of it here</source>
        <translation>alles davon hier</translation>
    </message>
    <message>
        <source>%1 to buy</source>
        <translation>%1 zu kaufen</translation>
    </message>
    <message>
        <source>here already</source>
        <translation>schon hier</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>zu kaufen</translation>
    </message>
    <message>
        <source>%1 %2: %3 here, %4 to buy</source>
        <translation>%1 %2: %3 hier, %4 zu kaufen</translation>
    </message>
    <message>
        <source>The bill has no line yet.</source>
        <translation>Die Stückliste hat noch keine Zeile.</translation>
    </message>
    <message>
        <source>1 line</source>
        <translation>1 Zeile</translation>
    </message>
    <message>
        <source>%1 lines</source>
        <translation>%1 Zeilen</translation>
    </message>
    <message>
        <source>without a price and not in it: %1</source>
        <translation>ohne Preis und nicht dabei: %1</translation>
    </message>
    <message>
        <source>lines without a price, not in it: %1</source>
        <translation>Zeilen ohne Preis, nicht dabei: %1</translation>
    </message>
    <message>
        <source>the most for %1: %2</source>
        <translation>das meiste für %1: %2</translation>
    </message>
</context>
<context>
    <name>DaySheet</name>
    <message>
        <source>Try another day</source>
        <translation>Einen anderen Tag probieren</translation>
    </message>
    <message>
        <source>Nothing is written until the days are kept.</source>
        <translation>Geschrieben wird erst, wenn die Tage behalten werden.</translation>
    </message>
    <message>
        <source>done by, a day</source>
        <translation>fertig bis, ein Tag</translation>
    </message>
    <message>
        <source>Try it</source>
        <translation>Probieren</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
</context>
<context>
    <name>Detail</name>
    <message>
        <source>not in the catalogue</source>
        <translation>nicht im Katalog</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keins</translation>
    </message>
    <message>
        <source>no line in the catalogue: %1</source>
        <translation>keine Leitung im Katalog: %1</translation>
    </message>
    <message>
        <source>the other end</source>
        <translation>das andere Ende</translation>
    </message>
    <message>
        <source>nothing in the catalogue joins these</source>
        <translation>nichts im Katalog verbindet diese beiden</translation>
    </message>
    <message>
        <source>buy or make a piece with these two ends</source>
        <translation>ein Stück mit diesen zwei Enden kaufen oder anfertigen</translation>
    </message>
    <message>
        <source>from the shelf</source>
        <translation>aus dem Lager</translation>
    </message>
    <message>
        <source>fewest pieces</source>
        <translation>wenigste Teile</translation>
    </message>
    <message>
        <source>least money</source>
        <translation>am günstigsten</translation>
    </message>
    <message>
        <source>nothing to buy</source>
        <translation>nichts zu kaufen</translation>
    </message>
    <message numerus="yes">
        <source>leaves %n short</source>
        <translation>
            <numerusform>dann fehlt %n</numerusform>
            <numerusform>dann fehlen %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>leaves %n short: %1</source>
        <translation>
            <numerusform>dann fehlt %n: %1</numerusform>
            <numerusform>dann fehlen %n: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>straight together</source>
        <translation>direkt zusammen</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>kein Preis</translation>
    </message>
    <message numerus="yes">
        <source>; %n to buy</source>
        <translation>
            <numerusform>; %n zu kaufen</numerusform>
            <numerusform>; %n zu kaufen</numerusform>
        </translation>
    </message>
    <message>
        <source>ways to make it</source>
        <translation>Möglichkeiten</translation>
    </message>
    <message>
        <source>Your pick stays. %1 would now be taken: %2, %3.</source>
        <translation>Die Wahl bleibt. Jetzt würde %1 genommen: %2, %3.</translation>
    </message>
    <message>
        <source>bore not published</source>
        <translation>Innenmaß nicht angegeben</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>nothing in the catalogue makes this line</source>
        <translation>nichts im Katalog ergibt diese Leitung</translation>
    </message>
    <message>
        <source>no piece long enough (%1)</source>
        <translation>kein Stück lang genug (%1)</translation>
    </message>
    <message>
        <source>line, %1 to %2</source>
        <translation>Leitung, %1 bis %2</translation>
    </message>
    <message>
        <source>no other line suits the fluid</source>
        <translation>keine andere Leitung passt zur Flüssigkeit</translation>
    </message>
    <message>
        <source>hose and tube that suit the fluid</source>
        <translation>Schläuche und Rohre, die zur Flüssigkeit passen</translation>
    </message>
    <message>
        <source>asked for: %1, %2</source>
        <translation>verlangt: %1, %2</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>no piece long enough here</source>
        <translation>hier ist kein Stück lang genug</translation>
    </message>
    <message>
        <source>a piece long enough is here</source>
        <translation>hier ist ein Stück lang genug</translation>
    </message>
    <message>
        <source>Your pick stays. %1 would now be taken: %2.</source>
        <translation>Die Wahl bleibt. Jetzt würde %1 genommen: %2.</translation>
    </message>
    <message>
        <source>leaves 1 short</source>
        <translation>dann fehlt 1</translation>
    </message>
    <message>
        <source>parts that meet the demand</source>
        <translation>Teile, die der Anforderung genügen</translation>
    </message>
    <message>
        <source>nothing in the catalogue meets this station&apos;s demand</source>
        <translation>nichts im Katalog genügt der Anforderung dieser Station</translation>
    </message>
    <message>
        <source>not on the shelf</source>
        <translation>nicht im Lager</translation>
    </message>
    <message>
        <source>same total</source>
        <translation>gleiche Summe</translation>
    </message>
    <message>
        <source>total %1%2</source>
        <translation>Summe %1%2</translation>
    </message>
    <message>
        <source>nothing closes the %1</source>
        <translation>bleibt offen: %1</translation>
    </message>
    <message>
        <source>stop: %1</source>
        <translation>Halt: %1</translation>
    </message>
    <message>
        <source>leaves short: %1</source>
        <translation>dann fehlt: %1</translation>
    </message>
    <message>
        <source>no longer short: %1</source>
        <translation>fehlt nicht mehr: %1</translation>
    </message>
    <message>
        <source>none here</source>
        <translation>keins hier</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>%1 in the car</source>
        <translation>%1 im Auto</translation>
    </message>
    <message>
        <source>%1 elsewhere</source>
        <translation>%1 anderswo</translation>
    </message>
    <message>
        <source>leaves short elsewhere: %1</source>
        <translation>fehlt dann anderswo: %1</translation>
    </message>
</context>
<context>
    <name>DoneSheet</name>
    <message>
        <source>Build done: the leak test</source>
        <translation>Aufbau fertig: die Dichtprüfung</translation>
    </message>
    <message>
        <source>Depressurise before a joint is opened, catch the fluid, no ignition source, eye and skin protection, extinguisher at hand. A gas under pressure bursts where a liquid only leaks: no more than the weakest part is rated for, and stand aside.</source>
        <translation>Vor dem Öffnen einer Verbindung den Druck ablassen, die Flüssigkeit auffangen, keine Zündquelle, Augen- und Hautschutz, Feuerlöscher griffbereit. Unter Gasdruck birst, was bei Flüssigkeit nur leckt: nur so viel Druck, wie für das schwächste Teil zugelassen ist, und seitlich stehen.</translation>
    </message>
    <message>
        <source>with what: air, water, the fluid itself</source>
        <translation>womit: Luft, Wasser, die Flüssigkeit selbst</translation>
    </message>
    <message>
        <source>at which pressure, with its unit</source>
        <translation>bei welchem Druck, mit Einheit</translation>
    </message>
    <message>
        <source>for how long</source>
        <translation>wie lange</translation>
    </message>
    <message>
        <source>who has seen it too</source>
        <translation>wer es noch gesehen hat</translation>
    </message>
    <message>
        <source>who has seen it too: brakes need it</source>
        <translation>wer es noch gesehen hat: bei Bremsen nötig</translation>
    </message>
    <message>
        <source>what else was seen</source>
        <translation>was sonst zu sehen war</translation>
    </message>
    <message>
        <source>it held</source>
        <translation>hat gehalten</translation>
    </message>
    <message>
        <source>it leaked</source>
        <translation>war undicht</translation>
    </message>
    <message>
        <source>Write it down: build done</source>
        <translation>Eintragen: Aufbau fertig</translation>
    </message>
    <message>
        <source>Write it down: it leaked</source>
        <translation>Eintragen: war undicht</translation>
    </message>
    <message>
        <source>Done with the test that stands</source>
        <translation>Fertig mit der vorhandenen Prüfung</translation>
    </message>
    <message>
        <source>Back to the build  Esc</source>
        <translation>Zurück zum Aufbau  Esc</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Aufschreiben</translation>
    </message>
</context>
<context>
    <name>Find</name>
    <message>
        <source>could be made with %1</source>
        <translation>ginge auch mit %1</translation>
    </message>
</context>
<context>
    <name>FindingList</name>
    <message>
        <source>Before you build</source>
        <translation>Vor dem Bauen</translation>
    </message>
    <message>
        <source>findings, gravest first</source>
        <translation>Befunde, die schwersten zuerst</translation>
    </message>
    <message>
        <source>No finding in the data entered. That proves no joint tight.</source>
        <translation>Kein Befund in den eingetragenen Daten. Dass eine Verbindung dicht ist, beweist das nicht.</translation>
    </message>
    <message>
        <source>Advice from the data entered, not a safety certificate: the series&apos; rulebook, the part maker&apos;s data and local codes come first; have fuel and brake work checked by someone qualified.</source>
        <translation>Rat aus den eingetragenen Daten, kein Sicherheitsnachweis: Reglement der Serie, Angaben des Teileherstellers und örtliche Vorschriften gehen vor; Arbeiten an Kraftstoff und Bremsen von einer Fachkraft prüfen lassen.</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Print: build sheet, pick list or line map</source>
        <translation>Drucken: Aufbaublatt, Entnahmeliste oder Leitungsplan</translation>
    </message>
    <message>
        <source>Ctrl+P</source>
        <translation>Strg+P</translation>
    </message>
</context>
<context>
    <name>FindingSlip</name>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
<context>
    <name>Findings</name>
    <message>
        <source>let the pick go</source>
        <translation>Wahl aufheben</translation>
    </message>
    <message>
        <source>join directly</source>
        <translation>direkt verbinden</translation>
    </message>
    <message>
        <source>use %1</source>
        <translation>mit %1</translation>
    </message>
    <message>
        <source>source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
</context>
<context>
    <name>FlowPictures</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Enter it in Parts, on the card of the part.</source>
        <translation>In Teile auf der Karte des Teils eintragen.</translation>
    </message>
    <message>
        <source>Nothing flows in the lines of brakes: they stand under pressure while the pedal is pressed.</source>
        <translation>In Bremsleitungen fließt nichts: Sie stehen unter Druck, solange das Pedal getreten ist.</translation>
    </message>
    <message>
        <source>What each piece has to bear stands in its joint on the line and in the findings.</source>
        <translation>Was jedes Stück aushalten muss, steht bei seiner Verbindung im Leitungsplan und in den Befunden.</translation>
    </message>
    <message>
        <source>Nobody states the engine&apos;s power, or what a pump is to give.</source>
        <translation>Niemand gibt die Leistung des Motors an oder was eine Pumpe fördern soll.</translation>
    </message>
    <message>
        <source>Answer it above; a template without that question gets one in its form (Ctrl+T).</source>
        <translation>Oben angeben; eine Vorlage ohne diese Frage bekommt sie in ihrem Formular (Strg+T).</translation>
    </message>
    <message>
        <source>Nobody states how much goes round: a pump on the engine does not say what it gives.</source>
        <translation>Niemand gibt an, wie viel umläuft: Eine Pumpe am Motor sagt nicht, was sie fördert.</translation>
    </message>
    <message>
        <source>Size the lines by the maker&apos;s word.</source>
        <translation>Die Leitungen nach der Angabe des Herstellers bemessen.</translation>
    </message>
</context>
<context>
    <name>GiveBackSheet</name>
    <message>
        <source>Give back</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>what is in the car</source>
        <translation>was im Auto ist</translation>
    </message>
    <message>
        <source>Nothing of this build is in the car now.</source>
        <translation>Von diesem Aufbau ist jetzt nichts im Auto.</translation>
    </message>
    <message>
        <source>Back to the build  Esc</source>
        <translation>Zurück zum Aufbau  Esc</translation>
    </message>
    <message>
        <source>How much of it, to which place (type or scan the bin), and what it is from now on. Where another piece went into the car instead, say which.</source>
        <translation>Wie viel davon, an welchen Platz (Fach tippen oder scannen) und in welchem Zustand ab jetzt. Kam stattdessen ein anderes Stück ins Auto, angeben, welches.</translation>
    </message>
</context>
<context>
    <name>HandingOut</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Reserve</source>
        <translation>Reservieren</translation>
    </message>
    <message>
        <source>The build is done; open it again first.</source>
        <translation>Der Aufbau ist fertig; erst wieder öffnen.</translation>
    </message>
    <message>
        <source>Nothing to reserve: what is free for the build, it has.</source>
        <translation>Nichts zu reservieren: Was für den Aufbau frei ist, hat er schon.</translation>
    </message>
    <message>
        <source>Promises to the build what is free for it, %1 lines.</source>
        <translation>Reserviert für den Aufbau, was frei ist; Zeilen: %1.</translation>
    </message>
    <message>
        <source>Pick</source>
        <translation>Entnehmen</translation>
    </message>
    <message>
        <source>The walk past the bins: %1 to take.</source>
        <translation>Der Gang an den Fächern entlang: %1 zu entnehmen.</translation>
    </message>
    <message>
        <source>Nothing to pick: reserve first what the build shall have.</source>
        <translation>Nichts zu entnehmen: Erst reservieren, was der Aufbau haben soll.</translation>
    </message>
    <message>
        <source>Give back</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>What was issued and not used goes back to its place.</source>
        <translation>Was ausgegeben und nicht gebraucht wurde, kommt zurück an seinen Platz.</translation>
    </message>
    <message>
        <source>Nothing to give back: nothing was issued to the build.</source>
        <translation>Nichts zurückzugeben: An den Aufbau wurde nichts ausgegeben.</translation>
    </message>
    <message>
        <source>Open again</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>The build is done; this opens it again.</source>
        <translation>Der Aufbau ist fertig; dies öffnet ihn wieder.</translation>
    </message>
    <message>
        <source>Build done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Asks for the leak test, then the build is done.</source>
        <translation>Fragt nach der Dichtprüfung, dann ist der Aufbau fertig.</translation>
    </message>
    <message>
        <source>cut %1</source>
        <translation>ablängen: %1</translation>
    </message>
    <message>
        <source>%1: take %2 of %3</source>
        <translation>%1: %2 von %3 entnehmen</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>entnommen</translation>
    </message>
    <message>
        <source>not taken yet</source>
        <translation>noch nicht entnommen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Not found: %1.</source>
        <translation>Nicht gefunden: %1.</translation>
    </message>
    <message>
        <source>No leak test is written down yet.</source>
        <translation>Noch keine Dichtprüfung eingetragen.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>The newest leak test: %1, %2 held %3, %4, by %5.</source>
        <translation>Die neueste Dichtprüfung: %1, %2 für %3 gehalten, %4, von %5.</translation>
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
        <source>1 finding stops it</source>
        <translation>1 Befund hält ihn auf</translation>
    </message>
    <message>
        <source>%1 findings stop it</source>
        <translation>%1 Befunde halten ihn auf</translation>
    </message>
    <message>
        <source>1 line is short</source>
        <translation>1 Zeile fehlt</translation>
    </message>
    <message>
        <source>%1 lines are short</source>
        <translation>%1 Zeilen fehlen</translation>
    </message>
    <message>
        <source>1 line is not reserved</source>
        <translation>1 Zeile ist nicht reserviert</translation>
    </message>
    <message>
        <source>%1 lines are not reserved</source>
        <translation>%1 Zeilen sind nicht reserviert</translation>
    </message>
    <message>
        <source>1 is to be picked yet</source>
        <translation>1 ist noch zu entnehmen</translation>
    </message>
    <message>
        <source>%1 are to be picked yet</source>
        <translation>%1 sind noch zu entnehmen</translation>
    </message>
    <message>
        <source>Not as it should be when a build is done: %1.</source>
        <translation>Nicht, wie es sein soll, wenn ein Aufbau fertig ist: %1.</translation>
    </message>
</context>
<context>
    <name>InCarLine</name>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>%1 in the car, %2  ·  %3</source>
        <translation>%1 im Auto, %2  ·  %3</translation>
    </message>
    <message>
        <source>how much of %1 goes back</source>
        <translation>wie viel von %1 zurückgeht</translation>
    </message>
    <message>
        <source>where %1 goes</source>
        <translation>wohin %1 kommt</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>wie bisher</translation>
    </message>
    <message>
        <source>used and good</source>
        <translation>gebraucht und gut</translation>
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
        <source>what %1 is from now on</source>
        <translation>was %1 ab jetzt ist</translation>
    </message>
    <message>
        <source>Give back</source>
        <translation>Zurückgeben</translation>
    </message>
    <message>
        <source>give %1 back</source>
        <translation>%1 zurückgeben</translation>
    </message>
    <message>
        <source>Other in …</source>
        <translation>Anderes drin …</translation>
    </message>
    <message>
        <source>another piece went in instead of %1</source>
        <translation>statt %1 kam ein anderes Stück hinein</translation>
    </message>
</context>
<context>
    <name>LineMap</name>
    <message>
        <source>, picked, something else would now be taken</source>
        <translation>, gewählt, jetzt würde etwas anderes genommen</translation>
    </message>
    <message>
        <source>, picked</source>
        <translation>, gewählt</translation>
    </message>
    <message>
        <source>no part</source>
        <translation>kein Teil</translation>
    </message>
    <message>
        <source>none meets the demand</source>
        <translation>keins genügt</translation>
    </message>
    <message>
        <source>station %1: no part meets the demand</source>
        <translation>Station %1: kein Teil genügt der Anforderung</translation>
    </message>
    <message>
        <source>station %1: %2, %3</source>
        <translation>Station %1: %2, %3</translation>
    </message>
    <message>
        <source>, not on the shelf</source>
        <translation>, nicht im Lager</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rücklauf</translation>
    </message>
    <message>
        <source>back to the %1</source>
        <translation>zurück zu: %1</translation>
    </message>
    <message>
        <source>joint %1, %2 to %3: %4</source>
        <translation>Verbindung %1, %2 an %3: %4</translation>
    </message>
    <message numerus="yes">
        <source>, %n to buy</source>
        <translation>
            <numerusform>, %n zu kaufen</numerusform>
            <numerusform>, %n zu kaufen</numerusform>
        </translation>
    </message>
    <message>
        <source>, found</source>
        <translation>, gefunden</translation>
    </message>
    <message>
        <source>no line: %1</source>
        <translation>keine Leitung: %1</translation>
    </message>
    <message>
        <source>run %1, %2, %3</source>
        <translation>Strang %1, %2, %3</translation>
    </message>
</context>
<context>
    <name>LineMapView</name>
    <message>
        <source>line map, in the order of the flow</source>
        <translation>Leitungsplan, in Flussrichtung</translation>
    </message>
</context>
<context>
    <name>MapPaper</name>
    <message>
        <source>made for each other</source>
        <translation>füreinander gemacht</translation>
    </message>
    <message>
        <source>with ring, washer or sealant</source>
        <translation>mit Ring, Scheibe oder Dichtmittel</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>leaks, jams or loose</source>
        <translation>undicht, klemmt oder lose</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>dashed: to buy</source>
        <translation>gestrichelt: zu kaufen</translation>
    </message>
</context>
<context>
    <name>MapPlate</name>
    <message>
        <source>⚐ %1</source>
        <translation>⚐ %1</translation>
    </message>
    <message>
        <source>⚑ %1</source>
        <translation>⚑ %1</translation>
    </message>
</context>
<context>
    <name>MarkKey</name>
    <message>
        <source>made for each other</source>
        <translation>füreinander gemacht</translation>
    </message>
    <message>
        <source>with ring, washer or sealant</source>
        <translation>mit Ring, Scheibe oder Dichtmittel</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>leaks, jams or loose</source>
        <translation>undicht, klemmt oder lose</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>dashed: to buy</source>
        <translation>gestrichelt: zu kaufen</translation>
    </message>
    <message>
        <source>⚑ picked   ⚐ picked, better found</source>
        <translation>⚑ gewählt   ⚐ gewählt, Besseres gefunden</translation>
    </message>
</context>
<context>
    <name>OpenedPanel</name>
    <message>
        <source>opened: %1</source>
        <translation>geöffnet: %1</translation>
    </message>
    <message>
        <source>⚑ picked by you: it stays</source>
        <translation>⚑ selbst gewählt</translation>
    </message>
    <message>
        <source>let go</source>
        <translation>Wahl aufheben</translation>
    </message>
    <message>
        <source>let the pick go</source>
        <translation>Wahl aufheben</translation>
    </message>
    <message>
        <source>source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Opened again for service …</source>
        <translation>Zur Wartung geöffnet …</translation>
    </message>
    <message>
        <source>Fresh rings and washers go in; the old ones are used up.</source>
        <translation>Neue Ringe und Scheiben kommen hinein; die alten sind verbraucht.</translation>
    </message>
</context>
<context>
    <name>PartTabs</name>
    <message>
        <source>Bill and findings: %1</source>
        <translation>Stückliste und Befunde: %1</translation>
    </message>
    <message>
        <source>Bill: %1</source>
        <translation>Stückliste: %1</translation>
    </message>
    <message>
        <source>Before you build: %1</source>
        <translation>Vor dem Bauen: %1</translation>
    </message>
    <message>
        <source>By date…</source>
        <translation>Nach Tagen…</translation>
    </message>
    <message>
        <source>Builds by date</source>
        <translation>Aufbauten nach Tagen</translation>
    </message>
    <message>
        <source>Ctrl+D</source>
        <translation>Strg+D</translation>
    </message>
</context>
<context>
    <name>PickLine</name>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
<context>
    <name>PickSheet</name>
    <message>
        <source>Pick, in the order of the bins</source>
        <translation>Entnehmen, in der Reihenfolge der Fächer</translation>
    </message>
    <message>
        <source>Space, a touch or a scan ticks what is in the hand.</source>
        <translation>Leertaste, Antippen oder Scannen hakt ab, was in der Hand ist.</translation>
    </message>
    <message>
        <source>what to take where</source>
        <translation>was wo zu entnehmen ist</translation>
    </message>
    <message>
        <source>typed or scanned: %1, Enter looks for it</source>
        <translation>getippt oder gescannt: %1, Enter sucht es</translation>
    </message>
    <message>
        <source>Issue what is ticked: %1 of %2</source>
        <translation>Abgehaktes ausgeben: %1 von %2</translation>
    </message>
    <message>
        <source>Issue all</source>
        <translation>Alles ausgeben</translation>
    </message>
    <message>
        <source>Back to the build  Esc</source>
        <translation>Zurück zum Aufbau  Esc</translation>
    </message>
</context>
<context>
    <name>PictureTabs</name>
    <message>
        <source>Line map</source>
        <translation>Leitungsplan</translation>
    </message>
    <message>
        <source>Ctrl+1</source>
        <translation>Strg+1</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Ctrl+2</source>
        <translation>Strg+2</translation>
    </message>
    <message>
        <source>Pump</source>
        <translation>Pumpe</translation>
    </message>
    <message>
        <source>Ctrl+3</source>
        <translation>Strg+3</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Kosten</translation>
    </message>
    <message>
        <source>Ctrl+4</source>
        <translation>Strg+4</translation>
    </message>
</context>
<context>
    <name>PlotView</name>
    <message>
        <source>working it out …</source>
        <translation>wird errechnet …</translation>
    </message>
    <message>
        <source>← → go from point to point</source>
        <translation>← → gehen von Punkt zu Punkt</translation>
    </message>
</context>
<context>
    <name>PressureAlong</name>
    <message>
        <source>0: the air around</source>
        <translation>0: Luftdruck ringsum</translation>
    </message>
    <message>
        <source>0: air</source>
        <translation>0: Luft</translation>
    </message>
    <message>
        <source>Pressure along the line</source>
        <translation>Druck entlang der Leitung</translation>
    </message>
    <message>
        <source>the line takes %1</source>
        <translation>die Leitung nimmt %1</translation>
    </message>
    <message>
        <source>the line takes %1, most of it %2 to %3: %4</source>
        <translation>die Leitung nimmt %1, das meiste davon %2 bis %3: %4</translation>
    </message>
    <message>
        <source>%1 below the air at the inlet of the %2</source>
        <translation>%1 unter dem Luftdruck am Eingang von %2</translation>
    </message>
    <message>
        <source>%1 at the inlet of the %2</source>
        <translation>%1 am Eingang von %2</translation>
    </message>
    <message>
        <source>%1, %2 from boiling</source>
        <translation>%1, %2 vom Sieden entfernt</translation>
    </message>
    <message>
        <source>%1: there it boils</source>
        <translation>%1: Dort siedet er</translation>
    </message>
    <message>
        <source>nobody says how far the %1 stands above the %2; the line takes %3 with %4</source>
        <translation>niemand sagt, wie weit %1 über %2 liegt; die Leitung nimmt %3 bei %4</translation>
    </message>
    <message>
        <source>the level in the %1 brings only %2 of %3 to the %4</source>
        <translation>der Stand in %1 bringt nur %2 von %3 bis %4</translation>
    </message>
    <message>
        <source>%1 at the %2 with %3, out of the %4 that the level is worth</source>
        <translation>%1 bei %2 mit %3, aus %4, die der Stand bringt</translation>
    </message>
    <message>
        <source>the lines take %1 one after the other; what pressure they begin with is not known</source>
        <translation>die Leitungen nehmen nacheinander %1; mit welchem Druck sie beginnen, ist nicht bekannt</translation>
    </message>
    <message>
        <source>%1 at the %2 with %3</source>
        <translation>%1 bei %2 mit %3</translation>
    </message>
    <message>
        <source>; %1: %2</source>
        <translation>; %1: %2</translation>
    </message>
    <message>
        <source>Pressure, %1 to %2</source>
        <translation>Druck, %1 bis %2</translation>
    </message>
    <message>
        <source>%1 at the %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>the return keeps up %1</source>
        <translation>der Rücklauf hält %1 aufrecht</translation>
    </message>
    <message>
        <source>what is not known counts nothing: see the findings</source>
        <translation>was nicht bekannt ist, zählt nichts: siehe Befunde</translation>
    </message>
    <message>
        <source>suction</source>
        <translation>Saugseite</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Druckseite</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rücklauf</translation>
    </message>
    <message>
        <source>by its level</source>
        <translation>durch den Höhenunterschied</translation>
    </message>
    <message>
        <source>taken by the lines</source>
        <translation>nehmen die Leitungen</translation>
    </message>
    <message>
        <source>takes %1</source>
        <translation>nimmt %1</translation>
    </message>
    <message>
        <source>brings %1</source>
        <translation>bringt %1</translation>
    </message>
    <message>
        <source>%1: %2, from %3 to %4, with %5</source>
        <translation>%1: %2, von %3 auf %4, mit %5</translation>
    </message>
    <message>
        <source>; not all of it is known</source>
        <translation>; nicht alles davon ist bekannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>outlet of the %1: %2</source>
        <translation>Ausgang von %1: %2</translation>
    </message>
    <message>
        <source>%1, on its way back: %2</source>
        <translation>%1, auf dem Rückweg: %2</translation>
    </message>
    <message>
        <source>it boils: %1</source>
        <translation>siedet: %1</translation>
    </message>
    <message>
        <source>boils</source>
        <translation>siedet</translation>
    </message>
    <message>
        <source>too near to boiling: %1</source>
        <translation>zu nah am Sieden: %1</translation>
    </message>
    <message>
        <source>too near</source>
        <translation>zu nah</translation>
    </message>
    <message>
        <source>near</source>
        <translation>nah</translation>
    </message>
    <message>
        <source>set to %1</source>
        <translation>eingestellt auf %1</translation>
    </message>
    <message>
        <source>set</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>it holds %1 at least</source>
        <translation>hält mindestens %1</translation>
    </message>
    <message>
        <source>it holds %1 at most</source>
        <translation>hält höchstens %1</translation>
    </message>
</context>
<context>
    <name>PumpAndLines</name>
    <message>
        <source>flow · %1</source>
        <translation>Förderstrom · %1</translation>
    </message>
    <message>
        <source>pressure at the pump · %1</source>
        <translation>Druck an der Pumpe · %1</translation>
    </message>
    <message>
        <source>together, behind their own lines</source>
        <translation>zusammen, hinter ihren eigenen Leitungen</translation>
    </message>
    <message>
        <source>%1, each</source>
        <translation>%1, jede für sich</translation>
    </message>
    <message>
        <source>%1: its curve goes from %2 at %3 to %4 at %5</source>
        <translation>%1: Kennlinie von %2 bei %3 bis %4 bei %5</translation>
    </message>
    <message>
        <source>what the lines want</source>
        <translation>was die Leitungen fordern</translation>
    </message>
    <message>
        <source>set to %1</source>
        <translation>eingestellt auf %1</translation>
    </message>
    <message>
        <source>%1: set to %2</source>
        <translation>%1: eingestellt auf %2</translation>
    </message>
    <message>
        <source>the engine burns %1</source>
        <translation>der Motor verbrennt %1</translation>
    </message>
    <message>
        <source>asked, with its margin: %1</source>
        <translation>gefordert, mit Zuschlag: %1</translation>
    </message>
    <message>
        <source>asked: %1</source>
        <translation>gefordert: %1</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>here pump and lines meet: %1</source>
        <translation>hier treffen sich Pumpe und Leitungen: %1</translation>
    </message>
    <message>
        <source>burnt</source>
        <translation>verbrannt</translation>
    </message>
    <message>
        <source>lacks</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>the lines want less pressure than the curve begins with: it gives %1 at least</source>
        <translation>die Leitungen fordern weniger Druck, als die Kennlinie beginnt: Sie fördert mindestens %1</translation>
    </message>
    <message>
        <source>the lines want more pressure than the curve ends with: beyond %1 nobody knows what it gives</source>
        <translation>die Leitungen fordern mehr Druck, als die Kennlinie reicht: Jenseits von %1 weiß niemand, was sie fördert</translation>
    </message>
    <message>
        <source>pump and lines meet at %1</source>
        <translation>Pumpe und Leitungen treffen sich bei %1</translation>
    </message>
    <message>
        <source>%1 more comes into the %2 than leaves it</source>
        <translation>in %2 kommen %1 mehr, als hinausgehen</translation>
    </message>
    <message>
        <source>%1 less comes into the %2 than leaves it</source>
        <translation>in %2 kommen %1 weniger, als hinausgehen</translation>
    </message>
    <message>
        <source>at full power %1 are burnt and %2 go back to the tank; at idle all</source>
        <translation>bei voller Leistung werden %1 verbrannt und %2 gehen zurück in den Tank, im Leerlauf alles</translation>
    </message>
    <message>
        <source>at full power %1 are burnt; %2 are in reserve</source>
        <translation>bei voller Leistung werden %1 verbrannt; %2 bleiben in Reserve</translation>
    </message>
    <message>
        <source>back to the tank</source>
        <translation>zurück in den Tank</translation>
    </message>
    <message>
        <source>in reserve</source>
        <translation>in Reserve</translation>
    </message>
    <message>
        <source>Nobody has entered what %1 gives at which pressure.</source>
        <translation>Niemand hat eingetragen, was %1 bei welchem Druck fördert.</translation>
    </message>
    <message>
        <source>Enter it in Parts (Alt+6), on its card under &quot;pump curve&quot;, as its maker publishes it: two pressures at least, at the car&apos;s voltage.</source>
        <translation>In Teile (Alt+6) auf der Karte unter „Pumpenkennlinie“ eintragen, wie sie der Hersteller angibt: mindestens zwei Drücke, bei der Spannung des Autos.</translation>
    </message>
    <message>
        <source>Nobody says what pressure is wanted at the %1.</source>
        <translation>Niemand sagt, welcher Druck bei %1 gefordert ist.</translation>
    </message>
    <message>
        <source>The template has to say it there (Ctrl+T); what the lines take stands in the pressure along the line (Ctrl+2).</source>
        <translation>Die Vorlage muss es dort angeben (Strg+T); was die Leitungen nehmen, steht beim Druck entlang der Leitung (Strg+2).</translation>
    </message>
    <message>
        <source>No pump: the level in the tank brings the fuel.</source>
        <translation>Keine Pumpe: Der Stand im Tank bringt den Kraftstoff.</translation>
    </message>
    <message>
        <source>How far it reaches stands in the pressure along the line (Ctrl+2).</source>
        <translation>Wie weit er reicht, steht beim Druck entlang der Leitung (Strg+2).</translation>
    </message>
    <message>
        <source>Of this pump its flow counts, %1: it pushes cold as it pushes warm.</source>
        <translation>Von dieser Pumpe zählt der Förderstrom, %1: Sie fördert kalt so viel wie warm.</translation>
    </message>
    <message>
        <source>What the lines take of it stands in the pressure along the line (Ctrl+2).</source>
        <translation>Was die Leitungen davon nehmen, steht beim Druck entlang der Leitung (Strg+2).</translation>
    </message>
    <message>
        <source>Pump and its lines</source>
        <translation>Pumpe und ihre Leitungen</translation>
    </message>
    <message>
        <source>the %1 does not carry it: %2, and %3 are asked</source>
        <translation>%1 reicht nicht: %2, gefordert sind %3</translation>
    </message>
    <message>
        <source>the %1 carries it: %2, and %3 are asked</source>
        <translation>%1 reicht: %2, gefordert sind %3</translation>
    </message>
    <message>
        <source>What the %1 gives and what its lines want</source>
        <translation>Was %1 fördert und was die Leitungen fordern</translation>
    </message>
</context>
<context>
    <name>QuestionTag</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
</context>
<context>
    <name>RunLabel</name>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
<context>
    <name>StepsRow</name>
    <message>
        <source>writing into the shop</source>
        <translation>wird in die Werkstatt eingetragen</translation>
    </message>
</context>
<context>
    <name>WayButton</name>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
</context>
<context>
    <name>WhatIsThisSheet</name>
    <message>
        <source>What is this?</source>
        <translation>Was ist das?</translation>
    </message>
    <message>
        <source>Measure over the crests of an outside thread, or between those of an inside one.</source>
        <translation>Beim Außengewinde über die Spitzen messen, beim Innengewinde zwischen den Spitzen.</translation>
    </message>
    <message>
        <source>caliper at %1</source>
        <translation>Messschieber auf %1</translation>
    </message>
    <message>
        <source>outside thread</source>
        <translation>Außengewinde</translation>
    </message>
    <message>
        <source>inside thread</source>
        <translation>Innengewinde</translation>
    </message>
    <message>
        <source>diameter over the crests</source>
        <translation>Durchmesser über die Spitzen</translation>
    </message>
    <message>
        <source>diameter between the crests</source>
        <translation>Durchmesser zwischen den Spitzen</translation>
    </message>
    <message>
        <source>diameter: 22.1 mm, 0.87 in</source>
        <translation>Durchmesser: 22,1 mm oder 0,87 in</translation>
    </message>
    <message>
        <source>pitch</source>
        <translation>Steigung</translation>
    </message>
    <message>
        <source>pitch, by gauge: 14 tpi, 1.5 mm</source>
        <translation>Steigung, mit Lehre: 14 tpi oder 1,5 mm</translation>
    </message>
    <message>
        <source>what it can be</source>
        <translation>was es sein kann</translation>
    </message>
    <message>
        <source>Show all of these in stock</source>
        <translation>Alle davon im Lager zeigen</translation>
    </message>
    <message>
        <source>Another fitting</source>
        <translation>Andere Verschraubung</translation>
    </message>
    <message>
        <source>Back to the stock  Esc</source>
        <translation>Zurück zum Lager  Esc</translation>
    </message>
</context>
<context>
    <name>flarestock::AbreastDesk</name>
    <message>
        <source>This build wants none of it.</source>
        <translation>Dieser Aufbau braucht nichts davon.</translation>
    </message>
    <message>
        <source>Days are being tried. Keep them, or put them back as before, then reserve.</source>
        <translation>Es werden Tage probiert. Erst behalten oder wie vorher setzen, dann reservieren.</translation>
    </message>
    <message>
        <source>All that it needs of it is its own already.</source>
        <translation>Alles, was er davon braucht, gehört ihm schon.</translation>
    </message>
    <message>
        <source>None of it is free.</source>
        <translation>Davon ist nichts frei.</translation>
    </message>
    <message>
        <source>%1 of %2 reserved for %3.</source>
        <translation>%1 von %2 reserviert für %3.</translation>
    </message>
    <message>
        <source>This build is not in the shop any more.</source>
        <translation>Diesen Aufbau hat die Werkstatt nicht mehr.</translation>
    </message>
    <message>
        <source>%1 is built by %2 now.</source>
        <translation>%1: jetzt bis %2.</translation>
    </message>
    <message>
        <source>%1 builds have other days now.</source>
        <translation>%1 Aufbauten haben jetzt andere Tage.</translation>
    </message>
    <message>
        <source>Changed in the shop meanwhile: %1. What is tried here stays.</source>
        <translation>Inzwischen in der Werkstatt geändert: %1. Was hier probiert wird, bleibt.</translation>
    </message>
    <message>
        <source>One build that is not done. Plan another one (Ctrl+N) to see who gets what.</source>
        <translation>Ein Aufbau, der nicht fertig ist. Einen zweiten planen (Strg+N), um zu sehen, wer was bekommt.</translation>
    </message>
    <message>
        <source>No build has a day, so that they come as they were planned. Give them days first: Enter on the head of a build.</source>
        <translation>Kein Aufbau hat einen Tag, darum kommen sie, wie sie geplant wurden. Erst Tage geben: Enter auf dem Kopf eines Aufbaus.</translation>
    </message>
    <message>
        <source>%1 builds that are not done, by their days  ·  of %2 parts there is not enough for all</source>
        <translation>%1 Aufbauten, die nicht fertig sind, nach ihren Tagen  ·  %2 Teile reichen nicht für alle</translation>
    </message>
    <message>
        <source>Working out who gets what …</source>
        <translation>Wird ausgerechnet: wer was bekommt …</translation>
    </message>
    <message>
        <source>No build is planned that is not done. Plan one first: Ctrl+B, then “Plan what is on the desk”.</source>
        <translation>Kein Aufbau ist geplant, der nicht fertig ist. Erst einen planen: Strg+B, dann „Planen, was hier liegt“.</translation>
    </message>
    <message>
        <source>Nothing that is shown is like that.</source>
        <translation>Nichts, was gezeigt wird, ist so.</translation>
    </message>
    <message>
        <source>The days that are tried change nothing.</source>
        <translation>Die probierten Tage ändern nichts.</translation>
    </message>
    <message>
        <source>All that it needs is here, and nobody else wants it.</source>
        <translation>Alles, was er braucht, ist hier, und sonst will es niemand.</translation>
    </message>
    <message>
        <source>There is enough for all of them, and no part is wanted by two.</source>
        <translation>Es reicht für alle, und kein Teil wird von zweien gebraucht.</translation>
    </message>
    <message>
        <source>“%1” is no day. Write it as %2.</source>
        <translation>„%1“ ist kein Tag. Zu schreiben ist er als %2.</translation>
    </message>
</context>
<context>
    <name>flarestock::AnotherPiece</name>
    <message>
        <source>! %1: %2 (before: %3). %4</source>
        <translation>! %1: %2 (vorher: %3). %4</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No joint of the build is another one with it.</source>
        <translation>Keine Verbindung des Aufbaus ändert sich damit.</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>wie bisher</translation>
    </message>
    <message>
        <source>what went in</source>
        <translation>was eingebaut wurde</translation>
    </message>
    <message>
        <source>type or scan its part number or tag</source>
        <translation>Teilenummer oder Etikett tippen oder scannen</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>its lot or serial</source>
        <translation>Charge oder Seriennummer</translation>
    </message>
    <message>
        <source>where it has one</source>
        <translation>wo es das gibt</translation>
    </message>
    <message>
        <source>taken from</source>
        <translation>entnommen aus</translation>
    </message>
    <message>
        <source>the nearest that is free</source>
        <translation>das nächste freie</translation>
    </message>
    <message>
        <source>the planned one goes to</source>
        <translation>das geplante kommt nach</translation>
    </message>
    <message>
        <source>type or scan the bin</source>
        <translation>Fach tippen oder scannen</translation>
    </message>
    <message>
        <source>the planned one is, from now on</source>
        <translation>Zustand des geplanten ab jetzt</translation>
    </message>
    <message>
        <source>Another piece than %1</source>
        <translation>Ein anderes Stück als %1</translation>
    </message>
    <message>
        <source>%1. What was really put in stays with the car, with its lot.</source>
        <translation>%1. Was wirklich eingebaut wurde, bleibt mit seiner Charge beim Auto vermerkt.</translation>
    </message>
    <message>
        <source>Look whether it is made for the fluid and the pressure before it is closed; leak-test it afterwards.</source>
        <translation>Vor dem Schließen ansehen, ob es für die Flüssigkeit und den Druck gemacht ist; danach eine Dichtprüfung machen.</translation>
    </message>
    <message>
        <source>Say what went in: scan it, or type its part number.</source>
        <translation>Angeben, was eingebaut wurde: scannen oder Teilenummer tippen.</translation>
    </message>
    <message>
        <source>%1 went in instead of %2.</source>
        <translation>%1 ist statt %2 eingebaut.</translation>
    </message>
    <message>
        <source>It went in</source>
        <translation>Ist eingebaut</translation>
    </message>
</context>
<context>
    <name>flarestock::BuildDesk</name>
    <message>
        <source>%1 is open.</source>
        <translation>%1 ist geöffnet.</translation>
    </message>
    <message>
        <source>%1 from %2 to %3</source>
        <translation>%1 von %2 auf %3</translation>
    </message>
    <message>
        <source>%1: worked out again</source>
        <translation>%1: wieder errechnet</translation>
    </message>
    <message>
        <source>ways to make joints: %1</source>
        <translation>Verbindungen bilden: %1</translation>
    </message>
    <message>
        <source>Not done: %1</source>
        <translation>Nicht ausgeführt: %1</translation>
    </message>
    <message>
        <source>%1: no line changed</source>
        <translation>%1: keine Zeile geändert</translation>
    </message>
    <message>
        <source>%1: 1 line changed</source>
        <translation>%1: 1 Zeile geändert</translation>
    </message>
    <message>
        <source>%1: %2 lines changed</source>
        <translation>%1: %2 Zeilen geändert</translation>
    </message>
    <message>
        <source>, total %1 → %2</source>
        <translation>, Summe %1 → %2</translation>
    </message>
    <message>
        <source>Not taken back: %1</source>
        <translation>Nicht zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>line, %1 to %2</source>
        <translation>Leitung, %1 bis %2</translation>
    </message>
    <message>
        <source>%1: %2 picked</source>
        <translation>%1: %2 gewählt</translation>
    </message>
    <message>
        <source>%1: pick let go</source>
        <translation>%1: Wahl aufgehoben</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>build by %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>template tried out, not planned</source>
        <translation>Vorlage ausprobiert, nicht geplant</translation>
    </message>
    <message>
        <source>all %1 lines are here</source>
        <translation>alle %1 Zeilen sind da</translation>
    </message>
    <message>
        <source>all %1 lines, %2 joints open</source>
        <translation>alle %1 Zeilen, offene Verbindungen: %2</translation>
    </message>
    <message>
        <source>%1 of %2 lines short</source>
        <translation>%1 von %2 fehlen</translation>
    </message>
    <message>
        <source>no finding stops it</source>
        <translation>kein Befund hält auf</translation>
    </message>
    <message>
        <source>no stop</source>
        <translation>kein Halt</translation>
    </message>
    <message>
        <source>1 stop</source>
        <translation>1 Halt</translation>
    </message>
    <message>
        <source>%1 stops</source>
        <translation>%1 Halt</translation>
    </message>
    <message>
        <source>1 caution</source>
        <translation>1 Vorsicht</translation>
    </message>
    <message>
        <source>%1 cautions</source>
        <translation>%1 Vorsicht</translation>
    </message>
    <message>
        <source>%1 lines  ·  %2 of %3 joints fit</source>
        <translation>Zeilen: %1  ·  passende Verbindungen: %2 von %3</translation>
    </message>
    <message>
        <source>  ·  %1 without a price, not in the total</source>
        <translation>  ·  %1 ohne Preis, nicht in der Summe</translation>
    </message>
    <message>
        <source>Being worked out …</source>
        <translation>Wird durchgerechnet …</translation>
    </message>
</context>
<context>
    <name>flarestock::BuildPapers</name>
    <message>
        <source>build sheet: each step with rings and torques</source>
        <translation>Aufbaublatt: jeder Schritt mit Ringen und Anzugsmomenten</translation>
    </message>
    <message>
        <source>line map, as on the screen</source>
        <translation>Leitungsplan, wie auf dem Bildschirm</translation>
    </message>
    <message>
        <source>pick list: what lies where</source>
        <translation>Entnahmeliste: was wo liegt</translation>
    </message>
    <message>
        <source>which</source>
        <translation>welches</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A3, for the map</source>
        <translation>A3, für den Plan</translation>
    </message>
    <message>
        <source>Papers of %1</source>
        <translation>Papiere von %1</translation>
    </message>
    <message>
        <source>Of the build as it stands on the desk now.</source>
        <translation>Vom Aufbau, wie er jetzt hier steht.</translation>
    </message>
    <message>
        <source>Choose its file …</source>
        <translation>Datei wählen …</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Geschrieben: %1</translation>
    </message>
</context>
<context>
    <name>flarestock::CostPicture</name>
    <message>
        <source>by side</source>
        <translation>nach Seite</translation>
    </message>
    <message>
        <source>by station</source>
        <translation>nach Station</translation>
    </message>
    <message>
        <source>by kind</source>
        <translation>nach Art</translation>
    </message>
    <message>
        <source>all builds</source>
        <translation>alle Aufbauten</translation>
    </message>
    <message>
        <source>What the money goes into</source>
        <translation>Wohin das Geld geht</translation>
    </message>
    <message>
        <source>The builds are being worked out …</source>
        <translation>Die Aufbauten werden errechnet …</translation>
    </message>
    <message>
        <source>What the builds come to, the earliest served first</source>
        <translation>Was die Aufbauten kosten, der früheste zuerst bedient</translation>
    </message>
</context>
<context>
    <name>flarestock::FileToBe</name>
    <message>
        <source>The file has no name yet. Type one.</source>
        <translation>Die Datei hat noch keinen Namen. Bitte einen eintippen.</translation>
    </message>
    <message>
        <source>A name has no stroke in it. Choose the folder by “Other folder …”.</source>
        <translation>In einem Namen steht kein Schrägstrich. Den Ordner mit „Anderer Ordner …“ wählen.</translation>
    </message>
    <message>
        <source>The folder %1 is not there any more. Choose another one.</source>
        <translation>Den Ordner %1 gibt es nicht mehr. Einen anderen wählen.</translation>
    </message>
    <message>
        <source>Nothing may be written in %1. Choose another folder.</source>
        <translation>In %1 darf nichts geschrieben werden. Einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>%1 is a folder. Type another name.</source>
        <translation>%1 ist ein Ordner. Einen anderen Namen eintippen.</translation>
    </message>
</context>
<context>
    <name>flarestock::HandingOut</name>
    <message>
        <source>1 line promised to %1.</source>
        <translation>1 Zeile reserviert für %1.</translation>
    </message>
    <message>
        <source>%1 lines promised to %2.</source>
        <translation>%1 Zeilen reserviert für %2.</translation>
    </message>
    <message>
        <source>Nothing to issue: reserve first what the build shall have.</source>
        <translation>Nichts auszugeben: Erst reservieren, was der Aufbau haben soll.</translation>
    </message>
    <message>
        <source>Nothing is ticked. Tick what is in the hand, or issue all.</source>
        <translation>Nichts ist abgehakt. Abhaken, was in der Hand ist, oder alles ausgeben.</translation>
    </message>
    <message>
        <source>1 pick issued to %1.</source>
        <translation>1 Entnahme ausgegeben an %1.</translation>
    </message>
    <message>
        <source>%1 picks issued to %2.</source>
        <translation>%1 Entnahmen ausgegeben an %2.</translation>
    </message>
    <message>
        <source>%1 of %2 given back to %3.</source>
        <translation>%1 von %2 nach %3 zurückgegeben.</translation>
    </message>
    <message>
        <source>Not done: %1. Make the test and write it down.</source>
        <translation>Nicht fertig: %1. Prüfung machen und eintragen.</translation>
    </message>
    <message>
        <source>A leak test says with what, at which pressure and for how long.</source>
        <translation>Zu einer Dichtprüfung gehört, womit, bei welchem Druck und wie lange.</translation>
    </message>
    <message>
        <source>Brakes need a second name below the test. Who has seen it too?</source>
        <translation>Bei Bremsen gehört ein zweiter Name unter die Prüfung. Wer hat es noch gesehen?</translation>
    </message>
    <message>
        <source>Leak test of %1 written down: failed. The build stays open.</source>
        <translation>Dichtprüfung von %1 eingetragen: nicht bestanden. Der Aufbau bleibt offen.</translation>
    </message>
    <message>
        <source>%1 is done.</source>
        <translation>%1 ist fertig.</translation>
    </message>
    <message>
        <source>%1 is open again.</source>
        <translation>%1 ist wieder offen.</translation>
    </message>
    <message>
        <source>A template that is tried out takes no stock; open one of the planned builds.</source>
        <translation>Eine Vorlage, die ausprobiert wird, nimmt nichts aus dem Lager; einen der geplanten Aufbauten öffnen.</translation>
    </message>
    <message>
        <source>Nothing can be written down here.</source>
        <translation>Hier lässt sich nichts eintragen.</translation>
    </message>
    <message>
        <source>Pick list of %1</source>
        <translation>Entnahmeliste von %1</translation>
    </message>
    <message>
        <source>%1 is ticked already.</source>
        <translation>%1 ist schon abgehakt.</translation>
    </message>
    <message>
        <source>%1 is not on this list.</source>
        <translation>%1 steht nicht auf dieser Liste.</translation>
    </message>
    <message>
        <source>Leak test of %1</source>
        <translation>Dichtprüfung von %1</translation>
    </message>
    <message>
        <source>Say whether it held or leaked.</source>
        <translation>Sagen, ob es gehalten hat oder undicht war.</translation>
    </message>
</context>
<context>
    <name>flarestock::JointAgain</name>
    <message>
        <source>%1 of %2, %3: %4 fresh from stock, %5 old used up</source>
        <translation>%1 von %2, %3: %4 neu aus dem Lager, %5 alt verbraucht</translation>
    </message>
    <message>
        <source>! %1; %2 short</source>
        <translation>! %1; fehlt: %2</translation>
    </message>
    <message>
        <source>Open the joint again: %1</source>
        <translation>Verbindung wieder öffnen: %1</translation>
    </message>
    <message>
        <source>What seals once is not put in twice: the old ones are used up, fresh ones go in.</source>
        <translation>Was einmal dichtet, wird nicht zweimal eingesetzt: die alten sind verbraucht, neue kommen hinein.</translation>
    </message>
    <message>
        <source>%1 was opened: fresh rings and washers went in.</source>
        <translation>%1 geöffnet: neue Ringe und Scheiben eingesetzt.</translation>
    </message>
    <message>
        <source>Fresh ones in</source>
        <translation>Neue einsetzen</translation>
    </message>
</context>
<context>
    <name>flarestock::PlanForm</name>
    <message>
        <source>There is no build on the desk.</source>
        <translation>Hier liegt kein Aufbau.</translation>
    </message>
    <message>
        <source>This is a template that is tried out; plan it as a build first.</source>
        <translation>Das ist eine Vorlage, die ausprobiert wird; sie erst als Aufbau planen.</translation>
    </message>
    <message>
        <source>%1 has pieces, promised or in the car. Let go of them and give them back first.</source>
        <translation>%1 hat Stücke, zugesagt oder im Auto. Sie erst freigeben und zurückgeben.</translation>
    </message>
    <message>
        <source>no car: stock and bill only</source>
        <translation>kein Auto: nur Lager und Stückliste</translation>
    </message>
    <message>
        <source>what it is called</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <source>done by, a day</source>
        <translation>fertig bis, Tag</translation>
    </message>
    <message>
        <source>Plan a build</source>
        <translation>Einen Aufbau planen</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>Give up %1</source>
        <translation>%1 aufgeben</translation>
    </message>
    <message>
        <source>With the answers and picks that are on the desk now; they can still be changed.</source>
        <translation>Mit den Angaben und Wahlen, die jetzt hier stehen; sie lassen sich noch ändern.</translation>
    </message>
    <message>
        <source>An earlier day comes before other builds where pieces lack; Buying says so.</source>
        <translation>Wo Stücke fehlen, geht ein früherer Tag anderen Aufbauten vor; der Einkauf sagt es.</translation>
    </message>
    <message>
        <source>Its answers and picks go. Nothing is promised to it and nothing is in the car.</source>
        <translation>Seine Angaben und Wahlen gehen verloren. Ihm ist nichts zugesagt, und nichts ist im Auto.</translation>
    </message>
    <message>
        <source>Plan it</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation>Aufgeben</translation>
    </message>
    <message>
        <source>%1 is planned.</source>
        <translation>%1 ist geplant.</translation>
    </message>
    <message>
        <source>%1 is changed.</source>
        <translation>%1 ist geändert.</translation>
    </message>
    <message>
        <source>%1 is given up.</source>
        <translation>%1 ist aufgegeben.</translation>
    </message>
</context>
<context>
    <name>flarestock::WhatIsThis</name>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 per inch</source>
        <translation>%1 Gänge/Zoll</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>as it should be</source>
        <translation>genau auf Maß</translation>
    </message>
    <message>
        <source>%1 mm under</source>
        <translation>%1 mm unter Maß</translation>
    </message>
    <message>
        <source>%1 mm over</source>
        <translation>%1 mm über Maß</translation>
    </message>
    <message>
        <source>That is no measure. Write a diameter like 22.1 mm or 0.87 in, a pitch like 14 tpi or 1.5 mm.</source>
        <translation>Das ist kein Maß. Den Durchmesser wie 22,1 mm oder 0,87 in schreiben, die Steigung wie 14 tpi oder 1,5 mm.</translation>
    </message>
    <message>
        <source>none in stock</source>
        <translation>keins im Lager</translation>
    </message>
    <message>
        <source>1 part in stock</source>
        <translation>1 Teil im Lager</translation>
    </message>
    <message>
        <source>%1 parts in stock</source>
        <translation>%1 Teile im Lager</translation>
    </message>
    <message>
        <source>%1: %2, %3, %4</source>
        <translation>%1: %2, %3, %4</translation>
    </message>
    <message>
        <source>cone 37°</source>
        <translation>Konus 37°</translation>
    </message>
    <message>
        <source>cone 45°</source>
        <translation>Konus 45°</translation>
    </message>
    <message>
        <source>cone 30°</source>
        <translation>Konus 30°</translation>
    </message>
    <message>
        <source>cone 12°</source>
        <translation>Konus 12°</translation>
    </message>
    <message>
        <source>flat, or a groove</source>
        <translation>flach oder Nut</translation>
    </message>
    <message>
        <source>tapered</source>
        <translation>kegelig</translation>
    </message>
    <message>
        <source>– mm</source>
        <translation>– mm</translation>
    </message>
</context>
</TS>
