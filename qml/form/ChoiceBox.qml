// SPDX-License-Identifier: MIT
//
// One of several words to choose, big enough for gloves; Enter or the space bar opens it. What is
// long takes more lines.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

EnterOpens {
    id: root

    required property string name

    implicitHeight: Math.max(Theme.target, implicitContentHeight + 8)
    font.family: Theme.family
    font.pixelSize: Theme.text
    Accessible.name: name
    background: Rectangle {
        radius: Theme.corner
        color: Theme.surface
        border.color: root.activeFocus ? Theme.accent : Theme.ruleStrong
        border.width: root.activeFocus ? Theme.ring : 1
    }
    contentItem: Words {
        leftPadding: 10
        rightPadding: 26
        text: root.displayText
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
    }
    indicator: Words {
        x: root.width - width - 10
        anchors.verticalCenter: parent.verticalCenter
        text: "▾"
        quiet: true
    }
    delegate: ItemDelegate {
        id: line

        required property string modelData
        required property int index

        width: root.width
        height: Math.max(Theme.target, implicitContentHeight + 12)
        highlighted: root.highlightedIndex === index
        Accessible.name: modelData
        background: Rectangle {
            color: line.highlighted ? Theme.accentFill : Theme.surface
        }
        contentItem: Words {
            text: line.modelData
            strong: line.index === root.currentIndex
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.Wrap
        }
    }
    popup.background: Sheet {
        border.color: Theme.ruleStrong
    }
}
