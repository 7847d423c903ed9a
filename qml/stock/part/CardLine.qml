// SPDX-License-Identifier: MIT
//
// One thing that is known of a part, under the head of its group.

import QtQuick
import Flarestock.Screens

Column {
    id: root

    required property string head // The group, where it begins with this line.
    required property string title
    required property string detail
    required property string figure
    required property bool flagged
    required property string says

    spacing: 1
    Accessible.role: Accessible.StaticText
    Accessible.name: head === "" ? says : qsTr("%1: %2").arg(head).arg(says)

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

        Words {
            id: words

            width: parent.width - amount.width - (amount.width > 0 ? 10 : 0)
            text: root.title
            wrapMode: Text.Wrap
        }
        Words {
            id: amount

            anchors.right: parent.right
            text: root.figure
            strong: true
        }
    }
    Words {
        visible: text !== ""
        width: root.width
        bottomPadding: 3
        text: root.flagged ? qsTr("! %1").arg(root.detail) : root.detail
        small: true
        strong: root.flagged
        color: root.flagged ? Theme.caution : Theme.quiet
        wrapMode: Text.Wrap
    }
}
