<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AimButton</name>
    <message>
        <source>● %1</source>
        <translation>● %1</translation>
    </message>
    <message>
        <source>○ %1</source>
        <translation>○ %1</translation>
    </message>
</context>
<context>
    <name>BoxHand</name>
    <message>
        <source>how much of it came</source>
        <translation>wie viel davon kam</translation>
    </message>
    <message>
        <source>the bin that it goes to</source>
        <translation>das Fach, in das es kommt</translation>
    </message>
    <message>
        <source>bin</source>
        <translation>Fach</translation>
    </message>
    <message>
        <source>one less is there</source>
        <translation>eins weniger ist da</translation>
    </message>
    <message>
        <source>one more is there</source>
        <translation>eins mehr ist da</translation>
    </message>
    <message>
        <source>Something is wrong</source>
        <translation>Etwas stimmt nicht</translation>
    </message>
</context>
<context>
    <name>BoxList</name>
    <message>
        <source>what should be in the box, %1</source>
        <translation>was im Karton sein soll: %1</translation>
    </message>
</context>
<context>
    <name>BoxView</name>
    <message>
        <source>All of it is there</source>
        <translation>Alles ist da</translation>
    </message>
    <message>
        <source>! %1</source>
        <translation>! %1</translation>
    </message>
    <message>
        <source>not so</source>
        <translation>stimmt nicht</translation>
    </message>
    <message>
        <source>it is not so: %1</source>
        <translation>stimmt nicht: %1</translation>
    </message>
    <message>
        <source>number of the delivery note</source>
        <translation>Nummer des Lieferscheins</translation>
    </message>
    <message>
        <source>delivery note</source>
        <translation>Lieferschein</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Einräumen</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>back to the orders</source>
        <translation>zurück zu den Bestellungen</translation>
    </message>
    <message>
        <source>leave the box as it is, nothing is booked</source>
        <translation>den Karton lassen, wie er ist, nichts wird gebucht</translation>
    </message>
