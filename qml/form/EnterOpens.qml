// SPDX-License-Identifier: MIT
//
// A choice that Enter opens, as the space bar does. Letters typed one soon after the other find
// what begins with them; the open list is no higher than it has to be.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

ComboBox {
    id: root

    property bool entering: false // Enter went down here, and did not come up yet.
    property bool betweenWords: false // A blank between two words did, which opens nothing.

    function find(event: var) {
        if (event.modifiers & ~(Qt.ShiftModifier | Qt.KeypadModifier))
            return;
        const at = popup.visible ? highlightedIndex : currentIndex;
        const to = ahead.find(event.text, ahead.wordsOf(root), at);
        if (to < 0)
            return;
        ahead.bring(root, to);
        betweenWords = event.key === Qt.Key_Space;
        event.accepted = true;
    }

    popup.height: Math.min(popup.contentItem.implicitHeight, 9 * Theme.target,
                           (Window.height || 640) - popup.topMargin - popup.bottomMargin)
    Keys.onPressed: event => find(event)
    Keys.onReturnPressed: entering = !popup.visible
    Keys.onEnterPressed: entering = !popup.visible
    Keys.onReleased: event => { // Opened by the press, it would be closed by the release.
        if (betweenWords && event.key === Qt.Key_Space) {
            betweenWords = false;
            event.accepted = true;
        }
        if (!entering || event.key !== Qt.Key_Return && event.key !== Qt.Key_Enter)
            return;
        entering = false;
        event.accepted = true;
        popup.open();
    }

    TypedAhead {
        id: ahead
    }
}
