<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AreaColumn</name>
    <message>
        <source>show mm, bar</source>
        <translation>mm, bar zeigen</translation>
    </message>
    <message>
        <source>show in, psi</source>
        <translation>in, psi zeigen</translation>
    </message>
    <message>
        <source>say figures of parts in mm, bar and L/h</source>
        <translation>Maße der Teile in mm, bar und L/h angeben</translation>
    </message>
    <message>
        <source>say figures of parts in inches, psi and gph</source>
        <translation>Maße der Teile in Zoll, psi und gph angeben</translation>
    </message>
    <message>
        <source>show light</source>
        <translation>hell zeigen</translation>
    </message>
    <message>
        <source>show dark</source>
        <translation>dunkel zeigen</translation>
    </message>
    <message>
        <source>light screen</source>
        <translation>heller Bildschirm</translation>
    </message>
    <message>
        <source>dark screen</source>
        <translation>dunkler Bildschirm</translation>
    </message>
</context>
<context>
    <name>AreaTag</name>
    <message>
        <source>Alt+%1</source>
        <translation>Alt+%1</translation>
    </message>
</context>
<context>
    <name>Areas</name>
    <message>
        <source>Builds</source>
        <translation>Aufbauten</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Lager</translation>
    </message>
    <message>
        <source>Buying</source>
        <translation>Einkauf</translation>
    </message>
    <message>
        <source>Trailer</source>
        <translation>Anhänger</translation>
    </message>
    <message>
        <source>Service</source>
        <translation>Wartung</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
</context>
<context>
    <name>BottomLine</name>
    <message>
        <source>at the desk: %1</source>
        <translation>am Platz: %1</translation>
    </message>
    <message>
        <source>say who is at the desk</source>
        <translation>angeben, wer hier ist</translation>
    </message>
    <message>
        <source>at the desk: %1; change</source>
        <translation>am Platz: %1; wechseln</translation>
    </message>
    <message>
        <source>Take back  Ctrl+Z</source>
        <translation>Zurücknehmen  Strg+Z</translation>
    </message>
    <message>
        <source>Take back the last step</source>
        <translation>Den letzten Schritt zurücknehmen</translation>
    </message>
    <message>
        <source>Who is at the desk?</source>
        <translation>Wer ist am Platz?</translation>
    </message>
</context>
<context>
    <name>Condition</name>
    <message>
        <source>new</source>
        <translation>neu</translation>
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
        <source>moved</source>
        <translation>umgelagert</translation>
    </message>
    <message>
        <source>received</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>counted</source>
        <translation>gezählt</translation>
    </message>
    <message>
        <source>thrown away</source>
        <translation>weggeworfen</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>abgelängt</translation>
    </message>
    <message>
        <source>taken for a build</source>
        <translation>für einen Aufbau entnommen</translation>
    </message>
    <message>
        <source>given back by a build</source>
        <translation>aus einem Aufbau zurückgegeben</translation>
    </message>
    <message>
        <source>lent</source>
        <translation>verliehen</translation>
    </message>
    <message>
        <source>looked at</source>
        <translation>angesehen</translation>
    </message>
    <message>
        <source>box opened</source>
        <translation>Karton geöffnet</translation>
    </message>
    <message>
        <source>hose made up</source>
        <translation>Schlauchleitung gefertigt</translation>
    </message>
    <message>
        <source>worth set right</source>
        <translation>Wert berichtigt</translation>
    </message>
    <message>
        <source>replaced</source>
        <translation>ersetzt</translation>
    </message>
</context>
<context>
    <name>EmptyDesk</name>
    <message>
        <source>No shop is on the desk yet</source>
        <translation>Noch ist keine Werkstatt geöffnet</translation>
    </message>
    <message>
        <source>Opening %1 …</source>
        <translation>%1 wird geöffnet …</translation>
    </message>
    <message>
        <source>A shop is one file, or a database on a server: its catalogue, its shelves and bins, its system templates and its builds.</source>
        <translation>Eine Werkstatt ist eine Datei oder eine Datenbank auf einem Server: ihr Katalog, ihre Regale und Fächer, ihre Vorlagen für Systeme und ihre Aufbauten.</translation>
    </message>
    <message>
        <source>To look round first, let the desk make the demo shop: an invented hill-climb and endurance shop with three cars. Nothing in it is real.</source>
        <translation>Um sich erst umzusehen, hier die Demo-Werkstatt anlegen lassen: eine erfundene Werkstatt für Bergrennen und Langstrecke mit drei Autos. Nichts darin ist echt.</translation>
    </message>
    <message>
        <source>Make the demo shop</source>
        <translation>Demo-Werkstatt anlegen</translation>
    </message>
    <message>
        <source>Open a shop file…</source>
        <translation>Werkstattdatei öffnen…</translation>
    </message>
    <message>
        <source>Open a shop on a server…</source>
        <translation>Werkstatt auf einem Server öffnen…</translation>
    </message>
    <message>
        <source>Make one out of a backup…</source>
        <translation>Eine aus einer Sicherung machen…</translation>
    </message>
    <message>
        <source>Make one out of a folder of texts…</source>
        <translation>Eine aus einem Ordner mit Texten machen…</translation>
    </message>
