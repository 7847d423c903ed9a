// SPDX-License-Identifier: MIT
//
// Scrolls so far that an item is in sight: one that is shown(), or whatever gets the keyboard and
// lies `within`.

import QtQuick
import QtQuick.Controls

Item {
    id: root

    required property Flickable flick
    property Item within: null    // Nothing: only what is shown.
    property bool keysOnly: false // Nothing moves below a hand that presses a button.

    readonly property Item held: within ? Window.activeFocusItem : null

    onHeldChanged: {
        const button = held as AbstractButton;
        let above = !keysOnly || button && button.visualFocus ? held : null;
        while (above && above !== within)
            above = above.parent;
        if (above && held !== within)
            show(held);
    }

    function show(item: Item) {
        const top = item.mapToItem(flick.contentItem, 0, 0).y;
        if (top < flick.contentY)
            flick.contentY = Math.max(0, top - 8);
        else if (top + item.height > flick.contentY + flick.height)
            flick.contentY = top + item.height + 8 - flick.height;
    }
}
