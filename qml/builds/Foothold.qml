// SPDX-License-Identifier: MIT
//
// Where the keyboard stands in a screen while nothing else there has it: what had it was folded
// away, or nobody had gone anywhere yet.

import QtQuick

Item {
    id: root

    required property Item screen // A FocusScope; by itself it shows no focus.
    required property Item first  // What takes the keyboard then.

    readonly property Item held: Window.activeFocusItem
    readonly property bool lost: screen.visible && screen.activeFocus
                                 && (held === screen || held !== null && !held.visible)

    onLostChanged: soon.restart()

    Timer {
        id: soon // Once all has changed that changes with it.

        interval: 0
        onTriggered: {
            if (root.lost)
                root.first.forceActiveFocus(Qt.OtherFocusReason);
        }
    }
}
