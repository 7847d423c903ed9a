// SPDX-License-Identifier: MIT
//
// A list of lines that have a name each: Home and End go to its ends, letters to the line that
// begins with them. Without `pragma ComponentBehavior`, as GroupedList.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

GroupedList {
    id: root

    required property Rows names // Its cell "title" is the name.

    function walk(event: var) {
        if (event.modifiers & ~(Qt.ShiftModifier | Qt.KeypadModifier))
            return;
        const ends = { [Qt.Key_Home]: 0, [Qt.Key_End]: count - 1 };
        const all = Array.from({ length: count }, (none, at) => names.cell(at, "title"));
        const to = ends[event.key] ?? ahead.find(event.text, all, currentIndex);
        if (to < 0)
            return;
        currentIndex = to;
        positionViewAtIndex(to, ListView.Contain);
        event.accepted = true;
    }

    model: names
    Accessible.role: Accessible.List
    Keys.onPressed: event => walk(event)

    TypedAhead {
        id: ahead
    }
}
