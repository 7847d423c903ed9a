// SPDX-License-Identifier: MIT
//
// The area of buying: its screen, the sheets on which a hand says what it does, and the file that a
// paper goes to.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

AreaScreen {
    id: root

    readonly property BuyingDesk buying: Desk.buying
    readonly property var sheets: [orderSheet, claimSheet, troubleSheet]

    function enter() {
        screen.enter();
    }
    function find(typed: string) {
        root.buying.find(typed);
    }
    function done() {
        screen.enter();
    }
    function scan(code: string): bool {
        const sheet = sheets.find(one => one.opened);
        return sheet ? sheet.scan(code) : root.buying.scan(code);
    }
    function doOrder(deed: string, why: string) {
        if (deed === "receive") {
            if (root.buying.box.open(root.buying.orders.selected))
                screen.enter();
            else
                root.explained(why);
        } else if (root.buying.orders.begin(deed)) {
            orderSheet.open();
        } else if (deed !== "close" && deed !== "cancel" || !Desk.pen.busy) {
            root.explained(why);
        }
    }
    function doClaim(deed: string, why: string) {
        if (root.buying.owed.begin(deed))
            claimSheet.open();
        else
            root.explained(why);
    }
    function askForFile(kind: string, isLetter: bool) {
        fileDialog.kind = kind;
        fileDialog.isLetter = isLetter;
        const suffix = kind === "english" ? "pdf" : kind;
        fileDialog.nameFilters = [suffix.toUpperCase() + " (*." + suffix + ")"];
        fileDialog.ask((isLetter ? root.buying.owed.selected
                                 : root.buying.orders.selected) + "." + suffix);
    }

    findHint: qsTr("Narrow: AD-66, coupe, 2026-0007  (Ctrl+F)")
    findName: qsTr("Find in what is bought")
    ready: !root.buying.loading
    ownKinds: ["order", "claim"]
    takesScans: sheets.some(one => one.opened)
    onCurrentChanged: root.buying.looking = current

    Binding {
        target: root.buying
        property: "inInches"
        value: Look.inInches
    }
    Repeater {
        model: 4

        Item {
            id: key

            required property int index

            Shortcut {
                sequence: "Ctrl+" + (key.index + 1)
                enabled: root.current
                onActivated: screen.turnTo(key.index)
            }
        }
    }
    Connections {
        target: root.buying

        function onForgotten() {
            root.forgotten();
        }
        function onArrived() {
            screen.enter();
        }
    }
    Connections {
        target: root.buying.orders

        function onTold(sentence: string) {
            root.explained(sentence);
        }
    }
    Connections {
        target: root.buying.owed

        function onTold(sentence: string) {
            root.explained(sentence);
        }
    }
    BuyingScreen {
        id: screen

        anchors.fill: parent
        focus: true
        buying: root.buying
        busy: Desk.pen.busy
        problem: Desk.pen.problem
        onOrderDeedAsked: (deed, why) => root.doOrder(deed, why)
        onClaimDeedAsked: (deed, why) => root.doClaim(deed, why)
        onTroubleAsked: troubleSheet.open()
        onPaperAsked: kind => root.askForFile(kind, false)
        onLetterAsked: kind => root.askForFile(kind, true)
    }
    FormSheet {
        id: orderSheet

        form: root.buying.orders.form
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    FormSheet {
        id: claimSheet

        form: root.buying.owed.form
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
    FormSheet {
        id: troubleSheet

        form: root.buying.box.form
        problem: Desk.pen.problem
    }
    FileToWrite {
        id: fileDialog

        property string kind: "pdf"
        property bool isLetter: false

        title: isLetter ? qsTr("Write the letter to …") : qsTr("Write the order to …")
        onAccepted: {
            if (isLetter)
                root.buying.owed.writeLetter(kind, selectedFile);
            else
                root.buying.orders.writePaper(kind, selectedFile);
        }
    }
    Connections {
        target: root.buying.box

        function onNoted() {
            troubleSheet.close();
        }
    }
    Connections {
        target: Desk.pen

        function onWrote() {
            orderSheet.close();
            claimSheet.close();
        }
    }
}
