// SPDX-License-Identifier: MIT
//
// Before the desk goes: the shop has no backup of today. It is offered, never forced.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

WorkSheet {
    id: root

    property string newest // "no backup yet", "backed up Fri 27 Nov 2026"
    property bool busy: false

    signal backUp()
    signal leave()

    title: qsTr("Back up before you go?")
    about: root.busy ? qsTr("Backing up; the desk closes when the copy is proved whole.")
                     : qsTr("This shop: %1. A copy beside its file is proved whole when it is "
                            + "made; the last ten and one a month are kept.").arg(root.newest)
    widest: 560
    onOpened: first.forceActiveFocus()

    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            id: first

            objectName: "backUpAndLeave"
            text: qsTr("Back up, then close")
            enabled: !root.busy
            onClicked: root.backUp()
        }
        DeskButton {
            objectName: "leaveAsItIs"
            text: qsTr("Close without")
            enabled: !root.busy
            onClicked: root.leave()
        }
        DeskButton {
            text: qsTr("Stay  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
