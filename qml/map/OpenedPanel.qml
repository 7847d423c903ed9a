// SPDX-License-Identifier: MIT
//
// A joint or a station taken apart: how it stands, its pieces in the order of the flow with where
// each lies, and the other ways to make it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property Opened opened

    signal picked(string slot, string value)
    signal letGo(string slot)

    Flickable {
        id: flick

        objectName: "openedPanel"
        anchors.fill: parent
        anchors.margins: 4
        contentHeight: column.height + 20
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: qsTr("opened: %1").arg(root.opened.title)
        Keys.onUpPressed: flick.contentY = Math.max(0, contentY - 40)
        Keys.onDownPressed: flick.contentY = Math.min(Math.max(0, contentHeight - height),
                                                      contentY + 40)

        Column {
            id: column

            x: 12
            y: 10
            width: flick.width - 26
            spacing: 6

            OpenedHead {
                width: column.width
                opened: root.opened
            }
            Item {
                visible: root.opened.picked
                width: column.width
                height: Theme.target

                Words {
                    anchors.verticalCenter: parent.verticalCenter
                    text: qsTr("⚑ picked by you: it stays")
                    small: true
                    strong: true
                }
                DeskButton {
                    objectName: "letGo"
                    anchors.right: parent.right
                    text: qsTr("let go")
                    Accessible.name: qsTr("let the pick go")
                    onClicked: root.letGo(root.opened.slot)
                }
            }
            Words {
                visible: text !== ""
                width: column.width
                text: root.opened.better
                small: true
                color: Theme.caution
                wrapMode: Text.Wrap
            }
            Repeater {
                model: root.opened.pieces

                PieceLine {
                    width: column.width
                }
            }
            Words {
                visible: text !== ""
                width: column.width
                text: root.opened.why
                small: true
                quiet: true
                wrapMode: Text.Wrap
            }
            Words {
                visible: root.opened.source !== ""
                width: column.width
                text: qsTr("source: %1").arg(root.opened.source)
                small: true
                quiet: true
                font.italic: true
                wrapMode: Text.Wrap
            }
            Words {
                visible: root.opened.ways.count > 0
                width: column.width
                topPadding: 6
                text: root.opened.isJoint ? qsTr("ways to make it")
                                          : qsTr("parts that meet the demand")
                strong: true
            }
            Repeater {
                model: root.opened.ways

                WayButton {
                    required property string pick

                    objectName: "way"
                    width: column.width
                    onClicked: root.picked(root.opened.slot, pick)
                }
            }
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
