// SPDX-License-Identifier: MIT
//
// What is known of a card in groups, each under its name.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property Rows lines

    spacing: 6

    Repeater {
        model: Steps {
            of: root.lines
        }

        CardLine {
            width: root.width
        }
    }
}
