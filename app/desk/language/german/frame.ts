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
        <source>at the desk: ?</source>
        <translation>hier: ?</translation>
    </message>
    <message>
        <source>at the desk: %1</source>
        <translation>hier: %1</translation>
    </message>
    <message>
        <source>say who is at the desk</source>
        <translation>angeben, wer hier ist</translation>
    </message>
    <message>
        <source>at the desk: %1; change</source>
        <translation>hier: %1; wechseln</translation>
    </message>
    <message>
        <source>Take back  Ctrl+Z</source>
        <translation>Zurücknehmen  Strg+Z</translation>
    </message>
    <message>
        <source>Take back the last step</source>
        <translation>Den letzten Schritt zurücknehmen</translation>
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
        <source>renewed</source>
        <translation>erneuert</translation>
    </message>
    <message>
        <source>worth set right</source>
        <translation>Wert berichtigt</translation>
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
</context>
<context>
    <name>LineMap</name>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>%1 — Flarestock</source>
        <translation>%1 — Flarestock</translation>
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
        <source>The one on the desk stays as it is in its file.</source>
        <translation>Die jetzt geöffnete bleibt in ihrer Datei, wie sie ist.</translation>
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
</context>
<context>
    <name>SlimScrollBar</name>
    <message>
        <source>scroll bar</source>
        <translation>Bildlaufleiste</translation>
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
        <source>writing to the file</source>
        <translation>schreibt in die Datei</translation>
    </message>
    <message>
        <source>not kept: %1</source>
        <translation>nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>kept in the file, %1</source>
        <translation>in der Datei gespeichert, %1</translation>
    </message>
    <message>
        <source>This build was changed at another seat.</source>
        <translation>Dieser Aufbau wurde an einem anderen Rechner geändert.</translation>
    </message>
    <message>
        <source>%1 was taken out at another seat.</source>
        <translation>%1 wurde an einem anderen Rechner entfernt.</translation>
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
</TS>