</context>
<context>
    <name>Buying</name>
    <message>
        <source>serial; - for none</source>
        <translation>Seriennummer; - für keine</translation>
    </message>
    <message>
        <source>batch; - for none</source>
        <translation>Charge; - für keine</translation>
    </message>
    <message>
        <source>name of the piece</source>
        <translation>Name des Stücks</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2, in its box: not there</source>
        <translation>%1 von %2, in seinem Karton: nicht da</translation>
    </message>
    <message>
        <source>%1 of %2, in its box</source>
        <translation>%1 von %2, in seinem Karton</translation>
    </message>
    <message>
        <source>not in the box</source>
        <translation>nicht im Karton</translation>
    </message>
    <message>
        <source>%1 %2 of the box of %3</source>
        <translation>%1 %2 aus dem Karton von %3</translation>
    </message>
    <message>
        <source>Lacks, and becomes a claim: %1.</source>
        <translation>Fehlt und wird zur Reklamation: %1.</translation>
    </message>
    <message>
        <source>%1 landed each</source>
        <translation>Einstandspreis %1</translation>
    </message>
    <message>
        <source>%1; the time before it was %2</source>
        <translation>%1; das Mal davor %2</translation>
    </message>
    <message>
        <source>%1; the first time that we bought it</source>
        <translation>%1; zum ersten Mal gekauft</translation>
    </message>
    <message>
        <source>Claim %1: %2 of %3</source>
        <translation>Reklamation %1: %2 von %3</translation>
    </message>
    <message>
        <source>carries %1</source>
        <translation>Wert %1</translation>
    </message>
    <message>
        <source>1 line came</source>
        <translation>1 Zeile gekommen</translation>
    </message>
    <message>
        <source>%1 lines came</source>
        <translation>%1 Zeilen gekommen</translation>
    </message>
    <message>
        <source>nothing is claimed</source>
        <translation>nichts reklamiert</translation>
    </message>
    <message>
        <source>1 claim</source>
        <translation>1 Reklamation</translation>
    </message>
    <message>
        <source>%1 claims</source>
        <translation>%1 Reklamationen</translation>
    </message>
    <message>
        <source>Received of order %1: %2, %3.</source>
        <translation>Angenommen aus Bestellung %1: %2, %3.</translation>
    </message>
    <message>
        <source>claim %1</source>
        <translation>Reklamation %1</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>Bestellung %1</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>morgen</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>gestern</translation>
    </message>
    <message>
        <source>in %1 days</source>
        <translation>in %1 Tagen</translation>
    </message>
    <message>
        <source>%1 days ago</source>
        <translation>vor %1 Tagen</translation>
    </message>
    <message>
        <source>no day said</source>
        <translation>kein Tag genannt</translation>
    </message>
    <message>
        <source>nothing short</source>
        <translation>nichts fehlt</translation>
    </message>
    <message>
        <source>1 part short</source>
        <translation>1 Teil fehlt</translation>
    </message>
    <message>
        <source>%1 parts short</source>
        <translation>%1 Teile fehlen</translation>
    </message>
    <message>
        <source>comes: %1</source>
        <translation>kommt: %1</translation>
    </message>
    <message>
        <source>needed: %1</source>
        <translation>gebraucht: %1</translation>
    </message>
    <message>
        <source>of %1: comes %2, needed %3, short %4</source>
        <translation>von %1: kommt %2, gebraucht %3, fehlt %4</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1 of %2 on %3</source>
        <translation>%1 aus %2 am %3</translation>
    </message>
    <message>
        <source>%1, no day said</source>
        <translation>%1, kein Tag genannt</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1, is over</source>
        <translation>%1, ist vorbei</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bald</translation>
    </message>
    <message>
        <source>nobody sells it</source>
        <translation>verkauft niemand</translation>
    </message>
    <message>
        <source>no day was said</source>
        <translation>kein Tag genannt</translation>
    </message>
    <message>
        <source>needed by %1, %2</source>
        <translation>gebraucht bis %1, %2</translation>
    </message>
    <message>
        <source>%1, %2: %3 short of %4, %5, for %6; order by %7</source>
        <translation>%1, %2: fehlt %3 von %4, %5, für %6; Bestellfrist: %7</translation>
    </message>
    <message>
        <source>%1; on its way: %2</source>
        <translation>%1; unterwegs: %2</translation>
    </message>
    <message>
        <source>%1 its own</source>
        <translation>%1 schon zugeteilt</translation>
    </message>
    <message>
        <source>%1 from stock</source>
        <translation>%1 aus dem Lager</translation>
    </message>
    <message>
        <source>has none of it</source>
        <translation>hat nichts davon</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>comes too late</source>
        <translation>kommt zu spät</translation>
    </message>
    <message>
        <source>in time yet</source>
        <translation>noch rechtzeitig</translation>
    </message>
    <message>
        <source>%1, ordered by %2</source>
        <translation>%1, bestellt bis %2</translation>
    </message>
    <message>
        <source>%1 %2 each, %3 days</source>
        <translation>je %1 %2, Lieferzeit: %3 Tg.</translation>
    </message>
    <message>
        <source>order by: %1</source>
        <translation>Bestellfrist: %1</translation>
    </message>
    <message>
        <source>short %1 of %2: %3</source>
        <translation>fehlt %1 von %2: %3</translation>
    </message>
    <message>
        <source>on its way</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>lies free instead</source>
        <translation>liegt stattdessen frei</translation>
    </message>
    <message>
        <source>%1 at %2 is %3: nobody counts it.</source>
        <translation>%1 in %2: %3, niemand zählt es.</translation>
    </message>
    <message>
        <source>Order %1 drafted.</source>
        <translation>Bestellung %1 als Entwurf angelegt.</translation>
    </message>
    <message>
        <source>Drafted.</source>
        <translation>Als Entwurf angelegt.</translation>
    </message>
    <message>
        <source>Order %1 placed.</source>
        <translation>Bestellung %1 aufgegeben.</translation>
    </message>
    <message>
        <source>Order %1 changed.</source>
        <translation>Bestellung %1 geändert.</translation>
    </message>
    <message>
        <source>Charged late on order %1.</source>
        <translation>Zu Bestellung %1 später berechnet.</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>type or scan it; another one is a new line</source>
        <translation>tippen oder scannen; ein anderes wird eine neue Zeile</translation>
    </message>
    <message>
        <source>how many, how much</source>
        <translation>wie viele, wie viel</translation>
    </message>
    <message>
        <source>0: it is not ordered</source>
        <translation>0: wird nicht bestellt</translation>
    </message>
    <message>
        <source>price of one</source>
        <translation>Preis für eins</translation>
    </message>
    <message>
        <source>empty: his price for so many</source>
        <translation>leer: sein Preis bei dieser Menge</translation>
    </message>
    <message>
        <source>freight</source>
        <translation>Fracht</translation>
    </message>
    <message>
        <source>discount off the goods</source>
        <translation>Rabatt auf die Ware</translation>
    </message>
    <message>
        <source>is to be here on</source>
        <translation>soll da sein am</translation>
    </message>
    <message>
        <source>note for the supplier</source>
        <translation>Bemerkung für den Lieferanten</translation>
    </message>
    <message>
        <source>all that came</source>
        <translation>alles, was kam</translation>
    </message>
    <message>
        <source>what was charged</source>
        <translation>was berechnet wurde</translation>
    </message>
    <message>
        <source>for what</source>
        <translation>wofür</translation>
    </message>
    <message>
        <source>duty</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>tax</source>
        <translation>Steuer</translation>
    </message>
    <message>
        <source>a credit: it is paid back</source>
        <translation>Gutschrift: wird erstattet</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>who bears it</source>
        <translation>was es trägt</translation>
    </message>
    <message>
        <source>whose paper says so</source>
        <translation>laut welchem Beleg</translation>
    </message>
    <message>
        <source>carrier&apos;s invoice 4711</source>
        <translation>Frachtrechnung 4711</translation>
    </message>
    <message>
        <source>of whom</source>
        <translation>bei wem</translation>
    </message>
    <message>
        <source>type or scan it</source>
        <translation>tippen oder scannen</translation>
    </message>
    <message>
        <source>goes out on</source>
        <translation>geht raus am</translation>
    </message>
    <message>
        <source>empty: today</source>
        <translation>leer: heute</translation>
    </message>
    <message>
        <source>No order is in hand.</source>
        <translation>Keine Bestellung ist in der Hand.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Bestellen</translation>
    </message>
    <message>
        <source>It goes out and counts as on its way.</source>
        <translation>Sie geht raus und zählt als unterwegs.</translation>
    </message>
    <message>
        <source>Only a draft is placed.</source>
        <translation>Bestellt wird nur ein Entwurf.</translation>
    </message>
    <message>
        <source>Receive a box</source>
        <translation>Karton annehmen</translation>
    </message>
    <message>
        <source>What came of it is ticked off, piece by piece.</source>
        <translation>Was davon kam, wird Stück für Stück abgehakt.</translation>
    </message>
    <message>
        <source>It is a draft; place it first.</source>
        <translation>Sie ist ein Entwurf; erst bestellen.</translation>
    </message>
    <message>
        <source>Nothing of it is still to come.</source>
        <translation>Davon kommt nichts mehr.</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>A line, its day, its freight, its note.</source>
        <translation>Eine Zeile, ihr Tag, ihre Fracht, ihre Bemerkung.</translation>
    </message>
    <message>
        <source>It is over.</source>
        <translation>Sie ist erledigt.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Abschließen</translation>
    </message>
    <message>
        <source>Nothing more of it is awaited.</source>
        <translation>Davon wird nichts mehr erwartet.</translation>
    </message>
    <message>
        <source>Only an order that is on its way is closed.</source>
        <translation>Abgeschlossen wird nur eine Bestellung, die unterwegs ist.</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Stornieren</translation>
    </message>
    <message>
        <source>It is not wanted; tell the supplier if he has it.</source>
        <translation>Sie wird nicht gebraucht; dem Lieferanten sagen, falls er sie schon hat.</translation>
    </message>
    <message>
        <source>Something of it has come, or it is over.</source>
        <translation>Etwas davon ist gekommen, oder sie ist erledigt.</translation>
    </message>
    <message>
        <source>Late invoice</source>
        <translation>Spätere Rechnung</translation>
    </message>
    <message>
        <source>Freight, duty or a credit that came after the pieces.</source>
        <translation>Fracht, Zoll oder eine Gutschrift, die nach den Stücken kam.</translation>
    </message>
    <message>
        <source>Nothing has come of it that could bear a cost.</source>
        <translation>Davon ist nichts gekommen, was Kosten tragen könnte.</translation>
    </message>
    <message>
        <source>drafts</source>
        <translation>Entwürfe</translation>
    </message>
    <message>
        <source>on their way</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>over</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>angelegt am %1</translation>
    </message>
    <message>
        <source>placed %1</source>
        <translation>bestellt am %1</translation>
    </message>
    <message>
        <source>1 line to come</source>
        <translation>1 Zeile offen</translation>
    </message>
    <message>
        <source>%1 lines to come</source>
        <translation>%1 Zeilen offen</translation>
    </message>
    <message>
        <source>! %1, was due %2</source>
        <translation>! %1, war erwartet am %2</translation>
    </message>
    <message>
        <source>%1, due %2</source>
        <translation>%1, erwartet am %2</translation>
    </message>
    <message>
        <source>order %1, %2, %3, %4, %5</source>
        <translation>Bestellung %1, %2, %3, %4, %5</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>freight that came late</source>
        <translation>später berechnete Fracht</translation>
    </message>
    <message>
        <source>duty that came late</source>
        <translation>später berechneter Zoll</translation>
    </message>
    <message>
        <source>tax that came late</source>
        <translation>später berechnete Steuer</translation>
    </message>
    <message>
        <source>credit</source>
        <translation>Gutschrift</translation>
    </message>
    <message>
        <source>charged late</source>
        <translation>später berechnet</translation>
    </message>
    <message>
        <source>%1, of it %2 on what is still here</source>
        <translation>%1, davon %2 auf das, was noch hier ist</translation>
    </message>
    <message>
        <source>draft</source>
        <translation>Entwurf</translation>
    </message>
    <message>
        <source>placed</source>
        <translation>bestellt</translation>
    </message>
    <message>
        <source>partly received</source>
        <translation>teils angenommen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>abgeschlossen</translation>
    </message>
    <message>
        <source>cancelled</source>
        <translation>storniert</translation>
    </message>
    <message>
        <source>%1 came, %2 to come</source>
        <translation>%1 gekommen, %2 offen</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>%1 came</source>
        <translation>%1 gekommen</translation>
    </message>
    <message>
        <source>goods</source>
        <translation>Ware</translation>
    </message>
    <message>
        <source>less discount</source>
        <translation>abzüglich Rabatt</translation>
    </message>
    <message>
        <source>tax, got back</source>
        <translation>Steuer, kommt zurück</translation>
    </message>
    <message>
        <source>total</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>one %1 counts as</source>
        <translation>1 %1 zählt als</translation>
    </message>
    <message>
        <source>is to be here</source>
        <translation>soll da sein</translation>
    </message>
    <message>
        <source>owed</source>
        <translation>geschuldet</translation>
    </message>
    <message>
        <source>claim %1: %2</source>
        <translation>Reklamation %1: %2</translation>
    </message>
    <message>
        <source>Claim %1 is promised.</source>
        <translation>Reklamation %1 ist zugesagt.</translation>
    </message>
    <message>
        <source>Claim %1: the piece came.</source>
        <translation>Reklamation %1: Das Stück kam.</translation>
    </message>
    <message>
        <source>Claim %1 is paid back.</source>
        <translation>Reklamation %1 ist erstattet.</translation>
    </message>
    <message>
        <source>Claim %1 is dropped.</source>
        <translation>Reklamation %1 ist fallen gelassen.</translation>
    </message>
    <message>
        <source>A claim is raised.</source>
        <translation>Eine Reklamation ist angelegt.</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>which part</source>
        <translation>welches Teil</translation>
    </message>
    <message>
        <source>what is wrong</source>
        <translation>was nicht stimmt</translation>
    </message>
    <message>
        <source>of which order</source>
        <translation>aus welcher Bestellung</translation>
    </message>
    <message>
        <source>2026-0007; empty: of none</source>
        <translation>2026-0007; leer: aus keiner</translation>
    </message>
    <message>
        <source>else of whom</source>
        <translation>sonst von wem</translation>
    </message>
    <message>
        <source>lacked in the box of</source>
        <translation>fehlte im Karton von</translation>
    </message>
    <message>
        <source>where it lay in one</source>
        <translation>falls es in einem lag</translation>
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
        <source>empty: into its box</source>
        <translation>leer: in seinen Karton</translation>
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
        <source>by which day</source>
        <translation>bis zu welchem Tag</translation>
    </message>
    <message>
        <source>He names a day</source>
        <translation>Er nennt einen Tag</translation>
    </message>
    <message>
        <source>It came</source>
        <translation>Es kam</translation>
    </message>
    <message>
        <source>He pays back</source>
        <translation>Er erstattet</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Fallen lassen</translation>
    </message>
    <message>
        <source>No claim is in hand.</source>
        <translation>Keine Reklamation ist in der Hand.</translation>
    </message>
    <message>
        <source>It is settled.</source>
        <translation>Sie ist erledigt.</translation>
    </message>
    <message>
        <source>raised, no day yet</source>
        <translation>reklamiert, noch kein Tag</translation>
    </message>
    <message>
        <source>! was promised by %1</source>
        <translation>! war zugesagt bis %1</translation>
    </message>
    <message>
        <source>promised by %1</source>
        <translation>zugesagt bis %1</translation>
    </message>
    <message>
        <source>the piece came</source>
        <translation>das Stück kam</translation>
    </message>
    <message>
        <source>%1 paid back</source>
        <translation>%1 erstattet</translation>
    </message>
    <message>
        <source>dropped</source>
        <translation>fallen gelassen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>settled</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>claim %1: %2, %3, %4, %5</source>
        <translation>Reklamation %1: %2, %3, %4, %5</translation>
    </message>
    <message>
        <source>missing in the box</source>
        <translation>fehlt im Karton</translation>
    </message>
    <message>
        <source>another part came</source>
        <translation>ein anderes Teil kam</translation>
    </message>
    <message>
        <source>came damaged</source>
        <translation>kam beschädigt</translation>
    </message>
    <message>
        <source>on the paper, not in the box</source>
        <translation>auf dem Lieferschein, nicht im Karton</translation>
    </message>
    <message>
        <source>of order</source>
        <translation>aus Bestellung</translation>
    </message>
    <message>
        <source>of the box of</source>
        <translation>aus dem Karton von</translation>
    </message>
    <message>
        <source>%1 of %2 come late: needed by %3, here %4.</source>
        <translation>%1 von %2 kommt zu spät: gebraucht bis %3, hier am %4.</translation>
    </message>
    <message>
        <source>%1 of %2 is on no slip: %3.</source>
        <translation>%1 von %2 steht auf keinem Bestellzettel: %3.</translation>
    </message>
    <message>
        <source>If all of it could wait until %1, it would cost %2 less.</source>
        <translation>Könnte alles bis %1 warten, wäre es um %2 günstiger.</translation>
    </message>
    <message>
        <source>earliest</source>
        <translation>am frühesten</translation>
    </message>
    <message>
        <source>fewest parcels</source>
        <translation>wenigste Pakete</translation>
    </message>
    <message>
        <source>cheapest</source>
        <translation>am günstigsten</translation>
    </message>
    <message>
        <source>proven: nothing is better</source>
        <translation>bewiesen: nichts ist besser</translation>
    </message>
    <message>
        <source>not proven to be the best</source>
        <translation>nicht bewiesen, dass es das Beste ist</translation>
    </message>
    <message>
        <source>not proven; at most %1 better</source>
        <translation>nicht bewiesen; höchstens %1 besser</translation>
    </message>
    <message>
        <source>1 parcel</source>
        <translation>1 Paket</translation>
    </message>
    <message>
        <source>%1 parcels</source>
        <translation>%1 Pakete</translation>
    </message>
    <message>
        <source>last %1</source>
        <translation>letztes am %1</translation>
    </message>
    <message>
        <source>all in time</source>
        <translation>alles rechtzeitig</translation>
    </message>
    <message>
        <source>1 part late</source>
        <translation>1 Teil zu spät</translation>
    </message>
    <message>
        <source>%1 parts late</source>
        <translation>%1 Teile zu spät</translation>
    </message>
    <message>
        <source>%1: %2, %3, %4</source>
        <translation>%1: %2, %3, %4</translation>
    </message>
    <message>
        <source>%1 cost %2 less than %3</source>
        <translation>%1 kosten %2 weniger als %3</translation>
    </message>
    <message>
        <source>%1 cost the same as %2</source>
        <translation>%1 kosten so viel wie %2</translation>
    </message>
    <message>
        <source>%1 rather than %2: %3 more, for a better freight or his least order</source>
        <translation>%1 statt %2: %3 mehr, für günstigere Fracht oder seine Mindestbestellung</translation>
    </message>
    <message>
        <source>in packs of %1</source>
        <translation>in Packungen zu %1</translation>
    </message>
    <message>
        <source>need %1, %2 left over</source>
        <translation>Bedarf %1, %2 bleibt übrig</translation>
    </message>
    <message>
        <source>none from %1 of goods</source>
        <translation>keine ab %1 Warenwert</translation>
    </message>
    <message>
        <source>%1 from %2 of goods</source>
        <translation>%1 ab %2 Warenwert</translation>
    </message>
    <message>
        <source>none charged</source>
        <translation>nicht berechnet</translation>
    </message>
    <message>
        <source>%1 %, got back</source>
        <translation>%1 %, kommt zurück</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>ordered today, all here %1</source>
        <translation>heute bestellt, alles hier am %1</translation>
    </message>
    <message>
        <source>to be ordered by %1, which is over; all here %2</source>
        <translation>Bestellfrist %1 ist vorbei; alles hier am %2</translation>
    </message>
    <message>
        <source>order by %1; ordered today, all here %2</source>
        <translation>Bestellfrist %1; heute bestellt, alles hier am %2</translation>
    </message>
    <message>
        <source>counts as %1</source>
        <translation>zählt als %1</translation>
    </message>
    <message>
        <source>%1, %2: 1 line, %3</source>
        <translation>%1, %2: 1 Zeile, %3</translation>
    </message>
    <message>
        <source>%1, %2: %3 lines, %4</source>
        <translation>%1, %2: %3 Zeilen, %4</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>Drafted: %1.</source>
        <translation>Als Entwurf angelegt: %1.</translation>
    </message>
    <message>
        <source>empty: each line by its lead time</source>
        <translation>leer: jede Zeile nach ihrer Lieferzeit</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>erwartet %1</translation>
    </message>
    <message>
        <source>%1 of them come to no more: %2.</source>
        <translation>%1 davon kosten nicht mehr: %2.</translation>
    </message>
    <message>
        <source>1 part by %1</source>
        <translation>1 Teil mit %1</translation>
    </message>
    <message>
        <source>%1 parts by %2</source>
        <translation>%1 Teile mit %2</translation>
    </message>
    <message>
        <source>1 part for %1</source>
        <translation>1 Teil für %1</translation>
    </message>
    <message>
        <source>%1 parts for %2</source>
        <translation>%1 Teile für %2</translation>
    </message>
    <message>
        <source>nobody sells what is short</source>
        <translation>niemand verkauft, was fehlt</translation>
    </message>
    <message>
        <source>nothing is left to order</source>
        <translation>nichts mehr zu bestellen</translation>
    </message>
    <message>
        <source>without the tax that is got back</source>
        <translation>ohne die erstattete Steuer</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>price of one %1</source>
        <translation>Preis je %1</translation>
    </message>
    <message>
        <source>%1 each</source>
        <translation>%1 je Stück</translation>
    </message>
    <message>
        <source>%1 of %2, %3, %4; %5</source>
        <translation>%1 von %2, %3, %4; %5</translation>
    </message>
    <message>
        <source>changed</source>
        <translation>geändert</translation>
    </message>
    <message>
        <source>a draft again</source>
        <translation>wieder Entwurf</translation>
    </message>
    <message>
        <source>drafted</source>
        <translation>Entwurf angelegt</translation>
    </message>
    <message>
        <source>open again</source>
        <translation>wieder offen</translation>
    </message>
    <message>
        <source>More than was ordered, and shares its cost: %1. Count again, or leave them out and send them back.</source>
        <translation>Mehr als bestellt, und trägt mit an dessen Kosten: %1. Noch einmal zählen, oder weglassen und zurückschicken.</translation>
    </message>
    <message>
        <source>ordered at %1</source>
        <translation>bestellt zu %1</translation>
    </message>
    <message>
        <source>ordered at %1 %2; you can write it in %2: 12.50 %2</source>
        <translation>bestellt zu %1 %2; kann auch in %2 stehen: 12,50 %2</translation>
    </message>
    <message>
        <source>what he pays back, in %1</source>
        <translation>was er zurückzahlt, in %1</translation>
    </message>
