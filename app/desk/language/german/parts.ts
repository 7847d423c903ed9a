<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>CardDrawing</name>
    <message>
        <source>drawing of %1, %2</source>
        <translation>Zeichnung von %1, %2</translation>
    </message>
    <message>
        <source>drawn from the words</source>
        <translation>nach den Worten gezeichnet</translation>
    </message>
</context>
<context>
    <name>CardFacts</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innen</translation>
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
        <source>%1 °F</source>
        <translation>%1 °F</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>series</source>
        <translation>Baureihe</translation>
    </message>
    <message>
        <source>bends to</source>
        <translation>Biegeradius</translation>
    </message>
    <message>
        <source>inside lining</source>
        <translation>Innenschicht</translation>
    </message>
    <message>
        <source>conducts</source>
        <translation>leitfähig</translation>
    </message>
    <message>
        <source>under a clamp</source>
        <translation>unter Schelle</translation>
    </message>
    <message>
        <source>for hose series</source>
        <translation>für Schlauch-Baureihe</translation>
    </message>
    <message>
        <source>for hose</source>
        <translation>für Schlauch</translation>
    </message>
    <message>
        <source>bend</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>takes up of the length</source>
        <translation>Abzug von der Länge</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>holds back</source>
        <translation>Feinheit</translation>
    </message>
    <message>
        <source>made of</source>
        <translation>Filtermaterial</translation>
    </message>
    <message>
        <source>opened in place</source>
        <translation>im Einbau zu öffnen</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>loses when clean</source>
        <translation>Druckverlust, sauber</translation>
    </message>
    <message>
        <source>bypass opens at</source>
        <translation>Bypass öffnet bei</translation>
    </message>
    <message>
        <source>can be washed</source>
        <translation>waschbar</translation>
    </message>
    <message>
        <source>%1, %2 V</source>
        <translation>%1, %2 V</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>draws</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>%1 A</source>
        <translation>%1 A</translation>
    </message>
    <message>
        <source>electric</source>
        <translation>elektrisch</translation>
    </message>
    <message>
        <source>can be opened</source>
        <translation>zu öffnen</translation>
    </message>
    <message>
        <source>sits</source>
        <translation>Einbauort</translation>
    </message>
    <message>
        <source>set from, to</source>
        <translation>Einstellbereich</translation>
    </message>
    <message>
        <source>surplus</source>
        <translation>Überschuss</translation>
    </message>
    <message>
        <source>goes back</source>
        <translation>fließt zurück</translation>
    </message>
    <message>
        <source>is held back</source>
        <translation>wird zurückgehalten</translation>
    </message>
    <message>
        <source>takes wide open</source>
        <translation>Druckverlust, ganz offen</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>Ring</translation>
    </message>
    <message>
        <source>washer</source>
        <translation>Scheibe</translation>
    </message>
    <message>
        <source>crush</source>
        <translation>Quetschdichtring</translation>
    </message>
    <message>
        <source>bonded</source>
        <translation>Gummi-Metall</translation>
    </message>
    <message>
        <source>goes over</source>
        <translation>passt über</translation>
    </message>
    <message>
        <source>wants</source>
        <translation>braucht</translation>
    </message>
    <message>
        <source>passes dirt up to</source>
        <translation>lässt Schmutz durch bis</translation>
    </message>
    <message>
        <source>%1 µm</source>
        <translation>%1 µm</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>strainer inside</source>
        <translation>Sieb innen</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>1/0 AWG</source>
        <translation>1/0 AWG</translation>
    </message>
    <message>
        <source>%1 AWG</source>
        <translation>%1 AWG</translation>
    </message>
    <message>
        <source>rated for</source>
        <translation>ausgelegt für</translation>
    </message>
    <message>
        <source>%1 in radius</source>
        <translation>%1 in</translation>
    </message>
    <message>
        <source>%1 mm radius</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>body</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>seal</source>
        <translation>Dichtung</translation>
    </message>
    <message>
        <source>rated</source>
        <translation>zulässig</translation>
    </message>
    <message>
        <source>not colder than</source>
        <translation>nicht kälter als</translation>
    </message>
    <message>
        <source>not hotter than</source>
        <translation>nicht heißer als</translation>
    </message>
    <message>
        <source>goes with</source>
        <translation>geeignet für</translation>
    </message>
    <message>
        <source>further words</source>
        <translation>weitere Wörter</translation>
    </message>
