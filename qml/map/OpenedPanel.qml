// SPDX-License-Identifier: MIT
//
// A joint or a station taken apart: how it stands, its pieces in the order of the flow with where
// each lies, and the other ways to make it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
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
        contentHeight: column.implicitHeight + 20
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

        ColumnLayout {
            id: column

            x: 12
            y: 10
            width: flick.width - 26
            spacing: 6

            RowLayout {
                spacing: Theme.gap

                MarkIcon {
                    mark: root.opened.mark
                    toBuy: root.opened.toBuy
                }
                ColumnLayout {
                    spacing: 1
                    Layout.fillWidth: true

                    Words {
                        objectName: "openedTitle"
                        text: root.opened.title
                        strong: true
                        font.pixelSize: Theme.headText
                        wrapMode: Text.Wrap
                        Layout.fillWidth: true
                    }
                    Words {
                        text: root.opened.standing
                        small: true
                        color: Theme.markInk(root.opened.mark)
                        wrapMode: Text.Wrap
                        Layout.fillWidth: true
                    }
                }
            }
            Words {
                text: root.opened.subtitle
                small: true
                quiet: true
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            RowLayout {
                visible: root.opened.picked
                spacing: Theme.gap

                Words {
                    text: qsTr("picked by you: it stays")
                    small: true
                    strong: true
                    wrapMode: Text.Wrap
                    Layout.fillWidth: true
                }
                DeskButton {
                    objectName: "letGo"
                    text: qsTr("let go")
                    Accessible.name: qsTr("let the pick go")
                    onClicked: root.letGo(root.opened.slot)
                }
            }
            Words {
                visible: text !== ""
                text: root.opened.better
                small: true
                color: Theme.caution
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Column {
                spacing: 2
                Layout.fillWidth: true

                Repeater {
                    model: root.opened.pieces

                    PieceLine {
                        width: parent ? parent.width : 0
                    }
                }
            }
            Words {
                visible: text !== ""
                text: root.opened.why
                small: true
                quiet: true
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Words {
                visible: root.opened.source !== ""
                text: qsTr("source: %1").arg(root.opened.source)
                small: true
                quiet: true
                font.italic: true
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Words {
                visible: root.opened.ways.count > 0
                text: root.opened.isJoint ? qsTr("ways to make it")
                                          : qsTr("parts that meet the demand")
                strong: true
                topPadding: 6
                Layout.fillWidth: true
            }
            Repeater {
                model: root.opened.ways

                WayButton {
                    required property string pick

                    objectName: "way"
                    Layout.fillWidth: true
                    onClicked: root.picked(root.opened.slot, pick)
                }
            }
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
