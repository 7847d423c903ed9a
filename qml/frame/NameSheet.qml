// SPDX-License-Identifier: MIT
//
// Who is at the desk: the name that stands below what is done from now on.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

WorkSheet {
    id: root

    required property string who

    signal named(string who)

    title: qsTr("Who is at the desk?")
    about: qsTr("The name stands below what is done here from now on. It stays on this computer "
                + "until somebody else takes over.")
    widest: 480
    onOpened: {
        field.text = root.who;
        field.forceActiveFocus();
    }

    InkField {
        id: field

        objectName: "whoField"
        name: qsTr("name")
        placeholderText: qsTr("name")
        Layout.fillWidth: true
        onAccepted: accept.clicked()
    }
    DeskButton {
        id: accept

        objectName: "whoAccept"
        text: qsTr("That is me")
        enabled: field.text.trim() !== ""
        onClicked: {
            root.named(field.text.trim());
            root.close();
        }
    }
}
