// SPDX-License-Identifier: MIT
//
// A letter that a hand has pressed by itself. A scanner types faster than any hand: of letters that
// follow each other so quickly none is one.

import QtQuick

Timer {
    id: root

    property string waiting: ""
    property real lastAt: 0

    signal pressed(string letter)

    function press(letter: string) {
        const now = Date.now();
        const isQuick = now - lastAt < interval;
        lastAt = now;
        stop();
        if (isQuick)
            return;
        waiting = letter;
        start();
    }

    interval: 50 // More than a scanner's gap: see ScanEar.
    onTriggered: root.pressed(waiting)
}
