// SPDX-License-Identifier: MIT
//
// Whether the shop is whole: the answer, what is damaged, and what to go on from.

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

WorkSheet {
    id: root

    required property ShopProof proof

    signal backupAsked(string backup)

    /// The keyboard goes to what comes next.
    function step() {
        (restore.visible ? restore : again.enabled ? again : away).forceActiveFocus(
            Qt.TabFocusReason);
    }

    title: qsTr("Is this shop whole?")
    about: qsTr("Every entry of its journal is followed from the first on, and every balance is "
                + "added up anew. Nothing is written by that.")
    widest: 680
    onOpened: {
        root.proof.prove();
        root.step();
    }

    Connections {
        target: root.proof

        function onChanged() {
            if (root.opened)
                root.step();
        }
    }
    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true

        MarkIcon {
            visible: !root.proof.busy && root.proof.finding !== ""
            mark: root.proof.damaged ? Standing.Trap : Standing.Made
            Layout.alignment: Qt.AlignTop
        }
        Words {
            objectName: "proofFinding"
            text: root.proof.busy ? qsTr("The shop is being proved …") : root.proof.finding
            strong: true
            color: root.proof.damaged ? Theme.stop : Theme.ink
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: text
            Layout.fillWidth: true
        }
    }
    ScrolledColumn {
        visible: root.proof.damages.length > 0
        name: qsTr("what is damaged")
        Layout.fillWidth: true
        Layout.fillHeight: true
        Layout.preferredHeight: Math.min(160, contentHeight)

        Repeater {
            model: root.proof.damages

            Words {
                required property string modelData

                objectName: "damage"
                width: parent.width
                text: modelData
                wrapMode: Text.Wrap
            }
        }
    }
    Words {
        objectName: "proofRemedy"
        visible: text !== ""
        text: root.proof.remedy
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true
        Layout.topMargin: 4

        DeskButton {
            id: restore

            objectName: "goOnFromBackup"
            visible: root.proof.backup !== ""
            text: qsTr("A new shop out of that backup…")
            onClicked: {
                root.close();
                root.backupAsked(root.proof.backup);
            }
        }
        DeskButton {
            id: again

            objectName: "proveAgain"
            text: qsTr("Prove it again")
            enabled: !root.proof.busy
            framed: !restore.visible
            onClicked: root.proof.prove()
        }
        DeskButton {
            id: away

            objectName: "proofAway"
            text: qsTr("Back to the desk  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
