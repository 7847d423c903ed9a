// SPDX-License-Identifier: MIT
//
// The box in front of what is ticked.

import QtQuick
import Flarestock.Screens

Rectangle {
    id: root

    required property bool ticked

    width: 24
    height: 24
    radius: Theme.corner
    color: "transparent"
    border.color: ticked ? Theme.accent : Theme.ruleStrong
    border.width: ticked ? Theme.ring : 1.5

    Words {
        anchors.centerIn: parent
        visible: root.ticked
        text: "✓"
        strong: true
        color: Theme.accent
    }
}