</context>
<context>
    <name>BuyingArea</name>
    <message>
        <source>Narrow: AD-66, coupe, 2026-0007  (Ctrl+F)</source>
        <translation>Eingrenzen: AD-66, coupe, 2026-0007  (Strg+F)</translation>
    </message>
    <message>
        <source>Find in what is bought</source>
        <translation>Im Einkauf suchen</translation>
    </message>
    <message>
        <source>Write the letter to …</source>
        <translation>Brief speichern unter …</translation>
    </message>
    <message>
        <source>Write the order to …</source>
        <translation>Bestellung speichern unter …</translation>
    </message>
</context>
<context>
    <name>BuyingPages</name>
    <message>
        <source>What is short</source>
        <translation>Was fehlt</translation>
    </message>
    <message>
        <source>Order slips</source>
        <translation>Bestellzettel</translation>
    </message>
    <message>
        <source>Orders and boxes</source>
        <translation>Bestellungen und Kartons</translation>
    </message>
    <message>
        <source>Owed to us</source>
        <translation>Uns geschuldet</translation>
    </message>
    <message>
        <source>Owed to us: %1</source>
        <translation>Uns geschuldet: %1</translation>
    </message>
    <message>
        <source>Ctrl+%1</source>
        <translation>Strg+%1</translation>
    </message>