</context>
<context>
    <name>FileToRead</name>
    <message>
        <source>Read it</source>
        <translation>Einlesen</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
</context>
<context>
    <name>FileToWrite</name>
    <message>
        <source>Write it</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Papers (*.pdf)</source>
        <translation>Papiere (*.pdf)</translation>
    </message>
    <message>
        <source>Write it to a file</source>
        <translation>In eine Datei schreiben</translation>
    </message>
    <message>
        <source>There is a file of this name already. Type another one.</source>
        <translation>Eine Datei dieses Namens gibt es schon. Einen anderen eintippen.</translation>
    </message>
    <message>
        <source>name of the file</source>
        <translation>Name der Datei</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>in %1</translation>
    </message>
    <message>
        <source>Other folder …</source>
        <translation>Anderer Ordner …</translation>
    </message>
    <message>
        <source>! There is a file of this name already. “Write over it” puts the new one in its place; another name keeps both.</source>
        <translation>! Eine Datei dieses Namens gibt es schon. „Überschreiben“ setzt die neue an ihre Stelle; mit einem anderen Namen bleiben beide.</translation>
    </message>
    <message>
        <source>Write over it</source>
        <translation>Überschreiben</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
    <message>
        <source>Which folder it goes into</source>
        <translation>In welchen Ordner sie kommt</translation>
    </message>
</context>
<context>
    <name>Find</name>
    <message>
        <source>order</source>
        <translation>Bestellung</translation>
    </message>
    <message>
        <source>claim</source>
        <translation>Reklamation</translation>
    </message>
    <message>
        <source>build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>car</source>
        <translation>Auto</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>lot</source>
        <translation>Charge</translation>
    </message>
    <message>
        <source>part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>%1  ·  and %2 more</source>
        <translation>%1  ·  und %2 weitere</translation>
    </message>
    <message>
        <source>supplier</source>
        <translation>Lieferant</translation>
    </message>
</context>
<context>
    <name>FindField</name>
    <message>
        <source>Find</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>found</source>
        <translation>gefunden</translation>
    </message>
    <message>
        <source>In the whole shop</source>
        <translation>In der ganzen Werkstatt</translation>
    </message>
    <message>
        <source>found in the whole shop</source>
        <translation>in der ganzen Werkstatt gefunden</translation>
    </message>
</context>
<context>
    <name>FolderToTake</name>
    <message>
        <source>Take it</source>
        <translation>Diesen nehmen</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
</context>
<context>
    <name>FormSheet</name>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
</context>
<context>
    <name>FoundLine</name>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
</context>
<context>
    <name>KeepingSheets</name>
    <message>
        <source>Choose the backup</source>
        <translation>Die Sicherung wählen</translation>
    </message>
    <message>
        <source>Shop files (*.flarestock)</source>
        <translation>Werkstattdateien (*.flarestock)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Choose the folder of texts</source>
        <translation>Den Ordner mit Texten wählen</translation>
    </message>
    <message>
        <source>Where the new shop goes</source>
        <translation>Wohin die neue Werkstatt kommt</translation>
    </message>
    <message>
        <source>Choose a new or empty folder</source>
        <translation>Einen neuen oder leeren Ordner wählen</translation>
    </message>
    <message>
        <source>Choose the folder with the edited texts</source>
        <translation>Den Ordner mit den geänderten Texten wählen</translation>
    </message>
    <message>
        <source>new-shop.flarestock</source>
        <translation>neue-werkstatt.flarestock</translation>
    </message>
