<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AddRow</name>
    <message>
        <source>+ station</source>
        <translation>+ Station</translation>
    </message>
    <message>
        <source>+ run</source>
        <translation>+ Strang</translation>
    </message>
    <message>
        <source>+ question</source>
        <translation>+ Frage</translation>
    </message>
    <message>
        <source>+ module</source>
        <translation>+ Modul</translation>
    </message>
    <message>
        <source>+ extra</source>
        <translation>+ Beigabe</translation>
    </message>
</context>
<context>
    <name>FaultList</name>
    <message>
        <source>what is wrong with the text</source>
        <translation>was am Text nicht stimmt</translation>
    </message>
</context>
<context>
    <name>FieldLine</name>
    <message>
        <source>%1; Down shows what could stand here</source>
        <translation>%1; Pfeil ab zeigt, was hier stehen kann</translation>
    </message>
    <message>
        <source>what could stand in %1</source>
        <translation>was bei %1 stehen kann</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>FieldList</name>
    <message>
        <source>fields of the paragraph</source>
        <translation>Felder des Absatzes</translation>
    </message>
</context>
<context>
    <name>OfferList</name>
    <message>
        <source>what could stand here</source>
        <translation>was hier stehen kann</translation>
    </message>
    <message>
        <source>Nothing to choose from; type it.</source>
        <translation>Nichts zur Auswahl; eintippen.</translation>
    </message>
</context>
<context>
    <name>ParagraphHead</name>
    <message>
        <source>move it up</source>
        <translation>nach oben</translation>
    </message>
    <message>
        <source>move it down</source>
        <translation>nach unten</translation>
    </message>
    <message>
        <source>Take it out</source>
        <translation>Herausnehmen</translation>
    </message>
</context>
<context>
    <name>ParagraphList</name>
    <message>
        <source>paragraphs of the template</source>
        <translation>Absätze der Vorlage</translation>
    </message>
    <message>
        <source>%1, %2, something is wrong</source>
        <translation>%1, %2, etwas stimmt nicht</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>StillOpen</name>
    <message numerus="yes">
        <source>… and %n more</source>
        <translation>
            <numerusform>… und noch %n</numerusform>
            <numerusform>… und noch %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TemplateChooser</name>
    <message>
        <source>Templates</source>
        <translation>Vorlagen</translation>
    </message>
    <message>
        <source>The form of a fluid system: its stations, its lines, and what is asked of a builder.</source>
        <translation>Die Form eines Leitungssystems: seine Stationen, seine Leitungen und was beim Aufbau gefragt wird.</translation>
    </message>
    <message>
        <source>templates</source>
        <translation>Vorlagen</translation>
    </message>
    <message>
        <source>This shop has no template yet. Begin a new one: a tank, a line and who is fed.</source>
        <translation>Diese Werkstatt hat noch keine Vorlage. Eine neue beginnen: ein Tank, eine Leitung und wer versorgt wird.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Begin a copy of it</source>
        <translation>Eine Kopie davon beginnen</translation>
    </message>
    <message>
        <source>Begin a new one</source>
        <translation>Eine neue beginnen</translation>
    </message>
    <message>
        <source>Throw away what was typed</source>
        <translation>Getipptes wegwerfen</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
</context>
<context>
    <name>TemplateEditor</name>
    <message>
        <source>%1: no %2 in the catalogue has all that is asked of it.</source>
        <translation>%1: kein Teil der Art „%2“ im Katalog hat alles, was verlangt ist.</translation>
    </message>
    <message>
        <source>%1: no line leads there.</source>
        <translation>%1: keine Leitung führt dorthin.</translation>
    </message>
    <message>
        <source>Line, %1 to %2: the catalogue has no %3.</source>
        <translation>Leitung, %1 bis %2: im Katalog fehlt %3.</translation>
    </message>
    <message>
        <source>%1: nothing in the catalogue closes it.</source>
        <translation>%1: nichts im Katalog schließt die Verbindung.</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
