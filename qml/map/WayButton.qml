// SPDX-License-Identifier: MIT
//
// One way to make a joint, or one part for a station: what it is, what it leaves short, what it
// costs. The one in use is marked; pressing another takes it.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property string title
    required property string detail
    required property string cost
    required property int shortOf
    required property bool inUse

    implicitHeight: Math.max(46, lines.height + 12)
    hoverEnabled: true
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.checkable: true
    Accessible.checked: inUse
    Accessible.name: Gaps.fillAll(qsTr("%1, %2, %3"), [title, detail, cost])
    Keys.onReturnPressed: root.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: root.hovered ? Theme.accentFill : Theme.surface
        border.color: root.visualFocus ? Theme.accent : Theme.rule
        border.width: root.visualFocus ? Theme.ring : 1
    }
    Rectangle {
        x: 10
        anchors.verticalCenter: parent.verticalCenter
        width: 16
        height: 16
        radius: 8
        color: "transparent"
        border.color: root.inUse ? Theme.accent : Theme.ruleStrong
        border.width: root.inUse ? 5 : 1.5
    }
    Column {
        id: lines

        x: 36
        anchors.verticalCenter: parent.verticalCenter
        width: price.x - x - Theme.gap
        spacing: 1

        Words {
            width: lines.width
            text: root.title
            strong: true
            wrapMode: Text.Wrap
        }
        Words {
            width: lines.width
            text: root.detail
            small: true
            color: root.shortOf > 0 ? Theme.caution : Theme.quiet
            wrapMode: Text.Wrap
        }
    }
    Words {
        id: price

        x: root.width - width - 10
        anchors.verticalCenter: parent.verticalCenter
        text: root.cost
        small: true
    }
}
