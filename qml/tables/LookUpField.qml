// SPDX-License-Identifier: MIT
//
// A field to look something up by, under its name.

import QtQuick
import QtQuick.Layouts
import Flarestock.Screens

ColumnLayout {
    id: root

    required property string key
    required property string name
    property string hint: ""
    property alias text: field.text

    signal edited(string text)

    function enter() {
        field.forceActiveFocus(Qt.TabFocusReason);
    }

    spacing: 3

    Words {
        text: root.name
        small: true
        quiet: true
        Layout.fillWidth: true
    }
    InkField {
        id: field

        objectName: root.key
        name: root.name
        placeholderText: root.hint
        Accessible.description: root.hint
        Layout.fillWidth: true
        onTextEdited: root.edited(text)
    }
}