</context>
<context>
    <name>CardField</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>CardFields</name>
    <message>
        <source>part number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>description</source>
        <translation>Beschreibung</translation>
    </message>
    <message>
        <source>a few words, as on its bin</source>
        <translation>wenige Wörter, wie auf dem Fach</translation>
    </message>
    <message>
        <source>counted in</source>
        <translation>gezählt in</translation>
    </message>
    <message>
        <source>body</source>
        <translation>Werkstoff</translation>
    </message>
    <message>
        <source>seal</source>
        <translation>Dichtung</translation>
    </message>
    <message>
        <source>goes with</source>
        <translation>geeignet für</translation>
    </message>
    <message>
        <source>further words</source>
        <translation>weitere Wörter</translation>
    </message>
    <message>
        <source>rated pressure</source>
        <translation>zulässiger Druck</translation>
    </message>
    <message>
        <source>not colder than</source>
        <translation>nicht kälter als</translation>
    </message>
    <message>
        <source>not hotter than</source>
        <translation>nicht heißer als</translation>
    </message>
    <message>
        <source>in the box besides it</source>
        <translation>außerdem im Karton</translation>
    </message>
    <message>
        <source>fitting it uses up</source>
        <translation>beim Einbau verbraucht</translation>
    </message>
    <message>
        <source>can be replaced by</source>
        <translation>ersetzbar durch</translation>
    </message>
    <message>
        <source>series</source>
        <translation>Baureihe</translation>
    </message>
    <message>
        <source>hose size</source>
        <translation>Schlauchgröße</translation>
    </message>
    <message>
        <source>inside</source>
        <translation>innen</translation>
    </message>
    <message>
        <source>bends to</source>
        <translation>Biegeradius</translation>
    </message>
    <message>
        <source>inside lining</source>
        <translation>Innenschicht</translation>
    </message>
    <message>
        <source>conducts</source>
        <translation>leitfähig</translation>
    </message>
    <message>
        <source>under a clamp</source>
        <translation>unter Schelle</translation>
    </message>
    <message>
        <source>for hose series</source>
        <translation>für Schlauch-Baureihe</translation>
    </message>
    <message>
        <source>bend, degrees</source>
        <translation>Winkel, Grad</translation>
    </message>
    <message>
        <source>takes up of the length</source>
        <translation>Abzug von der Länge</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>holds back, µm</source>
        <translation>Feinheit, µm</translation>
    </message>
    <message>
        <source>micron basis</source>
        <translation>Art der Feinheit</translation>
    </message>
    <message>
        <source>beta</source>
        <translation>Beta</translation>
    </message>
    <message>
        <source>made of</source>
        <translation>Filtermaterial</translation>
    </message>
    <message>
        <source>its element</source>
        <translation>Element dazu</translation>
    </message>
    <message>
        <source>can be opened</source>
        <translation>zu öffnen</translation>
    </message>
    <message>
        <source>flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>loses when clean</source>
        <translation>Druckverlust, sauber</translation>
    </message>
    <message>
        <source>can be washed</source>
        <translation>waschbar</translation>
    </message>
    <message>
        <source>pump curve</source>
        <translation>Pumpenkennlinie</translation>
    </message>
    <message>
        <source>amperes</source>
        <translation>Ampere</translation>
    </message>
    <message>
        <source>electric</source>
        <translation>elektrisch</translation>
    </message>
    <message>
        <source>sits</source>
        <translation>Einbauort</translation>
    </message>
    <message>
        <source>pressure from</source>
        <translation>Druck von</translation>
    </message>
    <message>
        <source>pressure to</source>
        <translation>Druck bis</translation>
    </message>
    <message>
        <source>ring</source>
        <translation>Ring</translation>
    </message>
    <message>
        <source>crush washer</source>
        <translation>Quetschdichtring</translation>
    </message>
    <message>
        <source>goes over</source>
        <translation>passt über</translation>
    </message>
    <message>
        <source>passes dirt up to, µm</source>
        <translation>lässt Schmutz durch bis, µm</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>strainer inside</source>
        <translation>Sieb innen</translation>
    </message>
    <message>
        <source>gauge, AWG</source>
        <translation>Querschnitt, AWG</translation>
    </message>
    <message>
        <source>takes wide open</source>
        <translation>Druckverlust, ganz offen</translation>
    </message>
    <message>
        <source>surplus goes back</source>
        <translation>Überschuss fließt zurück</translation>
    </message>
    <message>
        <source>bypass opens at</source>
        <translation>Bypass öffnet bei</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>ports</source>
        <translation>Anschlüsse</translation>
    </message>
</context>
<context>
    <name>CardHead</name>
    <message>
        <source>Change this card</source>
        <translation>Karte ändern</translation>
    </message>
    <message>
        <source>New offer</source>
        <translation>Neues Angebot</translation>
    </message>
