// SPDX-License-Identifier: MIT
//
// What is wrong with the text, each with its line; pressing one goes there.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

ListView {
    id: root

    required property TemplateEditor editor

    signal wentTo(int row)

    objectName: "faultList"
    height: Math.min(contentHeight, 88)
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    keyNavigationEnabled: true
    activeFocusOnTab: true
    highlightMoveDuration: 0
    model: editor.faults
    ScrollBar.vertical: SlimScrollBar {}
    Accessible.role: Accessible.List
    Accessible.name: qsTr("what is wrong with the text")
    Keys.onReturnPressed: root.wentTo(currentIndex)
    Keys.onEnterPressed: root.wentTo(currentIndex)

    delegate: AbstractButton {
        id: fault

        required property int index
        required property string says

        objectName: "fault"
        activeFocusOnTab: false
        width: root.width - 10
        implicitHeight: Math.max(Theme.target, implicitContentHeight + 8)
        hoverEnabled: true
        Accessible.name: says
        onClicked: root.wentTo(index)

        background: Rectangle {
            radius: Theme.corner
            color: fault.hovered || (fault.ListView.isCurrentItem && root.activeFocus)
                ? Theme.accentFill : Theme.stopFill
        }
        contentItem: Words {
            leftPadding: 8
            text: "▸ " + fault.says
            color: Theme.stop
            wrapMode: Text.Wrap
            verticalAlignment: Text.AlignVCenter
        }
    }
}
