// SPDX-License-Identifier: MIT
//
// One thing that should be in the box: a square that is ticked, how many of what, its mark and its
// bin. What lies in a piece's own box is set in below it; what is not there has a broken outline.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string part
    required property string what
    required property string amount
    required property string came
    required property bool length
    required property string mark
    required property string markHint
    required property string to
    required property bool content
    required property bool full
    required property string lacks
    required property string says
    property bool current: false
    property bool inHand: false // The list that it stands in has the keyboard.

    readonly property real indent: content ? 34 : 0
    readonly property string placed: to === "" ? mark
        : mark === "" ? qsTr("→ %1").arg(to) : Gaps.fill(qsTr("%1 → %2"), mark, to)

    implicitHeight: Math.max(44, words.implicitHeight + 12)
    focusPolicy: Qt.NoFocus
    padding: 0
    Accessible.role: Accessible.CheckBox
    Accessible.name: says
    Accessible.checkable: true
    Accessible.checked: full

    background: Rectangle {
        color: root.current ? Theme.accentFill : Theme.surface

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.rule
        }
        Rectangle {
            visible: root.current
            width: root.inHand ? 5 : 3
            height: parent.height
            color: Theme.accent
        }
    }
    Item {
        anchors.fill: parent

        Rectangle {
            x: 12 + root.indent
            anchors.verticalCenter: parent.verticalCenter
            width: 22
            height: 22
            radius: 3
            color: root.full ? Theme.accent : "transparent"
            border.color: root.full ? Theme.accent : Theme.ruleStrong
            border.width: 2

            Words {
                anchors.centerIn: parent
                text: root.full ? "✓" : root.came !== "" ? "·" : ""
                strong: true
                color: root.full ? Theme.surface : Theme.ink
            }
        }
        Words {
            x: 44 + root.indent
            width: 62
            anchors.verticalCenter: parent.verticalCenter
            text: root.came === "" ? root.amount : root.came
            strong: true
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 8
        }
        Column {
            id: words

            x: 110 + root.indent
            anchors.verticalCenter: parent.verticalCenter
            width: root.width - x - 12

            Item {
                width: words.width
                height: Math.max(number.height, side.height)

                PartNumber {
                    id: number

                    width: words.width - side.width - 8
                    text: root.part
                    strong: !root.content
                }
                Item {
                    id: side

                    anchors.right: parent.right
                    width: Math.min(words.width * 0.6, lack.visible ? lack.implicitWidth
                                                                    : where.implicitWidth)
                    height: lack.visible ? lack.implicitHeight : where.implicitHeight

                    ShortTag {
                        id: lack

                        visible: root.lacks !== ""
                        width: parent.width
                        text: root.lacks
                    }
                    Words {
                        id: where

                        visible: !lack.visible
                        width: parent.width
                        text: root.placed !== "" ? root.placed : root.markHint
                        quiet: true
                        small: true
                        fontSizeMode: Text.HorizontalFit
                        minimumPixelSize: 8
                        horizontalAlignment: Text.AlignRight
                    }
                }
            }
            Sentence {
                width: words.width
                sentence: root.what
                small: true
                quiet: true
            }
        }
    }
}
