// SPDX-License-Identifier: MIT
//
// What a hand does with the pieces of the build, in the order in which it is done. A step that has
// nothing to do is written in quiet ink; pressed, it says why.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

Row {
    id: root

    required property Rows steps
    property bool busy: false

    signal asked(string step)
    signal explained(string why)

    spacing: 6

    BusyIndicator {
        visible: root.busy
        running: root.busy
        width: 28
        height: Theme.target
        padding: 2
        Accessible.name: qsTr("writing into the shop")
    }
    Repeater {
        model: root.steps

        DeskButton {
            id: step

            required property string key
            required property string label
            required property bool ready
            required property string detail
            required property string says

            objectName: "step-" + key
            text: label
            padding: 10
            quiet: !ready
            enabled: !root.busy
            Accessible.name: label
            Accessible.description: detail
            onClicked: ready ? root.asked(key) : root.explained(detail)
        }
    }
}
