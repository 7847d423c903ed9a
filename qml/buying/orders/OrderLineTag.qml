// SPDX-License-Identifier: MIT
//
// A line of an order; the one in hand is the one that a change begins with.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property string part
    required property string what
    required property string quantity
    required property string came
    required property string each
    required property string cost
    required property bool open
    required property string says

    objectName: "orderLine"
    implicitHeight: Math.max(Theme.target, words.implicitHeight + 12)
    padding: 0
    hoverEnabled: true
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: says
    Accessible.checkable: true
    Accessible.checked: checked
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: root.checked ? Theme.accentFill : Theme.stripe
        border.color: root.visualFocus ? Theme.accent : Theme.rule
        border.width: root.visualFocus ? 3 : root.hovered ? Theme.ring : 1
    }
    Item {
        anchors.fill: parent

        Column {
            id: words

            x: 10
            anchors.verticalCenter: parent.verticalCenter
            width: root.width - 20
            spacing: 1

            Item {
                width: words.width
                height: number.height

                PartNumber {
                    id: number

                    width: figures.x - 6
                    text: Gaps.fill(qsTr("%1 × %2"), root.quantity, root.part)
                }
                Words {
                    id: figures

                    anchors.right: parent.right
                    text: root.each + "   " + root.cost
                }
            }
            Item {
                width: words.width
                height: Math.max(what.height, came.height)

                Sentence {
                    id: what

                    width: came.x - 6
                    sentence: root.what
                    small: true
                    quiet: true
                }
                Words {
                    id: came

                    anchors.right: parent.right
                    text: root.came
                    small: true
                    strong: root.open
                    color: root.open ? Theme.caution : Theme.quiet
                }
            }
        }
    }
}
