// SPDX-License-Identifier: MIT
//
// A list that opens: where somebody sits at the window, so much more of it with each frame, as its
// lines are made as they come into sight, and no two lists with the same one; and then, of one that
// uses its lines again, as much once more, which waits for the first page down. `margin` is the
// displayMarginEnd of the list.

import QtQuick
import Flarestock.Desk

Timer {
    id: root

    required property ItemView list
    property bool across: false // It lies.
    property bool reuses: false // A line that has gone out of sight serves for another one.
    property real step: 100

    readonly property real whole: across ? list.width : list.height
    readonly property real content: across ? list.contentWidth : list.contentHeight
    readonly property real ahead: reuses ? whole : 0
    readonly property real margin: !Pace.inSteps || open > whole && !running ? 0 : open - whole
    property real open: -1

    interval: 16
    repeat: true
    running: Pace.inSteps && list.visible && list.count > 0 && open < whole + ahead
             && content >= open
    onTriggered: {
        if (Pace.takesFrame())
            open += step;
    }
    onContentChanged: open = Math.min(open, list.count > 0 ? Math.max(step, content + 1) : -1)
}
