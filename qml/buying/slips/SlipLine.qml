// SPDX-License-Identifier: MIT
//
// A line of a slip: how much of what, at which price, and why more than is needed.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property var modelData

    spacing: 1
    Accessible.role: Accessible.StaticText
    Accessible.name: Gaps.fillAll(qsTr("%1 of %2 at %3, %4. %5"),
        [modelData.quantity, modelData.part, modelData.each, modelData.cost, modelData.why])

    Item {
        width: root.width
        height: number.height

        Words {
            id: much

            width: 58
            text: root.modelData.quantity
            strong: true
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 8
        }
        PartNumber {
            id: number

            x: 64
            width: each.x - x - 4
            text: root.modelData.part
            strong: false
        }
        Words {
            id: each

            x: cost.x - width - 8
            text: root.modelData.each
            small: true
            quiet: true
            height: cost.height
            verticalAlignment: Text.AlignVCenter
        }
        Words {
            id: cost

            anchors.right: parent.right
            text: root.modelData.cost
            strong: true
        }
    }
    Sentence {
        x: 64
        width: root.width - 64
        sentence: root.modelData.what
        small: true
        quiet: true
    }
    Sentence {
        x: 64
        visible: text !== ""
        width: root.width - 64
        sentence: root.modelData.why
        small: true
        color: Theme.accent
    }
}