</context>
<context>
    <name>KeyFact</name>
    <message>
        <source>%1 µm</source>
        <translation>%1 µm</translation>
    </message>
    <message>
        <source>%1 nominal</source>
        <translation>%1 nominal</translation>
    </message>
    <message>
        <source>%1 absolute</source>
        <translation>%1 absolut</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>LeavingSheet</name>
    <message>
        <source>Back up before you go?</source>
        <translation>Vor dem Gehen sichern?</translation>
    </message>
    <message>
        <source>Backing up; the desk closes when the copy is proved whole.</source>
        <translation>Sicherung läuft; das Programm schließt, wenn die Sicherung als vollständig geprüft ist.</translation>
    </message>
    <message>
        <source>This shop: %1. A copy beside its file is proved whole when it is made; the last ten and one a month are kept.</source>
        <translation>Diese Werkstatt: %1. Eine Sicherung neben ihrer Datei wird beim Anlegen auf Vollständigkeit geprüft; die letzten zehn und eine je Monat bleiben.</translation>
    </message>
    <message>
        <source>Back up, then close</source>
        <translation>Sichern, dann schließen</translation>
    </message>
    <message>
        <source>Close without</source>
        <translation>Ohne Sicherung schließen</translation>
    </message>
    <message>
        <source>Stay  Esc</source>
        <translation>Bleiben  Esc</translation>
    </message>
    <message>
        <source>Close with a change that is not kept?</source>
        <translation>Schließen, obwohl eine Änderung nicht gespeichert ist?</translation>
    </message>
    <message>
        <source>! %1 It waits on this computer for 14 days, where nobody else sees it, and is kept when the desk is opened here again.</source>
        <translation>! %1 Sie wartet 14 Tage auf diesem Rechner, wo sonst niemand sie sieht, und wird gespeichert, sobald das Programm hier wieder geöffnet wird.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
<context>
    <name>LineMap</name>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
</context>
<context>
    <name>MadeShopSheet</name>
    <message>
        <source>A shop out of a backup</source>
        <translation>Eine Werkstatt aus einer Sicherung</translation>
    </message>
    <message>
        <source>A shop out of a folder of texts</source>
        <translation>Eine Werkstatt aus einem Ordner mit Texten</translation>
    </message>
    <message>
        <source>The shop is being made …</source>
        <translation>Die Werkstatt wird gemacht …</translation>
    </message>
    <message>
        <source>The backup is proved whole and stays as it is. The shop on the desk, or one that is damaged, stays where it is too.</source>
        <translation>Die Sicherung wird auf Vollständigkeit geprüft und bleibt, wie sie ist. Auch die Werkstatt, die hier offen oder die beschädigt ist, bleibt, wo sie ist.</translation>
    </message>
    <message>
        <source>The folder has shop.toml, the parts as CSV, templates and builds as TOML; what this desk writes out is one to begin by. All of it is read before the file is made.</source>
        <translation>Im Ordner liegen shop.toml, die Teile als CSV, Vorlagen und Aufbauten als TOML; wer damit anfängt, nimmt einen Ordner, der von hier hinausgeschrieben wurde. Alles wird gelesen, bevor die Datei entsteht.</translation>
    </message>
    <message>
        <source>the backup</source>
        <translation>die Sicherung</translation>
    </message>
    <message>
        <source>the folder of texts</source>
        <translation>der Ordner mit Texten</translation>
    </message>
    <message>
        <source>the new shop file, which is not there yet</source>
        <translation>die neue Werkstattdatei, die es noch nicht gibt</translation>
    </message>
    <message>
        <source>Make it and open it</source>
        <translation>Machen und öffnen</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
    <message>
        <source>Out of texts a shop begins with the stock of the first day: what was moved, ordered or serviced since is not in them. A backup has all of it.</source>
        <translation>Aus Texten beginnt eine Werkstatt mit dem Bestand des ersten Tages: Was seither bewegt, bestellt oder gewartet wurde, steht nicht darin. Eine Sicherung hat alles.</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>%1 — Flarestock</source>
        <translation>%1 — Flarestock</translation>
    </message>
    <message>
        <source>Opening %1 …</source>
        <translation>%1 wird geöffnet …</translation>
    </message>
    <message>
        <source>%1 is nothing that this sheet asks for.</source>
        <translation>%1 ist nichts, wonach dieses Blatt fragt.</translation>
    </message>
