// SPDX-License-Identifier: MIT
//
// The area of parts: the card index, and the sheets on which cards are written.

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
        if (deed === "new")
            root.parts.editor.beginNew();
        else if (deed === "import")
            list.open();
        else if (deed === "suppliers")
            suppliers.open();
        else if (deed === "templates")
            Desk.templates.ask();
        else if (deed === "offer" || deed.startsWith("offer|"))
            root.parts.tradeForm.beginOffer(root.parts.selected, deed.slice(6));
        else if (deed === "change")
            root.parts.editor.beginChange(root.parts.selected);
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
        onActivated: tables.look()
    }
    Connections {
        target: root.parts.editor

        function onOpened() {
            card.begin();
        }
    }
    Connections {
        target: Desk.pen

        function onWrote() {
            if (card.opened) {
                root.parts.goTo(root.parts.editor.number);
                card.close();
                screen.enter();
            } else if (list.opened || trade.opened) {
                list.close();
                trade.close();
                screen.enter();
            }
        }
    }
    PartsScreen {
        id: screen

        anchors.fill: parent
        focus: true
        parts: root.parts
        onAsked: deed => deed === "tables" ? tables.look() : root.ask(deed)
    }
    CardSheet {
        id: card

        editor: root.parts.editor
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    TablesSheet {
        id: tables

        tables: root.parts.tables
    }
    SupplierSheet {
        id: suppliers

        suppliers: root.parts.tradeForm.suppliers
        onChosen: id => {
            suppliers.close();
            root.parts.tradeForm.beginSupplier(id);
        }
    }
    FormSheet {
        id: trade

        form: root.parts.tradeForm
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    Connections {
        target: root.parts.tradeForm

        function onOpened() {
            trade.open();
        }
    }
    ImportSheet {
        id: list

        list: root.parts.importing
        refused: Desk.pen.problem
        busy: Desk.pen.busy
        onFileAsked: listDialog.open()
    }
    FileToRead {
        id: listDialog

        title: qsTr("Choose the list")
        nameFilters: [qsTr("Tables (*.csv)"), qsTr("All files (*)")]
        onAccepted: root.parts.importing.read(selectedFile)
    }
}
