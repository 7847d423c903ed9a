// SPDX-License-Identifier: MIT
//
// One finding: how grave, what, why, by which source, and what to do about it.

import QtQuick
import QtQuick.Controls
import Flarestock.Desk
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
    signal reached(AbstractButton button) // The keyboard came to it.

    implicitHeight: column.height + 20
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
    MarkIcon {
        x: 10
        y: 7
        mark: root.mark
    }
    // Plain columns here and below: layouts keep the height of a wrapped text that has changed.
    Column {
        id: column

        x: 44
        y: 10
        width: root.width - x - 14
        spacing: 3

        Words {
            width: column.width
            text: root.about
            strong: true
            wrapMode: Text.Wrap
        }
        Words {
            visible: text !== ""
            width: column.width
            text: root.why
            quiet: true
            font.pixelSize: Theme.noteText
            wrapMode: Text.Wrap
        }
        Words {
            visible: text !== "" && root.mend === ""
            width: column.width
            text: root.remedy
            font.pixelSize: Theme.noteText
            wrapMode: Text.Wrap
        }
        DeskButton {
            id: button

            objectName: "mend"
            visible: root.mend !== ""
            width: Math.min(implicitWidth, column.width)
            text: root.mend
            onVisualFocusChanged: { // Nothing moves below a hand that presses it.
                if (visualFocus)
                    root.reached(button);
            }
            onClicked: root.mended()
        }
        Words {
            width: column.width
            text: Gaps.fill(qsTr("%1  ·  %2"), root.severity, root.source)
            small: true
            quiet: true
            wrapMode: Text.Wrap
            maximumLineCount: root.current ? 8 : 2
            elide: Text.ElideRight
        }
    }
}