</context>
<context>
    <name>CardLinks</name>
    <message>
        <source>%1 ×</source>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>where it is used</source>
        <translation>wo es verwendet wird</translation>
    </message>
    <message>
        <source>Working out builds and templates …</source>
        <translation>Aufbauten und Vorlagen werden errechnet …</translation>
    </message>
    <message>
        <source>no planned build and no template takes it</source>
        <translation>kein geplanter Aufbau und keine Vorlage nimmt es</translation>
    </message>
    <message>
        <source>build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>template</source>
        <translation>Vorlage</translation>
    </message>
    <message>
        <source>build, by %1</source>
        <translation>Aufbau, bis %1</translation>
    </message>
    <message>
        <source>in the box besides it</source>
        <translation>außerdem im Karton</translation>
    </message>
    <message>
        <source>fitting it uses up</source>
        <translation>beim Einbau verbraucht</translation>
    </message>
    <message>
        <source>its element</source>
        <translation>Element dazu</translation>
    </message>
    <message>
        <source>element of</source>
        <translation>Element von</translation>
    </message>
    <message>
        <source>lies in the box of</source>
        <translation>liegt im Karton von</translation>
    </message>
    <message>
        <source>can be replaced by</source>
        <translation>ersetzbar durch</translation>
    </message>
    <message>
        <source>can replace</source>
        <translation>kann ersetzen</translation>
    </message>
</context>
<context>
    <name>CardList</name>
    <message>
        <source>card index, %1 cards</source>
        <translation>Kartei, Karten: %1</translation>
    </message>
</context>
<context>
    <name>CardPorts</name>
    <message>
        <source>Ports, in words</source>
        <translation>Anschlüsse, in Worten</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
</context>
<context>
    <name>CardSheet</name>
    <message>
        <source>fields of the card</source>
        <translation>Felder der Karte</translation>
    </message>
    <message>
        <source>ports, and what they meet</source>
        <translation>Anschlüsse und worauf sie treffen</translation>
    </message>
    <message>
        <source>Type a port, ORB -6 female for example. What it meets stands here at once.</source>
        <translation>Einen Anschluss tippen, zum Beispiel ORB -6 female. Worauf er trifft, steht sofort hier.</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
    <message>
        <source>Filled in as it was when the desk ended.</source>
        <translation>Ausgefüllt, wie es war, als das Programm endete.</translation>
    </message>
</context>
<context>
    <name>CardTab</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>CardView</name>
    <message>
        <source>card of %1, %2</source>
        <translation>Karte von %1, %2</translation>
    </message>
    <message>
        <source>No card is in hand. Choose one at the left, or scan a part.</source>
        <translation>Keine Karte ist in der Hand. Links eine wählen oder ein Teil scannen.</translation>
    </message>
</context>
<context>
    <name>ChangedLine</name>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1  ·  left out</source>
        <translation>%1  ·  ausgelassen</translation>
    </message>
</context>
<context>
    <name>ChangedList</name>
    <message>
        <source>What changes of what the shop has. Space leaves a row out.</source>
        <translation>Was sich in der Werkstatt ändert. Die Leertaste lässt eine Zeile aus.</translation>
    </message>
    <message>
        <source>what changes, %1</source>
        <translation>was sich ändert, %1</translation>
    </message>
</context>
<context>
    <name>ImportQuestion</name>
    <message>
        <source>Question %1 of %2  ·  %3</source>
        <translation>Frage %1 von %2  ·  %3</translation>
    </message>
    <message>
        <source>the row as it stands in the file</source>
        <translation>die Zeile, wie sie in der Datei steht</translation>
    </message>
    <message>
        <source>! %1: %2</source>
        <translation>! %1: %2</translation>
    </message>
    <message>
        <source>Understood:</source>
        <translation>Verstanden:</translation>
    </message>
    <message>
        <source>Take it so</source>
        <translation>So übernehmen</translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation>Weglassen</translation>
    </message>
</context>
<context>
    <name>ImportSheet</name>
    <message>
        <source>Import a list</source>
        <translation>Liste einlesen</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>%1 einlesen</translation>
    </message>
    <message>
        <source>Parts, suppliers or offers as a CSV file. An empty cell leaves what the card says.</source>
        <translation>Teile, Lieferanten oder Angebote als CSV-Datei. Eine leere Zelle lässt stehen, was die Karte sagt.</translation>
    </message>
    <message>
        <source>read so far</source>
        <translation>bisher gelesen</translation>
    </message>
    <message>
        <source>Nothing is in the shop yet. All of it is written as one step, which can be taken back.</source>
        <translation>Noch ist nichts in der Werkstatt. Alles wird als ein Schritt eingetragen, der sich zurücknehmen lässt.</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Datei wählen</translation>
    </message>
    <message>
        <source>Stop reading</source>
        <translation>Lesen abbrechen</translation>
    </message>
    <message>
        <source>The question before</source>
        <translation>Frage davor</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
    <message>
        <source>Choose another file</source>
        <translation>Andere Datei wählen</translation>
    </message>
