// SPDX-License-Identifier: MIT
//
// One thread that an unmarked fitting can have, and how many parts in stock have it.

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property string thread
    required property string ports
    required property string deviation
    required property string here
    required property string says
    property bool current: false

    implicitHeight: Math.max(50, implicitContentHeight + 10)
    focusPolicy: Qt.NoFocus
    hoverEnabled: true
    Accessible.role: Accessible.ListItem
    Accessible.name: says

    background: Rectangle {
        color: root.current || root.hovered ? Theme.accentFill
                                            : root.index % 2 ? Theme.stripe : Theme.surface
    }
    contentItem: RowLayout {
        spacing: Theme.gap

        ColumnLayout {
            spacing: 1
            Layout.fillWidth: true
            Layout.leftMargin: 8

            Words {
                text: root.thread
                strong: true
            }
            Words {
                text: root.ports
                small: true
                quiet: true
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
        }
        ColumnLayout {
            spacing: 1
            Layout.rightMargin: 8

            Words {
                text: root.deviation
                Layout.alignment: Qt.AlignRight
            }
            Words {
                text: root.here
                small: true
                quiet: true
                Layout.alignment: Qt.AlignRight
            }
        }
    }
}
