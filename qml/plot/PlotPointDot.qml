// SPDX-License-Identifier: MIT
//
// A point of a plot: a dot on its line; the one in hand has a ring round it.

import QtQuick
import Flarestock.Screens

Item {
    id: root

    required property bool dot
    required property string says
    property bool inHand: false

    signal pressed()

    width: 22
    height: 22
    Accessible.role: Accessible.Button
    Accessible.name: says
    Accessible.onPressAction: root.pressed()

    Rectangle {
        anchors.centerIn: parent
        visible: root.inHand
        width: 22
        height: 22
        radius: 11
        color: Theme.accentFill
        border.color: Theme.accent
        border.width: 2.5
    }
    Rectangle {
        anchors.centerIn: parent
        visible: root.dot || root.inHand
        width: 9
        height: 9
        radius: 4.5
        color: root.inHand ? Theme.accent : Theme.surface
        border.color: Theme.accent
        border.width: 2
    }
}
