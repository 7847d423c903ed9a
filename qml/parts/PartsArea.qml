// SPDX-License-Identifier: MIT
//
// The area of parts: the card index. Its sheets are made after it.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

AreaScreen {
    id: root

    readonly property PartsDesk parts: Desk.parts

    function enter() {
        screen.enter();
    }
    function find(typed: string) {
        root.parts.find(typed);
    }
    function done() {
        screen.enter();
    }
    function scan(code: string): bool {
        return root.parts.scan(code);
    }
    function ask(deed: string) {
        if (deed === "templates")
            Desk.templates.ask();
        else if (deed === "tables")
            (tables.item as TablesSheet).look();
        (sheets.item as CardSheets).ask(deed);
        (trade.item as TradeSheets).ask(deed);
    }

    findHint: qsTr("Find a card: -8 orb, 10 micron, regulator  (Ctrl+F)")
    findName: qsTr("Find a card")
    ready: !root.parts.loading
    ownKinds: ["part"]
    onCurrentChanged: root.parts.looking = current

    Binding {
        target: root.parts
        property: "inInches"
        value: Look.inInches
    }
    Connections {
        target: root.parts

        function onForgotten() {
            root.forgotten();
        }
    }
    Shortcut {
        sequences: [StandardKey.New] // qmllint disable unqualified
        enabled: root.current
        onActivated: root.ask("new")
    }
    Shortcut {
        sequence: "Ctrl+L"
        enabled: root.current
        onActivated: root.ask("tables")
    }
    PartsScreen {
        id: screen

        anchors.fill: parent
        focus: true
        parts: root.parts
        onAsked: deed => root.ask(deed)
    }
    MadeAfter {
        id: sheets

        current: root.current
        sourceComponent: CardSheets {
            parts: Desk.parts
        }
    }
    MadeAfter {
        id: tables

        current: root.current
        sourceComponent: TablesSheet {
            tables: Desk.parts.tables
        }
    }
    MadeAfter {
        id: trade

        current: root.current
        sourceComponent: TradeSheets {
            parts: Desk.parts
        }
    }
    Connections {
        target: sheets.item as CardSheets

        function onWrote() {
            screen.enter();
        }
    }
    Connections {
        target: trade.item as TradeSheets

        function onWrote() {
            screen.enter();
        }
    }
}