</context>
<context>
    <name>NameSheet</name>
    <message>
        <source>Who is at the desk?</source>
        <translation>Wer ist hier?</translation>
    </message>
    <message>
        <source>The name stands below what is done here from now on. It stays on this computer until somebody else takes over.</source>
        <translation>Der Name steht ab jetzt unter allem, was hier getan wird. Er bleibt auf diesem Rechner, bis jemand anderes übernimmt.</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>That is me</source>
        <translation>Das bin ich</translation>
    </message>
</context>
<context>
    <name>OfBefore</name>
    <message>
        <source>Filled in as it was when the desk ended.</source>
        <translation>Ausgefüllt, wie es war, als das Programm endete.</translation>
    </message>
</context>
<context>
    <name>PathLine</name>
    <message>
        <source>Choose…</source>
        <translation>Wählen…</translation>
    </message>
</context>
<context>
    <name>ProofSheet</name>
    <message>
        <source>Is this shop whole?</source>
        <translation>Ist diese Werkstatt vollständig?</translation>
    </message>
    <message>
        <source>Every entry of its journal is followed from the first on, and every balance is added up anew. Nothing is written by that.</source>
        <translation>Jeder Eintrag des Journals wird vom ersten an verfolgt und jeder Bestand neu zusammengezählt. Geschrieben wird dabei nichts.</translation>
    </message>
    <message>
        <source>The shop is being proved …</source>
        <translation>Die Werkstatt wird geprüft …</translation>
    </message>
    <message>
        <source>what is damaged</source>
        <translation>was beschädigt ist</translation>
    </message>
    <message>
        <source>A new shop out of that backup…</source>
        <translation>Eine neue Werkstatt aus dieser Sicherung…</translation>
    </message>
    <message>
        <source>Prove it again</source>
        <translation>Noch einmal prüfen</translation>
    </message>
    <message>
        <source>Back to the desk  Esc</source>
        <translation>Zurück  Esc</translation>
    </message>
</context>
<context>
    <name>ServerSheet</name>
    <message>
        <source>Open a shop on a server</source>
        <translation>Werkstatt auf einem Server öffnen</translation>
    </message>
    <message>
        <source>Opening %1 …</source>
        <translation>%1 wird geöffnet …</translation>
    </message>
    <message>
        <source>The address has the person&apos;s role, the server and its database. Without a password here the keyring is asked.</source>
        <translation>In der Adresse stehen die Rolle der Person, der Server und seine Datenbank. Ohne Passwort hier wird der Schlüsselbund gefragt.</translation>
    </message>
    <message>
        <source>address</source>
        <translation>Adresse</translation>
    </message>
    <message>
        <source>password</source>
        <translation>Passwort</translation>
    </message>
    <message>
        <source>forget it on closing</source>
        <translation>beim Schließen vergessen</translation>
    </message>
    <message>
        <source>keep it in the keyring</source>
        <translation>im Schlüsselbund behalten</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
</context>
<context>
    <name>ShopSheet</name>
    <message>
        <source>Another shop</source>
        <translation>Andere Werkstatt</translation>
    </message>
    <message>
        <source>The one on the desk stays as it is.</source>
        <translation>Die jetzt geöffnete bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Open a shop file…</source>
        <translation>Werkstattdatei öffnen…</translation>
    </message>
    <message>
        <source>Open a shop on a server…</source>
        <translation>Werkstatt auf einem Server öffnen…</translation>
    </message>
    <message>
        <source>The demo shop</source>
        <translation>Die Demo-Werkstatt</translation>
    </message>
    <message>
        <source>Another shop, or this one as a whole</source>
        <translation>Eine andere Werkstatt, oder diese als Ganzes</translation>
    </message>
    <message>
        <source>Make one out of a backup…</source>
        <translation>Eine aus einer Sicherung machen…</translation>
    </message>
    <message>
        <source>Make one out of a folder of texts…</source>
        <translation>Eine aus einem Ordner mit Texten machen…</translation>
    </message>
    <message>
        <source>This shop</source>
        <translation>Diese Werkstatt</translation>
    </message>
    <message>
        <source>Prove it whole</source>
        <translation>Auf Vollständigkeit prüfen</translation>
    </message>
    <message>
        <source>Write its texts into a folder…</source>
        <translation>Texte der Werkstatt in einen Ordner schreiben…</translation>
    </message>
    <message>
        <source>Take in edited texts…</source>
        <translation>Geänderte Texte übernehmen…</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