</context>
<context>
    <name>BuyingTitle</name>
    <message>
        <source>Can it all be here in time?</source>
        <translation>Kann alles rechtzeitig hier sein?</translation>
    </message>
    <message>
        <source>Anything owed?</source>
        <translation>Wird etwas geschuldet?</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>1 claim</source>
        <translation>1 Reklamation</translation>
    </message>
    <message>
        <source>%1 claims</source>
        <translation>%1 Reklamationen</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
</context>
<context>
    <name>CameList</name>
    <message>
        <source>what came, %1</source>
        <translation>was kam: %1</translation>
    </message>
</context>
<context>
    <name>ClaimCard</name>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
<context>
    <name>ClaimPanel</name>
    <message>
        <source>no claim is in hand</source>
        <translation>keine Reklamation ist in der Hand</translation>
    </message>
    <message>
        <source>claim %1</source>
        <translation>Reklamation %1</translation>
    </message>
    <message>
        <source>Being written …</source>
        <translation>Wird geschrieben …</translation>
    </message>
    <message>
        <source>Letter to the supplier, as PDF</source>
        <translation>Brief an den Lieferanten, als PDF</translation>
    </message>
    <message>
        <source>No claim is in hand.</source>
        <translation>Keine Reklamation ist in der Hand.</translation>
    </message>
    <message>
        <source>The same in English, as PDF</source>
        <translation>Derselbe auf Englisch, als PDF</translation>
    </message>
