// SPDX-License-Identifier: MIT
//
// One thing that is due: on which car, where, what and by when, why, and what it takes.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property int mark
    required property string title
    required property string piece
    required property string standing
    required property string why
    required property string takes
    required property bool lacks
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
            width: (root.width - body.x) * 0.46
            spacing: 1

            Sentence {
                width: parent.width - 12
                sentence: root.title
                strong: true
            }
            Sentence {
                width: parent.width - 12
                sentence: root.piece
                small: true
                quiet: true
            }
        }
        Column {
            width: (root.width - body.x) * 0.54
            spacing: 1

            Sentence {
                width: parent.width - 14
                sentence: root.standing
                strong: true
                color: Theme.markInk(root.mark)
            }
            Sentence {
                visible: text !== ""
                width: parent.width - 14
                sentence: root.why
                small: true
                quiet: true
            }
            Sentence {
                visible: root.takes !== ""
                width: parent.width - 14
                sentence: root.lacks ? qsTr("! takes %1").arg(root.takes)
                                     : qsTr("takes %1").arg(root.takes)
                small: true
                strong: root.lacks
                color: root.lacks ? Theme.caution : Theme.quiet
            }
        }
    }
}
