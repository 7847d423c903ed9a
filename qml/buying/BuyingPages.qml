// SPDX-License-Identifier: MIT
//
// The four pages of buying; Ctrl and the number show one.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Flow {
    id: root

    required property BuyingDesk buying

    readonly property var titles: [
        qsTr("What is short"),
        qsTr("Order slips"),
        qsTr("Orders and boxes"),
        buying.owed.open === 0 ? qsTr("Owed to us") : qsTr("Owed to us: %1").arg(buying.owed.open)
    ]

    signal chosen(int page)

    spacing: 4

    Repeater {
        model: root.titles.length

        GroupButton {
            required property int index

            objectName: "page-" + index
            text: root.titles[index]
            checked: root.buying.page === index
            Accessible.description: qsTr("Ctrl+%1").arg(index + 1)
            onClicked: root.chosen(index)
        }
    }
}
