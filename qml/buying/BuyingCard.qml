// SPDX-License-Identifier: MIT
//
// An order or a claim in its list: its number, whose it is, how it stands; a mark says it again.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    property string number
    property string figure // At the right of the number.
    property string title
    property string detail
    required property int mark
    required property string says
    property bool current: false
    property bool inHand: false // The list that it stands in has the keyboard.

    implicitHeight: words.implicitHeight + 14
    focusPolicy: Qt.NoFocus
    padding: 0
    Accessible.role: Accessible.ListItem
    Accessible.name: says
    Accessible.selectable: true
    Accessible.selected: current

    background: Rectangle {
        color: root.current ? Theme.accentFill : Theme.surface

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.rule
        }
        Rectangle {
            visible: root.current
            width: root.inHand ? 5 : 3
            height: parent.height
            color: Theme.accent
        }
    }
    Item {
        anchors.fill: parent

        MarkIcon {
            x: 12
            anchors.verticalCenter: parent.verticalCenter
            mark: root.mark
            implicitWidth: 22
        }
        Column {
            id: words

            x: 42
            anchors.verticalCenter: parent.verticalCenter
            width: root.width - 54
            spacing: 1

            Item {
                width: words.width
                height: Math.max(name.height, amount.height)

                Sentence {
                    id: name

                    width: parent.width - amount.width - 6
                    sentence: root.number
                    strong: true
                }
                Words {
                    id: amount

                    anchors.right: parent.right
                    text: root.figure
                }
            }
            Sentence {
                width: words.width
                sentence: root.title
            }
            Sentence {
                width: words.width
                sentence: root.detail
                small: true
                quiet: true
            }
        }
    }
}
