// SPDX-License-Identifier: MIT
//
// The headings over the bill's columns.

import QtQuick
import Flarestock.Screens

Row {
    id: root

    required property LedgerColumns columns

    component Heading: Words {
        small: true
        quiet: true
        height: 24
        verticalAlignment: Text.AlignVCenter
    }
    component Figure: Heading {
        horizontalAlignment: Text.AlignRight
    }

    leftPadding: 12

    Heading {
        width: root.columns.part
        text: qsTr("part, and what it is")
    }
    Heading {
        width: root.columns.why
        text: qsTr("why")
    }
    Figure {
        width: root.columns.figure
        text: qsTr("need")
    }
    Figure {
        width: root.columns.figure
        text: qsTr("free")
    }
    Figure {
        width: root.columns.shortage
        text: qsTr("short")
    }
    Figure {
        width: root.columns.money
        text: qsTr("each")
    }
    Figure {
        width: root.columns.money
        text: qsTr("cost")
    }
}
