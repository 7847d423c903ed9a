// SPDX-License-Identifier: MIT
//
// A scroll bar that is seen wherever there is more than fits.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

ScrollBar {
    id: root

    policy: ScrollBar.AsNeeded
    minimumSize: 0.1
    Accessible.name: qsTr("scroll bar")

    contentItem: Rectangle {
        implicitWidth: 6
        radius: 3
        color: root.pressed || root.hovered ? Theme.quiet : Theme.ruleStrong
        visible: root.size < 1
    }
    background: Item {}
}