</context>
<context>
    <name>DayColumn</name>
    <message>
        <source>and %1 more</source>
        <translation>und %1 weitere</translation>
    </message>
    <message>
        <source>%1: %2 short</source>
        <translation>%1: fehlt %2</translation>
    </message>
    <message>
        <source>%1: needs %2</source>
        <translation>%1: braucht %2</translation>
    </message>
    <message>
        <source>%1: %2 come</source>
        <translation>%1: kommt %2</translation>
    </message>
</context>
<context>
    <name>DayStrip</name>
    <message>
        <source>days on which something comes or is needed</source>
        <translation>Tage, an denen etwas kommt oder gebraucht wird</translation>
    </message>
</context>
<context>
    <name>FactLine</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>! %1</source>
        <translation>! %1</translation>
    </message>
</context>
<context>
    <name>LackingHead</name>
    <message>
        <source>part, and what it is</source>
        <translation>Teil und was es ist</translation>
    </message>
    <message>
        <source>short</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>of</source>
        <translation>von</translation>
    </message>
    <message>
        <source>for</source>
        <translation>für</translation>
    </message>
    <message>
        <source>on its way</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>order by</source>
        <translation>Bestellfrist</translation>
    </message>
</context>
<context>
    <name>LackingLine</name>
    <message>
        <source>! %1</source>
        <translation>! %1</translation>
    </message>
