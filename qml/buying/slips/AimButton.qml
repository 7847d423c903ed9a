// SPDX-License-Identifier: MIT
//
// What may come first when orders are planned, with what it comes to: one of three.

import QtQuick
import QtQuick.Controls
import Flarestock.Screens

AbstractButton {
    id: root

    required property string key
    required property string title
    required property string worth
    required property string detail
    required property string proof
    required property int mark
    required property string says

    objectName: "aim-" + key
    implicitHeight: words.implicitHeight + 16
    padding: 0
    hoverEnabled: true
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.RadioButton
    Accessible.name: says
    Accessible.checkable: true
    Accessible.checked: checked
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    background: Rectangle {
        radius: Theme.corner
        color: root.checked ? Theme.accentFill : Theme.surface
        border.color: root.visualFocus || root.checked ? Theme.accent : Theme.rule
        border.width: root.visualFocus ? 3 : root.checked || root.hovered ? Theme.ring : 1
    }
    Item {
        anchors.fill: parent

        MarkIcon {
            id: icon

            x: 10
            anchors.verticalCenter: parent.verticalCenter
            mark: root.mark
            implicitWidth: 22
        }
        Column {
            id: words

            x: 40
            anchors.verticalCenter: parent.verticalCenter
            width: root.width - 50
            spacing: 1

            Item {
                width: words.width
                height: figure.implicitHeight

                Words {
                    width: parent.width - figure.width - 6
                    text: root.checked ? qsTr("● %1").arg(root.title) : qsTr("○ %1").arg(root.title)
                    strong: root.checked
                    fontSizeMode: Text.HorizontalFit
                    minimumPixelSize: 9
                }
                Words {
                    id: figure

                    anchors.right: parent.right
                    text: root.worth
                    strong: true
                }
            }
            Words {
                width: words.width
                text: root.detail
                small: true
                wrapMode: Text.Wrap
            }
            Words {
                width: words.width
                text: root.proof
                small: true
                quiet: true
                wrapMode: Text.Wrap
            }
        }
    }
}
