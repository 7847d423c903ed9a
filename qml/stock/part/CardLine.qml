// SPDX-License-Identifier: MIT
//
// One thing that is known of a part, under the head of its group.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property string head // The group, where it begins with this line.
    required property string title
    required property string detail
    required property string figure
    required property bool flagged
    required property string says
    required property string back // The movement that can be taken back; empty: none.

    signal backAsked()
    signal reached(Item item) // It has the keyboard.

    spacing: 1
    Accessible.role: Accessible.StaticText
    Accessible.name: head === "" ? says : Gaps.fill(qsTr("%1: %2"), head, says)

    Words {
        visible: root.head !== ""
        width: root.width
        topPadding: 6
        bottomPadding: 2
        text: root.head
        strong: true
        color: Theme.accent
    }
    Rectangle {
        visible: root.head !== ""
        width: root.width
        height: 1
        color: Theme.rule
    }
    Item {
        width: root.width
        height: Math.max(words.height, amount.height)

        Sentence {
            id: words

            width: parent.width - amount.width - (amount.width > 0 ? 10 : 0)
            sentence: root.title
        }
        Words {
            id: amount

            anchors.right: parent.right
            text: root.figure
            strong: true
        }
    }
    Item {
        width: root.width
        height: Math.max(note.height, again.visible ? again.height : 0)
        visible: note.text !== "" || again.visible

        Sentence {
            id: note

            width: parent.width - (again.visible ? again.width + 6 : 0)
            bottomPadding: 3
            sentence: root.flagged ? qsTr("! %1").arg(root.detail) : root.detail
            small: true
            strong: root.flagged
            color: root.flagged ? Theme.caution : Theme.quiet
        }
        DeskButton {
            id: again

            objectName: "takeBackEvent"
            anchors.right: parent.right
            visible: root.back !== ""
            framed: false
            small: true
            text: qsTr("take back …")
            Accessible.name: qsTr("take back: %1").arg(root.says)
            onClicked: root.backAsked()
            onActiveFocusChanged: {
                if (activeFocus)
                    root.reached(again);
            }
        }
    }
}