</context>
<context>
    <name>ShopSheets</name>
    <message>
        <source>Open a shop file</source>
        <translation>Werkstattdatei öffnen</translation>
    </message>
    <message>
        <source>Shop files (*.flarestock)</source>
        <translation>Werkstattdateien (*.flarestock)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
</context>
<context>
    <name>SlimScrollBar</name>
    <message>
        <source>scroll bar</source>
        <translation>Bildlaufleiste</translation>
    </message>
</context>
<context>
    <name>TextsInSheet</name>
    <message>
        <source>Take in edited texts</source>
        <translation>Geänderte Texte übernehmen</translation>
    </message>
    <message>
        <source>The texts are being read …</source>
        <translation>Die Texte werden gelesen …</translation>
    </message>
    <message>
        <source>The texts are being written …</source>
        <translation>Die Texte werden geschrieben …</translation>
    </message>
    <message>
        <source>The folder is one that was written here, with what was edited there. All of it is read, and what would change is said, before anything is written.</source>
        <translation>Der Ordner ist einer, der von hier geschrieben wurde, mit dem, was dort geändert wurde. Alles wird gelesen, und was sich ändern würde, steht hier, bevor etwas geschrieben wird.</translation>
    </message>
    <message>
        <source>the folder</source>
        <translation>der Ordner</translation>
    </message>
    <message>
        <source>what would change</source>
        <translation>was sich ändern würde</translation>
    </message>
    <message>
        <source>Look once more</source>
        <translation>Noch einmal ansehen</translation>
    </message>
    <message>
        <source>Look at what was edited</source>
        <translation>Ansehen, was geändert wurde</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
</context>
<context>
    <name>TextsOutSheet</name>
    <message>
        <source>Write its texts into a folder</source>
        <translation>Texte der Werkstatt in einen Ordner schreiben</translation>
    </message>
    <message>
        <source>The texts are being written …</source>
        <translation>Die Texte werden geschrieben …</translation>
    </message>
    <message>
        <source>Parts, offers and lists as CSV, templates and builds as TOML, to be edited or kept. The folder is new or empty. The shop stays as it is.</source>
        <translation>Teile, Angebote und Listen als CSV, Vorlagen und Aufbauten als TOML, zum Ändern oder Aufheben. Der Ordner ist neu oder leer. Die Werkstatt bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>the folder</source>
        <translation>der Ordner</translation>
    </message>
    <message>
        <source>what was written</source>
        <translation>was geschrieben wurde</translation>
    </message>
    <message>
        <source>Write them</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>Back to the desk  Esc</source>
        <translation>Zurück  Esc</translation>
    </message>
    <message>
        <source>Not now  Esc</source>
        <translation>Jetzt nicht  Esc</translation>
    </message>
    <message>
        <source>What lies where, and what is to be kept of it, stands in them as of the first day; only a backup keeps what was moved since.</source>
        <translation>Was wo liegt und wie viel davon da sein soll, steht darin wie am ersten Tag; was seither bewegt wurde, bewahrt nur eine Sicherung.</translation>
    </message>
</context>
<context>
    <name>TopStrip</name>
    <message>
        <source>%1  ·  %2</source>
        <translation>%1  ·  %2</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>Jetzt sichern</translation>
    </message>
    <message>
        <source>Other shop…</source>
        <translation>Andere Werkstatt…</translation>
    </message>
    <message>
        <source>Ctrl+O</source>
        <translation>Strg+O</translation>
    </message>
    <message>
        <source>! %1</source>
        <translation>! %1</translation>
    </message>
</context>
<context>
    <name>TypedFigures</name>
    <message>
        <source>can be read in two ways</source>
        <translation>lässt sich auf zwei Arten lesen</translation>
    </message>
    <message>
        <source>Write %1 or %2.</source>
        <translation>%1 oder %2 schreiben.</translation>
    </message>
</context>
<context>
    <name>Units</name>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>/ ft</source>
        <translation>/ ft</translation>
    </message>
    <message>
        <source>/ m</source>
        <translation>/ m</translation>
    </message>
    <message>
        <source>%1 psi</source>
        <translation>%1 psi</translation>
    </message>
    <message>
        <source>%1 bar</source>
        <translation>%1 bar</translation>
    </message>
    <message>
        <source>%1–%2 psi</source>
        <translation>%1–%2 psi</translation>
    </message>
    <message>
        <source>%1–%2 bar</source>
        <translation>%1–%2 bar</translation>
    </message>
    <message>
        <source>%1 L/h</source>
        <translation>%1 L/h</translation>
    </message>
    <message>
        <source>%1 gph</source>
        <translation>%1 gph</translation>
    </message>
    <message>
        <source>%1 L</source>
        <translation>%1 L</translation>
    </message>
    <message>
        <source>%1 gal</source>
        <translation>%1 gal</translation>
    </message>
    <message>
        <source>%1 mm bore</source>
        <translation>innen %1 mm</translation>
    </message>
    <message>
        <source>%1 in bore</source>
        <translation>innen %1 in</translation>
    </message>
    <message>
        <source>%1 mbar</source>
        <translation>%1 mbar</translation>
    </message>
