// SPDX-License-Identifier: MIT
//
// One thing that was found: what kind of thing, its name, its facts.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string kind
    required property string title
    required property string detail
    property bool current: false

    implicitHeight: Math.max(44, implicitContentHeight + 8)
    focusPolicy: Qt.NoFocus // The keyboard stays in the field, whose arrows walk the lines.
    Accessible.role: Accessible.ListItem
    Accessible.name: Gaps.fillAll(qsTr("%1 %2, %3"), [kind, title, detail])

    background: Rectangle {
        color: root.current || root.hovered ? Theme.accentFill : "transparent"
    }
    contentItem: Row {
        spacing: Theme.gap

        Words {
            anchors.verticalCenter: parent.verticalCenter
            width: 64
            text: root.kind
            small: true
            quiet: true
            leftPadding: 6
        }
        Words {
            anchors.verticalCenter: parent.verticalCenter
            text: root.title
            strong: true
        }
        Words {
            anchors.verticalCenter: parent.verticalCenter
            width: Math.max(0, root.availableWidth - x) // A long name leaves it none.
            text: root.detail
            quiet: true
            small: true
            wrapMode: Text.Wrap
            maximumLineCount: 3
            elide: Text.ElideRight
        }
    }
}
