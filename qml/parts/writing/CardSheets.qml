// SPDX-License-Identifier: MIT
//
// The sheet on which a card is written.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property PartsDesk parts

    signal wrote() // The card is.

    function ask(deed: string) {
        if (deed === "new")
            root.parts.editor.beginNew();
        else if (deed === "change")
            root.parts.editor.beginChange(root.parts.selected);
    }

    Connections {
        target: root.parts.editor

        function onOpened() {
            card.begin();
        }
    }
    Connections {
        target: Desk.pen

        function onWrote() {
            if (card.opened) {
                root.parts.goTo(root.parts.editor.number);
                card.close();
                root.wrote();
            }
        }
    }
    CardSheet {
        id: card

        editor: root.parts.editor
        problem: Desk.pen.problem
        busy: Desk.pen.busy
    }
}