</context>
<context>
    <name>flarestock::AtServer</name>
    <message>
        <source>The address of the server is missing.</source>
        <translation>Die Adresse des Servers fehlt.</translation>
    </message>
    <message>
        <source>%1 is not the address of a server.</source>
        <translation>%1 ist keine Adresse eines Servers.</translation>
    </message>
    <message>
        <source>%1 Write it like postgresql://anna@shop.example/shop.</source>
        <translation>%1 Zu schreiben wie postgresql://anna@shop.example/shop.</translation>
    </message>
    <message>
        <source>The keyring does not take the password.</source>
        <translation>Der Schlüsselbund nimmt das Passwort nicht an.</translation>
    </message>
</context>
<context>
    <name>flarestock::BackingUp</name>
    <message>
        <source>backing up</source>
        <translation>Sicherung läuft</translation>
    </message>
    <message>
        <source>no backup yet</source>
        <translation>noch keine Sicherung</translation>
    </message>
    <message>
        <source>backed up today %1</source>
        <translation>gesichert heute %1</translation>
    </message>
    <message>
        <source>backed up %1</source>
        <translation>gesichert am %1</translation>
    </message>
    <message>
        <source>Backed up beside the shop file; the copy was proved whole.</source>
        <translation>Neben der Werkstattdatei gesichert; die Sicherung wurde als vollständig geprüft.</translation>
    </message>
    <message>
        <source>Not backed up: %1</source>
        <translation>Nicht gesichert: %1</translation>
    </message>
</context>
<context>
    <name>flarestock::Desk</name>
    <message>
        <source>by %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>planned builds</source>
        <translation>geplante Aufbauten</translation>
    </message>
    <message>
        <source>tried out with its own answers</source>
        <translation>mit Angaben der Vorlage ausprobiert</translation>
    </message>
    <message>
        <source>templates</source>
        <translation>Vorlagen</translation>
    </message>
    <message>
        <source>on this screen only</source>
        <translation>nur auf diesem Bildschirm</translation>
    </message>
    <message>
        <source>tried out, not kept</source>
        <translation>ausprobiert, nicht gespeichert</translation>
    </message>
    <message>
        <source>nothing unsaved</source>
        <translation>alles gespeichert</translation>
    </message>
    <message>
        <source>not kept: %1</source>
        <translation>nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>kept, %1</source>
        <translation>gespeichert, %1</translation>
    </message>
    <message>
        <source>This build was changed at another seat.</source>
        <translation>Dieser Aufbau wurde an einem anderen Rechner geändert.</translation>
    </message>
    <message>
        <source>%1 was taken out at another seat.</source>
        <translation>%1 wurde an einem anderen Rechner entfernt.</translation>
    </message>
    <message>
        <source>%1  ·  the copy %2</source>
        <translation>%1  ·  die Kopie %2</translation>
    </message>
    <message>
        <source>%1 on this computer</source>
        <translation>%1 auf diesem Rechner</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>writing</source>
        <translation>wird geschrieben</translation>
    </message>
    <message>
        <source>%1: what was changed is kept now.</source>
        <translation>%1: Was geändert wurde, ist jetzt gespeichert.</translation>
    </message>
    <message>
        <source>the desk ended before</source>
        <translation>das Programm endete vorher</translation>
    </message>
    <message>
        <source>%1 was changed at another seat, so that what was changed here is not in it. Look at it, then change it again.</source>
        <translation>%1 wurde an einem anderen Rechner geändert, darum ist nicht darin, was hier geändert wurde. Ansehen, dann noch einmal ändern.</translation>
    </message>
</context>
<context>
    <name>flarestock::Form</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>flarestock::PathWords</name>
    <message>
        <source>%1: does not say where it is. Choose it, or write all folders down to it.</source>
        <translation>%1: sagt nicht, wo das ist. Wählen, oder alle Ordner bis dorthin schreiben.</translation>
    </message>
