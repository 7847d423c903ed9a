// SPDX-License-Identifier: MIT
//
// One part that may be carried: how many, how many are there, and how it is used up.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string part
    required property string what
    required property string carry
    required property string there
    required property string missing
    required property string spentBy
    required property string covered
    required property bool isShort
    required property bool isKnown
    required property string says
    property bool current: false
    property bool inHand: false

    objectName: "spareLine"
    implicitHeight: Math.max(46, words.height + 10)
    focusPolicy: Qt.NoFocus
    padding: 0
    Accessible.role: Accessible.Row
    Accessible.name: says
    Accessible.selectable: true
    Accessible.selected: current

    background: Rectangle {
        color: root.current ? Theme.accentFill : root.index % 2 ? Theme.stripe : Theme.surface

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

        Column {
            id: words

            x: 12
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - 12 - (root.isKnown ? 202 : 12)
            spacing: 1

            Words {
                width: parent.width
                text: root.isKnown && root.covered !== ""
                    ? Gaps.fillAll(qsTr("%1  ·  %2, %3"), [root.part, root.spentBy, root.covered])
                    : root.isKnown ? Gaps.fill(qsTr("%1  ·  %2"), root.part, root.spentBy)
                    : root.part
                strong: true
                wrapMode: Text.Wrap
            }
            Words {
                width: parent.width
                text: root.isKnown ? root.what : root.spentBy
                small: true
                quiet: true
                wrapMode: Text.Wrap
            }
        }
        Words {
            visible: root.isKnown
            anchors.right: there.left
            anchors.verticalCenter: parent.verticalCenter
            width: 56
            text: root.carry
            strong: true
            font.pixelSize: Theme.headText
            horizontalAlignment: Text.AlignRight
        }
        Words {
            id: there

            visible: root.isKnown
            anchors.right: parent.right
            anchors.rightMargin: 112
            anchors.verticalCenter: parent.verticalCenter
            width: 34
            text: root.there
            horizontalAlignment: Text.AlignRight
        }
        ShortTag {
            visible: root.isShort
            anchors.right: parent.right
            anchors.rightMargin: 14
            anchors.verticalCenter: parent.verticalCenter
            width: Math.min(implicitWidth, 84)
            text: root.missing
        }
    }
}
