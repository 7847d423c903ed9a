// SPDX-License-Identifier: MIT
//
// One part in the drawer that is pulled out: what it is, how many are there of how many, and what
// is wrong with that, in words.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string part
    required property string what
    required property string keep
    required property string there
    required property string note
    required property bool isShort
    required property string says
    property bool current: false

    objectName: "inDrawerLine"
    implicitHeight: Math.max(46, words.height + 12)
    focusPolicy: Qt.NoFocus
    padding: 0
    Accessible.role: Accessible.ListItem
    Accessible.name: says

    background: Rectangle {
        color: root.current ? Theme.accentFill : root.index % 2 ? Theme.stripe : Theme.surface

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.rule
        }
    }
    Item {
        anchors.fill: parent

        Column {
            id: words

            x: 12
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - 12 - 150
            spacing: 1

            PartNumber {
                width: parent.width
                text: root.part
            }
            Sentence {
                width: parent.width
                sentence: root.what
                small: true
                quiet: true
            }
            Row {
                width: parent.width
                visible: root.note !== ""
                spacing: 5

                MarkIcon {
                    implicitWidth: 14
                    mark: root.isShort ? Standing.Short : Standing.Note
                    ink: root.isShort ? Theme.caution : Theme.quiet
                }
                Sentence {
                    width: parent.width - 19
                    sentence: root.note
                    small: true
                    strong: root.isShort
                    color: root.isShort ? Theme.caution : Theme.quiet
                }
            }
        }
        Words {
            anchors.right: keepWords.left
            anchors.verticalCenter: parent.verticalCenter
            width: 70
            text: root.there
            strong: true
            horizontalAlignment: Text.AlignRight
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 8
        }
        Words {
            id: keepWords

            anchors.right: parent.right
            anchors.rightMargin: 12
            anchors.verticalCenter: parent.verticalCenter
            width: 68
            text: root.keep === "" ? "–" : root.keep
            quiet: true
            horizontalAlignment: Text.AlignRight
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 8
        }
    }
}