</context>
<context>
    <name>flarestock::Pen</name>
    <message>
        <source>The shop file can only be read. Ask whoever keeps it for the right to write.</source>
        <translation>Die Werkstattdatei lässt sich nur lesen. Das Recht zu schreiben gibt, wer sie verwaltet.</translation>
    </message>
    <message>
        <source>Nothing can be written down here.</source>
        <translation>Hier lässt sich nichts eintragen.</translation>
    </message>
    <message>
        <source>%1 Its leak test stays written down.</source>
        <translation>%1 Die Dichtprüfung dazu bleibt eingetragen.</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>What was to be written at %1 is in the shop: only the answer was lost. Look at it as it is now; another Enter writes it once more.</source>
        <translation>Was um %1 eingetragen werden sollte, steht in der Werkstatt: Nur die Antwort ging verloren. Ansehen, wie es jetzt ist; noch einmal Enter trägt es ein zweites Mal ein.</translation>
    </message>
</context>
<context>
    <name>flarestock::ShopMaker</name>
    <message>
        <source>shop.flarestock</source>
        <translation>werkstatt.flarestock</translation>
    </message>
    <message>
        <source>shop-%1.flarestock</source>
        <translation>werkstatt-%1.flarestock</translation>
    </message>
    <message>
        <source>Choose the backup first.</source>
        <translation>Erst die Sicherung wählen.</translation>
    </message>
    <message>
        <source>Choose the folder first.</source>
        <translation>Erst den Ordner wählen.</translation>
    </message>
    <message>
        <source>Say which new file the shop becomes.</source>
        <translation>Angeben, welche neue Datei die Werkstatt wird.</translation>
    </message>
    <message>
        <source>Made out of the backup, and proved whole: %1</source>
        <translation>Aus der Sicherung gemacht und als vollständig geprüft: %1</translation>
    </message>
    <message>
        <source>Made out of the folder: %1</source>
        <translation>Aus dem Ordner gemacht: %1</translation>
    </message>
</context>
<context>
    <name>flarestock::ShopProof</name>
    <message>
        <source>1 movement</source>
        <translation>1 Bewegung</translation>
    </message>
    <message>
        <source>%1 movements</source>
        <translation>%1 Bewegungen</translation>
    </message>
    <message>
        <source>%1, of %2</source>
        <translation>%1, vom %2</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, von %2</translation>
    </message>
    <message>
        <source>%1 is whole: %2, and every balance is what they add up to.</source>
        <translation>%1 ist vollständig: %2, und jeder Bestand ist deren Summe.</translation>
    </message>
    <message>
        <source>%1 is not whole, and no movement in it is good.</source>
        <translation>%1 ist nicht vollständig, und keine Bewegung darin ist gut.</translation>
    </message>
    <message>
        <source>%1 is not whole. The last good movement: %2.</source>
        <translation>%1 ist nicht vollständig. Die letzte gute Bewegung: %2.</translation>
    </message>
    <message>
        <source>Write nothing to it. Ask whoever runs the server what was changed there, and go on from a backup that is whole.</source>
        <translation>Nichts mehr hineinschreiben. Wer den Server betreibt, weiß vielleicht, was dort geändert wurde; weiter geht es mit einer Sicherung, die vollständig ist.</translation>
    </message>
    <message>
        <source>Write nothing to it and keep it aside. None of the backups beside it is whole: look for one kept elsewhere, and make a new shop out of that.</source>
        <translation>Nichts mehr hineinschreiben und die Datei beiseitelegen. Keine Sicherung daneben ist vollständig: eine suchen, die anderswo liegt, und daraus eine neue Werkstatt machen.</translation>
    </message>
    <message>
        <source>Write nothing to it and keep it aside. The newest backup that is whole has %1: %2. Make a new shop out of it.</source>
        <translation>Nichts mehr hineinschreiben und die Datei beiseitelegen. Die neueste vollständige Sicherung hat %1: %2. Daraus eine neue Werkstatt machen.</translation>
    </message>
