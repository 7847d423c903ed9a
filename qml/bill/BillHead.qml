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
        visible: root.columns.hasWhy
        width: root.columns.why
        text: qsTr("why")
    }
    Figure {
        width: root.columns.figure
        text: qsTr("need")
    }
    Figure {
        width: root.columns.figure
        text: qsTr("free here")
    }
    Figure {
        visible: root.columns.hasTrailer
        width: root.columns.trailer
        text: qsTr("in the trailer")
    }
    Figure {
        visible: root.columns.hasGot
        width: root.columns.got
        text: qsTr("in the car")
    }
    Figure {
        width: root.columns.shortage
        text: qsTr("short")
    }
    Figure {
        visible: root.columns.hasWay
        width: root.columns.way
        text: qsTr("on the way")
    }
    Figure {
        visible: root.columns.hasEach
        width: root.columns.each
        text: qsTr("each")
    }
    Figure {
        width: root.columns.cost
        text: qsTr("cost")
    }
}
