// SPDX-License-Identifier: MIT
//
// A lot that is followed: where it came from and went above, what to do about it below.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property LotSearch lot
    required property string selected
    property string nothing: ""

    signal chosen(string key)
    signal entered()
    signal stepped(int tabs)

    ColumnLayout {
        anchors.fill: parent
        anchors.margins: 1
        spacing: 0

        Flickable {
            objectName: "lotCame"
            visible: root.lot.came.count > 0
            clip: true
            contentHeight: came.height + 12
            activeFocusOnTab: contentHeight > height
            boundsBehavior: Flickable.StopAtBounds
            Accessible.role: Accessible.Pane
            Accessible.name: qsTr("where it came from and went")
            Keys.onUpPressed: contentY = Math.max(0, contentY - 40)
            Keys.onDownPressed: contentY = Math.min(Math.max(0, contentHeight - height),
                                                    contentY + 40)
            ScrollBar.vertical: SlimScrollBar {}
            Layout.fillWidth: true
            Layout.preferredHeight: Math.min(contentHeight, root.height * 0.4)

            Column {
                id: came

                x: 14
                y: 6
                width: parent.width - 28
                spacing: 3

                Repeater {
                    model: root.lot.came

                    CardLine {
                        back: "" // It is followed here, not undone.
                        width: came.width
                    }
                }
            }
        }
        GroupHead {
            visible: root.lot.acts.count > 0
            group: qsTr("What to do if it is bad, what is most dangerous first")
            Layout.fillWidth: true
        }
        WorkList {
            id: list

            objectName: "lotList"
            rows: root.lot.acts
            selected: root.selected
            nothing: root.nothing
            section.property: ""
            Accessible.name: qsTr("what to do if it is bad, %1").arg(count)
            Layout.fillWidth: true
            Layout.fillHeight: true
            onChosen: key => root.chosen(key)
            onEntered: root.entered()
            onStepped: tabs => root.stepped(tabs)
            delegate: LotEntry {
                required property string key

                objectName: "lotEntry"
                width: list.width
                current: ListView.isCurrentItem
                inHand: list.activeFocus
                onClicked: {
                    list.forceActiveFocus(Qt.MouseFocusReason);
                    root.chosen(key);
                }
                onDoubleClicked: root.entered()
            }
        }
    }
}
