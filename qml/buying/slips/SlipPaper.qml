// SPDX-License-Identifier: MIT
//
// A slip: what one supplier would be asked for, torn off a pad; with what it comes to and the way
// to make a draft of it.

pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

FocusScope {
    id: root

    required property string key
    required property string name
    required property string days
    required property bool late
    required property var lines
    required property string goods
    required property string goodsWhy
    required property string freight
    required property string freightWhy
    required property string tax
    required property string taxWhy
    required property string total
    required property string worth
    required property string draft
    required property string says
    property bool busy: false

    signal drafted()
    signal orderAsked(string number)
    signal focused()

    Accessible.role: Accessible.Grouping
    Accessible.name: says
    onActiveFocusChanged: {
        if (activeFocus)
            root.focused();
    }

    Sheet {
        anchors.fill: parent
        border.color: root.activeFocus ? Theme.accent : Theme.rule
    }
    Rectangle {
        anchors.horizontalCenter: parent.horizontalCenter
        y: 7
        width: 10
        height: 10
        radius: 5
        color: Theme.window
        border.color: Theme.rule
    }
    Column {
        id: head

        x: 14
        y: 20
        width: root.width - 28
        spacing: 2

        Words {
            width: head.width
            text: root.name
            strong: true
            font.pixelSize: Theme.headText
            wrapMode: Text.Wrap
        }
        Words {
            width: head.width
            text: root.late ? qsTr("! %1").arg(root.days) : root.days
            small: true
            color: root.late ? Theme.caution : Theme.quiet
            wrapMode: Text.Wrap
        }
    }
    Flickable {
        id: flick

        objectName: "slipLines"
        anchors.top: head.bottom
        anchors.bottom: foot.top
        anchors.topMargin: 6
        anchors.bottomMargin: 6
        width: root.width
        contentHeight: column.height
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        focus: true
        activeFocusOnTab: true
        ScrollBar.vertical: SlimScrollBar {}
        Accessible.role: Accessible.Pane
        Accessible.name: qsTr("lines of %1").arg(root.name)
        Keys.onUpPressed: flick.contentY = Math.max(0, contentY - 40)
        Keys.onDownPressed: flick.contentY = Math.min(Math.max(0, contentHeight - height),
                                                      contentY + 40)

        Column {
            id: column

            x: 14
            width: flick.width - 28
            spacing: 6

            Repeater {
                model: root.lines

                SlipLine {
                    width: column.width
                }
            }
        }
        FocusFrame {
            visible: flick.activeFocus
        }
    }
    Column {
        id: foot

        x: 14
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 12
        width: root.width - 28
        spacing: 2

        Rectangle {
            width: foot.width
            height: 1
            color: Theme.rule
        }
        SlipSum {
            width: foot.width
            title: root.goodsWhy === "" ? qsTr("goods") : qsTr("goods, %1").arg(root.goodsWhy)
            figure: root.goods
            strong: false
        }
        SlipSum {
            width: foot.width
            title: root.freightWhy === "" ? qsTr("freight")
                                          : qsTr("freight, %1").arg(root.freightWhy)
            figure: root.freight
            strong: false
        }
        SlipSum {
            width: foot.width
            title: root.taxWhy === "" ? qsTr("tax") : qsTr("tax %1").arg(root.taxWhy)
            figure: root.tax
            strong: false
        }
        SlipSum {
            width: foot.width
            title: root.worth === "" ? qsTr("total") : qsTr("total, %1").arg(root.worth)
            figure: root.total
            strong: true
        }
        Item {
            width: foot.width
            height: 48

            DeskButton {
                objectName: "slipDraft"
                y: 8
                text: root.draft === "" ? qsTr("Make the draft")
                                        : qsTr("Look at draft %1").arg(root.draft)
                enabled: !root.busy
                Accessible.name: root.draft === "" ? qsTr("make the draft to %1").arg(root.name)
                                                   : text
                onClicked: root.draft === "" ? root.drafted() : root.orderAsked(root.draft)
            }
        }
    }
}
