// SPDX-License-Identifier: MIT
//
// What is looked out for before a system is opened, line by line.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Rectangle {
    id: root

    required property string title
    required property var cautions

    implicitHeight: lines.height + 16
    radius: Theme.corner
    color: Theme.cautionFill
    border.color: Theme.caution
    border.width: 1

    Column {
        id: lines

        x: 10
        y: 8
        width: root.width - 20
        spacing: 3

        Row {
            spacing: 6

            MarkIcon {
                implicitWidth: 20
                mark: Standing.Caution
                paper: Theme.cautionFill
            }
            Words {
                objectName: "openedTitle"
                width: lines.width - 26
                text: root.title
                strong: true
                color: Theme.caution
                wrapMode: Text.Wrap
            }
        }
        Repeater {
            model: root.cautions

            Words {
                required property string modelData

                width: lines.width
                text: qsTr("–  %1").arg(modelData)
                small: true
                wrapMode: Text.Wrap
            }
        }
    }
}