</context>
<context>
    <name>TemplateForm</name>
    <message>
        <source>answers</source>
        <translation>Angaben</translation>
    </message>
    <message>
        <source>tightest bend, its radius</source>
        <translation>engster Bogen, Radius</translation>
    </message>
    <message>
        <source>fixed to the car</source>
        <translation>fest am Auto</translation>
    </message>
    <message>
        <source>its choices</source>
        <translation>zur Auswahl</translation>
    </message>
    <message>
        <source>a clamp in so many mm</source>
        <translation>eine Schelle je so viele mm</translation>
    </message>
    <message>
        <source>hose series</source>
        <translation>Schlauch-Baureihe</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>wie viele</translation>
    </message>
    <message>
        <source>dash size</source>
        <translation>Dash-Größe</translation>
    </message>
    <message>
        <source>answer until another is given</source>
        <translation>Angabe, bis es eine andere gibt</translation>
    </message>
    <message>
        <source>delivers to</source>
        <translation>versorgt</translation>
    </message>
    <message>
        <source>measured as</source>
        <translation>gemessen als</translation>
    </message>
    <message>
        <source>angle of its last end</source>
        <translation>Winkel am Ende</translation>
    </message>
    <message>
        <source>fed by</source>
        <translation>gespeist durch</translation>
    </message>
    <message>
        <source>filters that it needs</source>
        <translation>verlangte Filter</translation>
    </message>
    <message>
        <source>flow at least</source>
        <translation>Durchfluss mindestens</translation>
    </message>
    <message>
        <source>fluid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>kind of answer</source>
        <translation>Art der Angabe</translation>
    </message>
    <message>
        <source>its end before its beginning</source>
        <translation>Ende vor dem Anfang</translation>
    </message>
    <message>
        <source>from, station.port</source>
        <translation>von, Station.Anschluss</translation>
    </message>
    <message>
        <source>short name</source>
        <translation>Kurzname</translation>
    </message>
    <message>
        <source>kind of part</source>
        <translation>Art des Teils</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>mindestens</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>lengths of its runs</source>
        <translation>Längen ihrer Stränge</translation>
    </message>
    <message>
        <source>level on the map</source>
        <translation>Ebene im Plan</translation>
    </message>
    <message>
        <source>which line</source>
        <translation>welche Leitung</translation>
    </message>
    <message>
        <source>micron</source>
        <translation>Feinheit</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>höchstens</translation>
    </message>
    <message>
        <source>what else takes pressure</source>
        <translation>was sonst Druck kostet</translation>
    </message>
    <message>
        <source>part number</source>
        <translation>Teilenummer</translation>
    </message>
    <message>
        <source>ports to close</source>
        <translation>zu schließende Anschlüsse</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>pumps that feed it</source>
        <translation>Pumpen, die sie speisen</translation>
    </message>
    <message>
        <source>each pump has its own</source>
        <translation>jede Pumpe hat ihre eigene</translation>
    </message>
    <message>
        <source>rated at least</source>
        <translation>zugelassen mindestens bis</translation>
    </message>
    <message>
        <source>its end above its beginning</source>
        <translation>Ende über dem Anfang</translation>
    </message>
    <message>
        <source>set at the regulator</source>
        <translation>am Regler eingestellt</translation>
    </message>
    <message>
        <source>shared by so many pumps</source>
        <translation>auf so viele Pumpen verteilt</translation>
    </message>
    <message>
        <source>spare elements</source>
        <translation>Ersatzelemente</translation>
    </message>
    <message>
        <source>angle of its first end</source>
        <translation>Winkel am Anfang</translation>
    </message>
    <message>
        <source>system</source>
        <translation>System</translation>
    </message>
    <message>
        <source>template inside</source>
        <translation>Vorlage darin</translation>
    </message>
    <message>
        <source>title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>to, station.port</source>
        <translation>nach, Station.Anschluss</translation>
    </message>
    <message>
        <source>hard tube instead</source>
        <translation>stattdessen Rohr</translation>
    </message>
    <message>
        <source>only when</source>
        <translation>nur wenn</translation>
    </message>
    <message>
        <source>what for</source>
        <translation>wofür</translation>
    </message>
    <message>
        <source>words that the part says</source>
        <translation>Wörter, die das Teil nennt</translation>
    </message>
    <message>
        <source>worked out as</source>
        <translation>errechnet als</translation>
    </message>
    <message>
        <source>pressure set or wanted</source>
        <translation>eingestellter oder verlangter Druck</translation>
    </message>
    <message>
        <source>template</source>
        <translation>Vorlage</translation>
    </message>
    <message>
        <source>questions</source>
        <translation>Fragen</translation>
    </message>
    <message>
        <source>stations</source>
        <translation>Stationen</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>Stränge</translation>
    </message>
    <message>
        <source>modules</source>
        <translation>Module</translation>
    </message>
    <message>
        <source>extras</source>
        <translation>Beigaben</translation>
    </message>
