// SPDX-License-Identifier: MIT
//
// How much of the part was on hand over the last year, as steps: a full triangle where some came, a
// hollow one on its point where some went. The sentence below says the same.

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Column {
    id: root

    required property OverTime time

    spacing: 2
    visible: time.isThere

    Words {
        width: root.width
        topPadding: 6
        text: qsTr("on hand over time")
        strong: true
        color: Theme.accent
    }
    Item {
        width: root.width
        height: 96

        Words {
            id: most

            text: root.time.most
            small: true
            quiet: true
        }
        Words {
            id: none

            anchors.bottom: parent.bottom
            text: qsTr("0")
            small: true
            quiet: true
        }
        StepDrawing {
            objectName: "overTime"
            x: Math.max(most.width, none.width) + 6
            width: parent.width - x
            height: parent.height
            steps: root.time.steps
            kept: root.time.kept
            ink: Theme.accent
            rule: Theme.ruleStrong
            fill: Theme.accentFill
            paper: Theme.surface
            warn: Theme.caution
            Accessible.role: Accessible.Graphic
            Accessible.name: root.time.says
        }
    }
    Item {
        width: root.width
        height: since.height

        Words {
            id: since

            text: root.time.from
            small: true
            quiet: true
        }
        Words {
            anchors.horizontalCenter: parent.horizontalCenter
            visible: text !== "" && since.width * 2 + width + 20 < parent.width
            text: root.time.keptWords === "" ? "" : qsTr("--  %1").arg(root.time.keptWords)
            small: true
            color: Theme.caution
        }
        Words {
            anchors.right: parent.right
            text: root.time.to
            small: true
            quiet: true
        }
    }
    Words {
        objectName: "overTimeSays"
        width: root.width
        text: root.time.says
        small: true
        wrapMode: Text.Wrap
    }
}
