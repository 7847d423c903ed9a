// SPDX-License-Identifier: MIT
//
// Which shop on which server is to be opened, and with which password.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

WorkSheet {
    id: root

    required property string address
    property bool busy: false
    property bool keep: false

    signal asked(string address, string password, bool keep)

    function ask() {
        root.asked(where.text, secret.text, root.keep);
        secret.clear();
    }

    title: qsTr("Open a shop on a server")
    about: root.busy ? qsTr("Opening %1 …").arg(root.address)
                     : qsTr("The address has the person's role, the server and its database. "
                            + "Without a password here the keyring is asked.")
    widest: 640
    onOpened: {
        if (where.text === "")
            where.text = root.address;
        (where.text === "" ? where : secret).forceActiveFocus();
    }
    onClosed: secret.clear()

    InkField {
        id: where

        objectName: "serverAddress"
        name: qsTr("address")
        placeholderText: "postgresql://anna@shop.example/shop"
        Layout.fillWidth: true
        onAccepted: secret.forceActiveFocus()
    }
    InkField {
        id: secret

        objectName: "serverPassword"
        name: qsTr("password")
        placeholderText: qsTr("password")
        echoMode: TextInput.Password
        Layout.fillWidth: true
        onAccepted: root.ask()
    }
    Row {
        spacing: 4

        GroupButton {
            objectName: "passwordForgotten"
            text: qsTr("forget it on closing")
            checked: !root.keep
            onClicked: root.keep = false
        }
        GroupButton {
            objectName: "passwordKept"
            text: qsTr("keep it in the keyring")
            checked: root.keep
            onClicked: root.keep = true
        }
    }
    Flow {
        spacing: Theme.gap
        Layout.fillWidth: true

        DeskButton {
            objectName: "serverOpen"
            text: qsTr("Open it")
            enabled: !root.busy
            onClicked: root.ask()
        }
        DeskButton {
            text: qsTr("Not now  Esc")
            framed: false
            onClicked: root.close()
        }
    }
}
