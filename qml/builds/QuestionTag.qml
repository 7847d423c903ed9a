// SPDX-License-Identifier: MIT
//
// One of the two questions above a build, with its answer, as a button to where the reasons stand.

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Desk
import Flarestock.Screens

AbstractButton {
    id: root

    required property string question
    required property string answer
    required property int mark

    readonly property color ink: Theme.markInk(mark)

    implicitHeight: 52
    implicitWidth: implicitContentWidth + 34
    hoverEnabled: true
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.Button
    Accessible.name: Gaps.fill(qsTr("%1 %2"), question, answer)
    Keys.onReturnPressed: root.clicked()

    background: TagDrawing {
        fill: root.mark === Standing.Trap ? Theme.stopFill
            : root.mark === Standing.Made || root.mark === Standing.Note ? Theme.accentFill
            : Theme.cautionFill
        edge: root.visualFocus ? Theme.accent : root.ink
        edgeWidth: root.visualFocus || root.hovered ? Theme.ring : 1
        hole: Theme.window
    }
    contentItem: RowLayout {
        spacing: Theme.gap

        MarkIcon {
            mark: root.mark
            ink: root.ink
            Layout.leftMargin: 16
        }
        ColumnLayout {
            spacing: 1

            Words {
                text: root.question
                small: true
                color: root.ink
            }
            Words {
                text: root.answer
                strong: true
                color: root.ink
            }
        }
    }
}
