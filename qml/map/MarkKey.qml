// SPDX-License-Identifier: MIT
//
// What the marks mean, in one line under the map.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Flow {
    id: root

    readonly property var entries: [
        { mark: Standing.Made, words: qsTr("made for each other") },
        { mark: Standing.Needs, words: qsTr("with ring, washer or sealant") },
        { mark: Standing.Caution, words: qsTr("caution") },
        { mark: Standing.Trap, words: qsTr("leaks, jams or loose") },
        { mark: Standing.Open, words: qsTr("open") },
        { mark: Standing.Short, words: qsTr("dashed: to buy") }
    ]

    spacing: 12

    Words {
        height: 18
        verticalAlignment: Text.AlignVCenter
        text: qsTr("⚑ picked   ⚐ picked, better found")
        small: true
        quiet: true
    }
    Repeater {
        model: root.entries

        Row {
            id: entry

            required property var modelData

            spacing: 3

            MarkIcon {
                width: 18
                height: 18
                mark: entry.modelData.mark
            }
            Words {
                anchors.verticalCenter: parent.verticalCenter
                text: entry.modelData.words
                small: true
                quiet: true
            }
        }
    }
}
