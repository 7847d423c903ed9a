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

    function act(deed: string) {
        root.close();
        root.asked(deed);
    }

    title: qsTr("Another shop, or this one as a whole")
    about: qsTr("The one on the desk stays as it is.")
    widest: 820
    onOpened: first.forceActiveFocus()

    component Deed: DeskButton {
        Layout.fillWidth: true
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
                text: qsTr("Open a shop file…")
                onClicked: root.act("file")
            }
            Deed {
                objectName: "otherServer"
                text: qsTr("Open a shop on a server…")
                onClicked: root.act("server")
            }
            Deed {
                objectName: "otherBackup"
                text: qsTr("Make one out of a backup…")
                onClicked: root.act("backup")
            }
            Deed {
                objectName: "otherFolder"
                text: qsTr("Make one out of a folder of texts…")
                onClicked: root.act("folder")
            }
            Deed {
                objectName: "otherDemo"
                text: qsTr("The demo shop")
                onClicked: root.act("demo")
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
                text: qsTr("Prove it whole")
                onClicked: root.act("prove")
            }
            Deed {
                objectName: "textsOut"
                text: qsTr("Write its texts into a folder…")
                onClicked: root.act("out")
            }
            Deed {
                objectName: "textsIn"
                text: qsTr("Take in edited texts…")
                onClicked: root.act("in")
            }
        }
    }
    DeskButton {
        text: qsTr("Not now  Esc")
        framed: false
        onClicked: root.close()
    }
}
