// SPDX-License-Identifier: MIT
//
// A level of the map, suction, pressure or return, as a rule along its rows with its name upright.

import QtQuick
import Flarestock.Screens

Item {
    id: root

    required property string title

    width: 18

    Rectangle {
        anchors.right: parent.right
        width: 2
        height: parent.height
        color: Theme.rule
    }
    Words {
        x: (parent.width - 3 - width) / 2
        y: (parent.height - height) / 2
        rotation: -90
        text: root.title
        small: true
        quiet: true
    }
}
