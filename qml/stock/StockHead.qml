// SPDX-License-Identifier: MIT
//
// The headings over the stock table; a figure's sorts by it, once more the other way round. They
// stand as the sum goes: here, and in the trailer, less what is promised, is free.

import QtQuick
import Flarestock.Screens

Row {
    id: root

    required property StockColumns columns
    required property int order
    required property bool downwards

    signal sorted(int order)

    component Plain: Words {
        height: Theme.target
        horizontalAlignment: Text.AlignRight
        verticalAlignment: Text.AlignVCenter
        small: true
        quiet: true
    }

    leftPadding: 12

    SortHeading {
        order: root.order
        downwards: root.downwards
        width: root.columns.part
        by: 0
        figure: false
        title: qsTr("part, and what it is")
        onClicked: root.sorted(by)
    }
    Plain {
        visible: root.columns.hasWhere
        width: root.columns.where
        horizontalAlignment: Text.AlignLeft
        text: qsTr("where")
    }
    SortHeading {
        order: root.order
        downwards: root.downwards
        width: root.columns.figure
        by: 1
        title: qsTr("here")
        onClicked: root.sorted(by)
    }
    SortHeading {
        order: root.order
        downwards: root.downwards
        width: root.columns.trailer
        by: 3
        title: qsTr("in the trailer")
        onClicked: root.sorted(by)
    }
    Plain {
        width: root.columns.figure
        text: qsTr("promised")
    }
    SortHeading {
        order: root.order
        downwards: root.downwards
        width: root.columns.figure
        by: 2
        title: qsTr("free in all")
        Accessible.description: qsTr("here and in the trailer, less what is promised or must stay")
        onClicked: root.sorted(by)
    }
    SortHeading {
        order: root.order
        downwards: root.downwards
        visible: root.columns.hasKeep
        width: root.columns.keep
        by: 4
        title: qsTr("we keep")
        onClicked: root.sorted(by)
    }
    SortHeading {
        order: root.order
        downwards: root.downwards
        visible: root.columns.hasDue
        width: root.columns.due
        by: 5
        title: qsTr("on order")
        onClicked: root.sorted(by)
    }
}
