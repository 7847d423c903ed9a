// SPDX-License-Identifier: MIT
//
// The area of the trailer: its screen, and what is typed or scanned on it.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

AreaScreen {
    id: root

    readonly property TrailerDesk trailer: Desk.trailer
    property string sought: ""

    function enter() {
        screen.enter();
    }
    function find(typed: string) {
        sought = typed;
    }
    function done() {
        if (sought.trim() === "")
            screen.enter();
        else if (!root.trailer.scan(sought))
            isUnknown(sought);
    }
    function isUnknown(code: string) {
        root.explained(qsTr("%1 is neither a drawer nor a part in one or for one.").arg(code));
    }
    /// The list that shows comes first. What the shop does not know is sought nowhere else either.
    function scan(code: string): bool {
        if (screen.list && screen.list.scan(code)) {
            root.trailer.drawer = code; // Where it is one.
            return true;
        }
        if (root.trailer.scan(code))
            return true;
        if (root.trailer.knows(code))
            return false;
        if (screen.list)
            screen.list.refuse(code);
        else
            isUnknown(code);
        return true;
    }

    ready: !root.trailer.loading
    findHint: qsTr("A drawer, or a part on the load list  (Ctrl+F)")
    findName: qsTr("Find in the trailer")
    onCurrentChanged: root.trailer.looking = current

    Binding {
        target: root.trailer
        property: "inInches"
        value: Look.inInches
    }
    TrailerScreen {
        id: screen

        anchors.fill: parent
        focus: true
        trailer: root.trailer
        busy: Desk.pen.busy
        problem: Desk.pen.problem
        onExplained: sentence => root.explained(sentence)
        onTakeAsked: sheets.those.take()
        onLookAsked: sheets.those.look()
        onGiveUpAsked: (trip, name, places) => sheets.those.giveUp(trip, name, places)
    }
    MadeAfter {
        id: sheets

        readonly property CopySheets those: item as CopySheets

        current: root.current
        sourceComponent: CopySheets {
            copies: Desk.trailer.copies
        }
    }
    Connections {
        target: sheets.those

        function onLooking() {
            screen.show(4);
        }
    }
}
