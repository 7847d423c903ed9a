// SPDX-License-Identifier: MIT
//
// A list of things to tick: Space or Enter ticks the one in hand; what is typed or scanned on it is
// looked for among them. Without `pragma ComponentBehavior`, as GroupedList.

import QtQuick
import Flarestock.Screens

GroupedList {
    id: root

    property string typed: ""

    signal ticked(int row)
    signal scanned(string code)

    function show(row: int) {
        currentIndex = row;
        positionViewAtIndex(row, ListView.Contain);
    }
    function enter() {
        if (typed === "")
            root.ticked(currentIndex);
        else
            root.scanned(typed);
        typed = "";
    }
    function write(event: var) {
        if (event.key === Qt.Key_Backspace)
            typed = typed.slice(0, -1);
        else if (event.text.length === 1 && event.text > " ")
            typed += event.text;
        else
            return;
        event.accepted = true;
    }
    function space() { // A lot may have one in its name.
        if (typed === "")
            root.ticked(currentIndex);
        else
            typed += " ";
    }

    Accessible.role: Accessible.List
    Keys.onPressed: event => root.write(event)
    Keys.onSpacePressed: root.space()
    Keys.onReturnPressed: root.enter()
    Keys.onEnterPressed: root.enter()

    FocusFrame {
        parent: root
        visible: root.activeFocus
    }
}