</context>
<context>
    <name>flarestock::ShopTexts</name>
    <message>
        <source>not in the shop yet</source>
        <translation>noch nicht in der Werkstatt</translation>
    </message>
    <message>
        <source>1 line changed</source>
        <translation>1 Zeile geändert</translation>
    </message>
    <message>
        <source>%1 lines changed</source>
        <translation>%1 Zeilen geändert</translation>
    </message>
    <message>
        <source>1 line new</source>
        <translation>1 Zeile neu</translation>
    </message>
    <message>
        <source>%1 lines new</source>
        <translation>%1 Zeilen neu</translation>
    </message>
    <message>
        <source>1 line gone</source>
        <translation>1 Zeile weg</translation>
    </message>
    <message>
        <source>%1 lines gone</source>
        <translation>%1 Zeilen weg</translation>
    </message>
    <message>
        <source>the same lines in another order</source>
        <translation>dieselben Zeilen in anderer Folge</translation>
    </message>
    <message>
        <source>Take in 1 text</source>
        <translation>1 Text übernehmen</translation>
    </message>
    <message>
        <source>Take in %1 texts</source>
        <translation>%1 Texte übernehmen</translation>
    </message>
    <message>
        <source>Choose the folder first.</source>
        <translation>Erst den Ordner wählen.</translation>
    </message>
    <message>
        <source>1 text was written into %1.</source>
        <translation>1 Text wurde in %1 geschrieben.</translation>
    </message>
    <message>
        <source>%1 texts were written into %2.</source>
        <translation>%1 Texte wurden in %2 geschrieben.</translation>
    </message>
    <message>
        <source>All of them read. They are written as one step, which can be taken back; what lies where stays as it is.</source>
        <translation>Alle sind lesbar. Sie werden als ein Schritt geschrieben, der sich zurücknehmen lässt; was wo liegt, bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>1 edited text taken in from %1.</source>
        <translation>1 geänderter Text aus %1 übernommen.</translation>
    </message>
    <message>
        <source>%1 edited texts taken in from %2.</source>
        <translation>%1 geänderte Texte aus %2 übernommen.</translation>
    </message>
    <message>
        <source>The shop has it, but the folder does not know: %1 Write the texts into a new folder before you edit further.</source>
        <translation>Die Werkstatt hat es, der Ordner weiß aber nichts davon: %1 Die Texte in einen neuen Ordner schreiben, bevor weiter geändert wird.</translation>
    </message>
    <message>
        <source>Nothing that is taken in was edited in this folder. shop.toml, stock.csv, kept.csv, fitted.csv and outings.csv are read only when a shop is made.</source>
        <translation>In diesem Ordner wurde nichts geändert, was übernommen wird. shop.toml, stock.csv, kept.csv, fitted.csv und outings.csv werden nur gelesen, wenn eine Werkstatt gemacht wird.</translation>
    </message>
</context>
<context>
    <name>flarestock::Standing</name>
    <message>
        <source>both male or both female: nothing screws in</source>
        <translation>beide außen oder beide innen: nichts schraubt sich ein</translation>
    </message>
    <message>
        <source>does not go together</source>
        <translation>passt nicht zusammen</translation>
    </message>
    <message>
        <source>starts, then jams</source>
        <translation>greift erst, klemmt dann</translation>
    </message>
    <message>
        <source>goes in loose</source>
        <translation>geht lose hinein</translation>
    </message>
    <message>
        <source>screws together, but leaks</source>
        <translation>lässt sich verschrauben, ist aber undicht</translation>
    </message>
    <message>
        <source>made to fit, with a caution</source>
        <translation>passt, mit Vorsicht</translation>
    </message>
    <message>
        <source>fits with what it needs beside it</source>
        <translation>passt mit dem, was dazugehört</translation>
    </message>
    <message>
        <source>made for each other</source>
        <translation>füreinander gemacht</translation>
    </message>
    <message>
        <source>open: nothing in the catalogue closes it</source>
        <translation>offen: nichts im Katalog schließt die Verbindung</translation>
    </message>
    <message>
        <source>open: the catalogue lacks what it needs beside it</source>
        <translation>offen: was dazugehört, fehlt im Katalog</translation>
    </message>
    <message>
        <source>closed with a ring, washer or sealant</source>
        <translation>geschlossen mit Ring, Scheibe oder Dichtmittel</translation>
    </message>
    <message>
        <source>no such port</source>
        <translation>kein solcher Anschluss</translation>
    </message>
</context>
<context>
    <name>flarestock::Unwritten</name>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>Not written down when the desk ended: %1. Open it again: it is filled in as it was.</source>
        <translation>Nicht eingetragen, als das Programm endete: %1. Wieder öffnen: Es ist ausgefüllt wie zuvor.</translation>
    </message>
</context>
</TS>
