// SPDX-License-Identifier: MIT
//
// One port: its number in the drawing, its name, its words, its thread, how many cards fit it.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string name
    required property string port
    required property string detail
    required property string fits
    required property string says

    objectName: "portTag"
    implicitHeight: Math.max(56, words.height + 14)
    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    Accessible.role: Accessible.Button
    Accessible.name: qsTr("port %1").arg(says)
    Accessible.description: checked ? qsTr("hides what it meets") : qsTr("shows what it meets")
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: root.checked ? Theme.accentFill : root.hovered ? Theme.stripe : Theme.surface
        border.color: root.visualFocus || root.checked ? Theme.accent : Theme.ruleStrong
        border.width: root.visualFocus ? 3 : root.checked ? Theme.ring : 1
    }
    Rectangle {
        id: disc

        x: 8
        anchors.verticalCenter: parent.verticalCenter
        width: 26
        height: 26
        radius: 13
        color: Theme.surface
        border.color: Theme.accent

        Words {
            anchors.centerIn: parent
            text: root.index + 1
            strong: true
            color: Theme.accent
        }
    }
    Column {
        id: words

        x: disc.x + disc.width + 10
        anchors.verticalCenter: parent.verticalCenter
        width: root.width - x - 10
        spacing: 1

        Words {
            width: words.width
            text: Gaps.fill(qsTr("%1: %2"), root.name, root.port)
            strong: true
            wrapMode: Text.Wrap
        }
        Words {
            width: words.width
            text: root.detail === "" ? root.fits : Gaps.fill(qsTr("%1  ·  %2"),
                                                             root.detail, root.fits)
            small: true
            quiet: true
            wrapMode: Text.Wrap
        }
    }
}
