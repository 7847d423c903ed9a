// SPDX-License-Identifier: MIT
//
// Pieces where they lie, as the tag on their bin: the place, how many, what they are. A broken
// outline: here, but not free. The one in hand has a thick rim and says so.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property string place
    required property string amount
    required property string detail
    required property bool isFree
    required property string kind
    required property string says

    objectName: "binTag"
    implicitHeight: Math.max(52, words.height + 14)
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    checkable: false
    Accessible.role: Accessible.RadioButton
    Accessible.name: says
    Accessible.checkable: true
    Accessible.checked: checked
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: TagDrawing {
        fill: root.checked ? Theme.accentFill : Theme.surface
        edge: root.visualFocus || root.checked ? Theme.accent
            : root.isFree ? Theme.ruleStrong : Theme.caution
        edgeWidth: root.visualFocus ? 3 : root.checked ? Theme.ring : 1
        hole: Theme.surface
        broken: !root.isFree
    }
    Column {
        id: words

        x: 20
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - x - 10
        spacing: 1

        Item {
            width: words.width
            height: figure.implicitHeight

            Words {
                width: parent.width - figure.width - 6
                text: root.place
                strong: true
                elide: Text.ElideRight
            }
            Words {
                id: figure

                anchors.right: parent.right
                width: Math.min(implicitWidth, parent.width * 0.65)
                text: root.amount
                strong: true
                horizontalAlignment: Text.AlignRight
                fontSizeMode: Text.HorizontalFit
                minimumPixelSize: 8
            }
        }
        Words {
            objectName: "binDetail"
            width: words.width
            text: root.checked ? qsTr("in hand: %1").arg(root.detail) : root.detail
            small: true
            color: root.isFree ? Theme.quiet : Theme.caution
            wrapMode: Text.Wrap
        }
    }
}
