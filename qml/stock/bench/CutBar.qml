// SPDX-License-Identifier: MIT
//
// One piece of hose with what is sawn off it, in proportion: full for a length, a notch for what
// goes to waste, an empty outline for what is left. The words above say the same.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property string name
    required property string cuts
    required property var segments
    required property string says

    spacing: 3
    Accessible.role: Accessible.StaticText
    Accessible.name: says

    Words {
        objectName: "cutPiece"
        width: root.width
        text: Gaps.fill(qsTr("%1:  %2"), root.name, root.cuts)
        wrapMode: Text.Wrap
    }
    Row {
        height: 16
        spacing: 0

        Repeater {
            model: root.segments

            Item {
                id: part

                required property var modelData

                width: Math.round(modelData.share * root.width)
                height: 16

                Rectangle {
                    anchors.fill: parent
                    anchors.rightMargin: 2
                    visible: part.modelData.kind !== "waste" && part.width > 2
                    radius: 2
                    color: part.modelData.kind === "cut" ? Theme.accent : "transparent"
                    border.color: part.modelData.kind === "cut" ? Theme.accent : Theme.ruleStrong
                }
                Rectangle {
                    anchors.bottom: parent.bottom
                    width: Math.max(0, parent.width - 2)
                    height: 5
                    visible: part.modelData.kind === "waste" && part.width > 2
                    color: Theme.caution
                }
            }
        }
    }
}
