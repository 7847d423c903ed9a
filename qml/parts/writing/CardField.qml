// SPDX-License-Identifier: MIT
//
// One field of a card; what is wrong with it stands below it.

import QtQuick
import Flarestock.Screens

FocusScope {
    id: root

    required property string key
    required property string title
    required property string form
    required property var choices
    required property string value
    required property string hint
    required property string problem

    signal filledIn(var filled)
    signal entered()
    signal reached(Item item)

    implicitHeight: column.height
    onActiveFocusChanged: {
        if (activeFocus)
            root.reached(root);
    }

    Column {
        id: column

        width: root.width
        spacing: 2

        FormField {
            id: field

            width: column.width
            focus: true
            key: root.key
            title: root.title
            form: root.form
            choices: root.choices
            value: root.value
            hint: root.hint
            onFilledChanged: root.filledIn(filled)
            onEntered: root.entered()
        }
        Words {
            objectName: "wrong-" + root.key
            width: column.width
            visible: text !== ""
            text: root.problem
            small: true
            color: Theme.stop
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: qsTr("%1: %2").arg(root.title).arg(text)
        }
    }
}
