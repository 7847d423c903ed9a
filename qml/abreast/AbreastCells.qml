// SPDX-License-Identifier: MIT
//
// The cells of a line, one for each of the builds that are shown.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Screens

Row {
    id: root

    required property AbreastColumns columns
    required property var cells
    required property int column // Whose build is in hand.
    property bool inHand: false // So is the line.

    Repeater {
        model: root.columns.shown

        AbreastCell {
            required property int index

            readonly property int at: root ? root.columns.first + index : 0

            objectName: "abreastCell"
            width: root.columns.build
            height: root.columns.line
            cell: root.cells[at] === undefined ? ({}) : root.cells[at]
            inColumn: at === root.column
            current: root.inHand && at === root.column
        }
    }
}
