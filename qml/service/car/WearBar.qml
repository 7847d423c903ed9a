// SPDX-License-Identifier: MIT
//
// How much of an interval is used up: full where it is reached. The words beside it say the same.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Screens

Rectangle {
    id: root

    required property real share
    required property color ink

    height: 6
    radius: 3
    color: Theme.rule

    Rectangle {
        width: Math.max(parent.height, parent.width * Math.min(1, Math.max(0, root.share)))
        height: parent.height
        radius: parent.radius
        color: root.ink
    }
    Repeater {
        model: 3

        Rectangle {
            required property int index

            x: root.width * (index + 1) / 4
            width: 1
            height: root.height
            color: Theme.surface
        }
    }
}
