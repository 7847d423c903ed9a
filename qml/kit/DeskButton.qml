// SPDX-License-Identifier: MIT
//
// A button big enough for gloves: words on paper, framed where it is the thing to do.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    property bool framed: true
    property bool small: false
    property bool quiet: false // There is nothing for it to do now; it says why.

    implicitHeight: Theme.target
    implicitWidth: Math.max(Theme.target, implicitContentWidth + 2 * padding)
    padding: framed ? 14 : Theme.gap
    topPadding: 0
    bottomPadding: 0
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    Accessible.name: text
    Accessible.role: Accessible.Button
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    contentItem: Words {
        text: root.text
        small: root.small
        strong: true
        color: root.enabled && !root.quiet ? Theme.accent : Theme.quiet
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
    }
    background: Rectangle {
        radius: Theme.corner
        color: root.down || root.hovered ? Theme.accentFill : "transparent"
        border.color: root.visualFocus ? Theme.accent : root.quiet ? Theme.rule : Theme.ruleStrong
        border.width: root.visualFocus ? Theme.ring : root.framed ? 1 : 0
    }
}
