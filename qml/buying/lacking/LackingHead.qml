// SPDX-License-Identifier: MIT
//
// The headings over what is short.

import QtQuick
import Flarestock.Screens

Row {
    id: root

    required property LackingColumns columns

    component Heading: Words {
        height: 32
        verticalAlignment: Text.AlignVCenter
        small: true
        quiet: true
    }

    leftPadding: 12

    Heading {
        width: root.columns.part
        text: qsTr("part, and what it is")
    }
    Heading {
        width: root.columns.figure
        horizontalAlignment: Text.AlignRight
        text: qsTr("short")
    }
    Heading {
        width: root.columns.figure
        horizontalAlignment: Text.AlignRight
        text: qsTr("of")
    }
    Heading {
        width: root.columns.whom
        leftPadding: 12
        text: qsTr("for")
    }
    Heading {
        visible: root.columns.hasComing
        width: root.columns.coming
        text: qsTr("on its way")
    }
    Heading {
        visible: root.columns.hasOrderBy
        width: root.columns.orderBy
        text: qsTr("order by")
    }
}