</context>
<context>
    <name>TemplateSheet</name>
    <message>
        <source>Form  F6</source>
        <translation>Formular  F6</translation>
    </message>
    <message>
        <source>Text  F6</source>
        <translation>Text  F6</translation>
    </message>
</context>
<context>
    <name>TemplateText</name>
    <message>
        <source>text of the template</source>
        <translation>Text der Vorlage</translation>
    </message>
    <message>
        <source>Tab leaves it.</source>
        <translation>Tab führt hinaus.</translation>
    </message>
</context>
<context>
    <name>TemplateTop</name>
    <message>
        <source>Write it down  Ctrl+S</source>
        <translation>Eintragen  Strg+S</translation>
    </message>
    <message>
        <source>Close  Esc</source>
        <translation>Schließen  Esc</translation>
    </message>
    <message>
        <source>What is typed is kept.</source>
        <translation>Getipptes bleibt erhalten.</translation>
    </message>
</context>
<context>
    <name>flarestock::TemplateDesk</name>
    <message>
        <source>%1 is kept as it was typed, and not written down.</source>
        <translation>%1: wie getippt aufgehoben und nicht eingetragen.</translation>
    </message>
    <message>
        <source>without a title</source>
        <translation>ohne Titel</translation>
    </message>
    <message>
        <source>a new template</source>
        <translation>eine neue Vorlage</translation>
    </message>
    <message>
        <source>typed, and not written down yet</source>
        <translation>getippt und noch nicht eingetragen</translation>
    </message>
    <message>
        <source>templates of the shop</source>
        <translation>Vorlagen der Werkstatt</translation>
    </message>
</context>
<context>
    <name>flarestock::TemplateEditor</name>
    <message>
        <source>Template</source>
        <translation>Vorlage</translation>
    </message>
    <message>
        <source>Template: %1</source>
        <translation>Vorlage: %1</translation>
    </message>
    <message>
        <source>One place is not right yet.</source>
        <translation>Eine Stelle stimmt noch nicht.</translation>
    </message>
    <message>
        <source>%1 places are not right yet.</source>
        <translation>%1 Stellen stimmen noch nicht.</translation>
    </message>
    <message>
        <source>As it stands in the shop.</source>
        <translation>Wie in der Werkstatt eingetragen.</translation>
    </message>
    <message>
        <source>Being drawn.</source>
        <translation>Wird gezeichnet.</translation>
    </message>
    <message>
        <source>Not written down yet.</source>
        <translation>Noch nicht eingetragen.</translation>
    </message>
    <message>
        <source>The text cannot be read just now, so the form shows it as it was before.</source>
        <translation>Der Text ist gerade nicht lesbar; das Formular zeigt ihn, wie er vorher war.</translation>
    </message>
    <message>
        <source>The map shows the last text that could be drawn.</source>
        <translation>Der Plan zeigt den letzten Text, der sich zeichnen ließ.</translation>
    </message>
    <message>
        <source>Nothing could be drawn of this text yet.</source>
        <translation>Von diesem Text ließ sich noch nichts zeichnen.</translation>
    </message>
    <message>
        <source>It cannot be written down yet.</source>
        <translation>Noch nicht einzutragen.</translation>
    </message>
    <message>
        <source>It cannot be written down yet. %1</source>
        <translation>Noch nicht einzutragen. %1</translation>
    </message>
    <message>
        <source>Template %1 written.</source>
        <translation>Vorlage %1 eingetragen.</translation>
    </message>
    <message>
        <source>Template %1 changed.</source>
        <translation>Vorlage %1 geändert.</translation>
    </message>
</context>
<context>
    <name>flarestock::TemplateForm</name>
    <message>
        <source>without a name</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>as it answers itself</source>
        <translation>wie sie selbst angibt</translation>
    </message>
    <message>
        <source>%1, when</source>
        <translation>%1, wenn</translation>
    </message>
    <message>
        <source>%1, else</source>
        <translation>%1, sonst</translation>
    </message>
    <message>
        <source>%1, then</source>
        <translation>%1, dann</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>by answers</source>
        <translation>nach Angaben</translation>
    </message>
    <message>
        <source>one more</source>
        <translation>noch eine</translation>
    </message>
    <message>
        <source>without it</source>
        <translation>ohne diese</translation>
    </message>
</context>
</TS>