</context>
<context>
    <name>LineLeaf</name>
    <message>
        <source>flow</source>
        <translation>Durchfluss</translation>
    </message>
    <message>
        <source>67 gph</source>
        <translation>67 gph</translation>
    </message>
    <message>
        <source>255 L/h</source>
        <translation>255 L/h</translation>
    </message>
    <message>
        <source>size or bore</source>
        <translation>Größe oder Innenmaß</translation>
    </message>
    <message>
        <source>-6 or 0.34 in</source>
        <translation>-6 oder 0.34 in</translation>
    </message>
    <message>
        <source>-6 or 8.7 mm</source>
        <translation>-6 oder 8,7 mm</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>16 ft</source>
        <translation>16 ft</translation>
    </message>
    <message>
        <source>5 m</source>
        <translation>5 m</translation>
    </message>
    <message>
        <source>fluid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>20 °C</source>
        <translation>20 °C</translation>
    </message>
    <message>
        <source>Write down flow, size and length, each with its unit.</source>
        <translation>Durchfluss, Größe und Länge angeben, jeweils mit Einheit.</translation>
    </message>
</context>
<context>
    <name>MeetingLine</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>MeetingList</name>
    <message>
        <source>%1 meets …</source>
        <translation>%1 trifft auf …</translation>
    </message>
    <message>
        <source>No card has a port that goes on it.</source>
        <translation>Keine Karte hat einen Anschluss, der darauf passt.</translation>
    </message>
</context>
<context>
    <name>PartsArea</name>
    <message>
        <source>Find a card: -8 orb, 10 micron, regulator  (Ctrl+F)</source>
        <translation>Karte: -8 orb, 10 µm  (Strg+F)</translation>
    </message>
    <message>
        <source>Find a card</source>
        <translation>Karte suchen</translation>
    </message>
</context>
<context>
    <name>PartsScreen</name>
    <message>
        <source>show all cards again</source>
        <translation>wieder alle Karten zeigen</translation>
    </message>
</context>
<context>
    <name>PartsTitle</name>
    <message>
        <source>Suppliers</source>
        <translation>Lieferanten</translation>
    </message>
    <message>
        <source>Import a list</source>
        <translation>Liste einlesen</translation>
    </message>
    <message>
        <source>New card  Ctrl+N</source>
        <translation>Neue Karte  Strg+N</translation>
    </message>
    <message>
        <source>Templates</source>
        <translation>Vorlagen</translation>
    </message>
    <message>
        <source>Ctrl+T</source>
        <translation>Strg+T</translation>
    </message>
    <message>
        <source>Look up</source>
        <translation>Nachschlagen</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Strg+L</translation>
    </message>
</context>
<context>
    <name>PortField</name>
    <message>
        <source>name of port %1</source>
        <translation>Name von Anschluss %1</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>port %1 in words</source>
        <translation>Anschluss %1 in Worten</translation>
    </message>
    <message>
        <source>ORB -6 female</source>
        <translation>ORB -6 female</translation>
    </message>
    <message>
        <source>what flows at port %1</source>
        <translation>was an Anschluss %1 fließt</translation>
    </message>
    <message>
        <source>leave port %1 out</source>
        <translation>Anschluss %1 weglassen</translation>
    </message>
</context>
<context>
    <name>PortFieldList</name>
    <message>
        <source>Ports, in words</source>
        <translation>Anschlüsse, in Worten</translation>
    </message>
    <message>
        <source>+ port</source>
        <translation>+ Anschluss</translation>
    </message>
    <message>
        <source>add a port</source>
        <translation>Anschluss hinzufügen</translation>
    </message>
</context>
<context>
    <name>PortFields</name>
    <message>
        <source>either way</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>in</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>out</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>Manometer</translation>
    </message>
    <message>
        <source>return</source>
        <translation>Rücklauf</translation>
    </message>
    <message>
        <source>vent</source>
        <translation>Entlüftung</translation>
    </message>
    <message>
        <source>reads as %1</source>
        <translation>gelesen als %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
