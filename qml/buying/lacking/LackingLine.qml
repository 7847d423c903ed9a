// SPDX-License-Identifier: MIT
//
// One part that is short for a day.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string key
    required property string part
    required property string what
    required property string lacks
    required property string of
    required property string whom
    required property string coming
    required property string orderBy
    required property bool isPast
    required property string says
    required property LackingColumns columns
    property bool current: false
    property bool inHand: false // The list that it stands in has the keyboard.

    component Cell: Words {
        height: parent ? parent.height : Theme.target
        rightPadding: 8
        verticalAlignment: Text.AlignVCenter
        small: true
        quiet: true
        wrapMode: Text.Wrap
        maximumLineCount: 2
        elide: Text.ElideRight
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
        Item {
            width: root.columns.figure
            height: parent.height

            ShortTag {
                anchors.right: parent.right
                anchors.rightMargin: -7
                anchors.verticalCenter: parent.verticalCenter
                width: Math.min(implicitWidth, parent.width)
                text: root.lacks
            }
        }
        Words {
            width: root.columns.figure
            height: parent.height
            horizontalAlignment: Text.AlignRight
            verticalAlignment: Text.AlignVCenter
            text: root.of
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: 8
        }
        Cell {
            width: root.columns.whom
            leftPadding: 12
            text: root.whom
        }
        Cell {
            visible: root.columns.hasComing
            width: root.columns.coming
            text: root.coming
        }
        Cell {
            visible: root.columns.hasOrderBy
            width: root.columns.orderBy
            text: root.isPast ? qsTr("! %1").arg(root.orderBy) : root.orderBy
            strong: root.isPast
            color: root.isPast ? Theme.caution : Theme.quiet
        }
    }
}
