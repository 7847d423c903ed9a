// SPDX-License-Identifier: MIT
//
// Another shop instead of the one on the desk: from a file, from a server, or the demo shop.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

WorkSheet {
    id: root

    signal openFile()
    signal openServer()
    signal makeDemo()

    title: qsTr("Another shop")
    about: qsTr("The one on the desk stays as it is in its file.")
    widest: 520
    onOpened: first.forceActiveFocus()

    DeskButton {
        id: first

        objectName: "otherFile"
        text: qsTr("Open a shop file…")
        Layout.fillWidth: true
        onClicked: {
            root.close();
            root.openFile();
        }
    }
    DeskButton {
        objectName: "otherServer"
        text: qsTr("Open a shop on a server…")
        Layout.fillWidth: true
        onClicked: {
            root.close();
            root.openServer();
        }
    }
    DeskButton {
        objectName: "otherDemo"
        text: qsTr("The demo shop")
        Layout.fillWidth: true
        onClicked: {
            root.close();
            root.makeDemo();
        }
    }
}
