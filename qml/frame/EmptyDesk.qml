// SPDX-License-Identifier: MIT
//
// The desk without a shop: what to do first.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

FocusScope {
    id: root

    property string problem: ""
    property string opening: "" // The address of a server that has not answered yet.

    signal asked(string deed) // "demo", "file", "server", "backup", "folder"

    ColumnLayout {
        anchors.centerIn: parent
        width: Math.min(parent.width - 48, 620)
        spacing: Theme.wideGap

        Words {
            text: root.opening === "" ? qsTr("No shop is on the desk yet")
                                      : qsTr("Opening %1 …").arg(root.opening)
            elide: Text.ElideMiddle
            font.pixelSize: Theme.titleText
            strong: true
            Layout.fillWidth: true
        }
        Words {
            text: qsTr("A shop is one file, or a database on a server: its catalogue, its shelves "
                       + "and bins, its system templates and its builds.")
            wrapMode: Text.WordWrap
            Layout.fillWidth: true
        }
        Words {
            visible: root.problem !== ""
            text: root.problem
            color: Theme.stop
            wrapMode: Text.WordWrap
            Layout.fillWidth: true
        }
        Words {
            text: qsTr("To look round first, let the desk make the demo shop: an invented "
                       + "hill-climb and endurance shop with three cars. Nothing in it is real.")
            quiet: true
            wrapMode: Text.WordWrap
            Layout.fillWidth: true
        }
        Flow {
            spacing: Theme.gap
            Layout.fillWidth: true

            DeskButton {
                objectName: "makeDemo"
                text: qsTr("Make the demo shop")
                focus: true
                onClicked: root.asked("demo")
            }
            DeskButton {
                objectName: "openFile"
                text: qsTr("Open a shop file…")
                onClicked: root.asked("file")
            }
            DeskButton {
                objectName: "openServer"
                text: qsTr("Open a shop on a server…")
                onClicked: root.asked("server")
            }
            DeskButton {
                objectName: "makeOfBackup"
                text: qsTr("Make one out of a backup…")
                onClicked: root.asked("backup")
            }
            DeskButton {
                objectName: "makeOfFolder"
                text: qsTr("Make one out of a folder of texts…")
                onClicked: root.asked("folder")
            }
        }
    }
}
