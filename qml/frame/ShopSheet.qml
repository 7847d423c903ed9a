// SPDX-License-Identifier: MIT
//
// What is done with a shop as a whole: at the left another one instead of the one on the desk, at
// the right this one.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

WorkSheet {
    id: root

    signal asked(string deed)

    title: qsTr("Another shop, or this one as a whole")
    about: qsTr("The one on the desk stays as it is in its file.")
    widest: 820
    onOpened: first.forceActiveFocus()

    component Deed: DeskButton {
        id: button

        required property string deed

        Layout.fillWidth: true
        onClicked: {
            root.close();
            root.asked(button.deed);
        }
    }
    component Group: Words {
        strong: true
        color: Theme.accent
        Layout.fillWidth: true
        Layout.topMargin: 4
    }

    RowLayout {
        spacing: Theme.wideGap
        Layout.fillWidth: true

        ColumnLayout {
            spacing: Theme.gap
            Layout.alignment: Qt.AlignTop
            Layout.fillWidth: true
            Layout.preferredWidth: 1

            Group {
                text: qsTr("Another shop")
            }
            Deed {
                id: first

                objectName: "otherFile"
                deed: "file"
                text: qsTr("Open a shop file…")
            }
            Deed {
                objectName: "otherServer"
                deed: "server"
                text: qsTr("Open a shop on a server…")
            }
            Deed {
                objectName: "otherBackup"
                deed: "backup"
                text: qsTr("Make one out of a backup…")
            }
            Deed {
                objectName: "otherFolder"
                deed: "folder"
                text: qsTr("Make one out of a folder of texts…")
            }
            Deed {
                objectName: "otherDemo"
                deed: "demo"
                text: qsTr("The demo shop")
            }
        }
        ColumnLayout {
            spacing: Theme.gap
            Layout.alignment: Qt.AlignTop
            Layout.fillWidth: true
            Layout.preferredWidth: 1

            Group {
                text: qsTr("This shop")
            }
            Deed {
                objectName: "proveShop"
                deed: "prove"
                text: qsTr("Prove it whole")
            }
            Deed {
                objectName: "textsOut"
                deed: "out"
                text: qsTr("Write its texts into a folder…")
            }
            Deed {
                objectName: "textsIn"
                deed: "in"
                text: qsTr("Take in edited texts…")
            }
        }
    }
    DeskButton {
        text: qsTr("Not now  Esc")
        framed: false
        onClicked: root.close()
    }
}
