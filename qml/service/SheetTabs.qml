// SPDX-License-Identifier: MIT
//
// Which list shows: all cars, one of them, or where a lot went; each says by mark and word how it
// stands. In a list the left and right keys go from one to the next.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Flow {
    id: root

    required property Rows tabs
    required property string tab

    signal chosen(string tab)

    spacing: 6
    Accessible.role: Accessible.PageTabList
    Accessible.name: qsTr("which car")

    Repeater {
        model: Steps {
            of: root.tabs
        }

        SheetTab {
            required property string key

            objectName: "tab-" + key
            checked: key === root.tab
            onClicked: root.chosen(key)
        }
    }
    SheetTab {
        objectName: "tab-lot"
        title: qsTr("Lot or serial")
        detail: qsTr("where did it go?")
        mark: Standing.Note
        says: qsTr("Lot or serial: where did it go?")
        checked: root.tab === "lot"
        onClicked: root.chosen("lot")
    }
}
