// SPDX-License-Identifier: MIT
//
// One line of the bill, as a line of the ledger.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string head // The group, where it begins with this row.
    required property string part
    required property string what
    required property string why
    required property string need
    required property string here
    required property string trailer
    required property string way
    required property string got
    required property string shortBy
    required property bool isShort
    required property string each
    required property string cost
    required property bool tool
    required property string says
    required property LedgerColumns columns
    property bool current: false
    readonly property real headHeight: head === "" ? 0 : 26
    property real whatHeight: 0
    property real whyHeight: 0

    component Figure: Words {
        height: parent ? parent.height : Theme.target
        leftPadding: 8 // Two long ones stand apart.
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        fontSizeMode: Text.HorizontalFit // A figure is never cut.
        minimumPixelSize: 8
    }

    // The row in hand shows all of its words.
    implicitHeight: headHeight
                    + Math.max(Theme.target,
                             current ? Math.max(whatHeight, whyHeight) + 8 : 0)
    focusPolicy: Qt.NoFocus
    padding: 0
    topPadding: headHeight
    topInset: headHeight
    Accessible.role: Accessible.Row
    Accessible.name: says

    GroupHead {
        visible: root.head !== ""
        width: root.width
        group: root.head
    }

    background: Rectangle {
        color: root.current ? Theme.accentFill : root.index % 2 ? Theme.stripe : Theme.surface

        Rectangle {
            anchors.bottom: parent.bottom
            width: parent.width
            height: 1
            color: Theme.rule
        }
    }
    contentItem: Row {
        leftPadding: 12

        Column {
            anchors.verticalCenter: parent.verticalCenter
            width: root.columns.part
            rightPadding: 12
            spacing: 1
            onHeightChanged: root.whatHeight = height

            Words {
                width: parent.width - 12
                text: root.tool ? qsTr("%1  ·  tool, comes back").arg(root.part) : root.part
                strong: true
                elide: Text.ElideRight
            }
            Words {
                width: parent.width - 12
                text: root.what
                small: true
                quiet: true
                wrapMode: Text.Wrap
                maximumLineCount: root.current ? 6 : 1
                elide: Text.ElideRight
            }
            Words {
                visible: !root.columns.hasWhy && root.current
                width: parent.width - 12
                text: qsTr("for %1").arg(root.why)
                small: true
                quiet: true
                wrapMode: Text.Wrap
            }
        }
        Words {
            visible: root.columns.hasWhy
            width: root.columns.why - 8
            height: parent.height
            verticalAlignment: Text.AlignVCenter
            text: root.why
            small: true
            quiet: true
            wrapMode: Text.Wrap
            maximumLineCount: root.current ? 20 : 2
            onImplicitHeightChanged: root.whyHeight = implicitHeight
            elide: Text.ElideRight
        }
        Item {
            visible: root.columns.hasWhy
            width: 8
            height: 1
        }
        Figure {
            width: root.columns.figure
            text: root.need
        }
        Figure {
            width: root.columns.figure
            text: root.here
        }
        Figure {
            visible: root.columns.hasTrailer
            width: root.columns.trailer
            text: root.trailer
        }
        Figure {
            visible: root.columns.hasGot
            width: root.columns.got
            text: root.got
        }
        Item {
            width: root.columns.shortage
            height: parent.height

            ShortTag {
                visible: root.isShort
                anchors.right: parent.right
                anchors.rightMargin: -7
                anchors.verticalCenter: parent.verticalCenter
                width: Math.min(implicitWidth, parent.width)
                text: qsTr("short %1").arg(root.shortBy)
            }
        }
        Figure {
            visible: root.columns.hasWay
            width: root.columns.way
            text: root.way
        }
        Figure {
            visible: root.columns.hasEach
            width: root.columns.each
            text: root.each
            small: true
            quiet: true
        }
        Figure {
            width: root.columns.cost
            text: root.cost
        }
    }
}
