// SPDX-License-Identifier: MIT
//
// Before the desk goes: the shop has no backup of today, or a change could not be kept. A backup is
// offered, never forced; what is not kept waits on this computer.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

WorkSheet {
    id: root

    property string newest // "no backup yet", "backed up Fri 27 Nov 2026"
    property bool busy: false
    property bool isBackupDue: true
    property string owes: "" // "not kept: …"; empty where nothing is owed.

    signal backUp()
    signal leave()

    title: root.owes !== "" ? qsTr("Close with a change that is not kept?")
                            : qsTr("Back up before you go?")
    about: root.busy ? qsTr("Backing up; the desk closes when the copy is proved whole.")
        : root.owes !== ""
          ? qsTr("! %1 It waits on this computer for 14 days, where nobody else sees it, and is "
                 + "kept when the desk is opened here again.").arg(root.owes)
          : qsTr("This shop: %1. A copy beside its file is proved whole when it is "
                 + "made; the last ten and one a month are kept.").arg(root.newest)
    widest: 560
    onOpened: (root.isBackupDue ? first : second).forceActiveFocus()

    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            id: first

            objectName: "backUpAndLeave"
            visible: root.isBackupDue
            text: qsTr("Back up, then close")
            enabled: !root.busy
            onClicked: root.backUp()
        }
        DeskButton {
            id: second

            objectName: "leaveAsItIs"
            text: root.isBackupDue ? qsTr("Close without") : qsTr("Close")
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
