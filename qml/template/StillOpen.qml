// SPDX-License-Identifier: MIT
//
// Below the map: what of the template is still open, the first few of it in sentences.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property TemplateEditor editor
    readonly property int most: 3

    spacing: 2

    Words {
        objectName: "mapStale"
        width: root.width
        visible: text !== ""
        text: root.editor.mapStale
        strong: true
        color: Theme.caution
        wrapMode: Text.Wrap
        Accessible.role: Accessible.AlertMessage
        Accessible.name: text
    }
    Repeater {
        model: root.editor.stillOpen

        Words {
            required property int index
            required property string says

            objectName: "stillOpen"
            width: root.width
            visible: index < root.most
            text: "○ " + says
            small: true
            wrapMode: Text.Wrap
        }
    }
    Words {
        width: root.width
        visible: root.editor.stillOpen.count > root.most
        text: qsTr("… and %n more", "", root.editor.stillOpen.count - root.most)
        small: true
        quiet: true
    }
}
