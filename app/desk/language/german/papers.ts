<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>flarestock</name>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>Charge %1</translation>
    </message>
    <message>
        <source>use by %1</source>
        <translation>verwendbar bis %1</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>Draft of order</source>
        <translation>Entwurf der Bestellung</translation>
    </message>
    <message>
        <source>Cancelled order</source>
        <translation>Stornierte Bestellung</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Bestellung</translation>
    </message>
    <message>
        <source>ours: %1</source>
        <translation>unsere: %1</translation>
    </message>
    <message>
        <source>wanted by %1</source>
        <translation>gewünscht bis %1</translation>
    </message>
    <message>
        <source>Goods</source>
        <translation>Ware</translation>
    </message>
    <message>
        <source>Discount</source>
        <translation>Rabatt</translation>
    </message>
    <message>
        <source>Freight</source>
        <translation>Fracht</translation>
    </message>
    <message>
        <source>Tax %1 %</source>
        <translation>Steuer %1 %</translation>
    </message>
    <message>
        <source>Total %1</source>
        <translation>Gesamt %1</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Wanted by</source>
        <translation>Gewünscht bis</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>Your number</source>
        <translation>Ihre Nummer</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Each</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Betrag</translation>
    </message>
    <message>
        <source>To</source>
        <translation>An</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>%1, continued</source>
        <translation>%1, Fortsetzung</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>As of</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>ablängen</translation>
    </message>
    <message>
        <source>join</source>
        <translation>verbinden</translation>
    </message>
    <message>
        <source>built</source>
        <translation>anders gebaut</translation>
    </message>
    <message>
        <source>test</source>
        <translation>prüfen</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>wrong part</source>
        <translation>falsches Teil</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>short delivery</source>
        <translation>zu wenig geliefert</translation>
    </message>
    <message>
        <source>raised</source>
        <translation>gemeldet</translation>
    </message>
    <message>
        <source>promised</source>
        <translation>zugesagt</translation>
    </message>
    <message>
        <source>piece came</source>
        <translation>Stück kam nach</translation>
    </message>
    <message>
        <source>credited</source>
        <translation>gutgeschrieben</translation>
    </message>
    <message>
        <source>given up</source>
        <translation>fallen gelassen</translation>
    </message>
    <message>
        <source>does not belong here</source>
        <translation>gehört nicht hierher</translation>
    </message>
    <message>
        <source>more than it is to hold</source>
        <translation>mehr als der Sollbestand</translation>
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
        <source>past its day</source>
        <translation>abgelaufen</translation>
    </message>
    <message>
        <source>its box is open</source>
        <translation>sein Karton ist offen</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>soon</source>
        <translation>bald</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>over</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>wash</source>
        <translation>waschen</translation>
    </message>
    <message>
        <source>inspect</source>
        <translation>ansehen</translation>
    </message>
    <message>
        <source>replace</source>
        <translation>ersetzen</translation>
    </message>
    <message>
        <source>in</source>
        <translation>eingebaut</translation>
    </message>
    <message>
        <source>spent</source>
        <translation>verbraucht</translation>
    </message>
    <message>
        <source>none published</source>
        <translation>keines veröffentlicht</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>, half of it</source>
        <translation>, die Hälfte davon</translation>
    </message>
    <message>
        <source>%1: not in the catalogue</source>
        <translation>%1: nicht im Katalog</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>open: nothing joins these</source>
        <translation>offen: Nichts verbindet diese</translation>
    </message>
    <message>
        <source>straight together</source>
        <translation>direkt verbunden</translation>
    </message>
    <message>
        <source>, then </source>
        <translation>, dann </translation>
    </message>
    <message>
        <source>inlet</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>outlet</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>leak test, seen by two</source>
        <translation>Dichtprüfung, von zweien gesehen</translation>
    </message>
    <message>
        <source>leak test</source>
        <translation>Dichtprüfung</translation>
    </message>
    <message>
        <source>with, at, held for, how it was:</source>
        <translation>womit, Druck, Dauer, Ergebnis:</translation>
    </message>
    <message>
        <source>signed, and by:</source>
        <translation>unterschrieben, und von:</translation>
    </message>
    <message>
        <source>signed:</source>
        <translation>unterschrieben:</translation>
    </message>
    <message>
        <source>Where a system is opened:</source>
        <translation>Wo ein System geöffnet wird:</translation>
    </message>
    <message>
        <source>%1 instead of %2</source>
        <translation>%1 statt %2</translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Aufbaublatt</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Getan</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>With</source>
        <translation>Womit</translation>
    </message>
    <message>
        <source>Torque</source>
        <translation>Anzugsmoment</translation>
    </message>
    <message>
        <source>The part maker&apos;s torque comes first.</source>
        <translation>Das Anzugsmoment des Teileherstellers geht vor.</translation>
    </message>
    <message>
        <source>Built by:</source>
        <translation>Gebaut von:</translation>
    </message>
    <message>
        <source>Looked at by:</source>
        <translation>Angesehen von:</translation>
    </message>
    <message>
        <source>cut to %1</source>
        <translation>abgelängt auf %1</translation>
    </message>
    <message>
        <source>Pick list</source>
        <translation>Entnahmeliste</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Nehmen</translation>
    </message>
    <message>
        <source>not found</source>
        <translation>nicht da</translation>
    </message>
    <message>
        <source>nothing to take: it is promised nothing</source>
        <translation>nichts zu entnehmen: nichts ist ihm zugesagt</translation>
    </message>
    <message>
        <source>To take</source>
        <translation>Zu entnehmen</translation>
    </message>
    <message>
        <source>Before a system is opened:</source>
        <translation>Bevor ein System geöffnet wird:</translation>
    </message>
    <message>
        <source>before %1</source>
        <translation>vor %1</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>not to be used at: %1</source>
        <translation>nicht verwendbar bei: %1</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 fehlen</translation>
    </message>
    <message>
        <source>nothing is due</source>
        <translation>nichts ist fällig</translation>
    </message>
    <message>
        <source>over before the end of %1</source>
        <translation>abgelaufen vor dem Ende von: %1</translation>
    </message>
    <message>
        <source>over today</source>
        <translation>heute abgelaufen</translation>
    </message>
    <message>
        <source>washed %1, once</source>
        <translation>gewaschen %1, einmal</translation>
    </message>
    <message>
        <source>washed %1, %2 times</source>
        <translation>gewaschen %1, %2 mal</translation>
    </message>
    <message>
        <source>looked at %1</source>
        <translation>angesehen %1</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>hergestellt %1</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
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
        <source>held %1</source>
        <translation>gehalten: %1</translation>
    </message>
    <message>
        <source>Leak test, %1</source>
        <translation>Dichtprüfung, %1</translation>
    </message>
    <message>
        <source>none since its pieces changed last</source>
        <translation>keine seit der letzten Änderung</translation>
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
        <source>Do</source>
        <translation>Tun</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Stück</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Takes</source>
        <translation>Braucht</translation>
    </message>
    <message>
        <source>In since</source>
        <translation>Drin seit</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Service card</source>
        <translation>Wartungskarte</translation>
    </message>
    <message>
        <source>Inspection sheet</source>
        <translation>Prüfblatt</translation>
    </message>
    <message>
        <source>Car</source>
        <translation>Auto</translation>
    </message>
    <message>
        <source>Ran</source>
        <translation>Lief</translation>
    </message>
    <message>
        <source>Signed:</source>
        <translation>Unterschrieben:</translation>
    </message>
    <message>
        <source>, out of the box of %1</source>
        <translation>, aus dem Karton von %1</translation>
    </message>
    <message>
        <source>promised by %1</source>
        <translation>zugesagt bis %1</translation>
    </message>
    <message>
        <source>Claim</source>
        <translation>Reklamation</translation>
    </message>
    <message>
        <source>Claims</source>
        <translation>Reklamationen</translation>
    </message>
    <message>
        <source>Our order</source>
        <translation>Bestellung</translation>
    </message>
    <message>
        <source>Owed</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>Please send what is owed, or say by which day it comes, or what you credit for it. Please name the number of the claim.</source>
        <translation>Bitte senden Sie, was noch fehlt, oder teilen Sie mit, bis wann es kommt oder was Sie dafür gutschreiben. Bitte nennen Sie die Nummer der Reklamation.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Load list of the trailer</source>
        <translation>Ladeliste des Anhängers</translation>
    </message>
    <message>
        <source>Drawer</source>
        <translation>Schublade</translation>
    </message>
    <message>
        <source>Bring</source>
        <translation>Bringen</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>to buy</source>
        <translation>zu kaufen</translation>
    </message>
    <message>
        <source>every drawer holds what it is to hold</source>
        <translation>in jeder Schublade liegt, was hineingehört</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Zu kaufen</translation>
    </message>
    <message>
        <source>To take out of the trailer</source>
        <translation>Aus dem Anhänger zu nehmen</translation>
    </message>
    <message>
        <source>Into</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>nothing lies where it does not belong</source>
        <translation>nichts liegt, wo es nicht hingehört</translation>
    </message>
    <message>
        <source>To take out</source>
        <translation>Herauszunehmen</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 mit %2</translation>
    </message>
</context>
</TS>