</context>
<context>
    <name>PortMeetings</name>
    <message>
        <source>with %1</source>
        <translation>mit %1</translation>
    </message>
    <message>
        <source>1 card</source>
        <translation>1 Karte</translation>
    </message>
    <message>
        <source>%1 cards</source>
        <translation>%1 Karten</translation>
    </message>
    <message>
        <source>%1, none here</source>
        <translation>%1, keine hier</translation>
    </message>
    <message>
        <source>%1, %2 here</source>
        <translation>%1, %2 hier</translation>
    </message>
    <message>
        <source>no card fits it</source>
        <translation>keine Karte passt dazu</translation>
    </message>
    <message>
        <source>1 card fits it</source>
        <translation>1 Karte passt dazu</translation>
    </message>
    <message>
        <source>%1 cards fit it</source>
        <translation>%1 Karten passen dazu</translation>
    </message>
    <message>
        <source>%1, none of them here</source>
        <translation>%1, keine davon hier</translation>
    </message>
    <message>
        <source>%1, %2 of them here</source>
        <translation>%1, davon %2 hier</translation>
    </message>
</context>
<context>
    <name>PortTag</name>
    <message>
        <source>port %1</source>
        <translation>Anschluss %1</translation>
    </message>
    <message>
        <source>hides what it meets</source>
        <translation>verbirgt, worauf er trifft</translation>
    </message>
    <message>
        <source>shows what it meets</source>
        <translation>zeigt, worauf er trifft</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
</context>
<context>
    <name>SupplierLine</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>SupplierSheet</name>
    <message>
        <source>Suppliers</source>
        <translation>Lieferanten</translation>
    </message>
    <message>
        <source>Choose one to change what it asks, or write a new one.</source>
        <translation>Einen wählen, um seine Bedingungen zu ändern, oder einen neuen eintragen.</translation>
    </message>
    <message>
        <source>A new supplier</source>
        <translation>Neuer Lieferant</translation>
    </message>
    <message>
        <source>suppliers</source>
        <translation>Lieferanten</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
</context>
<context>
    <name>TablesSheet</name>
    <message>
        <source>Look up</source>
        <translation>Nachschlagen</translation>
    </message>
    <message>
        <source>What happens when two ports meet, by thread and seat.</source>
        <translation>Was geschieht, wenn zwei Anschlüsse zusammenkommen, nach Gewinde und Sitz.</translation>
    </message>
    <message>
        <source>How tight a nut or stud is turned, by each published table.</source>
        <translation>Wie fest eine Mutter oder ein Stutzen angezogen wird, nach jeder veröffentlichten Tabelle.</translation>
    </message>
    <message>
        <source>What pressure a line takes from a flow, and how fast it flows there.</source>
        <translation>Wie viel Druck eine Leitung einem Durchfluss nimmt und wie schnell es darin fließt.</translation>
    </message>
    <message>
        <source>two ports</source>
        <translation>zwei Anschlüsse</translation>
    </message>
    <message>
        <source>torque</source>
        <translation>Anzugsmoment</translation>
    </message>
    <message>
        <source>a line</source>
        <translation>eine Leitung</translation>
    </message>
    <message>
        <source>Back to the cards  Esc</source>
        <translation>Zurück zu den Karten  Esc</translation>
    </message>
</context>
<context>
    <name>TorqueLeaf</name>
    <message>
        <source>port or size</source>
        <translation>Anschluss oder Größe</translation>
    </message>
    <message>
        <source>ORB -8 male</source>
        <translation>ORB -8 male</translation>
    </message>
    <message>
        <source>of a flare nut</source>
        <translation>bei einer Bördelmutter</translation>
    </message>
    <message>
        <source>what the flare nut holds</source>
        <translation>was die Bördelmutter hält</translation>
    </message>
    <message>
        <source>both sides</source>
        <translation>beide Seiten</translation>
    </message>
    <message>
        <source>of what both sides are</source>
        <translation>woraus beide Seiten sind</translation>
    </message>
    <message>
        <source>Write a port in words, or its size alone: AN -6.</source>
        <translation>Einen Anschluss in Worten angeben oder nur seine Größe: AN -6.</translation>
    </message>
    <message>
        <source>published torques</source>
        <translation>veröffentlichte Anzugsmomente</translation>
    </message>
