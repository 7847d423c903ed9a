// SPDX-License-Identifier: MIT
//
// One sum below a slip or an order.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property string title
    required property string figure
    required property bool strong

    implicitHeight: Math.max(name.height, amount.height)
    Accessible.role: Accessible.StaticText
    Accessible.name: Gaps.fill(qsTr("%1: %2"), title, figure)

    Words {
        id: name

        width: root.width - amount.width - 8
        text: root.title
        small: !root.strong
        quiet: !root.strong
        strong: root.strong
        wrapMode: Text.Wrap
    }
    Words {
        id: amount

        anchors.right: parent.right
        text: root.figure
        strong: root.strong
    }
}
