// SPDX-License-Identifier: MIT
//
// The desk without a shop: what to do first.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

FocusScope {
    id: root

    property string problem: ""

    signal makeDemo()
    signal openFile()

    ColumnLayout {
        anchors.centerIn: parent
        width: Math.min(parent.width - 48, 620)
        spacing: Theme.wideGap

        Words {
            text: qsTr("No shop is on the desk yet")
            font.pixelSize: Theme.titleText
            strong: true
            Layout.fillWidth: true
        }
        Words {
            text: qsTr("A shop is one file: its catalogue, its shelves and bins, its system "
                       + "templates and its builds.")
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
        RowLayout {
            spacing: Theme.gap

            DeskButton {
                objectName: "makeDemo"
                text: qsTr("Make the demo shop")
                focus: true
                onClicked: root.makeDemo()
            }
            DeskButton {
                objectName: "openFile"
                text: qsTr("Open a shop file…")
                onClicked: root.openFile()
            }
        }
    }
}