</context>
<context>
    <name>TradeForm</name>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>each line</source>
        <translation>jede Zeile</translation>
    </message>
    <message>
        <source>the whole order</source>
        <translation>die ganze Bestellung</translation>
    </message>
    <message>
        <source>a half goes up</source>
        <translation>halbe Cent aufrunden</translation>
    </message>
    <message>
        <source>a half goes to the even cent</source>
        <translation>halbe Cent auf gerade Cent</translation>
    </message>
    <message>
        <source>the shop gets it back</source>
        <translation>die Werkstatt bekommt sie zurück</translation>
    </message>
    <message>
        <source>the shop bears it</source>
        <translation>die Werkstatt trägt sie</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>Lieferant</translation>
    </message>
    <message>
        <source>short name</source>
        <translation>Kurzname</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>the supplier&apos;s own number</source>
        <translation>Nummer beim Lieferanten</translation>
    </message>
    <message>
        <source>prices, from a quantity on</source>
        <translation>Preise, je ab Menge</translation>
    </message>
    <message>
        <source>currency</source>
        <translation>Währung</translation>
    </message>
    <message>
        <source>in packs of</source>
        <translation>in Packungen zu</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>here in, days</source>
        <translation>Lieferzeit, Tage</translation>
    </message>
    <message>
        <source>freight, by the goods&apos; value</source>
        <translation>Fracht, nach Warenwert</translation>
    </message>
    <message>
        <source>least order, in goods</source>
        <translation>Mindestbestellung, Warenwert</translation>
    </message>
    <message>
        <source>tax, percent</source>
        <translation>Steuer, Prozent</translation>
    </message>
    <message>
        <source>tax is reckoned by</source>
        <translation>Steuer gerechnet für</translation>
    </message>
    <message>
        <source>tax is rounded so</source>
        <translation>Steuer gerundet</translation>
    </message>
    <message>
        <source>who bears the tax</source>
        <translation>wer die Steuer trägt</translation>
    </message>
    <message>
        <source>address, lines apart by ;</source>
        <translation>Adresse, Zeilen durch ; getrennt</translation>
    </message>
    <message>
        <source>packs in steps of</source>
        <translation>Packungen in Schritten von</translation>
    </message>
    <message>
        <source>empty: as the supplier has it</source>
        <translation>leer: wie beim Lieferanten</translation>
    </message>
</context>
<context>
    <name>TradeSheets</name>
    <message>
        <source>Choose the list</source>
        <translation>Liste wählen</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
</context>
<context>
    <name>TwoPortsLeaf</name>
    <message>
        <source>one port</source>
        <translation>ein Anschluss</translation>
    </message>
    <message>
        <source>AN -6 male</source>
        <translation>AN -6 male</translation>
    </message>
    <message>
        <source>the other</source>
        <translation>der andere</translation>
    </message>
    <message>
        <source>ORB -6 female + o-ring</source>
        <translation>ORB -6 female + o-ring</translation>
    </message>
    <message>
        <source>Write both ports in words: family, size, male or female. What lies between them, a ring or sealant, goes behind a plus sign.</source>
        <translation>Beide Anschlüsse in Worten angeben: Familie, Größe, male (außen) oder female (innen). Was dazwischenliegt, ein Ring oder Dichtmittel, kommt hinter ein Pluszeichen.</translation>
    </message>
</context>
<context>
    <name>flarestock::CardEditor</name>
    <message>
        <source>A new card</source>
        <translation>Neue Karte</translation>
    </message>
    <message>
        <source>Card %1</source>
        <translation>Karte %1</translation>
    </message>
    <message>
        <source>The card is whole.</source>
        <translation>Die Karte ist vollständig.</translation>
    </message>
    <message>
        <source>1 field is not right yet.</source>
        <translation>1 Feld stimmt noch nicht.</translation>
    </message>
    <message>
        <source>%1 fields are not right yet.</source>
        <translation>%1 Felder stimmen noch nicht.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>There is no such card any more.</source>
        <translation>Diese Karte gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>There is a card of that number already.</source>
        <translation>Eine Karte mit dieser Nummer gibt es schon.</translation>
    </message>
    <message>
        <source>Card %1 written.</source>
        <translation>Karte %1 geschrieben.</translation>
    </message>
    <message>
        <source>Card %1 changed.</source>
        <translation>Karte %1 geändert.</translation>
    </message>
    <message>
        <source>1 field has still to be filled in.</source>
        <translation>1 Feld ist noch auszufüllen.</translation>
    </message>
    <message>
        <source>%1 fields have still to be filled in.</source>
        <translation>%1 Felder sind noch auszufüllen.</translation>
    </message>
    <message>
        <source>Still empty: fill it in.</source>
        <translation>Noch leer: ausfüllen.</translation>
    </message>
    <message>
        <source>The card is whole. Odd, though: as a rule such a part has %1 ports, here %2.</source>
        <translation>Die Karte ist vollständig. Auffällig ist nur: In der Regel hat so ein Teil %1 Anschlüsse, hier %2.</translation>
    </message>
