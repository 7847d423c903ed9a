// SPDX-License-Identifier: MIT
//
// One port that another meets: how they go together, what that takes or why not, how many cards
// have it.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property int mark
    required property string port
    required property string verdict
    required property string detail
    required property string figure
    required property string says

    objectName: "meetingLine"
    implicitHeight: words.height + 8
    Accessible.role: Accessible.StaticText
    Accessible.name: says

    MarkIcon {
        y: 6
        mark: root.mark
        implicitWidth: 22
    }
    Column {
        id: words

        x: 32
        y: 4
        width: root.width - x
        spacing: 1

        Item {
            width: words.width
            height: Math.max(port.height, figure.height)

            Words {
                id: port

                width: parent.width - figure.width - 10
                text: root.port
                strong: true
                wrapMode: Text.Wrap
            }
            Words {
                id: figure

                anchors.right: parent.right
                text: root.figure
                small: true
            }
        }
        Sentence {
            width: words.width
            sentence: Gaps.fill(qsTr("%1: %2"), root.verdict, root.detail)
            small: true
            color: root.mark === Standing.Trap || root.mark === Standing.Caution
                   ? Theme.markInk(root.mark) : Theme.quiet
        }
    }
}
