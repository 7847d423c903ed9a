// SPDX-License-Identifier: MIT
//
// Where a file or folder is: written down, or chosen.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

ColumnLayout {
    id: root

    required property string name
    required property string key // "source": its field is "source", its button "choose-source".
    property alias path: field.text

    signal chooseAsked()
    signal entered()

    function enter() {
        field.forceActiveFocus(Qt.TabFocusReason);
    }

    spacing: 3

    Words {
        text: root.name
        small: true
        quiet: true
        wrapMode: Text.Wrap
        Layout.fillWidth: true
    }
    RowLayout {
        spacing: Theme.gap
        Layout.fillWidth: true

        InkField {
            id: field

            objectName: root.key
            name: root.name
            Layout.fillWidth: true
            onAccepted: root.entered()
        }
        DeskButton {
            objectName: "choose-" + root.key
            text: qsTr("Choose…")
            Accessible.description: root.name
            onClicked: root.chooseAsked()
        }
    }
}