</context>
<context>
    <name>flarestock::LineTable</name>
    <message>
        <source>%1 ft/s</source>
        <translation>%1 ft/s</translation>
    </message>
    <message>
        <source>%1 m/s</source>
        <translation>%1 m/s</translation>
    </message>
    <message>
        <source>pressure that the line takes</source>
        <translation>Druck, den die Leitung nimmt</translation>
    </message>
    <message>
        <source>velocity</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Reynolds number</source>
        <translation>Reynolds-Zahl</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Darcy friction factor</source>
        <translation>Rohrreibungszahl nach Darcy</translation>
    </message>
    <message>
        <source>A straight, smooth line; bends, ends and height are extra.</source>
        <translation>Eine gerade, glatte Leitung; Bögen, Enden und Höhe kommen dazu.</translation>
    </message>
    <message>
        <source>Between 2040 and 4000 the flow may be either; the friction is the larger, turbulent one.</source>
        <translation>Zwischen 2040 und 4000 kann die Strömung beides sein; die Reibung ist die größere, turbulente.</translation>
    </message>
    <message>
        <source>A bore of %1 mm is assumed for -%2 (%3): measure the hose and its ends.</source>
        <translation>Für -%2 ist ein Innenmaß von %1 mm angenommen (%3): Schlauch und Enden messen.</translation>
    </message>
    <message>
        <source>%1 at %2: %3 kg/m³, %4 mPa·s (%5: %6).</source>
        <translation>%1 bei %2: %3 kg/m³, %4 mPa·s (%5: %6).</translation>
    </message>
</context>
<context>
    <name>flarestock::ListChanges</name>
    <message>
        <source>%1  ·  line %2</source>
        <translation>%1  ·  Zeile %2</translation>
    </message>
    <message>
        <source>(empty)</source>
        <translation>(leer)</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <translation>%1: %2 → %3</translation>
    </message>
</context>
<context>
    <name>flarestock::ListImport</name>
    <message>
        <source>(empty)</source>
        <translation>(leer)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>Zeile %1</translation>
    </message>
    <message>
        <source>Nothing can be made of it. It stays out until it is put right in the file.</source>
        <translation>Daraus ist nichts zu machen. Es bleibt weg, bis es in der Datei berichtigt ist.</translation>
    </message>
    <message>
        <source>without %1</source>
        <translation>ohne %1</translation>
    </message>
    <message>
        <source>%1 read as %2</source>
        <translation>%1 gelesen als %2</translation>
    </message>
    <message>
        <source>taken in place of the row before</source>
        <translation>übernommen statt der Zeile davor</translation>
    </message>
    <message>
        <source>Take in 1 row</source>
        <translation>1 Zeile übernehmen</translation>
    </message>
    <message>
        <source>Take in %1 rows</source>
        <translation>%1 Zeilen übernehmen</translation>
    </message>
    <message>
        <source>Stopped. Nothing was taken in.</source>
        <translation>Abgebrochen. Nichts wurde übernommen.</translation>
    </message>
    <message>
        <source>There is nothing to take in.</source>
        <translation>Es gibt nichts zu übernehmen.</translation>
    </message>
    <message>
        <source>%1 rows of %2 taken in.</source>
        <translation>Zeilen aus %2 übernommen: %1.</translation>
    </message>
    <message>
        <source>taken as it stands</source>
        <translation>wird übernommen, wie es dasteht</translation>
    </message>
    <message>
        <source>as it stands</source>
        <translation>wie sie dasteht</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>without currency: then the shop&apos;s own counts</source>
        <translation>ohne currency: Dann gilt die Währung der Werkstatt</translation>
    </message>
    <message>
        <source>without pack: then the price is for one piece</source>
        <translation>ohne pack: Dann gilt der Preis für ein Stück</translation>
    </message>
    <message>
        <source>without ports: then nothing fits it</source>
        <translation>ohne ports: Dann passt nichts daran</translation>
    </message>
    <message>
        <source>%1: %2 as the shop has them, %3 new, %4 changed, %5 to be asked about</source>
        <translation>%1: %2 wie in der Werkstatt, %3 neu, %4 geändert, %5 mit einer Frage</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 Zeile</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 Zeilen</translation>
    </message>
    <message>
        <source>1 row of %1 taken in.</source>
        <translation>1 Zeile aus %1 übernommen.</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>%1 einlesen</translation>
    </message>
    <message>
        <source>Of the rows asked about: taken in %1, left out %2.</source>
        <translation>Von den Zeilen, nach denen gefragt wurde: übernommen %1, weggelassen %2.</translation>
    </message>
