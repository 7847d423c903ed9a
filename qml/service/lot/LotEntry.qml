// SPDX-License-Identifier: MIT
//
// What to do about some of a lot: what, where it is, how much, what could go in instead.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property int mark
    required property string todo
    required property string title
    required property string amount
    required property string where
    required property string detail
    required property string free
    required property string says
    property bool current: false
    property bool inHand: false // The list that it stands in has the keyboard.

    implicitHeight: Math.max(54, body.height + 16)
    focusPolicy: Qt.NoFocus
    padding: 0
    hoverEnabled: true
    Accessible.role: Accessible.ListItem
    Accessible.name: says
    Accessible.selectable: true
    Accessible.selected: current

    background: Rectangle {
        color: root.current ? Theme.accentFill : root.index % 2 ? Theme.stripe : Theme.surface

        Rectangle {
            visible: root.current
            width: root.inHand ? 5 : 3
            height: parent.height
            color: Theme.accent
        }
    }
    MarkIcon {
        x: 13
        y: (root.height - height) / 2
        mark: root.mark
    }
    Row {
        id: body

        x: 48
        y: (root.height - height) / 2

        Column {
            width: (root.width - body.x) * 0.42
            spacing: 1

            Sentence {
                width: parent.width - 12
                sentence: root.todo
                strong: true
                color: Theme.markInk(root.mark)
            }
            Sentence {
                width: parent.width - 12
                sentence: Gaps.fill(qsTr("%1 × %2"), root.amount, root.title)
                small: true
                quiet: true
            }
        }
        Column {
            width: (root.width - body.x) * 0.58
            spacing: 1

            Sentence {
                width: parent.width - 14
                sentence: root.where
                strong: true
            }
            Sentence {
                visible: text !== ""
                width: parent.width - 14
                sentence: root.detail
                small: true
                quiet: true
            }
            Sentence {
                visible: text !== ""
                width: parent.width - 14
                sentence: root.free
                small: true
                quiet: true
            }
        }
    }
}
