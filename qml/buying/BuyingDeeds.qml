// SPDX-License-Identifier: MIT
//
// What can be done with the order or the claim in hand: a button each, which says why where it
// cannot be done now.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Flow {
    id: root

    required property Rows deeds
    property bool busy: false

    signal asked(string deed, string why)

    spacing: 6

    Repeater {
        model: root.deeds

        DeskButton {
            required property string key
            required property string label
            required property bool ready
            required property string detail

            objectName: "deed-" + key
            text: label
            padding: 11
            quiet: !ready
            enabled: !root.busy
            Accessible.description: detail
            onClicked: root.asked(key, detail)
        }
    }
}
