// SPDX-License-Identifier: MIT
//
// The area of stock: its screen, and the sheets on which a hand says what it does.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

AreaScreen {
    id: root

    readonly property StockDesk stock: Desk.stock
    property string sought: ""

    function enter() {
        screen.enter();
    }
    function find(typed: string) {
        sought = typed;
        root.stock.find(typed);
    }
    function done() {
        root.stock.reach(sought);
    }
    function widen() {
        root.stock.clear();
    }
    function scan(code: string): bool {
        return sheets.takesScans ? sheets.scan(code) : root.stock.scan(code);
    }
    function ask(deed: string, why: string) {
        if (!sheets.begin(deed))
            root.explained(why);
    }

    findHint: qsTr("Narrow: -8 orb, 10 micron, C4, od 22.1 mm  (Ctrl+F)")
    findName: qsTr("Find in stock")
    ready: !root.stock.loading
    ownKinds: ["part"]
    takesScans: sheets.takesScans
    onCurrentChanged: root.stock.looking = current

    Binding {
        target: root.stock
        property: "inInches"
        value: Look.inInches
    }
    Shortcut {
        sequence: "Ctrl+M"
        enabled: root.current
        onActivated: what.open()
    }
    Connections {
        target: root.stock

        function onForgotten() {
            root.forgotten();
        }
        function onLinesReached() {
            screen.enter();
        }
    }
    StockScreen {
        id: screen

        anchors.fill: parent
        focus: true
        stock: root.stock
        busy: Desk.pen.busy
        Keys.onEscapePressed: event => {
            event.accepted = root.stock.narrowed;
            if (event.accepted)
                root.widen();
        }
        onAsked: (deed, why) => root.ask(deed, why)
        onBackAsked: (movement, what) => sheets.takeBack(movement, what)
        onWhatIsThis: what.open()
    }
    StockSheets {
        id: sheets

        stock: root.stock
        onExplained: sentence => root.explained(sentence)
    }
    WhatIsThisSheet {
        id: what

        whatIsThis: root.stock.whatIsThis
        onShown: candidate => {
            root.stock.showCandidate(candidate);
            what.close();
            screen.enter();
        }
    }
}
