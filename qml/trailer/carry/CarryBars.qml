// SPDX-License-Identifier: MIT
//
// With what chance so many suffice, as bars: the one that is carried is full and has its number
// framed, the line across is what was asked for.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property Rows bars
    required property double certain // 0 to 1
    required property string certainty
    property string sentence: ""

    readonly property real ground: height - 40
    readonly property real step: bars.count > 0 ? (width - 64) / bars.count : 0

    implicitHeight: 170
    Accessible.role: Accessible.Graphic
    Accessible.name: qsTr("chance that so many suffice. %1").arg(sentence)

    Repeater {
        model: root.bars

        Item {
            id: bar

            required property int index
            required property string pieces
            required property double chance
            required property string percent
            required property bool isCarried
            required property bool isThere

            x: index * root.step
            z: 1
            width: root.step
            height: root.height

            Rectangle {
                id: column

                anchors.horizontalCenter: parent.horizontalCenter
                y: 16 + (root.ground - 16) * (1 - bar.chance)
                width: Math.max(6, Math.min(34, bar.width - 6))
                height: root.ground - y
                color: bar.isCarried ? Theme.accent : Theme.accentFill
                border.color: bar.isCarried ? Theme.accent : Theme.pipe
            }
            Rectangle { // So that the line across does not strike the figure out.
                anchors.fill: percentWords
                z: 1
                visible: percentWords.visible
                color: Theme.surface
            }
            Words {
                id: percentWords

                anchors.horizontalCenter: parent.horizontalCenter
                y: column.y - 15
                z: 1
                visible: bar.isCarried || bar.width >= 46
                text: bar.percent
                small: true
                strong: bar.isCarried
                quiet: !bar.isCarried
            }
            Rectangle {
                visible: bar.isCarried
                anchors.centerIn: figure
                width: figure.implicitWidth + 12
                height: 20
                radius: Theme.corner
                color: "transparent"
                border.color: Theme.accent
                border.width: Theme.ring
            }
            Words {
                id: figure

                anchors.horizontalCenter: parent.horizontalCenter
                y: root.ground + 4
                text: bar.pieces
                strong: bar.isCarried
            }
            Words {
                anchors.horizontalCenter: parent.horizontalCenter
                y: root.ground + 24
                visible: bar.isThere
                text: qsTr("there")
                small: true
                quiet: true
            }
        }
    }
    Rectangle {
        y: root.ground
        width: root.width - 64
        height: 1
        color: Theme.ruleStrong
    }
    Row {
        y: 16 + (root.ground - 16) * (1 - root.certain)
        spacing: 4

        Repeater {
            model: Math.max(0, Math.floor((root.width - 64) / 10))

            Rectangle {
                width: 6
                height: 1.5
                color: Theme.caution
            }
        }
    }
    Words {
        anchors.right: parent.right
        y: 16 + (root.ground - 16) * (1 - root.certain) - height / 2
        text: root.certainty
        small: true
        color: Theme.caution
    }
}
