// SPDX-License-Identifier: MIT
//
// One piece of an opened joint, drawn as the length of pipe that it is: ports and line grey, pieces
// in the accent, what is missing with a gap; between two neighbours how they meet.

import QtQuick
import Flarestock.Screens

Item {
    id: root

    required property string form
    required property string title
    required property string detail
    required property string place
    required property bool isShort
    required property int mark
    required property string says

    readonly property bool isLink: form === "link"
    readonly property bool isGap: form === "gap"
    readonly property bool isOurs: form === "piece" || form === "aid"
    readonly property bool isBelow: isShort && tag.implicitWidth > width * 0.42 // The tag.

    implicitHeight: isLink ? Math.max(24, link.height + 4)
        : isBelow ? lines.height + tag.height + 12
        : Math.max(40, lines.height + 8, where.visible ? where.height + 8 : 0)
    Accessible.role: Accessible.ListItem
    Accessible.name: says

    MarkIcon {
        visible: root.isLink
        x: -3
        anchors.verticalCenter: parent.verticalCenter
        width: 20
        height: 20
        mark: Math.max(0, root.mark)
    }
    Rectangle {
        visible: !root.isLink
        x: root.form === "aid" ? 5 : 3
        y: 2
        width: root.form === "aid" ? 4 : 8
        height: parent.height - 4
        radius: root.form === "aid" ? 2 : 1
        color: root.isGap ? "transparent" : root.isOurs ? Theme.accent : Theme.pipe
        border.color: root.isGap ? Theme.stop : "transparent"
        border.width: root.isGap ? 1.5 : 0
    }
    Words {
        id: link

        visible: root.isLink
        x: 22
        width: parent.width - x
        anchors.verticalCenter: parent.verticalCenter
        text: root.title
        small: true
        quiet: true
        wrapMode: Text.Wrap
    }
    Column {
        id: lines

        visible: !root.isLink
        x: 22
        y: root.isBelow ? 4 : (root.height - height) / 2
        width: parent.width - x - (root.isBelow ? 0 : Theme.gap
                                                      + (root.isShort ? tag.width : where.width))
        spacing: 1

        Words {
            width: lines.width
            text: root.title
            strong: true
            color: root.isGap ? Theme.stop : Theme.ink
            wrapMode: Text.Wrap
        }
        Words {
            width: lines.width
            text: root.detail
            small: true
            quiet: true
            wrapMode: Text.Wrap
        }
    }
    Words {
        id: where

        visible: !root.isShort && !root.isLink
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        width: Math.min(implicitWidth, parent.width * 0.42)
        horizontalAlignment: Text.AlignRight
        wrapMode: Text.Wrap
        text: root.place
        small: true
        quiet: true
    }
    ShortTag {
        id: tag

        visible: root.isShort
        anchors.right: parent.right
        y: root.isBelow ? lines.y + lines.height + 4 : (root.height - height) / 2
        width: Math.min(implicitWidth, parent.width - lines.x)
        wraps: root.isBelow
        text: root.place
    }
}
