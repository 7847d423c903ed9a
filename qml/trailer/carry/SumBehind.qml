// SPDX-License-Identifier: MIT
//
// The sum behind how many of a part are carried: its picture, its words, and a button that makes it
// the level of a drawer.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property CarryDesk carry
    property bool busy: false

    InSight {
        flick: flick
        within: column
    }
    Flickable {
        id: flick

        objectName: "sumBehind"
        anchors.fill: parent
        contentHeight: column.height + 16
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: Gaps.fill(qsTr("%1: %2"), root.carry.selected, root.carry.sentence)
        Keys.onUpPressed: contentY = Math.max(0, contentY - 40)
        Keys.onDownPressed: contentY = Math.min(Math.max(0, contentHeight - height), contentY + 40)

        Column {
            id: column

            x: 12
            y: 8
            width: flick.width - 30
            spacing: 6

            Words {
                objectName: "carrySentence"
                width: column.width
                text: root.carry.sentence
                strong: true
                font.pixelSize: Theme.headText
                color: Theme.accent
                wrapMode: Text.Wrap
            }
            CarryBars {
                objectName: "carryBars"
                visible: root.carry.bars.count > 0
                width: column.width
                bars: root.carry.bars
                certain: root.carry.certain
                certainty: root.carry.certainty
                sentence: root.carry.sentence
            }
            Repeater {
                model: root.carry.sum

                Item {
                    id: line

                    required property string title
                    required property string detail

                    width: column.width
                    height: detailWords.height

                    Words {
                        width: 106
                        text: line.title
                        small: true
                        quiet: true
                        wrapMode: Text.Wrap
                    }
                    Words {
                        id: detailWords

                        x: 112
                        width: line.width - 112
                        text: line.detail
                        small: true
                        wrapMode: Text.Wrap
                    }
                }
            }
            Flow {
                width: column.width
                visible: root.carry.drawers.length > 0 && root.carry.selected !== ""
                spacing: Theme.gap

                ChoiceBox {
                    id: drawer

                    objectName: "keepDrawer"
                    width: 150
                    name: qsTr("drawer that is to hold it")
                    model: root.carry.drawers
                    currentIndex: root.carry.drawer
                }
                DeskButton {
                    objectName: "keepOne"
                    text: qsTr("Make it the level of this drawer")
                    padding: 10
                    enabled: !root.busy
                    onClicked: root.carry.keep(drawer.currentIndex)
                }
                DeskButton {
                    objectName: "keepAll"
                    text: qsTr("… of all parts, each in its drawer")
                    padding: 10
                    framed: false
                    enabled: !root.busy
                    onClicked: root.carry.keepAll(drawer.currentIndex)
                }
            }
        }
    }
    FocusFrame {
        visible: flick.activeFocus
    }
}
