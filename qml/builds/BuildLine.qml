// SPDX-License-Identifier: MIT
//
// One build, or template, to choose.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string title
    required property string detail
    property bool current: false

    implicitHeight: 50
    hoverEnabled: true
    Accessible.role: Accessible.ListItem
    Accessible.name: Gaps.fill(qsTr("%1, %2"), title, detail)

    background: Rectangle {
        radius: Theme.corner
        color: root.current || root.hovered ? Theme.accentFill : "transparent"
    }
    contentItem: Item {
        Column {
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - 16
            x: 8
            spacing: 2

            Words {
                width: parent.width
                text: root.title
                strong: true
                elide: Text.ElideRight
            }
            Words {
                width: parent.width
                text: root.detail
                small: true
                quiet: true
                elide: Text.ElideRight
            }
        }
    }
}
