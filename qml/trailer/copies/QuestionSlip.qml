// SPDX-License-Identifier: MIT
//
// Where a copy and the shop cannot both be right: what it is about, and the answers to choose from.
// Open ones have a broken outline.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

Item {
    id: root

    required property int index
    required property string what
    required property var choices
    required property int chosen
    required property string more
    required property bool wantsMore
    required property bool isDecided
    required property string says

    signal decided(int choice)
    signal said(string more)

    objectName: "questionSlip"
    implicitHeight: column.height + 20
    Accessible.role: Accessible.Grouping
    Accessible.name: says

    TagDrawing {
        anchors.fill: parent
        fill: root.isDecided ? Theme.surface : Theme.cautionFill
        edge: root.isDecided ? Theme.ruleStrong : Theme.caution
        hole: "transparent"
        cut: 4
        broken: !root.isDecided
    }
    Column {
        id: column

        x: 12
        y: 10
        width: root.width - 24
        spacing: 4

        Row {
            width: column.width
            spacing: 6

            MarkIcon {
                implicitWidth: 18
                mark: root.isDecided ? Standing.Made : Standing.Caution
            }
            Words {
                width: column.width - 24
                text: qsTr("%1.").arg(root.what)
                strong: true
                wrapMode: Text.Wrap
            }
        }
        Repeater {
            model: root.choices

            AnswerButton {
                required property int index
                required property string modelData

                objectName: "answer-" + root.index + "-" + index
                width: column.width
                text: modelData
                checked: index === root.chosen
                onClicked: root.decided(index)
            }
        }
        InkField {
            objectName: "more-" + root.index
            visible: root.wantsMore
            width: column.width
            name: qsTr("which one, for: %1").arg(root.what)
            placeholderText: qsTr("which one? write its number")
            text: root.more
            onEditingFinished: {
                if (text !== root.more)
                    root.said(text);
            }
        }
    }
}
