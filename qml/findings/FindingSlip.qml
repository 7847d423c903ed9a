// SPDX-License-Identifier: MIT
//
// One finding: how grave, what, why, by which source, and what to do about it.

import QtQuick
import QtQuick.Controls
import QtQuick.Layouts
import Flarestock.Screens

AbstractButton {
    id: root

    required property int index
    required property int mark
    required property string severity
    required property string about
    required property string why
    required property string source
    required property string remedy
    required property string mend
    required property string says
    property bool current: false

    signal mended()

    implicitHeight: implicitContentHeight
    focusPolicy: Qt.NoFocus
    padding: 0
    hoverEnabled: true
    Accessible.role: Accessible.ListItem
    Accessible.name: says

    background: Rectangle {
        color: root.current || root.hovered ? Theme.accentFill : "transparent"

        Rectangle {
            anchors.bottom: parent.bottom
            x: 12
            width: parent.width - 24
            height: 1
            color: Theme.rule
        }
    }
    contentItem: RowLayout {
        spacing: Theme.gap

        MarkIcon {
            mark: root.mark
            Layout.alignment: Qt.AlignTop
            Layout.leftMargin: 10
            Layout.topMargin: 7
        }
        ColumnLayout {
            spacing: 3
            Layout.topMargin: 9
            Layout.bottomMargin: 9
            Layout.rightMargin: 12

            Words {
                text: root.about
                strong: true
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Words {
                visible: text !== ""
                text: root.why
                quiet: true
                font.pixelSize: 12
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            Words {
                visible: text !== ""
                text: root.remedy
                font.pixelSize: 12
                wrapMode: Text.Wrap
                Layout.fillWidth: true
            }
            RowLayout {
                spacing: Theme.gap

                Words {
                    text: qsTr("%1  ·  %2").arg(root.severity).arg(root.source)
                    small: true
                    quiet: true
                    wrapMode: Text.Wrap
                    Layout.fillWidth: true
                }
                DeskButton {
                    objectName: "mend"
                    visible: root.mend !== ""
                    text: root.mend
                    onClicked: root.mended()
                }
            }
        }
    }
}
