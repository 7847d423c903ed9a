// SPDX-License-Identifier: MIT
//
// The front of one drawer: its name, its pieces as blocks, and in words how it stands. The one that
// is pulled out stands forward under its handle and says so.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    required property string key
    required property string title
    required property string count
    required property string stands
    required property int mark
    required property int there
    required property int lack
    required property int over
    required property string away
    required property string says
    property bool current: false
    property bool inHand: false // The drawers have the keyboard.

    objectName: "drawerFront"
    focusPolicy: Qt.NoFocus
    hoverEnabled: true
    padding: 0
    Accessible.role: Accessible.RadioButton
    Accessible.name: current ? qsTr("%1, pulled out").arg(says) : says
    Accessible.checkable: true
    Accessible.checked: current

    background: Rectangle {
        radius: 2
        color: root.current || root.hovered ? Theme.accentFill : Theme.surface
        border.color: root.current ? Theme.accent : Theme.ruleStrong
        border.width: root.current ? root.inHand ? 4 : Theme.ring : 1

        Rectangle { // The handle.
            anchors.horizontalCenter: parent.horizontalCenter
            y: root.current ? 7 : 5
            width: 44
            height: 5
            radius: 2
            color: root.current ? Theme.accent : Theme.pipe
        }
    }
    Item {
        anchors.fill: parent

        Words {
            id: name

            x: 10
            y: 13
            width: parent.width - figure.width - 26
            text: root.key
            strong: true
            elide: Text.ElideRight
        }
        Words {
            id: figure

            anchors.right: parent.right
            anchors.rightMargin: 10
            y: 13
            text: root.count
            strong: true
            color: root.lack > 0 ? Theme.caution : Theme.ink
        }
        Words {
            id: titleWords

            anchors.top: name.bottom
            x: 10
            width: parent.width - 20
            text: root.title
            small: true
            quiet: true
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
        }
        Words {
            objectName: "drawerAway"
            visible: root.away !== ""
            anchors.top: titleWords.bottom
            x: 10
            width: parent.width - 20
            text: root.away
            small: true
            strong: true
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
        }
        MarkIcon {
            x: 8
            anchors.verticalCenter: stand.verticalCenter
            implicitWidth: 16
            mark: root.mark
        }
        Words {
            id: stand

            anchors.bottom: blocks.top
            anchors.bottomMargin: 3
            x: 29
            width: parent.width - 39
            text: root.stands
            small: true
            strong: root.lack > 0
            color: root.lack > 0 ? Theme.caution : Theme.quiet
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
        }
        PieceBlocks {
            id: blocks

            x: 10
            anchors.bottom: parent.bottom
            anchors.bottomMargin: 8
            width: parent.width - 20
            there: root.there
            lack: root.lack
            over: root.over
        }
    }
}
