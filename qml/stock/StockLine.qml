// SPDX-License-Identifier: MIT
//
// One part of the stock: what it is, where it lies, its figures. What is below what we keep has a
// broken outline and says so.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string part
    required property string what
    required property string where
    required property string here
    required property string promised
    required property string free
    required property string trailer
    required property string keep
    required property string due
    required property bool isBelow
    required property string below
    required property string says
    required property StockColumns columns
    property bool current: false
    property bool inHand: false // The list that it stands in has the keyboard.

    component Figure: Words {
        height: parent ? parent.height : Theme.target
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        fontSizeMode: Text.HorizontalFit // A figure is never cut.
        minimumPixelSize: 8
    }

    implicitHeight: 46
    focusPolicy: Qt.NoFocus
    padding: 0
    Accessible.role: Accessible.Row
    Accessible.name: says
    Accessible.selectable: true
    Accessible.selected: current

    background: Rectangle {
        color: root.current ? Theme.accentFill : root.index % 2 ? Theme.stripe : Theme.surface

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
    contentItem: Row {
        leftPadding: 12

        Column {
            anchors.verticalCenter: parent.verticalCenter
            width: root.columns.part
            spacing: 1

            PartNumber {
                width: parent.width - 10
                text: root.part
            }
            Words {
                width: parent.width - 10
                text: root.what
                small: true
                quiet: true
                elide: Text.ElideRight
            }
        }
        Words {
            visible: root.columns.hasWhere
            width: root.columns.where
            height: parent.height
            rightPadding: 8
            verticalAlignment: Text.AlignVCenter
            text: root.where
            small: true
            quiet: true
            wrapMode: Text.Wrap
            maximumLineCount: 2
            elide: Text.ElideRight
        }
        Figure {
            width: root.columns.figure
            text: root.here
        }
        Figure {
            width: root.columns.trailer
            text: root.trailer
        }
        Figure {
            width: root.columns.figure
            text: root.promised
            quiet: true
        }
        Item {
            width: root.columns.figure
            height: parent.height

            Figure {
                visible: !root.isBelow
                width: parent.width
                text: root.free
                strong: true
            }
            Loader { // Few lines are below what we keep.
                active: root.isBelow
                anchors.right: parent.right
                anchors.rightMargin: -7
                anchors.verticalCenter: parent.verticalCenter
                width: Math.min(implicitWidth, parent.width)
                // Not bound to the line: bound it could not be made for one that is used again.
                sourceComponent: ShortTag {
                    text: root.free === "" ? root.below : root.free // qmllint disable unqualified
                }
            }
        }
        Figure {
            visible: root.columns.hasKeep
            width: root.columns.keep
            text: root.keep
            quiet: true
        }
        Figure {
            visible: root.columns.hasDue
            width: root.columns.due
            text: root.due
            small: true
            quiet: true
        }
    }
}