</context>
<context>
    <name>LackingPanel</name>
    <message>
        <source>no line is in hand</source>
        <translation>keine Zeile ist in der Hand</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>To know besides</source>
        <translation>Was noch zu wissen ist</translation>
    </message>
</context>
<context>
    <name>LackingTable</name>
    <message>
        <source>what is short, %1 lines</source>
        <translation>was fehlt, Zeilen: %1</translation>
    </message>
</context>
<context>
    <name>OrderCard</name>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
<context>
    <name>OrderLineTag</name>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
</context>
<context>
    <name>OrderPanel</name>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>CSV</source>
        <translation>CSV</translation>
    </message>
    <message>
        <source>Spreadsheet</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>order %1, %2</source>
        <translation>Bestellung %1, %2</translation>
    </message>
    <message>
        <source>Being written …</source>
        <translation>Wird geschrieben …</translation>
    </message>
    <message>
        <source>Write it to a file:</source>
        <translation>In eine Datei schreiben:</translation>
    </message>
    <message>
        <source>write the order as %1</source>
        <translation>Bestellung schreiben als %1</translation>
    </message>
    <message>
        <source>No order is in hand. Choose one at the left, or scan its number.</source>
        <translation>Keine Bestellung ist in der Hand. Links eine wählen oder ihre Nummer scannen.</translation>
    </message>
    <message>
        <source>PDF in English</source>
        <translation>PDF auf Englisch</translation>
    </message>
</context>
<context>
    <name>OrdersView</name>
    <message>
        <source>orders, %1</source>
        <translation>Bestellungen: %1</translation>
    </message>
    <message>
        <source>New order by hand</source>
        <translation>Neue Bestellung von Hand</translation>
    </message>
</context>
<context>
    <name>OwedView</name>
    <message>
        <source>claims, %1</source>
        <translation>Reklamationen: %1</translation>
    </message>
    <message>
        <source>He owes something else</source>
        <translation>Anderes reklamieren</translation>
    </message>
</context>
<context>
    <name>SlipLine</name>
    <message>
        <source>%1 of %2 at %3, %4. %5</source>
        <translation>%1 von %2 zu %3, %4. %5</translation>
    </message>
</context>
<context>
    <name>SlipPaper</name>
    <message>
        <source>! %1</source>
        <translation>! %1</translation>
    </message>
    <message>
        <source>lines of %1</source>
        <translation>Zeilen von %1</translation>
    </message>
    <message>
        <source>goods</source>
        <translation>Ware</translation>
    </message>
    <message>
        <source>goods, %1</source>
        <translation>Ware, %1</translation>
    </message>
    <message>
        <source>freight</source>
        <translation>Fracht</translation>
    </message>
    <message>
        <source>freight, %1</source>
        <translation>Fracht, %1</translation>
    </message>
    <message>
        <source>tax</source>
        <translation>Steuer</translation>
    </message>
    <message>
        <source>tax %1</source>
        <translation>Steuer %1</translation>
    </message>
    <message>
        <source>total</source>
        <translation>Summe</translation>
    </message>
    <message>
        <source>total, %1</source>
        <translation>Summe, %1</translation>
    </message>
    <message>
        <source>Make the draft</source>
        <translation>Entwurf anlegen</translation>
    </message>
    <message>
        <source>Look at draft %1</source>
        <translation>Entwurf %1 ansehen</translation>
    </message>
    <message>
        <source>make the draft to %1</source>
        <translation>Entwurf an %1 anlegen</translation>
    </message>
</context>
<context>
    <name>SlipSum</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>SlipsView</name>
    <message>
        <source>Order so that it is</source>
        <translation>So bestellen:</translation>
    </message>
    <message>
        <source>Draft all</source>
        <translation>Alle als Entwurf</translation>
    </message>
    <message>
        <source>a draft of an order for each slip</source>
        <translation>für jeden Bestellzettel eine Bestellung als Entwurf</translation>
    </message>
    <message>
        <source>order slips, %1</source>
        <translation>Bestellzettel: %1</translation>
    </message>
    <message>
        <source>to know besides</source>
        <translation>was noch zu wissen ist</translation>
    </message>
</context>
<context>
    <name>TickLine</name>
    <message>
        <source>→ %1</source>
        <translation>→ %1</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
</context>
<context>
    <name>flarestock::BoxPage</name>
    <message>
        <source>%1 of %2 came in place of %3</source>
        <translation>%1 von %2 kam statt %3</translation>
    </message>
    <message>
        <source>%1 of %2 came damaged</source>
        <translation>%1 von %2 kam beschädigt</translation>
    </message>
    <message>
        <source>%1 of %2 is on the paper and not in the box</source>
        <translation>%1 von %2 steht auf dem Lieferschein und ist nicht im Karton</translation>
    </message>
    <message>
        <source>Box of %1, %2</source>
        <translation>Karton aus %1, %2</translation>
    </message>
    <message>
        <source>%1 of %2 ticked</source>
        <translation>%1 von %2 abgehakt</translation>
    </message>
    <message>
        <source>%1 is nothing of this box, and no piece in hand waits for its number.</source>
        <translation>%1 gehört nicht zu diesem Karton, und kein Stück in der Hand wartet auf seine Nummer.</translation>
    </message>
    <message>
        <source>%1 is kept by its serial: scan or type it; - where it bears none.</source>
        <translation>%1 wird nach Seriennummer geführt: scannen oder eintippen; - wo keine darauf steht.</translation>
    </message>
    <message>
        <source>%1 is kept by its batch: scan or type it; - where it bears none.</source>
        <translation>%1 wird nach Charge geführt: scannen oder eintippen; - wo keine darauf steht.</translation>
    </message>
    <message>
        <source>%1 comes in pieces: give each a name.</source>
        <translation>%1 kommt in Stücken: jedem einen Namen geben.</translation>
    </message>
