// SPDX-License-Identifier: MIT
//
// A list of the area of service: up and down walk it, left and right go to the next list, Enter
// goes to the position in hand. Without `pragma ComponentBehavior`, as GroupedList.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

GroupedList {
    id: root

    required property Rows rows
    required property string selected
    property string nothing: ""

    signal chosen(string key)
    signal entered()
    signal stepped(int tabs)

    function goTo(row: int) {
        const to = Math.max(0, Math.min(rows.count - 1, row));
        if (rows.count > 0)
            root.chosen(rows.cell(to, "key"));
    }

    model: rows
    focus: true
    keyNavigationEnabled: false
    section.property: "head"
    Accessible.role: Accessible.List
    Keys.onUpPressed: root.goTo(currentIndex - 1)
    Keys.onDownPressed: root.goTo(currentIndex + 1)
    Keys.onLeftPressed: root.stepped(-1)
    Keys.onRightPressed: root.stepped(1)
    Keys.onReturnPressed: root.entered()
    Keys.onEnterPressed: root.entered()
    Keys.onPressed: event => {
        const steps = {
            [Qt.Key_PageUp]: currentIndex - 8,
            [Qt.Key_PageDown]: currentIndex + 8,
            [Qt.Key_Home]: 0,
            [Qt.Key_End]: count - 1
        };
        if (steps[event.key] !== undefined) {
            root.goTo(steps[event.key]);
            event.accepted = true;
        }
    }

    ChosenLine {
        list: root
        rows: root.rows
        chosen: root.selected
        onFollowed: {
            if (root.currentIndex === 0)
                root.positionViewAtBeginning();
        }
    }
    Words {
        objectName: "serviceNothing"
        anchors.centerIn: parent
        width: Math.min(parent.width - 48, 460)
        visible: text !== ""
        text: root.nothing
        quiet: true
        wrapMode: Text.Wrap
        horizontalAlignment: Text.AlignHCenter
    }
    FocusFrame {
        visible: root.activeFocus
        parent: root
    }
}
