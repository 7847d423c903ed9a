// SPDX-License-Identifier: MIT
//
// Texts of a shop by their names, each with what is said of it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

ScrolledColumn {
    id: root

    required property Rows texts

    visible: texts.count > 0
    Layout.fillWidth: true
    Layout.fillHeight: true
    Layout.preferredHeight: Math.min(240, contentHeight)

    Repeater {
        model: root.texts

        RowLayout {
            id: line

            required property string name
            required property string says

            width: parent ? parent.width : 0
            spacing: Theme.wideGap

            Words {
                objectName: "textName"
                text: line.name
                strong: line.says !== ""
                wrapMode: Text.WrapAnywhere
                Layout.fillWidth: true
            }
            Words {
                objectName: "textSays"
                visible: text !== ""
                text: line.says
                wrapMode: Text.Wrap
                Layout.maximumWidth: 300
            }
        }
    }
}