</context>
<context>
    <name>flarestock::BuyingDesk</name>
    <message>
        <source>not known yet</source>
        <translation>noch nicht bekannt</translation>
    </message>
    <message>
        <source>yes, nothing is short</source>
        <translation>ja, nichts fehlt</translation>
    </message>
    <message>
        <source>yes, if ordered now</source>
        <translation>ja, wenn jetzt bestellt</translation>
    </message>
    <message>
        <source>1 line comes late</source>
        <translation>1 Zeile kommt zu spät</translation>
    </message>
    <message>
        <source>%1 lines come late</source>
        <translation>%1 Zeilen kommen zu spät</translation>
    </message>
    <message>
        <source>Buying</source>
        <translation>Einkauf</translation>
    </message>
    <message>
        <source>Buying: nothing is short</source>
        <translation>Einkauf: nichts fehlt</translation>
    </message>
    <message>
        <source>1 line short</source>
        <translation>Fehlmenge in 1 Zeile</translation>
    </message>
    <message>
        <source>%1 lines short</source>
        <translation>Fehlmenge in %1 Zeilen</translation>
    </message>
    <message>
        <source>Buying: %1, for cars and places</source>
        <translation>Einkauf: %1, für Autos und Plätze</translation>
    </message>
    <message>
        <source>for one build</source>
        <translation>für einen Aufbau</translation>
    </message>
    <message>
        <source>for %1 builds</source>
        <translation>für %1 Aufbauten</translation>
    </message>
    <message>
        <source>Buying: %1, %2</source>
        <translation>Einkauf: %1, %2</translation>
    </message>
    <message>
        <source>Buying: %1, %2, cars and places</source>
        <translation>Einkauf: %1, %2, Autos und Plätze</translation>
    </message>
    <message>
        <source>nothing is on its way</source>
        <translation>nichts ist unterwegs</translation>
    </message>
    <message>
        <source>one order or claim is on its way</source>
        <translation>eine Bestellung oder Reklamation ist unterwegs</translation>
    </message>
    <message>
        <source>%1 orders and claims are on their way</source>
        <translation>%1 Bestellungen und Reklamationen sind unterwegs</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>1 line is on no slip</source>
        <translation>1 Zeile steht auf keinem Bestellzettel</translation>
    </message>
    <message>
        <source>%1 lines are on no slip</source>
        <translation>%1 Zeilen stehen auf keinem Bestellzettel</translation>
    </message>
    <message>
        <source>Nothing is ordered from %1 yet. What should be stands on the slips.</source>
        <translation>Bei %1 ist noch nichts bestellt. Was es sein sollte, steht auf den Bestellzetteln.</translation>
    </message>
</context>
<context>
    <name>flarestock::ClaimForm</name>
    <message>
        <source>The supplier names a day for %1</source>
        <translation>Der Lieferant nennt einen Tag für %1</translation>
    </message>
    <message>
        <source>What was owed came: %1</source>
        <translation>Was geschuldet war, kam: %1</translation>
    </message>
    <message>
        <source>He pays back: %1</source>
        <translation>Er erstattet: %1</translation>
    </message>
    <message>
        <source>Drop claim %1</source>
        <translation>Reklamation %1 fallen lassen</translation>
    </message>
    <message>
        <source>A supplier owes something</source>
        <translation>Ein Lieferant schuldet etwas</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Count on it from then</source>
        <translation>Ab dann damit rechnen</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Einräumen</translation>
    </message>
    <message>
        <source>Take it off the cost</source>
        <translation>Von den Kosten abziehen</translation>
    </message>
    <message>
        <source>Nothing comes of it</source>
        <translation>Daraus wird nichts</translation>
    </message>
    <message>
        <source>Raise the claim</source>
        <translation>Reklamation anlegen</translation>
    </message>
</context>
<context>
    <name>flarestock::LackingPage</name>
    <message>
        <source>Working out what the builds need …</source>
        <translation>Errechnet wird, was die Aufbauten brauchen …</translation>
    </message>
    <message>
        <source>Nothing is short: all that the builds and the trailer need is here or comes in time.</source>
        <translation>Nichts fehlt: Alles, was die Aufbauten und der Anhänger brauchen, ist hier oder kommt rechtzeitig.</translation>
    </message>
    <message>
        <source>Nothing that is short is like that.</source>
        <translation>Nichts, was fehlt, ist so.</translation>
    </message>