</context>
<context>
    <name>flarestock::PartsDesk</name>
    <message>
        <source>where it lies</source>
        <translation>wo es liegt</translation>
    </message>
    <message>
        <source>offer of %1</source>
        <translation>Angebot von %1</translation>
    </message>
    <message>
        <source>%1, no. %2</source>
        <translation>%1, Nr. %2</translation>
    </message>
    <message>
        <source>change the %1</source>
        <translation>%1 ändern</translation>
    </message>
    <message>
        <source>Figures of this size: %1</source>
        <translation>Quelle der Maße: %1</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Parts: %1</source>
        <translation>Teile: %1</translation>
    </message>
    <message>
        <source>%1 of %2 cards</source>
        <translation>%1 von %2 Karten</translation>
    </message>
    <message>
        <source>card %1 of %2  ·  %3 in the index</source>
        <translation>Karte %1 von %2  ·  %3 in der Kartei</translation>
    </message>
    <message>
        <source>Nothing is known here of this shop&apos;s parts.</source>
        <translation>Über die Teile dieser Werkstatt ist hier nichts bekannt.</translation>
    </message>
    <message>
        <source>Looking through the cards …</source>
        <translation>Die Karten werden durchgesehen …</translation>
    </message>
    <message>
        <source>There is no card yet. Write the first one, or import a supplier&apos;s list.</source>
        <translation>Noch gibt es keine Karte. Die erste schreiben oder die Liste eines Lieferanten einlesen.</translation>
    </message>
    <message>
        <source>No card is like that. Clear what you asked for.</source>
        <translation>Keine Karte ist so. Die Suche leeren.</translation>
    </message>
</context>
<context>
    <name>flarestock::TorqueTable</name>
    <message>
        <source>nut on %1</source>
        <translation>Mutter auf %1</translation>
    </message>
    <message>
        <source>all of steel</source>
        <translation>alles aus Stahl</translation>
    </message>
    <message>
        <source>not all of steel</source>
        <translation>nicht alles aus Stahl</translation>
    </message>
    <message>
        <source>Published figures, not the maker&apos;s of your part: those come first, and the rulebook of the series. Have fuel and brake work checked by someone qualified.</source>
        <translation>Veröffentlichte Werte, nicht die des Herstellers zum Teil: Dessen Werte gehen vor, ebenso das Reglement der Serie. Arbeiten an Kraftstoff und Bremse von einer Fachkraft prüfen lassen.</translation>
    </message>
    <message>
        <source>N·m</source>
        <translation>N·m</translation>
    </message>
    <message>
        <source>lbf·ft</source>
        <translation>lbf·ft</translation>
    </message>
    <message>
        <source>material: %1</source>
        <translation>Werkstoff: %1</translation>
    </message>
    <message>
        <source>half of it, as it says where not all is of steel</source>
        <translation>davon die Hälfte, wie dort steht, wo nicht alles aus Stahl ist</translation>
    </message>
    <message>
        <source>%1: no table that is known here publishes a torque for it.</source>
        <translation>%1: keine Tabelle, die hier bekannt ist, nennt dafür ein Anzugsmoment.</translation>
    </message>
    <message>
        <source>The sources differ by a factor of %1: keep to the part maker&apos;s figure, or to one source, and write down which.</source>
        <translation>Die Quellen weichen um den Faktor %1 voneinander ab: beim Wert des Herstellers oder bei einer Quelle bleiben und aufschreiben, bei welcher.</translation>
    </message>
</context>
<context>
    <name>flarestock::TradeForm</name>
    <message>
        <source>%1, here in %2 days</source>
        <translation>%1, Lieferzeit: %2 Tg.</translation>
    </message>
    <message>
        <source>That is no longer in the shop.</source>
        <translation>Das ist nicht mehr in der Werkstatt.</translation>
    </message>
    <message>
        <source>%1: %2. %3</source>
        <translation>%1: %2. %3</translation>
    </message>
    <message>
        <source>Supplier %1 written down.</source>
        <translation>Lieferant %1 eingetragen.</translation>
    </message>
    <message>
        <source>Offer of %1 for %2 written down.</source>
        <translation>Angebot von %1 für %2 eingetragen.</translation>
    </message>
    <message>
        <source>A new supplier</source>
        <translation>Neuer Lieferant</translation>
    </message>
    <message>
        <source>A new offer for %1</source>
        <translation>Neues Angebot für %1</translation>
    </message>
    <message>
        <source>Offer of %1 for %2</source>
        <translation>Angebot von %1 für %2</translation>
    </message>
    <message>
        <source>What the order costs besides the goods, and how long it takes.</source>
        <translation>Was die Bestellung außer der Ware kostet und wie lange sie dauert.</translation>
    </message>
    <message>
        <source>Prices are for one unit of the part, from a quantity on.</source>
        <translation>Preise gelten für eine Einheit des Teils, je ab einer Menge.</translation>
    </message>
    <message>
        <source>Write it down</source>
        <translation>Eintragen</translation>
    </message>
</context>
<context>
    <name>flarestock::TwoPorts</name>
    <message>
        <source>%1 with %2: %3</source>
        <translation>%1 mit %2: %3</translation>
    </message>
    <message>
        <source>It needs: %1</source>
        <translation>Dazu gehört: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
</context>
</TS>