</context>
<context>
    <name>flarestock::OrderForm</name>
    <message>
        <source>A new order</source>
        <translation>Eine neue Bestellung</translation>
    </message>
    <message>
        <source>Place order %1</source>
        <translation>Bestellung %1 aufgeben</translation>
    </message>
    <message>
        <source>Change order %1</source>
        <translation>Bestellung %1 ändern</translation>
    </message>
    <message>
        <source>What came late on order %1</source>
        <translation>Was zu Bestellung %1 später kam</translation>
    </message>
    <message>
        <source>It begins as a draft with one line; more are added by changing it.</source>
        <translation>Sie beginnt als Entwurf mit einer Zeile; weitere kommen durch Ändern dazu.</translation>
    </message>
    <message>
        <source>From now on it counts as on its way. Send its paper to the supplier: nothing is sent from here.</source>
        <translation>Ab jetzt zählt sie als unterwegs. Ihr Papier dem Lieferanten schicken: Von hier aus wird nichts verschickt.</translation>
    </message>
    <message>
        <source>It is with the supplier: only its day and its note change here.</source>
        <translation>Sie ist beim Lieferanten: Hier ändern sich nur ihr Tag und ihre Bemerkung.</translation>
    </message>
    <message>
        <source>What is still here becomes dearer by its share; what has been built in keeps the cost that it was built in with.</source>
        <translation>Was noch hier ist, wird um seinen Anteil teurer; was eingebaut wurde, behält die Kosten, mit denen es eingebaut wurde.</translation>
    </message>
    <message>
        <source>Draft it</source>
        <translation>Entwurf anlegen</translation>
    </message>
    <message>
        <source>Place it</source>
        <translation>Bestellen</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Put it on the cost</source>
        <translation>Den Kosten zurechnen</translation>
    </message>
    <message>
        <source>Cancel order %1?</source>
        <translation>Bestellung %1 stornieren?</translation>
    </message>
    <message>
        <source>It is with the supplier: tell him, nothing is sent from here. Its pieces are no longer expected, and what waits for them is short again.</source>
        <translation>Sie liegt beim Lieferanten: ihm Bescheid geben, von hier geht nichts hinaus. Ihre Stücke werden nicht mehr erwartet, und was auf sie wartet, fehlt wieder.</translation>
    </message>
    <message>
        <source>Cancel it</source>
        <translation>Stornieren</translation>
    </message>
    <message>
        <source>Order %1 cancelled.</source>
        <translation>Bestellung %1 storniert.</translation>
    </message>
</context>
<context>
    <name>flarestock::OrdersPage</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Reading the orders …</source>
        <translation>Die Bestellungen werden gelesen …</translation>
    </message>
    <message>
        <source>No order was made yet. Make drafts out of the slips, or a new one.</source>
        <translation>Noch keine Bestellung wurde angelegt. Aus den Bestellzetteln Entwürfe anlegen oder eine neue.</translation>
    </message>
    <message>
        <source>No order is like that.</source>
        <translation>Keine Bestellung ist so.</translation>
    </message>
    <message>
        <source>Order %1 closed.</source>
        <translation>Bestellung %1 abgeschlossen.</translation>
    </message>
    <message>
        <source>Order %1 cancelled.</source>
        <translation>Bestellung %1 storniert.</translation>
    </message>
    <message>
        <source>Order %1 is written to %2.</source>
        <translation>Bestellung %1 ist geschrieben: %2.</translation>
    </message>
</context>
<context>
    <name>flarestock::OwedPage</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Reading what suppliers owe …</source>
        <translation>Was Lieferanten schulden, wird gelesen …</translation>
    </message>
    <message>
        <source>Nothing is owed. What lacks in a box when it is received becomes a claim here.</source>
        <translation>Nichts wird geschuldet. Was beim Annehmen in einem Karton fehlt, wird hier zur Reklamation.</translation>
    </message>
    <message>
        <source>No claim is like that.</source>
        <translation>Keine Reklamation ist so.</translation>
    </message>
    <message>
        <source>The letter about %1 is written to %2.</source>
        <translation>Der Brief zu %1 ist geschrieben: %2.</translation>
    </message>
</context>
<context>
    <name>flarestock::SlipsPage</name>
    <message>
        <source>Working out what is best ordered of whom …</source>
        <translation>Errechnet wird, was am besten bei wem bestellt wird …</translation>
    </message>
    <message>
        <source>Nothing is known here of what suppliers ask.</source>
        <translation>Was Lieferanten verlangen, ist hier nicht bekannt.</translation>
    </message>
    <message>
        <source>Nobody sells what is short.</source>
        <translation>Was fehlt, verkauft niemand.</translation>
    </message>
    <message>
        <source>Each of these slips has a draft already; look at the orders.</source>
        <translation>Zu jedem dieser Bestellzettel gibt es schon einen Entwurf; bei den Bestellungen ansehen.</translation>
    </message>
    <message>
        <source>Nothing has to be ordered: nothing is short that does not come already.</source>
        <translation>Nichts ist zu bestellen: was fehlt, ist schon unterwegs.</translation>
    </message>
</context>
<context>
    <name>flarestock::TroubleForm</name>
    <message>
        <source>what is wrong</source>
        <translation>was nicht stimmt</translation>
    </message>
    <message>
        <source>it came damaged</source>
        <translation>es kam beschädigt</translation>
    </message>
    <message>
        <source>on the paper, not in the box</source>
        <translation>auf dem Lieferschein, nicht im Karton</translation>
    </message>
    <message>
        <source>another part came</source>
        <translation>ein anderes Teil kam</translation>
    </message>
    <message>
        <source>how many, how much</source>
        <translation>wie viele, wie viel</translation>
    </message>
    <message>
        <source>which part came</source>
        <translation>welches Teil kam</translation>
    </message>
    <message>
        <source>type or scan it</source>
        <translation>tippen oder scannen</translation>
    </message>
    <message>
        <source>What is wrong with %1</source>
        <translation>Was mit %1 nicht stimmt</translation>
    </message>
    <message>
        <source>It becomes a claim when the box is put away. What came damaged is kept apart and not to be used.</source>
        <translation>Es wird zur Reklamation, wenn der Karton eingeräumt wird. Was beschädigt kam, wird getrennt gelegt und ist gesperrt.</translation>
    </message>
    <message>
        <source>Note it</source>
        <translation>Vermerken</translation>
    </message>
    <message>
        <source>Write how many or how much of it.</source>
        <translation>Eintragen, wie viele oder wie viel davon.</translation>
    </message>
</context>
</TS>
